// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/deskservice.h"
#include "mobile/models/rows.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

/** The pull by height as a table, from the top down. */
class HeightsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(DeskService* desk READ desk WRITE setDesk NOTIFY changed REQUIRED FINAL)
    Q_PROPERTY(QString title READ title NOTIFY changed FINAL)
    Q_PROPERTY(QAbstractListModel* lines READ lines CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] DeskService* desk() const { return m_desk; }
    void setDesk(DeskService* desk);
    /// The answer in a sentence, as over the picture.
    [[nodiscard]] QString title() const { return m_title; }
    [[nodiscard]] QAbstractListModel* lines() { return &m_lines; }

Q_SIGNALS:
    void changed();

private:
    void refresh();

    DeskService* m_desk = nullptr;
    QString m_title;
    RowList<HeightRow> m_lines;
};
