//! Gearing: trains of wheels, what they give, and the wheel for a change.
//!
//! Here and not with the yarn: a train belongs to a machine, and gives drafts as well as twists.

use crate::formula::formula;
use crate::number::{Number, V};
use crate::quantity::{Count, Fraction, Frequency, Length, LinearDensity, Ratio, Twist};

/// Turns of the last shaft of a train of wheels for one turn of the first.
#[formula(
    result = "i",
    sources = ["Howard and Bullough 1909", "definition"],
    limits = ["driver and driven go in pairs; where a place is open for the change wheel write 1: the ratio is then the constant of the train", "carriers between two wheels change the direction and not the ratio: leave them out"],
    cautions = ["wheels"],
    slips = ["a driver among the driven", "counting a carrier wheel"]
)]
pub fn train_ratio<N: Number>(
    /// teeth of the driving wheels
    #[q("a", 1.0..=300.0)]
    drivers: &[Count<N>],
    /// teeth of the driven wheels
    #[q("b", 1.0..=300.0)]
    driven: &[Count<N>],
) -> Ratio<N> {
    V::product(drivers.zip(driven).map(|(a, b)| a / b))
}

/// Turns of a spindle for one of the cylinder that drives it by a band.
#[formula(
    result = "i_w",
    sources = ["Howard and Bullough 1909"],
    limits = ["whirl or wharve; the band runs at its middle: its thickness is added to both diameters, 1/8 in in the catalogue of 1909", "without slip: a slack or oily band gives less, see spindle_speed"],
    slips = ["leaving out the thickness of the band: on a small whirl it is much", "adding it to one of the two only"],
    cautions = ["wheels"]
)]
pub fn whirl_ratio<N: Number>(
    /// diameter of the cylinder
    #[q("d_c", 0.05..=0.5)]
    cylinder_diameter: Length<N>,
    /// diameter of the whirl
    #[q("d_w", 0.01..=0.15)]
    whirl_diameter: Length<N>,
    /// thickness of the band
    #[q("e", 0.0..=0.01)]
    band_thickness: Length<N>,
) -> Ratio<N> {
    (cylinder_diameter + band_thickness) / (whirl_diameter + band_thickness)
}

/// Speed of a spindle that a cylinder drives by a band that slips.
#[formula(
    result = "n_s",
    sources = ["practice"],
    limits = ["measure the slip on spindles all over the machine: it differs from band to band and with the weather"],
    slips = ["taking the speed that the diameters give for that of the spindle"],
    cautions = ["wheels"]
)]
pub fn spindle_speed<N: Number>(
    /// speed of the cylinder
    #[q("n_c", 50.0..=2500.0)]
    cylinder_speed: Frequency<N>,
    /// turns of the spindle for one of the cylinder, without slip
    #[q("i_w", 1.0..=15.0)]
    whirl_ratio: Ratio<N>,
    /// slip of the band
    #[q("x", 0.0..=0.15)]
    slip: Fraction<N>,
) -> Frequency<N> {
    cylinder_speed * whirl_ratio * (1.0 - slip)
}

/// Twist constant of a machine: the twist that a train of wheels gives, a place of it open.
#[formula(
    result = "C_t",
    sources = ["Howard and Bullough 1909"],
    limits = ["counted from the delivery roller to the cylinder, as if the roller drove: the power mostly runs the other way, and a wheel that drives in the machine is then driven here; write 1 where the change wheel goes", "twist is the constant over the teeth where the change wheel is among the driven of this count, the constant times the teeth where among its drivers", "with all wheels in the lists it is the twist itself"],
    cautions = ["wheels"],
    slips = ["the diameter of the roller for its circumference", "driver for driven: the way of the power for the way of the count"]
)]
pub fn twist_constant<N: Number>(
    /// turns of the spindle for one of the cylinder
    #[q("i_w", 1.0..=15.0)]
    whirl_ratio: Ratio<N>,
    /// circumference of the delivery roller
    #[q("C", 0.05..=0.5)]
    roller_circumference: Length<N>,
    /// teeth of the driving wheels
    #[q("a", 1.0..=300.0)]
    drivers: &[Count<N>],
    /// teeth of the driven wheels
    #[q("b", 1.0..=300.0)]
    driven: &[Count<N>],
) -> Twist<N> {
    let train = V::product(drivers.zip(driven).map(|(a, b)| a / b)).named([
        "i",
        "",
        "ratio of the train of wheels",
    ]);
    train * whirl_ratio / roller_circumference
}

/// Draft constant of a pair of rollers: the draft that the train between them gives, a place of it
/// open.
#[formula(
    result = "C_d",
    sources = ["Howard and Bullough 1909", "definition"],
    limits = ["counted from the back roller to the front roller, as if the back roller drove: the power mostly runs the other way, and a wheel that drives in the machine is then driven here; write 1 where the change wheel goes", "draft is the constant over the teeth where the change wheel is among the driven of this count, the constant times the teeth where among its drivers", "with all wheels in the lists it is the draft itself"],
    cautions = ["wheels"],
    slips = ["leaving out that the rollers differ in diameter", "driver for driven: the way of the power for the way of the count"]
)]
pub fn draft_constant<N: Number>(
    /// diameter of the front roller
    #[q("d_f", 0.015..=0.3)]
    front_roller_diameter: Length<N>,
    /// diameter of the back roller
    #[q("d_b", 0.015..=0.3)]
    back_roller_diameter: Length<N>,
    /// teeth of the driving wheels
    #[q("a", 1.0..=300.0)]
    drivers: &[Count<N>],
    /// teeth of the driven wheels
    #[q("b", 1.0..=300.0)]
    driven: &[Count<N>],
) -> Ratio<N> {
    let train = V::product(drivers.zip(driven).map(|(a, b)| a / b)).named([
        "i",
        "",
        "ratio of the train of wheels",
    ]);
    front_roller_diameter / back_roller_diameter * train
}

/// Draft that a change wheel gives, where draft falls as teeth rise.
#[formula(
    result = "D",
    sources = ["Howard and Bullough 1909"],
    limits = ["for a wheel in the place where draft goes as 1/teeth; read the constant off the machine or its plate"],
    slips = ["taking draft as proportional to the teeth"]
)]
#[inverse(
    "The change wheel that would give a wanted draft, where draft falls as teeth rise.",
    wheel_for_draft(draft_constant, draft "draft wanted": 1.0..=40.0) -> teeth
        = draft_constant / draft,
    limits = ["a wheel of the mill's own stands nearest above or below"],
    slips = ["rounding to a wheel that nobody owns"],
    cautions = ["wheels"]
)]
pub fn draft_from_wheel<N: Number>(
    /// draft constant: draft times teeth
    #[q("C_d", 20.0..=2000.0)]
    draft_constant: Ratio<N>,
    /// teeth of the wheel
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
) -> Ratio<N> {
    draft_constant / teeth
}

/// Draft that makes one count of another, with the ends fed together.
#[formula(
    result = "D",
    sources = ["Lincoln 1885", "definition"],
    limits = ["waste and contraction not included: twist shortens what is delivered"],
    slips = ["leaving out the doublings", "dividing the tex delivered by the tex fed"]
)]
pub fn draft_of_counts<N: Number>(
    /// count fed, of one end
    #[q("T_i", 2.0..=100000.0)]
    fed_count: LinearDensity<N>,
    /// count delivered
    #[q("T_o", 2.0..=100000.0)]
    delivered_count: LinearDensity<N>,
    /// ends fed together
    #[q("n_d", 1.0..=100.0)]
    doublings: Count<N>,
) -> Ratio<N> {
    fed_count * doublings / delivered_count
}

/// Draft of several machines or zones together.
#[formula(
    result = "D",
    sources = ["Britannica 1911"],
    limits = ["one after the other; doublings not included"],
    slips = ["adding drafts"]
)]
pub fn total_draft<N: Number>(
    /// draft of each machine or zone
    #[q("d", 0.9..=50.0)]
    drafts: &[Ratio<N>],
) -> Ratio<N> {
    V::product(drafts)
}

/// Doublings of several machines together.
#[formula(
    result = "N",
    sources = ["Britannica 1911"],
    limits = ["one machine after the other"],
    slips = ["adding doublings"]
)]
pub fn total_doublings<N: Number>(
    /// ends fed together at each machine
    #[q("n", 1.0..=100.0)]
    doublings_by_machine: &[Count<N>],
) -> Count<N> {
    V::product(doublings_by_machine)
}
