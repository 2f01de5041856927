# SPDX-License-Identifier: GPL-3.0-or-later
"""How the engine is written: typed quantities, results instead of exceptions, one set of warnings."""
import re

from register import rule
from tree import Finding, line_of

C_FILES = (".cpp", ".h")

# A real number with one of these words in its name has no unit, so it needs no type of its own; a whole one may also count.
UNITLESS = re.compile(
    r"(?i)ratio|fraction|factor|percent|share|index|coefficient|exponent|probability|quantile|confidence|freedom|residual"
    r"|correlation|slope|friction|efficiency|cosine|sine|tangent|score|rpe|reserve|k95|^[knpz]$")
COUNTED = re.compile(
    UNITLESS.pattern + r"|count|number|order|degree|reps?$|repetitions|sets?$|steps$|links?$|laps|strands|pieces|pairs?$|copies|seed"
    r"|size|position|rank|tries|points|samples|drops|contacts|iterations|evaluations|level|grade|rir|index|plates|holes?$|sides")
ARITHMETIC = (r"(?:unsigned\s+|signed\s+|long\s+)*(?:double|float|int|unsigned|long|short|std::size_t|std::u?int(?:8|16|32|64)_t)")
# A value, reference, pointer, optional, list, span or pair of bare numbers, with the name behind it.
BARE = re.compile(
    r"(?<![\w:<])(?:(?:std::(?:optional|vector|span|pair|array|initializer_list)|Result)\s*<\s*)*(?:const\s+)?"
    + ARITHMETIC + r"\b(?:\s+const)?[\s>&*,\d]*?(?:" + ARITHMETIC + r"[\s>]*)?[\s>&*]+(\w+)")
DURATION = re.compile(r"(?i)second|minute|hours?$|milli|duration|elapsed|interval|timeout|(?<!pay)load_?time|rest_?time|tempo|^days|age$")


def public_text(code):
    """The header's code with private parts and function bodies blanked."""
    kept, stack, line_start = list(code), [], 0
    hidden = 0
    position = 0
    token = re.compile(r"[{};]|\b(?:public|private|protected)\s*:(?!:)|\b(?:class|struct|namespace|enum|union)\b[^;{}()]*(?=\{)"
                       r"|\bextern\s+\"[^\"]*\"\s*(?=\{)")
    opened = None
    for hit in token.finditer(code):
        if hidden or (stack and stack[-1] == "private"):
            for at in range(position, hit.start()):
                if kept[at] != "\n":
                    kept[at] = " "
        position = hit.end()
        word = hit.group(0)
        if word == "{":
            if hidden or opened is None and not blank_initializer(code, hit.start()):
                hidden += 1
                stack.append("body")
            else:
                stack.append(opened or "initializer")
            opened = None
        elif word == "}":
            if stack and stack.pop() == "body":
                hidden -= 1
        elif word == ";":
            opened = None
        elif word[0] == "p" and word.rstrip()[-1] == ":":
            if stack and stack[-1] in ("public", "private"):
                stack[-1] = "public" if word.startswith("public") else "private"
        else:
            opened = "private" if word.startswith("class") else "public"
    return "".join(kept)


def blank_initializer(code, at):
    """A brace behind a name, `=` or `,` outside a function head starts a value, not a body."""
    before = code[max(0, at - 200):at].rstrip()
    return bool(re.search(r"[=,(\w>\]]$", before)) and not re.search(r"(\)|\bconst|noexcept|override|final|mutable)$", before)


def declared_names(tree):
    for path in tree.under("core", ends=(".h",)):
        if path.startswith("core/measure/"):
            continue
        public = public_text(tree.code(path))
        for hit in BARE.finditer(public):
            yield path, line_of(public, hit.start()), hit.group(1), " ".join(hit.group(0).split())


@rule("quantities-typed")
def quantities_typed(tree):
    """A public signature of core carries quantities as types; a bare number says in its name that it has no unit."""
    for path, line, name, text in declared_names(tree):
        excused = UNITLESS if re.search(r"\b(double|float)\b", text) else COUNTED
        if name not in ("operator", "const") and not excused.search(name) and not DURATION.search(name):
            yield Finding(path, line, text)


@rule("durations-chrono")
def durations_chrono(tree):
    """A duration is a std::chrono type, never a number with its unit in the name."""
    for path, line, name, text in declared_names(tree):
        if DURATION.search(name):
            yield Finding(path, line, text)


@rule("results-not-exceptions")
def results_not_exceptions(tree):
    """core throws nothing and ends nothing: a refusal is a value."""
    yield from tree.search(re.compile(r"\bthrow\b|\bcatch\s*\(|\bstd::(terminate|abort|exit)\b|\babort\s*\(|\bexit\s*\("),
                           tree.under("core", ends=C_FILES))


@rule("no-views")
def no_views(tree):
    """core has no std::views pipeline: the second compiler cannot read those of this standard library."""
    yield from tree.search(re.compile(r"\bstd::(ranges::)?views\b|namespace\s+views\b|#\s*include\s*<ranges>"),
                           tree.under("core", ends=C_FILES), view="uncommented")


@rule("one-set-of-flags")
def one_set_of_flags(tree):
    """core libraries come from the one helper, and no warning or rounding flag is turned off beside it."""
    flags = re.compile(r"\badd_library\s*\(|-Wno-|\"-w\"|-ffast-math|-Ofast|-funsafe|-march=|target_compile_options|CMAKE_CXX_FLAGS")
    yield from tree.search(flags, tree.under("core", ends=("CMakeLists.txt",)), view="uncommented")
    muted = re.compile(r"#\s*pragma\s+(GCC|clang)\s+(diagnostic\s+ignored|optimize)|\bNOLINT\b|-Wno-|-ffast-math|-Ofast")
    yield from tree.search(muted, tree.under("core", "mobile", "qml", "tests", ends=C_FILES + ("CMakeLists.txt",)), view="text")
    for wanted in ("-Wall -Wextra -Wconversion -Wshadow -Werror", "-ffp-contract=off", "EIGEN_DONT_VECTORIZE"):
        if "CMakeLists.txt" in tree.paths and wanted not in tree.uncommented("CMakeLists.txt"):
            yield Finding("CMakeLists.txt", 0, f"without {wanted}")


@rule("pragma-once")
def pragma_once(tree):
    """Every header says #pragma once."""
    for path in tree.under("core", "mobile", "qml", "tests", ends=(".h",)):
        if not re.search(r"(?m)^#pragma once$", tree.text(path)):
            yield Finding(path, 1, "no #pragma once")


@rule("headers-explain")
def headers_explain(tree):
    """In core every class, and every block of free functions, has a comment that says what it is (operators apart)."""
    head = re.compile(r"^(?:\[\[nodiscard\]\]|(?:class|struct)\s+(?:\[\[\w+\]\]\s*)?\w+[^;]*$)")
    for path in tree.under("core", ends=(".h",)):
        lines = tree.text(path).split("\n")
        for number, line in enumerate(lines, 1):
            if head.match(line) and "operator" not in line:
                above = number - 2
                while above >= 0 and lines[above].strip() and not lines[above].startswith("}"):
                    above -= 1
                block = lines[above + 1:number - 1]
                if not any(text.lstrip().startswith("///") or head.match(text) for text in block):
                    yield Finding(path, number, line.strip())


@rule("no-context-property")
def no_context_property(tree):
    """State reaches QML as typed objects: no context property, no registration by hand, no root context."""
    yield from tree.search(re.compile(r"\bsetContext(Property|Properties|Object)\b|\bqmlRegister\w+|\bQQmlContext\b|\brootContext\b"
                                      r"|\bsetInitialProperties\b"),
                           tree.under("mobile", "qml", "assets", "tests", ends=C_FILES))
