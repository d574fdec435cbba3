//! The draft of a weave: ends on shafts, shafts on treadles, treadles on picks.

use std::collections::HashMap;
use std::fmt;

use super::grid::Grid;
use super::{System, Weave};
use crate::error::{Error, Result};

/// How a weave is put on the loom. Shafts and treadles are numbered from 1, shaft 1 next to the
/// weaver; a treadle raises the shafts that it ties.
///
/// ```
/// use hankwise::cloth::{Draft, Weave};
///
/// let draft = Draft::new(
///     vec![1, 2, 3, 4, 2, 1, 4, 3],
///     vec![vec![1, 2], vec![2, 3], vec![3, 4], vec![4, 1]],
///     vec![1, 2, 3, 4],
/// )?;
/// assert_eq!(draft.weave()?.to_string(), "2/2 herringbone");
/// assert_eq!(Draft::of(&draft.weave()?).shafts(), 4);
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Draft {
    threading: Vec<usize>,
    tie_up: Vec<Vec<usize>>,
    treadling: Vec<usize>,
}

/// In what order ends are drawn on shafts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Drawing {
    /// 1-2-3-4.
    Straight,
    /// 1-2-3-4-3-2.
    Pointed,
    /// Straight pieces either way, with a leap between.
    Broken,
    /// None of these.
    Mixed,
}

impl fmt::Display for Drawing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Drawing::Straight => "straight",
            Drawing::Pointed => "pointed",
            Drawing::Broken => "broken",
            Drawing::Mixed => "mixed",
        })
    }
}

impl Draft {
    /// From threading, tie-up (the shafts that each treadle raises) and treadling.
    pub fn new(
        threading: Vec<usize>,
        tie_up: Vec<Vec<usize>>,
        treadling: Vec<usize>,
    ) -> Result<Draft> {
        for (list, what) in [(&threading, "threading"), (&treadling, "treadling")] {
            if list.is_empty() {
                return Err(Error::notation(format!(
                    "the {what} is empty; write numbers from 1, such as 1 2 3 4"
                )));
            }
        }
        if let Some(pick) = treadling.iter().position(|t| !(1..=tie_up.len()).contains(t)) {
            return Err(Error::range(format!(
                "pick {} wants treadle {}, and the tie-up has {}: 1 to {}; tie one more or write one of \
                 these",
                pick + 1,
                treadling[pick],
                tie_up.len(),
                tie_up.len()
            )));
        }
        Draft::drawn_on(&threading, &tie_up, "treadle")?;
        Ok(Draft { threading, tie_up, treadling })
    }

    /// From threading and lifting plan: the shafts that each pick raises.
    pub fn lifted(threading: Vec<usize>, lifts: &[Vec<usize>]) -> Result<Draft> {
        if threading.is_empty() || lifts.is_empty() {
            return Err(Error::notation("give both a threading and a lifting plan; one is empty"));
        }
        Draft::drawn_on(&threading, lifts, "pick")?;
        let mut tie_up: Vec<Vec<usize>> = Vec::new();
        let treadling = lifts
            .iter()
            .map(|lift| {
                let mut lift = lift.clone();
                lift.sort_unstable();
                lift.dedup();
                let known = tie_up.iter().position(|t| *t == lift);
                known.unwrap_or_else(|| {
                    tie_up.push(lift);
                    tie_up.len() - 1
                }) + 1
            })
            .collect();
        Ok(Draft { threading, tie_up, treadling })
    }

    /// Threading and tie-up name the same shafts.
    fn drawn_on(threading: &[usize], lifts: &[Vec<usize>], by: &str) -> Result<()> {
        let (tied, drawn) = (
            lifts.iter().flatten().copied().max().unwrap_or(0),
            threading.iter().copied().max().unwrap_or(0),
        );
        let zero = threading.contains(&0) || lifts.iter().flatten().any(|s| *s == 0);
        if zero {
            return Err(Error::range("shafts are numbered from 1; there is no shaft 0"));
        }
        if tied == 0 {
            return Err(Error::range(format!(
                "no {by} raises any shaft; write the shafts for each, such as 1 2"
            )));
        }
        if let Some(end) = threading.iter().position(|s| *s > tied) {
            let shaft = threading[end];
            return Err(Error::range(format!(
                "end {} is drawn on shaft {shaft}, and the tie-up has {tied}: no {by} raises shaft \
                 {shaft}; draw it on one of 1 to {tied}, or tie shaft {shaft}",
                end + 1,
            )));
        }
        if let Some(k) = lifts.iter().position(|lift| lift.iter().any(|s| *s > drawn)) {
            return Err(Error::range(format!(
                "{by} {} raises shaft {tied}, and the threading has {drawn}: no end is drawn on it; \
                 leave it out or draw ends on it",
                k + 1,
            )));
        }
        Ok(())
    }

    /// The draft with the fewest shafts and treadles, a treadle a pick: ends that work alike are on
    /// one shaft, and so with picks.
    pub fn of(weave: &Weave) -> Draft {
        let (threading, ends) = grouped(weave.by(System::Warp));
        let (treadling, picks) = grouped(weave.by(System::Weft));
        let raised = |pick: usize| {
            (0..ends.len()).filter(|s| weave.is_up(ends[*s], pick)).map(|s| s + 1).collect()
        };
        Draft { threading, tie_up: picks.into_iter().map(raised).collect(), treadling }
    }

    /// The weave that it gives.
    pub fn weave(&self) -> Result<Weave> {
        let shafts = self.shafts();
        let mut up = vec![false; shafts * self.tie_up.len()];
        for (treadle, tied) in self.tie_up.iter().enumerate() {
            for shaft in tied {
                up[treadle * shafts + shaft - 1] = true;
            }
        }
        Weave::from_fn(self.threading.len(), self.treadling.len(), |end, pick| {
            up[(self.treadling[pick] - 1) * shafts + self.threading[end] - 1]
        })
        .map_err(|e| e.at("draft"))
    }

    /// The shaft of each end.
    pub fn threading(&self) -> &[usize] {
        &self.threading
    }
    /// The shafts that each treadle raises.
    pub fn tie_up(&self) -> &[Vec<usize>] {
        &self.tie_up
    }
    /// The treadle of each pick.
    pub fn treadling(&self) -> &[usize] {
        &self.treadling
    }
    /// The shafts that each pick raises.
    pub fn lifts(&self) -> Vec<Vec<usize>> {
        self.treadling.iter().map(|treadle| self.tie_up[treadle - 1].clone()).collect()
    }
    /// How many shafts.
    pub fn shafts(&self) -> usize {
        self.threading.iter().copied().max().unwrap_or(0)
    }
    /// How many treadles.
    pub fn treadles(&self) -> usize {
        self.tie_up.len()
    }

    /// Ends, and so healds, on each shaft for a number of ends of the warp; the last repeat may be
    /// incomplete.
    pub fn ends_on_shafts(&self, ends: usize) -> Vec<usize> {
        let repeat = self.threading.len();
        let (whole, rest) = (ends / repeat, ends % repeat);
        let mut on = vec![0; self.shafts()];
        for (end, shaft) in self.threading.iter().enumerate() {
            on[shaft - 1] += whole + usize::from(end < rest);
        }
        on
    }

    /// In what order the ends are drawn.
    pub fn drawing(&self) -> Drawing {
        let (t, n) = (&self.threading, self.shafts());
        let straight: Vec<usize> = (1..=n).collect();
        let pointed: Vec<usize> = (1..=n).chain((2..n).rev()).collect();
        if *t == straight {
            return Drawing::Straight;
        }
        if *t == pointed {
            return Drawing::Pointed;
        }
        // Each end has a neighbour of the next shaft, on one side at least.
        let next = |a: usize, b: usize| a.abs_diff(b) == 1;
        let pieces = t.len() > 1
            && (0..t.len()).all(|k| {
                (k > 0 && next(t[k], t[k - 1])) || (k + 1 < t.len() && next(t[k], t[k + 1]))
            });
        if pieces { Drawing::Broken } else { Drawing::Mixed }
    }
}

/// The group of each line, from 1 in the order in which they appear, and a line of each.
fn grouped(grid: &Grid) -> (Vec<usize>, Vec<usize>) {
    let mut known: HashMap<&[u64], usize> = HashMap::new();
    let mut of = Vec::new();
    let groups = (0..grid.lines())
        .map(|line| {
            *known.entry(grid.line(line)).or_insert_with(|| {
                of.push(line);
                of.len()
            })
        })
        .collect();
    (groups, of)
}
