"""Writes a list of formulas in grams for a batch: grams.py book.json formulas.csv "3 1/2 cup" > grams.csv

The list has the columns formula, material, amount; each amount is for one cup of base, as it is said at the bench:
"32 drops", "1/2 tsp", "8 % of base". The materials are those of the book. The result has the grams beside each.
"""

import argparse
import csv
import json
import sys
from pathlib import Path

import pourwright


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("book", type=Path)
    parser.add_argument("formulas", type=Path)
    parser.add_argument("base", help='how much base, such as "3 1/2 cup" or "800 g"')
    chosen = parser.parse_args()
    book = json.loads(chosen.book.read_text("utf-8"))
    with chosen.formulas.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))

    # The formulas of the list take the place of the book's.
    book["formulas"] = {row["formula"]: {"per": "1 cup", "doses": {}} for row in rows}
    for row in rows:
        book["formulas"][row["formula"]]["doses"][row["material"]] = row["amount"]
    book.pop("products", None)

    writer = csv.writer(sys.stdout, lineterminator="\n")
    writer.writerow(["formula", "material", "grams"])
    for formula in book["formulas"]:
        try:
            recipe = pourwright.calculate("formula", book=book, formulas=[formula], base=chosen.base)
        except pourwright.PourwrightError as error:
            print(error, file=sys.stderr)
            return 1
        for part in recipe["parts"]:
            writer.writerow([formula, part["material"], f"{part['mass']['value']:.2f}"])
    return 0


if __name__ == "__main__":
    sys.exit(main())
