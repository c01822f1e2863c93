"""A picture of the function wizard with a function of the add-in: wizard.py OXT PNG.

Needs a LibreOffice that has windows (Debian: libreoffice-calc), xvfb and imagemagick.
"""

import os
import subprocess
import sys
import threading
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))

import office

WIDTH, HEIGHT = 960, 620
DISPLAY = ":77"
CELLS = [
    ("Cavity", "9.5 mL", ""), ("Cold density", "8.76", "lb/gal"), ("Hot density", "0.98 g/mL", ""),
    ("Piece, g", "=POUR_PIECE_MASS(B1;B2:C2;B3)", ""),
]  # fmt: skip


def main():
    oxt, png = sys.argv[1:]
    os.environ["DISPLAY"] = DISPLAY
    screen = subprocess.Popen(["Xvfb", DISPLAY, "-screen", "0", f"{WIDTH}x{HEIGHT}x24"], stderr=subprocess.DEVNULL)
    time.sleep(1)
    try:
        with office.Office(oxt, "en-US", headless=False) as started:
            document = started.desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, ())
            sheet = document.Sheets.getByIndex(0)
            for row, cells in enumerate(CELLS):
                for column, value in enumerate(cells):
                    sheet.getCellByPosition(column, row).setFormula(value)
            controller = document.CurrentController
            controller.Frame.ContainerWindow.setPosSize(0, 0, WIDTH, HEIGHT, 15)
            controller.select(sheet.getCellByPosition(1, 3))
            for command in ("Sidebar", "StandardBar", "FormatObjectBar"):
                hide(started, controller.Frame, command)
            time.sleep(1)
            # The wizard waits for its user.
            show = started.service("com.sun.star.frame.DispatchHelper").executeDispatch
            threading.Thread(
                target=lambda: show(controller.Frame, ".uno:FunctionDialog", "", 0, ()), daemon=True
            ).start()
            time.sleep(5)
            subprocess.run(
                ["import", "-window", "root", "+dither", "-colors", "48", "-strip", f"PNG8:{png}"], check=True
            )
            started.process.terminate()
    finally:
        screen.terminate()


def hide(started, frame, bar):
    if bar == "Sidebar":
        off = office.properties(Sidebar=False)
        started.service("com.sun.star.frame.DispatchHelper").executeDispatch(frame, ".uno:Sidebar", "", 0, off)
    else:
        frame.LayoutManager.hideElement(f"private:resource/toolbar/{bar.lower()}")


main()
