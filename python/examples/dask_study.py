"""A study over a folder of Parquet files on Dask, file by file.

    python dask_study.py ROWS RESULTS [PROCESSES]

A file is a task: its rows go through as a stream, so that a worker holds a few batches at a time.
Results appear under their name when they are whole; the summaries add up exactly.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path
from typing import Any

import pyarrow.parquet
from distributed import Client, LocalCluster

import gullet
from study_constants import CONSTANTS


def study_file(source: str, target: str, constants: dict[str, Any]) -> gullet.StudySummary:
    """One file to another; a repeated task writes the same file anew."""
    folder, name = os.path.split(target)
    # Readers of folders pass over names with a point before them.
    part = os.path.join(folder, f".{name}.{os.getpid()}")
    with pyarrow.parquet.ParquetFile(source) as file:
        rows = pyarrow.RecordBatchReader.from_batches(file.schema_arrow, file.iter_batches())
        stream = gullet.study(rows, threads=1, **constants)
        results = pyarrow.RecordBatchReader.from_stream(stream)
        with pyarrow.parquet.ParquetWriter(part, results.schema) as writer:
            for batch in results:
                writer.write_batch(batch)
    os.replace(part, target)
    return stream.summary


def study_files(client: Client, source: str, target: str, **constants: Any) -> gullet.StudySummary:
    """Every Parquet file of a folder; the totals of all."""
    files = [str(file) for file in sorted(Path(source).rglob("*.parquet"))]
    Path(target).mkdir(parents=True, exist_ok=True)
    targets = [str(Path(target) / f"part-{place:05}.parquet") for place in range(len(files))]
    tasks = client.map(study_file, files, targets, constants=constants)
    total = sum(client.gather(tasks), gullet.StudySummary())
    for left in Path(target).glob(".part-*"):
        # Of a worker that died.
        left.unlink()
    return total


def main() -> None:
    source, target = sys.argv[1:3]
    processes = int(sys.argv[3]) if len(sys.argv) > 3 else 2
    with LocalCluster(n_workers=processes, threads_per_worker=1, dashboard_address=None) as cluster:
        with Client(cluster) as client:
            print(study_files(client, source, target, **CONSTANTS))


if __name__ == "__main__":
    main()
