//! Carding.

use super::{
    Bench, Draft, Kind, LOSS, Losses, PRACTICE, Question, Section, Sinks, Stage, Station, ask,
    in_state, named,
};
use crate::error::Result;
use crate::number::Number;
use crate::plan::given::Ask;
use crate::quantity::{Count, Fraction, Frequency, Length, MassRate, Speed, print};
use crate::{mill, yarn};

/// Cards the wool into slubbing.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Card {
    losses: Losses,
    ends: Ask,
    speed: Ask,
    drops: Ask,
    check_length: Ask,
}

const SINKS: Sinks =
    Sinks { fibre: "card waste", water: "air", fat: "card waste", vegetable: "card waste" };

impl Stage for Card {
    const NAME: &'static str = "card";
    const SUMMARY: &'static str =
        "Cards the wool into slubbing: delivery, hopper weight, check weights.";
    const MAKES: &'static str = "slubbing";
    const CAUTIONS: &'static [&'static str] = &["machines", "wheels", "dust"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let figure = |key, symbol, meaning, kind, usual, example| {
            ask(key, symbol, meaning, kind, usual, example)
        };
        let held_up = figure(
            "held_up",
            "h",
            "clean dry fibre that stays in the card",
            Kind::Mass,
            (0.0, 10.0, PRACTICE),
            "\"0.60 kg\"",
        );
        let ends =
            figure("ends", "N", "good ends", Kind::Count, (10.0, 150.0, "from memory"), "120");
        let speed = figure(
            "speed",
            "v",
            "delivery",
            Kind::Speed,
            (5.0, 30.0, "from memory"),
            "\"12 m/min\"",
        );
        let drops = figure(
            "drops",
            "r",
            "drops of the hopper",
            Kind::Frequency,
            (0.5, 6.0, PRACTICE),
            "\"2 drops/min\"",
        );
        let check = figure(
            "check_length",
            "L_c",
            "length of one end to weigh",
            Kind::Length,
            (5.0, 100.0, PRACTICE),
            "\"20 m\"",
        );
        let loss =
            Question { usual: (0.02, 0.1, "card yield 90 to 95 % in print, worsted"), ..LOSS };
        let losses = Losses::read(section, draft, &loss, &SINKS)?;
        let held_up = section.ask(draft, &held_up.or(0.0))?;
        Ok(Card {
            losses: losses.with_held_up(held_up),
            ends: section.ask(draft, &ends)?,
            speed: section.ask(draft, &speed)?,
            drops: section.ask(draft, &drops)?,
            check_length: section.ask(draft, &check.or(20.0))?,
        })
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.losses)
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let values = station.values;
        let (ends, speed): (Count<N>, Speed<N>) = (values.get(self.ends), values.get(self.speed));
        let dry =
            named(Self::NAME, "slubbing_dry", "slubbing, on clean dry fibre", station.count_out);
        let state = station.state_out;
        let note = "as it leaves the card, in oil";
        let slubbing = in_state(dry, state);
        let slubbing = bench.set(Self::NAME, "slubbing", "slubbing count", slubbing, note);
        let length: Length<N> = values.get(self.check_length);
        let one = Count::base(N::constant(1.0));
        let check = yarn::check_weight(slubbing, length, one);
        let note = format!(
            "{} of one end, as it leaves the card",
            bench.say.figure(length.value(), Kind::Length)
        );
        bench.set(Self::NAME, "check_weight", "the balance should read", check, note);

        let rate = mill::card_rate(ends, speed, dry);
        let rate = named(Self::NAME, "delivery", "clean dry fibre delivered", rate);
        let state = station.state_in;
        let feed = mill::feed_rate(rate, self.losses.share(values), state);
        let feed = bench.expect(
            Self::NAME,
            "feed",
            "feed, as weighed",
            feed,
            "with the oil and water on it",
        );
        let drops: Frequency<N> = values.get(self.drops);
        let weigh = mill::hopper_weigh(feed, drops);
        let note = format!("{} drops/min", print::figure(drops.value()));
        bench.set(Self::NAME, "hopper_weigh", "hopper weigh", weigh, note);
        let dry_feed = MassRate::from(feed.v() / state.v());
        let dry_feed = named(Self::NAME, "dry_feed", "clean dry fibre fed", dry_feed);
        let time = mill::time_for_mass(station.before.fibre, dry_feed);
        bench.expect(Self::NAME, "time", "running time", time, "");
        if let Some(held_up) = self.losses.held_up(values) {
            let within = Fraction::base(N::constant(0.05));
            let settle = mill::settling_time(held_up, rate, within);
            let note = "until 5 % of a change of feed is still to come";
            bench.expect(Self::NAME, "settle", "wait before weighing again", settle, note);
            let lost = mill::lot_loss(station.before.fibre, self.losses.share(values), held_up);
            let note = "with what the card keeps: the smaller the lot, the more";
            bench.expect(Self::NAME, "lot_loss", "lost by a lot of this size", lost, note);
        }
    }
}
