"""Settings and the choice of a reed, as Python hands them over."""

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
    found = cloth.settings("plain", "100 tex")
    assert len(found) == len(found.rows)
    assert found.spread["low"].number("ends/cm") == pytest.approx(11.65, abs=0.005)
    assert found.spread["high"].number("ends/cm") == pytest.approx(18.28, abs=0.005)
    assert found.spread["apart"] == pytest.approx(0.57, abs=0.005)
    assert {row["grade"] for row in found.rows if row["key"] == "brierley"} == {"memory"}
    for row in found.rows:
        assert hw.source(row["source"])["title"]
        if row["ends"] is not None:
            working = found.working(row["key"])
            assert working.value == pytest.approx(row["ends"].number("threads/cm"), rel=1e-12)
    assert "brierley_sett" in str(found.working("brierley"))
    assert "<table" in found._repr_html_()
    assert "57 %" in repr(found)


def test_a_unit_of_settings(tmp_path):
    found = cloth.settings("plain", "3360 yd/lb", factor=0.9, unit="ends/in")
    assert found["ashenhurst"]["ends"].number("ends/in") == pytest.approx(26.0845, abs=1e-3)
    assert found.unit == "threads/in"
    found.to_sheet(tmp_path / "settings.xlsx")
    assert (tmp_path / "settings.xlsx").stat().st_size > 1000
    with pytest.raises(hw.UnitError, match="settings"):
        cloth.settings("plain", "100 tex", unit="tex")


def test_what_settings_says_no_to():
    with pytest.raises(KeyError, match="did you mean 'brierley'"):
        cloth.settings("plain", "100 tex")["brierly"]
    with pytest.raises(hw.NotationError, match="2/2 twill"):
        cloth.settings("no weave", "100 tex")
    with pytest.raises(hw.UnitError, match="settings, warp"):
        cloth.settings("plain", 100)
    with pytest.raises(hw.NotationError, match="unlike yarns"):
        cloth.settings("plain", "100 tex", "50 tex").working("brierley")
    with pytest.raises(hw.NotationError, match="ends="):
        cloth.settings("plain", "100 tex").working("jam", "picks_at_ends")
    with pytest.warns(hw.RangeWarning, match=r"beyond the jam of every theory.*18\.28"):
        cloth.settings("plain", "100 tex", ends="20 ends/cm")
    with pytest.raises(TypeError, match="array"):
        cloth.settings("plain", hw.q(np.array([100.0, 50.0]), "tex"))


def test_a_reed_for_a_width_with_selvedges():
    choice = cloth.choose_reed(
        "20 ends/in", ["10 dents/in", "15 dents/in"], 2, "24 in",
        selvedge_ends_per_dent=4, selvedge_dents=6,
    )  # fmt: skip
    assert (str(choice.reed), choice.dents, choice.ends) == ("10 dents/in", 240, 504)
    assert choice.selvedge_ends == 48
    assert len(choice) == 2
    assert choice.rows[1]["off"] == pytest.approx(0.5)
    assert "504" in repr(choice)
    assert "<table" in choice._repr_html_()
    assert cloth.choose_reed("20 ends/in", "10 dents/in").order == [2]


def test_what_a_reed_says_no_to():
    with pytest.raises(hw.RangeError, match=r"choose_reed: reeds: 3000 .* is it '3000 "):
        cloth.choose_reed("20 ends/in", ["3000 dents/10 cm"])
    with pytest.raises(hw.UnitError, match="choose_reed, reeds"):
        cloth.choose_reed("20 ends/in", ["60 Ne"])
    with pytest.raises(hw.UnitError, match="choose_reed, reeds"):
        cloth.choose_reed("20 ends/in", [60])
    with pytest.raises(hw.NotationError, match="no reed is owned; write"):
        cloth.choose_reed("20 ends/in", [])
    with pytest.raises(hw.NotationError, match="selvedge_ends_per_dent"):
        cloth.choose_reed("20 ends/in", ["10 dents/in"], selvedge_dents=4)
    with pytest.raises(TypeError, match="one of"):
        cloth.choose_reed(
            "20 ends/in", ["10 dents/in"], selvedge_dents=4, selvedge_width="1 in",
            selvedge_ends_per_dent=3,
        )  # fmt: skip


def test_settings_on_the_command_line(run):
    code, out, err = run("settings", "2/2", "twill", "--warp", "100 tex")
    assert (code, err) == (0, "")
    assert out == f"{cloth.settings('2/2 twill', '100 tex')}\n"
    told = json.loads(run("settings", "plain", "--warp", "100 tex", "--json")[1])
    rows = {row["key"]: row for row in told["theories"]}
    assert told["unit"] == "threads/cm"
    assert rows["ashenhurst_woollen"]["ends"] == pytest.approx(11.65, abs=0.005)
    code, out, _ = run("settings", "plain", "--warp", "100 tex", "--working", "brierley")
    assert code == 0
    assert "brierley_sett" in out
    code, _, err = run("settings", "plain", "--warp", "100")
    assert code == 1
    assert "warp" in err
