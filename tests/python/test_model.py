"""What a shop owns, cuts, plans and cards."""

from __future__ import annotations

import copy
import html.parser
import json
import pickle
import warnings

import pytest
from conftest import JOBS, ROOT

import gullet
import gullet._errors
import gullet._model
from gullet import GulletError, GulletWarning, Quantity

PARTS = {
    "material": "6061",
    "blank": {"length": "3 in", "width": "2 in", "height": "1 in"},
    "cutter": gullet.Cutter(
        form="square", material="HSS", diameter="1/2 in", teeth=2,
        flute_length="1 in", stick_out="1.5 in", name="rack <3>",
    ),
    "machine": "manual-knee-mill",
    "hold": gullet.Hold(clamping_force="10 kN", grip_depth="0.5 in", parallels=["1/2 in", "1 in"]),
}
PASS = {"operation": "side-milling", "axial_depth": "0.4 in", "radial_depth": "0.03 in"}


def everything():
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", GulletWarning)
        setup = gullet.setup(**PARTS)
        cut = setup.mill(**PASS)
    job = gullet.job(JOBS[0])
    return [
        gullet.Material("6061"), gullet.Blank(**PARTS["blank"]), PARTS["cutter"], PARTS["hold"],
        gullet.Machine("small-cnc-mill"), gullet.Practice("training"), gullet.Library(),
        setup, cut, cut.settings, cut.consequences, cut.ledger, cut.ledger[0], cut.pass_,
        job, job.plan(), job.card(), job.plan().passes[0].cut, job.plan().passes[0],
    ]


@pytest.mark.parametrize("thing", everything(), ids=lambda thing: type(thing).__name__)
def test_pickle_copy_equal_hash_repr(thing):
    for twin in (pickle.loads(pickle.dumps(thing)), copy.deepcopy(thing), copy.copy(thing)):
        assert twin == thing and hash(twin) == hash(thing) and repr(twin) == repr(thing)
    assert thing != 3 and "0x" not in repr(thing)


class Checker(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.open = []

    def handle_starttag(self, tag, attrs):
        assert tag not in ("script", "iframe", "link") and not any(k.startswith("on") for k, _ in attrs)
        if tag not in ("br", "meta", "img"):
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag


@pytest.mark.parametrize("thing", everything(), ids=lambda thing: type(thing).__name__)
def test_html_is_static_escaped_and_small(thing):
    if not hasattr(thing, "_repr_html_"):
        pytest.skip("printed as text")
    text = thing._repr_html_()
    checker = Checker()
    checker.feed(text)
    assert not checker.open and len(text) < 60_000 and "rack <3>" not in text


def test_sections_through_json():
    for section in (PARTS["cutter"], PARTS["hold"], gullet.Machine("small-cnc-mill"),
                    gullet.Practice("training"), gullet.Material("6061")):
        assert type(section).from_json(section.to_json()) == section
    assert PARTS["cutter"].diameter == Quantity("1/2 in") and PARTS["cutter"].teeth == 2
    assert gullet.Machine("small-cnc-mill", efficiency=0.9).efficiency == 0.9
    own = gullet.Material(name="cast plate", iso513="N", kc11="800 N/mm2", chip_exponent=0.25)
    assert own.kc11.to("N/mm2") == pytest.approx(800)


def test_all_problems_of_a_setup_at_once():
    bad = {**PARTS, "cutter": {"form": "sqare", "teeth": 0}, "machine": "knee", "hold": {}}
    with pytest.raises(GulletError) as caught:
        gullet.mill(**bad, **PASS)
    places = {problem.parameter.split(".")[0] for problem in caught.value.problems}
    assert places == {"cutter", "machine", "hold"}
    with pytest.raises(GulletError) as caught:
        gullet.mill(**PARTS, operation="side-miling", axial_depth=3)
    assert [p.parameter for p in caught.value.problems] == ["operation", "axial_depth", "radial_depth"]


def test_a_cut_tells_limits_steps_data_and_doubts():
    with pytest.warns(GulletWarning):
        cut = gullet.mill(**PARTS, **PASS)
    assert cut.warnings and cut.ledger.binding.share == max(limit.share for limit in cut.ledger)
    assert cut.settings.spindle_speed.kind == "rotational_speed"
    names = {name for name, _ in cut.consequences}
    assert names == {row[0] for row in gullet._gullet.record_fields()[1]}
    steps = [step for step in cut.steps if isinstance(step, gullet.Step)]
    assert len(steps) > 10
    for step in steps:
        assert getattr(gullet.formula, step.formula.name)(**step.arguments) == step.result
    assert set(cut.spread) == {"cutting_speed", "feed_per_tooth", "force", "power", "time"}
    assert json.loads(cut.to_json())["settings"]["table_feed"]["si"] == cut.settings.table_feed.si
    with pytest.raises(AttributeError):
        cut.settings.table_feed = 3


@pytest.mark.parametrize("path", JOBS, ids=lambda path: path.stem)
def test_jobs_plans_and_cards(path):
    job = gullet.job(path)
    assert gullet.Job.from_json(job.to_json()).card().text == job.card().text
    assert gullet.card(str(path)).text == gullet.card(path.read_text()).text
    plan, card = job.plan(), job.card()
    assert len(plan.passes) == len(plan) and plan.passes[-1].left_counts == 0
    assert sum(p.counts for p in plan.passes) == plan.stock_counts
    document = json.loads(card.to_json())
    for row, planned in zip(document["plan"]["passes"], plan.passes, strict=True):
        assert row["depth"]["si"] == planned.depth.si
        for name, value in planned.cut.settings:
            found = row["cut"]["settings"][name]
            assert (None if found is None else found["si"]) == (None if value is None else value.si)
    assert "<script" not in card.html and card.html.startswith("<!")
    assert card.sources and len(card.html_with_steps) > len(card.html)


def test_the_card_is_that_of_the_command():
    import subprocess

    command = ["cargo", "run", "--quiet", "--release", "-p", "gullet-cli", "--", "card", str(JOBS[0])]
    shown = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    assert shown.strip() == gullet.card(JOBS[0]).text.strip()


def test_a_job_from_keywords_and_after_a_measurement():
    job = gullet.Job(**PARTS, operation="side-milling", remove=Quantity(0.12, "in"), axial_depth="0.4 in")
    assert job.plan().stock == Quantity("0.12 in")
    rest = gullet.after_measurement(job, measured="2.050 in", final="2 in")
    assert rest.plan().stock.to("in") == pytest.approx(0.05)
    with pytest.raises(GulletError) as caught:
        gullet.Job(**PARTS, operation="side-milling", remov="1 mm", axial_depth="0.4 in")
    assert "cut.remov" in {problem.parameter for problem in caught.value.problems}


def test_tables_and_overlays():
    library = gullet.Library()
    assert len(library.materials) > 100 and all(row["id"] for row in library.sources)
    speed = gullet.Material("6061").cutting_speed("HSS")
    assert speed.low <= speed.start <= speed.high and speed.support
    feed = gullet.Material("6061").feed_per_tooth("HSS", diameter="1/2 in", axial_depth="0.1 in")
    assert feed.start > Quantity("0 mm")
    with pytest.raises(GulletError, match="tool_material"):
        gullet.Material("6061").cutting_speed("wood")
    with pytest.raises(GulletError) as caught:
        gullet.Library([("mine.csv", "what,is\nthis,table\n")])
    assert "mine.csv" in caught.value.parameter
    header = (ROOT / "reference-data/tables/materials.csv").read_text().splitlines()
    row = next(line for line in header if line.startswith("6061,"))
    mine = gullet.Library([("mine.csv", f"{header[0]}\n{row.replace('6061,', 'plate9,', 1)}\n")])
    material = gullet.Material("plate9", library=mine)
    assert material.id == "plate9" and pickle.loads(pickle.dumps(material)) == material
    assert pickle.loads(pickle.dumps(mine)) == mine != library


def test_help_of_the_package_runs():
    import doctest

    for module in (gullet, gullet.formula, gullet._errors, gullet._units, gullet._model):
        failed, _ = doctest.testmod(module)
        assert not failed, module


def test_the_readme_runs():
    import doctest

    try:
        failed, tried = doctest.testfile(str(ROOT / "README.md"), module_relative=False)
    finally:
        gullet.set_units("metric")
    assert tried >= 5 and not failed


def test_the_readme_shows_the_digits_of_the_command():
    import subprocess

    words = ["spindle_speed", "cutting_speed=90 ft/min", "diameter=1/2 in", "--unit", "rpm"]
    command = ["cargo", "run", "--quiet", "--release", "-p", "gullet-cli", "--", "evaluate", *words]
    shown = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout
    speed = gullet.formula.spindle_speed(cutting_speed="90 ft/min", diameter="1/2 in")
    assert float(shown) == speed.to("rpm")


def test_cuts_and_parts_are_told_in_the_units_given():
    with pytest.raises(GulletError) as caught:
        gullet.Cutter(form="square", material="HSS", diameter="1/2 in", teeth=2,
                      flute_length="-1 in", stick_out="1.5 in")
    assert caught.value.value == "-1 in" and "in" in caught.value.admissible
    setup = gullet.setup(**PARTS)
    with pytest.raises(GulletError) as caught:
        setup.mill(operation="side-milling", axial_depth="0.4 in", radial_depth="0.6 in")
    assert caught.value.value == "0.6 in" and "0.5 in" in caught.value.admissible
    with pytest.raises(GulletError) as caught:
        setup.mill(operation="side-milling", axial_depth="0.4 in")
    assert caught.value.admissible == "above 0 in"
    metric = gullet.setup(**{**PARTS, "blank": {"length": "80 mm", "width": "50 mm", "height": "25 mm"},
                             "cutter": {"form": "square", "material": "HSS", "diameter": "12 mm", "teeth": 2,
                                        "flute_length": "25 mm", "stick_out": "40 mm"},
                             "hold": {"clamping_force": "10 kN", "grip_depth": "12 mm"}})
    with pytest.raises(GulletError) as caught:
        metric.mill(operation="side-milling", axial_depth="10 mm", radial_depth="13 mm")
    assert caught.value.value == "13 mm" and "12 mm" in caught.value.admissible


def test_a_cut_is_the_same_with_and_without_its_words():
    setup = gullet.setup(**PARTS)
    plain, told = setup.mill(**PASS, warn_of_doubts=False), setup.mill(**PASS, warn_of_doubts=False)
    assert told.steps and told.ledger and told == plain and hash(told) == hash(plain)
    assert plain.ledger == told.ledger and plain.to_json() == told.to_json()


def test_setups_and_plans_through_json():
    setup = gullet.setup(**PARTS)
    again = gullet.Setup.from_json(setup.to_json())
    assert again == setup and again.mill(**PASS, warn_of_doubts=False) == setup.mill(**PASS, warn_of_doubts=False)
    for bad, code in (("{", "syntax"), ("[]", "wrong_type"), ("{}", "wrong_type"), ('{"cuter": {}}', "wrong_type")):
        with pytest.raises(GulletError) as caught:
            gullet.Setup.from_json(bad)
        assert caught.value.code == code and caught.value.remedy
    plan = gullet.job(JOBS[0]).plan()
    written = json.loads(plan.to_json())
    assert [row["depth"]["si"] for row in written["passes"]] == [p.depth.si for p in plan.passes]
