"""Studies: a cut for every row of a table."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, fields
from importlib import import_module
from typing import Any, NamedTuple, Union, overload

from ._gullet import (
    Job,
    Library,
    Part,
    Quantity,
    Table,
    _StudyPlan,
    _StudySource,
    _StudyStream,
    _study_source,
)
from ._model import Blank, Cutter, Hold, Machine, Material, Practice, Section, _part
from ._model import job as _read_job

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ._gullet import _StudySums
    from ._types import ArrowArray, ArrowStream, SizedArrowStream, Units

_SECTIONS: dict[str, type[Section]] = {
    "material": Material,
    "machine": Machine,
    "practice": Practice,
    "cutter": Cutter,
    "hold": Hold,
    "blank": Blank,
}
# Of these a plain name is a constant, as in a column.
_NAMED = ("material", "machine", "practice")


@dataclass(frozen=True, slots=True)
class StudySummary:
    """Totals over the rows of a study; those of parts add up to those of the whole, exactly.

    >>> import gullet
    >>> sum([gullet.StudySummary(rows=2, computed=2), gullet.StudySummary(rows=3)], gullet.StudySummary()).rows
    5
    """

    rows: int = 0
    computed: int = 0
    errors: Mapping[str, int] = field(default_factory=dict)
    """Rows that were not computed, by code."""
    cutting_time_nanoseconds: int = 0
    """Time in the cut, each row rounded: without return, handling and set-up."""
    energy_microjoules: int = 0
    """Energy of the spindle motor, of milling cuts at full width, each row rounded; at the tool where
    an operation gives no power of the motor."""
    cost_millionths: int | None = None
    """Machine and operator for the time in the cut; None without a cost per hour."""
    binding_limit: Mapping[str, int] = field(default_factory=dict)
    """Computed rows by the limit nearest to its bound."""
    held_by: Mapping[str, int] = field(default_factory=dict)
    """Computed rows by the limit that holds the feed below the wanted one."""
    limit_exceeded: Mapping[str, int] = field(default_factory=dict)
    """Rows that a limit made an error, by that limit."""

    @property
    def cutting_time(self) -> Quantity:
        """Time in the cut."""
        return Quantity(self.cutting_time_nanoseconds / 1e9, "s")

    @property
    def energy_kwh(self) -> float:
        """Energy in kilowatt-hours."""
        return self.energy_microjoules / 3.6e12

    @property
    def cost(self) -> float | None:
        """Machine and operator for the time in the cut."""
        return None if self.cost_millionths is None else self.cost_millionths / 1e6

    def __add__(self, other: object) -> StudySummary:
        if not isinstance(other, StudySummary):
            return NotImplemented
        names = (one.name for one in fields(self))
        return StudySummary(*(_sum(getattr(self, name), getattr(other, name)) for name in names))


def _sum(one: Any, other: Any) -> Any:
    if isinstance(one, dict):
        return {name: one.get(name, 0) + other.get(name, 0) for name in {**one, **other}}
    if one is None or other is None:
        return one if other is None else other
    return one + other


class UnreadCell(NamedTuple):
    """A cell that means nothing, such as a material the tables do not know."""

    row: int
    code: str
    column: str
    text: str


@dataclass(frozen=True, slots=True)
class Study:
    """The rows of a study with their results, and totals; a table for whoever reads Arrow.

    >>> import gullet
    >>> study = gullet.study({"radial_depth_in": [0.02, None]}, job='''
    ... units = "inch"
    ... material.id = "6061"
    ... machine.base = "manual-knee-mill"
    ... hold = { clamping_force = "2000 lbf", grip_depth = "1/2 in" }
    ... blank = { length = "3 in", width = "2 in", height = "1 in" }
    ... cut = { operation = "side-milling", axial_depth = "0.4 in", remove = "0.12 in" }
    ... cutter = { form = "square", material = "HSS", diameter = "1/2 in", teeth = 2, flute_length = "1 in", stick_out = "1.5 in" }
    ... ''')
    >>> study["status"], len(study), gullet.Table(study) == study.table
    (['ok', 'missing'], 2, True)
    """

    table: Table
    summary: StudySummary
    assumed: tuple[str, ...]
    """What was assumed where nothing gives it."""
    unread: tuple[UnreadCell, ...]
    """Cells that mean nothing; at most a hundred are kept."""

    def __len__(self) -> int:
        return len(self.table)

    def __getitem__(self, name: str) -> Any:
        return self.table[name]

    def __contains__(self, name: str) -> bool:
        return name in self.table

    def __iter__(self) -> Iterator[dict[str, Any]]:
        return iter(self.table)

    def __arrow_c_schema__(self) -> Any:
        return self.table.__arrow_c_schema__()

    def __arrow_c_stream__(self, requested_schema: Any = None) -> Any:
        return self.table.__arrow_c_stream__(requested_schema)

    def __repr__(self) -> str:
        summary = self.summary
        return f"<Study of {summary.rows} rows, {summary.computed} computed>"

    def _repr_html_(self) -> str:
        return self.table._repr_html_()


class StudyStream:
    """The results of a study over a stream: computed as they are read, once, in any memory.

    Arrow's readers take it as it is; as an iterator it gives tables of some thousand rows.

    >>> import gullet, pyarrow
    >>> rows = pyarrow.table({"radial_depth_mm": [0.5, 0.8]})
    >>> stream = gullet.study(
    ...     rows.to_reader(), material="6061", machine="small-cnc-mill", operation="side-milling",
    ...     axial_depth="6 mm", length="80 mm", part_height="25 mm",
    ...     cutter=gullet.Cutter(form="square", material="HSS", diameter="12 mm", teeth=2,
    ...                          flute_length="25 mm", stick_out="35 mm"),
    ...     hold={"clamping_force": "10 kN", "grip_depth": "15 mm"},
    ... )
    >>> pyarrow.table(stream).num_rows, stream.summary.computed
    (2, 2)
    """

    __slots__ = ("_plan", "_stream")

    def __init__(self, plan: _StudyPlan, stream: _StudyStream) -> None:
        self._plan = plan
        self._stream = stream

    @property
    def assumed(self) -> tuple[str, ...]:
        """What was assumed where nothing gives it."""
        return tuple(self._plan.assumptions)

    @property
    def summary(self) -> StudySummary:
        """Totals over the rows computed so far."""
        return _summary(self._stream.totals()[0])

    @property
    def unread(self) -> tuple[UnreadCell, ...]:
        """Cells that mean nothing, of the rows computed so far; at most a hundred are kept."""
        return tuple(UnreadCell(*cell) for cell in self._stream.totals()[1])

    def __iter__(self) -> StudyStream:
        return self

    def __next__(self) -> Table:
        table = self._stream.next()
        if table is None:
            raise StopIteration
        return table

    def __arrow_c_schema__(self) -> Any:
        return self._stream.__arrow_c_schema__()

    def __arrow_c_stream__(self, requested_schema: Any = None) -> Any:
        # A consumer that asks for another schema converts itself, as the interface allows.
        return self._stream.__arrow_c_stream__()


@overload
def study(
    rows: Union[SizedArrowStream, ArrowArray, Mapping[str, Any]],
    *,
    job: Any = None,
    library: Library | None = None,
    columns: Union[str, Sequence[str]] = "usual",
    units: Units | None = None,
    pass_through: Sequence[str] = (),
    threads: int | None = None,
    dictionaries: bool = True,
    spreads: Mapping[str, str] | None = None,
    draws: int = 1000,
    seed: int = 1,
    quantiles: Sequence[float] = (0.05, 0.5, 0.95),
    **constants: Any,
) -> Study: ...
@overload
def study(
    rows: ArrowStream,
    *,
    job: Any = None,
    library: Library | None = None,
    columns: Union[str, Sequence[str]] = "usual",
    units: Units | None = None,
    pass_through: Sequence[str] = (),
    threads: int | None = None,
    dictionaries: bool = True,
    spreads: Mapping[str, str] | None = None,
    draws: int = 1000,
    seed: int = 1,
    quantiles: Sequence[float] = (0.05, 0.5, 0.95),
    **constants: Any,
) -> StudyStream: ...
def study(
    rows: Any,
    *,
    job: Any = None,
    library: Library | None = None,
    columns: Union[str, Sequence[str]] = "usual",
    units: Units | None = None,
    pass_through: Sequence[str] = (),
    threads: int | None = None,
    dictionaries: bool = True,
    spreads: Mapping[str, str] | None = None,
    draws: int = 1000,
    seed: int = 1,
    quantiles: Sequence[float] = (0.05, 0.5, 0.95),
    **constants: Any,
) -> Union[Study, StudyStream]:
    """Computes a cut for every row of a table of any library that exports Arrow, or of columns.

    Numbers stand in columns with their unit behind the name (``radial_depth_mm``), names in columns
    such as ``material`` and ``machine``; other columns are passed through. What no column gives is a
    constant, else as in the job: anything that ``gullet.job`` reads. ``material``, ``machine``,
    ``practice``, ``cutter``, ``hold`` and ``blank`` take model objects and mappings too; ``pass_``
    stands for the column ``pass``. ``columns`` are results: ``"usual"``, ``"all"`` or their names.

    Rows are milling cuts. With ``operation="drilling"``, or another operation of its own, the columns
    are the inputs of that operation: ``diameter_mm``, ``depth_in``, ``hole``. A table that mixes such
    operations is split by them.

    A row that cannot be computed has the code of its error in ``status``; the rest is computed. What
    is wrong with columns and constants is told before, all at once. Each row has the bits of
    ``gullet.mill``, whatever ``threads`` and batches. An object without a length, such as a reader of
    record batches, gives a ``StudyStream``, which is computed while it is read.

    ``spreads`` are factors on what is not known exactly: ``{"cutting_force": "0.85..1.2"}`` is even
    between two ends, ``"0.9..1..1.2"`` likeliest in the middle, ``"sigma 0.1"`` log-normal. The
    settings are held, each row is drawn ``draws`` times, and ``quantiles`` stand behind every result
    (``time_p95_s``); a draw depends on the seed and the number of the row alone.

    >>> import gullet
    >>> study = gullet.study(
    ...     {"part": ["rail", "stop", "shim"], "radial_depth_mm": [0.5, 0.8, None]},
    ...     columns=["spindle_speed", "time"],
    ...     material="6061", machine="small-cnc-mill", operation="side-milling",
    ...     axial_depth="6 mm", length="80 mm", part_height="25 mm",
    ...     cutter_form="square", cutter_material="HSS", cutter_diameter="12 mm", cutter_teeth=2,
    ...     cutter_flute_length="25 mm", cutter_stick_out="35 mm",
    ...     clamping_force="10 kN", grip_depth="15 mm",
    ... )
    >>> study["status"]
    ['ok', 'ok', 'missing']
    >>> study.summary.computed, study.summary.errors
    (2, {'missing': 1})
    """
    drawing = _drawing(spreads, draws, seed, quantiles)
    source = _study_source(dict(rows) if isinstance(rows, Mapping) else rows, units)
    plan = _plan(
        source, job, library, columns, units, pass_through, threads, dictionaries, drawing, constants
    )
    if isinstance(source, _StudySource):
        return StudyStream(plan, plan.stream(source))
    return _run(plan, source)


def study_batches(
    batches: Iterable[Any],
    *,
    job: Any = None,
    library: Library | None = None,
    columns: Union[str, Sequence[str]] = "usual",
    units: Units | None = None,
    pass_through: Sequence[str] = (),
    threads: int | None = 1,
    dictionaries: bool = False,
    spreads: Mapping[str, str] | None = None,
    draws: int = 1000,
    seed: int = 1,
    quantiles: Sequence[float] = (0.05, 0.5, 0.95),
    first_row: int = 0,
    **constants: Any,
) -> Iterator[Any]:
    """Computes batch after batch, as a distributed engine asks for them; else as ``gullet.study``.

    Record batches of pyarrow come back as such, any other table as a ``Study``. The engine brings
    the processes, so one thread computes; names are plain text, since few engines know
    dictionaries.

    Draws depend on the number of a row: ``first_row``, and from there over all batches of a call.
    With the partition's own first row among all rows they are those of one machine. Where that is
    unknown, number the partitions far apart, ``first_row=partition << 40``, so that no two draw
    alike.

    >>> import gullet
    >>> batches = [{"radial_depth_mm": [0.5, 0.8]}, {"radial_depth_mm": [1.0]}]
    >>> done = list(gullet.study_batches(
    ...     batches, material="6061", machine="small-cnc-mill", operation="side-milling",
    ...     axial_depth="6 mm", length="80 mm", part_height="25 mm",
    ...     cutter_form="square", cutter_material="HSS", cutter_diameter="12 mm", cutter_teeth=2,
    ...     cutter_flute_length="25 mm", cutter_stick_out="35 mm",
    ...     clamping_force="10 kN", grip_depth="15 mm",
    ... ))
    >>> sum((study.summary for study in done), gullet.StudySummary()).computed
    3
    """
    drawing = _drawing(spreads, draws, seed, quantiles, first_row)
    plan: _StudyPlan | None = None
    first = 0
    for batch in batches:
        table = Table(batch, units=units)
        if plan is None:
            plan = _plan(
                table, job, library, columns, units, pass_through, threads, dictionaries, drawing, constants
            )
        done = _run(plan, table, first)
        first += len(table)
        if type(batch).__module__.partition(".")[0] == "pyarrow" and not hasattr(batch, "to_batches"):
            # By its name, so that type checkers need no pyarrow.
            yield from import_module("pyarrow").RecordBatchReader.from_stream(done)
        else:
            yield done


_Drawing = tuple[list[tuple[str, str]], int, int, list[float], int]


def _drawing(
    spreads: Mapping[str, str] | None,
    draws: int,
    seed: int,
    quantiles: Sequence[float],
    first_row: int = 0,
) -> _Drawing | None:
    if not spreads:
        return None
    named = [(str(name), str(spread)) for name, spread in spreads.items()]
    return named, int(draws), int(seed), [float(share) for share in quantiles], int(first_row)


def _plan(
    source: Union[Table, _StudySource],
    job: Any,
    library: Library | None,
    columns: Union[str, Sequence[str]],
    units: str | None,
    pass_through: Sequence[str],
    threads: int | None,
    dictionaries: bool,
    drawing: _Drawing | None,
    constants: dict[str, Any],
) -> _StudyPlan:
    """The plan, or one error with every problem of job, parts, columns and constants."""
    from ._errors import GulletError, Problem

    problems: list[Problem] = []
    base: Job | None = None
    if job is not None:
        try:
            base = _read_job(job, library)
            library = library or base.library
        except GulletError as error:
            problems.extend(error.problems)
    parts: list[Part] = []
    told: list[str] = []
    rest: list[tuple[str, Any]] = []
    for name, value in constants.items():
        cls = _SECTIONS.get(name)
        if value is None:
            continue
        if cls is None or (name in _NAMED and not isinstance(value, (Section, Mapping))):
            rest.append(("pass" if name == "pass_" else name, value))
            continue
        try:
            parts.append(_part(cls, value, library))
        except GulletError as error:
            problems.extend(problem._replace(parameter=_within(name, problem)) for problem in error.problems)
            told.append(name)
    if job is not None and base is None:
        # Without it everything would be missing.
        raise GulletError(tuple(problems))
    names = [columns] if isinstance(columns, str) else [str(name) for name in columns]
    others = [str(name) for name in pass_through]
    try:
        plan = _StudyPlan(
            source, rest, base, parts, told, library, names, units, others, threads, dictionaries, drawing
        )
    except GulletError as error:
        problems.extend(error.problems)
    if problems:
        raise GulletError(tuple(problems))
    return plan


def _within(name: str, problem: Any) -> str:
    parameter: str = problem.parameter
    return parameter if parameter.startswith(name) else f"{name}.{parameter}".rstrip(".")


def _run(plan: _StudyPlan, table: Table, first: int = 0) -> Study:
    rows, sums, told = plan.run(table, first)
    cells = tuple(UnreadCell(*cell) for cell in told)
    return Study(rows, _summary(sums), tuple(plan.assumptions), cells)


def _summary(sums: _StudySums) -> StudySummary:
    rows, computed, errors, nanoseconds, microjoules, millionths, binding, held, exceeded = sums
    return StudySummary(
        rows=rows,
        computed=computed,
        errors=dict(errors),
        cutting_time_nanoseconds=nanoseconds,
        energy_microjoules=microjoules,
        cost_millionths=millionths,
        binding_limit=dict(binding),
        held_by=dict(held),
        limit_exceeded=dict(exceeded),
    )
