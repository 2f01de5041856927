// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** How a sled slides here, what it takes to pull it, and what to put on it for her to lose so much speed. */
Sheet {
    id: root

    required property SledView view
    readonly property sledWords words: root.view.words
    readonly property bool pulled: root.view.surfaces.length > 0
    signal pullRequested
    signal runRequested(string surface)

    heading: root.words.thing
    under: root.words.who
    back: qsTr("Use")
    foot: [
        PressKey {
            Layout.fillWidth: true
            objectName: "run"
            visible: root.pulled && root.words.who !== ""
            outlined: true
            text: qsTr("Time a run of hers")
            onClicked: root.runRequested(root.view.surfaces[root.view.surface])
        },
        PressKey {
            Layout.fillWidth: true
            objectName: "pull"
            outlined: true
            text: root.pulled ? qsTr("Pull it again, or on another ground") : qsTr("Pull it here")
            onClicked: root.pullRequested()
        }
    ]

    UndoKey {
        Layout.fillWidth: true
        book: root.view.book
    }
    ChoiceRow {
        Layout.fillWidth: true
        objectName: "surfaces"
        visible: root.view.surfaces.length > 1
        label: qsTr("On")
        options: root.view.surfaces
        current: root.view.surface
        onChosen: index => root.view.surface = index
    }
    Words {
        Layout.fillWidth: true
        objectName: "friction"
        text: root.view.surfaces.length === 1 ? qsTr("%1: %2").arg(root.view.surfaces[0]).arg(root.words.friction) : root.words.friction
    }
    Words {
        Layout.fillWidth: true
        visible: root.words.added !== ""
        text: qsTr("On the sled")
        size: Theme.note
        quiet: true
    }
    CountRow {
        Layout.fillWidth: true
        objectName: "added"
        visible: root.words.added !== ""
        name: qsTr("On the sled")
        value: root.words.added
        onStepped: up => root.view.stepAdded(up)
    }
    Words {
        Layout.fillWidth: true
        objectName: "pullTakes"
        visible: text !== ""
        text: root.words.pull
        size: Theme.act
        strong: true
    }
    Words {
        Layout.fillWidth: true
        visible: root.words.push !== ""
        text: qsTr("Pushed, arms")
        size: Theme.note
        quiet: true
    }
    CountRow {
        Layout.fillWidth: true
        objectName: "pushAngle"
        visible: root.words.push !== ""
        name: qsTr("Pushed, arms")
        value: root.words.pushAngle
        onStepped: up => root.view.stepPush(up)
    }
    Words {
        Layout.fillWidth: true
        objectName: "push"
        visible: text !== ""
        text: root.words.push
        size: Theme.act
        strong: true
    }
    Words {
        Layout.fillWidth: true
        objectName: "line"
        visible: text !== ""
        text: root.words.line
    }
    Words {
        Layout.fillWidth: true
        visible: root.words.load !== ""
        text: qsTr("Speed she loses")
        size: Theme.note
        quiet: true
    }
    CountRow {
        Layout.fillWidth: true
        objectName: "loss"
        visible: root.words.load !== ""
        name: qsTr("Speed she loses")
        value: root.words.loss
        onStepped: up => root.view.stepLoss(up)
    }
    Words {
        Layout.fillWidth: true
        objectName: "load"
        visible: text !== ""
        text: root.words.load
        size: Theme.title
        strong: true
        lineHeight: Theme.snug
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Repeater {
        model: root.words.elsewhere
        Words {
            required property int index
            required property string modelData
            Layout.fillWidth: true
            objectName: "elsewhere:" + index
            text: modelData
        }
    }
    Repeater {
        model: root.view.runs
        Words {
            id: run
            required property int index
            required property string what
            required property string value
            Layout.fillWidth: true
            objectName: "run:" + run.index
            text: qsTr("%1: %2").arg(run.what).arg(run.value)
            size: Theme.note
        }
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Clear lane, nobody in front of it. Stop for pain, dizziness, chest pain, sudden headache or numbness.")
        size: Theme.note
        quiet: true
    }
}
