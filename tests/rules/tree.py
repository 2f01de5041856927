# SPDX-License-Identifier: GPL-3.0-or-later
"""The source tree as the rules read it: files, lines, and code without its comments."""
import re
from collections import namedtuple
from functools import lru_cache
from pathlib import Path

Finding = namedtuple("Finding", "path line text")

NOT_SOURCE = re.compile(r"^(\.git|build[^/]*|tour|debian13)$")
PLANTED = "tests/rules/planted/"
BINARY = {".png", ".otf", ".ttf", ".ico", ".pdf", ".qm", ".woff2"}


class Tree:
    """Reads every text file below a root once; build output and planted faults are no part of it."""

    def __init__(self, root):
        self.root = Path(root)
        self.paths = sorted(self._walk(self.root, ""))

    def _walk(self, folder, prefix):
        for entry in folder.iterdir():
            path = prefix + entry.name
            if entry.name == "__pycache__" or (not prefix and NOT_SOURCE.match(entry.name)):
                continue
            if entry.is_dir():
                if path + "/" != PLANTED:
                    yield from self._walk(entry, path + "/")
            else:
                yield path

    def under(self, *folders, ends=()):
        """Paths below any of the folders ("" is the whole tree) whose name ends as asked."""
        for path in self.paths:
            if any(folder == "" or path.startswith(folder + "/") for folder in folders):
                if not ends or path.endswith(tuple(ends)):
                    yield path

    def texts(self):
        return (path for path in self.paths if Path(path).suffix not in BINARY)

    @lru_cache(maxsize=None)
    def text(self, path):
        return (self.root / path).read_text(encoding="utf-8", errors="replace")

    @lru_cache(maxsize=None)
    def uncommented(self, path):
        """The text with comments blanked; line numbers stay."""
        return blank(self.text(path), path, strings=False)

    @lru_cache(maxsize=None)
    def code(self, path):
        """The text with comments and the insides of strings blanked; line numbers stay."""
        return blank(self.text(path), path, strings=True)

    def search(self, pattern, paths, view="code"):
        """A finding for every line that matches, in the chosen view of each file."""
        read = getattr(self, view)
        for path in paths:
            shown = None
            for number, line in enumerate(read(path).split("\n"), 1):
                if pattern.search(line):
                    shown = shown or self.text(path).split("\n")
                    yield Finding(path, number, shown[number - 1].strip())


def blank(text, path, strings):
    if path.endswith((".cpp", ".h", ".qml", ".js", ".mjs")):
        return blank_c(text, strings)
    if path.endswith((".txt", ".cmake", ".py")) or "." not in path.rsplit("/", 1)[-1]:
        return re.sub(r"(?m)(^|\s)#.*$", lambda hit: hit.group(1), text)
    return text


C_PIECE = re.compile(
    r"""(?P<comment>//[^\n]*|/\*.*?\*/)"""
    r"""|(?P<raw>R"(?P<mark>[^(\s]*)\(.*?\)(?P=mark)")"""
    r"""|(?P<string>"(?:\\.|[^"\\\n])*"|(?<![0-9A-Za-z_])'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`)""",
    re.DOTALL)


def blank_c(text, strings):
    def replace(hit):
        piece = hit.group(0)
        if hit.group("comment") is not None:
            return re.sub(r"[^\n]", " ", piece)
        if not strings or len(piece) < 2:
            return piece
        return piece[0] + re.sub(r"[^\n]", " ", piece[1:-1]) + piece[-1]

    return C_PIECE.sub(replace, text)


def line_of(text, offset):
    return text.count("\n", 0, offset) + 1
