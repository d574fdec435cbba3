//! A dye bath for a lot. The recipe is the dyer's.

use crate::error::{Error, Result};
use crate::fibre::{mass_after_change_of_state, mass_at_regain, state_ratio};
use crate::job::{Ask, Given, block};
use crate::mill::{
    concentration_from_mass, dye_left, dye_mass, liquor_volume, mass_after_loss, mass_in_liquor,
    stock_volume, water_to_fill,
};
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::of_kind;
use crate::quantity::{
    Amount, Concentration, Fraction, Kind, LinearDensity, Mass, OnFibre, Ratio, Regain, Shrinkage,
    Volume, Yield, unit,
};
use crate::table::{Block, Report};
use crate::worked::Worked;
use crate::yarn::count_after_scouring;

static ITEMS: [Ask; 13] = [
    Ask::need("mass", "m", "goods as weighed", Kind::Mass, (0.01, 2000.0), "\"20 kg\""),
    Ask::plain("regain", "R₁", "their water on the dry fibre", Kind::Regain, (0.0, 0.4)),
    Ask::plain(
        "recipe_regain",
        "R_r",
        "regain that the recipe's shares are on",
        Kind::Regain,
        (0.0, 0.2),
    ),
    Ask::plain("depth", "p", "depth: dye on the mass of the goods", Kind::OnFibre, (0.0001, 0.1)),
    Ask::plain("strength", "s", "strength of the dye, on the standard", Kind::Yield, (0.5, 4.0)),
    Ask::need(
        "liquor_ratio",
        "r",
        "litres of liquor for a kilogram",
        Kind::Ratio,
        (5.0, 60.0),
        "30",
    ),
    Ask::plain(
        "stock",
        "c",
        "concentration of the stock solution",
        Kind::Concentration,
        (0.5, 100.0),
    ),
    Ask::plain(
        "wet",
        "V_g",
        "water in the goods that were wetted out",
        Kind::Volume,
        (0.0, 10_000.0),
    ),
    Ask::plain(
        "exhaustion",
        "E",
        "share of the dye on the goods at the end",
        Kind::Fraction,
        (0.5, 1.0),
    ),
    Ask::plain("loss", "w", "fibre and other matter lost in the bath", Kind::Fraction, (0.0, 0.05)),
    Ask::plain(
        "regain_after",
        "R₂",
        "water on the dry fibre after drying",
        Kind::Regain,
        (0.0, 0.4),
    ),
    Ask::plain("count", "T₁", "count before", Kind::LinearDensity, (5.0, 4000.0)),
    Ask::plain("shrinkage", "s_l", "shrinkage in length", Kind::Shrinkage, (-0.02, 0.15)),
];

/// What is added to the bath beside the dye: on the goods, or in the liquor.
#[derive(Clone, Debug)]
pub struct Addition {
    name: String,
    amount: Amount,
    typed: Option<String>,
}

impl Addition {
    /// A name, and a share of the goods or a concentration in the liquor.
    pub fn new(name: &str, amount: Amount, typed: Option<String>) -> Result<Self> {
        let name = name.trim().to_owned();
        if name.is_empty() {
            return Err(Error::notation(
                "additions: one has no name; write {'acetic acid': '2 %'}",
            ));
        }
        Ok(Addition { name, amount, typed })
    }
    /// The name of its mass among the particulars.
    fn figure(&self) -> String {
        self.key() + "_mass"
    }
    /// Its name in the names of figures.
    fn key(&self) -> String {
        let word = |c: char| if c.is_alphanumeric() { c } else { '_' };
        self.name.to_lowercase().chars().map(word).collect()
    }
}

/// What a dye bath asks for.
pub fn dye_bath_items() -> Given {
    Given::new("dye_bath", &ITEMS)
}

/// Liquor, dye, additions and water of a dye bath, what is left in it, and the goods after it.
///
/// `source` says where the recipe comes from, and is printed beside it.
///
/// ```
/// use hankwise::mill::{dye_bath, dye_bath_items};
///
/// let bath = dye_bath_items().read(&[
///     ("mass", "20 kg"), ("depth", "2 %"), ("liquor_ratio", "30"), ("stock", "10 g/L"),
///     ("exhaustion", "95 %"),
/// ])?;
/// let bath = dye_bath(&bath, &[], Some("the maker's card"))?;
/// assert!((bath.find("dye")?.value - 0.4).abs() < 1e-12);
/// assert!((bath.find("water")?.value - 560.0).abs() < 1e-9);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn dye_bath(
    given: &Given,
    additions: &[Addition],
    source: Option<&str>,
) -> Result<Particulars> {
    if given.has("recipe_regain") && !given.has("regain") {
        return Err(Error::notation(
            "recipe_regain was given without the regain that the goods have now; write regain='14 %' too",
        ));
    }
    if given.has("shrinkage") && !given.has("count") {
        return Err(Error::notation(
            "shrinkage was given without the count that it changes; write count='150 tex' too",
        ));
    }
    if given.base("loss").is_some_and(|loss| loss >= 1.0) {
        return Err(Error::range(
            "loss: all of the goods would be lost; write less, such as '2 %'",
        ));
    }
    if given.base("strength").is_some_and(|s| s <= 0.0) {
        return Err(Error::range("strength: a dye without strength gives no depth; write '100 %'"));
    }
    Particulars::work(|desk| {
        given.warn(desk);
        desk.beware("dyeing");
        let weighed: Mass<_> = given.need(desk, "mass")?;
        let regain = given.get::<Regain<_>>(desk, "regain");
        let (goods, state) = match (regain, given.get::<Regain<_>>(desk, "recipe_regain")) {
            (Some(now), Some(wanted)) => (
                mass_at_regain(weighed, now, wanted),
                format!("at {} regain", of_kind(wanted.value(), Kind::Regain)),
            ),
            _ => (weighed, "as weighed".to_owned()),
        };
        let words = format!("goods that the recipe's shares are on, {state}");
        let goods = desk.figure("goods", &words, goods);
        let ratio: Ratio<_> = given.need(desk, "liquor_ratio")?;
        let liquor = desk.figure("liquor", "liquor", liquor_volume(goods, ratio));
        let depth: OnFibre<_> = given.need(desk, "depth")?;
        let strength: Yield<_> = given.or(desk, "strength", 1.0)?;
        let dye = desk.figure("dye", "dye to weigh out", dye_mass(goods, depth, strength));
        let names = weigh(desk, additions, goods, liquor)?;
        let water = fill(given, desk, liquor, dye)?;
        desk.figure("water", "water to fill the bath up", water);
        if let Some(share) = given.get::<Fraction<_>>(desk, "exhaustion") {
            let left = desk.figure("dye_left", "dye left in the bath", dye_left(dye, share));
            let words = "its concentration there, if nothing boiled off";
            desk.figure("left_concentration", words, concentration_from_mass(left, liquor));
        }
        after(given, desk, weighed, regain)?;
        let mut all = vec!["goods", "liquor", "dye", "stock_volume"];
        all.extend(names.iter().map(String::as_str));
        all.extend(["water", "dye_left", "left_concentration"]);
        let mut bath: Block = block(desk, "The bath", &all, given.unit("mass"));
        bath.foot.push(match source.map(str::trim).filter(|s| !s.is_empty()) {
            Some(source) => format!("Recipe: {source}."),
            None => "Recipe: yours; its source was not told. Nothing here proposes one.".to_owned(),
        });
        let after =
            block(desk, "The goods after it", &["mass_after", "count_after"], given.unit("mass"));
        Ok(Report { title: "Dye bath".to_owned(), blocks: vec![bath, after] })
    })
}

/// The additions, weighed out; the names of their masses.
fn weigh<'t>(
    desk: &Desk<'t>,
    additions: &[Addition],
    goods: Mass<Worked<'t>>,
    liquor: Volume<Worked<'t>>,
) -> Result<Vec<String>> {
    let mut names = Vec::new();
    let standard = Amount { number: 100.0, unit: unit("%", Some(Kind::Fraction))? };
    for (k, one) in additions.iter().enumerate() {
        let (symbol, words) = (format!("a_{}", k + 1), one.name.clone());
        let typed = one.typed.clone();
        let key = format!("addition_{}", one.key());
        let mass = if one.amount.unit.kind == Kind::Concentration {
            let c: Concentration<_> = desk.given(&key, &symbol, &words, &one.amount, typed);
            mass_in_liquor(liquor, c)
        } else {
            let share: OnFibre<_> = desk.given(&key, &symbol, &words, &one.amount, typed);
            let words = "strength, as the recipe means it";
            let key = format!("strength_{}", one.key());
            let full: Yield<_> = desk.given(&key, "s_a", words, &standard, None);
            dye_mass(goods, share, full)
        };
        let name = one.figure();
        if desk.found(&name).is_some() {
            return Err(Error::notation(format!("additions: '{}' is given twice", one.name)));
        }
        desk.figure(&name, &format!("{} to weigh out", one.name), mass);
        names.push(name);
    }
    Ok(names)
}

/// Water beside the stock solution and what the goods bring.
fn fill<'t>(
    given: &Given,
    desk: &Desk<'t>,
    liquor: Volume<Worked<'t>>,
    dye: Mass<Worked<'t>>,
) -> Result<Volume<Worked<'t>>> {
    let mut parts = Vec::new();
    if let Some(stock) = given.get::<Concentration<_>>(desk, "stock") {
        if stock.value() <= 0.0 {
            return Err(Error::range("stock: a solution without dye brings none; write more"));
        }
        let words = "stock solution that holds it";
        parts.push(desk.figure("stock_volume", words, stock_volume(dye, stock)));
    }
    parts.extend(given.get::<Volume<_>>(desk, "wet"));
    if parts.is_empty() {
        return Ok(liquor);
    }
    let brought: f64 = parts.iter().map(|v| v.value()).sum();
    if brought > liquor.value() {
        return Err(Error::range(format!(
            "stock solution and wet goods bring {} and the liquor is {}; take a stronger stock, or a \
             greater liquor_ratio",
            of_kind(brought, Kind::Volume),
            of_kind(liquor.value(), Kind::Volume)
        )));
    }
    Ok(water_to_fill(liquor, &parts))
}

/// Mass and count of the goods after the bath.
fn after<'t>(
    given: &Given,
    desk: &Desk<'t>,
    weighed: Mass<Worked<'t>>,
    regain: Option<Regain<Worked<'t>>>,
) -> Result<()> {
    if given.has("regain_after") && regain.is_none() {
        return Err(Error::notation(
            "regain_after was given without the regain before; write regain='14 %' too",
        ));
    }
    let loss: Fraction<_> = given.or(desk, "loss", 0.0)?;
    let none: Fraction<_> = {
        let zero = Amount { number: 0.0, unit: unit("%", Some(Kind::Fraction))? };
        desk.given("fat", "o", "grease and oil: out before dyeing", &zero, None)
    };
    let (mut mass, mut change) = (weighed, None);
    if let (Some(before), Some(after)) = (regain, given.get::<Regain<_>>(desk, "regain_after")) {
        let (before, after) = (state_ratio(before, none, none), state_ratio(after, none, none));
        mass = mass_after_change_of_state(weighed, before, after);
        change = Some(Ratio::from(after.v() / before.v()));
    }
    let kept = Mass::from(V::constant(0.0));
    desk.figure("mass_after", "goods after the bath, dried", mass_after_loss(mass, loss, kept));
    if let Some(count) = given.get::<LinearDensity<_>>(desk, "count") {
        let shrinkage: Shrinkage<_> = given.or(desk, "shrinkage", 0.0)?;
        let change = if let Some(change) = change {
            change
        } else {
            let one = Amount { number: 1.0, unit: unit("", Some(Kind::Ratio))? };
            desk.given("state_change", "q", "state after over before", &one, None)
        };
        let after = count_after_scouring(count, change, loss, shrinkage);
        desk.figure("count_after", "count after the bath", after);
    }
    Ok(())
}
