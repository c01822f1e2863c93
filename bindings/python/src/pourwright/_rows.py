"""Any calculation of the table on rows: numbers, words, texts and lists."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from itertools import repeat
from typing import Any

import numpy as np
from numpy.typing import NDArray

from . import _calculations
from ._call import OMITTED, checked
from ._entry import Calculation, Kind, Parameter
from ._error import Fault, PourwrightError, refused
from ._native import ffi, lib
from ._table import TABLE
from ._texts import Floats, Statuses, TextColumn, address, read_amounts

CALCULATIONS: Mapping[str, Calculation] = {calculation.name: calculation for calculation in TABLE}

_MAX_COUNT = lib.POUR_OMITTED_COUNT


@dataclass(frozen=True, slots=True)
class ListColumn:
    """Lists one after the other, each with the index of its first item, the last also with that of its end."""

    numbers: Floats
    """The items of all lists: a row for each, a column for each of its numbers."""
    offsets: NDArray[np.int64]

    def __len__(self) -> int:
        return len(self.offsets) - 1

    def at(self, row: int) -> Floats:
        """The list of a row."""
        return self.numbers[self.offsets[row] : self.offsets[row + 1]]

    def take(self, rows: NDArray[np.intp]) -> ListColumn:
        """The lists of these rows."""
        lists = [self.at(row) for row in rows.tolist()]
        offsets = np.zeros(len(lists) + 1, np.int64)
        np.cumsum([len(one) for one in lists], out=offsets[1:])
        return ListColumn(np.concatenate([self.numbers[:0], *lists]), offsets)


@dataclass(frozen=True, slots=True)
class Given:
    """A parameter: a value for each row, or one for all.

    Numbers and counts are floats; words are their places, -1 for one that is not known.
    """

    values: Any
    refused: Statuses | None = None
    """The status of what could not be read, by row."""
    is_one: bool = False
    texts: TextColumn | None = None
    """What the numbers were read from."""
    codes: NDArray[np.integer[Any]] | None = None
    """Which of the texts each row has, where `values` has each text once."""

    def __len__(self) -> int:
        return len(self.values) if self.codes is None else len(self.codes)

    def take(self, rows: NDArray[np.intp]) -> Given:
        """The same of these rows."""
        if len(self) == 1:
            return Given(self.values, is_one=True, codes=self.codes)
        if self.codes is not None:
            return Given(self.values, codes=self.codes[rows])
        return Given(self.values.take(rows))

    def all(self) -> list[Any]:
        """The values of all rows."""
        if not isinstance(self.values, TextColumn):
            return self.values.tolist()  # type: ignore[no-any-return]
        texts = self.values.all()
        return texts if self.codes is None else [texts[code] for code in self.codes.tolist()]

    def text_at(self, row: int) -> bytes:
        """The text of a row."""
        text: bytes = self.values.at(row if self.codes is None else int(self.codes[row]))
        return text

    def at(self, row: int) -> int:
        """The place of the value of a row."""
        return row if len(self) > 1 else 0


def calculate(
    calculation: Calculation, given: Mapping[str, Given], rows: int, skip: NDArray[np.bool_] | None = None
) -> tuple[dict[str, Floats], Statuses]:
    """The results by name, NaN where refused, and the status of each row.

    Args:
        calculation: Which.
        given: Its parameters but for those that are omitted; each has one row or `rows`.
        rows: The number of rows.
        skip: Rows that are not calculated; what they get is not said.

    Raises:
        PourwrightError: A unit or a word that counts for all rows is not one.
    """
    results = {
        result.name: np.full((rows, result.places) if result.kind is Kind.LIST else rows, np.nan)
        for result in calculation.results
    }
    statuses = np.zeros(rows, np.int32)
    if rows == 0:
        return results, statuses
    groups = list(_groups(calculation, given, rows))
    for members in groups:
        if members is None:
            _fill(calculation, given, rows, results, statuses, skip)
            continue
        part = {name: column.take(members) for name, column in given.items()}
        found = {name: np.full((len(members), *array.shape[1:]), np.nan) for name, array in results.items()}
        status = np.zeros(len(members), np.int32)
        _fill(calculation, part, len(members), found, status, None if skip is None else skip[members])
        for name, array in found.items():
            results[name][members] = array
        statuses[members] = status
    for column in given.values():
        if column.refused is not None:
            bad = np.broadcast_to(column.refused, rows) if len(column.refused) == 1 else column.refused
            np.copyto(statuses, bad, where=bad != 0)
    for array in results.values():
        array[statuses != 0] = np.nan
    return results, statuses


def _groups(calculation: Calculation, given: Mapping[str, Given], rows: int) -> Iterator[NDArray[np.intp] | None]:
    """Rows that have the words in common, for calls that take one word for all; None is all rows."""
    kinds = {"convert": ("to", "measures"), "convert_number": ("unit", "to", "measures")}
    names = kinds.get(calculation.name)
    if names is None:
        names = tuple(one.name for one in calculation.parameters if one.kind is Kind.WORD and calculation.columnar)
    keys = [given[name] for name in names if name in given and len(given[name]) > 1]
    if not keys:
        yield None
        return
    values = [key.all() for key in keys]
    members: dict[tuple[Any, ...], list[int]] = {}
    for row, key in enumerate(zip(*values)):
        members.setdefault(key, []).append(row)
    for group in members.values():
        yield np.array(group, np.intp)


def _fill(
    calculation: Calculation,
    given: Mapping[str, Given],
    rows: int,
    results: dict[str, Floats],
    statuses: Statuses,
    skip: NDArray[np.bool_] | None,
) -> None:
    """Writes the results of rows that have the words in common where that matters."""
    if calculation.columnar:
        _by_columns(calculation, given, rows, results, statuses)
    elif calculation.name == "convert":
        results["value"][:], statuses[:] = _converted(given)
    elif calculation.name == "convert_number":
        _converted_numbers(given, results["value"], statuses)
    else:
        _by_calls(calculation, given, rows, results, statuses, skip)


def _column(array: Floats, rows: int) -> Any:
    stride = array.strides[0] if len(array) == rows and rows > 1 else 0
    return ffi.new("pour_column *", [ffi.cast("double *", address(array)), stride])[0]


def _place(array: Floats) -> Any:
    return ffi.new("pour_result_column *", [ffi.cast("double *", address(array)), 8])[0]


def _by_columns(
    calculation: Calculation, given: Mapping[str, Given], rows: int, results: dict[str, Floats], statuses: Statuses
) -> None:
    name = f"pour_{calculation.name}"
    columns = ffi.new(f"{name}_columns *")
    for parameter in calculation.parameters:
        column = given.get(parameter.name)
        if column is None:
            continue
        if parameter.kind is Kind.WORD:
            if column.values[0] < 0:
                statuses[:] = lib.POUR_UNKNOWN_NUMBER
                return
            setattr(columns, parameter.name, int(column.values[0]))
        else:
            setattr(columns, parameter.name, _column(column.values, rows))
    places = ffi.new(f"{name}_result_columns *")
    for result, array in results.items():
        setattr(places, result, _place(array))
    checked(getattr(lib, f"{name}_n"), rows, columns, places, ffi.cast("int32_t *", address(statuses)))


def _measures(given: Mapping[str, Given]) -> int:
    return int(given["measures"].values[0]) if "measures" in given else 0


def _converted(given: Mapping[str, Given]) -> tuple[Floats | float, Statuses | int]:
    measures, to, amounts = _measures(given), given["to"], given["amount"]
    if measures < 0:
        return np.nan, lib.POUR_UNKNOWN_NUMBER
    try:
        numbers, statuses = read_amounts(amounts.values, _ended(to.text_at(0)), measures)
    except PourwrightError as error:
        if to.is_one:
            raise
        return np.nan, error.status
    return (numbers, statuses) if amounts.codes is None else (numbers[amounts.codes], statuses[amounts.codes])


def _converted_numbers(given: Mapping[str, Given], result: Floats, statuses: Statuses) -> None:
    measures, of, to = _measures(given), given["unit"], given["to"]
    if measures < 0:
        statuses[:] = lib.POUR_UNKNOWN_NUMBER
        return
    way = ffi.new("pour_conversion *")
    try:
        checked(lib.pour_conversion_between, _ended(of.text_at(0)), _ended(to.text_at(0)), measures, way)
    except PourwrightError as error:
        if of.is_one and to.is_one:
            raise
        statuses[:] = error.status
        return
    values = given["value"].values
    rows = len(result)
    checked(
        lib.pour_convert_with_n,
        way,
        rows,
        _column(values, rows),
        _place(result),
        ffi.cast("int32_t *", address(statuses)),
    )


def _ended(text: bytes) -> bytes:
    """A text for C, which a NUL would end: it then is not a unit."""
    return text.replace(b"\0", b"?")


def _by_calls(
    calculation: Calculation,
    given: Mapping[str, Given],
    rows: int,
    results: dict[str, Floats],
    statuses: Statuses,
    skip: NDArray[np.bool_] | None,
) -> None:
    """One call for each row: arguments are made for all rows before, results are taken from all after."""
    name = f"pour_{calculation.name}"
    call = getattr(lib, name)
    keep: list[Any] = []
    passed = [
        one
        for parameter in calculation.parameters
        for one in _passed(parameter, given.get(parameter.name), statuses, keep, calculation.by_struct)
    ]
    found = ffi.new(f"{_result_type(calculation)}[]", rows)
    do = statuses == 0 if skip is None else (statuses == 0) & ~skip
    nothing, done = ffi.NULL, statuses.tolist()
    if calculation.by_struct:
        size = ffi.sizeof(f"{name}_input")
        made = _structs(f"{name}_input", [("size", size), *passed], rows)
        for row in np.flatnonzero(do).tolist():
            done[row] = call(made + row, found + row, nothing)
    else:
        arguments = [value if isinstance(value, list) else repeat(value, rows) for _, value in passed]
        for row, (is_done, *values) in enumerate(zip(do.tolist(), *arguments)):
            if is_done:
                done[row] = call(*values, found + row, nothing)
    statuses[:] = done
    _take(calculation, found, rows, results)


def _passed(
    parameter: Parameter, column: Given | None, statuses: Statuses, keep: list[Any], as_field: bool
) -> list[tuple[str, Any]]:
    """The arguments of C that a parameter is, each a list of all rows or one value for all.

    A row that cannot be passed gets its status. What pointers point to is kept in `keep`.
    """
    name = parameter.name
    if parameter.kind in (Kind.LIST, Kind.ROWS):
        if column is None:
            return [(name, ffi.NULL), (parameter.count, 0)]
        lists: ListColumn = column.values
        # An array of nothing is not a null pointer, which omits the parameter.
        numbers = lists.numbers if len(lists.numbers) else np.zeros((1, lists.numbers.shape[1]))
        start = ffi.from_buffer(f"{parameter.item}[]", np.ascontiguousarray(numbers))
        keep.append(start)
        starts = [start + offset for offset in lists.offsets[:-1].tolist()]
        counts = np.diff(lists.offsets).tolist()
        return (
            [(name, starts), (parameter.count, counts)]
            if len(starts) > 1
            else [
                (name, starts[0]),
                (parameter.count, counts[0]),
            ]
        )
    if column is None:
        omitted = {Kind.COUNT: lib.POUR_OMITTED_COUNT, Kind.WORD: 0, Kind.TEXT: ffi.NULL}
        return [(name, omitted.get(parameter.kind, OMITTED))]
    if parameter.kind is Kind.TEXT:
        values = _ended_texts(column, statuses, keep, as_field)
    else:
        numbers = column.values
        if parameter.kind is Kind.COUNT:
            is_whole = (numbers >= 0) & (numbers < _MAX_COUNT) & (numbers == np.floor(numbers))
            _mark(statuses, ~is_whole, lib.POUR_REFUSED)
            _mark(statuses, ~np.isfinite(numbers), lib.POUR_NOT_FINITE)
            numbers = np.where(is_whole, numbers, 0).astype(np.uint32)
        elif parameter.kind is Kind.WORD:
            _mark(statuses, numbers < 0, lib.POUR_UNKNOWN_NUMBER)
        values = numbers.tolist()
    return [(name, values if len(values) > 1 else values[0])]


def _mark(statuses: Statuses, bad: NDArray[np.bool_], status: int) -> None:
    """Gives a status to rows, or to all where one value counts for all."""
    np.copyto(statuses, status, where=np.broadcast_to(bad, statuses.shape))


def _ended_texts(column: Given, statuses: Statuses, keep: list[Any], as_field: bool) -> list[Any]:
    """Texts as C takes them; in a field of a struct, each text once."""
    texts = column.values.all()
    ended: list[Any] = [ffi.new("char[]", text) for text in texts] if as_field else texts
    keep.append(ended)
    codes = column.codes if column.codes is not None else np.arange(len(texts))
    if b"\0" in bytes(memoryview(column.values.letters)):
        # C would read only up to it.
        bad = np.array([b"\0" in text for text in texts])
        _mark(statuses, bad[codes], lib.POUR_REFUSED)
    return ended if column.codes is None else [ended[code] for code in codes.tolist()]


def _structs(name: str, passed: list[tuple[str, Any]], rows: int) -> Any:
    """An array of structs with these fields."""
    made = ffi.new(f"{name}[]", rows)
    fields = _fields(made, name, rows)
    for field, value in passed:
        if isinstance(value, list) and isinstance(value[0], ffi.CData):
            value = [int(ffi.cast("uintptr_t", pointer)) for pointer in value]
        elif isinstance(value, ffi.CData):
            value = int(ffi.cast("uintptr_t", value))
        fields[field][...] = value
    return made


def _fields(made: Any, name: str, rows: int) -> dict[str, NDArray[Any]]:
    """The fields of an array of structs, each as an array that is in it."""
    whole = np.frombuffer(ffi.buffer(made), np.uint8)
    size = ffi.sizeof(name)
    found = {}
    for field, at in ffi.typeof(name).fields:
        kind, places = at.type, 1
        if kind.kind == "array":
            kind, places = kind.item, kind.length
        dtype = {"double": "f8", "int32_t": "i4", "uint32_t": "u4", "int": "i4", "unsigned int": "u4"}.get(
            kind.cname, "u8"
        )
        array = np.ndarray((rows, places), dtype, whole, at.offset, (size, np.dtype(dtype).itemsize))
        found[field] = array if places > 1 else array[:, 0]
    return found


def _take(calculation: Calculation, found: Any, rows: int, results: dict[str, Floats]) -> None:
    """Takes the results of all rows; what a row that is refused has in them is not said."""
    if not calculation.result_struct:
        kinds: dict[Kind, Any] = {Kind.COUNT: np.uint32, Kind.WORD: np.int32}
        (result,) = calculation.results
        fields = {result.name: np.frombuffer(ffi.buffer(found), kinds.get(result.kind, np.float64))}
    else:
        fields = _fields(found, f"pour_{calculation.name}_result", rows)
    for result in calculation.results:
        array = fields[result.name]
        results[result.name][...] = array
        if result.kind is Kind.COUNT:
            results[result.name][array == _MAX_COUNT] = np.nan
        elif result.kind is Kind.WORD:
            results[result.name][array == 0] = np.nan


def _result_type(calculation: Calculation) -> str:
    if calculation.result_struct:
        return f"pour_{calculation.name}_result"
    kind = calculation.results[0].kind
    return {Kind.COUNT: "uint32_t", Kind.WORD: "int32_t"}.get(kind, "double")


def reason(calculation: Calculation, given: Mapping[str, Given], row: int) -> PourwrightError:
    """Why a row is refused: what its single call raises."""
    arguments: dict[str, Any] = {}
    errors: list[PourwrightError] = []
    measures = None
    if "measures" in given:
        words = next(one.words for one in calculation.parameters if one.name == "measures")
        place = int(given["measures"].values[given["measures"].at(row)])
        measures = words[place - 1] if place > 0 else None
    for parameter in calculation.parameters:
        column = given.get(parameter.name)
        if column is None:
            continue
        at = column.at(row)
        try:
            arguments[parameter.name] = _argument(parameter, column, at, measures)
        except PourwrightError as error:
            errors.append(error)
            arguments[parameter.name] = None
    if not errors:
        try:
            getattr(_calculations, calculation.name)(**arguments)
        except PourwrightError as error:
            return error
        raise RuntimeError(f"The library has a defect: {calculation.name} refuses a row of columns, but not by itself.")
    faults = tuple(fault for error in errors for fault in error.faults)
    return PourwrightError(faults, "\n".join(map(str, errors)), errors[0].status)


def _argument(parameter: Parameter, column: Given, at: int, measures: str | None) -> Any:
    """The value of a row as its single call takes it."""
    path = f"/{parameter.name}"
    if parameter.kind is Kind.WORD:
        place = int(column.values[at])
        if place < 0:
            help = f"Known: {', '.join(parameter.words)}."
            raise refused("unknown-word", path, "This is not a word for it.", help, lib.POUR_UNKNOWN_NUMBER)
        return parameter.words[place - 1]
    if parameter.kind is Kind.TEXT:
        return _decoded(path, column.text_at(at))
    if parameter.kind in (Kind.LIST, Kind.ROWS):
        rows = column.values.at(at).tolist()
        return [tuple(row) for row in rows] if parameter.kind is Kind.ROWS else [row[0] for row in rows]
    if column.texts is not None and parameter.unit is not None:
        text = _decoded(path, column.texts.at(at))
        try:
            return _calculations.convert(text, parameter.unit, measures=measures)  # type: ignore[arg-type]
        except PourwrightError as error:
            faults = tuple(Fault(fault.code, path, fault.message, fault.help) for fault in error.faults)
            said = "\n".join(f"{path}: {one.message} {one.help} [{one.code}]" for one in faults)
            raise PourwrightError(faults, said, error.status) from None
    number = float(column.values[at])
    return int(number) if parameter.kind is Kind.COUNT and number.is_integer() else number


def _decoded(path: str, text: bytes) -> str:
    try:
        return text.decode("utf-8")
    except UnicodeDecodeError as error:
        message = f"The text is not valid UTF-8, from byte {error.start} on."
        help = "Convert the text to UTF-8 before the call."
        raise refused("not-utf8", path, message, help, lib.POUR_NOT_UTF8) from None


def places_of(words: tuple[str, ...], texts: list[str | None]) -> NDArray[np.int32]:
    """The places of words, counted from 1; -1 for what is not one, or missing."""
    known = {text: place for place, text in enumerate(words, 1)}
    return np.array([known.get(text, -1) if text is not None else -1 for text in texts], np.int32)
