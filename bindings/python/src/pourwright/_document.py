"""Documents as Python values and as JSON text."""

from __future__ import annotations

import dataclasses
import json
import math
import numbers
from collections.abc import Mapping
from typing import Any

from ._error import refused
from ._native import lib

Document = Mapping[str, Any] | str | bytes
"""A document: a mapping (or a dataclass), or its JSON text."""


def to_json(document: object) -> bytes:
    """The JSON text of a document; text is taken as it stands."""
    if isinstance(document, bytes):
        return document
    if isinstance(document, str):
        # A lone surrogate becomes bytes that the library refuses as no UTF-8.
        return document.encode("utf-8", "surrogatepass")
    try:
        text = json.dumps(document, default=_plain, allow_nan=False, ensure_ascii=False)
    except ValueError:
        try:
            path = _not_finite(document, "")
        except RecursionError:
            path = None
        if path is None:
            raise
        raise refused(
            "not-finite", path, "This is not a finite number.", "Pass a number.", lib.POUR_NOT_FINITE
        ) from None
    return text.encode("utf-8", "surrogatepass")


def _plain(value: object) -> object:
    """What `json` cannot write by itself: mappings, dataclasses, numbers of other kinds."""
    if isinstance(value, Mapping):
        return dict(value)
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        return {
            field.name: getattr(value, field.name)
            for field in dataclasses.fields(value)
            if getattr(value, field.name) is not None
        }
    if isinstance(value, numbers.Integral):
        return int(value)
    if isinstance(value, numbers.Real):
        return float(value)
    raise TypeError(f"A {type(value).__name__} cannot stand in a document.")


def _not_finite(value: object, path: str) -> str | None:
    """The path of the first number that is not finite."""
    if isinstance(value, numbers.Real) and not isinstance(value, numbers.Integral):
        return None if math.isfinite(value) else path
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        value = _plain(value)
    if isinstance(value, Mapping):
        parts = [(str(key).replace("~", "~0").replace("/", "~1"), one) for key, one in value.items()]
    elif isinstance(value, (list, tuple)):
        parts = [(str(index), one) for index, one in enumerate(value)]
    else:
        return None
    found = (_not_finite(one, f"{path}/{name}") for name, one in parts)
    return next((one for one in found if one is not None), None)
