//! The theories of setting as a table, and what is beyond them.

use super::theories::{SettingAsk, Settings, Theory};
use crate::quantity::Amount;
use crate::quantity::print::{fixed, with_unit};
use crate::source::source;
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Says where a sett wanted is beyond the closest of every theory.
pub(super) fn beyond(rows: &[Theory], ask: &SettingAsk) -> Vec<String> {
    let highest = |of: fn(&Theory) -> Option<f64>| {
        let with = rows.iter().filter_map(|row| of(row).map(|x| (x, row)));
        with.max_by(|a, b| a.0.total_cmp(&b.0))
    };
    let over = |word: &str, wanted: &Option<Amount>, of: fn(&Theory) -> Option<f64>| {
        let (wanted, (most, row)) = (wanted.as_ref()?, highest(of)?);
        (wanted.base() > most).then(|| {
            let unit = wanted.unit;
            let other = if word == "ends" { "picks" } else { "ends" };
            format!(
                "settings: {word} = {} are beyond the jam of every theory for a square cloth: the \
                 highest is {} ({}), {} % less; take at most that, a finer yarn or a weave with \
                 longer floats, or far fewer {other}",
                with_unit(wanted.number, unit.symbol),
                with_unit(unit.from_base(most), unit.symbol),
                row.name,
                fixed((1.0 - most / wanted.base()) * 100.0, 0),
            )
        })
    };
    [over("ends", &ask.ends, |r| r.ends), over("picks", &ask.picks, |r| r.picks)]
        .into_iter()
        .flatten()
        .collect()
}

impl Settings {
    /// The theories side by side.
    pub fn report(&self) -> Report {
        let say = |x: Option<f64>| x.map_or_else(String::new, |x| fixed(self.unit.from_base(x), 2));
        let percent = |share: Option<f64>| {
            share.map_or_else(String::new, |s| format!("{} %", fixed(s * 100.0, 0)))
        };
        let square = self.rows.iter().all(|row| row.ends == row.picks);
        let mut columns = vec![("theory", Left), ("with", Left)];
        columns.push((if square { "ends and picks" } else { "ends" }, Right));
        if !square {
            columns.push(("picks", Right));
        }
        let wanted = [(&self.ask.ends, "your ends"), (&self.ask.picks, "your picks")];
        for (_, name) in wanted.iter().filter(|w| w.0.is_some()) {
            columns.push((name, Right));
        }
        let beside = self.rows.iter().any(|row| row.picks_at_ends.is_some());
        if beside {
            columns.push(("most picks then", Right));
        }
        columns.push(("grade", Left));
        let row = |row: &Theory| {
            let none = format!("— {}", row.why_not);
            let mut cells = vec![row.name.to_owned(), row.with.clone(), say(row.ends)];
            if !square {
                cells.push(say(row.picks));
            }
            let (of_ends, of_picks) = self.shares(row);
            if self.ask.ends.is_some() {
                cells.push(percent(of_ends));
            }
            if self.ask.picks.is_some() {
                cells.push(percent(of_picks));
            }
            if beside {
                cells.push(say(row.picks_at_ends));
            }
            cells.push(if row.ends.is_some() { row.grade.to_owned() } else { none });
            cells
        };
        let spread = self.spread();
        let mut foot = vec![
            format!(
                "The theories lie from {} to {} {} apart by {} %: always say which.",
                say(Some(spread.low)),
                say(Some(spread.high)),
                self.unit.symbol,
                fixed(spread.apart() * 100.0, 0)
            ),
            "These are the closest setts and none to weave: the share that suits a use is the mill's \
             to know; for usual shares see the handbook table working_setts."
                .to_owned(),
            "What is graded memory was not read again: check it in a printed copy.".to_owned(),
        ];
        foot.extend(self.warnings().iter().map(|w| w.trim_start_matches("settings: ").to_owned()));
        let mut assumes: Vec<String> = Vec::new();
        for row in &self.rows {
            let title = source(row.source).map_or(row.source, |s| s.title);
            let says = format!("{}: {} [{title}].", row.name, row.assumes);
            if !assumes.contains(&says) {
                assumes.push(says);
            }
        }
        let heading = |all: Vec<(&str, crate::table::Align)>| {
            all.into_iter().map(|(name, align)| (name.to_owned(), align)).collect()
        };
        Report {
            title: format!("Closest setts of {} in {}", self.weave.name, self.yarns),
            blocks: vec![
                Block {
                    title: self.unit.symbol.to_owned(),
                    columns: heading(columns),
                    rows: self.rows.iter().map(row).collect(),
                    foot,
                    ..Block::default()
                },
                Block { title: "What each assumes".to_owned(), lead: assumes, ..Block::default() },
            ],
        }
    }
}
