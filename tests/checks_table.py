#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""The table of comparisons with something outside: made from what the last packaging/test left, shown in tests/README.md.

checks_table.py --write    puts the table into the README
checks_table.py --check    complains where the README's table is not that of the run; status 1 if so
"""
import argparse
import re
import sys
from dataclasses import dataclass
from pathlib import Path

BEGIN = "<!-- table of checks: begin; tests/checks_table.py --write makes it -->"
END = "<!-- table of checks: end -->"
HEAD = ["| subject | source | points | largest deviation | limit | test |", "| --- | --- | --- | --- | --- | --- |"]
DEVIATION = 3  # cell of a row that may differ in its last digit
ROUNDING = "rounding (< 1e-12)"


class Trouble(Exception):
    """What keeps the table from being made, as a sentence."""


def plain(value, digits):
    """A number with so many digits that count: 0.0012, 35, 1.2e-7."""
    text = f"{value:.{digits - 1}e}"
    mantissa, exponent = text.split("e")
    exponent = int(exponent)
    if value == 0 or -4 <= exponent < 6:
        return f"{float(text):.{max(digits - 1 - exponent, 0)}f}"
    return f"{mantissa}e{exponent}"


def with_unit(text, unit):
    return f"{text} {unit}".strip()


@dataclass(frozen=True)
class Check:
    folder: str
    subject: str
    source: str
    test: str
    points: int
    deviation: str
    limit: str

    def row(self):
        cells = [self.subject, self.source, str(self.points), self.deviation, self.limit, f"{self.folder}: `{self.test}`"]
        return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"


def check_of(path):
    """The check that a test left in a file: see tests/support/outside_check.cpp."""
    cells = path.read_text(encoding="utf-8").rstrip("\n").split("\t")
    try:
        source_file, test, subject, source, points, deviation, limit, unit = cells
        folder = source_file.rpartition("/tests/")[2].rpartition("/")[0]
        shown = ROUNDING if deviation == "rounding" else with_unit(plain(float(deviation), 2), unit)
        limit = with_unit(f"{float(limit):.3g}".replace("e-0", "e-"), unit)
        check = Check(folder, subject, source, test, int(points), shown, limit)
    except ValueError as error:
        raise Trouble(f"{path}: not a row of a check: {error}") from error
    if not (folder and test and subject and source) or "\n" in "".join(cells):
        raise Trouble(f"{path}: a check without folder, test, subject or source, or of several lines")
    return check


def table_of(checks_folder):
    checks = [check_of(path) for path in Path(checks_folder).glob("*.tsv")]
    if not checks:
        raise Trouble(f"{checks_folder}: no check was left there; run packaging/test first")
    checks.sort(key=lambda check: (check.folder, check.subject, check.source, check.test))
    return HEAD + [check.row() for check in checks]


def parted(readme):
    """The README before its table, the table's lines, and what comes after."""
    if readme.count(BEGIN) != 1 or readme.count(END) != 1 or readme.index(BEGIN) > readme.index(END):
        raise Trouble(f"the README needs these two lines, once each and in this order:\n{BEGIN}\n{END}")
    before, rest = readme.split(BEGIN)
    table, after = rest.split(END)
    return before, table.strip("\n").splitlines(), after


def cells_of(row):
    return [cell.strip() for cell in re.split(r"(?<!\\)\|", row)[1:-1]]


def nearly_equal(one, other):
    """Two deviations that differ by one in the last of their two digits at most: rounding can do that."""
    if one == other:
        return True
    (one, _, one_unit), (other, _, other_unit) = one.partition(" "), other.partition(" ")
    try:
        larger = max(float(one), float(other))
        step = 10.0 ** int(f"{larger:.1e}".split("e")[1]) / 10.0
        return one_unit == other_unit and abs(float(one) - float(other)) < 1.5 * step
    except ValueError:
        return False


def same_row(one, other):
    one, other = cells_of(one), cells_of(other)
    return (len(one) == len(other) > DEVIATION and nearly_equal(one[DEVIATION], other[DEVIATION])
            and one[:DEVIATION] + one[DEVIATION + 1:] == other[:DEVIATION] + other[DEVIATION + 1:])


def complaints(shown, run):
    """Rows that only one of the two tables has, and rows in another order."""
    missing = [f"not in the README: {row}" for row in run if not any(same_row(row, other) for other in shown)]
    stale = [f"not in the run: {row}" for row in shown if not any(same_row(row, other) for other in run)]
    found = missing + stale
    if not found and not (len(shown) == len(run) and all(map(same_row, shown, run))):
        found = ["the README has the rows of the run in another order, or twice"]
    return found


def main(arguments=None):
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    what = parser.add_mutually_exclusive_group(required=True)
    what.add_argument("--write", action="store_true")
    what.add_argument("--check", action="store_true")
    top = Path(__file__).resolve().parent.parent
    parser.add_argument("--checks", type=Path, default=top / "build/release/checks", help="folder of the run")
    parser.add_argument("--readme", type=Path, default=top / "tests/README.md")
    options = parser.parse_args(arguments)

    try:
        run = table_of(options.checks)
        before, shown, after = parted(options.readme.read_text(encoding="utf-8"))
    except (OSError, Trouble) as trouble:
        print(trouble)
        return 1
    if options.write:
        options.readme.write_text(before + "\n".join([BEGIN, "", *run, "", END]) + after, encoding="utf-8")
        print(f"{len(run) - len(HEAD)} checks written to {options.readme}")
        return 0
    found = complaints(shown, run)
    for complaint in found:
        print(complaint)
    print(f"table of checks: {len(run) - len(HEAD)} in the run, {len(found)} complaints"
          + ("; tests/checks_table.py --write brings the README up to date" if found else ""))
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
