"""What is wrong is said as in every door, and nothing is taken silently."""

from __future__ import annotations

import pickle
from decimal import Decimal
from fractions import Fraction
from typing import Any

import pytest

import pourwright as pw


def test_one_fault() -> None:
    with pytest.raises(pw.PourwrightError) as caught:
        pw.convert_amount("6 oz", "g")
    error = caught.value
    assert error.code == "amount-ambiguous"
    assert error.path == "/amount"
    assert "6 fl oz" in error.message and "6 oz wt" in error.message
    assert error.help == "Write the one that is meant."
    assert error.faults == (pw.Fault(error.code, error.path, error.message, error.help),)
    assert str(error) == f"/amount: {error.message} {error.help} [amount-ambiguous]"
    assert error.status == 6


def test_all_faults_together(shop: dict[str, Any]) -> None:
    shop["materials"]["base"]["density"] = "6 oz"
    shop["materials"]["blue"]["colour"] = "blue"
    with pytest.raises(pw.PourwrightError) as caught:
        pw.Book(shop)
    paths = [fault.path for fault in caught.value.faults]
    assert len(paths) == 2
    assert str(caught.value).count("\n") == 1


def test_it_is_a_value_error_and_can_be_pickled() -> None:
    with pytest.raises(ValueError) as caught:
        pw.mass_of_volume(-1.0, 1.0)
    again = pickle.loads(pickle.dumps(caught.value))
    assert isinstance(again, pw.PourwrightError)
    assert (again.faults, again.status, str(again)) == (
        caught.value.faults,  # type: ignore[attr-defined]
        caught.value.status,  # type: ignore[attr-defined]
        str(caught.value),
    )


@pytest.mark.parametrize("number", [float("nan"), float("inf"), float("-inf")])
def test_what_is_not_finite(number: float) -> None:
    with pytest.raises(pw.PourwrightError) as caught:
        pw.volume_of_mass(number, 1.0)
    assert (caught.value.code, caught.value.path) == ("not-finite", "/mass_g")
    with pytest.raises(pw.PourwrightError) as caught:
        pw.calculate("convert", amount={"value": number, "unit": "g"}, to="kg")
    assert (caught.value.code, caught.value.path) == ("not-finite", "/amount/value")


def test_text_that_is_none() -> None:
    with pytest.raises(pw.PourwrightError) as caught:
        pw.convert_amount("\ud800 cup", "mL")
    assert caught.value.code == "not-utf8"
    with pytest.raises(pw.PourwrightError) as caught:
        pw.calculate("convert", amount="\ud800 cup", to="mL")
    assert caught.value.code == "not-utf8"
    with pytest.raises(ValueError, match="NUL"):
        pw.convert_amount("1 cup\0", "mL")
    with pytest.raises(pw.PourwrightError) as caught:
        pw.convert_amount("1" * 5000 + " cup", "mL")
    assert caught.value.code == "too-large"


def test_words_are_named() -> None:
    with pytest.raises(ValueError, match='"us-customary", "us-label", "metric", "imperial"'):
        pw.convert(1.0, "cup", "mL", measures="french")  # type: ignore[arg-type]
    with pytest.raises(ValueError, match="shore-00"):
        pw.hardness([(0.0, 50.0), (0.1, 40.0)], 0.05, scale="rockwell")  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "make",
    [
        lambda: pw.salt_mass(pw.Unsalted(base_ml=1, base_g_per_ml=1, salt_g_per_ml=2, mix_g=0), "of-base", 0.1),
        lambda: pw.shot_fill(pw.Shot(cavity_ml=1, cavities=1, cold_g_per_ml=1, share=0)),
        lambda: pw.shots(10, 2, 0.1, 0),
        lambda: pw.dose_mass(pw.Material(name="x", kind="salt", as_scooped_g_per_ml=0), "1 tsp"),
    ],
)
def test_a_zero_is_not_taken_for_nothing_said(make: Any) -> None:
    with pytest.raises(ValueError, match="must not be 0; leave it out"):
        make()


def test_python_type_errors() -> None:
    with pytest.raises(TypeError):
        pw.mass_of_volume("1/4 cup", 1.0)  # type: ignore[arg-type]
    with pytest.raises(TypeError):
        pw.calculate(5)  # type: ignore[call-overload]
    with pytest.raises(TypeError, match="set cannot stand"):
        pw.calculate("convert", amount={"1 cup"}, to="mL")
    with pytest.raises(TypeError, match="Decimal"):
        pw.calculate("convert", amount={"value": Decimal(1), "unit": "g"}, to="kg")
    with pytest.raises(OverflowError):
        pw.shots(-1, 4)


def test_numbers_of_other_kinds_in_documents() -> None:
    import numpy as np

    for number in (np.float64(0.5), np.float32(0.5), Fraction(1, 2)):
        answer = pw.calculate("convert", amount={"value": number, "unit": "kg"}, to="g")
        assert answer["value"] == 500.0
    assert pw.calculate("convert", amount={"value": np.int64(2), "unit": "kg"}, to="g")["value"] == 2000.0


def test_documents_that_have_no_end() -> None:
    circular: dict[str, Any] = {"calculate": "convert"}
    circular["ext"] = circular
    with pytest.raises((ValueError, RecursionError)):
        pw.calculate(circular)
