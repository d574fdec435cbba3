//! The mule: draft, twist, draws, output.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Fraction, Frequency, Length, LinearDensity, MassRate, Ratio, Twist,
};

/// Yarn wound on in a draw.
#[formula(
    result = "L_w",
    sources = ["practice"],
    limits = ["never reach between carriage and headstock while the mule runs"],
    slips = ["taking the travel for the length wound"]
)]
pub fn wound_length<N: Number>(
    /// travel of the carriage
    #[q("S", 1.2..=2.5)]
    travel: Length<N>,
    /// let-in of the carriage
    #[q("i_c", 0.0..=0.2)]
    let_in: Length<N>,
) -> Length<N> {
    travel - let_in
}

/// Draft of the mule: travel over slubbing delivered.
#[formula(
    result = "D",
    sources = ["Canmore MV 000240", "practice"],
    limits = ["1.33 to 1.5 on the mule of 1870; 1.2 to 1.5 is common practice for woollen"],
    slips = ["travel over length wound"]
)]
#[inverse(
    "Slubbing to deliver in a draw of the mule for a draft.",
    delivery_for_draft(travel, draft: 1.05..=2.0) -> delivered_length = travel / draft,
    limits = ["draft: travel over delivery"],
    slips = ["dividing the length wound by the draft: it is the travel that is drafted"],
    cautions = ["mule"]
)]
pub fn mule_draft<N: Number>(
    /// travel of the carriage
    #[q("S", 1.2..=2.5)]
    travel: Length<N>,
    /// slubbing delivered in a draw
    #[q("L_d", 0.8..=2.2)]
    delivered_length: Length<N>,
) -> Ratio<N> {
    travel / delivered_length
}

/// The delivery wheel that would give a wanted draft.
#[formula(
    result = "z",
    sources = ["practice"],
    limits = ["for a wheel in the place where the delivery goes with the teeth"],
    cautions = ["wheels"],
    slips = ["rounding to a wheel that nobody owns"]
)]
pub fn delivery_wheel<N: Number>(
    /// travel of the carriage
    #[q("S", 1.2..=2.5)]
    travel: Length<N>,
    /// draft wanted
    #[q("D", 1.05..=2.0)]
    draft: Ratio<N>,
    /// slubbing delivered for each tooth of the wheel
    #[q("p_d", 0.005..=0.2)]
    delivered_per_tooth: Length<N>,
) -> Count<N> {
    travel / draft / delivered_per_tooth
}

/// Slubbing delivered in a draw with a delivery wheel.
#[formula(
    result = "L_d",
    sources = ["practice"],
    limits = ["for a wheel in the place where the delivery goes with the teeth"],
    slips = ["taking the wheel before it was changed"]
)]
pub fn delivered_length<N: Number>(
    /// slubbing delivered for each tooth of the wheel
    #[q("p_d", 0.005..=0.2)]
    delivered_per_tooth: Length<N>,
    /// teeth of the wheel
    #[q("z", 12.0..=150.0)]
    teeth: Count<N>,
) -> Length<N> {
    delivered_per_tooth * teeth
}

/// The single that a slubbing makes.
#[formula(
    result = "T_s",
    sources = ["GATE solutions", "practice"],
    limits = ["both counts in one state, the fibre lost in spinning apart"],
    slips = ["dividing an indirect count by the draft instead of multiplying"]
)]
#[inverse(
    "The slubbing to card for a single.",
    slubbing_for_single(single_count "count of the single": 20.0..=1000.0, wound_length, delivered_length) -> slubbing_count
        = single_count * wound_length / delivered_length,
    slips = ["multiplying by travel over delivery: what is wound is less than the travel"]
)]
pub fn single_from_slubbing<N: Number>(
    /// count of the slubbing
    #[q("T_c", 20.0..=100000.0)]
    slubbing_count: LinearDensity<N>,
    /// slubbing delivered in a draw
    #[q("L_d", 0.8..=2.2)]
    delivered_length: Length<N>,
    /// yarn wound in a draw
    #[q("L_w", 1.2..=2.5)]
    wound_length: Length<N>,
) -> LinearDensity<N> {
    slubbing_count * delivered_length / wound_length
}

/// Turns of the spindle while the carriage runs out.
#[formula(
    result = "z_d",
    sources = ["practice"],
    limits = ["the mean speed over the run: it rises and falls on the way", "never reach between carriage and headstock while the mule runs"],
    slips = ["seconds of the run with turns in a minute", "leaving these turns out of the twist of the yarn"]
)]
pub fn turns_while_drafting<N: Number>(
    /// mean spindle speed while drafting
    #[q("n", 100.0..=6000.0)]
    drafting_speed: Frequency<N>,
    /// time of the run out
    #[q("τ", 0.001..=0.01)]
    drafting_time: Duration<N>,
) -> Count<N> {
    drafting_speed * 60.0 * drafting_time
}

/// Turns of the spindle at the head, once the draft is over.
#[formula(
    result = "z_h",
    sources = ["Nasmith 1890", "practice"],
    limits = ["all turns of a draw are those during the draft and those at the head"],
    slips = ["putting all the twist in at the head, on top of what drafting has put in"]
)]
pub fn turns_at_head<N: Number>(
    /// all turns of the spindle in a draw
    #[q("z_t", 50.0..=2000.0)]
    spindle_turns: Count<N>,
    /// turns while drafting
    #[q("z_d", 0.0..=500.0)]
    drafting_turns: Count<N>,
) -> Count<N> {
    spindle_turns - drafting_turns
}

/// Time that the carriage is at the head for the turns put in there.
#[formula(
    result = "τ_h",
    sources = ["definition"],
    limits = ["starting and stopping of the spindles apart"],
    slips = ["the spindle speed of the draft where the head runs at a second speed"]
)]
pub fn head_time<N: Number>(
    /// turns at the head
    #[q("z_h", 10.0..=2000.0)]
    head_turns: Count<N>,
    /// spindle speed at the head
    #[q("n", 500.0..=8000.0)]
    head_speed: Frequency<N>,
) -> Duration<N> {
    head_turns / (60.0 * head_speed)
}

/// The twist wheel that would give the wanted turns in a draw.
#[formula(
    result = "z",
    sources = ["practice"],
    limits = ["for a wheel in the place where the turns go with the teeth"],
    cautions = ["wheels"],
    slips = ["rounding to a wheel that nobody owns"]
)]
pub fn twist_wheel<N: Number>(
    /// turns of the spindle wanted
    #[q("z_t", 50.0..=2000.0)]
    spindle_turns: Count<N>,
    /// turns for each tooth of the wheel
    #[q("p_t", 0.5..=50.0)]
    turns_per_tooth: Ratio<N>,
) -> Count<N> {
    spindle_turns / turns_per_tooth
}

/// Twist that the mule puts in.
#[formula(
    result = "t",
    sources = ["Nasmith 1890"],
    limits = ["over-end unwinding later adds or takes one turn for each coil"],
    cautions = ["mule"],
    slips = ["dividing by the travel instead of the length wound"]
)]
#[inverse(
    "Turns of the spindle in a draw for a wanted twist.",
    turns_per_draw(twist "twist wanted": 50.0..=1000.0, wound_length, coiling, slip) -> spindle_turns
        = (twist * wound_length + coiling) / (1.0 - slip),
    limits = ["all turns of one draw, during the draft and at the head together"],
    slips = ["dividing by the travel instead of the length wound", "forgetting the turns that coil the yarn to the tip"],
    cautions = ["mule", "wheels"]
)]
pub fn mule_twist<N: Number>(
    /// turns of the spindle in a draw
    #[q("z_t", 50.0..=2000.0)]
    spindle_turns: Count<N>,
    /// slip of the band
    #[q("x", 0.0..=0.1)]
    slip: Fraction<N>,
    /// turns spent in coiling to the spindle tip
    #[q("b_c", 0.0..=20.0)]
    coiling: Count<N>,
    /// yarn wound in a draw
    #[q("L_w", 0.2..=2.5)]
    wound_length: Length<N>,
) -> Twist<N> {
    (spindle_turns * (1.0 - slip) - coiling) / wound_length
}

/// Draws for a length of yarn.
#[formula(
    result = "N",
    sources = ["practice"],
    limits = ["all spindles at work; idle ones are extra"],
    slips = ["forgetting to divide by the spindles"]
)]
pub fn draws<N: Number>(
    /// yarn to spin, all spindles together
    #[q("Y", 100.0..=10000000.0)]
    yarn_length: Length<N>,
    /// spindles at work
    #[q("k_n", 1.0..=600.0)]
    spindles: Count<N>,
    /// yarn wound in a draw
    #[q("L_w", 1.2..=2.5)]
    wound_length: Length<N>,
) -> Count<N> {
    yarn_length / (spindles * wound_length)
}

/// What the mule spins in an hour.
#[formula(
    result = "Q",
    sources = ["practice"],
    limits = ["in the state of the count; efficiency takes in doffing and piecing"],
    slips = ["seconds for minutes in the time of a draw"]
)]
pub fn mule_output<N: Number>(
    /// spindles
    #[q("k_n", 1.0..=600.0)]
    spindles: Count<N>,
    /// yarn wound in a draw
    #[q("L_w", 1.2..=2.5)]
    wound_length: Length<N>,
    /// time of a draw
    #[q("τ_d", 0.003..=0.02)]
    cycle: Duration<N>,
    /// count of the single
    #[q("T", 20.0..=1000.0)]
    count: LinearDensity<N>,
    /// efficiency
    #[q("η", 0.5..=1.0, memory)]
    efficiency: Fraction<N>,
) -> MassRate<N> {
    spindles * wound_length * count * 1e-6 / cycle * efficiency
}
