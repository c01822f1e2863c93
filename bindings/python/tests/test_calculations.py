"""Every calculation of the table: its example to the bit, each parameter wrong, random arguments, columns as single calls."""

from __future__ import annotations

import dataclasses
import inspect
import json
import math
from typing import Any

import numpy as np
import pytest
from hypothesis import HealthCheck, given, seed, settings
from hypothesis import strategies as st

import pourwright as pw
from pourwright import columns

from .conftest import ROOT

TABLE: list[dict[str, Any]] = json.loads((ROOT / "core" / "schema" / "calculations.json").read_text("utf-8"))[
    "calculations"
]
WITH_COLUMNS = [
    one for one in TABLE if one["name"] in columns.__all__ and one["name"] not in ("convert", "density_of_parts")
]


def named(one: dict[str, Any]) -> Any:
    return one["name"]


def shaped(parameter: dict[str, Any], value: Any) -> Any:
    """An argument of the table as Python takes it."""
    if parameter["kind"] != "rows" or value is None:
        return value
    width = len(parameter["columns"])
    return [tuple(value[start : start + width]) for start in range(0, len(value), width)]


def example(one: dict[str, Any]) -> dict[str, Any]:
    pairs = zip(one["parameters"], one["example"]["arguments"], strict=True)
    return {parameter["field"]: shaped(parameter, value) for parameter, value in pairs if value is not None}


def plain(result: Any) -> list[Any]:
    """The results in their order."""
    return list(dataclasses.astuple(result)) if dataclasses.is_dataclass(result) else [result]  # type: ignore[arg-type]


def call(one: dict[str, Any], arguments: dict[str, Any]) -> Any:
    return getattr(pw, one["name"])(**arguments)


def faults(one: dict[str, Any], arguments: dict[str, Any]) -> set[tuple[str, str]]:
    with pytest.raises(pw.PourwrightError) as caught:
        call(one, arguments)
    assert all(fault.message and fault.help for fault in caught.value.faults)
    return {(fault.code, fault.path) for fault in caught.value.faults}


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_signature_and_docstring_are_those_of_the_table(one: dict[str, Any]) -> None:
    function = getattr(pw, one["name"])
    signature = inspect.signature(function)
    assert list(signature.parameters) == [parameter["field"] for parameter in one["parameters"]]
    for parameter in one["parameters"]:
        found = signature.parameters[parameter["field"]]
        assert (found.default is None) == parameter["optional"]
        assert (found.kind is inspect.Parameter.KEYWORD_ONLY) == parameter["optional"]
        assert f"{parameter['field']}: " in function.__doc__
    assert " ".join(function.__doc__.split()).startswith(" ".join(one["summary"].split())[:30].split("`")[0])


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_the_example_gives_its_answer(one: dict[str, Any]) -> None:
    found = plain(call(one, example(one)))
    wanted = [tuple(value) if isinstance(value, list) else value for value in one["example"]["results"]]
    assert [repr(value) for value in found] == [repr(value) for value in wanted]


def outside(bounds: dict[str, Any]) -> list[float]:
    def further(bound: float) -> float:
        return 1e-9 if bound == 0 else 1e-6 * abs(bound)

    below = bounds["least"] if bounds["above"] else bounds["least"] - further(bounds["least"])
    above = bounds["most"] if bounds["below"] else bounds["most"] + further(bounds["most"])
    return [below, above]


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_each_parameter_that_is_wrong_is_named(one: dict[str, Any]) -> None:
    right = example(one)
    for parameter in one["parameters"]:
        field, kind = parameter["field"], parameter["kind"]

        def found(value: Any, field: str = field) -> set[tuple[str, str]]:
            return faults(one, {**right, field: value})

        assert ("wrong-type", f"/{field}") in found(object())
        if not parameter["optional"]:
            assert ("wrong-type", f"/{field}") in found(None)
        if kind in ("number", "count"):
            assert ("wrong-type", f"/{field}") in found("1 cup")
        if kind == "number":
            assert ("not-finite", f"/{field}") in found(math.nan)
            for number in outside(parameter["range"]) if parameter["range"] else []:
                assert ("out-of-range", f"/{field}") in found(number), number
        if kind == "count":
            assert ("wrong-type", f"/{field}") in found(2.5)
            least, most = int(parameter["range"]["least"]), int(parameter["range"]["most"])
            for count in (-1, least - 1, most + 1, 2**32 - 1, 10**5000):
                assert ("out-of-range", f"/{field}") in found(count), count
        if kind == "word":
            assert ("unknown-word", f"/{field}") in found("no-such-word")
        if kind in ("list", "rows"):
            assert ("wrong-type", f"/{field}") in found("12")
        if kind == "rows":
            assert ("wrong-type", f"/{field}/0") in found([(1.0,)])


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_what_is_wrong_comes_together(one: dict[str, Any]) -> None:
    wrong = {parameter["field"]: object() for parameter in one["parameters"]}
    assert faults(one, wrong) == {("wrong-type", f"/{field}") for field in wrong}


numbers = st.one_of(
    st.floats(), st.floats(0, 1000), st.floats(0, 1), st.sampled_from([0.0, -0.0, 5e-324, 1e15, math.nan])
)


def arguments(one: dict[str, Any]) -> st.SearchStrategy[dict[str, Any]]:
    """Those of the example, some of them replaced by any others."""
    right = example(one)
    any_of: dict[str, st.SearchStrategy[Any]] = {}
    for parameter in one["parameters"]:
        width = len(parameter["columns"])
        kinds: dict[str, st.SearchStrategy[Any]] = {
            "number": numbers,
            "count": st.integers(-1, 2**33) | st.integers(0, 30),
            "text": st.sampled_from(["1 cup", "6 oz", "mL", "", "-1 g", ".035", "40 drops", "\ud800"]),
            "word": st.sampled_from([*parameter["words"], "no-such-word"]),
            "list": st.lists(numbers, max_size=9),
            "rows": st.lists(st.tuples(*[numbers] * width), max_size=5),
        }
        given_value = kinds[parameter["kind"]]
        any_of[parameter["field"]] = given_value | st.none() if parameter["optional"] else given_value
    fields = st.lists(st.sampled_from(sorted(any_of)), max_size=3, unique=True)
    return fields.flatmap(
        lambda chosen: st.fixed_dictionaries({field: any_of[field] for field in chosen}).map(
            lambda others: {**right, **others}
        )
    )


def finite(value: Any) -> bool:
    return value is None or isinstance(value, (str, tuple)) or math.isfinite(value)


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_any_arguments(one: dict[str, Any]) -> None:
    @seed(20270302)
    @settings(max_examples=60, deadline=None, suppress_health_check=list(HealthCheck), database=None)
    @given(arguments(one))
    def check(chosen: dict[str, Any]) -> None:
        try:
            result = call(one, chosen)
        except pw.PourwrightError as error:
            assert error.faults and error.code != "panic"
        else:
            assert all(map(finite, plain(result)))

    check()


@pytest.mark.parametrize("one", WITH_COLUMNS, ids=named)
def test_columns_are_the_single_calls(one: dict[str, Any]) -> None:
    right, rows = example(one), 50
    random = np.random.default_rng(20270302)
    varied: dict[str, Any] = {}
    for parameter in one["parameters"]:
        value = right.get(parameter["field"])
        if value is None or parameter["kind"] not in ("number", "count"):
            continue
        column = np.full(rows, float(value))
        if parameter["kind"] == "number":
            column *= random.uniform(0.7, 1.4, rows)
            column[7] = math.nan
        varied[parameter["field"]] = column
    statuses = np.full(rows, -1, np.int32)
    found = getattr(columns, one["name"])(**{**right, **varied}, statuses=statuses)
    results = (
        [getattr(found, result["field"]) for result in one["results"]] if dataclasses.is_dataclass(found) else [found]
    )
    kinds = {parameter["field"]: parameter["kind"] for parameter in one["parameters"]}
    for row in range(rows):
        given_row = {
            field: int(column[row]) if kinds[field] == "count" else float(column[row])
            for field, column in varied.items()
        }
        try:
            wanted = plain(call(one, {**right, **given_row}))
        except pw.PourwrightError as error:
            assert statuses[row] == error.status
            wanted = [math.nan] * len(results)
        else:
            assert statuses[row] == 0
        for result, value, of_result in zip(results, wanted, one["results"], strict=True):
            if isinstance(value, str):
                value = of_result["words"].index(value) + 1
            expected = np.full_like(result[row], math.nan if value is None else value)
            assert result[row].tobytes() == expected.tobytes()
    assert (statuses == 0).any() or one["name"] in ("shots",)
