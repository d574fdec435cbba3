//! The smallest lot worth running apart, and whose wool comes off the card.

use crate::error::{Error, Result};
use crate::job::{Ask, Job, Work};
use crate::mill;
use crate::number::{Number, V};
use crate::quantity::print::{fixed, of_kind};
use crate::quantity::{Fraction, Kind, Mass};
use crate::table::Align::Right;
use crate::table::Block;

/// What a lot loses for being small, the smallest lot worth running apart, and whose wool comes off.
pub(crate) static LOTS_APART: Job = Job {
    name: "lots_apart",
    module: module_path!(),
    title: "A lot run apart",
    summary: "What a lot loses for being small, the smallest lot worth running apart, and whose wool comes off.",
    details: "`held_up` is what the card keeps, `loss` what any lot loses; `allowed` is the loss that the \
        grower is told of. Where the card is not cleared, the lot before comes off with this one: `own` is the \
        share of a lot's own fibre that is wanted over its run, `trace` the share of the lot before at which \
        the eye is content.",
    example: ">>> import hankwise as hw\n\
>>> lot = hw.mill.lots_apart(lot=\"36 kg\", held_up=\"0.60 kg\", loss=\"5 %\", allowed=\"8 %\")\n\
>>> lot[\"lot_loss\"], lot[\"smallest_lot\"], lot[\"own_share\"], lot[\"clearing\"]\n\
(<fraction: 6.667 %>, <mass: 20 kg>, <fraction: 98.33 %>, <mass: 2.763 kg>)",
    asks: &[
        Ask::need(
            "lot",
            "m",
            "clean dry fibre of the lot, at the card",
            Kind::Mass,
            (0.5, 2000.0),
            "\"36 kg\"",
        ),
        Ask::need(
            "held_up",
            "h",
            "clean dry fibre that the card keeps",
            Kind::Mass,
            (0.01, 10.0),
            "\"0.60 kg\"",
        ),
        Ask::may("loss", "w", "share lost, however large the lot", Kind::Fraction, (0.0, 0.12))
            .or(0.05)
            .or_none(),
        Ask::may("allowed", "L", "loss allowed", Kind::Fraction, (0.03, 0.3)).or(0.1),
        Ask::may(
            "own",
            "p",
            "share of its own fibre wanted over the run, the card not cleared",
            Kind::Fraction,
            (0.8, 0.999),
        )
        .or(0.95),
        Ask::may(
            "trace",
            "x",
            "share of the lot before that may still come off",
            Kind::Fraction,
            (0.0005, 0.1),
        )
        .or(0.01),
    ],
    cautions: &[],
    work,
};

/// Lots of the table, in hold-ups.
const LOTS: [f64; 7] = [2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0];

fn work(job: &Work<'_, '_>) -> Result<()> {
    let (lot, held_up): (Mass<_>, Mass<_>) = (job.get("lot"), job.get("held_up"));
    let (loss, allowed): (Fraction<_>, Fraction<_>) = (job.get("loss"), job.get("allowed"));
    let (own, trace): (Fraction<_>, Fraction<_>) = (job.get("own"), job.get("trace"));
    let percent = |x: f64| of_kind(x, Kind::Fraction);
    if allowed.value() <= loss.value() {
        return Err(Error::range(format!(
            "allowed: {} is no more than any lot loses, {}; no lot is large enough: allow more than that",
            percent(allowed.value()),
            percent(loss.value())
        )));
    }
    if trace.value() <= 0.0 || own.value() >= 1.0 {
        return Err(Error::range(
            "trace and own: some of the lot before always comes off a card that is not taken apart; write a \
             trace above 0 %, such as 1 %, and an own share below 100 %",
        ));
    }
    job.block("Run apart");
    let lost = mill::lot_loss(lot, loss, held_up);
    if lost.value() >= 1.0 {
        return Err(Error::range(format!(
            "lot: {} is less than the card keeps and loses; nothing comes off: run it with another lot",
            job.say(lot.value(), Kind::Mass)
        )));
    }
    let lost = job.name("lot_loss", "what this lot loses", lost);
    job.name(
        "slubbing_fibre",
        "clean dry fibre in slubbing",
        mill::mass_after_loss(lot, loss, held_up),
    );
    let smallest = mill::smallest_lot(held_up, loss, allowed);
    let smallest = job.name("smallest_lot", "smallest lot within the loss allowed", smallest);

    job.note("what the card keeps is lost to the lot, whatever its size");
    job.block("Is it my own wool? The card not cleared before it");
    // The card not cleared before: its fibre comes off with this lot, and this lot's stays behind.
    let before = mill::mean_carried_share(lot, held_up);
    let before = job.name("before_share", "of the lot before, over the whole run", before);
    job.name(
        "before_mass",
        "fibre of the lot before that comes off",
        mill::carried_mass(lot, held_up),
    );
    job.name("own_share", "its own fibre, over the whole run", Fraction::from(1.0 - before.v()));
    job.name(
        "at_end",
        "of the lot before, at the end of the run",
        mill::carried_share(lot, held_up),
    );
    let lot_for_own = own_lot(held_up, own);
    job.name("lot_for_own", "smallest lot with the share of its own fibre wanted", lot_for_own);
    job.name(
        "clearing",
        "clearing fibre until only the trace comes off",
        mill::clearing_fibre(held_up, trace),
    );

    if lost.value() > allowed.value() {
        job.warn(format!(
            "the lot of {} loses {}, more than the {} allowed; from {} it stays within it",
            job.say(lot.value(), Kind::Mass),
            percent(lost.value()),
            percent(allowed.value()),
            job.say(smallest.value(), Kind::Mass),
        ));
    }
    job.note(format!(
        "a card that mixes well; the first slubbing is all of the lot before, after {} gone through it is \
         {} of it",
        job.say(held_up.value(), Kind::Mass),
        percent(mill::carried_share(Mass::base(1.0), Mass::base(1.0)).value())
    ));
    let columns = ["lot", "loses", "its own fibre if the card is not cleared"];
    let rows = LOTS.map(|times| {
        let (h, w) = (Mass::base(held_up.value()), Fraction::base(loss.value()));
        let m = Mass::base(times * held_up.value());
        vec![
            job.say(m.value(), Kind::Mass),
            format!("{} %", fixed(100.0 * mill::lot_loss(m, w, h).value(), 1)),
            format!("{} %", fixed(100.0 * (1.0 - mill::mean_carried_share(m, h).value()), 1)),
        ]
    });
    job.add(Block {
        title: "How the loss falls with the lot".to_owned(),
        columns: columns.map(|name| (name.to_owned(), Right)).to_vec(),
        rows: rows.to_vec(),
        ..Block::default()
    });
    Ok(())
}

/// The lot whose own share is `own`: the root of the mean carry-over.
fn own_lot<N: Number>(held_up: Mass<N>, own: Fraction<N>) -> Mass<N> {
    Mass::from(held_up.v() * V::solved::<OwnLot, 1>([own.v()], "m/h"))
}

/// h/m × (1 − e^(−m/h)) = 1 − p, in u = m/h.
struct OwnLot;

impl crate::number::Equation<1> for OwnLot {
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
