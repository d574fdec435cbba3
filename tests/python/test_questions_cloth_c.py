"""What people ask about setts and reeds, and the value that they should get.

The questions were met in print or on pages for practitioners, named at each; the answers were
worked out from the definitions.
"""

import hankwise as hw
import pytest

cloth = hw.cloth


def close(expected, rel=1e-3):
    return pytest.approx(expected, rel=rel)


def per_inch(sett):
    return sett.number("threads/in")


def maximum(factor, count, repeat, intersections=2):
    diameters = cloth.diameters_side_by_side(factor, count)
    return cloth.maximum_sett(diameters, repeat, intersections)


def test_s01_8_2_cotton_by_ashenhurst():
    """The Ashenhurst page (faena.medievaltextiles.org, 1999) prints 34 for twill: it cut 52.17."""
    diameters = cloth.diameters_side_by_side(0.9, "3360 yd/lb")
    assert per_inch(diameters) == close(52.169)
    assert [per_inch(maximum(0.9, "3360 yd/lb", n)) for n in (2, 4)] == close([26.0845, 34.7793])


def test_s02_the_metric_constants():
    """Avoid The Wrap (schoolofsweetgeorgia.com): 255 has lost its point, 0.255 is 1 % high."""
    # A metre in a gram is a thousand in a kilogram.
    metric = [
        cloth.diameters_side_by_side(k, "1 Nm").number("threads/cm") / 1000**0.5
        for k in (0.85, 0.90, 0.91)
    ]
    assert metric == close([0.235695, 0.249559, 0.252332])
    rule_of_thumb = 0.255
    assert rule_of_thumb != close(metric[2], 0.01)


def test_s05_half_of_the_wraps_and_ashenhursts_maximum():
    """P. Osterkamp, weaving tip of January 2004: one is a sett to weave, the other the ceiling."""
    assert per_inch(cloth.sett_from_wraps("10 wraps/in", 0.5)) == pytest.approx(5)
    closest = cloth.maximum_sett_from_wraps("10 wraps/in", 0.7, 2, 2)
    assert per_inch(closest) == pytest.approx(7.14286, abs=0.05)
    assert "a sett to weave" in " ".join(cloth.maximum_sett_from_wraps.slips)


def test_s06_28_wraps_are_no_count():
    """Grist experiment (vonstrohm.blogspot.com) and the Ashenhurst page: 60 % apart."""
    by_rule = hw.yarn.count_from_wraps(0.884**-0.5, "28 wraps/in").number("yd/lb")
    by_diameters = hw.yarn.count_from_wraps(0.84, "28 wraps/in").number("yd/lb")
    found = [by_rule, by_diameters, by_diameters / by_rule]
    assert found == close([693.056, 1111.11, 1.60321])
    assert "estimate, no conversion" in " ".join(hw.yarn.count_from_wraps.limits)


def test_s07_20_ends_in_an_eight_dent_reed():
    """Ask Madelyn, 8/2 cotton in an 8-dent reed (interweave.com)."""
    asked = {"wanted_reed_sett": "20 ends/in", "reeds": ["8 dents/in"]}
    choice = cloth.choose_reed(**asked)
    assert [choice[f"order[{k}]"].number("") for k in (1, 2)] == [3, 2]
    assert per_inch(choice["reed_sett"]) == pytest.approx(20)
    with pytest.raises(hw.RangeError, match=r"2\.5 ends in a dent cannot be drawn.*\[2, 3\]"):
        cloth.choose_reed(**asked, ends_per_dent=2.5)
    even = cloth.choose_reed(**asked, period=1)
    two = even["order[1]"], even["others[1].order[1]"]
    assert [ends.number("") for ends in two] == [2, 3]
    off = even["sett_off"], even["others[1].sett_off"]
    assert [share.number("%") for share in off] == pytest.approx([-20, 20])


def test_s08_a_60_stockport_three_in_a_dent():
    """J. T. Taylor, Cotton Weaving and Designing, 6th ed., p. 243; C. P. Brooks 1892, p. 92."""
    assert hw.convert(60, "stockport-reed", "dents/in") == pytest.approx(30, rel=1e-12)
    assert per_inch(cloth.sett_in_reed("60 stockport-reed", 3)) == pytest.approx(90, rel=1e-12)


def test_s09_a_72_bradford():
    """Textile Calculation (2015) calls its 40 dents ends; Taylor, p. 244."""
    assert hw.convert(72, "bradford-reed", "dents/in") == pytest.approx(40, rel=1e-12)
    ends = [per_inch(cloth.sett_in_reed("72 bradford-reed", n)) for n in (3, 2)]
    assert ends == pytest.approx([120, 80], rel=1e-12)


def test_s10_36_bolton_over_39_inches():
    """C. P. Brooks 1892, p. 96, prints 2238; his own rule gives 2316; a blog has 24.5 in."""
    ends = cloth.ends_in_width(cloth.sett_in_reed("36 bolton-reed", 2), "39 in")
    assert ends.number("") == pytest.approx(2315.88, abs=1)
    taught = f"{36 * 20 / 24.5} dents/in"
    assert 2 * cloth.dents_in_width(taught, "39 in").number("") == pytest.approx(2292.24, abs=1)
    assert "24.5" in repr(hw.handbook["reed_systems"].find("Bolton"))


def test_s15_twills_to_plain():
    """Calculating weft (comfortclothweaving.com): one value, 20 to 30 %, for all twills."""
    weaves = {"2/1": (3, 2), "2/2": (4, 2), "3/1": (4, 2), "satin": (5, 2)}
    ratios = [cloth.sett_for_weave("10 ends/in", 2, 2, *weave) for weave in weaves.values()]
    expected = [1.2, 1.33333, 1.33333, 1.42857]
    assert [per_inch(n) / 10 for n in ratios] == close(expected)


def test_s17_a_shetland_single_at_25_ends():
    """Shetland experiment (ravelry.com): three quarters of the wraps, 57 % of the maximum."""
    wraps = 25 / 0.75
    assert wraps == close(33.3333)
    closest = maximum(0.84, "6135 yd/lb", 4)
    assert per_inch(closest) == close(43.8627)
    share = cloth.share_of_maximum("25 ends/in", closest).number("")
    assert 100 * share == close(56.996, 2e-3)
    found = cloth.setts(
        weave="2/2 twill", warp_count="6135 yd/lb", yarn_factor=0.84, wanted_warp_sett="25 ends/in"
    )
    assert found["ashenhurst.warp_sett_share"].number("") == close(share, 1e-9)
