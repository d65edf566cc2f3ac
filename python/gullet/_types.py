"""What is read as a quantity, for annotations."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Literal, Protocol, TypeAlias, Union

from ._gullet import Quantity


class ForeignQuantity(Protocol):
    """A quantity of a units library."""

    @property
    def units(self) -> Any: ...

    def m_as(self, units: Any, /) -> Any: ...


class ArrayLike(Protocol):
    """An array of numpy or of one who converts to it."""

    def __array__(self) -> Any: ...


class ArrowStream(Protocol):
    """A table of any library that exports streams of Arrow."""

    def __arrow_c_stream__(self, requested_schema: Any = None) -> Any: ...


class SizedArrowStream(ArrowStream, Protocol):
    """One that can be read as often as one likes: it knows how many rows it has."""

    def __len__(self) -> int: ...


class ArrowArray(Protocol):
    """A batch of any library that exports struct arrays of Arrow."""

    def __arrow_c_array__(self, requested_schema: Any = None) -> Any: ...


Units: TypeAlias = Union[Literal["metric"], Literal["inch"]]

QuantityLike: TypeAlias = Union[
    Quantity,
    str,
    float,
    ForeignQuantity,
    ArrayLike,
    Sequence[Quantity],
    Sequence[str],
    Sequence[float],
]
