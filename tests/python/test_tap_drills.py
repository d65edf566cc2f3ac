"""Drills for a thread, against arithmetic and charts."""

from __future__ import annotations

import math

import gullet
import pytest


def test_the_nearest_drill_comes_first() -> None:
    found = gullet.tap_drills(major_diameter="10 mm", pitch="1.5 mm", sets=["metric"])
    wanted = [abs(near.percent.si - 0.75) for near in found]
    assert wanted == sorted(wanted)
    assert all(0.6 <= near.percent.si <= 0.83 for near in found)
    for near in found:
        height = 1.5e-3 * math.sqrt(3) / 2
        assert near.chart_percent is not None and near.overlap_percent is not None
        assert math.isclose(near.chart_percent.si, (10e-3 - near.diameter.si) / (1.5 * height), rel_tol=1e-7)
        assert math.isclose(near.overlap_percent.si, (10e-3 - near.diameter.si) / (1.25 * height), rel_tol=1e-7)


def test_a_forming_tap_has_its_own_percentage() -> None:
    near = gullet.tap_drills(major_diameter="6 mm", pitch="1 mm", basis="forming")[0]
    assert near.chart_percent is None and near.overlap_percent is None
    assert math.isclose(near.percent.si, (6e-3 - near.diameter.si) / (0.68 * 1e-3), rel_tol=1e-9)


def test_wrong_words_are_told_together() -> None:
    with pytest.raises(gullet.GulletError) as caught:
        gullet.tap_drills(major_diameter="10 rpm", pitch="1.5 mm", basis="charts", sets=["metrik"])
    assert {problem.parameter for problem in caught.value.problems} >= {"major_diameter", "basis", "sets"}
    with pytest.raises(gullet.GulletError, match="smallest_percent"):
        gullet.tap_drills(major_diameter="10 mm", pitch="1.5 mm", smallest_percent="80 %")
