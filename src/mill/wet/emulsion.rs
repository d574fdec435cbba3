//! Oil and water for a lot.

use crate::error::{Error, Result};
use crate::fibre::{fibre_in_mass, mass_in_state, state_ratio};
use crate::job::{Ask, Given, block};
use crate::mill::{
    emulsion_mass, fat_after_oiling, mass_to_add, regain_after_wetting, volume_of_mass,
};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{Amount, Density, Fraction, Kind, Mass, OnFibre, Regain, Volume, unit};
use crate::table::Report;
use crate::worked::Worked;

static ITEMS: [Ask; 9] = [
    Ask::plain("fibre", "f", "clean dry fibre", Kind::Mass, (0.1, 10_000.0)),
    Ask::plain("mass", "m", "wool as weighed", Kind::Mass, (0.1, 10_000.0)),
    Ask::plain("regain", "R₁", "water on clean dry fibre, now", Kind::Regain, (0.0, 0.4)),
    Ask::plain("fat", "o₁", "grease and oil on clean dry fibre, now", Kind::Fraction, (0.0, 0.05)),
    Ask::plain("vegetable", "v", "vegetable matter on clean dry fibre", Kind::Fraction, (0.0, 0.1)),
    Ask::plain("oil", "o", "oil to put on, on clean dry fibre", Kind::Fraction, (0.01, 0.12)),
    Ask::plain("wanted", "R₂", "regain wanted after it", Kind::Regain, (0.1, 0.35)),
    Ask::plain("density", "ρ", "density of the oil", Kind::Density, (0.8, 1.05)),
    Ask::plain("oil_share", "x", "oil in the emulsion, by mass", Kind::Fraction, (0.1, 1.0)),
];

/// What the emulsion for a lot asks for.
pub fn emulsion_items() -> Given {
    Given::new("emulsion", &ITEMS)
}

/// Oil, water and emulsion for a lot, and what the lot is after them.
///
/// The water is that to the regain wanted, or that of an emulsion with a share of oil; with both, what
/// the emulsion does not bring is put on beside it.
///
/// ```
/// use hankwise::mill::{emulsion, emulsion_items};
///
/// let lot = emulsion_items().read(&[
///     ("mass", "40 kg"), ("regain", "14 %"), ("oil", "5 %"), ("wanted", "22 %"),
///     ("density", "0.92 kg/L"),
/// ])?;
/// let lot = emulsion(&lot)?;
/// let fibre = 40.0 / 1.14;
/// assert!((lot.find("oil_mass")?.value - 0.05 * fibre).abs() < 1e-12);
/// assert!((lot.find("mass_after")?.value - fibre * (1.0 + 0.22 + 0.05)).abs() < 1e-9);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn emulsion(given: &Given) -> Result<Particulars> {
    given.not_both("fibre", "mass", "one gives the other")?;
    if !given.has("fibre") && !given.has("mass") {
        return Err(Error::notation(
            "the lot is missing; write mass='40 kg' with its regain='14 %', or fibre='35 kg' of clean \
             dry fibre",
        ));
    }
    if !given.has("wanted") && !given.has("oil_share") {
        return Err(Error::notation(
            "how much water is missing; write wanted='22 %', the regain after oiling, or \
             oil_share='30 %', the oil in the emulsion, or both",
        ));
    }
    if let (Some(now), Some(wanted)) = (given.base("regain"), given.base("wanted"))
        && wanted < now
    {
        return Err(Error::range(format!(
            "the wool has {} regain and {} is wanted: oiling puts water on and takes none away; dry it \
             first, or write wanted at {} or more",
            of_kind(now, Kind::Regain),
            of_kind(wanted, Kind::Regain),
            of_kind(now, Kind::Regain)
        )));
    }
    Particulars::work(|desk| {
        given.warn(desk);
        let regain: Regain<_> = given.need(desk, "regain")?;
        let fat: Fraction<_> = given.or(desk, "fat", 0.0)?;
        let vegetable: Fraction<_> = given.or(desk, "vegetable", 0.0)?;
        let before = state_ratio(regain, fat, vegetable);
        let before = desk.figure("state_before", "mass for each unit of clean dry fibre", before);
        let fibre = match given.get::<Mass<_>>(desk, "fibre") {
            Some(fibre) => fibre,
            None => fibre_in_mass(given.need(desk, "mass")?, before),
        };
        let fibre = desk.figure("fibre", "clean dry fibre", fibre);
        let share: Fraction<_> = given.need(desk, "oil")?;
        let oil = desk.figure("oil_mass", "oil to weigh out", mass_to_add(fibre, share));
        if given.has("density") {
            let density: Density<_> = given.need(desk, "density")?;
            let volume = volume_of_mass(oil, density);
            desk.figure("oil_volume", "the same by volume", volume);
        }
        let water = water(given, desk, fibre, regain, oil)?;
        let words = "water put on, on clean dry fibre";
        let water_share = Fraction::from(water.v() / fibre.v());
        let water_share = desk.figure("water_share", words, water_share);
        let on = |share: Fraction<_>| OnFibre::from(share.v());
        let fat = fat_after_oiling(on(fat), on(share));
        let fat = desk.figure("fat_after", "grease and oil on clean dry fibre, after", fat);
        let regain = regain_after_wetting(regain, water_share);
        let regain = desk.figure("regain_after", "water on clean dry fibre, after", regain);
        let state = state_ratio(regain, Fraction::from(fat.v()), vegetable);
        let words = "mass for each unit of clean dry fibre, after";
        let state = desk.figure("state_after", words, state);
        let mass = mass_in_state(fibre, state);
        desk.figure("mass_after", "what the scale reads after oiling", mass);
        let unit = given.unit("mass").or(given.unit("fibre"));
        let out = [
            "fibre",
            "oil_mass",
            "oil_volume",
            "water_mass",
            "water_volume",
            "emulsion_mass",
            "emulsion_oil",
            "water_beside",
        ];
        let mut out = block(desk, "To put on", &out, unit);
        out.foot.push("Water that dries off while the stack lies is not counted.".to_owned());
        if !given.has("density") {
            out.foot.push("The oil's litres want its density, from its maker.".to_owned());
        }
        let after = ["fat_after", "regain_after", "mass_after"];
        let after = block(desk, "The lot after it", &after, unit);
        Ok(Report { title: "Oil and water for a lot".to_owned(), blocks: vec![out, after] })
    })
}

/// All the water that is put on; the emulsion is named on the way.
fn water<'t>(
    given: &Given,
    desk: &Desk<'t>,
    fibre: Mass<Worked<'t>>,
    regain: Regain<Worked<'t>>,
    oil: Mass<Worked<'t>>,
) -> Result<Mass<Worked<'t>>> {
    let to_regain = given.get::<Regain<_>>(desk, "wanted").map(|wanted| {
        let share = Fraction::from(wanted.v() - regain.v());
        mass_to_add(fibre, share)
    });
    let with_emulsion = match given.get::<Fraction<_>>(desk, "oil_share") {
        Some(share) if share.value() <= 0.0 => {
            return Err(Error::range("oil_share: an emulsion without oil brings none; write more"));
        }
        Some(share) => {
            let emulsion = emulsion_mass(oil, share);
            let emulsion = desk.figure("emulsion_mass", "emulsion to make", emulsion);
            Some(Mass::from(emulsion.v() - oil.v()))
        }
        None => None,
    };
    let words = "water to weigh out";
    let water = match (with_emulsion, to_regain) {
        (Some(water), Some(all)) => {
            let beside = all.value() - water.value();
            if beside < -1e-9 {
                return Err(Error::range(format!(
                    "the emulsion brings {} of water and the wanted regain takes {}; write oil_share at \
                     {} % or more, or a higher wanted",
                    of_kind(water.value(), Kind::Mass),
                    of_kind(all.value(), Kind::Mass),
                    figure((1000.0 * oil.value() / (oil.value() + all.value())).ceil() / 10.0)
                )));
            }
            desk.figure("water_mass", "water in the emulsion", water);
            let rest = Mass::from((all.v() - water.v()).max(0.0));
            desk.figure("water_beside", "water to put on beside the emulsion", rest);
            all
        }
        (Some(water), None) => desk.figure("water_mass", words, water),
        (None, Some(water)) => {
            let water = desk.figure("water_mass", words, water);
            let emulsion = Mass::from(oil.v() + water.v());
            let emulsion = desk.figure("emulsion_mass", "emulsion of all of it", emulsion);
            let share = Fraction::from(oil.v() / emulsion.v());
            desk.figure("emulsion_oil", "oil in the emulsion, by mass", share);
            water
        }
        // Refused before: one of the two is asked for.
        (None, None) => return Err(Error::notation("wanted or oil_share is missing")),
    };
    let litre = Amount { number: 1.0, unit: unit("kg/L", Some(Kind::Density))? };
    let density: Density<_> = desk.given("water_density", "ρ_w", "density of water", &litre, None);
    let volume: Volume<_> = volume_of_mass(water, density);
    desk.figure("water_volume", "all the water by volume", volume);
    Ok(water)
}
