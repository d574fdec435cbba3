"""The piece and its colours, as Python asks for them."""

import pickle

import hankwise as hw
import pytest
from test_sheet import column, put, recalculate

THROW = {
    "width": "1.40 m",
    "length": "1.80 m",
    "fringe": "12 cm",
    "warp": "8 Nm",
    "reed": "24 dents/10 cm",
    "ends_per_dent": 2,
    "picks": "4.6 picks/cm",
    "width_shrinkage": "12 %",
    "length_shrinkage": "10 %",
    "draw_in": "6 %",
    "take_up": "8 %",
    "thrums": "90 cm",
    "weft_waste": "3 %",
    "loss": "2 %",
}
RICH = {
    **THROW,
    "pieces": 7,
    "pieces_per_warp": 3,
    "weft": "6 Nm",
    "hem": "3 cm",
    "side_hem": "2 cm",
    "panels": 2,
    "seam": "1 cm",
    "selvedge_ends": 8,
    "selvedge_per_dent": 4,
    "gap": "20 cm",
    "header": "10 cm",
    "sample": "30 cm",
    "turn": "4 mm",
    "warp_waste": "1 %",
    "spare": "5 %",
    "size": "4 %",
    "creel": 60,
    "bobbin": "2 km",
    "pirn": "500 m",
    "cone": "1 kg",
}


def test_a_workbook_of_a_piece_follows_its_inputs(tmp_path):
    """Figures are changed in the workbook, LibreOffice recalculates it, the library agrees."""
    hw.cloth.piece(**RICH).to_sheet(tmp_path / "piece.xlsx")
    changed = {"width": "1.62 m", "pieces": 11, "take_up": "9 %", "creel": 50, "seam": "15 mm"}
    put(
        tmp_path / "piece.xlsx",
        {"width": 1.62, "pieces": 11, "take_up": 9, "creel": 50, "seam": 1.5},
    )
    sheet = column(recalculate(tmp_path) / "piece.xlsx")
    piece = hw.cloth.piece(**{**RICH, **changed})
    assert len(piece) > 40
    for name in piece:
        base = piece.working(name).value
        assert sheet[name][-1] == pytest.approx(base, rel=1e-9), name


def test_every_figure_says_what_it_is_and_how_it_came_about():
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
    loom = {k: v for k, v in THROW.items() if k not in ("reed", "ends_per_dent", "picks")}
    piece = hw.cloth.piece(**loom, finished_ends="5.8 ends/cm", finished_picks="5 picks/cm")
    found = [piece[f"{threads}_finished"].number("threads/cm") for threads in ("ends", "picks")]
    assert found == pytest.approx([5.8, 5], rel=1e-12)
    assert piece["sett"].number("ends/cm") == pytest.approx(5.8 * 0.88 * 0.94)
    assert "picks in the finished cloth" in str(piece)
    assert "5 picks/cm" in str(piece)


def test_a_yarn_is_given_for_its_count():
    yarn = hw.yarn.parse("2/16 Nm")
    assert str(hw.cloth.piece(**{**THROW, "warp": yarn})) == str(hw.cloth.piece(**THROW))


def test_what_is_not_given_may_be_none():
    none = dict.fromkeys(["weft", "gap", "warp_colours", "pieces"])
    assert str(hw.cloth.piece(**THROW, **none)) == str(hw.cloth.piece(**THROW))


@pytest.mark.parametrize(
    ("given", "error", "words"),
    [
        ({"widht": "1 m"}, hw.NotationError, "did you mean 'width'"),
        ({"width": 1.4}, hw.UnitError, "piece, width"),
        ({"width": "-1 m"}, hw.RangeError, "width"),
        ({"width": "1.4 kg"}, hw.UnitError, "piece, width"),
        ({"width": ["1 m", "2 m"]}, TypeError, "width"),
        ({"pieces": 2.5}, hw.RangeError, "pieces.*whole"),
        ({"draw_in": 6}, hw.HankwiseError, "draw_in.*6 %"),
        ({"warp_colours": 8}, TypeError, "24 grey 4 white"),
        ({"warp_colours": "grey 8"}, hw.NotationError, "how many threads of 'grey'"),
        ({"beam": "2 m"}, hw.RangeError, "longer than the beam"),
        ({"loom_width": "150 cm"}, hw.RangeError, r"169\.2 cm.*150 cm, 19\.17 cm less.*panels=2"),
        ({"yarn": "2 kg"}, hw.NotationError, "pieces_from_yarn"),
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


def test_the_yarn_for_twelve_throws_makes_twelve():
    piece = hw.cloth.piece(**THROW, pieces=12)
    made = hw.cloth.pieces_from_yarn(**THROW, yarn=piece["yarn_mass"])
    assert made["pieces"].number("") == 12
    assert made["yarn_left"].number("g") == pytest.approx(0, abs=1e-9)
    assert "12 pieces; yarn runs out first" in str(made)
    with pytest.raises(hw.RangeError, match=r"no whole piece.*more than the 200 g at hand"):
        hw.cloth.pieces_from_yarn(**THROW, yarn="200 g")
    with pytest.raises(hw.NotationError, match="pieces is what the yarn answers"):
        hw.cloth.pieces_from_yarn(**THROW, yarn="20 kg", pieces=3)
    with pytest.raises(hw.NotationError, match="either yarn, or warp_yarn"):
        hw.cloth.pieces_from_yarn(**THROW, yarn="20 kg", warp_yarn="3 kg")


def test_colours_of_a_check():
    order = hw.cloth.colour_order("8 grey 2 white 8 grey")
    assert (order.repeat, order.colours, order.counts) == (
        18,
        ["grey", "white"],
        {"grey": 16, "white": 2},
    )
    assert order.laid is None
    check = hw.cloth.piece(**THROW, warp_colours=order, weft_colours="24 grey 4 white")
    ends = [check[f"warp_ends_{colour}"].number("") for colour in ("grey", "white")]
    assert sum(ends) == 812
    laid = hw.cloth.colour_order("8 grey 2 white 8 grey", 812)
    assert ends == list(laid.counts.values())
    assert laid.laid == laid.laid[::-1]
    assert "Colours of the warp" in str(check)
    assert "Colours of the weft" in check._repr_html_()
    dyed = [check[f"weft_mass_{colour}"].number("kg") for colour in ("grey", "white")]
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
        edged = hw.cloth.piece(**THROW, selvedge_ends=6, selvedge_per_dent=4)
    # Six ends at four in a dent begin a second dent at each side.
    assert edged["dents"].number("") == edged["ground_ends"].number("") / 2 + 4
    wanted = {k: v for k, v in THROW.items() if k != "reed"} | {"finished_ends": "6 ends/cm"}
    reed = hw.cloth.piece(**wanted)["reed_wanted"].number("dents/10 cm")
    assert reed == pytest.approx(10 * 6 * 0.88 * 0.94 / 2)
    # Without ends in a dent a sett says nothing of a reed.
    bare = {k: v for k, v in said.items() if k != "reed"} | {"sett": "5 ends/cm"}
    assert "dents" not in hw.cloth.piece(**bare).keys()  # noqa: SIM118


def test_picks_are_told_whole_and_size_only_where_there_is_some():
    odd = THROW | {"length": "53 cm", "picks": "4.7 picks/cm"}
    text = str(hw.cloth.piece(**odd))
    picks = next(line for line in text.splitlines() if "picks in a piece" in line)
    assert picks.split()[-1] == str(round(53 / 0.9 * 4.7))
    assert "with its size" not in text
    assert "off the loom, with its size" in str(hw.cloth.piece(**odd, size="8 %"))


def test_a_reed_in_dents_an_inch():
    inch = hw.cloth.piece(width="36 in", length="2 yd", warp="8 YSW", reed="8 dpi", picks="15 ppi")
    assert inch["ends"].number("") == 36 * 8 * 2
    assert "8 dents/in" in str(inch)
    choice = hw.cloth.choose_reed("16 epi", ["8 dpi", "10 dpi"])
    assert "16 ends/in wanted in the reed" in str(choice)


def test_a_stock_of_several_colours_is_not_one_yarn():
    check = THROW | {"warp_colours": "8 brown 8 cream"}
    assert "All colours of a yarn are taken together" in str(
        hw.cloth.pieces_from_yarn(**check, yarn="20 kg")
    )
    plain = hw.cloth.pieces_from_yarn(**THROW, yarn="20 kg")
    assert "All colours" not in str(plain)


def test_what_was_not_said_of_finishing_is_named():
    silent = {k: v for k, v in THROW.items() if k != "loss"}
    assert "taken as none: mass lost in finishing" in str(hw.cloth.piece(**silent))
    assert "taken as none" not in str(hw.cloth.piece(**THROW))


def test_a_percentage_of_another_base_is_refused():
    crimp = hw.cloth.crimp_from_lengths(yarn_length="110 cm", cloth_length="100 cm")
    with pytest.raises(hw.UnitError, match="crimp on cloth length was given for a take-up"):
        hw.cloth.crimp_from_take_up(crimp)
    with pytest.raises(hw.UnitError, match="was given for a take-up"):
        hw.cloth.piece(**THROW | {"take_up": crimp})
