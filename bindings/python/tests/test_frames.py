"""A plan as tables and pictures, and what a notebook shows."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator
from decimal import Decimal
from html.parser import HTMLParser
from typing import Any

import matplotlib as mpl
import matplotlib.pyplot as plt
import numpy as np
import pandas as pd
import polars as pl
import pytest

import pourwright as pw
from pourwright import plots

mpl.use("agg")


@pytest.fixture(scope="module")
def plan(demo_book: bytes, demo_orders: bytes) -> pw.Plan:
    return pw.Book(demo_book).plan(demo_orders)


@pytest.fixture(autouse=True)
def _closed() -> Iterator[None]:
    yield
    plt.close("all")


def test_tables_are_those_of_the_plan(plan: pw.Plan) -> None:
    tables = plan.tables()
    assert list(tables) == ["pots", "weigh", "lines", "clock", "stock", "line_costs", "material_costs"]
    document = plan.to_dict()
    assert [row["pot"] for row in tables["pots"]] == [pot["pot"] for pot in document["pots"]]
    assert [row["mass_g"] for row in tables["pots"]] == [pot["stages"][0]["holds"]["value"] for pot in document["pots"]]
    weighed = [line for pot in document["pots"] for stage in pot["stages"] for line in stage["weigh"]]
    assert [row["mass_g"] for row in tables["weigh"]] == [line["wanted"]["value"] for line in weighed]
    assert [row["measure"] for row in tables["weigh"]] == [line["best"]["measure"] for line in weighed]
    assert sum(row["pieces"] for row in tables["lines"]) == sum(line["pieces"] for line in document["lines"])
    clock: Any = document["clock"]
    assert [row["lasts_s"] for row in tables["clock"]] == [span["lasts"]["value"] for span in clock["known"]["spans"]]
    # Money adds up exactly, as it does in the plan.
    cost: Any = document["cost"]
    assert sum(row["total"] for row in tables["line_costs"]) == Decimal(cost["known"]["total"]["amount"])
    assert sum(row["cost"] for row in tables["material_costs"]) == Decimal(cost["known"]["materials"]["amount"])
    assert all(isinstance(row["total"], Decimal) for row in tables["line_costs"])


def test_the_tables_of_every_library_have_the_same_bits(plan: pw.Plan) -> None:
    tables, arrow, frames, polars = plan.tables(), plan.to_arrow(), plan.to_pandas(), plan.to_polars()
    for name, rows in tables.items():
        assert arrow[name].to_pylist() == rows
        assert polars[name].to_dicts() == rows
        assert list(frames[name].columns) == arrow[name].column_names == polars[name].columns
        for column in frames[name].columns:
            for value, row in zip(frames[name][column].tolist(), rows, strict=True):
                wanted = row[column]
                assert pd.isna(value) if wanted is None else value == wanted


def test_a_book_that_states_less_has_empty_tables(shop: dict[str, Any], orders: dict[str, Any]) -> None:
    plan = pw.Book(shop).plan(orders)
    tables = plan.tables()
    assert tables["clock"] == tables["line_costs"] == tables["material_costs"] == tables["stock"] == []
    assert tables["lines"][0]["sink_rate_cm_per_s"] is None
    assert plan.to_arrow()["line_costs"].schema == pw.Book(shop).plan(orders).to_arrow()["line_costs"].schema
    assert plan.to_pandas()["clock"].empty and plan.to_polars()["clock"].schema["lasts_s"] == pl.Float64
    with pytest.raises(ValueError, match="no time line"):
        plots.day(plan)


class _Read(HTMLParser):
    """The tags of a page, each closed, and its text."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: set[str] = set()
        self.open: list[str] = []
        self.text = ""
        self.feed(text)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        assert all(name == "style" for name, _ in attrs)
        self.tags.add(tag)
        self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        self.text += data + "\n"


ALLOWED = {"div", "h3", "p", "b", "ul", "li", "table", "caption", "thead", "tbody", "tr", "th", "td"}


def test_a_notebook_shows_the_plan(plan: pw.Plan) -> None:
    page = _Read(plan._repr_html_())
    assert page.tags <= ALLOWED
    for pot in plan["pots"]:
        assert pot["id"] in page.text
        for stage in pot["stages"]:
            assert all(line["best"]["measure"] in page.text for line in stage["weigh"])
    # The sentences of the cautions are those of the sheet.
    sheet = " ".join(plan.sheet().split())
    assert "Hot plastisol sticks to skin and burns deep" in page.text
    start = page.text.index("Hot plastisol")
    for sentence in page.text[start:].split("\n")[: len(plan["cautions"])]:
        assert sentence in sheet


def test_what_a_book_says_is_never_markup(shop: dict[str, Any], orders: dict[str, Any]) -> None:
    evil = "<script>alert(1)</script>&\"'"
    shop["shop"] = evil
    orders["lines"][0]["order"] = evil
    text = pw.Book(shop).plan(orders)._repr_html_()
    page = _Read(text)
    assert "script" not in page.tags and page.text.count(evil) == 2
    assert "&lt;script&gt;alert(1)&lt;/script&gt;&amp;&quot;&#x27;" in text
    answer: Any = pw.calculate("convert", amount="1 cup", to="tbsp")
    answer["text of"] = {evil: [evil, {evil: evil}]}
    answer["list"] = [{evil: evil}]
    answer["yes"] = True
    assert _Read(answer._repr_html_()).tags <= ALLOWED


def test_a_notebook_shows_answers_and_mixes() -> None:
    loading = {"finished_density": "1.12 g/mL"}
    salt = {"kind": "salt", "like": "sodium-chloride", "as_scooped": "1.22 g/mL"}
    answer: Any = pw.calculate("salt", base_volume="1 cup", base_density="1.03 g/mL", salt=salt, loading=loading)
    assert json.loads(json.dumps(answer)) == answer
    page = _Read(answer._repr_html_())
    assert page.tags <= ALLOWED
    assert answer["mass"]["text"] in page.text and "of finished" in page.text
    with pw.Mix.of_materials([pw.Material(name="base", kind="plastisol", density_g_per_ml=1.03)]) as mix:
        assert "0 g" in _Read(mix._repr_html_()).text
        mix.add("base", 103.0)
        assert "1.03 g/mL" in _Read(mix._repr_html_()).text
    assert "closed" in _Read(mix._repr_html_()).text


def test_the_picture_of_a_day_has_its_spans(plan: pw.Plan) -> None:
    figure = plots.day(plan)
    (axes,) = figure.axes
    clock: Any = plan["clock"]
    spans = [(span, pot) for span in clock["known"]["spans"] for pot in span["pots"]]
    assert len(axes.patches) == len(spans)
    for bar, (span, _) in zip(axes.patches, spans):
        assert bar.get_x() * 60 == pytest.approx(span["begins"]["value"])  # type: ignore[attr-defined]
        assert bar.get_width() * 60 == pytest.approx(span["lasts"]["value"])  # type: ignore[attr-defined]
    figure.canvas.draw()
    assert len(plots.day(plan.to_dict()).axes) == 1


def test_the_picture_of_salt_has_the_numbers_of_single_calls() -> None:
    figure = plots.salt(1.03, 2.165, 9.5, 10.0, length_mm=121.0, hook_mass_g=1.1, hook_volume_ml=0.14)
    weight, sink = figure.axes
    percent, grams = weight.lines[0].get_data()
    _, rates = sink.lines[0].get_data()
    for place in (0, 50, 199):
        of_base = np.asarray(percent)[place] / 100
        density = pw.salt_convert(100.0, 1.03, 2.165, "of-base", of_base, "finished-density").loading
        piece = pw.salt_convert(100.0, 1.03, 2.165, "of-base", of_base, "piece-mass", cavity_volume_ml=9.5).loading
        rate = pw.sink_rate(density, 9.5, 10.0, 20.0, length_mm=121.0, hook_mass_g=1.1, hook_volume_ml=0.14)
        assert np.asarray(grams)[place] == pytest.approx(piece)
        assert np.asarray(rates)[place] == pytest.approx(rate.sink_rate_cm_per_s)
    # A piece without a hook floats until there is salt enough.
    floating = plots.salt(0.95, 2.165, 9.5, 10.0, length_mm=121.0)
    rates = floating.axes[1].lines[0].get_data()[1]
    assert math.isnan(np.asarray(rates)[0]) and not math.isnan(np.asarray(rates)[-1])
    assert [text.get_text() for text in floating.axes[1].texts] == ["floats"]
    with pytest.raises(pw.PourwrightError, match="out-of-range"):
        plots.salt(-1.0, 2.165, 9.5, 10.0)
    with pytest.raises(pw.PourwrightError, match="hook"):
        plots.salt(1.03, 2.165, 9.5, 10.0, hook_mass_g=1.1)
