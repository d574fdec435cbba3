//! A week as tables.

use super::{MachineWeek, Order, ROUNDING, Week};
use crate::caution;
use crate::quantity::print::{figure, fixed};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// What is beyond the week in words; the rest stands in the table.
const TOLD: usize = 12;

fn hours(x: f64) -> String {
    fixed(x, 2)
}

fn share(x: f64) -> String {
    format!("{} %", fixed(100.0 * x, 0))
}

impl Week {
    /// What there is to say in sentences: what does not fit, the bottleneck, how far it is sure.
    pub fn answer(&self) -> Vec<String> {
        let beyond = self.beyond();
        let mut lines = Vec::new();
        if beyond.is_empty() {
            lines
                .push(format!("All lots fit; the last is done after {} h.", figure(self.finish())));
        } else {
            let more = match beyond.len().saturating_sub(TOLD) {
                0 => String::new(),
                more => format!("; and {more} more"),
            };
            let told: Vec<String> = beyond
                .iter()
                .take(TOLD)
                .map(|(visit, over)| {
                    let machine = &self.machines[visit.machine].name;
                    format!("{} at the {machine} by {} h", self.lots[visit.lot].name, figure(*over))
                })
                .collect();
            lines.push(format!("Beyond the week: {}{more}.", told.join("; ")));
        }
        let most = self.bottleneck();
        lines.push(format!(
            "The bottleneck is the {}: work and cleaning take {} of its {} h.",
            most.name,
            share(most.taken()),
            figure(most.hours)
        ));
        lines
    }

    /// Lots, machines and what does not fit, as tables.
    pub fn report(&self) -> Report {
        Report {
            title: "A week of lots".to_owned(),
            blocks: [self.lots_in_order(), self.machines_in_order()]
                .into_iter()
                .chain(Block::cautions(caution::of(&["machines"])))
                .collect(),
        }
    }

    fn lots_in_order(&self) -> Block {
        let mut last = usize::MAX;
        let rows = self
            .visits
            .iter()
            .map(|v| {
                let (lot, machine) = (&self.lots[v.lot], &self.machines[v.machine]);
                let over = v.finish - machine.hours;
                let (name, colour) = if v.lot == last {
                    (String::new(), String::new())
                } else {
                    (lot.name.clone(), lot.colour.clone())
                };
                last = v.lot;
                let cleaned = if v.cleaned > 0.0 { hours(v.cleaned) } else { "–".to_owned() };
                let note = if over > ROUNDING {
                    format!("beyond the week by {} h", figure(over))
                } else {
                    String::new()
                };
                vec![
                    name,
                    colour,
                    machine.name.clone(),
                    cleaned,
                    hours(v.start),
                    hours(v.finish),
                    note,
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
        Block {
            title: format!("Lots in their order, {}, in hours from the start", self.order.words()),
            lead: self.answer(),
            columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
            rows,
            foot: vec![match self.tried {
                None => "No other order was tried.".to_owned(),
                Some(1) => "No two lots are as light as each other, so there was one order to try."
                    .to_owned(),
                Some(n) => format!(
                    "Of {n} orders, all that keep {}, none runs less beyond the week and, if none does, none ends sooner; \
                     orders that differ from machine to machine were not tried.",
                    match self.order {
                        Order::AsGiven => "the shades as given",
                        other => other.words(),
                    }
                ),
            }],
            ..Block::default()
        }
    }

    fn machines_in_order(&self) -> Block {
        let people = self.machines.iter().any(|m| m.person_hours.is_some());
        let row = |m: &MachineWeek| {
            let mut row = vec![
                m.name.clone(),
                hours(m.hours),
                hours(m.work),
                hours(m.cleaned),
                share(m.at_work()),
                share(m.taken()),
                hours(m.finish),
            ];
            if people {
                row.push(m.person_hours.map_or("–".to_owned(), hours));
            }
            row
        };
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
            title: "The machines, in hours".to_owned(),
            columns: columns.into_iter().map(|(name, align)| (name.to_owned(), align)).collect(),
            rows: self.machines.iter().map(row).collect(),
            foot: vec![
                "All machines start together, and lots pass them in one order; hours are those given, with no stops beyond them.".to_owned(),
            ],
            ..Block::default()
        }
    }
}
