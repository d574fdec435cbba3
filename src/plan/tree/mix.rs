//! Wool that is put together: every part of it is the sum.

use crate::number::{Number, V};
use crate::plan::stock::Flow;
use crate::quantity::{Mass, OnFibre};

fn none<N: Number>() -> V<N> {
    V::constant(0.0)
}

/// Wool that is put together.
pub(super) struct Parts<N> {
    parts: Vec<Flow<N>>,
}

impl<N: Number> Parts<N> {
    pub(super) fn new() -> Self {
        Parts { parts: Vec::new() }
    }
    pub(super) fn add(&mut self, part: Flow<N>) {
        self.parts.push(part);
    }
    /// All of it: every component is the sum over the parts.
    pub(super) fn mixed(self) -> Flow<N> {
        let parts: Vec<&Flow<N>> = self.parts.iter().filter(|p| p.fibre.value() > 0.0).collect();
        let [first, others @ ..] = &parts[..] else {
            let nothing = OnFibre::base(N::constant(0.0));
            return self.parts.first().copied().unwrap_or(Flow {
                fibre: Mass::from(none()),
                regain: crate::quantity::Regain::base(N::constant(0.0)),
                fat: nothing,
                oil: none(),
                vegetable: nothing,
                stays: None,
            });
        };
        if others.is_empty() {
            return **first;
        }
        let fibre = V::sum(parts.iter().map(|p| p.fibre.v()));
        let of = |part: &dyn Fn(&Flow<N>) -> V<N>| {
            V::sum(parts.iter().map(|p| p.fibre.v() * part(p))) / fibre
        };
        let fat = of(&|p| p.fat.v());
        let oil = of(&|p| p.fat.v() * p.oil) / fat.max(f64::MIN_POSITIVE);
        let dyed = parts.iter().any(|p| p.stays.is_some());
        Flow {
            fibre: Mass::from(fibre),
            regain: of(&|p| p.regain.v()).into(),
            fat: fat.into(),
            oil,
            vegetable: of(&|p| p.vegetable.v()).into(),
            stays: dyed.then(|| of(&|p| p.stays.map_or(none(), OnFibre::v)).into()),
        }
    }
}
