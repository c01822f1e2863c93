"""The whole workbook: sheets for a person, texts between them and the library, charts."""

import json

from office import properties

from . import charts, inputs, results
from .fields import BOOK, ORDERS, if_any, joined, listed, literal, member, pair
from .files import finish_xlsx, view_ods
from .inputs import CAPACITY, dated, last
from .page import FIRST, TITLE, Page, cell, make_styles, span

# The functions of the add-in.
ANSWER, ROWS, VERSION = "POUR_ANSWER", "POUR_ROWS", "POUR_VERSION"
SHEETS = [
    "Read me",
    "Orders",
    "Pour list",
    "Weigh list",
    "Costs",
    "Order costs",
    "Stock",
    "Used",
    "Salt",
    "Products",
    "Formulas",
    "Molds",
    "Materials",
    "Shop",
    "Tools",
    "orders.json",
    "book.json",
    "Requests",
]
FAULTS, FAULT_ROWS = 22, 40  # the first row of the list on the sheet Read me, and their number


class Workbook:
    state = "$'Read me'.$B$4"

    def __init__(self, office):
        self.office = office
        self.document = document = office.new()
        document.Wildcards, document.RegularExpressions = True, False
        self.areas = []
        make_styles(document)
        first = document.Sheets.getByIndex(0).Name
        self.readme = Page(document, "Read me", BOOK["shop"], BOOK["about"])
        document.Sheets.removeByName(first)

        # What is chosen from is made before what chooses; the order of the sheets is put right at the end.
        materials = inputs.materials(document)
        formulas = inputs.formulas(document, materials)
        molds = inputs.molds(document)
        products = inputs.products(document, molds, formulas)
        orders = inputs.orders(document, products)
        self.tables = {
            "orders": orders,
            "products": products,
            "formulas": formulas,
            "molds": molds,
            "materials": materials,
        }
        tools, lists, self.between_tools = inputs.tools(document)
        shop, self.rest_of_book = inputs.shop(document, lists, materials)
        self.write_texts()
        self.write_readme()

        plan = self.texts["plan"]
        builders = (
            results.weigh_list,
            results.costs,
            results.pour_list,
            results.order_costs,
            results.stock,
            results.used,
        )
        self.pages = {page.name: page for page in (build(document, self, plan) for build in builders)}
        self.salt = results.salt(document, self.tables)
        self.write_salt_text()
        results.salt_rows(self.salt, self, self.texts["salt"])
        charts.draw(self)
        for place, name in enumerate(SHEETS):
            document.Sheets.moveByName(name, place)
        made = [
            self.readme,
            *[table.page for table in self.tables.values()],
            tools,
            shop,
            *self.documents,
            self.ask,
            *self.pages.values(),
            self.salt,
        ]
        self.in_order = sorted(made, key=lambda page: SHEETS.index(page.name))
        document.calculateAll()
        self.state_text = self.cell(self.state).String
        for name, document in (("book", BOOK), ("orders", ORDERS)):
            if json.loads(self.cell(self.texts[name]).String) != document:
                raise SystemExit(f"The sheets have no place for something in the {name} of the demo.")
        if not self.state_text.startswith("Planned"):
            raise SystemExit(f"The workbook was not calculated: {self.state_text}")

    def cell(self, address):
        sheet, where = address.replace("$", "").replace("'", "").rsplit(".", 1)
        return self.document.Sheets.getByName(sheet).getCellRangeByName(where)

    # What the library is asked, and what it answers.

    def rows(self, page, request, path, columns, area):
        """Fills an area with rows of the answer, empty ones at the end. Why there are none is said by the state."""
        down, across = area[3] - area[1] + 1, area[2] - area[0] + 1
        found = f'{ROWS}({ANSWER}({request});"{path}";{columns})'
        # Rows that are not in the answer would repeat one that is alone.
        there = f"(ROW($A$1:$A${down})<=ROWS({found}))*COLUMN($A$1:{cell(across - 1, 0, 'cr')})>0"
        # Texts in a table of an add-in equal no other text, not even themselves, until they are put together again.
        page.matrix(*area, f'=IFERROR(IF({there};IF(ISTEXT({found});{found}&"";{found});"");"")')
        self.areas.append((page, area))

    def unit(self, request, path, column):
        """The unit of a result, as the library gives it."""
        scratch = self.cell("$Requests.$D$1")
        for key in ("unit", "currency"):
            scratch.Formula = f'=TEXTJOIN("|";TRUE();{ROWS}({ANSWER}({request});"{path}";"{column}/{key}"))'
            if scratch.getError():
                raise SystemExit(f"The add-in did not answer with the rows {path}.")
            if scratch.String:
                break
        text = scratch.String.split("|")[0]
        scratch.String = ""
        return text

    def reason(self, request):
        """Why a request is refused, or an empty text."""
        return f'=IF(ISERROR({VERSION}());{self.state};IFERROR(TEXTJOIN(" ";TRUE();{ROWS}({ANSWER}({request});"faults";"message"));""))'

    def judge(self, page, column, row):
        """Shows in color whether a cell of the state says that all is well."""
        at = cell(column, row, "cr")
        page.when(f'LEFT({at};7)="Planned"', "pour good", column, row)
        page.when(f'LEFT({at};7)<>"Planned"', "pour bad", column, row)

    def write_texts(self):
        document, orders, materials = self.document, self.tables["orders"], self.tables["materials"]
        count, number, written = CAPACITY["Orders"], orders.column(orders.number), orders.column(orders.json)
        day, about = orders.page.at("$B$3"), orders.page.at("$D$3")
        head = joined(
            [
                pair("format", literal(f'"{ORDERS["format"]}"')),
                if_any([day], pair("day", f'""""&{dated(day)}&""""')),
                member("about", about),
            ]
        )
        stock = materials.column(materials.stock)
        lines = [
            f'="{{"&{head}&","',
            f'=IF(COUNTIF({stock};"?*")=0;"";"""stock"":{{"&{joined([stock])}&"}},")',
            f'="""lines"":["&IF(MAX({number})=0;"]}}";"")',
        ]
        for place in range(1, count + 1):
            end = f'IF({place}=MAX({number});"]}}";",")'
            lines.append(f'=IF({place}>MAX({number});"";INDEX({written};MATCH({place};{number};0))&{end})')
        self.documents = []
        order_text = self.text_page("orders.json", lines)

        head = joined([pair("format", literal(f'"{BOOK["format"]}"')), *self.rest_of_book])
        sections = [f'="{{"&{head}&","']
        for name in ("materials", "formulas", "molds", "products"):
            end = "}" if name == "products" else ","
            sections.append(f'="""{name}"":{{"&{self.tables[name].object()}&"}}{end}"')
        book_text = self.text_page("book.json", sections)

        ask = Page(
            document,
            "Requests",
            "What the library is asked",
            "Written by formulas from the other sheets; there is nothing to fill in.",
            "pour tall",
        )
        ask.headings(0, ["Text", "As JSON"])
        ask.widths(40, 140)
        ask.block(0, FIRST, [["Orders"], ["Book"], ["Plan of the orders"], ["Plan of the sheet Salt"]])
        ask.style("pour json", 1, FIRST, 1, FIRST + 3)
        ask.range(1, FIRST, 1, FIRST + 3).IsTextWrapped = True
        self.texts = {
            name: ask.at(cell(1, FIRST + place, "cr")) for place, name in enumerate(("orders", "book", "plan", "salt"))
        }
        ask.formulas(
            1,
            FIRST,
            [
                (f"=TEXTJOIN(CHAR(10);TRUE();{order_text})",),
                (f"=TEXTJOIN(CHAR(10);TRUE();{book_text})",),
                (
                    f'="{{""calculate"":""plan"",""book"":"&{self.texts["book"]}&",""orders"":"&{self.texts["orders"]}&"}}"',
                ),
            ],
        )
        for row in range(FIRST, FIRST + 4):
            ask.sheet.Rows.getByIndex(row).Height = 1200
        self.ask = ask

    def text_page(self, name, formulas):
        """A document, a line of it a row: the column can be copied into a file."""
        page = Page(self.document, name, "", "", "pour tall")
        self.documents.append(page)
        page.sheet.Rows.getByIndex(TITLE).OptimalHeight = True
        page.formulas(0, 0, [(formula,) for formula in formulas])
        page.style("pour json", 0, 0, 0, len(formulas) - 1)
        page.widths(180)
        return page.at(span(0, 0, 0, len(formulas) - 1))

    def write_salt_text(self):
        """The same book with a formula for each loading, and an order of one piece of each."""
        formulas = joined([self.tables["formulas"].object(), *self.salt.step_formulas])
        lines = [f"$'book.json'.$A${row}" for row in (1, 2, 3, 4, 5)]
        lines[2] = f'"""formulas"":{{"&{formulas}&"}},"'
        orders = f'"{{""format"":""{ORDERS["format"]}"",""lines"":"&{listed(self.salt.step_lines)}&"}}"'
        self.ask.put(
            1, FIRST + 3, f'="{{""calculate"":""plan"",""book"":"&{"&".join(lines)}&",""orders"":"&{orders}&"}}"'
        )

    def write_readme(self):
        page, orders = self.readme, self.tables["orders"]
        page.widths(42, 150, 100)
        faults = f'COUNTIF($A${FAULTS}:$A${FAULTS + FAULT_ROWS - 1};"?*")'
        page.put(0, 3, "State", "pour section")
        # Why there is no plan, or a plan of only a part of what is filled in. The first reason that applies is shown.
        reasons = []
        for table in self.tables.values():
            row = last(table.name) + 1
            reasons.append(
                (f"{table.below()}>0", f'"rows below row {row} of the sheet {table.name} do not count. Move them up."')
            )
            lost = f'"a row of the sheet {table.name} has lost its formula in the column As JSON. Copy it from another row."'
            reasons.append((f"{table.unread()}>0", lost))
        filled = "+".join(f"COUNTA({row})" for row in self.between_tools)
        reasons.append((f"{filled}>0", '"the row below a table of the sheet Tools does not count. Empty it."'))
        reasons.append((f"ISERROR({VERSION}())", '"the add-in pourwright is not installed here."'))
        reasons.append((f"{faults}>0", f'{faults}&" to put right, listed on the sheet Read me. "&$B${FAULTS}'))
        state = f'"Planned: "&MAX({orders.column(orders.number)})&" order lines, by pourwright "&{VERSION}()&"."'
        for condition, reason in reversed(reasons):
            state = f'IF({condition};"Not planned: "&{reason};{state})'
        page.put(1, 3, f"={state}", "pour text")
        page.range(1, 3).IsTextWrapped = True
        self.judge(page, 1, 3)
        counts = ", ".join(
            f"{CAPACITY[name]} {what}"
            for name, what in (
                ("Orders", "order lines"),
                ("Products", "products"),
                ("Formulas", f"formulas of {inputs.DOSES} doses each"),
                ("Molds", "rows of molds"),
                ("Materials", "materials"),
            )
        )
        texts = [
            (
                "An order",
                "Add it in the next empty row of the sheet Orders. Pour list, weigh list, costs and stock follow.",
            ),
            ("A new product", "Products: its mold, color and body, by their names on the sheets Molds and Formulas."),
            (
                "The shop",
                "Materials, Formulas, Molds, Products, Shop and Tools are the shop's book. What is on hand is on the sheet Materials.",
            ),
            (
                "Colors",
                "Fill in the sand-colored cells. White cells are calculated. Point at a heading for what it means.",
            ),
            (
                "Amounts",
                "Write them as you say them, with the unit: 1/4 tsp, 40 drops, 12.5 g, 8 % of base, 330 °F, 0.044 g ± 0.003.",
            ),
            (
                "For the page",
                "The sheets orders.json and book.json hold the two documents. Copy the column into a file, or save the sheet as text.",
            ),
            (
                "Who calculates",
                "The library pourwright, by the functions of its add-in. The sheets put texts together, and divide used by on hand.",
            ),
            (
                "Without the add-in",
                "shop.ods is empty where it calculates, and the state above says why. shop.xlsx holds the values of the time it was made, "
                "for programs without the add-in: it calculates no plan. If you change orders or the book there, the state says that its values no "
                "longer hold, here and on each sheet. orders.json and book.json are written there too.",
            ),
            ("Limits", f"{counts}. Pots that are there already and leftovers on the shelf have no sheet."),
            (
                "Safety",
                "Hot plastisol burns, its fumes need ventilation, and a drop of water in it erupts. The supplier's safety data sheet comes first.",
            ),
        ]
        page.block(0, 5, [list(line) for line in texts])
        page.style("pour text", 0, 5, 1, 5 + len(texts) - 1)
        page.range(0, 5, 0, 5 + len(texts) - 1).CharWeight = 150.0
        page.range(0, 3, 1, 5 + len(texts) - 1).Rows.OptimalHeight = True
        row = FAULTS - 1
        page.sheet.Rows.getByIndex(3).Height = 1000
        page.put(0, row - 3, "To put right", "pour section")
        page.style("pour section", 0, row - 3, 2, row - 3)
        page.put(1, row - 3, "What the library refuses, and where: /orders/lines/0 is the first order line.")
        page.headings(0, ["Where", "What is wrong", "What would fix it"], row - 1)
        page.block(0, row - 2, [["path", "message", "help"]])
        page.style("pour path", 0, row - 2, 2, row - 2)
        page.sheet.Rows.getByIndex(row - 2).IsVisible = False
        end = row + FAULT_ROWS - 1
        page.style("pour text", 0, row, 2, end)
        self.rows(page, self.texts["plan"], "faults", page.at(span(0, row - 2, 2, row - 2)), (0, row, 2, end))
        inputs.show_faults(orders, *(page.at(span(column, row, column, end)) for column in range(3)))
        page.print_range(2, row + 4)
        page.sheet.setPrintTitleRows(False)

    def store(self, path):
        self.document.storeToURL(path.resolve().as_uri(), properties(FilterName="calc8"))
        view_ods(path, self.in_order)

    def store_values(self, path):
        """A program without the add-in cannot calculate: cells become values, and the state says whether they still hold."""
        numbers = {}
        for page, area in self.areas:
            cells = page.range(*area)
            values = cells.getDataArray()
            cells.clearContents(FORMULAS)
            cells.setDataArray(values)
            sheet = numbers.setdefault(page.name, {})
            for row, line in enumerate(values, area[1]):
                sheet.update(
                    {cell(column, row): value for column, value in enumerate(line, area[0]) if isinstance(value, float)}
                )
        # What was asked, next to the request as the sheets write it now.
        kept = []
        for name in ("plan", "salt"):
            at = self.texts[name]
            place = self.cell(at).CellAddress
            self.ask.put(place.Column + 1, place.Row, self.cell(at).String, "pour json")
            kept.append(f"EXACT({at};{self.ask.at(cell(place.Column + 1, place.Row, 'cr'))})")
        self.ask.headings(2, ["As it was when this file was made"])
        self.ask.widths(40, 140, 60)
        self.cell(self.state).Formula = (
            f'=IF(AND({";".join(kept)});"{self.state_text[:-1]} when this file was made; values only.";'
            '"Not planned: these values no longer hold, as orders, book or salt were changed. Use shop.ods with the add-in.")'
        )
        self.salt.put(2, 2, f'=IF(LEFT({self.state};7)="Planned";"";{self.state})')
        self.document.calculateAll()
        if not self.cell(self.state).String.startswith("Planned"):
            raise SystemExit(f"The values were not kept: {self.cell(self.state).String}")
        self.document.storeToURL(path.resolve().as_uri(), properties(FilterName="Calc MS Excel 2007 XML"))
        finish_xlsx(path, self.in_order, numbers)


FORMULAS = 16  # com.sun.star.sheet.CellFlags.FORMULA
