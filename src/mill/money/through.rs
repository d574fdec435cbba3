//! What a kilogram costs through stages that lose some of it, and what to ask for goods.

use super::price::Selling;
use super::through_report::report;
use super::{
    cost_after_stage, cost_after_stage_less_waste, cost_of_mass, hour_costs, known,
    stage_cost_by_hour,
};
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::mill::mass_before_losses;
use crate::number::{Number, V};
use crate::quantity::{CostPerMass, MarkUp, Mass, MassRate, Money, ShareLost};

/// A stage that costs something and loses something.
#[derive(Clone, Debug, Inputs)]
pub struct CostedStage<N> {
    /// name of the stage
    #[label]
    pub name: String,
    /// fibre lost, on what goes in
    #[q("w", 0.0..=0.6, or = 0.0)]
    pub loss: ShareLost<N>,
    /// cost of the stage for a kilogram that goes in
    #[q("c_s", 0.0..=50.0, zero, like = "1.50 /kg")]
    pub stage_cost_per_mass: Option<CostPerMass<N>>,
    /// cost of an hour of the machine
    #[q("k_h", 0.0..=500.0, zero)]
    pub hourly_cost: Option<Money<N>>,
    /// mass that goes in in an hour
    #[q("Q_i", 0.1..=5000.0, like = "12 kg/h")]
    pub feed_rate: Option<MassRate<N>>,
    /// Its waste.
    #[group]
    pub waste: Option<WasteSold<N>>,
}

/// What the waste of a stage brings.
#[derive(Clone, Debug, Inputs)]
pub struct WasteSold<N> {
    /// price of a kilogram of the waste sold
    #[q("p_w", 0.0..=50.0, zero)]
    pub waste_price_per_mass: CostPerMass<N>,
    /// share of what goes in that is sold as waste; the whole loss if omitted
    #[q("s", 0.0..=0.6, zero)]
    pub sold_share: Option<ShareLost<N>>,
}

/// Goods by their mass.
#[derive(Clone, Debug, Inputs)]
pub struct CostedGoods<N> {
    /// name of the goods
    #[label]
    pub name: String,
    /// mass of one, in the state in which the last stage leaves it
    #[q("m", 0.001..=100.0)]
    pub mass: Mass<N>,
}

/// What [`cost_through()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct CostThroughInputs<N> {
    /// price of a kilogram taken in
    #[q("p", 0.0..=200.0, zero, like = "4.20 /kg")]
    pub price_per_mass: CostPerMass<N>,
    /// stages in order
    #[rows]
    pub stages: Vec<CostedStage<N>>,
    /// goods by the mass of one; a kilogram if omitted
    #[rows]
    pub goods: Option<Vec<CostedGoods<N>>>,
    /// overhead, on the cost of the stages
    #[q("o", 0.0..=3.0, zero)]
    pub overhead: Option<MarkUp<N>>,
    /// overhead of an hour of each machine whose feed rate is given
    #[q("c_o", 0.0..=500.0, zero)]
    pub hourly_overhead: Option<Money<N>>,
    /// How goods are priced.
    #[one_of("the price of the goods")]
    pub selling: Option<Selling<N>>,
}

/// What becomes of a kilogram at a stage.
#[derive(Clone, Debug, Results)]
pub struct StageThrough<N> {
    /// name of the stage
    #[label]
    pub name: String,
    /// mass that goes in, for a kilogram that comes out of the last stage
    #[head = "in"]
    pub mass_in: Mass<N>,
    /// added by the stage for a kilogram that goes in, overhead included
    #[head = "added"]
    pub added_per_mass: CostPerMass<N>,
    /// what its waste brings for a kilogram that goes in
    #[head = "waste brings"]
    pub waste_value_per_mass: Option<CostPerMass<N>>,
    /// cost of a kilogram that comes out of the stage
    #[head = "cost after"]
    pub cost_per_mass: CostPerMass<N>,
}

/// What goods cost.
#[derive(Clone, Debug, Results)]
pub struct GoodsCost<N> {
    /// name of the goods
    #[label]
    pub name: String,
    /// cost of one
    pub cost: Money<N>,
    /// price of one, before value added tax
    pub price: Option<Money<N>>,
}

/// What [`cost_through()`] answers.
#[derive(Clone, Debug, Results)]
pub struct CostThroughResults<N> {
    /// Stages, for a kilogram that comes out of the last
    #[rows]
    pub stages: Vec<StageThrough<N>>,
    /// whole cost of a kilogram that comes out
    #[block = "A kilogram that comes out"]
    pub cost_per_mass: CostPerMass<N>,
    /// part of it that is paid for what is bought
    pub bought_per_mass: CostPerMass<N>,
    /// Goods
    #[rows]
    pub goods: Vec<GoodsCost<N>>,
}

/// What a kilogram costs as it goes through stages that lose some of it, and what to ask for goods.
///
/// A loss is a share of what goes into its stage. A stage costs so much for a kilogram that goes in, or for
/// an hour with the mass that goes in in an hour, or both. Overhead goes on what the stages cost, not on
/// what is bought. A margin is on the price, a mark-up on the cost. Taxes on sales are not included.
#[calculation(
    title = "Cost through losses",
    check = check,
    report = report,
    example = ">>> import hankwise as hw
>>> cost = hw.mill.cost_through(
...     price_per_mass=\"4.20 /kg\",
...     stages={
...         \"scour\": {\"loss\": \"42 %\", \"stage_cost_per_mass\": \"0.80 /kg\"},
...         \"card\": {\"loss\": \"8 %\", \"hourly_cost\": \"24\", \"feed_rate\": \"12 kg/h\"},
...     },
...     goods={\"hank\": \"100 g\"},
...     margin=\"30 %\",
... )
>>> cost[\"cost_per_mass\"], cost[\"hank.cost\"], cost[\"hank.price\"]
(<cost per mass: 11.54 /kg>, <money: 1.154>, <money: 1.649>)"
)]
pub fn cost_through<N: Number>(given: &CostThroughInputs<N>) -> CostThroughResults<N> {
    let masses = masses(&given.stages);
    let first = masses.first().copied().unwrap_or(V::constant(1.0).into());
    let mut cost = given.price_per_mass;
    let stage = |(stage, mass_in): (&CostedStage<N>, Mass<N>)| {
        let added = stage.added(given);
        let sold = stage
            .waste
            .as_ref()
            .map(|waste| (waste.sold_share.unwrap_or(stage.loss), waste.waste_price_per_mass));
        cost = match sold {
            None => cost_after_stage(cost, added, stage.loss),
            Some((sold, price)) => {
                cost_after_stage_less_waste(cost, added, stage.loss, sold, price)
            }
        };
        StageThrough {
            name: stage.name.clone(),
            mass_in,
            added_per_mass: added,
            waste_value_per_mass: sold.map(|(sold, price)| (sold.v() * price.v()).into()),
            cost_per_mass: cost,
        }
    };
    let stages = given.stages.iter().zip(masses).map(stage).collect();
    let goods = |name: &str, mass: Mass<N>| {
        let cost = cost_of_mass(mass, cost);
        let price = given.selling.as_ref().map(|selling| selling.price(cost));
        GoodsCost { name: name.to_owned(), cost, price }
    };
    CostThroughResults {
        stages,
        cost_per_mass: cost,
        bought_per_mass: (first.v() * given.price_per_mass.v()).into(),
        goods: match &given.goods {
            None => vec![goods("kilogram", V::constant(1.0).into())],
            Some(all) => all.iter().map(|one| goods(&one.name, one.mass)).collect(),
        },
    }
}

impl<N: Number> CostedStage<N> {
    /// What a kilogram that goes in costs here, overhead included.
    fn added(&self, given: &CostThroughInputs<N>) -> CostPerMass<N> {
        let by_hour = |hourly: Option<Money<N>>| {
            hourly.zip(self.feed_rate).map(|(hourly, rate)| stage_cost_by_hour(hourly, rate))
        };
        let own = known([self.stage_cost_per_mass, by_hour(self.hourly_cost)]);
        let own = match given.overhead {
            None => own,
            Some(share) => own.map(|own| (own.v() * (1.0 + share.v())).into()),
        };
        known([own, by_hour(given.hourly_overhead)]).unwrap_or(V::constant(0.0).into())
    }
}

/// What must go into each stage for a kilogram to come out of the last.
fn masses<N: Number>(stages: &[CostedStage<N>]) -> Vec<Mass<N>> {
    let mut mass: Mass<N> = V::constant(1.0).into();
    let mut all: Vec<Mass<N>> = stages
        .iter()
        .rev()
        .map(|stage| {
            mass = mass_before_losses(mass, &[stage.loss]);
            mass
        })
        .collect();
    all.reverse();
    all
}

fn check(
    given: &CostThroughInputs<f64>,
    _: &CostThroughResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    hour_costs(check, "hourly_overhead", given.hourly_overhead)?;
    for stage in &given.stages {
        let name = |of: &str| format!("{}.{of}", stage.name);
        hour_costs(check, &name("hourly_cost"), stage.hourly_cost)?;
        if stage.loss.value() >= 1.0 {
            let message = "all of it is lost, so nothing comes out; write less";
            return Err(check.refuse(&name("loss"), message));
        }
        if stage.hourly_cost.is_some() && stage.feed_rate.is_none() {
            return Err(check.refuse(
                &name("hourly_cost"),
                "hourly_cost was given without feed_rate (mass that goes in in an hour); write both or \
                 neither",
            ));
        }
        let Some(waste) = &stage.waste else { continue };
        if stage.loss.value() == 0.0 {
            return Err(check.refuse(
                &name("waste_price_per_mass"),
                "waste is sold of a stage that loses nothing; write its loss, such as loss=\"8 %\"",
            ));
        }
        if waste.sold_share.is_some_and(|sold| sold.value() > stage.loss.value()) {
            return Err(check.refuse(
                &name("sold_share"),
                "more is sold as waste than is lost; both are shares of what goes in",
            ));
        }
    }
    Ok(())
}
