"""The sheets that are calculated. Each is one plan of the library, asked for by the texts that the other sheets write."""

from .fields import BOOK, Schema, literal, quoted, words
from .inputs import CAPACITY
from .page import FIRST, HEAD, HELP, Page, cell, span

PLANS = Schema("plan")


def place(path, column):
    """The keys of a column's field in the answer: `^` leads from an entry to the one that it is in."""
    keys = [*path.split("/"), "*"]
    while column.startswith("^"):
        column = column[1:]
        keys.pop()
        while keys[-1] != "*":
            keys.pop()
    return [*keys, *column.split("/")]


def meaning(path, column):
    """The description of a field of the plan, from its schema."""
    nodes, text = [PLANS.root], ""

    def choices(node):
        node = PLANS.resolved(node)
        yield node
        for choice in (*node.get("anyOf", ()), *node.get("oneOf", ())):
            yield from choices(choice)

    for key in place(path, column)[1:]:
        found = [choice for node in nodes for choice in choices(node)]
        if key == "*" or key.isdigit():
            nodes = [choice["items"] for choice in found if "items" in choice]
        else:
            nodes = [choice["properties"][key] for choice in found if key in choice.get("properties", {})]
            text = next((node["description"] for node in nodes if "description" in node), text)
        if not nodes:
            raise SystemExit(f"The plan has no field {column} in {path}.")
    return text.replace("\n", " ").replace("`", "")


TEXT, COUNT, GRAMS, TENTHS, THOUSANDTHS, MONEY, SHARE, SHARE_1 = (
    f"pour result{kind}" for kind in ("", " 0", " grams", " 1", " 3", " money", " percent", " percent1")
)
# Where the last key of a field alone says too little.
HEADINGS = {
    "add/when": "add",
    "best/measure": "measure",
    "others/0/measure": "or",
    "piece": "one piece",
    "speed": "sink rate",
    "doubt/uncertainty": "uncertainty",
}


def heading(make, request, path, column):
    name = column.lstrip("^").removesuffix("/text")
    unit = make.unit(request, path, column)
    return words((HEADINGS.get(name) or HEADINGS.get(name.rsplit("/", 1)[-1]) or name.rsplit("/", 1)[-1],)) + (
        f", {unit}" if unit and unit != "1" else ""
    )


class Rows:
    """Rows of an answer in an area of a sheet: a list of the answer, and the columns of its entries with style and width."""

    def __init__(self, page, make, request, path, columns, column, row, count):
        self.page, self.request, self.path, self.columns = page, request, path, [name for name, _, _ in columns]
        self.column, self.row, self.last_column, self.last_row = column, row, column + len(columns) - 1, row + count - 1
        head, fields = row - 1, row - 2
        page.headings(
            column,
            [heading(make, request, path, name) for name in self.columns],
            head,
            [meaning(path, name) for name in self.columns],
        )
        page.block(column, fields, [self.columns])
        page.style("pour path", column, fields, self.last_column, fields)
        page.sheet.Rows.getByIndex(fields).IsVisible = False
        for number, (_, style, width) in enumerate(columns, column):
            page.style(style, number, row, number, self.last_row)
            page.sheet.Columns.getByIndex(number).Width = width * 100
            if style != TEXT:
                page.style("pour heading of numbers", number, head)
        make.rows(
            page,
            request,
            path,
            page.at(span(column, fields, self.last_column, fields)),
            (column, row, self.last_column, self.last_row),
        )


class Results(Page):
    """A sheet of rows of the plan, one list of it next to the other."""

    def __init__(self, document, make, name, title, request, lists, count, paper="pour one"):
        super().__init__(document, name, title, "", paper)
        self.parts, column, self.last_row = [], 0, FIRST + count - 1
        for path, columns in lists:
            self.parts.append(Rows(self, make, request, path, columns, column, FIRST, count))
            column += len(columns)
        self.last_column = column - 1
        # A list that reaches the last row may have been cut off there.
        full = cell(0, self.last_row)
        self.put(
            0,
            HELP,
            f'=IF({full}="";{make.state};"Not whole: this list has more rows than fit here. Plan fewer orders at a time.")',
        )
        make.judge(self, 0, HELP)
        self.show_rows(self.last_column)
        self.sheet.Rows.getByIndex(HEAD).Height = 1000
        self.freeze()
        self.print_range(self.last_column, self.last_row)

    def show_rows(self, last_column):
        """Lines under the rows that hold something."""
        self.when(f'{cell(0, FIRST, "c")}<>""', "pour row", 0, FIRST, last_column, self.last_row)


def pour_list(document, make, request):
    page = Results(
        document,
        make,
        "Pour list",
        "Pour list",
        request,
        [
            (
                "result/pots/*/stages/*/draws/*/pieces",
                [
                    ("^^^pot", TEXT, 12),
                    ("^^^cup_name", TEXT, 22),
                    ("^^formulas", TEXT, 36),
                    ("^mold", TEXT, 24),
                    ("shape", TEXT, 16),
                    ("ordered", COUNT, 17),
                    ("made", COUNT, 14),
                    ("^shots", COUNT, 14),
                    ("^loads", COUNT, 14),
                    ("^per_shot", GRAMS, 21),
                    ("weighs", GRAMS, 20),
                    ("^^holds", GRAMS, 18),
                    ("^line", COUNT, 12),
                ],
            )
        ],
        61,
    )
    # Two columns of texts from other sheets: the product of the order line, and what the weigh list says of plastisol in the pot.
    weigh = "$'Weigh list'"
    pots, kinds, materials, measures, others = (
        f"{weigh}.{span(column, FIRST, column, FIRST + WEIGHED - 1)}" for column in (0, 3, 2, 5, 6)
    )
    products = f"$Costs.{span(1, FIRST, 1, FIRST + CAPACITY['Orders'])}"
    page.headings(13, ["Product", "Plastisol of the pot"])
    page.sheet.Columns.getByIndex(13).Width, page.sheet.Columns.getByIndex(14).Width = 4600, 11500
    page.style(TEXT, 13, FIRST, 14, page.last_row)
    for row in range(FIRST, page.last_row + 1):
        pot, line = cell(0, row), cell(12, row)
        page.put(13, row, f'=IF(N({line})>0;INDEX({products};{line});"")')
        text = f'{measures}&IF({others}="";"";" or "&{others})&" "&{materials}'
        first = f'OR({pot}="";{pot}={cell(0, row - 1)})'
        page.range(14, row).setArrayFormula(
            f'=IF({first};"";TEXTJOIN(" + ";TRUE();IF(({pots}={pot})*({kinds}="plastisol");{text};"")))'
        )
    page.show_rows(14)
    page.print_range(14, page.last_row)
    return page


WEIGHED = 121


def weigh_list(document, make, request):
    return Results(
        document,
        make,
        "Weigh list",
        "Weigh list",
        request,
        [
            (
                "result/pots/*/stages/*/weigh",
                [
                    ("^^pot", TEXT, 12),
                    ("^formulas", TEXT, 36),
                    ("material", TEXT, 28),
                    ("kind", TEXT, 20),
                    ("add/when", TEXT, 14),
                    ("best/measure", TEXT, 44),
                    ("others/0/measure", TEXT, 40),
                    ("wanted", GRAMS, 20),
                    ("doubt/uncertainty", SHARE_1, 24),
                ],
            )
        ],
        WEIGHED,
        "pour tall",
    )


def costs(document, make, request):
    line = [
        ("order", TEXT, 16),
        ("what", TEXT, 48),
        ("shape", TEXT, 16),
        ("pieces", COUNT, 16),
        ("packs", COUNT, 16),
        ("pots", TEXT, 20),
        ("piece", GRAMS, 18),
        ("sinks/known/density", THOUSANDTHS, 20),
        ("sinks/known/speed", TENTHS, 20),
    ]
    cost = [(name, MONEY, 20) for name in ("materials", "packing", "work", "total", "per_piece", "per_pack", "price")]
    return Results(
        document,
        make,
        "Costs",
        "Costs and prices by order line",
        request,
        [("result/lines", line), ("result/cost/known/lines", cost)],
        CAPACITY["Orders"] + 1,
    )


def order_costs(document, make, request):
    columns = [("order", TEXT, 24), ("total", MONEY, 26), ("price", MONEY, 26)]
    return Results(
        document,
        make,
        "Order costs",
        "Cost and price by order",
        request,
        [("result/cost/known/orders", columns)],
        CAPACITY["Orders"] + 1,
    )


def stock(document, make, request):
    columns = [
        ("material", TEXT, 30),
        *[(name, GRAMS, 22) for name in ("had", "used", "left", "short")],
        ("packages", COUNT, 22),
        ("runs_out_in", TEXT, 24),
    ]
    page = Results(
        document,
        make,
        "Stock",
        "Stock, and what to buy",
        request,
        [("result/stock", columns)],
        CAPACITY["Materials"] + 1,
    )
    # The share of what is on hand that the day takes: what a chart of materials from grams to gallons can show.
    page.headings(7, ["Used of stock"], notes=["Used over on hand."])
    page.style("pour heading of numbers", 7, HEAD)
    page.sheet.Columns.getByIndex(7).Width = 2200
    page.style(SHARE, 7, FIRST, 7, page.last_row)
    page.formulas(
        7,
        FIRST,
        [(f'=IF(N({cell(1, row)})>0;{cell(2, row)}/{cell(1, row)};"")',) for row in range(FIRST, page.last_row + 1)],
    )
    page.when(f"N({cell(4, FIRST, 'c')})>0", "pour short", 0, FIRST, 7, page.last_row)
    page.show_rows(7)
    page.sheet.Columns.getByIndex(8).Width = 500
    return page


def used(document, make, request):
    columns = [
        ("material", TEXT, 30),
        ("mass", GRAMS, 26),
        ("cost", MONEY, 26),
        ("packages", COUNT, 26),
        ("to_buy", MONEY, 26),
    ]
    return Results(
        document,
        make,
        "Used",
        "Materials that the day uses, and their cost",
        request,
        [("result/cost/known/used", columns)],
        CAPACITY["Materials"] + 1,
    )


STEPS = ("0", "1/16 cup", "1/8 cup", "3/16 cup", "1/4 cup", "5/16 cup", "3/8 cup")
SALT_HEAD, SALT_FIRST = 7, 8


def salt(document, sheets):
    """A shot of each loading is planned as orders are, so the weights are those that the other sheets give."""
    page = Page(
        document,
        "Salt",
        "What salt does to a piece",
        "Choose a mold, a body without salt and a salt; write the loadings as you measure them.",
    )
    salts = [name for name, one in BOOK["materials"].items() if one["kind"] == "salt"]
    body = next(name for name, one in BOOK["formulas"].items() if "base" in one and not set(salts) & set(one["doses"]))
    inputs = [
        ("Mold", next(iter(BOOK["molds"])), sheets["molds"]),
        ("Body", body, sheets["formulas"]),
        ("Salt", salts[0], sheets["materials"]),
        ("Salt is per", "1 cup", None),
    ]
    for place, (label, value, table) in enumerate(inputs):
        page.put(0, 2 + place, label, "pour help")
        page.put(1, 2 + place, value, "pour input")
        if table:
            page.choose(table.column(0), 1, 2 + place, 1, 2 + place, label, "This name is not on its sheet yet.")
    mold, base, name, per = (page.at(cell(1, 2 + place, "cr")) for place in range(4))
    end = SALT_FIRST + len(STEPS) - 1
    page.block(0, SALT_FIRST, [[step] for step in STEPS])
    page.style("pour input", 0, SALT_FIRST, 0, end)
    page.widths(30, *[26] * 5, 104)
    lines, formulas = [], []
    for row in range(SALT_FIRST, end + 1):
        dose, step = page.at(cell(0, row, "cr")), f'"salt, step {row - SALT_FIRST}"'
        text = "&".join(
            [
                literal(step + ':{"per":'),
                quoted(per),
                literal(',"doses":{'),
                quoted(name),
                '":"',
                quoted(dose),
                literal("}}"),
            ]
        )
        formulas.append(f'IF({dose}="0";"";{text})')
        names = f'{quoted(base)}&IF({dose}="0";"";{literal("," + step)})'
        lines.append(
            "&".join(
                [
                    literal('{"order":"salt","mold":'),
                    quoted(mold),
                    literal(',"formulas":['),
                    names,
                    literal('],"pieces":1}'),
                ]
            )
        )
    page.step_formulas, page.step_lines, page.end = formulas, lines, end
    return page


def salt_rows(page, make, request):
    columns = [
        ("piece", GRAMS, 26),
        ("sinks/known/density", THOUSANDTHS, 26),
        *[(f"sinks/known/{name}", TENTHS, 29) for name in ("speed", "slowest", "fastest")],
    ]
    page.headings(0, ["Salt"], SALT_HEAD)
    page.parts = [Rows(page, make, request, "result/lines", columns, 1, SALT_FIRST, len(STEPS))]
    # Why there are no values, next to what is chosen.
    page.put(2, 2, make.reason(request))
    page.when("LEN($C$3)>0", "pour bad", 2, 2)
    page.when("TRUE()", "pour row", 1, SALT_FIRST, len(columns), page.end)
    page.freeze(0, HELP + 1)
