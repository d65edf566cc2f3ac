"""Studies on Dask with two worker processes, one of them killed in mid-run."""

from __future__ import annotations

import threading
import time
from pathlib import Path

import dask_study
import pytest
from conftest import FILES, kill
from distributed import Client, LocalCluster
from study_constants import CONSTANTS


@pytest.fixture(scope="module")
def client():
    with LocalCluster(n_workers=2, threads_per_worker=1, dashboard_address=None) as cluster:
        with Client(cluster) as client:
            # Each worker imports once, outside of what is timed.
            client.run(lambda: __import__("dask_study"))
            yield client


def test_the_same_as_on_one_machine(client, rows, tmp_path, capsys):
    start = time.perf_counter()
    summary = dask_study.study_files(client, rows.path, str(tmp_path), **CONSTANTS)
    seconds = time.perf_counter() - start
    assert summary == rows.summary
    rows.same_as(str(tmp_path))
    with capsys.disabled():
        print(f"\nDask, two workers: {summary.rows} rows in {seconds:.1f} s")


def test_one_worker_killed_in_mid_run_loses_nothing(client, rows, tmp_path, capsys):
    workers = client.run(lambda: __import__("os").getpid())
    killed = []

    def strike() -> None:
        while not killed:
            done = len(list(Path(tmp_path).glob("*.parquet")))
            if 0 < done < FILES - 4:
                victim = next(iter(workers.values()))
                kill(victim)
                killed.append((victim, done))
            time.sleep(0.01)

    striker = threading.Thread(target=strike, daemon=True)
    striker.start()
    start = time.perf_counter()
    summary = dask_study.study_files(client, rows.path, str(tmp_path), **CONSTANTS)
    seconds = time.perf_counter() - start
    assert killed, "the run ended before a worker could be killed"
    assert killed[0][0] not in client.run(lambda: __import__("os").getpid()).values()
    assert summary == rows.summary
    rows.same_as(str(tmp_path))
    with capsys.disabled():
        print(f"\nDask, one worker killed after {killed[0][1]} of {FILES} files: {seconds:.1f} s")
