//! Where the chain gets its figures from: plain ones, or those of a tape.

use std::cell::RefCell;

use super::ask::{ASKED, Article, Asked, Key};
use crate::number::{Number, V};
use crate::particulars::Desk;
use crate::quantity::Typed;
use crate::worked::Worked;

/// Where a chain gets its figures from.
pub(super) trait Given<N: Number> {
    fn get<Q: Typed<N>>(&self, key: Key) -> Q;
    fn has(&self, key: Key) -> bool;
}

/// Plain figures.
pub(super) struct Plain<'a> {
    pub(super) article: &'a Article,
    pub(super) pieces: Option<f64>,
}

impl Given<f64> for Plain<'_> {
    fn get<Q: Typed<f64>>(&self, key: Key) -> Q {
        let base = match (key, self.pieces) {
            (Key::Pieces, Some(pieces)) => pieces,
            _ => self.article.amount(key).0.base(),
        };
        Q::from(V(base))
    }
    fn has(&self, key: Key) -> bool {
        self.article.has(key)
    }
}

/// Figures on a tape, each entered once, when it is first asked for.
pub(super) struct Entered<'a, 't> {
    desk: &'a Desk<'t>,
    article: &'a Article,
    pieces: Option<f64>,
    figures: RefCell<Vec<Option<Worked<'t>>>>,
}

impl<'a, 't> Entered<'a, 't> {
    pub(super) fn new(desk: &'a Desk<'t>, article: &'a Article, pieces: Option<f64>) -> Self {
        Entered { desk, article, pieces, figures: RefCell::new(vec![None; ASKED.len()]) }
    }
}

impl Entered<'_, '_> {
    /// The number of pieces, where it is not the one given.
    pub(super) fn pieces(&self) -> Option<f64> {
        self.pieces
    }
}

impl<'t> Given<Worked<'t>> for Entered<'_, 't> {
    fn get<Q: Typed<Worked<'t>>>(&self, key: Key) -> Q {
        if let Some(worked) = self.figures.borrow()[key as usize] {
            return Q::from(V(worked));
        }
        // The weft is the warp's yarn, and the selvedge's dents those of the ground, where they are not
        // given.
        let key_given = match key {
            Key::Weft if !self.article.has(Key::Weft) => Key::Warp,
            Key::SelvedgePerDent if !self.article.has(Key::SelvedgePerDent) => Key::EndsPerDent,
            key => key,
        };
        if key_given != key {
            return self.get(key_given);
        }
        let (mut amount, mut typed) = self.article.amount(key);
        let Asked { name, symbol, mut words, .. } = *key.asked();
        if let (Key::Pieces, Some(pieces)) = (key, self.pieces) {
            (amount.number, typed) = (pieces, None);
            words = "whole pieces that the yarn makes";
        }
        let given: Q = self.desk.given(name, symbol, words, &amount, typed);
        self.figures.borrow_mut()[key as usize] = Some(given.v().0);
        given
    }
    fn has(&self, key: Key) -> bool {
        self.article.has(key)
    }
}
