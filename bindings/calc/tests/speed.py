"""How long calls take in a sheet: speed.py OXT. Prints a table."""

import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import office

ROWS = 10_000
CALLS = [
    'POUR_CONVERT(B{row}; "mL")', "POUR_MASS_OF_VOLUME(A{row}; 1.03)", "POUR_PIECE_MASS(A{row}; 1.05; 0.98)",
    "POUR_SHOT_FILL(4; A{row}; 1.05)",
]  # fmt: skip


def seconds(work):
    """The least of three runs."""
    times = []
    for _ in range(3):
        begin = time.perf_counter()
        work()
        times.append(time.perf_counter() - begin)
    return min(times)


def main():
    with office.Office(sys.argv[1]) as started:
        document = started.new()
        sheet = document.Sheets.getByIndex(0)
        given = tuple((5 + row / 1000, f"{row % 9 + 1}/4 tsp") for row in range(ROWS))
        sheet.getCellRangeByPosition(0, 0, 1, ROWS - 1).setDataArray(given)
        results = sheet.getCellRangeByPosition(3, 0, 3, ROWS - 1)
        print(f"| call | {ROWS} cells | one array formula of {ROWS} rows |\n| --- | --- | --- |")
        for call in ["A{row} * 1.03", *CALLS]:
            shown = call.format(row="1")
            results.setFormulaArray(tuple((f"={call.format(row=row)}",) for row in range(1, ROWS + 1)))
            cells = seconds(document.calculateAll)
            results.clearContents(1023)
            whole = call.replace("A{row}", f"A1:A{ROWS}").replace("B{row}", f"B1:B{ROWS}")
            results.setArrayFormula(f"={whole}")
            array = seconds(document.calculateAll)
            results.clearContents(1023)
            print(f"| `{shown}` | {cells * 1000:.0f} ms | {array * 1000:.0f} ms |", flush=True)


main()
