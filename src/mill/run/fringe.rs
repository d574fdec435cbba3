//! Twisting the fringes of woven pieces, by hand or with a fringe twister.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::print::figure;
use crate::quantity::{Contraction, Count, Duration, Length, LinearDensity, Mass};
use crate::{cloth, mill, yarn};

/// A tassel: strands of some ends each, twisted one way and then together the other way.
#[derive(Clone, Debug, Inputs)]
pub struct Tassel<N> {
    /// ends in a strand of a tassel
    #[q("e_t", 1.0..=20.0, like = "4")]
    pub strand_ends: Count<N>,
    /// strands twisted together in a tassel
    #[q("s_t", 2.0..=4.0, or = 2.0)]
    pub strands: Count<N>,
    /// contraction in twisting, on the untwisted length
    #[q("k", 0.05..=0.35, memory, zero, like = "20 %")]
    pub contraction: Contraction<N>,
    /// fringe taken by the knot and by what is trimmed off
    #[q("l_k", 0.0..=0.1, or = 0.0)]
    pub knot_length: Length<N>,
}

/// How it is known how long the fringe is.
#[derive(Clone, Debug, Inputs)]
pub enum FringeSize<N> {
    /// fringe at each end of the piece, before it is twisted
    #[q("q", 0.05..=0.4, like = "15 cm")]
    Fringe(Length<N>),
    /// length wanted of the twisted fringe, without the knot
    #[q("q_w", 0.03..=0.3, like = "10 cm")]
    WantedFringe(Length<N>),
}

/// How the twisting goes.
#[derive(Clone, Debug, Inputs)]
pub struct Twisting<N> {
    /// time to twist and knot the tassels of one round
    #[q("τ_r", 0.002..=0.1, memory, like = "1 min")]
    pub round_time: Duration<N>,
    /// tassels twisted at once: by hand one, on a fringe twister as its heads allow
    #[q("t_o", 1.0..=8.0, or = 1.0)]
    pub tassels_at_once: Count<N>,
    /// people who twist
    #[q("p", 1.0..=10.0, or = 1.0)]
    pub people: Count<N>,
}

/// What [`fringe_twisting()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct FringeTwistingInputs<N> {
    /// ends of the warp across the piece
    #[q("N", 10.0..=20_000.0, like = "812")]
    pub ends: Count<N>,
    /// The tassel.
    #[group]
    pub tassel: Tassel<N>,
    /// How long the fringe is.
    #[one_of("the length of the fringe")]
    pub size: FringeSize<N>,
    /// pieces to fringe, at both ends
    #[q("n_p", 1.0..=1000.0, or = 1.0)]
    pub pieces: Count<N>,
    /// width of the piece
    #[q("b", 0.1..=4.0)]
    pub width: Option<Length<N>>,
    /// count of the warp
    #[q("T₁", 5.0..=2000.0)]
    pub warp_count: Option<LinearDensity<N>>,
    /// How the twisting goes.
    #[group]
    pub twisting: Option<Twisting<N>>,
}

/// What [`fringe_twisting()`] answers.
#[derive(Clone, Debug, Results)]
pub struct FringeTwistingResults<N> {
    /// ends in a full tassel
    #[block = "The fringe"]
    pub ends_per_tassel: Count<N>,
    /// tassels at each end of a piece
    pub tassels: Count<N>,
    /// ends in the last tassel
    pub last_tassel_ends: Count<N>,
    /// from tassel to tassel
    pub tassel_spacing: Option<Length<N>>,
    /// fringe to leave at each end of the piece, before it is twisted
    pub fringe: Length<N>,
    /// length of the twisted fringe, without the knot
    pub twisted_fringe: Length<N>,
    /// count of a full tassel as a yarn
    pub tassel_count: Option<LinearDensity<N>>,
    /// mass of the fringes of a piece, before they are trimmed
    pub fringe_mass: Option<Mass<N>>,
    /// tassels of all pieces, at both ends
    #[block = "The work"]
    pub all_tassels: Count<N>,
    /// The hours.
    #[part]
    pub work: Option<FringeWork<N>>,
}

/// The hours of the twisting.
#[derive(Clone, Debug, Results)]
pub struct FringeWork<N> {
    /// time for a piece, if one person twists it
    pub time_per_piece: Duration<N>,
    /// time for all pieces
    pub time: Duration<N>,
    /// hours of all who twist
    pub person_hours: Duration<N>,
}

/// Twisted fringes: tassels, the fringe to leave for them, and the hours.
///
/// A tassel is `strands` of `strand_ends` each, twisted one way and then together the other way. Give the
/// `fringe` that the loom leaves, or the `wanted_fringe` that is to hang from the knot. `contraction` is
/// that of the whole twisting: twist one tassel and measure it. `round_time` is the time for the tassels
/// that are twisted at once, the knot in it; no efficiency comes on top.
#[calculation(
    title = "Twisting the fringes",
    example = ">>> import hankwise as hw
>>> fringes = hw.mill.fringe_twisting(ends=812, strand_ends=4, contraction=\"20 %\", knot_length=\"3 cm\",
...                                   wanted_fringe=\"10 cm\", pieces=12, round_time=\"1 min\")
>>> fringes[\"tassels\"], fringes[\"fringe\"], fringes[\"time\"]
(<number: 102>, <length: 0.155 m>, <time: 40.8 h>)",
    cautions = ["wheels"],
    check = check
)]
pub fn fringe_twisting<N: Number>(given: &FringeTwistingInputs<N>) -> FringeTwistingResults<N> {
    let Tassel { strand_ends, strands, contraction, knot_length } = given.tassel;
    let ends = given.ends;
    let ends_per_tassel = Count::from(strand_ends.v() * strands.v());
    // A millionth of a tassel is the rounding of binary figures.
    let tassels = Count::from((ends.v() / ends_per_tassel.v()).round_up(1e-6));
    let (fringe, twisted_fringe) = match given.size {
        FringeSize::Fringe(fringe) => {
            let twisted = (fringe.v() - knot_length.v()) * (1.0 - contraction.v());
            (fringe, Length::from(twisted))
        }
        FringeSize::WantedFringe(wanted) => {
            let on_twisted = yarn::contraction_on_twisted(contraction);
            let untwisted = yarn::untwisted_length(wanted, on_twisted);
            (Length::from(untwisted.v() + knot_length.v()), wanted)
        }
    };
    let per_piece = 2.0 * tassels.v();
    let all_tassels = Count::from(per_piece * given.pieces.v());
    FringeTwistingResults {
        ends_per_tassel,
        tassels,
        last_tassel_ends: (ends.v() - (tassels.v() - 1.0) * ends_per_tassel.v()).into(),
        tassel_spacing: given.width.map(|width| (width.v() / tassels.v()).into()),
        fringe,
        twisted_fringe,
        tassel_count: given
            .warp_count
            .map(|count| yarn::fold_alike(count, ends_per_tassel, contraction)),
        fringe_mass: given.warp_count.map(|count| cloth::fringe_mass(ends, fringe, count)),
        all_tassels,
        work: given.twisting.as_ref().map(|twisting| {
            let Twisting { round_time, tassels_at_once, people } = twisting;
            let no_change = Duration::base(N::constant(0.0));
            let hours = |tassels, at_once| {
                let rounds = mill::reel_doffs(tassels, at_once);
                mill::load_time(rounds, *round_time, no_change)
            };
            let at_once = Count::from(tassels_at_once.v() * people.v());
            let time = hours(all_tassels, at_once);
            FringeWork {
                time_per_piece: hours(Count::from(per_piece), *tassels_at_once),
                time,
                person_hours: mill::person_hours(time, *people),
            }
        }),
    }
}

fn check(
    given: &FringeTwistingInputs<f64>,
    found: &FringeTwistingResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    if found.twisted_fringe.value() <= 0.0 {
        refuse!(
            check,
            given.tassel.knot_length,
            "the knot takes the whole fringe of {}; leave a longer fringe or write a shorter knot",
            check.say(found.fringe)
        );
    }
    let (full, ends) = (found.ends_per_tassel.value(), given.ends.value());
    if full > ends {
        refuse!(
            check,
            given.tassel.strand_ends,
            "a tassel takes {} ends and the piece has {}; write fewer ends in a strand",
            figure(full),
            figure(ends)
        );
    }
    let last = found.last_tassel_ends.value();
    if last < 0.5 * full {
        check.warn(format!(
            "the last tassel has only {} of {} ends: spread them over its neighbours, or take another \
             number of ends in a strand",
            figure(last),
            figure(full)
        ));
    }
    check.note(
        "The fringe",
        "Washing shortens and felts the tassels further: try one in the wash with a sample.",
    );
    Ok(())
}
