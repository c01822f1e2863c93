"""Python's dataclasses and the structs of the C library."""

from __future__ import annotations

import dataclasses
import functools
from typing import Any

from ._call import instance, real, whole
from ._native import ffi


def left_out(default: str) -> Any:
    """A field that may be left out; `default` is what then counts.

    In C a 0 stands for that. A 0 that a caller writes would silently mean something else: it is refused.
    """
    return dataclasses.field(default=None, metadata={"left_out": default})


@functools.cache
def _counts(c_name: str) -> frozenset[str]:
    """The fields of a C struct that are counts."""
    return frozenset(name for name, field in ffi.typeof(c_name).fields if field.type.cname == "uint32_t")


def struct(c_name: str, kind: type[Any], place: str, given: Any, /, **others: Any) -> Any:
    """A C struct with the fields of a dataclass, which are numbers; `others` are fields that are made already.

    Raises:
        TypeError: What stands at `place` is not of the dataclass, or a field of it no number.
        ValueError: A 0 where it would be taken as left out.
    """
    made = ffi.new(f"{c_name} *")
    counts = _counts(c_name)
    for field in dataclasses.fields(instance(place, given, kind)):
        if field.name in others:
            continue
        value = getattr(given, field.name)
        if "left_out" in field.metadata and value is None:
            continue
        name = f"{place}/{field.name}"
        number = (whole if field.name in counts else real)(name, value)
        if "left_out" in field.metadata and number == 0:
            raise ValueError(f"{name} must not be 0; leave it out (None) for {field.metadata['left_out']}.")
        setattr(made, field.name, number)
    for field_name, value in others.items():
        setattr(made, field_name, value)
    return made
