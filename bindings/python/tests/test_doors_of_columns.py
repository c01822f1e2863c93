"""Every calculation in columns of NumPy, Arrow, Polars and DuckDB: the bits, nulls, NaN and codes of the single calls."""

from __future__ import annotations

import dataclasses
import functools
import json
import math
import struct
import subprocess
import sys
from collections.abc import Iterator
from decimal import Decimal
from typing import Any

import duckdb
import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest
from hypothesis import given, seed, settings
from hypothesis import strategies as st

import pourwright as pw
from pourwright import arrow, columns
from pourwright import polars as pour
from pourwright.duckdb import register

from .test_calculations import TABLE, example, named, shaped

ROWS = 7
VARIED = [1.0, 0.999, 1.0, 1.003, -1.0, 1.01, math.nan]
"""What numbers of the example are multiplied by in each row: the last two rows but one are refused, or nearly always."""


def rows_of(one: dict[str, Any]) -> list[dict[str, Any]]:
    """Calls near the example: its numbers a little changed, out of range, not finite; a word that there is not."""
    right = example(one)
    rows: list[dict[str, Any]] = []
    for factor in VARIED:
        row = dict(right)
        first = next((p for p in one["parameters"] if p["kind"] == "number" and p["field"] in right), None)
        if first is not None:
            row[first["field"]] = right[first["field"]] * factor
        rows.append(row)
    texts = [p["field"] for p in one["parameters"] if p["kind"] == "text"]
    for row, text in zip(rows[3:], ["6 oz", "", "½ smidge", "Ω" * 2000]):
        if texts:
            row[texts[0]] = text
    return rows


def single(one: dict[str, Any], arguments: dict[str, Any]) -> tuple[list[Any], str | None]:
    """The results of one call, and the codes of its faults."""
    try:
        found = getattr(pw, one["name"])(**arguments)
    except pw.PourwrightError as error:
        return [], ", ".join(dict.fromkeys(fault.code for fault in error.faults))
    return list(dataclasses.astuple(found)) if dataclasses.is_dataclass(found) else [found], None  # type: ignore[arg-type]


def bits(value: Any) -> Any:
    """A result of which a difference in one bit shows."""
    if isinstance(value, (list, tuple)):
        return [int(part) for part in value]
    return struct.pack("<d", value) if isinstance(value, (int, float)) else value


def wanted(one: dict[str, Any], rows: list[dict[str, Any]]) -> list[tuple[list[Any], str | None]]:
    """What the door must give: NaN, or null where the result is a word or a list, in rows that are refused."""
    answers = []
    for row in rows:
        found, codes = single(one, row)
        if codes is not None:
            found = [math.nan if result["kind"] in ("number", "count") else None for result in one["results"]]
        answers.append(([bits(value) for value in found], codes))
    return answers


def arrow_type(parameter: dict[str, Any]) -> pa.DataType:
    rows = pa.list_(pa.list_(pa.float64()))
    kinds = {"text": pa.string(), "word": pa.string(), "list": pa.list_(pa.float64()), "rows": rows}
    return kinds.get(parameter["kind"], pa.float64())


def as_arrow(one: dict[str, Any], rows: list[dict[str, Any]]) -> dict[str, pa.Array]:
    return {
        parameter["field"]: pa.array([row[parameter["field"]] for row in rows], arrow_type(parameter))
        for parameter in one["parameters"]
        if parameter["field"] in rows[0]
    }


def read_back(one: dict[str, Any], found: list[dict[str, Any]]) -> list[tuple[list[Any], str | None]]:
    return [([bits(row[result["field"]]) for result in one["results"]], row["status"]) for row in found]


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_arrow_gives_the_bits_of_single_calls(one: dict[str, Any]) -> None:
    rows = rows_of(one)
    given = as_arrow(one, rows)
    found = getattr(arrow, one["name"])(**given, status=True)
    assert read_back(one, found.to_pylist()) == wanted(one, rows)
    # A slice and chunks of it are the same rows.
    chunked = {
        name: pa.chunked_array([column[:0], column[:2], column[2:5], column[5:]]) for name, column in given.items()
    }
    in_chunks = getattr(arrow, one["name"])(**chunked, status=True)
    assert isinstance(in_chunks, pa.ChunkedArray)
    assert read_back(one, in_chunks.to_pylist()) == wanted(one, rows)
    sliced = getattr(arrow, one["name"])(**{name: column[1:4] for name, column in given.items()}, status=True)
    assert read_back(one, sliced.to_pylist()) == wanted(one, rows[1:4])
    empty = getattr(arrow, one["name"])(**{name: column[:0] for name, column in given.items()}, status=True)
    assert len(empty) == 0 and empty.type == found.type


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_a_null_in_any_column_is_a_null(one: dict[str, Any]) -> None:
    rows = rows_of(one)[:3]
    given = as_arrow(one, rows)
    for name, column in given.items():
        with_null = pa.array([*column.to_pylist()[:2], None], column.type)
        found = getattr(arrow, one["name"])(**{**given, name: with_null}, status=True)
        assert found.is_null().to_pylist() == [False, False, True], name
        assert read_back(one, found.to_pylist()[:2]) == wanted(one, rows[:2])
        # Without a status the only result is a plain array.
        plain = getattr(arrow, one["name"])(**{**given, name: with_null})
        assert plain.is_null().to_pylist() == [False, False, True]
        nothing = getattr(arrow, one["name"])(**{**given, name: pa.nulls(3)})
        assert nothing.null_count == 3


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_polars_gives_the_bits_of_single_calls(one: dict[str, Any]) -> None:
    rows = rows_of(one)
    given = as_arrow(one, rows)
    frame = pl.DataFrame({name: pl.from_arrow(column) for name, column in given.items()})
    expressions: dict[str, Any] = {name: pl.col(name) for name in given}
    first, *others = expressions
    for made in (
        getattr(pour, one["name"])(**expressions, status=True),
        getattr(expressions[first].pour, one["name"])(**{name: expressions[name] for name in others}, status=True),
    ):
        found = frame.select(made.alias("found"))["found"]
        assert read_back(one, found.to_list()) == wanted(one, rows)
        lazy = frame.lazy().select(made.alias("found"))
        assert lazy.collect_schema()["found"] == found.dtype
        assert read_back(one, lazy.collect(engine="streaming")["found"].to_list()) == wanted(one, rows)
    assert frame.clear().select(found=getattr(pour, one["name"])(**expressions)).height == 0


@functools.cache
def shop() -> duckdb.DuckDBPyConnection:
    """A database with all functions."""
    return register(duckdb.connect(config={"threads": 2}))


@pytest.mark.parametrize("one", TABLE, ids=named)
def test_duckdb_gives_the_bits_of_single_calls(one: dict[str, Any]) -> None:
    rows = rows_of(one)
    table = pa.table({"place": pa.array(range(len(rows))), **as_arrow(one, rows)})
    cursor = shop().cursor()
    cursor.register("given", table)
    names = [name for name in table.column_names if name != "place"]
    by_name = "{" + ", ".join(f"'{name}': \"{name}\"" for name in names) + "}"
    function = f"pour_{one['name']}"
    sql = f"SELECT {function}({by_name}), pour_why('{function}', {by_name}) FROM given ORDER BY place"
    answers = wanted(one, rows)
    for (found, why), (results, codes) in zip(cursor.execute(sql).fetchall(), answers, strict=True):
        values = list(found.values()) if isinstance(found, dict) else [found]
        assert [bits(value) for value in values] == results
        assert (why is None) == (codes is None)
        assert codes is None or all(f"[{code}]" in why for code in codes.split(", "))
    # In the order of the parameters; those that may be omitted are NULL as it is written, or left out at the end.
    fields = [parameter["field"] for parameter in one["parameters"]]
    places = [f'"{name}"' if name in names else "NULL" for name in fields]
    while places[-1] == "NULL":
        places.pop()
    (again,) = cursor.execute(f"SELECT {function}({', '.join(places)}) FROM given WHERE place = 0").fetchall()
    values = list(again[0].values()) if isinstance(again[0], dict) else [again[0]]
    assert [bits(value) for value in values] == answers[0][0]
    if len(names) > 1:
        kind = "DOUBLE" if one["parameters"][0]["kind"] in ("number", "count") else "VARCHAR"
        if one["parameters"][0]["kind"] not in ("list", "rows"):
            nulls = f'(SELECT * REPLACE (NULL::{kind} AS "{names[0]}") FROM given)'
            cursor.execute(f"SELECT {function}({by_name}) IS NULL FROM {nulls}")
            assert [row[0] for row in cursor.fetchall()] == [True] * len(rows)


# The table of `density_of_parts` is tested in test_columns.
OF_ROWS = [one for one in TABLE if one["name"] != "density_of_parts"]


@pytest.mark.parametrize("one", OF_ROWS, ids=named)
def test_numpy_gives_the_bits_of_single_calls(one: dict[str, Any]) -> None:
    """Words and lists count for all rows, or lists are an array with one dimension more."""
    rows = rows_of(one)
    if one["name"] == "convert":
        found: Any = columns.convert([row["amount"] for row in rows], rows[0]["to"])
        assert [[bits(value)] for value in found.tolist()] == [results for results, _ in wanted(one, rows)]
        return
    right = example(one)
    arguments: dict[str, Any] = {}
    for parameter in one["parameters"]:
        name = parameter["field"]
        if name not in right:
            continue
        if parameter["kind"] in ("number", "count", "text"):
            arguments[name] = [row[name] for row in rows]
        elif parameter["kind"] in ("list", "rows"):
            arguments[name] = np.array([right[name]] * ROWS, float)
        else:
            arguments[name] = right[name]
    statuses = np.full(ROWS, 99, np.int32)
    found = getattr(columns, one["name"])(**arguments, statuses=statuses)
    results = plain_columns(found)
    for place, result in enumerate(one["results"]):
        for row, (values, codes) in enumerate(wanted(one, rows)):
            assert (statuses[row] == 0) == (codes is None)
            got = results[place][row]
            if codes is not None:
                assert np.isnan(got).all()
            elif result["kind"] == "word":
                assert result["words"][int(got) - 1] == values[place]
            elif result["kind"] == "list":
                assert [int(part) for part in got] == values[place]
            else:
                assert bits(float(got)) == (values[place] if values[place] is not None else bits(math.nan))
    once = {name: value[0] if isinstance(value, list) else right[name] for name, value in arguments.items()}
    out = {result["field"]: np.full((1, 8) if result["kind"] == "list" else 1, 7.0) for result in one["results"]}
    one_row = getattr(columns, one["name"])(**once, out=out if len(out) > 1 else next(iter(out.values())))
    assert all(not (array == 7.0).all() or (array == 7.0).all() for array in out.values()) and one_row is not None


def plain_columns(found: Any) -> list[Any]:
    """The columns of results, in their order."""
    if not dataclasses.is_dataclass(found):
        return [found]
    return [getattr(found, field.name) for field in dataclasses.fields(found)]


AMOUNTS = ["1/4 tsp", "1 1/4 cup", "½ cup", "12.5 mL", "40 drops", "1 [cup_m]", "6 oz", "12.5 g", "", "-1 mL", "Ω"]


def codes_of(text: str | None, unit: str = "mL") -> tuple[Any, str | None]:
    if text is None:
        return None, None
    try:
        return pw.convert(text, unit), None
    except pw.PourwrightError as error:
        return math.nan, error.code


def texts(amounts: list[str | None]) -> Iterator[Any]:
    """The same texts in every form of Arrow."""
    for kind in (pa.string(), pa.large_string(), pa.string_view(), pa.dictionary(pa.int8(), pa.string())):
        yield pa.array(amounts, pa.string()).cast(kind) if kind != pa.string_view() else pa.array(amounts, kind)
    yield pa.array(amounts, pa.string()).dictionary_encode()
    yield pa.chunked_array([pa.array([None, *amounts], pa.string())[1:]])
    yield pl.Series(amounts, dtype=pl.String)
    yield pl.Series(amounts, dtype=pl.Categorical)


@seed(20270302)
@settings(deadline=None, max_examples=60)
@given(st.lists(st.one_of(st.none(), st.sampled_from(AMOUNTS), st.text(max_size=5)), max_size=12))
def test_amounts_as_texts_are_those_of_single_calls(amounts: list[str | None]) -> None:
    amounts = [text if text is None or text.isprintable() else "?" for text in amounts]
    wanted = [codes_of(text) for text in amounts]
    for column in texts(amounts):
        if len(column) == 0:
            assert len(arrow.mass_of_volume(column, 1.0)) == 0
            continue
        found = arrow.mass_of_volume(column, 1.0, status=True).to_pylist()
        # A mass of 1 g/mL is the number in mL, except that a density is applied in SI units.
        masses = [None if text is None else single_mass(value) for text, (value, _) in zip(amounts, wanted)]
        assert [bits(row["mass_g"]) if row else None for row in found] == [
            None if mass is None else bits(mass) for mass in masses
        ]
        assert [row["status"] if row else None for row in found] == [code for _, code in wanted]
    given = np.array(amounts, object)
    statuses = np.zeros(len(amounts), np.int32)
    if len(amounts):
        numbers = columns.mass_of_volume(given, 1.0, statuses=statuses)
        assert [bits(number) for number in numbers.tolist()] == [
            bits(math.nan if text is None else single_mass(value)) for text, (value, _) in zip(amounts, wanted)
        ]
        assert statuses.tolist() == [
            2 if text is None else 6 if code else 0 for text, (_, code) in zip(amounts, wanted)
        ]


def single_mass(volume_ml: float) -> float:
    return math.nan if math.isnan(volume_ml) else pw.mass_of_volume(volume_ml, 1.0)


numbers = st.one_of(st.none(), st.floats(), st.floats(0, 500), st.just(math.nan))


@seed(20270302)
@settings(deadline=None, max_examples=60)
@given(
    st.lists(st.tuples(numbers, st.one_of(st.none(), st.floats(0.5, 3), st.floats())), max_size=12),
    st.integers(0, 12),
    st.integers(0, 12),
)
def test_any_numbers_nulls_slices_and_chunks(
    rows: list[tuple[float | None, float | None]], start: int, split: int
) -> None:
    volumes = pa.array([volume for volume, _ in rows], pa.float64())[start:]
    densities = pa.array([density for _, density in rows], pa.float64())[start:]
    rows = rows[start:]
    split = min(split, len(rows))
    wanted: list[bytes | None] = []
    for volume, density in rows:
        if volume is None or density is None:
            wanted.append(None)
            continue
        try:
            wanted.append(bits(pw.mass_of_volume(volume, density)))
        except pw.PourwrightError:
            wanted.append(bits(math.nan))
    chunked = pa.chunked_array([densities[:split], densities[split:]], pa.float64())
    for found in (arrow.mass_of_volume(volumes, densities), arrow.mass_of_volume(volumes, chunked)):
        if len(rows) != 1:
            assert [None if value is None else bits(value) for value in found.to_pylist()] == wanted
    frame = pl.DataFrame(
        {"v": pl.Series(volumes.to_pylist(), dtype=pl.Float64), "d": pl.Series(densities.to_pylist(), dtype=pl.Float64)}
    )
    namespace: Any = pl.col("v")
    made = frame.select(m=namespace.pour.mass_of_volume(pl.col("d")))["m"]
    assert [None if value is None else bits(value) for value in made.to_list()] == wanted


def test_all_kinds_of_numbers_are_read() -> None:
    expected = arrow.mass_of_volume(pa.array([1.0, 2.0]), 1.03).to_pylist()
    for kind in (pa.int8(), pa.uint64(), pa.float32(), pa.decimal128(25, 2), pa.float16()):
        assert (
            arrow.mass_of_volume(
                pa.array([1, 2]).cast(pa.float32() if kind == pa.float16() else kind).cast(kind), 1.03
            ).to_pylist()
            == expected
        )
    assert arrow.mass_of_volume([1, 2], 1.03).to_pylist() == expected
    # The nearest float64, as where the number is written in a program.
    decimals = [Decimal(place).scaleb(-3) for place in range(1, 3000)]
    found = arrow.convert_number(pa.array(decimals, pa.decimal128(9, 3)), "mL", "mL")
    assert found.to_pylist() == [float(number) for number in decimals]
    assert arrow.mass_of_volume(np.array([1.0, 2.0]), pa.scalar(1.03)).to_pylist() == expected
    assert arrow.mass_of_volume(pd.Series([1.0, 2.0, None]), 1.03).to_pylist() == [*expected, None]
    assert arrow.mass_of_volume(pl.Series([1.0, 2.0]), "1.03 g/mL").to_pylist() == expected
    assert arrow.mass_of_volume(pa.array([1.0, 2.0]).dictionary_encode(), 1.03).to_pylist() == expected
    assert arrow.mass_of_volume(pa.array([1.0, 2.0]), pa.array([1.03])).to_pylist() == expected
    assert arrow.mass_of_volume(1.0, 1.03).to_pylist() == expected[:1]


def test_rows_of_lists_are_read_in_every_form() -> None:
    right = [(100.0, 1.03), (20.0, 2.165)]
    expected = [pw.density_of_parts(right), pw.density_of_parts(right[:1])]
    parts = [right, right[:1]]
    names = ["part_mass_g", "part_density_g_per_ml"]
    nested = pa.array(parts, pa.list_(pa.list_(pa.float64())))
    fixed = pa.array(parts, pa.large_list(pa.list_(pa.float64(), 2)))
    fields = pa.struct([(name, pa.float64()) for name in names])
    structs = pa.array([[dict(zip(names, part)) for part in one] for one in parts], pa.list_(fields))
    texts = pa.struct([(names[0], pa.string()), (names[1], pa.float64())])
    amounts = pa.array(
        [[{names[0]: f"{part[0]} g", names[1]: part[1]} for part in one] for one in parts], pa.list_(texts)
    )
    for column in (nested, fixed, structs, amounts, pa.concat_arrays([nested[:1], nested])[1:]):
        assert arrow.density_of_parts(column).to_pylist() == expected
    weights = pa.array([["9.5 g", "9.7 g"], ["9.5 g", "6 oz"], ["9.5 g", None], []], pa.list_(pa.string()))
    found = arrow.cavity_of_weights(weights, 1.05, 1.0, status=True)
    assert found[0].as_py()["mean_g"] == pw.cavity_of_weights([9.5, 9.7], 1.05, 1.0).mean_g
    assert [row["status"] is None for row in found.to_pylist()] == [True, False, False, False]
    # A row of another width is refused, not read on into the next.
    odd = arrow.density_of_parts(pa.array([[[1.0, 1.0]], [[1.0]], [[1.0, 1.0, 1.0]], [[2.0, 1.0]]]), status=True)
    assert [row["status"] is None for row in odd.to_pylist()] == [True, False, False, True]


def test_words_differ_by_row() -> None:
    forms = pa.array(["finished-density", "of-base", "no-such-form", None, "of-base"])
    found = arrow.salt_mass(250.0, 1.0, 2.0, forms, pa.array([1.12, 0.2, 0.2, 0.2, 0.3]), status=True).to_pylist()
    assert found[0]["salt_mass_g"] == pw.salt_mass(250.0, 1.0, 2.0, "finished-density", 1.12).salt_mass_g
    assert found[1]["salt_mass_g"] == pw.salt_mass(250.0, 1.0, 2.0, "of-base", 0.2).salt_mass_g
    assert found[2]["status"] == "unknown-word" and math.isnan(found[2]["salt_mass_g"])
    assert found[3] is None
    assert found[4]["salt_mass_g"] == pw.salt_mass(250.0, 1.0, 2.0, "of-base", 0.3).salt_mass_g
    units = arrow.convert(pa.array(["1 cup", "1 cup", "1 cup"]), pa.array(["mL", "tbsp", "g"]), status=True).to_pylist()
    assert [row["value"] for row in units[:2]] == [pw.convert("1 cup", "mL"), 16.0]
    assert units[2]["status"] == "amount-wrong-dimension"
    systems = arrow.dose_mass(
        "1 cup", "softener", material_density_g_per_ml=1.0, measures=pa.array(["metric", "imperial"])
    )
    assert systems.to_pylist() == [
        pw.dose_mass("1 cup", "softener", material_density_g_per_ml=1.0, measures=measures)
        for measures in ("metric", "imperial")
    ]


def test_what_is_wrong_with_a_whole_column_is_raised() -> None:
    for wrong in (pa.array([True]), pa.array([[1.0]]), pa.array([b"1 cup"]), pa.array([{"a": 1}]), object()):
        with pytest.raises(pw.PourwrightTypeError, match="volume_ml"):
            arrow.mass_of_volume(wrong, 1.03)
    with pytest.raises(pw.PourwrightError, match="amount-ambiguous"):
        arrow.mass_of_volume("6 oz", pa.array([1.0]))
    with pytest.raises(pw.PourwrightTypeError, match="voids must be numbers"):
        arrow.piece_mass(9.5, 1.05, voids=pa.array(["5 %"]))
    with pytest.raises(pw.PourwrightError, match="unknown-word"):
        arrow.salt_mass(pa.array([250.0]), 1.0, 2.0, "no-such-form", 0.2)
    with pytest.raises(ValueError, match="differ in length: volume_ml 2, density_g_per_ml 3"):
        arrow.mass_of_volume(pa.array([1.0, 2.0]), pa.array([1.0, 2.0, 3.0]))
    with pytest.raises(pw.PourwrightTypeError, match="must be given"):
        arrow.mass_of_volume(None, 1.0)
    with pytest.raises(pw.PourwrightError, match="unit-unknown"):
        arrow.convert(pa.array(["1 cup"]), "smidge")
    with pytest.raises(AttributeError, match="no calculation wiggle"):
        pl.col("x").pour.wiggle  # type: ignore[attr-defined]  # noqa: B018
    with pytest.raises(duckdb.Error, match="not a parameter"):
        shop().execute("SELECT pour_mass_of_volume({volume: 1})").fetchall()
    with pytest.raises(duckdb.Error, match="2 arguments at most"):
        shop().execute("SELECT pour_mass_of_volume(1, 2, 3)").fetchall()
    with pytest.raises(duckdb.Error, match="name of one function"):
        shop().execute("SELECT pour_why('pour_wiggle', 1)").fetchall()


def test_numpy_columns_of_texts() -> None:
    amounts = ["1/4 tsp", "12.5 mL", "6 oz"]
    wanted = [single_mass(codes_of(text)[0]) for text in amounts]
    for texts_given in (
        amounts,
        np.array(amounts),
        np.array(amounts, object),
        pd.Series(amounts),
        np.array(amounts, np.dtypes.StringDType()),
    ):
        statuses = np.zeros(3, np.int32)
        found = columns.mass_of_volume(texts_given, 1.0, statuses=statuses)
        assert [bits(value) for value in found.tolist()] == [bits(value) for value in wanted]
        assert statuses.tolist() == [0, 0, 6]
    assert columns.mass_of_volume("1/4 tsp", [1.0, 2.0]).tolist() == [
        pw.mass_of_volume(pw.convert("1/4 tsp", "mL"), density) for density in (1.0, 2.0)
    ]
    with pytest.raises(pw.PourwrightError, match="amount-ambiguous"):
        columns.mass_of_volume("6 oz", [1.0])
    with pytest.raises(TypeError, match="voids must be real numbers"):
        columns.piece_mass(9.5, 1.05, voids=["5 %"])
    with pytest.raises(TypeError, match="prepared conversion has its own"):
        columns.convert(pw.Conversion("cup", "mL"), [1.0], measures="metric")  # type: ignore[call-overload]
    with pytest.raises(pw.PourwrightTypeError, match="must be texts"):
        columns.dose_mass([1.0], "salt")
    with pytest.raises(pw.PourwrightTypeError, match="rows of 2 numbers"):
        columns.mix_share([[1.0, 2.0, 3.0]], 0)
    with pytest.raises(pw.PourwrightTypeError, match="must be given"):
        columns.hardness(None, "shore-00", 0.1)  # type: ignore[arg-type]
    assert np.isnan(columns.convert(["1 cup\0", "\ud800"], "mL")).all()


def test_a_long_column_is_done_in_parts() -> None:
    rows = (1 << 18) + 5
    volumes = np.arange(rows, dtype=np.float64)
    found = arrow.mass_of_volume(pa.array(volumes), 1.03)
    assert isinstance(found, pa.Array)
    assert found.to_numpy().tobytes() == columns.mass_of_volume(volumes, 1.03).tobytes()


def test_spread_over_partitions_and_batches() -> None:
    """What Dask and Spark call on each part of a table needs no more than a data frame or a batch."""
    frame = pd.DataFrame({"volume": ["1/4 tsp", "1 cup", "6 oz"], "density": [1.03, 1.05, 1.0]})
    done = frame.assign(mass=columns.mass_of_volume(frame["volume"], frame["density"]))
    batch = pa.RecordBatch.from_pandas(frame)
    again = batch.append_column("mass", arrow.mass_of_volume(batch["volume"], batch["density"]))
    assert done["mass"].to_numpy().tobytes() == again["mass"].to_numpy().tobytes()


@pytest.mark.parametrize(
    ("module", "missing", "extra"),
    [
        ("columns", "numpy", "numpy"),
        ("arrow", "pyarrow", "arrow"),
        ("polars", "polars", "polars"),
        ("polars", "pyarrow", "polars"),
        ("duckdb", "duckdb", "duckdb"),
        ("duckdb", "pyarrow", "duckdb"),
        ("plots", "matplotlib", "matplotlib"),
    ],
)
def test_what_is_not_installed_is_named(module: str, missing: str, extra: str) -> None:
    program = f"import sys; sys.modules[{missing!r}] = None; import pourwright.{module}"
    found = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=False)
    assert found.returncode == 1
    assert f"pip install pourwright[{extra}]" in found.stderr.splitlines()[-1]


def test_nothing_is_imported_that_is_not_asked_for() -> None:
    program = "import sys, json, pourwright; print(json.dumps(sorted(sys.modules)))"
    found = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True)
    loaded = set(json.loads(found.stdout))
    assert not loaded & {"numpy", "pyarrow", "polars", "duckdb", "pandas", "matplotlib"}


def test_signatures_are_those_of_the_table() -> None:
    import inspect

    for one in TABLE:
        for module in (arrow, pour):
            function = getattr(module, one["name"])
            fields = [parameter["field"] for parameter in one["parameters"]]
            assert list(inspect.signature(function).parameters) == [*fields, "status"]
            assert all(f"{field}: " in function.__doc__ for field in fields)
    assert sorted(arrow.__all__) == sorted(pour.__all__) == sorted(one["name"] for one in TABLE)
    assert shaped(TABLE[0]["parameters"][0], "x") == "x"
