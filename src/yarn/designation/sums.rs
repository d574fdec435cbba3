//! What follows from the build: resultant, contraction, twists, each by the formula of the catalogue,
//! so that each has its working.

use std::sync::Arc;

use super::{Direction, Fold, Single, Strand, Turned, Whole, Yarn};
use crate::error::{Error, Result};
use crate::formula::enter;
use crate::number::Number;
use crate::quantity::print::{fixed, of_kind};
use crate::quantity::{
    Amount, Contraction, Count, Kind, LinearDensity, Mass, Ratio, Shrinkage, Twist, Unit, unit,
};
use crate::worked::{Label, Tape, Working, subscript};
use crate::yarn::{
    contraction_from_counts, contraction_on_twisted, fold, fold_alike, folding_twist_ratio,
    length_share, mass_share, twist_after_shrinkage, twist_factor, twist_left_in_single,
};

/// A number that a yarn's designation gives, by its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// Sum of the ends, without contraction.
    Nominal,
    /// Shortening in folding, from the nominal and the measured count, on the untwisted length.
    Contraction,
    /// The same, on the twisted length.
    ContractionOnTwisted,
    /// Twist factor of the whole.
    TwistFactor,
    /// Folding twist over the twist of a component.
    TwistRatio,
    /// Twist left in a component after folding.
    TwistLeft,
    /// Share of the mass that an end of a component has.
    MassShare,
    /// Share of all the thread in the yarn that an end of a component has.
    LengthShare,
}

impl Asked {
    const ALL: [(&'static str, Asked); 8] = [
        ("nominal", Asked::Nominal),
        ("contraction", Asked::Contraction),
        ("contraction_on_twisted", Asked::ContractionOnTwisted),
        ("twist_factor", Asked::TwistFactor),
        ("twist_ratio", Asked::TwistRatio),
        ("twist_left", Asked::TwistLeft),
        ("mass_share", Asked::MassShare),
        ("length_share", Asked::LengthShare),
    ];
    /// The number with a name.
    ///
    /// # Errors
    /// Where there is none.
    pub fn named(name: &str) -> Result<Asked> {
        Asked::ALL.iter().find(|(n, _)| *n == name).map(|(_, a)| *a).ok_or_else(|| {
            let all = Asked::ALL.map(|(n, _)| format!("'{n}'")).join(", ");
            Error::notation(format!("a yarn has no working called '{name}'; ask for one of {all}"))
        })
    }
    fn label(self) -> Label {
        let (symbol, kind, meaning) = match self {
            Asked::Nominal => {
                ("T₀", Kind::LinearDensity, "sum of the ends, contraction not counted")
            }
            Asked::Contraction => ("k", Kind::Contraction, "on the untwisted length"),
            Asked::TwistFactor => ("K", Kind::TwistFactor, ""),
            Asked::TwistRatio => {
                ("q", Kind::Ratio, "folding twist over the twist of the component")
            }
            Asked::TwistLeft => ("t_l", Kind::Twist, "twist left in the component"),
            Asked::ContractionOnTwisted => {
                ("k_t", Kind::TwistedContraction, "on the twisted length")
            }
            Asked::MassShare => ("s", Kind::Fraction, "of the mass of the yarn, one such end"),
            Asked::LengthShare => ("λ", Kind::Fraction, "of all the thread in it, one such end"),
        };
        let key = Asked::ALL.iter().find(|(_, a)| *a == self).map_or("", |(name, _)| name);
        Label {
            symbol: symbol.to_owned(),
            key: key.to_owned(),
            unit: kind.base().to_owned(),
            meaning: meaning.to_owned(),
            ..Label::default()
        }
    }
}

/// A resultant further than this from the sum of its ends is doubted: from memory, wide.
const FAR: f64 = 0.3;

/// Takes a number of the designation for a sum: as a number, or noted down for a working.
pub(super) type Enter<'e, N> = &'e mut dyn FnMut(&Amount, Kind, &str, &str, &str) -> N;

impl Yarn {
    /// Count of the whole in tex: as measured, else the sum of its ends without contraction.
    ///
    /// # Errors
    /// Where the count of a single is not known.
    pub fn resultant(&self) -> Result<f64> {
        match &self.whole {
            Some(whole) => Ok(whole.count.base()),
            None => self.nominal(),
        }
    }

    /// Sum of the ends in tex, without contraction.
    ///
    /// # Errors
    /// Where the count of a single is not known.
    pub fn nominal(&self) -> Result<f64> {
        self.sum(Asked::Nominal, 0)
    }

    /// Contraction in folding, on the untwisted length: what the measured count is more than the sum.
    ///
    /// # Errors
    /// Where no resultant was measured, or the count of a single is not known.
    pub fn contraction(&self) -> Result<f64> {
        let contraction = self.sum(Asked::Contraction, 0)?;
        let fits = Kind::Contraction.check(contraction);
        fits.map_err(|e| e.at(format_args!("'{}'", self.designation())))?;
        Ok(contraction)
    }

    /// What looks wrong: a resultant that no folding makes of its ends.
    pub fn doubt(&self) -> Option<String> {
        let (whole, sum) = (self.whole.as_ref()?.count.base(), self.nominal().ok()?);
        let off = whole / sum - 1.0;
        (off.abs() > FAR).then(|| {
            let tex = |count: f64| of_kind(count, Kind::LinearDensity);
            format!(
                "'{}': the resultant {} is {} % {} than the {} of its ends together; is it written right?",
                self.designation(),
                tex(whole),
                fixed(100.0 * off.abs(), 0),
                if off > 0.0 { "more" } else { "less" },
                tex(sum)
            )
        })
    }

    /// Twist factor of the whole, in turns/cm √tex.
    ///
    /// # Errors
    /// Where its twist is not said.
    pub fn twist_factor(&self) -> Result<f64> {
        self.sum(Asked::TwistFactor, 0)
    }

    /// Folding twist over the twist of a component.
    ///
    /// # Errors
    /// Where a twist is not said, or the yarn is not a fold.
    pub fn twist_ratio(&self, component: usize) -> Result<f64> {
        self.sum(Asked::TwistRatio, component)
    }

    /// Direction and turns that are left in a component after folding: folding the other way takes
    /// out, folding the same way adds. Of a folded yarn whose contraction is known they are in a metre
    /// of the folded yarn, else contraction is not counted.
    ///
    /// # Errors
    /// Where a twist or its direction is not said, or the yarn is not a fold.
    pub fn twist_left(&self, component: usize) -> Result<(Direction, f64)> {
        let left = self.sum(Asked::TwistLeft, component)?;
        let (outer, inner) = self.twists(component)?;
        let direction = if left < 0.0 { outer } else { inner };
        let direction = direction.direction().ok_or_else(|| self.no_direction())?;
        Ok((direction, left.abs()))
    }

    /// Contraction in folding, on the twisted length: so much added to it is the untwisted.
    ///
    /// # Errors
    /// As [`Yarn::contraction`].
    pub fn contraction_on_twisted(&self) -> Result<f64> {
        self.sum(Asked::ContractionOnTwisted, 0)
    }

    /// The working of a number, for a component (or an end) where it is of one.
    ///
    /// # Errors
    /// As the number itself.
    pub fn working(&self, asked: Asked, component: usize) -> Result<Working> {
        let ends = self.ends().count();
        if component >= ends {
            return Err(self.no_such(component, "end", ends));
        }
        let tape = Tape::new();
        let root = {
            let mut enter = |amount: &Amount, kind: Kind, key: &str, symbol: &str, says: &str| {
                enter(&tape, amount, None, kind, key, symbol, says, "")
            };
            let answer = self.answer(asked, component, &mut enter)?;
            answer.labelled(|| asked.label()).arg()
        };
        Ok(Working::new(Arc::new(tape.finish()), root))
    }

    pub(super) fn sum(&self, asked: Asked, component: usize) -> Result<f64> {
        self.answer(asked, component, &mut |amount, _, _, _, _| amount.base())
    }

    fn answer<N: Number>(&self, asked: Asked, component: usize, enter: Enter<'_, N>) -> Result<N> {
        Ok(match asked {
            Asked::Nominal => nominal(&self.build, &mut Place::of(self), enter)?.v().0,
            Asked::Contraction => {
                if self.about().lengths.windows(2).any(|two| two[0].to_bits() != two[1].to_bits()) {
                    return Err(Error::notation(format!(
                        "the ends of '{}' are fed at different lengths, so there is no one contraction",
                        self.designation()
                    )));
                }
                let Some(whole) = &self.whole else {
                    return Err(Error::notation(format!(
                        "the contraction of '{}' is not known: add the resultant as measured, like '; R 257 tex'",
                        self.designation()
                    )));
                };
                let sum = nominal(&self.build, &mut Place::of(self), enter)?.v().0;
                let sum = sum.labelled(|| Asked::Nominal.label());
                contraction_from_counts(LinearDensity::base(sum), whole_count(whole, enter)).v().0
            }
            Asked::ContractionOnTwisted => {
                let c = self.answer(Asked::Contraction, 0, enter)?;
                let c = c.labelled(|| Asked::Contraction.label());
                contraction_on_twisted(Contraction::base(c)).v().0
            }
            Asked::MassShare | Asked::LengthShare => {
                let mut counts = self.counts(enter)?;
                let ends = counts.len();
                if component >= ends {
                    return Err(self.no_such(component, "end", ends));
                }
                let lengths = self.lengths().into_iter().enumerate().map(|(at, number)| {
                    let (key, symbol) = (format!("length[{}]", at + 1), subscript(at + 1));
                    let says = "length of the end in a unit length of the yarn";
                    let amount = Amount { number, unit: ratio() };
                    enter(&amount, Kind::Ratio, &key, &format!("u{symbol}"), says)
                });
                let mut lengths: Vec<N> = lengths.collect();
                counts.rotate_left(component);
                lengths.rotate_left(component);
                if asked == Asked::MassShare {
                    let lengths: Vec<_> = lengths.into_iter().map(Ratio::base).collect();
                    return Ok(mass_share(&counts, &lengths).v().0);
                }
                // A metre of the yarn has so much of each end, by mass.
                let masses = counts.iter().zip(lengths).map(|(t, u)| Mass::base(t.v().0 * u));
                length_share(&counts, &masses.collect::<Vec<_>>()).v().0
            }
            Asked::TwistFactor => {
                let Turned::To(_, Some(turns)) = self.build.twist() else {
                    return Err(self.no_twist("the twist of the whole"));
                };
                let count = match &self.whole {
                    Some(whole) => whole_count(whole, enter),
                    None => nominal(&self.build, &mut Place::of(self), enter)?,
                };
                let twist = enter(&turns, Kind::Twist, "twist", "t", "twist of the whole");
                twist_factor(Twist::base(twist), count).v().0
            }
            Asked::TwistRatio => {
                let (outer, inner) = self.twists(component)?;
                let [outer, inner] = self.turns([outer, inner], enter)?;
                folding_twist_ratio(outer, inner).v().0
            }
            Asked::TwistLeft => {
                let (outer, inner) = self.twists(component)?;
                let (Some(a), Some(b)) = (outer.direction(), inner.direction()) else {
                    return Err(self.no_direction());
                };
                let [outer, mut inner] = self.turns([outer, inner], enter)?;
                // The singles' turns stay while the fold grows shorter, where it is known by how much.
                if self.build.depth() == 1
                    && self.contraction().is_ok()
                    && let Ok(contraction) = self.answer(Asked::Contraction, 0, enter)
                {
                    let contraction = contraction.labelled(|| Asked::Contraction.label());
                    inner = twist_after_shrinkage(inner, Shrinkage::base(contraction));
                }
                if a == b {
                    (inner.v() + outer.v()).0
                } else {
                    twist_left_in_single(inner, outer).v().0
                }
            }
        })
    }

    /// Twist of the fold and of one of its components.
    fn twists(&self, component: usize) -> Result<(Turned, Turned)> {
        let Strand::Fold(Fold { parts, twist }) = &self.build else {
            return Err(self.no_fold("a folding twist"));
        };
        let part = parts
            .get(component)
            .ok_or_else(|| self.no_such(component, "component", parts.len()))?;
        Ok((*twist, part.strand.twist()))
    }

    fn turns<N: Number>(
        &self,
        [outer, inner]: [Turned; 2],
        enter: Enter<'_, N>,
    ) -> Result<[Twist<N>; 2]> {
        let (Turned::To(_, Some(outer)), Turned::To(_, Some(inner))) = (outer, inner) else {
            return Err(self.no_twist("the twist of the fold or of its component"));
        };
        let outer = enter(&outer, Kind::Twist, "folding_twist", "t_f", "folding twist");
        let inner = enter(&inner, Kind::Twist, "single_twist", "t_s", "twist of the component");
        Ok([Twist::base(outer), Twist::base(inner)])
    }

    fn no_twist(&self, what: &str) -> Error {
        Error::notation(format!(
            "{what} is not said in '{}'; write it, like 'Z 210' (turns per metre) or 'Z 5 tpi'",
            self.designation()
        ))
    }
    fn no_direction(&self) -> Error {
        Error::notation(format!(
            "a direction of twist is not said in '{}': opposite twists take out, like twists add; write 'S 210' or 'Z 210'",
            self.designation()
        ))
    }
    fn no_such(&self, place: usize, what: &str, of: usize) -> Error {
        Error::range(format!(
            "{what} {place} of '{}' was asked for; the first is 0, the last {}",
            self.designation(),
            of - 1
        ))
    }
    pub(super) fn no_fold(&self, what: &str) -> Error {
        Error::notation(format!("'{}' is not a folded yarn and has not {what}", self.designation()))
    }
}

fn ratio() -> &'static Unit {
    unit("", Some(Kind::Ratio)).expect("a unit")
}

fn whole_count<N: Number>(whole: &Whole, enter: Enter<'_, N>) -> LinearDensity<N> {
    let says = "count of the whole, as measured";
    LinearDensity::base(enter(&whole.count, Kind::LinearDensity, "resultant", "T_R", says))
}

/// Numbers the singles of a yarn as they come, where it has more than one kind.
pub(super) struct Place {
    several: bool,
    last: usize,
}

impl Place {
    pub(super) fn of(yarn: &Yarn) -> Self {
        fn kinds(strand: &Strand) -> usize {
            match strand {
                Strand::Single(_) => 1,
                Strand::Fold(fold) => fold.parts.iter().map(|p| kinds(&p.strand)).sum(),
            }
        }
        Place { several: kinds(&yarn.build) > 1, last: 0 }
    }
    fn next(&mut self) -> (String, String) {
        self.last += 1;
        if self.several {
            (format!("single[{}]", self.last), format!("T{}", subscript(self.last)))
        } else {
            ("single".to_owned(), "T_s".to_owned())
        }
    }
}

/// Sum of the ends. Contraction is not counted: what is not said is not guessed.
pub(super) fn nominal<N: Number>(
    strand: &Strand,
    place: &mut Place,
    enter: Enter<'_, N>,
) -> Result<LinearDensity<N>> {
    let none = Contraction::base(N::constant(0.0));
    match strand {
        Strand::Single(Single { count: Some(count), .. }) => {
            let (key, symbol) = place.next();
            let says = "count of a single";
            Ok(LinearDensity::base(enter(count, Kind::LinearDensity, &key, &symbol, says)))
        }
        Strand::Single(_) => Err(Error::notation(
            "the count of the singles is not known; add it, as in 'R 257 tex/2; 125 tex'",
        )),
        Strand::Fold(of) => {
            if let [part] = of.parts.as_slice() {
                let ends = Count::base(N::constant(f64::from(part.ends)));
                return Ok(fold_alike(nominal(&part.strand, place, enter)?, ends, none));
            }
            let mut counts = Vec::new();
            for part in &of.parts {
                let one = nominal(&part.strand, place, enter)?;
                counts.extend(std::iter::repeat_n(one, part.ends as usize));
            }
            Ok(fold(none, &counts))
        }
    }
}
