"""Tables as Arrow: out to pandas, polars, pyarrow and duckdb, in from them, and the traps on the way."""

from __future__ import annotations

import copy
import pickle
import subprocess
import sys

import duckdb
import numpy as np
import pandas as pd
import polars as pl
import pyarrow as pa
import pytest
from conftest import JOBS, ROOT, rows

import gullet
from gullet import GulletError, Quantity, Table

LIBRARY = gullet.Library()
JOB = gullet.job(JOBS[0])
CUT = JOB.plan().passes[0].cut


def tables() -> dict[str, Table]:
    named = {name: LIBRARY.table(name) for name in LIBRARY.tables}
    return named | {
        "catalogue": gullet.catalogue(),
        "worked_examples": gullet.worked_examples(),
        "ledger": CUT.ledger.to_table(),
        "plan": JOB.plan().to_table(),
    }


TABLES = tables()


@pytest.mark.parametrize("name", TABLES)
def test_out_and_back_without_a_change(name):
    table = TABLES[name]
    arrow, polars, pandas = pa.table(table), pl.DataFrame(table), pd.DataFrame.from_arrow(table)
    assert len(arrow) == len(polars) == len(pandas) == len(table) > 0
    assert arrow.column_names == polars.columns == list(pandas.columns) == table.column_names
    assert Table(arrow) == table
    assert arrow.to_pylist()[0].keys() == next(iter(table)).keys()
    for back in (polars, pandas, arrow.to_reader(), arrow.to_batches()[0], arrow.combine_chunks()):
        assert len(Table(back)) == len(table)


@pytest.mark.parametrize("name", TABLES)
def test_pickled_copied_and_shown(name):
    table = TABLES[name]
    for twin in (pickle.loads(pickle.dumps(table)), copy.copy(table), copy.deepcopy(table)):
        assert twin == table and twin.columns == table.columns
    assert "0x" not in repr(table) and str(len(table)) in repr(table)
    html = table._repr_html_()
    assert len(html) < 60_000 and "<script" not in html and html.count("<tr>") <= 21
    with pytest.raises(TypeError):
        hash(table)


def test_reread_by_one_consumer_as_often_as_it_likes():
    feeds = LIBRARY.table("feeds")
    joined = duckdb.sql("select count(*) from feeds a join feeds b using (id)").fetchall()
    assert joined == [(len(feeds),)]
    assert pa.table(feeds) == pa.table(feeds)
    assert pa.schema(feeds) == pa.table(feeds).schema


def test_units_stand_in_names_and_metadata():
    metric, inch = LIBRARY.table("feeds", units="metric"), LIBRARY.table("feeds", units="inch")
    field = pa.schema(inch).field("feed_start_in")
    assert field.metadata[b"unit"] == b"in" and field.metadata[b"kind"] == b"length"
    assert inch["feed_start_in"].si == pytest.approx(metric["feed_start_mm"].si, rel=1e-14)
    assert isinstance(inch["feed_start_in"], Quantity)
    with gullet.units("inch"):
        assert "feed_start_in" in LIBRARY.table("feeds")
    for table in TABLES.values():
        for column in table.columns:
            if column.unit is not None:
                assert column.name.endswith(gullet.column_unit(column.kind).split("/")[0].lower()) or (
                    column.unit in gullet.units_of(column.kind)
                )
                assert column.type == "Float64"


def test_rows_are_those_of_the_files():
    files = {"feeds": "feeds.csv", "cutting_speeds": "cutting_speeds.csv", "materials": "materials.csv",
             "unit_power": "unit_power.csv", "saw_rates": "saw_rates.csv", "tool_life": "tool_life.csv", "hardness": "hardness.csv",
             "drills": "drills.csv",
             "sources": "sources.csv"}
    assert set(files) == set(LIBRARY.tables)
    for name, file in files.items():
        written = [row["id"] for row in rows(f"reference-data/tables/{file}")]
        assert TABLES[name]["id"] == written
    by_id = {row["id"]: row for row in rows("reference-data/tables/cutting_speeds.csv")}
    # In the unit the source prints, the other one is rounded.
    for units, column, printed_in in (
        ("metric", "cutting_speed_start_m_per_min", "vc_start_m_min"),
        ("inch", "cutting_speed_start_ft_per_min", "sfm_start"),
    ):
        compared = 0
        for row in LIBRARY.table("cutting_speeds", units=units):
            written = by_id[row["id"]]
            if ("ft" in written["printed_in"]) == (units == "inch") and written[printed_in]:
                assert row[column] == pytest.approx(float(written[printed_in]), rel=1e-12)
                compared += 1
        assert compared > 50, units
    assert TABLES["catalogue"]["name"] == [formula.name for formula in gullet.formulas()]
    examples = TABLES["worked_examples"]
    assert len(examples) >= 272
    for row in examples:
        assert row["passed"] != (row["missed"] is not None)


def test_a_shops_rows_are_in_the_table():
    header = (ROOT / "reference-data/tables/cutting_speeds.csv").read_text().splitlines()[0]
    names = header.split(",")
    given = {"id": "own1", "class": "6061", "tool_material": "HSS", "process": "end milling",
             "sfm_start": "220", "src": "shop trial"}
    text = header + "\n" + ",".join(given.get(name, "") for name in names) + "\n"
    library = gullet.Library([("own.csv", text)])
    table = library.table("cutting_speeds", units="inch")
    assert table["id"][-1] == "own1"
    assert table["cutting_speed_start_ft_per_min"].to("ft/min")[-1] == pytest.approx(220)
    with pytest.raises(GulletError) as caught:
        library.table("speeds")
    assert caught.value.code == "unknown_name" and "feeds" in caught.value.admissible


def test_ledger_and_plan_export_themselves():
    ledger = pl.DataFrame(CUT.ledger.to_table())
    assert ledger["limit"].to_list() == [limit.name for limit in CUT.ledger]
    assert ledger.filter(pl.col("binding"))["limit"].to_list() == [CUT.ledger.binding.name]
    for limit, row in zip(CUT.ledger, ledger.to_dicts(), strict=True):
        assert row["value"] == limit.value.to(row["unit"]) and row["bound"] == limit.bound.to(row["unit"])
    plan = JOB.plan()
    frame = pd.DataFrame.from_arrow(plan)
    assert len(frame) == len(plan) and list(frame["pass"]) == [p.number for p in plan.passes]
    unit = "in" if JOB.units == "inch" else "mm"
    assert list(frame[f"depth_{unit}"]) == [p.depth.to(unit) for p in plan.passes]


def test_made_of_columns():
    table = Table(
        {
            "diameter_in": Quantity([6.0, 12.7], "mm"),
            "cutting_speed": Quantity([60, 90], "m/min"),
            "name": ["a", None],
            "good": [True, None],
            "count": [1, 2],
            "share": np.array([0.5, np.nan]),
            "depth": ["1 mm", "2 mm"],
            "list": [Quantity("1 mm"), Quantity("1 in")],
        },
        units="metric",
    )
    assert table["diameter_in"].to("in")[1] == 0.5
    assert table["cutting_speed_m_per_min"].to("m/min").tolist() == [60.0, 90.0]
    assert table["name"] == ["a", None] and table["good"] == [True, None]
    assert table["count"].tolist() == [1, 2] and table["list_mm"].to("mm").tolist() == [1.0, 25.4]
    assert [column.type for column in table.columns] == [
        "Float64", "Float64", "Utf8", "Boolean", "Int64", "Float64", "Utf8", "Float64"]
    assert len(Table({})) == 0 and Table({}).column_names == []
    for bad, parameter in (
        ({"a": [1, 2], "b": [1]}, "b"),
        ({"a": Quantity("1 mm")}, "a"),
        ({"a": Quantity([[1, 2]], "mm")}, "a"),
        ({"a": "text"}, "a"),
        ({"a": [1, "x"]}, "a"),
        ({"a": [object()]}, "a"),
        (3, ""),
        ({"a": [2**70]}, "a"),
    ):
        with pytest.raises(GulletError) as caught:
            Table(bad)
        assert caught.value.parameter == parameter and caught.value.remedy, bad


# The traps of the C interfaces, one by one.


def column(array) -> Table:
    return Table(pa.table({"x": array}))


def test_a1_what_stands_behind_a_null_is_never_read():
    bits = pa.py_buffer(bytes([0b101]))
    junk = pa.py_buffer(np.array([1.0, 1e9, 4.0]))
    array = pa.Array.from_buffers(pa.float64(), 3, [bits, junk])
    found = column(array)
    assert np.isnan(found["x"][1]) and [row["x"] for row in found] == [1.0, None, 4.0]


def test_a2_a_dictionary_with_a_null_key_or_a_null_value():
    array = pa.DictionaryArray.from_arrays(pa.array([0, 1, None, 2]), pa.array(["a", None, "b"]))
    assert column(array)["x"] == ["a", None, None, "b"]
    empty = pa.DictionaryArray.from_arrays(pa.array([None, None], pa.int8()), pa.array([], pa.string()))
    assert column(empty)["x"] == [None, None]


def test_a3_text_that_is_no_utf8_is_refused():
    array = pa.Array.from_buffers(
        pa.string(), 1, [None, pa.py_buffer(np.array([0, 2], np.int32)), pa.py_buffer(b"\xff\xfe")]
    )
    with pytest.raises(GulletError) as caught:
        column(array)
    assert caught.value.code == "wrong_type" and "x" in caught.value.value


def test_a4_slices_empty_and_chunked_columns():
    whole = pa.table({"x": pa.chunked_array([[1.0, 2.0], [3.0, None, 5.0]]), "s": list("abcde")})
    assert Table(whole.slice(1, 3))["x"][:2].tolist() == [2.0, 3.0]
    assert Table(whole.slice(1, 3))["s"] == ["b", "c", "d"]
    assert len(Table(whole.slice(0, 0))) == 0 and Table(whole.slice(0, 0)).column_names == ["x", "s"]
    part = Table(whole.slice(2, 2))
    assert pickle.loads(pickle.dumps(part)) == part == Table(whole.slice(2, 2).combine_chunks())


def test_a5_a_32_bit_float_keeps_its_own_rounding():
    assert column(pa.array([0.1], pa.float32()))["x"][0] == float(np.float32(0.1))


def test_a6_what_is_no_number_is_refused_by_name():
    for array in (pa.array([np.float16(1)]), pa.array([1], pa.decimal128(5)), pa.array([0], pa.timestamp("s")),
                  pa.array([b"x"]), pa.RunEndEncodedArray.from_arrays([2], [1.0])):
        table = column(array)
        assert Table(pa.table(table)) == table, "what we do not read still goes through"
        with pytest.raises(GulletError) as caught:
            table["x"]
        assert caught.value.parameter == "x" and caught.value.remedy


def test_a6_integers_that_no_double_holds_are_refused():
    for kind, values in ((pa.int64(), [2**53 + 1]), (pa.int64(), [-(2**53) - 1]), (pa.uint64(), [2**64 - 1])):
        with pytest.raises(GulletError, match="2\\*\\*53"):
            column(pa.array(values, kind))["x"]
    for kind in (pa.int8(), pa.uint8(), pa.int16(), pa.uint16(), pa.int32(), pa.uint32(), pa.int64(), pa.uint64()):
        assert column(pa.array([0, None, 100], kind))["x"][[0, 2]].tolist() == [0.0, 100.0]
        assert [row["x"] for row in column(pa.array([0, None, 100], kind))] == [0, None, 100]
    assert column(pa.array([2**53, -(2**53)]))["x"].tolist() == [2.0**53, -(2.0**53)]


def test_a7_streams_arrays_and_frames_are_all_taken():
    frame = pd.DataFrame({"x": [1.0, 2.0], "s": ["a", "b"]})
    expected = [{"x": 1.0, "s": "a"}, {"x": 2.0, "s": "b"}]
    sources = [frame, pl.DataFrame(frame.to_dict("list")), pa.Table.from_pandas(frame),
               pa.RecordBatch.from_pandas(frame), duckdb.sql("select * from frame"),
               pa.StructArray.from_arrays([pa.array([1.0, 2.0]), pa.array(["a", "b"])], ["x", "s"])]
    for source in sources:
        assert list(Table(source)) == expected, type(source)


def test_a8_null_and_nan_differ_in_cells_and_meet_in_arrays():
    table = column(pa.array([None, float("nan")]))
    assert [row["x"] is None for row in table] == [True, False]
    assert np.isnan(table["x"]).all()
    made = Table({"x": Quantity([1.0, float("nan")], "mm")}, units="metric")
    assert pa.table(made)["x_mm"].null_count == 1


def test_a9_every_form_of_text():
    for kind in (pa.string(), pa.large_string(), pa.string_view()):
        assert column(pa.array(["a", None, "a longer text than twelve bytes"], kind))["x"][1:] == [
            None, "a longer text than twelve bytes"]
    frame = pd.DataFrame({"x": pd.Categorical(["a", "b", "a"])})
    assert Table(frame)["x"] == ["a", "b", "a"]


def test_a11_offsets_out_of_order_are_refused_and_nothing_breaks():
    text = pa.py_buffer(b"abcdef")
    for offsets in ([0, 5, 2], [2, 1, 0], [-1, 0, 2], [0, -5, 6]):
        # Good when it is built, spoilt afterwards.
        good = np.array([0, 1, 6], np.int32)
        array = pa.Array.from_buffers(pa.string(), 2, [None, pa.py_buffer(good), text])
        table = pa.table({"x": array})
        good[:] = offsets
        with pytest.raises(GulletError):
            Table(table)
    keys = np.array([0, 1], np.int8)
    table = pa.table({"x": pa.DictionaryArray.from_buffers(
        pa.dictionary(pa.int8(), pa.string()), 2, [None, pa.py_buffer(keys)], pa.array(["a", "b"]))})
    keys[:] = [0, 7]
    with pytest.raises(GulletError):
        Table(table)


def test_spent_streams_foreign_errors_and_no_tables():
    reader = pa.table({"x": [1]}).to_reader()
    assert len(Table(reader)) == 1

    class Broken:
        def __arrow_c_stream__(self, requested_schema=None):
            raise KeyError("mine")

    class Odd:
        def __arrow_c_stream__(self, requested_schema=None):
            return "no capsule"

    class Twice:
        capsule = pa.table({"x": [1]}).__arrow_c_stream__()

        def __arrow_c_stream__(self, requested_schema=None):
            return self.capsule

    with pytest.raises(KeyError, match="mine"):
        Table(Broken())
    with pytest.raises(GulletError, match="capsule"):
        Table(Odd())
    twice = Twice()
    assert len(Table(twice)) == 1
    with pytest.raises(GulletError):
        Table(twice)
    with pytest.raises(GulletError):
        Table(pa.array([1.0]))

    def failing():
        yield pa.record_batch({"x": [1]})
        raise RuntimeError("the file ended")

    reader = pa.RecordBatchReader.from_batches(pa.schema({"x": pa.int64()}), failing())
    with pytest.raises((GulletError, RuntimeError), match="the file ended"):
        Table(reader)


def test_a_column_goes_through_a_formula_and_back():
    frame = pl.DataFrame({"cutting_speed_m_per_min": [60.0, 90.0], "diameter_mm": [6.0, 12.0]})
    table = Table(frame)
    speed = gullet.formula.spindle_speed(
        cutting_speed=Quantity(table["cutting_speed_m_per_min"], "m/min"),
        diameter=Quantity(table["diameter_mm"], "mm"),
    )
    answer = pl.DataFrame(Table({"spindle_speed": speed}))
    assert answer["spindle_speed_rpm"].to_list() == speed.to("rpm").tolist()


def test_tables_need_no_other_library():
    code = (
        "import sys, gullet; t = gullet.Library().table('feeds'); list(t); t._repr_html_();"
        "print([m for m in ('numpy', 'pyarrow', 'pandas', 'polars') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True)
    assert done.stdout.strip() == "[]", done.stderr


def test_memory_stays_level():
    import resource

    big = pa.table({"x": np.arange(200_000.0)})
    for _ in range(20):
        pa.table(Table(big))
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    for _ in range(200):
        pa.table(Table(big))
    after = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    assert after - before < 20_000, (before, after)
