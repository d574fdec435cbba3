//! A yarn on a page: its notations, its count in the systems in use, its build, what follows.

use super::{Single, Strand, Turned, Yarn};
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{Kind, unit};
use crate::table::{Align, Block, Report};

/// The systems that a count is shown in beside its own.
const SYSTEMS: [&str; 8] =
    ["tex", "Nm", "Ne", "worsted", "YSW", "galashiels-cut", "m/100g", "yd/lb"];

impl Yarn {
    /// The yarn on a page.
    pub fn report(&self) -> Report {
        let blocks = [Some(self.written()), self.in_systems(), self.built(), self.figures()];
        let mut title = self.what().to_owned();
        if let Some(first) = title.get_mut(..1) {
            first.make_ascii_uppercase();
        }
        Report { title: format!("{title}: {self}"), blocks: blocks.into_iter().flatten().collect() }
    }

    fn written(&self) -> Block {
        let mut block = Block { title: "Written".to_owned(), ..Block::default() };
        block.columns = columns(&[("", Align::Left), ("", Align::Left)]);
        let all = [
            ("from the single to the fold", self.single_to_fold()),
            ("from the fold to the single", self.fold_to_single()),
            ("in the trade, without twist", self.trade()),
        ];
        for (name, text) in all {
            if let Ok(text) = text {
                block.rows.push(vec![name.to_owned(), text]);
            }
        }
        block
    }

    fn in_systems(&self) -> Option<Block> {
        let tex = self.resultant().ok()?;
        let mut block = Block { title: "Count of the whole".to_owned(), ..Block::default() };
        block.columns = columns(&[("number", Align::Right), ("system", Align::Left)]);
        let mut systems = vec![self.system()];
        systems.extend(SYSTEMS.iter().filter_map(|s| unit(s, None).ok()));
        for (place, system) in systems.iter().enumerate() {
            if !systems[..place].contains(system) {
                let row = vec![figure(system.from_base(tex)), system.symbol.to_owned()];
                block.rows.push(row);
            }
        }
        block.foot.push(match (&self.whole, self.build.parts().is_empty()) {
            (Some(_), _) => "As it was given for the whole.".to_owned(),
            (None, true) => "As it was given.".to_owned(),
            (None, false) => {
                "The sum of its ends; contraction in folding is not counted.".to_owned()
            }
        });
        Some(block)
    }

    /// One row a strand, from the whole down to the singles.
    fn built(&self) -> Option<Block> {
        if self.build.parts().is_empty() {
            return None;
        }
        let mut block = Block { title: "Build".to_owned(), ..Block::default() };
        block.columns = columns(&[
            ("strand", Align::Left),
            ("ends", Align::Right),
            ("count", Align::Right),
            ("twist", Align::Right),
            ("direction", Align::Left),
        ]);
        rows(&self.build, "whole", 1, 0, &mut block.rows);
        Some(block)
    }

    fn figures(&self) -> Option<Block> {
        let mut block = Block { title: "What follows".to_owned(), ..Block::default() };
        block.columns = columns(&[("", Align::Left), ("", Align::Right)]);
        let mut say = |what: &str, figure: String| block.rows.push(vec![what.to_owned(), figure]);
        if let Ok(c) = self.contraction() {
            say("contraction, on the untwisted length", of_kind(c, Kind::Contraction));
        }
        if let Ok(k) = self.contraction_on_twisted() {
            say("contraction, on the twisted length", of_kind(k, Kind::TwistedContraction));
        }
        if let Ok(k) = self.twist_factor() {
            say("twist factor of the whole", of_kind(k, Kind::TwistFactor));
        }
        let mut folds = false;
        let unlike = self.build.parts().len() > 1;
        for place in 0..self.build.parts().len() {
            let of = if unlike { format!(" of component {}", place + 1) } else { String::new() };
            if let Ok(q) = self.twist_ratio(place) {
                folds = true;
                say(&format!("folding twist over twist{of}"), figure(q));
            }
            if let Ok((direction, turns)) = self.twist_left(place) {
                let left = format!("{} {}", direction.letter(), of_kind(turns, Kind::Twist));
                let known = self.build.depth() == 1 && self.contraction().is_ok();
                let on = if known { ", in a metre of the fold" } else { "" };
                say(&format!("twist left{of} after folding{on}"), left);
            }
        }
        let lengths = &self.about().lengths;
        if !lengths.is_empty() {
            let each: Vec<String> = lengths.iter().map(|u| figure(*u)).collect();
            say("length of each end in a unit length of the yarn", each.join(", "));
        }
        if unlike {
            for (end, yarn) in self.ends().enumerate() {
                if let Ok(share) = self.mass_share(end) {
                    say(&format!("share of the mass: {yarn}"), of_kind(share, Kind::Fraction));
                }
            }
        }
        if let Ok(balance) = self.balance(0) {
            block.foot.push(balance.to_string());
        }
        if folds {
            block.foot.push(
                "The twist left is for small slopes of the ply; twist_left_ratio counts the slope."
                    .to_owned(),
            );
        }
        (!block.rows.is_empty()).then_some(block)
    }
}

fn columns(names: &[(&str, Align)]) -> Vec<(String, Align)> {
    names.iter().map(|(name, align)| ((*name).to_owned(), *align)).collect()
}

fn rows(strand: &Strand, name: &str, ends: u32, depth: usize, out: &mut Vec<Vec<String>>) {
    let count = match strand {
        Strand::Single(Single { count: Some(count), filaments, .. }) => {
            let of = filaments.map_or(String::new(), |f| format!(", {f} filaments"));
            format!("{} {}{of}", figure(count.number), count.unit.symbol)
        }
        _ => String::new(),
    };
    let (twist, direction) = match strand.twist() {
        Turned::Unsaid => (String::new(), String::new()),
        Turned::Not => ("none".to_owned(), String::new()),
        Turned::To(direction, turns) => {
            let turns = turns.map(|t| format!("{} {}", figure(t.number), t.unit.symbol));
            (turns.unwrap_or_default(), direction.letter().to_string())
        }
    };
    let name = format!("{}{name}", "  ".repeat(depth));
    out.push(vec![name, ends.to_string(), count, twist, direction]);
    let parts = strand.parts();
    for (place, part) in parts.iter().enumerate() {
        let of = if parts.len() > 1 { format!(" {}", place + 1) } else { String::new() };
        let name = match part.strand {
            Strand::Single(_) => format!("single{of}"),
            Strand::Fold(_) => format!("fold{of}"),
        };
        rows(&part.strand, &name, part.ends, depth + 1, out);
    }
}
