# SPDX-License-Identifier: GPL-3.0-or-later
"""A small reader of QML files: the tree of objects, each with its members in the order they are written."""
import re
from dataclasses import dataclass, field

TOKEN = re.compile(r"\n|\"(?:\\.|[^\"\\\n])*\"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`|\d+\.?\d*(?:[eE][-+]?\d+)?|[A-Za-z_$][\w$]*"
                   r"|=>|===|!==|[<>=!]=|&&|\|\||\?\?|\?\.|[-+*/%]=|\+\+|--|[^\s]")
CONTINUES = {"+", "-", "*", "/", "%", "?", ":", "&&", "||", "??", ".", "?.", ",", "=", "==", "===", "!=", "!==", "<", ">", "<=", ">=",
             "=>", "!", "typeof", "instanceof", "in", "else", "&", "|", "^", "+=", "-="}
CLOSING = {"(": ")", "[": "]", "{": "}"}


@dataclass
class Member:
    kind: str  # id, required, property, signal, binding, object, function, component, enum
    name: str
    line: int
    value: list = field(default_factory=list)  # tokens of the expression
    objects: list = field(default_factory=list)  # objects in the value, or the child itself


@dataclass
class Obj:
    type: str
    line: int
    members: list = field(default_factory=list)

    def walk(self):
        yield self
        for member in self.members:
            for child in member.objects:
                yield from child.walk()


class Reader:
    """Reads the uncommented text of a file; what it cannot make out it raises as ValueError with the line."""

    def __init__(self, text):
        self.tokens, line = [], 1
        for hit in TOKEN.finditer(text):
            word = hit.group(0)
            self.tokens.append((word, line))
            line += word.count("\n")
        self.at = 0

    def peek(self, ahead=0):
        at = self.at
        while at < len(self.tokens):
            if self.tokens[at][0] != "\n":
                if ahead == 0:
                    return self.tokens[at][0]
                ahead -= 1
            at += 1
        return ""

    def take(self, wanted=None):
        while self.at < len(self.tokens) and self.tokens[self.at][0] == "\n":
            self.at += 1
        if self.at >= len(self.tokens):
            raise ValueError("the file ends too early")
        word, self.line = self.tokens[self.at]
        self.at += 1
        if wanted and word != wanted:
            raise ValueError(f"line {self.line}: {word!r} where {wanted!r} was expected")
        return word

    def file(self):
        while self.peek() in ("pragma", "import"):
            self.take()
            while self.at < len(self.tokens) and self.tokens[self.at][0] not in ("\n", ";"):
                self.at += 1
        return self.object(self.dotted())

    def dotted(self):
        name = self.take()
        while self.peek() == "." and self.tokens[self.at][0] == ".":
            name += self.take() + self.take()
        return name

    def object(self, name):
        made = Obj(name, self.line)
        self.take("{")
        while self.peek() != "}":
            if self.peek() in (";", ","):
                self.take()
                continue
            made.members.append(self.member())
        self.take("}")
        return made

    def member(self):
        word = self.peek()
        if word in ("readonly", "default", "required", "property") and self.peek(1) not in (":", "."):
            return self.property()
        if word == "signal" and self.peek(1) not in (":", "."):
            self.take()
            made = Member("signal", self.take(), self.line)
            if self.peek() == "(" and self.tokens[self.at][0] == "(":
                self.group()
            return made
        if word == "function":
            self.take()
            made = Member("function", self.take(), self.line)
            self.group()
            while self.peek() != "{":
                self.take()
            made.value = self.group()
            return made
        if word == "component" and self.peek(2) == ":":
            self.take()
            made = Member("component", self.take(), self.line)
            self.take(":")
            made.objects.append(self.object(self.dotted()))
            return made
        if word == "enum":
            self.take()
            made = Member("enum", self.take(), self.line)
            self.group()
            return made
        return self.binding_or_object()

    def property(self):
        required, first = False, None
        while self.peek() in ("readonly", "default", "required"):
            required |= self.take() == "required"
            first = first or self.line
        if self.peek() != "property":
            return Member("required", self.dotted(), first)
        self.take()
        first = first or self.line
        self.dotted()
        if self.peek() == "<":
            while self.take() != ">":
                pass
        made = Member("required" if required else "property", self.take(), first)
        if self.peek() == ":":
            self.take()
            self.value(made)
        return made

    def binding_or_object(self):
        name = self.dotted()
        line = self.line
        if self.peek() == "on" and self.peek(2) == "{":
            self.take()
            target = self.take()
            return Member("object", f"{name} on {target}", line, objects=[self.object(name)])
        if self.peek() == "{":
            if name[0].isupper() or name.split(".")[-1][0].isupper():
                return Member("object", name, line, objects=[self.object(name)])
            return Member("binding", name, line, objects=[self.object(name)])
        self.take(":")
        made = Member("id" if name == "id" else "binding", name, line)
        self.value(made)
        return made

    def value(self, made):
        if self.starts_object():
            made.objects.append(self.object(self.dotted()))
        elif self.peek() == "[" and self.list_of_objects():
            self.take()
            while self.peek() != "]":
                if self.peek() == ",":
                    self.take()
                else:
                    made.objects.append(self.object(self.dotted()))
            self.take("]")
        else:
            made.value = self.expression()

    def starts_object(self, ahead=0):
        while re.match(r"[A-Za-z_]", self.peek(ahead)) and self.peek(ahead + 1) == ".":
            ahead += 2
        return self.peek(ahead)[:1].isupper() and self.peek(ahead + 1) == "{"

    def list_of_objects(self):
        return self.starts_object(1)

    def group(self):
        opening = self.take()
        if opening not in CLOSING:
            raise ValueError(f"line {self.line}: {opening!r} opens nothing")
        taken = [(opening, self.line)]
        while self.peek() != CLOSING[opening]:
            taken += self.group() if self.peek() in CLOSING else [(self.take(), self.line)]
        taken.append((self.take(), self.line))
        return taken

    def expression(self):
        taken, heading = [], False
        while True:
            here = self.at
            while here < len(self.tokens) and self.tokens[here][0] == "\n":
                here += 1
            newline = here > self.at
            word = self.peek()
            if word in ("}", ";", ""):
                return taken
            fresh = re.match(r"[\w$\"'`]", word) and word not in ("else", "in", "instanceof")
            if newline and taken and taken[-1][0] not in CONTINUES and fresh and not heading:
                return taken
            heading = word == "(" and bool(taken) and taken[-1][0] in ("if", "for", "while")
            taken += self.group() if word in CLOSING else [(self.take(), self.line)]


def read(text):
    return Reader(text).file()
