// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import Steelyard.Theme

/** One link of a chain in outline, with the tape beside what is read: its wire, its pitch, its inner width. */
Item {
    id: root

    /** "wire", "pitch" or "innerWidth". */
    property string part: ""
    /** A long link narrows in its middle: its least inner and its greatest outer width are read. */
    property bool longLink: false
    // link and tape together fill the height
    readonly property real wire: Math.max(Theme.apart, Math.min((root.height - 4 * Theme.apart) / 4, root.width / (root.longLink ? 14 : 10)))
    readonly property real span: (root.longLink ? 9 : 6) * root.wire
    readonly property real wide: 3.5 * root.wire

    implicitWidth: 20 * Theme.apart
    implicitHeight: Theme.touchMain
    Accessible.ignored: true

    Item {
        id: link
        x: Math.round((root.width - width) / 2)
        y: Math.round((root.height - height) / 2) + (root.part === "pitch" ? Theme.apart : 0)
        width: Math.round(root.span)
        height: Math.round(root.wide)

        Rectangle {
            anchors.fill: parent
            objectName: "link"
            color: Theme.role.paper
            radius: height / 2
            border { width: Theme.rule; color: Theme.role.ink }
        }
        Rectangle {
            anchors { fill: parent; margins: root.wire }
            color: Theme.role.paper
            radius: height / 2
            border { width: Theme.rule; color: Theme.role.ink }
        }
        // along the link, over it: end to end of its inside
        Tape {
            x: root.wire
            y: -Theme.apart
            span: link.width - 2 * root.wire
            asked: true
            visible: root.part === "pitch"
        }
        Tape {
            x: link.width / 2
            y: root.wire
            upright: true
            span: link.height - 2 * root.wire
            asked: true
            objectName: "inner"
            visible: root.part === "innerWidth"
        }
        Tape {
            x: link.width + 2 * Theme.apart
            upright: true
            span: link.height
            asked: true
            objectName: "outer"
            visible: root.part === "innerWidth" && root.longLink
        }
        // across the wire, below the link where nothing lies under it, with a thin line up to either side of it
        Tape {
            x: link.width - root.wire
            y: link.height + Theme.apart
            span: root.wire
            asked: true
            objectName: "wireTape"
            visible: root.part === "wire"
        }
        Repeater {
            model: root.part === "wire" ? 2 : 0
            Rectangle {
                required property int index
                x: link.width - (1 - index) * root.wire - (index === 0 ? 0 : width)
                y: link.height / 2
                width: Theme.hair
                height: link.height / 2 + Theme.apart
                color: Theme.role.accent
            }
        }
    }
}
