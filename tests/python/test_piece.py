"""The piece and its colours, as Python asks for them."""

import pickle

import hankwise as hw
import pytest
from sheets import column, put, recalculate, rows_of

THROW = {
    "wanted_width": "1.40 m",
    "wanted_length": "1.80 m",
    "fringe": "12 cm",
    "warp_count": "8 Nm",
    "reed": "24 dents/10 cm",
    "ends_per_dent": 2,
    "weft_sett": "4.6 picks/cm",
    "width_shrinkage": "12 %",
    "length_shrinkage": "10 %",
    "draw_in": "6 %",
    "take_up": "8 %",
    "thrums": "90 cm",
    "weft_waste": "3 %",
    "mass_loss": "2 %",
}
RICH = {
    **THROW,
    "pieces": 7,
    "pieces_per_warp": 3,
    "weft_count": "6 Nm",
    "hem": "3 cm",
    "side_hem": "2 cm",
    "panels": 2,
    "seam": "1 cm",
    "selvedge_ends": 8,
    "selvedge_ends_per_dent": 4,
    "gap": "20 cm",
    "header": "10 cm",
    "sample_length": "30 cm",
    "turn_allowance": "4 mm",
    "warp_waste": "1 %",
    "spare_share": "5 %",
    "size": "4 %",
    "creel": 60,
    "length_per_bobbin": "2 km",
    "length_per_pirn": "500 m",
    "package_mass": "1 kg",
}


def test_a_workbook_of_a_piece_follows_its_inputs(tmp_path):
    """Values are changed in the workbook, LibreOffice recalculates it, the library agrees."""
    hw.cloth.piece(**RICH).to_workbook(tmp_path / "piece.xlsx")
    changed = {
        "wanted_width": "1.62 m",
        "pieces": 11,
        "take_up": "9 %",
        "creel": 50,
        "seam": "15 mm",
    }
    put(
        tmp_path / "piece.xlsx",
        {"wanted_width": 1.62, "pieces": 11, "take_up": 9, "creel": 50, "seam": 1.5},
    )
    sheet = column(rows_of(recalculate(tmp_path) / "piece.xlsx"))
    piece = hw.cloth.piece(**{**RICH, **changed})
    assert len(piece) > 40
    for name in piece:
        base = piece.working(name).value
        assert sheet[name][-1] == pytest.approx(base, rel=1e-9), name


def test_every_value_says_what_it_is_and_how_it_came_about():
    piece = hw.cloth.piece(**RICH)
    for name in piece.keys():  # noqa: SIM118
        assert piece.meanings[name]
        assert piece.working(name).value == pytest.approx(piece[name].number(piece[name].unit))
    with pytest.raises(KeyError, match="did you mean 'reed_width'"):
        piece["reed_with"]


def test_the_sensitivity_of_the_yarn_to_the_shrinkage_is_that_of_two_runs():
    def mass(percent):
        loom = {**THROW, "length_shrinkage": f"{percent} %"}
        return hw.cloth.piece(**loom)["yarn_mass"].number("kg")

    working = hw.cloth.piece(**THROW).working("yarn_mass")
    slope = next(
        row["slope"] for row in working.sensitivities if row["input"] == "length_shrinkage"
    )
    assert slope == pytest.approx((mass(10.01) - mass(9.99)) / 0.02, rel=1e-4)


def test_the_setts_wanted_are_those_of_the_finished_cloth():
    loom = {k: v for k, v in THROW.items() if k not in ("reed", "ends_per_dent", "weft_sett")}
    piece = hw.cloth.piece(**loom, wanted_warp_sett="5.8 ends/cm", wanted_weft_sett="5 picks/cm")
    found = [piece[f"finished_{of}_sett"].number("threads/cm") for of in ("warp", "weft")]
    assert found == pytest.approx([5.8, 5], rel=1e-12)
    assert piece["reed_sett"].number("ends/cm") == pytest.approx(5.8 * 0.88 * 0.94)
    assert "picks in the finished cloth" in str(piece)
    assert "5 threads/cm" in str(piece)


def test_a_yarn_is_given_for_its_count():
    yarn = hw.yarn.parse("2/16 Nm")
    assert str(hw.cloth.piece(**{**THROW, "warp_count": yarn})) == str(hw.cloth.piece(**THROW))


def test_what_is_not_given_may_be_none():
    none = dict.fromkeys(["weft_count", "gap", "warp_colours", "pieces"])
    assert str(hw.cloth.piece(**THROW, **none)) == str(hw.cloth.piece(**THROW))


@pytest.mark.parametrize(
    ("given", "error", "words"),
    [
        ({"wanted_widht": "1 m"}, hw.NotationError, "did you mean 'wanted_width'"),
        ({"wanted_width": 1.4}, hw.UnitError, "piece, wanted_width"),
        ({"wanted_width": "-1 m"}, hw.RangeError, "wanted_width"),
        ({"wanted_width": "1.4 kg"}, hw.UnitError, "piece, wanted_width"),
        ({"pieces": 2.5}, hw.RangeError, "pieces.*whole"),
        ({"draw_in": 6}, hw.HankwiseError, "draw_in.*6 %"),
        ({"warp_colours": 8}, TypeError, "warp_colours.*a text"),
        ({"warp_colours": "grey 8"}, hw.NotationError, "no thread count before 'grey'"),
        ({"beam_length": "2 m"}, hw.RangeError, "longer than the beam"),
        (
            {"loom_width": "150 cm"},
            hw.RangeError,
            r"1\.692 m.*1\.5 m, 0\.1917 m less.*panels=2",
        ),
        ({"yarn_at_hand": "2 kg"}, hw.CallError, "no input 'yarn_at_hand'"),
    ],
)
def test_what_cannot_be_is_told(given, error, words):
    with pytest.raises(error, match=words):
        hw.cloth.piece(**{**THROW, **given})


def test_unusual_is_a_warning():
    with pytest.warns(hw.RangeWarning, match="take_up = 25 % is unusual"):
        piece = hw.cloth.piece(**{**THROW, "take_up": "25 %"})
    assert len(piece.warnings) == 1
    with pytest.warns(hw.RangeWarning, match="812 ends, fewer than the 900 of a section"):
        hw.cloth.piece(**THROW, creel=900)


def test_many_widths_are_one_call():
    widths = ["1.2 m", "1.4 m", "1.6 m"]
    many = hw.cloth.piece(**{**THROW, "wanted_width": widths})
    one = [hw.cloth.piece(**{**THROW, "wanted_width": w})["warp_mass"].number("kg") for w in widths]
    assert list(many["warp_mass"].number("kg")) == one


def test_the_yarn_for_twelve_throws_makes_twelve():
    piece = hw.cloth.piece(**THROW, pieces=12)
    made = hw.cloth.pieces_from_yarn(**THROW, yarn_at_hand=piece["yarn_mass"])
    assert made["pieces"].number("") == 12
    assert made["yarn_left"].number("g") == pytest.approx(0, abs=1e-9)
    assert "12 made; yarn runs out first" in str(made)
    with pytest.raises(hw.RangeError, match=r"no whole piece.*more than the .* at hand"):
        hw.cloth.pieces_from_yarn(**THROW, yarn_at_hand="200 g")
    with pytest.raises(hw.CallError, match="no input 'pieces'"):
        hw.cloth.pieces_from_yarn(**THROW, yarn_at_hand="20 kg", pieces=3)
    with pytest.raises(hw.NotationError, match="each settles the yarn at hand"):
        hw.cloth.pieces_from_yarn(**THROW, yarn_at_hand="20 kg", warp_yarn_at_hand="3 kg")
    with pytest.raises(hw.NotationError, match="two counts, so they are two yarns"):
        hw.cloth.pieces_from_yarn(**THROW, yarn_at_hand="20 kg", weft_count="6 Nm")


def test_colours_of_a_check():
    order = hw.cloth.colour_order("8 grey 2 white 8 grey")
    assert (order.repeat, order.colours, order.counts) == (
        18,
        ["grey", "white"],
        {"grey": 16, "white": 2},
    )
    assert order.laid is None
    check = hw.cloth.piece(**THROW, warp_colours=order, weft_colours="24 grey 4 white")
    rows = check["colours_of_warp"]
    assert [row["colour"] for row in rows] == ["grey", "white"]
    ends = [row["warp_ends"].number("") for row in rows]
    assert sum(ends) == 812
    assert check["grey.warp_ends"].number("") == ends[0]
    laid = hw.cloth.colour_order("8 grey 2 white 8 grey", 812)
    assert ends == list(laid.counts.values())
    assert laid.laid == laid.laid[::-1]
    assert "Colours of the warp" in str(check)
    assert "alike at both edges" in str(check)
    assert "Colours of the weft" in check._repr_html_()
    dyed = [row["weft_colour_mass"].number("kg") for row in check["colours_of_weft"]]
    assert sum(dyed) == pytest.approx(check["weft_mass"].number("kg"), rel=1e-12)


def test_an_order_of_colours_is_kept():
    for order in (
        hw.cloth.colour_order("24 grey 4 white"),
        hw.cloth.colour_order("24 grey 4 white", ends=641),
        hw.cloth.colour_order("24 grey 4 white", 641, even=False),
    ):
        assert pickle.loads(pickle.dumps(order)) == order
    left = hw.cloth.colour_order("24 grey 4 white", 30, even=False)
    assert left.laid == [(24, "grey"), (4, "white"), (2, "grey")]
    assert (left.repeats, left.over, left.mirrored, left.edges[1]) == (1, 2, False, "2 of 24 grey")
    with pytest.raises(hw.RangeError, match=r"ends: 0 .*whole number from 1 up"):
        hw.cloth.colour_order("24 grey 4 white", ends=0)
    with pytest.raises(hw.NotationError, match="colour_order"):
        hw.cloth.colour_order("grey")


def test_the_loom_is_told_its_reed_and_whole_dents():
    said = {k: v for k, v in THROW.items() if k != "ends_per_dent"}
    throw = hw.cloth.piece(**said)
    # Two ends in a dent were taken, so the report says so.
    assert "ends in a dent" in str(throw)
    assert throw["dents"].number("") == throw["ends"].number("") / 2
    with pytest.warns(hw.RangeWarning, match="write 4 or 8"):
        edged = hw.cloth.piece(**THROW, selvedge_ends=6, selvedge_ends_per_dent=4)
    # Six ends at four in a dent begin a second dent at each side.
    assert edged["dents"].number("") == edged["ground_ends"].number("") / 2 + 4
    wanted = {k: v for k, v in THROW.items() if k != "reed"} | {"wanted_warp_sett": "6 ends/cm"}
    reed = hw.cloth.piece(**wanted)["reed"].number("dents/10 cm")
    assert reed == pytest.approx(10 * 6 * 0.88 * 0.94 / 2)
    # Without ends in a dent a sett says nothing of a reed.
    bare = {k: v for k, v in said.items() if k != "reed"} | {"wanted_reed_sett": "5 ends/cm"}
    assert "dents" not in hw.cloth.piece(**bare).keys()  # noqa: SIM118


def test_picks_are_told_whole():
    odd = THROW | {"wanted_length": "53 cm", "weft_sett": "4.7 picks/cm"}
    text = str(hw.cloth.piece(**odd))
    picks = next(line for line in text.splitlines() if "picks in a piece" in line)
    assert picks.split()[-2] == str(round(53 / 0.9 * 4.7))


def test_a_reed_in_dents_an_inch():
    inch = hw.cloth.piece(
        wanted_width="36 in", wanted_length="2 yd", warp_count="8 YSW", reed="8 dpi",
        weft_sett="15 ppi",
    )  # fmt: skip
    assert inch["ends"].number("") == 36 * 8 * 2
    choice = hw.cloth.choose_reed(wanted_reed_sett="16 epi", reeds=["8 dpi", "10 dpi"])
    assert "16 ends/in wanted in the reed" in str(choice)


def test_a_stock_of_several_colours_is_not_one_yarn():
    check = THROW | {"warp_colours": "8 brown 8 cream"}
    assert "All colours of a yarn are taken together" in str(
        hw.cloth.pieces_from_yarn(**check, yarn_at_hand="20 kg")
    )
    plain = hw.cloth.pieces_from_yarn(**THROW, yarn_at_hand="20 kg")
    assert "All colours" not in str(plain)


def test_what_was_not_said_of_finishing_is_named():
    silent = {k: v for k, v in THROW.items() if k != "mass_loss"}
    assert "Taken as none: mass lost in finishing" in str(hw.cloth.piece(**silent))
    assert "Taken as none" not in str(hw.cloth.piece(**THROW))


def test_a_percentage_of_another_base_is_refused():
    crimp = hw.cloth.crimp_from_lengths(yarn_length="110 cm", cloth_length="100 cm")
    with pytest.raises(hw.UnitError, match="crimp on cloth length was given for a take-up"):
        hw.cloth.crimp_from_take_up(crimp)
    with pytest.raises(hw.UnitError, match="was given for a take-up"):
        hw.cloth.piece(**THROW | {"take_up": crimp})
