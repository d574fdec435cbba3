"""What people ask about weaves, and the value that they should get.

The questions were met in print or on pages for practitioners, named at each; the answers were
worked out from the definitions.
"""

import hankwise as hw
import pytest


def test_s15_no_one_value_for_all_twills():
    """Calculating weft (comfortclothweaving.com): raise the sett 20 to 30 % for twill."""
    plain = hw.cloth.weave("plain").ashenhurst_ratio["warp"]
    names = ["2/1 twill", "2/2 twill", "3/1 twill", "5-end satin"]
    ratios = [hw.cloth.weave(name).ashenhurst_ratio["warp"] / plain for name in names]
    assert ratios == pytest.approx([1.2, 1.33333, 1.33333, 1.42857], rel=1e-3)


def test_ends_and_picks_of_a_herringbone_are_not_set_alike():
    """The clean-cut draft 1-2-3-4-2-1-4-3, its floats counted on paper."""
    herringbone = hw.cloth.weave("2/2 herringbone")
    assert herringbone.average_float == {"warp": 2, "weft": 1.6}
    # The picks interlace more, so that the ends are set more open than in the twill.
    twill = hw.cloth.weave("2/2 twill")
    assert herringbone.ashenhurst_ratio["warp"] < twill.ashenhurst_ratio["warp"]
    assert herringbone.ashenhurst_ratio["weft"] == twill.ashenhurst_ratio["weft"]


def test_a_satin_of_four_or_six_ends_is_none():
    """Wolfensberger, Theory of Silk Weaving, p. 33."""
    assert hw.cloth.weave("4-end satin").name == "3/1 broken twill"
    with pytest.raises(hw.RangeError, match="5/1 broken twill"):
        hw.cloth.weave("6-end satin")
