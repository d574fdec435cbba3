//! How a piece is shown.

use super::ask::{Article, Key};
use super::colour::{Colours, heading};
use super::work::Work;
use crate::error::Result;
use crate::particulars::Desk;
use crate::quantity::print::{figure, fixed, with_unit};
use crate::quantity::{Kind, Unit, unit};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

/// The figures of the report, block by block; those that there are not are left out.
const BLOCKS: [(&str, &[&str]); 4] = [
    (
        "In the loom",
        &[
            "woven_width",
            "woven_length",
            "reed_width",
            "selvedge_width",
            "ground_ends",
            "ends",
            "reed_wanted",
            "dents",
            "sett",
            "set_width",
            "picks_off_loom",
            "picks",
        ],
    ),
    (
        "Warp",
        &[
            "lengths",
            "warp_each",
            "loom_waste",
            "warps",
            "lengths_on_warp",
            "warp_length",
            "lengths_on_last",
            "last_warp_length",
            "sections",
            "section_ends",
            "section_width",
            "last_section_ends",
            "bobbin_yarn",
        ],
    ),
    (
        "Yarn",
        &[
            "warp_yarn",
            "warp_mass",
            "bobbins",
            "warp_cones",
            "weft_each",
            "weft_yarn",
            "weft_mass",
            "pirns",
            "weft_cones",
            "yarn_mass",
        ],
    ),
    (
        "Off the loom and finished",
        &[
            "off_loom_width",
            "ends_off_loom",
            "grey_mass",
            "loom_mass",
            "width",
            "ends_finished",
            "picks_finished",
            "mass_per_area",
            "piece_mass",
        ],
    ),
];
/// Figures across the cloth, said in the unit of its width.
const ACROSS: [&str; 7] = [
    "woven_width",
    "reed_width",
    "selvedge_width",
    "set_width",
    "section_width",
    "off_loom_width",
    "width",
];

impl Article {
    /// The unit in which a figure is said: the user's own, or the trade's beside it.
    fn said_in(&self, name: &str, kind: Kind) -> Option<&'static Unit> {
        let across = self.unit(Key::Width);
        let imperial = across.is_some_and(|u| matches!(u.symbol, "in" | "ft" | "yd"));
        let named = |metric: &str, other: &str| {
            unit(if imperial { other } else { metric }, Some(kind)).ok()
        };
        match kind {
            Kind::Length if ACROSS.contains(&name) => across,
            Kind::Length => named("m", "yd"),
            Kind::Mass => named("kg", "lb"),
            Kind::MassPerArea => named("g/m²", "oz/yd²"),
            Kind::ReedCount => self.unit(Key::Reed).or_else(|| named("dents/10 cm", "dents/in")),
            Kind::Sett => {
                let own = [Key::Sett, Key::FinishedEnds, Key::Picks, Key::FinishedPicks];
                own.into_iter()
                    .find_map(|key| self.unit(key))
                    .or_else(|| named("threads/cm", "threads/in"))
            }
            _ => None,
        }
    }
    fn say(&self, name: &str, value: f64, kind: Kind) -> String {
        match self.said_in(name, kind) {
            Some(unit) => {
                let threads = if name.starts_with("picks") { "picks" } else { "ends" };
                with_unit(unit.from_base(value), &unit.symbol.replace("threads", threads))
            }
            // Nobody weaves part of a pick: what the sum leaves over goes by the nearest whole one.
            None if kind == Kind::Count => figure(value.round()),
            None => crate::quantity::print::of_kind(value, kind),
        }
    }

    /// The reed and how it is filled: two ends in a dent is taken where nothing else was said, so it
    /// is shown.
    fn reed(&self) -> Vec<Vec<String>> {
        let row = |words: &str, figure| vec![words.to_owned(), figure];
        let reed = self.base(Key::Reed).map(|r| row("reed", self.say("reed", r, Kind::ReedCount)));
        let each = figure(self.amount(Key::EndsPerDent).0.base());
        reed.into_iter().chain([row("ends in a dent", each)]).collect()
    }

    /// The particulars as tables.
    pub(super) fn report<'t>(&self, work: &Work<Worked<'t>>, desk: &Desk<'t>) -> Result<Report> {
        let warp = self.warp_dyed(work, desk)?;
        let weft = self.weft_dyed(work, desk)?;
        let mut blocks = Vec::new();
        for (title, names) in BLOCKS {
            let mut block = Block {
                title: title.to_owned(),
                columns: vec![(String::new(), Left), (String::new(), Right)],
                ..Block::default()
            };
            for name in names {
                let Some((words, value, kind)) = desk.found(name) else { continue };
                // One warp has no last one, and even sections none that is smaller.
                if *name == "lengths_on_warp" && work.warps.value() < 1.5 {
                    continue;
                }
                if matches!(*name, "lengths_on_last" | "last_warp_length")
                    && same(desk, "lengths_on_last", "lengths_on_warp")
                {
                    continue;
                }
                if *name == "last_section_ends" && same(desk, name, "section_ends") {
                    continue;
                }
                if *name == "dents" {
                    block.rows.extend(self.reed());
                }
                block.rows.push(vec![words, self.say(name, value, kind)]);
            }
            blocks.push(block);
        }
        for (system, threads, colours) in [("warp", "ends", warp), ("weft", "picks", weft)] {
            if let Some(colours) = colours {
                blocks.push(self.dyed(system, threads, &colours));
            }
        }
        let none = self.taken_as_none();
        if let (false, Some(last)) = (none.is_empty(), blocks.last_mut()) {
            last.foot.push(format!("Not given, so taken as none: {}.", none.join(", ")));
        }
        Ok(Report { title: self.title(), blocks })
    }

    fn title(&self) -> String {
        let size = |key: Key| {
            let base = self.base(key).unwrap_or(f64::NAN);
            self.unit(key).map_or(figure(base), |u| with_unit(u.from_base(base), u.symbol))
        };
        format!("A piece of {} by {}", size(Key::Width), size(Key::Length))
    }

    fn dyed(&self, system: &str, threads: &str, colours: &Colours) -> Block {
        let all: u32 = colours.dyed.iter().map(|d| d.threads).sum();
        let mass = self.said_in("", Kind::Mass);
        let symbol = mass.map_or("kg", |unit| unit.symbol);
        let row = |dyed: &super::colour::Dyed| {
            let share = 100.0 * f64::from(dyed.threads) / f64::from(all);
            vec![
                dyed.colour.clone(),
                figure(f64::from(dyed.threads)),
                format!("{} %", fixed(share, 1)),
                figure(mass.map_or(dyed.mass, |unit| unit.from_base(dyed.mass))),
            ]
        };
        let mut lead = vec![colours.laid.words(threads)];
        if let Some((ends, colour)) = &colours.selvedges {
            lead.push(format!("Selvedges beside them: {ends} ends of {colour} in all."));
        }
        Block {
            title: heading(system, &colours.laid.order),
            lead,
            columns: vec![
                ("colour".to_owned(), Left),
                (threads.to_owned(), Right),
                ("share".to_owned(), Right),
                (symbol.to_owned(), Right),
            ],
            rows: colours.dyed.iter().map(row).collect(),
            ..Block::default()
        }
    }
}

/// Whether two figures are one.
fn same(desk: &Desk<'_>, one: &str, other: &str) -> bool {
    match (desk.found(one), desk.found(other)) {
        (Some((_, a, _)), Some((_, b, _))) => (a - b).abs() < 0.5,
        _ => false,
    }
}
