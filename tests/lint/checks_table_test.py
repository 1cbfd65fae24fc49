#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""The table of checks is written from a run, and each way in which a README can differ from the run is found."""
import contextlib
import io
import sys
import tempfile
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))
import checks_table  # noqa: E402

WET_BULB = ("/s/tests/core/air/air_test.cpp", "AirTest.wet", "wet bulb", "table 3", "12", "0.00123", "0.01", "degC")
DENSITY = ("/s/tests/core/air/air_test.cpp", "AirTest.dense", "density", "a | b", "7", "4.56e-07", "0.5", "%")
SUMS = ("/s/tests/core/water/sum_test.cpp", "SumTest.adds", "a sum", "by hand", "3", "rounding", "1e-09", "m")
RUN = (SUMS, WET_BULB, DENSITY)
README = f"before\n\n{checks_table.BEGIN}\n{checks_table.END}\n\nafter\n"
WRITTEN = f"""before

{checks_table.BEGIN}

| subject | source | points | largest deviation | limit | test |
| --- | --- | --- | --- | --- | --- |
| density | a \\| b | 7 | 4.6e-7 % | 0.5 % | core/air: `AirTest.dense` |
| wet bulb | table 3 | 12 | 0.0012 degC | 0.01 degC | core/air: `AirTest.wet` |
| a sum | by hand | 3 | rounding (< 1e-12) | 1e-9 m | core/water: `SumTest.adds` |

{checks_table.END}

after
"""


def changed(check, **cells):
    names = ("file", "test", "subject", "source", "points", "deviation", "limit", "unit")
    return tuple(cells.get(name, cell) for name, cell in zip(names, check))


class ChecksTable(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory(prefix="wetfront-checks-")
        self.addCleanup(folder.cleanup)
        self.checks = Path(folder.name, "checks")
        self.checks.mkdir()
        self.readme = Path(folder.name, "README.md")
        self.readme.write_text(README, encoding="utf-8")
        self.leave(RUN)

    def leave(self, run):
        for path in self.checks.iterdir():
            path.unlink()
        for number, check in enumerate(run):
            Path(self.checks, f"{number}.tsv").write_text("\t".join(check) + "\n", encoding="utf-8")

    def ask(self, what):
        said = io.StringIO()
        with contextlib.redirect_stdout(said):
            status = checks_table.main([what, "--checks", str(self.checks), "--readme", str(self.readme)])
        return status, said.getvalue()

    def assert_found(self, expected):
        status, said = self.ask("--check")
        self.assertEqual(status, 1, said)
        self.assertIn(expected, said)

    def test_writing_sorts_rounds_and_leaves_the_rest_of_the_readme(self):
        self.assertEqual(self.ask("--write")[0], 0)
        self.assertEqual(self.readme.read_text(encoding="utf-8"), WRITTEN)

    def test_what_was_written_is_what_is_wanted_and_writing_again_changes_nothing(self):
        self.ask("--write")
        self.assertEqual(self.ask("--check")[0], 0)
        self.ask("--write")
        self.assertEqual(self.readme.read_text(encoding="utf-8"), WRITTEN)

    def test_planted_faults_are_found(self):
        faults = {
            "a check more": ((*RUN, changed(WET_BULB, subject="dew point")), "not in the README: | dew point"),
            "a check gone": ((SUMS, DENSITY), "not in the run: | wet bulb"),
            "another deviation": ((SUMS, changed(WET_BULB, deviation="0.00140"), DENSITY), "not in the README: | wet bulb"),
            "ten times the deviation": ((SUMS, changed(WET_BULB, deviation="0.0123"), DENSITY), "not in the README: | wet bulb"),
            "no more than rounding": ((SUMS, changed(WET_BULB, deviation="rounding"), DENSITY), "not in the README: | wet bulb"),
            "another limit": ((SUMS, changed(WET_BULB, limit="0.02"), DENSITY), "not in the README: | wet bulb"),
            "another unit": ((SUMS, changed(WET_BULB, unit="K"), DENSITY), "not in the README: | wet bulb"),
            "another number of points": ((SUMS, changed(WET_BULB, points="13"), DENSITY), "not in the README: | wet bulb"),
            "another source": ((SUMS, changed(WET_BULB, source="table 4"), DENSITY), "not in the README: | wet bulb"),
            "another test": ((SUMS, changed(WET_BULB, test="AirTest.wetter"), DENSITY), "not in the README: | wet bulb"),
            "no check at all": ((), "no check was left there"),
            "a cell too few": ((*RUN, WET_BULB[:-1]), "not a row of a check"),
            "a deviation that is no number": ((*RUN, changed(WET_BULB, deviation="much")), "not a row of a check"),
            "no subject": ((*RUN, changed(WET_BULB, subject="")), "without folder, test, subject"),
        }
        self.ask("--write")
        for what, (run, expected) in faults.items():
            with self.subTest(what):
                self.leave(run)
                self.assert_found(expected)

    def test_a_table_changed_by_hand_is_found(self):
        rows = WRITTEN.splitlines(keepends=True)
        swapped = [*rows[:6], rows[7], rows[6], *rows[8:]]
        for what, text, expected in (
                ("swapped", "".join(swapped), "in another order"),
                ("twice", WRITTEN.replace(rows[6], rows[6] * 2), "in another order, or twice"),
                ("no table", README, "not in the README: | wet bulb"),
                ("no mark", WRITTEN.replace(checks_table.END, ""), "needs these two lines"),
                ("marks exchanged", f"{checks_table.END}\n{checks_table.BEGIN}\n", "needs these two lines")):
            with self.subTest(what):
                self.readme.write_text(text, encoding="utf-8")
                self.assert_found(expected)

    def test_one_in_the_last_digit_is_no_difference(self):
        self.ask("--write")
        self.leave((SUMS, changed(WET_BULB, deviation="0.00126"), DENSITY))
        self.assertEqual(self.ask("--check")[0], 0)

    def test_a_readme_without_marks_is_not_written(self):
        self.readme.write_text("before\n", encoding="utf-8")
        status, said = self.ask("--write")
        self.assertEqual(status, 1)
        self.assertIn("needs these two lines", said)
        self.assertEqual(self.readme.read_text(encoding="utf-8"), "before\n")


if __name__ == "__main__":
    unittest.main()
