"""Python's dataclasses and the structs of the C library."""

from __future__ import annotations

import dataclasses
from typing import Any

from ._native import ffi


def left_out(default: str) -> Any:
    """A field that may be left out; `default` is what then counts.

    In C a 0 stands for that. A 0 that a caller writes would silently mean something else: it is refused.
    """
    return dataclasses.field(default=None, metadata={"left_out": default})


def struct(c_name: str, given: Any, /, **others: Any) -> Any:
    """A C struct with the fields of a dataclass.

    Raises:
        ValueError: A 0 where it would be taken as left out.
    """
    made = ffi.new(f"{c_name} *")
    for field in dataclasses.fields(given):
        if field.name in others:
            continue
        value = getattr(given, field.name)
        if "left_out" in field.metadata:
            if value is None:
                continue
            if value == 0:
                counts = field.metadata["left_out"]
                raise ValueError(f"{field.name} must not be 0; leave it out (None) for {counts}.")
        setattr(made, field.name, value)
    for field_name, value in others.items():
        setattr(made, field_name, value)
    return made
