// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Model
import Steelyard.Pages.Measure
import Steelyard.Pages.Squad

/** The pages of the people, and where each leads. */
QtObject {
    id: root

    required property PageStack stack
    required property DeskWork work
    readonly property Component squad: Component {
        SquadPage {
            view: SquadView { book: TheBook }
            places: root.stack.places
            place: root.stack.squadPlace
            onPlaceChosen: index => root.stack.go(index); onBackRequested: root.stack.back()
            onAthleteRequested: athleteId => root.stack.show(root.athlete, {athleteId: athleteId})
            onAddRequested: root.stack.show(root.athlete)
            onPreferencesRequested: root.stack.show(root.preferences); onDeedsRequested: root.stack.show(root.deeds)
            onReviewRequested: root.reviewRequested()
            onLockRequested: TheVault.lockNow()
        }
    }
    readonly property Component athlete: Component {
        AthletePage {
            id: athlete
            property string athleteId: ""
            editor: AthleteEditor { desk: TheDesk; book: TheBook; athleteId: athlete.athleteId }
            onBackRequested: root.stack.back()
            onNumberRequested: key => root.stack.key(athlete.editor, key)
            onLiftsRequested: root.stack.show(root.lifts, {athleteId: athlete.editor.athleteId})
            onSetupsRequested: root.stack.show(root.setups, {athleteId: athlete.editor.athleteId})
            onSizesRequested: root.sizesRequested(athlete.editor.athleteId); onStrengthRequested: root.strengthRequested(athlete.editor.athleteId)
            onStatusRequested: root.statusRequested(athlete.editor.athleteId); onClearancesRequested: root.clearancesRequested(athlete.editor.athleteId)
            onHereRequested: root.hereRequested(athlete.editor.athleteId)
            onAgreementRequested: root.stack.show(root.agreement, {editor: athlete.editor}); onRemoveRequested: root.stack.show(root.takeOut, {editor: athlete.editor})
        }
    }
    readonly property Component agreement: Component {
        AgreementPage { onBackRequested: root.stack.back(); onDone: root.stack.back() }
    }
    readonly property Component takeOut: Component {
        TakeOutPage { onBackRequested: root.stack.back(); onDone: root.stack.home() }
    }
    readonly property Component lifts: Component {
        LiftsPage {
            id: lifts
            property string athleteId: ""
            view: LiftsView { book: TheBook; athleteId: lifts.athleteId }
            onBackRequested: root.stack.back()
            onLiftRequested: lift => {
                root.work.take(lifts.athleteId, lift)
                root.stack.show(root.marks)
            }
            onAddRequested: root.stack.show(root.lift)
            onChangeRequested: lift => root.stack.show(root.lift, {which: lift})
        }
    }
    readonly property Component lift: Component {
        LiftPage {
            id: ownLift
            property string which: ""
            editor: LiftEditor { book: TheBook; lift: ownLift.which }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
        }
    }
    readonly property Component setups: Component {
        SetupsPage {
            id: setups
            property string athleteId: ""
            view: LiftsView { book: TheBook; athleteId: setups.athleteId }
            onBackRequested: root.stack.back()
            onSetupRequested: setupId => {
                root.work.open(setupId)
                root.stack.go(root.stack.kitPlace)
            }
        }
    }
    readonly property Component deeds: Component {
        DeedsPage { view: DeedsView { book: TheBook } onBackRequested: root.stack.back() }
    }
    readonly property Component marks: Component {
        MarksPage {
            id: marks
            editor: MarksEditor { desk: TheDesk }
            work: root.work
            onBackRequested: root.stack.back()
            onNumberRequested: key => root.stack.key(marks.editor, key)
            onDone: root.stack.go(root.stack.kitPlace)
            onRunRequested: root.stack.instead(root.marksRun)
        }
    }
    readonly property Component marksRun: Component {
        MarksRunPage {
            run: MarksRun { form: MarksEditor { desk: TheDesk } work: root.work }
            onDone: root.stack.back()
        }
    }
    readonly property Component preferences: Component {
        PreferencesPage {
            sample: TheVault.sample
            onBackRequested: root.stack.back(); onRemoveSampleRequested: root.stack.show(root.removeSample)
            onLimitsRequested: root.limitsRequested()
        }
    }
    readonly property Component removeSample: Component {
        RemoveSamplePage { vault: TheVault; onBackRequested: root.stack.back() }
    }
    signal sizesRequested(string athleteId)
    signal strengthRequested(string athleteId)
    signal reviewRequested()
    signal statusRequested(string athleteId)
    signal clearancesRequested(string athleteId)
    signal hereRequested(string athleteId)
    signal limitsRequested()
}
