"""Studies over tables of other libraries: in, out, codes, totals, refusals."""

from __future__ import annotations

import math
import threading

import duckdb
import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest
from conftest import JOBS

import gullet
from gullet import GulletError, Table

CUT = dict(
    material="6061", machine="small-cnc-mill", operation="side-milling",
    axial_depth="6 mm", length="80 mm", part_height="25 mm",
    cutter_form="square", cutter_material="HSS", cutter_diameter=gullet.Quantity("12 mm"),
    cutter_teeth=2, cutter_flute_length="25 mm", cutter_stick_out="35 mm",
    clamping_force="10 kN", grip_depth="15 mm",
)  # fmt: skip
DEPTHS = [0.5, 0.8, None, float("nan"), -1.0]
CODES = ["ok", "ok", "missing", "not_finite", "out_of_range"]


def test_tables_of_every_library_give_the_same():
    arrow = pa.table({"part": list("abcde"), "radial_depth_mm": DEPTHS})
    wanted = gullet.study(arrow, **CUT)
    assert wanted.table["status"] == CODES
    assert wanted.table["part"] == list("abcde")
    relation = duckdb.sql("select part, radial_depth_mm from arrow")
    for rows in (
        arrow.to_batches()[0],
        pa.concat_tables([arrow.slice(0, 2), arrow.slice(2)]),
        pl.DataFrame(arrow),
        pl.DataFrame(arrow).with_columns(pl.col("part").cast(pl.Categorical)),
        relation,
        Table(arrow),
    ):
        answer = gullet.study(rows, **CUT)
        assert answer.table["status"] == CODES
        assert pa.table(answer.table).column("time_s").equals(pa.table(wanted.table).column("time_s"))
        assert answer.summary == wanted.summary
    # A pandas column of numbers has NaN for none.
    frame = pd.DataFrame({"radial_depth_mm": [0.5, np.nan]})
    assert gullet.study(frame, **CUT).table["status"] in (["ok", "missing"], ["ok", "not_finite"])


def test_results_go_to_every_library():
    answer = gullet.study({"radial_depth_mm": DEPTHS}, columns="all", **CUT)
    arrow = pa.table(answer.table)
    assert arrow.column("time_s").null_count == 3
    assert arrow.schema.field("time_s").metadata[b"unit"] == b"s"
    assert pl.DataFrame(answer.table)["status"].cast(pl.String).to_list() == CODES
    assert list(pd.DataFrame.from_arrow(answer.table)["status"]) == CODES


def test_a_row_is_the_cut_of_the_scalar_call():
    setup = gullet.setup(
        material="6061",
        blank={"length": "80 mm", "width": "25 mm", "height": "25 mm"},
        cutter={"form": "square", "material": "HSS", "diameter": "12 mm", "teeth": 2,
                "flute_length": "25 mm", "stick_out": "35 mm"},
        machine="small-cnc-mill",
        hold={"clamping_force": "10 kN", "grip_depth": "15 mm"},
    )  # fmt: skip
    cut = setup.mill(
        operation="side-milling", axial_depth="6 mm", radial_depth="0.5 mm", length="80 mm",
        warn_of_doubts=False,
    )  # fmt: skip
    answer = gullet.study({"radial_depth_mm": [0.5]}, columns="all", **CUT)
    row = next(iter(answer.table))

    def column(name):
        for known in answer.table.columns:
            suffix = (known.unit or "").replace("/", "_per_").replace(".", "_").lower()
            if known.name == (f"{name}_{suffix}" if suffix else name):
                return known
        raise AssertionError(name)

    compared = 0
    for name, value in [*cut.settings, *cut.consequences]:
        known = column(name)
        if value is None:
            assert row[known.name] is None, name
        else:
            assert row[known.name] == (value.to(known.unit) if known.unit else value.si), name
            compared += 1
    assert compared > 25


def test_totals():
    rows = {"radial_depth_mm": DEPTHS, "cost_per_hour": [60.0] * 5}
    answer = gullet.study(rows, **CUT)
    summary = answer.summary
    times = [row["time_s"] for row in answer.table if row["status"] == "ok"]
    assert (summary.rows, summary.computed) == (5, 2)
    assert summary.errors == {"missing": 1, "not_finite": 1, "out_of_range": 1}
    assert math.isclose(summary.cutting_time.to("s"), sum(times), abs_tol=1e-8)
    assert math.isclose(summary.cost, sum(times) / 60, abs_tol=1e-5)
    assert sum(summary.binding_limit.values()) == 2
    assert summary.energy_kwh > 0
    assert gullet.study({"radial_depth_mm": DEPTHS}, **CUT).summary.cost is None


def test_units_follow_the_argument_then_the_job():
    rows = {"radial_depth_mm": [0.5]}
    metric = gullet.study(rows, **CUT).table.column_names
    assert "table_feed_mm_per_min" in metric
    assert "table_feed_in_per_min" in gullet.study(rows, units="inch", **CUT).table.column_names
    job = gullet.job(JOBS[0])
    inch = gullet.study({"radial_depth_in": [0.02]}, job=job).table.column_names
    assert ("table_feed_in_per_min" in inch) == (job.units == "inch")


def test_every_problem_is_told_at_once():
    rows = pa.table({"radial_depth_mm": ["0,5"], "axial_depth": [1.0], "cutter_diamter_mm": [1.0]})
    with pytest.raises(GulletError) as caught:
        gullet.study(rows, columns=["tim"], material="6061", machine="none", length=3)
    told = {(problem.code, problem.parameter) for problem in caught.value.problems}
    assert {
        ("wrong_type", "radial_depth_mm"),
        ("unit_missing", "axial_depth"),
        ("unknown_name", "cutter_diamter_mm"),
        ("unknown_name", "machine"),
        ("unknown_name", "columns"),
        ("unit_missing", "length"),
        ("missing", "grip_depth"),
    } <= told
    for rows in ([1, 2], "rows", None, 3.0):
        with pytest.raises((GulletError, TypeError)):
            gullet.study(rows, **CUT)


def test_cells_that_mean_nothing_are_told_with_their_row():
    names = ["6061", "unobtainium", None, "6061"]
    rows = {"material": names, "radial_depth_mm": [0.5] * 4}
    answer = gullet.study(rows, **{k: v for k, v in CUT.items() if k != "material"})
    assert answer.table["status"] == ["ok", "unknown_name", "missing", "ok"]
    (cell,) = answer.unread
    assert (cell.row, cell.code, cell.column) == (1, "unknown_name", "material")
    assert "unobtainium" in cell.text
    assert any("helix" in text for text in answer.assumed)


def test_the_lock_is_let_go_of_and_threads_agree():
    count = 200_000
    depths = np.random.default_rng(1).uniform(0.1, 1.0, count)
    rows = pa.table({"radial_depth_mm": depths})
    ticks = 0
    done = threading.Event()
    answers = []

    def work():
        answers.extend(gullet.study(rows, threads=threads, **CUT) for threads in (1, 2))
        done.set()

    worker = threading.Thread(target=work)
    worker.start()
    while not done.wait(0.005):
        ticks += 1
    worker.join()
    assert ticks > 3
    one, two = answers
    assert one.summary == two.summary
    assert pa.table(one.table).equals(pa.table(two.table))
    with pytest.raises(GulletError):
        gullet.study(rows, threads=0, **CUT)
