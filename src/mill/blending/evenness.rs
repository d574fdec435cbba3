//! How evenly a component comes to lie in a blend.

use super::{
    layered_share_deviation, layers_for_deviation, random_share_deviation, sampled_share_deviation,
    share_deviation_after_passes, tufts_in_sample,
};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{Count, Fraction, Mass, Ratio};

/// Passes that anybody would make; more are refused.
const MOST_PASSES: u32 = 50;
const STAGES: &str = "standard deviation of the share, stage by stage";

/// Passes through the teaser, with the heap laid anew between them.
#[derive(Clone, Debug, Inputs)]
pub struct Relaying<N> {
    /// passes through the teaser, each with relaying
    #[q("j", 0.0..=6.0, like = "2", zero)]
    pub passes: Count<N>,
    /// places of the heap that come together in a pass; 1 where it is not laid anew
    #[q("n_d", 1.0..=50.0, like = "4")]
    pub doublings: Count<N>,
}

/// What [`evenness_of_blend()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct EvennessInputs<N> {
    /// share of the component in the blend
    #[q("p", 0.02..=0.98, like = "30 %")]
    pub component_share: Fraction<N>,
    /// layers of each component in the stack
    #[q("n", 1.0..=100.0, like = "8")]
    pub layers: Count<N>,
    /// coefficient of variation of a layer's thickness from place to place
    #[q("CV_l", 0.02..=0.5, like = "20 %", zero)]
    pub layer_cv: Fraction<N>,
    /// mean mass of a tuft, or of a fibre once carded
    #[q("m_t", 1e-9..=0.05, like = "20 mg")]
    pub tuft_mass: Mass<N>,
    /// mass of the sample that is looked at
    #[q("m_s", 0.000_01..=10.0, like = "10 g")]
    pub sample_mass: Mass<N>,
    /// Passes through the teaser.
    #[group]
    pub relaying: Option<Relaying<N>>,
    /// standard deviation wanted of the share between samples
    #[q("σ_w", 0.002..=0.2, like = "3 %")]
    pub wanted_share_sd: Option<Fraction<N>>,
}

/// The heap after the stack or after a pass.
#[derive(Clone, Debug, Results)]
pub struct BlendStage<N> {
    /// Which stage.
    #[label]
    pub name: String,
    /// standard deviation of the share from place to place
    #[head = "place to place"]
    pub heap_share_sd: Fraction<N>,
    /// standard deviation of the share between samples
    #[head = "between samples"]
    pub share_sd: Fraction<N>,
    /// coefficient of variation of the share between samples
    #[head = "CV"]
    pub share_cv: Ratio<N>,
}

/// What [`evenness_of_blend()`] answers.
#[derive(Clone, Debug, Results)]
pub struct EvennessResults<N> {
    /// standard deviation of the share, stage by stage
    #[rows]
    pub stages: Vec<BlendStage<N>>,
    /// standard deviation of the share from place to place, at the end
    #[block = "At the end"]
    pub heap_share_sd: Fraction<N>,
    /// standard deviation of the share between samples, at the end
    pub share_sd: Fraction<N>,
    /// coefficient of variation of the share between samples, at the end
    pub share_cv: Ratio<N>,
    /// tufts in the sample
    #[block = "Laid by chance"]
    pub tufts: Count<N>,
    /// standard deviation of the share between samples, if laid by chance: the binomial bound
    pub random_share_sd: Fraction<N>,
    /// layers of each component for the deviation wanted, by the stack alone
    #[block = "For the deviation wanted"]
    pub wanted_layers: Option<Count<N>>,
}

/// How far the share of a component differs between samples of a blend: after the stack, after each pass
/// of the teaser, and what chance leaves at best.
///
/// Each component lies in `layers` whose thickness has the coefficient of variation `layer_cv`, and the
/// stack is taken from top to bottom. In each of the `passes` wool from `doublings` places of the heap
/// comes together. A sample holds tufts, each of one colour: of k tufts drawn by chance the share has the
/// standard deviation √(p(1 − p)/k), which only finer opening improves. With `wanted_share_sd` the layers
/// that the stack alone takes are calculated.
#[calculation(
    title = "How even a blend is",
    example = ">>> import hankwise as hw
>>> heap = hw.mill.evenness_of_blend(component_share=\"30 %\", layers=6, layer_cv=\"25 %\", passes=2, doublings=4,
...                                  tuft_mass=\"20 mg\", sample_mass=\"10 g\", wanted_share_sd=\"3 %\")
>>> heap[\"random_share_sd\"], heap[\"share_sd\"]
(<fraction: 2.049 %>, <fraction: 2.185 %>)",
    cautions = ["machines", "dust"],
    check = check
)]
pub fn evenness_of_blend<N: Number>(given: &EvennessInputs<N>) -> EvennessResults<N> {
    let EvennessInputs { component_share: share, layers, layer_cv, .. } = *given;
    let tufts = tufts_in_sample(given.sample_mass, given.tuft_mass);
    let stage = |name: String, heap: Ratio<N>| {
        let sampled = sampled_share_deviation(heap, share, tufts);
        BlendStage {
            name,
            heap_share_sd: Fraction::from(heap.v()),
            share_sd: Fraction::from(sampled.v()),
            share_cv: Ratio::from(sampled.v() / share.v()),
        }
    };
    let stack = layered_share_deviation(share, layers, layer_cv);
    let mut last = stage("stack".to_owned(), stack);
    let mut stages = Vec::new();
    if let Some(Relaying { passes, doublings }) = given.relaying {
        let whole = (passes.value() as u32).min(MOST_PASSES);
        for pass in 1..=whole {
            let so_far =
                if pass == whole { passes } else { Count::from(V::constant(f64::from(pass))) };
            let heap = share_deviation_after_passes(stack, doublings, so_far);
            stages.push(std::mem::replace(&mut last, stage(format!("pass {pass}"), heap)));
        }
    }
    let random = random_share_deviation(share, tufts);
    let BlendStage { heap_share_sd, share_sd, share_cv, .. } = last;
    stages.push(last);
    EvennessResults {
        stages,
        heap_share_sd,
        share_sd,
        share_cv,
        tufts,
        random_share_sd: Fraction::from(random.v()),
        // No number of layers brings it below what chance leaves.
        wanted_layers: given.wanted_share_sd.filter(|wanted| wanted.value() > random.value()).map(
            |wanted| {
                // What tufts add is taken off first; the rest is the heap's.
                let rest = wanted.v().squared() - random.v().squared();
                let heap = (rest / (1.0 - 1.0 / tufts.v())).sqrt();
                layers_for_deviation(share, Fraction::from(heap), layer_cv)
            },
        ),
    }
}

fn check(
    given: &EvennessInputs<f64>,
    found: &EvennessResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if given.component_share.value() >= 1.0 {
        refuse!(
            check,
            given.component_share,
            "a component of 100 % is not a blend; write a share below 100 %, such as '20 %'"
        );
    }
    if let Some(relaying) = &given.relaying
        && relaying.passes.value() > f64::from(MOST_PASSES)
    {
        refuse!(check, relaying.passes, "{MOST_PASSES} passes are the most; write fewer");
    }
    if given.sample_mass.value() < given.tuft_mass.value() {
        refuse!(
            check,
            given.sample_mass,
            "the sample is smaller than a tuft, so it is of one colour; write a larger sample, or the \
             mass of a fibre as tuft_mass where the wool is carded"
        );
    }
    let random = found.random_share_sd;
    check.note(
        STAGES,
        format!(
            "Laid by chance, which no turning over improves: {} between samples of {} tufts. Two samples \
             in three lie within the standard deviation, 19 in 20 within twice it.",
            check.say(random),
            check.say(Count::<f64>::base(found.tufts.value().round()))
        ),
    );
    if let Some(wanted) = given.wanted_share_sd
        && wanted.value() <= random.value()
    {
        check.warn(format!(
            "a standard deviation of {} is less than chance leaves in such a sample ({}): open the tufts \
             finer, or look at a larger sample",
            check.say(wanted),
            check.say(random)
        ));
    }
    if found.heap_share_sd.value() < random.value() / 3.0 {
        check.note(
            STAGES,
            "The heap is even enough: what is left is tufts. Opening helps, passes do not.",
        );
    }
    Ok(())
}
