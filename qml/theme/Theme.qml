// SPDX-License-Identifier: GPL-3.0-or-later
pragma Singleton
import QtQuick

/** Colours by role, type by purpose, distances by reason; with Roles the only place of hex colours and pixel numbers. */
QtObject {
    id: root

    enum Mode { Light, Dark, Sun }

    property int mode: Theme.Mode.Light
    property real textFactor: 1
    /** Keys stand under the left thumb where a phone lies on its side. */
    property bool leftHanded: false
    /** Keys that answer a lift are big, for gloves and cold hands. */
    property bool bigKeys: false
    /** The page's size; the window writes it once and every page follows. */
    property real pageWidth: 360
    property real pageHeight: 720
    /** Tablet: wide enough for columns and tall enough to stand them in. */
    property bool wide: false
    /** A phone on its side: keys stand beside the page, not below it. */
    // a desktop window opens as a phone
    readonly property int firstWidth: 420
    readonly property int firstHeight: 860
    readonly property bool low: !root.wide && root.pageWidth > root.pageHeight && root.pageHeight < 480
    /** One narrow column with large text: rows that stood side by side go below each other. */
    readonly property bool stacked: !root.wide && root.textFactor >= 1.5

    readonly property var textFactors: [1, 1.25, 1.5, 2]
    readonly property Roles role: [root.light, root.dark, root.sun][root.mode]
    readonly property string face: "Steelyard Text"
    readonly property int plain: root.mode === Theme.Mode.Sun ? Font.Medium : Font.Normal
    readonly property int strong: root.mode === Theme.Mode.Sun ? Font.Bold : Font.DemiBold

    // type, by purpose; nothing is set smaller than the least
    readonly property int least: 16
    readonly property int note: root.scaled(16, 18)
    readonly property int body: root.scaled(18, 20)
    readonly property int key: root.scaled(18, 24)
    readonly property int act: root.scaled(20, 24)
    readonly property int title: root.eased(24, 30, 0.6)
    readonly property int figure: root.eased(28, 36, 0.6)
    readonly property int keyNumber: root.low ? root.eased(48, 48, 0.16) : root.eased(66, 108, 0.16)
    readonly property real unitShare: 0.42
    readonly property real tailShare: 0.72
    readonly property real snug: 0.95

    // touch
    readonly property int touchFloor: 48
    readonly property int touch: 56
    readonly property int touchStep: 64
    readonly property int touchMain: 76
    readonly property int touchPad: root.wide ? 84 : 64
    /** Keys that answer a lift; big ones are 20 mm high, where a phone does not lie on its side. */
    readonly property int touchLift: !root.bigKeys ? root.touchStep : root.low ? 84 : 126
    /** A second tap on the same place within this many milliseconds does nothing. */
    readonly property int tapQuiet: 400

    // distances, by reason
    readonly property int line: 4
    readonly property int apart: 8
    readonly property int inset: 12
    readonly property int indent: 16
    readonly property int block: root.wide ? 20 : 12
    readonly property int edgeGap: root.wide ? 24 : 16
    readonly property int topGap: 24
    readonly property int bottomGap: 16
    readonly property int safeApart: 24
    readonly property int gutter: root.wide ? 48 : 24
    // two columns of about twenty large letters each
    readonly property int pairWidth: 40 * root.act
    readonly property int corner: 3

    // rules: a hairline divides, a rule totals, a heavy line answers
    readonly property int hair: 1
    readonly property int edging: root.mode === Theme.Mode.Sun ? 2 : 1
    readonly property int rule: 2
    /** Round a key that weighs more than its neighbours. */
    readonly property int outline: root.edging + 1
    readonly property int ring: 3
    readonly property int heavy: root.wide ? 4 : 3
    readonly property int bar: 4

    // pictures: the give-or-take fades in two steps without an outline
    readonly property color fadeNear: root.faded(root.role.accent, 0.34)
    readonly property color fadeFar: root.faded(root.role.accent, 0.22)
    readonly property color ironShade: root.faded(root.role.ink, root.mode === Theme.Mode.Sun ? 0.3 : 0.16)
    /** Words of a key that is off: in sun soft ink is too near ink to say so. */
    readonly property color off: root.mode === Theme.Mode.Sun ? root.role.edge : root.role.inkSoft
    readonly property int marker: root.wide ? 14 : 12
    readonly property int tick: 12
    readonly property int tickSmall: 7
    readonly property int sideMark: root.wide ? 18 : 15
    readonly property int pieceColumn: root.scaled(56, 76)
    readonly property int pictureHeight: root.wide ? 430 : 300
    readonly property int stripHeight: root.wide ? 84 : 46
    readonly property int stripHeightLarge: root.wide ? 210 : 60

    readonly property Roles light: Roles {
        paper: "#FBFAF5"; wash: "#EFEDE4"; ink: "#17191B"; inkSoft: "#4B4F54"; edge: "#83868A"
        accent: "#4A2A8A"; accentText: "#FFFFFF"; left: "#0072B2"; right: "#B34700"
        stop: "#9B0B1E"; stopText: "#FFFFFF"; tile: "ink"
    }
    readonly property Roles dark: Roles {
        paper: "#1C1D1E"; wash: "#2A2B2D"; ink: "#F4F1E8"; inkSoft: "#C2BFB7"; edge: "#85878A"
        accent: "#CDBCF6"; accentText: "#1E1233"; left: "#56B4E9"; right: "#E69F00"
        stop: "#FFB3B3"; stopText: "#3A0008"; tile: "chalk"
    }
    readonly property Roles sun: Roles {
        paper: "#FFFFFF"; wash: "#EDEDED"; ink: "#000000"; inkSoft: "#26282A"; edge: "#55585B"
        accent: "#2C0F66"; accentText: "#FFFFFF"; left: "#005A8F"; right: "#8F3800"
        stop: "#8A0014"; stopText: "#FFFFFF"; tile: "ink"
    }

    function isWide(width: real, height: real): bool {
        return width >= 720 && Math.min(width, height) >= 600
    }
    /** The window and the page tests say the page's size here, in one go. */
    function fit(width: real, height: real) {
        root.pageWidth = width
        root.pageHeight = height
        root.wide = root.isWide(width, height)
    }
    function scaled(phone: real, tablet: real): int {
        return Math.round((root.wide ? tablet : phone) * root.textFactor)
    }
    /** Large type grows by a share of the factor: it is read at 1.5 m already and must still fit one hand. */
    function eased(phone: real, tablet: real, share: real): int {
        return Math.round((root.wide ? tablet : phone) * (1 + (root.textFactor - 1) * share))
    }
    function faded(tint: color, share: real): color {
        return Qt.rgba(tint.r, tint.g, tint.b, share)
    }
}
