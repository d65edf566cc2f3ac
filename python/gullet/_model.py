"""What a shop owns, with the keys of a job file; set-ups, jobs and cards made from it."""

from __future__ import annotations

import json
import os
from collections.abc import Mapping, Sequence
from typing import Any, TypeVar

from ._fields import (
    BlankFields,
    CutterFields,
    HoldFields,
    MachineFields,
    MaterialFields,
    PracticeFields,
)
from ._gullet import Card, Cut, Job, Library, Part, PartCard, Quantity, Route, Setup, _form, _part_card, job_keys
from ._records import Ranged, _ranged

_KEYS: dict[str, dict[str, tuple[Any, ...]]] = {}
for _row in job_keys():
    _KEYS.setdefault(_row[0], {})[_row[1]] = _row

_S = TypeVar("_S", bound="Section")


def _plain(value: Any) -> Any:
    """A value as a job file in JSON writes it, without loss."""
    if value is None or isinstance(value, (str, bool, int, float)):
        return value
    if isinstance(value, Quantity):
        return json.loads(value.to_json())["text"]
    if isinstance(value, Section):
        return json.loads(value._part.given)
    if isinstance(value, Mapping):
        return {str(key): _plain(item) for key, item in value.items()}
    if isinstance(value, Sequence):
        return [_plain(item) for item in value]
    if hasattr(value, "m_as"):
        return _plain(Quantity(value))
    if hasattr(value, "tolist"):
        return _plain(value.tolist())
    return _plain(Quantity(value))


def _text(keys: Mapping[str, Any]) -> str:
    # A key that is None counts as left out.
    return json.dumps({key: _plain(value) for key, value in keys.items() if value is not None})


def _job_text(keys: Mapping[str, Any] | None) -> str:
    """Sections and head keys as given, every other key as one of the cut."""
    document: dict[str, Any] = {}
    cut: dict[str, Any] = {}
    for key, value in (keys or {}).items():
        if value is None:
            continue
        if key == "cut":
            cut.update(value)
        elif key in _KEYS or key in _KEYS[""]:
            document[key] = value
        else:
            cut[key] = value
    for name, alone in (("material", "id"), ("machine", "base"), ("practice", "base")):
        if isinstance(document.get(name), str):
            document[name] = {alone: document[name]}
    if cut:
        document["cut"] = {key: value for key, value in cut.items() if value is not None}
    return _text(document)


class Section:
    """A frozen part of a job, made from the keys of its section of a job file."""

    __slots__ = ("_part", "_values")
    _section = ""
    _alone = ""
    _part: Part
    _values: dict[str, Any]

    def __init__(self, *alone: str, library: Library | None = None, **keys: Any) -> None:
        if alone:
            if not self._alone or len(alone) > 1:
                raise TypeError(f"{type(self).__name__} takes its keys by name")
            keys = {self._alone: alone[0], **keys}
        self._take(Part(self._section, _text(keys), library))

    def _take(self, part: Part) -> None:
        object.__setattr__(self, "_part", part)
        values: dict[str, Any] = {}
        written = json.loads(part.to_json())
        for key, row in _KEYS[self._section].items():
            value, kind = written.get(key), row[3]
            if value is None:
                values[key] = None
            elif row[2] == "quantity":
                values[key] = Quantity(value, kind=kind)
            elif row[2] == "list":
                values[key] = tuple(Quantity(item, kind=kind) for item in value)
            else:
                values[key] = value
        values.update(part.row() or {})
        object.__setattr__(self, "_values", values)

    @classmethod
    def from_json(cls: type[_S], text: str, library: Library | None = None) -> _S:
        """Reads the keys of the section from a JSON object."""
        new = cls.__new__(cls)
        new._take(Part(cls._section, text, library))
        return new

    def to_json(self) -> str:
        """Every key as a JSON object, quantities without loss."""
        return self._part.to_json()

    @property
    def assumptions(self) -> tuple[str, ...]:
        """What was left out and assumed."""
        return tuple(self._part.assumptions)

    def __getattr__(self, name: str) -> Any:
        if name in ("_part", "_values"):
            raise AttributeError(name)
        try:
            return self._values[name]
        except KeyError:
            raise AttributeError(
                f"{type(self).__name__} has no {name!r}; it has {', '.join(self._values)}"
            ) from None

    def __setattr__(self, name: str, value: Any) -> None:
        raise AttributeError(f"{type(self).__name__} is frozen")

    def __delattr__(self, name: str) -> None:
        raise AttributeError(f"{type(self).__name__} is frozen")

    def __dir__(self) -> list[str]:
        return [*self._values, *object.__dir__(self)]

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Section):
            return NotImplemented
        return self._part == other._part

    def __hash__(self) -> int:
        return hash(self._part)

    def __reduce__(self) -> tuple[Any, ...]:
        return _restore, (type(self), self._part)

    def _shown(self) -> dict[str, Any]:
        hidden: tuple[Any, ...] = (None, "", (), [])
        return {name: value for name, value in self._values.items() if value not in hidden}

    def __repr__(self) -> str:
        def show(value: Any) -> str:
            if isinstance(value, tuple):
                return "(" + ", ".join(map(show, value)) + ")"
            return str(value) if isinstance(value, Quantity) else repr(value)

        keys = ", ".join(f"{name}={show(value)}" for name, value in self._shown().items())
        return f"{type(self).__name__}({keys})"

    def _repr_html_(self) -> str:
        from ._html import table

        def show(value: Any) -> str:
            if isinstance(value, (tuple, list)):
                return ", ".join(map(show, value))
            return str(value)

        rows = [(name, show(value)) for name, value in self._shown().items()]
        return table([self._section, ""], rows)


def _restore(cls: type[_S], part: Part) -> _S:
    new = cls.__new__(cls)
    new._take(part)
    return new


class Material(Section, MaterialFields):
    """A work material: one of the tables by its id or trade name, or the shop's own.

    >>> import gullet
    >>> material = gullet.Material("6061")
    >>> material.iso513, material.kc11.to("N/mm2")
    ('N', 800.0)
    """

    __slots__ = ()
    _section = "material"
    _alone = "id"

    def cutting_speed(
        self, tool_material: str, process: str = "end milling", *, library: Library | None = None
    ) -> Ranged:
        """Cutting speeds of the tables for this material under a tool material."""
        tables = library or self._part.library
        return _ranged(tables._cutting_speed(self._part, tool_material, process))

    def feed_per_tooth(
        self,
        tool_material: str,
        process: str = "end milling",
        *,
        diameter: Any,
        axial_depth: Any,
        library: Library | None = None,
    ) -> Ranged:
        """Feeds per tooth of the tables for a cutter diameter and an axial depth."""
        tables = library or self._part.library
        lengths = (Quantity(value, kind="length").to("m") for value in (diameter, axial_depth))
        return _ranged(tables._feed_per_tooth(self._part, tool_material, process, *lengths))


class Blank(Section, BlankFields):
    """The blank as it is clamped."""

    __slots__ = ()
    _section = "blank"


class Cutter(Section, CutterFields):
    """The cutter as it sits in the holder.

    >>> import gullet
    >>> cutter = gullet.Cutter(form="square", material="HSS", diameter="1/2 in", teeth=2,
    ...                        flute_length="1 in", stick_out="1.5 in")
    >>> cutter.diameter, cutter.assumptions[0]
    (Quantity('12.7 mm'), "cutter.shank_diameter: the cutter's diameter assumed")
    """

    __slots__ = ()
    _section = "cutter"


class Machine(Section, MachineFields):
    """The machine: a built-in one by its name, changed where keys are given, or the shop's own."""

    __slots__ = ()
    _section = "machine"
    _alone = "base"


class Hold(Section, HoldFields):
    """The vise and how the work sits in it."""

    __slots__ = ()
    _section = "hold"


class Practice(Section, PracticeFields):
    """What the shop allows itself: a built-in practice, changed where keys are given."""

    __slots__ = ()
    _section = "practice"
    _alone = "base"


def _part(cls: type[Section], value: Any, library: Library | None) -> Part:
    if isinstance(value, Section):
        return value._part
    if isinstance(value, str):
        return cls(value, library=library)._part
    return cls(library=library, **value)._part


def setup(
    *,
    material: Any,
    blank: Any,
    cutter: Any,
    machine: Any,
    hold: Any,
    practice: Any = "training",
    library: Library | None = None,
) -> Setup:
    """A set-up to mill passes with, its parts read and checked once.

    >>> import gullet
    >>> parts = dict(
    ...     material="6061",
    ...     blank={"length": "3 in", "width": "2 in", "height": "1 in"},
    ...     cutter={"form": "square", "material": "HSS", "diameter": "1/2 in", "teeth": 2,
    ...             "flute_length": "1 in", "stick_out": "1.5 in"},
    ...     machine="manual-knee-mill",
    ...     hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
    ... )
    >>> setup = gullet.setup(**parts)
    >>> [setup.mill(operation="side-milling", axial_depth="0.4 in", radial_depth=width,
    ...             warn_of_doubts=False).settings.spindle_speed.kind for width in ("0.02 in", "0.03 in")]
    ['rotational_speed', 'rotational_speed']
    """
    named = {
        "material": (Material, material),
        "blank": (Blank, blank),
        "cutter": (Cutter, cutter),
        "machine": (Machine, machine),
        "hold": (Hold, hold),
        "practice": (Practice, practice),
    }
    from ._errors import GulletError, Problem

    parts: dict[str, Part] = {}
    problems: list[Problem] = []
    for name, (cls, value) in named.items():
        try:
            parts[name] = _part(cls, value, library)
        except GulletError as error:
            problems.extend(error.problems)
    if problems:
        raise GulletError(tuple(problems))
    return Setup(**parts, library=library)


def _setup_of_json(text: str, library: Library | None) -> Setup:
    from ._errors import _problem

    try:
        parts = json.loads(text)
    except ValueError as error:
        raise _problem("syntax", "", str(error), "JSON as to_json() writes it", "correct the text") from None
    names = ("material", "blank", "cutter", "machine", "hold", "practice")
    if not isinstance(parts, dict) or set(parts) - set(names) or not set(names[:5]) <= set(parts):
        found = ", ".join(map(str, parts)) if isinstance(parts, dict) else type(parts).__name__
        raise _problem("wrong_type", "", found, ", ".join(names), "give an object with these sections")
    return setup(**parts, library=library)


def mill(
    *,
    material: Any,
    blank: Any,
    cutter: Any,
    machine: Any,
    hold: Any,
    practice: Any = "training",
    library: Library | None = None,
    **pass_: Any,
) -> Cut:
    """One pass of a cut: settings, consequences, limits and worked steps.

    >>> import gullet
    >>> parts = dict(
    ...     material="6061",
    ...     blank={"length": "3 in", "width": "2 in", "height": "1 in"},
    ...     cutter={"form": "square", "material": "HSS", "diameter": "1/2 in", "teeth": 2,
    ...             "flute_length": "1 in", "stick_out": "1.5 in"},
    ...     machine="manual-knee-mill",
    ...     hold={"clamping_force": "10 kN", "grip_depth": "0.5 in"},
    ... )
    >>> cut = gullet.mill(**parts, operation="side-milling", axial_depth="0.4 in",
    ...                   radial_depth="0.03 in", warn_of_doubts=False)
    >>> cut.consequences.cutting_power < cut.consequences.available_power
    True
    """
    made = setup(
        material=material,
        blank=blank,
        cutter=cutter,
        machine=machine,
        hold=hold,
        practice=practice,
        library=library,
    )
    return made.mill(**pass_)


def job(source: Any, library: Library | None = None) -> Job:
    """Reads a job: the path of a job file, its text in TOML or JSON, or a mapping of its keys.

    >>> import gullet
    >>> text = '''
    ... units = "inch"
    ... material.id = "6061"
    ... machine.base = "manual-knee-mill"
    ... hold = { clamping_force = "2000 lbf", grip_depth = "1/2 in" }
    ... blank = { length = "3 in", width = "2 in", height = "1 in" }
    ... cut = { operation = "side-milling", axial_depth = "0.4 in", remove = "0.12 in" }
    ... [cutter]
    ... form = "square"
    ... material = "HSS"
    ... diameter = "1/2 in"
    ... teeth = 2
    ... flute_length = "1 in"
    ... stick_out = "1.5 in"
    ... '''
    >>> job = gullet.job(text)
    >>> job.title, job.units
    ('side-milling of EN AW-6061 T6', 'inch')
    """
    if isinstance(source, Job):
        return source
    content, json_file = _content(source)
    return Job.from_json(content, library) if json_file else Job.from_toml(content, library)


def _content(source: Any) -> tuple[str, bool]:
    """The text of a job or route file, and whether it is JSON."""
    if isinstance(source, Mapping):
        return _text(source), True
    text = os.fspath(source)
    one_line = "\n" not in text and text.lower().endswith((".toml", ".json"))
    if isinstance(source, os.PathLike) or one_line:
        with open(text, encoding="utf-8") as file:
            return file.read(), text.lower().endswith(".json")
    return text, text.lstrip().startswith("{")


def route(source: Any, library: Library | None = None) -> Route:
    """Reads a route: the path of a route file, its text in TOML or JSON, or a mapping of its keys.

    >>> import gullet
    >>> text = '''
    ... route = "squared-block"
    ... material.id = "1018cd"
    ... machine.base = "manual-knee-mill"
    ... blank = { length = "84 mm", width = "53 mm", height = "29 mm", sawn = ["left", "right"] }
    ... part = { length = "80 mm", width = "50 mm", height = "26 mm", tolerance = "0.1 mm" }
    ... [cutter]
    ... form = "square"
    ... material = "HSS"
    ... diameter = "20 mm"
    ... teeth = 4
    ... flute_length = "38 mm"
    ... stick_out = "45 mm"
    ... [hold]
    ... clamping_force = "14 kN"
    ... jaw_height = "40 mm"
    ... parallels = ["18 mm", "22 mm"]
    ... '''
    >>> print(gullet.route(text).summary.splitlines()[0])
    ROUTE  squared block of AISI 1018 cold drawn
    """
    if isinstance(source, Route):
        return source
    content, json_file = _content(source)
    return Route.from_json(content, library) if json_file else Route.from_toml(content, library)


def card(source: Any, library: Library | None = None) -> Card | Route | PartCard:
    """The set-up card of a job: anything that ``gullet.job`` reads. Of the file of a squared block
    the route, of a part made by several operations its cards, which have the same forms.

    ``print(card)`` shows the text; ``card.html`` is one printable page.

    >>> import gullet
    >>> text = '''
    ... units = "inch"
    ... material.id = "6061"
    ... machine.base = "manual-knee-mill"
    ... hold = { clamping_force = "2000 lbf", grip_depth = "1/2 in" }
    ... blank = { length = "3 in", width = "2 in", height = "1 in" }
    ... cut = { operation = "side-milling", axial_depth = "0.4 in", remove = "0.12 in" }
    ... [cutter]
    ... form = "square"
    ... material = "HSS"
    ... diameter = "1/2 in"
    ... teeth = 2
    ... flute_length = "1 in"
    ... stick_out = "1.5 in"
    ... '''
    >>> card = gullet.card(text)
    >>> print(str(card).splitlines()[0])
    SET-UP CARD  side-milling of EN AW-6061 T6
    >>> card.html.startswith("<!DOCTYPE html>")
    True
    """
    if isinstance(source, (Route, PartCard)):
        return source
    if isinstance(source, Job):
        return source.card()
    content, json_file = _content(source)
    form = _form(content, json_file)
    if form == "part":
        return _part_card(content, not json_file, library)
    return route(source, library) if form == "squared-block" else job(source, library).card()


def plan(source: Any, library: Library | None = None) -> Any:
    """The pass plan of a job: anything that ``gullet.job`` reads.

    >>> import gullet
    >>> text = '''
    ... units = "inch"
    ... material.id = "6061"
    ... machine.base = "manual-knee-mill"
    ... hold = { clamping_force = "2000 lbf", grip_depth = "1/2 in" }
    ... blank = { length = "3 in", width = "2 in", height = "1 in" }
    ... cut = { operation = "side-milling", axial_depth = "0.4 in", remove = "0.12 in" }
    ... [cutter]
    ... form = "square"
    ... material = "HSS"
    ... diameter = "1/2 in"
    ... teeth = 2
    ... flute_length = "1 in"
    ... stick_out = "1.5 in"
    ... '''
    >>> gullet.plan(text).stock.to("in")
    0.12
    """
    return job(source, library).plan()


def after_measurement(source: Any, measured: Any, final: Any, library: Library | None = None) -> Job:
    """The job that is left after a measurement: its size as measured and the size wanted.

    >>> import gullet
    >>> text = '''
    ... units = "inch"
    ... material.id = "6061"
    ... machine.base = "manual-knee-mill"
    ... hold = { clamping_force = "2000 lbf", grip_depth = "1/2 in" }
    ... blank = { length = "3 in", width = "2 in", height = "1 in" }
    ... cut = { operation = "side-milling", axial_depth = "0.4 in", remove = "0.12 in" }
    ... [cutter]
    ... form = "square"
    ... material = "HSS"
    ... diameter = "1/2 in"
    ... teeth = 2
    ... flute_length = "1 in"
    ... stick_out = "1.5 in"
    ... '''
    >>> left = gullet.after_measurement(text, measured="2.031 in", final="2 in")
    >>> f"{left.plan().stock:in}"
    '0.031 in'
    """
    old = job(source, library)
    keys = json.loads(old.to_json())
    keys["cut"].pop("remove", None)
    keys["cut"].update(measured=_plain(measured), final=_plain(final))
    return Job.from_json(json.dumps(keys), library or old.library)
