"""Machining speeds, feeds, limits, passes and set-up cards.

>>> import gullet
>>> speed = gullet.formula.spindle_speed(cutting_speed="90 ft/min", diameter="1/2 in")
>>> print(speed)
688 rpm
>>> speed.to("rpm")
687.5493541569879
>>> print(gullet.explain("spindle_speed", cutting_speed="90 ft/min", diameter="1/2 in").text)
n = v_c/(pi D) = (27.432 m/min)/(pi x 12.7 mm) = 687.55 rpm
"""

from __future__ import annotations

from . import formula
from ._gullet import (
    Card,
    Cut,
    Formula,
    Job,
    KienzleFit,
    Library,
    OperationCut,
    PartCard,
    PassPlan,
    Quantity,
    Route,
    Setup,
    Step,
    Table,
    TaylorFit,
    ToolLife,
    __version__,
    builtin_names,
    catalogue,
    codes,
    column_unit,
    evaluate,
    explain,
    fit_extended_taylor,
    fit_kienzle,
    fit_taylor,
    formulas,
    job_keys,
    job_reference,
    job_schema,
    kinds,
    part_schema,
    route_schema,
    units_of,
    worked_examples,
)
from ._units import get_units, set_units, units

TYPE_CHECKING = False
if TYPE_CHECKING:
    from ._economics import (
        EconomicSpeed,
        Economics,
        LotPrice,
        Share,
        SpindleSpeed,
        WholeParts,
        economics,
        lot_cost,
    )
    from ._drills import TapDrill, tap_drills
    from ._errors import GulletError, GulletWarning, Problem, Rows
    from ._model import (
        Blank,
        Cutter,
        Hold,
        Machine,
        Material,
        Practice,
        Section,
        after_measurement,
        card,
        job,
        mill,
        plan,
        route,
        setup,
    )
    from ._operations import (
        Operation,
        OperationExample,
        OperationInput,
        OperationResult,
        Operations,
        operate,
        operations,
    )
    from ._records import (
        Adjustment,
        Band,
        Choice,
        Consequences,
        Datum,
        Doubt,
        Ledger,
        Limit,
        OperationBand,
        OperationInputs,
        OperationRecord,
        OperationResults,
        OperationSettings,
        Parameter,
        PartEntry,
        PartLot,
        PartLotEntry,
        Pass,
        PassTime,
        PlannedPass,
        Ranged,
        Relief,
        Settings,
        Support,
        TableColumn,
    )
    from ._study import Study, StudyStream, StudySummary, UnreadCell, study, study_batches
    from ._types import QuantityLike

__all__ = [
    "Adjustment",
    "Band",
    "Blank",
    "Card",
    "Choice",
    "Consequences",
    "Cut",
    "Cutter",
    "Datum",
    "Doubt",
    "EconomicSpeed",
    "Economics",
    "Formula",
    "GulletError",
    "GulletWarning",
    "Hold",
    "Job",
    "KienzleFit",
    "Ledger",
    "Library",
    "Limit",
    "LotPrice",
    "Machine",
    "Material",
    "Operation",
    "OperationBand",
    "OperationCut",
    "OperationExample",
    "OperationInput",
    "OperationInputs",
    "OperationRecord",
    "OperationResult",
    "OperationResults",
    "OperationSettings",
    "Operations",
    "Parameter",
    "PartCard",
    "PartEntry",
    "PartLot",
    "PartLotEntry",
    "Pass",
    "PassPlan",
    "PassTime",
    "PlannedPass",
    "Practice",
    "Problem",
    "Quantity",
    "QuantityLike",
    "Ranged",
    "Relief",
    "Route",
    "Rows",
    "Section",
    "Settings",
    "Setup",
    "Share",
    "SpindleSpeed",
    "Step",
    "Study",
    "StudyStream",
    "StudySummary",
    "Support",
    "Table",
    "TableColumn",
    "TapDrill",
    "TaylorFit",
    "ToolLife",
    "UnreadCell",
    "WholeParts",
    "__version__",
    "after_measurement",
    "builtin_names",
    "card",
    "catalogue",
    "codes",
    "column_unit",
    "economics",
    "evaluate",
    "explain",
    "fit_extended_taylor",
    "fit_kienzle",
    "fit_taylor",
    "formula",
    "formulas",
    "get_units",
    "job",
    "job_keys",
    "job_reference",
    "job_schema",
    "kinds",
    "lot_cost",
    "mill",
    "operate",
    "operations",
    "part_schema",
    "plan",
    "route",
    "route_schema",
    "set_units",
    "setup",
    "study",
    "study_batches",
    "tap_drills",
    "units",
    "units_of",
    "worked_examples",
]


def __getattr__(name: str) -> object:
    # Loaded at their first use: they take longer than all the rest.
    if name in __all__:
        from importlib import import_module

        for home in ("_errors", "_model", "_records", "_operations", "_study", "_types", "_economics", "_drills"):
            found = vars(import_module(f".{home}", __name__)).get(name)
            if found is not None:
                globals()[name] = found
                return found
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__() -> list[str]:
    return sorted({*globals(), *__all__})
