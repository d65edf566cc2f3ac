"""Stubs against the package and the checkers against the stubs."""

from __future__ import annotations

import json
import subprocess
import sys

from conftest import ROOT

HERE = ROOT / "tests/python"


def run(*words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run([sys.executable, *words], capture_output=True, text=True, cwd=ROOT)


def test_stubs_are_those_of_the_catalogue():
    done = run("python/tools/generate_stubs.py", "--check")
    assert done.returncode == 0, done.stdout + done.stderr


def test_stubtest():
    done = run("-m", "mypy.stubtest", "gullet", "--ignore-disjoint-bases")
    assert done.returncode == 0, done.stdout


def test_checkers_pass_the_example_and_find_the_wrong_one():
    strict = ("-m", "mypy", "--strict", "--cache-dir=/dev/null")
    done = run(*strict, str(HERE / "example.py"))
    assert done.returncode == 0, done.stdout
    done = run(*strict, str(HERE / "wrong_example.py"))
    assert done.stdout.count("error:") >= 3, done.stdout


def test_a_second_checker_agrees(tmp_path):
    settings = {"typeCheckingMode": "strict", "include": [str(HERE / "example.py"), str(HERE / "wrong_example.py")]}
    (tmp_path / "pyrightconfig.json").write_text(json.dumps(settings))
    done = run("-m", "basedpyright", "--outputjson", "--pythonpath", sys.executable, "--project", str(tmp_path))
    found = json.loads(done.stdout)["generalDiagnostics"]
    lines = {name: [d["message"] for d in found if d["file"].endswith(name)] for name in ("/example.py", "/wrong_example.py")}
    assert lines["/example.py"] == []
    assert len(lines["/wrong_example.py"]) >= 3, found


def test_the_example_runs():
    done = run(str(HERE / "example.py"))
    assert done.returncode == 0 and done.stdout.startswith("687.5 rpm\n"), done.stdout + done.stderr
