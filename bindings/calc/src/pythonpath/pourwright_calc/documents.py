"""The functions on documents: requests, formulas, costs, days."""

import functools
import json
import os
from datetime import date, timedelta
from typing import Any, Callable, Dict, List, Optional, Sequence, Tuple, Union

from . import library
from .call import NOT_KNOWN, error_of_calc
from .cells import EMPTY_ROWS, Cell, decimal, joined, plain
from .fault import Fault, Faults, Refused, refuse

Table = Tuple[Tuple[Any, ...], ...]

# The library takes no longer document.
_MOST = 16 * 1024 * 1024


class Document:
    """The Calc document that a function is in. `folder` is None where it was never saved; `first_day` is its day 0."""

    def __init__(self, folder: Optional[str], first_day: date) -> None:
        self.folder = folder
        self.first_day = first_day


def one(value: Any, path: str) -> Cell:
    """A value or a cell; 0 is an empty cell."""
    if isinstance(value, tuple):
        if len(value) > 1 or len(value[0]) > 1:
            raise refuse(path, "It is a range of several cells.", "Give one cell.", "wrong-type")
        value = value[0][0]
    cell = plain(value)
    return None if cell == 0.0 else cell


def several(value: Any) -> List[Union[float, str]]:
    """The cells of a range, row by row, without those that are empty."""
    rows = value if isinstance(value, tuple) else ((value,),)
    cells = [plain(cell) for row in rows for cell in row]
    return [cell for cell in cells if cell is not None and (cell != 0.0 or isinstance(value, tuple))]


def missing(path: str, wanted: str) -> Refused:
    return refuse(path, "It is missing.", wanted, "missing-field")


def name_cell(value: Any, path: str, wanted: str) -> str:
    cell = one(value, path)
    if cell is None:
        raise missing(path, wanted)
    return cell if isinstance(cell, str) else decimal(cell)


def amount(value: Any, path: str, wanted: str) -> Optional[str]:
    """An amount of a document: a text, a number of grams, or two cells."""
    if isinstance(value, tuple) and len(value) == 1 and len(value[0]) == 2:
        return joined(plain(value[0][0]), plain(value[0][1]), path)
    cell = one(value, path)
    return cell if cell is None or isinstance(cell, str) else decimal(cell) + " g"


def text_of(value: Any, path: str, document: Document) -> str:
    """The JSON text of a document: from cells, or from the file that a cell names."""
    cells = several(value)
    if not cells:
        raise missing(path, "Give a file whose name ends in .json, or JSON.")
    if not all(isinstance(cell, str) for cell in cells):
        raise refuse(
            path, "It is a number; it must be a file or JSON.", 'Name a file in quotes: "book.json".', "wrong-type"
        )
    text = "\n".join(str(cell) for cell in cells)
    return text if text[0] in "{[" else _read(text, path, document)


def _read(name: str, path: str, document: Document) -> str:
    def refused(message: str, help: str) -> Refused:
        return refuse(path, message, help, "not-json")

    if not name.lower().endswith(".json"):
        raise refused(
            "`{}` is not JSON, and not the name of a file that ends in .json.".format(name[:200]),
            "Give such a file, or JSON: { ... }.",
        )
    file = name
    if name.lower().startswith("file:"):
        import uno

        try:
            file = uno.fileUrlToSystemPath(name)
        except Exception:
            raise refused("`{}` is not a file URL.".format(name[:200]), "Write file:///home/me/book.json.") from None
    if file.startswith(("//", "\\\\")):
        raise refused("`{}` is on another computer.".format(name[:200]), "Copy it to this one.")
    if not os.path.isabs(file):
        if document.folder is None:
            raise refused(
                "`{}` is next to a document that was never saved.".format(name[:200]),
                "Save it, or give the whole path.",
            )
        file = os.path.join(document.folder, file)
    try:
        if not os.path.isfile(file):
            raise refused("There is no file `{}`.".format(file[:500]), "Give the whole path of the file.")
        with open(file, "rb") as opened:
            found = opened.read(_MOST + 1)
    except (OSError, ValueError) as error:
        raise refused("`{}` cannot be read: {}.".format(file[:500], error), "Check the file.") from None
    try:
        return found.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise refuse(path, "`{}` is not a text in UTF-8.".format(file[:500]), "Save it as UTF-8.", "not-utf8") from None


def below(path: str, refused: Refused) -> Refused:
    """The faults of a document, with their paths below its name."""
    return Refused([fault._replace(path=path + "/" + fault.path if fault.path else path) for fault in refused.faults])


def open_book(value: Any, document: Document) -> str:
    """The text of a book that can be opened."""
    text = text_of(value, "book", document)
    try:
        library.book(text)
    except Refused as refused:
        raise below("book", refused) from None
    return text


def both(*reads: Callable[[], Any]) -> List[Any]:
    """Reads all, and refuses the faults of all together."""
    faults, found = Faults(), []
    for read in reads:
        try:
            found.append(read())
        except Refused as refused:
            faults.found += refused.faults
    faults.check()
    return found


@functools.lru_cache(maxsize=16)
def parsed(text: str) -> Any:
    return json.loads(text)


def asked(request: Dict[str, Any], book: str) -> Any:
    """The result of a request on a book."""
    return parsed(library.answer(json.dumps(request), book))["result"]


# --- JSON


def json_cells(value: Any, path: str) -> str:
    cells = several(value)
    if not cells:
        raise missing(path, "Give JSON, such as POUR_ANSWER gives.")
    return "\n".join(cell if isinstance(cell, str) else decimal(cell) for cell in cells)


def json_of(value: Any) -> Any:
    """The value of a JSON text in a cell."""
    try:
        return parsed(json_cells(value, "json"))
    except (ValueError, RecursionError) as error:
        raise refuse("json", "It is not JSON: {}.".format(error), "Give what POUR_ANSWER gives.", "not-json") from None


def steps(path: str) -> List[str]:
    """The steps of a path. ~1 is a slash in a name, and ~0 a ~, as in JSON Pointer."""
    return [step.replace("~1", "/").replace("~0", "~") for step in path.strip("/").split("/") if step]


class Nowhere(Exception):
    """A step that leads nowhere."""


def walk(value: Any, path: Sequence[str]) -> Any:
    for step in path:
        if isinstance(value, dict) and step in value:
            value = value[step]
        elif isinstance(value, list) and step.isdecimal() and len(step) < 10 and int(step) < len(value):
            value = value[int(step)]
        else:
            raise Nowhere(step)
    return value


def cell_of(value: Any, absent: Any) -> Any:
    """A value of JSON as a cell: of a quantity its number, of money its amount, of a list of texts all of them."""
    if value is None:
        return absent
    if isinstance(value, dict) and "value" in value and "unit" in value:
        return cell_of(value["value"], absent)
    if isinstance(value, dict) and "amount" in value and "currency" in value:
        return money_of(value["amount"])
    if isinstance(value, list) and value and all(isinstance(one, str) for one in value):
        return " + ".join(value)
    if isinstance(value, (dict, list)):
        return json.dumps(value, ensure_ascii=False)
    if isinstance(value, str):
        return value
    try:
        return float(value)
    except OverflowError:
        return str(value)


def money_of(amount: Any) -> Any:
    """An amount of money, which documents have as decimals."""
    try:
        return float(amount)
    except (TypeError, ValueError):
        return cell_of(amount, "")


def answer_faults(value: Any) -> List[Fault]:
    """The faults of an answer, if it has some."""
    faults = value.get("faults") if isinstance(value, dict) else None
    if not isinstance(faults, list):
        return []
    return [
        Fault(
            *(
                str(fault.get(key, "")).lstrip("/") if key == "path" else str(fault.get(key, ""))
                for key in Fault._fields
            )
        )
        for fault in faults
        if isinstance(fault, dict)
    ]


def nowhere(json_value: Any, at: str, path: str, step: str) -> Refused:
    faults = answer_faults(json_value)
    if faults:
        return Refused(faults)
    return refuse(
        at,
        "`{}` leads nowhere: there is no `{}`.".format(path, step),
        "See the names in the JSON text.",
        "unknown-field",
    )


def field(document: Document, json_text: Any, path: Any) -> Any:
    value = json_of(json_text)
    name = name_cell(path, "path", 'Give a path: "result/value".')
    try:
        return cell_of(walk(value, steps(name)), error_of_calc(NOT_KNOWN))
    except Nowhere as at:
        raise nowhere(value, "path", name, str(at)) from None


class Entry:
    """An entry of a list, its place from 1 (in an object its name), and the entry that it is in."""

    def __init__(self, value: Any, place: Any, within: Optional["Entry"]) -> None:
        self.value = value
        self.place = place
        self.within = within

    def at(self, path: str) -> Any:
        """What a column has of the entry; None where there is nothing."""
        path = path.strip()
        if path.startswith("^"):
            return self.within.at(path[1:]) if self.within else None
        if path == "#":
            return self.place
        try:
            return walk(self.value, steps(path))
        except Nowhere:
            return None


def entries_of(value: Any, within: Optional[Entry]) -> List[Entry]:
    if isinstance(value, list):
        return [Entry(one, place, within) for place, one in enumerate(value, 1)]
    if isinstance(value, dict):
        return [Entry(one, name, within) for name, one in value.items()]
    raise Nowhere("*")


def entries(value: Any, path: Sequence[str]) -> List[Entry]:
    """The entries of the list at a path."""
    found: List[Tuple[Any, Optional[Entry]]] = [(value, None)]
    for step in path:
        if step == "*":
            found = [(entry.value, entry) for at, within in found for entry in entries_of(at, within)]
        else:
            found = [(walk(at, [step]), within) for at, within in found]
    return [entry for at, within in found for entry in entries_of(at, within)]


def column_names(value: Any) -> List[str]:
    """The columns that are asked for: cells, or one text with commas."""
    cells = several(value)
    names = [cell if isinstance(cell, str) else decimal(cell) for cell in cells]
    return [name.strip() for cell in names for name in cell.split(",") if name.strip()]


def rows(document: Document, json_text: Any, list_path: Any, columns: Any = None) -> Table:
    value = json_of(json_text)
    path = name_cell(list_path, "list", 'Give the path to a list: "result/stock".')
    try:
        found = entries(value, steps(path))
    except Nowhere as at:
        raise nowhere(value, "list", path, str(at)) from None
    names = column_names(columns)
    if names:
        return below_each_other([tuple(cell_of(entry.at(name), "") for name in names) for entry in found], len(names))
    names = []
    for entry in found:
        for name in entry.value if isinstance(entry.value, dict) else ["#"]:
            if name not in names:
                names.append(name)
    if not names or not all(isinstance(entry.value, dict) for entry in found):
        return (("#", "value"), *((entry.place, cell_of(entry.value, "")) for entry in found))
    below = tuple(tuple(cell_of(entry.value.get(name), "") for name in names) for entry in found)
    return (tuple(names), *below)


def below_each_other(found: List[Tuple[Any, ...]], width: int) -> Table:
    """A table of any number of rows. Calc would fill a whole range with a single one, so an empty row is below it."""
    empty = ("",) * width
    return (*found, empty) if len(found) < 2 else tuple(found)


# --- Tables of named columns


def named(columns: Dict[str, Callable[[Any], Any]], items: Sequence[Any], asked_for: Any) -> Table:
    """A table of the columns that are asked for, or of all under their names."""
    names = column_names(asked_for)
    unknown = [name for name in names if name not in columns]
    if unknown:
        known = "Known: {}.".format(", ".join(columns))
        raise Refused(
            [Fault("columns", "There is no column `{}`.".format(name), known, "unknown-field") for name in unknown]
        )
    shown = names or list(columns)
    below = [tuple(cell_of(columns[name](item), "") for name in shown) for item in items]
    return below_each_other(below, len(shown)) if names else (tuple(shown), *below)


def at(path: str) -> Callable[[Any], Any]:
    """What an entry of a document has at a path, null where there is nothing on the way."""
    way = steps(path)

    def found(value: Any) -> Any:
        for step in way:
            value = value.get(step) if isinstance(value, dict) else None
        return value

    return found


def within(path: str) -> Callable[[Entry], Any]:
    return lambda entry: entry.at(path)


def formulas_of(value: Any) -> List[str]:
    cells = [cell if isinstance(cell, str) else decimal(cell) for cell in several(value)]
    if not cells:
        raise missing("formulas", 'Name formulas of the book: "dusk + salted".')
    return [name.strip() for cell in cells for name in cell.split(" + ")]


def recipe(kind: str, document: Document, book: Any, formulas: Any, base: Any, finished: Any) -> Any:
    """The answer to a request on formulas for an amount."""
    text, names, base_amount, finished_amount = both(
        lambda: open_book(book, document),
        lambda: formulas_of(formulas),
        lambda: amount(base, "base_amount", ""),
        lambda: amount(finished, "finished_amount", ""),
    )
    request: Dict[str, Any] = {"calculate": kind, "formulas": names}
    if base_amount is not None:
        request["base_amount"] = base_amount
    if finished_amount is not None:
        request["finished_amount"] = finished_amount
    return asked(request, text)


_FORMULA: Dict[str, Callable[[Any], Any]] = {
    "material": at("material"),
    "mass_g": at("mass"),
    "ratio": at("ratio"),
    "of_finished": at("of_finished"),
}


def formula(
    document: Document,
    book: Any,
    formulas: Any,
    base_amount: Any = None,
    finished_amount: Any = None,
    columns: Any = None,
) -> Table:
    found = recipe("formula", document, book, formulas, base_amount, finished_amount)
    return named(_FORMULA, found["parts"], columns)


_COST: Dict[str, Callable[[Any], Any]] = {
    "material": at("material"),
    "mass_g": at("mass"),
    "cost": at("cost"),
    "packages": at("packages"),
    "to_buy": at("to_buy"),
    "currency": at("cost/currency"),
}


def cost(
    document: Document,
    book: Any,
    formulas: Any,
    base_amount: Any = None,
    finished_amount: Any = None,
    columns: Any = None,
) -> Table:
    found = recipe("cost", document, book, formulas, base_amount, finished_amount)
    return named(_COST, found["lines"], columns)


def doses_of(materials: Any, amounts: Any) -> List[Optional[Tuple[str, str]]]:
    """Material and amount of each row; None for a row that is empty."""
    names = materials if isinstance(materials, tuple) else ((one(materials, "materials"),),)
    given = amounts if isinstance(amounts, tuple) else ((one(amounts, "amounts"),),)
    faults = Faults()
    if any(len(row) > 1 for row in names):
        faults.add("materials", "It is a range of several columns.", "Give one column.", "wrong-type")
    if any(len(row) > 2 for row in given):
        faults.add(
            "amounts", "It is a range of more than two columns.", "Give amounts, or numbers and units.", "wrong-type"
        )
    if len(names) != len(given):
        message = "It has {} rows, and materials has {}.".format(len(given), len(names))
        faults.add("amounts", message, "Give columns of one length.", "wrong-type")
    faults.check()
    doses: List[Optional[Tuple[str, str]]] = []
    for place, ((name,), row) in enumerate(zip(names, given), 1):
        material, at_row = plain(name), "amounts row {}".format(place)
        try:
            dose = joined(plain(row[0]), plain(row[1]), at_row) if len(row) == 2 else amount(row[0], at_row, "")
        except Refused as refused:
            faults.found += refused.faults
            continue
        if material is None and dose is None:
            doses.append(None)
        elif material is None:
            faults.add(
                "materials row {}".format(place), "It is missing.", "Name a material of the book.", "missing-field"
            )
        elif dose is None:
            faults.add(at_row, "It is missing.", "Enter an amount, such as 1/4 tsp.", "missing-field")
        else:
            doses.append((material if isinstance(material, str) else decimal(material), dose))
    faults.check()
    while len(doses) > EMPTY_ROWS and doses[-1] is None:
        doses.pop()
    if not any(doses):
        raise missing("materials", "Give a column of materials.")
    return doses


def grams(document: Document, book: Any, materials: Any, amounts: Any, per: Any, base_amount: Any) -> Table:
    def needed(value: Any, path: str) -> str:
        found = amount(value, path, "")
        if found is None:
            raise missing(path, 'Give an amount of base: "1 cup".')
        return found

    text, doses, of_base, batch = both(
        lambda: open_book(book, document),
        lambda: doses_of(materials, amounts),
        lambda: needed(per, "per"),
        lambda: needed(base_amount, "base_amount"),
    )
    # The formula of the sheet goes into the book, under a name that is free there. A material that is in it twice stays so, and
    # is refused by the library.
    name = "sheet"
    while name in text:
        name += "'"
    try:
        shop = json.loads(text)
    except ValueError as error:
        raise refuse(
            "book", "It cannot be read here: {}.".format(error), "Write shorter numbers.", "not-json"
        ) from None
    members = ", ".join("{}: {}".format(json.dumps(one[0]), json.dumps(one[1])) for one in doses if one)
    sheet = '{{"per": {}, "doses": {{{}}}}}'.format(json.dumps(of_base), members)
    shop["formulas"][name] = 0
    with_sheet = json.dumps(shop).replace("{}: 0".format(json.dumps(name)), "{}: {}".format(json.dumps(name), sheet))
    request = {"calculate": "formula", "formulas": [name], "base_amount": batch}
    try:
        library.book(with_sheet)
        found = asked(request, with_sheet)
    except Refused as refused:
        renamed = [(fault, fault.path.replace("formulas/{}/doses".format(name), "amounts")) for fault in refused.faults]
        raise Refused(
            [fault._replace(path=path.replace("formulas/" + name + "/", "")) for fault, path in renamed]
        ) from None
    masses = {part["material"]: part["mass"]["value"] for part in found["parts"]}
    return tuple(("" if dose is None else masses[dose[0]],) for dose in doses)


# --- Days


class Orders:
    """An order list as JSON, and the row of each line where it is from cells."""

    def __init__(self, text: str, rows: Sequence[int] = ()) -> None:
        self.text = text
        self.rows = rows

    def in_sheet(self, fault: Fault) -> Fault:
        """A fault with its place in the sheet."""
        path = fault.path.split("/")
        if path[0] == "lines" and len(path) > 1 and path[1].isdecimal() and int(path[1]) < len(self.rows):
            where = ["orders row {}".format(self.rows[int(path[1])]), *path[2:]]
            return fault._replace(path=" ".join(where))
        return fault._replace(path="orders/" + fault.path if fault.path else "orders")


def order_lines(cells: Tuple[Tuple[Any, ...], ...], document: Document) -> Orders:
    """An order list from cells: the names of the fields, and a line in each row below."""
    fields = json.loads(library.schema("orders"))["$defs"]["OrderLine"]["properties"]
    names = [plain(cell) for cell in cells[0]]
    faults = Faults()
    for twice in {name for name in names if name is not None and names.count(name) > 1}:
        faults.add("orders", "Two columns have the name `{}`.".format(twice), "Rename one.", "duplicate-key")
    lines, rows = [], []
    for place, row in enumerate(cells[1:], 2):
        line = {}
        for name, cell in zip(names, row):
            value = plain(cell)
            if value is None:
                continue
            if name is None:
                faults.add(
                    "orders row {}".format(place),
                    "`{}` is in a column without a name.".format(value),
                    "Name it.",
                    "missing-field",
                )
            else:
                field_name = name if isinstance(name, str) else decimal(name)
                line[field_name] = _field_of_line(field_name, value, fields, document)
        if line:
            lines.append(line)
            rows.append(place)
    faults.check()
    return Orders(json.dumps({"format": "pourwright/1.0", "lines": lines}), rows)


def _field_of_line(name: str, value: Union[float, str], fields: Dict[str, Any], document: Document) -> Any:
    """The value of a cell in an order line, in the type of its field. What does not fit stays as it is, and the library refuses
    it."""
    kind = fields.get(name, {}).get("type")
    if isinstance(value, float):
        if kind == "integer":
            return int(value) if value.is_integer() else value
        if name == "promised":
            try:
                return (document.first_day + timedelta(days=int(value))).isoformat()
            except OverflowError:
                return decimal(value)
        return decimal(value)
    if kind == "array" or kind == "object":
        if value[0] in "[{":
            try:
                return json.loads(value)
            except (ValueError, RecursionError):
                return value
        if kind == "array":
            return [one.strip() for one in value.split(" + ")]
    return value


def orders_of(value: Any, document: Document) -> Orders:
    if isinstance(value, tuple) and (len(value[0]) > 1 or len(value) > 1):
        first = next(iter(several(value)), None)
        if first is not None and not (isinstance(first, str) and first[0] in "{["):
            return order_lines(value, document)
    return Orders(text_of(value, "orders", document))


def day(document: Document, book: Any, orders: Any) -> Any:
    """The plan of a day."""
    opened, lines = both(lambda: open_book(book, document), lambda: orders_of(orders, document))
    try:
        return parsed(library.plan(opened, lines.text))
    except Refused as refused:
        raise Refused([lines.in_sheet(fault) for fault in refused.faults]) from None


def draws(pot: Any) -> List[Any]:
    return [draw for stage in pot["stages"] for draw in stage["draws"]]


def pieces(pot: Any, kind: str) -> int:
    return sum(of_line[kind] for draw in draws(pot) for of_line in draw["pieces"])


_PLAN: Dict[str, Callable[[Any], Any]] = {
    "pot": at("pot"),
    "name": at("id"),
    "cup": at("cup_name"),
    "cup_ml": at("cup"),
    "stages": lambda pot: len(pot["stages"]),
    "mass_g": lambda pot: pot["stages"][0]["holds"],
    "volume_ml": lambda pot: pot["stages"][0]["fills"],
    "shots": lambda pot: sum(draw["shots"] for draw in draws(pot)),
    "pieces_ordered": lambda pot: pieces(pot, "ordered"),
    "pieces_made": lambda pot: pieces(pot, "made"),
    "heats": at("heats/count"),
    "lost_g": at("lost"),
    "left_over_g": at("left_over"),
    "sprues_g": at("sprues"),
}


def plan(document: Document, book: Any, orders: Any, columns: Any = None) -> Table:
    return named(_PLAN, day(document, book, orders)["pots"], columns)


_WEIGH: Dict[str, Callable[[Any], Any]] = {
    "pot": within("^^pot"),
    "stage": within("^#"),
    "line": within("#"),
    "formula": within("^formulas"),
    "material": within("material"),
    "kind": within("kind"),
    "add_when": within("add/when"),
    "portions": within("add/portions"),
    "mass_g": within("wanted"),
    "tool": within("best/tool"),
    "measure": within("best/measure"),
    "gives_g": within("best/gives"),
    "deviation": within("best/off"),
    "tolerance": within("tolerance"),
    "uncertainty": within("doubt/uncertainty"),
}


def weigh(document: Document, book: Any, orders: Any, columns: Any = None) -> Table:
    lines = entries(day(document, book, orders), steps("pots/*/stages/*/weigh"))
    return named(_WEIGH, lines, columns)


# --- Others


def answer(document: Document, request: Any, book: Any = None) -> str:
    def opened() -> Optional[str]:
        return open_book(book, document) if several(book) else None

    text, in_book = both(lambda: text_of(request, "request", document), opened)
    try:
        return library.answer(text, in_book)
    except Refused as refused:
        faults = [dict(zip(("path", "message", "help", "code"), fault)) for fault in refused.faults]
        ordered = [{"code": one["code"], **one, "path": "/" + one["path"] if one["path"] else ""} for one in faults]
        return json.dumps({"faults": ordered}, ensure_ascii=False, separators=(",", ":"))


def version(document: Document) -> str:
    return library.version()
