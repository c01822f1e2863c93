"""Calculations on whole columns: NumPy arrays of any length, read where they lie.

It needs NumPy: ``pip install pourwright[numpy]``.

Each column is a one-dimensional array, or a number that counts for all rows (as does an array of one row).
Arrays of ``float64`` are read in place, whatever their strides; other real ones are converted first.

A row that cannot be is NaN in the result, and does not stop the others. Pass ``statuses``, an array of ``int32``,
to learn of each row: 0 where it is good, 2 where a number is not finite, 6 where it is refused; the function of the
same name in :mod:`pourwright` says why.

``out`` is where the result goes, an array of ``float64`` with any strides, also one of the columns themselves. The
interpreter is free for other threads meanwhile.
"""

from __future__ import annotations

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
    return _call(lib.pour_convert_n, [("values", values)], out, statuses, prepared)


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
    columns = [("volumes_ml", volumes_ml), ("densities_g_per_ml", densities_g_per_ml)]
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
        ("base_ml", base_ml),
        ("base_g_per_ml", base_g_per_ml),
        ("salt_g_per_ml", salt_g_per_ml),
        ("voids", voids),
        ("density_g_per_ml", density_g_per_ml),
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
        ("cavity_ml", cavity_ml),
        ("hot_g_per_ml", hot_g_per_ml),
        ("cold_g_per_ml", cold_g_per_ml),
        ("voids", voids),
        ("feed", feed),
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
        masses_g: A table: a row for each mix, a column for each constituent.
        densities_g_per_ml: A table of the same shape, or one row for all mixes.
        voids: Shares of the volume that are air.
        out: Where the result goes; a new array where left out.
        statuses: Receives the status of each row.
    """
    masses = _floats("masses_g", masses_g)
    densities = _floats("densities_g_per_ml", densities_g_per_ml)
    if masses.ndim != 2 or densities.ndim not in (1, 2):
        raise ValueError("masses_g must be a table, densities_g_per_ml a table or one row.")
    rows, parts = masses.shape
    if densities.shape[-1] != parts:
        raise ValueError(f"{parts} constituents do not go with {densities.shape[-1]} densities.")
    densities = np.broadcast_to(densities, (rows, parts))
    shares = _column("voids", voids, rows)
    result = _result(out, rows, [("masses_g", masses), ("densities_g_per_ml", densities), ("voids", shares)])
    checked(
        lib.pour_density_of_parts_n,
        rows,
        parts,
        _address(masses),
        *masses.strides,
        _address(densities),
        *densities.strides,
        _address(shares),
        *shares.strides,
        _address(result),
        *result.strides,
        _statuses(statuses, rows, result),
    )
    return result


def _call(
    call: Any,
    given: list[tuple[str, Column]],
    out: Floats | None,
    statuses: Statuses | None,
    *first: Any,
) -> Floats:
    """Does a columnar call: `first`, the rows, each column with its stride, the result, the statuses."""
    read = [(name, _floats(name, values)) for name, values in given]
    rows = _rows(read, out)
    columns = [(name, _column(name, values, rows)) for name, values in read]
    result = _result(out, rows, columns)
    spread = [part for _, column in columns for part in (_address(column), column.strides[0])]
    # The arrays are named here until the call ends: their memory stays.
    checked(call, *first, rows, *spread, _address(result), result.strides[0], _statuses(statuses, rows, result))
    return result


def _floats(name: str, values: Column) -> Floats:
    """An array of native `float64`: the very same where it is one."""
    array = np.asarray(values)
    if array.dtype == _FLOAT:
        return array
    if array.dtype.kind not in "fiu":
        raise TypeError(f"{name} must be real numbers, not {array.dtype}.")
    return array.astype(_FLOAT)


def _rows(columns: list[tuple[str, Floats]], out: Floats | None) -> int:
    """How many rows the columns have together."""
    lengths: set[int] = {column.shape[0] for _, column in columns if column.ndim == 1}
    long = lengths - {1}
    if len(long) > 1:
        each = ", ".join(f"{name} {column.shape[0]}" for name, column in columns if column.ndim == 1)
        raise ValueError(f"The columns differ in length: {each}.")
    if long:
        return long.pop()
    if lengths or out is None:
        return 1
    return len(out) if out.ndim == 1 else 1


def _column(name: str, values: Column, rows: int) -> Floats:
    """A column of `rows`; what has one row counts for all, by a stride of 0."""
    array = _floats(name, values)
    if array.ndim > 1:
        raise ValueError(f"{name} must be one-dimensional; see numpy.ravel.")
    if array.ndim == 1 and array.shape[0] == rows:
        return array
    return np.broadcast_to(array, (rows,))


def _result(out: Floats | None, rows: int, columns: list[tuple[str, Floats]]) -> Floats:
    """Where the result goes: `out`, where it can be written and overlaps nothing, or a new array."""
    if out is None:
        return np.empty(rows, _FLOAT)
    if not isinstance(out, np.ndarray) or out.dtype != _FLOAT:
        raise TypeError("out must be an array of float64.")
    if out.shape != (rows,):
        raise ValueError(f"out must have the shape ({rows},), not {out.shape}.")
    if not out.flags.writeable:
        raise ValueError("out is read-only.")
    for name, column in columns:
        same = _place(column) == _place(out)
        if not same and np.may_share_memory(column, out) and np.shares_memory(column, out):
            raise ValueError(f"out overlaps {name}, and is not the same array.")
    return out


def _statuses(statuses: Statuses | None, rows: int, result: Floats) -> Any:
    """The address of the statuses; null where they are not asked for."""
    if statuses is None:
        return ffi.NULL
    if not isinstance(statuses, np.ndarray) or statuses.dtype != _STATUS:
        raise TypeError("statuses must be an array of int32.")
    if statuses.shape != (rows,) or not statuses.flags.c_contiguous or not statuses.flags.writeable:
        raise ValueError(f"statuses must be a contiguous, writable array of shape ({rows},).")
    if np.may_share_memory(statuses, result):
        raise ValueError("statuses overlaps the result.")
    return ffi.cast("int32_t *", statuses.__array_interface__["data"][0])


def _place(array: Floats) -> tuple[int, tuple[int, ...]]:
    address: int = array.__array_interface__["data"][0]
    return address, array.strides


def _address(array: Floats) -> Any:
    return ffi.cast("double *", array.__array_interface__["data"][0])
