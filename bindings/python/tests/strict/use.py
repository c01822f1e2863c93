"""A program as a user writes it, which type checkers at their strictest check."""

from __future__ import annotations

import numpy as np

import pourwright
from pourwright import columns


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


def refused() -> list[str]:
    """What was wrong, where, and what would fix it."""
    try:
        pourwright.convert("6 oz", "g")
    except pourwright.PourwrightError as error:
        return [error.code, error.path, error.help]
    return []
