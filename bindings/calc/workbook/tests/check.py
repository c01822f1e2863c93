"""Compares the workbook with the library: every calculated cell to the bit, as made and after a person's changes.

    check.py ADD-IN FOLDER

FOLDER has shop.ods and shop.xlsx. The library is that in the add-in, asked by its C function, not by the add-in's functions.
"""

import ctypes
import html
import json
import re
import struct
import sys
import tempfile
import zipfile
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.dont_write_bytecode = True
sys.path[:0] = [str(HERE.parent), str(HERE.parents[1] / "tests")]
from office import Office, properties  # noqa: E402

from parts import answers  # noqa: E402
from parts.fields import BOOK, ORDERS  # noqa: E402

extension, folder = Path(sys.argv[1]), Path(sys.argv[2])
RESULTS = ("Pour list", "Weigh list", "Costs", "Order costs", "Stock", "Used", "Salt", "Read me")
SCROLLED = ("Orders", "Products", "Formulas", "Molds", "Materials", *RESULTS[:6])
ARRAY = re.compile(r'\.ROWS\([A-Z.]+\.ANSWER\((\$Requests\.\$B\$\d+)\);"([^"]+)";(\$[^)]+)\)')
FORMULAS = 16


class Library:
    def __init__(self):
        self.folder = tempfile.TemporaryDirectory()
        with zipfile.ZipFile(extension) as packed:
            name = next(
                name for name in packed.namelist() if name.startswith("libpourwright") or name == "pourwright.dll"
            )
            packed.extract(name, self.folder.name)
        self.library = ctypes.CDLL(str(Path(self.folder.name, name)))
        self.library.pour_answer.restype = ctypes.c_void_p
        self.library.pour_answer.argtypes = [ctypes.c_char_p]
        self.library.pour_string_free.argtypes = [ctypes.c_void_p]

    def answer(self, request):
        text = self.library.pour_answer(json.dumps(request).encode())
        try:
            return json.loads(ctypes.string_at(text))
        finally:
            self.library.pour_string_free(text)


def bits(value):
    return struct.pack("<d", value) if isinstance(value, float) else value


def expect(found, wanted, what):
    if found != wanted:
        raise SystemExit(f"{what}: found {found!r}, not {wanted!r}.")


class Book:
    """The workbook as it is open."""

    def __init__(self, document):
        self.document = document

    def sheet(self, name):
        return self.document.Sheets.getByName(name)

    def at(self, name, address):
        return self.sheet(name).getCellRangeByName(address)

    def text(self, address):
        sheet, where = address.replace("$", "").replace("'", "").rsplit(".", 1)
        return self.at(sheet, where).String

    @property
    def state(self):
        return self.at("Read me", "B4").String

    def document_of(self, name):
        """A document as its sheet has it, a line a row."""
        lines = [line[0] for line in self.data(name)]
        return json.loads("\n".join(lines))

    def data(self, name):
        cursor = self.sheet(name).createCursor()
        cursor.gotoEndOfUsedArea(False)
        end = cursor.RangeAddress
        return self.sheet(name).getCellRangeByPosition(0, 0, end.EndColumn, end.EndRow).getDataArray()

    def areas(self):
        """Every area that the add-in fills: sheet, range, request, list, columns."""
        found = {}
        for name in RESULTS:
            sheet = self.sheet(name)
            for part in sheet.queryContentCells(FORMULAS).RangeAddresses:
                for column in range(part.StartColumn, part.EndColumn + 1):
                    for row in (part.StartRow, min(part.StartRow + 1, part.EndRow)):
                        cell = sheet.getCellByPosition(column, row)
                        asked = ARRAY.search(cell.Formula)
                        if not asked or not cell.Formula.startswith("{"):
                            continue
                        cursor = sheet.createCursorByRange(cell)
                        cursor.collapseToCurrentArray()
                        request, path, columns = asked.groups()
                        names = sheet.getCellRangeByName(columns.rsplit(".", 1)[1]).getDataArray()[0]
                        found[name, cursor.AbsoluteName] = (cursor.RangeAddress, request, path, names)
        return found


def compare(book, areas, plans):
    """Every cell of every area, with rows of the library's answer to the same request."""
    cells = 0
    for (name, place), (address, request, path, columns) in areas.items():
        wanted = answers.rows(plans[request], path, columns)
        found = (
            book.sheet(name)
            .getCellRangeByPosition(address.StartColumn, address.StartRow, address.EndColumn, address.EndRow)
            .getDataArray()
        )
        wanted += [[""] * len(columns)] * (len(found) - len(wanted))
        expect(len(found), len(wanted), f"Rows of {place}")
        for row, (have, want) in enumerate(zip(found, wanted)):
            for column, (one, other) in enumerate(zip(have, want)):
                if bits(one) != bits(other):
                    raise SystemExit(
                        f"{place}, row {row + 1}, {columns[column]} of {path}: the cell has {one!r}, the library {other!r}."
                    )
                cells += one != ""
    return cells


def salt_request(book, shop):
    """The request of the sheet Salt, from what is filled in there."""
    mold, body, salt, per = (book.at("Salt", f"B{row}").String for row in range(3, 7))
    steps = [book.at("Salt", f"A{row}").String for row in range(9, 16)]
    names = {number: f"salt, step {number}" for number, dose in enumerate(steps) if dose != "0"}
    formulas = {
        **shop["formulas"],
        **{name: {"per": per, "doses": {salt: steps[number]}} for number, name in names.items()},
    }
    lines = [
        {"order": "salt", "mold": mold, "formulas": [body, *([names[number]] if number in names else [])], "pieces": 1}
        for number in range(len(steps))
    ]
    return {
        "calculate": "plan",
        "book": {**shop, "formulas": formulas},
        "orders": {"format": ORDERS["format"], "lines": lines},
    }


def check(library, book, shop, orders, what, areas=None):
    """The sheets after a change: the documents that they write, and all that is calculated from them."""
    expect(book.document_of("book.json"), shop, f"{what}: book.json")
    expect(book.document_of("orders.json"), orders, f"{what}: orders.json")
    requests = {
        "$Requests.$B$7": {"calculate": "plan", "book": shop, "orders": orders},
        "$Requests.$B$8": salt_request(book, shop),
    }
    for address, request in requests.items():
        expect(json.loads(book.text(address)), request, f"{what}: the request {address}")
    areas = areas or book.areas()
    plans = {address: library.answer(request) for address, request in requests.items()}
    if "faults" not in plans["$Requests.$B$7"]:
        expect(book.state[:8], "Planned:", f"{what}: the state")
    cells = compare(book, areas, plans)
    print(f"   {what}: {len(areas)} lists, {cells} cells")
    return areas, plans["$Requests.$B$7"]


def changed(**changes):
    return {**json.loads(json.dumps(ORDERS)), **changes}


library = Library()
# A locale with a decimal comma, as JSON and the library have points.
with Office(extension, "de-DE") as office:
    book = Book(office.open(folder / "shop.ods"))
    areas, plan = check(library, book, BOOK, ORDERS, "as made")
    expect(len(areas), 9, "Lists that the add-in fills")

    # What the sheets add of their own: the product of a line, the plastisol of a pot, the share of the stock.
    stock = plan["result"]["stock"]
    for row, one in enumerate(stock, 5):
        expect(
            bits(book.at("Stock", f"H{row}").Value),
            bits(one["used"]["value"] / one["had"]["value"]),
            f"Used of stock, {one['material']}",
        )
    pours = [line for line in book.sheet("Pour list").getCellRangeByName("A5:O65").getDataArray() if line[0]]
    for line in pours:
        expect(line[13], plan["result"]["lines"][int(line[12]) - 1]["what"], f"The product of line {line[12]}")
    wanted = {}
    for pot in plan["result"]["pots"]:
        weighed = [one for stage in pot["stages"] for one in stage["weigh"] if one["kind"] == "plastisol"]
        measures = [
            " or ".join([one["best"]["measure"], *[way["measure"] for way in one["others"][:1]]])
            + f" {one['material']}"
            for one in weighed
        ]
        wanted[pot["pot"]] = " + ".join(measures)
    expect({line[0]: line[14] for line in pours if line[14]}, wanted, "Plastisol of the pots")

    # What a person sees and may choose.
    for name, first, listed in (
        ("Orders", "B5", "$Products.$A$5"),
        ("Products", "B5", "$Molds.$A$5"),
        ("Products", "C5", "$Formulas.$A$5"),
        ("Products", "G12", "$Formulas.$A$5"),
        ("Formulas", "G5", "$Materials.$A$5"),
        ("Salt", "B3", "$Molds.$A$5"),
    ):
        rule = book.at(name, first).Validation
        expect((rule.Type.value, rule.getFormula1().split(":")[0]), ("LIST", listed), f"The list of {name}, {first}")
    for name in SCROLLED:
        sheet, style = (
            book.sheet(name),
            book.document.StyleFamilies.getByName("PageStyles").getByName(book.sheet(name).PageStyle),
        )
        expect(
            (sheet.getPrintTitleRows(), sheet.getTitleRows().StartRow, style.ScaleToPagesX > 0),
            (True, 3, True),
            f"How {name} prints",
        )
        expect(sheet.Annotations.Count > 2, True, f"Help on the headings of {name}")
    expect(sorted(book.sheet(name).Charts.Count for name in ("Stock", "Order costs", "Salt")), [1, 1, 3], "Charts")

    # A person adds an order in the next empty row.
    row = 5 + len(ORDERS["lines"])
    book.at("Orders", f"A{row}").Value = 38.0
    book.at("Orders", f"B{row}").String = "ember grub"
    book.at("Orders", f"D{row}").Value = 17.0
    book.at("Orders", f"G{row}").Formula = "2027-03-10"
    expect(book.at("Orders", f"G{row}").Value, 46456.0, "A typed date")
    more = {"order": "38", "product": "ember grub", "pieces": 17, "promised": "2027-03-10"}
    orders = changed(lines=[*ORDERS["lines"], more])
    check(library, book, BOOK, orders, "an order more", areas)
    expect(book.state.startswith("Planned: 11 order lines"), True, "The state says 11 lines")

    # The same with an empty row before it, and a text that JSON has to escape.
    book.at("Orders", f"A{row}:G{row}").clearContents(1023)
    book.at("Orders", f"A{row + 1}").String = 'A "5 in" \\ Ü'
    book.at("Orders", f"B{row + 1}").String = "reed paddle"
    book.at("Orders", f"E{row + 1}").Value = 2.0
    book.at("Orders", f"F{row + 1}").Value = 5.0
    odd = {"order": 'A "5 in" \\ Ü', "product": "reed paddle", "packs": 2, "pack_of": 5}
    check(library, book, BOOK, changed(lines=[*ORDERS["lines"], odd]), "an empty row, odd text", areas)
    book.at("Orders", f"A{row + 1}:G{row + 1}").clearContents(1023)

    # The shop changes: a price, a cavity, a dose, a tool, what is on hand.
    shop = json.loads(json.dumps(BOOK))
    for sheet, address, text in (
        ("Materials", "D5", "63.50 USD per 1 gal"),
        ("Molds", "D5", "9.9 mL ± 0.1"),
        ("Formulas", "H5", "2 tsp"),
        ("Tools", "A11", "1/16 tsp"),
        ("Materials", "B10", "1 fl oz"),
    ):
        book.at(sheet, address).String = text
    shop["materials"]["clear-base"]["price"] = "63.50 USD per 1 gal"
    shop["molds"]["finger-5"]["cavity"] = "9.9 mL ± 0.1"
    shop["formulas"]["plain"]["doses"]["stabilizer"] = "2 tsp"
    shop["bench"]["spoons"] = [*shop["bench"]["spoons"], "1/16 tsp"]
    stocked = changed(stock={**ORDERS["stock"], "plum": "1 fl oz"})
    check(library, book, shop, stocked, "another shop", areas)

    # Salt beyond what the book allows: the reason, and no values.
    book.at("Salt", "A15").String = "2 cup"
    refused = library.answer(salt_request(book, shop))
    expect(
        book.at("Salt", "C3").String,
        " ".join(fault["message"] for fault in refused["faults"]),
        "The reason on the sheet Salt",
    )
    expect(
        any(any(line) for line in book.sheet("Salt").getCellRangeByName("B9:F15").getDataArray()),
        False,
        "Values of salt that is refused",
    )
    book.at("Salt", "A15").String = "3/8 cup"

    # What is wrong is listed, and no old value is left.
    book.at("Orders", "B7").String = "reed padle"
    book.at("Orders", "D5").Value = 24.5
    wrong = json.loads(json.dumps(stocked))
    wrong["lines"][2]["product"], wrong["lines"][0]["pieces"] = "reed padle", 24.5
    _, refused = check(library, book, shop, wrong, "a wrong order", areas)
    expect(
        book.state.startswith(f"Not planned: {len(refused['faults'])} to put right"),
        True,
        f"The state of a wrong order: {book.state}",
    )
    fault = refused["faults"][0]
    expect(fault["path"], "/orders/lines/0/pieces", "The place of the first fault")
    expect(
        book.at("Orders", "H5").String, f"{fault['message']} {fault['help']}", "What is wrong, next to the order line"
    )
    for name in RESULTS[:6]:
        expect(book.at(name, "A2").String, book.state, f"The state on the sheet {name}")
    book.document.close(True)

    # A row is taken out.
    book = Book(office.open(folder / "shop.ods"))
    book.sheet("Orders").Rows.removeByIndex(6, 1)
    check(library, book, BOOK, changed(lines=[*ORDERS["lines"][:2], *ORDERS["lines"][3:]]), "a row less")
    book.document.close(True)

    # What is filled in where it does not count.
    book = Book(office.open(folder / "shop.ods"))
    for name in SCROLLED[:5]:
        book.at(name, "A70").String = "lost"
        expect(
            book.state.startswith(f"Not planned: rows below row 64 of the sheet {name}"),
            True,
            f"The state: {book.state}",
        )
        book.at(name, "A70").String = ""
        book.sheet(name).Rows.insertByIndex(20, 1)
        book.at(name, "A21").String = "lost"
        expect(
            book.state.startswith(f"Not planned: a row of the sheet {name} has lost"), True, f"The state: {book.state}"
        )
        book.sheet(name).Rows.removeByIndex(20, 1)
    book.at("Tools", "A14").String = "1 tbsp"
    expect(
        book.state.startswith("Not planned: the row below a table of the sheet Tools"), True, f"The state: {book.state}"
    )
    book.at("Tools", "A14").String = ""
    check(library, book, BOOK, ORDERS, "all of it undone")
    book.document.close(True)

# What stays in view, in both files.
with zipfile.ZipFile(folder / "shop.ods") as packed:
    settings = packed.read("settings.xml").decode()
expect(
    re.findall(r'config:name="ActiveTable"[^>]*>([^<]*)<', settings), ["Read me"], "The sheet that shop.ods shows first"
)
with zipfile.ZipFile(folder / "shop.xlsx") as packed:
    names = re.findall(r'<sheet name="([^"]*)"', packed.read("xl/workbook.xml").decode())
    views = {name: packed.read(f"xl/worksheets/sheet{number}.xml").decode() for number, name in enumerate(names, 1)}
for name in SCROLLED:
    view = re.search(rf'config:name="{name}">(.*?)</config:config-item-map-entry>', settings)[1]
    found = re.findall(r'config:name="(?:Horizontal|Vertical)Split(?:Mode|Position)"[^>]*>([0-9]+)<', view)
    expect(found, ["2", "2", "1", "4"], f"What stays in view of {name} in shop.ods")
    expect(
        re.findall("<pane[^>]*>", views[name]),
        ['<pane xSplit="1" ySplit="4" topLeftCell="B5" activePane="bottomRight" state="frozen"/>'],
        f"The same of {name} in shop.xlsx",
    )
expect(
    [name for name in names if 'tabSelected="true"' in views[name]], ["Read me"], "The sheet that shop.xlsx shows first"
)

# In a program without the add-in.
values = {place: (address, request, path, columns) for place, (address, request, path, columns) in areas.items()}
with zipfile.ZipFile(folder / "shop.xlsx") as packed:
    written = 0
    for name in packed.namelist():
        content = packed.read(name).decode("utf-8", "replace")
        expect(
            bool(re.search("POURWRIGHT[.]CALC|POUR_", content, re.IGNORECASE)),
            False,
            f"A function of the add-in in {name} of shop.xlsx",
        )
        # What the form allows: 8192 characters a formula, 255 a text in it, 32767 a cell.
        for formula in re.findall(r"<f[^>]*>([^<]*)</f>", content):
            formula = html.unescape(formula)
            written += 1
            expect(len(formula) <= 8192, True, f"A formula of {len(formula)} characters in {name}")
            expect(
                max(map(len, re.findall(r'"((?:[^"]|"")*)"', formula)), default=0) <= 255,
                True,
                f"A text in {formula[:99]}",
            )
        for text in re.findall(r"<(?:t|v)[^>]*>([^<]*)</(?:t|v)>", content):
            expect(len(html.unescape(text)) <= 32767, True, f"A text of {len(text)} characters in {name}")
    expect(written > 300, True, f"{written} formulas in shop.xlsx")
with Office(None) as office:
    book = Book(office.open(folder / "shop.xlsx"))
    check(library, book, BOOK, ORDERS, "shop.xlsx without the add-in", values)
    row = 5 + len(ORDERS["lines"])
    for column, text in (("A", "38"), ("B", "ember grub")):
        book.at("Orders", f"{column}{row}").String = text
    book.at("Orders", f"D{row}").Value = 17.0
    expect(
        book.document_of("orders.json"),
        changed(lines=[*ORDERS["lines"], {"order": "38", "product": "ember grub", "pieces": 17}]),
        "shop.xlsx: orders.json with an order more",
    )
    expect(
        book.state.startswith("Not planned: these values no longer hold"),
        True,
        f"The state of shop.xlsx after a change: {book.state}",
    )
    expect(book.at("Stock", "A2").String, book.state, "The state on the sheet Stock of shop.xlsx")

    # The sheet saved as a text is the document.
    saved = folder / "orders.json"
    number = book.sheet("orders.json").RangeAddress.Sheet + 1
    options = f"9,0,76,1,,0,false,true,false,false,false,{number}"
    book.document.storeToURL(
        saved.resolve().as_uri(), properties(FilterName="Text - txt - csv (StarCalc)", FilterOptions=options)
    )
    saved = next(folder.glob("orders*.json"))
    answer = library.answer(
        {"calculate": "plan", "book": BOOK, "orders": json.loads(saved.read_text(encoding="utf-8"))}
    )
    expect(len(answer["result"]["lines"]), len(ORDERS["lines"]) + 1, "Lines of the order list that was saved as a text")
    book.document.close(True)

    book = Book(office.open(folder / "shop.ods"))
    expect(
        book.state,
        "Not planned: the add-in pourwright is not installed here.",
        "The state of shop.ods without the add-in",
    )
    for (name, place), (address, *_) in values.items():
        for line in (
            book.sheet(name)
            .getCellRangeByPosition(address.StartColumn, address.StartRow, address.EndColumn, address.EndRow)
            .getDataArray()
        ):
            expect(any(line), False, f"shop.ods without the add-in: {place} is empty")
    book.document.close(True)
print("The workbook passes.")
