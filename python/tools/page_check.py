"""Opens a notebook in JupyterLab in a real browser, runs it and looks at what it shows.

Run with the package, jupyterlab and playwright installed and a Chromium at hand:
``python python/tools/page_check.py [FOLDER]``; the pictures go to FOLDER, else to target/page.
"""

from __future__ import annotations

import json
import os
import shutil
import socket
import subprocess
import sys
import tempfile
import time
import urllib.request
from pathlib import Path

from playwright.sync_api import sync_playwright

ROOT = Path(__file__).resolve().parents[2]
QUIET = {"@jupyterlab/apputils-extension:notification": {"fetchNews": "false", "checkForUpdates": False}}
FLAGS = [
    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
]
# A quantity, a Cut, its ledger and a worked step.
CELLS = [
    'import gullet\ngullet.set_units("inch")\ngullet.Quantity("12.7 mm")',
    'cut = gullet.job("JOB").plan().passes[0].cut\ncut',
    "cut.ledger",
    'gullet.explain("spindle_speed", cutting_speed="90 ft/min", diameter="1/2 in")',
]
WANTED = ["0.5 in", "settings", "spindle speed", "consequences", "bound", "Spindle speed that gives"]


def notebook() -> dict:
    job = ROOT / "crates/gullet-cli/jobs/bearing_bracket.toml"
    cells = [
        {"cell_type": "code", "id": f"c{i}", "execution_count": None, "metadata": {}, "outputs": [],
         "source": source.replace("JOB", str(job))}
        for i, source in enumerate(CELLS)
    ]
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    return {"nbformat": 4, "nbformat_minor": 5, "metadata": {"kernelspec": kernel}, "cells": cells}


def sessions(base: str) -> list:
    with urllib.request.urlopen(f"{base}/api/sessions", timeout=5) as answer:
        return json.load(answer)


def wait(what: str, done, seconds: float = 60) -> None:
    end = time.time() + seconds
    while time.time() < end:
        try:
            if done():
                return
        except OSError:
            pass
        time.sleep(0.3)
    raise SystemExit(f"waited in vain for {what}")


def main() -> None:
    pictures = Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "target/page"
    pictures.mkdir(parents=True, exist_ok=True)
    chromium = shutil.which("chromium") or shutil.which("chromium-browser")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    base = f"http://127.0.0.1:{port}"
    with tempfile.TemporaryDirectory() as folder:
        (Path(folder) / "check.ipynb").write_text(json.dumps(notebook()))
        settings = Path(folder) / "settings"
        settings.mkdir()
        (settings / "overrides.json").write_text(json.dumps(QUIET))
        command = [
            sys.executable, "-m", "jupyterlab", "--no-browser", f"--port={port}", "--allow-root",
            "--ServerApp.ip=127.0.0.1", "--IdentityProvider.token=", f"--ServerApp.root_dir={folder}",
            f"--LabApp.app_settings_dir={settings}",
        ]
        environment = {**os.environ, "HOME": folder}
        server = subprocess.Popen(command, env=environment, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        try:
            wait("the server", lambda: sessions(base) is not None)
            with sync_playwright() as play:
                browser = play.chromium.launch(executable_path=chromium, args=FLAGS)
                page = browser.new_page(viewport={"width": 1400, "height": 3200})
                outside: list[str] = []
                page.on("request", lambda r: r.url.startswith(("http", "ws")) and f":{port}/" not in r.url and outside.append(r.url))
                page.goto(f"{base}/lab/tree/check.ipynb")
                page.wait_for_selector(".jp-Notebook", timeout=60_000)
                time.sleep(2)
                if page.locator(".jp-Dialog .jp-mod-accept").count():
                    page.locator(".jp-Dialog .jp-mod-accept").first.click()
                wait("the kernel", lambda: any(s["kernel"]["execution_state"] == "idle" for s in sessions(base)))
                page.click("text=Run >> nth=0")
                page.click("li.lm-Menu-item[data-command='runmenu:run-all']")
                page.wait_for_selector(".jp-OutputArea-output mjx-container", timeout=60_000)
                time.sleep(2)
                shown = page.locator(".jp-Notebook").inner_text()
                errors = page.locator("[data-mime-type='application/vnd.jupyter.error'], .jp-RenderedText[data-mime-type*='stderr']").count()
                page.screenshot(path=str(pictures / "notebook.png"))
                browser.close()
        finally:
            server.terminate()
            server.wait(20)
    missing = [text for text in WANTED if text not in shown]
    assert not missing, f"the page does not show {missing}"
    assert not errors, f"{errors} errors on the page"
    assert not outside, f"the page asks outside: {outside}"
    print(f"the page shows everything: {pictures / 'notebook.png'}")


if __name__ == "__main__":
    main()
