//! Diameter, packing and the slope of the twist; wraps.

use std::f64::consts::PI;

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::ENGLISH_COTTON;
use crate::quantity::{
    Angle, Density, Diameter, Fraction, LinearDensity, SpecificVolume, Twist, TwistFactor,
};

/// Volume that a gram of solid fibre fills.
#[formula(
    result = "v_f",
    sources = ["Morton and Hearle", "definition"],
    limits = ["the fibre alone, without the air of the yarn; density at the regain that the fibre has"],
    slips = ["taking it for the specific volume of the yarn, which holds as much air or more"]
)]
pub fn fibre_specific_volume<N: Number>(
    /// density of the fibre
    #[q("ρ", 0.9..=2.6)]
    fibre_density: Density<N>,
) -> SpecificVolume<N> {
    1.0 / fibre_density
}

/// Volume that a gram of yarn fills, air and all.
#[formula(
    result = "v",
    sources = ["GATE solutions", "definition"],
    limits = ["how closely a yarn packs goes by its twist, its count and its fibre; 0.60 and 0.65 are taught for cotton; woollen is looser (common practice)"],
    slips = ["leaving out the packing: the yarn comes out as thin as solid fibre"]
)]
pub fn yarn_specific_volume<N: Number>(
    /// share of the section that is fibre
    #[q("φ", 0.15..=0.9)]
    packing_fraction: Fraction<N>,
    /// density of the fibre
    #[q("ρ", 0.9..=2.6)]
    fibre_density: Density<N>,
) -> SpecificVolume<N> {
    1.0 / (packing_fraction * fibre_density)
}

/// Share of a yarn's section that is fibre, from its measured diameter.
#[formula(
    result = "φ",
    sources = ["definition"],
    limits = ["a round yarn; the diameter read over its hairs or under pressure gives another value"],
    slips = ["the radius for the diameter: a quarter of the section, four times the packing"]
)]
pub fn packing_fraction<N: Number>(
    /// diameter of the yarn
    #[q("d", 0.03..=6.0)]
    yarn_diameter: Diameter<N>,
    /// yarn count
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// density of the fibre
    #[q("ρ", 0.9..=2.6)]
    fibre_density: Density<N>,
) -> Fraction<N> {
    let volume = (1000.0 * PI / 4.0 * yarn_diameter.squared() / count).named([
        "v",
        "cm³/g",
        "room that a gram of yarn takes",
    ]);
    1.0 / (volume * fibre_density)
}

/// Diameter of a round yarn from its count and specific volume.
#[formula(
    result = "d",
    sources = ["Balasubramanian", "definition"],
    limits = ["a round yarn of even thickness, free of pressure: in cloth it is flattened"],
    slips = ["proportion instead of square root when the count changes", "density of the fibre for that of the yarn"]
)]
pub fn yarn_diameter<N: Number>(
    /// specific volume of the yarn
    #[q("v", 0.7..=6.0)]
    specific_volume: SpecificVolume<N>,
    /// yarn count
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
) -> Diameter<N> {
    (4.0 * specific_volume * count / (1000.0 * PI)).sqrt()
}

/// Diameter of a cotton yarn by Peirce's round number: an inch over 28 times the root of the count.
#[formula(
    result = "d",
    sources = ["Textile Coach", "Balasubramanian"],
    limits = ["cotton of specific volume 1.1 cm³/g, rounded: 27.93 would be exact", "a woollen or a soft yarn is thicker: take its own specific volume"],
    slips = ["another system's count in place of the English cotton count"]
)]
pub fn peirce_diameter<N: Number>(
    /// yarn count
    #[q("T", 2.0..=500.0)]
    count: LinearDensity<N>,
) -> Diameter<N> {
    // Of 840 yd/lb.
    let number = (ENGLISH_COTTON / count).named(["N", "Ne", "count"]);
    25.4 / (28.0 * number.sqrt())
}

/// Diameter of a yarn from its count and the density of its fibre, packed as spun yarns commonly are.
#[formula(
    result = "d",
    sources = ["GATE solutions"],
    limits = ["fibre fills about 0.65 of the yarn; a woollen yarn packs less and is thicker: yarn_diameter with its own specific volume", "printed for cotton"],
    slips = ["the density of the yarn for that of the fibre", "centimetres: 4.44 × 10⁻³"]
)]
pub fn diameter_by_fibre_density<N: Number>(
    /// yarn count
    #[q("T", 2.0..=500.0)]
    count: LinearDensity<N>,
    /// density of the fibre
    #[q("ρ", 0.9..=1.6)]
    fibre_density: Density<N>,
) -> Diameter<N> {
    0.0444 * (count / fibre_density).sqrt()
}

/// Diameter of a yarn from that of a yarn like it of another count.
///
/// It serves as well for the diameters side by side in an inch: give them in `1/in`.
#[formula(
    result = "d₂",
    sources = ["Taylor 1909", "Brooks 1892"],
    limits = ["yarns of one make: fibre, spinning and twist factor alike"],
    slips = ["proportion instead of square root", "the counts the wrong way round: the coarser yarn is the thicker"]
)]
pub fn diameter_rescaled<N: Number>(
    /// known diameter
    #[q("d", 0.03..=6.0)]
    yarn_diameter: Diameter<N>,
    /// count of the yarn that it is known of
    #[q("T", 1.0..=2000.0)]
    count: LinearDensity<N>,
    /// count of the other yarn
    #[q("T₂", 1.0..=2000.0)]
    new_count: LinearDensity<N>,
) -> Diameter<N> {
    yarn_diameter * (new_count / count).sqrt()
}

/// Slope of the fibres on the surface of a yarn to its axis.
#[formula(
    result = "α",
    sources = ["definition"],
    limits = ["fibres in even helices about a round yarn; those inside slope less"],
    slips = ["turns per centimetre with a diameter in millimetres", "the radius for the diameter"]
)]
#[inverse(
    "Twist that gives the surface fibres a slope.",
    twist_for_helix_angle(helix_angle "slope wanted": 2.0..=50.0, yarn_diameter) -> twist
        = 1000.0 * (helix_angle * (PI / 180.0)).tan() / (PI * yarn_diameter),
    limits = ["fibres in even helices about a round yarn", "twist itself makes a yarn thinner: measure the diameter at about this twist"],
    slips = ["the sine of the angle for its tangent", "the radius for the diameter"]
)]
pub fn helix_angle<N: Number>(
    /// twist
    #[q("t", 20.0..=4000.0)]
    twist: Twist<N>,
    /// diameter of the yarn
    #[q("d", 0.03..=6.0)]
    yarn_diameter: Diameter<N>,
) -> Angle<N> {
    (PI / 1000.0 * yarn_diameter * twist).atan() * (180.0 / PI)
}

/// Slope of the surface fibres from the twist factor: yarns of one factor and make slope alike.
#[formula(
    result = "α",
    sources = ["definition"],
    limits = ["fibres in even helices about a round yarn; those inside slope less"],
    slips = ["a factor of another count system", "density of the fibre for that of the yarn"]
)]
pub fn helix_angle_from_factor<N: Number>(
    /// twist factor
    #[q("K", 5.0..=80.0)]
    twist_factor: TwistFactor<N>,
    /// specific volume of the yarn
    #[q("v", 0.7..=6.0)]
    specific_volume: SpecificVolume<N>,
) -> Angle<N> {
    (2.0 * twist_factor * (PI * 1e-5 * specific_volume).sqrt()).atan() * (180.0 / PI)
}
