# SPDX-License-Identifier: Apache-2.0
"""The shape of the tree: top level, file sizes, licence lines, references that lead nowhere, packages of others."""
import json
import re
from pathlib import PurePosixPath

from project_tree import Planted, Rule

TOP = {"CMakeLists.txt", "README.md", "DEVELOPERS.md", "LICENSE", "CMakePresets.json",
       "app", "core", "ui", "resources", "tests", "packaging"}
LONGEST = {".h": 600, ".cpp": 600, ".qml": 300}
SPDX = "SPDX-License-Identifier: Apache-2.0"
SPDX_FILES = ("*.h", "*.cpp", "*.qml", "*.js", "*.mjs", "*.py", "*.sh", "*.sql", "*.cmake", "CMakeLists.txt", "*.desktop", "*.xml")
DOCUMENT = re.compile(r"(?<![\w/.-])(?:[\w.-]+/)*([\w-]+\.md)\b")
MACHINE_PATH = re.compile(r"(?<![\w.])/(?:work|root|home)/")
TRACKER = re.compile(r"\bissues?\s+#?\d+|\btranscript\b", re.IGNORECASE)


def top_level(tree):
    heads = sorted({name.split("/")[0] for name in tree.files()})
    return [f"{head}: not one of {', '.join(sorted(TOP))}; the top level holds nothing else"
            for head in heads if head not in TOP and not head.startswith(".")]


def file_sizes(tree):
    found = []
    for name in tree.files(*("*" + ending for ending in LONGEST)):
        limit, length = LONGEST[PurePosixPath(name).suffix], len(tree.lines(name))
        if length > limit:
            found.append(f"{name}: {length} lines, {limit} allowed: split it by what it does")
    return found


def spdx(tree):
    found = []
    for name in tree.files():
        head = tree.text(name).split("\n", 2)[:2]
        is_source = any(PurePosixPath(name).match(pattern) for pattern in SPDX_FILES) or head[0].startswith("#!")
        if is_source and not any(SPDX in line for line in head):
            found.append(f"{name}: no '{SPDX}' in its first two lines")
    return found


def dead_references(tree):
    documents = {PurePosixPath(name).name for name in tree.files("*.md")} | TOP
    found = []
    for name in tree.files():
        if name == "LICENSE":
            continue
        for number, line in tree.lines(name):
            if MACHINE_PATH.search(line):
                found.append(f"{name}:{number}: names a folder of one machine")
            if TRACKER.search(line):
                found.append(f"{name}:{number}: refers to what a reader of the source does not have; say it here")
            for document in DOCUMENT.findall(line):
                if document not in documents:
                    found.append(f"{name}:{number}: names {document}, which is not in the tree; say it here")
    return found


def locked_packages(tree):
    found = []
    for name in tree.files("package.json"):
        lock_name = str(PurePosixPath(name).parent / "package-lock.json")
        if lock_name not in tree.files():
            found.append(f"{name}: no {lock_name}: everybody would install something else")
            continue
        wanted = json.loads(tree.text(name)).get("dependencies", {})
        locked = json.loads(tree.text(lock_name)).get("packages", {})
        for package, version in wanted.items():
            if locked.get(f"node_modules/{package}", {}).get("version") != version:
                found.append(f"{name}: {package} {version} is not exactly what {lock_name} holds")
        for package, entry in locked.items():
            if "resolved" in entry:
                found.append(f"{lock_name}: {package} names the host it came from; npm's omit-lockfile-registry-resolved leaves that out")
            if package and "integrity" not in entry:
                found.append(f"{lock_name}: {package} has no checksum")
    return found


# Written in pieces so that the rule does not find itself.
OWN_FOLDER = "/ho" "me/somebody/tree"
OLD_DOCUMENT = "lay" "out.m" "d"
TRACKED = "iss" "ue 12"
CLEAN = {
    "CMakeLists.txt": f"# {SPDX}\n",
    ".editorconfig": "root = true\n",
    "README.md": "See DEVELOPERS.md.\n",
    "DEVELOPERS.md": "An issue with the pump. https://example.org/homework/1\n",
    "core/a.cpp": f"// {SPDX}\n" + "\n" * 599,
    "ui/qml/A.qml": f"// {SPDX}\n" + "\n" * 299,
    "packaging/run": f"#!/usr/bin/env bash\n# {SPDX}\n",
    "tests/data/a.json": "{}\n",
    "tests/outside/a.mjs": f"// {SPDX}\n",
    "tests/outside/package.json": json.dumps({"dependencies": {"a": "1.0.0"}}),
    "tests/outside/package-lock.json": json.dumps({"packages": {
        "": {"dependencies": {"a": "1.0.0"}}, "node_modules/a": {"version": "1.0.0", "integrity": "sha512-a"}}}),
}


def locked(**entry):
    return {"tests/outside/package-lock.json": json.dumps({"packages": {"node_modules/a": entry}})}


RULES = [
    Rule("top_level", "the top level holds only what belongs there", top_level, CLEAN, [
        Planted("a folder", {"scripts/a": "a"}, "scripts: not one of"),
        Planted("a file", {"notes.txt": "a"}, "notes.txt: not one of"),
    ]),
    Rule("file_sizes", "C++ files up to 600 lines, QML files up to 300", file_sizes, CLEAN, [
        Planted("a long source", {"core/a.cpp": "\n" * 601}, "core/a.cpp: 601 lines"),
        Planted("a long header", {"core/a.h": "\n" * 601}, "core/a.h: 601 lines"),
        Planted("a long page", {"ui/qml/A.qml": "\n" * 301}, "ui/qml/A.qml: 301 lines"),
    ]),
    Rule("spdx", "every source and script carries its licence line", spdx, CLEAN, [
        Planted("a source", {"core/a.cpp": "int a;\n"}, "core/a.cpp: no 'SPDX"),
        Planted("too far down", {"ui/qml/A.qml": f"\n\n// {SPDX}\n"}, "ui/qml/A.qml: no 'SPDX"),
        Planted("a script without an ending", {"packaging/run": "#!/bin/sh\n"}, "packaging/run: no 'SPDX"),
        Planted("a module", {"tests/outside/a.mjs": "let a;\n"}, "tests/outside/a.mjs: no 'SPDX"),
        Planted("another licence", {"CMakeLists.txt": "# SPDX-License-Identifier: MIT\n"}, "CMakeLists.txt: no 'SPDX"),
    ]),
    Rule("dead_references", "no path of one machine, no reference to what is not in the tree", dead_references, CLEAN, [
        Planted("a machine's folder", {"core/a.cpp": f"// {OWN_FOLDER}\n"}, "core/a.cpp:1: names a folder"),
        Planted("a document elsewhere", {"core/a.cpp": f"\n// see {OLD_DOCUMENT}\n"}, "core/a.cpp:2: names " + OLD_DOCUMENT),
        Planted("a number in a tracker", {"README.md": f"as {TRACKED} says\n"}, "README.md:1: refers to"),
    ]),
    Rule("locked_packages", "packages of others are locked by version and checksum, not by host", locked_packages, CLEAN, [
        Planted("a range", {"tests/outside/package.json": json.dumps({"dependencies": {"a": "^1.0.0"}})}, "a ^1.0.0 is not exactly"),
        Planted("another version", locked(version="1.0.1", integrity="sha512-a"), "a 1.0.0 is not exactly"),
        Planted("a host", locked(version="1.0.0", integrity="sha512-a", resolved="https://example.org/a.tgz"), "names the host"),
        Planted("no checksum", locked(version="1.0.0"), "has no checksum"),
        Planted("no lock", {"tests/other/package.json": "{}"}, "tests/other/package.json: no tests/other/package-lock.json"),
    ]),
]
