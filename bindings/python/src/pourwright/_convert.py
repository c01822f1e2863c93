"""Conversions prepared once for many numbers."""

from __future__ import annotations

from functools import partial
from typing import Any, final

from ._calculations import MEASURES_WORDS, Measures
from ._call import c_text, checked, number, real, word
from ._native import ffi, lib


@final
class Conversion:
    """A conversion from one unit to another, prepared once for many numbers.

    >>> to_ml = Conversion("cup", "mL")
    >>> to_ml(2.0)
    473.176473

    :func:`pourwright.columns.convert` takes it for whole arrays.
    """

    __slots__ = ("_prepared", "measures", "to", "unit")

    def __init__(self, unit: str, to: str, *, measures: Measures = "us-customary") -> None:
        """Prepares the conversion; arguments and errors are those of :func:`convert_number`."""
        self.unit: str = unit
        self.to: str = to
        self.measures: Measures = measures
        self._prepared: Any = ffi.new("pour_conversion *")
        chosen = word(MEASURES_WORDS, "measures", measures)
        checked(lib.pour_conversion_between, c_text("unit", unit), c_text("to", to), chosen, self._prepared)

    def __call__(self, value: float) -> float:
        """The number in the other unit.

        Raises:
            PourwrightError: Below zero (a temperature: below absolute zero), not finite, or beyond
                the range of a float.
        """
        return number(lib.pour_convert_with, self._prepared, real("value", value))

    def __reduce__(self) -> tuple[partial[Conversion], tuple[str, str]]:
        return partial(Conversion, measures=self.measures), (self.unit, self.to)

    def __repr__(self) -> str:
        return f"Conversion({self.unit!r}, {self.to!r}, measures={self.measures!r})"
