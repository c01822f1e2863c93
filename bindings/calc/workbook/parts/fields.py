"""Fields of the documents as columns: their texts and types from the schemas, their values from the demo, their JSON by formulas.

A path is a tuple of keys. A number in it is a place in a pair of values.
"""

import json
from pathlib import Path

ROOT = Path(__file__).resolve().parents[4]
BOOK = json.loads((ROOT / "core/examples/demo/book.json").read_text(encoding="utf-8"))
ORDERS = json.loads((ROOT / "core/examples/demo/orders.json").read_text(encoding="utf-8"))
SCHEMAS = {
    name: json.loads((ROOT / f"core/schema/{name}.json").read_text(encoding="utf-8"))
    for name in ("book", "orders", "plan")
}


def words(path):
    """The name of a field as a heading."""
    parts = [("lowest", "highest")[key] if isinstance(key, int) else key.replace("_", " ") for key in path]
    text = ": ".join(parts) if len(parts) > 1 else parts[0]
    return text[0].upper() + text[1:]


class Schema:
    def __init__(self, name):
        self.root = SCHEMAS[name]
        self.entries = self.root["$defs"]

    def entry(self, name):
        return self.root if name is None else self.entries[name]

    def resolved(self, node):
        while "$ref" in node:
            node = self.entries[node["$ref"].rsplit("/", 1)[1]]
        return node

    def at(self, name, path):
        """The schema of the field at a path, with its own description."""
        node = self.entry(name)
        for key in path:
            node = self.resolved(node)
            if isinstance(key, int):
                node = node["prefixItems"][key]
            elif key in node.get("properties", {}):
                node = node["properties"][key]
            elif isinstance(node.get("additionalProperties"), dict):
                node = node["additionalProperties"]
            elif "items" in node:
                node = self.resolved(node["items"])["properties"][key]
            else:
                choices = [self.resolved(choice) for choice in node["anyOf"]]
                node = next(choice["properties"][key] for choice in choices if key in choice.get("properties", {}))
        return node

    def meaning(self, name, path):
        """The description of a field; of a part of a pair, that of the pair."""
        end = len(path) - isinstance(path[-1], int)
        return self.at(name, path[:end])["description"].replace("\n", " ").replace("`", "")

    def kind(self, name, path):
        """`object`, `list`, `words` (a choice of words), `number`, `truth`, or `text`."""
        node = self.resolved(self.at(name, path))
        if node.get("type") == "object":
            return "object"
        if node.get("type") == "array":
            return "list"
        if self.choices(name, path):
            return "words"
        return {"integer": "number", "number": "number", "boolean": "truth"}.get(node.get("type"), "text")

    def choices(self, name, path):
        node = self.resolved(self.at(name, path))
        if "enum" in node:
            return node["enum"]
        return [one["const"] for one in node.get("oneOf", []) if "const" in one]


def value_at(entry, path):
    """What a document has at a path; an empty text where it has nothing. A quantity with a source gives its value."""
    for key in path:
        if isinstance(entry, list) and isinstance(key, int):
            entry = entry[key]
        elif isinstance(entry, dict) and key in entry:
            entry = entry[key]
        else:
            return ""
    if isinstance(entry, dict) and "value" in entry and "unit" not in entry:
        entry = entry["value"]
    if isinstance(entry, bool):
        return "true" if entry else "false"
    if isinstance(entry, (str, int, float)):
        return entry
    return ""


# Formulas that write JSON. Of what a person typed, backslashes, quotes and ends of lines are escaped.


def quoted(cell):
    return f'""""&SUBSTITUTE(SUBSTITUTE(SUBSTITUTE({cell};"\\";"\\\\");"""";"\\""");CHAR(10);"\\n")&""""'


def literal(text):
    return '"' + text.replace('"', '""') + '"'


def raw(cell, kind):
    if kind == "number":
        # A decimal comma of the locale is a point in JSON.
        return f'IF(ISNUMBER({cell});SUBSTITUTE({cell};",";".");{quoted(cell)})'
    if kind == "truth":
        return f'IF(OR({cell}="true";{cell}="false");LOWER({cell});{quoted(cell)})'
    return quoted(cell)


def joined(parts):
    return f'TEXTJOIN(",";TRUE();{";".join(parts)})'


def pair(key, value):
    return literal(f'"{key}":') + "&" + value


def braced(parts):
    return f'"{{"&{joined(parts)}&"}}"'


def listed(parts):
    return f'"["&{joined(parts)}&"]"'


def if_any(cells, value):
    """The value where one of the cells is filled in, else an empty text."""
    return f'IF({"&".join(cells)}="";"";{value})'


def member(key, at, kind="text"):
    """One member of an object, or an empty text where the cell is empty."""
    return if_any([at], pair(key, raw(at, kind)))


def members(cells, kinds):
    """Formula parts for the members of an object. `cells`: path to cell; each part is an empty text where nothing is written."""
    groups = {}
    for path in cells:
        groups.setdefault(path[0], []).append(path)
    parts = []
    for key, paths in groups.items():
        rest = [path[1:] for path in paths]
        all_cells = [cells[path] for path in paths]
        if rest == [()]:
            value = raw(cells[paths[0]], kinds[paths[0]])
        elif () in rest and ("source",) in rest:
            plain = raw(cells[(key,)], kinds[(key,)])
            sourced = braced([pair("value", plain), pair("source", quoted(cells[(key, "source")]))])
            value = f'IF({cells[(key, "source")]}="";{plain};{sourced})'
        elif isinstance(rest[0][0], int):
            value = '"["&' + '&","&'.join(raw(cells[path], kinds[path]) for path in paths) + '&"]"'
        else:
            inner = members({path[1:]: cells[path] for path in paths}, {path[1:]: kinds[path] for path in paths})
            value = braced(inner)
        parts.append(if_any(all_cells, pair(key, value)))
    return parts
