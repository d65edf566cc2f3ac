"""The system of units quantities are printed in."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

_SYSTEM: ContextVar[str] = ContextVar("gullet.units", default="metric")


def _get() -> str:
    return _SYSTEM.get()


def _checked(system: str) -> str:
    if system not in ("metric", "inch"):
        from ._errors import _error

        text = f'unknown_name: units = "{system}"; admissible: metric, inch'
        raise _error([("unknown_name", "units", f'"{system}"', "metric, inch", "use one of them", text)], None)
    return system


def get_units() -> str:
    """The system that is printed in: ``metric`` or ``inch``."""
    return _SYSTEM.get()


def set_units(system: str) -> None:
    """Prints in ``metric`` or ``inch`` units from now on, in this thread or task.

    >>> import gullet
    >>> gullet.Quantity("1/2 in")
    Quantity('12.7 mm')
    >>> with gullet.units("inch"):
    ...     gullet.Quantity("12.7 mm")
    Quantity('0.5 in')
    """
    _SYSTEM.set(_checked(system))


@contextmanager
def units(system: str) -> Iterator[None]:
    """Prints in ``metric`` or ``inch`` units within a ``with`` block.

    >>> import gullet
    >>> with gullet.units("inch"):
    ...     print(gullet.Quantity("12.7 mm"))
    0.5 in
    """
    token = _SYSTEM.set(_checked(system))
    try:
        yield
    finally:
        _SYSTEM.reset(token)
