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

    #[test]
    fn every_end_is_in_a_tassel(
        ends in 20_u16..3000, strand in 1_u8..10, strands in 2_u8..5, contraction in 0.0..0.35,
        knot in 0.0..0.05, wanted in 0.03..0.3, pieces in 1_u16..60, count in 20.0..1500.0,
        round in 0.002..0.1, heads in 1_u8..9, people in 1_u8..5,
    ) {
        let per_tassel = f64::from(strand) * f64::from(strands);
        prop_assume!(per_tassel <= f64::from(ends));
        let tassel = [
            ("ends", f64::from(ends)), ("strand_ends", strand.into()), ("strands", strands.into()),
            ("contraction", contraction), ("knot_length", knot), ("pieces", pieces.into()),
            ("warp_count", count), ("round_time", round), ("tassels_at_once", heads.into()),
            ("people", people.into()),
        ];
        let twisted = run("fringe_twisting", &[&tassel[..], &[("wanted_fringe", wanted)]].concat());
        let (tassels, last) = (of(&twisted, "tassels"), of(&twisted, "last_tassel_ends"));
        prop_assert!(near((tassels - 1.0) * per_tassel + last, ends.into()));
        prop_assert!(last >= 1.0 - 1e-9 && last <= per_tassel && tassels.fract() == 0.0);
        // A full tassel weighs what its ends weigh, the knot apart.
        let in_ends = per_tassel * count * (of(&twisted, "fringe") - knot);
        prop_assert!(near(of(&twisted, "tassel_count") * wanted, in_ends));
        let fringes = 2.0 * f64::from(ends) * count * of(&twisted, "fringe") * 1e-6;
        prop_assert!(near(of(&twisted, "fringe_mass"), fringes));
        // The fringe to leave gives the fringe wanted.
        let fringe = of(&twisted, "fringe");
        let again = run("fringe_twisting", &[&tassel[..], &[("fringe", fringe)]].concat());
        prop_assert!(near(of(&again, "twisted_fringe"), wanted));
        // The rounds of all hold the tassels, and one round less does not.
        let rounds = of(&twisted, "time") / round;
        let each = f64::from(heads) * f64::from(people);
        let all = 2.0 * f64::from(pieces) * tassels;
        prop_assert!(near(of(&twisted, "all_tassels"), all));
        prop_assert!(rounds * each > all - 1e-4 && (rounds - 1.0) * each < all);
        prop_assert!(near(of(&twisted, "person_hours"), of(&twisted, "time") * f64::from(people)));
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

/// A throw of 812 ends, two strands of 4 to a tassel: 101 tassels of 8 and one of 4. What hangs 10 cm
/// after 20 % of contraction was 12.5 cm, and the knot takes 3 cm. Twelve throws have 24 × 102 = 2448
/// tassels, a minute each. Of 300 tex, 1624 × 0.155 m × 0.3 g/m = 75.516 g of fringe; eight ends are
/// 2400 tex, and 3000 tex once a metre of them is 0.8 m. A width of 1.53 m has a tassel every 1.5 cm.
#[test]
fn twelve_throws_are_fringed() {
    let throws = [
        ("ends", "812"),
        ("strand_ends", "4"),
        ("contraction", "20 %"),
        ("knot_length", "3 cm"),
        ("wanted_fringe", "10 cm"),
        ("pieces", "12"),
        ("width", "1.53 m"),
        ("warp_count", "300 tex"),
        ("round_time", "1 min"),
    ];
    let fringed = read("fringe_twisting", &throws).unwrap();
    for (name, expected) in [
        ("ends_per_tassel", 8.0),
        ("tassels", 102.0),
        ("last_tassel_ends", 4.0),
        ("tassel_spacing", 0.015),
        ("fringe", 0.155),
        ("twisted_fringe", 0.10),
        ("tassel_count", 3000.0),
        ("fringe_mass", 0.075_516),
        ("all_tassels", 2448.0),
        ("time_per_piece", 3.4),
        ("time", 40.8),
        ("person_hours", 40.8),
    ] {
        assert!(near(of(&fringed, name), expected), "{name}: {}", of(&fringed, name));
    }
    // Two people with four heads each: 306 rounds, and 51 for a throw by one of them.
    let heads = [("tassels_at_once", "4"), ("people", "2")];
    let fringed = read("fringe_twisting", &[&throws[..], &heads].concat()).unwrap();
    for (name, expected) in [("time", 5.1), ("time_per_piece", 0.85), ("person_hours", 10.2)] {
        assert!(near(of(&fringed, name), expected), "{name}: {}", of(&fringed, name));
    }
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
    let fringe = [("ends", "30"), ("contraction", "20 %")];
    for (more, said) in [
        (&[("strand_ends", "4"), ("fringe", "3 cm"), ("knot_length", "4 cm")][..], "shorter knot"),
        (&[("strand_ends", "16"), ("fringe", "12 cm")], "fewer ends in a strand"),
        (&[("strand_ends", "4")], "the length of the fringe"),
    ] {
        let error = refused("fringe_twisting", &[&fringe, more].concat());
        assert!(error.contains(said), "{more:?}: {error}");
    }
    let last = read(
        "fringe_twisting",
        &[("ends", "33"), ("contraction", "20 %"), ("strand_ends", "4"), ("fringe", "12 cm")],
    );
    let last = last.unwrap();
    let [warned] = last.warnings() else { panic!("{:?}", last.warnings()) };
    assert!(warned.contains("the last tassel has only 1 of 8 ends"), "{warned}");
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
    (
        "fringe_twisting",
        &[
            ("ends", "812"),
            ("strand_ends", "4"),
            ("contraction", "20 %"),
            ("knot_length", "3 cm"),
            ("fringe", "15 cm"),
            ("pieces", "12"),
            ("width", "1.4 m"),
            ("warp_count", "257 tex"),
            ("round_time", "1 min"),
            ("people", "2"),
        ],
    ),
];
