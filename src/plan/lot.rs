//! The lot, the yarn to be made of it, the label: what stands at the head of a lot file.

use super::file::{Draft, PRACTICE, Section, ask};
use super::given::{Ask, Values};
use super::stage::named;
use super::stock::Flow;
use crate::error::Result;
use crate::fibre;
use crate::number::{Number, V};
use crate::quantity::{Fraction, Kind, LinearDensity, Mass, Ratio, Regain};

/// The grower's lot.
#[derive(Clone, Debug)]
pub(super) struct Fleece {
    pub(super) greasy: Ask,
    pub(super) clean: Ask,
    regain: Ask,
    vegetable: Ask,
    pub(super) diameter: Ask,
    pub(super) variation: Ask,
}

impl Fleece {
    pub(super) fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let greasy = ask(
            "greasy",
            "G",
            "greasy mass as received",
            Kind::Mass,
            (2.0, 5000.0, PRACTICE),
            "\"80.00 kg\"",
        );
        let clean = ask(
            "clean",
            "y",
            "clean dry fibre as a share of the greasy mass",
            Kind::Fraction,
            (0.35, 0.75, "breed tables"),
            "{ low = \"48 %\", likely = \"52 %\", high = \"55 %\" }",
        );
        let regain = ask(
            "regain",
            "R",
            "water in the greasy wool, on clean dry fibre",
            Kind::Regain,
            (0.05, 0.3, PRACTICE),
            "\"14 %\"",
        );
        let vegetable = ask(
            "vegetable",
            "v",
            "vegetable matter in the greasy wool, on clean dry fibre",
            Kind::Fraction,
            (0.0, 0.1, PRACTICE),
            "\"1.5 %\"",
        );
        let diameter = ask(
            "diameter",
            "d",
            "mean fibre diameter",
            Kind::Fineness,
            (15.0, 45.0, "wool grades"),
            "\"29 µm\"",
        );
        let variation = ask(
            "variation",
            "CV",
            "coefficient of variation of the diameter",
            Kind::Fraction,
            (0.15, 0.3, "a wool testing laboratory"),
            "\"24 %\"",
        );
        Ok(Fleece {
            greasy: section.ask(draft, &greasy)?,
            clean: section.ask(draft, &clean.positive())?,
            regain: section.ask(draft, &regain)?,
            vegetable: section.ask(draft, &vegetable)?,
            diameter: section.ask(draft, &diameter)?,
            variation: section.ask(draft, &variation)?,
        })
    }

    /// The greasy wool: its fat is all that is not fibre, water or vegetable matter, dirt too.
    pub(super) fn flow<N: Number>(&self, values: &Values<'_, N>) -> Flow<N> {
        let greasy: Mass<N> = values.get(self.greasy);
        let fibre = fibre::fibre_from_greasy(greasy, values.get(self.clean));
        let fibre = named("lot", "fibre", "clean dry fibre in the greasy wool", fibre);
        let (regain, vegetable): (Regain<N>, Fraction<N>) =
            (values.get(self.regain), values.get(self.vegetable));
        let fat = greasy.v() / fibre.v() - 1.0 - regain.v() - vegetable.v();
        let words = "grease and dirt on clean dry fibre: all the rest of the greasy mass";
        let fat = named("lot", "fat", words, Fraction::from(fat));
        Flow { fibre, regain, fat, oil: V::constant(0.0), vegetable }
    }

    /// The greasy mass that holds some clean dry fibre.
    pub(super) fn back<N: Number>(&self, values: &Values<'_, N>, fibre: Mass<N>) -> Mass<N> {
        let clean: Fraction<N> = values.get(self.clean);
        named("lot", "greasy_needed", "greasy mass to take in", Mass::from(fibre.v() / clean.v()))
    }
}

/// The yarn to be made.
#[derive(Clone, Debug)]
pub(super) struct Yarn {
    pub(super) name: String,
    pub(super) count: Ask,
    pub(super) ends: Ask,
    pub(super) twist_factor: Ask,
}

impl Yarn {
    pub(super) fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let count = ask(
            "count",
            "T_R",
            "count of the finished yarn, as on the label",
            Kind::LinearDensity,
            (50.0, 2000.0, PRACTICE),
            "\"330 m/100g\"",
        );
        let ends = ask("ends", "n", "ends folded together", Kind::Count, (2.0, 6.0, PRACTICE), "2");
        let factor = ask(
            "twist_factor",
            "K",
            "twist factor of the singles, on the count as spun",
            Kind::TwistFactor,
            (18.0, 38.0, "from memory: let the mill set it"),
            "\"25 turns/cm √tex\"",
        );
        let name = section.text("name", "the name of the yarn", "\"two-fold\"")?;
        let number = section.ask(draft, &ends)?;
        if draft.given[number.0].base().fract() != 0.0 {
            let typed = &draft.given[number.0].typed;
            return Err(section.error(
                ends.key,
                format!("ends are whole, {typed} is not possible; write {}", ends.example),
            ));
        }
        if draft.given[number.0].spread.is_open() {
            return Err(section.error(
                ends.key,
                format!("how many ends are folded is known; write {}", ends.example),
            ));
        }
        if draft.given[number.0].base() < 2.0 {
            return Err(section.error(
                ends.key,
                "1 end is no fold, and the route passes the twister; write 2 or more: \
                 singles as they come off the mule are not planned"
                    .to_owned(),
            ));
        }
        Ok(Yarn {
            name,
            count: section.ask(draft, &count)?,
            ends: number,
            twist_factor: section.ask(draft, &factor)?,
        })
    }

    /// The finished count on clean dry fibre.
    pub(super) fn dry<N: Number>(
        &self,
        values: &Values<'_, N>,
        label: &Labelled,
    ) -> LinearDensity<N> {
        let count: LinearDensity<N> = values.get(self.count);
        let dry = LinearDensity::from(count.v() / label.state(values).v());
        named("yarn", "dry", "finished yarn, on clean dry fibre", dry)
    }
}

/// What the goods are sold at.
#[derive(Clone, Debug)]
pub(super) struct Labelled {
    pub(super) regain: Ask,
    fat: Ask,
}

impl Labelled {
    pub(super) fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let regain = ask(
            "regain",
            "R",
            "regain at which goods are sold and masses are stated",
            Kind::Regain,
            (0.13, 0.19, "allowances for wool, 13.6 to 18.25 %"),
            "\"17 %\"",
        );
        let fat = ask(
            "fat",
            "o",
            "fat left on the goods, on clean dry fibre",
            Kind::Fraction,
            (0.0, 0.02, PRACTICE),
            "\"0.6 %\"",
        );
        Ok(Labelled {
            regain: section.ask(draft, &regain)?,
            fat: section.ask(draft, &fat.or(0.0))?,
        })
    }

    /// Mass for each unit of clean dry fibre, as sold.
    pub(super) fn state<N: Number>(&self, values: &Values<'_, N>) -> Ratio<N> {
        let none = Fraction::base(N::constant(0.0));
        let state = fibre::state_ratio(values.get(self.regain), values.get(self.fat), none);
        named("label", "state", "mass as sold for each unit of clean dry fibre", state)
    }
}
