"""The extension, loaded by Python's sqlite3: test_extension.py EXTENSION, from the root of the repository.

Needs only Python itself. The table of calculations is read from core/schema/calculations.json, so that a new calculation is
tested without a change here.
"""

import json
import math
import os
import random
import re
import sqlite3
import struct
import sys
import threading
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
EXTENSION = sys.argv[1]
CALCULATIONS = json.loads((ROOT / "core/schema/calculations.json").read_text())["calculations"]
BOOK = (ROOT / "core/examples/demo/book.json").read_text()
ORDERS = (ROOT / "core/examples/demo/orders.json").read_text()


def connect():
    database = sqlite3.connect(":memory:")
    database.enable_load_extension(True)
    database.load_extension(EXTENSION)
    database.enable_load_extension(False)
    return database


DATABASE = connect()


def one(sql, *arguments):
    """The only value of a query."""
    (row,) = DATABASE.execute(sql, arguments).fetchall()
    return row[0]


def call(name, *arguments):
    return one(f"SELECT pour_{name}({', '.join('?' * len(arguments))})", *arguments)


def rows_of(sql, arguments):
    found = DATABASE.execute(sql, arguments)
    names = [column[0] for column in found.description]
    return [dict(zip(names, row)) for row in found.fetchall()]


def in_order(name, *arguments):
    """The results of a calculation by name, from its table with arguments in order."""
    rows = rows_of(f"SELECT * FROM pour_{name}({', '.join('?' * len(arguments))})", arguments)
    assert len(rows) <= 1
    return rows[0] if rows else None


def row(name, *arguments):
    """The same by the names of the parameters, without those that are omitted."""
    (calculation,) = (one for one in CALCULATIONS if one["name"] == name)
    given = zip(calculation["parameters"], arguments)
    given = {p["field"]: value for p, value in given if value is not None or not p["optional"]}
    where = " AND ".join(f'"{field}" = ?' for field in given)
    rows = rows_of(f"SELECT * FROM pour_{name} WHERE {where}", list(given.values()))
    assert len(rows) <= 1
    return rows[0] if rows else None


def refusal(name, *arguments):
    try:
        found = call(name, *arguments)
    except sqlite3.OperationalError as error:
        return str(error)
    raise AssertionError(f"pour_{name}{arguments} is {found!r}")


def bits(value):
    return struct.pack("<d", value).hex() if isinstance(value, float) else value


def argument(parameter, value):
    """An argument of the table as SQL has it: a list as JSON, one of rows as arrays in an array."""
    if not isinstance(value, list):
        return value
    width = len(parameter["columns"])
    if width > 1:
        value = [value[at : at + width] for at in range(0, len(value), width)]
    return json.dumps(value)


def once(pairs):
    """An object, if no key is in it twice."""
    if len(dict(pairs)) < len(pairs):
        raise ValueError("a key twice")
    return dict(pairs)


def example(calculation):
    given = calculation["example"]["arguments"]
    arguments = [argument(parameter, value) for parameter, value in zip(calculation["parameters"], given)]
    results = [
        json.dumps(value, separators=(",", ":")) if isinstance(value, list) else value
        for value in calculation["example"]["results"]
    ]
    return arguments, results


def least(calculation):
    """The arguments of the example without what may be omitted and is, at the end."""
    arguments, _ = example(calculation)
    while arguments and arguments[-1] is None:
        arguments.pop()
    return arguments


class EveryCalculation(unittest.TestCase):
    def test_gives_the_bits_of_its_example(self):
        self.assertGreater(len(CALCULATIONS), 50)
        for calculation in CALCULATIONS:
            name, (arguments, results) = calculation["name"], example(calculation)
            with self.subTest(name):
                found = row(name, *arguments)
                self.assertEqual([bits(value) for value in found.values()], [bits(value) for value in results])
                if None not in least(calculation)[16:]:
                    self.assertEqual(in_order(name, *least(calculation)), found)
                taken = {parameter["field"] for parameter in calculation["parameters"]}
                names = [("result_" if r["field"] in taken else "") + r["field"] for r in calculation["results"]]
                self.assertEqual(list(found), names)
                self.assertEqual(bits(call(name, *arguments)), bits(results[0]))
                self.assertEqual(bits(call(name, *least(calculation))), bits(results[0]))
                self.assertEqual(bits(call("try", f"pour_{name}", *arguments)), bits(results[0]))
                self.assertIsNone(call("why", f"pour_{name}", *arguments))

    def test_takes_null_as_no_input_or_as_omitted(self):
        for calculation in CALCULATIONS:
            name, (arguments, results) = calculation["name"], example(calculation)
            for place, parameter in enumerate(calculation["parameters"]):
                if not parameter["optional"]:
                    with self.subTest(name, parameter=parameter["field"]):
                        nothing = arguments[:place] + [None] + arguments[place + 1 :]
                        self.assertIsNone(call(name, *nothing))
                        self.assertIsNone(row(name, *nothing))
                        self.assertIsNone(in_order(name, *nothing[:16]))
                        self.assertIsNone(call("why", f"pour_{name}", *nothing))

    # To state these is more than their default: they need others, or are then certain.
    MORE_THAN_ITS_DEFAULT = {
        "dial_tolerance_kpa", "feed", "hook_mass_g", "hook_volume_ml", "melt_viscosity_max_mpa_s",
        "melt_viscosity_min_mpa_s", "oven_turn_s",
    }

    def test_an_omitted_parameter_is_its_default(self):
        """A default that is a number or a word gives the bits of leaving it out."""
        seen = 0
        for calculation in CALCULATIONS:
            name, arguments = calculation["name"], example(calculation)[0]
            for place, parameter in enumerate(calculation["parameters"]):
                if not parameter["optional"] or parameter["default"] is None:
                    continue
                if isinstance(parameter["default"], str) and parameter["default"] not in parameter["words"]:
                    continue
                omitted = arguments[:place] + [None] + arguments[place + 1 :]
                given = arguments[:place] + [parameter["default"]] + arguments[place + 1 :]
                with self.subTest(name, parameter=parameter["field"]):
                    if parameter["field"] in self.MORE_THAN_ITS_DEFAULT:
                        continue
                    seen += 1
                    self.assertIsNone(call("why", f"pour_{name}", *omitted))
                    self.assertEqual(row(name, *omitted), row(name, *given))
        self.assertGreater(seen, 50)

    def test_reports_a_number_out_of_its_range_with_its_name(self):
        seen = 0
        for calculation in CALCULATIONS:
            name, arguments = calculation["name"], example(calculation)[0]
            for place, parameter in enumerate(calculation["parameters"]):
                span = parameter["range"]
                if parameter["kind"] not in ("number", "count") or not span:
                    continue
                wrong = span["most"] * 2 + 1 if span["most"] > 0 else 1
                wrong = arguments[:place] + [wrong] + arguments[place + 1 :]
                with self.subTest(name, parameter=parameter["field"]):
                    message = refusal(name, *wrong)
                    self.assertTrue(message.startswith(f"pour_{name}: "), message)
                    self.assertIn(f"{parameter['field']}: ", message)
                    self.assertIn("[out-of-range]", message)
                    self.assertIsNone(call("try", f"pour_{name}", *wrong))
                    self.assertEqual(f"pour_{name}: {call('why', f'pour_{name}', *wrong)}", message)
                    with self.assertRaisesRegex(sqlite3.OperationalError, "out-of-range"):
                        row(name, *wrong)
                    seen += 1
        self.assertGreater(seen, 150)

    def test_is_listed_with_its_parameters(self):
        listed = DATABASE.execute(
            "SELECT function, name, kind, unit, optional, allowed, words FROM pour_functions WHERE role = 'parameter'"
        ).fetchall()
        wanted = []
        for calculation in CALCULATIONS:
            for parameter in calculation["parameters"]:
                kind = "list" if parameter["kind"] == "rows" else parameter["kind"]
                words = ", ".join(parameter["words"]) or None
                given = (f"pour_{calculation['name']}", parameter["field"], kind, parameter["unit"])
                wanted.append((*given, int(parameter["optional"]), parameter["range_text"], words))
        self.assertEqual(listed, wanted)
        results = "SELECT count(*), count(text) FROM pour_functions WHERE role = 'result'"
        count = sum(len(calculation["results"]) for calculation in CALCULATIONS)
        self.assertEqual(DATABASE.execute(results).fetchall(), [(count, count)])
        defaults = dict(
            DATABASE.execute("SELECT name, if_omitted FROM pour_functions WHERE function = 'pour_bench_measure'")
        )
        self.assertEqual(defaults["tolerance"], "0.05")
        self.assertEqual(defaults["balance_capacity_g"], "5000 times its readability")
        functions = "SELECT count(DISTINCT function) FROM pour_functions WHERE role = 'function' AND text > ''"
        self.assertEqual(one(functions), len(CALCULATIONS) + 7)

    def test_knows_the_number_of_its_arguments(self):
        for calculation in CALCULATIONS:
            name, count = calculation["name"], len(calculation["parameters"])
            for arguments in [[], [1.0] * (count + 1)]:
                message = refusal(name, *arguments)
                self.assertRegex(message, rf"^pour_{name} takes .* arguments, not {len(arguments)}: ")
                self.assertIn(calculation["parameters"][0]["field"], message)
                with self.assertRaises(sqlite3.OperationalError):
                    call("try", f"pour_{name}", *arguments)


NOT_FINITE = {"NaN": math.nan, "Infinity": math.inf, "-Infinity": -math.inf}
FAULT = re.compile(r"^(?:([a-z0-9_/]+): )?.* \[([a-z0-9-]+)\]$", re.MULTILINE)


def carried(parameter, value):
    """A value of a call as SQL has it; None for what SQL has no value for."""
    if isinstance(value, list):
        # JSON has no such numbers.
        return None if any(text in json.dumps(value) for text in NOT_FINITE) else json.dumps(value)
    if parameter["kind"] not in ("text", "word"):
        value = NOT_FINITE.get(value, value)
    return None if isinstance(value, float) and math.isnan(value) else value


def answer_to(of):
    """What the extension answers to a call, as the vectors have it."""
    calculation = next(one for one in CALCULATIONS if one["name"] == of["call"])
    given = [of["given"].get(parameter["field"]) for parameter in calculation["parameters"]]
    arguments = [carried(*pair) for pair in zip(calculation["parameters"], given)]
    if any(value is not None and argument is None for value, argument in zip(given, arguments)):
        return {"not_carried": "SQL has no such number"}
    why = call("why", f"pour_{of['call']}", *arguments)
    if why is not None:
        faults = [{"code": code, "path": f"/{path}" if path else ""} for path, code in FAULT.findall(why)]
        return {"faults": faults}
    found = row(of["call"], *arguments).values()
    results = zip(calculation["results"], found)
    return {"results": {r["field"]: json.loads(v) if r["kind"] == "list" else v for r, v in results}}


def write_answers(name, answers):
    """Writes them to the folder that POURWRIGHT_ANSWERS names, if it does: tests/doors."""
    if folder := os.environ.get("POURWRIGHT_ANSWERS"):
        (Path(folder) / f"sqlite.{name}.jsonl").write_text("".join(f"{answer}\n" for answer in answers))


class Vectors(unittest.TestCase):
    """The vectors of every door: each call, each request as a text, and each conversion as a function."""

    VECTORS = list(
        zip(
            (ROOT / "tests/vectors/requests.jsonl").read_text().splitlines(),
            (ROOT / "tests/vectors/answers.jsonl").read_text().splitlines(),
        )
    )

    def test_calls(self):
        calls = [json.loads(line) for line in (ROOT / "tests/vectors/calls.jsonl").read_text().splitlines()]
        self.assertGreater(len(calls), 600)
        answers = [answer_to(of) for of in calls]
        write_answers("calls", map(json.dumps, answers))
        for of, answer in zip(calls, answers):
            if "not_carried" not in answer:
                wanted = {key: of[key] for key in ("results", "faults") if key in of}
                with self.subTest(of["call"], case=of["case"]):
                    self.assertEqual(json.dumps(answer), json.dumps(wanted))
        carried = [answer for answer in answers if "not_carried" not in answer]
        self.assertGreater(len(carried), 0.8 * len(calls))

    def test_requests(self):
        self.assertGreater(len(self.VECTORS), 400)
        answers = [call("answer", request) for request, _ in self.VECTORS]
        write_answers("requests", answers)
        for (request, answer), found in zip(self.VECTORS, answers):
            self.assertEqual(found, answer, request)
            self.assertEqual(call("answer", request.encode()), answer, request)

    def test_conversions(self):
        seen = 0
        for request, answer in self.VECTORS:
            try:
                asked = json.loads(request, object_pairs_hook=once)
            except ValueError:
                continue
            if not isinstance(asked, dict) or asked.get("calculate") != "convert":
                continue
            if not set(asked) <= {"calculate", "amount", "to", "measures"}:
                continue
            amount, to = asked.get("amount"), asked.get("to")
            if not isinstance(amount, str) or not isinstance(to, str):
                continue
            arguments = [amount, to, asked.get("measures")]
            with self.subTest(request):
                found = json.loads(answer)
                if "result" in found:
                    self.assertEqual(bits(call("convert", *arguments)), bits(found["result"]["value"]))
                else:
                    message = refusal("convert", *arguments)
                    self.assertIsNone(call("try", "pour_convert", *arguments))
                    if "\0" not in amount:
                        for fault in found["faults"]:
                            # A text of C that is too long is refused before it is read.
                            code = {"amount-too-long": "too-large"}.get(fault["code"], fault["code"])
                            self.assertIn(f"[{code}]", message)
                seen += 1
        self.assertGreater(seen, 30)


class Amounts(unittest.TestCase):
    def test_are_read_in_the_unit_of_their_parameter(self):
        self.assertEqual(bits(call("convert", "1/4 tsp", "mL")), bits(1.2322303984375))
        self.assertEqual(call("mass_of_volume", "1/4 cup", 1.03), call("mass_of_volume", 59.147059125, 1.03))
        self.assertEqual(call("water_density", "60 °F"), call("water_density", call("convert", "60 °F", "°C")))
        self.assertEqual(call("standard_pressure", "2100 ft"), call("standard_pressure", 640.08))

    def test_every_unit_of_a_parameter_can_be_written(self):
        units = {p["unit"] for c in CALCULATIONS for p in c["parameters"] if p["kind"] == "number"}
        units |= {column["unit"] for c in CALCULATIONS for p in c["parameters"] for column in p["columns"]}
        units -= {None, "1", "K"}
        self.assertGreater(len(units), 15)
        for unit in units:
            self.assertEqual(call("convert", f"1 {unit}", unit), 1.0, unit)

    def test_are_in_the_measures_of_the_call(self):
        density = ["salt", None, 1.22, None]
        self.assertEqual(call("dose_mass", "1 cup", *density, "metric"), 305.0)
        burst = next(c for c in CALCULATIONS if c["name"] == "next_burst")
        arguments, _ = example(burst)
        place = [p["field"] for p in burst["parameters"]].index("reading_celsius")
        arguments[place] = "200 °F"
        self.assertEqual(call("why", "pour_next_burst", *arguments), None)

    def test_stand_in_lists(self):
        numbers = row("bench_measure", 4.5, None, None, None, None, "[4.92892159375, 1.2322303984375]", None, 1.22)
        amounts = row("bench_measure", 4.5, None, None, None, None, '["1 tsp", "1/4 tsp"]', None, 1.22)
        self.assertEqual(numbers, amounts)
        self.assertEqual(json.loads(amounts["spoonfuls"]), [0, 3, 0, 0, 0, 0, 0, 0])
        of_numbers = call("density_of_parts", "[[100, 1.03], [20, 2.165]]")
        self.assertEqual(call("density_of_parts", ' [ ["100 g",1.03] , [2e1, "2.165 g/mL" ] ] '), of_numbers)
        made = one(
            "SELECT pour_density_of_parts(json_group_array(json_array(column1, column2))) "
            "FROM (VALUES (100, 1.03), (20, '2.165 g/mL'))"
        )
        self.assertEqual(made, of_numbers)

    def test_what_is_no_amount_is_refused(self):
        for text, code in [
            ("9.5", "amount-without-unit"), ("", "amount-empty"), ("6 oz", "amount-ambiguous"), ("5 g", ""),
            ("1 smidge", ""), ("9.5 mL\0", "wrong-type"), ("-1 mL", ""), ("1/0 mL", ""), ("x" * 5000, ""),
        ]:
            message = refusal("mass_of_volume", text, 1.03)
            self.assertTrue(message.startswith("pour_mass_of_volume: volume_ml: "), message)
            self.assertRegex(message, r"\[[a-z-]+\]$")
        self.assertIn("6 fl oz or 6 oz wt", refusal("mass_of_volume", "6 oz", 1.03))
        for shares in ["3 %", "0.03"]:
            self.assertIn("voids: It is a text; it must be a number. [wrong-type]",
                          refusal("piece_mass", 9.5, 1.03, None, shares))
        self.assertIn("thermometer_kelvin: It is a text", self.burst("thermometer_kelvin", "5 °F"))

    @staticmethod
    def burst(name, value):
        burst = next(c for c in CALCULATIONS if c["name"] == "next_burst")
        arguments, _ = example(burst)
        arguments[[p["field"] for p in burst["parameters"]].index(name)] = value
        return refusal("next_burst", *arguments)


class Errors(unittest.TestCase):
    def test_all_faults_of_a_call_come_together(self):
        message = refusal("piece_mass", -5, 1030, None, 2)
        self.assertEqual(message.count("[out-of-range]"), 3)
        self.assertEqual(len(message.splitlines()), 3)
        message = refusal("piece_mass", "6 oz", b"\x01", None, "x")
        self.assertEqual(len(message.splitlines()), 3)

    def test_types(self):
        self.assertIn("It is a blob; it must be a number, or an amount", refusal("mass_of_volume", b"1", 1))
        self.assertIn("pieces: It is a text; it must be a whole number", refusal("shots", "12", 4))
        for count in [1.5, -1, 2**32 - 1, 2**40, 1e300, math.inf]:
            self.assertIn("pieces: It is ", refusal("shots", count, 4))
        self.assertEqual(call("shots", 12.0, 4), call("shots", 12, 4))
        self.assertIn("Known: us-customary, us-label", refusal("convert", "1 cup", "mL", "french"))
        self.assertIn("[unknown-word]", refusal("convert", "1 cup", "mL", "french"))
        self.assertIn("It is a number; it must be a word", refusal("convert", "1 cup", "mL", 1))
        self.assertIn("It is a number; it must be a text", refusal("convert", 1, "mL"))
        for number in [math.inf, -math.inf]:
            self.assertIn("[not-finite]", refusal("mass_of_volume", number, 1.03))
        # What the C ABI takes for an omitted number.
        self.assertIn("density_g_per_ml: It is -1.797", refusal("mass_of_volume", 1, -sys.float_info.max))
        self.assertIn("feed: It is -1.797", refusal("piece_mass", 9.5, 1.03, None, None, -sys.float_info.max))

    def test_lists(self):
        for wrong in [
            "", "[", "[]", "[1]", "[[1]]", "[[1,2],[3]]", "[[1,2,3]]", "[[1,2]", "[[1,2]]x", "[[1,2],]", "[[01,2]]",
            "[[1.,2]]", "[[.5,2]]", "[[1e,2]]", "[[+1,2]]", "[[NaN,2]]", "[[null,2]]", "[[-1.7976931348623157e308,2]]",
            '[["1 g,2]]', '[["1 g\\x",2]]', '[["\\u0000",2]]', '[["\\ud800",2]]', '[["1 mL",2]]', "[" * 10**5,
            "[[" + "1" * 500 + ",2]]", "[[1e400,2]]", '{"a":1}', "null", "7", '"x"', "[[1,2]]\0", b"[[1,2]]", 7,
        ]:
            message = refusal("density_of_parts", wrong)
            self.assertTrue(message.startswith("pour_density_of_parts: parts"), f"{wrong!r}: {message}")
        self.assertIn("arrays of part_mass_g, part_density_g_per_ml", refusal("density_of_parts", "[1]"))
        self.assertIn("parts/1/1: `6 oz` can be read", refusal("density_of_parts", '[[1, 1], [1, "6 oz"]]'))
        self.assertIn("parts/1/1: ", refusal("density_of_parts", "[[1, 1], [1, 1030]]"))
        self.assertIn("weights_g/1: ", refusal("cavity_of_weights", '[9.5, "9.5 mL"]', 0.01, 1.05))
        escaped = '[["\\u0031\\u00a0g", 2], ["1\\tg", 2]]'
        self.assertEqual(call("why", "pour_density_of_parts", escaped), None)

    def test_functions_that_are_not_there(self):
        for name in ["piece_mass", "pour_nothing", "", None, b"\xff", 7]:
            self.assertIn("pour_try: There is no calculation", refusal("try", name, 1, 2))
        self.assertIn("pour_why: There is no calculation", refusal("why"))


class Tables(unittest.TestCase):
    def test_parameters_by_name(self):
        wanted = row("shot_fill", 4, 9.5, 1.05)
        sql = "SELECT * FROM pour_shot_fill WHERE cavities = 4 AND cold_density_g_per_ml = 1.05 AND cavity_volume_ml = '9.5 mL'"
        (found,) = DATABASE.execute(sql).fetchall()
        self.assertEqual(found, tuple(wanted.values()))
        self.assertEqual(one(sql.replace("*", "cavity_volume_ml || '/' || cavities")), "9.5 mL/4")
        with self.assertRaisesRegex(sqlite3.OperationalError, "cavities: It is missing. Number of cavities"):
            DATABASE.execute("SELECT * FROM pour_shot_fill WHERE cavity_volume_ml = 9.5").fetchall()
        with self.assertRaisesRegex(sqlite3.OperationalError, "too many arguments"):
            in_order("mass_of_volume", 1, 2, 3)

    def test_a_null_that_sqlite_would_lose_is_refused(self):
        salt = next(c for c in CALCULATIONS if c["name"] == "salt_for_sink_rate")
        arguments = [None if p["optional"] else value for p, value in zip(salt["parameters"], example(salt)[0])]
        with self.assertRaisesRegex(sqlite3.OperationalError, "A NULL is behind the first 16 .* FROM pour_salt_for_sink_rate WHERE"):
            in_order("salt_for_sink_rate", *arguments)

    def test_joins(self):
        DATABASE.executescript(
            """CREATE TEMP TABLE molds(name, cavities, cavity, density);
               INSERT INTO molds VALUES('grub', 8, '2.1 mL', 1.05), ('finger', 4, 9.5, '1.05 g/mL'), ('none', NULL, 1, 1);"""
        )
        sql = """SELECT name, shot_mass_g FROM molds, pour_shot_fill(molds.cavities, cavity, density) ORDER BY name"""
        grub, finger = row("shot_fill", 8, 2.1, 1.05), row("shot_fill", 4, 9.5, 1.05)
        wanted = [("finger", finger["shot_mass_g"]), ("grub", grub["shot_mass_g"])]
        self.assertEqual(DATABASE.execute(sql).fetchall(), wanted)
        turned = "SELECT name, shot_mass_g FROM pour_shot_fill, molds WHERE pour_shot_fill.cavities = molds.cavities " \
                 "AND cavity_volume_ml = cavity AND cold_density_g_per_ml = density ORDER BY name"
        self.assertEqual(DATABASE.execute(turned).fetchall(), wanted)
        left = "SELECT name, shot_mass_g FROM molds LEFT JOIN pour_shot_fill(molds.cavities, cavity, density) ORDER BY name"
        self.assertEqual(DATABASE.execute(left).fetchall(), [*wanted, ("none", None)])

    def test_schemas_may_use_them(self):
        """Deterministic: in a column and an index. Innocuous: in a view that is not trusted."""
        database = connect()
        database.execute("PRAGMA trusted_schema = OFF")
        database.executescript(
            """CREATE TABLE doses(amount TEXT, ml REAL AS (pour_convert(amount, 'mL')) STORED);
               CREATE INDEX by_ml ON doses(pour_try('pour_convert', amount, 'L'));
               CREATE VIEW shots AS SELECT shot_mass_g FROM pour_shot_fill(4, 9.5, 1.05);
               CREATE VIEW pots AS SELECT pot FROM pour_plan('', '');
               INSERT INTO doses VALUES('1/4 tsp'), (NULL);"""
        )
        self.assertEqual(database.execute("SELECT ml FROM doses").fetchall(), [(1.2322303984375,), (None,)])
        self.assertEqual(len(database.execute("SELECT * FROM shots").fetchall()), 1)
        with self.assertRaisesRegex(sqlite3.OperationalError, "pour_plan: book: "):
            database.execute("SELECT * FROM pots").fetchall()
        with self.assertRaisesRegex(sqlite3.OperationalError, "amount-ambiguous"):
            database.execute("INSERT INTO doses VALUES('6 oz')")


class Plans(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        request = {"calculate": "plan", "book": json.loads(BOOK), "orders": json.loads(ORDERS)}
        cls.plan = json.loads(call("answer", json.dumps(request)))["result"]

    def rows(self, table, book=BOOK, orders=ORDERS):
        return rows_of(f"SELECT * FROM pour_{table}(?, ?)", (book, orders))

    def test_pots(self):
        pots = self.rows("plan")
        self.assertEqual(len(pots), len(self.plan["pots"]))
        for row, pot in zip(pots, self.plan["pots"]):
            draws = [draw for stage in pot["stages"] for draw in stage["draws"]]
            pieces = [piece for draw in draws for piece in draw["pieces"]]
            first = pot["stages"][0]
            wanted = {
                "pot": pot["pot"], "name": pot["id"], "cup": pot["cup_name"], "cup_ml": pot["cup"]["value"],
                "stages": len(pot["stages"]), "mass_g": first["holds"]["value"], "volume_ml": first["fills"]["value"],
                "shots": sum(draw["shots"] for draw in draws),
                "pieces_ordered": sum(piece["ordered"] for piece in pieces),
                "pieces_made": sum(piece["made"] for piece in pieces),
                "heats": pot["heats"]["count"], "lost_g": pot["lost"]["value"],
                "left_over_g": pot["left_over"]["value"], "sprues_g": pot["sprues"]["value"],
            }
            self.assertEqual({k: bits(v) for k, v in row.items()}, {k: bits(v) for k, v in wanted.items()})

    def test_what_to_weigh(self):
        wanted = []
        for pot in self.plan["pots"]:
            for number, stage in enumerate(pot["stages"], 1):
                for place, line in enumerate(stage["weigh"], 1):
                    doubt = line["doubt"] or {"uncertainty": {"value": None}}
                    best = line["best"]
                    wanted.append((
                        pot["pot"], number, place, " + ".join(stage["formulas"]), line["material"], line["kind"],
                        line["add"]["when"], line["add"]["portions"], line["wanted"]["value"], best["tool"],
                        best["measure"], best["gives"]["value"], best["off"]["value"], line["tolerance"]["value"],
                        doubt["uncertainty"]["value"],
                    ))
        found = [tuple(row.values()) for row in self.rows("weigh")]
        self.assertGreater(len(found), 10)
        self.assertEqual([tuple(map(bits, row)) for row in found], [tuple(map(bits, row)) for row in wanted])

    def test_names_are_kept(self):
        shop = json.loads(BOOK)
        text = json.dumps(shop).replace("dusk", "d\\u00fcsk \\\"8\\\" \\ud83d\\udc1f")
        orders = ORDERS.replace("dusk", "düsk \\\"8\\\" 🐟")
        names = {row["name"] for row in self.rows("plan", text, orders)}
        self.assertIn('düsk "8" 🐟 + plain', names)

    def test_documents_may_be_blobs_and_null(self):
        self.assertEqual(self.rows("plan", BOOK.encode(), ORDERS.encode()), self.rows("plan"))
        self.assertEqual(self.rows("plan", None), [])
        self.assertEqual(self.rows("weigh", BOOK, None), [])

    def test_refusals(self):
        for book, orders, says in [
            ("[", ORDERS, r"pour_plan: book: .*\[not-json\]"), (BOOK, "[", r"pour_plan: orders: .*\[not-json\]"),
            (7, 7, "book: It is missing, or not a JSON text"), (b"\xff", ORDERS, "not-utf8"), (b"", b"", "not-json"),
            (BOOK, ORDERS.replace("reed paddle", "reed padle"), 'Did you mean "reed paddle"'),
        ]:
            with self.assertRaisesRegex(sqlite3.OperationalError, says):
                self.rows("plan", book, orders)
        with self.assertRaisesRegex(sqlite3.OperationalError, "pour_weigh: book: It is missing"):
            DATABASE.execute("SELECT * FROM pour_weigh").fetchall()

    def test_an_open_book_answers(self):
        request = '{"calculate":"formula","formulas":["dusk","plain"],"base_amount":"1 cup"}'
        own = json.loads(request) | {"book": json.loads(BOOK)}
        self.assertEqual(call("answer", request, BOOK), call("answer", json.dumps(own)))
        self.assertIn("missing-field", call("answer", request))
        self.assertIn("pour_answer: book: ", refusal("answer", request, "{}"))
        self.assertIsNone(call("answer", None))
        self.assertIsNone(call("answer", request, None))
        self.assertIn("The request is not a JSON text", refusal("answer", 7))
        self.assertIn("The book is not a JSON text", refusal("answer", request, 7))


class AnyInput(unittest.TestCase):
    ODD = [
        None, 0, 1, -1, 2**31, 2**63 - 1, -(2**63), 0.0, -0.0, 1e-320, 1e308, -sys.float_info.max, math.inf, -math.inf,
        "", " ", "1", "1 mL", "1/4 tsp", "-3 °F", "1e400 g", "us-customary", "salt", "[]", "[1]", "[[1,2]]", "[[1,2,3,4,5]]",
        "[[1e308,1e308],[1e308,1]]", "\ud7ff", "a\0b", "𝟙 g", "{}", b"", b"\x00", b"\xff\xfe", "9" * 5000, "[" * 5000,
    ]

    def test_gives_a_value_or_an_error(self):
        draw = random.Random(20270302)
        answered = 0
        for _ in range(100):
            for calculation in CALCULATIONS:
                arguments, _ = example(calculation)
                for _ in range(draw.randint(1, 3)):
                    arguments[draw.randrange(len(arguments))] = draw.choice(self.ODD)
                name = calculation["name"]
                why = call("why", f"pour_{name}", *arguments)
                if why is None:
                    found = call(name, *arguments)
                    self.assertTrue(found is None or isinstance(found, (int, str)) or math.isfinite(found))
                    self.assertEqual(found, call("try", f"pour_{name}", *arguments))
                    answered += 1
                else:
                    self.assertEqual(refusal(name, *arguments), f"pour_{name}: {why}")
        self.assertGreater(answered, 200)

    def test_a_database_in_utf16(self):
        database = connect()
        database.execute("PRAGMA encoding = 'UTF-16le'")
        database.execute("CREATE TABLE doses AS SELECT '¼ cup' AS amount")
        found = database.execute("SELECT pour_convert(amount, 'mL'), pour_version() FROM doses").fetchall()
        self.assertEqual(found, [(59.147059125, call("version"))])


class Connections(unittest.TestCase):
    def test_threads_with_connections_of_their_own(self):
        wanted = DATABASE.execute("SELECT * FROM pour_weigh(?, ?)", (BOOK, ORDERS)).fetchall()
        found = []

        def work():
            database = connect()
            for _ in range(3):
                found.append(database.execute("SELECT * FROM pour_weigh(?, ?)", (BOOK, ORDERS)).fetchall())
            database.close()

        threads = [threading.Thread(target=work) for _ in range(4)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        self.assertEqual(len(found), 12)
        self.assertTrue(all(rows == wanted for rows in found))

    def test_two_cursors_of_one_table_at_once(self):
        sql = """SELECT count(*) FROM pour_weigh(?1, ?2) AS a, pour_weigh(?1, ?2) AS b WHERE a.rowid = b.rowid"""
        self.assertEqual(one(sql, BOOK, ORDERS), one("SELECT count(*) FROM pour_weigh(?, ?)", BOOK, ORDERS))

    def test_version(self):
        version = next(line for line in (ROOT / "Cargo.toml").read_text().splitlines() if line.startswith("version"))
        self.assertEqual(f'version = "{call("version")}"', version)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
