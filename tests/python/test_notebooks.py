"""The course notebooks run, and show what their files show. Run as a script to store results."""

from __future__ import annotations

import sys
from pathlib import Path

import nbformat
import pytest
from nbclient import NotebookClient

BOOKS = sorted((Path(__file__).resolve().parents[2] / "python/notebooks").glob("*.ipynb"))


def executed(path: Path) -> nbformat.NotebookNode:
    book = nbformat.read(path, as_version=4)
    client = NotebookClient(book, timeout=120, resources={"metadata": {"path": str(path.parent)}})
    client.execute()
    for cell in book.cells:
        cell.metadata = {}
    return book


def outputs(book: nbformat.NotebookNode) -> list:
    return [cell.outputs for cell in book.cells if cell.cell_type == "code"]


@pytest.mark.parametrize("path", BOOKS, ids=lambda path: path.stem)
def test_runs_and_shows_what_is_stored(path):
    stored = nbformat.read(path, as_version=4)
    assert any(outputs(stored)) and path.stat().st_size < 60_000
    assert outputs(executed(path)) == outputs(stored)


def test_there_are_three():
    assert len(BOOKS) == 3


if __name__ == "__main__":
    for path in BOOKS:
        nbformat.write(executed(path), path)
        print(path.name, path.stat().st_size, file=sys.stderr)
