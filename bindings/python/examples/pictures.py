"""Draws the picture of the README: pictures.py folder

The piece is invented: a 5-inch stick with a small hook.
"""

import sys
from pathlib import Path

import matplotlib as mpl

mpl.use("agg")
from pourwright import plots


def main() -> None:
    folder = Path(sys.argv[1])
    figure = plots.salt(
        1.03, 2.165, cavity_volume_ml=9.5, diameter_mm=10, length_mm=121, hook_mass_g=1.1, hook_volume_ml=0.14
    )
    figure.savefig(folder / "salt.png", dpi=90, metadata={"Software": None})


if __name__ == "__main__":
    main()
