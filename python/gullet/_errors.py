"""Errors and warnings; the compiled part makes them."""

from __future__ import annotations

import warnings
from typing import Any, NamedTuple


class Problem(NamedTuple):
    """One problem: which parameter, its value, what would be admissible, what to do."""

    code: str
    parameter: str
    value: str
    admissible: str
    remedy: str
    text: str

    def __str__(self) -> str:
        return self.text


class Rows(NamedTuple):
    """Bad rows of an array: how many of how many, the first ones, how many of each code."""

    bad: int
    all: int
    first: list[int]
    counts: list[tuple[str, int]]

    def __str__(self) -> str:
        counts = ", ".join(f"{count} {code}" for code, count in self.counts)
        first = ", ".join(map(str, self.first))
        more = ", ..." if self.bad > len(self.first) else ""
        return f"{self.bad} of {self.all} rows are bad ({counts}): rows {first}{more}"


class GulletError(ValueError):
    """What was asked for cannot be computed; ``problems`` tells everything that is wrong.

    >>> import gullet
    >>> try:
    ...     gullet.formula.spindle_speed(cutting_speed="90 ft/min", diameter="0 in")
    ... except gullet.GulletError as error:
    ...     print(error.code, error.parameter, error.value, "|", error.admissible)
    out_of_range diameter 0 in | above 0 in
    """

    __module__ = "gullet"

    problems: tuple[Problem, ...]
    rows: Rows | None

    def __init__(self, problems: tuple[Problem, ...], rows: Rows | None = None) -> None:
        self.problems = tuple(problems)
        self.rows = rows
        super().__init__(self.problems, rows)

    @property
    def _first(self) -> Problem:
        return self.problems[0]

    @property
    def code(self) -> str:
        """Stable name of the first problem, one of ``gullet.codes()``."""
        return self._first.code

    @property
    def parameter(self) -> str:
        """Argument or key of the first problem; a path such as ``cutter.teeth`` in a job."""
        return self._first.parameter

    @property
    def value(self) -> str:
        """The offending value of the first problem, with its unit."""
        return self._first.value

    @property
    def admissible(self) -> str:
        """What would do, of the first problem."""
        return self._first.admissible

    @property
    def remedy(self) -> str:
        """What to do about the first problem."""
        return self._first.remedy

    def __str__(self) -> str:
        lines = [] if self.rows is None else [str(self.rows)]
        return "\n".join(lines + [problem.text for problem in self.problems])


class GulletWarning(UserWarning):
    """A doubt about a result that was computed: an assumption, a rounding, a lowered setting."""

    __module__ = "gullet"


def _error(problems: list[tuple[str, ...]], rows: tuple[Any, ...] | None) -> GulletError:
    return GulletError(
        tuple(Problem(*problem) for problem in problems), None if rows is None else Rows(*rows)
    )


def _problem(code: str, parameter: str, value: str, admissible: str, remedy: str) -> GulletError:
    text = f"{code}: {value}; admissible: {admissible}; {remedy}"
    return GulletError((Problem(code, parameter, value, admissible, remedy, text),))


def _warn(text: str) -> None:
    # The compiled part adds no frame of its own: 2 is the caller of the function that warns.
    warnings.warn(text, GulletWarning, stacklevel=2)


def _warn_rows(name: str, rows: tuple[Any, ...]) -> None:
    warnings.warn(f"{name}: {Rows(*rows)}; they are nan", GulletWarning, stacklevel=2)
