//! A dye bath for a lot. The recipe is the dyer's.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::fibre::{mass_after_change_of_state, mass_at_regain, state_ratio};
use crate::mill::{
    concentration_from_mass, liquor_volume, mass_after_loss, mass_in_liquor, stock_volume,
    water_to_fill,
};
use crate::number::Number;
use crate::quantity::{
    Concentration, Fraction, LinearDensity, Mass, OnFibre, Ratio, Regain, ShareLost, Shrinkage,
    Volume, Yield,
};
use crate::{mill, yarn};

/// The water on the goods.
#[derive(Clone, Debug, Inputs)]
pub struct GoodsRegain<N> {
    /// water on the dry fibre, as the goods are weighed
    #[q("R₁", 0.0..=0.4, like = "14 %", zero)]
    pub regain_before: Regain<N>,
    /// regain that the recipe's shares are on
    #[q("R_r", 0.0..=0.2, zero)]
    pub recipe_regain: Option<Regain<N>>,
    /// water on the dry fibre after drying
    #[q("R₂", 0.0..=0.4, zero)]
    pub regain_after: Option<Regain<N>>,
}

/// What is added to the bath besides the dye.
#[derive(Clone, Debug, Inputs)]
pub struct Addition<N> {
    /// what it is
    #[label]
    pub name: String,
    /// How much of it.
    #[one_of("how much of it is added")]
    pub amount: AdditionAmount<N>,
}

/// How much is added: on the goods, or in the liquor.
#[derive(Clone, Debug, Inputs)]
pub enum AdditionAmount<N> {
    /// on the mass of the goods
    #[q("a_g", 0.0..=0.5, like = "2 %", zero)]
    OnGoods(OnFibre<N>),
    /// in the liquor
    #[q("a_l", 0.01..=200.0, zero)]
    InLiquor(Concentration<N>),
}

/// The yarn of the goods.
#[derive(Clone, Debug, Inputs)]
pub struct DyedYarn<N> {
    /// count before the bath
    #[q("T₁", 5.0..=4000.0, like = "150 tex")]
    pub count_before: LinearDensity<N>,
    /// shrinkage in length
    #[q("s", -0.05..=0.15, or = 0.0)]
    pub shrinkage: Shrinkage<N>,
}

/// What [`dye_bath()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct DyeBathInputs<N> {
    /// goods as weighed
    #[q("m", 0.01..=2000.0, like = "20 kg")]
    pub mass: Mass<N>,
    /// The water on them.
    #[group]
    pub regain: Option<GoodsRegain<N>>,
    /// depth: dye on the mass of the goods
    #[q("p", 0.0001..=0.1, like = "2 %", zero)]
    pub depth: OnFibre<N>,
    /// strength of the dye, on the standard
    #[q("s_d", 0.2..=4.0, or = 1.0)]
    pub dye_strength: Yield<N>,
    /// litres of liquor for a kilogram of goods
    #[q("r", 4.0..=100.0, like = "30")]
    pub liquor_ratio: Ratio<N>,
    /// concentration of the stock solution
    #[q("c", 0.5..=100.0)]
    pub stock_concentration: Option<Concentration<N>>,
    /// water in goods that were wetted out
    #[q("V_g", 0.0..=10_000.0, zero)]
    pub goods_water: Option<Volume<N>>,
    /// what is added besides the dye
    #[rows]
    pub additions: Option<Vec<Addition<N>>>,
    /// dye on the goods at the end, on the dye put in
    #[q("E", 0.3..=1.0, zero)]
    pub exhaustion: Option<Fraction<N>>,
    /// fibre and other matter lost in the bath, on what goes in
    #[q("w", 0.0..=0.05, or = 0.0)]
    pub loss: ShareLost<N>,
    /// The yarn.
    #[group]
    pub yarn: Option<DyedYarn<N>>,
    /// where the recipe comes from
    pub source: Option<String>,
}

/// What [`dye_bath()`] answers.
#[derive(Clone, Debug, Results)]
pub struct DyeBathResults<N> {
    /// goods that the recipe's shares are on
    #[block = "The bath"]
    pub goods_mass: Mass<N>,
    /// liquor
    pub liquor_volume: Volume<N>,
    /// dye to weigh out
    pub dye_mass: Mass<N>,
    /// stock solution that holds the dye
    pub stock_volume: Option<Volume<N>>,
    /// water to fill the bath up
    pub water_volume: Volume<N>,
    /// dye left in the bath
    pub dye_left: Option<Mass<N>>,
    /// concentration of the dye in the bath after, if nothing boiled off
    pub concentration_after: Option<Concentration<N>>,
    /// To add besides the dye
    #[rows]
    pub additions: Vec<AdditionResults<N>>,
    /// goods after the bath, dried
    #[block = "The goods after it"]
    pub mass_after: Mass<N>,
    /// count after the bath
    pub count_after: Option<LinearDensity<N>>,
}

/// An addition, weighed out.
#[derive(Clone, Debug, Results)]
pub struct AdditionResults<N> {
    /// what it is
    #[label]
    pub name: String,
    /// mass to weigh out
    pub mass: Mass<N>,
}

/// Liquor, dye, additions and water of a dye bath, what is left in it, and the goods after it.
///
/// The recipe is yours, from the maker of the dye: `source` names it. Its shares are on the goods as
/// weighed, unless `regain_before` and the `recipe_regain` are given. Each of the `additions` has a name,
/// and an amount on the goods (`on_goods`) or in the liquor (`in_liquor`). `goods_water` is water that
/// wetted goods bring.
#[calculation(
    title = "Dye bath",
    example = ">>> import hankwise as hw
>>> bath = hw.mill.dye_bath(mass=\"20 kg\", depth=\"2 %\", liquor_ratio=30, stock_concentration=\"10 g/L\",
...                         additions={\"acetic acid\": {\"on_goods\": \"2 %\"}}, source=\"the maker's card\")
>>> bath[\"dye_mass\"], bath[\"acetic acid.mass\"], bath[\"stock_volume\"], bath[\"water_volume\"]
(<mass: 0.4 kg>, <mass: 0.4 kg>, <volume: 40 L>, <volume: 560 L>)",
    cautions = ["dyeing", "hot liquor"],
    check = check
)]
pub fn dye_bath<N: Number>(given: &DyeBathInputs<N>) -> DyeBathResults<N> {
    let goods_mass = match &given.regain {
        Some(GoodsRegain { regain_before, recipe_regain: Some(wanted), .. }) => {
            mass_at_regain(given.mass, *regain_before, *wanted)
        }
        _ => given.mass,
    };
    let liquor = liquor_volume(goods_mass, given.liquor_ratio);
    let dye = mill::dye_mass(goods_mass, given.depth, given.dye_strength);
    let stock_volume = given.stock_concentration.map(|stock| stock_volume(dye, stock));
    let brought: Vec<Volume<N>> = [stock_volume, given.goods_water].into_iter().flatten().collect();
    let water_volume = if brought.is_empty() { liquor } else { water_to_fill(liquor, &brought) };
    let dye_left = given.exhaustion.map(|share| mill::dye_left(dye, share));
    // The strength is that which the recipe means.
    let full = Yield::base(N::constant(1.0));
    let weigh = |one: &Addition<N>| AdditionResults {
        name: one.name.clone(),
        mass: match one.amount {
            AdditionAmount::OnGoods(share) => mill::dye_mass(goods_mass, share, full),
            AdditionAmount::InLiquor(concentration) => mass_in_liquor(liquor, concentration),
        },
    };
    let (mass_after, count_after) = after(given);
    DyeBathResults {
        goods_mass,
        liquor_volume: liquor,
        dye_mass: dye,
        stock_volume,
        water_volume,
        dye_left,
        concentration_after: dye_left.map(|left| concentration_from_mass(left, liquor)),
        additions: given.additions.iter().flatten().map(weigh).collect(),
        mass_after,
        count_after,
    }
}

/// Mass and count of the goods after the bath.
fn after<N: Number>(given: &DyeBathInputs<N>) -> (Mass<N>, Option<LinearDensity<N>>) {
    // Grease and oil are out before dyeing.
    let none = OnFibre::base(N::constant(0.0));
    let (mut mass, mut change) = (given.mass, Ratio::base(N::constant(1.0)));
    if let Some(GoodsRegain { regain_before, regain_after: Some(after), .. }) = &given.regain {
        let before = state_ratio(*regain_before, none, none);
        let after = state_ratio(*after, none, none);
        mass = mass_after_change_of_state(given.mass, before, after);
        change = Ratio::from(after.v() / before.v());
    }
    let count = given.yarn.as_ref().map(|DyedYarn { count_before, shrinkage }| {
        yarn::count_after_scouring(*count_before, change, given.loss, *shrinkage)
    });
    (mass_after_loss(mass, given.loss, Mass::base(N::constant(0.0))), count)
}

fn check(
    given: &DyeBathInputs<f64>,
    found: &DyeBathResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if given.loss.value() >= 1.0 {
        refuse!(check, given.loss, "all of the goods would be lost; write less, such as 2 %");
    }
    if given.regain.as_ref().is_some_and(|r| r.recipe_regain.is_none() && r.regain_after.is_none())
    {
        check.idle(&["regain_before"], "recipe_regain or regain_after");
    }
    let parts = [found.stock_volume, given.goods_water];
    let brought = Volume::base(parts.into_iter().flatten().map(Volume::value).sum::<f64>());
    if brought.value() > found.liquor_volume.value() {
        refuse!(
            check,
            given.liquor_ratio,
            "stock solution and wet goods bring {} and the liquor is {}; take a stronger stock, or a greater \
             liquor_ratio",
            check.say(brought),
            check.say(found.liquor_volume)
        );
    }
    if given.additions.iter().flatten().any(|one| one.name.trim().is_empty()) {
        refuse!(check, given.additions, "one has no name; give each a name, such as 'acetic acid'");
    }
    let state = match given.regain.as_ref().and_then(|regain| regain.recipe_regain) {
        Some(regain) => format!("at {} regain", check.say(regain)),
        None => "as weighed".to_owned(),
    };
    check.beside("goods_mass", state);
    let recipe = match given.source.as_deref().map(str::trim).filter(|source| !source.is_empty()) {
        Some(source) => format!("Recipe: {source}."),
        None => "Recipe: yours; its source was not given. Nothing here proposes one.".to_owned(),
    };
    check.note("The bath", recipe);
    Ok(())
}
