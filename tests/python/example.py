"""A small use of the package, checked by type checkers and run by the tests."""

from __future__ import annotations

import gullet

speed = gullet.formula.spindle_speed(cutting_speed="90 ft/min", diameter="1/2 in")
rpm: float = speed.to("rpm")
step: gullet.Step = gullet.explain("spindle_speed", cutting_speed="90 ft/min", diameter="1/2 in")

cutter = gullet.Cutter(
    form="square",
    material="HSS",
    diameter="1/2 in",
    teeth=2,
    flute_length="1 in",
    stick_out="1.5 in",
)
setup = gullet.setup(
    material="6061",
    blank={"length": "3 in", "width": "2 in", "height": "1 in"},
    cutter=cutter,
    machine="manual-knee-mill",
    hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
)
cut = setup.mill(
    operation="side-milling", axial_depth="0.4 in", radial_depth="0.03 in", warn_of_doubts=False
)
feed: gullet.Quantity = cut.settings.table_feed
wheel: gullet.Quantity | None = cut.settings.handwheel_rate
limit: gullet.Limit | None = cut.ledger.binding
diameter: gullet.Quantity = cutter.diameter
feeds: gullet.Table = gullet.Library().table("feeds", units="inch")
units: list[str | None] = [column.unit for column in feeds.columns]
ledger: gullet.Table = cut.ledger.to_table(units="metric")
study: gullet.Study = gullet.study(
    {"radial_depth_in": [0.02, 0.03]},
    columns=["time"],
    material="6061",
    machine=gullet.Machine("manual-knee-mill"),
    operation="side-milling",
    axial_depth="0.4 in",
    cutter=cutter,
    blank={"length": "3 in", "width": "2 in", "height": "1 in"},
    hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
)
computed: int = study.summary.computed
hole: gullet.OperationCut = gullet.operate(
    "drilling",
    material="1018",
    machine="small-cnc-mill",
    practice="experienced",
    diameter="8.5 mm",
    depth=gullet.Quantity(22, "mm"),
    warn_of_doubts=False,
)
time: gullet.Quantity | None = hole["time"]
thrust: gullet.Quantity = hole.results.thrust
nearest: gullet.Limit | None = hole.binding
needed: list[str] = [row.name for row in gullet.operations().named("drilling").inputs if row.required]

if __name__ == "__main__":
    print(f"{speed:rpm}")
    print(step.text)
    print(cut)
    print(limit)
