//! How much of each component to weigh for a blend, or what a weighed blend holds.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::fibre::{diameter_of_blend, fibre_in_mass, mass_in_state, state_ratio};
use crate::number::{Number, V};
use crate::quantity::{Fineness, Fraction, Mass, OnFibre, Ratio, Regain, Yield};

const COMPONENTS: &str = "components of the blend";

/// How much of a component there is, or is to be.
#[derive(Clone, Debug, Inputs)]
pub enum ComponentAmount<N> {
    /// share wanted of the clean dry fibre
    #[q("p", 0.01..=0.99, like = "60 %")]
    Share(Fraction<N>),
    /// mass as weighed
    #[q("m", 0.01..=10_000.0, like = "30 kg")]
    Mass(Mass<N>),
}

/// A component of a blend: a colour, a fibre.
#[derive(Clone, Debug, Inputs)]
pub struct Component<N> {
    /// its name
    #[label]
    pub name: String,
    /// Its share or its mass.
    #[one_of("how much of it there is")]
    pub amount: ComponentAmount<N>,
    /// water on its clean dry fibre
    #[q("R", 0.0..=0.4, like = "16 %", zero)]
    pub regain: Regain<N>,
    /// fat and oil on its clean dry fibre
    #[q("o", 0.0..=0.1, or = 0.0)]
    pub fat: OnFibre<N>,
    /// vegetable matter on its clean dry fibre
    #[q("v_m", 0.0..=0.1, or = 0.0)]
    pub vegetable: OnFibre<N>,
    /// its mean fibre diameter
    #[q("d_f", 12.0..=50.0)]
    pub fibre_diameter: Option<Fineness<N>>,
}

/// What [`blend()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct BlendInputs<N> {
    /// components of the blend
    #[rows]
    pub components: Vec<Component<N>>,
    /// mass of the blend wanted, at the stated regain and fat
    #[q("M_b", 0.1..=10_000.0, like = "58 kg")]
    pub blend_mass: Option<Mass<N>>,
    /// regain at which the mass of the blend is stated
    #[q("R_s", 0.0..=0.4, like = "16 %", zero)]
    pub stated_regain: Option<Regain<N>>,
    /// fat at which the mass of the blend is stated, on clean dry fibre
    #[q("o_s", 0.0..=0.1, or = 0.0)]
    pub stated_fat: OnFibre<N>,
}

/// A component in the blend.
#[derive(Clone, Debug, Results)]
pub struct ComponentResults<N> {
    /// Its name.
    #[label]
    pub name: String,
    /// mass as weighed, or to weigh
    #[head = "mass"]
    pub mass: Mass<N>,
    /// its clean dry fibre
    #[head = "clean dry"]
    pub fibre_mass: Mass<N>,
    /// its share of the clean dry fibre
    #[head = "share"]
    pub share: Fraction<N>,
    /// its share of the mass as weighed
    #[head = "by the scale"]
    pub mass_share: Fraction<N>,
}

/// What [`blend()`] answers.
#[derive(Clone, Debug, Results)]
pub struct BlendResults<N> {
    /// components of the blend
    #[rows]
    pub components: Vec<ComponentResults<N>>,
    /// mass of all components, each as weighed
    #[block = "All together"]
    pub mass: Mass<N>,
    /// clean dry fibre of the blend
    pub fibre_mass: Mass<N>,
    /// mass of the blend at the stated regain and fat
    pub stated_mass: Option<Mass<N>>,
    /// mean fibre diameter of the blend
    pub fibre_diameter: Option<Fineness<N>>,
}

/// What to weigh of each component of a blend, each at its own regain, for shares of the clean dry fibre;
/// or the shares of what was weighed.
///
/// Give every component a `share`, with the `blend_mass` and its `stated_regain`, or every one a `mass`.
/// With masses `stated_regain` gives the mass of the blend at it, and `fibre_diameter` of every component
/// the mean of the blend.
#[calculation(
    title = "Weighing a blend",
    example = ">>> import hankwise as hw
>>> heap = hw.mill.blend(components={\"white\": {\"share\": \"60 %\", \"regain\": \"16 %\"},
...                                  \"moorit\": {\"share\": \"40 %\", \"regain\": \"12 %\"}},
...                      blend_mass=\"58 kg\", stated_regain=\"16 %\")
>>> heap[\"white.mass\"], heap[\"moorit.mass\"]
(<mass: 34.8 kg>, <mass: 22.4 kg>)",
    check = check
)]
pub fn blend<N: Number>(given: &BlendInputs<N>) -> BlendResults<N> {
    let nothing = || V::constant(0.0);
    let stated = given
        .stated_regain
        .map(|regain| state_ratio(regain, given.stated_fat, OnFibre::from(nothing())));
    let total = given.blend_mass.zip(stated).map(|(mass, state)| fibre_in_mass(mass, state));
    let weighed: Vec<(Mass<N>, Mass<N>)> = given
        .components
        .iter()
        .map(|one| {
            let state: Ratio<N> = state_ratio(one.regain, one.fat, one.vegetable);
            match one.amount {
                ComponentAmount::Share(share) => {
                    let total = total.map_or_else(nothing, Mass::v);
                    let fibre = Mass::from(total * share.v());
                    (mass_in_state(fibre, state), fibre)
                }
                ComponentAmount::Mass(mass) => (mass, fibre_in_mass(mass, state)),
            }
        })
        .collect();
    let mass = V::sum(weighed.iter().map(|(mass, _)| mass.v()));
    let fibre = V::sum(weighed.iter().map(|(_, fibre)| fibre.v()));
    let components: Vec<ComponentResults<N>> = given
        .components
        .iter()
        .zip(&weighed)
        .map(|(one, (own_mass, own_fibre))| ComponentResults {
            name: one.name.clone(),
            mass: *own_mass,
            fibre_mass: *own_fibre,
            share: Fraction::from((own_fibre.v() / fibre).min(1.0)),
            mass_share: Fraction::from((own_mass.v() / mass).min(1.0)),
        })
        .collect();
    let shares: Vec<Fraction<N>> = components.iter().map(|one| one.share).collect();
    let diameters: Option<Vec<Fineness<N>>> =
        given.components.iter().map(|one| one.fibre_diameter).collect();
    BlendResults {
        components,
        mass: Mass::from(mass),
        fibre_mass: Mass::from(fibre),
        // What was wanted need not be said again.
        stated_mass: stated
            .filter(|_| given.blend_mass.is_none())
            .map(|state| mass_in_state(Mass::from(fibre), state)),
        fibre_diameter: diameters.map(|all| diameter_of_blend(&shares, &all)),
    }
}

fn check(given: &BlendInputs<f64>, found: &BlendResults<f64>, check: &mut Check<'_>) -> Result<()> {
    let all = given.components.len();
    if all < 2 {
        refuse!(check, given.components, "a blend has two components or more; write another");
    }
    if let Some(one) = given.components.iter().find(|one| !one.name.contains(char::is_alphanumeric))
    {
        refuse!(
            check,
            given.components,
            "'{}' cannot name a component; write a name like 'grey'",
            one.name
        );
    }
    let shares: Vec<f64> = given
        .components
        .iter()
        .filter_map(|one| match one.amount {
            ComponentAmount::Share(share) => Some(share.value()),
            ComponentAmount::Mass(_) => None,
        })
        .collect();
    if shares.is_empty() {
        if given.blend_mass.is_some() {
            refuse!(
                check,
                given.blend_mass,
                "it is what the masses give; omit it, or give shares instead of masses"
            );
        }
        if given.stated_regain.is_none() && given.stated_fat.value() > 0.0 {
            refuse!(
                check,
                given.stated_fat,
                "it was given without stated_regain; write both or neither"
            );
        }
    } else if shares.len() < all {
        refuse!(
            check,
            given.components,
            "give every component a share, with the mass of the blend, or every one a mass as weighed"
        );
    } else {
        if given.blend_mass.is_none() {
            refuse!(
                check,
                given.blend_mass,
                "the mass of the blend wanted is missing; write blend_mass=\"58 kg\""
            );
        }
        if given.stated_regain.is_none() {
            refuse!(
                check,
                given.stated_regain,
                "the regain at which the mass of the blend is stated is missing; write \
                 stated_regain=\"16 %\""
            );
        }
        let sum: f64 = shares.iter().sum();
        if (sum - 1.0).abs() > 1e-6 {
            refuse!(
                check,
                given.components,
                "the shares sum to {}, not to the whole",
                check.say(Yield::<f64>::base(sum))
            );
        }
    }
    check.note(
        COMPONENTS,
        format!(
            "All together {} as weighed, {} of clean dry fibre. Shares are of the dry fibre; by the scale \
             they look different where the regains differ.",
            check.say(found.mass),
            check.say(found.fibre_mass)
        ),
    );
    Ok(())
}
