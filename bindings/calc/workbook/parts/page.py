"""Sheets as all of the workbook's are: a title, a line of help, headings that stay in view and print on every page."""

from com.sun.star.awt.FontSlant import ITALIC
from com.sun.star.beans import PropertyValue
from com.sun.star.lang import Locale
from com.sun.star.sheet.ConditionOperator import FORMULA as BY_FORMULA
from com.sun.star.sheet.ConditionOperator import GREATER_EQUAL
from com.sun.star.sheet.ValidationAlertStyle import STOP, WARNING
from com.sun.star.sheet.ValidationType import LIST, WHOLE
from com.sun.star.table import BorderLine2, CellAddress, CellRangeAddress
from com.sun.star.table.CellHoriJustify import LEFT, RIGHT

# The colors of the page for the bench.
INK, FAINT, LINE, MARK, ON_MARK, TINT = 0x1C2126, 0x545B5F, 0xCDC4B2, 0x0D5766, 0xFFFFFF, 0xDCEBEC
INPUT, CARD, LIQUID, HEAT, BAD, BAD_TINT, DONE = 0xFBF3E2, 0xFFFDF8, 0xE8A765, 0xA63A12, 0xA31A22, 0xFBE3E0, 0x23663B

TITLE, HELP, HEAD, FIRST = 0, 1, 3, 4  # rows of each sheet, counted from 0; row 2 is the sheet's own
FONT = "Liberation Sans"


def letter(column):
    text = ""
    column += 1
    while column:
        column, place = divmod(column - 1, 26)
        text = chr(65 + place) + text
    return text


def cell(column, row, fixed=""):
    """The address of a cell, column and row counted from 0. `fixed` has `c` or `r` for what does not move when it is copied."""
    return f"{'$' * ('c' in fixed)}{letter(column)}{'$' * ('r' in fixed)}{row + 1}"


def span(column, row, last_column, last_row):
    return f"{cell(column, row, 'cr')}:{cell(last_column, last_row, 'cr')}"


def make_styles(document):
    formats, locale = document.NumberFormats, Locale("en", "US", "")

    def number(code):
        key = formats.queryKey(code, locale, False)
        return key if key >= 0 else formats.addNew(code, locale)

    cells = document.StyleFamilies.getByName("CellStyles")
    line = BorderLine2()
    line.Color, line.OuterLineWidth, line.LineWidth = LINE, 9, 9
    default = cells.getByName("Default")
    default.CharFontName, default.CharHeight, default.CharColor = FONT, 10.0, INK

    def style(name, parent="Default", **values):
        one = document.createInstance("com.sun.star.style.CellStyle")
        cells.insertByName(name, one)
        one.ParentStyle = parent
        for key, value in values.items():
            setattr(one, key, value)

    top, middle = 1, 2
    rows = {"BottomBorder2": line, "VertJustify": middle}
    style("pour title", CharHeight=16.0, CharWeight=150.0, CharColor=MARK)
    style("pour help", CharColor=FAINT, VertJustify=middle)
    style(
        "pour heading",
        CharWeight=150.0,
        CharColor=ON_MARK,
        CellBackColor=MARK,
        IsTextWrapped=True,
        VertJustify=middle,
        HoriJustify=LEFT,
        ParaIndent=100,
    )
    style(
        "pour section",
        CharWeight=150.0,
        CharColor=MARK,
        CellBackColor=TINT,
        VertJustify=middle,
        HoriJustify=LEFT,
        ParaIndent=100,
    )
    style("pour input", CellBackColor=INPUT, NumberFormat=number("@"), HoriJustify=LEFT, ParaIndent=100, **rows)
    style("pour input count", "pour input", NumberFormat=number("0"), HoriJustify=RIGHT, ParaIndent=100)
    style("pour input date", "pour input", NumberFormat=number("YYYY-MM-DD"))
    style("pour heading of numbers", "pour heading", HoriJustify=RIGHT, ParaIndent=100)
    style("pour result", VertJustify=middle, HoriJustify=LEFT, ParaIndent=100)
    style("pour row", CellBackColor=CARD, BottomBorder2=line)
    for name, code in (
        ("0", "0"),
        ("1", "#,##0.0"),
        ("grams", "[<10]0.00;[>=10]#,##0.0"),
        ("2", "#,##0.00"),
        ("3", "0.000"),
        ("percent", "0 %"),
        ("percent1", "0.0 %"),
        ("money", "#,##0.00"),
    ):
        style(f"pour result {name}", NumberFormat=number(code), VertJustify=middle, HoriJustify=RIGHT, ParaIndent=100)
    style("pour text", IsTextWrapped=True, VertJustify=top, HoriJustify=LEFT, ParaIndent=100)
    style("pour json", CharColor=FAINT, CharHeight=8.0, CharFontName="Liberation Mono")
    style("pour path", CharColor=FAINT, CharHeight=6.0, CharPosture=ITALIC)
    style("pour good", CharColor=DONE, CharWeight=150.0)
    style("pour bad", CharColor=BAD, CharWeight=150.0, CellBackColor=BAD_TINT)
    style("pour fault", CharColor=BAD, VertJustify=middle, HoriJustify=LEFT, ParaIndent=100)
    style("pour short", CharColor=BAD, CharWeight=150.0, CellBackColor=BAD_TINT)

    pages = document.StyleFamilies.getByName("PageStyles")
    # Wide as one page or two, and whole on one page for lists that mostly end long before their last row.
    for name, landscape, across, down in (
        ("pour wide", True, 1, 0),
        ("pour tall", False, 1, 0),
        ("pour two", True, 2, 0),
        ("pour one", True, 1, 1),
    ):
        one = document.createInstance("com.sun.star.style.PageStyle")
        pages.insertByName(name, one)
        one.IsLandscape = landscape
        one.Width, one.Height = (27940, 21590) if landscape else (21590, 27940)
        one.LeftMargin = one.RightMargin = one.TopMargin = one.BottomMargin = 1200
        one.ScaleToPagesX, one.ScaleToPagesY = across, down
        one.HeaderIsOn, one.FooterIsOn = False, True
        foot = one.RightPageFooterContent
        for part in (foot.LeftText, foot.CenterText, foot.RightText):
            part.String = ""
        for part, kinds in ((foot.LeftText, ("SheetName",)), (foot.RightText, ("PageNumber", None, "PageCount"))):
            for kind in kinds:
                cursor = part.createTextCursor()
                cursor.gotoEnd(False)
                if kind is None:
                    part.insertString(cursor, " / ", False)
                else:
                    part.insertTextContent(
                        cursor, document.createInstance(f"com.sun.star.text.TextField.{kind}"), False
                    )
        one.RightPageFooterContent = foot


class Page:
    frozen = (0, 0)

    def __init__(self, document, name, title, help_text, paper="pour wide"):
        self.document, self.name = document, name
        sheets = document.Sheets
        sheets.insertNewByName(name, sheets.Count)
        self.sheet = sheets.getByName(name)
        self.sheet.PageStyle = paper
        self.put(0, TITLE, title, "pour title")
        self.put(0, HELP, help_text, "pour help")
        self.sheet.Rows.getByIndex(TITLE).Height = 850

    @property
    def quoted(self):
        return f"$'{self.name}'" if any(not (c.isalnum()) for c in self.name) else f"${self.name}"

    def at(self, address):
        """The address with the name of the sheet before it."""
        return f"{self.quoted}.{address}"

    def range(self, column, row, last_column=None, last_row=None):
        return self.sheet.getCellRangeByPosition(
            column, row, column if last_column is None else last_column, row if last_row is None else last_row
        )

    def style(self, name, column, row, last_column=None, last_row=None):
        self.range(column, row, last_column, last_row).CellStyle = name

    def put(self, column, row, value, style=None):
        one = self.sheet.getCellByPosition(column, row)
        if style:
            one.CellStyle = style
        if isinstance(value, str):
            if value.startswith("="):
                one.Formula = value
            else:
                one.String = value
        else:
            one.Value = value

    def block(self, column, row, rows):
        """Texts and numbers, as they are."""
        if rows:
            self.range(column, row, column + len(rows[0]) - 1, row + len(rows) - 1).setDataArray(
                tuple(tuple(line) for line in rows)
            )

    def formulas(self, column, row, rows):
        if rows:
            self.range(column, row, column + len(rows[0]) - 1, row + len(rows) - 1).setFormulaArray(
                tuple(tuple(line) for line in rows)
            )

    def matrix(self, column, row, last_column, last_row, formula):
        self.range(column, row, last_column, last_row).setArrayFormula(formula)

    def headings(self, column, names, row=HEAD, notes=()):
        self.block(column, row, [names])
        self.style("pour heading", column, row, column + len(names) - 1, row)
        for place, note in enumerate(notes):
            if note:
                address = CellAddress(self.sheet.RangeAddress.Sheet, column + place, row)
                self.sheet.Annotations.insertNew(address, note)

    def widths(self, *millimeters):
        for column, width in enumerate(millimeters):
            self.sheet.Columns.getByIndex(column).Width = round(width * 100)

    def freeze(self, columns=1, rows=FIRST):
        """What stays in view; it is written into the files."""
        self.frozen = (columns, rows)

    def print_range(self, last_column, last_row, head=HEAD):
        number = self.sheet.RangeAddress.Sheet
        self.sheet.setPrintAreas((CellRangeAddress(number, 0, 0, last_column, last_row),))
        self.sheet.setTitleRows(CellRangeAddress(number, 0, head, 0, head))
        self.sheet.setPrintTitleRows(True)
        if self.sheet.PageStyle == "pour two":
            self.sheet.setTitleColumns(CellRangeAddress(number, 0, 0, 0, 0))
            self.sheet.setPrintTitleColumns(True)

    def choose(self, formula, column, row, last_column, last_row, title, message, strict=False):
        """A list to choose from; a word that is not in it can be kept unless the list is all that there is."""
        area = self.range(column, row, last_column, last_row)
        rule = area.Validation
        rule.Type, rule.ShowList, rule.IgnoreBlankCells = LIST, 1, True
        rule.ErrorAlertStyle, rule.ShowErrorMessage = STOP if strict else WARNING, True
        rule.ErrorTitle, rule.ErrorMessage = title, message
        rule.setFormula1(formula)
        area.Validation = rule

    def counts(self, column, row, last_column, last_row, title, message):
        area = self.range(column, row, last_column, last_row)
        rule = area.Validation
        rule.Type, rule.IgnoreBlankCells = WHOLE, True
        rule.setOperator(GREATER_EQUAL)
        rule.setFormula1("1")
        rule.ErrorAlertStyle, rule.ShowErrorMessage, rule.ErrorTitle, rule.ErrorMessage = STOP, True, title, message
        area.Validation = rule

    def when(self, formula, style, column, row, last_column=None, last_row=None):
        area = self.range(column, row, last_column, last_row)
        conditions = area.ConditionalFormat
        source = self.sheet.getCellByPosition(column, row).CellAddress
        entries = {"Operator": BY_FORMULA, "Formula1": formula, "StyleName": style, "SourcePosition": source}
        conditions.addNew(tuple(PropertyValue(name, 0, value, 0) for name, value in entries.items()))
        area.ConditionalFormat = conditions
