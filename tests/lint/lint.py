#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Checks of the source tree that no compiler makes.

lint.py list                                 the rules, one a line
lint.py check RULE --root DIR [--build DIR]  complaints on stdout; status 1 if there are any
lint.py self-test RULE                       plants each violation the rule claims to find, and looks whether it is found
"""
import argparse
import sys
import tempfile
from pathlib import Path

import house_rules
import include_rules
import qml_rules
import test_rules
import text_rules
from project_tree import ProjectTree

RULES = {rule.name: rule for rule in
         include_rules.RULES + house_rules.RULES + test_rules.RULES + qml_rules.RULES
         + text_rules.RULES}


def check(rule, root, build):
    tree = ProjectTree(root, build)
    if not tree.files():
        return [f"{root}: no file found, so nothing was checked"]
    return rule.check(tree)


def complaints_on(rule, files):
    with tempfile.TemporaryDirectory(prefix="wetfront-lint-") as folder:
        for name, text in files.items():
            path = Path(folder, name)
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")
        return rule.check(ProjectTree(folder, Path(folder, "build")))


def self_test(rule):
    """Each planted tree must bring exactly one complaint, with the text promised; the clean tree none."""
    failures = []
    for planted in rule.planted:
        complaints = complaints_on(rule, {**rule.clean, **planted.files})
        if len(complaints) != 1 or planted.expected not in complaints[0]:
            failures.append(f"planted: {planted.what}\n  wanted one complaint with: {planted.expected}\n  got: {complaints}")
    complaints = complaints_on(rule, rule.clean)
    if complaints:
        failures.append(f"clean tree\n  wanted no complaint\n  got: {complaints}")
    if not rule.planted or not rule.clean:
        failures.append("the rule has no planted violation or no clean tree: it could be blind")
    return failures


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    commands = parser.add_subparsers(dest="command", required=True)
    commands.add_parser("list")
    for name in ("check", "self-test"):
        command = commands.add_parser(name)
        command.add_argument("rule", choices=sorted(RULES))
        if name == "check":
            command.add_argument("--root", required=True)
            command.add_argument("--build")
    arguments = parser.parse_args()

    if arguments.command == "list":
        for rule in RULES.values():
            print(f"{rule.name}: {rule.says}")
        return 0
    rule = RULES[arguments.rule]
    if arguments.command == "check":
        complaints = check(rule, arguments.root, arguments.build)
    else:
        complaints = self_test(rule)
    for complaint in complaints:
        print(complaint)
    print(f"{rule.name}: {rule.says}: {len(complaints)} complaints")
    return 1 if complaints else 0


if __name__ == "__main__":
    sys.exit(main())
