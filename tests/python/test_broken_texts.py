"""What Python holds as a text or number, and no one else: half a character, a NUL, 2**64."""

# ruff: noqa: B023, E501 - each call is made before the loop goes on
from __future__ import annotations

import functools
import inspect
import itertools
import warnings
from collections.abc import Callable, Iterator
from typing import Any

import hankwise as hw
import pytest
from calls import CALLS

HALF = "16 \ud800tex"
LOT = "examples/first-lot.toml"
ROOMS = (hw.fibre, hw.yarn, hw.cloth, hw.mill, hw.quality)
# What is likely to be taken where a call needs something else.
PLAIN = ("16 tex", "1", 1, 0.5, ["16 tex", "17 tex"], [1.0, 2.0, 3.0, 4.0])


@pytest.fixture(scope="module")
def things() -> list[object]:
    """One of each class that can be called."""
    yarn = hw.yarn.parse("R 41 tex Z 4 turns/cm/2 S 5 turns/cm; 20 tex")
    plan = hw.plan.load(LOT)
    result = plan.run(lots=20, seed=1)
    weave = hw.cloth.weave("2/2 twill")
    mule = hw.mill.mule(
        spindles=120, travel="6 ft", cycle="22.5 s", count="150 tex", efficiency="85 %"
    )
    return [
        hw.q("16 tex"), hw.q([1.0, 2.0], "kg"), yarn, plan, result, weave, weave.draft, mule,
        mule.working("output"), hw.find("twist"), hw.counts, hw.handbook, hw.handbook["fibre_densities"],
        hw.quality.chart([1.0, 2.0, 1.5, 1.7]), weave.picture(), result.goods,
        hw.yarn.twist_factor, hw.yarn.round_tex("16 Nm"),
    ]  # fmt: skip


def callables(things: list[object]) -> Iterator[tuple[str, Callable[..., Any]]]:
    """Give every public callable that is no class, formula or calculation, with its name."""
    for home in (hw, hw.plan, *ROOMS):
        for name in dir(home):
            one = getattr(home, name)
            if not name.startswith("_") and callable(one) and not isinstance(one, type):
                yield f"{home.__name__}.{name}", one
    for thing in things:
        for name in dir(thing):
            if not name.startswith("_") and callable(one := getattr(thing, name)):
                yield f"{type(thing).__name__}.{name}", one


def refused(call: Callable[[], object]) -> Exception | None:
    """Give the error of a call, where there is one."""
    with warnings.catch_warnings(action="ignore"):
        try:
            call()
        except Exception as error:
            return error
    return None


def is_ours(error: Exception | None) -> bool:
    """Tell whether an error is one that a user can read: of half a character it is not."""
    return not isinstance(error, UnicodeError)


def ways(function: Callable[..., Any], broken: object) -> Iterator[Callable[[], object]]:
    """Give calls with one broken argument, what is needed besides being something plain."""
    parameters = inspect.signature(function).parameters.values()
    fixed = [p for p in parameters if p.kind not in (p.VAR_POSITIONAL, p.VAR_KEYWORD)]
    for one, plain in itertools.product(fixed, PLAIN):
        given, named = [], {}
        for other in fixed:
            value = broken if other is one else plain
            if other is not one and other.default is not other.empty:
                continue
            if other.kind is other.POSITIONAL_ONLY:
                given.append(value)
            else:
                named[other.name] = value
        yield lambda given=given, named=named: function(*given, **named)
    if any(p.kind is p.VAR_KEYWORD for p in parameters):
        yield lambda: function(**{HALF: "1"})
        needed = [p.name for p in fixed if p.default is p.empty]
        yield lambda: function(**dict.fromkeys(needed, "16 tex"), **{HALF: "1"})


# What is written nowhere: it would change what later tests know, or write files.
SKIPPED = {"cli.main"}


def test_half_a_character_is_refused_in_words_everywhere(things, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    faults, tried = set(), 0
    for name, function in callables(things):
        if isinstance(function, hw.Formula | hw.Calculation) or name in SKIPPED:
            continue
        try:
            every = list(ways(function, HALF))
        except (TypeError, ValueError):
            continue
        for call in every:
            tried += 1
            if not is_ours(error := refused(call)):
                faults.add(f"{name}: {error!r}")
    assert not faults, "\n".join(sorted(faults))
    assert tried > 500
    assert not list(tmp_path.iterdir())


def test_half_a_character_is_refused_in_words_by_every_formula():
    faults = set()
    for formula in hw.formulas.values():
        given = {i["name"]: [HALF] * 2 if i["many"] else HALF for i in formula.inputs}
        calls = [
            lambda: formula(**given), lambda: formula.working(**given),
            lambda: formula(**{HALF: 1}), lambda: formula.solve(HALF, **{formula.name: 1}),
            lambda: formula.solve_working(next(iter(given)), **{formula.name: HALF}),
        ]  # fmt: skip
        for call in calls:
            error = refused(call)
            if (
                error is None
                or not is_ours(error)
                or not isinstance(error, hw.HankwiseError | TypeError)
            ):
                faults.add(f"{formula.name}: {error!r}")
        # The columns of texts too.
        first = formula.inputs[0]
        error = refused(lambda: formula(**given | {first["name"]: ["1", HALF]}))
        if not isinstance(error, hw.HankwiseError) or first["name"] not in str(error):
            faults.add(f"{formula.name}, a column: {error!r}")
    assert not faults, "\n".join(sorted(faults))


def broken_one_by_one(given: Any) -> Iterator[Any]:
    """Give what was given with one text after the other broken, names too."""
    if isinstance(given, str):
        yield HALF
    elif isinstance(given, dict):
        for name, value in given.items():
            for broken in broken_one_by_one(value):
                yield given | {name: broken}
        yield given | {HALF: "1"}
    elif isinstance(given, list | tuple):
        for at, value in enumerate(given):
            for broken in broken_one_by_one(value):
                yield type(given)([*given[:at], broken, *given[at + 1 :]])


def test_half_a_character_is_refused_in_words_by_every_calculation():
    faults = set()
    for name, calls in CALLS.items():
        for given in calls[:1] if isinstance(calls, list) else [calls]:
            for broken in broken_one_by_one(given):
                error = refused(lambda: hw.calculations[name](**broken))
                if not isinstance(error, hw.HankwiseError | TypeError) or not is_ours(error):
                    faults.add(f"{name}: {error!r}")
    assert not faults, "\n".join(sorted(faults)[:20])


@pytest.mark.parametrize(
    ("call", "named"),
    [
        (lambda: hw.q(HALF), "half of a character"),
        (lambda: hw.q(16, HALF), "unit"),
        (lambda: hw.q("16 tex").to(HALF), "unit"),
        (lambda: hw.convert(1, HALF, "tex"), "from_unit"),
        (lambda: hw.convert(1, "tex", HALF), "to_unit"),
        (lambda: hw.find(HALF), "words"),
        (lambda: hw.find("twist", kind=HALF), "kind"),
        (lambda: hw.units(HALF), "kind"),
        (lambda: hw.source(HALF), "key"),
        (lambda: hw.yarn.parse(HALF), "text"),
        (lambda: hw.yarn.parse("16 tex", material=HALF), "material"),
        (lambda: hw.plan.load(HALF), "path"),
        (lambda: hw.plan.loads(HALF), "text"),
        (lambda: hw.load_counts(HALF), "path"),
        (lambda: hw.yarn.twist_factor(HALF, "16 tex"), "twist"),
        (lambda: hw.yarn.twist_factor(["9 tpi", HALF], "16 tex"), "twist"),
        (lambda: hw.define_count(HALF, length="1 m", mass="1 g"), "name"),
        (lambda: hw.fibre.allowance(HALF), "fibre"),
        (lambda: hw.yarn.twist_factor("9 tpi", "16 tex", **{HALF: 1}), "twist_factor"),
    ],
)
def test_the_message_names_the_argument(call, named):
    with pytest.raises((hw.HankwiseError, TypeError), match=named) as raised:
        call()
    assert not isinstance(raised.value, UnicodeError)
    str(raised.value).encode()


@pytest.mark.parametrize("huge", [2**63, 2**64, -(2**64), 10**400])
def test_formulas_take_or_refuse_whole_numbers_of_any_size(huge):
    faults = set()
    for formula in hw.formulas.values():
        given = [[huge] if i["many"] else huge for i in formula.inputs]
        error = refused(functools.partial(formula, *given))
        if isinstance(error, OverflowError):
            faults.add(f"{formula.name}: {error!r}")
    assert not faults, "\n".join(sorted(faults))


def test_a_nul_in_the_name_of_a_file_is_refused(things, tmp_path):
    working = hw.yarn.twist_factor.working("9 tpi", "16 YSW")
    result = hw.plan.load(LOT).run(lots=0)
    for call in (
        lambda: hw.plan.load("a\0b.toml"),
        lambda: hw.load_counts("a\0b.toml"),
        lambda: working.to_workbook(tmp_path / "a\0b.xlsx"),
        lambda: result.to_workbook(tmp_path / "a\0b.xlsx"),
        lambda: result.to_papers(tmp_path / "a\0b"),
        lambda: hw.cloth.weave("plain").picture().save(tmp_path / "a\0b.svg"),
    ):
        with pytest.raises(hw.HankwiseError):
            call()
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("no_text", [5, None, 1.5, b"twist", ["twist"], object()])
def test_a_search_for_what_is_no_text_is_refused(no_text):
    for search in (hw.find, hw.handbook["fibre_densities"].find):
        with pytest.raises(TypeError, match=r"text|str"):
            search(no_text)
