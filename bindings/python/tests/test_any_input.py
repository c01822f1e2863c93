"""Whatever comes in, an answer or a Python exception comes out: the process never ends, and no number is silently bad."""

from __future__ import annotations

import json
import math
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, given, seed, settings
from hypothesis import strategies as st

import pourwright as pw
from pourwright import columns

from .conftest import DEMO, vectors

REQUESTS = [json.loads(answer_request) for answer_request, answer in vectors() if answer.startswith('{"result"')]

fixed = settings(max_examples=300, deadline=None, suppress_health_check=list(HealthCheck), database=None)

numbers = st.one_of(
    st.floats(),
    st.floats(0, 1000),
    st.floats(0, 1),
    st.sampled_from([0.0, -0.0, 5e-324, 1e15, 1e308, math.nan]),
)
leaves = st.one_of(
    st.none(),
    st.booleans(),
    st.integers(),
    numbers,
    st.text(max_size=12),
    st.sampled_from(["1/4 tsp", "8 %", "6 oz", "1,25 cup", "-1 g", "1e999 cup", "40 drops ± 3", "1/0 cup", "§", "0 g"]),
)
values = st.recursive(
    leaves,
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=6), inner, max_size=3),
    max_leaves=6,
)


def finite(value: Any) -> bool:
    if isinstance(value, float):
        return math.isfinite(value)
    if isinstance(value, dict):
        return all(map(finite, value.values()))
    return all(map(finite, value)) if isinstance(value, list) else True


def mutated(draw: st.DrawFn, value: Any) -> Any:
    """The same with one thing in it replaced, left out or added."""
    if isinstance(value, dict) and value and draw(st.integers(0, 4)):
        name = draw(st.sampled_from(sorted(value)))
        return {**value, name: mutated(draw, value[name])}
    if isinstance(value, list) and value and draw(st.integers(0, 4)):
        index = draw(st.integers(0, len(value) - 1))
        return [*value[:index], mutated(draw, value[index]), *value[index + 1 :]]
    if isinstance(value, dict) and draw(st.booleans()):
        return {**value, draw(st.text(max_size=6)): draw(values)}
    return draw(values)


@st.composite
def broken_requests(draw: st.DrawFn) -> Any:
    request = draw(st.sampled_from(REQUESTS))
    for _ in range(draw(st.integers(1, 2))):
        request = mutated(draw, request)
    return request


@seed(20270302)
@fixed
@given(broken_requests())
def test_broken_requests(request: Any) -> None:
    try:
        result = pw.calculate(request) if isinstance(request, dict) else json.loads(pw.answer_text(json.dumps(request)))
    except pw.PourwrightError as error:
        assert error.faults and error.code != "panic"
        assert all(fault.message for fault in error.faults)
    else:
        assert finite(result)


@seed(20270302)
@fixed
@given(st.one_of(st.binary(max_size=200), st.text(max_size=200)))
def test_any_text(text: str | bytes) -> None:
    answer = json.loads(pw.answer_text(text))
    assert answer["faults"] and answer["faults"][0]["code"] != "panic"
    with pytest.raises(pw.PourwrightError):
        pw.Book(text)


@seed(20270302)
@settings(fixed, max_examples=100)
@given(st.data())
def test_broken_books(data: st.DataObject) -> None:
    book = json.loads((DEMO / "book.json").read_bytes())
    broken = data.draw(st.composite(mutated)(book))
    try:
        plan = pw.Book(broken).plan((DEMO / "orders.json").read_bytes())
    except pw.PourwrightError as error:
        assert error.code != "panic"
    except TypeError:
        assert not isinstance(broken, dict)
    else:
        assert finite(plan.to_dict()) and plan.sheet()


@seed(20270302)
@settings(fixed, max_examples=100)
@given(st.data())
def test_broken_plans(data: st.DataObject) -> None:
    """A plan that was changed is refused, or is whatever it says."""
    plan = pw.Book((DEMO / "book.json").read_bytes()).plan((DEMO / "orders.json").read_bytes())
    broken = data.draw(st.composite(mutated)(plan.to_dict()))
    try:
        again = pw.Plan.from_json(broken)
        assert again.sheet()
        assert finite(again.request("record", actuals={"format": "pourwright/1.0", "pots": {}}))
    except pw.PourwrightError as error:
        assert error.faults and error.code != "panic"
    except TypeError:
        assert not isinstance(broken, dict)


@seed(20270302)
@fixed
@given(st.lists(st.tuples(numbers, numbers, numbers, numbers), max_size=20))
def test_any_columns(rows: list[tuple[float, float, float, float]]) -> None:
    """A row is NaN exactly where its status is not 0."""
    table = np.array(rows, np.float64).reshape(-1, 4)
    statuses = np.full(len(table), -1, np.int32)
    base_ml, base_g_per_ml, voids, wanted = table.T
    result = columns.salt_for_density(base_ml, base_g_per_ml, 2.165, wanted, voids=voids, statuses=statuses)
    assert (np.isnan(result) == (statuses != 0)).all()
    assert set(statuses) <= {0, 2, 6}
    assert (statuses[~np.isfinite(table).all(axis=1)] != 0).all()
