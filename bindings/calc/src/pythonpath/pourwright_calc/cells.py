"""Cells as Calc hands them over, and how an argument is read from them.

Calc gives a function nothing for an argument that is left out, a number or a text for a value or a single cell, and rows of
numbers and texts for a range or an array. It gives 0 for a single cell that is empty, and an empty text for such a cell in a
range. Dates and truth values are numbers. A cell with an error gives the error itself, before a function is called.
"""

from decimal import Decimal
from typing import Any, List, Optional, Tuple, Union

from .fault import Faults, Refused, refuse
from .parts import Parameter

# Empty rows at the end of a range are given up to this number: a whole column has a million.
EMPTY_ROWS = 10_000

# The content of one cell: nothing, a number or a text.
Cell = Union[None, float, str]


def plain(value: Any) -> Cell:
    """A value of UNO as a cell."""
    if isinstance(value, str):
        return value.strip() or None
    return value if value is None else float(value)


def decimal(number: float) -> str:
    """The shortest decimals of a number, without an exponent: what a person would type."""
    text = format(Decimal(repr(number)), "f")
    return text[:-2] if text.endswith(".0") else text


def joined(number: Cell, unit: Cell, path: str) -> Optional[str]:
    """The amount of two cells, a number and its unit: 2 and cup are `2 cup`."""
    if number is None and unit is None:
        return None
    if number is None:
        raise refuse(
            path, "There is a unit, `{}`, and no number before it.".format(unit), "Enter both.", "missing-field"
        )
    if isinstance(unit, float):
        message = "The unit is the number {}.".format(decimal(unit))
        raise refuse(path, message, "Give two cells, a number and its unit: 2 and cup.", "wrong-type")
    text = number if isinstance(number, str) else decimal(number)
    if unit is None:
        if isinstance(number, str):
            return text
        raise refuse(
            path, "The number {} has no unit behind it.".format(text), "Enter its unit, such as cup.", "missing-field"
        )
    return text + " " + unit


def single(parameter: Parameter, value: Any) -> Cell:
    """The argument that is a value, or a single cell."""
    cell = plain(value)
    if cell == 0.0 and (parameter.optional or parameter.kind in ("word", "text")):
        if parameter.zero_counts:
            message = "0 can be read as the number or as an empty cell, which Calc hands over as 0."
            fix = "For the default, leave the argument out; for the number, write {0}."
            raise refuse(parameter.name, message, fix, "amount-ambiguous")
        return None
    return cell


def takes_amount(parameter: Parameter) -> bool:
    return parameter.amount_unit is not None or parameter.is_amount


def column(parameter: Parameter, rows: Tuple[Tuple[Any, ...], ...]) -> List[Union[Cell, Refused]]:
    """The cells of a range in which one value is asked: one for each row."""
    width = len(rows[0])
    if width == 1:
        return [plain(row[0]) for row in rows]
    if width == 2 and takes_amount(parameter):
        return [attempt_joined(row, parameter.name) for row in rows]
    wanted = "one column, or two: numbers and their units" if takes_amount(parameter) else "one column"
    message = "It is a range of {} columns; it must be {}.".format(width, wanted)
    raise refuse(parameter.name, message, "Give a column. TRANSPOSE makes one of a row.", "wrong-type")


def attempt_joined(row: Tuple[Any, ...], path: str) -> Union[Cell, Refused]:
    try:
        return joined(plain(row[0]), plain(row[1]), path)
    except Refused as refused:
        return refused


class ListRow:
    """A row of a list, and where it is in the range."""

    def __init__(self, place: int, cells: List[Cell]) -> None:
        self.place = place
        self.cells = cells


def rows_of_list(parameter: Parameter, value: Any, faults: Faults) -> Optional[List[ListRow]]:
    """The rows of a list, without those that are empty; None where it is left out."""
    width = len(parameter.columns)
    if not isinstance(value, tuple):
        cell = plain(value)
        if cell is None or cell == 0.0:
            return None
        value = ((cell,),)
    if all(plain(cell) is None for row in value for cell in row):
        return None
    if width == 1 and len(value) == 1 and (len(value[0]) != 2 or not _is_pair(value[0])):
        value = tuple((cell,) for cell in value[0])
    units = sum(column.amount_unit is not None for column in parameter.columns)
    found = len(value[0])
    if found not in (width, width + units):
        names = ", ".join(column.name for column in parameter.columns)
        message = "It is a range of {} columns; it must have {}: {}.".format(found, width, names)
        fix = "Each amount may have a column with its units behind it." if units else ""
        faults.add(parameter.name, message, fix, "wrong-type")
        return None
    rows = []
    for place, row in enumerate(value, 1):
        cells = [plain(cell) for cell in row]
        if all(cell is None for cell in cells):
            continue
        rows.append(ListRow(place, cells if found == width else _with_units(parameter, place, cells, faults)))
    return rows


def _is_pair(row: Tuple[Any, ...]) -> bool:
    number, unit = plain(row[0]), plain(row[1])
    return number is not None and isinstance(unit, str) and not any(letter.isdigit() for letter in unit)


def _with_units(parameter: Parameter, place: int, cells: List[Cell], faults: Faults) -> List[Cell]:
    rest = iter(cells)
    row: List[Cell] = []
    for index, column in enumerate(parameter.columns, 1):
        number = next(rest)
        if column.amount_unit is not None:
            try:
                number = joined(number, next(rest), place_in_list(parameter, place, index))
            except Refused as refused:
                faults.found += refused.faults
                # Its fault is found: any number will do.
                number = 0.0
        row.append(number)
    return row


def place_in_list(parameter: Parameter, place: int, column: int) -> str:
    """Where a number of a list is: rows and columns are counted from 1."""
    if len(parameter.columns) == 1:
        return "{} cell {}".format(parameter.name, place)
    return "{} row {} column {}".format(parameter.name, place, column)
