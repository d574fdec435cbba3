"""What people ask about cover and about measured cloths, and the value that they should get.

The questions were met in print or on pages for practitioners, named at each; the answers were
worked out from the definitions.
"""

import hankwise as hw
import pytest

cloth = hw.cloth


def close(expected, rel=1e-4):
    return pytest.approx(expected, rel=rel)


def test_s04_two_10_2_cover_more_than_one_5_2():
    """Doubled 10/2 cotton warp does not equal single 5/2 warp (keithweaves.com)."""
    one, two = hw.yarn.parse("5/2 Ne").resultant, hw.yarn.parse("10/2 Ne").resultant
    assert 2 * two.number("tex") / one.number("tex") == close(1)
    before = cloth.cover_factor("10 ends/in", one)
    after = cloth.cover_factor("20 ends/in", two)
    assert after.number("K_Ne") / before.number("K_Ne") == close(1.41421)


def test_s13_the_root_that_a_table_dropped():
    """Useful Conversion Factors (business.vsnl.com/balasubramanian): threads/cm × tex × 0.1."""
    factor = cloth.cover_factor(sett="12 ends/cm", count="100 tex")
    assert factor.number("K_SI") == close(12, 1e-12)
    assert "misprint" in " ".join(hw.formulas["cover_factor"].slips)


def test_s14_the_same_cover_in_three_yarns():
    """Woven Fabric Calculation (student notes, scribd.com/document/455076497)."""
    setts = cloth.sett_for_cover_factor(cover_factor="12 K_SI", count=hw.q([25, 100, 400], "tex"))
    assert setts.number("threads/cm") == close([24, 12, 6])
    masses = cloth.mass_per_area(setts, hw.q([25, 100, 400], "tex"), "0 %",
                                 setts, hw.q([25, 100, 400], "tex"), "0 %")  # fmt: skip
    assert masses.number("g/m²") == close([120, 240, 480])


def test_s14_a_cover_factor_says_its_form():
    """The same notes have both forms on one page."""
    with pytest.raises(hw.UnitError, match="K_SI"):
        cloth.sett_for_cover_factor(cover_factor=12, count="25 tex")
    other = cloth.sett_for_cover_factor(cover_factor="12 K_Ne", count="25 tex")
    assert other.number("threads/cm") == close(24 / 1.0452, 1e-4)


def test_s16_two_halves_leave_a_quarter_open():
    """Cover factor of fibre, yarn and fabric (fibres2fabrics.blogspot.com, 2013)."""
    assert cloth.total_cover(warp_cover="50 %", weft_cover="50 %").number("fraction") == 0.75


def test_v01_filaments_tell_which_row_is_wrong():
    """Surgical gowns, table 5.6 (doi 10.1016/B978-1-78242-379-9.00005-0)."""
    printed = {
        "P4": [(0.85, 112, 9.5), (0.85, 102, 8.5)],
        "P5": [(2.6, 48, 13.0), (1.25, 198, 25.0)],
        "P6": [(0.6, 206, 9.5), (1.35, 69, 12.5)],
    }
    yarn = {
        row: [(n * hw.q(dtex, "dtex")).number("tex") for dtex, n, _ in both]
        for row, both in printed.items()
    }
    assert yarn["P4"] == close([9.52, 8.67], 1e-3)
    assert yarn["P5"] == close([12.48, 24.75], 1e-3)
    assert yarn["P6"] == close([12.36, 9.315], 1e-3)
    off = {
        row: any(
            abs(found / tex - 1) > 0.05 for found, (*_, tex) in zip(yarn[row], both, strict=True)
        )
        for row, both in printed.items()
    }
    assert [row for row, wrong in off.items() if wrong] == ["P6"]
    # Warp and weft exchanged it agrees.
    assert yarn["P6"][::-1] == close([9.5, 12.5], 0.05)


def test_v02_a_gown_cloth_by_threads_in_ten_centimetres():
    """The same table: 456 × 370 threads in 10 cm, 0.55 g/cm³."""
    area = cloth.mass_per_area(
        "456 ends/10 cm", "9.5 tex", "0 %", "370 picks/10 cm", "8.5 tex", "0 %"
    )
    assert area.number("g/m²") == close(74.77, 1e-3)
    bulk = hw.q(1 / 0.55, "cm³/g")
    (thickness,) = cloth.cloth_specific_volume.solve(
        "thickness", cloth_specific_volume=bulk, mass_per_area=area
    )
    assert thickness.number("mm") == close(0.135945, 1e-3)
    with pytest.raises(hw.UnitError, match="456"):
        cloth.mass_per_area(456, "9.5 tex", "0 %", 370, "8.5 tex", "0 %")


def test_v03_uniform_cloths_by_the_running_yard():
    """MIL-DTL-3738L, table I: ounces of a running yard on 56 in."""
    types = [(19, 128, 98), (18, 124, 80), (16, 138, 96), (19, 128, 98)]
    expected = [414.134, 392.338, 348.745, 414.134]
    setts = [(50.3937, 38.5827), (48.8189, 31.4961), (54.3307, 37.7953), (50.3937, 38.5827)]
    for (ounces, ends, picks), area, (per_cm, picks_cm) in zip(types, expected, setts, strict=True):
        found = cloth.mass_per_area_of_cloth(f"{ounces} oz/yd", "56 in")
        assert found.number("g/m²") == close(area, 1e-3)
        assert hw.convert(ends, "ends/in", "ends/cm") == close(per_cm)
        assert hw.convert(picks, "picks/in", "picks/cm") == close(picks_cm)
    # The ounces alone are not a mass of area: the width is asked for.
    with pytest.raises(hw.UnitError, match="oz"):
        cloth.mass_of_piece(mass_per_area="19 oz/yd", cloth_width="56 in", cloth_length="1 yd")
