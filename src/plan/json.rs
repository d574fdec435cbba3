//! A result for other programs.

use serde_json::{Value, json};

use super::result::{Band, PlanResult};
use super::{Needed, Stock};

/// Name and version of the schema; `schema/plan-result-2.json` describes it.
pub const SCHEMA: &str = "hankwise/plan-result/2";

fn band(band: Option<Band>) -> Value {
    band.map_or(Value::Null, |b| json!({ "low": b.low, "middle": b.likely, "high": b.high }))
}

fn stock(stock: &Stock) -> Value {
    json!({
        "fibre": stock.fibre, "water": stock.water, "oil": stock.oil,
        "grease": stock.grease, "vegetable": stock.vegetable, "total": stock.total(),
    })
}

impl PlanResult {
    /// The result as a JSON value. Masses are in kg, shares are fractions.
    pub fn to_json(&self) -> Value {
        json!({
            "schema": SCHEMA,
            "hankwise": env!("CARGO_PKG_VERSION"),
            "lot": self.name,
            "file": self.file,
            "sha256": self.hash,
            "simulated": self.draws,
            "seed": self.seed,
            "enough": self.is_enough(),
            "stated_regain": self.stated_regain,
            "intake": { "greasy": self.greasy.0, "fibre": self.greasy.1 },
            "promise": {
                "counted_in": self.margin.good,
                "spare": self.margin.likely,
                "spare_band": band(self.margin.band),
                "chance": self.margin.chance,
            },
            "goods": self.goods.iter().map(|g| json!({
                "name": g.name, "promised": g.want, "takes_rest": g.rest, "made": g.made,
                "unrounded": g.unrounded, "band": band(g.band), "chance": g.chance,
            })).collect::<Vec<_>>(),
            "stages": self.stages.iter().map(|s| json!({
                "name": s.name, "makes": s.makes, "stated_mass": s.stated,
                "band": band(s.band), "stock": stock(&s.stock),
            })).collect::<Vec<_>>(),
            "settings": self.settings.iter().map(|s| json!({
                "machine": s.stage, "name": s.key, "words": s.words, "value": s.value,
                "unit": s.kind.base(), "kind": s.kind.words(), "main": s.main, "note": s.note,
            })).collect::<Vec<_>>(),
            "drivers": self.drivers.iter().map(|d| json!({
                "name": d.key, "words": d.words, "varies": d.layer.words(), "share": d.share,
                "spare_at_low": d.swing.0, "spare_at_high": d.swing.1,
                "short_at_low": d.short.0, "short_at_high": d.short.1,
            })).collect::<Vec<_>>(),
            "account": self.account.iter().map(|a| json!({
                "stage": a.stage, "to": a.to, "added": a.added, "stock": stock(&a.stock),
            })).collect::<Vec<_>>(),
            "formulas": self.formulas(),
            "shortfalls": self.shortfalls,
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
            "goods": goods, "planned": self.likely, "enough": self.enough,
            "confidence": self.confidence, "simulated": self.draws, "seed": self.seed,
        })
    }
}
