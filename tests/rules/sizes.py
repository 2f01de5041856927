# SPDX-License-Identifier: GPL-3.0-or-later
"""How large a thing may grow before it has to be split by idea."""
import re
from collections import Counter

from register import rule
from tree import Finding, line_of

MOST_FILES = 25
MOST_PROPERTIES = 12


def most_lines(path):
    name = path.rsplit("/", 1)[-1]
    if name.endswith(".qml"):
        if name == "Main.qml":
            return 150
        return 350 if path.startswith("qml/pages/") and name.endswith("Page.qml") else 250
    if name.endswith((".cpp", ".py")):
        return 500
    return 200 if name.endswith(".h") else None


@rule("lines-a-file")
def lines_a_file(tree):
    """A file keeps below its cap: QML 250 lines (a page 350, Main 150), .cpp and .py 500, .h 200."""
    for path in tree.paths:
        most = most_lines(path)
        lines = tree.text(path).count("\n") if most else 0
        if most and lines > most:
            yield Finding(path, lines, f"{lines} lines, at most {most}")


@rule("files-a-folder")
def files_a_folder(tree):
    """A folder holds at most 25 files."""
    for folder, files in Counter(path.rpartition("/")[0] for path in tree.paths).items():
        if files > MOST_FILES:
            yield Finding(folder, 0, f"{files} files, at most {MOST_FILES}")


@rule("properties-a-class")
def properties_a_class(tree):
    """A class shows QML at most 12 properties; more is grouped in value types."""
    for path in tree.under("mobile", "qml", ends=(".h", ".cpp")):
        code, counts, owner = tree.code(path), Counter(), None
        for hit in re.finditer(r"\b(?:class|struct)\s+(?:\w+\s+)*?(\w+)\s*(?:final\s*)?(?::[^:;{][^;{]*)?\{|\bQ_PROPERTY\b", code):
            if hit.group(1):
                owner = hit.group(1)
            else:
                counts[owner] += 1
                if counts[owner] == MOST_PROPERTIES + 1:
                    yield Finding(path, line_of(code, hit.start()), f"{owner} has more than {MOST_PROPERTIES} properties")
