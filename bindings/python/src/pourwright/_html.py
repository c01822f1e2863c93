"""What a notebook shows: HTML without script, every text escaped."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from html import escape
from typing import Any

from ._table import CAUTIONS

_STYLE = 'style="text-align:left;vertical-align:top;padding:0 1em 0 0"'


def table(rows: Iterable[Sequence[Any]], head: Sequence[str] = (), caption: str = "") -> str:
    """A table; values are made texts and escaped."""
    lines = ["<table>"]
    if caption:
        lines.append(_caption(caption))
    if head:
        lines.append("<thead><tr>" + "".join(f"<th {_STYLE}>{escape(cell)}</th>" for cell in head) + "</tr></thead>")
    lines.append("<tbody>")
    for row in rows:
        lines.append("<tr>" + "".join(f"<td {_STYLE}>{_cell(cell)}</td>" for cell in row) + "</tr>")
    lines.append("</tbody></table>")
    return "".join(lines)


def _caption(text: str) -> str:
    return f'<caption style="text-align:left;caption-side:top;padding:.6em 0 .1em"><b>{escape(text)}</b></caption>'


def _cell(value: Any) -> str:
    if isinstance(value, float):
        return f"{value:.4g}"
    return "" if value is None else escape(str(value))


def plan(document: Mapping[str, Any]) -> str:
    """A day's plan: what to pour, what to weigh, what to know."""
    shop, day = document["shop"] or "", document["day"] or ""
    parts = [f"<h3>{escape(' · '.join(text for text in ('Plan', shop, day) if text))}</h3>"]
    parts.append(_cautions(document["cautions"]))
    parts.append(
        table(
            (
                (
                    pot["pot"],
                    pot["id"],
                    pot["cup_name"],
                    pot["stages"][0]["holds"]["text"],
                    sum(draw["shots"] for stage in pot["stages"] for draw in stage["draws"]),
                    pot["heats"]["count"],
                    pot["left_over"]["text"],
                )
                for pot in document["pots"]
            ),
            ("Pot", "Formulas", "Cup", "First mix", "Shots", "Heats", "Left over"),
            "Pots",
        )
    )
    for pot in document["pots"]:
        for number, stage in enumerate(pot["stages"], 1):
            name = f"Pot {pot['pot']}" + (f", stage {number}" if len(pot["stages"]) > 1 else "")
            parts.append(
                table(
                    (
                        (line["material"], line["best"]["measure"], line["wanted"]["text"], line["add"]["when"])
                        for line in stage["weigh"]
                    ),
                    ("Material", "Measure", "Mass", "Add"),
                    f"{name}: {' + '.join(stage['formulas'])}",
                )
            )
        parts.extend(f"<p>{escape(note['message'])}</p>" for note in pot["warnings"])
    parts.append(
        table(
            (
                (
                    line["order"],
                    line["what"],
                    line["mold"],
                    line["pieces"],
                    ", ".join(line["pots"]),
                    line["piece"]["text"],
                )
                for line in document["lines"]
            ),
            ("Order", "What", "Mold", "Pieces", "Pots", "A piece"),
            "Order lines",
        )
    )
    return f"<div>{''.join(parts)}</div>"


def _cautions(cautions: Iterable[str]) -> str:
    items = "".join(f"<li>{escape(CAUTIONS.get(caution, caution))}</li>" for caution in cautions)
    return f"<p><b>Cautions</b></p><ul>{items}</ul>" if items else ""


def answer(fields: Mapping[str, Any]) -> str:
    """The answer to a request: a row for each field."""
    cautions = fields.get("cautions") or []
    rows = [
        f"<tr><th {_STYLE}>{escape(_words(name))}</th><td {_STYLE}>{_value(value)}</td></tr>"
        for name, value in fields.items()
        if name not in ("calculate", "cautions") and value is not None
    ]
    caption = _caption(_words(str(fields.get("calculate", ""))).capitalize())
    return f"<div>{_cautions(cautions)}<table>{caption}<tbody>{''.join(rows)}</tbody></table></div>"


def _words(name: str) -> str:
    return name.replace("_", " ").replace("-", " ")


def _value(value: Any) -> str:
    """A value of an answer: a quantity as its text, a list as a table or in a line."""
    if isinstance(value, Mapping):
        if isinstance(value.get("text"), str):
            return _cell(value["text"])
        if isinstance(value.get("message"), str):
            return _cell(value["message"])
        inner = "".join(
            f"<tr><th {_STYLE}>{escape(_words(str(name)))}</th><td {_STYLE}>{_value(part)}</td></tr>"
            for name, part in value.items()
            if part is not None
        )
        return f"<table><tbody>{inner}</tbody></table>"
    if isinstance(value, list):
        if all(isinstance(part, Mapping) and not isinstance(part.get("text"), str) for part in value) and value:
            names = list(dict.fromkeys(name for part in value for name, one in part.items() if one is not None))
            head = "".join(f"<th {_STYLE}>{escape(_words(str(name)))}</th>" for name in names)
            body = "".join(
                "<tr>" + "".join(f"<td {_STYLE}>{_value(part.get(name))}</td>" for name in names) + "</tr>"
                for part in value
            )
            return f"<table><thead><tr>{head}</tr></thead><tbody>{body}</tbody></table>"
        return ", ".join(_value(part) for part in value)
    if isinstance(value, bool):
        return "yes" if value else "no"
    return _cell(value)


def mix(rows: Iterable[tuple[str, str]]) -> str:
    """A mix: its numbers."""
    return f"<div>{table(rows, caption='Mix')}</div>"
