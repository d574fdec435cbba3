//! Many simulated lots on all cores: the same bytes on any number of cores.

use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};

use super::Plan;
use super::chain::simulate;
use super::chance::Deviates;
use super::given::{Draw, Values};
use super::tree::forward::Carried;
use crate::error::{Error, Result};

/// Simulated lots that a thread takes at a time.
pub(super) const BLOCK: usize = 2048;

/// The most simulated lots of one run: about a hundred bytes of each are kept.
pub const MOST_LOTS: usize = 10_000_000;

/// How a plan is run.
///
/// ```
/// use hankwise::plan::Run;
///
/// let run = Run { lots: 1000, seed: 7, ..Run::default() };
/// assert_eq!(Run::default().lots, 100_000);
/// # let _ = run;
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Run {
    /// Number of simulated lots; with 0 only the planned values are calculated.
    pub lots: usize,
    /// Seed of the simulated lots: the same seed gives the same lots.
    pub seed: u64,
    /// Threads that work on them; the result is the same for any number.
    pub threads: usize,
}

impl Default for Run {
    /// 100,000 simulated lots with seed 1, on all cores.
    fn default() -> Self {
        let threads = std::thread::available_parallelism().map_or(1, std::num::NonZero::get);
        Run { lots: 100_000, seed: 1, threads }
    }
}

impl Run {
    /// Without simulated lots: the planned values only.
    pub fn planned() -> Self {
        Run { lots: 0, ..Run::default() }
    }
}

/// Called with how many simulated lots are done; says whether to go on.
pub(super) type Progress<'a> = dyn FnMut(usize) -> bool + 'a;

/// One simulated lot: its values, the deviates of the open ones, and its number.
pub(super) struct Lot<'a> {
    pub(super) values: Values<'a, f64>,
    pub(super) z: &'a [f64],
    pub(super) number: usize,
}

/// Blocks of simulated lots.
pub(super) struct Blocks<T> {
    pub(super) blocks: Vec<T>,
    /// For each open value, the lots in which it was held at the end of what is possible.
    pub(super) held: Vec<usize>,
}

/// Simulated lots in blocks, each lot made by `make`.
///
/// Blocks come back in order, so what is summed over them is the same for any number of threads.
pub(super) fn in_blocks<T: Send>(
    plan: &Plan,
    run: &Run,
    progress: &mut Progress<'_>,
    make: impl Fn(&Lot<'_>, &mut T) + Sync,
    start: impl Fn(usize) -> T + Sync,
) -> Result<Blocks<T>> {
    let Run { lots, seed, threads } = *run;
    if lots > MOST_LOTS {
        return Err(Error::range(format!(
            "{lots} simulated lots are not possible; write at most {MOST_LOTS}"
        )));
    }
    let likely = plan.likely();
    let open = plan.open();
    let draws: Vec<Draw> = open.iter().map(|place| plan.given[*place].draw()).collect();
    let held: Vec<AtomicUsize> = open.iter().map(|_| AtomicUsize::new(0)).collect();
    let blocks = lots.div_ceil(BLOCK);
    let (next, done) = (AtomicUsize::new(0), AtomicUsize::new(0));
    let stop = AtomicBool::new(false);
    let results: Mutex<Vec<Option<T>>> = Mutex::new((0..blocks).map(|_| None).collect());

    let work = |after_each: &mut dyn FnMut()| {
        let mut values = likely.clone();
        let mut deviates = Deviates::new(seed);
        let mut z = vec![0.0; open.len()];
        loop {
            let block = next.fetch_add(1, Ordering::Relaxed);
            if block >= blocks || stop.load(Ordering::Relaxed) {
                return;
            }
            let first = block * BLOCK;
            let count = BLOCK.min(lots - first);
            let mut made = start(count);
            for number in first..first + count {
                deviates.fill(number as u64, &mut z);
                for (((place, draw), z), held) in open.iter().zip(&draws).zip(&z).zip(&held) {
                    let (value, at_end) = draw.at(*z);
                    values[*place] = value;
                    if at_end {
                        held.fetch_add(1, Ordering::Relaxed);
                    }
                }
                make(&Lot { values: Values { given: &values }, z: &z, number }, &mut made);
            }
            results.lock().unwrap_or_else(PoisonError::into_inner)[block] = Some(made);
            done.fetch_add(count, Ordering::Relaxed);
            after_each();
        }
    };
    // Asked before the first simulated lot too: another thread may be done before this one starts.
    if !progress(0) {
        stop.store(true, Ordering::Relaxed);
    }
    std::thread::scope(|scope| {
        for _ in 1..threads.min(blocks).max(1) {
            scope.spawn(|| work(&mut || {}));
        }
        // This thread works too and reports between its blocks.
        work(&mut || {
            if !progress(done.load(Ordering::Relaxed)) {
                stop.store(true, Ordering::Relaxed);
            }
        });
    });
    let results = results.into_inner().unwrap_or_else(PoisonError::into_inner);
    let whole = if stop.into_inner() { None } else { results.into_iter().collect() };
    let blocks = whole.ok_or_else(|| {
        Error::plan(format!("stopped after {} of {lots} simulated lots", done.into_inner()))
    })?;
    Ok(Blocks { blocks, held: held.into_iter().map(AtomicUsize::into_inner).collect() })
}

/// Where the deviates of a value are sorted into: bins of equal width between −3.2 and 3.2.
pub(super) const BINS: usize = 32;

/// The bin of a deviate.
#[inline]
pub(super) fn bin(z: f64) -> usize {
    ((z + 3.2) * 5.0).clamp(0.0, BINS as f64 - 1.0) as usize
}

/// The deviate in the middle of a bin.
pub(super) fn bin_middle(bin: usize) -> f64 {
    (bin as f64 + 0.5) / 5.0 - 3.2
}

/// The results of a block of simulated lots.
pub(super) struct Block {
    /// Fibre after each stage, lot by lot.
    pub(super) fibre: Vec<f64>,
    /// Pieces of each good, lot by lot.
    pub(super) pieces: Vec<f64>,
    /// Yarn beyond what the promise needs (negative: short).
    pub(super) spare: Vec<f64>,
    /// Greasy wool that would have made the promise, kg.
    pub(super) greasy: Vec<f64>,
    /// For each open value and bin of it: how many lots, their spare yarn summed, how many short.
    pub(super) bins: Vec<[f64; 3]>,
    /// How many lots cannot be, and the number of the first.
    pub(super) impossible: Impossible,
    /// For each yarn, the share of its heap that its promises need, lot by lot; nothing where all is one
    /// line.
    pub(super) shares: Vec<Vec<f64>>,
    /// Used again from lot to lot.
    scratch: Carried<f64>,
}

/// Simulated lots that cannot be: how many, and the number of the first.
#[derive(Clone, Copy, Default)]
pub(super) struct Impossible {
    pub(super) lots: usize,
    pub(super) first: Option<usize>,
}

impl Impossible {
    pub(super) fn count(&mut self, number: usize) {
        self.lots += 1;
        self.first = self.first.or(Some(number));
    }
    /// Those of several blocks, in order.
    pub(super) fn sum(all: impl Iterator<Item = Impossible>) -> Impossible {
        all.fold(Impossible::default(), |sum, one| Impossible {
            lots: sum.lots + one.lots,
            first: sum.first.or(one.first),
        })
    }
}

/// Runs the plan forward for every simulated lot.
pub(super) fn forward(
    plan: &Plan,
    run: &Run,
    progress: &mut Progress<'_>,
) -> Result<Blocks<Block>> {
    let (stages, goods) = (plan.tree.passes, plan.tree.goods.len());
    let open = plan.open().len();
    let divided = !plan.tree.is_line();
    let start = |count: usize| Block {
        fibre: Vec::with_capacity(count * stages),
        pieces: Vec::with_capacity(count * goods),
        spare: Vec::with_capacity(count),
        greasy: Vec::with_capacity(count),
        bins: vec![[0.0; 3]; open * BINS],
        impossible: Impossible::default(),
        shares: vec![Vec::new(); if divided { plan.tree.yarns.len() } else { 0 }],
        scratch: Carried::default(),
    };
    let make = |lot: &Lot<'_>, block: &mut Block| {
        let (f, p) = (block.fibre.len(), block.pieces.len());
        block.fibre.resize(f + stages, 0.0);
        block.pieces.resize(p + goods, 0.0);
        let (fibre, pieces) = (&mut block.fibre[f..], &mut block.pieces[p..]);
        let (spare, greasy) = simulate(plan, &lot.values, &mut block.scratch, fibre, pieces);
        for (shares, share) in block.shares.iter_mut().zip(plan.tree.shares(&block.scratch)) {
            shares.push(share);
        }
        if !plan.can_be(&lot.values, fibre, pieces, spare, greasy) {
            block.impossible.count(lot.number);
        }
        block.spare.push(spare);
        block.greasy.push(greasy);
        for (place, z) in lot.z.iter().enumerate() {
            let [count, sum, short] = &mut block.bins[place * BINS + bin(*z)];
            *count += 1.0;
            *sum += spare;
            *short += f64::from(u8::from(spare < 0.0));
        }
    };
    let made = in_blocks(plan, run, progress, make, start)?;
    let impossible = Impossible::sum(made.blocks.iter().map(|block| block.impossible));
    plan.refuse_impossible(run, impossible)?;
    Ok(made)
}
