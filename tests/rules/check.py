#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds the house rules against the tree, and shows that each of them bites.

check.py hold ROOT    every rule on the tree; exceptions come from exceptions.txt
check.py bite         every rule on its planted faults (planted/<rule>.txt)
check.py list         the rules, one a line
"""
import sys
import tempfile
from collections import namedtuple
from fnmatch import fnmatch
from pathlib import Path

import core_habits  # noqa: F401  (each of these modules registers its rules)
import layers  # noqa: F401
import qml_habits  # noqa: F401
import qml_looks  # noqa: F401
import sizes  # noqa: F401
import test_habits  # noqa: F401
import texts  # noqa: F401
from register import RULES
from tree import Tree

HERE = Path(__file__).resolve().parent
Exempt = namedtuple("Exempt", "rule path part reason line")


def read_exceptions(text):
    """Lines of `rule | path | part of the finding | reason`; a line without all four is a fault."""
    exempt, faults = [], []
    for number, line in enumerate(text.split("\n"), 1):
        if not line.strip() or line.startswith("#"):
            continue
        parts = [part.strip() for part in line.split("|")]
        if len(parts) != 4 or not parts[3] or parts[0] not in RULES:
            faults.append(f"exceptions.txt:{number}: want 'rule | path | part | reason' with a known rule")
        else:
            exempt.append(Exempt(*parts, number))
    return exempt, faults


def hold(tree, exempt):
    """Complaints about the tree, then about exceptions that no longer excuse anything."""
    used = set()
    for name, function in RULES.items():
        for found in function(tree):
            excuses = [e for e in exempt if e.rule == name and fnmatch(found.path, e.path) and e.part in found.text]
            used.update(excuses)
            if not excuses:
                yield f"{found.path}:{found.line}: [{name}] {found.text}"
    for e in exempt:
        if e not in used:
            yield f"exceptions.txt:{e.line}: [{e.rule}] {e.path} needs no exception any more"


def read_cases(text):
    """A clean set of files and a list of faults, each a set of files laid over the clean ones.

    Sections start with `=== clean PATH`, `=== fault PATH` (a new fault) or `=== with PATH` (more of the same
    fault). `lines N` and `files N` behind a path repeat the section's text, or the whole file, that often.
    """
    clean, faults, lines = {}, [], None
    for line in text.split("\n"):
        if line.startswith("=== "):
            kind, path, *repeat = line[4:].split()
            lines = []
            target = clean if kind == "clean" else faults[-1] if kind == "with" else None
            if target is None:
                target = {}
                faults.append(target)
            target[path] = (lines, repeat)
        elif lines is not None:
            lines.append(line)
    return clean, faults


def lay(root, files):
    for path, (lines, repeat) in files.items():
        text = "\n".join(lines).strip("\n") + "\n"
        how, times = (repeat[0], int(repeat[1])) if repeat else ("files", 1)
        if how == "lines":
            text *= times
        for copy in range(times if how == "files" else 1):
            target = root / path.replace("#", str(copy))
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_text(text, encoding="utf-8")


def findings(name, *layers_of_files):
    with tempfile.TemporaryDirectory() as folder:
        for files in layers_of_files:
            lay(Path(folder), files)
        return list(RULES[name](Tree(folder)))


def bite():
    """Complaints about rules that have no planted fault, miss one, or cry out at clean files."""
    planted = {path.stem: path for path in (HERE / "planted").rglob("*.txt")}
    for name in planted.keys() - RULES.keys():
        yield f"planted/{name}.txt: there is no such rule"
    for name in RULES:
        if name not in planted:
            yield f"[{name}] has no planted fault"
            continue
        clean, faults = read_cases(planted[name].read_text(encoding="utf-8"))
        for found in findings(name, clean):
            yield f"[{name}] cries out at a clean file: {found.path}:{found.line}: {found.text}"
        if not clean or not faults:
            yield f"[{name}] wants a clean file and a fault"
        for number, fault in enumerate(faults, 1):
            if not findings(name, clean, fault):
                yield f"[{name}] does not bite on planted fault {number}: {', '.join(fault)}"
    yield from bite_exceptions()


def bite_exceptions():
    """The list of exceptions must itself refuse an excuse without a reason, and one nobody needs."""
    if not read_exceptions("pragma-once | a.h | | ")[1]:
        yield "an exception without a reason is let through"
    if not read_exceptions("no-such-rule | a.cpp | | because")[1]:
        yield "an exception to an unknown rule is let through"
    with tempfile.TemporaryDirectory() as folder:
        if not any("no exception" in line for line in hold(Tree(folder), read_exceptions("pragma-once | a.h | | old")[0])):
            yield "an exception that excuses nothing is let through"


def main(arguments):
    if arguments[:1] == ["list"]:
        for name, function in RULES.items():
            print(f"{name}: {' '.join(function.__doc__.split())}")
        return 0
    if arguments[:1] == ["bite"]:
        complaints = list(bite())
        done = "bite on their planted faults"
    elif len(arguments) == 2 and arguments[0] == "hold":
        exempt, complaints = read_exceptions((HERE / "exceptions.txt").read_text(encoding="utf-8"))
        complaints += hold(Tree(arguments[1]), exempt)
        done = "hold"
    else:
        print(__doc__, file=sys.stderr)
        return 2
    print("\n".join(complaints) if complaints else f"{len(RULES)} rules {done}")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
