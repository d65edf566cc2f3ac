"""The economic speed against scipy's optimiser on the whole cost function; lots; moves."""

from __future__ import annotations

import inspect
import json
import math
import pickle

import numpy as np
import pytest
from scipy import optimize

import gullet
from gullet import GulletError, Quantity
from gullet._gullet import economics_parameters

UNITS = {"machine_rate": "money/s", "change_time": "s", "handling_time": "s", "taylor_speed": "m/s",
         "diameter": "m", "travel": "m", "feed_per_rev": "m"}
RANGES = {"machine_rate": (0.002, 0.05), "edge_cost": (0.1, 20), "change_time": (10, 600), "handling_time": (0, 600),
          "in_cut_share": (0.1, 1), "taylor_speed": (0.5, 10), "taylor_exponent": (0.08, 0.7), "diameter": (5e-3, 0.2),
          "travel": (0.01, 1), "feed_per_rev": (5e-5, 1e-3)}


def drawn(random):
    return {name: float(random.uniform(*ends)) for name, ends in RANGES.items()}


def given(v):
    def one(name, value):
        if name == "machine_rate":
            return Quantity(value * 3600, "money/h")
        return Quantity(value, UNITS[name]) if name in UNITS else value

    return {name: one(name, value) for name, value in v.items()}


def part(v, speed):
    """Time and cost of a part at a cutting speed: the whole function, with nothing left out."""
    cut = math.pi * v["diameter"] * v["travel"] / (v["feed_per_rev"] * speed)
    life = 60 * (v["taylor_speed"] / speed) ** (1 / v["taylor_exponent"])
    edges = v["in_cut_share"] * cut / life
    time = v["handling_time"] + cut + edges * v["change_time"]
    return time, v["machine_rate"] * time + edges * v["edge_cost"]


def slope(v, speed, money):
    """Derivative of time or cost over the logarithm of the speed, from the function's two powers."""
    cut = math.pi * v["diameter"] * v["travel"] / (v["feed_per_rev"] * speed)
    life = 60 * (v["taylor_speed"] / speed) ** (1 / v["taylor_exponent"])
    change = v["machine_rate"] * v["change_time"] + v["edge_cost"] if money else v["change_time"]
    rate = v["machine_rate"] if money else 1.0
    return -rate * cut + (1 / v["taylor_exponent"] - 1) * change * v["in_cut_share"] * cut / life


def test_against_scipy_on_1000_cases():
    random = np.random.default_rng(20)
    for _ in range(1000):
        v = drawn(random)
        found = gullet.economics(**given(v))
        for best, money in ((found.least_cost, 1), (found.least_time, 0)):
            speed = best.cutting_speed.si
            value = (best.cost_per_part if money else best.time_per_part).si
            search = optimize.minimize_scalar(
                lambda x, money=money, v=v: part(v, math.exp(x))[money],
                bounds=(math.log(speed) - 3, math.log(speed) + 3), method="bounded", options={"xatol": 1e-12, "maxiter": 500})
            assert search.success
            # What the optimiser finds is no cheaper, and the same to 1e-9.
            np.testing.assert_allclose(value, search.fun, rtol=1e-9)
            # The function is flat there: the speed itself from the root of the slope.
            root = optimize.brentq(
                lambda x, money=money, v=v: slope(v, math.exp(x), money),
                math.log(speed) - 3, math.log(speed) + 3, xtol=1e-14, rtol=1e-14)
            np.testing.assert_allclose(speed, np.exp(root), rtol=1e-9)


def test_steps_against_trying_all():
    random = np.random.default_rng(21)
    for _ in range(300):
        v = drawn(random)
        wanted = gullet.economics(**given(v)).least_cost.spindle_speed.si
        steps = np.unique(wanted * np.exp(random.uniform(-1.5, 1.5, random.integers(1, 12))))
        found = gullet.economics(**given(v), speeds=[Quantity(n, "rev/s") for n in steps])
        for spindle, money in ((found.spindle_least_cost, 1), (found.spindle_least_time, 0)):
            values = [part(v, math.pi * v["diameter"] * n)[money] for n in steps]
            chosen = spindle.chosen
            assert chosen.spindle_speed.si == steps[int(np.argmin(values))]
            value = (chosen.cost_per_part if money else chosen.time_per_part).si
            np.testing.assert_allclose(value, min(values), rtol=1e-12)
            best = part(v, spindle.wanted.cutting_speed.si)[money]
            extra = (spindle.extra_cost if money else spindle.extra_time).si
            np.testing.assert_allclose(extra, min(values) - best, rtol=1e-6, atol=1e-12 * best)


def test_records_text_and_json():
    v = given(drawn(np.random.default_rng(22)))
    found = gullet.economics(**v, machine="manual-knee-mill")
    assert str(found) == found.text and found.text.startswith("ECONOMIC SPEED\n")
    told = json.loads(found.json)
    assert told["least_cost"]["cost_per_part"]["si"] == found.least_cost.cost_per_part.si
    assert told["spindle_least_cost"]["chosen"]["spindle_speed"]["si"] == found.spindle_least_cost.chosen.spindle_speed.si
    step = found.least_cost.steps[0]
    assert step.formula.name == "minimum_cost_speed" and step.result == found.least_cost.cutting_speed
    assert pickle.loads(pickle.dumps(found)) == found
    alone = gullet.economics(**v)
    assert alone.spindle_least_cost is None and alone.least_cost == found.least_cost
    assert gullet.economics(**{**v, "change_time": "0 s"}).least_time is None


def test_keywords_are_those_of_the_core():
    for function, rows in zip((gullet.economics, gullet.lot_cost), economics_parameters(), strict=True):
        parameters = inspect.signature(function).parameters
        names = [name for name in parameters if name not in ("machine", "speeds")]
        assert sorted(names) == sorted(row[0] for row in rows)
        assert all(p.kind is inspect.Parameter.KEYWORD_ONLY for p in parameters.values())
        needed = {row[0] for row in rows if row[5] is None}
        assert {name for name in names if parameters[name].default is inspect.Parameter.empty} == needed


def told(**arguments):
    with pytest.raises(GulletError) as caught:
        gullet.lot_cost(**arguments)
    return [(problem.code, problem.parameter) for problem in caught.value.problems]


LOT = {"lot_size": 10, "machine_rate": "60 money/h", "cutting_time": "4 min"}


def test_problems_of_a_lot_are_told_at_once():
    assert told(**{**LOT, "lot_size": 2.5, "setup_time": "-1 min"}) == [
        ("not_whole", "lot_size"), ("out_of_range", "setup_time")]
    assert told(**{**LOT, "cutting_time": 4, "setup_time": "1 mm"}) == [
        ("unit_missing", "cutting_time"), ("unit_unknown", "setup_time")]
    assert told(**LOT, allowance_of_normal_time=0.1, allowance_of_standard_time=0.1) == [
        ("inconsistent", "allowance_of_standard_time")]
    assert told(**LOT, wright_rate=0.9, crawford_rate=0.9) == [("inconsistent", "crawford_rate")]
    assert told(**{**LOT, "setup_time": Quantity([1.0, 2.0], "min")}) == [("wrong_type", "setup_time")]


def test_shares_add_up_and_lots_fall():
    costs = []
    for size in (1, 10, 100):
        price = gullet.lot_cost(
            lot_size=size, machine_rate="48 money/h", setup_time="1 h", handling_time="1.5 min", cutting_time="6 min",
            change_time="2 min", edge_cost=3, parts_per_edge=8, allowance_of_standard_time="15 %", crawford_rate="90 %",
            material_cost=2.2)
        time = cost = 0.0
        for share in price.shares:
            time, cost = time + share.time.si, cost + share.cost.si
        assert (time, cost) == (price.time_per_part.si, price.cost_per_part.si)
        assert "standard time" in price.allowance and "Crawford" in price.learning
        costs.append(price.cost_per_part.si)
    assert costs[0] > costs[1] > costs[2] > 2.2


def test_moves():
    together = gullet.formula.simultaneous_move_time(
        time_x=gullet.formula.rapid_time(distance="500 mm", rapid_speed="30 m/min", acceleration="2.5 m/s2"),
        time_y=gullet.formula.rapid_time(distance="50 mm", rapid_speed="30 m/min", acceleration="2.5 m/s2"))
    assert together.to("s") == pytest.approx(1.2)
    turned = gullet.formula.hand_cranked_time(travel="4 in", travel_per_turn="0.2 in", pace="60 rpm")
    assert turned.to("s") == pytest.approx(20)
