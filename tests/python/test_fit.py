"""Own measurements against other libraries: least squares of numpy, distributions of scipy, and
statsmodels where it is installed. lathe1: S. Weisberg, Applied Linear Regression, 4th ed., package
alr4 of R."""

from __future__ import annotations

import pickle
import warnings

import numpy as np
import pytest
from conftest import rows
from scipy import stats

import gullet
from gullet import GulletError, GulletWarning, Quantity

SET = np.array([[float(cell) for cell in row.values()] for row in rows("tests/data/lathe1.csv")])
FEED, SPEED, LIFE = SET.T
METRIC = np.column_stack([np.ones(len(SET)), np.log(SPEED * 0.3048), np.log(FEED * 25.4)])


def fit(**more):
    return gullet.fit_extended_taylor(
        cutting_speed=Quantity(SPEED, "ft/min"), feed_per_rev=Quantity(FEED, "in"), tool_life=Quantity(LIFE, "min"), **more)


def ordinary(x, y, confidence=0.95):
    """Coefficients, standard errors, limits, s, R2, by the normal equations of another library."""
    b, left, rank, _ = np.linalg.lstsq(x, y, rcond=None)
    degrees = len(y) - rank
    s = np.sqrt(left[0] / degrees)
    errors = s * np.sqrt(np.diag(np.linalg.inv(x.T @ x)))
    t = stats.t.ppf(0.5 + confidence / 2, degrees)
    p = 2 * stats.t.sf(np.abs(b / errors), degrees)
    return b, errors, b - t * errors, b + t * errors, p, s, 1 - left[0] / np.sum((y - y.mean()) ** 2), t


@pytest.mark.parametrize("confidence", [0.5, 0.9, 0.95, 0.99, 0.999])
def test_lathe1_is_that_of_numpy_and_scipy(confidence):
    own = fit(confidence=confidence)
    b, errors, low, high, p, s, r_squared, t = ordinary(METRIC, np.log(LIFE), confidence)
    found = np.array([row[1:] for row in own.coefficients])
    np.testing.assert_allclose(found[:, 0], b, rtol=1e-10)
    np.testing.assert_allclose(found[:, 1], errors, rtol=1e-10)
    np.testing.assert_allclose(found[:, 2], low, rtol=1e-9)
    np.testing.assert_allclose(found[:, 3], high, rtol=1e-9)
    np.testing.assert_allclose(found[:, 4], p, rtol=1e-3, atol=1e-14)
    assert own.values["residual_deviation"] == pytest.approx(s, rel=1e-11)
    assert own.values["r_squared"] == pytest.approx(r_squared, rel=1e-12)
    assert own.values["student_t"] == pytest.approx(t, rel=1e-10)
    np.testing.assert_allclose(own.residuals, np.log(LIFE) - METRIC @ b, atol=1e-11)


def test_lathe1_prints_what_is_kept_with_the_set():
    own = fit(reference_feed="1 in")
    assert round(own.law.taylor_exponent, 4) == 0.2202
    assert [round(end, 3) for end in own.values["taylor_exponent_limits"]] == [0.197, 0.249]
    assert round(own.law.feed_exponent, 4) == 0.3514
    assert round(own.law.taylor_speed.to("ft/min"), 1) == 262.1
    assert round(fit(reference_feed="1 mm").law.taylor_speed.to("m/min"), 1) == 248.9


def test_limits_of_c_and_a_by_their_derivatives():
    """The same by numerical derivatives of C and a over the coefficients and their covariance."""
    own = fit(reference_feed="1 mm")
    b, _, _, _, _, s, _, t = ordinary(METRIC, np.log(LIFE))
    covariance = s**2 * np.linalg.inv(METRIC.T @ METRIC)
    for name, of in [("taylor_speed", lambda b: -b[0] / b[1]), ("feed_exponent", lambda b: b[2] / b[1])]:
        steps = [1e-6 * max(abs(value), 1) for value in b]
        gradient = np.array([(of(b + step * unit) - of(b - step * unit)) / (2 * step) for step, unit in zip(steps, np.eye(3))])
        wide = t * np.sqrt(gradient @ covariance @ gradient)
        low, high = own.values[f"{name}_limits"]
        if name == "taylor_speed":
            low, high = (np.log(end.to("m/min")) for end in (low, high))
        assert (high - low) / 2 == pytest.approx(wide, rel=1e-6)


def test_limits_for_one_edge_are_those_of_a_prediction():
    own = fit()
    life = own.predict(cutting_speed="700 ft/min", feed_per_rev="0.010 in")
    b, _, _, _, _, s, _, t = ordinary(METRIC, np.log(LIFE))
    at = np.array([1, np.log(700 * 0.3048), np.log(0.254)])
    wide = t * s * np.sqrt(1 + at @ np.linalg.inv(METRIC.T @ METRIC) @ at)
    assert np.log(life["median"].to("min")) == pytest.approx(at @ b, rel=1e-10)
    assert np.log(life["high"].to("min")) == pytest.approx(at @ b + wide, rel=1e-10)
    assert np.log(life["low"].to("min")) == pytest.approx(at @ b - wide, rel=1e-9)
    assert life["mean"].si / life["median"].si == pytest.approx(np.exp(s**2 / 2), rel=1e-10)


def test_statsmodels_agrees():
    models = pytest.importorskip("statsmodels.api")
    result = models.OLS(np.log(LIFE), METRIC).fit()
    own = np.array([row[1:] for row in fit().coefficients])
    np.testing.assert_allclose(own[:, 0], result.params, rtol=1e-10)
    np.testing.assert_allclose(own[:, 1], result.bse, rtol=1e-10)
    np.testing.assert_allclose(own[:, 2:4], result.conf_int(0.05), rtol=1e-9)


@pytest.mark.parametrize("readings", [6, 7, 12, 31, 400])
def test_plain_taylor_for_every_number_of_readings(readings):
    random = np.random.default_rng(readings)
    speed = np.resize([80.0, 110.0, 140.0, 190.0], readings)
    life = (300 / speed) ** (1 / 0.26) * np.exp(random.uniform(-0.25, 0.25, readings))
    own = gullet.fit_taylor(cutting_speed=Quantity(speed, "m/min"), tool_life=Quantity(life, "min"))
    line = stats.linregress(np.log(speed), np.log(life))
    assert own.law.taylor_exponent == pytest.approx(-1 / line.slope, rel=1e-10)
    assert own.values["correlation"] == pytest.approx(line.rvalue, rel=1e-11)
    assert own.values["student_t"] == pytest.approx(stats.t.ppf(0.975, readings - 2), rel=1e-10)
    assert own.law.taylor_speed.to("m/min") == pytest.approx(np.exp(-line.intercept / line.slope), rel=1e-9)


def test_kienzle_is_that_of_numpy():
    random = np.random.default_rng(5)
    chip = np.resize([0.05, 0.08, 0.12, 0.2, 0.35], 14)
    force = 1650 * chip**0.76 * np.exp(random.normal(0, 0.02, 14))
    own = gullet.fit_kienzle(chip_thickness=Quantity(chip, "mm"), force_per_width=Quantity(force, "N/mm"), source="dynamometer")
    x = np.column_stack([np.ones(14), np.log(chip)])
    b, errors, low, high, _, s, _, t = ordinary(x, np.log(force))
    kc11, exponent = own.pair
    assert kc11.to("N/mm2") == pytest.approx(np.exp(b[0]), rel=1e-10)
    assert exponent == pytest.approx(1 - b[1], rel=1e-10)
    limits = own.values["kc11_limits"]
    assert [end.to("N/mm2") for end in limits] == pytest.approx([np.exp(low[0]), np.exp(high[0])], rel=1e-9)
    covariance = np.linalg.inv(x.T @ x)
    assert own.values["pair_correlation"] == pytest.approx(-covariance[0, 1] / np.sqrt(covariance[0, 0] * covariance[1, 1]), rel=1e-9)
    mean = np.exp(np.log(chip).mean())
    assert own.values["specific_force_at_mean"].to("N/mm2") == pytest.approx(kc11.to("N/mm2") * mean**-exponent, rel=1e-10)


def test_a_pair_goes_into_the_tables_and_a_cut():
    chip, force = [0.05, 0.05, 0.1, 0.2, 0.3, 0.3], [106, 107.5, 179, 299, 405, 408]
    own = gullet.fit_kienzle(chip_thickness=Quantity(chip, "mm"), force_per_width=Quantity(force, "N/mm"), source="dynamometer, lot 7")
    library = gullet.Library([own.overlay(material="AISI 1018")])
    material = gullet.Material("AISI 1018", library=library)
    assert material.kc11.si == pytest.approx(own.pair[0].si, rel=1e-12)
    assert material.force_source == "dynamometer, lot 7"
    assert material.classes == gullet.Material("AISI 1018").classes


def test_a_life_goes_into_the_tables():
    overlay = fit(source="lathe1").overlay(material="AISI 1018", tool_material="carbide", id="lathe1")
    table = gullet.Library([overlay]).table("tool_life")
    assert len(table) == len(gullet.Library().table("tool_life")) + 1


def test_refusals_tell_every_problem():
    with pytest.raises(GulletError) as caught:
        gullet.fit_taylor(cutting_speed=[1, 2], tool_life="x")
    assert {problem.parameter.split("[")[0] for problem in caught.value.problems} == {"cutting_speed", "tool_life"}
    with pytest.raises(GulletError) as caught:
        gullet.fit_taylor(cutting_speed=Quantity([100.0, 150.0], "m/min"), tool_life=Quantity([60.0, 12.0], "min"))
    assert [problem.parameter for problem in caught.value.problems] == ["readings", "cutting_speed"]
    with pytest.raises(GulletError) as caught:
        gullet.ToolLife(taylor_speed="400 m/min", taylor_exponent=4)
    assert caught.value.parameter == "taylor_exponent" and caught.value.code == "out_of_range"
    with pytest.raises(GulletError) as caught:
        gullet.ToolLife(taylor_speed="400 m/min", taylor_exponent=0.25, tested_speeds=["3 m/min", "2 m/min"])
    assert caught.value.parameter == "tested_speeds"


def test_a_law_warns_beyond_its_tests_and_survives_pickling():
    law = gullet.ToolLife(
        taylor_speed="300 ft/min", taylor_exponent=0.25, feed_exponent=0.35, reference_feed="0.01 in",
        tested_speeds=["60 ft/min", "150 ft/min"], tested_feeds=["0.005 in", "0.02 in"], criterion="VB 0.3 mm", source="own")
    with pytest.warns(GulletWarning, match="200 ft/min lies outside"):
        law.life(cutting_speed="200 ft/min", feed_per_rev="0.01 in")
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        life = law.life(cutting_speed="100 ft/min", feed_per_rev="0.01 in")
    assert life.to("min") == pytest.approx(81, rel=1e-12)
    assert law.parts(cutting_speed="100 ft/min", feed_per_rev="0.01 in", cutting_time="10 min") == 8
    assert law.for_criterion("VB 0.6 mm").life(cutting_speed="100 ft/min", feed_per_rev="0.01 in").to("min") == pytest.approx(162)
    again = pickle.loads(pickle.dumps(law))
    assert again == law and "0x" not in repr(law)
    with pytest.raises(GulletError, match="feed_per_rev"):
        law.life(cutting_speed="100 ft/min")
