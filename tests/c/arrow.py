"""Tables of another library through the C library: arrow.py LIBRARY."""

import ctypes
import sys

import pyarrow as pa

gullet = ctypes.CDLL(sys.argv[1])
gullet.gullet_last_error_message.restype = ctypes.c_char_p
size, text, pointer = ctypes.c_size_t, ctypes.c_char_p, ctypes.c_void_p
gullet.gullet_table_study_new.argtypes = [pointer, pointer, pointer, text, size, text, size, pointer]
gullet.gullet_table_study_run.argtypes = [pointer, pointer, ctypes.c_uint32, pointer]
gullet.gullet_table_study_stream.argtypes = [pointer, pointer, ctypes.c_uint32, pointer]
gullet.gullet_table_study_schema.argtypes = [pointer, pointer]
gullet.gullet_table_study_free.argtypes = [pointer]
END = ctypes.c_size_t(-1).value

CONSTANTS = (
    b"machine=small-cnc-mill; operation=side-milling; axial_depth=6 mm; length=80 mm; part_height=25 mm;"
    b"cutter_form=square; cutter_material=HSS; cutter_diameter=12 mm; cutter_teeth=2;"
    b"cutter_flute_length=25 mm; cutter_stick_out=35 mm; clamping_force=10 kN; grip_depth=15 mm"
)


def room():
    """More than any struct of the interfaces takes."""
    return (ctypes.c_uint64 * 16)()


def done(status, expected=0):
    assert status == expected, (status, gullet.gullet_last_error_message())


rows = pa.record_batch(
    {
        "part": pa.array(["rail", None, "stop", "rail"], pa.string_view()),
        "radial_depth_mm": pa.array([9.0, 1.0, None, 0.5]),
        "material": pa.array(["x", "6061", "6061", None]).dictionary_encode(),
    }
).slice(1)
schema, array, results, study = room(), room(), room(), pointer()
rows._export_to_c(ctypes.addressof(array), ctypes.addressof(schema))
done(gullet.gullet_table_study_new(None, None, schema, CONSTANTS, END, b"columns=all", END, ctypes.byref(study)))
done(gullet.gullet_table_study_run(study, array, 0, results), 100)
done(gullet.gullet_table_study_schema(study, schema2 := room()))
answer = pa.RecordBatch._import_from_c(ctypes.addressof(results), ctypes.addressof(schema2))
answer.validate(full=True)
assert answer["status"].to_pylist() == ["ok", "missing", "missing"], answer["status"]
assert answer["part"].equals(rows["part"])
assert answer["spindle_speed_rpm"].null_count == 2

table = pa.Table.from_batches([rows, rows.slice(0, 0), rows])
stream, out = room(), room()
table.to_reader()._export_to_c(ctypes.addressof(stream))
done(gullet.gullet_table_study_stream(study, stream, 1, out))
gullet.gullet_table_study_free(study)
read = pa.RecordBatchReader._import_from_c(ctypes.addressof(out)).read_all()
read.validate(full=True)
assert read.equals(pa.Table.from_batches([answer, answer]))
pa.Schema._import_from_c(ctypes.addressof(schema))
del answer, read
print("tables of another library come and go")
