"""Importing is quick and brings nothing heavy."""

from __future__ import annotations

import subprocess
import sys
import time

import gullet


def test_version_and_codes():
    assert gullet.__version__.count(".") == 2
    assert dict(gullet.codes())["out_of_range"] == 10


def test_import_brings_no_arrays_and_no_plots():
    code = "import sys, gullet; gullet.card(sys.argv[1]); print('numpy' in sys.modules)"
    job = "crates/gullet-cli/jobs/bearing_bracket.toml"
    from conftest import ROOT

    done = subprocess.run([sys.executable, "-c", code, job], capture_output=True, text=True, cwd=ROOT)
    assert done.stdout == "False\n", done.stderr


def test_everything_named_is_there():
    assert all(hasattr(gullet, name) for name in gullet.__all__)


def test_time_of_import():
    code = "import time; s = time.perf_counter(); import gullet; print(time.perf_counter() - s)"
    times = []
    for _ in range(7):
        done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
        times.append(float(done.stdout))
        time.sleep(0.05)
    # The bench holds the goal; here only a slip by a multiple, on a busy machine, counts.
    assert min(times) < 0.1, times
