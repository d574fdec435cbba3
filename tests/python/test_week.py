"""A week of lots: how it shows itself, and what is refused."""

import hankwise as hw
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st

LOTS = [
    {"name": "Elm", "colour": "black", "hours": {"card": "10 h", "mule": "20 h"}},
    {"name": "Ash", "colour": "white", "hours": {"card": "6 h", "mule": "14 h"}},
    {"name": "Oak", "colour": "grey", "hours": {"card": "6 h", "mule": "8 h"}},
]
MACHINES = {
    "card": {"hours": "40 h", "to_darker": "30 min", "to_lighter": "4 h", "people": 1},
    "mule": {"hours": "44 h", "clean_down": "1 h", "people": 0.5},
}


def test_light_to_dark_unless_told_otherwise():
    assert hw.mill.week(LOTS, MACHINES).order == ["Ash", "Oak", "Elm"]
    assert hw.mill.week(LOTS, MACHINES, "dark to light").order == ["Elm", "Oak", "Ash"]
    given_order = hw.mill.week(LOTS, MACHINES, "as given")
    assert given_order.order == ["Elm", "Ash", "Oak"]
    assert given_order.tried is None
    # From black to white it is cleaned for long, from white to grey for short.
    cleaned = [v["cleaned"] for v in given_order.visits if v["machine"] == "card"]
    assert cleaned == [0, 4, 0.5]


def test_by_hand():
    week = hw.mill.week(LOTS, MACHINES)
    times = {(v["lot"], v["machine"]): (v["start"], v["finish"]) for v in week.visits}
    assert times == {
        ("Ash", "card"): (0, 6),
        ("Ash", "mule"): (6, 20),
        ("Oak", "card"): (6.5, 12.5),
        ("Oak", "mule"): (21, 29),
        ("Elm", "card"): (13, 23),
        ("Elm", "mule"): (30, 50),
    }
    assert week.finish == 50
    assert week.beyond == {("Elm", "mule"): 6}
    assert week.bottleneck == "mule"
    people = {m["machine"]: m["person_hours"] for m in week.machines}
    assert people == {"card": 22, "mule": 21}
    assert "Elm at the mule by 6 h" in repr(week)
    assert "No other order was tried" in repr(week)
    assert "<table>" in week._repr_html_()


@settings(max_examples=cases(30))
@given(
    hours=st.lists(st.tuples(*[st.floats(0.1, 9)] * 2), min_size=1, max_size=5),
    clean=st.floats(0, 3),
)
def test_trying_orders_is_never_worse(hours, clean):
    def lot(place, on_a, on_b):
        times = {"a": f"{on_a} h", "b": f"{on_b} h"}
        return {"name": f"lot {place}", "colour": f"c{place}", "lightness": 50, "hours": times}

    lots = [lot(place, *times) for place, times in enumerate(hours)]
    machines = {name: {"hours": "200 h", "clean_down": f"{clean} h"} for name in "ab"}
    as_given = hw.mill.week(lots, machines, "as given")
    tried = hw.mill.week(lots, machines, try_orders=True)
    assert tried.finish <= as_given.finish + 1e-9
    work = sum(sum(pair) for pair in hours)
    assert sum(m["work"] for m in tried.machines) == pytest.approx(work)
    if clean == 0:
        # For two machines and no cleaning the shortest week is known: Johnson, 1954.
        first = sorted((h for h in hours if h[0] < h[1]), key=lambda h: h[0])
        last = sorted((h for h in hours if h[0] >= h[1]), key=lambda h: -h[1])
        a = b = 0.0
        for on_a, on_b in first + last:
            a += on_a
            b = max(a, b) + on_b
        assert tried.finish == pytest.approx(b)


@pytest.mark.parametrize(
    ("lots", "machines", "order", "says"),
    [
        ([{**LOTS[0], "colour": "gray"}], MACHINES, "as given", "did you mean 'grey'"),
        ([{**LOTS[0], "hours": {"crad": "1 h"}}], MACHINES, "as given", "did you mean 'card'"),
        ([{**LOTS[0], "hours": {"card": 3}}], MACHINES, "as given", "write its unit"),
        ([{**LOTS[0], "shade": "grey"}], MACHINES, "as given", "there is no 'shade'"),
        ([LOTS[0], LOTS[0]], MACHINES, "as given", "given twice"),
        (LOTS, {"card": {"clean_down": "1 h"}}, "as given", "hours are missing"),
        (LOTS, {"card": {"hours": "0 h"}, "mule": {"hours": "1 h"}}, "as given", "more than 0 h"),
        (LOTS, MACHINES, "by size", "'light to dark'"),
        (LOTS[0], MACHINES, "as given", "a list of dictionaries"),
        ([], MACHINES, "as given", "no lot"),
    ],
)
def test_what_cannot_be_run_is_refused(lots, machines, order, says):
    with pytest.raises(hw.HankwiseError, match=says):
        hw.mill.week(lots, machines, order)


def test_the_picture_has_every_lot(tmp_path):
    pytest.importorskip("matplotlib")
    figure = hw.mill.week(LOTS, MACHINES).plot()
    figure.savefig(tmp_path / "week.svg")
    [axes] = figure.axes
    assert sorted(t.get_text() for t in axes.texts) == sorted(["Ash", "Elm", "Oak"] * 2)
    # Grey alone: every bar's shade has no hue.
    for bar in axes.patches:
        red, green, blue, _ = bar.get_facecolor()
        assert red == green == blue
