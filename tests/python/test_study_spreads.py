"""Quantiles of what is drawn: beside their results, the same however the rows come."""

import gullet
import pytest

COMMON = dict(
    columns=["time", "mean_tangential_force"],
    material="6061", machine="small-cnc-mill", operation="side-milling",
    axial_depth="6 mm", length="80 mm", part_height="25 mm",
    cutter_form="square", cutter_material="HSS", cutter_diameter="12 mm", cutter_teeth=2,
    cutter_flute_length="25 mm", cutter_stick_out="35 mm",
    clamping_force="10 kN", grip_depth="15 mm",
)  # fmt: skip
DRAWN = dict(spreads={"cutting_force": "0.9..1.2"}, draws=2000, seed=7, quantiles=[0.0, 0.5, 1.0])
DEPTHS = [0.2 + 0.01 * i for i in range(40)]


def column(study, name):
    return list(study[name])


def test_quantiles_lie_in_the_spread():
    study = gullet.study({"radial_depth_mm": DEPTHS}, **COMMON, **DRAWN)
    force = column(study, "mean_tangential_force_n")
    for share, low, high in [(0, 0.9, 0.901), (50, 1.03, 1.07), (100, 1.199, 1.2)]:
        drawn = column(study, f"mean_tangential_force_p{share}_n")
        for nominal, value in zip(force, drawn):
            assert low * (1 - 1e-12) <= value / nominal <= high * (1 + 1e-12)
    # The time does not go with the force.
    assert column(study, "time_p0_s") == column(study, "time_p100_s") == column(study, "time_s")
    assert column(study, "draws_left_out") == [0] * len(DEPTHS)


def test_batches_and_threads_draw_alike():
    whole = gullet.study({"radial_depth_mm": DEPTHS}, **COMMON, **DRAWN, threads=2)
    batches = [{"radial_depth_mm": DEPTHS[:13]}, {"radial_depth_mm": DEPTHS[13:]}]
    name = "mean_tangential_force_p50_n"
    first, second = gullet.study_batches(batches, **COMMON, **DRAWN)
    assert column(first, name) == column(whole, name)[:13]
    assert column(second, name) == column(whole, name)[13:]
    other = gullet.study({"radial_depth_mm": DEPTHS}, **COMMON, **{**DRAWN, "seed": 8})
    assert column(other, name) != column(whole, name)


def test_partitions_draw_as_the_whole_where_their_first_row_is_known():
    name = "mean_tangential_force_p50_n"
    whole = column(gullet.study({"radial_depth_mm": DEPTHS}, **COMMON, **DRAWN), name)

    def partition(first, last, **more):
        batches = [{"radial_depth_mm": DEPTHS[first:last]}]
        (done,) = gullet.study_batches(batches, **COMMON, **DRAWN, **more)
        return column(done, name)

    for first, last in [(0, 9), (9, 30), (30, 40)]:
        assert partition(first, last, first_row=first) == whole[first:last]
    # Without it partitions share their draws; numbered far apart they do not.
    same = {"radial_depth_mm": [1.0] * 5}
    apart = [
        column(next(gullet.study_batches([same], **COMMON, **DRAWN, first_row=key << 40)), name) for key in (0, 1, 2)
    ]
    assert len({value for part in apart for value in part}) == 15
    with pytest.raises(gullet.GulletError) as error:
        next(gullet.study_batches([same], **COMMON, **DRAWN, first_row=-1))
    assert [(p.parameter, p.code) for p in error.value.problems] == [("first_row", "out_of_range")]


def test_bad_spreads_are_told_with_bad_columns():
    with pytest.raises(gullet.GulletError) as error:
        gullet.study(
            {"radial_depth": DEPTHS}, **COMMON,
            spreads={"cuting_force": "0.9..1.1", "feed": "wide"}, draws=0,
        )  # fmt: skip
    told = {problem.parameter: problem.code for problem in error.value.problems}
    assert told["uncertain quantity"] == "unknown_name"
    assert told["spread"] == "number_unreadable"
    assert told["draws"] == "out_of_range"
    assert "radial_depth" in told
