//! Warping and the loom: sections, stretch, picks, weft.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Count, Crimp, Duration, Frequency, Length, Sett, Speed, Stretch};

/// Ends of a warp that is made in full sections.
#[formula(
    result = "N",
    sources = ["Kelly 2012", "definition"],
    limits = ["all sections full"],
    slips = ["counting a last section that is not full"]
)]
pub fn ends_in_sections<N: Number>(
    /// ends in a section: the bobbins in the creel
    #[q("N_s", 4.0..=1000.0)]
    ends_per_section: Count<N>,
    /// sections
    #[q("S", 1.0..=100.0)]
    sections: Count<N>,
) -> Count<N> {
    ends_per_section * sections
}

/// How close the ends of a warp are, from their number and its width.
#[formula(
    result = "n",
    sources = ["definition"],
    limits = ["mean over the width, selvedges in it"],
    slips = ["width in the reed with the sett off the loom"]
)]
pub fn sett_from_ends<N: Number>(
    /// ends
    #[q("N", 10.0..=20000.0)]
    ends: Count<N>,
    /// width of the warp
    #[q("B_w", 0.05..=6.0)]
    warp_width: Length<N>,
) -> Sett<N> {
    ends / (100.0 * warp_width)
}

/// Length of a warp after it was stretched, machine after machine.
#[formula(
    result = "L",
    sources = ["GATE solutions"],
    limits = ["stretch under tension: part of it goes back when the yarn is slack and wet"],
    slips = ["adding the percentages: they are compounded"]
)]
pub fn length_after_stretches<N: Number>(
    /// length before
    #[q("L₀", 1.0..=100000.0)]
    length_before: Length<N>,
    /// stretch at each machine
    #[q("e", 0.0..=0.1)]
    stretches: &[Stretch<N>],
) -> Length<N> {
    length_before * V::product(stretches.map(|e| 1.0 + e))
}

/// Time to warp a number of sections, without beaming.
#[formula(
    result = "τ",
    sources = ["definition"],
    limits = ["changing a section, creeling and mending ends are in the time for a section, so no efficiency comes on top"],
    slips = ["one section for all of them", "forgetting the time of beaming in the plan"],
    cautions = ["machines"]
)]
pub fn section_warping_time<N: Number>(
    /// sections
    #[q("S", 1.0..=100.0)]
    sections: Count<N>,
    /// length of the warp
    #[q("W", 0.5..=5000.0)]
    warp_length: Length<N>,
    /// warping speed
    #[q("v", 5.0..=800.0)]
    warping_speed: Speed<N>,
    /// time for a section beside running: leasing, tying, mending
    #[q("τ_c", 0.0..=2.0)]
    change_time: Duration<N>,
) -> Duration<N> {
    let running = (warp_length / (60.0 * warping_speed)).named([
        "τ_r",
        "h",
        "time to warp a section, without stops",
    ]);
    sections * (running + change_time)
}

/// Weft that a loom puts in, while it runs.
#[formula(
    result = "v",
    sources = ["NPTEL weaving", "definition"],
    limits = ["crimp on the width of the cloth; for the width in the reed write 0: a pick is as long as the reed is wide", "turns at the selvedge and waste are extra"],
    slips = ["crimp on top of the width in the reed", "with its efficiency where the rate of the running loom is asked"],
    cautions = ["loom"]
)]
pub fn weft_insertion<N: Number>(
    /// picks in a minute
    #[q("r_l", 20.0..=1500.0)]
    loom_speed: Frequency<N>,
    /// width that a pick crosses
    #[q("B", 0.05..=6.0)]
    reed_width: Length<N>,
    /// crimp of the weft
    #[q("c₂", 0.0..=0.3)]
    weft_crimp: Crimp<N>,
) -> Speed<N> {
    loom_speed * reed_width * (1.0 + weft_crimp)
}
