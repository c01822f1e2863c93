"""Shots and batches: what a mold takes, what its pieces weigh, how much to mix."""

from __future__ import annotations

from dataclasses import dataclass
from typing import SupportsIndex

from ._call import checked, number, real, whole
from ._native import ffi, lib
from ._struct import left_out, struct


@dataclass(frozen=True, kw_only=True)
class Shot:
    """One shot into cavities of one shape.

    Attributes:
        cavity_ml: Volume of one cavity; above 0.
        cavities: How many cavities the shot fills; 1 or more.
        cold_g_per_ml: Density at 20 °C once fused, without voids; above 0.
        hot_g_per_ml: Density at shot temperature, without voids; the cold one where left out.
        sprue_ml: Volume of sprue that this shot fills; 0 or above.
        topped_g: Mass that topping off and holding add; 0 or above.
        share: The layer's share of each cavity, above 0 to 1; 1 where left out.
        feed: Share of its contraction that a piece draws from the sprue, 0 to 1.
        voids: Share of the volume that is air, 0 to below 1.
    """

    cavity_ml: float
    cavities: int
    cold_g_per_ml: float
    hot_g_per_ml: float | None = left_out("the cold density")
    sprue_ml: float = 0.0
    topped_g: float = 0.0
    share: float | None = left_out("all of the cavity")
    feed: float = 0.0
    voids: float = 0.0


@dataclass(frozen=True)
class ShotFill:
    """Masses of one shot.

    Attributes:
        fill_g: What the mold takes, topping included.
        pieces_g: All pieces of the shot together.
        sprue_g: What is left as sprue once the pieces have been fed.
        missing_g: What the sprue and the topping are short of: above 0 the pieces sink in.
        piece_g: One piece, or the layer in it.
        feed: The share of the contraction that was fed.
    """

    fill_g: float
    pieces_g: float
    sprue_g: float
    missing_g: float
    piece_g: float
    feed: float


def shot_fill(shot: Shot) -> ShotFill:
    """What a shot takes, and what its pieces weigh.

    Raises:
        PourwrightError: A number that is not finite or out of its range.
    """
    result = ffi.new("pour_shot_result *")
    checked(lib.pour_shot_fill, struct("pour_shot", Shot, "shot", shot), result)
    return ShotFill(result.fill_g, result.pieces_g, result.sprue_g, result.missing_g, result.piece_g, result.feed)


def piece_mass(
    cavity_ml: float, hot_g_per_ml: float, cold_g_per_ml: float, voids: float = 0.0, feed: float = 0.0
) -> float:
    """Mass of a piece, in g: V (1 − voids) [ρ_hot + feed (ρ_cold − ρ_hot)].

    Args:
        cavity_ml: Volume of the cavity; above 0.
        hot_g_per_ml: Density at shot temperature, without voids; above 0, at most the cold one.
        cold_g_per_ml: Density at 20 °C once fused, without voids.
        voids: Share of the volume that is air, 0 to below 1.
        feed: Share of its contraction that the piece draws from the sprue, 0 to 1.

    Raises:
        PourwrightError: A number that is not finite or out of its range.
    """
    return number(
        lib.pour_piece_mass,
        real("cavity_ml", cavity_ml),
        real("hot_g_per_ml", hot_g_per_ml),
        real("cold_g_per_ml", cold_g_per_ml),
        real("voids", voids),
        real("feed", feed),
    )


def shots(pieces: SupportsIndex, cavities: SupportsIndex, rejects: float = 0.0, confidence: float | None = None) -> int:
    """The least number of shots that gives so many good pieces.

    Args:
        pieces: How many good pieces are wanted, 1 to 1 000 000.
        cavities: How many cavities a shot fills; 1 or more.
        rejects: Share of pieces that are not fit to sell, 0 to below 1.
        confidence: How sure the number of good pieces shall be, above 0 to below 1; 0.9 where left out.

    Raises:
        ValueError: A confidence of 0.
        PourwrightError: A number that is not finite or out of its range.
    """
    sure = 0.0
    if confidence is not None:
        sure = real("confidence", confidence)
        if sure == 0:
            raise ValueError("confidence must not be 0; leave it out (None) for 0.9.")
    result = ffi.new("uint32_t *")
    checked(
        lib.pour_shots, whole("pieces", pieces), whole("cavities", cavities), real("rejects", rejects), sure, result
    )
    least: int = result[0]
    return least


@dataclass(frozen=True, kw_only=True)
class Batch:
    """Pieces wanted, and the shop that makes them.

    Attributes:
        pieces: How many good pieces are wanted, 1 to 1 000 000.
        cavities: How many cavities a shot fills; 1 or more.
        shot_g: What one shot takes, sprue included; above 0.
        shot_g_per_ml: Density of what the injector draws: hot, voids counted; above 0.
        injector_holds_ml: What the injector takes up at most; above 0.
        injector_keeps_ml: What stays in it each time it is emptied; 0 or above.
        sprue_g: What of a shot stays as sprue; 0 or above.
        returned: Share of the sprues that is melted again, 0 to 1.
        cleanings: How often the injector is cleaned or goes cold, the last time included; once where
            left out.
        rejects: Share of pieces that are not fit to sell, 0 to below 1.
        confidence: How sure the number of good pieces shall be; 0.9 where left out.
        film_g: What stays on the wall of the cup; 0 or above.
        heel_g: What cannot be drawn from the cup, its film included; 0 or above.
    """

    pieces: int
    cavities: int
    shot_g: float
    shot_g_per_ml: float
    injector_holds_ml: float
    injector_keeps_ml: float = 0.0
    sprue_g: float = 0.0
    returned: float = 0.0
    cleanings: int | None = left_out("once")
    rejects: float = 0.0
    confidence: float | None = left_out("0.9")
    film_g: float = 0.0
    heel_g: float = 0.0


@dataclass(frozen=True)
class BatchNeed:
    """What a batch takes.

    Attributes:
        total_g: The mass to mix.
        drawn_g: What all shots take.
        returned_g: What of the sprues goes back and is shot again.
        pieces_g: All pieces together.
        sprues_g: Sprues that are left over.
        kept_g: What the injector keeps over the run.
        in_cup_g: What stays in the cup: the heel, with the film in it.
        shots: Shots.
        shots_per_load: Whole shots that one injector load gives.
        loads: Injector loads.
        shots_in_last: Shots from the last load.
    """

    total_g: float
    drawn_g: float
    returned_g: float
    pieces_g: float
    sprues_g: float
    kept_g: float
    in_cup_g: float
    shots: int
    shots_per_load: int
    loads: int
    shots_in_last: int


def batch_need(batch: Batch) -> BatchNeed:
    """How much to mix for so many pieces: shots, injector loads, losses.

    Raises:
        PourwrightError: A shot larger than the injector, with the largest that fits; a number that
            cannot be.
    """
    result = ffi.new("pour_batch_result *")
    checked(lib.pour_batch_need, struct("pour_batch", Batch, "batch", batch), result)
    return BatchNeed(
        total_g=result.total_g,
        drawn_g=result.drawn_g,
        returned_g=result.returned_g,
        pieces_g=result.pieces_g,
        sprues_g=result.sprues_g,
        kept_g=result.kept_g,
        in_cup_g=result.in_cup_g,
        shots=result.shots,
        shots_per_load=result.shots_per_load,
        loads=result.loads,
        shots_in_last=result.shots_in_last,
    )
