"""What is printed reads as one from the trade expects: units as given, no word that misleads."""

import warnings

import hankwise as hw
import pytest

# Means of the count that creep up, with a mixed-up bobbin at the eighteenth.
SKEINS = [4.95, 5.02, 5.08, 4.99, 5.05, 5.01, 5.04, 5.10, 5.06, 5.12]
SKEINS += [5.09, 5.15, 5.11, 5.18, 5.14, 5.20, 5.17, 5.62, 5.22, 5.25]


def one_line(shown):
    return " ".join(str(shown).split())


def test_a_run_from_the_first_point_changed_at_its_end():
    said = one_line(hw.quality.chart(SKEINS))
    assert "points 1 to 11 all lie below" in said
    assert "look for what changed after point 11" in said
    assert "at about point 1:" not in said


def test_one_reading_that_stands_apart_is_one_outlier_of_moving_ranges():
    steady = [5.0, 5.1] * 12
    steady[17] = 9.0
    chart = hw.quality.chart(steady, kind="moving range")
    assert [f["what"] for f in chart.findings if f["last"] in (16, 17)] == ["outlier"]
    assert "reading 18, 9, is in both" in one_line(chart)


def test_a_level_that_jumps_is_one_moving_range():
    jump = [5.0, 5.1] * 6 + [9.0, 9.1] * 6
    said = one_line(hw.quality.chart(jump, kind="moving range"))
    assert "between readings 12 and 13 something has changed" in said


def test_moving_ranges_cry_wolf_more_often_than_points_apart():
    np = pytest.importorskip("numpy")
    told = hw.quality.chart(SKEINS, kind="moving range")
    c = hw.quality.chart_constants(2)
    rng = np.random.default_rng(7)
    waits = []
    for _ in range(1500):
        ranges = np.abs(np.diff(rng.standard_normal(1200)))
        above = ranges > c["d2"]
        run = 0
        for k, moving in enumerate(ranges):
            run = run + 1 if k and above[k] == above[k - 1] else 1
            if moving > c["D4"] * c["d2"] or run == 8:
                waits.append(k + 1)
                break
    # 54 on the average: the value for points apart, 67, is a bound.
    assert np.mean(waits) < 60 < told.points_to_false_alarm < 70
    assert "more often than once in 67 points" in one_line(told)


def test_a_skein_that_stands_apart_is_told():
    masses = [f"{m} g" for m in SKEINS]
    count = hw.quality.skein_count(masses=masses, skein_length="33 m", option="oven-dry")
    # 33 m in 5.62 g: 36.089 yd of 256 to a skein, 5.62/453.59 lb.
    skeins = 33 / 0.9144 / 256 / (5.62 / 453.59237)
    assert count["counts[18]"].number("YSW") == pytest.approx(skeins, rel=1e-6)
    assert f"Skein 18 is an outlier ({count['counts[18]']}" in one_line(count)


def test_an_invoice_counts_fat_once():
    lot = hw.fibre.invoice(
        lot_mass="32.6 kg",
        sample_mass="250 g",
        dry_sample_mass="211 g",
        allowances=["17 %"],
        fat_allowance="0.8 %",
    )
    invoiced = lot["invoices"][0]["invoice_mass"].number("kg")
    assert invoiced == pytest.approx(32.6 * 211 / 250 * 1.178)
    said = one_line(lot)
    assert "0.8 % for fat, oil and dressing" in said
    # What a sample loses in cleaning is not regain.
    assert "regain found" not in said
    assert "regain" not in lot
    lot = {"lot_mass": "10 kg", "regain": "17 %", "allowances": ["17 %"]}
    with pytest.raises(hw.RangeError, match="sample was cleaned"):
        hw.fibre.invoice(**lot, fat_allowance="0.8 %")
    assert hw.fibre.invoice(**lot, fat_allowance="0 %")


def test_a_liquor_by_the_gallon_is_measured_in_gallons_and_fahrenheit():
    with pytest.warns(hw.RangeWarning, match="150 °F is more than the 60 °C"):
        lot = hw.mill.scour_liquor(
            mass="20 lb",
            liquor_ratio=20,
            soap_concentration="0.15 lb/imp gal",
            temperature="150 °F",
        )
    said = one_line(lot)
    assert "temperature of the liquor, as given 150 °F" in said
    # 20 lb × 20 L/kg, in gallons of 4.54609 L.
    gallons = 20 * 0.45359237 * 20 / 4.54609
    assert f"liquor {gallons:.2f} imp gal" in said
    metric = one_line(
        hw.mill.scour_liquor(mass="20 kg", liquor_ratio=30, soap_concentration="10 g/L")
    )
    assert "liquor 600 L" in metric
    assert "gal" not in metric


def test_a_weighed_blend_says_weighed_and_its_mass_at_a_regain():
    weighed = {
        "white": {"mass": "40 lb", "regain": "14 %"},
        "grey": {"mass": "10 lb", "regain": "17 %"},
    }
    heap = hw.mill.blend(components=weighed, stated_regain="16 %")
    dry = 40 / 1.14 + 10 / 1.17
    assert heap["stated_mass"].number("lb") == pytest.approx(dry * 1.16)
    said = one_line(heap)
    assert f"All together 50 lb as weighed, {dry:.2f} lb of clean dry fibre" in said
    with pytest.raises(hw.RangeError, match="without stated_regain"):
        hw.mill.blend(components=weighed, stated_fat="1 %")


def test_the_tape_of_a_condenser_is_told_in_millimetres():
    card = hw.mill.card(
        fibre_mass="30 kg",
        slubbing_count="200 tex",
        ends=92,
        edge_ends=4,
        delivery_speed="17 m/min",
        web_width="1.5 m",
    )
    # 1.5 m over 96 ends.
    assert "15.62 mm" in one_line(card)


@pytest.mark.parametrize(
    ("name", "given"),
    [
        ("smallest_lot", {"held_up": "0.6 kg", "loss": "6 %", "allowed_loss": "8 %"}),
        ("efficiency_from_output", {"made_amount": 5000, "calculated_amount": 6000}),
        ("component_share", {"carrying_ends": [2, 1], "fed_ends": [8, 6]}),
        (
            "twist_from_travellers",
            {
                "speed_at_large": "4930 rpm",
                "large_diameter": "70 mm",
                "speed_at_small": "4850 rpm",
                "small_diameter": "35 mm",
            },
        ),
        (
            "spindle_speed_from_travellers",
            {
                "speed_at_large": "4930 rpm",
                "large_diameter": "70 mm",
                "speed_at_small": "4850 rpm",
                "small_diameter": "35 mm",
            },
        ),
    ],
)
def test_what_a_mill_does_every_day_is_not_called_unusual(name, given):
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        hw.formulas[name](**given)


def test_the_indices_of_capability_carry_their_symbols():
    said = one_line(hw.quality.capability(SKEINS, 4.8, 5.4))
    assert "C_p, P_p: in the middle" in said
    assert "C_pk, P_pk: as it stands" in said


def test_a_hank_may_be_asked_for_by_its_length():
    reel = hw.mill.reel(
        reel_circumference="1.5 m",
        positions=20,
        reel_speed="110 rpm",
        change_time="6 min",
        count="310 tex",
        wanted_hank_length="330 m",
        shrinkage="5 %",
        yarn_mass="17 kg",
    )
    # 330/0.95/1.5 = 231.6 turns, so 232: 348 m of 310 tex are 107.88 g, 157 of them in 17 kg.
    assert reel["reel_turns"].number("") == 232
    assert reel["hank_mass"].number("g") == pytest.approx(107.88)
    assert reel["hanks"].number("") == 157
    with pytest.raises(hw.NotationError, match="shrinkage"):
        hw.mill.reel(
            reel_circumference="1.5 m",
            positions=20,
            reel_speed="110 rpm",
            change_time="6 min",
            count="310 tex",
            reel_turns=232,
            shrinkage="5 %",
        )


def test_an_inch_mill_reads_inches_pounds_and_ounces_for_a_square_yard():
    mule = one_line(
        hw.mill.mule(
            spindles=120,
            travel="72 in",
            cycle="22.5 s",
            count="12 YSW",
            efficiency="85 %",
            wanted_draft=1.4,
        )
    )
    assert "yarn wound in a draw 72 in" in mule
    # 72/1.4
    assert "slubbing delivered in a draw 51.43 in" in mule
    card = hw.mill.card(
        fibre_mass="65 lb",
        slubbing_count="8 YSW",
        ends=92,
        edge_ends=4,
        delivery_speed="18 yd/min",
        web_width="60 in",
    )
    # 96 ends of 1/2048 lb for a yard, side by side over 60 in, in ounces for a square yard.
    ounces = 96 / (8 * 256) * 16 / (60 / 36)
    assert f"mass per area of the web, as it leaves the card {ounces:.4g} oz/yd²" in one_line(card)
    # 92 ends × 18 yd/min, in pounds.
    assert f"{92 * 18 * 60 / (8 * 256):.2f} lb/h" in one_line(card)
