// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Theme

Item {
    id: root

    width: 400
    height: 400

    NameField {
        id: name
        width: 328
        label: "Name"
        hint: "a name or part of one"
    }
    SignalSpy {
        id: editedSpy
        target: name
        signalName: "edited"
    }
    SignalSpy {
        id: acceptedSpy
        target: name
        signalName: "accepted"
    }

    ControlCase {
        name: "NameField"

        function init() {
            reset()
            name.text = ""
            name.refusal = ""
            editedSpy.clear()
            acceptedSpy.clear()
        }
        function test_typing() {
            tap(name.field)
            verify(name.field.activeFocus)
            keyClick("A")
            keyClick("n")
            compare(name.text, "An")
            compare(editedSpy.count, 2)
            compare(editedSpy.signalArguments[1][0], "An")
            keyClick(Qt.Key_Return)
            compare(acceptedSpy.count, 1)
            compare(name.read(), "An")
        }
        function test_settingTheTextIsNoEdit() {
            name.text = "Bo"
            compare(editedSpy.count, 0)
        }
        function test_beginningIsSeenWhileNobodyTypes() {
            tap(name.field)
            name.text = "Scale in the room behind the hall, steps of 0.05 kg"
            name.field.cursorPosition = name.text.length
            root.forceActiveFocus()
            verify(!name.field.activeFocus)
            compare(name.field.cursorPosition, 0)
            name.text = "Scale by the door of the other weight room, steps of 0.1 kg"
            compare(name.field.cursorPosition, 0)
            tap(name.field)
            keyClick(Qt.Key_End)
            keyClick("s")
            compare(name.field.cursorPosition, name.text.length, "and whoever types is left alone")
        }
        function test_spoken() {
            compare(AccessProbe.name(name.field), "Name")
            compare(AccessProbe.role(name.field), Accessible.EditableText)
            compare(AccessProbe.description(name.field), "a name or part of one")
            name.refusal = "That name is taken."
            compare(AccessProbe.description(name.field), "That name is taken.")
        }
        function test_focusIsSeen() {
            name.field.forceActiveFocus()
            compare(name.field.background.border.width, Theme.ring)
            verify(PageAudit.contrast(name.field.background.border.color, Theme.role.paper) >= 3)
        }
        function test_sizes() {
            atEverySize(tag => {
                waitForRendering(name, 30)
                atLeast(name.field, Theme.touch, Theme.touch, tag)
                verify(name.field.height >= name.field.contentHeight, "holds its line at " + tag)
            })
        }
    }
}
