"""What the workbooks of formulas are tried with: both sides of bends, values possible together."""

# Formulas with a bend in them: inputs on either side of it, and the answer worked by hand.
BOTH_SIDES = {
    # 2 × (0.25 × 0.2/0.05)² = 2 as they are; 2 × (0.25 × 0.2/0.04)² = 3.125 rounded up.
    "layers_for_deviation": [
        ({"component_share": "50 %", "share_sd": "5 %", "layer_cv": "20 %"}, 2.0),
        ({"component_share": "50 %", "share_sd": "4 %", "layer_cv": "20 %"}, 4.0),
    ],
    "charge_for_mass": [
        # 54 is below the least charge of 90; 60 kg at 18 are above it.
        ({"mass": "3 kg", "tariff": "18 /kg", "minimum_charge": "90"}, 90.0),
        ({"mass": "60 kg", "tariff": "18 /kg", "minimum_charge": "90"}, 1080.0),
    ],
    "charge_for_rejects": [
        # 10 % are free; of 25 % in 80 kg, 10 % are charged: 8 kg.
        (
            {
                "mass_in": "80 kg",
                "rejects": "10 %",
                "free_rejects": "15 %",
                "reject_charge": "2 /kg",
            },
            0.0,
        ),
        (
            {
                "mass_in": "80 kg",
                "rejects": "25 %",
                "free_rejects": "15 %",
                "reject_charge": "2 /kg",
            },
            16.0,
        ),
    ],
    "lot_surplus": [
        # The machines keep 2 kg: of 3 kg nothing comes out, of 100 kg 48 kg.
        (
            {
                "mass_in": mass,
                "cost_per_mass": "10 /kg",
                "fixed_cost": "200",
                "loss": "50 %",
                "held_up": "2 kg",
                "price_per_mass": "30 /kg",
            },
            surplus,
        )
        for mass, surplus in (("3 kg", -230.0), ("100 kg", 240.0))
    ],
    "full_pieces": [
        # 33 times 12 is 396; 34 times 12 is 408.
        ({"mass": "400 kg", "mass_per_piece": "12 kg"}, 33.0),
        ({"mass": "408 kg", "mass_per_piece": "12 kg"}, 34.0),
    ],
    # 14 above and 7 below, of a standard deviation of 7.
    "outlier_ratio": [
        ({"reading": "119", "mean": "105", "sd": "7"}, 2.0),
        ({"reading": "98", "mean": "105", "sd": "7"}, 1.0),
    ],
    # 10 to the upper end, 5 to the lower, of three times 5.
    "capability_to_nearest": [
        ({"mean": "155", "upper": "165", "lower": "135", "sd": "5"}, 2 / 3),
        ({"mean": "140", "upper": "165", "lower": "135", "sd": "5"}, 1 / 3),
    ],
    # 9 as they are, 9.61 rounded up.
    "readings_for_error": [
        ({"sd_multiple": "2", "sd": "3", "error": "2"}, 9.0),
        ({"sd_multiple": "2", "sd": "3.1", "error": "2"}, 10.0),
    ],
    # 16 as they are, 11.1 rounded up.
    "readings_for_variation": [
        ({"sd_multiple": "2", "cv": "10 %", "relative_error": "5 %"}, 16.0),
        ({"sd_multiple": "2", "cv": "10 %", "relative_error": "6 %"}, 12.0),
    ],
    # 100 as they are, 4.4 rounded up.
    "readings_from_limits": [
        ({"readings": "36", "half_width": "5", "wanted_half_width": "3"}, 100.0),
        ({"readings": "10", "half_width": "2", "wanted_half_width": "3"}, 5.0),
    ],
    "clean_yield_customs": [
        # 0.5 % of 60 % and 60 % of 2 % make 1.5 %; 15 % of 60 % would be 9 %.
        ({"clean_content": "60 %", "vegetable_on_greasy": "2 %"}, 0.585),
        # 60 % of 20 % alone is 12 %; 15 % of 60 % is 9 %.
        ({"clean_content": "60 %", "vegetable_on_greasy": "20 %"}, 0.51),
    ],
    "fractional_cover": [
        # 12 × 0.5 mm fill 6 mm of a centimetre; 25 would fill 12.5 mm, and there are 10.
        ({"sett": "12 threads/cm", "yarn_diameter": "0.5 mm"}, 0.6),
        ({"sett": "25 threads/cm", "yarn_diameter": "0.5 mm"}, 1.0),
    ],
    "fractional_cover_of_factor": [
        # A gram that fills π/4 × 1 cm³ lies in threads that touch at √1000 of the SI form.
        ({"cover_factor": "15.8113883 K_SI", "specific_volume": "0.785398163397448 cm³/g"}, 0.5),
        ({"cover_factor": "29 K_SI", "specific_volume": "1.2 cm³/g"}, 1.0),
    ],
    "knots_in_package": [
        # Less than a bobbin has no knot; eight bobbins have seven.
        ({"package_mass": "0.1 kg", "bobbin_mass": "0.15 kg"}, 0.0),
        ({"package_mass": "1.2 kg", "bobbin_mass": "0.15 kg"}, 7.0),
    ],
    "packages_for_mass": [
        # Three are just filled; a gram more begins a fourth.
        ({"yarn_mass": "0.9 kg", "package_mass": "0.3 kg"}, 3.0),
        ({"yarn_mass": "0.901 kg", "package_mass": "0.3 kg"}, 4.0),
    ],
    "packages_for_length": [
        # Three pirns hold just 900 m; for a metre more a fourth is wound.
        ({"yarn_length": "900 m", "package_length": "300 m"}, 3.0),
        ({"yarn_length": "901 m", "package_length": "300 m"}, 4.0),
    ],
    "people_needed": [
        # Three weavers mind just twelve looms; the thirteenth wants a fourth.
        ({"machines": "12", "per_person": "4"}, 3.0),
        ({"machines": "13", "per_person": "4"}, 4.0),
    ],
    "doffs": [
        # Three doffs of 120 cops of 100 g are 36 kg; a gram more begins a fourth.
        ({"yarn_mass": "36 kg", "spindles": "120", "package_mass": "100 g"}, 3.0),
        ({"yarn_mass": "36.001 kg", "spindles": "120", "package_mass": "100 g"}, 4.0),
    ],
    "reel_doffs": [
        ({"hanks": "60", "positions": "20"}, 3.0),
        ({"hanks": "61", "positions": "20"}, 4.0),
    ],
    "full_packages_in_step": [
        # Three doffs of 120 are just full; for a gram less two are, and no package of the third.
        ({"yarn_mass": "36 kg", "spindles": "120", "package_mass": "100 g"}, 360.0),
        ({"yarn_mass": "35.999 kg", "spindles": "120", "package_mass": "100 g"}, 240.0),
    ],
    "full_packages": [
        # Three cones are just full; for a gram less the third is not.
        ({"yarn_mass": "3.6 kg", "package_mass": "1.2 kg"}, 3.0),
        ({"yarn_mass": "3.599 kg", "package_mass": "1.2 kg"}, 2.0),
    ],
    "loads_for_mass": [
        ({"goods_mass": "36 kg", "load_mass": "12 kg"}, 3.0),
        ({"goods_mass": "36.1 kg", "load_mass": "12 kg"}, 4.0),
    ],
    "pieces_from_mass": [
        ({"yarn_mass": "10 kg", "fixed_mass": "2 kg", "mass_per_piece": "0.5 kg"}, 16.0),
        ({"yarn_mass": "1 kg", "fixed_mass": "2 kg", "mass_per_piece": "0.5 kg"}, 0.0),
    ],
    "reel_turns": [
        # 200 turns of 1.5 m are 300 m; for a metre more another turn is reeled.
        ({"hank_length": "300 m", "reel_circumference": "1.5 m", "shrinkage": "0 %"}, 200.0),
        ({"hank_length": "301 m", "reel_circumference": "1.5 m", "shrinkage": "0 %"}, 201.0),
    ],
    "reel_turns_for_mass": [
        # 222 turns of 1.5 m of 300 tex are 99.9 g; for a tenth more another turn is reeled.
        ({"hank_mass": "99.9 g", "reel_circumference": "1.5 m", "count": "300 tex"}, 222.0),
        ({"hank_mass": "100 g", "reel_circumference": "1.5 m", "count": "300 tex"}, 223.0),
    ],
    "yarn_for_pieces": [
        # No thrums where nothing is woven.
        ({"pieces": "0", "fixed_mass": "2 kg", "mass_per_piece": "0.5 kg"}, 0.0),
        ({"pieces": "3", "fixed_mass": "2 kg", "mass_per_piece": "0.5 kg"}, 3.5),
    ],
    "thickness_by_rule": [
        # Waves of 1.4 × 1 mm × √0.04 = 0.28 mm and 0.7 − 0.28 mm: the crown of the weft is higher.
        (
            {
                "weft_sett": "10 threads/cm",
                "warp_crimp": "4 %",
                "warp_diameter": "0.3 mm",
                "weft_diameter": "0.4 mm",
                "rule_factor": "1.4",
            },
            0.82,
        ),
        # 1.4 × √0.16 = 0.56 mm: that of the warp is.
        (
            {
                "weft_sett": "10 threads/cm",
                "warp_crimp": "16 %",
                "warp_diameter": "0.3 mm",
                "weft_diameter": "0.4 mm",
                "rule_factor": "1.4",
            },
            0.86,
        ),
    ],
    "warp_sections": [
        # Four sections of 150 ends are 600; for an end more a fifth is made.
        ({"ends": "600", "ends_per_section": "150"}, 4.0),
        ({"ends": "601", "ends_per_section": "150"}, 5.0),
    ],
    "ends_for_reed": [
        # Just full and just not: 12 dents/cm × 50 cm = 600 dents, 12 × 49.9 = 598.8 dents.
        ({"reed": "12 dents/cm", "ends_per_dent": "2", "reed_width": "50 cm"}, 1200.0),
        ({"reed": "12 dents/cm", "ends_per_dent": "2", "reed_width": "49.9 cm"}, 1196.0),
    ],
    "full_hanks": [
        # A hundred hanks of 330 m of 300 tex weigh 9.9 kg; for a gram less there are 99.
        ({"yarn_mass": "9.9 kg", "count": "300 tex", "hank_length": "330 m"}, 100.0),
        ({"yarn_mass": "9.899 kg", "count": "300 tex", "hank_length": "330 m"}, 99.0),
    ],
}


# Narrower than usual, where usual values are not possible together.
TOGETHER = {
    # Shares of a whole are drawn as what they are, not by decades: they sum to 1.
    "count_for_share": {"shares": (0.0, 1.0)},
    "capability_to_nearest": {"upper": (500.0, 1000.0), "lower": (0.0, 400.0)},
    "break_even_lot_with_hold_up": {"cost_per_mass": (0.0, 10.0), "price_per_mass": (50.0, 100.0)},
    "exhaustion_from_baths": {
        "concentration_before": (10.0, 50.0),
        "volume_before": (1000.0, 2000.0),
        "concentration_after": (0.0, 5.0),
        "volume_after": (500.0, 1000.0),
    },
    "water_to_fill": {
        "liquor_volume": (50_000.0, 100_000.0),
        "volumes_in": (0.0, 5000.0),
    },
    "regain_between_points": {
        "humidity": (0.3, 0.4),
        "humidity_below": (0.0, 0.3),
        "regain_below": (0.0, 0.1),
        "humidity_above": (0.4, 1.0),
        "regain_above": (0.15, 0.4),
    },
    "humidity_between_points": {
        "regain": (0.1, 0.15),
        "humidity_below": (0.0, 0.3),
        "regain_below": (0.0, 0.1),
        "humidity_above": (0.4, 1.0),
        "regain_above": (0.15, 0.4),
    },
    "regain_from_masses": {
        "sample_mass": (1.0, 1.5),
        "dry_sample_mass": (0.5, 1.0),
    },
    "regain_of_remainder": {
        "blend_regain": (0.1, 0.2),
        "others_regain": (0.0, 0.05),
    },
    "component_share": {"fed_ends": (20.0, 100.0)},
    "efficiency_from_output": {"made_amount": (0.1, 100.0), "calculated_amount": (100.0, 1e6)},
    "smallest_lot": {"allowed_loss": (0.21, 0.5)},
    "spindle_speed_from_travellers": {"small_diameter": (0.01, 0.029)},
    "twist_from_travellers": {
        "small_diameter": (0.01, 0.029),
        "speed_at_large": (12000.0, 25000.0),
        "speed_at_small": (500.0, 11999.0),
    },
    "share_from_number": {"affected": (0.0, 10.0), "tested": (20.0, 10000.0)},
    "capability_ratio": {"upper": (500000.0, 1000000.0), "lower": (0.0, 400000.0)},
    "variation_limit": {"readings": (2.0, 12.0), "chi_square": (3.0, 30.0)},
    "jam_weft_sett": {
        "warp_sett": (20.0, 30.0),
        "warp_diameter": (0.3, 0.5),
        "weft_diameter": (0.3, 0.5),
    },
    "jam_weft_sett_of_weave": {
        "warp_sett": (20.0, 24.0),
        "warp_diameter": (0.4, 0.45),
        "weft_diameter": (0.4, 0.45),
        "weft_float": (1.0, 1.5),
    },
    "added_irregularity": {
        "cv_before": (0.0, 0.1),
        "cv_after": (0.15, 0.5),
    },
    "mass_after_loss": {
        "held_up": (0.0, 0.08),
    },
    "contraction_from_counts": {
        "nominal_count": (40.0, 60.0),
        "resultant_count": (60.0, 80.0),
    },
    "crimp_angle": {
        "modular_length": (1.1, 1.2),
        "spacing": (0.9, 1.05),
        "diameter_sum": (0.3, 0.8),
    },
    "crimp_height": {
        "modular_length": (1.1, 1.2),
        "spacing": (0.9, 1.05),
        "diameter_sum": (0.3, 0.8),
    },
    "diameters_in_cloth": {
        "warp_sett": (8.0, 12.0),
        "weft_sett": (8.0, 12.0),
        "warp_crimp": (0.03, 0.1),
        "weft_crimp": (0.03, 0.1),
    },
    "warp_sett_after_stretch": {
        "warp_sett_before": (8.0, 10.0),
        "weft_sett_before": (9.5, 10.0),
        "warp_crimp_before": (0.02, 0.05),
        "warp_diameter": (0.3, 0.38),
        "weft_diameter": (0.3, 0.38),
        "weft_sett_after": (10.0, 10.5),
    },
    "jam_angle": {
        "spacing": (0.5, 0.7),
        "diameter_sum": (0.8, 1.0),
    },
    "jam_crimp": {
        "spacing": (0.5, 0.7),
        "diameter_sum": (0.8, 1.0),
    },
    "jam_spacing": {
        "spacing": (0.5, 0.7),
        "diameter_sum": (0.8, 1.0),
    },
    "plain_thickness": {
        "weft_sett": (8.0, 12.0),
        "warp_crimp": (0.01, 0.06),
        "warp_diameter": (0.3, 0.38),
        "weft_diameter": (0.3, 0.38),
    },
    "racetrack_height_by_rule": {
        "spacing": (0.8, 1.2),
        "thread_width": (0.3, 0.5),
        "thread_thickness": (0.2, 0.3),
    },
    "racetrack_spacing": {
        "spacing": (0.8, 1.2),
        "thread_width": (0.3, 0.5),
        "thread_thickness": (0.2, 0.3),
    },
    "racetrack_weft_crimp": {
        "warp_sett": (8.0, 12.0),
        "weft_sett": (8.0, 12.0),
        "warp_crimp": (0.01, 0.05),
        "warp_thread_width": (0.35, 0.45),
        "warp_thread_thickness": (0.28, 0.32),
        "weft_thread_width": (0.35, 0.45),
        "weft_thread_thickness": (0.28, 0.32),
    },
    "realisation": {
        "mass_out": (1.0, 4.0),
        "mass_in": (5.0, 9.0),
    },
    "thickness_by_rule": {
        "weft_sett": (8.0, 12.0),
        "warp_crimp": (0.01, 0.06),
        "warp_diameter": (0.3, 0.38),
        "weft_diameter": (0.3, 0.38),
    },
    "weft_crimp": {
        "warp_sett": (8.0, 12.0),
        "weft_sett": (8.0, 12.0),
        "warp_crimp": (0.01, 0.06),
        "warp_diameter": (0.3, 0.38),
        "weft_diameter": (0.3, 0.38),
    },
    "weft_crimp_by_rule": {
        "warp_sett": (8.0, 12.0),
        "weft_sett": (8.0, 12.0),
        "warp_crimp": (0.01, 0.06),
        "warp_diameter": (0.3, 0.38),
        "weft_diameter": (0.3, 0.38),
    },
}
