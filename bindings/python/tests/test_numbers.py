"""Every scalar call: its value by hand or by the request of the same name, and what it refuses."""

from __future__ import annotations

import re
from collections.abc import Callable

import pytest

import pourwright as pw

from .conftest import ROOT

CUP_ML = 236.5882365
SALT = pw.Material(name="salt", kind="salt", density_g_per_ml=2.165, as_scooped_g_per_ml=1.22)


def test_convert() -> None:
    assert pw.convert(1.25, "cup", "mL") == 1.25 * CUP_ML
    assert pw.convert(1.0, "cup", "mL", measures="us-label") == 240.0
    assert pw.convert(1.0, "cup", "mL", measures="metric") == 250.0
    assert pw.convert(-40.0, "°F", "°C") == -40.0
    assert pw.convert_amount("48 tsp", "cup") == 1.0
    assert pw.convert_amount("1 pt", "mL", measures="imperial") == 568.26125
    with pytest.raises(pw.PourwrightError) as caught:
        pw.convert(1.0, "oz", "g")
    assert caught.value.path == "/from"
    with pytest.raises(pw.PourwrightError):
        pw.convert(-1.0, "cup", "mL")


def test_conversion() -> None:
    to_ml = pw.Conversion("[tsp_us]", "mL", measures="metric")
    assert to_ml(48.0) == CUP_ML
    assert repr(to_ml) == "Conversion('[tsp_us]', 'mL', measures='metric')"
    with pytest.raises(pw.PourwrightError) as caught:
        to_ml(-1.0)
    assert caught.value.code == "outside-conversion"
    with pytest.raises(pw.PourwrightError):
        pw.Conversion("cup", "g")


def test_doses() -> None:
    assert pw.dose_mass(SALT, "1/4 cup") == pytest.approx(1.22 * CUP_ML / 4, rel=1e-15)
    assert pw.dose_mass(SALT, "1 tsp", measures="metric") == pytest.approx(6.1, rel=1e-15)
    assert pw.dose_mass(pw.Material(name="blue", kind="colorant", drop_g=0.044), "40 drops") == pytest.approx(1.76)
    with pytest.raises(pw.PourwrightError) as caught:
        pw.dose_mass(pw.Material(name="salt", kind="salt", density_g_per_ml=2.165), "1 tsp")
    assert caught.value.code == "missing-property"
    with pytest.raises(ValueError, match="kind must be one of"):
        pw.dose_mass(pw.Material(name="x", kind="sand"), "1 g")  # type: ignore[arg-type]


def test_masses_and_densities() -> None:
    assert pw.mass_of_volume(200.0, 1.03) == pytest.approx(206.0, rel=1e-15)
    assert pw.volume_of_mass(206.0, 1.03) == pytest.approx(200.0, rel=1e-15)
    assert pw.density_of_parts([206.0, 43.3], [1.03, 2.165], 0.1) == pytest.approx(249.3 / 220.0 * 0.9, rel=1e-15)
    with pytest.raises(ValueError, match="do not go with"):
        pw.density_of_parts([1.0], [1.0, 2.0])
    with pytest.raises(pw.PourwrightError):
        pw.density_of_parts([0.0], [1.0])


def test_flake() -> None:
    # A square of 0.4 mm and 50 µm at 1.4 g/mL weighs 11.2 µg.
    assert pw.flake_count("0.4 mm square", 50.0, 1.4, 1.12) == pytest.approx(1e5, rel=1e-12)
    with pytest.raises(pw.PourwrightError):
        pw.flake_count("round", 50.0, 1.4, 1.0)


def test_salt() -> None:
    mix = pw.Unsalted(base_ml=200.0, base_g_per_ml=1.03, salt_g_per_ml=2.165, salt_as_scooped_g_per_ml=1.22)
    grams = pw.salt_mass(mix, "finished-density", 1.12)
    # ρ(V + m/ρ_s) = M + m
    assert (206.0 + grams) / (200.0 + grams / 2.165) == pytest.approx(1.12, rel=1e-14)
    assert pw.salt_for_density(200.0, 1.03, 2.165, 0.0, 1.12) == pytest.approx(grams, rel=1e-14)
    assert pw.salt_convert(mix, "finished-density", 1.12, "of-base") == pytest.approx(grams / 206.0)
    assert pw.salt_convert(mix, "of-base", grams / 206.0, "as-scooped") == pytest.approx(grams / 1.22 / 200.0)
    least, most = pw.salt_reach(mix, "finished-density")
    assert least == pytest.approx(1.03) and most == pytest.approx(0.7 * 1.03 + 0.3 * 2.165)
    with pytest.raises(pw.PourwrightError) as caught:
        pw.salt_mass(mix, "finished-density", 2.0)
    assert caught.value.code == "salt-out-of-reach"
    with pytest.raises(pw.PourwrightError):
        pw.salt_reach(mix, "piece")


def test_shots() -> None:
    fill = pw.shot_fill(
        pw.Shot(cavity_ml=9.5, cavities=4, sprue_ml=6.0, cold_g_per_ml=1.04, hot_g_per_ml=0.95, feed=0.6)
    )
    piece = pw.piece_mass(9.5, 0.95, 1.04, 0.0, 0.6)
    assert piece == pytest.approx(9.5 * (0.95 + 0.6 * 0.09), rel=1e-14)
    assert fill.piece_g == pytest.approx(piece, rel=1e-14)
    assert fill.fill_g == pytest.approx((4 * 9.5 + 6.0) * 0.95, rel=1e-14)
    assert fill.pieces_g + fill.sprue_g == pytest.approx(fill.fill_g, rel=1e-14)
    assert fill.missing_g == 0.0 and fill.feed == pytest.approx(0.6)
    assert pw.shots(24, 4) == 6
    assert pw.shots(24, 4, 0.05) > 6
    assert pw.shots(24, 4, 0.05, 0.999) > pw.shots(24, 4, 0.05, 0.5)


def test_batch_is_that_of_the_request() -> None:
    batch = pw.Batch(
        pieces=24, cavities=4, shot_g=41.4, shot_g_per_ml=0.93, injector_holds_ml=pw.convert(4, "fl oz", "mL"),
        injector_keeps_ml=4.0, sprue_g=5.4, returned=0.5, film_g=6.0, heel_g=2.0, cleanings=2, rejects=0.05,
        confidence=0.95,
    )  # fmt: skip
    need = pw.batch_need(batch)
    asked = pw.calculate(
        "batch", pieces=24, cavities=4, per_shot="41.4 g", shot_density="0.93 g/mL", injector_holds="4 fl oz",
        injector_keeps="4 mL", sprue="5.4 g", returned="50 %", film="6 g", heel="2 g", cleanings=2, rejects="5 %",
        confidence="95 %",
    )  # fmt: skip
    assert (need.shots, need.loads, need.shots_per_load) == (
        asked["shots"],
        asked["loads"],
        asked["shots_per_load"],
    )
    assert need.total_g == asked["total"]["value"]
    assert need.kept_g == asked["kept"]["value"]
    assert need.drawn_g == pytest.approx(need.pieces_g + need.sprues_g + need.returned_g)
    assert 1 <= need.shots_in_last <= need.shots_per_load
    with pytest.raises(pw.PourwrightError):
        pw.batch_need(pw.Batch(pieces=24, cavities=4, shot_g=200, shot_g_per_ml=0.93, injector_holds_ml=100))


def test_bench() -> None:
    tsp = pw.convert(1, "tsp", "mL")
    bench = pw.Bench(
        balance_reads_g=0.1, balance_from_g=0.5, balance_to_g=500.0, spoons_ml=[3 * tsp, tsp], drop_g=0.044
    )
    weighed = pw.bench_measure(bench, 12.34, 0.05)
    assert (weighed.tool, weighed.acts) == ("balance", 1)
    assert weighed.mass_g == pytest.approx(12.3)
    dropped = pw.bench_measure(bench, 0.22, 0.05)
    assert (dropped.tool, dropped.drops) == ("drops", 5)
    assert dropped.deviation == pytest.approx(0.0, abs=1e-12)
    spooned = pw.bench_measure(pw.Bench(spoons_ml=[3 * tsp, tsp], as_measured_g_per_ml=1.22), 1.22 * 4 * tsp, 0.05)
    assert (spooned.tool, spooned.spoonfuls) == ("spoons", (1, 1))
    with pytest.raises(pw.PourwrightError):
        pw.bench_measure(pw.Bench(balance_reads_g=1.0, balance_to_g=500.0), 0.1, 0.05)
    with pytest.raises(pw.PourwrightError) as caught:
        pw.bench_measure(pw.Bench(spoons_ml=[1.0] * 9, as_measured_g_per_ml=1.0), 1.0, 0.05)
    assert caught.value.code == "too-large"


def test_water_and_vacuum() -> None:
    # ISO 4787, table B.1, reads 1.0029 mL/g at 20 °C and 101.3 kPa.
    assert pw.cavity_of_water(10.0, 20.0) == pytest.approx(10.029, abs=5e-4)
    assert pw.water_density(4.0) == pytest.approx(0.99997, abs=1e-5)
    assert pw.swollen_volume(100.0, 0.1, 20.0, 100.0) == pytest.approx(100.0 * (1 + 0.1 / 0.9 * 5.0), rel=1e-14)
    refusals: list[Callable[[], object]] = [
        lambda: pw.water_density(50.0),
        lambda: pw.cavity_of_water(10.0, 20.0, 10.0),
        lambda: pw.swollen_volume(100.0, 0.1, 2.0, 100.0, 2.3),
    ]
    for refused in refusals:
        with pytest.raises(pw.PourwrightError):
            refused()


def test_sinking_there_and_back() -> None:
    stick = pw.Body(piece_ml=9.5, diameter_mm=10.0, length_mm=121.0, hook_g=2.0, hook_ml=0.25, water_celsius=20.0)
    fall = pw.sink_rate(stick, 1.1)
    assert fall.slowest_cm_per_s < fall.speed_cm_per_s < fall.fastest_cm_per_s
    assert fall.motion == "swings" and fall.reynolds > 300
    assert pw.density_for_sink_rate(stick, fall.speed_cm_per_s) == pytest.approx(1.1, rel=1e-9)
    ball = pw.Body(piece_ml=0.5, diameter_mm=10.0, water_celsius=0.0, salinity=35.0)
    assert pw.sink_rate(ball, 1.0285).motion in ("straight", "may-swing")
    with pytest.raises(pw.PourwrightError):
        pw.sink_rate(ball, 0.9)


def test_every_c_function_is_offered() -> None:
    """Each exported function is called by the package: nothing of the C library is left out."""
    symbols = (ROOT / "ffi" / "symbols.txt").read_text("utf-8").split()
    sources = (ROOT / "bindings" / "python" / "src" / "pourwright").glob("*.py")
    used = set(re.findall(r"lib\.(pour_\w+)", "\n".join(source.read_text("utf-8") for source in sources)))
    # The status of an error is that of the call.
    assert set(symbols) - used == {"pour_error_status"}
    assert used <= set(symbols)
