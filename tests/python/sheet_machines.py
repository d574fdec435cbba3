"""Calls of machines at work, and what is changed in them: cases for the tests of workbooks."""

from typing import Any

Case = tuple[str, dict[str, Any], dict[str, Any]]

MACHINES: dict[str, Case] = {
    "loom by stops": (
        "loom",
        {
            "loom_speed": "90 picks/min",
            "weft_sett": "4.6 picks/cm",
            "stop_rate": "6 /h",
            "stop_time": "2 min",
            "reed_width": "1.6 m",
            "weft_count": "310 tex",
            "cloth_length": "60 m",
            "looms": 4,
            "attention_time": "1 min",
            "work_load": "70 %",
        },
        {
            "stop_rate": "9 /h",
            "weft_sett": "5 picks/cm",
            "cloth_length": "80 m",
            "work_load": "60 %",
        },
    ),
    "loom by stops in picks": (
        "loom",
        {
            "loom_speed": "100 picks/min",
            "weft_sett": "12 picks/in",
            "stops_per_100000_picks": 90,
            "stop_time": "1.5 min",
            "cloth_length": "70 yd",
        },
        {"weft_sett": "14 picks/in", "stops_per_100000_picks": 120, "cloth_length": "60 yd"},
    ),
    "loom of known efficiency": (
        "loom",
        {
            "loom_speed": "85 picks/min",
            "weft_sett": "18 picks/in",
            "efficiency": "75 %",
            "looms": 6,
            "cloth_length": "90 yd",
            "per_person": 4,
        },
        {"efficiency": "70 %", "cloth_length": "100 yd", "per_person": 2},
    ),
    "cloth": (
        "passages",
        {"cloth_length": "60 m", "cloth_speed": "8 m/min", "passages": 4, "change_time": "10 min"},
        {"cloth_length": "75 m", "passages": 3, "change_time": "12 min"},
    ),
    "cloth in yards": (
        "passages",
        {"cloth_length": "66 yd", "cloth_speed": "9 yd/min", "machines": 2, "per_person": 1},
        {"cloth_length": "80 yd", "cloth_speed": "8 yd/min", "machines": 3},
    ),
    "loads": (
        "batches",
        {
            "goods_mass": "40 kg",
            "capacity": "12 kg",
            "time_per_load": "45 min",
            "change_time": "15 min",
        },
        {"goods_mass": "49 kg", "time_per_load": "50 min", "change_time": "10 min"},
    ),
    "loads in pounds": (
        "batches",
        {
            "goods_mass": "90 lb",
            "capacity": "25 lb",
            "time_per_load": "40 min",
            "loss": "2 %",
            "machines": 2,
        },
        {"goods_mass": "101 lb", "loss": "3 %"},
    ),
    "dryer": (
        "dryer",
        {
            "oven_dry_mass": "40 kg",
            "regain_before": "60 %",
            "regain_after": "16 %",
            "evaporation_rate": "15 kg/h",
        },
        {
            "oven_dry_mass": "44 kg",
            "regain_before": "55 %",
            "regain_after": "14 %",
            "efficiency": "90 %",
        },
    ),
    "dryer in pounds": (
        "dryer",
        {
            "oven_dry_mass": "90 lb",
            "regain_before": "50 %",
            "regain_after": "17 %",
            "evaporation_rate": "30 lb/h",
        },
        {"oven_dry_mass": "70 lb", "regain_before": "45 %", "evaporation_rate": "28 lb/h"},
    ),
    "fringes to leave": (
        "fringe_twisting",
        {
            "ends": 812,
            "strand_ends": 4,
            "contraction": "20 %",
            "knot_length": "3 cm",
            "wanted_fringe": "10 cm",
            "pieces": 12,
            "width": "1.40 m",
            "warp_count": "257 tex",
            "round_time": "1 min",
            "tassels_at_once": 4,
            "people": 2,
        },
        {
            "ends": 700,
            "contraction": "25 %",
            "wanted_fringe": "12 cm",
            "pieces": 9,
            "tassels_at_once": 3,
        },
    ),
    "fringes in inches": (
        "fringe_twisting",
        {
            "ends": 240,
            "strand_ends": 3,
            "strands": 3,
            "contraction": "15 %",
            "fringe": "5 in",
            "knot_length": "0.5 in",
        },
        {"ends": 260, "contraction": "18 %", "fringe": "6 in", "knot_length": "1 in"},
    ),
}
