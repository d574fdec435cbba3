"""Calls of every calculation: each input is given in one of them, each result is in one of them.

All data are invented.
"""

from typing import Any

YIELDS = {
    "wool_base": "49 %",
    "iwto_16": "61 %",
    "iwto_17": "61 %",
    "japanese": "58 %",
    "top_and_noil": "55 %",
    "customs_content": "57 %",
    "customs_yield": "59 %",
    "iwto_16_shrinkage": "39 %",
    "iwto_17_shrinkage": "39 %",
    "japanese_shrinkage": "42 %",
    "top_and_noil_shrinkage": "45 %",
    "customs_content_shrinkage": "43 %",
    "customs_yield_shrinkage": "41 %",
}
LOT: dict[str, Any] = {
    "greasy_mass": "80 kg", "price_per_mass": "4 /kg",
    "stages": {
        "card": {
            "mass_in": "40 kg", "time": "5 h", "extra_time": "1 h", "hourly_cost": 20,
            "people": 1, "stage_cost_per_mass": "0.50 /kg", "fixed_cost": 15,
        },
        "mule": {"time": "8 h", "hourly_cost": 18, "people": 1},
    },
    "own_stages": {
        "loom": {"hourly_cost": 12, "people": 1, "fixed_cost": 30, "extra_time": "2 h"},
        "knit": {"stage_cost_per_mass": "3 /kg"},
    },
    "goods": {
        "throw": {
            "fibre_mass": "20 kg", "pieces": 16,
            "times": [{"stage": "loom", "time": "24 h"}],
        },
        "hank": {
            "fibre_mass": "14 kg", "pieces": 150,
            "times": [{"stage": "knit", "time": "0 h"}],
        },
    },
    "left_over": "2 kg", "state_ratio": "1.17", "hourly_wage": 16, "overhead": "10 %",
    "hourly_overhead": 2,
}  # fmt: skip
THROW: dict[str, Any] = {
    "wanted_width": "1.40 m", "wanted_length": "1.80 m", "fringe": "12 cm", "warp_count": "8 Nm",
    "width_shrinkage": "12 %", "length_shrinkage": "10 %", "draw_in": "6 %", "take_up": "8 %",
    "thrums": "90 cm", "weft_waste": "3 %", "mass_loss": "2 %",
}  # fmt: skip
REED = {"reed": "24 dents/10 cm", "ends_per_dent": 2, "weft_sett": "4.6 picks/cm"}
IN_REED = {"wanted_reed_sett": "4.8 ends/cm", "weft_sett": "4.6 picks/cm"}
WANTED = {"wanted_warp_sett": "5.8 ends/cm", "wanted_weft_sett": "5 picks/cm"}
RICH = {
    "weft_count": "6 Nm", "pieces_per_warp": 3, "hem": "3 cm", "side_hem": "2 cm", "panels": 2,
    "seam": "1 cm", "selvedge_ends": 8, "selvedge_ends_per_dent": 4, "selvedge_colour": "grey",
    "gap": "20 cm", "header": "10 cm", "sample_length": "30 cm", "turn_allowance": "4 mm",
    "warp_waste": "1 %", "spare_share": "5 %", "size": "4 %", "creel": 60,
    "length_per_bobbin": "2 km", "length_per_pirn": "500 m", "package_mass": "1 kg",
    "loom_width": "2 m", "beam_length": "60 m", "warp_colours": "24 grey 4 white",
    "weft_colours": "12 grey 12 white",
}  # fmt: skip
CLOTH = {
    "warp_sett": "9 ends/cm", "weft_sett": "10 picks/cm",
    "warp_diameter": "0.36 mm", "weft_diameter": "0.34 mm",
}  # fmt: skip
# What may be known of its wave, in turn.
CRIMPS = [
    {"warp_crimp": "4.5 %"}, {"warp_thread_length": "1.045 mm"}, {"warp_height": "0.2923 mm"},
    {"warp_angle": "18.23 °"}, {"weft_crimp": "7 %"}, {"weft_thread_length": "1.190 mm"},
    {"weft_height": "0.4077 mm"}, {"weft_angle": "22.80 °"},
]  # fmt: skip
CALLS: dict[str, list[dict[str, Any]]] = {
    "balance": [
        {
            "mass_in": "40.0 kg", "regain": "16 %", "fat": "1 %", "vegetable": "1 %",
            "balance_error": "20 g",
            "out": {
                "slubbing": {
                    "mass": "37.0 kg", "regain": "18 %", "fat": "5 %", "vegetable": "0.5 %",
                    "balance_error": "10 g",
                },
            },
        },
        {
            "mass_in": "80 kg", "clean_yield": "48 %", "balance_error": "50 g",
            "out": {"wool": {"mass": "41 kg", "clean_yield": "92 %", "balance_error": "50 g"}},
        },
    ],
    "ball_band": [
        {
            "count": "4 Nm", "ball_mass": "100 g", "regain": "12 %", "label_regain": "17 %",
            "country": "UK",
        },
    ],
    "batches": [
        {
            "goods_mass": "90 lb", "capacity": "25 lb", "time_per_load": "40 min", "loss": "2 %",
            "machines": 2,
        },
        {
            "goods_mass": "40 kg", "capacity": "12 kg", "time_per_load": "45 min",
            "change_time": "15 min", "machines": 2, "per_person": 4,
        },
    ],
    "blend": [
        {
            "components": {
                "white": {"share": "60 %", "regain": "16 %"},
                "moorit": {"share": "40 %", "regain": "12 %"},
            },
            "blend_mass": "58 kg", "stated_regain": "16 %",
        },
        {
            "components": {
                "white": {"mass": "34.8 kg", "regain": "16 %", "fibre_diameter": "25 µm"},
                "moorit": {
                    "mass": "22.4 kg", "regain": "12 %", "fat": "1 %", "vegetable": "1 %",
                    "fibre_diameter": "29 µm",
                },
            },
            "stated_regain": "16 %", "stated_fat": "1 %",
        },
    ],
    "card": [
        {
            "fibre_mass": "80 lb", "slubbing_count": "4 YSW", "ends": 96,
            "delivery_speed": "40 ft/min", "loss": "6 %",
        },
        {
            "fibre_mass": "36 kg", "slubbing_count": "200 tex", "ends": 120, "edge_ends": 6,
            "delivery_speed": "12 m/min", "droppings_share": "2 %", "strips_share": "1.5 %",
            "fly_share": "0.5 %", "held_up": "0.60 kg", "drop_rate": "2 drops/min",
            "web_width": "1.5 m", "regain_before": "22 %", "fat_before": "5 %",
            "regain_after": "16 %", "fat_after": "5 %", "burr_share": "0.5 %",
            "put_back_share": "50 %", "within": "4 %",
        },
    ],
    "change_wheel": [
        {"twist_constant": "995.31 tpi", "wanted_twist": "18.1 tpi", "wheels": [50, 54, 58]},
        {
            "length_constant": "38 mm", "wanted_length": "1.3 m", "wheels": [32, 34, 36],
            "law": "direct",
        },
        {"wanted_draft": 7, "draft_constant": 0.2, "wheels": [30, 32, 36, 40], "law": "direct"},
    ],
    "choose_reed": [
        {
            "wanted_reed_sett": "20 ends/in", "reeds": ["8 dents/in", "12 dents/in"],
            "ends_per_dent": [2, 3], "period": 3, "reed_width": "24 in",
            "selvedge_ends_per_dent": 4, "dents_per_selvedge": 6,
        },
        {
            "wanted_reed_sett": "4.8 ends/cm", "reeds": ["24 dents/10 cm"], "reed_width": "1.6 m",
            "selvedge_ends_per_dent": 4, "width_per_selvedge": "1 cm",
        },
    ],
    "check_weight_card": [
        {
            "count": "200 tex", "check_lengths": ["20 m", "40 yd"], "readings": 4, "cv": "3 %",
            "stated_regain": "17 %", "regain": "12 %", "balance": "g", "ends": 2,
            "different_ends": 4, "cv_between": "1 %", "cv_readings": 20, "stated_oil": "2 %",
            "oil": "4 %", "confidence": "90 %",
        },
    ],
    "clean_yields": [{known: share, "vegetable_base": "1.5 %"} for known, share in YIELDS.items()],
    "compare_tariffs": [
        {
            "greasy_mass": "80 kg", "yields": ["45 %", "60 %"], "tariff_in": "11 /kg",
            "tariff_out": "20 /kg", "minimum_charge": "90", "rejects": "20 %",
            "reject_charge": "2 /kg", "free_rejects": "10 %",
        },
        {
            "greasy_mass": "80 kg", "yields": ["45 %", "52 %", "60 %"], "tariff_out": "20 /kg",
            "tariff_clean": "17 /kg", "clean_yield": "62 %",
        },
    ],
    "cost_through": [
        {
            "price_per_mass": "4.20 /kg",
            "stages": {
                "scour": {"loss": "42 %", "stage_cost_per_mass": "0.80 /kg"},
                "card": {"loss": "8 %", "hourly_cost": "24", "feed_rate": "12 kg/h"},
            },
            "goods": {"hank": "100 g"}, "margin": "30 %",
        },
        {
            "price_per_mass": "4.20 /kg",
            "stages": [
                {"name": "scour", "loss": "42 %", "stage_cost_per_mass": "0.80 /kg"},
                {
                    "name": "card", "loss": "8 %", "hourly_cost": "24", "feed_rate": "12 kg/h",
                    "waste_price_per_mass": "1 /kg", "sold_share": "5 %",
                },
            ],
            "overhead": "20 %", "hourly_overhead": 3, "mark_up": "40 %",
            "goods": {"hank": "100 g", "cone": "1 kg"},
        },
    ],
    "dryer": [
        {
            "oven_dry_mass": "40 kg", "regain_before": "60 %", "regain_after": "16 %",
            "evaporation_rate": "15 kg/h", "efficiency": "85 %", "machines": 2, "per_person": 4,
        },
    ],
    "dye_bath": [
        {
            "mass": "20 kg", "depth": "2 %", "liquor_ratio": 30, "stock_concentration": "10 g/L",
            "additions": {"acetic acid": {"on_goods": "2 %"}}, "source": "the maker's card",
        },
        {
            "mass": "20 kg", "depth": "2 %", "liquor_ratio": 30, "regain_before": "14 %",
            "recipe_regain": "17 %", "dye_strength": "100 %", "stock_concentration": "10 g/L",
            "goods_water": "20 L",
            "additions": {
                "acetic acid": {"on_goods": "2 %"}, "Glauber's salt": {"in_liquor": "5 g/L"},
                "levelling": {"on_goods": "1 %"},
            },
            "exhaustion": "95 %", "loss": "1 %", "regain_after": "16 %", "count_before": "310 tex",
            "shrinkage": "2 %",
        },
    ],
    "emulsion": [
        {
            "mass": "40 kg", "regain_before": "14 %", "oil_added": "5 %", "wanted_regain": "22 %",
            "oil_density": "0.92 kg/L", "oil_share": "50 %", "vegetable": "1 %",
        },
        {
            "mass": "40 kg", "regain_before": "14 %", "oil_added": "5 %", "wanted_regain": "22 %",
            "oil_density": "0.92 kg/L", "water_density": "0.998 kg/L",
        },
        {
            "fibre_mass": "80 lb", "regain_before": "13 %", "oil_added": "4 %", "oil_share": "30 %",
            "fat_before": "1 %",
        },
    ],
    "equilibrium_regain": [
        {"humidity": "65 %"},
    ],
    "evenness_of_blend": [
        {
            "component_share": "30 %", "layers": 6, "layer_cv": "25 %", "passes": 2, "doublings": 4,
            "tuft_mass": "20 mg", "sample_mass": "10 g", "wanted_share_sd": "3 %",
        },
    ],
    "finishing": [
        {
            "processes": [
                (
                    "scour",
                    {"width_shrinkage": "6 %", "length_shrinkage": "4 %", "mass_loss": "5 %"},
                ),
                (
                    "mill",
                    {
                        "width_shrinkage": "15 %", "length_shrinkage": "10 %", "mass_loss": "1 %",
                        "warp_yarn_shrinkage": "6 %", "weft_yarn_shrinkage": "9 %",
                    },
                ),
                ("tenter", {"width_shrinkage": "-2 %"}),
            ],
            "width": "1.80 m", "length": "40 m", "warp_sett": "8 ends/cm",
            "weft_sett": "7 picks/cm", "warp_count": "150 tex", "weft_count": "160 tex",
            "warp_crimp": "8 %", "weft_crimp": "10 %", "mass_per_area": "300 g/m²",
        },
        {
            "processes": [
                {
                    "name": "wash", "width_before": ["50 cm", "50 cm"],
                    "width_after": ["46 cm", "45.5 cm"], "reading_error": "1 mm",
                },
            ],
            "width": "1.80 m", "length": "40 m", "piece_mass": "22 kg",
        },
    ],
    "fringe_twisting": [
        {
            "ends": 812, "strand_ends": 4, "contraction": "20 %", "knot_length": "3 cm",
            "wanted_fringe": "10 cm", "pieces": 12, "width": "1.40 m", "warp_count": "257 tex",
            "round_time": "1 min", "tassels_at_once": 4, "people": 2,
        },
        {"ends": 240, "strand_ends": 3, "strands": 3, "contraction": "15 %", "fringe": "5 in"},
    ],
    "humidity_for_regain": [
        {"regain": "16 %"},
    ],
    "invoice": [
        {
            "lot_mass": "500 kg", "sample_mass": "250 g", "dry_sample_mass": "212.3 g",
            "allowances": ["16 %", "17 %", "18.25 %"],
        },
        {"lot_mass": "500 kg", "moisture_content": "15 %", "allowances": ["17 %"]},
        {
            "lot_mass": "500 kg", "sample_mass": "250 g", "dry_sample_mass": "212.3 g",
            "allowances": ["16 %", "17 %", "18.25 %"], "fat_allowance": "1.5 %",
        },
        {"lot_mass": "500 kg", "regain": "17 %", "allowances": ["16 %"]},
    ],
    "loom": [
        {
            "loom_speed": "90 picks/min", "weft_sett": "4.6 picks/cm", "stop_rate": "6 /h",
            "stop_time": "2 min", "reed_width": "1.6 m", "weft_count": "310 tex",
            "cloth_length": "60 m", "looms": 4, "attention_time": "1 min", "work_load": "70 %",
        },
        {
            "loom_speed": "85 picks/min", "weft_sett": "18 picks/in", "efficiency": "75 %",
            "looms": 6, "cloth_length": "90 yd", "per_person": 4,
        },
        {
            "loom_speed": "100 picks/min", "weft_sett": "12 picks/in", "stops_per_100000_picks": 90,
            "stop_time": "1.5 min", "cloth_length": "70 yd",
        },
    ],
    "lot_cost": [LOT | {"name": "heather", "margin": "25 %"}, LOT | {"mark_up": "40 %"}],
    "lot_on_card": [
        {"fibre_mass": "36 kg", "held_up": "0.60 kg", "loss": "5 %", "allowed_loss": "8 %"},
        {"fibre_mass": "60 lb", "held_up": "20 oz", "wanted_own_share": "95 %", "trace": "1 %"},
    ],
    "mule": [
        {
            "spindles": 120, "travel": "1.83 m", "cycle": "22.5 s", "count": "150 tex",
            "efficiency": "85 %", "wanted_draft": 1.4, "wanted_twist": "320 turns/m",
            "yarn_mass": "30 kg",
            "loss": "2 %", "package_mass": "90 g", "break_rate": 40, "patrol_time": "6 min",
            "piecing_time": "20 s", "work_load": "70 %",
        },
        {
            "spindles": 200, "travel": "72 in", "let_in": "2 in", "cycle": "20 s",
            "count": "16 YSW", "efficiency": "80 %", "wanted_draft": 1.35,
            "delivered_per_tooth": "1.5 in",
            "delivery_wheels": [32, 34, 36], "wanted_twist": "9 tpi", "coiling": 8, "slip": "2 %",
            "turns_per_tooth": 10, "twist_wheels": [56, 60, 64, 68], "yarn_mass": "60 lb",
            "per_person": 300,
        },
        {
            "spindles": 120, "travel": "1.83 m", "cycle": "22.5 s", "count": "150 tex",
            "efficiency": "85 %", "delivered_length": "1.31 m", "yarn_mass": "30 kg", "loss": "2 %",
            "break_rate": 40, "patrol_time": "6 min", "piecing_time": "20 s", "work_load": "70 %",
        },
    ],
    "passages": [
        {"cloth_length": "60 m", "cloth_speed": "8 m/min", "passages": 4, "change_time": "10 min"},
        {"cloth_length": "66 yd", "cloth_speed": "9 yd/min", "machines": 2, "per_person": 1},
    ],
    "piece": [
        THROW | REED | RICH | {"pieces": 7},
        THROW | WANTED,
        THROW | IN_REED,
    ],
    "pieces_from_yarn": [
        THROW | IN_REED | {"yarn_at_hand": "12 kg"},
        THROW | REED | RICH | {"warp_yarn_at_hand": "9 kg", "weft_yarn_at_hand": "9 kg"},
        THROW | WANTED | {"yarn_at_hand": "20 kg"},
    ],
    "plain_cloth": [CLOTH | known for known in CRIMPS],
    "process": [
        {"name": "mill", "width_shrinkage": "18 %", "length_shrinkage": "12 %", "mass_loss": "2 %"},
        {
            "name": "mill", "over_width": "21.95 %", "length_change": "-12 %", "mass_gain": "1 %",
            "warp_yarn_shrinkage": "6 %", "weft_yarn_shrinkage": "9 %",
        },
        {"name": "felt", "area_shrinkage": "28 %", "width_shrinkage": "20 %"},
        {
            "name": "wash", "width_before": ["50 cm", "50 cm"], "width_after": ["46 cm", "45.5 cm"],
            "length_before": ["50 cm", "50 cm"], "length_after": ["47 cm", "47.2 cm"],
            "mass_before": ["120 g", "121 g"], "mass_after": ["118 g", "118.5 g"],
            "reading_error": "1 mm", "balance_error": "0.5 g",
        },
        {"name": "tenter", "width_change": "2 %", "over_length": "3 %"},
    ],
    "readings_needed": [
        {"cv": "10 %", "relative_error": "5 %", "confidence": "90 %"},
    ],
    "reel": [
        {
            "reel_circumference": "1.5 m", "positions": 20, "reel_speed": "120 rpm",
            "change_time": "8 min", "count": "310 tex", "wanted_hank_mass": "105 g",
            "yarn_mass": "30 kg", "loss": "1 %",
        },
        {
            "reel_circumference": "54 in", "positions": 24, "reel_speed": "100 rpm",
            "change_time": "10 min", "count": "8 YSW", "reel_turns": 300, "hanks": 200,
            "per_person": 1,
        },
        {
            "reel_circumference": "54 in", "positions": 24, "reel_speed": "100 rpm",
            "change_time": "10 min", "count": "8 YSW", "wanted_hank_length": "560 yd",
            "shrinkage": "2 %", "hanks": 200, "reels": 2, "per_person": 1,
        },
    ],
    "ring_frame": [
        {
            "spindles": 100, "spindle_speed": "5000 rpm", "twist": "300 turns/m",
            "count": "150 tex", "efficiency": "85 %", "draft": 12, "full_diameter": "46 mm",
            "empty_diameter": "25 mm", "yarn_mass": "30 kg", "package_mass": "150 g",
        },
        {
            "spindles": 120, "spindle_speed": "6000 rpm", "twist": "12 tpi", "count": "20 worsted",
            "efficiency": "88 %", "hank_length": "560 yd", "yarn_mass": "100 lb", "loss": "3 %",
            "package_length": "3000 yd",
        },
        {
            "spindles": 100, "spindle_speed": "5000 rpm", "wanted_twist": "300 turns/m",
            "twist_constant": "10500 turns/m", "twist_wheels": [32, 35, 40], "count": "150 tex",
            "efficiency": "85 %", "yarn_mass": "30 kg", "break_rate": 40, "patrol_time": "6 min",
            "piecing_time": "20 s", "work_load": "70 %",
        },
        {
            "spindles": 100, "spindle_speed": "5000 rpm", "twist": "300 turns/m",
            "count": "150 tex", "efficiency": "85 %", "full_diameter": "46 mm",
            "empty_diameter": "25 mm", "yarn_mass": "30 kg", "per_person": 200,
        },
    ],
    "scour_liquor": [
        {
            "mass": "20 kg", "liquor_ratio": 30, "soap_concentration": "10 g/L",
            "alkali_concentration": "2 g/L", "pickup": "60 %", "rinses": 2, "temperature": "50 °C",
        },
        {
            "mass": "20 kg", "liquor_ratio": 30, "soap_concentration": "10 g/L", "pickup": "60 %",
            "rinses": 2, "temperature": "50 °C", "regain": "16 %", "liquor_density": "1.01 kg/L",
            "rinse_ratio": 15,
        },
    ],
    "setts": [
        {
            "weave": "2/2 twill", "warp_count": "100 tex", "weft_count": "140 tex",
            "yarn_factor": 0.95, "specific_volume": "1.6 cm³/g", "wanted_warp_sett": "9 ends/cm",
            "wanted_weft_sett": "8 picks/cm",
        },
        {"weave": "plain", "warp_count": "100 tex", "wanted_warp_sett": "9 ends/cm"},
    ],
    "skein_count": [
        {
            "masses": ["13.05 g", "12.91 g", "13.22 g", "13.10 g"], "skein_length": "100 m",
            "option": "oven-dry plus regain", "allowance": "17 %", "stretch": "0.4 %",
            "confidence": "90 %",
        },
    ],
    "test_wash": [
        {
            "greasy_masses": ["200 g", "198 g", "205 g"],
            "washed_masses": ["124 g", "119 g", "130 g"], "regain": "16 %", "fat": "0.8 %",
            "vegetable": "1 %", "confidence": "90 %", "balance_error": "0.5 g",
        },
    ],
    "to_weave": [
        {
            "processes": [
                (
                    "wash",
                    {
                        "width_shrinkage": "22 %", "length_shrinkage": "18 %", "mass_loss": "3 %",
                        "warp_yarn_shrinkage": "12 %", "weft_yarn_shrinkage": "15 %",
                    },
                ),
            ],
            "width": "1.5 m", "length": "40 m", "warp_sett": "8 ends/cm", "weft_sett": "7 picks/cm",
            "warp_count": "150 tex", "weft_count": "160 tex", "warp_crimp": "10 %",
            "weft_crimp": "12 %", "mass_per_area": "300 g/m²", "loom_width": "1.8 m",
        },
        {
            "processes": [{"name": "wash", "width_shrinkage": "22 %", "length_shrinkage": "18 %"}],
            "width": "1.5 m", "length": "40 m", "piece_mass": "22 kg",
        },
    ],
    "twister": [
        {
            "spindles": 20, "spindle_speed": "2400 rpm", "twist": "130 turns/m", "ends": 2,
            "contraction": "3 %", "resultant_count": "310 tex", "efficiency": "80 %",
            "yarn_mass": "30 kg", "loss": "1 %", "package_mass": "1.1 kg",
        },
        {
            "spindles": 60, "spindle_speed": "3000 rpm", "twist": "4 tpi",
            "resultant_count": "8 YSW", "efficiency": "75 %", "break_rate": 20,
            "patrol_time": "5 min",
        },
        {
            "spindles": 60, "spindle_speed": "9000 rpm", "spindle_type": "two-for-one",
            "wanted_twist": "320 turns/m", "twist_constant": "12000 turns/m",
            "twist_wheels": [34, 36, 38, 40], "resultant_count": "60 tex", "efficiency": "85 %",
            "yarn_mass": "40 kg", "package_length": "9000 m",
        },
        {
            "spindles": 40, "spindle_speed": "2400 rpm", "twist": "130 turns/m", "ends": 2,
            "resultant_count": "310 tex", "efficiency": "80 %", "yarn_mass": "30 kg",
            "package_mass": "1.1 kg", "per_person": 80,
        },
        {
            "spindles": 60, "spindle_speed": "3000 rpm", "twist": "4 tpi",
            "resultant_count": "8 YSW", "efficiency": "75 %", "break_rate": 20,
            "piecing_time": "20 s", "work_load": "70 %",
        },
    ],
    "warping": [
        {
            "ends": 864, "creel": 144, "warp_length": "60 m", "warping_speed": "40 m/min",
            "change_time": "20 min", "warp_width": "0.92 m", "warp_count": "310 tex",
            "bobbin_mass": "1.2 kg", "beaming_speed": "20 m/min", "set_up_time": "2 h",
        },
        {
            "ends": 500, "creel": 120, "warp_length": "70 yd", "warping_speed": "45 yd/min",
            "change_time": "15 min", "stretch": "1 %", "machines": 2,
        },
        {
            "ends": 864, "creel": 144, "warp_length": "60 m", "warping_speed": "40 m/min",
            "change_time": "20 min", "warp_width": "36.5 in", "per_person": 2,
        },
    ],
    "washes": [
        {
            "mass": "20 kg", "fat_before": "20 %",
            "washes": [
                {
                    "liquor_ratio": 30, "soap_concentration": "10 g/L", "temperature": "50 °C",
                    "removed_share": "80 %",
                },
                {
                    "liquor_ratio": 25, "soap_concentration": "4 g/L",
                    "alkali_concentration": "1 g/L", "temperature": "45 °C",
                    "removed_share": "75 %",
                },
            ],
        },
    ],
    "week": [
        {
            "lots": {
                "Elm": {"colour": "black", "times": {"card": "10 h", "mule": "20 h"}},
                "Ash": {"colour": "white", "times": {"card": "6 h", "mule": "14 h"}},
            },
            "machines": {
                "card": {"open_time": "40 h", "clean_time": "2 h"},
                "mule": {"open_time": "40 h", "clean_time": "1 h"},
            },
        },
        {
            "lots": [
                {
                    "name": "Elm", "colour": "black", "lightness": "0 %",
                    "times": [
                        {"machine": "card", "time": "10 h"}, {"machine": "mule", "time": "20 h"},
                    ],
                },
                {
                    "name": "Ash", "colour": "white", "lightness": "100 %",
                    "times": [
                        {"machine": "card", "time": "6 h"}, {"machine": "mule", "time": "14 h"},
                    ],
                },
            ],
            "machines": [
                {
                    "name": "card", "open_time": "40 h", "clean_time_to_darker": "1 h",
                    "clean_time_to_lighter": "3 h", "people": 1,
                },
                {
                    "name": "mule", "open_time": "40 h", "clean_time": "1 h", "colour": "grey",
                    "lightness": "50 %",
                    "changes": [
                        {"colour_before": "white", "colour_after": "black", "clean_time": "0.5 h"},
                    ],
                },
            ],
            "try_orders": True, "order": "light to dark",
        },
    ],
    "will_spin": [
        {
            "fibre_diameter": "19 µm", "diameter_cv": "21 %", "count": "36 tex",
            "system": "worsted", "staple": "90 mm", "roller_setting": "110 mm",
        },
    ],
    "winder": [
        {
            "drums": 12, "winding_speed": "300 m/min", "count": "310 tex", "efficiency": "70 %",
            "yarn_mass": "30 kg", "package_mass": "1.2 kg", "bobbin_mass": "110 g",
            "time_allowed": "1 h",
        },
        {
            "drums": 10, "winding_speed": "250 yd/min", "count": "16 YSW", "efficiency": "65 %",
            "yarn_mass": "60 lb", "package_length": "4000 yd", "hank_length": "1600 yd",
            "per_person": 8,
        },
        {
            "drums": 12, "winding_speed": "300 m/min", "count": "310 tex", "efficiency": "70 %",
            "yarn_mass": "30 kg", "loss": "1 %", "package_mass": "1.2 kg", "bobbin_mass": "110 g",
        },
    ],
    "wraps": [
        {"count": "16 YSW"},
    ],
}  # fmt: skip
