//! The wheel to put on, out of those that the mill owns.

use std::str::FromStr;

use crate::caution;
use crate::error::{Error, Result};
use crate::parts::Parts;
use crate::quantity::print::{constant, figure, fixed, with_unit};
use crate::quantity::{Amount, Kind};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Which way a change wheel works.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Law {
    /// What it gives falls as teeth rise: the constant over the teeth.
    Inverse,
    /// What it gives rises with the teeth: the constant times the teeth.
    Direct,
}

impl FromStr for Law {
    type Err = Error;
    fn from_str(text: &str) -> Result<Law> {
        match text {
            "inverse" => Ok(Law::Inverse),
            "direct" => Ok(Law::Direct),
            _ => Err(Error::notation(format!(
                "'{text}' is no law of a wheel; write 'inverse' where what it gives falls as teeth \
                 rise, 'direct' where it rises with them"
            ))),
        }
    }
}

impl Law {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Law::Inverse => "inverse",
            Law::Direct => "direct",
        }
    }
    fn gives(self, constant: f64, teeth: f64) -> f64 {
        match self {
            Law::Inverse => constant / teeth,
            Law::Direct => constant * teeth,
        }
    }
    fn teeth(self, constant: f64, wanted: f64) -> f64 {
        match self {
            Law::Inverse => constant / wanted,
            Law::Direct => wanted / constant,
        }
    }
}

/// A wheel that the mill owns, and what it gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fit {
    /// Its teeth.
    pub teeth: f64,
    /// What it gives, in the base unit.
    pub gives: f64,
    /// How far that is from what is wanted, as a share of it.
    pub off: f64,
}

/// The change wheel for what is wanted, out of those that the mill owns.
#[derive(Clone, Debug)]
pub struct ChangeWheel {
    /// Which way the wheel works.
    pub law: Law,
    /// The constant of the machine for that place.
    pub constant: Amount,
    /// What is wanted.
    pub wanted: Amount,
    /// The wheel that would give it; hardly ever a whole number.
    pub teeth: f64,
    /// The wheel owned that is nearest in teeth.
    pub nearest: Fit,
    /// The wheel owned with as many teeth as wanted, or the next with fewer.
    pub below: Option<Fit>,
    /// The next wheel owned with more teeth than wanted.
    pub above: Option<Fit>,
    wheels: Parts,
}

/// Finds the change wheel for a twist, a draft or a length, out of those that the mill owns.
///
/// ```
/// use hankwise::mill::{Law, change_wheel};
/// use hankwise::quantity::parse;
///
/// let (constant, wanted) = (parse("995.31 tpi")?, parse("18.1 tpi")?);
/// let wheel = change_wheel(&constant, &wanted, &[50.0, 54.0, 58.0], Law::Inverse)?;
/// assert_eq!((wheel.nearest.teeth, wheel.above.map(|w| w.teeth)), (54.0, Some(58.0)));
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn change_wheel(
    constant: &Amount,
    wanted: &Amount,
    wheels: &[f64],
    law: Law,
) -> Result<ChangeWheel> {
    let kind = wanted.unit.kind;
    let words: Vec<&str> = ChangeWheel::KINDS.iter().map(|k| k.words()).collect();
    if !ChangeWheel::KINDS.contains(&kind) {
        return Err(Error::unit(format!(
            "a change wheel sets a {}, not a {}",
            words.join(", a "),
            kind.words()
        )));
    }
    if constant.unit.kind != kind {
        return Err(Error::unit(format!(
            "the constant is a {} and what is wanted a {}; give both as the same",
            constant.unit.kind.words(),
            kind.words()
        )));
    }
    for (name, amount) in [("constant", constant), ("wanted", wanted)] {
        kind.check(amount.base()).map_err(|e| e.at(name))?;
        if amount.base() <= 0.0 {
            return Err(Error::range(format!(
                "{name}: no wheel gives nothing; more than 0 is asked"
            )));
        }
    }
    let wheels =
        Parts::new(wheels.to_vec(), Kind::Count, "[32, 35, 40]").map_err(|e| e.at("wheels"))?;
    let (factor, target) = (constant.base(), wanted.base());
    let teeth = law.teeth(factor, target);
    if !(1.0..=1000.0).contains(&teeth) {
        return Err(Error::range(format!(
            "{} teeth would give what is wanted, and no wheel has them; are constant and wanted \
             exchanged, or is the law the other one?",
            crate::quantity::print::figure(teeth)
        )));
    }
    let fit = |teeth: f64| {
        let gives = law.gives(factor, teeth);
        Fit { teeth, gives, off: gives / target - 1.0 }
    };
    let (below, above) = wheels.neighbours(teeth);
    let nearest = fit(wheels.nearest(teeth).unwrap_or(teeth));
    Ok(ChangeWheel {
        law,
        constant: *constant,
        wanted: *wanted,
        teeth,
        nearest,
        below: below.map(fit),
        above: above.map(fit),
        wheels,
    })
}

impl ChangeWheel {
    /// What a change wheel can set. Counts are left out: they have two ways round.
    pub const KINDS: [Kind; 3] = [Kind::Twist, Kind::Ratio, Kind::Length];

    /// The wheels owned, in rising order.
    pub fn wheels(&self) -> &[f64] {
        self.wheels.all()
    }

    /// The wheel to put on and its neighbours, as a table.
    pub fn report(&self) -> Report {
        let unit = self.wanted.unit;
        let say = |base: f64| with_unit(unit.from_base(base), unit.symbol);
        let row = |fit: &Option<Fit>, side: &str| {
            let Some(Fit { teeth, gives, off }) = *fit else {
                let mut row = vec![String::new(); 4];
                row[0] = format!("none owned {side}");
                return row;
            };
            let place = if *fit == Some(self.nearest) {
                "nearest".to_owned()
            } else {
                format!("next {side}")
            };
            let sign = if off > 0.0 { "+" } else { "" };
            vec![place, constant(teeth), say(gives), format!("{sign}{} %", fixed(off * 100.0, 1))]
        };
        let columns = [("wheel", Left), ("teeth", Right), ("gives", Right), ("off by", Right)];
        Report {
            title: "Change wheel".to_owned(),
            blocks: vec![Block {
                title: format!(
                    "{} wanted: {} teeth would give it",
                    say(self.wanted.base()),
                    figure(self.teeth)
                ),
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows: vec![row(&self.below, "below"), row(&self.above, "above")],
                ..Block::default()
            }]
            .into_iter()
            .chain(Block::cautions(caution::of(&["wheels"])))
            .collect(),
        }
    }
}
