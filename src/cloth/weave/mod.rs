//! The weave: how ends and picks interlace.
//!
//! Ends are numbered from the left and picks from the bottom, as the weaver sees them; a square is
//! filled where the warp is up.

mod analysis;
mod draft;
mod grid;
mod iso;
mod layers;
mod make;
mod name;
mod read;
mod report;
mod satin;

pub use analysis::{Balance, Float, System};
pub use draft::{Draft, Drawing};
pub use layers::{Layers, Stitch, layer_order};
pub use make::Hand;
pub use satin::satin_moves;

use std::fmt;
use std::sync::Arc;

use crate::error::{Error, Result};
use grid::Grid;

/// Most squares of a repeat: far above what any loom repeats.
const SQUARES: usize = 100_000_000;

/// A weave, reduced to its smallest repeat.
///
/// ```
/// use hankwise::cloth::{System, Weave};
///
/// let twill = Weave::from_rows(&["1001", "1100", "0110", "0011"])?;
/// assert_eq!((twill.ends(), twill.picks()), (4, 4));
/// assert!(twill.is_up(0, 0) && !twill.is_up(1, 0));
/// assert_eq!(twill.average_float(System::Warp), 2.0);
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, PartialEq, Eq, Hash)]
pub struct Weave(Arc<Sides>);

/// The same squares by pick and by end, and what is counted along each.
#[derive(PartialEq, Eq, Hash)]
struct Sides {
    by_pick: Grid,
    by_end: Grid,
    of_picks: Vec<usize>,
    of_ends: Vec<usize>,
}

impl Weave {
    /// From the picks, the first woven first; in each a mark an end, the first on the left: `1`, `x`,
    /// `#`, `■` where the warp is up, `0`, `.`, `-`, `□` where it is down.
    pub fn from_rows<S: AsRef<str>>(rows: &[S]) -> Result<Weave> {
        let mut cells = Vec::new();
        let mut ends = 0;
        for (pick, row) in rows.iter().enumerate() {
            let before = cells.len();
            for mark in row.as_ref().trim().chars() {
                cells.push(match mark {
                    '1' | 'x' | 'X' | '#' | '■' => true,
                    '0' | '.' | '-' | '□' => false,
                    _ => {
                        return Err(Error::notation(format!(
                            "pick {}: '{mark}' is not a mark; write 1 where the warp is up, 0 where it \
                             is down",
                            pick + 1
                        )));
                    }
                });
            }
            let here = cells.len() - before;
            if pick == 0 {
                ends = here;
            } else if here != ends {
                return Err(Error::notation(format!(
                    "pick {} has {here} ends and pick 1 has {ends}; give every pick the same number",
                    pick + 1
                )));
            }
        }
        Weave::from_cells(&cells, ends)
    }

    /// From all squares, pick after pick, the first woven first: true where the warp is up.
    pub fn from_cells(cells: &[bool], ends: usize) -> Result<Weave> {
        let bytes: Vec<u8> = cells.iter().map(|up| u8::from(*up)).collect();
        Weave::from_bytes(&bytes, ends)
    }

    /// From all squares as bytes, pick after pick, the first woven first: 0 where the warp is down.
    pub fn from_bytes(cells: &[u8], ends: usize) -> Result<Weave> {
        if cells.is_empty() || ends == 0 {
            return Err(Error::notation(
                "a weave has ends and picks; write its rows, such as [\"10\", \"01\"] for plain",
            ));
        }
        if !cells.len().is_multiple_of(ends) {
            return Err(Error::notation(format!(
                "{} squares do not make whole picks of {ends} ends",
                cells.len()
            )));
        }
        if cells.len() > SQUARES {
            return Err(Error::range(format!(
                "{} × {} is more than any loom repeats; give the repeat alone",
                ends,
                cells.len() / ends
            )));
        }
        Weave::of(Grid::pack(cells, ends))
    }

    /// From a rule: true where an end is up on a pick.
    pub(crate) fn from_fn(
        ends: usize,
        picks: usize,
        up: impl Fn(usize, usize) -> bool,
    ) -> Result<Weave> {
        if ends.saturating_mul(picks) > SQUARES {
            return Err(Error::range(format!(
                "a repeat of {ends} × {picks} is more than any loom repeats"
            )));
        }
        Weave::of(Grid::from_fn(picks, ends, |pick, end| up(end, pick)))
    }

    fn of(by_pick: Grid) -> Result<Weave> {
        let (picks, across) = (by_pick.period(), by_pick.len());
        let by_pick = by_pick.first(picks);
        let by_end = by_pick.transposed();
        let ends = by_end.period();
        let by_end = by_end.first(ends);
        let by_pick = if by_end.lines() == across { by_pick } else { by_end.transposed() };
        let (of_ends, of_picks) = (by_end.passages(), by_pick.passages());
        let weave = Weave(Arc::new(Sides { by_pick, by_end, of_picks, of_ends }));
        weave.check()?;
        Ok(weave)
    }

    /// A thread that never changes face is not woven in.
    fn check(&self) -> Result<()> {
        let loose = |system: System| {
            let thread = self.passages(system).iter().position(|n| *n == 0)?;
            Some((thread, self.by(system).get(thread, 0)))
        };
        if let Some((end, up)) = loose(System::Warp) {
            let (never, now) = if up { ("lowered", "raised") } else { ("raised", "lowered") };
            return Err(Error::range(format!(
                "end {} is never {never}: it is {now} on every pick, floats out of the repeat and is \
                 not woven in; have it {never} on one pick at least",
                end + 1
            )));
        }
        if let Some((pick, up)) = loose(System::Weft) {
            let (is, change) = if up { ("under", "lower") } else { ("over", "raise") };
            return Err(Error::range(format!(
                "pick {} lies {is} every end: it floats out of the repeat and is not woven in; {change} \
                 one end at least on it",
                pick + 1
            )));
        }
        Ok(())
    }

    /// Ends of the repeat.
    pub fn ends(&self) -> usize {
        self.0.by_end.lines()
    }
    /// Picks of the repeat.
    pub fn picks(&self) -> usize {
        self.0.by_pick.lines()
    }
    /// True where the warp is up. Both count from 0, the end from the left, the pick from the first
    /// woven, drawn at the bottom; past the repeat it begins anew.
    pub fn is_up(&self, end: usize, pick: usize) -> bool {
        self.0.by_pick.get(pick % self.picks(), end % self.ends())
    }
    /// The picks, the first woven first, with `1` where the warp is up.
    pub fn rows(&self) -> Vec<String> {
        let mark = |end, pick| if self.is_up(end, pick) { '1' } else { '0' };
        (0..self.picks())
            .map(|pick| (0..self.ends()).map(|end| mark(end, pick)).collect())
            .collect()
    }
    fn by(&self, system: System) -> &Grid {
        match system {
            System::Warp => &self.0.by_end,
            System::Weft => &self.0.by_pick,
        }
    }
    /// How often each thread of a system passes from one face to the other.
    fn passages(&self, system: System) -> &[usize] {
        match system {
            System::Warp => &self.0.of_ends,
            System::Weft => &self.0.of_picks,
        }
    }
}

impl fmt::Debug for Weave {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.ends() * self.picks() <= 1024 {
            write!(f, "Weave({})", self.rows().join(" "))
        } else {
            write!(f, "Weave({} × {})", self.ends(), self.picks())
        }
    }
}
