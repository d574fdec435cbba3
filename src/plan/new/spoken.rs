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
            let lots = match chance {
                c if c < 0.01 => "fewer than 1 lot".to_owned(),
                c if c > 0.99 => "more than 99 lots".to_owned(),
                c => format!("{:.0} lots", c * 100.0),
            };
            let _ = write!(said, ", and {lots} in 100 would keep all that is asked for");
        }
        if !self.obstacles.is_empty() {
            let all = pieces(self.obstacles.len() as f64, "obstacle");
            let _ = write!(said, "; but as it stands it cannot be made ({all}: --all)");
        }
        if let Some(first) = self.measure_first.first() {
            let _ = write!(said, "; to be surer, first {}", measurement(&first.key, &first.words));
        }
        said.push('.');
        said
    }
}
