"""Threads: the interpreter is free while the library works, and handles stand many threads."""

from __future__ import annotations

import copy
import sys
import threading
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import numpy as np
import pytest

import pourwright as pw
from pourwright import columns


def others_run_during(work: Callable[[], object], rounds: int = 100) -> bool:
    """Whether another thread ever runs while one is inside `work`.

    The interpreter switches threads only every thousand seconds: a thread that does not release it by itself
    keeps it. So this is never seen of work that holds it, and does not hang on how long anything takes.
    """
    interval = sys.getswitchinterval()
    sys.setswitchinterval(1000)
    try:
        return any(seen_during(work) for _ in range(rounds))
    finally:
        sys.setswitchinterval(interval)


def seen_during(work: Callable[[], object]) -> bool:
    inside, seen = False, False

    def run() -> None:
        nonlocal inside
        inside = True
        work()
        inside = False

    thread = threading.Thread(target=run)
    thread.start()
    while thread.is_alive():
        seen |= inside
        time.sleep(0)
    thread.join()
    return seen


def test_python_itself_does_not_let_others_run() -> None:
    """The measure can tell: this holds the interpreter."""
    assert not others_run_during(lambda: sum(number for number in range(20_000)), rounds=20)


def test_a_columnar_call_lets_others_run() -> None:
    volumes, out = np.full(1_000_000, 2.0), np.empty(1_000_000)
    assert others_run_during(lambda: columns.mass_of_volume(volumes, 1.03, out=out))


def test_a_document_call_lets_others_run(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    assert others_run_during(lambda: book.plan(demo_orders))


def test_one_book_in_many_threads(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    alone = book.plan(demo_orders).json()
    with ThreadPoolExecutor(8) as pool:
        assert set(pool.map(lambda _: book.plan(demo_orders).json(), range(32))) == {alone}


def test_one_plan_in_many_threads(demo_book: bytes, demo_orders: bytes) -> None:
    """Also a copy, which the first request opens."""
    request = '{"calculate":"record","actuals":{"format":"pourwright/1.0","pots":{}}}'
    plan = pw.Book(demo_book).plan(demo_orders)
    alone = plan.answer_text(request)
    assert alone.startswith('{"result":')
    for one in (plan, copy.copy(plan)):
        with ThreadPoolExecutor(8) as pool:
            assert set(pool.map(lambda _, one=one: one.answer_text(request), range(32))) == {alone}


def test_a_book_that_is_closed_under_way(demo_book: bytes, demo_orders: bytes) -> None:
    """Whoever is planning ends well; whoever comes later is refused."""
    alone = pw.Book(demo_book).plan(demo_orders).json()

    def plan(book: pw.Book) -> str | None:
        try:
            return book.plan(demo_orders).json()
        except ValueError as error:
            assert str(error) == "The book is closed."
            return None

    for _ in range(10):
        book = pw.Book(demo_book)
        with ThreadPoolExecutor(4) as pool:
            running = [pool.submit(plan, book) for _ in range(8)]
            book.close()
            assert {one.result() for one in running} <= {alone, None}


def test_a_mix_in_many_threads_loses_nothing() -> None:
    mix = pw.Mix.of_materials([pw.Material(name="base", kind="plastisol", density_g_per_ml=1.0)])

    def work(_: int) -> None:
        # Whole kilograms, whose sum is exact.
        for _ in range(500):
            mix.add("base", 1000.0)

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(work, range(4)))
    assert mix.mass_g == 2_000_000.0


def test_merging_crosswise_ends() -> None:
    materials = [pw.Material(name="base", kind="plastisol", density_g_per_ml=1.0)]
    one, other = pw.Mix.of_materials(materials), pw.Mix.of_materials(materials)

    def pour(pair: tuple[pw.Mix, pw.Mix]) -> None:
        for _ in range(2000):
            pair[0].merge(pair[1])

    threads = [threading.Thread(target=pour, args=(pair,), daemon=True) for pair in [(one, other), (other, one)]]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(60)
    assert not any(thread.is_alive() for thread in threads)


def test_errors_do_not_mix(shop: dict[str, Any]) -> None:
    """An error belongs to its call, whatever other threads do meanwhile."""

    def fail(number: int) -> bool:
        with pytest.raises(pw.PourwrightError) as caught:
            pw.convert(f"{number} smidge", "mL")
        return f"{number} smidge" in caught.value.message or "smidge" in caught.value.message

    with ThreadPoolExecutor(8) as pool:
        assert all(pool.map(fail, range(500)))
