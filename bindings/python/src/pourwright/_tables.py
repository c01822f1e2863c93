"""A plan as tables: rows of plain values, which Arrow and data frames take over."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from decimal import Decimal
from typing import TYPE_CHECKING, Any, NamedTuple

if TYPE_CHECKING:
    import pandas
    import polars
    import pyarrow

Row = dict[str, Any]
_Entry = Mapping[str, Any]


class _Column(NamedTuple):
    """A column: where its value is in an entry of the plan, and its type."""

    name: str
    kind: type
    of: str | Callable[[_Entry], Any]


class _Table(NamedTuple):
    """A table: its entries in a plan, each merged of those that it is part of, and its columns."""

    entries: Callable[[_Entry], Iterator[_Entry]]
    columns: tuple[_Column, ...]


def _at(entry: Any, path: str) -> Any:
    """What is at a path of names; None where it is not, or is not known."""
    for name in path.split("."):
        if not isinstance(entry, Mapping):
            return None
        entry = entry.get(name)
    return entry


def _draws(pot: _Entry) -> Iterator[_Entry]:
    for stage in pot["stages"]:
        yield from stage["draws"]


def _pieces(name: str) -> Callable[[_Entry], int]:
    return lambda pot: sum(pieces[name] for draw in _draws(pot) for pieces in draw["pieces"])


def _pots(plan: _Entry) -> Iterator[_Entry]:
    yield from plan["pots"]


def _weigh(plan: _Entry) -> Iterator[_Entry]:
    for pot in plan["pots"]:
        for number, stage in enumerate(pot["stages"], 1):
            for place, line in enumerate(stage["weigh"], 1):
                yield {**line, "pot": pot["pot"], "stage": number, "line": place, "formulas": stage["formulas"]}


def _lines(plan: _Entry) -> Iterator[_Entry]:
    for place, line in enumerate(plan["lines"], 1):
        yield {**line, "line": place}


def _clock(plan: _Entry) -> Iterator[_Entry]:
    yield from _at(plan, "clock.known.spans") or []


def _stock(plan: _Entry) -> Iterator[_Entry]:
    yield from plan["stock"]


def _line_costs(plan: _Entry) -> Iterator[_Entry]:
    for place, cost in enumerate(_at(plan, "cost.known.lines") or [], 1):
        yield {
            **cost,
            "line": place,
            "order": plan["lines"][place - 1]["order"],
            "what": plan["lines"][place - 1]["what"],
        }


def _material_costs(plan: _Entry) -> Iterator[_Entry]:
    yield from _at(plan, "cost.known.used") or []


def _money(name: str) -> Callable[[_Entry], Decimal | None]:
    def money(entry: _Entry) -> Decimal | None:
        amount = _at(entry, f"{name}.amount")
        return None if amount is None else Decimal(amount)

    return money


def _joined(name: str, between: str) -> Callable[[_Entry], str]:
    return lambda entry: between.join(entry[name])


_TABLES: Mapping[str, _Table] = {
    "pots": _Table(
        _pots,
        (
            _Column("pot", str, "pot"),
            _Column("name", str, "id"),
            _Column("cup", str, "cup_name"),
            _Column("cup_ml", float, "cup.value"),
            _Column("stages", int, lambda pot: len(pot["stages"])),
            _Column("mass_g", float, lambda pot: pot["stages"][0]["holds"]["value"]),
            _Column("volume_ml", float, lambda pot: pot["stages"][0]["fills"]["value"]),
            _Column("shots", int, lambda pot: sum(draw["shots"] for draw in _draws(pot))),
            _Column("pieces_ordered", int, _pieces("ordered")),
            _Column("pieces_made", int, _pieces("made")),
            _Column("heats", int, "heats.count"),
            _Column("lost_g", float, "lost.value"),
            _Column("left_over_g", float, "left_over.value"),
            _Column("sprues_g", float, "sprues.value"),
        ),
    ),
    "weigh": _Table(
        _weigh,
        (
            _Column("pot", str, "pot"),
            _Column("stage", int, "stage"),
            _Column("line", int, "line"),
            _Column("formula", str, _joined("formulas", " + ")),
            _Column("material", str, "material"),
            _Column("kind", str, "kind"),
            _Column("add_when", str, "add.when"),
            _Column("portions", int, "add.portions"),
            _Column("mass_g", float, "wanted.value"),
            _Column("tool", str, "best.tool"),
            _Column("measure", str, "best.measure"),
            _Column("gives_g", float, "best.gives.value"),
            _Column("deviation", float, "best.off.value"),
            _Column("tolerance", float, "tolerance.value"),
            _Column("uncertainty", float, "doubt.uncertainty.value"),
        ),
    ),
    "lines": _Table(
        _lines,
        (
            _Column("line", int, "line"),
            _Column("order", str, "order"),
            _Column("what", str, "what"),
            _Column("mold", str, "mold"),
            _Column("shape", str, "shape"),
            _Column("pieces", int, "pieces"),
            _Column("packs", int, "packs"),
            _Column("pack_of", int, "pack_of"),
            _Column("pots", str, _joined("pots", ", ")),
            _Column("promised", str, "promised"),
            _Column("piece_g", float, "piece.value"),
            _Column("sink_rate_cm_per_s", float, "sinks.known.speed.value"),
            _Column("sink_rate_min_cm_per_s", float, "sinks.known.slowest.value"),
            _Column("sink_rate_max_cm_per_s", float, "sinks.known.fastest.value"),
            _Column("motion", str, "sinks.known.motion"),
        ),
    ),
    "clock": _Table(
        _clock,
        (
            _Column("begins_s", float, "begins.value"),
            _Column("lasts_s", float, "lasts.value"),
            _Column("doing", str, "doing"),
            _Column("pots", str, _joined("pots", ", ")),
            _Column("stage", int, "stage"),
            _Column("mold", str, "mold"),
            _Column("shots", int, "shots"),
        ),
    ),
    "stock": _Table(
        _stock,
        (
            _Column("material", str, "material"),
            _Column("had_g", float, "had.value"),
            _Column("used_g", float, "used.value"),
            _Column("left_g", float, "left.value"),
            _Column("short_g", float, "short.value"),
            _Column("runs_out_in", str, "runs_out_in"),
            _Column("packages", int, "packages"),
        ),
    ),
    "line_costs": _Table(
        _line_costs,
        (
            _Column("line", int, "line"),
            _Column("order", str, "order"),
            _Column("what", str, "what"),
            _Column("materials", Decimal, _money("materials")),
            _Column("packing", Decimal, _money("packing")),
            _Column("work", Decimal, _money("work")),
            _Column("total", Decimal, _money("total")),
            _Column("per_piece", Decimal, _money("per_piece")),
            _Column("per_pack", Decimal, _money("per_pack")),
            _Column("price", Decimal, _money("price")),
            _Column("currency", str, "total.currency"),
        ),
    ),
    "material_costs": _Table(
        _material_costs,
        (
            _Column("material", str, "material"),
            _Column("mass_g", float, "mass.value"),
            _Column("cost", Decimal, _money("cost")),
            _Column("packages", int, "packages"),
            _Column("to_buy", Decimal, _money("to_buy")),
            _Column("currency", str, "cost.currency"),
        ),
    ),
}


def tables(plan: _Entry) -> dict[str, list[Row]]:
    """All tables of a plan, each as its rows."""
    return {
        name: [
            {
                column.name: _at(entry, column.of) if isinstance(column.of, str) else column.of(entry)
                for column in table.columns
            }
            for entry in table.entries(plan)
        ]
        for name, table in _TABLES.items()
    }


def arrow_tables(plan: _Entry) -> dict[str, pyarrow.Table]:
    """All tables of a plan as tables of Arrow."""
    pa = _needed("pyarrow", "arrow")
    kinds = {str: pa.string(), int: pa.int64(), float: pa.float64(), Decimal: pa.decimal128(38, 6)}
    return {
        name: pa.Table.from_pylist(
            rows, schema=pa.schema([(column.name, kinds[column.kind]) for column in _TABLES[name].columns])
        )
        for name, rows in tables(plan).items()
    }


def pandas_frames(plan: _Entry) -> dict[str, pandas.DataFrame]:
    """All tables of a plan as data frames of pandas."""
    pd = _needed("pandas", "pandas")
    kinds = {str: "string", int: "Int64", float: "float64", Decimal: "object"}
    frames = {}
    for name, rows in tables(plan).items():
        columns = _TABLES[name].columns
        frame = pd.DataFrame(rows, columns=[column.name for column in columns])
        frames[name] = frame.astype({column.name: kinds[column.kind] for column in columns})
    return frames


def polars_frames(plan: _Entry) -> dict[str, polars.DataFrame]:
    """All tables of a plan as data frames of Polars."""
    pl = _needed("polars", "polars")
    kinds = {str: pl.String, int: pl.Int64, float: pl.Float64, Decimal: pl.Decimal(38, 6)}
    return {
        name: pl.DataFrame(rows, schema={column.name: kinds[column.kind] for column in _TABLES[name].columns})
        for name, rows in tables(plan).items()
    }


def _needed(module: str, extra: str) -> Any:
    """A module that an extra brings."""
    import importlib

    try:
        return importlib.import_module(module)
    except ImportError as error:
        raise ImportError(f"This needs {module}: pip install pourwright[{extra}]") from error
