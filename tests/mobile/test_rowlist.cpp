// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/models/rowlist.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QtTest>

namespace {

struct Row {
    QString name;
    int count = 0;
    bool operator==(const Row&) const = default;
    static std::vector<RowRole<Row>> roles()
    {
        return {{"name", [](const Row& r) { return r.name; }}, {"count", [](const Row& r) { return r.count; }}};
    }
};

std::vector<Row> rows(const QString& names)
{
    std::vector<Row> all;
    for (const QChar name : names)
        all.push_back({QString(name), name.unicode()});
    return all;
}

QString namesIn(const RowList<Row>& list)
{
    QString all;
    for (int i = 0; i < list.rowCount(); ++i)
        all += list.data(list.index(i), Qt::UserRole).toString();
    return all;
}

}

/// A list tells what differs and nothing else.
class RowListTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void rolesByName();
    void nothingOutsideItsRows();
    void onlyWhatDiffersIsTold_data();
    void onlyWhatDiffersIsTold();
};

void RowListTest::rolesByName()
{
    RowList<Row> list;
    const QHash<int, QByteArray> names = list.roleNames();
    QCOMPARE(names.size(), 2);
    QCOMPARE(names.value(Qt::UserRole), QByteArray("name"));
    QCOMPARE(names.value(Qt::UserRole + 1), QByteArray("count"));
    list.setRows({{QStringLiteral("chain"), 2}});
    QCOMPARE(list.data(list.index(0), Qt::UserRole).toString(), QStringLiteral("chain"));
    QCOMPARE(list.data(list.index(0), Qt::UserRole + 1).toInt(), 2);
}

void RowListTest::nothingOutsideItsRows()
{
    RowList<Row> list;
    list.setRows(rows(QStringLiteral("ab")));
    QCOMPARE(list.rowCount(list.index(0)), 0);
    QVERIFY(!list.data({}, Qt::UserRole).isValid());
    QVERIFY(!list.data(list.index(2), Qt::UserRole).isValid());
    QVERIFY(!list.data(list.index(0), Qt::DisplayRole).isValid());
    QVERIFY(!list.data(list.index(0), Qt::UserRole + 2).isValid());
}

void RowListTest::onlyWhatDiffersIsTold_data()
{
    QTest::addColumn<QString>("before");
    QTest::addColumn<QString>("after");
    QTest::addColumn<QString>("changed");
    QTest::addColumn<QString>("inserted");
    QTest::addColumn<QString>("removed");
    QTest::newRow("same") << "abc" << "abc" << "" << "" << "";
    QTest::newRow("one differs") << "abc" << "axc" << "1" << "" << "";
    QTest::newRow("two differ") << "abc" << "xbz" << "0 2" << "" << "";
    QTest::newRow("one more") << "ab" << "abc" << "" << "2-2" << "";
    QTest::newRow("from nothing") << "" << "abc" << "" << "0-2" << "";
    QTest::newRow("fewer") << "abcd" << "ab" << "" << "" << "2-3";
    QTest::newRow("to nothing") << "abc" << "" << "" << "" << "0-2";
    QTest::newRow("fewer and different") << "abc" << "xb" << "0" << "" << "2-2";
    QTest::newRow("more and different") << "ab" << "axcd" << "1" << "2-3" << "";
    QTest::newRow("first taken away") << "abc" << "bc" << "0 1" << "" << "2-2";
}

void RowListTest::onlyWhatDiffersIsTold()
{
    QFETCH(QString, before);
    QFETCH(QString, after);
    QFETCH(QString, changed);
    QFETCH(QString, inserted);
    QFETCH(QString, removed);
    RowList<Row> list;
    const QAbstractItemModelTester tester(&list, QAbstractItemModelTester::FailureReportingMode::QtTest);
    list.setRows(rows(before));
    QStringList saidChanged, saidInserted, saidRemoved;
    connect(&list, &QAbstractItemModel::dataChanged, this, [&](const QModelIndex& from, const QModelIndex& to) {
        QCOMPARE(from, to);
        saidChanged << QString::number(from.row());
    });
    const auto range = [](QStringList& said) {
        return [&said](const QModelIndex&, int from, int to) { said << QStringLiteral("%1-%2").arg(from).arg(to); };
    };
    connect(&list, &QAbstractItemModel::rowsInserted, this, range(saidInserted));
    connect(&list, &QAbstractItemModel::rowsRemoved, this, range(saidRemoved));
    QSignalSpy reset(&list, &QAbstractItemModel::modelReset);
    list.setRows(rows(after));
    QCOMPARE(namesIn(list), after);
    QCOMPARE(saidChanged.join(QLatin1Char(' ')), changed);
    QCOMPARE(saidInserted.join(QLatin1Char(' ')), inserted);
    QCOMPARE(saidRemoved.join(QLatin1Char(' ')), removed);
    QCOMPARE(reset.count(), 0);
    QVERIFY(list.rows() == rows(after));
}

QTEST_GUILESS_MAIN(RowListTest)
#include "test_rowlist.moc"
