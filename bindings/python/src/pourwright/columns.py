"""Calculations on whole columns: NumPy arrays of any length, read where they lie.

It needs NumPy: ``pip install pourwright[numpy]``.

Each column is a one-dimensional array, or a number that counts for all rows (as does an array of one row).
Arrays of ``float64`` are read in place, whatever their strides; other real ones are converted first. What is masked
in a masked array is read as NaN.

A row that cannot be is NaN in the result, and does not stop the others. Pass ``statuses``, an array of ``int32``,
to learn of each row: 0 where it is good, 2 where a number is not finite, 6 where it is refused; the function of the
same name in :mod:`pourwright` says why.

``out`` is where the result goes, an array of ``float64`` with any strides, also one of the columns themselves. The
interpreter is free for other threads meanwhile.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

try:
    import numpy as np
    from numpy.typing import ArrayLike, NDArray
except ImportError as error:
    raise ImportError("pourwright.columns needs NumPy: pip install pourwright[numpy]") from error

from ._call import checked, instance
from ._convert import Conversion
from ._native import ffi, lib

__all__ = ["convert", "density_of_parts", "mass_of_volume", "piece_mass", "salt_for_density"]

Floats = NDArray[np.float64]
Statuses = NDArray[np.int32]
Column = ArrayLike | float
Read = tuple[str, Floats]

_FLOAT = np.dtype(np.float64)
_STATUS = np.dtype(np.int32)


def convert(
    conversion: Conversion, values: Column, *, out: Floats | None = None, statuses: Statuses | None = None
) -> Floats:
    """Converts numbers of one unit into another.

    >>> convert(Conversion("cup", "mL"), [1.0, 2.0]).tolist()
    [236.5882365, 473.176473]

    Args:
        conversion: The prepared conversion.
        values: Numbers of its unit.
        out: Where the result goes; a new array where left out.
        statuses: Receives the status of each row.
    """
    prepared = instance("conversion", conversion, Conversion)._prepared
    return _call(lib.pour_convert_n, [_column("values", values)], out, statuses, before=[prepared])


def mass_of_volume(
    volumes_ml: Column,
    densities_g_per_ml: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Masses of volumes, in g: m = ρV; columns as in :func:`pourwright.mass_of_volume`.

    Args:
        volumes_ml: Volumes.
        densities_g_per_ml: Densities as measured.
        out: Where the result goes; a new array where left out.
        statuses: Receives the status of each row.
    """
    columns = [_column("volumes_ml", volumes_ml), _column("densities_g_per_ml", densities_g_per_ml)]
    return _call(lib.pour_mass_of_volume_n, columns, out, statuses)


def salt_for_density(
    base_ml: Column,
    base_g_per_ml: Column,
    salt_g_per_ml: Column,
    voids: Column,
    density_g_per_ml: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Masses of salt for finished densities, in g; columns as in :func:`pourwright.salt_for_density`.

    Args:
        base_ml: Volumes of base, cold and liquid.
        base_g_per_ml: Their densities.
        salt_g_per_ml: True densities of the salt.
        voids: Shares of the finished volume that are air.
        density_g_per_ml: Finished densities that are wanted.
        out: Where the result goes; a new array where left out.
        statuses: Receives the status of each row.
    """
    columns = [
        _column("base_ml", base_ml),
        _column("base_g_per_ml", base_g_per_ml),
        _column("salt_g_per_ml", salt_g_per_ml),
        _column("voids", voids),
        _column("density_g_per_ml", density_g_per_ml),
    ]
    return _call(lib.pour_salt_for_density_n, columns, out, statuses)


def piece_mass(
    cavity_ml: Column,
    hot_g_per_ml: Column,
    cold_g_per_ml: Column,
    voids: Column = 0.0,
    feed: Column = 0.0,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Masses of pieces, in g; columns as in :func:`pourwright.piece_mass`.

    Args:
        cavity_ml: Volumes of the cavities.
        hot_g_per_ml: Densities at shot temperature.
        cold_g_per_ml: Densities at 20 °C once fused.
        voids: Shares of the volume that are air.
        feed: Shares of the contraction that are drawn from the sprue.
        out: Where the result goes; a new array where left out.
        statuses: Receives the status of each row.
    """
    columns = [
        _column("cavity_ml", cavity_ml),
        _column("hot_g_per_ml", hot_g_per_ml),
        _column("cold_g_per_ml", cold_g_per_ml),
        _column("voids", voids),
        _column("feed", feed),
    ]
    return _call(lib.pour_piece_mass_n, columns, out, statuses)


def density_of_parts(
    masses_g: ArrayLike,
    densities_g_per_ml: ArrayLike,
    voids: Column = 0.0,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Densities of mixes, in g/mL; numbers as in :func:`pourwright.density_of_parts`.

    Args:
        masses_g: A table: a row for each mix, a column for each constituent; or a table of one row for all mixes.
        densities_g_per_ml: A table of the same shape, or one row for all mixes.
        voids: Shares of the volume that are air.
        out: Where the result goes; a new array where left out.
        statuses: Receives the status of each row.
    """
    masses = _floats("masses_g", masses_g)
    densities = _floats("densities_g_per_ml", densities_g_per_ml)
    if masses.ndim != 2 or densities.ndim not in (1, 2):
        raise ValueError("masses_g must be a table, densities_g_per_ml a table or one row.")
    parts = masses.shape[1]
    if densities.shape[-1] != parts:
        raise ValueError(f"{parts} constituents do not go with {densities.shape[-1]} densities.")
    read = [
        ("masses_g", masses),
        ("densities_g_per_ml", np.atleast_2d(densities)),
        _column("voids", voids),
    ]
    return _call(lib.pour_density_of_parts_n, read, out, statuses, behind=[parts])


def _call(
    call: Any,
    given: list[Read],
    out: Floats | None,
    statuses: Statuses | None,
    *,
    before: Sequence[Any] = (),
    behind: Sequence[Any] = (),
) -> Floats:
    """Does a columnar call: the rows, with what stands before and behind, each column, the result, the statuses."""
    if out is not None and not _plain(out, _FLOAT):
        raise TypeError("out must be a plain array of float64.")
    rows = _rows(given, out)
    columns = [(name, _spread(values, rows)) for name, values in given]
    result = _result(out, rows, columns)
    places = [part for _, column in columns for part in (_address(column), *column.strides)]
    written = _statuses(statuses, rows, [*columns, ("the result", result)])
    # The arrays are named here until the call ends: their memory stays.
    checked(call, *before, rows, *behind, *places, _address(result), *result.strides, written)
    return result


def _column(name: str, values: Column) -> Read:
    """One number for each row, or one for all."""
    array = _floats(name, values)
    if array.ndim > 1:
        raise ValueError(f"{name} must be one-dimensional; see numpy.ravel.")
    return name, array


def _floats(name: str, values: ArrayLike) -> Floats:
    """An array of native `float64`: the very same where it is one."""
    if isinstance(values, (list, tuple)) and any(map(np.ma.isMaskedArray, values)):
        values = np.ma.asarray(values)
    array = np.asarray(values)
    if array.dtype != _FLOAT:
        if array.dtype.kind not in "fiu":
            raise TypeError(f"{name} must be real numbers, not {array.dtype}.")
        array = array.astype(_FLOAT)
    if isinstance(values, np.ma.MaskedArray) and values.mask.any():
        # Below a mask there may be any number, such as a -999 that stands for none.
        array = np.where(values.mask, np.nan, array)
    return array


def _rows(columns: list[Read], out: Floats | None) -> int:
    """How many rows the columns have together; where each has one, it counts for all of the result."""
    lengths: set[int] = {column.shape[0] for _, column in columns if column.ndim} - {1}
    if len(lengths) > 1:
        each = ", ".join(f"{name} {column.shape[0]}" for name, column in columns if column.ndim)
        raise ValueError(f"The columns differ in length: {each}.")
    if lengths:
        return lengths.pop()
    return len(out) if out is not None and out.ndim == 1 else 1


def _spread(array: Floats, rows: int) -> Floats:
    """As many rows; one counts for all, by a stride of 0."""
    return array if array.shape[:1] == (rows,) else np.broadcast_to(array, (rows, *array.shape[1:]))


def _plain(array: object, dtype: np.dtype[Any]) -> bool:
    """Whether C can write there all that it has to say, which is not so below a mask."""
    return isinstance(array, np.ndarray) and array.dtype == dtype and not np.ma.isMaskedArray(array)


def _result(out: Floats | None, rows: int, columns: list[Read]) -> Floats:
    """Where the result goes: `out`, where it can be written and overlaps nothing, or a new array."""
    if out is None:
        return np.empty(rows, _FLOAT)
    if out.shape != (rows,):
        raise ValueError(f"out must have the shape ({rows},), not {out.shape}.")
    if not out.flags.writeable:
        raise ValueError("out is read-only.")
    for name, column in columns:
        if _place(column) != _place(out) and np.shares_memory(column, out):
            raise ValueError(f"out overlaps {name}, and is not the same array.")
    return out


def _statuses(statuses: Statuses | None, rows: int, others: list[Read]) -> Any:
    """The address of the statuses; null where they are not asked for."""
    if statuses is None:
        return ffi.NULL
    if not _plain(statuses, _STATUS):
        raise TypeError("statuses must be a plain array of int32.")
    if statuses.shape != (rows,) or not statuses.flags.c_contiguous or not statuses.flags.writeable:
        raise ValueError(f"statuses must be a contiguous, writable array of shape ({rows},).")
    for name, other in others:
        if np.shares_memory(statuses, other):
            raise ValueError(f"statuses overlaps {name}.")
    return ffi.cast("int32_t *", statuses.__array_interface__["data"][0])


def _place(array: Floats) -> tuple[int, tuple[int, ...]]:
    address: int = array.__array_interface__["data"][0]
    return address, array.strides


def _address(array: Floats) -> Any:
    return ffi.cast("double *", array.__array_interface__["data"][0])
