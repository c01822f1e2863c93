"""Numbers worked out by hand or by the request of the same name; prepared conversions; that nothing of C is left out."""

from __future__ import annotations

import re
from typing import Any

import pytest

import pourwright as pw

from .conftest import ROOT

CUP_ML = 236.5882365


def test_conversion() -> None:
    assert pw.convert_number(1.25, "cup", "mL") == 1.25 * CUP_ML
    assert pw.convert_number(1.0, "cup", "mL", measures="us-label") == 240.0
    assert pw.convert_number(-40.0, "°F", "°C") == -40.0
    assert pw.convert("48 tsp", "cup") == 1.0
    assert pw.convert("1 pt", "mL", measures="imperial") == 568.26125
    to_ml = pw.Conversion("[tsp_us]", "mL", measures="metric")
    assert to_ml(48.0) == CUP_ML
    assert repr(to_ml) == "Conversion('[tsp_us]', 'mL', measures='metric')"
    with pytest.raises(pw.PourwrightError) as caught:
        to_ml(-1.0)
    assert caught.value.code == "outside-conversion"
    with pytest.raises(pw.PourwrightError):
        pw.Conversion("cup", "g")


def test_doses() -> None:
    assert pw.dose_mass("1/4 cup", "salt", as_scooped_g_per_ml=1.22) == pytest.approx(1.22 * CUP_ML / 4, rel=1e-15)
    dose = pw.dose_mass("1 tsp", "salt", as_scooped_g_per_ml=1.22, measures="metric")
    assert dose == pytest.approx(6.1, rel=1e-15)
    assert pw.dose_mass("40 drops", "colorant", drop_mass_g=0.044) == pytest.approx(1.76)
    with pytest.raises(pw.PourwrightError) as caught:
        pw.dose_mass("1 tsp", "salt", material_density_g_per_ml=2.165)
    assert caught.value.path in ("/as_scooped_g_per_ml", "/amount", "")


def test_masses_and_densities() -> None:
    assert pw.mass_of_volume(200.0, 1.03) == pytest.approx(206.0, rel=1e-15)
    assert pw.volume_of_mass(206.0, 1.03) == pytest.approx(200.0, rel=1e-15)
    found = pw.density_of_parts([(206.0, 1.03), (43.3, 2.165)], voids=0.1)
    assert found == pytest.approx(249.3 / 220.0 * 0.9, rel=1e-15)
    with pytest.raises(pw.PourwrightError):
        pw.density_of_parts([(0.0, 1.0)])


def test_salt() -> None:
    grams = pw.salt_for_density(200.0, 1.03, 2.165, 1.12)
    # ρ(V + m/ρ_s) = M + m
    assert (206.0 + grams) / (200.0 + grams / 2.165) == pytest.approx(1.12, rel=1e-14)
    mix = (200.0, 1.03, 2.165)
    assert pw.salt_mass(*mix, "finished-density", 1.12).salt_mass_g == pytest.approx(grams, rel=1e-14)
    of_base = pw.salt_convert(*mix, "finished-density", 1.12, "of-base").loading
    assert of_base == pytest.approx(grams / 206.0)
    scooped = pw.salt_convert(*mix, "of-base", grams / 206.0, "as-scooped", salt_as_scooped_g_per_ml=1.22).loading
    assert scooped == pytest.approx(grams / 1.22 / 200.0)
    with pytest.raises(pw.PourwrightError) as caught:
        pw.salt_mass(*mix, "finished-density", 2.0)
    assert caught.value.code == "salt-out-of-reach"


def test_a_feed_that_is_not_known_has_bounds() -> None:
    shot = pw.piece_mass(10.0, 1.05, hot_density_g_per_ml=0.98)
    assert [shot.piece_mass_min_g, shot.piece_mass_g, shot.piece_mass_max_g] == pytest.approx([9.8, 10.15, 10.5])
    known = pw.piece_mass(10.0, 1.05, hot_density_g_per_ml=0.98, feed=0.0)
    assert known.piece_mass_g == known.piece_mass_min_g == known.piece_mass_max_g == pytest.approx(9.8)


def test_shots() -> None:
    fill = pw.shot_fill(4, 9.5, 1.04, hot_density_g_per_ml=0.95, sprue_volume_ml=6.0, feed=0.6)
    assert fill.piece_mass_g == pytest.approx(9.5 * (0.95 + 0.6 * 0.09), rel=1e-14)
    assert fill.shot_mass_g == pytest.approx((4 * 9.5 + 6.0) * 0.95, rel=1e-14)
    assert fill.pieces_mass_g + fill.sprue_mass_g == pytest.approx(fill.shot_mass_g, rel=1e-14)
    assert fill.missing_mass_g == 0.0 and fill.fed == pytest.approx(0.6)
    assert pw.shots(24, 4).shots == 6
    assert pw.shots(24, 4, rejects=0.05).shots > 6


def test_bench() -> None:
    tsp = pw.convert("1 tsp", "mL")
    bench: dict[str, Any] = {"balance_readability_g": 0.1, "balance_least_load_g": 0.5, "balance_capacity_g": 500.0}
    bench |= {"spoons_ml": [3 * tsp, tsp], "drop_mass_g": 0.044}
    weighed = pw.bench_measure(12.34, **bench)
    assert (weighed.tool, weighed.acts) == ("balance", 1)
    dropped = pw.bench_measure(0.22, **bench)
    assert (dropped.tool, dropped.drops) == ("drops", 5)
    spooned = pw.bench_measure(1.22 * 4 * tsp, spoons_ml=[3 * tsp, tsp], as_measured_density_g_per_ml=1.22)
    assert (spooned.tool, spooned.spoonfuls[:2]) == ("spoons", (1, 1))


def test_water_and_vacuum() -> None:
    # ISO 4787, table B.1, reads 1.0029 mL/g at 20 °C and 101.3 kPa.
    assert pw.cavity_of_water(10.0, 20.0) == pytest.approx(10.029, abs=5e-4)
    assert pw.water_density(4.0) == pytest.approx(0.99997, abs=1e-5)


def test_sinking_there_and_back() -> None:
    stick: dict[str, Any] = {
        "piece_volume_ml": 9.5,
        "diameter_mm": 10.0,
        "length_mm": 121.0,
        "water_temperature_celsius": 20.0,
    }
    fall = pw.sink_rate(1.1, **stick)
    assert fall.sink_rate_min_cm_per_s < fall.sink_rate_cm_per_s < fall.sink_rate_max_cm_per_s
    assert fall.motion == "swings" and fall.reynolds > 300
    assert pw.density_for_sink_rate(fall.sink_rate_cm_per_s, **stick) == pytest.approx(1.1, rel=1e-9)


def test_every_c_function_is_offered() -> None:
    """Each exported function is called by the package: nothing of the C library is left out."""
    symbols = (ROOT / "ffi" / "symbols.txt").read_text("utf-8").split()
    sources = (ROOT / "bindings" / "python" / "src" / "pourwright").glob("*.py")
    used = set(re.findall(r"lib\.(pour_\w+)", "\n".join(source.read_text("utf-8") for source in sources)))
    # The status of an error is that of the call; a plan is always made within a budget, which may be the default; faults are
    # an exception, or the text of answer_text.
    assert set(symbols) - used == {"pour_answer", "pour_book_plan", "pour_error_status"}
    assert used <= set(symbols)
