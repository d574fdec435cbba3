//! Parts that the mill owns: a setting is made with one of them.

use crate::error::{Error, Result};
use crate::quantity::Kind;
use crate::quantity::print::of_kind;

/// Parts of a machine that the mill owns, in rising order: teeth of wheels, dents of reeds.
#[derive(Clone, Debug)]
pub(crate) struct Parts(Vec<f64>);

impl Parts {
    /// Parts in base units; `example` is a list as one would write it.
    pub(crate) fn new(mut parts: Vec<f64>, kind: Kind, example: &str) -> Result<Parts> {
        if parts.is_empty() {
            return Err(Error::notation(format!(
                "no part is owned; write a list such as {example}"
            )));
        }
        if let Some(none) = parts.iter().find(|p| !(p.is_finite() && **p > 0.0)) {
            let none = of_kind(*none, kind);
            return Err(Error::range(format!(
                "{none} is not a part; write a list such as {example}"
            )));
        }
        if kind == Kind::Count
            && let Some(part) = parts.iter().find(|p| p.fract() != 0.0)
        {
            return Err(Error::range(format!(
                "a wheel has whole teeth, not {part}; write a list such as {example}"
            )));
        }
        parts.sort_by(f64::total_cmp);
        parts.dedup();
        Ok(Parts(parts))
    }
    /// All of them.
    pub(crate) fn all(&self) -> &[f64] {
        &self.0
    }
    /// The owned parts next to a wanted one: below (or equal) and above.
    pub(crate) fn neighbours(&self, wanted: f64) -> (Option<f64>, Option<f64>) {
        let below = self.0.iter().copied().rfind(|p| *p <= wanted);
        let above = self.0.iter().copied().find(|p| *p > wanted);
        (below, above)
    }
    /// The owned part nearest to a wanted one.
    pub(crate) fn nearest(&self, wanted: f64) -> Option<f64> {
        self.0.iter().copied().min_by(|a, b| (a - wanted).abs().total_cmp(&(b - wanted).abs()))
    }
}
