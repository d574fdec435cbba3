//! Weaves made by a rule of the trade.

use super::satin::satin_move;
use super::{System, Weave};
use crate::error::{Error, Result};

/// Longest repeat that a formula may ask for; longer ones come as their squares.
pub(super) const LONGEST: usize = 2000;

/// Which way the twill line rises.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hand {
    /// To the right, Z.
    Right,
    /// To the left, S.
    Left,
}

/// Checks a formula such as 2/1/1/2: ups and downs in turn.
pub(super) fn formula_checked(formula: &[usize]) -> Result<usize> {
    let text = || formula.iter().map(ToString::to_string).collect::<Vec<_>>().join("/");
    if formula.is_empty() || !formula.len().is_multiple_of(2) {
        return Err(Error::notation(format!(
            "{}: a formula has ups and downs in turn, one as many as the other; write one such as 2/2 \
             or 5/2/1/2",
            text()
        )));
    }
    if formula.contains(&0) {
        return Err(Error::range(format!(
            "{}: a thread goes over and under one at least; a 0 has no place here",
            text()
        )));
    }
    let sum = formula.iter().fold(0_usize, |sum, n| sum.saturating_add(*n));
    if sum > LONGEST {
        return Err(Error::range(format!(
            "{}: a repeat of more than {LONGEST} threads is given by its squares",
            text()
        )));
    }
    Ok(sum)
}

/// Ups and downs of a formula, one after the other.
fn spelt(formula: &[usize]) -> Vec<bool> {
    let lengths = formula.iter().enumerate();
    lengths.flat_map(|(k, n)| std::iter::repeat_n(k % 2 == 0, *n)).collect()
}

impl Weave {
    /// Plain weave.
    pub fn plain() -> Weave {
        Weave::twill(&[1, 1], Hand::Right, 1).unwrap_or_else(|_| {
            // `twill` refuses a formula that is not of pairs, and a step of 0 or of all threads.
            unreachable!("one up, one down")
        })
    }

    /// A twill by its formula, ups and downs of the first end in turn from the first pick; each end
    /// begins `step` picks after the one before.
    pub fn twill(formula: &[usize], hand: Hand, step: usize) -> Result<Weave> {
        let threads = formula_checked(formula)?;
        if step == 0 || step >= threads {
            return Err(Error::range(format!(
                "a twill on {threads} threads steps by 1 to {}, not by {step}",
                threads - 1
            )));
        }
        let lift = spelt(formula);
        Weave::from_fn(threads, threads, |end, pick| {
            let later = end * step % threads;
            lift[match hand {
                Hand::Right => (pick + threads - later) % threads,
                Hand::Left => (pick + later) % threads,
            }]
        })
    }

    /// A regular satin: on each pick one end is down, in a weft-faced sateen one is up; from pick to
    /// pick it moves on by so many ends.
    pub fn satin(ends: usize, step: Option<usize>, face: System) -> Result<Weave> {
        let step = satin_move(ends, step)?;
        if ends > LONGEST {
            return Err(Error::range(format!(
                "a satin of {ends} ends floats further than any cloth"
            )));
        }
        Weave::from_fn(ends, ends, |end, pick| {
            (pick * step % ends == end) == (face == System::Weft)
        })
    }

    /// A mat: some ends follow the formula of the picks, the next ones its reverse, in turn. Ribs are
    /// mats of single ends or single picks.
    pub fn mat(formula: &[usize], ends: &[usize]) -> Result<Weave> {
        let (picks, width) = (formula_checked(formula)?, formula_checked(ends)?);
        let (lift, group) = (spelt(formula), spelt(ends));
        Weave::from_fn(width, picks, |end, pick| lift[pick] == group[end])
    }

    /// The ends of a weave drawn in another order, counted from 0.
    pub(super) fn drawn(&self, order: &[usize]) -> Result<Weave> {
        Weave::from_fn(order.len(), self.picks(), |end, pick| self.is_up(order[end], pick))
    }

    /// A herringbone: the twill turns after so many ends and half a repeat is omitted there, so that
    /// the lines are cut. It is clean cut where ups and downs of the twill are each other's reverse,
    /// as in 2/2: 1-2-3-4-2-1-4-3.
    pub fn herringbone(formula: &[usize], ends: Option<usize>) -> Result<Weave> {
        let threads = formula_checked(formula)?;
        if threads % 2 == 1 {
            return Err(Error::range(format!(
                "a twill on {threads} threads has no half to leave out where a herringbone turns; write \
                 'pointed twill' instead of 'herringbone'"
            )));
        }
        let ends = turning(ends.unwrap_or(threads), 2)?;
        let half = threads / 2;
        let back = (0..ends).rev().map(|end| (end + half) % threads);
        let order: Vec<usize> = (0..ends).map(|end| end % threads).chain(back).collect();
        Weave::twill(formula, Hand::Right, 1)?.drawn(&order)
    }

    /// A broken twill: the second half of the ends runs the other way, as 1-2-4-3.
    pub fn broken_twill(formula: &[usize]) -> Result<Weave> {
        let threads = formula_checked(formula)?;
        if threads % 2 == 1 || threads < 4 {
            return Err(Error::range(format!(
                "a twill on {threads} threads has no two halves to break it in; it wants an even number \
                 from 4"
            )));
        }
        Weave::herringbone(formula, Some(threads / 2))
    }

    /// A pointed (waved) twill: the twill turns on one end, as 1-2-3-4-3-2.
    pub fn pointed_twill(formula: &[usize], ends: Option<usize>) -> Result<Weave> {
        let threads = formula_checked(formula)?;
        let ends = turning(ends.unwrap_or(threads), 2)?;
        let back = (1..ends - 1).rev();
        let order: Vec<usize> = (0..ends).chain(back).map(|end| end % threads).collect();
        Weave::twill(formula, Hand::Right, 1)?.drawn(&order)
    }

    /// The same interlacing with warp and weft exchanged: what ran across the cloth runs along it.
    pub fn turned(&self) -> Result<Weave> {
        Weave::from_fn(self.picks(), self.ends(), |end, pick| !self.is_up(pick, end))
    }

    /// A crepe by turning: the weave in the first quarter, and in the others, going round, as it looks
    /// turned by one right angle more each.
    pub fn crepe(&self) -> Result<Weave> {
        let n = self.ends();
        if n != self.picks() {
            return Err(Error::range(format!(
                "a crepe by turning wants a weave with as many picks as ends, not {n} × {}",
                self.picks()
            )));
        }
        if n > LONGEST {
            return Err(Error::range("such a crepe is given by its squares"));
        }
        Weave::from_fn(2 * n, 2 * n, |end, pick| {
            let (x, y) = (end % n, pick % n);
            match (end < n, pick < n) {
                (true, true) => self.is_up(x, y),
                (true, false) => self.is_up(n - 1 - y, x),
                (false, false) => self.is_up(n - 1 - x, n - 1 - y),
                (false, true) => self.is_up(y, n - 1 - x),
            }
        })
    }
}

/// Ends before a turn.
fn turning(ends: usize, least: usize) -> Result<usize> {
    if (least..=LONGEST).contains(&ends) {
        return Ok(ends);
    }
    Err(Error::range(format!("a twill turns after {least} to {LONGEST} ends, not after {ends}")))
}
