"""The installed package alone: its examples and a card of every job file. Run by a clean Python."""

from __future__ import annotations

import doctest
import importlib.util
import runpy
import sys
from pathlib import Path

import gullet
import gullet._errors
import gullet._model
import gullet._types
import gullet._units


def main() -> None:
    here = Path(__file__).resolve().parent
    home = Path(gullet.__file__).resolve()
    assert home.is_relative_to(Path(sys.prefix).resolve()), home
    assert (home.parent / "py.typed").is_file() and (home.parent / "_gullet.pyi").is_file()
    runpy.run_path(str(here / "example.py"), run_name="__main__")
    folder = here.parents[1] / "crates/gullet-cli/jobs"
    jobs, parts = sorted(folder.glob("*.toml")), sorted(folder.glob("parts/*.toml"))
    assert jobs and parts
    for job in jobs:
        assert gullet.card(job).text and len(gullet.plan(job).to_table()) > 0
    for part in parts:
        assert len(gullet.card(part).lots) > 0
    examples = 0
    if importlib.util.find_spec("numpy"):
        for module in (gullet, gullet.formula, gullet._errors, gullet._model, gullet._types, gullet._units):
            failed, count = doctest.testmod(module)
            assert not failed, module
            examples += count
    print(f"installed: {len(jobs)} cards, {examples} examples", file=sys.stderr)


if __name__ == "__main__":
    main()
