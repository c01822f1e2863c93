"""The extension as DuckDB loads it: test_extension.py pourwright.duckdb_extension.

Every calculation to the bit, in the order of its parameters and by name; amounts as texts; NULL; numbers of every type;
lists in every form; all vectors; errors; threads. With POURWRIGHT_ANSWERS, a folder, it also writes there what it
answered.
"""

from __future__ import annotations

import json
import math
import os
import random
import re
import struct
import sys
from decimal import Decimal
from pathlib import Path
from typing import Any

import duckdb

ROOT = Path(__file__).resolve().parents[3]
TABLE: list[dict[str, Any]] = json.loads((ROOT / "core/schema/calculations.json").read_text("utf-8"))["calculations"]
VECTORS = ROOT / "tests" / "vectors"


def connect(threads: int = 2) -> duckdb.DuckDBPyConnection:
    connection = duckdb.connect(config={"allow_unsigned_extensions": "true", "threads": threads})
    connection.execute(f"LOAD '{sys.argv[1]}'")
    return connection


DATABASE = connect()


def rows(sql: str, *parameters: Any) -> list[Any]:
    return [row[0] for row in DATABASE.execute(sql, list(parameters)).fetchall()]


def literal(parameter: dict[str, Any], value: Any) -> str:
    """A value in SQL: a number is a DOUBLE, with all its digits."""
    if value is None:
        return "NULL"
    if isinstance(value, str) and parameter["kind"] in ("text", "word"):
        return "'" + value.replace("'", "''") + "'"
    if isinstance(value, list):
        flat = [one for row in value for one in row] if value and isinstance(value[0], list) else value
        numbers = [number(one) for one in flat]
        width = len(parameter["columns"])
        if parameter["kind"] == "rows":
            numbers = [f"[{', '.join(numbers[at : at + width])}]" for at in range(0, len(numbers), width)]
        empty = "DOUBLE[][]" if parameter["kind"] == "rows" else "DOUBLE[]"
        return f"[{', '.join(numbers)}]::{empty}"
    return number(value)


def number(value: Any) -> str:
    return f"'{value}'::DOUBLE" if isinstance(value, str) else f"{float(value)!r}::DOUBLE"


def bits(value: Any) -> Any:
    """A result of which a difference in one bit shows."""
    if isinstance(value, (list, tuple)):
        return [int(one) for one in value]
    return struct.pack("<d", value) if isinstance(value, (int, float)) else value


def results(one: dict[str, Any], found: Any) -> list[Any]:
    assert len(one["results"]) > 1 or not isinstance(found, dict)
    return [bits(found[result["field"]]) for result in one["results"]] if isinstance(found, dict) else [bits(found)]


def by_name(parameters: list[dict[str, Any]], values: dict[str, Any]) -> str:
    known = [parameter for parameter in parameters if parameter["field"] in values]
    fields = [f"'{parameter['field']}': {literal(parameter, values[parameter['field']])}" for parameter in known]
    return "{" + ", ".join(fields) + "}"


def example(one: dict[str, Any]) -> dict[str, Any]:
    pairs = zip(one["parameters"], one["example"]["arguments"], strict=True)
    return {parameter["field"]: value for parameter, value in pairs if value is not None}


def every_calculation() -> None:
    for one in TABLE:
        right, name = example(one), f"pour_{one['name']}"
        wanted = [bits(value) for value in one["example"]["results"]]
        whole = by_name(one["parameters"], right)
        in_order = ", ".join(literal(parameter, right.get(parameter["field"])) for parameter in one["parameters"])
        for arguments in (whole, in_order):
            (found,) = rows(f"SELECT {name}({arguments})")
            assert results(one, found) == wanted, (name, found)
            assert rows(f"SELECT pour_why('{name}', {arguments})") == [None]
        # In a column, between rows that are NULL: by a NULL in any of the columns.
        for parameter in one["parameters"]:
            if parameter["field"] not in right:
                continue
            value = literal(parameter, right[parameter["field"]])
            with_null = whole.replace(
                f"'{parameter['field']}': {value}", f"'{parameter['field']}': CASE WHEN row % 3 > 0 THEN {value} END"
            )
            assert with_null != whole
            found = rows(f"SELECT {name}({with_null}) FROM range(5000) rows(row)")
            assert [value is None for value in found] == [row % 3 == 0 for row in range(5000)], (
                name,
                parameter["field"],
            )
            assert all(results(one, value) == wanted for value in found if value is not None)
        # What is omitted by a NULL as it is written, or required.
        if not one["parameters"][0]["optional"]:
            nulls = ", ".join("NULL" for _ in one["parameters"])
            assert rows(f"SELECT {name}({nulls})") == [None]


def amounts() -> None:
    """A number and the same number as a text with its unit are the same argument."""
    for one in TABLE:
        right = example(one)
        for parameter in one["parameters"]:
            unit = parameter["unit"]
            if parameter["kind"] != "number" or unit in (None, "1", "K") or parameter["field"] not in right:
                continue
            text = f"{right[parameter['field']]!r} {unit}"
            with_text = {**right, parameter["field"]: text}
            other = by_name(
                [{**p, "kind": "text"} if p["field"] == parameter["field"] else p for p in one["parameters"]], with_text
            )
            (found,) = rows(f"SELECT pour_{one['name']}({other})")
            (value,) = rows("SELECT pour_convert(?, ?)", text, unit)
            (wanted,) = rows(
                f"SELECT pour_{one['name']}({by_name(one['parameters'], {**right, parameter['field']: value})})"
            )
            assert results(one, found) == results(one, wanted), (one["name"], text)
    texts = [
        "1/4 tsp",
        "6 oz",
        "",
        "½ cup",
        "12.5 g",
        "a text that is longer than twelve bytes",
        None,
        "1/4 tsp",
        "1/4 tsp",
        "6 oz",
    ]
    DATABASE.execute("CREATE OR REPLACE TABLE texts AS SELECT unnest(?::VARCHAR[]) AS amount", [texts])
    found = rows("SELECT pour_mass_of_volume(amount, 1.03) FROM texts")
    alone = [None if text is None else rows("SELECT pour_mass_of_volume(?, 1.03)", text)[0] for text in texts]
    assert [bits(value) for value in found] == [bits(value) for value in alone]
    assert [value is not None and not math.isnan(value) for value in found] == [
        text in ("1/4 tsp", "½ cup") for text in texts
    ]
    reasons = rows("SELECT pour_why('pour_mass_of_volume', amount, 1.03) FROM texts")
    assert [reason is None for reason in reasons] == [text in ("1/4 tsp", "½ cup", None) for text in texts]
    assert reasons[1].startswith("volume_ml: `6 oz` can be read as 6 fl oz or 6 oz wt.") and reasons[1].endswith(
        "[amount-ambiguous]"
    )
    # The measures of a call are those of its texts, whatever their place.
    metric = "{'amount': '1 cup', 'kind': 'softener', 'material_density_g_per_ml': 1.0, 'measures': measures}"
    measured = rows(
        f"SELECT pour_dose_mass({metric}) FROM (VALUES ('metric'), ('us-label'), ('cubits')) words(measures)"
    )
    assert [round(mass, 9) for mass in measured[:2]] == [250.0, 240.0] and math.isnan(measured[2])


def types() -> None:
    for kind in (
        "TINYINT",
        "SMALLINT",
        "INTEGER",
        "BIGINT",
        "HUGEINT",
        "UTINYINT",
        "USMALLINT",
        "UINTEGER",
        "UBIGINT",
        "FLOAT",
        "DECIMAL(4, 1)",
        "DECIMAL(9, 3)",
        "DECIMAL(18, 9)",
        "DECIMAL(38, 12)",
    ):
        assert rows(f"SELECT pour_convert_number(12::{kind}, 'mL', 'mL')") == [12.0], kind
    chance = random.Random(20270302)
    for width, scale in ((4, 2), (9, 4), (18, 7), (38, 0), (38, 3), (38, 25), (38, 38)):
        numbers = [Decimal(chance.randrange(10 ** chance.randint(1, width))).scaleb(-scale) for _ in range(300)]
        listed = "(SELECT unnest(?::VARCHAR[]) AS number)"
        sql = f"SELECT pour_convert_number(number::DECIMAL({width}, {scale}), 'mL', 'mL') FROM {listed}"
        found = rows(sql, [format(one, "f") for one in numbers])
        assert found == [float(one) for one in numbers], (width, scale)
    assert math.isnan(rows("SELECT pour_mass_of_volume(-1::DECIMAL(38, 3), 1)")[0])
    structs = [("'100 g'", 1.03), ("'20 g'", 2.165)]
    fields = ", ".join(f"{{'part_mass_g': {mass}, 'part_density_g_per_ml': {density}}}" for mass, density in structs)
    nested = rows("SELECT pour_density_of_parts([[100, 1.03], [20, 2.165]])")
    assert rows(f"SELECT pour_density_of_parts([{fields}])") == nested
    weights = ["['9.5 g', '9.7 g']", "[9.5, 9.7]"]
    assert len({str(rows(f"SELECT pour_cavity_of_weights({one}, 0.1, 1.05)")) for one in weights}) == 1
    for wrong in ("[[100, 1.03], [20]]", "[[100, 1.03], NULL]", "[[100, NULL]]", "[]", "[NULL]"):
        (found,) = rows(f"SELECT pour_density_of_parts({wrong})")
        assert math.isnan(found), wrong
        assert "parts" in rows(f"SELECT pour_why('pour_density_of_parts', {wrong})")[0]


def refused() -> None:
    for sql, wanted in [
        (
            "pour_mass_of_volume(true, 1)",
            "volume_ml is of a type that it does not take. Give numbers, or amounts as texts",
        ),
        ("pour_piece_mass(1, 1, 1, '5 %')", "voids is of a type that it does not take. Give numbers."),
        ("pour_mass_of_volume(1, 2, 3)", "takes 2 arguments at most, not 3"),
        ("pour_mass_of_volume(1)", "density_g_per_ml is missing"),
        (
            "pour_mass_of_volume({'volume': 1})",
            "no parameter of one of these names. Known: volume_ml, density_g_per_ml",
        ),
        ("pour_density_of_parts([{'mass': 1}])", "parts is of a type"),
        ("pour_convert(1, 'mL')", "Give texts"),
        ("pour_why('pour_wiggle', 1)", "the name of one function"),
        ("pour_wiggle(1)", "pour_wiggle"),
    ]:
        try:
            rows(f"SELECT {sql}")
        except duckdb.Error as error:
            assert wanted in str(error), (sql, str(error))
        else:
            raise AssertionError(f"{sql} is not refused.")
    both = "pour_why('pour_piece_mass', -1, 99)"
    (why,) = rows(f"SELECT {both}")
    assert [line.split(":")[0] for line in why.split("\n")] == ["cavity_volume_ml", "cold_density_g_per_ml"], why


def vectors() -> None:
    requests = (VECTORS / "requests.jsonl").read_text("utf-8").removesuffix("\n").split("\n")
    answers = (VECTORS / "answers.jsonl").read_text("utf-8").removesuffix("\n").split("\n")
    found = rows("SELECT pour_answer(request) FROM (SELECT unnest(?::VARCHAR[]) AS request)", requests)
    assert found == answers
    written("duckdb.requests.jsonl", found)


def calls() -> None:
    """The vectors of calls on plain numbers, each question with its answer."""
    path = VECTORS / "calls.jsonl"
    if not path.exists():
        print("There is no tests/vectors/calls.jsonl.")
        return
    known = {one["name"]: one for one in TABLE}
    answers: list[dict[str, Any]] = []
    wrong: list[str] = []
    for line in path.read_text("utf-8").splitlines():
        case = json.loads(line)
        one = known[case["call"]]
        arguments, name = by_name(one["parameters"], case["given"]), f"pour_{case['call']}"
        fields = [parameter for parameter in one["parameters"] if parameter["field"] in case["given"]]
        missing = [p["field"] for p in one["parameters"] if not p["optional"] and p["field"] not in case["given"]]
        if missing or not fields:
            # A call without what must be given is an error of the query.
            answers.append({"not_carried": "a parameter that must be given is missing: an error of the query"})
            continue
        try:
            found, why = DATABASE.execute(f"SELECT {name}({arguments}), pour_why('{name}', {arguments})").fetchall()[0]
        except duckdb.Error as error:
            answers.append({"not_carried": str(error).splitlines()[0]})
            continue
        if why is None:
            values = found if isinstance(found, dict) else {one["results"][0]["field"]: found}
            answers.append({"results": {field: shown(value) for field, value in values.items()}})
            endless = {"Infinity": math.inf, "-Infinity": -math.inf}
            given = {field: bits(endless.get(str(value), value)) for field, value in case.get("results", {}).items()}
            if given != {field: bits(value) for field, value in values.items()}:
                wrong.append(line)
            continue
        faults = [fault_of(line) for line in why.split("\n")]
        answers.append({"faults": faults})
        if faults != [{"code": fault["code"], "path": fault["path"]} for fault in case.get("faults", [])]:
            wrong.append(line)
    written("duckdb.calls.jsonl", [json.dumps(answer) for answer in answers])
    assert wrong == [], wrong
    carried = sum("not_carried" not in answer for answer in answers)
    assert carried > 0.95 * len(answers), [answer for answer in answers if "not_carried" in answer][:5]


def fault_of(line: str) -> dict[str, str]:
    """A fault from its line: `voids: It is ... [out-of-range]`."""
    path = re.match(r"([a-z0-9_/]+): ", line)
    return {"code": line.rpartition("[")[2].removesuffix("]"), "path": f"/{path[1]}" if path else ""}


def shown(value: Any) -> Any:
    """A result as the vectors write it."""
    return ("Infinity" if value > 0 else "-Infinity") if isinstance(value, float) and math.isinf(value) else value


def written(name: str, lines: list[str]) -> None:
    if folder := os.environ.get("POURWRIGHT_ANSWERS"):
        (Path(folder) / name).write_text("".join(f"{line}\n" for line in lines), "utf-8")


def threads() -> None:
    pieces = "sum(pour_piece_mass(1 + row % 17, 1.05, 0.98).piece_mass_g)"
    texts = "sum(pour_mass_of_volume((1 + row % 7) || ' tsp', 1.03))"
    sql = f"SELECT {pieces}, {texts} FROM range(200000) rows(row)"
    alone, together = connect(1).execute(sql).fetchall(), connect(4).execute(sql).fetchall()
    assert all(math.isclose(one, other, rel_tol=1e-12) for one, other in zip(alone[0], together[0], strict=True))


for check in (every_calculation, amounts, types, refused, vectors, calls, threads):
    check()
    print(f"{check.__name__.replace('_', ' ')}: as they should be")
(version,) = rows("SELECT pour_version()")
assert f'\nversion = "{version}"\n' in (ROOT / "Cargo.toml").read_text("utf-8"), version
