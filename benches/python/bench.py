"""The Python door next to what a program would do without it, in turns: NumPy for columns, Pint for single numbers.

Processor time is taken, and of each the shortest of all rounds, since what disturbs a measurement only ever makes it
longer. All of it runs in one thread. Before it is timed, each peer has to agree with the library.
"""

import math
import time

import numpy as np
import pint

import pourwright as pw
from pourwright import columns

ROWS = 1_000_000
ROUNDS = 40
PARTS = 8


def turns(*works):
    """The shortest time of each, in seconds a call."""
    times, counts = [math.inf] * len(works), []
    for work in works:
        count = 1
        while timed(work, count) < 0.005:
            count *= 2
        counts.append(count)
    for _ in range(ROUNDS):
        for index, (work, count) in enumerate(zip(works, counts)):
            times[index] = min(times[index], timed(work, count) / count)
    return times


def timed(work, count):
    start = time.process_time()
    for _ in range(count):
        work()
    return time.process_time() - start


def agree(name, ours, theirs):
    if not np.allclose(ours, theirs, rtol=1e-9, atol=1e-9, equal_nan=True):
        raise SystemExit(f"{name}: the peer does not agree.")


def checked(good, result):
    """What a NumPy program adds to know bad rows."""
    return np.where(good, result, np.nan)


random = np.random.default_rng(20270302)
base_ml, cup = random.uniform(10, 1000, ROWS), pw.convert_number(1, "cup", "mL")
base, salt = random.uniform(1.0, 1.1, ROWS), np.full(ROWS, 2.165)
voids = random.uniform(0, 0.05, ROWS)
wanted = (base + random.uniform(0.01, 0.2, ROWS)) * (1 - voids)
cavity, feed = random.uniform(1, 20, ROWS), random.uniform(0, 1, ROWS)
hot = base * 0.92
masses, densities = random.uniform(0, 100, (ROWS, PARTS)), random.uniform(0.9, 2.2, (ROWS, PARTS))
# A few rows that cannot be, as in any real table: one in a thousand.
base_ml[::1000] = -1.0
cavity[::1000] = np.nan
out = np.empty(ROWS)
to_ml = pw.Conversion("cup", "mL")


def numpy_convert():
    return base_ml * cup


def numpy_convert_checked():
    return checked(base_ml >= 0, base_ml * cup)


def numpy_mass():
    return base_ml * base


def numpy_mass_checked():
    good = (base_ml >= 0) & (base > 0) & np.isfinite(base)
    return checked(good, base_ml * base)


def numpy_piece():
    return cavity * (1 - voids) * (hot + feed * (base - hot))


def numpy_piece_checked():
    good = (cavity > 0) & (hot > 0) & (base >= hot) & (voids >= 0) & (voids < 1) & (feed >= 0) & (feed <= 1)
    return checked(good, numpy_piece())


def numpy_salt():
    solid = wanted / (1 - voids)
    return (solid - base) * base_ml / (1 - solid / salt)


def numpy_salt_checked():
    good = (base_ml > 0) & (base > 0) & (voids >= 0) & (voids < 1)
    with np.errstate(all="ignore"):
        grams = numpy_salt()
        volume = grams / salt
        good &= (grams >= 0) & (volume <= 0.3 * (base_ml + volume))
    return checked(good, grams)


def numpy_parts():
    return masses.sum(axis=1) / (masses / densities).sum(axis=1) * (1 - voids)


def numpy_parts_checked():
    good = (masses >= 0).all(axis=1) & (densities > 0).all(axis=1) & (voids >= 0) & (voids < 1)
    return checked(good, numpy_parts())


COLUMNS = [
    ("convert", lambda: columns.convert(to_ml, base_ml, out=out), numpy_convert, numpy_convert_checked),
    ("mass_of_volume", lambda: columns.mass_of_volume(base_ml, base, out=out), numpy_mass, numpy_mass_checked),
    (
        "piece_mass",
        lambda: columns.piece_mass(
            cavity, base, hot_density_g_per_ml=hot, voids=voids, feed=feed, out={"piece_mass_g": out}
        ).piece_mass_g,
        numpy_piece,
        numpy_piece_checked,
    ),
    (
        "salt_for_density",
        lambda: columns.salt_for_density(base_ml, base, salt, wanted, voids=voids, out=out),
        numpy_salt,
        numpy_salt_checked,
    ),
    (
        f"density_of_parts, {PARTS} parts",
        lambda: columns.density_of_parts(masses, densities, voids, out=out),
        numpy_parts,
        numpy_parts_checked,
    ),
]

PINT = pint.UnitRegistry()
IN_ML, SALT = PINT("mL").units, PINT.Quantity(1.22, "g/mL")

NUMBERS = [
    (
        'convert("1 1/4 cup", "mL")',
        lambda: pw.convert("1 1/4 cup", "mL"),
        lambda: PINT.Quantity("1.25 cup").to("mL").magnitude,
    ),
    (
        'convert_number(1.25, "cup", "mL")',
        lambda: pw.convert_number(1.25, "cup", "mL"),
        lambda: PINT.Quantity(1.25, "cup").to("mL").magnitude,
    ),
    ("a prepared conversion", lambda: to_ml(1.25), lambda: PINT.Quantity(1.25, PINT.cup).to(IN_ML).magnitude),
    (
        "mass_of_volume",
        lambda: pw.mass_of_volume(59.0, 1.22),
        lambda: (PINT.Quantity(59.0, IN_ML) * SALT).to("g").magnitude,
    ),
    (
        'calculate("convert", ...)',
        lambda: pw.calculate("convert", amount="1 1/4 cup", to="mL"),
        lambda: PINT.Quantity("1.25 cup").to("mL").magnitude,
    ),
]

print(f"| a column of {ROWS:,} rows | pourwright | NumPy | NumPy, bad rows NaN |")
print("| --- | ---: | ---: | ---: |")
for name, ours, bare, with_checks in COLUMNS:
    agree(name, ours(), with_checks())
    times = turns(ours, bare, with_checks)
    print(f"| `{name}` | " + " | ".join(f"{1e9 * seconds / ROWS:.1f} ns a row" for seconds in times) + " |", flush=True)

print("\n| a number | pourwright | Pint | |")
print("| --- | ---: | ---: | ---: |")
for name, ours, peer in NUMBERS:
    result = ours()
    agree(name, result["value"] if isinstance(result, dict) else result, peer())
    one, other = turns(ours, peer)
    print(f"| `{name}` | {1e6 * one:.2f} µs | {1e6 * other:.1f} µs | {other / one:.0f} × |", flush=True)
