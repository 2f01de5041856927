// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>

#include <algorithm>
#include <functional>
#include <vector>

/** One role of a row: its name in QML and how to read it. */
template <typename Row>
struct RowRole {
    QByteArray name;
    std::function<QVariant(const Row&)> read;
};

/** A list of plain rows for QML; `Row` says its roles by `static std::vector<RowRole<Row>> roles()` and compares by ==. */
template <typename Row>
class RowList : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override { return parent.isValid() ? 0 : static_cast<int>(m_rows.size()); }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override
    {
        const auto& all = roles();
        const auto at = static_cast<std::size_t>(role - Qt::UserRole);
        if (!index.isValid() || index.row() >= rowCount() || role < Qt::UserRole || at >= all.size())
            return {};
        return all[at].read(m_rows[static_cast<std::size_t>(index.row())]);
    }
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override
    {
        QHash<int, QByteArray> names;
        for (std::size_t i = 0; i < roles().size(); ++i)
            names.insert(Qt::UserRole + static_cast<int>(i), roles()[i].name);
        return names;
    }
    [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }

    /// Delegates stay where rows stay: only what differs is told.
    void setRows(std::vector<Row> rows)
    {
        const int before = rowCount(), after = static_cast<int>(rows.size());
        if (after < before) {
            beginRemoveRows({}, after, before - 1);
            m_rows.resize(rows.size());
            endRemoveRows();
        }
        for (std::size_t i = 0; i < m_rows.size(); ++i) {
            if (m_rows[i] == rows[i])
                continue;
            m_rows[i] = rows[i];
            const QModelIndex at = index(static_cast<int>(i));
            Q_EMIT dataChanged(at, at);
        }
        if (after > before) {
            beginInsertRows({}, before, after - 1);
            m_rows.insert(m_rows.end(), rows.begin() + before, rows.end());
            endInsertRows();
        }
    }

private:
    static const std::vector<RowRole<Row>>& roles()
    {
        static const std::vector<RowRole<Row>> all = Row::roles();
        return all;
    }

    std::vector<Row> m_rows;
};
