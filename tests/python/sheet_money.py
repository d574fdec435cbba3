"""Calls of costs, tariffs and the week, and what is changed in them: cases for the workbooks."""

from sheet_machines import Case

STAGES = [
    {"name": "scour", "loss": "42 %", "stage_cost_per_mass": "0.80 /kg"},
    {
        "name": "card",
        "loss": "8 %",
        "hourly_cost": "24",
        "feed_rate": "12 kg/h",
        "waste_price_per_mass": "0.50 /kg",
    },
]
DEARER = [
    {"name": "scour", "loss": "38 %", "stage_cost_per_mass": "0.95 /kg"},
    {
        "name": "card",
        "loss": "11 %",
        "hourly_cost": "27",
        "feed_rate": "9 kg/h",
        "waste_price_per_mass": "0.70 /kg",
    },
]
POUNDS = [{"name": "spin", "loss": "3 %", "hourly_cost": "20", "feed_rate": "11 lb/h"}]
FEWER_POUNDS = [{"name": "spin", "loss": "4 %", "hourly_cost": "22", "feed_rate": "9 lb/h"}]
LOT = {
    "greasy_mass": "60 kg",
    "price_per_mass": "3 /kg",
    "stages": {
        "scour": {"mass_in": "60 kg", "stage_cost_per_mass": "0.9 /kg"},
        "card": {"time": "8 h", "extra_time": "2 h", "hourly_cost": "18", "people": "1"},
    },
    "own_stages": {"loom": {"extra_time": "6 h", "hourly_cost": "10", "people": "1"}},
    "goods": {
        "hank": {"fibre_mass": "12 kg", "pieces": "120"},
        "throw": {"fibre_mass": "14 kg", "pieces": "10", "times": {"loom": "30 h"}},
    },
    "left_over": "1 kg",
    "hourly_wage": "14",
    "overhead": "20 %",
    "margin": "30 %",
}
LOTS = {
    "Elm": {"colour": "black", "times": {"card": "10 h", "mule": "20 h"}},
    "Ash": {"colour": "white", "times": {"card": "6 h", "mule": "14 h"}},
    "Oak": {"colour": "grey", "times": {"card": "6 h", "mule": "8 h"}},
}
LATER = {
    "Elm": {"colour": "black", "times": {"card": "9 h", "mule": "21 h"}},
    "Ash": {"colour": "white", "times": {"card": "7 h", "mule": "15 h"}},
    "Oak": {"colour": "grey", "times": {"card": "5 h", "mule": "9 h"}},
}
OPEN = {
    "card": {
        "open_time": "40 h",
        "people": 1,
        "clean_time_to_darker": "30 min",
        "clean_time_to_lighter": "4 h",
    },
    "mule": {"open_time": "44 h", "clean_time": "1 h", "people": 0.5},
}
SHORTER = {
    "card": {
        "open_time": "36 h",
        "people": 2,
        "clean_time_to_darker": "40 min",
        "clean_time_to_lighter": "3 h",
    },
    "mule": {"open_time": "41 h", "clean_time": "2 h", "people": 1},
}
MONEY: dict[str, Case] = {
    "cost with a margin": (
        "cost_through",
        {
            "price_per_mass": "4.20 /kg",
            "stages": STAGES,
            "goods": {"hank": "100 g", "throw": "1.2 kg"},
            "overhead": "20 %",
            "margin": "30 %",
        },
        {
            "price_per_mass": "3.60 /kg",
            "stages": DEARER,
            "goods": {"hank": "95 g", "throw": "1.3 kg"},
            "overhead": "25 %",
            "margin": "35 %",
        },
    ),
    "cost with a mark-up": (
        "cost_through",
        {"price_per_mass": "2 /lb", "stages": POUNDS, "hourly_overhead": "5", "mark_up": "60 %"},
        {
            "price_per_mass": "2.5 /lb",
            "stages": FEWER_POUNDS,
            "hourly_overhead": "6",
            "mark_up": "50 %",
        },
    ),
    "cost of a lot": (
        "lot_cost",
        LOT,
        {
            "price_per_mass": "3.5 /kg",
            "left_over": "2 kg",
            "hourly_wage": "16",
            "overhead": "25 %",
            "margin": "35 %",
        },
    ),
    "tariffs": (
        "compare_tariffs",
        {
            "greasy_mass": "80 kg",
            "yields": ["45 %", "60 %"],
            "tariff_in": "11 /kg",
            "tariff_out": "20 /kg",
            "minimum_charge": "300",
            "rejects": "10 %",
            "reject_charge": "2 /kg",
        },
        # Less than the least charge by one tariff, rejects beyond what is free.
        {
            "greasy_mass": "25 kg",
            "yields": ["40 %", "65 %"],
            "minimum_charge": "310",
            "rejects": "22 %",
            "reject_charge": "3 /kg",
        },
    ),
    "tariffs by the clean pound": (
        "compare_tariffs",
        {
            "greasy_mass": "120 lb",
            "yields": ["40 %", "50 %", "60 %"],
            "tariff_clean": "9 /lb",
            "clean_yield": "60 %",
            "tariff_out": "13 /lb",
        },
        {
            "greasy_mass": "90 lb",
            "tariff_clean": "8 /lb",
            "clean_yield": "55 %",
            "tariff_out": "12 /lb",
        },
    ),
    "week": (
        "week",
        {"lots": LOTS, "machines": OPEN, "order": "as given"},
        {"lots": LATER, "machines": SHORTER},
    ),
}
