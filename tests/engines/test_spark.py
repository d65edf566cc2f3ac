"""Studies on Spark with two executor processes, one of them killed in mid-run."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
import threading
import time

import pytest
from conftest import FILES, command, descendants, kill


def java() -> int:
    program = os.path.join(os.environ["JAVA_HOME"], "bin/java") if "JAVA_HOME" in os.environ else "java"
    if not shutil.which(program):
        return 0
    told = subprocess.run([program, "-version"], capture_output=True, text=True).stderr
    found = re.search(r'version "(\d+)', told)
    return int(found[1]) if found else 0


if java() < 17:
    pytest.skip("Spark needs Java 17 or newer: install openjdk-17-jre-headless", allow_module_level=True)

import spark_study
from study_constants import CONSTANTS


@pytest.fixture(scope="module")
def spark():
    session = spark_study.session("local-cluster[2,1,1024]")
    session.sparkContext.setLogLevel("OFF")
    # A task a file, so that there is a mid-run.
    session.conf.set("spark.sql.files.maxPartitionBytes", "4m")
    yield session
    session.stop()


def executors() -> list[int]:
    return [pid for pid in descendants(os.getpid()) if "CoarseGrainedExecutorBackend" in command(pid)]


def check(spark, rows, path) -> None:
    rows.same_as(path)
    found = spark_study.totals(spark.read.parquet(path))
    summary = rows.summary
    assert found["cutting_time_nanoseconds"] == summary.cutting_time_nanoseconds
    assert found["rows"] == {"ok": summary.computed, **summary.errors}


def run(spark, rows, path) -> float:
    start = time.perf_counter()
    source = spark.read.parquet(rows.path).drop("lot")
    spark_study.study(source, **CONSTANTS).write.parquet(path)
    return time.perf_counter() - start


def test_the_same_as_on_one_machine(spark, rows, tmp_path, capsys):
    path = str(tmp_path / "results")
    seconds = run(spark, rows, path)
    assert len(executors()) == 2
    check(spark, rows, path)
    with capsys.disabled():
        print(f"\nSpark, two executors: {rows.summary.rows} rows in {seconds:.1f} s")


def test_one_executor_killed_in_mid_run_loses_nothing(spark, rows, tmp_path, capsys):
    path = str(tmp_path / "results")
    tracker = spark.sparkContext.statusTracker()
    killed = []

    def strike() -> None:
        while not killed:
            for stage in tracker.getActiveStageIds():
                info = tracker.getStageInfo(stage)
                if info and info.numTasks > 4 and 0 < info.numCompletedTasks < info.numTasks - 4:
                    victim = executors()[0]
                    kill(victim)
                    killed.append((victim, info.numCompletedTasks, info.numTasks))
                    return
            time.sleep(0.02)

    striker = threading.Thread(target=strike, daemon=True)
    striker.start()
    seconds = run(spark, rows, path)
    assert killed, "the run ended before a worker could be killed"
    striker.join()
    victim, done, tasks = killed[0]
    assert victim not in executors() and tasks >= FILES // 4
    check(spark, rows, path)
    with capsys.disabled():
        print(f"\nSpark, one executor killed after {done} of {tasks} tasks: {seconds:.1f} s")
