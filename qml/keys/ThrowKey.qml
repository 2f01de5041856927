// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

/** The key that throws something away: outlined and worded, kept 24 dp from a key that keeps. */
PressKey {
    id: root

    readonly property bool throwsAway: true

    outlined: true
    light: true
}
