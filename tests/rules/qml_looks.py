# SPDX-License-Identifier: GPL-3.0-or-later
"""What a QML file may say about looks: colours and distances come from the theme, texts are never cut."""
import re

from qml_habits import objects
from register import rule
from tree import Finding

NAMED = "black|white|red|green|blue|gr[ae]y|yellow|orange|purple|pink|brown|cyan|magenta|(?:dark|light)\\w+"
LENGTHS = re.compile(
    r"^(?:.*\.)?(?:pixelSize|pointSize|letterSpacing|wordSpacing|lineHeight"
    r"|width|height|implicitWidth|implicitHeight|preferredWidth|preferredHeight|minimumWidth|minimumHeight|maximumWidth|maximumHeight"
    r"|x|y|spacing|rowSpacing|columnSpacing|margins|(?:left|right|top|bottom|horizontal|vertical|baseline)?(?:Margin|Padding|Inset|Offset)"
    r"|(?:left|right|top|bottom|horizontal|vertical)(?:CenterOffset)|horizontalCenterOffset|verticalCenterOffset|baselineOffset"
    r"|padding|leftPadding|rightPadding|topPadding|bottomPadding|radius|strokeWidth|contentWidth|contentHeight|cellWidth|cellHeight"
    r"|cacheBuffer|dragThreshold|startX|startY|relativeX|relativeY|radiusX|radiusY)$")
COMPARES = {"<", ">", "<=", ">=", "==", "===", "!=", "!=="}


def outside_theme(tree):
    return [path for path in tree.under("qml", ends=(".qml",)) if not path.startswith("qml/theme/")]


@rule("colours-in-theme")
def colours_in_theme(tree):
    """Only qml/theme says a colour: elsewhere no hex value, no colour name but transparent, no colour made by numbers."""
    colour = re.compile(r"""["']#[0-9A-Fa-f]{3,8}["']|["'](?:%s)["']|\bQt\.(?:rgba|hsla|hsva|color|darker|lighter|tint)\s*\(""" % NAMED)
    yield from tree.search(colour, outside_theme(tree), view="uncommented")
    made = re.compile(r"""["']#[0-9A-Fa-f]{3,8}["']|\bQColor(?:Constants|\s*[({]\s*\d|\s+\w+\s*[({]\s*\d)|\bQt::(?:black|white|red|green|blue|gray|yellow)\b""")
    yield from tree.search(made, tree.under("mobile", "qml", ends=(".cpp", ".h")), view="uncommented")


@rule("pixels-in-theme")
def pixels_in_theme(tree):
    """Only qml/theme says a length in pixels: elsewhere a length is 0, -1 (unset), a multiple or a share of another one;
    Layout.preferredWidth: 1 is a share too, an equal one."""
    for path, thing, _ in objects(tree, "qml"):
        if thing is None or path.startswith("qml/theme/"):
            continue
        for member in thing.members:
            group = thing.type if thing.type[0].islower() else ""
            named = member.name if not group else f"{group}.{member.name}"
            equal_share = named.startswith("Layout.preferred") and [word for word, _ in member.value] == ["1"]
            if member.kind in ("binding", "property") and LENGTHS.match(named) and not equal_share:
                for word, line in raw_numbers(member.value):
                    yield Finding(path, line, f"{named} holds the bare number {word}")


def raw_numbers(tokens):
    """Numbers of an expression that stand as lengths: no factor, no index, no operand of a comparison."""
    depth = 0
    for at, (word, line) in enumerate(tokens):
        depth += (word == "[") - (word == "]")
        before = tokens[at - 1][0] if at else ""
        after = tokens[at + 1][0] if at + 1 < len(tokens) else ""
        unset = word == "1" and before == "-" and (at == 1 or tokens[at - 2][0] in ("?", ":"))
        if not re.match(r"\d", word) or depth or float(word) == 0 or unset:
            continue
        if {before, after} & ({"*", "/", "%"} | COMPARES):
            continue
        if scales(tokens, at):
            continue
        yield word, line


def scales(tokens, at):
    """Whether the number stands in a bracket that is itself a factor: `(root.tight ? 2 : 4) * gap`."""
    depth, left = 0, at
    while left >= 0:
        word = tokens[left][0]
        depth += (word == ")") - (word == "(")
        if depth < 0:
            break
        left -= 1
    if left < 0:
        return False
    depth, right = 0, at
    while right < len(tokens):
        word = tokens[right][0]
        depth += (word == "(") - (word == ")")
        if depth < 0:
            break
        right += 1
    around = {tokens[left - 1][0] if left else "", tokens[right + 1][0] if right + 1 < len(tokens) else ""}
    return bool(around & {"*", "/"})


@rule("never-cut")
def never_cut(tree):
    """No text is cut with dots: no elide, and no dots written by hand."""
    cut = re.compile(r"\belide\s*:(?!\s*Text\.ElideNone)|\bText\.Elide(?!None)|\.elidedText\b|\bmaximumLineCount\b")
    yield from tree.search(cut, tree.under("qml", ends=(".qml",)))
    yield from tree.search(re.compile("[\"'`][^\"'`]*(…|\\.\\.\\.)[^\"'`]*[\"'`]"), tree.under("qml", ends=(".qml",)), view="uncommented")
    yield from tree.search(re.compile(r"\belidedText\b|Qt::Elide(Left|Right|Middle)"), tree.under("mobile", "qml", ends=(".cpp", ".h")))


@rule("software-drawable")
def software_drawable(tree):
    """Nothing that the software renderer leaves out: no layer effect, shader, shadow or OpenGL series; one style, Basic."""
    lost = re.compile(r"\blayer\.(effect|enabled)\s*:|\b(MultiEffect|ShaderEffect\w*|DropShadow|GaussianBlur|OpacityMask)\s*\{|\buseOpenGL\s*:"
                      r"|^\s*import QtQuick\.Controls\s*(?:\d|as\b|$)|import QtQuick\.Controls\.(?!Basic\b)|import QtQuick\.Effects|Qt5Compat")
    yield from tree.search(lost, tree.under("qml", ends=(".qml",)))
