"""How sure a dose is: first order by uncertainties 3.2.3, and Monte Carlo by NumPy 2.4.6.

The figures of the tools are those of `core/src/uncertainty/tools.rs`: spoons and cups ±5 % rectangular, leveling 3 %,
drops 5 % from one to the next, filling a tenth of a mark, the balance's span 0.1 %.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from uncertainties import ufloat

import pourwright as pw
from pourwright.documents import UncertaintyAnswer

SPOON_SIZE = 0.05 / math.sqrt(3)
FLAKE = {"kind": "flake", "density": "1.4 g/mL", "as_scooped": "0.55 g/mL ± 0.05"}
PLUM = {"kind": "colorant", "density": "1.05 g/mL", "drop": "0.044 g ± 0.003"}
BASE = {"kind": "plastisol", "density": "1.03 g/mL ± 0.01"}
CUP = 236.5882365


def relative(answer: UncertaintyAnswer) -> float:
    return answer["relative"]["value"]


@pytest.mark.parametrize("spoonfuls", [1, 2, 4])
def test_spoons_of_flake_in_cups_of_base(spoonfuls: int) -> None:
    answer = pw.calculate(
        "uncertainty",
        material=FLAKE,
        dose_amount=f"{spoonfuls}/4 tsp",
        spoon="1/4 tsp",
        base_material=BASE,
        per_base="2 cup",
        cup_mark="1/4 cup",
    )
    size, level = ufloat(1, SPOON_SIZE), ufloat(0, 0.03 * math.sqrt(spoonfuls))
    dose = ufloat(0.55, 0.05) * CUP / 192 * (spoonfuls * size + level)
    cup, filling = ufloat(1, SPOON_SIZE), ufloat(0, 0.1 * 0.25 / 2)
    ratio = dose / (ufloat(1.03, 0.01) * 2 * CUP * (cup + filling))
    assert answer["ratio"]["value"] == pytest.approx(ratio.nominal_value, rel=1e-12)
    # Slopes over ± one uncertainty against derivatives: they differ in the second order, here by 0.3 %.
    assert relative(answer) == pytest.approx(ratio.std_dev / ratio.nominal_value, rel=0.003)
    shares = {share["source"]: share["share"]["value"] for share in answer["sources"]}
    scooped = next(share for source, share in shares.items() if source.startswith("what a spoonful of"))
    assert scooped == pytest.approx((0.05 / 0.55 / (ratio.std_dev / ratio.nominal_value)) ** 2, rel=0.01)


@pytest.mark.parametrize("drops", [1, 8, 64])
def test_drops_in_a_weighed_base(drops: int) -> None:
    answer = pw.calculate(
        "uncertainty",
        material=PLUM,
        dose_amount=f"{drops} drops",
        base_material=BASE,
        per_base="243.7 g",
        balance_readability="0.1 g",
    )
    dose = ufloat(0.044, 0.003) * (drops + ufloat(0, 0.05 * math.sqrt(drops)))
    # A net weight is the difference of two readings, each rounded to the readability.
    base = 243.7 * (ufloat(1, 0.001) + ufloat(0, 0.1 / math.sqrt(6) / 243.7))
    ratio = dose / base
    assert relative(answer) == pytest.approx(ratio.std_dev / ratio.nominal_value, rel=0.001)


def test_monte_carlo() -> None:
    """The whole distribution of the spoons' ratio, a million times (JCGM 101): its deviation, to the per cent that first
    order leaves out."""
    random = np.random.default_rng(20270302)
    times = 1_000_000

    def rectangular(half_width: float) -> Any:
        return random.uniform(-half_width, half_width, times)

    dose = random.normal(0.55, 0.05, times) * (
        2 * (1 + rectangular(0.05)) + random.normal(0, 0.03 * math.sqrt(2), times)
    )
    base = random.normal(1.03, 0.01, times) * (1 + rectangular(0.05) + random.normal(0, 0.0125, times))
    ratio = dose * CUP / 192 / (base * 2 * CUP)
    answer = pw.calculate(
        "uncertainty",
        material=FLAKE,
        dose_amount="1/2 tsp",
        spoon="1/4 tsp",
        base_material=BASE,
        per_base="2 cup",
        cup_mark="1/4 cup",
    )
    assert relative(answer) == pytest.approx(ratio.std() / ratio.mean(), rel=0.01)
    low, high = np.quantile(ratio / answer["ratio"]["value"], [0.025, 0.975])
    # Half the width that holds 95 % of them.
    assert answer["relative_95"]["value"] == pytest.approx((high - low) / 2, rel=0.03)


@pytest.mark.parametrize("hot_unsure", [0.0, 0.005])
def test_the_weight_of_a_piece(hot_unsure: float) -> None:
    """By the shot's equation: the hot density errs with the cold one, and on top by what it states itself."""
    answer = pw.calculate(
        "shot",
        mold={"cavities": 4, "cavity": "9.5 mL ± 0.1", "sprue": "6 mL", "feed": "40 %", "voids": "1 %"},
        cold_density="1.05 g/mL ± 0.008",
        hot_density=f"0.94 g/mL ± {hot_unsure}",
    )
    cold = ufloat(1.05, 0.008)
    hot = cold * 0.94 / 1.05 + (ufloat(0, hot_unsure) if hot_unsure else 0)
    piece = ufloat(9.5, 0.1) * 0.99 * (hot + 0.4 * (cold - hot))
    (shape,) = answer["shapes"]
    assert shape["weighs"]["value"] == pytest.approx(piece.nominal_value, rel=1e-12)
    assert shape["uncertainty"] is not None
    assert shape["uncertainty"]["value"] == pytest.approx(piece.std_dev, rel=1e-4)


def test_what_an_injector_keeps() -> None:
    weighings = [(182.4, 186.9), (182.4, 187.2), (182.5, 186.8), (182.3, 186.9)]
    answer = pw.calculate(
        "calibrate-injector",
        injector_weighed=[{"clean_mass": f"{clean} g", "emptied_mass": f"{emptied} g"} for clean, emptied in weighings],
        residue_density="0.94 g/mL ± 0.01",
        balance_readability="0.1 g",
    )
    kept = np.array([emptied - clean for clean, emptied in weighings])
    # The scatter of the mean, and the rounding of each difference of two readings.
    unsure = math.hypot(kept.std(ddof=1), 0.1 / math.sqrt(6)) / math.sqrt(len(kept))
    volume = ufloat(kept.mean(), unsure) / ufloat(0.94, 0.01)
    assert answer["volume"]["value"] == pytest.approx(volume.nominal_value, rel=1e-12)
    assert answer["uncertainty"]["value"] == pytest.approx(volume.std_dev, rel=1e-9)
