"""Threads: the interpreter is free while the library works, and handles stand many threads."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import Any

import numpy as np
import pytest

import pourwright as pw
from pourwright import columns


def counted_meanwhile(work: Callable[[], object]) -> int:
    """How often this thread gets to run pure Python while another one does one long call."""
    done = threading.Event()

    def run() -> None:
        work()
        done.set()

    thread = threading.Thread(target=run)
    count = 0
    thread.start()
    while not done.is_set():
        count += 1
        time.sleep(0)
    thread.join()
    return count


def test_a_long_columnar_call_lets_others_run() -> None:
    """One call that holds the interpreter would let the counter run just before and after it."""
    rows = 5_000_000
    volumes, out = np.full(rows, 2.0), np.empty(rows)
    held = counted_meanwhile(lambda: sum(range(0)))
    runs = counted_meanwhile(lambda: [columns.mass_of_volume(volumes, 1.03, out=out) for _ in range(5)])
    assert runs > 20 * max(held, 1), (runs, held)


def test_a_long_document_call_lets_others_run(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    assert counted_meanwhile(lambda: [book.plan(demo_orders) for _ in range(20)]) > 20


def test_one_book_in_many_threads(demo_book: bytes, demo_orders: bytes) -> None:
    book = pw.Book(demo_book)
    alone = book.plan(demo_orders).json()
    with ThreadPoolExecutor(8) as pool:
        assert set(pool.map(lambda _: book.plan(demo_orders).json(), range(32))) == {alone}


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
            pw.convert_amount(f"{number} smidge", "mL")
        return f"{number} smidge" in caught.value.message or "smidge" in caught.value.message

    with ThreadPoolExecutor(8) as pool:
        assert all(pool.map(fail, range(500)))
