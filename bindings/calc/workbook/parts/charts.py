"""The charts: what salt does, how much of the stock a day takes, what orders cost."""

from com.sun.star.awt import Rectangle
from com.sun.star.chart.ChartLegendPosition import BOTTOM
from com.sun.star.drawing.FillStyle import NONE as NO_FILL
from com.sun.star.drawing.LineStyle import NONE as NO_LINE
from com.sun.star.lang import Locale
from com.sun.star.table import CellRangeAddress

from .page import FAINT, FIRST, FONT, HEAD, HEAT, INK, LINE, LIQUID, MARK
from .results import SALT_HEAD

SHOWN = 12  # rows of a list that a chart shows


def chart(page, name, kind, areas, place, title, axis, colors, labels=True):
    number = page.sheet.RangeAddress.Sheet
    ranges = tuple(CellRangeAddress(number, *area) for area in areas)
    page.sheet.Charts.addNewByName(name, Rectangle(*place), ranges, True, labels)
    one = page.sheet.Charts.getByName(name).EmbeddedObject
    one.setDiagram(one.createInstance(f"com.sun.star.chart.{kind}Diagram"))
    one.HasMainTitle, one.Title.String = True, title
    one.Title.CharHeight, one.Title.CharColor, one.Title.CharWeight, one.Title.CharFontName = 12.0, MARK, 150.0, FONT
    one.HasLegend = len(colors) > 1
    if one.HasLegend:
        one.Legend.Alignment = BOTTOM
        one.Legend.CharHeight, one.Legend.FillStyle, one.Legend.LineStyle = 9.0, NO_FILL, NO_LINE
    one.Area.LineStyle = NO_LINE
    diagram = one.Diagram
    diagram.HasYAxisTitle, diagram.YAxisTitle.String = True, axis
    diagram.YAxisTitle.CharHeight = 9.0
    diagram.Wall.FillStyle = NO_FILL
    diagram.Wall.LineStyle = NO_LINE
    diagram.YMainGrid.LineColor = LINE
    for axis_of in (diagram.XAxis, diagram.YAxis):
        axis_of.CharHeight, axis_of.CharColor, axis_of.LineColor = 9.0, INK, FAINT
    for row, color in enumerate(colors):
        series = diagram.getDataRowProperties(row)
        if kind == "Line":
            series.LineColor, series.FillColor, series.LineWidth, series.SymbolType = color, color, 70, 3
        else:
            series.FillColor = color
    return one


def number_format(one, code):
    formats, locale = one.NumberFormats, Locale("en", "US", "")
    key = formats.queryKey(code, locale, False)
    return key if key >= 0 else formats.addNew(code, locale)


def draw(workbook):
    salt = workbook.salt
    end = salt.end
    heads = [salt.sheet.getCellByPosition(1 + place, SALT_HEAD).String for place in range(3)]
    texts = ("Weight of a piece", "Density of a piece", "Sink rate with its hook")
    at = salt.range(0, end + 2).Position
    for place, (text, color, code) in enumerate(zip(texts, (MARK, HEAT, LIQUID), ("0.0", "0.00", "0"))):
        areas = [(0, SALT_HEAD, 0, end), (1 + place, SALT_HEAD, 1 + place, end)]
        where = (at.X + place * 9000, at.Y, 8800, 7500)
        one = chart(salt, text, "Line", areas, where, text, heads[place].split(", ")[-1], [color])
        axis = one.Diagram.YAxis
        axis.LinkNumberFormatToSource, axis.NumberFormat = False, number_format(one, code)
        one.Diagram.HasXAxisTitle, one.Diagram.XAxisTitle.String, one.Diagram.XAxisTitle.CharHeight = (
            True,
            "salt per cup of base",
            9.0,
        )
    salt.print_range(6, end + 26, SALT_HEAD)
    salt.sheet.setPrintTitleRows(False)

    for name, column, areas, title, axis, colors in (
        (
            "Stock",
            9,
            [(0, HEAD, 0, FIRST + SHOWN - 1), (7, HEAD, 7, FIRST + SHOWN - 1)],
            f"Stock that the day takes, the {SHOWN} scarcest",
            "of what is on hand",
            [MARK],
        ),
        (
            "Order costs",
            4,
            [(0, HEAD, 2, FIRST + SHOWN - 1)],
            f"Cost and price, the first {SHOWN} orders",
            None,
            [LIQUID, MARK],
        ),
    ):
        page = workbook.pages[name]
        at = page.range(column, HEAD).Position
        page.sheet.Columns.getByIndex(column).Width = 16000
        axis = axis or page.sheet.getCellByPosition(1, HEAD).String.split(", ")[-1]
        one = chart(page, title, "Bar", areas, (at.X, at.Y, 15800, 9500), title, axis, colors)
        one.Diagram.YAxis.Min, one.Diagram.YAxis.AutoMin = 0.0, False
        page.print_range(column, page.last_row)
