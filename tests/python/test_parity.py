"""The same doubles as the core, bit by bit."""

from __future__ import annotations

import json
import struct
import warnings

import numpy as np

import gullet
from gullet import _gullet

COUNT = 10_000


def one(kind: str, si: float) -> gullet.Quantity:
    return _gullet._quantity(kind, struct.pack("<d", si), None)


def test_every_formula_over_random_inputs_scalar_and_array(parity_rows):
    codes = {number: name for name, number in gullet.codes()}
    compared = 0
    with open(parity_rows("formulas", COUNT), "rb") as file:
        while line := file.readline():
            head = json.loads(line)
            formula = getattr(gullet.formula, head["name"])
            assert [p.name for p in formula.parameters] == head["parameters"]
            assert head["good"] >= COUNT, head
            width = len(head["parameters"]) + 2
            table = np.frombuffer(file.read(8 * width * head["rows"])).reshape(-1, width)
            arrays, kinds = {}, {}
            for column, parameter in enumerate(formula.parameters):
                values = np.ascontiguousarray(table[:, column])
                kinds[parameter.name] = parameter.kind
                arrays[parameter.name] = _gullet._quantity(
                    parameter.kind, values.tobytes(), [len(values)]
                )
            with warnings.catch_warnings():
                warnings.simplefilter("ignore", gullet.GulletWarning)
                result = formula(**arrays, on_bad_row="nan").si
            good = table[:, -1] == 0
            assert np.isnan(result[~good]).all()
            expected = np.ascontiguousarray(table[:, -2])
            assert result[good].tobytes() == expected[good].tobytes(), head["name"]
            for row in table:
                given = {
                    name: one(kind, value) for (name, kind), value in zip(kinds.items(), row)
                }
                if row[-1] == 0:
                    assert struct.pack("d", formula(**given).si) == struct.pack("d", row[-2])
                    compared += 1
                else:
                    try:
                        formula(**given)
                    except gullet.GulletError as error:
                        assert error.code == codes[int(row[-1])]
                    else:
                        raise AssertionError(f"{head['name']} accepts {given}")
    assert compared >= COUNT * len(gullet.formulas())


def test_whole_cuts_over_random_setups(parity_rows):
    setups: dict[str, gullet.Setup] = {}
    made = refused = 0
    for line in open(parity_rows("cuts", COUNT), encoding="utf-8"):
        row = json.loads(line)
        key = json.dumps(row["setup"])
        if key not in setups:
            setups[key] = gullet.setup(**row["setup"])
        lengths = {
            name: one("length", struct.unpack("<d", struct.pack("<Q", bits))[0])
            for name, bits in row["lengths"].items()
        }
        try:
            cut = setups[key].mill(**row["pass"], **lengths, warn_of_doubts=False)
        except gullet.GulletError as error:
            assert error.code == row["result"]["code"], str(error)
            assert error.parameter == row["result"]["parameter"]
            refused += 1
            continue
        found = [
            None if value is None else struct.unpack("<Q", struct.pack("<d", value.si))[0]
            for record in (cut.settings, cut.consequences)
            for _, value in record
        ]
        assert found == row["result"]["bits"]
        made += 1
    assert made + refused == COUNT and made > COUNT // 2
