//! Spinning on the mule.

use super::{
    Bench, LeavingState, Loss, Losses, Owns, Place, Sinks, Stage, Station, Values, beside,
    in_state, named,
};
use crate::calculation::{Check, Inputs, Results};
use crate::error::Result;
use crate::mill::run::mule::{self, Delivery, DeliveryWheels, MuleMachine, TwistWheels};
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Kind, Length, LinearDensity, MassRate, Ratio, TwistFactor, print,
};
use crate::{fibre, mill, yarn};

/// Spins the slubbing into singles.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Mule<N> {
    #[group(loss(0.01..=0.05, memory))]
    losses: Losses<N>,
    #[group]
    machine: Option<MuleMachine<N>>,
    /// draft wanted
    #[q("D_w", 1.2..=1.5, like = "1.40")]
    wanted_draft: Option<Ratio<N>>,
    #[group]
    delivery: Option<DeliveryWheels<N>>,
    #[group]
    twist: Option<TwistWheels<N>>,
}

/// Regain at which fibres in the section are counted: conditioned wool (common practice).
const CONDITIONED: f64 = 0.16;

/// The yarn as it is spun.
#[derive(Clone, Debug, Results)]
struct Spun<N> {
    /// single count
    count: LinearDensity<N>,
    /// slubbing count
    slubbing_count: Option<LinearDensity<N>>,
}

/// What is known of the single without a machine.
#[derive(Clone, Debug, Results)]
struct Fibres<N> {
    /// fibres in the section
    fibres: Option<Count<N>>,
}

/// What comes of the twist, and how long the lot takes.
#[derive(Clone, Debug, Results)]
struct Running<N> {
    /// twist factor
    twist_factor: Option<TwistFactor<N>>,
    /// single, clean and conditioned: at 16 % regain, 1.16 of the dry count
    clean_count: Option<LinearDensity<N>>,
    /// fibres in the section
    fibres: Option<Count<N>>,
    /// yarn to spin
    yarn_length: Length<N>,
    /// draws
    draws: Count<N>,
    /// output
    output: MassRate<N>,
    /// time of the lot, stops included
    time: Duration<N>,
}

impl Stage for Mule<Place> {
    const NAME: &'static str = "mule";
    const SUMMARY: &'static str = "Spins the slubbing into singles: draft, twist, wheels.";
    const MAKES: &'static str = "singles";
    const CAUTIONS: &'static [&'static str] = &["mule", "wheels"];
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
        let Mule { machine, wanted_draft, delivery: wheels, .. } =
            self.map(&mut station.values.read());
        let (machine, wanted_draft) = (machine?, wanted_draft?);
        let wound = mule::wound_length(&machine);
        let wound = named(station.at, "wound_length", "yarn wound in a draw", wound);
        let delivery =
            mule::delivery(&machine, &Delivery::WantedDraft(wanted_draft), wheels.as_ref());
        let plain = machine.map(&mut |number| number.value());
        let wanted = delivery.wanted_delivery_wheel.map_or(f64::NAN, Count::value);
        let owned = wheels.as_ref().map_or_else(String::new, |wheels| {
            let plain_wheels = wheels.map(&mut |number| number.value());
            let gives = |teeth: f64| {
                format!("draft {}", print::figure(draft_by(&plain, &plain_wheels, teeth)))
            };
            beside(&wheels.delivery_wheels, wanted, |z| z, gives)
        });
        let notes = [("delivery_wheel", owned), ("draft", "travel over delivery".to_owned())];
        let expect = ["delivered_length", "draft"];
        bench.show(station.spot(), ["delivery_wheel"], expect, notes, |s| delivery.show(s));
        bench.draw = Some((wound, delivery.delivered_length));
        let slubbing = mill::slubbing_for_single(out, wound, delivery.delivered_length);
        Some(named(station.at, "slubbing_dry", "slubbing wanted, on clean dry fibre", slubbing))
    }

    fn check(&self, values: &Values<'_, f64>, check: &mut Check<'_>) -> Result<()> {
        let Mule { machine, wanted_draft, delivery: wheels, .. } = self.map(&mut values.read());
        let Some(machine) = machine else { return Ok(()) };
        let delivery = wanted_draft
            .map(|draft| mule::delivery(&machine, &Delivery::WantedDraft(draft), wheels.as_ref()));
        mule::check_machine(&machine, delivery.as_ref(), check)
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let values = station.values;
        let Mule { machine, twist: wheels, .. } = self.map(&mut values.read());
        let Some(yarn) = &station.yarn else { return };
        let dry = named(station.at, "single_dry", "single, on clean dry fibre", yarn.count_out);
        let state = station.state_out;
        let single = in_state(dry, state);
        let spun = Spun {
            count: single,
            slubbing_count: yarn.count_in.map(|slubbing| in_state(slubbing, state)),
        };
        let notes = [
            ("count", "as spun, in oil".to_owned()),
            ("slubbing_count", "at the regain of the spinning room".to_owned()),
        ];
        bench.show(station.spot(), [], ["count", "slubbing_count"], notes, |s| spun.show(s));
        let section = in_section(station, dry);
        let Some(machine) = machine else {
            let fibres = Fibres { fibres: section.map(|section| section.1) };
            let notes = [("fibres", FIBRES.to_owned())];
            bench.show(station.spot(), [], ["fibres"], notes, |s| fibres.show(s));
            return;
        };
        let wound = bench.draw.map_or_else(|| mule::wound_length(&machine), |draw| draw.0);

        if let Some(factor) = &yarn.spec.twist_factor {
            let factor = TwistFactor::base(values.at(*factor.inner()));
            let wanted = yarn::twist_for_factor(factor, single);
            let wanted = named(station.at, "wanted_twist", "twist for the factor wanted", wanted);
            let twist = mule::twist(&machine, wound, wanted, wheels.as_ref());
            let plain = machine.map(&mut |number| number.value());
            let wanted_wheel = twist.wanted_twist_wheel.map_or(f64::NAN, Count::value);
            let owned = wheels.as_ref().map_or_else(String::new, |wheels| {
                let plain_wheels = wheels.map(&mut |number| number.value());
                let gives = |teeth: f64| {
                    bench.say.figure(twist_by(&plain, &plain_wheels, teeth), Kind::Twist)
                };
                beside(&wheels.twist_wheels, wanted_wheel, |z| z, gives)
            });
            let notes = [
                ("twist_wheel", owned),
                ("twist", format!("wanted {}", bench.say.figure(wanted.value(), Kind::Twist))),
            ];
            bench.show(station.spot(), ["twist_wheel", "twist"], [], notes, |s| twist.show(s));
            bench.single_twist = Some(twist.twist);
        }
        let yarn_length = yarn::length_of_mass(station.after.fibre, dry);
        let output =
            mill::mule_output(machine.spindles, wound, machine.cycle, single, machine.efficiency);
        let mass = fibre::mass_in_state(station.after.fibre, state);
        let mass = named(station.at, "mass", "singles as spun", mass);
        let running = Running {
            twist_factor: bench.single_twist.map(|twist| yarn::twist_factor(twist, single)),
            clean_count: section.map(|section| section.0),
            fibres: section.map(|section| section.1),
            yarn_length,
            draws: mill::draws(yarn_length, machine.spindles, wound),
            output,
            time: mill::time_for_mass(mass, output),
        };
        let notes = [
            ("twist_factor", "on the count as spun".to_owned()),
            ("fibres", FIBRES.to_owned()),
            ("yarn_length", "all spindles together".to_owned()),
            ("output", "as spun, in oil".to_owned()),
        ];
        let expect = ["twist_factor", "fibres", "yarn_length", "draws", "output", "time"];
        bench.show(station.spot(), [], expect, notes, |s| running.show(s));
    }

    fn owns(&self, values: &Values<'_, f64>) -> Vec<Owns> {
        let Mule { machine, delivery, twist, .. } = self.map(&mut values.read());
        let Some(machine) = machine else { return Vec::new() };
        let delivery = delivery.map(|wheels| {
            let draft = |teeth| draft_by(&machine, &wheels, teeth);
            Owns::wheels("delivery wheel", &wheels.delivery_wheels, ("draft", Kind::Ratio), draft)
        });
        let twist = twist.map(|wheels| {
            let twist = |teeth| twist_by(&machine, &wheels, teeth);
            Owns::wheels("twist wheel", &wheels.twist_wheels, ("twist", Kind::Twist), twist)
        });
        delivery.into_iter().chain(twist).collect()
    }
}

/// The draft that a delivery wheel gives.
fn draft_by(machine: &MuleMachine<f64>, wheels: &DeliveryWheels<f64>, teeth: f64) -> f64 {
    let delivered = mill::delivered_length(wheels.delivered_per_tooth, Count::base(teeth));
    mill::mule_draft(machine.travel, delivered).value()
}

/// The twist that a twist wheel gives.
fn twist_by(machine: &MuleMachine<f64>, wheels: &TwistWheels<f64>, teeth: f64) -> f64 {
    let turns = Count::base(teeth * wheels.turns_per_tooth.value());
    let wound = mule::wound_length(machine);
    mill::mule_twist(turns, machine.slip, machine.coiling, wound).value()
}

/// What is said beside the fibres in the section.
pub(super) const FIBRES: &str = "about 100 to 120 at least for woollen (from memory)";

/// The clean conditioned count of a single, and the fibres in its section, where the fibre is known.
pub(super) fn in_section<N: Number>(
    station: &Station<'_, '_, N>,
    dry: LinearDensity<N>,
) -> Option<(LinearDensity<N>, Count<N>)> {
    let (diameter, variation) = station.yarn.as_ref()?.fineness?;
    let clean_count = LinearDensity::from(dry.v() * (1.0 + CONDITIONED));
    let fibre_count = fibre::wool_fibre_count(diameter);
    Some((clean_count, fibre::fibres_in_section(clean_count, fibre_count, variation)))
}
