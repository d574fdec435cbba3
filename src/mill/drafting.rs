//! Drafts and doublings through a set of machines, and what they make of a count.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{
    Count, Fraction, Frequency, LinearDensity, Mass, MassRate, Ratio, ShareLost, Speed,
};

/// How many times finer the yarn is than one end of what was fed first: drafts over doublings.
#[formula(
    result = "D",
    sources = ["GATE solutions", "Britannica 1911"],
    limits = ["waste and contraction not included"],
    slips = ["adding drafts", "leaving out the doublings"]
)]
pub fn net_draft<N: Number>(
    /// doublings of all machines together
    #[q("N", 1.0..=2000.0)]
    total_doublings: Count<N>,
    /// draft of each machine or zone
    #[q("d", 0.9..=2000.0)]
    drafts: &[Ratio<N>],
) -> Ratio<N> {
    V::product(drafts) / total_doublings
}

/// Count that comes out of drafts, with the ends fed together and what is lost on the way.
#[formula(
    result = "T_o",
    sources = ["GATE solutions", "Collegedunia"],
    limits = ["contraction in twisting not included", "fed and delivered in one state"],
    slips = ["leaving out the doublings", "the draft of the last machine for that of all", "grams in a metre taken for tex: 1 g/m is 1000 tex"]
)]
pub fn count_through_drafts<N: Number>(
    /// count fed, of one end
    #[q("T_i", 2.0..=1000000.0)]
    fed_count: LinearDensity<N>,
    /// doublings of all machines together
    #[q("N", 1.0..=2000.0)]
    total_doublings: Count<N>,
    /// share lost on the way
    #[q("w", 0.0..=0.2)]
    loss: ShareLost<N>,
    /// draft of each machine or zone
    #[q("d", 0.9..=2000.0)]
    drafts: &[Ratio<N>],
) -> LinearDensity<N> {
    let draft = V::product(drafts).named(["D", "", "draft of all passages together"]);
    fed_count * total_doublings * (1.0 - loss) / draft
}

/// Count to feed for a wanted count, through a draft.
#[formula(
    result = "T_i",
    sources = ["definition"],
    limits = ["contraction in twisting not included", "fed and delivered in one state"],
    slips = ["multiplying by 1 + w instead of dividing by 1 − w", "dividing the tex by the draft, as if a coarser count were fed to a smaller draft"]
)]
pub fn fed_count<N: Number>(
    /// count wanted
    #[q("T_o", 2.0..=100000.0)]
    delivered_count: LinearDensity<N>,
    /// ends fed together
    #[q("n_d", 1.0..=2000.0)]
    doublings: Count<N>,
    /// share lost on the way
    #[q("w", 0.0..=0.2)]
    loss: ShareLost<N>,
    /// draft
    #[q("D", 0.9..=2000.0)]
    draft: Ratio<N>,
) -> LinearDensity<N> {
    delivered_count * draft / (doublings * (1.0 - loss))
}

/// Count after the draft alone was changed.
#[formula(
    result = "T₂",
    sources = ["GATE solutions"],
    limits = ["the same feed, doublings and waste as before"],
    slips = ["a draft 10 % smaller makes the yarn 11.1 % heavier in tex, not 10 %", "the proportion the wrong way round"]
)]
pub fn count_for_new_draft<N: Number>(
    /// count before
    #[q("T", 2.0..=100000.0)]
    count: LinearDensity<N>,
    /// draft before
    #[q("D", 0.9..=2000.0)]
    draft: Ratio<N>,
    /// draft after
    #[q("D₂", 0.9..=2000.0)]
    new_draft: Ratio<N>,
) -> LinearDensity<N> {
    count * draft / new_draft
}

/// Share of a component after it was fed, machine after machine, beside others.
#[formula(
    result = "p",
    sources = ["GATE solutions"],
    limits = ["ends of one count at each machine; where they differ, take their masses instead", "the component comes in at the first machine only"],
    slips = ["adding the shares of the machines"]
)]
pub fn component_share<N: Number>(
    /// ends that carry the component, at each machine
    #[q("a", 1.0..=20.0)]
    carrying_ends: &[Count<N>],
    /// all ends fed, at each machine
    #[q("N", 1.0..=100.0)]
    fed_ends: &[Count<N>],
) -> Fraction<N> {
    V::product(carrying_ends.zip(fed_ends).map(|(a, n)| a / n))
}

/// Spindles of the next machine that keep up with those before it.
#[formula(
    result = "k₂",
    sources = ["Worsted handbook"],
    limits = ["both speeds at the front rollers and in one unit; stops of both machines alike"],
    slips = ["leaving out the draft: it lengthens what the next machine has to deliver", "the speeds the wrong way round"],
    cautions = ["machines"]
)]
pub fn spindles_for_balance<N: Number>(
    /// ends fed together at the machine before
    #[q("n_d", 1.0..=20.0)]
    doublings: Count<N>,
    /// front roller speed of the machine before
    #[q("v₁", 1.0..=100.0)]
    front_speed: Speed<N>,
    /// heads or spindles of the machine before
    #[q("k₁", 1.0..=200.0)]
    heads: Count<N>,
    /// draft
    #[q("D", 1.0..=30.0)]
    draft: Ratio<N>,
    /// front roller speed of the next machine
    #[q("v₂", 1.0..=100.0)]
    next_front_speed: Speed<N>,
) -> Count<N> {
    doublings * front_speed * heads / (draft * next_front_speed)
}

/// Share of what lies on the card's cylinder that goes over to the doffer in a turn of it.
#[formula(
    result = "q",
    sources = ["GATE solutions"],
    limits = ["one cylinder and one doffer, running evenly"],
    slips = ["kilograms in an hour with turns in a minute", "the speed of the surface for the turns"],
    cautions = ["machines"]
)]
pub fn transfer_coefficient<N: Number>(
    /// mass that the card delivers
    #[q("Q_f", 1.0..=100.0)]
    fibre_output: MassRate<N>,
    /// turns of the cylinder
    #[q("n_c", 60.0..=600.0)]
    cylinder_speed: Frequency<N>,
    /// fibre on the cylinder, all round
    #[q("m", 0.001..=1.0)]
    cylinder_load: Mass<N>,
) -> Ratio<N> {
    let turn = (fibre_output / (60.0 * cylinder_speed)).named([
        "m_t",
        "kg",
        "fibre that a turn of the cylinder delivers",
    ]);
    turn / cylinder_load
}
