"""Calls into the C library: its contract stands at the top of `pourwright.h`."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any, Literal

from ._error import failed
from ._native import ffi, lib

if lib.pour_abi_version() != lib.POUR_ABI_VERSION:
    raise ImportError("The pourwright library is of another version than this package.")

Measures = Literal["us-customary", "us-label", "metric", "imperial"]
"""What a cup, a spoon and a fluid ounce hold: US customary (cup 236.588 236 5 mL), US label (240 mL),
metric (250 mL) or imperial."""

MEASURES: Mapping[str, int] = {
    "us-customary": lib.POUR_US_CUSTOMARY,
    "us-label": lib.POUR_US_LABEL,
    "metric": lib.POUR_METRIC,
    "imperial": lib.POUR_IMPERIAL,
}


def word(table: Mapping[str, int], parameter: str, chosen: str) -> int:
    """The number that stands for a word."""
    try:
        return table[chosen]
    except KeyError:
        known = ", ".join(f'"{one}"' for one in table)
        raise ValueError(f"{parameter} must be one of {known}, not {chosen!r}.") from None


def c_text(parameter: str, text: str) -> bytes:
    """Text for C, where a NUL would end it."""
    if "\0" in text:
        raise ValueError(f"{parameter} must not have a NUL character.")
    return text.encode("utf-8", "surrogatepass")


def checked(call: Callable[..., int], *arguments: Any) -> None:
    """Does a call, and raises what it says is wrong."""
    error = ffi.new("pour_error **")
    status = call(*arguments, error)
    if status:
        raise failed(status, error[0])


def number(call: Callable[..., int], *arguments: Any) -> float:
    """The number that a call writes through the pointer after its `arguments`.

    Such calls change nothing, so that an error is asked for only by calling once more.
    """
    result = ffi.new("double *")
    if call(*arguments, result, ffi.NULL):
        checked(call, *arguments, result)
    value: float = result[0]
    return value


def handed_out(call: Callable[..., int], *arguments: Any) -> str:
    """The text that a call hands out through the pointers after its `arguments`."""
    out = ffi.new("char **")
    length = ffi.new("size_t *")
    checked(call, *arguments, out, length)
    text = ffi.gc(out[0], lib.pour_string_free)
    decoded: str = ffi.buffer(text, length[0])[:].decode("utf-8")
    return decoded
