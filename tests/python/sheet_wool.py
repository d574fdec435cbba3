"""Calls of the rooms fibre, yarn and quality, and what is changed in them: cases for workbooks."""

from sheet_machines import Case

WOOL: dict[str, Case] = {
    "air": ("equilibrium_regain", {"humidity": "65 %"}, {"humidity": "67 %"}),
    "air for a regain": ("humidity_for_regain", {"regain": "16 %"}, {"regain": "16.3 %"}),
    "invoice by the oven": (
        "invoice",
        {
            "lot_mass": "500 kg",
            "sample_mass": "250 g",
            "dry_sample_mass": "212.3 g",
            "allowances": ["16 %", "17 %"],
        },
        {"lot_mass": "480 kg", "sample_mass": "240 g", "dry_sample_mass": "201.8 g"},
    ),
    "invoice of a cleaned sample": (
        "invoice",
        {
            "lot_mass": "500 kg",
            "sample_mass": "250 g",
            "dry_sample_mass": "205 g",
            "allowances": ["17 %"],
            "fat_allowance": "1 %",
        },
        {
            "lot_mass": "480 kg",
            "sample_mass": "240 g",
            "dry_sample_mass": "199 g",
            "fat_allowance": "2 %",
        },
    ),
    "invoice by regain": (
        "invoice",
        {"lot_mass": "900 lb", "regain": "14 %", "allowances": ["13.6 %", "15 %"]},
        {"lot_mass": "950 lb", "regain": "12.5 %"},
    ),
    "invoice by content": (
        "invoice",
        {"lot_mass": "300 kg", "moisture_content": "13 %", "allowances": ["17 %"]},
        {"lot_mass": "310 kg", "moisture_content": "15 %"},
    ),
    "yields by the wool base": (
        "clean_yields",
        {"wool_base": "52 %", "vegetable_base": "1.5 %"},
        {"wool_base": "55 %", "vegetable_base": "12 %"},
    ),
    "yields by customs": (
        "clean_yields",
        {"customs_yield": "52 %", "vegetable_base": "1 %"},
        {"customs_yield": "48 %", "vegetable_base": "25 %"},
    ),
    "yields by shrinkage": (
        "clean_yields",
        {"top_and_noil_shrinkage": "45 %", "vegetable_base": "2 %"},
        {"top_and_noil_shrinkage": "41 %", "vegetable_base": "9 %"},
    ),
    "test wash": (
        "test_wash",
        {
            "greasy_masses": ["200 g", "198 g", "205 g"],
            "washed_masses": ["124 g", "119 g", "130 g"],
            "regain": "16 %",
            "fat": "0.8 %",
            "balance_error": "0.5 g",
        },
        {
            "greasy_masses": ["201 g", "190 g", "210 g"],
            "washed_masses": ["122 g", "121 g", "126 g"],
            "regain": "15 %",
            "fat": "1.1 %",
            "balance_error": "1 g",
        },
    ),
    "test wash of one": (
        "test_wash",
        {"greasy_masses": ["8 oz"], "washed_masses": ["5 oz"], "regain": "14 %"},
        {"greasy_masses": ["7.5 oz"], "washed_masses": ["5.1 oz"], "regain": "12 %"},
    ),
    "will spin": (
        "will_spin",
        {"fibre_diameter": "27 µm", "diameter_cv": "24 %", "count": "150 tex"},
        {"fibre_diameter": "31 µm", "diameter_cv": "22 %", "count": "120 tex"},
    ),
    "will spin worsted": (
        "will_spin",
        {
            "fibre_diameter": "24 µm",
            "diameter_cv": "23 %",
            "count": "30 worsted",
            "system": "worsted",
            "staple": "3 in",
            "roller_setting": "5 in",
        },
        {
            "fibre_diameter": "22 µm",
            "diameter_cv": "21 %",
            "count": "36 worsted",
            "staple": "3.5 in",
            "roller_setting": "6 in",
        },
    ),
    "balance": (
        "balance",
        {
            "mass_in": "40.0 kg",
            "balance_error": "50 g",
            "regain": "16 %",
            "fat": "1 %",
            "vegetable": "1 %",
            "out": {
                "slubbing": {"mass": "37.0 kg", "regain": "18 %", "fat": "5 %"},
                "strips": {"mass": "1.20 kg", "regain": "15 %", "vegetable": "2 %"},
            },
        },
        {
            "mass_in": "39.5 kg",
            "balance_error": "80 g",
            "regain": "14 %",
            "fat": "2 %",
            "vegetable": "3 %",
        },
    ),
    "ball band": (
        "ball_band",
        {"count": "250 tex", "ball_mass": "100 g", "regain": "17 %", "label_regain": "16 %"},
        {"count": "300 tex", "ball_mass": "50 g", "regain": "15 %", "label_regain": "17 %"},
    ),
    "check weights": (
        "check_weight_card",
        {
            "count": "257 tex",
            "check_lengths": ["10 m", "100 m"],
            "readings": 8,
            "cv": "2.5 %",
            "stated_regain": "17 %",
            "regain": "12 %",
        },
        {
            "count": "240 tex",
            "check_lengths": ["12 m", "90 m"],
            "cv": "3 %",
            "regain": "14 %",
        },
    ),
    "wraps": ("wraps", {"count": "257 tex"}, {"count": "180 tex"}),
    "readings needed": (
        "readings_needed",
        {"cv": "3 %", "relative_error": "1 %"},
        {"cv": "5 %", "relative_error": "1.5 %"},
    ),
    "skeins": (
        "skein_count",
        {
            "masses": ["13.05 g", "12.91 g", "13.22 g"],
            "skein_length": "50 m",
            "option": "oven-dry plus regain",
            "allowance": "17 %",
        },
        {
            "masses": ["12.05 g", "12.5 g", "12.22 g"],
            "skein_length": "45 m",
            "allowance": "16 %",
        },
    ),
}
