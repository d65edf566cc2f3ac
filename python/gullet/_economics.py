"""The economic speed of a cut, and what a lot takes and costs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, NamedTuple

from ._gullet import Quantity, Step
from ._gullet import _economics as _compute_economics
from ._gullet import _lot_cost as _compute_lot_cost

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ._types import QuantityLike


class WholeParts(NamedTuple):
    """A part where an edge makes whole parts only."""

    parts_per_edge: Quantity
    time_per_part: Quantity
    cost_per_part: Quantity


class EconomicSpeed(NamedTuple):
    """What a part takes and costs at one speed; ``whole_parts`` is None where no edge lasts a part."""

    cutting_speed: Quantity
    spindle_speed: Quantity
    feed_speed: Quantity
    tool_life: Quantity
    cutting_time: Quantity
    parts_per_edge: Quantity
    time_per_part: Quantity
    cost_per_part: Quantity
    whole_parts: WholeParts | None
    steps: tuple[Step, ...]


class SpindleSpeed(NamedTuple):
    """The best of the speeds a spindle has, its neighbours, and what it costs against the wanted one.

    ``below`` and ``above`` are the steps next to the wanted speed.
    """

    aim: str
    wanted: EconomicSpeed
    chosen: EconomicSpeed
    below: EconomicSpeed | None
    above: EconomicSpeed | None
    chosen_whole_parts: EconomicSpeed | None
    extra_cost: Quantity
    extra_cost_share: Quantity
    extra_time: Quantity
    extra_time_share: Quantity
    left_out: int


class Economics(NamedTuple):
    """The speeds of least cost and least time, on a spindle, too, where one is given."""

    least_cost: EconomicSpeed
    least_time: EconomicSpeed | None
    spindle_least_cost: SpindleSpeed | None
    spindle_least_time: SpindleSpeed | None
    text: str
    json: str

    def __str__(self) -> str:
        return self.text


class Share(NamedTuple):
    """A named share of a part's time and cost."""

    name: str
    meaning: str
    time: Quantity
    cost: Quantity


class LotPrice(NamedTuple):
    """What a lot takes and costs; the shares add up to the totals of a part."""

    shares: tuple[Share, ...]
    normal_time: Quantity
    standard_time: Quantity
    time_per_part: Quantity
    cost_per_part: Quantity
    lot_time: Quantity
    lot_cost: Quantity
    allowance: str
    learning: str
    steps: tuple[Step, ...]
    text: str
    json: str

    def __str__(self) -> str:
        return self.text


def _priced(row: tuple[Any, ...] | None) -> EconomicSpeed | None:
    if row is None:
        return None
    values, whole, steps = row
    return EconomicSpeed._make([*values, None if whole is None else WholeParts(*whole), tuple(steps)])


def _snapped(aim: str, wanted: Any, chosen: Any, below: Any, above: Any, whole: Any, extra: Any, left_out: int) -> Any:
    return SpindleSpeed._make([aim, *map(_priced, (wanted, chosen, below, above, whole)), *extra, left_out])


def _economics(least_cost: Any, least_time: Any, *rest: Any) -> Any:
    return Economics._make([_priced(least_cost), _priced(least_time), *rest])


def _lot_price(shares: Any, totals: Any, allowance: str, learning: str, steps: Any, *rest: Any) -> Any:
    rows = tuple(Share(*share) for share in shares)
    return LotPrice._make([rows, *totals, allowance, learning, tuple(steps), *rest])


def economics(
    *,
    machine_rate: QuantityLike,
    change_time: QuantityLike,
    taylor_speed: QuantityLike,
    taylor_exponent: QuantityLike,
    diameter: QuantityLike,
    travel: QuantityLike,
    feed_per_rev: QuantityLike,
    edge_cost: QuantityLike | None = None,
    handling_time: QuantityLike | None = None,
    in_cut_share: QuantityLike | None = None,
    machine: str | None = None,
    speeds: Sequence[QuantityLike] | None = None,
) -> Economics:
    """The speeds at which a part costs and takes least, and the best of a spindle's speeds.

    ``taylor_speed`` is that for a life of one minute at this feed and depth. ``machine`` names a
    built-in machine, ``speeds`` are the steps of another spindle, rising.

    >>> import gullet
    >>> found = gullet.economics(
    ...     machine_rate="60 money/h", edge_cost=4, change_time="3 min", handling_time="2 min",
    ...     taylor_speed="200 m/min", taylor_exponent=0.25,
    ...     diameter="60 mm", travel="200 mm", feed_per_rev="0.2 mm", speeds=["355 rpm", "500 rpm", "710 rpm"])
    >>> print(found.least_cost.cutting_speed, found.least_cost.tool_life)
    93.43 m/min 21 min
    >>> print(found.spindle_least_cost.chosen.spindle_speed)
    500 rpm
    """
    given = {name: value for name, value in locals().items() if name not in ("machine", "speeds")}
    found = _compute_economics(given, machine, None if speeds is None else list(speeds))
    assert isinstance(found, Economics)
    return found


def lot_cost(
    *,
    lot_size: QuantityLike,
    machine_rate: QuantityLike,
    cutting_time: QuantityLike,
    setup_time: QuantityLike | None = None,
    handling_time: QuantityLike | None = None,
    moving_time: QuantityLike | None = None,
    change_time: QuantityLike | None = None,
    edge_cost: QuantityLike | None = None,
    parts_per_edge: QuantityLike | None = None,
    gauging_time: QuantityLike | None = None,
    gauged_every: QuantityLike | None = None,
    allowance_of_normal_time: QuantityLike | None = None,
    allowance_of_standard_time: QuantityLike | None = None,
    wright_rate: QuantityLike | None = None,
    crawford_rate: QuantityLike | None = None,
    material_cost: QuantityLike | None = None,
) -> LotPrice:
    """What a lot takes and costs, share by share.

    Hands learn and machines do not: a learning rate shortens load and unload, tool changes and
    gauging, whose times are then those of the first part.

    >>> import gullet
    >>> price = gullet.lot_cost(lot_size=10, machine_rate="60 money/h", setup_time="30 min",
    ...                         handling_time="1 min", cutting_time="4 min", allowance_of_normal_time="20 %")
    >>> print(price.time_per_part, price.cost_per_part)
    9 min 9
    """
    found = _compute_lot_cost(locals())
    assert isinstance(found, LotPrice)
    return found
