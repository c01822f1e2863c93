"""A program as a user writes it, which type checkers at their strictest check."""

from __future__ import annotations

import duckdb
import numpy as np
import polars as pl

import pourwright
from pourwright import arrow, columns
from pourwright import polars as pour
from pourwright.duckdb import register


def day(book_text: str, orders_text: str) -> list[str]:
    """A book that is loaded, a day's plan, its sheet."""
    book = pourwright.Book(book_text)
    plan = book.plan(orders_text)
    lines = plan.sheet().splitlines()
    lines += [f"{pot['pot']}: {pot['cup_name']}" for pot in plan["pots"]]
    return lines


def numbers() -> float:
    """Plain numbers, a request, columns."""
    answer = pourwright.calculate("convert", amount="1 1/4 cup", to="mL")
    grams = pourwright.dose_mass("1/4 cup", "salt", as_scooped_g_per_ml=1.22)
    salt = columns.salt_for_density(np.array([236.6]), 1.03, 2.165, 1.12)
    return answer["value"] + grams + float(salt[0])


def frames(plan: pourwright.Plan) -> tuple[pl.DataFrame, int]:
    """Columns of texts, of Arrow and of Polars, and a plan as tables."""
    masses = columns.mass_of_volume(["1/4 tsp", "12.5 mL"], 1.03)
    also = arrow.mass_of_volume(["1/4 tsp"], 1.03, status=True)
    piece = pour.piece_mass(pl.col("cavity"), "1.05 g/mL", feed=0.5)
    frame = pl.DataFrame({"cavity": ["9.5 mL"]}).with_columns(piece=piece)
    with register(duckdb.connect()) as shop:
        shop.execute("SELECT pour_convert('1/4 tsp', 'mL')")
    rows = plan.tables()["weigh"]
    return plan.to_polars()["pots"].vstack(frame), len(masses) + len(also) + len(rows)


def refused() -> list[str]:
    """What was wrong, where, and what would fix it."""
    try:
        pourwright.convert("6 oz", "g")
    except pourwright.PourwrightError as error:
        return [error.code, error.path, error.help]
    return []
