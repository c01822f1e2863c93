"""Columns: the bits of the scalar calls, no copy, strides, bad rows, and what is refused."""

from __future__ import annotations

import math
import tracemalloc
from collections.abc import Callable, Iterable
from typing import Any

import numpy as np
import pytest
from numpy.typing import NDArray

import pourwright as pw
from pourwright import columns

ROWS = 1000
RANDOM = np.random.default_rng(20270302)


def same_bits(one: NDArray[np.float64], other: Any) -> bool:
    return one.tobytes() == np.asarray(other, np.float64).tobytes()


def table() -> dict[str, NDArray[np.float64]]:
    return {
        "volumes": RANDOM.uniform(0, 1000, ROWS),
        "densities": RANDOM.uniform(0.5, 3, ROWS),
        "voids": RANDOM.uniform(0, 0.2, ROWS),
        "feed": RANDOM.uniform(0, 1, ROWS),
        "cold": RANDOM.uniform(1.0, 1.1, ROWS),
        "hot": RANDOM.uniform(0.9, 1.0, ROWS),
        "wanted": RANDOM.uniform(1.0, 1.3, ROWS),
    }


def scalar(call: Callable[..., float], *numbers: float) -> float:
    try:
        return call(*map(float, numbers))
    except pw.PourwrightError:
        return math.nan


def parts(masses: Iterable[float], densities: Iterable[float], voids: float = 0.0) -> float:
    return pw.density_of_parts(list(zip(map(float, masses), densities)), voids=float(voids))


def test_same_bits_as_the_scalar_calls() -> None:
    t = table()
    volumes, densities = t["volumes"], t["densities"]
    way = pw.Conversion("cup", "mL")
    assert same_bits(columns.convert(way, volumes), [way(x) for x in volumes])
    assert same_bits(
        columns.mass_of_volume(volumes, densities),
        [pw.mass_of_volume(v, d) for v, d in zip(volumes, densities)],
    )
    rows = list(zip(volumes, t["cold"], t["voids"], t["wanted"]))
    salt = columns.salt_for_density(volumes, t["cold"], 2.165, t["wanted"], voids=t["voids"])
    expected = [scalar(lambda *x: pw.salt_for_density(*x[:4], voids=x[4]), v, c, 2.165, w, a) for v, c, a, w in rows]
    assert same_bits(salt, expected)
    assert 0 < np.isnan(salt).sum() < ROWS
    masses = RANDOM.uniform(0, 100, (ROWS, 5))
    densities_of = [1.03, 2.165, 0.98, 1.05, 1.4]
    assert same_bits(
        columns.density_of_parts(masses, densities_of, t["voids"]),
        [parts(row, densities_of, a) for row, a in zip(masses, t["voids"])],
    )
    assert same_bits(
        columns.density_of_parts(np.asfortranarray(masses), np.tile(densities_of, (ROWS, 1))),
        [parts(row, densities_of) for row in masses],
    )


def test_nothing_is_copied() -> None:
    """A call on a hundred megabytes allocates next to nothing, as NumPy's own allocations are traced."""
    rows = 12_500_000
    volumes, out = np.full(rows, 2.0), np.empty(rows)
    tracemalloc.start()
    result = columns.mass_of_volume(volumes, 1.03, out=out)
    (_, most) = tracemalloc.get_traced_memory()
    # The same measure sees a copy where there is one.
    tracemalloc.reset_peak()
    volumes.copy()
    (_, copied) = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert result is out and out[-1] == pw.mass_of_volume(2.0, 1.03)
    assert most < 100_000
    assert copied > 90_000_000


@pytest.mark.parametrize(
    "view",
    [
        lambda a: a[::-1],
        lambda a: a[::3],
        lambda a: np.broadcast_to(a[:1], (5,)),
        lambda a: np.repeat(a, 2).reshape(-1, 2)[:, 1],
        lambda a: np.frombuffer(b"x" + a.tobytes(), np.uint8)[1:].view(np.float64),
        lambda a: np.array(list(zip(a, a)), dtype=[("x", "i4"), ("y", "f8")])["y"],
        lambda a: a[:0],
        lambda a: a.tolist(),
        lambda a: a.astype(">f8"),
        lambda a: a.astype(np.float32),
        lambda a: a.astype(np.int64),
    ],
)
def test_any_layout_reads_right(view: Callable[[NDArray[np.float64]], Any]) -> None:
    given = view(np.arange(1.0, 13.0))
    read = np.array(given, np.float64)
    assert same_bits(columns.mass_of_volume(given, 1.03), [pw.mass_of_volume(x, 1.03) for x in read])


def test_results_go_where_they_are_wanted() -> None:
    volumes = np.arange(1.0, 7.0)
    expected = columns.mass_of_volume(volumes, 1.03)
    for out in (np.zeros(6), np.zeros(12)[::2], np.zeros(6)[::-1], np.zeros((6, 3))[:, 1]):
        assert columns.mass_of_volume(volumes, 1.03, out=out) is out
        assert same_bits(out, expected)
    wide = np.zeros(12)
    columns.mass_of_volume(volumes, 1.03, out=wide[::2])
    assert not wide[1::2].any()
    # In place, and with adjacent columns of one table.
    columns.mass_of_volume(volumes, 1.03, out=volumes)
    assert same_bits(volumes, expected)
    both = np.ones((6, 2))
    columns.mass_of_volume(both[:, 0], 1.03, out=both[:, 1])
    assert (both[:, 0] == 1).all() and (both[:, 1] == pw.mass_of_volume(1.0, 1.03)).all()


def test_several_results() -> None:
    volumes = np.arange(1.0, 7.0)
    least = np.zeros(6)
    found = columns.piece_mass(volumes, 1.05, hot_density_g_per_ml=0.98, out={"piece_mass_min_g": least})
    assert found.piece_mass_min_g is least
    for row, volume in enumerate(volumes):
        one = pw.piece_mass(volume, 1.05, hot_density_g_per_ml=0.98)
        assert (found.piece_mass_g[row], least[row]) == (one.piece_mass_g, one.piece_mass_min_g)
    with pytest.raises(ValueError, match="no place for mass_g"):
        columns.piece_mass(volumes, 1.05, out={"mass_g": least})
    with pytest.raises(ValueError, match="out overlaps"):
        columns.piece_mass(volumes, 1.05, out={"piece_mass_g": least, "piece_mass_min_g": least})


def test_one_row_counts_for_all() -> None:
    assert columns.mass_of_volume(2.0, 1.5).tolist() == [3.0]
    assert columns.mass_of_volume([2.0], [1.0, 2.0, 3.0]).tolist() == [2.0, 4.0, 6.0]
    assert columns.mass_of_volume(2.0, 1.5, out=np.empty(3)).tolist() == [3.0, 3.0, 3.0]
    assert columns.mass_of_volume([2.0], 1.5, out=np.empty(3)).tolist() == [3.0, 3.0, 3.0]
    assert columns.mass_of_volume([2.0], [1.5], out=np.empty(1)).tolist() == [3.0]
    assert columns.mass_of_volume([], 1.03).tolist() == []
    with pytest.raises(ValueError, match=r"shape \(0,\)"):
        columns.mass_of_volume([], 1.03, out=np.empty(3))
    half = parts([1.0, 3.0], [1.0, 2.0], 0.5)
    whole = parts([1.0, 3.0], [1.0, 2.0])
    assert columns.density_of_parts([[1.0, 3.0]], [1.0, 2.0], [0.0, 0.5]).tolist() == [whole, half]
    assert columns.density_of_parts([[1.0, 3.0]], [[1.0, 2.0]] * 2, [0.5]).tolist() == [half, half]
    assert columns.density_of_parts([[1.0, 3.0]], [1.0, 2.0], out=np.empty(2)).tolist() == [whole, whole]


def test_what_is_masked_is_not_known() -> None:
    volumes = np.ma.array([1.0, 999.0, 3.0], mask=[False, True, False])
    expected = [pw.mass_of_volume(1.0, 1.03), math.nan, pw.mass_of_volume(3.0, 1.03)]
    statuses = np.zeros(3, np.int32)
    for given in (volumes, volumes.astype(np.int64), volumes[::-1][::-1]):
        assert same_bits(columns.mass_of_volume(given, 1.03, statuses=statuses), expected)
        assert statuses.tolist() == [0, 2, 0]
    assert volumes.data[1] == 999.0
    assert same_bits(columns.mass_of_volume(2.0, np.ma.masked), [math.nan])
    table = [volumes, np.ma.ones(3)]
    assert np.isnan(columns.density_of_parts(table, [1.0, 1.0, 1.0])).tolist() == [True, False]
    # One that masks nothing is read in place.
    nothing = np.ma.array([1.0, 2.0])
    assert columns.mass_of_volume(nothing, 1.03, out=nothing.data) is not None
    assert nothing.data[0] == pw.mass_of_volume(1.0, 1.03)


def test_bad_rows() -> None:
    statuses = np.full(5, -1, np.int32)
    volumes = [1.0, math.nan, -1.0, math.inf, 2.0]
    result = columns.mass_of_volume(volumes, 1.03, statuses=statuses)
    assert statuses.tolist() == [0, 2, 6, 2, 0]
    bits = result.view(np.uint64)
    assert bits[1] == bits[2] == bits[3] == 0x7FF8000000000000
    assert result[[0, 4]].tolist() == [pw.mass_of_volume(1.0, 1.03), pw.mass_of_volume(2.0, 1.03)]


def test_subnormals_and_the_state_of_the_processor() -> None:
    with np.errstate(all="raise"):
        assert columns.mass_of_volume([5e-324, math.nan], 1.03).shape == (2,)
        assert np.float64(1.0) / np.float64(3.0) == 1 / 3


@pytest.mark.parametrize(
    ("wrong", "error", "words"),
    [
        (lambda: columns.piece_mass(["1 cup"], 1.0, voids=["5 %"]), TypeError, "voids must be real numbers"),
        (lambda: columns.mass_of_volume([1j], 1.0), TypeError, "real numbers"),
        (lambda: columns.mass_of_volume([object()], 1.0), TypeError, "real numbers"),  # type: ignore[arg-type]
        (lambda: columns.mass_of_volume([True], 1.0), TypeError, "real numbers"),
        (lambda: columns.mass_of_volume(np.ones((2, 2)), 1.0), ValueError, "one-dimensional"),
        (
            lambda: columns.mass_of_volume(np.ones(2), np.ones(3)),
            ValueError,
            "volume_ml 2, density_g_per_ml 3",
        ),
        (lambda: columns.mass_of_volume(np.ones(2), 1.0, out=np.ones(3)), ValueError, "shape"),
        (lambda: columns.mass_of_volume(np.ones(2), 1.0, out=[0.0, 0.0]), TypeError, "array of float64"),  # type: ignore[arg-type]
        (lambda: columns.mass_of_volume(np.ones(2), 1.0, out=np.ones(2, np.float32)), TypeError, "float64"),
        (
            lambda: columns.mass_of_volume(np.ones(2), 1.0, out=np.broadcast_to(1.0, 2)),
            ValueError,
            "read-only",
        ),
        (lambda: columns.mass_of_volume(np.ones(2), 1.0, statuses=np.ones(2, np.int64)), TypeError, "int32"),
        (lambda: columns.mass_of_volume(np.ones(2), 1.0, statuses=np.ones(3, np.int32)), ValueError, "shape"),
        (
            lambda: columns.mass_of_volume(np.ones(2), 1.0, statuses=np.ones(4, np.int32)[::2]),
            ValueError,
            "contiguous",
        ),
        (lambda: columns.convert("1 cup", np.ones(2)), TypeError, "to must be texts"),
        (lambda: columns.density_of_parts(np.ones(2), [1.0, 1.0]), ValueError, "table"),
        (lambda: columns.density_of_parts(np.ones((3, 2)), [1.0]), ValueError, "parts do not go"),
        (
            lambda: columns.density_of_parts(np.ones((3, 2)), [1.0, 1.0], np.ones(2)),
            ValueError,
            "masses_g 3, .*voids 2",
        ),
        (lambda: columns.density_of_parts(np.ones((3, 2)), np.ones((2, 2))), ValueError, "densities_g_per_ml 2"),
        (lambda: columns.mass_of_volume([2.0], 1.0, out=[0.0, 0.0]), TypeError, "array of float64"),  # type: ignore[arg-type]
        (lambda: columns.mass_of_volume(np.ones(2), 1.0, out=np.ma.ones(2)), TypeError, "plain array"),
        (
            lambda: columns.mass_of_volume(np.ones(2), 1.0, statuses=np.ma.ones(2, np.int32)),
            TypeError,
            "plain array",
        ),
    ],
)
def test_what_is_refused(wrong: Callable[[], Any], error: type[Exception], words: str) -> None:
    with pytest.raises(error, match=words):
        wrong()


def test_what_overlaps_is_refused() -> None:
    memory = np.ones(20)
    with pytest.raises(ValueError, match="out overlaps volume_ml"):
        columns.mass_of_volume(memory[:10], 1.0, out=memory[1:11])
    with pytest.raises(ValueError, match="out overlaps volume_ml"):
        columns.mass_of_volume(memory[:10], 1.0, out=memory[:10][::-1])
    with pytest.raises(ValueError, match="statuses overlaps"):
        columns.mass_of_volume(np.ones(4), 1.0, out=memory[:4], statuses=memory[2:4].view(np.int32))
    with pytest.raises(ValueError, match="statuses overlaps volume_ml"):
        columns.mass_of_volume(memory[:4], 1.0, statuses=memory[2:4].view(np.int32))
    with pytest.raises(ValueError, match="statuses overlaps densities_g_per_ml"):
        columns.density_of_parts(np.ones((2, 2)), memory[:2], statuses=memory[1:2].view(np.int32))
    assert (memory == 1).all()
    # Between the rows of a column there is room.
    rows = np.ones(2, dtype=[("volume", "f8"), ("statuses", "i4", (2,))])
    columns.mass_of_volume(rows["volume"], -1.0, statuses=rows["statuses"][0])
    assert rows["statuses"][0].tolist() == [6, 6] and (rows["volume"] == 1).all()
