"""Studies over streams and batches: lazily, once, and whatever the producer does."""

from __future__ import annotations

import copy
import pickle
import signal
import subprocess
import sys
import threading
import time

import duckdb
import polars as pl
import pyarrow as pa
import pytest
from conftest import JOBS
from test_study import CUT

import gullet
from gullet import GulletError, StudySummary, Table

SCHEMA = pa.schema({"part": pa.string(), "radial_depth_mm": pa.float64()})


def batch(first: int, rows: int) -> pa.RecordBatch:
    parts = [f"part {row}" for row in range(first, first + rows)]
    depths = [0.2 + 0.001 * (row % 700) for row in range(first, first + rows)]
    return pa.record_batch([parts, depths], schema=SCHEMA)


def reader(sizes: list[int], fail_at: int | None = None) -> pa.RecordBatchReader:
    """A producer written in Python, which needs the interpreter for every batch."""

    def batches():
        first = 0
        for place, rows in enumerate(sizes):
            if place == fail_at:
                raise OSError("the disk is gone")
            yield batch(first, rows)
            first += rows

    return pa.RecordBatchReader.from_batches(SCHEMA, batches())


SIZES = [3, 0, 40_000, 1, 17_000]


def test_a_stream_in_is_a_stream_out_with_the_same_rows():
    whole = gullet.study(pa.Table.from_batches(reader(SIZES)), **CUT)
    for threads in (1, 2, None):
        stream = gullet.study(reader(SIZES), threads=threads, **CUT)
        assert isinstance(stream, gullet.StudyStream) and stream.summary.rows == 0
        assert pa.schema(stream) == pa.schema(whole)
        assert stream.assumed == whole.assumed
        tables = list(stream)
        assert sum(map(len, tables)) == len(whole) == sum(SIZES)
        assert [part for table in tables for part in table["part"]] == whole["part"]
        assert stream.summary == whole.summary and stream.unread == ()
    times = pa.table(whole)["time_s"].to_pylist()
    for read in (pa.table, pl.DataFrame, Table):
        assert list(pa.table(read(gullet.study(reader(SIZES), **CUT)))["time_s"].to_pylist()) == times


def test_a_stream_is_computed_as_it_is_read():
    produced = []

    def batches():
        for first in range(0, 1_000_000, 10_000):
            produced.append(first)
            yield batch(first, 10_000)

    stream = gullet.study(pa.RecordBatchReader.from_batches(SCHEMA, batches()), threads=1, **CUT)
    assert produced == []
    assert len(next(stream)) == 10_000
    assert len(produced) < 20
    # What was read stays read; the rest goes to the next reader.
    rest = pa.table(stream)
    assert rest.num_rows == 990_000 and rest["part"][0].as_py() == "part 10000"
    assert stream.summary.rows == 1_000_000


def test_a_stream_is_read_once_and_says_so():
    stream = gullet.study(reader([5]), **CUT)
    assert pa.table(stream).num_rows == 5
    for again in (lambda: pa.table(stream), lambda: next(stream)):
        with pytest.raises(GulletError, match="read already"):
            again()
    spent = reader([5])
    spent.read_all()
    assert pa.table(gullet.study(spent, **CUT)).num_rows == 0


def test_a_producer_that_fails_is_an_error_after_what_came_before():
    stream = gullet.study(reader([20_000, 30_000, 1], fail_at=2), threads=1, **CUT)
    read = 0
    with pytest.raises(GulletError, match="the disk is gone"):
        for table in stream:
            read += len(table)
    assert read == 50_000 == stream.summary.rows
    with pytest.raises((OSError, pa.ArrowException), match="the disk is gone"):
        pa.table(gullet.study(reader([20_000, 30_000, 1], fail_at=2), **CUT))
    with pytest.raises(GulletError, match="the disk is gone"):
        Table(gullet.study(reader([1, 1], fail_at=1), **CUT))


def test_a_lazy_stream_with_broken_text_is_an_error_and_no_abort():
    code = """
import gullet, pyarrow as pa
from test_study import CUT
text = pa.Array.from_buffers(pa.string(), 2, [None, pa.py_buffer(b"\\0\\0\\0\\0\\2\\0\\0\\0\\4\\0\\0\\0"), pa.py_buffer(b"\\xff\\xfe61")])
rows = pa.table({"machine": text, "radial_depth_mm": [1.0, 2.0]})
cut = {name: value for name, value in CUT.items() if name != "machine"}
for rows in (rows, rows.to_reader()):
    try:
        pa.table(gullet.study(rows, **cut))
    except (gullet.GulletError, pa.ArrowException, OSError, ValueError) as error:
        print("told", "utf" in str(error).lower())
"""
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, cwd="tests/python")
    assert done.returncode == 0 and done.stdout == "told True\n" * 2, done.stdout + done.stderr


def test_results_are_read_as_often_as_one_likes():
    study = gullet.study(pa.Table.from_batches([batch(0, 300)]), **CUT)
    joined = duckdb.sql("select count(*), min(a.status) from study a join study b using (part)")
    assert joined.fetchall() == [(300, "ok")]
    assert pa.table(study) == pa.table(study) == pa.table(study.table)
    assert pa.schema(study) == pa.table(study).schema
    for twin in (pickle.loads(pickle.dumps(study)), copy.copy(study)):
        assert twin == study and twin.summary == study.summary
    assert "300 rows" in repr(study) and "<table>" in study._repr_html_()


def test_batches_as_an_engine_gives_them():
    batches = [batch(0, 40_000), batch(40_000, 0), batch(40_000, 7)]
    whole = gullet.study(pa.Table.from_batches(batches), dictionaries=False, **CUT)
    assert pa.schema(whole).field("status").type == pa.string()
    done = list(gullet.study_batches(iter(batches), **CUT))
    assert all(isinstance(one, pa.RecordBatch) for one in done)
    assert pa.Table.from_batches(done).combine_chunks() == pa.table(whole).combine_chunks()
    studies = list(gullet.study_batches([pl.DataFrame(one) for one in batches], **CUT))
    assert [len(study) for study in studies] == [40_000, 0, 7]
    assert sum((study.summary for study in studies), StudySummary()) == whole.summary
    tables = list(gullet.study_batches([pa.Table.from_batches(batches)], **CUT))
    assert tables[0].summary == whole.summary
    other = batch(0, 3).rename_columns(["part", "axial_depth_mm"])
    with pytest.raises(GulletError, match="another schema"):
        list(gullet.study_batches([batches[2], other], **CUT))
    with pytest.raises(GulletError, match="radial_depth"):
        list(gullet.study_batches([batch(0, 3).select(["part"])], **CUT))
    assert list(gullet.study_batches([], **CUT)) == []


def test_sums_of_parts_are_those_of_the_whole():
    rows = {"radial_depth_mm": [0.5, 0.7, None, float("nan"), 9.0, 0.2], "cost_per_hour": [60.0] * 6}
    whole = gullet.study(rows, **CUT).summary
    assert whole.cost_millionths and whole.cutting_time_nanoseconds and whole.energy_microjoules
    parts = [
        gullet.study({name: cells[at : at + 2] for name, cells in rows.items()}, **CUT).summary
        for at in (0, 2, 4)
    ]
    assert sum(parts, StudySummary()) == whole
    assert sum(map(pickle.loads, map(pickle.dumps, parts)), StudySummary()) == whole
    with pytest.raises(TypeError):
        whole + 1


def test_jobs_and_parts():
    rows = {"radial_depth_in": [0.01, 0.02]}
    for path in JOBS:
        text = path.read_text()
        job = gullet.job(path)
        if job.operation != "side-milling":
            continue
        wanted = gullet.study(rows, job=job)
        for other in (path, str(path), text, job.to_json()):
            assert gullet.study(rows, job=other) == wanted
    job = gullet.job(JOBS[0])
    small = gullet.Machine("small-cnc-mill", highest_speed="500 rpm")
    laid = gullet.study(rows, job=job, machine=small)
    assert max(pa.table(laid)["spindle_speed_rpm"].to_pylist()) <= 500
    assert laid != gullet.study(rows, job=job)


def test_every_problem_of_parts_columns_and_constants_is_told_at_once():
    with pytest.raises(GulletError) as caught:
        gullet.study(
            {"radial_depth_m": ["a"], "cutter_teth": [1]},
            machine={"base": "none"}, cutter={"form": "square", "diameter": "-1 mm"}, material="unobtainium",
            hold=gullet.Hold(clamping_force="1 kN", grip_depth="5 mm"),
            axial_depth=[1, 2], length=3, part_height="3 s", threads=0, units="cubits", columns="tim",
        )  # fmt: skip
    told = {(problem.parameter, problem.code) for problem in caught.value.problems}
    assert {
        ("radial_depth_m", "wrong_type"), ("cutter_teth", "unknown_name"), ("material", "unknown_name"),
        ("threads", "out_of_range"), ("units", "unknown_name"), ("columns", "unknown_name"),
        ("operation", "missing"),
    } <= told  # fmt: skip
    parameters = {parameter for parameter, _ in told}
    assert {"axial_depth", "length", "part_height"} <= parameters
    assert any(name.startswith("machine") for name in parameters)
    assert any(name.startswith("cutter.") for name in parameters)
    # What the caller gave wrongly is not told as missing too.
    missing = {parameter for parameter, code in told if code == "missing"}
    assert not missing & {"axial_depth", "cutter_diameter", "clamping_force", "machine", "cutter_form"}
    for problem in caught.value.problems:
        assert problem.remedy, problem


def test_a_bad_job_is_told_with_the_bad_parts():
    with pytest.raises(GulletError) as caught:
        gullet.study({"radial_depth_mm": [1.0]}, job={"cut": {}}, hold={"grip_depth": "x"})
    parameters = {problem.parameter for problem in caught.value.problems}
    assert any(name.startswith("hold") for name in parameters) and len(parameters) > 2


INTERRUPTED = """
import gullet, pyarrow as pa, time
from test_study import CUT
rows = pa.table({"radial_depth_mm": pa.array([0.2 + 0.001 * (row %% 700) for row in range(100_000)])})
rows = pa.concat_tables([rows] * 60)
print("ready", flush=True)
try:
    while True:
        %s
except KeyboardInterrupt:
    print(time.time())
"""


@pytest.mark.skipif(sys.platform == "win32", reason="signals")
@pytest.mark.parametrize("work", [
    "gullet.study(rows, **CUT)",
    "gullet.study(rows, threads=1, columns='all', **CUT)",
    "list(gullet.study(rows.to_reader(), **CUT))",
    "list(gullet.study_batches([rows], **CUT))",
    "gullet.study(rows, spreads={'cutting_force': '0.85..1.2'}, draws=2000, **CUT)",
])  # fmt: skip
def test_ctrl_c_stops_a_long_study(work):
    process = subprocess.Popen(
        [sys.executable, "-c", INTERRUPTED % work], stdout=subprocess.PIPE, text=True, cwd="tests/python"
    )
    assert process.stdout.readline() == "ready\n"
    time.sleep(0.4)
    sent = time.time()
    process.send_signal(signal.SIGINT)
    assert float(process.communicate(timeout=30)[0]) - sent < 0.2


def test_other_threads_run_meanwhile():
    rows = pa.concat_tables([pa.Table.from_batches([batch(0, 100_000)])] * 6)
    ticks, done = [], threading.Event()

    def tick():
        while not done.is_set():
            ticks.append(time.perf_counter())
            time.sleep(0.001)

    thread = threading.Thread(target=tick)
    thread.start()
    start = time.perf_counter()
    gullet.study(rows, threads=1, **CUT)
    end = time.perf_counter()
    done.set()
    thread.join()
    inside = [tick for tick in ticks if start < tick < end]
    assert len(inside) > 10


def test_several_threads_read_one_stream():
    stream = gullet.study(reader([10_000] * 20), threads=1, **CUT)
    counts = []

    def read():
        counts.extend(len(table) for table in stream)

    threads = [threading.Thread(target=read) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sum(counts) == 200_000 == stream.summary.rows


def test_draws_go_on_from_batch_to_batch():
    batches = [batch(0, 10), batch(10, 1), batch(11, 20)]
    drawn = {"spreads": {"cutting_force": "0.85..1.2"}, "draws": 50, "columns": ["motor_power"]}
    whole = gullet.study(pa.Table.from_batches(batches), dictionaries=False, **drawn, **CUT)
    done = pa.Table.from_batches(list(gullet.study_batches(batches, **drawn, **CUT)))
    assert done.combine_chunks() == pa.table(whole).combine_chunks()
