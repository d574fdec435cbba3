"""Type stubs: as the catalogue is, complete, and of use to a type checker."""

import ast
import os
import subprocess
import sys
from contextlib import suppress

import hankwise as hw
import pytest
from hankwise import _hankwise, _stubs

RIGHT = """
from typing import Any

import numpy as np
import hankwise as hw
from hankwise.yarn import twist_factor

twist: hw.Quantity = twist_factor(twist="9 tpi", count="16 YSW")
also: hw.Quantity = hw.yarn.twist_factor(hw.q(9, "tpi"), hw.q(np.array([16.0, 18.0]), "YSW"))
roots: list[hw.Quantity | None] = twist_factor.solve(
    "twist", twist_factor="39 turns/cm √tex", count="16 YSW"
)
shown: str = twist_factor.working(twist="9 tpi", count="16 YSW").text()
kept: hw.Quantity = hw.mill.mass_after_loss("3 kg", 0.08, held_up="0 kg")
share: hw.Quantity = hw.fibre.clean_yield_customs(0.52, vegetable_on_greasy=0.015)
mean: hw.Quantity = hw.yarn.mean_by_length(["16 Nm", "20 Nm"])
number: float = hw.convert(16, "Nm", "tex")
low: list[hw.Quantity | None] = [row.low for row in hw.handbook["packing"].find("wool")]
words: hw.HandbookTable = hw.yarn.weight_class("4 Nm", country="UK")
cost: hw.Results[str, Any] = hw.mill.cost_through(
    price_per_mass="4 /kg",
    stages=[("sort", {"loss": "6 %"}), {"name": "card", "loss": 0.08}, "press"],
    goods={"hank": "100 g", "throw": {"mass": hw.q(1.2, "kg")}},
)
hours: hw.Quantity = hw.mill.passages(cloth_length=["60 m", "80 m"], cloth_speed="8 m/min")["time"]
kind: str = hw.mill.week(
    lots={"Elm": {"colour": "black", "times": {"card": "10 h"}}},
    machines={"card": {"open_time": "40 h"}},
).working("card.finish").unit
chance: float | None = hw.plan.load("lot.toml").run(lots=1000, seed=2).chance
"""
REST = 'regain_before="60 %", regain_after="16 %", evaporation_rate="15 kg/h"'
DRYER = f'oven_dry_mass="40 kg", {REST}'
WRONG = {
    'hw.yarn.twist_factor(twits="9 tpi", count="16 YSW")': 'did you mean "twist"?',
    'hw.yarn.twist_factor.working(twist="9 tpi", cuont="16 YSW")': 'variant of "working"',
    "hw.yarn.twist_factor(twist=9, count='16 YSW')": '"twist" to "__call__"',
    "hw.yarn.twist_facto": 'maybe "twist_factor"',
    'hw.mill.mass_after_loss("3 kg", 0.08)': 'Missing positional argument "held_up"',
    "hw.q(16)": "No overload variant",
    f"hw.mill.dryer({DRYER}, eficiency=0.9)": 'keyword argument "eficiency"',
    f"hw.mill.dryer(oven_dry_mass=40, {REST})": '"oven_dry_mass" to "__call__"',
    f"hw.mill.dryer({REST})": 'Missing named argument "oven_dry_mass"',
    f"hw.mill.dryer({DRYER})['tiem']": "Invalid index type \"Literal['tiem']\"",
    'hw.quality.skein_count(masses=["9 g"], skein_length="60 m", option="scuored")': '"option"',
    'hw.mill.blend(components={"Ash": {"shrae": 0.5, "regain": 0.16}})': 'Extra key "shrae"',
}


def mypy(*arguments: str, cwd: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "mypy", "--strict", *arguments],
        cwd=cwd,
        env={**os.environ, "MYPY_FORCE_COLOR": "0", "NO_COLOR": "1"},
        capture_output=True,
        text=True,
        timeout=120,
    )


@pytest.mark.parametrize("room", ["fibre", "yarn", "cloth", "mill", "quality"])
def test_committed_stubs_are_as_the_catalogue_is(root, room):
    committed = (root / f"python/hankwise/{room}.pyi").read_text(encoding="utf-8")
    assert committed == _stubs.stub(getattr(hw, room)), "write them: python -m hankwise._stubs"


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_what_the_stubs_let_be_bare_runs_bare():
    def given(i, figure):
        return [figure] if i["many"] else figure

    for formula in hw.formulas.values():
        right = {
            i["name"]: given(i, f"{i['usual'][1]} {i['unit']}" if i["unit"] else 0.5)
            for i in formula.inputs
        }
        with suppress(hw.RangeError):
            formula(**right)
        for i in formula.inputs:
            if _stubs._type(i["unit"], i["many"]).startswith("_Measure"):
                with pytest.raises(hw.UnitError, match=f"{i['name']}.*: 0.5 has no unit"):
                    formula(**{**right, i["name"]: given(i, 0.5)})


def test_a_stale_stub_is_told(tmp_path, monkeypatch, capsys):
    monkeypatch.setattr(_stubs, "__file__", str(tmp_path / "_stubs.py"))
    assert _stubs.main(["--check"]) == 1
    assert capsys.readouterr().out.count("not as the catalogue is") == 5
    assert _stubs.main([]) == 0
    assert _stubs.main(["--check"]) == 0


def test_every_public_name_has_a_stub(root):
    tree = ast.parse((root / "python/hankwise/_hankwise.pyi").read_text(encoding="utf-8"))
    found: dict[str, set[str]] = {"": set()}
    for node in tree.body:
        if isinstance(node, ast.ClassDef):
            found[node.name] = {n.name for n in node.body if isinstance(n, ast.FunctionDef)}
        elif isinstance(node, ast.FunctionDef):
            found[""].add(node.name)
    for name, value in vars(_hankwise).items():
        if isinstance(value, type):
            if not issubclass(value, Exception):
                public = {key for key in vars(value) if not key.startswith("_")}
                stubbed = {key for key in found[name] if not key.startswith("_")}
                assert public == stubbed, name
            else:
                assert name in found
        elif callable(value):
            assert name in found[""]


def test_the_package_passes_mypy(root):
    done = mypy("-p", "hankwise", cwd=str(root))
    assert done.returncode == 0, done.stdout + done.stderr


def test_mypy_finds_what_is_misspelt(root, tmp_path):
    lines = ["import hankwise as hw", *WRONG]
    (tmp_path / "wrong.py").write_text("\n".join(lines), encoding="utf-8")
    (tmp_path / "right.py").write_text(RIGHT, encoding="utf-8")
    done = mypy("right.py", "wrong.py", cwd=str(tmp_path))
    for place, (line, words) in enumerate(WRONG.items(), start=2):
        told = [t for t in done.stdout.splitlines() if t.startswith(f"wrong.py:{place}: error")]
        assert len(told) == 1, (line, done.stdout)
        assert words in told[0]
    assert "right.py" not in done.stdout, done.stdout
