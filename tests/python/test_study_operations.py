"""Studies over tables of operations that have columns of their own."""

from __future__ import annotations

import polars as pl
import pyarrow as pa
import pytest

import gullet
from gullet import GulletError

HOLES = dict(
    operation="drilling", material="1018", machine="small-cnc-mill", practice="experienced",
    cutter_material="HSS",
)  # fmt: skip
ROWS = {
    "part": ["leaf", "leaf", "plate", "plate", "plate"],
    "diameter_mm": [5.0, 8.5, None, float("nan"), 4.0],
    "depth_mm": [6.0, 22.0, 10.0, 10.0, 40.0],
    "hole": ["through", "blind", "blind", None, None],
}
CODES = ["ok", "ok", "missing", "not_finite", "limit_exceeded"]


def test_tables_of_every_library_give_the_same():
    arrow = pa.table(ROWS)
    wanted = gullet.study(arrow, **HOLES)
    assert wanted["status"] == CODES
    assert wanted["part"] == ROWS["part"]
    assert wanted["binding_limit"][4] == "depth_ratio"
    assert wanted.summary.computed == 2
    assert wanted.summary.energy_microjoules > 0
    assert "point_angle: 118 deg" in wanted.assumed
    frame = pl.DataFrame(arrow)
    for rows in (ROWS, frame, frame.with_columns(pl.col("hole").cast(pl.Categorical)), arrow.to_batches()[0]):
        answer = gullet.study(rows, **HOLES)
        assert answer["status"] == CODES
        assert answer.summary == wanted.summary
        assert pa.table(answer)["thrust_n"].equals(pa.table(wanted)["thrust_n"])
    stream = gullet.study(arrow.to_reader(max_chunksize=2), **HOLES)
    assert pa.table(stream)["time_s"].to_pylist() == pa.table(wanted)["time_s"].to_pylist()
    assert stream.summary == wanted.summary


def test_a_hole_by_hand():
    done = gullet.study(
        {"diameter_mm": [10.0], "spindle_speed_rpm": [500.0], "feed_mm": [0.1]},
        depth="20 mm", columns=["cutting_speed", "feed_speed", "removal_rate", "point_length", "travel", "feed_time"],
        **HOLES,
    )  # fmt: skip
    (row,) = done
    # v_c = pi D n, v_f = f n, Q = pi/4 D^2 v_f, point D/2/tan(59 deg): own arithmetic.
    assert row["cutting_speed_m_per_min"] == pytest.approx(15.70796326794897, rel=1e-12)
    assert row["feed_speed_mm_per_min"] == pytest.approx(50.0, rel=1e-12)
    assert row["removal_rate_cm3_per_min"] == pytest.approx(3.9269908169872414, rel=1e-12)
    assert row["point_length_mm"] == pytest.approx(3.0043030951, rel=1e-9)
    assert row["feed_time_s"] == pytest.approx(row["travel_mm"] / 50.0 * 60.0, rel=1e-12)


def test_quantities_and_objects_are_constants():
    machine = gullet.Machine(base="small-cnc-mill")
    one = gullet.study(
        {"diameter_mm": [8.0]}, depth=gullet.Quantity("0.5 in"), hole="blind", operation="drilling",
        material="1018", machine=machine, practice="experienced", cutter_material="HSS",
    )  # fmt: skip
    two = gullet.study({"diameter_mm": [8.0], "depth_in": [0.5]}, hole="blind", **HOLES)
    assert pa.table(one)["time_s"] == pa.table(two)["time_s"]
    assert one.summary == two.summary


def test_batches_and_inch_results():
    batches = list(gullet.study_batches(pa.table(ROWS).to_batches(max_chunksize=2), units="inch", **HOLES))
    table = pa.Table.from_batches(batches)
    assert table.column("status").to_pylist() == CODES
    assert "feed_speed_in_per_min" in table.column_names


def problems(error):
    return {(problem.code, problem.parameter) for problem in error.value.problems}


def test_every_problem_is_told_at_once():
    with pytest.raises(GulletError) as error:
        gullet.study(
            {"diameter_n": [8.0], "hole": [1.0]}, feed=0.1, axial_depth="6 mm",
            hold={"clamping_force": "10 kN", "grip_depth": "15 mm"},
            spreads={"cutting_force": "0.9..1.1"}, **HOLES,
        )  # fmt: skip
    assert problems(error) == {
        ("unit_unknown", "diameter_n"),
        ("wrong_type", "hole"),
        ("unit_missing", "feed"),
        ("missing", "depth"),
        ("unknown_name", "constant"),
        ("inconsistent", "hold"),
        ("inconsistent", "spreads"),
    }


def test_a_mixed_table_is_one_error_before_any_work():
    rows = {"operation": ["side-milling"] * 100_000 + ["drilling"], "radial_depth_mm": [0.5] * 100_001}
    cut = dict(
        material="6061", machine="small-cnc-mill", axial_depth="6 mm", length="80 mm", part_height="25 mm",
        cutter_form="square", cutter_material="HSS", cutter_diameter="12 mm", cutter_teeth=2,
        cutter_flute_length="25 mm", cutter_stick_out="35 mm", clamping_force="10 kN", grip_depth="15 mm",
    )  # fmt: skip
    with pytest.raises(GulletError, match="split the table by operation") as error:
        gullet.study(rows, **cut)
    assert problems(error) == {("inconsistent", "operation")}
    with pytest.raises(GulletError) as error:
        gullet.study({"diameter_mm": [8.0], "operation": ["drilling"]}, depth="10 mm", **HOLES)
    assert problems(error) == {("duplicate", "operation")}
    with pytest.raises(GulletError, match="did you mean drilling") as error:
        gullet.study({"diameter_mm": [8.0]}, depth="10 mm", **{**HOLES, "operation": "driling"})
    assert problems(error) == {("unknown_name", "operation")}
