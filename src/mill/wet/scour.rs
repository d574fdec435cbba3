//! Scour liquor for a lot.

use crate::error::{Error, Result};
use crate::fibre::oven_dry_mass;
use crate::job::{Ask, Given, block};
use crate::mill::{left_after_rinses, liquor_carried, liquor_volume, mass_in_liquor};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{
    Amount, Concentration, Density, Kind, Mass, Ratio, Regain, Temperature, Unit, Volume, unit,
};
use crate::table::{Block, Report};

static ITEMS: [Ask; 9] = [
    Ask::need("mass", "m", "wool as weighed", Kind::Mass, (0.1, 2000.0), "\"20 kg\""),
    Ask::plain("regain", "R", "its water on the dry mass", Kind::Regain, (0.0, 0.4)),
    Ask::need(
        "liquor_ratio",
        "r",
        "litres of liquor for a kilogram",
        Kind::Ratio,
        (10.0, 60.0),
        "30",
    ),
    Ask::plain("soap", "c_s", "soap or detergent in the liquor", Kind::Concentration, (0.5, 45.0)),
    Ask::plain("alkali", "c_a", "alkali in the liquor", Kind::Concentration, (0.5, 20.0)),
    Ask::plain(
        "pickup",
        "p",
        "liquor left on the dry wool by the squeeze",
        Kind::Regain,
        (0.4, 3.0),
    ),
    Ask::plain("rinses", "n", "rinses", Kind::Count, (0.0, 6.0)),
    Ask::plain(
        "rinse_ratio",
        "r_r",
        "litres of water for a kilogram in a rinse",
        Kind::Ratio,
        (10.0, 60.0),
    ),
    Ask::plain("temperature", "t", "temperature of the liquor", Kind::Temperature, (15.0, 100.0)),
];

/// The hottest that sources stay at with alkali, °C.
const HOTTEST: f64 = 60.0;

/// What the scour liquor of a lot asks for.
pub fn scour_liquor_items() -> Given {
    Given::new("scour_liquor", &ITEMS)
}

/// Liquor, soap and alkali for a lot of wool, what the squeezed wool carries on, what the rinses leave
/// of it, and the water for all.
///
/// ```
/// use hankwise::mill::{scour_liquor, scour_liquor_items};
///
/// let lot = scour_liquor_items().read(&[
///     ("mass", "20 kg"), ("liquor_ratio", "30"), ("soap", "10 g/L"), ("pickup", "60 %"),
///     ("rinses", "2"), ("temperature", "50 °C"),
/// ])?;
/// let lot = scour_liquor(&lot)?;
/// assert!((lot.find("soap_mass")?.value - 6.0).abs() < 1e-12);
/// assert!((lot.find("left_after_rinses")?.value - (12.0_f64 / 612.0).powi(2)).abs() < 1e-12);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn scour_liquor(given: &Given) -> Result<Particulars> {
    let rinses = given.base("rinses").unwrap_or(0.0);
    if rinses.fract() != 0.0 || rinses > 20.0 {
        return Err(Error::range("rinses: a whole number up to 20 is wanted, such as 2"));
    }
    if rinses > 0.0 && !given.has("pickup") {
        return Err(Error::notation(
            "pickup is missing: what the rinses leave rests on what the squeezed wool carries; weigh it \
             squeezed and dry, and write pickup='60 %'",
        ));
    }
    Particulars::work(|desk| {
        given.warn(desk);
        warn_of_heat(desk, given);
        desk.beware("raw fleece");
        desk.beware("scouring");
        let mass: Mass<_> = given.need(desk, "mass")?;
        let ratio: Ratio<_> = given.need(desk, "liquor_ratio")?;
        let liquor = desk.figure("liquor", "scour liquor", liquor_volume(mass, ratio));
        let mut dissolved = None;
        for (name, found, words) in [
            ("soap", "soap_mass", "soap or detergent to weigh out"),
            ("alkali", "alkali_mass", "alkali to weigh out"),
        ] {
            if let Some(concentration) = given.get::<Concentration<_>>(desk, name) {
                let out = desk.figure(found, words, mass_in_liquor(liquor, concentration));
                dissolved.get_or_insert((name, out));
            }
        }
        if given.has("temperature") {
            let t: Temperature<_> = given.need(desk, "temperature")?;
            desk.figure("at", "temperature of the liquor, as given", t);
        }
        let mut water = liquor.v();
        if given.has("pickup") {
            let dry = match given.get::<Regain<_>>(desk, "regain") {
                Some(regain) => oven_dry_mass(mass, regain),
                None => mass,
            };
            let litre = Amount { number: 1.0, unit: unit("kg/L", Some(Kind::Density))? };
            let words = "density of the liquor, as water";
            let density: Density<_> = desk.given("density", "ρ", words, &litre, None);
            let carried = liquor_carried(dry, given.need(desk, "pickup")?, density);
            let words = "liquor that the squeezed wool carries on";
            let carried = desk.figure("carried", words, carried);
            if rinses > 0.0 {
                let each = match given.get::<Ratio<_>>(desk, "rinse_ratio") {
                    Some(ratio) => liquor_volume(mass, ratio),
                    None => liquor,
                };
                let each = desk.figure("rinse", "water of each rinse", each);
                let all = vec![each; rinses as usize];
                let left = left_after_rinses(carried, &all);
                let words = format!(
                    "share of what is dissolved in it that is left after the {rinses} rinses"
                );
                let left = desk.figure("left_after_rinses", &words, left);
                if let Some((name, out)) = dissolved {
                    let words = format!("{name} still on the wool with its water");
                    let on = Mass::from(out.v() * carried.v() / liquor.v() * left.v());
                    desk.figure(&format!("{name}_left"), &words, on);
                }
                // Each rinse is a term of its own, here as in what they leave: their number is no
                // cell of a workbook that only half of it would follow.
                water = all.iter().fold(water, |sum, rinse| sum + rinse.v());
            }
        }
        desk.figure("water", "water for the lot", Volume::from(water));
        let mut out = table(given, desk)?;
        out.foot = vec![
            "Concentration and temperature are yours, from the maker of the detergent or a source; the \
             table scour_liquors of the handbook has what sources print."
                .to_owned(),
            "The rinses are reckoned well mixed, for what is dissolved. What grease stays on the wool is \
             found by test: it is data of your scour, not a law."
                .to_owned(),
        ];
        if given.has("pickup") && !given.has("regain") {
            out.foot.push(
                "No regain was given: the mass is taken as dry for what is carried.".to_owned(),
            );
        }
        Ok(Report { title: "Scour liquor for a lot".to_owned(), blocks: vec![out] })
    })
}

/// Says of a liquor that it is hotter than sources have it.
pub(super) fn warn_of_heat(desk: &Desk<'_>, given: &Given) {
    let Some(hot) = given.base("temperature").filter(|t| *t > HOTTEST + 1e-9) else { return };
    let said = given.unit("temperature").map_or_else(
        || of_kind(hot, Kind::Temperature),
        |unit| with_unit(unit.from_base(hot), unit.symbol),
    );
    desk.warn(format!(
        "{}temperature: {said} is more than the {HOTTEST} °C (140 °F) at or below which sources stay with \
         alkali; the hotter, the more it attacks the wool",
        given.prefix
    ));
}

/// The gallon, where a concentration was given by it: its liquor is measured so.
pub(super) fn gallons(given: &Given) -> Result<Option<&'static Unit>> {
    let by = |name: &str| {
        let (_, volume) = given.unit(name)?.symbol.split_once('/')?;
        volume.ends_with(" gal").then_some(volume)
    };
    by("soap").or_else(|| by("alkali")).map(|name| unit(name, Some(Kind::Volume))).transpose()
}

/// The figures in their order, each in the unit in which the question was put.
fn table(given: &Given, desk: &Desk<'_>) -> Result<Block> {
    let mass = given.unit("mass");
    let mut out = block(desk, "Liquor and rinses", &["liquor", "soap_mass", "alkali_mass"], mass);
    if let (Some(unit), Some(t)) = (given.unit("temperature"), given.base("temperature")) {
        // As it was said: one who thinks in °F reads the thermometer in it.
        let words = "temperature of the liquor, as given".to_owned();
        out.rows.push(vec![words, with_unit(unit.from_base(t), unit.symbol)]);
    }
    let after = ["carried", "rinse", "left_after_rinses", "soap_left", "alkali_left", "water"];
    out.rows.extend(block(desk, "", &after, mass).rows);
    if let Some(gallon) = gallons(given)? {
        for name in ["liquor", "carried", "rinse", "water"] {
            if let Some((words, volume, _)) = desk.found(name) {
                let said = with_unit(gallon.from_base(volume), gallon.symbol);
                out.rows.iter_mut().filter(|row| row[0] == words).for_each(|row| {
                    row[1].clone_from(&said);
                });
            }
        }
    }
    Ok(out)
}
