"""Rows of an answer as the add-in's function `POUR_ROWS` gives them, read in Python: what the tests compare cells with."""


def cell_of(value):
    """What a cell shows of a value of an answer."""
    if isinstance(value, dict) and "value" in value and "unit" in value:
        value = value["value"]
    elif isinstance(value, dict) and "amount" in value and "currency" in value:
        value = float(value["amount"])
    elif isinstance(value, list) and all(isinstance(one, str) for one in value):
        value = " + ".join(value)
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    if isinstance(value, (bool, int, float)):
        return float(value)
    raise ValueError(f"A cell cannot show {value!r}.")


def step(value, key):
    if isinstance(value, dict):
        return value.get(key)
    if isinstance(value, list) and key.isdigit() and int(key) < len(value):
        return value[int(key)]
    return None


def rows(answer, path, columns):
    """`path`: the way to a list, `*` for every entry of a list on the way. `columns`: ways in an entry, `^` for the one that it is in."""
    table = []
    for chain in entries(answer, [*path.split("/"), "*"], []):
        line = []
        for column in columns:
            up = len(column) - len(column.lstrip("^"))
            value = chain[-1 - up]
            for key in column[up:].split("/"):
                value = step(value, key)
            line.append(cell_of(value))
        table.append(line)
    return table


def entries(value, way, chain):
    """The entries at the end of the way, each with those that it is in."""
    if not way:
        yield chain
    elif way[0] == "*":
        for one in value or []:
            yield from entries(one, way[1:], [*chain, one])
    else:
        yield from entries(step(value, way[0]), way[1:], chain)
