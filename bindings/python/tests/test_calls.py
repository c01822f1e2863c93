"""The vectors of calls on plain numbers, through the columns of NumPy, Arrow, Polars and DuckDB.

With POURWRIGHT_ANSWERS, a folder, Arrow, Polars and DuckDB also write there what they answered, line by line.
"""

from __future__ import annotations

import json
import math
import os
import struct
from collections import defaultdict
from collections.abc import Callable
from pathlib import Path
from typing import Any

import duckdb
import numpy as np
import polars as pl
import pyarrow as pa
import pytest

import pourwright as pw
from pourwright import arrow, columns
from pourwright import polars as pour
from pourwright.duckdb import register

from .conftest import VECTORS
from .test_calculations import TABLE

CALLS = VECTORS / "calls.jsonl"
KNOWN = {one["name"]: one for one in TABLE}
Answer = dict[str, Any]


def number(value: Any) -> Any:
    """A number as the vectors write it."""
    if isinstance(value, list):
        return [number(one) for one in value]
    return float(value) if value in ("NaN", "Infinity", "-Infinity") else value


def shown(value: Any) -> Any:
    """A result as the vectors write it."""
    if isinstance(value, float) and math.isinf(value):
        return "Infinity" if value > 0 else "-Infinity"
    return value


def cases() -> list[tuple[dict[str, Any], dict[str, Any]]]:
    """Each line, with its arguments as values."""
    lines = [json.loads(line) for line in CALLS.read_text("utf-8").splitlines()]
    kinds = {name: {one["field"]: one["kind"] for one in table["parameters"]} for name, table in KNOWN.items()}
    return [
        (
            line,
            {
                field: value if kinds[line["call"]].get(field) in ("text", "word") else number(value)
                for field, value in line["given"].items()
            },
        )
        for line in lines
    ]


def column(parameter: dict[str, Any], values: list[Any]) -> pa.Array:
    nested = pa.list_(pa.list_(pa.float64()))
    kinds = {"text": pa.string(), "word": pa.string(), "list": pa.list_(pa.float64()), "rows": nested}
    return pa.array(values, kinds.get(parameter["kind"], pa.float64()))


def of_arrow(name: str, given: dict[str, pa.Array]) -> list[Any]:
    return getattr(arrow, name)(**given, status=True).to_pylist()  # type: ignore[no-any-return]


def of_polars(name: str, given: dict[str, pa.Array]) -> list[Any]:
    frame = pl.DataFrame({field: pl.from_arrow(values) for field, values in given.items()})
    made = getattr(pour, name)(**{field: pl.col(field) for field in given}, status=True)
    return frame.select(made.alias("found"))["found"].to_list()


SHOP = register(duckdb.connect())


def of_duckdb(name: str, given: dict[str, pa.Array]) -> list[Any]:
    SHOP.register("given", pa.table({"row": pa.array(range(len(next(iter(given.values()))))), **given}))
    whole = "{" + ", ".join(f"'{field}': \"{field}\"" for field in given) + "}"
    function = f"pour_{name}"
    only = KNOWN[name]["results"][0]["field"]
    answers = []
    sql = f"SELECT {function}({whole}), pour_why('{function}', {whole}) FROM given ORDER BY row"
    for found, why in SHOP.execute(sql).fetchall():
        values = dict(found) if isinstance(found, dict) else {only: found}
        codes = [line.rpartition("[")[2].removesuffix("]") for line in (why or "").split("\n")]
        answers.append({**values, "status": None if why is None else ", ".join(dict.fromkeys(codes))})
    return answers


def grouped(door: Callable[[str, dict[str, pa.Array]], list[Any]]) -> list[Answer]:
    """All calls of a calculation with the same parameters at once."""
    every = cases()
    groups: dict[tuple[str, ...], list[int]] = defaultdict(list)
    for place, (line, given) in enumerate(every):
        groups[line["call"], *given].append(place)
    answers: list[Answer] = [{}] * len(every)
    for (name, *fields), places in groups.items():
        required = [one["field"] for one in KNOWN[name]["parameters"] if not one["optional"]]
        if not set(required) <= set(fields):
            for place in places:
                answers[place] = {"not_carried": "what must be given is an argument of the function"}
            continue
        given = {
            one["field"]: column(one, [every[place][1][one["field"]] for place in places])
            for one in KNOWN[name]["parameters"]
            if one["field"] in fields
        }
        for place, found in zip(places, door(name, given), strict=True):
            codes = found.pop("status")
            if codes is None:
                answers[place] = {"results": {field: shown(value) for field, value in found.items()}}
            else:
                answers[place] = {"faults": [{"code": code} for code in codes.split(", ")]}
    return answers


def of_numpy() -> list[Answer]:
    """One row at a time, as words and lists count for all."""
    answers: list[Answer] = []
    for line, given in cases():
        name, one = line["call"], KNOWN[line["call"]]
        if name == "density_of_parts":
            answers.append({"not_carried": "its columns are tables of masses and densities"})
            continue
        required = [parameter["field"] for parameter in one["parameters"] if not parameter["optional"]]
        if not set(required) <= set(given):
            answers.append({"not_carried": "what must be given is an argument of the function"})
            continue
        plain = {p["field"]: p["kind"] in ("number", "count") for p in one["parameters"]}
        arguments: Answer = {field: [float(value)] if plain[field] else value for field, value in given.items()}
        statuses = np.zeros(1, np.int32)
        try:
            if name == "convert":
                amount, to = arguments.pop("amount"), arguments.pop("to")
                found: Any = columns.convert([amount], to, **arguments, statuses=statuses)
            else:
                found = getattr(columns, name)(**arguments, statuses=statuses)
        except pw.PourwrightError:
            # What counts for all rows is read first, and raised: it may be one fault of several.
            statuses[0] = 6
        if statuses[0]:
            answers.append({"refused": True})
            continue
        results: Answer = {}
        for result in one["results"]:
            value = (getattr(found, result["field"]) if len(one["results"]) > 1 else found)[0]
            if result["kind"] == "list":
                results[result["field"]] = [int(part) for part in value]
            elif result["kind"] == "word":
                results[result["field"]] = result["words"][int(value) - 1]
            else:
                results[result["field"]] = None if np.isnan(value) else shown(float(value))
        answers.append({"results": results})
    return answers


def bits(value: Any) -> Any:
    if isinstance(value, list):
        return [int(part) for part in value]
    return struct.pack("<d", number(value)) if isinstance(number(value), (int, float)) else value


@pytest.mark.parametrize("name", ["numpy", "arrow", "polars", "duckdb-python"])
def test_every_call_has_its_answer(name: str) -> None:
    doors = {"arrow": of_arrow, "polars": of_polars, "duckdb-python": of_duckdb}
    answers = of_numpy() if name == "numpy" else grouped(doors[name])
    folder = os.environ.get("POURWRIGHT_ANSWERS")
    if folder and name in doors:
        (Path(folder) / f"{name}.calls.jsonl").write_text("".join(json.dumps(one) + "\n" for one in answers), "utf-8")
    wrong = []
    for (line, _), answer in zip(cases(), answers, strict=True):
        if "not_carried" in answer:
            continue
        if "results" in line:
            found = {field: bits(value) for field, value in answer.get("results", {}).items()}
            if found != {field: bits(value) for field, value in line["results"].items()}:
                wrong.append((line, answer))
        elif "faults" in answer:
            codes = list(dict.fromkeys(fault["code"] for fault in line["faults"]))
            if list(dict.fromkeys(fault["code"] for fault in answer["faults"])) != codes:
                wrong.append((line, answer))
        elif "refused" not in answer:
            wrong.append((line, answer))
    assert wrong == []
    carried = sum("not_carried" not in answer for answer in answers)
    assert carried > 0.95 * len(answers)
