"""Every vector that cells can hold, in a sheet of a headless LibreOffice: vectors.py OXT, from the root of the repository.

Compares what comes out with the vectors, to the bit, faults by code and path. Where POURWRIGHT_ANSWERS names a folder, it writes
there what the add-in answered: calc.calls.jsonl and calc.requests.jsonl, line by line.
"""

import json
import os
import re
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import office
from sheet import Calls, Error, bits

ROOT = Path(__file__).resolve().parents[3]
VECTORS = ROOT / "tests/vectors"
CALCULATIONS = {
    one["name"]: one for one in json.loads((ROOT / "core/schema/calculations.json").read_text())["calculations"]
}
NOT_KNOWN = Error(32767)
# Calls in one sheet.
BATCH = 500


def lines(name):
    return (VECTORS / name).read_text().split("\n")[:-1]


def not_carried(given):
    """Why a call cannot be put into cells; None where it can."""
    for value in given.values():
        values = (
            [one for row in value for one in (row if isinstance(row, list) else [row])]
            if isinstance(value, list)
            else [value]
        )
        if isinstance(value, list) and not values:
            return "cells are not a list of nothing"
        for one in values:
            if one in ("NaN", "Infinity", "-Infinity"):
                return "a cell has no such number"
            if isinstance(one, str) and not one.strip():
                return "an empty text is an empty cell"
    return None


def arguments(calculation, given):
    """The arguments of a call as cells. A number alone is a range of one cell, where 0 is 0."""
    found = []
    for parameter in calculation["parameters"]:
        value = given.get(parameter["field"])
        if isinstance(value, list):
            value = tuple(tuple(row) if isinstance(row, list) else (row,) for row in value)
        elif value is not None and not isinstance(value, str):
            value = ((float(value),),)
        found.append(value)
    while found and found[-1] is None:
        found.pop()
    return found


def results(calculation, row):
    """The results of a row of cells by their names, as the vectors have them."""
    cells, found = list(row), {}
    for result in calculation["results"]:
        if result["kind"] == "list":
            places = len(next(v for v in calculation["example"]["results"] if isinstance(v, list)))
            found[result["field"]] = [int(cells.pop(0)) for _ in range(places)]
            continue
        value = cells.pop(0)
        if value == NOT_KNOWN:
            value = None
        elif result["kind"] == "count":
            value = int(value)
        found[result["field"]] = value
    return found


def fault(line):
    """A line of a reason as the vectors have a fault: places in lists are counted from 1 in a sheet."""
    code = re.search(r" \[([a-z0-9-]+)\]$", line)[1]
    path = re.match(r"([a-z][a-z0-9_]*)(?: row (\d+))?(?: (?:column|cell) (\d+))?: ", line)
    # What begins with a capital letter is about the call as a whole.
    if path is None:
        return {"code": code, "path": ""}
    places = [str(int(place) - 1) for place in path.groups()[1:] if place]
    return {"code": code, "path": "/" + "/".join([path[1], *places])}


def width(calculation):
    return sum(len(v) if isinstance(v, list) else 1 for v in calculation["example"]["results"])


def same(found, wanted):
    if isinstance(wanted, dict):
        return (
            isinstance(found, dict)
            and list(found) == list(wanted)
            and all(same(found[key], wanted[key]) for key in wanted)
        )
    if isinstance(wanted, list):
        return isinstance(found, list) and len(found) == len(wanted) and all(map(same, found, wanted))
    return type(found) is type(wanted) and bits(found) == bits(wanted)


def of_calls(sheets):
    """What the add-in gives for each line of calls.jsonl."""
    vectors = [json.loads(line) for line in lines("calls.jsonl")]
    answers = [{"not_carried": not_carried(vector["given"])} for vector in vectors]
    carried = [place for place, answer in enumerate(answers) if answer["not_carried"] is None]
    for start in range(0, len(carried), BATCH):
        places = carried[start : start + BATCH]
        asked = [(vectors[place], CALCULATIONS[vectors[place]["call"]]) for place in places]
        calls = [(f"POUR_{one['name'].upper()}", arguments(one, vector["given"])) for vector, one in asked]
        found, why = sheets.run(calls, [width(one) for _, one in asked])
        for place, (_, one), row, reason in zip(places, asked, found, why):
            if reason:
                answers[place] = {"faults": [fault(line) for line in reason.split("\n")]}
            else:
                answers[place] = {"results": results(one, row)}
    return vectors, answers


def of_requests(sheets):
    """What POUR_ANSWER gives for each line of requests.jsonl."""
    requests = lines("requests.jsonl")
    # Another text is the name of a file here.
    carried = [request for request in requests if request[:1] in ("{", "[")]
    found, _ = sheets.run([("POUR_ANSWER", [request]) for request in carried])
    texts = iter(text for (text,) in found)
    return [next(texts) if request[:1] in ("{", "[") else None for request in requests]


def main():
    with office.Office(sys.argv[1]) as started:
        sheets = Calls(started.new())
        vectors, answers = of_calls(sheets)
        texts = of_requests(sheets)
    wrong = []
    for place, (vector, answer) in enumerate(zip(vectors, answers), 1):
        key = "results" if "results" in vector else "faults"
        if "not_carried" not in answer and not same(answer.get(key), vector[key]):
            wrong.append(f"calls.jsonl:{place}: {vector}\n  gives {answer}")
    for place, (text, wanted) in enumerate(zip(texts, lines("answers.jsonl")), 1):
        if text is not None and text != wanted:
            wrong.append(f"requests.jsonl:{place}: gives {text}\n  not {wanted}")
    folder = os.environ.get("POURWRIGHT_ANSWERS")
    if folder:
        written = [
            text if text is not None else '{"not_carried":"a text that is no JSON is the name of a file"}'
            for text in texts
        ]
        Path(folder, "calc.requests.jsonl").write_text("".join(line + "\n" for line in written))
        written = [json.dumps(answer, ensure_ascii=False, default=repr) for answer in answers]
        Path(folder, "calc.calls.jsonl").write_text("".join(line + "\n" for line in written))
    carried = sum("not_carried" not in answer for answer in answers) + sum(text is not None for text in texts)
    print(
        f"{carried} vectors in cells, {len(answers) + len(texts) - carried} that no cell can hold, {len(wrong)} unlike."
    )
    if wrong or carried < 0.5 * (len(answers) + len(texts)):
        sys.exit("\n".join(wrong[:20]) or "Too few were carried.")


main()
