// SPDX-License-Identifier: GPL-3.0-or-later
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import QtTest
import Steelyard.Checker
import Steelyard.Controls
import Steelyard.Keys
import Steelyard.Theme

Item {
    id: top

    width: 1280
    height: 1000

    PageChecker {
        id: checker
        testCase: testCase
    }

    /** A page without a fault; every planted fault stands in one of these. */
    component Card: Sheet {
        heading: "Ana Moreau"
        under: "squat, set 3 of 5"
        back: "Kit"
        places: ["Squad", "Kit"]
        pinned: ReadOut { objectName: "keyNumber"; value: "82.5"; unit: "kg"; size: Theme.keyNumber; entry: ReadOut.State.Planned }
        foot: PressKey { objectName: "mainAction"; Layout.fillWidth: true; main: true; text: "SET DONE"; fact: "82.5 kg" }

        FactRow { Layout.fillWidth: true; label: "Bar"; value: "20"; unit: "kg"; hint: "weighed" }
        Notice { Layout.fillWidth: true; head: "Do not lift this"; body: "The band is stretched too far."; stop: true }
    }
    component Plain: AbstractButton {
        implicitWidth: 56
        implicitHeight: 56
        Accessible.role: Accessible.Button
        Accessible.name: "plain"
    }

    Component { id: good; Card { } }
    Component { id: smallKey; Card { Plain { implicitWidth: 55 } } }
    Component { id: tinyKey; Card { PressKey { text: "a"; least: 30; Layout.preferredHeight: 40 } } }
    Component { id: lowStepKey; Card { PressKey { text: "a"; repeats: true; Layout.preferredWidth: 80; Layout.preferredHeight: 56 } } }
    Component { id: lowMain; Card { PressKey { Layout.fillWidth: true; text: "a"; main: true; Layout.preferredHeight: 64 } } }
    Component { id: narrowMain; Card { PressKey { text: "a"; main: true } } }
    Component { id: crowded; Card { Row { spacing: 7; Plain { } Plain { } } } }
    Component { id: onEachOther; Card { Item { implicitWidth: 200; implicitHeight: 56; Plain { } Plain { x: 40 } } } }
    Component { id: keepBesideThrow; Card { ColumnLayout { Layout.fillWidth: true; spacing: 20; PressKey { Layout.fillWidth: true; main: true; text: "KEEP" } ThrowKey { text: "Throw" } } } }
    Component { id: atTheSide; Card { Plain { Layout.leftMargin: -4 } } }
    Component { id: atTheTop; Item { Plain { x: 20; y: 23 } } }
    Component { id: atTheBottom; Item { Plain { x: 20; anchors.bottom: parent.bottom; anchors.bottomMargin: 15 } } }
    Component { id: offThePage; Item { Plain { x: 40; y: 1400 } } }
    Component { id: beyondScrolling; Item { Flickable { anchors { fill: parent; margins: 24 } clip: true; contentHeight: 800; Plain { y: 760 } } } }
    Component { id: wordsOffThePage; Item { Words { y: 60; x: -60; text: "Undo last set" } } }
    Component { id: wordsBelowThePage; Item { Words { x: 20; y: 1400; text: "Undo last set" } } }
    Component { id: nameless; Card { AbstractButton { implicitWidth: 56; implicitHeight: 56; Accessible.role: Accessible.Button } } }
    Component { id: bareArea; Card { MouseArea { implicitWidth: 56; implicitHeight: 56; Accessible.role: Accessible.Button } } }
    Component { id: bareHandler; Card { Rectangle { implicitWidth: 56; implicitHeight: 56; Accessible.role: Accessible.Button; TapHandler { } } } }
    Component { id: roleless; Card { MouseArea { implicitWidth: 56; implicitHeight: 56; Accessible.role: Accessible.Client; Accessible.name: "area" } } }
    Component { id: dragged; Card { Slider { implicitWidth: 200; implicitHeight: 56; Accessible.role: Accessible.Slider; Accessible.name: "load" } } }
    Component { id: tinyText; Card { Words { text: "in grams"; size: 15 } } }
    Component { id: smallKeyNumber; Card { Words { readonly property bool keyNumber: true; text: "82"; size: 47 } } }
    Component { id: cutText; Card { Words { Layout.preferredWidth: 60; text: "Hang on each side"; elide: Text.ElideRight; wrapMode: Text.NoWrap } } }
    Component { id: pastItsSide; Card { Words { Layout.preferredWidth: 60; text: "Hang on each side"; wrapMode: Text.NoWrap } } }
    Component { id: pastItsFoot; Card { Words { Layout.preferredWidth: 80; Layout.preferredHeight: 24; text: "Hang on each side"; } } }
    Component { id: pastItsKey; Card { Plain { Words { x: -12; y: 16; text: "Undo" } } } }
    Component { id: longerWords; Card { Item { implicitWidth: 100; implicitHeight: 40; Words { width: 100; wrapMode: Text.NoWrap; text: qsTr("undo this") } } } }
    Component { id: faint; Card { Words { text: "102.5 kg"; color: "#5A5A5A"; opacity: 0.85 } } }
    Component { id: faintBelow; Card { Item { implicitWidth: 200; implicitHeight: 40; Rectangle { width: 90; height: 40; color: "#909090" } Words { text: "102.5 kg each side" } } } }
    Component { id: faintKeyNumber; Card { Words { readonly property bool keyNumber: true; text: "82"; size: Theme.keyNumber; color: "#4B4F54" } } }
    Component { id: faintDisabled; Card { Words { enabled: false; text: "not yet"; color: "#808080" } } }
    Component { id: covered; Card { Item { implicitWidth: 200; implicitHeight: 40; Words { text: "102.5 kg" } Rectangle { anchors.fill: parent; color: Theme.role.wash } } } }
    Component { id: wordsOnWords; Card { Item { implicitWidth: 200; implicitHeight: 40; Words { text: "102.5 kg" } Words { x: 20; y: 6; text: "each side" } } } }
    Component { id: wordsOnKey; Card { Item { implicitWidth: 200; implicitHeight: 56; Plain { } Words { x: 20; y: 6; text: "each side" } } } }
    Component { id: smallOnTablet; Card { PressKey { text: "Undo"; size: 23 } } }
    Component { id: lowBigStep; Card { PressKey { readonly property bool answersLift: true; text: "a"; repeats: true; Layout.preferredWidth: 80; Layout.preferredHeight: 100 } } }
    Component { id: smallPlot; Card { Item { readonly property rect plot: Qt.rect(10, 10, 100, 100); implicitWidth: 200; implicitHeight: 150; Accessible.role: Accessible.Graphic; Accessible.name: "chart" } } }
    component Scaled: Card {
        id: scaled
        property int count: 5
        property string number: "10"
        Item {
            readonly property rect plot: Qt.rect(0, 0, width, height)
            implicitWidth: 280
            implicitHeight: 60
            Accessible.role: Accessible.Graphic
            Accessible.name: "chart"
            Item {
                readonly property real span: 220
                readonly property var chosen: []
                width: 200
                height: 60
                Repeater { model: scaled.count; Item { required property int index; x: 45 * index; objectName: "tick"; Words { width: 44; text: scaled.number; size: 16; wrapMode: Text.NoWrap } } }
            }
        }
    }
    Component { id: scaledWell; Scaled { } }
    Component { id: manyTicks; Scaled { count: 6; number: "1" } }
    Component { id: wideTicks; Scaled { number: "1000" } }
    component Coloured: Card {
        id: coloured
        property color one
        property color other
        Item {
            readonly property rect plot: Qt.rect(0, 0, width, height)
            implicitWidth: 200
            implicitHeight: 100
            Accessible.role: Accessible.Graphic
            Accessible.name: "chart"
            Rectangle { width: 100; height: 100; color: coloured.one }
            Rectangle { x: 100; width: 100; height: 100; color: coloured.other }
        }
    }
    // as light as each other, so that only their colour differs
    Component { id: redBesideGreen; Coloured { one: "#C83C3C"; other: "#6E7A1E" } }
    Component { id: lightBesideDark; Coloured { one: "#4A2A8A"; other: "#CDBCF6" } }
    Component { id: turned; Card { PressKey { id: key; text: "a"; WheelHandler { onWheel: key.text = "b" } } } }
    Component { id: hasty; Card { PressKey { id: early; text: "a"; onDownChanged: if (down) early.clicked() } } }
    Component { id: mainBelow; Sheet { Item { implicitHeight: 1400; implicitWidth: 20 } PressKey { objectName: "mainAction"; text: "a" } } }

    ControlCase {
        id: testCase

        readonly property var planted: [
            {tag: "a target under its class", component: smallKey, finds: "small"},
            {tag: "a head key under the floor", component: tinyKey, finds: "small"},
            {tag: "a stepper key under 64", component: lowStepKey, finds: "small"},
            {tag: "a main key under 76", component: lowMain, finds: "small"},
            {tag: "a main key that does not fill its column", component: narrowMain, finds: "small"},
            {tag: "7 dp between two targets", component: crowded, finds: "gap"},
            {tag: "one target on another", component: onEachOther, finds: "gap"},
            {tag: "20 dp between keep and throw away", component: keepBesideThrow, finds: "keep beside throw-away"},
            {tag: "12 dp from the side", component: atTheSide, finds: "edge"},
            {tag: "23 dp from the top", component: atTheTop, finds: "edge"},
            {tag: "15 dp from the bottom", component: atTheBottom, finds: "edge"},
            {tag: "a target off the page", component: offThePage, finds: "off the page"},
            {tag: "a target that no scrolling reaches", component: beyondScrolling, finds: "off the page"},
            {tag: "words off the side", component: wordsOffThePage, finds: "off the page"},
            {tag: "words below the page", component: wordsBelowThePage, finds: "off the page"},
            {tag: "a button without a name", component: nameless, finds: "nameless"},
            {tag: "a mouse area without a name", component: bareArea, finds: "nameless"},
            {tag: "a tap handler without a name", component: bareHandler, finds: "nameless"},
            {tag: "a target without a role", component: roleless, finds: "roleless"},
            {tag: "a slider", component: dragged, finds: "slider"},
            {tag: "text of 15", component: tinyText, finds: "tiny text"},
            {tag: "a key number of 47", component: smallKeyNumber, finds: "key number"},
            {tag: "text with dots", component: cutText, finds: "cut"},
            {tag: "text wider than its box", component: pastItsSide, finds: "past its box"},
            {tag: "text higher than its box", component: pastItsFoot, finds: "past its box"},
            {tag: "text off its key", component: pastItsKey, finds: "past its box"},
            {tag: "faint text", component: faint, finds: "contrast"},
            {tag: "text faint on a sibling behind it", component: faintBelow, finds: "contrast"},
            {tag: "a key number at 8 to 1", component: faintKeyNumber, finds: "contrast"},
            {tag: "a disabled word under 4.5", component: faintDisabled, finds: "contrast"},
            {tag: "covered text", component: covered, finds: "contrast"},
            {tag: "words on words", component: wordsOnWords, finds: "overlap"},
            {tag: "words on a key", component: wordsOnKey, finds: "overlap"},
            {tag: "act-on text of 23 on a tablet", component: smallOnTablet, finds: "act text", form: 3},
            {tag: "a plot of a third at the largest text", component: smallPlot, finds: "plot", factor: 2},
            {tag: "six ticks", component: manyTicks, finds: "ticks"},
            {tag: "numbers that fill their scale", component: wideTicks, finds: "ticks"},
            {tag: "two colours as light as each other", component: redBesideGreen, finds: "colour alone"},
            {tag: "a stepper key of 100 among big keys", component: lowBigStep, finds: "small", big: true},
            {tag: "a promised item below the fold", component: mainBelow, finds: "must scroll"}
        ]

        name: "PageChecker"

        function cleanup() {
            checker.clear()
        }
        function test_aGoodPageHasNoFindings() {
            checker.check({name: "good", component: good})
        }
        function test_plantedFault_data() {
            return testCase.planted
        }
        function test_plantedFault(row) {
            const form = checker.forms[row.form ?? 0]
            Theme.bigKeys = row.big === true
            checker.load({name: row.tag, component: row.component}, form, false)
            const list = checker.look({name: row.tag}, form, row.factor ?? 1, Theme.Mode.Light, "").map(found => found.slice(found.indexOf(": ") + 2))
            verify(list.length > 0, "the fault is found")
            for (const found of list)
                verify(found.startsWith(row.finds + ":"), "found besides: " + found)
        }
        function test_whatBreaksOnlyInLongerWordsIsFound() {
            const list = checker.matrix({name: "longer", component: longerWords}).filter(found => !found.includes("text 2") && !found.includes("text 1.5") && !found.includes("untranslated"))
            verify(list.length > 0)
            for (const found of list)
                verify(found.includes("in longer words"), found)
        }
        /** The same good card with its foot away has no main action in sight; without the name there is nothing to promise. */
        function test_aHiddenMainActionIsMissed() {
            checker.load({name: "good", component: good, setup: page => page.foot[0].visible = false}, checker.forms[0], false)
            const list = checker.look({name: "good"}, checker.forms[0], 1, Theme.Mode.Light, "")
            compare(list.length, 1)
            verify(list[0].includes("must scroll: mainAction"))
        }
        function test_goodPicturesHaveNoFindings_data() {
            return [{tag: "five ticks", component: scaledWell}, {tag: "light beside dark", component: lightBesideDark}]
        }
        function test_goodPicturesHaveNoFindings(row) {
            checker.load({name: row.tag, component: row.component}, checker.forms[0], false)
            compare(checker.look({name: row.tag}, checker.forms[0], 1, Theme.Mode.Light, ""), [])
        }
        function test_whatGivesWayToAFlickIsFound_data() {
            return [{tag: "words that change on the wheel", component: turned}, {tag: "a key that fires on touch", component: hasty}]
        }
        function test_whatGivesWayToAFlickIsFound(row) {
            verify(checker.shaken({name: row.tag, component: row.component}).length > 0)
        }
        function test_aGoodPageIsNotShaken() {
            compare(checker.shaken({name: "good", component: good}), [])
        }
        function test_whatNoCatalogueKnowsIsFound() {
            const list = checker.matrix({name: "longer", component: longerWords}).filter(found => found.includes("untranslated"))
            compare(list, ["longer in de: untranslated: tst_PageChecker/undo this", "longer in es: untranslated: tst_PageChecker/undo this"])
        }
        function test_contrastOfKnownPairs_data() {
            // WCAG 2.1: black on white is 21; #777777 and #767676 on white are its well known borderline pair (from memory)
            return [{tag: "black", a: "#000000", b: "#FFFFFF", ratio: 21, within: 0.001}, {tag: "same", a: "#4A2A8A", b: "#4A2A8A", ratio: 1, within: 0.001},
                {tag: "just under", a: "#777777", b: "#FFFFFF", ratio: 4.48, within: 0.005}, {tag: "just over", a: "#FFFFFF", b: "#767676", ratio: 4.54, within: 0.005}]
        }
        function test_contrastOfKnownPairs(row) {
            fuzzyCompare(PageAudit.contrast(row.a, row.b), row.ratio, row.within)
        }
    }
}
