"""What people type wrong in the cloth room: what is told, and that it helps."""

import hankwise as hw
import numpy as np
import pytest

cloth = hw.cloth
TWILL = cloth.weave("2/2 twill")
REED = "24 dents/10 cm"
PIECE = {
    "wanted_width": "1.4 m", "wanted_length": "1.8 m", "warp_count": "150 tex",
    "wanted_reed_sett": "5 ends/cm", "weft_sett": "5 picks/cm",
}  # fmt: skip
PLAIN = {
    "warp_diameter": "0.3 mm", "weft_diameter": "0.3 mm", "warp_sett": "15 ends/cm",
    "weft_sett": "12 picks/cm",
}  # fmt: skip


def reed(sett, reeds, **more):
    return cloth.choose_reed(wanted_reed_sett=sett, reeds=reeds, **more)


@pytest.mark.parametrize(
    ("call", "error", "words"),
    [
        # A list where a text goes.
        (
            lambda: cloth.setts(weave=["plain"], warp_count="74 tex"),
            TypeError,
            "setts, weave: a text",
        ),
        (lambda: reed("5 ends/cm", None), hw.NotationError, "reeds .* is missing"),
        (
            lambda: reed("5 ends/cm", {REED}),
            hw.NotationError,
            f"reeds: write a list.*'{REED}'",
        ),
        # Whole numbers.
        (
            lambda: reed("5 ends/cm", REED, period=-1),
            hw.RangeError,
            "period: .*must be 0 or more",
        ),
        (lambda: reed("5 ends/cm", REED, period=1.5), hw.RangeError, "period: 1.5"),
        (
            lambda: reed("5 ends/cm", REED, period=10**30),
            hw.RangeError,
            "choose_reed: period: an order",
        ),
        (
            lambda: cloth.colour_order("4 blue", -1),
            hw.RangeError,
            "colour_order, ends: .*whole number",
        ),
        (lambda: cloth.colour_order("4 blue", 10**30), hw.RangeError, "colour_order, ends"),
        (
            lambda: cloth.colour_order(["4 blue"]),
            TypeError,
            "order: write a text such as '24 grey 4 white'",
        ),
        (lambda: cloth.satin_moves(-1), hw.RangeError, "satin_moves, ends: .*whole number"),
        # Texts that are not a weave, and why.
        (lambda: cloth.weave([[1, 0], [1]]), TypeError, "not all of one length"),
        (lambda: cloth.weave(np.zeros((2, 2, 2))), TypeError, "3 dimensions"),
        (lambda: cloth.weave([1, 0]), TypeError, "1 dimensions"),
        (lambda: cloth.weave([["1", "0"], ["0", "1"]]), TypeError, "must be 1 and 0"),
        (lambda: cloth.weave(2), TypeError, "a name such as '2/2 twill'.*not 2$"),
        (lambda: TWILL.picture(repeats=3), TypeError, r"such as \(2, 3\), not 3"),
        (lambda: TWILL.picture(repeats=(0, 1)), TypeError, r"not \(0, 1\)"),
        (lambda: TWILL.picture("face", warp="4 bleu"), hw.NotationError, "mean 'blue'.; write"),
        (lambda: TWILL.picture().save("twill.png"), hw.NotationError, r"must end in \.svg"),
        (lambda: TWILL.picture().save(""), hw.NotationError, r"must end in \.svg"),
        # Values that are none.
        (
            lambda: cloth.process(name="scour", width_shrinkage=float("inf")),
            hw.RangeError,
            "width_shrinkage",
        ),
        (
            lambda: cloth.process(name="scour", mass_loss="100 %"),
            hw.RangeError,
            r"must be 99\.9999 % or less",
        ),
        (
            lambda: cloth.process(name="scour", width_before=["10 cm"], width_after=["0 cm"]),
            hw.RangeError,
            "width_after.*0 cm is not possible",
        ),
        (
            lambda: cloth.setts(weave="plain", warp_count="74 tex", yarn_factor="90 %"),
            hw.UnitError,
            "0.9 for 90 %",
        ),
        (lambda: cloth.plain_cloth(**PLAIN), hw.NotationError, "plain_cloth: .*give 1 more"),
        (
            lambda: cloth.plain_cloth(**PLAIN, warp_crimp="-3 %"),
            hw.RangeError,
            "change one: warp_crimp at least 0 %$",
        ),
        (
            lambda: cloth.piece(
                **PIECE, warp_colours=cloth.colour_order("4 blue 4 white", even=False)
            ),
            hw.NotationError,
            "even=False.*write '4 blue 4 white'",
        ),
    ],
)
def test_a_slip_is_told_with_what_to_type(call, error, words) -> None:
    with pytest.raises(error, match=words):
        call()


def test_reeds_and_numbers_of_ends_may_stand_in_one_quantity() -> None:
    reeds = hw.q([24.0, 30.0], "dents/10 cm")
    said = str(reed("4.8 ends/cm", reeds, ends_per_dent=np.array([1, 2])))
    assert said == str(reed("4.8 ends/cm", [REED, "30 dents/10 cm"], ends_per_dent=[1, 2]))


def test_what_is_unusual_is_warned_of_once() -> None:
    with pytest.warns(hw.RangeWarning, match="warp_count = 1.000e300 tex is unusual"):
        cloth.setts(weave="plain", warp_count="1e300 tex")
    with pytest.warns(hw.RangeWarning, match="no reed given comes near"):
        reed("48 ends/cm", REED)
    with pytest.warns(hw.RangeWarning, match="warp_sett = .* is unusual"):
        cloth.plain_cloth(**{**PLAIN, "warp_sett": "1e-9 ends/cm"}, warp_crimp="8 %")
    stretched = {"width_shrinkage": "-5 %"}
    with pytest.warns(hw.RangeWarning, match="shrinkage in width"):
        cloth.process(name="scour", **stretched)
    with pytest.warns(hw.RangeWarning) as told:
        cloth.finishing(processes=[("scour", stretched), ("own", stretched)], width="1 m")
    assert len(told) == 1


def test_what_is_none_is_left_out_of_a_plain_cloth() -> None:
    known = {**PLAIN, "warp_crimp": "8 %"}
    assert str(cloth.plain_cloth(**known, weft_crimp=None)) == str(cloth.plain_cloth(**known))
