"""Documents: calculations as requests, the shop's book, the day's plan."""

from __future__ import annotations

import json
import os
from collections.abc import Iterator, Mapping
from pathlib import Path
from types import TracebackType
from typing import Any, final

from ._call import checked, handed_out
from ._document import Document, to_json
from ._native import ffi, lib
from .documents import PlanDocument


def answer_text(request: str | bytes) -> str:
    """Answers a calculation request as JSON text with JSON text: ``{"result":...}`` or ``{"faults":...}``.

    The text is the same in every door; it never raises for what the request says.
    """
    text = to_json(request)
    out, length = ffi.new("char **"), ffi.new("size_t *")
    error = ffi.new("pour_error **")
    if lib.pour_request(text, len(text), out, length, error):
        made = ffi.gc(error[0], lib.pour_error_free)
        faults: str = ffi.string(lib.pour_error_json(made)).decode("utf-8")
        return faults
    answer = ffi.gc(out[0], lib.pour_string_free)
    decoded: str = ffi.buffer(answer, length[0])[:].decode("utf-8")
    return decoded


def calculate(request: str | Mapping[str, Any], /, **fields: Any) -> dict[str, Any]:
    """Does one calculation.

    >>> calculate("convert", amount="1 1/4 cup", to="mL")["value"]
    295.735295625

    Args:
        request: The name of the calculation, or the request as a mapping, whose ``calculate`` names it.
            For one that is JSON text there is :func:`answer_text`.
        **fields: Fields of the request. One that is a keyword of Python, such as ``from``, is written
            with an underscore behind: ``from_``. What is None is left out. Amounts are written as one
            says them (``"1/4 tsp"``, ``"8 % of base"``), or as ``{"value": 12.5, "unit": "g"}``. The
            fields of every request stand in ``core/schema/request.json``.

    Returns:
        The response, as its type in :mod:`pourwright.documents`. Quantities in it have ``text`` to show and ``value``
        with its ``unit``.

    Raises:
        PourwrightError: All faults of the request together, with paths into it.
    """
    known: Mapping[str, Any] = {"calculate": request} if isinstance(request, str) else request
    text = to_json({**known, **_named(fields)})
    result: dict[str, Any] = json.loads(handed_out(lib.pour_request, text, len(text)))["result"]
    return result


def _named(fields: dict[str, Any]) -> dict[str, Any]:
    """Fields by their names in a request, which none ends with an underscore; None is left out."""
    return {name.removesuffix("_"): value for name, value in fields.items() if value is not None}


@final
class Plan(Mapping[str, Any]):
    """A day's plan: a mapping as in ``core/schema/plan.json``, and a bench sheet.

    It is complete and never changes; it outlives its book. Its ``cautions`` are for the person who pours.

    >>> plan = book.plan(orders)                  # doctest: +SKIP
    >>> print(plan.sheet())                       # doctest: +SKIP
    >>> [pot["cup"]["text"] for pot in plan["pots"]]   # doctest: +SKIP
    """

    __slots__ = ("_handle", "_read")

    def __init__(self, handle: Any) -> None:
        """Plans are made by :meth:`Book.plan`."""
        self._handle = handle
        self._read: dict[str, Any] | None = None

    def json(self) -> str:
        """The plan as JSON text: the record of the day."""
        return handed_out(lib.pour_plan_json, self._handle)

    def sheet(self) -> str:
        """The bench sheet: text of 80 columns for the wall."""
        return handed_out(lib.pour_plan_sheet, self._handle)

    def to_dict(self) -> PlanDocument:
        """The plan as a dictionary of the caller's own."""
        made: PlanDocument = json.loads(self.json())
        return made

    def _document(self) -> dict[str, Any]:
        if self._read is None:
            self._read = dict(self.to_dict())
        return self._read

    def __getitem__(self, name: str) -> Any:
        return self._document()[name]

    def __iter__(self) -> Iterator[str]:
        return iter(self._document())

    def __len__(self) -> int:
        return len(self._document())

    def __repr__(self) -> str:
        pots = ", ".join(pot["pot"] for pot in self["pots"])
        return f"<Plan for {self['day'] or 'a day'}: pots {pots}>"


@final
class Book:
    """A shop's book: its materials, formulas, molds, tools and limits, ready for planning.

    It never changes, and any number of threads may use it at once. It is freed when nothing refers to it
    any more, or at the end of a ``with`` block.

    >>> with Book.load("book.json") as book:      # doctest: +SKIP
    ...     print(book.sheet(orders))
    """

    __slots__ = ("_handle",)

    def __init__(self, document: Document) -> None:
        """Loads a book.

        Args:
            document: The book as a mapping or as JSON text; ``core/schema/book.json``.

        Raises:
            PourwrightError: All faults of the text, else all of its form, else all of its meaning.
        """
        text = to_json(document)
        out = ffi.new("pour_book **")
        checked(lib.pour_book_from_json, text, len(text), out)
        self._handle: Any = ffi.gc(out[0], lib.pour_book_free)

    @classmethod
    def load(cls, path: str | os.PathLike[str]) -> Book:
        """Loads a book from its file.

        Raises:
            OSError: The file cannot be read.
            PourwrightError: As by :class:`Book`.
        """
        return cls(Path(path).read_bytes())

    def plan(self, orders: Document) -> Plan:
        """Plans a day.

        Args:
            orders: The order list as a mapping or as JSON text; ``core/schema/orders.json``.

        Raises:
            PourwrightError: All faults of the order list, with paths into it, or why the day cannot be
                planned.
            ValueError: The book is closed.
        """
        text = to_json(orders)
        out = ffi.new("pour_plan **")
        # The name keeps the book alive through the call, whoever closes it meanwhile.
        handle = self._open()
        checked(lib.pour_book_plan, handle, text, len(text), out)
        return Plan(ffi.gc(out[0], lib.pour_plan_free))

    def sheet(self, orders: Document) -> str:
        """The bench sheet of a day: text of 80 columns; arguments and errors are those of :meth:`plan`."""
        return self.plan(orders).sheet()

    def close(self) -> None:
        """Gives the book back; a call that runs on it ends well. To close it twice does nothing."""
        self._handle = None

    @property
    def closed(self) -> bool:
        """Whether it was closed."""
        return self._handle is None

    def _open(self) -> Any:
        handle = self._handle
        if handle is None:
            raise ValueError("The book is closed.")
        return handle

    def __enter__(self) -> Book:
        self._open()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def __repr__(self) -> str:
        return "<Book, closed>" if self.closed else "<Book>"
