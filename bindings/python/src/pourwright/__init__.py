"""pourwright: recipe-formula and batch math for workshops that pour soft plastic to order.

Three levels, all of them with the same bits as every other door of the library:

* numbers in and out, the unit in each name: :func:`salt_for_density`, :func:`shot_fill`, :func:`sink_rate`, ...;
  whole columns of them, amounts as texts among them, on NumPy arrays in :mod:`pourwright.columns`, and for other
  libraries in :mod:`pourwright.arrow`, :mod:`pourwright.polars` and :mod:`pourwright.duckdb`; pictures in
  :mod:`pourwright.plots`;
* :func:`calculate`: every calculation as one request with amounts as you say them (``"1/4 tsp"``);
* :class:`Book`: the shop's book, and the plan and the bench sheet of a day.

A refused call raises a :class:`PourwrightError`, a :class:`ValueError`, with all faults; an argument of the wrong type
raises a :class:`PourwrightTypeError`, which is also a :class:`TypeError`.

Hot plastisol sticks and burns deep, its fumes need ventilation, a drop of water in a mold erupts. Plans and answers
carry cautions: show them to the person who pours. The supplier's safety data sheet, local codes and licensed practice
come first.
"""

from typing import TYPE_CHECKING

from . import _calculations
from ._book import Book, Plan, answer_lines, answer_text, schema
from ._calculations import *  # noqa: F403
from ._convert import Conversion
from ._document import Document
from ._error import Fault, PourwrightError, PourwrightTypeError, text_of
from ._mix import Material, Mix
from ._native import lib
from .documents import Calculate

if TYPE_CHECKING:
    # The type of an answer depends on the name of the calculation.
    calculate: Calculate
else:
    from ._book import calculate

__version__ = text_of(lib.pour_version())
"""The version of the library, such as "0.1.0"."""

__all__ = [
    "Book",
    "Conversion",
    "Document",
    "Fault",
    "Material",
    "Mix",
    "Plan",
    "PourwrightError",
    "PourwrightTypeError",
    "__version__",
    "answer_lines",
    "answer_text",
    "calculate",
    "schema",
]
__all__ += _calculations.__all__
