"""What LibreOffice does not write into the files: the view of a document that was never seen, and all digits of numbers in an .xlsx."""

import re
import zipfile

from .page import cell


def rewrite(path, changes):
    """Changes texts in a file of packed parts; the parts keep their order, and how they are packed."""
    with zipfile.ZipFile(path) as packed:
        parts = [(part, packed.read(part)) for part in packed.infolist()]
    found = {part.filename for part, _ in parts}
    if not set(changes) <= found:
        raise SystemExit(f"{path} has no {sorted(set(changes) - found)}.")
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as packed:
        for part, content in parts:
            if part.filename in changes:
                content = changes[part.filename](content.decode()).encode()
            packed.writestr(part, content)


def replaced(pattern, by, text):
    changed, count = re.subn(pattern, by, text, count=1)
    if count != 1:
        raise SystemExit(f"There is no {pattern} where it was to be changed.")
    return changed


def view_ods(path, pages):
    """What stays in view of each sheet, no grid, and the first sheet on top."""

    def item(name, kind, value):
        return f'<config:config-item config:name="{name}" config:type="{kind}">{value}</config:config-item>'

    tables = ""
    for page in pages:
        columns, rows = page.frozen
        values = item("CursorPositionX", "int", 0) + item("CursorPositionY", "int", rows)
        values += item("HorizontalSplitMode", "short", 2 if columns else 0) + item(
            "VerticalSplitMode", "short", 2 if rows else 0
        )
        values += item("HorizontalSplitPosition", "int", columns) + item("VerticalSplitPosition", "int", rows)
        # The part that the cursor is in: the lower right one, or the lower one, or all.
        values += (
            item("ActiveSplitRange", "short", 3 if columns else 2)
            + item("PositionLeft", "int", 0)
            + item("PositionRight", "int", columns)
        )
        values += (
            item("PositionTop", "int", 0) + item("PositionBottom", "int", rows) + item("ShowGrid", "boolean", "false")
        )
        tables += f'<config:config-item-map-entry config:name="{page.name}">{values}</config:config-item-map-entry>'
    view = (
        item("ViewId", "string", "view1")
        + f'<config:config-item-map-named config:name="Tables">{tables}</config:config-item-map-named>'
    )
    view += item("ActiveTable", "string", pages[0].name) + item("ShowGrid", "boolean", "false")
    views = f'<config:config-item-map-indexed config:name="Views"><config:config-item-map-entry>{view}</config:config-item-map-entry></config:config-item-map-indexed>'
    start = r'(<config:config-item-set config:name="ooo:view-settings">.*?)(</config:config-item-set>)'
    rewrite(path, {"settings.xml": lambda text: replaced(start, lambda found: found[1] + views + found[2], text)})


def finish_xlsx(path, pages, numbers):
    """The same view, and numbers so that they read back as they are: LibreOffice writes 15 digits. `numbers`: address to number, by page."""

    def finished(page):
        columns, rows = page.frozen
        corner = cell(columns, rows)
        pane = "bottomRight" if columns and rows else "bottomLeft" if rows else "topLeft"
        split = f' xSplit="{columns}"' * bool(columns) + f' ySplit="{rows}"' * bool(rows)
        split = f'<pane{split} topLeftCell="{corner}" activePane="{pane}" state="frozen"/>' if split else ""
        values = numbers.get(page.name, {})

        def exact(found):
            value = values.get(found[2])
            if value is None:
                return found[0]
            if abs(float(found[4]) - value) > 1e-13 * abs(value):
                raise SystemExit(f"{path}: {page.name}, {found[2]} holds {found[4]}, not {value!r}.")
            return f"{found[1]}{found[2]}{found[3]}{value!r}</v>"

        def change(text):
            selection = f'{split}<selection pane="{pane}" activeCell="{corner}" sqref="{corner}"/>'
            text = replaced(r'<selection pane="topLeft"[^>]*/>', selection, text)
            text = replaced('showGridLines="true"', 'showGridLines="false"', text)
            text = replaced(
                'tabSelected="(?:true|false)"', f'tabSelected="{"true" if page is pages[0] else "false"}"', text
            )
            return re.sub(r'(<c r=")([A-Z]+[0-9]+)("[^>]*><v>)([^<]*)</v>', exact, text)

        return change

    rewrite(path, {f"xl/worksheets/sheet{number}.xml": finished(page) for number, page in enumerate(pages, 1)})
