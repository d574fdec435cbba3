"""The count systems: the table of all, those of one's own, rounding."""

import copy
import json
import pickle
import re
import subprocess
import sys
from fractions import Fraction

import hankwise as hw
import pytest
from hankwise.cli import main
from hypothesis import given
from hypothesis import strategies as st

YARD, POUND = Fraction(9144, 10_000), Fraction(45_359_237, 10**8)


def own(name="combe-hank", **other):
    return hw.define_count(name, **{"length": "250 yd", "mass": "1 lb", "names": ["Ch"], **other})


# --- the table --------------------------------------------------------------------------------


def test_every_count_system_is_in_the_table():
    assert set(hw.counts) == {
        u["symbol"] for u in hw.units() if u["kind"] == "linear density (count)"
    }
    for symbol, row in hw.counts.items():
        tex = row["kilograms"] / row["metres"] * 1e6
        assert row["symbol"] == symbol
        assert row["tex"] == pytest.approx(tex, rel=1e-15)
        assert hw.convert(1.0, symbol, "tex") == row["tex"]
        two = hw.convert(2.0, symbol, "tex")
        assert two == pytest.approx(tex / 2 if row["indirect"] else 2 * tex, rel=1e-15)


def test_systems_are_found_by_any_name():
    assert hw.counts["gala"] == hw.counts["galashiels-cut"]
    assert hw.counts["gala"]["country"] == "Scotland"
    assert hw.counts["Ne"]["tex"] == float(POUND / (840 * YARD) * 10**6)
    assert "gala" in hw.counts
    assert "galla" not in hw.counts
    with pytest.raises(KeyError, match="did you mean 'gala'"):
        hw.counts["galla"]
    with pytest.raises(KeyError, match="several ways"):
        hw.counts["cut"]


def test_the_table_shows_itself_and_can_be_searched():
    text, html = repr(hw.counts), hw.counts._repr_html_()
    for word in ("hawick-cut", "300 yd per 26 oz", "2687 tex", "Scotland", "memory"):
        assert word in text
        assert word in html
    found = hw.find("scotland 300", kind="count").names
    assert {"galashiels-cut", "hawick-cut"} <= set(found)
    assert "YSW" not in found
    assert "<script>" not in html


# --- one's own --------------------------------------------------------------------------------


def test_an_own_system_works_everywhere(tmp_path, capsys):
    row = own(source="<b>the count board</b>", country="Wales", date="1890")
    assert (row["definition"], row["basis"], row["country"]) == (
        "250 yd per 1 lb",
        "your own",
        "Wales",
    )
    assert row == hw.counts["Ch"] == own(source="<b>the count board</b>")
    assert "&lt;b&gt;the count board" in hw.counts._repr_html_()
    tex = float(POUND / (250 * YARD) * 10**6) / 16
    assert hw.q("16 combe-hank").number("tex") == pytest.approx(tex, rel=1e-15)
    assert hw.q(16, "Ch").unit == "combe-hank"
    assert hw.convert([16.0], "Ch", "tex") == [hw.convert(16.0, "combe-hank", "tex")]
    factor = hw.yarn.twist_factor("9 tpi", "16 combe-hank")
    assert factor.number("tpi/√combe-hank") == pytest.approx(9 / 4, rel=1e-14)
    working = hw.yarn.twist_factor.working(twist="9 tpi", count="16 combe-hank")
    assert "/ 16 combe-hank =" in str(working)
    working.to_workbook(tmp_path / "own.xlsx")
    with pytest.raises(hw.UnitError, match="mean_by_length"):
        hw.q([16, 18], "Ch").mean()
    assert main(["convert", "16", "Ch", "tex"]) == 0
    assert capsys.readouterr().out == f"16 Ch = {tex:.1f} tex\n"


def test_a_direct_system():
    own("combe-weight", length="100 m", mass="1 g", names=["Cw"], direct=True)
    assert hw.convert(3.0, "Cw", "tex") == 30.0
    assert not hw.counts["Cw"]["indirect"]
    assert (hw.q("3 Cw") + hw.q("5 tex")).number("tex") == 35.0


@pytest.mark.parametrize(
    ("name", "other", "words"),
    [
        ("worsted", {}, "'worsted' is taken: worsted is 560 yd per lb .Davis 1920"),
        ("cut", {}, "several ways.*galashiels-cut"),
        ("lea", {}, "several ways"),
        ("2cut", {}, "begins with a letter"),
        ("b-hank", {"length": "250"}, "b-hank: length: 250 has no unit"),
        ("b-hank", {"mass": "0 lb"}, "b-hank: mass: .*above 0"),
        ("b-hank", {"mass": "5 yd"}, "b-hank: mass: .*length"),
        ("b-hank", {"names": ["Nm"]}, "b-hank: names: .*'Nm' is taken"),
        ("turin-denier", {}, "taken.*0.053 g per 476 m"),
    ],
)  # fmt: skip
def test_what_cannot_be_defined(name, other, words):
    with pytest.raises(hw.HankwiseError, match=words):
        own(name, **{"names": [], **other})
    assert "b-hank" not in hw.counts


def test_a_name_keeps_its_meaning():
    own("dale-hank", names=[])
    own("dale-hank", names=[])
    for other in ({"mass": "2 lb"}, {"direct": True}):
        with pytest.raises(hw.UnitError, match=r"'dale-hank' is taken.*250 yd per 1 lb"):
            own("dale-hank", names=[], **other)


FRESH = """
import pickle, sys
import hankwise as hw
{define}
try:
    print(pickle.loads(bytes.fromhex(sys.argv[1])))
except hw.UnitError as error:
    print("refused:", error)
"""


@pytest.mark.parametrize(
    ("define", "words"),
    [
        ("hw.define_count('fell-hank', length='250 yd', mass='1 lb')", "16 fell-hank"),
        ("", "refused: .*'fell-hank': 250 yd per 1 lb; here it is not known.*define_count"),
        (
            "hw.define_count('fell-hank', length='250 m', mass='1 kg')",
            "refused: .*'fell-hank': 250 yd per 1 lb; here it is 250 m per 1 kg",
        ),
    ],
)
def test_a_pickle_needs_the_same_definition(define, words):
    own("fell-hank", names=[])
    kept = hw.q("16 fell-hank")
    assert str(copy.deepcopy(kept)) == "16 fell-hank"
    code = [sys.executable, "-c", FRESH.format(define=define), pickle.dumps(kept).hex()]
    told = subprocess.run(code, check=True, capture_output=True, text=True, encoding="utf-8").stdout
    assert re.match(words, told), told


FILE = """
[tarn-cut]
length = "310 yd"
mass = "1 lb"
names = ["Tc"]
country = "England"
"""


def test_a_file_of_counts(tmp_path):
    path = tmp_path / "counts.toml"
    path.write_text(FILE)
    assert hw.load_counts(path) == hw.load_counts(str(path)) == ["tarn-cut"]
    assert hw.counts["Tc"]["definition"] == "310 yd per 1 lb"
    path.write_text("[tarn-cut]\nlength = '310 yd'\nmas = '1 lb'\n")
    with pytest.raises(hw.PlanError, match=r"counts.toml:3: tarn-cut.mas: .*write mass = "):
        hw.load_counts(path)
    with pytest.raises(hw.PlanError, match=r"none\.toml: no such file"):
        hw.load_counts(tmp_path / "none.toml")


def test_counts_on_the_command_line(tmp_path, capsys):
    path = tmp_path / "counts.toml"
    path.write_text(FILE.replace("tarn", "ghyll").replace("Tc", "Gc"))
    assert main(["convert", "--counts", str(path), "16", "Gc", "NeL"]) == 0
    assert capsys.readouterr().out == "16 Gc = 16.53 NeL\n"
    assert main(["calc", "twist_factor", "twist=9 tpi", "count=16 Gc", "--counts", str(path)]) == 0
    assert "16 Gc" in capsys.readouterr().out
    assert main(["find", "--counts", str(path), "ghyll"]) == 0
    assert "310 yd per 1 lb" in capsys.readouterr().out
    assert main(["find", "hawick", "--kind", "count", "--json"]) == 0
    (hit,) = json.loads(capsys.readouterr().out)["hits"]
    assert hit["name"] == "hawick-cut"
    path.write_text("[worsted]\nlength = '310 yd'\nmass = '1 lb'\n")
    assert main(["convert", "--counts", str(path), "16", "Gc", "NeL"]) == 1
    assert "counts.toml:1: worsted: the name 'worsted' is taken" in capsys.readouterr().err


# --- rounding ---------------------------------------------------------------------------------


def test_rounding_keeps_the_exact_value():
    got = hw.yarn.round_tex("16 Nm")
    assert got.exact.number("tex") == 62.5
    assert got.rounded.number("tex") == 62.0
    assert got.difference.number("%") == pytest.approx(-0.8)
    assert got.within
    assert repr(got) == "<rounded: 62.5 tex → 62 tex (−0.8 %)>"
    assert pickle.loads(pickle.dumps(got)) == got
    agreed = hw.yarn.round_tex(hw.q(16, "Nm"), agreed=[50, 64, 72])
    assert agreed.rounded.number("tex") == 64
    assert not agreed.within
    assert str(agreed) == "62.5 tex → 64 tex (+2.4 %, more than 2 % away)"
    assert hw.yarn.round_count("22.3 YSW", "YSW").exact.number("YSW") == 22.3


@given(st.floats(0.001, 1e6), st.sampled_from(["tex", "Nm", "YSW", "Ne", "den"]))
def test_rounding_is_within_two_per_cent(x, unit):
    got = hw.yarn.round_count(hw.q(x, unit), unit)
    exact, rounded = got.exact.number(unit), got.rounded.number(unit)
    assert exact == x
    assert got.within
    assert abs(rounded / exact - 1) <= 0.02 + 1e-15
    assert float(f"{rounded:.2e}") == rounded


@pytest.mark.parametrize(
    ("make", "error", "words"),
    [
        (lambda: hw.yarn.round_tex(62.5), hw.UnitError, "62.5 has no"),
        (lambda: hw.yarn.round_tex("1 kg"), hw.UnitError, "mass"),
        (lambda: hw.yarn.round_tex("16 Nm", agreed=[]), hw.RangeError, "no number was agreed on"),
        (lambda: hw.yarn.round_tex("16 Nm", agreed=[0]), hw.RangeError, "0 is not a count"),
        (lambda: hw.yarn.round_tex("16 Nm", 60), hw.NotationError, "write numbers in tex.* not 60"),
        (lambda: hw.yarn.round_tex("16 Nm", ["60 tex"]), hw.NotationError, "numbers in tex"),
        (lambda: hw.yarn.round_count("16 Nm", "Ne", {9, 10}), hw.NotationError, "numbers in Ne"),
        (lambda: hw.yarn.round_tex(hw.q([16, 18], "Nm")), TypeError, "one count"),
        (lambda: hw.yarn.round_count("16 Nm", "kg"), hw.UnitError, "mass"),
    ],
)
def test_what_cannot_be_rounded(make, error, words):
    with pytest.raises(error, match=words):
        make()
