//! Check weights: what the balance should read for a length, and how far it may be off.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Count, Fraction, Length, LinearDensity, Mass, OnFibre, Ratio, Regain};

/// What the balance should read for a number of ends of a length.
#[formula(
    result = "m_c",
    sources = ["practice"],
    limits = ["the count in the state that the material has at that machine", "after a change of the feed wait about three times hold-up over feed rate before weighing again"],
    slips = ["weighing one end where the value is for several"]
)]
pub fn check_weight<N: Number>(
    /// count in the state at the machine
    #[q("T", 1.0..=100000.0)]
    count: LinearDensity<N>,
    /// length of each end
    #[q("L_c", 0.5..=500.0)]
    check_length: Length<N>,
    /// ends weighed together
    #[q("N", 1.0..=200.0)]
    ends: Count<N>,
) -> Mass<N> {
    count * check_length * ends * 1e-6
}

/// What the balance should read today for ends of a length, where the count is stated at another
/// regain or with another oil.
///
/// Water and oil are both taken on the clean dry fibre, so they add.
#[formula(
    result = "m_c",
    sources = ["definition"],
    limits = ["today's regain is that of the yarn itself, after it has lain in today's air for long enough", "vegetable matter taken as part of the fibre"],
    slips = ["comparing with the weight at the stated regain: 5 % less water reads as 4 % too fine", "multiplying (1 + R)(1 + o): both are on the fibre"]
)]
pub fn check_weight_in_todays_air<N: Number>(
    /// count as stated
    #[q("T", 1.0..=100000.0)]
    count: LinearDensity<N>,
    /// length of each end
    #[q("L_c", 0.5..=500.0)]
    check_length: Length<N>,
    /// ends weighed together
    #[q("N", 1.0..=200.0)]
    ends: Count<N>,
    /// regain at which the count is stated
    #[q("R_s", 0.0..=0.4)]
    stated_regain: Regain<N>,
    /// regain today
    #[q("R", 0.0..=0.4)]
    regain: Regain<N>,
    /// oil with which the count is stated
    #[q("o_s", 0.0..=0.2)]
    stated_oil: OnFibre<N>,
    /// oil today
    #[q("o", 0.0..=0.2)]
    oil: OnFibre<N>,
) -> Mass<N> {
    let as_stated =
        (count * check_length * ends * 1e-6).named(["m₁", "kg", "mass of the length as stated"]);
    as_stated * (1.0 + regain + oil) / (1.0 + stated_regain + stated_oil)
}

/// Variation of the mean of readings, with that from end to end and that along the ends kept apart.
///
/// More readings of the same ends average out what varies along them, never what differs between
/// them: for that, weigh more ends.
#[formula(
    result = "CV_m",
    sources = ["definition"],
    limits = ["as many pieces from each end; ends chosen by chance", "both variations as coefficients between pieces of the length that is weighed: an evenness tester's value is for much shorter ones"],
    slips = ["dividing by the root of all pieces where they come from few ends", "an evenness tester's value for that between lengths"]
)]
pub fn variation_of_mean<N: Number>(
    /// variation from end to end
    #[q("CV_b", 0.0..=0.3)]
    cv_between: Fraction<N>,
    /// variation from piece to piece along an end
    #[q("CV_a", 0.001..=0.3)]
    cv_along: Fraction<N>,
    /// different ends
    #[q("e", 1.0..=1000.0)]
    different_ends: Count<N>,
    /// pieces, all together
    #[q("p", 1.0..=10000.0)]
    test_pieces: Count<N>,
) -> Fraction<N> {
    (cv_between.squared() / different_ends + cv_along.squared() / test_pieces).sqrt()
}

/// Half the width of the band in which a reading, or the mean of several, must fall.
#[formula(
    result = "h",
    sources = ["Confidence interval", "definition"],
    limits = ["readings that follow the normal law", "z where the variation is known from many readings; Student's t with n − 1 degrees of freedom where it comes from n earlier ones", "the variation of what is read: of the mean for a mean, of single readings for a reading"],
    slips = ["the variation of single readings for the band of a mean", "z for one side where both count: 1.64 for 1.96"]
)]
pub fn band_half_width<N: Number>(
    /// what it should weigh
    #[q("m", 0.000001..=100.0)]
    mass: Mass<N>,
    /// variation of what is read
    #[q("CV", 0.0..=0.3)]
    cv: Fraction<N>,
    /// standard deviations to each side, z or t: 1.96 takes in 95 % where the variation is known
    #[q("z", 0.5..=5.0)]
    sd_multiple: Ratio<N>,
) -> Mass<N> {
    sd_multiple * cv * mass
}

/// The chance with which each single reading must fall within its limits, so that all do with a wanted
/// chance.
#[formula(
    result = "P₁",
    sources = ["definition"],
    limits = ["readings that do not hang together; where they do, the chance for all is greater still"],
    slips = ["limits for one reading held against every one of many: of 20 readings one is outside as a rule"]
)]
pub fn chance_for_each<N: Number>(
    /// chance that all readings are within
    #[q("P", 0.5..=0.9999)]
    chance_of_all: Fraction<N>,
    /// readings
    #[q("n", 1.0..=200.0)]
    readings: Count<N>,
) -> Fraction<N> {
    (chance_of_all.ln() / readings).exp()
}
