//! Hanks by mass, bundles, packages and the time of winding them.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::counts::ENGLISH_COTTON;
use crate::quantity::{
    Count, Duration, Fraction, Length, LinearDensity, Mass, MassRate, Ratio, Speed,
};

/// A millionth: what is whole must not become one more, or one less, by the rounding of binary
/// figures.
const ROUNDING: f64 = 1e-6;
/// Mass of a hank from the turns of the reel.
#[formula(
    result = "m_h",
    sources = ["definition"],
    limits = ["in the state of the count: in oil, at its regain"],
    slips = ["the mass before scouring on the label of a scoured hank"]
)]
pub fn hank_mass<N: Number>(
    /// turns of the reel
    #[q("z_r", 10.0..=2000.0)]
    reel_turns: Count<N>,
    /// circumference of the reel
    #[q("C_r", 0.5..=3.0)]
    reel_circumference: Length<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
) -> Mass<N> {
    reel_turns * reel_circumference * count * 1e-6
}

/// Whole turns of the reel for a hank of a wanted mass.
#[formula(
    result = "z_r",
    sources = ["practice"],
    limits = ["rounded up, so that no hank is light", "mass and count in one state, that at the reel"],
    slips = ["the mass of the finished hank with the count in oil"]
)]
pub fn reel_turns_for_mass<N: Number>(
    /// mass of the hank
    #[q("m_h", 0.01..=2.0)]
    hank_mass: Mass<N>,
    /// circumference of the reel
    #[q("C_r", 0.5..=3.0)]
    reel_circumference: Length<N>,
    /// count at the reel
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
) -> Count<N> {
    (1e6 * hank_mass / (count * reel_circumference) - ROUNDING).ceil()
}

/// Yarn on a reel: turns in a cut or lea, and the number of these.
#[formula(
    result = "Y",
    sources = ["Woodhouse and Kilgour 1921", "Nasmith 1890"],
    limits = ["as reeled: under tension, and before any shrinkage"],
    slips = ["a cut of linen or jute for a lea of cotton: 300 and 120 yards"]
)]
pub fn reeled_length<N: Number>(
    /// turns in a cut or lea
    #[q("z_r", 10.0..=2000.0)]
    reel_turns: Count<N>,
    /// circumference of the reel
    #[q("C_r", 0.5..=3.0)]
    reel_circumference: Length<N>,
    /// number of cuts or leas
    #[q("k", 1.0..=5000.0)]
    cuts: Count<N>,
) -> Length<N> {
    reel_turns * reel_circumference * cuts
}

/// Yarn in a bundle: its hanks, the leas or cuts of a hank, the length of these.
#[formula(
    result = "Y",
    sources = ["Blanco 1917", "Britannica 1911"],
    limits = ["linen: 20 hanks of 10 leas in England, 16⅔ of 12 in Ireland; Scotland sells the spyndle of 4 of 12"],
    slips = ["taking hanks of 10 leas for hanks of 12"]
)]
pub fn bundle_length<N: Number>(
    /// hanks in the bundle
    #[q("h", 1.0..=100.0)]
    hanks: Ratio<N>,
    /// leas or cuts in a hank
    #[q("k", 1.0..=24.0)]
    cuts_per_hank: Count<N>,
    /// length of a lea or cut
    #[q("l", 50.0..=500.0)]
    lea_length: Length<N>,
) -> Length<N> {
    hanks * cuts_per_hank * lea_length
}

/// Spyndles that hanks of a number of cuts make: a spyndle has 48 cuts.
#[formula(
    result = "s",
    sources = ["Woodhouse and Kilgour 1921"],
    limits = ["jute, heavy flax and hemp: cuts of 300 yards"],
    slips = ["the standard hank of 12 cuts where the mill reels its own"]
)]
pub fn spyndles_of_mill_hanks<N: Number>(
    /// hanks
    #[q("h", 1.0..=10000.0)]
    hanks: Count<N>,
    /// cuts in a hank
    #[q("k", 1.0..=24.0)]
    cuts_per_hank: Count<N>,
) -> Ratio<N> {
    hanks * cuts_per_hank / 48.0
}

/// Hanks, or spyndles, that a mass of yarn makes, not rounded to whole ones.
#[formula(
    result = "h",
    sources = ["Woodhouse and Kilgour 1921", "definition"],
    limits = ["mass and count in one state"],
    slips = ["the hank of another trade: 840 yards of cotton, 560 of worsted, a spyndle of 14 400"]
)]
pub fn hanks_in_mass<N: Number>(
    /// mass
    #[q("m_y", 0.01..=10000.0)]
    yarn_mass: Mass<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
    /// length of a hank
    #[q("l_h", 10.0..=20000.0)]
    hank_length: Length<N>,
) -> Ratio<N> {
    1e6 * yarn_mass / (count * hank_length)
}

/// Whole hanks that a mass of yarn makes.
#[formula(
    result = "h",
    sources = ["definition"],
    limits = ["mass and count in one state; waste of reeling taken off before"],
    slips = ["rounding to the nearest: the last hank would be short"]
)]
pub fn full_hanks<N: Number>(
    /// mass
    #[q("m_y", 0.01..=10000.0)]
    yarn_mass: Mass<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
    /// length of a hank
    #[q("l_h", 10.0..=20000.0)]
    hank_length: Length<N>,
) -> Count<N> {
    (1e6 * yarn_mass / (count * hank_length) + ROUNDING).floor()
}

/// Packages that a mass of yarn fills, the last one perhaps not full.
#[formula(
    result = "p",
    sources = ["definition"],
    limits = ["net mass: without the tube or cone"],
    slips = ["the mass with its cone", "rounding down: the rest needs a package too"]
)]
pub fn packages_for_mass<N: Number>(
    /// yarn to wind
    #[q("m_y", 0.05..=10000.0)]
    yarn_mass: Mass<N>,
    /// yarn on a full package
    #[q("g", 0.02..=10.0)]
    package_mass: Mass<N>,
) -> Count<N> {
    (yarn_mass / package_mass - ROUNDING).ceil()
}

/// Yarn on a package, from its mass with and without yarn.
#[formula(
    result = "Y",
    sources = ["Winding problems 2014", "definition"],
    limits = ["yarn and count in one state; the tube takes up water too where it is of paper or wood"],
    slips = ["forgetting to take off the cone"]
)]
pub fn length_on_package<N: Number>(
    /// package as weighed
    #[q("g_b", 0.02..=10.0)]
    gross_mass: Mass<N>,
    /// the empty tube or cone
    #[q("g_t", 0.0..=0.5)]
    tube_mass: Mass<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
) -> Length<N> {
    1e6 * (gross_mass - tube_mass) / count
}

/// Knots in a package from joining the bobbins that it was wound from.
#[formula(
    result = "k",
    sources = ["definition"],
    limits = ["begun on a full bobbin; joins only: knots of broken and cleared yarn are extra"],
    slips = ["a knot for each bobbin: the first needs none"]
)]
pub fn knots_in_package<N: Number>(
    /// yarn on the package
    #[q("g", 0.02..=10.0)]
    package_mass: Mass<N>,
    /// yarn on a bobbin
    #[q("g_k", 0.01..=2.0)]
    bobbin_mass: Mass<N>,
) -> Count<N> {
    ((package_mass / bobbin_mass - ROUNDING).ceil() - 1.0).max(0.0)
}

/// Time to wind a length, all drums at work.
#[formula(
    result = "τ",
    sources = ["Winding problems 2014"],
    limits = ["efficiency takes in creeling, doffing, knots and stops"],
    slips = ["multiplying by the efficiency instead of dividing", "the speed of one drum for that of all"]
)]
pub fn winding_time<N: Number>(
    /// length to wind
    #[q("Y", 100.0..=100000000.0)]
    yarn_length: Length<N>,
    /// winding speed of a drum
    #[q("v", 20.0..=1500.0, memory)]
    winding_speed: Speed<N>,
    /// drums at work
    #[q("k_n", 1.0..=600.0)]
    drums: Count<N>,
    /// efficiency
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
) -> Duration<N> {
    yarn_length / (60.0 * winding_speed * drums * efficiency)
}

/// What drums wind in an hour.
#[formula(
    result = "Q",
    sources = ["Winding problems 2014"],
    limits = ["in the state of the count; efficiency takes in creeling, doffing, knots and stops"],
    slips = ["minutes for hours"]
)]
pub fn winding_output<N: Number>(
    /// winding speed of a drum
    #[q("v", 20.0..=1500.0, memory)]
    winding_speed: Speed<N>,
    /// drums at work
    #[q("k_n", 1.0..=600.0)]
    drums: Count<N>,
    /// efficiency
    #[q("η", 0.3..=1.0)]
    efficiency: Fraction<N>,
    /// count
    #[q("T", 1.0..=4000.0)]
    count: LinearDensity<N>,
) -> MassRate<N> {
    60.0 * winding_speed * drums * efficiency * count * 1e-6
}

/// Metric ticket of a sewing thread: three times its metric count.
///
/// For a thread of which the count itself is known take one end.
#[formula(
    result = "k",
    sources = ["Thread tickets"],
    limits = ["nominal: contraction and finish make the thread heavier than its ticket says", "spun and core-spun threads; each maker's list comes first"],
    slips = ["three times the count of the single, without dividing by the ends", "a cotton ticket taken for a metric one"]
)]
pub fn metric_ticket<N: Number>(
    /// count of an end
    #[q("T_s", 2.0..=500.0)]
    single_count: LinearDensity<N>,
    /// ends in the thread
    #[q("N", 1.0..=12.0)]
    ends: Count<N>,
) -> Ratio<N> {
    3.0 * (1000.0 / (single_count * ends))
}

/// Cotton ticket of a sewing thread: three times its English cotton count.
///
/// For a thread of which the count itself is known take one end.
#[formula(
    result = "k",
    sources = ["Thread tickets"],
    limits = ["nominal: contraction and finish make the thread heavier than its ticket says", "each maker's list comes first"],
    slips = ["three times the count of the single, without dividing by the ends", "a metric ticket taken for a cotton one"]
)]
pub fn cotton_ticket<N: Number>(
    /// count of an end
    #[q("T_s", 2.0..=500.0)]
    single_count: LinearDensity<N>,
    /// ends in the thread
    #[q("N", 1.0..=12.0)]
    ends: Count<N>,
) -> Ratio<N> {
    3.0 * (ENGLISH_COTTON / (single_count * ends))
}

/// Single of a sewing cotton from its number: any number of cords equals three ends of that count.
#[formula(
    result = "T_s",
    sources = ["Dooley 1914"],
    limits = ["three-cord and six-cord sewing cotton; contraction not included"],
    slips = ["taking the number for the count of the single: a No. 36 six-cord is of 72s"]
)]
pub fn cord_single<N: Number>(
    /// the number, as a cotton count
    #[q("T", 2.0..=100.0)]
    cord_number: LinearDensity<N>,
    /// cords
    #[q("n", 2.0..=12.0)]
    cords: Count<N>,
) -> LinearDensity<N> {
    3.0 * cord_number / cords
}
