"""The handbook tables, the words of hand knitting and the ball band, from Python."""

import json
import math
import pickle

import hankwise as hw
import numpy as np
import pandas as pd
import pytest
from hankwise.cli import main
from hypothesis import given
from hypothesis import strategies as st


@pytest.fixture
def run(capsys):
    def command(*words: str) -> tuple[int, str, str]:
        code = main(words)
        out = capsys.readouterr()
        return code, out.out, out.err

    return command


# --- tables -----------------------------------------------------------------------------------


def test_every_value_is_a_quantity_with_its_source():
    for name, table in hw.handbook.items():
        assert (table.name, bool(table.title), bool(table.about)) == (name, True, True)
        for figure in table:
            assert list(figure.of) == table.columns
            assert hw.source(figure.source)["title"]
            ends = [end for end in (figure.low, figure.high) if end is not None]
            assert ends
            for end in ends:
                assert math.isfinite(end.number(figure.unit))
                # As printed, not as the library would call the unit.
                assert str(end).endswith(figure.unit)
            assert figure.basis == hw.source(figure.source)["basis"]


def test_a_table_is_a_sequence_and_a_data_frame():
    table = hw.handbook["twist_multipliers"]
    figures = list(table)
    assert len(table) == len(figures)
    assert table[0] == figures[0]
    assert table[-1] == figures[-1]
    assert list(table[3:9:2]) == figures[3:9:2]
    assert list(table[::-1]) == figures[::-1]
    assert table[:] == table
    with pytest.raises(IndexError):
        table[len(table)]
    frame = pd.DataFrame(table.records())
    assert list(frame.columns) == [
        *table.columns,
        *("low", "high", "unit", "source", "place", "basis", "note"),
    ]
    assert frame["low"].dtype == np.float64
    assert (frame["low"] <= frame["high"]).all()


def test_values_are_found_by_words():
    found = hw.handbook["twist_multipliers"].find("woollen warp")
    assert [str(figure.low) for figure in found] == ["1.6 tpi/√YSW"]
    assert len(hw.handbook["twist_multipliers"].find("nonsense")) == 0
    assert "No row" in repr(hw.handbook["twist_multipliers"].find("nonsense"))
    # Narrowed twice is narrowed by both.
    cotton = hw.handbook["fibre_densities"].find("cotton")
    assert cotton.find("dry") == hw.handbook["fibre_densities"].find("cotton dry")
    assert set(hw.find("Nasmith", kind="row").names) == {"twist_multipliers", "reels"}


def test_it_shows_itself():
    table = hw.handbook["fibre_densities"]
    for figure in table.records():
        assert figure["source"] in repr(table)
    assert table._repr_html_().count("<tr>") == len(table) + 1
    for name in hw.handbook:
        assert name in repr(hw.handbook)
        assert name in hw.handbook._repr_html_()
    html = hw.yarn.weight_class("400 m/100g")._repr_html_()
    assert "<h3></h3>" not in html
    assert "<table>" in html


def test_it_does_not_change_and_names_the_nearest():
    with pytest.raises(TypeError, match="does not change"):
        hw.handbook["mine"] = hw.handbook["reels"]
    with pytest.raises(KeyError, match="did you mean 'fibre_densities'"):
        hw.handbook["fibre_density"]


def test_pickles():
    for thing in (
        hw.handbook["packing"],
        hw.handbook["packing"][1],
        hw.handbook["fibre_densities"].find("wool"),
        hw.yarn.weight_band("Aran", "US"),
    ):
        assert pickle.loads(pickle.dumps(thing)) == thing
    assert dict(pickle.loads(pickle.dumps(hw.handbook))) == dict(hw.handbook)
    band = hw.yarn.ball_band(
        count="4 Nm", ball_mass="100 g", regain="12 %", label_regain="17 %", country="UK"
    )
    assert repr(pickle.loads(pickle.dumps(band))) == repr(band)


# --- words of hand knitting -------------------------------------------------------------------


@given(st.floats(20, 1500))
def test_a_word_is_of_a_count_where_its_band_holds_it(metres):
    count = hw.q(metres, "m/100g")
    found = hw.yarn.weight_class(count)
    for figure in hw.handbook["hand_knitting_weights"]:
        x = count.number(figure.unit)
        low = -math.inf if figure.low is None else figure.low.number(figure.unit)
        high = math.inf if figure.high is None else figure.high.number(figure.unit)
        # At an end itself either is right: the change of unit rounds.
        if min(abs(x - low), abs(x - high)) > 1e-6:
            assert (figure in list(found)) == (low < x < high)


def test_words_are_refused_as_counts():
    for text in ("DK", "4 ply", "8-ply", "aran weight", "double knitting"):
        with pytest.raises(hw.UnitError, match="weight_band"):
            hw.q(text)
        with pytest.raises(hw.UnitError, match="weight_band"):
            hw.yarn.twist_factor(twist="9 tpi", count=text)


def test_words_need_a_count_and_a_country_that_is_known():
    with pytest.raises(hw.UnitError, match="weight_class, count: 5 has no unit"):
        hw.yarn.weight_class(5)
    with pytest.raises(hw.UnitError, match="kg"):
        hw.yarn.weight_class(hw.q("5 kg"))
    with pytest.raises(hw.NotationError, match="there are those of"):
        hw.yarn.weight_class("4 Nm", "Atlantis")
    with pytest.raises(hw.NotationError, match="did you mean 'chunky'"):
        hw.yarn.weight_band("chunkey", "UK")
    with pytest.raises(TypeError, match="not an array"):
        hw.yarn.weight_class(hw.q([4.0, 5.0], "Nm"))


# --- the ball ---------------------------------------------------------------------------------


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
@given(st.floats(15, 5000), st.floats(0.01, 1), st.floats(0, 0.4), st.floats(0, 0.2))
def test_a_ball_holds_its_dry_fibre_whatever_the_regain(tex, ball, regain, label):
    band = hw.yarn.ball_band(
        count=hw.q(tex, "tex"), ball_mass=hw.q(ball, "kg"), regain=regain, label_regain=label
    )
    metres = band["yarn_length"].number("m")
    # Dry fibre in the ball, and in its yarn.
    assert math.isclose(ball / (1 + label) * 1e6, metres * tex / (1 + regain), rel_tol=1e-12)
    # The band agrees with itself: yards are metres, 50 g is half of 100 g.
    per = {
        "m/50g": (50, 1),
        "m/100g": (100, 1),
        "yd/50g": (50, 0.9144),
        "yd/100g": (100, 0.9144),
        "yd/oz": (28.349523125, 0.9144),
    }
    for unit, (grams, metre) in per.items():
        wanted = metres / (ball * 1000) * grams / metre
        assert math.isclose(band["label_count"].number(unit), wanted, rel_tol=1e-12)


def test_a_ball_band_by_hand():
    count = hw.yarn.count_of(length="250 m", mass="62.5 g")
    band = hw.yarn.ball_band(count=count)
    assert band["yarn_length"].number("m") == pytest.approx(200)
    assert band["label_count"].number("m/100g") == pytest.approx(400)
    said = repr(band)
    assert "Ball of 50 g" in said
    assert all(f.of["word"].split(",")[0] in said for f in hw.yarn.weight_class("400 m/100g"))
    assert "<table" in band._repr_html_()
    assert "ball_mass" in str(band.working("yarn_length"))


def test_what_a_ball_band_refuses():
    with pytest.raises(hw.NotationError, match="write both or neither"):
        hw.yarn.ball_band(count="4 Nm", regain="12 %")
    with pytest.raises(hw.RangeError, match="0 g is not possible for the mass on the label"):
        hw.yarn.ball_band(count="4 Nm", ball_mass="0 g")
    with pytest.raises(hw.UnitError, match="ball_band, ball_mass: 50 has no unit"):
        hw.yarn.ball_band(count="4 Nm", ball_mass=50)
    with pytest.raises(hw.HankwiseError, match=r"country: .*there are those of"):
        hw.yarn.ball_band(count="4 Nm", country="Atlantis")
    with pytest.warns(hw.RangeWarning, match="ball_mass = 5 kg"):
        hw.yarn.ball_band(count="4 Nm", ball_mass="5 kg")


# --- the command line -------------------------------------------------------------------------


def test_tables_on_the_command_line(run):
    assert run("find", "--kind", "table") == (0, f"{hw.handbook}\n", "")
    assert run("find", "packing") == (0, f"{hw.handbook['packing']}\n", "")
    warp = hw.handbook["twist_multipliers"].find("woollen warp")
    assert run("find", "twist_multipliers", "woollen", "warp") == (0, f"{warp!r}\n", "")
    code, out, _ = run("find", "Nasmith", "--kind", "row")
    assert code == 0
    assert "reels: " in out
    assert "twist_multipliers: " in out
    code, out, err = run("find", "pakcing", "--kind", "table")
    assert (code, out) == (1, "")
    assert "did you mean 'packing'? Type: hankwise find packing --kind table" in err
    code, out, err = run("find", "reels", "nonsense")
    assert (code, out) == (1, "")
    assert err.endswith("run hankwise find reels for all rows\n")
    told = json.loads(run("find", "reels", "hank", "--json")[1])
    assert told["name"] == "reels"
    assert told["rows"] == hw.handbook["reels"].find("hank").records()
