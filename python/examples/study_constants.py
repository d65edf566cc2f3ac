"""What the rows of the examples have in common."""

from __future__ import annotations

from typing import Any

CONSTANTS: dict[str, Any] = {
    "material": "6061",
    "machine": "small-cnc-mill",
    "operation": "side-milling",
    "length": "80 mm",
    "part_height": "25 mm",
    "cutter": {"form": "square", "material": "HSS", "diameter": "12 mm", "teeth": 2,
               "flute_length": "25 mm", "stick_out": "35 mm"},
    "hold": {"clamping_force": "10 kN", "grip_depth": "15 mm"},
}  # fmt: skip
