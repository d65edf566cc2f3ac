"""Signatures of formulas, for help and editors."""

from __future__ import annotations

import inspect
from typing import Any


def signature(formula: Any) -> inspect.Signature:
    """Keywords only, with the defaults of the catalogue."""
    kind = inspect.Parameter.KEYWORD_ONLY
    parameters = [
        inspect.Parameter(
            parameter.name,
            kind,
            default=inspect.Parameter.empty if parameter.default is None else parameter.default,
        )
        for parameter in formula.parameters
    ]
    parameters.append(inspect.Parameter("on_bad_row", kind, default="raise"))
    return inspect.Signature(parameters)
