"""Air, water, drag, hardness: against libraries of those fields."""

from __future__ import annotations

import math

import ambiance
import fluids.drag
import gsw
import numpy as np
import pytest
from scipy.interpolate import PchipInterpolator

import pourwright as pw

RANDOM = np.random.default_rng(20270302)


@pytest.mark.parametrize("altitude_m", [0.0, 1.0, 100.0, 640.0, 1500.0, 3000.0, 5500.0, 8848.0])
def test_standard_atmosphere(altitude_m: float) -> None:
    """ambiance 1.3.1, the ICAO Standard Atmosphere 1993: in this layer that of the U.S. 1976, but for the digits of R."""
    expected = ambiance.Atmosphere(altitude_m).pressure[0]
    air = pw.calculate("air", altitude=f"{altitude_m!r} m")
    assert pw.convert_number(air["pressure"]["value"], air["pressure"]["unit"], "Pa") == pytest.approx(
        expected, rel=1e-6
    )


@pytest.mark.parametrize("salinity", [0.0, 5.0, 12.0, 20.0, 35.0, 40.0])
@pytest.mark.parametrize("celsius", [0.0, 4.0, 12.0, 20.0, 25.0, 39.0])
def test_sea_water(celsius: float, salinity: float) -> None:
    """gsw 3.6.23 (TEOS-10), the whole Gibbs function at the surface, for the reference composition: the same formulation
    as ours, so that they agree to rounding. Density in g/mL from kg/m³."""
    expected = gsw.rho_t_exact(gsw.SR_from_SP(salinity), celsius, 0.0) / 1000
    sinking = pw.calculate(
        "sink",
        body={"ball": {"diameter": "26 mm"}},
        piece_volume="9.2 mL",
        fished_water={"temperature": f"{celsius!r} °C", "salinity_practical": salinity},
        piece_density="1.2 g/mL",
    )
    assert sinking["water"]["value"] == pytest.approx(expected, rel=1e-9)


@pytest.mark.parametrize("celsius", [0.0, 4.0, 10.0, 20.0, 30.0, 40.0])
def test_fresh_water(celsius: float) -> None:
    """gsw 3.6.23 at salinity 0 (IAPWS-09), next to Tanaka et al. 2001: two equations, whose standard uncertainty is 1e-6.
    At the ends of the range they part by a few millionths."""
    assert pw.water_density(celsius) == pytest.approx(gsw.rho_t_exact(0.0, celsius, 0.0) / 1000, rel=5e-6)


def ball(diameter_mm: float, celsius: float, density: float) -> pw.SinkRateResult:
    volume_ml = math.pi / 6 * diameter_mm**3 / 1000
    return pw.sink_rate(density, volume_ml, diameter_mm, celsius)


BALLS = [(0.5, 1.01), (1.0, 1.05), (3.0, 1.02), (8.0, 1.05), (16.0, 1.1), (16.0, 1.3), (26.0, 1.9)]


@pytest.mark.parametrize(("diameter_mm", "density"), BALLS)
def test_drag_of_a_ball(diameter_mm: float, density: float) -> None:
    """fluids 1.3.1: the same standard drag curve (Clift), another published one, and the balance that it solves."""
    fall = ball(diameter_mm, 20.0, density)
    assert fall.drag_coefficient == pytest.approx(fluids.drag.Clift(fall.reynolds), rel=1e-9)
    # Other curves lie within 7 % of it (core/src/process/drag.rs); Barati's high one is through the same data.
    assert fall.drag_coefficient == pytest.approx(fluids.drag.Barati_high(fall.reynolds), rel=0.07)
    water = pw.calculate("sink", body={"ball": {"diameter": "12 mm"}}, piece_volume="0.9 mL",
                         fished_water={"temperature": "20 °C"}, piece_density="1.5 g/mL")["water"]["value"] * 1000  # fmt: skip
    viscosity = water * fall.sink_rate_cm_per_s / 100 * diameter_mm / 1000 / fall.reynolds
    expected = fluids.drag.v_terminal(
        D=diameter_mm / 1000, rhop=density * 1000, rho=water, mu=viscosity, Method="Clift"
    )
    assert fall.sink_rate_cm_per_s / 100 == pytest.approx(expected, rel=1e-6)


@pytest.mark.parametrize("points", [2, 3, 5, 12])
@pytest.mark.parametrize("rising", [False, True])
def test_hardness(points: int, rising: bool) -> None:
    """SciPy 1.17.1, PchipInterpolator (Fritsch and Butland's slopes), inside the points."""
    ratios = np.cumsum(RANDOM.uniform(0.01, 0.1, points))
    readings = np.sort(RANDOM.uniform(5, 95, points))[:: 1 if rising else -1]
    curve = PchipInterpolator(ratios, readings)
    shop = list(zip(ratios.tolist(), readings.tolist()))
    for ratio in np.linspace(ratios[0], ratios[-1], 50)[1:-1]:
        reading = pw.hardness(shop, "shore-a", float(ratio))
        assert reading == pytest.approx(float(curve(ratio)), rel=1e-12)
        # SciPy's own inverse.
        (expected,) = curve.solve(reading, extrapolate=False)
        assert pw.softener_ratio(shop, "shore-a", reading) == pytest.approx(expected, rel=1e-9)
    for outside in (float(ratios[0]) - 0.005, float(ratios[-1]) + 0.005):
        with pytest.raises(pw.PourwrightError):
            pw.hardness(shop, "shore-a", outside)
