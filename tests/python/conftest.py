"""What the tests share."""

from __future__ import annotations

import csv
import os
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
JOBS = sorted((ROOT / "crates/gullet-cli/jobs").glob("*.toml"))
ROUTES = sorted((ROOT / "crates/gullet-cli/jobs/routes").glob("*.toml"))


def rows(path: str) -> list[dict[str, str]]:
    with open(ROOT / path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def arguments(text: str) -> dict[str, str]:
    """``a=1 mm; b=2`` as keywords."""
    pairs = (part.split("=", 1) for part in text.split(";") if part.strip())
    return {name.strip(): value.strip() for name, value in pairs}


@pytest.fixture(scope="session")
def parity_rows(tmp_path_factory: pytest.TempPathFactory):
    """Runs the core's writer of random rows."""
    folder = tmp_path_factory.mktemp("parity")
    build = ["cargo", "build", "--quiet", "--profile", "c", "-p", "gullet-c", "--example", "parity_rows"]
    subprocess.run(build, cwd=ROOT, check=True)
    target = Path(os.environ.get("CARGO_TARGET_DIR", ROOT / "target"))
    writer = target / "c/examples/parity_rows"

    def write(what: str, count: int) -> Path:
        path = folder / what
        subprocess.run([writer, what, str(count), path], check=True)
        return path

    return write
