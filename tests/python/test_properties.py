"""Properties over generated values."""

from __future__ import annotations

import pickle

import numpy as np
import pyarrow as pa
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


cells = st.one_of(
    st.lists(st.one_of(st.none(), st.floats(allow_nan=False)), min_size=4, max_size=4),
    st.lists(st.one_of(st.none(), st.integers(-(2**63), 2**63 - 1)), min_size=4, max_size=4),
    st.lists(st.one_of(st.none(), st.booleans()), min_size=4, max_size=4),
    st.lists(st.one_of(st.none(), st.text(max_size=8).filter(lambda text: text.isprintable())), min_size=4, max_size=4),
)


@given(st.dictionaries(st.text(max_size=8).filter(str.isprintable), cells, max_size=4), st.integers(0, 4), st.integers(0, 4))
def test_any_table_comes_back_from_arrow_and_from_a_pickle(columns, start, count):
    table = gullet.Table(columns)
    arrow = pa.table(table)
    assert gullet.Table(arrow) == table == pickle.loads(pickle.dumps(table))
    part = arrow.slice(start, count)
    assert pa.table(gullet.Table(part)).equals(part)
    assert pickle.loads(pickle.dumps(gullet.Table(part))) == gullet.Table(part)
    assert list(gullet.Table(part)) == [
        {name: None if isinstance(value, float) and value != value else value for name, value in row.items()}
        for row in part.to_pylist()
    ]


@given(st.dictionaries(st.text(max_size=8), st.one_of(st.none(), st.text(max_size=8), numbers), max_size=4))
def test_any_job_is_read_or_refused(keys):
    try:
        gullet.job({"cut": keys, **keys})
    except GulletError as error:
        assert error.problems
