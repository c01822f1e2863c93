"""Columns of texts, and the amounts in them."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import pairwise
from typing import Any, NamedTuple

import numpy as np
from numpy.typing import NDArray

from ._call import checked
from ._native import ffi, lib

Floats = NDArray[np.float64]
Statuses = NDArray[np.int32]


def address(array: NDArray[Any]) -> int:
    """Where an array is."""
    place: int = array.__array_interface__["data"][0]
    return place


class TextColumn(NamedTuple):
    """Texts in UTF-8, one after the other, each with the offset of its start, the last also with that of its end."""

    letters: Any
    offsets: NDArray[np.int64]

    def __len__(self) -> int:
        return len(self.offsets) - 1

    def at(self, row: int) -> bytes:
        """The text of a row."""
        return bytes(memoryview(self.letters)[self.offsets[row] : self.offsets[row + 1]])

    def all(self) -> list[bytes]:
        """All texts."""
        letters, ends = bytes(memoryview(self.letters)), self.offsets.tolist()
        return [letters[start:end] for start, end in pairwise(ends)]

    def take(self, rows: NDArray[np.intp]) -> TextColumn:
        """The texts of these rows."""
        return text_column([self.at(row) for row in rows.tolist()])


def text_column(texts: Iterable[str | bytes]) -> TextColumn:
    """A column of these texts. A lone surrogate becomes bytes that are not UTF-8, which the library refuses."""
    each = [text.encode("utf-8", "surrogatepass") if isinstance(text, str) else text for text in texts]
    offsets = np.zeros(len(each) + 1, np.int64)
    np.cumsum([len(text) for text in each], out=offsets[1:])
    return TextColumn(b"".join(each), offsets)


def read_amounts(texts: TextColumn, unit: bytes, measures: int) -> tuple[Floats, Statuses]:
    """Amounts as numbers of a unit, NaN where refused, and the status of each.

    Raises:
        PourwrightError: There is no such unit.
    """
    rows = len(texts)
    numbers, statuses = np.empty(rows), np.zeros(rows, np.int32)
    letters = ffi.from_buffer("char[]", texts.letters)
    offsets = np.ascontiguousarray(texts.offsets)
    checked(
        lib.pour_convert_texts_n,
        rows,
        letters,
        ffi.cast("int64_t *", address(offsets)),
        unit,
        measures,
        ffi.new("pour_result_column *", [ffi.cast("double *", address(numbers)), 8])[0],
        ffi.cast("int32_t *", address(statuses)),
    )
    return numbers, statuses
