//! How lively a fold may be: a ratio beside the habits of the trade, never a verdict.

use std::fmt;

use super::Yarn;
use crate::error::Result;
use crate::handbook::Figure;
use crate::quantity::print::figure;
use crate::yarn::tables::FOLDING_TWIST_RATIOS;

/// Folding twist against the twist of the singles, beside the habits of the trade.
#[derive(Clone, Debug)]
pub struct Balance {
    /// Folding twist over the twist of the component.
    pub ratio: f64,
    /// True where the fold turns the other way; none where a direction is not said.
    pub opposite: Option<bool>,
    /// What the handbook has for so many ends.
    pub habits: Vec<&'static Figure>,
}

impl Yarn {
    /// How lively the fold may be.
    ///
    /// # Errors
    /// Where a twist is not said, or the yarn is not a fold.
    pub fn balance(&self, component: usize) -> Result<Balance> {
        let ratio = self.twist_ratio(component)?;
        let inner = self.build.parts()[component].strand.twist().direction();
        let opposite = self.build.twist().direction().zip(inner).map(|(a, b)| a != b);
        let ends = match self.build.singles() {
            Some(2) => "two-fold",
            Some(3) => "three-fold",
            _ => "",
        };
        // Folding the same way adds to the twist: nothing balances it.
        let fits = |f: &&Figure| opposite != Some(false) || f.of[1] != "balanced";
        let all = FOLDING_TWIST_RATIOS.figures.iter().filter(fits);
        let habits = all.filter(|f| !ends.is_empty() && f.of[0].starts_with(ends)).collect();
        Ok(Balance { ratio, opposite, habits })
    }
}

impl fmt::Display for Balance {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let way = match self.opposite {
            Some(true) => ", the other way",
            Some(false) => ", the same way",
            None => "",
        };
        write!(f, "The folding twist is {} of the singles'{way}. ", figure(self.ratio))?;
        for (place, habit) in self.habits.iter().enumerate() {
            f.write_str(if place == 0 { "Habits: " } else { "; " })?;
            write!(f, "{} {} ({})", habit.of.join(", "), habit.words(), habit.basis().words())?;
        }
        if !self.habits.is_empty() {
            f.write_str(". ")?;
        }
        f.write_str("Judge by a washed loop hanging freely, not by this number.")
    }
}
