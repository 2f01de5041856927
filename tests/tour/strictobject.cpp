// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/tour/strictobject.h"

#include <QJsonArray>

StrictObject::StrictObject(const QJsonObject& object, const QString& path, QStringList& faults)
    : m_object(object), m_path(path), m_faults(&faults)
{
}

std::optional<double> StrictObject::number(const QString& key)
{
    m_asked.insert(key);
    if (!has(key))
        return std::nullopt;
    return neededNumber(key);
}

double StrictObject::neededNumber(const QString& key)
{
    return needed(key, QJsonValue::Double, QStringLiteral("a number")).toDouble();
}

QString StrictObject::neededText(const QString& key)
{
    const QString text = needed(key, QJsonValue::String, QStringLiteral("text")).toString();
    if (has(key) && m_object.value(key).isString() && text.trimmed().isEmpty())
        fault(key, QStringLiteral("is empty"));
    return text;
}

bool StrictObject::neededFlag(const QString& key)
{
    return needed(key, QJsonValue::Bool, QStringLiteral("true or false")).toBool();
}

bool StrictObject::flag(const QString& key, bool otherwise)
{
    m_asked.insert(key);
    return has(key) ? neededFlag(key) : otherwise;
}

int StrictObject::choice(const QString& key, const QStringList& words)
{
    const QString word = needed(key, QJsonValue::String, QStringLiteral("text")).toString();
    const auto at = words.indexOf(word);
    if (at < 0 && m_object.value(key).isString())
        fault(key, QStringLiteral("is \"%1\", not one of %2").arg(word, words.join(QStringLiteral(", "))));
    return static_cast<int>(std::max<qsizetype>(at, 0));
}

StrictObject StrictObject::neededObject(const QString& key)
{
    return {needed(key, QJsonValue::Object, QStringLiteral("an object")).toObject(), pathTo(key), *m_faults};
}

std::vector<StrictObject> StrictObject::neededList(const QString& key)
{
    std::vector<StrictObject> list;
    const QJsonArray array = needed(key, QJsonValue::Array, QStringLiteral("a list")).toArray();
    for (qsizetype i = 0; i < array.size(); ++i) {
        const QString at = QStringLiteral("%1[%2]").arg(key).arg(i);
        if (!array.at(i).isObject())
            fault(at, QStringLiteral("is not an object"));
        list.emplace_back(array.at(i).toObject(), pathTo(at), *m_faults);
    }
    return list;
}

void StrictObject::fault(const QString& key, const QString& what)
{
    m_faults->append(pathTo(key) + QStringLiteral(": ") + what);
}

void StrictObject::finish()
{
    for (const QString& key : m_object.keys())
        if (!m_asked.contains(key))
            fault(key, QStringLiteral("is not a key here"));
}

QJsonValue StrictObject::needed(const QString& key, QJsonValue::Type type, const QString& what)
{
    m_asked.insert(key);
    const QJsonValue value = m_object.value(key);
    if (value.isUndefined())
        fault(key, QStringLiteral("is missing"));
    else if (value.type() != type)
        fault(key, QStringLiteral("is not %1").arg(what));
    return value;
}

QString StrictObject::pathTo(const QString& key) const
{
    return m_path.endsWith(QStringLiteral(": ")) ? m_path + key : m_path + QLatin1Char('.') + key;
}
