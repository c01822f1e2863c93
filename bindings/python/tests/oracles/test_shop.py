"""Pots, batches, costs, changes of a book: against SciPy's linear programs and distributions, networkx, decimals, and
a JSON Patch library."""

from __future__ import annotations

import math
from decimal import ROUND_HALF_UP, Decimal
from typing import Any

import jsonpatch  # type: ignore[import-untyped]
import networkx as nx
import numpy as np
import pytest
from hypothesis import given, seed, settings
from hypothesis import strategies as st
from scipy.optimize import linprog
from scipy.stats import binom

import pourwright as pw

RANDOM = np.random.default_rng(20270302)
BALANCE = {"reads": "0.0001 g", "to": "500 kg", "sure": True}


# --- A pot that went wrong: SciPy 1.17.1, linprog. -------------------------------------------------------------


def made_wrong(shop: dict[str, Any]) -> tuple[dict[str, Any], dict[str, float], dict[str, float]]:
    """A book with one random formula; its ratios; and a pot that is none of it."""
    shop["bench"]["balance"] = BALANCE
    shop["bench"]["cups"] = [{"holds": "13 gal", "marks": "1/4 cup", "sure": True}]
    ratios = {"base": 1.0} | {name: round(RANDOM.uniform(0.005, 0.2), 4) for name in ("blue", "red", "my-salt")}
    doses = {name: f"{100 * ratio!r} % of base" for name, ratio in ratios.items() if name != "base"}
    shop["formulas"] = {"all": {"base": "base", "doses": doses}}
    pot = {name: round(300 * ratio * RANDOM.uniform(0.5, 1.5), 3) for name, ratio in ratios.items()}
    return shop, ratios, pot


@pytest.mark.parametrize("_", range(30))
def test_the_least_that_makes_it_right(_: int, shop: dict[str, Any]) -> None:
    book, ratios, pot = made_wrong(shop)
    answer = pw.calculate(
        "correct", book=book, formulas=["all"], instead={name: f"{grams!r} g" for name, grams in pot.items()}
    )
    # Additions x ≥ 0 and a scale k: minimize Σx under c + x = k·r.
    names = list(ratios)
    held = np.array([pot[name] for name in names])
    equal = np.hstack([np.eye(len(names)), -np.array([[ratios[name]] for name in names])])
    least = linprog([1.0] * len(names) + [0.0], A_eq=equal, b_eq=-held, method="highs")
    assert least.success
    exact = next(way for way in answer["ways"] if way["way"] == "exact")
    wanted = {weigh["material"]: weigh["wanted"]["value"] for weigh in exact["add"]}
    assert sum(wanted.values()) == pytest.approx(least.fun, rel=1e-9)
    for name, grams in zip(names, least.x):
        assert wanted.get(name, 0.0) == pytest.approx(grams, abs=1e-6)


@pytest.mark.parametrize("_", range(30))
def test_the_nearest_where_the_cup_is_too_small(_: int, shop: dict[str, Any]) -> None:
    """Of all mixes that only add and fit, none has a smaller greatest shortfall, which is a linear program too."""
    book, ratios, pot = made_wrong(shop)
    names = list(ratios)
    held = np.array([pot[name] for name in names])
    shares = np.array([ratios[name] for name in names]) / sum(ratios.values())
    density = np.array([1.03, 1.05, 1.11, 2.165])
    room = (held / density).sum() * 1.02
    answer = pw.calculate(
        "correct",
        book=book,
        formulas=["all"],
        instead={name: f"{grams!r} g" for name, grams in pot.items()},
        cup=f"{float(room)!r} mL",
    )
    way = next(way for way in answer["ways"] if way["way"] in ("exact", "nearest"))
    mixed = held + [
        sum(weigh["wanted"]["value"] for weigh in way["add"] if weigh["material"] == name) for name in names
    ]
    if way["way"] == "exact":
        assert (mixed / density).sum() <= room * (1 + 1e-9)
        return
    assert (mixed / density).sum() == pytest.approx(room, rel=1e-6)
    total = mixed.sum()
    ours = (1 - mixed / (total * shares)).max()
    # For each final mass X: minimize s under x_i ≥ c_i, Σx = X, Σx/ρ ≤ room, x_i ≥ (1 − s)·t_i·X.
    shortfall = np.hstack([-np.eye(4), -(total * shares)[:, None]])
    limits = np.vstack([shortfall, np.append(1 / density, 0.0)])
    best = linprog(
        [0.0] * 4 + [1.0],
        A_ub=limits,
        b_ub=np.append(-total * shares, room * (1 + 1e-9)),
        A_eq=[[1.0] * 4 + [0.0]],
        b_eq=[total],
        bounds=[(grams, None) for grams in held] + [(None, None)],
        method="highs",
    )
    assert best.success
    assert ours == pytest.approx(best.x[-1], abs=1e-5)


# --- Left-overs: SciPy 1.17.1, linprog. ------------------------------------------------------------------------


@pytest.mark.parametrize("_", range(20))
def test_the_most_of_the_shelf_is_used(_: int, shop: dict[str, Any], orders: dict[str, Any]) -> None:
    shop["bench"]["balance"] = BALANCE
    parts = [
        {name: round(RANDOM.uniform(low, high), 2) for name, low, high in
         [("base", 30, 90), ("blue", 0, 1), ("my-salt", 0, 20)]}
        for _ in range(2)
    ]  # fmt: skip
    orders["shelf"] = [
        {"name": f"left {index}", "mass": f"{sum(part.values())!r} g",
         "parts": {name: f"{grams!r} g" for name, grams in part.items()}}
        for index, part in enumerate(parts)
    ]  # fmt: skip
    answer = pw.calculate("leftovers", book=shop, orders=orders)
    (pot,) = pw.calculate("plan", book=shop, orders={**orders, "shelf": []})["pots"]
    names = ["base", "blue", "my-salt"]
    # What the pot holds: the formulas' ratios, for what is weighed of the base, which comes by marks of the cup.
    recipe = pw.calculate("formula", book=shop, formulas=["sky", "body"])
    target = np.array([next(p["ratio"] for p in recipe["parts"] if p["material"] == name) for name in names])
    base = next(w for w in pot["stages"][0]["weigh"] if w["material"] == "base")["wanted"]["value"]
    holds = base * target
    # x of each leftover, f of each material: maximize Σx under Σ a·x ≤ f, Σf = M, |f − tM| ≤ τ·t·M, where half of the
    # tolerance of 5 % is the leftovers'.
    left = np.array([[part[name] for name in names] for part in parts])
    shares = left / left.sum(axis=1, keepdims=True)
    most = linprog(
        [-1.0, -1.0, 0.0, 0.0, 0.0],
        A_ub=np.hstack([shares.T, -np.eye(3)]),
        b_ub=[0.0] * 3,
        A_eq=[[0.0, 0.0, 1.0, 1.0, 1.0]],
        b_eq=[holds.sum()],
        bounds=[(0, grams) for grams in left.sum(axis=1)] + [(0.975 * h, 1.025 * h) for h in holds],
        method="highs",
    )
    assert most.success
    # Solved to 1e-5 of it, then rounded to what the balance shows.
    assert answer["used"]["value"] == pytest.approx(-most.fun, rel=2e-5, abs=0.001)


# --- Rejects: SciPy 1.17.1, stats.binom. -----------------------------------------------------------------------


@seed(20270302)
@settings(max_examples=300, deadline=None, database=None)
@given(
    pieces=st.integers(1, 3000),
    cavities=st.integers(1, 12),
    rejects=st.floats(0.001, 0.6),
    confidence=st.floats(0.05, 0.9999),
)
def test_shots(pieces: int, cavities: int, rejects: float, confidence: float) -> None:
    shots = pw.shots(pieces, cavities, rejects=rejects, confidence=confidence).shots
    assert binom.sf(pieces - 1, shots * cavities, 1 - rejects) >= confidence * (1 - 1e-12)
    assert binom.sf(pieces - 1, (shots - 1) * cavities, 1 - rejects) < confidence * (1 + 1e-12)


# --- The fewest pots: networkx 3.6.1, maximum bipartite matching on the transitive closure. ---------------------


def fewest_chains(recipes: list[tuple[int, ...]]) -> int:
    graph: Any = nx.Graph()
    firsts = [("first", index) for index in range(len(recipes))]
    graph.add_nodes_from(firsts)
    graph.add_nodes_from(("then", index) for index in range(len(recipes)))
    for i, a in enumerate(recipes):
        for j, b in enumerate(recipes):
            if i != j and all(x <= y for x, y in zip(a, b)):
                graph.add_edge(("first", i), ("then", j))
    matching = nx.bipartite.hopcroft_karp_matching(graph, firsts)
    return len(recipes) - len(matching) // 2


@pytest.mark.parametrize("count", [2, 3, 5, 7, 9] * 4)
def test_the_fewest_pots(count: int, shop: dict[str, Any]) -> None:
    """Where neither cups nor heats bind, the pots are the fewest chains."""
    shop["bench"]["balance"] = BALANCE
    shop["bench"]["cups"] = [{"holds": "13 gal", "marks": "1/4 cup", "sure": True}]
    recipes: list[tuple[int, ...]] = []
    while len(recipes) < count:
        recipe = tuple(int(level) for level in RANDOM.integers(0, 4, 3))
        if recipe not in recipes:
            recipes.append(recipe)
    shop["formulas"] = {
        f"formula {index}": {
            "base": "base",
            "doses": {
                name: f"{2 * level} % of base" for name, level in zip(("blue", "red", "my-salt"), recipe) if level
            },
        }
        for index, recipe in enumerate(recipes)
    }
    orders = {
        "format": "pourwright/1.0",
        "lines": [
            {"order": str(index), "mold": "worm", "formulas": [f"formula {index}"], "pieces": 40}
            for index in range(count)
        ],
    }
    plan = pw.Book(shop).plan(orders)
    assert len(plan["pots"]) == plan["proof"]["pots"] == plan["proof"]["least"] == fewest_chains(recipes)


# --- Costs: Python's decimal. ----------------------------------------------------------------------------------

STEP = Decimal("0.000001")


@pytest.mark.parametrize("base", ["1 cup", "2 1/2 cup", "1 gal", "731.3 g", "3 qt"])
def test_costs(base: str, shop: dict[str, Any]) -> None:
    prices = {"base": ("58.00", "1 gal"), "blue": ("6.75", "1 fl oz"), "my-salt": ("9.00", "25 lb")}
    for name, (price, package) in prices.items():
        shop["materials"][name]["price"] = f"{price} USD per {package}"
    answer = pw.calculate(
        "cost", book=shop, formulas=["sky", "body"], base_amount=base, made=37, packs=6, work_time="90 min",
        work_rate="18.00 USD per 1 h", packing=[{"name": "bag", "price": "9.00 USD per 100 pieces", "per_pack": 2}],
        returned_mass="12.5 g", returned_worth="50 %",
    )  # fmt: skip
    sold_g = {
        "base": Decimal(pw.convert_number(1, "gal", "mL")) * Decimal("1.03"),
        "blue": Decimal(pw.convert_number(1, "fl oz", "mL")) * Decimal("1.05"),
        "my-salt": 25 * Decimal("453.59237"),
    }
    for line in answer["lines"]:
        price, _ = prices[line["material"]]
        # A mass is counted in packages once, to nine decimals: what only rounding leaves buys no package.
        sold = (Decimal(line["mass"]["value"]) / sold_g[line["material"]]).quantize(Decimal("1e-9"), ROUND_HALF_UP)
        assert abs(Decimal(line["cost"]["amount"]) - Decimal(price) * sold) <= STEP
        packages = math.ceil(sold)
        assert line["packages"] == packages
        assert Decimal(line["to_buy"]["amount"]) == packages * Decimal(price)
    amount = {name: Decimal(money["amount"]) for name, money in answer.items() if isinstance(money, dict)}
    # Sums are exact to the last step, as binary floats would not be.
    assert amount["materials"] == sum(Decimal(line["cost"]["amount"]) for line in answer["lines"])
    assert amount["packing"] == Decimal("0.09") * 12
    assert amount["work"] == Decimal("27")
    assert amount["total"] == amount["materials"] - amount["credit"] + amount["packing"] + amount["work"]
    assert abs(amount["per_pack"] - amount["total"] / 6) <= STEP
    assert abs(amount["per_piece"] - amount["total"] / 37) <= STEP
    for shown in (answer["total"], answer["work"], answer["per_piece"]):
        cents = Decimal(shown["amount"]).quantize(Decimal("0.01"), ROUND_HALF_UP)
        assert shown["text"] == f"{cents} USD"


# --- What calibrations write into a book: jsonpatch 1.32 (RFC 6902). ---------------------------------------------


def test_what_calibrations_write(shop: dict[str, Any]) -> None:
    weighings = [{"weighed_count": 50, "weighed_mass": "2.2 g"}, {"weighed_count": 50, "weighed_mass": "2.3 g"}]
    drop = pw.calculate(
        "calibrate-drop", calibrated_material="blue", balance_readability="0.01 g", drops_weighed=weighings
    )
    water = pw.calculate("water", calibrated_mold="worm", water_mass="9.21 g ± 0.02", water_temperature="20 °C")
    changed = jsonpatch.apply_patch(shop, [*drop["write"], *water["write"]])
    assert changed["materials"]["blue"]["drop"] == drop["drop"] != shop["materials"]["blue"].get("drop")
    assert changed["molds"]["worm"]["cavity"] == water["cavity"] != shop["molds"]["worm"]["cavity"]
    pw.Book(changed)
