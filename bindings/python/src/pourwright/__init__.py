"""pourwright: recipe-formula and batch maths for workshops that pour soft plastic to order.

Three levels, all of them with the same bits as every other door of the library:

* numbers in and out, the unit in each name: :func:`convert`, :func:`salt_for_density`, :func:`sink_rate`, ...;
  whole columns of them on NumPy arrays in :mod:`pourwright.columns`;
* :func:`calculate`: every calculation as one request with amounts as one says them (``"1/4 tsp"``);
* :class:`Book`: the shop's book, and the plan and the bench sheet of a day.

What is wrong comes as a :class:`PourwrightError`, all faults together; what is of another type than a call takes, as a
:class:`TypeError` that names it.

Hot plastisol sticks and burns deep, its fumes need ventilation, a drop of water in a mold erupts. Plans and answers
carry cautions: show them to the person who pours. The supplier's safety data sheet, local codes and licensed practice
come first.
"""

from typing import TYPE_CHECKING

from ._bench import (
    Bench,
    Kind,
    Material,
    Measure,
    bench_measure,
    density_of_parts,
    dose_mass,
    flake_count,
    mass_of_volume,
    volume_of_mass,
)
from ._book import Book, Plan, answer_text
from ._call import Measures
from ._convert import Conversion, convert, convert_amount
from ._document import Document
from ._error import Fault, PourwrightError, text_of
from ._mix import Mix, Phase
from ._native import lib
from ._process import (
    Body,
    Fall,
    Points,
    Scale,
    cavity_of_water,
    density_for_sink_rate,
    hardness,
    sink_rate,
    softener_ratio,
    swollen_volume,
    water_density,
)
from ._salt import SaltForm, Unsalted, salt_convert, salt_for_density, salt_mass, salt_reach
from ._shot import Batch, BatchNeed, Shot, ShotFill, batch_need, piece_mass, shot_fill, shots
from .documents import Calculate

if TYPE_CHECKING:
    # What each calculation gives is known by its name.
    calculate: Calculate
else:
    from ._book import calculate

__version__ = text_of(lib.pour_version())
"""The version of the library, such as "0.1.0"."""

__all__ = [
    "Batch",
    "BatchNeed",
    "Bench",
    "Body",
    "Book",
    "Conversion",
    "Document",
    "Fall",
    "Fault",
    "Kind",
    "Material",
    "Measure",
    "Measures",
    "Mix",
    "Phase",
    "Plan",
    "Points",
    "PourwrightError",
    "SaltForm",
    "Scale",
    "Shot",
    "ShotFill",
    "Unsalted",
    "__version__",
    "answer_text",
    "batch_need",
    "bench_measure",
    "calculate",
    "cavity_of_water",
    "convert",
    "convert_amount",
    "density_for_sink_rate",
    "density_of_parts",
    "dose_mass",
    "flake_count",
    "hardness",
    "mass_of_volume",
    "piece_mass",
    "salt_convert",
    "salt_for_density",
    "salt_mass",
    "salt_reach",
    "shot_fill",
    "shots",
    "sink_rate",
    "softener_ratio",
    "swollen_volume",
    "volume_of_mass",
    "water_density",
]
