//! A quotation: what the mill charges for a planned lot by its tariffs, what the lot costs the mill, and the
//! lots that pay.

mod measured;
mod pays;
mod report;
mod rules;

use super::Run;
use super::chain::Nominal;
use super::lots::{Blocks, Lot, in_blocks};
use super::result::{Band, PlanResult};
use super::tree::From;
use super::tree::forward::Carried;
use crate::error::{Error, Result};
use crate::mill;
use crate::quantity::{Kind, Margin, Mass, Money, ShareOfSales};
use measured::Measured;
pub use pays::PaysFrom;
use pays::{cost_of, pays_from};
use rules::{Rule, Rules};

/// What is asked beside the price by the tariffs.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Terms {
    /// A wanted margin, as a share of the price.
    pub margin: Option<f64>,
    /// A price for the lot.
    pub price: Option<f64>,
}

/// A line of a quotation.
#[derive(Clone, Debug, PartialEq)]
pub struct QuoteLine {
    /// The stage, such as `card`, `weft.card` or `loom.throw`.
    pub stage: String,
    /// The goods that it is for, at a machine after the yarn.
    pub good: Option<String>,
    /// What is charged for, in words.
    pub basis: &'static str,
    /// The unit of the quantity: kg, h, or nothing for a number.
    pub unit: &'static str,
    /// How much of it there is.
    pub quantity: f64,
    /// What one of it is charged.
    pub rate: f64,
    /// What it comes to.
    pub amount: f64,
}

/// What some goods are charged.
#[derive(Clone, Debug, PartialEq)]
pub struct QuoteGood {
    /// Their name.
    pub name: String,
    /// Whole pieces, planned.
    pub pieces: f64,
    /// Finished mass as sold, kg.
    pub finished_mass: f64,
    /// Their share of what is charged up to the yarn, by clean dry fibre, and of what the minimum charge adds.
    pub joint_share: f64,
    /// What their own machines are charged.
    pub own: f64,
    /// Both together.
    pub price: f64,
    /// Price of a piece, where there is one.
    pub price_per_piece: Option<f64>,
}

/// A quotation, with the planned values. Taxes on sales are not included.
#[derive(Clone, Debug)]
pub struct Quote {
    /// Name of the lot.
    pub name: String,
    /// The lot file.
    pub file: String,
    /// The currency, as the mill writes it; may be empty.
    pub money: String,
    /// What is charged, in the order of the stages.
    pub lines: Vec<QuoteLine>,
    /// What is not priced, and why.
    pub not_priced: Vec<(String, String)>,
    /// The lines together.
    pub sum: f64,
    /// The least charge for a lot, where the mill has one.
    pub minimum_charge: Option<f64>,
    /// Whether that is more than the lines.
    pub minimum_applies: bool,
    /// What the lot is charged.
    pub price: f64,
    /// This price over the simulated lots.
    pub band: Option<Band>,
    /// Why there is no such range, where there is none.
    pub planned_only: Option<String>,
    /// Greasy mass taken in, kg.
    pub greasy_mass: f64,
    /// Mass of all finished goods as sold, kg.
    pub finished_mass: f64,
    /// Price for a greasy kilogram.
    pub price_per_greasy_kg: f64,
    /// Price for a finished kilogram, where anything is made.
    pub price_per_finished_kg: Option<f64>,
    /// The goods.
    pub goods: Vec<QuoteGood>,
    /// Share of the joint charge in yarn that is left over.
    pub left_over: f64,
    /// What the lot costs the mill, where the mill says so.
    pub cost: Option<f64>,
    /// What that leaves, as a share of the price; less than nothing where the lot costs more.
    pub margin: Option<f64>,
    /// What was asked beside.
    pub terms: Terms,
    /// The price that leaves the wanted margin.
    pub price_for_margin: Option<f64>,
    /// The margin that the price asked about leaves.
    pub margin_of_price: Option<f64>,
    /// The lots that pay.
    pub pays_from: Option<PaysFrom>,
}

impl PlanResult {
    /// What the mill charges for the lot by its tariffs, what the lot costs it, and which lots pay.
    ///
    /// ```
    /// use hankwise::plan::{Plan, Run, Terms};
    ///
    /// let plan = Plan::load("examples/nine-kilos.toml".as_ref())?;
    /// let quote = plan.run(&Run::planned())?.quote(&Terms::default())?;
    /// assert!(quote.minimum_applies);
    /// assert_eq!(quote.price, 260.0);
    /// assert_eq!(quote.cost, Some(250.0 + 9.0 * 4.5));
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    ///
    /// # Errors
    /// Where the mill has no tariffs, or no cost from which a margin could be reckoned.
    pub fn quote(&self, terms: &Terms) -> Result<Quote> {
        let plan = &self.plan;
        let home = plan.mill().map_or_else(|| plan.file(), |mill| mill.name.as_str());
        if !plan.tariffs.is_present {
            return Err(Error::plan(format!(
                "{home}: there are no prices; write a table [tariff] with what is charged, such as \
                 card.tariff_out = \"5.50 /kg\" and minimum_charge = 260"
            )));
        }
        let given_cost = plan.tariffs.cost();
        terms.check()?;
        if given_cost.is_none() && *terms != Terms::default() {
            return Err(Error::plan(format!(
                "{home}: what a lot costs is not known, so there is no margin; write a table [cost] with \
                 fixed_cost = 250 and cost_per_mass = \"4.50 /kg\""
            )));
        }
        let mut rules = Rules::of(plan);
        let likely = plan.likely();
        let (lot, nominal) = Measured::whole(plan, &rules, &likely);
        let lines = self.lines(&mut rules, &lot);
        let sum = rules.sum(&lot);
        let price = rules.price(sum);
        let (band, planned_only) = self.price_over_lots(&rules)?;
        let greasy_mass = self.intake.0;
        let finished_mass: f64 = lot.finished.iter().sum();
        let (goods, left_over) = self.borne(&lines, price, &lot, &nominal);
        let cost = given_cost.map(|of| cost_of(of, greasy_mass));
        let priced = |margin| {
            let cost = Money::base(cost.unwrap_or(f64::NAN));
            mill::price_at_margin(cost, Margin::base(margin)).value()
        };
        Ok(Quote {
            name: self.name.clone(),
            file: self.file.clone(),
            money: plan.tariffs.money.clone(),
            lines,
            sum,
            minimum_charge: rules.minimum_charge,
            minimum_applies: price > sum,
            price,
            band,
            planned_only,
            greasy_mass,
            finished_mass,
            price_per_greasy_kg: price / greasy_mass,
            price_per_finished_kg: (finished_mass > 0.0).then(|| price / finished_mass),
            goods,
            left_over,
            cost,
            margin: cost.and_then(|cost| margin(cost, price)),
            terms: *terms,
            price_for_margin: terms.margin.map(priced),
            margin_of_price: cost.zip(terms.price).and_then(|(cost, price)| margin(cost, price)),
            pays_from: given_cost.map(|cost| pays_from(plan, &rules, cost, greasy_mass)),
            not_priced: rules.not_priced,
        })
    }

    /// The lines; what has a rate and no quantity is not priced.
    fn lines(&self, rules: &mut Rules, lot: &Measured) -> Vec<QuoteLine> {
        let mut lines = Vec::new();
        for rule in &rules.all {
            let Some(quantity) = rule.quantity(lot) else {
                let why = "by the hour: the plan has no running time for it".to_owned();
                rules.not_priced.push((rule.stage.clone(), why));
                continue;
            };
            lines.push(QuoteLine {
                stage: rule.stage.clone(),
                good: rule.good.map(|good| self.goods[good].name.clone()),
                basis: rule.basis,
                unit: rule.unit(),
                quantity,
                rate: rule.rate,
                amount: rule.charge(quantity),
            });
        }
        lines
    }

    /// The price over the lots that were simulated, or why it is not known.
    fn price_over_lots(&self, rules: &Rules) -> Result<(Option<Band>, Option<String>)> {
        let only = |why: &str| Ok((None, Some(why.to_owned())));
        if self.simulated == 0 {
            return only("no lots were simulated");
        }
        if !rules.all.iter().all(Rule::is_simulated) {
            return only("running hours and the mass of finished goods are planned, not simulated");
        }
        let plan = &self.plan;
        let run = Run { lots: self.simulated, seed: self.seed, ..Run::default() };
        let start =
            |lots| (Vec::<f64>::with_capacity(lots), Measured::default(), Carried::default());
        let make = |lot: &Lot<'_>, (prices, measured, made): &mut (Vec<f64>, Measured, _)| {
            measured.carry(plan, lot, made);
            prices.push(rules.price(rules.sum(measured)));
        };
        let Blocks { blocks, .. } = in_blocks(plan, &run, &mut |_| true, make, start)?;
        let mut prices: Vec<f64> = blocks.into_iter().flat_map(|block| block.0).collect();
        Ok((Some(Band::of(&mut prices)), None))
    }

    /// What the goods bear of the price, and the yarn that is left over: what is charged up to the yarn by
    /// the clean dry fibre of the lot's own wool, and with it what the minimum charge adds.
    fn borne(
        &self,
        lines: &[QuoteLine],
        price: f64,
        lot: &Measured,
        nominal: &Nominal,
    ) -> (Vec<QuoteGood>, f64) {
        let tree = &self.plan.tree;
        let is_of_the_lot = |mut yarn: usize| loop {
            match tree.yarns[yarn].from {
                From::Heap(_) => return true,
                From::Stock(_) => return false,
                From::Yarn(parent) => yarn = parent,
            }
        };
        let fibre: Vec<f64> = tree
            .goods
            .iter()
            .zip(&nominal.taken)
            .map(|(good, taken)| {
                let own = good.yarns().zip(taken).filter(|(yarn, _)| is_of_the_lot(*yarn));
                own.map(|(_, fibre)| fibre).sum()
            })
            .collect();
        let left = nominal.yarns.iter().enumerate().filter(|(yarn, _)| is_of_the_lot(*yarn));
        let left: f64 = left.map(|(_, yarn)| yarn.left_over).sum();
        let whole: f64 = fibre.iter().sum::<f64>() + left;
        let own = |name: &str| {
            let lines = lines.iter().filter(|line| line.good.as_deref() == Some(name));
            lines.map(|line| line.amount).sum::<f64>()
        };
        let all_own: f64 = self.goods.iter().map(|good| own(&good.name)).sum();
        let joint = Money::base(price - all_own);
        let share = |fibre: f64| {
            if whole <= 0.0 {
                return 0.0;
            }
            mill::cost_share(joint, Mass::base(fibre), Mass::base(whole)).value()
        };
        let goods = self.goods.iter().enumerate().map(|(place, good)| {
            let (joint_share, own) = (share(fibre[place]), own(&good.name));
            let (pieces, price) = (lot.pieces[place], joint_share + own);
            QuoteGood {
                name: good.name.clone(),
                pieces,
                finished_mass: lot.finished[place],
                joint_share,
                own,
                price,
                price_per_piece: (pieces > 0.5).then(|| price / pieces),
            }
        });
        (goods.collect(), share(left))
    }
}

impl Terms {
    fn check(&self) -> Result<()> {
        if let Some(margin) = self.margin {
            Kind::Margin.check(margin).map_err(|e| e.at("margin"))?;
        }
        match self.price.filter(|price| !(price.is_finite() && *price > 0.0)) {
            Some(_) => {
                Err(Error::range("price: write the price of the lot, more than 0, such as 300"))
            }
            None => Ok(()),
        }
    }
}

/// What a price leaves over a cost, as a share of the price.
fn margin(cost: f64, price: f64) -> Option<f64> {
    let costs = [ShareOfSales::base(cost / price)];
    (price > 0.0).then(|| mill::profit_of_sales(&costs).value())
}
