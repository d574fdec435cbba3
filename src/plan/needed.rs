//! Backward: how much greasy wool to take in.

use std::fmt;
use std::sync::Arc;

use super::Plan;
use super::given::Values;
use super::lots::{Blocks, Impossible, Lot, MOST_LOTS, Run, in_blocks};
use super::screen::{listed, pieces};
use crate::error::{Error, Result};
use crate::number::{Number, V};
use crate::quantity::Mass;
use crate::quantity::print::{constant, figure, fixed};
use crate::worked::{Tape, Worked, Working};

/// The greasy mass to take in.
#[derive(Clone, Debug)]
pub struct Needed {
    /// The goods asked for.
    pub goods: Vec<(String, u32)>,
    /// Greasy mass with the planned values, kg.
    pub planned: f64,
    /// Greasy mass that suffices with the confidence asked for, kg; the planned mass where nothing
    /// is uncertain.
    pub greasy_mass: f64,
    /// The confidence asked for.
    pub confidence: f64,
    /// Number of simulated lots.
    pub simulated: usize,
    /// The seed of the simulated lots.
    pub seed: u64,
    /// The working of the planned mass.
    pub working: Working,
    /// What must come into each stage with the planned values: the stage, clean dry fibre, kg, and the same
    /// on the scale. Nothing for stages that these goods do not pass.
    pub stages: Vec<(String, f64, f64)>,
    /// What is unusual in the simulated lots.
    pub warnings: Vec<String>,
}

impl fmt::Display for Needed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        // Up to the next 100 g, so that the mass as printed is enough.
        let up = |kg: f64| fixed((kg * 10.0 - 1e-9).ceil() / 10.0, 1);
        let goods: Vec<String> =
            self.goods.iter().map(|(name, n)| pieces(f64::from(*n), name)).collect();
        write!(f, "Take in {} kg of greasy wool for {} ", up(self.greasy_mass), listed(&goods))?;
        if self.simulated == 0 {
            return f.write_str("(with the planned values; no lots were simulated).");
        }
        write!(
            f,
            "({} % sure; {} kg with the planned values; {} simulated lots, seed {}).",
            figure(self.confidence * 100.0),
            up(self.planned),
            fixed(self.simulated as f64, 0),
            self.seed
        )?;
        let at: Vec<String> = self
            .stages
            .iter()
            .map(|(stage, _, mass)| format!("{stage} {} kg", up(*mass)))
            .collect();
        if !at.is_empty() {
            write!(f, "\nInto each stage, on the scale, planned: {}.", at.join(", "))?;
        }
        self.warnings.iter().try_for_each(|warning| write!(f, "\nUnusual: {warning}"))
    }
}

impl Plan {
    /// The greasy mass for a number of each good, all of them together with a confidence. Goods that
    /// are not named are not made; with no goods named at all, the promise of the lot is meant.
    pub fn needed(&self, goods: &[(String, u32)], confidence: f64, run: &Run) -> Result<Needed> {
        self.needed_with(goods, confidence, run, &mut |_| true)
    }

    /// [`Plan::needed`], with `progress` called with how many simulated lots are done; where it gives
    /// false, the run stops with an error.
    pub fn needed_with(
        &self,
        goods: &[(String, u32)],
        confidence: f64,
        run: &Run,
        progress: &mut dyn FnMut(usize) -> bool,
    ) -> Result<Needed> {
        if !(confidence > 0.0 && confidence < 1.0) {
            return Err(Error::range(format!(
                "a confidence of {confidence} is not possible; write a fraction between 0 and 1 such as 0.95"
            )));
        }
        let mut pieces = vec![0.0; self.tree.goods.len()];
        if goods.is_empty() {
            for (pieces, good) in pieces.iter_mut().zip(&self.tree.goods) {
                *pieces = good.promised.map_or(0.0, f64::from);
            }
        }
        for (name, count) in goods {
            pieces[self.good(name)?] = f64::from(*count);
        }
        if pieces.iter().sum::<f64>() == 0.0 {
            return Err(Error::plan(format!(
                "{}: no goods are asked for; name at least one piece, such as {} = 12",
                self.file(),
                self.tree.goods.first().map_or("hank", |g| g.name.as_str())
            )));
        }
        let tape = Tape::new();
        let root = {
            let given: Vec<Worked<'_>> = self.given.iter().map(|g| g.enter(&tape)).collect();
            let values = Values { given: &given };
            self.greasy(&values, &pieces).v().0
        };
        let planned = crate::number::Number::value(&root);
        let root = root.arg();
        let recording = tape.finish();
        let stages = self.needed_at(&recording);
        let working = Working::new(Arc::new(recording), root);

        let uncertain = self.given.iter().any(|g| g.spread.is_open());
        let run = Run { lots: if uncertain { run.lots } else { 0 }, ..*run };
        let (mut greasy_mass, mut warnings) = (planned, Vec::new());
        if run.lots > 0 {
            resolved(confidence, run.lots)?;
            let start = |lots| (Vec::with_capacity(lots), Impossible::default());
            let make = |lot: &Lot<'_>, (masses, impossible): &mut (Vec<f64>, Impossible)| {
                let greasy = self.greasy(&lot.values, &pieces).value();
                if !(greasy > 0.0 && greasy.is_finite()) {
                    impossible.count(lot.number);
                }
                masses.push(greasy);
            };
            let Blocks { blocks, held } = in_blocks(self, &run, progress, make, start)?;
            warnings = self.held(&run, &held);
            self.refuse_impossible(&run, Impossible::sum(blocks.iter().map(|block| block.1)))?;
            let mut greasy: Vec<f64> = blocks.into_iter().flat_map(|block| block.0).collect();
            // The smallest mass that suffices in at least that share of the simulated lots.
            let place = ((confidence * run.lots as f64).ceil() as usize).clamp(1, run.lots) - 1;
            greasy_mass = *greasy.select_nth_unstable_by(place, f64::total_cmp).1;
        }
        let goods = self
            .tree
            .goods
            .iter()
            .zip(&pieces)
            .filter(|(_, n)| **n > 0.0)
            .map(|(good, n)| (good.name.clone(), *n as u32))
            .collect();
        let Run { lots: simulated, seed, .. } = run;
        Ok(Needed {
            goods,
            planned,
            greasy_mass,
            confidence,
            simulated,
            seed,
            working,
            stages,
            warnings,
        })
    }
}

impl Plan {
    /// What must come into each stage, from what was recorded going up.
    fn needed_at(&self, recording: &crate::worked::Recording) -> Vec<(String, f64, f64)> {
        let nominal = super::chain::Nominal::new(self);
        let passes = self.tree.all_passes();
        let needed = passes.filter_map(|pass| {
            let step = recording.find(&format!("{}.fibre_needed", pass.name))?;
            let fibre = recording.steps[step].value;
            let before = nominal.flow[pass.place].0;
            let state = if before.fibre > 0.0 { before.total() / before.fibre } else { 1.0 };
            (fibre > 0.0).then(|| (pass.name.clone(), fibre, fibre * state))
        });
        needed.collect()
    }

    /// The greasy wool for some pieces of each good. Of several fleeces all are taken in the proportion in
    /// which they came, so that the scarcest suffices.
    pub(super) fn greasy<N: Number>(&self, values: &Values<'_, N>, pieces: &[f64]) -> Mass<N> {
        let tree = &self.tree;
        let (mut ends, mut needs) = (Vec::new(), Vec::new());
        tree.yarn_ends(values, &mut ends);
        tree.needs(values, &ends, &mut needs);
        let number = |good: &super::goods::Good| {
            let place = tree.goods.iter().position(|other| other.name == good.name)?;
            Some(V::constant(pieces[place])).filter(|_| pieces[place] > 0.0)
        };
        let each = tree.greasy_for(values, &needs, &number, None);
        if let [one] = each[..] {
            return one;
        }
        let have = |place: usize| V(values.at(*tree.fleeces[place].inputs.greasy.inner()));
        let all = V::sum((0..each.len()).map(have));
        let most = each.iter().enumerate().map(|(place, mass)| mass.v() / have(place));
        let most = most.reduce(V::max).unwrap_or(V::constant(0.0));
        let words = "greasy wool to take in, of all fleeces together";
        super::stage::named("promise", "greasy_needed", words, Mass::from(most * all))
    }
}

/// Simulated lots that must lie on either side of a confidence for it to be more than the luck of a few.
const BEYOND: f64 = 5.0;

/// Refuses a confidence that so few lots cannot show.
fn resolved(confidence: f64, lots: usize) -> Result<()> {
    let rest = confidence.min(1.0 - confidence);
    // One and a bit: 0.99 is not exact in binary.
    if rest * lots as f64 >= BEYOND * (1.0 - 1e-9) {
        return Ok(());
    }
    let percent = |x: f64| format!("{} %", constant(100.0 * x));
    let enough = (BEYOND / rest * (1.0 - 1e-9)).ceil();
    let end = BEYOND / lots as f64;
    let mut ways = Vec::new();
    if enough <= MOST_LOTS as f64 {
        ways.push(format!("simulate at least {} lots", fixed(enough, 0)));
    }
    if end < 0.5 {
        let (end, bound) =
            if confidence > 0.5 { (1.0 - end, "at most") } else { (end, "at least") };
        ways.push(format!("ask for a confidence of {bound} {}", percent(end)));
    }
    Err(Error::range(format!(
        "{} simulated lots cannot show a confidence of {}: fewer than {BEYOND} of them lie beyond it; {}",
        fixed(lots as f64, 0),
        percent(confidence),
        ways.join(", or ")
    )))
}
