//! What a plan gives.

use std::sync::Arc;

use super::chain::{Loss, Nominal};
use super::changeover::Changeover;
use super::doubt::{self, Doubt};
use super::growers::Grower;
use super::lots::{self, Run};
use super::say::Say;
use super::split::Split;
use super::stage::Setting;
use super::tree::Pass;
use super::{Plan, Stock};
use crate::error::{Error, Result, did_you_mean};
use crate::worked::{Arg, Recording, Working};

/// A value over the simulated lots.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Band {
    /// One simulated lot in twenty is below.
    pub low: f64,
    /// Half of the simulated lots are below.
    pub middle: f64,
    /// One simulated lot in twenty is above.
    pub high: f64,
}

impl Band {
    /// The band of some values, which are reordered.
    pub(super) fn of(values: &mut [f64]) -> Band {
        let n = values.len();
        let at = |share: f64| (((n - 1) as f64 * share).round()) as usize;
        let mut take = |place: usize| *values.select_nth_unstable_by(place, f64::total_cmp).1;
        Band { low: take(at(0.05)), middle: take(at(0.5)), high: take(at(0.95)) }
    }
    pub(super) fn times(self, factor: f64) -> Band {
        Band { low: self.low * factor, middle: self.middle * factor, high: self.high * factor }
    }
}

/// What comes out at a stage.
#[derive(Clone, Debug)]
pub struct StageResult {
    /// The stage, such as `card`, or `weft.card` where several yarns pass it.
    pub name: String,
    /// The machine, as the route names it.
    pub machine: String,
    /// The yarn, heap or sort that it is for, where there are several.
    pub of: String,
    /// What comes out of it, in words.
    pub makes: String,
    /// What to beware of at the machine.
    pub cautions: &'static [&'static str],
    /// What comes out, by its parts, with the planned values.
    pub stock: Stock,
    /// Fibre that comes out, in kg at the stated regain, with the planned values.
    pub stated_mass: f64,
    /// This mass over the simulated lots.
    pub band: Option<Band>,
}

/// How many of a kind of goods the lot makes.
#[derive(Clone, Debug)]
pub struct GoodResult {
    /// Its name.
    pub name: String,
    /// How many were promised.
    pub promised: Option<u32>,
    /// True where it takes what the others leave.
    pub takes_rest: bool,
    /// Where the promise is written.
    pub origin: String,
    /// Whole pieces with the planned values.
    pub planned: f64,
    /// What the yarn left when its turn came would make, with the planned values, not rounded down.
    pub unrounded: f64,
    /// Whole pieces over the simulated lots.
    pub band: Option<Band>,
    /// Share of the simulated lots with at least as many as were promised.
    pub chance: Option<f64>,
    /// Pieces that can be promised safely: these numbers of all goods together are made in at least
    /// 19 simulated lots of 20.
    pub safe: Option<f64>,
}

/// How much the lot has to spare beyond the whole promise, or how far it falls short.
#[derive(Clone, Debug)]
pub struct Spare {
    /// The good in whose pieces it is counted.
    pub good: String,
    /// Pieces to spare (negative: short) with the planned values, not rounded.
    pub planned: f64,
    /// These pieces over the simulated lots.
    pub band: Option<Band>,
    /// Share of the simulated lots in which the whole promise is met.
    pub chance: Option<f64>,
    /// Greasy wool that keeps the whole promise in 19 simulated lots of 20, kg.
    pub safe_greasy_mass: Option<f64>,
}

/// A line of the account.
#[derive(Clone, Debug)]
pub struct Account {
    /// The stage.
    pub stage: String,
    /// Where it went (or, with `added`, came from).
    pub to: String,
    /// True where it came on.
    pub added: bool,
    /// Name of the value of its fibre, where it has one.
    pub key: String,
    /// What it was.
    pub stock: Stock,
}

/// The simulated lots themselves, for pictures and further study.
#[derive(Clone, Debug, Default)]
pub struct Samples {
    /// Whole pieces of each good, a column each.
    pub pieces: Vec<Vec<f64>>,
    /// Pieces to spare beyond the whole promise (negative: short), not rounded.
    pub spare: Vec<f64>,
}

/// What a plan gives: the promise, the stages, the settings, the account, what moves the answer.
#[derive(Clone, Debug)]
pub struct PlanResult {
    /// Name of the lot.
    pub name: String,
    /// What the lot is filed under.
    pub id: String,
    /// The file that it was read from.
    pub file: String,
    /// SHA-256 of the file's text.
    pub hash: String,
    /// How many values of the lot file are uncertain.
    pub uncertain: usize,
    /// Number of simulated lots.
    pub simulated: usize,
    /// Their seed.
    pub seed: u64,
    /// The regain at which masses are stated, as a fraction.
    pub stated_regain: f64,
    /// Greasy mass taken in, kg, and the clean dry fibre in it.
    pub intake: (f64, f64),
    /// The stages in order.
    pub stages: Vec<StageResult>,
    /// The goods in order.
    pub goods: Vec<GoodResult>,
    /// What is spare beyond the whole promise, or short of it.
    pub spare: Spare,
    /// What to set, weigh and expect.
    pub settings: Vec<Setting>,
    /// What moves the answer most, first.
    pub measure_first: Vec<Doubt>,
    /// Every kilogram.
    pub account: Vec<Account>,
    /// Whose the goods are, where several growers' wool went into one heap.
    pub growers: Vec<Grower>,
    /// How heaps of several yarns are best weighed out.
    pub splits: Vec<Split>,
    /// The changes on the machines, in order.
    pub changeovers: Vec<Changeover>,
    /// What is left of each yarn, sort and heap with the planned values: its name, what it is, and how much
    /// is on the scale, kg.
    pub left_over: Vec<(String, &'static str, f64)>,
    /// Where the values come from: the lot's file, the mill's, the handbook, a guess; how many of each.
    pub origins: Vec<(String, usize)>,
    /// Values of the handbook that stand where the files say nothing: `lot.regain 14 %`.
    pub handbook: Vec<String>,
    /// What the mill says of a machine: the stage, look, listen or feel, and what it says.
    pub craft: Vec<(String, &'static str, String)>,
    /// Values that look wrong.
    pub warnings: Vec<String>,
    /// Obstacles to making the yarn and the goods at all, with the planned values.
    pub obstacles: Vec<String>,
    /// For each good that the planned values do not make as promised: where the promise is written, how
    /// many are planned, how many are short.
    pub shortfalls: Vec<String>,
    /// What would make the promise safe, where it is not: a smaller promise, or more wool.
    pub advice: Option<String>,
    /// The simulated lots.
    pub samples: Samples,
    pub(super) say: Say,
    /// Nothing is divided but among the goods.
    pub(super) is_line: bool,
    /// Kilograms are as weighed: the clean fibre is not known.
    pub(super) weighed: bool,
    /// What can do harm at the machines after the yarn.
    pub(super) cautions: Vec<(String, &'static [&'static str])>,
    /// What it was run from.
    pub(super) plan: Plan,
    recording: Arc<Recording>,
}

impl Plan {
    /// Runs the plan: carries the planned values through and simulates lots.
    pub fn run(&self, run: &Run) -> Result<PlanResult> {
        self.run_with(run, &mut |_| true)
    }

    /// [`Plan::run`], with `progress` called with how many simulated lots are done; where it gives
    /// false, the run stops with an error.
    pub fn run_with(
        &self,
        run: &Run,
        progress: &mut dyn FnMut(usize) -> bool,
    ) -> Result<PlanResult> {
        let nominal = Nominal::new(self);
        let label = if self.tree.weighed { 0.0 } else { self.given[self.label_regain].base() };
        let uncertain = self.given.iter().any(|g| g.spread.is_open());
        let run = Run { lots: if uncertain { run.lots } else { 0 }, ..*run };
        // What is spare is counted in pieces of the good that takes the rest, else of the last one.
        let goods = &self.tree.goods;
        let counted = goods.iter().position(|g| g.takes_rest).unwrap_or(goods.len() - 1);
        // Where the lot is divided, what is spare is a share of the wool: of so many pieces.
        let scale = nominal.unrounded[counted];
        let piece = if self.tree.is_line() { nominal.each[counted] } else { 1.0 / scale };

        let mut result = self.planned_result(&nominal, label, counted, piece);
        if run.lots > 0 {
            let lots::Blocks { blocks, held } = lots::forward(self, &run, progress)?;
            result.warnings.extend(self.held(&run, &held));
            result.simulated = run.lots;
            result.seed = run.seed;
            result.measure_first = doubt::rank(self, &blocks, counted, scale);
            if !self.tree.is_line() {
                result.splits =
                    self.splits(&blocks, |heap| (nominal.heaps[heap], nominal.heap_mass[heap]));
            }
            result.spread(&blocks, 1.0 + label, piece, run.threads);
        }
        result.shortfalls = self.shortfalls(&result);
        result.advice = self.advice(&nominal, &result);
        result.recording = Arc::new(nominal.recording);
        Ok(result)
    }

    fn planned_result(
        &self,
        nominal: &Nominal,
        label: f64,
        counted: usize,
        piece: f64,
    ) -> PlanResult {
        let stage = |(pass, (_, stock)): (&Pass, &(Stock, Stock))| StageResult {
            name: pass.name.clone(),
            machine: pass.machine.clone(),
            of: pass.of.clone(),
            makes: pass.makes().to_owned(),
            cautions: pass.stage.cautions(),
            stock: *stock,
            stated_mass: stock.fibre * (1.0 + label),
            band: None,
        };
        let good = |(place, good): (usize, &super::goods::Good)| GoodResult {
            name: good.name.clone(),
            promised: good.promised,
            takes_rest: good.takes_rest,
            origin: good.origin.clone(),
            planned: nominal.made[place],
            unrounded: nominal.unrounded[place],
            band: None,
            chance: None,
            safe: None,
        };
        let greasy = nominal.fleeces.iter().fold(Stock::default(), |sum, one| sum.and(one));
        PlanResult {
            name: self.name.clone(),
            id: self.id.clone(),
            file: self.file().to_owned(),
            hash: self.hash(),
            uncertain: self.given.iter().filter(|g| g.spread.is_open()).count(),
            simulated: 0,
            seed: 0,
            stated_regain: label,
            intake: (greasy.total(), greasy.fibre),
            stages: self.tree.all_passes().zip(&nominal.flow).map(stage).collect(),
            goods: self.tree.goods.iter().enumerate().map(good).collect(),
            spare: Spare {
                good: self.tree.goods[counted].name.clone(),
                planned: nominal.spare / piece,
                band: None,
                chance: None,
                safe_greasy_mass: None,
            },
            settings: nominal.settings.clone(),
            measure_first: Vec::new(),
            account: account(self, nominal),
            growers: self.growers(nominal),
            splits: Vec::new(),
            changeovers: self.changeovers(nominal),
            left_over: self.left_over(nominal),
            origins: self.origins(),
            handbook: self.handbook(),
            craft: self.craft(),
            warnings: self.warnings.clone(),
            obstacles: self.obstacles(nominal),
            shortfalls: Vec::new(),
            advice: None,
            samples: Samples::default(),
            say: self.say.clone(),
            is_line: self.tree.is_line(),
            weighed: self.tree.weighed,
            cautions: self.cautions_after_yarn(),
            plan: self.clone(),
            recording: Arc::default(),
        }
    }
}

impl Plan {
    /// What is left of everything that is not nothing.
    fn left_over(&self, nominal: &Nominal) -> Vec<(String, &'static str, f64)> {
        let tree = &self.tree;
        let sorts = tree.sorts.iter().zip(&nominal.left_sorts);
        let sorts = sorts.map(|(sort, left)| (sort.name.clone(), "scoured", left.total()));
        let heaps = tree.heaps.iter().zip(&nominal.unspun);
        let heaps = heaps.map(|(heap, left)| (heap.name.clone(), "unspun", left.total()));
        let yarns = tree.yarns.iter().zip(&nominal.yarns).map(|(yarn, made)| {
            let Stock { fibre, .. } = made.finished;
            let left = if fibre > 0.0 { made.left_over / fibre } else { 0.0 };
            (yarn.name.clone(), "yarn", made.finished.total() * left)
        });
        let all = sorts.chain(heaps).chain(yarns);
        all.filter(|(_, _, kg)| *kg > 1e-9).collect()
    }
    /// Where the values come from, and how many from each.
    fn origins(&self) -> Vec<(String, usize)> {
        let mut all: Vec<(String, usize)> = Vec::new();
        for given in &self.given {
            match all.iter_mut().find(|(from, _)| *from == given.from) {
                Some((_, count)) => *count += 1,
                None => all.push((given.from.clone(), 1)),
            }
        }
        all
    }
    /// Values that stand where the files say nothing or ask for the handbook's.
    fn handbook(&self) -> Vec<String> {
        let asked = |given: &&super::Given| {
            given.from == "handbook" || (given.from == "default" && ASSUMED.contains(&given.symbol))
        };
        let words = |given: &super::Given| format!("{} {}", given.key, given.typed);
        self.given.iter().filter(asked).map(words).collect()
    }
    /// What the mill says of the machines of this lot.
    fn craft(&self) -> Vec<(String, &'static str, String)> {
        let passes = self.tree.all_passes();
        let said = passes.flat_map(|pass| {
            pass.craft.iter().map(|(sense, said)| (pass.name.clone(), *sense, said.clone()))
        });
        said.collect()
    }
    /// What can do harm at the machines of the goods, each once.
    fn cautions_after_yarn(&self) -> Vec<(String, &'static [&'static str])> {
        let mut all: Vec<(String, &'static [&'static str])> = Vec::new();
        for one in self.tree.goods.iter().flat_map(super::goods::Good::cautions) {
            if !all.iter().any(|(machine, _)| *machine == one.0) {
                all.push(one);
            }
        }
        all
    }
}

/// Symbols of the values that are assumed of wool where nothing is said: its regain, its vegetable matter.
const ASSUMED: [&str; 2] = ["R", "v_m"];

/// How many lots of `n` are at least 19 in 20.
fn nineteen_in_twenty(n: usize) -> usize {
    (n * 19).div_ceil(20)
}

/// Every kilogram: what left each stage, what came on, what the goods hold, what is left.
fn account(plan: &Plan, nominal: &Nominal) -> Vec<Account> {
    let row = |added: bool| {
        move |loss: &Loss| Account {
            stage: loss.stage.clone(),
            to: loss.to.clone(),
            added,
            key: loss.key.clone(),
            stock: loss.stock,
        }
    };
    let mut rows: Vec<Account> = nominal.lost.iter().map(row(false)).collect();
    rows.extend(nominal.added.iter().map(row(true)));
    let tree = &plan.tree;
    let left = |stage: &str, to: &str, key: &str, stock: Stock| Account {
        stage: stage.to_owned(),
        to: to.to_owned(),
        added: false,
        key: key.to_owned(),
        stock,
    };
    for (sort, stock) in tree.sorts.iter().zip(&nominal.left_sorts) {
        if stock.total() > 0.0 {
            rows.push(left(&sort.name, "left over, scoured", "", *stock));
        }
    }
    for (heap, stock) in tree.heaps.iter().zip(&nominal.unspun) {
        if stock.total() > 0.0 {
            let name = if heap.name.is_empty() { "heap" } else { &heap.name };
            rows.push(left(name, "left over, unspun", "", *stock));
        }
    }
    // What is on the scoured yarn goes with its fibre.
    let with_fibre = |yarn: usize, fibre: f64| {
        let finished = nominal.yarns[yarn].finished;
        if finished.fibre > 0.0 { finished.share(fibre / finished.fibre) } else { finished }
    };
    for used in &nominal.used {
        let stock = with_fibre(used.yarn, used.fibre.value());
        rows.push(left(&used.stage, used.to, &used.key, stock));
    }
    for (place, (yarn, made)) in tree.yarns.iter().zip(&nominal.yarns).enumerate() {
        let (stage, key) = if tree.yarns.len() == 1 {
            ("yarn", "promise.left_over".to_owned())
        } else {
            (yarn.name.as_str(), format!("{}.left_over", yarn.key))
        };
        rows.push(left(stage, "left over", &key, with_fibre(place, made.left_over)));
        // Yarn from stock is no part of the wool that came in.
        if matches!(yarn.from, super::tree::From::Stock(_)) {
            let mut stock = left(stage, "yarn from stock", "", made.begun);
            stock.added = true;
            rows.push(stock);
        }
    }
    rows
}

impl PlanResult {
    /// Fills in what the simulated lots say.
    fn spread(&mut self, blocks: &[lots::Block], stated: f64, piece: f64, threads: usize) {
        let (stages, goods) = (self.stages.len(), self.goods.len());
        let simulated = self.simulated;
        let column =
            |from: fn(&lots::Block) -> &Vec<f64>, place: usize, width: usize| -> Vec<f64> {
                let mut all = Vec::with_capacity(simulated);
                for block in blocks {
                    all.extend(from(block).chunks_exact(width).map(|lot| lot[place]));
                }
                all
            };
        let bands = |range: std::ops::Range<usize>| -> Vec<Band> {
            range.map(|k| Band::of(&mut column(|b| &b.fibre, k, stages))).collect()
        };
        let middle = if threads > 1 { stages / 2 } else { 0 };
        let bands = std::thread::scope(|scope| {
            let first = scope.spawn(|| bands(0..middle));
            let second = bands(middle..stages);
            let mut all = first.join().unwrap_or_default();
            all.extend(second);
            all
        });
        for (stage, band) in self.stages.iter_mut().zip(bands) {
            stage.band = Some(band.times(stated));
        }
        for (place, good) in self.goods.iter_mut().enumerate() {
            let pieces = column(|b| &b.pieces, place, goods);
            if let Some(promised) = good.promised {
                let met = pieces.iter().filter(|p| **p >= f64::from(promised)).count();
                good.chance = Some(met as f64 / pieces.len() as f64);
            }
            good.band = Some(Band::of(&mut pieces.clone()));
            self.samples.pieces.push(pieces);
        }
        let met = (0..self.samples.pieces[0].len()).filter(|lot| {
            self.goods
                .iter()
                .zip(&self.samples.pieces)
                .all(|(good, pieces)| good.promised.is_none_or(|n| pieces[*lot] >= f64::from(n)))
        });
        self.spare.chance = Some(met.count() as f64 / self.simulated as f64);
        self.promise_safely();
        let mut greasy = column(|b| &b.greasy, 0, 1);
        let place = nineteen_in_twenty(greasy.len()) - 1;
        self.spare.safe_greasy_mass = Some(*greasy.select_nth_unstable_by(place, f64::total_cmp).1);
        let spare: Vec<f64> = column(|b| &b.spare, 0, 1).iter().map(|s| s / piece).collect();
        self.spare.band = Some(Band::of(&mut spare.clone()));
        self.samples.spare = spare;
    }

    /// For each good, in the order in which they are made: the greatest number that 19 simulated lots
    /// of 20 make together with the safe numbers of the goods before it.
    fn promise_safely(&mut self) {
        let mut keep: Vec<usize> = (0..self.simulated).collect();
        let place = self.simulated - nineteen_in_twenty(self.simulated);
        for (good, pieces) in self.goods.iter_mut().zip(&self.samples.pieces) {
            let place = place - (self.simulated - keep.len());
            let mut made: Vec<f64> = keep.iter().map(|lot| pieces[*lot]).collect();
            let safe = *made.select_nth_unstable_by(place, f64::total_cmp).1;
            keep.retain(|lot| pieces[*lot] >= safe);
            good.safe = Some(safe);
        }
    }

    /// True where the planned values keep the whole promise. How sure that is, `spare.chance` says.
    pub fn planned_enough(&self) -> bool {
        self.goods.iter().all(|g| g.promised.is_none_or(|n| g.planned >= f64::from(n)))
    }

    /// The working of a value, by its name.
    pub fn working(&self, name: &str) -> Result<Working> {
        let step = self.recording.find(name).ok_or_else(|| {
            let names = self.workings();
            let ending: Vec<&str> = names
                .iter()
                .filter(|n| n.rsplit('.').next() == Some(name))
                .map(String::as_str)
                .take(5)
                .collect();
            let instead = if ending.is_empty() {
                did_you_mean(name, names.iter().map(String::as_str)).map_or_else(
                    || "name one such as 'twister.twist' or 'card.hopper_weigh'".to_owned(),
                    |near| format!("did you mean '{near}'?"),
                )
            } else {
                format!("there are {}", ending.join(", "))
            };
            Error::notation(format!("no '{name}' in this plan; {instead}"))
        })?;
        Ok(Working::new(self.recording.clone(), Arg::Step(step)))
    }

    /// The names of all values that have a working.
    pub fn workings(&self) -> Vec<String> {
        let mut names: Vec<String> = self
            .recording
            .labels
            .values()
            .map(|l| l.name().to_owned())
            .filter(|n| n.contains('.'))
            .collect();
        names.sort();
        names.dedup();
        names
    }

    /// The names of the formulas that the plan rests on.
    pub fn formulas(&self) -> Vec<&'static str> {
        let mut names: Vec<&str> = self.recording.calls.values().map(|c| c.formula.name).collect();
        names.sort_unstable();
        names.dedup();
        names
    }

    /// The recording of the planned values.
    pub fn recording(&self) -> &Arc<Recording> {
        &self.recording
    }
}
