//! A result as tables: the same rows for the terminal, for a page and for a notebook.

use super::result::{Band, PlanResult};
use super::stock::PARTS;
use crate::caution;
use crate::quantity::Kind;
use crate::quantity::print::{constant, fixed, of_kind};
use crate::table::Align::{self, Left, Right};
use crate::table::{Block, Report};

/// How much of a result is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Extent {
    /// The first screen: the promise, the stages, what to set, what to measure first.
    First,
    /// All there is.
    All,
}

pub(super) fn columns(columns: &[(&str, Align)]) -> Vec<(String, Align)> {
    columns.iter().map(|(name, align)| ((*name).to_owned(), *align)).collect()
}

impl PlanResult {
    /// The result as tables.
    pub fn report(&self, extent: Extent) -> Report {
        let mut blocks =
            vec![self.promise(), self.outcome(extent), self.to_set(extent), self.first()];
        if extent == Extent::All {
            blocks.push(self.every_kilogram());
            blocks.extend(Block::caution_lines(self.caution_lines()));
        }
        if !self.warnings.is_empty() {
            blocks.push(Block {
                title: "Unusual figures".to_owned(),
                lead: self.warnings.clone(),
                ..Block::default()
            });
        }
        let title = format!("{} ({})", self.name, self.file);
        Report { title, blocks }
    }

    /// The answer in a sentence or two.
    pub fn answer(&self) -> Vec<String> {
        let list = |count: &dyn Fn(&super::GoodResult) -> Option<f64>| {
            let parts: Vec<String> =
                self.goods.iter().filter_map(|g| count(g).map(|n| pieces(n, &g.name))).collect();
            listed(&parts)
        };
        let promised = list(&|g| g.want.map(f64::from));
        let made = list(&|g| Some(g.made));
        let margin = self.margin.likely;
        let spare = pieces((margin.abs() + 1e-9).floor(), &self.margin.good);
        let verdict = match self.margin.chance {
            None if self.is_enough() => "ENOUGH by the likely figures",
            None => "NOT ENOUGH by the likely figures",
            Some(chance) if chance >= 0.95 => "ENOUGH",
            Some(chance) if chance >= 0.5 => "PROBABLY ENOUGH, but not sure",
            Some(chance) if chance >= 0.05 => "PROBABLY NOT ENOUGH",
            Some(_) => "NOT ENOUGH",
        };
        let by = if self.is_enough() {
            format!("{spare} to spare")
        } else {
            let short = pieces((margin.abs() - 1e-9).ceil(), &self.margin.good);
            let gives_way = if self.goods.len() > 1 {
                format!(
                    " (the {} give way, the goods before them are served first)",
                    plural(&self.margin.good)
                )
            } else {
                String::new()
            };
            format!("short of yarn for {short}{gives_way}")
        };
        let promised = if promised.is_empty() { "nothing counted".to_owned() } else { promised };
        let mut lines = vec![
            format!("{verdict}."),
            format!("Promised {promised}; the likely figures make {made}: {by}."),
        ];
        if let Some(chance) = self.margin.chance {
            lines.push(format!(
                "Chance that the whole promise is met: {}, of {} draws (seed {}).",
                percent(chance),
                fixed(self.draws as f64, 0),
                self.seed
            ));
        } else {
            lines.push(self.why_no_chance());
        }
        lines
    }

    fn why_no_chance(&self) -> String {
        if self.uncertain == 0 {
            "Every figure is taken as known: write low, likely and high to see the chance."
                .to_owned()
        } else {
            format!(
                "No draws were made: {} figures are uncertain, so the chance is not known.",
                self.uncertain
            )
        }
    }

    pub(super) fn promise(&self) -> Block {
        let mut names = vec![("goods", Left), ("promised", Right), ("likely figures", Right)];
        let drawn = self.draws > 0;
        if drawn {
            names.extend([("low", Right), ("middle", Right), ("high", Right), ("chance", Right)]);
        }
        let mut rows: Vec<Vec<String>> = self
            .goods
            .iter()
            .map(|good| {
                let name = if good.rest {
                    format!("{} (takes the rest)", good.name)
                } else {
                    good.name.clone()
                };
                let want = good.want.map_or("–".to_owned(), |n| n.to_string());
                let mut row = vec![name, want, fixed(good.made, 0)];
                if drawn {
                    row.extend(band(good.band, &|x| fixed(x, 0)));
                    row.push(good.chance.map_or(String::new(), percent));
                }
                row
            })
            .collect();
        let mut row = vec![
            format!("to spare (short: −), as {}", plural(&self.margin.good)),
            String::new(),
            fixed(self.margin.likely, 1),
        ];
        if drawn {
            row.extend(band(self.margin.band, &|x| fixed(x, 1)));
            row.push(self.margin.chance.map_or(String::new(), percent));
        }
        rows.push(row);
        let foot = if drawn {
            vec!["low and high: one lot in twenty lies below, one above.".to_owned()]
        } else {
            Vec::new()
        };
        Block {
            title: "Will the lot make what was promised?".to_owned(),
            lead: self.answer().into_iter().chain(self.shortfalls.iter().cloned()).collect(),
            columns: columns(&names),
            rows,
            foot,
            ..Block::default()
        }
    }

    pub(super) fn outcome(&self, extent: Extent) -> Block {
        let drawn = self.draws > 0;
        let mut names = vec![("stage", Left), ("what comes out", Left)];
        names.extend(if drawn {
            vec![("low", Right), ("likely", Right), ("high", Right)]
        } else {
            vec![("likely", Right)]
        });
        names.push(("scale reads", Right));
        if extent == Extent::All {
            names.extend(PARTS.map(|part| (part, Right)));
        }
        let kg = |x: f64| self.say.mass(x);
        let stated = 1.0 + self.stated_regain;
        let mut rows = Vec::new();
        let mut intake = vec!["intake".to_owned(), "greasy wool".to_owned()];
        if drawn {
            intake.extend([String::new(), kg(self.greasy.1 * stated), String::new()]);
        } else {
            intake.push(kg(self.greasy.1 * stated));
        }
        intake.push(kg(self.greasy.0));
        if extent == Extent::All {
            intake.extend(PARTS.map(|_| String::new()));
        }
        rows.push(intake);
        for stage in &self.stages {
            let mut row = vec![stage.name.clone(), stage.makes.clone()];
            match stage.band {
                Some(_) => row.extend(band(stage.band, &kg)),
                None => row.push(kg(stage.stated)),
            }
            row.push(kg(stage.stock.total()));
            if extent == Extent::All {
                row.extend(stage.stock.parts().map(kg));
            }
            rows.push(row);
        }
        let regain = of_kind(self.stated_regain, Kind::Regain);
        Block {
            title: format!("What comes out at each stage, {} of fibre at {regain} regain", self.say.mass_unit()),
            columns: columns(&names),
            rows,
            foot: vec![
                "scale reads: the same with the water, oil and dirt that are on it then, likely figures.".to_owned(),
            ],
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
                // Where several goods go over a machine its figures are named machine.good.figure.
                let place = match s.key.split('.').collect::<Vec<_>>()[..] {
                    [machine, good, _] => format!("{machine}, {good}"),
                    _ => s.stage.clone(),
                };
                let stage = if place == last { String::new() } else { place.clone() };
                last = place;
                let value = self.say.figure(s.value, s.kind);
                let mut row = vec![stage, s.words.clone(), value, s.note.clone()];
                if extent == Extent::All {
                    row.push(s.key.clone());
                }
                row
            })
            .collect();
        let mut names =
            vec![("machine", Left), ("set or weigh", Left), ("figure", Right), ("note", Left)];
        if extent == Extent::All {
            names.push(("name for --working", Left));
        }
        Block {
            title: "What to set at each machine".to_owned(),
            columns: columns(&names),
            rows,
            cautions: match extent {
                Extent::First => vec![self.cautions_in_short()],
                Extent::All => Vec::new(),
            },
            ..Block::default()
        }
    }

    pub(super) fn first(&self) -> Block {
        let mut block = Block { title: "What to measure first".to_owned(), ..Block::default() };
        if self.drivers.is_empty() {
            block.lead.push(self.why_no_chance());
            return block;
        }
        let good = plural(&self.margin.good);
        block.lead.push(format!(
            "How much of the uncertainty would go if the figure were known, and the {good} to spare with it at its ends."
        ));
        block.columns = columns(&[
            ("figure", Left),
            ("what it is", Left),
            ("share", Right),
            ("at its low", Right),
            ("at its high", Right),
            ("varies", Left),
        ]);
        let shown = self
            .drivers
            .iter()
            .enumerate()
            .take_while(|(i, d)| *i < 6 && (*i == 0 || d.share > 0.002));
        block.rows = shown
            .map(|(_, d)| {
                vec![
                    d.key.clone(),
                    d.words.clone(),
                    percent(d.share),
                    fixed(d.swing.0, 0),
                    fixed(d.swing.1, 0),
                    d.layer.words().to_owned(),
                ]
            })
            .collect();
        block
    }

    pub(super) fn every_kilogram(&self) -> Block {
        let mut rows = Vec::new();
        let unit = self.say.mass_unit();
        let kg = |x: f64| {
            let x = self.say.number(x, Kind::Mass);
            if x.abs() < 5e-5 { "–".to_owned() } else { fixed(x, 4) }
        };
        let mut sum = [0.0; 5];
        for line in &self.account {
            let sign = if line.added { -1.0 } else { 1.0 };
            for (sum, part) in sum.iter_mut().zip(line.stock.parts()) {
                *sum += sign * part;
            }
            let mut row = vec![line.stage.clone(), line.to.clone()];
            row.extend(line.stock.parts().map(|p| kg(sign * p)));
            row.push(line.key.clone());
            rows.push(row);
        }
        let mut row = vec!["sum".to_owned(), "is the greasy wool".to_owned()];
        row.extend(sum.map(kg));
        row.push(String::new());
        rows.push(row);
        let mut names = vec![("stage", Left), ("went to", Left)];
        names.extend(PARTS.map(|part| (part, Right)));
        names.push(("fibre is named", Left));
        let unexplained = self.greasy.0 - sum.iter().sum::<f64>();
        Block {
            title: format!("Where every kilogram goes, in {unit}, likely figures"),
            columns: columns(&names),
            rows,
            foot: vec![
                "What came on stands with a minus: oil and water put on, water from the air."
                    .to_owned(),
                format!(
                    "Unexplained: {} {unit} (a plan has none but rounding).",
                    fixed(self.say.number(unexplained, Kind::Mass), 4)
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
        let after = super::goods::CAUTIONS.iter().copied().filter(|_| self.has_loom());
        stages.chain(after).collect()
    }
    /// What there is to beware of, by name alone.
    fn cautions_in_short(&self) -> String {
        let places = self.cautions_by_place();
        let named = |name: &&str| places.iter().any(|(_, names)| names.contains(name));
        let names: Vec<&str> = caution::CAUTIONS.iter().map(|c| c.name).filter(named).collect();
        format!("Beware of {}: --all and the card say why.", names.join(", "))
    }

    fn has_loom(&self) -> bool {
        self.settings.iter().any(|s| s.stage == "loom")
    }
}

fn band(band: Option<Band>, print: &dyn Fn(f64) -> String) -> Vec<String> {
    band.map_or(vec![String::new(); 3], |b| [b.low, b.likely, b.high].map(print).to_vec())
}

/// Never "0 %" or "100 %" for what only rounds to it.
fn percent(share: f64) -> String {
    match share {
        s if s > 0.0 && s < 0.005 => "under 1 %".to_owned(),
        s if s < 1.0 && s > 0.995 => "over 99 %".to_owned(),
        s => format!("{:.0} %", s * 100.0),
    }
}

/// `12 throws, 4 blankets and 180 hanks`.
fn listed(parts: &[String]) -> String {
    match parts {
        [most @ .., last] if !most.is_empty() => format!("{} and {last}", most.join(", ")),
        _ => parts.concat(),
    }
}

fn plural(name: &str) -> String {
    let end = ["s", "x", "ch", "sh"].iter().any(|e| name.ends_with(e));
    format!("{name}{}", if end { "es" } else { "s" })
}

/// `1 hank`, `249 hanks`.
fn pieces(n: f64, name: &str) -> String {
    if (n - 1.0).abs() < 1e-9 {
        format!("1 {name}")
    } else {
        format!("{} {}", constant(n), plural(name))
    }
}
