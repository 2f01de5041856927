// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/work/keeping/keeper.h"
#include "core/work/records/seasonbook.h"

#include <deque>
#include <memory>

namespace steelyard {

/// Why an entry cannot be kept as it stands; the sentences stand in the interface.
enum class Unfit : std::uint8_t {
    NameMissing,        ///< everything kept has a name
    TextTooLong,        ///< shorten it: a name has at most 200 bytes, notes 20,000
    TextUnreadable,     ///< not a text at all
    BirthYearUnlikely,  ///< before 1900 or after this year
    BirthYearFirst,     ///< without it nobody knows whether a guardian has to agree
    AgreementFirst,     ///< may be under 18: only name, squad and loads until a guardian's agreement is recorded
    AgreementUnfit,     ///< who agreed is missing, or the day is still to come
    QuantityUnfit,      ///< a number that cannot be right
    NothingMeasured,    ///< neither mass nor height
    ReadingsTooFew,     ///< a sled has to be pulled at two masses or more
    RepsUnfit,          ///< reps, reps in reserve and what was missed do not go together
    WhoMissing,         ///< who gave, set or took it back is not said
    UntilBeforeDay,     ///< it would end before it begins
    NothingNamed,       ///< only some may be done, and neither what not nor why is said; or all or none, and something is named
    LimitUnfit,         ///< a limit lies where none can lie
    DayAhead,           ///< the day of a measurement is still to come
    OnlyMeasurement,    ///< without it the thing would be gone: that is taken out instead
    AthleteUnknown,     ///< not there, or taken out
    VenueUnknown,
    ItemUnknown,
    SetupUnknown,
    LiftUnknown,
    RecordUnknown,
    AlreadySaid,        ///< taken back or lifted before
    SampleTakesNobody,  ///< a sample is open: no person is added to it, and nothing about a person is written in words
    NothingToUndo,
    ChangedSince,       ///< something newer stands there: undo that first
};

/// What came of asking for something to be kept. Where it was not, everything stands as it was.
struct Told {
    RecordId id;                           ///< of the record; a new one's too, once it is kept
    std::optional<Unfit> unfit;            ///< not asked of the vault at all
    std::optional<vault::Refusal> refusal; ///< the vault's reason
    bool reserveUsed = false;              ///< kept, and the disk is full now

    [[nodiscard]] bool kept() const { return !unfit && !refusal; }
    bool operator==(const Told&) const = default;
};

using WhenTold = std::function<void(Told)>;

/// What somebody did, for the list that it can be undone from.
enum class Deed : std::uint8_t { AthleteKept, BodySizeKept, LiftKept, VenueKept, ItemKept, SetupKept, SettingsKept, PutRight, TakenOut, Settled, Inspected, LoanKept, TakenAlong, ListCopied,
                                 TestKept, ClearanceKept, ClearanceTakenBack, StatusKept, StatusLifted, LimitsKept, IsometricPullKept, CapKept, SurfaceKept, SledRunKept };

/// One deed with the entries it made, and what stood in their registers before.
struct DeedDone {
    Deed deed = Deed::AthleteKept;
    RecordId id;
    std::chrono::sys_days day{};
    std::vector<journal::Held> entries;
    std::vector<std::optional<journal::Held>> before; ///< per entry; nothing where nothing stood
    bool undoing = false;                             ///< asked to be taken back, and not answered yet
};

/// The day and zone at the place where the device is.
struct Here {
    std::chrono::sys_days day{};
    std::string zone; ///< as "Europe/Berlin"; empty when not known
};

/// Every use-case that keeps something goes through here: what it wants written is handed to the keeper, and only when that has it
/// on the disk does the book take it. Where that fails, book and list of deeds are as they were.
class SeasonKeeping {
public:
    /// So many deeds can be undone.
    static constexpr std::size_t mostUndoCount = 20;

    SeasonKeeping(SeasonBook& book, Keeper& keeper, NewIds newIds, std::function<Here()> here);

    [[nodiscard]] const SeasonBook& book() const { return m_book; }
    [[nodiscard]] Here here() const { return m_here(); }
    /// Whether the vault is a sample, whose passphrase everybody knows: nobody real is to come into it.
    [[nodiscard]] bool isSample() const { return m_sample; }
    void setSample(bool sample) { m_sample = sample; }
    [[nodiscard]] RecordId newId() const { return m_newIds(); }
    /// The last deed first.
    [[nodiscard]] const std::deque<DeedDone>& deeds() const { return m_deeds; }
    /// Locked: what was done is not undone from here any more.
    void forget();

    /// Keeps the drafts as one deed; nothing to write is kept too.
    void keep(Deed deed, const RecordId& id, std::vector<journal::Draft> drafts, WhenTold told);
    /// Keeps what nobody would want to undo: it is no deed, and the list stays as it was.
    void keepUnlisted(const RecordId& id, std::vector<journal::Draft> drafts, WhenTold told);
    /// Keeps what takes a deed back, one draft for each of its entries in their order; then it is off the list.
    void keepUndone(std::size_t index, std::vector<journal::Draft> drafts, WhenTold told);

    [[nodiscard]] Subscription onChanged(std::function<void()> told) { return m_listeners.add(std::move(told)); }

private:
    /// What was said before is said again by another entry: earlier deeds are taken back from there.
    void standIn(const journal::EntryId& before, const journal::Held& same);
    void hand(std::vector<journal::Draft> drafts, const RecordId& id, WhenTold told, std::function<void(const KeepResult&)> kept);

    SeasonBook& m_book;
    Keeper& m_keeper;
    NewIds m_newIds;
    std::function<Here()> m_here;
    std::deque<DeedDone> m_deeds;
    bool m_sample = false;
    Listeners m_listeners;
    std::shared_ptr<char> m_life = std::make_shared<char>();
};

/// Puts the drafts of one use-case together. Fields that say already what they should are left alone.
class Drafting {
public:
    explicit Drafting(const SeasonKeeping& keeping) : m_book(keeping.book()), m_here(keeping.here()) {}

    /// Gives a field its value; nothing takes it back.
    void set(const Place& place, std::uint32_t fieldNumber, const std::optional<journal::ByteBuffer>& content, const std::string& part = {});
    /// A text; an empty one is nothing.
    void setText(const Place& place, std::uint32_t fieldNumber, const std::string& text);
    void add(const Place& place, std::chrono::sys_days day, journal::ByteBuffer content);
    void putRight(const Place& place, std::chrono::sys_days day, journal::ByteBuffer content);
    void remove(const Place& place, bool removed);
    /// Another entry of the register of `entry`, that says what `saying` said, on that one's day; nothing takes the value back.
    void again(const journal::Held& entry, const journal::Held* saying);

    [[nodiscard]] std::vector<journal::Draft> drafts() && { return std::move(m_drafts); }

private:
    void put(journal::Draft draft);
    [[nodiscard]] journal::Draft begun(journal::Kind kind, const Place& place) const;

    const SeasonBook& m_book;
    Here m_here;
    std::vector<journal::Draft> m_drafts;
};

}
