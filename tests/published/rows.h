// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>
#include <QMap>
#include <QMetaType>
#include <QString>
#include <QStringList>
#include <QVector>

#include <functional>
#include <optional>

namespace steelyard::published {

/// One published or derived value with its origin.
struct Row {
    QString id, topic, quantity, inputs, expected, unit, tolerance, source, howKnown, note;
};

/// Rows of a CSV file in tests/published; quoted fields may hold commas. Comment lines begin with #.
[[nodiscard]] QList<QStringList> csvLines(const QString& file);
[[nodiscard]] QVector<Row> rowsOf(const QString& file);
/// Columns of numbers by their heading.
[[nodiscard]] QMap<QString, std::vector<double>> columnsOf(const QString& file);

/// A file in tests/published as it stands.
[[nodiscard]] std::string textOf(const QString& file);
/// The last number of every line that is one of numbers, whatever stands between them: a record with or without its times.
[[nodiscard]] std::vector<double> lastNumbersOf(const QString& file);
/// Every number in a text, in order; a dash between two is none's sign.
[[nodiscard]] QVector<double> allNumbersIn(const QString& text);

/// One of worked_examples.md by its id; empty when there is none.
[[nodiscard]] QJsonObject workedExample(const QString& id);

/// The number behind a name in "d=3 mm; p=16 mm", or in "G=0.4 MPa".
[[nodiscard]] double given(const Row& row, const QString& name);
/// All leading numbers of "49.033250; 73.549875".
[[nodiscard]] QVector<double> numbersIn(const QString& expected);

/// How far a number may be off: an absolute distance and a share of the number.
struct Tolerance {
    double absolute = 0, share = 0;
};
/// "±6 % (worst case …)", "±0.01", "1e-9 rel", a bare 1e-9, "exact"; none when it is no number.
[[nodiscard]] std::optional<Tolerance> toleranceOf(const QString& text);

/// What a test says about its rows: how the engine makes the numbers of one, or why it does not.
class Account {
public:
    using Numbers = QVector<double>;
    using Compute = std::function<Numbers(const Row&)>;

    Account(const QString& file, const QStringList& topics);

    /// By id, or by a prefix of it that ends in a dash.
    void computes(const QStringList& ids, const Compute& compute);
    void standsAside(const QStringList& ids, const QString& reason);

    [[nodiscard]] const QVector<Row>& rows() const { return m_rows; }
    /// Empty when the row holds; otherwise what is wrong, with its source.
    [[nodiscard]] QString verdict(const Row& row) const;
    /// Ids that no row has, rows that are in both lists or in none.
    [[nodiscard]] QStringList loose() const;
    /// Rows that are not asserted, and rows whose value is from memory, a line each.
    [[nodiscard]] QStringList context() const;

private:
    [[nodiscard]] const Compute* computeFor(const QString& id) const;

    QVector<Row> m_rows;
    QMap<QString, Compute> m_compute;
    QMap<QString, QString> m_aside;
};

}

Q_DECLARE_METATYPE(steelyard::published::Row)

/// The functions every test of rows has; `m_account` is filled in its constructor.
#define STEELYARD_ROWS_TEST \
private Q_SLOTS: \
    void rows_data() \
    { \
        QTest::addColumn<steelyard::published::Row>("row"); \
        for (const auto& row : m_account.rows()) \
            QTest::addRow("%s %s", qPrintable(row.id), qPrintable(row.quantity)) << row; \
    } \
    void rows() \
    { \
        QFETCH(steelyard::published::Row, row); \
        const QString wrong = m_account.verdict(row); \
        QVERIFY2(wrong.isEmpty(), qPrintable(wrong)); \
    } \
    void everyRowIsAccountedFor() \
    { \
        const QStringList loose = m_account.loose(); \
        QVERIFY2(loose.isEmpty(), qPrintable(loose.join(QStringLiteral("; ")))); \
        QVERIFY(!m_account.rows().isEmpty()); \
        for (const QString& line : m_account.context()) \
            qInfo("%s", qPrintable(line)); \
    }
