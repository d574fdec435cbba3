//! A plan in a sentence, to read aloud.

use std::fmt::Write as _;

use crate::plan::advice::measurement;
use crate::plan::result::{GoodResult, PlanResult};
use crate::plan::screen::{listed, pieces};
use crate::quantity::Kind;

impl PlanResult {
    /// The plan in a sentence to read aloud: what can safely be promised, what it makes as planned, how sure
    /// the promise is, what would make it surer.
    pub fn spoken(&self) -> String {
        let goods = |number: &dyn Fn(&GoodResult) -> f64| {
            let all = self.goods.iter().map(|good| pieces(number(good), &good.name));
            listed(&all.collect::<Vec<_>>())
        };
        let mut said = format!(
            "From {} of greasy wool you can safely promise {}",
            self.say.to_hand(self.intake.0, Kind::Mass),
            goods(&|good| good.safe.unwrap_or(good.planned))
        );
        if self.simulated > 0 {
            said.push_str(", which 19 lots in 20 like this one would keep");
        }
        let _ = write!(said, "; as planned it makes {}", goods(&|good| good.planned));
        let promised = self.goods.iter().any(|good| good.promised.is_some());
        if let Some(chance) = self.spare.chance.filter(|_| promised) {
            let lots = (chance * 100.0).floor();
            let _ = write!(said, ", and {lots} lots in 100 would keep all that is asked for");
        }
        if let Some(first) = self.measure_first.first() {
            let _ = write!(said, "; to be surer, first {}", measurement(&first.key, &first.words));
        }
        said.push('.');
        said
    }
}
