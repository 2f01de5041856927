// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Model
import Steelyard.Pages.Kit
import Steelyard.Theme

/** From when until when it holds: choices first, and the day as numbers to tap where none of them is it. */
Column {
    id: root

    required property GateForm form
    signal fromRequested(string key)
    signal untilRequested(string key)

    spacing: Theme.apart

    ChoiceRow {
        width: root.width
        objectName: "from"
        label: qsTr("From")
        options: root.form.period.froms
        current: root.form.period.from
        onChosen: index => root.form.chooseFrom(index)
    }
    FieldList {
        width: root.width
        objectName: "fromDay"
        visible: root.form.period.fromKeyed
        fields: root.form.from.fields
        onOpened: key => root.fromRequested(key)
    }
    ChoiceRow {
        width: root.width
        objectName: "until"
        label: qsTr("How long")
        options: root.form.period.untils
        current: root.form.period.until
        onChosen: index => root.form.chooseUntil(index)
    }
    FieldList {
        width: root.width
        objectName: "untilDay"
        visible: root.form.period.untilKeyed
        fields: root.form.until.fields
        onOpened: key => root.untilRequested(key)
    }
    Words {
        width: root.width
        objectName: "period"
        visible: text !== ""
        text: root.form.period.text
        strong: true
    }
}
