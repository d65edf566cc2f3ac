"""Small frozen records that results are made of."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from typing import Any, NamedTuple

from ._fields import ConsequencesFields, SettingsFields
from ._gullet import Cut, OperationCut, Quantity, Table, column_unit, record_fields

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ._types import Units


class Parameter(NamedTuple):
    """A parameter of a formula."""

    name: str
    symbol: str
    kind: str
    meaning: str
    range: str
    default: str | None


def _parameters(rows: list[tuple[Any, ...]]) -> tuple[Parameter, ...]:
    return tuple(Parameter(*row) for row in rows)


def _formula(find: Callable[[], list[Any]], name: str) -> Any:
    return next(formula for formula in find() if formula.name == name)


class Record:
    """Named quantities, read as attributes or items; a missing one is None."""

    __slots__ = ("_values",)
    _values: dict[str, Any]

    def __init__(self, values: Any) -> None:
        object.__setattr__(self, "_values", dict(values))

    def __getattr__(self, name: str) -> Any:
        if name == "_values":
            raise AttributeError(name)
        try:
            return self._values[name]
        except KeyError:
            known = ", ".join(self._values)
            raise AttributeError(f"no {name!r}; there are {known}") from None

    def __getitem__(self, name: str) -> Any:
        return self._values[name]

    def to_dict(self) -> dict[str, Any]:
        """The quantities by name."""
        return dict(self._values)

    def __setattr__(self, name: str, value: Any) -> None:
        raise AttributeError(f"{type(self).__name__} is frozen")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"{type(self).__name__} is frozen")

    def __dir__(self) -> list[str]:
        return [*self._values, *object.__dir__(self)]

    def __iter__(self) -> Iterator[tuple[str, Any]]:
        """Pairs of name and quantity."""
        return iter(self._values.items())

    def __len__(self) -> int:
        return len(self._values)

    def __eq__(self, other: object) -> bool:
        if type(other) is not type(self):
            return NotImplemented
        assert isinstance(other, Record)
        return self._values == other._values

    def __hash__(self) -> int:
        return hash(tuple(self._values.items()))

    def __repr__(self) -> str:
        inside = ", ".join(
            f"{name}={value!s}" for name, value in self._values.items() if value is not None
        )
        return f"{type(self).__name__}({inside})"

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (list(self._values.items()),)

    def _repr_html_(self) -> str:
        from ._html import table

        rows = [(name, value) for name, value in self._values.items() if value is not None]
        return table([self._head(), ""], rows, titles=self._meanings())

    def _head(self) -> str:
        return type(self).__name__.lower()

    def _meanings(self) -> dict[str, str]:
        return _meanings()


def _meanings() -> dict[str, str]:
    return {row[0]: row[2] for rows in record_fields() for row in rows}


def _cut_page(cut: Cut) -> str:
    return _page((cut.settings, cut.consequences, cut.ledger), cut.warnings)


def _page(shown: Iterable[Any], warnings: Iterable[Doubt]) -> str:
    from html import escape

    parts = [part._repr_html_() for part in shown]
    doubts = "".join(f"<li>{escape(doubt.text)}</li>" for doubt in warnings)
    return "<div>" + "".join(parts) + (f"<ul>{doubts}</ul>" if doubts else "") + "</div>"


class Settings(Record, SettingsFields):
    """What a person sets on the machine."""

    __slots__ = ()


class Consequences(Record, ConsequencesFields):
    """What follows from the settings."""

    __slots__ = ()


class Pass(Record):
    """One pass as it was asked for."""

    __slots__ = ()


class Relief(NamedTuple):
    """The smallest change that would free a limit."""

    setting: str
    to: Quantity

    def __str__(self) -> str:
        return f"{self.setting} to {self.to}"


class Limit(NamedTuple):
    """One limit that was looked at; a share above 1 exceeds it."""

    name: str
    value: Quantity
    bound: Quantity
    side: str
    share: float
    origin: str
    binding: bool
    exceeded: bool
    relief: Relief | None

    def __str__(self) -> str:
        side = self.side.replace("_", " ")
        return f"{self.name}: {self.value}, {side} {self.bound}, {self.share:.0%} used"


class Ledger(tuple[Limit, ...]):
    """Every limit, shown as a table in a notebook."""

    __slots__ = ()

    @property
    def binding(self) -> Limit | None:
        """The limit nearest to its bound."""
        return next((limit for limit in self if limit.binding), None)

    def to_table(self, *, units: Units | None = None) -> Table:
        """The limits as a table; a value and its bound are in the unit of their row."""
        symbols = [column_unit(limit.value.kind, units) for limit in self]
        rows = list(zip(self, symbols))
        return Table(
            {
                "limit": [limit.name for limit in self],
                "value": [limit.value.to(symbol) for limit, symbol in rows],
                "bound": [limit.bound.to(symbol) for limit, symbol in rows],
                "unit": symbols,
                "side": [limit.side for limit in self],
                "share": [limit.share for limit in self],
                "binding": [limit.binding for limit in self],
                "exceeded": [limit.exceeded for limit in self],
                "origin": [limit.origin for limit in self],
                "relief": [None if limit.relief is None else str(limit.relief) for limit in self],
            }
        )

    def __repr__(self) -> str:
        return "\n".join(map(str, self))

    def _repr_html_(self) -> str:
        from ._html import table

        rows = [
            (limit.name, limit.value, f"{limit.side.replace('_', ' ')} {limit.bound}", f"{limit.share * 100:.0f} %")
            for limit in self
        ]
        strong = next((place for place, limit in enumerate(self) if limit.binding), None)
        return table(["limit", "value", "bound", "share"], rows, strong=strong)


class Adjustment(NamedTuple):
    """Something that was lowered because of a limit."""

    limit: str
    setting: str
    before: Quantity
    after: Quantity

    def __str__(self) -> str:
        return f"{self.setting} lowered from {self.before} to {self.after} for the limit {self.limit}"


class Datum(NamedTuple):
    """A value that came from a table, the model or the practice."""

    name: str
    value: Quantity
    origin: str


class Doubt(NamedTuple):
    """A doubt with its stable code."""

    code: str
    text: str

    def __str__(self) -> str:
        return self.text


class Band(NamedTuple):
    """A value over the range of its tables."""

    low: Quantity
    start: Quantity
    high: Quantity


class Choice(NamedTuple):
    """A choice between what formulas gave."""

    text: str
    value: Quantity

    def __str__(self) -> str:
        return f"{self.text}: {self.value}"


class Support(NamedTuple):
    """A row of a table that stands behind a range."""

    row: str
    source: str
    provenance: str
    low: Quantity
    start: Quantity
    high: Quantity
    why: str


class Ranged(NamedTuple):
    """A range of the tables with its start value and the rows behind it."""

    low: Quantity
    start: Quantity
    high: Quantity
    support: tuple[Support, ...]
    assumptions: tuple[str, ...]

    def __str__(self) -> str:
        return f"{self.low} to {self.high}, start {self.start}"


class PassTime(NamedTuple):
    """Time of a pass or a plan in its parts."""

    cutting: Quantity
    returning: Quantity
    handling: Quantity
    total: Quantity


class PlannedPass(NamedTuple):
    """A pass of a plan; counts are steps of the machine's readout."""

    number: int
    counts: int
    depth: Quantity
    left_counts: int
    readout_counts: int
    readout: Quantity
    cut: Cut
    time: PassTime


class TableColumn(NamedTuple):
    """A column of a table; its plain numbers are in ``unit``."""

    name: str
    type: str
    unit: str | None
    kind: str | None
    meaning: str | None
    nullable: bool


def _table_columns(rows: list[tuple[Any, ...]]) -> tuple[TableColumn, ...]:
    return tuple(TableColumn(*row) for row in rows)


def _plan_table(passes: tuple[PlannedPass, ...], units: Units) -> Table:
    cuts = [planned.cut for planned in passes]
    columns: dict[str, Any] = {
        "pass": [planned.number for planned in passes],
        "kind": [cut.pass_.kind for cut in cuts],
        "depth": [planned.depth for planned in passes],
        "readout": [planned.readout for planned in passes],
        "left_counts": [planned.left_counts for planned in passes],
        "spindle_speed": [cut.settings.spindle_speed for cut in cuts],
        "cutting_speed": [cut.settings.cutting_speed for cut in cuts],
        "feed_per_tooth": [cut.settings.feed_per_tooth for cut in cuts],
        "table_feed": [cut.settings.table_feed for cut in cuts],
        "cutting_power": [cut.consequences.cutting_power for cut in cuts],
        "limit": [None if cut.ledger.binding is None else cut.ledger.binding.name for cut in cuts],
        "time": [planned.time.total for planned in passes],
    }
    return Table(columns, units=units)


def _limits(rows: list[tuple[Any, ...]]) -> Ledger:
    def limit(*row: Any, relief: Any) -> Limit:
        return Limit._make([*row, None if relief is None else Relief(*relief)])

    return Ledger(limit(*row, relief=relief) for *row, relief in rows)


def _ranged(row: tuple[Any, ...]) -> Ranged:
    low, start, high, support, assumptions = row
    return Ranged(low, start, high, tuple(Support(*s) for s in support), tuple(assumptions))


def _pass(row: tuple[Any, ...]) -> Pass:
    operation, kind, direction, values = row
    return Pass({"operation": operation, "kind": kind, "direction": direction, **dict(values)})


_settings = Settings
_consequences = Consequences


def _adjustments(rows: list[tuple[Any, ...]]) -> tuple[Adjustment, ...]:
    return tuple(Adjustment(*row) for row in rows)


def _data(rows: list[tuple[Any, ...]]) -> tuple[Datum, ...]:
    return tuple(Datum(*row) for row in rows)


def _warnings(rows: list[tuple[Any, ...]]) -> tuple[Doubt, ...]:
    return tuple(Doubt(*row) for row in rows)


def _spread(rows: list[tuple[Any, ...]]) -> dict[str, Band]:
    return {name: Band(*band) for name, *band in rows}


def _steps(rows: list[Any]) -> tuple[Any, ...]:
    return tuple(Choice(*row) if isinstance(row, tuple) else row for row in rows)


def _passes(rows: list[tuple[Any, ...]]) -> tuple[PlannedPass, ...]:
    return tuple(PlannedPass._make([*row, PassTime(*time)]) for *row, time in rows)


class OperationRecord(Record):
    """Named values of an operation, read as attributes or items."""

    __slots__ = ("_operation",)
    _operation: str

    def __init__(self, operation: str, values: Any) -> None:
        super().__init__(values)
        object.__setattr__(self, "_operation", operation)

    def __getattr__(self, name: str) -> Any:
        if name == "_operation":
            raise AttributeError(name)
        return super().__getattr__(name)

    def __reduce__(self) -> tuple[Any, ...]:
        return type(self), (self._operation, list(self._values.items()))

    def _head(self) -> str:
        return type(self).__name__.removeprefix("Operation").lower()

    def _meanings(self) -> dict[str, str]:
        from ._operations import operations

        operation = operations().named(self._operation)
        meanings = {row.name: row.meaning for row in operation.inputs}
        return meanings | {row.name: row.meaning for row in operation.results}


class OperationInputs(OperationRecord):
    """What an operation was given; None for what the tables decide."""

    __slots__ = ()


class OperationSettings(OperationRecord):
    """What a person sets on the machine for an operation."""

    __slots__ = ()


class OperationResults(OperationRecord):
    """What follows from the settings of an operation."""

    __slots__ = ()


class OperationBand(NamedTuple):
    """A value over the range of its tables; None for an end that is not known."""

    low: Quantity | None
    start: Quantity
    high: Quantity | None


class PartEntry(NamedTuple):
    """A line of a part's summary: an operation or a clamping."""

    name: str
    machine: str
    time: Quantity
    times: dict[str, Quantity]
    machine_rate: Quantity | None


class PartLotEntry(NamedTuple):
    """What a line of the summary takes and costs a part in a lot."""

    name: str
    time: Quantity
    cost: Quantity


class PartLot(NamedTuple):
    """What a part takes and costs in a lot, its share of the set-ups included."""

    size: int
    time_per_part: Quantity
    cost_per_part: Quantity
    material_cost: Quantity
    entries: tuple[PartLotEntry, ...]


_operation_inputs = OperationInputs
_operation_settings = OperationSettings
_operation_results = OperationResults
_times = dict


def _operation_spread(rows: list[tuple[Any, ...]]) -> dict[str, OperationBand]:
    return {name: OperationBand(*band) for name, *band in rows}


def _operation_page(cut: OperationCut) -> str:
    return _page((cut.inputs, cut.settings, cut.results, cut.ledger), cut.warnings)


def _part_entries(rows: list[tuple[Any, ...]]) -> tuple[PartEntry, ...]:
    return tuple(PartEntry(name, machine, time, dict(times), rate) for name, machine, time, times, rate in rows)


def _part_lots(rows: list[tuple[Any, ...]]) -> tuple[PartLot, ...]:
    return tuple(PartLot._make([*row, tuple(PartLotEntry(*entry) for entry in entries)]) for *row, entries in rows)
