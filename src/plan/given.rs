//! The figures that a plan rests on, each with its place in the lot file.

use std::cell::Cell;

use super::chance::{Layer, Spread};
use crate::number::{Number, V};
use crate::parts::Parts;
use crate::quantity::{Amount, Count, Kind, Typed};
use crate::worked::{Tape, Worked};

/// A figure that was given.
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
    /// The likely figure, as it was given.
    pub amount: Amount,
    /// The text of it.
    pub typed: String,
    /// How it is spread.
    pub spread: Spread,
    /// What varies when it varies.
    pub layer: Layer,
    /// Where it stands, such as `first-lot.toml:12`.
    pub origin: String,
}

impl Given {
    /// The likely figure in the base unit.
    pub fn base(&self) -> f64 {
        self.amount.base()
    }
    /// Where it stands and what it is called: what messages about it begin with.
    pub(super) fn place(&self) -> String {
        format!("{}: {}", self.origin, self.key)
    }
}

/// The place of a figure in the table of given figures, and its kind.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ask(pub(super) usize, pub(super) Kind);

/// A part of a machine that is chosen out of those that the mill owns.
#[derive(Clone, Debug)]
pub(super) struct Owned {
    /// The place of the choice in the table of choices.
    pub(super) place: usize,
    /// The parts owned: teeth, or dents per centimetre.
    pub(super) parts: Parts,
    /// Set by the user: not the nearest part but this.
    pub(super) fixed: Option<f64>,
}

impl Owned {
    /// The part to use: the one set, else the nearest.
    pub(super) fn choose(&self, wanted: f64) -> f64 {
        self.fixed.or_else(|| self.parts.nearest(wanted)).unwrap_or(wanted)
    }
}

/// The figures of one run of the plan: the likely ones, a draw, or worked numbers.
#[derive(Debug)]
pub(super) struct Values<'a, N> {
    /// One for each given figure, in base units.
    pub(super) given: &'a [N],
    /// One for each choice of a part.
    pub(super) choices: Choices<'a>,
}

/// The parts chosen: being chosen in this run, or settled before.
#[derive(Debug)]
pub(super) enum Choices<'a> {
    /// This run chooses.
    Open(&'a [Cell<f64>]),
    /// Chosen before.
    Made(&'a [f64]),
}

impl<N: Number> Values<'_, N> {
    /// A given figure.
    #[inline(always)]
    pub(super) fn get<Q: Typed<N>>(&self, ask: Ask) -> Q {
        debug_assert_eq!(ask.1, Q::KIND, "asked for as one kind, used as another");
        Q::from(V(self.given[ask.0]))
    }
    /// The part in use where `wanted` would be best.
    pub(super) fn part(&self, owned: &Owned, wanted: V<N>) -> V<N> {
        let part = match self.choices {
            Choices::Open(choices) => {
                let part = owned.choose(wanted.value());
                choices[owned.place].set(part);
                part
            }
            Choices::Made(choices) => choices[owned.place],
        };
        V(wanted.0.chosen(part))
    }
    /// The wheel in use where a wheel of `wanted` teeth would be best.
    pub(super) fn wheel(&self, owned: &Owned, wanted: Count<N>) -> Count<N> {
        Count::from(self.part(owned, wanted.v()))
    }
}

impl Given {
    /// Puts the figure on a tape.
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
