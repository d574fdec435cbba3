//! Finishing machines at work: cloth run through, loads in turn, a dryer.

use super::lot::{Fed, check_loss, fed};
use super::minding::{People, people};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Fraction, Length, Mass, MassRate, Regain, ShareLost, Speed,
};
use crate::{fibre, mill};

/// Machines at work on one lot, and the people who mind them.
#[derive(Clone, Debug, Inputs)]
pub struct MachinesAtWork<N> {
    /// machines that share the goods
    #[q("k", 1.0..=10.0, or = 1.0)]
    pub machines: Count<N>,
    /// machines that a person minds
    #[q("a_p", 1.0..=100.0)]
    pub per_person: Option<Count<N>>,
}

/// What [`passages()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct PassagesInputs<N> {
    /// length of the cloth
    #[q("L", 0.5..=10_000.0, like = "60 m")]
    pub cloth_length: Length<N>,
    /// speed of the cloth
    #[q("v", 0.2..=100.0, like = "8 m/min")]
    pub cloth_speed: Speed<N>,
    /// passages
    #[q("n", 1.0..=20.0, or = 1.0)]
    pub passages: Count<N>,
    /// time for a passage besides running: sewing on, threading
    #[q("τ_c", 0.0..=2.0, or = 0.0)]
    pub change_time: Duration<N>,
    /// Machines and people.
    #[group]
    pub at_work: MachinesAtWork<N>,
}

/// What [`passages()`] answers.
#[derive(Clone, Debug, Results)]
pub struct PassagesResults<N> {
    /// cloth for each machine
    #[block = "The lot"]
    pub length_per_machine: Length<N>,
    /// length run through each machine
    pub run_length: Length<N>,
    /// time
    pub time: Duration<N>,
    /// cloth finished in an hour
    pub cloth_rate: Length<N>,
    /// People and their hours.
    #[part]
    pub people: Option<People<N>>,
}

/// Cloth through a machine, several times if need be: length run and hours.
///
/// `change_time` is the time for a passage besides running, to sew on and thread; no efficiency comes on
/// top.
#[calculation(
    title = "Cloth through a machine",
    example = ">>> import hankwise as hw
>>> hw.mill.passages(cloth_length=\"60 m\", cloth_speed=\"8 m/min\", passages=4,
...                  change_time=\"10 min\")[\"time\"]
<time: 1.167 h>",
    cautions = ["machines"],
    check = check_passages
)]
pub fn passages<N: Number>(given: &PassagesInputs<N>) -> PassagesResults<N> {
    let MachinesAtWork { machines, per_person } = given.at_work;
    let length_per_machine = Length::from(given.cloth_length.v() / machines.v());
    let time = mill::passage_time(
        length_per_machine,
        given.cloth_speed,
        given.passages,
        given.change_time,
    );
    PassagesResults {
        length_per_machine,
        run_length: Length::from(length_per_machine.v() * given.passages.v()),
        time,
        cloth_rate: Length::from(given.cloth_length.v() / time.v()),
        people: per_person.map(|each| people(machines, each, Some(time))),
    }
}

fn check_passages(
    given: &PassagesInputs<f64>,
    found: &PassagesResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if found.time.value() <= 0.0 {
        refuse!(check, given.cloth_speed, "the cloth runs through in no time; write a lower speed");
    }
    check.note("The lot", "The change time is in the hours: no efficiency comes on top.");
    Ok(())
}

/// What [`batches()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct BatchesInputs<N> {
    /// mass of the goods
    #[q("m_g", 0.5..=10_000.0, like = "40 kg")]
    pub goods_mass: Mass<N>,
    /// largest load, in the same state as the goods
    #[q("g", 0.5..=500.0, like = "12 kg")]
    pub capacity: Mass<N>,
    /// running time of a load
    #[q("τ_r", 0.02..=24.0, like = "45 min")]
    pub time_per_load: Duration<N>,
    /// time to empty and fill
    #[q("τ_c", 0.0..=4.0, or = 0.0)]
    pub change_time: Duration<N>,
    /// fibre lost as waste, on what is fed
    #[q("w", 0.0..=0.06, memory, zero)]
    pub loss: Option<ShareLost<N>>,
    /// Machines and people.
    #[group]
    pub at_work: MachinesAtWork<N>,
}

/// What [`batches()`] answers.
#[derive(Clone, Debug, Results)]
pub struct BatchesResults<N> {
    /// to feed, waste included
    #[block = "The lot"]
    pub mass_in: Option<Mass<N>>,
    /// waste of it
    pub mass_lost: Option<Mass<N>>,
    /// loads
    pub loads: Count<N>,
    /// each load, if all are alike
    pub even_load: Mass<N>,
    /// the last load, if the others are full
    pub last_load: Mass<N>,
    /// loads of each machine, one after the other
    pub rounds: Count<N>,
    /// time
    pub time: Duration<N>,
    /// output
    pub output: MassRate<N>,
    /// People and their hours.
    #[part]
    pub people: Option<People<N>>,
}

/// Goods in loads: whole loads, even ones, hours.
///
/// `goods_mass` is what comes out good and `capacity` the largest load, both in one state; `time_per_load`
/// and `change_time` are the times of a load. A load that is part full takes the whole time.
#[calculation(
    title = "Goods in loads",
    example = ">>> import hankwise as hw
>>> loads = hw.mill.batches(goods_mass=\"40 kg\", capacity=\"12 kg\", time_per_load=\"45 min\",
...                         change_time=\"15 min\")
>>> loads[\"loads\"], loads[\"even_load\"], loads[\"time\"]
(<number: 4>, <mass: 10 kg>, <time: 4 h>)",
    cautions = ["machines"],
    check = check_batches
)]
pub fn batches<N: Number>(given: &BatchesInputs<N>) -> BatchesResults<N> {
    let MachinesAtWork { machines, per_person } = given.at_work;
    let (goods, capacity) = (given.goods_mass, given.capacity);
    // The goods are what comes out good; what goes in has the waste in it.
    let Fed { mass_in, mass_lost } = fed(goods, given.loss);
    let all = mass_in.unwrap_or(goods);
    let loads = mill::loads_for_mass(all, capacity);
    let rounds = Count::from((loads.v() / machines.v()).round_up(1e-6));
    let time = mill::load_time(rounds, given.time_per_load, given.change_time);
    BatchesResults {
        mass_in,
        mass_lost,
        loads,
        even_load: Mass::from(all.v() / loads.v()),
        last_load: Mass::from((all.v() - (loads.v() - 1.0) * capacity.v()).max(0.0)),
        rounds,
        time,
        output: MassRate::from(goods.v() / time.v()),
        people: per_person.map(|each| people(machines, each, Some(time))),
    }
}

fn check_batches(
    given: &BatchesInputs<f64>,
    found: &BatchesResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    check_loss(given.loss, check)?;
    if found.even_load.value() < 0.5 * given.capacity.value() {
        check.warn(format!(
            "the load is less than half of the capacity ({}): a load that small may run otherwise than a \
             full one",
            check.say(given.capacity)
        ));
    }
    check.note("The lot", "Emptying and filling are in the hours: no efficiency comes on top.");
    Ok(())
}

/// What [`dryer()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct DryerInputs<N> {
    /// oven-dry mass of the goods
    #[q("m_d", 0.5..=10_000.0, like = "40 kg")]
    pub oven_dry_mass: Mass<N>,
    /// water in the goods before, on the oven-dry mass
    #[q("R₁", 0.25..=2.5, like = "60 %")]
    pub regain_before: Regain<N>,
    /// water in the goods after, on the oven-dry mass
    #[q("R₂", 0.05..=0.25, like = "16 %", zero)]
    pub regain_after: Regain<N>,
    /// water that the dryer takes off in an hour
    #[q("E", 0.5..=1000.0, like = "15 kg/h")]
    pub evaporation_rate: MassRate<N>,
    /// share of the hours in which the dryer takes that off
    #[q("η", 0.5..=1.0, or = 1.0)]
    pub efficiency: Fraction<N>,
    /// Machines and people.
    #[group]
    pub at_work: MachinesAtWork<N>,
}

/// What [`dryer()`] answers.
#[derive(Clone, Debug, Results)]
pub struct DryerResults<N> {
    /// goods as they go in
    #[block = "The lot"]
    pub mass_in: Mass<N>,
    /// goods as they come out
    pub mass_out: Mass<N>,
    /// water to dry off
    pub water_to_dry: Mass<N>,
    /// water taken off in an hour, all dryers
    pub evaporation_kept: MassRate<N>,
    /// time
    pub time: Duration<N>,
    /// output, as the goods come out
    pub output: MassRate<N>,
    /// People and their hours.
    #[part]
    pub people: Option<People<N>>,
}

/// The dryer at work: water to dry off and the hours for it.
///
/// `oven_dry_mass` is the goods without water, `regain_before` and `regain_after` the water on it,
/// `evaporation_rate` what your dryer takes off in an hour, measured: weigh a load before and after.
#[calculation(
    title = "The dryer at work",
    example = ">>> import hankwise as hw
>>> dryer = hw.mill.dryer(oven_dry_mass=\"40 kg\", regain_before=\"60 %\", regain_after=\"16 %\",
...                       evaporation_rate=\"15 kg/h\")
>>> dryer[\"water_to_dry\"], dryer[\"time\"]
(<mass: 17.6 kg>, <time: 1.173 h>)",
    cautions = ["dryer", "machines"],
    check = check_dryer
)]
pub fn dryer<N: Number>(given: &DryerInputs<N>) -> DryerResults<N> {
    let MachinesAtWork { machines, per_person } = given.at_work;
    let (dry, before, after) = (given.oven_dry_mass, given.regain_before, given.regain_after);
    let bone_dry = Regain::base(N::constant(0.0));
    let mass_out = fibre::mass_at_regain(dry, bone_dry, after);
    let water_to_dry = mill::water_to_dry(dry, before, after);
    let rate = given.evaporation_rate.v() * given.efficiency.v() * machines.v();
    let evaporation_kept = MassRate::from(rate);
    let time = mill::time_for_mass(water_to_dry, evaporation_kept);
    DryerResults {
        mass_in: fibre::mass_at_regain(dry, bone_dry, before),
        mass_out,
        water_to_dry,
        evaporation_kept,
        time,
        output: MassRate::from(mass_out.v() / time.v()),
        people: per_person.map(|each| people(machines, each, Some(time))),
    }
}

fn check_dryer(
    given: &DryerInputs<f64>,
    _found: &DryerResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let (before, after) = (given.regain_before, given.regain_after);
    if before.value() <= after.value() {
        refuse!(
            check,
            given.regain_after,
            "the goods hold {} before and {} after, and there is nothing to dry off; are regain_before and \
             regain_after exchanged?",
            check.say(before),
            check.say(after)
        );
    }
    Ok(())
}
