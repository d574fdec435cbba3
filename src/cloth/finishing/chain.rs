//! The chain of processes: from the loom to the finished cloth, and back.

use super::process::Process;
use super::report;
use super::state::{Stage, State, Step};
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::cloth;
use crate::error::{Error, Result};
use crate::number::{Number, V};
use crate::quantity::print::{figure, of_kind};
use crate::quantity::{
    AreaShrinkage, Crimp, Kind, Length, LinearDensity, Mass, MassLoss, MassPerArea, OverWidth,
    Ratio, Sett, Shrinkage,
};

/// What is known of a cloth before or after its finishing.
#[derive(Clone, Debug, Inputs)]
pub struct KnownCloth<N> {
    /// width
    #[q("b", 0.02..=6.0, like = "1.60 m")]
    pub width: Option<Length<N>>,
    /// length
    #[q("L", 0.05..=5000.0)]
    pub length: Option<Length<N>>,
    /// ends
    #[q("n₁", 1.0..=80.0, like = "8 ends/cm")]
    pub warp_sett: Option<Sett<N>>,
    /// picks
    #[q("n₂", 1.0..=80.0)]
    pub weft_sett: Option<Sett<N>>,
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    pub warp_count: Option<LinearDensity<N>>,
    /// count of the weft
    #[q("T₂", 5.0..=2000.0)]
    pub weft_count: Option<LinearDensity<N>>,
    /// crimp of the warp, on cloth length
    #[q("c₁", 0.0..=0.3, zero)]
    pub warp_crimp: Option<Crimp<N>>,
    /// crimp of the weft, on cloth length
    #[q("c₂", 0.0..=0.3, zero)]
    pub weft_crimp: Option<Crimp<N>>,
    /// mass per area
    #[q("ω", 20.0..=2000.0)]
    pub mass_per_area: Option<MassPerArea<N>>,
    /// mass of the piece
    #[q("m", 0.01..=500.0)]
    pub piece_mass: Option<Mass<N>>,
}

/// What [`finishing()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct FinishingInputs<N> {
    /// processes in their order
    #[rows]
    pub processes: Vec<Process<N>>,
    /// The cloth off the loom.
    #[group]
    pub cloth: KnownCloth<N>,
}

/// What [`to_weave()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct ToWeaveInputs<N> {
    /// processes in their order
    #[rows]
    pub processes: Vec<Process<N>>,
    /// The finished cloth.
    #[group]
    pub cloth: KnownCloth<N>,
    /// widest that the loom weaves
    #[q("B_m", 0.3..=6.0)]
    pub loom_width: Option<Length<N>>,
}

/// What [`finishing()`] answers.
#[derive(Clone, Debug, Results)]
pub struct FinishingResults<N> {
    /// shrinkage in width, compounded
    #[block = "All processes together"]
    pub width_shrinkage: Option<Shrinkage<N>>,
    /// shrinkage in length, compounded
    pub length_shrinkage: Option<Shrinkage<N>>,
    /// mass lost, compounded
    pub mass_loss: Option<MassLoss<N>>,
    /// woven wider than finished, on the finished width
    pub over_width: Option<OverWidth<N>>,
    /// area lost, on the area before
    pub area_shrinkage: Option<AreaShrinkage<N>>,
    /// mass per area after over before
    pub mass_per_area_factor: Option<Ratio<N>>,
    /// The cloth, stage by stage: off the loom, after each process, finished
    #[rows]
    pub stages: Vec<Stage<N>>,
}

/// What [`to_weave()`] answers.
#[derive(Clone, Debug, Results)]
pub struct ToWeaveResults<N> {
    /// The chain.
    #[part]
    pub chain: FinishingResults<N>,
    /// widest that can be finished from this loom
    #[block = "The loom"]
    pub widest_finished_width: Option<Length<N>>,
}

/// How far a mass per area that was given may be from that of the threads before it is doubted.
const DOUBTED: f64 = 0.1;

/// The names of the cloth before all processes and after them.
pub(super) const LOOM: &str = "loom";
pub(super) const FINISHED: &str = "finished";

/// Whether the cloth is known on the loom or finished.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum From {
    Loom,
    Finished,
}

impl<N: Number> KnownCloth<N> {
    /// The state of the cloth; its mass per area also from the piece or from the threads.
    fn state(&self) -> State<N> {
        let state = State {
            width: self.width,
            length: self.length,
            ends: self.warp_sett,
            picks: self.weft_sett,
            warp: self.warp_count,
            weft: self.weft_count,
            warp_crimp: self.warp_crimp,
            weft_crimp: self.weft_crimp,
            area: self.mass_per_area,
            mass: self.piece_mass,
        };
        let by_piece = || {
            let area = state.width?.v() * state.length?.v();
            Some(MassPerArea::from(1000.0 * state.mass?.v() / area))
        };
        let area = state.area.or_else(by_piece).or_else(|| state.area_of_threads());
        State { area, ..state }
    }
}

/// The states from the loom to the finished cloth.
fn states<N: Number>(known: State<N>, steps: &[Step<N>], from: From) -> Vec<State<N>> {
    let mut states = vec![known];
    match from {
        From::Loom => {
            for step in steps {
                states.push(states[states.len() - 1].after(step));
            }
        }
        From::Finished => {
            for step in steps.iter().rev() {
                states.push(states[states.len() - 1].before(step));
            }
            states.reverse();
        }
    }
    states
}

/// The states at one end of what samples leave possible: closest and heaviest, or widest and lightest.
pub(super) fn states_at(
    processes: &[Process<f64>],
    cloth: &KnownCloth<f64>,
    from: From,
    is_closer: bool,
) -> Vec<State<f64>> {
    let steps: Vec<Step<f64>> = processes.iter().map(|p| p.step_at(is_closer)).collect();
    states(cloth.state(), &steps, from)
}

fn chain<N: Number>(
    processes: &[Process<N>],
    cloth: &KnownCloth<N>,
    from: From,
) -> (FinishingResults<N>, Vec<Step<N>>) {
    let steps: Vec<Step<N>> = processes.iter().map(Process::step).collect();
    let states = states(cloth.state(), &steps, from);
    let all = |of: fn(&Step<N>) -> Option<Shrinkage<N>>| {
        let some: Vec<_> = steps.iter().filter_map(of).collect();
        (!some.is_empty()).then(|| cloth::compounded_shrinkage(&some))
    };
    let (width, length) = (all(|step| step.width), all(|step| step.length));
    let kept = steps.iter().filter_map(|step| step.loss).map(|loss| 1.0 - loss.v());
    let kept = kept.reduce(|all, one| all * one);
    let left = [width, length].into_iter().flatten().map(|shrinkage| 1.0 - shrinkage.v());
    let left = left.reduce(|a, b| a * b);
    let one = || V::constant(1.0);
    let factor = (left.is_some() || kept.is_some())
        .then(|| Ratio::from(kept.unwrap_or_else(one) / left.unwrap_or_else(one)));
    let names = std::iter::once(LOOM).chain(processes.iter().map(|process| process.name.trim()));
    let mut stages: Vec<Stage<N>> =
        names.zip(&states).map(|(name, state)| state.stage(name)).collect();
    stages.extend(states.last().map(|state| state.stage(FINISHED)));
    let results = FinishingResults {
        width_shrinkage: width,
        length_shrinkage: length,
        mass_loss: kept.map(|kept| MassLoss::from(1.0 - kept)),
        over_width: width.map(cloth::over_width_for_shrinkage),
        area_shrinkage: width.zip(length).map(|(w, l)| cloth::area_shrinkage(w, l)),
        mass_per_area_factor: factor,
        stages,
    };
    (results, steps)
}

/// What finishing makes of a cloth that comes off the loom so: size, sett, count, mass after each process.
///
/// `processes` are in their order, each with its name and what it does, as `process` asks. They compound,
/// each on what it finds. As much comes out as what is given allows; results are named by stage:
/// `loom.width`, `mill.width`, `finished.mass_per_area`.
#[calculation(
    title = "From the loom to the finished cloth",
    example = ">>> import hankwise as hw
>>> cloth = hw.cloth.finishing(
...     processes=[(\"scour\", {\"width_shrinkage\": \"6 %\", \"length_shrinkage\": \"4 %\", \"mass_loss\": \"5 %\"}),
...                (\"mill\", {\"width_shrinkage\": \"15 %\", \"length_shrinkage\": \"10 %\", \"mass_loss\": \"1 %\"}),
...                (\"tenter\", {\"width_shrinkage\": \"-2 %\"})],
...     width=\"1.80 m\", warp_sett=\"8 ends/cm\", mass_per_area=\"300 g/m²\",
... )
>>> cloth[\"finished.width\"], cloth[\"finished.mass_per_area\"]
(<length: 1.467 m>, <mass per area: 400.7 g/m²>)
>>> cloth[\"width_shrinkage\"]
<shrinkage on the size before: 18.50 %>",
    cautions = ["hot liquor", "steam", "machines"],
    check = check_finishing,
    report = report_finishing
)]
pub fn finishing<N: Number>(given: &FinishingInputs<N>) -> FinishingResults<N> {
    chain(&given.processes, &given.cloth, From::Loom).0
}

/// What to weave for a wanted finished cloth: the chain of `finishing` backward.
///
/// `loom_width` is the widest that the loom weaves; where that is not enough, a warning says what can be
/// finished from it.
#[calculation(
    title = "What to weave for the finished cloth",
    example = ">>> import hankwise as hw
>>> cloth = hw.cloth.to_weave(
...     processes=[(\"wash\", {\"width_shrinkage\": \"22 %\", \"length_shrinkage\": \"18 %\"})],
...     width=\"36 in\", length=\"60 in\", warp_sett=\"8 ends/in\",
... )
>>> [round(cloth[name].number(\"in\"), 2) for name in (\"loom.width\", \"loom.length\")]
[46.15, 73.17]
>>> cloth[\"loom.warp_sett\"].to(\"ends/in\")
<sett: 6.24 threads/in>",
    cautions = ["hot liquor", "steam", "machines"],
    check = check_to_weave,
    report = report_to_weave
)]
pub fn to_weave<N: Number>(given: &ToWeaveInputs<N>) -> ToWeaveResults<N> {
    let (chain, steps) = chain(&given.processes, &given.cloth, From::Finished);
    let is_width_known = given.cloth.width.is_some();
    let widest = given.loom_width.filter(|_| is_width_known).and_then(|loom| {
        let from = State { width: Some(loom), ..State::UNKNOWN };
        states(from, &steps, From::Loom).last().and_then(|state| state.width)
    });
    ToWeaveResults { chain, widest_finished_width: widest }
}

fn check_finishing(
    given: &FinishingInputs<f64>,
    found: &FinishingResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    check_chain(&given.processes, &given.cloth, found, check)
}

fn check_to_weave(
    given: &ToWeaveInputs<f64>,
    found: &ToWeaveResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    check_chain(&given.processes, &given.cloth, &found.chain, check)?;
    let width = found.chain.stages.first().and_then(|stage| stage.width);
    if width.is_none() {
        check.idle(&["loom_width"], "width");
    }
    if let (Some(loom), Some(most), Some(width)) =
        (given.loom_width, found.widest_finished_width, width)
        && width.value() > loom.value() * (1.0 + 1e-12)
    {
        let words = format!(
            "{} would have to be woven and the loom weaves {} at most, which finishes at {}; weave \
             narrower, in two panels or double width",
            check.say(width),
            check.say(loom),
            check.say(most)
        );
        check.warn(words);
    }
    Ok(())
}

fn check_chain(
    processes: &[Process<f64>],
    cloth: &KnownCloth<f64>,
    found: &FinishingResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    for process in processes {
        let name = process.name.trim();
        if [LOOM, FINISHED].contains(&name) {
            return Err(Error::notation(format!(
                "'{name}' is the name of the cloth itself; call the process by another, such as \
                 '{name} 1'"
            )));
        }
        process.check(check)?;
    }
    let state = cloth.state();
    if state.is_unknown() {
        return Err(Error::notation(
            "nothing is known of the cloth; give at least one of width, length, warp_sett, weft_sett, \
             warp_count, weft_count, warp_crimp, weft_crimp, mass_per_area, piece_mass, such as \
             width='1.60 m'",
        ));
    }
    check_crimps(&found.stages)?;
    if let (Some(threads), Some(area)) = (state.area_of_threads(), state.area) {
        let off = area.value() / threads.value() - 1.0;
        if off.abs() > DOUBTED {
            check.warn(format!(
                "the mass per area is {} g/m² by what was given and {} g/m² by the threads; the first is \
                 taken: look at setts, counts, crimps and what else is on the yarn",
                figure(area.value()),
                figure(threads.value())
            ));
        }
    }
    Ok(())
}

/// A yarn cannot be shorter than the cloth that it lies in.
fn check_crimps(stages: &[Stage<f64>]) -> Result<()> {
    for stage in stages {
        for (thread, crimp) in [("warp", stage.warp_crimp), ("weft", stage.weft_crimp)] {
            if let Some(c) = crimp.filter(|c| c.value() < -1e-9) {
                let when = match stage.name.as_str() {
                    LOOM => "on the loom".to_owned(),
                    name => format!("after {name}"),
                };
                return Err(Error::range(format!(
                    "the crimp of the {thread} would be {} {when}: the yarn cannot be shorter than the \
                     cloth; let the yarn shrink nearer to the cloth ({thread}_yarn_shrinkage), or look at \
                     the crimp",
                    of_kind(c.value(), Kind::Crimp)
                )));
            }
        }
    }
    Ok(())
}

fn report_finishing(
    given: &FinishingInputs<f64>,
    found: &FinishingResults<f64>,
    check: &Check<'_>,
) -> crate::table::Report {
    report::report(&given.processes, &given.cloth, found, From::Loom, check)
}

fn report_to_weave(
    given: &ToWeaveInputs<f64>,
    found: &ToWeaveResults<f64>,
    check: &Check<'_>,
) -> crate::table::Report {
    report::report(&given.processes, &given.cloth, &found.chain, From::Finished, check)
}
