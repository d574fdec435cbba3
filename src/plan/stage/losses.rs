//! What a stage loses, what it holds up, and the state in which the rest leaves.

use super::{Flow, Ledger, Stock, named};
use crate::calculation::Inputs;
use crate::mill;
use crate::number::{Number, V};
use crate::quantity::{Mass, OnFibre, Regain, ShareLost};

/// The state in which fibre leaves a stage. What is not given leaves as it came.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct LeavingState<N> {
    /// water on clean dry fibre, on leaving
    #[q("R", 0.05..=0.35, zero, like = "16 %")]
    pub(in crate::plan) regain: Option<Regain<N>>,
    /// grease and oil on clean dry fibre, on leaving
    #[q("o", 0.0..=0.12, zero, like = "0.8 %")]
    pub(in crate::plan) fat: Option<OnFibre<N>>,
    /// vegetable matter on clean dry fibre, on leaving
    #[q("v_m", 0.0..=0.05, zero, like = "1.0 %")]
    pub(in crate::plan) vegetable: Option<OnFibre<N>>,
}

/// The losses of a stage, and the state in which the rest leaves.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Losses<N> {
    /// fibre lost, on the fibre that enters
    #[q("w", 0.0..=0.06, zero, like = "2 %")]
    pub(super) loss: ShareLost<N>,
    #[group]
    pub(super) state: LeavingState<N>,
}

/// Where the parts of a stock go that do not leave with the fibre.
#[derive(Debug)]
pub(in crate::plan) struct Sinks {
    /// The fibre that is lost, with all that is on it.
    pub(super) fibre: &'static str,
    pub(super) water: &'static str,
    pub(super) fat: &'static str,
    pub(super) vegetable: &'static str,
}

/// What a stage does to the fibre that goes through it.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Loss<N> {
    /// The share that is lost.
    pub(in crate::plan) share: ShareLost<N>,
    /// What the machine keeps, where it keeps something.
    pub(in crate::plan) held_up: Option<Mass<N>>,
    /// The state in which the rest leaves.
    pub(in crate::plan) state: LeavingState<N>,
}

impl<N: Number> From<Losses<N>> for Loss<N> {
    fn from(Losses { loss, state }: Losses<N>) -> Self {
        Loss { share: loss, held_up: None, state }
    }
}

impl<N: Number> Loss<N> {
    /// The same, where the machine keeps some of the wool or has kept of it already.
    #[inline(always)]
    pub(super) fn kept(self, keeps: bool) -> Self {
        if keeps { self } else { Loss { held_up: None, ..self } }
    }
    /// Through the stage: a share is lost with all that is on it, a mass is held up, and what
    /// leaves has the state asked for.
    pub(super) fn pass(
        &self,
        stage: &str,
        sinks: &Sinks,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let Loss { share: loss, held_up, state } = self;
        let (loss, held_up) = (*loss, *held_up);
        let fibre = match held_up {
            Some(held_up) => mill::mass_after_loss(flow.fibre, loss, held_up),
            None => mill::mass_after_losses(flow.fibre, &[loss]),
        };
        // A machine keeps no more than comes in.
        let all_kept = fibre.value() < 0.0;
        let fibre = if all_kept { Mass::from(V::constant(0.0)) } else { fibre };
        let fibre = named(stage, "fibre", "clean dry fibre that leaves", fibre);
        let out = Flow {
            fibre,
            regain: state.regain.unwrap_or(flow.regain),
            fat: state.fat.unwrap_or(flow.fat),
            oil: flow.oil,
            vegetable: state.vegetable.unwrap_or(flow.vegetable),
            stays: flow.stays,
        };
        let entered = move || flow.stock();
        let lost = Mass::from(flow.fibre.v() * loss.v());
        let lost = named(stage, "lost", "clean dry fibre lost", lost);
        ledger.lost(sinks.fibre, "lost", || part_of(&entered(), lost.value()));
        if let Some(held_up) = held_up {
            ledger.lost("held up in machine", "held_up", || {
                let most = entered().fibre - lost.value();
                part_of(&entered(), if all_kept { most } else { held_up.value() })
            });
        }
        // What stayed with the fibre, less what leaves with it: the change of state.
        let gone = move || {
            let kept = part_of(&entered(), fibre.value());
            kept.less(&out.stock())
        };
        if state.regain.is_some() {
            ledger.lost(sinks.water, "", || Stock { water: gone().water, ..Stock::default() });
        }
        if state.fat.is_some() {
            ledger.lost(sinks.fat, "", || Stock {
                oil: gone().oil,
                grease: gone().grease,
                ..Stock::default()
            });
        }
        if state.vegetable.is_some() {
            ledger.lost(sinks.vegetable, "", || Stock {
                vegetable: gone().vegetable,
                ..Stock::default()
            });
        }
        out
    }

    /// Backward through the stage.
    pub(super) fn back(&self, stage: &str, fibre: Mass<N>) -> Mass<N> {
        let needed = match self.held_up {
            Some(held_up) => mill::mass_before_loss(fibre, self.share, held_up),
            None => mill::mass_before_losses(fibre, &[self.share]),
        };
        named(stage, "fibre_needed", "clean dry fibre that must go in", needed)
    }
}

/// The part of a stock that goes with some of its fibre.
fn part_of(stock: &Stock, fibre: f64) -> Stock {
    if stock.fibre > 0.0 { stock.share(fibre / stock.fibre) } else { Stock::default() }
}
