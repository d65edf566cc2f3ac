"""gullet.Quantity."""

from __future__ import annotations

import copy
import pickle

import numpy as np
import pytest
from conftest import rows

import gullet
from gullet import GulletError, Quantity


def test_made_from_text_number_array_and_quantity():
    half = Quantity("1/2 in")
    assert half == Quantity(0.5, "in") == Quantity(12.7, "mm") == Quantity(half)
    assert half.kind == "length" and half.to("in") == 0.5 and half.si == 0.0127
    array = Quantity([0.5, 1], "in")
    assert array.shape == (2,) and len(array) == 2 and array[1] == Quantity("1 in")
    assert (array.to("mm") == np.array([12.7, 25.4])).all()
    assert (Quantity(["1/2 in", "25.4 mm"]).to("in") == [0.5, 1]).all()
    assert Quantity("15 %", kind="ratio").si == 0.15


@pytest.mark.parametrize("row", rows("tests/data/quantity_texts.csv"))
def test_texts_are_read_as_in_rust(row):
    if row["accepted"] == "neither":
        with pytest.raises(GulletError):
            Quantity(row["text"], kind=row["kind"])
    else:
        Quantity(row["text"], kind=row["kind"])


def test_a_bare_number_is_told_how_to_write_it():
    for call in (
        lambda: gullet.formula.spindle_speed(cutting_speed=90, diameter="1/2 in"),
        lambda: Quantity("1/2 in") + 3,
        lambda: Quantity("1/2 in") < 3,
    ):
        with pytest.raises(GulletError) as caught:
            call()
        assert caught.value.code == "unit_missing" and "write " in caught.value.remedy
    with pytest.raises(GulletError) as caught:
        gullet.formula.spindle_speed(cutting_speed=np.array([90.0]), diameter="1/2 in")
    assert 'gullet.Quantity(array, "m/min")' in caught.value.remedy


def test_arithmetic_where_the_dimensions_allow():
    half, speed = Quantity("1/2 in"), Quantity("90 ft/min")
    assert half + half == 2 * half == half * 2 == Quantity("1 in")
    assert (half - half).si == 0 and -half < half and abs(-half) == +half
    assert float(half / half) == 1.0
    assert (half / Quantity("1 s")).kind == "velocity"
    assert speed * Quantity("2 min") == Quantity("180 ft")
    assert (half * np.array([1.0, 2.0])).to("in").tolist() == [0.5, 1.0]
    assert (np.array([1.0, 2.0]) * half).to("in").tolist() == [0.5, 1.0]
    assert (Quantity([1, 3], "mm") > Quantity("2 mm")).tolist() == [False, True]
    with pytest.raises(GulletError) as caught:
        half + speed
    assert caught.value.code == "unit_unknown"
    with pytest.raises(GulletError) as caught:
        half / 0
    assert caught.value.code == "result_overflow"
    with pytest.raises(GulletError):
        float(half)


def test_prints_in_the_chosen_system():
    half = Quantity("1/2 in")
    assert repr(half) == "Quantity('12.7 mm')" and f"{half:in}" == "0.5 in"
    with gullet.units("inch"):
        assert repr(half) == "Quantity('0.5 in')" and str(half) == "0.5 in"
    assert gullet.get_units() == "metric"
    assert half._repr_html_() == "<span>12.7 mm</span>"
    with pytest.raises(GulletError):
        gullet.set_units("furlong")


@pytest.mark.parametrize("quantity", [Quantity("1/3 in"), Quantity([[1, 2], [3, 4.1]], "thou")])
def test_pickle_copy_json(quantity):
    for twin in (
        pickle.loads(pickle.dumps(quantity)),
        copy.deepcopy(quantity),
        copy.copy(quantity),
        Quantity.from_json(quantity.to_json()),
    ):
        assert twin.kind == quantity.kind and twin.shape == quantity.shape
        assert np.asarray(twin.si).tobytes() == np.asarray(quantity.si).tobytes()


def test_equal_means_equal_hash_and_frozen():
    assert hash(Quantity("1/2 in")) == hash(Quantity("12.7 mm"))
    assert Quantity("1/2 in") != Quantity("0.5 s") and Quantity("1/2 in") != "1/2 in"
    assert {Quantity("0 mm"): 1}[Quantity("-0 mm")] == 1
    with pytest.raises(TypeError):
        hash(Quantity([1, 2], "mm"))
    with pytest.raises(AttributeError):
        Quantity("1 mm").si = 3
