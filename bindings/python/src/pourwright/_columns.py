"""Columns of numbers: how they are read and written, and the columnar calls that are not in the table."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple, overload

try:
    import numpy as np
    from numpy.typing import ArrayLike, NDArray
except ImportError as error:
    raise ImportError("pourwright.columns needs NumPy: pip install pourwright[numpy]") from error

from ._calculations import MEASURES_WORDS, Measures
from ._call import c_text, checked, word
from ._convert import Conversion
from ._entry import Kind, Parameter
from ._error import wrong_type
from ._native import ffi, lib
from ._rows import CALCULATIONS, Given, ListColumn, calculate
from ._texts import TextColumn, read_amounts, text_column

Floats = NDArray[np.float64]
Statuses = NDArray[np.int32]
Column = ArrayLike | float
Texts = ArrayLike
Lists = ArrayLike


class Read(NamedTuple):
    """A column that is read: its numbers, and the statuses of texts that are not amounts."""

    name: str
    values: Floats
    refused: Statuses | None = None


class _Omitted(NamedTuple):
    name: str
    values: None = None
    refused: None = None


Maybe = Read | _Omitted

_FLOAT = np.dtype(np.float64)
_STATUS = np.dtype(np.int32)


@overload
def convert(
    conversion: Conversion,
    values: Column,
    /,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats: ...


@overload
def convert(
    amount: Texts,
    to: Texts,
    /,
    *,
    measures: Measures | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats: ...


def convert(
    conversion: Conversion | Texts,
    values: Column,
    /,
    *,
    measures: Measures | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Converts amounts as texts into a unit, or numbers of one unit into another.

    >>> convert(["1/4 tsp", "1 1/4 cup"], "mL").tolist()
    [1.2322303984375, 295.735295625]
    >>> convert(Conversion("cup", "mL"), [1.0, 2.0]).tolist()
    [236.5882365, 473.176473]

    Args:
        conversion: The texts, or a prepared conversion.
        values: The unit of the answer; with a prepared conversion the numbers of its unit.
        measures: What cups and spoons of the texts hold. Default: us-customary. A prepared conversion has its own.
        out: The array for the result. Default: a new one.
        statuses: Receives the status of each row.
    """
    if not isinstance(conversion, Conversion):
        given = {"amount": conversion, "to": values, "measures": measures}
        return by_rows("convert", given, _named("value", out), statuses)["value"]
    if measures is not None:
        raise wrong_type("measures", "A prepared conversion has its own measures.")
    prepared = conversion._prepared
    read = [column("values", values)]
    spread, results, written = _arranged(read, ("converted",), _named("converted", out), statuses)
    rows, (result,) = len(results["converted"]), results.values()
    checked(lib.pour_convert_with_n, prepared, rows, _start(spread[0].values), _place_of(result), written)
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
        Read("masses_g", masses),
        Read("densities_g_per_ml", np.atleast_2d(densities)),
        column("voids", voids),
    ]
    name = "density_g_per_ml"
    spread, results, written = _arranged(read, (name,), _named(name, out), statuses)
    tables = [ffi.new("pour_table *", [_address(table), *table.strides])[0] for _, table, _ in spread[:2]]
    of_voids, result = _start(spread[2].values), results[name]
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
    read = [column for column in given if isinstance(column, Read)]
    spread, results, written = _arranged(read, names, out or {}, statuses)
    columns = ffi.new(f"{c_name}_columns *")
    for name, number in words.items():
        setattr(columns, name, number)
    for name, values, _ in spread:
        setattr(columns, name, _start(values))
    places = ffi.new(f"{c_name}_result_columns *")
    for name, values in results.items():
        setattr(places, name, _place_of(values))
    rows = len(results[names[0]])
    # The names keep the arrays alive until the call ends.
    checked(call, rows, columns, places, written)
    if statuses is not None:
        for column in read:
            if column.refused is not None:
                np.copyto(statuses, column.refused, where=column.refused != 0)
    return results


def by_rows(
    name: str, given: Mapping[str, object], out: Mapping[str, Floats] | None, statuses: Statuses | None
) -> dict[str, Floats]:
    """Does a calculation that takes texts or lists; returns its results by name."""
    calculation = CALCULATIONS[name]
    measures = measures_place(given.get("measures"))
    read: dict[str, Given] = {}
    for parameter in calculation.parameters:
        value = given[parameter.name]
        if value is not None:
            read[parameter.name] = read_parameter(parameter, value, measures)
        elif not parameter.optional:
            raise wrong_type(parameter.name, f"{parameter.name} must be given.")
    rows = _rows(
        [(one, len(column)) for one, column in read.items() if not column.is_one],
        next(iter((out or {}).values()), None),
    )
    shapes = {
        result.name: (rows, result.places) if result.kind is Kind.LIST else (rows,) for result in calculation.results
    }
    for place, array in (out or {}).items():
        if place not in shapes:
            raise ValueError(f"out has no place for {place}: the results are {', '.join(shapes)}.")
        if not _plain(array, _FLOAT):
            raise TypeError("out must be a plain array of float64.")
        if array.shape != shapes[place]:
            raise ValueError(f"out must have the shape {shapes[place]}, not {array.shape}.")
        if not array.flags.writeable:
            raise ValueError("out is read-only.")
    _statuses(statuses, rows, [])
    results, found = calculate(calculation, read, rows)
    if statuses is not None:
        statuses[:] = found
    for place, array in (out or {}).items():
        array[...] = results[place]
        results[place] = array
    return results


def measures_place(measures: Any) -> int:
    """The number of a system of measures, 0 for none."""
    return word_of(MEASURES_WORDS, "measures", measures)


def read_parameter(parameter: Parameter, value: Any, measures: int) -> Given:
    """A parameter as rows."""
    name = parameter.name
    if parameter.kind is Kind.WORD:
        return Given(np.array([word(parameter.words, name, value)], np.int32), is_one=True)
    if parameter.kind is Kind.TEXT:
        if isinstance(value, str):
            return Given(text_column([c_text(name, value)]), is_one=True)
        array = _texts(_array(value))
        if array is None:
            raise wrong_type(name, f"{name} must be texts.")
        missing, texts, codes = array
        return Given(texts, np.where(missing, np.int32(lib.POUR_NOT_FINITE), np.int32(0)), codes=codes)
    if parameter.kind in (Kind.LIST, Kind.ROWS):
        return _lists(parameter, value)
    found = column(name, value, parameter.unit, measures)
    return Given(np.atleast_1d(found.values), found.refused, is_one=found.values.ndim == 0)


def _lists(parameter: Parameter, value: Any) -> Given:
    """One list for all rows, or an array with one dimension more."""
    width, name = len(parameter.cells), parameter.name
    try:
        array = np.asarray(value, _FLOAT)
    except (TypeError, ValueError):
        raise wrong_type(name, f"{name} must be numbers, in lists of equal length.") from None
    dimensions = 1 if parameter.kind is Kind.LIST else 2
    if array.size == 0 and array.ndim < dimensions:
        array = array.reshape((0,) if dimensions == 1 else (0, width))
    if array.ndim not in (dimensions, dimensions + 1) or (dimensions == 2 and array.shape[-1] != width):
        what = "numbers" if dimensions == 1 else f"rows of {width} numbers"
        raise wrong_type(name, f"{name} must be a list of {what}, or an array of such lists.")
    is_one = array.ndim == dimensions
    lists = array[None] if is_one else array
    items = lists.shape[1]
    numbers = np.ascontiguousarray(lists.reshape(-1, width))
    return Given(ListColumn(numbers, np.arange(len(lists) + 1) * items), is_one=is_one)


def _named(name: str, out: Floats | None) -> dict[str, Floats]:
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
    rows = _rows(_lengths(read), next(iter(out.values()), None))
    columns = [Read(name, _spread(values, rows)) for name, values, _ in read]
    results: dict[str, Floats] = {}
    for name in names:
        others = list(results.items())
        results[name] = _result(out.get(name), rows, columns)
        for other_name, other in others:
            if np.shares_memory(other, results[name]):
                raise ValueError(f"out overlaps: {name} and {other_name}.")
    written = _statuses(statuses, rows, [*columns, *(Read("the result", result) for result in results.values())])
    return columns, results, written


def if_column(name: str, values: Column | None, unit: str | None = None) -> Maybe:
    """A column that may be omitted."""
    return _Omitted(name) if values is None else column(name, values, unit)


def column(name: str, values: Column, unit: str | None = None, measures: int = 0) -> Read:
    """One number for each row, or one for all; with a unit also amounts as texts.

    Raises:
        PourwrightError: One text for all rows that is not an amount.
    """
    if unit is not None and (texts := _texts(_array(values))) is not None:
        missing, amounts, codes = texts
        read, statuses = read_amounts(amounts, unit.encode(), measures)
        numbers, refused = read[codes], statuses[codes]
        refused[missing] = lib.POUR_NOT_FINITE
        if isinstance(values, str) and refused[0]:
            checked(lib.pour_convert, c_text(name, values), unit.encode(), measures, ffi.new("double *"))
        return Read(name, numbers.reshape(()) if isinstance(values, str) else numbers, refused)
    array = _floats(name, values)
    if array.ndim > 1:
        raise ValueError(f"{name} must be one-dimensional; see numpy.ravel.")
    return Read(name, array)


def _array(values: Any) -> NDArray[Any]:
    """As an array; texts among numbers would all become texts."""
    if isinstance(values, (list, tuple)) and any(isinstance(value, str) for value in values):
        return np.array(values, object)
    return np.asarray(values)


def _texts(array: NDArray[Any]) -> tuple[NDArray[np.bool_], TextColumn, NDArray[np.intp]] | None:
    """Which texts are missing, the texts once, and which of them each row has; None where there is something else."""
    if array.ndim > 1 or array.dtype.kind not in "OTU":
        return None
    texts = np.atleast_1d(array).tolist()
    missing = np.zeros(len(texts), np.bool_)
    for row, text in enumerate(texts):
        if isinstance(text, str):
            continue
        # What table libraries have for a missing text is not equal to itself, or None.
        if text is not None and _is_number(text):
            return None
        missing[row], texts[row] = True, ""
    known: dict[str, int] = {}
    codes = np.fromiter((known.setdefault(text, len(known)) for text in texts), np.intp, len(texts))
    return missing, text_column(known), codes


def _is_number(value: Any) -> bool:
    """Whether a value is not a missing one."""
    try:
        return bool(value == value)
    except TypeError:  # pandas.NA
        return False


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


def _lengths(columns: list[Read]) -> list[tuple[str, int]]:
    return [(column.name, column.values.shape[0]) for column in columns if column.values.ndim]


def _rows(columns: list[tuple[str, int]], out: Floats | None) -> int:
    """The number of rows; columns of one row apply to every row of the result."""
    lengths = {length for _, length in columns} - {1}
    if len(lengths) > 1:
        each = ", ".join(f"{name} {length}" for name, length in columns)
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
    for name, column, _ in columns:
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
    for name, other, _ in others:
        if np.shares_memory(statuses, other):
            raise ValueError(f"statuses overlaps {name}.")
    return ffi.cast("int32_t *", statuses.__array_interface__["data"][0])


def _place(array: Floats) -> tuple[int, tuple[int, ...]]:
    address: int = array.__array_interface__["data"][0]
    return address, array.strides


def _address(array: Floats) -> Any:
    return ffi.cast("double *", array.__array_interface__["data"][0])
