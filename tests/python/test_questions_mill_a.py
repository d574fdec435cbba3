"""What people ask about moisture, and the value that they should get.

The questions were met in print or on pages for practitioners, named at each; the answers were
worked out from the definitions.
"""

import hankwise as hw
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st


def close(expected, rel=1e-4):
    return pytest.approx(expected, rel=rel)


def test_q02_the_polyamide_of_a_sock_yarn():
    """A yarn maker's FAQ on ball weight (schachenmayr.com): 75 wool, 25 polyamide at 15.25 %."""
    polyamide = hw.fibre.regain_of_remainder(
        blend_regain="15.25 %", dry_share="25 %", others_regain="18.25 %"
    )
    assert polyamide.number("%") == close(6.25)
    # The European list has it.
    listed = hw.fibre.allowance("polyamide staple")
    assert listed.number("%") == close(6.25)
    combed = hw.fibre.allowance("wool combed")
    blend = hw.fibre.blend_regain(dry_shares=["75 %", "25 %"], regains=[combed, listed])
    assert blend.number("%") == close(15.25)
    dry = hw.fibre.oven_dry_mass(mass="100 g", regain=blend)
    assert dry.number("g") == close(86.7679, 1e-6)
    # 84.75 g is the regain taken for a content.
    with pytest.raises(hw.UnitError, match="regain was given for a moisture content"):
        hw.fibre.oven_dry_from_content(mass="100 g", moisture_content=blend)
    assert "m × (1 − R)" in hw.fibre.oven_dry_mass.slips[0]


def test_q03_polyester_and_cotton_at_4_percent_content():
    """GATE TF 2010 question 38 (textiletriangle.com): it divides by 1.04 and prints 99.10."""
    allowance = hw.fibre.blend_regain(dry_shares=["67 %", "33 %"], regains=["0.4 %", "8.5 %"])
    lot = hw.fibre.invoice(lot_mass="100 kg", moisture_content="4 %", allowances=[allowance])
    name = "invoices[1].invoice_mass"
    assert lot[name].number("kg") == pytest.approx(98.9501, abs=0.01)
    assert lot["regain"].number("%") == close(100 * 0.04 / 0.96, 1e-9)
    wrong = hw.fibre.invoice(lot_mass="100 kg", regain="4 %", allowances=[allowance])
    assert wrong[name].number("kg") == pytest.approx(99.10, abs=0.01)
    content = hw.fibre.moisture_content(regain="4.1667 %")
    with pytest.raises(hw.UnitError, match="moisture content was given for a regain"):
        hw.fibre.invoice(lot_mass="100 kg", regain=content, allowances=[allowance])
    with pytest.raises(hw.NotationError, match="omit all but one"):
        hw.fibre.invoice(
            lot_mass="100 kg", regain="4 %", moisture_content="4 %", allowances=[allowance]
        )


def test_q11_a_lot_in_dispute():
    """Course notes (softecks.in/368), a calculation blog of 2015, a yarn maker's note."""
    lot = hw.fibre.invoice(
        lot_mass="500 kg",
        sample_mass="250 g",
        dry_sample_mass="212.3 g",
        allowances=["16 %", "17 %", "18.25 %"],
    )
    assert lot["regain"].number("%") == close(17.7579, 1e-5)
    found = [invoice["invoice_mass"].number("kg") for invoice in lot["invoices"]]
    assert found == close([492.536, 496.782, 502.09], 1e-5)
    # Neither 500 × 1.17 nor 500 × 0.83; and what the agreement is about is said.
    assert "1.9 % of the least" in str(lot)
    with pytest.raises(hw.NotationError, match="agreed"):
        hw.fibre.invoice(lot_mass="500 kg", sample_mass="250 g", dry_sample_mass="212.3 g")
    by_list = hw.fibre.invoice(
        lot_mass="500 kg",
        sample_mass="250 g",
        dry_sample_mass="212.3 g",
        allowances=[hw.fibre.allowance("wool carded"), hw.fibre.allowance("wool combed")],
    )
    assert by_list["invoices"][0]["invoice_mass"].number("kg") == close(496.782, 1e-5)
    assert "212.3 g" in str(lot.working("invoices[2].invoice_mass"))


@given(st.floats(0.10, 0.90))
def test_the_curve_of_wool_is_numpys(humidity):
    """Straight between the points of the handbook's table."""
    points = [f for f in hw.handbook["wool_isotherm"] if f.of["branch"] == "absorption"]
    air = [float(f.of["humidity"].split()[0]) / 100 for f in points]
    regains = [f.low.number("fraction") for f in points]
    found = hw.fibre.equilibrium_regain(humidity=humidity)
    regain = found["damping_regain"].number("fraction")
    assert regain == close(np.interp(humidity, air, regains), 1e-9)
    assert "greasy" in str(found) or "suint" in str(found)


def test_an_allowance_from_memory_warns():
    """What was not read is said to be so."""
    with pytest.warns(hw.RangeWarning, match="memory"):
        assert hw.fibre.allowance("polyacrylate").number("%") == 30
    with pytest.raises(hw.NotationError, match=r"combed.*carded"):
        hw.fibre.allowance("wool")
