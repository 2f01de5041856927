// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Theme

Item {
    id: root

    width: 400
    height: 600

    Notice {
        id: warning
        width: 328
        head: "Chain clears the floor at 115 cm"
        body: "Above that only the band still adds."
    }
    Notice {
        id: stop
        y: 300
        width: 328
        head: "Do not lift this"
        stop: true
    }

    ControlCase {
        name: "Notice"

        function test_onlyAStopIsRed() {
            for (const mode of [Theme.Mode.Light, Theme.Mode.Dark, Theme.Mode.Sun]) {
                Theme.mode = mode
                verify(Qt.colorEqual(stop.color, Theme.role.stop))
                compare(warning.color.a, 0)
            }
        }
        function test_warningHasItsBar() {
            const bars = item => childrenOf(item).filter(child => child.visible && child.width === Theme.bar).length
            compare([bars(warning), bars(stop)], [1, 0])
        }
        function test_spoken() {
            compare(AccessProbe.name(warning), "Chain clears the floor at 115 cm. Above that only the band still adds.")
            compare(AccessProbe.name(stop), "Do not lift this")
            compare(AccessProbe.role(stop), Accessible.AlertMessage)
        }
        function test_highAsItsWords() {
            atEverySize(tag => {
                waitForRendering(warning, 30)
                const words = warning.children[1]
                verify(words.height <= warning.implicitHeight && words.height > 2 * Theme.body, "holds its words at " + tag)
            })
        }
    }
}
