//! Twist at the spindle: roller and spindle, ring and traveller, two-for-one, and what over-end
//! unwinding does to it.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Frequency, Length, Ratio, Speed, Twist};

/// Twist from the turns of the spindle for each turn of the delivery roller.
#[formula(
    result = "t",
    sources = ["Lincoln 1885"],
    limits = ["a turn of the spindle puts in a turn of twist: flyer, ring (after unwinding over the end) and mule while it drafts", "slip of bands and contraction of the yarn in twisting not included"],
    cautions = ["wheels"],
    slips = ["the diameter of the roller for its circumference", "turns of the cylinder for those of the spindle"]
)]
pub fn twist_from_roller<N: Number>(
    /// spindle turns for a turn of the delivery roller
    #[q("i", 5.0..=500.0)]
    roller_ratio: Ratio<N>,
    /// circumference of the delivery roller
    #[q("C", 0.05..=0.5)]
    roller_circumference: Length<N>,
) -> Twist<N> {
    roller_ratio / roller_circumference
}

/// Twist put in by a two-for-one spindle: two turns a revolution.
#[formula(
    result = "t",
    sources = ["memory"],
    limits = ["slip of the belt and contraction of the yarn in twisting not included"],
    slips = ["one turn a revolution, as on a ring spindle"]
)]
pub fn two_for_one_twist<N: Number>(
    /// spindle speed
    #[q("n_s", 1000.0..=15000.0)]
    spindle_speed: Frequency<N>,
    /// delivery
    #[q("v", 1.0..=200.0)]
    delivery_speed: Speed<N>,
) -> Twist<N> {
    2.0 * spindle_speed / delivery_speed
}

/// Turns in a minute by which the traveller lags the spindle, or a bobbin differs from its flyer, to
/// wind on what is delivered.
#[formula(
    result = "n_l",
    sources = ["Rieter"],
    limits = ["the diameter at which the yarn is wound just then: it changes from layer to layer"],
    slips = ["the radius for the diameter", "metres of delivery with millimetres of diameter"]
)]
pub fn winding_lag<N: Number>(
    /// delivery
    #[q("v", 1.0..=200.0)]
    delivery_speed: Speed<N>,
    /// diameter at which the yarn is wound
    #[q("d_p", 0.01..=0.3)]
    package_diameter: Length<N>,
) -> Frequency<N> {
    delivery_speed / (PI * package_diameter)
}

/// Speed of the traveller on the ring.
#[formula(
    result = "n_t",
    sources = ["Rieter", "Collegedunia"],
    limits = ["at one diameter of winding"],
    slips = ["taking the traveller for as fast as the spindle"]
)]
pub fn traveller_speed<N: Number>(
    /// spindle speed
    #[q("n_s", 500.0..=25000.0)]
    spindle_speed: Frequency<N>,
    /// delivery
    #[q("v", 1.0..=200.0)]
    delivery_speed: Speed<N>,
    /// diameter at which the yarn is wound
    #[q("d_p", 0.01..=0.3)]
    package_diameter: Length<N>,
) -> Frequency<N> {
    spindle_speed - delivery_speed / (PI * package_diameter)
}

/// Twist of the yarn as it lies on a ring bobbin: turns of the traveller for a length delivered.
#[formula(
    result = "t",
    sources = ["Rieter"],
    limits = ["unwinding over the end gives back what the lag of the traveller has omitted, unwinding from the side does not"],
    slips = ["looking for the missing turns in yarn that has been unwound over the end"]
)]
pub fn twist_on_ring_bobbin<N: Number>(
    /// spindle speed
    #[q("n_s", 500.0..=25000.0)]
    spindle_speed: Frequency<N>,
    /// delivery
    #[q("v", 1.0..=200.0)]
    delivery_speed: Speed<N>,
    /// diameter at which the yarn is wound
    #[q("d_p", 0.01..=0.3)]
    package_diameter: Length<N>,
) -> Twist<N> {
    let traveller = (spindle_speed - delivery_speed / (PI * package_diameter)).named([
        "n_t",
        "/min",
        "speed of the traveller",
    ]);
    traveller / delivery_speed
}

/// Twist that unwinding over the end puts in or takes out: a turn for each coil.
#[formula(
    result = "t_e",
    sources = ["Rieter"],
    limits = ["more where the package is thin: it changes from layer to layer", "nothing where the package turns and gives its yarn off from the side"],
    slips = ["the radius for the diameter", "counting it for a package that is unwound from the side"]
)]
pub fn twist_of_a_coil<N: Number>(
    /// diameter at which the yarn comes off
    #[q("d_p", 0.01..=0.4)]
    package_diameter: Length<N>,
) -> Twist<N> {
    1.0 / (PI * package_diameter)
}

/// Twist after unwinding over the end, where the coil turns the way of the twist.
#[formula(
    result = "t₂",
    sources = ["Rieter"],
    limits = ["which end of the package the yarn leaves by decides whether it gains or loses: untwist a length to see"],
    slips = ["adding where the coil turns against the twist: then the yarn loses it"]
)]
pub fn twist_gained_over_end<N: Number>(
    /// twist on the package
    #[q("t₁", 20.0..=4000.0)]
    twist_before: Twist<N>,
    /// diameter at which the yarn comes off
    #[q("d_p", 0.01..=0.4)]
    package_diameter: Length<N>,
) -> Twist<N> {
    twist_before + 1.0 / (PI * package_diameter)
}

/// Twist after unwinding over the end, where the coil turns against the twist.
#[formula(
    result = "t₂",
    sources = ["Rieter", "definition"],
    limits = ["which end of the package the yarn leaves by decides whether it gains or loses: untwist a length to see", "a yarn with less twist than a coil takes out would be turned the other way"],
    slips = ["forgetting it on thin packages of soft yarn, where it is a good part of the twist"]
)]
pub fn twist_lost_over_end<N: Number>(
    /// twist on the package
    #[q("t₁", 50.0..=4000.0)]
    twist_before: Twist<N>,
    /// diameter at which the yarn comes off
    #[q("d_p", 0.01..=0.4)]
    package_diameter: Length<N>,
) -> Twist<N> {
    twist_before - 1.0 / (PI * package_diameter)
}
