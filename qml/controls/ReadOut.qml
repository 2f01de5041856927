// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Steelyard.Keys
import Steelyard.Theme

/** A number with its unit, and the rule below it that says how far it is: planned (dotted), entered, kept (double). */
Item {
    id: root

    enum State { None, Planned, Entered, Kept }

    required property string value
    property string unit: ""
    property string tail: ""
    property int size: Theme.figure
    property int entry: ReadOut.State.None
    property color ink: Theme.role.ink
    readonly property bool keyNumber: root.size >= Theme.keyNumber
    readonly property real natural: Math.ceil(numberMetrics.advanceWidth
                                              + (root.unit ? root.gap + unitMetrics.advanceWidth : 0)
                                              + (root.tail ? 1.5 * root.gap + tailMetrics.advanceWidth : 0)) + Theme.rule
    readonly property real gap: Math.max(root.size * 0.12, 3 * Theme.rule)
    readonly property int unitSize: Math.max(Theme.note, Math.round(root.size * Theme.unitShare))
    readonly property int tailSize: Math.max(Theme.note, Math.round(root.size * Theme.tailShare))
    // a number too long for its place is set smaller, never cut
    readonly property real share: root.width > 0 && root.width < root.natural ? root.width / root.natural : 1
    readonly property int unitFit: Math.max(Theme.least, Math.floor(root.unitSize * root.share))
    readonly property int tailFit: Math.max(Theme.least, Math.floor(root.tailSize * root.share))
    readonly property real taken: (root.unit ? root.gap * root.share + unitMetrics.advanceWidth * root.unitFit / root.unitSize : 0)
                                  + (root.tail ? 1.5 * root.gap * root.share + tailMetrics.advanceWidth * root.tailFit / root.tailSize : 0)
    readonly property int fitted: root.share < 1 ? Math.floor(root.size * (root.width - root.taken - Theme.rule) / numberMetrics.advanceWidth)
                                                 : root.size
    readonly property string spoken: root.value + (root.unit && " " + root.unit) + (root.tail && " " + root.tail)

    implicitWidth: root.natural
    implicitHeight: Math.round(root.fitted * 0.92) + (root.entry === ReadOut.State.None ? 0 : 3 * Theme.rule)
    Layout.fillWidth: true
    Layout.maximumWidth: root.natural
    Accessible.role: Accessible.StaticText
    Accessible.name: root.entry === ReadOut.State.Planned ? qsTr("%1, filled in").arg(root.spoken)
                   : root.entry === ReadOut.State.Kept ? qsTr("%1, kept").arg(root.spoken) : root.spoken

    Item {
        anchors.left: parent.left
        // the line box is trimmed to the figures, so rules sit where a pencil would draw them
        y: Math.round(root.fitted * 0.76 - digits.baselineOffset)
        width: row.width
        height: row.height
        Row {
            id: row
            spacing: root.gap * root.share
            // digits before unit in every language
            LayoutMirroring.enabled: false
            LayoutMirroring.childrenInherit: true
            Words {
                id: digits
                readonly property bool keyNumber: root.keyNumber
                text: root.value
                size: root.fitted
                strong: true
                color: root.ink
                wrapMode: Text.NoWrap
                font.letterSpacing: -root.fitted * 0.02
                Accessible.ignored: true
            }
            Words {
                anchors.baseline: digits.baseline
                visible: text !== ""
                text: root.unit
                size: root.unitFit
                color: root.ink
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
            Words {
                anchors.baseline: digits.baseline
                visible: text !== ""
                leftPadding: root.gap * root.share * 0.5
                text: root.tail
                size: root.tailFit
                strong: true
                color: root.ink
                wrapMode: Text.NoWrap
                Accessible.ignored: true
            }
        }
    }
    Rule {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        visible: root.entry !== ReadOut.State.None
        total: true
        dotted: root.entry === ReadOut.State.Planned
        closed: root.entry === ReadOut.State.Kept
        ink: root.ink
    }
    TextMetrics {
        id: numberMetrics
        text: root.value
        font { family: Theme.face; pixelSize: root.size; weight: Theme.strong; letterSpacing: -root.size * 0.02 }
    }
    TextMetrics {
        id: unitMetrics
        text: root.unit
        font { family: Theme.face; pixelSize: root.unitSize; weight: Theme.plain }
    }
    TextMetrics {
        id: tailMetrics
        text: root.tail
        font { family: Theme.face; pixelSize: root.tailSize; weight: Theme.strong }
    }
}
