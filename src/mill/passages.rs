//! Finishing machines: cloth run through, loads in turn, water dried off.

use super::minding::ROUNDING;
use crate::formula::{Formula, formula};
use crate::number::Number;
use crate::quantity::{Count, Duration, Length, Mass, Regain, Speed};

/// The formulas of this file.
pub(crate) const FORMULAS: &[&Formula] = &[&PASSAGE_TIME, &WHOLE_LOADS, &LOAD_TIME, &WATER_TO_DRY];

/// Time of cloth that runs through a machine, several times if need be.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["length as it is in the machine: it may shrink from one passage to the next", "threading and sewing on stand in the time for a passage, so no efficiency comes on top"],
    slips = ["one passage for all of them", "minutes for hours"],
    cautions = ["machines"]
)]
pub fn passage_time<N: Number>(
    /// length of the cloth
    #[q("L", 0.5..=10000.0)]
    length: Length<N>,
    /// speed of the cloth
    #[q("v", 0.2..=100.0)]
    speed: Speed<N>,
    /// passages
    #[q("n", 1.0..=20.0)]
    passages: Count<N>,
    /// time for a passage beside running: sewing on, threading
    #[q("τ_c", 0.0..=2.0)]
    change: Duration<N>,
) -> Duration<N> {
    let running = (length / (60.0 * speed)).named("τ_r");
    passages * (running + change)
}

/// Loads of a machine for a mass of goods.
#[formula(
    result = "n",
    sources = ["definition"],
    limits = ["goods and load in one state, dry or wet", "the last load may be part full: even loads treat all goods alike"],
    slips = ["rounding down", "the wet mass with a load that is told dry"]
)]
pub fn whole_loads<N: Number>(
    /// mass of the goods
    #[q("m", 0.5..=10000.0)]
    mass: Mass<N>,
    /// mass of the largest load
    #[q("g", 0.5..=500.0)]
    load: Mass<N>,
) -> Count<N> {
    (mass / load - ROUNDING).ceil()
}

/// Time of a machine for a number of loads.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["one machine; a load that is part full takes the whole time"],
    slips = ["part of the time for part of a load", "leaving out filling and emptying"]
)]
pub fn load_time<N: Number>(
    /// loads
    #[q("n", 1.0..=1000.0)]
    loads: Count<N>,
    /// running time of a load
    #[q("τ_r", 0.02..=24.0)]
    running: Duration<N>,
    /// time to empty and fill
    #[q("τ_c", 0.0..=4.0)]
    change: Duration<N>,
) -> Duration<N> {
    loads * (running + change)
}

/// Water to dry off goods.
#[formula(
    result = "w",
    sources = ["definition"],
    limits = ["both on the oven-dry mass; what a squeeze or a spin takes off first is not evaporated"],
    slips = ["regain with a content: 50 % of the wet mass is 100 % on the dry", "drying to nothing: wool takes its regain back from the air", "percentages of the wet mass taken one from the other"]
)]
pub fn water_to_dry<N: Number>(
    /// oven-dry mass of the goods
    #[q("d", 0.1..=10000.0)]
    dry: Mass<N>,
    /// water in them before, on the dry mass
    #[q("R₁", 0.25..=2.5)]
    before: Regain<N>,
    /// water in them after, on the dry mass
    #[q("R₂", 0.0..=0.2)]
    after: Regain<N>,
) -> Mass<N> {
    dry * (before - after)
}
