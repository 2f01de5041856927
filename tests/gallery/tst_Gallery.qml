// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Gallery

/** Every control in its states, as pages for the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    Specimens {
        id: specimens
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    ControlCase {
        id: testCase

        name: "Gallery"

        function cleanup() {
            checker.clear()
        }
        function test_specimen_data() {
            return specimens.entries.map(entry => ({tag: entry.name, component: entry.component}))
        }
        function test_specimen(row) {
            checker.check({name: row.tag, component: row.component})
        }
    }
}
