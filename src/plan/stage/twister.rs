//! Ply-winding and twisting.

use super::{
    Bench, Draft, Kind, LOSS, Losses, PRACTICE, Question, Section, Sinks, Stage, Station, ask,
    beside, in_state, named,
};
use crate::error::Result;
use crate::number::Number;
use crate::plan::given::{Ask, Owned};
use crate::quantity::{Count, LinearDensity, Ratio, Twist};
use crate::{mill, yarn};

/// Twists the singles together.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Twister {
    losses: Losses,
    contraction: Ask,
    ratio: Ask,
    constant: Ask,
    wheel: Owned,
    spindles: Ask,
    speed: Ask,
    efficiency: Ask,
}

const SINKS: Sinks = Sinks { fibre: "yarn waste", water: "air", fat: "air", vegetable: "fly" };

impl Stage for Twister {
    const NAME: &'static str = "twister";
    const SUMMARY: &'static str = "Twists the singles together: folding twist and its wheel.";
    const MAKES: &'static str = "folded yarn";
    const CAUTIONS: &'static [&'static str] = &["wheels"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let q = ask;
        let memory = "from memory";
        let contraction = q(
            "contraction",
            "c",
            "contraction in folding, on the untwisted length",
            Kind::Contraction,
            (-0.01, 0.08, PRACTICE),
            "\"2 %\"",
        );
        let ratio = q(
            "ratio",
            "q",
            "folding twist wanted, over that of the singles",
            Kind::Ratio,
            (0.5, 0.8, memory),
            "0.60",
        );
        let constant = q(
            "constant",
            "C",
            "twist constant: twist times teeth of the wheel",
            Kind::Twist,
            (500.0, 50_000.0, PRACTICE),
            "\"4320 turns/m\"",
        );
        let spindles = q("spindles", "k", "spindles", Kind::Count, (4.0, 400.0, PRACTICE), "40");
        let speed = q(
            "speed",
            "n",
            "spindle speed",
            Kind::Frequency,
            (800.0, 8000.0, PRACTICE),
            "\"2400 rpm\"",
        );
        let efficiency =
            q("efficiency", "η", "efficiency", Kind::Fraction, (0.6, 0.95, PRACTICE), "\"80 %\"");
        let loss = Question { usual: (0.003, 0.03, memory), ..LOSS };
        Ok(Twister {
            losses: Losses::read(section, draft, &loss, &SINKS)?,
            contraction: section.ask(draft, &contraction)?,
            ratio: section.ask(draft, &ratio)?,
            constant: section.ask(draft, &constant)?,
            wheel: section.owned(draft, "wheels", "wheel", Kind::Count, "[32, 35, 40]")?,
            spindles: section.ask(draft, &spindles)?,
            speed: section.ask(draft, &speed)?,
            efficiency: section.ask(draft, &efficiency.positive())?,
        })
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.losses)
    }

    fn count_in<N: Number>(
        &self,
        station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        _bench: &mut Bench<N>,
    ) -> LinearDensity<N> {
        let (ends, contraction): (Count<N>, _) =
            (station.values.get(station.yarn.ends), station.values.get(self.contraction));
        let single = yarn::single_for_fold(out, ends, contraction);
        named(Self::NAME, "single_dry", "single wanted, on clean dry fibre", single)
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let values = station.values;
        let dry =
            named(Self::NAME, "count_dry", "folded yarn, on clean dry fibre", station.count_out);
        let count = in_state(dry, station.state_out);
        bench.expect(Self::NAME, "count", "folded count", count, "in oil, before scouring");
        let Some(single_twist) = bench.single_twist else { return };
        let ratio: Ratio<N> = values.get(self.ratio);
        let wanted = Twist::from(ratio.v() * single_twist.v());
        let wanted =
            named(Self::NAME, "twist_wanted", "folding twist for the ratio wanted", wanted);
        let constant: Twist<N> = values.get(self.constant);
        let wheel_wanted = yarn::wheel_for_twist(constant, wanted);
        let wheel_wanted = named(Self::NAME, "wheel_wanted", "wheel for that twist", wheel_wanted);
        let wheel = values.wheel(&self.wheel, wheel_wanted);
        let gives = |z: f64| {
            let twist = yarn::twist_from_wheel(Twist::base(constant.value()), Count::base(z));
            bench.say.figure(twist.value(), Kind::Twist)
        };
        let note = beside(&self.wheel, wheel_wanted.value(), |z| z, gives);
        let wheel = bench.set(Self::NAME, "wheel", "twist wheel, teeth", wheel, note);
        let twist = yarn::twist_from_wheel(constant, wheel);
        let twist = bench.set(
            Self::NAME,
            "twist",
            "folding twist",
            twist,
            "against the twist of the singles",
        );
        bench.folding_twist = Some(twist);
        let ratio = yarn::folding_twist_ratio(twist, single_twist);
        bench.expect(
            Self::NAME,
            "ratio_set",
            "folding over singles twist",
            ratio,
            "0.5 to 0.7 is common for a balanced two-fold (from memory); judge a washed, freely hung loop",
        );
        let length = yarn::length_of_mass(station.after.fibre, dry);
        let length = named(Self::NAME, "length", "folded yarn", length);
        let output = mill::twister_output(
            values.get(self.spindles),
            values.get(self.speed),
            twist,
            values.get(self.efficiency),
        );
        let output = named(Self::NAME, "output", "yarn delivered, all spindles", output);
        bench.expect(Self::NAME, "time", "running time", mill::time_for_length(length, output), "");
    }
}
