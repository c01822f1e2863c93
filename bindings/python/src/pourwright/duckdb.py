"""All calculations as functions of DuckDB, which take whole columns over Arrow.

It needs DuckDB: ``pip install pourwright[duckdb]``.

>>> import duckdb
>>> from pourwright.duckdb import register
>>> shop = register(duckdb.connect())
>>> shop.sql("SELECT pour_convert('1/4 tsp', 'mL')").fetchall()
[(1.2322303984375,)]
>>> shop.sql("SELECT pour_piece_mass('9.5 mL', 1.05).piece_mass_g").fetchall()
[(9.975000000000001,)]
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any

try:
    import duckdb  # noqa: F401
except ImportError as _missing:
    raise ImportError("pourwright.duckdb needs DuckDB: pip install pourwright[duckdb]") from _missing
try:
    import pyarrow as pa

    from ._arrow import on_columns, reasons, result_type, results_of
except ImportError as _missing:
    raise ImportError("pourwright.duckdb needs PyArrow and NumPy: pip install pourwright[duckdb]") from _missing

from ._entry import Calculation
from ._error import wrong_type
from ._rows import CALCULATIONS, Given

if TYPE_CHECKING:
    from duckdb import DuckDBPyConnection

__all__ = ["register"]


def register(connection: DuckDBPyConnection, prefix: str = "pour_") -> DuckDBPyConnection:
    """Registers every calculation at a connection, as ``pour_piece_mass(...)``; returns the connection.

    Arguments are in the order of the parameters, each a number in its unit, an amount as a text in any unit of its
    kind, a word, or a list; or one struct with all of them by name: ``pour_piece_mass({cavity_volume_ml: '9.5 mL',
    cold_density_g_per_ml: 1.05})``. Optional parameters are omitted at the end, omitted in the struct, or NULL as it is
    written. Where a column has a NULL, the result is NULL.

    One result comes as a DOUBLE, several as a STRUCT. A row that is refused is NaN, or NULL where the result is a word
    or a list; ``pour_why('pour_convert', amount, 'mL')`` gives the reason, or NULL.

    Args:
        connection: Of DuckDB.
        prefix: Begins the names of the functions.

    Raises:
        duckdb.Error: A function with one of the names is registered already.
    """
    for calculation in CALCULATIONS.values():
        _create(connection, prefix + calculation.name, _function(calculation), result_type(calculation, status=False))
    _create(connection, f"{prefix}why", _why(prefix), pa.string())
    return connection


def _create(connection: DuckDBPyConnection, name: str, function: Callable[..., Any], kind: Any) -> None:
    # The types of arguments are those of the call: the declarations of DuckDB do not know functions of any number.
    create: Any = connection.create_function
    create(name, function, None, _sql_type(kind), type="arrow", null_handling="special")


def _sql_type(kind: Any) -> Any:
    """The type of SQL for one of Arrow."""
    if pa.types.is_struct(kind):
        return "STRUCT(" + ", ".join(f'"{field.name}" {_sql_type(field.type)}' for field in kind) + ")"
    if pa.types.is_list(kind):
        return f"{_sql_type(kind.value_type)}[]"
    return {pa.float64(): "DOUBLE", pa.int64(): "BIGINT", pa.string(): "VARCHAR"}[kind]


def _named(calculation: Calculation, columns: tuple[Any, ...]) -> dict[str, Any]:
    """The columns by the names of the parameters; None for those that are omitted."""
    parameters = calculation.parameters
    if len(columns) == 1 and pa.types.is_struct(columns[0].type):
        whole = columns[0].combine_chunks() if isinstance(columns[0], pa.ChunkedArray) else columns[0]
        names = [field.name for field in whole.type]
        known = [parameter.name for parameter in parameters]
        if unknown := [name for name in names if name not in known]:
            raise wrong_type(unknown[0], f"{unknown[0]} is not a parameter. Known: {', '.join(known)}.")
        given = dict(zip(names, whole.flatten()))
    else:
        if len(columns) > len(parameters):
            raise wrong_type(
                "arguments", f"{calculation.name} takes {len(parameters)} arguments at most, not {len(columns)}."
            )
        given = {parameter.name: column for parameter, column in zip(parameters, columns)}
    for parameter in parameters:
        column = given.setdefault(parameter.name, None)
        if column is not None and parameter.optional and pa.types.is_null(column.type):
            given[parameter.name] = None
    return given


def _function(calculation: Calculation) -> Callable[..., Any]:
    def function(*columns: Any) -> Any:
        return on_columns(calculation, _named(calculation, columns), results_of(calculation, None))

    return function


def _why(prefix: str) -> Callable[..., Any]:
    def why(function: Any, *columns: Any) -> Any:
        names = set(function.drop_null().unique().to_pylist())
        name = names.pop() if len(names) == 1 else ""
        calculation = CALCULATIONS.get(str(name).removeprefix(prefix))
        if calculation is None or not str(name).startswith(prefix):
            raise wrong_type(
                "function", f"{prefix}why takes the name of one function, such as '{prefix}convert', first."
            )

        def results(read: Mapping[str, Given], rows: int, nulls: Any) -> Any:
            from ._rows import calculate

            _, statuses = calculate(calculation, read, rows, nulls)
            return reasons(calculation, read, statuses, nulls, str)

        return on_columns(calculation, _named(calculation, columns), results)

    return why
