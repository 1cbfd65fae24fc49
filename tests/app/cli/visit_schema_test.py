#!/usr/bin/python3
# SPDX-License-Identifier: Apache-2.0
"""The published schemas accept the examples, and schema and program both refuse the same broken visits.

visit_schema_test.py <wetfront-cli>
"""
import copy
import json
import subprocess
import sys

from jsonschema import Draft202012Validator


def run(program, *arguments, text=""):
    return subprocess.run([program, *arguments], input=text, capture_output=True, text=True, check=False)


def replaced(visit, path, value):
    broken = copy.deepcopy(visit)
    place = broken
    for step in path[:-1]:
        place = place[step]
    place[path[-1]] = value
    return broken


def removed(visit, path):
    broken = copy.deepcopy(visit)
    place = broken
    for step in path[:-1]:
        place = place[step]
    del place[path[-1]]
    return broken


def broken_visits(visit):
    bank = ("house", "banks", 0)
    yield "an unknown key", replaced(visit, ("house", "colour"), "red")
    yield "a bare number as text", replaced(visit, (*bank, "length"), "60")
    yield "a bare number", replaced(visit, (*bank, "length"), 60)
    yield "another kind's unit", replaced(visit, (*bank, "length"), "60 s")
    yield "no number", replaced(visit, (*bank, "length"), "long ft")
    yield "null", replaced(visit, (*bank, "length"), None)
    yield "an unknown name", replaced(visit, (*bank, "pump_end"), "middle")
    yield "an id with a blank", replaced(visit, ("visit", "id"), "my visit")
    yield "a time without offset", replaced(visit, ("visit", "started"), "2026-07-07T12:05:00")
    yield "a time of day that is none", replaced(visit, ("visit", "found", 0, "rinse_at"), "25:00")
    yield "a line break", replaced(visit, ("house", "name"), "House\nAlder")
    yield "a long name", replaced(visit, ("house", "name"), "x" * 201)
    yield "a pH of 15", replaced(visit, ("visit", "conditions", "ph"), 15)
    yield "a negative clock", replaced(visit, ("visit", "marks", 0, "at", "boot_ns"), -1)
    yield "five trim rows", replaced(visit, ("visit", "found", 0, "trim_rows"), [{}] * 5)
    yield "a list that is none", replaced(visit, ("house", "banks"), {})
    drawn = ("visit", "signatures", 0, "drawn")
    yield "a point beside the field", replaced(visit, drawn, ["0,0 2501,0"])
    yield "a point below the field", replaced(visit, drawn, ["0,0 400,0", "0,1001"])
    yield "a point of one number", replaced(visit, drawn, ["0,0 400"])
    yield "a point with a sign", replaced(visit, drawn, ["0,0 +400,0"])
    yield "a line of no points", replaced(visit, drawn, ["0,0 400,0", ""])
    yield "a line of too many points", replaced(visit, drawn, ["0,0" + " 9,9" * 1000])
    yield "too many lines", replaced(visit, drawn, ["0,0 400,0"] * 61)
    yield "no farm", removed(visit, ("farm",))
    yield "a farm without id", removed(visit, ("farm", "id"))
    yield "a bank without pump", removed(visit, (*bank, "pump"))
    yield "a mark without kind", removed(visit, ("visit", "marks", 0, "kind"))


def drawn_visits(visit):
    """Signatures at the edge of what both take."""
    drawn = ("visit", "signatures", 0, "drawn")
    for strokes in ([], ["0,0 2500,1000"], ["1999,999 2000,10 2099,0"], ["0,0 400,0" + " 9,9" * 998],
                    ["0,0 400,0"] * 60):
        yield replaced(visit, drawn, strokes)


def broken_templates(template):
    setting = ("template", "settings", 0)
    yield "an unknown key", replaced(template, (*setting, "colour"), "red")
    yield "an unknown setting", replaced(template, (*setting, "setting"), "dance")
    yield "no label", removed(template, (*setting, "label"))
    yield "a long label", replaced(template, (*setting, "label"), "x" * 61)
    yield "a resolution of 0", replaced(template, (*setting, "resolution"), 0)
    yield "a later format", replaced(template, ("format_version",), 2)
    yield "no format", removed(template, ("format_version",))


def template_problems(program):
    schema = json.loads(run(program, "schema", "template").stdout)
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    for kind in ("trimmed", "fixed interval", "on demand"):
        template = json.loads(run(program, "example", "template", "--kind", kind).stdout)
        for error in validator.iter_errors(template):
            yield f"template, {kind}: {error.json_path}: {error.message}"
        for name, broken in broken_templates(template):
            if validator.is_valid(broken):
                yield f"template, {kind}, {name}: the schema accepts it"


def main(program):
    schema = json.loads(run(program, "schema", "visit").stdout)
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    visit = json.loads(run(program, "example", "visit").stdout)
    problems = [f"example: {error.json_path}: {error.message}" for error in validator.iter_errors(visit)]

    for drawn in drawn_visits(visit):
        problems += [f"a signature: {error.message}" for error in validator.iter_errors(drawn)]
        result = run(program, "check", "-", text=json.dumps(drawn))
        if result.returncode > 1:
            problems.append(f"a signature: the program ends with {result.returncode}: {result.stderr}")
    problems += template_problems(program)
    count = 0
    for name, broken in broken_visits(visit):
        count += 1
        if validator.is_valid(broken):
            problems.append(f"{name}: the schema accepts it")
        result = run(program, "check", "-", text=json.dumps(broken))
        if result.returncode != 2:
            problems.append(f"{name}: the program ends with {result.returncode}: {result.stderr}")
    print(f"examples and {count} broken examples, {len(problems)} problems")
    print("\n".join(problems))
    return 1 if problems or count == 0 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))
