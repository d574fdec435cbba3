//! A week as tables.

use super::{Order, WeekInputs, WeekResults};
use crate::calculation::Check;
use crate::quantity::Count;
use crate::quantity::print::{figure, fixed};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

type Inputs = WeekInputs<f64>;
type Results = WeekResults<f64>;

/// What is beyond the week in words; the rest is in the table.
const TOLD: usize = 12;

/// Hours that only rounding makes.
const ROUNDING: f64 = 1e-9;

fn hours(x: f64) -> String {
    fixed(x, 2)
}

fn share(x: f64) -> String {
    format!("{} %", fixed(100.0 * x, 0))
}

/// Lots, machines and what does not fit, as tables.
pub(super) fn report(given: &Inputs, found: &Results, _: &Check<'_>) -> Report {
    Report {
        title: "A week of lots".to_owned(),
        blocks: vec![lots(given, found), machines(given, found)],
    }
}

/// Each visit with the place of its lot and of its machine among those given, and by how much it runs
/// beyond the week.
fn visits<'a>(
    given: &'a Inputs,
    found: &'a Results,
) -> impl Iterator<Item = (usize, usize, &'a super::Visit<f64>, f64)> {
    found.visits.iter().filter_map(|visit| {
        let lot =
            given.lots.iter().position(|lot| visit.name.starts_with(&format!("{}.", lot.name)))?;
        let machine = visit.name.strip_prefix(&format!("{}.", given.lots[lot].name))?;
        let machine = given.machines.iter().position(|m| m.name == machine)?;
        let beyond = visit.beyond.value();
        Some((lot, machine, visit, if beyond > ROUNDING { beyond } else { 0.0 }))
    })
}

/// What there is to say in sentences: what does not fit, the bottleneck.
fn answer(given: &Inputs, found: &Results) -> Vec<String> {
    let over: Vec<String> = visits(given, found)
        .filter(|(.., beyond)| *beyond > 0.0)
        .map(|(lot, machine, _, beyond)| {
            let (lot, machine) = (&given.lots[lot].name, &given.machines[machine].name);
            format!("{lot} at the {machine} by {} h", figure(beyond))
        })
        .collect();
    let mut lines = vec![if over.is_empty() {
        format!("All lots fit; the last is done after {} h.", figure(found.finish.value()))
    } else {
        let more = match over.len().saturating_sub(TOLD) {
            0 => String::new(),
            more => format!("; and {more} more"),
        };
        format!("Beyond the week: {}{more}.", over[..over.len().min(TOLD)].join("; "))
    }];
    // The first of several; a week has a machine.
    let all = given.machines.iter().zip(&found.machines);
    let most =
        all.reduce(
            |most, next| {
                if next.1.use_share.value() > most.1.use_share.value() { next } else { most }
            },
        );
    lines.extend(most.map(|(machine, week)| {
        format!(
            "The bottleneck is the {}: work and cleaning take {} of its {} h.",
            week.name,
            share(week.use_share.value()),
            figure(machine.open_time.value())
        )
    }));
    lines
}

fn lots(given: &Inputs, found: &Results) -> Block {
    let mut last = usize::MAX;
    let rows = visits(given, found)
        .map(|(lot, machine, visit, beyond)| {
            let one = &given.lots[lot];
            let (name, colour) = if lot == last { ("", "") } else { (&*one.name, &*one.colour) };
            last = lot;
            let cleaning = visit.clean_time.value();
            vec![
                name.to_owned(),
                colour.to_owned(),
                given.machines[machine].name.clone(),
                if cleaning > 0.0 { hours(cleaning) } else { "–".to_owned() },
                hours(visit.start.value()),
                hours(visit.finish.value()),
                if beyond > 0.0 {
                    format!("beyond the week by {} h", figure(beyond))
                } else {
                    String::new()
                },
            ]
        })
        .collect();
    let columns = [
        ("lot", Left),
        ("colour", Left),
        ("machine", Left),
        ("cleaned for", Right),
        ("starts", Right),
        ("leaves", Right),
        ("", Left),
    ];
    let keep = match given.order {
        Order::AsGiven => "the shades as given",
        other => other.words(),
    };
    let title = format!("Lots in their order, {}, in hours from the start", given.order.words());
    Block {
        lead: answer(given, found),
        foot: vec![match found.orders_tried.map(Count::value) {
            None => "No other order was tried.".to_owned(),
            Some(1.0) => {
                "No two lots are as light as each other, so there was one order to try.".to_owned()
            }
            Some(n) => format!(
                "Of {} orders, all that keep {keep}, none runs less beyond the week and, if none does, \
                 none ends sooner; orders that differ from machine to machine were not tried.",
                figure(n)
            ),
        }],
        ..Block::of(title, &columns, rows)
    }
}

fn machines(given: &Inputs, found: &Results) -> Block {
    let people = found.machines.iter().any(|m| m.person_hours.is_some());
    let rows = given.machines.iter().zip(&found.machines).map(|(machine, week)| {
        let mut row = vec![
            week.name.clone(),
            hours(machine.open_time.value()),
            hours(week.work_time.value()),
            hours(week.cleaning_time.value()),
            share(week.work_share.value()),
            share(week.use_share.value()),
            hours(week.finish.value()),
        ];
        if people {
            row.push(week.person_hours.map_or("–".to_owned(), |time| hours(time.value())));
        }
        row
    });
    let mut columns = vec![
        ("machine", Left),
        ("open", Right),
        ("at work", Right),
        ("cleaning", Right),
        ("work of open", Right),
        ("with cleaning", Right),
        ("last lot leaves", Right),
    ];
    if people {
        columns.push(("hours of people", Right));
    }
    Block {
        foot: vec![
            "All machines start together, and lots pass them in one order; hours are those given, with no stops beyond them.".to_owned(),
        ],
        ..Block::of("The machines, in hours", &columns, rows.collect())
    }
}
