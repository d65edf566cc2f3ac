"""Routes: the cards of the example routes, and what is left after a measurement."""

from __future__ import annotations

import json
import pickle

import pytest
from conftest import ROOT, ROUTES

import gullet
from gullet import GulletError


@pytest.mark.parametrize("path", ROUTES, ids=lambda path: path.stem)
def test_a_route_has_the_card_that_is_kept(path):
    route = gullet.card(path)
    assert isinstance(route, gullet.Route) and route == gullet.route(path.read_text())
    assert route.text == (ROOT / f"tests/golden/{path.stem}.txt").read_text()
    assert len(route.faces) == 6 and route.html.startswith("<!")
    document = json.loads(route.to_json())
    assert [row["face"] for row in document["clampings"]] == route.faces
    assert document["time"]["total"]["si"] == route.time.si
    assert pickle.loads(pickle.dumps(route)) == route


def test_what_is_left_after_a_measurement():
    route = gullet.route(ROUTES[0])
    before = json.loads(route.to_json())["clampings"][3]
    rest = route.measured(route.faces[0], gullet.Quantity("30.9 mm"))
    assert rest.faces == route.faces[1:] and rest.time < route.time
    after = json.loads(rest.to_json())["clampings"][2]
    assert before["face"] == after["face"] == "bottom"
    assert after["stock"]["si"] == pytest.approx(0.0309 - 0.0295)
    assert pickle.loads(pickle.dumps(rest)) == rest != route
    for face, size, code in (
        ("top", "29 mm", "inconsistent"),
        ("tap", "30 mm", "unknown_name"),
        ("top", "30", "unit_missing"),
    ):
        with pytest.raises(GulletError) as caught:
            route.measured(face, size)
        assert caught.value.problems[0].code == code
