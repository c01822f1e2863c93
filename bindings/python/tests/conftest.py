"""What the tests share: the repository's documents, and a small shop (invented)."""

from __future__ import annotations

import copy
import json
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[3]
DEMO = ROOT / "core" / "examples" / "demo"
VECTORS = ROOT / "tests" / "vectors"
EXAMPLES = Path(__file__).resolve().parents[1] / "examples"

SHOP: dict[str, Any] = {
    "format": "pourwright/1.0",
    "measures": "us-customary",
    "materials": {
        "base": {"kind": "plastisol", "density": "1.03 g/mL"},
        "blue": {"kind": "colorant", "density": "1.05 g/mL", "drop": "0.045 g"},
        "red": {"kind": "colorant", "density": "1.11 g/mL", "drop": "0.05 g"},
        "my-salt": {"kind": "salt", "like": "sodium-chloride", "as_scooped": "1.22 g/mL"},
    },
    "formulas": {
        "body": {"per": "1 cup", "base": "base", "doses": {"my-salt": "2 tbsp"}},
        "plain": {"per": "1 cup", "base": "base", "doses": {}},
        "sky": {"per": "1 cup", "doses": {"blue": "30 drops"}},
    },
    "molds": {"worm": {"cavities": 4, "cavity": "9.5 mL", "sprue": "6 mL"}},
    "bench": {
        "balance": {"reads": "0.01 g"},
        "spoons": ["1 tbsp", "1 tsp", "1/2 tsp", "1/4 tsp"],
        "cups": [{"holds": "4 cup", "marks": "1/4 cup"}],
        "injector": {"holds": "4 fl oz", "keeps": "4 mL"},
    },
}
ORDERS: dict[str, Any] = {
    "format": "pourwright/1.0",
    "lines": [{"order": "1", "mold": "worm", "formulas": ["sky", "body"], "pieces": 24}],
}


@pytest.fixture
def shop() -> dict[str, Any]:
    """A book of its own for each test."""
    return copy.deepcopy(SHOP)


@pytest.fixture
def orders() -> dict[str, Any]:
    """Orders for it."""
    return copy.deepcopy(ORDERS)


@pytest.fixture(scope="session")
def demo_book() -> bytes:
    """The demo book."""
    return (DEMO / "book.json").read_bytes()


@pytest.fixture(scope="session")
def demo_orders() -> bytes:
    """The demo orders."""
    return (DEMO / "orders.json").read_bytes()


def vectors() -> list[tuple[str, str]]:
    """Requests and their answers, in every door."""
    requests = (VECTORS / "requests.jsonl").read_text("utf-8").removesuffix("\n").split("\n")
    answers = (VECTORS / "answers.jsonl").read_text("utf-8").removesuffix("\n").split("\n")
    assert len(requests) == len(answers)
    return list(zip(requests, answers))


def calls() -> list[dict[str, Any]]:
    """Calls on plain numbers and their answers, in every door."""
    return [json.loads(line) for line in (VECTORS / "calls.jsonl").read_text("utf-8").splitlines()]


def parsed(text: str) -> Any:
    """JSON as Python values."""
    return json.loads(text)
