//! A week of lots: nothing at two places at once, no hour lost or made, and for few lots the best of
//! all orders by brute force.

use hankwise::calculation::{Given, Solved};
use hankwise::mill::{Order, WEEK, lightness};
use proptest::prelude::*;

const COLOURS: [&str; 4] = ["white", "grey", "brown", "black"];

/// A lot: name, colour, hours at machine 0, 1, …
#[derive(Clone, Debug)]
struct Lot {
    name: String,
    colour: &'static str,
    hours: Vec<f64>,
}

fn lot(name: usize, colour: &'static str, hours: &[f64]) -> Lot {
    Lot { name: format!("lot {name}"), colour, hours: hours.to_vec() }
}

/// A machine: hours that it can run, cleaning between colours.
type Machine = (f64, f64);

fn given(lots: &[Lot], machines: &[Machine]) -> Given {
    let mut given = WEEK.blank();
    for (k, (open, clean)) in machines.iter().enumerate() {
        let (name, open, clean) =
            (format!("machine {k}"), format!("{open:.17} h"), format!("{clean:.17} h"));
        let row = [("name", name.as_str()), ("open_time", &open), ("clean_time", &clean)];
        given = given.with_row("machines", &row).unwrap();
    }
    for lot in lots {
        given.add_row("lots", row_of(&given, lot)).unwrap();
    }
    given
}

fn row_of(given: &Given, lot: &Lot) -> Given {
    let row = given.row("lots").unwrap();
    let mut row = row.with_texts(&[("name", &lot.name), ("colour", lot.colour)]).unwrap();
    for (k, hours) in lot.hours.iter().enumerate() {
        let (machine, time) = (format!("machine {k}"), format!("{hours:.17} h"));
        row = row.with_row("times", &[("machine", &machine), ("time", &time)]).unwrap();
    }
    row
}

fn run(lots: &[Lot], machines: &[Machine], order: Order, every: bool) -> Solved {
    let every = if every { "yes" } else { "no" };
    let given = given(lots, machines)
        .with_texts(&[("order", order.words()), ("try_orders", every)])
        .unwrap();
    WEEK.solve(given).unwrap()
}

fn value(week: &Solved, name: &str) -> f64 {
    week.find(name).unwrap().value
}

/// The lots in the order in which they are run.
fn order_of<'a>(week: &'a Solved, lots: &'a [Lot]) -> Vec<&'a Lot> {
    let names = week.results().iter().filter_map(|r| r.name.strip_suffix(".lightness"));
    names.map(|name| lots.iter().find(|lot| lot.name == name).unwrap()).collect()
}

/// All machines together, beyond the week.
fn beyond(week: &Solved, machines: usize) -> f64 {
    (0..machines).map(|k| value(week, &format!("machine {k}.beyond"))).sum()
}

fn lots() -> impl Strategy<Value = Vec<Lot>> {
    let one = (0..COLOURS.len(), proptest::collection::vec(0.0..12.0_f64, 3));
    proptest::collection::vec(one, 1..7).prop_map(|all| {
        all.iter().enumerate().map(|(k, (c, hours))| lot(k, COLOURS[*c], hours)).collect()
    })
}

fn orders() -> impl Strategy<Value = Order> {
    prop_oneof![Just(Order::LightToDark), Just(Order::DarkToLight), Just(Order::AsGiven)]
}

proptest! {
    #[test]
    fn nothing_is_at_two_places_at_once(
        lots in lots(), order in orders(), clean in 0.0..3.0_f64, every in any::<bool>(),
    ) {
        let machines = [(40.0, clean), (30.0, clean), (20.0, 0.0)];
        let week = run(&lots, &machines, order, every);
        let order = order_of(&week, &lots);
        let at = |lot: &Lot, k: usize, what: &str| value(&week, &format!("{}.machine {k}.{what}", lot.name));
        for k in 0..machines.len() {
            for pair in order.windows(2) {
                // Cleaning begins when the lot before has left, and the next starts after it.
                prop_assert!(at(pair[1], k, "clean_from") >= at(pair[0], k, "finish") - 1e-9);
                let cleaned = at(pair[1], k, "clean_time");
                prop_assert!(at(pair[1], k, "start") >= at(pair[1], k, "clean_from") + cleaned - 1e-9);
                let alike = pair[0].colour == pair[1].colour;
                let expected = if alike || k == 2 { 0.0 } else { clean };
                prop_assert!((cleaned - expected).abs() < 1e-12);
            }
        }
        for lot in &lots {
            for k in 1..machines.len() {
                prop_assert!(at(lot, k, "start") >= at(lot, k - 1, "finish") - 1e-9);
            }
        }
    }

    #[test]
    fn no_hour_is_lost_or_made(lots in lots(), order in orders()) {
        let machines = [(40.0, 1.0), (40.0, 2.0), (40.0, 0.5)];
        let week = run(&lots, &machines, order, false);
        for k in 0..machines.len() {
            let at = |what: &str| value(&week, &format!("machine {k}.{what}"));
            let given: f64 = lots.iter().map(|l| l.hours[k]).sum();
            prop_assert!((at("work_time") - given).abs() < 1e-9);
            // What lies between start and the last lot is work, cleaning or waiting: never less.
            prop_assert!(at("finish") >= at("work_time") + at("cleaning_time") - 1e-9);
        }
        let run_in = order_of(&week, &lots);
        let mut names: Vec<_> = run_in.iter().map(|l| l.name.clone()).collect();
        names.sort();
        let mut given: Vec<_> = lots.iter().map(|l| l.name.clone()).collect();
        given.sort();
        prop_assert_eq!(names, given);
        let lights: Vec<f64> = run_in.iter().map(|l| lightness(l.colour).unwrap()).collect();
        match order {
            Order::LightToDark => prop_assert!(lights.is_sorted_by(|a, b| a >= b)),
            Order::DarkToLight => prop_assert!(lights.is_sorted()),
            Order::AsGiven => prop_assert!(run_in.iter().zip(&lots).all(|(a, b)| a.name == b.name)),
        }
        for found in week.results() {
            let working = week.working(&found.name).unwrap();
            prop_assert_eq!(working.value().to_bits(), found.value.to_bits());
        }
    }

}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]
    #[test]
    fn the_order_kept_is_the_best_by_brute_force(
        hours in proptest::collection::vec(proptest::collection::vec(0.1..9.0_f64, 3), 1..6),
    ) {
        // Grey all of them, so that every order is allowed.
        let lots: Vec<Lot> = hours.iter().enumerate().map(|(k, h)| lot(k, "grey", h)).collect();
        let machines = [(15.0, 1.0), (15.0, 1.0), (15.0, 1.0)];
        let kept = run(&lots, &machines, Order::LightToDark, true);
        let mut best = (f64::INFINITY, f64::INFINITY);
        let mut count = 0;
        for order in all_orders(lots.len()) {
            let turned: Vec<Lot> = order.iter().map(|k| lots[*k].clone()).collect();
            let one = run(&turned, &machines, Order::AsGiven, false);
            let (beyond, finish) = (beyond(&one, 3), value(&one, "finish"));
            if beyond < best.0 - 1e-9 || (beyond <= best.0 + 1e-9 && finish < best.1) {
                best = (beyond, finish);
            }
            count += 1;
        }
        prop_assert!((value(&kept, "orders_tried") - f64::from(count)).abs() < 1e-9);
        prop_assert!((beyond(&kept, 3) - best.0).abs() < 1e-6);
        prop_assert!(value(&kept, "finish") <= best.1 + 1e-6);
    }
}

/// All orders of some places, by taking each as the first of the rest.
fn all_orders(n: usize) -> Vec<Vec<usize>> {
    if n == 0 {
        return vec![Vec::new()];
    }
    let mut all = Vec::new();
    for shorter in all_orders(n - 1) {
        for at in 0..n {
            let mut order = shorter.clone();
            order.insert(at, n - 1);
            all.push(order);
        }
    }
    all
}

#[test]
fn cleaning_is_short_to_darker_and_long_to_lighter() {
    let lots: Vec<Lot> = ["white", "grey", "grey", "black"]
        .iter()
        .enumerate()
        .map(|(k, colour)| lot(k, colour, &[2.0]))
        .collect();
    let mut week = WEEK.blank();
    let card = week.row("machines").unwrap();
    let card = card
        .with_texts(&[
            ("name", "machine 0"),
            ("open_time", "40 h"),
            ("clean_time", "9 h"),
            ("clean_time_to_darker", "30 min"),
            ("clean_time_to_lighter", "4 h"),
            ("colour", "black"),
        ])
        .unwrap();
    let change = [("colour_before", "grey"), ("colour_after", "black"), ("clean_time", "1.5 h")];
    week.add_row("machines", card.with_row("changes", &change).unwrap()).unwrap();
    for lot in &lots {
        week.add_row("lots", row_of(&week, lot)).unwrap();
    }
    let week = WEEK.solve(week).unwrap();
    let cleaned =
        lots.iter().map(|lot| value(&week, &format!("{}.machine 0.clean_time", lot.name)));
    assert_eq!(cleaned.collect::<Vec<_>>(), [4.0, 0.5, 0.0, 1.5]);
    assert!((value(&week, "finish") - 14.0).abs() < 1e-12);
    assert!((value(&week, "machine 0.work_share") - 8.0 / 40.0).abs() < 1e-12);
}

#[test]
fn what_does_not_fit_is_told_by_name_and_by_how_much() {
    let lots = [lot(0, "white", &[20.0, 10.0]), lot(1, "black", &[20.0, 10.0])];
    let week = run(&lots, &[(38.0, 2.0), (60.0, 0.0)], Order::LightToDark, false);
    let late: Vec<(&str, f64)> = week
        .results()
        .iter()
        .filter(|r| r.name.starts_with("lot") && r.name.ends_with(".beyond") && r.value > 0.0)
        .map(|r| (&*r.name, r.value))
        .collect();
    assert_eq!(late, [("lot 1.machine 0.beyond", 4.0)]);
    let text = week.report().text();
    assert!(text.contains("The bottleneck is the machine 0"), "{text}");
    assert!(text.contains("lot 1 at the machine 0 by 4 h"), "{text}");
    assert!(text.contains("No other order was tried"), "{text}");
}

#[test]
fn what_cannot_be_run_is_refused() {
    let refused = |given: Given| WEEK.solve(given).unwrap_err().to_string();
    let one = [(40.0, 1.0)];
    let good = lot(0, "grey", &[1.0]);
    assert!(refused(given(&[], &one)).contains("lots (lots) is missing"));
    assert!(refused(given(std::slice::from_ref(&good), &[])).contains("machines"));
    let error = refused(given(&[good.clone(), good.clone()], &one));
    assert!(error.contains("the name of two of the lots"), "{error}");
    let astray = lot(1, "grey", &[1.0, 1.0]);
    let error = refused(given(std::slice::from_ref(&astray), &one));
    assert!(error.contains("unknown machine 'machine 1'; did you mean 'machine 0'"), "{error}");
    let machine = Lot { name: "machine 0".to_owned(), ..good.clone() };
    let error = refused(given(std::slice::from_ref(&machine), &one));
    assert!(error.contains("a name among the lots and among the machines"), "{error}");
    let odd = row_of(&WEEK.blank(), &good).with_texts(&[("lightness", "120 %")]).unwrap_err();
    assert!(odd.to_string().contains("between 0 % and 100 %"), "{odd}");
    let error = refused(given(&[lot(0, "gray", &[1.0])], &one));
    assert!(error.contains("did you mean 'grey'"), "{error}");
    let nine: Vec<Lot> = (0..9).map(|k| lot(k, "grey", &[1.0])).collect();
    let error = refused(given(&nine, &one).with_texts(&[("try_orders", "yes")]).unwrap());
    assert!(error.contains("more than 40320"), "{error}");
}
