// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtQuick.Layouts
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Theme

/** The end of a measurement: what changed since the last one, what would make it better, how many there are, its name. */
Item {
    id: root

    required property MeasureGuide guide
    /** At the beginning: only the ways elsewhere. */
    property bool brief: false
    /** What would make it better is said already. */
    property bool told: false
    /** A bar carries two of it. */
    property bool pairs: true
    readonly property KitComparison comparison: KitComparison { form: root.guide.form }
    signal loanRequested
    signal formRequested
    signal inspectRequested

    implicitWidth: Theme.touchMain
    implicitHeight: column.implicitHeight

    ColumnLayout {
        id: column
        width: root.width
        height: implicitHeight
        spacing: Theme.block

        Words {
            Layout.fillWidth: true
            objectName: "drift"
            visible: !root.brief && text !== ""
            text: root.guide.drift
            strong: true
        }
        Words {
            Layout.fillWidth: true
            objectName: "gain"
            visible: !root.brief && !root.told && text !== ""
            text: root.guide.gain
        }
        Words {
            Layout.fillWidth: true
            objectName: "wrong"
            visible: !root.brief && text !== ""
            text: root.guide.form.trouble
        }
        ChoiceRow {
            Layout.fillWidth: true
            objectName: "compareWith"
            visible: !root.brief && root.comparison.names.length > 0
            label: qsTr("Compare it with")
            options: root.comparison.names
            current: root.comparison.chosen
            onChosen: index => root.comparison.chosen = index
        }
        Words {
            Layout.fillWidth: true
            objectName: "compared"
            visible: !root.brief && text !== ""
            text: root.comparison.text
            strong: true
        }
        ChoiceRow {
            Layout.fillWidth: true
            objectName: "pair"
            visible: !root.brief && root.pairs && root.guide.form.mayBePair()
            label: qsTr("How many?")
            options: [qsTr("two alike"), qsTr("one")]
            current: root.guide.form.pair ? 0 : 1
            onChosen: index => root.guide.form.pair = index === 0
        }
        NameField {
            Layout.fillWidth: true
            objectName: "name"
            visible: !root.brief
            label: qsTr("Name, if you give it one")
            text: root.guide.form.name
            maximumLength: 30
            onEdited: text => root.guide.form.name = text
        }
        PressKey {
            Layout.fillWidth: true
            objectName: "form"
            text: qsTr("All numbers on one page")
            size: Theme.key
            onClicked: root.formRequested()
        }
        PressKey {
            Layout.fillWidth: true
            objectName: "inspect"
            visible: root.brief && root.guide.form.itemId !== ""
            text: qsTr("Look it over: fit, or out of use")
            size: Theme.key
            onClicked: root.inspectRequested()
        }
        PressKey {
            Layout.fillWidth: true
            objectName: "loan"
            visible: root.brief && root.guide.form.itemId !== ""
            text: qsTr("Borrowed, or lent out")
            size: Theme.key
            onClicked: root.loanRequested()
        }
    }
}
