"""Colors: against colour-science 0.4.7."""

from __future__ import annotations

import warnings

import numpy as np
import pytest

import pourwright as pw

with warnings.catch_warnings():
    # It warns of plotting libraries that it does without.
    warnings.simplefilter("ignore")
    import colour

RANDOM = np.random.default_rng(20270302)


@pytest.mark.parametrize("pair", RANDOM.uniform([0, -80, -80], [100, 80, 80], (200, 2, 3)).tolist())
def test_far_pairs(pair: list[list[float]]) -> None:
    one, other = pair
    found = pw.calculate("color-difference", color={"lab": one}, other_color={"lab": other})["difference"]
    assert found == pytest.approx(float(colour.delta_E(one, other, method="CIE 2000")), abs=1e-9)


@pytest.mark.parametrize("one", RANDOM.uniform([0, -40, -40], [100, 40, 40], (100, 3)).tolist())
def test_near_pairs(one: list[float]) -> None:
    """Differences of the size that a workshop looks at."""
    other = np.clip(np.add(one, RANDOM.normal(0, 1, 3)), [0, -200, -200], [100, 200, 200]).tolist()
    found = pw.calculate("color-difference", color={"lab": one}, other_color={"lab": other})["difference"]
    assert found == pytest.approx(float(colour.delta_E(one, other, method="CIE 2000")), abs=1e-9)


@pytest.mark.parametrize(
    "pixel", [*RANDOM.integers(0, 256, (100, 3)).tolist(), [0, 0, 0], [255, 255, 255], [10, 10, 10]]
)
def test_photographs(pixel: list[int]) -> None:
    """sRGB to L*a*b*, with the matrix that the primaries and the white give, as ours is."""
    space = colour.RGB_COLOURSPACES["sRGB"]
    linear = space.cctf_decoding(np.array(pixel) / 255)
    matrix = colour.normalised_primary_matrix(space.primaries, space.whitepoint)
    expected = colour.XYZ_to_Lab(matrix @ linear, space.whitepoint)
    shown = pw.calculate("color-difference", color={"srgb": pixel}, other_color={"lab": [50, 0, 0]})["color"]
    assert [shown["lightness"], shown["a"], shown["b"]] == pytest.approx(expected.tolist(), abs=1e-9)
