// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "mobile/bookservice.h"
#include "mobile/editors/fieldeditor.h"

/** What measuring a chain and measuring a band have in common: a draft on the desk until it is kept. */
class ItemEditor : public FieldEditor {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a form of its own kind")
    Q_PROPERTY(QString itemId READ itemId WRITE setItemId NOTIFY itemIdChanged FINAL)
    Q_PROPERTY(BookService* book READ book WRITE setBook NOTIFY bookChanged FINAL)
    Q_PROPERTY(QString venueId MEMBER m_venueId NOTIFY venueIdChanged FINAL)
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY changed FINAL)
    Q_PROPERTY(bool pair READ isPair WRITE setPair NOTIFY changed FINAL)
    Q_PROPERTY(QStringList venues READ venues NOTIFY changed FINAL)
    Q_PROPERTY(int venue READ venue WRITE setVenue NOTIFY changed FINAL)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed FINAL)
    Q_PROPERTY(QString answer READ answer NOTIFY changed FINAL)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed FINAL)
    Q_PROPERTY(bool drafted READ isDrafted NOTIFY changed FINAL)

public:
    using FieldEditor::FieldEditor;

    /// As hexadecimal digits; empty is a new one, and so is what no id looks like.
    [[nodiscard]] QString itemId() const { return QString::fromStdString(m_id.hex()); }
    void setItemId(const QString& id);
    [[nodiscard]] BookService* book() const { return m_book; }
    void setBook(BookService* book);
    [[nodiscard]] QString name() const;
    void setName(const QString& name);
    [[nodiscard]] bool isPair() const { return item().pair; }
    void setPair(bool pair);
    /// "no venue", then each one that a kept item can be moved to; none for a new item, which belongs where it is measured.
    [[nodiscard]] QStringList venues() const;
    [[nodiscard]] int venue() const;
    void setVenue(int index);
    /// Whether there is something to measure by; `answer` says what it comes to, `trouble` what is missing.
    [[nodiscard]] virtual bool canKeep() const = 0;
    [[nodiscard]] virtual QString answer() const = 0;
    [[nodiscard]] virtual QString trouble() const = 0;
    /// What the form says it measures now.
    [[nodiscard]] steelyard::Measured measured() const { return item().measurement; }
    /// Leaves name and number as they are and empties the rest, for whoever measures it again.
    void measureAnew();
    /// Entries that are not kept yet.
    [[nodiscard]] bool isDrafted() const;
    /// Puts the item into the kit as it stands; its id, empty when it cannot be kept.
    Q_INVOKABLE QString keep();
    /// Throws the entries away that are not kept.
    Q_INVOKABLE void throwDraft();
    /// Takes the item out of the kit and off the bar.
    Q_INVOKABLE void remove();

Q_SIGNALS:
    void itemIdChanged();
    void bookChanged();
    void venueIdChanged();
    /// On the disk where there is a book, else in the kit on the desk.
    void kept();

protected:
    [[nodiscard]] steelyard::KitItem item() const;
    void setItem(const steelyard::KitItem& item);
    [[nodiscard]] virtual bool makesChains() const = 0;
    /// The name an item gets when none is given.
    [[nodiscard]] virtual QString ownName(const steelyard::KitItem& item) const = 0;

private:
    void keepInBook(steelyard::KitItem item);

    BookService* m_book = nullptr;
    QString m_venueId;
    steelyard::RecordId m_id;
};
