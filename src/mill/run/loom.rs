//! The loom at work.

use super::minding::{People, people};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{
    Count, Crimp, Duration, Fraction, Frequency, Length, LinearDensity, Mass, Ratio, Sett,
    Shrinkage, Speed,
};
use crate::{cloth, mill, yarn};

/// The loom itself, and how it runs.
#[derive(Clone, Debug, Inputs)]
pub struct LoomMachine<N> {
    /// picks woven in a minute, running
    #[q("r_l", 20.0..=600.0, like = "90 picks/min")]
    pub loom_speed: Frequency<N>,
    /// The efficiency, or the stops that it follows from.
    #[one_of("the efficiency")]
    pub running: LoomRunning<N>,
}

/// How it is known for how much of the time a loom weaves.
#[derive(Clone, Debug, Inputs)]
pub enum LoomRunning<N> {
    /// efficiency, with every stop in it
    #[q("η", 0.3..=0.95, like = "75 %")]
    Efficiency(Fraction<N>),
    /// from its stops
    #[group]
    Stopping(LoomStops<N>),
}

/// The stops of a loom.
#[derive(Clone, Debug, Inputs)]
pub struct LoomStops<N> {
    /// How often it stops.
    #[one_of("how often the loom stops")]
    pub stops: StopsCounted<N>,
    /// time that the loom is stopped for a stop
    #[q("τ_s", 0.005..=0.3, like = "2 min")]
    pub stop_time: Duration<N>,
}

/// How the stops of a loom are counted.
#[derive(Clone, Debug, Inputs)]
pub enum StopsCounted<N> {
    /// stops in a time of running
    #[q("f_s", 0.0..=0.5, like = "6 /h", zero)]
    StopRate(Frequency<N>),
    /// stops in a hundred thousand picks
    #[q("s", 0.0..=500.0, zero)]
    StopsPer100000Picks(Ratio<N>),
}

/// The weft of a loom.
#[derive(Clone, Debug, Inputs)]
pub struct LoomWeft<N> {
    /// width in the reed
    #[q("B", 0.05..=4.0)]
    pub reed_width: Length<N>,
    /// count of the weft
    #[q("T₂", 5.0..=2000.0)]
    pub weft_count: Option<LinearDensity<N>>,
}

/// How it is known how many looms a weaver minds.
#[derive(Clone, Debug, Inputs)]
pub enum LoomsMinded<N> {
    /// looms that a weaver minds
    #[q("a_p", 1.0..=100.0)]
    PerPerson(Count<N>),
    /// from the time that stops take
    #[group]
    ByStops(WeaverTime<N>),
}

/// The time that stops take of a weaver.
#[derive(Clone, Debug, Inputs)]
pub struct WeaverTime<N> {
    /// weaver's time for a stop
    #[q("τ_a", 0.003..=0.3)]
    pub attention_time: Duration<N>,
    /// share of the weaver's time for stops
    #[q("ψ", 0.2..=0.9)]
    pub work_load: Fraction<N>,
}

/// What [`loom()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct LoomInputs<N> {
    /// The loom.
    #[group]
    pub machine: LoomMachine<N>,
    /// picks in the cloth off the loom
    #[q("n₂", 1.0..=60.0, like = "4.6 picks/cm")]
    pub weft_sett: Sett<N>,
    /// The weft.
    #[group]
    pub weft: Option<LoomWeft<N>>,
    /// cloth to weave, off the loom
    #[q("L", 0.5..=10_000.0)]
    pub cloth_length: Option<Length<N>>,
    /// looms that share the cloth
    #[q("k_l", 1.0..=100.0, or = 1.0)]
    pub looms: Count<N>,
    /// How many looms a weaver minds.
    #[one_of("how many looms a weaver minds")]
    pub looms_minded: Option<LoomsMinded<N>>,
}

/// What [`loom()`] answers.
#[derive(Clone, Debug, Results)]
pub struct LoomResults<N> {
    /// efficiency, with every stop in it
    #[block = "Output of a loom"]
    pub efficiency: Fraction<N>,
    /// cloth in an hour
    pub cloth_rate: Length<N>,
    /// picks in an hour
    pub pick_rate: Count<N>,
    /// weft put in, running
    pub weft_speed: Option<Speed<N>>,
    /// weft in an hour
    pub weft_rate: Option<Length<N>>,
    /// mass of the weft in an hour
    pub weft_output: Option<Mass<N>>,
    /// picks
    #[block = "The lot"]
    pub picks: Option<Count<N>>,
    /// loom hours
    pub loom_hours: Option<Duration<N>>,
    /// time on all looms, stops included
    pub time: Option<Duration<N>>,
    /// weft, without turns and waste
    pub weft_yarn_length: Option<Length<N>>,
    /// mass of the weft, without turns and waste
    pub weft_mass: Option<Mass<N>>,
    /// stops in a time of running
    #[block = "People"]
    pub stop_rate: Option<Frequency<N>>,
    /// looms that a weaver can mind, whole ones
    pub looms_per_person: Option<Count<N>>,
    /// People and their hours.
    #[part]
    pub people: Option<People<N>>,
}

/// The loom at work: efficiency from its stops, cloth and weft in an hour, hours, looms of a weaver.
///
/// Give the `efficiency`, or `stop_time` with the stops: in a time of running (`stop_rate`) or in a hundred
/// thousand picks (`stops_per_100000_picks`). The stops are in the efficiency and are not taken off twice.
/// `attention_time` is the weaver's own time for a stop, `work_load` the share of the weaver's time for
/// stops.
#[calculation(
    title = "The loom at work",
    example = ">>> import hankwise as hw
>>> loom = hw.mill.loom(loom_speed=\"90 picks/min\", weft_sett=\"4.6 picks/cm\", stop_rate=\"6 /h\",
...                     stop_time=\"2 min\", attention_time=\"1 min\", work_load=\"70 %\")
>>> loom[\"efficiency\"], loom[\"cloth_rate\"], loom[\"looms_per_person\"]
(<fraction: 83.33 %>, <length: 9.783 m>, <number: 8>)",
    cautions = ["loom", "machines"],
    check = check
)]
pub fn loom<N: Number>(given: &LoomInputs<N>) -> LoomResults<N> {
    let (speed, sett, looms) = (given.machine.loom_speed, given.weft_sett, given.looms);
    let hour = Duration::base(N::constant(1.0));
    let one = Fraction::base(N::constant(1.0));
    let efficiency = efficiency(&given.machine);
    let delivery = mill::loom_delivery_speed(speed, sett, efficiency);
    let weft = given.weft.as_ref();
    let width = weft.map(|weft| weft.reed_width);
    let no_crimp = Crimp::base(N::constant(0.0));
    let weft_speed = width.map(|width| mill::weft_insertion(speed, width, no_crimp));
    // In an hour the loom runs for the share of it that is its efficiency.
    let weft_rate = weft_speed.map(|weft| mill::length_wound(weft, hour, efficiency));
    let count = weft.and_then(|weft| weft.weft_count);
    let mass = |length: Option<Length<N>>| {
        count.zip(length).map(|(count, length)| yarn::mass_of_length(count, length))
    };
    let no_shrinkage = Shrinkage::base(N::constant(0.0));
    let picks = given.cloth_length.map(|length| cloth::picks_in_piece(length, no_shrinkage, sett));
    let loom_hours = picks.map(|picks| mill::loom_time(picks, speed, efficiency));
    let time = loom_hours.map(|hours| Duration::from(hours.v() / looms.v()));
    let no_turn = Length::base(N::constant(0.0));
    let weft_yarn_length =
        picks.zip(width).map(|(picks, width)| cloth::weft_per_piece(picks, width, no_turn));
    let (mut stop_rate, mut looms_per_person, mut minded) = (None, None, None);
    match (&given.looms_minded, stops(&given.machine)) {
        (Some(LoomsMinded::PerPerson(each)), _) => minded = Some(*each),
        (Some(LoomsMinded::ByStops(WeaverTime { attention_time, work_load })), Some(stops)) => {
            let each = mill::looms_for_weaver(stops, *attention_time, efficiency, *work_load);
            let each = Count::from(each.v().round_down(1e-6));
            (stop_rate, looms_per_person, minded) = (Some(stops), Some(each), Some(each));
        }
        _ => {}
    }
    LoomResults {
        efficiency,
        cloth_rate: mill::length_wound(delivery, hour, one),
        pick_rate: mill::picks_in_time(speed, hour, efficiency),
        weft_speed,
        weft_rate,
        weft_output: mass(weft_rate),
        picks,
        loom_hours,
        time,
        weft_yarn_length,
        weft_mass: mass(weft_yarn_length),
        stop_rate,
        looms_per_person,
        people: minded.map(|each| people(looms, each, time)),
    }
}

/// The efficiency, as given or from the stops.
pub(crate) fn efficiency<N: Number>(machine: &LoomMachine<N>) -> Fraction<N> {
    match &machine.running {
        LoomRunning::Efficiency(efficiency) => *efficiency,
        LoomRunning::Stopping(LoomStops { stops, stop_time }) => match stops {
            StopsCounted::StopRate(rate) => mill::efficiency_with_stops(*rate, *stop_time),
            StopsCounted::StopsPer100000Picks(stops) => {
                mill::efficiency_with_stops_of_picks(*stops, *stop_time, machine.loom_speed)
            }
        },
    }
}

/// The stops in a time of running, where they were counted.
fn stops<N: Number>(machine: &LoomMachine<N>) -> Option<Frequency<N>> {
    let LoomRunning::Stopping(LoomStops { stops, .. }) = &machine.running else { return None };
    Some(match stops {
        StopsCounted::StopRate(rate) => *rate,
        StopsCounted::StopsPer100000Picks(stops) => {
            Frequency::from(stops.v() * machine.loom_speed.v() / 1e5)
        }
    })
}

fn check(given: &LoomInputs<f64>, found: &LoomResults<f64>, check: &mut Check<'_>) -> Result<()> {
    if let LoomRunning::Stopping(stops) = &given.machine.running
        && found.efficiency.value() <= 0.0
    {
        refuse!(check, stops.stop_time, "the loom never runs; write fewer or shorter stops");
    }
    if given.looms_minded.is_none() && found.time.is_none() {
        check.idle(&["looms"], "cloth_length or per_person");
    }
    let Some(LoomsMinded::ByStops(weaver)) = &given.looms_minded else { return Ok(()) };
    match (found.stop_rate, found.looms_per_person) {
        (None, _) => refuse!(
            check,
            weaver.attention_time,
            "attention_time was given without stops; give stop_rate and stop_time instead of the \
             efficiency, or per_person, the looms that a weaver minds"
        ),
        (Some(stops), _) if stops.value() == 0.0 => refuse!(
            check,
            weaver.attention_time,
            "no loom ever stops, so a weaver could mind any number of looms; omit attention_time and \
             work_load"
        ),
        (_, Some(each)) if each.value() < 1.0 => refuse!(
            check,
            weaver.attention_time,
            "the stops of a single loom take more of the weaver's time than work_load leaves; write fewer \
             stops, a shorter attention_time or a greater work_load"
        ),
        _ => Ok(()),
    }
}
