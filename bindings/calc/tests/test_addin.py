"""The add-in in a headless LibreOffice: test_addin.py OXT LIBRARY, from the root of the repository.

Runs with a Python that has the module uno. The table of calculations is read from core/schema/calculations.json, so that a new
calculation is tested without a change here. What documents give is compared with what the C library LIBRARY gives to ctypes.
"""

import ctypes
import json
import os
import random
import re
import sys
import tempfile
import unittest
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import office
from sheet import NOT_AVAILABLE, VALUE, Calls, Error, Formula, bits, decimal, quoted, read

ROOT = Path(__file__).resolve().parents[3]
OXT, LIBRARY = sys.argv[1:3]
CALCULATIONS = json.loads((ROOT / "core/schema/calculations.json").read_text())["calculations"]
DEMO = ROOT / "core/examples/demo"
BOOK, ORDERS = (str(DEMO / f"{name}.json") for name in ("book", "orders"))

library = ctypes.CDLL(LIBRARY)
library.pour_answer.argtypes = [ctypes.c_char_p]
library.pour_answer.restype = ctypes.c_void_p
library.pour_string_free.argtypes = [ctypes.c_void_p]


def answer(request):
    """What the C library answers."""
    text = request if isinstance(request, str) else json.dumps(request)
    made = library.pour_answer(text.encode())
    try:
        return ctypes.string_at(made).decode()
    finally:
        library.pour_string_free(made)


def result(request):
    return json.loads(answer(request))["result"]


OFFICE = office.Office(OXT, "en-US")
unittest.addModuleCleanup(OFFICE.close)
DOCUMENT = OFFICE.new()
CALLS = Calls(DOCUMENT)
run = CALLS.run


def one(name, *arguments):
    """The first result of a call and its reason."""
    found, why = run([(f"POUR_{name}", arguments)])
    return found[0][0], why[0]


def table(formula, columns, rows):
    """What an array formula gives, without the rows that it does not fill."""
    cells = DOCUMENT.Sheets.getByIndex(0).getCellRangeByPosition(0, 0, columns - 1, rows - 1)
    cells.setArrayFormula(formula)
    found = read(cells)
    cells.clearContents(1023)
    while len(found) > 1 and set(found[-1]) in ({NOT_AVAILABLE}, {""}):
        found.pop()
    return found


def argument(parameter, value):
    """An argument of the table as cells."""
    if not isinstance(value, list):
        return value
    width = len(parameter["columns"])
    return tuple(tuple(value[at : at + width]) for at in range(0, len(value), width))


def example(calculation):
    given = zip(calculation["parameters"], calculation["example"]["arguments"])
    arguments = [argument(parameter, value) for parameter, value in given]
    results = []
    for value in calculation["example"]["results"]:
        results += [float(one) for one in value] if isinstance(value, list) else [value]
    results = [
        NOT_AVAILABLE if value is None else float(value) if isinstance(value, int) else value for value in results
    ]
    return arguments, results


def shown(calculation):
    return f"POUR_{calculation['name'].upper()}"


def width(calculation):
    """Number of cells that its results take."""
    return len(example(calculation)[1])


def in_bits(rows):
    return [[bits(value) for value in row] for row in rows]


class EveryCalculation(unittest.TestCase):
    def test_gives_the_bits_of_its_example(self):
        self.assertGreater(len(CALCULATIONS), 50)
        calls = [(shown(one), example(one)[0]) for one in CALCULATIONS]
        for widths in ([width(one) for one in CALCULATIONS], None):
            found, why = run(calls, widths)
            for calculation, row, reason in zip(CALCULATIONS, found, why):
                with self.subTest(calculation["name"], widths=bool(widths)):
                    results = example(calculation)[1]
                    self.assertEqual(reason, "")
                    self.assertEqual(in_bits([row]), in_bits([results if widths else results[:1]]))

    # To state these is more than their default: they need others, or are then certain.
    MORE_THAN_ITS_DEFAULT = {
        "dial_tolerance_kpa", "feed", "hook_mass_g", "hook_volume_ml", "melt_viscosity_max_mpa_s",
        "melt_viscosity_min_mpa_s", "oven_turn_s",
    }  # fmt: skip

    def test_an_empty_cell_is_the_default(self):
        """A default that is a number or a word gives the bits of an argument that is left out, and of an empty cell."""
        calls, about, widths = [], [], []
        for calculation in CALCULATIONS:
            arguments = example(calculation)[0]
            for place, parameter in enumerate(calculation["parameters"]):
                default = parameter["default"]
                if not parameter["optional"] or default is None or parameter["field"] in self.MORE_THAN_ITS_DEFAULT:
                    continue
                if isinstance(default, str) and default not in parameter["words"]:
                    continue
                for value in (default, None, Formula("$ZZ$9:$ZZ$9"), Formula("$ZZ$9")):
                    calls.append((shown(calculation), [*arguments[:place], value, *arguments[place + 1 :]]))
                about.append((calculation["name"], parameter))
                widths += [width(calculation)] * 4
        found, why = run(calls, widths)
        for index, (name, parameter) in enumerate(about):
            with self.subTest(name, parameter=parameter["field"]):
                given, omitted, in_range, in_cell = in_bits(found[4 * index : 4 * index + 4])
                self.assertEqual(why[4 * index : 4 * index + 3], ["", "", ""])
                self.assertEqual([omitted, in_range], [given, given])
                # Calc hands over a single empty cell as 0.
                if why[4 * index + 3]:
                    self.assertIn(
                        f"{parameter['field']}: 0 can be read as the number or as an empty cell", why[4 * index + 3]
                    )
                    self.assertNotEqual(parameter["default"], 0)
                    self.assertEqual(in_cell[0], VALUE)
                else:
                    self.assertEqual(in_cell, given)
        self.assertGreater(len(about), 50)

    def test_what_must_be_given_is_missed(self):
        calls, about = [], []
        for calculation in CALCULATIONS:
            arguments = example(calculation)[0]
            for place, parameter in enumerate(calculation["parameters"]):
                if not parameter["optional"]:
                    for nothing in (None, Formula("$ZZ$9:$ZZ$9"), Formula('""')):
                        calls.append((shown(calculation), [*arguments[:place], nothing, *arguments[place + 1 :]]))
                        about.append((calculation["name"], parameter["field"]))
        found, why = run(calls)
        for (name, field), row, reason in zip(about, found, why):
            with self.subTest(name, parameter=field):
                self.assertEqual(row, [VALUE])
                self.assertRegex(reason, rf"^{field}: It is missing\. .*\[missing-field\]$")

    def test_reports_a_number_out_of_its_range_with_its_name(self):
        calls, about = [], []
        for calculation in CALCULATIONS:
            arguments = example(calculation)[0]
            for place, parameter in enumerate(calculation["parameters"]):
                span = parameter["range"]
                if parameter["kind"] not in ("number", "count") or not span:
                    continue
                wrong = float(span["most"] * 2 + 1 if span["most"] > 0 else 1)
                calls.append((shown(calculation), [*arguments[:place], wrong, *arguments[place + 1 :]]))
                about.append((calculation["name"], parameter["field"]))
        found, why = run(calls)
        for (name, field), row, reason in zip(about, found, why):
            with self.subTest(name, parameter=field):
                self.assertEqual(row[0], VALUE)
                self.assertIn(f"{field}: ", reason)
                self.assertIn("[out-of-range]", reason)
        self.assertGreater(len(about), 150)

    def test_an_amount_is_a_number_a_text_or_two_cells(self):
        calls, about, widths = [], [], []
        for calculation in CALCULATIONS:
            arguments = example(calculation)[0]
            for place, parameter in enumerate(calculation["parameters"]):
                unit, value = parameter["unit"], arguments[place]
                if parameter["kind"] != "number" or unit in (None, "1", "K") or value is None:
                    continue
                for form in (
                    float(value),
                    f"{decimal(value)} {unit}",
                    ((float(value), unit),),
                    ((f"{decimal(value)} {unit}", None),),
                ):
                    calls.append((shown(calculation), [*arguments[:place], form, *arguments[place + 1 :]]))
                about.append((calculation["name"], parameter["field"]))
                widths += [width(calculation)] * 4
        found, why = run(calls, widths)
        for index, (name, field) in enumerate(about):
            with self.subTest(name, parameter=field):
                rows = in_bits(found[4 * index : 4 * index + 4])
                self.assertEqual(why[4 * index : 4 * index + 4], [""] * 4)
                self.assertEqual(rows[1:], rows[:1] * 3)
        self.assertGreater(len(about), 80)


class Arguments(unittest.TestCase):
    def check(self, calls):
        """Calls whose first result, or reason, is given."""
        found, why = run([(f"POUR_{name}", arguments) for name, arguments, _ in calls])
        for (name, arguments, wanted), row, reason in zip(calls, found, why):
            with self.subTest(name, arguments=arguments):
                if isinstance(wanted, str):
                    self.assertEqual(row[0], VALUE, reason)
                    self.assertIn(wanted, reason)
                else:
                    self.assertEqual((bits(row[0]), reason), (bits(wanted), ""))

    def test_two_cells_are_a_number_and_its_unit(self):
        self.check([
            ("CONVERT", [((2.0, "cup"),), "mL"], 473.176473),
            ("CONVERT", [Formula('{2;"cup"}'), Formula('"mL"')], 473.176473),
            ("CONVERT", [(("1/4", "tsp"),), "mL"], 1.2322303984375),
            ("CONVERT", [((1e-7, "kg"),), "mg"], 0.1),
            ("CONVERT", [((-3.0, "°F"),), "°C"], -19.444444444444443),
            ("CONVERT_NUMBER", [2.0, "cup", "mL"], 473.176473),
            ("CONVERT", [((2.0, None),), "mL"], "amount: The number 2 has no unit behind it."),
            ("CONVERT", [((None, "cup"),), "mL"], "amount: There is a unit, `cup`, and no number before it."),
            ("CONVERT", [((2.0, 3.0),), "mL"], "amount: The unit is the number 3."),
            ("CONVERT", [((6.0, "oz"),), "g"], "amount: `6 oz` can be read as 6 fl oz or 6 oz wt."),
            ("CONVERT", [2.0, "mL"], "amount: It is a number; it must be a text with its unit, or two cells"),
            ("MASS_OF_VOLUME", [((1.25, "cup"),), "1.03 g/mL"], 304.60735449375),
            ("MASS_OF_VOLUME", [((1.0, "x", 2.0),), 1.0], "volume_ml: It is a range of 3 columns; it must be one column, or two"),
            ("PIECE_MASS", [9.5, 1.05, None, ((0.1, "cup"),)], "voids: It is a range of 2 columns; it must be one column."),
        ])  # fmt: skip

    def test_words(self):
        self.check([
            ("CONVERT", ["1 cup", "mL", "metric"], 250.0),
            ("CONVERT", ["1 cup", "mL", " Metric "], 250.0),
            ("CONVERT", ["1 cup", "mL", "french"], "measures: There is no word `french`. Known: us-customary, us-label"),
            ("CONVERT", ["1 cup", "mL", 3.0], "measures: It is a number; it must be a word. [wrong-type]"),
            ("CONVERT", [((1.0, "cup"),), "mL", "imperial"], 284.130625),
        ])  # fmt: skip

    def test_counts_and_pure_numbers(self):
        self.check([
            ("SHOTS", [12.0, 4.0], 3.0),
            ("SHOTS", [12.5, 4.0], "pieces: It is 12.5; it must be a whole number"),
            ("SHOTS", [-1.0, 4.0], "pieces: It is -1; it must be a whole number"),
            ("SHOTS", [2.0**32 - 1, 4.0], "pieces: It is 4294967295; it must be a whole number"),
            ("SHOTS", [1e300, 4.0], "[out-of-range]"),
            ("SHOTS", ["12", 4.0], "pieces: It is a text; it must be a whole number."),
            ("PIECE_MASS", [9.5, 1.05, None, "3 %"], "voids: It is a text; it must be a number."),
            ("MASS_OF_VOLUME", [-sys.float_info.max, 1.0], "volume_ml: It is -1.797"),
        ])  # fmt: skip

    def test_all_faults_of_a_call_come_together(self):
        _, why = one("PIECE_MASS", -5.0, 1030.0, None, 2.0)
        self.assertEqual(len(why.splitlines()), 3)
        self.assertEqual(why.count("[out-of-range]"), 3)
        _, why = one("PIECE_MASS", "6 oz", "x", None, "y")
        self.assertEqual(
            [line.split(":")[0] for line in why.splitlines()], ["cavity_volume_ml", "cold_density_g_per_ml", "voids"]
        )

    def test_too_many_arguments(self):
        value, why = one("WHY", Formula('"POUR_MASS_OF_VOLUME"'), 1.0, 2.0, 3.0)
        self.assertEqual(value, "It takes 2 arguments, not 3: volume_ml, density_g_per_ml. [wrong-type]")
        self.assertEqual(why, "")
        value, _ = one("WHY", Formula('"POUR_PLAN"'), 1.0, 2.0, 3.0, 4.0)
        self.assertEqual(value, "It takes 3 arguments, not 4: book, orders, columns. [wrong-type]")

    def test_lists(self):
        density = 120 / (100 / 1.03 + 20 / 2.165)
        parts = ((100.0, 1.03), (20.0, 2.165))
        self.check([
            ("DENSITY_OF_PARTS", [parts], density),
            ("DENSITY_OF_PARTS", [((100.0, "1.03 g/mL"), ("20 g", 2.165))], density),
            ("DENSITY_OF_PARTS", [((None, None), *parts[:1], (None, None), *parts[1:], (None, None))], density),
            ("DENSITY_OF_PARTS", [((100.0, "g", 1.03, "g/mL"), ("0.02", "kg", "2.165 g/mL", None))], density),
            ("DENSITY_OF_PARTS", [Formula('{100;1.03|"20 g";2.165}')], density),
            ("DENSITY_OF_PARTS", [((100.0,), (20.0,))], "parts: It is a range of 1 columns; it must have 2: part_mass_g, part_density_g_per_ml. Each amount may have a column with its units behind it."),
            ("DENSITY_OF_PARTS", [((100.0, 1.03), (20.0, None))], "parts row 2 column 2: It is missing."),
            ("DENSITY_OF_PARTS", [((100.0, 1.03), (None, None), (1.0, "6 oz"))], "parts row 3 column 2: `6 oz` can be read"),
            ("DENSITY_OF_PARTS", [((100.0, 1.03), (None, None), (1.0, 1030.0))], "parts row 3 column 2: "),
            ("DENSITY_OF_PARTS", [((100.0, 1.03, "g", 2.0),)], "parts row 1 column 1: The unit is the number 1.03."),
            ("DENSITY_OF_PARTS", [((None, None),)], "parts: It is missing."),
            ("CAVITY_OF_WEIGHTS", [((9.5,), ("x",)), 0.01, 1.05], "weights_g cell 2: "),
        ])  # fmt: skip
        found, _ = run([
            ("POUR_CAVITY_OF_WEIGHTS", [((9.5,), (9.6,), ("9.4 g",)), 0.01, 1.05]),
            ("POUR_CAVITY_OF_WEIGHTS", [((9.5, 9.6, "9.4 g"),), 0.01, 1.05]),
            ("POUR_CAVITY_OF_WEIGHTS", [((9.5, "g"), (9.6, "g"), (0.0094, "kg")), 0.01, 1.05]),
            ("POUR_CAVITY_OF_WEIGHTS", [((9.5,), (9.6,), (9.4,)), 0.01, 1.05]),
        ])  # fmt: skip
        self.assertIsInstance(found[3][0], float)
        self.assertEqual(found[:3], found[3:] * 3)
        # A list of one.
        found, _ = run([
            ("POUR_BENCH_MEASURE", [1.232, None, None, None, None, "1/4 tsp", None, 1.0]),
            ("POUR_BENCH_MEASURE", [1.232, None, None, None, None, (("1/4 tsp",), (None,)), None, 1.0]),
        ])  # fmt: skip
        self.assertAlmostEqual(found[0][0], 1.2322303984375)
        self.assertEqual(found[0], found[1])


class Columns(unittest.TestCase):
    def test_a_column_gives_a_row_of_results_for_each_cell(self):
        cells = DOCUMENT.Sheets.getByIndex(0).getCellRangeByName("A1:C5")
        cells.setDataArray(
            ((9.5, 1.05, "x"), ("2 tsp", "1.05 g/mL", ""), ("", "", ""), ("", 1.05, ""), (0.0, -1.0, ""))
        )
        rows = DOCUMENT.Sheets.getByIndex(0).getCellRangeByName("E1:G5")
        rows.setArrayFormula("=POUR_PIECE_MASS(A1:A5;B1:B5;0.98)")
        found = read(rows)
        single, _ = run([("POUR_PIECE_MASS", [9.5, 1.05, 0.98]), ("POUR_PIECE_MASS", ["2 tsp", 1.05, 0.98])], [3, 3])
        self.assertEqual(in_bits(found[:2]), in_bits(single))
        self.assertEqual(found[2:], [["", "", ""], *[[VALUE] * 3] * 2])
        rows.clearContents(1023)
        why = DOCUMENT.Sheets.getByIndex(0).getCellRangeByName("E1").getCellByPosition(0, 0)
        why.setFormula('=POUR_WHY("POUR_PIECE_MASS";A1:A5;B1:B5;0.98)')
        reasons = why.getString().splitlines()
        self.assertEqual([reason.split(".")[0] for reason in reasons[:1]], ["row 4: cavity_volume_ml: It is missing"])
        self.assertEqual([reason.split(":")[0] for reason in reasons], ["row 4", "row 5", "row 5"])
        why.setFormula('=POUR_WHY("POUR_PIECE_MASS";A1:A2;B1:B2;0.98)')
        self.assertEqual(why.getString(), "")
        why.setFormula('=POUR_WHY("POUR_PIECE_MASS";A1:A5;B1:B4;0.98)')
        self.assertIn("cold_density_g_per_ml: It has 4 rows, and another argument has 5.", why.getString())
        why.setString("")
        cells.clearContents(1023)

    def test_ten_thousand_rows(self):
        sheet = DOCUMENT.Sheets.getByIndex(0)
        sheet.getCellRangeByName("A1:A10000").setDataArray(tuple((1 + place / 7,) for place in range(10000)))
        sheet.getCellRangeByName("B1:B10000").setArrayFormula("=POUR_MASS_OF_VOLUME(A1:A10000;1.03)")
        sheet.getCellRangeByName("C1:C10000").setFormulaArray(
            tuple((f"=POUR_MASS_OF_VOLUME(A{row};1.03)",) for row in range(1, 10001))
        )
        rows = sheet.getCellRangeByName("A1:C10000").getDataArray()
        for volume, in_array, alone in rows:
            self.assertEqual(bits(in_array), bits(alone))
            self.assertAlmostEqual(in_array / volume, 1.03)
        cell = sheet.getCellRangeByName("D1").getCellByPosition(0, 0)
        cell.setFormula("=ROWS(POUR_MASS_OF_VOLUME(A1:A20000;1.03))")
        self.assertEqual(cell.getValue(), 10000.0)
        cell.setString("")
        sheet.getCellRangeByName("A1:C10000").clearContents(1023)


class Why(unittest.TestCase):
    def test_names(self):
        self.assertEqual(one("WHY", "pour_convert", "6 oz", "g")[0].split("[")[1], "amount-ambiguous]")
        for name in ("POUR_NOTHING", "", 7.0):
            self.assertIn("There is no function", one("WHY", name, 1.0)[0])
        self.assertEqual(one("WHY", "POUR_WHY", "x")[0], "")

    def test_the_error_can_be_caught(self):
        cell = DOCUMENT.Sheets.getByIndex(0).getCellByPosition(0, 0)
        cell.setFormula('=IFERROR(POUR_CONVERT("6 oz";"g");"refused")')
        self.assertEqual(cell.getString(), "refused")
        cell.setFormula("=ISNA(INDEX(POUR_SINK_RATE(1.1;9.5;9.6;15;127);1;7))")
        self.assertEqual(cell.getValue(), 1.0)
        cell.clearContents(1023) if hasattr(cell, "clearContents") else cell.setString("")


def parsed(value):
    """JSON as cells compare: numbers as doubles."""
    return float(value) if isinstance(value, int) and not isinstance(value, bool) else value


class Documents(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.book, cls.orders = (json.loads(Path(path).read_text()) for path in (BOOK, ORDERS))
        cls.plan = result({"calculate": "plan", "book": cls.book, "orders": cls.orders})

    def pots(self):
        rows = []
        for pot in self.plan["pots"]:
            draws = [draw for stage in pot["stages"] for draw in stage["draws"]]
            pieces = [piece for draw in draws for piece in draw["pieces"]]
            first = pot["stages"][0]
            rows.append([
                pot["pot"], pot["id"], pot["cup_name"], pot["cup"]["value"], len(pot["stages"]), first["holds"]["value"],
                first["fills"]["value"], sum(draw["shots"] for draw in draws), sum(piece["ordered"] for piece in pieces),
                sum(piece["made"] for piece in pieces), pot["heats"]["count"], pot["lost"]["value"],
                pot["left_over"]["value"], pot["sprues"]["value"],
            ])  # fmt: skip
        return [[bits(parsed(value)) for value in row] for row in rows]

    def lines(self):
        rows = []
        for pot in self.plan["pots"]:
            for number, stage in enumerate(pot["stages"], 1):
                for place, line in enumerate(stage["weigh"], 1):
                    doubt = line["doubt"] or {"uncertainty": {"value": ""}}
                    best = line["best"]
                    rows.append([
                        pot["pot"], number, place, " + ".join(stage["formulas"]), line["material"], line["kind"],
                        line["add"]["when"], line["add"]["portions"], line["wanted"]["value"], best["tool"], best["measure"],
                        best["gives"]["value"], best["off"]["value"], line["tolerance"]["value"], doubt["uncertainty"]["value"],
                    ])  # fmt: skip
        return [[bits(parsed(value)) for value in row] for row in rows]

    def same(self, formula, wanted):
        self.assertGreater(len(wanted), 3)
        self.assertEqual(in_bits(table(formula, len(wanted[0]), len(wanted) + 2)), wanted)

    def test_the_day_from_files(self):
        book, orders = quoted(BOOK), quoted(Path(ORDERS).as_uri())
        names = table(f"=POUR_PLAN({book};{orders})", 14, 1)[0]
        self.same(f"=POUR_PLAN({book};{orders})", [names, *self.pots()])
        names = table(f"=POUR_WEIGH({book};{orders})", 15, 1)[0]
        self.same(f"=POUR_WEIGH({book};{orders})", [names, *self.lines()])
        chosen = [[row[0], row[4], row[10]] for row in self.lines()]
        self.same(f'=POUR_WEIGH({book};{orders};"pot, material,measure")', chosen)
        self.same(f'=POUR_WEIGH({book};{orders};{{"pot";"material";"measure"}})', chosen)

    def test_the_day_from_cells(self):
        sheet = DOCUMENT.Sheets.getByIndex(1) if DOCUMENT.Sheets.Count > 1 else None
        if sheet is None:
            DOCUMENT.Sheets.insertNewByName("orders", 1)
            sheet = DOCUMENT.Sheets.getByName("orders")
        fields = ["order", "product", "pieces", "packs", "pack_of", "shape", "promised"]
        rows = [fields, [""] * 7]
        for line in self.orders["lines"]:
            cells = [line.get(field, "") for field in fields]
            # As a person enters them: a number, and a date.
            cells[0] = float(cells[0])
            year, month, day = map(int, line["promised"].split("-"))
            from datetime import date

            cells[6] = float((date(year, month, day) - date(1899, 12, 30)).days)
            rows.append([float(cell) if isinstance(cell, int) else cell for cell in cells])
        area = sheet.getCellRangeByPosition(0, 0, 6, len(rows) - 1)
        area.setDataArray(tuple(map(tuple, rows)))
        place = f"$orders.A1:G{len(rows) + 5}"
        bare = {"format": self.orders["format"], "lines": self.orders["lines"]}
        self.plan, kept = result({"calculate": "plan", "book": self.book, "orders": bare}), self.plan
        self.assertEqual(self.plan["pots"][0]["id"], "dusk + plain")
        sheet.getCellByPosition(9, 0).setString(Path(BOOK).read_text())
        self.same(
            f'=POUR_WEIGH($orders.J1;{place};"pot, material, mass_g")',
            [[row[0], row[4], row[8]] for row in self.lines()],
        )
        self.same(
            f'=POUR_PLAN($orders.J1;{place};"pot, name, mass_g")', [[row[0], row[1], row[5]] for row in self.pots()]
        )
        # The text of the book in several cells.
        lines = Path(BOOK).read_text().splitlines()
        sheet.getCellRangeByPosition(9, 0, 9, len(lines) - 1).setDataArray(tuple((line,) for line in lines))
        self.same(
            f'=POUR_PLAN($orders.J1:J{len(lines)};{place};"pot, name, mass_g")',
            [[row[0], row[1], row[5]] for row in self.pots()],
        )
        self.plan = kept
        # Formulas in place of a product, and faults with their rows.
        area.setDataArray(
            tuple(
                map(
                    tuple,
                    [
                        ["order", "mold", "formulas", "pieces", "", "", ""],
                        [1.0, "finger-5", "dusk + plain", 8.0, "", "", ""],
                        *[[""] * 7] * (len(rows) - 2),
                    ],
                )
            )
        )
        self.assertEqual(
            table(f'=POUR_PLAN({quoted(BOOK)};$orders.A1:D9;"name, pieces_ordered")', 2, 3), [["dusk + plain", 8.0]]
        )
        for cells, says in {
            ("order", "product", "pieces"): ("orders row 4 product: ", (31.0, "dusk fingr", 4.0)),
            ("order", "product", "peaces"): ("orders row 4 peaces: ", (31.0, "dusk finger", 4.0)),
            ("order", "product", "pieces "): ("orders row 4 pieces: ", (31.0, "dusk finger", 4.5)),
            ("order", "order", "pieces"): ("orders: Two columns have the name `order`.", (31.0, "dusk finger", 4.0)),
            ("order", "product", ""): (
                "orders row 4: `4.0` is in a column without a name.",
                (31.0, "dusk finger", 4.0),
            ),
        }.items():
            with self.subTest(cells):
                area.clearContents(1023)
                sheet.getCellRangeByPosition(0, 0, 2, 3).setDataArray((cells, ("", "", ""), ("", "", ""), says[1]))
                value, why = one("PLAN", BOOK, Formula("$orders.A1:C9"))
                self.assertEqual(value, VALUE)
                self.assertIn(says[0], why)
        sheet.getCellRangeByPosition(0, 0, 9, 200).clearContents(1023)

    def test_a_file_next_to_the_document(self):
        with tempfile.TemporaryDirectory() as folder:
            Path(folder, "shop.json").write_bytes(b"\xef\xbb\xbf" + Path(BOOK).read_bytes())
            document = OFFICE.new()
            document.storeAsURL(Path(folder, "day.ods").as_uri(), office.properties(FilterName="calc8"))
            cell = document.Sheets.getByIndex(0).getCellByPosition(0, 0)
            cell.setFormula(f'=POUR_PLAN("shop.json";{quoted(ORDERS)};"name")')
            self.assertEqual(cell.getString(), "dusk + plain")
            document.close(True)

    def test_recipes_and_costs(self):
        formulas = ["dusk", "salted"]
        for base in ("1 1/2 cup", "500 g", None):
            request = {"book": self.book, "formulas": formulas}
            if base:
                request["base_amount"] = base
            given = quoted("500 g" if base == "500 g" else base) if base else ""
            parts = result({"calculate": "formula", **request})["parts"]
            wanted = [
                [part["material"], bits(part["mass"]["value"]), bits(part["ratio"]), bits(part["of_finished"]["value"])]
                for part in parts
            ]
            names = ["material", "mass_g", "ratio", "of_finished"]
            self.same(f'=POUR_FORMULA({quoted(BOOK)};"dusk + salted";{given})', [names, *wanted])
            self.same(
                f'=POUR_FORMULA({quoted(BOOK)};{{"dusk"|"salted"}};{given};;"mass_g")', [[row[1]] for row in wanted]
            )
            lines = result({"calculate": "cost", **request})["lines"]
            wanted = [
                [
                    line["material"],
                    bits(line["mass"]["value"]),
                    bits(float(line["cost"]["amount"])),
                    bits(float(line["packages"])),
                    bits(float(line["to_buy"]["amount"])),
                    line["cost"]["currency"],
                ]
                for line in lines
            ]
            self.same(
                f'=POUR_COST({quoted(BOOK)};"dusk + salted";{given})',
                [["material", "mass_g", "cost", "packages", "to_buy", "currency"], *wanted],
            )
        parts = result({"calculate": "formula", "book": self.book, "formulas": formulas, "finished_amount": "500 g"})[
            "parts"
        ]
        self.same(
            f'=POUR_FORMULA({quoted(BOOK)};"dusk + salted";;500;"material, mass_g")',
            [[part["material"], bits(part["mass"]["value"])] for part in parts],
        )
        self.same(
            f'=POUR_FORMULA({quoted(BOOK)};"dusk + salted";;{{0.5;"kg"}};"material, mass_g")',
            [[part["material"], bits(part["mass"]["value"])] for part in parts],
        )

    def test_grams_of_a_formula_in_the_sheet(self):
        book = json.loads(json.dumps(self.book))
        book["formulas"]["mine"] = {
            "per": "1 cup",
            "doses": {"plum": "32 drops", "fine-salt": "1/4 cup", "stabilizer": "2 g", "softener": "8 % of base"},
        }
        parts = result({"calculate": "formula", "book": book, "formulas": ["mine"], "base_amount": "3 cup"})["parts"]
        masses = {part["material"]: part["mass"]["value"] for part in parts}
        materials = (("plum",), ("fine-salt",), (None,), ("stabilizer",), ("softener",))
        wanted = [[bits(masses[name]) if name else ""] for (name,) in materials]
        forms = {
            "one column": (("32 drops",), ("1/4 cup",), (None,), (2.0,), ("8 % of base",)),
            "two columns": ((32.0, "drops"), (0.25, "cup"), (None, None), ("2 g", None), (8.0, "% of base")),
        }
        for form, amounts in forms.items():
            with self.subTest(form):
                found, why = run([("POUR_GRAMS", [BOOK, materials, amounts, "1 cup", ((3.0, "cup"),)])])
                self.assertEqual(why, [""])
                self.assertEqual(bits(found[0][0]), wanted[0][0])
                names = "|".join(quoted(name or "") for (name,) in materials)
                cells = "|".join(
                    ";".join(quoted(cell or "") if not isinstance(cell, float) else decimal(cell) for cell in row)
                    for row in amounts
                )
                self.same(f'=POUR_GRAMS({quoted(BOOK)};{{{names}}};{{{cells}}};"1 cup";"3 cup")', wanted)
        for materials, amounts, says in [
            ((("plum",), ("plum",)), (("1 g",), ("2 g",)), 'amounts/plum: "plum" occurs twice here.'),
            ((("plom",),), (("1 g",),), "plom"),
            ((("plum",),), (("1 gg",),), "amounts/plum: `gg` is not a known unit."),
            ((("plum",), (None,)), (("1 g",), ("2 g",)), "materials row 2: It is missing."),
            ((("plum",), ("moss",)), (("1 g",), (None,)), "amounts row 2: It is missing."),
            ((("plum",), ("moss",)), (("1 g",),), "amounts: It has 1 rows, and materials has 2."),
            (((None,),), ((None,),), "materials: "),
        ]:
            value, why = one("GRAMS", BOOK, materials, amounts, "1 cup", "3 cup")
            self.assertEqual(value, VALUE)
            self.assertIn(says, why)
        self.assertIn("per: It is missing", one("GRAMS", BOOK, (("plum",),), (("1 g",),), None, "3 cup")[1])

    def test_requests_fields_and_rows(self):
        request = {"calculate": "formula", "formulas": ["dusk"], "base_amount": "1 cup"}
        with_book = answer({**request, "book": self.book})
        value, why = one("ANSWER", json.dumps(request), BOOK)
        self.assertEqual((value, why), (with_book, ""))
        sheet = DOCUMENT.Sheets.getByIndex(0)
        sheet.getCellByPosition(0, 0).setString(with_book)
        data = json.loads(with_book)["result"]
        sheet.getCellByPosition(1, 0).setFormula('=POUR_FIELD(A1;"result/mass/value")')
        self.assertEqual(bits(sheet.getCellByPosition(1, 0).getValue()), bits(data["mass"]["value"]))
        sheet.getCellByPosition(1, 0).setFormula('=POUR_FIELD(A1;"/result/parts/1")')
        self.assertEqual(json.loads(sheet.getCellByPosition(1, 0).getString()), data["parts"][1])
        sheet.getCellByPosition(1, 0).setFormula('=POUR_FIELD(A1;"/result/mass")')
        self.assertEqual(bits(sheet.getCellByPosition(1, 0).getValue()), bits(data["mass"]["value"]))
        # A text that is one value compares as any other.
        sheet.getCellByPosition(1, 0).setFormula('=POUR_FIELD(A1;"result/calculate")')
        sheet.getCellByPosition(2, 0).setFormula('=IF(B1="formula";MATCH("formula";B1:B1;0);"no")')
        self.assertEqual(sheet.getCellByPosition(2, 0).getValue(), 1.0)
        wanted = [
            [part["material"], bits(part["mass"]["value"]), bits(float(place)), bits(data["mass"]["value"])]
            for place, part in enumerate(data["parts"], 1)
        ]
        sheet.getCellByPosition(30, 0).setFormula('=POUR_ROWS(A1;"result/parts";"material, mass/value, #, nothing")')
        self.assertEqual(sheet.getCellByPosition(30, 0).getString(), wanted[0][0])
        sheet.getCellRangeByPosition(30, 1, 33, 1 + len(wanted)).setArrayFormula(
            '=POUR_ROWS(A1;"result/parts";"material, mass/value, #, nothing")'
        )
        found = read(sheet.getCellRangeByPosition(30, 1, 33, len(wanted)))
        self.assertEqual([[bits(cell) for cell in row] for row in found], [[*row[:3], ""] for row in wanted])
        sheet.getCellRangeByPosition(0, 0, 33, 10).clearContents(1023)
        faults = answer({"calculate": "convert", "amount": "6 oz", "to": "g"})
        for name, arguments in [("FIELD", [faults, "result/value"]), ("ROWS", [faults, "result/parts"])]:
            value, why = one(name, *arguments)
            self.assertEqual(value, VALUE)
            self.assertEqual(why, one("WHY", "POUR_CONVERT", "6 oz", "g")[0])
        self.assertIn("`result/x` leads nowhere: there is no `x`", one("FIELD", with_book, "result/x")[1])
        self.assertEqual(one("FIELD", '{"a":null}', "a"), (NOT_AVAILABLE, ""))
        for value, wanted in {
            '{"value":2,"unit":"g","text":"2 g"}': 2.0, '{"amount":"7.25","currency":"USD"}': 7.25, '["a","b"]': "a + b",
            '{"amount":"x","currency":[]}': "x", '[1]': "[1]", '[]': "[]", '{"value":{"value":1},"unit":1}': '{"value": 1}',
        }.items():  # fmt: skip
            self.assertEqual(one("FIELD", '{"a":' + value + "}", "a"), (wanted, ""))
        self.assertEqual(one("FIELD", '{"a/b":[1,true]}', "a~1b/1"), (1.0, ""))
        self.assertIn("It is not JSON", one("FIELD", "{", "a")[1])
        self.assertIn("It is not JSON", one("FIELD", "[" * 100000, "a")[1])
        grid = '{"pots":[{"pot":"A","stages":[{"n":1,"weigh":[{"m":"x"},{"m":"y"}]}]},{"pot":"B","stages":[{"n":2,"weigh":[{"m":"z"}]}]}]}'
        formula = f'=POUR_ROWS({quoted(grid)};"pots/*/stages/*/weigh";"^^pot, ^n, ^#, #, m, ^^^x")'
        self.assertEqual(
            table(formula, 6, 5),
            [["A", 1.0, 1.0, 1.0, "x", ""], ["A", 1.0, 1.0, 2.0, "y", ""], ["B", 2.0, 1.0, 1.0, "z", ""]],
        )
        self.assertEqual(table(f'=POUR_ROWS({quoted(grid)};"pots/0/stages/0/weigh")', 1, 5), [["m"], ["x"], ["y"]])
        self.assertEqual(
            table('=POUR_ROWS("{""a"":1,""b"":[2]}";"/")', 2, 5), [["#", "value"], ["a", 1.0], ["b", "[2]"]]
        )
        self.assertEqual(table('=POUR_ROWS("[]";"/";"a")', 1, 3), [[""]])

    def test_columns_are_listed(self):
        """The names of all columns of a table are in the function wizard and in the README."""
        readme, about = (ROOT / "bindings/calc/README.md").read_text(), wizard(OFFICE)
        for name, given, count in [
            ("PLAN", quoted(ORDERS), 14), ("WEIGH", quoted(ORDERS), 15), ("FORMULA", '"plain"', 4), ("COST", '"plain"', 6),
        ]:  # fmt: skip
            names = table(f"=POUR_{name}({quoted(BOOK)};{given})", count + 1, 1)[0]
            self.assertEqual(names.pop(), NOT_AVAILABLE)
            self.assertIn(f"Columns: {', '.join(names)}.", about[f"POUR_{name}"]["Description"])
            self.assertIn(", ".join(f"`{column}`" for column in names), readme)

    def test_refusals(self):
        with tempfile.TemporaryDirectory() as folder:
            bad = Path(folder, "bad.json")
            bad.write_bytes(b"\xff")
            empty = Path(folder, "empty.json")
            empty.write_text("")
            for book, orders, says in [
                ("[", ORDERS, r"book: .*\[not-json\]"),
                ("{}", ORDERS, r"book: \"format\" is missing.*\[missing-field\]"),
                (BOOK, "[", r"orders: .*\[not-json\]"),
                (7.0, ORDERS, "book: It is a number; it must be a file or JSON"),
                (None, ORDERS, "book: It is missing"),
                (BOOK, None, "orders: It is missing"),
                ("/etc/passwd", ORDERS, "is not JSON, and not the name of a file that ends in .json"),
                ("/nowhere/book.json", ORDERS, "There is no file `/nowhere/book.json`"),
                (folder + "/a\0b.json", ORDERS, "book: "),
                ("book.json", ORDERS, "is next to a document that was never saved"),
                ("//server/book.json", ORDERS, "is on another computer"),
                ("file://server/share/book.json", ORDERS, "book: "),
                (str(bad), ORDERS, r"is not a text in UTF-8.*\[not-utf8\]"),
                (str(empty), ORDERS, r"book: .*\[not-json\]"),
                (folder + "/.json", ORDERS, "There is no file"),
                (BOOK, Path(ORDERS).read_text().replace("reed paddle", "reed padle"), 'orders/lines/2/product.*Did you mean "reed paddle"'),
            ]:  # fmt: skip
                with self.subTest(book=str(book)[:40], orders=str(orders)[:40]):
                    found, why = run([("POUR_PLAN", [book, orders]), ("POUR_WEIGH", [book, orders])])
                    self.assertEqual(found, [[VALUE], [VALUE]])
                    self.assertRegex(why[0], says)
                    self.assertEqual(why[0], why[1])
        self.assertIn("columns: There is no column `pt`. Known: pot, name", one("PLAN", BOOK, ORDERS, "pt")[1])
        self.assertEqual(len(one("PLAN", None, None)[1].splitlines()), 2)
        self.assertIn("formulas: It is missing", one("FORMULA", BOOK, None)[1])
        self.assertIn("nothing-like", one("COST", BOOK, "nothing-like")[1])
        self.assertIn("request: It is missing", one("ANSWER", None)[1])
        self.assertIn("missing-field", one("ANSWER", '{"calculate":"formula","formulas":["dusk"]}')[0])

    def test_version(self):
        version = next(line for line in (ROOT / "Cargo.toml").read_text().splitlines() if line.startswith("version"))
        self.assertEqual(f'version = "{one("VERSION")[0]}"', version)


class AnyCells(unittest.TestCase):
    def test_give_a_value_or_an_error(self):
        """Odd cells in all places of all functions, from a fixed seed."""
        sheet = DOCUMENT.Sheets.getByIndex(0)
        odd = [
            ("", 0), (0.0, 0), (-1.0, 0), (1e-320, 0), (1e308, 0), (46355.0, 0), (2.0**32, 0), ("x", 0), (" ", 0), ("1/4 tsp", 0),
            ("-3 °F", 0), ("6 oz", 0), ("1e400 g", 0), ("metric", 0), ("salt", 0), ("{", 0), ("[]", 0), ("𝟙 g", 0), ("a\tb", 0),
            ("9" * 5000, 0), ("x" * 200000, 0), ("[" * 60000, 0), ("\ufffe\u0301", 0), ("result/*", 0), ("book.json", 0),
        ]  # fmt: skip
        sheet.getCellRangeByPosition(0, 0, 0, len(odd) - 1).setDataArray(tuple((value,) for value, _ in odd))
        for place, formula in enumerate(
            ["=1/0", "=NA()", '=""', "=TRUE()", "=FALSE()", "=TODAY()", "=INDEX(B1;0;0;9)", "=B1:B3"]
        ):
            sheet.getCellByPosition(0, len(odd) + place).setFormula(formula)
        last = len(odd) + 8
        singles = [f"$A${row}" for row in range(1, last + 1)]
        ranges = [
            "$A$1:$A$2",
            "$A$3:$B$9",
            "$A$8:$A$14",
            "$C$1:$F$4",
            "$A$20:$A$30",
            "$A$1:$Z$1",
            "{1;2|3;4}",
            '{"a"}',
            "$A$1:$A$1",
            "",
            "$D$1:$D$40",
        ]
        draw = random.Random(20270302)
        names = [(shown(one), len(one["parameters"])) for one in CALCULATIONS]
        names += [
            ("POUR_PLAN", 3),
            ("POUR_WEIGH", 3),
            ("POUR_FORMULA", 5),
            ("POUR_COST", 5),
            ("POUR_GRAMS", 5),
            ("POUR_ANSWER", 2),
            ("POUR_FIELD", 2),
            ("POUR_ROWS", 3),
            ("POUR_WHY", 4),
        ]
        texts = []
        for function, count in names:
            for _ in range(12):
                given = [draw.choice(singles if draw.random() < 0.7 else ranges) for _ in range(count)]
                texts.append((function, given))
        for calculation in CALCULATIONS:
            # Examples with one odd cell.
            base = [
                ""
                if value is None
                else decimal(value)
                if isinstance(value, (int, float))
                else quoted(value)
                if isinstance(value, str)
                else "$C$1:$F$4"
                for value in calculation["example"]["arguments"]
            ]
            for _ in range(8):
                place = draw.randrange(len(base))
                texts.append((shown(calculation), [*base[:place], draw.choice(singles), *base[place + 1 :]]))
        formulas = tuple(
            (f"={name}({';'.join(given)})", f"=POUR_WHY({';'.join([quoted(name), *given])})") for name, given in texts
        )
        cells = sheet.getCellRangeByPosition(50, 0, 51, len(formulas) - 1)
        cells.setFormulaArray(formulas)
        refused = answered = 0
        for row, ((name, given), (value, why)) in enumerate(zip(texts, read(cells))):
            with self.subTest(name, given=given):
                error = value.number if isinstance(value, Error) else 0
                if isinstance(why, Error):
                    # An error of a cell goes through, before the function is called.
                    self.assertNotEqual(why.number, 502)
                    self.assertTrue(error)
                elif error == 519 and name != "POUR_WHY":
                    refused += 1
                    if ";" not in why:
                        self.assertRegex(why, r"\[[a-z0-9-]+\]$|^$")
                else:
                    self.assertNotIn(error, (502,))
                    answered += 1
        self.assertGreater(refused, 200)
        self.assertGreater(answered, 50)
        cells.clearContents(1023)
        sheet.getCellRangeByPosition(0, 0, 10, last + 5).clearContents(1023)
        self.assertEqual(one("CONVERT", "1/4 tsp", "mL"), (1.2322303984375, ""))


class Files(unittest.TestCase):
    def test_a_saved_sheet_has_its_functions(self):
        formulas = [
            '=POUR_CONVERT("1/4 tsp";"mL")',
            "=POUR_SHOT_FILL(4;9.5;1.05)",
            '=POUR_CONVERT("6 oz";"g")',
            '=POUR_WHY("POUR_CONVERT";"6 oz";"g")',
        ]
        with tempfile.TemporaryDirectory() as folder:
            for ending, kind in {
                "ods": "calc8",
                "fods": "OpenDocument Spreadsheet Flat XML",
                "xlsx": "Calc MS Excel 2007 XML",
            }.items():
                with self.subTest(ending):
                    document = OFFICE.new()
                    cells = document.Sheets.getByIndex(0).getCellRangeByPosition(0, 0, 0, 3)
                    cells.setFormulaArray(tuple((formula,) for formula in formulas))
                    document.Sheets.getByIndex(0).getCellRangeByName("C1:E1").setArrayFormula(
                        "=POUR_PIECE_MASS(9.5;1.05;0.98)"
                    )
                    wanted = read(cells)
                    path = Path(folder, f"sheet.{ending}")
                    document.storeToURL(path.as_uri(), office.properties(FilterName=kind))
                    document.close(True)
                    again = OFFICE.open(path)
                    again.calculateAll()
                    sheet = again.Sheets.getByIndex(0)
                    self.assertEqual(read(sheet.getCellRangeByPosition(0, 0, 0, 3)), wanted)
                    self.assertEqual(read(sheet.getCellRangeByName("C1:E1")), [[9.6425, 9.31, 9.975000000000001]])
                    self.assertIn("POURWRIGHT.CALC.SHOTFILL", sheet.getCellByPosition(0, 1).getFormula())
                    again.close(True)


class Readme(unittest.TestCase):
    def test_its_examples(self):
        """Each as it is typed: in a cell, or over a row if it has several results."""
        text = (ROOT / "bindings/calc/README.md").read_text()
        sheet = DOCUMENT.Sheets.getByIndex(0)
        given = re.findall(r"^\| (\d) \| ([^|]+) \| ([^|]+) \|$", text, re.MULTILINE)
        self.assertEqual(len(given), 5)
        for row, *cells in given:
            for column, cell in enumerate(cells):
                sheet.getCellByPosition(column, int(row) - 1).FormulaLocal = cell
        block = re.search(r"```text readme\n(.*?)```", text, re.DOTALL)[1]
        for line in block.splitlines():
            formula, _, wanted = line.rpartition("  → ")
            formula = re.sub(r'"(book|orders)\.json"', lambda name: quoted(f"{DEMO}{os.sep}{name[1]}.json"), formula)
            with self.subTest(formula):
                width = len(wanted.split(" | "))
                cells = sheet.getCellRangeByPosition(3, 0, 2 + width, 0)
                if width > 1:
                    cells.setArrayFormula(formula)
                else:
                    cells.getCellByPosition(0, 0).FormulaLocal = formula
                found = [cells.getCellByPosition(column, 0).getString() for column in range(width)]
                cells.clearContents(1023)
                self.assertEqual(" | ".join(found), wanted)
        self.assertGreater(len(block.splitlines()), 15)
        sheet.getCellRangeByPosition(0, 0, 1, 9).clearContents(1023)


# The functions that are no calculation of the table, and their arguments.
OTHERS = {
    "ANSWER": 2, "COST": 5, "FIELD": 2, "FORMULA": 5, "GRAMS": 5, "PLAN": 3, "ROWS": 3, "VERSION": 0, "WEIGH": 3, "WHY": 2,
}  # fmt: skip


def wizard(started):
    """What the function wizard has of each function of the add-in."""
    listed = started.service("com.sun.star.sheet.FunctionDescriptions")
    found = {}
    for index in range(listed.Count):
        about = {one.Name: one.Value for one in listed.getByIndex(index)}
        if about["Name"].startswith("POUR_"):
            found[about["Name"]] = about
    return found


class Wizard(unittest.TestCase):
    def test_has_every_function_with_its_arguments(self):
        found = wizard(OFFICE)
        self.assertEqual(set(found), {shown(one) for one in CALCULATIONS} | {f"POUR_{name}" for name in OTHERS})
        for calculation in CALCULATIONS:
            about = found[shown(calculation)]
            with self.subTest(calculation["name"]):
                self.assertEqual(about["Category"], 11)
                self.assertTrue(about["Description"].startswith(calculation["summary"].split("`")[0]))
                for name in [one["field"] for one in calculation["results"]]:
                    self.assertIn(name, about["Description"])
                self.assertNotIn("`", about["Description"])
                self.assertEqual(
                    [one.Name for one in about["Arguments"]], [one["field"] for one in calculation["parameters"]]
                )
                for shown_argument, parameter in zip(about["Arguments"], calculation["parameters"]):
                    text = shown_argument.Description
                    needed = "" if parameter["optional"] else "Must be given. "
                    self.assertTrue(text.startswith(needed + parameter["meaning"].replace("`", "")), text)
                    self.assertEqual("Default: " in text, parameter["optional"])
                    for word in parameter["words"]:
                        self.assertIn(word, text)
        for name, count in OTHERS.items():
            arguments = found[f"POUR_{name}"]["Arguments"] or ()
            self.assertEqual(len(arguments), count)
            self.assertTrue(found[f"POUR_{name}"]["Description"])
            self.assertTrue(all(one.Name and one.Description for one in arguments), name)

    def test_speaks_the_users_measures(self):
        with office.Office(OXT, "de-DE") as other:
            volume = [wizard(one)["POUR_MASS_OF_VOLUME"]["Arguments"][0].Description for one in (OFFICE, other)]
        self.assertIn('In mL, or with its unit: "1/4 tsp".', volume[0])
        self.assertIn('In mL, or with its unit: "1.25 mL".', volume[1])

    def test_its_examples_can_be_read(self):
        """The texts in the help of arguments are amounts of their kind."""
        calls = set()
        for calculation in CALCULATIONS:
            for argument, parameter in zip(wizard(OFFICE)[shown(calculation)]["Arguments"], calculation["parameters"]):
                for unit, text in re.findall(r'(\S+), or with its unit: "([^"]+)"', argument.Description):
                    calls.add((text, unit.lstrip("(")))
                    if not parameter["columns"]:
                        self.assertEqual(unit, parameter["unit"])
        _, why = run([("POUR_CONVERT", [text, unit]) for text, unit in sorted(calls)])
        self.assertEqual(set(why), {""})
        self.assertGreater(len(calls), 10)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=1)
