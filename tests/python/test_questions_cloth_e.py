"""What people ask about finishing and shrinkage, and the value that they should get.

The questions were met in print or on pages for practitioners, named at each; the answers were
worked out from the definitions. The wrong answer that is given there, or easily got, is told too.
"""

import hankwise as hw
import pytest

cloth = hw.cloth


def close(expected, rel=1e-4):
    return pytest.approx(expected, rel=rel)


def percent(quantity):
    return quantity.number("%")


def wash(width, length=None):
    """A process as a cloth went through it: inches before and after."""
    said = {}
    for name, pair in (("width", width), ("length", length)):
        if pair is not None:
            said[f"{name}_before"], said[f"{name}_after"] = ([f"{x} in"] for x in pair)
    return ("wash", said)


def alone(process):
    """A process asked for by itself."""
    return cloth.process(name=process[0], **process[1])


def test_f01_a_blanket_that_shrank_25_percent():
    """Fibernet mailing list, msg09153. Not 25 % once and for all; not 11 + 17 = 28 %."""
    draw_in = cloth.draw_in_from_widths(reed_width="54 in", off_loom_width="48 in")
    washed = wash((48, 40), (72, 52))
    assert percent(draw_in) == close(11.1111)
    assert [percent(alone(washed)[f"{name}_shrinkage"]) for name in ("width", "length")] == close(
        [16.6667, 27.7778]
    )
    relax = ("relax", {"width_shrinkage": f"{percent(draw_in)} %"})
    blanket = cloth.finishing(processes=[relax, washed], width="54 in", length="72 in")
    assert percent(blanket["width_shrinkage"]) == close(25.9259)
    assert percent(blanket["width_shrinkage"]) != close(11.1111 + 16.6667)
    only = cloth.finishing(processes=[washed], width="48 in", length="72 in")
    assert percent(only["area_shrinkage"]) == close(39.8148)
    assert only["mass_per_area_factor"].number("") == close(1.66154)


def test_f02_yardage_that_felts():
    """Felting wool: shrinkage, doodledogprimitives.com. An area is no allowance for a length."""
    felt = cloth.finishing(processes=[wash((62, 57), (36, 31))], width="62 in", length="36 in")
    found = [percent(felt[f"{name}_shrinkage"]) for name in ("area", "width", "length")]
    assert found == close([20.8333, 8.06452, 13.8889])
    assert felt["mass_per_area_factor"].number("") == close(1.26316)
    with pytest.raises(
        hw.UnitError, match="shrinkage in area was given for a shrinkage on the size"
    ):
        cloth.process(name="felt", length_shrinkage=felt["area_shrinkage"])


def test_f03_how_long_to_weave():
    """P. Osterkamp, Weaving tips: shrinkage. Adding the percentage is 8 in short at 30 %."""
    for target, shrinkage, right, wrong in [(3, 5, 3.15789, 3.15), (10, 15, 11.7647, 11.5),
                                            (60, 30, 85.7143, 78)]:  # fmt: skip
        size = cloth.size_before_shrinkage(size_after=f"{target} in", shrinkage=f"{shrinkage} %")
        assert size.number("in") == close(right)
        assert size.number("in") != close(wrong)
        loom = cloth.to_weave(
            processes=[("wash", {"length_shrinkage": f"{shrinkage} %"})], length=f"{target} in"
        )
        assert loom["loom.length"].number("in") == close(right)


def test_f04_a_slipper_sole():
    """Felted product size control, ilovefelt.com. Not 30 cm."""
    sole = cloth.size_before_shrinkage(size_after="25 cm", shrinkage="20 %")
    assert sole.number("cm") == close(31.25, 1e-12)


def test_f06_a_blanket_that_was_to_be_36_by_60():
    """Reading in bed blanket, ravelry.com. Not 36 × 1.222 = 44 in."""
    lost = wash((36, 28), (60, 49))
    done = cloth.finishing(processes=[lost], width="36 in", length="60 in", warp_sett="6 ends/in")
    assert [percent(alone(lost)[f"{name}_shrinkage"]) for name in ("width", "length")] == close(
        [22.2222, 18.3333]
    )
    assert done["finished.warp_sett"].number("ends/in") == close(7.71429)
    loom = cloth.to_weave(processes=[lost], width="36 in", length="60 in")
    sizes = [loom[f"loom.{name}"].number("in") for name in ("width", "length")]
    assert sizes == close([46.2857, 73.4694])
    assert sizes[0] != close(44, 0.01)


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_f07_a_shawl_in_a_hot_wash():
    """Tangible Daydreams, Wet finishing, 2009. Not the sum of the percentages, 81.5."""
    with pytest.warns(hw.RangeWarning, match=r"44\.85 %.*outside the usual"):
        shawl = cloth.finishing(
            processes=[wash((34, 18.75), (90, 57))], width="34 in", length="90 in"
        )
    found = [percent(shawl[f"{name}_shrinkage"]) for name in ("width", "length", "area")]
    assert found == close([44.8529, 36.6667, 65.0735])
    assert shawl["mass_per_area_factor"].number("") == close(2.86316)


def test_f08_stretch_on_the_loom_is_no_take_up():
    """The Rogue Weaver, Warp length, take-up and waste, 2025. 13.3 % is not take-up."""
    stretch = cloth.loom_stretch(
        warp_length="90 in", tied_length="7 in", woven_length="75 in", left_length="10 in"
    )
    relaxed = cloth.shrinkage_from_sizes(size_before="75 in", size_after="65 in")
    take_up = cloth.take_up_from_lengths(yarn_length="73 in", cloth_length="65 in")
    assert [percent(x) for x in (stretch, relaxed, take_up)] == close([2.22222, 13.3333, 10.9589])


def test_f12_a_loom_that_goes_no_wider():
    """Oh La La Laine, 2015. Not 60 × 1.1875 = 71 in."""
    full = ("full", {"width_before": ["64 in"], "width_after": ["52 in"]})
    assert percent(alone(full)["width_shrinkage"]) == close(18.75)
    with pytest.warns(hw.RangeWarning, match=r"73\.85 in .* 64 in at most.* finishes at 52 in"):
        loom = cloth.to_weave(processes=[full], width="60 in", loom_width="64 in")
    assert loom["loom.width"].number("in") == close(73.8462)
    assert loom["widest_finished_width"].number("in") == close(52)


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_f13_towels_in_stages():
    """School of Weaving forum, Takeup and shrinkage. Not 33.75 in; not 1.75/14 = 12 %."""
    stages = [
        ("relax", {"length_shrinkage": 1.25 / 14}),
        ("wash", {"length_shrinkage": 1.75 / 12.75}),
    ]
    towel = cloth.finishing(processes=stages, length="14 in")
    assert towel["relax.length"].number("in") == close(12.75)
    assert towel["finished.length"].number("in") == close(11)
    found = [percent(alone(stage)["length_shrinkage"]) for stage in stages]
    assert found == close([8.92857, 13.7255])
    warp = cloth.to_weave(processes=stages, length="28 in")
    assert warp["loom.length"].number("in") == close(35.6364)
    assert warp["relax.length"].number("in") == close(32.4545)
    short = cloth.finishing(processes=stages, length="33.75 in")["finished.length"]
    assert short.number("in") == close(26.5179)


@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_f15_a_shawl_that_was_blocked():
    """Confessions of a Fiber Enthusiast, 2008. The 113 in under tension are no start."""
    shawl = cloth.finishing(processes=[wash((11, 10.5), (79, 74))], width="11 in", length="79 in")
    found = [percent(shawl[f"{name}_shrinkage"]) for name in ("width", "length", "area")]
    assert found == close([4.54545, 6.32911, 10.5869])
