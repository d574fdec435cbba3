"""The one search in Python and at the command line: what is found, and the line to type next."""

import json
import pickle
import shlex
import types

import hankwise as hw
import pytest
from hankwise.cli import main

KINDS = ["formula", "calculation", "function", "stage", "table", "count", "reed", "unit", "weave"]
# What people type, and what of each kind is meant.
TYPED = {
    "gsm": "g/m²",
    "epi": "threads/in",
    "ppi": "threads/in",
    "tpi": "tpi",
    "turns per inch": "tpi",
    "gear": "change_wheel",
    "shrink": "finishing_shrinkages",
    "denier": "den",
    "linen": "NeL",
    "take up": "take_up_from_lengths",
    "takeup": "take_up_from_lengths",
    "ashenhurst": "setts",
    "Ne": "Ne",
    "grist": "count_of",
    "sley": "choose_reed",
    "dent": "choose_reed",
    "wpi": "wraps",
    "ply": "fold_alike",
    "stone": "st",
    "aran": "hand_knitting_weights",
    "skein": "YSW",
    "hank": "hank_length",
    "felting": "finishing_shrinkages",
    "mule": "mule",
}


@pytest.fixture
def run(capsys):
    def go(*args):
        code = main(list(args))
        told = capsys.readouterr()
        return code, told.out, told.err

    return go


@pytest.mark.parametrize(("typed", "meant"), TYPED.items())
def test_what_is_typed_finds_what_is_meant(typed, meant, run):
    assert meant in hw.find(typed).names[:10]
    code, out, err = run("find", *typed.split())
    assert (code, err) == (0, "")
    assert f"{meant}: " in out
    lines = [line for line in out.splitlines() if not line.lstrip().startswith("> ")]
    assert max(map(len, lines)) <= 80


def test_it_is_a_sequence_that_shows_itself():
    found = hw.find("twist")
    assert [hit.name for hit in found] == found.names
    assert found[0].name == found.names[0]
    assert found[-1].name == found.names[-1]
    assert [hit.name for hit in found[:3]] == found.names[:3]
    with pytest.raises(IndexError):
        found[len(found)]
    assert sum(found.kinds.values()) == len(found)
    assert repr(found).count("> ") == 10
    assert found.text().count("> ") == len(found)
    assert found._repr_html_().count("<tr>") == len(found) + 1
    assert found[0].line in found._repr_html_().replace("&quot;", '"')
    assert pickle.loads(pickle.dumps(found)).names == found.names
    assert [row["name"] for row in found.records()] == found.names
    assert isinstance(found, hw.Found)
    assert isinstance(found[0], hw.Hit)


def test_nothing_found_is_one_behaviour(run):
    found = hw.find("ashenhrust")
    assert len(found) == 0
    said = "no entry has 'ashenhrust'; did you mean 'ashenhurst'? Type: hw.find(\"ashenhurst\")"
    assert repr(found).replace("\n", " ") == said
    code, out, err = run("find", "ashenhrust")
    assert (code, out) == (1, "")
    assert err.endswith("Type: hankwise find ashenhurst\n")
    line = err.rsplit("Type: hankwise ", 1)[1].split()
    assert run(*line)[0] == 0
    code, out, err = run("find", "xyzzy", "--kind", "table")
    assert (code, out) == (1, "")
    assert err.endswith("list everything: hankwise find --kind table\n")
    code, out, err = run("find", "xyzzy", "--json")
    assert code == 1
    assert json.loads(out)["hits"] == []
    assert "no entry has 'xyzzy'" in err


def test_an_unknown_kind_is_refused(run):
    with pytest.raises(hw.NotationError, match="unknown kind 'tables2'; write one of formula"):
        hw.find("twist", kind="tables2")
    assert hw.find("twist", kind="tables").kinds.keys() == {"table"}
    assert run("find", "--kind", "wool")[0] == 1


def test_without_words_it_says_what_there_is(run):
    code, out, _ = run("find")
    assert code == 0
    for kind in KINDS:
        assert f"hankwise find --kind {kind}\n" in out
        assert run("find", "--kind", kind)[0] == 0
    assert list(hw.find().kinds) == KINDS
    assert hw.find().kinds["formula"] == len(hw.formulas)
    assert hw.find(kind="calculation").names == list(hw.calculations)
    assert hw.find(kind="table").names == list(hw.handbook)
    assert hw.find(kind="count").names == list(hw.counts)


def test_all_that_a_room_has_is_found():
    rooms = (hw.fibre, hw.yarn, hw.cloth, hw.mill, hw.quality)
    known = {(hit.kind, hit.name) for hit in hw.find()}
    for room in rooms:
        for name, value in vars(room).items():
            if isinstance(value, hw.Formula):
                assert ("formula", name) in known
            elif isinstance(value, hw.Calculation):
                assert ("calculation", name) in known
            elif isinstance(value, types.BuiltinFunctionType):
                assert ("function", name) in known


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_every_line_of_python_runs(capsys):
    for hit in [*hw.find(), *hw.find("wool", kind="row"), *hw.find("mule", kind="row")]:
        shown = eval(hit.line, {"hw": hw})
        if hit.kind in ("table", "row"):
            assert len(shown) > 0, hit.line
    assert capsys.readouterr().out


def sample():
    """Every kind: all of the short ones, every ninth of the long ones, rows of tables."""
    for kind in KINDS:
        hits = list(hw.find(kind=kind))
        yield from hits[:: max(1, len(hits) // 25)]
    for words in ("aran", "mule", "Nasmith", "woollen", "felting"):
        yield from hw.find(words, kind="row")


def test_every_line_of_the_command_line_runs(run):
    for hit in sample():
        program, *args = shlex.split(hit.command)
        if program == "python":
            assert args[0] == "-c"
            exec(args[1], {})
            continue
        assert program == "hankwise"
        if args[-1] == "--help":
            with pytest.raises(SystemExit, match="0"):
                run(*args)
            continue
        code, out, err = run(*args)
        assert code == 0, (hit.command, err)
        assert out.strip(), hit.command


# --- calc -------------------------------------------------------------------------------------

MULE = {
    "spindles": "120",
    "travel": "6 ft",
    "cycle": "22.5 s",
    "count": "150 tex",
    "efficiency": "85 %",
    "yarn_mass": "30 kg",
}
CALC = ["calc", "mule", *(f"{name}={value}" for name, value in MULE.items())]


def test_a_calculation_runs(run, tmp_path):
    found = hw.mill.mule(**MULE)
    code, out, _ = run(*CALC)
    assert code == 0
    assert out.startswith(str(found).rstrip())
    code, out, _ = run(*CALC, "--json")
    told = json.loads(out)
    assert told["calculation"] == "mule"
    assert set(told["results"]) == set(found.keys())
    output = told["results"]["output"]
    assert output["value"] == pytest.approx(found["output"].number(output["unit"]))
    working, _, cautions = run(*CALC, "--working", "output")[1].partition("\nCautions\n")
    changed = "".join(f"    With {c['words']}\n" for c in found.working("output").changes[:5])
    assert "    With spindles 121, not 120: " in changed
    assert working == str(found.working("output")) + changed
    assert "! Mule: " in cautions
    assert json.loads(run(*CALC, "--working", "output", "--json")[1])["result"] == "output"
    path = tmp_path / "mule.xlsx"
    assert run(*CALC, "--workbook", str(path))[0] == 0
    assert path.exists()


@pytest.mark.parametrize("name", [*hw.calculations, "twist_factor", "sorted_mass", "fold"])
def test_without_values_it_is_described(name, run):
    what = {**hw.formulas, **hw.calculations}[name]
    code, out, _ = run("calc", name)
    assert code == 0
    assert out.startswith(f"{name} ({what.room})\n{what}".rstrip())
    for line in what.cautions:
        assert " ".join(line.split()) in " ".join(out.split())
    told = json.loads(run("calc", name, "--json")[1])
    assert (told["name"], told["room"]) == (name, what.room)


def test_a_description_says_how_it_is_checked(run):
    checks = hw.formulas["count_of"].checks
    assert sum(checks.values()) > 0
    assert f"{checks['book or paper']} (book or paper)" in run("calc", "count_of")[1]


@pytest.mark.parametrize(
    ("args", "said"),
    [
        (["muel"], "did you mean 'mule'? Or search: hankwise find muel"),
        (["xyzzy"], "unknown formula or calculation 'xyzzy'; search: hankwise find xyzzy"),
        (["mule", "--workbook", "a.xlsx"], "a working needs the inputs"),
        ([*CALC[1:], "--in", "kg"], "--in is for the one answer of a formula"),
        ([*CALC[1:], "--latex"], "write --working NAME"),
        ([*CALC[1:], "--working", "outptu"], "did you mean 'output'"),
        (["mule", "120"], "write it like spindles="),
        (["twist_factor", "twist=9 tpi", "count=16 YSW", "--working", "x"], "one answer"),
    ],
)
def test_what_calc_refuses(args, said, run):
    code, out, err = run("calc", *args)
    assert (code, out) == (1, "")
    assert said in err


def test_calculations_are_a_mapping_that_does_not_change():
    assert hw.calculations["mule"] is hw.mill.mule
    with pytest.raises(KeyError, match="did you mean 'mule'"):
        hw.calculations["muel"]
    with pytest.raises(TypeError, match="does not change"):
        hw.calculations["mine"] = hw.mill.mule
    assert "mule" in repr(hw.calculations)
    assert "mule" in hw.calculations._repr_html_()
