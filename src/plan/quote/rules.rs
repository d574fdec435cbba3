//! What is charged for, and at which rate.

use super::measured::Measured;
use crate::mill;
use crate::plan::Plan;
use crate::plan::tariff::Charges;
use crate::plan::tree::Pass;
use crate::quantity::{CostPerMass, Duration, Mass, Money};

/// How much of something is charged for.
#[derive(Clone, Copy, Debug)]
enum Amount {
    /// The mass that goes into a stage or comes out of it.
    In(usize),
    Out(usize),
    /// The mass of a fleece that goes onto the sorting table as several sorts, and what comes off it.
    Fleece(usize),
    Sorts(usize),
    /// Clearing a machine.
    Once,
    /// The yarn that goods take, the finished goods, and their number.
    Yarn(usize),
    Finished(usize),
    Pieces(usize),
    /// Clearing a machine for goods, where any are made.
    OnceFor(usize),
    /// A running time, by its place in the list of those asked for.
    Hours(usize),
}

/// A rate, and what it is charged for.
pub(super) struct Rule {
    pub(super) stage: String,
    pub(super) good: Option<usize>,
    pub(super) basis: &'static str,
    of: Amount,
    pub(super) rate: f64,
}

/// All that is charged for a lot.
#[derive(Default)]
pub(super) struct Rules {
    pub(super) all: Vec<Rule>,
    /// What running times are called, each by one name or another.
    pub(super) hours: Vec<[String; 2]>,
    pub(super) not_priced: Vec<(String, String)>,
    pub(super) minimum_charge: Option<f64>,
}

impl Rule {
    pub(super) fn quantity(&self, lot: &Measured) -> Option<f64> {
        Some(match self.of {
            Amount::In(place) => lot.flow[place].0,
            Amount::Out(place) => lot.flow[place].1,
            Amount::Fleece(place) => lot.fleeces[place].0,
            Amount::Sorts(place) => lot.fleeces[place].1,
            Amount::Once => 1.0,
            Amount::Yarn(good) => lot.yarn[good],
            Amount::Finished(good) => lot.finished[good],
            Amount::Pieces(good) => lot.pieces[good],
            Amount::OnceFor(good) => f64::from(u8::from(lot.pieces[good] > 0.5)),
            Amount::Hours(place) => return lot.hours[place],
        })
    }
    pub(super) fn unit(&self) -> &'static str {
        match self.of {
            Amount::Once | Amount::OnceFor(_) | Amount::Pieces(_) => "",
            Amount::Hours(_) => "h",
            _ => "kg",
        }
    }
    /// What so much of it comes to.
    pub(super) fn charge(&self, quantity: f64) -> f64 {
        match self.unit() {
            "" => quantity * self.rate,
            "h" => mill::cost_of_time(Duration::base(quantity), Money::base(self.rate)).value(),
            _ => mill::cost_of_mass(Mass::base(quantity), CostPerMass::base(self.rate)).value(),
        }
    }
    /// Whether simulated lots know it: they are carried through without setting the machines.
    pub(super) fn is_simulated(&self) -> bool {
        !matches!(self.of, Amount::Hours(_) | Amount::Finished(_))
    }
}

impl Rules {
    pub(super) fn of(plan: &Plan) -> Rules {
        let minimum_charge = plan.tariffs.minimum_charge();
        let mut rules = Rules { minimum_charge, ..Rules::default() };
        let tree = &plan.tree;
        for (place, fleece) in tree.fleeces.iter().enumerate() {
            if fleece.sorts.iter().any(|sort| !tree.sorts[*sort].whole) {
                let name = if tree.fleeces.len() > 1 {
                    format!("{}.sort", fleece.name)
                } else {
                    "sort".to_owned()
                };
                let [into, out] = [Amount::Fleece(place), Amount::Sorts(place)];
                rules.stage(plan, "sort", &name, [into, out], Some(Amount::Once));
            }
        }
        for pass in tree.all_passes() {
            let Pass { place, keeps, .. } = *pass;
            let once = keeps.then_some(Amount::Once);
            let flow = [Amount::In(place), Amount::Out(place)];
            rules.stage(plan, &pass.machine, &pass.name, flow, once);
        }
        for (place, good) in tree.goods.iter().enumerate() {
            for machine in good.machines() {
                rules.machine(plan, machine, &good.at(machine), place);
            }
        }
        rules
    }

    fn add(
        &mut self,
        stage: &str,
        good: Option<usize>,
        basis: &'static str,
        of: Amount,
        rate: Option<f64>,
    ) {
        if let Some(rate) = rate {
            self.all.push(Rule { stage: stage.to_owned(), good, basis, of, rate });
        }
    }

    /// What is charged for a machine; a machine without a tariff is not priced.
    fn charges(&mut self, plan: &Plan, machine: &str, name: &str) -> Option<Charges<f64>> {
        let charges = plan.tariffs.of(machine);
        let has = |c: &Charges<f64>| {
            c.tariff_in.is_some()
                || c.tariff_out.is_some()
                || c.hourly_charge.is_some()
                || c.clearing_charge.is_some()
                || c.piece_charge.is_some()
        };
        let charges = charges.filter(has);
        if charges.is_none() {
            self.not_priced.push((name.to_owned(), format!("no [tariff.{machine}]")));
        }
        charges
    }

    /// Charges by the hour.
    fn hourly(&mut self, names: [String; 2], stage: &str, good: Option<usize>, rate: Option<f64>) {
        if rate.is_some() {
            let of = Amount::Hours(self.hours.len());
            self.hours.push(names);
            self.add(stage, good, "running hour", of, rate);
        }
    }

    /// A stage up to the yarn.
    fn stage(
        &mut self,
        plan: &Plan,
        machine: &str,
        name: &str,
        [into, out]: [Amount; 2],
        once: Option<Amount>,
    ) {
        let Some(charges) = self.charges(plan, machine, name) else { return };
        self.add(name, None, "kilogram in", into, charges.tariff_in.map(CostPerMass::value));
        self.add(name, None, "kilogram out", out, charges.tariff_out.map(CostPerMass::value));
        let hours = format!("{name}.time");
        self.hourly([hours.clone(), hours], name, None, charges.hourly_charge.map(Money::value));
        if let Some(once) = once {
            self.add(name, None, "clearing", once, charges.clearing_charge.map(Money::value));
        }
    }

    /// A machine of the goods.
    fn machine(&mut self, plan: &Plan, machine: &str, name: &str, good: usize) {
        let Some(charges) = self.charges(plan, machine, name) else { return };
        let of = Some(good);
        let (into, out) = (charges.tariff_in, charges.tariff_out);
        self.add(name, of, "kilogram of yarn", Amount::Yarn(good), into.map(CostPerMass::value));
        let words = "finished kilogram";
        self.add(name, of, words, Amount::Finished(good), out.map(CostPerMass::value));
        // A machine that several goods go over has a time for each.
        let hours = [format!("{name}.time"), format!("{machine}.time")];
        self.hourly(hours, name, of, charges.hourly_charge.map(Money::value));
        let clearing = charges.clearing_charge.map(Money::value);
        self.add(name, of, "clearing", Amount::OnceFor(good), clearing);
        self.add(name, of, "piece", Amount::Pieces(good), charges.piece_charge.map(Money::value));
    }

    /// What all of it comes to for a lot, without the minimum charge; what is not known is not charged.
    pub(super) fn sum(&self, lot: &Measured) -> f64 {
        let all = self.all.iter().filter_map(|rule| Some(rule.charge(rule.quantity(lot)?)));
        all.sum()
    }
    /// The price of a lot whose lines come to a sum.
    pub(super) fn price(&self, sum: f64) -> f64 {
        sum.max(self.minimum_charge.unwrap_or(0.0))
    }
}
