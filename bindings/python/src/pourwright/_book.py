"""Documents: calculations as requests, the shop's book, the day's plan."""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Any, SupportsIndex, final

from . import _html, _tables
from ._call import Arguments, c_text, checked, handed_out, stopping
from ._document import Document, named, read, to_json
from ._native import ffi, lib
from .documents import Calculate, PlanDocument, PlanItem

if TYPE_CHECKING:
    import pandas
    import polars
    import pyarrow


class Answer(dict[str, Any]):
    """The answer to a request: a dictionary that a notebook shows as a table."""

    def _repr_html_(self) -> str:
        return _html.answer(self)


def answer_text(request: str | bytes | bytearray | memoryview) -> str:
    """Answers a request given as JSON text with JSON text: ``{"result":...}`` or ``{"faults":...}``.

    The text is the same at every door. A faulty request does not raise; its faults are in the answer.
    """
    return _answer_text(request, lib.pour_request)


def _answer_text(request: str | bytes | bytearray | memoryview, call: Callable[..., int], *handle: Any) -> str:
    """Answers a request given as JSON text, of the book or plan of a `handle` if there is one."""
    text = to_json(request)
    out, length = ffi.new("char **"), ffi.new("size_t *")
    error = ffi.new("pour_error **")
    if call(*handle, text, len(text), out, length, error):
        made = ffi.gc(error[0], lib.pour_error_free)
        faults: str = ffi.string(lib.pour_error_json(made)).decode("utf-8")
        return faults
    answer = ffi.gc(out[0], lib.pour_string_free)
    decoded: str = ffi.buffer(answer, length[0])[:].decode("utf-8")
    return decoded


def answer_lines(lines: str | bytes | bytearray | memoryview) -> str:
    r"""Answers many requests, one a line (JSON Lines): one answer a line, in the order of the requests.

    A line that is not a request does not raise; its faults are in its place.

    >>> answer_lines('{"calculate":"convert","amount":"1 cup","to":"tbsp"}\n[').splitlines()[0]
    '{"result":{"calculate":"convert","amount":"16 tbsp","value":16.0,"unit":"tbsp"}}'

    Raises:
        TypeError: The lines are not a text.
        PourwrightError: There is no memory for a line as long as the longest.
    """
    return _answer_lines(lines, lib.pour_lines)


def _answer_lines(lines: str | bytes | bytearray | memoryview, call: Callable[..., int], *handle: Any) -> str:
    """Answers lines, of the book of a `handle` if there is one."""
    if not isinstance(lines, (str, bytes, bytearray, memoryview)):
        raise TypeError(f"lines must be a text, one request a line, not {type(lines).__name__}.")
    text = to_json(lines)
    out, length = ffi.new("char **"), ffi.new("size_t *")
    checked(call, *handle, text, len(text), out, length, ffi.NULL)
    answers = ffi.gc(out[0], lib.pour_string_free)
    decoded: str = ffi.buffer(answers, length[0])[:].decode("utf-8")
    return decoded


def calculate(request: str | Mapping[str, Any], /, **fields: Any) -> dict[str, Any]:
    """Does one calculation.

    >>> calculate("convert", amount="1 1/4 cup", to="mL")["value"]
    295.735295625

    Args:
        request: The name of the calculation, or the request as a mapping, whose ``calculate`` names it.
            For a request as JSON text use :func:`answer_text`.
        **fields: Fields of the request. One that is a keyword of Python, such as ``from``, is written
            with an underscore at its end: ``from_``. Fields that are None are omitted. Write amounts as
            you say them (``"1/4 tsp"``, ``"8 % of base"``), or as ``{"value": 12.5, "unit": "g"}``. The
            fields of every request are in ``core/schema/request.json``.

    Returns:
        The response, as its type in :mod:`pourwright.documents`. Quantities in it have ``text`` to show and ``value``
        with its ``unit``.

    Raises:
        PourwrightError: All faults of the request, with paths into it.
    """
    return _answer(request, fields, lib.pour_request)


def _answer(
    request: str | Mapping[str, Any], fields: Mapping[str, Any], call: Callable[..., int], *handle: Any
) -> dict[str, Any]:
    """Does one calculation, of the book or plan of a `handle` if there is one."""
    known: Mapping[str, Any] = {"calculate": request} if isinstance(request, str) else request
    if not isinstance(known, Mapping):
        kind = type(request).__name__
        raise TypeError(f"request must be the name of a calculation, or a mapping, not {kind}.")
    text = to_json({**known, **named(fields.items())})
    return Answer(json.loads(handed_out(call, *handle, text, len(text)))["result"])


def schema(name: str) -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of a document: every field with its meaning, its range and its default.

    >>> schema("orders")["title"]
    'OrdersDocument'

    Args:
        name: "request", "answer", "book", "orders", "actuals" or "plan".

    Raises:
        PourwrightError: There is no such schema; its help has the names.
    """
    found: dict[str, Any] = json.loads(handed_out(lib.pour_schema, c_text("name", name)))
    return found


def _reopened(text: bytes) -> Any:
    """The handle of a plan from its JSON text."""
    out = ffi.new("pour_plan **")
    checked(lib.pour_plan_from_json, text, len(text), out)
    return ffi.gc(out[0], lib.pour_plan_free)


@final
class Plan(Mapping[str, Any]):
    """A day's plan: a mapping as in ``core/schema/plan.json``, and a bench sheet.

    It is complete, with the book that it was made from, never changes, and any number of threads may use it at once.
    ``plan["pots"]`` returns a new copy each time. Show its ``cautions`` to the person who pours.

    >>> plan = book.plan(orders)                  # doctest: +SKIP
    >>> print(plan.sheet())                       # doctest: +SKIP
    >>> [pot["cup"]["text"] for pot in plan["pots"]]   # doctest: +SKIP
    >>> Path("today.json").write_text(plan.json())     # doctest: +SKIP
    >>> plan = Plan.from_json(Path("today.json"))      # doctest: +SKIP
    >>> record = plan.request("record", actuals=actuals)   # doctest: +SKIP
    """

    __slots__ = ("_handle", "_json", "_notes", "_sheet", "_texts")

    def __init__(self, handle: Any) -> None:
        """Plans are made by :meth:`Book.plan` and :meth:`from_json`."""
        self._handle = handle
        self._json: str | None = None
        self._sheet: str | None = None
        self._notes: str | None = None
        self._texts: dict[str, str] | None = None

    @classmethod
    def from_json(cls, document: Document) -> Plan:
        """Opens a plan again.

        Args:
            document: The plan as :meth:`json` gave it, as a mapping, as the answer to a request that makes a plan, or
                the path of its file.

        Raises:
            OSError: The file cannot be read.
            TypeError: A value that a document cannot have, with its path.
            PourwrightError: All faults of the text, else all of its form; a plan without the book that it was
                made from.
        """
        return cls(_reopened(read(document)))

    if TYPE_CHECKING:
        # The type of an answer depends on the name of the calculation.
        request: Calculate
    else:

        def request(self, request: str | Mapping[str, Any], /, **fields: Any) -> dict[str, Any]:
            """Does one calculation with the plan and its book, which the request leaves out.

            Arguments, result and errors are those of :func:`calculate`.
            """
            return _answer(request, fields, lib.pour_plan_request, self._open())

    def answer_text(self, request: str | bytes | bytearray | memoryview) -> str:
        """The same as JSON text for a request as JSON text; see :func:`answer_text`."""
        return _answer_text(request, lib.pour_plan_request, self._open())

    def json(self) -> str:
        """The plan as JSON text: complete, to be stored and opened again by :meth:`from_json`."""
        if self._json is None:
            self._json = handed_out(lib.pour_plan_json, self._handle)
        return self._json

    def sheet(self) -> str:
        """The bench sheet: text of 80 columns for the wall."""
        if self._sheet is None:
            self._sheet = handed_out(lib.pour_plan_sheet, self._handle)
        return self._sheet

    def notes(self) -> str:
        """What to know beyond the sheet: text of 80 columns."""
        if self._notes is None:
            self._notes = handed_out(lib.pour_plan_notes, self._handle)
        return self._notes

    def to_dict(self) -> PlanDocument:
        """The plan as a new dictionary."""
        made: PlanDocument = json.loads(self.json())
        return made

    def tables(self) -> dict[str, list[dict[str, Any]]]:
        """The plan as tables, each a list of rows: for a sheet, a database, a label printer.

        ``pots``, ``weigh`` (a row for each line to weigh), ``lines`` (the order lines, with the mass and the sink rate
        of a piece), ``clock`` (the time line), ``stock``, ``line_costs`` and ``material_costs``. The unit of a number
        is the last part of its column's name; money is a :class:`decimal.Decimal`. What the book does not state has no
        rows, or None.
        """
        return _tables.tables(self.to_dict())

    def to_arrow(self) -> dict[str, pyarrow.Table]:
        """The :meth:`tables` as tables of Arrow; needs ``pourwright[arrow]``."""
        return _tables.arrow_tables(self.to_dict())

    def to_pandas(self) -> dict[str, pandas.DataFrame]:
        """The :meth:`tables` as data frames of pandas; needs ``pourwright[pandas]``."""
        return _tables.pandas_frames(self.to_dict())

    def to_polars(self) -> dict[str, polars.DataFrame]:
        """The :meth:`tables` as data frames of Polars; needs ``pourwright[polars]``."""
        return _tables.polars_frames(self.to_dict())

    def _repr_html_(self) -> str:
        return _html.plan(self.to_dict())

    def _parts(self) -> dict[str, str]:
        """The text of each part."""
        if self._texts is None:
            self._texts = {name: json.dumps(part) for name, part in self.to_dict().items()}
        return self._texts

    if TYPE_CHECKING:
        # The type of a part depends on its name.
        __getitem__: PlanItem
    else:

        def __getitem__(self, name: str) -> Any:
            return json.loads(self._parts()[name])

    def __iter__(self) -> Iterator[str]:
        return iter(self._parts())

    def __len__(self) -> int:
        return len(self._parts())

    def __getstate__(self) -> tuple[str, str, str]:
        # The plan itself, not its documents: another version may plan differently.
        return self.json(), self.sheet(), self.notes()

    def __setstate__(self, state: tuple[str, str, str]) -> None:
        self._handle = self._texts = None
        self._json, self._sheet, self._notes = state

    def _open(self) -> Any:
        """The handle; a copy is opened by its first request."""
        if self._handle is None:
            self._handle = _reopened(self.json().encode("utf-8"))
        return self._handle

    def __repr__(self) -> str:
        pots = ", ".join(pot["pot"] for pot in self["pots"])
        return f"<Plan for {self['day'] or 'a day'}: pots {pots}>"


@final
class Book:
    """A shop's book: its materials, formulas, molds, tools and limits, ready for plans and requests.

    It never changes, and any number of threads may use it at once. It is freed when nothing refers to it
    any more, or at the end of a ``with`` block.

    >>> with Book.load("book.json") as book:      # doctest: +SKIP
    ...     print(book.sheet(orders))
    """

    __slots__ = ("_handle", "_text")

    def __init__(self, document: Document) -> None:
        """Loads a book.

        Args:
            document: The book as a mapping, a dataclass or JSON text, or the path of its file;
                ``core/schema/book.json``.

        Raises:
            OSError: The file cannot be read.
            TypeError: A value that a document cannot have, with its path.
            PourwrightError: All faults of the text, else all of its form, else all of its meaning.
        """
        self._text = read(document)
        out = ffi.new("pour_book **")
        checked(lib.pour_book_from_json, self._text, len(self._text), out)
        self._handle: Any = ffi.gc(out[0], lib.pour_book_free)

    @classmethod
    def load(cls, path: str | os.PathLike[str]) -> Book:
        """Loads a book from its file.

        Raises:
            OSError: The file cannot be read.
            PourwrightError: As for :class:`Book`.
        """
        return cls(Path(path))

    def plan(
        self,
        orders: Document,
        *,
        pots: SupportsIndex | None = None,
        thousand_steps: SupportsIndex | None = None,
        stop: Callable[[], object] | None = None,
    ) -> Plan:
        """Plans a day.

        >>> late = threading.Event()                  # doctest: +SKIP
        >>> threading.Timer(5.0, late.set).start()    # doctest: +SKIP
        >>> plan = book.plan(orders, pots=200, stop=late.is_set)   # doctest: +SKIP

        Args:
            orders: The order list as a mapping, a dataclass or JSON text, or the path of its file;
                ``core/schema/orders.json``.
            pots: Maximum number of pots. Default: 5000.
            thousand_steps: Maximum work, in thousands of steps. Default: 10000.
            stop: Called without arguments about every millisecond of planning, on this thread; the plan ends when it
                returns something true. A short plan is finished without a call. An exception in it also ends the
                plan, and is raised here. KeyboardInterrupt ends a long plan without it, too.

        Raises:
            OSError: The file cannot be read.
            TypeError: A value that a document cannot have, with its path.
            PourwrightError: All faults of the order list, with paths into it, or why the day cannot be
                planned. Codes ``budget-pots`` and ``budget-work``: it takes more than its budget; ``plan-stopped``:
                ``stop`` ended it.
            ValueError: The book is closed.
        """
        arguments = Arguments()
        budget = arguments.optional_count("pots", pots), arguments.optional_count("thousand_steps", thousand_steps)
        arguments.check()
        text = read(orders)
        out = ffi.new("pour_plan **")
        # This reference keeps the book alive during the call, even if another thread closes it.
        handle = self._open()
        with stopping(stop) as asked:
            checked(lib.pour_book_plan_within, handle, text, len(text), *budget, asked, ffi.NULL, out)
        return Plan(ffi.gc(out[0], lib.pour_plan_free))

    if TYPE_CHECKING:
        # The type of an answer depends on the name of the calculation.
        request: Calculate
    else:

        def request(self, request: str | Mapping[str, Any], /, **fields: Any) -> dict[str, Any]:
            """Does one calculation with the book, which the request leaves out.

            >>> book.request("formula", formulas=["dusk"], base_amount="2 cup")   # doctest: +SKIP

            Arguments, result and errors are those of :func:`calculate`.

            Raises:
                ValueError: The book is closed.
            """
            return _answer(request, fields, lib.pour_book_request, self._open())

    def answer_text(self, request: str | bytes | bytearray | memoryview) -> str:
        """The same as JSON text for a request as JSON text; see :func:`answer_text`."""
        return _answer_text(request, lib.pour_book_request, self._open())

    def answer_lines(self, lines: str | bytes | bytearray | memoryview) -> str:
        """Answers many requests, one a line, which leave ``book`` out; see :func:`answer_lines`."""
        return _answer_lines(lines, lib.pour_book_lines, self._open())

    def sheet(self, orders: Document) -> str:
        """The bench sheet of a day: text of 80 columns; arguments and errors are those of :meth:`plan`."""
        return self.plan(orders).sheet()

    def notes(self, orders: Document) -> str:
        """What to know of a day beyond its sheet; arguments and errors are those of :meth:`plan`."""
        return self.plan(orders).notes()

    def close(self) -> None:
        """Frees the book; a running call finishes. Closing it twice does nothing."""
        self._handle = None
        self._text = b""

    @property
    def closed(self) -> bool:
        """Whether it was closed."""
        return self._handle is None

    def _open(self) -> Any:
        handle = self._handle
        if handle is None:
            raise ValueError("The book is closed.")
        return handle

    def __reduce__(self) -> tuple[type[Book], tuple[bytes]]:
        # Loaded again from its text, which is read before another thread can close the book.
        text = self._text
        self._open()
        return Book, (text,)

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
