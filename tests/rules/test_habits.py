# SPDX-License-Identifier: GPL-3.0-or-later
"""How a test is written: it can fail, it says one thing, and it sees nothing of the machine it runs on."""
import re

from register import rule
from tree import Finding, line_of


@rule("tests-can-fail")
def tests_can_fail(tree):
    """No test is skipped, expected to fail, or true by itself."""
    idle = re.compile(r"\bQSKIP\b|\bQEXPECT_FAIL(_\w+)?\b|\b(EXPECT|ASSERT)_TRUE\s*\(\s*true\b|\bQVERIFY2?\s*\(\s*(true|1|!false)\b"
                      r"|\bRC_(ASSERT|SUCCEED_IF)\s*\(\s*true\b|(?<![\w.])(verify|tryVerify)\s*\(\s*true\b|(?<![\w.])(skip|expectFail\w*)\s*\("
                      r"|\|\|\s*true\b|\bassertTrue\(True\)")
    yield from tree.search(idle, tree.under("tests", ends=(".cpp", ".h", ".qml", ".js")))
    yield from tree.search(re.compile(r"\bDISABLED\b|WILL_FAIL|SKIP_RETURN_CODE|SKIP_REGULAR"),
                           tree.under("", ends=("CMakeLists.txt", ".cmake")), view="uncommented")
    same = re.compile(r"\b(?:QCOMPARE|compare|fuzzyCompare)\s*\(\s*((?:[^,()]|\([^()]*\))+?)\s*,\s*((?:[^,()]|\([^()]*\))+?)\s*[,)]")
    for path in tree.under("tests", ends=(".cpp", ".h", ".qml", ".js")):
        for number, line in enumerate(tree.uncommented(path).split("\n"), 1):
            for hit in same.finditer(line):
                if hit.group(1) == hit.group(2):
                    yield Finding(path, number, line.strip())


@rule("one-class-a-test-file")
def one_class_a_test_file(tree):
    """A test file holds one test class, and each of its data rows has a name of its own."""
    suite = re.compile(r"\bclass\s+\w+\s*(?:final\s*)?:\s*public\s+QObject\b")
    for path in tree.under("tests", ends=(".cpp", ".h")):
        code = tree.code(path)
        if "Q_SLOTS" in code:
            for extra in list(suite.finditer(code))[1:]:
                yield Finding(path, line_of(code, extra.start()), " ".join(extra.group(0).split()))
        rows = {}
        text = tree.uncommented(path)
        for hit in re.finditer(r"\bvoid\s+(\w+_data)\s*\(|\bQTest::newRow\s*\(\s*\"([^\"]*)\"\s*\)", text):
            if hit.group(1):
                rows = {}
            elif hit.group(2) in rows:
                yield Finding(path, line_of(text, hit.start()), f"row \"{hit.group(2)}\" stands twice")
            else:
                rows[hit.group(2)] = True


@rule("core-tests-without-app")
def core_tests_without_app(tree):
    """A test of core needs no application object: QTEST_APPLESS_MAIN."""
    other = re.compile(r"\bQTEST_(MAIN|GUILESS_MAIN)\b|\bQ(Core|Gui)?Application\b|\bquick_test_main")
    yield from tree.search(other, tree.under("tests/core", "tests/published", ends=(".cpp",)))


@rule("tests-pinned")
def tests_pinned(tree):
    """Every test runs under the pinned environment: by the helper, or named to it in the same file."""
    for path in tree.under("tests", "mobile", "qml", ends=("CMakeLists.txt",)):
        text = tree.uncommented(path)
        pinned = " ".join(re.findall(r"steelyard_pin_environment\(([^)]*)\)", text)).split()
        for hit in re.finditer(r"\badd_test\(\s*(?:NAME\s+)?([^\s)]+)", text):
            if hit.group(1) not in pinned:
                yield Finding(path, line_of(text, hit.start()), f"{hit.group(1)} is not pinned")
    wanted = ("QT_QPA_PLATFORM=offscreen", "QT_QUICK_BACKEND=software", "QT_QUICK_CONTROLS_STYLE=Basic", "TZ=UTC",
              "LC_ALL=C.UTF-8", "HOME=", "XDG_CONFIG_HOME=", "XDG_DATA_HOME=", "XDG_CACHE_HOME=")
    if "CMakeLists.txt" in tree.paths:
        for name in wanted:
            if name not in tree.uncommented("CMakeLists.txt"):
                yield Finding("CMakeLists.txt", 0, f"tests run without {name}")


@rule("tests-stay-home")
def tests_stay_home(tree):
    """A test writes into folders of its own and asks no clock of the machine for what it expects."""
    outside = re.compile(r"\bgetenv\s*\(|\bqgetenv\s*\(|\bqEnvironmentVariable|\bQDir::(home|temp)|\bsrand\s*\(|\brandom_device\b"
                         r"|\bQRandomGenerator::(global|system|securelySeeded)|\bQDateTime::current|\bQDate::current|Math\.random\(")
    yield from tree.search(outside, tree.under("tests", ends=(".cpp", ".h", ".qml", ".js")))


@rule("pages-checked")
def pages_checked(tree):
    """Every page of the app goes through the checker: a test that runs it makes the page."""
    made = set()
    for path in tree.under("tests/qml/pages", ends=(".qml",)):
        code = tree.code(path)
        if re.search(r"\bchecker\.check\(", code):
            made.update(re.findall(r"\b(\w+Page)\s*\{", code))
    for path in tree.under("qml/pages", ends=("Page.qml",)):
        name = path.rsplit("/", 1)[-1][:-4]
        if name not in made:
            yield Finding(path, 1, f"no test shows {name} to the checker")
