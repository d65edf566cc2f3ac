"""The catalogues of bad input, with the same code, parameter and words as in Rust."""

from __future__ import annotations

import json

import pytest
from conftest import ROOT, rows

import gullet
from gullet import GulletError

ROWS = rows("tests/data/bad_input.csv")
JOBS = rows("tests/data/bad_jobs.csv")
GOOD = (ROOT / "tests/data/good_job.toml").read_text()


def call(row):
    if row["entry"] == "quantity":
        return gullet.Quantity(row["input"], kind=row["subject"])
    pairs = [part.partition("=") for part in row["input"].split(";") if part.strip()]
    given = {}
    for name, sign, value in pairs:
        if not sign or name.strip() in given:
            pytest.skip("a form of text that keywords cannot take")
        given[name.strip()] = value.strip()
    return gullet.evaluate(row["subject"], **given)


def test_there_are_enough():
    assert len(ROWS) >= 200


@pytest.mark.parametrize("row", ROWS, ids=[row["id"] for row in ROWS])
def test_quantities_and_formulas(row):
    with pytest.raises(GulletError) as caught:
        call(row)
    error = caught.value
    assert error.code == row["code"], error
    assert (error.parameter, error.value) == (row["parameter"], row["value"])
    assert len(error.problems) == int(row["problems"])
    assert row["text"] in str(error)
    assert all(problem.remedy and problem.admissible for problem in error.problems)


def edited(edits: str) -> str:
    """Applies the edits of a row as tests/job_files.rs does."""
    if edits.startswith("raw:"):
        text = edits.removeprefix("raw: ").removeprefix("raw:")
        return text.replace("\\n", "\n").replace("\\r", "\r").replace("\\u0000", "\0")
    lines = GOOD.splitlines()

    def bounds(section):
        start = 0 if not section else 1 + lines.index(f"[{section}]")
        end = next((i for i in range(start, len(lines)) if lines[i].startswith("[")), len(lines))
        return start, end

    for edit in edits.split(" && "):
        remove = edit.startswith("- ")
        edit = edit.removeprefix("- ")
        if edit.startswith("["):
            name = edit[1:-1]
            if remove:
                start, end = bounds(name)
                del lines[start - 1 : end]
            else:
                lines.append(edit)
            continue
        path, _, value = edit.partition(" = ")
        section, _, key = path.rpartition(".")
        if not remove and section and f"[{section}]" not in lines:
            lines.append(f"[{section}]")
        start, end = bounds(section)
        at = [i for i in range(start, end) if lines[i].split(" = ")[0] == key]
        if remove:
            del lines[at[0]]
        elif at:
            lines[at[0]] = f"{key} = {value}"
        else:
            last = end
            while last > start and not lines[last - 1].strip():
                last -= 1
            lines.insert(last, f"{key} = {value}")
    return "\n".join(lines) + "\n"


@pytest.mark.parametrize("row", JOBS, ids=[row["id"] for row in JOBS])
def test_jobs(row):
    with pytest.raises(GulletError) as caught:
        gullet.Job.from_toml(edited(row["edits"]))
    problems = caught.value.problems
    assert len(problems) == int(row["problems"]), caught.value
    # Lines depend on where an edit puts its key.
    words = "" if "(line" in row["text"] else row["text"]
    assert any(
        (problem.code, problem.parameter) == (row["code"], row["parameter"])
        and words in problem.text
        for problem in problems
    ), caught.value


def test_json_jobs_are_told_alike():
    job = json.loads((ROOT / "tests/data/good_job.json").read_text())
    job["cutter"]["teath"] = job["cutter"].pop("teeth")
    with pytest.raises(GulletError) as caught:
        gullet.job(job)
    assert [p.parameter for p in caught.value.problems] == ["cutter.teath", "cutter.teeth"]
