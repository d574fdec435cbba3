//! Spinning on a ring frame.

use super::mule::{FIBRES, in_section};
use super::twister::{twist_by, twist_wheels};
use super::{
    Bench, LeavingState, Loss, Losses, Owns, Place, Sinks, Stage, Station, Values, beside,
    in_state, named,
};
use crate::calculation::{Inputs, Owned, Results};
use crate::mill::run::spindles::{
    SpindleTwistResults, SpindleTwistWheels, Spindles, twist_by_wheel,
};
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Kind, Length, LinearDensity, MassRate, Ratio, ShareLost, Twist, TwistFactor,
    print,
};
use crate::{fibre, mill, yarn};

/// Spins the slubbing into singles.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Ring<N> {
    #[group(loss(0.01..=0.06, memory))]
    losses: Losses<N>,
    #[group]
    machine: Option<Spindles<N>>,
    /// draft wanted
    #[q("D_w", 1.1..=2.0, memory, like = "1.30")]
    wanted_draft: Option<Ratio<N>>,
    #[group]
    draft: Option<DraftWheels<N>>,
    #[group]
    twist: Option<SpindleTwistWheels<N>>,
}

/// The wheels that settle the draft: more teeth give less.
#[derive(Clone, Debug, Inputs)]
struct DraftWheels<N> {
    /// draft constant: draft times teeth of the draft wheel
    #[q("C_d", 10.0..=2000.0, like = "52")]
    draft_constant: Ratio<N>,
    /// draft wheels owned, teeth
    #[parts("draft_wheel", Count, "[36, 38, 40]")]
    draft_wheels: Owned,
}

/// The draft and its wheel.
#[derive(Clone, Debug, Results)]
struct Drafted<N> {
    /// draft wheel for the draft wanted, teeth
    wanted_draft_wheel: Option<Count<N>>,
    /// draft wheel, teeth
    draft_wheel: Option<Count<N>>,
    /// draft
    draft: Ratio<N>,
}

/// The yarn as it is spun, its twist, and how long the lot takes.
#[derive(Clone, Debug, Results)]
struct Spun<N> {
    /// single count
    count: LinearDensity<N>,
    /// slubbing count
    slubbing_count: Option<LinearDensity<N>>,
    /// twist for the factor wanted
    wanted_twist: Option<Twist<N>>,
    #[part]
    wheel: Option<SpindleTwistResults<N>>,
    /// twist factor
    twist_factor: Option<TwistFactor<N>>,
    /// fibres in the section
    fibres: Option<Count<N>>,
    /// yarn to spin
    yarn_length: Length<N>,
    /// output
    output: Option<MassRate<N>>,
    /// time of the lot, stops included
    time: Option<Duration<N>>,
}

impl Stage for Ring<Place> {
    const NAME: &'static str = "ring";
    const SUMMARY: &'static str =
        "Spins the slubbing into singles on a ring frame: draft, twist, wheels.";
    const MAKES: &'static str = "singles";
    const CAUTIONS: &'static [&'static str] = &["machines", "wheels", "dust"];
    const SINKS: Sinks =
        Sinks { fibre: "slubbing, yarn waste", water: "air", fat: "air", vegetable: "fly" };

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
        bench: &mut Bench<N>,
    ) -> Option<LinearDensity<N>> {
        let Ring { wanted_draft, draft: wheels, .. } = self.map(&mut station.values.read());
        let wanted_draft = wanted_draft?;
        let drafted = match &wheels {
            None => Drafted { wanted_draft_wheel: None, draft_wheel: None, draft: wanted_draft },
            Some(wheels) => {
                let constant = wheels.draft_constant;
                let wanted = mill::wheel_for_draft(constant, wanted_draft);
                let wheel = wheels.draft_wheels.choose(wanted);
                let draft = mill::draft_from_wheel(constant, wheel);
                Drafted { wanted_draft_wheel: Some(wanted), draft_wheel: Some(wheel), draft }
            }
        };
        let wanted = drafted.wanted_draft_wheel.map_or(f64::NAN, Count::value);
        let owned = wheels.as_ref().map_or_else(String::new, |wheels| {
            let constant = wheels.draft_constant.value();
            let gives = |teeth: f64| format!("draft {}", print::figure(draft_by(constant, teeth)));
            beside(&wheels.draft_wheels, wanted, |z| z, gives)
        });
        let notes = [("draft_wheel", owned)];
        bench.show(station.spot(), ["draft_wheel"], ["draft"], notes, |s| drafted.show(s));
        let one = Count::base(N::constant(1.0));
        let no_loss = ShareLost::base(N::constant(0.0));
        let slubbing = mill::fed_count(out, one, no_loss, drafted.draft);
        Some(named(station.at, "slubbing_dry", "slubbing wanted, on clean dry fibre", slubbing))
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let values = station.values;
        let Ring { machine, twist: wheels, .. } = self.map(&mut values.read());
        let Some(at) = &station.yarn else { return };
        let dry = named(station.at, "single_dry", "single, on clean dry fibre", at.count_out);
        let state = station.state_out;
        let count = in_state(dry, state);
        let wanted_twist = at.spec.twist_factor.as_ref().map(|factor| {
            yarn::twist_for_factor(TwistFactor::base(values.at(*factor.inner())), count)
        });
        let wheel = wanted_twist.map(|wanted| match &wheels {
            Some(wheels) => twist_by_wheel(wanted, wheels),
            None => {
                SpindleTwistResults { wanted_twist_wheel: None, twist_wheel: None, twist: wanted }
            }
        });
        let twist = wheel.as_ref().map(|wheel| wheel.twist);
        bench.single_twist = twist;
        let section = in_section(station, dry);
        let output = machine.as_ref().zip(twist).map(|(frame, twist)| {
            let Spindles { spindles, spindle_speed, efficiency } = *frame;
            mill::spindle_frame_output(spindles, spindle_speed, twist, count, efficiency)
        });
        let mass = fibre::mass_in_state(station.after.fibre, state);
        let mass = named(station.at, "mass", "singles as spun", mass);
        let wanted =
            wheel.as_ref().and_then(|w| w.wanted_twist_wheel).map_or(f64::NAN, Count::value);
        let owned = wheels.as_ref().map_or_else(String::new, |wheels| {
            let constant = wheels.twist_constant.value();
            let gives = |teeth| bench.say.figure(twist_by(constant, teeth), Kind::Twist);
            beside(&wheels.twist_wheels, wanted, |z| z, gives)
        });
        let spun = Spun {
            count,
            slubbing_count: at.count_in.map(|slubbing| in_state(slubbing, state)),
            wanted_twist,
            wheel,
            twist_factor: twist.map(|twist| yarn::twist_factor(twist, count)),
            fibres: section.map(|section| section.1),
            yarn_length: yarn::length_of_mass(station.after.fibre, dry),
            output,
            time: output.map(|output| mill::time_for_mass(mass, output)),
        };
        let notes = [
            ("count", "as spun, in oil".to_owned()),
            ("twist_wheel", owned),
            ("fibres", FIBRES.to_owned()),
            ("output", "as spun, in oil".to_owned()),
        ];
        let expect =
            ["count", "slubbing_count", "twist_factor", "fibres", "yarn_length", "output", "time"];
        bench.show(station.spot(), ["twist_wheel", "twist"], expect, notes, |s| spun.show(s));
    }

    fn owns(&self, values: &Values<'_, f64>) -> Vec<Owns> {
        let Ring { draft, twist, .. } = self.map(&mut values.read());
        let draft = draft.map(|wheels| {
            let constant = wheels.draft_constant.value();
            let draft = |teeth| draft_by(constant, teeth);
            Owns::wheels("draft wheel", &wheels.draft_wheels, ("draft", Kind::Ratio), draft)
        });
        draft.into_iter().chain(twist.as_ref().map(twist_wheels)).collect()
    }
}

/// The draft that a draft wheel gives.
fn draft_by(constant: f64, teeth: f64) -> f64 {
    mill::draft_from_wheel(Ratio::base(constant), Count::base(teeth)).value()
}
