"""Rows of a study against `gullet.mill`, bit by bit; batches and threads change nothing."""

from __future__ import annotations

import random

import pyarrow as pa
import pytest

import gullet
from gullet import GulletError

ROWS_OF_A_SETUP = 250
BLANK = {"length": "90 mm", "width": "40 mm", "height": "25 mm"}


def setups():
    draw = random.Random(7)
    machines, practices = gullet.builtin_names()
    for _ in range(18):
        yield {
            "material": gullet.Material(draw.choice(["6061", "1018cd", "s235jr", "42crmo4qt"])),
            "machine": gullet.Machine(draw.choice(machines)),
            "practice": gullet.Practice(draw.choice(practices)),
            "cutter": gullet.Cutter(
                form="square", material=draw.choice(["HSS", "uncoated carbide"]),
                diameter=draw.choice(["1/4 in", "10 mm", "1/2 in", "16 mm"]), teeth=draw.choice([2, 3, 4]),
                flute_length="1 in", stick_out=draw.choice(["1.2 in", "40 mm"]),
            ),
            "hold": gullet.Hold(clamping_force=draw.choice(["15 kN", "8 kN"]), grip_depth="0.5 in"),
        }  # fmt: skip


def passes(seed: int) -> list[dict[str, object]]:
    draw = random.Random(seed)
    return [
        {
            "operation": draw.choice(["side-milling", "side-milling", "slotting"]),
            "pass": draw.choice(["roughing", "finishing"]),
            "direction": draw.choice(["conventional", "climb"]),
            "axial_depth_mm": draw.choice([draw.uniform(-0.2, 16), draw.uniform(0.5, 5)]),
            "radial_depth_mm": draw.choice([draw.uniform(0.05, 7), draw.uniform(0.1, 1)]),
            "length_mm": draw.uniform(5, 200),
            "spindle_speed_rpm": draw.choice([None, None, None, draw.uniform(100, 9000)]),
            "mean_roughness_um": draw.choice([None, None, draw.uniform(0.8, 6.3)]),
        }
        for _ in range(ROWS_OF_A_SETUP)
    ]


def scalar(setup: gullet.Setup, row: dict[str, object]):
    optional = {
        name: f"{row[column]!r} {unit}"
        for name, column, unit in (
            ("spindle_speed", "spindle_speed_rpm", "rpm"), ("mean_roughness", "mean_roughness_um", "um"),
        )
        if row[column] is not None
    }  # fmt: skip
    slot = row["operation"] == "slotting"
    return setup.mill(
        operation=row["operation"], kind=row["pass"], direction=row["direction"],
        axial_depth=f"{row['axial_depth_mm']!r} mm",
        radial_depth=None if slot else f"{row['radial_depth_mm']!r} mm",
        length=f"{row['length_mm']!r} mm", warn_of_doubts=False, **optional,
    )  # fmt: skip


def test_every_row_has_the_bits_of_the_scalar_call():
    compared = refused = 0
    for seed, parts in enumerate(setups()):
        setup = gullet.setup(blank=BLANK, **parts)
        rows = passes(seed)
        names = ("operation", "pass", "direction", "axial_depth_mm", "radial_depth_mm", "length_mm",
                 "spindle_speed_rpm", "mean_roughness_um")  # fmt: skip
        table = pa.table({name: [row[name] for row in rows] for name in names})
        study = gullet.study(table, columns="all", units="metric", blank=gullet.Blank(**BLANK), **parts)
        fields = {field.name: field.unit for field in study.table.columns if field.kind}
        names_of = {}
        for given, answer in zip(rows, study, strict=True):
            try:
                cut = scalar(setup, given)
            except GulletError as error:
                assert answer["status"] == error.code, (given, error)
                assert answer["time_s"] is None
                refused += 1
                continue
            assert answer["status"] == "ok"
            binding = cut.ledger.binding
            assert answer["binding_limit"] == (binding and binding.name)
            for name, value in [*cut.settings, *cut.consequences]:
                if name not in names_of:
                    (names_of[name],) = [
                        field for field in fields
                        if field.removeprefix("result_") == name
                        or (field.removeprefix("result_").startswith(f"{name}_")
                            and field.removeprefix(f"result_{name}").removeprefix(name) == "_" + suffix(fields[field]))
                    ]  # fmt: skip
                field = names_of[name]
                unit = fields[field]
                wanted = None if value is None else value.to(unit) if unit else value.si
                assert answer[field] == wanted, (name, given)
            compared += 1
    assert compared > 1000 and refused > 300, (compared, refused)


def suffix(unit: str | None) -> str:
    return (unit or "").replace("/", "_per_").replace(".", "_").lower()


ROWS = pa.table(
    {name: [row[name] for seed in range(20) for row in passes(seed)] for name in passes(0)[0]}
)
# Stiff enough that most rows are computed.
PARTS = {
    **next(setups()),
    "cutter": gullet.Cutter(form="square", material="HSS", diameter="16 mm", teeth=3,
                            flute_length="1 in", stick_out="30 mm"),
    "hold": gullet.Hold(clamping_force="15 kN", grip_depth="0.5 in"),
}  # fmt: skip
CHUNKS = [1, 7, 1000, 2**20]


@pytest.mark.parametrize("threads", [1, 2, 5])
@pytest.mark.parametrize("rows", CHUNKS)
def test_batches_and_threads_change_nothing(rows, threads):
    whole = gullet.study(ROWS, blank=BLANK, threads=1, **PARTS)
    chunks = pa.Table.from_batches(ROWS.combine_chunks().to_batches(max_chunksize=rows))
    study = gullet.study(chunks, blank=BLANK, threads=threads, **PARTS)
    assert study.summary == whole.summary
    assert plain(study) == plain(whole)
    stream = gullet.study(chunks.to_reader(), blank=BLANK, threads=threads, **PARTS)
    assert plain(stream) == plain(whole)
    assert stream.summary == whole.summary


def plain(table) -> pa.Table:
    """In one batch and without dictionaries, so that only what the cells hold is compared."""
    table = pa.table(table)
    fields = [
        field.with_type(pa.string()) if pa.types.is_dictionary(field.type) else field
        for field in table.schema
    ]
    return table.cast(pa.schema(fields)).combine_chunks()


def test_names_in_columns_mean_what_the_parts_mean():
    machines, practices = gullet.builtin_names()
    named = {"material": "6061", "machine": machines[0], "practice": practices[0]}
    rest = {"cutter": PARTS["cutter"], "hold": PARTS["hold"], "blank": BLANK}
    constant = gullet.study(ROWS, **named, **rest)
    parts = gullet.study(
        ROWS, material=gullet.Material("6061"), machine=gullet.Machine(machines[0]),
        practice={"base": practices[0]}, **rest,
    )  # fmt: skip
    columns = gullet.study(
        ROWS.append_column("material", pa.array(["6061"] * len(ROWS)).dictionary_encode())
        .append_column("machine", pa.array([machines[0]] * len(ROWS), pa.large_string()))
        .append_column("practice", pa.array([practices[0]] * len(ROWS), pa.string_view())),
        **rest,
    )
    assert constant.summary == parts.summary == columns.summary
    assert constant.summary.computed > 1000
    assert plain(constant) == plain(parts)
    assert plain(columns).drop_columns(list(named)) == plain(constant)
