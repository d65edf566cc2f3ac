"""Formulas that studies add up with, in numpy."""

CASES = {
    "cutting_energy": ({"power": (50, 2e4), "cutting_time": (1, 5e3)}, lambda v: v.power * v.cutting_time),
}
