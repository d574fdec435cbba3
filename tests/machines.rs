//! Looms and finishing machines at work: what goes in comes out, whatever the values; values in print;
//! refusals.

use hankwise::Error;
use hankwise::calculation::{Item, Solved, Value};
use hankwise::catalogue::calculation;
use hankwise::quantity::{Amount, Kind, unit};
use proptest::prelude::*;

/// A machine with values in the base units of their kinds.
fn run(machine: &str, values: &[(&str, f64)]) -> Solved {
    let machine = calculation(machine).unwrap();
    let mut given = machine.blank();
    for (name, x) in values {
        let Item::One(input) = given.item(name).unwrap() else { panic!("{name}") };
        let base =
            if input.kind.family() == Kind::Fraction { "fraction" } else { input.kind.base() };
        let amount = Amount { number: *x, unit: unit(base, Some(input.kind)).unwrap() };
        given.set(name, Value::One(amount, None)).unwrap();
    }
    machine.solve(given).unwrap_or_else(|e| panic!("{values:?}: {e}"))
}

fn read(machine: &str, given: &[(&str, &str)]) -> Result<Solved, Error> {
    calculation(machine).unwrap().solve_texts(given)
}

fn refused(machine: &str, given: &[(&str, &str)]) -> String {
    read(machine, given).unwrap_err().to_string()
}

fn of(result: &Solved, name: &str) -> f64 {
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
        let loom = run("loom", &[
            ("loom_speed", speed), ("weft_sett", picks), ("stop_rate", stops), ("stop_time", stop),
            ("reed_width", width), ("weft_count", weft), ("cloth_length", length),
        ]);
        // Picks over the speed are the minutes run; the stops in those are the rest of the hours.
        let all = of(&loom, "picks");
        let running = all / speed / 60.0;
        let stood = stops * 60.0 * running * stop;
        prop_assert!(near(of(&loom, "loom_hours"), running + stood));
        prop_assert!(near(all, 100.0 * picks * length));
        prop_assert!(near(of(&loom, "cloth_rate") * of(&loom, "loom_hours"), length));
        prop_assert!(near(of(&loom, "weft_rate") * of(&loom, "loom_hours"), of(&loom, "weft_yarn_length")));
        prop_assert!(near(of(&loom, "weft_yarn_length"), all * width));
        prop_assert!(near(of(&loom, "weft_mass"), all * width * weft * 1e-6));
        // The same stops counted by picks give the same.
        let by_picks = run("loom", &[
            ("loom_speed", speed), ("weft_sett", picks), ("stops_per_100000_picks", stops * 1e5 / speed),
            ("stop_time", stop),
        ]);
        prop_assert!(near(of(&by_picks, "efficiency"), of(&loom, "efficiency")));
    }

    #[test]
    fn loads_hold_all_goods(
        mass in 1.0..500.0, capacity in 1.0..100.0, running in 0.1..3.0, change in 0.0..1.0,
        waste in 0.0..0.05, machines in 1_u8..4,
    ) {
        let k = f64::from(machines);
        let batch = run("batches", &[
            ("goods_mass", mass), ("capacity", capacity), ("time_per_load", running), ("change_time", change),
            ("loss", waste), ("machines", k),
        ]);
        let (loads, fed) = (of(&batch, "loads"), of(&batch, "mass_in"));
        prop_assert!(near(fed, mass + of(&batch, "mass_lost")));
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
        let dryer = run("dryer", &[
            ("oven_dry_mass", dry), ("regain_before", after + more), ("regain_after", after),
            ("evaporation_rate", evaporation), ("efficiency", efficiency),
        ]);
        prop_assert!(near(of(&dryer, "mass_in"), of(&dryer, "mass_out") + of(&dryer, "water_to_dry")));
        prop_assert!(near(of(&dryer, "time") * evaporation * efficiency, of(&dryer, "water_to_dry")));
        prop_assert!(near(of(&dryer, "output") * of(&dryer, "time"), of(&dryer, "mass_out")));
    }

    #[test]
    fn cloth_runs_its_whole_length(
        length in 1.0..1000.0, speed in 0.5..80.0, passages in 1_u8..8, change in 0.0..1.0,
        machines in 1_u8..4,
    ) {
        let (n, k) = (f64::from(passages), f64::from(machines));
        let cloth = run("passages", &[
            ("cloth_length", length), ("cloth_speed", speed), ("passages", n), ("change_time", change),
            ("machines", k),
        ]);
        let minutes = 60.0 * (of(&cloth, "time") - n * change);
        prop_assert!((minutes * speed * k - n * length).abs() < 1e-6 * n * length);
        prop_assert!(near(of(&cloth, "run_length") * k, n * length));
        prop_assert!(near(of(&cloth, "cloth_rate") * of(&cloth, "time"), length));
    }
}

#[test]
fn machines_meet_what_is_printed() {
    // A loom of 200 picks/min at 90 %: 42.857 yd of 56 picks/in in 8 h.
    let loom = read(
        "loom",
        &[
            ("loom_speed", "200 picks/min"),
            ("weft_sett", "56 picks/in"),
            ("efficiency", "90 %"),
            ("cloth_length", "42.857 yd"),
        ],
    )
    .unwrap();
    assert!((of(&loom, "time") - 8.0).abs() < 0.0005);
}

#[test]
fn what_cannot_be_is_refused_with_what_to_change() {
    let loom = [("loom_speed", "90 picks/min"), ("weft_sett", "4.6 picks/cm")];
    for (more, said) in [
        (&[][..], "efficiency is missing"),
        (
            &[("efficiency", "80 %"), ("stop_rate", "6 /h"), ("stop_time", "2 min")],
            "omit all but one",
        ),
        (
            &[("efficiency", "80 %"), ("stop_time", "2 min")],
            "each settles the efficiency: omit all but one",
        ),
        (&[("stop_rate", "6 /h")], "write stop_time="),
        (
            &[("efficiency", "80 %"), ("attention_time", "1 min"), ("work_load", "70 %")],
            "without stops",
        ),
        (
            &[
                ("stop_rate", "60 /h"),
                ("stop_time", "5 min"),
                ("attention_time", "5 min"),
                ("work_load", "70 %"),
            ],
            "more of the weaver's time",
        ),
    ] {
        let error = refused("loom", &[&loom, more].concat());
        assert!(error.contains(said), "{more:?}: {error}");
    }
    let dryer = [
        ("oven_dry_mass", "40 kg"),
        ("regain_before", "16 %"),
        ("regain_after", "60 %"),
        ("evaporation_rate", "15 kg/h"),
    ];
    assert!(refused("dryer", &dryer).contains("exchanged"));
}

#[test]
fn every_machine_tells_its_cautions_and_warns_of_the_unusual() {
    for (name, needed) in EXAMPLES {
        let machine = calculation(name).unwrap();
        let result = machine.solve_texts(needed).unwrap_or_else(|e| panic!("{name}: {e}"));
        assert!(!result.cautions().is_empty(), "{name}");
        assert_eq!(result.warnings(), [""; 0], "{name}");
        let text = result.report().text();
        for found in result.results() {
            let words = found.answer.meaning;
            assert!(text.contains(words) || words.len() > 60, "{text}");
            assert!(!result.working(&found.name).unwrap().text().is_empty());
        }
    }
    let fast =
        [("loom_speed", "900 picks/min"), ("weft_sett", "4 picks/cm"), ("efficiency", "99 %")];
    assert_eq!(read("loom", &fast).unwrap().warnings().len(), 2);
}

type Example = (&'static str, &'static [(&'static str, &'static str)]);

const EXAMPLES: &[Example] = &[
    (
        "loom",
        &[
            ("loom_speed", "90 picks/min"),
            ("weft_sett", "4.6 picks/cm"),
            ("stop_rate", "6 /h"),
            ("stop_time", "2 min"),
            ("reed_width", "1.7 m"),
            ("weft_count", "125 tex"),
            ("cloth_length", "60 m"),
            ("looms", "4"),
            ("attention_time", "1 min"),
            ("work_load", "70 %"),
        ],
    ),
    (
        "passages",
        &[
            ("cloth_length", "60 m"),
            ("cloth_speed", "8 m/min"),
            ("passages", "4"),
            ("change_time", "10 min"),
        ],
    ),
    (
        "batches",
        &[
            ("goods_mass", "40 kg"),
            ("capacity", "12 kg"),
            ("time_per_load", "45 min"),
            ("change_time", "10 min"),
        ],
    ),
    (
        "dryer",
        &[
            ("oven_dry_mass", "40 kg"),
            ("regain_before", "60 %"),
            ("regain_after", "16 %"),
            ("evaporation_rate", "15 kg/h"),
        ],
    ),
];
