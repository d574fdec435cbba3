//! What a stage loses, what it holds up, and the state in which the rest leaves.

use super::{Draft, Flow, Kind, Ledger, PRACTICE, Question, Section, Stock, Values, ask, named};
use crate::error::Result;
use crate::mill;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::{Fraction, Mass};

/// The losses of a stage. A state that is not given leaves as it came.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Losses {
    loss: Ask,
    held_up: Option<Ask>,
    regain: Option<Ask>,
    fat: Option<Ask>,
    vegetable: Option<Ask>,
    sinks: &'static Sinks,
}

/// Where the parts of a stock go that do not leave with the fibre.
#[derive(Debug)]
pub(super) struct Sinks {
    /// The fibre that is lost, with all that is on it.
    pub(super) fibre: &'static str,
    pub(super) water: &'static str,
    pub(super) fat: &'static str,
    pub(super) vegetable: &'static str,
}

/// A loss of clean dry fibre, of what enters the stage; the usual range is the stage's own.
pub(super) const LOSS: Question = ask(
    "loss",
    "w",
    "fibre lost, of what enters",
    Kind::Fraction,
    (0.0, 0.06, PRACTICE),
    "\"2 %\"",
);
const REGAIN: Question = ask(
    "regain",
    "R",
    "water on clean dry fibre, on leaving",
    Kind::Regain,
    (0.05, 0.35, PRACTICE),
    "\"16 %\"",
);
const FAT: Question = ask(
    "fat",
    "o",
    "grease and oil on clean dry fibre, on leaving",
    Kind::Fraction,
    (0.0, 0.12, PRACTICE),
    "\"0.8 %\"",
);
const VEGETABLE: Question = ask(
    "vegetable",
    "v",
    "vegetable matter on clean dry fibre, on leaving",
    Kind::Fraction,
    (0.0, 0.05, PRACTICE),
    "\"1.0 %\"",
);

impl Losses {
    /// Asks for the share that is lost and the state in which the rest leaves.
    pub(super) fn read(
        section: &Section<'_>,
        draft: &mut Draft,
        loss: &Question,
        sinks: &'static Sinks,
    ) -> Result<Self> {
        Ok(Losses {
            loss: section.ask(draft, loss)?,
            held_up: None,
            regain: section.ask_or_none(draft, &REGAIN)?,
            fat: section.ask_or_none(draft, &FAT)?,
            vegetable: section.ask_or_none(draft, &VEGETABLE)?,
            sinks,
        })
    }

    /// The same, for a machine that keeps a fixed mass besides.
    pub(super) fn with_held_up(self, held_up: Ask) -> Self {
        Losses { held_up: Some(held_up), ..self }
    }

    /// The share that is lost.
    pub(super) fn share<N: Number>(&self, values: &Values<'_, N>) -> Fraction<N> {
        values.get(self.loss)
    }

    /// What the machine keeps, where it keeps something.
    pub(super) fn held_up<N: Number>(&self, values: &Values<'_, N>) -> Option<Mass<N>> {
        self.held_up.map(|ask| values.get(ask)).filter(|held_up: &Mass<N>| held_up.value() > 0.0)
    }

    /// Through the stage: a share is lost with all that is on it, a mass is held up, and what
    /// leaves has the state asked for.
    pub(super) fn pass<N: Number>(
        &self,
        stage: &'static str,
        values: &Values<'_, N>,
        flow: Flow<N>,
        ledger: &mut impl Ledger,
    ) -> Flow<N> {
        let loss = self.share(values);
        let held_up: Option<Mass<N>> = self.held_up.map(|ask| values.get(ask));
        let fibre = match held_up {
            Some(held_up) => mill::mass_after_loss(flow.fibre, loss, held_up),
            None => mill::mass_after_losses(flow.fibre, &[loss]),
        };
        let fibre = named(stage, "fibre", "clean dry fibre that leaves", fibre);
        let out = Flow {
            fibre,
            regain: self.regain.map_or(flow.regain, |ask| values.get(ask)),
            fat: self.fat.map_or(flow.fat, |ask| values.get(ask)),
            oil: flow.oil,
            vegetable: self.vegetable.map_or(flow.vegetable, |ask| values.get(ask)),
        };
        let entered = move || flow.stock();
        let lost = Mass::from(flow.fibre.v() * loss.v());
        let lost = named(stage, "lost", "clean dry fibre lost", lost);
        ledger.lost(self.sinks.fibre, "lost", || entered().share(lost.value() / entered().fibre));
        if let Some(held_up) = held_up {
            ledger.lost("held up in the machine", "held_up", || {
                entered().share(held_up.value() / entered().fibre)
            });
        }
        // What stayed with the fibre, less what leaves with it: the change of state.
        let gone = move || {
            let kept = entered().share(fibre.value() / entered().fibre);
            kept.less(&out.stock())
        };
        if self.regain.is_some() {
            ledger.lost(self.sinks.water, "", || Stock { water: gone().water, ..Stock::default() });
        }
        if self.fat.is_some() {
            ledger.lost(self.sinks.fat, "", || Stock {
                oil: gone().oil,
                grease: gone().grease,
                ..Stock::default()
            });
        }
        if self.vegetable.is_some() {
            ledger.lost(self.sinks.vegetable, "", || Stock {
                vegetable: gone().vegetable,
                ..Stock::default()
            });
        }
        out
    }

    /// Backward through the stage.
    pub(super) fn back<N: Number>(
        &self,
        stage: &str,
        values: &Values<'_, N>,
        fibre: Mass<N>,
    ) -> Mass<N> {
        let loss = self.share(values);
        let needed = match self.held_up {
            Some(held_up) => mill::mass_before_loss(fibre, loss, values.get(held_up)),
            None => mill::mass_before_losses(fibre, &[loss]),
        };
        named(stage, "fibre_needed", "clean dry fibre that must go in", needed)
    }
}
