//! The lots that pay.

use super::measured::Measured;
use super::rules::Rules;
use crate::mill;
use crate::plan::Plan;
use crate::quantity::{CostPerMass, Mass, Money};

/// The lots that pay: those whose price by the tariffs is at least what they cost the mill.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PaysFrom {
    /// The smallest greasy mass from which on lots pay, kg: 0 where all do, none where no lot does up to the
    /// largest tried.
    pub greasy_mass: Option<f64>,
    /// Lots up to this greasy mass pay too, by the minimum charge alone, kg.
    pub small_lots_to: Option<f64>,
    /// The largest greasy mass tried, kg.
    pub tried: f64,
}

/// What a lot costs the mill.
pub(super) fn cost_of((fixed, per_mass): (Money<f64>, CostPerMass<f64>), greasy: f64) -> f64 {
    fixed.value() + mill::cost_of_mass(Mass::base(greasy), per_mass).value()
}

/// The smallest lot that is tried, kg.
const LEAST: f64 = 0.1;
/// The largest lot that is tried, kg: at least this.
const MOST: f64 = 5000.0;

/// The lots that pay: the plan is run with more and with less of all fleeces, in the proportion in which
/// they came.
pub(super) fn pays_from(
    plan: &Plan,
    rules: &Rules,
    cost: (Money<f64>, CostPerMass<f64>),
    greasy: f64,
) -> PaysFrom {
    let fleeces: Vec<usize> =
        plan.tree.fleeces.iter().map(|fleece| fleece.inputs.greasy.inner().0).collect();
    let likely = plan.likely();
    let pays = |kg: f64| {
        let mut values = likely.clone();
        for place in &fleeces {
            values[*place] *= kg / greasy;
        }
        let (lot, _) = Measured::whole(plan, rules, &values);
        rules.price(rules.sum(&lot)) >= cost_of(cost, kg)
    };
    // Between a lot that pays and one that does not.
    let edge = |mut yes: f64, mut no: f64| {
        while (yes - no).abs() > 1e-4 * yes.min(no).max(LEAST) {
            let middle = f64::midpoint(yes, no);
            *(if pays(middle) { &mut yes } else { &mut no }) = middle;
        }
        yes
    };
    let mut tried = vec![LEAST];
    while let Some(last) = tried.last().filter(|kg| **kg < MOST.max(10.0 * greasy)) {
        tried.push(last * 1.1);
    }
    let largest = tried[tried.len() - 1];
    let paying: Vec<bool> = tried.iter().map(|kg| pays(*kg)).collect();
    let first_no = paying.iter().position(|pays| !pays);
    let last_no = paying.iter().rposition(|pays| !pays);
    let small_lots_to = first_no.filter(|no| *no > 0).map(|no| edge(tried[no - 1], tried[no]));
    let greasy_mass = match last_no {
        None => Some(0.0),
        Some(no) if no + 1 == tried.len() => None,
        Some(no) => {
            let from = edge(tried[no + 1], tried[no]);
            // Goods are whole pieces: a little above the edge one piece too few may be made once more.
            let mut above = (1..=50).map(|step| from * (1.0 + 0.002 * f64::from(step)));
            let last = above.rfind(|kg| !pays(*kg));
            Some(last.map_or(from, |no| edge(no * 1.002, no)))
        }
    };
    PaysFrom { greasy_mass, small_lots_to, tried: largest }
}
