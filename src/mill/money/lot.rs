//! What a lot costs: stage by stage, and goods by goods.
//!
//! Everything up to the yarn is a joint cost, shared by the clean dry fibre in the yarn that each of the
//! goods takes; yarn left over bears its share. What comes after (reel, cone, loom, finish) is the goods'
//! own.

use super::lot_report::{report, unpriced};
use super::price::Selling;
use super::rates::{Rates, StageCost, Stay, check_rates};
use super::{cost_of_mass, cost_share, hour_costs, known};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::{Error, Result};
use crate::number::{Number, V};
use crate::quantity::{CostPerMass, Count, Duration, MarkUp, Mass, Money, Ratio};

/// A stage up to the yarn.
#[derive(Clone, Debug, Inputs)]
pub struct LotStage<N> {
    /// name of the stage
    #[label]
    pub name: String,
    /// mass that goes in, as weighed
    #[q("m_i", 0.1..=10_000.0)]
    pub mass_in: Option<Mass<N>>,
    /// running time
    #[q("τ", 0.0..=1000.0, zero)]
    pub time: Option<Duration<N>>,
    /// What is paid there.
    #[group]
    pub rates: Rates<N>,
}

/// A stage after the yarn, whose cost is that of the goods that go over it.
#[derive(Clone, Debug, Inputs)]
pub struct OwnStage<N> {
    /// name of the stage
    #[label]
    pub name: String,
    /// What is paid there.
    #[group]
    pub rates: Rates<N>,
}

/// Goods of a lot.
#[derive(Clone, Debug, Inputs)]
pub struct LotGoods<N> {
    /// name of the goods
    #[label]
    pub name: String,
    /// clean dry fibre in the yarn that they take
    #[q("f", 0.001..=10_000.0, zero)]
    pub fibre_mass: Mass<N>,
    /// pieces made
    #[q("n_p", 1.0..=10_000.0)]
    pub pieces: Option<Count<N>>,
    /// stages after the yarn that they go over
    #[rows]
    pub times: Option<Vec<OwnTime<N>>>,
}

/// How long goods are at a stage of their own.
#[derive(Clone, Debug, Inputs)]
pub struct OwnTime<N> {
    /// name of the stage
    #[label]
    pub stage: String,
    /// running time
    #[q("τ", 0.0..=1000.0, zero)]
    pub time: Option<Duration<N>>,
}

/// What [`lot_cost()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct LotCostInputs<N> {
    /// name of the lot
    pub name: Option<String>,
    /// greasy mass as received
    #[q("G", 1.0..=5000.0, like = "80 kg")]
    pub greasy_mass: Mass<N>,
    /// price of a greasy kilogram; 0 for an owner's own
    #[q("p", 0.0..=200.0, zero, like = "4.20 /kg")]
    pub price_per_mass: CostPerMass<N>,
    /// stages up to the yarn, in order
    #[rows]
    pub stages: Vec<LotStage<N>>,
    /// stages after the yarn
    #[rows]
    pub own_stages: Option<Vec<OwnStage<N>>>,
    /// goods
    #[rows]
    pub goods: Vec<LotGoods<N>>,
    /// clean dry fibre in yarn that is left over
    #[q("f_l", 0.0..=1000.0, or = 0.0)]
    pub left_over: Mass<N>,
    /// mass of the yarn for each unit of its clean dry fibre
    #[q("s_m", 1.0..=1.7, or = 1.0)]
    pub state_ratio: Ratio<N>,
    /// wage of a person for an hour
    #[q("c_p", 0.0..=500.0, zero)]
    pub hourly_wage: Option<Money<N>>,
    /// overhead, on the cost of the stages
    #[q("o", 0.0..=3.0, zero)]
    pub overhead: Option<MarkUp<N>>,
    /// overhead of an hour of every machine
    #[q("c_o", 0.0..=500.0, zero)]
    pub hourly_overhead: Option<Money<N>>,
    /// How goods are priced.
    #[one_of("the price of the goods")]
    pub selling: Option<Selling<N>>,
}

/// What a stage after the yarn costs for some goods.
#[derive(Clone, Debug, Results)]
pub struct OwnCost<N> {
    /// goods and stage
    #[label]
    pub name: String,
    /// share that the goods have in what is paid once for the stage
    pub own_cost_share: Ratio<N>,
    /// What it costs.
    #[part]
    pub costs: StageCost<N>,
}

/// What goods cost.
#[derive(Clone, Debug, Results)]
pub struct GoodsBorne<N> {
    /// name of the goods
    #[label]
    pub name: String,
    /// their share of the joint cost
    #[head = "joint"]
    pub joint_share: Money<N>,
    /// their own cost: reel, cone, loom, finish
    #[head = "own"]
    pub own_cost: Money<N>,
    /// their whole cost
    #[head = "whole"]
    pub cost: Money<N>,
    /// cost of a piece
    #[head = "a piece"]
    pub cost_per_piece: Option<Money<N>>,
    /// price of a piece, before value added tax
    #[head = "price"]
    pub price_per_piece: Option<Money<N>>,
}

/// What [`lot_cost()`] answers.
#[derive(Clone, Debug, Results)]
pub struct LotCostResults<N> {
    /// Goods
    #[rows]
    pub goods: Vec<GoodsBorne<N>>,
    /// greasy wool
    #[block = "The lot"]
    pub greasy_cost: Money<N>,
    /// joint cost: wool and all stages up to the yarn
    pub joint_cost: Money<N>,
    /// share of the joint cost in yarn that is left over
    pub left_over_cost: Money<N>,
    /// whole cost of the lot
    pub cost: Money<N>,
    /// hours of people in all
    pub person_hours: Option<Duration<N>>,
    /// Stages up to the yarn
    #[rows]
    pub stages: Vec<StageCost<N>>,
    /// Stages after the yarn
    #[rows]
    pub own_stages: Vec<OwnCost<N>>,
}

/// What a lot costs, stage by stage and goods by goods.
///
/// All that is spent up to the yarn is joint, and is shared by the clean dry fibre in the yarn that each of
/// the goods takes; yarn left over bears its share. What a stage after the yarn costs is the goods' own, and
/// what is paid there once is shared by the clean dry fibre of the goods that go over it. A margin is on the
/// price, a mark-up on the cost. Taxes on sales are not included.
#[calculation(
    title = "What the lot costs",
    check = check,
    report = report,
    example = ">>> import hankwise as hw
>>> cost = hw.mill.lot_cost(
...     greasy_mass=\"80 kg\",
...     price_per_mass=\"4 /kg\",
...     stages={\"card\": {\"time\": \"5 h\", \"hourly_cost\": 20}},
...     goods={\"hank\": {\"fibre_mass\": \"36 kg\", \"pieces\": 400}},
...     left_over=\"4 kg\",
... )
>>> cost[\"cost\"], cost[\"hank.cost\"], cost[\"hank.cost_per_piece\"]
(<money: 420>, <money: 378>, <money: 0.945>)"
)]
pub fn lot_cost<N: Number>(given: &LotCostInputs<N>) -> LotCostResults<N> {
    let greasy_cost = cost_of_mass(given.greasy_mass, given.price_per_mass);
    let stages: Vec<StageCost<N>> = given
        .stages
        .iter()
        .map(|stage| {
            let stay = Stay { time: stage.time, mass_in: stage.mass_in, share: None };
            stage.rates.cost(&stage.name, &stay, given)
        })
        .collect();
    let own_stages = own_stages(given);
    let joint_cost = Money::from(
        stages
            .iter()
            .filter_map(|stage| stage.cost)
            .fold(greasy_cost.v(), |sum, cost| sum + cost.v()),
    );
    let fibre = given.goods.iter().map(|goods| goods.fibre_mass.v());
    let fibre = Mass::from(V::sum(fibre) + given.left_over.v());
    let goods: Vec<GoodsBorne<N>> = given
        .goods
        .iter()
        .map(|goods| {
            let joint_share = cost_share(joint_cost, goods.fibre_mass, fibre);
            let own = own_stages.iter().filter(|(of, _)| *of == goods.name);
            let own_cost = known(own.map(|(_, stage)| stage.costs.cost));
            let own_cost = own_cost.unwrap_or(V::constant(0.0).into());
            let cost = Money::from(joint_share.v() + own_cost.v());
            let cost_per_piece = goods.pieces.map(|pieces| Money::from(cost.v() / pieces.v()));
            let price = given.selling.as_ref().zip(cost_per_piece);
            GoodsBorne {
                name: goods.name.clone(),
                joint_share,
                own_cost,
                cost,
                cost_per_piece,
                price_per_piece: price.map(|(selling, cost)| selling.price(cost)),
            }
        })
        .collect();
    let own_stages: Vec<OwnCost<N>> = own_stages.into_iter().map(|(_, stage)| stage).collect();
    let own = goods.iter().map(|goods| goods.own_cost.v());
    let all = stages.iter().chain(own_stages.iter().map(|stage| &stage.costs));
    let person_hours = known(all.map(|stage| stage.person_hours));
    LotCostResults {
        greasy_cost,
        joint_cost,
        left_over_cost: cost_share(joint_cost, given.left_over, fibre),
        cost: own.fold(joint_cost.v(), |sum, own| sum + own).into(),
        person_hours,
        goods,
        stages,
        own_stages,
    }
}

/// The stages after the yarn, for each of the goods that go over them.
fn own_stages<N: Number>(given: &LotCostInputs<N>) -> Vec<(String, OwnCost<N>)> {
    let goes_over = |goods: &LotGoods<N>, stage: &OwnStage<N>| {
        goods.times.iter().flatten().any(|own| own.stage == stage.name)
    };
    let mut all = Vec::new();
    for stage in given.own_stages.iter().flatten() {
        let here: Vec<&LotGoods<N>> =
            given.goods.iter().filter(|goods| goes_over(goods, stage)).collect();
        let fibre = V::sum(here.iter().map(|goods| goods.fibre_mass.v()));
        for goods in &here {
            let own = goods.times.iter().flatten().find(|own| own.stage == stage.name);
            // Goods that take nothing share alike.
            let alike = 1.0 / here.len() as f64;
            let share = V::constant(0.0).if_less(fibre, goods.fibre_mass.v() / fibre, alike);
            let stay = Stay {
                time: own.and_then(|own| own.time),
                mass_in: Some(Mass::from(goods.fibre_mass.v() * given.state_ratio.v())),
                share: Some(share.into()),
            };
            let name = format!("{}.{}", goods.name, stage.name);
            let costs = stage.rates.cost(&name, &stay, given);
            all.push((goods.name.clone(), OwnCost { name, own_cost_share: share.into(), costs }));
        }
    }
    all
}

fn check(
    given: &LotCostInputs<f64>,
    found: &LotCostResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    hour_costs(check, "hourly_wage", given.hourly_wage)?;
    hour_costs(check, "hourly_overhead", given.hourly_overhead)?;
    let unpriced = unpriced(found);
    if !unpriced.is_empty() {
        check.beside("cost", format!("as far as priced; not priced: {}", unpriced.join(", ")));
    }
    for (stage, cost) in given.stages.iter().zip(&found.stages) {
        check_rates(&stage.rates, &stage.name, cost, check)?;
        if stage.rates.stage_cost_per_mass.is_some() && stage.mass_in.is_none() {
            return Err(check.refuse(
                &format!("{}.stage_cost_per_mass", stage.name),
                "stage_cost_per_mass was given without mass_in (mass that goes in, as weighed); write both \
                 or neither",
            ));
        }
    }
    let own = given.own_stages.as_deref().unwrap_or_default();
    for goods in &given.goods {
        for time in goods.times.iter().flatten() {
            if !own.iter().any(|stage| stage.name == time.stage) {
                let names: Vec<&str> = own.iter().map(|stage| stage.name.as_str()).collect();
                let error = Error::no_such(&time.stage, &names);
                return Err(check.refuse(&format!("{}.times", goods.name), error.to_string()));
            }
        }
    }
    for cost in &found.own_stages {
        if let Some(stage) =
            own.iter().find(|stage| cost.name.ends_with(&format!(".{}", stage.name)))
        {
            check_rates(&stage.rates, &stage.name, &cost.costs, check)?;
        }
    }
    let people = |rates: &Rates<f64>| rates.people.is_some();
    let anyone = given.stages.iter().any(|stage| people(&stage.rates))
        || own.iter().any(|stage| people(&stage.rates));
    if given.hourly_wage.is_some() && !anyone {
        refuse!(
            check,
            given.hourly_wage,
            "a wage is given and nobody at a machine; write the people of a stage too, such as people=1"
        );
    }
    let fibre = given.goods.iter().map(|goods| goods.fibre_mass.value()).sum::<f64>();
    if fibre + given.left_over.value() <= 0.0 {
        refuse!(check, given.goods, "nothing comes out of the lot, so nothing bears its cost");
    }
    Ok(())
}
