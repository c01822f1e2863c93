"""What a function is, as the table of functions has it."""

from typing import NamedTuple, Optional, Tuple


class Column(NamedTuple):
    """A number in each row of a list."""

    name: str
    # What an amount as a text is converted to; None where a number must be given.
    amount_unit: Optional[str]
    text: str


class Parameter(NamedTuple):
    name: str
    # number, count, text, word, list; any: what the function itself reads.
    kind: str
    text: str
    unit: Optional[str] = None
    # As of a column.
    amount_unit: Optional[str] = None
    allowed: str = ""
    if_omitted: Optional[str] = None
    optional: bool = False
    # Whether 0 may be given and is something else than the default.
    zero_counts: bool = False
    # A text that is an amount in any unit.
    is_amount: bool = False
    # Of a word; its place is counted from 1.
    words: Tuple[str, ...] = ()
    # Of a list.
    columns: Tuple[Column, ...] = ()


class Result(NamedTuple):
    name: str
    kind: str
    text: str
    words: Tuple[str, ...] = ()
    # Number of counts in a list.
    places: int = 0


class Calculation(NamedTuple):
    name: str
    # Its name in UNO.
    method: str
    # Paragraphs, the summary first.
    text: str
    parameters: Tuple[Parameter, ...]
    results: Tuple[Result, ...]
    # Whether C takes the parameters in a struct, and gives the results in one.
    takes_struct: bool
    gives_struct: bool

    @property
    def width(self) -> int:
        """Number of cells that the results take."""
        return sum(result.places or 1 for result in self.results)


class Own(NamedTuple):
    """A function that is no calculation of the table."""

    name: str
    method: str
    text: str
    parameters: Tuple[Parameter, ...]
    # Whether it is given the document that it is in.
    knows_document: bool
    # Whether it gives one value; a table of cells otherwise.
    gives_one: bool


def shown_name(name: str) -> str:
    """The name of a function in a cell."""
    return "POUR_" + name.upper()
