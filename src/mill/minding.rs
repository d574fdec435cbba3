//! Efficiency, stops, doffs and the people at machines.

use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Count, Duration, Fraction, Frequency, Mass, MassRate, Ratio};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[
    &EFFICIENCY_FOUND,
    &EFFICIENCY_WITH_STOPS,
    &EFFICIENCY_WITH_STOPS_OF_PICKS,
    &LOOMS_FOR_WEAVER,
    &SPINDLES_FOR_MINDER,
    &PEOPLE_NEEDED,
    &DOFFS,
    &DOFF_INTERVAL,
];

/// A millionth: what is whole must not become one more by the rounding of binary figures.
pub(super) const ROUNDING: f64 = 1e-6;

/// Efficiency: what was made over what would be made without a stop.
#[formula(
    result = "η",
    sources = ["Winding efficiency", "definition"],
    limits = ["both in one unit and for the same time"],
    slips = ["taking stops off the time and then multiplying by the efficiency too", "over 100 %: the calculated figure is of another count, hank or speed"]
)]
pub fn efficiency_found<N: Number>(
    /// made
    #[q("a", 0.0..=1000000.0)]
    made: Ratio<N>,
    /// calculated, without a stop
    #[q("c", 0.1..=1000000.0)]
    calculated: Ratio<N>,
) -> Fraction<N> {
    made / calculated
}

/// Efficiency of a machine that stops so often in an hour of running.
#[formula(
    result = "η",
    sources = ["definition"],
    limits = ["stops counted for an hour of running, as a stop counter tied to the machine has them", "one stop waits for no other: with many machines to a person it does, and the efficiency falls"],
    slips = ["stops counted by the clock: those are fewer, and are taken off as 1 − f × τ", "using this efficiency and a measured one together"],
    cautions = ["machines"]
)]
pub fn efficiency_with_stops<N: Number>(
    /// stops, while it runs
    #[q("f", 0.0..=1.0)]
    stops: Frequency<N>,
    /// time of a stop
    #[q("τ", 0.0..=0.5)]
    stop: Duration<N>,
) -> Fraction<N> {
    let stood = (60.0 * stops * stop).named("s");
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
    stops: Ratio<N>,
    /// time of a stop
    #[q("τ", 0.0..=0.5)]
    stop: Duration<N>,
    /// picks in a minute, running
    #[q("r", 20.0..=600.0)]
    speed: Frequency<N>,
) -> Fraction<N> {
    let running = (1e5 / (60.0 * speed)).named("τ_r");
    running / (running + stops * stop)
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
    #[q("f", 0.01..=1.0)]
    stops: Frequency<N>,
    /// weaver's time for a stop
    #[q("τ", 0.003..=0.5)]
    attention: Duration<N>,
    /// efficiency of the loom
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
    /// share of the weaver's time for it
    #[q("u", 0.3..=0.9)]
    load: Fraction<N>,
) -> Count<N> {
    load / (60.0 * stops * efficiency * attention)
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
    #[q("e", 5.0..=500.0)]
    breaks: Ratio<N>,
    /// time for a piecing
    #[q("τ", 0.001..=0.05)]
    piecing: Duration<N>,
    /// share of the minder's time for it
    #[q("u", 0.2..=0.9)]
    load: Fraction<N>,
) -> Count<N> {
    1000.0 * load / (breaks * piecing)
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
    #[q("a", 1.0..=2000.0)]
    each: Count<N>,
) -> Count<N> {
    (machines / each - ROUNDING).ceil()
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
    #[q("m", 0.1..=10000.0)]
    mass: Mass<N>,
    /// spindles
    #[q("k", 1.0..=1200.0)]
    spindles: Count<N>,
    /// yarn on a full package
    #[q("g", 0.01..=10.0)]
    package: Mass<N>,
) -> Count<N> {
    (mass / (spindles * package) - ROUNDING).ceil()
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
    #[q("k", 1.0..=1200.0)]
    spindles: Count<N>,
    /// yarn on a full package
    #[q("g", 0.01..=10.0)]
    package: Mass<N>,
    /// output, all spindles together
    #[q("P", 0.1..=1000.0)]
    output: MassRate<N>,
) -> Duration<N> {
    spindles * package / output
}
