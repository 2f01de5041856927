// SPDX-License-Identifier: GPL-3.0-or-later
#include "mobile/strength/testeditor.h"

#include "core/work/keeping/athlete/keeptest.h"
#include "core/work/keeping/putright.h"
#include "core/work/records/codec.h"
#include "core/work/strength/standing.h"
#include "mobile/follow.h"
#include "mobile/strength/strengthtexts.h"
#include "mobile/text/keepingtexts.h"
#include "mobile/text/say.h"

#include <QPointer>

#include <array>

using namespace steelyard;

namespace {

constexpr std::array canHang{Method::Chains, Method::BandsBelow, Method::BandsAbove, Method::BenchAid, Method::Machine};
constexpr int firstReps = 5, mostRepsCounted = 30, mostReserve = 5;

}

TestEditor::TestEditor(QObject* parent)
    : FieldEditor(parent), m_day([this] { return std::optional(form().day); }, [this](const TypedDay& day) { change([&](TestForm& form) { form.day = day; }); }, this)
{
}

void TestEditor::setBook(BookService* book)
{
    if (!follow(this, m_book, book, [this] { refresh(); }))
        return;
    Q_EMIT targetChanged();
    refresh();
}

void TestEditor::setAthleteId(const QString& id)
{
    m_athlete = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    Q_EMIT targetChanged();
    refresh();
}

QString TestEditor::lift() const
{
    return QString::fromStdString(partOf(m_lift));
}

void TestEditor::setLift(const QString& lift)
{
    m_lift = liftIn(lift.toStdString()).value_or(LiftId{});
    Q_EMIT targetChanged();
    refresh();
}

void TestEditor::setTestId(const QString& id)
{
    m_id = RecordId::fromHex(id.toStdString()).value_or(RecordId{});
    Q_EMIT targetChanged();
    refresh();
}

void TestEditor::refresh()
{
    m_day.setDeskService(deskService());
    m_day.readAgain();
    FieldEditor::refresh();
}

const StrengthTest* TestEditor::known() const
{
    return m_book && !m_id.isNone() ? m_book->book().test(strengthTestPlace(m_id, m_athlete)) : nullptr;
}

QString TestEditor::draftKey() const
{
    return testform::draftKey(m_athlete, m_lift, m_id);
}

bool TestEditor::isBodyLifted() const
{
    return liftsTheBody(m_lift);
}

TestForm TestEditor::keptForm() const
{
    if (const StrengthTest* test = known())
        return testform::of(*test);
    TestForm form;
    if (!m_book)
        return form;
    form.day = TypedDay::of(m_book->today());
    const Athlete* athlete = m_book->book().athlete(m_athlete);
    if (athlete && isBodyLifted())
        form.body = bodyMassOn(*athlete, m_book->today());
    return form;
}

TestForm TestEditor::form() const
{
    const auto bytes = m_book ? m_book->draft(draftKey()) : std::nullopt;
    const auto draft = bytes ? testform::in(*bytes) : std::nullopt;
    return draft ? *draft : keptForm();
}

void TestEditor::setForm(const TestForm& form)
{
    if (!m_book || this->form() == form)
        return;
    if (form == keptForm())
        m_book->throwDraft(draftKey());
    else if (const QByteArray bytes = testform::bytesOf(form, m_book->book().settings()); !bytes.isEmpty())
        m_book->setDraft(draftKey(), bytes);
    m_book->hush();
    refresh();
}

StrengthTest TestEditor::testOf(const TestForm& form) const
{
    StrengthTest test = testform::test(form, m_book->today());
    test.id = m_id;
    test.athlete = m_athlete;
    test.lift = m_lift;
    if (const StrengthTest* before = known())
        test.note = before->note;
    return test;
}

std::vector<const SavedSetup*> TestEditor::setups() const
{
    std::vector<const SavedSetup*> list;
    if (m_book)
        for (const SavedSetup* setup : m_book->book().setupsOf(m_athlete))
            if (setup->lift == m_lift)
                list.push_back(setup);
    return list;
}

QString TestEditor::trouble(const TestForm& form) const
{
    if (!form.load)
        return tr("The load comes first.");
    if (isBodyLifted() && !form.body)
        return tr("Her body mass comes first: it is lifted too.");
    if (!form.maximum && !form.reps)
        return tr("Count the reps that were done.");
    if (!form.maximum && form.reps == 0 && !form.missed)
        return tr("No rep done and none missed is no test.");
    const StrengthTest* before = known();
    const bool sameDay = before && TypedDay::of(before->day) == form.day;
    return form.isToday || sameDay ? QString() : DayEditor::trouble(form.day, m_book->today());
}

TestShown TestEditor::shown() const
{
    TestShown out;
    const Athlete* athlete = m_book ? m_book->book().athlete(m_athlete) : nullptr;
    if (!athlete)
        return out;
    const TestForm now = form();
    out.who = tr("%1, %2").arg(QString::fromStdString(athlete->name), keepingtexts::lift(m_lift, m_book->book()));
    out.minor = majorityOn(athlete->birthYear, m_book->today(), m_book->book().limits().adultFrom()) != Majority::Adult;
    if (const QString wrong = trouble(now); !wrong.isEmpty()) {
        // what is still to be typed is no trouble
        (now.load && (now.reps || now.maximum) ? out.trouble : out.head) = wrong;
        return out;
    }
    const StrengthTest test = testOf(now);
    out.fact = strengthtexts::set(test);
    if (const auto max = oneRepMaxFrom(test)) {
        out.head = tr("Her 1RM: %1").arg(strengthtexts::range(*max));
        out.body = max->isTested ? tr("middle %1, tested").arg(strengthtexts::middle(*max)) : tr("middle %1, estimated by seven formulas").arg(strengthtexts::middle(*max));
        if (!now.maximum && !now.reserve && !now.missed)
            out.body = tr("%1; with nothing said of the reserve it is taken for none").arg(out.body);
    } else {
        const auto why = strengthtexts::refusal(max.error(), test);
        out.head = tr("No maximum follows: %1").arg(why.head);
        out.body = tr("%1 It can be kept, and counts for nothing.").arg(why.body);
    }
    return out;
}

TestTyped TestEditor::typed() const
{
    TestTyped out;
    if (!m_book)
        return out;
    const TestForm now = form();
    out.reps = now.reps ? QString::number(*now.reps) : tr("not counted");
    out.reserve = now.reserve ? *now.reserve + 1 : 0;
    out.missed = now.missed;
    out.maximum = now.maximum;
    out.lifted = isBodyLifted();
    out.helped = now.helped;
    out.today = now.isToday;
    for (const Method method : canHang) {
        out.things << strengthtexts::hung(method);
        out.hung << now.hung.contains(method);
    }
    out.setups << tr("none");
    for (const SavedSetup* setup : setups()) {
        if (setup->id == now.setup)
            out.setup = static_cast<int>(out.setups.size());
        out.setups << tr("%1, %2").arg(keepingtexts::day(setup->day, m_book->today()), say::inMassUnit(say::entered(setup->setup.bar.wanted)));
    }
    return out;
}

bool TestEditor::isDrafted() const
{
    return m_book && m_book->draft(draftKey());
}

bool TestEditor::canKeep() const
{
    return m_book && isDrafted() && trouble(form()).isEmpty();
}

std::vector<FieldSpec> TestEditor::specs() const
{
    if (!m_book)
        return {};
    const TestForm now = form();
    const bool body = isBodyLifted();
    std::vector<FieldSpec> all;
    // with the body lifted too, nothing hung on her is a load
    all.push_back({QStringLiteral("load"), !body ? tr("Load") : now.helped ? tr("Taken off her") : tr("Hung on her"), inMass(now.load), {4, 2, body ? 0.0 : 0.5, 999}, false,
                   body ? tr("0 where nothing is") : tr("bar, collars and plates"), true});
    if (!body)
        for (const StrengthTest* test : m_book->book().testsOf(m_athlete, m_lift))
            if (test->id != m_id)
                all.back().last = say::shown(test->load.quantity());
    if (body) {
        const Athlete* athlete = m_book->book().athlete(m_athlete);
        const bool filledIn = m_id.isNone() && athlete && now.body && now.body == bodyMassOn(*athlete, m_book->today());
        all.push_back({QStringLiteral("body"), tr("Body mass"), inMass(now.body), {3, 1, 15, 300}, filledIn, filledIn ? tr("as measured last") : QString(), true});
    }
    if (now.maximum)
        all.push_back({QStringLiteral("jump"), tr("Smallest jump"), inMass(now.jump), {3, 2, 0.1, 100}, false, tr("from one load that was tried to the next; %1 where nobody noted it").arg(say::massWithUnit(usualJump))});
    return all;
}

KeepOutcome TestEditor::keepNumber(const QString& key, const KeyedFigure& keyed)
{
    const auto place = key == QLatin1String("load") ? &TestForm::load : key == QLatin1String("body") ? &TestForm::body : key == QLatin1String("jump") ? &TestForm::jump : nullptr;
    if (!place || !m_book)
        return {tr("There is no such number."), {}};
    change([&](TestForm& form) { form.*place = keyed.mass(); });
    return {};
}

bool TestEditor::canClear(const QString& key) const
{
    return key == QLatin1String("jump") && form().jump.has_value();
}

bool TestEditor::clearNumber(const QString& key)
{
    if (!canClear(key))
        return false;
    change([](TestForm& form) { form.jump.reset(); });
    return true;
}

void TestEditor::stepReps(bool up)
{
    change([up](TestForm& form) {
        const int next = form.reps ? *form.reps + (up ? 1 : -1) : firstReps;
        // none done is a test only with one missed
        if (next >= (form.missed ? 0 : 1) && next <= mostRepsCounted)
            form.reps = next;
    });
}

void TestEditor::setReserve(int index)
{
    if (index < 0 || index > mostReserve + 1)
        return;
    change([index](TestForm& form) { form.reserve = index == 0 ? std::nullopt : std::optional(index - 1); });
}

void TestEditor::setMissed(bool missed)
{
    change([missed](TestForm& form) {
        form.missed = missed;
        if (!missed && form.reps == 0)
            form.reps.reset();
    });
}

void TestEditor::setMaximum(bool maximum)
{
    change([maximum](TestForm& form) { form.maximum = maximum; });
}

void TestEditor::setHelped(bool helped)
{
    change([helped](TestForm& form) { form.helped = helped; });
}

void TestEditor::hang(int index)
{
    if (index < 0 || static_cast<std::size_t>(index) >= canHang.size())
        return;
    change([method = canHang[static_cast<std::size_t>(index)]](TestForm& form) {
        if (form.hung.erase(method) == 0)
            form.hung.insert(method);
    });
}

void TestEditor::chooseSetup(int index)
{
    const auto list = setups();
    if (index < 0 || static_cast<std::size_t>(index) > list.size())
        return;
    const SavedSetup* setup = index == 0 ? nullptr : list[static_cast<std::size_t>(index) - 1];
    change([setup](TestForm& form) {
        form.setup = setup ? setup->id : RecordId{};
        form.hung = setup ? hungInTest(setup->setup) : std::set<Method>{};
    });
}

void TestEditor::setToday(bool today)
{
    change([today](TestForm& form) { form.isToday = today; });
}

WhenTold TestEditor::whenKept()
{
    return m_book->teller([self = QPointer<TestEditor>(this), book = QPointer<BookService>(m_book), draft = draftKey()](const RecordId&) {
        if (book)
            book->throwDraft(draft);
        if (self) {
            self->refresh();
            Q_EMIT self->kept();
        }
    });
}

void TestEditor::keep()
{
    if (!canKeep())
        return;
    const StrengthTest test = testOf(form());
    if (known())
        putStrengthTestRight(m_book->keeping(), test, whenKept());
    else
        keepStrengthTest(m_book->keeping(), test, whenKept());
}

void TestEditor::throwDraft()
{
    if (!m_book)
        return;
    m_book->throwDraft(draftKey());
    m_book->hush();
    refresh();
}

void TestEditor::takeOut()
{
    if (known())
        steelyard::takeOut(m_book->keeping(), strengthTestPlace(m_id, m_athlete), whenKept());
}
