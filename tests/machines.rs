//! Machines at work: what goes in comes out, whatever the figures; figures in print; refusals.

use hankwise::Error;
use hankwise::job;
use hankwise::particulars::Particulars;
use hankwise::quantity::{Amount, Kind, unit};
use proptest::prelude::*;

/// A machine run with figures in the base units of their kinds.
fn run(machine: &str, figures: &[(&str, f64)]) -> Particulars {
    let machine = job::find(machine).unwrap();
    let mut given = machine.blank();
    for (name, x) in figures {
        let kind = given.kind(name).unwrap();
        let base = if kind.family() == Kind::Fraction { "fraction" } else { kind.base() };
        let amount = Amount { number: *x, unit: unit(base, Some(kind)).unwrap() };
        given.set(name, amount, None).unwrap();
    }
    machine.run_on(&given).unwrap_or_else(|e| panic!("{figures:?}: {e}"))
}

fn read(machine: &str, given: &[(&str, &str)]) -> Result<Particulars, Error> {
    job::find(machine).unwrap().run(given)
}

fn refused(machine: &str, given: &[(&str, &str)]) -> String {
    read(machine, given).unwrap_err().to_string()
}

fn of(result: &Particulars, name: &str) -> f64 {
    result.find(name).unwrap_or_else(|e| panic!("{e}")).value
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1e-9)
}

/// Fibre in is fibre out and waste; full packages and the rest are the lot; output for the time is the
/// lot.
fn holds(result: &Particulars, mass: f64, waste: f64, package: f64) -> Result<(), TestCaseError> {
    prop_assert!(near(of(result, "fed"), mass + of(result, "wasted")));
    prop_assert!(near(of(result, "wasted"), waste * of(result, "fed")));
    prop_assert!(near(of(result, "output") * of(result, "time"), mass));
    let (full, rest) = (of(result, "packages"), of(result, "rest"));
    prop_assert!(near(full * package + rest, mass));
    prop_assert!(rest < package * (1.0 + 1e-5) && full.fract() == 0.0);
    Ok(())
}

fn doffs_hold(result: &Particulars, mass: f64, spindles: f64, package: f64) -> bool {
    let (doffs, each) = (of(result, "doffs"), spindles * package);
    doffs.fract() == 0.0
        && doffs * each >= mass * (1.0 - 1e-5)
        && (doffs - 1.0) * each <= mass * (1.0 + 1e-5)
        && near(of(result, "doff_interval") * of(result, "output"), each)
}

proptest! {
    #[test]
    fn the_mule_loses_nothing(
        spindles in 20_u16..600, travel in 1.5..2.3, let_in in 0.0..0.15, cycle in 12.0..40.0,
        count in 50.0..800.0, draft in 1.1..1.6, efficiency in 0.5..1.0, mass in 1.0..500.0,
        waste in 0.0..0.2, cop in 0.03..0.5, breaks in 5.0..300.0, patrol in 0.05..0.8,
    ) {
        let k = f64::from(spindles);
        let mule = run("mule_run", &[
            ("spindles", k), ("travel", travel), ("let_in", let_in), ("cycle", cycle / 3600.0),
            ("count", count), ("draft", draft), ("efficiency", efficiency), ("mass", mass),
            ("waste", waste), ("cop", cop), ("breaks", breaks), ("patrol", patrol),
        ]);
        holds(&mule, mass, waste, cop)?;
        prop_assert!(doffs_hold(&mule, mass, k, cop));
        // A draw takes in as much fibre as slubbing as it winds on as yarn.
        let taken = of(&mule, "slubbing_delivered") * of(&mule, "slubbing");
        prop_assert!(near(taken, of(&mule, "wound") * count));
        // The draws of all spindles are the yarn of the lot.
        prop_assert!(near(of(&mule, "draws") * k * of(&mule, "wound"), of(&mule, "length")));
        prop_assert!(near(of(&mule, "length") * count * 1e-6, mass));
        // Draws in a minute, over the running minutes, are the draws.
        let run = of(&mule, "draws_per_minute") * 60.0 * of(&mule, "time") * efficiency;
        prop_assert!(near(run, of(&mule, "draws")));
        prop_assert!(near(of(&mule, "idle"), 0.75e-3 * breaks * patrol * k));
        prop_assert!(near(of(&mule, "ends_down") * 60.0, breaks / 1000.0 * k));
    }

    #[test]
    fn the_frame_loses_nothing(
        spindles in 4_u16..1000, speed in 3000.0..15000.0, twist in 80.0..1500.0,
        count in 10.0..500.0, draft in 1.1..40.0, efficiency in 0.5..1.0, mass in 1.0..500.0,
        waste in 0.0..0.2, package in 0.05..0.6, empty in 0.015..0.04, more in 0.005..0.1,
    ) {
        let k = f64::from(spindles);
        let frame = run("ring_frame_run", &[
            ("spindles", k), ("speed", speed), ("twist", twist), ("count", count), ("draft", draft),
            ("efficiency", efficiency), ("mass", mass), ("waste", waste), ("package", package),
            ("empty", empty), ("full", empty + more), ("hank", 840.0 * 0.9144),
        ]);
        holds(&frame, mass, waste, package)?;
        prop_assert!(doffs_hold(&frame, mass, k, package));
        prop_assert!(near(of(&frame, "count_fed"), count * draft));
        // Every turn of the spindle is in the yarn or lost at the traveller.
        let v = of(&frame, "delivery");
        for (twist_on, lag) in [("twist_full", "lag_full"), ("twist_empty", "lag_empty")] {
            prop_assert!(near(of(&frame, twist_on) * v + of(&frame, lag), speed));
        }
        prop_assert!(of(&frame, "twist_step") > 0.0);
        // The old rule with its constant 504 says the same.
        let tpi = twist * 0.0254;
        prop_assert!(near(of(&frame, "hanks"), speed * efficiency / (504.0 * tpi)));
    }

    #[test]
    fn the_twister_loses_nothing(
        spindles in 4_u16..600, speed in 1000.0..10000.0, twist in 60.0..1000.0, turns in 1_u8..3,
        count in 20.0..1500.0, ends in 2_u8..6, contraction in -0.02..0.12, efficiency in 0.5..1.0,
        mass in 1.0..500.0, waste in 0.0..0.1, package in 0.1..4.0,
    ) {
        let (k, q, n) = (f64::from(spindles), f64::from(turns), f64::from(ends));
        let twister = run("twister_run", &[
            ("spindles", k), ("speed", speed), ("twist", twist), ("turns", q), ("count", count),
            ("ends", n), ("contraction", contraction), ("efficiency", efficiency), ("mass", mass),
            ("waste", waste), ("package", package),
        ]);
        holds(&twister, mass, waste, package)?;
        prop_assert!(doffs_hold(&twister, mass, k, package));
        // The singles weigh what is fed, and their length shrinks to that of the fold.
        let singles = of(&twister, "singles");
        prop_assert!(near(singles * of(&twister, "single") * 1e-6, of(&twister, "fed")));
        let folded = singles / n * (1.0 - contraction) * (1.0 - waste);
        prop_assert!(near(folded, of(&twister, "length")));
        // All spindles together put in the turns that lie in the yarn.
        let put_in = q * speed * k * efficiency * 60.0 * of(&twister, "time");
        prop_assert!(near(put_in, twist * of(&twister, "length")));
        prop_assert!(near(of(&twister, "delivery") * k * efficiency, of(&twister, "yarn_out")));
    }

    #[test]
    fn the_winder_loses_nothing(
        drums in 1_u16..200, speed in 50.0..1200.0, count in 10.0..2000.0, efficiency in 0.4..1.0,
        mass in 1.0..1000.0, waste in 0.0..0.05, package in 0.2..4.0, within in 1.0..100.0,
    ) {
        let k = f64::from(drums);
        let winder = run("winder_run", &[
            ("drums", k), ("speed", speed), ("count", count), ("efficiency", efficiency),
            ("mass", mass), ("waste", waste), ("package", package), ("within", within),
            ("hank", 512.0),
        ]);
        holds(&winder, mass, waste, package)?;
        prop_assert!(near(of(&winder, "cone_time") * of(&winder, "output") / k, package));
        let hanks = of(&winder, "hanks") * 60.0 * of(&winder, "time") * k;
        prop_assert!(near(hanks * 512.0, of(&winder, "length")));
        // As many drums as needed wind the lot in the time, and one less does not.
        let (needed, each) = (of(&winder, "drums_needed"), of(&winder, "drum_mass"));
        prop_assert!(needed * each >= mass * (1.0 - 1e-5));
        prop_assert!((needed - 1.0) * each <= mass * (1.0 + 1e-5));
    }

    #[test]
    fn the_reel_loses_nothing(
        reel in 0.9..2.5, positions in 1_u8..60, speed in 30.0..300.0, change in 0.0..0.4,
        count in 20.0..2000.0, hank in 0.05..0.5, mass in 2.0..200.0, waste in 0.0..0.05, reels in 1_u8..4,
    ) {
        let (p, k) = (f64::from(positions), f64::from(reels));
        let result = run("reel_run", &[
            ("reel", reel), ("positions", p), ("speed", speed), ("change", change),
            ("count", count), ("hank", hank), ("mass", mass), ("waste", waste), ("reels", k),
        ]);
        let (turns, hanks) = (of(&result, "turns_set"), of(&result, "hanks_made"));
        prop_assert!(near(of(&result, "fed"), mass + of(&result, "wasted")));
        prop_assert!(near(hanks * of(&result, "hank_mass") + of(&result, "rest"), mass));
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
        let warp = run("warping_run", &[
            ("ends", n), ("creel", b), ("length", length), ("speed", speed), ("change", change),
            ("count", count), ("package", package),
        ]);
        let (sections, full) = (of(&warp, "sections"), of(&warp, "section_ends"));
        let last = of(&warp, "last_section_ends");
        prop_assert!(near((sections - 1.0) * full + last, n));
        prop_assert!(last >= 1.0 && last <= full && full <= b);
        prop_assert!(near(of(&warp, "yarn"), n * length));
        prop_assert!(near(of(&warp, "mass"), n * length * count * 1e-6));
        let on_creel = of(&warp, "creelings") * package;
        prop_assert!(on_creel >= of(&warp, "bobbin_mass") * (1.0 - 1e-5));
        prop_assert!(near(of(&warp, "time"), sections * (length / speed / 60.0 + change)));
    }

    #[test]
    fn stops_are_counted_once(
        speed in 40.0..400.0, picks in 2.0..40.0, stops in 0.001..0.3, stop in 0.005..0.2,
        width in 0.3..3.0, weft in 10.0..600.0, length in 1.0..300.0,
    ) {
        let loom = run("loom_run", &[
            ("speed", speed), ("picks", picks), ("stops", stops), ("stop_time", stop),
            ("width", width), ("weft", weft), ("length", length),
        ]);
        // Picks over the speed are the minutes run; the stops in those are the rest of the hours.
        let all = of(&loom, "picks_in_all");
        let running = all / speed / 60.0;
        let stood = stops * 60.0 * running * stop;
        prop_assert!(near(of(&loom, "loom_hours"), running + stood));
        prop_assert!(near(all, 100.0 * picks * length));
        prop_assert!(near(of(&loom, "cloth") * of(&loom, "loom_hours"), length));
        prop_assert!(near(of(&loom, "weft_used") * of(&loom, "loom_hours"), of(&loom, "weft_in_all")));
        prop_assert!(near(of(&loom, "weft_in_all"), all * width));
        prop_assert!(near(of(&loom, "weft_mass_in_all"), all * width * weft * 1e-6));
        // The same stops counted by picks give the same.
        let by_picks = run("loom_run", &[
            ("speed", speed), ("picks", picks), ("stops_of_picks", stops * 1e5 / speed),
            ("stop_time", stop),
        ]);
        prop_assert!(near(of(&by_picks, "efficiency_found"), of(&loom, "efficiency_found")));
    }

    #[test]
    fn loads_hold_all_goods(
        mass in 1.0..500.0, capacity in 1.0..100.0, running in 0.1..3.0, change in 0.0..1.0,
        waste in 0.0..0.05, machines in 1_u8..4,
    ) {
        let k = f64::from(machines);
        let batch = run("batch_run", &[
            ("mass", mass), ("capacity", capacity), ("running", running), ("change", change),
            ("waste", waste), ("machines", k),
        ]);
        let (loads, fed) = (of(&batch, "loads"), of(&batch, "fed"));
        prop_assert!(near(fed, mass + of(&batch, "wasted")));
        prop_assert!(near(loads * of(&batch, "even_load"), fed));
        prop_assert!((fed - (loads - 1.0) * capacity - of(&batch, "last_load")).abs() < 1e-4);
        prop_assert!(of(&batch, "even_load") <= capacity * (1.0 + 1e-5));
        prop_assert!(of(&batch, "rounds") * k >= loads);
        prop_assert!(near(of(&batch, "output") * of(&batch, "time"), mass));
    }

    #[test]
    fn water_and_wool_go_in_and_come_out(
        dry in 1.0..500.0, after in 0.0..0.3, more in 0.01..2.0, evaporation in 1.0..100.0,
        efficiency in 0.3..1.0,
    ) {
        let dryer = run("dryer_run", &[
            ("mass", dry), ("before", after + more), ("after", after),
            ("evaporation", evaporation), ("efficiency", efficiency),
        ]);
        prop_assert!(near(of(&dryer, "wet"), of(&dryer, "out") + of(&dryer, "water")));
        prop_assert!(near(of(&dryer, "time") * evaporation * efficiency, of(&dryer, "water")));
        prop_assert!(near(of(&dryer, "output") * of(&dryer, "time"), of(&dryer, "out")));
    }

    #[test]
    fn cloth_runs_its_whole_length(
        length in 1.0..1000.0, speed in 0.5..80.0, passages in 1_u8..8, change in 0.0..1.0,
        machines in 1_u8..4,
    ) {
        let (n, k) = (f64::from(passages), f64::from(machines));
        let cloth = run("cloth_run", &[
            ("length", length), ("speed", speed), ("passages", n), ("change", change),
            ("machines", k),
        ]);
        let minutes = 60.0 * (of(&cloth, "time") - n * change);
        prop_assert!((minutes * speed * k - n * length).abs() < 1e-6 * n * length);
        prop_assert!(near(of(&cloth, "run_length") * k, n * length));
        prop_assert!(near(of(&cloth, "hourly") * of(&cloth, "time"), length));
    }
}

#[test]
fn machines_meet_what_is_printed() {
    // The drums of a winding problem: 651 yd/min on 46s at 92 % for 1600 lb in a shift of 8 h.
    let winder = read(
        "winder_run",
        &[
            ("drums", "216"),
            ("speed", "651 yd/min"),
            ("count", "46 Ne"),
            ("efficiency", "92 %"),
            ("mass", "1600 lb"),
            ("within", "8 h"),
        ],
    )
    .unwrap();
    assert!((of(&winder, "drum_mass") / 0.453_592_37 - 7.44).abs() < 0.005);
    assert!((of(&winder, "drums_needed") - 216.0).abs() < 0.5, "215.05 and rounded up");
    // The section warp of 864 ends from a creel of 144, over 36½ in.
    let warp = read(
        "warping_run",
        &[
            ("ends", "864"),
            ("creel", "144"),
            ("length", "500 m"),
            ("speed", "40 m/min"),
            ("change", "20 min"),
            ("width", "36.5 in"),
        ],
    )
    .unwrap();
    assert!((of(&warp, "sections") - 6.0).abs() < 1e-12);
    assert!((of(&warp, "ends_set") * 2.54 - 23.67).abs() < 0.005);
    // Traveller of a ring frame at 15 m/min: 191 turns in a minute behind on 25 mm.
    let frame = read(
        "ring_frame_run",
        &[
            ("spindles", "100"),
            ("speed", "13500 rpm"),
            ("twist", "900 turns/m"),
            ("count", "20 tex"),
            ("efficiency", "90 %"),
            ("full", "46 mm"),
            ("empty", "25 mm"),
        ],
    )
    .unwrap();
    assert!((of(&frame, "lag_empty") - 191.0).abs() < 0.5);
    assert!((of(&frame, "lag_full") - 104.0).abs() < 0.5);
    // A loom of 200 picks/min at 90 %: 42.857 yd of 56 picks/in in 8 h.
    let loom = read(
        "loom_run",
        &[
            ("speed", "200 picks/min"),
            ("picks", "56 picks/in"),
            ("efficiency", "90 %"),
            ("length", "42.857 yd"),
        ],
    )
    .unwrap();
    assert!((of(&loom, "time") - 8.0).abs() < 0.0005);
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
        refused("mule_run", &rest.copied().chain(more.iter().copied()).collect::<Vec<_>>())
    };
    for (more, said) in [
        (&[("draft", "0.9")][..], "draft under 1"),
        (&[("delivered", "2 m")], "draft under 1"),
        (&[("draft", "1.4"), ("delivered", "1.3 m")], "leave all but one out"),
        (&[("let_in", "1.9 m")], "write less"),
        (&[("waste", "3 %")], "write both or neither"),
        (&[("waste", "100 %"), ("mass", "3 kg")], "write less"),
        (&[("spindles", "120.5")], "write 120 or 121"),
        (&[("cop", "0 g")], "or leave it out"),
        (&[("breaks", "100"), ("piecing", "20 s")], "write both or neither"),
        (&[("breaks", "0"), ("piecing", "20 s"), ("load", "60 %")], "leave piecing and load out"),
        (&[("cops", "80 g")], "did you mean 'cop'"),
        (&[("mass", "30 m")], "mass"),
    ] {
        let error = with(more);
        assert!(error.contains(said), "{more:?}: {error}");
    }
    let error = refused("mule_run", &mule[1..]);
    assert!(error.contains("spindles=120"), "{error}");
    let loom = [("speed", "90 picks/min"), ("picks", "4.6 picks/cm")];
    for (more, said) in [
        (&[][..], "efficiency is missing"),
        (&[("efficiency", "80 %"), ("stops", "6 /h"), ("stop_time", "2 min")], "leave all but one"),
        (&[("efficiency", "80 %"), ("stop_time", "2 min")], "stops are in the efficiency"),
        (&[("stops", "6 /h")], "stop_time"),
        (&[("efficiency", "80 %"), ("attention", "1 min"), ("load", "70 %")], "without stops"),
        (
            &[("stops", "60 /h"), ("stop_time", "5 min"), ("attention", "5 min"), ("load", "70 %")],
            "more of the weaver's time",
        ),
    ] {
        let error = refused("loom_run", &[&loom, more].concat());
        assert!(error.contains(said), "{more:?}: {error}");
    }
    let dryer =
        [("mass", "40 kg"), ("before", "16 %"), ("after", "60 %"), ("evaporation", "15 kg/h")];
    assert!(refused("dryer_run", &dryer).contains("exchanged"));
    let frame = [
        ("spindles", "100"),
        ("speed", "5000 rpm"),
        ("twist", "10 turns/m"),
        ("count", "150 tex"),
        ("efficiency", "85 %"),
        ("full", "46 mm"),
        ("empty", "25 mm"),
    ];
    assert!(refused("ring_frame_run", &frame).contains("write more twist"));
}

#[test]
fn every_machine_tells_its_cautions_and_warns_of_the_unusual() {
    for machine in job::all().filter(|job| EXAMPLES.iter().any(|(name, _)| *name == job.name)) {
        let example = EXAMPLES.iter().find(|(name, _)| *name == machine.name);
        let (_, needed) = example.unwrap_or_else(|| panic!("no example for {}", machine.name));
        let result = machine.run(needed).unwrap_or_else(|e| panic!("{}: {e}", machine.name));
        assert!(!result.cautions().is_empty(), "{}", machine.name);
        assert_eq!(result.warnings(), [""; 0], "{}", machine.name);
        let text = result.report().text();
        for figure in result.figures() {
            assert!(text.contains(&figure.words) || figure.words.len() > 60, "{text}");
            assert!(!result.working(&figure.name).unwrap().text().is_empty());
        }
    }
    let fast = read(
        "mule_run",
        &[
            ("spindles", "120"),
            ("travel", "1.83 m"),
            ("cycle", "5 s"),
            ("count", "150 tex"),
            ("efficiency", "99 %"),
        ],
    )
    .unwrap();
    assert_eq!(fast.warnings().len(), 2, "{:?}", fast.warnings());
    assert!(fast.warnings()[1].contains("from memory"));
}

type Example = (&'static str, &'static [(&'static str, &'static str)]);

const EXAMPLES: &[Example] = &[
    (
        "mule_run",
        &[
            ("spindles", "120"),
            ("travel", "1.83 m"),
            ("let_in", "6 cm"),
            ("cycle", "24 s"),
            ("count", "150 tex"),
            ("efficiency", "85 %"),
            ("draft", "1.4"),
            ("twist", "210 turns/m"),
            ("mass", "30 kg"),
            ("waste", "3 %"),
            ("cop", "90 g"),
            ("breaks", "120"),
            ("patrol", "15 min"),
            ("piecing", "20 s"),
            ("load", "60 %"),
        ],
    ),
    (
        "ring_frame_run",
        &[
            ("spindles", "60"),
            ("speed", "5000 rpm"),
            ("twist", "300 turns/m"),
            ("count", "150 tex"),
            ("efficiency", "85 %"),
            ("per_person", "60"),
        ],
    ),
    (
        "twister_run",
        &[
            ("spindles", "40"),
            ("speed", "2400 rpm"),
            ("twist", "130 turns/m"),
            ("count", "310 tex"),
            ("efficiency", "80 %"),
            ("ends", "2"),
            ("contraction", "2 %"),
            ("mass", "30 kg"),
            ("package_length", "2500 m"),
        ],
    ),
    (
        "winder_run",
        &[
            ("drums", "12"),
            ("speed", "300 m/min"),
            ("count", "310 tex"),
            ("efficiency", "70 %"),
            ("mass", "30 kg"),
            ("package", "1.2 kg"),
            ("bobbin", "200 g"),
            ("per_person", "12"),
        ],
    ),
    (
        "reel_run",
        &[
            ("reel", "1.5 m"),
            ("positions", "20"),
            ("speed", "120 rpm"),
            ("change", "8 min"),
            ("count", "310 tex"),
            ("hank", "105 g"),
            ("mass", "30 kg"),
            ("per_person", "1"),
        ],
    ),
    (
        "warping_run",
        &[
            ("ends", "864"),
            ("creel", "144"),
            ("length", "60 m"),
            ("speed", "40 m/min"),
            ("change", "20 min"),
            ("count", "125 tex"),
            ("package", "1.2 kg"),
            ("stretch", "1 %"),
            ("beaming", "15 m/min"),
            ("per_person", "1"),
        ],
    ),
    (
        "loom_run",
        &[
            ("speed", "90 picks/min"),
            ("picks", "4.6 picks/cm"),
            ("stops", "6 /h"),
            ("stop_time", "2 min"),
            ("width", "1.7 m"),
            ("weft", "125 tex"),
            ("length", "60 m"),
            ("looms", "4"),
            ("attention", "1 min"),
            ("load", "70 %"),
        ],
    ),
    (
        "cloth_run",
        &[("length", "60 m"), ("speed", "8 m/min"), ("passages", "4"), ("change", "10 min")],
    ),
    (
        "batch_run",
        &[("mass", "40 kg"), ("capacity", "12 kg"), ("running", "45 min"), ("change", "10 min")],
    ),
    (
        "dryer_run",
        &[("mass", "40 kg"), ("before", "60 %"), ("after", "16 %"), ("evaporation", "15 kg/h")],
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
            ("breaks", "1000"),
        ];
        given.push(("patrol", patrol));
        read("mule_run", &given)
    };
    assert!(near(of(&mule("79.6 min").unwrap(), "idle_share"), 0.995));
    let error = mule("80.4 min").unwrap_err().to_string();
    assert!(error.contains("more ends would be down than there are spindles"), "{error}");
}
