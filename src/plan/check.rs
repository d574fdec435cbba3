//! What can be seen to be impossible before anything is planned.

use super::chain::Nominal;
use super::given::{Given, Values};
use super::lot::Wool;
use super::tree::Pass;
use super::{Plan, Stock};
use crate::calculation::{Check, Context, Place};
use crate::error::{Error, Result};
use crate::quantity::{Kind, print::of_kind};
use crate::worked::{Arg, Call, Op, Recording};

/// Shares may differ from a whole by the rounding of binary values.
const ROUNDING: f64 = 1e-9;

/// A stage of a plan, as the place of what is said there.
struct At<'a> {
    plan: &'a Plan,
    pass: &'a Pass,
}

impl Context for At<'_> {
    fn say(&self, base: f64, kind: Kind) -> String {
        self.plan.say.figure(base, kind)
    }
    fn refuse(&self, name: &str, message: String) -> Error {
        let Pass { name: full, machine, stage, .. } = self.pass;
        let mut keys = [full, machine.as_str(), stage.kind()].into_iter();
        let found = keys.find_map(|at| self.plan.given_at(&format!("{at}.{name}")));
        match found {
            Some(given) => refused(given, &message),
            None => Error::plan(message).at(format_args!("{}: {}", self.plan.file(), full)),
        }
    }
}

impl Plan {
    pub(super) fn check(&self) -> Result<()> {
        for given in &self.given {
            let lost = [".loss", ".rejects"].iter().any(|end| given.key.ends_with(end));
            if lost && given.base() >= 1.0 {
                return Err(refused(given, "all of it is lost; write less than 100 %"));
            }
        }
        let likely = self.likely();
        for pass in self.tree.all_passes() {
            let context = At { plan: self, pass };
            pass.stage.check(&Values { given: &likely }, &mut Check::new(&context))?;
        }
        let nominal = Nominal::new(self);
        if !self.tree.weighed {
            for (fleece, greasy) in self.tree.fleeces.iter().zip(&nominal.fleeces) {
                self.check_greasy(&fleece.inputs.wool, greasy)?;
            }
        }
        for (pass, (before, after)) in self.tree.all_passes().zip(&nominal.flow) {
            self.check_left(pass, before, after)?;
            self.check_state(pass, before, after)?;
        }
        self.check_formulas(&nominal.recording)?;
        self.check_width(&nominal.recording)?;
        let mut needs = self.tree.goods.iter().zip(&nominal.each);
        match needs.find(|(_, each)| each.is_nan() || **each <= 0.0) {
            None => Ok(()),
            Some((good, each)) => {
                let why = if each.is_nan() {
                    "the count of its yarn is not known; write count in its table".to_owned()
                } else {
                    "look at its size and at the count of the yarn".to_owned()
                };
                let message = format!("a piece of '{}' would hold no yarn; {why}", good.name);
                let path = format!("goods.{}.", good.name);
                let place = self
                    .given
                    .iter()
                    .find(|g| g.key.starts_with(&path) && g.key != format!("{path}promised"));
                Err(place.map_or_else(|| Error::plan(&message), |given| refused(given, &message)))
            }
        }
    }

    fn given_at(&self, key: &str) -> Option<&Given> {
        self.given.iter().find(|g| g.key == key)
    }

    /// Fibre, water and vegetable matter are parts of the greasy mass.
    fn check_greasy(&self, wool: &Wool<Place>, greasy: &Stock) -> Result<()> {
        let whole = greasy.total();
        if greasy.grease >= -ROUNDING * whole {
            return Ok(());
        }
        let mass = |x| of_kind(x, Kind::Mass);
        let message = format!(
            "clean fibre {}, its water {} and vegetable matter {} together exceed the {} of the lot; \
             write a smaller clean share, regain or vegetable",
            mass(greasy.fibre),
            mass(greasy.water),
            mass(greasy.vegetable),
            mass(whole),
        );
        Err(match &wool.clean {
            Some(clean) => refused(&self.given[clean.inner().0], &message),
            None => Error::plan(message),
        })
    }

    /// Something must be left after a stage.
    fn check_left(&self, pass: &Pass, before: &Stock, after: &Stock) -> Result<()> {
        // A yarn of which nothing is promised and nothing left over does not begin.
        if after.fibre > 0.0 || before.fibre <= 0.0 {
            return Ok(());
        }
        let stage = &pass.name;
        let message = format!(
            "nothing is left of the lot after '{stage}': {} of clean dry fibre come in; \
             take a larger lot or write a smaller value here",
            of_kind(before.fibre, Kind::Mass)
        );
        Err(match pass.stage.held_up() {
            Some(place) => refused(&self.given[place.0], &message),
            None => Error::plan(message).at(self.file()),
        })
    }

    /// Fat and vegetable matter do not come from nowhere: only the oiling puts any on.
    fn check_state(&self, pass: &Pass, before: &Stock, after: &Stock) -> Result<()> {
        if before.fibre <= 0.0 {
            return Ok(());
        }
        let Some(state) = pass.stage.state() else { return Ok(()) };
        let fat = |stock: &Stock| (stock.oil + stock.grease) / stock.fibre;
        let burr = |stock: &Stock| stock.vegetable / stock.fibre;
        let places = [&state.fat, &state.vegetable].map(|s| s.as_ref().map(|s| *s.inner()));
        let shares = [(fat(before), fat(after)), (burr(before), burr(after))];
        for (place, (was, is)) in places.into_iter().zip(shares) {
            let Some(given) = place.map(|place| &self.given[place.0]) else { continue };
            if is > was * (1.0 + ROUNDING) {
                let share = |x| of_kind(x, given.kind);
                let message = format!(
                    "{} on leaving is more than the {} that comes in, and nothing here puts any on; \
                     write {} or less",
                    share(is),
                    share(was),
                    share(was),
                );
                return Err(refused(given, &message));
            }
        }
        Ok(())
    }

    /// Every formula of the plan gives what can be: the first that does not names what it rests on.
    fn check_formulas(&self, recording: &Recording) -> Result<()> {
        for (step, call) in &recording.calls {
            let result = recording.steps[*step].value;
            let Err(why) = call.formula.output.kind.check(result) else { continue };
            let rests_on = self.rests_on(recording, call);
            let what = recording.labels.get(step).map_or(call.formula.summary, |l| &l.meaning);
            let what = what.trim_end_matches('.');
            let figures: Vec<String> = rests_on
                .iter()
                .map(|g| format!("{} = {} ({})", g.key, g.typed, g.origin))
                .collect();
            let message = format!(
                "{what} comes out wrong: {why}; it rests on {}; change one of them",
                figures.join(", ")
            );
            return Err(match rests_on.first() {
                Some(given) => refused(given, &message),
                None => Error::plan(message).at(self.file()),
            });
        }
        Ok(())
    }

    /// The given values next above a formula: its own inputs, or where none of those was given, all
    /// that they come from.
    fn rests_on(&self, recording: &Recording, call: &Call) -> Vec<&Given> {
        let mut steps: Vec<usize> = call.inputs.iter().filter_map(step_of).collect();
        while !steps.is_empty() {
            let label = |step: &usize| recording.labels.get(step);
            let mut found: Vec<&Given> =
                steps.iter().filter_map(label).filter_map(|l| self.given_at(&l.key)).collect();
            if !found.is_empty() {
                found.dedup_by(|a, b| a.key == b.key);
                // An unusual value is more likely to be the wrong one.
                let usual = |g: &&Given| !self.warnings.iter().any(|w| w.starts_with(&g.place()));
                found.sort_by_key(usual);
                return found;
            }
            let up = |step: &usize| recording.steps[*step].args.iter().filter_map(step_of);
            steps = steps
                .iter()
                .filter(|s| recording.steps[**s].op != Op::Input)
                .flat_map(up)
                .collect();
            steps.sort_unstable();
            steps.dedup();
        }
        Vec::new()
    }

    /// The loom takes every woven piece.
    fn check_width(&self, recording: &Recording) -> Result<()> {
        let steps = recording.by_name();
        for good in &self.tree.goods {
            let Some(widest) = good.loom_width().map(|place| &self.given[place.0]) else {
                continue;
            };
            let name = format!("{}.set_width", good.name);
            let Some(step) = steps.get(name.as_str()) else { continue };
            let width = recording.steps[*step].value;
            if width > widest.base() * (1.0 + ROUNDING) {
                let length = |x| of_kind(x, Kind::Length);
                let message = format!(
                    "'{}' is {} wide in the reed, but the loom takes {}; write a narrower piece",
                    good.name,
                    length(width),
                    length(widest.base()),
                );
                let place = self.given_at(&format!("goods.{}.width", good.name));
                return Err(refused(place.unwrap_or(widest), &message));
            }
        }
        Ok(())
    }
}

fn step_of(arg: &Arg) -> Option<usize> {
    match arg {
        Arg::Step(step) => Some(*step),
        Arg::Constant(_) => None,
    }
}

/// An error at a given value.
pub(super) fn refused(given: &Given, message: &str) -> Error {
    Error::plan(message).at(given.place())
}
