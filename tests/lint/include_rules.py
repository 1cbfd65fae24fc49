# SPDX-License-Identifier: Apache-2.0
"""Who may include whom."""
import re
from pathlib import PurePosixPath

from project_tree import Planted, Rule

# folder: the folders it may depend on directly; what those depend on is allowed too. Nothing else is.
CORE = {
    "base": [],
    "units": ["base"],
    "air": ["units"],
    "pad": ["air"],
    "water": ["units"],
    "timing": ["units"],
    "records": ["units", "timing"],
    "cycle": ["records", "air", "pad", "water"],
    "trend": ["cycle"],
    "rules": ["records", "cycle", "water", "pad", "air"],
    "day": ["cycle"],
    "tables": ["rules"],
    "search": ["day", "rules"],
    "sheet": ["records", "rules", "cycle", "trend", "day"],
    "store": ["records"],
    "batch": ["sheet", "store"],
}
UI = {
    "format": ["units"],
    "photos": ["records"],
    "viewmodels": [*CORE, "format", "photos"],
    "charts": ["format", "records"],  # the cycle strip is one value for screen and paper
    "print": ["records", "format", "charts"],
    "qml": ["viewmodels", "charts"],
}
GRAPH = {**CORE, **UI}
PART_OF = {"items": "charts"}  # folders within a folder of the graph
TEST_HEADS = {"support", "ui_support", "demo"}
CPP = ("*.h", "*.cpp")
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]')
QT_HEADER = re.compile(r"^(Q[A-Z]\w*|Qt\w*/.+|q[a-z0-9]+\.h)$")
QT_IN_CMAKE = re.compile(r"\bQt6?::|find_package\(\s*Qt|\bqt6?_\w+\(")


def reachable(folder):
    seen, waiting = {folder}, [folder]
    while waiting:
        for below in GRAPH[waiting.pop()]:
            if below not in seen:
                seen.add(below)
                waiting.append(below)
    return seen


def includes(tree, name):
    for number, line in tree.lines(name):
        match = INCLUDE.match(line)
        if match:
            yield number, match.group(1), match.group(2)


def folder_of(name):
    """The folder of the graph whose law holds for a file: core/x/... and ui/x/..., and their mirrors in tests/."""
    parts = PurePosixPath(name).parts
    parts = parts[1:] if parts[0] == "tests" else parts
    if len(parts) > 2 and parts[1] in {"core": CORE, "ui": UI}.get(parts[0], {}):
        return parts[1]
    return None


def qt_in_core(tree):
    found = []
    for name in tree.under("core", *CPP):
        for number, _, header in includes(tree, name):
            if QT_HEADER.match(header):
                found.append(f"{name}:{number}: includes {header}: core/ knows no Qt; that code belongs in ui/")
    for name in tree.under("core", "CMakeLists.txt"):
        for number, line in tree.lines(name):
            if QT_IN_CMAKE.search(line):
                found.append(f"{name}:{number}: uses Qt: core/ knows no Qt")
    return found


def folder_graph(tree):
    found = []
    for name in tree.files(*CPP):
        folder = folder_of(name)
        if folder is None:
            continue
        allowed = reachable(folder)
        for number, bracket, header in includes(tree, name):
            head, slash, _ = header.partition("/")
            head = PART_OF.get(head, head)
            in_tests = name.startswith("tests/")
            beside = str(PurePosixPath(name).parent / header)
            if in_tests and bracket == '"' and not slash and beside in tree.files():
                continue  # what the tests of one folder share
            if bracket == '"' and not slash and not header.endswith(".moc"):
                found.append(f'{name}:{number}: includes "{header}" without its folder: write "folder/header.h"')
            elif head in GRAPH and slash and head not in allowed:
                found.append(f"{name}:{number}: includes {header}, but {folder} may include only {', '.join(sorted(allowed))}")
            elif bracket == '"' and slash and head not in GRAPH and not (in_tests and head in TEST_HEADS):
                found.append(f'{name}:{number}: includes "{header}": {head}/ is no folder of the graph; a system header takes <>')
    for name in tree.files("CMakeLists.txt"):
        folder = folder_of(name)
        if folder is None:
            continue
        allowed = reachable(folder)
        for number, line in tree.lines(name):
            for linked in re.findall(r"\bwetfront_(\w+)", line.partition("#")[0]):
                if linked in GRAPH and linked not in allowed:
                    found.append(f"{name}:{number}: links wetfront_{linked}, but {folder} may use only {', '.join(sorted(allowed))}")
    return found


CLEAN = {
    "core/pad/pad.cpp": '#include "pad/pad.h"\n#include <vector>\n#include <boost/units/io.hpp>\n#include "base/result.h"\n',
    "core/pad/CMakeLists.txt": "wetfront_library(pad LINKS wetfront_air)\n",
    "ui/viewmodels/model.cpp": '#include <QObject>\n#include "store/journal.h"\n#include "model.moc"\n',
    "tests/core/pad/pad_test.cpp": '#include "support/data_table.h"\n#include "air/air.h"\n#include <gtest/gtest.h>\n#include "wet.h"\n',
    "tests/core/pad/wet.h": "#include <vector>\n",
    "ui/charts/strip.cpp": '#include "items/strip_item.h"\n#include "records/sheet_content.h"\n',
}

RULES = [
    Rule("qt_in_core", "core/ includes and links no Qt", qt_in_core, CLEAN, [
        Planted("a Qt class", {"core/air/a.cpp": "#include <QString>\n"}, "core/air/a.cpp:1: includes QString"),
        Planted("a Qt module", {"core/air/a.h": "\n#  include <QtCore/QObject>\n"}, "core/air/a.h:2: includes QtCore/QObject"),
        Planted("a Qt header in lower case", {"core/air/a.h": '#include "qglobal.h"\n'}, "includes qglobal.h"),
        Planted("a Qt link line", {"core/air/CMakeLists.txt": "target_link_libraries(wetfront_air Qt6::Core)\n"},
                "core/air/CMakeLists.txt:1: uses Qt"),
    ]),
    Rule("folder_graph", "a folder includes and links only the folders below it", folder_graph, CLEAN, [
        Planted("upwards in core", {"core/air/a.cpp": '#include "pad/pad.h"\n'}, "core/air/a.cpp:1: includes pad/pad.h"),
        Planted("upwards with angle brackets", {"core/units/a.h": "#include <records/visit.h>\n"}, "includes records/visit.h"),
        Planted("ui from core", {"core/rules/a.cpp": '#include "viewmodels/model.h"\n'}, "includes viewmodels/model.h"),
        Planted("store from charts", {"ui/charts/a.cpp": '#include "store/journal.h"\n'}, "includes store/journal.h"),
        Planted("a test that reaches upwards", {"tests/core/air/a_test.cpp": '#include "pad/pad.h"\n'}, "includes pad/pad.h"),
        Planted("no folder", {"core/air/a.cpp": '#include "a.h"\n'}, "without its folder"),
        Planted("out of the tree", {"core/air/a.cpp": '#include "../pad/pad.h"\n'}, "no folder of the graph"),
        Planted("a link line upwards", {"core/air/CMakeLists.txt": "wetfront_library(air\n  LINKS wetfront_pad)\n"},
                "core/air/CMakeLists.txt:2: links wetfront_pad"),
    ]),
]
