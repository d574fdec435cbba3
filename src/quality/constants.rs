//! The constants of control charts, for any number of readings in a subgroup.

use crate::error::{Error, Result};
use crate::law::{gamma_ratio, range_moments};

/// Readings in a subgroup at most.
const MOST: u32 = 1000;

/// The constants of control charts for subgroups of a number of readings that follow the normal law.
///
/// ```
/// let five = hankwise::quality::ChartConstants::new(5)?;
/// assert_eq!(format!("{:.3}", five.get("A2").unwrap()), "0.577");
/// # Ok::<(), hankwise::Error>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChartConstants {
    /// Readings in a subgroup.
    pub n: u32,
    /// Mean standard deviation of a subgroup, as a share of the true one.
    pub c4: f64,
    /// Standard deviation of that.
    pub c5: f64,
    /// Mean range of a subgroup, in standard deviations.
    pub d2: f64,
    /// Standard deviation of the range.
    pub d3: f64,
}

impl ChartConstants {
    /// Their symbols: small letters are measures of the law, capitals factors of limits.
    pub const SYMBOLS: [&'static str; 12] =
        ["A2", "A3", "B3", "B4", "D3", "D4", "E2", "c4", "c5", "d2", "d3", "n"];

    /// The constants for subgroups of `n` readings, from 2 to 1000.
    pub fn new(n: u32) -> Result<Self> {
        if !(2..=MOST).contains(&n) {
            let why = if n < 2 { "has no spread to draw limits from" } else { "is too large" };
            return Err(Error::range(format!(
                "a subgroup of {n} {why}; write a number from 2 to {MOST}, such as 5"
            )));
        }
        let freedom = f64::from(n - 1);
        let c4 = (2.0 / freedom).sqrt() * gamma_ratio(freedom / 2.0);
        let [d2, d3] = range_moments(n);
        Ok(ChartConstants { n, c4, c5: (1.0 - c4 * c4).sqrt(), d2, d3 })
    }

    /// The constant with a symbol.
    pub fn get(&self, symbol: &str) -> Option<f64> {
        let root = f64::from(self.n).sqrt();
        let [over_s, over_r] = [3.0 * self.c5 / self.c4, 3.0 * self.d3 / self.d2];
        Some(match symbol {
            "n" => f64::from(self.n),
            "A2" => 3.0 / (self.d2 * root),
            "A3" => 3.0 / (self.c4 * root),
            "B3" => (1.0 - over_s).max(0.0),
            "B4" => 1.0 + over_s,
            "D3" => (1.0 - over_r).max(0.0),
            "D4" => 1.0 + over_r,
            "E2" => 3.0 / self.d2,
            "c4" => self.c4,
            "c5" => self.c5,
            "d2" => self.d2,
            "d3" => self.d3,
            _ => return None,
        })
    }
}
