"""The weave in Python against counts by NumPy, and what users meet: reading, pickling, errors."""

import json
import pickle
import subprocess
import sys

import hankwise as hw
import numpy as np
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.extra import numpy as hnp

SQUARES = hnp.arrays(bool, hnp.array_shapes(min_dims=2, max_dims=2, min_side=1, max_side=130))


def is_loose(squares):
    """True where a thread never changes face."""
    return any(np.any(np.all(squares == squares[:1], axis=0) | np.all(~squares, axis=0)) for squares
               in (squares, squares.T))  # fmt: skip


def run_lengths(line):
    """Lengths of the runs of a line that goes round, by NumPy."""
    starts = np.flatnonzero(line != np.roll(line, 1))
    return np.diff(starts, append=starts[0] + line.size)


@settings(max_examples=cases(150))
@given(SQUARES, st.sampled_from([bool, np.uint8, np.int64, float]), st.booleans())
def test_counts_are_those_of_numpy(squares, dtype, fortran):
    order = "F" if fortran else "C"
    array = np.asarray(squares, dtype, order=order)
    if is_loose(squares):
        with pytest.raises(hw.RangeError, match=r"(end|pick) \d+ "):
            hw.cloth.weave(array)
        return
    weave = hw.cloth.weave(array)
    # Of the repeat, which may be smaller than what was given.
    ends, picks = weave.repeat
    repeat = squares[:picks, :ends]
    assert np.array_equal(weave.matrix, repeat)
    assert np.array_equal(
        np.tile(repeat, (len(squares) // picks, squares.shape[1] // ends)), squares
    )
    changes = {axis: repeat != np.roll(repeat, 1, axis) for axis in (0, 1)}
    assert weave.interlacings == {
        "warp": changes[0].sum(axis=0).tolist(),
        "weft": changes[1].sum(axis=1).tolist(),
    }
    assert weave.warp_up == pytest.approx(repeat.mean())
    for axis, (system, lines) in enumerate({"warp": repeat.T, "weft": repeat}.items()):
        lengths = np.concatenate([run_lengths(line) for line in lines])
        assert weave.average_float[system] == pytest.approx(lengths.mean())
        assert weave.longest_float[system] == lengths.max()
        assert sorted(f["length"] for f in weave.floats(system)) == sorted(lengths)
        assert weave.interlacings_in(**{("picks", "ends")[axis]: 1}) == pytest.approx(
            changes[axis].mean()
        )
    assert weave.crossing_firmness + weave.floating_factor == pytest.approx(2)


@pytest.mark.parametrize("name", ["plain", "2/2 twill S", "2/2 herringbone", "8-end satin"])
def test_a_weave_is_a_value(name):
    weave = hw.cloth.weave(name)
    again = pickle.loads(pickle.dumps(weave))
    assert again == weave
    assert hash(again) == hash(weave)
    assert weave.name == name == str(weave)
    assert hw.cloth.weave(weave) == weave == hw.cloth.weave(weave.rows)
    assert hw.cloth.weave(weave.matrix.astype(int).tolist()) == weave
    draft = weave.draft()
    assert hw.cloth.weave(draft) == draft.weave == weave
    assert pickle.loads(pickle.dumps(draft)) == draft
    assert hw.cloth.draft(draft.threading, lifts=draft.lifts).weave == weave
    assert "<table>" in weave._repr_html_()
    assert weave != name


def test_the_matrix_is_a_copy():
    weave = hw.cloth.weave("plain")
    weave.matrix[:] = True
    assert weave.rows == ["10", "01"]


def test_bytes_that_are_no_bool_do_no_harm():
    odd = np.array([[2, 0], [0, 255]], np.uint8).view(bool)
    assert hw.cloth.weave(odd).name == "plain"


@pytest.mark.parametrize(
    "value",
    [None, 3, [], [[]], np.zeros(4), np.zeros((2, 2, 2)), [["a", "b"]], {"a": 1}, [[1, 0], [1]]],
)
def test_what_is_no_weave_is_refused(value):
    with pytest.raises((TypeError, hw.HankwiseError)) as caught:
        hw.cloth.weave(value)
    assert len(str(caught.value)) > 20


def test_other_values_than_0_and_1_are_refused():
    with pytest.raises(hw.NotationError, match="1 where the warp is up"):
        hw.cloth.weave([[0, 2], [1, 0]])


def test_a_thread_that_is_not_woven_in_is_named():
    with pytest.raises(hw.RangeError, match="end 3 is never raised"):
        hw.cloth.weave(["110", "010", "100"])
    with pytest.raises(hw.RangeError, match="pick 3 lies under every end"):
        hw.cloth.weave(["100", "011", "111"])


def test_a_draft_that_does_not_fit_says_which_and_what_to_do():
    with pytest.raises(hw.RangeError, match=r"end 4 is drawn on shaft 5.*the tie-up has 4"):
        hw.cloth.draft("1 2 3 5", ["1 2", "2 3", "3 4", "4 1"], "1 2 3 4")
    with pytest.raises(hw.NotationError, match="together"):
        hw.cloth.draft("1 2", ["1", "2"])
    with pytest.raises(hw.NotationError, match="whole numbers"):
        hw.cloth.draft("1 two", ["1", "2"], "1 2")


def test_layers_of_a_double_cloth():
    layers = hw.cloth.weave("double 2/2 twill").layers()
    assert [layers.face.name, layers.back.name, layers.stitches] == ["2/2 twill", "2/2 twill", []]


def test_setts_take_a_weave_without_a_name():
    crepe = hw.cloth.weave("crepe of 1/3 twill")
    assert crepe.name is None
    sett = hw.cloth.setts(weave=crepe, warp_count="100 tex")["ashenhurst_woollen.warp_sett"]
    plain = hw.cloth.setts(weave="plain", warp_count="100 tex")["ashenhurst_woollen.warp_sett"]
    ratio = sett.number("ends/cm") / plain.number("ends/cm")
    assert ratio == pytest.approx(crepe.ashenhurst_ratio["warp"] / 0.5)


def command(*words):
    return subprocess.run(
        [sys.executable, "-m", "hankwise", "weave", *words], capture_output=True, text=True
    )


def test_the_command_line_tells_of_a_weave():
    found = json.loads(command("2/2", "herringbone", "--draft", "--ends", "810", "--json").stdout)
    assert found["average_float"] == {"warp": 2.0, "weft": 1.6}
    assert found["draft"]["threading"] == [1, 2, 3, 4, 2, 1, 4, 3]
    assert sum(found["healds"]) == 810
    assert found["draft"]["lifts"] == [[1, 4], [1, 2], [2, 3], [3, 4]]
    text = command("2/2", "herringbone", "--draft").stdout
    assert "1 2 3 4 2 1 4 3" in text
    assert "Lifting plan" in text
    assert "treadle" not in text
    assert "Tie-up" in command("2/2", "herringbone", "--draft", "--treadles").stdout
    assert "■" in text
    refused = command("2/2", "twil")
    assert refused.returncode == 1
    assert "did you mean '2/2 twill'?" in refused.stderr


def test_the_report_counts_intersections_as_the_formulas_do():
    text = hw.cloth.weave("2/2 herringbone").report()
    line = next(line for line in text.splitlines() if line.strip().startswith("intersections"))
    # Of clean-cut herringbone: ends 2, picks 4 or 6.
    assert line.split()[-4:] == ["2", "4", "to", "6"]
