# SPDX-License-Identifier: GPL-3.0-or-later
"""How a QML file is written: the order of an object's members, bound components, one way forward and back."""
import re

from qml_reader import read
from register import rule
from tree import Finding

SIZE = {"width", "height", "implicitWidth", "implicitHeight"}
# The order of an object's members; what may stand at more than one place has the earliest and latest.
ORDER = ["id", "required property", "property", "signal", "size", "binding", "attached", "state", "handler", "child", "function"]


def objects(tree, *folders):
    for path in tree.under(*folders, ends=(".qml",)):
        try:
            root = read(tree.uncommented(path))
        except ValueError as unread:
            yield path, None, str(unread)
            continue
        for thing in root.walk():
            yield path, thing, ""


def place(member):
    """The first and last place a member may have in ORDER."""
    last = member.name.split(".")[-1]
    if member.kind in ("component", "enum"):
        return 1, 10
    if member.kind == "id":
        return 0, 0
    if member.kind in ("required", "property", "signal", "function"):
        at = {"required": 1, "property": 2, "signal": 3, "function": 10}[member.kind]
        return at, at
    if member.kind == "object":
        return 9, 9
    if re.match(r"on[A-Z]", last):
        return 8, 8
    if member.name in ("states", "transitions"):
        return 7, 7
    if member.name in SIZE:
        return 4, 4
    if member.name.startswith("Layout."):
        return 4, 6
    if member.name in ("x", "y", "z") or member.name.split(".")[0] == "anchors":
        return 4, 5
    if member.objects and not member.name[0].isupper():
        return 5, 9
    return (6, 6) if member.name[0].isupper() else (5, 5)


@rule("member-order")
def member_order(tree):
    """Members of a QML object stand in one order: id, required, properties, signals, size, bindings, attached, states,
    handlers, children, functions. Place, anchors and Layout may go with the size; a binding to an object may stand
    anywhere from the bindings to the children."""
    for path, thing, unread in objects(tree, "qml", "tests"):
        if thing is None:
            yield Finding(path, 0, unread)
            continue
        reached, name = 0, ""
        for member in thing.members:
            first, last = place(member)
            if last < reached:
                yield Finding(path, member.line, f"{ORDER[last]} '{member.name}' stands after {ORDER[reached]} '{name}'")
            elif first > reached:
                reached, name = first, member.name


@rule("components-bound")
def components_bound(tree):
    """A file with a delegate or another component says `pragma ComponentBehavior: Bound`."""
    component = re.compile(r"\b(delegate|sourceComponent|\w*Delegate)\s*:|\b(Component|Repeater|Instantiator|ListView|GridView)\s*\{")
    for path in tree.under("qml", "tests", ends=(".qml",)):
        if not re.search(r"(?m)^pragma ComponentBehavior: Bound$", tree.code(path)):
            yield from list(tree.search(component, [path]))[:1]


@rule("root-is-root")
def root_is_root(tree):
    """The root object's id is `root`, so no file can lean on the id of another file's window or page."""
    for path in tree.under("qml", ends=(".qml",)):
        try:
            top = read(tree.uncommented(path))
        except ValueError:
            continue
        for member in top.members:
            if member.kind == "id" and [word for word, _ in member.value] != ["root"]:
                yield Finding(path, member.line, f"the root object is called {''.join(word for word, _ in member.value)}")


@rule("ids-stay-home")
def ids_stay_home(tree):
    """No file uses an id that another file declares."""
    ids, words = {}, {}
    for path in tree.under("qml", ends=(".qml",)):
        code = tree.code(path)
        ids[path] = set(re.findall(r"(?m)(?:^|[{;])\s*id:\s*(\w+)", code))
        words[path] = set(re.findall(r"\b(?:property\s+[\w.<>]+|let|const|var|function)\s+(\w+)|\b(\w+)\s*(?=[,):]?\s*=>)", code) and
                          [a or b for a, b in re.findall(r"\b(?:property\s+[\w.<>]+|let|const|var|function)\s+(\w+)|\b(\w+)\s*(?=\)?\s*=>)", code)])
        words[path] |= {name for group in re.findall(r"\bfunction\s*\w*\s*\(([^)]*)\)|\(([^()]*)\)\s*=>", code)
                        for name in re.findall(r"\b([a-z]\w*)\s*(?:[,:]|$)", group[0] or group[1])}
    for path in ids:
        foreign = set().union(*(ids[other] for other in ids if other != path)) - ids[path] - words[path]
        if foreign:
            use = re.compile(r"(?<![\w.$])(" + "|".join(sorted(foreign)) + r")\.\w")
            yield from (found for found in tree.search(use, [path]) if not re.match(r"\s*(import|anchors)\b", found.text))


@rule("whole-sentences")
def whole_sentences(tree):
    """A translated sentence is one text with %1 in it, never glued from pieces."""
    glued = re.compile(r"\+\s*(?:qsTr|qsTranslate|QObject::tr|tr)\s*\(")
    behind = re.compile(r"\b(?:qsTr|tr)\s*\((?:[^()]|\([^()]*\))*\)(?:\.arg\((?:[^()]|\([^()]*\))*\))*\s*\+(?!=)")
    paths = list(tree.under("mobile", "qml", ends=(".qml", ".cpp", ".h")))
    yield from tree.search(glued, paths)
    yield from tree.search(behind, paths)
    yield from tree.search(re.compile(r"\$\{[^}]*\bqsTr\("), paths, view="uncommented")


@rule("navigator-pushes")
def navigator_pushes(tree):
    """One file owns the stack of pages; no other pushes, pops or replaces a page."""
    owners = list(tree.search(re.compile(r"\bStackView\s*\{"), tree.under("qml", ends=(".qml",))))
    yield from owners[1:]
    owner = owners[0].path if owners else ""
    moves = re.compile(r"(?i)\b\w*(stack|view|navigator|pages)\w*(\.\w+)*\.(push|pop|replace|clear)\s*\(|\bStackView\.view\b")
    yield from tree.search(moves, [path for path in tree.under("qml", ends=(".qml",)) if path != owner])


@rule("one-way-back")
def one_way_back(tree):
    """Back and Esc are caught in one file only, so that they and the header arrow do the same."""
    back = re.compile(r"\bKeys\.on(Escape|Back)Pressed\b|\bStandardKey\.(Back|Cancel)\b|\bQt\.Key_(Escape|Back)\b|\"Esc(ape)?\"|\"Back\"")
    found = list(tree.search(back, tree.under("qml", ends=(".qml",)), view="uncommented"))
    yield from (use for use in found if use.path != found[0].path)


@rule("hand-made-names")
def hand_made_names(tree):
    """What can be touched says by hand what it is: Accessible.name and Accessible.role in the same file."""
    touch = re.compile(r"^\s*(?:\w+:\s*)?(MouseArea|TapHandler|AbstractButton|Button|TextField|TextInput|TextEdit|CheckBox|Switch|RadioButton"
                       r"|ItemDelegate|T\.\w*Button)\s*\{")
    for path in tree.under("qml", ends=(".qml",)):
        code = tree.code(path)
        if "Accessible.name:" not in code or "Accessible.role:" not in code:
            yield from list(tree.search(touch, [path]))[:1]


@rule("own-number-keys")
def own_number_keys(tree):
    """No slider, spin box, tumbler or dial: one stray tap must not change a load."""
    yield from tree.search(re.compile(r"\b(Slider|RangeSlider|SpinBox|DoubleSpinBox|Tumbler|Dial)\s*\{"), tree.under("qml", ends=(".qml",)))
