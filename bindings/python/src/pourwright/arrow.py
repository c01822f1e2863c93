"""Calculations on Arrow columns: columns in, columns out, nulls stay nulls.

It needs PyArrow: ``pip install pourwright[arrow]``.

A column is an array or a chunked array of numbers, or of amounts as texts in any unit of their kind (``"1/4 tsp"``, plain,
large, viewed or as a dictionary), or anything else that Arrow reads; a number, a text or a word alone counts for all rows.
Lists are lists of Arrow, one for each row, or one sequence for all. A parameter that is None is omitted in every row.

A row with a null in any column is null. A row that is refused is NaN, or null where the result is a word or a list; it does not
stop the others. A result that a good row does not have is null. With ``status=True`` the results have one more column,
``status``: null where the row is good or null, else the codes of what is wrong with it.

One result comes as a float64 array, several (or a status) as a struct array with the results' names. Where a column is
chunked, the results are.

Made by ``cargo run -p pourwright-generate``; do not edit.
"""

from __future__ import annotations

from ._calculations import (
    Alike,
    Form,
    Kind,
    Measures,
    PiecePoint,
    Scale,
    SectionShape,
    Shape,
)
from ._arrow import Arrow, Cells, Lists, calculated

__all__ = [
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


def convert(
    amount: Cells,
    to: Cells,
    *,
    measures: Measures | Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.convert`.

    Args:
        amount: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`.
        to: The unit of the answer, by trade symbol or UCUM code.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold.
        status: Whether the status of each row is a result too.

    Returns:
        value: The number, in the unit of `to`.
    """
    given = {
        "amount": amount,
        "to": to,
        "measures": measures,
    }
    return calculated("convert", given, status)


def convert_number(
    value: Cells,
    unit: Cells,
    to: Cells,
    *,
    measures: Measures | Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.convert_number`.

    Args:
        value: The number to convert.
        unit: The unit of the number, by trade symbol or UCUM code.
        to: The unit of the answer, by trade symbol or UCUM code.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold.
        status: Whether the status of each row is a result too.

    Returns:
        value: The number, in the unit of `to`.
    """
    given = {
        "value": value,
        "unit": unit,
        "to": to,
        "measures": measures,
    }
    return calculated("convert_number", given, status)


def dose_mass(
    amount: Cells,
    kind: Kind | Cells,
    *,
    material_density_g_per_ml: Cells | None = None,
    as_scooped_g_per_ml: Cells | None = None,
    drop_mass_g: Cells | None = None,
    measures: Measures | Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.dose_mass`.

    Args:
        amount: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`.
        kind: What the material is for; powders (pearl, flake, salt) are measured as scooped.
        material_density_g_per_ml: True density of the material; of a plastisol that of the liquid.
        as_scooped_g_per_ml: Bulk density of a powder, level in the spoon and not tapped.
        drop_mass_g: Mass of one drop.
        measures: The system of measures: what a cup, a spoon and a fluid ounce hold.
        status: Whether the status of each row is a result too.

    Returns:
        mass_g: The mass. Unit: g.
    """
    given = {
        "amount": amount,
        "kind": kind,
        "material_density_g_per_ml": material_density_g_per_ml,
        "as_scooped_g_per_ml": as_scooped_g_per_ml,
        "drop_mass_g": drop_mass_g,
        "measures": measures,
    }
    return calculated("dose_mass", given, status)


def mass_of_volume(
    volume_ml: Cells,
    density_g_per_ml: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.mass_of_volume`.

    Args:
        volume_ml: Volume.
        density_g_per_ml: Density, without voids.
        status: Whether the status of each row is a result too.

    Returns:
        mass_g: The mass. Unit: g.
    """
    given = {
        "volume_ml": volume_ml,
        "density_g_per_ml": density_g_per_ml,
    }
    return calculated("mass_of_volume", given, status)


def volume_of_mass(
    mass_g: Cells,
    density_g_per_ml: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.volume_of_mass`.

    Args:
        mass_g: Mass.
        density_g_per_ml: Density, without voids.
        status: Whether the status of each row is a result too.

    Returns:
        volume_ml: The volume. Unit: mL.
    """
    given = {
        "mass_g": mass_g,
        "density_g_per_ml": density_g_per_ml,
    }
    return calculated("volume_of_mass", given, status)


def density_of_parts(
    parts: Lists,
    *,
    voids: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.density_of_parts`.

    Args:
        parts: The parts of the mix: of each its mass and its true density. At least one has a mass above 0.
        voids: Void fraction: share of the volume that is air.
        status: Whether the status of each row is a result too.

    Returns:
        density_g_per_ml: Density of the mix, voids counted. Unit: g/mL.
    """
    given = {
        "parts": parts,
        "voids": voids,
    }
    return calculated("density_of_parts", given, status)


def mix_share(
    parts: Lists,
    part: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.mix_share`.

    Args:
        parts: The parts of the mix: of each its mass and its true density. At least one has a mass above 0.
        part: Which part of the mix, counted from 1.
        status: Whether the status of each row is a result too.

    Returns:
        mass_share: Share of its mass. Unit: 1.
        volume_share: Share of its true volume. Unit: 1.
    """
    given = {
        "parts": parts,
        "part": part,
    }
    return calculated("mix_share", given, status)


def salt_convert(
    base_volume_ml: Cells,
    base_density_g_per_ml: Cells,
    salt_density_g_per_ml: Cells,
    form: Form | Cells,
    loading: Cells,
    to_form: Form | Cells,
    *,
    mix_mass_g: Cells | None = None,
    mix_volume_ml: Cells | None = None,
    hot_volume_ml: Cells | None = None,
    shot_temperature_celsius: Cells | None = None,
    voids: Cells | None = None,
    salt_as_scooped_g_per_ml: Cells | None = None,
    salt_expansion_per_kelvin: Cells | None = None,
    softener_per_salt: Cells | None = None,
    softener_density_g_per_ml: Cells | None = None,
    softener_expansion_per_kelvin: Cells | None = None,
    most_solids: Cells | None = None,
    cavity_volume_ml: Cells | None = None,
    feed: Cells | None = None,
    hook_mass_g: Cells | None = None,
    hook_volume_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        loading: The loading as `to_form` states it, in the unit of that form.
        loading_min: Its lower bound where the feed matters and is not known; else the loading.
        loading_max: Its upper bound where the feed matters and is not known; else the loading.
    """
    given = {
        "base_volume_ml": base_volume_ml,
        "base_density_g_per_ml": base_density_g_per_ml,
        "salt_density_g_per_ml": salt_density_g_per_ml,
        "form": form,
        "loading": loading,
        "to_form": to_form,
        "mix_mass_g": mix_mass_g,
        "mix_volume_ml": mix_volume_ml,
        "hot_volume_ml": hot_volume_ml,
        "shot_temperature_celsius": shot_temperature_celsius,
        "voids": voids,
        "salt_as_scooped_g_per_ml": salt_as_scooped_g_per_ml,
        "salt_expansion_per_kelvin": salt_expansion_per_kelvin,
        "softener_per_salt": softener_per_salt,
        "softener_density_g_per_ml": softener_density_g_per_ml,
        "softener_expansion_per_kelvin": softener_expansion_per_kelvin,
        "most_solids": most_solids,
        "cavity_volume_ml": cavity_volume_ml,
        "feed": feed,
        "hook_mass_g": hook_mass_g,
        "hook_volume_ml": hook_volume_ml,
    }
    return calculated("salt_convert", given, status)


def salt_mass(
    base_volume_ml: Cells,
    base_density_g_per_ml: Cells,
    salt_density_g_per_ml: Cells,
    form: Form | Cells,
    loading: Cells,
    *,
    mix_mass_g: Cells | None = None,
    mix_volume_ml: Cells | None = None,
    hot_volume_ml: Cells | None = None,
    shot_temperature_celsius: Cells | None = None,
    voids: Cells | None = None,
    salt_as_scooped_g_per_ml: Cells | None = None,
    salt_expansion_per_kelvin: Cells | None = None,
    softener_per_salt: Cells | None = None,
    softener_density_g_per_ml: Cells | None = None,
    softener_expansion_per_kelvin: Cells | None = None,
    most_solids: Cells | None = None,
    cavity_volume_ml: Cells | None = None,
    feed: Cells | None = None,
    hook_mass_g: Cells | None = None,
    hook_volume_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        salt_mass_g: Mass of salt. Unit: g.
        salt_mass_min_g: Its lower bound where the feed matters and is not known; else the mass. Unit: g.
        salt_mass_max_g: Its upper bound where the feed matters and is not known; else the mass. Unit: g.
        softener_mass_g: Mass of softener that goes in with it. Unit: g.
    """
    given = {
        "base_volume_ml": base_volume_ml,
        "base_density_g_per_ml": base_density_g_per_ml,
        "salt_density_g_per_ml": salt_density_g_per_ml,
        "form": form,
        "loading": loading,
        "mix_mass_g": mix_mass_g,
        "mix_volume_ml": mix_volume_ml,
        "hot_volume_ml": hot_volume_ml,
        "shot_temperature_celsius": shot_temperature_celsius,
        "voids": voids,
        "salt_as_scooped_g_per_ml": salt_as_scooped_g_per_ml,
        "salt_expansion_per_kelvin": salt_expansion_per_kelvin,
        "softener_per_salt": softener_per_salt,
        "softener_density_g_per_ml": softener_density_g_per_ml,
        "softener_expansion_per_kelvin": softener_expansion_per_kelvin,
        "most_solids": most_solids,
        "cavity_volume_ml": cavity_volume_ml,
        "feed": feed,
        "hook_mass_g": hook_mass_g,
        "hook_volume_ml": hook_volume_ml,
    }
    return calculated("salt_mass", given, status)


def salt_reach(
    base_volume_ml: Cells,
    base_density_g_per_ml: Cells,
    salt_density_g_per_ml: Cells,
    form: Form | Cells,
    *,
    mix_mass_g: Cells | None = None,
    mix_volume_ml: Cells | None = None,
    hot_volume_ml: Cells | None = None,
    shot_temperature_celsius: Cells | None = None,
    voids: Cells | None = None,
    salt_as_scooped_g_per_ml: Cells | None = None,
    salt_expansion_per_kelvin: Cells | None = None,
    softener_per_salt: Cells | None = None,
    softener_density_g_per_ml: Cells | None = None,
    softener_expansion_per_kelvin: Cells | None = None,
    most_solids: Cells | None = None,
    cavity_volume_ml: Cells | None = None,
    feed: Cells | None = None,
    hook_mass_g: Cells | None = None,
    hook_volume_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        loading_min: The loading without salt, in the unit of the form.
        loading_max: The maximum loading, in the unit of the form.
    """
    given = {
        "base_volume_ml": base_volume_ml,
        "base_density_g_per_ml": base_density_g_per_ml,
        "salt_density_g_per_ml": salt_density_g_per_ml,
        "form": form,
        "mix_mass_g": mix_mass_g,
        "mix_volume_ml": mix_volume_ml,
        "hot_volume_ml": hot_volume_ml,
        "shot_temperature_celsius": shot_temperature_celsius,
        "voids": voids,
        "salt_as_scooped_g_per_ml": salt_as_scooped_g_per_ml,
        "salt_expansion_per_kelvin": salt_expansion_per_kelvin,
        "softener_per_salt": softener_per_salt,
        "softener_density_g_per_ml": softener_density_g_per_ml,
        "softener_expansion_per_kelvin": softener_expansion_per_kelvin,
        "most_solids": most_solids,
        "cavity_volume_ml": cavity_volume_ml,
        "feed": feed,
        "hook_mass_g": hook_mass_g,
        "hook_volume_ml": hook_volume_ml,
    }
    return calculated("salt_reach", given, status)


def salt_for_density(
    base_volume_ml: Cells,
    base_density_g_per_ml: Cells,
    salt_density_g_per_ml: Cells,
    finished_density_g_per_ml: Cells,
    *,
    voids: Cells | None = None,
    most_solids: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.salt_for_density`.

    Args:
        base_volume_ml: Volume of the base, cold and liquid, as a cup measures it.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        salt_density_g_per_ml: True density of the salt: 2.165 g/mL for sodium chloride.
        finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted.
        voids: Void fraction: share of the volume that is air.
        most_solids: Maximum share of salt in the finished mix, by true volume.
        status: Whether the status of each row is a result too.

    Returns:
        salt_mass_g: Mass of salt. Unit: g.
    """
    given = {
        "base_volume_ml": base_volume_ml,
        "base_density_g_per_ml": base_density_g_per_ml,
        "salt_density_g_per_ml": salt_density_g_per_ml,
        "finished_density_g_per_ml": finished_density_g_per_ml,
        "voids": voids,
        "most_solids": most_solids,
    }
    return calculated("salt_for_density", given, status)


def salt_for_sink_rate(
    base_volume_ml: Cells,
    base_density_g_per_ml: Cells,
    salt_density_g_per_ml: Cells,
    sink_rate_cm_per_s: Cells,
    cavity_volume_ml: Cells,
    diameter_mm: Cells,
    water_temperature_celsius: Cells,
    *,
    length_mm: Cells | None = None,
    shape: Shape | Cells | None = None,
    mix_mass_g: Cells | None = None,
    mix_volume_ml: Cells | None = None,
    hot_volume_ml: Cells | None = None,
    shot_temperature_celsius: Cells | None = None,
    voids: Cells | None = None,
    salt_expansion_per_kelvin: Cells | None = None,
    softener_per_salt: Cells | None = None,
    softener_density_g_per_ml: Cells | None = None,
    softener_expansion_per_kelvin: Cells | None = None,
    most_solids: Cells | None = None,
    feed: Cells | None = None,
    hook_mass_g: Cells | None = None,
    hook_volume_ml: Cells | None = None,
    salinity_practical: Cells | None = None,
    salinity_absolute: Cells | None = None,
    drop_depth_m: Cells | None = None,
    drop_time_s: Cells | None = None,
    drop_density_g_per_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        salt_mass_g: Mass of salt. Unit: g.
        softener_mass_g: Mass of softener that goes in with it. Unit: g.
        finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.
    """
    given = {
        "base_volume_ml": base_volume_ml,
        "base_density_g_per_ml": base_density_g_per_ml,
        "salt_density_g_per_ml": salt_density_g_per_ml,
        "sink_rate_cm_per_s": sink_rate_cm_per_s,
        "cavity_volume_ml": cavity_volume_ml,
        "diameter_mm": diameter_mm,
        "water_temperature_celsius": water_temperature_celsius,
        "length_mm": length_mm,
        "shape": shape,
        "mix_mass_g": mix_mass_g,
        "mix_volume_ml": mix_volume_ml,
        "hot_volume_ml": hot_volume_ml,
        "shot_temperature_celsius": shot_temperature_celsius,
        "voids": voids,
        "salt_expansion_per_kelvin": salt_expansion_per_kelvin,
        "softener_per_salt": softener_per_salt,
        "softener_density_g_per_ml": softener_density_g_per_ml,
        "softener_expansion_per_kelvin": softener_expansion_per_kelvin,
        "most_solids": most_solids,
        "feed": feed,
        "hook_mass_g": hook_mass_g,
        "hook_volume_ml": hook_volume_ml,
        "salinity_practical": salinity_practical,
        "salinity_absolute": salinity_absolute,
        "drop_depth_m": drop_depth_m,
        "drop_time_s": drop_time_s,
        "drop_density_g_per_ml": drop_density_g_per_ml,
    }
    return calculated("salt_for_sink_rate", given, status)


def shot_fill(
    cavities: Cells,
    cavity_volume_ml: Cells,
    cold_density_g_per_ml: Cells,
    *,
    hot_density_g_per_ml: Cells | None = None,
    voids: Cells | None = None,
    feed: Cells | None = None,
    sprue_volume_ml: Cells | None = None,
    topped_mass_g: Cells | None = None,
    layer_share: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
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
    given = {
        "cavities": cavities,
        "cavity_volume_ml": cavity_volume_ml,
        "cold_density_g_per_ml": cold_density_g_per_ml,
        "hot_density_g_per_ml": hot_density_g_per_ml,
        "voids": voids,
        "feed": feed,
        "sprue_volume_ml": sprue_volume_ml,
        "topped_mass_g": topped_mass_g,
        "layer_share": layer_share,
    }
    return calculated("shot_fill", given, status)


def piece_mass(
    cavity_volume_ml: Cells,
    cold_density_g_per_ml: Cells,
    *,
    hot_density_g_per_ml: Cells | None = None,
    voids: Cells | None = None,
    feed: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.piece_mass`.

    Args:
        cavity_volume_ml: Volume of one cavity.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one.
        voids: Void fraction: share of the volume that is air.
        feed: Share of its contraction that a piece draws from the sprue while it cools. Where it is not
            known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        status: Whether the status of each row is a result too.

    Returns:
        piece_mass_g: Mass of the piece. Unit: g.
        piece_mass_min_g: The same without feed where the feed is not known; else the mass of the piece. Unit:
            g.
        piece_mass_max_g: The same fed in full where the feed is not known; else the mass of the piece. Unit:
            g.
    """
    given = {
        "cavity_volume_ml": cavity_volume_ml,
        "cold_density_g_per_ml": cold_density_g_per_ml,
        "hot_density_g_per_ml": hot_density_g_per_ml,
        "voids": voids,
        "feed": feed,
    }
    return calculated("piece_mass", given, status)


def shots(
    pieces: Cells,
    cavities: Cells,
    *,
    rejects: Cells | None = None,
    confidence: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.shots`.

    Args:
        pieces: Number of good pieces needed.
        cavities: Number of cavities that a shot fills.
        rejects: Share of pieces that are not fit to sell.
        confidence: Confidence that enough good pieces come out.
        status: Whether the status of each row is a result too.

    Returns:
        shots: Number of shots.
        cast: Number of pieces that they cast.
    """
    given = {
        "pieces": pieces,
        "cavities": cavities,
        "rejects": rejects,
        "confidence": confidence,
    }
    return calculated("shots", given, status)


def injector_loads(
    shots: Cells,
    shot_mass_g: Cells,
    shot_density_g_per_ml: Cells,
    injector_capacity_ml: Cells,
    *,
    injector_residue_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.injector_loads`.

    Args:
        shots: Number of shots.
        shot_mass_g: Mass of one shot, sprue included.
        shot_density_g_per_ml: Density of what the injector draws: hot, voids counted.
        injector_capacity_ml: Volume that the injector takes up at most.
        injector_residue_ml: Volume that stays in the injector each time it is emptied; below its capacity.
        status: Whether the status of each row is a result too.

    Returns:
        loads: Number of injector loads.
        shots_per_load: Whole shots in one load.
        shots_in_last: Shots from the last load.
    """
    given = {
        "shots": shots,
        "shot_mass_g": shot_mass_g,
        "shot_density_g_per_ml": shot_density_g_per_ml,
        "injector_capacity_ml": injector_capacity_ml,
        "injector_residue_ml": injector_residue_ml,
    }
    return calculated("injector_loads", given, status)


def batch_need(
    pieces: Cells,
    cavities: Cells,
    shot_mass_g: Cells,
    shot_density_g_per_ml: Cells,
    injector_capacity_ml: Cells,
    *,
    injector_residue_ml: Cells | None = None,
    cleanings: Cells | None = None,
    sprue_mass_g: Cells | None = None,
    returned: Cells | None = None,
    pot_film_g: Cells | None = None,
    pot_heel_g: Cells | None = None,
    rejects: Cells | None = None,
    confidence: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
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
    given = {
        "pieces": pieces,
        "cavities": cavities,
        "shot_mass_g": shot_mass_g,
        "shot_density_g_per_ml": shot_density_g_per_ml,
        "injector_capacity_ml": injector_capacity_ml,
        "injector_residue_ml": injector_residue_ml,
        "cleanings": cleanings,
        "sprue_mass_g": sprue_mass_g,
        "returned": returned,
        "pot_film_g": pot_film_g,
        "pot_heel_g": pot_heel_g,
        "rejects": rejects,
        "confidence": confidence,
    }
    return calculated("batch_need", given, status)


def base_to_mark(
    mix_needed_g: Cells,
    base_fraction: Cells,
    base_density_g_per_ml: Cells,
    cup_capacity_ml: Cells,
    *,
    cup_mark_ml: Cells | None = None,
    shot_mass_g: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.base_to_mark`.

    Args:
        mix_needed_g: Mass of mix that is needed.
        base_fraction: Share of base in the mix, by mass.
        base_density_g_per_ml: Density of the base, cold and liquid, as a cup measures it.
        cup_capacity_ml: Volume of the cup up to its last mark.
        cup_mark_ml: Distance between the marks of the cup.
        shot_mass_g: Mass of one shot, sprue included.
        status: Whether the status of each row is a result too.

    Returns:
        base_volume_ml: Volume of base: the mark. Unit: mL.
        base_mass_g: Mass of that base. Unit: g.
        mix_mass_g: Mass of the mix with all doses. Unit: g.
        surplus_mass_g: Mass that is more than needed. Unit: g.
        extra_shots: Whole shots that the surplus gives, where the mass of a shot is given.
    """
    given = {
        "mix_needed_g": mix_needed_g,
        "base_fraction": base_fraction,
        "base_density_g_per_ml": base_density_g_per_ml,
        "cup_capacity_ml": cup_capacity_ml,
        "cup_mark_ml": cup_mark_ml,
        "shot_mass_g": shot_mass_g,
    }
    return calculated("base_to_mark", given, status)


def least_pot(
    doses: Lists,
    base_fraction: Cells,
    *,
    oven_least_g: Cells | None = None,
    injector_least_g: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.least_pot`.

    Args:
        doses: The doses: of each its smallest step, its tolerance and its ratio to the base.
        base_fraction: Share of base in the mix, by mass.
        oven_least_g: Smallest mix that the oven heats evenly.
        injector_least_g: Smallest mix that the injector can draw from.
        status: Whether the status of each row is a result too.

    Returns:
        mix_mass_g: Mass of the mix. Unit: g.
        base_mass_g: Mass of base in it. Unit: g.
    """
    given = {
        "doses": doses,
        "base_fraction": base_fraction,
        "oven_least_g": oven_least_g,
        "injector_least_g": injector_least_g,
    }
    return calculated("least_pot", given, status)


def reject_rate(
    cast_pieces: Cells,
    reject_count: Cells,
    *,
    confidence: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.reject_rate`.

    Args:
        cast_pieces: Number of pieces that were cast.
        reject_count: Number of them that are not fit to sell.
        confidence: Confidence that enough good pieces come out.
        status: Whether the status of each row is a result too.

    Returns:
        rejects: Share of rejects. Unit: 1.
        rejects_min: Its lower bound. Unit: 1.
        rejects_max: Its upper bound. Unit: 1.
    """
    given = {
        "cast_pieces": cast_pieces,
        "reject_count": reject_count,
        "confidence": confidence,
    }
    return calculated("reject_rate", given, status)


def bench_measure(
    mass_to_measure_g: Cells,
    *,
    tolerance: Cells | None = None,
    balance_readability_g: Cells | None = None,
    balance_capacity_g: Cells | None = None,
    balance_least_load_g: Cells | None = None,
    spoons_ml: Lists | None = None,
    cups: Lists | None = None,
    as_measured_density_g_per_ml: Cells | None = None,
    drop_mass_g: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
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
    return calculated("bench_measure", given, status)


def sink_rate(
    piece_density_g_per_ml: Cells,
    piece_volume_ml: Cells,
    diameter_mm: Cells,
    water_temperature_celsius: Cells,
    *,
    length_mm: Cells | None = None,
    shape: Shape | Cells | None = None,
    hook_mass_g: Cells | None = None,
    hook_volume_ml: Cells | None = None,
    salinity_practical: Cells | None = None,
    salinity_absolute: Cells | None = None,
    density_uncertainty_g_per_ml: Cells | None = None,
    depth_m: Cells | None = None,
    drop_depth_m: Cells | None = None,
    drop_time_s: Cells | None = None,
    drop_density_g_per_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        sink_rate_cm_per_s: Sink rate. Unit: cm/s.
        sink_rate_min_cm_per_s: Lower bound; 0 where the piece may hang or float. Unit: cm/s.
        sink_rate_max_cm_per_s: Upper bound. Unit: cm/s.
        motion: Whether it sinks straight: straight, may-swing or swings.
        reynolds: Reynolds number. Unit: 1.
        drag_coefficient: Drag coefficient, on length times diameter of a stick and the cross-section of a
            ball. Unit: 1.
        sink_time_s: Time to the depth, let go at rest just below the surface. Unit: s.
    """
    given = {
        "piece_density_g_per_ml": piece_density_g_per_ml,
        "piece_volume_ml": piece_volume_ml,
        "diameter_mm": diameter_mm,
        "water_temperature_celsius": water_temperature_celsius,
        "length_mm": length_mm,
        "shape": shape,
        "hook_mass_g": hook_mass_g,
        "hook_volume_ml": hook_volume_ml,
        "salinity_practical": salinity_practical,
        "salinity_absolute": salinity_absolute,
        "density_uncertainty_g_per_ml": density_uncertainty_g_per_ml,
        "depth_m": depth_m,
        "drop_depth_m": drop_depth_m,
        "drop_time_s": drop_time_s,
        "drop_density_g_per_ml": drop_density_g_per_ml,
    }
    return calculated("sink_rate", given, status)


def density_for_sink_rate(
    sink_rate_cm_per_s: Cells,
    piece_volume_ml: Cells,
    diameter_mm: Cells,
    water_temperature_celsius: Cells,
    *,
    length_mm: Cells | None = None,
    shape: Shape | Cells | None = None,
    hook_mass_g: Cells | None = None,
    hook_volume_ml: Cells | None = None,
    salinity_practical: Cells | None = None,
    salinity_absolute: Cells | None = None,
    drop_depth_m: Cells | None = None,
    drop_time_s: Cells | None = None,
    drop_density_g_per_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        piece_density_g_per_ml: Density of the piece, voids and salt counted. Unit: g/mL.
    """
    given = {
        "sink_rate_cm_per_s": sink_rate_cm_per_s,
        "piece_volume_ml": piece_volume_ml,
        "diameter_mm": diameter_mm,
        "water_temperature_celsius": water_temperature_celsius,
        "length_mm": length_mm,
        "shape": shape,
        "hook_mass_g": hook_mass_g,
        "hook_volume_ml": hook_volume_ml,
        "salinity_practical": salinity_practical,
        "salinity_absolute": salinity_absolute,
        "drop_depth_m": drop_depth_m,
        "drop_time_s": drop_time_s,
        "drop_density_g_per_ml": drop_density_g_per_ml,
    }
    return calculated("density_for_sink_rate", given, status)


def hardness(
    points: Lists,
    scale: Scale | Cells,
    softener_ratio: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.hardness`.

    Args:
        points: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading.
        scale: The scale of the durometer.
        softener_ratio: Softener or hardener, mass per mass of base; between the measured points.
        status: Whether the status of each row is a result too.

    Returns:
        hardness: Durometer reading. Unit: 1.
    """
    given = {
        "points": points,
        "scale": scale,
        "softener_ratio": softener_ratio,
    }
    return calculated("hardness", given, status)


def softener_ratio(
    points: Lists,
    scale: Scale | Cells,
    hardness: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.softener_ratio`.

    Args:
        points: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading.
        scale: The scale of the durometer.
        hardness: Durometer reading.
        status: Whether the status of each row is a result too.

    Returns:
        softener_ratio: Mass per mass of base. Unit: 1.
    """
    given = {
        "points": points,
        "scale": scale,
        "hardness": hardness,
    }
    return calculated("softener_ratio", given, status)


def salted_softener(
    salted_points: Lists,
    salt_of_base: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.salted_softener`.

    Args:
        salted_points: The shop's own measured points, by rising salt: of each the salt and the softener, mass
            per mass of base.
        salt_of_base: Salt, mass per mass of base; between the measured points.
        status: Whether the status of each row is a result too.

    Returns:
        softener_ratio: Softener on top of the unsalted body's, mass per mass of base. Unit: 1.
    """
    given = {
        "salted_points": salted_points,
        "salt_of_base": salt_of_base,
    }
    return calculated("salted_softener", given, status)


def water_density(
    water_temperature_celsius: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.water_density`.

    Args:
        water_temperature_celsius: Temperature of the water.
        status: Whether the status of each row is a result too.

    Returns:
        density_g_per_ml: Density of the water. Unit: g/mL.
    """
    given = {
        "water_temperature_celsius": water_temperature_celsius,
    }
    return calculated("water_density", given, status)


def cavity_of_water(
    water_mass_g: Cells,
    water_temperature_celsius: Cells,
    *,
    air_pressure_kpa: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.cavity_of_water`.

    Args:
        water_mass_g: Reading of the balance for the water in one cavity: filled less empty.
        water_temperature_celsius: Temperature of the water.
        air_pressure_kpa: Air pressure at the balance, not reduced to sea level.
        status: Whether the status of each row is a result too.

    Returns:
        cavity_volume_ml: Volume of the cavity. Unit: mL.
    """
    given = {
        "water_mass_g": water_mass_g,
        "water_temperature_celsius": water_temperature_celsius,
        "air_pressure_kpa": air_pressure_kpa,
    }
    return calculated("cavity_of_water", given, status)


def standard_pressure(
    altitude_m: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.standard_pressure`.

    Args:
        altitude_m: Height above sea level, as a map gives it; negative below it.
        status: Whether the status of each row is a result too.

    Returns:
        station_pressure_kpa: Air pressure at the place itself; also the maximum that a true vacuum gauge
            shows there. Unit: kPa.
    """
    given = {
        "altitude_m": altitude_m,
    }
    return calculated("standard_pressure", given, status)


def station_pressure(
    reported_pressure_kpa: Cells,
    altitude_m: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.station_pressure`.

    Args:
        reported_pressure_kpa: Air pressure as a weather report gives it, reduced to sea level; needs the
            altitude.
        altitude_m: Height above sea level, as a map gives it; negative below it.
        status: Whether the status of each row is a result too.

    Returns:
        station_pressure_kpa: Air pressure at the place itself; also the maximum that a true vacuum gauge
            shows there. Unit: kPa.
    """
    given = {
        "reported_pressure_kpa": reported_pressure_kpa,
        "altitude_m": altitude_m,
    }
    return calculated("station_pressure", given, status)


def swollen_volume(
    liquid_volume_ml: Cells,
    entrained_air: Cells,
    station_pressure_kpa: Cells,
    *,
    gauge_vacuum_kpa: Cells | None = None,
    absolute_pressure_kpa: Cells | None = None,
    dial_tolerance_kpa: Cells | None = None,
    vapor_pressure_kpa: Cells | None = None,
    damp_at_celsius: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        swollen_volume_ml: Volume in the vacuum. Unit: mL.
        standing_volume_ml: Volume before, bubbles included. Unit: mL.
        absolute_pressure_kpa: Pressure that is left in the chamber. Unit: kPa.
    """
    given = {
        "liquid_volume_ml": liquid_volume_ml,
        "entrained_air": entrained_air,
        "station_pressure_kpa": station_pressure_kpa,
        "gauge_vacuum_kpa": gauge_vacuum_kpa,
        "absolute_pressure_kpa": absolute_pressure_kpa,
        "dial_tolerance_kpa": dial_tolerance_kpa,
        "vapor_pressure_kpa": vapor_pressure_kpa,
        "damp_at_celsius": damp_at_celsius,
    }
    return calculated("swollen_volume", given, status)


def entrained_air(
    rise: Cells,
    station_pressure_kpa: Cells,
    *,
    gauge_vacuum_kpa: Cells | None = None,
    absolute_pressure_kpa: Cells | None = None,
    dial_tolerance_kpa: Cells | None = None,
    vapor_pressure_kpa: Cells | None = None,
    damp_at_celsius: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        entrained_air: Share of air in the mix by volume, under the outside pressure. Unit: 1.
    """
    given = {
        "rise": rise,
        "station_pressure_kpa": station_pressure_kpa,
        "gauge_vacuum_kpa": gauge_vacuum_kpa,
        "absolute_pressure_kpa": absolute_pressure_kpa,
        "dial_tolerance_kpa": dial_tolerance_kpa,
        "vapor_pressure_kpa": vapor_pressure_kpa,
        "damp_at_celsius": damp_at_celsius,
    }
    return calculated("entrained_air", given, status)


def degas_vessel(
    liquid_volume_ml: Cells,
    entrained_air: Cells,
    station_pressure_kpa: Cells,
    *,
    gauge_vacuum_kpa: Cells | None = None,
    absolute_pressure_kpa: Cells | None = None,
    dial_tolerance_kpa: Cells | None = None,
    vapor_pressure_kpa: Cells | None = None,
    damp_at_celsius: Cells | None = None,
    vessel_spare: Cells | None = None,
    vessel_brim_ml: Cells | None = None,
    vessel_mark_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        vessel_volume_ml: Volume to the brim of a vessel that takes the pot at once. Unit: mL.
        fill_mark_ml: Level to fill the given vessel to at most, bubbles included. Unit: mL.
        fills: Number of fills of the given vessel.
        fill_level_ml: Level of each fill, shared out evenly, bubbles included. Unit: mL.
        fill_swollen_ml: Volume of an even fill in the vacuum. Unit: mL.
    """
    given = {
        "liquid_volume_ml": liquid_volume_ml,
        "entrained_air": entrained_air,
        "station_pressure_kpa": station_pressure_kpa,
        "gauge_vacuum_kpa": gauge_vacuum_kpa,
        "absolute_pressure_kpa": absolute_pressure_kpa,
        "dial_tolerance_kpa": dial_tolerance_kpa,
        "vapor_pressure_kpa": vapor_pressure_kpa,
        "damp_at_celsius": damp_at_celsius,
        "vessel_spare": vessel_spare,
        "vessel_brim_ml": vessel_brim_ml,
        "vessel_mark_ml": vessel_mark_ml,
    }
    return calculated("degas_vessel", given, status)


def flake_count(
    cut: Cells,
    thickness_um: Cells,
    film_density_g_per_ml: Cells,
    flake_dose_g: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.flake_count`.

    Args:
        cut: Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.
        thickness_um: Thickness of the film; below the size of the cut.
        film_density_g_per_ml: Density of the film that the flake is cut from.
        flake_dose_g: Mass of the dose of flake.
        status: Whether the status of each row is a result too.

    Returns:
        particles: Number of particles, not rounded. Unit: 1.
        area_cm2: Area of film, one face of every particle. Unit: cm2.
    """
    given = {
        "cut": cut,
        "thickness_um": thickness_um,
        "film_density_g_per_ml": film_density_g_per_ml,
        "flake_dose_g": flake_dose_g,
    }
    return calculated("flake_count", given, status)


def flake_swap(
    cut: Cells,
    thickness_um: Cells,
    film_density_g_per_ml: Cells,
    flake_dose_g: Cells,
    other_cut: Cells,
    other_thickness_um: Cells,
    other_film_density_g_per_ml: Cells,
    *,
    other_as_scooped_g_per_ml: Cells | None = None,
    alike: Alike | Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        mass_g: Mass of the other flake. Unit: g.
        scoop_ml: Volume to scoop of it, where its bulk density is given. Unit: mL.
        count_ratio: Particles of the other dose over those of the first. Unit: 1.
        area_ratio: Area of the other dose over that of the first. Unit: 1.
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
    return calculated("flake_swap", given, status)


def color_difference(
    lightness: Cells,
    a: Cells,
    b: Cells,
    other_lightness: Cells,
    other_a: Cells,
    other_b: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.color_difference`.

    Args:
        lightness: L* of the color: 0 for black, 100 for white.
        a: a* of the color: green below 0, red above.
        b: b* of the color: blue below 0, yellow above.
        other_lightness: L* of the other color.
        other_a: a* of the other color.
        other_b: b* of the other color.
        status: Whether the status of each row is a result too.

    Returns:
        difference: ΔE₀₀. Unit: 1.
    """
    given = {
        "lightness": lightness,
        "a": a,
        "b": b,
        "other_lightness": other_lightness,
        "other_a": other_a,
        "other_b": other_b,
    }
    return calculated("color_difference", given, status)


def equivalent_time(
    readings: Lists,
    activation_energy_kj_per_mol: Cells,
    reference_temperature_celsius: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.equivalent_time`.

    Args:
        readings: Temperatures in the order of time, taken as straight between.
        activation_energy_kj_per_mol: Activation energy of the decay in the heat; state its source in a book.
        reference_temperature_celsius: Temperature at which the time is counted.
        status: Whether the status of each row is a result too.

    Returns:
        equivalent_time_s: Equivalent time. Unit: s.
    """
    given = {
        "readings": readings,
        "activation_energy_kj_per_mol": activation_energy_kj_per_mol,
        "reference_temperature_celsius": reference_temperature_celsius,
    }
    return calculated("equivalent_time", given, status)


def budget_left(
    heat_budget_s: Cells,
    equivalent_time_s: Cells,
    *,
    budget_with: Cells | None = None,
    stabilizer_dose: Cells | None = None,
    extra_time_s: Cells | None = None,
    extra_most: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.budget_left`.

    Args:
        heat_budget_s: Time at the reference temperature that the plastisol withstands.
        equivalent_time_s: Equivalent time that the pot has spent so far, at the temperature of its budget.
        budget_with: Stabilizer that the heat budget is stated for, by mass of base.
        stabilizer_dose: Stabilizer in the mix, by mass of base.
        extra_time_s: Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000
            s is 5 min for every 1 %.
        extra_most: Highest dose of stabilizer for which the extra time is known, by mass of base.
        status: Whether the status of each row is a result too.

    Returns:
        budget_s: Budget at this dose of stabilizer. Unit: s.
        left_s: Time that is left; 0 where more was spent. Unit: s.
        overspent_s: Time that was spent beyond the budget; 0 where it was not. Unit: s.
    """
    given = {
        "heat_budget_s": heat_budget_s,
        "equivalent_time_s": equivalent_time_s,
        "budget_with": budget_with,
        "stabilizer_dose": stabilizer_dose,
        "extra_time_s": extra_time_s,
        "extra_most": extra_most,
    }
    return calculated("budget_left", given, status)


def heat_time(
    pot_mass_g: Cells,
    specific_heat_j_per_g_k: Cells,
    heated_from_celsius: Cells,
    heated_to_celsius: Cells,
    *,
    timings: Lists | None = None,
    oven_power_w: Cells | None = None,
    setting: Cells | None = None,
    specific_heat_rise_per_kelvin: Cells | None = None,
    timed_specific_heat_j_per_g_k: Cells | None = None,
    vessel_mass_g: Cells | None = None,
    vessel_specific_heat_j_per_g_k: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        heat_time_s: Heating time. Unit: s.
        heat_time_uncertainty_s: Its standard uncertainty for one more heating. Unit: s.
        power_w: Power that reaches mix and vessel. Unit: W.
        beyond: How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1.
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
    return calculated("heat_time", given, status)


def next_burst(
    pot_mass_g: Cells,
    specific_heat_j_per_g_k: Cells,
    reading_celsius: Cells,
    window_bottom_celsius: Cells,
    window_top_celsius: Cells,
    *,
    timings: Lists | None = None,
    oven_power_w: Cells | None = None,
    setting: Cells | None = None,
    specific_heat_rise_per_kelvin: Cells | None = None,
    timed_specific_heat_j_per_g_k: Cells | None = None,
    vessel_mass_g: Cells | None = None,
    vessel_specific_heat_j_per_g_k: Cells | None = None,
    aim_celsius: Cells | None = None,
    thermometer_kelvin: Cells | None = None,
    burst_step_s: Cells | None = None,
    longest_burst_s: Cells | None = None,
    oven_turn_s: Cells | None = None,
    measures: Measures | Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        burst_s: The next burst; none where the pot is hot enough. Unit: s.
        expected_celsius: The expected reading after it. Unit: °C.
        shoot_from_celsius: Shoot from this reading on. Unit: °C.
        shoot_to_celsius: Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.
        bursts: Number of bursts that are expected from this reading on.
        oven_time_s: Time that the oven is expected to run in them. Unit: s.
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
    return calculated("next_burst", given, status)


def stays_hot(
    pot_mass_g: Cells,
    hot_from_celsius: Cells,
    hot_to_celsius: Cells,
    watched_mass_g: Cells,
    watched_from_celsius: Cells,
    watched_to_celsius: Cells,
    watched_time_s: Cells,
    *,
    room_celsius: Cells | None = None,
    stood_s: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        time_constant_s: Time in which the distance to the temperature of the room falls to 37 %. Unit: s.
        hot_for_s: Time down to the lower temperature, with all of the mix in the pot. Unit: s.
        half_full_s: The same with half of it. Unit: s.
        after_celsius: Temperature after the time that the pot has stood. Unit: °C.
    """
    given = {
        "pot_mass_g": pot_mass_g,
        "hot_from_celsius": hot_from_celsius,
        "hot_to_celsius": hot_to_celsius,
        "watched_mass_g": watched_mass_g,
        "watched_from_celsius": watched_from_celsius,
        "watched_to_celsius": watched_to_celsius,
        "watched_time_s": watched_time_s,
        "room_celsius": room_celsius,
        "stood_s": stood_s,
    }
    return calculated("stays_hot", given, status)


def pot_heats(
    pot_mass_g: Cells,
    clock_runs: Lists,
    *,
    hot_for_s: Cells | None = None,
    clock_from_celsius: Cells | None = None,
    clock_to_celsius: Cells | None = None,
    watched_mass_g: Cells | None = None,
    watched_from_celsius: Cells | None = None,
    watched_to_celsius: Cells | None = None,
    watched_time_s: Cells | None = None,
    room_celsius: Cells | None = None,
    oven_time_s: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        reheats: Number of reheats: the heats but for the first.
        first_shots: Number of shots in the first heat.
        shooting_time_s: Time of all shots, without the oven. Unit: s.
        total_time_s: Time of all shots and of the oven for each heat, where that is given. Unit: s.
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
    return calculated("pot_heats", given, status)


def setting_time(
    section_shape: SectionShape | Cells,
    section_thickness_mm: Cells,
    shot_at_celsius: Cells,
    *,
    mold_at_celsius: Cells | None = None,
    take_out_celsius: Cells | None = None,
    piece_point: PiecePoint | Cells | None = None,
    diffusivity_m2_per_s: Cells | None = None,
    shot_mass_g: Cells | None = None,
    shot_specific_heat_j_per_g_k: Cells | None = None,
    mold_mass_g: Cells | None = None,
    mold_specific_heat_j_per_g_k: Cells | None = None,
    hands_s: Cells | None = None,
    molds: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        setting_time_s: Setting time. Unit: s.
        setting_time_min_s: The same with the highest diffusivity of soft PVC. Unit: s.
        setting_time_max_s: The same with the lowest. Unit: s.
        warms_kelvin: How much one shot warms the mold, where its mass is given. Unit: K.
        in_a_row: Number of shots in a row before the mold is too warm, nothing lost between them; none where
            its mass is not given, or it goes on.
        shot_every_s: Time from one shot to the next, where the working time is given. Unit: s.
    """
    given = {
        "section_shape": section_shape,
        "section_thickness_mm": section_thickness_mm,
        "shot_at_celsius": shot_at_celsius,
        "mold_at_celsius": mold_at_celsius,
        "take_out_celsius": take_out_celsius,
        "piece_point": piece_point,
        "diffusivity_m2_per_s": diffusivity_m2_per_s,
        "shot_mass_g": shot_mass_g,
        "shot_specific_heat_j_per_g_k": shot_specific_heat_j_per_g_k,
        "mold_mass_g": mold_mass_g,
        "mold_specific_heat_j_per_g_k": mold_specific_heat_j_per_g_k,
        "hands_s": hands_s,
        "molds": molds,
    }
    return calculated("setting_time", given, status)


def stir_every(
    grain_mm: Cells,
    grain_density_g_per_ml: Cells,
    melt_density_g_per_ml: Cells,
    melt_depth_mm: Cells,
    *,
    melt_viscosity_min_mpa_s: Cells | None = None,
    melt_viscosity_max_mpa_s: Cells | None = None,
    solids_share: Cells | None = None,
    unstirred: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        stir_every_s: How often to stir, to be safe: in the thinnest melt. Unit: s.
        stir_every_max_s: How often is enough in the thickest melt. Unit: s.
        settling_min_cm_per_s: Speed of the grains in the thickest melt. Unit: cm/s.
        settling_max_cm_per_s: Speed of the grains in the thinnest melt. Unit: cm/s.
    """
    given = {
        "grain_mm": grain_mm,
        "grain_density_g_per_ml": grain_density_g_per_ml,
        "melt_density_g_per_ml": melt_density_g_per_ml,
        "melt_depth_mm": melt_depth_mm,
        "melt_viscosity_min_mpa_s": melt_viscosity_min_mpa_s,
        "melt_viscosity_max_mpa_s": melt_viscosity_max_mpa_s,
        "solids_share": solids_share,
        "unstirred": unstirred,
    }
    return calculated("stir_every", given, status)


def viscosity_of_ball(
    ball_diameter_mm: Cells,
    ball_density_g_per_ml: Cells,
    melt_density_g_per_ml: Cells,
    ball_depth_mm: Cells,
    ball_time_s: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.viscosity_of_ball`.

    Args:
        ball_diameter_mm: Diameter of the ball, much smaller than that of the vessel.
        ball_density_g_per_ml: Density of the ball: 7.8 g/mL of steel.
        melt_density_g_per_ml: Density of the melt, hot.
        ball_depth_mm: How deep the ball sank, let go below the surface.
        ball_time_s: Time that the ball took.
        status: Whether the status of each row is a result too.

    Returns:
        melt_viscosity_mpa_s: Viscosity of the melt. Unit: mPa.s.
    """
    given = {
        "ball_diameter_mm": ball_diameter_mm,
        "ball_density_g_per_ml": ball_density_g_per_ml,
        "melt_density_g_per_ml": melt_density_g_per_ml,
        "ball_depth_mm": ball_depth_mm,
        "ball_time_s": ball_time_s,
    }
    return calculated("viscosity_of_ball", given, status)


def cavity_of_weights(
    weights_g: Lists,
    balance_readability_g: Cells,
    cold_density_g_per_ml: Cells,
    *,
    hot_density_g_per_ml: Cells | None = None,
    voids: Cells | None = None,
    feed: Cells | None = None,
    feed_uncertainty: Cells | None = None,
    status: bool = False,
) -> Arrow:
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
        status: Whether the status of each row is a result too.

    Returns:
        cavity_volume_ml: Volume of the cavity. Unit: mL.
        cavity_volume_uncertainty_ml: Its standard uncertainty. Where the feed is not known, that of an even
            spread from 0 to 1 counts. Unit: mL.
        mean_g: Mean of the weights. Unit: g.
        deviation_g: Standard deviation of one. Unit: g.
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
    return calculated("cavity_of_weights", given, status)


def feed_of_weights(
    weights_g: Lists,
    balance_readability_g: Cells,
    cold_density_g_per_ml: Cells,
    cavity_volume_ml: Cells,
    *,
    hot_density_g_per_ml: Cells | None = None,
    voids: Cells | None = None,
    volume_uncertainty_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.feed_of_weights`.

    Args:
        weights_g: Mass of each piece, one by one.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        cold_density_g_per_ml: Density of the finished plastic at 20 °C, without voids.
        cavity_volume_ml: Volume of one cavity.
        hot_density_g_per_ml: Melt density at shot temperature, without voids; at most the cold one.
        voids: Void fraction: share of the volume that is air.
        volume_uncertainty_ml: Standard uncertainty of the volume.
        status: Whether the status of each row is a result too.

    Returns:
        feed: Feed share. Unit: 1.
        feed_uncertainty: Its standard uncertainty. Unit: 1.
        mean_g: Mean of the weights. Unit: g.
        deviation_g: Standard deviation of one. Unit: g.
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
    return calculated("feed_of_weights", given, status)


def drop_of_weighings(
    drops_weighed: Lists,
    balance_readability_g: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.drop_of_weighings`.

    Args:
        drops_weighed: Drops that were counted and weighed together, each weighing started over.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        status: Whether the status of each row is a result too.

    Returns:
        drop_mass_g: Mass of one drop. Unit: g.
        drop_mass_uncertainty_g: Its standard uncertainty. Unit: g.
        scatter_g: Standard deviation of one drop against the next. Unit: g.
    """
    given = {
        "drops_weighed": drops_weighed,
        "balance_readability_g": balance_readability_g,
    }
    return calculated("drop_of_weighings", given, status)


def as_scooped_of_weighings(
    scoops_weighed: Lists,
    spoon_volume_ml: Cells,
    balance_readability_g: Cells,
    *,
    volume_uncertainty_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.as_scooped_of_weighings`.

    Args:
        scoops_weighed: Level spoonfuls that were counted and weighed together, each weighing started over.
        spoon_volume_ml: Volume of the level spoon.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        volume_uncertainty_ml: Standard uncertainty of the volume.
        status: Whether the status of each row is a result too.

    Returns:
        as_scooped_g_per_ml: Bulk density, level in the spoon. Unit: g/mL.
        as_scooped_uncertainty_g_per_ml: Its standard uncertainty. Unit: g/mL.
        spoonful_g: Mass of one spoonful. Unit: g.
    """
    given = {
        "scoops_weighed": scoops_weighed,
        "spoon_volume_ml": spoon_volume_ml,
        "balance_readability_g": balance_readability_g,
        "volume_uncertainty_ml": volume_uncertainty_ml,
    }
    return calculated("as_scooped_of_weighings", given, status)


def residue_of_weighings(
    injector_weighed_g: Lists,
    residue_density_g_per_ml: Cells,
    balance_readability_g: Cells,
    *,
    density_uncertainty_g_per_ml: Cells | None = None,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.residue_of_weighings`.

    Args:
        injector_weighed_g: Weighings of the injector, each clean and then emptied as at work.
        residue_density_g_per_ml: Density of what stays in the injector, at the temperature at which it is
            emptied; its uncertainty is counted.
        balance_readability_g: Smallest difference that the balance shows; without it there is no balance.
        density_uncertainty_g_per_ml: Standard uncertainty of the density of the piece; its bounds are counted
            at twice that.
        status: Whether the status of each row is a result too.

    Returns:
        injector_residue_ml: Volume that stays in the injector. Unit: mL.
        injector_residue_uncertainty_ml: Its standard uncertainty. Unit: mL.
        residue_mass_g: Its mass. Unit: g.
    """
    given = {
        "injector_weighed_g": injector_weighed_g,
        "residue_density_g_per_ml": residue_density_g_per_ml,
        "balance_readability_g": balance_readability_g,
        "density_uncertainty_g_per_ml": density_uncertainty_g_per_ml,
    }
    return calculated("residue_of_weighings", given, status)


def price(
    cost: Cells,
    cost_margin: Cells,
    *,
    status: bool = False,
) -> Arrow:
    """Columns of :func:`pourwright.price`.

    Args:
        cost: Cost, in the smallest unit of the currency: cents.
        cost_margin: Share of the price that the shop keeps (a markup on the cost is another thing). Without
            it there is no price.
        status: Whether the status of each row is a result too.

    Returns:
        price: Price, in the smallest unit of the currency.
    """
    given = {
        "cost": cost,
        "cost_margin": cost_margin,
    }
    return calculated("price", given, status)
