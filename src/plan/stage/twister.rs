//! Ply-winding and twisting.

use super::{
    Bench, LeavingState, Loss, Losses, Owns, Place, Sinks, Stage, Station, Values, beside,
    in_state, named,
};
use crate::calculation::{Inputs, Results};
use crate::mill::run::spindles::{
    SpindleTwistResults, SpindleTwistWheels, Spindles, twist_by_wheel,
};
use crate::mill::run::twister::{TwisterMachine, twisting_rate};
use crate::number::Number;
use crate::quantity::{
    Contraction, Count, Duration, Kind, Length, LinearDensity, Ratio, Speed, Twist,
};
use crate::yarn::tables::FOLDING_TWIST_RATIOS;
use crate::{mill, yarn};

/// Twists the singles together.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Twister<N> {
    #[group(loss(0.003..=0.03, memory))]
    losses: Losses<N>,
    /// contraction in folding, on the untwisted length
    #[q("k", -0.01..=0.08, or = 0.0, like = "2 %")]
    contraction: Contraction<N>,
    /// folding twist wanted, over that of the singles
    #[q("q_w", 0.5..=0.8, memory, like = "0.60")]
    wanted_twist_ratio: Option<Ratio<N>>,
    #[group]
    wheels: Option<SpindleTwistWheels<N>>,
    #[group]
    machine: Option<TwisterMachine<N>>,
}

/// The folded yarn, its twist and its wheel.
#[derive(Clone, Debug, Results)]
struct Folded<N> {
    /// folded count
    count: LinearDensity<N>,
    /// folding twist for the ratio wanted
    wanted_twist: Option<Twist<N>>,
    #[part]
    wheel: Option<SpindleTwistResults<N>>,
    /// folding over singles twist
    twist_ratio: Option<Ratio<N>>,
    /// folded yarn
    yarn_length: Length<N>,
    /// yarn delivered, all spindles
    output_speed: Option<Speed<N>>,
    /// time of the lot, stops included
    time: Option<Duration<N>>,
}

impl Stage for Twister<Place> {
    const NAME: &'static str = "twister";
    const SUMMARY: &'static str = "Twists the singles together: folding twist and its wheel.";
    const MAKES: &'static str = "folded yarn";
    const CAUTIONS: &'static [&'static str] = &["wheels"];
    const SINKS: Sinks = Sinks { fibre: "yarn waste", water: "air", fat: "air", vegetable: "fly" };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }

    fn count_in<N: Number>(
        &self,
        station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        _bench: &mut Bench<N>,
    ) -> Option<LinearDensity<N>> {
        let contraction = self.map(&mut station.values.read()).contraction;
        let yarn = station.yarn.as_ref()?;
        let ends = Count::base(station.values.at(*yarn.spec.ends.inner()));
        let single = yarn::single_for_fold(out, ends, contraction);
        Some(named(station.at, "single_dry", "single wanted, on clean dry fibre", single))
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let given = self.map(&mut station.values.read());
        let Some(yarn) = &station.yarn else { return };
        let dry = named(station.at, "count_dry", "folded yarn, on clean dry fibre", yarn.count_out);
        let single_twist = bench.single_twist;
        let wanted_twist = given
            .wanted_twist_ratio
            .zip(single_twist)
            .map(|(ratio, single)| Twist::from(ratio.v() * single.v()));
        let wheels = given.wheels.as_ref();
        let wheel = wanted_twist.map(|wanted| match wheels {
            Some(wheels) => twist_by_wheel(wanted, wheels),
            None => {
                SpindleTwistResults { wanted_twist_wheel: None, twist_wheel: None, twist: wanted }
            }
        });
        let twist = wheel.as_ref().map(|wheel| wheel.twist);
        let yarn_length = yarn::length_of_mass(station.after.fibre, dry);
        let output_speed = given.machine.as_ref().zip(twist).map(|(machine, twist)| {
            let Spindles { spindles, efficiency, .. } = machine.spindles;
            mill::twister_output_speed(spindles, twisting_rate(machine), twist, efficiency)
        });
        let wanted =
            wheel.as_ref().and_then(|w| w.wanted_twist_wheel).map_or(f64::NAN, Count::value);
        let owned = wheels.map_or_else(String::new, |wheels| {
            let constant = wheels.twist_constant.value();
            let gives = |teeth| bench.say.figure(twist_by(constant, teeth), Kind::Twist);
            beside(&wheels.twist_wheels, wanted, |z| z, gives)
        });
        let folded = Folded {
            count: in_state(dry, station.state_out),
            wanted_twist,
            wheel,
            twist_ratio: twist
                .zip(single_twist)
                .map(|(twist, single)| yarn::folding_twist_ratio(twist, single)),
            yarn_length,
            output_speed,
            time: output_speed.map(|speed| mill::time_for_length(yarn_length, speed)),
        };
        bench.folding_twist = twist;
        let notes = [
            ("count", "in oil, before scouring".to_owned()),
            ("twist_wheel", owned),
            ("twist", "opposite to the singles (Z on S)".to_owned()),
            ("twist_ratio", habit(station.values.at(*yarn.spec.ends.inner()).value())),
        ];
        let expect = ["count", "twist_ratio", "time"];
        bench.show(station.spot(), ["twist_wheel", "twist"], expect, notes, |s| folded.show(s));
    }

    fn owns(&self, values: &Values<'_, f64>) -> Vec<Owns> {
        self.map(&mut values.read()).wheels.iter().map(twist_wheels).collect()
    }
}

/// The twist that a twist wheel of driven spindles gives.
pub(super) fn twist_by(constant: f64, teeth: f64) -> f64 {
    yarn::twist_from_wheel(Twist::base(constant), Count::base(teeth)).value()
}

/// The twist wheels of driven spindles, and what each gives.
pub(super) fn twist_wheels(wheels: &SpindleTwistWheels<f64>) -> Owns {
    let constant = wheels.twist_constant.value();
    let twist = |teeth| twist_by(constant, teeth);
    Owns::wheels("twist wheel", &wheels.twist_wheels, ("twist", Kind::Twist), twist)
}

/// The habit of the trade for so many ends, where there is one.
fn habit(ends: f64) -> String {
    let fold = match ends {
        2.0 => "two-fold knitting",
        3.0 => "three-fold",
        _ => "",
    };
    let habit = FOLDING_TWIST_RATIOS.figures.iter().find(|figure| figure.of[0] == fold);
    let habit = habit.map_or_else(String::new, |habit| {
        let of = habit.of.join(", ");
        format!("{of}: {} ({}); ", habit.words(), habit.basis().words())
    });
    format!("{habit}judge by a washed loop hanging freely")
}
