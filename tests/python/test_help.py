"""What `help` shows: every public name tells what it is, and its examples run."""

from __future__ import annotations

import doctest
import inspect
import types

import pytest

import gullet
import gullet._drills
import gullet._economics
import gullet._errors
import gullet._html
import gullet._model
import gullet._operations
import gullet._study
import gullet._types
import gullet._units

MODULES = (gullet, gullet.formula, gullet._drills, gullet._economics, gullet._errors, gullet._html, gullet._model,
           gullet._operations, gullet._study, gullet._types, gullet._units)
# Constants and aliases have no text of their own; of formulas each object has one.
SILENT = {"__version__", "QuantityLike", "formula", "Formula"}
PUBLIC = [(name, getattr(gullet, name)) for name in gullet.__all__ if name not in SILENT]


def members(thing: object) -> list[tuple[str, object]]:
    if not inspect.isclass(thing):
        return []
    return [(name, value) for name, value in vars(thing).items() if not name.startswith("_")]


def text(thing: object) -> str:
    return thing.__doc__ if isinstance(thing.__doc__, str) else ""


def run(name: str, doc: str) -> int:
    """Runs the examples of a text; how many there are."""
    test = doctest.DocTestParser().get_doctest(doc, {}, name, None, 0)
    if test.examples:
        failed, _ = doctest.DocTestRunner(verbose=False).run(test)
        assert not failed, name
    return len(test.examples)


@pytest.mark.parametrize("module", MODULES, ids=lambda module: module.__name__)
def test_modules(module: types.ModuleType):
    failed, _ = doctest.testmod(module)
    assert not failed


@pytest.mark.parametrize(("name", "thing"), PUBLIC, ids=[name for name, _ in PUBLIC])
def test_every_public_name_is_explained_and_its_examples_run(name, thing):
    assert text(thing), name
    run(name, text(thing))
    named_tuple = inspect.isclass(thing) and issubclass(thing, tuple) and hasattr(thing, "_fields")
    for member, value in members(thing):
        if named_tuple or isinstance(value, (list, types.MemberDescriptorType)):
            continue
        assert text(value), f"{name}.{member}"
        run(f"{name}.{member}", text(value))


def test_the_names_a_newcomer_meets_have_an_example():
    for name in ("Quantity", "Table", "Library", "Material", "Cutter", "Setup", "Cut", "Job", "PassPlan",
                 "Card", "Step", "GulletError", "evaluate", "explain", "formulas", "setup", "mill", "job",
                 "card", "plan", "after_measurement", "set_units", "units", "catalogue", "worked_examples",
                 "units_of", "kinds", "codes", "Route", "route", "ToolLife", "fit_taylor", "fit_extended_taylor",
                 "fit_kienzle", "operate", "operations", "Operation", "OperationCut", "PartCard", "study", "study_batches", "Study", "StudyStream"):
        assert run(name, text(getattr(gullet, name))) > 0, name
