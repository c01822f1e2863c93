"""Conversions: exact definitions, in Pint's registry on fractions, and by hand on Python's fractions."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pint
import pytest
from hypothesis import given, seed, settings
from hypothesis import strategies as st

import pourwright as pw

# Pint 0.25.3, its own default registry, computing on fractions: every US unit by its definition.
PINT: Any = pint.UnitRegistry(non_int_type=Fraction)

PAIRS = [
    ("cup", "cup", "mL", "milliliter"),
    ("pt", "pint", "mL", "milliliter"),
    ("qt", "quart", "L", "liter"),
    ("gal", "gallon", "L", "liter"),
    ("tbsp", "tablespoon", "mL", "milliliter"),
    ("tsp", "teaspoon", "mL", "milliliter"),
    ("fl oz", "fluid_ounce", "tsp", "teaspoon"),
    ("tsp", "teaspoon", "cup", "cup"),
    ("lb", "pound", "g", "gram"),
    ("oz wt", "ounce", "g", "gram"),
    ("lb", "pound", "oz wt", "ounce"),
    ("g/mL", "gram/milliliter", "lb/gal", "pound/gallon"),
    ("in", "inch", "mm", "millimeter"),
    ("ft", "foot", "m", "meter"),
    ("inHg", "inch_Hg", "kPa", "kilopascal"),
    ("psi", "psi", "kPa", "kilopascal"),
]


@pytest.mark.parametrize(("unit", "in_pint", "to", "to_in_pint"), PAIRS)
@pytest.mark.parametrize("number", ["1", "1/3", "7", "0.1", "12.5", "1000"])
def test_pint_gives_the_same_bits(unit: str, in_pint: str, to: str, to_in_pint: str, number: str) -> None:
    exact = PINT.Quantity(Fraction(number), in_pint).to(to_in_pint).magnitude
    assert isinstance(exact, Fraction)
    assert pw.convert(f"{number} {unit}", to) == float(exact)


@pytest.mark.parametrize("degrees", ["-40", "0", "68", "98.6", "325", "350.5"])
def test_temperatures(degrees: str) -> None:
    # Pint converts temperatures with offsets on floats.
    floats: Any = pint.UnitRegistry()
    kelvin = floats.Quantity(float(degrees), "degF").to("kelvin").magnitude
    assert pw.convert(f"{degrees} °F", "K") == pytest.approx(kelvin, rel=1e-15)
    assert pw.convert(f"{degrees} °F", "°C") == float((Fraction(degrees) - 32) * 5 / 9)


# The definitions themselves: a gallon is 231 cubic inches, an inch 25.4 mm, a pound 0.453 592 37 kg.
GALLON_ML = 231 * Fraction("2.54") ** 3
EXACT = {
    "gal": GALLON_ML,
    "qt": GALLON_ML / 4,
    "pt": GALLON_ML / 8,
    "cup": GALLON_ML / 16,
    "fl oz": GALLON_ML / 128,
    "tbsp": GALLON_ML / 256,
    "tsp": GALLON_ML / 768,
    "mL": Fraction(1),
    "L": Fraction(1000),
}


@seed(20270302)
@settings(max_examples=500, deadline=None, database=None)
@given(
    whole=st.integers(0, 999),
    parts=st.tuples(st.integers(1, 63), st.integers(2, 64)).filter(lambda parts: parts[0] < parts[1]),
    unit=st.sampled_from(sorted(EXACT)),
    to=st.sampled_from(sorted(EXACT)),
)
def test_fractions_give_the_same_bits(whole: int, parts: tuple[int, int], unit: str, to: str) -> None:
    number = whole + Fraction(*parts)
    written = f"{whole} {parts[0]}/{parts[1]}" if whole else f"{parts[0]}/{parts[1]}"
    assert pw.convert(f"{written} {unit}", to) == float(number * EXACT[unit] / EXACT[to])


@seed(20270302)
@settings(max_examples=300, deadline=None, database=None)
@given(value=st.floats(1e-6, 1e6), unit=st.sampled_from(sorted(EXACT)), to=st.sampled_from(sorted(EXACT)))
def test_numbers_are_as_near_as_two_roundings(value: float, unit: str, to: str) -> None:
    exact = Fraction(value) * EXACT[unit] / EXACT[to]
    assert pw.convert_number(value, unit, to) == pytest.approx(float(exact), rel=5e-16)
