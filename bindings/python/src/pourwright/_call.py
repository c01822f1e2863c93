"""Calls into the C library; its contract is at the top of `pourwright.h`."""

from __future__ import annotations

import operator
import sys
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from types import TracebackType
from typing import Any, SupportsIndex, TypeVar

from ._error import PourwrightError, PourwrightTypeError, failed, not_finite, refused, wrong_type
from ._native import ffi, lib

if lib.pour_abi_version() != lib.POUR_ABI_VERSION:
    raise ImportError("The pourwright library is of another version than this package.")

OMITTED = -sys.float_info.max
"""An omitted number in C."""

_Kind = TypeVar("_Kind")
_Word = TypeVar("_Word", bound=str)

# The largest number means an omitted count.
_MAX = 2**32 - 2

_INSTEAD: Mapping[str, str] = {
    "str": " Amounts as text are for convert, dose_mass and calculate.",
    "ndarray": " For columns use pourwright.columns.",
}


def instance(parameter: str, value: object, kind: type[_Kind]) -> _Kind:
    """The value of a parameter, checked to be of this type."""
    if isinstance(value, kind):
        return value
    raise wrong_type(parameter, f"{parameter} must be of type {kind.__name__}, not {type(value).__name__}.")


def real(parameter: str, value: Any) -> float:
    """A number for C: anything that Python can convert to a float, except text."""
    kind = type(value)
    if kind is not float:
        # `float` alone would also read text and bytes.
        if not (hasattr(kind, "__float__") or hasattr(kind, "__index__")) or issubclass(kind, str):
            raise _not_real(parameter, kind)
        try:
            value = float(value)
        except (OverflowError, ValueError):
            raise not_finite(f"/{parameter}") from None
        except TypeError:  # an array of several
            raise _not_real(parameter, kind) from None
    if value == OMITTED:
        message = f"{parameter} is {value}, which is out of range."
        raise refused("out-of-range", f"/{parameter}", message, "Check the number.", lib.POUR_REFUSED)
    return value  # type: ignore[no-any-return]


def _not_real(parameter: str, kind: type[Any]) -> PourwrightTypeError:
    message = f"{parameter} must be a real number, not {kind.__name__}."
    return wrong_type(parameter, message + _INSTEAD.get(kind.__name__, ""))


def whole(parameter: str, value: Any) -> int:
    """A count for C; cffi would truncate some fractions."""
    try:
        count = operator.index(value)
    except TypeError:
        message = f"{parameter} must be a whole number, not {type(value).__name__}."
        raise wrong_type(parameter, message) from None
    if not 0 <= count <= _MAX:
        message = f"{parameter} is not a count."
        help = f"Give a whole number from 0 to {_MAX}."
        raise refused("out-of-range", f"/{parameter}", message, help, lib.POUR_REFUSED)
    return count


def word(words: Sequence[str], parameter: str, chosen: str) -> int:
    """The number of a word."""
    try:
        return words.index(instance(parameter, chosen, str)) + 1
    except ValueError as error:
        if isinstance(error, PourwrightError):
            raise
        message = f"{chosen!r} is not a word for {parameter}."
        help = f"Known: {', '.join(words)}."
        raise refused("unknown-word", f"/{parameter}", message, help, lib.POUR_UNKNOWN_NUMBER) from None


def c_text(parameter: str, text: str) -> bytes:
    """Text for C, where a NUL would end it."""
    if "\0" in instance(parameter, text, str):
        message, help = f"{parameter} must not have a NUL character.", "Remove it."
        raise refused("wrong-type", f"/{parameter}", message, help, lib.POUR_REFUSED)
    return text.encode("utf-8", "surrogatepass")


class Arguments:
    """The arguments of one call as C takes them. Their errors are collected and raised together."""

    __slots__ = ("_errors", "_kept")

    def __init__(self) -> None:
        """No argument yet."""
        self._errors: list[PourwrightError] = []
        # C reads these until the call ends.
        self._kept: list[Any] = []

    def _keep(self, otherwise: Any, read: Callable[..., Any], *arguments: Any) -> Any:
        try:
            return read(*arguments)
        except PourwrightError as error:
            self._errors.append(error)
            return otherwise

    def number(self, name: str, value: float) -> float:
        """A number."""
        return value if type(value) is float and value != OMITTED else self._keep(0.0, real, name, value)

    def optional_number(self, name: str, value: float | None) -> float:
        """A number, or none."""
        return OMITTED if value is None else self.number(name, value)

    def count(self, name: str, value: SupportsIndex) -> int:
        """A count."""
        return self._keep(0, whole, name, value)  # type: ignore[no-any-return]

    def optional_count(self, name: str, value: SupportsIndex | None) -> int:
        """A count, or none."""
        return int(lib.POUR_OMITTED_COUNT) if value is None else self.count(name, value)

    def word(self, words: Sequence[str], name: str, chosen: str) -> int:
        """The number of a word."""
        return self._keep(0, word, words, name, chosen)  # type: ignore[no-any-return]

    def optional_word(self, words: Sequence[str], name: str, chosen: str | None) -> int:
        """The number of a word, or 0 for none."""
        return 0 if chosen is None else self.word(words, name, chosen)

    def text(self, name: str, text: str) -> Any:
        """A text."""
        made = ffi.new("char[]", self._keep(b"", c_text, name, text))
        self._kept.append(made)
        return made

    def optional_text(self, name: str, text: str | None) -> Any:
        """A text, or none."""
        return ffi.NULL if text is None else self.text(name, text)

    def list(self, kind: str, columns: int, name: str, values: Iterable[Any]) -> tuple[Any, int]:
        """A list of numbers (0 columns) or of rows, with its length."""
        numbers = self._keep([], _listed, columns, name, values)
        made = ffi.new(kind, numbers)
        self._kept.append(made)
        return made, len(numbers)

    def optional_list(self, kind: str, columns: int, name: str, values: Iterable[Any] | None) -> tuple[Any, int]:
        """The same, or none."""
        return (ffi.NULL, 0) if values is None else self.list(kind, columns, name, values)

    def check(self) -> None:
        """Raises the errors so far."""
        if self._errors:
            raise _together(self._errors)

    def call(self, function: Callable[..., int], *arguments: Any) -> None:
        """Does the call if there are no errors yet; raises all errors."""
        self.check()
        if function(*arguments, ffi.NULL):
            # Such calls change nothing: call again to get the error.
            checked(function, *arguments)


def _listed(columns: int, name: str, values: Iterable[Any]) -> list[Any]:
    """Numbers for C, each named by its path: ``parts/3/1``."""
    if isinstance(values, (str, bytes)) or not isinstance(values, Iterable):
        raise wrong_type(name, f"{name} must be a sequence, not {type(values).__name__}.")
    if columns == 0:
        return [real(f"{name}/{index}", value) for index, value in enumerate(values)]
    rows = []
    for index, row in enumerate(values):
        numbers = list(row) if isinstance(row, Iterable) and not isinstance(row, (str, bytes)) else []
        if len(numbers) != columns:
            # cffi would fill a shorter row with zeros.
            raise wrong_type(f"{name}/{index}", f"{name}/{index} must be {columns} numbers.")
        rows.append([real(f"{name}/{index}/{column}", value) for column, value in enumerate(numbers)])
    return rows


def _together(errors: Sequence[PourwrightError]) -> PourwrightError:
    """All errors as one."""
    faults = tuple(fault for error in errors for fault in error.faults)
    kind = next((type(error) for error in errors if isinstance(error, PourwrightTypeError)), type(errors[0]))
    return kind(faults, "\n".join(map(str, errors)), errors[0].status)


def if_number(number: float) -> float | None:
    """A number, or None for NaN."""
    return None if number != number else number


def if_count(count: int) -> int | None:
    """A count, or None."""
    return None if count == lib.POUR_OMITTED_COUNT else count


def word_at(words: tuple[_Word, ...], place: int) -> _Word:
    """The word with this number."""
    return words[place - 1]


def if_word(words: tuple[_Word, ...], place: int) -> _Word | None:
    """A word, or None."""
    return words[place - 1] if place else None


def checked(call: Callable[..., int], *arguments: Any) -> None:
    """Does a call; raises its error."""
    error = ffi.new("pour_error **")
    status = call(*arguments, error)
    if status:
        raise failed(status, error[0])


@contextmanager
def stopping(stop: Callable[[], object] | None) -> Iterator[Any]:
    """The question for C whether to stop; raises what `stop` raised, or a signal's handler meanwhile."""
    if stop is not None and not callable(stop):
        raise wrong_type("stop", f"stop must be callable, not {type(stop).__name__}.")
    raised = list[BaseException]()

    def asked(_user: Any) -> bool:
        return stop is not None and bool(stop())

    # No exception can cross the library. A signal's handler may raise anywhere in `asked`, which so cannot catch it.
    def failed_with(_kind: object, error: BaseException, traceback: TracebackType) -> None:
        raised.append(error.with_traceback(traceback))

    try:
        yield ffi.callback("int32_t(void *)", asked, 1, failed_with)
    except PourwrightError:
        if raised:
            raise raised[0] from None
        raise


def number(call: Callable[..., int], *arguments: Any) -> float:
    """The number that a call writes through the pointer after its `arguments`.

    Such calls change nothing: to get the error, it calls again.
    """
    result = ffi.new("double *")
    if call(*arguments, result, ffi.NULL):
        checked(call, *arguments, result)
    value: float = result[0]
    return value


def handed_out(call: Callable[..., int], *arguments: Any) -> str:
    """The text that a call writes through the pointers after its `arguments`."""
    out = ffi.new("char **")
    length = ffi.new("size_t *")
    checked(call, *arguments, out, length)
    text = ffi.gc(out[0], lib.pour_string_free)
    decoded: str = ffi.buffer(text, length[0])[:].decode("utf-8")
    return decoded
