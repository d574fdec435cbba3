//! The yields of the trade side by side, from any one of them.

use super::raw::{ALLOWANCE, CUSTOMS_PURE, IWTO_PURE, JAPANESE, TOP_AND_NOIL, combing_allowance};
use super::{
    clean_content_customs, clean_yield_customs, mass_loss_from_yield, scoured_yield_iwto,
    scoured_yield_japanese, top_and_noil_dry,
};
use crate::error::{Error, Result};
use crate::job::{Ask, Given};
use crate::number::{Number, V};
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::of_kind;
use crate::quantity::{Fraction, Kind, MassLoss, Regain, Yield};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

const YIELD: (f64, f64) = (0.3, 0.95);
const LOST: (f64, f64) = (0.05, 0.7);

/// The figures by name: one of them is given, and the vegetable matter.
static ITEMS: [Ask; 14] = [
    Ask::plain("wool_base", "WB", "clean dry fibre in the greasy wool", Kind::Fraction, (0.3, 0.8)),
    Ask::plain("vegetable_base", "VMB", "dry vegetable matter", Kind::Fraction, (0.0, 0.1)),
    Ask::plain("iwto_16", "Y", "scoured yield at 16 %", Kind::Yield, YIELD),
    Ask::plain("iwto_17", "Y", "scoured yield at 17 %", Kind::Yield, YIELD),
    Ask::plain("japanese", "Y", "Japanese clean scoured yield", Kind::Yield, YIELD),
    Ask::plain("top_and_noil", "Y", "top and noil, dry combed", Kind::Yield, YIELD),
    Ask::plain("customs_content", "A", "clean content of the US customs", Kind::Yield, YIELD),
    Ask::plain("customs_yield", "Y", "clean yield of the US customs", Kind::Yield, YIELD),
    Ask::plain("iwto_16_shrinkage", "s", "shrinkage to scoured at 16 %", Kind::MassLoss, LOST),
    Ask::plain("iwto_17_shrinkage", "s", "shrinkage to scoured at 17 %", Kind::MassLoss, LOST),
    Ask::plain(
        "japanese_shrinkage",
        "s",
        "shrinkage to Japanese clean scoured",
        Kind::MassLoss,
        LOST,
    ),
    Ask::plain("top_and_noil_shrinkage", "s", "shrinkage to top and noil", Kind::MassLoss, LOST),
    Ask::plain(
        "customs_content_shrinkage",
        "s",
        "shrinkage to clean content",
        Kind::MassLoss,
        LOST,
    ),
    Ask::plain("customs_yield_shrinkage", "s", "shrinkage to clean yield", Kind::MassLoss, LOST),
];

/// A definition of yield.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Basis {
    Iwto(f64),
    Japanese,
    TopAndNoil,
    Content,
    Customs,
}

/// Name, definition, words, what it holds, how sure it is.
type Row = (&'static str, Basis, &'static str, &'static str, &'static str);

const ROWS: [Row; 6] = [
    (
        "iwto_16",
        Basis::Iwto(0.16),
        "scoured yield, 16 % regain",
        "with vegetable matter, 2.27 % of the dry mass ash and extract",
        "memory",
    ),
    (
        "iwto_17",
        Basis::Iwto(0.17),
        "scoured yield, 17 % regain",
        "with vegetable matter, 2.27 % of the dry mass ash and extract",
        "memory",
    ),
    (
        "japanese",
        Basis::Japanese,
        "Japanese clean scoured",
        "no vegetable matter; 16 % regain, 1.5 % ash and extract",
        "memory",
    ),
    (
        "top_and_noil",
        Basis::TopAndNoil,
        "Schlumberger dry top and noil",
        "what combing keeps; an allowance for vegetable matter off",
        "memory",
    ),
    (
        "customs_content",
        Basis::Content,
        "US customs clean content",
        "12 % moisture, 1.5 % extract, 0.5 % ash in it",
        "19 CFR 151, published",
    ),
    (
        "customs_yield",
        Basis::Customs,
        "US customs clean yield",
        "clean content less an allowance for vegetable matter",
        "19 CFR 151, published",
    ),
];

impl Basis {
    fn of<N: Number>(self, wool: Fraction<N>, vegetable: Fraction<N>) -> Yield<N> {
        match self {
            Basis::Iwto(regain) => {
                scoured_yield_iwto(wool, vegetable, Regain::from(V::constant(regain)))
            }
            Basis::Japanese => scoured_yield_japanese(wool),
            Basis::TopAndNoil => top_and_noil_dry(wool, vegetable),
            Basis::Content => clean_content_customs(wool),
            Basis::Customs => clean_yield_customs(clean_content_customs(wool), vegetable),
        }
    }
    /// The wool base of a yield: each definition solved for it.
    fn back<N: Number>(self, clean: V<N>, vegetable: V<N>) -> V<N> {
        match self {
            Basis::Iwto(regain) => clean * IWTO_PURE / (1.0 + regain) - vegetable,
            Basis::Japanese => clean * JAPANESE.1 / (1.0 + JAPANESE.0),
            Basis::TopAndNoil => (clean + combing_allowance(vegetable)) / TOP_AND_NOIL,
            Basis::Content => clean * CUSTOMS_PURE,
            Basis::Customs => {
                let (of_content, of_vegetable, most) = ALLOWANCE;
                let below = (clean + of_vegetable * vegetable) / (1.0 - of_content);
                below.min(clean / (1.0 - most)) * CUSTOMS_PURE
            }
        }
    }
}

/// What the yields of a lot ask for: one of them, and the vegetable matter.
pub fn clean_yields_items() -> Given {
    Given::new("clean_yields", &ITEMS)
}

/// Every yield of a lot by each definition of the trade, from any one of them.
///
/// ```
/// use hankwise::fibre::{clean_yields, clean_yields_items};
///
/// let given = clean_yields_items().read(&[("wool_base", "52 %"), ("vegetable_base", "1.5 %")])?;
/// let lot = clean_yields(&given)?;
/// assert!((lot.find("customs_content")?.value - 0.52 / 0.86).abs() < 1e-12);
/// let back = clean_yields_items().read(&[("customs_content", "60.4651 %"), ("vegetable_base", "1.5 %")])?;
/// assert!((clean_yields(&back)?.find("wool_base")?.value - 0.52).abs() < 1e-6);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn clean_yields(given: &Given) -> Result<Particulars> {
    let names = || ITEMS.iter().map(|i| i.name).filter(|n| *n != "vegetable_base");
    let said: Vec<&str> = names().filter(|name| given.has(name)).collect();
    let [said] = said[..] else {
        return Err(Error::notation(if said.is_empty() {
            "a yield is missing; write one, such as wool_base=\"52 %\" or iwto_17=\"61 %\", and \
             vegetable_base=\"1.5 %\""
                .to_owned()
        } else {
            format!(
                "{} are given, and each settles the others: leave all but one out",
                said.join(" and ")
            )
        }));
    };
    Particulars::work(|desk| {
        given.warn(desk);
        desk.beware("raw fleece");
        if !given.has("vegetable_base") {
            desk.warn("vegetable_base was not given and is taken as none: the yields that count it differ");
        }
        let vegetable: Fraction<_> = given.or(desk, "vegetable_base", 0.0)?;
        let wool = wool_base(given, desk, said, vegetable)?;
        let whole = wool.value() + vegetable.value();
        if !(wool.value() > 0.0 && whole <= 1.0) {
            return Err(Error::range(format!(
                "{said}: the clean dry fibre would be {} of the greasy wool beside {} of vegetable matter, \
                 which cannot be; is it a yield by another definition?",
                of_kind(wool.value(), Kind::Yield),
                of_kind(vegetable.value(), Kind::Fraction)
            )));
        }
        let wool =
            desk.figure("wool_base", "wool base: clean dry fibre, the plan's clean share", wool);
        let percent = |x: f64| of_kind(x, Kind::Yield);
        let mut rows = vec![vec![
            "wool base, clean dry fibre".to_owned(),
            percent(wool.value()),
            percent(1.0 - wool.value()),
            "oven-dry fibre without fat, ash, vegetable matter; what the plan asks for".to_owned(),
            "definition".to_owned(),
        ]];
        for (name, basis, words, holds, grade) in ROWS {
            let clean = desk.figure(name, words, basis.of(wool, vegetable));
            let lost = desk.figure(
                &format!("{name}_shrinkage"),
                &format!("shrinkage to {words}"),
                mass_loss_from_yield(clean),
            );
            let cells = [words, holds, grade].map(str::to_owned);
            let [words, holds, grade] = cells;
            rows.push(vec![words, percent(clean.value()), percent(lost.value()), holds, grade]);
        }
        let columns = [
            ("by", Left),
            ("yield", Right),
            ("shrinkage", Right),
            ("what it holds", Left),
            ("source", Left),
        ];
        Ok(Report {
            title: "Clean yield by each definition".to_owned(),
            blocks: vec![Block {
                title: format!(
                    "Share of the greasy mass; vegetable matter {}",
                    of_kind(vegetable.value(), Kind::Fraction)
                ),
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows,
                foot: vec![
                    "The constants marked memory are to be compared with the test certificate before \
                     anything is paid on them."
                        .to_owned(),
                ],
                ..Block::default()
            }],
        })
    })
}

fn wool_base<'t>(
    given: &Given,
    desk: &Desk<'t>,
    said: &str,
    vegetable: Fraction<Worked<'t>>,
) -> Result<Fraction<Worked<'t>>> {
    if said == "wool_base" {
        return given.need(desk, said);
    }
    let lost = said.strip_suffix("_shrinkage");
    let name = lost.unwrap_or(said);
    let Some(row) = ROWS.iter().find(|row| row.0 == name) else {
        return Err(Error::notation(format!("{name} is no yield")));
    };
    let clean = match lost {
        None => given.need::<Yield<_>>(desk, said)?.v(),
        Some(_) => 1.0 - given.need::<MassLoss<_>>(desk, said)?.v(),
    };
    Ok(Fraction::from(row.1.back(clean, vegetable.v())))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// Each definition, solved for the wool base, undoes itself.
        #[test]
        fn back_undoes_forward(wool in 0.2..0.8_f64, vegetable in 0.0..0.2_f64) {
            for (name, basis, ..) in ROWS {
                let clean = basis.of(Fraction::base(wool), Fraction::base(vegetable)).value();
                let back = basis.back(V(clean), V(vegetable)).value();
                prop_assert!((back - wool).abs() < 1e-12, "{}: {} for {}", name, back, wool);
            }
        }
    }
}
