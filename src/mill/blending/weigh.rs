//! How much of each component to weigh for a blend, or what a weighed blend holds.

use crate::error::{Error, Result};
use crate::fibre::{diameter_of_blend, fibre_in_mass, mass_in_state, state_ratio};
use crate::job::{Ask, Given};
use crate::number::V;
use crate::particulars::{Desk, Particulars};
use crate::quantity::print::{figure, of_kind, with_unit};
use crate::quantity::{Amount, Fineness, Fraction, Kind, Mass, Ratio, Regain, Typed};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};
use crate::worked::Worked;

static OF_BLEND: [Ask; 3] = [
    Ask::plain("total", "M", "mass of the blend wanted", Kind::Mass, (0.1, 10_000.0)),
    Ask::plain("regain", "R", "regain at which that mass is stated", Kind::Regain, (0.0, 0.4)),
    Ask::plain("fat", "o", "fat at which that mass is stated", Kind::Fraction, (0.0, 0.1)),
];

static OF_COMPONENT: [Ask; 6] = [
    Ask::plain("share", "p", "share wanted of the clean dry fibre", Kind::Fraction, (0.01, 0.99)),
    Ask::plain("mass", "m", "mass as weighed", Kind::Mass, (0.01, 10_000.0)),
    Ask::plain("regain", "R", "water on its clean dry fibre", Kind::Regain, (0.0, 0.4)),
    Ask::plain("fat", "o", "fat and oil on its clean dry fibre", Kind::Fraction, (0.0, 0.1)),
    Ask::plain(
        "vegetable",
        "v",
        "vegetable matter on its clean dry fibre",
        Kind::Fraction,
        (0.0, 0.1),
    ),
    Ask::plain("diameter", "d", "mean fibre diameter", Kind::Fineness, (12.0, 50.0)),
];

/// A component of a blend: a colour, a fibre.
#[derive(Clone, Debug)]
pub struct Component {
    name: String,
    given: Given,
}

impl Component {
    /// A component with a name, of which nothing is said yet.
    pub fn new(name: &str) -> Result<Component> {
        if !name.chars().any(char::is_alphanumeric) {
            return Err(Error::notation(format!(
                "'{name}' is no name of a component; write one like 'grey'"
            )));
        }
        Ok(Component {
            name: name.trim().to_owned(),
            given: Given::new("a component", &OF_COMPONENT),
        })
    }
    /// What may be said of it.
    pub fn given(&mut self) -> &mut Given {
        &mut self.given
    }
    /// Its name in the names of figures.
    fn key(&self) -> String {
        let plain = |c: char| if c.is_alphanumeric() { c } else { '_' };
        self.name.to_lowercase().chars().map(plain).collect()
    }
    fn enter<'t, Q: Typed<Worked<'t>>>(&self, desk: &Desk<'t>, name: &str) -> Option<Q> {
        let item = OF_COMPONENT.iter().find(|item| item.name == name)?;
        let unit = self.given.unit(name)?;
        let amount = Amount { number: unit.from_base(self.given.base(name)?), unit };
        let words = format!("{}: {}", self.name, item.words);
        Some(desk.given(&format!("{name}_{}", self.key()), &self.name, &words, &amount, None))
    }
    fn state<'t>(&self, desk: &Desk<'t>) -> Result<Ratio<Worked<'t>>> {
        let regain: Regain<_> = self.enter(desk, "regain").ok_or_else(|| {
            Error::notation(format!(
                "{}: its regain is missing: without it the mass says nothing of the fibre; write \
                 regain='16 %'",
                self.name
            ))
        })?;
        let nothing = || Fraction::from(V::constant(0.0));
        let fat = self.enter(desk, "fat").unwrap_or_else(nothing);
        Ok(state_ratio(regain, fat, self.enter(desk, "vegetable").unwrap_or_else(nothing)))
    }
}

/// What a blend asks for beside its components; nothing where they were weighed already.
pub fn blend_items() -> Given {
    Given::new("blend", &OF_BLEND)
}

/// What to weigh of each component, each at its own regain, for shares of the clean dry fibre; or the
/// shares of what was weighed.
///
/// ```
/// use hankwise::mill::{Component, blend, blend_items};
///
/// let component = |name: &str, said: &[(&str, &str)]| {
///     let mut one = Component::new(name)?;
///     *one.given() = one.given().clone().read(said)?;
///     Ok::<_, hankwise::Error>(one)
/// };
/// let parts = [
///     component("white", &[("mass", "58 kg"), ("regain", "16 %")])?,
///     component("grey", &[("mass", "56 kg"), ("regain", "12 %")])?,
/// ];
/// // 50 kg of dry fibre each, although white weighs more.
/// let found = blend(&parts, &blend_items())?;
/// assert!((found.find("share_white")?.value - 0.5).abs() < 1e-12);
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn blend(components: &[Component], given: &Given) -> Result<Particulars> {
    let wanted = check(components, given)?;
    Particulars::work(|desk| {
        given.warn(desk);
        let mut parts = Vec::new();
        let total = if wanted { Some(dry_total(given, desk)?) } else { None };
        for one in components {
            one.given.warn(desk);
            let state = one.state(desk)?;
            let (mass, fibre) = if let Some(total) = total {
                let share: Fraction<_> = missing(one.enter(desk, "share"), one)?;
                let fibre = Mass::from(total.v() * share.v());
                (mass_in_state(fibre, state), fibre)
            } else {
                let mass: Mass<_> = missing(one.enter(desk, "mass"), one)?;
                (mass, fibre_in_mass(mass, state))
            };
            parts.push((one, mass, fibre));
        }
        let all = V::sum(parts.iter().map(|(_, _, fibre)| fibre.v()));
        let weighed = V::sum(parts.iter().map(|(_, mass, _)| mass.v()));
        let mut rows = Vec::new();
        let mut shares = Vec::new();
        let weighing = if wanted { "mass to weigh" } else { "mass weighed" };
        for (one, mass, fibre) in &parts {
            let key = one.key();
            let say = |what: &str| format!("{what} of {}", one.name);
            let mass = desk.figure(&format!("weigh_{key}"), &say(weighing), *mass);
            let fibre = desk.figure(&format!("fibre_{key}"), &say("clean dry fibre"), *fibre);
            let share = Fraction::from((fibre.v() / all).min(1.0));
            let share = desk.figure(&format!("share_{key}"), &say("share of the dry fibre"), share);
            let unit = one.given.unit("mass").or_else(|| given.unit("total"));
            let kg =
                |x: f64| unit.map_or_else(|| figure(x), |u| with_unit(u.from_base(x), u.symbol));
            rows.push(vec![
                one.name.clone(),
                kg(mass.value()),
                kg(fibre.value()),
                of_kind(share.value(), Kind::Fraction),
                of_kind(mass.value() / weighed.value(), Kind::Fraction),
            ]);
            shares.push(share);
        }
        let fibre = desk.figure("fibre", "clean dry fibre of the blend", Mass::from(all));
        let weighed =
            desk.figure("weighed", "mass of all components as weighed", Mass::from(weighed));
        // The whole in the unit of the first: pounds are answered in pounds.
        let unit = components[0].given.unit("mass").or_else(|| given.unit("total"));
        let whole = |x: f64| {
            unit.map_or_else(|| of_kind(x, Kind::Mass), |u| with_unit(u.from_base(x), u.symbol))
        };
        let mut foot = vec![format!(
            "All together {} as weighed, {} of clean dry fibre. Shares are of the dry fibre; by the scale \
             they look different where the regains differ.",
            whole(weighed.value()),
            whole(fibre.value())
        )];
        if !wanted && (given.has("regain") || given.has("fat")) {
            let mass = mass_in_state(fibre, stated(given, desk)?);
            let mass = desk.figure("at_regain", "mass of the blend at the regain asked for", mass);
            foot.push(format!(
                "At the regain asked for, {}, the blend weighs {}.",
                of_kind(given.base("regain").unwrap_or(0.0), Kind::Regain),
                whole(mass.value())
            ));
        }
        let diameters: Vec<Fineness<_>> =
            components.iter().filter_map(|one| one.enter(desk, "diameter")).collect();
        if diameters.len() == components.len() {
            let mean = diameter_of_blend(&shares, &diameters);
            let mean = desk.figure("diameter", "mean diameter of the blend", mean);
            foot.push(format!("Mean diameter {}.", of_kind(mean.value(), Kind::Fineness)));
        }
        let columns = [
            ("component", Left),
            (if wanted { "to weigh" } else { "weighed" }, Right),
            ("clean dry", Right),
            ("share", Right),
            ("by the scale", Right),
        ];
        Ok(Report {
            title: format!("Blend of {} components", components.len()),
            blocks: vec![Block {
                title: if wanted { "What to weigh" } else { "What was weighed" }.to_owned(),
                columns: columns.map(|(name, align)| (name.to_owned(), align)).to_vec(),
                rows,
                foot,
                ..Block::default()
            }],
        })
    })
}

fn missing<Q>(figure: Option<Q>, one: &Component) -> Result<Q> {
    figure.ok_or_else(|| Error::notation(format!("{}: a figure is missing", one.name)))
}

fn dry_total<'t>(given: &Given, desk: &Desk<'t>) -> Result<Mass<Worked<'t>>> {
    let total: Mass<_> = given.need(desk, "total")?;
    Ok(fibre_in_mass(total, stated(given, desk)?))
}

/// The state in which the mass of the blend is stated.
fn stated<'t>(given: &Given, desk: &Desk<'t>) -> Result<Ratio<Worked<'t>>> {
    let regain: Regain<_> = given.need(desk, "regain")?;
    let fat: Fraction<_> = given.or(desk, "fat", 0.0)?;
    Ok(state_ratio(regain, fat, Fraction::from(V::constant(0.0))))
}

/// True where shares are wanted, false where all was weighed.
fn check(components: &[Component], given: &Given) -> Result<bool> {
    if components.len() < 2 {
        return Err(Error::notation("a blend has two components or more"));
    }
    for (k, one) in components.iter().enumerate() {
        if let Some(other) = components[..k].iter().find(|o| o.key() == one.key()) {
            return Err(Error::notation(format!(
                "'{}' and '{}' have one name; give each component its own",
                other.name, one.name
            )));
        }
    }
    let with = |name: &str| components.iter().filter(|one| one.given.has(name)).count();
    let all = components.len();
    match (with("share"), with("mass")) {
        (0, masses) if masses == all => {
            if given.has("total") {
                return Err(Error::notation(
                    "total is what the masses give; leave it out, or give shares instead of masses",
                ));
            }
            let nothing = |one: &&Component| one.given.base("mass").is_none_or(|m| m <= 0.0);
            match components.iter().find(nothing) {
                Some(one) => Err(Error::range(format!("{}: its mass is nothing", one.name))),
                None => Ok(false),
            }
        }
        (shares, 0) if shares == all => {
            let sum: f64 = components.iter().filter_map(|one| one.given.base("share")).sum();
            if (sum - 1.0).abs() > 1e-6 {
                return Err(Error::range(format!(
                    "the shares sum to {}, not to the whole",
                    of_kind(sum, Kind::Yield)
                )));
            }
            Ok(true)
        }
        _ => Err(Error::notation(
            "give every component a share, with the total of the blend, or every one a mass as weighed",
        )),
    }
}
