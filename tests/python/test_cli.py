"""The command line: what it prints, what it says when something is wrong, what it leaves behind."""

import json
import subprocess
import sys

import hankwise as hw
import openpyxl
import pytest
from conftest import EXAMPLES
from hankwise.cli import main

LOT = str(EXAMPLES[0].with_name("first-lot.toml"))
FEW = ["--lots", "500"]
FACTOR = ["calc", "twist_factor", "twist=9 tpi", "count=16 YSW"]


@pytest.fixture
def run(capsys):
    def command(*words: str) -> tuple[int, str, str]:
        try:
            code = main(words)
        except SystemExit as stop:
            code = stop.code
        out = capsys.readouterr()
        return code, out.out, out.err

    return command


def good(result: tuple[int, str, str]) -> str:
    code, out, err = result
    assert (code, err) == (0, "")
    return out


# --- what it prints ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("words", "out"),
    [
        ("convert 16 Nm YSW", "16 Nm = 31.00 YSW\n"),
        ("convert 22½ YSW tex", "22½ YSW = 86.12 tex\n"),
        ("convert 1 lb 12 oz kg", "1 lb 12 oz = 0.7938 kg\n"),
        ("convert 24 dents/10 cm dents/in", "24 dents/10 cm = 6.096 dents/in\n"),
        ("convert 16 turns/cm √tex tpi/√Ne", "16 turns/cm √tex = 1.672 tpi/√Ne\n"),
    ],
)
def test_convert(run, words, out):
    assert good(run(*words.split())) == out


def test_convert_as_json(run):
    told = json.loads(good(run("convert", "16", "Nm", "YSW", "--json")))
    assert told["number"] == hw.convert(16, "Nm", "YSW")
    assert (told["given"], told["unit"], told["hankwise"]) == ("16 Nm", "YSW", hw.__version__)


def test_formula_with_its_working(run):
    out = good(run(*FACTOR))
    assert "38.99 turns/cm √tex" in out.splitlines()[0]
    working = hw.yarn.twist_factor.working(twist="9 tpi", count="16 YSW")
    assert str(working).strip() in out
    # A step that can be typed, and the answer to it.
    assert "With twist 10 tpi, not 9 tpi: 43.33 turns/cm √tex, not 38.99 turns/cm √tex" in out
    assert good(run(*[word.replace("9 tpi", "10 tpi") for word in FACTOR])).startswith(
        "twist_factor = 43.33 turns/cm √tex"
    )


def test_formula_in_the_units_of_the_trade(run):
    """Twenty yards weigh ten grains: the worsted dividend is 250 (Davis 1920), 250/10 = 25."""
    weighed = ["calc", "count_of", "length=20 yd", "mass=10 gr", "--in", "worsted"]
    assert good(run(*weighed)).splitlines()[0] == "count_of = 35.43 tex = 25 worsted"
    told = json.loads(good(run(*weighed, "--in", "Nm", "--json")))
    assert told["also"] == pytest.approx({"worsted": 25, "Nm": 28.222698}, rel=1e-7)
    # A share is a share, and a unit that is not of the answer is refused.
    out = good(
        run(
            "calc",
            "contraction_from_counts",
            "nominal_count=68 tex",
            "resultant_count=69.3 tex",
            "--in",
            "%",
        )
    )
    assert "1.876 %" in out.splitlines()[0]


def test_formula_of_a_list(run):
    out = good(run("calc", "fold", "contraction=2 %", "counts=16 Nm, 20 Nm"))
    assert "114.8 tex" in out


def test_formula_as_json_latex_and_card(run):
    told = json.loads(good(run(*FACTOR, "--json")))
    working = hw.yarn.twist_factor.working(twist="9 tpi", count="16 YSW")
    assert (told["formula"], told["value"], told["unit"]) == (
        "twist_factor",
        working.value,
        working.unit,
    )
    assert [line["name"] for line in told["lines"]] == ["twist", "count", "twist_factor"]
    assert good(run(*FACTOR, "--latex")) == working.latex()
    card = good(run("calc", "twist_factor"))
    assert str(hw.yarn.twist_factor) in card
    told = json.loads(good(run("calc", "twist_factor", "--json")))
    assert told["inputs"] == json.loads(json.dumps(hw.yarn.twist_factor.inputs))


def test_the_first_screen_answers_in_its_order(run):
    out = good(run("plan", LOT, *FEW))
    asked = (
        "Promise: ",
        "Measure first: ",
        "Fibre out of each stage",
        "Machine settings",
    )
    places = [out.index(words) for words in asked]
    assert places == sorted(places)
    assert "--all" in out.splitlines()[-1]
    assert "--working" in out.splitlines()[-1]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_plan_as_json_and_all(run, path):
    told = json.loads(good(run("plan", str(path), *FEW, "--seed", "3", "--json")))
    result = hw.plan.load(path).run(500, 3)
    assert told == json.loads(result.to_json())
    out = good(run("plan", str(path), *FEW, "--seed", "3", "--all"))
    assert out == result.text(all=True)
    assert "Where every kilogram goes" in out


def test_plan_working_and_needed(run):
    out = good(run("plan", LOT, *FEW, "--working", "twister.twist"))
    assert "4320" in out
    assert "123.4 turns/m" in out
    out = good(run("plan", LOT, *FEW, "--needed", "hank=200,throw=12"))
    assert "69.90 kg" in out
    told = json.loads(good(run("plan", LOT, *FEW, "--needed", "hank=200", "--json")))
    assert told["goods"] == {"hank": 200}
    promise = json.loads(good(run("plan", LOT, *FEW, "--needed", "--json")))
    assert promise["goods"] == {"hank": 240, "throw": 12}


# --- files ------------------------------------------------------------------------------------


def test_files_are_written_and_named(run, tmp_path):
    files = [tmp_path / name for name in ("a.xlsx", "a.svg", "a.png")]
    sheet, svg, png = map(str, files)
    code, out, err = run("plan", LOT, *FEW, "--workbook", sheet, "--picture", svg, "--picture", png)
    assert code == 0
    assert "Promise: " in out
    assert all(str(path) in err for path in files)
    assert openpyxl.load_workbook(sheet)["Working"]["A1"].value
    assert b"<svg" in files[1].read_bytes()
    assert files[2].read_bytes().startswith(b"\x89PNG")
    code, _, err = run(*FACTOR, "--workbook", str(tmp_path / "f.xlsx"))
    assert (code, err) == (0, f"workbook: {tmp_path / 'f.xlsx'}\n")


@pytest.mark.parametrize(
    "words",
    [
        ["plan", LOT, *FEW, "--workbook"],
        ["plan", LOT, *FEW, "--picture"],
        [*FACTOR, "--workbook"],
    ],
    ids=["plan sheet", "plan value", "formula sheet"],
)
@pytest.mark.parametrize("place", ["none/a", "taken"])
def test_what_cannot_be_written_leaves_nothing(run, tmp_path, words, place):
    end = ".svg" if words[-1] == "--picture" else ".xlsx"
    path = tmp_path / (place + end)
    if place == "taken":
        path.mkdir()
    code, out, err = run(*words, str(path))
    assert (code, out) == (1, "")
    assert err.startswith(f"hankwise: {path} cannot be written")
    assert [p for p in tmp_path.rglob("*") if p != path] == []


# --- what is wrong ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("words", "message"),
    [
        (["convert", "16", "cut", "tex"], "galashiels-cut"),
        (["convert", "16", "Nek", "tex"], "worsted"),
        (["convert", "16", "YSQ", "tex"], "did you mean 'YSW'"),
        (["convert", "16", "Nm", "kg"], "cannot convert a linear density (count) to 'kg'"),
        (["convert", "16"], "has no unit; write it too"),
        (["convert", "foo", "bar"], "does not begin with a number"),
        (
            ["calc", "twist_factr"],
            "did you mean 'twist_factor'? Or search: hankwise find twist factr",
        ),
        (["calc", "twist_factor", "twist=9 tpi"], "count (yarn count) is missing"),
        ([*FACTOR, "--in", "kg"], "cannot convert a twist factor to 'kg', a unit of mass"),
        (["calc", "twist_factor", "--in", "kg"], "needs the inputs"),
        (["calc", "twist_factor", "9 tpi"], "is not an input; write it like twist="),
        (["calc", "twist_factor", "twist=9", "count=16 YSW"], "has no unit"),
        (["calc", "twist_factor", "twist=9 tpi", "cuont=16 YSW"], "no input 'cuont'"),
        (["calc", "mass_after_loss", "mass_in=1 kg", "loss=16", "held_up=0 kg"], "write '16 %'"),
        (["plan", "nope.toml"], "nope.toml: no such file"),
        (["plan", LOT, "--lots", "1000000000"], "too large"),
        (["plan", LOT, "--needed", "hank"], "such as hank=200"),
        (["plan", LOT, *FEW, "--needed", "hnk=200"], "hank"),
        (["plan", LOT, *FEW, "--needed", "hank=1", "--confidence", "95"], "0.95"),
        (["plan", LOT, *FEW, "--working", "twister.twst"], "twister.twist"),
        (["plan", LOT, *FEW, "--picture", "a.xyz"], ".svg, .png or .pdf"),
    ],
    ids=lambda x: " ".join(x)[-40:] if isinstance(x, list) else "",
)
def test_what_is_wrong_is_said_in_one_line(run, words, message):
    code, out, err = run(*words)
    assert (code, out) == (1, "")
    assert err.startswith("hankwise: ")
    assert message in err
    assert err.count("\n") == 1


@pytest.mark.parametrize(
    "words",
    [
        ["nonsense"],
        ["convert"],
        ["plan"],
        ["plan", LOT, "-x"],
        *(["plan", LOT, "--lots", figure] for figure in ("x", "-1", "1e5", "9" * 60)),
        ["plan", LOT, "--seed", "-1"],
    ],
)
def test_a_command_that_cannot_be_read_ends_with_2_and_its_usage(run, words):
    code, out, err = run(*words)
    assert (code, out) == (2, "")
    assert "usage: hankwise" in err


def test_help_has_the_commands_and_examples(run):
    code, out, err = run("--help")
    assert (code, err) == (0, "")
    assert out.startswith("usage: hankwise")
    assert "hankwise plan examples/first-lot.toml" in out


def test_a_bad_lot_file_is_named_by_line(run, tmp_path, first_lot):
    path = tmp_path / "bad.toml"
    path.write_text(first_lot.replace("80.00 kg", "80.00 m"), encoding="utf-8")
    line = first_lot[: first_lot.index('80.00 kg"\n')].count("\n") + 1
    code, out, err = run("plan", str(path), "--workbook", str(tmp_path / "a.xlsx"))
    assert (code, out) == (1, "")
    assert f"{path}:{line}: lot.greasy: " in err
    assert not (tmp_path / "a.xlsx").exists()


def outside(*words: str, **more) -> subprocess.CompletedProcess[bytes]:
    command = [sys.executable, "-m", "hankwise", *words]
    return subprocess.run(command, capture_output=True, timeout=60, **more)


def test_as_a_program():
    done = outside("convert", "16", "Nm", "YSW")
    assert (done.returncode, done.stdout.decode(), done.stderr) == (0, "16 Nm = 31.00 YSW\n", b"")
    done = outside("convert", "16", "cut", "tex")
    assert (done.returncode, done.stdout) == (1, b"")
    assert b"Traceback" not in done.stderr
    done = outside("--version")
    assert done.stdout.decode() == f"hankwise {hw.__version__}\n"


def test_an_unusual_value_is_noted_on_stderr():
    done = outside("calc", "twist_factor", "twist=9 tpi", "count=0.5 tex")
    assert done.returncode == 0
    assert done.stderr.startswith(b"note: twist_factor: count = 0.5 tex is unusual")
    assert done.stderr.count(b"\n") == 1
    assert b"2.505" in done.stdout


def test_signs_are_no_trouble_on_a_plain_terminal():
    done = outside(*FACTOR, env={"PYTHONIOENCODING": "ascii", "PATH": ""})
    assert (done.returncode, done.stderr) == (0, b"")
    assert b"38.99" in done.stdout


def test_a_closed_pipe_is_no_error(root):
    command = f"{sys.executable} -m hankwise plan {LOT} --all --lots 500 | head -n 1"
    done = subprocess.run(command, shell=True, capture_output=True, timeout=60, cwd=root)
    assert (done.stdout.splitlines()[0][:9], done.stderr) == (b"First lot", b"")


def test_importing_needs_no_numpy():
    code = "import hankwise, sys; print([m for m in ('numpy', 'matplotlib') if m in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, timeout=60)
    assert (done.stdout.strip(), done.stderr) == (b"[]", b"")


def test_a_row_that_asks_one_thing_is_written_alone(run):
    """`out.top=673 g` is `out.top.mass=673 g`."""
    asked = ["calc", "balance", "mass_in=1.7 lb", "out.noil.mass=109 g"]
    alone, named = run(*asked, "out.top=673 g"), run(*asked, "out.top.mass=673 g")
    assert alone == named
    assert alone[0] == 0
    code, _, err = run(*asked[:3])
    assert code == 1
    assert "write out.NAME.mass=…" in err
    assert "given twice" in run(*asked, "out.noil=1 g")[2]


def test_numbered_rows_go_in_the_order_of_their_numbers(run):
    first = ["washes.1.liquor_ratio=10", "washes.1.removed_share=50 %"]
    second = ["washes.2.liquor_ratio=30", "washes.2.removed_share=80 %"]
    asked = ["calc", "washes", "mass=20 kg", "fat_before=20 %"]
    assert good(run(*asked, *second, *first)) == good(run(*asked, *first, *second))
    code, _, err = run(*asked, *first, "washes.3.liquor_ratio=30")
    assert code == 1
    assert "washes has the numbers 1, 3; write washes.1, washes.2" in err
