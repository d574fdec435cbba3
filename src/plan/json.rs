//! A result for other programs.

use serde_json::{Value, json};

use super::result::{Band, PlanResult};
use super::{Needed, PARTS, Split, Stock, part_name};

/// Name and version of the schema; `schema/plan-result-2.json` describes it.
pub const SCHEMA: &str = "hankwise/plan-result/2";

/// A planned value with its low, middle and high over the simulated lots; these are null without any.
fn over_lots(planned: f64, band: Option<Band>) -> Value {
    let (low, middle, high) = (band.map(|b| b.low), band.map(|b| b.middle), band.map(|b| b.high));
    json!({ "planned": planned, "low": low, "middle": middle, "high": high })
}

/// Puts the names and values of one object into another.
fn with(mut object: Value, more: &Value) -> Value {
    if let (Some(object), Some(more)) = (object.as_object_mut(), more.as_object()) {
        object.extend(more.clone());
    }
    object
}

/// A mass on the scale, by its parts and in all.
fn stock(stock: &Stock) -> Value {
    let parts = PARTS.iter().zip(stock.parts());
    let mut all: serde_json::Map<String, Value> =
        parts.map(|(part, kg)| (part_name(part), json!(kg))).collect();
    all.insert("mass".to_owned(), json!(stock.total()));
    Value::Object(all)
}

/// How a heap may be weighed out.
fn split(split: &Split) -> Value {
    json!({
        "heap": split.heap, "fibre_mass": split.fibre_mass, "mass": split.mass,
        "as_needed": split.as_needed, "weighed_out": split.weighed_out,
        "yarns": split.yarns.iter().map(|(name, share, needed)| json!({
            "name": name, "share": share, "needed_share": needed,
        })).collect::<Vec<_>>(),
        "shifted": split.shifted.iter().map(|(mass, to, from)| json!({
            "mass": mass, "chance_to": to, "chance_from": from,
        })).collect::<Vec<_>>(),
        "held": split.held.iter().map(|(mass, chance)| json!({
            "mass": mass, "chance": chance,
        })).collect::<Vec<_>>(),
    })
}

impl PlanResult {
    /// The result as a JSON value. Masses are in kg, shares are fractions.
    pub fn to_json(&self) -> Value {
        let spare = json!({
            "counted_in": self.spare.good, "safe_greasy_mass": self.spare.safe_greasy_mass,
        });
        json!({
            "schema": SCHEMA,
            "hankwise": env!("CARGO_PKG_VERSION"),
            "lot": self.name,
            "id": self.id,
            "file": self.file,
            "sha256": self.hash,
            "simulated": self.simulated,
            "seed": self.seed,
            "planned_enough": self.planned_enough(),
            "chance": self.spare.chance,
            "spare": with(spare, &over_lots(self.spare.planned, self.spare.band)),
            "stated_regain": self.stated_regain,
            "intake": { "greasy_mass": self.intake.0, "fibre_mass": self.intake.1 },
            "goods": self.goods.iter().map(|g| with(
                json!({
                    "name": g.name, "promised": g.promised, "takes_rest": g.takes_rest,
                    "unrounded": g.unrounded, "chance": g.chance, "safe": g.safe,
                }),
                &over_lots(g.planned, g.band),
            )).collect::<Vec<_>>(),
            "stages": self.stages.iter().map(|s| json!({
                "name": s.name, "machine": s.machine, "of": s.of, "makes": s.makes, "stated_mass": over_lots(s.stated_mass, s.band),
                "stock": stock(&s.stock),
            })).collect::<Vec<_>>(),
            "settings": self.settings.iter().map(|s| json!({
                "machine": s.stage, "of": s.of, "name": s.key, "meaning": s.words, "value": s.value,
                "unit": s.kind.base(), "kind": s.kind.words(), "main": s.main, "note": s.note,
            })).collect::<Vec<_>>(),
            "measure_first": self.measure_first.iter().map(|d| json!({
                "name": d.key, "meaning": d.words, "varies": d.layer.words(), "share_of_doubt": d.share,
                "spare_at_low": d.swing.0, "spare_at_high": d.swing.1,
                "short_at_low": d.short.0, "short_at_high": d.short.1,
            })).collect::<Vec<_>>(),
            "account": self.account.iter().map(|a| json!({
                "stage": a.stage, "to": a.to, "added": a.added, "stock": stock(&a.stock),
            })).collect::<Vec<_>>(),
            "growers": self.growers.iter().map(|g| json!({
                "owner": g.owner, "greasy_mass": g.greasy_mass, "fibre_mass": g.fibre_mass,
                "goods": g.goods.iter().map(|(name, unrounded, pieces)| json!({
                    "name": name, "unrounded": unrounded, "pieces": pieces,
                })).collect::<Vec<_>>(),
            })).collect::<Vec<_>>(),
            "splits": self.splits.iter().map(split).collect::<Vec<_>>(),
            "changeovers": self.changeovers.iter().map(|c| json!({
                "machine": c.machine, "run_before": c.before, "run_next": c.next, "time": c.time, "kept": c.kept,
            })).collect::<Vec<_>>(),
            "left_over": self.left_over.iter().map(|(name, state, mass)| json!({
                "name": name, "state": state, "mass": mass,
            })).collect::<Vec<_>>(),
            "craft": self.craft.iter().map(|(stage, sense, words)| json!({
                "stage": stage, "sense": sense, "words": words,
            })).collect::<Vec<_>>(),
            "origins": self.origins.iter().map(|(from, values)| json!({
                "came_from": from, "values": values,
            })).collect::<Vec<_>>(),
            "formulas": self.formulas(),
            "obstacles": self.obstacles,
            "shortfalls": self.shortfalls,
            "advice": self.advice,
            "warnings": self.warnings,
        })
    }
}

impl Needed {
    /// The greasy mass to take in as a JSON value, in kg.
    pub fn to_json(&self) -> Value {
        let goods: serde_json::Map<String, Value> =
            self.goods.iter().map(|(name, n)| (name.clone(), json!(n))).collect();
        json!({
            "hankwise": env!("CARGO_PKG_VERSION"),
            "goods": goods, "greasy_mass": self.greasy_mass, "planned": self.planned,
            "stages": self.stages.iter().map(|(stage, fibre, mass)| json!({
                "name": stage, "fibre_mass": fibre, "mass": mass,
            })).collect::<Vec<_>>(),
            "confidence": self.confidence, "simulated": self.simulated, "seed": self.seed,
            "warnings": self.warnings,
        })
    }
}
