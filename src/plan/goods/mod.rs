//! The goods: hanks and woven pieces.

mod finished;
mod hank;
mod loom;
mod woven;

use super::file::{Draft, Section};
use super::given::{Given, Values};
use super::lot::{Labelled, Yarn};
use super::stage::{Bench, named};
use crate::calculation::{Inputs, Place};
use crate::error::Result;
use crate::mill;
use crate::number::{Number, V};
use crate::quantity::{Count, Fraction, Kind, LinearDensity, Mass, Ratio, Shrinkage};

pub(super) use crate::mill::run::reel::Reel;
pub(super) use loom::{CAUTIONS, Loom};

/// A kind of goods and how many of it were promised.
#[derive(Clone, Debug)]
pub(super) struct Good {
    pub(super) name: String,
    /// How many were promised.
    pub(super) promised: Option<u32>,
    /// What the plan reads of it.
    asked: Asked<Place>,
    /// Takes what the others leave.
    pub(super) takes_rest: bool,
    /// Where the promise is in the file.
    pub(super) origin: String,
    /// How far a piece's yarn differs from the mean of all pieces: a factor about one.
    evenness: Option<Place>,
    making: Making,
}

/// What is asked of goods of every kind.
#[derive(Clone, Debug, Inputs)]
struct Asked<N> {
    /// pieces promised
    #[q("n", 0.0..=5000.0, zero, like = "12")]
    promised: Option<Count<N>>,
    /// coefficient of variation of the yarn from piece to piece
    #[q("CV", 0.0..=0.1, zero, like = "2 %")]
    piece_cv: Option<Fraction<N>>,
}

#[derive(Clone, Debug)]
enum Making {
    Hank(hank::Hank<Place>),
    Woven(Box<woven::Piece<Place>>),
}

/// What a good needs of the scoured yarn, in clean dry fibre.
#[derive(Clone, Copy, Debug)]
pub(super) struct Need<N> {
    /// For each piece.
    pub(super) each: Mass<N>,
    /// Once, however many pieces.
    pub(super) fixed: Mass<N>,
}

/// Where some of a good's yarn went, in clean dry fibre.
#[derive(Debug)]
pub(super) struct Used<N> {
    pub(super) stage: String,
    pub(super) to: &'static str,
    /// Name of the value.
    pub(super) key: String,
    pub(super) fibre: Mass<N>,
}

impl<N: Number> Used<N> {
    fn new(stage: &str, to: &'static str, good: &str, name: &str, fibre: Mass<N>) -> Self {
        Used { stage: stage.to_owned(), to, key: format!("{good}.{name}"), fibre }
    }
}

/// The machines behind the scoured yarn.
#[derive(Clone, Debug)]
pub(super) struct Machines {
    pub(super) reel: Option<Reel<Place>>,
    pub(super) loom: Option<Loom>,
}

/// What the goods are calculated from.
pub(super) struct Shop<'a, 'v, N> {
    pub(super) values: &'a Values<'v, N>,
    pub(super) machines: &'a Machines,
    pub(super) label: &'a Labelled<Place>,
    pub(super) yarn: &'a Yarn<Place>,
    /// The finished yarn, on clean dry fibre.
    pub(super) dry: LinearDensity<N>,
    /// Shrinkage of the hank in scouring.
    pub(super) hank_shrinkage: Shrinkage<N>,
}

impl<N: Number> Shop<'_, '_, N> {
    /// Count of the finished yarn, as on the label.
    pub(super) fn label_count(&self) -> LinearDensity<N> {
        LinearDensity::base(self.values.at(*self.yarn.count.inner()))
    }
}

impl Good {
    pub(super) fn read(
        name: &str,
        section: &Section<'_>,
        machines: &Machines,
        yarn: &str,
        draft: &mut Draft,
    ) -> Result<Self> {
        let kind = section.text("kind", "the kind of goods", "\"hank\" or \"woven\"")?;
        let of = section.text("yarn", "the yarn that it is made of", &format!("\"{yarn}\""))?;
        if of != yarn {
            return Err(section
                .error("yarn", format!("no stage makes a yarn '{of}'; the lot makes '{yarn}'")));
        }
        let promised = section.whole("promised")?;
        let asked = section.read(draft, |reader| Asked::take(reader))?;
        let takes_rest = section.flag("takes_rest")?;
        if promised.is_none() && !takes_rest {
            return Err(section.error(
                "promised",
                "how many were promised is missing; write promised = 12, or takes_rest = true for what the others leave",
            ));
        }
        let making = match kind.as_str() {
            "hank" if machines.reel.is_some() => {
                Making::Hank(section.read(draft, |reader| hank::Hank::take(reader))?)
            }
            "hank" => {
                return Err(section.error(
                    "kind",
                    "hanks need a reel; write a table [reel] with reel_circumference = \"1.50 m\"",
                ));
            }
            "woven" if machines.loom.is_some() => {
                Making::Woven(Box::new(section.read(draft, |reader| woven::Piece::take(reader))?))
            }
            "woven" => {
                return Err(section.error(
                    "kind",
                    "woven goods need a loom; write the tables [loom] and [finish]",
                ));
            }
            other => {
                return Err(section.error(
                    "kind",
                    format!("'{other}' is not a kind of goods; write \"hank\" or \"woven\""),
                ));
            }
        };
        let evenness = match &asked.piece_cv {
            None => None,
            Some(cv) => {
                let pieces = promised.filter(|n| *n > 0).ok_or_else(|| {
                    section.error(
                        "piece_cv",
                        "how many pieces average out is not known; write promised too",
                    )
                })?;
                Some(evenness(draft, *cv.inner(), &section.path, pieces)?)
            }
        };
        let origin = section.error("promised", "").to_string();
        let origin =
            origin.rsplit_once(": goods.").map_or(origin.clone(), |(place, _)| place.to_owned());
        Ok(Good { name: name.to_owned(), promised, asked, takes_rest, origin, evenness, making })
    }

    /// True where two goods go over the same machines.
    pub(super) fn is_like(&self, other: &Good) -> bool {
        std::mem::discriminant(&self.making) == std::mem::discriminant(&other.making)
    }

    /// What the good needs of the scoured yarn.
    pub(super) fn need<N: Number>(&self, shop: &Shop<'_, '_, N>) -> Need<N> {
        let mut need = match &self.making {
            Making::Hank(hank) => hank.need(&self.name, shop),
            Making::Woven(piece) => piece.need(&self.name, shop),
        };
        if let Some(place) = &self.evenness {
            let factor = Ratio::base(shop.values.at(*place));
            need.each = Mass::from(need.each.v() * factor.v());
        }
        need
    }

    /// What to set for the good, and where its yarn goes.
    pub(super) fn set<N: Number>(
        &self,
        shop: &Shop<'_, '_, N>,
        taken: &Taken<N>,
        before_scouring: LinearDensity<N>,
        bench: &mut Bench<N>,
    ) -> Vec<Used<N>> {
        match &self.making {
            Making::Hank(hank) => {
                hank.set(&self.name, shop, before_scouring, bench);
                vec![Used::new(&self.name, "goods", &self.name, "yarn", taken.used)]
            }
            Making::Woven(piece) => piece.set(&self.name, shop, taken.made, taken.used, bench),
        }
    }
}

/// Piece-to-piece variation as a value of its own: the mean over the pieces, about one.
fn evenness(draft: &mut Draft, cv: Place, path: &str, pieces: u32) -> Result<Place> {
    let cv = &draft.given[cv.0];
    let pieces = f64::from(pieces);
    let given = Given {
        key: format!("{path}.mean_of_pieces"),
        symbol: "m",
        meaning: "mean yarn of the pieces, over that planned",
        kind: Kind::Ratio,
        amount: crate::quantity::bare_number(1.0, Kind::Ratio)?,
        typed: "1".to_owned(),
        spread: super::chance::Spread::normal(1.0, cv.base() / pieces.sqrt()),
        layer: super::chance::Layer::Piece,
        origin: cv.origin.clone(),
    };
    draft.given.push(given);
    Ok(Place(draft.given.len() - 1))
}

/// A billionth of a piece too little is a whole piece: arithmetic rounds.
const WHOLE: f64 = 1e-9;

/// What a good takes of the yarn that is left when its turn comes.
pub(super) struct Taken<N> {
    /// Pieces that the yarn left would make, not rounded down.
    pub(super) unrounded: Count<N>,
    /// Whole pieces made: as many as were promised, or all where the good takes the rest.
    pub(super) made: Count<N>,
    /// Yarn that goes into them.
    pub(super) used: Mass<N>,
    /// Yarn that the promise needs, whether there is enough or not.
    pub(super) promised: Mass<N>,
}

impl Good {
    /// Takes yarn for the good out of what is left.
    #[inline]
    pub(super) fn take<N: Number>(
        &self,
        values: &Values<'_, N>,
        need: &Need<N>,
        left: Mass<N>,
    ) -> Taken<N> {
        let name = self.name.as_str();
        let unrounded = mill::pieces_from_mass(left, need.fixed, need.each);
        let unrounded = named(name, "unrounded", "pieces that the yarn left would make", unrounded);
        let whole = unrounded.v().round_down(WHOLE);
        let none = Count::base(N::constant(0.0));
        let promised = self.asked.promised.as_ref();
        let wanted = promised.map_or(none, |n| Count::base(values.at(*n.inner())));
        let made = if self.takes_rest { whole } else { whole.min(wanted.v()) };
        let made = named(name, "made", "whole pieces", Count::from(made));
        let used = mill::yarn_for_pieces(made, need.fixed, need.each);
        let used =
            named(name, "yarn", "scoured yarn that goes into them, as clean dry fibre", used);
        let promised = mill::yarn_for_pieces(wanted, need.fixed, need.each);
        let words = "scoured yarn that the promise needs, as clean dry fibre";
        Taken { unrounded, made, used, promised: named(name, "yarn_promised", words, promised) }
    }
}

/// The yarn that a number of each good needs.
pub(super) fn needed<N: Number>(needs: &[Need<N>], pieces: &[f64]) -> Mass<N> {
    let mut sum = V::constant(0.0);
    for (need, pieces) in needs.iter().zip(pieces) {
        if *pieces > 0.0 {
            sum = sum + need.fixed.v() + *pieces * need.each.v();
        }
    }
    named(
        "promise",
        "fibre_needed",
        "scoured yarn that the goods need, as clean dry fibre",
        Mass::from(sum),
    )
}
