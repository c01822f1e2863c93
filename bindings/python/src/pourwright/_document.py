"""Documents as Python values and as JSON text."""

from __future__ import annotations

import dataclasses
import datetime
import json
import math
import numbers
import os
from collections.abc import Iterable, Mapping
from decimal import Decimal
from pathlib import Path
from typing import Any, ClassVar, Protocol

from ._error import not_finite, refused
from ._native import lib


class DataclassInstance(Protocol):
    """Any instance of a dataclass."""

    __dataclass_fields__: ClassVar[dict[str, Any]]


Document = Mapping[str, Any] | DataclassInstance | str | bytes | bytearray | memoryview | os.PathLike[str]
"""A document: a mapping or a dataclass, its JSON text, or the path of its file as a :class:`pathlib.Path`
(a path as text is refused).

A mapping or a dataclass may have values of JSON, dataclasses, dates, and real numbers of any type, which are passed as
floats. Fields of a dataclass that are None are omitted; an underscore at the end of a name (``from_``) is removed."""


def read(document: Document) -> bytes:
    """The JSON text of a document, from its file if it is a path.

    Raises:
        OSError: The file cannot be read.
        TypeError: A value that a document cannot have, with its path.
        PourwrightError: A number that is not finite; text that is a path.
    """
    if isinstance(document, os.PathLike):
        return Path(document).read_bytes()
    if isinstance(document, str) and "{" not in document and document.rstrip().lower().endswith(".json"):
        help = f"Pass Path({document!r}) to read the file."
        raise refused("not-json", "", "The text is not JSON: it seems to be a path.", help, lib.POUR_REFUSED)
    return to_json(document)


def to_json(document: object) -> bytes:
    """The JSON text of a document; text is passed unchanged."""
    if isinstance(document, (bytes, bytearray, memoryview)):
        return bytes(document)
    if isinstance(document, str):
        # A lone surrogate becomes bytes that are not UTF-8, which the library refuses.
        return document.encode("utf-8", "surrogatepass")
    try:
        text = json.dumps(document, default=_plain, allow_nan=False, ensure_ascii=False)
    except (TypeError, ValueError):
        try:
            error = _unfit(document, "")
        except RecursionError:
            error = None
        if error is None:
            raise
        raise error from None
    return text.encode("utf-8", "surrogatepass")


def named(fields: Iterable[tuple[str, Any]]) -> dict[str, Any]:
    """Fields by their names in a document, which never end with an underscore; None is omitted."""
    return {name.removesuffix("_"): value for name, value in fields if value is not None}


def _plain(value: object) -> object:
    """A value of JSON for one that `json` cannot write."""
    if isinstance(value, Mapping):
        return dict(value)
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        return named((field.name, getattr(value, field.name)) for field in dataclasses.fields(value))
    if isinstance(value, numbers.Integral):
        return int(value)
    if isinstance(value, (numbers.Real, Decimal)):
        try:
            return float(value)
        except (OverflowError, ValueError):
            return math.nan
    # Documents have no times of day.
    if isinstance(value, datetime.date) and not isinstance(value, datetime.datetime):
        return value.isoformat()
    raise TypeError(f"A {type(value).__name__} cannot be part of a document.")


def _unfit(value: object, path: str) -> Exception | None:
    """The error for the first value that a document cannot have."""
    if value is None or isinstance(value, (str, int)):
        return None
    if isinstance(value, float):
        return None if math.isfinite(value) else not_finite(path)
    if isinstance(value, (list, tuple)):
        parts: Iterable[tuple[object, object]] = enumerate(value)
    elif isinstance(value, dict):
        parts = value.items()
    else:
        try:
            plain = _plain(value)
        except TypeError as error:
            return _misplaced(path, str(error))
        return _unfit(plain, path)
    for name, part in parts:
        if not (name is None or isinstance(name, (str, int, float))):
            return _misplaced(path, f"A {type(name).__name__} cannot be a name in a document.")
        step = str(name).replace("~", "~0").replace("/", "~1")
        if found := _unfit(part, f"{path}/{step}"):
            return found
    return None


def _misplaced(path: str, message: str) -> TypeError:
    return TypeError(f"{path}: {message}" if path else message)
