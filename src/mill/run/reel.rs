//! The reel at work.

use super::lot::{Fed, check_loss, fed};
use super::minding::{People, people};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Frequency, HankRate, Length, LinearDensity, Mass, MassRate, ShareLost,
    Shrinkage,
};
use crate::{mill, yarn};

/// The reel as such.
#[derive(Clone, Debug, Inputs)]
pub struct Reel<N> {
    /// circumference of the reel
    #[q("C_r", 0.9..=2.5, like = "1.37 m")]
    pub reel_circumference: Length<N>,
}

/// The reel, and how it runs.
#[derive(Clone, Debug, Inputs)]
pub struct ReelMachine<N> {
    /// The reel as such.
    #[group]
    pub reel: Reel<N>,
    /// hanks reeled side by side
    #[q("p", 1.0..=60.0, like = "20")]
    pub positions: Count<N>,
    /// speed of the reel
    #[q("n_r", 20.0..=400.0, like = "120 rpm")]
    pub reel_speed: Frequency<N>,
    /// time between doffs: tying, lacing, taking off, piecing up
    #[q("τ_c", 0.02..=0.5, zero, like = "8 min")]
    pub change_time: Duration<N>,
    /// reels at work
    #[q("k", 1.0..=20.0, or = 1.0)]
    pub reels: Count<N>,
}

/// How the size of a hank is known.
#[derive(Clone, Debug, Inputs)]
pub enum HankSize<N> {
    /// mass wanted of a hank, as it comes off the reel
    #[q("m_hw", 0.02..=1.0, like = "100 g")]
    WantedHankMass(Mass<N>),
    /// From the length of the finished hank.
    #[group]
    ByLength(FinishedHank<N>),
    /// turns of the reel for a hank
    #[q("z_r", 10.0..=2000.0, like = "240")]
    ReelTurns(Count<N>),
}

/// The finished hank.
#[derive(Clone, Debug, Inputs)]
pub struct FinishedHank<N> {
    /// length wanted of the finished hank
    #[q("l_w", 20.0..=2000.0, like = "330 m")]
    pub wanted_hank_length: Length<N>,
    /// shrinkage of the hank in scouring
    #[q("s", 0.0..=0.15, or = 0.0)]
    pub shrinkage: Shrinkage<N>,
}

/// How much is reeled.
#[derive(Clone, Debug, Inputs)]
pub enum ReelAmount<N> {
    /// good yarn to reel
    #[q("m_y", 0.1..=10_000.0)]
    YarnMass(Mass<N>),
    /// hanks to reel
    #[q("h", 1.0..=20_000.0)]
    Hanks(Count<N>),
}

/// A lot on the reel.
#[derive(Clone, Debug, Inputs)]
pub struct ReelLot<N> {
    /// How much is reeled.
    #[one_of("how much to reel")]
    pub amount: ReelAmount<N>,
    /// fibre lost as waste, on what is fed
    #[q("w", 0.0..=0.06, memory, zero)]
    pub loss: Option<ShareLost<N>>,
}

/// What [`reel()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct ReelInputs<N> {
    /// The machine.
    #[group]
    pub machine: ReelMachine<N>,
    /// count of the yarn at the reel
    #[q("T", 5.0..=3000.0, like = "300 tex")]
    pub count: LinearDensity<N>,
    /// The size of a hank.
    #[one_of("the size of a hank")]
    pub hank: HankSize<N>,
    /// The lot.
    #[group]
    pub lot: Option<ReelLot<N>>,
    /// reels that a person minds
    #[q("a_p", 1.0..=1500.0)]
    pub per_person: Option<Count<N>>,
}

/// What [`reel()`] answers.
#[derive(Clone, Debug, Results)]
pub struct ReelResults<N> {
    /// turns of the reel for a hank
    #[block = "Settings"]
    pub reel_turns: Count<N>,
    /// yarn in a hank, as reeled
    pub hank_length: Length<N>,
    /// mass of a hank, as it comes off the reel
    pub hank_mass: Mass<N>,
    /// from doff to doff
    pub doff_time: Duration<N>,
    /// hanks in a time, all reels
    #[block = "Output"]
    pub hank_rate: HankRate<N>,
    /// output, all reels
    pub output: MassRate<N>,
    /// The lot.
    #[part]
    pub lot: Option<ReelLotResults<N>>,
    /// People.
    #[block = "People"]
    #[part]
    pub people: Option<People<N>>,
}

/// What a lot on the reel takes.
#[derive(Clone, Debug, Results)]
pub struct ReelLotResults<N> {
    /// full hanks
    #[block = "The lot"]
    pub hanks: Count<N>,
    /// yarn in the lot
    pub yarn_mass: Mass<N>,
    /// yarn left over, for no full hank
    pub left_over: Option<Mass<N>>,
    /// to feed, waste included
    pub mass_in: Option<Mass<N>>,
    /// waste of it
    pub mass_lost: Option<Mass<N>>,
    /// doffs of each reel, the last perhaps not full
    pub doffs: Count<N>,
    /// time of the lot, stops included
    pub time: Duration<N>,
}

/// The reel at work: turns of a hank, hanks, doffs, hours, people.
///
/// Give `wanted_hank_mass` as the hank comes off the reel, in the state of `count`; or `wanted_hank_length`
/// of the finished hank, with its `shrinkage` in scouring; or `reel_turns`. `yarn_mass` or `hanks` is the
/// lot. `change_time` is the time between doffs; no efficiency comes on top.
#[calculation(
    title = "The reel at work",
    example = ">>> import hankwise as hw
>>> reel = hw.mill.reel(reel_circumference=\"1.5 m\", positions=20, reel_speed=\"120 rpm\",
...                     change_time=\"8 min\", count=\"310 tex\", wanted_hank_mass=\"105 g\",
...                     yarn_mass=\"30 kg\")
>>> reel[\"reel_turns\"], reel[\"hanks\"], reel[\"doffs\"]
(<number: 226>, <number: 285>, <number: 15>)",
    cautions = ["machines"],
    check = check
)]
pub fn reel<N: Number>(given: &ReelInputs<N>) -> ReelResults<N> {
    let ReelMachine { positions, reel_speed, change_time, reels, .. } = given.machine;
    let circumference = given.machine.reel.reel_circumference;
    let one = Count::base(N::constant(1.0));
    let reel_turns = match &given.hank {
        HankSize::ReelTurns(turns) => *turns,
        HankSize::ByLength(hank) => {
            yarn::reel_turns(hank.wanted_hank_length, circumference, hank.shrinkage)
        }
        HankSize::WantedHankMass(mass) => {
            yarn::reel_turns_for_mass(*mass, circumference, given.count)
        }
    };
    let hank_mass = yarn::hank_mass(reel_turns, circumference, given.count);
    let doff_time = mill::reeling_time(one, reel_turns, reel_speed, change_time);
    let hourly = Count::from(positions.v() * reels.v() / doff_time.v());
    let lot = given.lot.as_ref().map(|lot| {
        let (hanks, yarn_mass, left_over) = match lot.amount {
            ReelAmount::YarnMass(mass) => {
                let hanks = mill::full_packages(mass, hank_mass);
                let rest = Mass::from((mass.v() - hanks.v() * hank_mass.v()).max(0.0));
                (hanks, mass, Some(rest))
            }
            ReelAmount::Hanks(hanks) => (hanks, (hanks.v() * hank_mass.v()).into(), None),
        };
        let Fed { mass_in, mass_lost } = fed(yarn_mass, lot.loss);
        let side = Count::from(positions.v() * reels.v());
        let doffs = mill::reel_doffs(hanks, side);
        let time = mill::reeling_time(doffs, reel_turns, reel_speed, change_time);
        ReelLotResults { hanks, yarn_mass, left_over, mass_in, mass_lost, doffs, time }
    });
    let time = lot.as_ref().map(|lot| lot.time);
    ReelResults {
        reel_turns,
        hank_length: yarn::reeled_length(reel_turns, circumference, one),
        hank_mass,
        doff_time,
        hank_rate: hourly.v().into(),
        output: (hourly.v() * hank_mass.v()).into(),
        lot,
        people: given.per_person.map(|each| people(reels, each, time)),
    }
}

fn check(given: &ReelInputs<f64>, found: &ReelResults<f64>, check: &mut Check<'_>) -> Result<()> {
    if found.doff_time.value() <= 0.0 {
        refuse!(
            check,
            given.machine.change_time,
            "the reel neither runs nor stops between doffs; write change_time=\"8 min\""
        );
    }
    if let (Some(lot), Some(made)) = (&given.lot, &found.lot) {
        check_loss(lot.loss, check)?;
        if made.hanks.value() < 0.5 {
            refuse!(
                check,
                made.yarn_mass,
                "the yarn makes no full hank of {}; write more yarn or a smaller hank",
                check.say(found.hank_mass)
            );
        }
    }
    check.note("Output", "The time between doffs is in the hours: no efficiency comes on top.");
    Ok(())
}
