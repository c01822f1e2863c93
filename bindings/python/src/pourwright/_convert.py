"""Units: numbers and written amounts from one to another."""

from __future__ import annotations

from functools import partial
from typing import Any, final

from ._call import MEASURES, Measures, c_text, checked, number, real, word
from ._native import ffi, lib


def convert(value: float, unit: str, to: str, *, measures: Measures = "us-customary") -> float:
    """Converts a number of one unit into another.

    >>> convert(1.25, "cup", "mL")
    295.735295625

    Args:
        value: The number; 0 or above, a temperature above absolute zero.
        unit: Its unit, by trade symbol or UCUM code: ``"cup"``, ``"[tsp_us]"``, ``"g/mL"``.
        to: The unit that is wanted, of the same dimension.
        measures: What a cup, a spoon and a fluid ounce hold where a unit does not say.

    Raises:
        PourwrightError: A text that is no unit, can be read as several (``"oz"``), or measures
            something else; a number that cannot be.
    """
    return number(
        lib.pour_convert,
        real("value", value),
        c_text("unit", unit),
        c_text("to", to),
        word(MEASURES, "measures", measures),
    )


def convert_amount(amount: str, to: str, *, measures: Measures = "us-customary") -> float:
    """Converts an amount as a person writes it, exactly, and rounds once.

    >>> convert_amount("1/4 tsp", "mL")
    1.2322303984375

    Args:
        amount: A number and its unit: ``"1 1/4 cup"``, ``"330 °F"``, ``"0.5 fl oz"``.
        to: The unit that is wanted, of the same dimension.
        measures: What a cup, a spoon and a fluid ounce hold where a unit does not say.

    Raises:
        PourwrightError: What cannot be read, or can be read two ways (``"6 oz"``, ``"1,25 cup"``), with
            both readings in the message.
    """
    return number(
        lib.pour_convert_amount,
        c_text("amount", amount),
        c_text("to", to),
        word(MEASURES, "measures", measures),
    )


@final
class Conversion:
    """The way from one unit to another, prepared once for many numbers.

    >>> to_ml = Conversion("cup", "mL")
    >>> to_ml(2.0)
    473.176473

    :func:`pourwright.columns.convert` takes it for whole arrays.
    """

    __slots__ = ("_prepared", "measures", "to", "unit")

    def __init__(self, unit: str, to: str, *, measures: Measures = "us-customary") -> None:
        """Prepares the conversion; arguments and errors are those of :func:`convert`."""
        self.unit, self.to, self.measures = unit, to, measures
        self._prepared: Any = ffi.new("pour_conversion *")
        chosen = word(MEASURES, "measures", measures)
        checked(lib.pour_conversion_between, c_text("unit", unit), c_text("to", to), chosen, self._prepared)

    def __call__(self, value: float) -> float:
        """The number in the other unit.

        Raises:
            PourwrightError: Below zero (a temperature: below absolute zero), not finite, or beyond
                what a float holds.
        """
        return number(lib.pour_convert_with, self._prepared, real("value", value))

    def __reduce__(self) -> tuple[partial[Conversion], tuple[str, str]]:
        return partial(Conversion, measures=self.measures), (self.unit, self.to)

    def __repr__(self) -> str:
        return f"Conversion({self.unit!r}, {self.to!r}, measures={self.measures!r})"
