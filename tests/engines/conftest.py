"""Rows in a partitioned Parquet set, and what one machine makes of them."""

from __future__ import annotations

import os
import signal
import sys
from dataclasses import dataclass
from pathlib import Path

import numpy as np
import pyarrow as pa
import pyarrow.dataset
import pyarrow.parquet
import pytest

import gullet

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "python/examples"))

FILES = 24
ROWS_OF_A_FILE = 100_000


@dataclass
class Rows:
    """Where the rows are, and their results on one machine, in order."""

    path: str
    results: pa.Table
    summary: gullet.StudySummary

    def same_as(self, path: str) -> None:
        """Results that were written somewhere have the same rows, bit by bit, whatever their order."""
        found = in_order(pyarrow.dataset.dataset(path).to_table())
        assert found.num_rows == self.results.num_rows
        for name in self.results.column_names:
            wanted = self.results[name].cast(found[name].type)
            assert found[name].combine_chunks().equals(wanted.combine_chunks()), name


def in_order(table: pa.Table) -> pa.Table:
    text = [
        table[field.name].cast(pa.string()) if pa.types.is_dictionary(field.type) else table[field.name]
        for field in table.schema
    ]
    return pa.table(text, names=table.column_names).sort_by("id")


@pytest.fixture(scope="session")
def rows(tmp_path_factory: pytest.TempPathFactory) -> Rows:
    from study_constants import CONSTANTS

    path = tmp_path_factory.mktemp("rows")
    draw = np.random.default_rng(3)
    for file in range(FILES):
        count = ROWS_OF_A_FILE
        depths = draw.uniform(0.1, 11.0, count)
        widths = pa.array(draw.uniform(-0.05, 6.0, count), mask=draw.random(count) < 0.01)
        table = pa.table({
            "id": np.arange(file * count, (file + 1) * count),
            "part": [f"part {row % 977}" for row in range(count)],
            "axial_depth_mm": depths,
            "radial_depth_mm": widths,
        })  # fmt: skip
        folder = path / f"lot={file % 4}"
        folder.mkdir(exist_ok=True)
        pyarrow.parquet.write_table(table, folder / f"rows-{file}.parquet")
    source = pyarrow.dataset.dataset(path, partitioning=None)
    stream = gullet.study(source.scanner().to_reader(), **CONSTANTS)
    results = in_order(pa.table(stream))
    summary = stream.summary
    assert summary.rows == FILES * ROWS_OF_A_FILE
    assert summary.computed > summary.rows // 4 and summary.errors["missing"] > 1000
    return Rows(str(path), results, summary)


def descendants(pid: int) -> list[int]:
    """Processes below one, by what the system tells."""
    parents: dict[int, list[int]] = {}
    for entry in Path("/proc").iterdir():
        if entry.name.isdecimal():
            try:
                parent = int((entry / "stat").read_text().rpartition(")")[2].split()[1])
            except OSError:
                continue
            parents.setdefault(parent, []).append(int(entry.name))
    found, left = [], [pid]
    while left:
        below = parents.get(left.pop(), [])
        found += below
        left += below
    return found


def command(pid: int) -> str:
    try:
        return Path(f"/proc/{pid}/cmdline").read_text().replace("\0", " ")
    except OSError:
        return ""


def kill(pid: int) -> None:
    os.kill(pid, signal.SIGKILL)
