//! A quotation as tables and for other programs.

use std::fmt;

use super::{Quote, QuoteLine};
use crate::plan::report::columns;
use crate::quantity::Kind;
use crate::quantity::print::{fixed, of_kind};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// A mass that has to suffice: up to the next 10 g.
fn enough(kg: f64) -> String {
    fixed((kg * 100.0 - 1e-6).ceil() / 100.0, 2)
}

/// A mass that must not be exceeded: down to the last 10 g.
fn at_most(kg: f64) -> String {
    fixed((kg * 100.0).floor() / 100.0, 2)
}

/// An amount of money, without its currency.
fn money(x: f64) -> String {
    fixed(x, 2).replace('-', "−")
}

impl Quote {
    fn with_currency(&self, x: f64) -> String {
        let space = if self.money.is_empty() { "" } else { " " };
        format!("{}{space}{}", money(x), self.money)
    }

    /// The quotation as tables.
    pub fn report(&self) -> Report {
        let mut blocks = vec![self.answer(), self.stages()];
        if !self.not_priced.is_empty() {
            let rows = self.not_priced.iter().map(|(stage, why)| vec![stage.clone(), why.clone()]);
            blocks.push(Block {
                title: "Not priced".to_owned(),
                columns: columns(&[("stage", Left), ("why", Left)]),
                rows: rows.collect(),
                ..Block::default()
            });
        }
        blocks.push(self.by_goods());
        let title = format!(
            "{}: quotation for {} kg of greasy wool ({})",
            self.name,
            fixed(self.greasy_mass, 2),
            self.file
        );
        Report { title, blocks }
    }

    /// The price, what it leaves, and the lots that pay.
    fn answer(&self) -> Block {
        let mut lead = vec![match (self.minimum_applies, self.minimum_charge) {
            (true, Some(_)) => format!(
                "{}, the minimum charge; the stages come to {}.",
                self.with_currency(self.price),
                money(self.sum)
            ),
            _ => format!("{}.", self.with_currency(self.price)),
        }];
        match (&self.band, &self.planned_only) {
            (Some(band), _) => lead.push(format!(
                "In 9 lots of 10 like this one: {} to {}.",
                money(band.low),
                money(band.high)
            )),
            (None, Some(why)) => lead.push(format!("With the planned values only: {why}.")),
            (None, None) => {}
        }
        let finished = self.price_per_finished_kg.map_or_else(String::new, |price| {
            format!(", {} for a finished kilogram", money(price))
        });
        lead.push(format!("{} for a greasy kilogram{finished}.", money(self.price_per_greasy_kg)));
        lead.extend(self.lead_of_cost());
        lead.push("Value added tax and other taxes on sales are not included.".to_owned());
        Block { title: "Price".to_owned(), lead, ..Block::default() }
    }

    fn lead_of_cost(&self) -> Vec<String> {
        let Some(cost) = self.cost else {
            return vec!["What the lot costs the mill is not known: no [cost].".to_owned()];
        };
        let percent = |share: f64| of_kind(share, Kind::Margin).replace('-', "−");
        let left = self.price - cost;
        let mut lead = vec![if left < 0.0 {
            format!("The lot costs the mill {}: {} more than the price.", money(cost), money(-left))
        } else {
            let margin = self
                .margin
                .map_or_else(String::new, |share| format!(", a margin of {}", percent(share)));
            format!("The lot costs the mill {}, which leaves {}{margin}.", money(cost), money(left))
        }];
        if let (Some(margin), Some(price)) = (self.terms.margin, self.price_for_margin) {
            lead.push(format!("For a margin of {} charge {}.", percent(margin), money(price)));
        }
        if let (Some(price), Some(margin)) = (self.terms.price, self.margin_of_price) {
            lead.push(format!(
                "A price of {} leaves a margin of {}.",
                money(price),
                percent(margin)
            ));
        }
        if let Some(pays) = &self.pays_from {
            lead.push(match pays.greasy_mass {
                None => format!(
                    "Lots like this one do not pay, tried up to {} kg of greasy wool.",
                    fixed(pays.tried, 0)
                ),
                Some(0.0) => "A lot of any size pays.".to_owned(),
                Some(kg) => {
                    format!("Lots like this one pay from {} kg of greasy wool.", enough(kg))
                }
            });
            lead.extend(pays.small_lots_to.map(|kg| {
                format!("The minimum charge also pays for lots of up to {} kg.", at_most(kg))
            }));
        }
        lead
    }

    fn stages(&self) -> Block {
        let row = |line: &QuoteLine| {
            let (quantity, per) = match line.unit {
                "kg" => (format!("{} kg", fixed(line.quantity, 3)), " /kg"),
                "h" => (format!("{} h", fixed(line.quantity, 2)), " /h"),
                _ => (fixed(line.quantity, 0), ""),
            };
            let rate = format!("{}{per}", money(line.rate));
            vec![line.stage.clone(), line.basis.to_owned(), quantity, rate, money(line.amount)]
        };
        let mut rows: Vec<Vec<String>> = self.lines.iter().map(row).collect();
        let total = |words: &str, amount: f64| {
            let empty = String::new();
            vec![words.to_owned(), empty.clone(), empty.clone(), empty, money(amount)]
        };
        rows.push(total("sum", self.sum));
        if let Some(least) = self.minimum_charge {
            rows.push(total("minimum charge", least));
        }
        rows.push(total("price", self.price));
        let names = [
            ("stage", Left),
            ("charged by", Left),
            ("quantity", Right),
            ("rate", Right),
            ("amount", Right),
        ];
        Block {
            title: "What is charged".to_owned(),
            columns: columns(&names),
            rows,
            foot: vec!["Kilograms as weighed, planned; finished goods as sold.".to_owned()],
            ..Block::default()
        }
    }

    fn by_goods(&self) -> Block {
        let mut rows: Vec<Vec<String>> = Vec::new();
        for good in &self.goods {
            rows.push(vec![
                good.name.clone(),
                fixed(good.pieces, 0),
                money(good.joint_share),
                money(good.own),
                money(good.price),
                good.price_per_piece.map_or_else(String::new, money),
            ]);
        }
        if self.left_over > 0.005 {
            let empty = String::new();
            let left = money(self.left_over);
            rows.push(vec![
                "yarn left over".to_owned(),
                empty.clone(),
                left.clone(),
                empty.clone(),
                left,
                empty,
            ]);
        }
        let names = [
            ("goods", Left),
            ("pieces", Right),
            ("joint", Right),
            ("own", Right),
            ("price", Right),
            ("a piece", Right),
        ];
        Block {
            title: "What the goods bear of it".to_owned(),
            columns: columns(&names),
            rows,
            foot: vec![
                "Joint: what is charged up to the yarn, and what the minimum charge adds, shared by the \
                 clean dry fibre in the yarn that each of the goods takes."
                    .to_owned(),
            ],
            ..Block::default()
        }
    }
}

impl fmt::Display for Quote {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.report().text())
    }
}

#[cfg(feature = "serde")]
impl Quote {
    /// The quotation as a JSON value. Masses are in kg, times in hours, shares are fractions.
    pub fn to_json(&self) -> serde_json::Value {
        use serde_json::json;
        json!({
            "hankwise": env!("CARGO_PKG_VERSION"),
            "lot": self.name,
            "file": self.file,
            "money": self.money,
            "lines": self.lines.iter().map(|line| json!({
                "stage": line.stage, "good": line.good, "basis": line.basis, "unit": line.unit,
                "quantity": line.quantity, "rate": line.rate, "amount": line.amount,
            })).collect::<Vec<_>>(),
            "not_priced": self.not_priced.iter().map(|(stage, why)| json!({
                "stage": stage, "why": why,
            })).collect::<Vec<_>>(),
            "sum": self.sum,
            "minimum_charge": self.minimum_charge,
            "minimum_applies": self.minimum_applies,
            "price": {
                "planned": self.price,
                "low": self.band.map(|b| b.low),
                "middle": self.band.map(|b| b.middle),
                "high": self.band.map(|b| b.high),
            },
            "planned_only": self.planned_only,
            "greasy_mass": self.greasy_mass,
            "finished_mass": self.finished_mass,
            "price_per_greasy_kg": self.price_per_greasy_kg,
            "price_per_finished_kg": self.price_per_finished_kg,
            "goods": self.goods.iter().map(|good| json!({
                "name": good.name, "pieces": good.pieces, "finished_mass": good.finished_mass,
                "joint_share": good.joint_share, "own": good.own, "price": good.price,
                "price_per_piece": good.price_per_piece,
            })).collect::<Vec<_>>(),
            "left_over": self.left_over,
            "cost": self.cost,
            "margin": self.margin,
            "asked": { "margin": self.terms.margin, "price": self.terms.price },
            "price_for_margin": self.price_for_margin,
            "margin_of_price": self.margin_of_price,
            "pays_from": self.pays_from.map(|pays| json!({
                "greasy_mass": pays.greasy_mass, "small_lots_to": pays.small_lots_to,
                "tried": pays.tried,
            })),
        })
    }
}
