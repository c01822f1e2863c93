"""Salt loadings, each way to state one into each other."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from ._call import checked, number, real, word
from ._native import ffi, lib
from ._struct import left_out, struct

SaltForm = Literal["as-scooped", "per-volume", "of-base", "of-finished", "finished-density", "piece", "sink-density"]
"""A way to state a salt loading.

* ``"as-scooped"``: mL of salt as scooped per mL of base
* ``"per-volume"``: g of salt per mL of base
* ``"of-base"``: mass of salt per mass of base
* ``"of-finished"``: mass of salt per mass of finished mix
* ``"finished-density"``: density of the finished plastic at 20 °C, voids counted, in g/mL
* ``"piece"``: mass of a piece, in g; needs ``cavity_ml``
* ``"sink-density"``: mean density of a piece with its hook, in g/mL; needs ``cavity_ml``
"""

_FORMS: Mapping[str, int] = {
    "as-scooped": lib.POUR_SALT_AS_SCOOPED,
    "per-volume": lib.POUR_SALT_PER_VOLUME,
    "of-base": lib.POUR_SALT_OF_BASE,
    "of-finished": lib.POUR_SALT_OF_FINISHED,
    "finished-density": lib.POUR_SALT_FINISHED_DENSITY,
    "piece": lib.POUR_SALT_PIECE,
    "sink-density": lib.POUR_SALT_SINK_DENSITY,
}


@dataclass(frozen=True, kw_only=True)
class Unsalted:
    """A mix before salt, and what the conversion of salt loadings rests on.

    Attributes:
        base_ml: Volume of base, cold and liquid, as a cup measures it; above 0.
        base_g_per_ml: Density of the base as measured; above 0.
        salt_g_per_ml: True density of the salt; above 0.
        salt_as_scooped_g_per_ml: Density of the salt in the spoon, at most the true one; the form
            ``"as-scooped"`` needs it.
        salt_expansion_per_kelvin: Volumetric expansion of the salt; 0 or above.
        mix_g: Mass of the mix before salt; that of its base where it and ``mix_ml`` are left out.
        mix_ml: Its volume at 20 °C as fused, without voids; that of its base where left out with ``mix_g``.
        hot_ml: Its volume at shot temperature; the cold one where left out.
        shot_celsius: Shot temperature, 20 to 400 °C; 20 °C where left out.
        voids: Share of the finished volume that is air, 0 to below 1.
        softener_per_salt: Mass of softener that goes in per mass of salt; 0 or above.
        softener_g_per_ml: Density of that softener; above 0 where there is any.
        softener_expansion_per_kelvin: Volumetric expansion of that softener; 0 or above.
        most_solids: The most salt in the finished mix by true volume, above 0 to below 1; 0.3 where left
            out.
        cavity_ml: Volume of the cavity of a piece; no piece where left out.
        feed: Share of its contraction that a piece draws from the sprue, 0 to 1.
        hook_g: Mass of the hook and weight on a piece; 0 or above.
        hook_ml: Volume that they displace; 0 or above.
    """

    base_ml: float
    base_g_per_ml: float
    salt_g_per_ml: float
    salt_as_scooped_g_per_ml: float | None = left_out("what is not known")
    salt_expansion_per_kelvin: float = 0.0
    mix_g: float | None = left_out("the mass of the base")
    mix_ml: float | None = left_out("the volume of the base")
    hot_ml: float | None = left_out("the cold volume")
    shot_celsius: float | None = left_out("20 °C")
    voids: float = 0.0
    softener_per_salt: float = 0.0
    softener_g_per_ml: float = 0.0
    softener_expansion_per_kelvin: float = 0.0
    most_solids: float | None = left_out("0.3")
    cavity_ml: float | None = left_out("no piece")
    feed: float = 0.0
    hook_g: float = 0.0
    hook_ml: float = 0.0


def salt_convert(mix: Unsalted, form: SaltForm, value: float, to: SaltForm) -> float:
    """States a salt loading another way.

    Args:
        mix: The mix before salt.
        form: How ``value`` states the loading.
        value: The loading; unit and meaning as of its form.
        to: The form that is wanted.

    Raises:
        PourwrightError: A loading out of reach, with what is in reach; a number that cannot be.
    """
    return number(
        lib.pour_salt_convert,
        struct("pour_unsalted", Unsalted, "mix", mix),
        word(_FORMS, "form", form),
        real("value", value),
        word(_FORMS, "to", to),
    )


def salt_mass(mix: Unsalted, form: SaltForm, value: float) -> float:
    """The mass of salt that a loading takes, in g; arguments and errors are those of :func:`salt_convert`."""
    made = struct("pour_unsalted", Unsalted, "mix", mix)
    return number(lib.pour_salt_mass, made, word(_FORMS, "form", form), real("value", value))


def salt_reach(mix: Unsalted, form: SaltForm) -> tuple[float, float]:
    """What is in reach in a form: without salt, and with the most that the limits allow.

    Raises:
        PourwrightError: A number that cannot be; a form that needs a cavity that is left out.
    """
    made = struct("pour_unsalted", Unsalted, "mix", mix)
    least, most = ffi.new("double *"), ffi.new("double *")
    checked(lib.pour_salt_reach, made, word(_FORMS, "form", form), least, most)
    return least[0], most[0]


def salt_for_density(
    base_ml: float, base_g_per_ml: float, salt_g_per_ml: float, voids: float, density_g_per_ml: float
) -> float:
    """The mass of salt that brings base without anything else to a finished density, in g.

    m = (ρ′V − M)/(1 − ρ′/ρ_salt) with ρ′ = ρ/(1 − voids), up to 30 % of salt by true volume. For a mix,
    softener beside the salt or another limit there is :func:`salt_mass`.

    Args:
        base_ml: Volume of base, cold and liquid; above 0.
        base_g_per_ml: Its density; above 0.
        salt_g_per_ml: True density of the salt; above 0.
        voids: Share of the finished volume that is air, 0 to below 1.
        density_g_per_ml: Density of the finished plastic at 20 °C, voids counted.

    Raises:
        PourwrightError: A density out of reach, with what is in reach; a number that cannot be.
    """
    return number(
        lib.pour_salt_for_density,
        real("base_ml", base_ml),
        real("base_g_per_ml", base_g_per_ml),
        real("salt_g_per_ml", salt_g_per_ml),
        real("voids", voids),
        real("density_g_per_ml", density_g_per_ml),
    )
