"""Calculations as expressions of Polars, over Arrow."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from functools import partial, wraps
from typing import Any

try:
    import polars as pl
except ImportError as _missing:
    raise ImportError("pourwright.polars needs Polars: pip install pourwright[polars]") from _missing
try:
    import pyarrow as pa

    from . import _arrow
except ImportError as _missing:
    raise ImportError("pourwright.polars needs PyArrow and NumPy: pip install pourwright[polars]") from _missing

from ._rows import CALCULATIONS

Expression = pl.Expr
"""An expression of Polars."""

Cells = pl.Expr | pl.Series | str | float
"""An expression; or a number, a text or a word for all rows."""

Lists = pl.Expr | pl.Series | Sequence[Any]
"""An expression of lists; or one sequence for all rows."""


def calculated(name: str, given: Mapping[str, Any], status: bool) -> Expression:
    """The expression that does a calculation on columns."""
    columns = {field: value for field, value in given.items() if isinstance(value, pl.Expr)}
    ones = {field: value for field, value in given.items() if field not in columns}
    made = _dtype(_arrow.result_type(CALCULATIONS[name], status))

    def of_rows(series: Sequence[pl.Series]) -> pl.Series:
        arrays = {field: one.to_arrow() for field, one in zip(columns, series)}
        return pl.Series(name, _arrow.calculated(name, {**ones, **arrays}, status), made)

    if columns:
        return pl.map_batches(list(columns.values()), of_rows, return_dtype=made, is_elementwise=True)
    return pl.lit(of_rows([]))


def _dtype(kind: Any) -> Any:
    """The type of Polars for one of Arrow."""
    return pl.Series(pa.array([], kind)).dtype


class Pour:
    """The namespace ``pour`` of an expression: the functions of :mod:`pourwright.polars`, called on what is first."""

    def __init__(self, expression: pl.Expr) -> None:
        self._expression = expression

    def __getattr__(self, name: str) -> Callable[..., pl.Expr]:
        from . import polars

        if name not in CALCULATIONS:
            raise AttributeError(f"There is no calculation {name}; see help(pourwright.polars).")
        function: Callable[..., pl.Expr] = getattr(polars, name)
        return wraps(function)(partial(function, self._expression))

    def __dir__(self) -> list[str]:
        return list(CALCULATIONS)


pl.api.register_expr_namespace("pour")(Pour)
