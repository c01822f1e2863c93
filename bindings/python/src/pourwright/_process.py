"""Softener, vacuum, water, and the fall of a piece."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from ._call import checked, number, real, word
from ._native import ffi, lib
from ._struct import left_out, struct

Scale = Literal["shore-00", "shore-a"]
"""The scale of a durometer: Shore 00 for very soft pieces, Shore A for rubber-like ones."""

_SCALES: Mapping[str, int] = {"shore-00": lib.POUR_SHORE_00, "shore-a": lib.POUR_SHORE_A}

Points = Sequence[tuple[float, float]]
"""Hardnesses that the shop has measured, 2 to 64 by rising ratio: mass of softener or hardener per mass of
base (0 or above), and what the durometer showed (0 to 100)."""


def _points(points: Points) -> Any:
    """Points for C; cffi would fill up a point that lacks its reading, with a 0."""
    if not isinstance(points, Iterable):
        raise TypeError(f"points must be a sequence of pairs, not {type(points).__name__}.")
    return ffi.new("pour_hardness_point[]", [_point(f"points/{index}", point) for index, point in enumerate(points)])


def _point(place: str, point: object) -> tuple[float, float]:
    pair = list(point) if isinstance(point, Iterable) else [point]
    if len(pair) != 2:
        raise ValueError(f"{place} must be two numbers, a ratio and a reading, not {len(pair)}.")
    return real(f"{place}/ratio", pair[0]), real(f"{place}/reading", pair[1])


def hardness(points: Points, ratio: float, *, scale: Scale) -> float:
    """The hardness that a ratio of softener or hardener gives: a monotone cubic through the points.

    Args:
        points: The shop's own measured points.
        ratio: Mass of softener or hardener per mass of base, between the points.
        scale: The scale of all readings; scales do not convert.

    Raises:
        ValueError: A point that is not two numbers.
        PourwrightError: Points that make no curve, a ratio outside them.
    """
    array = _points(points)
    return number(lib.pour_hardness, array, len(array), word(_SCALES, "scale", scale), real("ratio", ratio))


def softener_ratio(points: Points, reading: float, *, scale: Scale) -> float:
    """The ratio of softener or hardener that gives a hardness: the other way round.

    Args:
        points: The shop's own measured points; their readings must rise or fall all the way.
        reading: The hardness that is wanted, between the points.
        scale: The scale of all readings.

    Raises:
        ValueError: A point that is not two numbers.
        PourwrightError: Points that make no curve, a hardness outside them.
    """
    array = _points(points)
    return number(lib.pour_softener_ratio, array, len(array), word(_SCALES, "scale", scale), real("reading", reading))


def swollen_volume(
    liquid_ml: float, air: float, absolute_kpa: float, local_kpa: float, vapor_kpa: float = 0.0
) -> float:
    """What a pot takes up in a vacuum with the air that it holds, in mL.

    V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]

    A cracked or weak vessel collapses: use a chamber made for it, and eye protection.

    Args:
        liquid_ml: Volume of the liquid without air; above 0.
        air: Share φ of air in the mix before the pump runs, 0 to below 1.
        absolute_kpa: Pressure in the chamber.
        local_kpa: Pressure of the air outside: a barometer's, not reduced to sea level.
        vapor_kpa: Vapor pressure of the liquid; 0 for a dry plasticizer.

    Raises:
        PourwrightError: It boils; a vacuum that the local air cannot give; a number that cannot be.
    """
    return number(
        lib.pour_swollen_volume,
        real("liquid_ml", liquid_ml),
        real("air", air),
        real("absolute_kpa", absolute_kpa),
        real("local_kpa", local_kpa),
        real("vapor_kpa", vapor_kpa),
    )


def water_density(at_celsius: float) -> float:
    """Density of air-free water, in g/mL (Tanaka et al. 2001).

    Args:
        at_celsius: Temperature, 0 to 40 °C.

    Raises:
        PourwrightError: A temperature outside the range.
    """
    return number(lib.pour_water_density, real("at_celsius", at_celsius))


def cavity_of_water(water_g: float, at_celsius: float, air_kpa: float = 101.325) -> float:
    """Volume of a cavity from what the balance reads for the water in it, in mL.

    Measure cold: a drop of water in a hot mold erupts. Dry the mold before it is poured.

    Args:
        water_g: The reading, in air; above 0.
        at_celsius: Temperature of the water, 0 to 40 °C.
        air_kpa: Local pressure of the air, 45 to 110 kPa; not that of a weather report.

    Raises:
        PourwrightError: A number that is not finite or out of its range.
    """
    return number(
        lib.pour_cavity_of_water, real("water_g", water_g), real("at_celsius", at_celsius), real("air_kpa", air_kpa)
    )


@dataclass(frozen=True, kw_only=True)
class Body:
    """A piece apart from its density, and the water.

    Attributes:
        piece_ml: Volume of the piece without its hook; above 0.
        diameter_mm: Mean diameter; above 0.
        length_mm: Length of a stick that falls sideways, at least 2.01 diameters; a ball where left out.
        hook_g: Mass of hook and weight; 0 or above.
        hook_ml: Volume that they displace; 0 or above.
        water_celsius: Temperature of the water, 0 to 40 °C.
        salinity: Practical salinity of the water: 0 fresh, about 35 in the ocean.
    """

    piece_ml: float
    diameter_mm: float
    length_mm: float | None = left_out("a ball")
    hook_g: float = 0.0
    hook_ml: float = 0.0
    water_celsius: float
    salinity: float = 0.0


@dataclass(frozen=True)
class Fall:
    """A fall, as a model has it: it lies between the two bounds.

    Attributes:
        speed_cm_per_s: Final speed.
        slowest_cm_per_s: Lower bound of the speed.
        fastest_cm_per_s: Upper bound of the speed.
        reynolds: Reynolds number.
        drag_coefficient: Drag coefficient, on length times diameter of a stick and the cross-section of a
            ball.
        motion: Whether it falls straight, as the model has it.
    """

    speed_cm_per_s: float
    slowest_cm_per_s: float
    fastest_cm_per_s: float
    reynolds: float
    drag_coefficient: float
    motion: Literal["straight", "may-swing", "swings"]


_MOTIONS: Mapping[int, Literal["straight", "may-swing", "swings"]] = {
    lib.POUR_STRAIGHT: "straight",
    lib.POUR_MAY_SWING: "may-swing",
    lib.POUR_SWINGS: "swings",
}


def sink_rate(body: Body, density_g_per_ml: float) -> Fall:
    """How fast a piece sinks, its voids and salt counted in its density.

    A model value: the bounds say how far to trust it, and ``motion`` whether the model is about such a
    fall at all.

    Raises:
        PourwrightError: A piece that floats, with the density at which it would not; a fall outside the
            published drag; a number that cannot be.
    """
    made = struct("pour_body", Body, "body", body)
    fall = ffi.new("pour_fall *")
    checked(lib.pour_sink_rate, made, real("density_g_per_ml", density_g_per_ml), fall)
    return Fall(
        speed_cm_per_s=fall.speed_cm_per_s,
        slowest_cm_per_s=fall.slowest_cm_per_s,
        fastest_cm_per_s=fall.fastest_cm_per_s,
        reynolds=fall.reynolds,
        drag_coefficient=fall.drag_coefficient,
        motion=_MOTIONS[fall.motion],
    )


def density_for_sink_rate(body: Body, speed_cm_per_s: float) -> float:
    """The density at which a piece sinks so fast, in g/mL: what salt has to bring it to.

    Raises:
        PourwrightError: A hook too heavy for the speed; a fall outside the published drag; a number that
            cannot be.
    """
    made = struct("pour_body", Body, "body", body)
    return number(lib.pour_density_for_sink_rate, made, real("speed_cm_per_s", speed_cm_per_s))
