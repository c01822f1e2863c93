"""Columns of numbers: how they are read and written, and the columnar calls that are not in the table."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

try:
    import numpy as np
    from numpy.typing import ArrayLike, NDArray
except ImportError as error:
    raise ImportError("pourwright.columns needs NumPy: pip install pourwright[numpy]") from error

from ._call import checked, instance, word
from ._convert import Conversion
from ._native import ffi, lib

Floats = NDArray[np.float64]
Statuses = NDArray[np.int32]
Column = ArrayLike | float
Read = tuple[str, Floats]
Maybe = tuple[str, Floats | None]

_FLOAT = np.dtype(np.float64)
_STATUS = np.dtype(np.int32)


def convert(
    conversion: Conversion, values: Column, *, out: Floats | None = None, statuses: Statuses | None = None
) -> Floats:
    """Converts numbers of one unit into another.

    >>> convert(Conversion("cup", "mL"), [1.0, 2.0]).tolist()
    [236.5882365, 473.176473]

    Args:
        conversion: The prepared conversion.
        values: Numbers of its unit.
        out: The array for the result. Default: a new one.
        statuses: Receives the status of each row.
    """
    prepared = instance("conversion", conversion, Conversion)._prepared
    read = [column("values", values)]
    spread, results, written = _arranged(read, ("converted",), _named("converted", out), statuses)
    rows, (result,) = len(results["converted"]), results.values()
    checked(lib.pour_convert_with_n, prepared, rows, _start(spread[0][1]), _place_of(result), written)
    return result


def density_of_parts(
    masses_g: ArrayLike,
    densities_g_per_ml: ArrayLike,
    voids: Column = 0.0,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Densities of mixes, in g/mL; numbers as in :func:`pourwright.density_of_parts`.

    Args:
        masses_g: A table: a row for each mix, a column for each part; or a table of one row for all mixes.
        densities_g_per_ml: A table of the same shape, or one row for all mixes.
        voids: Shares of the volume that are air.
        out: The array for the result. Default: a new one.
        statuses: Receives the status of each row.
    """
    masses = _floats("masses_g", masses_g)
    densities = _floats("densities_g_per_ml", densities_g_per_ml)
    if masses.ndim != 2 or densities.ndim not in (1, 2):
        raise ValueError("masses_g must be a table, densities_g_per_ml a table or one row.")
    parts = masses.shape[1]
    if densities.shape[-1] != parts:
        raise ValueError(f"{parts} parts do not go with {densities.shape[-1]} densities.")
    read = [
        ("masses_g", masses),
        ("densities_g_per_ml", np.atleast_2d(densities)),
        column("voids", voids),
    ]
    name = "density_g_per_ml"
    spread, results, written = _arranged(read, (name,), _named(name, out), statuses)
    tables = [ffi.new("pour_table *", [_address(table), *table.strides])[0] for _, table in spread[:2]]
    of_voids, result = _start(spread[2][1]), results[name]
    checked(lib.pour_density_of_parts_n, len(result), parts, *tables, of_voids, _place_of(result), written)
    return result


def word_of(words: Sequence[str], name: str, chosen: str | None) -> int:
    """The number of a word, 0 for none."""
    return 0 if chosen is None else word(words, name, chosen)


def columnar(
    call: Any,
    c_name: str,
    given: Sequence[Maybe],
    words: Mapping[str, int],
    names: Sequence[str],
    out: Mapping[str, Floats] | None,
    statuses: Statuses | None,
) -> dict[str, Floats]:
    """Does the columnar call of a calculation; returns its results by name."""
    read = [(name, values) for name, values in given if values is not None]
    spread, results, written = _arranged(read, names, out or {}, statuses)
    columns = ffi.new(f"{c_name}_columns *")
    for name, number in words.items():
        setattr(columns, name, number)
    for name, values in spread:
        setattr(columns, name, _start(values))
    places = ffi.new(f"{c_name}_result_columns *")
    for name, values in results.items():
        setattr(places, name, _place_of(values))
    rows = len(results[names[0]])
    # The names keep the arrays alive until the call ends.
    checked(call, rows, columns, places, written)
    return results


def _named(name: str, out: Floats | None) -> Mapping[str, Floats]:
    return {} if out is None else {name: out}


def _start(array: Floats) -> Any:
    """A column of C."""
    return ffi.new("pour_column *", [_address(array), array.strides[0]])[0]


def _place_of(array: Floats) -> Any:
    """A column of C that receives results."""
    return ffi.new("pour_result_column *", [_address(array), array.strides[0]])[0]


def _arranged(
    read: list[Read], names: Sequence[str], out: Mapping[str, Floats], statuses: Statuses | None
) -> tuple[list[Read], dict[str, Floats], Any]:
    """The columns at equal length, the arrays for the results, and the address of the statuses."""
    for name, array in out.items():
        if name not in names:
            raise ValueError(f"out has no place for {name}: the results are {', '.join(names)}.")
        if not _plain(array, _FLOAT):
            raise TypeError("out must be a plain array of float64.")
    rows = _rows(read, next(iter(out.values()), None))
    columns = [(name, _spread(values, rows)) for name, values in read]
    results: dict[str, Floats] = {}
    for name in names:
        others = [*columns, *results.items()]
        results[name] = _result(out.get(name), rows, columns)
        for other_name, other in others[len(columns) :]:
            if np.shares_memory(other, results[name]):
                raise ValueError(f"out overlaps: {name} and {other_name}.")
    written = _statuses(statuses, rows, [*columns, *(("the result", result) for result in results.values())])
    return columns, results, written


def if_column(name: str, values: Column | None) -> Maybe:
    """A column that may be omitted."""
    return (name, None) if values is None else column(name, values)


def column(name: str, values: Column) -> Read:
    """One number for each row, or one for all."""
    array = _floats(name, values)
    if array.ndim > 1:
        raise ValueError(f"{name} must be one-dimensional; see numpy.ravel.")
    return name, array


def _floats(name: str, values: ArrayLike) -> Floats:
    """An array of native `float64`: the same array if it is one."""
    if isinstance(values, (list, tuple)) and any(map(np.ma.isMaskedArray, values)):
        values = np.ma.asarray(values)
    array = np.asarray(values)
    if array.dtype != _FLOAT:
        if array.dtype.kind not in "fiu":
            raise TypeError(f"{name} must be real numbers, not {array.dtype}.")
        array = array.astype(_FLOAT)
    if isinstance(values, np.ma.MaskedArray) and values.mask.any():
        # A masked element may have any number, such as -999 for a missing one.
        array = np.where(values.mask, np.nan, array)
    return array


def _rows(columns: list[Read], out: Floats | None) -> int:
    """The number of rows; columns of one row apply to every row of the result."""
    lengths: set[int] = {column.shape[0] for _, column in columns if column.ndim} - {1}
    if len(lengths) > 1:
        each = ", ".join(f"{name} {column.shape[0]}" for name, column in columns if column.ndim)
        raise ValueError(f"The columns differ in length: {each}.")
    if lengths:
        return lengths.pop()
    return len(out) if out is not None and out.ndim == 1 else 1


def _spread(array: Floats, rows: int) -> Floats:
    """The array with this number of rows; one row is repeated by a stride of 0."""
    return array if array.shape[:1] == (rows,) else np.broadcast_to(array, (rows, *array.shape[1:]))


def _plain(array: object, dtype: np.dtype[Any]) -> bool:
    """Whether C can write to the array: a mask would hide what it writes."""
    return isinstance(array, np.ndarray) and array.dtype == dtype and not np.ma.isMaskedArray(array)


def _result(out: Floats | None, rows: int, columns: list[Read]) -> Floats:
    """The array for the result: `out` if it is writable and overlaps nothing, or a new one."""
    if out is None:
        return np.empty(rows, _FLOAT)
    if out.shape != (rows,):
        raise ValueError(f"out must have the shape ({rows},), not {out.shape}.")
    if not out.flags.writeable:
        raise ValueError("out is read-only.")
    for name, column in columns:
        if _place(column) != _place(out) and np.shares_memory(column, out):
            raise ValueError(f"out overlaps {name}, and is not the same array.")
    return out


def _statuses(statuses: Statuses | None, rows: int, others: list[Read]) -> Any:
    """The address of the statuses; null if omitted."""
    if statuses is None:
        return ffi.NULL
    if not _plain(statuses, _STATUS):
        raise TypeError("statuses must be a plain array of int32.")
    if statuses.shape != (rows,) or not statuses.flags.c_contiguous or not statuses.flags.writeable:
        raise ValueError(f"statuses must be a contiguous, writable array of shape ({rows},).")
    for name, other in others:
        if np.shares_memory(statuses, other):
            raise ValueError(f"statuses overlaps {name}.")
    return ffi.cast("int32_t *", statuses.__array_interface__["data"][0])


def _place(array: Floats) -> tuple[int, tuple[int, ...]]:
    address: int = array.__array_interface__["data"][0]
    return address, array.strides


def _address(array: Floats) -> Any:
    return ffi.cast("double *", array.__array_interface__["data"][0])
