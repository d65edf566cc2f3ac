"""The catalogue as functions."""

from __future__ import annotations

import copy
import doctest
import inspect
import pickle
import warnings

import numpy as np
import pytest

import gullet
from gullet import GulletError, GulletWarning, Quantity

SPEED = gullet.formula.spindle_speed


def test_keywords_only_with_signature_and_help():
    with pytest.raises(TypeError, match="cutting_speed, diameter"):
        SPEED("90 ft/min", "1/2 in")
    parameters = inspect.signature(SPEED).parameters
    assert list(parameters) == ["cutting_speed", "diameter", "on_bad_row"]
    assert all(p.kind is inspect.Parameter.KEYWORD_ONLY for p in parameters.values())
    assert "Source:" in SPEED.__doc__
    assert set(gullet.formula.__all__) == {formula.name for formula in gullet.formulas()}


@pytest.mark.parametrize("formula", gullet.formulas(), ids=lambda formula: formula.name)
def test_help_runs(formula):
    examples = doctest.DocTestParser().get_doctest(formula.__doc__, {}, formula.name, None, 0)
    assert examples.examples
    failed, _ = doctest.DocTestRunner().run(examples)
    assert not failed
    assert pickle.loads(pickle.dumps(formula)).name == copy.deepcopy(formula).name


def test_broadcasting():
    speed = Quantity(np.array([[60.0], [90.0]]), "ft/min")
    n = SPEED(cutting_speed=speed, diameter=["1/4 in", "1/2 in", "1 in"])
    assert n.shape == (2, 3)
    one = SPEED(cutting_speed="90 ft/min", diameter="1/2 in")
    assert isinstance(one.si, float) and n.si[1, 1] == one.si
    with pytest.raises(GulletError) as caught:
        SPEED(cutting_speed=Quantity([1, 2], "m/s"), diameter=Quantity([1, 2, 3], "mm"))
    assert caught.value.code == "inconsistent"
    assert SPEED(cutting_speed="1 m/s", diameter=Quantity([], "mm")).shape == (0,)


def test_bad_rows_are_counted_or_nan():
    diameters = Quantity([10.0, 0.0, 20.0, -1.0], "mm")
    with pytest.raises(GulletError) as caught:
        SPEED(cutting_speed="90 m/min", diameter=diameters)
    error = caught.value
    assert (error.rows.bad, error.rows.all, error.rows.first) == (2, 4, [1, 3])
    assert error.rows.counts == [("out_of_range", 2)] and error.parameter == "diameter"
    with pytest.warns(GulletWarning, match="2 of 4 rows"):
        n = SPEED(cutting_speed="90 m/min", diameter=diameters, on_bad_row="nan")
    assert np.isnan(n.si).tolist() == [False, True, False, True]
    with pytest.raises(GulletError):
        SPEED(cutting_speed="90 m/min", diameter=diameters, on_bad_row="skip")


def test_all_problems_in_one_error():
    with pytest.raises(GulletError) as caught:
        SPEED(cutting_speed=90, diametre="1/2 in")
    assert [p.code for p in caught.value.problems] == ["unit_missing", "unknown_name", "missing"]
    assert isinstance(caught.value, ValueError)
    assert pickle.loads(pickle.dumps(caught.value)).problems == caught.value.problems


def test_explain_renders_text_latex_html():
    step = gullet.explain("spindle_speed", cutting_speed="90 ft/min", diameter="1/2 in")
    assert step.text.endswith("= 687.55 rpm") and "\\frac" in step.latex
    assert "\\frac" in step._repr_latex_() and "<div>" in step._repr_html_()
    with gullet.units("inch"):
        assert "0.5 in" in step.text and "90 ft/min" in repr(step)
    assert step.result == SPEED(**step.arguments)
    assert pickle.loads(pickle.dumps(step)) == step and "0x" not in repr(step)
    with pytest.raises(GulletError):
        gullet.explain("spindle_speed", cutting_speed="90 ft/min", diameter=["1/2 in"])


def test_every_step_renders_and_is_escaped():
    for formula in gullet.formulas():
        text = formula.example[0]
        given = {k.strip(): v for k, v in (part.split("=", 1) for part in text.split(";"))}
        step = gullet.explain(formula.name, **given)
        assert step.text and len(step._repr_html_()) < 5000
        assert "<script" not in step._repr_html_() and "0x" not in repr(formula)


def test_warnings_have_their_category_and_point_here():
    with warnings.catch_warnings(record=True) as seen:
        warnings.simplefilter("always")
        SPEED(cutting_speed="90 m/min", diameter=Quantity([0.0], "mm"), on_bad_row="nan")
    assert seen[0].category is GulletWarning and seen[0].filename == __file__


def told(**arguments):
    with pytest.raises(GulletError) as caught:
        SPEED(**arguments)
    return caught.value.value, caught.value.admissible


def test_errors_are_told_in_the_units_given():
    inch, metric = ("-1 in", "above 0 in"), ("-25.4 mm", "above 0 mm")
    # Inch where one argument is, in whatever form it comes.
    assert told(cutting_speed="90 ft/min", diameter="-1 in") == inch
    assert told(cutting_speed="90 m/min", diameter=Quantity("-1 in")) == inch
    assert told(cutting_speed="90 m/min", diameter=Quantity(-1.0, "in")) == inch
    assert told(cutting_speed="90 m/min", diameter=2 * Quantity("-1/2 in")) == inch
    assert told(cutting_speed="90 m/min", diameter=pickle.loads(pickle.dumps(Quantity("-1 in")))) == inch
    assert told(cutting_speed="90 m/min", diameter=["1 in", "-1 in"]) == inch
    assert told(cutting_speed="90 m/min", diameter=Quantity([1, -1], "in")) == inch
    assert told(cutting_speed=Quantity("90 m/min"), diameter=Quantity("-25.4 mm")) == metric
    # What is computed names no unit: then the system that is printed in.
    computed = Quantity("1 m/min") * Quantity("-1 min") * (25.4 / 1000)
    with gullet.units("inch"):
        assert told(cutting_speed=Quantity.from_json(Quantity("1 m/s").to_json()),
                    diameter=Quantity.from_json(computed.to_json())) == inch
        assert told(cutting_speed="90 m/min", diameter="-25.4 mm") == metric
    with pytest.raises(GulletError) as caught:
        gullet.explain("spindle_speed", cutting_speed="90 ft/min", diameter="-1 in")
    assert caught.value.value == "-1 in"
