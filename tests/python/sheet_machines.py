"""Calls of machines at work, and what is changed in them: cases for the tests of workbooks."""

from typing import Any

Case = tuple[str, dict[str, Any], dict[str, Any]]

MACHINES: dict[str, Case] = {
    "loom by stops": (
        "loom_run",
        {
            "speed": "90 picks/min",
            "picks": "4.6 picks/cm",
            "stops": "6 /h",
            "stop_time": "2 min",
            "width": "1.6 m",
            "weft": "310 tex",
            "length": "60 m",
            "looms": 4,
            "attention": "1 min",
            "load": "70 %",
        },
        {"stops": "9 /h", "picks": "5 picks/cm", "length": "80 m", "load": "60 %"},
    ),
    "loom by stops in picks": (
        "loom_run",
        {
            "speed": "100 picks/min",
            "picks": "12 picks/in",
            "stops_of_picks": 90,
            "stop_time": "1.5 min",
            "length": "70 yd",
        },
        {"picks": "14 picks/in", "stops_of_picks": 120, "length": "60 yd"},
    ),
    "loom of known efficiency": (
        "loom_run",
        {
            "speed": "85 picks/min",
            "picks": "18 picks/in",
            "efficiency": "75 %",
            "looms": 6,
            "length": "90 yd",
            "per_person": 4,
        },
        {"efficiency": "70 %", "length": "100 yd", "per_person": 2},
    ),
    "cloth": (
        "cloth_run",
        {"length": "60 m", "speed": "8 m/min", "passages": 4, "change": "10 min"},
        {"length": "75 m", "passages": 3, "change": "12 min"},
    ),
    "cloth in yards": (
        "cloth_run",
        {"length": "66 yd", "speed": "9 yd/min", "machines": 2, "per_person": 1},
        {"length": "80 yd", "speed": "8 yd/min", "machines": 3},
    ),
    "loads": (
        "batch_run",
        {"mass": "40 kg", "capacity": "12 kg", "running": "45 min", "change": "15 min"},
        {"mass": "49 kg", "running": "50 min", "change": "10 min"},
    ),
    "loads in pounds": (
        "batch_run",
        {"mass": "90 lb", "capacity": "25 lb", "running": "40 min", "waste": "2 %", "machines": 2},
        {"mass": "101 lb", "waste": "3 %"},
    ),
    "dryer": (
        "dryer_run",
        {"mass": "40 kg", "before": "60 %", "after": "16 %", "evaporation": "15 kg/h"},
        {"mass": "44 kg", "before": "55 %", "after": "14 %", "efficiency": "90 %"},
    ),
    "dryer in pounds": (
        "dryer_run",
        {"mass": "90 lb", "before": "50 %", "after": "17 %", "evaporation": "30 lb/h"},
        {"mass": "70 lb", "before": "45 %", "evaporation": "28 lb/h"},
    ),
}
