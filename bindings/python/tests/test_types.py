"""The types of documents: fresh, and true of every answer."""

from __future__ import annotations

import json
import subprocess
import sys
from typing import Any

import pytest
from typeguard import CollectionCheckStrategy, check_type

import pourwright as pw
from pourwright import documents

from .conftest import DEMO, ROOT, vectors

ANSWERS = [json.loads(answer)["result"] for _, answer in vectors() if answer.startswith('{"result"')]


def holds(value: Any, kind: str) -> None:
    check_type(value, getattr(documents, kind), collection_check_strategy=CollectionCheckStrategy.ALL_ITEMS)


def kind_of(calculation: str) -> str:
    return "".join(word.capitalize() for word in calculation.split("-")) + "Answer"


@pytest.mark.parametrize("answer", ANSWERS, ids=lambda answer: answer["calculate"])
def test_answers_are_of_their_types(answer: dict[str, Any]) -> None:
    holds(answer, kind_of(answer["calculate"]))


def test_every_calculation_has_an_answer_among_them() -> None:
    schema = json.loads((ROOT / "core" / "schema" / "answer.json").read_text("utf-8"))
    names = {one["properties"]["calculate"]["const"] for one in schema["$defs"]["Response"]["oneOf"]}
    assert {answer["calculate"] for answer in ANSWERS} == names


def test_documents_are_of_their_types(demo_book: bytes, demo_orders: bytes) -> None:
    holds(json.loads(demo_book), "BookDocument")
    holds(json.loads(demo_orders), "OrdersDocument")
    holds(pw.Book(demo_book).plan(demo_orders).to_dict(), "PlanDocument")


def test_what_is_wrong_is_seen() -> None:
    """The check itself can fail."""
    answer = json.loads(
        json.dumps(pw.Book.load(DEMO / "book.json").plan((DEMO / "orders.json").read_bytes()).to_dict())
    )
    answer["pots"][-1]["cup"]["value"] = "1 cup"
    with pytest.raises(Exception, match="cup"):
        holds(answer, "PlanDocument")


def test_the_types_are_fresh() -> None:
    """Else run bindings/python/make-types."""
    made = ROOT / "bindings" / "python" / "make-types"
    assert subprocess.run([sys.executable, "-X", "utf8", made, "--check"], check=False).returncode == 0
