"""Any calculation of the table on rows: numbers, words, texts and lists."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from . import _calculations
from ._call import OMITTED, checked
from ._entry import Calculation, Kind, Parameter, Result
from ._error import Fault, PourwrightError, refused
from ._native import ffi, lib
from ._table import TABLE
from ._texts import Floats, Statuses, TextColumn, address, read_amounts

CALCULATIONS: Mapping[str, Calculation] = {calculation.name: calculation for calculation in TABLE}

_MAX_COUNT = 2**32 - 1


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
    """One call for each row."""
    name = f"pour_{calculation.name}"
    call = getattr(lib, name)
    fields: list[str] = []
    passed: list[Callable[[int], Any]] = []
    for parameter in calculation.parameters:
        for field, value in _passed(parameter, given.get(parameter.name)):
            fields.append(field)
            passed.append(value)
    made = ffi.new(f"{name}_input *") if calculation.by_struct else None
    result = ffi.new(_result_type(calculation))
    read = [(_read(one, calculation.result_struct), results[one.name]) for one in calculation.results]
    nothing = ffi.NULL
    skipped = skip.tolist() if skip is not None else None
    for row in range(rows):
        if skipped is not None and skipped[row]:
            continue
        try:
            values = [value(row) for value in passed]
        except _Refused as error:
            statuses[row] = error.status
            continue
        if made is None:
            status = call(*values, result, nothing)
        else:
            for field, value in zip(fields, values):
                setattr(made, field, value)
            status = call(made, result, nothing)
        if status:
            statuses[row] = status
            continue
        for of, array in read:
            array[row] = of(result)


class _Refused(Exception):  # noqa: N818
    """A value that cannot be passed to C."""

    def __init__(self, status: int) -> None:
        super().__init__(status)
        self.status = status


def _passed(parameter: Parameter, column: Given | None) -> list[tuple[str, Callable[[int], Any]]]:
    """The fields of C that a parameter is, each with what it is in a row."""
    if parameter.kind in (Kind.LIST, Kind.ROWS):
        if column is None:
            return [(parameter.name, lambda _: ffi.NULL), (parameter.count, lambda _: 0)]
        lists: ListColumn = column.values
        # An array of nothing is not a null pointer, which omits the parameter.
        numbers = lists.numbers if len(lists.numbers) else np.zeros((1, lists.numbers.shape[1]))
        numbers = np.ascontiguousarray(numbers)
        start = ffi.from_buffer(f"{parameter.item}[]", numbers)
        offsets = lists.offsets.tolist()
        at = column.at

        def place(row: int) -> Any:
            return start + offsets[at(row)]

        def count(row: int) -> int:
            return int(offsets[at(row) + 1] - offsets[at(row)])

        return [(parameter.name, place), (parameter.count, count)]
    return [(parameter.name, _passed_one(parameter, column))]


def _passed_one(parameter: Parameter, column: Given | None) -> Callable[[int], Any]:
    omitted: dict[Kind, Any] = {
        Kind.NUMBER: OMITTED,
        Kind.COUNT: lib.POUR_OMITTED_COUNT,
        Kind.WORD: 0,
        Kind.TEXT: ffi.NULL,
    }
    if column is None:
        nothing = omitted[parameter.kind]
        return lambda _: nothing
    readers: dict[Kind, Callable[[Any], Any]] = {
        Kind.NUMBER: float,
        Kind.COUNT: _count,
        Kind.WORD: _word,
        Kind.TEXT: _text,
    }
    of = readers[parameter.kind]
    values = column.all()
    if len(values) == 1:
        only = values[0]
        if parameter.kind in (Kind.NUMBER, Kind.WORD) and (parameter.kind is Kind.NUMBER or only >= 0):
            return lambda _: only
        return lambda _: of(only)
    if parameter.kind is Kind.NUMBER:
        return values.__getitem__
    return lambda row: of(values[row])


def _count(number: float) -> int:
    if not np.isfinite(number):
        raise _Refused(lib.POUR_NOT_FINITE)
    if not (0 <= number < _MAX_COUNT and number.is_integer()):
        raise _Refused(lib.POUR_REFUSED)
    return int(number)


def _word(place: int) -> int:
    if place < 0:
        raise _Refused(lib.POUR_UNKNOWN_NUMBER)
    return place


def _text(text: bytes) -> Any:
    if b"\0" in text:
        raise _Refused(lib.POUR_REFUSED)
    return ffi.new("char[]", text)


def _result_type(calculation: Calculation) -> str:
    if calculation.result_struct:
        return f"pour_{calculation.name}_result *"
    kind = calculation.results[0].kind
    return {Kind.COUNT: "uint32_t *", Kind.WORD: "int32_t *"}.get(kind, "double *")


def _read(result: Result, in_struct: bool) -> Callable[[Any], Any]:
    """The number, or the numbers, that a result is."""
    if not in_struct:
        return lambda found: found[0]
    name = result.name
    if result.kind is Kind.LIST:
        return lambda found: list(getattr(found, name))
    if result.optional and result.kind is Kind.COUNT:
        return lambda found: np.nan if getattr(found, name) == _MAX_COUNT else getattr(found, name)
    if result.optional and result.kind is Kind.WORD:
        return lambda found: getattr(found, name) or np.nan
    return lambda found: getattr(found, name)


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
