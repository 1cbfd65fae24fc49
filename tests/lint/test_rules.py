# SPDX-License-Identifier: Apache-2.0
"""No test is silently off: what is on disk against what CTest runs."""
import json
import re
from pathlib import Path, PurePosixPath

from project_tree import Planted, Rule

# Comments are read too: a test commented out is a test that is off.
PLAIN = re.compile(r"\bTEST(?:_F)?\(\s*(\w+)\s*,\s*(\w+)\s*\)")
VALUED = re.compile(r"\bTEST_P\(\s*(\w+)\s*,\s*(\w+)\s*\)")
TYPED = re.compile(r"\bTYPED_TEST(?:_P)?\(\s*(\w+)\s*,\s*(\w+)\s*\)")
QML_TEST = re.compile(r"\bfunction\s+test_\w+\s*\(")
PROGRAM = re.compile(r"\bwetfront_tests\(\s*(\w+)")
OFF = re.compile(r"\bGTEST_SKIP\b|\bQSKIP\b|\bDISABLED_\w*|\bskip\(\s*[\"'`]|\bQEXPECT_FAIL\b|\bexpectFail(?:Continue)?\(")


def properties(test):
    return {entry["name"]: entry["value"] for entry in test.get("properties", [])}


def where(test, build):
    """The folder of the source tree a CTest test was added in, read off its working directory."""
    folder = properties(test).get("WORKING_DIRECTORY", "")
    try:
        return Path(build, folder).resolve().relative_to(build).as_posix()
    except ValueError:
        return folder


def case_of(test):
    """The name GoogleTest has for what a CTest test runs: its filter, or no case if it has none."""
    for argument in test.get("command", []):
        if argument.startswith("--gtest_filter="):
            return argument.partition("=")[2]
    return ""


def wanted_names(text):
    """Each test in a C++ file: its name for people, and the pattern of the names GoogleTest gives its cases."""
    for suite, test in PLAIN.findall(text):
        yield f"{suite}.{test}", re.compile(rf"{suite}\.{test}")
    for suite, test in VALUED.findall(text):
        yield f"{suite}.{test}", re.compile(rf"(?:\w+/)?{suite}\.{test}/\w+")
    for suite, test in TYPED.findall(text):
        yield f"{suite}.{test}", re.compile(rf"(?:\w+/)?{suite}/\w+\.{test}")


def tests_run(tree):
    found = []
    tests = tree.ctest()
    by_folder = {}
    for test in tests:
        by_folder.setdefault(where(test, tree.build), []).append(case_of(test))
        if test["name"].endswith("_NOT_BUILT"):
            found.append(f"{test['name']}: CTest found no test in this program: it was not built")
        if properties(test).get("DISABLED"):
            found.append(f"{test['name']}: CTest does not run it: it is disabled")

    for name in tree.under("tests", "*.cpp", "*.h"):
        names = list(wanted_names(tree.text(name)))
        if name.endswith("_test.cpp"):
            if not names:
                found.append(f"{name}: holds no test")
            run = by_folder.get(PurePosixPath(name).parent.as_posix(), [])
            for title, pattern in names:
                if not any(pattern.fullmatch(candidate) for candidate in run):
                    found.append(f"{name}: {title} is on disk but CTest does not run it")
        elif names:
            found.append(f"{name}: holds tests but is not named *_test.cpp, so the build does not find it")

    arguments = [argument for test in tests for argument in test.get("command", [])]
    for name in tree.under("tests", "tst_*.qml"):
        if not QML_TEST.search(tree.text(name)):
            found.append(f"{name}: holds no test")
        if not any(argument.endswith("/" + name) for argument in arguments):
            found.append(f"{name}: is on disk but no CTest command names it (-input <file>)")

    programs = {Path(test["command"][0]).name for test in tests if test.get("command")}
    for name in tree.under("tests", "CMakeLists.txt"):
        for program in PROGRAM.findall(tree.text(name)):
            if program not in programs:
                found.append(f"{name}: {program} has no test that CTest runs")
    return found


def no_test_off(tree):
    found = []
    for name in tree.under("tests", "*.cpp", "*.h", "*.qml"):
        for number, line in tree.lines(name):
            match = OFF.search(line)
            if match:
                found.append(f"{name}:{number}: {match.group(0)}: a test that does not run is worse than none")
    return found


def listing(*tests):
    return json.dumps({"tests": [
        {"name": name, "command": command,
         "properties": [{"name": "WORKING_DIRECTORY", "value": folder}] + extra}
        for name, folder, command, extra in tests]})


def pad_case(name, case):
    return (name, "tests/core/pad", ["/b/bin/pad_tests", f"--gtest_filter={case}"], [])


PAD = pad_case("PadTest.holds", "PadTest.holds")
ROW = pad_case("Rows/PadTable.holds/2.5", "Rows/PadTable.holds/0")
TYPE = pad_case("PadTyped.holds<int>", "PadTyped/0.holds")
QML = ("pages", "tests/ui", ["/b/bin/qml_tests", "-input", "/s/tests/ui/tst_page.qml"], [])


def planted_listing(*tests):
    return {"build/ctest.json": listing(*tests)}


RUN_CLEAN = {
    "tests/core/pad/CMakeLists.txt": "wetfront_tests(pad_tests LINKS wetfront_pad)\n",
    "tests/core/pad/pad_test.cpp": "TEST(PadTest,\n     holds) {}\nTEST_P(PadTable, holds) {}\nTYPED_TEST(PadTyped, holds) {}\n",
    "tests/ui/tst_page.qml": "TestCase { function test_page() {} }\n",
    **planted_listing(PAD, ROW, TYPE, QML),
}

RULES = [
    Rule("tests_run", "every test on disk is one that CTest runs", tests_run, RUN_CLEAN, [
        Planted("a test file outside the build", {"tests/core/pad/wet_test.cpp": "TEST(WetTest, dries) {}\n"},
                "tests/core/pad/wet_test.cpp: WetTest.dries is on disk"),
        Planted("a test commented out", {"tests/core/pad/wet_test.cpp": "// TEST_F(WetTest, dries) {}\n"}, "WetTest.dries is on disk"),
        Planted("the same names in another folder", {"tests/core/air/pad_test.cpp": "TEST(PadTest, holds) {}\n"},
                "tests/core/air/pad_test.cpp: PadTest.holds is on disk"),
        Planted("a table without rows", planted_listing(PAD, TYPE, QML), "PadTable.holds is on disk"),
        Planted("a typed test without types", planted_listing(PAD, ROW, QML), "PadTyped.holds is on disk"),
        Planted("an empty test file", {"tests/core/pad/wet_test.cpp": "int a;\n"}, "wet_test.cpp: holds no test"),
        Planted("a test in a file the build passes over", {"tests/core/pad/wet_tests.cpp": "TEST(WetTest, dries) {}\n"},
                "not named *_test.cpp"),
        Planted("a QML test outside CTest", {"tests/ui/tst_b.qml": "TestCase { function test_b() {} }\n"}, "tests/ui/tst_b.qml: is on disk"),
        Planted("an empty QML test", {"tests/ui/tst_page.qml": "TestCase {}\n"}, "tests/ui/tst_page.qml: holds no test"),
        Planted("a program without tests", {"tests/core/air/CMakeLists.txt": "wetfront_tests(air_tests LINKS wetfront_air)\n"},
                "air_tests has no test"),
        Planted("a program not built", planted_listing(PAD, ROW, TYPE, QML, ("air_tests_NOT_BUILT", "tests/core/air", [], [])),
                "air_tests_NOT_BUILT: CTest found no test"),
        Planted("a test disabled in CTest", planted_listing(
            PAD, ROW, TYPE, QML, ("more", "tests/ui", ["/b/bin/more"], [{"name": "DISABLED", "value": True}])), "more: CTest does not run it"),
    ]),
    Rule("no_test_off", "no test is skipped, disabled or expected to fail", no_test_off, RUN_CLEAN, [
        Planted("skipped", {"tests/core/pad/a_test.cpp": 'GTEST_SKIP() << "later";\n'}, "a_test.cpp:1: GTEST_SKIP"),
        Planted("disabled", {"tests/core/pad/a_test.cpp": "TEST(A, DISABLED_b) {}\n"}, "a_test.cpp:1: DISABLED_b"),
        Planted("skipped in a Qt test", {"tests/ui/a_test.cpp": '    QSKIP("later");\n'}, "a_test.cpp:1: QSKIP"),
        Planted("skipped in QML", {"tests/ui/tst_b.qml": '\nskip("later")\n'}, 'tst_b.qml:2: skip("'),
        Planted("expected to fail", {"tests/ui/a_test.cpp": 'QEXPECT_FAIL("", "later", Continue);\n'}, "a_test.cpp:1: QEXPECT_FAIL"),
    ]),
]
