"""Plans a day and prints its bench sheet: day.py book.json orders.json

With --pots it prints what goes into each pot instead, one line per material, for another program to read.
"""

import argparse
import sys
from pathlib import Path

import pourwright


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("book", type=Path)
    parser.add_argument("orders", type=Path)
    parser.add_argument("--pots", action="store_true", help="what goes into each pot, as tab-separated lines")
    chosen = parser.parse_args()
    try:
        book = pourwright.Book.load(chosen.book)
    except pourwright.PourwrightError as error:
        return complain(chosen.book, error)
    try:
        plan = book.plan(chosen.orders.read_bytes())
    except pourwright.PourwrightError as error:
        return complain(chosen.orders, error)
    if not chosen.pots:
        print(plan.sheet())
        return 0
    for pot in plan["pots"]:
        for number, stage in enumerate(pot["stages"], 1):
            for weigh in stage["weigh"]:
                print(pot["pot"], number, weigh["material"], weigh["wanted"]["text"], sep="\t")
    return 0


def complain(path: Path, error: pourwright.PourwrightError) -> int:
    """Prints all faults of a file."""
    for fault in error.faults:
        print(f"{path}{fault.path}: {fault.message} {fault.help} [{fault.code}]", file=sys.stderr)
    return 1


if __name__ == "__main__":
    sys.exit(main())
