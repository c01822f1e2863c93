"""Requests from Python values, books and plans, and what must not be done with them."""

from __future__ import annotations

import dataclasses
import gc
import json
from collections.abc import Callable
from pathlib import Path
from types import MappingProxyType
from typing import Any

import pytest

import pourwright as pw

from .conftest import DEMO


def test_three_ways_to_ask() -> None:
    expected = {"calculate": "convert", "amount": "295.735295625 mL", "value": 295.735295625, "unit": "mL"}
    assert pw.calculate("convert", amount="1 1/4 cup", to="mL") == expected
    assert pw.calculate({"calculate": "convert", "amount": "1 1/4 cup", "to": "mL"}) == expected
    assert json.loads(pw.answer_text('{"calculate":"convert","amount":"1 1/4 cup","to":"mL"}')) == {"result": expected}
    assert pw.calculate(MappingProxyType({"calculate": "convert", "amount": "1 1/4 cup"}), to="mL") == expected


def test_dataclasses_are_documents() -> None:
    @dataclasses.dataclass
    class Salt:
        kind: str
        density: str
        as_scooped: str | None = None

    answer = pw.calculate("dose", material=Salt("salt", "2.165 g/mL", "1.22 g/mL"), amount="1/4 cup")
    assert answer["mass"]["value"] == pytest.approx(1.22 * 236.5882365 / 4)
    # What is None is left out.
    with pytest.raises(pw.PourwrightError) as caught:
        pw.calculate("dose", material=Salt("salt", "2.165 g/mL"), amount="1/4 cup")
    assert caught.value.code == "missing-property"


def test_fields_that_are_keywords() -> None:
    timing = {"mix": "240 g", "from": "20 °C", "to": "170 °C", "time": "150 s"}
    answer = pw.calculate(
        "heat",
        timings=[timing],
        specific_heat="1.9 J/(g.K)",
        mix="240 g",
        from_="20 °C",
        shot_window=["163 °C", "177 °C"],
    )
    assert answer["time"]["value"] > 0
    assert answer["cautions"]


def test_what_is_none_is_left_out() -> None:
    assert pw.calculate("convert", amount="1 cup", to="mL", measures=None)["value"] == 236.5882365


def test_plan_is_a_mapping(demo_book: bytes, demo_orders: bytes) -> None:
    plan = pw.Book(demo_book).plan(demo_orders)
    assert list(plan) == list(plan.to_dict())
    assert len(plan) == len(plan.to_dict())
    assert plan["pots"] == json.loads(plan.json())["pots"]
    assert plan["cautions"]
    assert "2027-03-02" in repr(plan)
    plan.to_dict()["pots"].clear()
    assert plan["pots"]


def test_sheet(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    sheet = book.sheet(demo_orders)
    assert "ORDER OF WORK" in sheet
    assert max(map(len, sheet.splitlines())) <= 80
    assert sheet == book.plan(demo_orders).sheet()


def test_load(tmp_path: Path) -> None:
    assert pw.Book.load(DEMO / "book.json").plan((DEMO / "orders.json").read_text("utf-8"))["pots"]
    assert pw.Book.load(str(DEMO / "book.json"))
    with pytest.raises(FileNotFoundError):
        pw.Book.load(tmp_path / "none.json")
    with pytest.raises(pw.PourwrightError) as caught:
        pw.Book.load(DEMO / "orders.json")
    assert "unknown-field" in {fault.code for fault in caught.value.faults}


def test_a_book_is_closed(shop: dict[str, Any], orders: dict[str, Any]) -> None:
    with pw.Book(shop) as book:
        plan = book.plan(orders)
        mix = pw.Mix.of_book(book)
        assert not book.closed
    assert book.closed
    book.close()
    with pytest.raises(ValueError, match="The book is closed"):
        book.plan(orders)
    with pytest.raises(ValueError, match="The book is closed"):
        book.sheet(orders)
    with pytest.raises(ValueError, match="The book is closed"):
        pw.Mix.of_book(book)
    with pytest.raises(ValueError, match="The book is closed"), book:
        pass
    assert repr(book) == "<Book, closed>"
    # What was made from it lives on.
    del book
    gc.collect()
    assert "BENCH SHEET" in plan.sheet()
    mix.add("base", 1.0)
    assert mix.mass_g == 1.0


def test_a_mix() -> None:
    base = pw.Material(name="base", kind="plastisol", density_g_per_ml=1.03, fused_g_per_ml=1.05)
    salt = pw.Material(name="salt", kind="salt", density_g_per_ml=2.165, as_scooped_g_per_ml=1.22)
    mix = pw.Mix.of_materials([base, salt])
    mix.add("base", 206.0)
    mix.add("salt", 43.3)
    assert mix.mass_g == pytest.approx(249.3)
    assert mix.volume_ml("liquid") == pytest.approx(200.0 + 20.0)
    assert mix.density_g_per_ml("liquid", voids=0.1) == pytest.approx(249.3 / 220.0 * 0.9)
    drawn = mix.draw(mix.mass_g / 4)
    assert drawn.mass_of("salt") == pytest.approx(43.3 / 4)
    assert mix.mass_of("base") == pytest.approx(206.0 * 3 / 4)
    mix.merge(drawn)
    mix.scale(2.0)
    assert mix.mass_g == pytest.approx(2 * 249.3)
    misuses: list[tuple[Callable[[], object], str | None]] = [
        (lambda: mix.merge(mix), "mix-into-itself"),
        (lambda: mix.add("sand", 1.0), "mix-no-such-material"),
        (lambda: mix.draw(1e6), None),
        (lambda: mix.add("base", -1.0), None),
        (lambda: pw.Mix.of_materials([base, base]), "material-name-twice"),
    ]
    for misuse, code in misuses:
        with pytest.raises(pw.PourwrightError) as caught:
            misuse()
        assert code is None or caught.value.code == code
    with mix:
        pass
    assert mix.closed and repr(mix) == "<Mix, closed>"
    with pytest.raises(ValueError, match="The mix is closed"):
        mix.add("base", 1.0)
    with pytest.raises(ValueError, match="The mix is closed"):
        drawn.merge(mix)


def test_nothing_leaks(shop: dict[str, Any], orders: dict[str, Any]) -> None:
    """Thousands of books, plans, errors and mixes leave the memory of the process where it was."""
    import resource

    def rounds(count: int) -> int:
        for _ in range(count):
            book = pw.Book(shop)
            book.plan(orders).json()
            pw.Mix.of_book(book).add("base", 1.0)
            with pytest.raises(pw.PourwrightError):
                pw.calculate("convert", amount="6 oz", to="g")
        gc.collect()
        return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss

    rounds(100)
    before = rounds(100)
    # A leak of one book a round would be tens of kilobytes each.
    assert rounds(1000) - before < 4096
