"""Cost, time of lots, learning and moves, written a second time; see renderings.py."""

from __future__ import annotations

import numpy as np
from renderings import optimize, per_row, share, whole

RANGES = {
    "in_cut_share": (0.05, 1), "first_unit_time": (60, 9000), "learning_rate": (0.5, 1), "units": whole(1, 400),
    "parts_per_edge": (0.3, 40), "setup_time": (600, 9000), "lot_size": whole(1, 300), "moving_time": (0, 60),
    "change_share": (0, 60), "gauging_share": (0, 60), "setup_share": (0, 600), "allowance_time": (0, 90),
    "rapid_speed": (0.05, 1), "acceleration": (0.2, 10),
}


def cheapest_life(exponent, change_time, edge_cost, machine_rate, share_in_cut):
    """Life of least cost: a part takes a time in cut that grows with the life to the exponent."""

    def cost(logarithm):
        life = np.exp(logarithm)
        cut = life**exponent
        changes = share_in_cut * cut / life
        return machine_rate * (cut + change_time * changes) + edge_cost * changes

    found = optimize.minimize_scalar(cost, bounds=(-6, 18), method="bounded", options={"xatol": 1e-11})
    return np.exp(found.x)


@per_row
def cost_life(taylor_exponent, change_time, edge_cost, machine_rate, in_cut_share):
    return cheapest_life(taylor_exponent, change_time, edge_cost, machine_rate, in_cut_share)


@per_row
def production_life(taylor_exponent, change_time, in_cut_share):
    return cheapest_life(taylor_exponent, change_time, 0.0, 1.0, in_cut_share)


@per_row
def cost_speed(taylor_speed, taylor_exponent, change_time, edge_cost, machine_rate, in_cut_share):
    life = cheapest_life(taylor_exponent, change_time, edge_cost, machine_rate, in_cut_share)
    return taylor_speed * (life / 60) ** -taylor_exponent


@per_row
def production_speed(taylor_speed, taylor_exponent, change_time, in_cut_share):
    return taylor_speed * (cheapest_life(taylor_exponent, change_time, 0.0, 1.0, in_cut_share) / 60) ** -taylor_exponent


@per_row
def unit_curve(first_unit_time, learning_rate, units):
    """Every unit by itself: each doubling of the count takes the rate once."""
    return float(np.sum(first_unit_time * learning_rate ** np.log2(np.arange(1, int(units) + 1))))


def edges(v):
    """Edges a part uses up."""
    return v.cutting_time * v.in_cut_share / v.tool_life


def whole_parts(v):
    return v.tool_life // (v.cutting_time * v.in_cut_share)


WHOLE = {"cutting_time": share("tool_life", 0.05, 0.9)}

CASES = {
    # A search finds an optimum to the root of the rounding.
    "minimum_cost_life": ({}, cost_life, 1e-5),
    "maximum_production_life": ({}, production_life, 1e-5),
    "minimum_cost_speed": ({}, cost_speed, 1e-5),
    "maximum_production_speed": ({}, production_speed, 1e-5),
    "unit_cost": (
        {}, lambda v: v.machine_rate * (v.handling_time + v.cutting_time + edges(v) * v.change_time) + edges(v) * v.edge_cost),
    "unit_cost_whole_parts": (
        WHOLE,
        lambda v: v.machine_rate * (v.handling_time + v.cutting_time)
        + (v.machine_rate * v.change_time + v.edge_cost) / whole_parts(v)),
    "unit_time": ({}, lambda v: v.handling_time + v.cutting_time + edges(v) * v.change_time),
    "unit_time_whole_parts": (WHOLE, lambda v: v.handling_time + v.cutting_time + v.change_time / whole_parts(v)),
    "mean_parts_per_edge": ({}, lambda v: 1 / edges(v)),
    "whole_parts_per_edge": (WHOLE, whole_parts),
    "insert_edge_cost": ({"insert_price": (2, 40), "edges": whole(1, 16)}, lambda v: v.insert_price * (1 / v.edges)),
    "reground_edge_cost": (
        {"tool_price": (5, 200), "regrinds": whole(0, 20), "regrind_cost": (0, 10)},
        lambda v: (v.tool_price + (1 + v.regrinds) * v.regrind_cost) / (1 + v.regrinds)),
    "lot_time": ({"cycle_time": (10, 600)}, lambda v: v.setup_time + v.cycle_time * v.lot_size),
    "tool_change_time_per_part": ({}, lambda v: v.change_time * edges(v)),
    "learning_unit_time": ({"unit": whole(1, 500)}, lambda v: v.first_unit_time * v.learning_rate ** np.log2(v.unit)),
    "learning_average_time": ({}, lambda v: v.first_unit_time * v.learning_rate ** np.log2(v.units)),
    "learning_total_time_cumulative_average": (
        {}, lambda v: v.units * v.first_unit_time * v.learning_rate ** np.log2(v.units)),
    "learning_total_time_unit_curve": ({}, unit_curve),
    "mean_unit_time": ({"total_time": (600, 90000)}, lambda v: v.total_time * (1 / v.units)),
    "setup_time_per_part": ({}, lambda v: v.setup_time * (1 / v.lot_size)),
    "gauging_time_per_part": (
        {"gauging_time": (5, 200), "gauged_every": whole(1, 50)}, lambda v: v.gauging_time * (1 / v.gauged_every)),
    "change_time_per_part": ({}, lambda v: v.change_time * (1 / v.parts_per_edge)),
    "edge_cost_per_part": ({}, lambda v: v.edge_cost * (1 / v.parts_per_edge)),
    "normal_time_per_part": (
        {}, lambda v: np.sum([v.gauging_share, v.change_share, v.moving_time, v.cutting_time, v.handling_time], axis=0)),
    "standard_time_by_share_of_standard": (
        {"normal_time": (10, 900), "allowance": (0, 0.4)},
        # Of the standard time the allowance is a share, so the normal time is the rest.
        lambda v: v.normal_time * (1 + v.allowance / (1 - v.allowance))),
    "allowance_time": (
        {"normal_time": share("standard_time", 0.5, 0.99), "standard_time": (10, 900)},
        lambda v: v.standard_time - v.normal_time),
    "lot_time_per_part": (
        {},
        lambda v: np.sum([v.allowance_time, v.gauging_share, v.change_share, v.moving_time, v.cutting_time,
                          v.handling_time, v.setup_share], axis=0)),
    "time_cost": ({"time": (10, 9000)}, lambda v: v.time / (1 / v.machine_rate)),
    "lot_cost_per_part": (
        {f"{name}_cost": (0, 30) for name in ("setup", "handling", "cutting", "moving", "change", "gauging", "allowance", "material")}
        | {"edge_share": (0, 5)},
        lambda v: np.sum(list(vars(v).values()), axis=0)),
    "lot_cost": ({"cost_per_part": (1, 90)}, lambda v: v.cost_per_part / (1 / v.lot_size)),
    "path_length": (
        {"travel_x": (-1, 1), "travel_y": (-1, 1), "travel_z": (-0.5, 0.5)},
        lambda v: np.linalg.norm([v.travel_x, v.travel_y, v.travel_z], axis=0)),
    "simultaneous_move_time": (
        {"time_x": (0, 5), "time_y": (0, 5), "time_z": (0, 5)}, lambda v: np.max([v.time_z, v.time_x, v.time_y], axis=0)),
    "move_peak_speed": (
        {"distance": (1e-3, 1), "set_speed": (0.05, 1)},
        # Half the way to gain speed: v^2 = 2 a (s/2).
        lambda v: np.minimum(np.sqrt(2 * v.acceleration * v.distance / 2), v.set_speed)),
    "hand_cranked_time": ({"pace": (0.3, 3)}, lambda v: v.travel / v.travel_per_turn / v.pace),
}
