"""Calculations on whole columns: NumPy arrays of any length, read where they lie.

It needs NumPy: ``pip install pourwright[numpy]``.

Each column is a one-dimensional array, or a number that counts for all rows (as does an array of one row).
Arrays of ``float64`` are read in place, whatever their strides; other real ones are converted first. What is masked
in a masked array is read as NaN. A parameter that is None is omitted in every row.

Where a parameter has a unit, its column may also hold amounts as texts, in any unit of their kind: ``["1/4 tsp",
"12.5 g"]``. Cups and spoons are those of ``measures`` where the calculation has it, else US customary; ``"1 [cup_m]"``
names its own. A missing text (None, NaN) is read as NaN. A word counts for all rows. A list counts for all rows, or is
an array with one dimension more: a list for each row.

A row that is refused is NaN in the results, and does not stop the others. Pass ``statuses``, an array of ``int32``,
to learn of each row: 0 where it is good, 2 where a number is not finite, 6 where it is refused (a text: 3 where it is
not valid Unicode, 4 where it is longer than 4096 bytes); the function of the same name in :mod:`pourwright` gives the
reason. Words of results are their places, counted from 1.

Calculations on numbers are done in the C library for all rows at once, as is ``convert``. Those that take texts or
lists (``dose_mass``, ``hardness``, ``cavity_of_weights``, ...) are done in a call for each row.

``out`` is where the results go, arrays of ``float64`` with any strides, also those of the columns themselves; of a
calculation with several results a mapping from their names. The interpreter is free for other threads meanwhile.

Made by ``cargo run -p pourwright-generate``; do not edit.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from ._calculations import (
    ALIKE_WORDS,
    Alike,
    FORM_WORDS,
    Form,
    KIND_WORDS,
    Kind,
    MEASURES_WORDS,
    Measures,
    PIECE_POINT_WORDS,
    PiecePoint,
    SCALE_WORDS,
    SECTION_SHAPE_WORDS,
    SHAPE_WORDS,
    Scale,
    SectionShape,
    Shape,
)
from ._columns import (
    Column,
    Floats,
    Lists,
    Statuses,
    Texts,
    by_rows,
    column,
    columnar,
    convert,
    density_of_parts,
    if_column,
    word_of,
)
from ._native import lib

__all__ = [
    "AsScoopedOfWeighingsColumns",
    "BaseToMarkColumns",
    "BatchNeedColumns",
    "BenchMeasureColumns",
    "BudgetLeftColumns",
    "CavityOfWeightsColumns",
    "DegasVesselColumns",
    "DropOfWeighingsColumns",
    "FeedOfWeightsColumns",
    "FlakeCountColumns",
    "FlakeSwapColumns",
    "HeatTimeColumns",
    "InjectorLoadsColumns",
    "LeastPotColumns",
    "MixShareColumns",
    "NextBurstColumns",
    "PieceMassColumns",
    "PotHeatsColumns",
    "RejectRateColumns",
    "ResidueOfWeighingsColumns",
    "SaltConvertColumns",
    "SaltForSinkRateColumns",
    "SaltMassColumns",
    "SaltReachColumns",
    "SettingTimeColumns",
    "ShotFillColumns",
    "ShotsColumns",
    "SinkRateColumns",
    "StaysHotColumns",
    "StirEveryColumns",
    "SwollenVolumeColumns",
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


def convert_number(
    value: Column,
    unit: Texts,
    to: Texts,
    *,
    measures: Measures | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.convert_number`.

    Args:
        value: The number to convert.
        unit: The unit of the number, by trade symbol or UCUM code.
        to: The unit of the answer, by trade symbol or UCUM code.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "value": value,
        "unit": unit,
        "to": to,
        "measures": measures,
    }
    found = by_rows("convert_number", given, None if out is None else {"value": out}, statuses)
    return found["value"]


def dose_mass(
    amount: Texts,
    kind: Kind,
    *,
    material_density_g_per_ml: Column | None = None,
    as_scooped_g_per_ml: Column | None = None,
    drop_mass_g: Column | None = None,
    measures: Measures | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.dose_mass`.

    Args:
        amount: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`.
        kind: What the material is for; powders (pearl, flake, salt) are measured as scooped.
        material_density_g_per_ml: True density of the material; of a plastisol that of the liquid.
        as_scooped_g_per_ml: Bulk density of a powder, level in the spoon and not tapped.
        drop_mass_g: Mass of one drop.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "amount": amount,
        "kind": kind,
        "material_density_g_per_ml": material_density_g_per_ml,
        "as_scooped_g_per_ml": as_scooped_g_per_ml,
        "drop_mass_g": drop_mass_g,
        "measures": measures,
    }
    found = by_rows("dose_mass", given, None if out is None else {"mass_g": out}, statuses)
    return found["mass_g"]


def mass_of_volume(
    volume_ml: Column,
    density_g_per_ml: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.mass_of_volume`.

    Args:
        volume_ml: Volume.
        density_g_per_ml: Density, without voids.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("volume_ml", volume_ml, "mL"),
        column("density_g_per_ml", density_g_per_ml, "g/mL"),
    ]
    found = columnar(
        lib.pour_mass_of_volume_n,
        "pour_mass_of_volume",
        columns,
        {},
        ("mass_g",),
        None if out is None else {"mass_g": out},
        statuses,
    )
    return found["mass_g"]


def volume_of_mass(
    mass_g: Column,
    density_g_per_ml: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.volume_of_mass`.

    Args:
        mass_g: Mass.
        density_g_per_ml: Density, without voids.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("mass_g", mass_g, "g"),
        column("density_g_per_ml", density_g_per_ml, "g/mL"),
    ]
    found = columnar(
        lib.pour_volume_of_mass_n,
        "pour_volume_of_mass",
        columns,
        {},
        ("volume_ml",),
        None if out is None else {"volume_ml": out},
        statuses,
    )
    return found["volume_ml"]


@dataclass(frozen=True, eq=False, slots=True)
class MixShareColumns:
    """The results of :func:`mix_share`.

    Attributes:
        mass_share: Share of its mass. Unit: 1.
        volume_share: Share of its true volume. Unit: 1.
    """

    mass_share: Floats
    volume_share: Floats


def mix_share(
    parts: Lists,
    part: Column,
    *,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> MixShareColumns:
    """Columns of :func:`pourwright.mix_share`.

    Args:
        parts: The parts of the mix: of each its mass and its true density. At least one has a mass above 0.
        part: Which part of the mix, counted from 1.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "parts": parts,
        "part": part,
    }
    found = by_rows("mix_share", given, out, statuses)
    return MixShareColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class SaltConvertColumns:
    """The results of :func:`salt_convert`.

    Attributes:
        loading: The loading as `to_form` states it, in the unit of that form.
        loading_min: Its lower bound where the feed matters and is not known; else the loading.
        loading_max: Its upper bound where the feed matters and is not known; else the loading.
    """

    loading: Floats
    loading_min: Floats
    loading_max: Floats


def salt_convert(
    base_volume_ml: Column,
    base_density_g_per_ml: Column,
    salt_density_g_per_ml: Column,
    form: Form,
    loading: Column,
    to_form: Form,
    *,
    mix_mass_g: Column | None = None,
    mix_volume_ml: Column | None = None,
    hot_volume_ml: Column | None = None,
    shot_temperature_celsius: Column | None = None,
    voids: Column | None = None,
    salt_as_scooped_g_per_ml: Column | None = None,
    salt_expansion_per_kelvin: Column | None = None,
    softener_per_salt: Column | None = None,
    softener_density_g_per_ml: Column | None = None,
    softener_expansion_per_kelvin: Column | None = None,
    most_solids: Column | None = None,
    cavity_volume_ml: Column | None = None,
    feed: Column | None = None,
    hook_mass_g: Column | None = None,
    hook_volume_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> SaltConvertColumns:
    """Columns of :func:`pourwright.salt_convert`.

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride.
        form: The way in which the salt loading is stated.
        loading: The salt loading, as its form states it.
        to_form: The way in which the loading is to be stated.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one.
        shot_temperature_celsius: Temperature at which the mix is shot.
        voids: Void fraction: share of the volume that is air.
        salt_as_scooped_g_per_ml: Bulk density of the salt, level in the spoon; at most its true density. Only
            the form as-scooped needs it.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener.
        most_solids: Maximum share of salt in the finished mix, by true volume.
        cavity_volume_ml: Volume of one cavity.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        hook_mass_g: Mass of hook and weight on a piece; give its volume too.
        hook_volume_ml: Volume that hook and weight displace; give their mass too.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("base_volume_ml", base_volume_ml, "mL"),
        column("base_density_g_per_ml", base_density_g_per_ml, "g/mL"),
        column("salt_density_g_per_ml", salt_density_g_per_ml, "g/mL"),
        column("loading", loading),
        if_column("mix_mass_g", mix_mass_g, "g"),
        if_column("mix_volume_ml", mix_volume_ml, "mL"),
        if_column("hot_volume_ml", hot_volume_ml, "mL"),
        if_column("shot_temperature_celsius", shot_temperature_celsius, "°C"),
        if_column("voids", voids),
        if_column("salt_as_scooped_g_per_ml", salt_as_scooped_g_per_ml, "g/mL"),
        if_column("salt_expansion_per_kelvin", salt_expansion_per_kelvin, "1/K"),
        if_column("softener_per_salt", softener_per_salt),
        if_column("softener_density_g_per_ml", softener_density_g_per_ml, "g/mL"),
        if_column("softener_expansion_per_kelvin", softener_expansion_per_kelvin, "1/K"),
        if_column("most_solids", most_solids),
        if_column("cavity_volume_ml", cavity_volume_ml, "mL"),
        if_column("feed", feed),
        if_column("hook_mass_g", hook_mass_g, "g"),
        if_column("hook_volume_ml", hook_volume_ml, "mL"),
    ]
    found = columnar(
        lib.pour_salt_convert_n,
        "pour_salt_convert",
        columns,
        {"form": word_of(FORM_WORDS, "form", form), "to_form": word_of(FORM_WORDS, "to_form", to_form)},
        ("loading", "loading_min", "loading_max",),
        out,
        statuses,
    )
    return SaltConvertColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class SaltMassColumns:
    """The results of :func:`salt_mass`.

    Attributes:
        salt_mass_g: Mass of salt. Unit: g.
        salt_mass_min_g: Its lower bound where the feed matters and is not known; else the mass. Unit: g.
        salt_mass_max_g: Its upper bound where the feed matters and is not known; else the mass. Unit: g.
        softener_mass_g: Mass of softener that goes in with it. Unit: g.
    """

    salt_mass_g: Floats
    salt_mass_min_g: Floats
    salt_mass_max_g: Floats
    softener_mass_g: Floats


def salt_mass(
    base_volume_ml: Column,
    base_density_g_per_ml: Column,
    salt_density_g_per_ml: Column,
    form: Form,
    loading: Column,
    *,
    mix_mass_g: Column | None = None,
    mix_volume_ml: Column | None = None,
    hot_volume_ml: Column | None = None,
    shot_temperature_celsius: Column | None = None,
    voids: Column | None = None,
    salt_as_scooped_g_per_ml: Column | None = None,
    salt_expansion_per_kelvin: Column | None = None,
    softener_per_salt: Column | None = None,
    softener_density_g_per_ml: Column | None = None,
    softener_expansion_per_kelvin: Column | None = None,
    most_solids: Column | None = None,
    cavity_volume_ml: Column | None = None,
    feed: Column | None = None,
    hook_mass_g: Column | None = None,
    hook_volume_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> SaltMassColumns:
    """Columns of :func:`pourwright.salt_mass`.

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride.
        form: The way in which the salt loading is stated.
        loading: The salt loading, as its form states it.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one.
        shot_temperature_celsius: Temperature at which the mix is shot.
        voids: Void fraction: share of the volume that is air.
        salt_as_scooped_g_per_ml: Bulk density of the salt, level in the spoon; at most its true density. Only
            the form as-scooped needs it.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener.
        most_solids: Maximum share of salt in the finished mix, by true volume.
        cavity_volume_ml: Volume of one cavity.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        hook_mass_g: Mass of hook and weight on a piece; give its volume too.
        hook_volume_ml: Volume that hook and weight displace; give their mass too.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("base_volume_ml", base_volume_ml, "mL"),
        column("base_density_g_per_ml", base_density_g_per_ml, "g/mL"),
        column("salt_density_g_per_ml", salt_density_g_per_ml, "g/mL"),
        column("loading", loading),
        if_column("mix_mass_g", mix_mass_g, "g"),
        if_column("mix_volume_ml", mix_volume_ml, "mL"),
        if_column("hot_volume_ml", hot_volume_ml, "mL"),
        if_column("shot_temperature_celsius", shot_temperature_celsius, "°C"),
        if_column("voids", voids),
        if_column("salt_as_scooped_g_per_ml", salt_as_scooped_g_per_ml, "g/mL"),
        if_column("salt_expansion_per_kelvin", salt_expansion_per_kelvin, "1/K"),
        if_column("softener_per_salt", softener_per_salt),
        if_column("softener_density_g_per_ml", softener_density_g_per_ml, "g/mL"),
        if_column("softener_expansion_per_kelvin", softener_expansion_per_kelvin, "1/K"),
        if_column("most_solids", most_solids),
        if_column("cavity_volume_ml", cavity_volume_ml, "mL"),
        if_column("feed", feed),
        if_column("hook_mass_g", hook_mass_g, "g"),
        if_column("hook_volume_ml", hook_volume_ml, "mL"),
    ]
    found = columnar(
        lib.pour_salt_mass_n,
        "pour_salt_mass",
        columns,
        {"form": word_of(FORM_WORDS, "form", form)},
        ("salt_mass_g", "salt_mass_min_g", "salt_mass_max_g", "softener_mass_g",),
        out,
        statuses,
    )
    return SaltMassColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class SaltReachColumns:
    """The results of :func:`salt_reach`.

    Attributes:
        loading_min: The loading without salt, in the unit of the form.
        loading_max: The maximum loading, in the unit of the form.
    """

    loading_min: Floats
    loading_max: Floats


def salt_reach(
    base_volume_ml: Column,
    base_density_g_per_ml: Column,
    salt_density_g_per_ml: Column,
    form: Form,
    *,
    mix_mass_g: Column | None = None,
    mix_volume_ml: Column | None = None,
    hot_volume_ml: Column | None = None,
    shot_temperature_celsius: Column | None = None,
    voids: Column | None = None,
    salt_as_scooped_g_per_ml: Column | None = None,
    salt_expansion_per_kelvin: Column | None = None,
    softener_per_salt: Column | None = None,
    softener_density_g_per_ml: Column | None = None,
    softener_expansion_per_kelvin: Column | None = None,
    most_solids: Column | None = None,
    cavity_volume_ml: Column | None = None,
    feed: Column | None = None,
    hook_mass_g: Column | None = None,
    hook_volume_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> SaltReachColumns:
    """Columns of :func:`pourwright.salt_reach`.

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride.
        form: The way in which the salt loading is stated.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one.
        shot_temperature_celsius: Temperature at which the mix is shot.
        voids: Void fraction: share of the volume that is air.
        salt_as_scooped_g_per_ml: Bulk density of the salt, level in the spoon; at most its true density. Only
            the form as-scooped needs it.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener.
        most_solids: Maximum share of salt in the finished mix, by true volume.
        cavity_volume_ml: Volume of one cavity.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        hook_mass_g: Mass of hook and weight on a piece; give its volume too.
        hook_volume_ml: Volume that hook and weight displace; give their mass too.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("base_volume_ml", base_volume_ml, "mL"),
        column("base_density_g_per_ml", base_density_g_per_ml, "g/mL"),
        column("salt_density_g_per_ml", salt_density_g_per_ml, "g/mL"),
        if_column("mix_mass_g", mix_mass_g, "g"),
        if_column("mix_volume_ml", mix_volume_ml, "mL"),
        if_column("hot_volume_ml", hot_volume_ml, "mL"),
        if_column("shot_temperature_celsius", shot_temperature_celsius, "°C"),
        if_column("voids", voids),
        if_column("salt_as_scooped_g_per_ml", salt_as_scooped_g_per_ml, "g/mL"),
        if_column("salt_expansion_per_kelvin", salt_expansion_per_kelvin, "1/K"),
        if_column("softener_per_salt", softener_per_salt),
        if_column("softener_density_g_per_ml", softener_density_g_per_ml, "g/mL"),
        if_column("softener_expansion_per_kelvin", softener_expansion_per_kelvin, "1/K"),
        if_column("most_solids", most_solids),
        if_column("cavity_volume_ml", cavity_volume_ml, "mL"),
        if_column("feed", feed),
        if_column("hook_mass_g", hook_mass_g, "g"),
        if_column("hook_volume_ml", hook_volume_ml, "mL"),
    ]
    found = columnar(
        lib.pour_salt_reach_n,
        "pour_salt_reach",
        columns,
        {"form": word_of(FORM_WORDS, "form", form)},
        ("loading_min", "loading_max",),
        out,
        statuses,
    )
    return SaltReachColumns(**found)


def salt_for_density(
    base_volume_ml: Column,
    base_density_g_per_ml: Column,
    salt_density_g_per_ml: Column,
    finished_density_g_per_ml: Column,
    *,
    voids: Column | None = None,
    most_solids: Column | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.salt_for_density`.

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride.
        finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted.
        voids: Void fraction: share of the volume that is air.
        most_solids: Maximum share of salt in the finished mix, by true volume.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("base_volume_ml", base_volume_ml, "mL"),
        column("base_density_g_per_ml", base_density_g_per_ml, "g/mL"),
        column("salt_density_g_per_ml", salt_density_g_per_ml, "g/mL"),
        column("finished_density_g_per_ml", finished_density_g_per_ml, "g/mL"),
        if_column("voids", voids),
        if_column("most_solids", most_solids),
    ]
    found = columnar(
        lib.pour_salt_for_density_n,
        "pour_salt_for_density",
        columns,
        {},
        ("salt_mass_g",),
        None if out is None else {"salt_mass_g": out},
        statuses,
    )
    return found["salt_mass_g"]


@dataclass(frozen=True, eq=False, slots=True)
class SaltForSinkRateColumns:
    """The results of :func:`salt_for_sink_rate`.

    Attributes:
        salt_mass_g: Mass of salt. Unit: g.
        softener_mass_g: Mass of softener that goes in with it. Unit: g.
        finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.
    """

    salt_mass_g: Floats
    softener_mass_g: Floats
    finished_density_g_per_ml: Floats


def salt_for_sink_rate(
    base_volume_ml: Column,
    base_density_g_per_ml: Column,
    salt_density_g_per_ml: Column,
    sink_rate_cm_per_s: Column,
    cavity_volume_ml: Column,
    diameter_mm: Column,
    water_temperature_celsius: Column,
    *,
    length_mm: Column | None = None,
    shape: Shape | None = None,
    mix_mass_g: Column | None = None,
    mix_volume_ml: Column | None = None,
    hot_volume_ml: Column | None = None,
    shot_temperature_celsius: Column | None = None,
    voids: Column | None = None,
    salt_expansion_per_kelvin: Column | None = None,
    softener_per_salt: Column | None = None,
    softener_density_g_per_ml: Column | None = None,
    softener_expansion_per_kelvin: Column | None = None,
    most_solids: Column | None = None,
    feed: Column | None = None,
    hook_mass_g: Column | None = None,
    hook_volume_ml: Column | None = None,
    salinity_practical: Column | None = None,
    salinity_absolute: Column | None = None,
    drop_depth_m: Column | None = None,
    drop_time_s: Column | None = None,
    drop_density_g_per_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> SaltForSinkRateColumns:
    """Columns of :func:`pourwright.salt_for_sink_rate`.

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride.
        sink_rate_cm_per_s: Sink rate: the final speed of the piece.
        cavity_volume_ml: Volume of one cavity.
        diameter_mm: Mean diameter of the piece.
        water_temperature_celsius: Temperature of the water.
        length_mm: Length of a stick, at least 2.01 diameters; not used for a ball.
        shape: Shape of the piece as it sinks: a stick sinks sideways.
        mix_mass_g: Mass of the mix before salt; at least that of its base. Give its volume too.
        mix_volume_ml: Volume of the mix before salt at 20 °C. Give its mass too.
        hot_volume_ml: Volume of the mix before salt at shot temperature; at least the cold one.
        shot_temperature_celsius: Temperature at which the mix is shot.
        voids: Void fraction: share of the volume that is air.
        salt_expansion_per_kelvin: Volumetric thermal expansion of the salt.
        softener_per_salt: Softener that goes in with the salt, mass per mass of salt.
        softener_density_g_per_ml: Density of the softener that goes in with the salt; needed with it.
        softener_expansion_per_kelvin: Volumetric thermal expansion of that softener.
        most_solids: Maximum share of salt in the finished mix, by true volume.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        hook_mass_g: Mass of hook and weight on a piece; give its volume too.
        hook_volume_ml: Volume that hook and weight displace; give their mass too.
        salinity_practical: Practical salinity as a probe reads it, about 35 in the ocean; give this or the
            absolute one. Fresh water without either.
        salinity_absolute: Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this
            or the practical one.
        drop_depth_m: Depth of a timed drop, the piece let go just below the surface.
        drop_time_s: Time of the timed drop.
        drop_density_g_per_ml: Density of the piece that was dropped.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("base_volume_ml", base_volume_ml, "mL"),
        column("base_density_g_per_ml", base_density_g_per_ml, "g/mL"),
        column("salt_density_g_per_ml", salt_density_g_per_ml, "g/mL"),
        column("sink_rate_cm_per_s", sink_rate_cm_per_s, "cm/s"),
        column("cavity_volume_ml", cavity_volume_ml, "mL"),
        column("diameter_mm", diameter_mm, "mm"),
        column("water_temperature_celsius", water_temperature_celsius, "°C"),
        if_column("length_mm", length_mm, "mm"),
        if_column("mix_mass_g", mix_mass_g, "g"),
        if_column("mix_volume_ml", mix_volume_ml, "mL"),
        if_column("hot_volume_ml", hot_volume_ml, "mL"),
        if_column("shot_temperature_celsius", shot_temperature_celsius, "°C"),
        if_column("voids", voids),
        if_column("salt_expansion_per_kelvin", salt_expansion_per_kelvin, "1/K"),
        if_column("softener_per_salt", softener_per_salt),
        if_column("softener_density_g_per_ml", softener_density_g_per_ml, "g/mL"),
        if_column("softener_expansion_per_kelvin", softener_expansion_per_kelvin, "1/K"),
        if_column("most_solids", most_solids),
        if_column("feed", feed),
        if_column("hook_mass_g", hook_mass_g, "g"),
        if_column("hook_volume_ml", hook_volume_ml, "mL"),
        if_column("salinity_practical", salinity_practical),
        if_column("salinity_absolute", salinity_absolute),
        if_column("drop_depth_m", drop_depth_m, "m"),
        if_column("drop_time_s", drop_time_s, "s"),
        if_column("drop_density_g_per_ml", drop_density_g_per_ml, "g/mL"),
    ]
    found = columnar(
        lib.pour_salt_for_sink_rate_n,
        "pour_salt_for_sink_rate",
        columns,
        {"shape": word_of(SHAPE_WORDS, "shape", shape)},
        ("salt_mass_g", "softener_mass_g", "finished_density_g_per_ml",),
        out,
        statuses,
    )
    return SaltForSinkRateColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class ShotFillColumns:
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

    shot_mass_g: Floats
    pieces_mass_g: Floats
    sprue_mass_g: Floats
    missing_mass_g: Floats
    piece_mass_g: Floats
    piece_mass_min_g: Floats
    piece_mass_max_g: Floats
    fed: Floats


def shot_fill(
    cavities: Column,
    cavity_volume_ml: Column,
    cold_density_g_per_ml: Column,
    *,
    hot_density_g_per_ml: Column | None = None,
    voids: Column | None = None,
    feed: Column | None = None,
    sprue_volume_ml: Column | None = None,
    topped_mass_g: Column | None = None,
    layer_share: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> ShotFillColumns:
    """Columns of :func:`pourwright.shot_fill`.

    Args:
        cavities: Number of cavities that a shot fills.
        cavity_volume_ml: Volume of one cavity.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one.
        voids: Void fraction: share of the volume that is air.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        sprue_volume_ml: Volume of the sprue.
        topped_mass_g: Mass that topping off and holding add.
        layer_share: Share of the cavity that this layer of a laminated piece fills.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("cavities", cavities),
        column("cavity_volume_ml", cavity_volume_ml, "mL"),
        column("cold_density_g_per_ml", cold_density_g_per_ml, "g/mL"),
        if_column("hot_density_g_per_ml", hot_density_g_per_ml, "g/mL"),
        if_column("voids", voids),
        if_column("feed", feed),
        if_column("sprue_volume_ml", sprue_volume_ml, "mL"),
        if_column("topped_mass_g", topped_mass_g, "g"),
        if_column("layer_share", layer_share),
    ]
    found = columnar(
        lib.pour_shot_fill_n,
        "pour_shot_fill",
        columns,
        {},
        ("shot_mass_g", "pieces_mass_g", "sprue_mass_g", "missing_mass_g", "piece_mass_g", "piece_mass_min_g", "piece_mass_max_g", "fed",),
        out,
        statuses,
    )
    return ShotFillColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class PieceMassColumns:
    """The results of :func:`piece_mass`.

    Attributes:
        piece_mass_g: Mass of the piece. Unit: g.
        piece_mass_min_g: The same without feed where the feed is not known; else the mass of the piece. Unit:
            g.
        piece_mass_max_g: The same fed in full where the feed is not known; else the mass of the piece. Unit:
            g.
    """

    piece_mass_g: Floats
    piece_mass_min_g: Floats
    piece_mass_max_g: Floats


def piece_mass(
    cavity_volume_ml: Column,
    cold_density_g_per_ml: Column,
    *,
    hot_density_g_per_ml: Column | None = None,
    voids: Column | None = None,
    feed: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> PieceMassColumns:
    """Columns of :func:`pourwright.piece_mass`.

    Args:
        cavity_volume_ml: Volume of one cavity.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one.
        voids: Void fraction: share of the volume that is air.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("cavity_volume_ml", cavity_volume_ml, "mL"),
        column("cold_density_g_per_ml", cold_density_g_per_ml, "g/mL"),
        if_column("hot_density_g_per_ml", hot_density_g_per_ml, "g/mL"),
        if_column("voids", voids),
        if_column("feed", feed),
    ]
    found = columnar(
        lib.pour_piece_mass_n,
        "pour_piece_mass",
        columns,
        {},
        ("piece_mass_g", "piece_mass_min_g", "piece_mass_max_g",),
        out,
        statuses,
    )
    return PieceMassColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class ShotsColumns:
    """The results of :func:`shots`.

    Attributes:
        shots: Number of shots.
        cast: Number of pieces that they cast.
    """

    shots: Floats
    cast: Floats


def shots(
    pieces: Column,
    cavities: Column,
    *,
    rejects: Column | None = None,
    confidence: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> ShotsColumns:
    """Columns of :func:`pourwright.shots`.

    Args:
        pieces: Number of good pieces needed.
        cavities: Number of cavities that a shot fills.
        rejects: Share of pieces that are not fit to sell.
        confidence: Confidence that enough good pieces come out.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("pieces", pieces),
        column("cavities", cavities),
        if_column("rejects", rejects),
        if_column("confidence", confidence),
    ]
    found = columnar(
        lib.pour_shots_n,
        "pour_shots",
        columns,
        {},
        ("shots", "cast",),
        out,
        statuses,
    )
    return ShotsColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class InjectorLoadsColumns:
    """The results of :func:`injector_loads`.

    Attributes:
        loads: Number of injector loads.
        shots_per_load: Whole shots in one load.
        shots_in_last: Shots from the last load.
    """

    loads: Floats
    shots_per_load: Floats
    shots_in_last: Floats


def injector_loads(
    shots: Column,
    shot_mass_g: Column,
    shot_density_g_per_ml: Column,
    injector_capacity_ml: Column,
    *,
    injector_residue_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> InjectorLoadsColumns:
    """Columns of :func:`pourwright.injector_loads`.

    Args:
        shots: Number of shots.
        shot_mass_g: Mass of one shot, sprue included.
        shot_density_g_per_ml: Density of what the injector draws: hot, voids counted.
        injector_capacity_ml: Volume that the injector takes up at most.
        injector_residue_ml: Volume that stays in the injector each time it is emptied; below its capacity.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("shots", shots),
        column("shot_mass_g", shot_mass_g, "g"),
        column("shot_density_g_per_ml", shot_density_g_per_ml, "g/mL"),
        column("injector_capacity_ml", injector_capacity_ml, "mL"),
        if_column("injector_residue_ml", injector_residue_ml, "mL"),
    ]
    found = columnar(
        lib.pour_injector_loads_n,
        "pour_injector_loads",
        columns,
        {},
        ("loads", "shots_per_load", "shots_in_last",),
        out,
        statuses,
    )
    return InjectorLoadsColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class BatchNeedColumns:
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

    total_mass_g: Floats
    drawn_mass_g: Floats
    returned_mass_g: Floats
    pieces_mass_g: Floats
    sprues_mass_g: Floats
    kept_mass_g: Floats
    in_cup_mass_g: Floats
    shots: Floats
    loads: Floats
    shots_per_load: Floats
    shots_in_last: Floats


def batch_need(
    pieces: Column,
    cavities: Column,
    shot_mass_g: Column,
    shot_density_g_per_ml: Column,
    injector_capacity_ml: Column,
    *,
    injector_residue_ml: Column | None = None,
    cleanings: Column | None = None,
    sprue_mass_g: Column | None = None,
    returned: Column | None = None,
    pot_film_g: Column | None = None,
    pot_heel_g: Column | None = None,
    rejects: Column | None = None,
    confidence: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> BatchNeedColumns:
    """Columns of :func:`pourwright.batch_need`.

    Args:
        pieces: Number of good pieces needed.
        cavities: Number of cavities that a shot fills.
        shot_mass_g: Mass of one shot, sprue included.
        shot_density_g_per_ml: Density of what the injector draws: hot, voids counted.
        injector_capacity_ml: Volume that the injector takes up at most.
        injector_residue_ml: Volume that stays in the injector each time it is emptied; below its capacity.
        cleanings: Number of times the injector is cleaned or goes cold, the last time included.
        sprue_mass_g: Mass of a shot that stays as sprue; at most the mass of the shot.
        returned: Share of the sprues that is melted again.
        pot_film_g: Mass that clings to the wall of the cup, part of the heel.
        pot_heel_g: Mass that cannot be drawn from the cup, its film included.
        rejects: Share of pieces that are not fit to sell.
        confidence: Confidence that enough good pieces come out.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("pieces", pieces),
        column("cavities", cavities),
        column("shot_mass_g", shot_mass_g, "g"),
        column("shot_density_g_per_ml", shot_density_g_per_ml, "g/mL"),
        column("injector_capacity_ml", injector_capacity_ml, "mL"),
        if_column("injector_residue_ml", injector_residue_ml, "mL"),
        if_column("cleanings", cleanings),
        if_column("sprue_mass_g", sprue_mass_g, "g"),
        if_column("returned", returned),
        if_column("pot_film_g", pot_film_g, "g"),
        if_column("pot_heel_g", pot_heel_g, "g"),
        if_column("rejects", rejects),
        if_column("confidence", confidence),
    ]
    found = columnar(
        lib.pour_batch_need_n,
        "pour_batch_need",
        columns,
        {},
        ("total_mass_g", "drawn_mass_g", "returned_mass_g", "pieces_mass_g", "sprues_mass_g", "kept_mass_g", "in_cup_mass_g", "shots", "loads", "shots_per_load", "shots_in_last",),
        out,
        statuses,
    )
    return BatchNeedColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class BaseToMarkColumns:
    """The results of :func:`base_to_mark`.

    Attributes:
        base_volume_ml: Volume of base: the mark. Unit: mL.
        base_mass_g: Mass of that base. Unit: g.
        mix_mass_g: Mass of the mix with all doses. Unit: g.
        surplus_mass_g: Mass that is more than needed. Unit: g.
        extra_shots: Whole shots that the surplus gives, where the mass of a shot is given.
    """

    base_volume_ml: Floats
    base_mass_g: Floats
    mix_mass_g: Floats
    surplus_mass_g: Floats
    extra_shots: Floats


def base_to_mark(
    mix_needed_g: Column,
    base_fraction: Column,
    base_density_g_per_ml: Column,
    cup_capacity_ml: Column,
    *,
    cup_mark_ml: Column | None = None,
    shot_mass_g: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> BaseToMarkColumns:
    """Columns of :func:`pourwright.base_to_mark`.

    Args:
        mix_needed_g: Mass of mix that is needed.
        base_fraction: Share of base in the mix, by mass.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        cup_capacity_ml: Volume of the cup up to its last mark.
        cup_mark_ml: Distance between the marks of the cup.
        shot_mass_g: Mass of one shot, sprue included.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("mix_needed_g", mix_needed_g, "g"),
        column("base_fraction", base_fraction),
        column("base_density_g_per_ml", base_density_g_per_ml, "g/mL"),
        column("cup_capacity_ml", cup_capacity_ml, "mL"),
        if_column("cup_mark_ml", cup_mark_ml, "mL"),
        if_column("shot_mass_g", shot_mass_g, "g"),
    ]
    found = columnar(
        lib.pour_base_to_mark_n,
        "pour_base_to_mark",
        columns,
        {},
        ("base_volume_ml", "base_mass_g", "mix_mass_g", "surplus_mass_g", "extra_shots",),
        out,
        statuses,
    )
    return BaseToMarkColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class LeastPotColumns:
    """The results of :func:`least_pot`.

    Attributes:
        mix_mass_g: Mass of the mix. Unit: g.
        base_mass_g: Mass of base in it. Unit: g.
    """

    mix_mass_g: Floats
    base_mass_g: Floats


def least_pot(
    doses: Lists,
    base_fraction: Column,
    *,
    oven_least_g: Column | None = None,
    injector_least_g: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> LeastPotColumns:
    """Columns of :func:`pourwright.least_pot`.

    Args:
        doses: The doses: of each its smallest step, its tolerance and its ratio to the base.
        base_fraction: Share of base in the mix, by mass.
        oven_least_g: Smallest mix that the oven heats evenly.
        injector_least_g: Smallest mix that the injector can draw from.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "doses": doses,
        "base_fraction": base_fraction,
        "oven_least_g": oven_least_g,
        "injector_least_g": injector_least_g,
    }
    found = by_rows("least_pot", given, out, statuses)
    return LeastPotColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class RejectRateColumns:
    """The results of :func:`reject_rate`.

    Attributes:
        rejects: Share of rejects. Unit: 1.
        rejects_min: Its lower bound. Unit: 1.
        rejects_max: Its upper bound. Unit: 1.
    """

    rejects: Floats
    rejects_min: Floats
    rejects_max: Floats


def reject_rate(
    cast_pieces: Column,
    reject_count: Column,
    *,
    confidence: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> RejectRateColumns:
    """Columns of :func:`pourwright.reject_rate`.

    Args:
        cast_pieces: Number of pieces that were cast.
        reject_count: Number of them that are not fit to sell.
        confidence: Confidence that enough good pieces come out.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("cast_pieces", cast_pieces),
        column("reject_count", reject_count),
        if_column("confidence", confidence),
    ]
    found = columnar(
        lib.pour_reject_rate_n,
        "pour_reject_rate",
        columns,
        {},
        ("rejects", "rejects_min", "rejects_max",),
        out,
        statuses,
    )
    return RejectRateColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class BenchMeasureColumns:
    """The results of :func:`bench_measure`.

    Attributes:
        mass_g: Mass that it gives. Unit: g.
        deviation: (given − needed)/needed. Unit: 1.
        tool: The tool: balance, cup, spoons or drops. 1 balance, 2 cup, 3 spoons, 4 drops.
        acts: Amount of handling: readings, fillings, spoonfuls, tens of drops.
        drops: Number of drops.
        spoonfuls: Number of level spoonfuls of each spoon, in the order of the spoons. A row of them for each
            row.
        cup: Which cup, counted from 1; 0 without one.
        cup_fillings: Number of times that cup is filled to its last mark.
        cup_mark: Mark to which it is filled once more, counted from 1; 0 where it is not.
    """

    mass_g: Floats
    deviation: Floats
    tool: Floats
    acts: Floats
    drops: Floats
    spoonfuls: Floats
    cup: Floats
    cup_fillings: Floats
    cup_mark: Floats


def bench_measure(
    mass_to_measure_g: Column,
    *,
    tolerance: Column | None = None,
    balance_readability_g: Column | None = None,
    balance_capacity_g: Column | None = None,
    balance_least_load_g: Column | None = None,
    spoons_ml: Lists | None = None,
    cups: Lists | None = None,
    as_measured_density_g_per_ml: Column | None = None,
    drop_mass_g: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> BenchMeasureColumns:
    """Columns of :func:`pourwright.bench_measure`.

    Args:
        mass_to_measure_g: Mass to measure.
        tolerance: Largest relative error that is accepted.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        balance_capacity_g: Highest load of the balance.
        balance_least_load_g: Minimum load for which the balance is trusted.
        spoons_ml: Volumes of the measuring spoons.
        cups: The cups with evenly spaced marks: of each the distance between marks and the capacity.
        as_measured_density_g_per_ml: Density of the material in a measure: of a liquid its density, of a
            powder its bulk density, level and not tapped.
        drop_mass_g: Mass of one drop.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "mass_to_measure_g": mass_to_measure_g,
        "tolerance": tolerance,
        "balance_readability_g": balance_readability_g,
        "balance_capacity_g": balance_capacity_g,
        "balance_least_load_g": balance_least_load_g,
        "spoons_ml": spoons_ml,
        "cups": cups,
        "as_measured_density_g_per_ml": as_measured_density_g_per_ml,
        "drop_mass_g": drop_mass_g,
    }
    found = by_rows("bench_measure", given, out, statuses)
    return BenchMeasureColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class SinkRateColumns:
    """The results of :func:`sink_rate`.

    Attributes:
        sink_rate_cm_per_s: Sink rate. Unit: cm/s.
        sink_rate_min_cm_per_s: Lower bound; 0 where the piece may hang or float. Unit: cm/s.
        sink_rate_max_cm_per_s: Upper bound. Unit: cm/s.
        motion: Whether it sinks straight: straight, may-swing or swings. 1 straight, 2 may-swing, 3 swings.
        reynolds: Reynolds number. Unit: 1.
        drag_coefficient: Drag coefficient, on length times diameter of a stick and the cross-section of a
            ball. Unit: 1.
        sink_time_s: Time to the depth, let go at rest just below the surface. Unit: s.
    """

    sink_rate_cm_per_s: Floats
    sink_rate_min_cm_per_s: Floats
    sink_rate_max_cm_per_s: Floats
    motion: Floats
    reynolds: Floats
    drag_coefficient: Floats
    sink_time_s: Floats


def sink_rate(
    piece_density_g_per_ml: Column,
    piece_volume_ml: Column,
    diameter_mm: Column,
    water_temperature_celsius: Column,
    *,
    length_mm: Column | None = None,
    shape: Shape | None = None,
    hook_mass_g: Column | None = None,
    hook_volume_ml: Column | None = None,
    salinity_practical: Column | None = None,
    salinity_absolute: Column | None = None,
    density_uncertainty_g_per_ml: Column | None = None,
    depth_m: Column | None = None,
    drop_depth_m: Column | None = None,
    drop_time_s: Column | None = None,
    drop_density_g_per_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> SinkRateColumns:
    """Columns of :func:`pourwright.sink_rate`.

    Args:
        piece_density_g_per_ml: Density of the piece, its salt and voids counted.
        piece_volume_ml: Volume of the piece without its hook.
        diameter_mm: Mean diameter of the piece.
        water_temperature_celsius: Temperature of the water.
        length_mm: Length of a stick, at least 2.01 diameters; not used for a ball.
        shape: Shape of the piece as it sinks: a stick sinks sideways.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too.
        hook_volume_ml: Volume that hook and weight displace; give their mass too.
        salinity_practical: Practical salinity as a probe reads it, about 35 in the ocean; give this or the
            absolute one. Fresh water without either.
        salinity_absolute: Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this
            or the practical one.
        density_uncertainty_g_per_ml: Standard uncertainty of the density of the piece; its bounds are counted
            at twice that.
        depth_m: Depth to give the sink time for.
        drop_depth_m: Depth of a timed drop, the piece let go just below the surface.
        drop_time_s: Time of the timed drop.
        drop_density_g_per_ml: Density of the piece that was dropped.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("piece_density_g_per_ml", piece_density_g_per_ml, "g/mL"),
        column("piece_volume_ml", piece_volume_ml, "mL"),
        column("diameter_mm", diameter_mm, "mm"),
        column("water_temperature_celsius", water_temperature_celsius, "°C"),
        if_column("length_mm", length_mm, "mm"),
        if_column("hook_mass_g", hook_mass_g, "g"),
        if_column("hook_volume_ml", hook_volume_ml, "mL"),
        if_column("salinity_practical", salinity_practical),
        if_column("salinity_absolute", salinity_absolute),
        if_column("density_uncertainty_g_per_ml", density_uncertainty_g_per_ml, "g/mL"),
        if_column("depth_m", depth_m, "m"),
        if_column("drop_depth_m", drop_depth_m, "m"),
        if_column("drop_time_s", drop_time_s, "s"),
        if_column("drop_density_g_per_ml", drop_density_g_per_ml, "g/mL"),
    ]
    found = columnar(
        lib.pour_sink_rate_n,
        "pour_sink_rate",
        columns,
        {"shape": word_of(SHAPE_WORDS, "shape", shape)},
        ("sink_rate_cm_per_s", "sink_rate_min_cm_per_s", "sink_rate_max_cm_per_s", "motion", "reynolds", "drag_coefficient", "sink_time_s",),
        out,
        statuses,
    )
    return SinkRateColumns(**found)


def density_for_sink_rate(
    sink_rate_cm_per_s: Column,
    piece_volume_ml: Column,
    diameter_mm: Column,
    water_temperature_celsius: Column,
    *,
    length_mm: Column | None = None,
    shape: Shape | None = None,
    hook_mass_g: Column | None = None,
    hook_volume_ml: Column | None = None,
    salinity_practical: Column | None = None,
    salinity_absolute: Column | None = None,
    drop_depth_m: Column | None = None,
    drop_time_s: Column | None = None,
    drop_density_g_per_ml: Column | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.density_for_sink_rate`.

    Args:
        sink_rate_cm_per_s: Sink rate: the final speed of the piece.
        piece_volume_ml: Volume of the piece without its hook.
        diameter_mm: Mean diameter of the piece.
        water_temperature_celsius: Temperature of the water.
        length_mm: Length of a stick, at least 2.01 diameters; not used for a ball.
        shape: Shape of the piece as it sinks: a stick sinks sideways.
        hook_mass_g: Mass of hook and weight on a piece; give its volume too.
        hook_volume_ml: Volume that hook and weight displace; give their mass too.
        salinity_practical: Practical salinity as a probe reads it, about 35 in the ocean; give this or the
            absolute one. Fresh water without either.
        salinity_absolute: Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this
            or the practical one.
        drop_depth_m: Depth of a timed drop, the piece let go just below the surface.
        drop_time_s: Time of the timed drop.
        drop_density_g_per_ml: Density of the piece that was dropped.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("sink_rate_cm_per_s", sink_rate_cm_per_s, "cm/s"),
        column("piece_volume_ml", piece_volume_ml, "mL"),
        column("diameter_mm", diameter_mm, "mm"),
        column("water_temperature_celsius", water_temperature_celsius, "°C"),
        if_column("length_mm", length_mm, "mm"),
        if_column("hook_mass_g", hook_mass_g, "g"),
        if_column("hook_volume_ml", hook_volume_ml, "mL"),
        if_column("salinity_practical", salinity_practical),
        if_column("salinity_absolute", salinity_absolute),
        if_column("drop_depth_m", drop_depth_m, "m"),
        if_column("drop_time_s", drop_time_s, "s"),
        if_column("drop_density_g_per_ml", drop_density_g_per_ml, "g/mL"),
    ]
    found = columnar(
        lib.pour_density_for_sink_rate_n,
        "pour_density_for_sink_rate",
        columns,
        {"shape": word_of(SHAPE_WORDS, "shape", shape)},
        ("piece_density_g_per_ml",),
        None if out is None else {"piece_density_g_per_ml": out},
        statuses,
    )
    return found["piece_density_g_per_ml"]


def hardness(
    points: Lists,
    scale: Scale,
    softener_ratio: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.hardness`.

    Args:
        points: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading.
        scale: The scale of the durometer.
        softener_ratio: Softener or hardener, mass per mass of base; between the measured points.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "points": points,
        "scale": scale,
        "softener_ratio": softener_ratio,
    }
    found = by_rows("hardness", given, None if out is None else {"hardness": out}, statuses)
    return found["hardness"]


def softener_ratio(
    points: Lists,
    scale: Scale,
    hardness: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.softener_ratio`.

    Args:
        points: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading.
        scale: The scale of the durometer.
        hardness: Durometer reading.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "points": points,
        "scale": scale,
        "hardness": hardness,
    }
    found = by_rows("softener_ratio", given, None if out is None else {"softener_ratio": out}, statuses)
    return found["softener_ratio"]


def salted_softener(
    salted_points: Lists,
    salt_of_base: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.salted_softener`.

    Args:
        salted_points: The shop's own measured points, by rising salt: of each the salt and the softener, mass
            per mass of base.
        salt_of_base: Salt, mass per mass of base; between the measured points.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "salted_points": salted_points,
        "salt_of_base": salt_of_base,
    }
    found = by_rows("salted_softener", given, None if out is None else {"softener_ratio": out}, statuses)
    return found["softener_ratio"]


def water_density(
    water_temperature_celsius: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.water_density`.

    Args:
        water_temperature_celsius: Temperature of the water.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("water_temperature_celsius", water_temperature_celsius, "°C"),
    ]
    found = columnar(
        lib.pour_water_density_n,
        "pour_water_density",
        columns,
        {},
        ("density_g_per_ml",),
        None if out is None else {"density_g_per_ml": out},
        statuses,
    )
    return found["density_g_per_ml"]


def cavity_of_water(
    water_mass_g: Column,
    water_temperature_celsius: Column,
    *,
    air_pressure_kpa: Column | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.cavity_of_water`.

    Args:
        water_mass_g: Reading of the balance for the water in one cavity: filled less empty.
        water_temperature_celsius: Temperature of the water.
        air_pressure_kpa: Air pressure at the balance, not reduced to sea level.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("water_mass_g", water_mass_g, "g"),
        column("water_temperature_celsius", water_temperature_celsius, "°C"),
        if_column("air_pressure_kpa", air_pressure_kpa, "kPa"),
    ]
    found = columnar(
        lib.pour_cavity_of_water_n,
        "pour_cavity_of_water",
        columns,
        {},
        ("cavity_volume_ml",),
        None if out is None else {"cavity_volume_ml": out},
        statuses,
    )
    return found["cavity_volume_ml"]


def standard_pressure(
    altitude_m: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.standard_pressure`.

    Args:
        altitude_m: Height above sea level, as a map gives it; negative below it.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("altitude_m", altitude_m, "m"),
    ]
    found = columnar(
        lib.pour_standard_pressure_n,
        "pour_standard_pressure",
        columns,
        {},
        ("station_pressure_kpa",),
        None if out is None else {"station_pressure_kpa": out},
        statuses,
    )
    return found["station_pressure_kpa"]


def station_pressure(
    reported_pressure_kpa: Column,
    altitude_m: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.station_pressure`.

    Args:
        reported_pressure_kpa: Air pressure as a weather report gives it, reduced to sea level; needs the
            altitude.
        altitude_m: Height above sea level, as a map gives it; negative below it.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("reported_pressure_kpa", reported_pressure_kpa, "kPa"),
        column("altitude_m", altitude_m, "m"),
    ]
    found = columnar(
        lib.pour_station_pressure_n,
        "pour_station_pressure",
        columns,
        {},
        ("station_pressure_kpa",),
        None if out is None else {"station_pressure_kpa": out},
        statuses,
    )
    return found["station_pressure_kpa"]


@dataclass(frozen=True, eq=False, slots=True)
class SwollenVolumeColumns:
    """The results of :func:`swollen_volume`.

    Attributes:
        swollen_volume_ml: Volume in the vacuum. Unit: mL.
        standing_volume_ml: Volume before, bubbles included. Unit: mL.
        absolute_pressure_kpa: Pressure that is left in the chamber. Unit: kPa.
    """

    swollen_volume_ml: Floats
    standing_volume_ml: Floats
    absolute_pressure_kpa: Floats


def swollen_volume(
    liquid_volume_ml: Column,
    entrained_air: Column,
    station_pressure_kpa: Column,
    *,
    gauge_vacuum_kpa: Column | None = None,
    absolute_pressure_kpa: Column | None = None,
    dial_tolerance_kpa: Column | None = None,
    vapor_pressure_kpa: Column | None = None,
    damp_at_celsius: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> SwollenVolumeColumns:
    """Columns of :func:`pourwright.swollen_volume`.

    Args:
        liquid_volume_ml: Volume of the pot, cold and without air.
        entrained_air: Share of air in the mix by volume, under the outside pressure.
        station_pressure_kpa: Air pressure at the place itself, not reduced to sea level.
        gauge_vacuum_kpa: Reading of a vacuum gauge, which counts down from the air outside; give this or the
            absolute pressure.
        absolute_pressure_kpa: Pressure that is left in the chamber, counted from nothing at all; give this or
            the gauge vacuum.
        dial_tolerance_kpa: How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 %
            of a common dial.
        vapor_pressure_kpa: Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the
            chamber.
        damp_at_celsius: Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("liquid_volume_ml", liquid_volume_ml, "mL"),
        column("entrained_air", entrained_air),
        column("station_pressure_kpa", station_pressure_kpa, "kPa"),
        if_column("gauge_vacuum_kpa", gauge_vacuum_kpa, "kPa"),
        if_column("absolute_pressure_kpa", absolute_pressure_kpa, "kPa"),
        if_column("dial_tolerance_kpa", dial_tolerance_kpa, "kPa"),
        if_column("vapor_pressure_kpa", vapor_pressure_kpa, "kPa"),
        if_column("damp_at_celsius", damp_at_celsius, "°C"),
    ]
    found = columnar(
        lib.pour_swollen_volume_n,
        "pour_swollen_volume",
        columns,
        {},
        ("swollen_volume_ml", "standing_volume_ml", "absolute_pressure_kpa",),
        out,
        statuses,
    )
    return SwollenVolumeColumns(**found)


def entrained_air(
    rise: Column,
    station_pressure_kpa: Column,
    *,
    gauge_vacuum_kpa: Column | None = None,
    absolute_pressure_kpa: Column | None = None,
    dial_tolerance_kpa: Column | None = None,
    vapor_pressure_kpa: Column | None = None,
    damp_at_celsius: Column | None = None,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.entrained_air`.

    Args:
        rise: Level of a pot in the vacuum over its level before; give this or the entrained air.
        station_pressure_kpa: Air pressure at the place itself, not reduced to sea level.
        gauge_vacuum_kpa: Reading of a vacuum gauge, which counts down from the air outside; give this or the
            absolute pressure.
        absolute_pressure_kpa: Pressure that is left in the chamber, counted from nothing at all; give this or
            the gauge vacuum.
        dial_tolerance_kpa: How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 %
            of a common dial.
        vapor_pressure_kpa: Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the
            chamber.
        damp_at_celsius: Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("rise", rise),
        column("station_pressure_kpa", station_pressure_kpa, "kPa"),
        if_column("gauge_vacuum_kpa", gauge_vacuum_kpa, "kPa"),
        if_column("absolute_pressure_kpa", absolute_pressure_kpa, "kPa"),
        if_column("dial_tolerance_kpa", dial_tolerance_kpa, "kPa"),
        if_column("vapor_pressure_kpa", vapor_pressure_kpa, "kPa"),
        if_column("damp_at_celsius", damp_at_celsius, "°C"),
    ]
    found = columnar(
        lib.pour_entrained_air_n,
        "pour_entrained_air",
        columns,
        {},
        ("entrained_air",),
        None if out is None else {"entrained_air": out},
        statuses,
    )
    return found["entrained_air"]


@dataclass(frozen=True, eq=False, slots=True)
class DegasVesselColumns:
    """The results of :func:`degas_vessel`.

    Attributes:
        vessel_volume_ml: Volume to the brim of a vessel that takes the pot at once. Unit: mL.
        fill_mark_ml: Level to fill the given vessel to at most, bubbles included. Unit: mL.
        fills: Number of fills of the given vessel.
        fill_level_ml: Level of each fill, shared out evenly, bubbles included. Unit: mL.
        fill_swollen_ml: Volume of an even fill in the vacuum. Unit: mL.
    """

    vessel_volume_ml: Floats
    fill_mark_ml: Floats
    fills: Floats
    fill_level_ml: Floats
    fill_swollen_ml: Floats


def degas_vessel(
    liquid_volume_ml: Column,
    entrained_air: Column,
    station_pressure_kpa: Column,
    *,
    gauge_vacuum_kpa: Column | None = None,
    absolute_pressure_kpa: Column | None = None,
    dial_tolerance_kpa: Column | None = None,
    vapor_pressure_kpa: Column | None = None,
    damp_at_celsius: Column | None = None,
    vessel_spare: Column | None = None,
    vessel_brim_ml: Column | None = None,
    vessel_mark_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> DegasVesselColumns:
    """Columns of :func:`pourwright.degas_vessel`.

    Args:
        liquid_volume_ml: Volume of the pot, cold and without air.
        entrained_air: Share of air in the mix by volume, under the outside pressure.
        station_pressure_kpa: Air pressure at the place itself, not reduced to sea level.
        gauge_vacuum_kpa: Reading of a vacuum gauge, which counts down from the air outside; give this or the
            absolute pressure.
        absolute_pressure_kpa: Pressure that is left in the chamber, counted from nothing at all; give this or
            the gauge vacuum.
        dial_tolerance_kpa: How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 %
            of a common dial.
        vapor_pressure_kpa: Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the
            chamber.
        damp_at_celsius: Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot.
        vessel_spare: Share of the vessel that stays empty.
        vessel_brim_ml: Volume of the vessel up to its brim.
        vessel_mark_ml: Distance between the vessel's marks.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("liquid_volume_ml", liquid_volume_ml, "mL"),
        column("entrained_air", entrained_air),
        column("station_pressure_kpa", station_pressure_kpa, "kPa"),
        if_column("gauge_vacuum_kpa", gauge_vacuum_kpa, "kPa"),
        if_column("absolute_pressure_kpa", absolute_pressure_kpa, "kPa"),
        if_column("dial_tolerance_kpa", dial_tolerance_kpa, "kPa"),
        if_column("vapor_pressure_kpa", vapor_pressure_kpa, "kPa"),
        if_column("damp_at_celsius", damp_at_celsius, "°C"),
        if_column("vessel_spare", vessel_spare),
        if_column("vessel_brim_ml", vessel_brim_ml, "mL"),
        if_column("vessel_mark_ml", vessel_mark_ml, "mL"),
    ]
    found = columnar(
        lib.pour_degas_vessel_n,
        "pour_degas_vessel",
        columns,
        {},
        ("vessel_volume_ml", "fill_mark_ml", "fills", "fill_level_ml", "fill_swollen_ml",),
        out,
        statuses,
    )
    return DegasVesselColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class FlakeCountColumns:
    """The results of :func:`flake_count`.

    Attributes:
        particles: Number of particles, not rounded. Unit: 1.
        area_cm2: Area of film, one face of every particle. Unit: cm2.
    """

    particles: Floats
    area_cm2: Floats


def flake_count(
    cut: Texts,
    thickness_um: Column,
    film_density_g_per_ml: Column,
    flake_dose_g: Column,
    *,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> FlakeCountColumns:
    """Columns of :func:`pourwright.flake_count`.

    Args:
        cut: Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.
        thickness_um: Thickness of the film; below the size of the cut.
        film_density_g_per_ml: Density of the film that the flake is cut from.
        flake_dose_g: Mass of the dose of flake.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "cut": cut,
        "thickness_um": thickness_um,
        "film_density_g_per_ml": film_density_g_per_ml,
        "flake_dose_g": flake_dose_g,
    }
    found = by_rows("flake_count", given, out, statuses)
    return FlakeCountColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class FlakeSwapColumns:
    """The results of :func:`flake_swap`.

    Attributes:
        mass_g: Mass of the other flake. Unit: g.
        scoop_ml: Volume to scoop of it, where its bulk density is given. Unit: mL.
        count_ratio: Particles of the other dose over those of the first. Unit: 1.
        area_ratio: Area of the other dose over that of the first. Unit: 1.
    """

    mass_g: Floats
    scoop_ml: Floats
    count_ratio: Floats
    area_ratio: Floats


def flake_swap(
    cut: Texts,
    thickness_um: Column,
    film_density_g_per_ml: Column,
    flake_dose_g: Column,
    other_cut: Texts,
    other_thickness_um: Column,
    other_film_density_g_per_ml: Column,
    *,
    other_as_scooped_g_per_ml: Column | None = None,
    alike: Alike | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> FlakeSwapColumns:
    """Columns of :func:`pourwright.flake_swap`.

    Args:
        cut: Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.
        thickness_um: Thickness of the film; below the size of the cut.
        film_density_g_per_ml: Density of the film that the flake is cut from.
        flake_dose_g: Mass of the dose of flake.
        other_cut: Size and shape of the other flake.
        other_thickness_um: Thickness of the film of the other flake; below the size of its cut.
        other_film_density_g_per_ml: Density of the film of the other flake.
        other_as_scooped_g_per_ml: Bulk density of the other flake, level in the spoon.
        alike: What the two doses of flake have in common: the number of particles or the area of film.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "cut": cut,
        "thickness_um": thickness_um,
        "film_density_g_per_ml": film_density_g_per_ml,
        "flake_dose_g": flake_dose_g,
        "other_cut": other_cut,
        "other_thickness_um": other_thickness_um,
        "other_film_density_g_per_ml": other_film_density_g_per_ml,
        "other_as_scooped_g_per_ml": other_as_scooped_g_per_ml,
        "alike": alike,
    }
    found = by_rows("flake_swap", given, out, statuses)
    return FlakeSwapColumns(**found)


def color_difference(
    lightness: Column,
    a: Column,
    b: Column,
    other_lightness: Column,
    other_a: Column,
    other_b: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.color_difference`.

    Args:
        lightness: L* of the color: 0 for black, 100 for white.
        a: a* of the color: green below 0, red above.
        b: b* of the color: blue below 0, yellow above.
        other_lightness: L* of the other color.
        other_a: a* of the other color.
        other_b: b* of the other color.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("lightness", lightness),
        column("a", a),
        column("b", b),
        column("other_lightness", other_lightness),
        column("other_a", other_a),
        column("other_b", other_b),
    ]
    found = columnar(
        lib.pour_color_difference_n,
        "pour_color_difference",
        columns,
        {},
        ("difference",),
        None if out is None else {"difference": out},
        statuses,
    )
    return found["difference"]


def equivalent_time(
    readings: Lists,
    activation_energy_kj_per_mol: Column,
    reference_temperature_celsius: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.equivalent_time`.

    Args:
        readings: Temperatures in the order of time, taken as straight between.
        activation_energy_kj_per_mol: Activation energy of the decay in the heat; state its source in a book.
        reference_temperature_celsius: Temperature at which the time is counted.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "readings": readings,
        "activation_energy_kj_per_mol": activation_energy_kj_per_mol,
        "reference_temperature_celsius": reference_temperature_celsius,
    }
    found = by_rows("equivalent_time", given, None if out is None else {"equivalent_time_s": out}, statuses)
    return found["equivalent_time_s"]


@dataclass(frozen=True, eq=False, slots=True)
class BudgetLeftColumns:
    """The results of :func:`budget_left`.

    Attributes:
        budget_s: Budget at this dose of stabilizer. Unit: s.
        left_s: Time that is left; 0 where more was spent. Unit: s.
        overspent_s: Time that was spent beyond the budget; 0 where it was not. Unit: s.
    """

    budget_s: Floats
    left_s: Floats
    overspent_s: Floats


def budget_left(
    heat_budget_s: Column,
    equivalent_time_s: Column,
    *,
    budget_with: Column | None = None,
    stabilizer_dose: Column | None = None,
    extra_time_s: Column | None = None,
    extra_most: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> BudgetLeftColumns:
    """Columns of :func:`pourwright.budget_left`.

    Args:
        heat_budget_s: Time at the reference temperature that the plastisol withstands.
        equivalent_time_s: Equivalent time that the pot has spent so far, at the temperature of its budget.
        budget_with: Stabilizer that the heat budget is stated for, by mass of base.
        stabilizer_dose: Stabilizer in the mix, by mass of base.
        extra_time_s: Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000
            s is 5 min for every 1 %.
        extra_most: Highest dose of stabilizer for which the extra time is known, by mass of base.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("heat_budget_s", heat_budget_s, "s"),
        column("equivalent_time_s", equivalent_time_s, "s"),
        if_column("budget_with", budget_with),
        if_column("stabilizer_dose", stabilizer_dose),
        if_column("extra_time_s", extra_time_s, "s"),
        if_column("extra_most", extra_most),
    ]
    found = columnar(
        lib.pour_budget_left_n,
        "pour_budget_left",
        columns,
        {},
        ("budget_s", "left_s", "overspent_s",),
        out,
        statuses,
    )
    return BudgetLeftColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class HeatTimeColumns:
    """The results of :func:`heat_time`.

    Attributes:
        heat_time_s: Heating time. Unit: s.
        heat_time_uncertainty_s: Its standard uncertainty for one more heating. Unit: s.
        power_w: Power that reaches mix and vessel. Unit: W.
        beyond: How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1.
    """

    heat_time_s: Floats
    heat_time_uncertainty_s: Floats
    power_w: Floats
    beyond: Floats


def heat_time(
    pot_mass_g: Column,
    specific_heat_j_per_g_k: Column,
    heated_from_celsius: Column,
    heated_to_celsius: Column,
    *,
    timings: Lists | None = None,
    oven_power_w: Column | None = None,
    setting: Column | None = None,
    specific_heat_rise_per_kelvin: Column | None = None,
    timed_specific_heat_j_per_g_k: Column | None = None,
    vessel_mass_g: Column | None = None,
    vessel_specific_heat_j_per_g_k: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> HeatTimeColumns:
    """Columns of :func:`pourwright.heat_time`.

    Args:
        pot_mass_g: Mass of the mix in the pot.
        specific_heat_j_per_g_k: Specific heat of the mix, its salt counted.
        heated_from_celsius: The temperature before heating.
        heated_to_celsius: The temperature after heating, above that before.
        timings: Heatings that the shop has timed, all at one setting: of each the mass of the mix, the
            temperatures before and after and the time; needed without the rated power.
        oven_power_w: Rated power of the oven, its output at full power: a first guess, not used once there
            are timings; needed without them.
        setting: Setting of the oven, as a share of full power.
        specific_heat_rise_per_kelvin: Rise of the specific heat per kelvin, as a share of that at 25 °C, of
            what is heated and of what was timed.
        timed_specific_heat_j_per_g_k: Specific heat of what was timed.
        vessel_mass_g: Mass of the vessel.
        vessel_specific_heat_j_per_g_k: Specific heat of the vessel.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "pot_mass_g": pot_mass_g,
        "specific_heat_j_per_g_k": specific_heat_j_per_g_k,
        "heated_from_celsius": heated_from_celsius,
        "heated_to_celsius": heated_to_celsius,
        "timings": timings,
        "oven_power_w": oven_power_w,
        "setting": setting,
        "specific_heat_rise_per_kelvin": specific_heat_rise_per_kelvin,
        "timed_specific_heat_j_per_g_k": timed_specific_heat_j_per_g_k,
        "vessel_mass_g": vessel_mass_g,
        "vessel_specific_heat_j_per_g_k": vessel_specific_heat_j_per_g_k,
    }
    found = by_rows("heat_time", given, out, statuses)
    return HeatTimeColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class NextBurstColumns:
    """The results of :func:`next_burst`.

    Attributes:
        burst_s: The next burst; none where the pot is hot enough. Unit: s.
        expected_celsius: The expected reading after it. Unit: °C.
        shoot_from_celsius: Shoot from this reading on. Unit: °C.
        shoot_to_celsius: Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.
        bursts: Number of bursts that are expected from this reading on.
        oven_time_s: Time that the oven is expected to run in them. Unit: s.
    """

    burst_s: Floats
    expected_celsius: Floats
    shoot_from_celsius: Floats
    shoot_to_celsius: Floats
    bursts: Floats
    oven_time_s: Floats


def next_burst(
    pot_mass_g: Column,
    specific_heat_j_per_g_k: Column,
    reading_celsius: Column,
    window_bottom_celsius: Column,
    window_top_celsius: Column,
    *,
    timings: Lists | None = None,
    oven_power_w: Column | None = None,
    setting: Column | None = None,
    specific_heat_rise_per_kelvin: Column | None = None,
    timed_specific_heat_j_per_g_k: Column | None = None,
    vessel_mass_g: Column | None = None,
    vessel_specific_heat_j_per_g_k: Column | None = None,
    aim_celsius: Column | None = None,
    thermometer_kelvin: Column | None = None,
    burst_step_s: Column | None = None,
    longest_burst_s: Column | None = None,
    oven_turn_s: Column | None = None,
    measures: Measures | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> NextBurstColumns:
    """Columns of :func:`pourwright.next_burst`.

    Args:
        pot_mass_g: Mass of the mix in the pot.
        specific_heat_j_per_g_k: Specific heat of the mix, its salt counted.
        reading_celsius: Reading of the thermometer, in the stirred mix.
        window_bottom_celsius: Lowest temperature at which the mix is shot, its material's own.
        window_top_celsius: Highest temperature at which the mix is shot, its material's own; above the
            lowest.
        timings: Heatings that the shop has timed, all at one setting: of each the mass of the mix, the
            temperatures before and after and the time; needed without the rated power.
        oven_power_w: Rated power of the oven, its output at full power: a first guess, not used once there
            are timings; needed without them.
        setting: Setting of the oven, as a share of full power.
        specific_heat_rise_per_kelvin: Rise of the specific heat per kelvin, as a share of that at 25 °C, of
            what is heated and of what was timed.
        timed_specific_heat_j_per_g_k: Specific heat of what was timed.
        vessel_mass_g: Mass of the vessel.
        vessel_specific_heat_j_per_g_k: Specific heat of the vessel.
        aim_celsius: The temperature to heat to.
        thermometer_kelvin: How far the thermometer may be off.
        burst_step_s: Shortest burst that can be set, of which the others are multiples.
        longest_burst_s: Longest burst without a stir, at least the shortest.
        oven_turn_s: How long a turn of full power and none takes at a setting below full power.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "pot_mass_g": pot_mass_g,
        "specific_heat_j_per_g_k": specific_heat_j_per_g_k,
        "reading_celsius": reading_celsius,
        "window_bottom_celsius": window_bottom_celsius,
        "window_top_celsius": window_top_celsius,
        "timings": timings,
        "oven_power_w": oven_power_w,
        "setting": setting,
        "specific_heat_rise_per_kelvin": specific_heat_rise_per_kelvin,
        "timed_specific_heat_j_per_g_k": timed_specific_heat_j_per_g_k,
        "vessel_mass_g": vessel_mass_g,
        "vessel_specific_heat_j_per_g_k": vessel_specific_heat_j_per_g_k,
        "aim_celsius": aim_celsius,
        "thermometer_kelvin": thermometer_kelvin,
        "burst_step_s": burst_step_s,
        "longest_burst_s": longest_burst_s,
        "oven_turn_s": oven_turn_s,
        "measures": measures,
    }
    found = by_rows("next_burst", given, out, statuses)
    return NextBurstColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class StaysHotColumns:
    """The results of :func:`stays_hot`.

    Attributes:
        time_constant_s: Time in which the distance to the temperature of the room falls to 37 %. Unit: s.
        hot_for_s: Time down to the lower temperature, with all of the mix in the pot. Unit: s.
        half_full_s: The same with half of it. Unit: s.
        after_celsius: Temperature after the time that the pot has stood. Unit: °C.
    """

    time_constant_s: Floats
    hot_for_s: Floats
    half_full_s: Floats
    after_celsius: Floats


def stays_hot(
    pot_mass_g: Column,
    hot_from_celsius: Column,
    hot_to_celsius: Column,
    watched_mass_g: Column,
    watched_from_celsius: Column,
    watched_to_celsius: Column,
    watched_time_s: Column,
    *,
    room_celsius: Column | None = None,
    stood_s: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> StaysHotColumns:
    """Columns of :func:`pourwright.stays_hot`.

    Args:
        pot_mass_g: Mass of the mix in the pot.
        hot_from_celsius: Temperature after the last burst.
        hot_to_celsius: Temperature down to which the pot can be shot, above that of the room.
        watched_mass_g: Mass of the mix in a pot that was watched to cool.
        watched_from_celsius: First reading of a pot that was watched to cool, from its second minute on,
            stirred.
        watched_to_celsius: Second reading of a pot that was watched to cool, stirred; below the first and
            above that of the room.
        watched_time_s: Time between the two readings of a pot that was watched to cool.
        room_celsius: Temperature of the room, below all others.
        stood_s: How long the pot has stood.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("pot_mass_g", pot_mass_g, "g"),
        column("hot_from_celsius", hot_from_celsius, "°C"),
        column("hot_to_celsius", hot_to_celsius, "°C"),
        column("watched_mass_g", watched_mass_g, "g"),
        column("watched_from_celsius", watched_from_celsius, "°C"),
        column("watched_to_celsius", watched_to_celsius, "°C"),
        column("watched_time_s", watched_time_s, "s"),
        if_column("room_celsius", room_celsius, "°C"),
        if_column("stood_s", stood_s, "s"),
    ]
    found = columnar(
        lib.pour_stays_hot_n,
        "pour_stays_hot",
        columns,
        {},
        ("time_constant_s", "hot_for_s", "half_full_s", "after_celsius",),
        out,
        statuses,
    )
    return StaysHotColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class PotHeatsColumns:
    """The results of :func:`pot_heats`.

    Attributes:
        reheats: Number of reheats: the heats but for the first.
        first_shots: Number of shots in the first heat.
        shooting_time_s: Time of all shots, without the oven. Unit: s.
        total_time_s: Time of all shots and of the oven for each heat, where that is given. Unit: s.
    """

    reheats: Floats
    first_shots: Floats
    shooting_time_s: Floats
    total_time_s: Floats


def pot_heats(
    pot_mass_g: Column,
    clock_runs: Lists,
    *,
    hot_for_s: Column | None = None,
    clock_from_celsius: Column | None = None,
    clock_to_celsius: Column | None = None,
    watched_mass_g: Column | None = None,
    watched_from_celsius: Column | None = None,
    watched_to_celsius: Column | None = None,
    watched_time_s: Column | None = None,
    room_celsius: Column | None = None,
    oven_time_s: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> PotHeatsColumns:
    """Columns of :func:`pourwright.pot_heats`.

    Args:
        pot_mass_g: Mass of the mix in the pot.
        clock_runs: The pot's shots in their order, like ones together: of each run the number of shots, the
            mass that one takes, the working time for one, the time that it sets and the number of molds in turn.
            At most 100 000 shots.
        hot_for_s: How long the pot stays hot at one heat, from the last burst to the last shot.
        clock_from_celsius: Temperature after the last burst; needed with `cools`.
        clock_to_celsius: Temperature down to which the pot can be shot, above that of the room; needed with
            `cools`.
        watched_mass_g: Mass of the mix in a pot that was watched to cool.
        watched_from_celsius: First reading of a pot that was watched to cool, from its second minute on,
            stirred.
        watched_to_celsius: Second reading of a pot that was watched to cool, stirred; below the first and
            above that of the room.
        watched_time_s: Time between the two readings of a pot that was watched to cool.
        room_celsius: Temperature of the room, below all others.
        oven_time_s: How long the oven runs for one heat.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "pot_mass_g": pot_mass_g,
        "clock_runs": clock_runs,
        "hot_for_s": hot_for_s,
        "clock_from_celsius": clock_from_celsius,
        "clock_to_celsius": clock_to_celsius,
        "watched_mass_g": watched_mass_g,
        "watched_from_celsius": watched_from_celsius,
        "watched_to_celsius": watched_to_celsius,
        "watched_time_s": watched_time_s,
        "room_celsius": room_celsius,
        "oven_time_s": oven_time_s,
    }
    found = by_rows("pot_heats", given, out, statuses)
    return PotHeatsColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class SettingTimeColumns:
    """The results of :func:`setting_time`.

    Attributes:
        setting_time_s: Setting time. Unit: s.
        setting_time_min_s: The same with the highest diffusivity of soft PVC. Unit: s.
        setting_time_max_s: The same with the lowest. Unit: s.
        warms_kelvin: How much one shot warms the mold, where its mass is given. Unit: K.
        in_a_row: Number of shots in a row before the mold is too warm, nothing lost between them; none where
            its mass is not given, or it goes on.
        shot_every_s: Time from one shot to the next, where the working time is given. Unit: s.
    """

    setting_time_s: Floats
    setting_time_min_s: Floats
    setting_time_max_s: Floats
    warms_kelvin: Floats
    in_a_row: Floats
    shot_every_s: Floats


def setting_time(
    section_shape: SectionShape,
    section_thickness_mm: Column,
    shot_at_celsius: Column,
    *,
    mold_at_celsius: Column | None = None,
    take_out_celsius: Column | None = None,
    piece_point: PiecePoint | None = None,
    diffusivity_m2_per_s: Column | None = None,
    shot_mass_g: Column | None = None,
    shot_specific_heat_j_per_g_k: Column | None = None,
    mold_mass_g: Column | None = None,
    mold_specific_heat_j_per_g_k: Column | None = None,
    hands_s: Column | None = None,
    molds: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> SettingTimeColumns:
    """Columns of :func:`pourwright.setting_time`.

    Args:
        section_shape: Shape of the thickest part of a piece.
        section_thickness_mm: Thickness of the thickest part of a piece; of a rod or a ball its diameter.
        shot_at_celsius: Temperature at which it is shot, above that at which it is taken out.
        mold_at_celsius: Temperature of the mold before the shot, below that at which a piece is taken out.
        take_out_celsius: Temperature at which a piece can be taken out.
        piece_point: The point of a piece whose temperature counts.
        diffusivity_m2_per_s: Thermal diffusivity of the plastic.
        shot_mass_g: Mass of one shot, sprue included.
        shot_specific_heat_j_per_g_k: Specific heat of the plastic.
        mold_mass_g: Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass
            of the shot is needed.
        mold_specific_heat_j_per_g_k: Specific heat of the mold; the default is that of aluminum.
        hands_s: Working time of a shot: fill, shoot, top off, take out.
        molds: Number of such molds that are shot in turn.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("section_thickness_mm", section_thickness_mm, "mm"),
        column("shot_at_celsius", shot_at_celsius, "°C"),
        if_column("mold_at_celsius", mold_at_celsius, "°C"),
        if_column("take_out_celsius", take_out_celsius, "°C"),
        if_column("diffusivity_m2_per_s", diffusivity_m2_per_s, "m2/s"),
        if_column("shot_mass_g", shot_mass_g, "g"),
        if_column("shot_specific_heat_j_per_g_k", shot_specific_heat_j_per_g_k, "J/(g.K)"),
        if_column("mold_mass_g", mold_mass_g, "g"),
        if_column("mold_specific_heat_j_per_g_k", mold_specific_heat_j_per_g_k, "J/(g.K)"),
        if_column("hands_s", hands_s, "s"),
        if_column("molds", molds),
    ]
    found = columnar(
        lib.pour_setting_time_n,
        "pour_setting_time",
        columns,
        {"section_shape": word_of(SECTION_SHAPE_WORDS, "section_shape", section_shape), "piece_point": word_of(PIECE_POINT_WORDS, "piece_point", piece_point)},
        ("setting_time_s", "setting_time_min_s", "setting_time_max_s", "warms_kelvin", "in_a_row", "shot_every_s",),
        out,
        statuses,
    )
    return SettingTimeColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class StirEveryColumns:
    """The results of :func:`stir_every`.

    Attributes:
        stir_every_s: How often to stir, to be safe: in the thinnest melt. Unit: s.
        stir_every_max_s: How often is enough in the thickest melt. Unit: s.
        settling_min_cm_per_s: Speed of the grains in the thickest melt. Unit: cm/s.
        settling_max_cm_per_s: Speed of the grains in the thinnest melt. Unit: cm/s.
    """

    stir_every_s: Floats
    stir_every_max_s: Floats
    settling_min_cm_per_s: Floats
    settling_max_cm_per_s: Floats


def stir_every(
    grain_mm: Column,
    grain_density_g_per_ml: Column,
    melt_density_g_per_ml: Column,
    melt_depth_mm: Column,
    *,
    melt_viscosity_min_mpa_s: Column | None = None,
    melt_viscosity_max_mpa_s: Column | None = None,
    solids_share: Column | None = None,
    unstirred: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> StirEveryColumns:
    """Columns of :func:`pourwright.stir_every`.

    Args:
        grain_mm: Size of a grain of salt: the opening of a sieve that it just passes.
        grain_density_g_per_ml: True density of the grains, above that of the melt.
        melt_density_g_per_ml: Density of the melt, hot.
        melt_depth_mm: Depth of the melt in its cup.
        melt_viscosity_min_mpa_s: Lowest viscosity that the melt may have at shot temperature. Where none is
            known, the defaults of both span what such melts may have.
        melt_viscosity_max_mpa_s: Highest viscosity that the melt may have at shot temperature, at least the
            lowest.
        solids_share: Share of the grains in the volume; at 0 one grain alone.
        unstirred: Share of the depth that may be without grains before it is stirred.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("grain_mm", grain_mm, "mm"),
        column("grain_density_g_per_ml", grain_density_g_per_ml, "g/mL"),
        column("melt_density_g_per_ml", melt_density_g_per_ml, "g/mL"),
        column("melt_depth_mm", melt_depth_mm, "mm"),
        if_column("melt_viscosity_min_mpa_s", melt_viscosity_min_mpa_s, "mPa.s"),
        if_column("melt_viscosity_max_mpa_s", melt_viscosity_max_mpa_s, "mPa.s"),
        if_column("solids_share", solids_share),
        if_column("unstirred", unstirred),
    ]
    found = columnar(
        lib.pour_stir_every_n,
        "pour_stir_every",
        columns,
        {},
        ("stir_every_s", "stir_every_max_s", "settling_min_cm_per_s", "settling_max_cm_per_s",),
        out,
        statuses,
    )
    return StirEveryColumns(**found)


def viscosity_of_ball(
    ball_diameter_mm: Column,
    ball_density_g_per_ml: Column,
    melt_density_g_per_ml: Column,
    ball_depth_mm: Column,
    ball_time_s: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.viscosity_of_ball`.

    Args:
        ball_diameter_mm: Diameter of the ball, much smaller than that of the vessel.
        ball_density_g_per_ml: Density of the ball: 7.8 g/mL of steel.
        melt_density_g_per_ml: Density of the melt, hot.
        ball_depth_mm: How deep the ball sank, let go below the surface.
        ball_time_s: Time that the ball took.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("ball_diameter_mm", ball_diameter_mm, "mm"),
        column("ball_density_g_per_ml", ball_density_g_per_ml, "g/mL"),
        column("melt_density_g_per_ml", melt_density_g_per_ml, "g/mL"),
        column("ball_depth_mm", ball_depth_mm, "mm"),
        column("ball_time_s", ball_time_s, "s"),
    ]
    found = columnar(
        lib.pour_viscosity_of_ball_n,
        "pour_viscosity_of_ball",
        columns,
        {},
        ("melt_viscosity_mpa_s",),
        None if out is None else {"melt_viscosity_mpa_s": out},
        statuses,
    )
    return found["melt_viscosity_mpa_s"]


@dataclass(frozen=True, eq=False, slots=True)
class CavityOfWeightsColumns:
    """The results of :func:`cavity_of_weights`.

    Attributes:
        cavity_volume_ml: Volume of the cavity. Unit: mL.
        cavity_volume_uncertainty_ml: Its standard uncertainty. Where the feed is not known, that of an even
            spread from 0 to 1 counts. Unit: mL.
        mean_g: Mean of the weights. Unit: g.
        deviation_g: Standard deviation of one. Unit: g.
    """

    cavity_volume_ml: Floats
    cavity_volume_uncertainty_ml: Floats
    mean_g: Floats
    deviation_g: Floats


def cavity_of_weights(
    weights_g: Lists,
    balance_readability_g: Column,
    cold_density_g_per_ml: Column,
    *,
    hot_density_g_per_ml: Column | None = None,
    voids: Column | None = None,
    feed: Column | None = None,
    feed_uncertainty: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> CavityOfWeightsColumns:
    """Columns of :func:`pourwright.cavity_of_weights`.

    Args:
        weights_g: Mass of each piece, one by one.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one.
        voids: Void fraction: share of the volume that is air.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        feed_uncertainty: Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70
            %).
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "weights_g": weights_g,
        "balance_readability_g": balance_readability_g,
        "cold_density_g_per_ml": cold_density_g_per_ml,
        "hot_density_g_per_ml": hot_density_g_per_ml,
        "voids": voids,
        "feed": feed,
        "feed_uncertainty": feed_uncertainty,
    }
    found = by_rows("cavity_of_weights", given, out, statuses)
    return CavityOfWeightsColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class FeedOfWeightsColumns:
    """The results of :func:`feed_of_weights`.

    Attributes:
        feed: Feed share. Unit: 1.
        feed_uncertainty: Its standard uncertainty. Unit: 1.
        mean_g: Mean of the weights. Unit: g.
        deviation_g: Standard deviation of one. Unit: g.
    """

    feed: Floats
    feed_uncertainty: Floats
    mean_g: Floats
    deviation_g: Floats


def feed_of_weights(
    weights_g: Lists,
    balance_readability_g: Column,
    cold_density_g_per_ml: Column,
    cavity_volume_ml: Column,
    *,
    hot_density_g_per_ml: Column | None = None,
    voids: Column | None = None,
    volume_uncertainty_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> FeedOfWeightsColumns:
    """Columns of :func:`pourwright.feed_of_weights`.

    Args:
        weights_g: Mass of each piece, one by one.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids.
        cavity_volume_ml: Volume of one cavity.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one.
        voids: Void fraction: share of the volume that is air.
        volume_uncertainty_ml: Standard uncertainty of the volume.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "weights_g": weights_g,
        "balance_readability_g": balance_readability_g,
        "cold_density_g_per_ml": cold_density_g_per_ml,
        "cavity_volume_ml": cavity_volume_ml,
        "hot_density_g_per_ml": hot_density_g_per_ml,
        "voids": voids,
        "volume_uncertainty_ml": volume_uncertainty_ml,
    }
    found = by_rows("feed_of_weights", given, out, statuses)
    return FeedOfWeightsColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class DropOfWeighingsColumns:
    """The results of :func:`drop_of_weighings`.

    Attributes:
        drop_mass_g: Mass of one drop. Unit: g.
        drop_mass_uncertainty_g: Its standard uncertainty. Unit: g.
        scatter_g: Standard deviation of one drop against the next. Unit: g.
    """

    drop_mass_g: Floats
    drop_mass_uncertainty_g: Floats
    scatter_g: Floats


def drop_of_weighings(
    drops_weighed: Lists,
    balance_readability_g: Column,
    *,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> DropOfWeighingsColumns:
    """Columns of :func:`pourwright.drop_of_weighings`.

    Args:
        drops_weighed: Drops that were counted and weighed together, each weighing started over.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "drops_weighed": drops_weighed,
        "balance_readability_g": balance_readability_g,
    }
    found = by_rows("drop_of_weighings", given, out, statuses)
    return DropOfWeighingsColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class AsScoopedOfWeighingsColumns:
    """The results of :func:`as_scooped_of_weighings`.

    Attributes:
        as_scooped_g_per_ml: Bulk density, level in the spoon. Unit: g/mL.
        as_scooped_uncertainty_g_per_ml: Its standard uncertainty. Unit: g/mL.
        spoonful_g: Mass of one spoonful. Unit: g.
    """

    as_scooped_g_per_ml: Floats
    as_scooped_uncertainty_g_per_ml: Floats
    spoonful_g: Floats


def as_scooped_of_weighings(
    scoops_weighed: Lists,
    spoon_volume_ml: Column,
    balance_readability_g: Column,
    *,
    volume_uncertainty_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> AsScoopedOfWeighingsColumns:
    """Columns of :func:`pourwright.as_scooped_of_weighings`.

    Args:
        scoops_weighed: Level spoonfuls that were counted and weighed together, each weighing started over.
        spoon_volume_ml: Volume of the level spoon.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        volume_uncertainty_ml: Standard uncertainty of the volume.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "scoops_weighed": scoops_weighed,
        "spoon_volume_ml": spoon_volume_ml,
        "balance_readability_g": balance_readability_g,
        "volume_uncertainty_ml": volume_uncertainty_ml,
    }
    found = by_rows("as_scooped_of_weighings", given, out, statuses)
    return AsScoopedOfWeighingsColumns(**found)


@dataclass(frozen=True, eq=False, slots=True)
class ResidueOfWeighingsColumns:
    """The results of :func:`residue_of_weighings`.

    Attributes:
        injector_residue_ml: Volume that stays in the injector. Unit: mL.
        injector_residue_uncertainty_ml: Its standard uncertainty. Unit: mL.
        residue_mass_g: Its mass. Unit: g.
    """

    injector_residue_ml: Floats
    injector_residue_uncertainty_ml: Floats
    residue_mass_g: Floats


def residue_of_weighings(
    injector_weighed_g: Lists,
    residue_density_g_per_ml: Column,
    balance_readability_g: Column,
    *,
    density_uncertainty_g_per_ml: Column | None = None,
    out: Mapping[str, Floats] | None = None,
    statuses: Statuses | None = None,
) -> ResidueOfWeighingsColumns:
    """Columns of :func:`pourwright.residue_of_weighings`.

    Args:
        injector_weighed_g: Weighings of the injector, each clean and then emptied as at work.
        residue_density_g_per_ml: Density of what stays in the injector, at the temperature at which it is
            emptied; its uncertainty is counted.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        density_uncertainty_g_per_ml: Standard uncertainty of the density of the piece; its bounds are counted
            at twice that.
        out: Where results go, by their names; new arrays if omitted.
        statuses: Receives the status of each row.
    """
    given = {
        "injector_weighed_g": injector_weighed_g,
        "residue_density_g_per_ml": residue_density_g_per_ml,
        "balance_readability_g": balance_readability_g,
        "density_uncertainty_g_per_ml": density_uncertainty_g_per_ml,
    }
    found = by_rows("residue_of_weighings", given, out, statuses)
    return ResidueOfWeighingsColumns(**found)


def price(
    cost: Column,
    cost_margin: Column,
    *,
    out: Floats | None = None,
    statuses: Statuses | None = None,
) -> Floats:
    """Columns of :func:`pourwright.price`.

    Args:
        cost: Cost, in the smallest unit of the currency: cents.
        cost_margin: Share of the price that the shop keeps (a markup on the cost is another thing). Without
            it there is no price.
        out: Where the result goes; a new array if omitted.
        statuses: Receives the status of each row.
    """
    columns = [
        column("cost", cost),
        column("cost_margin", cost_margin),
    ]
    found = columnar(
        lib.pour_price_n,
        "pour_price",
        columns,
        {},
        ("price",),
        None if out is None else {"price": out},
        statuses,
    )
    return found["price"]

