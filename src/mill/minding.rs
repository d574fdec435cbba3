//! Efficiency, stops, doffs and the people at machines.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Duration, Fraction, Frequency, Mass, MassRate, Ratio};

/// A millionth: what is whole must not become one more by the rounding of binary figures.
pub(super) const ROUNDING: f64 = 1e-6;

/// Efficiency: what was made over what would be made without a stop.
#[formula(
    result = "η",
    sources = ["Winding efficiency", "definition"],
    limits = ["both in one unit and for the same time"],
    slips = ["taking stops off the time and then multiplying by the efficiency too", "over 100 %: the calculated value is of another count, hank or speed"]
)]
pub fn efficiency_from_output<N: Number>(
    /// made
    #[q("a", 0.0..=1000000.0)]
    made_amount: Ratio<N>,
    /// calculated, without a stop
    #[q("c", 0.1..=1000000.0)]
    calculated_amount: Ratio<N>,
) -> Fraction<N> {
    made_amount / calculated_amount
}

/// Efficiency of a machine that stops so often in an hour of running.
#[formula(
    result = "η",
    sources = ["definition"],
    limits = ["stops counted for an hour of running, as a stop counter tied to the machine has them", "one stop waits for no other: with many machines to a person it does, and the efficiency falls"],
    slips = ["stops counted by the clock: those are fewer, and are taken off as 1 − f_s × τ_s", "using this efficiency and a measured one together"],
    cautions = ["machines"]
)]
pub fn efficiency_with_stops<N: Number>(
    /// stops, while it runs
    #[q("f_s", 0.0..=1.0)]
    stop_rate: Frequency<N>,
    /// time of a stop
    #[q("τ_s", 0.0..=0.5)]
    stop_time: Duration<N>,
) -> Fraction<N> {
    let stood =
        (60.0 * stop_rate * stop_time).named(["s", "", "time stood for each unit of time run"]);
    1.0 / (1.0 + stood)
}

/// Efficiency of a loom from its stops in a hundred thousand picks.
#[formula(
    result = "η",
    sources = ["definition"],
    limits = ["warp, weft and other stops together; one stop waits for no other"],
    slips = ["the same stops cost a fast loom more: at twice the speed they come twice as often"],
    cautions = ["loom"]
)]
pub fn efficiency_with_stops_of_picks<N: Number>(
    /// stops in a hundred thousand picks
    #[q("s", 0.0..=500.0)]
    stops_per_100000_picks: Ratio<N>,
    /// time of a stop
    #[q("τ_s", 0.0..=0.5)]
    stop_time: Duration<N>,
    /// picks in a minute, running
    #[q("r_l", 20.0..=600.0)]
    loom_speed: Frequency<N>,
) -> Fraction<N> {
    let running = (1e5 / (60.0 * loom_speed)).named([
        "τ_r",
        "h",
        "time to weave 100,000 picks without a stop",
    ]);
    running / (running + stops_per_100000_picks * stop_time)
}

/// Looms that a weaver can mind, not yet rounded down.
#[formula(
    result = "k",
    sources = ["definition"],
    limits = ["hands-on time of the weaver alone: what the loom waits for is in its efficiency", "stops come when they like: a load near 100 % leaves looms waiting, whatever the sum says"],
    slips = ["counting the time the loom waits as the weaver's", "leaving no time for looking, walking and changing shuttles"],
    cautions = ["loom"]
)]
pub fn looms_for_weaver<N: Number>(
    /// stops of a loom, while it runs
    #[q("f_s", 0.01..=1.0)]
    stop_rate: Frequency<N>,
    /// weaver's time for a stop
    #[q("τ_a", 0.003..=0.5)]
    attention_time: Duration<N>,
    /// efficiency of the loom
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
    /// share of the weaver's time for it
    #[q("ψ", 0.3..=0.9)]
    work_load: Fraction<N>,
) -> Count<N> {
    work_load / (60.0 * stop_rate * efficiency * attention_time)
}

/// Spindles that a minder can piece for, not yet rounded down.
#[formula(
    result = "k",
    sources = ["definition"],
    limits = ["piecing alone: creeling and doffing are in what the load leaves over", "with the walk to the end in the time of a piecing"],
    slips = ["breaks for a hundred spindle hours taken for those for a thousand"],
    cautions = ["machines"]
)]
pub fn spindles_for_minder<N: Number>(
    /// ends broken in a thousand spindle hours
    #[q("e_b", 5.0..=500.0, memory)]
    break_rate: Ratio<N>,
    /// time for a piecing
    #[q("τ_b", 0.001..=0.05)]
    piecing_time: Duration<N>,
    /// share of the minder's time for it
    #[q("ψ", 0.2..=0.9)]
    work_load: Fraction<N>,
) -> Count<N> {
    1000.0 * work_load / (break_rate * piecing_time)
}

/// People for a number of machines or spindles.
#[formula(
    result = "p",
    sources = ["practice"],
    limits = ["whole people: who has time over can mind something else"],
    slips = ["rounding down"]
)]
pub fn people_needed<N: Number>(
    /// machines, spindles or drums
    #[q("k", 1.0..=2000.0)]
    machines: Count<N>,
    /// of them for each person
    #[q("a_p", 1.0..=2000.0)]
    per_person: Count<N>,
) -> Count<N> {
    (machines / per_person).round_up(ROUNDING)
}

/// Times that all spindles are doffed for a mass of yarn; the last doff may not be full.
#[formula(
    result = "D",
    sources = ["definition"],
    limits = ["net mass of a package, all spindles in step"],
    slips = ["packages for doffs: a doff is of all spindles", "rounding down"],
    cautions = ["machines"]
)]
pub fn doffs<N: Number>(
    /// yarn to make
    #[q("m_y", 0.1..=10000.0)]
    yarn_mass: Mass<N>,
    /// spindles
    #[q("k_n", 1.0..=1200.0)]
    spindles: Count<N>,
    /// yarn on a full package
    #[q("g", 0.01..=10.0)]
    package_mass: Mass<N>,
) -> Count<N> {
    (yarn_mass / (spindles * package_mass)).round_up(ROUNDING)
}

/// Full packages of spindles that work in step: all of a doff are full, or none.
#[formula(
    result = "p",
    sources = ["definition"],
    limits = ["net mass of a package, all spindles in step: what the last doff has of too little yarn is spread over all of them"],
    slips = ["dividing the mass by that of a package, as if the spindles filled one after another"],
    cautions = ["machines"]
)]
pub fn full_packages_in_step<N: Number>(
    /// yarn to make
    #[q("m_y", 0.1..=10000.0)]
    yarn_mass: Mass<N>,
    /// spindles
    #[q("k_n", 1.0..=1200.0)]
    spindles: Count<N>,
    /// yarn on a full package
    #[q("g", 0.01..=10.0)]
    package_mass: Mass<N>,
) -> Count<N> {
    let full = (yarn_mass / (spindles * package_mass)).round_down(ROUNDING);
    spindles * full.named(["D_f", "", "full doffs"])
}

/// Time from one doff to the next.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["output with its efficiency: the time of doffing is in it"],
    slips = ["adding the time of the doff where the efficiency has it already"],
    cautions = ["machines"]
)]
pub fn doff_interval<N: Number>(
    /// spindles
    #[q("k_n", 1.0..=1200.0)]
    spindles: Count<N>,
    /// yarn on a full package
    #[q("g", 0.01..=10.0)]
    package_mass: Mass<N>,
    /// output, all spindles together
    #[q("Q", 0.1..=1000.0)]
    output: MassRate<N>,
) -> Duration<N> {
    spindles * package_mass / output
}
