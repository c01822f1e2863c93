"""Masses, volumes, densities, and how a bench measures them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from ._call import MEASURES, Measures, c_text, checked, instance, number, real, reals, word
from ._native import ffi, lib
from ._struct import left_out, struct

Kind = Literal[
    "plastisol",
    "softener",
    "hardener",
    "stabilizer",
    "colorant",
    "pearl",
    "flake",
    "salt",
    "scent",
    "other",
]
"""What a material is for."""

KINDS: Mapping[str, int] = {
    "plastisol": lib.POUR_PLASTISOL,
    "softener": lib.POUR_SOFTENER,
    "hardener": lib.POUR_HARDENER,
    "stabilizer": lib.POUR_STABILIZER,
    "colorant": lib.POUR_COLORANT,
    "pearl": lib.POUR_PEARL,
    "flake": lib.POUR_FLAKE,
    "salt": lib.POUR_SALT,
    "scent": lib.POUR_SCENT,
    "other": lib.POUR_OTHER,
}


@dataclass(frozen=True, kw_only=True)
class Material:
    """A material. What is left out is not known; a calculation that needs it says so.

    Attributes:
        name: Its name.
        kind: What it is for.
        density_g_per_ml: True density at 20 °C; of a plastisol, that of the liquid.
        fused_g_per_ml: Density of a fused plastisol; the liquid one where left out.
        as_scooped_g_per_ml: Density of a powder in a level spoon.
        drop_g: Mass of one drop of a liquid; 1/20 mL (pharmacy practice) where left out.
        expansion_per_kelvin: Volumetric thermal expansion; none where left out.
    """

    name: str
    kind: Kind
    density_g_per_ml: float | None = left_out("one that is not known")
    fused_g_per_ml: float | None = left_out("the liquid density")
    as_scooped_g_per_ml: float | None = left_out("one that is not known")
    drop_g: float | None = left_out("1/20 mL")
    expansion_per_kelvin: float | None = left_out("none")


def material_struct(place: str, material: Material) -> tuple[Any, Any]:
    """The C struct of a material, and its name, which must live as long."""
    name = ffi.new("char[]", c_text(f"{place}/name", instance(place, material, Material).name))
    kind = word(KINDS, f"{place}/kind", material.kind)
    return struct("pour_material", Material, place, material, name=name, kind=kind), name


def dose_mass(material: Material, amount: str, *, measures: Measures = "us-customary") -> float:
    """Mass of an amount of a material as a person writes it, in g.

    Liquids by their density, powders as scooped, drops by the material's own drop.

    Args:
        material: The material.
        amount: ``"1/4 tsp"``, ``"40 drops"``, ``"12.5 g"``.
        measures: What a cup and a spoon hold.

    Raises:
        PourwrightError: A number that this takes is not known; an amount that is none of a material.
    """
    made, name = material_struct("material", material)
    mass = number(lib.pour_dose_mass, made, c_text("amount", amount), word(MEASURES, "measures", measures))
    del name
    return mass


def mass_of_volume(volume_ml: float, density_g_per_ml: float) -> float:
    """Mass of a volume, in g: m = ρV.

    Args:
        volume_ml: Volume, 0 to 1e15 mL.
        density_g_per_ml: How the measure is filled: a liquid's density, a powder's *as scooped*; above 0.
            For what a solid displaces in a mix it is its true density.

    Raises:
        PourwrightError: A number that is not finite or out of its range.
    """
    return number(lib.pour_mass_of_volume, real("volume_ml", volume_ml), real("density_g_per_ml", density_g_per_ml))


def volume_of_mass(mass_g: float, density_g_per_ml: float) -> float:
    """Volume of a mass, in mL: V = m/ρ.

    Args:
        mass_g: Mass, 0 to 1e15 g.
        density_g_per_ml: As in :func:`mass_of_volume`.

    Raises:
        PourwrightError: A number that is not finite or out of its range.
    """
    return number(lib.pour_volume_of_mass, real("mass_g", mass_g), real("density_g_per_ml", density_g_per_ml))


def density_of_parts(masses_g: Sequence[float], densities_g_per_ml: Sequence[float], voids: float = 0.0) -> float:
    """Density at 20 °C of constituents mixed, in g/mL: ρ = Σm/(Σm/ρ) · (1 − voids).

    Args:
        masses_g: Mass of each constituent, 0 or above, not all 0.
        densities_g_per_ml: True density of each, above 0.
        voids: Share of the volume that is air, 0 to below 1.

    Raises:
        ValueError: The two sequences are not of the same length.
        PourwrightError: A number that is not finite or out of its range.
    """
    masses, densities = reals("masses_g", masses_g), reals("densities_g_per_ml", densities_g_per_ml)
    if len(masses) != len(densities):
        raise ValueError(f"{len(masses)} masses do not go with {len(densities)} densities.")
    return number(
        lib.pour_density_of_parts,
        len(masses),
        ffi.new("double[]", masses),
        ffi.new("double[]", densities),
        real("voids", voids),
    )


def flake_count(cut: str, thickness_um: float, film_g_per_ml: float, dose_g: float) -> float:
    """How many particles a dose of flake holds, a nominal number: m/(A · h · ρ).

    Args:
        cut: The cut as the trade writes it: ``".035"``, ``"1/64 hex"``, ``"0.4 mm square"``.
        thickness_um: Thickness of the film, in µm; above 0.
        film_g_per_ml: Density of the film; above 0.
        dose_g: Mass of the dose; 0 or above.

    Raises:
        PourwrightError: A cut that cannot be read; a number that is not finite or out of its range.
    """
    return number(
        lib.pour_flake_count,
        c_text("cut", cut),
        real("thickness_um", thickness_um),
        real("film_g_per_ml", film_g_per_ml),
        real("dose_g", dose_g),
    )


@dataclass(frozen=True, kw_only=True)
class Bench:
    """The tools on a bench, and how a material is measured with them.

    Attributes:
        balance_reads_g: The smallest difference that the balance shows; no balance where left out.
        balance_from_g: The least that it is trusted with.
        balance_to_g: The most that it weighs at once; 5000 times ``balance_reads_g`` where left out.
        spoons_ml: The spoons, at most 8.
        as_measured_g_per_ml: The material in a spoon: a liquid's density, a powder's as scooped; not
            measured by spoon where left out.
        drop_g: One drop of it; not dropped where left out.
    """

    balance_reads_g: float | None = left_out("no balance")
    balance_from_g: float = 0.0
    balance_to_g: float | None = left_out("5000 times what it reads")
    spoons_ml: Sequence[float] = ()
    as_measured_g_per_ml: float | None = left_out("a material that is not measured by spoon")
    drop_g: float | None = left_out("a material that is not dropped")


@dataclass(frozen=True)
class Measure:
    """The way to measure a mass with the least handling.

    Attributes:
        mass_g: What it gives.
        deviation: (given − wanted)/wanted.
        tool: What it is measured with.
        acts: How much handling it is: readings, spoonfuls, tens of drops.
        drops: How many drops; 0 with another tool.
        spoonfuls: How many spoonfuls of each spoon, in the order of the bench.
    """

    mass_g: float
    deviation: float
    tool: Literal["balance", "spoons", "drops"]
    acts: int
    drops: int
    spoonfuls: tuple[int, ...]


_TOOLS: Mapping[int, Literal["balance", "spoons", "drops"]] = {
    lib.POUR_BALANCE: "balance",
    lib.POUR_SPOONS: "spoons",
    lib.POUR_DROPS: "drops",
}


def bench_measure(bench: Bench, mass_g: float, tolerance: float) -> Measure:
    """How to measure a mass of a material with the least handling.

    Args:
        bench: The tools, and the material in them.
        mass_g: The mass that is wanted; above 0.
        tolerance: Largest relative error that is accepted, 0.05 for 5 %; above 0, below 1.

    Raises:
        PourwrightError: No tool keeps the tolerance (the help says from what mass on it would do), or a
            number that cannot be.
    """
    spoons = reals("bench/spoons_ml", instance("bench", bench, Bench).spoons_ml)
    array = ffi.new("double[]", spoons)
    made = struct("pour_bench", Bench, "bench", bench, spoons_ml=array, spoons=len(spoons))
    way = ffi.new("pour_measure *")
    checked(lib.pour_bench_measure, made, real("mass_g", mass_g), real("tolerance", tolerance), way)
    return Measure(
        mass_g=way.mass_g,
        deviation=way.deviation,
        tool=_TOOLS[way.tool],
        acts=way.acts,
        drops=way.drops,
        spoonfuls=tuple(way.spoonfuls)[: len(spoons)],
    )
