"""Writes a list of formulas in grams for a batch: grams.py book.json formulas.csv "3 1/2 cup" > grams.csv

The list has the columns formula, material, amount, as a spreadsheet saves it as CSV in UTF-8. Each amount is for one
cup of base, as people write it at the bench: "32 drops", "1/2 tsp", "8 % of base". The materials are those of the book.
The result has grams instead of amounts. If there are faults, all are printed with their lines, and nothing is written.
"""

import argparse
import csv
import io
import json
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pourwright

COLUMNS = ["formula", "material", "amount"]


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("book", type=Path)
    parser.add_argument("formulas", type=Path)
    parser.add_argument("base", help='amount of base, such as "3 1/2 cup" or "800 g"')
    chosen = parser.parse_args()
    try:
        pourwright.Book(chosen.book)
    except pourwright.PourwrightError as error:
        return complain([f"{chosen.book}{fault.path}: {fault.message} {fault.help}" for fault in error.faults])
    try:
        rows = list(read(chosen.formulas.read_text("utf-8-sig")))
    except (ValueError, csv.Error) as error:
        return complain([f"{chosen.formulas}: {error}"])
    # The formulas of the list replace the book's.
    book = json.loads(chosen.book.read_bytes())
    book.pop("products", None)

    lines: dict[str, dict[str, int]] = {}
    doses: dict[str, dict[str, str]] = {}
    wrong: set[tuple[int, str]] = set()  # a fault outside the list has line 0
    for line, cells in rows:
        if len(cells) > len(COLUMNS) or not all(cells):
            wrong.add((line, f'A row has {", ".join(COLUMNS)}; put a text with a comma in "".'))
            continue
        formula, material, amount = cells
        first = lines.setdefault(formula, {}).setdefault(material, line)
        if first != line:
            wrong.add((line, f"{formula} has {material} already, in line {first}."))
            continue
        doses.setdefault(formula, {})[material] = amount
        # One dose at a time, so that no fault hides another.
        wrong |= faults(line, book, formula, {material: amount}, chosen.base)
    if not wrong:
        for formula in doses:
            wrong |= faults(min(lines[formula].values()), book, formula, doses[formula], chosen.base)
    if wrong:
        return complain([f"{chosen.formulas}:{line}: {text}" if line else text for line, text in sorted(wrong)])

    writer = csv.writer(sys.stdout, lineterminator="\n")
    writer.writerow(["formula", "material", "grams"])
    for formula in doses:
        for part in parts(book, formula, doses[formula], chosen.base):
            writer.writerow([formula, part["material"], f"{part['mass']['value']:.2f}"])
    return 0


def read(text: str) -> Iterator[tuple[int, list[str]]]:
    """The rows that are not blank, with their lines: formula, material, amount, and any further cells."""
    # Spreadsheets write semicolons where the decimal mark is a comma.
    for separator in ",;\t":
        rows = csv.DictReader(io.StringIO(text), delimiter=separator)
        rows.fieldnames = [name.strip().lower() for name in rows.fieldnames or []]
        if set(COLUMNS) <= set(rows.fieldnames):
            break
    else:
        raise ValueError(f"The first line must name the columns {', '.join(COLUMNS)}.")
    for row in rows:
        cells = [(row[name] or "").strip() for name in COLUMNS]
        cells += filter(None, row.get(None, []))
        if any(cells):
            yield rows.line_num, cells


def parts(book: dict[str, Any], formula: str, doses: dict[str, str], base: str) -> list[Any]:
    """The masses of a formula whose doses are for one cup."""
    book = {**book, "formulas": {formula: {"per": "1 cup", "doses": doses}}}
    return list(pourwright.calculate("formula", book=book, formulas=[formula], base_amount=base)["parts"])


def faults(line: int, book: dict[str, Any], formula: str, doses: dict[str, str], base: str) -> set[tuple[int, str]]:
    """The faults of a formula, or of the base."""
    try:
        parts(book, formula, doses, base)
    except pourwright.PourwrightError as error:
        return {
            (line, f"{fault.message} {fault.help}")
            if fault.path.startswith(("/formulas", "/book/formulas"))
            else (0, f"{fault.path}: {fault.message} {fault.help}")
            for fault in error.faults
        }
    return set()


def complain(texts: list[str]) -> int:
    """Prints all faults."""
    print(*texts, sep="\n", file=sys.stderr)
    return 1


if __name__ == "__main__":
    sys.exit(main())
