//! Whether a wool will spin to a count.

use super::tables::fineness::MINIMUM_FIBRES;
use super::{
    fibres_in_section, limit_count, limit_factor_of_diameter, limit_irregularity,
    setting_over_staple, wool_fibre_count,
};
use crate::error::{Error, Result};
use crate::job::{Ask, Given};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{figure, fixed, of_kind, with_unit};
use crate::quantity::{
    Amount, Count, Fineness, Fraction, Kind, Length, LinearDensity, Ratio, unit,
};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

static ITEMS: [Ask; 5] = [
    Ask::plain("diameter", "d", "mean fibre diameter", Kind::Fineness, (12.0, 50.0)),
    Ask::plain(
        "variation",
        "CV",
        "coefficient of variation of the diameter",
        Kind::Fraction,
        (0.15, 0.30),
    ),
    Ask::plain(
        "count",
        "T",
        "count of the single, clean and conditioned",
        Kind::LinearDensity,
        (5.0, 2000.0),
    ),
    Ask::plain("staple", "l", "length of the longest staple", Kind::Length, (0.02, 0.4)),
    Ask::plain(
        "setting",
        "s",
        "distance between the nips of the drafting rollers",
        Kind::Length,
        (0.02, 0.5),
    ),
];

/// What the question whether a wool will spin asks for.
pub fn will_spin_items() -> Given {
    Given::new("will_spin", &ITEMS)
}

/// Fibres in the section of a wool yarn against what a way of spinning needs: woollen, semi-worsted or
/// worsted.
///
/// ```
/// use hankwise::fibre::{will_spin, will_spin_items};
///
/// let wool = will_spin_items().read(&[("diameter", "27 µm"), ("variation", "0 %"), ("count", "150 tex")])?;
/// let spun = will_spin(&wool, "woollen")?;
/// // 150 tex over 0.75 tex a fibre.
/// assert_eq!(spun.find("fibres")?.value.round(), 200.0);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn will_spin(given: &Given, system: &str) -> Result<Particulars> {
    let wool = || MINIMUM_FIBRES.figures.iter().filter(|f| f.of[0] == "wool");
    let word = system.trim().to_lowercase();
    let Some(floor) = wool().find(|f| f.of[1] == word) else {
        return Err(Error::notation(format!(
            "'{system}' is no way of spinning wool here; write 'woollen', 'semi-worsted' or 'worsted'"
        )));
    };
    Particulars::work(|desk| {
        given.warn(desk);
        let diameter: Fineness<_> = given.need(desk, "diameter")?;
        let variation: Fraction<_> = given.need(desk, "variation")?;
        let count: LinearDensity<_> = given.need(desk, "count")?;
        let fibre = desk.figure(
            "fibre",
            "count of a fibre of the mean diameter",
            wool_fibre_count(diameter),
        );
        let fibres = desk.figure(
            "fibres",
            "fibres in the section",
            fibres_in_section(count, fibre, variation),
        );
        let plain = unit("", Some(Kind::Count))?;
        // Where the floor is a band, its upper end is the one to plan by.
        let most = Amount { number: floor.high, unit: plain };
        let needed: Count<_> =
            desk.given("floor", "n₀", "fibres that the section needs", &most, None);
        let limit =
            desk.figure("limit_count", "finest count", limit_count(needed, fibre, variation));
        let factor = limit_factor_of_diameter(variation);
        let least = limit_irregularity(factor, fibres);
        let least = desk.figure("limit_irregularity", "least irregularity, as CV", least);
        let margin = Ratio::from(fibres.v() / needed.v());
        let margin = desk.figure("margin", "fibres over what is needed", margin);
        let n = fibres.value();
        let verdict = if n < floor.low {
            "below"
        } else if n < floor.high {
            "in"
        } else {
            "above"
        };
        if verdict != "above" {
            desk.warn(format!(
                "{} fibres in the section are {verdict} the {} that {} spinning needs ({}): a coarser \
                 count or a finer wool",
                fixed(n, 0),
                floor.words(),
                floor.of[1],
                floor.source
            ));
        }
        let mut foot = vec![format!(
            "{} spinning needs {} fibres (source: {}); that is a floor, and no promise above it: short, \
             tender or uneven wool stops sooner.",
            floor.of[1],
            floor.words(),
            floor.source
        )];
        foot.extend(staple(given, desk)?);
        let typed = given.unit("count");
        let as_typed =
            |x: f64| typed.map_or_else(|| figure(x), |u| with_unit(u.from_base(x), u.symbol));
        let rows = [
            ("fibres in the section", fixed(n, 0)),
            ("needed", floor.words()),
            ("fibres over needed", fixed(margin.value(), 2)),
            ("finest count", as_typed(limit.value())),
            ("least irregularity", of_kind(least.value(), Kind::Fraction)),
        ];
        Ok(Report {
            title: format!("{} fibres in the section", fixed(n, 0)),
            blocks: vec![Block {
                title: format!("Wool spun {}", floor.of[1]),
                columns: vec![(String::new(), Left), (String::new(), Right)],
                rows: rows.map(|(words, said)| vec![words.to_owned(), said]).to_vec(),
                foot,
                ..Block::default()
            }],
        })
    })
}

/// Staple against the drafting zone, where both were given.
fn staple(given: &Given, desk: &Desk<'_>) -> Result<Option<String>> {
    let (Some(staple), Some(setting)) =
        (given.get::<Length<_>>(desk, "staple"), given.get::<Length<_>>(desk, "setting"))
    else {
        if given.has("staple") || given.has("setting") {
            return Err(Error::notation(
                "staple and setting are compared with each other: give both, or neither",
            ));
        }
        return Ok(None);
    };
    if staple.value() <= 0.0 {
        return Err(Error::range("staple: more than nothing is wanted"));
    }
    let over =
        desk.figure("over_staple", "setting over staple", setting_over_staple(setting, staple));
    if over.value() < 1.0 {
        desk.warn(
            "the rollers stand closer than the staple is long: both pairs hold the longest fibres, which \
             break or crack the draft (common practice)",
        );
    }
    Ok(Some(format!("The rollers stand at {} of the staple.", fixed(over.value(), 2))))
}
