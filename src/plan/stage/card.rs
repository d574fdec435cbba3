//! Carding.

use super::{Bench, LeavingState, Loss, Losses, Place, Sinks, Stage, Station, Values, in_state};
use crate::calculation::{Inputs, Results};
use crate::mill::run::card::{CardFeed, HoldUp};
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Fraction, Kind, Length, LinearDensity, Mass, MassRate, ShareLost, print,
};
use crate::{fibre, mill, yarn};

/// Cards the wool into slubbing.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Card<N> {
    #[group(loss(0.02..=0.1, basis = "Carding page"))]
    losses: Losses<N>,
    #[group]
    hold_up: HoldUp<N>,
    #[group]
    feed: Option<CardFeed<N>>,
    /// length of one end to weigh
    #[q("L_c", 5.0..=100.0, or = 20.0, like = "20 m")]
    check_length: Length<N>,
}

/// What to set and weigh at the card, and how long the lot takes.
#[derive(Clone, Debug, Results)]
struct Carded<N> {
    /// slubbing, on clean dry fibre
    slubbing_dry: LinearDensity<N>,
    /// slubbing count
    slubbing_count: LinearDensity<N>,
    /// weight of one end
    check_weight: Mass<N>,
    /// clean dry fibre delivered
    fibre_output: MassRate<N>,
    /// feed, as weighed
    feed_rate: MassRate<N>,
    /// hopper weigh
    hopper_weigh: Option<Mass<N>>,
    /// clean dry fibre fed
    dry_feed: MassRate<N>,
    /// running time
    time: Duration<N>,
    /// wait after changing the feed before weighing
    settling_time: Option<Duration<N>>,
    /// card loss of this lot
    lot_loss: Option<ShareLost<N>>,
    /// slubbing that comes off before the count has settled
    off_count_mass: Option<Mass<N>>,
    /// share of the slubbing that is this lot's own wool
    own_share: Option<Fraction<N>>,
}

impl Card<Place> {
    /// Where the hold-up stands.
    pub(in crate::plan) fn held_up(&self) -> Option<Place> {
        self.hold_up.held_up.as_ref().map(|kept| *kept.inner())
    }
}

impl Stage for Card<Place> {
    const NAME: &'static str = "card";
    const SUMMARY: &'static str =
        "Cards the wool into slubbing: delivery, hopper weight, check weights.";
    const MAKES: &'static str = "slubbing";
    const CAUTIONS: &'static [&'static str] = &["machines", "wheels", "dust"];
    const SINKS: Sinks =
        Sinks { fibre: "card waste", water: "air", fat: "card waste", vegetable: "card waste" };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        let held_up = self.hold_up.held_up.as_ref();
        let losses: Loss<N> = self.losses.map(&mut values.read()).into();
        Some(Loss { held_up: held_up.map(|kept| Mass::base(values.at(*kept.inner()))), ..losses })
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let given = self.map(&mut station.values.read());
        let (Some(yarn), Some(feed)) = (&station.yarn, &given.feed) else { return };
        let (loss, lot) = (given.losses.loss, station.before.fibre);
        let dry = yarn.count_out;
        let slubbing_count = in_state(dry, station.state_out);
        let one = Count::base(N::constant(1.0));
        let fibre_output = mill::card_output(feed.ends, feed.delivery_speed, dry);
        let feed_rate = mill::feed_rate(fibre_output, loss, station.state_in);
        let dry_feed = MassRate::from(feed_rate.v() / station.state_in.v());
        let held_up = given.hold_up.held_up.filter(|held_up| held_up.value() > 0.0);
        let kept = held_up.filter(|_| !station.uncleared);
        let within = Fraction::base(N::constant(0.05));
        let carded = Carded {
            slubbing_dry: dry,
            slubbing_count,
            check_weight: yarn::check_weight(slubbing_count, given.check_length, one),
            fibre_output,
            feed_rate,
            hopper_weigh: feed.drop_rate.map(|rate| mill::hopper_weigh(feed_rate, rate)),
            dry_feed,
            time: mill::time_for_mass(lot, dry_feed),
            settling_time: held_up
                .map(|held_up| mill::settling_time(held_up, fibre_output, within)),
            lot_loss: kept.map(|held_up| mill::lot_loss(lot, loss, held_up)),
            off_count_mass: held_up.map(|held_up| {
                fibre::mass_in_state(mill::off_count_mass(held_up, within), station.state_out)
            }),
            own_share: held_up.filter(|_| station.uncleared).map(|held_up| {
                let through = Mass::from(lot.v() * (1.0 - loss.v()));
                Fraction::from(1.0 - mill::mean_carried_share(through, held_up).v())
            }),
        };
        let drops = feed
            .drop_rate
            .map_or_else(String::new, |rate| format!("{} drops/min", print::figure(rate.value())));
        let notes = [
            ("slubbing_count", "as it leaves the card, in oil".to_owned()),
            (
                "check_weight",
                format!(
                    "{} of one end, as it leaves the card",
                    bench.say.figure(given.check_length.value(), Kind::Length)
                ),
            ),
            ("feed_rate", "with the oil and water on it".to_owned()),
            ("hopper_weigh", drops),
            ("settling_time", "95 % of the change has then come through".to_owned()),
            ("lot_loss", "includes fibre left in the card; smaller lots lose more".to_owned()),
            (
                "off_count_mass",
                "within 5 % of the count; in full if the card began empty".to_owned(),
            ),
            ("own_share", "the rest is wool of the lot before; well mixed".to_owned()),
        ];
        let set = ["slubbing_count", "check_weight", "hopper_weigh"];
        let expect =
            ["feed_rate", "time", "settling_time", "lot_loss", "off_count_mass", "own_share"];
        bench.show(station.spot(), set, expect, notes, |s| carded.show(s));
    }
}
