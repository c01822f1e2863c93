"""Errors, of the same shape as in every other door."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

from ._native import ffi, lib

__all__ = ["Fault", "PourwrightError", "PourwrightTypeError"]


@dataclass(frozen=True)
class Fault:
    """One fault of a call.

    Attributes:
        code: Stable name of the kind of fault, such as ``"salt-out-of-reach"``.
        path: Its place, as a JSON Pointer (RFC 6901): in the document, or ``/parameter`` of the
            call; empty for the whole input.
        message: What was found, as a sentence.
        help: What would fix it, as a sentence.
    """

    code: str
    path: str
    message: str
    help: str


class PourwrightError(ValueError):
    """A refused call: one fault or more, in the order in which they were found.

    ``str(error)`` is text to show, a line for each fault. ``code``, ``path``, ``message`` and ``help``
    are those of the first fault.

    Attributes:
        faults: All faults of the input.
        status: The status of the C call, such as 6 for "refused".
    """

    def __init__(self, faults: tuple[Fault, ...], text: str, status: int) -> None:
        super().__init__(faults, text, status)
        self.faults: Final = faults
        self.status: Final = status
        self._text: Final = text

    def __str__(self) -> str:
        return self._text

    @property
    def code(self) -> str:
        """Code of the first fault."""
        return self.faults[0].code

    @property
    def path(self) -> str:
        """Path of the first fault."""
        return self.faults[0].path

    @property
    def message(self) -> str:
        """Message of the first fault."""
        return self.faults[0].message

    @property
    def help(self) -> str:
        """Help of the first fault."""
        return self.faults[0].help


class PourwrightTypeError(PourwrightError, TypeError):
    """A refused call with an argument of the wrong type; it may have other faults too."""


def text_of(pointer: Any) -> str:
    """The text of a C string."""
    text: str = ffi.string(pointer).decode("utf-8")
    return text


def failed(status: int, error: Any) -> PourwrightError:
    """The exception for a call that returned `status` and wrote `error`, which is freed here."""
    error = ffi.gc(error, lib.pour_error_free)
    faults = tuple(
        Fault(
            text_of(lib.pour_error_code(error, index)),
            text_of(lib.pour_error_path(error, index)),
            text_of(lib.pour_error_message(error, index)),
            text_of(lib.pour_error_help(error, index)),
        )
        for index in range(lib.pour_error_count(error))
    )
    return PourwrightError(faults, text_of(lib.pour_error_text(error)), status)


def not_finite(path: str) -> PourwrightError:
    """The exception for a number that cannot be passed to the library."""
    return refused(
        "not-finite", path, "This is not a finite number.", "Check the calculation that made it.", lib.POUR_NOT_FINITE
    )


def refused(code: str, path: str, message: str, help: str, status: int) -> PourwrightError:
    """An exception for a value that cannot be passed to the library."""
    return PourwrightError(*_one(code, path, message, help), status)


def wrong_type(parameter: str, message: str) -> PourwrightTypeError:
    """The exception for an argument of the wrong type."""
    help = "Pass what the parameter takes."
    return PourwrightTypeError(*_one("wrong-type", f"/{parameter}", message, help), lib.POUR_REFUSED)


def _one(code: str, path: str, message: str, help: str) -> tuple[tuple[Fault, ...], str]:
    where = f"{path}: " if path else ""
    return (Fault(code, path, message, help),), f"{where}{message} {help} [{code}]"
