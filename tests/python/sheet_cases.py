"""Calls of calculations of the room mill, and what is changed in them.

Each case is a calculation, what it is first given, and what is then given instead. Values are
invented; the second call crosses a whole number or another bend where the calculation has one.
"""

from sheet_cloth import CLOTH
from sheet_machines import MACHINES, Case
from sheet_money import MONEY
from sheet_wool import WOOL
from sheet_yarn_machines import YARN_MACHINES

LAYERS = {
    "component_share": "30 %",
    "layers": 6,
    "layer_cv": "25 %",
    "tuft_mass": "20 mg",
    "sample_mass": "10 g",
}
OILED = {
    "mass": "40 kg",
    "regain_before": "14 %",
    "oil_added": "5 %",
    "wanted_regain": "22 %",
    "oil_density": "0.92 kg/L",
}
CARD = {
    "fibre_mass": "36 kg",
    "slubbing_count": "200 tex",
    "ends": 120,
    "edge_ends": 6,
    "delivery_speed": "12 m/min",
    "droppings_share": "2 %",
    "strips_share": "1.5 %",
    "held_up": "0.60 kg",
    "drop_rate": "2 drops/min",
    "web_width": "1.5 m",
    "regain_before": "22 %",
    "fat_before": "5 %",
    "regain_after": "16 %",
    "fat_after": "4.5 %",
}
HEAP = {
    "white": {"share": "60 %", "regain": "16 %", "fat": "0.5 %"},
    "moorit": {"share": "40 %", "regain": "12 %"},
}
OTHER_HEAP = {
    "white": {"share": "70 %", "regain": "15 %", "fat": "0.8 %"},
    "moorit": {"share": "30 %", "regain": "13 %"},
}
WEIGHED = {
    "grey": {"mass": "12 lb", "regain": "15 %", "vegetable": "1 %", "fibre_diameter": "27 µm"},
    "white": {"mass": "31 lb", "regain": "17 %", "vegetable": "0.5 %", "fibre_diameter": "24 µm"},
}
WEIGHED_AGAIN = {
    "grey": {"mass": "15 lb", "regain": "14 %", "vegetable": "1.5 %", "fibre_diameter": "28 µm"},
    "white": {"mass": "28 lb", "regain": "16.5 %", "vegetable": "0.4 %", "fibre_diameter": "23 µm"},
}

MILL: dict[str, Case] = {
    "card": (
        "card",
        CARD,
        {
            "fibre_mass": "50 kg",
            "edge_ends": 4,
            "strips_share": "2 %",
            "held_up": "0.9 kg",
            "drop_rate": "3 /min",
        },
    ),
    "card in inches": (
        "card",
        {
            "fibre_mass": "80 lb",
            "slubbing_count": "4 YSW",
            "ends": 96,
            "delivery_speed": "40 ft/min",
            "loss": "6 %",
        },
        {
            "fibre_mass": "70 lb",
            "slubbing_count": "5 YSW",
            "ends": 100,
            "delivery_speed": "36 ft/min",
            "loss": "5 %",
        },
    ),
    "card, edges thrown": (
        "card",
        CARD | {"put_back_share": "50 %"},
        {"put_back_share": "25 %", "within": "4 %", "regain_after": "14 %"},
    ),
    "lot on the card": (
        "lot_on_card",
        {"fibre_mass": "36 kg", "held_up": "0.60 kg", "loss": "5 %", "allowed_loss": "8 %"},
        {"fibre_mass": "12 kg", "held_up": "0.80 kg", "loss": "4 %", "allowed_loss": "9 %"},
    ),
    "lot on the card in pounds": (
        "lot_on_card",
        {"fibre_mass": "60 lb", "held_up": "20 oz", "wanted_own_share": "95 %", "trace": "1 %"},
        {"fibre_mass": "45 lb", "held_up": "25 oz", "loss": "6 %", "trace": "0.5 %"},
    ),
    "emulsion to a regain": (
        "emulsion",
        OILED,
        {"mass": "55 kg", "regain_before": "12 %", "oil_added": "6 %", "wanted_regain": "25 %"},
    ),
    "emulsion of a strength": (
        "emulsion",
        {
            "fibre_mass": "80 lb",
            "regain_before": "13 %",
            "oil_added": "4 %",
            "oil_share": "30 %",
            "fat_before": "1 %",
        },
        {"fibre_mass": "70 lb", "oil_added": "5 %", "oil_share": "25 %", "fat_before": "0.5 %"},
    ),
    "emulsion and water beside it": (
        "emulsion",
        OILED | {"oil_share": "50 %", "vegetable": "1 %"},
        {"oil_share": "45 %", "vegetable": "2 %", "wanted_regain": "24 %"},
    ),
    "scour liquor": (
        "scour_liquor",
        {
            "mass": "20 kg",
            "liquor_ratio": 30,
            "soap_concentration": "10 g/L",
            "alkali_concentration": "2 g/L",
            "pickup": "60 %",
            "rinses": 2,
            "temperature": "50 °C",
        },
        {
            "mass": "24 kg",
            "liquor_ratio": 27,
            "alkali_concentration": "3 g/L",
            "soap_concentration": "8 g/L",
            "pickup": "70 %",
        },
    ),
    "scour liquor in gallons": (
        "scour_liquor",
        {
            "mass": "40 lb",
            "liquor_ratio": 20,
            "soap_concentration": "1 oz/imp gal",
            "pickup": "65 %",
            "rinses": 1,
            "rinse_ratio": 15,
            "regain": "16 %",
            "temperature": "120 °F",
        },
        {
            "mass": "50 lb",
            "soap_concentration": "1.5 oz/imp gal",
            "rinse_ratio": 18,
            "temperature": "115 °F",
        },
    ),
    "dye bath": (
        "dye_bath",
        {
            "mass": "20 kg",
            "depth": "2 %",
            "liquor_ratio": 30,
            "regain_before": "14 %",
            "recipe_regain": "17 %",
            "dye_strength": "100 %",
            "stock_concentration": "10 g/L",
            "goods_water": "20 L",
            "additions": {
                "acetic acid": {"on_goods": "2 %"},
                "Glauber's salt": {"in_liquor": "5 g/L"},
                "levelling": {"on_goods": "1 %"},
            },
            "exhaustion": "95 %",
            "loss": "1 %",
            "regain_after": "16 %",
            "count_before": "310 tex",
            "shrinkage": "2 %",
        },
        {
            "mass": "23 kg",
            "depth": "1.5 %",
            "dye_strength": "120 %",
            "additions": {
                "acetic acid": {"on_goods": "3 %"},
                "Glauber's salt": {"in_liquor": "4 g/L"},
                "levelling": {"on_goods": "0.8 %"},
            },
            "exhaustion": "90 %",
            "regain_after": "15 %",
        },
    ),
    "dye bath in pounds": (
        "dye_bath",
        {
            "mass": "40 lb",
            "depth": "1 %",
            "liquor_ratio": 25,
            "count_before": "8 YSW",
            "loss": "2 %",
        },
        {"mass": "35 lb", "depth": "1.2 %", "count_before": "7.5 YSW", "loss": "1.5 %"},
    ),
    "two washes": (
        "washes",
        {
            "washes": [
                {"liquor_ratio": 30, "soap_concentration": "10 g/L", "removed_share": "80 %"},
                {
                    "liquor_ratio": 25,
                    "soap_concentration": "4 g/L",
                    "alkali_concentration": "2 g/L",
                    "removed_share": "70 %",
                },
            ],
            "mass": "20 kg",
            "fat_before": "24 %",
        },
        {
            "washes": [
                {"liquor_ratio": 28, "soap_concentration": "9 g/L", "removed_share": "78 %"},
                {
                    "liquor_ratio": 22,
                    "soap_concentration": "5 g/L",
                    "alkali_concentration": "1 g/L",
                    "removed_share": "66 %",
                },
            ],
            "mass": "23 kg",
            "fat_before": "21 %",
        },
    ),
    "wheel for a twist": (
        "change_wheel",
        {"twist_constant": "995.31 tpi", "wanted_twist": "18.1 tpi", "wheels": [50, 54, 58]},
        {"twist_constant": "998 tpi", "wanted_twist": "18.3 tpi"},
    ),
    "wheel for a length": (
        "change_wheel",
        {
            "length_constant": "38 mm",
            "wanted_length": "1.3 m",
            "wheels": [32, 34, 36],
            "law": "direct",
        },
        {"length_constant": "38.5 mm", "wanted_length": "1.31 m"},
    ),
    "blend to weigh": (
        "blend",
        {"components": HEAP, "blend_mass": "58 kg", "stated_regain": "16 %"},
        {"components": OTHER_HEAP, "blend_mass": "63 kg", "stated_regain": "15 %"},
    ),
    "blend that was weighed": (
        "blend",
        {"components": WEIGHED},
        {"components": WEIGHED_AGAIN},
    ),
    "evenness after passes": (
        "evenness_of_blend",
        LAYERS | {"passes": 2, "doublings": 4, "wanted_share_sd": "3 %"},
        {"component_share": "25 %", "layers": 8, "passes": 2, "wanted_share_sd": "2.5 %"},
    ),
    "evenness of the stack": (
        "evenness_of_blend",
        LAYERS | {"tuft_mass": "0.001 oz", "sample_mass": "0.5 oz"},
        {"component_share": "40 %", "layer_cv": "20 %", "sample_mass": "0.4 oz"},
    ),
}

CASES: dict[str, Case] = MILL | MACHINES | YARN_MACHINES | MONEY | WOOL | CLOTH
