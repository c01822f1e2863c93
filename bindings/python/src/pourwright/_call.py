"""Calls into the C library: its contract stands at the top of `pourwright.h`."""

from __future__ import annotations

import operator
from collections.abc import Callable, Iterable, Mapping
from typing import Any, Literal, TypeVar

from ._error import failed, not_finite, refused
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

_Kind = TypeVar("_Kind")

_MOST = 2**32 - 1

_INSTEAD: Mapping[str, str] = {
    "str": " Amounts as one says them are for convert_amount, dose_mass and calculate.",
    "ndarray": " For whole columns there is pourwright.columns.",
}


def instance(parameter: str, value: object, kind: type[_Kind]) -> _Kind:
    """What a parameter holds, which must be of its kind."""
    if isinstance(value, kind):
        return value
    raise TypeError(f"{parameter} must be of type {kind.__name__}, not {type(value).__name__}.")


def real(parameter: str, value: Any) -> float:
    """A number for C: whatever Python takes for one, but no text."""
    kind = type(value)
    if kind is float:
        return value  # type: ignore[no-any-return]
    # By itself, `float` would read text and bytes.
    if (hasattr(kind, "__float__") or hasattr(kind, "__index__")) and not issubclass(kind, str):
        try:
            return float(value)
        except (OverflowError, ValueError):
            raise not_finite(f"/{parameter}") from None
        except TypeError:
            pass  # an array of several
    raise TypeError(f"{parameter} must be a real number, not {kind.__name__}.{_INSTEAD.get(kind.__name__, '')}")


def reals(parameter: str, values: Iterable[object]) -> list[float]:
    """Numbers for C, each named by its place: ``parameter/0``, as in paths."""
    if not isinstance(values, Iterable):
        raise TypeError(f"{parameter} must be a sequence of numbers, not {type(values).__name__}.")
    return [real(f"{parameter}/{index}", value) for index, value in enumerate(values)]


def whole(parameter: str, value: Any) -> int:
    """A count for C; cffi would drop what is behind the point of some numbers."""
    try:
        count = operator.index(value)
    except TypeError:
        raise TypeError(f"{parameter} must be a whole number, not {type(value).__name__}.") from None
    if not 0 <= count <= _MOST:
        help = f"Give a whole number from 0 to {_MOST}."
        raise refused("not-a-count", f"/{parameter}", "This is no count.", help, lib.POUR_REFUSED)
    return count


def word(table: Mapping[str, int], parameter: str, chosen: str) -> int:
    """The number that stands for a word."""
    try:
        return table[instance(parameter, chosen, str)]
    except KeyError:
        known = ", ".join(f'"{one}"' for one in table)
        raise ValueError(f"{parameter} must be one of {known}, not {chosen!r}.") from None


def c_text(parameter: str, text: str) -> bytes:
    """Text for C, where a NUL would end it."""
    if "\0" in instance(parameter, text, str):
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
