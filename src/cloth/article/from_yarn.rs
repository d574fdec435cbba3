//! From the yarn that there is: how many whole pieces, and what runs out first.

use super::ask::{Article, Key};
use super::given::{Entered, Given};
use crate::error::{Error, Result};
use crate::number::V;
use crate::particulars::Particulars;
use crate::quantity::print::of_kind;
use crate::quantity::{Count, Kind, Mass};
use crate::table::Block;

/// A billionth too little is enough: arithmetic rounds.
const ENOUGH: f64 = 1.0 + 1e-9;
/// No beam and no order is for more.
const MOST: u32 = 100_000;

/// Yarn at hand and needed.
#[derive(Clone, Copy)]
struct Hand {
    name: &'static str,
    key: Key,
    kg: f64,
    /// Of warp and weft, which of them it is for.
    warp: bool,
    weft: bool,
}

impl Article {
    /// The largest number of whole pieces that the yarn at hand makes, what runs out first, and what is
    /// left over.
    ///
    /// ```
    /// use hankwise::cloth::Article;
    ///
    /// let made = Article::read(&[
    ///     ("width", "1 m"), ("length", "2 m"), ("warp", "100 tex"), ("sett", "5 ends/cm"),
    ///     ("picks", "5 picks/cm"), ("warp_yarn", "1 kg"), ("weft_yarn", "0.55 kg"),
    /// ])?.pieces_from_yarn()?;
    /// // 500 ends of 2 m are 100 g, and 1000 picks of 1 m too: the weft runs out first.
    /// assert_eq!(made.find("pieces")?.value, 5.0);
    /// assert!((made.find("warp_left")?.value - 0.5).abs() < 1e-12);
    /// # Ok::<(), hankwise::Error>(())
    /// ```
    pub fn pieces_from_yarn(&self) -> Result<Particulars> {
        let unusual = self.check()?;
        let hands = self.hands()?;
        // A loom too narrow for one piece is too narrow for all.
        self.refuse(&self.plain(1.0))?;
        let need = |hand: &Hand, pieces: u32| {
            let work = self.plain(f64::from(pieces));
            let warp = if hand.warp { work.warp_mass.value() } else { 0.0 };
            warp + if hand.weft { work.weft_mass.value() } else { 0.0 }
        };
        let made = |hand: &Hand| most(|n| need(hand, n) <= hand.kg * ENOUGH);
        let each: Vec<u32> = hands.iter().map(made).collect();
        let pieces = each.iter().copied().min().unwrap_or(0);
        if pieces == 0 {
            let short = hands.iter().find(|hand| need(hand, 1) > hand.kg * ENOUGH);
            let why = short.map_or_else(String::new, |hand| {
                let needed = need(hand, 1);
                format!(
                    ": the first needs {} of {} with thrums and waste, {} more than the {} at hand",
                    self.say_mass(hand.key, needed),
                    hand.name,
                    self.say_mass(hand.key, needed - hand.kg),
                    self.say_mass(hand.key, hand.kg)
                )
            });
            return Err(Error::range(format!(
                "the yarn makes no whole piece{why}; take more, or make the piece smaller"
            )));
        }
        if pieces == MOST {
            return Err(Error::range(format!(
                "the yarn would make more than {MOST} pieces; are its units right?"
            )));
        }
        Particulars::work(|desk| {
            for words in unusual {
                desk.warn(words);
            }
            let given = Entered::new(desk, self, Some(f64::from(pieces)));
            let work = self.on(desk, &given)?;
            let number: Count<_> = given.get(Key::Pieces);
            desk.figure("pieces", "whole pieces that the yarn makes", number);
            let mut lines = Vec::new();
            for (hand, each) in hands.iter().zip(&each) {
                let at_hand: Mass<_> = given.get(hand.key);
                let mut used = V::constant(0.0);
                if hand.warp {
                    used = work.warp_mass.v();
                }
                if hand.weft {
                    used = if hand.warp { used + work.weft_mass.v() } else { work.weft_mass.v() };
                }
                let words = format!("{} left over", hand.name);
                let short = hand.name.split(' ').next().unwrap_or("yarn");
                // What rounding leaves under nothing is nothing.
                let left = Mass::from((at_hand.v() - used).max(0.0));
                let left = desk.figure(&format!("{short}_left"), &words, left);
                let missing = need(hand, pieces + 1) - hand.kg;
                lines.push(format!(
                    "{}: {} at hand make {each}; {} are left over{}.",
                    hand.name,
                    self.say_mass(hand.key, hand.kg),
                    self.say_mass(hand.key, left.value()),
                    if missing > 0.0 {
                        format!(", and one piece more lacks {}", self.say_mass(hand.key, missing))
                    } else {
                        String::new()
                    }
                ));
            }
            if self.warp_colours.is_some() || self.weft_colours.is_some() {
                lines.push(
                    "All colours of a yarn are taken together here: see below what each needs, and whether \
                     there is that much of it."
                        .to_owned(),
                );
            }
            let mut report = self.report(&work, desk)?;
            let first: Vec<&str> = hands
                .iter()
                .zip(&each)
                .filter(|(_, n)| **n == pieces)
                .map(|(hand, _)| hand.name)
                .collect();
            let pieces =
                if pieces == 1 { "1 piece".to_owned() } else { format!("{pieces} pieces") };
            let runs = if first.len() == 1 { "runs" } else { "run" };
            report.blocks.insert(
                0,
                Block {
                    title: format!("{pieces}; {} {runs} out first", first.join(" and ")),
                    lead: lines,
                    ..Block::default()
                },
            );
            Ok(report)
        })
    }

    fn hands(&self) -> Result<Vec<Hand>> {
        if self.has(Key::Pieces) {
            return Err(Error::notation(
                "pieces is what the yarn answers; leave it out, or ask piece for the yarn that they need",
            ));
        }
        let one = |key: Key, name, warp, weft| {
            self.base(key).map(|kg| Hand { name, key, kg, warp, weft })
        };
        if let Some(both) = one(Key::Have, "yarn", true, true) {
            if self.has(Key::HaveWarp) || self.has(Key::HaveWeft) {
                return Err(Error::notation(
                    "yarn is for warp and weft alike; give either yarn, or warp_yarn and weft_yarn",
                ));
            }
            let other = self.base(Key::Weft).is_some_and(|weft| self.base(Key::Warp) != Some(weft));
            if other {
                return Err(Error::notation(
                    "warp and weft are of two counts, so they are two yarns; write warp_yarn and \
                     weft_yarn instead of yarn",
                ));
            }
            return Ok(vec![both]);
        }
        let hands = [
            one(Key::HaveWarp, "warp yarn", true, false),
            one(Key::HaveWeft, "weft yarn", false, true),
        ];
        let hands: Vec<Hand> = hands.into_iter().flatten().collect();
        if hands.is_empty() {
            return Err(Error::notation(
                "the yarn at hand is missing; write yarn=\"12 kg\" for warp and weft of one yarn, or \
                 warp_yarn=\"7 kg\" and weft_yarn=\"5 kg\"",
            ));
        }
        Ok(hands)
    }

    fn say_mass(&self, key: Key, kg: f64) -> String {
        match self.unit(key) {
            Some(unit) => crate::quantity::print::with_unit(unit.from_base(kg), unit.symbol),
            None => of_kind(kg, Kind::Mass),
        }
    }
}

/// The largest number that is still enough; the need grows with the number.
fn most(enough: impl Fn(u32) -> bool) -> u32 {
    let (mut low, mut high) = (0, 1);
    while high < MOST && enough(high) {
        (low, high) = (high, (high * 2).min(MOST));
    }
    if high == MOST && enough(high) {
        return MOST;
    }
    while high - low > 1 {
        let middle = low + (high - low) / 2;
        if enough(middle) { low = middle } else { high = middle }
    }
    low
}
