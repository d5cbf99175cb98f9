# SPDX-License-Identifier: GPL-3.0-or-later
"""Collects what the tests found of our agreement with published figures, and shows it as one table.

usage: agreement_table.py FOLDER collect TEST...             writes FOLDER/agreement.md
       agreement_table.py FOLDER compare DOCUMENT TEST...    the same, and fails when DOCUMENT shows something else
       agreement_table.py FOLDER update DOCUMENT TEST...     writes the table into DOCUMENT
       agreement_table.py FOLDER print                       the table for a terminal

Each class Agreement of tests/support leaves a line FOLDER/PROGRAM-KEY.tsv, and each TEST (core/gas ...) that could have
left one its report FOLDER/ran/core_gas.xml. The folder is cleared when a run begins, so that a line whose check was
renamed does not linger. Ends with 1 when something is wrong, and with 77 (skipped) when only some of the tests ran, or
only parts of them: a table of parts says nothing.
"""
import os
import pathlib
import sys
import xml.etree.ElementTree

BEGIN = "<!-- agreement: written by the target agreement_table -->"
END = "<!-- end of agreement -->"
HEAD = ["Check", "Published source", "Values", "Largest deviation", "Allowed"]
NOISE = 1e-6  # of what is allowed: the last bits of the arithmetic, which differ from compiler to compiler
SLACK = 0.1  # of a deviation, between the document's and the run's: better than one significant digit
SKIPPED = 77


def number(value):
    """With two significant digits, written out."""
    if value != value or value in (float("inf"), float("-inf")):
        return "none"
    rounded = float(f"{value:.1e}")
    if rounded == 0 or 1e-4 <= rounded < 1e6:
        return f"{rounded:f}".rstrip("0").rstrip(".")
    return f"{rounded:.1e}"


class Line:
    def __init__(self, program, text):
        self.program = program
        self.check, self.source, values, most, allowed, self.unit = text.rstrip("\n").split("\t")
        self.values, self.most, self.allowed = int(values), float(most), float(allowed)

    def key(self):
        return (self.check, self.source)

    def with_unit(self, value):
        return f"{value} {self.unit}".strip()

    def deviation(self):
        return self.with_unit("0" if self.most <= NOISE * self.allowed else number(self.most))

    def cells(self):
        return [self.check, self.source, str(self.values), self.deviation(), self.with_unit(f"{self.allowed:.6g}")]


def lines_in(folder):
    lines = [Line(path.name.rpartition("-")[0], path.read_text(encoding="utf-8")) for path in sorted(folder.glob("*.tsv"))]
    return sorted(lines, key=lambda line: (line.check.casefold(), line.source.casefold()))


def row(cells):
    return "| " + " | ".join(cell.replace("|", "\\|") for cell in cells) + " |"


def table(lines):
    return "\n".join([row(HEAD), "|---|---|---:|---:|---:|"] + [row(line.cells()) for line in lines]) + "\n"


def cells_of(text):
    cells = text.strip()[1:-1].replace("\\|", "\0").split("|")
    return [cell.replace("\0", "|").strip() for cell in cells]


def section_of(document):
    text = document.read_text(encoding="utf-8")
    before, begin, rest = text.partition(BEGIN)
    section, end, after = rest.partition(END)
    if not begin or not end:
        sys.exit(f"{document.name} has no section between {BEGIN} and {END}")
    return before, section, after


def rows_of(section):
    rows = [cells_of(text) for text in section.splitlines() if text.startswith("| ")]
    return {(cells[0], cells[1]): cells for cells in rows if cells != HEAD}


def not_run(folder, tests):
    """Why the run was one of parts; empty when it was whole."""
    missing = []
    for test in tests:
        report = folder / "ran" / (test.replace("/", "_") + ".xml")
        try:
            xml.etree.ElementTree.parse(report)
        except (OSError, xml.etree.ElementTree.ParseError):
            missing.append(test)
    if missing:
        return "these did not run to their end: " + " ".join(missing)
    for name in ("GTEST_FILTER", "GTEST_TOTAL_SHARDS"):
        if os.environ.get(name, "*") != "*":
            return f"{name} is set"
    return ""


def slips_of(lines, tests):
    """What is wrong with the run itself."""
    programs = {"test_" + test.replace("/", "_") for test in tests}
    slips = [f"{program} left a line, but is not among the tests that may"
             for program in sorted({line.program for line in lines} - programs)]
    seen = set()
    for line in lines:
        if line.key() in seen:
            slips.append(f"{line.check} ({line.source}): two programs check this by the same name")
        seen.add(line.key())
        if not line.most <= line.allowed:
            slips.append(f"{line.check} ({line.source}): {line.most:g}, beyond {line.with_unit(f'{line.allowed:g}')}")
    return slips


def is_close(shown, line):
    """Whether a deviation that the document shows is what the run found."""
    text = shown[:len(shown) - len(line.unit)].strip() if line.unit and shown.endswith(line.unit) else shown
    try:
        value = float(text)
    except ValueError:
        return False
    return abs(value - line.most) <= max(SLACK * max(value, line.most), NOISE * line.allowed)


def differences(rows, lines):
    """Between the document's rows and the run's lines."""
    found = {line.key(): line for line in lines}
    slips = [f"shown, but not found by the run: {check} ({source})" for check, source in sorted(rows.keys() - found)]
    for key, line in sorted(found.items()):
        cells = line.cells()
        if key not in rows:
            slips.append(f"found by the run, but not shown: {line.check} ({line.source})")
            continue
        shown = rows[key]
        if [shown[2], shown[4]] != [cells[2], cells[4]] or not is_close(shown[3], line):
            slips.append(f"{line.check} ({line.source}): shown {' | '.join(shown[2:])}; found {' | '.join(cells[2:])}")
    return slips


def print_short(lines):
    print(f"== agreement with published figures: {len(lines)} checks, {sum(line.values for line in lines)} values")
    for line in lines:
        print(f"{line.check}: {line.deviation()} at most, of {line.with_unit(f'{line.allowed:.6g}')} allowed"
              f" ({line.values}; {line.source})")


def update(document, lines):
    before, _, after = section_of(document)
    document.write_text(before + BEGIN + "\n" + table(lines) + END + after, encoding="utf-8")
    return 0


def main(folder, action, *arguments):
    folder = pathlib.Path(folder)
    lines = lines_in(folder)
    if action == "print":
        print_short(lines)
        return 0
    arguments = list(arguments)
    document = pathlib.Path(arguments.pop(0)) if action in ("compare", "update") else None
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "agreement.md").write_text(table(lines), encoding="utf-8")
    slips = slips_of(lines, arguments)
    parts = not_run(folder, arguments)
    if not slips and parts:
        print(f"The table is not compared: only some of the tests ran ({parts}).")
        return SKIPPED
    if not slips and action == "update":
        return update(document, lines)
    if not slips and action == "compare":
        slips = differences(rows_of(section_of(document)[1]), lines)
        if slips:
            slips.append(f"{document.name} shows another table than the run found: look at what changed, then run"
                         " the target agreement_table")
    print("\n".join(slips or [f"{len(lines)} checks, {sum(line.values for line in lines)} values"]))
    return 1 if slips else 0


if __name__ == "__main__":
    if len(sys.argv) < 3 or sys.argv[2] not in ("collect", "compare", "update", "print"):
        sys.exit(__doc__)
    sys.exit(main(*sys.argv[1:]))
