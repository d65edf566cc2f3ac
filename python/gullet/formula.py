"""Every formula of the catalogue, as a function of keywords.

>>> import gullet
>>> print(gullet.formula.spindle_speed(cutting_speed="90 ft/min", diameter="1/2 in"))
688 rpm
>>> [round(x) for x in gullet.formula.spindle_speed(
...     cutting_speed="90 ft/min", diameter=["1/4 in", "1/2 in", "1 in"]).to("rpm")]
[1375, 688, 344]
"""

from __future__ import annotations

from ._gullet import formulas as _formulas

_ALL = {formula.name: formula for formula in _formulas()}
globals().update(_ALL)
__all__ = list(_ALL)
