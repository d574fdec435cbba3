//! What is printed of a lot that is divided: growers, weighing out, changeovers, what is left over.

use super::report::columns;
use super::result::PlanResult;
use super::screen::percent;
use crate::quantity::Kind;
use crate::quantity::print::{fixed, of_kind};
use crate::table::Align::{Left, Right};
use crate::table::Block;

impl PlanResult {
    /// The blocks of a divided lot; none of a lot that is one line.
    pub(super) fn divided(&self) -> Vec<Block> {
        let blocks = [self.pieces_of_growers(), self.what_is_left(), self.changes()];
        let mut all: Vec<Block> = self.splits.iter().map(|split| self.weighing(split)).collect();
        all.extend(blocks.into_iter().flatten());
        all
    }

    /// How a heap is weighed out.
    pub(super) fn weighing(&self, split: &super::Split) -> Block {
        let kg = |share: f64| self.say.mass(share * split.mass);
        let row = |(name, share, needed): &(String, f64, f64)| {
            vec![name.clone(), percent(*share), kg(*share), percent(*needed), kg(*needed)]
        };
        let unit = self.say.mass_unit();
        let of =
            if split.heap.is_empty() { "the heap".to_owned() } else { format!("'{}'", split.heap) };
        let mut foot = vec![format!(
            "Taken as each yarn turns out to need, in the order above and the last from the rest: {} of \
             lots keep the promises of this heap. Weighed out beforehand as proposed: {}.",
            percent(split.as_needed),
            percent(split.weighed_out)
        )];
        if !split.held.is_empty() {
            let held: Vec<String> = split
                .held
                .iter()
                .map(|(mass, chance)| {
                    format!("{} {unit}: {}", self.say.mass(*mass), percent(*chance))
                })
                .collect();
            foot.push(format!(
                "Best of all, hold some back unspun until the first yarn is weighed: {}.",
                held.join(", ")
            ));
        }
        for (mass, to, from) in &split.shifted {
            foot.push(format!(
                "{} {unit} moved to the scarcest yarn: {}; moved from it: {}.",
                self.say.mass(*mass),
                percent(*to),
                percent(*from)
            ));
        }
        let names = [
            ("yarn", Left),
            ("proposed", Right),
            ("on the scale", Right),
            ("half of the lots need", Right),
            ("on the scale", Right),
        ];
        Block {
            title: format!("Weighing out {of}, {} {unit}", self.say.mass(split.mass)),
            columns: columns(&names),
            rows: split.yarns.iter().map(row).collect(),
            foot,
            ..Block::default()
        }
    }

    /// Whose the goods are.
    fn pieces_of_growers(&self) -> Option<Block> {
        let first = self.growers.first()?;
        let mut names = vec![("grower", Left), ("clean dry fibre", Right)];
        names.extend(first.goods.iter().map(|(good, ..)| (good.as_str(), Right)));
        let row =
            |grower: &super::Grower| {
                let owner = if grower.owner.is_empty() { "–" } else { &grower.owner };
                let mut row = vec![owner.to_owned(), self.say.mass(grower.fibre_mass)];
                row.extend(grower.goods.iter().map(|(_, exact, pieces)| {
                    format!("{} ({})", fixed(*pieces, 0), fixed(*exact, 2))
                }));
                row
            };
        Some(Block {
            title: "Whose the goods are".to_owned(),
            columns: columns(&names),
            rows: self.growers.iter().map(row).collect(),
            foot: vec![
                "Whole pieces; in brackets the part by the clean dry fibre that each brought. Settle the \
                 difference in money."
                    .to_owned(),
            ],
            ..Block::default()
        })
    }

    /// What is left of wool and yarn.
    fn what_is_left(&self) -> Option<Block> {
        if self.is_line || self.left_over.is_empty() {
            return None;
        }
        let row = |(name, state, mass): &(String, &'static str, f64)| {
            vec![name.clone(), (*state).to_owned(), self.say.mass(*mass)]
        };
        Some(Block {
            title: format!("Left over, {}, planned", self.say.mass_unit()),
            columns: columns(&[("of", Left), ("as", Left), ("on the scale", Right)]),
            rows: self.left_over.iter().map(row).collect(),
            ..Block::default()
        })
    }

    /// The changes on the machines: those within this lot.
    fn changes(&self) -> Option<Block> {
        let within = self.changeovers.iter().filter(|change| !change.before.is_empty());
        let rows: Vec<Vec<String>> = within
            .map(|change| {
                vec![
                    change.machine.clone(),
                    change.before.clone(),
                    change.next.clone(),
                    of_kind(change.time, Kind::Duration),
                    if change.kept > 0.0 { self.say.mass(change.kept) } else { "–".to_owned() },
                ]
            })
            .collect();
        if rows.is_empty() {
            return None;
        }
        let kept = format!("fibre kept, {}", self.say.mass_unit());
        let names =
            [("machine", Left), ("after", Left), ("comes", Left), ("time", Right), (&kept, Right)];
        Some(Block {
            title: "Changing over".to_owned(),
            columns: columns(&names),
            rows,
            ..Block::default()
        })
    }

    /// The values that nobody in the mill has said: what they are taken as.
    pub(super) fn of_the_handbook(&self) -> Option<String> {
        let shown: Vec<&str> = self.handbook.iter().map(String::as_str).take(3).collect();
        let more = self.handbook.len().saturating_sub(shown.len());
        let more = if more > 0 { format!(" and {more} more") } else { String::new() };
        let values = match self.handbook.len() {
            0 => return None,
            1 => "1 value is".to_owned(),
            n => format!("{n} values are"),
        };
        Some(format!("{values} the handbook's, not this lot's: {}{more}.", shown.join(", ")))
    }

    /// Where the values come from, in a line.
    pub(super) fn origin_line(&self) -> String {
        let words = |from: &str| match from {
            "lot" => "this lot's file".to_owned(),
            "mill" => "the mill's file".to_owned(),
            "default" | "handbook" => "the handbook".to_owned(),
            "guess" => "guesses".to_owned(),
            "values" => "this call".to_owned(),
            other => other.to_owned(),
        };
        let mut all: Vec<(String, usize)> = Vec::new();
        for (from, count) in &self.origins {
            let from = words(from);
            match all.iter_mut().find(|(known, _)| *known == from) {
                Some((_, known)) => *known += count,
                None => all.push((from, *count)),
            }
        }
        let parts: Vec<String> = all.iter().map(|(from, n)| format!("{n} from {from}")).collect();
        format!("Values: {}.", parts.join(", "))
    }
}
