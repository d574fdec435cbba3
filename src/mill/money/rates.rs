//! What is paid at a stage, and what a stage then costs.

use super::lot::LotCostInputs;
use super::{cost_of_mass, cost_of_time, hour_costs, known, person_hours};
use crate::calculation::{Check, Inputs, Results};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::{CostPerMass, Count, Duration, Mass, Money, Ratio};

/// What is paid at a stage.
#[derive(Clone, Debug, Inputs)]
pub struct Rates<N> {
    /// time beyond the running time: cleaning, setting; all of it where there is no running time
    #[q("τ_e", 0.0..=100.0, zero)]
    pub extra_time: Option<Duration<N>>,
    /// cost of an hour of the machine
    #[q("k_h", 0.0..=500.0, zero)]
    pub hourly_cost: Option<Money<N>>,
    /// people at the machine
    #[q("p", 0.0..=20.0, zero, broken)]
    pub people: Option<Count<N>>,
    /// cost of the stage for a kilogram that goes in
    #[q("c_s", 0.0..=50.0, zero)]
    pub stage_cost_per_mass: Option<CostPerMass<N>>,
    /// cost once for the lot: clean-down, setting up
    #[q("k_f", 0.0..=5000.0, zero)]
    pub fixed_cost: Option<Money<N>>,
}

/// What a stage costs.
#[derive(Clone, Debug, Results)]
pub struct StageCost<N> {
    /// name of the stage
    #[label]
    pub name: String,
    /// hours that are paid, with those beyond the running time
    #[head = "hours"]
    pub paid_time: Option<Duration<N>>,
    /// cost of the machine
    #[head = "machine"]
    pub machine_cost: Option<Money<N>>,
    /// hours of people
    pub person_hours: Option<Duration<N>>,
    /// wages
    pub wages: Option<Money<N>>,
    /// cost by the kilogram
    #[head = "by the kilogram"]
    pub mass_cost: Option<Money<N>>,
    /// cost once for the lot
    #[head = "once"]
    pub cost_once: Option<Money<N>>,
    /// overhead on the cost of the stage
    #[head = "overhead"]
    pub overhead_cost: Option<Money<N>>,
    /// overhead by the hour
    #[head = "overhead by the hour"]
    pub hourly_overhead_cost: Option<Money<N>>,
    /// cost, overhead included
    pub cost: Option<Money<N>>,
}

/// What goods take up at a stage: running time, mass, and their share of what is paid once.
pub(super) struct Stay<N> {
    pub(super) time: Option<Duration<N>>,
    pub(super) mass_in: Option<Mass<N>>,
    pub(super) share: Option<Ratio<N>>,
}

impl<N: Number> Rates<N> {
    /// What a stage costs that takes up so much.
    pub(super) fn cost(
        &self,
        name: &str,
        stay: &Stay<N>,
        given: &LotCostInputs<N>,
    ) -> StageCost<N> {
        let part = |of: V<N>| stay.share.map_or(of, |share| of * share.v());
        let extra = self.extra_time.map(|time| Duration::from(part(time.v())));
        let time = known([stay.time, extra]);
        let timed = |rate: Option<Money<N>>, time: Option<Duration<N>>| {
            time.zip(rate).map(|(time, rate)| cost_of_time(time, rate))
        };
        let machine_cost = timed(self.hourly_cost, time);
        let hours = time.zip(self.people).map(|(time, people)| person_hours(time, people));
        let wages = timed(given.hourly_wage, hours);
        let mass_cost =
            stay.mass_in.zip(self.stage_cost_per_mass).map(|(mass, rate)| cost_of_mass(mass, rate));
        let cost_once = self.fixed_cost.map(|once| Money::from(part(once.v())));
        let own = known([machine_cost, wages, mass_cost, cost_once]);
        let overhead_cost =
            given.overhead.zip(own).map(|(share, own)| Money::from(own.v() * share.v()));
        let hourly_overhead_cost = timed(given.hourly_overhead, time);
        StageCost {
            name: name.to_owned(),
            paid_time: time,
            machine_cost,
            person_hours: hours,
            wages,
            mass_cost,
            cost_once,
            overhead_cost,
            hourly_overhead_cost,
            cost: known([own, overhead_cost, hourly_overhead_cost]),
        }
    }
}

/// Refuses hours that would bring money, and what is paid by the hour where no hours are known.
pub(super) fn check_rates(
    rates: &Rates<f64>,
    name: &str,
    found: &StageCost<f64>,
    check: &Check<'_>,
) -> Result<()> {
    hour_costs(check, &format!("{name}.hourly_cost"), rates.hourly_cost)?;
    let of = if rates.hourly_cost.is_some() { "hourly_cost" } else { "people" };
    let by_hour = rates.hourly_cost.is_some() || rates.people.is_some();
    if by_hour && found.paid_time.is_none() {
        return Err(check.refuse(
            &format!("{name}.{of}"),
            format!(
                "there is no running time for {name}: give its hours, such as extra_time=\"3 h\", or its \
                 cost by the kilogram (stage_cost_per_mass) or once for the lot (fixed_cost)"
            ),
        ));
    }
    Ok(())
}
