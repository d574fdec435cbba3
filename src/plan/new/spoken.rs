//! A plan in a sentence, to read aloud.

use std::fmt::Write as _;

use crate::plan::Terms;
use crate::plan::advice::measurement;
use crate::plan::result::{GoodResult, PlanResult};
use crate::plan::screen::{listed, pieces};
use crate::quantity::Kind;
use crate::quantity::print::fixed;

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
        said.push_str(&self.spoken_price().unwrap_or_default());
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

    /// What it would cost by the mill's tariffs, where it has any.
    fn spoken_price(&self) -> Option<String> {
        let quote = self.quote(&Terms::default()).ok()?;
        if quote.lines.is_empty() && quote.minimum_charge.is_none() {
            return None;
        }
        let money = |x: f64| format!("{} {}", quote.money, fixed(x, 0)).trim_start().to_owned();
        Some(match quote.band.filter(|band| band.high - band.low >= 1.0) {
            Some(band) => {
                format!("; it would cost {} to {}", money(band.low), money(band.high))
            }
            None => format!("; it would cost {}", money(quote.price)),
        })
    }
}
