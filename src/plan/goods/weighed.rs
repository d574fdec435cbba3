//! Goods by their mass: balls, cones, and pieces that are felted, knitted or sold by weight.

use super::super::stage::{Bench, named};
use super::{Good, Need, Needs, Shop, Taken, Used};
use crate::calculation::{Inputs, Place, Results};
use crate::error::Result;
use crate::mill;
use crate::number::Number;
use crate::plan::draft::Draft;
use crate::plan::section::Section;
use crate::quantity::{Length, Mass, MassPerArea, ShareLost};
use crate::yarn;

/// Goods of some mass each.
#[derive(Clone, Debug)]
pub(super) enum Weighed<N> {
    Mass(ByMass<N>),
    Area(ByArea<N>),
}

/// Goods that are weighed.
#[derive(Clone, Debug, Inputs)]
pub(super) struct ByMass<N> {
    /// mass of a piece as sold
    #[q("m", 0.01..=10.0, like = "100 g")]
    mass: Mass<N>,
}

/// Goods that are measured.
#[derive(Clone, Debug, Inputs)]
pub(super) struct ByArea<N> {
    /// finished width
    #[q("b", 0.1..=4.0, like = "0.70 m")]
    width: Length<N>,
    /// finished length
    #[q("L", 0.1..=10.0, like = "1.20 m")]
    length: Length<N>,
    /// finished mass per area, as sold
    #[q("m_A", 50.0..=4000.0, like = "1800 g/m2")]
    mass_per_area: MassPerArea<N>,
}

/// What a piece is.
#[derive(Clone, Debug, Results)]
struct Piece<N> {
    /// mass of a piece as sold
    piece_mass: Mass<N>,
    /// yarn in a piece
    yarn_length: Option<Length<N>>,
}

impl Weighed<Place> {
    pub(super) fn read(section: &Section<'_>, kind: &str, draft: &mut Draft) -> Result<Self> {
        let area = kind == "piece" && !section.has("mass");
        if area && !section.has("mass_per_area") && !section.has("width") {
            return Err(section.missing(
                "mass",
                "the mass of a piece, or its width, length and mass_per_area,",
                "\"0.6 kg\"",
            ));
        }
        Ok(if area {
            Weighed::Area(section.read(draft, |reader| ByArea::take(reader))?)
        } else {
            Weighed::Mass(section.read(draft, |reader| ByMass::take(reader))?)
        })
    }

    fn mass<N: Number>(&self, name: &str, shop: &Shop<'_, '_, N>) -> Mass<N> {
        match self {
            Weighed::Mass(by) => by.map(&mut shop.values.read()).mass,
            Weighed::Area(by) => {
                let ByArea { width, length, mass_per_area } = by.map(&mut shop.values.read());
                let mass = width.v() * length.v() * mass_per_area.v() / 1000.0;
                named(name, "piece_mass", "mass of a piece as sold", Mass::from(mass))
            }
        }
    }
}

impl Good {
    /// The loss of the stages between the yarn and the goods.
    fn losses<N: Number>(&self, shop: &Shop<'_, '_, N>) -> Vec<ShareLost<N>> {
        let losses = self.passes.iter().filter_map(|pass| pass.stage.loss(shop.values));
        losses.map(|loss| loss.share).collect()
    }

    pub(super) fn weighed_need<N: Number>(
        &self,
        weighed: &Weighed<Place>,
        shop: &Shop<'_, '_, N>,
    ) -> Needs<N> {
        let yarn = self.uses.yarns().next().unwrap_or(0);
        let mass = weighed.mass(&self.name, shop);
        let dry = Mass::from(mass.v() / shop.ends[yarn].label_state.v());
        let losses = self.losses(shop);
        let each = if losses.is_empty() { dry } else { mill::mass_before_losses(dry, &losses) };
        let each = named(&self.name, "each", "clean dry fibre in a piece", each);
        Needs::one(yarn, Need { each, fixed: Mass::base(N::constant(0.0)) })
    }

    pub(super) fn set_weighed<N: Number>(
        &self,
        weighed: &Weighed<Place>,
        shop: &Shop<'_, '_, N>,
        taken: &Taken<N>,
        bench: &mut Bench<N>,
    ) -> Vec<Used<N>> {
        let yarn = self.uses.yarns().next().unwrap_or(0);
        let mass = weighed.mass(&self.name, shop);
        let count = shop.ends[yarn].label_count;
        let piece = Piece {
            piece_mass: mass,
            yarn_length: count.map(|count| yarn::length_of_mass(mass, count)),
        };
        let spot = self.spot(&self.name, &self.name);
        let notes = [("piece_mass", "as sold".to_owned())];
        bench.show(spot, ["piece_mass"], ["yarn_length"], notes, |s| piece.show(s));
        let losses = self.losses(shop);
        if losses.is_empty() {
            return vec![self.used(taken)];
        }
        let left = mill::mass_after_losses(taken.first, &losses);
        let lost = Mass::from(taken.first.v() - left.v());
        let stage = self.passes[0].machine.clone();
        let lost = named(&self.name, "lost", "lost between the yarn and the goods", lost);
        let left = named(&self.name, "fibre", "clean dry fibre in the finished pieces", left);
        vec![
            Used { stage, to: "lost", key: format!("{}.lost", self.name), fibre: lost, yarn },
            Used {
                stage: self.name.clone(),
                to: "goods",
                key: format!("{}.fibre", self.name),
                fibre: left,
                yarn,
            },
        ]
    }
}
