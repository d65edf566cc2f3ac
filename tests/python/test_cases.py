"""Worked examples of the literature: the same rows and verdicts as in Rust, scalar and array."""

from __future__ import annotations

import numpy as np
import pytest
from conftest import ROOT, arguments, rows

import gullet

FILES = sorted((ROOT / "reference-data/cases").glob("*.csv"))
CASES = [row for path in FILES for row in rows(str(path))]


def deviation(row: dict[str, str], value: float, expected: float) -> bool:
    scale = abs(expected) or 1.0
    return abs(value - expected) / scale <= float(row["rtol"])


def test_all_are_there():
    assert len(CASES) >= 272


@pytest.mark.parametrize("row", CASES, ids=[row["id"] for row in CASES])
def test_scalar_and_array(row):
    given = arguments(row["arguments"])
    result = gullet.evaluate(row["formula"], **given)
    expected = gullet.Quantity(row["expected"], kind=result.kind).si
    marked = bool(row["status"] and row["status"].strip())
    assert deviation(row, result.si, expected) != marked
    formula = getattr(gullet.formula, row["formula"])
    kinds = {parameter.name: parameter.kind for parameter in formula.parameters}
    arrays = {
        name: gullet.Quantity([value, value], kind=kinds[name]) for name, value in given.items()
    }
    array = formula(**arrays).si
    assert array.shape == (2,) and array.dtype == np.float64
    assert array.tobytes() == np.array([result.si, result.si]).tobytes()


@pytest.mark.parametrize("formula", gullet.formulas(), ids=lambda formula: formula.name)
def test_example_of_each_formula(formula):
    text, expected, tolerance, source = formula.example
    value = formula(**arguments(text))
    assert value.si == pytest.approx(
        gullet.Quantity(expected, kind=formula.result).si, rel=tolerance
    )
    assert source
