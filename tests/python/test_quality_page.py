"""docs/quality.md: what its tables and commands say is what happens, and its drawing is current."""

import re
import shlex
import xml.etree.ElementTree as ET

import hankwise as hw
import numpy as np
import pytest
from conftest import ROOT
from hankwise.cli import main
from pages import Page, plain

PAGE = Page("quality.md")
REFUSED = PAGE.tables["refused", "because", "write instead"]
SLIPS = PAGE.tables["slip", "done so", "gives", "ask instead", "answer"]
KINDS = PAGE.tables["kind", "a point is", "needs", "its limits by"]
SEEN = PAGE.tables["what is seen", "what it is called", "what to look for"]


@pytest.fixture(autouse=True)
def _at_the_top(monkeypatch):
    monkeypatch.chdir(ROOT)


@pytest.mark.parametrize(("ask", "answer", "line"), PAGE.asked, ids=[a for a, *_ in PAGE.asked])
def test_what_is_answered(ask, answer, line):
    assert str(eval(ask, PAGE.names_above(line))) == answer


@pytest.mark.parametrize(("wrong", "why", "right"), REFUSED)
def test_what_is_refused_and_what_to_write(wrong, why, right):
    assert why
    with pytest.raises(hw.HankwiseError) as refused:
        eval(plain(wrong), {"hw": hw})
    assert str(refused.value).startswith(plain(wrong).split("(")[0].split(".")[-1])
    eval(plain(right), {"hw": hw})


@pytest.mark.parametrize(("slip", "done", "gives", "ask", "answer"), SLIPS)
def test_a_slip_gives_another_value(slip, done, gives, ask, answer):
    assert slip
    assert ask
    wrong = eval(plain(done))
    assert f"{wrong:.4g}" == plain(gives)
    assert wrong != pytest.approx(float(plain(answer).split()[0]), rel=2e-3)


@pytest.mark.parametrize(("kind", "point", "needs", "limits"), KINDS)
def test_the_kinds_of_chart(kind, point, needs, limits):
    values = np.random.default_rng(1).normal(100, 3, 60)
    assert point
    assert limits
    chart = hw.quality.chart(values, 4 if "subgroup" in needs else None, plain(kind))
    assert chart.kind == plain(kind)
    drawn = {"reading": 60, "neighbours": 59, "subgroup": 15}
    assert len(chart.points) == next(n for word, n in drawn.items() if point.endswith(word))
    # The constants named, by the definition of each limit.
    c = hw.quality.chart_constants(4 if "subgroup" in needs else 2)
    low, high = (end.number("") for end in chart.limits)
    middle = chart.centre.number("")
    if "₂" in limits:
        spread = (
            np.abs(np.diff(values)).mean()
            if "E" in limits
            else np.ptp(values.reshape(15, 4), axis=1).mean()
        )
        assert high - middle == pytest.approx(c["E2" if "E" in limits else "A2"] * spread)
    else:
        letter = limits[0]
        assert (low, high) == pytest.approx((middle * c[f"{letter}3"], middle * c[f"{letter}4"]))


@pytest.mark.parametrize(("seen", "called", "look"), SEEN)
def test_outlier_or_drift(seen, called, look):
    # Three standard deviations of 2 are 6: made as the row says, one after the other.
    values = np.tile([99.0, 101.0, 102.0, 98.0], 10)
    if seen.startswith("one point"):
        values[20] = 110
    elif seen.startswith("several"):
        values[20:24] = 110
    else:
        values[20:30] = 103
    findings = hw.quality.chart(values, centre=100, sigma=2).findings
    assert {f["what"] for f in findings} == {plain(called)}
    assert look


@pytest.mark.parametrize(("command", "expected"), PAGE.commands())
def test_the_commands_print_that(command, expected, capsys):
    main(shlex.split(command))
    told = capsys.readouterr()
    assert (told.out + told.err).rstrip() == expected.rstrip()


def drawn(path):
    """The words of a drawing, and the line with the most points, its corners between 0 and 1."""
    root = ET.parse(path).getroot()
    words = ["".join(e.itertext()).strip() for e in root.iter("{http://www.w3.org/2000/svg}text")]
    lines = [
        np.array(re.findall(r"[ML] ([-\d.]+) ([-\d.]+)", e.get("d", "")), dtype=float)
        for e in root.iter("{http://www.w3.org/2000/svg}path")
        if "C" not in e.get("d", "")
    ]
    line = max(lines, key=len)
    return words, (line - line.min(axis=0)) / np.ptp(line, axis=0)


def test_the_drawing_is_that_of_the_command(tmp_path):
    fresh, kept = tmp_path / "slubbing.svg", ROOT / "docs/figures/slubbing.svg"
    options = ["--column", "slubbing", "--unit", "tex", "--baseline", "12"]
    assert main(["chart", "examples/slubbing.csv", *options, "--picture", str(fresh)]) == 0
    # Another matplotlib may move things by a little: the words and the line must be the same.
    words, line = drawn(fresh)
    words_kept, line_kept = drawn(kept)
    assert words == words_kept
    assert len(line) == 24
    assert line == pytest.approx(line_kept, abs=1e-3)
    told = (
        f"make it anew: hankwise chart examples/slubbing.csv {' '.join(options)} --picture {kept}"
    )
    assert "outlier: look at that one" in words, told


def test_no_table_is_left_out():
    others = {
        ("refused", "because", "write instead"),
        ("kind", "a point is", "needs", "its limits by"),
        ("what is seen", "what it is called", "what to look for"),
    }
    assert all(head in others or "answer" in head for head in PAGE.tables)
    assert len(PAGE.asked) > 30
    assert len(PAGE.commands()) == 3
