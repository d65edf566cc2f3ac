"""Operations from Python: listing, cuts, bad input, displays; and parts made by several of them."""

from __future__ import annotations

import copy
import inspect
import json
import math
import pickle
import re
import warnings

import pytest
from conftest import ROOT

import gullet
from gullet import GulletError

OPERATIONS = gullet.operations()
HOLE = dict(material="1018", machine="small-cnc-mill", practice="experienced", warn_of_doubts=False)


def example(operation: gullet.Operation, **more) -> gullet.OperationCut:
    shop = operation.example
    return gullet.operate(
        operation.name, material=shop.material, tool=shop.tool, machine=shop.machine, practice="experienced",
        warn_of_doubts=False, **{**shop.inputs, **more},
    )  # fmt: skip


def drilled(**inputs) -> gullet.OperationCut:
    return gullet.operate("drilling", **HOLE, **inputs)


def problems(call, *args, **keywords) -> list[tuple[str, str]]:
    with pytest.raises(GulletError) as caught:
        call(*args, **keywords)
    return [(problem.code, problem.parameter) for problem in caught.value.problems]


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_every_operation_runs_its_example(operation):
    cut = example(operation)
    assert cut.operation == operation.name
    assert cut["time"].kind == "time" and cut["time"].si > 0
    assert cut["spindle_speed"] == cut.settings.spindle_speed == cut.settings["spindle_speed"]
    assert len(cut.ledger) > 3 and not any(limit.exceeded for limit in cut.ledger)
    assert cut.binding == cut.ledger.binding and cut.steps and cut.data and cut.cautions
    told = {**cut.settings.to_dict(), **cut.results.to_dict()}
    assert [row.name for row in operation.results] == list(told)
    for row in operation.results:
        value = told[row.name]
        assert (value is None) <= row.optional
        assert value is None or (math.isfinite(value.si) and value.kind == row.kind)
        assert value == cut[row.name]
    for name, text in operation.example.inputs.items():
        words = {row.name: row.words for row in operation.inputs}[name]
        assert cut.inputs[name] == (text if words else gullet.Quantity(text, kind=cut.inputs[name].kind))
    for band in cut.spread.values():
        assert band.low is None or band.high is None or band.low <= band.high
    # The same again, from what was taken and from a pickle.
    again = example(operation, **{name: value for name, value in cut.inputs if value is not None})
    assert again == cut and hash(again) == hash(cut)
    for other in (pickle.loads(pickle.dumps(cut)), copy.deepcopy(cut)):
        assert other == cut and other.ledger == cut.ledger and other.results == cut.results
    document = json.loads(cut.to_json())
    assert document["operation"] == operation.name
    assert document["results"]["time"]["si"] == cut["time"].si
    assert len(document["limits"]) == len(cut.ledger) and len(document["steps"]) == len(cut.steps)


@pytest.mark.parametrize("operation", OPERATIONS, ids=lambda operation: operation.name)
def test_the_listing_says_what_an_operation_takes(operation):
    taken = {name for name in inspect.signature(gullet.operate).parameters}
    names = [row.name for row in operation.inputs]
    assert not taken & set(names) and len(set(names)) == len(names)
    assert operation.title and operation.meaning.endswith(".")
    assert [row.name for row in operation.inputs if row.required]
    for row in operation.inputs:
        assert row.meaning and row.admissible
        assert bool(row.words) == (row.kind == "choice")
        if row.words:
            assert row.default in row.words
        elif row.default is not None:
            gullet.Quantity(row.default, kind=row.kind)
    assert operation.name in str(operation) and all(name.replace("_", " ") in operation._repr_html_() for name in names)
    # What must be given is told where it is not.
    missing = problems(
        gullet.operate, operation.name, material="1018", machine=operation.example.machine, tool=operation.example.tool
    )
    assert missing == [("missing", row.name) for row in operation.inputs if row.required]


def test_the_list_of_operations():
    assert OPERATIONS.named("drilling") in OPERATIONS and OPERATIONS[0].name in repr(OPERATIONS)
    assert all(operation.name.replace("_", " ") in OPERATIONS._repr_html_() for operation in OPERATIONS)
    assert problems(OPERATIONS.named, "driling") == [("unknown_name", "operation")]
    with gullet.units("inch"):
        assert gullet.operations().named("drilling").inputs[0].unit == "in"


def test_a_hole_by_hand():
    cut = drilled(diameter="10 mm", depth="20 mm", spindle_speed="500 rpm", feed="0.1 mm")
    # v_c = pi D n, v_f = f n, Q = pi/4 D^2 v_f, t = travel over v_f for the feed: own arithmetic.
    assert cut["cutting_speed"].si == pytest.approx(math.pi * 0.01 * 500 / 60, rel=1e-12)
    assert cut["feed_speed"].to("mm/min") == pytest.approx(50.0, rel=1e-12)
    assert cut["removal_rate"].si == pytest.approx(math.pi / 4 * 0.01**2 * 0.05 / 60, rel=1e-12)
    assert cut["feed_time"].si == pytest.approx(cut["travel"].si / (0.05 / 60), rel=1e-12)
    power = 2 * math.pi * cut["spindle_speed"].to("rpm") / 60 * cut["torque"].to("N.m")
    assert cut["cutting_power"].si == pytest.approx(power, rel=1e-12)
    assert cut.held_by is None and cut.adjustments == ()


def test_what_is_lowered_is_told():
    with pytest.warns(gullet.GulletWarning, match="lowered") as told:
        cut = gullet.operate(
            "drilling", material="1018", machine="small-cnc-mill", practice="experienced",
            diameter="20 mm", depth="20 mm", feed="0.3 mm",
        )  # fmt: skip
    assert told[0].filename == __file__
    (adjustment,) = [row for row in cut.adjustments if row.setting == "feed"]
    assert cut.held_by == adjustment.limit and adjustment.after == cut["feed"] < adjustment.before
    assert any("lowered" in doubt.text and doubt.code == "lowered" for doubt in cut.warnings)


class Foreign:
    """A quantity of a units library: 8.5 mm."""

    units = "mm"
    magnitude = 8.5

    def m_as(self, unit: str) -> float:
        return {"m": 0.0085}[unit]


def test_inputs_and_parts_of_every_sort():
    wanted = drilled(diameter="8.5 mm", depth="22 mm", hole="blind")
    assert drilled(diameter=gullet.Quantity(8.5, "mm"), depth=gullet.Quantity("22 mm"), hole=" Blind ", peck=None) == wanted
    assert drilled(diameter=Foreign(), depth="22 mm", hole="blind") == wanted
    objects = dict(
        material=gullet.Material("1018"), machine=gullet.Machine("small-cnc-mill"), practice=gullet.Practice("experienced")
    )
    inputs = dict(diameter="8.5 mm", depth="22 mm", hole="blind", warn_of_doubts=False)
    assert gullet.operate("drilling", **objects, **inputs) == wanted
    weak = gullet.operate("drilling", **{**objects, "machine": {"base": "small-cnc-mill", "motor_power": "0.4 kW"}}, **inputs)
    assert weak["available_power"] < wanted["available_power"]
    own = "id,class,tool_material,process,sfm_start,src\no1,1018,HSS,drilling,40,trial\n"
    library = gullet.Library([("own.csv", own)])
    slow = gullet.operate("drilling", **HOLE, library=library, diameter="8.5 mm", depth="22 mm", hole="blind")
    assert slow["cutting_speed"].to("ft/min") <= 40 * (1 + 1e-9) < wanted["cutting_speed"].to("ft/min")
    assert pickle.loads(pickle.dumps(slow)) == slow


def test_bad_input_is_told_at_once():
    assert problems(drilled, diameter=8.5, depth="22 mm") == [("unit_missing", "diameter")]
    assert problems(drilled, diameter="8.5 mm", dept="22 mm") == [("unknown_name", "drilling"), ("missing", "depth")]
    assert problems(drilled, diameter="8.5 mm", depth=["1 mm", "2 mm"]) == [("wrong_type", "depth")]
    assert problems(drilled, diameter="8.5 mm", depth="2 rpm") == [("unit_unknown", "depth")]
    assert problems(drilled, diameter="-1 mm", depth="2 mm") == [("out_of_range", "diameter")]
    assert problems(drilled, diameter="1 mm", depth="2 mm", hole="thru") == [("unknown_name", "hole")]
    assert problems(drilled, diameter="1 mm", depth="2 mm", hole=1) == [("wrong_type", "hole")]
    assert problems(drilled, diameter="1 mm", depth="2 mm", hole=b"blind") == [("wrong_type", "hole")]
    assert problems(drilled, diameter="\ud800", depth="2 mm") == [("number_unreadable", "diameter")]
    assert problems(drilled, diameter="5 mm", depth="500 mm") == [("limit_exceeded", "depth_ratio")]
    found = problems(
        gullet.operate, "drilling", material="10 18x", machine="small-cnc-mil", practice={"power_share": 3}, tool="wood",
        diameter="9 mm", depth=2, hole="thru",
    )  # fmt: skip
    assert [parameter for _, parameter in found] == ["material.id", "machine.base", "practice.power_share", "tool", "depth", "hole"]
    assert problems(gullet.operate, "driling", material="1018", machine="small-cnc-mill") == [("unknown_name", "operation")]
    with pytest.raises(GulletError, match=r"did you mean diameter\?"):
        drilled(diamter="8 mm", depth="9 mm")
    with pytest.raises(GulletError, match="in"):
        drilled(diameter="1/4 in", depth="-1 in")
    with pytest.raises(TypeError):
        gullet.operate("drilling", "1018", machine="small-cnc-mill")
    cut = drilled(diameter="8.5 mm", depth="22 mm")
    with pytest.raises(KeyError, match=r"did you mean time\?"):
        cut["tim"]
    for change in (lambda: setattr(cut, "settings", None), lambda: setattr(cut.results, "time", None)):
        with pytest.raises(AttributeError):
            change()


def test_displays_follow_the_units():
    cut = drilled(diameter="8.5 mm", depth="22 mm")
    assert repr(cut).startswith("<OperationCut drilling: ") and "0x" not in repr(cut)
    assert "8.5 mm" in cut.text and str(cut) == cut.text
    assert cut.html.startswith("<!DOCTYPE html>") and "Worked steps" in cut.html_with_steps
    assert "Worked steps" not in cut.html and cut.sources
    with gullet.units("inch"):
        assert " in" in repr(cut) and "0.3346 in" in cut.text and not re.search(r"\d mm\b", cut.text.split("Look out")[0])
        assert json.loads(cut.to_json())["units"] == "inch"
        assert cut["feed"] == drilled(diameter="8.5 mm", depth="22 mm")["feed"]
    page = cut._repr_html_()
    assert page.count("<table>") == 4 and "<script" not in page and "http" not in page
    for shown in (cut.inputs, cut.settings, cut.results):
        assert pickle.loads(pickle.dumps(shown)) == shown and type(shown).__name__ in repr(shown)
        assert 'title="' in shown._repr_html_()
    assert cut.setup["machine"].startswith("small CNC mill") and cut.inputs.hole == "through" and cut.inputs.peck is None


POST = ROOT / "crates/gullet-cli/jobs/parts/tailstock_post.toml"


def test_a_part_made_by_several_operations():
    card = gullet.card(POST)
    assert isinstance(card, gullet.PartCard) and card == gullet.card(POST.read_text()) == gullet.card(card)
    assert card.text.startswith("PART  Tailstock post") and str(card) == card.text
    assert all(entry.machine and entry.name in card.text for entry in card.entries)
    assert card.html.startswith("<!DOCTYPE html>") and len(card.html_with_steps) > len(card.html)
    assert len(card.text_with_steps) > len(card.text) and "<pre>" in card._repr_html_()
    assert sum(part.si for part in card.times.values()) == pytest.approx(card.time.si, rel=1e-12)
    assert sum(entry.time.si for entry in card.entries) == pytest.approx(card.time.si, rel=1e-12)
    assert [lot.size for lot in card.lots] == [1, 10, 100]
    for lot in card.lots:
        assert sum(entry.time.si for entry in lot.entries) == pytest.approx(lot.time_per_part.si, rel=1e-12)
        costs = sum(entry.cost.si for entry in lot.entries) + lot.material_cost.si
        assert costs == pytest.approx(lot.cost_per_part.si, rel=1e-12)
    # A lot of one takes what a single part takes; the set-up of a larger one is shared.
    single, _, many = card.lots
    assert single.time_per_part.si == pytest.approx(card.time.si, rel=1e-12)
    saved = card.times["setup"].si * (1 - 1 / many.size)
    assert single.time_per_part.si - many.time_per_part.si == pytest.approx(saved, rel=1e-12)
    assert card.cautions and card.title in repr(card) and card.units == "metric"
    document = json.loads(card.to_json())
    assert document["lots"][0]["cost_per_part"] == single.cost_per_part.si
    assert pickle.loads(pickle.dumps(card)) == card and hash(card) == hash(gullet.card(POST))


def test_a_bad_part_is_told_with_its_place():
    text = POST.read_text().replace('diameter = "6.8 mm"', 'diameter = "68"', 1).replace('id = "1018"', 'id = "10 18x"')
    with pytest.raises(GulletError) as caught:
        gullet.card(text)
    told = [(problem.code, problem.parameter) for problem in caught.value.problems]
    assert ("unit_missing", "operation[3].diameter") in told and any("material" in name for _, name in told)


def test_doubts_are_told_once_and_can_be_left_out():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        drilled(diameter="8.5 mm", depth="22 mm")
