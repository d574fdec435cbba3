//! What is counted in a weave.

use std::fmt;

use super::Weave;
use super::grid::Grid;

/// One of the two systems of threads.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum System {
    /// The ends.
    Warp,
    /// The picks.
    Weft,
}

impl System {
    /// Weft for warp, warp for weft.
    pub const fn other(self) -> System {
        match self {
            System::Warp => System::Weft,
            System::Weft => System::Warp,
        }
    }
}

/// Which threads show on the face.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Balance {
    /// More warp than weft.
    WarpFaced,
    /// More weft than warp.
    WeftFaced,
    /// As much of one as of the other.
    Even,
}

impl fmt::Display for Balance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Balance::WarpFaced => "warp-faced",
            Balance::WeftFaced => "weft-faced",
            Balance::Even => "even",
        })
    }
}

/// A float: neighbours of the other system that a thread passes on one side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Float {
    /// Of warp or weft.
    pub system: System,
    /// The thread, counted from 0.
    pub thread: usize,
    /// The first thread that it passes, counted from 0.
    pub from: usize,
    /// How many threads it passes.
    pub length: usize,
    /// True on the face: an end up, a pick over the ends.
    pub on_face: bool,
}

impl Float {
    /// Where it is, in the trade's counting from 1: `end 3 over picks 2 to 4`.
    pub fn place(&self) -> String {
        let (one, others) = match self.system {
            System::Warp => ("end", "pick"),
            System::Weft => ("pick", "end"),
        };
        let side = if self.on_face { "over" } else { "under" };
        let (thread, first) = (self.thread + 1, self.from + 1);
        match self.length {
            1 => format!("{one} {thread} {side} {others} {first}"),
            n => format!("{one} {thread} {side} {n} {others}s from {others} {first}"),
        }
    }
}

impl Weave {
    /// How often each thread of a system passes from one face to the other in the repeat, going
    /// round: the first thread joins the last.
    pub fn interlacings(&self, system: System) -> Vec<usize> {
        self.passages(system).to_vec()
    }
    /// All passages of a system in the repeat.
    fn all_passages(&self, system: System) -> usize {
        self.passages(system).iter().sum()
    }
    fn squares(&self) -> usize {
        self.ends() * self.picks()
    }
    /// Threads to an interlacing, over all threads of a system: F.
    pub fn average_float(&self, system: System) -> f64 {
        self.squares() as f64 / self.all_passages(system) as f64
    }
    /// Threads to an interlacing, thread by thread.
    pub fn average_floats(&self, system: System) -> Vec<f64> {
        let across = self.by(system).len() as f64;
        self.interlacings(system).into_iter().map(|i| across / i as f64).collect()
    }
    /// Interlacings of a thread of a system in a number of threads of the other, on average.
    pub fn interlacings_in(&self, system: System, threads: usize) -> f64 {
        threads as f64 / self.average_float(system)
    }
    /// Interlacings over the most that there could be: 1 for plain.
    pub fn interlacement_ratio(&self) -> f64 {
        self.crossing_firmness() / 2.0
    }
    /// The crossing-over firmness factor: passages of warp and weft to a crossing of threads.
    pub fn crossing_firmness(&self) -> f64 {
        let passages = self.all_passages(System::Warp) + self.all_passages(System::Weft);
        passages as f64 / self.squares() as f64
    }
    /// The floating-yarn factor: by how many threads the floats of both systems exceed one, to a
    /// crossing of threads.
    pub fn floating_factor(&self) -> f64 {
        // The floats of a thread fill it and each begins at a passage: what they exceed one by is what
        // the passages leave.
        let passages = self.all_passages(System::Warp) + self.all_passages(System::Weft);
        (2 * self.squares() - passages) as f64 / self.squares() as f64
    }
    /// Ashenhurst's ratio R/(R + I) for the sett of a system: which part of the room its threads take,
    /// while the interlacings of the other system take the rest.
    pub fn ashenhurst_ratio(&self, system: System) -> f64 {
        let float = self.average_float(system.other());
        float / (float + 1.0)
    }
    /// Share of the crossings where the warp is up.
    pub fn warp_up(&self) -> f64 {
        self.0.by_pick.filled() as f64 / self.squares() as f64
    }
    /// Which threads show on the face.
    pub fn balance(&self) -> Balance {
        match (2 * self.0.by_pick.filled()).cmp(&self.squares()) {
            std::cmp::Ordering::Greater => Balance::WarpFaced,
            std::cmp::Ordering::Less => Balance::WeftFaced,
            std::cmp::Ordering::Equal => Balance::Even,
        }
    }
    /// The floats of a system, face and back, thread by thread.
    pub fn floats(&self, system: System) -> impl Iterator<Item = Float> + '_ {
        (0..self.by(system).lines()).flat_map(move |thread| self.floats_of(system, thread))
    }
    fn floats_of(&self, system: System, thread: usize) -> impl Iterator<Item = Float> + use<'_> {
        let grid = self.by(system);
        let starts: Vec<usize> = starts(grid, thread).collect();
        (0..starts.len()).map(move |k| {
            let from = starts[k];
            let to = starts.get(k + 1).copied().unwrap_or(starts[0] + grid.len());
            Float {
                system,
                thread,
                from,
                length: to - from,
                on_face: grid.get(thread, from) == (system == System::Warp),
            }
        })
    }
    /// The longest float of a system, the first of equals.
    pub fn longest_float(&self, system: System) -> Float {
        // Many threads at a time: along an end its floats lie across the picks.
        let across = match system {
            System::Warp => &self.0.by_pick,
            System::Weft => &self.0.by_end,
        };
        let (thread, from, length) = across.longest_across();
        let on_face = self.by(system).get(thread, from) == (system == System::Warp);
        Float { system, thread, from, length, on_face }
    }
}

/// Where the floats of a thread begin.
fn starts(grid: &Grid, thread: usize) -> impl Iterator<Item = usize> + '_ {
    grid.changes(thread).enumerate().flat_map(|(k, word)| {
        let mut rest = word;
        std::iter::from_fn(move || {
            let bit = (rest != 0).then(|| rest.trailing_zeros() as usize)?;
            rest &= rest - 1;
            Some(k * 64 + bit)
        })
    })
}
