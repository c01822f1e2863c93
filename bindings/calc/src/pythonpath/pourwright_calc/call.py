"""A calculation of the table as a function of cells."""

import ctypes
from itertools import zip_longest
from typing import Any, Dict, List, Optional, Sequence, Tuple, Union

from .cells import EMPTY_ROWS, Cell, ListRow, column, decimal, place_in_list, rows_of_list, single
from .fault import Fault, Faults, Refused, refuse
from .library import LIBRARY, OK, OMITTED, OMITTED_COUNT, c_text, convert, take_faults
from .parts import Calculation, Parameter, Result

# What a cell shows for a result that is not known, and for a call that is refused. Calc reads them from the bits of a NaN.
NOT_KNOWN = 32767
REFUSED = 519


def error_of_calc(number: int) -> float:
    return ctypes.c_double.from_buffer(ctypes.c_uint64(0x7FF8_0000_0000_0000 | number)).value


_TYPES = {
    "number": ctypes.c_double,
    "count": ctypes.c_uint32,
    "word": ctypes.c_int32,
    "text": ctypes.c_char_p,
    "list": ctypes.c_void_p,
}
_OMITTED: Dict[str, Any] = {
    "number": OMITTED,
    "count": OMITTED_COUNT,
    "word": 0,
    "text": None,
}
# The results of a call, or why it is refused; None where nothing is given.
Row = Union[None, Refused, Tuple[Any, ...]]

_NAME_OF_TYPE = {float: "a number", str: "a text"}


class Function:
    """A calculation, and its call in C."""

    def __init__(self, calculation: Calculation) -> None:
        self.calculation = calculation
        self.width = calculation.width
        self.measures = [place for place, one in enumerate(calculation.parameters) if one.name == "measures"]
        members: List[Any] = []
        for parameter in calculation.parameters:
            members.append((parameter.name, _TYPES[parameter.kind]))
            if parameter.kind == "list":
                members.append((parameter.name + " count", ctypes.c_size_t))
        self._call = LIBRARY["pour_" + calculation.name]
        self._call.restype = ctypes.c_int32
        self._input: Any = None
        types = [of_member for _, of_member in members]
        if calculation.takes_struct:
            self._input = type("Input", (ctypes.Structure,), {"_fields_": [("size", ctypes.c_size_t), *members]})
            types = [ctypes.c_void_p]
        self._call.argtypes = [*types, ctypes.c_void_p, ctypes.c_void_p]
        if calculation.gives_struct:
            fields = [(result.name, _type_of_result(result)) for result in calculation.results]
            self._output: Any = type("Output", (ctypes.Structure,), {"_fields_": fields})
        else:
            self._output = _type_of_result(calculation.results[0])

    def rows(self, given: Sequence[Any]) -> List[Row]:
        """The results of each call: of one, or of one for each row where columns of cells are given."""
        parameters = self.calculation.parameters
        if len(given) > len(parameters):
            raise too_many(parameters, len(given))
        faults = Faults()
        values: List[Any] = []
        columns: Dict[int, List[Union[Cell, Refused]]] = {}
        for place, (parameter, value) in enumerate(zip_longest(parameters, given)):
            if parameter.kind != "list" and isinstance(value, tuple):
                try:
                    columns[place] = column(parameter, value)
                    value = columns[place][0]
                except Refused as refused:
                    faults.found += refused.faults
            elif parameter.kind != "list" and value is not None:
                try:
                    value = single(parameter, value)
                except Refused as refused:
                    value = refused
            values.append(value)
        faults.check()
        count = max((len(cells) for cells in columns.values()), default=1)
        if count == 1:
            return [self._attempt(values)]
        for place, cells in columns.items():
            if len(cells) not in (1, count):
                message = "It has {} rows, and another argument has {}.".format(len(cells), count)
                faults.add(parameters[place].name, message, "Give columns of one length.", "wrong-type")
        faults.check()
        long = {place: cells for place, cells in columns.items() if len(cells) == count}
        while count > EMPTY_ROWS and all(cells[count - 1] is None for cells in long.values()):
            count -= 1
        found: List[Row] = []
        for row in range(count):
            for place, cells in long.items():
                values[place] = cells[row]
            is_empty = all(values[place] is None for place in long)
            found.append(None if is_empty else self._attempt(values))
        return found

    def _attempt(self, values: Sequence[Any]) -> Union[Refused, Tuple[Any, ...]]:
        try:
            return self.calculate(values)
        except Refused as refused:
            return refused

    def calculate(self, values: Sequence[Any]) -> Tuple[Any, ...]:
        """The results of one call, as cells. The values are those of the parameters in order."""
        faults = Faults()
        measures = self._measures_of(values)
        arguments: List[Any] = []
        lists: Dict[str, Tuple[Parameter, List[ListRow]]] = {}
        for parameter, value in zip(self.calculation.parameters, values):
            if parameter.kind == "list":
                rows = rows_of_list(parameter, value, faults)
                if rows is None and not faults.found:
                    _missing(parameter, faults)
                if rows:
                    lists[parameter.name] = (parameter, rows)
                arguments += _c_list(parameter, rows, measures, faults)
            elif isinstance(value, Refused):
                faults.found += value.faults
            elif value is None:
                _missing(parameter, faults)
                arguments.append(_OMITTED[parameter.kind])
            else:
                arguments.append(_READ[parameter.kind](parameter, value, measures, faults))
        faults.check()
        output, error = self._output(), ctypes.c_void_p()
        # `arguments` keeps what C reads until the call is over.
        passed = arguments
        if self._input is not None:
            passed = [ctypes.byref(self._input(ctypes.sizeof(self._input), *arguments))]
        if self._call(*passed, ctypes.byref(output), ctypes.byref(error)) != OK:
            raise Refused([_in_sheet(fault, lists) for fault in take_faults(error)])
        cells: List[Any] = []
        for result in self.calculation.results:
            value = getattr(output, result.name) if self.calculation.gives_struct else output.value
            cells += _cells_of(result, value)
        return tuple(cells)

    def _measures_of(self, values: Sequence[Any]) -> int:
        """The system of measures of the call, which its amounts as texts are in."""
        for place in self.measures:
            word, words = values[place], self.calculation.parameters[place].words
            if isinstance(word, str) and word.lower() in words:
                return words.index(word.lower()) + 1
        return 0


def too_many(parameters: Sequence[Parameter], given: int) -> Refused:
    names = ", ".join(parameter.name for parameter in parameters)
    message = "It takes {} arguments, not {}: {}.".format(len(parameters), given, names)
    return refuse("", message, "", "wrong-type")


def _type_of_result(result: Result) -> Any:
    if result.kind == "list":
        return ctypes.c_uint32 * result.places
    return _TYPES[result.kind]


def _missing(parameter: Parameter, faults: Faults) -> None:
    if not parameter.optional:
        faults.add(parameter.name, "It is missing.", parameter.text, "missing-field")


def _wrong_type(path: str, value: Cell, wanted: str, faults: Faults) -> None:
    message = "It is {}; it must be {}.".format(_NAME_OF_TYPE[type(value)], wanted)
    faults.add(path, message, "", "wrong-type")


def _number(parameter: Parameter, value: Cell, measures: int, faults: Faults) -> float:
    return _amount(parameter.name, parameter.amount_unit, value, measures, faults)


def _amount(path: str, unit: Optional[str], value: Cell, measures: int, faults: Faults) -> float:
    if isinstance(value, float):
        if value == OMITTED:
            faults.add(path, "It is {}, which no number is.".format(value), "", "out-of-range")
        return value
    if not isinstance(value, str) or unit is None:
        _wrong_type(path, value, "a number, or an amount as a text" if unit else "a number", faults)
        return 0.0
    try:
        return convert(value, unit, measures)
    except Refused as refused:
        faults.take(refused, path)
        return 0.0


def _count(parameter: Parameter, value: Cell, measures: int, faults: Faults) -> int:
    if not isinstance(value, float):
        _wrong_type(parameter.name, value, "a whole number", faults)
    elif value.is_integer() and 0 <= value < OMITTED_COUNT:
        return int(value)
    else:
        message = "It is {}; it must be a whole number: {}.".format(decimal(value), parameter.allowed)
        faults.add(parameter.name, message, "", "out-of-range")
    return 0


def _word(parameter: Parameter, value: Cell, measures: int, faults: Faults) -> int:
    if not isinstance(value, str):
        _wrong_type(parameter.name, value, "a word", faults)
    elif value.lower() in parameter.words:
        return parameter.words.index(value.lower()) + 1
    else:
        message = "There is no word `{}`.".format(value)
        faults.add(parameter.name, message, "Known: {}.".format(", ".join(parameter.words)), "unknown-word")
    return 0


def _text(parameter: Parameter, value: Cell, measures: int, faults: Faults) -> bytes:
    if isinstance(value, str):
        return c_text(value)
    wanted = "a text with its unit, or two cells, a number and its unit" if parameter.is_amount else "a text"
    _wrong_type(parameter.name, value, wanted, faults)
    return b""


_READ: Dict[str, Any] = {"number": _number, "count": _count, "word": _word, "text": _text}


def _c_list(parameter: Parameter, rows: Optional[List[ListRow]], measures: int, faults: Faults) -> List[Any]:
    """The pointer and the count of a list."""
    if rows is None:
        return [None, 0]
    numbers = []
    for row in rows:
        for index, (of_column, cell) in enumerate(zip(parameter.columns, row.cells), 1):
            path = place_in_list(parameter, row.place, index)
            if cell is None:
                faults.add(path, "It is missing.", of_column.text, "missing-field")
            else:
                numbers.append(_amount(path, of_column.amount_unit, cell, measures, faults))
    array = (ctypes.c_double * len(numbers))(*numbers)
    # A pointer that keeps its array.
    return [ctypes.cast(array, ctypes.c_void_p), len(rows)]


def _in_sheet(fault: Fault, lists: Dict[str, Tuple[Parameter, List[ListRow]]]) -> Fault:
    """A fault with its place in a list as the sheet has it: C counts from 0, and has no empty rows."""
    name, *places = fault.path.split("/")
    if name not in lists or not places or not all(place.isdecimal() for place in places):
        return fault
    parameter, rows = lists[name]
    row = int(places[0])
    if row >= len(rows):
        return fault
    column = int(places[1]) + 1 if len(places) > 1 else 1
    path = place_in_list(parameter, rows[row].place, column)
    if len(places) == 1 and len(parameter.columns) > 1:
        path = "{} row {}".format(parameter.name, rows[row].place)
    return fault._replace(path=path)


def _cells_of(result: Result, value: Any) -> List[Any]:
    if result.kind == "list":
        return [float(count) for count in value]
    if result.kind == "number":
        return [value if value == value else error_of_calc(NOT_KNOWN)]
    if result.kind == "count":
        return [float(value) if value != OMITTED_COUNT else error_of_calc(NOT_KNOWN)]
    return [result.words[value - 1] if value > 0 else error_of_calc(NOT_KNOWN)]


def table_of(function: Function, given: Sequence[Any]) -> Tuple[Tuple[Any, ...], ...]:
    """The results as cells: a row for each call."""
    try:
        rows = function.rows(given)
    except Refused as refused:
        rows = [refused]
    return tuple([row if isinstance(row, tuple) else _without_results(function, row) for row in rows])


def _without_results(function: Function, row: Optional[Refused]) -> Tuple[Any, ...]:
    return ("" if row is None else error_of_calc(REFUSED),) * function.width


def reasons(function: Function, given: Sequence[Any]) -> str:
    """Why a call is refused, or with which rows of its columns; an empty text where it is not."""
    try:
        rows = function.rows(given)
    except Refused as refused:
        rows = [refused]
    if len(rows) == 1:
        return str(rows[0]) if isinstance(rows[0], Refused) else ""
    refused_rows = [(place, row) for place, row in enumerate(rows, 1) if isinstance(row, Refused)]
    return "\n".join("row {}: {}".format(place, fault) for place, row in refused_rows for fault in row.faults)
