"""Goes through one day at the bench and prints its log: one_day.py core/examples/demo/one-day

A color found by eye, a laminate mistaken, flake doubled, bad pieces and more orders at noon, too much salt, the record,
and what the book learns. The folder has what a person wrote that day, the demo's book is next to it. The answers that
change the book or the shelf bring JSON Patches, which a general library applies. `one-day.mjs` of the JavaScript
package prints the same lines.
"""

import argparse
import json
import sys
from pathlib import Path
from typing import Any

import jsonpatch  # type: ignore[import-untyped]

from pourwright import Book, Plan, PourwrightError


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path)
    folder: Path = parser.parse_args().folder
    try:
        one_day(folder)
    except PourwrightError as error:
        print(error, file=sys.stderr)
        return 1
    return 0


def one_day(folder: Path) -> None:
    def read(name: str) -> dict[str, Any]:
        document: dict[str, Any] = json.loads((folder / name).read_text("utf-8"))
        return document

    print("# One day at the Tern Island workshop")
    print(f"\n{read('orders.json')['about']}")
    book = json.loads((folder.parent / "book.json").read_text("utf-8"))
    at_first = Book(book)

    trial = heading(read("trial.json"))
    answer: Any = Book(book).request(trial)
    quote(answer["text"])
    book = jsonpatch.apply_patch(book, answer["write"])
    closing(trial)

    orders = heading(read("orders.json"))
    plan = Book(book).plan(orders)
    quote(pots(plan))

    laminate = heading(read("laminate.json"))
    answer = plan.request(laminate)
    quote(messages(answer))
    plan = Plan.from_json(answer["plan"])
    quote(pots(plan))
    closing(laminate)

    flake = heading(read("flake.json"))
    answer = plan.request(flake)
    quote(answer["text"])
    book = jsonpatch.apply_patch(book, answer["write"])
    closing(flake)

    # The plan's own book does not have the formula that was just saved: the request goes to the new book.
    noon = heading(read("noon.json"))
    answer = Book(book).request({**noon, "plan": json.loads(plan.json())})
    quote(messages(answer))
    plan = Plan.from_json(answer["plan"])
    quote(pots(plan))
    closing(noon)

    evening = heading(read("evening.json"))
    record: Any = plan.request(evening)
    page(record["text"])
    book = jsonpatch.apply_patch(book, record["write"])
    tomorrow = {"format": "pourwright/1.0", "day": "2027-03-31", "lines": []}
    tomorrow = jsonpatch.apply_patch(tomorrow, record["shelf"])
    quote([f"Changes to the book: {len(record['write'])}. On tomorrow's shelf: {len(tomorrow['shelf'])} jars."])
    closing(evening)

    earlier = heading(read("earlier.json"))
    records = [record_of(day, earlier["orders"], at_first) for day in earlier["days"]]
    answer = Book(book).request({"calculate": "learn", "records": [*records, record]})
    quote(learned(answer))
    accepted = [change for change in answer["changes"] if not change["questioned"]]
    left = [change for change in answer["changes"] if change["questioned"]]
    for change in accepted:
        book = jsonpatch.apply_patch(book, change["write"])
    Book(book)  # what came of it is a book
    quote([f"{verb}: {', '.join(one['what'] for one in of)}." for verb, of in (("Accepted", accepted), ("Left", left))])
    closing(earlier)


def record_of(day: dict[str, Any], orders: dict[str, Any], book: Book) -> Any:
    """The record of an earlier day, from what was noted then."""
    plan = book.plan({**orders, "day": day["day"]})
    actuals = {"format": "pourwright/1.0", "pots": {"A": day["A"]}}
    return plan.request("record", actuals=actuals)


def heading(document: dict[str, Any]) -> dict[str, Any]:
    """Prints what happened, as the file says it."""
    ext = document["ext"]
    print(f"\n## {ext['at']} {ext['title']}\n\n{ext['about']}")
    return document


def closing(document: dict[str, Any]) -> None:
    """Prints what was made of the answer."""
    print(f"\n{document['ext']['then']}")


def quote(lines: list[str]) -> None:
    """Prints an answer's sentences."""
    print()
    for line in lines:
        print(f"- {line}")


def page(lines: list[str]) -> None:
    """Prints an answer that is a page with columns."""
    print("\n```text", *lines, "```", sep="\n")


def messages(answer: dict[str, Any]) -> list[str]:
    """What changed when the day went on, and what cannot be made."""
    changes = [change["message"] for change in answer["changes"]]
    not_made = [f"Not made: {one['pieces']} of order {one['order']}. {one['because']}" for one in answer["not_made"]]
    return changes + not_made


def pots(plan: Plan) -> list[str]:
    """A line for each pot of a plan."""
    lines = []
    for pot in plan["pots"]:
        stages = ", then ".join(" + ".join(stage["formulas"]) for stage in pot["stages"])
        shots = [f"{draw['shots']} × {draw['mold']}" for stage in pot["stages"] for draw in stage["draws"]]
        lines.append(f"Pot {pot['pot']}, {pot['cup_name']}: {stages}. Shots: {', '.join(shots)}.")
    return lines


def learned(answer: dict[str, Any]) -> list[str]:
    """The changes that the records of many days offer, and what to look at first."""
    lines = []
    for change in answer["changes"]:
        before = change["before"] or "not stated"
        lines.append(f"{change['what']}: {before} becomes {change['after']}. {change['why']}")
    lines += [f"To look at, {one['what']}: {one['question']}" for one in answer["questions"]]
    lines += [f"As in the book: {one}." for one in answer["confirmed"]]
    lines += [f"Not yet: {one}" for one in answer["not_yet"]]
    return lines


if __name__ == "__main__":
    sys.exit(main())
