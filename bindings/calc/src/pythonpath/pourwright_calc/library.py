"""The C library, which is next to the component."""

import ctypes
import functools
import os
import sys
from typing import Any, Callable, List, Optional

from .fault import Fault, Refused
from .table import ABI

OK = 0
OMITTED = -1.7976931348623157e308
OMITTED_COUNT = 2**32 - 1

_FILE = {"darwin": "libpourwright.dylib", "win32": "pourwright.dll"}.get(sys.platform, "libpourwright.so")
# This package is in pythonpath/, the library next to that.
_PATH = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", _FILE)

Error = ctypes.c_void_p
_Texts = ctypes.c_char_p


def _load() -> ctypes.CDLL:
    library = ctypes.CDLL(_PATH)
    library.pour_abi_version.restype = ctypes.c_uint32
    if library.pour_abi_version() != ABI:
        raise ImportError("{} is of another version than the add-in: build it again.".format(_FILE))
    library.pour_version.restype = _Texts
    library.pour_error_count.argtypes = [Error]
    library.pour_error_count.restype = ctypes.c_size_t
    for name in ("path", "message", "help", "code"):
        of_fault = library["pour_error_" + name]
        of_fault.argtypes = [Error, ctypes.c_size_t]
        of_fault.restype = _Texts
        setattr(library, "pour_error_" + name, of_fault)
    library.pour_error_json.argtypes = [Error]
    library.pour_error_json.restype = _Texts
    library.pour_error_free.argtypes = [Error]
    library.pour_error_free.restype = None
    library.pour_string_free.argtypes = [ctypes.c_void_p]
    library.pour_string_free.restype = None
    library.pour_convert.argtypes = [_Texts, _Texts, ctypes.c_int32, ctypes.c_void_p, ctypes.c_void_p]
    library.pour_convert.restype = ctypes.c_int32
    for name, handles in {"pour_request": 0, "pour_book_request": 1}.items():
        ask = getattr(library, name)
        texts = [ctypes.c_char_p, ctypes.c_size_t, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_void_p]
        ask.argtypes = [ctypes.c_void_p] * handles + texts
        ask.restype = ctypes.c_int32
    library.pour_book_from_json.argtypes = [ctypes.c_char_p, ctypes.c_size_t, ctypes.c_void_p, ctypes.c_void_p]
    library.pour_book_from_json.restype = ctypes.c_int32
    library.pour_book_free.argtypes = [ctypes.c_void_p]
    library.pour_book_free.restype = None
    library.pour_book_plan.argtypes = [ctypes.c_void_p, *library.pour_book_from_json.argtypes]
    library.pour_book_plan.restype = ctypes.c_int32
    library.pour_plan_json.argtypes = [ctypes.c_void_p, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_void_p]
    library.pour_plan_json.restype = ctypes.c_int32
    library.pour_plan_free.argtypes = [ctypes.c_void_p]
    library.pour_plan_free.restype = None
    library.pour_schema.argtypes = [ctypes.c_char_p, ctypes.c_void_p, ctypes.c_void_p, ctypes.c_void_p]
    library.pour_schema.restype = ctypes.c_int32
    return library


LIBRARY = _load()


def version() -> str:
    return str(LIBRARY.pour_version().decode())


def take_faults(error: ctypes.c_void_p) -> List[Fault]:
    """The faults of an error, which is freed."""
    faults = []
    for index in range(LIBRARY.pour_error_count(error)):
        texts = [
            getattr(LIBRARY, "pour_error_" + name)(error, index).decode()
            for name in ("path", "message", "help", "code")
        ]
        faults.append(Fault(texts[0].lstrip("/"), *texts[1:]))
    LIBRARY.pour_error_free(error)
    return faults


def checked(call: Callable[[Any], int]) -> None:
    """Makes a call that takes the address of its error at last."""
    error = ctypes.c_void_p()
    if call(ctypes.byref(error)) != OK:
        raise Refused(take_faults(error))


def convert(text: str, unit: str, measures: int) -> float:
    """An amount as a text, in a unit."""
    number = ctypes.c_double()
    amount = c_text(text)
    checked(lambda error: LIBRARY.pour_convert(amount, unit.encode(), measures, ctypes.byref(number), error))
    return number.value


def c_text(text: str) -> bytes:
    """A text for C: it has no NUL, and no halves of letters, which a cell may hold."""
    return text.replace("\0", "\ufffd").encode("utf-8", "replace")


def _text_of(call: Callable[..., int]) -> str:
    """The text of a call that takes the addresses of a text, of its length and of an error."""
    out, length = ctypes.c_void_p(), ctypes.c_size_t()
    checked(lambda error: call(ctypes.byref(out), ctypes.byref(length), error))
    try:
        return ctypes.string_at(out, length.value).decode()
    finally:
        LIBRARY.pour_string_free(out)


class _Book:
    """An open book."""

    def __init__(self, text: str) -> None:
        document = c_text(text)
        self.handle = ctypes.c_void_p()
        checked(lambda error: LIBRARY.pour_book_from_json(document, len(document), ctypes.byref(self.handle), error))

    def __del__(self) -> None:
        LIBRARY.pour_book_free(self.handle)


# A sheet asks the same book and the same day from many cells. A text has the same answer always.
book = functools.lru_cache(maxsize=4)(_Book)


@functools.lru_cache(maxsize=64)
def _answer(request: str, in_book: Optional[str]) -> str:
    document = c_text(request)
    if in_book is None:
        return _text_of(lambda *out: LIBRARY.pour_request(document, len(document), *out))
    handle = book(in_book).handle
    return _text_of(lambda *out: LIBRARY.pour_book_request(handle, document, len(document), *out))


def answer(request: str, in_book: Optional[str]) -> str:
    """The answer to a request, as JSON."""
    return _answer(request, in_book)


@functools.lru_cache(maxsize=8)
def plan(in_book: str, orders: str) -> str:
    """The plan of a day, as JSON."""
    document = c_text(orders)
    made = ctypes.c_void_p()
    opened = book(in_book).handle
    checked(lambda error: LIBRARY.pour_book_plan(opened, document, len(document), ctypes.byref(made), error))
    try:
        return _text_of(lambda *out: LIBRARY.pour_plan_json(made, *out))
    finally:
        LIBRARY.pour_plan_free(made)


@functools.lru_cache(maxsize=None)
def schema(name: str) -> str:
    """The schema of a kind of document, as JSON."""
    return _text_of(lambda *out: LIBRARY.pour_schema(name.encode(), *out))
