//! What a lot loses on the card for being small, and whose wool comes off.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::mill;
use crate::number::{Equation, Number, V};
use crate::quantity::{Fraction, Mass, ShareLost};

/// What [`lot_on_card()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct LotOnCardInputs<N> {
    /// clean dry fibre of the lot, at the card
    #[q("f", 0.5..=5000.0, like = "36 kg")]
    pub fibre_mass: Mass<N>,
    /// clean dry fibre that the card keeps
    #[q("h", 0.01..=10.0, like = "0.60 kg")]
    pub held_up: Mass<N>,
    /// fibre lost, on the fibre that enters, however large the lot
    #[q("w", 0.0..=0.12, or = 0.05, zero)]
    pub loss: ShareLost<N>,
    /// loss allowed for the lot
    #[q("w_a", 0.03..=0.5, or = 0.1)]
    pub allowed_loss: ShareLost<N>,
    /// share of its own fibre wanted over the run, the card not cleared
    #[q("p", 0.8..=0.999, or = 0.95)]
    pub wanted_own_share: Fraction<N>,
    /// share of the lot before that may still come off
    #[q("x", 0.0005..=0.2, or = 0.01)]
    pub trace: Fraction<N>,
}

/// What [`lot_on_card()`] answers.
#[derive(Clone, Debug, Results)]
pub struct LotOnCardResults<N> {
    /// what this lot loses
    #[block = "Run separately"]
    pub lot_loss: ShareLost<N>,
    /// clean dry fibre in slubbing
    pub fibre_out: Mass<N>,
    /// smallest lot within the loss allowed
    pub smallest_lot: Mass<N>,
    /// share of the lot before, over the whole run
    #[block = "Is it my own wool? The card not cleared before it"]
    pub carried_share: Fraction<N>,
    /// fibre of the lot before that comes off
    pub carried_mass: Mass<N>,
    /// share of its own fibre, over the whole run
    pub own_share: Fraction<N>,
    /// share of the lot before, at the end of the run
    pub carried_share_at_end: Fraction<N>,
    /// smallest lot with the share of its own fibre wanted
    pub lot_for_own: Mass<N>,
    /// clearing fibre until only the trace comes off
    pub clearing_fibre: Mass<N>,
    /// How the loss falls with the lot
    #[rows]
    pub lots: Vec<LotOfSize<N>>,
}

/// A lot of another size on the same card.
#[derive(Clone, Debug, Results)]
pub struct LotOfSize<N> {
    /// clean dry fibre of the lot
    #[head = "lot"]
    pub fibre_mass: Mass<N>,
    /// what the lot loses
    #[head = "loses"]
    pub lot_loss: ShareLost<N>,
    /// share of its own fibre if the card is not cleared
    #[head = "its own fibre if the card is not cleared"]
    pub own_share: Fraction<N>,
}

/// Lots of the table, in hold-ups.
const LOTS: [f64; 7] = [2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0];

/// What a lot loses for being small, the smallest lot worth running separately, and whose wool comes off.
///
/// `held_up` is what the card keeps, `loss` what any lot loses; `allowed_loss` is the loss that the grower
/// is told of. Where the card is not cleared, the lot before comes off with this one: `wanted_own_share` is
/// the share of a lot's own fibre that is wanted over its run, `trace` the share of the lot before at which
/// the eye is content.
#[calculation(
    title = "A lot run separately",
    example = ">>> import hankwise as hw
>>> lot = hw.mill.lot_on_card(fibre_mass=\"36 kg\", held_up=\"0.60 kg\", loss=\"5 %\", allowed_loss=\"8 %\")
>>> lot[\"lot_loss\"], lot[\"smallest_lot\"], lot[\"own_share\"], lot[\"clearing_fibre\"]
(<loss on what enters: 6.667 %>, <mass: 20 kg>, <fraction: 98.33 %>, <mass: 2.763 kg>)",
    cautions = ["machines"],
    check = check
)]
pub fn lot_on_card<N: Number>(given: &LotOnCardInputs<N>) -> LotOnCardResults<N> {
    let LotOnCardInputs { fibre_mass, held_up, loss, .. } = *given;
    let carried_share = mill::mean_carried_share(fibre_mass, held_up);
    let of_size = |times: f64| {
        let lot = Mass::from(times * held_up.v());
        LotOfSize {
            fibre_mass: lot,
            lot_loss: mill::lot_loss(lot, loss, held_up),
            own_share: Fraction::from(1.0 - mill::mean_carried_share(lot, held_up).v()),
        }
    };
    LotOnCardResults {
        lot_loss: mill::lot_loss(fibre_mass, loss, held_up),
        fibre_out: mill::mass_after_loss(fibre_mass, loss, held_up),
        smallest_lot: mill::smallest_lot(held_up, loss, given.allowed_loss),
        // The card not cleared before: its fibre comes off with this lot, and this lot's stays behind.
        carried_share,
        carried_mass: mill::carried_mass(fibre_mass, held_up),
        own_share: Fraction::from(1.0 - carried_share.v()),
        carried_share_at_end: mill::carried_share(fibre_mass, held_up),
        lot_for_own: own_lot(held_up, given.wanted_own_share),
        clearing_fibre: mill::clearing_fibre(held_up, given.trace),
        lots: LOTS.map(of_size).into(),
    }
}

/// The lot whose own share is `own`: the root of the mean carry-over.
fn own_lot<N: Number>(held_up: Mass<N>, own: Fraction<N>) -> Mass<N> {
    Mass::from(
        held_up.v() * V::solved::<OwnLot, 1>([own.v()], ["m/h", "", "lot on what the card holds"]),
    )
}

/// h/m × (1 − e^(−m/h)) = 1 − p, in u = m/h.
struct OwnLot;

impl Equation<1> for OwnLot {
    fn residual<N: Number>(u: V<N>, [own]: [V<N>; 1]) -> V<N> {
        (1.0 - (-u).exp()) / u - (1.0 - own)
    }
    fn root([own]: [f64; 1]) -> f64 {
        // The share of the lot before falls with the lot; it is under 1/u, by no more than rounding
        // for a large lot.
        let high = 1.01 / (1.0 - own);
        crate::formula::bisect(&mut |u| Self::residual(V(u), [V(own)]).0, 1e-9, high)
    }
}

fn check(
    given: &LotOnCardInputs<f64>,
    found: &LotOnCardResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let LotOnCardInputs { fibre_mass, loss, allowed_loss, .. } = *given;
    if allowed_loss.value() <= loss.value() {
        refuse!(
            check,
            given.allowed_loss,
            "{} is no more than any lot loses, {}; no lot is large enough: allow more than that",
            check.say(allowed_loss),
            check.say(loss)
        );
    }
    if given.wanted_own_share.value() >= 1.0 {
        refuse!(
            check,
            given.wanted_own_share,
            "some of the lot before always comes off a card that is not taken apart; write a share below \
             100 %"
        );
    }
    if found.lot_loss.value() >= 1.0 {
        refuse!(
            check,
            given.fibre_mass,
            "{} is less than the card keeps and loses; nothing comes off: run it with another lot",
            check.say(fibre_mass)
        );
    }
    if found.lot_loss.value() > allowed_loss.value() * (1.0 + 1e-9) {
        check.warn(format!(
            "the lot of {} loses {}, more than the {} allowed; from {} it stays within it",
            check.say(fibre_mass),
            check.say(found.lot_loss),
            check.say(allowed_loss),
            check.say_at_least(found.smallest_lot),
        ));
    }
    check.note("Run separately", "what the card keeps is lost to the lot, whatever its size");
    check.note(
        "Is it my own wool? The card not cleared before it",
        format!(
            "a card that mixes well; the first slubbing is all of the lot before, after {} gone through it is \
             {} of it",
            check.say(given.held_up),
            check.say(mill::carried_share(Mass::base(1.0), Mass::base(1.0)))
        ),
    );
    Ok(())
}
