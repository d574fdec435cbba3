"""What is typed wrong of a week, a balance and costs."""

import hankwise as hw
import pytest

MACHINES = {"card": {"open_time": "40 h", "clean_time": "2 h"}}


def lot(**other):
    return {"name": "Elm", "colour": "black", "times": {"card": "10 h"}, **other}


def week(*lots, machines=MACHINES, **more):
    return hw.mill.week(lots=list(lots), machines=machines, **more)


def cleaned(told):
    return [visit["clean_time"].number("h") for visit in told["visits"]]


@pytest.mark.parametrize(
    ("call", "words"),
    [
        (lambda: week({}), r"lots\[1\]: name .* is missing"),
        (lambda: week(lot(), lot(name=None)), r"lots\[2\]: name .* is missing"),
        (lambda: week(lot(name=" ")), "a lot has no name"),
        (lambda: week(lot(color="black")), "did you mean 'colour'"),
        (lambda: week(lot(times={})), "Elm: times .* is missing"),
        (lambda: week(lot(times="10 h")), r'times=\[\("name", {"time": …}\)\], not'),
        (lambda: week(lot(times={3: "1 h"})), "a name goes here, not 3"),
        (lambda: week(lot(), machines={1: {"open_time": "40 h"}}), "a name goes here, not 1"),
        (lambda: week(lot(), machines={"card": {"opn_time": "40 h"}}), "did you mean 'open_time'"),
        (
            lambda: hw.mill.balance(mass_in=1.7 * hw.q("1 lb"), out={"top": "673 g"}),
            "mass_in: the last digit that was read is not known; write it as text",
        ),
        (
            lambda: hw.mill.balance(mass_in="1.7 lb", out={"top": 0.673 * hw.q("1 kg")}),
            "top: mass: the last digit that was read is not known",
        ),
        (lambda: hw.mill.balance(mass_in="1.7 lb", out={"top": None}), "top: mass .* is missing"),
        (lambda: hw.mill.balance(mass_in="1.7 lb", out={"top": "9 m"}), "top.*mass"),
        (lambda: hw.mill.balance(mass_in="1.7e3 g", out={"top": "673 g"}), "write it out"),
        (
            lambda: hw.mill.cost_through(price_per_mass="4 /kg", stages=[{"loss": "8 %"}]),
            r"stages\[1\]: name .* is missing",
        ),
        (
            lambda: hw.mill.cost_through(
                price_per_mass="4 /kg", stages=[{"name": "a"}], hourly_overhead="20 %"
            ),
            "not of money; write it like '120'",
        ),
    ],
)
def test_what_is_refused(call, words):
    with pytest.raises(hw.HankwiseError, match=words.replace("{", r"\{")):
        call()


def test_capitals_make_no_other_colour():
    both = week(lot(colour="Black"), lot(name="Ash", colour="black "))
    assert cleaned(both) == [0, 0]
    change = {"colour_before": "White", "colour_after": "BLACK", "clean_time": "5 h"}
    pairs = {"card": {"open_time": "40 h", "changes": [change]}}
    told = week(lot(colour="white"), lot(name="Ash"), machines=pairs)
    assert cleaned(told) == [0, 5]


def test_a_pair_with_a_colour_that_nothing_bears_is_doubted():
    change = {"colour_before": "white", "colour_after": "blak", "clean_time": "5 h"}
    pairs = {"card": {"open_time": "40 h", "changes": [change]}}
    with pytest.warns(hw.RangeWarning, match="'blak'; did you mean 'black'"):
        week(lot(), machines=pairs)


def test_lightness_as_a_share():
    told = week(lot(colour="teal", lightness="40 %"), lot(name="Ash", colour="rust", lightness=0.6))
    assert [one["name"] for one in told["lots"]] == ["Ash", "Elm"]
    assert told["Elm.lightness"].number("%") == 40
    with pytest.raises(hw.HankwiseError, match=r"Elm, lightness: .* write '40 %'"):
        week(lot(colour="teal", lightness=40))


def test_an_order_is_read_with_hyphens_and_capitals():
    assert "dark to light" in repr(week(lot(), order="Dark-to-light"))


def test_a_quantity_that_was_read_from_a_text_still_knows_its_last_digit():
    out = {"top": "673 g", "noil": "109 g"}
    read = hw.mill.balance(mass_in=hw.q("1.7 lb"), out={k: hw.q(v) for k, v in out.items()})
    assert repr(read) == repr(hw.mill.balance(mass_in="1.7 lb", out=out))


def test_a_very_full_week_is_told_in_short():
    lots = [lot(name=f"lot {k}", times={"card": "5 h"}) for k in range(40)]
    said = repr(week(*lots)).split("The bottleneck")[0]
    assert "and 20 more" in said
