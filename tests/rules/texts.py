# SPDX-License-Identifier: GPL-3.0-or-later
"""What every text in the tree owes its reader: a licence line, and nothing about how it came to be."""
import re
from pathlib import Path

from register import rule
from tree import Finding

SPDX = "SPDX-License-Identifier: GPL-3.0-or-later"
SOURCE = {".cpp", ".h", ".qml", ".js", ".mjs", ".py", ".sh", ".cmake"}
TOP = {"CMakeLists.txt", "CMakePresets.json", "README.md", "DEVELOPERS.md", "LICENSE", "run", "check",
       "core", "mobile", "qml", "assets", "tests", "sample-season"}


def wants_licence(path, text):
    name = path.rsplit("/", 1)[-1]
    return Path(name).suffix in SOURCE or name == "CMakeLists.txt" or text.startswith("#!")


@rule("licence-line")
def licence_line(tree):
    """The first line of every source file names the licence; behind a #! line it is the second."""
    for path in tree.texts():
        text = tree.text(path)
        if wants_licence(path, text):
            first = text.split("\n")[1 if text.startswith("#!") else 0:][:1]
            if not first or not first[0].endswith(SPDX):
                yield Finding(path, 1, f"no {SPDX}")


@rule("only-itself")
def only_itself(tree):
    """No text cites the place, the tools or the way it was made, or leaves work behind."""
    cites = re.compile(
        r"(?i)\bseed docu[m]ent|(?<![\w.])/(?:work|[t]mp|root|home)/|\bnpmj[s]\b|\bpy[p]i\b|\bcrates\.[i]o|\bgith[u]b\.com"
        r"|\bdeb\.debi[a]n\.org|\bproxy\.gol[a]ng|\b(?:l)anguage model\b|\bartificial int[e]lligence"
        r"|(?-i:\bTO[D]O\b|\bFIX[M]E\b|\bXX[X]\b|\bHA[C]K\b)|\bco-authored-b[y]\b")
    for path in tree.texts():
        if path != "LICENSE":
            yield from tree.search(cites, [path], view="text")


@rule("plain-comments")
def plain_comments(tree):
    """Comments say why: no banner, author, date, or code left in a comment."""
    mark = r"^\s*(?://+|#+|\*|/\*+)"
    banner = re.compile(mark + r"\s*[-=*#~_/]{4,}|[-=*#~/]{8,}\s*$|/\*{3,}")
    signed = re.compile(r"(?i)(?://|#|\*).*[@\\](author|date|version)\b|(?://|#|\*)\s*(author|date|created( by| on)?)\s*:"
                        r"|^\s*(?://|#|\*)\s*copyright")
    left = re.compile(r"^\s*//\s*(?:[\w.:<>*&\[\]]+(?:\s+\w+)?\s*(?:\(|[-+*/|]?=[^=])|(?:return|if|for|while|auto|const|var|let)\b)"
                      r".*[;{]\s*$|^\s*//\s*(?:}|#include\b|import Qt)")
    for path in tree.under("", ends=(".cpp", ".h", ".qml", ".js", ".py", "CMakeLists.txt")):
        for pattern in (banner, signed):
            yield from tree.search(pattern, [path], view="text")
        if not path.endswith((".py", ".txt")):
            yield from tree.search(left, [path], view="text")


@rule("top-level")
def top_level(tree):
    """The top level holds the named rooms, the two commands and dotfiles, and no empty room."""
    for path in tree.paths:
        top = path.split("/")[0]
        if top not in TOP and not top.startswith("."):
            yield Finding(path, 0, f"{top} has no place at the top level")
    for path in tree.paths:
        if path.endswith("CMakeLists.txt") and not tree.uncommented(path).strip():
            yield Finding(path, 0, "an empty room")
