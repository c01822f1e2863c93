"""What is wrong is said as in every door, and nothing is taken silently."""

from __future__ import annotations

import dataclasses
import datetime
import math
import pickle
from collections.abc import Callable
from decimal import Decimal
from fractions import Fraction
from pathlib import Path
from typing import Any

import numpy as np
import pytest

import pourwright as pw


def test_one_fault() -> None:
    with pytest.raises(pw.PourwrightError) as caught:
        pw.convert("6 oz", "g")
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
        pw.convert("\ud800 cup", "mL")
    assert caught.value.code == "not-utf8"
    with pytest.raises(pw.PourwrightError) as caught:
        pw.calculate("convert", amount="\ud800 cup", to="mL")
    assert caught.value.code == "not-utf8"
    with pytest.raises(ValueError, match="NUL"):
        pw.convert("1 cup\0", "mL")
    with pytest.raises(pw.PourwrightError) as caught:
        pw.convert("1" * 5000 + " cup", "mL")
    assert caught.value.code == "too-large"


def test_words_are_named() -> None:
    with pytest.raises(ValueError, match="us-customary, us-label, metric, imperial"):
        pw.convert_number(1.0, "cup", "mL", measures="french")  # type: ignore[arg-type]
    with pytest.raises(ValueError, match="shore-00"):
        pw.hardness([(0.0, 50.0), (0.1, 40.0)], "rockwell", 0.05)  # type: ignore[arg-type]


def test_a_request_of_another_type() -> None:
    for request in (5, b"convert", None):
        with pytest.raises(TypeError, match="request must be the name of a calculation, or a mapping"):
            pw.calculate(request)  # type: ignore[call-overload]


SALT: Any = pw.Material(name="salt", kind="salt", density_g_per_ml="2.165 g/mL")  # type: ignore[arg-type]
MIX: Any = pw.Mix.of_materials([pw.Material(name="base", kind="plastisol", density_g_per_ml=1.03)])


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda p: p.mass_of_volume("1/4 cup", 1.0), "volume_ml must be a real number, not str. Amounts .* convert"),
        (lambda p: p.mass_of_volume(1.0, None), "density_g_per_ml must be a real number, not NoneType"),
        (lambda p: p.mass_of_volume(np.ones(2), 1.0), "volume_ml must be a real number, not ndarray. .* pourwright.columns"),
        (lambda p: p.mass_of_volume(1j, 1.0), "volume_ml must be a real number, not complex"),
        (lambda p: p.convert_number("1/4", "cup", "mL"), "value must be a real number"),
        (lambda p: p.convert_number(1.0, 5, "mL"), "unit must be of type str, not int"),
        (lambda p: p.convert_number(1.0, "cup", "mL", measures=["metric"]), "measures must be of type str, not list"),
        (lambda p: p.convert(1.5, "mL"), "amount must be of type str, not float"),
        (lambda p: p.convert(b"1 cup", "mL"), "amount must be of type str, not bytes"),
        (lambda p: p.Conversion("cup", "mL")("2"), "value must be a real number"),
        (lambda p: p.shots(24.0, 4), "pieces must be a whole number, not float"),
        (lambda p: p.shots(24, "4"), "cavities must be a whole number, not str"),
        (lambda p: p.shots(24, 4, rejects="5 %"), "rejects must be a real number"),
        (lambda p: p.shots(24, 4, rejects=0.05, confidence="95 %"), "confidence must be a real number"),
        # cffi would take these for 24.
        (lambda p: p.shots(np.float32(24.5), 4), "pieces must be a whole number, not float32"),
        (lambda p: p.shots(Decimal("24.5"), 4), "pieces must be a whole number, not Decimal"),
        (lambda p: MIX.add("base", "1 cup"), "mass_g must be a real number"),
        (lambda p: MIX.add(1, 1.0), "material must be of type str"),
        (lambda p: MIX.merge(5), "other must be of type Mix"),
        (lambda p: p.Mix.of_materials([SALT]), "materials/0/density_g_per_ml must be a real number"),
        (lambda p: p.Mix.of_materials(["salt"]), "materials/0 must be of type Material, not str"),
        (lambda p: p.Mix.of_book({}), "book must be of type Book"),
    ],
)  # fmt: skip
def test_a_wrong_type_is_named(call: Callable[[Any], object], words: str) -> None:
    with pytest.raises(TypeError, match=words):
        call(pw)


@pytest.mark.parametrize(
    ("call", "code", "path"),
    [
        (lambda p: p.shots(-1, 4), "out-of-range", "/pieces"),
        (lambda p: p.shots(2**32, 4), "out-of-range", "/pieces"),
        (lambda p: p.shots(24, 10**5000), "out-of-range", "/cavities"),
        (lambda p: p.mass_of_volume(1.0, 10**400), "not-finite", "/density_g_per_ml"),
        (lambda p: p.mass_of_volume(Fraction(10**400), 1.0), "not-finite", "/volume_ml"),
        (lambda p: p.mass_of_volume(Decimal("sNaN"), 1.0), "not-finite", "/volume_ml"),
    ],
)
def test_what_c_cannot_hold_has_a_path(call: Callable[[Any], object], code: str, path: str) -> None:
    with pytest.raises(pw.PourwrightError) as caught:
        call(pw)
    assert (caught.value.code, caught.value.path) == (code, path)


def test_numbers_of_other_kinds() -> None:
    for number in (2, np.float32(2), np.int8(2), Decimal(2), Fraction(2), np.array(2.0)):
        assert pw.mass_of_volume(number, 1.5) == 3.0  # type: ignore[arg-type]
    assert pw.shots(np.int64(24), 4) == pw.shots(24, 4)
    assert pw.density_of_parts(iter([(1.0, 1.0), (1.0, 1.0)])) == pw.density_of_parts([(1.0, 1.0), (1.0, 1.0)])


def test_a_point_has_two_numbers() -> None:
    """cffi fills up a shorter one with a 0."""
    for wrong in ([(0, 60), (0.1,)], [(0, 60), ()], [(0, 60), 0.1], [(0, 60), (0.1, 40, 3)]):
        with pytest.raises(TypeError, match="points/1 must be 2 numbers"):
            pw.hardness(wrong, "shore-00", 0.05)  # type: ignore[arg-type]
    assert pw.hardness(iter([(0, 60), (0.1, 40)]), "shore-00", 0.1) == 40


def test_what_cannot_stand_in_a_document_has_a_path() -> None:
    @dataclasses.dataclass
    class Amount:
        value: Any
        unit: str

    for wrong, words in (
        ({"1 cup"}, "/amount: A set cannot be part of a document"),
        ({"value": [1, b"2"]}, "/amount/value/1: A bytes cannot"),
        ({"a/b": Path("x")}, "/amount/a~1b: A .*Path cannot"),
        (Amount(object(), "g"), "/amount/value: A object cannot"),
        ([datetime.datetime(2027, 3, 2)], "/amount/0: A datetime cannot"),
        ([{(1,): 2}], "/amount/0: A tuple cannot be a name"),
    ):
        with pytest.raises(TypeError, match=words):
            pw.calculate("convert", amount=wrong, to="mL")
    with pytest.raises(TypeError, match=r"^A tuple cannot be a name"):
        pw.Book({(1,): 2})  # type: ignore[dict-item]
    for number in (math.nan, np.float32("inf"), Decimal("NaN"), Decimal("sNaN"), Decimal("1e400"), Fraction(10**400)):
        for amount in ({"value": number, "unit": "g"}, Amount(number, "g")):
            with pytest.raises(pw.PourwrightError) as caught:
                pw.calculate("convert", amount=amount, to="kg")
            assert (caught.value.code, caught.value.path) == ("not-finite", "/amount/value")


def test_numbers_of_other_kinds_in_documents() -> None:
    for number in (np.float64(0.5), np.float32(0.5), Fraction(1, 2), Decimal("0.50")):
        answer = pw.calculate("convert", amount={"value": number, "unit": "kg"}, to="g")
        assert answer["value"] == 500.0
    assert pw.calculate("convert", amount={"value": np.int64(2), "unit": "kg"}, to="g")["value"] == 2000.0


def test_documents_that_have_no_end() -> None:
    circular: dict[str, Any] = {"calculate": "convert"}
    circular["ext"] = circular
    with pytest.raises((ValueError, RecursionError)):
        pw.calculate(circular)
