// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QJsonObject>
#include <QJsonValue>
#include <QSet>
#include <QStringList>

#include <optional>
#include <vector>

/** A JSON object that is asked for its keys by type; what does not fit, and what nobody asked for, is a fault. */
class StrictObject {
public:
    /// `path` says where the object stands in its file; faults go to `faults`, which outlives it.
    StrictObject(const QJsonObject& object, const QString& path, QStringList& faults);

    [[nodiscard]] bool has(const QString& key) const { return m_object.contains(key); }
    [[nodiscard]] std::optional<double> number(const QString& key);
    [[nodiscard]] double neededNumber(const QString& key);
    [[nodiscard]] QString neededText(const QString& key);
    [[nodiscard]] bool neededFlag(const QString& key);
    [[nodiscard]] bool flag(const QString& key, bool otherwise);
    /// The place of the key's text among the words; 0 with a fault when it is none of them.
    [[nodiscard]] int choice(const QString& key, const QStringList& words);
    [[nodiscard]] StrictObject neededObject(const QString& key);
    [[nodiscard]] std::vector<StrictObject> neededList(const QString& key);
    void fault(const QString& key, const QString& what);
    /// Faults for the keys that nobody asked for.
    void finish();

private:
    [[nodiscard]] QJsonValue needed(const QString& key, QJsonValue::Type type, const QString& what);
    [[nodiscard]] QString pathTo(const QString& key) const;

    QJsonObject m_object;
    QString m_path;
    QStringList* m_faults;
    QSet<QString> m_asked;
};
