//! A week of lots: nothing at two places at once, no hour lost or made, and for few lots the best of
//! all orders by brute force.

use hankwise::mill::{Lot, Machine, MachineWeek, Order, Week, doubts, lightness, week};
use proptest::prelude::*;

const COLOURS: [&str; 4] = ["white", "grey", "brown", "black"];

fn lot(name: usize, colour: &str, hours: &[f64]) -> Lot {
    Lot {
        name: format!("lot {name}"),
        colour: colour.to_owned(),
        lightness: lightness(colour).unwrap(),
        hours: hours.iter().enumerate().map(|(k, h)| (format!("machine {k}"), *h)).collect(),
    }
}

fn machine(place: usize, hours: f64, clean_down: f64) -> Machine {
    Machine { clean_down, ..Machine::new(&format!("machine {place}"), hours) }
}

fn run(lots: &[Lot], machines: &[Machine], order: Order, every: bool) -> Week {
    week(lots, machines, order, every, &mut || true).unwrap()
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
        let machines = [machine(0, 40.0, clean), machine(1, 30.0, clean), machine(2, 20.0, 0.0)];
        let week = run(&lots, &machines, order, every);
        for (k, _) in machines.iter().enumerate() {
            let here: Vec<_> = week.visits.iter().filter(|v| v.machine == k).collect();
            for pair in here.windows(2) {
                // Cleaning begins when the lot before has left, and the next starts after it.
                prop_assert!(pair[1].clean_from >= pair[0].finish - 1e-9);
                prop_assert!(pair[1].start >= pair[1].clean_from + pair[1].cleaned - 1e-9);
                let alike = week.lots[pair[0].lot].colour == week.lots[pair[1].lot].colour;
                let cleaned = if alike || k == 2 { 0.0 } else { clean };
                prop_assert!((pair[1].cleaned - cleaned).abs() < 1e-12);
            }
        }
        for (k, _) in week.lots.iter().enumerate() {
            let own: Vec<_> = week.visits.iter().filter(|v| v.lot == k).collect();
            prop_assert_eq!(own.len(), 3);
            for pair in own.windows(2) {
                prop_assert!(pair[1].start >= pair[0].finish - 1e-9);
                prop_assert_eq!(pair[1].machine, pair[0].machine + 1);
            }
        }
    }

    #[test]
    fn no_hour_is_lost_or_made(lots in lots(), order in orders()) {
        let machines = [machine(0, 40.0, 1.0), machine(1, 40.0, 2.0), machine(2, 40.0, 0.5)];
        let week = run(&lots, &machines, order, false);
        for (k, m) in week.machines.iter().enumerate() {
            let given: f64 = lots.iter().map(|l| l.hours[k].1).sum();
            prop_assert!((m.work - given).abs() < 1e-9);
            // What lies between start and the last lot is work, cleaning or waiting: never less.
            prop_assert!(m.finish >= m.work + m.cleaned - 1e-9);
        }
        let mut names: Vec<_> = week.lots.iter().map(|l| l.name.clone()).collect();
        names.sort();
        let mut given: Vec<_> = lots.iter().map(|l| l.name.clone()).collect();
        given.sort();
        prop_assert_eq!(names, given);
        let lights: Vec<f64> = week.lots.iter().map(|l| l.lightness).collect();
        match order {
            Order::LightToDark => prop_assert!(lights.is_sorted_by(|a, b| a >= b)),
            Order::DarkToLight => prop_assert!(lights.is_sorted()),
            Order::AsGiven => prop_assert!(week.lots.iter().zip(&lots).all(|(a, b)| a.name == b.name)),
        }
    }

    #[test]
    fn the_order_kept_is_the_best_by_brute_force(
        hours in proptest::collection::vec(proptest::collection::vec(0.1..9.0_f64, 3), 1..6),
    ) {
        // Grey all of them, so that every order is allowed.
        let lots: Vec<Lot> = hours.iter().enumerate().map(|(k, h)| lot(k, "grey", h)).collect();
        let machines = [machine(0, 15.0, 1.0), machine(1, 15.0, 1.0), machine(2, 15.0, 1.0)];
        let kept = run(&lots, &machines, Order::LightToDark, true);
        let mut best = (f64::INFINITY, f64::INFINITY);
        let mut count = 0;
        for order in all_orders(lots.len()) {
            let turned: Vec<Lot> = order.iter().map(|k| lots[*k].clone()).collect();
            let one = run(&turned, &machines, Order::AsGiven, false);
            let beyond: f64 = one.machines.iter().map(MachineWeek::beyond).sum();
            if beyond < best.0 - 1e-9 || (beyond <= best.0 + 1e-9 && one.finish() < best.1) {
                best = (beyond, one.finish());
            }
            count += 1;
        }
        prop_assert_eq!(kept.tried, Some(count));
        let beyond: f64 = kept.machines.iter().map(MachineWeek::beyond).sum();
        prop_assert!((beyond - best.0).abs() < 1e-6);
        prop_assert!(kept.finish() <= best.1 + 1e-6);
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
    let card = Machine {
        clean_down: 9.0,
        to_darker: Some(0.5),
        to_lighter: Some(4.0),
        from_to: vec![("grey".to_owned(), "black".to_owned(), 1.5)],
        colour: Some(("black".to_owned(), 0.0)),
        ..Machine::new("machine 0", 40.0)
    };
    let lots: Vec<Lot> = ["white", "grey", "grey", "black"]
        .iter()
        .enumerate()
        .map(|(k, colour)| lot(k, colour, &[2.0]))
        .collect();
    let week = run(&lots, &[card], Order::LightToDark, false);
    let cleaned: Vec<f64> = week.visits.iter().map(|v| v.cleaned).collect();
    assert_eq!(cleaned, [4.0, 0.5, 0.0, 1.5]);
    assert!((week.finish() - 14.0).abs() < 1e-12);
    assert!((week.machines[0].at_work() - 8.0 / 40.0).abs() < 1e-12);
}

#[test]
fn what_does_not_fit_is_told_by_name_and_by_how_much() {
    let lots = [lot(0, "white", &[20.0, 10.0]), lot(1, "black", &[20.0, 10.0])];
    let machines = [machine(0, 38.0, 2.0), machine(1, 60.0, 0.0)];
    let week = run(&lots, &machines, Order::LightToDark, false);
    let beyond: Vec<_> = week.beyond().iter().map(|(v, by)| (v.lot, v.machine, *by)).collect();
    assert_eq!(beyond, [(1, 0, 4.0)]);
    assert_eq!(week.bottleneck().name, "machine 0");
    let text = week.report().text();
    assert!(text.contains("lot 1 at the machine 0 by 4 h"), "{text}");
    assert!(text.contains("No other order was tried"), "{text}");
}

#[test]
fn what_cannot_be_run_is_refused() {
    let refused = |lots: &[Lot], machines: &[Machine]| {
        week(lots, machines, Order::LightToDark, false, &mut || true).unwrap_err().to_string()
    };
    let one = [machine(0, 40.0, 1.0)];
    let good = lot(0, "grey", &[1.0]);
    assert!(refused(&[], &one).contains("no lot"));
    assert!(refused(std::slice::from_ref(&good), &[]).contains("no machine"));
    assert!(refused(&[good.clone(), good.clone()], &one).contains("given twice"));
    let mut astray = good.clone();
    astray.hours[0].0 = "machine O".to_owned();
    assert!(refused(&[astray], &one).contains("did you mean 'machine 0'"));
    let mut odd = good.clone();
    odd.lightness = 120.0;
    assert!(refused(&[odd], &one).contains("from 0 for black to 100"));
    let error = lightness("gray").unwrap_err().to_string();
    assert!(error.contains("did you mean 'grey'"), "{error}");
    let nine: Vec<Lot> = (0..9).map(|k| lot(k, "grey", &[1.0])).collect();
    let error = week(&nine, &one, Order::LightToDark, true, &mut || true).unwrap_err();
    assert!(error.to_string().contains("more than 40320"), "{error}");
    let eight = &nine[..8];
    let mut asked = 0;
    let stopped = week(eight, &one, Order::LightToDark, true, &mut || {
        asked += 1;
        asked < 5
    });
    assert!(stopped.unwrap_err().to_string().contains("stopped after 1024 of 40320"));
}

#[test]
fn a_lightness_that_looks_like_a_share_is_doubted() {
    let doubted = |lightness: f64| {
        let one = Lot { lightness, ..lot(0, "grey", &[1.0]) };
        !doubts(&[one], &[machine(0, 40.0, 1.0)]).is_empty()
    };
    assert!(doubted(0.005) && doubted(0.4));
    // Black is black.
    assert!(!doubted(0.0) && !doubted(1.0) && !doubted(40.0));
}
