"""Calls laid out in a sheet, many at once: arguments in cells, a formula for each call, results read back."""

import struct as bytes_of
from decimal import Decimal

# A formula has its results from this column on, and its reason in the column before.
RESULTS, WHY, ARGUMENTS = 2, 1, 40


def letters(column):
    """The name of a column: 0 is A."""
    name = ""
    column += 1
    while column:
        column, rest = divmod(column - 1, 26)
        name = chr(ord("A") + rest) + name
    return name


def cell(sheet, column, row):
    return f"$'{sheet}'.{letters(column)}{row + 1}"


def area(sheet, column, row, columns, rows):
    """A range, even of one cell: Calc hands it over otherwise than a single cell."""
    return f"{cell(sheet, column, row)}:{letters(column + columns - 1)}{row + rows}"


def bits(value):
    return bytes_of.pack("<d", value).hex() if isinstance(value, float) else value


def decimal(number):
    return format(Decimal(repr(float(number))), "f")


class Error:
    """An error of a cell, by its number: 519 is #VALUE!, 32767 is #N/A."""

    def __init__(self, number):
        self.number = number

    def __eq__(self, other):
        return isinstance(other, Error) and other.number == self.number

    def __hash__(self):
        return hash(self.number)

    def __repr__(self):
        return f"Error({self.number})"


VALUE, NOT_AVAILABLE = Error(519), Error(32767)


def read(cells):
    """The values of a range, row by row: numbers, texts, errors."""
    found = [list(row) for row in cells.getDataArray()]
    for at, row in enumerate(found):
        for column, value in enumerate(row):
            if value is None:
                row[column] = Error(cells.getCellByPosition(column, at).getError())
    return found


class Calls:
    """Calls of functions of the add-in. Arguments go into cells: None is an empty cell, a tuple of rows a range, and a Formula
    stands in the call as it is written."""

    def __init__(self, document):
        self.document = document
        self.sheets = document.Sheets
        self.count = 0

    def run(self, calls, widths=None):
        """The results of calls, each a name and its arguments, and the reason of each. A call is a formula of a cell, or, where
        `widths` has its number of results, an array formula of a row."""
        self.count += 1
        name, lists = f"calls{self.count}", f"lists{self.count}"
        for sheet in (name, lists):
            self.sheets.insertNewByName(sheet, self.sheets.Count)
        most = max((len(arguments) for _, arguments in calls), default=0)
        rows, blocks, texts, next_row = [], [], [], 0
        for row, (function, arguments) in enumerate(calls):
            cells, given = [], []
            for place, argument in enumerate(arguments):
                value = ""
                if isinstance(argument, Formula):
                    given.append(argument.text)
                elif isinstance(argument, tuple):
                    blocks.append((next_row, argument))
                    given.append(area(lists, 0, next_row, len(argument[0]), len(argument)))
                    next_row += len(argument)
                elif argument is None:
                    # Where it may be omitted: an argument that is left out.
                    given.append("")
                elif argument == 0:
                    given.append("{0}")
                else:
                    value = argument
                    given.append(cell(name, ARGUMENTS + place, row))
                cells.append(value)
            rows.append((*cells, *[""] * (most - len(cells))))
            while given and not given[-1]:
                given.pop()
            texts.append((function, given))
        sheet, at = self.sheets.getByName(name), self.sheets.getByName(lists)
        if calls and most:
            sheet.getCellRangeByPosition(ARGUMENTS, 0, ARGUMENTS + most - 1, len(calls) - 1).setDataArray(tuple(rows))
        if blocks:
            across = max(len(block[0]) for _, block in blocks)
            filled = [
                tuple("" if value is None else value for value in (*line, *[None] * (across - len(line))))
                for _, block in blocks
                for line in block
            ]
            at.getCellRangeByPosition(0, 0, across - 1, len(filled) - 1).setDataArray(tuple(filled))
        reasons = tuple((f"=POUR_WHY({'; '.join([quoted(function), *given])})",) for function, given in texts)
        sheet.getCellRangeByPosition(WHY, 0, WHY, len(calls) - 1).setFormulaArray(reasons)
        formulas = [f"={function}({'; '.join(given)})" for function, given in texts]
        if widths:
            for row, (formula, width) in enumerate(zip(formulas, widths)):
                sheet.getCellRangeByPosition(RESULTS, row, RESULTS + width - 1, row).setArrayFormula(formula)
        else:
            below = tuple((formula,) for formula in formulas)
            sheet.getCellRangeByPosition(RESULTS, 0, RESULTS, len(calls) - 1).setFormulaArray(below)
        most = max(widths or [1])
        found = read(sheet.getCellRangeByPosition(RESULTS, 0, RESULTS + most - 1, len(calls) - 1))
        found = [row[:width] for row, width in zip(found, widths or [1] * len(calls))]
        why = [line[0] for line in read(sheet.getCellRangeByPosition(WHY, 0, WHY, len(calls) - 1))]
        for sheet_name in (name, lists):
            self.sheets.removeByName(sheet_name)
        return found, why


def quoted(text):
    return '"' + text.replace('"', '""') + '"'


class Formula:
    """An argument as it is written in a formula."""

    def __init__(self, text):
        self.text = text
