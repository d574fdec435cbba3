"""Calls of the room cloth, and what is changed in them: cases for the tests of workbooks."""

from sheet_machines import Case

PIECE = {
    "wanted_width": "1.40 m",
    "wanted_length": "1.80 m",
    "fringe": "12 cm",
    "warp_count": "8 Nm",
    "weft_count": "6 Nm",
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
    "hem": "3 cm",
    "side_hem": "2 cm",
    "selvedge_ends": 8,
    "selvedge_ends_per_dent": 4,
    "warp_waste": "1 %",
}
OTHER_PIECE = {
    "wanted_width": "1.62 m",
    "wanted_length": "2 m",
    "weft_count": "5 Nm",
    "take_up": "9 %",
    "draw_in": "5 %",
    "width_shrinkage": "10 %",
    "mass_loss": "3 %",
    "hem": "4 cm",
}
ROUTE = [
    ("scour", {"width_shrinkage": "6 %", "length_shrinkage": "4 %", "mass_loss": "5 %"}),
    ("tenter", {"width_shrinkage": "-2 %"}),
]
OTHER_ROUTE = [
    ("scour", {"width_shrinkage": "8 %", "length_shrinkage": "5 %", "mass_loss": "4 %"}),
    ("tenter", {"width_shrinkage": "-3 %"}),
]
LOOM_STATE = {
    "width": "1.80 m",
    "length": "60 m",
    "warp_sett": "8 ends/cm",
    "weft_sett": "7 picks/cm",
    "warp_count": "8 Nm",
    "weft_count": "16 YSW",
    "warp_crimp": "6 %",
    "weft_crimp": "4 %",
}
OTHER_STATE = {
    "width": "1.70 m",
    "length": "55 m",
    "warp_sett": "9 ends/cm",
    "weft_sett": "6 picks/cm",
    "warp_count": "9 Nm",
    "weft_count": "14 YSW",
}
CLOTH: dict[str, Case] = {
    "piece": (
        "piece",
        PIECE | {"pieces": 7, "pieces_per_warp": 3},
        OTHER_PIECE | {"pieces": 11},
    ),
    # The threads of each colour are counted and no formulas: what is changed leaves their number.
    "piece with a coloured warp": (
        "piece",
        PIECE | {"pieces": 4, "warp_colours": "24 grey 4 white", "selvedge_colour": "grey"},
        {
            "pieces": 5,
            "wanted_length": "2 m",
            "weft_count": "5 Nm",
            "weft_sett": "5 picks/cm",
            "warp_count": "9 Nm",
            "take_up": "9 %",
            "length_shrinkage": "9 %",
            "mass_loss": "3 %",
            "hem": "4 cm",
        },
    ),
    "piece with a coloured weft": (
        "piece",
        PIECE | {"pieces": 4, "weft_colours": "24 grey 4 white"},
        {
            "pieces": 5,
            "wanted_width": "1.62 m",
            "warp_count": "9 Nm",
            "take_up": "9 %",
            "draw_in": "5 %",
            "width_shrinkage": "10 %",
            "mass_loss": "3 %",
        },
    ),
    "pieces from yarn": (
        "pieces_from_yarn",
        PIECE | {"warp_yarn_at_hand": "9 kg", "weft_yarn_at_hand": "7 kg"},
        OTHER_PIECE | {"warp_yarn_at_hand": "16 kg", "weft_yarn_at_hand": "19 kg"},
    ),
    "finishing": (
        "finishing",
        {"processes": ROUTE} | LOOM_STATE,
        {"processes": OTHER_ROUTE} | OTHER_STATE,
    ),
    "to weave": (
        "to_weave",
        {"processes": ROUTE, "width": "1.4 m", "length": "1.8 m", "warp_sett": "9 ends/cm"},
        {"processes": OTHER_ROUTE, "width": "1.5 m", "length": "2 m", "warp_sett": "8 ends/cm"},
    ),
    "process by its area": (
        "process",
        {"name": "felt", "area_shrinkage": "28 %", "width_shrinkage": "20 %"},
        {"area_shrinkage": "36 %", "width_shrinkage": "10 %"},
    ),
    "process": (
        "process",
        {
            "name": "wash",
            "width_before": ["50.0 cm", "50.2 cm"],
            "width_after": ["43.5 cm", "44.4 cm"],
            "length_before": ["50.0 cm", "50.1 cm"],
            "length_after": ["45.0 cm", "45.4 cm"],
            "mass_before": ["120 g"],
            "mass_after": ["116 g"],
            "reading_error": "2 mm",
            "balance_error": "0.5 g",
        },
        {
            "width_before": ["50.4 cm", "50.1 cm"],
            "width_after": ["44.5 cm", "44.9 cm"],
            "length_before": ["50.3 cm", "50.6 cm"],
            "length_after": ["46.0 cm", "46.4 cm"],
            "mass_before": ["122 g"],
            "mass_after": ["115 g"],
            "reading_error": "1 mm",
        },
    ),
    "choose_reed": (
        "choose_reed",
        {
            "wanted_reed_sett": "20 ends/in",
            "reeds": ["10 dents/in"],
            "ends_per_dent": [2],
            "reed_width": "24 in",
            "selvedge_ends_per_dent": 4,
            "dents_per_selvedge": 6,
        },
        {
            "wanted_reed_sett": "21 ends/in",
            "reed_width": "30 in",
            "selvedge_ends_per_dent": 3,
            "dents_per_selvedge": 4,
        },
    ),
    "setts": (
        "setts",
        {"weave": "2/2 twill", "warp_count": "100 tex", "wanted_warp_sett": "9 ends/cm"},
        {"warp_count": "80 tex", "wanted_warp_sett": "10 ends/cm"},
    ),
}
