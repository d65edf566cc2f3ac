"""Studies: a cut for every row of a table."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple, Union

from ._gullet import Job, Library, Quantity, Table, _study
from ._model import _plain

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ._types import ArrowArray, ArrowStream, Units


class StudySummary(NamedTuple):
    """Totals over the rows of a study."""

    rows: int
    computed: int
    errors: Mapping[str, int]
    """Rows that were not computed, by code."""
    cutting_time: Quantity
    """Time in the cut, without return, handling and set-up."""
    energy_kwh: float
    """Energy of the spindle motor at full width of cut."""
    cost: float | None
    """Machine and operator for the time in the cut; None without a cost per hour."""
    binding_limit: Mapping[str, int]
    """Computed rows by the limit nearest to its bound."""
    held_by: Mapping[str, int]
    """Computed rows by the limit that holds the feed below the wanted one."""
    limit_exceeded: Mapping[str, int]
    """Rows that a limit made an error, by that limit."""


class UnreadCell(NamedTuple):
    """A cell that means nothing, such as a material the tables do not know."""

    row: int
    code: str
    column: str
    text: str


class Study(NamedTuple):
    """The rows of a study with their results, and totals."""

    table: Table
    summary: StudySummary
    assumed: tuple[str, ...]
    """What was assumed where nothing gives it."""
    unread: tuple[UnreadCell, ...]
    """Cells that mean nothing; at most a hundred are kept."""


def study(
    rows: Union[ArrowStream, ArrowArray, Mapping[str, Any]],
    *,
    job: Job | None = None,
    library: Library | None = None,
    columns: Union[str, Sequence[str]] = "usual",
    units: Units | None = None,
    pass_through: Sequence[str] = (),
    threads: int | None = None,
    **constants: Any,
) -> Study:
    """Computes a cut for every row of a table of any library that exports Arrow.

    Numbers stand in columns with their unit behind the name (`radial_depth_mm`), names in columns
    such as `material` and `machine`; other columns are passed through. What no column gives is a
    constant, else as in the job. `columns` are results: "usual", "all" or their names. A row that
    cannot be computed has the code of its error in `status`; the rest is computed.

    >>> import gullet
    >>> answer = gullet.study(
    ...     {"part": ["rail", "stop", "shim"], "radial_depth_mm": [0.5, 0.8, None]},
    ...     columns=["spindle_speed", "time"],
    ...     material="6061", machine="small-cnc-mill", operation="side-milling",
    ...     axial_depth="6 mm", length="80 mm", part_height="25 mm",
    ...     cutter_form="square", cutter_material="HSS", cutter_diameter="12 mm", cutter_teeth=2,
    ...     cutter_flute_length="25 mm", cutter_stick_out="35 mm",
    ...     clamping_force="10 kN", grip_depth="15 mm",
    ... )
    >>> answer.table["status"]
    ['ok', 'ok', 'missing']
    >>> answer.summary.computed, answer.summary.errors
    (2, {'missing': 1})
    """
    if isinstance(rows, Mapping):
        rows = Table(rows, units=units)
    if isinstance(columns, str):
        columns = [columns]
    names = [str(name) for name in columns]
    if units is None and job is not None:
        units = job.units  # type: ignore[assignment]
    table, totals, assumed, unread = _study(
        rows,
        [(name, _text(value)) for name, value in constants.items() if value is not None],
        job,
        library,
        None if names == ["usual"] else names,
        units,
        [str(name) for name in pass_through],
        threads,
    )
    (
        count, computed, errors, cutting_time, energy_kwh, cost, binding_limit, held_by, exceeded
    ) = totals  # fmt: skip
    summary = StudySummary(
        count,
        computed,
        dict(errors),
        cutting_time,
        energy_kwh,
        cost,
        dict(binding_limit),
        dict(held_by),
        dict(exceeded),
    )
    return Study(table, summary, tuple(assumed), tuple(UnreadCell(*cell) for cell in unread))


def _text(value: Any) -> str:
    plain = _plain(value)
    if isinstance(plain, bool):
        return "true" if plain else "false"
    return plain if isinstance(plain, str) else repr(plain)
