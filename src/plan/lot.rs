//! Fleeces, yarns and labels: what is at the head of a lot.

use super::given::Values;
use super::stage::named;
use super::stock::{Flow, dyed};
use crate::calculation::{Inputs, Place};
use crate::fibre;
use crate::number::{Number, V};
use crate::quantity::{
    Count, Fineness, Fraction, LinearDensity, Mass, OnFibre, Ratio, Regain, TwistFactor,
};

/// A grower's fleeces.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Fleece<N> {
    /// greasy mass as received
    #[q("G", 2.0..=5000.0, like = "80.00 kg")]
    pub(super) greasy: Mass<N>,
    #[group]
    pub(super) wool: Wool<N>,
}

/// What the wool of a fleece or of a sort is.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Wool<N> {
    /// clean dry fibre, on the greasy mass
    #[q("y", 0.35..=0.75, basis = "Breed yield table", like = "52 %")]
    pub(super) clean: Option<Fraction<N>>,
    /// water in the greasy wool, on clean dry fibre
    #[q("R", 0.05..=0.3, or = 0.14, like = "14 %")]
    pub(super) regain: Regain<N>,
    /// vegetable matter in the greasy wool, on clean dry fibre
    #[q("v_m", 0.0..=0.1, or = 0.015, like = "1.5 %")]
    pub(super) vegetable: OnFibre<N>,
    /// mean fibre diameter
    #[q("d", 15.0..=45.0, basis = "NMSU B-409", like = "29 µm")]
    pub(super) diameter: Option<Fineness<N>>,
    /// coefficient of variation of the diameter
    #[q("CV", 0.15..=0.3, basis = "Riverina wool testing", or = 0.24, like = "24 %")]
    pub(super) variation: Fraction<N>,
}

impl Wool<Place> {
    /// Some greasy wool: its fat is all that is not fibre, water or vegetable matter, dirt too. Of wool
    /// whose clean fibre is not known all is carried as it is weighed.
    pub(super) fn flow<N: Number>(
        &self,
        name: &str,
        values: &Values<'_, N>,
        greasy: Mass<N>,
    ) -> Flow<N> {
        let Wool { clean, regain, vegetable, .. } = self.map(&mut values.read());
        let none = || OnFibre::base(N::constant(0.0));
        let Some(clean) = clean else {
            return Flow {
                fibre: greasy,
                regain: Regain::base(N::constant(0.0)),
                fat: none(),
                oil: V::constant(0.0),
                vegetable: none(),
                stays: None,
            };
        };
        let fibre = fibre::fibre_from_greasy(greasy, clean);
        let fibre = named(name, "fibre", "clean dry fibre in the greasy wool", fibre);
        let fat = greasy.v() / fibre.v() - 1.0 - regain.v() - vegetable.v();
        let words = "grease and dirt on clean dry fibre: all the rest of the greasy mass";
        let fat = named(name, "fat", words, OnFibre::from(fat));
        Flow { fibre, regain, fat, oil: V::constant(0.0), vegetable, stays: None }
    }

    /// The greasy mass that holds some clean dry fibre.
    pub(super) fn back<N: Number>(
        &self,
        name: &str,
        values: &Values<'_, N>,
        fibre: Mass<N>,
    ) -> Mass<N> {
        let Some(clean) = self.map(&mut values.read()).clean else { return fibre };
        named(name, "greasy_needed", "greasy mass to take in", Mass::from(fibre.v() / clean.v()))
    }
}

/// The yarn to be made.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Yarn<N> {
    /// count of the finished yarn, as on the label
    #[q("T", 50.0..=2000.0, like = "330 m/100g")]
    pub(super) count: Option<LinearDensity<N>>,
    /// ends folded together
    #[q("N", 1.0..=6.0, or = 1.0, like = "2")]
    pub(super) ends: Count<N>,
    /// twist factor of the singles, on the count as spun
    #[q("K", 18.0..=38.0, memory, like = "25 turns/cm √tex")]
    pub(super) twist_factor: Option<TwistFactor<N>>,
}

/// Yarn that is there already: bought, or left over.
#[derive(Clone, Debug, Inputs)]
pub(super) struct YarnInStock<N> {
    /// yarn in stock, as weighed
    #[q("m", 0.1..=500.0, like = "12 kg")]
    pub(super) stock: Mass<N>,
    /// water in it, on clean dry fibre
    #[q("R", 0.05..=0.3, or = 0.16, like = "15 %")]
    pub(super) regain: Regain<N>,
    /// fat on it, on clean dry fibre
    #[q("o", 0.0..=0.12, or = 0.0, like = "1 %")]
    pub(super) fat: OnFibre<N>,
}

impl YarnInStock<Place> {
    /// The yarn by its parts.
    pub(super) fn flow<N: Number>(&self, name: &str, values: &Values<'_, N>) -> Flow<N> {
        let YarnInStock { stock, regain, fat } = self.map(&mut values.read());
        let none = OnFibre::base(N::constant(0.0));
        let state = fibre::state_ratio(regain, fat, none);
        let fibre = Mass::from(stock.v() / state.v());
        let fibre = named(name, "fibre", "clean dry fibre in the yarn in stock", fibre);
        Flow { fibre, regain, fat, oil: V::constant(1.0), vegetable: none, stays: None }
    }
}

/// The state in which goods are sold.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Labelled<N> {
    /// regain at which goods are sold and masses are stated
    #[q("R", 0.13..=0.19, basis = "French order 1998", or = 0.17, like = "17 %")]
    pub(super) regain: Regain<N>,
    /// fat left on the goods, on clean dry fibre
    #[q("o", 0.0..=0.02, or = 0.0, like = "0.6 %")]
    fat: OnFibre<N>,
}

impl Labelled<Place> {
    /// Mass for each unit of clean dry fibre, as sold, with the dye that stays on.
    pub(super) fn state<N: Number>(
        &self,
        name: &str,
        values: &Values<'_, N>,
        stays: Option<OnFibre<N>>,
    ) -> Ratio<N> {
        let none = OnFibre::base(N::constant(0.0));
        let Labelled { regain, fat } = self.map(&mut values.read());
        let state = dyed(fibre::state_ratio(regain, fat, none), stays);
        named(name, "state", "mass as sold for each unit of clean dry fibre", state)
    }
}
