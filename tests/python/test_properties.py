"""Properties over generated values."""

from __future__ import annotations

import pickle

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra import numpy as hnp

import gullet
from gullet import GulletError, Quantity

UNITS = [(kind, unit) for kind in gullet.kinds() for unit in gullet.units_of(kind)]
numbers = st.floats(allow_nan=False, allow_infinity=False, min_value=-1e9, max_value=1e9)


@given(st.sampled_from(UNITS), numbers)
def test_a_unit_there_and_back(unit, number):
    kind, symbol = unit
    back = Quantity(number, symbol, kind=kind).to(symbol)
    # Below 1e-300 a double holds fewer digits.
    assert abs(back - number) <= 4e-16 * abs(number) + 1e-300


@given(st.sampled_from(UNITS), numbers)
def test_pickle_and_json_keep_every_bit(unit, number):
    quantity = Quantity(number, unit[1], kind=unit[0])
    assert pickle.loads(pickle.dumps(quantity)).si == quantity.si
    assert Quantity.from_json(quantity.to_json()).si == quantity.si


@given(st.text(max_size=40))
def test_any_text_is_read_or_refused(text):
    for kind in ("length", "ratio", "rotational_speed"):
        try:
            value = Quantity(text, kind=kind)
        except GulletError as error:
            assert error.problems and error.remedy
        else:
            assert np.isfinite(value.si)


@given(
    hnp.arrays(
        st.sampled_from([np.float64, np.float32, np.int32, np.dtype(">f8")]),
        hnp.array_shapes(max_dims=3, max_side=5),
        elements=st.integers(1, 1000),
    ),
    st.floats(1, 500),
)
def test_arrays_are_their_scalars(array, diameter):
    speed = gullet.formula.spindle_speed
    diameter = Quantity(diameter, "mm")
    result = speed(cutting_speed=Quantity(array, "m/min"), diameter=diameter).si
    assert result.shape == array.shape
    for value, found in zip(array.ravel().tolist(), result.ravel().tolist()):
        assert speed(cutting_speed=Quantity(value, "m/min"), diameter=diameter).si == found


@settings(max_examples=300)
@given(st.sampled_from(gullet.formulas()), st.data())
def test_no_formula_gives_nan_or_breaks(formula, data):
    given = {}
    for parameter in formula.parameters:
        unit = gullet.units_of(parameter.kind)[0]
        value = data.draw(st.floats(allow_nan=True, allow_infinity=True))
        try:
            given[parameter.name] = (
                Quantity(value, unit, kind=parameter.kind) if unit else value
            )
        except GulletError:
            return
    try:
        result = formula(**given)
    except GulletError as error:
        assert error.parameter or error.code == "result_overflow"
    else:
        assert np.isfinite(result.si)


@given(st.dictionaries(st.text(max_size=8), st.one_of(st.none(), st.text(max_size=8), numbers), max_size=4))
def test_any_job_is_read_or_refused(keys):
    try:
        gullet.job({"cut": keys, **keys})
    except GulletError as error:
        assert error.problems
