"""Finishing through Python: the chain beside NumPy's products, samples, what is refused."""

import csv
import warnings
from pathlib import Path

import hankwise as hw
import numpy as np
import openpyxl
import pytest
from hypothesis import given
from hypothesis import strategies as st

FABRICS = Path(__file__).parents[1] / "published" / "fabrics-finishing.csv"

CHAIN = [
    ("scour", {"width_shrinkage": "6 %", "length_shrinkage": "4 %", "mass_loss": "5 %"}),
    ("mill", {"width_shrinkage": "15 %", "length_shrinkage": "10 %", "mass_loss": "1 %"}),
    ("raise", {"width_shrinkage": "2 %", "mass_loss": "1.5 %"}),
    ("tenter", {"width_shrinkage": "-2 %"}),
    "press",
]
LOOM = {
    "width": "1.80 m",
    "length": "60 m",
    "warp_sett": "8 ends/cm",
    "weft_sett": "7 picks/cm",
    "warp_count": "8 Nm",
    "weft_count": "16 YSW",
    "warp_crimp": "6 %",
    "weft_crimp": "4 %",
}

shares = st.lists(
    st.tuples(*[st.floats(-0.1, 0.42), st.floats(-0.1, 0.3), st.floats(-0.05, 0.2)]),
    min_size=1,
    max_size=7,
)


@given(shares)
@pytest.mark.filterwarnings("ignore::hankwise.RangeWarning")
def test_changes_compound_as_products(chain):
    processes = [
        (f"step {k}", {"width_shrinkage": w, "length_shrinkage": le, "mass_loss": m})
        for k, (w, le, m) in enumerate(chain)
    ]
    cloth = hw.cloth.finishing(
        processes=processes, width="1.5 m", length="40 m", mass_per_area="300 g/m²"
    )
    w, le, m = np.prod(1 - np.array(chain), axis=0)
    units = {"width": "m", "length": "m", "mass_per_area": "g/m²"}
    found = [cloth[f"finished.{name}"].number(unit) for name, unit in units.items()]
    assert found == pytest.approx([1.5 * w, 40 * le, 300 * m / (w * le)], rel=1e-12)
    factor = cloth["mass_per_area_factor"].number("")
    assert factor == pytest.approx(m / (w * le), rel=1e-12)


def test_the_chain_is_told_stage_by_stage():
    cloth = hw.cloth.finishing(processes=CHAIN, **LOOM)
    text, html = str(cloth), cloth._repr_html_()
    # In text a wide table has its heads on several lines.
    assert all(f">{head}<" in html for head in ("weft, Nm", "running, g/m"))
    for piece in [
        "off the loom",
        "scour",
        "together",
        "ends/cm",
        "crimp of the warp and weft is taken as unchanged",
        "guards on",
    ]:
        assert piece in text
    assert "<table>" in cloth._repr_html_()
    assert cloth["press.width"] == cloth["finished.width"]
    assert [row["name"] for row in cloth["stages"]][:2] == ["loom", "scour"]
    # The lines of a value begin with what was typed.
    assert "1.80 m" in str(cloth.working("finished.width"))


def test_the_workbook_is_live(tmp_path):
    path = tmp_path / "finishing.xlsx"
    hw.cloth.finishing(processes=CHAIN, **LOOM).to_workbook(path)
    cells = [c for row in openpyxl.load_workbook(path).active.iter_rows() for c in row]
    assert sum(1 for c in cells if isinstance(c.value, str) and c.value.startswith("=")) > 40


def test_there_and_back():
    there = hw.cloth.finishing(processes=CHAIN, **LOOM)
    finished = {name: there[f"finished.{name}"] for name in LOOM}
    back = hw.cloth.to_weave(processes=CHAIN, **finished)
    for name, typed in LOOM.items():
        found = back[f"loom.{name}"]
        given = hw.q(typed) if "%" not in typed else float(typed[:-1]) / 100
        wanted = given.number(found.unit) if isinstance(given, hw.Quantity) else given
        assert found.number(found.unit) == pytest.approx(wanted, rel=1e-12), name


def test_a_quantity_says_in_which_form_it_is():
    """An over-width or a change with the sign of ISO 5077 is never read as a shrinkage."""
    over = hw.cloth.over_width_from_sizes(size_before="90 in", size_after="56 in")
    change = hw.cloth.dimensional_change(size_before="50 cm", size_after="48 cm")
    full = hw.cloth.process(name="full", over_width=over, length_change=change)
    assert full["width_shrinkage"].number("fraction") == pytest.approx(34 / 90, rel=1e-12)
    assert full["length_shrinkage"].number("fraction") == pytest.approx(0.04, rel=1e-12)
    area = hw.cloth.area_shrinkage(width_shrinkage="10 %", length_shrinkage="10 %")
    for wrong in (over, change, area):
        with pytest.raises(hw.UnitError, match="was given for a shrinkage on the size before"):
            hw.cloth.process(name="full", width_shrinkage=wrong)


def test_every_way_to_write_a_process_is_one():
    said = {"width_shrinkage": "18 %", "mass_loss": "2 %"}
    ways = [[("mill", said)], {"mill": said}, [{"name": "mill", **said}],
            [("mill", {"width_shrinkage": 0.18, "mass_loss": hw.q("2 %")})]]  # fmt: skip
    chains = [hw.cloth.finishing(processes=way, width="1 m") for way in ways]
    assert len({chain["finished.width"].number("m") for chain in chains}) == 1
    # What was given stays as it was.
    assert ways[2][0]["name"] == "mill"


@pytest.mark.parametrize(
    ("call", "error", "message"),
    [
        (
            lambda c: c.process(name="mill", width_shrinkag="18 %"),
            hw.NotationError,
            "did you mean 'width_shrinkage'",
        ),
        (lambda c: c.process(name="mill", width_shrinkage=18), hw.UnitError, "'18 %'"),
        (
            lambda c: c.process(name="mill", width_shrinkage="120 %"),
            hw.RangeError,
            "width_shrinkage.*120 %",
        ),
        (
            lambda c: c.process(name="mill", mass_loss="1 %", mass_gain="1 %"),
            hw.NotationError,
            "omit all but one",
        ),
        (lambda c: c.finishing(processes=[], width="1 m"), hw.NotationError, "processes"),
        (
            lambda c: c.finishing(processes="mill", width="1 m"),
            hw.NotationError,
            "a list goes here",
        ),
        (lambda c: c.finishing(processes=["mill"]), hw.NotationError, "nothing is known"),
        (
            lambda c: c.finishing(processes=["mill"], widht="1 m"),
            hw.NotationError,
            "did you mean 'width'",
        ),
        (
            lambda c: c.finishing(processes=["mill"], width="1 kg"),
            hw.UnitError,
            "finishing, width",
        ),
        (
            lambda c: c.finishing(processes=[("mill", "18 %")], width="1 m"),
            hw.NotationError,
            "processes",
        ),
        (lambda c: c.finishing(processes=["mill", 3], width="1 m"), hw.NotationError, "not 3"),
        (
            lambda c: c.finishing(processes=[{"width_shrinkage": "1 %"}], width="1 m"),
            hw.NotationError,
            "name of the process",
        ),
        (
            lambda c: c.to_weave(processes=["mill"], width="1 m", loom_width="2 kg"),
            hw.UnitError,
            "loom_width",
        ),
        (
            lambda c: c.process(name="felt", width_before=["48 in"]),
            hw.NotationError,
            "width_after",
        ),
        (
            lambda c: c.process(name="felt", width_before=["1 m", "2 m"], width_after=["1 m"]),
            hw.NotationError,
            "2 specimens and width_after 1",
        ),
        (
            lambda c: c.process(name="felt", mass_before=["1 m"], mass_after=["2 m"]),
            hw.UnitError,
            "mass",
        ),
        (
            lambda c: c.process(
                name="felt", width_before=["2 cm"], width_after=["1 cm"], reading_error="1 cm"
            ),
            hw.RangeError,
            "larger specimen",
        ),
    ],
)
def test_what_is_wrong_is_told(call, error, message):
    with pytest.raises(error, match=message):
        call(hw.cloth)


def test_the_unusual_is_warned_of_and_kept_with_the_result():
    with pytest.warns(hw.RangeWarning, match=r"60 %.*3 to 43 %.*memory"):
        cloth = hw.cloth.finishing(processes=[("mill", {"width_shrinkage": "60 %"})], width="1 m")
    assert "43 %" in cloth.warnings[0]
    with pytest.warns(hw.RangeWarning, match="did you mean 'mill'"):
        hw.cloth.process(name="mil", width_shrinkage="10 %")


def test_a_sample_and_its_band():
    figures = np.array([[52.0, 43.5], [50.0, 41.0], [51.0, 42.0]])
    measured = {
        "width_before": [f"{x} cm" for x in figures[:, 0]],
        "width_after": [f"{x} cm" for x in figures[:, 1]],
        "mass_before": ["120 g"],
        "mass_after": ["117 g"],
        "reading_error": "2 mm",
        "balance_error": "0.5 g",
    }
    felt = hw.cloth.process(name="felt", **measured)
    losses = 1 - figures[:, 1] / figures[:, 0]
    assert felt["width_shrinkage"].number("fraction") == pytest.approx(losses.mean(), rel=1e-12)
    least = min(1 - (after + 0.2) / (before - 0.2) for before, after in figures)
    most = max(1 - (after - 0.2) / (before + 0.2) for before, after in figures)
    band = [felt[f"{end}_width_shrinkage"].number("fraction") for end in ("lowest", "highest")]
    assert band == pytest.approx([least, most], rel=1e-12)
    assert "length_shrinkage" not in felt
    assert "mean of 3 specimens; each reading to ± 2 mm" in str(felt)
    piece = hw.cloth.finishing(
        processes=[("felt", measured)], width="1.60 m", mass_per_area="300 g/m²"
    )
    width = piece["finished.width"].number("m")
    assert width == pytest.approx(1.6 * (1 - losses.mean()), rel=1e-12)
    # What the table prints as possible are the ends.
    assert f"width {1.6 * (1 - most):.3f} to {1.6 * (1 - least):.3f} m" in str(piece)


def test_small_specimens_are_doubted():
    with pytest.warns(hw.RangeWarning, match=r"0\.35 m"):
        hw.cloth.process(name="wash", width_before=["3 in"], width_after=["2.75 in"])


def test_threads_against_a_mass_that_cannot_be():
    with pytest.warns(hw.RangeWarning, match="by the threads"):
        hw.cloth.finishing(processes=["press"], mass_per_area="900 g/m²", **LOOM)


def test_cover_is_that_of_the_sett_and_count_of_the_stage():
    cloth = hw.cloth.finishing(processes=CHAIN, **LOOM)
    for stage in ("loom", "mill", "finished"):
        for of in ("warp", "weft"):
            n = cloth[f"{stage}.{of}_sett"].number("threads/cm")
            tex = cloth[f"{stage}.{of}_count"].number("tex")
            found = cloth[f"{stage}.{of}_cover_factor"].number("K_SI")
            assert found == pytest.approx(n * tex**0.5 / 10, rel=1e-12)
    after = hw.cloth.cover_factor_after_finishing(
        cover_factor_before=cloth["loom.warp_cover_factor"],
        mass_loss=cloth["mass_loss"],
        across_shrinkage=cloth["width_shrinkage"],
        along_shrinkage=cloth["length_shrinkage"],
    )
    assert after.number("K_SI") == pytest.approx(
        cloth["finished.warp_cover_factor"].number("K_SI"), rel=1e-12
    )


def test_cloths_that_weavers_measured():
    """Forward to the size that they measured, and back to that on the loom."""
    lines = [line for line in FABRICS.read_text(encoding="utf-8").splitlines() if line[0] != "#"]
    checked = 0
    for row in csv.DictReader(lines):
        before, after = row["off_loom_width"] or row["reed_width"], row["finished_width"]
        if not (before and after):
            continue
        with warnings.catch_warnings():
            warnings.simplefilter("ignore", hw.RangeWarning)
            sizes = {"width_before": [f"{before} in"], "width_after": [f"{after} in"]}
            wash = [("wash", {**sizes, "reading_error": "0.5 in"})]
            there = hw.cloth.finishing(processes=wash, width=f"{before} in")
            back = hw.cloth.to_weave(processes=wash, width=f"{after} in")
        assert there["finished.width"].number("in") == pytest.approx(float(after), rel=1e-12)
        assert back["loom.width"].number("in") == pytest.approx(float(before), rel=1e-12)
        checked += 1
    assert checked == 7


def test_who_measures_in_inches_is_told_ounces():
    yarns = {
        "warp_count": "20 YSW", "weft_count": "20 YSW", "warp_crimp": "6 %", "weft_crimp": "8 %",
    }  # fmt: skip
    scour = [("scour", {"width_shrinkage": "5 %"})]
    inch = hw.cloth.finishing(
        processes=scour,
        width="90 in",
        length="70 yd",
        warp_sett="27 epi",
        weft_sett="27 ppi",
        **yarns,
    )
    heads = ("mass, oz/yd²", "running, oz/yd", "piece, lb")
    assert all(f">{head}<" in inch._repr_html_() for head in heads)
    # Ends in an inch over the yards in a pound: 36 × 16 × 36 / 36 ounces in a square yard.
    ounces = 36 * 16 * 27 * (1.06 + 1.08) / (20 * 256)
    assert inch["loom.mass_per_area"].number("oz/yd²") == pytest.approx(ounces)
    assert f"{ounces:.3f}" in str(inch)
    metric = hw.cloth.finishing(
        processes=scour, width="2 m", length="70 m", mass_per_area="300 g/m²"
    )
    assert "mass, g/m²  running, g/m  piece, kg" in str(metric)


def test_a_wash_may_take_the_grease_of_handspun():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        hw.cloth.process(
            name="wash", width_shrinkage="15 %", length_shrinkage="12 %", mass_loss="20 %"
        )


def test_the_trade_names_a_process_in_more_than_one_way():
    # The warning of the usual range shows that the name was understood.
    for name in ("decatising", "decatize", "blowing", "steam 2"):
        with pytest.warns(hw.RangeWarning, match="outside the usual"):
            hw.cloth.process(name=name, width_shrinkage="20 %")
