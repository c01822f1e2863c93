"""The vectors of all doors: the same text, hence the same bits, as from Rust.

Where POURWRIGHT_ANSWERS names a folder, the answers are written there: tests/doors.
"""

from __future__ import annotations

import dataclasses
import json
import math
import os
from collections import defaultdict
from collections.abc import Iterable
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import pourwright as pw
from pourwright import columns

from .conftest import ROOT, calls, vectors

VECTORS = vectors()
CALLS = calls()
CALCULATIONS: dict[str, Any] = {
    one["name"]: one for one in json.loads((ROOT / "core/schema/calculations.json").read_text("utf-8"))["calculations"]
}
# Others have texts or lists, or no columns.
WITH_COLUMNS = [
    name
    for name, one in CALCULATIONS.items()
    if name in columns.__all__
    and all(field["kind"] in ("number", "count", "word") for field in one["parameters"] + one["results"])
]


def _plain(kind: str, value: Any) -> Any:
    """A value of a call as Python has it: what is no number in JSON is written as a text."""
    if isinstance(value, list):
        return [_plain(kind, item) for item in value]
    return float(value) if isinstance(value, str) and kind not in ("text", "word") else value


def _given(call: dict[str, Any]) -> dict[str, Any]:
    kinds = {parameter["field"]: parameter["kind"] for parameter in CALCULATIONS[call["call"]]["parameters"]}
    return {field: _plain(kinds[field], value) for field, value in call["given"].items()}


def _answer(call: dict[str, Any]) -> dict[str, Any]:
    """What the library answers to a call, as the vectors have it."""
    try:
        found = getattr(pw, call["call"])(**_given(call))
    except pw.PourwrightError as error:
        return {"faults": [{"code": fault.code, "path": fault.path} for fault in error.faults]}
    if not dataclasses.is_dataclass(found):
        return {"results": {CALCULATIONS[call["call"]]["results"][0]["field"]: found}}
    results = {field.name: getattr(found, field.name) for field in dataclasses.fields(found)}
    return {"results": {name: list(value) if isinstance(value, tuple) else value for name, value in results.items()}}


def _answers_in_columns(name: str) -> list[dict[str, Any]]:
    """The same of all calls of a calculation: those that give the same parameters and words are rows of one call."""
    words = {parameter["field"] for parameter in CALCULATIONS[name]["parameters"] if parameter["kind"] == "word"}
    of = [call for call in CALLS if call["call"] == name]
    alike = defaultdict(list)
    for place, call in enumerate(of):
        key = tuple((field, value if field in words else None) for field, value in call["given"].items())
        alike[key].append(place)
    answers: list[dict[str, Any]] = [{}] * len(of)
    for key, places in alike.items():
        rows = [_given(of[place]) for place in places]
        given = {
            field: word if field in words else np.array([float(row[field]) for row in rows]) for field, word in key
        }
        statuses = np.full(len(rows), -1, np.int32)
        found = getattr(columns, name)(**given, statuses=statuses)
        for row, place in enumerate(places):
            answers[place] = _row(name, found, row, int(statuses[row]))
    return answers


def _row(name: str, found: Any, row: int, status: int) -> dict[str, Any]:
    results: dict[str, Any] = {}
    for result in CALCULATIONS[name]["results"]:
        value = float((found if isinstance(found, np.ndarray) else getattr(found, result["field"]))[row])
        assert status == 0 or math.isnan(value)
        if math.isnan(value):
            results[result["field"]] = None
        elif result["kind"] == "word":
            results[result["field"]] = result["words"][int(value) - 1]
        else:
            results[result["field"]] = int(value) if result["kind"] == "count" else value
    return {"results": results} if status == 0 else {"refused": True, "status": status}


def _write_answers(name: str, answers: Iterable[str]) -> None:
    if folder := os.environ.get("POURWRIGHT_ANSWERS"):
        (Path(folder) / f"{name}.jsonl").write_text("".join(f"{answer}\n" for answer in answers), "utf-8")


@pytest.mark.parametrize("name", CALCULATIONS)
def test_calls(name: str) -> None:
    of = [call for call in CALLS if call["call"] == name]
    assert len(of) > 5
    for call in of:
        assert _bits(_answer(call)) == _bits({key: call[key] for key in ("results", "faults") if key in call}), call


@pytest.mark.parametrize("name", WITH_COLUMNS)
def test_calls_in_columns(name: str) -> None:
    of = [call for call in CALLS if call["call"] == name]
    assert len(WITH_COLUMNS) > 20
    for call, found in zip(of, _answers_in_columns(name), strict=True):
        if "results" in call:
            assert _bits(found) == _bits({"results": call["results"]}), call
        else:
            not_finite = any(fault["code"] == "not-finite" for fault in call["faults"])
            assert found == {"refused": True, "status": 2 if not_finite else 6}, call


def test_answers_are_written() -> None:
    _write_answers("python.calls", (json.dumps(_answer(call)) for call in CALLS))
    in_columns = {name: iter(_answers_in_columns(name)) for name in WITH_COLUMNS}
    not_carried = {"not_carried": "it has no columns"}
    answers = [next(in_columns[call["call"]]) if call["call"] in in_columns else not_carried for call in CALLS]
    _write_answers("python-columns.calls", map(json.dumps, answers))
    _write_answers("python.requests", (pw.answer_text(request) for request, _ in VECTORS))


def test_there_are_vectors() -> None:
    answers = [json.loads(answer) for _, answer in VECTORS]
    assert sum("result" in answer for answer in answers) > 50
    assert sum("faults" in answer for answer in answers) > 50


@pytest.mark.parametrize(("request_text", "answer"), VECTORS)
def test_answer_text(request_text: str, answer: str) -> None:
    assert pw.answer_text(request_text) == answer
    assert pw.answer_text(request_text.encode()) == answer


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    if len(dict(pairs)) < len(pairs):
        raise ValueError("duplicate key")
    return dict(pairs)


def _held(text: str) -> float:
    number = float(text)
    if math.isinf(number):
        raise ValueError("beyond what a float holds")
    return number


def _as_python(text: str) -> dict[str, Any] | None:
    """A request as Python has it; none for what only text can be: not JSON, not an object, a duplicate key, a number
    beyond what a float holds."""
    try:
        request = json.loads(text, object_pairs_hook=_once, parse_float=_held)
    except ValueError:
        return None
    return request if isinstance(request, dict) else None


PYTHON = [(request, answer) for text, answer in VECTORS if (request := _as_python(text)) is not None]


def test_answer_lines() -> None:
    requests, answers = ("".join(f"{text}\n" for text in texts) for texts in zip(*VECTORS))
    assert pw.answer_lines(requests) == answers
    assert pw.answer_lines(requests.encode()[:-1]) == answers


def test_most_vectors_can_be_python_values() -> None:
    assert len(PYTHON) > 0.9 * len(VECTORS)


@pytest.mark.parametrize(("request_", "answer"), PYTHON)
def test_calculate_gives_the_same_bits_from_python_values(request_: dict[str, Any], answer: str) -> None:
    """A float that Python reads and writes again keeps its bits, and so do those that come back."""
    try:
        result: Any = {"result": pw.calculate(request_)}
    except pw.PourwrightError as error:
        result = {"faults": [vars(fault) for fault in error.faults]}
    assert _bits(result) == _bits(json.loads(answer))


def _bits(value: Any) -> Any:
    """Floats by their bits, everything else as it is."""
    if isinstance(value, float):
        return value.hex()
    if isinstance(value, dict):
        return {name: _bits(one) for name, one in value.items()}
    if isinstance(value, list):
        return [_bits(one) for one in value]
    return value


def test_demo_plan_is_that_of_the_request_door(demo_book: bytes, demo_orders: bytes) -> None:
    book, orders = json.loads(demo_book), json.loads(demo_orders)
    asked = dict(pw.calculate("plan", book=book, orders=orders))
    planned = dict(pw.Book(demo_book).plan(demo_orders).to_dict())
    assert asked.pop("calculate") == "plan"
    assert planned["made_from"]
    assert _bits(planned) == _bits(asked)
