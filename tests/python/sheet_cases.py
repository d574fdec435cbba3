"""Calls of the rooms fibre and mill that give several figures, and what is changed in them.

Each case is a function, what it is first given, and what is then given instead. Figures are
invented; the second call crosses a whole number or another bend where the function has one.
"""

from sheet_machines import MACHINES, Case
from sheet_yarn_machines import YARN_MACHINES

WOOL = {"mass": "40 kg", "regain": "14 %", "oil": "5 %", "wanted": "22 %", "density": "0.92 kg/L"}
CARD = {
    "lot": "36 kg",
    "slubbing": "200 tex",
    "ends": 120,
    "edge_ends": 6,
    "speed": "12 m/min",
    "droppings": "2 %",
    "strips": "1.5 %",
    "held_up": "0.60 kg",
    "drops": "2 drops/min",
    "width": "1.5 m",
    "regain": "22 %",
    "fat": "5 %",
    "regain_out": "16 %",
    "fat_out": "4.5 %",
}
# What is given by its place, without a name.
PLACES = {
    "washes": ["washes"],
}

MILL: dict[str, Case] = {
    "card": (
        "card_run",
        CARD,
        {"lot": "50 kg", "edge_ends": 4, "strips": "2 %", "held_up": "0.9 kg", "drops": "3 /min"},
    ),
    "card in inches": (
        "card_run",
        {"lot": "80 lb", "slubbing": "4 YSW", "ends": 96, "speed": "40 ft/min", "loss": "6 %"},
        {"lot": "70 lb", "slubbing": "5 YSW", "ends": 100, "speed": "36 ft/min", "loss": "5 %"},
    ),
    "card, edges thrown": (
        "card_run",
        CARD | {"put_back": "50 %"},
        {"put_back": "25 %", "within": "4 %", "regain_out": "14 %"},
    ),
    "lots apart": (
        "lots_apart",
        {"lot": "36 kg", "held_up": "0.60 kg", "loss": "5 %", "allowed": "8 %"},
        {"lot": "12 kg", "held_up": "0.80 kg", "loss": "4 %", "allowed": "9 %"},
    ),
    "lots apart in pounds": (
        "lots_apart",
        {"lot": "60 lb", "held_up": "20 oz", "own": "95 %", "trace": "1 %"},
        {"lot": "45 lb", "held_up": "25 oz", "trace": "0.5 %"},
    ),
    "emulsion to a regain": (
        "emulsion",
        WOOL,
        {"mass": "55 kg", "regain": "12 %", "oil": "6 %", "wanted": "25 %"},
    ),
    "emulsion of a strength": (
        "emulsion",
        {"fibre": "80 lb", "regain": "13 %", "oil": "4 %", "oil_share": "30 %", "fat": "1 %"},
        {"fibre": "70 lb", "oil": "5 %", "oil_share": "25 %", "fat": "0.5 %"},
    ),
    "emulsion and water beside it": (
        "emulsion",
        WOOL | {"oil_share": "50 %", "vegetable": "1 %"},
        {"oil_share": "45 %", "vegetable": "2 %", "wanted": "24 %"},
    ),
    "scour liquor": (
        "scour_liquor",
        {
            "mass": "20 kg",
            "liquor_ratio": 30,
            "soap": "10 g/L",
            "alkali": "2 g/L",
            "pickup": "60 %",
            "rinses": 2,
            "temperature": "50 °C",
        },
        {"mass": "24 kg", "liquor_ratio": 27, "alkali": "3 g/L", "soap": "8 g/L", "pickup": "70 %"},
    ),
    "scour liquor in gallons": (
        "scour_liquor",
        {
            "mass": "40 lb",
            "liquor_ratio": 20,
            "soap": "1 oz/imp gal",
            "pickup": "65 %",
            "rinses": 1,
            "rinse_ratio": 15,
            "regain": "16 %",
            "temperature": "120 °F",
        },
        {"mass": "50 lb", "soap": "1.5 oz/imp gal", "rinse_ratio": 18, "temperature": "115 °F"},
    ),
    "dye bath": (
        "dye_bath",
        {
            "mass": "20 kg",
            "depth": "2 %",
            "liquor_ratio": 30,
            "regain": "14 %",
            "recipe_regain": "17 %",
            "strength": "100 %",
            "stock": "10 g/L",
            "wet": "20 L",
            "additions": {"acetic acid": "2 %", "Glauber's salt": "5 g/L", "levelling": "1 %"},
            "exhaustion": "95 %",
            "loss": "1 %",
            "regain_after": "16 %",
            "count": "310 tex",
            "shrinkage": "2 %",
        },
        {
            "mass": "23 kg",
            "depth": "1.5 %",
            "strength": "120 %",
            "additions": {"acetic acid": "3 %", "Glauber's salt": "4 g/L", "levelling": "0.8 %"},
            "exhaustion": "90 %",
            "regain_after": "15 %",
        },
    ),
    "dye bath in pounds": (
        "dye_bath",
        {"mass": "40 lb", "depth": "1 %", "liquor_ratio": 25, "count": "8 YSW", "loss": "2 %"},
        {"mass": "35 lb", "depth": "1.2 %", "count": "7.5 YSW", "loss": "1.5 %"},
    ),
    "two washes": (
        "washes",
        {
            "washes": [
                {"liquor_ratio": 30, "soap": "10 g/L", "removed": "80 %"},
                {"liquor_ratio": 25, "soap": "4 g/L", "alkali": "2 g/L", "removed": "70 %"},
            ],
            "mass": "20 kg",
            "fat": "24 %",
        },
        {
            "washes": [
                {"liquor_ratio": 28, "soap": "9 g/L", "removed": "78 %"},
                {"liquor_ratio": 22, "soap": "5 g/L", "alkali": "1 g/L", "removed": "66 %"},
            ],
            "mass": "23 kg",
            "fat": "21 %",
        },
    ),
}

CASES: dict[str, tuple[str, *Case]] = {
    **{name: ("mill", *case) for name, case in (MILL | MACHINES | YARN_MACHINES).items()},
}
