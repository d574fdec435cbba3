"""Shares of unlike things are neither added nor compared nor taken for one another."""

import itertools
import operator
import warnings

import hankwise as hw
import pytest
from hankwise._hankwise import Quantity

UNLIKE = "shares of different things"
SHARES = {
    "Yield",
    "Regain",
    "Contraction",
    "TwistedContraction",
    "TakeUp",
    "Crimp",
    "DrawIn",
    "Shrinkage",
    "OverWidth",
    "DimensionalChange",
    "AreaShrinkage",
    "MassLoss",
    "ShareLost",
    "Stretch",
    "Deviation",
    "Margin",
    "MarkUp",
    "ShareOfSales",
    "MoistureContent",
    "OnFibre",
}

# What a stage loses is a loss of mass that cannot be a gain.
LOSSES = {"MassLoss", "ShareLost"}


def cards():
    rooms = [hw.yarn, hw.cloth, hw.fibre, hw.mill, hw.quality]
    every = [getattr(room, name) for room in rooms for name in dir(room)]
    return [one for one in every if hasattr(one, "solved_for")]


CARDS = cards()
# One of each kind: its family as messages have it, its base unit.
KINDS = {}
for card in CARDS:
    for value in [*card.inputs, card.output]:
        KINDS[value["type"]] = (value["kind"], value["unit"])


def of_kind(name, number=0.09):
    unit = "fraction" if name in SHARES | {"Fraction"} else KINDS[name][1]
    return Quantity._make(number, unit, name, None)


def refuses(act):
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        try:
            act()
        except (hw.HankwiseError, TypeError) as error:
            return str(error)
    return ""


OPERATORS = [operator.add, operator.sub, operator.lt, operator.ge, operator.eq, operator.ne]


@pytest.mark.parametrize("act", OPERATORS)
def test_every_ordered_pair(act):
    assert set(KINDS) >= SHARES
    for left, right in itertools.product(KINDS, repeat=2):
        unlike = left != right and {left, right} <= SHARES and {left, right} != LOSSES
        said = refuses(lambda: act(of_kind(left), of_kind(right)))  # noqa: B023
        assert (UNLIKE in said) == unlike, (left, right, said)
        if unlike:
            assert KINDS[left][0] in said
            assert KINDS[right][0] in said


def test_every_ordered_pair_as_an_input():
    wants = {}
    for card in CARDS:
        for value in card.inputs:
            if not value["many"]:
                wants.setdefault(value["type"], (card, value["name"]))
    for wanted, given in itertools.product(sorted({*SHARES, "Fraction"} & set(wants)), KINDS):
        card, name = wants[wanted]
        others = {}
        for value in card.inputs:
            middle = of_kind(value["type"], sum(value["usual"]) / 2)
            others[value["name"]] = [middle, middle] if value["many"] else middle
        said = refuses(lambda: card(**others | {name: of_kind(given, 1.0)}))  # noqa: B023
        unlike = given != wanted and given in SHARES
        unlike = unlike and (given, wanted) != ("DrawIn", "Shrinkage") and {given, wanted} != LOSSES
        assert (UNLIKE in said) == unlike, (card, given, said)


def test_a_share_of_one_thing_is_no_plain_fraction():
    """In every formula that takes a plain fraction, alone or in a list."""
    tried = 0
    for card in CARDS:
        for value in card.inputs:
            if value["type"] != "Fraction":
                continue
            others = {}
            for other in card.inputs:
                middle = of_kind(other["type"], sum(other["usual"]) / 2)
                others[other["name"]] = [middle, middle] if other["many"] else middle
            for kind in SHARES:
                given = of_kind(kind)
                given = [given, given] if value["many"] else given
                said = refuses(lambda: card(**others | {value["name"]: given}))  # noqa: B023
                assert UNLIKE in said, (card, value["name"], kind, said)
                assert "100 % − x" in said
                assert KINDS[kind][0] in said
                tried += 1
    assert tried > 50 * len(SHARES)


def test_a_loss_takes_no_regain():
    regain = hw.fibre.regain_from_content(moisture_content="14 %")
    with pytest.raises(hw.UnitError, match=UNLIKE):
        hw.mill.mass_after_loss("500 kg", regain, "0 kg")
    with pytest.raises(hw.UnitError, match="100 % − x"):
        hw.mill.length_wound("100 m/min", "1 h", regain)
    # What scouring takes is a loss, and what is left of it a plain share.
    loss = hw.mill.scouring_loss(fat_before="8 %", fat_after="1 %", regain="12 %")
    after = hw.mill.mass_after_loss("120 kg", loss, "0 kg").number("kg")
    assert after == pytest.approx(120 * 1.13 / 1.2)
    assert (hw.q("100 %") - loss).kind == "fraction"


def test_what_reads_as_a_plain_fraction_goes_anywhere():
    for text in ["8 %", 0.08, hw.q("8 %")]:
        assert hw.cloth.crimp_from_take_up(take_up=text).number("%") == pytest.approx(8.695652)
        assert hw.cloth.yarn_in_cloth(cloth_length="100 m", crimp=text).number(
            "m"
        ) == pytest.approx(108)
        assert hw.fibre.moisture_content(regain=text).number("%") == pytest.approx(7.407407)


def test_the_rest_of_a_whole():
    take_up = hw.cloth.take_up_from_lengths(yarn_length="100 m", cloth_length="92 m")
    for left in [hw.q("100 %") - take_up, 1 - take_up]:
        assert left.kind == "fraction"
        assert left.number("%") == pytest.approx(92)
    for over in [1 + take_up, take_up + 1, hw.q("100 %") + take_up]:
        assert over.kind == "fraction"
        assert over.number("%") == pytest.approx(108)
    assert (take_up - 0.05).number("%") == pytest.approx(3)
    total = sum([take_up, take_up])
    assert (total.kind, total.number("%")) == (take_up.kind, pytest.approx(16))
    with pytest.raises(hw.UnitError, match="8 %"):
        take_up + 8
    assert take_up < hw.q("9 %")
    assert take_up == hw.q("8 %") or take_up.number("%") == pytest.approx(8)


def test_the_message_says_how_to_convert_or_combine():
    crimp = hw.cloth.crimp_from_lengths(yarn_length="109 m", cloth_length="100 m")
    take_up = hw.cloth.take_up_from_lengths(yarn_length="100 m", cloth_length="92 m")
    with pytest.raises(hw.UnitError, match="crimp_from_take_up"):
        crimp + take_up
    with pytest.raises(hw.UnitError, match="crimp_from_take_up"):
        hw.cloth.yarn_in_cloth(cloth_length="100 m", crimp=take_up)
    draw_in = hw.cloth.draw_in_from_widths(reed_width="2 m", off_loom_width="1.88 m")
    shrinkage = hw.cloth.shrinkage_from_sizes(size_before="1.88 m", size_after="1.6 m")
    with pytest.raises(hw.UnitError, match="compounded_shrinkage, the draw-in first"):
        shrinkage + draw_in
    # As it says.
    both = hw.cloth.compounded_shrinkage(shrinkages=[draw_in, shrinkage])
    assert both.number("%") == pytest.approx(20)
    cloth = {"width_shrinkage": take_up, "draw_in": "6 %"}
    with pytest.raises(hw.UnitError, match=UNLIKE):
        hw.cloth.reed_width(finished_width="1.5 m", **cloth)
