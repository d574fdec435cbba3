//! The machines behind woven goods: coning, loom, finishing.

use super::super::file::{Draft, PRACTICE, Question, Section, ask};
use super::super::given::{Ask, Owned};
use crate::error::Result;
use crate::quantity::Kind;

/// Coning, the loom and finishing.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Loom {
    pub(super) cone_loss: Ask,
    pub(super) reed: Owned,
    pub(super) ends_per_dent: Ask,
    pub(super) sett: Ask,
    pub(super) picks: Ask,
    pub(super) widest: Ask,
    pub(super) draw_in: Ask,
    pub(super) take_up: Ask,
    pub(super) warp_waste: Ask,
    pub(super) turn: Ask,
    pub(super) weft_waste: Ask,
    pub(super) speed: Ask,
    pub(super) efficiency: Ask,
    pub(super) loss: Ask,
    pub(super) width_shrinkage: Ask,
    pub(super) length_shrinkage: Ask,
}

/// What can do harm at the loom and after it.
pub(in crate::plan) const CAUTIONS: [(&str, &[&str]); 2] =
    [("loom", &["loom"]), ("finish", &["hot liquor", "steam", "machines"])];

const fn share(
    key: &'static str,
    symbol: &'static str,
    meaning: &'static str,
    high: f64,
    example: &'static str,
) -> Question {
    ask(key, symbol, meaning, Kind::Fraction, (0.0, high, PRACTICE), example)
}

const CONE_LOSS: Question = share("loss", "w", "yarn lost in coning", 0.03, "\"1 %\"");
const WEFT_WASTE: Question =
    share("weft_waste", "w", "waste of weft, on what is woven", 0.08, "\"3 %\"");
const FINISHING_LOSS: Question = share("loss", "m", "fibre lost in finishing", 0.08, "\"2 %\"");

const fn setting(
    key: &'static str,
    symbol: &'static str,
    meaning: &'static str,
    kind: Kind,
    (low, high): (f64, f64),
    example: &'static str,
) -> Question {
    ask(key, symbol, meaning, kind, (low, high, PRACTICE), example)
}

const ENDS_PER_DENT: Question =
    setting("ends_per_dent", "e", "ends in a dent", Kind::Count, (1.0, 4.0), "2");
const SETT: Question =
    setting("sett", "n", "sett wanted in the reed", Kind::Sett, (1.0, 30.0), "\"4.8 ends/cm\"");
const PICKS: Question =
    setting("picks", "x", "picks off the loom", Kind::Sett, (1.0, 30.0), "\"4.6 picks/cm\"");
const WIDEST: Question = setting(
    "widest",
    "B_m",
    "widest reed space of the loom",
    Kind::Length,
    (0.5, 4.0),
    "\"1.90 m\"",
);
const DRAW_IN: Question =
    setting("draw_in", "d", "draw-in, reed to off the loom", Kind::DrawIn, (0.0, 0.15), "\"6 %\"");
const TAKE_UP: Question = setting(
    "take_up",
    "u",
    "take-up of the warp, on yarn length",
    Kind::TakeUp,
    (0.02, 0.15),
    "\"8 %\"",
);
const WARP_WASTE: Question =
    setting("warp_waste", "a", "waste of a warp, in all", Kind::Length, (0.3, 4.0), "\"1.0 m\"");
const TURN: Question = setting(
    "turn",
    "b",
    "weft allowance for the turn, a pick",
    Kind::Length,
    (0.0, 0.06),
    "\"0.02 m\"",
);
const SPEED: Question =
    setting("speed", "r", "picks in a minute", Kind::Frequency, (30.0, 300.0), "\"60 picks/min\"");
const EFFICIENCY: Question =
    setting("efficiency", "η", "efficiency", Kind::Fraction, (0.4, 0.95), "\"75 %\"");

const fn shrinkage(key: &'static str, symbol: &'static str, meaning: &'static str) -> Question {
    ask(key, symbol, meaning, Kind::Shrinkage, (-0.02, 0.4, "pieces in print"), "\"12 %\"")
}

const WIDTH_SHRINKAGE: Question =
    shrinkage("width_shrinkage", "s_w", "shrinkage in width, off the loom to finished");
const LENGTH_SHRINKAGE: Question =
    shrinkage("length_shrinkage", "s_l", "shrinkage in length, off the loom to finished");

impl Loom {
    pub(in crate::plan) fn read(
        cone: &Section<'_>,
        loom: &Section<'_>,
        finish: &Section<'_>,
        draft: &mut Draft,
    ) -> Result<Self> {
        let reeds = "[\"20 dents/10 cm\", \"24 dents/10 cm\"]";
        Ok(Loom {
            cone_loss: cone.ask(draft, &CONE_LOSS.or(0.0))?,
            reed: loom.owned(draft, "reeds", "reed", Kind::ReedCount, reeds)?,
            ends_per_dent: loom.ask(draft, &ENDS_PER_DENT)?,
            sett: loom.ask(draft, &SETT)?,
            picks: loom.ask(draft, &PICKS)?,
            widest: loom.ask(draft, &WIDEST)?,
            draw_in: loom.ask(draft, &DRAW_IN)?,
            take_up: loom.ask(draft, &TAKE_UP)?,
            warp_waste: loom.ask(draft, &WARP_WASTE)?,
            turn: loom.ask(draft, &TURN.or(0.0))?,
            weft_waste: loom.ask(draft, &WEFT_WASTE.or(0.0))?,
            speed: loom.ask(draft, &SPEED)?,
            efficiency: loom.ask(draft, &EFFICIENCY.positive())?,
            loss: finish.ask(draft, &FINISHING_LOSS)?,
            width_shrinkage: finish.ask(draft, &WIDTH_SHRINKAGE)?,
            length_shrinkage: finish.ask(draft, &LENGTH_SHRINKAGE)?,
        })
    }
}
