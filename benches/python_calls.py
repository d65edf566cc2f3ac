"""Times of calls from Python; run with the package installed: python benches/python_calls.py."""

from __future__ import annotations

import subprocess
import sys
import timeit

import gullet


def best(call, number: int) -> float:
    """Seconds of one call, the best of seven runs."""
    return min(timeit.repeat(call, number=number, repeat=7)) / number


def main() -> None:
    code = "import time; s = time.perf_counter(); import gullet; print(time.perf_counter() - s)"
    imports = [
        float(subprocess.run([sys.executable, "-c", code], capture_output=True, text=True).stdout)
        for _ in range(15)
    ]
    formula = gullet.formula.spindle_speed
    speed, diameter = gullet.Quantity("90 ft/min"), gullet.Quantity("1/2 in")
    setup = gullet.setup(
        material="6061",
        blank={"length": "3 in", "width": "2 in", "height": "1 in"},
        cutter=gullet.Cutter(
            form="square", material="HSS", diameter="1/2 in", teeth=2,
            flute_length="1 in", stick_out="1.5 in",
        ),
        machine="manual-knee-mill",
        hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
    )
    depth, width = gullet.Quantity("0.4 in"), gullet.Quantity("0.03 in")

    def cut() -> gullet.Cut:
        return setup.mill(
            operation="side-milling", axial_depth=depth, radial_depth=width, warn_of_doubts=False
        )

    rows = [
        ("import gullet", min(imports) * 1e6),
        ("formula, quantities made before", best(lambda: formula(cutting_speed=speed, diameter=diameter), 50_000) * 1e6),
        ("formula, text arguments", best(lambda: formula(cutting_speed="90 ft/min", diameter="1/2 in"), 20_000) * 1e6),
        ("a whole Cut", best(cut, 1_000) * 1e6),
        ("Quantity from text", best(lambda: gullet.Quantity("1/2 in"), 20_000) * 1e6),
    ]
    import numpy as np

    array = gullet.Quantity(np.linspace(1, 500, 1_000_000), "m/min")
    rows.append(("formula over 1 000 000 rows", best(lambda: formula(cutting_speed=array, diameter=diameter).si, 3) * 1e6))
    depths = np.random.default_rng(1).uniform(0.1, 1.0, 1_000_000).tolist()
    cuts = {"radial_depth_mm": depths[:1000], "material": ["6061", "1018cd"] * 500}
    constants = {
        "machine": "small-cnc-mill", "operation": "side-milling", "axial_depth": "6 mm", "length": "80 mm",
        "part_height": "25 mm", "cutter_form": "square", "cutter_material": "HSS", "cutter_diameter": "12 mm",
        "cutter_teeth": 2, "cutter_flute_length": "25 mm", "cutter_stick_out": "35 mm",
        "clamping_force": "10 kN", "grip_depth": "15 mm",
    }  # fmt: skip
    many = gullet.Table({"radial_depth_mm": depths, "material": ["6061", "1018cd"] * 500_000})
    rows += [
        ("study of 1000 rows, columns as lists", best(lambda: gullet.study(cuts, **constants), 20) * 1e6),
        ("study of 1 000 000 rows, a table", best(lambda: gullet.study(many, **constants), 1) * 1e6),
    ]
    for name, microseconds in rows:
        print(f"{name:38} {microseconds:12.2f} us")


if __name__ == "__main__":
    main()
