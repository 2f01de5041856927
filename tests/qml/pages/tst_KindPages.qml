// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Steelyard.Checker
import Steelyard.Model
import Steelyard.Pages.Measure

/** Of every kind of kit the page where it is looked over and the page where its number comes from, through the checker. */
Item {
    id: root

    width: 1280
    height: 1000

    InspectionEditor {
        id: theLook
        book: TheBook
        itemId: ""
    }
    ItemOriginView {
        id: theOrigin
        book: TheBook
        itemId: ""
    }
    PageChecker {
        id: checker
        testCase: testCase
    }
    Component {
        id: look
        InspectPage { editor: theLook }
    }
    Component {
        id: origin
        ItemOriginPage { view: theOrigin }
    }
    ControlCase {
        id: testCase

        name: "KindPages"

        function cleanup() {
            checker.clear()
            theLook.itemId = ""
            theLook.found = -1
            theLook.note = ""
            theOrigin.itemId = ""
        }
        function idOf(name: string): string {
            for (let i = 0; i < 12; ++i) {
                const id = TheDeskFiller.itemId(TheBook, i)
                theLook.itemId = id
                if (id !== "" && theLook.name.startsWith(name))
                    return id
            }
            testCase.fail("no thing " + name)
            return ""
        }
        function fill(name: string) {
            if (name === "Aid" || name === "Leg curl")
                TheDeskFiller.worn(TheDesk)
            else
                TheDeskFiller.tools(TheDesk)
        }
        function test_page_data() {
            const kinds = [["aid", "Aid"], ["machine", "Leg curl"], ["scale", "Scale by"], ["bar", "The old bar"], ["plates", "Twenties"], ["strap", "Straps"], ["rack", "Uprights"]]
            const rows = []
            for (const [kind, name] of kinds) {
                rows.push({tag: kind + " looked over, something found", name: name, component: look, found: 1})
                rows.push({tag: "where a number comes from: " + kind, name: name, component: origin, found: -1})
            }
            rows.push({tag: "looked over, nothing said yet", name: "Uprights", component: look, found: -1})
            rows.push({tag: "looked over, nothing wrong", name: "Uprights", component: look, found: 0})
            return rows
        }
        function test_page(row) {
            testCase.fill(row.name)
            const id = testCase.idOf(row.name)
            theLook.itemId = id
            theLook.found = row.found
            theOrigin.itemId = id
            checker.check({name: row.tag, component: row.component})
        }
    }
}
