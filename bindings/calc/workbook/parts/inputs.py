"""The sheets that a person fills in, and the two documents that formulas write from them."""

import json
from datetime import date

from .fields import (
    BOOK,
    ORDERS,
    Schema,
    braced,
    if_any,
    joined,
    listed,
    member,
    members,
    pair,
    quoted,
    raw,
    value_at,
    words,
)
from .page import FIRST, HEAD, HELP, Page, cell, span

BOOKS, DAYS = Schema("book"), Schema("orders")
EPOCH = date(1899, 12, 30)
CAPACITY = {"Orders": 60, "Products": 60, "Formulas": 60, "Molds": 60, "Materials": 60}
DOSES = 6
NOT_LISTED = "This name is not on its sheet yet."


def last(name):
    return FIRST + CAPACITY[name] - 1


def entry(name, parts):
    """An entry of an object: its name and its members."""
    return f'{quoted(name)}&":"&{braced(parts)}'


def named_amount(name, amount):
    """A member of an object whose name is in a cell too."""
    return f'{quoted(name)}&":"&{quoted(amount)}'


def cells_of(row):
    """The addresses of the cells of a row."""
    return [cell(column, row) for column in range(40)]


class Table:
    """A sheet with one entry a row, its JSON in a column of small print, and the number of the entry next to it."""

    def __init__(self, document, name, title, help_text, headings, widths, notes=(), paper="pour wide", results=0):
        self.page = Page(document, name, title, help_text, paper)
        # Columns to fill in, then those that are calculated.
        self.name, self.columns = name, len(headings) - results
        self.json, self.number = len(headings), len(headings) + 1
        self.written = [self.json]
        self.page.headings(0, [*headings, "As JSON", "No."], notes=notes)
        self.page.widths(*widths, 30, 10)
        self.page.style("pour input", 0, FIRST, self.columns - 1, last(name))
        self.page.style("pour json", self.json, FIRST, self.number, last(name))
        self.page.freeze()
        self.page.sheet.Rows.getByIndex(HEAD).Height = 1350 if paper == "pour two" else 1000

    def fill(self, entries):
        self.page.block(0, FIRST, entries)

    def column(self, place, row=None):
        """The range of a column's entries, as other sheets name it."""
        return self.page.at(span(place, FIRST, place, last(self.name)))

    def write(self, of_row):
        """The formulas of the JSON: `of_row` gives that of a row that is not empty."""
        lines = []
        for row in range(FIRST, last(self.name) + 1):
            json = cell(self.json, row)
            filled = f"COUNTA({cell(0, row)}:{cell(self.columns - 1, row)})=0"
            lines.append(
                (
                    f'=IF({filled};"";{of_row(row)})',
                    f'=IF({json}="";"";COUNTIF({cell(self.json, FIRST, "r")}:{json};"?*"))',
                )
            )
        self.page.formulas(self.json, FIRST, lines)

    def below(self):
        """The formula of the number of cells that are filled in below the table."""
        return f"COUNTA({self.page.at(span(0, last(self.name) + 1, self.columns - 1, last(self.name) + 800))})"

    def unread(self):
        """The formula of the number of rows that are filled in and have no JSON, such as one that was put in."""
        written = "&".join(self.column(place) for place in self.written)
        return f'SUMPRODUCT((({self.column(0)}&{self.column(1)})<>"")*(({written})=""))'

    def object(self):
        """The formula of all entries as the members of an object."""
        return f'TEXTJOIN(",";TRUE();{self.column(self.json)})'


def paths_table(document, name, entry, title, help_text, key, paths, widths, extra=(), paper="pour wide"):
    """A table whose columns are the fields at these paths, `extra` ones of our own before them, and `More` at the end."""
    headings = [key, *[text for text, _ in extra], *[words(path) for path in paths], "More fields, as JSON"]
    notes = ["", *[note for _, note in extra], *[BOOKS.meaning(entry, path) for path in paths], MORE]
    return Table(document, name, title, help_text, headings, widths, notes, paper)


MORE = 'Any other field of the format, as in its list of fields: "name": value, "name": value'


def more_of(one, known):
    """The fields that have no column of their own, as the last column has them."""
    others = {name: value for name, value in one.items() if name not in known}
    return json.dumps(others, ensure_ascii=False)[1:-1]


MATERIAL = [
    ("kind",),
    ("price",),
    ("density",),
    ("fused",),
    ("as_scooped",),
    ("drop",),
    ("like",),
    ("tolerance",),
    ("shot_window", 0),
    ("shot_window", 1),
    ("expansion",),
    ("specific_heat",),
    ("cut",),
    ("thickness",),
    ("budget", "time"),
    ("budget", "at"),
    ("budget", "with"),
    ("buys", "time"),
    ("buys", "per"),
    ("buys", "most"),
    ("activation_energy",),
    ("notes",),
    ("density", "source"),
    ("fused", "source"),
    ("as_scooped", "source"),
    ("activation_energy", "source"),
]


def materials(document):
    extra = [("On hand", DAYS.meaning(None, ("stock",)))]
    table = paths_table(
        document,
        "Materials",
        "MaterialEntry",
        "Materials",
        "One material a row. Amounts as you say them, with their unit: 58.00 USD per 1 gal, 0.044 g ± 0.003.",
        "Material",
        MATERIAL,
        [26, 22, 22, 38, *[33] * 2, 30, 28, 30, 22, 20, 20, 22, 24, 22, 22, *[20] * 6, 26, 44, *[70] * 4, 40],
        extra,
        "pour two",
    )
    kinds = {path: BOOKS.kind("MaterialEntry", path) for path in MATERIAL}
    more = 2 + len(MATERIAL)

    def of_row(row):
        cells = {path: cell(2 + place, row) for place, path in enumerate(MATERIAL)}
        rest = cell(more, row)
        return entry(cell(0, row), [*members(cells, kinds), rest])

    table.write(of_row)
    table.fill(
        [
            [
                name,
                ORDERS["stock"].get(name, ""),
                *[value_at(one, path) for path in MATERIAL],
                more_of(one, {path[0] for path in MATERIAL}),
            ]
            for name, one in BOOK["materials"].items()
        ]
    )
    # The stock of the orders, next to the JSON of the material.
    table.stock = table.number + 1
    page = table.page
    page.headings(table.stock, ["Stock"])
    page.style("pour json", table.stock, FIRST, table.stock, last("Materials"))
    rows = [cells_of(row) for row in range(FIRST, last("Materials") + 1)]
    page.formulas(table.stock, FIRST, [("=" + if_any([at[1]], named_amount(at[0], at[1])),) for at in rows])
    words_of = BOOKS.choices("MaterialEntry", ("kind",))
    table.page.choose(
        '"' + '";"'.join(words_of) + '"',
        2,
        FIRST,
        2,
        last("Materials"),
        "Kind",
        "One of: " + ", ".join(words_of) + ".",
        strict=True,
    )
    table.page.print_range(more, FIRST + len(BOOK["materials"]) + 3)
    return table


def formulas(document, materials_sheet):
    doses = [text for number in range(1, DOSES + 1) for text in (f"Dose {number}", "amount")]
    note = BOOKS.meaning("FormulaEntry", ("doses",))
    table = Table(
        document,
        "Formulas",
        "Formulas",
        "One formula a row: what goes into the stated amount of base. A product combines a color and a body.",
        ["Formula", "Per", "Base", "amount", "Second base", "amount", *doses, "Notes", "More fields, as JSON"],
        [22, 16, 22, 16, 22, 16, *[24, 22] * DOSES, 36, 30],
        [
            "",
            BOOKS.meaning("FormulaEntry", ("per",)),
            BOOKS.meaning("FormulaEntry", ("base",)),
            "",
            "",
            "",
            *[note, ""] * DOSES,
            BOOKS.meaning("FormulaEntry", ("notes",)),
            MORE,
        ],
    )

    def of_row(row):
        at = cells_of(row)

        def named(column):
            return if_any(at[column : column + 2], named_amount(at[column], at[column + 1]))

        bases = [at[column] for column in range(2, 6)]
        blend = f'IF({"&".join(bases[1:])}="";{quoted(bases[0])};{braced([named(2), named(4)])})'
        notes = 6 + 2 * DOSES
        doses = pair("doses", braced([named(6 + 2 * number) for number in range(DOSES)]))
        return entry(
            at[0],
            [
                member("per", at[1]),
                if_any(bases, pair("base", blend)),
                doses,
                member("notes", at[notes]),
                at[notes + 1],
            ],
        )

    table.write(of_row)
    rows = []
    for name, one in BOOK["formulas"].items():
        base = one.get("base", "")
        bases = [base, ""] if isinstance(base, str) else [text for item in base.items() for text in item]
        rest = [text for item in one["doses"].items() for text in item]
        if len(bases) > 4 or len(rest) > 2 * DOSES:
            raise SystemExit(f"The formula {name} has more bases or doses than the sheet has columns.")
        rows.append(
            [
                name,
                one.get("per", ""),
                *bases,
                *[""] * (4 - len(bases)),
                *rest,
                *[""] * (2 * DOSES - len(rest)),
                one.get("notes", ""),
                more_of(one, {"per", "base", "doses", "notes"}),
            ]
        )
    table.fill(rows)
    for column in (2, 4, *range(6, 6 + 2 * DOSES, 2)):
        table.page.choose(materials_sheet.column(0), column, FIRST, column, last("Formulas"), "Material", NOT_LISTED)
    table.page.print_range(6 + 2 * DOSES, FIRST + len(rows) + 4)
    return table


MOLD = [
    ("sprue",),
    ("feed",),
    ("rejects",),
    ("top",),
    ("voids",),
    ("count",),
    ("hook", "mass"),
    ("hook", "volume"),
    ("per_shot",),
    ("sets",),
    ("notes",),
]


def molds(document):
    own = [
        (
            "Shape",
            "The name of the shape, in a mold with unlike cavities: then a row for each shape, one below the other.",
        ),
        (words(("cavities",)), BOOKS.meaning("MoldEntry", ("cavities",))),
        (words(("cavity",)), BOOKS.meaning("MoldEntry", ("cavity",))),
        ("or water in it", BOOKS.meaning("WaterEntry", ("water",))),
        ("at", BOOKS.meaning("WaterEntry", ("at",))),
        ("Body: diameter", BOOKS.meaning("MoldEntry", ("body",))),
        ("Body: length", BOOKS.meaning("BodyEntry", ("stick",)) + " Empty for a piece about as long as thick."),
    ]
    table = paths_table(
        document,
        "Molds",
        "MoldEntry",
        "Molds",
        "One mold a row: what one shot fills. A mold with unlike cavities has a row for each shape.",
        "Mold",
        MOLD,
        [24, 18, 18, 26, 26, 16, 20, 20, 18, 16, 18, 16, 16, 16, 20, 22, 20, 18, 48, 30],
        own,
    )
    page = table.page
    # Two columns further: the shape of a row, and it with those of the rows below that belong to the same mold.
    shape, chain = table.number + 1, table.number + 2
    table.written.append(shape)
    page.headings(shape, ["Shape", "Shapes"])
    page.style("pour json", shape, FIRST, chain, last("Molds"))
    kinds = {path: BOOKS.kind("MoldEntry", path) for path in MOLD}

    def cavity(at):
        water = braced([member("water", at[4]), member("at", at[5])])
        return if_any([at[3], at[4], at[5]], pair("cavity", f'IF({at[4]}&{at[5]}="";{quoted(at[3])};{water})'))

    def body(at):
        ball = braced([pair("ball", braced([member("diameter", at[6])]))])
        stick = braced([pair("stick", braced([member("diameter", at[6]), member("length", at[7])]))])
        return if_any([at[6], at[7]], pair("body", f'IF({at[7]}="";{ball};{stick})'))

    lines = []
    for row in range(FIRST, last("Molds") + 1):
        at = cells_of(row)
        one = entry(at[1], [member("count", at[2], "number"), cavity(at), body(at)])
        below = f'IF(AND({cell(0, row + 1)}={at[0]};{cell(shape, row + 1)}<>"");","&{cell(chain, row + 1)};"")'
        lines.append((f'=IF({at[1]}="";"";{one})', f'=IF({at[shape]}="";"";{at[shape]}&{below})'))
    page.formulas(shape, FIRST, lines)

    def of_row(row):
        at = cells_of(row)
        cells = {path: cell(1 + len(own) + place, row) for place, path in enumerate(MOLD)}
        plain = joined([member("cavities", at[2], "number"), cavity(at), body(at)])
        unlike = pair("cavities", f'"{{"&{at[chain]}&"}}"')
        cavities = f'IF({at[1]}="";{plain};{unlike})'
        mold = entry(at[0], [cavities, *members(cells, kinds), at[1 + len(own) + len(MOLD)]])
        # The rows of further shapes belong to the first row of the mold.
        return f'IF(AND({at[1]}<>"";{at[0]}={cell(0, row - 1)};{cell(1, row - 1)}<>"");"";{mold})'

    table.write(of_row)
    rows = []
    for name, one in BOOK["molds"].items():
        rest = [value_at(one, path) for path in MOLD]
        unlike = one["cavities"] if isinstance(one["cavities"], dict) else {"": {**one, "count": one["cavities"]}}
        for number, (shape_name, part) in enumerate(unlike.items()):
            hole, form = part["cavity"], part.get("body", {})
            form = form.get("stick") or form.get("ball") or {}
            water = hole if isinstance(hole, dict) else {}
            rows.append(
                [
                    name,
                    shape_name,
                    part["count"],
                    "" if water else hole,
                    water.get("water", ""),
                    water.get("at", ""),
                    form.get("diameter", ""),
                    form.get("length", ""),
                    *(rest if number == 0 else [""] * len(rest)),
                    "",
                ]
            )
    page.style("pour input count", 2, FIRST, 2, last("Molds"))
    page.style("pour heading of numbers", 2, HEAD)
    page.style(
        "pour input count",
        1 + len(own) + MOLD.index(("count",)),
        FIRST,
        1 + len(own) + MOLD.index(("count",)),
        last("Molds"),
    )
    table.fill(rows)
    page.counts(2, FIRST, 2, last("Molds"), "Cavities", "A whole number from 1 on.")
    page.print_range(1 + len(own) + len(MOLD) - 1, FIRST + len(rows) + 4)
    return table


def products(document, molds_sheet, formulas_sheet):
    layer = [("Color", ""), ("body", ""), ("share", BOOKS.meaning("LayerEntry", ("share",)))]
    layers = [(f"{text} {number}" if text == "Color" else text, note) for number in (1, 2) for text, note in layer]
    table = Table(
        document,
        "Products",
        "Products",
        "One product a row: its mold, and the formulas of its color and its body. A two-color piece has two colors with their shares.",
        [
            "Product",
            words(("mold",)),
            *[text for text, _ in layers],
            words(("overlap",)),
            words(("notes",)),
            "More fields, as JSON",
        ],
        [46, 26, *[22, 22, 16] * 2, 20, 46, 30],
        [
            "",
            BOOKS.meaning("ProductEntry", ("mold",)),
            *[note for _, note in layers],
            BOOKS.meaning("ProductEntry", ("overlap",)),
            BOOKS.meaning("ProductEntry", ("notes",)),
            MORE,
        ],
    )

    def of_row(row):
        at = cells_of(row)

        def names(column):
            return pair("formulas", listed([if_any([one], quoted(one)) for one in at[column : column + 2]]))

        def layer(column):
            return if_any(at[column : column + 3], braced([names(column), member("share", at[column + 2])]))

        layered = pair("layers", listed([layer(2), layer(5)]))
        plastic = f'IF({at[4]}&{at[5]}&{at[6]}&{at[7]}="";{if_any([at[2], at[3]], names(2))};{layered})'
        return entry(at[0], [member("mold", at[1]), plastic, member("overlap", at[8]), member("notes", at[9]), at[10]])

    table.write(of_row)
    rows = []
    for name, one in BOOK["products"].items():
        parts = one.get("layers") or [{"formulas": one["formulas"]}]
        flat = [
            text
            for part in parts
            for text in (*part["formulas"], *[""] * (2 - len(part["formulas"])), part.get("share", ""))
        ]
        if len(flat) > 6 or any(len(part["formulas"]) > 2 for part in parts):
            raise SystemExit(f"The product {name} has more layers or formulas than the sheet has columns.")
        rows.append(
            [name, one["mold"], *flat, *[""] * (6 - len(flat)), one.get("overlap", ""), one.get("notes", ""), ""]
        )
    table.fill(rows)
    table.page.choose(molds_sheet.column(0), 1, FIRST, 1, last("Products"), "Mold", NOT_LISTED)
    for column in (2, 3, 5, 6):
        table.page.choose(formulas_sheet.column(0), column, FIRST, column, last("Products"), "Formula", NOT_LISTED)
    table.page.print_range(9, FIRST + len(rows) + 4)
    return table


LINE = [("order",), ("product",), ("shape",), ("pieces",), ("packs",), ("pack_of",), ("promised",)]


def dated(at):
    """A date as text: of a cell that holds one, or as typed."""
    return f'IF(ISNUMBER({at});YEAR({at})&"-"&RIGHT("0"&MONTH({at});2)&"-"&RIGHT("0"&DAY({at});2);{at})'


def day_number(text):
    try:
        return float((date.fromisoformat(text) - EPOCH).days)
    except ValueError:
        return text


def orders(document, products_sheet):
    page_help = (
        "Add an order in the next empty row: everything follows. Either pieces, or packs and the number in a pack."
    )
    table = Table(
        document,
        "Orders",
        "Orders",
        page_help,
        [*[words(path) for path in LINE], "To put right"],
        [18, 56, 20, 18, 18, 18, 36, 110],
        [*[DAYS.meaning("OrderLine", path) for path in LINE], "What the library refuses in this line."],
        results=1,
    )
    page, end = table.page, last("Orders")
    kinds = {path: DAYS.kind("OrderLine", path) for path in LINE}
    page.put(0, 2, "Day", "pour help")
    page.style("pour input date", 1, 2)
    page.put(1, 2, day_number(ORDERS["day"]))
    page.put(2, 2, "About", "pour help")
    page.style("pour input", 3, 2, 6, 2)
    page.put(3, 2, ORDERS.get("about", ""))

    def of_row(row):
        parts = []
        for place, path in enumerate(LINE):
            at = cell(place, row)
            value = raw(at, kinds[path]) if path != ("promised",) else f'""""&{dated(at)}&""""'
            parts.append(if_any([at], pair(path[0], value)))
        return braced(parts)

    table.write(of_row)
    page.style("pour input count", 3, FIRST, 5, end)
    page.style("pour heading of numbers", 3, HEAD, 5, HEAD)
    page.style("pour input date", 6, FIRST, 6, end)
    rows = []
    for line in ORDERS["lines"]:
        if set(line) - {path[0] for path in LINE}:
            raise SystemExit(
                f"An order line has fields for which the sheet has no column: {sorted(set(line) - {path[0] for path in LINE})}."
            )
        rows.append(
            [
                day_number(value) if path == ("promised",) and value else value
                for path in LINE
                for value in [value_at(line, path)]
            ]
        )
    table.fill(rows)
    page.choose(products_sheet.column(0), 1, FIRST, 1, end, "Product", NOT_LISTED)
    page.counts(3, FIRST, 5, end, "Count", "A whole number from 1 on.")
    page.print_range(7, FIRST + len(rows) + 10)
    return table


def show_faults(orders, paths, messages, helps):
    """Next to each order line, what is wrong with it and what would fix it, from the columns of the list of faults."""
    page, column = orders.page, len(LINE)
    page.style("pour fault", column, FIRST, column, last("Orders"))
    lines = []
    for row in range(FIRST, last("Orders") + 1):
        number = cell(orders.number, row)
        line = f'"/orders/lines/"&{number}-1'
        found = f'IFERROR(MATCH({line}&"/*";{paths};0);MATCH({line};{paths};0))'
        lines.append((f'=IF({number}="";"";IFERROR(INDEX({messages};{found})&" "&INDEX({helps};{found});""))',))
    page.formulas(column, FIRST, lines)


# Shop and tools: the rest of the book. Fields that hold one value are rows of one sheet, lists are tables on another.

TOOLS = {("bench", "spoons"): 8, ("bench", "cups"): 6, ("bench", "oven", "timings"): 8, ("costing", "packing"): 6}


def tools(document):
    page = Page(document, "Tools", "Tools", "Spoons, cups, timings of the oven and what goes into a pack, one a row.")
    widths, lists, between, row, json = [24] * 9, {}, [], HEAD, 9
    page.widths(*widths, 30)
    for path, count in TOOLS.items():
        entries = BOOK
        for key in path:
            entries = entries.get(key, {} if key != path[-1] else [])
        node = BOOKS.resolved(BOOKS.resolved(BOOKS.at(None, path))["items"])
        fields = [key for key in node.get("properties", {}) if key != "ext"]
        required = node.get("required", [])
        given = [key for key in fields if any(key in one for one in entries)]
        fields = (
            [key for key in fields if key in required]
            + [key for key in fields if key in given and key not in required]
            + [key for key in fields if key not in given and key not in required]
        )
        page.put(0, row, words((path[-1],)), "pour section")
        page.style("pour section", 0, row, json - 1, row)
        page.put(1, row, BOOKS.meaning(None, path))
        heads = [words((key,)) for key in fields] or [words((path[-1],))]
        notes = [node["properties"][key]["description"].replace("\n", " ").replace("`", "") for key in fields]
        page.headings(0, heads, row + 1, notes)
        first, end = row + 2, row + 1 + count
        page.style("pour input", 0, first, len(heads) - 1, end)
        page.style("pour json", json, first, json, end)
        if len(entries) > count:
            raise SystemExit(f"The sheet Tools has room for {count} {path[-1]}.")
        if fields:
            kinds = {
                (key,): {"integer": "number", "number": "number", "boolean": "truth"}.get(
                    BOOKS.resolved(node["properties"][key]).get("type"), "text"
                )
                for key in fields
            }
            page.block(0, first, [[value_at(one, (key,)) for key in fields] for one in entries])
        else:
            page.block(0, first, [[one] for one in entries])
        lines = []
        for at_row in range(first, end + 1):
            cells = {(key,): cell(place, at_row) for place, key in enumerate(fields)}
            one = braced(members(cells, kinds)) if fields else quoted(cell(0, at_row))
            lines.append((f'=IF(COUNTA({cell(0, at_row)}:{cell(len(heads) - 1, at_row)})=0;"";{one})',))
        page.formulas(json, first, lines)
        lists[path] = page.at(span(json, first, json, end))
        between.append(page.at(span(0, end + 1, json - 1, end + 1)))
        row = end + 2
    page.freeze(0, HELP + 1)
    page.print_range(json - 1, row - 2)
    page.sheet.setPrintTitleRows(False)
    return page, lists, between


def shop(document, lists, materials_sheet):
    page = Page(
        document,
        "Shop",
        "Shop",
        "The rest of the shop's book: fill in what you know. An empty field takes its default.",
        "pour tall",
    )
    page.headings(0, ["Field", "Value", "Meaning"])
    page.widths(54, 44, 118, 30)
    page.put(3, HEAD, "As JSON", "pour heading")
    row = FIRST
    texts = []

    def leaf(path, label):
        nonlocal row
        page.put(0, row, label, "pour result")
        page.put(2, row, BOOKS.meaning(None, path), "pour result")
        page.range(2, row).IsTextWrapped = True
        value = value_at(BOOK, path)
        page.style("pour input", 1, row)
        page.range(1, row).IsTextWrapped = True
        page.put(1, row, value)
        if path == ("default_base",):
            page.choose(materials_sheet.column(0), 1, row, 1, row, "Material", NOT_LISTED)
        elif (choices := BOOKS.choices(None, path)) or BOOKS.kind(None, path) == "truth":
            choices = choices or ["true", "false"]
            page.choose(
                '"' + '";"'.join(choices) + '"',
                1,
                row,
                1,
                row,
                label,
                "One of: " + ", ".join(choices) + ".",
                strict=True,
            )
        at = cell(1, row)
        page.put(3, row, "=" + member(path[-1], at, BOOKS.kind(None, path)), "pour json")
        row += 1
        return cell(3, row - 1)

    def inside(path, under):
        """The members of an object: rows for its values, tables for its lists, and the same for the objects in it."""
        nonlocal row
        parts = []
        for key in BOOKS.resolved(BOOKS.at(None, path))["properties"]:
            if key == "ext":
                continue
            here, kind = (*path, key), BOOKS.kind(None, (*path, key))
            if here in lists:
                at = lists[here]
                page.put(0, row, words((*under, key)), "pour result")
                page.put(1, row, "see Tools", "pour result")
                page.put(2, row, BOOKS.meaning(None, here), "pour result")
                items = pair(key, listed([at]))
                page.put(3, row, f'=IF(COUNTIF({at};"?*")=0;"";{items})', "pour json")
                parts.append(cell(3, row))
                row += 1
            elif kind == "object":
                inner = inside(here, (*under, key))
                page.put(0, row, words((*under, key)) + ": together", "pour json")
                page.put(3, row, object_of(key, inner), "pour json")
                page.sheet.Rows.getByIndex(row).IsVisible = False
                parts.append(cell(3, row))
                row += 1
            elif kind != "list":
                parts.append(leaf(here, words((*under, key)) if under else words((key,))))
        return parts

    def object_of(key, parts):
        return f'=IF({joined(parts)}="";"";{pair(key, braced(parts))})'

    def section(text, path=None):
        nonlocal row
        page.put(0, row, text, "pour section")
        page.style("pour section", 0, row, 2, row)
        if path:
            page.put(2, row, BOOKS.meaning(None, path))
        row += 1

    section("The shop")
    for key in ("shop", "about", "measures", "altitude", "station_pressure", "default_base", "sure"):
        texts.append(leaf((key,), words((key,))))
    for key in ("bench", "limits", "costing"):
        section(words((key,)), (key,))
        parts = inside((key,), ())
        page.put(3, row, object_of(key, parts), "pour json")
        texts.append(cell(3, row))
        page.put(0, row, words((key,)) + ": together", "pour json")
        page.sheet.Rows.getByIndex(row).IsVisible = False
        row += 1
    page.freeze()
    page.print_range(2, row - 1)
    return page, [page.at(f"$D${text[1:]}") for text in texts]
