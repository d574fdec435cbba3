//! The lot, the yarn to be made of it, the label: what is at the head of a lot file.

use super::given::Values;
use super::stage::named;
use super::stock::Flow;
use crate::calculation::{Inputs, Place};
use crate::fibre;
use crate::number::{Number, V};
use crate::quantity::{
    Count, Fineness, Fraction, LinearDensity, Mass, OnFibre, Ratio, Regain, TwistFactor,
};

/// The grower's lot.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Fleece<N> {
    /// greasy mass as received
    #[q("G", 2.0..=5000.0, like = "80.00 kg")]
    pub(super) greasy: Mass<N>,
    /// clean dry fibre, on the greasy mass
    #[q("y", 0.35..=0.75, basis = "Breed yield table", like = "52 %")]
    pub(super) clean: Fraction<N>,
    /// water in the greasy wool, on clean dry fibre
    #[q("R", 0.05..=0.3, zero, like = "14 %")]
    pub(super) regain: Regain<N>,
    /// vegetable matter in the greasy wool, on clean dry fibre
    #[q("v_m", 0.0..=0.1, zero, like = "1.5 %")]
    pub(super) vegetable: OnFibre<N>,
    /// mean fibre diameter
    #[q("d", 15.0..=45.0, basis = "NMSU B-409", like = "29 µm")]
    pub(super) diameter: Fineness<N>,
    /// coefficient of variation of the diameter
    #[q("CV", 0.15..=0.3, basis = "Riverina wool testing", zero, like = "24 %")]
    pub(super) variation: Fraction<N>,
}

impl Fleece<Place> {
    /// The greasy wool: its fat is all that is not fibre, water or vegetable matter, dirt too.
    pub(super) fn flow<N: Number>(&self, values: &Values<'_, N>) -> Flow<N> {
        let Fleece { greasy, clean, regain, vegetable, .. } = self.map(&mut values.read());
        let fibre = fibre::fibre_from_greasy(greasy, clean);
        let fibre = named("lot", "fibre", "clean dry fibre in the greasy wool", fibre);
        let fat = greasy.v() / fibre.v() - 1.0 - regain.v() - vegetable.v();
        let words = "grease and dirt on clean dry fibre: all the rest of the greasy mass";
        let fat = named("lot", "fat", words, OnFibre::from(fat));
        Flow { fibre, regain, fat, oil: V::constant(0.0), vegetable }
    }

    /// The greasy mass that holds some clean dry fibre.
    pub(super) fn back<N: Number>(&self, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        let clean = self.map(&mut values.read()).clean;
        named("lot", "greasy_needed", "greasy mass to take in", Mass::from(fibre.v() / clean.v()))
    }
}

/// The yarn to be made.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Yarn<N> {
    /// count of the finished yarn, as on the label
    #[q("T", 50.0..=2000.0, like = "330 m/100g")]
    pub(super) count: LinearDensity<N>,
    /// ends folded together
    #[q("N", 2.0..=6.0, like = "2")]
    pub(super) ends: Count<N>,
    /// twist factor of the singles, on the count as spun
    #[q("K", 18.0..=38.0, memory, like = "25 turns/cm √tex")]
    pub(super) twist_factor: TwistFactor<N>,
}

impl Yarn<Place> {
    /// The finished count on clean dry fibre.
    pub(super) fn dry<N: Number>(
        &self,
        values: &Values<'_, N>,
        label: &Labelled<Place>,
    ) -> LinearDensity<N> {
        let count = self.map(&mut values.read()).count;
        let dry = LinearDensity::from(count.v() / label.state(values).v());
        named("yarn", "dry", "finished yarn, on clean dry fibre", dry)
    }
}

/// The state in which goods are sold.
#[derive(Clone, Debug, Inputs)]
pub(super) struct Labelled<N> {
    /// regain at which goods are sold and masses are stated
    #[q("R", 0.13..=0.19, basis = "French order 1998", zero, like = "17 %")]
    pub(super) regain: Regain<N>,
    /// fat left on the goods, on clean dry fibre
    #[q("o", 0.0..=0.02, or = 0.0, like = "0.6 %")]
    fat: OnFibre<N>,
}

impl Labelled<Place> {
    /// Mass for each unit of clean dry fibre, as sold.
    pub(super) fn state<N: Number>(&self, values: &Values<'_, N>) -> Ratio<N> {
        let none = OnFibre::base(N::constant(0.0));
        let Labelled { regain, fat } = self.map(&mut values.read());
        let state = fibre::state_ratio(regain, fat, none);
        named("label", "state", "mass as sold for each unit of clean dry fibre", state)
    }
}
