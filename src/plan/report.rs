//! A result as tables: the same rows for the terminal, for a page and for a notebook.

use super::result::{PlanResult, StageResult};
use super::screen::{parts, range};
use super::stock::PARTS;
use crate::caution;
use crate::quantity::Kind;
use crate::quantity::print::{fixed, of_kind};
use crate::table::Align::{self, Left, Right};
use crate::table::{Block, Report};

/// How much of a result is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Extent {
    /// The first screen: the promise, what to measure first, the stages, the machine settings.
    First,
    /// Everything.
    All,
}

pub(super) fn columns(columns: &[(&str, Align)]) -> Vec<(String, Align)> {
    columns.iter().map(|(name, align)| ((*name).to_owned(), *align)).collect()
}

impl PlanResult {
    /// The result as tables.
    pub fn report(&self, extent: Extent) -> Report {
        let mut blocks = vec![self.promise(extent)];
        let first = self.measure_first(extent);
        if !first.title.is_empty() {
            blocks.push(first);
        }
        blocks.push(self.outcome(extent));
        if extent == Extent::All {
            blocks.push(self.on_the_scale());
        }
        blocks.push(self.to_set(extent));
        if extent == Extent::All {
            blocks.extend(self.divided());
        } else {
            blocks.extend(self.splits.iter().map(|split| self.weighing(split)));
        }
        if extent == Extent::All {
            blocks.push(self.every_kilogram());
            blocks.extend(Block::caution_lines(self.caution_lines()));
        }
        blocks.extend(self.unusual());
        Report { title: self.title(), blocks }
    }

    /// The lot, the wool taken in, the file.
    pub(super) fn title(&self) -> String {
        let greasy = self.say.mass(self.intake.0);
        format!("{}: {greasy} {} of greasy wool ({})", self.name, self.say.mass_unit(), self.file)
    }

    /// What looks wrong.
    pub(super) fn unusual(&self) -> Option<Block> {
        let lead = self.warnings.clone();
        let title = "Unusual values".to_owned();
        (!lead.is_empty()).then(|| Block { title, lead, ..Block::default() })
    }

    pub(super) fn outcome(&self, extent: Extent) -> Block {
        let (all, simulated) = (extent == Extent::All, self.simulated > 0);
        let mut names = vec![("stage", Left), ("product", Left), ("planned", Right)];
        if simulated && all {
            names.extend([("low", Right), ("middle", Right), ("high", Right)]);
        } else if simulated {
            names.push(("in 9 lots of 10", Right));
        }
        names.push(("on the scale", Right));
        let kg = |x: f64| self.say.mass(x);
        let stated = 1.0 + self.stated_regain;
        let mut intake =
            vec!["intake".to_owned(), "greasy wool".to_owned(), kg(self.intake.1 * stated)];
        let bands = match (simulated, all) {
            (false, _) => 0,
            (true, false) => 1,
            (true, true) => 3,
        };
        intake.extend(vec![String::new(); bands]);
        intake.push(kg(self.intake.0));
        let mut rows = vec![intake];
        for stage in &self.stages {
            let mut row = vec![stage.name.clone(), stage.makes.clone(), kg(stage.stated_mass)];
            if all {
                row.extend(parts(stage.band, &kg));
            } else {
                row.extend(stage.band.map(|b| range(b, &kg)));
            }
            row.push(kg(stage.stock.total()));
            rows.push(row);
        }
        let regain = of_kind(self.stated_regain, Kind::Regain);
        Block {
            title: if self.weighed {
                format!("Out of each stage, {} as weighed", self.say.mass_unit())
            } else {
                format!("Fibre out of each stage, {} at {regain} regain", self.say.mass_unit())
            },
            columns: columns(&names),
            rows,
            foot: vec![if self.weighed {
                "The clean fibre of the wool is not known; write clean in [lot] to get regains, counts and \
                 settings."
                    .to_owned()
            } else {
                "On the scale: planned mass including water, oil and dirt.".to_owned()
            }],
            ..Block::default()
        }
    }

    /// What is on the scale after each stage, by its parts.
    pub(super) fn on_the_scale(&self) -> Block {
        let kg = |x: f64| self.say.mass(x);
        let shown = self.parts_shown();
        let row = |stage: &StageResult| {
            let parts = stage.stock.parts().into_iter().take(shown).map(kg);
            [stage.name.clone(), kg(stage.stock.total())].into_iter().chain(parts).collect()
        };
        let mut names = vec![("stage", Left), ("total", Right)];
        names.extend(PARTS[..shown].iter().map(|part| (*part, Right)));
        Block {
            title: format!("On the scale after each stage, {}, planned", self.say.mass_unit()),
            columns: columns(&names),
            rows: self.stages.iter().map(row).collect(),
            ..Block::default()
        }
    }

    fn to_set(&self, extent: Extent) -> Block {
        let mut last = String::new();
        let rows = self
            .settings
            .iter()
            .filter(|s| s.main || extent == Extent::All)
            .map(|s| {
                let place = match s.of.as_str() {
                    "" => s.stage.clone(),
                    of => format!("{}, {of}", s.stage),
                };
                let stage = if place == last { String::new() } else { place.clone() };
                last = place;
                let value = self.say.of_setting(s);
                let note = match extent {
                    Extent::First => s.note.clone(),
                    Extent::All if s.note.is_empty() => s.key.clone(),
                    Extent::All => format!("{}: {}", s.key, s.note),
                };
                vec![stage, s.words.clone(), value, note]
            })
            .collect();
        let names =
            vec![("machine", Left), ("set or weigh", Left), ("value", Right), ("note", Left)];
        let foot = match extent {
            Extent::First => Vec::new(),
            Extent::All => {
                vec![
                    "Names such as mule.twist are for --working, which shows how the value is \
                      calculated."
                        .to_owned(),
                ]
            }
        };
        Block {
            title: "Machine settings".to_owned(),
            columns: columns(&names),
            rows,
            foot,
            cautions: match extent {
                Extent::First => vec![self.cautions_in_short()],
                Extent::All => Vec::new(),
            },
            ..Block::default()
        }
    }

    /// How many parts have a column: the last is the dye, of lots that are dyed.
    fn parts_shown(&self) -> usize {
        let dyed = self.account.iter().any(|line| line.stock.dye.abs() > 0.0);
        if dyed { PARTS.len() } else { PARTS.len() - 1 }
    }

    pub(super) fn every_kilogram(&self) -> Block {
        let mut rows = Vec::new();
        let unit = self.say.mass_unit();
        let kg = |x: f64| {
            let x = self.say.number(x, Kind::Mass);
            if x.abs() < 5e-4 { "–".to_owned() } else { fixed(x, 3) }
        };
        let shown = self.parts_shown();
        let mut sum = [0.0; PARTS.len()];
        for line in &self.account {
            let sign = if line.added { -1.0 } else { 1.0 };
            for (sum, part) in sum.iter_mut().zip(line.stock.parts()) {
                *sum += sign * part;
            }
            let mut row = vec![line.stage.clone(), line.to.clone()];
            row.extend(line.stock.parts().into_iter().take(shown).map(|p| kg(sign * p)));
            rows.push(row);
        }
        let mut row = vec!["total".to_owned(), "greasy wool".to_owned()];
        row.extend(sum.into_iter().take(shown).map(kg));
        rows.push(row);
        let mut names = vec![("stage", Left), ("went to", Left)];
        names.extend(PARTS[..shown].iter().map(|part| (*part, Right)));
        let unexplained = self.intake.0 - sum.iter().sum::<f64>();
        Block {
            title: format!("Where every kilogram goes, in {unit}, planned"),
            columns: columns(&names),
            rows,
            foot: vec![
                "Minus: added to the lot (oil, water). For --working: sort.lost and so on."
                    .to_owned(),
                format!(
                    "Balance closes to {} {unit}.",
                    fixed(self.say.number(unexplained, Kind::Mass), 2)
                ),
            ],
            ..Block::default()
        }
    }

    /// Each caution once, with the stages that it is for.
    pub(super) fn caution_lines(&self) -> Vec<String> {
        let places = self.cautions_by_place();
        let lines = caution::CAUTIONS.iter().filter_map(|caution| {
            let at = places.iter().filter(|(_, names)| names.contains(&caution.name));
            let at: Vec<&str> = at.map(|(place, _)| *place).collect();
            (!at.is_empty()).then(|| caution.line(&at))
        });
        lines.collect()
    }
    /// The names of the cautions of each stage, of the loom and of finishing.
    pub(super) fn cautions_by_place(&self) -> Vec<(&str, &'static [&'static str])> {
        let stages = self.stages.iter().map(|s| (s.name.as_str(), s.cautions));
        let after = self.cautions.iter().map(|(machine, names)| (machine.as_str(), *names));
        stages.chain(after).collect()
    }
    /// How many hazards there are, and where to read of them.
    fn cautions_in_short(&self) -> String {
        let places = self.cautions_by_place();
        let named = |name: &&str| places.iter().any(|(_, names)| names.contains(name));
        let names: Vec<&str> = caution::CAUTIONS.iter().map(|c| c.name).filter(named).collect();
        format!(
            "Cautions for {} hazards on this route ({}): --all or the papers.",
            names.len(),
            names.join(", ")
        )
    }
}
