"""Requests from Python values, books and plans, and what must not be done with them."""

from __future__ import annotations

import copy
import dataclasses
import datetime
import gc
import json
import pickle
import signal
import sys
from collections.abc import Callable
from pathlib import Path
from types import FrameType, MappingProxyType
from typing import Any, assert_type

import pytest

import pourwright as pw
from pourwright import documents

from .conftest import DEMO, ROOT


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


@dataclasses.dataclass
class Line:
    order: str
    mold: str
    formulas: list[str]
    pieces: int
    promised: datetime.date


@dataclasses.dataclass
class Orders:
    format: str
    lines: list[Line]
    shop: str | None = None


def test_dataclasses_are_whole_documents(shop: dict[str, Any], orders: dict[str, Any]) -> None:
    """Type checkers know that, and a date is as it is written."""
    book = pw.Book(shop)
    line = orders["lines"][0] | {"promised": "2027-03-02"}
    plan = book.plan(Orders("pourwright/1.0", [Line(**{**line, "promised": datetime.date(2027, 3, 2)})]))
    assert plan.json() == book.plan({**orders, "lines": [line]}).json()
    assert '"2027-03-02"' in plan.json()


@dataclasses.dataclass
class Timing:
    mix: str
    from_: str
    to: str
    time: str


@pytest.mark.parametrize(
    "timing",
    [
        {"mix": "240 g", "from": "20 °C", "to": "170 °C", "time": "150 s"},
        Timing("240 g", "20 °C", "170 °C", "150 s"),
    ],
)
def test_fields_that_are_keywords(timing: Any) -> None:
    answer = pw.calculate(
        "heat",
        timings=[timing],
        specific_heat="1.9 J/(g.K)",
        mix="240 g",
        heated_from="20 °C",
        shot_window=["163 °C", "177 °C"],
    )
    time = answer["time"]
    assert time is not None and time["value"] > 0
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
    assert plan.get("pot") is None and "pots" in plan


def test_a_plan_never_changes(demo_book: bytes, demo_orders: bytes) -> None:
    plan = pw.Book(demo_book).plan(demo_orders)
    before = plan.to_dict()
    plan.to_dict()["pots"].clear()
    plan["pots"][0]["stages"].clear()
    plan["pots"].clear()
    dict(plan)["lines"].clear()
    assert dict(plan) == before == plan.to_dict() == json.loads(plan.json())


def test_the_parts_of_a_plan_have_types(demo_book: bytes, demo_orders: bytes) -> None:
    """What mypy knows of them; it fails there."""
    plan = pw.Book(demo_book).plan(demo_orders)
    assert_type(plan["pots"], list[documents.Pot])
    assert_type(plan["pots"][0]["cup"]["text"], str)
    assert_type(plan["day"], str | None)
    assert set(plan) == set(documents.PlanDocument.__annotations__)


ACTUALS = {"format": "pourwright/1.0", "pots": {}}


def test_an_open_book_answers(shop: dict[str, Any]) -> None:
    asked: dict[str, Any] = {"formulas": ["sky", "body"], "base_amount": "1 1/2 cup"}
    book = pw.Book(shop)
    expected = pw.calculate("formula", book=shop, **asked)
    assert book.request("formula", **asked) == expected
    assert book.request({"calculate": "formula", **asked}) == expected
    assert book.request({"calculate": "formula"}, **asked, overlap=None) == expected
    assert json.loads(book.answer_text(json.dumps({"calculate": "formula", **asked}))) == {"result": expected}
    assert book.request("convert", amount="1 cup", to="mL")["value"] == 236.5882365
    line = json.dumps({"calculate": "formula", **asked})
    first, second, third = book.answer_lines(f"{line}\n[\n{line}").splitlines()
    assert first == third == book.answer_text(line)
    assert json.loads(second)["faults"][0]["code"] == "not-json"
    with pytest.raises(TypeError, match="one request a line, not list"):
        book.answer_lines([line])  # type: ignore[arg-type]
    misuses: list[tuple[dict[str, Any], str, str]] = [
        ({"calculate": "formula", **asked, "book": shop}, "open-and-given", "/book"),
        ({"calculate": "record", "actuals": ACTUALS}, "missing-field", ""),
        ({"calculate": "formula", "formulas": ["skye"]}, "unknown-name", "/formulas/0"),
    ]
    for request, code, path in misuses:
        with pytest.raises(pw.PourwrightError) as caught:
            book.request(request)
        assert (caught.value.code, caught.value.path) == (code, path)
        assert json.loads(book.answer_text(json.dumps(request)))["faults"][0]["code"] == code
    with pytest.raises(TypeError, match="not list"):
        book.request([])  # type: ignore[call-overload]
    book.close()
    for ask in (
        lambda: book.request("formula", **asked),
        lambda: book.answer_text("{}"),
        lambda: book.answer_lines("{}"),
    ):
        with pytest.raises(ValueError, match="The book is closed"):
            ask()


def test_an_open_plan_answers(shop: dict[str, Any], orders: dict[str, Any]) -> None:
    with pw.Book(shop) as book:
        plan = book.plan(orders)
        expected = pw.calculate("record", book=shop, plan=plan, actuals=ACTUALS)
    # It does not need its book any more.
    assert plan.request("record", actuals=ACTUALS) == expected
    request = json.dumps({"calculate": "record", "actuals": ACTUALS})
    assert json.loads(plan.answer_text(request)) == {"result": expected}
    assert plan.request("formula", formulas=["sky", "body"]) == pw.Book(shop).request(
        "formula", formulas=["sky", "body"]
    )
    with pytest.raises(pw.PourwrightError) as caught:
        plan.request("record", actuals=ACTUALS, plan=plan)
    assert (caught.value.code, caught.value.path) == ("open-and-given", "/plan")


def test_a_plan_is_opened_again(demo_book: bytes, demo_orders: bytes, tmp_path: Path) -> None:
    book = pw.Book(demo_book)
    plan = book.plan(demo_orders)
    record = plan.request("record", actuals=ACTUALS)
    stored = tmp_path / "today.json"
    stored.write_text(plan.json(), "utf-8")
    made = book.request("plan", orders=json.loads(demo_orders))
    forms: list[pw.Document] = [stored, plan.json(), plan, plan.to_dict(), made]
    for document in forms:
        again = pw.Plan.from_json(document)
        assert (again.json(), again.sheet(), again.notes()) == (plan.json(), plan.sheet(), plan.notes())
        assert again.request("record", actuals=ACTUALS) == record
    whole = json.loads(plan.json())
    refused: list[tuple[pw.Document, str]] = [
        ("{}", "wrong-type"),
        ("today.json", "not-json"),
        ({**whole, "made_from": None}, "plan-without-book"),
        ({**whole, "pot": 1}, "unknown-field"),
    ]
    for document, code in refused:
        with pytest.raises(pw.PourwrightError) as caught:
            pw.Plan.from_json(document)
        assert code in {fault.code for fault in caught.value.faults}
    with pytest.raises(FileNotFoundError):
        pw.Plan.from_json(tmp_path / "none.json")


def test_a_plan_has_a_budget(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    within = book.plan(demo_orders, pots=5, thousand_steps=1, stop=lambda: False)
    assert within.json() == book.plan(demo_orders).json()
    budgets: list[tuple[dict[str, Any], str]] = [({"pots": 4}, "budget-pots"), ({"thousand_steps": 0}, "budget-work")]
    for budget, code in budgets:
        with pytest.raises(pw.PourwrightError) as caught:
            book.plan(demo_orders, **budget)
        assert (caught.value.code, caught.value.status) == (code, 10)
    misuses: list[tuple[Any, str]] = [({"pots": -1}, "/pots"), ({"pots": 1.5}, "/pots"), ({"stop": 5}, "/stop")]
    for misuse, path in misuses:
        with pytest.raises(pw.PourwrightError) as caught:
            book.plan(demo_orders, **misuse)
        assert caught.value.path == path


def test_a_plan_is_stopped(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    orders = json.loads(demo_orders)
    orders["lines"][0]["pieces"] = 100_000
    asked: list[int] = []
    with pytest.raises(pw.PourwrightError) as caught:
        book.plan(orders, stop=lambda: asked.append(1) or len(asked) == 3)  # type: ignore[func-returns-value]
    assert (caught.value.code, caught.value.status, len(asked)) == ("plan-stopped", 9, 3)

    def interrupted() -> bool:
        asked.append(1)
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        book.plan(orders, stop=interrupted)
    assert len(asked) == 4

    # A signal that comes during the plan is seen where the library asks; this one is raised there by the first question.
    def late(_signal: int, _frame: object) -> None:
        raise KeyboardInterrupt

    def profile(frame: FrameType, event: str, _argument: object) -> None:
        if event == "call" and frame.f_code.co_name == "asked":
            signal.raise_signal(signal.SIGALRM)

    before = signal.signal(signal.SIGALRM, late)
    try:
        with pytest.raises(KeyboardInterrupt) as interrupt:
            sys.setprofile(profile)
            book.plan(orders)
    finally:
        sys.setprofile(None)
        signal.signal(signal.SIGALRM, before)
    # During the plan, not after it.
    assert "asked" in [frame.name for frame in interrupt.traceback]
    # The book goes on.
    assert book.plan(demo_orders)["pots"]


def test_the_answers_of_open_ones_have_types(shop: dict[str, Any], orders: dict[str, Any]) -> None:
    """What mypy knows of them; it fails there."""
    book = pw.Book(shop)
    assert_type(book.request("formula", formulas=["sky", "body"]), documents.FormulaAnswer)
    assert_type(book.plan(orders).request("record", actuals=ACTUALS), documents.RecordAnswer)
    assert_type(book.request({"calculate": "formula"}, formulas=["sky", "body"]), dict[str, Any])


def test_schemas() -> None:
    assert pw.schema("orders") == json.loads((ROOT / "core/schema/orders.json").read_text("utf-8"))
    with pytest.raises(pw.PourwrightError) as caught:
        pw.schema("shop")
    assert (caught.value.code, caught.value.path) == ("no-such-schema", "/name")
    assert "request" in caught.value.help
    with pytest.raises(TypeError, match="name must be of type str"):
        pw.schema(5)  # type: ignore[arg-type]


def test_sheet(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    sheet = book.sheet(demo_orders)
    assert "ORDER OF WORK" in sheet
    assert max(map(len, sheet.splitlines())) <= 80
    assert sheet == book.plan(demo_orders).sheet()


def test_bytes_of_any_kind_are_text(demo_book: bytes, demo_orders: bytes) -> None:
    expected = pw.Book(demo_book).plan(demo_orders).json()
    for kind in (bytearray, memoryview, lambda text: text.decode("utf-8")):
        assert pw.Book(kind(demo_book)).plan(kind(demo_orders)).json() == expected
    request = b'{"calculate":"convert","amount":"1 cup","to":"mL"}'
    assert pw.answer_text(memoryview(request)) == pw.answer_text(bytearray(request)) == pw.answer_text(request)


def test_paths_are_read(demo_book: bytes, demo_orders: bytes, tmp_path: Path) -> None:
    book = pw.Book(DEMO / "book.json")
    assert book.plan(DEMO / "orders.json").json() == pw.Book(demo_book).plan(demo_orders).json()
    with pytest.raises(FileNotFoundError):
        book.plan(tmp_path / "none.json")
    for read in (pw.Book, book.plan):
        with pytest.raises(pw.PourwrightError) as caught:
            read("orders.json")
        assert caught.value.code == "not-json" and "Path('orders.json')" in caught.value.help
    # Text that no path is meant by has the words of every door.
    with pytest.raises(pw.PourwrightError, match="expected value"):
        pw.Book("orders")
    assert json.loads(pw.answer_text("orders.json"))["faults"][0]["message"].startswith("The text is not JSON: ")


AGAIN = pytest.mark.parametrize("again", [lambda one: pickle.loads(pickle.dumps(one)), copy.copy, copy.deepcopy])


@AGAIN
def test_books_plans_and_conversions_are_copied(
    again: Callable[[Any], Any], shop: dict[str, Any], orders: dict[str, Any]
) -> None:
    book = pw.Book(shop)
    plan = book.plan(orders)
    other = again(book)
    book.close()
    assert other.plan(orders).json() == plan.json()
    with pytest.raises(ValueError, match="The book is closed"):
        again(book)
    kept = again(again(plan))
    assert isinstance(kept, pw.Plan) and kept == plan
    assert (kept.json(), kept.sheet(), repr(kept)) == (plan.json(), plan.sheet(), repr(plan))
    assert kept.request("record", actuals=ACTUALS) == plan.request("record", actuals=ACTUALS)
    assert again(kept).request("record", actuals=ACTUALS) == plan.request("record", actuals=ACTUALS)
    way = again(pw.Conversion("cup", "mL", measures="metric"))
    assert way(1.0) == 250.0 and repr(way) == "Conversion('cup', 'mL', measures='metric')"


def test_a_mix_is_copied_to_the_bit(shop: dict[str, Any]) -> None:
    mix = pw.Mix.of_book(pw.Book(shop))
    assert copy.copy(mix).mass_g == 0.0
    mix.add("my-salt", 1 / 3)
    mix.add("base", 100 / 7)
    for made in (copy.copy(mix), copy.deepcopy(mix)):
        assert [made.mass_of(name) for name in shop["materials"]] == [mix.mass_of(name) for name in shop["materials"]]
        assert made.mass_g == mix.mass_g and made.density_g_per_ml() == mix.density_g_per_ml()
        made.add("base", 1.0)
        assert made.mass_of("base") != mix.mass_of("base")
    with pytest.raises(TypeError, match="cannot be pickled. Store the mass_of"):
        pickle.dumps(mix)
    mix.close()
    with pytest.raises(ValueError, match="The mix is closed"):
        copy.copy(mix)


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
            plan = book.plan(orders)
            pw.Plan.from_json(plan.json()).request("record", actuals=ACTUALS)
            pw.Mix.of_book(book).add("base", 1.0)
            with pytest.raises(pw.PourwrightError):
                pw.calculate("convert", amount="6 oz", to="g")
        gc.collect()
        return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss

    rounds(100)
    before = rounds(100)
    # A leak of one book a round would be tens of kilobytes each.
    assert rounds(1000) - before < 4096
