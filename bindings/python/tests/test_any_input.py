"""Whatever comes in, an answer or a Python exception comes out: the process never ends, and no number is silently bad."""

from __future__ import annotations

import json
import math
from collections.abc import Callable
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


BODY = {"piece_ml": 9.5, "diameter_mm": 10.0, "length_mm": 121.0, "water_celsius": 20.0}
SCALARS: list[tuple[Callable[..., Any], int]] = [
    (pw.mass_of_volume, 2),
    (pw.volume_of_mass, 2),
    (pw.salt_for_density, 5),
    (pw.piece_mass, 5),
    (pw.swollen_volume, 5),
    (pw.water_density, 1),
    (pw.cavity_of_water, 3),
    (lambda *x: pw.flake_count(".035 hex", *x), 3),
    (lambda *x: pw.density_of_parts(x[:3], x[3:6], x[6]), 7),
    (lambda *x: pw.hardness([(0.0, x[0]), (x[1], x[2])], x[3], scale="shore-a"), 4),
    (lambda *x: pw.softener_ratio([(0.0, 60.0), (x[0], x[1]), (0.5, 20.0)], x[2], scale="shore-00"), 3),
    (lambda *x: pw.convert(x[0], "°F", "K"), 1),
    (lambda *x: pw.shots(24, 4, *x), 2),
    (lambda *x: pw.bench_measure(pw.Bench(balance_reads_g=x[0], balance_to_g=x[1], spoons_ml=x[2:4]), *x[4:]), 6),
    (lambda *x: pw.shot_fill(pw.Shot(cavity_ml=x[0], cavities=4, cold_g_per_ml=x[1], feed=x[2], voids=x[3])), 4),
    (lambda *x: pw.batch_need(pw.Batch(pieces=24, cavities=4, shot_g=x[0], shot_g_per_ml=x[1], injector_holds_ml=x[2], rejects=x[3])), 4),
    (lambda *x: pw.sink_rate(pw.Body(piece_ml=x[0], diameter_mm=x[1], length_mm=x[2], water_celsius=x[3], salinity=x[4]), x[5]), 6),
    (lambda *x: pw.density_for_sink_rate(pw.Body(**BODY, hook_g=x[0], hook_ml=x[1]), x[2]), 3),
    (lambda *x: pw.salt_mass(pw.Unsalted(base_ml=x[0], base_g_per_ml=x[1], salt_g_per_ml=x[2], cavity_ml=x[3], feed=x[4]), "piece", x[5]), 6),
]  # fmt: skip


@pytest.mark.parametrize(("call", "count"), SCALARS)
def test_any_numbers(call: Callable[..., Any], count: int) -> None:
    @seed(20270302)
    @settings(fixed, max_examples=100)
    @given(st.lists(numbers, min_size=count, max_size=count))
    def check(given_numbers: list[float]) -> None:
        try:
            result = call(*given_numbers)
        except pw.PourwrightError as error:
            assert error.code != "panic"
        except ValueError as error:
            assert "must not be 0" in str(error)
        else:
            assert finite(result if isinstance(result, (int, float)) else vars(result))

    check()


@seed(20270302)
@fixed
@given(st.lists(st.tuples(numbers, numbers, numbers, numbers), max_size=20))
def test_any_columns(rows: list[tuple[float, float, float, float]]) -> None:
    """A row is NaN exactly where its status is not 0."""
    table = np.array(rows, np.float64).reshape(-1, 4)
    statuses = np.full(len(table), -1, np.int32)
    base_ml, base_g_per_ml, voids, wanted = table.T
    result = columns.salt_for_density(base_ml, base_g_per_ml, 2.165, voids, wanted, statuses=statuses)
    assert (np.isnan(result) == (statuses != 0)).all()
    assert set(statuses) <= {0, 2, 6}
    assert ((statuses == 2) == ~np.isfinite(table).all(axis=1)).all()
