"""Formulas against renderings in numpy and scipy of their own; see renderings.py."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest
from renderings import BOUNDS, CASES, RANGES

import gullet
from gullet import Quantity

SI = {kind: next((unit for unit in ("m", "s", "m/s", "rps", "rad", "N", "N/m", "Pa", "W", "N.m", "m3/s", "m2/s",
                                     "m2", "m/s2", "Hz", "kg/m3", "turns") if unit in gullet.units_of(kind)), "")
      for kind in gullet.kinds()}
# Quadratures and searches go row by row.
SLOW = {"facing_time_constant_speed", "facing_time_limited_speed", "arc_mean_cutting_power", "minimum_cost_life",
        "maximum_production_life", "minimum_cost_speed", "maximum_production_speed", "rapid_time", "parting_time",
        "learning_total_time_unit_curve"}


def drawn(name: str, own: dict, count: int) -> dict[str, np.ndarray]:
    random = np.random.default_rng(sum(name.encode()))
    values: dict[str, np.ndarray] = {}
    parameters = [p.name for p in getattr(gullet.formula, name).parameters]
    # What a share is taken of comes first.
    for parameter in sorted(parameters, key=lambda p: callable(own.get(p, RANGES.get(p)))):
        source = own.get(parameter) or RANGES[parameter]
        values[parameter] = source(random, values, count) if callable(source) else random.uniform(*source, count)
    return values


def quantity(kind: str, values: np.ndarray):
    if kind == "money_rate":
        return Quantity(values * 3600, "money/h")
    return Quantity(values, SI[kind], kind=kind) if SI[kind] else values


def test_every_formula_is_rendered():
    assert set(CASES) | BOUNDS == set(gullet.formula.__all__) and len(CASES) > 130


@pytest.mark.parametrize("name", CASES)
def test_against_the_rendering(name):
    own, rendering, *tolerance = CASES[name]
    values = drawn(name, own, 200 if name in SLOW else 20_000)
    formula = getattr(gullet.formula, name)
    given = {p.name: quantity(p.kind, values[p.name]) for p in formula.parameters}
    # An angle near zero amplifies the rounding of 1 - 2 a/D; else there is rounding only.
    rtol, atol = (tolerance or [1e-11])[0], 0.0
    expected = rendering(SimpleNamespace(**values))
    if name in ("mean_feed_force", "mean_normal_force"):
        # Differences of large terms.
        atol = 1e-12 * np.abs(expected).max()
    np.testing.assert_allclose(formula(**given).si, expected, rtol=rtol, atol=atol)


def test_the_bound_on_teeth_in_cut_holds():
    """Sum over the teeth in an arc of (sin/largest sine)^(1 - m), in any position."""
    random = np.random.default_rng(5)
    for _ in range(300):
        teeth, arc, m = random.integers(1, 9), random.uniform(0.2, np.pi), random.uniform(0, 0.5)
        start = random.uniform(0, np.pi - arc)
        inside = np.linspace(start, start + arc, 400)
        largest = np.sin(inside).max()
        first = start + np.linspace(0, 2 * np.pi / teeth, 300)
        places = first[:, None] + np.arange(teeth) * 2 * np.pi / teeth
        cutting = places <= start + arc
        sums = np.where(cutting, (np.abs(np.sin(places)) / largest) ** (1 - m), 0).sum(axis=1)
        bound = gullet.formula.tooth_sum_factor(
            teeth=float(teeth), engagement_angle=Quantity(arc, "rad"), largest_sine=largest, chip_exponent=m
        ).si
        assert sums.max() <= bound * (1 + 1e-3), (teeth, arc, m, start)


def test_helical_edges_only_relieve():
    random = np.random.default_rng(6)
    for _ in range(200):
        relief = gullet.formula.helix_relief_factor(
            teeth=float(random.integers(1, 9)), engagement_angle=Quantity(random.uniform(0.2, np.pi), "rad"),
            chip_ratio=random.uniform(0.3, 1), chip_exponent=random.uniform(0, 0.5),
            tooth_sum_factor=random.uniform(1, 3), axial_depth=Quantity(random.uniform(1, 30), "mm"),
            diameter=Quantity(random.uniform(3, 30), "mm"), helix_angle=Quantity(random.uniform(0, 60), "deg"),
        ).si
        assert 0 < relief <= 1
