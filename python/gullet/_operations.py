"""Operations: what there is, what each takes and gives, and a cut of one."""

from __future__ import annotations

import warnings
from typing import Any, NamedTuple

from ._gullet import Library, OperationCut, Part, _operation_cut, _operation_values, _operations


class OperationInput(NamedTuple):
    """An input of an operation: a quantity, or a choice between words."""

    name: str
    symbol: str
    kind: str
    """What it measures, ``choice`` for words."""
    unit: str
    default: str | None
    """What is taken without it; None where it must be given or the tables decide."""
    admissible: str
    meaning: str
    words: tuple[str, ...]
    required: bool


class OperationResult(NamedTuple):
    """A value an operation gives: a setting of the machine or what follows."""

    name: str
    kind: str
    unit: str
    meaning: str
    optional: bool


class OperationExample(NamedTuple):
    """An example with an invented part."""

    material: str
    tool: str
    machine: str
    inputs: dict[str, str]


class Operation(NamedTuple):
    """An operation: what it is called, takes and gives.

    >>> import gullet
    >>> drilling = gullet.operations().named("drilling")
    >>> drilling.inputs[0].name, drilling.inputs[0].required, drilling.inputs[0].unit
    ('diameter', True, 'mm')
    """

    name: str
    title: str
    meaning: str
    inputs: tuple[OperationInput, ...]
    results: tuple[OperationResult, ...]
    limits: tuple[str, ...]
    """Limits it looks at beside those of spindle, feed, power and torque."""
    example: OperationExample
    cautions: tuple[str, ...]

    def __repr__(self) -> str:
        return f"<Operation {self.name}: {self.meaning}>"

    def __str__(self) -> str:
        lines = [f"{self.name}: {self.meaning}"]
        for row in self.inputs:
            takes = " | ".join(row.words) or row.kind.replace("_", " ")
            lines.append(f"  {row.name}: {takes}; {row.meaning}; {_without(row)}")
        lines += [f"  gives {row.name}: {row.meaning}" for row in self.results]
        return "\n".join(lines)

    def _repr_html_(self) -> str:
        from ._html import table

        takes = [(row.name, row.unit or ", ".join(row.words), row.admissible, _without(row), row.meaning) for row in self.inputs]
        gives = [(row.name, row.unit, row.meaning) for row in self.results]
        inputs = table([f"input of {self.title.lower()}", "unit", "admissible", "default", "meaning"], takes)
        return "<div>" + inputs + table(["gives", "unit", "meaning"], gives) + "</div>"


class Operations(tuple[Operation, ...]):
    """Every operation, shown as a table in a notebook."""

    __slots__ = ()

    def named(self, name: str) -> Operation:
        """The operation of this name."""
        for operation in self:
            if operation.name == name:
                return operation
        # The compiled part has the error with the nearest right name.
        _operation_values(name, "HSS", {})
        raise KeyError(name)

    def __repr__(self) -> str:
        return "\n".join(f"{operation.name}: {operation.meaning}" for operation in self)

    def _repr_html_(self) -> str:
        from ._html import table

        rows = [
            (row.name, row.meaning, ", ".join(each.name for each in row.inputs if each.required), ", ".join(row.limits))
            for row in self
        ]
        return table(["operation", "meaning", "needs", "limits of its own"], rows)


def _without(row: OperationInput) -> str:
    return "must be given" if row.required else row.default or "none without it"


def operations() -> Operations:
    """Every operation with its inputs, results, limits and an example.

    >>> import gullet
    >>> "drilling" in [operation.name for operation in gullet.operations()]
    True
    """

    def operation(row: tuple[Any, ...]) -> Operation:
        name, title, meaning, inputs, results, limits, example, cautions = row
        *shop, given = example
        return Operation(
            name,
            title,
            meaning,
            tuple(OperationInput._make([*each[:7], tuple(each[7]), each[8]]) for each in inputs),
            tuple(OperationResult(*each) for each in results),
            tuple(limits),
            OperationExample._make([*shop, dict(given)]),
            tuple(cautions),
        )

    return Operations(operation(row) for row in _operations())


def operate(
    operation: str,
    /,
    *,
    material: Any,
    machine: Any,
    practice: Any = "training",
    tool: str = "HSS",
    library: Library | None = None,
    warn_of_doubts: bool = True,
    **inputs: Any,
) -> OperationCut:
    """A cut of an operation: settings the machine has, results, limits and worked steps.

    Inputs are those of ``gullet.operations()``: quantities as text or objects, choices as words;
    one that is None counts as left out.

    >>> import gullet
    >>> cut = gullet.operate("drilling", material="1018", machine="small-cnc-mill", practice="experienced",
    ...                      diameter="10 mm", depth="20 mm", spindle_speed="500 rpm", feed="0.1 mm",
    ...                      warn_of_doubts=False)
    >>> cut["feed_speed"], cut.results.torque.kind
    (Quantity('50 mm/min'), 'torque')
    >>> try:
    ...     gullet.operate("drilling", material="1018", machine="small-cnc-mill", diamter="10 mm", depth=20)
    ... except gullet.GulletError as error:
    ...     print([(problem.code, problem.parameter) for problem in error.problems])
    [('unknown_name', 'drilling'), ('unit_missing', 'depth'), ('missing', 'diameter')]
    """
    from ._errors import GulletError, GulletWarning, Problem
    from ._model import Machine, Material, Practice, _part

    problems: list[Problem] = []
    parts: dict[str, Part] = {}
    for name, cls, value in (
        ("material", Material, material),
        ("machine", Machine, machine),
        ("practice", Practice, practice),
    ):
        try:
            parts[name] = _part(cls, value, library)
        except GulletError as error:
            problems.extend(error.problems)
    try:
        values, inch = _operation_values(operation, tool, inputs)
    except GulletError as error:
        problems.extend(error.problems)
    if problems:
        raise GulletError(tuple(problems))
    cut = _operation_cut(operation, parts["material"], tool, parts["machine"], parts["practice"], library, values, inch)
    if warn_of_doubts and cut.warnings:
        warnings.warn("\n".join(doubt.text for doubt in cut.warnings), GulletWarning, stacklevel=2)
    return cut
