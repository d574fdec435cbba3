//! Machines that make and handle yarn: what goes in comes out, whatever the numbers; numbers in print;
//! refusals.

use hankwise::calculation::{Calculation, Item, Output, Solved, Value};
use hankwise::mill;
use hankwise::quantity::{Amount, Kind, unit};
use proptest::prelude::*;

/// What a machine answers for values in the base units of their kinds, and for words.
fn run(machine: &'static Calculation, values: &[(&str, f64)], words: &[(&str, &str)]) -> Solved {
    let mut given = machine.blank().with_texts(words).unwrap();
    for (name, x) in values {
        let Item::One(input) = given.item(name).unwrap() else { panic!("{name} is no quantity") };
        let is_share = input.kind.family() == Kind::Fraction;
        let base = if is_share { "fraction" } else { input.kind.base() };
        let amount = Amount { number: *x, unit: unit(base, Some(input.kind)).unwrap() };
        given.set(name, Value::One(amount, None)).unwrap();
    }
    machine.solve(given).unwrap_or_else(|e| panic!("{values:?}: {e}"))
}

fn refused(machine: &'static Calculation, given: &[(&str, &str)]) -> String {
    machine.solve_texts(given).unwrap_err().to_string()
}

fn of(result: &Solved, name: &str) -> f64 {
    result.find(name).unwrap_or_else(|e| panic!("{e}")).value
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-9)
}

/// Fibre in is fibre out and waste; full packages and what is left over are the lot; output for the time
/// is the lot.
fn holds(result: &Solved, mass: f64, loss: f64, package: f64) -> Result<(), TestCaseError> {
    prop_assert!(near(of(result, "mass_in"), mass + of(result, "mass_lost")));
    prop_assert!(near(of(result, "mass_lost"), loss * of(result, "mass_in")));
    prop_assert!(near(of(result, "output") * of(result, "time"), mass));
    let (full, rest) = (of(result, "packages"), of(result, "left_over"));
    prop_assert!(near(full * package + rest, mass));
    prop_assert!(full.fract() == 0.0);
    Ok(())
}

/// Spindles in step: the packages of a doff are all full, or none.
fn doffs_hold(result: &Solved, mass: f64, spindles: f64, package: f64) -> bool {
    let (doffs, each) = (of(result, "doffs"), spindles * package);
    let full_doffs = of(result, "packages") / spindles;
    let in_step = full_doffs.fract() == 0.0 && [0.0, 1.0].contains(&(doffs - full_doffs));
    in_step
        && of(result, "left_over") < each * (1.0 + 1e-5)
        && doffs.fract() == 0.0
        && doffs * each >= mass * (1.0 - 1e-5)
        && (doffs - 1.0) * each <= mass * (1.0 + 1e-5)
        && near(of(result, "doff_time") * of(result, "output"), each)
}

proptest! {
    #[test]
    fn the_mule_loses_nothing(
        spindles in 20_u16..600, travel in 1.5..2.3, let_in in 0.0..0.15, cycle in 12.0..40.0,
        count in 50.0..800.0, draft in 1.1..1.6, efficiency in 0.5..1.0, mass in 1.0..500.0,
        loss in 0.0..0.2, cop in 0.03..0.5, breaks in 5.0..300.0, patrol in 0.05..0.8,
    ) {
        let k = f64::from(spindles);
        let mule = run(&mill::MULE, &[
            ("spindles", k), ("travel", travel), ("let_in", let_in), ("cycle", cycle / 3600.0),
            ("count", count), ("wanted_draft", draft), ("efficiency", efficiency), ("yarn_mass", mass),
            ("loss", loss), ("package_mass", cop), ("break_rate", breaks), ("patrol_time", patrol),
        ], &[]);
        holds(&mule, mass, loss, cop)?;
        prop_assert!(doffs_hold(&mule, mass, k, cop));
        // A draw takes in as much fibre as slubbing as it winds on as yarn.
        let taken = of(&mule, "delivered_length") * of(&mule, "slubbing_count");
        prop_assert!(near(taken, of(&mule, "wound_length") * count));
        // The draws of all spindles are the yarn of the lot.
        prop_assert!(near(of(&mule, "draws") * k * of(&mule, "wound_length"), of(&mule, "yarn_length")));
        prop_assert!(near(of(&mule, "yarn_length") * count * 1e-6, mass));
        // Draws in a minute, over the running minutes, are the draws.
        let run = of(&mule, "draw_rate") * 60.0 * of(&mule, "time") * efficiency;
        prop_assert!(near(run, of(&mule, "draws")));
        prop_assert!(near(of(&mule, "idle_spindles"), 0.75e-3 * breaks * patrol * k));
        prop_assert!(near(of(&mule, "breaks_per_hour") * 60.0, breaks / 1000.0 * k));
    }

    #[test]
    fn the_frame_loses_nothing(
        spindles in 4_u16..1000, speed in 3000.0..15000.0, twist in 80.0..1500.0,
        count in 10.0..500.0, draft in 1.1..40.0, efficiency in 0.5..1.0, mass in 1.0..500.0,
        loss in 0.0..0.2, package in 0.05..0.6, empty in 0.015..0.04, more in 0.005..0.1,
    ) {
        let k = f64::from(spindles);
        let frame = run(&mill::RING_FRAME, &[
            ("spindles", k), ("spindle_speed", speed), ("twist", twist), ("count", count), ("draft", draft),
            ("efficiency", efficiency), ("yarn_mass", mass), ("loss", loss), ("package_mass", package),
            ("empty_diameter", empty), ("full_diameter", empty + more),
            ("hank_length", 840.0 * 0.9144),
        ], &[]);
        holds(&frame, mass, loss, package)?;
        prop_assert!(doffs_hold(&frame, mass, k, package));
        prop_assert!(near(of(&frame, "fed_count"), count * draft));
        // Every turn of the spindle is in the yarn or lost at the traveller.
        let v = of(&frame, "delivery_speed");
        for (twist_on, lag) in [("full_twist", "full_lag"), ("empty_twist", "empty_lag")] {
            prop_assert!(near(of(&frame, twist_on) * v + of(&frame, lag), speed));
        }
        prop_assert!(of(&frame, "twist_step") > 0.0);
        // The old rule with its constant 504 says the same.
        let tpi = twist * 0.0254;
        prop_assert!(near(of(&frame, "hank_rate"), speed * efficiency / (504.0 * tpi)));
    }

    #[test]
    fn the_twister_loses_nothing(
        spindles in 4_u16..600, speed in 1000.0..10000.0, twist in 60.0..1000.0, turns in 1_u8..3,
        count in 20.0..1500.0, ends in 2_u8..6, contraction in -0.02..0.12, efficiency in 0.5..1.0,
        mass in 1.0..500.0, loss in 0.0..0.1, package in 0.1..4.0,
    ) {
        let (k, q, n) = (f64::from(spindles), f64::from(turns), f64::from(ends));
        let spindle = if turns == 2 { "two-for-one" } else { "ordinary" };
        let twister = run(&mill::TWISTER, &[
            ("spindles", k), ("spindle_speed", speed), ("twist", twist), ("resultant_count", count),
            ("ends", n), ("contraction", contraction), ("efficiency", efficiency), ("yarn_mass", mass),
            ("loss", loss), ("package_mass", package),
        ], &[("spindle_type", spindle)]);
        holds(&twister, mass, loss, package)?;
        prop_assert!(doffs_hold(&twister, mass, k, package));
        // The singles weigh what is fed, and their length shrinks to that of the fold.
        let singles = of(&twister, "singles_length");
        prop_assert!(near(singles * of(&twister, "single_count") * 1e-6, of(&twister, "mass_in")));
        let folded = singles / n * (1.0 - contraction) * (1.0 - loss);
        prop_assert!(near(folded, of(&twister, "yarn_length")));
        // All spindles together put in the turns that lie in the yarn.
        let put_in = q * speed * k * efficiency * 60.0 * of(&twister, "time");
        prop_assert!(near(put_in, twist * of(&twister, "yarn_length")));
        prop_assert!(near(of(&twister, "delivery_speed") * k * efficiency, of(&twister, "output_speed")));
    }

    #[test]
    fn the_winder_loses_nothing(
        drums in 1_u16..200, speed in 50.0..1200.0, count in 10.0..2000.0, efficiency in 0.4..1.0,
        mass in 1.0..1000.0, loss in 0.0..0.05, package in 0.2..4.0, cones in 1.0..100.0,
    ) {
        let k = f64::from(drums);
        // Time for that many cones on a drum, so that one at least is full.
        let allowed = cones * package / (60e-6 * speed * efficiency * count);
        let winder = run(&mill::WINDER, &[
            ("drums", k), ("winding_speed", speed), ("count", count), ("efficiency", efficiency),
            ("yarn_mass", mass), ("loss", loss), ("package_mass", package), ("time_allowed", allowed),
            ("hank_length", 512.0),
        ], &[]);
        holds(&winder, mass, loss, package)?;
        prop_assert!(of(&winder, "left_over") < package * (1.0 + 1e-5));
        prop_assert!(near(of(&winder, "package_time") * of(&winder, "output") / k, package));
        let hanks = of(&winder, "hank_rate") * of(&winder, "time") * k;
        prop_assert!(near(hanks * 512.0, of(&winder, "yarn_length")));
        // As many drums as needed wind the lot in the time, and one less does not: cone by cone, each drum
        // as many as it can, the last cone where there is time for it.
        let (needed, each) = (of(&winder, "drums_needed"), of(&winder, "drum_mass"));
        let winds = |drums: f64| {
            let (mut left, mut room) = (mass, false);
            let mut k = 0.0;
            while k < drums {
                let mut time = each;
                while time >= package && left >= package {
                    time -= package;
                    left -= package;
                }
                room |= time >= left * (1.0 - 1e-6);
                k += 1.0;
            }
            left < package && room || left <= 1e-6 * mass
        };
        prop_assert!(winds(needed));
        prop_assert!(needed <= 1.0 || !winds(needed - 1.0));
    }

    #[test]
    fn the_reel_loses_nothing(
        reel in 0.9..2.5, positions in 1_u8..60, speed in 30.0..300.0, change in 0.0..0.4,
        count in 20.0..2000.0, hank in 0.05..0.5, mass in 2.0..200.0, loss in 0.0..0.05, reels in 1_u8..4,
    ) {
        let (p, k) = (f64::from(positions), f64::from(reels));
        let result = run(&mill::REEL, &[
            ("reel_circumference", reel), ("positions", p), ("reel_speed", speed),
            ("change_time", change),
            ("count", count), ("wanted_hank_mass", hank), ("yarn_mass", mass), ("loss", loss), ("reels", k),
        ], &[]);
        let (turns, hanks) = (of(&result, "reel_turns"), of(&result, "hanks"));
        prop_assert!(near(of(&result, "mass_in"), mass + of(&result, "mass_lost")));
        prop_assert!(near(hanks * of(&result, "hank_mass") + of(&result, "left_over"), mass));
        // No hank is light, and none has a turn more than that takes.
        let per_turn = reel * count * 1e-6;
        prop_assert!(turns.fract() == 0.0 && turns * per_turn >= hank * (1.0 - 1e-5));
        prop_assert!((turns - 1.0) * per_turn <= hank * (1.0 + 1e-5));
        let doffs = of(&result, "doffs");
        prop_assert!(doffs * p * k >= hanks && (doffs - 1.0) * p * k < hanks);
        prop_assert!(near(of(&result, "time"), doffs * (turns / speed / 60.0 + change)));
    }

    #[test]
    fn the_warp_has_all_its_ends(
        ends in 10_u16..8000, creel in 4_u16..500, length in 5.0..800.0, speed in 10.0..300.0,
        change in 0.0..1.0, count in 10.0..800.0, package in 0.1..4.0,
    ) {
        let (n, b) = (f64::from(ends), f64::from(creel));
        let warp = run(&mill::WARPING, &[
            ("ends", n), ("creel", b), ("warp_length", length), ("warping_speed", speed), ("change_time", change),
            ("warp_count", count), ("bobbin_mass", package),
        ], &[]);
        let (sections, full) = (of(&warp, "sections"), of(&warp, "section_ends"));
        let last = of(&warp, "last_section_ends");
        prop_assert!(near((sections - 1.0) * full + last, n));
        prop_assert!(last >= 1.0 && last <= full && full <= b);
        prop_assert!(near(of(&warp, "warp_yarn_length"), n * length));
        prop_assert!(near(of(&warp, "warp_mass"), n * length * count * 1e-6));
        let on_creel = of(&warp, "creelings") * package;
        prop_assert!(on_creel >= of(&warp, "mass_per_bobbin") * (1.0 - 1e-5));
        prop_assert!(near(of(&warp, "time"), sections * (length / speed / 60.0 + change)));
    }
}

#[test]
fn machines_meet_what_is_printed() {
    // The drums of a winding problem: 651 yd/min on 46s at 92 % for 1600 lb in a shift of 8 h.
    let winder = mill::WINDER
        .solve_texts(&[
            ("drums", "216"),
            ("winding_speed", "651 yd/min"),
            ("count", "46 Ne"),
            ("efficiency", "92 %"),
            ("yarn_mass", "1600 lb"),
            ("time_allowed", "8 h"),
        ])
        .unwrap();
    assert!((of(&winder, "drum_mass") / 0.453_592_37 - 7.44).abs() < 0.005);
    assert!((of(&winder, "drums_needed") - 216.0).abs() < 0.5, "215.05 and rounded up");
    // The section warp of 864 ends from a creel of 144, over 36½ in.
    let warp = mill::WARPING
        .solve_texts(&[
            ("ends", "864"),
            ("creel", "144"),
            ("warp_length", "500 m"),
            ("warping_speed", "40 m/min"),
            ("change_time", "20 min"),
            ("warp_width", "36.5 in"),
        ])
        .unwrap();
    assert!((of(&warp, "sections") - 6.0).abs() < 1e-12);
    assert!((of(&warp, "warp_sett") * 2.54 - 23.67).abs() < 0.005);
    // Traveller of a ring frame at 15 m/min: 191 turns in a minute behind on 25 mm.
    let frame = mill::RING_FRAME
        .solve_texts(&[
            ("spindles", "100"),
            ("spindle_speed", "13500 rpm"),
            ("twist", "900 turns/m"),
            ("count", "20 tex"),
            ("efficiency", "90 %"),
            ("full_diameter", "46 mm"),
            ("empty_diameter", "25 mm"),
        ])
        .unwrap();
    assert!((of(&frame, "empty_lag") - 191.0).abs() < 0.5);
    assert!((of(&frame, "full_lag") - 104.0).abs() < 0.5);
}

/// 300 m/min at 70 % are 12 600 m/h, 3.906 kg/h of 310 tex: in an hour a drum winds three cones of 1.2 kg and
/// a quarter of one. 30 kg are 25 cones: nine drums, where eight, 31.2 kg, would leave eight cones begun.
/// 29.1 kg are 24 cones and a quarter, for which the eighth drum has just time. A cone of 4 kg takes 61.4 min.
#[test]
fn no_cone_is_shared_between_two_drums() {
    let winder = |more: &[(&'static str, &'static str)]| {
        let machine = [
            ("drums", "12"),
            ("winding_speed", "300 m/min"),
            ("count", "310 tex"),
            ("efficiency", "70 %"),
            ("time_allowed", "1 h"),
        ];
        mill::WINDER.solve_texts(&[&machine[..], more].concat())
    };
    let needed = |mass, cone| {
        let found = winder(&[("yarn_mass", mass), ("package_mass", cone)]).unwrap();
        of(&found, "drums_needed")
    };
    assert!((needed("30 kg", "1.2 kg") - 9.0).abs() < 1e-9);
    assert!((needed("29.1 kg", "1.2 kg") - 8.0).abs() < 1e-9);
    assert!((needed("29.2 kg", "1.2 kg") - 9.0).abs() < 1e-9);
    // Without cones the mass alone decides: 30/3.906 = 7.68.
    let mass_alone = winder(&[("yarn_mass", "30 kg")]).unwrap();
    assert!((of(&mass_alone, "drums_needed") - 8.0).abs() < 1e-9);
    let error =
        winder(&[("yarn_mass", "30 kg"), ("package_mass", "4 kg")]).unwrap_err().to_string();
    for part in ["time_allowed", "no number of drums", "4 kg", "a longer time or smaller cones"] {
        assert!(error.contains(part), "{error}");
    }
    // What fills no cone, and is wound within the hour, takes a drum.
    assert!((needed("3.9 kg", "4 kg") - 1.0).abs() < 1e-9);
}

/// 120 cops of 90 g are 10.8 kg a doff. Of 30 kg two doffs are full, 240 cops, and 8.4 kg are left for the
/// third: 70 g on each of 120 cops, none of them full. Three doffs just fill of 32.4 kg.
#[test]
fn the_last_doff_of_spindles_in_step_fills_all_or_none() {
    let mule = |mass| {
        let lot = [
            ("spindles", "120"),
            ("travel", "1.83 m"),
            ("cycle", "24 s"),
            ("count", "150 tex"),
            ("efficiency", "85 %"),
            ("package_mass", "90 g"),
            ("yarn_mass", mass),
        ];
        mill::MULE.solve_texts(&lot).unwrap()
    };
    for (mass, doffs, full, rest) in
        [("30 kg", 3.0, 240.0, 8.4), ("32.4 kg", 3.0, 360.0, 0.0), ("10 kg", 1.0, 0.0, 10.0)]
    {
        let found = mule(mass);
        assert!((of(&found, "doffs") - doffs).abs() < 1e-9, "{mass}");
        assert!((of(&found, "packages") - full).abs() < 1e-9, "{mass}");
        assert!((of(&found, "left_over") - rest).abs() < 1e-9, "{mass}");
    }
    assert!(mule("30 kg").report().text().contains("in doff 3: 70 g on each of 120 spindles"));
    assert!(!mule("32.4 kg").report().text().contains("in doff"));
    // 10 kg fill 111 cops, if no more spindles than that run.
    let warning = mule("10 kg").warnings().join("\n");
    assert!(warning.contains("on each of 120 spindles: run it on 111 of them"), "{warning}");
}

#[test]
fn what_cannot_be_is_refused_with_what_to_change() {
    let mule = [
        ("spindles", "120"),
        ("travel", "1.83 m"),
        ("cycle", "24 s"),
        ("count", "150 tex"),
        ("efficiency", "85 %"),
    ];
    let with = |more: &[(&'static str, &'static str)]| {
        let rest = mule.iter().filter(|(name, _)| more.iter().all(|(other, _)| other != name));
        let all: Vec<_> = rest.copied().chain(more.iter().copied()).collect();
        refused(&mill::MULE, &all)
    };
    for (more, said) in [
        (&[("wanted_draft", "0.9")][..], "draft under 1"),
        (&[("delivered_length", "2 m")], "draft under 1"),
        (&[("wanted_draft", "1.4"), ("delivered_length", "1.3 m")], "omit all but one"),
        (&[("let_in", "1.9 m")], "write less"),
        (&[("loss", "3 %")], "write both or neither"),
        (&[("loss", "100 %"), ("yarn_mass", "3 kg")], "write less"),
        (&[("spindles", "120.5")], "write 120 or 121"),
        (&[("package_mass", "0 g")], "or omit it"),
        (&[("break_rate", "100"), ("piecing_time", "20 s")], "work_load"),
        (&[("piecing_time", "20 s"), ("work_load", "60 %")], "write both or neither"),
        (
            &[("break_rate", "0"), ("piecing_time", "20 s"), ("work_load", "60 %")],
            "omit piecing_time and work_load",
        ),
        (&[("package", "80 g")], "did you mean 'package_mass'"),
        (&[("yarn_mass", "30 m")], "yarn_mass"),
    ] {
        let error = with(more);
        assert!(error.contains(said), "{more:?}: {error}");
    }
    let error = refused(&mill::MULE, &mule[1..]);
    assert!(error.contains("spindles=120"), "{error}");
    let frame = [
        ("spindles", "100"),
        ("spindle_speed", "5000 rpm"),
        ("twist", "10 turns/m"),
        ("count", "150 tex"),
        ("efficiency", "85 %"),
        ("full_diameter", "46 mm"),
        ("empty_diameter", "25 mm"),
    ];
    let error = refused(&mill::RING_FRAME, &frame);
    assert!(error.contains("write more twist"), "{error}");
}

#[test]
fn a_reel_and_a_winder_say_what_to_write_instead() {
    let reel = [
        ("reel_circumference", "1.5 m"),
        ("positions", "20"),
        ("reel_speed", "120 rpm"),
        ("change_time", "8 min"),
        ("count", "310 tex"),
    ];
    for (more, said) in [
        (&[][..], "write wanted_hank_mass=… or wanted_hank_length=… or reel_turns=…"),
        (&[("wanted_hank_mass", "100 g"), ("reel_turns", "240")], "omit all but one"),
        (&[("shrinkage", "5 %")], "wanted_hank_length"),
        (&[("reel_turns", "240"), ("shrinkage", "5 %")], "omit all but one"),
        (&[("reel_turns", "240"), ("loss", "2 %")], "how much to reel is missing"),
        (&[("reel_turns", "240"), ("yarn_mass", "1 kg"), ("hanks", "9")], "omit all but one"),
        (&[("reel_turns", "240"), ("yarn_mass", "50 g")], "makes no full hank of 111.6 g"),
    ] {
        let error = refused(&mill::REEL, &[&reel, more].concat());
        assert!(error.contains(said), "{more:?}: {error}");
    }
    let winder = [
        ("drums", "12"),
        ("winding_speed", "300 m/min"),
        ("count", "310 tex"),
        ("efficiency", "70 %"),
    ];
    for (more, said) in [
        (&[("time_allowed", "4 h")][..], "yarn_mass"),
        (&[("package_mass", "1 kg"), ("package_length", "3000 m")], "what a package holds"),
    ] {
        let error = refused(&mill::WINDER, &[&winder[..], more].concat());
        assert!(error.contains(said), "{more:?}: {error}");
    }
}

#[test]
fn the_wheel_of_a_twister_gives_the_twist() {
    let twister = [
        ("spindles", "40"),
        ("spindle_speed", "2400 rpm"),
        ("resultant_count", "310 tex"),
        ("efficiency", "80 %"),
    ];
    let wheels = [
        ("wanted_twist", "125 turns/m"),
        ("twist_constant", "4320 turns/m"),
        ("twist_wheels", "32, 35, 40"),
    ];
    let found = mill::TWISTER.solve_texts(&[&twister[..], &wheels].concat()).unwrap();
    // 4320/125 = 34.56 teeth; the 35 gives 4320/35 turns/m, and 40 spindles of 2400 rpm run for that.
    assert!((of(&found, "wanted_twist_wheel") - 34.56).abs() < 1e-9);
    assert!((of(&found, "twist_wheel") - 35.0).abs() < 1e-12);
    let twist = 4320.0 / 35.0;
    assert!(near(of(&found, "twist"), twist));
    assert!(near(of(&found, "output_speed"), 40.0 * 2400.0 * 0.8 / twist));
    // What is known is not asked for again.
    let known = [("twist", "123.428571428571429 turns/m")];
    let same = mill::TWISTER.solve_texts(&[&twister[..], &known].concat()).unwrap();
    assert!(near(of(&same, "output"), of(&found, "output")));
    let error = refused(&mill::TWISTER, &[&twister[..], &wheels, &known].concat());
    assert!(error.contains("each settles the twist"), "{error}");
    let error = refused(&mill::TWISTER, &twister);
    assert!(error.contains("write twist=… or wanted_twist=…"), "{error}");
    let error = refused(&mill::TWISTER, &[&twister[..], &wheels[..2]].concat());
    assert!(error.contains("twist_wheels"), "{error}");
    let set = mill::TWISTER
        .solve_texts(&[&twister[..], &wheels, &[("twist_wheel", "40")]].concat())
        .unwrap();
    assert!(near(of(&set, "twist"), 108.0));
}

#[test]
fn every_machine_tells_its_cautions_and_warns_of_the_unusual() {
    for (machine, given) in EXAMPLES {
        let result = machine.solve_texts(given).unwrap_or_else(|e| panic!("{machine:?}: {e}"));
        assert!(!result.cautions().is_empty(), "{machine:?}");
        assert_eq!(result.warnings(), [""; 0], "{machine:?}");
        let text = result.report().text();
        for found in result.results() {
            assert!(text.contains(&*found.name), "{}: {text}", found.name);
            assert!(!result.working(&found.name).unwrap().text().is_empty());
        }
    }
    let fast = mill::MULE
        .solve_texts(&[
            ("spindles", "120"),
            ("travel", "1.83 m"),
            ("cycle", "5 s"),
            ("count", "150 tex"),
            ("efficiency", "99 %"),
        ])
        .unwrap();
    assert_eq!(fast.warnings().len(), 2, "{:?}", fast.warnings());
    assert!(fast.warnings()[1].contains("from memory"));
}

#[test]
fn a_lot_that_fills_no_package_everywhere_is_told_how_many_it_fills() {
    let warned = |machine: &'static Calculation, given: &[(&str, &str)]| {
        machine.solve_texts(given).unwrap().warnings().join("; ")
    };
    let mule = |mass| {
        let given = [
            ("spindles", "120"),
            ("travel", "1.83 m"),
            ("cycle", "24 s"),
            ("count", "145 tex"),
            ("efficiency", "85 %"),
            ("package_mass", "90 g"),
            ("yarn_mass", mass),
        ];
        warned(&mill::MULE, &given)
    };
    let short = mule("5 kg");
    assert!(short.contains("a cop on each of 120 spindles: run it on 55 of them"), "{short}");
    // 120 cops of 90 g.
    assert_eq!(mule("10.8 kg"), "");
    let frame = [
        ("spindles", "100"),
        ("spindle_speed", "5000 rpm"),
        ("twist", "300 turns/m"),
        ("count", "150 tex"),
        ("efficiency", "85 %"),
        ("yarn_mass", "8 kg"),
        ("package_mass", "100 g"),
    ];
    let said = warned(&mill::RING_FRAME, &frame);
    assert!(said.contains("on each of 100 spindles: run it on 80 of them"), "{said}");
    let twister = [
        ("spindles", "40"),
        ("spindle_speed", "2400 rpm"),
        ("twist", "130 turns/m"),
        ("resultant_count", "310 tex"),
        ("efficiency", "80 %"),
        ("yarn_mass", "30 kg"),
        ("package_mass", "1.1 kg"),
    ];
    let said = warned(&mill::TWISTER, &twister);
    assert!(said.contains("on each of 40 spindles: run it on 27 of them"), "{said}");
    let winder = |mass| {
        let given = [
            ("drums", "5"),
            ("winding_speed", "300 m/min"),
            ("count", "310 tex"),
            ("efficiency", "70 %"),
            ("package_mass", "1.2 kg"),
            ("yarn_mass", mass),
        ];
        warned(&mill::WINDER, &given)
    };
    let said = winder("5 kg");
    assert!(said.contains("a cone on each of 5 drums: run it on 4 of them"), "{said}");
    let said = winder("1 kg");
    assert!(said.contains("does not fill one cone: make smaller cones"), "{said}");
}

#[test]
fn a_time_with_stops_in_it_is_not_called_running() {
    for machine in
        [&mill::MULE, &mill::RING_FRAME, &mill::TWISTER, &mill::WINDER, &mill::REEL, &mill::LOOM]
    {
        let said = time_of(machine.outputs).unwrap();
        assert!(said.ends_with("stops included"), "{machine:?}: {said}");
    }
}

/// What a machine says that its result `time` is.
fn time_of(outputs: &'static [Output]) -> Option<&'static str> {
    outputs.iter().find_map(|output| match output {
        Output::One(answer) if answer.name == "time" => Some(answer.meaning),
        Output::Part { outputs, .. } => time_of(outputs),
        _ => None,
    })
}

type Example = (&'static Calculation, &'static [(&'static str, &'static str)]);

const EXAMPLES: &[Example] = &[
    (
        &mill::MULE,
        &[
            ("spindles", "120"),
            ("travel", "1.83 m"),
            ("let_in", "6 cm"),
            ("cycle", "24 s"),
            ("count", "150 tex"),
            ("efficiency", "85 %"),
            ("wanted_draft", "1.4"),
            ("wanted_twist", "210 turns/m"),
            ("yarn_mass", "30 kg"),
            ("loss", "3 %"),
            ("package_mass", "90 g"),
            ("break_rate", "120"),
            ("patrol_time", "15 min"),
            ("piecing_time", "20 s"),
            ("work_load", "60 %"),
        ],
    ),
    (
        &mill::RING_FRAME,
        &[
            ("spindles", "60"),
            ("spindle_speed", "5000 rpm"),
            ("twist", "300 turns/m"),
            ("count", "150 tex"),
            ("efficiency", "85 %"),
            ("per_person", "60"),
        ],
    ),
    (
        &mill::TWISTER,
        &[
            ("spindles", "40"),
            ("spindle_speed", "2400 rpm"),
            ("twist", "130 turns/m"),
            ("resultant_count", "310 tex"),
            ("efficiency", "80 %"),
            ("ends", "2"),
            ("contraction", "2 %"),
            ("yarn_mass", "40 kg"),
            ("package_length", "2500 m"),
        ],
    ),
    (
        &mill::WINDER,
        &[
            ("drums", "12"),
            ("winding_speed", "300 m/min"),
            ("count", "310 tex"),
            ("efficiency", "70 %"),
            ("yarn_mass", "30 kg"),
            ("package_mass", "1.2 kg"),
            ("bobbin_mass", "200 g"),
            ("per_person", "12"),
        ],
    ),
    (
        &mill::REEL,
        &[
            ("reel_circumference", "1.5 m"),
            ("positions", "20"),
            ("reel_speed", "120 rpm"),
            ("change_time", "8 min"),
            ("count", "310 tex"),
            ("wanted_hank_mass", "105 g"),
            ("yarn_mass", "30 kg"),
            ("per_person", "1"),
        ],
    ),
    (
        &mill::WARPING,
        &[
            ("ends", "864"),
            ("creel", "144"),
            ("warp_length", "60 m"),
            ("warping_speed", "40 m/min"),
            ("change_time", "20 min"),
            ("warp_count", "125 tex"),
            ("bobbin_mass", "1.2 kg"),
            ("stretch", "1 %"),
            ("beaming_speed", "15 m/min"),
            ("per_person", "1"),
        ],
    ),
];

/// Of a thousand breaks in a thousand spindle hours and a round of 80 minutes, every spindle waits
/// three quarters of a round: 0.75 × 1.34 h is more than there are spindles.
#[test]
fn no_more_ends_are_down_than_there_are_spindles() {
    let mule = |patrol: &str| {
        let mut given = vec![
            ("spindles", "120"),
            ("travel", "1.83 m"),
            ("cycle", "24 s"),
            ("count", "150 tex"),
            ("efficiency", "85 %"),
            ("break_rate", "1000"),
        ];
        given.push(("patrol_time", patrol));
        mill::MULE.solve_texts(&given)
    };
    assert!(near(of(&mule("79.6 min").unwrap(), "idle_share"), 0.995));
    let error = mule("80.4 min").unwrap_err().to_string();
    assert!(error.contains("more ends would be down than there are spindles"), "{error}");
}
