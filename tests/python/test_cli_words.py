"""The command line: wrong things get one message and exit code 1 or 2, never a traceback."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
LOT = "examples/first-lot.toml"


def run(*words: str, **more: str) -> subprocess.CompletedProcess[str]:
    """Run the command as a shell would."""
    command = [sys.executable, "-m", "hankwise", *words]
    env = os.environ | {"PYTHONUTF8": "1"} | more
    return subprocess.run(
        command, cwd=ROOT, env=env, capture_output=True, encoding="utf-8", check=False
    )


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["plan", "nofile.toml"], "no such file"),
        (["plan", "examples"], "cannot be read"),
        (["plan", LOT, "--lots", "-1"], "whole number from 0 up"),
        (["plan", LOT, "--lots", "9" * 20], "whole number from 0 up"),
        (["plan", LOT, "--lots", "10000000000"], "10000000"),
        (["plan", LOT, "--seed", "1e5"], "whole number from 0 up"),
        (["plan", LOT, "--needed", "throw=²"], "such as hank=200,throw=12"),
        (["plan", LOT, "--needed", "throw=1,throw=2"], "appears twice"),
        (["plan", LOT, "--needed", "throw=" + "9" * 12], "more than any lot makes"),
        (["plan", LOT, "--needed", "--confidence", "95"], "0.95"),
        (["plan", LOT, "--needed", "--workbook", "x.xlsx"], "without --needed"),
        (["plan", LOT, "--working", ""], "name one such as"),
        (["plan", LOT, "--workbook", "x.txt"], ".xlsx"),
        (["convert", "16", "Nm"], "names no unit to convert to"),
        (["convert", "16", "Nm", "YWS"], "did you mean 'YSW'?"),
        (["convert", "0", "tex", "Nm"], "more than 0"),
        (["calc", "twist_factor", "twist=9 tpi", "twist=8 tpi", "count=16 YSW"], "given twice"),
        (["calc", "twist_factor", "--latex"], "needs the inputs"),
        (["calc", "twist_factor", "--bogus", "twist=9 tpi"], "--bogus"),
    ],
)
def test_wrong_words(words: list[str], says: str) -> None:
    done = run(*words)
    assert done.returncode in (1, 2)
    assert done.stdout == ""
    assert says in done.stderr
    assert "Traceback" not in done.stderr
    assert not (ROOT / "x.xlsx").exists()
    assert not (ROOT / "x.txt").exists()


@pytest.mark.parametrize(
    ("words", "says"),
    [
        # A lot without its times, one value for the list of them, and both.
        (["lots.Elm.colour=black"], "lots.Elm.times (time at each machine"),
        (["lots.Elm.colour=black"], "is missing; write lots.Elm.times.NAME.time=…"),
        (
            ["lots.Elm.colour=black", "lots.Elm.times=10 h"],
            "is a list; write lots.Elm.times.NAME.time=10 h",
        ),
        (["lots.Elm.times=10 h", "lots.Elm.times.card=1 h"], "write lots.Elm.times.NAME.time=10 h"),
        (["lots=5"], "week: lots (lots) is a list; write lots.NAME.colour=5"),
        (["lots=5", "lots.Elm.colour=black"], "write lots.NAME.colour=5"),
        ([], "week: lots (lots) is missing; write lots.NAME.colour=…"),
    ],
)
def test_lists_in_lists_are_asked_for_as_they_are_typed(words: list[str], says: str) -> None:
    done = run("calc", "week", "machines.card.open_time=40 h", *words)
    assert done.returncode == 1
    assert done.stdout == ""
    assert says in done.stderr
    assert "Traceback" not in done.stderr
    assert "[{" not in done.stderr


def test_options_may_stand_anywhere() -> None:
    first = run("calc", "twist_factor", "twist=9 tpi", "count=22½ YSW", "--json")
    second = run("calc", "twist_factor", "--json", "twist=9 tpi", "count=22½ YSW")
    assert first.returncode == 0
    assert first.stdout == second.stdout
    assert json.loads(first.stdout)["formula"] == "twist_factor"


def test_a_working_as_json() -> None:
    done = run("plan", LOT, "--lots", "0", "--working", "twister.twist", "--json")
    assert json.loads(done.stdout)["unit"] == "turns/m"


def test_to_is_understood() -> None:
    assert run("convert", "16", "Nm", "to", "YSW").stdout == "16 Nm = 31.00 YSW\n"


def test_an_ascii_locale_reads_a_half() -> None:
    done = run(
        "calc",
        "twist_factor",
        "twist=9 tpi",
        "count=22½ YSW",
        PYTHONUTF8="0",
        LC_ALL="C",
        PYTHONCOERCECLOCALE="0",
    )
    assert done.returncode == 0, done.stderr


def test_a_closed_output_is_no_error() -> None:
    command = f"{sys.executable} -m hankwise find >&-"
    done = subprocess.run(
        ["sh", "-c", command], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["plan", LOT, "--all", "--json"], "omit --all"),
        (["plan", LOT, "--all", "--needed"], "without --needed"),
        (["plan", LOT, "--all", "--working", "twister.twist"], "without --working"),
        (["plan", LOT, "--lots", "0", "--seed", "3"], "omit one of the two"),
        (["plan", LOT, "--confidence", "0.9"], "write --needed too"),
        (["plan", LOT, "--force"], "add --workbook FILE or --picture FILE"),
        (["weave", "plain", "--force"], "add --picture FILE"),
        (["calc", "hank_mass", "--force"], "add --workbook FILE"),
        (
            ["setts", "plain", "--warp-count", "74 tex", "--yarn-factor", "84"],
            "write 0.84 for 84 %",
        ),
        (["convert", "-5 tex", "Nm"], "more than 0"),
    ],
)
def test_what_would_have_no_effect_is_refused(words, said):
    ran = run(*words)
    assert ran.returncode == 1
    assert said in ran.stderr
    assert ran.stdout == ""


def test_a_list_within_a_row_is_typed_by_its_names():
    lots = ["Elm.colour=black", "Elm.times.card=10 h", "Ash.colour=white", "Ash.times.card=6 h"]
    typed = [f"lots.{word}" for word in lots]
    done = run("calc", "week", *typed, "machines.card.open_time=40 h", "order=as given")
    assert done.returncode == 0, done.stderr
    assert "Ash" in done.stdout
    assert "16 h" in done.stdout
    again = run("calc", "week", *typed, typed[1], "machines.card.open_time=40 h")
    assert again.returncode != 0
    assert "given twice" in again.stderr
