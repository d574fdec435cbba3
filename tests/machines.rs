//! Looms and finishing machines at work: what goes in comes out, whatever the figures; figures in print;
//! refusals.

use hankwise::Error;
use hankwise::catalogue;
use hankwise::particulars::Particulars;
use hankwise::quantity::{Amount, Kind, unit};
use proptest::prelude::*;

/// A machine run with figures in the base units of their kinds.
fn run(machine: &str, figures: &[(&str, f64)]) -> Particulars {
    let machine = catalogue::job(machine).unwrap();
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
    catalogue::job(machine).unwrap().run(given)
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

proptest! {
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
}

#[test]
fn every_machine_tells_its_cautions_and_warns_of_the_unusual() {
    for machine in
        catalogue::jobs().filter(|job| EXAMPLES.iter().any(|(name, _)| *name == job.name))
    {
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
}

type Example = (&'static str, &'static [(&'static str, &'static str)]);

const EXAMPLES: &[Example] = &[
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
