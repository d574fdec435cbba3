"""Cautions are printed with the number, in text and for programs."""

import json

import hankwise as hw
import pytest
from hankwise.cli import main

DYE = ["calc", "dye_mass", "goods_mass=20 kg", "depth=2 %", "dye_strength=100 %"]


@pytest.mark.parametrize(
    "words",
    [
        DYE,
        ["find", "scour_liquors"],
        ["find", "oil_on_wool", "emulsion"],
        [
            "calc",
            "dryer",
            "oven_dry_mass=40 kg",
            "regain_before=60 %",
            "regain_after=16 %",
            "evaporation_rate=15 kg/h",
            "--working",
            "time",
        ],
    ],
)
def test_the_number_and_its_cautions_are_one_screen(words, capsys):
    assert main(words) == 0
    out = capsys.readouterr().out
    assert "follow the maker, local rules" in " ".join(out.split())
    # Under the number, not before it.
    assert out.index("Cautions") > out.index(" kg" if words == DYE else "\n")
    assert main([*words, "--json"]) == 0
    assert isinstance(json.loads(capsys.readouterr().out), dict)


def test_programs_have_them_too(capsys):
    assert main([*DYE, "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["cautions"] == hw.mill.dye_mass.cautions
    assert main(["find", "scour_liquors", "--json"]) == 0
    cautions = json.loads(capsys.readouterr().out)["cautions"]
    assert cautions == hw.handbook["scour_liquors"].cautions
    assert any(line.startswith("Scouring: Hot alkaline liquor") for line in cautions)
    assert "Scouring: Hot alkaline" in hw.handbook["scour_liquors"]._repr_html_()
    assert hw.handbook["breed_yields"].cautions == []


def test_what_can_do_no_harm_prints_none(capsys):
    assert main(["calc", "twist_factor", "twist=9 tpi", "count=16 YSW"]) == 0
    assert "Cautions" not in capsys.readouterr().out
