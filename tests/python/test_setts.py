"""Setts and the choice of a reed, as Python hands them over."""

import json
import math
import warnings

import hankwise as hw
import numpy as np
import pytest
from conftest import cases
from hankwise.cli import main
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

cloth = hw.cloth


@pytest.fixture
def run(capsys):
    def command(*words):
        code = main(words)
        out = capsys.readouterr()
        return code, out.out, out.err

    return command


@settings(max_examples=cases(60))
@given(st.floats(0.1, 1.0), st.floats(0.1, 1.0), st.floats(0.1, 0.97))
def test_the_jam_by_a_root_finder(d1, d2, part):
    """√(1 − (p₁/D)²) + √(1 − (p₂/D)²) = 1, solved by SciPy instead of by hand."""
    both, p1 = d1 + d2, part * (d1 + d2)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", hw.RangeWarning)
        picks = cloth.jam_weft_sett(f"{10 / p1!r} /cm", f"{d1!r} mm", f"{d2!r} mm")
    p2 = brentq(
        lambda p: math.sqrt(1 - (p1 / both) ** 2) + math.sqrt(1 - (p / both) ** 2) - 1, 0, both
    )
    assert picks.number("threads/cm") == pytest.approx(10 / p2, rel=1e-6)


@settings(max_examples=cases(60))
@given(st.floats(1.0, 6.0), st.floats(0.3, 0.5), st.floats(10, 500))
def test_brierley_by_numpy(average, exponent, tex):
    found = cloth.brierley_sett(average, exponent, 134 / 560, f"{tex!r} tex")
    worsted = 590.541 * 840 / 560 / tex
    expected = average**exponent * np.sqrt(134 * worsted)
    assert found.number("ends/in") == pytest.approx(expected, rel=1e-6)


def test_all_theories_of_a_plain_cloth():
    """C. 100 tex square: Ashenhurst 11.65, Galceran 18.28, 57 % apart (worked out by hand)."""
    found = cloth.setts(weave="plain", warp_count="100 tex")
    assert found["lowest_warp_sett"].number("ends/cm") == pytest.approx(11.65, abs=0.005)
    assert found["highest_warp_sett"].number("ends/cm") == pytest.approx(18.28, abs=0.005)
    assert found["spread"].number("") == pytest.approx(0.57, abs=0.005)
    rows = found["theories"]
    assert len(rows) == 9
    for row in rows:
        working = found.working(f"{row['key']}.warp_sett")
        assert working.value == pytest.approx(row["warp_sett"].number("threads/cm"), rel=1e-12)
    assert "brierley_sett" in str(found.working("brierley.warp_sett"))
    assert "<table" in found._repr_html_()
    assert "57 %" in repr(found)


def test_setts_in_inches_and_a_workbook(tmp_path):
    given = {"weave": "plain", "warp_count": "3360 yd/lb", "yarn_factor": 0.9}
    found = cloth.setts(**given, wanted_warp_sett="20 ends/in")
    assert found["ashenhurst.warp_sett"].number("ends/in") == pytest.approx(26.0845, abs=1e-3)
    assert "26.08" in str(found)
    assert "threads/in" in str(found)
    found.to_workbook(tmp_path / "setts.xlsx")
    assert (tmp_path / "setts.xlsx").stat().st_size > 1000


def test_many_counts_are_one_call():
    many = cloth.setts(weave="plain", warp_count=hw.q([100.0, 50.0], "tex"))
    for at, count in enumerate(["100 tex", "50 tex"]):
        one = cloth.setts(weave="plain", warp_count=count)
        assert many["jam.warp_sett"].number("ends/cm")[at] == one["jam.warp_sett"].number("ends/cm")


def test_what_setts_says_no_to():
    plain = {"weave": "plain", "warp_count": "100 tex"}
    with pytest.raises(KeyError, match=r"did you mean 'brierley\.warp_sett'"):
        cloth.setts(**plain)["brierly.warp_sett"]
    with pytest.raises(hw.NotationError, match="2/2 twill"):
        cloth.setts(weave="no weave", warp_count="100 tex")
    with pytest.raises(hw.UnitError, match="setts, warp_count"):
        cloth.setts(weave="plain", warp_count=100)
    with pytest.raises(hw.HankwiseError, match="unlike yarns"):
        cloth.setts(**plain, weft_count="50 tex").working("brierley.warp_sett")
    with pytest.raises(hw.HankwiseError):
        cloth.setts(**plain).working("jam.most_weft_sett")
    with pytest.warns(hw.RangeWarning, match=r"beyond the jam of every theory.*18\.28"):
        cloth.setts(**plain, wanted_warp_sett="20 ends/cm")


def test_a_reed_for_a_width_with_selvedges():
    choice = cloth.choose_reed(
        wanted_reed_sett="20 ends/in", reeds=["10 dents/in", "15 dents/in"], ends_per_dent=2,
        reed_width="24 in", selvedge_ends_per_dent=4, dents_per_selvedge=6,
    )  # fmt: skip
    assert choice["reed"].number("dents/in") == pytest.approx(10)
    found = [choice[name].number("") for name in ("dents", "ends", "both_selvedges")]
    assert found == [240, 504, 48]
    assert choice["others[1].sett_off"].number("%") == pytest.approx(50)
    assert "504" in repr(choice)
    assert "<table" in choice._repr_html_()
    for name in choice:
        assert choice.working(name).lines, name


def test_what_a_reed_says_no_to():
    def reed(sett, reeds, **more):
        return cloth.choose_reed(wanted_reed_sett=sett, reeds=reeds, **more)

    with pytest.raises(hw.RangeError, match=r"choose_reed: reeds: 3000 .* is it '3000 "):
        reed("20 ends/in", ["3000 dents/10 cm"])
    with pytest.raises(hw.UnitError, match="choose_reed, reeds"):
        reed("20 ends/in", ["60 Ne"])
    with pytest.raises(hw.UnitError, match="choose_reed, reeds"):
        reed("20 ends/in", [60])
    with pytest.raises(hw.NotationError, match="reeds: the list is empty"):
        reed("20 ends/in", [])
    with pytest.raises(hw.NotationError, match="selvedge_ends_per_dent"):
        reed("20 ends/in", ["10 dents/in"], dents_per_selvedge=4)
    both = {"dents_per_selvedge": 4, "width_per_selvedge": "1 in", "selvedge_ends_per_dent": 3}
    with pytest.raises(hw.NotationError, match="omit all but one"):
        reed("20 ends/in", ["10 dents/in"], **both)


def test_setts_on_the_command_line(run):
    code, out, err = run("setts", "2/2", "twill", "--warp-count", "100 tex")
    assert (code, err) == (0, "")
    assert out == f"{cloth.setts(weave='2/2 twill', warp_count='100 tex')}\n"
    told = json.loads(run("setts", "plain", "--warp-count", "100 tex", "--json")[1])
    sett = told["results"]["ashenhurst_woollen.warp_sett"]
    assert sett["unit"] == "threads/cm"
    assert sett["value"] == pytest.approx(11.65, abs=0.005)
    code, out, _ = run(
        "setts", "plain", "--warp-count", "100 tex", "--working", "brierley.warp_sett"
    )
    assert code == 0
    assert "brierley_sett" in out
    code, _, err = run("setts", "plain", "--warp-count", "100")
    assert code == 1
    assert "warp_count" in err
