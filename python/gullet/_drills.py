"""Drills for a thread."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from ._gullet import Library, Quantity
from ._gullet import _tap_drills as _choose

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ._types import QuantityLike


class TapDrill(NamedTuple):
    """A drill for a thread; ``percent`` is on the basis asked for, the others of a cutting tap."""

    name: str
    set: str
    diameter: Quantity
    percent: Quantity
    chart_percent: Quantity | None
    overlap_percent: Quantity | None


def tap_drills(
    *,
    major_diameter: QuantityLike,
    pitch: QuantityLike,
    thread_percent: QuantityLike | None = None,
    smallest_percent: QuantityLike | None = None,
    largest_percent: QuantityLike | None = None,
    basis: str = "chart",
    sets: Sequence[str] | None = None,
    library: Library | None = None,
) -> list[TapDrill]:
    """The drills that leave an admissible percentage of thread, the nearest to the one wanted first.

    ``basis`` says what the percentages are shares of: ``chart`` as tap-drill charts reckon, ``overlap``
    that of ISO and unified threads, ``forming`` for a tap that forms. Without them they are 75, 60 and
    83 %, of a forming tap 65, 55 and 75 % (common practice). ``sets`` are some of metric, fraction,
    number, letter, own.

    >>> import gullet
    >>> found = gullet.tap_drills(
    ...     major_diameter="1/4 in", pitch="1/20 in", sets=["fraction", "number", "letter"])
    >>> print(found[0].name, found[0].diameter.to("in"))
    No 7 0.201
    """
    given = {
        "major_diameter": major_diameter,
        "pitch": pitch,
        "thread_percent": thread_percent,
        "smallest_percent": smallest_percent,
        "largest_percent": largest_percent,
    }
    rows = _choose(given, basis, None if sets is None else list(sets), library)
    return [TapDrill(*row) for row in rows]
