//! Parts that the mill owns, and which of them is used.

use crate::number::{Number, V};
use crate::parts::Parts;
use crate::quantity::Typed;

/// The wheels or reeds that a mill owns, and the one that is set, where one is.
#[derive(Clone, Debug)]
pub struct Owned {
    parts: Parts,
    set: Option<f64>,
}

impl Owned {
    pub(crate) fn new(parts: Parts, set: Option<f64>) -> Owned {
        Owned { parts, set }
    }
    /// The parts, in rising order.
    pub fn all(&self) -> &[f64] {
        self.parts.all()
    }
    /// The part to use, where the choice is fixed.
    pub fn set(&self) -> Option<f64> {
        self.set
    }
    /// The same parts with one of them set.
    pub fn with(&self, part: f64) -> Owned {
        Owned { parts: self.parts.clone(), set: Some(part) }
    }
    /// The part to use where one of this size would be best: the one set, else the nearest.
    pub fn choose<N: Number, Q: Typed<N>>(&self, wanted: Q) -> Q {
        let number = wanted.v().0;
        let part = self.part(number.value());
        Q::from(V(number.chosen(part)))
    }
    fn part(&self, wanted: f64) -> f64 {
        self.set.or_else(|| self.parts.nearest(wanted)).unwrap_or(wanted)
    }
    /// The owned parts next to a wanted one: below (or equal) and above.
    pub fn neighbours(&self, wanted: f64) -> (Option<f64>, Option<f64>) {
        self.parts.neighbours(wanted)
    }
}
