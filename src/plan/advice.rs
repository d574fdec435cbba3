//! Advice beside the values: what to promise instead, obstacles to making it, what to measure.

use super::Plan;
use super::chain::Nominal;
use super::given::Values;
use super::result::PlanResult;
use super::say::Say;
use super::screen::{listed, pieces};
use crate::fibre::tables::MINIMUM_FIBRES;
use crate::quantity::print::{fixed, with_unit};
use crate::quantity::{Kind, print};
use crate::worked::{Op, Recording};

impl Plan {
    /// For each good of which fewer are planned than promised: where the promise is written, how many
    /// are planned, and how many are short.
    pub(super) fn shortfalls(&self, result: &PlanResult) -> Vec<String> {
        let goods = self.tree.goods.iter().zip(&result.goods);
        let short = goods.filter_map(|(good, result)| {
            let promised = f64::from(good.promised?);
            (result.planned < promised).then(|| {
                format!(
                    "{}: goods.{}.promised: planned {} of {}, {} short",
                    good.origin,
                    good.name,
                    fixed(result.planned, 0),
                    fixed(promised, 0),
                    fixed(promised - result.planned, 0),
                )
            })
        });
        short.collect()
    }

    /// The yarns from stock of which the promises ask more than there is.
    fn short_stock(&self, nominal: &Nominal) -> Vec<String> {
        let yarns = self.tree.yarns.iter().zip(&nominal.yarns).zip(&nominal.asked_before);
        let short = yarns.filter(|((yarn, made), asked)| {
            matches!(yarn.from, super::tree::From::Stock(_)) && **asked > made.begun.fibre
        });
        short.map(|((yarn, _), _)| format!("'{}'", yarn.name)).collect()
    }

    /// What would make the promise safe: a smaller promise, or more wool. Nothing where 19 lots of 20 keep
    /// it, or, without simulated lots, where the planned values do.
    pub(super) fn advice(&self, nominal: &Nominal, result: &PlanResult) -> Option<String> {
        let enough = match result.spare.chance {
            Some(chance) => chance >= 0.95,
            None => result.planned_enough(),
        };
        if enough {
            return None;
        }
        let goods = result.goods.iter().filter_map(|good| {
            let made = good.safe.unwrap_or(good.planned).min(f64::from(good.promised?));
            (made > 0.0).then(|| pieces(made, &good.name))
        });
        let goods: Vec<String> = goods.collect();
        let goods = if goods.is_empty() { "nothing".to_owned() } else { listed(&goods) };
        let promised = |good: &super::goods::Good| good.promised.map_or(0.0, f64::from);
        let wanted: Vec<f64> = self.tree.goods.iter().map(promised).collect();
        let likely = self.likely();
        let planned = self.greasy(&Values { given: &likely }, &wanted).value();
        // No wool makes up for yarn from stock that does not suffice.
        let short = self.short_stock(nominal);
        if !short.is_empty() {
            return Some(format!("Promise {goods}, or get more of the yarn {}.", listed(&short)));
        }
        Some(match result.spare.safe_greasy_mass {
            Some(greasy) => format!(
                "Promise {goods}, or take in {}, to be 95 % sure.",
                intake(greasy, &self.say)
            ),
            None => format!(
                "Promise {goods}, or take in {}, for the planned values to keep it.",
                intake(planned, &self.say)
            ),
        })
    }

    /// Obstacles to making the yarn and the goods at all, with the planned values: too few fibres
    /// in the section, parts far off what was asked for, a card that keeps much of the lot.
    pub(super) fn obstacles(&self, nominal: &Nominal) -> Vec<String> {
        let recording = &nominal.recording;
        let value = |name: &str| recording.find(name).map(|step| recording.steps[step].value);
        let mut all = Vec::new();
        let woollen = MINIMUM_FIBRES.figures.iter().find(|f| f.of[..] == ["wool", "woollen"]);
        for pass in self.tree.all_passes().filter(|p| ["mule", "ring"].contains(&p.stage.kind())) {
            let Some(fibres) = value(&format!("{}.fibres", pass.name)) else { continue };
            let Some(floor) = woollen.filter(|floor| fibres < floor.low) else { continue };
            let finest = value(&format!("{}.count", pass.name)).map(|count| {
                let count = self.say.figure(count * floor.low / fibres, Kind::LinearDensity);
                format!(" of {count} or more, as spun,")
            });
            all.push(format!(
                "{}.fibres: {} fibres in the section of the single; woollen spinning needs {} ({}). Spin a \
                 thicker yarn{} or take finer wool",
                pass.name,
                fixed(fibres, 0),
                floor.words(),
                floor.basis().words(),
                finest.unwrap_or_else(|| ",".to_owned()),
            ));
        }
        all.extend(far_parts(recording));
        for pass in self.tree.all_passes().filter(|pass| pass.keeps && pass.stage.kind() == "card")
        {
            let key = self.held_up_key(pass);
            let Some(kept) = key.and_then(|key| value(&key)) else { continue };
            let entered = nominal.flow[pass.place].0.fibre;
            let share = kept / entered;
            let off_count = value(&format!("{}.off_count_mass", pass.name))
                .map(|off| (off, nominal.flow[pass.place].1.total()));
            if share > KEPT {
                all.push(format!(
                    "{}.held_up: the card keeps {} of the fibre that enters; more than a tenth is much \
                     (common practice){}. Card a larger lot, or join lots",
                    pass.name,
                    print::of_kind(share.min(1.0), Kind::Fraction),
                    off_count.map_or_else(String::new, |(off, all)| format!(
                        ", and the first {} of {} of slubbing come off before the count has settled",
                        self.say.to_hand(off.min(all), Kind::Mass),
                        self.say.to_hand(all, Kind::Mass),
                    )),
                ));
            }
        }
        all.extend(self.vessels(recording));
        all
    }

    /// What the value of the hold-up of a stage is called.
    fn held_up_key(&self, pass: &super::tree::Pass) -> Option<String> {
        let loss = pass.stage.held_up()?;
        Some(self.given[loss.0].key.clone())
    }

    /// Dyeings that take more than one bath.
    fn vessels(&self, recording: &Recording) -> Vec<String> {
        let dyes = self.tree.all_passes().filter(|pass| pass.stage.kind() == "dye");
        let said = dyes.filter_map(|pass| {
            let baths = recording.find(&format!("{}.baths", pass.name))?;
            let baths = recording.steps[baths].value;
            (baths > 1.5).then(|| {
                format!(
                    "{}.vessel: the goods do not go into one bath; dye {} equal baths, whose shades may \
                     differ, or dye less",
                    pass.name,
                    fixed(baths, 0)
                )
            })
        });
        said.collect()
    }
}

/// A card that keeps more of a lot than this share makes too little of it (common practice).
const KEPT: f64 = 0.1;

/// Greasy wool to take in, rounded up, so that the mass as printed is enough.
pub(super) fn intake(greasy: f64, say: &Say) -> String {
    let x = say.number(greasy, Kind::Mass);
    let decimals = match x {
        x if x >= 10.0 => 1,
        x if x >= 1.0 => 2,
        _ => 3,
    };
    let tenths = 10f64.powi(decimals);
    let up = (x * tenths - 1e-9).ceil() / tenths;
    format!("{} {}", fixed(up, decimals as usize), say.mass_unit())
}

/// How to measure a value of the lot file, as an instruction.
pub(super) fn measurement(key: &str, words: &str) -> String {
    match key.split_once('.') {
        Some(("lot", "clean")) => "test-wash samples of the fleece".to_owned(),
        Some(("sort", "rejects")) => "weigh what is sorted out".to_owned(),
        Some((stage, "loss")) => format!("weigh the wool into and out of the {stage}"),
        _ => format!("measure the {words}"),
    }
}

/// How far a part may be from the one wanted before it is worth a word.
const NEAR: f64 = 0.05;

/// Parts in use that are far from what was wanted: the mill owns none nearer, or another was set.
fn far_parts(recording: &Recording) -> Vec<String> {
    let steps = recording.steps.iter().enumerate();
    steps
        .filter(|(_, step)| step.op == Op::Chosen)
        .filter_map(|(place, step)| {
            let wanted = recording.value(step.args[0]);
            let off = step.value / wanted - 1.0;
            let label = recording.labels.get(&place)?;
            (off.abs() > NEAR).then(|| {
                format!(
                    "{}: the part in use ({}) is {:.0} % {} than needed ({}); check what it gives, \
                     or get a nearer one",
                    label.name(),
                    with_unit(step.value, &label.unit),
                    off.abs() * 100.0,
                    if off > 0.0 { "larger" } else { "smaller" },
                    with_unit(wanted, &label.unit),
                )
            })
        })
        .collect()
}
