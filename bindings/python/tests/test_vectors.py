"""The vectors of all doors: the same text, hence the same bits, as from Rust."""

from __future__ import annotations

import json
import math
from typing import Any

import pytest

import pourwright as pw

from .conftest import vectors

VECTORS = vectors()


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
