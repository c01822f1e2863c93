"""What the table says of a calculation."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, auto


class Kind(Enum):
    """The kind of a parameter or a result."""

    NUMBER = auto()
    COUNT = auto()
    TEXT = auto()
    WORD = auto()
    LIST = auto()
    ROWS = auto()


@dataclass(frozen=True, slots=True)
class Cell:
    """A number of each item of a list. An amount as a text is converted to `unit`; without one it must be a number."""

    name: str
    unit: str | None


@dataclass(frozen=True, slots=True)
class Parameter:
    """A parameter: its name, and how it is passed to C."""

    name: str
    kind: Kind
    optional: bool
    unit: str | None
    words: tuple[str, ...] = ()
    cells: tuple[Cell, ...] = ()
    item: str = ""
    count: str = ""


@dataclass(frozen=True, slots=True)
class Result:
    """A result. A list has a fixed number of places."""

    name: str
    kind: Kind
    optional: bool
    words: tuple[str, ...] = ()
    places: int = 0


@dataclass(frozen=True, slots=True)
class Calculation:
    """A calculation, and whether the C library does it for columns, by a struct, with results in a struct."""

    name: str
    parameters: tuple[Parameter, ...]
    results: tuple[Result, ...]
    columnar: bool
    by_struct: bool
    result_struct: bool
