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
    ("scour", {"width": "6 %", "length": "4 %", "loss": "5 %"}),
    ("mill", {"width": "15 %", "length": "10 %", "loss": "1 %"}),
    ("raise", {"width": "2 %", "loss": "1.5 %"}),
    ("tenter", {"width": "-2 %"}),
    "press",
]
LOOM = {
    "width": "1.80 m",
    "length": "60 m",
    "ends": "8 ends/cm",
    "picks": "7 picks/cm",
    "warp": "8 Nm",
    "weft": "16 YSW",
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
        (f"step {k}", {"width": w, "length": le, "loss": m}) for k, (w, le, m) in enumerate(chain)
    ]
    cloth = hw.cloth.finishing(processes, width="1.5 m", length="40 m", mass_per_area="300 g/m²")
    w, le, m = np.prod(1 - np.array(chain), axis=0)
    units = {"width": "m", "length": "m", "mass_per_area": "g/m²"}
    found = [cloth[f"finished_{name}"].number(unit) for name, unit in units.items()]
    assert found == pytest.approx([1.5 * w, 40 * le, 300 * m / (w * le)], rel=1e-12)
    factor = cloth["mass_per_area_factor"].number("")
    assert factor == pytest.approx(m / (w * le), rel=1e-12)


def test_the_chain_is_told_stage_by_stage():
    cloth = hw.cloth.finishing(CHAIN, **LOOM)
    text = str(cloth)
    for piece in ["off the loom", "scour", "together", "ends/cm", "weft, YSW", "running, g/m",
                  "crimp of the warp and weft is taken as unchanged", "guards stay"]:  # fmt: skip
        assert piece in text
    assert "<table>" in cloth._repr_html_()
    assert cloth["press_width"] == cloth["finished_width"]
    # The lines of a figure begin with what was typed.
    assert "1.80 m" in str(cloth.working("finished_width"))


def test_the_workbook_is_live(tmp_path):
    path = tmp_path / "finishing.xlsx"
    hw.cloth.finishing(CHAIN, **LOOM).to_sheet(path)
    cells = [c for row in openpyxl.load_workbook(path).active.iter_rows() for c in row]
    assert sum(1 for c in cells if isinstance(c.value, str) and c.value.startswith("=")) > 40


def test_there_and_back():
    there = hw.cloth.finishing(CHAIN, **LOOM)
    finished = {name: there[f"finished_{name}"] for name in LOOM}
    back = hw.cloth.to_weave(CHAIN, **finished)
    for name, typed in LOOM.items():
        found = back[f"loom_{name}"]
        given = hw.q(typed) if "%" not in typed else float(typed[:-1]) / 100
        wanted = given.number(found.unit) if isinstance(given, hw.Quantity) else given
        assert found.number(found.unit) == pytest.approx(wanted, rel=1e-12), name


def test_a_quantity_says_in_which_form_it_is():
    """An over-width or a change with the sign of ISO 5077 is never read as a shrinkage."""
    over = hw.cloth.over_width_from_sizes(size_before="90 in", size_after="56 in")
    change = hw.cloth.dimensional_change(size_before="50 cm", size_after="48 cm")
    process = hw.cloth.process("full", width=over, length=change)
    assert process.width.number("fraction") == pytest.approx(34 / 90, rel=1e-12)
    assert process.length.number("fraction") == pytest.approx(0.04, rel=1e-12)
    area = hw.cloth.area_shrinkage(width_shrinkage="10 %", length_shrinkage="10 %")
    with pytest.raises(hw.UnitError, match="shrinkage_of_side"):
        hw.cloth.process("full", width=area)


def test_every_way_to_write_a_process_is_one():
    made = hw.cloth.process("mill", width="18 %", loss="2 %")
    ways = [made, ("mill", {"width": "18 %", "loss": "2 %"}),
            {"process": "mill", "width": 0.18, "loss": hw.q("2 %")}]  # fmt: skip
    widths = {hw.cloth.finishing([way], width="1 m")["finished_width"].number("m") for way in ways}
    assert len(widths) == 1
    assert made == hw.cloth.process("mill", width="18 %", loss="2 %")
    # A dictionary that was given stays as it was.
    assert ways[2]["process"] == "mill"


@pytest.mark.parametrize(
    ("call", "error", "message"),
    [
        (lambda c: c.process("mill", widht="18 %"), hw.NotationError, "did you mean 'width'"),
        (lambda c: c.process("mill", mass="2 %"), hw.NotationError, "'loss' or a 'gain'"),
        (lambda c: c.process("mill", width=18), hw.UnitError, "'18 %'"),
        (lambda c: c.process("mill", width="120 %"), hw.RangeError, "mill, width.*120 %"),
        (lambda c: c.process("mill", width=[0.1, 0.2]), TypeError, "one figure"),
        (lambda c: c.process("mill", loss="1 %", gain="1 %"), hw.NotationError, "leave one out"),
        (lambda c: c.finishing([], width="1 m"), hw.NotationError, "no process"),
        (lambda c: c.finishing("mill", width="1 m"), hw.NotationError, "a list of processes"),
        (lambda c: c.finishing(["mill"]), hw.NotationError, "nothing is known"),
        (lambda c: c.finishing(["mill"], widht="1 m"), hw.NotationError, "did you mean 'width'"),
        (lambda c: c.finishing(["mill"], width="1 kg"), hw.UnitError, "finishing, width"),
        (lambda c: c.finishing([("mill", "18 %")], width="1 m"), hw.NotationError, "process 1"),
        (lambda c: c.finishing(["mill", 3], width="1 m"), hw.NotationError, "process 2"),
        (lambda c: c.finishing([{"width": "1 %"}], width="1 m"), hw.NotationError, "'process'"),
        (lambda c: c.to_weave(["mill"], width="1 m", widest="2 kg"), hw.UnitError, "widest"),
        (lambda c: c.finished_sample("felt"), hw.NotationError, "nothing was measured"),
        (lambda c: c.finished_sample("felt", width="48 in"), hw.NotationError, "before and after"),
        (
            lambda c: c.finished_sample("felt", width=("1 m", "2 m", "3 m")),
            hw.NotationError,
            "pairs",
        ),
        (lambda c: c.finished_sample("felt", mass=("1 m", "2 m")), hw.UnitError, "mass"),
        (
            lambda c: c.finished_sample("felt", width=("2 cm", "1 cm"), reading="1 cm"),
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
        cloth = hw.cloth.finishing([("mill", {"width": "60 %"})], width="1 m")
    assert "43 %" in cloth.warnings[0]
    with pytest.warns(hw.RangeWarning, match="did you mean 'mill'"):
        hw.cloth.process("mil", width="10 %")


def test_a_sample_and_its_band():
    pairs = [("52.0 cm", "43.5 cm"), ("50.0 cm", "41.0 cm"), ("51.0 cm", "42.0 cm")]
    felt = hw.cloth.finished_sample("felt", width=pairs, mass=("120 g", "117 g"), reading="2 mm",
                                    scale="0.5 g")  # fmt: skip
    figures = np.array([[float(x.split()[0]) for x in pair] for pair in pairs])
    losses = 1 - figures[:, 1] / figures[:, 0]
    assert felt.width.number("fraction") == pytest.approx(losses.mean(), rel=1e-12)
    least = min(1 - (after + 0.2) / (before - 0.2) for before, after in figures)
    most = max(1 - (after - 0.2) / (before + 0.2) for before, after in figures)
    assert [q.number("fraction") for q in felt.band("width")] == pytest.approx(
        [least, most], rel=1e-12
    )
    assert felt.length is None
    with pytest.raises(hw.NotationError, match="'length'"):
        felt.band("length")
    piece = hw.cloth.finishing([felt], width="1.60 m", mass_per_area="300 g/m²")
    width = piece["finished_width"].number("m")
    assert width == pytest.approx(1.6 * (1 - losses.mean()), rel=1e-12)
    # What the table prints as possible are the ends.
    assert f"width {1.6 * (1 - most):.3f} to {1.6 * (1 - least):.3f} m" in str(piece)


def test_small_specimens_are_doubted():
    with pytest.warns(hw.RangeWarning, match=r"0\.35 m"):
        hw.cloth.finished_sample("wash", width=("3 in", "2.75 in"))


def test_threads_against_a_mass_that_cannot_be():
    with pytest.warns(hw.RangeWarning, match="by the threads"):
        hw.cloth.finishing(["press"], mass_per_area="900 g/m²", **LOOM)


def test_cover_is_that_of_the_sett_and_count_of_the_stage():
    cloth = hw.cloth.finishing(CHAIN, **LOOM)
    for stage in ("loom", "mill", "finished"):
        for cover, sett, count in (("warp_cover", "ends", "warp"), ("weft_cover", "picks", "weft")):
            n = cloth[f"{stage}_{sett}"].number("threads/cm")
            tex = cloth[f"{stage}_{count}"].number("tex")
            found = cloth[f"{stage}_{cover}"].number("K_SI")
            assert found == pytest.approx(n * tex**0.5 / 10, rel=1e-12)
    after = hw.cloth.cover_factor_after_finishing(
        cover_factor_before=cloth["loom_warp_cover"],
        mass_loss=cloth["loss"],
        across_shrinkage=cloth["width_shrinkage"],
        along_shrinkage=cloth["length_shrinkage"],
    )
    assert after.number("K_SI") == pytest.approx(
        cloth["finished_warp_cover"].number("K_SI"), rel=1e-12
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
            wash = hw.cloth.finished_sample(
                "wash", width=(f"{before} in", f"{after} in"), reading="0.5 in"
            )
            there = hw.cloth.finishing([wash], width=f"{before} in")
            back = hw.cloth.to_weave([wash], width=f"{after} in")
        assert there["finished_width"].number("in") == pytest.approx(float(after), rel=1e-12)
        assert back["loom_width"].number("in") == pytest.approx(float(before), rel=1e-12)
        checked += 1
    assert checked == 7


def test_who_measures_in_inches_is_told_ounces():
    cloth = {"warp": "20 YSW", "weft": "20 YSW", "warp_crimp": "6 %", "weft_crimp": "8 %"}
    inch = hw.cloth.finishing(
        [("scour", {"width": "5 %"})],
        width="90 in",
        length="70 yd",
        ends="27 epi",
        picks="27 ppi",
        **cloth,
    )
    heads = "mass, oz/yd²  running, oz/yd  piece, lb"
    assert heads in str(inch)
    # Ends in an inch over the yards in a pound: 36 × 16 × 36 / 36 ounces in a square yard.
    ounces = 36 * 16 * 27 * (1.06 + 1.08) / (20 * 256)
    assert inch["loom_mass_per_area"].number("oz/yd²") == pytest.approx(ounces)
    assert f"{ounces:.3f}" in str(inch)
    metric = hw.cloth.finishing(
        [("scour", {"width": "5 %"})], width="2 m", length="70 m", mass_per_area="9 oz/yd²"
    )
    assert "mass, oz/yd²  running, g/m  piece, kg" in str(metric)


def test_a_wash_may_take_the_grease_of_handspun():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        hw.cloth.process("wash", width="15 %", length="12 %", loss="20 %")


def test_the_trade_names_a_process_in_more_than_one_way():
    # The warning of the usual range shows that the name was understood.
    for name in ("decatising", "decatize", "blowing"):
        with pytest.warns(hw.RangeWarning, match="outside the usual"):
            hw.cloth.process(name, width="20 %")
