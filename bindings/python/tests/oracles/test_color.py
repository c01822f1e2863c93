"""Colors: against colour-science 0.4.7."""

from __future__ import annotations

import pathlib
import warnings
from typing import Any

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


@pytest.mark.parametrize("lab", RANDOM.uniform([40, -40, -40], [98, 40, 40], (50, 3)).tolist())
def test_d50(lab: list[float]) -> None:
    """L*a*b* in D50 to D65 by Bradford."""
    d50, d65 = np.array([0.96422, 1, 0.82521]), colour.xy_to_XYZ([0.3127, 0.3290])
    given = colour.Lab_to_XYZ(lab, colour.XYZ_to_xy(d50))
    adapted = colour.chromatic_adaptation(given, d50, d65, transform="Bradford")
    expected = colour.XYZ_to_Lab(adapted, colour.XYZ_to_xy(d65))
    found = pw.calculate("color-reading", instrument={"lab": lab, "light": "D50"})["lab"]
    assert [found["lightness"], found["a"], found["b"]] == pytest.approx(expected.tolist(), abs=1e-6)


def _smooth(center: float, width: float, low: float, high: float) -> colour.SpectralDistribution:
    """An invented spectrum: a hump or a dip on a flat ground."""
    wavelengths = np.arange(400, 701, 10)
    values = low + (high - low) * np.exp(-(((wavelengths - center) / width) ** 2))
    return colour.SpectralDistribution(values, wavelengths)


CHART = [_smooth(*row) for row in RANDOM.uniform([380, 30, 0.03, 0.03], [720, 150, 0.95, 0.95], (24, 4)).tolist()]


def _in_bands(spectrum: colour.SpectralDistribution) -> tuple[dict[str, Any], colour.SpectralDistribution]:
    bands = spectrum.copy().align(colour.SpectralShape(400, 700, 10))
    return {"bands": {"from_nm": 400, "step_nm": 10, "reflectance": [float(r) for r in bands.values]}}, bands


def _xyz(spectrum: colour.SpectralDistribution, light: str) -> np.ndarray:
    """Every nanometer, the ends going on as they are: what the weights of ASTM E308 stand for."""
    observer = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"]
    shape = colour.SpectralShape(360, 780, 1)
    fine = spectrum.copy().interpolate(colour.SpectralShape(400, 700, 1))
    fine = fine.extrapolate(shape)
    cmfs = observer.copy().align(shape)
    source = colour.SDS_ILLUMINANTS[light].copy().align(shape)
    weights = source.values[:, None] * cmfs.values
    xyz: np.ndarray = (fine.values[:, None] * weights).sum(0) / weights[:, 1].sum()
    return xyz


@pytest.mark.parametrize("spectrum", CHART)
def test_bands(spectrum: colour.SpectralDistribution) -> None:
    """The colors of a chart from its spectra."""
    given, bands = _in_bands(spectrum)
    white = _xyz(colour.sd_ones(colour.SpectralShape(400, 700, 10)), "D65")
    expected = colour.XYZ_to_Lab(_xyz(bands, "D65"), colour.XYZ_to_xy(white))
    found = pw.calculate("color-reading", instrument=given)["lab"]
    assert [found["lightness"], found["a"], found["b"]] == pytest.approx(expected.tolist(), abs=0.03)


@pytest.mark.parametrize("spectrum", CHART[:6])
@pytest.mark.parametrize("step", [1, 10, 20])
def test_tables(spectrum: colour.SpectralDistribution, step: int, tmp_path: pathlib.Path) -> None:
    """The table that colour-science writes of a spectrum is the spectrum in bands."""
    table = tmp_path / "reading.csv"
    bands = spectrum.copy().interpolate(colour.SpectralShape(400, 700, step))
    colour.write_sds_to_csv_file({"piece": bands}, str(table))
    read = {"rows": table.read_text(), "stated_in": "fraction"}
    by = max(step, 10)
    given = {"from_nm": 400, "step_nm": by, "reflectance": [float(bands[nm]) for nm in range(400, 701, by)]}
    ways: list[dict[str, Any]] = [{"csv": read}, {"bands": given}]
    found, expected = (pw.calculate("color-reading", instrument=color)["lab"] for color in ways)
    assert [found["lightness"], found["a"], found["b"]] == pytest.approx(
        [expected["lightness"], expected["a"], expected["b"]], abs=1e-9
    )


@pytest.mark.parametrize(("one", "other"), [(CHART[i], CHART[i + 1]) for i in range(0, 22, 3)])
def test_lights(one: colour.SpectralDistribution, other: colour.SpectralDistribution) -> None:
    """CIE 15, special index: the second corrected by XYZ ratios under D65, then ΔE*ab in the other light."""
    (first, first_bands), (second, second_bands) = _in_bands(one), _in_bands(other)
    answer = pw.calculate("color-lights", color=first, other_color=second)
    for found in answer["lights"]:
        light = found["light"]
        white = _xyz(colour.sd_ones(colour.SpectralShape(400, 700, 10)), light)
        ratio = _xyz(first_bands, "D65") / _xyz(second_bands, "D65")
        labs = [
            colour.XYZ_to_Lab(xyz, colour.XYZ_to_xy(white))
            for xyz in (_xyz(first_bands, light), _xyz(second_bands, light) * ratio)
        ]
        expected = float(np.linalg.norm(np.subtract(*labs)))
        assert found["index"] == pytest.approx(expected, abs=0.1)
