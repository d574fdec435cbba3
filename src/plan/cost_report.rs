//! The cost of a lot as tables.

use super::cost::{LotCost, Selling};
use crate::quantity::Kind;
use crate::quantity::print::{figure, fixed, of_kind};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

fn money(x: f64) -> String {
    fixed(x, 2)
}

fn columns(names: &[(&str, crate::table::Align)]) -> Vec<(String, crate::table::Align)> {
    names.iter().map(|(name, align)| ((*name).to_owned(), *align)).collect()
}

impl LotCost {
    /// Stages and goods, as tables.
    pub fn report(&self) -> Report {
        Report {
            title: format!("{}: what the lot costs, with the likely figures", self.name),
            blocks: vec![self.goods_block(), self.stages_block()],
        }
    }

    fn share(&self, cost: f64) -> String {
        format!("{} %", fixed(100.0 * cost / self.whole, 1))
    }

    fn goods_block(&self) -> Block {
        let dash = || "–".to_owned();
        let mut names = vec![
            ("goods", Left),
            ("pieces", Right),
            ("joint", Right),
            ("own", Right),
            ("whole", Right),
            ("a piece", Right),
        ];
        if self.selling.is_some() {
            names.push(("price", Right));
        }
        let mut rows: Vec<Vec<String>> = self
            .goods
            .iter()
            .map(|g| {
                let mut row = vec![
                    g.name.clone(),
                    figure(g.made),
                    money(g.joint),
                    money(g.own),
                    money(g.whole()),
                    g.each.map_or_else(dash, money),
                ];
                if self.selling.is_some() {
                    row.push(g.price.map_or_else(dash, money));
                }
                row
            })
            .collect();
        let mut end = |name: &str, joint: f64, own: f64| {
            let mut row = vec![
                name.to_owned(),
                String::new(),
                money(joint),
                money(own),
                money(joint + own),
                String::new(),
            ];
            row.resize(names.len(), String::new());
            rows.push(row);
        };
        end("yarn left over", self.left_over, 0.0);
        let own: f64 = self.goods.iter().map(|g| g.own).sum();
        end("the lot", self.whole - own, own);
        let mut foot = vec![
            "joint: wool and all stages to the yarn, shared by the clean dry fibre in the yarn that is taken; own: reel, cone, loom, finish.".to_owned(),
        ];
        match self.selling {
            Some(Selling::Margin(g)) => foot.push(format!(
                "Price: with a margin of {} on the price.",
                of_kind(g, Kind::Margin)
            )),
            Some(Selling::MarkUp(u)) => foot.push(format!(
                "Price: with a mark-up of {} on the cost.",
                of_kind(u, Kind::MarkUp)
            )),
            None => {}
        }
        foot.push("Value added tax and other taxes on sales are left out.".to_owned());
        Block {
            title: "What the goods cost".to_owned(),
            columns: columns(&names),
            rows,
            foot,
            ..Block::default()
        }
    }

    fn stages_block(&self) -> Block {
        let mut last = "";
        let mut rows: Vec<Vec<String>> = Vec::new();
        for line in &self.lines {
            let place = if line.place == last { String::new() } else { line.place.clone() };
            last = &line.place;
            rows.push(vec![
                place,
                line.what.to_owned(),
                line.good.clone().unwrap_or_default(),
                line.hours.map_or(String::new(), |h| fixed(h, 2)),
                money(line.cost),
                self.share(line.cost),
            ]);
        }
        rows.push(vec![
            "whole".to_owned(),
            String::new(),
            String::new(),
            String::new(),
            money(self.whole),
            self.share(self.whole),
        ]);
        let mut foot = Vec::new();
        if let (None, None) = self.overhead {
            foot.push("No overhead is in it.".to_owned());
        }
        if !self.person_hours.is_empty() {
            let sum: f64 = self.person_hours.iter().map(|p| p.1).sum();
            foot.push(format!("Hours of people in all: {}.", fixed(sum, 2)));
        }
        Block {
            title: "What each stage costs".to_owned(),
            columns: columns(&[
                ("stage", Left),
                ("what", Left),
                ("for", Left),
                ("hours", Right),
                ("cost", Right),
                ("share", Right),
            ]),
            rows,
            foot,
            ..Block::default()
        }
    }
}
