"""Columns of Arrow: how they are read, calculated and written."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

try:
    import pyarrow as pa
except ImportError as _missing:
    raise ImportError("pourwright.arrow needs PyArrow: pip install pourwright[arrow]") from _missing
try:
    import numpy as np
except ImportError as _missing:
    raise ImportError("pourwright.arrow needs NumPy: pip install pourwright[arrow]") from _missing
from numpy.typing import NDArray

from ._columns import measures_place, read_parameter
from ._entry import Calculation, Kind, Parameter, Result
from ._error import PourwrightError, wrong_type
from ._native import lib
from ._rows import CALCULATIONS, Given, ListColumn, calculate, places_of, reason
from ._texts import Floats, Statuses, TextColumn, read_amounts, text_column

Arrow = Any
"""``pyarrow.Array``, or ``pyarrow.ChunkedArray`` where a column is one."""

Cells = Any
"""A column: an array of Arrow or what Arrow reads; or a number, a text or a word for all rows."""

Lists = Any
"""A list for each row, as an array of Arrow; or one sequence for all rows."""

Mask = NDArray[np.bool_]

_ROWS_AT_ONCE = 1 << 18
"""Columns are done in parts of this number of rows, which stay in the processor's cache better than all at once."""


def calculated(name: str, given: Mapping[str, Any], status: bool) -> Arrow:
    """Does a calculation on columns."""
    calculation = CALCULATIONS[name]
    return on_columns(calculation, given, results_of(calculation, _codes if status else None))


def results_of(
    calculation: Calculation, said: Callable[[PourwrightError], str] | None
) -> Callable[[Mapping[str, Given], int, Mask | None], Arrow]:
    """What makes the results of rows: an array, or with several or with statuses a struct array."""

    def results(read: Mapping[str, Given], rows: int, nulls: Mask | None) -> Arrow:
        found, statuses = calculate(calculation, read, rows, nulls)
        columns = [_written(result, found[result.name], statuses, nulls) for result in calculation.results]
        names = [result.name for result in calculation.results]
        if said is not None:
            columns.append(reasons(calculation, read, statuses, nulls, said))
            names.append("status")
        if len(columns) == 1:
            return columns[0]
        mask = None if nulls is None else pa.array(nulls)
        return pa.StructArray.from_arrays(columns, names, mask=mask)

    return results


def reasons(
    calculation: Calculation,
    read: Mapping[str, Given],
    statuses: Statuses,
    nulls: Mask | None,
    said: Callable[[PourwrightError], str],
) -> Arrow:
    """What is said of each row; null where it is good or null."""
    texts: list[str | None] = [None] * len(statuses)
    bad = statuses != 0 if nulls is None else (statuses != 0) & ~nulls
    for row in np.flatnonzero(bad).tolist():
        texts[row] = said(reason(calculation, read, row))
    return pa.array(texts, pa.string())


def _codes(error: PourwrightError) -> str:
    """The codes of all faults, each once."""
    return ", ".join(dict.fromkeys(fault.code for fault in error.faults))


def result_type(calculation: Calculation, status: bool) -> Any:
    """The type of Arrow of what a calculation gives."""
    fields = [(result.name, _type(result)) for result in calculation.results]
    if status:
        fields.append(("status", pa.string()))
    return fields[0][1] if len(fields) == 1 else pa.struct(fields)


def _type(result: Result) -> Any:
    if result.kind is Kind.WORD:
        return pa.string()
    return pa.list_(pa.int64()) if result.kind is Kind.LIST else pa.float64()


def on_columns(
    calculation: Calculation,
    given: Mapping[str, Any],
    results: Callable[[Mapping[str, Given], int, Mask | None], Arrow],
) -> Arrow:
    """Does a calculation on columns, part by part where they are chunked or long."""
    ones: dict[str, Given] = {}
    columns: dict[str, Any] = {}
    for parameter in calculation.parameters:
        value = given[parameter.name]
        if isinstance(value, pa.Scalar):
            value = value.as_py()
            if value is None:
                value = pa.nulls(1)
        if value is None:
            if not parameter.optional:
                raise wrong_type(parameter.name, f"{parameter.name} must be given.")
        elif _is_one(parameter, value):
            ones[parameter.name] = _one(parameter, value, given.get("measures"))
        else:
            columns[parameter.name] = _array(parameter.name, value)
    lengths = {name: len(column) for name, column in columns.items()}
    several = set(lengths.values()) - {1}
    if len(several) > 1:
        each = ", ".join(f"{name} {length}" for name, length in lengths.items())
        raise ValueError(f"The columns differ in length: {each}.")
    rows = several.pop() if several else 1
    is_chunked = any(isinstance(column, pa.ChunkedArray) for column in columns.values())
    # A column of one row counts for all.
    repeated = {name: column for name, column in columns.items() if lengths[name] != rows}
    columns = {name: column for name, column in columns.items() if name not in repeated}

    def done(part: Mapping[str, Any], rows: int) -> Arrow:
        read, nulls = _read(calculation, {**part, **repeated}, rows, given.get("measures"))
        return results({**ones, **read}, rows, nulls)

    if not is_chunked and rows <= _ROWS_AT_ONCE:
        return done(columns, rows)
    parts = []
    if columns:
        names = list(columns)
        for batch in pa.table(list(columns.values()), names=names).to_batches(max_chunksize=_ROWS_AT_ONCE):
            parts.append(done(dict(zip(names, batch.columns)), batch.num_rows))
    elif rows:
        parts.append(done({}, rows))
    if not parts:
        parts.append(done(columns, 0))
    return pa.chunked_array(parts) if is_chunked else pa.concat_arrays(parts)


def _is_one(parameter: Parameter, value: Any) -> bool:
    """Whether a value counts for all rows."""
    if isinstance(value, (str, int, float)) or (hasattr(value, "__float__") and not hasattr(value, "__len__")):
        return True
    return parameter.kind in (Kind.LIST, Kind.ROWS) and isinstance(value, Sequence) and not hasattr(value, "dtype")


def _array(name: str, value: Any) -> Any:
    """A column as an array of Arrow."""
    if isinstance(value, (pa.Array, pa.ChunkedArray)):
        return value
    try:
        if hasattr(value, "__arrow_c_stream__"):
            return pa.chunked_array(value)
        return pa.array(value, from_pandas=type(value).__module__.startswith("pandas"))
    except (TypeError, ValueError, pa.ArrowException) as error:
        raise wrong_type(name, f"{name} must be a column of Arrow: {error}") from None


def _one(parameter: Parameter, value: Any, measures: Any) -> Given:
    """What counts for all rows; what is wrong with it is raised."""
    given = read_parameter(parameter, value, measures_place(measures if isinstance(measures, str) else None))
    return Given(given.values, is_one=True)


def _read(
    calculation: Calculation, columns: Mapping[str, Any], rows: int, measures: Any
) -> tuple[dict[str, Given], Mask | None]:
    """Columns of equal length as rows, and which rows are null."""
    read: dict[str, Given] = {}
    nulls: Mask | None = None
    chosen: Any = measures if isinstance(measures, str) else None
    places: Any = None
    parameters = sorted(calculation.parameters, key=lambda one: one.kind is not Kind.WORD)
    for parameter in parameters:
        column = columns.get(parameter.name)
        if column is None:
            continue
        if isinstance(column, pa.ChunkedArray):
            column = column.combine_chunks()
        if column.null_count:
            mask = column.is_null().to_numpy(zero_copy_only=False)
            nulls = mask if nulls is None else nulls | mask
            if len(mask) != rows and nulls is mask:
                nulls = np.broadcast_to(mask, rows)
        read[parameter.name] = found = _column(parameter, column, chosen, places)
        if parameter.name == "measures":
            places = found.values
    return read, nulls


def _column(parameter: Parameter, column: Any, measures: str | None, places: Any) -> Given:
    """A column as rows; what it has where it is null is not said."""
    name = parameter.name
    if parameter.kind is Kind.WORD:
        if not _is_text(column.type) and not pa.types.is_null(column.type):
            raise wrong_type(name, f"{name} must be words, not {column.type}.")
        encoded = column if pa.types.is_dictionary(column.type) else column.dictionary_encode()
        known = places_of(parameter.words, encoded.dictionary.to_pylist())
        found = np.full(len(column), -1, np.int32)
        if len(known):
            indices = encoded.indices
            valid = indices.is_valid().to_numpy(zero_copy_only=False)
            found[valid] = known[indices.drop_null().to_numpy(zero_copy_only=False)]
        return Given(found)
    if parameter.kind is Kind.TEXT:
        if not _is_text(column.type) and not pa.types.is_null(column.type):
            raise wrong_type(name, f"{name} must be texts, not {column.type}.")
        return _once(column)
    if parameter.kind in (Kind.LIST, Kind.ROWS):
        return _list_column(parameter, column)
    return _numbers(name, column, parameter.unit, measures, places)


def _once(column: Any) -> Given:
    """Texts, each once where they repeat, as in most tables: to find that out costs less than to read them all."""
    encoded = column if pa.types.is_dictionary(column.type) else column.dictionary_encode()
    if not 0 < len(encoded.dictionary) < len(column):
        return Given(_texts(column))
    codes = encoded.indices.fill_null(0).to_numpy(zero_copy_only=False)
    return Given(_texts(encoded.dictionary), codes=codes)


def _is_text(kind: Any) -> bool:
    if pa.types.is_dictionary(kind):
        kind = kind.value_type
    return bool(pa.types.is_string(kind) or pa.types.is_large_string(kind) or pa.types.is_string_view(kind))


def _texts(column: Any) -> TextColumn:
    """The texts of a column, in place where it has them as one array of letters."""
    if pa.types.is_dictionary(column.type):
        words = column.dictionary
        # Arrow has no `take` of viewed texts.
        words = words.cast(pa.large_string()) if pa.types.is_string_view(words.type) else words
        column = words.take(column.indices)
    if not (pa.types.is_string(column.type) or pa.types.is_large_string(column.type)):
        column = column.cast(pa.large_string())
    kind = np.int64 if pa.types.is_large_string(column.type) else np.int32
    _, offsets, letters = column.buffers()
    if len(column) == 0 or offsets is None:
        return text_column([b""] * len(column))
    ends = np.frombuffer(offsets, kind, len(column) + 1, column.offset * kind().itemsize)
    return TextColumn(b"" if letters is None else letters, ends.astype(np.int64, copy=False))


def _numbers(name: str, column: Any, unit: str | None, measures: str | None = None, places: Any = None) -> Given:
    """Numbers, or with a unit amounts as texts, which are read once for each text of a dictionary."""
    kind = column.type
    if pa.types.is_null(kind):
        return Given(np.zeros(len(column)))
    if _is_text(kind):
        if unit is None:
            raise wrong_type(name, f"{name} must be numbers, not texts.")
        return _amounts(column, unit, measures, places)
    if pa.types.is_dictionary(kind):
        column = column.dictionary_decode()
        kind = column.type
    if not (pa.types.is_floating(kind) or pa.types.is_integer(kind) or pa.types.is_decimal(kind)):
        raise wrong_type(name, f"{name} must be real numbers, not {kind}.")
    if pa.types.is_decimal(kind):
        # Arrow's own conversion is not always the nearest float64; that of a text is.
        column = column.cast(pa.string())
    if not pa.types.is_float64(kind):
        column = column.cast(pa.float64(), safe=False)
    numbers = column.buffers()[1]
    if len(column) == 0 or numbers is None:
        return Given(np.zeros(len(column)))
    return Given(np.frombuffer(numbers, np.float64, len(column), 8 * column.offset))


def _amounts(column: Any, unit: str, measures: str | None, places: Any) -> Given:
    chosen = measures_place(measures)
    texts = _texts(column)
    if places is None:
        once = _once(column)
        numbers, refused = read_amounts(once.values, unit.encode(), chosen)
        if once.codes is None:
            return Given(numbers, refused, texts=texts)
        return Given(numbers[once.codes], refused[once.codes], texts=texts)
    numbers, refused = np.full(len(column), np.nan), np.zeros(len(column), np.int32)
    spread = np.broadcast_to(places, len(column)) if len(places) == 1 else places
    for place in np.unique(spread).tolist():
        rows = np.flatnonzero(spread == place)
        if place > 0:
            numbers[rows], refused[rows] = read_amounts(texts.take(rows), unit.encode(), place)
    return Given(numbers, refused, texts=texts)


def _list_column(parameter: Parameter, column: Any) -> Given:
    """A list for each row: of numbers or amounts, or of rows of them as lists or structs."""
    name, kind = parameter.name, column.type
    width = len(parameter.cells)
    if pa.types.is_null(kind):
        return Given(ListColumn(np.zeros((0, width)), np.zeros(len(column) + 1, np.int64)))
    offsets, items = _items(name, column)
    refused = np.zeros(len(column), np.int32)
    wrong: Mask = np.zeros(len(items), np.bool_)
    if parameter.kind is Kind.LIST:
        cells = [items]
    elif pa.types.is_struct(items.type):
        names = [field.name for field in items.type]
        missing = [cell.name for cell in parameter.cells if cell.name not in names]
        if missing or len(names) != width:
            raise wrong_type(name, f"{name} must have the fields {', '.join(cell.name for cell in parameter.cells)}.")
        flat = dict(zip(names, items.flatten()))
        cells = [flat[cell.name] for cell in parameter.cells]
    else:
        inner, values = _items(name, items)
        wrong = np.diff(inner) != width
        start = np.where(wrong, 0, inner[:-1])
        if len(values) < width:
            values = pa.nulls(width, pa.float64())
        cells = [values.take(pa.array(start + place)) for place in range(width)]
    numbers = np.empty((len(items), width))
    for place, (cell, values) in enumerate(zip(parameter.cells, cells)):
        found = _numbers(f"{name}/{cell.name}", values, cell.unit)
        numbers[:, place] = found.values
        if found.refused is not None:
            wrong = wrong | (found.refused != 0)
        if values.null_count:
            wrong = wrong | values.is_null().to_numpy(zero_copy_only=False)
    numbers[wrong] = np.nan
    # A list with something wrong in it is refused.
    before = np.concatenate([[0], np.cumsum(wrong)])
    refused[before[offsets[1:]] > before[offsets[:-1]]] = lib.POUR_REFUSED
    return Given(ListColumn(numbers, offsets), refused)


def _items(name: str, column: Any) -> tuple[NDArray[np.int64], Any]:
    """The offsets of lists, from 0, and their items; a null has none."""
    kind = column.type
    if pa.types.is_fixed_size_list(kind):
        column = column.cast(pa.list_(kind.value_type))
    elif not (pa.types.is_list(kind) or pa.types.is_large_list(kind)):
        raise wrong_type(name, f"{name} must be lists, not {kind}.")
    sizes = column.value_lengths().fill_null(0).to_numpy(zero_copy_only=False)
    offsets = np.zeros(len(column) + 1, np.int64)
    np.cumsum(sizes, out=offsets[1:])
    # `flatten` leaves out the items of nulls, and of what is sliced off.
    return offsets, column.flatten()


def _written(result: Result, values: Floats, statuses: Statuses, nulls: Mask | None) -> Arrow:
    """A result as an array."""
    if result.kind is Kind.NUMBER or result.kind is Kind.COUNT:
        mask = nulls
        if result.optional:
            absent = np.isnan(values) & (statuses == 0)
            mask = absent if mask is None else mask | absent
        valid = None if mask is None or not mask.any() else pa.py_buffer(np.packbits(~mask, bitorder="little"))
        return pa.Array.from_buffers(pa.float64(), len(values), [valid, pa.py_buffer(values)])
    bad = statuses != 0 if nulls is None else (statuses != 0) | nulls
    if result.kind is Kind.WORD:
        bad = bad | np.isnan(values)
        places = np.where(bad, 1, values).astype(np.int64) - 1
        return pa.array(list(result.words), pa.string()).take(pa.array(places, mask=bad))
    # A null has no items: some readers rely on that.
    offsets = np.zeros(len(values) + 1, np.int32)
    np.cumsum(np.where(bad, 0, result.places), out=offsets[1:])
    counts = values[~bad].astype(np.int64)
    return pa.ListArray.from_arrays(pa.array(offsets), pa.array(counts.ravel()), mask=pa.array(bad))
