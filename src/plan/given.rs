//! The values that a plan rests on, each with its place in the lot file.

use super::chance::{Layer, Spread};
use crate::calculation::Place;
use crate::number::Number;
use crate::quantity::{Amount, Kind};
use crate::worked::{Tape, Worked};

/// A value that was given.
#[derive(Clone, Debug)]
pub struct Given {
    /// Its name, such as `scour.loss`.
    pub key: String,
    /// Its symbol.
    pub symbol: &'static str,
    /// What it is, in words.
    pub meaning: &'static str,
    /// The kind of quantity.
    pub kind: Kind,
    /// The likely value, as it was given.
    pub amount: Amount,
    /// The text of it.
    pub typed: String,
    /// How it is spread.
    pub spread: Spread,
    /// Where its uncertainty comes from.
    pub layer: Layer,
    /// Where it is, such as `first-lot.toml:12`.
    pub origin: String,
    /// Whose it is: the lot's, the mill's, the handbook's, a guess.
    pub from: String,
}

impl Given {
    /// The likely value in the base unit.
    pub fn base(&self) -> f64 {
        self.amount.base()
    }
    /// What a simulated lot draws the value from.
    pub(super) fn draw(&self) -> Draw {
        Draw { spread: self.spread, likely: self.base(), possible: self.kind.possible() }
    }
    /// Where it is and what it is called: what messages about it begin with.
    pub(super) fn place(&self) -> String {
        format!("{}: {}", self.origin, self.key)
    }
}

/// How a value is drawn, in the base unit.
pub(super) struct Draw {
    spread: Spread,
    likely: f64,
    possible: (f64, f64),
}

impl Draw {
    /// The value at a standard normal deviate, and whether it was held at the end of what is possible: a
    /// tail may reach beyond it.
    #[inline]
    pub(super) fn at(&self, z: f64) -> (f64, bool) {
        let (low, high) = self.possible;
        let free = self.spread.at(z, self.likely);
        if free < low {
            (low, true)
        } else if free > high {
            (high, true)
        } else {
            (free, false)
        }
    }
}

/// The values of one run of the plan, in base units: the likely ones, a simulated lot, or worked numbers.
#[derive(Clone, Copy, Debug)]
pub(super) struct Values<'a, N> {
    /// One for each given value.
    pub(super) given: &'a [N],
}

impl<N: Number> Values<'_, N> {
    /// What is at a place: for the `map` of inputs.
    #[inline(always)]
    pub(super) fn read(&self) -> impl FnMut(&Place) -> N + '_ {
        |place| self.given[place.0]
    }
    /// What is at one place.
    #[inline(always)]
    pub(super) fn at(&self, place: Place) -> N {
        self.given[place.0]
    }
}

impl Given {
    /// Puts the value on a tape.
    pub(super) fn enter<'t>(&self, tape: &'t Tape) -> Worked<'t> {
        crate::formula::enter(
            tape,
            &self.amount,
            Some(self.typed.clone()),
            self.kind,
            &self.key,
            self.symbol,
            self.meaning,
            &self.origin,
        )
    }
}
