//! Finishing machines: cloth run through, loads in turn, water dried off.

use super::minding::ROUNDING;
use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Duration, Length, Mass, Regain, Speed};

/// Time of cloth that runs through a machine, several times if need be.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["length as it is in the machine: it may shrink from one passage to the next", "threading and sewing on are in the time for a passage, so no efficiency comes on top"],
    slips = ["one passage for all of them", "minutes for hours"],
    cautions = ["machines"]
)]
pub fn passage_time<N: Number>(
    /// length of the cloth
    #[q("L", 0.5..=10000.0)]
    cloth_length: Length<N>,
    /// speed of the cloth
    #[q("v", 0.2..=100.0)]
    cloth_speed: Speed<N>,
    /// passages
    #[q("n", 1.0..=20.0)]
    passages: Count<N>,
    /// time for a passage beside running: sewing on, threading
    #[q("τ_c", 0.0..=2.0)]
    change_time: Duration<N>,
) -> Duration<N> {
    let running =
        (cloth_length / (60.0 * cloth_speed)).named(["τ_r", "h", "time that a passage runs"]);
    passages * (running + change_time)
}

/// Loads of a machine for a mass of goods.
#[formula(
    result = "n",
    sources = ["definition"],
    limits = ["goods and load in one state, dry or wet", "the last load may be part full: even loads treat all goods alike"],
    slips = ["rounding down", "the wet mass with a load that is given dry"]
)]
pub fn loads_for_mass<N: Number>(
    /// mass of the goods
    #[q("m_g", 0.5..=10000.0)]
    goods_mass: Mass<N>,
    /// mass of the largest load
    #[q("g_l", 0.5..=500.0)]
    load_mass: Mass<N>,
) -> Count<N> {
    (goods_mass / load_mass).round_up(ROUNDING)
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
    time_per_load: Duration<N>,
    /// time to empty and fill
    #[q("τ_c", 0.0..=4.0)]
    change_time: Duration<N>,
) -> Duration<N> {
    loads * (time_per_load + change_time)
}

/// Water to dry off goods.
#[formula(
    result = "m_a",
    sources = ["definition"],
    limits = ["both on the oven-dry mass; what a squeeze or a spin takes off first is not evaporated"],
    slips = ["regain with a content: 50 % of the wet mass is 100 % on the dry", "drying to nothing: wool takes its regain back from the air", "percentages of the wet mass taken one from the other"],
    cautions = ["dryer"]
)]
pub fn water_to_dry<N: Number>(
    /// oven-dry mass of the goods
    #[q("m_d", 0.1..=10000.0)]
    oven_dry_mass: Mass<N>,
    /// water in them before, on the dry mass
    #[q("R₁", 0.25..=2.5)]
    regain_before: Regain<N>,
    /// water in them after, on the dry mass
    #[q("R₂", 0.0..=0.2)]
    regain_after: Regain<N>,
) -> Mass<N> {
    oven_dry_mass * (regain_before - regain_after)
}
