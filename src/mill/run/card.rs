//! A lot on the card.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Results, calculation};
use crate::error::Result;
use crate::fibre;
use crate::mill;
use crate::number::{Number, V};
use crate::quantity::{
    Count, Duration, Fraction, Frequency, Length, LinearDensity, Mass, MassPerArea, MassRate,
    OnFibre, Regain, ShareLost, Speed,
};

/// The card itself, and how it runs.
#[derive(Clone, Debug, Inputs)]
pub struct CardMachine<N> {
    /// How it is fed and delivers.
    #[group]
    pub feed: CardFeed<N>,
    /// What it keeps.
    #[group]
    pub hold_up: HoldUp<N>,
}

/// How the card delivers, and how it is fed.
#[derive(Clone, Debug, Inputs)]
pub struct CardFeed<N> {
    /// good ends
    #[q("N", 10.0..=200.0, memory, like = "120")]
    pub ends: Count<N>,
    /// slubbing that each end delivers
    #[q("v", 3.0..=40.0, memory, like = "12 m/min")]
    pub delivery_speed: Speed<N>,
    /// drops of the hopper
    #[q("f_d", 0.5..=10.0)]
    pub drop_rate: Option<Frequency<N>>,
}

/// What the running card keeps.
#[derive(Clone, Debug, Inputs)]
pub struct HoldUp<N> {
    /// clean dry fibre that the running card keeps
    #[q("h", 0.0..=10.0, zero)]
    pub held_up: Option<Mass<N>>,
}

/// The web, from edge to edge.
#[derive(Clone, Debug, Inputs)]
pub struct CardWeb<N> {
    /// edge ends, all together
    #[q("N_e", 0.0..=16.0, or = 0.0)]
    pub edge_ends: Count<N>,
    /// width of the web
    #[q("b_w", 0.2..=3.0)]
    pub web_width: Option<Length<N>>,
}

/// Waste of the card, on what goes through.
#[derive(Clone, Debug, Inputs)]
pub struct CardWaste<N> {
    /// droppings under the card, on what goes through
    #[q("w_d", 0.0..=0.1, zero)]
    pub droppings_share: Option<ShareLost<N>>,
    /// strips fettled from the clothing, on what goes through
    #[q("w_s", 0.0..=0.1, zero)]
    pub strips_share: Option<ShareLost<N>>,
    /// fly, on what goes through
    #[q("w_f", 0.0..=0.1, zero)]
    pub fly_share: Option<ShareLost<N>>,
    /// fibre thrown out with burr and seed, on what goes through
    #[q("w_b", 0.0..=0.1, zero)]
    pub burr_share: Option<ShareLost<N>>,
    /// loss not split by place, on what goes through
    #[q("w", 0.0..=0.1, zero)]
    pub loss: Option<ShareLost<N>>,
}

/// What [`card()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct CardInputs<N> {
    /// clean dry fibre of the lot
    #[q("f", 0.5..=2000.0, like = "36 kg")]
    pub fibre_mass: Mass<N>,
    /// count of the slubbing, as it leaves the card
    #[q("T_c", 50.0..=2000.0, like = "200 tex")]
    pub slubbing_count: LinearDensity<N>,
    /// The card.
    #[group]
    pub machine: CardMachine<N>,
    /// The web.
    #[group]
    pub web: CardWeb<N>,
    /// share of the edge ends that is put back on the feed
    #[q("r", 0.0..=1.0, or = 1.0, zero)]
    pub put_back_share: Fraction<N>,
    /// The waste.
    #[group]
    pub waste: CardWaste<N>,
    /// how near to its count the slubbing has to be
    #[q("x", 0.01..=0.2, or = 0.05)]
    pub within: Fraction<N>,
    /// water on clean dry fibre, at the hopper
    #[q("R₁", 0.0..=0.35, or = 0.0)]
    pub regain_before: Regain<N>,
    /// grease and oil on clean dry fibre, at the hopper
    #[q("o₁", 0.0..=0.35, or = 0.0)]
    pub fat_before: OnFibre<N>,
    /// water on clean dry fibre, in the slubbing
    #[q("R₂", 0.0..=0.35, or = 0.0)]
    pub regain_after: Regain<N>,
    /// grease and oil on clean dry fibre, in the slubbing
    #[q("o₂", 0.0..=0.35, or = 0.0)]
    pub fat_after: OnFibre<N>,
}

/// What [`card()`] answers.
#[derive(Clone, Debug, Results)]
pub struct CardResults<N> {
    /// count of the slubbing, on clean dry fibre
    #[block = "To set and to weigh"]
    pub slubbing_dry_count: LinearDensity<N>,
    /// clean dry fibre delivered in good slubbing
    pub fibre_output: MassRate<N>,
    /// feed, as weighed, with what is put back
    pub feed_rate: MassRate<N>,
    /// output of each good end, as it leaves the card
    pub output_per_end: MassRate<N>,
    /// hopper weigh
    pub hopper_weigh: Option<Mass<N>>,
    /// time from drop to drop
    pub drop_time: Option<Duration<N>>,
    /// width of a tape
    pub tape_width: Option<Length<N>>,
    /// mass per area of the web, as it leaves the card
    pub web_mass_per_area: Option<MassPerArea<N>>,
    /// running time
    #[block = "Time"]
    pub time: Duration<N>,
    /// What the card keeps.
    #[part]
    pub held_up: Option<HeldUpResults<N>>,
    /// clean dry fibre in good slubbing
    #[block = "Where the lot goes, clean dry fibre"]
    pub fibre_out: Mass<N>,
    /// droppings under the card
    pub droppings_mass: Option<Mass<N>>,
    /// strips from the clothing
    pub strips_mass: Option<Mass<N>>,
    /// fly
    pub fly_mass: Option<Mass<N>>,
    /// fibre thrown out with burr
    pub burr_mass: Option<Mass<N>>,
    /// loss not split by place
    pub loss_mass: Option<Mass<N>>,
    /// edge ends that are not put back
    pub edges_mass: Mass<N>,
    /// share of the web in the edge ends
    #[block = "Of what goes through in one pass"]
    pub edge_share: Fraction<N>,
    /// put back on the feed, of what goes through
    pub returned_share: Fraction<N>,
    /// not good slubbing, of what goes through
    pub pass_loss: ShareLost<N>,
    /// lost for good, of the lot, besides what the card keeps
    pub lost_share: ShareLost<N>,
    /// clean dry fibre through the card, what is put back counted again
    pub fibre_through: Mass<N>,
}

/// What follows from the fibre that the card keeps.
#[derive(Clone, Debug, Results)]
pub struct HeldUpResults<N> {
    /// wait after the start or a change of feed before weighing
    pub settling_time: Duration<N>,
    /// slubbing under its count while the card fills, to put back
    pub off_count_mass: Mass<N>,
    /// in the card when the feed stops: light slubbing and strips
    pub left_at_stop: Mass<N>,
}

/// A lot on the card: what to set and weigh, how long it takes, where each part of it goes.
///
/// `droppings_share`, `strips_share`, `fly_share` and `burr_share` are of what goes through; `loss` is what
/// is not split so. Edge ends are put back on the feed, or as much of them as `put_back_share` says. With
/// regain and fat of the feed and of the slubbing the balance reads what is weighed; without them all is
/// clean dry fibre.
#[calculation(
    title = "A lot on the card",
    example = ">>> import hankwise as hw
>>> card = hw.mill.card(fibre_mass=\"36 kg\", slubbing_count=\"200 tex\", ends=120, edge_ends=6,
...                     delivery_speed=\"12 m/min\", droppings_share=\"2 %\", strips_share=\"1.5 %\",
...                     fly_share=\"0.5 %\", held_up=\"0.60 kg\", drop_rate=\"2 drops/min\",
...                     web_width=\"1.5 m\", regain_before=\"22 %\", fat_before=\"5 %\",
...                     regain_after=\"16 %\", fat_after=\"5 %\")
>>> card[\"hopper_weigh\"], card[\"time\"], card[\"fibre_out\"]
(<mass: 0.1653 kg>, <time: 2.415 h>, <mass: 33.89 kg>)",
    cautions = ["machines", "dust"],
    check = check
)]
pub fn card<N: Number>(given: &CardInputs<N>) -> CardResults<N> {
    let CardFeed { ends, delivery_speed, drop_rate } = given.machine.feed;
    let HoldUp { held_up } = given.machine.hold_up;
    let CardWeb { edge_ends, web_width } = given.web;
    let (lot, count) = (given.fibre_mass, given.slubbing_count);
    let pass = pass(given);
    let none = OnFibre::base(N::constant(0.0));
    let fed = fibre::state_ratio(given.regain_before, given.fat_before, none);
    let made = fibre::state_ratio(given.regain_after, given.fat_after, none);
    let slubbing_dry_count = LinearDensity::from(count.v() / made.v());
    let fibre_output = mill::card_output(ends, delivery_speed, slubbing_dry_count);
    let feed_rate = mill::feed_rate(fibre_output, pass.loss, fed);
    let all_ends = Count::from(ends.v() + edge_ends.v());
    let fresh = MassRate::from(feed_rate.v() / fed.v() * (1.0 - pass.returned.v()));
    let part = |share: ShareLost<N>| Mass::from(pass.through.v() * share.v());
    let CardWaste { droppings_share, strips_share, fly_share, burr_share, loss } = given.waste;
    let kept = held_up.unwrap_or(Mass::base(N::constant(0.0)));
    CardResults {
        slubbing_dry_count,
        fibre_output,
        feed_rate,
        output_per_end: mill::card_output(Count::base(N::constant(1.0)), delivery_speed, count),
        hopper_weigh: drop_rate.map(|drops| mill::hopper_weigh(feed_rate, drops)),
        drop_time: drop_rate.map(|drops| Duration::from(1.0 / (drops.v() * 60.0))),
        tape_width: web_width.map(|width| mill::tape_pitch(width, all_ends)),
        web_mass_per_area: web_width.map(|width| mill::web_mass_per_area(count, all_ends, width)),
        time: mill::time_for_mass(lot, fresh),
        held_up: held_up.map(|held_up| HeldUpResults {
            settling_time: mill::settling_time(held_up, fibre_output, given.within),
            off_count_mass: mill::off_count_mass(held_up, given.within),
            left_at_stop: mill::left_at_stop(held_up, given.within),
        }),
        fibre_out: mill::mass_after_loss(lot, pass.lost, kept),
        droppings_mass: droppings_share.map(part),
        strips_mass: strips_share.map(part),
        fly_mass: fly_share.map(part),
        burr_mass: burr_share.map(part),
        loss_mass: loss.map(part),
        edges_mass: part(pass.thrown.v().into()),
        edge_share: pass.edges,
        returned_share: pass.returned,
        pass_loss: pass.loss,
        lost_share: pass.lost,
        fibre_through: pass.through,
    }
}

/// What goes through the card in one pass, as shares of it.
struct Pass<N> {
    /// The edge ends, of the web.
    edges: Fraction<N>,
    /// Not good slubbing.
    loss: ShareLost<N>,
    /// Put back on the feed.
    returned: Fraction<N>,
    /// Edge ends that are not.
    thrown: Fraction<N>,
    /// Lost for good, of the lot.
    lost: ShareLost<N>,
    /// What goes through, what is put back counted again.
    through: Mass<N>,
}

/// Shares of a pass: waste by place, edges that are put back, edges that are not.
fn pass<N: Number>(given: &CardInputs<N>) -> Pass<N> {
    let waste = waste(&given.waste);
    let put_back = given.put_back_share;
    let edges = mill::edge_share(given.machine.feed.ends, given.web.edge_ends);
    let of_pass = (1.0 - waste.v()) * edges.v();
    let returned = Fraction::from(of_pass * put_back.v());
    let thrown = Fraction::from(of_pass * (1.0 - put_back.v()));
    Pass {
        edges,
        loss: mill::pass_loss(waste, edges),
        returned,
        thrown,
        lost: mill::loss_with_return(ShareLost::from(waste.v() + thrown.v()), returned),
        through: Mass::from(given.fibre_mass.v() / (1.0 - returned.v())),
    }
}

/// The waste of all places together, on what goes through.
fn waste<N: Number>(waste: &CardWaste<N>) -> ShareLost<N> {
    let CardWaste { droppings_share, strips_share, fly_share, burr_share, loss } = *waste;
    let places = [droppings_share, strips_share, fly_share, burr_share, loss];
    let all = places.into_iter().flatten().map(ShareLost::v).reduce(|sum, share| sum + share);
    ShareLost::from(all.unwrap_or(V::constant(0.0)))
}

fn check(given: &CardInputs<f64>, found: &CardResults<f64>, check: &mut Check<'_>) -> Result<()> {
    let all = waste(&given.waste);
    if all.value() > 1.0 {
        refuse!(
            check,
            given.waste.droppings_share,
            "droppings, strips, fly, burr and loss together are {} of what goes through; write less",
            check.say(all)
        );
    }
    if given.machine.hold_up.held_up.is_none() {
        check.idle(&["within"], "held_up");
    }
    let (lot, kept) = (given.fibre_mass, given.machine.hold_up.held_up.unwrap_or(Mass::base(0.0)));
    if found.fibre_out.value() <= 0.0 {
        let least = mill::mass_before_loss(Mass::base(0.0), found.lost_share, kept);
        refuse!(
            check,
            given.fibre_mass,
            "{} is no more than the card keeps and loses, {}; make up a larger lot, or run it with another",
            check.say(lot),
            check.say(least)
        );
    }
    check.note(
        "Where the lot goes, clean dry fibre",
        format!(
            "kept in the card: {}; together the lot, {}; what is put back last stays for the next lot",
            check.say(kept),
            check.say(lot)
        ),
    );
    Ok(())
}
