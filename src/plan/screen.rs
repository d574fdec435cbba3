//! The first screen of a plan: the answer, the safe promise, what to measure first.

use super::advice::measurement;
use super::chance::Layer;
use super::report::{Extent, columns};
use super::result::{Band, GoodResult, PlanResult};
use crate::quantity::print::{constant, fixed};
use crate::table::Align::{Left, Right};
use crate::table::Block;

impl PlanResult {
    /// The answer in a sentence or two: what is promised, and how many lots would keep it.
    pub fn answer(&self) -> Vec<String> {
        let parts: Vec<String> = self
            .goods
            .iter()
            .filter_map(|good| Some(pieces(f64::from(good.promised?), &good.name)))
            .collect();
        if parts.is_empty() {
            return vec!["Promise: no number is promised.".to_owned()];
        }
        let kept = self.spare.chance.map_or_else(|| self.planned(), |c| self.kept(c));
        vec![format!("Promise: {}.", listed(&parts)), kept]
    }

    /// What the numbers of spare pieces are called: `spare or short, hanks`.
    pub fn spare_label(&self) -> String {
        format!("spare or short, {}", plural(&self.spare.good))
    }

    /// How many lots keep the promise.
    fn kept(&self, chance: f64) -> String {
        let lots = fixed(self.simulated as f64, 0);
        match chance {
            c if c <= 0.0 => format!("None of {lots} simulated lots keeps it."),
            c if c >= 1.0 => format!("All of {lots} simulated lots keep it."),
            c if c < 0.01 => "Fewer than 1 lot in 100 like this one would keep it.".to_owned(),
            c if c > 0.99 => "More than 99 lots in 100 like this one would keep it.".to_owned(),
            c => format!("{:.0} lots in 100 like this one would keep it.", c * 100.0),
        }
    }

    /// Whether the planned values keep the promise.
    fn planned(&self) -> String {
        let spare = self.spare.planned;
        if self.planned_enough() {
            let spare = pieces((spare.abs() + 1e-9).floor(), &self.spare.good);
            return format!("The planned values keep it, with {spare} to spare.");
        }
        format!("The planned values are {} short.", self.short())
    }

    /// Every good that falls short with the planned values, with how many: `4 throws and all 240 hanks`.
    fn short(&self) -> String {
        let short = self.goods.iter().filter_map(|good| {
            let promised = f64::from(good.promised?);
            let short = promised - good.planned;
            (short > 0.0).then(|| {
                let all = if good.planned > 0.0 { "" } else { "all " };
                format!("{all}{}", pieces(short, &good.name))
            })
        });
        listed(&short.collect::<Vec<_>>())
    }

    /// Why no chance is known, where none is.
    fn no_chance(&self) -> Option<String> {
        if self.simulated > 0 {
            return None;
        }
        Some(if self.uncertain == 0 {
            "Every value is taken as known: write low, likely and high to see the chance."
                .to_owned()
        } else {
            format!(
                "No lots were simulated, so the chance is not known: {} values are uncertain.",
                self.uncertain
            )
        })
    }

    pub(super) fn promise(&self, extent: Extent) -> Block {
        let all = extent == Extent::All;
        let simulated = self.simulated > 0;
        let mut names = vec![("", Left), ("promised", Right), ("planned", Right)];
        if simulated && all {
            names.extend([("low", Right), ("middle", Right), ("high", Right), ("kept by", Right)]);
        } else if simulated {
            names.push(("in 9 lots of 10", Right));
        }
        if simulated {
            names.push((if all { "safe" } else { "safe promise" }, Right));
        }
        let mut rows: Vec<Vec<String>> = Vec::new();
        for good in &self.goods {
            let promised = good.promised.map_or("–".to_owned(), |n| fixed(n.into(), 0));
            let mut row = vec![named(good), promised, fixed(good.planned, 0)];
            if all {
                row.extend(parts(good.band, &|x| fixed(x, 0)));
                row.extend(simulated.then(|| good.chance.map_or(String::new(), percent)));
            } else {
                row.extend(good.band.map(|b| range(b, &|x| fixed(x, 0))));
            }
            row.extend(good.safe.map(|n| fixed(n, 0)));
            rows.push(row);
        }
        if all {
            let mut row = vec![self.spare_label(), String::new(), signed(self.spare.planned)];
            row.extend(parts(self.spare.band, &signed));
            if simulated {
                row.extend([self.spare.chance.map_or(String::new(), percent), String::new()]);
            }
            rows.push(row);
        }
        let mut foot: Vec<String> = self.no_chance().into_iter().collect();
        if all && simulated {
            foot.push(format!(
                "9 lots in 10 fall between low and high; half lie below middle; 19 in 20 keep the safe \
                 promise. {} simulated lots, seed {}.",
                fixed(self.simulated as f64, 0),
                self.seed
            ));
        }
        if simulated && !all {
            foot.push("19 lots in 20 keep the safe promise.".to_owned());
        }
        if simulated {
            foot.push(
                "The chance takes the uncertain values as independent of each other.".to_owned(),
            );
        }
        if simulated && !self.planned_enough() {
            foot.push(format!("The planned values are {} short.", self.short()));
        }
        foot.extend(self.advice.clone());
        if let [first, .., last] = &self.goods[..]
            && !self.planned_enough()
        {
            foot.push(format!(
                "Goods are made in the order above: {} first, {} last.",
                plural(&first.name),
                plural(&last.name)
            ));
        }
        foot.extend(self.of_the_handbook());
        let mut lead: Vec<String> =
            self.warnings.iter().filter(|warning| warning.ends_with('?')).cloned().collect();
        lead.push(self.can_be_made());
        lead.extend(self.obstacles.iter().map(|obstacle| format!("– {obstacle}.")));
        match self.warnings.len() {
            0 => {}
            1 => lead.push("1 value looks wrong: see the end.".to_owned()),
            n => lead.push(format!("{n} values look wrong: see the end.")),
        }
        Block {
            title: self.answer().join(" "),
            lead,
            columns: columns(&names),
            rows,
            foot,
            ..Block::default()
        }
    }

    /// Whether the yarn and the goods can be made at all, in a line.
    fn can_be_made(&self) -> String {
        match self.obstacles.len() {
            0 => self.judged(),
            1 => "Can it be made: 1 obstacle.".to_owned(),
            n => format!("Can it be made: {n} obstacles."),
        }
    }

    /// By what it was judged that it can be made.
    fn judged(&self) -> String {
        let known = |ends: &[&str]| {
            self.settings
                .iter()
                .any(|s| ends.iter().any(|end| s.key.rsplit('.').next() == Some(*end)))
        };
        let judged = [
            ("fibres in the section", known(&["fibres"])),
            ("wheels", known(&["delivery_wheel", "twist_wheel", "draft_wheel"])),
            ("reed", known(&["reed"])),
            ("card", known(&["lot_loss"])),
        ];
        let by: Vec<String> =
            judged.iter().filter(|(_, known)| *known).map(|(what, _)| (*what).to_owned()).collect();
        if by.is_empty() {
            return "Can it be made: not judged; the files give no machine.".to_owned();
        }
        format!("Can it be made: yes, by {}.", listed(&by))
    }

    pub(super) fn measure_first(&self, extent: Extent) -> Block {
        let mut doubts = self.measure_first.iter().enumerate();
        let shown: Vec<_> = match extent {
            Extent::First => doubts
                .by_ref()
                .take_while(|(i, d)| *i == 0 || (*i < 2 && d.share >= 0.05))
                .collect(),
            Extent::All => doubts
                .by_ref()
                .take_while(|(i, d)| *i < 6 && (*i == 0 || d.share > 0.002))
                .collect(),
        };
        if shown.is_empty() {
            return Block::default();
        }
        if extent == Extent::First {
            let steps: Vec<String> = shown
                .iter()
                .map(|(place, d)| {
                    let how = measurement(&d.key, &d.words);
                    let doubt = if *place == 0 { " of the doubt" } else { "" };
                    format!("{how} ({}: {}{doubt})", d.key, percent(d.share))
                })
                .collect();
            let title = format!("Measure first: {}.", steps.join(", then "));
            return Block { title, ..Block::default() };
        }
        let good = plural(&self.spare.good);
        let mill = shown.iter().any(|(_, d)| d.layer == Layer::Mill);
        let mill = mill.then(|| {
            "A mill's constant is drawn afresh for each simulated lot, as one that changes from lot to lot."
                .to_owned()
        });
        let mill: Vec<String> = mill.into_iter().collect();
        let row = |d: &super::Doubt| {
            vec![
                d.key.clone(),
                percent(d.share),
                fixed(d.swing.0, 0),
                fixed(d.swing.1, 0),
                d.layer.words().to_owned(),
                d.words.clone(),
            ]
        };
        Block {
            title: "What to measure first".to_owned(),
            lead: vec![format!(
                "The share of the doubt that each value causes, and the {good} to spare (short: −) of a \
                 plan with the value at its low or high end and all others as planned."
            )],
            foot: mill,
            columns: columns(&[
                ("value", Left),
                ("share", Right),
                ("if low", Right),
                ("if high", Right),
                ("varies", Left),
                ("note", Left),
            ]),
            rows: shown.into_iter().map(|(_, d)| row(d)).collect(),
            ..Block::default()
        }
    }
}

fn named(good: &GoodResult) -> String {
    let name = plural(&good.name);
    if good.takes_rest && good.promised.is_none() {
        format!("{name} (from the rest)")
    } else {
        name
    }
}

/// Low, middle and high; nothing where no lots were simulated.
pub(super) fn parts(band: Option<Band>, print: &dyn Fn(f64) -> String) -> Vec<String> {
    band.map_or(Vec::new(), |b| [b.low, b.middle, b.high].map(print).to_vec())
}

/// `215 to 275`.
pub(super) fn range(band: Band, print: &dyn Fn(f64) -> String) -> String {
    format!("{} to {}", print(band.low), print(band.high))
}

/// `+9.2`, `−24.5`.
fn signed(x: f64) -> String {
    let text = fixed(x, 1);
    if x > 0.0 && text != "0.0" { format!("+{text}") } else { text }
}

/// Never "0 %" or "100 %" for what only rounds to it.
pub(super) fn percent(share: f64) -> String {
    match share {
        s if s > 0.0 && s < 0.005 => "under 1 %".to_owned(),
        s if s < 1.0 && s > 0.995 => "over 99 %".to_owned(),
        s => format!("{:.0} %", s * 100.0),
    }
}

/// `12 throws, 4 blankets and 180 hanks`.
pub(super) fn listed(parts: &[String]) -> String {
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
pub(super) fn pieces(n: f64, name: &str) -> String {
    if (n - 1.0).abs() < 1e-9 {
        format!("1 {name}")
    } else {
        format!("{} {}", constant(n), plural(name))
    }
}
