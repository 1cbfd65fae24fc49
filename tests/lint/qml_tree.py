# SPDX-License-Identifier: Apache-2.0
"""As much of QML's grammar as the rules need: objects inside objects, and which properties each sets itself."""
import re
from dataclasses import dataclass, field

COMMENT_OR_STRING = re.compile(r'//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])*\'|`(?:\\.|[^`\\])*`', re.DOTALL)
OPENING = re.compile(r"(?:component\s+(?P<inline>[A-Z]\w*)\s*:\s*)?(?P<type>(?:\w+\.)*[A-Z]\w*)(?:\s+on\s+[\w.]+)?\s*$")
GROUP = re.compile(r"(?:^|[\n;{}])\s*(?P<group>[a-z][\w.]*)\s*$")
PROPERTY = re.compile(r"(?:^|[\n;{])[ \t]*(?:(?:required |readonly |default )*property\s+[\w.<>]+\s+)?([A-Za-z_][\w.]*)\s*:(?!:)")


@dataclass
class QmlObject:
    type: str
    line: int
    inline: str = ""       # the name, for "component Name: Type {}"
    parent: "QmlObject" = None
    properties: dict = field(default_factory=dict)  # name -> its line


def blank_comments(text):
    """The text with each comment turned to spaces: same lines, same columns."""
    return COMMENT_OR_STRING.sub(lambda m: re.sub(r"[^\n]", " ", m[0]) if m[0].startswith("/") else m[0], text)


def blank_strings(text):
    """The text with each comment and the inside of each string turned to spaces."""
    def blank(match):
        piece = re.sub(r"[^\n]", " ", match[0])
        return piece if match[0].startswith("/") else match[0][0] + piece[1:-1] + match[0][-1]
    return COMMENT_OR_STRING.sub(blank, text)


def objects(text):
    """Every object of a file, the root first."""
    code = blank_strings(text)
    found, stack, begin = [], [], 0

    def take_properties(end):
        if not stack or stack[-1][0] is None:
            return
        owner, prefix = stack[-1]
        for match in PROPERTY.finditer(code, begin, end):
            owner.properties[prefix + match[1]] = code.count("\n", 0, match.start(1)) + 1

    for brace in re.finditer(r"[{}]", code):
        at = brace.start()
        take_properties(at)
        if brace[0] == "{":
            before = code[max(0, at - 200):at]
            opening, group = OPENING.search(before), GROUP.search(before)
            owner = stack[-1][0] if stack else None
            if opening and not re.search(r"\)\s*:\s*$", before[:opening.start()]) and not (stack and owner is None):
                current = QmlObject(opening["type"].rpartition(".")[2], code.count("\n", 0, at) + 1, opening["inline"] or "", owner)
                found.append(current)
                stack.append((current, ""))
            elif group and owner is not None:
                stack.append((owner, stack[-1][1] + group["group"] + "."))
            else:
                stack.append((None, ""))
        elif stack:
            stack.pop()
        begin = at  # the brace itself stands before the first property after it
    return found
