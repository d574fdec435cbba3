"""A week of lots: how it shows itself, and what is refused."""

import hankwise as hw
import pytest
from conftest import cases
from hypothesis import given, settings
from hypothesis import strategies as st

LOTS = [
    {"name": "Elm", "colour": "black", "times": {"card": "10 h", "mule": "20 h"}},
    {"name": "Ash", "colour": "white", "times": {"card": "6 h", "mule": "14 h"}},
    {"name": "Oak", "colour": "grey", "times": {"card": "6 h", "mule": "8 h"}},
]
CLEAN = {"clean_time_to_darker": "30 min", "clean_time_to_lighter": "4 h"}
MACHINES = {
    "card": {"open_time": "40 h", "people": 1, **CLEAN},
    "mule": {"open_time": "44 h", "clean_time": "1 h", "people": 0.5},
}


def run(lots=LOTS, machines=MACHINES, order="light to dark", **more):
    return hw.mill.week(lots=lots, machines=machines, order=order, **more)


def order_of(week):
    return [lot["name"] for lot in week["lots"]]


def test_light_to_dark_unless_told_otherwise():
    assert order_of(run()) == ["Ash", "Oak", "Elm"]
    assert order_of(run(order="dark to light")) == ["Elm", "Oak", "Ash"]
    given_order = run(order="as given")
    assert order_of(given_order) == ["Elm", "Ash", "Oak"]
    assert "orders_tried" not in given_order
    # From black to white it is cleaned for long, from white to grey for short.
    cleaned = [given_order[f"{lot}.card.clean_time"].number("h") for lot in ("Elm", "Ash", "Oak")]
    assert cleaned == [0, 4, 0.5]


def test_by_hand():
    week = run()
    times = {v["name"]: (v["start"].number("h"), v["finish"].number("h")) for v in week["visits"]}
    assert times == {
        "Ash.card": (0, 6),
        "Ash.mule": (6, 20),
        "Oak.card": (6.5, 12.5),
        "Oak.mule": (21, 29),
        "Elm.card": (13, 23),
        "Elm.mule": (30, 50),
    }
    assert week["finish"].number("h") == 50
    late = {v["name"]: v["beyond"].number("h") for v in week["visits"] if v["beyond"].number("h")}
    assert late == {"Elm.mule": 6}
    people = {m["name"]: m["person_hours"].number("h") for m in week["machines"]}
    assert people == {"card": 22, "mule": 21}
    assert "The bottleneck is the mule" in repr(week)
    assert "Elm at the mule by 6 h" in repr(week)
    assert "No other order was tried" in repr(week)
    assert "<table>" in week._repr_html_()
    assert "Oak.mule.finish" in str(week.working("Elm.mule.start"))


def test_the_value_of_a_row_is_one():
    with pytest.raises(TypeError, match="Elm, times: card, time: give one value"):
        run(lots=[{**LOTS[0], "times": {"card": ["1 h", "2 h"]}}])


@settings(max_examples=cases(30))
@given(
    hours=st.lists(st.tuples(*[st.floats(0.1, 9)] * 2), min_size=1, max_size=5),
    clean=st.floats(0, 3),
)
def test_trying_orders_is_never_worse(hours, clean):
    def lot(place, on_a, on_b):
        times = {"a": f"{on_a} h", "b": f"{on_b} h"}
        return {"name": f"lot {place}", "colour": f"c{place}", "lightness": "50 %", "times": times}

    lots = [lot(place, *times) for place, times in enumerate(hours)]
    machines = {name: {"open_time": "160 h", "clean_time": f"{clean} h"} for name in "ab"}
    as_given = run(lots, machines, "as given")
    tried = run(lots, machines, try_orders=True)
    assert tried["finish"].number("h") <= as_given["finish"].number("h") + 1e-9
    work = sum(sum(pair) for pair in hours)
    found = sum(m["work_time"].number("h") for m in tried["machines"])
    assert found == pytest.approx(work)
    if clean == 0:
        # For two machines and no cleaning the shortest week is known: Johnson, 1954.
        first = sorted((h for h in hours if h[0] < h[1]), key=lambda h: h[0])
        last = sorted((h for h in hours if h[0] >= h[1]), key=lambda h: -h[1])
        a = b = 0.0
        for on_a, on_b in first + last:
            a += on_a
            b = max(a, b) + on_b
        assert tried["finish"].number("h") == pytest.approx(b)


@pytest.mark.parametrize(
    ("lots", "machines", "order", "says"),
    [
        ([{**LOTS[0], "colour": "gray"}], MACHINES, "as given", "did you mean 'grey'"),
        ([{**LOTS[0], "times": {"crad": "1 h"}}], MACHINES, "as given", "did you mean 'card'"),
        ([{**LOTS[0], "times": {"card": 3}}], MACHINES, "as given", "has no unit"),
        ([{**LOTS[0], "shade": "grey"}], MACHINES, "as given", "no input 'shade'"),
        ([LOTS[0], LOTS[0]], MACHINES, "as given", "the name of two of the lots"),
        (LOTS, {"card": {"clean_time": "1 h"}}, "as given", "open_time .* is missing"),
        (LOTS, {"card": {"open_time": "0 h"}}, "as given", "0 h is not possible"),
        (LOTS, MACHINES, "by size", "light to dark"),
        ("Elm", MACHINES, "as given", "a list goes here"),
        ([], MACHINES, "as given", "lots .* is missing"),
    ],
)
def test_what_cannot_be_run_is_refused(lots, machines, order, says):
    with pytest.raises(hw.HankwiseError, match=says):
        run(lots, machines, order)


def test_the_picture_has_every_lot(tmp_path):
    pytest.importorskip("matplotlib")
    figure = run().plot()
    figure.savefig(tmp_path / "week.svg")
    [axes] = figure.axes
    assert sorted(t.get_text() for t in axes.texts) == sorted(["Ash", "Elm", "Oak"] * 2)
    # Grey alone: every bar's shade has no hue.
    for bar in axes.patches:
        red, green, blue, _ = bar.get_facecolor()
        assert red == green == blue
