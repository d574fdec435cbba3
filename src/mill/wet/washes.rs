//! The washes of a scour, one after another.

use super::scour::{gallons, warn_of_heat};
use crate::error::{Error, Result};
use crate::job::{Ask, Given};
use crate::mill::{fat_after_washes, liquor_volume, mass_in_liquor};
use crate::number::V;
use crate::particulars::Particulars;
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Concentration, Fraction, Kind, Mass, OnFibre, Ratio, Volume};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

static OF_LOT: [Ask; 2] = [
    Ask::need("mass", "m", "wool as weighed", Kind::Mass, (0.1, 2000.0), "\"20 kg\""),
    Ask::plain("fat", "o", "grease and oil on clean dry fibre, before", Kind::OnFibre, (0.0, 0.6)),
];

static OF_WASH: [Ask; 5] = [
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
    Ask::plain("temperature", "t", "temperature of the liquor", Kind::Temperature, (15.0, 100.0)),
    Ask::plain(
        "removed",
        "g",
        "share that it takes of the grease it meets",
        Kind::Fraction,
        (0.0, 1.0),
    ),
];

/// What the lot of a scour of several washes asks for.
pub fn washes_items() -> Given {
    Given::new("washes", &OF_LOT)
}

/// What a wash asks for; `place` counts from 1.
pub fn wash_items(place: usize) -> Given {
    let mut given = Given::new("a wash", &OF_WASH);
    given.prefix = format!("wash_{place}.");
    given
}

/// Liquor, soap and alkali of each wash of a lot, the grease left after each, and the water for all.
///
/// ```
/// use hankwise::mill::{wash_items, washes, washes_items};
///
/// let lot = washes_items().read(&[("mass", "20 kg"), ("fat", "20 %")])?;
/// let first = wash_items(1).read(&[("liquor_ratio", "30"), ("soap", "10 g/L"), ("removed", "80 %")])?;
/// let second = wash_items(2).read(&[("liquor_ratio", "25"), ("soap", "4 g/L"), ("removed", "75 %")])?;
/// let lot = washes(&lot, &[first, second])?;
/// assert!((lot.find("fat_after_2")?.value - 0.01).abs() < 1e-12);
/// assert!((lot.find("soap_mass")?.value - 8.0).abs() < 1e-12);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn washes(lot: &Given, all: &[Given]) -> Result<Particulars> {
    if all.is_empty() {
        return Err(Error::notation(
            "no wash is given; write one for each, such as [{'liquor_ratio': 30, 'soap': '10 g/L'}]",
        ));
    }
    let removed = all.iter().filter(|wash| wash.has("removed")).count();
    if lot.has("fat") != (removed > 0) || (removed > 0 && removed < all.len()) {
        return Err(Error::notation(
            "the grease left rests on fat before the washes and on the share removed by each of them, found \
             by test; write all of these or none",
        ));
    }
    lot.complete()?;
    all.iter().try_for_each(Given::complete)?;
    Particulars::work(|desk| {
        lot.warn(desk);
        desk.beware("raw fleece");
        desk.beware("scouring");
        let mass: Mass<_> = lot.need(desk, "mass")?;
        let mut fat: Option<OnFibre<_>> = lot.get(desk, "fat");
        let (mut water, mut sums) = (None, [None, None]);
        let mut rows = Vec::new();
        for (place, wash) in (1..).zip(all) {
            wash.warn(desk);
            warn_of_heat(desk, wash);
            let gallon = gallons(wash)?;
            let say = |volume: f64| match gallon {
                Some(unit) => with_unit(unit.from_base(volume), unit.symbol),
                None => of_kind(volume, Kind::Volume),
            };
            let weighed = |kg: f64| match lot.unit("mass") {
                Some(unit) if unit.symbol != "kg" => with_unit(unit.from_base(kg), unit.symbol),
                _ => of_kind(kg, Kind::Mass),
            };
            let ratio: Ratio<_> = wash.need(desk, "liquor_ratio")?;
            let words = format!("liquor of wash {place}");
            let liquor =
                desk.figure(&format!("liquor_{place}"), &words, liquor_volume(mass, ratio));
            water = Some(water.map_or(liquor.v(), |sum: V<_>| sum + liquor.v()));
            let heat = match (wash.unit("temperature"), wash.base("temperature")) {
                (Some(unit), Some(t)) => with_unit(unit.from_base(t), unit.symbol),
                _ => String::new(),
            };
            let mut row = vec![place.to_string(), heat, say(liquor.value())];
            for (name, sum) in ["soap", "alkali"].into_iter().zip(&mut sums) {
                let Some(concentration) = wash.get::<Concentration<_>>(desk, name) else {
                    row.push(String::new());
                    continue;
                };
                let words = format!("{name} of wash {place}");
                let out = mass_in_liquor(liquor, concentration);
                let out = desk.figure(&format!("{name}_{place}"), &words, out);
                row.push(weighed(out.value()));
                *sum = Some(sum.map_or(out.v(), |sum: V<_>| sum + out.v()));
            }
            if let (Some(before), Some(share)) = (fat, wash.get::<Fraction<_>>(desk, "removed")) {
                let words = format!("grease and oil on clean dry fibre after wash {place}");
                let after = fat_after_washes(before, &[share]);
                let after = desk.figure(&format!("fat_after_{place}"), &words, after);
                row.push(of_kind(after.value(), Kind::OnFibre));
                fat = Some(after);
            } else {
                row.push(String::new());
            }
            rows.push(row);
        }
        let names = [("soap_mass", "soap or detergent"), ("alkali_mass", "alkali")];
        for ((name, words), sum) in names.into_iter().zip(sums) {
            if let Some(sum) = sum {
                desk.figure(name, &format!("{words} for all washes"), Mass::from(sum));
            }
        }
        if let Some(water) = water {
            desk.figure("water", "water for all washes", Volume::from(water));
        }
        let columns = ["wash", "temperature", "liquor", "soap", "alkali", "grease left"];
        let total = crate::job::block(
            desk,
            "For all",
            &["soap_mass", "alkali_mass", "water"],
            lot.unit("mass"),
        );
        let foot = vec![
            "Concentrations and temperatures are yours, from the maker of the detergent or a source; the \
             table scour_liquors of the handbook has what sources print."
                .to_owned(),
            "What a wash takes of the grease is found by test: it is data of your scour, not a law; later \
             washes take a smaller share."
                .to_owned(),
        ];
        let align = |(k, name): (usize, &str)| (name.to_owned(), if k == 0 { Left } else { Right });
        let washes = Block {
            title: "Wash by wash".to_owned(),
            columns: columns.into_iter().enumerate().map(align).collect(),
            rows,
            foot,
            ..Block::default()
        };
        Ok(Report { title: "The washes of a lot".to_owned(), blocks: vec![washes, total] })
    })
}
