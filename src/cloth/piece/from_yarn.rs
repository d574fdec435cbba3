//! From the yarn at hand: how many whole pieces, and what runs out first.

use super::inputs::{Article, AtHand, PiecesFromYarnInputs, TwoYarns};
use super::{PieceResults, check, lay_out};
use crate::calculation::{Check, Results, calculation};
use crate::error::{Error, Result};
use crate::number::{Number, V};
use crate::quantity::{Count, Mass};

/// A billionth too little is enough: arithmetic rounds.
const ENOUGH: f64 = 1.0 + 1e-9;
/// No beam and no order is for more.
const MOST: u32 = 100_000;

const PIECES: &str = "Pieces";

/// What [`pieces_from_yarn()`] answers.
#[derive(Clone, Debug, Results)]
pub struct PiecesFromYarnResults<N> {
    /// whole pieces that the yarn makes
    #[block = "Pieces"]
    pub pieces: Count<N>,
    /// yarn left over
    pub yarn_left: Option<Mass<N>>,
    /// warp yarn left over
    pub warp_yarn_left: Option<Mass<N>>,
    /// weft yarn left over
    pub weft_yarn_left: Option<Mass<N>>,
    /// These pieces.
    #[part]
    pub piece: PieceResults<N>,
}

/// Yarn at hand, and which threads it is for.
#[derive(Clone, Copy)]
struct Hand<N> {
    name: &'static str,
    mass: Mass<N>,
    warp: bool,
    weft: bool,
}

impl<N: Number> Hand<N> {
    /// What a number of pieces needs of it.
    fn used(&self, piece: &PieceResults<N>) -> V<N> {
        let yarn = &piece.yarn;
        match (self.warp, self.weft) {
            (true, true) => yarn.warp_mass.v() + yarn.weft_mass.v(),
            (true, false) => yarn.warp_mass.v(),
            _ => yarn.weft_mass.v(),
        }
    }
    /// What is then left; what rounding leaves under nothing is nothing.
    fn left(&self, piece: &PieceResults<N>) -> Mass<N> {
        Mass::from((self.mass.v() - self.used(piece)).max(0.0))
    }
}

impl<N: Number> AtHand<N> {
    fn hands(&self) -> Vec<Hand<N>> {
        let hand = |name, mass, warp, weft| Hand { name, mass, warp, weft };
        match self {
            AtHand::YarnAtHand(mass) => vec![hand("yarn", *mass, true, true)],
            AtHand::Apart(TwoYarns { warp_yarn_at_hand, weft_yarn_at_hand }) => {
                let warp = warp_yarn_at_hand.map(|mass| hand("warp yarn", mass, true, false));
                let weft = weft_yarn_at_hand.map(|mass| hand("weft yarn", mass, false, true));
                warp.into_iter().chain(weft).collect()
            }
        }
    }
}

/// The largest number of whole pieces that the yarn at hand makes, what runs out first and what is left.
///
/// `yarn_at_hand` is for warp and weft of one count; else give `warp_yarn_at_hand`, `weft_yarn_at_hand` or
/// both. The article is given as for `piece`, without `pieces`.
#[calculation(
    title = "Pieces from yarn",
    example = ">>> import hankwise as hw
>>> made = hw.cloth.pieces_from_yarn(
...     yarn_at_hand=\"12 kg\", wanted_width=\"1.40 m\", wanted_length=\"1.80 m\", warp_count=\"8 Nm\",
...     wanted_reed_sett=\"4.8 ends/cm\", weft_sett=\"4.6 picks/cm\", thrums=\"90 cm\", draw_in=\"6 %\",
...     take_up=\"8 %\",
... )
>>> made[\"pieces\"], made[\"yarn_left\"]
(<number: 36>, <mass: 0.09095 kg>)",
    check = refuse_and_tell
)]
pub fn pieces_from_yarn<N: Number>(given: &PiecesFromYarnInputs<N>) -> PiecesFromYarnResults<N> {
    let hands = given.hand.hands();
    let plain = given.article.map(&mut |number| number.value());
    let each = hands.iter().map(|hand| made(&plain, &hand.plain()));
    // Where not even one can be made, that is refused with what one would need.
    let pieces = f64::from(each.min().unwrap_or(0).max(1));
    let pieces = match hands.first() {
        Some(hand) => Count::from(V(hand.mass.v().0.chosen(pieces))),
        None => Count::base(N::constant(pieces)),
    };
    let piece = lay_out(&given.article, pieces);
    let left =
        |name: &str| hands.iter().find(|hand| hand.name == name).map(|hand| hand.left(&piece));
    PiecesFromYarnResults {
        pieces,
        yarn_left: left("yarn"),
        warp_yarn_left: left("warp yarn"),
        weft_yarn_left: left("weft yarn"),
        piece,
    }
}

impl<N: Number> Hand<N> {
    fn plain(&self) -> Hand<f64> {
        Hand {
            name: self.name,
            mass: Mass::base(self.mass.value()),
            warp: self.warp,
            weft: self.weft,
        }
    }
}

/// What a number of pieces needs of a yarn, in kilograms.
fn need(article: &Article<f64>, hand: &Hand<f64>, pieces: u32) -> f64 {
    hand.used(&lay_out(article, Count::base(f64::from(pieces)))).value()
}

/// The largest number of pieces that a yarn is enough for.
fn made(article: &Article<f64>, hand: &Hand<f64>) -> u32 {
    most(|n| need(article, hand, n) <= hand.mass.value() * ENOUGH)
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

fn refuse_and_tell(
    given: &PiecesFromYarnInputs<f64>,
    found: &PiecesFromYarnResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let article = &given.article;
    let warp = article.yarns.warp_count.value();
    let is_other = (article.weft_count().value() / warp - 1.0).abs() > 1e-9;
    if matches!(given.hand, AtHand::YarnAtHand(_)) && is_other {
        return Err(Error::notation(
            "warp and weft are of two counts, so they are two yarns; write warp_yarn_at_hand and \
             weft_yarn_at_hand instead of yarn_at_hand",
        ));
    }
    check::refuse_narrow(article, &found.piece, check)?;
    let hands = given.hand.hands();
    let each: Vec<u32> = hands.iter().map(|hand| made(article, hand)).collect();
    let pieces = each.iter().copied().min().unwrap_or(0);
    if pieces == 0 {
        let short = hands.iter().find(|h| need(article, h, 1) > h.mass.value() * ENOUGH);
        let why = short.map_or_else(String::new, |hand| {
            let needed = need(article, hand, 1);
            format!(
                ": the first needs {} of {} with thrums and waste, {} more than the {} at hand",
                check.say(Mass::base(needed)),
                hand.name,
                check.say(Mass::base(needed - hand.mass.value())),
                check.say(hand.mass)
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
    let first: Vec<&str> =
        hands.iter().zip(&each).filter(|(_, n)| **n == pieces).map(|(hand, _)| hand.name).collect();
    let runs = if first.len() == 1 { "runs" } else { "run" };
    check.note(PIECES, format!("{pieces} made; {} {runs} out first.", first.join(" and ")));
    for (hand, each) in hands.iter().zip(&each) {
        let missing = need(article, hand, pieces + 1) - hand.mass.value();
        let lacks = if missing > 0.0 {
            format!(", and one piece more lacks {}", check.say(Mass::base(missing)))
        } else {
            String::new()
        };
        check.note(
            PIECES,
            format!(
                "{}: {} at hand make {each}; {} are left over{lacks}.",
                hand.name,
                check.say(hand.mass),
                check.say(hand.left(&found.piece))
            ),
        );
    }
    if article.warp_colours.is_some() || article.weft_colours.is_some() {
        check.note(
            PIECES,
            "All colours of a yarn are taken together here: see below what each needs, and whether there \
             is that much of it.",
        );
    }
    check::article(article, &found.piece, check)
}
