"""New lot and mill files from a few words, and plans of words alone."""

import json
import os
import pty
import select
import subprocess
import sys

import hankwise as hw
import pytest
from conftest import cases
from hankwise._hankwise import _questions
from hankwise.cli import main
from hypothesis import given, settings
from hypothesis import strategies as st

BREEDS = sorted({row.of["breed"] for row in hw.handbook["breed_yields"]})
FEELS = ["fine", "medium", "coarse", "19.5µm", "34 µm"]
FORMS = {
    "hank": ["", ":50g", ":100 g", ":4 oz"],
    "ball": ["", ":25g"],
    "cone": ["", ":0.5kg"],
    "throw": ["", ":1.3x1.7m"],
    "blanket": ["", ":1.5 m x 2 m"],
    "shawl": [""],
    "scarf": ["", ":25x150cm"],
    "rug": [""],
}


@st.composite
def goods(draw):
    names = draw(st.lists(st.sampled_from(sorted(FORMS)), min_size=1, max_size=4))
    parts = [name + draw(st.sampled_from(FORMS[name])) for name in names]
    counts = [draw(st.integers(1, 300)) for _ in parts]
    last = draw(st.booleans())
    return ",".join(
        part if last and place == len(parts) - 1 else f"{part}:{count}"
        for place, (part, count) in enumerate(zip(parts, counts, strict=True))
    )


LOTS = st.fixed_dictionaries(
    {},
    optional={
        "greasy": st.integers(10, 900).map("{}kg".format)
        | st.integers(25, 900).map("{} lb".format),
        "breed": st.sampled_from([*BREEDS, "Down cross", "Romney cross", "any of the hill"]),
        "feel": st.sampled_from(FEELS),
        "goods": goods(),
        "count": st.integers(150, 500).map("{} m/100g".format),
        "owner": st.text(max_size=20),
        "by": st.dates().map(str),
        "name": st.text(max_size=20),
    },
)
MILLS = st.fixed_dictionaries(
    {},
    optional={
        "spindles": st.integers(20, 400).map(str),
        "ends": st.integers(10, 200).map(str),
        "held_up": st.integers(0, 9).map(lambda n: f"0.{n}5 kg"),
        "reel": st.sampled_from(["1.5m", "54 in", "2 yd"]),
        "loom_width": st.sampled_from(["1.9m", "90 in"]),
        "reeds": st.sampled_from(["24 dents/10 cm", "10 dents/in, 12 dents/in"]),
        "regain": st.integers(14, 18).map("{} %".format),
    },
) | st.just({"spinning": "ring"})


@given(words=LOTS, mill=MILLS)
@settings(max_examples=cases(60))
def test_what_is_written_is_planned(tmp_path_factory, words, mill):
    folder = tmp_path_factory.mktemp("new")
    lot = hw.plan.new_lot(**words)
    handbook = hw.plan.loads(lot).run(lots=300)
    assert all(good["planned"] >= 0 for good in handbook.goods)
    (folder / "mill.toml").write_text(hw.plan.new_mill(**mill), encoding="utf-8")
    (folder / "lot.toml").write_text(hw.plan.new_lot("mill.toml", **words), encoding="utf-8")
    own = hw.plan.load(folder / "lot.toml")
    assert own.promise == hw.plan.loads(lot).promise
    assert own.run(lots=300).spoken().endswith(".")


@pytest.fixture
def run(capsys, monkeypatch, tmp_path):
    monkeypatch.chdir(tmp_path)

    def command(*words: str) -> tuple[int, str, str]:
        try:
            code = main(words)
        except SystemExit as stop:
            code = stop.code
        out = capsys.readouterr()
        return code, out.out, out.err

    return command


def test_bare_prints_three_lines_and_help_stays(run):
    code, out, err = run()
    assert (code, err, out.count("\n")) == (0, "", 3)
    assert all(line.startswith("hankwise ") and len(line) <= 100 for line in out.splitlines())
    assert "COMMAND" in run("--help")[1]


def test_the_three_lines_work(run):
    first, second, third = run()[1].splitlines()
    for line in (first, second, third):
        command = line.split("#")[0].split()[1:]
        assert run(*command)[0] == 0, line
    assert run("plan", "lot.toml", "--lots", "500")[0] == 0


def test_new_prints_and_writes_and_never_replaces(run, tmp_path):
    printed = run("new", "lot", "greasy=35kg", "goods=hank:50g:120")[1]
    written = tmp_path / "lot.toml"
    code, out, err = run("new", "lot", "greasy=35kg", "goods=hank:50g:120", "--out", "lot.toml")
    assert (code, out) == (0, "")
    assert "next: hankwise plan lot.toml" in err
    assert written.read_text(encoding="utf-8") == printed
    code, _, err = run("new", "lot", "--out", "lot.toml")
    assert code == 1
    assert "already" in err
    assert "--force" in err
    assert written.read_text(encoding="utf-8") == printed
    assert run("new", "lot", "--out", "lot.toml", "--force")[0] == 0
    assert written.read_text(encoding="utf-8") != printed
    assert "must end in .toml" in run("new", "lot", "--out", "lot.txt")[2]


def test_a_new_lot_names_the_mill_of_the_folder(run):
    small = ("plan", "greasy=20kg", "goods=hank", "--json", "--lots", "500")

    def planned() -> float:
        return json.loads(run(*small)[1])["goods"][0]["planned"]

    assert 'mill = "handbook"' in run("new", "lot")[1]
    before = planned()
    assert run("new", "mill", "held_up=1.6kg", "--out", "mill.toml")[0] == 0
    assert 'mill = "mill.toml"' in run("new", "lot")[1]
    # The card keeps 1 kg more, of which some would be lost: between 8 and 13 hanks of 100 g.
    assert 8 < before - planned() < 13


def test_a_plan_of_words_is_one_sentence(run):
    code, out, err = run("plan", "greasy=45kg", "breed=Romney", "--lots", "2000", "goods=throw")
    assert (code, err, out.count("\n")) == (0, "", 1)
    plan = hw.plan.loads(hw.plan.new_lot(greasy="45kg", breed="Romney", goods="throw"))
    result = plan.run(2000)
    assert out.strip() == result.spoken()
    assert f"safely promise {result.goods[0]['safe']:.0f} throws" in out
    assert (
        "Machine settings" in run("plan", "greasy=45kg", "goods=throw", "--all", "--lots", "500")[1]
    )


@pytest.mark.parametrize(
    ("words", "says"),
    [
        (["plan", "greesy=3kg"], "did you mean 'greasy'"),
        (["plan", "greasy=3kg", "goods"], "write it like greasy=35kg"),
        (["plan", "greasy=3kg", "greasy=4kg"], "twice"),
        (["plan", "greasy=3kg", "mill=x.toml"], "mill.toml of this folder"),
        (["plan"], "required: LOT.toml"),
        (["plan", "lot.toml", "more"], "unrecognized arguments: more"),
        (["new", "lot", "goods=throw:many"], "not a size"),
        (["new", "lot", "mill=x"], "mill.toml of this folder"),
        (["new", "cloth"], "invalid choice"),
    ],
)
def test_what_is_wrong_is_said(run, words, says):
    code, out, err = run(*words)
    assert code in (1, 2)
    assert out == ""
    assert says in err


def _answered(answers: list[str], *command: str) -> tuple[str, str]:
    """Run a command in a terminal of its own; give what it printed and what it asked."""
    ours, theirs = pty.openpty()
    process = subprocess.Popen(
        [sys.executable, "-m", "hankwise", *command],
        stdin=theirs,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    os.close(theirs)
    os.write(ours, "".join(answer + "\n" for answer in answers).encode())
    out, err = process.communicate(timeout=60)
    while select.select([ours], [], [], 0)[0]:
        try:
            os.read(ours, 1000)
        except OSError:
            break
    os.close(ours)
    return out.decode(), err.decode()


def test_in_a_terminal_it_asks_and_enter_is_not_known():
    out, err = _answered([""] * 8, "new", "lot")
    assert out == hw.plan.new_lot()
    assert err.count("? ") == len(_questions("lot")) <= 8
    # What is no answer is asked again.
    out, err = _answered(["much", "35 kg", "Romney", "", "throw:5", "", "", "", ""], "new", "lot")
    assert out == hw.plan.new_lot(greasy="35 kg", breed="Romney", goods="throw:5")
    assert err.count("How much greasy wool") == 2
    out, _ = _answered(["ring"] + [""] * 7, "new", "mill")
    assert out == hw.plan.new_mill(spinning="ring")
