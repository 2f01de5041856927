// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Steelyard.Model
import Steelyard.Pages.Strength

/** The pages of how strong somebody is, and where each leads. */
QtObject {
    id: root

    required property PageStack stack
    readonly property Component strength: Component {
        StrengthPage {
            id: strength
            property string athleteId: ""
            view: StrengthView { book: TheBook; athleteId: strength.athleteId }
            onBackRequested: root.stack.back()
            onLiftRequested: lift => root.showLift(strength.athleteId, lift)
        }
    }
    readonly property Component lift: Component {
        LiftStrengthPage {
            id: lift
            property string athleteId: ""
            property string lift: ""
            view: LiftStrengthView { book: TheBook; athleteId: lift.athleteId; lift: lift.lift }
            onBackRequested: root.stack.back()
            onAddRequested: root.stack.show(root.test, {athleteId: lift.athleteId, lift: lift.lift})
            onTestRequested: testId => root.stack.show(root.test, {athleteId: lift.athleteId, lift: lift.lift, testId: testId})
            StackView.onActivating: lift.view.refresh()
        }
    }
    readonly property Component test: Component {
        TestPage {
            id: test
            property string athleteId: ""
            property string lift: ""
            property string testId: ""
            editor: TestEditor { desk: TheDesk; book: TheBook; athleteId: test.athleteId; lift: test.lift; testId: test.testId }
            onBackRequested: root.stack.back(); onDone: root.stack.back()
            onNumberRequested: key => root.stack.key(test.editor, key)
            onDayRequested: key => root.stack.key(test.editor.day, key)
        }
    }
    readonly property Component ramp: Component {
        RampPage {
            view: RampView { desk: TheDesk }
            onBackRequested: root.stack.back()
        }
    }
    function showLift(athleteId: string, lift: string) {
        root.stack.show(root.lift, {athleteId: athleteId, lift: lift})
    }
}
