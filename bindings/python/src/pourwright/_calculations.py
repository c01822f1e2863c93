"""The calculations of the library on plain numbers, each with its unit in its name.

Made by ``cargo run -p pourwright-generate``; do not edit.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal, SupportsIndex

from ._call import Arguments, if_count, if_number, if_word, word_at
from ._native import ffi, lib

__all__ = [
    "Alike",
    "AsScoopedOfWeighingsResult",
    "BaseToMarkResult",
    "BatchNeedResult",
    "BenchMeasureResult",
    "BudgetLeftResult",
    "CavityOfWeightsResult",
    "DegasVesselResult",
    "DropOfWeighingsResult",
    "FeedOfWeightsResult",
    "FlakeCountResult",
    "FlakeSwapResult",
    "Form",
    "HeatTimeResult",
    "InjectorLoadsResult",
    "Kind",
    "LeastPotResult",
    "Measures",
    "MixShareResult",
    "Motion",
    "NextBurstResult",
    "Phase",
    "PieceMassResult",
    "PiecePoint",
    "PotHeatsResult",
    "RejectRateResult",
    "ResidueOfWeighingsResult",
    "SaltConvertResult",
    "SaltForSinkRateResult",
    "SaltMassResult",
    "SaltReachResult",
    "Scale",
    "SectionShape",
    "SettingTimeResult",
    "Shape",
    "ShotFillResult",
    "ShotsResult",
    "SinkRateResult",
    "StaysHotResult",
    "StirEveryResult",
    "SwollenVolumeResult",
    "Tool",
    "as_scooped_of_weighings",
    "base_to_mark",
    "batch_need",
    "bench_measure",
    "budget_left",
    "cavity_of_water",
    "cavity_of_weights",
    "color_difference",
    "convert",
    "convert_number",
    "degas_vessel",
    "density_for_sink_rate",
    "density_of_parts",
    "dose_mass",
    "drop_of_weighings",
    "entrained_air",
    "equivalent_time",
    "feed_of_weights",
    "flake_count",
    "flake_swap",
    "hardness",
    "heat_time",
    "injector_loads",
    "least_pot",
    "mass_of_volume",
    "mix_share",
    "next_burst",
    "piece_mass",
    "pot_heats",
    "price",
    "reject_rate",
    "residue_of_weighings",
    "salt_convert",
    "salt_for_density",
    "salt_for_sink_rate",
    "salt_mass",
    "salt_reach",
    "salted_softener",
    "setting_time",
    "shot_fill",
    "shots",
    "sink_rate",
    "softener_ratio",
    "standard_pressure",
    "station_pressure",
    "stays_hot",
    "stir_every",
    "swollen_volume",
    "viscosity_of_ball",
    "volume_of_mass",
    "water_density",
]

Alike = Literal["count", "area"]
"""What the two doses of flake have in common: the number of particles or the area of film."""

ALIKE_WORDS: tuple[Alike, ...] = ("count", "area",)

Form = Literal["as-scooped", "per-volume", "of-base", "of-finished", "finished-density", "piece-mass", "sink-density"]
"""The way in which the salt loading is stated."""

FORM_WORDS: tuple[Form, ...] = ("as-scooped", "per-volume", "of-base", "of-finished", "finished-density", "piece-mass", "sink-density",)

Kind = Literal["plastisol", "softener", "hardener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent", "other"]
"""What the material is for; powders (pearl, flake, salt) are measured as scooped."""

KIND_WORDS: tuple[Kind, ...] = ("plastisol", "softener", "hardener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent", "other",)

Measures = Literal["us-customary", "us-label", "metric", "imperial"]
"""The system of measures: what a cup, a spoon and a fluid ounce hold."""

MEASURES_WORDS: tuple[Measures, ...] = ("us-customary", "us-label", "metric", "imperial",)

Motion = Literal["straight", "may-swing", "swings"]
"""Whether it sinks straight: straight, may-swing or swings."""

MOTION_WORDS: tuple[Motion, ...] = ("straight", "may-swing", "swings",)

Phase = Literal["liquid", "fused"]
"""Whether the plastisol is liquid or fused."""

PHASE_WORDS: tuple[Phase, ...] = ("liquid", "fused",)

PiecePoint = Literal["center", "mean"]
"""The point of a piece whose temperature counts."""

PIECE_POINT_WORDS: tuple[PiecePoint, ...] = ("center", "mean",)

Scale = Literal["shore-00", "shore-a"]
"""The scale of the durometer."""

SCALE_WORDS: tuple[Scale, ...] = ("shore-00", "shore-a",)

SectionShape = Literal["rod", "plate", "ball"]
"""Shape of the thickest part of a piece."""

SECTION_SHAPE_WORDS: tuple[SectionShape, ...] = ("rod", "plate", "ball",)

Shape = Literal["stick", "ball"]
"""Shape of the piece as it sinks: a stick sinks sideways."""

SHAPE_WORDS: tuple[Shape, ...] = ("stick", "ball",)

Tool = Literal["balance", "cup", "spoons", "drops"]
"""The tool: balance, cup, spoons or drops."""

TOOL_WORDS: tuple[Tool, ...] = ("balance", "cup", "spoons", "drops",)


def convert(
    amount: str,
    to: str,
    *,
    measures: Measures | None = None,
) -> float:
    """Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.

    A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.

    >>> convert("1 1/4 cup", "mL")
    295.735295625

    Args:
        amount: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a temperature
            above absolute zero.
        to: The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary.
            One of ``us-customary``, ``us-label``, ``metric``, ``imperial``.

    Returns:
        value: The number, in the unit of `to`.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_convert,
        given.text("amount", amount),
        given.text("to", to),
        given.optional_word(MEASURES_WORDS, "measures", measures),
        result,
    )
    found: float = result[0]
    return found


def convert_number(
    value: float,
    unit: str,
    to: str,
    *,
    measures: Measures | None = None,
) -> float:
    """Converts a number of one unit into another.

    Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between units hold on
    bits: 48 tsp are 1 cup.

    >>> convert_number(48.0, "tsp", "cup")
    1.0

    Args:
        value: The number to convert. Unit: any; 0 or above; a temperature above absolute zero.
        unit: The unit of the number, by trade symbol or UCUM code. A unit.
        to: The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary.
            One of ``us-customary``, ``us-label``, ``metric``, ``imperial``.

    Returns:
        value: The number, in the unit of `to`.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_convert_number,
        given.number("value", value),
        given.text("unit", unit),
        given.text("to", to),
        given.optional_word(MEASURES_WORDS, "measures", measures),
        result,
    )
    found: float = result[0]
    return found


def dose_mass(
    amount: str,
    kind: Kind,
    *,
    material_density_g_per_ml: float | None = None,
    as_scooped_g_per_ml: float | None = None,
    drop_mass_g: float | None = None,
    measures: Measures | None = None,
) -> float:
    """Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.

    A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a
    drop is 1/20 mL (pharmacy practice).

    >>> dose_mass("50 drops", "colorant", material_density_g_per_ml=1.05, drop_mass_g=0.044)
    2.2

    Args:
        amount: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a temperature
            above absolute zero.
        kind: What the material is for; powders (pearl, flake, salt) are measured as scooped. One of
            ``plastisol``, ``softener``, ``hardener``, ``stabilizer``, ``colorant``, ``pearl``, ``flake``,
            ``salt``, ``scent``, ``other``.
        material_density_g_per_ml: True density of the material; of a plastisol that of the liquid. Unit:
            g/mL; 0.001 to 25. Default: none.
        as_scooped_g_per_ml: Bulk density of a powder, level in the spoon and not tapped. Unit: g/mL; 0.001 to
            25. Default: none.
        drop_mass_g: Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary.
            One of ``us-customary``, ``us-label``, ``metric``, ``imperial``.

    Returns:
        mass_g: The mass. Unit: g.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_dose_mass,
        given.text("amount", amount),
        given.word(KIND_WORDS, "kind", kind),
        given.optional_number("material_density_g_per_ml", material_density_g_per_ml),
        given.optional_number("as_scooped_g_per_ml", as_scooped_g_per_ml),
        given.optional_number("drop_mass_g", drop_mass_g),
        given.optional_word(MEASURES_WORDS, "measures", measures),
        result,
    )
    found: float = result[0]
    return found


def mass_of_volume(
    volume_ml: float,
    density_g_per_ml: float,
) -> float:
    """Mass of a volume: m = ρV.

    The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid
    displaces in a mix it is its true density.

    >>> mass_of_volume(250.0, 1.03)
    257.5

    Args:
        volume_ml: Volume. Unit: mL; 0 to 1e15.
        density_g_per_ml: Density, without voids. Unit: g/mL; 0.001 to 25.

    Returns:
        mass_g: The mass. Unit: g.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_mass_of_volume,
        given.number("volume_ml", volume_ml),
        given.number("density_g_per_ml", density_g_per_ml),
        result,
    )
    found: float = result[0]
    return found


def volume_of_mass(
    mass_g: float,
    density_g_per_ml: float,
) -> float:
    """Volume of a mass: V = m/ρ, with the densities of :func:`mass_of_volume`.

    >>> volume_of_mass(257.5, 1.03)
    250.0

    Args:
        mass_g: Mass. Unit: g; 0 to 1e15.
        density_g_per_ml: Density, without voids. Unit: g/mL; 0.001 to 25.

    Returns:
        volume_ml: The volume. Unit: mL.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_volume_of_mass,
        given.number("mass_g", mass_g),
        given.number("density_g_per_ml", density_g_per_ml),
        result,
    )
    found: float = result[0]
    return found


def density_of_parts(
    parts: Iterable[tuple[float, float]],
    *,
    voids: float | None = None,
) -> float:
    """Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.

    Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and
    volume.

    >>> density_of_parts([(100.0, 1.0), (50.0, 2.0)])
    1.2000000000000002

    Args:
        parts: The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1
            to 1000 of them.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.

    Returns:
        density_g_per_ml: Density of the mix, voids counted. Unit: g/mL.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_density_of_parts,
        *given.list("pour_parts_row[]", 2, "parts", parts),
        given.optional_number("voids", voids),
        result,
    )
    found: float = result[0]
    return found


@dataclass(frozen=True, slots=True)
class MixShareResult:
    """The results of :func:`mix_share`.

    Attributes:
        mass_share: Share of its mass. Unit: 1.
        volume_share: Share of its true volume. Unit: 1.
    """

    mass_share: float
    volume_share: float


def mix_share(
    parts: Iterable[tuple[float, float]],
    part: SupportsIndex,
) -> MixShareResult:
    """Share of one part in a mix, by mass and by true volume.

    Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).

    >>> mix_share([(75.0, 1.0), (50.0, 2.0)], 2)
    MixShareResult(mass_share=0.4, volume_share=0.25000000000000006)

    Args:
        parts: The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1
            to 1000 of them.
        part: Which part of the mix, counted from 1. 1 to 1000.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_mix_share_result *")
    given.call(
        lib.pour_mix_share,
        *given.list("pour_parts_row[]", 2, "parts", parts),
        given.count("part", part),
        result,
    )
    return MixShareResult(
        result.mass_share,
        result.volume_share,
    )


@dataclass(frozen=True, slots=True)
class SaltConvertResult:
    """The results of :func:`salt_convert`.

    Attributes:
        loading: The loading as `to_form` states it, in the unit of that form.
        loading_min: Its lower bound where the feed matters and is not known; else the loading.
        loading_max: Its upper bound where the feed matters and is not known; else the loading.
    """

    loading: float
    loading_min: float
    loading_max: float


def salt_convert(
    base_volume_ml: float,
    base_density_g_per_ml: float,
    salt_density_g_per_ml: float,
    form: Form,
    loading: float,
    to_form: Form,
    *,
    mix_mass_g: float | None = None,
    mix_volume_ml: float | None = None,
    hot_volume_ml: float | None = None,
    shot_temperature_celsius: float | None = None,
    voids: float | None = None,
    salt_as_scooped_g_per_ml: float | None = None,
    salt_expansion_per_kelvin: float | None = None,
    softener_per_salt: float | None = None,
    softener_density_g_per_ml: float | None = None,
    softener_expansion_per_kelvin: float | None = None,
    most_solids: float | None = None,
    cavity_volume_ml: float | None = None,
    feed: float | None = None,
    hook_mass_g: float | None = None,
    hook_volume_ml: float | None = None,
) -> SaltConvertResult:
    """States a salt loading another way.

    All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In
    reach is all between no salt and the maximum that `most_solids` allows. Where a form that is about a piece
    needs the feed and it is not known, the bounds are those without feed and fed in full.

    >>> salt_convert(250.0, 1.0, 2.0, "of-base", 0.1, "as-scooped", salt_as_scooped_g_per_ml=1.25)
    SaltConvertResult(loading=0.08, loading_min=0.08, loading_max=0.08)

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001
            to 25.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to
            25.
        form: The way in which the salt loading is stated. One of ``as-scooped``, ``per-volume``, ``of-base``,
            ``of-finished``, ``finished-density``, ``piece-mass``, ``sink-density``.
        loading: The salt loading, as its form states it. Unit: any; in the unit of its form.
        to_form: The way in which the loading is to be stated. One of ``as-scooped``, ``per-volume``,
            ``of-base``, ``of-finished``, ``finished-density``, ``piece-mass``, ``sink-density``.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g;
            1e-12 to 1e15. Default: the mass of its base.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15.
            Default: as ``base_volume_ml``.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL;
            1e-9 to 1e15. Default: as ``mix_volume_ml``.
        shot_temperature_celsius: Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        salt_as_scooped_g_per_ml: Bulk density of the salt, level in the spoon; at most its true density. Only
            the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10.
            Default: 0.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it. Unit:
            g/mL; 0.001 to 25. Default: none.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01.
            Default: 0.
        most_solids: Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1.
            Default: 0.3.
        cavity_volume_ml: Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
            1; 0 to 1. Default: 0.5.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
        hook_volume_ml: Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15.
            Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_salt_convert_input *")
    made.size = ffi.sizeof("pour_salt_convert_input")
    made.base_volume_ml = given.number("base_volume_ml", base_volume_ml)
    made.base_density_g_per_ml = given.number("base_density_g_per_ml", base_density_g_per_ml)
    made.salt_density_g_per_ml = given.number("salt_density_g_per_ml", salt_density_g_per_ml)
    made.form = given.word(FORM_WORDS, "form", form)
    made.loading = given.number("loading", loading)
    made.to_form = given.word(FORM_WORDS, "to_form", to_form)
    made.mix_mass_g = given.optional_number("mix_mass_g", mix_mass_g)
    made.mix_volume_ml = given.optional_number("mix_volume_ml", mix_volume_ml)
    made.hot_volume_ml = given.optional_number("hot_volume_ml", hot_volume_ml)
    made.shot_temperature_celsius = given.optional_number("shot_temperature_celsius", shot_temperature_celsius)
    made.voids = given.optional_number("voids", voids)
    made.salt_as_scooped_g_per_ml = given.optional_number("salt_as_scooped_g_per_ml", salt_as_scooped_g_per_ml)
    made.salt_expansion_per_kelvin = given.optional_number("salt_expansion_per_kelvin", salt_expansion_per_kelvin)
    made.softener_per_salt = given.optional_number("softener_per_salt", softener_per_salt)
    made.softener_density_g_per_ml = given.optional_number("softener_density_g_per_ml", softener_density_g_per_ml)
    made.softener_expansion_per_kelvin = given.optional_number("softener_expansion_per_kelvin", softener_expansion_per_kelvin)
    made.most_solids = given.optional_number("most_solids", most_solids)
    made.cavity_volume_ml = given.optional_number("cavity_volume_ml", cavity_volume_ml)
    made.feed = given.optional_number("feed", feed)
    made.hook_mass_g = given.optional_number("hook_mass_g", hook_mass_g)
    made.hook_volume_ml = given.optional_number("hook_volume_ml", hook_volume_ml)
    result = ffi.new("pour_salt_convert_result *")
    given.call(
        lib.pour_salt_convert,
        made,
        result,
    )
    return SaltConvertResult(
        result.loading,
        result.loading_min,
        result.loading_max,
    )


@dataclass(frozen=True, slots=True)
class SaltMassResult:
    """The results of :func:`salt_mass`.

    Attributes:
        salt_mass_g: Mass of salt. Unit: g.
        salt_mass_min_g: Its lower bound where the feed matters and is not known; else the mass. Unit: g.
        salt_mass_max_g: Its upper bound where the feed matters and is not known; else the mass. Unit: g.
        softener_mass_g: Mass of softener that goes in with it. Unit: g.
    """

    salt_mass_g: float
    salt_mass_min_g: float
    salt_mass_max_g: float
    softener_mass_g: float


def salt_mass(
    base_volume_ml: float,
    base_density_g_per_ml: float,
    salt_density_g_per_ml: float,
    form: Form,
    loading: float,
    *,
    mix_mass_g: float | None = None,
    mix_volume_ml: float | None = None,
    hot_volume_ml: float | None = None,
    shot_temperature_celsius: float | None = None,
    voids: float | None = None,
    salt_as_scooped_g_per_ml: float | None = None,
    salt_expansion_per_kelvin: float | None = None,
    softener_per_salt: float | None = None,
    softener_density_g_per_ml: float | None = None,
    softener_expansion_per_kelvin: float | None = None,
    most_solids: float | None = None,
    cavity_volume_ml: float | None = None,
    feed: float | None = None,
    hook_mass_g: float | None = None,
    hook_volume_ml: float | None = None,
) -> SaltMassResult:
    """Mass of salt for a loading, and of the softener that goes in with it.

    >>> salt_mass(250.0, 1.0, 2.0, "of-base", 0.1, salt_as_scooped_g_per_ml=1.25)
    SaltMassResult(salt_mass_g=25.0, salt_mass_min_g=25.0, salt_mass_max_g=25.0, softener_mass_g=0.0)

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001
            to 25.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to
            25.
        form: The way in which the salt loading is stated. One of ``as-scooped``, ``per-volume``, ``of-base``,
            ``of-finished``, ``finished-density``, ``piece-mass``, ``sink-density``.
        loading: The salt loading, as its form states it. Unit: any; in the unit of its form.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g;
            1e-12 to 1e15. Default: the mass of its base.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15.
            Default: as ``base_volume_ml``.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL;
            1e-9 to 1e15. Default: as ``mix_volume_ml``.
        shot_temperature_celsius: Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        salt_as_scooped_g_per_ml: Bulk density of the salt, level in the spoon; at most its true density. Only
            the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10.
            Default: 0.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it. Unit:
            g/mL; 0.001 to 25. Default: none.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01.
            Default: 0.
        most_solids: Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1.
            Default: 0.3.
        cavity_volume_ml: Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
            1; 0 to 1. Default: 0.5.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
        hook_volume_ml: Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15.
            Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_salt_mass_input *")
    made.size = ffi.sizeof("pour_salt_mass_input")
    made.base_volume_ml = given.number("base_volume_ml", base_volume_ml)
    made.base_density_g_per_ml = given.number("base_density_g_per_ml", base_density_g_per_ml)
    made.salt_density_g_per_ml = given.number("salt_density_g_per_ml", salt_density_g_per_ml)
    made.form = given.word(FORM_WORDS, "form", form)
    made.loading = given.number("loading", loading)
    made.mix_mass_g = given.optional_number("mix_mass_g", mix_mass_g)
    made.mix_volume_ml = given.optional_number("mix_volume_ml", mix_volume_ml)
    made.hot_volume_ml = given.optional_number("hot_volume_ml", hot_volume_ml)
    made.shot_temperature_celsius = given.optional_number("shot_temperature_celsius", shot_temperature_celsius)
    made.voids = given.optional_number("voids", voids)
    made.salt_as_scooped_g_per_ml = given.optional_number("salt_as_scooped_g_per_ml", salt_as_scooped_g_per_ml)
    made.salt_expansion_per_kelvin = given.optional_number("salt_expansion_per_kelvin", salt_expansion_per_kelvin)
    made.softener_per_salt = given.optional_number("softener_per_salt", softener_per_salt)
    made.softener_density_g_per_ml = given.optional_number("softener_density_g_per_ml", softener_density_g_per_ml)
    made.softener_expansion_per_kelvin = given.optional_number("softener_expansion_per_kelvin", softener_expansion_per_kelvin)
    made.most_solids = given.optional_number("most_solids", most_solids)
    made.cavity_volume_ml = given.optional_number("cavity_volume_ml", cavity_volume_ml)
    made.feed = given.optional_number("feed", feed)
    made.hook_mass_g = given.optional_number("hook_mass_g", hook_mass_g)
    made.hook_volume_ml = given.optional_number("hook_volume_ml", hook_volume_ml)
    result = ffi.new("pour_salt_mass_result *")
    given.call(
        lib.pour_salt_mass,
        made,
        result,
    )
    return SaltMassResult(
        result.salt_mass_g,
        result.salt_mass_min_g,
        result.salt_mass_max_g,
        result.softener_mass_g,
    )


@dataclass(frozen=True, slots=True)
class SaltReachResult:
    """The results of :func:`salt_reach`.

    Attributes:
        loading_min: The loading without salt, in the unit of the form.
        loading_max: The maximum loading, in the unit of the form.
    """

    loading_min: float
    loading_max: float


def salt_reach(
    base_volume_ml: float,
    base_density_g_per_ml: float,
    salt_density_g_per_ml: float,
    form: Form,
    *,
    mix_mass_g: float | None = None,
    mix_volume_ml: float | None = None,
    hot_volume_ml: float | None = None,
    shot_temperature_celsius: float | None = None,
    voids: float | None = None,
    salt_as_scooped_g_per_ml: float | None = None,
    salt_expansion_per_kelvin: float | None = None,
    softener_per_salt: float | None = None,
    softener_density_g_per_ml: float | None = None,
    softener_expansion_per_kelvin: float | None = None,
    most_solids: float | None = None,
    cavity_volume_ml: float | None = None,
    feed: float | None = None,
    hook_mass_g: float | None = None,
    hook_volume_ml: float | None = None,
) -> SaltReachResult:
    """Salt loadings in reach: without salt, and with the maximum that `most_solids` allows.

    >>> salt_reach(250.0, 1.0, 2.0, "finished-density", salt_as_scooped_g_per_ml=1.25)
    SaltReachResult(loading_min=1.0, loading_max=1.3)

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001
            to 25.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to
            25.
        form: The way in which the salt loading is stated. One of ``as-scooped``, ``per-volume``, ``of-base``,
            ``of-finished``, ``finished-density``, ``piece-mass``, ``sink-density``.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g;
            1e-12 to 1e15. Default: the mass of its base.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15.
            Default: as ``base_volume_ml``.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL;
            1e-9 to 1e15. Default: as ``mix_volume_ml``.
        shot_temperature_celsius: Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        salt_as_scooped_g_per_ml: Bulk density of the salt, level in the spoon; at most its true density. Only
            the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10.
            Default: 0.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it. Unit:
            g/mL; 0.001 to 25. Default: none.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01.
            Default: 0.
        most_solids: Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1.
            Default: 0.3.
        cavity_volume_ml: Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
            1; 0 to 1. Default: 0.5.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
        hook_volume_ml: Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15.
            Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_salt_reach_input *")
    made.size = ffi.sizeof("pour_salt_reach_input")
    made.base_volume_ml = given.number("base_volume_ml", base_volume_ml)
    made.base_density_g_per_ml = given.number("base_density_g_per_ml", base_density_g_per_ml)
    made.salt_density_g_per_ml = given.number("salt_density_g_per_ml", salt_density_g_per_ml)
    made.form = given.word(FORM_WORDS, "form", form)
    made.mix_mass_g = given.optional_number("mix_mass_g", mix_mass_g)
    made.mix_volume_ml = given.optional_number("mix_volume_ml", mix_volume_ml)
    made.hot_volume_ml = given.optional_number("hot_volume_ml", hot_volume_ml)
    made.shot_temperature_celsius = given.optional_number("shot_temperature_celsius", shot_temperature_celsius)
    made.voids = given.optional_number("voids", voids)
    made.salt_as_scooped_g_per_ml = given.optional_number("salt_as_scooped_g_per_ml", salt_as_scooped_g_per_ml)
    made.salt_expansion_per_kelvin = given.optional_number("salt_expansion_per_kelvin", salt_expansion_per_kelvin)
    made.softener_per_salt = given.optional_number("softener_per_salt", softener_per_salt)
    made.softener_density_g_per_ml = given.optional_number("softener_density_g_per_ml", softener_density_g_per_ml)
    made.softener_expansion_per_kelvin = given.optional_number("softener_expansion_per_kelvin", softener_expansion_per_kelvin)
    made.most_solids = given.optional_number("most_solids", most_solids)
    made.cavity_volume_ml = given.optional_number("cavity_volume_ml", cavity_volume_ml)
    made.feed = given.optional_number("feed", feed)
    made.hook_mass_g = given.optional_number("hook_mass_g", hook_mass_g)
    made.hook_volume_ml = given.optional_number("hook_volume_ml", hook_volume_ml)
    result = ffi.new("pour_salt_reach_result *")
    given.call(
        lib.pour_salt_reach,
        made,
        result,
    )
    return SaltReachResult(
        result.loading_min,
        result.loading_max,
    )


def salt_for_density(
    base_volume_ml: float,
    base_density_g_per_ml: float,
    salt_density_g_per_ml: float,
    finished_density_g_per_ml: float,
    *,
    voids: float | None = None,
    most_solids: float | None = None,
) -> float:
    """Mass of salt that brings a base alone to a finished density: :func:`salt_mass` in one form, with few
    numbers.

    m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).

    >>> salt_for_density(250.0, 1.0, 2.0, 1.25)
    166.66666666666666

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001
            to 25.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to
            25.
        finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted. Unit: g/mL; 0.001
            to 25.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        most_solids: Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1.
            Default: 0.3.

    Returns:
        salt_mass_g: Mass of salt. Unit: g.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_salt_for_density,
        given.number("base_volume_ml", base_volume_ml),
        given.number("base_density_g_per_ml", base_density_g_per_ml),
        given.number("salt_density_g_per_ml", salt_density_g_per_ml),
        given.number("finished_density_g_per_ml", finished_density_g_per_ml),
        given.optional_number("voids", voids),
        given.optional_number("most_solids", most_solids),
        result,
    )
    found: float = result[0]
    return found


@dataclass(frozen=True, slots=True)
class SaltForSinkRateResult:
    """The results of :func:`salt_for_sink_rate`.

    Attributes:
        salt_mass_g: Mass of salt. Unit: g.
        softener_mass_g: Mass of softener that goes in with it. Unit: g.
        finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.
    """

    salt_mass_g: float
    softener_mass_g: float
    finished_density_g_per_ml: float


def salt_for_sink_rate(
    base_volume_ml: float,
    base_density_g_per_ml: float,
    salt_density_g_per_ml: float,
    sink_rate_cm_per_s: float,
    cavity_volume_ml: float,
    diameter_mm: float,
    water_temperature_celsius: float,
    *,
    length_mm: float | None = None,
    shape: Shape | None = None,
    mix_mass_g: float | None = None,
    mix_volume_ml: float | None = None,
    hot_volume_ml: float | None = None,
    shot_temperature_celsius: float | None = None,
    voids: float | None = None,
    salt_expansion_per_kelvin: float | None = None,
    softener_per_salt: float | None = None,
    softener_density_g_per_ml: float | None = None,
    softener_expansion_per_kelvin: float | None = None,
    most_solids: float | None = None,
    feed: float | None = None,
    hook_mass_g: float | None = None,
    hook_volume_ml: float | None = None,
    salinity_practical: float | None = None,
    salinity_absolute: float | None = None,
    drop_depth_m: float | None = None,
    drop_time_s: float | None = None,
    drop_density_g_per_ml: float | None = None,
) -> SaltForSinkRateResult:
    """Mass of salt at which a piece sinks at a rate.

    The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has
    cooled; the salt is that for this density.

    >>> salt_for_sink_rate(250.0, 1.0, 2.0, 22.04104669853903, 9.5, 10.0, 20.0, length_mm=121.0, hook_mass_g=2.0, hook_volume_ml=0.25)
    SaltForSinkRateResult(salt_mass_g=55.55555555555424, softener_mass_g=0.0, finished_density_g_per_ml=1.0999999999999979)

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001
            to 25.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to
            25.
        sink_rate_cm_per_s: Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
        cavity_volume_ml: Volume of one cavity. Unit: mL; 1e-9 to 1e15.
        diameter_mm: Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
        water_temperature_celsius: Temperature of the water. Unit: °C; 0 to 40.
        length_mm: Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6.
            Default: none.
        shape: Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is
            given, else a ball. One of ``stick``, ``ball``.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g;
            1e-12 to 1e15. Default: the mass of its base.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15.
            Default: as ``base_volume_ml``.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL;
            1e-9 to 1e15. Default: as ``mix_volume_ml``.
        shot_temperature_celsius: Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10.
            Default: 0.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it. Unit:
            g/mL; 0.001 to 25. Default: none.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01.
            Default: 0.
        most_solids: Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1.
            Default: 0.3.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
            1; 0 to 1. Default: 0.5.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
        hook_volume_ml: Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15.
            Default: 0.
        salinity_practical: Practical salinity as a probe reads it, about 35 in the ocean; give this or the
            absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
        salinity_absolute: Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this
            or the practical one. Unit: 1; 0 to 0.042. Default: none.
        drop_depth_m: Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000.
            Default: none.
        drop_time_s: Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
        drop_density_g_per_ml: Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_salt_for_sink_rate_input *")
    made.size = ffi.sizeof("pour_salt_for_sink_rate_input")
    made.base_volume_ml = given.number("base_volume_ml", base_volume_ml)
    made.base_density_g_per_ml = given.number("base_density_g_per_ml", base_density_g_per_ml)
    made.salt_density_g_per_ml = given.number("salt_density_g_per_ml", salt_density_g_per_ml)
    made.sink_rate_cm_per_s = given.number("sink_rate_cm_per_s", sink_rate_cm_per_s)
    made.cavity_volume_ml = given.number("cavity_volume_ml", cavity_volume_ml)
    made.diameter_mm = given.number("diameter_mm", diameter_mm)
    made.water_temperature_celsius = given.number("water_temperature_celsius", water_temperature_celsius)
    made.length_mm = given.optional_number("length_mm", length_mm)
    made.shape = given.optional_word(SHAPE_WORDS, "shape", shape)
    made.mix_mass_g = given.optional_number("mix_mass_g", mix_mass_g)
    made.mix_volume_ml = given.optional_number("mix_volume_ml", mix_volume_ml)
    made.hot_volume_ml = given.optional_number("hot_volume_ml", hot_volume_ml)
    made.shot_temperature_celsius = given.optional_number("shot_temperature_celsius", shot_temperature_celsius)
    made.voids = given.optional_number("voids", voids)
    made.salt_expansion_per_kelvin = given.optional_number("salt_expansion_per_kelvin", salt_expansion_per_kelvin)
    made.softener_per_salt = given.optional_number("softener_per_salt", softener_per_salt)
    made.softener_density_g_per_ml = given.optional_number("softener_density_g_per_ml", softener_density_g_per_ml)
    made.softener_expansion_per_kelvin = given.optional_number("softener_expansion_per_kelvin", softener_expansion_per_kelvin)
    made.most_solids = given.optional_number("most_solids", most_solids)
    made.feed = given.optional_number("feed", feed)
    made.hook_mass_g = given.optional_number("hook_mass_g", hook_mass_g)
    made.hook_volume_ml = given.optional_number("hook_volume_ml", hook_volume_ml)
    made.salinity_practical = given.optional_number("salinity_practical", salinity_practical)
    made.salinity_absolute = given.optional_number("salinity_absolute", salinity_absolute)
    made.drop_depth_m = given.optional_number("drop_depth_m", drop_depth_m)
    made.drop_time_s = given.optional_number("drop_time_s", drop_time_s)
    made.drop_density_g_per_ml = given.optional_number("drop_density_g_per_ml", drop_density_g_per_ml)
    result = ffi.new("pour_salt_for_sink_rate_result *")
    given.call(
        lib.pour_salt_for_sink_rate,
        made,
        result,
    )
    return SaltForSinkRateResult(
        result.salt_mass_g,
        result.softener_mass_g,
        result.finished_density_g_per_ml,
    )


@dataclass(frozen=True, slots=True)
class ShotFillResult:
    """The results of :func:`shot_fill`.

    Attributes:
        shot_mass_g: Mass of one shot, topping included. Unit: g.
        pieces_mass_g: Mass of all its pieces. Unit: g.
        sprue_mass_g: Mass that is left as sprue once the pieces have been fed. Unit: g.
        missing_mass_g: Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.
        piece_mass_g: Mass of one piece, or of the layer in it. Unit: g.
        piece_mass_min_g: The same without feed where the feed is not known; else the mass of the piece. Unit:
            g.
        piece_mass_max_g: The same fed as far as sprue and topping reach where the feed is not known; else the
            mass of the piece. Unit: g.
        fed: Share of the contraction that was fed. Unit: 1.
    """

    shot_mass_g: float
    pieces_mass_g: float
    sprue_mass_g: float
    missing_mass_g: float
    piece_mass_g: float
    piece_mass_min_g: float
    piece_mass_max_g: float
    fed: float


def shot_fill(
    cavities: SupportsIndex,
    cavity_volume_ml: float,
    cold_density_g_per_ml: float,
    *,
    hot_density_g_per_ml: float | None = None,
    voids: float | None = None,
    feed: float | None = None,
    sprue_volume_ml: float | None = None,
    topped_mass_g: float | None = None,
    layer_share: float | None = None,
) -> ShotFillResult:
    """Mass of one shot, and of its pieces.

    Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in :func:`piece_mass`, as far as sprue and topping
    can feed it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is
    above 0. Of sprue and topping a layer fills its share.

    >>> shot_fill(4, 10.0, 1.0625, hot_density_g_per_ml=1.0, feed=0.5, sprue_volume_ml=8.0)
    ShotFillResult(shot_mass_g=48.0, pieces_mass_g=41.25, sprue_mass_g=6.75, missing_mass_g=0.0, piece_mass_g=10.3125, piece_mass_min_g=10.3125, piece_mass_max_g=10.3125, fed=0.5)

    Args:
        cavities: Number of cavities that a shot fills. 1 to 1000000.
        cavity_volume_ml: Volume of one cavity. Unit: mL; 1e-9 to 1e15.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to
            25.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one. Unit:
            g/mL; 0.001 to 25. Default: as ``cold_density_g_per_ml``.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
            1; 0 to 1. Default: 0.5.
        sprue_volume_ml: Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0.
        topped_mass_g: Mass that topping off and holding add. Unit: g; 0 to 1e15. Default: 0.
        layer_share: Share of the cavity that this layer of a laminated piece fills. Unit: 1; above 0 to 1.
            Default: 1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_shot_fill_input *")
    made.size = ffi.sizeof("pour_shot_fill_input")
    made.cavities = given.count("cavities", cavities)
    made.cavity_volume_ml = given.number("cavity_volume_ml", cavity_volume_ml)
    made.cold_density_g_per_ml = given.number("cold_density_g_per_ml", cold_density_g_per_ml)
    made.hot_density_g_per_ml = given.optional_number("hot_density_g_per_ml", hot_density_g_per_ml)
    made.voids = given.optional_number("voids", voids)
    made.feed = given.optional_number("feed", feed)
    made.sprue_volume_ml = given.optional_number("sprue_volume_ml", sprue_volume_ml)
    made.topped_mass_g = given.optional_number("topped_mass_g", topped_mass_g)
    made.layer_share = given.optional_number("layer_share", layer_share)
    result = ffi.new("pour_shot_fill_result *")
    given.call(
        lib.pour_shot_fill,
        made,
        result,
    )
    return ShotFillResult(
        result.shot_mass_g,
        result.pieces_mass_g,
        result.sprue_mass_g,
        result.missing_mass_g,
        result.piece_mass_g,
        result.piece_mass_min_g,
        result.piece_mass_max_g,
        result.fed,
    )


@dataclass(frozen=True, slots=True)
class PieceMassResult:
    """The results of :func:`piece_mass`.

    Attributes:
        piece_mass_g: Mass of the piece. Unit: g.
        piece_mass_min_g: The same without feed where the feed is not known; else the mass of the piece. Unit:
            g.
        piece_mass_max_g: The same fed in full where the feed is not known; else the mass of the piece. Unit:
            g.
    """

    piece_mass_g: float
    piece_mass_min_g: float
    piece_mass_max_g: float


def piece_mass(
    cavity_volume_ml: float,
    cold_density_g_per_ml: float,
    *,
    hot_density_g_per_ml: float | None = None,
    voids: float | None = None,
    feed: float | None = None,
) -> PieceMassResult:
    """Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.

    While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass;
    f is the shop's own. A sprue that cannot feed that much: see :func:`shot_fill`.

    >>> piece_mass(10.0, 1.0625, hot_density_g_per_ml=1.0)
    PieceMassResult(piece_mass_g=10.3125, piece_mass_min_g=10.0, piece_mass_max_g=10.625)

    Args:
        cavity_volume_ml: Volume of one cavity. Unit: mL; 1e-9 to 1e15.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to
            25.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one. Unit:
            g/mL; 0.001 to 25. Default: as ``cold_density_g_per_ml``.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
            1; 0 to 1. Default: 0.5.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_piece_mass_result *")
    given.call(
        lib.pour_piece_mass,
        given.number("cavity_volume_ml", cavity_volume_ml),
        given.number("cold_density_g_per_ml", cold_density_g_per_ml),
        given.optional_number("hot_density_g_per_ml", hot_density_g_per_ml),
        given.optional_number("voids", voids),
        given.optional_number("feed", feed),
        result,
    )
    return PieceMassResult(
        result.piece_mass_g,
        result.piece_mass_min_g,
        result.piece_mass_max_g,
    )


@dataclass(frozen=True, slots=True)
class ShotsResult:
    """The results of :func:`shots`.

    Attributes:
        shots: Number of shots.
        cast: Number of pieces that they cast.
    """

    shots: int
    cast: int


def shots(
    pieces: SupportsIndex,
    cavities: SupportsIndex,
    *,
    rejects: float | None = None,
    confidence: float | None = None,
) -> ShotsResult:
    """Minimum number of shots for a number of good pieces.

    Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.

    >>> shots(10, 4)
    ShotsResult(shots=3, cast=12)

    Args:
        pieces: Number of good pieces needed. 1 to 1000000.
        cavities: Number of cavities that a shot fills. 1 to 1000000.
        rejects: Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
        confidence: Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default:
            0.9.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_shots_result *")
    given.call(
        lib.pour_shots,
        given.count("pieces", pieces),
        given.count("cavities", cavities),
        given.optional_number("rejects", rejects),
        given.optional_number("confidence", confidence),
        result,
    )
    return ShotsResult(
        result.shots,
        result.cast,
    )


@dataclass(frozen=True, slots=True)
class InjectorLoadsResult:
    """The results of :func:`injector_loads`.

    Attributes:
        loads: Number of injector loads.
        shots_per_load: Whole shots in one load.
        shots_in_last: Shots from the last load.
    """

    loads: int
    shots_per_load: int
    shots_in_last: int


def injector_loads(
    shots: SupportsIndex,
    shot_mass_g: float,
    shot_density_g_per_ml: float,
    injector_capacity_ml: float,
    *,
    injector_residue_ml: float | None = None,
) -> InjectorLoadsResult:
    """Injector loads for a number of shots.

    Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.

    >>> injector_loads(5, 40.0, 1.0, 100.0, injector_residue_ml=10.0)
    InjectorLoadsResult(loads=3, shots_per_load=2, shots_in_last=1)

    Args:
        shots: Number of shots. 1 to 100000000.
        shot_mass_g: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
        shot_density_g_per_ml: Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to
            25.
        injector_capacity_ml: Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
        injector_residue_ml: Volume that stays in the injector each time it is emptied; below its capacity.
            Unit: mL; 0 to 1e15. Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_injector_loads_result *")
    given.call(
        lib.pour_injector_loads,
        given.count("shots", shots),
        given.number("shot_mass_g", shot_mass_g),
        given.number("shot_density_g_per_ml", shot_density_g_per_ml),
        given.number("injector_capacity_ml", injector_capacity_ml),
        given.optional_number("injector_residue_ml", injector_residue_ml),
        result,
    )
    return InjectorLoadsResult(
        result.loads,
        result.shots_per_load,
        result.shots_in_last,
    )


@dataclass(frozen=True, slots=True)
class BatchNeedResult:
    """The results of :func:`batch_need`.

    Attributes:
        total_mass_g: Mass to mix. Unit: g.
        drawn_mass_g: Mass of all shots. Unit: g.
        returned_mass_g: Mass of sprues that go back and are shot again. Unit: g.
        pieces_mass_g: Mass of all pieces. Unit: g.
        sprues_mass_g: Mass of sprues that are left over. Unit: g.
        kept_mass_g: Mass that stays in the injector over the run. Unit: g.
        in_cup_mass_g: Mass that stays in the cup: the heel, with the film in it. Unit: g.
        shots: Number of shots.
        loads: Number of injector loads.
        shots_per_load: Whole shots in one load.
        shots_in_last: Shots from the last load.
    """

    total_mass_g: float
    drawn_mass_g: float
    returned_mass_g: float
    pieces_mass_g: float
    sprues_mass_g: float
    kept_mass_g: float
    in_cup_mass_g: float
    shots: int
    loads: int
    shots_per_load: int
    shots_in_last: int


def batch_need(
    pieces: SupportsIndex,
    cavities: SupportsIndex,
    shot_mass_g: float,
    shot_density_g_per_ml: float,
    injector_capacity_ml: float,
    *,
    injector_residue_ml: float | None = None,
    cleanings: SupportsIndex | None = None,
    sprue_mass_g: float | None = None,
    returned: float | None = None,
    pot_film_g: float | None = None,
    pot_heel_g: float | None = None,
    rejects: float | None = None,
    confidence: float | None = None,
) -> BatchNeedResult:
    """Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.

    total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel).

    >>> batch_need(10, 4, 50.0, 1.0, 120.0, injector_residue_ml=5.0, sprue_mass_g=10.0)
    BatchNeedResult(total_mass_g=155.00000000000003, drawn_mass_g=150.00000000000003, returned_mass_g=0.0, pieces_mass_g=120.0, sprues_mass_g=30.0, kept_mass_g=5.0, in_cup_mass_g=0.0, shots=3, loads=2, shots_per_load=2, shots_in_last=1)

    Args:
        pieces: Number of good pieces needed. 1 to 1000000.
        cavities: Number of cavities that a shot fills. 1 to 1000000.
        shot_mass_g: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
        shot_density_g_per_ml: Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to
            25.
        injector_capacity_ml: Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
        injector_residue_ml: Volume that stays in the injector each time it is emptied; below its capacity.
            Unit: mL; 0 to 1e15. Default: 0.
        cleanings: Number of times the injector is cleaned or goes cold, the last time included. 1 to 1000000.
            Default: 1.
        sprue_mass_g: Mass of a shot that stays as sprue; at most the mass of the shot. Unit: g; 0 to 1e15.
            Default: 0.
        returned: Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0.
        pot_film_g: Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to 1e15. Default: 0.
        pot_heel_g: Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to 1e15. Default: 0.
        rejects: Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
        confidence: Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default:
            0.9.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_batch_need_input *")
    made.size = ffi.sizeof("pour_batch_need_input")
    made.pieces = given.count("pieces", pieces)
    made.cavities = given.count("cavities", cavities)
    made.shot_mass_g = given.number("shot_mass_g", shot_mass_g)
    made.shot_density_g_per_ml = given.number("shot_density_g_per_ml", shot_density_g_per_ml)
    made.injector_capacity_ml = given.number("injector_capacity_ml", injector_capacity_ml)
    made.injector_residue_ml = given.optional_number("injector_residue_ml", injector_residue_ml)
    made.cleanings = given.optional_count("cleanings", cleanings)
    made.sprue_mass_g = given.optional_number("sprue_mass_g", sprue_mass_g)
    made.returned = given.optional_number("returned", returned)
    made.pot_film_g = given.optional_number("pot_film_g", pot_film_g)
    made.pot_heel_g = given.optional_number("pot_heel_g", pot_heel_g)
    made.rejects = given.optional_number("rejects", rejects)
    made.confidence = given.optional_number("confidence", confidence)
    result = ffi.new("pour_batch_need_result *")
    given.call(
        lib.pour_batch_need,
        made,
        result,
    )
    return BatchNeedResult(
        result.total_mass_g,
        result.drawn_mass_g,
        result.returned_mass_g,
        result.pieces_mass_g,
        result.sprues_mass_g,
        result.kept_mass_g,
        result.in_cup_mass_g,
        result.shots,
        result.loads,
        result.shots_per_load,
        result.shots_in_last,
    )


@dataclass(frozen=True, slots=True)
class BaseToMarkResult:
    """The results of :func:`base_to_mark`.

    Attributes:
        base_volume_ml: Volume of base: the mark. Unit: mL.
        base_mass_g: Mass of that base. Unit: g.
        mix_mass_g: Mass of the mix with all doses. Unit: g.
        surplus_mass_g: Mass that is more than needed. Unit: g.
        extra_shots: Whole shots that the surplus gives, where the mass of a shot is given. None where there
            is none.
    """

    base_volume_ml: float
    base_mass_g: float
    mix_mass_g: float
    surplus_mass_g: float
    extra_shots: int | None


def base_to_mark(
    mix_needed_g: float,
    base_fraction: float,
    base_density_g_per_ml: float,
    cup_capacity_ml: float,
    *,
    cup_mark_ml: float | None = None,
    shot_mass_g: float | None = None,
) -> BaseToMarkResult:
    """Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.

    The doses follow from the rounded base, so that no formula is off.

    >>> base_to_mark(200.0, 0.8, 1.0, 250.0, cup_mark_ml=50.0, shot_mass_g=20.0)
    BaseToMarkResult(base_volume_ml=200.0, base_mass_g=200.0, mix_mass_g=250.0, surplus_mass_g=49.999999999999986, extra_shots=2)

    Args:
        mix_needed_g: Mass of mix that is needed. Unit: g; 1e-12 to 1e15.
        base_fraction: Share of base in the mix, by mass. Unit: 1; above 0 to 1.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001
            to 25.
        cup_capacity_ml: Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.
        cup_mark_ml: Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark alone,
            when it is full.
        shot_mass_g: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_base_to_mark_result *")
    given.call(
        lib.pour_base_to_mark,
        given.number("mix_needed_g", mix_needed_g),
        given.number("base_fraction", base_fraction),
        given.number("base_density_g_per_ml", base_density_g_per_ml),
        given.number("cup_capacity_ml", cup_capacity_ml),
        given.optional_number("cup_mark_ml", cup_mark_ml),
        given.optional_number("shot_mass_g", shot_mass_g),
        result,
    )
    return BaseToMarkResult(
        result.base_volume_ml,
        result.base_mass_g,
        result.mix_mass_g,
        result.surplus_mass_g,
        if_count(result.extra_shots),
    )


@dataclass(frozen=True, slots=True)
class LeastPotResult:
    """The results of :func:`least_pot`.

    Attributes:
        mix_mass_g: Mass of the mix. Unit: g.
        base_mass_g: Mass of base in it. Unit: g.
    """

    mix_mass_g: float
    base_mass_g: float


def least_pot(
    doses: Iterable[tuple[float, float, float]],
    base_fraction: float,
    *,
    oven_least_g: float | None = None,
    injector_least_g: float | None = None,
) -> LeastPotResult:
    """Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no
    less mix than oven and injector need.

    >>> least_pot([(0.05, 0.05, 0.005)], 0.8)
    LeastPotResult(mix_mass_g=125.0, base_mass_g=100.0)

    Args:
        doses: The doses: of each its smallest step, its tolerance and its ratio to the base. 1 to 64 of them.
        base_fraction: Share of base in the mix, by mass. Unit: 1; above 0 to 1.
        oven_least_g: Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15. Default: none.
        injector_least_g: Smallest mix that the injector can draw from. Unit: g; 1e-12 to 1e15. Default: none.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_least_pot_result *")
    given.call(
        lib.pour_least_pot,
        *given.list("pour_doses_row[]", 3, "doses", doses),
        given.number("base_fraction", base_fraction),
        given.optional_number("oven_least_g", oven_least_g),
        given.optional_number("injector_least_g", injector_least_g),
        result,
    )
    return LeastPotResult(
        result.mix_mass_g,
        result.base_mass_g,
    )


@dataclass(frozen=True, slots=True)
class RejectRateResult:
    """The results of :func:`reject_rate`.

    Attributes:
        rejects: Share of rejects. Unit: 1.
        rejects_min: Its lower bound. Unit: 1.
        rejects_max: Its upper bound. Unit: 1.
    """

    rejects: float
    rejects_min: float
    rejects_max: float


def reject_rate(
    cast_pieces: SupportsIndex,
    reject_count: SupportsIndex,
    *,
    confidence: float | None = None,
) -> RejectRateResult:
    """Reject rate from counted pieces, with the exact interval of a binomial share.

    Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.

    >>> reject_rate(1, 0, confidence=0.5)
    RejectRateResult(rejects=0.0, rejects_min=0.0, rejects_max=0.75)

    Args:
        cast_pieces: Number of pieces that were cast. 1 to 1000000.
        reject_count: Number of them that are not fit to sell. 0 to 1000000.
        confidence: Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default:
            0.9.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_reject_rate_result *")
    given.call(
        lib.pour_reject_rate,
        given.count("cast_pieces", cast_pieces),
        given.count("reject_count", reject_count),
        given.optional_number("confidence", confidence),
        result,
    )
    return RejectRateResult(
        result.rejects,
        result.rejects_min,
        result.rejects_max,
    )


@dataclass(frozen=True, slots=True)
class BenchMeasureResult:
    """The results of :func:`bench_measure`.

    Attributes:
        mass_g: Mass that it gives. Unit: g.
        deviation: (given − needed)/needed. Unit: 1.
        tool: The tool: balance, cup, spoons or drops.
        acts: Amount of handling: readings, fillings, spoonfuls, tens of drops.
        drops: Number of drops.
        spoonfuls: Number of level spoonfuls of each spoon, in the order of the spoons.
        cup: Which cup, counted from 1; 0 without one.
        cup_fillings: Number of times that cup is filled to its last mark.
        cup_mark: Mark to which it is filled once more, counted from 1; 0 where it is not.
    """

    mass_g: float
    deviation: float
    tool: Tool
    acts: int
    drops: int
    spoonfuls: tuple[int, ...]
    cup: int
    cup_fillings: int
    cup_mark: int


def bench_measure(
    mass_to_measure_g: float,
    *,
    tolerance: float | None = None,
    balance_readability_g: float | None = None,
    balance_capacity_g: float | None = None,
    balance_least_load_g: float | None = None,
    spoons_ml: Iterable[float] | None = None,
    cups: Iterable[tuple[float, float]] | None = None,
    as_measured_density_g_per_ml: float | None = None,
    drop_mass_g: float | None = None,
) -> BenchMeasureResult:
    """Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.

    A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass
    from which one would.

    >>> bench_measure(12.5, tolerance=0.02, spoons_ml=[5.0, 2.5], as_measured_density_g_per_ml=1.0)
    BenchMeasureResult(mass_g=12.5, deviation=0.0, tool='spoons', acts=3, drops=0, spoonfuls=(2, 1, 0, 0, 0, 0, 0, 0), cup=0, cup_fillings=0, cup_mark=0)

    Args:
        mass_to_measure_g: Mass to measure. Unit: g; 1e-12 to 1e15.
        tolerance: Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
            Unit: g; 1e-12 to 1e15. Default: none.
        balance_capacity_g: Highest load of the balance. Unit: g; 1e-12 to 1e15. Default: 5000 times its
            readability.
        balance_least_load_g: Minimum load for which the balance is trusted. Unit: g; 0 to 1e15. Default: 0.
        spoons_ml: Volumes of the measuring spoons. 1 to 8 of them. Default: none.
        cups: The cups with evenly spaced marks: of each the distance between marks and the capacity. 1 to 64
            of them. Default: none.
        as_measured_density_g_per_ml: Density of the material in a measure: of a liquid its density, of a
            powder its bulk density, level and not tapped. Unit: g/mL; 0.001 to 25. Default: none.
        drop_mass_g: Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_bench_measure_input *")
    made.size = ffi.sizeof("pour_bench_measure_input")
    made.mass_to_measure_g = given.number("mass_to_measure_g", mass_to_measure_g)
    made.tolerance = given.optional_number("tolerance", tolerance)
    made.balance_readability_g = given.optional_number("balance_readability_g", balance_readability_g)
    made.balance_capacity_g = given.optional_number("balance_capacity_g", balance_capacity_g)
    made.balance_least_load_g = given.optional_number("balance_least_load_g", balance_least_load_g)
    made.spoons_ml, made.spoons_count = given.optional_list("double[]", 0, "spoons_ml", spoons_ml)
    made.cups, made.cups_count = given.optional_list("pour_cups_row[]", 2, "cups", cups)
    made.as_measured_density_g_per_ml = given.optional_number("as_measured_density_g_per_ml", as_measured_density_g_per_ml)
    made.drop_mass_g = given.optional_number("drop_mass_g", drop_mass_g)
    result = ffi.new("pour_bench_measure_result *")
    given.call(
        lib.pour_bench_measure,
        made,
        result,
    )
    return BenchMeasureResult(
        result.mass_g,
        result.deviation,
        word_at(TOOL_WORDS, result.tool),
        result.acts,
        result.drops,
        tuple(result.spoonfuls),
        result.cup,
        result.cup_fillings,
        result.cup_mark,
    )


@dataclass(frozen=True, slots=True)
class SinkRateResult:
    """The results of :func:`sink_rate`.

    Attributes:
        sink_rate_cm_per_s: Sink rate. Unit: cm/s.
        sink_rate_min_cm_per_s: Lower bound; 0 where the piece may hang or float. Unit: cm/s.
        sink_rate_max_cm_per_s: Upper bound. Unit: cm/s.
        motion: Whether it sinks straight: straight, may-swing or swings.
        reynolds: Reynolds number. Unit: 1.
        drag_coefficient: Drag coefficient, on length times diameter of a stick and the cross-section of a
            ball. Unit: 1.
        sink_time_s: Time to the depth, let go at rest just below the surface. Unit: s. None where there is
            none.
    """

    sink_rate_cm_per_s: float
    sink_rate_min_cm_per_s: float
    sink_rate_max_cm_per_s: float
    motion: Motion
    reynolds: float
    drag_coefficient: float
    sink_time_s: float | None


def sink_rate(
    piece_density_g_per_ml: float,
    piece_volume_ml: float,
    diameter_mm: float,
    water_temperature_celsius: float,
    *,
    length_mm: float | None = None,
    shape: Shape | None = None,
    hook_mass_g: float | None = None,
    hook_volume_ml: float | None = None,
    salinity_practical: float | None = None,
    salinity_absolute: float | None = None,
    density_uncertainty_g_per_ml: float | None = None,
    depth_m: float | None = None,
    drop_depth_m: float | None = None,
    drop_time_s: float | None = None,
    drop_density_g_per_ml: float | None = None,
) -> SinkRateResult:
    """Sink rate of a piece with its hook: the final speed, a model value.

    Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the
    equations, sources and bounds are those of the module `process::sink`. `motion` is whether the model holds
    for such a piece at all. A drop that the shop timed (depth, time, density) replaces the published drag by
    the piece's own.

    >>> sink_rate(1.1, 9.5, 10.0, 20.0, length_mm=121.0, hook_mass_g=2.0, hook_volume_ml=0.25)
    SinkRateResult(sink_rate_cm_per_s=22.04104669853903, sink_rate_min_cm_per_s=19.297542687585494, sink_rate_max_cm_per_s=30.86051085510933, motion='swings', reynolds=2196.2834650479926, drag_coefficient=0.9083361655585607, sink_time_s=None)

    Args:
        piece_density_g_per_ml: Density of the piece, its salt and voids counted. Unit: g/mL; 0.001 to 25.
        piece_volume_ml: Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
        diameter_mm: Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
        water_temperature_celsius: Temperature of the water. Unit: °C; 0 to 40.
        length_mm: Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6.
            Default: none.
        shape: Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is
            given, else a ball. One of ``stick``, ``ball``.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
        hook_volume_ml: Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15.
            Default: 0.
        salinity_practical: Practical salinity as a probe reads it, about 35 in the ocean; give this or the
            absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
        salinity_absolute: Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this
            or the practical one. Unit: 1; 0 to 0.042. Default: none.
        density_uncertainty_g_per_ml: Standard uncertainty of the density of the piece; its bounds are counted
            at twice that. Unit: g/mL; 0 to 25. Default: 0.
        depth_m: Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none.
        drop_depth_m: Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000.
            Default: none.
        drop_time_s: Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
        drop_density_g_per_ml: Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_sink_rate_input *")
    made.size = ffi.sizeof("pour_sink_rate_input")
    made.piece_density_g_per_ml = given.number("piece_density_g_per_ml", piece_density_g_per_ml)
    made.piece_volume_ml = given.number("piece_volume_ml", piece_volume_ml)
    made.diameter_mm = given.number("diameter_mm", diameter_mm)
    made.water_temperature_celsius = given.number("water_temperature_celsius", water_temperature_celsius)
    made.length_mm = given.optional_number("length_mm", length_mm)
    made.shape = given.optional_word(SHAPE_WORDS, "shape", shape)
    made.hook_mass_g = given.optional_number("hook_mass_g", hook_mass_g)
    made.hook_volume_ml = given.optional_number("hook_volume_ml", hook_volume_ml)
    made.salinity_practical = given.optional_number("salinity_practical", salinity_practical)
    made.salinity_absolute = given.optional_number("salinity_absolute", salinity_absolute)
    made.density_uncertainty_g_per_ml = given.optional_number("density_uncertainty_g_per_ml", density_uncertainty_g_per_ml)
    made.depth_m = given.optional_number("depth_m", depth_m)
    made.drop_depth_m = given.optional_number("drop_depth_m", drop_depth_m)
    made.drop_time_s = given.optional_number("drop_time_s", drop_time_s)
    made.drop_density_g_per_ml = given.optional_number("drop_density_g_per_ml", drop_density_g_per_ml)
    result = ffi.new("pour_sink_rate_result *")
    given.call(
        lib.pour_sink_rate,
        made,
        result,
    )
    return SinkRateResult(
        result.sink_rate_cm_per_s,
        result.sink_rate_min_cm_per_s,
        result.sink_rate_max_cm_per_s,
        word_at(MOTION_WORDS, result.motion),
        result.reynolds,
        result.drag_coefficient,
        if_number(result.sink_time_s),
    )


def density_for_sink_rate(
    sink_rate_cm_per_s: float,
    piece_volume_ml: float,
    diameter_mm: float,
    water_temperature_celsius: float,
    *,
    length_mm: float | None = None,
    shape: Shape | None = None,
    hook_mass_g: float | None = None,
    hook_volume_ml: float | None = None,
    salinity_practical: float | None = None,
    salinity_absolute: float | None = None,
    drop_depth_m: float | None = None,
    drop_time_s: float | None = None,
    drop_density_g_per_ml: float | None = None,
) -> float:
    """Density at which a piece sinks at a rate: the finished density to salt for.

    >>> density_for_sink_rate(22.04104669853903, 9.5, 10.0, 20.0, length_mm=121.0, hook_mass_g=2.0, hook_volume_ml=0.25)
    1.0999999999999979

    Args:
        sink_rate_cm_per_s: Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
        piece_volume_ml: Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
        diameter_mm: Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
        water_temperature_celsius: Temperature of the water. Unit: °C; 0 to 40.
        length_mm: Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6.
            Default: none.
        shape: Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is
            given, else a ball. One of ``stick``, ``ball``.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
        hook_volume_ml: Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15.
            Default: 0.
        salinity_practical: Practical salinity as a probe reads it, about 35 in the ocean; give this or the
            absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
        salinity_absolute: Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this
            or the practical one. Unit: 1; 0 to 0.042. Default: none.
        drop_depth_m: Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000.
            Default: none.
        drop_time_s: Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
        drop_density_g_per_ml: Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none.

    Returns:
        piece_density_g_per_ml: Density of the piece, voids and salt counted. Unit: g/mL.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_density_for_sink_rate_input *")
    made.size = ffi.sizeof("pour_density_for_sink_rate_input")
    made.sink_rate_cm_per_s = given.number("sink_rate_cm_per_s", sink_rate_cm_per_s)
    made.piece_volume_ml = given.number("piece_volume_ml", piece_volume_ml)
    made.diameter_mm = given.number("diameter_mm", diameter_mm)
    made.water_temperature_celsius = given.number("water_temperature_celsius", water_temperature_celsius)
    made.length_mm = given.optional_number("length_mm", length_mm)
    made.shape = given.optional_word(SHAPE_WORDS, "shape", shape)
    made.hook_mass_g = given.optional_number("hook_mass_g", hook_mass_g)
    made.hook_volume_ml = given.optional_number("hook_volume_ml", hook_volume_ml)
    made.salinity_practical = given.optional_number("salinity_practical", salinity_practical)
    made.salinity_absolute = given.optional_number("salinity_absolute", salinity_absolute)
    made.drop_depth_m = given.optional_number("drop_depth_m", drop_depth_m)
    made.drop_time_s = given.optional_number("drop_time_s", drop_time_s)
    made.drop_density_g_per_ml = given.optional_number("drop_density_g_per_ml", drop_density_g_per_ml)
    result = ffi.new("double *")
    given.call(
        lib.pour_density_for_sink_rate,
        made,
        result,
    )
    found: float = result[0]
    return found


def hardness(
    points: Iterable[tuple[float, float]],
    scale: Scale,
    softener_ratio: float,
) -> float:
    """Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.

    Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore
    scales do not convert into each other (ASTM D2240): all points are on one.

    >>> hardness([(0.0, 60.0), (0.2, 40.0)], "shore-00", 0.1)
    50.0

    Args:
        points: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading.
            2 to 1000 of them.
        scale: The scale of the durometer. One of ``shore-00``, ``shore-a``.
        softener_ratio: Softener or hardener, mass per mass of base; between the measured points. Unit: 1; 0
            to 100.

    Returns:
        hardness: Durometer reading. Unit: 1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_hardness,
        *given.list("pour_points_row[]", 2, "points", points),
        given.word(SCALE_WORDS, "scale", scale),
        given.number("softener_ratio", softener_ratio),
        result,
    )
    found: float = result[0]
    return found


def softener_ratio(
    points: Iterable[tuple[float, float]],
    scale: Scale,
    hardness: float,
) -> float:
    """Ratio of softener or hardener for a hardness: the other way round.

    >>> softener_ratio([(0.0, 60.0), (0.2, 40.0)], "shore-00", 50.0)
    0.10000000000000005

    Args:
        points: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading.
            2 to 1000 of them.
        scale: The scale of the durometer. One of ``shore-00``, ``shore-a``.
        hardness: Durometer reading. Unit: 1; 0 to 100.

    Returns:
        softener_ratio: Mass per mass of base. Unit: 1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_softener_ratio,
        *given.list("pour_points_row[]", 2, "points", points),
        given.word(SCALE_WORDS, "scale", scale),
        given.number("hardness", hardness),
        result,
    )
    found: float = result[0]
    return found


def salted_softener(
    salted_points: Iterable[tuple[float, float]],
    salt_of_base: float,
) -> float:
    """Extra softener for a salted body, between the shop's own points.

    Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone
    cubic answers, outside it refuses.

    >>> salted_softener([(0.0, 0.0), (0.2, 0.1)], 0.1)
    0.05

    Args:
        salted_points: The shop's own measured points, by rising salt: of each the salt and the softener, mass
            per mass of base. 2 to 1000 of them.
        salt_of_base: Salt, mass per mass of base; between the measured points. Unit: 1; 0 to 10.

    Returns:
        softener_ratio: Softener on top of the unsalted body's, mass per mass of base. Unit: 1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_salted_softener,
        *given.list("pour_salted_points_row[]", 2, "salted_points", salted_points),
        given.number("salt_of_base", salt_of_base),
        result,
    )
    found: float = result[0]
    return found


def water_density(
    water_temperature_celsius: float,
) -> float:
    """Density of air-free water at 101.325 kPa, 0 to 40 °C.

    Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.

    >>> water_density(20.0)
    0.9982067455596167

    Args:
        water_temperature_celsius: Temperature of the water. Unit: °C; 0 to 40.

    Returns:
        density_g_per_ml: Density of the water. Unit: g/mL.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_water_density,
        given.number("water_temperature_celsius", water_temperature_celsius),
        result,
    )
    found: float = result[0]
    return found


def cavity_of_water(
    water_mass_g: float,
    water_temperature_celsius: float,
    *,
    air_pressure_kpa: float | None = None,
) -> float:
    """Volume of a cavity from the reading of a balance for the water that it holds.

    Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).

    >>> cavity_of_water(10.0, 20.0)
    10.028511692201585

    Args:
        water_mass_g: Reading of the balance for the water in one cavity: filled less empty. Unit: g; 1e-12 to
            1e15.
        water_temperature_celsius: Temperature of the water. Unit: °C; 0 to 40.
        air_pressure_kpa: Air pressure at the balance, not reduced to sea level. Unit: kPa; 45 to 110.
            Default: 101.325.

    Returns:
        cavity_volume_ml: Volume of the cavity. Unit: mL.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_cavity_of_water,
        given.number("water_mass_g", water_mass_g),
        given.number("water_temperature_celsius", water_temperature_celsius),
        given.optional_number("air_pressure_kpa", air_pressure_kpa),
        result,
    )
    found: float = result[0]
    return found


def standard_pressure(
    altitude_m: float,
) -> float:
    """Air pressure of the standard atmosphere at an altitude.

    U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.

    >>> standard_pressure(0.0)
    101.325

    Args:
        altitude_m: Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000.

    Returns:
        station_pressure_kpa: Air pressure at the place itself; also the maximum that a true vacuum gauge
            shows there. Unit: kPa.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_standard_pressure,
        given.number("altitude_m", altitude_m),
        result,
    )
    found: float = result[0]
    return found


def station_pressure(
    reported_pressure_kpa: float,
    altitude_m: float,
) -> float:
    """Air pressure at the place itself from one that a weather report gives, reduced to sea level.

    Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.

    >>> station_pressure(101.325, 0.0)
    101.325

    Args:
        reported_pressure_kpa: Air pressure as a weather report gives it, reduced to sea level; needs the
            altitude. Unit: kPa; 85 to 110.
        altitude_m: Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000.

    Returns:
        station_pressure_kpa: Air pressure at the place itself; also the maximum that a true vacuum gauge
            shows there. Unit: kPa.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_station_pressure,
        given.number("reported_pressure_kpa", reported_pressure_kpa),
        given.number("altitude_m", altitude_m),
        result,
    )
    found: float = result[0]
    return found


@dataclass(frozen=True, slots=True)
class SwollenVolumeResult:
    """The results of :func:`swollen_volume`.

    Attributes:
        swollen_volume_ml: Volume in the vacuum. Unit: mL.
        standing_volume_ml: Volume before, bubbles included. Unit: mL.
        absolute_pressure_kpa: Pressure that is left in the chamber. Unit: kPa.
    """

    swollen_volume_ml: float
    standing_volume_ml: float
    absolute_pressure_kpa: float


def swollen_volume(
    liquid_volume_ml: float,
    entrained_air: float,
    station_pressure_kpa: float,
    *,
    gauge_vacuum_kpa: float | None = None,
    absolute_pressure_kpa: float | None = None,
    dial_tolerance_kpa: float | None = None,
    vapor_pressure_kpa: float | None = None,
    damp_at_celsius: float | None = None,
) -> SwollenVolumeResult:
    """Volume of a pot in a vacuum, with the air that it holds.

    Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge
    shows it or as the pressure that is left; with a gauge the lowest pressure counts that its tolerance
    allows.

    >>> swollen_volume(450.0, 0.1, 100.0, absolute_pressure_kpa=10.0)
    SwollenVolumeResult(swollen_volume_ml=950.0, standing_volume_ml=500.0, absolute_pressure_kpa=10.0)

    Args:
        liquid_volume_ml: Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
        entrained_air: Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1.
        station_pressure_kpa: Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to
            178.
        gauge_vacuum_kpa: Reading of a vacuum gauge, which counts down from the air outside; give this or the
            absolute pressure. Unit: kPa; 0 to 180. Default: none.
        absolute_pressure_kpa: Pressure that is left in the chamber, counted from nothing at all; give this or
            the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
        dial_tolerance_kpa: How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 %
            of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
        vapor_pressure_kpa: Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the
            chamber. Unit: kPa; 0 to 180. Default: 0.
        damp_at_celsius: Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot.
            Unit: °C; 0.01 to 200. Default: none.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_swollen_volume_input *")
    made.size = ffi.sizeof("pour_swollen_volume_input")
    made.liquid_volume_ml = given.number("liquid_volume_ml", liquid_volume_ml)
    made.entrained_air = given.number("entrained_air", entrained_air)
    made.station_pressure_kpa = given.number("station_pressure_kpa", station_pressure_kpa)
    made.gauge_vacuum_kpa = given.optional_number("gauge_vacuum_kpa", gauge_vacuum_kpa)
    made.absolute_pressure_kpa = given.optional_number("absolute_pressure_kpa", absolute_pressure_kpa)
    made.dial_tolerance_kpa = given.optional_number("dial_tolerance_kpa", dial_tolerance_kpa)
    made.vapor_pressure_kpa = given.optional_number("vapor_pressure_kpa", vapor_pressure_kpa)
    made.damp_at_celsius = given.optional_number("damp_at_celsius", damp_at_celsius)
    result = ffi.new("pour_swollen_volume_result *")
    given.call(
        lib.pour_swollen_volume,
        made,
        result,
    )
    return SwollenVolumeResult(
        result.swollen_volume_ml,
        result.standing_volume_ml,
        result.absolute_pressure_kpa,
    )


def entrained_air(
    rise: float,
    station_pressure_kpa: float,
    *,
    gauge_vacuum_kpa: float | None = None,
    absolute_pressure_kpa: float | None = None,
    dial_tolerance_kpa: float | None = None,
    vapor_pressure_kpa: float | None = None,
    damp_at_celsius: float | None = None,
) -> float:
    """Share of air in a pot, from how high it was seen to rise in a vacuum.

    With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and
    after: φ/(1 − φ) = (f − 1)/(b₂ − f b₁).

    >>> entrained_air(1.9, 100.0, absolute_pressure_kpa=10.0)
    0.09999999999999999

    Args:
        rise: Level of a pot in the vacuum over its level before; give this or the entrained air. Unit: 1; 1
            to 1000.
        station_pressure_kpa: Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to
            178.
        gauge_vacuum_kpa: Reading of a vacuum gauge, which counts down from the air outside; give this or the
            absolute pressure. Unit: kPa; 0 to 180. Default: none.
        absolute_pressure_kpa: Pressure that is left in the chamber, counted from nothing at all; give this or
            the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
        dial_tolerance_kpa: How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 %
            of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
        vapor_pressure_kpa: Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the
            chamber. Unit: kPa; 0 to 180. Default: 0.
        damp_at_celsius: Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot.
            Unit: °C; 0.01 to 200. Default: none.

    Returns:
        entrained_air: Share of air in the mix by volume, under the outside pressure. Unit: 1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_entrained_air_input *")
    made.size = ffi.sizeof("pour_entrained_air_input")
    made.rise = given.number("rise", rise)
    made.station_pressure_kpa = given.number("station_pressure_kpa", station_pressure_kpa)
    made.gauge_vacuum_kpa = given.optional_number("gauge_vacuum_kpa", gauge_vacuum_kpa)
    made.absolute_pressure_kpa = given.optional_number("absolute_pressure_kpa", absolute_pressure_kpa)
    made.dial_tolerance_kpa = given.optional_number("dial_tolerance_kpa", dial_tolerance_kpa)
    made.vapor_pressure_kpa = given.optional_number("vapor_pressure_kpa", vapor_pressure_kpa)
    made.damp_at_celsius = given.optional_number("damp_at_celsius", damp_at_celsius)
    result = ffi.new("double *")
    given.call(
        lib.pour_entrained_air,
        made,
        result,
    )
    found: float = result[0]
    return found


@dataclass(frozen=True, slots=True)
class DegasVesselResult:
    """The results of :func:`degas_vessel`.

    Attributes:
        vessel_volume_ml: Volume to the brim of a vessel that takes the pot at once. Unit: mL.
        fill_mark_ml: Level to fill the given vessel to at most, bubbles included. Unit: mL. None where there
            is none.
        fills: Number of fills of the given vessel. None where there is none.
        fill_level_ml: Level of each fill, shared out evenly, bubbles included. Unit: mL. None where there is
            none.
        fill_swollen_ml: Volume of an even fill in the vacuum. Unit: mL. None where there is none.
    """

    vessel_volume_ml: float
    fill_mark_ml: float | None
    fills: int | None
    fill_level_ml: float | None
    fill_swollen_ml: float | None


def degas_vessel(
    liquid_volume_ml: float,
    entrained_air: float,
    station_pressure_kpa: float,
    *,
    gauge_vacuum_kpa: float | None = None,
    absolute_pressure_kpa: float | None = None,
    dial_tolerance_kpa: float | None = None,
    vapor_pressure_kpa: float | None = None,
    damp_at_celsius: float | None = None,
    vessel_spare: float | None = None,
    vessel_brim_ml: float | None = None,
    vessel_mark_ml: float | None = None,
) -> DegasVesselResult:
    """Vessel for a pot in a vacuum, and how to fill one that is too small.

    The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer
    gives the level to fill to, on a mark where it has any, and the number of fills.

    >>> degas_vessel(450.0, 0.1, 100.0, absolute_pressure_kpa=10.0, vessel_brim_ml=600.0, vessel_mark_ml=50.0)
    DegasVesselResult(vessel_volume_ml=1055.5555555555554, fill_mark_ml=250.0, fills=2, fill_level_ml=250.0, fill_swollen_ml=475.0)

    Args:
        liquid_volume_ml: Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
        entrained_air: Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1.
        station_pressure_kpa: Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to
            178.
        gauge_vacuum_kpa: Reading of a vacuum gauge, which counts down from the air outside; give this or the
            absolute pressure. Unit: kPa; 0 to 180. Default: none.
        absolute_pressure_kpa: Pressure that is left in the chamber, counted from nothing at all; give this or
            the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
        dial_tolerance_kpa: How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 %
            of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
        vapor_pressure_kpa: Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the
            chamber. Unit: kPa; 0 to 180. Default: 0.
        damp_at_celsius: Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot.
            Unit: °C; 0.01 to 200. Default: none.
        vessel_spare: Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default: 0.1.
        vessel_brim_ml: Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. It may be omitted.
        vessel_mark_ml: Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default: any level.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_degas_vessel_input *")
    made.size = ffi.sizeof("pour_degas_vessel_input")
    made.liquid_volume_ml = given.number("liquid_volume_ml", liquid_volume_ml)
    made.entrained_air = given.number("entrained_air", entrained_air)
    made.station_pressure_kpa = given.number("station_pressure_kpa", station_pressure_kpa)
    made.gauge_vacuum_kpa = given.optional_number("gauge_vacuum_kpa", gauge_vacuum_kpa)
    made.absolute_pressure_kpa = given.optional_number("absolute_pressure_kpa", absolute_pressure_kpa)
    made.dial_tolerance_kpa = given.optional_number("dial_tolerance_kpa", dial_tolerance_kpa)
    made.vapor_pressure_kpa = given.optional_number("vapor_pressure_kpa", vapor_pressure_kpa)
    made.damp_at_celsius = given.optional_number("damp_at_celsius", damp_at_celsius)
    made.vessel_spare = given.optional_number("vessel_spare", vessel_spare)
    made.vessel_brim_ml = given.optional_number("vessel_brim_ml", vessel_brim_ml)
    made.vessel_mark_ml = given.optional_number("vessel_mark_ml", vessel_mark_ml)
    result = ffi.new("pour_degas_vessel_result *")
    given.call(
        lib.pour_degas_vessel,
        made,
        result,
    )
    return DegasVesselResult(
        result.vessel_volume_ml,
        if_number(result.fill_mark_ml),
        if_count(result.fills),
        if_number(result.fill_level_ml),
        if_number(result.fill_swollen_ml),
    )


@dataclass(frozen=True, slots=True)
class FlakeCountResult:
    """The results of :func:`flake_count`.

    Attributes:
        particles: Number of particles, not rounded. Unit: 1.
        area_cm2: Area of film, one face of every particle. Unit: cm2.
    """

    particles: float
    area_cm2: float


def flake_count(
    cut: str,
    thickness_um: float,
    film_density_g_per_ml: float,
    flake_dose_g: float,
) -> FlakeCountResult:
    """Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the
    film.

    A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.

    >>> flake_count("1 mm square", 50.0, 1.4, 0.7)
    FlakeCountResult(particles=10000.0, area_cm2=99.99999999999999)

    Args:
        cut: Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. 0.05 to
            6.35 mm.
        thickness_um: Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
        film_density_g_per_ml: Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25.
        flake_dose_g: Mass of the dose of flake. Unit: g; 1e-12 to 1e15.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_flake_count_result *")
    given.call(
        lib.pour_flake_count,
        given.text("cut", cut),
        given.number("thickness_um", thickness_um),
        given.number("film_density_g_per_ml", film_density_g_per_ml),
        given.number("flake_dose_g", flake_dose_g),
        result,
    )
    return FlakeCountResult(
        result.particles,
        result.area_cm2,
    )


@dataclass(frozen=True, slots=True)
class FlakeSwapResult:
    """The results of :func:`flake_swap`.

    Attributes:
        mass_g: Mass of the other flake. Unit: g.
        scoop_ml: Volume to scoop of it, where its bulk density is given. Unit: mL. None where there is none.
        count_ratio: Particles of the other dose over those of the first. Unit: 1.
        area_ratio: Area of the other dose over that of the first. Unit: 1.
    """

    mass_g: float
    scoop_ml: float | None
    count_ratio: float
    area_ratio: float


def flake_swap(
    cut: str,
    thickness_um: float,
    film_density_g_per_ml: float,
    flake_dose_g: float,
    other_cut: str,
    other_thickness_um: float,
    other_film_density_g_per_ml: float,
    *,
    other_as_scooped_g_per_ml: float | None = None,
    alike: Alike | None = None,
) -> FlakeSwapResult:
    """Dose of another flake in place of one, with as much area or as many particles.

    The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives
    both.

    >>> flake_swap("1 mm square", 50.0, 1.4, 0.7, "0.5 mm square", 50.0, 1.4, other_as_scooped_g_per_ml=0.35)
    FlakeSwapResult(mass_g=0.7, scoop_ml=2.0, count_ratio=4.0, area_ratio=1.0)

    Args:
        cut: Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. 0.05 to
            6.35 mm.
        thickness_um: Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
        film_density_g_per_ml: Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25.
        flake_dose_g: Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
        other_cut: Size and shape of the other flake. 0.05 to 6.35 mm.
        other_thickness_um: Thickness of the film of the other flake; below the size of its cut. Unit: µm;
            1e-3 to 6350.
        other_film_density_g_per_ml: Density of the film of the other flake. Unit: g/mL; 0.001 to 25.
        other_as_scooped_g_per_ml: Bulk density of the other flake, level in the spoon. Unit: g/mL; 0.001 to
            25. Default: none.
        alike: What the two doses of flake have in common: the number of particles or the area of film.
            Default: area. One of ``count``, ``area``.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_flake_swap_input *")
    made.size = ffi.sizeof("pour_flake_swap_input")
    made.cut = given.text("cut", cut)
    made.thickness_um = given.number("thickness_um", thickness_um)
    made.film_density_g_per_ml = given.number("film_density_g_per_ml", film_density_g_per_ml)
    made.flake_dose_g = given.number("flake_dose_g", flake_dose_g)
    made.other_cut = given.text("other_cut", other_cut)
    made.other_thickness_um = given.number("other_thickness_um", other_thickness_um)
    made.other_film_density_g_per_ml = given.number("other_film_density_g_per_ml", other_film_density_g_per_ml)
    made.other_as_scooped_g_per_ml = given.optional_number("other_as_scooped_g_per_ml", other_as_scooped_g_per_ml)
    made.alike = given.optional_word(ALIKE_WORDS, "alike", alike)
    result = ffi.new("pour_flake_swap_result *")
    given.call(
        lib.pour_flake_swap,
        made,
        result,
    )
    return FlakeSwapResult(
        result.mass_g,
        if_number(result.scoop_ml),
        result.count_ratio,
        result.area_ratio,
    )


def color_difference(
    lightness: float,
    a: float,
    b: float,
    other_lightness: float,
    other_a: float,
    other_b: float,
) -> float:
    """Difference of two colors in CIE L\\*a\\*b\\*: ΔE₀₀ (CIEDE2000).

    ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.

    >>> color_difference(50.0, 2.6772, -79.7751, 50.0, 0.0, -82.7485)
    2.042459680156571

    Args:
        lightness: L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100.
        a: a* of the color: green below 0, red above. Unit: 1; -200 to 200.
        b: b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200.
        other_lightness: L* of the other color. Unit: 1; 0 to 100.
        other_a: a* of the other color. Unit: 1; -200 to 200.
        other_b: b* of the other color. Unit: 1; -200 to 200.

    Returns:
        difference: ΔE₀₀. Unit: 1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_color_difference,
        given.number("lightness", lightness),
        given.number("a", a),
        given.number("b", b),
        given.number("other_lightness", other_lightness),
        given.number("other_a", other_a),
        given.number("other_b", other_b),
        result,
    )
    found: float = result[0]
    return found


def equivalent_time(
    readings: Iterable[tuple[float, float]],
    activation_energy_kj_per_mol: float,
    reference_temperature_celsius: float,
) -> float:
    """Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.

    Between two readings the temperature is taken as straight. The activation energy is the supplier's;
    published ones of PVC are 117.5 to 170 kJ/mol.

    >>> equivalent_time([(0.0, 175.0), (600.0, 175.0)], 120.0, 175.0)
    600.0

    Args:
        readings: Temperatures in the order of time, taken as straight between. 2 to 100000 of them.
        activation_energy_kj_per_mol: Activation energy of the decay in the heat; state its source in a book.
            Unit: kJ/mol; 10 to 500.
        reference_temperature_celsius: Temperature at which the time is counted. Unit: °C; -73 to 427.

    Returns:
        equivalent_time_s: Equivalent time. Unit: s.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_equivalent_time,
        *given.list("pour_readings_row[]", 2, "readings", readings),
        given.number("activation_energy_kj_per_mol", activation_energy_kj_per_mol),
        given.number("reference_temperature_celsius", reference_temperature_celsius),
        result,
    )
    found: float = result[0]
    return found


@dataclass(frozen=True, slots=True)
class BudgetLeftResult:
    """The results of :func:`budget_left`.

    Attributes:
        budget_s: Budget at this dose of stabilizer. Unit: s.
        left_s: Time that is left; 0 where more was spent. Unit: s.
        overspent_s: Time that was spent beyond the budget; 0 where it was not. Unit: s.
    """

    budget_s: float
    left_s: float
    overspent_s: float


def budget_left(
    heat_budget_s: float,
    equivalent_time_s: float,
    *,
    budget_with: float | None = None,
    stabilizer_dose: float | None = None,
    extra_time_s: float | None = None,
    extra_most: float | None = None,
) -> BudgetLeftResult:
    """Heat budget that is left of a pot, in equivalent time at the reference temperature.

    More stabilizer than the budget is stated for buys the extra time that its maker states; without that
    figure it is refused.

    >>> budget_left(1800.0, 600.0)
    BudgetLeftResult(budget_s=1800.0, left_s=1200.0, overspent_s=0.0)

    Args:
        heat_budget_s: Time at the reference temperature that the plastisol withstands. Unit: s; 1e-6 to 1e15.
        equivalent_time_s: Equivalent time that the pot has spent so far, at the temperature of its budget.
            Unit: s; 0 to 1e15.
        budget_with: Stabilizer that the heat budget is stated for, by mass of base. Unit: 1; 0 to 1. Default:
            0.
        stabilizer_dose: Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as ``budget_with``.
        extra_time_s: Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000
            s is 5 min for every 1 %. Unit: s; 1e-6 to 1e15. Default: none.
        extra_most: Highest dose of stabilizer for which the extra time is known, by mass of base. Unit: 1; 0
            to 1. Default: none.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_budget_left_result *")
    given.call(
        lib.pour_budget_left,
        given.number("heat_budget_s", heat_budget_s),
        given.number("equivalent_time_s", equivalent_time_s),
        given.optional_number("budget_with", budget_with),
        given.optional_number("stabilizer_dose", stabilizer_dose),
        given.optional_number("extra_time_s", extra_time_s),
        given.optional_number("extra_most", extra_most),
        result,
    )
    return BudgetLeftResult(
        result.budget_s,
        result.left_s,
        result.overspent_s,
    )


@dataclass(frozen=True, slots=True)
class HeatTimeResult:
    """The results of :func:`heat_time`.

    Attributes:
        heat_time_s: Heating time. Unit: s.
        heat_time_uncertainty_s: Its standard uncertainty for one more heating. Unit: s.
        power_w: Power that reaches mix and vessel. Unit: W.
        beyond: How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1.
            None where there is none.
    """

    heat_time_s: float
    heat_time_uncertainty_s: float
    power_w: float
    beyond: float | None


def heat_time(
    pot_mass_g: float,
    specific_heat_j_per_g_k: float,
    heated_from_celsius: float,
    heated_to_celsius: float,
    *,
    timings: Iterable[tuple[float, float, float, float]] | None = None,
    oven_power_w: float | None = None,
    setting: float | None = None,
    specific_heat_rise_per_kelvin: float | None = None,
    timed_specific_heat_j_per_g_k: float | None = None,
    vessel_mass_g: float | None = None,
    vessel_specific_heat_j_per_g_k: float | None = None,
) -> HeatTimeResult:
    """Heating time of a pot in the oven, without a break, by the shop's own timings.

    t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module
    `process::heat`). An amount of more than 1.6 times the timed ones is refused. Without timings the rated
    power gives a first guess.

    >>> heat_time(300.0, 2.0, 20.0, 170.0, timings=[(200.0, 20.0, 120.0, 80.0), (400.0, 20.0, 120.0, 160.0)])
    HeatTimeResult(heat_time_s=180.0, heat_time_uncertainty_s=13.46996659238619, power_w=500.0, beyond=None)

    Args:
        pot_mass_g: Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
        specific_heat_j_per_g_k: Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10.
        heated_from_celsius: The temperature before heating. Unit: °C; -73 to 427.
        heated_to_celsius: The temperature after heating, above that before. Unit: °C; -73 to 427.
        timings: Heatings that the shop has timed, all at one setting: of each the mass of the mix, the
            temperatures before and after and the time; needed without the rated power. 1 to 1000 of them.
            Default: none.
        oven_power_w: Rated power of the oven, its output at full power: a first guess, not used once there
            are timings; needed without them. Unit: W; 50 to 10000. Default: none.
        setting: Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the
            timings.
        specific_heat_rise_per_kelvin: Rise of the specific heat per kelvin, as a share of that at 25 °C, of
            what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
        timed_specific_heat_j_per_g_k: Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as
            ``specific_heat_j_per_g_k``.
        vessel_mass_g: Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings.
        vessel_specific_heat_j_per_g_k: Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_heat_time_input *")
    made.size = ffi.sizeof("pour_heat_time_input")
    made.pot_mass_g = given.number("pot_mass_g", pot_mass_g)
    made.specific_heat_j_per_g_k = given.number("specific_heat_j_per_g_k", specific_heat_j_per_g_k)
    made.heated_from_celsius = given.number("heated_from_celsius", heated_from_celsius)
    made.heated_to_celsius = given.number("heated_to_celsius", heated_to_celsius)
    made.timings, made.timings_count = given.optional_list("pour_timings_row[]", 4, "timings", timings)
    made.oven_power_w = given.optional_number("oven_power_w", oven_power_w)
    made.setting = given.optional_number("setting", setting)
    made.specific_heat_rise_per_kelvin = given.optional_number("specific_heat_rise_per_kelvin", specific_heat_rise_per_kelvin)
    made.timed_specific_heat_j_per_g_k = given.optional_number("timed_specific_heat_j_per_g_k", timed_specific_heat_j_per_g_k)
    made.vessel_mass_g = given.optional_number("vessel_mass_g", vessel_mass_g)
    made.vessel_specific_heat_j_per_g_k = given.optional_number("vessel_specific_heat_j_per_g_k", vessel_specific_heat_j_per_g_k)
    result = ffi.new("pour_heat_time_result *")
    given.call(
        lib.pour_heat_time,
        made,
        result,
    )
    return HeatTimeResult(
        result.heat_time_s,
        result.heat_time_uncertainty_s,
        result.power_w,
        if_number(result.beyond),
    )


@dataclass(frozen=True, slots=True)
class NextBurstResult:
    """The results of :func:`next_burst`.

    Attributes:
        burst_s: The next burst; none where the pot is hot enough. Unit: s. None where there is none.
        expected_celsius: The expected reading after it. Unit: °C. None where there is none.
        shoot_from_celsius: Shoot from this reading on. Unit: °C.
        shoot_to_celsius: Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.
        bursts: Number of bursts that are expected from this reading on.
        oven_time_s: Time that the oven is expected to run in them. Unit: s.
    """

    burst_s: float | None
    expected_celsius: float | None
    shoot_from_celsius: float
    shoot_to_celsius: float
    bursts: int
    oven_time_s: float


def next_burst(
    pot_mass_g: float,
    specific_heat_j_per_g_k: float,
    reading_celsius: float,
    window_bottom_celsius: float,
    window_top_celsius: float,
    *,
    timings: Iterable[tuple[float, float, float, float]] | None = None,
    oven_power_w: float | None = None,
    setting: float | None = None,
    specific_heat_rise_per_kelvin: float | None = None,
    timed_specific_heat_j_per_g_k: float | None = None,
    vessel_mass_g: float | None = None,
    vessel_specific_heat_j_per_g_k: float | None = None,
    aim_celsius: float | None = None,
    thermometer_kelvin: float | None = None,
    burst_step_s: float | None = None,
    longest_burst_s: float | None = None,
    oven_turn_s: float | None = None,
    measures: Measures | None = None,
) -> NextBurstResult:
    """The next burst of the oven for a reading of the thermometer.

    No burst can carry the pot over its window, by all the power that the timings make plausible and the error
    of the thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system
    of measures gives the scale of the thermometer, on whole degrees of which the limits are.

    >>> next_burst(300.0, 2.0, 20.0, 160.0, 180.0, timings=[(200.0, 20.0, 120.0, 80.0), (400.0, 20.0, 120.0, 160.0)], measures="metric")
    NextBurstResult(burst_s=90.0, expected_celsius=95.0, shoot_from_celsius=162.0, shoot_to_celsius=178.0, bursts=4, oven_time_s=175.0)

    Args:
        pot_mass_g: Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
        specific_heat_j_per_g_k: Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10.
        reading_celsius: Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427.
        window_bottom_celsius: Lowest temperature at which the mix is shot, its material's own. Unit: °C; -73
            to 427.
        window_top_celsius: Highest temperature at which the mix is shot, its material's own; above the
            lowest. Unit: °C; -73 to 427.
        timings: Heatings that the shop has timed, all at one setting: of each the mass of the mix, the
            temperatures before and after and the time; needed without the rated power. 1 to 1000 of them.
            Default: none.
        oven_power_w: Rated power of the oven, its output at full power: a first guess, not used once there
            are timings; needed without them. Unit: W; 50 to 10000. Default: none.
        setting: Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the
            timings.
        specific_heat_rise_per_kelvin: Rise of the specific heat per kelvin, as a share of that at 25 °C, of
            what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
        timed_specific_heat_j_per_g_k: Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as
            ``specific_heat_j_per_g_k``.
        vessel_mass_g: Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings.
        vessel_specific_heat_j_per_g_k: Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none.
        aim_celsius: The temperature to heat to. Unit: °C; in the shot window. Default: the middle of the
            window.
        thermometer_kelvin: How far the thermometer may be off. Unit: K; 0 to 100. Default: 2.
        burst_step_s: Shortest burst that can be set, of which the others are multiples. Unit: s; 1e-3 to
            3600. Default: 5.
        longest_burst_s: Longest burst without a stir, at least the shortest. Unit: s; 1e-3 to 3600. Default:
            120.
        oven_turn_s: How long a turn of full power and none takes at a setting below full power. Unit: s; 0 to
            3600. Default: 30.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary.
            One of ``us-customary``, ``us-label``, ``metric``, ``imperial``.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_next_burst_input *")
    made.size = ffi.sizeof("pour_next_burst_input")
    made.pot_mass_g = given.number("pot_mass_g", pot_mass_g)
    made.specific_heat_j_per_g_k = given.number("specific_heat_j_per_g_k", specific_heat_j_per_g_k)
    made.reading_celsius = given.number("reading_celsius", reading_celsius)
    made.window_bottom_celsius = given.number("window_bottom_celsius", window_bottom_celsius)
    made.window_top_celsius = given.number("window_top_celsius", window_top_celsius)
    made.timings, made.timings_count = given.optional_list("pour_timings_row[]", 4, "timings", timings)
    made.oven_power_w = given.optional_number("oven_power_w", oven_power_w)
    made.setting = given.optional_number("setting", setting)
    made.specific_heat_rise_per_kelvin = given.optional_number("specific_heat_rise_per_kelvin", specific_heat_rise_per_kelvin)
    made.timed_specific_heat_j_per_g_k = given.optional_number("timed_specific_heat_j_per_g_k", timed_specific_heat_j_per_g_k)
    made.vessel_mass_g = given.optional_number("vessel_mass_g", vessel_mass_g)
    made.vessel_specific_heat_j_per_g_k = given.optional_number("vessel_specific_heat_j_per_g_k", vessel_specific_heat_j_per_g_k)
    made.aim_celsius = given.optional_number("aim_celsius", aim_celsius)
    made.thermometer_kelvin = given.optional_number("thermometer_kelvin", thermometer_kelvin)
    made.burst_step_s = given.optional_number("burst_step_s", burst_step_s)
    made.longest_burst_s = given.optional_number("longest_burst_s", longest_burst_s)
    made.oven_turn_s = given.optional_number("oven_turn_s", oven_turn_s)
    made.measures = given.optional_word(MEASURES_WORDS, "measures", measures)
    result = ffi.new("pour_next_burst_result *")
    given.call(
        lib.pour_next_burst,
        made,
        result,
    )
    return NextBurstResult(
        if_number(result.burst_s),
        if_number(result.expected_celsius),
        result.shoot_from_celsius,
        result.shoot_to_celsius,
        result.bursts,
        result.oven_time_s,
    )


@dataclass(frozen=True, slots=True)
class StaysHotResult:
    """The results of :func:`stays_hot`.

    Attributes:
        time_constant_s: Time in which the distance to the temperature of the room falls to 37 %. Unit: s.
        hot_for_s: Time down to the lower temperature, with all of the mix in the pot. Unit: s.
        half_full_s: The same with half of it. Unit: s.
        after_celsius: Temperature after the time that the pot has stood. Unit: °C. None where there is none.
    """

    time_constant_s: float
    hot_for_s: float
    half_full_s: float
    after_celsius: float | None


def stays_hot(
    pot_mass_g: float,
    hot_from_celsius: float,
    hot_to_celsius: float,
    watched_mass_g: float,
    watched_from_celsius: float,
    watched_to_celsius: float,
    watched_time_s: float,
    *,
    room_celsius: float | None = None,
    stood_s: float | None = None,
) -> StaysHotResult:
    """How long a pot stays hot, by a pot that was watched to cool.

    Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix
    than was watched cools faster (module `process::heat`).

    >>> stays_hot(500.0, 170.0, 130.0, 500.0, 170.0, 150.0, 300.0, room_celsius=22.0, stood_s=600.0)
    StaysHotResult(time_constant_s=2066.371724164207, hot_for_s=651.0745655967437, half_full_s=511.5585872545843, after_celsius=132.7027027027027)

    Args:
        pot_mass_g: Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
        hot_from_celsius: Temperature after the last burst. Unit: °C; -73 to 427.
        hot_to_celsius: Temperature down to which the pot can be shot, above that of the room. Unit: °C; -73
            to 427.
        watched_mass_g: Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15.
        watched_from_celsius: First reading of a pot that was watched to cool, from its second minute on,
            stirred. Unit: °C; -73 to 427.
        watched_to_celsius: Second reading of a pot that was watched to cool, stirred; below the first and
            above that of the room. Unit: °C; -73 to 427.
        watched_time_s: Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9.
        room_celsius: Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
        stood_s: How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is, is not
            calculated.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_stays_hot_input *")
    made.size = ffi.sizeof("pour_stays_hot_input")
    made.pot_mass_g = given.number("pot_mass_g", pot_mass_g)
    made.hot_from_celsius = given.number("hot_from_celsius", hot_from_celsius)
    made.hot_to_celsius = given.number("hot_to_celsius", hot_to_celsius)
    made.watched_mass_g = given.number("watched_mass_g", watched_mass_g)
    made.watched_from_celsius = given.number("watched_from_celsius", watched_from_celsius)
    made.watched_to_celsius = given.number("watched_to_celsius", watched_to_celsius)
    made.watched_time_s = given.number("watched_time_s", watched_time_s)
    made.room_celsius = given.optional_number("room_celsius", room_celsius)
    made.stood_s = given.optional_number("stood_s", stood_s)
    result = ffi.new("pour_stays_hot_result *")
    given.call(
        lib.pour_stays_hot,
        made,
        result,
    )
    return StaysHotResult(
        result.time_constant_s,
        result.hot_for_s,
        result.half_full_s,
        if_number(result.after_celsius),
    )


@dataclass(frozen=True, slots=True)
class PotHeatsResult:
    """The results of :func:`pot_heats`.

    Attributes:
        reheats: Number of reheats: the heats but for the first.
        first_shots: Number of shots in the first heat.
        shooting_time_s: Time of all shots, without the oven. Unit: s.
        total_time_s: Time of all shots and of the oven for each heat, where that is given. Unit: s. None
            where there is none.
    """

    reheats: int
    first_shots: int
    shooting_time_s: float
    total_time_s: float | None


def pot_heats(
    pot_mass_g: float,
    clock_runs: Iterable[tuple[float, float, float, float, float]],
    *,
    hot_for_s: float | None = None,
    clock_from_celsius: float | None = None,
    clock_to_celsius: float | None = None,
    watched_mass_g: float | None = None,
    watched_from_celsius: float | None = None,
    watched_to_celsius: float | None = None,
    watched_time_s: float | None = None,
    room_celsius: float | None = None,
    oven_time_s: float | None = None,
) -> PotHeatsResult:
    """The heats that the shots of a pot take, and how long they all take.

    A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is
    heated again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot
    can be made every max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module
    `process::clock`).

    >>> pot_heats(1200.0, [(22.0, 48.0, 50.0, 0.0, 1.0)], hot_for_s=480.0, oven_time_s=240.0)
    PotHeatsResult(reheats=2, first_shots=9, shooting_time_s=1100.0, total_time_s=1820.0)

    Args:
        pot_mass_g: Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
        clock_runs: The pot's shots in their order, like ones together: of each run the number of shots, the
            mass that one takes, the working time for one, the time that it sets and the number of molds in turn.
            At most 100 000 shots. 1 to 1000 of them.
        hot_for_s: How long the pot stays hot at one heat, from the last burst to the last shot. Unit: s; 1e-3
            to 1e15. Default: from how it cools.
        clock_from_celsius: Temperature after the last burst; needed with `cools`. Unit: °C; -73 to 427.
            Default: none.
        clock_to_celsius: Temperature down to which the pot can be shot, above that of the room; needed with
            `cools`. Unit: °C; -73 to 427. Default: none.
        watched_mass_g: Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15. It may be
            omitted.
        watched_from_celsius: First reading of a pot that was watched to cool, from its second minute on,
            stirred. Unit: °C; -73 to 427. It may be omitted.
        watched_to_celsius: Second reading of a pot that was watched to cool, stirred; below the first and
            above that of the room. Unit: °C; -73 to 427. It may be omitted.
        watched_time_s: Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9.
            It may be omitted.
        room_celsius: Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
        oven_time_s: How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is not counted.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_pot_heats_input *")
    made.size = ffi.sizeof("pour_pot_heats_input")
    made.pot_mass_g = given.number("pot_mass_g", pot_mass_g)
    made.clock_runs, made.clock_runs_count = given.list("pour_clock_runs_row[]", 5, "clock_runs", clock_runs)
    made.hot_for_s = given.optional_number("hot_for_s", hot_for_s)
    made.clock_from_celsius = given.optional_number("clock_from_celsius", clock_from_celsius)
    made.clock_to_celsius = given.optional_number("clock_to_celsius", clock_to_celsius)
    made.watched_mass_g = given.optional_number("watched_mass_g", watched_mass_g)
    made.watched_from_celsius = given.optional_number("watched_from_celsius", watched_from_celsius)
    made.watched_to_celsius = given.optional_number("watched_to_celsius", watched_to_celsius)
    made.watched_time_s = given.optional_number("watched_time_s", watched_time_s)
    made.room_celsius = given.optional_number("room_celsius", room_celsius)
    made.oven_time_s = given.optional_number("oven_time_s", oven_time_s)
    result = ffi.new("pour_pot_heats_result *")
    given.call(
        lib.pour_pot_heats,
        made,
        result,
    )
    return PotHeatsResult(
        result.reheats,
        result.first_shots,
        result.shooting_time_s,
        if_number(result.total_time_s),
    )


@dataclass(frozen=True, slots=True)
class SettingTimeResult:
    """The results of :func:`setting_time`.

    Attributes:
        setting_time_s: Setting time. Unit: s.
        setting_time_min_s: The same with the highest diffusivity of soft PVC. Unit: s.
        setting_time_max_s: The same with the lowest. Unit: s.
        warms_kelvin: How much one shot warms the mold, where its mass is given. Unit: K. None where there is
            none.
        in_a_row: Number of shots in a row before the mold is too warm, nothing lost between them; none where
            its mass is not given, or it goes on. None where there is none.
        shot_every_s: Time from one shot to the next, where the working time is given. Unit: s. None where
            there is none.
    """

    setting_time_s: float
    setting_time_min_s: float
    setting_time_max_s: float
    warms_kelvin: float | None
    in_a_row: int | None
    shot_every_s: float | None


def setting_time(
    section_shape: SectionShape,
    section_thickness_mm: float,
    shot_at_celsius: float,
    *,
    mold_at_celsius: float | None = None,
    take_out_celsius: float | None = None,
    piece_point: PiecePoint | None = None,
    diffusivity_m2_per_s: float | None = None,
    shot_mass_g: float | None = None,
    shot_specific_heat_j_per_g_k: float | None = None,
    mold_mass_g: float | None = None,
    mold_specific_heat_j_per_g_k: float | None = None,
    hands_s: float | None = None,
    molds: SupportsIndex | None = None,
) -> SettingTimeResult:
    """How long a shot sets in a metal mold, and how often one can be made.

    The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold:
    t = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as
    the shot leaves it, where its mass is given.

    >>> setting_time("rod", 9.0, 165.0, hands_s=50.0, molds=2)
    SettingTimeResult(setting_time_s=104.20464250602106, setting_time_min_s=83.36371400481686, setting_time_max_s=128.25186769971822, warms_kelvin=None, in_a_row=None, shot_every_s=77.10232125301053)

    Args:
        section_shape: Shape of the thickest part of a piece. One of ``rod``, ``plate``, ``ball``.
        section_thickness_mm: Thickness of the thickest part of a piece; of a rod or a ball its diameter.
            Unit: mm; 0.2 to 200.
        shot_at_celsius: Temperature at which it is shot, above that at which it is taken out. Unit: °C; -73
            to 427.
        mold_at_celsius: Temperature of the mold before the shot, below that at which a piece is taken out.
            Unit: °C; -73 to 427. Default: 30.
        take_out_celsius: Temperature at which a piece can be taken out. Unit: °C; -73 to 427. Default: 50.
        piece_point: The point of a piece whose temperature counts. Default: center. One of ``center``,
            ``mean``.
        diffusivity_m2_per_s: Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5. Default: 8.0e-8
            m2/s, from 6.5e-8 to 1.0e-7.
        shot_mass_g: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted.
        shot_specific_heat_j_per_g_k: Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10. Default: 1.9.
        mold_mass_g: Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass
            of the shot is needed. Unit: g; 1e-12 to 1e15. Default: none.
        mold_specific_heat_j_per_g_k: Specific heat of the mold; the default is that of aluminum. Unit:
            J/(g.K); 0.1 to 10. Default: 0.897.
        hands_s: Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how
            often a shot can be made is not calculated.
        molds: Number of such molds that are shot in turn. 1 to 1000000. Default: 1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_setting_time_input *")
    made.size = ffi.sizeof("pour_setting_time_input")
    made.section_shape = given.word(SECTION_SHAPE_WORDS, "section_shape", section_shape)
    made.section_thickness_mm = given.number("section_thickness_mm", section_thickness_mm)
    made.shot_at_celsius = given.number("shot_at_celsius", shot_at_celsius)
    made.mold_at_celsius = given.optional_number("mold_at_celsius", mold_at_celsius)
    made.take_out_celsius = given.optional_number("take_out_celsius", take_out_celsius)
    made.piece_point = given.optional_word(PIECE_POINT_WORDS, "piece_point", piece_point)
    made.diffusivity_m2_per_s = given.optional_number("diffusivity_m2_per_s", diffusivity_m2_per_s)
    made.shot_mass_g = given.optional_number("shot_mass_g", shot_mass_g)
    made.shot_specific_heat_j_per_g_k = given.optional_number("shot_specific_heat_j_per_g_k", shot_specific_heat_j_per_g_k)
    made.mold_mass_g = given.optional_number("mold_mass_g", mold_mass_g)
    made.mold_specific_heat_j_per_g_k = given.optional_number("mold_specific_heat_j_per_g_k", mold_specific_heat_j_per_g_k)
    made.hands_s = given.optional_number("hands_s", hands_s)
    made.molds = given.optional_count("molds", molds)
    result = ffi.new("pour_setting_time_result *")
    given.call(
        lib.pour_setting_time,
        made,
        result,
    )
    return SettingTimeResult(
        result.setting_time_s,
        result.setting_time_min_s,
        result.setting_time_max_s,
        if_number(result.warms_kelvin),
        if_count(result.in_a_row),
        if_number(result.shot_every_s),
    )


@dataclass(frozen=True, slots=True)
class StirEveryResult:
    """The results of :func:`stir_every`.

    Attributes:
        stir_every_s: How often to stir, to be safe: in the thinnest melt. Unit: s.
        stir_every_max_s: How often is enough in the thickest melt. Unit: s.
        settling_min_cm_per_s: Speed of the grains in the thickest melt. Unit: cm/s.
        settling_max_cm_per_s: Speed of the grains in the thinnest melt. Unit: cm/s.
    """

    stir_every_s: float
    stir_every_max_s: float
    settling_min_cm_per_s: float
    settling_max_cm_per_s: float


def stir_every(
    grain_mm: float,
    grain_density_g_per_ml: float,
    melt_density_g_per_ml: float,
    melt_depth_mm: float,
    *,
    melt_viscosity_min_mpa_s: float | None = None,
    melt_viscosity_max_mpa_s: float | None = None,
    solids_share: float | None = None,
    unstirred: float | None = None,
) -> StirEveryResult:
    """How often to stir a melt with salt in it, and how fast the salt settles.

    Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that
    passes a sieve (module `process::settling`). Stir before the top share of the depth is without grains: t =
    share · depth/v.

    >>> stir_every(0.3, 2.165, 0.93, 80.0, melt_viscosity_min_mpa_s=500.0, melt_viscosity_max_mpa_s=1000.0)
    StirEveryResult(stir_every_s=46.358618363896404, stir_every_max_s=92.69906432655615, settling_min_cm_per_s=0.008630076320746836, settling_max_cm_per_s=0.017256769684556247)

    Args:
        grain_mm: Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm; 0.001 to 50.
        grain_density_g_per_ml: True density of the grains, above that of the melt. Unit: g/mL; 0.001 to 25.
        melt_density_g_per_ml: Density of the melt, hot. Unit: g/mL; 0.001 to 25.
        melt_depth_mm: Depth of the melt in its cup. Unit: mm; 0.1 to 10000.
        melt_viscosity_min_mpa_s: Lowest viscosity that the melt may have at shot temperature. Where none is
            known, the defaults of both span what such melts may have. Unit: mPa.s; 0.1 to 1e7. Default: 50.
        melt_viscosity_max_mpa_s: Highest viscosity that the melt may have at shot temperature, at least the
            lowest. Unit: mPa.s; 0.1 to 1e7. Default: 5000.
        solids_share: Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to 0.4. Default: 0.
        unstirred: Share of the depth that may be without grains before it is stirred. Unit: 1; 0.001 to 1.
            Default: 0.1.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_stir_every_input *")
    made.size = ffi.sizeof("pour_stir_every_input")
    made.grain_mm = given.number("grain_mm", grain_mm)
    made.grain_density_g_per_ml = given.number("grain_density_g_per_ml", grain_density_g_per_ml)
    made.melt_density_g_per_ml = given.number("melt_density_g_per_ml", melt_density_g_per_ml)
    made.melt_depth_mm = given.number("melt_depth_mm", melt_depth_mm)
    made.melt_viscosity_min_mpa_s = given.optional_number("melt_viscosity_min_mpa_s", melt_viscosity_min_mpa_s)
    made.melt_viscosity_max_mpa_s = given.optional_number("melt_viscosity_max_mpa_s", melt_viscosity_max_mpa_s)
    made.solids_share = given.optional_number("solids_share", solids_share)
    made.unstirred = given.optional_number("unstirred", unstirred)
    result = ffi.new("pour_stir_every_result *")
    given.call(
        lib.pour_stir_every,
        made,
        result,
    )
    return StirEveryResult(
        result.stir_every_s,
        result.stir_every_max_s,
        result.settling_min_cm_per_s,
        result.settling_max_cm_per_s,
    )


def viscosity_of_ball(
    ball_diameter_mm: float,
    ball_density_g_per_ml: float,
    melt_density_g_per_ml: float,
    ball_depth_mm: float,
    ball_time_s: float,
) -> float:
    """Viscosity of a melt, from a ball that was timed as it sank.

    The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).

    >>> viscosity_of_ball(1.0, 7.8, 0.93, 50.0, 20.0)
    1494.5095512811074

    Args:
        ball_diameter_mm: Diameter of the ball, much smaller than that of the vessel. Unit: mm; 0.001 to 50.
        ball_density_g_per_ml: Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to 25.
        melt_density_g_per_ml: Density of the melt, hot. Unit: g/mL; 0.001 to 25.
        ball_depth_mm: How deep the ball sank, let go below the surface. Unit: mm; 1 to 10000.
        ball_time_s: Time that the ball took. Unit: s; 0.01 to 1e6.

    Returns:
        melt_viscosity_mpa_s: Viscosity of the melt. Unit: mPa.s.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("double *")
    given.call(
        lib.pour_viscosity_of_ball,
        given.number("ball_diameter_mm", ball_diameter_mm),
        given.number("ball_density_g_per_ml", ball_density_g_per_ml),
        given.number("melt_density_g_per_ml", melt_density_g_per_ml),
        given.number("ball_depth_mm", ball_depth_mm),
        given.number("ball_time_s", ball_time_s),
        result,
    )
    found: float = result[0]
    return found


@dataclass(frozen=True, slots=True)
class CavityOfWeightsResult:
    """The results of :func:`cavity_of_weights`.

    Attributes:
        cavity_volume_ml: Volume of the cavity. Unit: mL.
        cavity_volume_uncertainty_ml: Its standard uncertainty. Where the feed is not known, that of an even
            spread from 0 to 1 counts. Unit: mL.
        mean_g: Mean of the weights. Unit: g.
        deviation_g: Standard deviation of one. Unit: g.
    """

    cavity_volume_ml: float
    cavity_volume_uncertainty_ml: float
    mean_g: float
    deviation_g: float


def cavity_of_weights(
    weights_g: Iterable[float],
    balance_readability_g: float,
    cold_density_g_per_ml: float,
    *,
    hot_density_g_per_ml: float | None = None,
    voids: float | None = None,
    feed: float | None = None,
    feed_uncertainty: float | None = None,
) -> CavityOfWeightsResult:
    """Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold −
    ρ_hot)]).

    >>> cavity_of_weights([10.0, 10.0], 0.01, 1.0, feed=0.5)
    CavityOfWeightsResult(cavity_volume_ml=10.0, cavity_volume_uncertainty_ml=0.0028867513459481294, mean_g=10.0, deviation_g=0.0)

    Args:
        weights_g: Mass of each piece, one by one. 2 to 100000 of them.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
            Unit: g; 1e-12 to 1e15.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to
            25.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one. Unit:
            g/mL; 0.001 to 25. Default: as ``cold_density_g_per_ml``.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
            1; 0 to 1. Default: 0.5.
        feed_uncertainty: Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70
            %). Unit: 1; 0 to 1. Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_cavity_of_weights_input *")
    made.size = ffi.sizeof("pour_cavity_of_weights_input")
    made.weights_g, made.weights_count = given.list("double[]", 0, "weights_g", weights_g)
    made.balance_readability_g = given.number("balance_readability_g", balance_readability_g)
    made.cold_density_g_per_ml = given.number("cold_density_g_per_ml", cold_density_g_per_ml)
    made.hot_density_g_per_ml = given.optional_number("hot_density_g_per_ml", hot_density_g_per_ml)
    made.voids = given.optional_number("voids", voids)
    made.feed = given.optional_number("feed", feed)
    made.feed_uncertainty = given.optional_number("feed_uncertainty", feed_uncertainty)
    result = ffi.new("pour_cavity_of_weights_result *")
    given.call(
        lib.pour_cavity_of_weights,
        made,
        result,
    )
    return CavityOfWeightsResult(
        result.cavity_volume_ml,
        result.cavity_volume_uncertainty_ml,
        result.mean_g,
        result.deviation_g,
    )


@dataclass(frozen=True, slots=True)
class FeedOfWeightsResult:
    """The results of :func:`feed_of_weights`.

    Attributes:
        feed: Feed share. Unit: 1.
        feed_uncertainty: Its standard uncertainty. Unit: 1.
        mean_g: Mean of the weights. Unit: g.
        deviation_g: Standard deviation of one. Unit: g.
    """

    feed: float
    feed_uncertainty: float
    mean_g: float
    deviation_g: float


def feed_of_weights(
    weights_g: Iterable[float],
    balance_readability_g: float,
    cold_density_g_per_ml: float,
    cavity_volume_ml: float,
    *,
    hot_density_g_per_ml: float | None = None,
    voids: float | None = None,
    volume_uncertainty_ml: float | None = None,
) -> FeedOfWeightsResult:
    """Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot).

    >>> feed_of_weights([10.5, 10.5], 0.01, 1.1, 10.0, hot_density_g_per_ml=1.0)
    FeedOfWeightsResult(feed=0.5, feed_uncertainty=0.002886751345948127, mean_g=10.5, deviation_g=0.0)

    Args:
        weights_g: Mass of each piece, one by one. 2 to 100000 of them.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
            Unit: g; 1e-12 to 1e15.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to
            25.
        cavity_volume_ml: Volume of one cavity. Unit: mL; 1e-9 to 1e15.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one. Unit:
            g/mL; 0.001 to 25. Default: as ``cold_density_g_per_ml``.
        voids: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
        volume_uncertainty_ml: Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    made = ffi.new("pour_feed_of_weights_input *")
    made.size = ffi.sizeof("pour_feed_of_weights_input")
    made.weights_g, made.weights_count = given.list("double[]", 0, "weights_g", weights_g)
    made.balance_readability_g = given.number("balance_readability_g", balance_readability_g)
    made.cold_density_g_per_ml = given.number("cold_density_g_per_ml", cold_density_g_per_ml)
    made.cavity_volume_ml = given.number("cavity_volume_ml", cavity_volume_ml)
    made.hot_density_g_per_ml = given.optional_number("hot_density_g_per_ml", hot_density_g_per_ml)
    made.voids = given.optional_number("voids", voids)
    made.volume_uncertainty_ml = given.optional_number("volume_uncertainty_ml", volume_uncertainty_ml)
    result = ffi.new("pour_feed_of_weights_result *")
    given.call(
        lib.pour_feed_of_weights,
        made,
        result,
    )
    return FeedOfWeightsResult(
        result.feed,
        result.feed_uncertainty,
        result.mean_g,
        result.deviation_g,
    )


@dataclass(frozen=True, slots=True)
class DropOfWeighingsResult:
    """The results of :func:`drop_of_weighings`.

    Attributes:
        drop_mass_g: Mass of one drop. Unit: g.
        drop_mass_uncertainty_g: Its standard uncertainty. Unit: g.
        scatter_g: Standard deviation of one drop against the next. Unit: g.
    """

    drop_mass_g: float
    drop_mass_uncertainty_g: float
    scatter_g: float


def drop_of_weighings(
    drops_weighed: Iterable[tuple[float, float]],
    balance_readability_g: float,
) -> DropOfWeighingsResult:
    """Mass of one drop from several weighings of many.

    >>> drop_of_weighings([(50.0, 2.2), (50.0, 2.2)], 0.01)
    DropOfWeighingsResult(drop_mass_g=0.044000000000000004, drop_mass_uncertainty_g=5.7735026918962585e-05, scatter_g=0.0)

    Args:
        drops_weighed: Drops that were counted and weighed together, each weighing started over. 2 to 1000 of
            them.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
            Unit: g; 1e-12 to 1e15.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_drop_of_weighings_result *")
    given.call(
        lib.pour_drop_of_weighings,
        *given.list("pour_drops_weighed_row[]", 2, "drops_weighed", drops_weighed),
        given.number("balance_readability_g", balance_readability_g),
        result,
    )
    return DropOfWeighingsResult(
        result.drop_mass_g,
        result.drop_mass_uncertainty_g,
        result.scatter_g,
    )


@dataclass(frozen=True, slots=True)
class AsScoopedOfWeighingsResult:
    """The results of :func:`as_scooped_of_weighings`.

    Attributes:
        as_scooped_g_per_ml: Bulk density, level in the spoon. Unit: g/mL.
        as_scooped_uncertainty_g_per_ml: Its standard uncertainty. Unit: g/mL.
        spoonful_g: Mass of one spoonful. Unit: g.
    """

    as_scooped_g_per_ml: float
    as_scooped_uncertainty_g_per_ml: float
    spoonful_g: float


def as_scooped_of_weighings(
    scoops_weighed: Iterable[tuple[float, float]],
    spoon_volume_ml: float,
    balance_readability_g: float,
    *,
    volume_uncertainty_ml: float | None = None,
) -> AsScoopedOfWeighingsResult:
    """Bulk density of a powder from several weighings of level spoonfuls.

    >>> as_scooped_of_weighings([(10.0, 61.0), (10.0, 61.0)], 5.0, 0.1)
    AsScoopedOfWeighingsResult(as_scooped_g_per_ml=1.2199999999999998, as_scooped_uncertainty_g_per_ml=0.0005773502691896258, spoonful_g=6.1)

    Args:
        scoops_weighed: Level spoonfuls that were counted and weighed together, each weighing started over. 2
            to 1000 of them.
        spoon_volume_ml: Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
            Unit: g; 1e-12 to 1e15.
        volume_uncertainty_ml: Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_as_scooped_of_weighings_result *")
    given.call(
        lib.pour_as_scooped_of_weighings,
        *given.list("pour_scoops_weighed_row[]", 2, "scoops_weighed", scoops_weighed),
        given.number("spoon_volume_ml", spoon_volume_ml),
        given.number("balance_readability_g", balance_readability_g),
        given.optional_number("volume_uncertainty_ml", volume_uncertainty_ml),
        result,
    )
    return AsScoopedOfWeighingsResult(
        result.as_scooped_g_per_ml,
        result.as_scooped_uncertainty_g_per_ml,
        result.spoonful_g,
    )


@dataclass(frozen=True, slots=True)
class ResidueOfWeighingsResult:
    """The results of :func:`residue_of_weighings`.

    Attributes:
        injector_residue_ml: Volume that stays in the injector. Unit: mL.
        injector_residue_uncertainty_ml: Its standard uncertainty. Unit: mL.
        residue_mass_g: Its mass. Unit: g.
    """

    injector_residue_ml: float
    injector_residue_uncertainty_ml: float
    residue_mass_g: float


def residue_of_weighings(
    injector_weighed_g: Iterable[tuple[float, float]],
    residue_density_g_per_ml: float,
    balance_readability_g: float,
    *,
    density_uncertainty_g_per_ml: float | None = None,
) -> ResidueOfWeighingsResult:
    """Volume that stays in an injector, from weighings of it clean and then emptied as at work.

    >>> residue_of_weighings([(180.0, 184.0), (180.0, 184.0)], 1.0, 0.1)
    ResidueOfWeighingsResult(injector_residue_ml=4.0000000000000036, injector_residue_uncertainty_ml=0.02886751345948129, residue_mass_g=4.0000000000000036)

    Args:
        injector_weighed_g: Weighings of the injector, each clean and then emptied as at work. 2 to 1000 of
            them.
        residue_density_g_per_ml: Density of what stays in the injector, at the temperature at which it is
            emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
            Unit: g; 1e-12 to 1e15.
        density_uncertainty_g_per_ml: Standard uncertainty of the density of the piece; its bounds are counted
            at twice that. Unit: g/mL; 0 to 25. Default: 0.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("pour_residue_of_weighings_result *")
    given.call(
        lib.pour_residue_of_weighings,
        *given.list("pour_injector_weighed_row[]", 2, "injector_weighed_g", injector_weighed_g),
        given.number("residue_density_g_per_ml", residue_density_g_per_ml),
        given.number("balance_readability_g", balance_readability_g),
        given.optional_number("density_uncertainty_g_per_ml", density_uncertainty_g_per_ml),
        result,
    )
    return ResidueOfWeighingsResult(
        result.injector_residue_ml,
        result.injector_residue_uncertainty_ml,
        result.residue_mass_g,
    )


def price(
    cost: SupportsIndex,
    cost_margin: float,
) -> int:
    """Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop
    keeps.

    price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in
    binary fractions. Costs of materials, work and packing with their packages and currencies: the request
    `cost`.

    >>> price(750, 0.4)
    1250

    Args:
        cost: Cost, in the smallest unit of the currency: cents. 0 to 1000000000.
        cost_margin: Share of the price that the shop keeps (a markup on the cost is another thing). Without
            it there is no price. Unit: 1; 0 to below 1.

    Returns:
        price: Price, in the smallest unit of the currency.

    Raises:
        PourwrightError: What is wrong with the arguments, all of it together.
    """
    given = Arguments()
    result = ffi.new("uint32_t *")
    given.call(
        lib.pour_price,
        given.count("cost", cost),
        given.number("cost_margin", cost_margin),
        result,
    )
    found: int = result[0]
    return found

