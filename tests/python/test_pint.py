"""Quantities of a units library, by their look alone; its factors are an independent check."""

from __future__ import annotations

import subprocess
import sys

import pint
import pytest

import gullet
from gullet import GulletError, Quantity

UREG = pint.UnitRegistry()

# Our spelling where the library spells otherwise; units it does not know are left out.
NAMES = {
    "thou": "thou",
    "uin": "microinch",
    "in3/min": "in**3/min",
    "lbf.in": "lbf*in",
    "lbf.ft": "lbf*ft",
    "deg": "degree",
    "PS": "metric_horsepower",
    "N/mm2": "N/mm**2",
}


def spelled(symbol: str) -> str:
    text = NAMES.get(symbol, symbol).replace(".", "*")
    out = ""
    for before, c in zip(" " + text, text):
        out += f"**{c}" if c.isdigit() and before.isalpha() else c
    return out


# Ours means a revolution, a technical horsepower or an angle otherwise defined in the library.
SKIPPED = {"rotational_speed", "turns"}


def test_unit_factors():
    compared = 0
    for kind in gullet.kinds():
        if kind in SKIPPED:
            continue
        for symbol in gullet.units_of(kind):
            if not symbol or symbol == "%":
                continue
            try:
                unit = UREG.Unit(spelled(symbol))
                theirs = UREG.Quantity(1.0, unit).to_base_units()
            except (pint.errors.UndefinedUnitError, pint.errors.DefinitionSyntaxError, ValueError):
                continue
            ours = Quantity(1.0, symbol, kind=kind).si
            assert ours == pytest.approx(theirs.magnitude, rel=4e-16), (kind, symbol)
            compared += 1
    assert compared >= 40


def test_taken_as_arguments():
    speed = gullet.formula.spindle_speed(
        cutting_speed=90 * UREG.foot / UREG.minute, diameter=0.5 * UREG.inch
    )
    assert speed == gullet.formula.spindle_speed(cutting_speed="90 ft/min", diameter="0.5 in")
    array = gullet.formula.spindle_speed(
        cutting_speed=UREG.Quantity([60.0, 90.0], "ft/min"), diameter="1/2 in"
    )
    assert array.shape == (2,) and array[1] == speed
    assert Quantity(12.7 * UREG.mm) == Quantity("1/2 in")
    assert gullet.Cutter(
        form="square", material="HSS", diameter=0.5 * UREG.inch, teeth=2,
        flute_length="1 in", stick_out="1.5 in",
    ).diameter == Quantity("1/2 in")


def test_revolutions_are_never_radians():
    rpm = UREG.Quantity(1000.0, "rpm")
    speed = gullet.formula.cutting_speed(spindle_speed=rpm, diameter="10 mm")
    assert speed == gullet.formula.cutting_speed(spindle_speed="1000 rpm", diameter="10 mm")
    with pytest.raises(GulletError) as caught:
        gullet.formula.cutting_speed(
            spindle_speed=UREG.Quantity(104.7, "rad/s"), diameter="10 mm"
        )
    assert caught.value.parameter == "spindle_speed"


def test_another_dimension_is_refused():
    with pytest.raises(GulletError) as caught:
        gullet.formula.spindle_speed(cutting_speed="90 ft/min", diameter=3 * UREG.kilogram)
    assert caught.value.code == "unit_unknown" and caught.value.parameter == "diameter"


def test_the_library_is_never_imported():
    code = "import sys, gullet; print([m for m in ('pint','numpy','pandas','matplotlib') if m in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
