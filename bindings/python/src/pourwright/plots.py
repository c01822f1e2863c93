"""Pictures, by Matplotlib: what salt does to a piece, and the time line of a day.

It needs Matplotlib: ``pip install pourwright[matplotlib]``.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

try:
    import matplotlib.pyplot as plt
except ImportError as _missing:
    raise ImportError("pourwright.plots needs Matplotlib: pip install pourwright[matplotlib]") from _missing
import numpy as np

import pourwright

from . import columns
from ._calculations import salt_reach, sink_rate
from ._error import PourwrightError, wrong_type
from ._texts import Floats

if TYPE_CHECKING:
    from matplotlib.figure import Figure

__all__ = ["day", "salt"]

# Apart in gray and for eyes that do not tell red from green.
_COLORS = {"prepare": "#9aa5ad", "heat": "#b5541c", "reheat": "#e39a5f", "shoot": "#1f5a7a"}
_WEIGHT, _SINK = "#1f5a7a", "#b5541c"


def salt(
    base_density_g_per_ml: float,
    salt_density_g_per_ml: float,
    cavity_volume_ml: float,
    diameter_mm: float,
    *,
    length_mm: float | None = None,
    hook_mass_g: float | None = None,
    hook_volume_ml: float | None = None,
    feed: float | None = None,
    most_solids: float | None = None,
    water_temperature_celsius: float = 20.0,
    salinity_practical: float | None = None,
) -> Figure:
    """Draws what salt does to a piece: its weight and its sink rate against the salt per mass of base.

    The line is the estimate; the band is between its bounds: without feed and fed in full where the feed is not known,
    and the bounds of the sink rate's model. The salt ends at the maximum share of solids.

    Args:
        base_density_g_per_ml: Density of the base.
        salt_density_g_per_ml: True density of the salt.
        cavity_volume_ml: Volume of one cavity.
        diameter_mm: Mean diameter of the piece.
        length_mm: Length of a stick; a ball without it.
        hook_mass_g: Mass of hook and weight; give its volume too.
        hook_volume_ml: Volume that they displace.
        feed: Share of its contraction that a piece draws from the sprue.
        most_solids: Maximum share of salt in the finished mix, by true volume.
        water_temperature_celsius: Temperature of the water.
        salinity_practical: Practical salinity of the water; fresh water without it.

    Raises:
        PourwrightError: What is wrong with the numbers, all of it together.
    """
    of_base, weight, sink = salt_rows(
        base_density_g_per_ml,
        salt_density_g_per_ml,
        cavity_volume_ml,
        diameter_mm,
        length_mm=length_mm,
        hook_mass_g=hook_mass_g,
        hook_volume_ml=hook_volume_ml,
        feed=feed,
        most_solids=most_solids,
        water_temperature_celsius=water_temperature_celsius,
        salinity_practical=salinity_practical,
    )
    figure, (above, below) = plt.subplots(2, 1, sharex=True, figsize=(6.4, 5.2), layout="constrained")
    percent = 100 * of_base
    for axes, (estimate, low, high), color in ((above, weight, _WEIGHT), (below, sink, _SINK)):
        axes.fill_between(percent, low, high, color=color, alpha=0.18, linewidth=0)
        axes.plot(percent, estimate, color=color, linewidth=2)
        axes.grid(visible=True, color="#d9dee1", linewidth=0.8)
        axes.spines[["top", "right"]].set_visible(False)
        axes.margins(x=0)
    above.set_ylabel("weight of a piece, g")
    below.set_ylabel("sink rate, cm/s")
    below.set_ylim(bottom=0)
    below.set_xlabel("salt, % of base by mass")
    above.set_title("What salt does to a piece", loc="left", fontsize="medium")
    above.set_title("line: estimate; band: its bounds", loc="right", fontsize="small", color="#5a656c")
    if np.isnan(sink[0]).any():
        floats = percent[np.isnan(sink[0])]
        below.axvspan(floats.min(), floats.max(), color="#d9dee1", alpha=0.5, linewidth=0)
        below.annotate("floats", (floats.mean(), 0.5), xycoords=("data", "axes fraction"), ha="center", va="center")
    return figure


def salt_rows(
    base_density_g_per_ml: float,
    salt_density_g_per_ml: float,
    cavity_volume_ml: float,
    diameter_mm: float,
    *,
    feed: float | None,
    most_solids: float | None,
    hook_mass_g: float | None,
    hook_volume_ml: float | None,
    **of_sinking: Any,
) -> tuple[Floats, tuple[Floats, ...], tuple[Floats, ...]]:
    """The numbers of :func:`salt`: the salt per base, and of weight and of sink rate estimate, minimum and maximum."""
    base = (100.0, base_density_g_per_ml, salt_density_g_per_ml)
    most = salt_reach(*base, "of-base", most_solids=most_solids).loading_max
    of_base = np.linspace(0.0, most, 201)[:-1]
    weight = columns.salt_convert(
        *base,
        "of-base",
        of_base,
        "piece-mass",
        most_solids=most_solids,
        cavity_volume_ml=cavity_volume_ml,
        feed=feed,
    )
    density = columns.salt_convert(*base, "of-base", of_base, "finished-density", most_solids=most_solids)
    hooked = {"hook_mass_g": hook_mass_g, "hook_volume_ml": hook_volume_ml, **of_sinking}
    sink = columns.sink_rate(density.loading, cavity_volume_ml, diameter_mm, **hooked)
    for row in np.flatnonzero(np.isnan(sink.sink_rate_cm_per_s))[:1].tolist():
        # A piece may float; anything else is raised.
        try:
            sink_rate(float(density.loading[row]), cavity_volume_ml, diameter_mm, **hooked)
        except PourwrightError as error:
            if error.code != "sink-floats":
                raise
    return (
        of_base,
        (weight.loading, weight.loading_min, weight.loading_max),
        (sink.sink_rate_cm_per_s, sink.sink_rate_min_cm_per_s, sink.sink_rate_max_cm_per_s),
    )


def day(plan: pourwright.Plan | Mapping[str, Any]) -> Figure:
    """Draws the time line of a day: when each pot is prepared, heated and shot.

    Raises:
        ValueError: The plan has no time line: its book states no oven.
    """
    clock = plan["clock"]
    if not clock or "known" not in clock:
        raise wrong_type("plan", "The plan has no time line: its book states no oven, or not enough of it.")
    spans = clock["known"]["spans"]
    pots = [pot["pot"] for pot in plan["pots"]]
    places = {pot: place for place, pot in enumerate(pots)}
    names = [f"{pot['pot']}  {pot['id']}" for pot in plan["pots"]]
    figure, axes = plt.subplots(figsize=(8.0, 1.2 + 0.42 * len(pots)), layout="constrained")
    used: dict[str, Any] = {}
    for span in spans:
        doing = span["doing"]
        for pot in span["pots"]:
            bar = axes.barh(
                places[pot],
                span["lasts"]["value"] / 60,
                left=span["begins"]["value"] / 60,
                height=0.62,
                color=_COLORS.get(doing, "#6b7780"),
                edgecolor="white",
                linewidth=0.8,
            )
            used.setdefault(doing, bar)
    axes.set_yticks(range(len(pots)), names)
    axes.invert_yaxis()
    axes.set_xlabel("minutes from the beginning of the day")
    axes.set_xlim(left=0)
    axes.grid(visible=True, axis="x", color="#d9dee1", linewidth=0.8)
    axes.set_axisbelow(True)
    axes.spines[["top", "right", "left"]].set_visible(False)
    axes.tick_params(axis="y", length=0)
    shop = " · ".join(text for text in (plan["shop"], plan["day"]) if text)
    axes.set_title(f"{shop}: {clock['known']['total']['text']}", loc="left", fontsize="medium")
    shown = sorted(used, key=[*_COLORS, *used].index)
    figure.legend([used[doing] for doing in shown], shown, loc="outside lower left", ncols=len(shown), frameon=False)
    return figure
