//! The costing itself: masses up the route, costs down it.

use super::tell::{Told, ToldPiece, ToldStage};
use super::{CostedStage, Costing};
use crate::error::{Error, Result};
use crate::mill;
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::{CostPerMass, Fraction, Margin, MarkUp, Mass, MassRate, Money, Ratio};
use crate::worked::Worked;

/// What is charged on top of what stages cost.
struct Overhead<'t> {
    share: Option<MarkUp<Worked<'t>>>,
    hourly: Option<Money<Worked<'t>>>,
}

impl CostedStage {
    /// What a kilogram that goes in costs here, overhead and all.
    fn added<'t>(&self, desk: &Desk<'t>, on_top: &Overhead<'t>) -> CostPerMass<Worked<'t>> {
        let given = &self.given;
        let rate: Option<MassRate<_>> = given.get(desk, "rate");
        let per_hour =
            |money: Option<Money<Worked<'t>>>| Some(mill::stage_cost_by_hour(money?, rate?).v());
        let cost: Option<CostPerMass<_>> = given.get(desk, "cost");
        let parts = [cost.map(CostPerMass::v), per_hour(given.get(desk, "hourly"))];
        let mut sum = parts.into_iter().flatten().reduce(|a, b| a + b);
        if let (Some(own), Some(share)) = (sum, on_top.share) {
            sum = Some(own * (1.0 + share.v()));
        }
        let sum = [sum, per_hour(on_top.hourly)].into_iter().flatten().reduce(|a, b| a + b);
        let sum = CostPerMass::from(sum.unwrap_or(V::constant(0.0)));
        desk.figure(
            &format!("{}.added", self.name),
            "added by the stage for a kilogram that goes in",
            sum,
        )
    }
}

impl Costing {
    /// Works it out: each figure has its name and its working.
    pub fn work(&self) -> Result<Particulars> {
        if self.stages.is_empty() {
            return Err(Error::notation(
                "no stage is given; give them in order, each with its name, loss and cost",
            ));
        }
        Particulars::work(|desk| {
            let price: CostPerMass<_> = self.given.need(desk, "price")?;
            let on_top = Overhead {
                share: self.given.get(desk, "overhead"),
                hourly: self.given.get(desk, "hourly_overhead"),
            };
            let losses: Vec<Fraction<_>> = self
                .stages
                .iter()
                .map(|s| s.given.get(desk, "loss").unwrap_or(V::constant(0.0).into()))
                .collect();
            let masses = masses(self, desk, &losses);
            let (mut cost, mut told) = (price, Vec::new());
            for ((stage, loss), mass) in self.stages.iter().zip(&losses).zip(&masses) {
                let added = stage.added(desk, &on_top);
                let value: Option<CostPerMass<_>> = stage.given.get(desk, "waste_value");
                let sold: Fraction<_> = stage.given.get(desk, "waste_sold").unwrap_or(*loss);
                let after = match value {
                    None => mill::cost_after_stage(cost, added, *loss),
                    Some(value) => {
                        mill::cost_after_stage_less_waste(cost, added, *loss, sold, value)
                    }
                };
                let words = "cost of a kilogram that comes out of the stage";
                cost = desk.figure(&format!("{}.cost", stage.name), words, after);
                told.push(ToldStage {
                    name: stage.name.clone(),
                    loss: loss.value(),
                    mass: mass.value(),
                    added: added.value(),
                    cost: cost.value(),
                    sold: value.map(|v| sold.value() * v.value()),
                });
            }
            let cost = desk.figure("cost", "whole cost of a kilogram that comes out", cost);
            let bought = bought(desk, price, masses[0], cost);
            let pieces = self.goods(desk, cost);
            let overhead = (on_top.share.map(MarkUp::value), on_top.hourly.map(Money::value));
            Ok(Told {
                price: price.value(),
                stages: told,
                cost: cost.value(),
                overhead,
                bought,
                pieces,
                selling: self.selling(),
            }
            .report())
        })
    }

    /// By what the price is made, in words.
    fn selling(&self) -> Option<(&'static str, f64)> {
        let margin = self.given.base("margin").map(|g| ("margin on the price", g));
        margin.or_else(|| self.given.base("mark_up").map(|u| ("mark-up on the cost", u)))
    }

    /// Cost and price of the goods; of a kilogram where none is named.
    fn goods<'t>(&self, desk: &Desk<'t>, cost: CostPerMass<Worked<'t>>) -> Vec<ToldPiece> {
        let (margin, mark_up): (Option<Margin<_>>, Option<MarkUp<_>>) =
            (self.given.get(desk, "margin"), self.given.get(desk, "mark_up"));
        let priced = |name: &str, mass: Mass<Worked<'t>>| {
            let whole = mill::cost_of_mass(mass, cost);
            let whole = desk.figure(&format!("{name}.cost"), "its whole cost", whole);
            let price = match (margin, mark_up) {
                (Some(margin), _) => Some(mill::price_at_margin(whole, margin)),
                (None, Some(mark_up)) => Some(mill::price_at_mark_up(whole, mark_up)),
                (None, None) => None,
            };
            let words = "its price, before value added tax";
            let price = price.map(|p| desk.figure(&format!("{name}.price"), words, p));
            ToldPiece {
                name: name.to_owned(),
                mass: mass.value(),
                cost: whole.value(),
                price: price.map(Money::value),
            }
        };
        if self.pieces.is_empty() {
            return vec![priced("kilogram", V::constant(1.0).into())];
        }
        let pieces = self.pieces.iter().map(|(name, mass, typed)| {
            let mass = desk.given(&format!("{name}.mass"), "m", "its mass", mass, typed.clone());
            priced(name, mass)
        });
        pieces.collect()
    }
}

/// What must go into each stage for a kilogram to come out of the last.
fn masses<'t>(
    costing: &Costing,
    desk: &Desk<'t>,
    losses: &[Fraction<Worked<'t>>],
) -> Vec<Mass<Worked<'t>>> {
    let mut mass: Mass<_> = V::constant(1.0).into();
    let mut all = Vec::new();
    for (stage, loss) in costing.stages.iter().zip(losses).rev() {
        mass = mill::mass_before_losses(mass, &[*loss]);
        let words = "goes into the stage for a kilogram that comes out of the last";
        mass = desk.figure(&format!("{}.in", stage.name), words, mass);
        all.push(mass);
    }
    all.reverse();
    all
}

/// What is paid for wool, over the whole cost.
fn bought<'t>(
    desk: &Desk<'t>,
    price: CostPerMass<Worked<'t>>,
    mass: Mass<Worked<'t>>,
    cost: CostPerMass<Worked<'t>>,
) -> Option<f64> {
    // Waste may bring more than all has cost, and wool may be paid to be taken.
    if cost.value() <= 0.0 || price.value() < 0.0 {
        return None;
    }
    let share = Ratio::from(price.v() * mass.v() / cost.v());
    Some(desk.figure("bought", "what is bought, over the whole cost", share).value())
}
