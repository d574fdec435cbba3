"""What is typed wrong of a week, a balance and costs."""

import hankwise as hw
import pytest

MACHINES = {"card": {"hours": "40 h", "clean_down": "2 h"}}


def lot(**other):
    return {"name": "Elm", "colour": "black", "hours": {"card": "10 h"}, **other}


def week(*lots, machines=MACHINES, **more):
    return hw.mill.week(list(lots), machines, **more)


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: week({}), "the name of number 1 is missing"),
        (lambda: week(lot(), lot(name=None)), "the name of number 2 is missing"),
        (lambda: week(lot(name=" ")), "a lot has no name"),
        (lambda: week(lot(color="black")), "did you mean 'colour'"),
        (lambda: week(lot(hours={})), "'hours': {'card': '3 h'}"),
        (lambda: week(lot(hours={3: "1 h"})), "a name is wanted, such as 'card', not 3"),
        (lambda: week(lot(), machines={1: {"hours": "40 h"}}), "a name is wanted"),
        (lambda: week(lot(), machines={"card": {"hour": "40 h"}}), "did you mean 'hours'"),
        (
            lambda: hw.mill.balance(1.7, ["673 g"]),
            "balance, into: a mass is wanted",
        ),
        (lambda: hw.mill.balance("1.7 lb", [673]), "balance, out: a mass is wanted"),
        (lambda: hw.mill.balance("1.7 lb", ["673 g", None]), "not None"),
        (lambda: hw.mill.balance("1.7 lb", ["673 g", "9 m"]), "out, number 2"),
        (lambda: hw.mill.balance("1.7e3 g", ["673 g"]), "write the mass out"),
        (
            lambda: hw.mill.cost_through(price="4 /kg", stages=[{"loss": "8 %"}]),
            "the name of number 1 is missing",
        ),
        (
            lambda: hw.mill.cost_through(
                price="4 /kg", stages=[{"name": "a"}], hourly_overhead="20 %"
            ),
            "given for a money; write it like '120'",
        ),
    ],
)
def test_what_is_refused(call, words):
    with pytest.raises(hw.HankwiseError, match=words.replace("{", r"\{")):
        call()


def test_capitals_make_no_other_colour():
    both = week(lot(colour="Black"), lot(name="Ash", colour="black "))
    assert [v["cleaned"] for v in both.visits] == [0, 0]
    pairs = {"card": {"hours": "40 h", "from_to": {("White", "BLACK"): "5 h"}}}
    told = week(lot(colour="white"), lot(name="Ash"), machines=pairs)
    assert [v["cleaned"] for v in told.visits] == [0, 5]


def test_a_pair_with_a_colour_that_nothing_bears_is_doubted():
    pairs = {"card": {"hours": "40 h", "from_to": {("white", "blak"): "5 h"}}}
    with pytest.warns(hw.RangeWarning, match="'blak'; did you mean 'black'"):
        week(lot(), machines=pairs)


def test_lightness_as_a_share():
    told = week(lot(colour="teal", lightness="40 %"), lot(name="Ash", colour="rust", lightness=60))
    assert told.order == ["Ash", "Elm"]
    assert told.visits[1]["lightness"] == 40
    with pytest.warns(hw.RangeWarning, match="all but black"):
        week(lot(colour="teal", lightness=0.4))


def test_an_order_is_read_with_hyphens_and_capitals():
    assert week(lot(), order="Dark-to-light").ordered == "dark to light"


def test_one_thing_that_came_out_may_stand_alone():
    alone, listed = hw.mill.balance("1 kg", "1.0 kg"), hw.mill.balance("1 kg", ["1.0 kg"])
    assert alone.closes
    assert repr(alone) == repr(listed)
    # A quantity that was read from a text still knows it.
    assert hw.mill.balance(hw.q("1.7 lb"), [hw.q("673 g"), hw.q("109 g")]).closes


def test_a_very_full_week_is_told_in_short():
    lots = [lot(name=f"lot {k}", hours={"card": "5 h"}) for k in range(40)]
    said = repr(week(*lots)).split("The bottleneck")[0]
    assert "and 20 more" in said
