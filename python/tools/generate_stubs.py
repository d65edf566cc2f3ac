"""Writes what the catalogue and the records know into gullet/formula.pyi and gullet/_fields.py.

Run with the package installed; ``--check`` only tells whether the files are in step.
"""

from __future__ import annotations

import sys
from pathlib import Path

import gullet
from gullet import _gullet

PACKAGE = Path(__file__).parent.parent / "gullet"
SECTIONS = ("material", "blank", "cutter", "machine", "hold", "practice")


def formulas() -> str:
    """One function a formula, keywords only."""
    lines = [
        "# Written by generate_stubs.py.",
        "from typing import Literal",
        "",
        "from ._gullet import Quantity",
        "from ._types import QuantityLike",
        "",
        "__all__ = [",
        *(f'    "{formula.name}",' for formula in gullet.formulas()),
        "]",
        "",
    ]
    for formula in gullet.formulas():
        lines += [f"def {formula.name}(", "    *,"]
        for parameter in formula.parameters:
            default = "" if parameter.default is None else f" = {parameter.default!r}"
            lines.append(f"    {parameter.name}: QuantityLike{default},")
        lines += ['    on_bad_row: Literal["raise", "nan"] = "raise",', ") -> Quantity:"]
        lines.append(f'    """{formula.meaning}"""')
    return "\n".join(lines) + "\n"


def fields() -> str:
    """One class a record or section, with the type of each attribute."""
    lines = [
        '"""Types of the attributes of records and sections; written by generate_stubs.py."""',
        "",
        "from __future__ import annotations",
        "",
        "from ._gullet import Quantity",
    ]

    def start(name: str) -> None:
        lines.extend(["", "", f"class {name}Fields:", "    __slots__ = ()"])

    for name, rows in zip(("Settings", "Consequences"), _gullet.record_fields(), strict=True):
        start(name)
        for field, _, meaning, optional in rows:
            lines.append(f"    {field}: Quantity{' | None' if optional else ''}")
            lines.append(f'    """{meaning}"""')
    material = {
        name: (of + " | None" if optional else of, meaning)
        for name, of, optional, meaning in _gullet.material_fields()
    }
    forms = {"ratio": "float", "count": "int", "flag": "bool", "quantity": "Quantity"}
    for section in SECTIONS:
        start(section.capitalize())
        known = set()
        for row in gullet.job_keys():
            if row[0] != section:
                continue
            name, form, required = row[1], row[2], row[5]
            known.add(name)
            of = forms.get(form, "str")
            if form == "list":
                of = "tuple[Quantity, ...] | None"
            elif section == "material" and name in material:
                of = material[name][0]
            elif not required:
                of += " | None"
            lines += [f"    {name}: {of}", f'    """{row[8]}"""']
        if section == "material":
            for name, (of, meaning) in material.items():
                if name not in known:
                    lines += [f"    {name}: {of}", f'    """{meaning}"""']
    return "\n".join(lines) + "\n"


def main() -> int:
    stale = 0
    for name, text in (("formula.pyi", formulas()), ("_fields.py", fields())):
        path = PACKAGE / name
        if path.is_file() and path.read_text(encoding="utf-8") == text:
            continue
        stale = 1
        if "--check" in sys.argv:
            print(f"{path} is out of step: run {Path(__file__).name}")
        else:
            path.write_text(text, encoding="utf-8")
    return stale if "--check" in sys.argv else 0


if __name__ == "__main__":
    sys.exit(main())
