// SPDX-License-Identifier: GPL-3.0-or-later
import QtQuick

/** The colour roles; a theme that lacks one does not load. */
QtObject {
    required property color paper
    required property color wash
    required property color ink
    required property color inkSoft
    required property color edge
    required property color accent
    required property color accentText
    required property color left
    required property color right
    required property color stop
    required property color stopText
    required property string tile
}
