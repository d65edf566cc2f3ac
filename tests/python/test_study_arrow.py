"""Traps of Arrow on the way into a study, one by one."""

from __future__ import annotations

from decimal import Decimal

import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest
from test_study import CUT

import gullet
from gullet import GulletError

WITHOUT_MATERIAL = {name: value for name, value in CUT.items() if name != "material"}


def times(rows, **constants) -> list[float | None]:
    return pa.table(gullet.study(rows, **(constants or CUT)))["time_s"].to_pylist()


def test_a1_what_stands_behind_a_null_is_never_read():
    buffers = [pa.py_buffer(b"\x05"), pa.py_buffer(np.array([0.5, 1e9, 0.8]).tobytes())]
    depths = pa.Array.from_buffers(pa.float64(), 3, buffers)
    assert depths.to_pylist() == [0.5, None, 0.8]
    study = gullet.study(pa.table({"radial_depth_mm": depths}), **CUT)
    assert study["status"] == ["ok", "missing", "ok"]


def test_a2_dictionaries_with_a_null_among_their_values():
    materials = pa.DictionaryArray.from_arrays(pa.array([0, 1, None, 0]), pa.array(["6061", None]))
    rows = pa.table({"material": materials, "radial_depth_mm": [0.5] * 4})
    study = gullet.study(rows, **WITHOUT_MATERIAL)
    assert study["status"] == ["ok", "missing", "missing", "ok"]


def test_a4_slices_chunks_and_no_rows():
    rows = pa.table({"radial_depth_mm": [0.1, 0.5, None, 0.8, 0.3]})
    whole = times(rows)
    assert times(rows.slice(1, 3)) == whole[1:4]
    assert times(pa.concat_tables([rows.slice(3), rows.slice(0, 1)])) == whole[3:] + whole[:1]
    for nothing in (rows.slice(0, 0), rows.schema.empty_table(), {"radial_depth_mm": []}):
        study = gullet.study(nothing, **CUT)
        assert len(study) == study.summary.rows == 0 and "time_s" in pa.schema(study).names


def test_a5_float32_is_widened_and_never_rounded():
    narrow = np.array([0.1, 0.7], "f4")
    rows = pa.table({"radial_depth_mm": narrow})
    assert times(rows) == times({"radial_depth_mm": [float(x) for x in narrow]}) != times({"radial_depth_mm": [0.1, 0.7]})
    assert pa.table(gullet.study(rows, **CUT)).schema.field("radial_depth_mm").type == pa.float32()


@pytest.mark.parametrize("cells", [
    pa.array([Decimal("0.5")]), pa.array([True]), pa.array(["0.5"]), pa.nulls(1),
    pa.array([np.float16(0.5)], pa.float16()), pa.array([[0.5]]),
    pa.RunEndEncodedArray.from_arrays([1], [0.5]), pa.array([b"1"]),
])  # fmt: skip
def test_a6_other_types_are_refused_with_what_to_do(cells):
    with pytest.raises(GulletError) as caught:
        gullet.study(pa.table({"radial_depth_mm": cells}), **CUT)
    (problem,) = caught.value.problems
    assert (problem.code, problem.parameter) == ("wrong_type", "radial_depth_mm") and problem.remedy


def test_a6_integers_are_numbers():
    wanted = times({"radial_depth_mm": [1.0, 2.0]})
    for kind in (pa.int8(), pa.uint16(), pa.int64(), pa.float32()):
        assert times(pa.table({"radial_depth_mm": pa.array([1, 2], kind)})) == wanted


def test_a8_nan_is_a_value_and_null_is_none():
    study = gullet.study(pa.table({"radial_depth_mm": [0.5, float("nan"), None]}), **CUT)
    assert study["status"] == ["ok", "not_finite", "missing"]
    speeds = pa.table({"radial_depth_mm": [0.5] * 3, "spindle_speed_rpm": [None, 1000.0, float("nan")]})
    assert gullet.study(speeds, **CUT)["status"] == ["ok", "ok", "not_finite"]


def test_a9_text_in_every_form():
    names = ["6061", "1018cd", None]
    wanted = None
    for kind in (pa.string(), pa.large_string(), pa.string_view(), pa.dictionary(pa.int8(), pa.string())):
        rows = pa.table({"material": pa.array(names, kind), "radial_depth_mm": [0.5] * 3})
        found = times(rows, **WITHOUT_MATERIAL)
        wanted = wanted or found
        assert found == wanted and found[2] is None
    frame = pd.DataFrame({"material": pd.Categorical(names), "radial_depth_mm": [0.5] * 3})
    assert times(frame, **WITHOUT_MATERIAL) == wanted
    frame = pl.DataFrame({"material": pl.Series(names, dtype=pl.Categorical), "radial_depth_mm": [0.5] * 3})
    assert times(frame, **WITHOUT_MATERIAL) == wanted


def test_names_twice_and_columns_that_results_would_hide():
    twice = pa.table([[0.5], [0.6]], names=["radial_depth_mm", "radial_depth_mm"])
    with pytest.raises(GulletError, match="duplicate"):
        gullet.study(twice, **CUT)
    rows = {"radial_depth_mm": [0.5], "status": ["mine"], "time_s": [1.0], "note": ["n"]}
    study = gullet.study(rows, **CUT)
    assert study["status"] == ["mine"] and study["result_status"] == ["ok"]
    assert study["time_s"][0] == 1.0 and study["result_time_s"].kind == "time"
    near = {"radial_depth_mm": [0.5], "axial_dept_mm": [1.0]}
    with pytest.raises(GulletError, match="axial_depth_mm"):
        gullet.study(near, **CUT)
    assert gullet.study(near, pass_through=["axial_dept_mm"], **CUT)["status"] == ["ok"]
