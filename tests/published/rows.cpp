// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/published/rows.h"

#include <QFile>
#include <QJsonDocument>
#include <QRegularExpression>
#include <cmath>

namespace steelyard::published {

namespace {

const QString number = QStringLiteral(R"([-+]?\d+(?:\.\d*)?(?:[eE][-+]?\d+)?)");

QStringList fields(const QString& line)
{
    QStringList out(QString{});
    bool quoted = false;
    for (int i = 0; i < line.size(); ++i) {
        if (line[i] == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"')
            out.last() += line[i++];
        else if (line[i] == '"')
            quoted = !quoted;
        else if (line[i] == ',' && !quoted)
            out += QString();
        else
            out.last() += line[i];
    }
    return out;
}

double leadingNumber(const QString& text)
{
    const auto match = QRegularExpression(QStringLiteral("^\\s*(%1)").arg(number)).match(text);
    return match.hasMatch() ? match.captured(1).toDouble() : std::nan("");
}

}

std::string textOf(const QString& file)
{
    QFile in(QStringLiteral(PUBLISHED_FOLDER "/") + file);
    if (!in.open(QIODevice::ReadOnly))
        qFatal("cannot read %s", qPrintable(in.fileName()));
    return in.readAll().toStdString();
}

QList<QStringList> csvLines(const QString& file)
{
    QList<QStringList> lines;
    const QStringList all = QString::fromStdString(textOf(file)).split('\n');
    for (const QString& line : all)
        if (!line.isEmpty() && !line.startsWith('#'))
            lines += fields(line);
    return lines;
}

QVector<Row> rowsOf(const QString& file)
{
    auto lines = csvLines(file);
    const QStringList head = lines.takeFirst();
    QVector<Row> rows;
    for (const QStringList& f : lines) {
        if (f.size() != 10 || head.size() != 10)
            qFatal("%s: a row of %d fields", qPrintable(file), static_cast<int>(f.size()));
        rows += {f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8], f[9]};
    }
    return rows;
}

QMap<QString, std::vector<double>> columnsOf(const QString& file)
{
    auto lines = csvLines(file);
    const QStringList head = lines.takeFirst();
    QMap<QString, std::vector<double>> columns;
    for (const QStringList& line : lines)
        for (int i = 0; i < head.size(); ++i)
            columns[head[i]].push_back(leadingNumber(line.value(i)));
    return columns;
}

std::vector<double> lastNumbersOf(const QString& file)
{
    static const QRegularExpression between(QStringLiteral("[,\\t]"));
    std::vector<double> out;
    for (const QStringList& line : csvLines(file)) {
        bool isNumber = false;
        const double last = line.last().split(between).last().toDouble(&isNumber);
        if (isNumber)
            out.push_back(last);
    }
    return out;
}

QVector<double> allNumbersIn(const QString& text)
{
    QVector<double> out;
    auto found = QRegularExpression(QStringLiteral("\\d+(?:\\.\\d+)?")).globalMatch(text);
    while (found.hasNext())
        out += found.next().captured().toDouble();
    return out;
}

QJsonObject workedExample(const QString& id)
{
    QFile in(QStringLiteral(PUBLISHED_FOLDER "/data/worked_examples.md"));
    if (!in.open(QIODevice::ReadOnly))
        qFatal("cannot read %s", qPrintable(in.fileName()));
    const QStringList blocks = QString::fromUtf8(in.readAll()).split(QStringLiteral("```"));
    for (const QString& block : blocks)
        if (block.startsWith(QStringLiteral("json")))
            if (const auto example = QJsonDocument::fromJson(block.mid(4).toUtf8()).object(); example[QStringLiteral("id")].toString() == id)
                return example;
    return {};
}

double given(const Row& row, const QString& name)
{
    const auto match = QRegularExpression(QStringLiteral("(?:^|[^\\w'])%1\\s*[= ]\\s*(%2)").arg(QRegularExpression::escape(name), number)).match(row.inputs);
    return match.hasMatch() ? match.captured(1).toDouble() : std::nan("");
}

QVector<double> numbersIn(const QString& expected)
{
    QVector<double> out;
    for (const QString& part : expected.split(';'))
        out += leadingNumber(part);
    return out;
}

std::optional<Tolerance> toleranceOf(const QString& text)
{
    static const QRegularExpression percent(QStringLiteral("^±(%1)\\s*%").arg(number)), distance(QStringLiteral("^±(%1)").arg(number)), share(QStringLiteral("^(%1)(?: rel.*)?$").arg(number));
    if (const auto m = percent.match(text); m.hasMatch())
        return Tolerance{0, m.captured(1).toDouble() / 100};
    if (const auto m = distance.match(text); m.hasMatch())
        return Tolerance{m.captured(1).toDouble(), 0};
    if (const auto m = share.match(text); m.hasMatch())
        return Tolerance{0, m.captured(1).toDouble()};
    if (text == QStringLiteral("exact"))
        return Tolerance{0, 1e-15};
    return std::nullopt;
}

Account::Account(const QString& file, const QStringList& topics)
{
    for (const Row& row : rowsOf(file))
        if (topics.contains(row.topic))
            m_rows += row;
}

void Account::computes(const QStringList& ids, const Compute& compute)
{
    for (const QString& id : ids)
        m_compute[id] = compute;
}

void Account::standsAside(const QStringList& ids, const QString& reason)
{
    for (const QString& id : ids)
        m_aside[id] = reason;
}

const Account::Compute* Account::computeFor(const QString& id) const
{
    const QString prefix = id.left(id.lastIndexOf('-') + 1);
    for (const QString& key : {id, prefix})
        if (const auto at = m_compute.find(key); at != m_compute.end())
            return &*at;
    return nullptr;
}

QString Account::verdict(const Row& row) const
{
    const auto* compute = computeFor(row.id);
    if (!compute)
        return {};
    const auto tolerance = toleranceOf(row.tolerance);
    const auto expected = numbersIn(row.expected), actual = (*compute)(row);
    const QString origin = QStringLiteral(" [%1; %2]").arg(row.source, row.howKnown);
    if (!tolerance)
        return QStringLiteral("no tolerance in \"%1\"").arg(row.tolerance) + origin;
    if (expected.size() != actual.size())
        return QStringLiteral("%1 numbers for %2").arg(actual.size()).arg(expected.size()) + origin;
    for (int i = 0; i < actual.size(); ++i) {
        // where the certified value is 0 a share says nothing
        constexpr double nothing = 1e-12;
        const double allowed = tolerance->absolute + (expected[i] == 0 ? nothing : tolerance->share * std::abs(expected[i]));
        if (!(std::abs(actual[i] - expected[i]) <= allowed))
            return QStringLiteral("%1 for %2 %3, off by %4, allowed %5").arg(actual[i], 0, 'g', 17).arg(expected[i], 0, 'g', 17).arg(row.unit).arg(actual[i] - expected[i], 0, 'g', 3).arg(allowed, 0, 'g', 3) + origin;
    }
    return {};
}

QStringList Account::loose() const
{
    QStringList out;
    QStringList ids;
    for (const Row& row : m_rows) {
        ids += row.id;
        const bool aside = m_aside.contains(row.id), computed = computeFor(row.id) != nullptr;
        if (!computed && !aside)
            out += row.id + QStringLiteral(" is in no list");
        if (computed && aside)
            out += row.id + QStringLiteral(" is in both lists");
        const auto numbers = numbersIn(row.expected);
        if (!aside && std::any_of(numbers.begin(), numbers.end(), [](double v) { return std::isnan(v); }))
            out += row.id + QStringLiteral(" has no number to compare");
    }
    for (const QString& id : m_aside.keys() + m_compute.keys())
        if (!(id.endsWith('-') ? std::any_of(ids.begin(), ids.end(), [&](const QString& i) { return i.startsWith(id); }) : ids.contains(id)))
            out += id + QStringLiteral(" is no row");
    ids.sort();
    for (int i = 1; i < ids.size(); ++i)
        if (ids[i] == ids[i - 1])
            out += ids[i] + QStringLiteral(" stands twice");
    return out;
}

QStringList Account::context() const
{
    QStringList out;
    for (const Row& row : m_rows) {
        const bool memory = row.howKnown == QStringLiteral("memory");
        if (!memory && !m_aside.contains(row.id))
            continue;
        const QString kind = memory ? QStringLiteral("unverified, from memory") : QStringLiteral("context");
        out += QStringLiteral("%1: %2 %3: %4 %5 [%6]").arg(kind, row.id, row.quantity, row.expected, row.unit, row.source);
        if (m_aside.contains(row.id))
            out.last() += QStringLiteral(" not asserted: ") + m_aside[row.id];
    }
    return out;
}

}
