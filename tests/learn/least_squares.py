"""Writes least_squares.jsonl: estimates by NumPy and SciPy, general-purpose libraries, for the test beside this file.

    python3 -m venv env && env/bin/pip install numpy==2.4.6 scipy==1.17.1
    env/bin/python tests/learn/least_squares.py > tests/learn/least_squares.jsonl

Each case is a series of days with their readings and standard uncertainties, and the value of a book with its own. The
variance between days is a root of Paule and Mandel's equation by scipy.optimize.brentq; the mean, the line and the mean
with the book as one more row come from numpy.linalg.lstsq, their covariances from numpy.linalg.inv; Student's t from
scipy.stats. Sources that readings share are unknowns of a known size: their effect on the mean follows from the weights.
"""

import json

import numpy as np
from scipy import optimize, stats

OUTSIDE_TWO = 2 * stats.norm.sf(2)


def fit(columns, values, deviations):
    """The unknowns and their covariance, of rows divided by their standard deviations."""
    a = np.array(columns, dtype=float) / deviations[:, None]
    unknowns = np.linalg.lstsq(a, values / deviations, rcond=None)[0]
    return unknowns, np.linalg.inv(a.T @ a)


def between(columns, values, own):
    """Paule and Mandel's variance between days."""
    freedom = len(values) - columns.shape[1]

    def excess(variance):
        deviations = np.sqrt(own**2 + variance)
        unknowns, _ = fit(columns, values, deviations)
        return np.sum(((values - columns @ unknowns) / deviations) ** 2) - freedom

    if excess(0.0) <= 0:
        return 0.0
    return optimize.brentq(excess, 0.0, 10 * np.var(values) + 1e-12, xtol=1e-18, rtol=1e-14)


def case(chance, count, slope, scatter):
    numbers = np.sort(chance.choice(np.arange(20000, 20000 + 4 * count), count, replace=False))
    own = 0.03 * chance.uniform(0.5, 2.0, count)
    values = 1 + slope * (numbers - 20000) + own * chance.normal(size=count) + scatter * chance.normal(size=count)
    effects = 0.02 * chance.uniform(0.5, 1.0, count)
    own, values, effects = (np.round(list_of, 6) for list_of in (own, values, effects))
    ones = np.ones((count, 1))
    variance = between(ones, values, own)
    deviations = np.sqrt(own**2 + variance)
    mean, covariance = fit(ones, values, deviations)
    factor = stats.t.isf(OUTSIDE_TWO / 2, count - 1) / 2
    weights = deviations**-2 / np.sum(deviations**-2)
    # Every third reading by one spoon, the others by another.
    shared = sum(np.sum((weights * effects)[which]) ** 2 for which in (np.arange(count) % 3 == 0, np.arange(count) % 3 > 0))
    own_mean = factor * np.sqrt(covariance[0, 0])
    unsure_days = np.hypot(own_mean, np.sqrt(shared))
    book, unsure = round(float(mean[0]) + 0.01, 6), 0.05
    rows = np.vstack([ones, [[1.0]]])
    both, of_both = fit(rows, np.append(values, book), np.append(factor * deviations, unsure))
    share = of_both[0, 0] / own_mean**2
    line = np.column_stack([ones, numbers])
    line_variance = between(line, values, own)
    centered = np.column_stack([ones, numbers - 20000])
    trend, of_trend = fit(centered, values, np.sqrt(own**2 + line_variance))
    significant = abs(trend[1]) > stats.t.isf(0.005, count - 2) * np.sqrt(of_trend[1, 1])
    return {
        "days": numbers.tolist(),
        "values": values.tolist(),
        "own": own.tolist(),
        "effects": effects.tolist(),
        "book": book,
        "unsure": unsure,
        "between": float(np.sqrt(variance)),
        "of_days": float(mean[0]),
        "unsure_days": float(unsure_days),
        "value": float(both[0]),
        "uncertainty": float(np.sqrt(of_both[0, 0] + share**2 * shared)),
        "per_day": float(trend[1]) if significant else None,
        "unsure_per_day": float(np.sqrt(of_trend[1, 1])) if significant else None,
    }


chance = np.random.default_rng(1)
for number in range(40):
    print(json.dumps(case(chance, 5 + number % 16, 0.008 * (number % 3 == 2), 0.04 * (number % 2))))
