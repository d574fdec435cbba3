"""What people ask about a yarn, and the value that they should get, each in a line or two.

The questions were met in print or on pages for practitioners, named at each; the answers were
worked out from the definitions.
"""

import hankwise as hw
import numpy as np
import pytest


def close(expected, rel=1e-4):
    return pytest.approx(expected, rel=rel)


def test_n01_worsted_marked_2_24s():
    """Those Pesky Numbers (weaving teacher's article, schoolofsweetgeorgia.com)."""
    yarn = hw.yarn.parse("2/24s worsted")
    found = [yarn.number(unit) for unit in ("worsted", "yd/lb", "tex")]
    assert found == close([12, 6720, 73.8177])


def test_n04_8_2_and_2_8_cotton_are_one_yarn():
    """A Good Yarn (weaver-teacher's pages, laurasloom.blogspot.com)."""
    eight_two, two_eight = (hw.yarn.parse(f"{text} Ne") for text in ("8/2", "2/8"))
    assert eight_two == two_eight
    assert eight_two.number("yd/lb") == close(3360)


def test_n06_28_metric_is_not_24_worsted():
    """Supplier's note on 2/24 and 2/28 (knotwidth.com, 2023)."""
    assert hw.convert(28, "Nm", "worsted") == close(24.8027)
    heavier = hw.convert(24, "worsted", "tex") / hw.convert(28, "Nm", "tex") - 1
    assert 100 * heavier == close(3.34472)


def test_n08_2_22_5_cut_is_refused_until_the_district_is_said():
    """A Cut Above the Rest (olivershetlandwoolblog.home.blog, 2020)."""
    with pytest.raises(hw.NotationError, match=r"galashiels-cut.*american-cut"):
        hw.yarn.parse("2/22.5 cut")
    yarn = hw.yarn.parse("2/22.5 galashiels-cut")
    assert [yarn.number("yd/lb"), yarn.number("tex")] == close([2250, 220.469])


def test_n09_yorkshire_is_256_yards_a_pound():
    """Clarifying different yarns count system (textilecalculation.blogspot.com, 2015)."""
    sixteen = hw.q("16 YSW")
    assert [sixteen.number("yd/lb"), sixteen.number("tex")] == close([4096, 121.107])


def test_n10_a_four_run_yarn_for_five_districts():
    """Woolen yarn count (bellaonline.com, after M. Ross)."""
    systems = ["yd/lb", "american-cut", "YSW", "west-of-england", "galashiels-cut", "worsted",
               "Ne", "tex", "Nm"]  # fmt: skip
    expected = [6400, 21.3333, 25, 20, 32, 11.4286, 7.61905, 77.5085, 12.9018]
    assert [hw.convert(4, "run", to) for to in systems] == close(expected)


def test_n12_16_2_metric_is_62_5_tex_twofold():
    """Note on metric number and tex (ncyouthjamboree.org): it has the rounded 64."""
    yarn = hw.yarn.parse("16/2", system="Nm")
    assert yarn.ends[0].number("tex") == 62.5
    assert yarn.number("tex") == 125


def test_n16_old_silk_denier():
    """J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909."""
    old, modern = (hw.convert(40, d, "yd/oz") for d in ("artificial-silk-denier", "den"))
    assert [old, modern, modern / old] == close([6933.33, 6975.77, 1.00612])


def test_n17_silk_by_the_manchester_scale():
    """J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909."""
    assert hw.convert(4, "dr/1000yd", "yd/oz") == close(4000)
    assert hw.convert(4, "dr/1000yd", "tex") == close(7.75085)


def test_n19_twenties_cotton_for_a_worsted_and_a_linen_buyer():
    """C. P. Brooks, Cotton Manufacturing, 3rd ed. 1892."""
    assert [hw.convert(20, "Ne", to) for to in ("worsted", "linen-lea")] == close([30, 56], 1e-12)


def test_n20_forty_denier_in_si():
    """QUDT units vocabulary: the old factor 1.1e-7 is 1 % low."""
    kg_per_m = hw.convert(40, "den", "tex") * 1e-6
    assert kg_per_m == close(4.44444e-6, 1e-5)
    assert 100 * (40 * 1.1e-7 / kg_per_m - 1) == close(-1.0, 1e-5)


def test_n21_rkm():
    """pint pull request 921 (2019)."""
    assert hw.convert(1, "RKM", "cN/tex") == close(0.980665, 1e-6)


def test_n22_nm_is_the_metric_count_and_no_torque():
    """pint issues 817 and 1966, pull request 2369."""
    twenty = hw.q("20 Nm")
    assert twenty.kind == "linear density (count)"
    assert twenty.number("tex") == 50
    with pytest.raises(hw.UnitError, match="'Nm' is a unit of linear density"):
        hw.yarn.tenacity(breaking_force="20 Nm", count="20 tex")


def test_n23_counts_are_not_added():
    """pint pull request 737 (2018); C. P. Brooks, Cotton Manufacturing, 3rd ed. 1892."""
    ten, twenty = hw.q("10 Ne"), hw.q("20 Ne")
    with pytest.raises(hw.UnitError, match="fold"):
        ten + twenty
    laid = hw.yarn.fold(contraction=0, counts=[ten, twenty])
    assert [laid.number("Ne"), laid.number("tex")] == close([6.66667, 88.5812])


def test_n24_2_24_is_no_division():
    """pint's default units, run on 0.25.3."""
    with pytest.raises(hw.NotationError, match=r"hankwise.yarn.parse"):
        hw.q("2/24 Ne")
    assert hw.yarn.parse("2/24 Ne").number("Ne") == close(12, 1e-12)


def test_n25_picks_an_inch():
    """pint's default units: ppi is pixels there."""
    assert hw.convert(68, "ppi", "picks/cm") == close(26.7717, 1e-5)


def test_n26_kilograms_force():
    """Balasubramanian, Useful Conversion Factors: prints kgf = 9.81 × newton."""
    assert hw.convert(500, "cN", "kgf") == close(0.509858, 1e-5)


def test_n27_rovings_by_their_trade_names():
    """Units of textile measurement (wikimili.com): 250 for 2000 tex is rounded."""
    assert hw.convert(np.array([2000.0, 2400.0]), "tex", "yd/lb") == close([248.027, 206.689])


def test_n28_handspun_against_the_pattern():
    """Spinning and weaving project, part one (girlsownstore.co.uk)."""
    wanted, found = (hw.convert(m, "m/100g", "tex") for m in (400, 350))
    assert [wanted, found, 100 * (found / wanted - 1)] == close([250, 285.714, 14.2857])


def test_n30_a_yarn_balance_in_inches():
    """What spinning teaches me about knitting, part 3 (rosieblogs.blogspot.com, 2006)."""
    balancing, ball = hw.q("1450 yd/lb"), hw.q("1.25 oz")
    assert hw.yarn.length_of_mass(ball, balancing).number("yd") == close(113.281, 1e-3)
    assert balancing.number("tex") == close(342.107, 1e-3)
    # What the balance holds: 14.5 in of the yarn.
    assert hw.yarn.mass_of_length(balancing, "14.5 in").number("g") == close(0.125998, 1e-3)


def test_t01_threefold_of_20s_15s_12s():
    """Examination answer that says 10s (cdquestions.com, 2025)."""
    fold = hw.yarn.fold(contraction=0, counts=["20 Ne", "15 Ne", "12 Ne"])
    assert fold.number("Ne") == close(5, 1e-12)
    assert hw.yarn.parse("(20 Ne + 15 Ne + 12 Ne)").number("Ne") == close(5, 1e-12)


def test_t02_a_40s_and_a_20s_doubled():
    """C. P. Brooks, Cotton Manufacturing, 3rd ed. 1892."""
    assert hw.yarn.parse("(40 Ne + 20 Ne)").number("Ne") == close(13.3333)


def test_t05_single_for_a_true_40s():
    """C. P. Brooks, Cotton Manufacturing, 3rd ed. 1892 (contraction chosen)."""
    assert hw.yarn.parse("2/80 Ne").folded("4 %").number("Ne") == close(38.4)
    single = hw.yarn.single_for_fold(resultant_count="40 Ne", ends=2, contraction="4 %")
    assert single.number("Ne") == close(83.3333)


def test_t06_ten_per_cent_of_which_length():
    """GATE TF 1992, question 3 (textilecoach.net)."""
    untwisted = hw.yarn.single_for_fold("16 Ne", ends=2, contraction="10 %")
    twisted = hw.yarn.single_on_twisted("16 Ne", 2, "10 %")
    assert [untwisted.number("Ne"), twisted.number("Ne")] == close([35.5556, 35.2])


def test_t07_untwisted_yarn_for_five_tonnes():
    """GATE TF 2014, question 37 (textiletriangle.com): 1.06 untwisted over twisted."""
    twisted = hw.yarn.length_of_mass("5 t", "50 tex")
    assert twisted.number("km") * 1.06 == close(106_000, 1e-12)


def test_t09_the_rule_for_contraction_and_its_limit():
    """TPI/TPM formula sheet (docx.com.vn)."""
    c = hw.yarn.contraction_of_cotton_single("4 tpi/√Ne")
    assert c.number("%") == close(5.75, 1e-3)
    assert hw.yarn.single_for_fold("20 Ne", ends=1, contraction=c).number("Ne") == close(
        21.2202, 1e-3
    )
    with pytest.raises(hw.RangeError, match=r"twist_factor at least 17\.67"):
        hw.yarn.contraction_of_cotton_single("1.5 tpi/√Ne")


def test_t10_bumps_are_not_turns():
    """Twists per inch (encyclopaedia copy, reference.com)."""
    turns = hw.yarn.folding_twist_from_bumps(bumps=6, gauge_length="1 in", ends=2)
    assert [turns.number("tpi"), turns.number("turns/m")] == close([3, 118.11])


def test_t11_a_multiplier_in_si():
    """Balasubramanian, Useful Conversion Factors."""
    found = hw.convert(3.5, "tpi/√Ne", "turns/cm √tex")
    assert [found, 100 * found] == close([33.4857, 3348.57], 1e-3)


def test_t12_a_multiplier_has_its_count_system():
    """Glossary of a weavers' company (mjcsr.com), twist."""
    found = [
        hw.yarn.twist_for_factor(f"4 tpi/√{system}", "29.527 tex").number("tpi")
        for system in ("Ne", "worsted")
    ]
    assert found == close([17.8886, 21.9089], 1e-3)


def test_t14_singles_for_nine_thousand_yards_of_two_ply():
    """And I told my teachers I didn't need math (thewefthandedweaver.com, 2010)."""
    spun = hw.yarn.singles_length("9000 yd", ends=2, contraction="5 %")
    assert spun.number("yd") == close(18947.4, 1e-3)
    assert hw.yarn.singles_length("9000 yd", 2, 0).number("yd") / 1760 == close(10.2273, 1e-3)


def test_t16_ply_twist_is_a_range_with_its_rules():
    """Twists per inch (encyclopaedia copy, reference.com); two thirds from memory."""
    for ratio, tpi in [("0.5", 4.5), (2 / 3, 6.0)]:
        roots = hw.yarn.folding_twist_ratio.solve(
            "folding_twist", folding_twist_ratio=ratio, single_twist="9 tpi"
        )
        assert [root.number("tpi") for root in roots] == close([tpi])


def test_s05_s06_wraps_are_an_estimate():
    """Grist experiment (vonstrohm.blogspot.com); Ashenhurst page (faena.medievaltextiles.org)."""
    with pytest.raises(hw.HankwiseError):
        hw.convert(28, "wraps/in", "yd/lb")
    band = hw.yarn.wraps(count="24 Nm")
    assert band["low"] < band["touching"] < band["high"]
    # The manual's rule and the woollen factor, on the same 28 wraps: 60 % apart.
    found = [hw.yarn.count_from_wraps(k, "28 wraps/in") for k in (0.884**-0.5, 0.84)]
    assert [count.number("yd/lb") for count in found] == close([693.056, 1111.11])


def test_m21_what_is_on_the_cone():
    """Why did I run out of yarn? (interweave.com): a cone of 1.5 oz, a board of 38 in."""
    on_cone = hw.yarn.length_on_package("15 oz", "1.5 oz", "2000 yd/lb").number("yd")
    drawn = hw.yarn.reeled_length(reel_turns=1500, reel_circumference="38 in", cuts=1).number("yd")
    assert [on_cone, drawn, on_cone - drawn] == close([1687.5, 1583.33, 104.167], 1e-3)


def test_q01_a_ball_in_a_heated_room():
    """Yarn maker's note on ball weight and moisture (langyarns.com)."""
    at = [hw.fibre.mass_at_regain("50 g", "18.25 %", regain) for regain in ("14 %", "9 %")]
    assert [mass.number("g") for mass in at] == close([48.203, 46.0888], 1e-3)
    content = hw.fibre.regain_from_content("14 %")
    assert hw.fibre.mass_at_regain("50 g", "18.25 %", content).number("g") == close(49.1666, 1e-3)


def test_q08_short_of_yarn_or_short_of_water():
    """6g short of a ball (tailfeathers20072008.blogspot.com, 2008): 94 g of 100 g and 425 m."""
    count = hw.yarn.count_of("425 m", "100 g")
    assert hw.yarn.length_of_mass("94 g", count).number("m") == close(399.5, 1e-3)
    assert hw.fibre.mass_at_regain("100 g", "16 %", "9 %").number("g") == close(93.9655, 1e-3)
    # A count found in today's dry air, for a label at 16 %: the whole length.
    dry = hw.yarn.count_of("425 m", "93.9655 g")
    assert hw.yarn.ball_length("100 g", dry, "9 %", "16 %").number("m") == close(425, 1e-5)


def test_q10_twenty_grains_for_a_lea():
    """J. T. Taylor, Cotton Weaving and Designing, 6th ed. 1909; a formula sheet prints 64.81."""
    assert hw.yarn.count_of("120 yd", "20 gr").number("Ne") == close(50, 1e-12)
    assert hw.yarn.mass_of_length("1 Ne", "120 yd").number("g") == close(64.7989)
