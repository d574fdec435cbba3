//! Spinning on the mule.

use super::{Bench, Loss, Losses, Place, Sinks, Stage, Station, Values, beside, in_state, named};
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
    machine: MuleMachine<N>,
    /// draft wanted
    #[q("D_w", 1.2..=1.5, like = "1.40")]
    wanted_draft: Ratio<N>,
    #[group]
    delivery: DeliveryWheels<N>,
    #[group]
    twist: TwistWheels<N>,
}

/// Regain at which fibres in the section are counted: conditioned wool (common practice).
const CONDITIONED: f64 = 0.16;

/// The yarn as it is spun.
#[derive(Clone, Debug, Results)]
struct Spun<N> {
    /// single count
    count: LinearDensity<N>,
    /// slubbing count
    slubbing_count: LinearDensity<N>,
}

/// What comes of the twist, and how long the lot takes.
#[derive(Clone, Debug, Results)]
struct Running<N> {
    /// twist factor
    twist_factor: TwistFactor<N>,
    /// single, clean and conditioned: at 16 % regain, 1.16 of the dry count
    clean_count: LinearDensity<N>,
    /// fibres in the section
    fibres: Count<N>,
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
    const AFTER: &'static [&'static str] = &["card"];
    const SINKS: Sinks =
        Sinks { fibre: "slubbing, yarn waste", water: "air", fat: "air", vegetable: "fly" };

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }

    fn count_in<N: Number>(
        &self,
        station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        bench: &mut Bench<N>,
    ) -> LinearDensity<N> {
        let Mule { machine, wanted_draft, delivery: wheels, .. } =
            self.map(&mut station.values.read());
        let wound = mule::wound_length(&machine);
        let wound = named(Self::NAME, "wound_length", "yarn wound in a draw", wound);
        let delivery =
            mule::delivery(&machine, &Delivery::WantedDraft(wanted_draft), Some(&wheels));
        let (travel, per_tooth) = (machine.travel.value(), wheels.delivered_per_tooth.value());
        let gives = |teeth: f64| {
            let delivered = mill::delivered_length(Length::base(per_tooth), Count::base(teeth));
            format!(
                "draft {}",
                print::figure(mill::mule_draft(Length::base(travel), delivered).value())
            )
        };
        let wanted = delivery.wanted_delivery_wheel.map_or(f64::NAN, Count::value);
        let notes = [
            ("delivery_wheel", beside(&wheels.delivery_wheels, wanted, |z| z, gives)),
            ("draft", "travel over delivery".to_owned()),
        ];
        let expect = ["delivered_length", "draft"];
        bench.show(Self::NAME, ["delivery_wheel"], expect, notes, |s| delivery.show(s));
        bench.draw = Some((wound, delivery.delivered_length));
        let slubbing = mill::slubbing_for_single(out, wound, delivery.delivered_length);
        named(Self::NAME, "slubbing_dry", "slubbing wanted, on clean dry fibre", slubbing)
    }

    fn check(&self, values: &Values<'_, f64>, check: &mut Check<'_>) -> Result<()> {
        let Mule { machine, wanted_draft, delivery: wheels, .. } = self.map(&mut values.read());
        let delivery =
            mule::delivery(&machine, &Delivery::WantedDraft(wanted_draft), Some(&wheels));
        mule::check_machine(&machine, Some(&delivery), check)
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let values = station.values;
        let Some((wound, _)) = bench.draw else { return };
        let Mule { machine, twist: wheels, .. } = self.map(&mut values.read());
        let dry = named(Self::NAME, "single_dry", "single, on clean dry fibre", station.count_out);
        let state = station.state_out;
        let single = in_state(dry, state);
        let spun = Spun { count: single, slubbing_count: in_state(station.count_in, state) };
        let notes = [
            ("count", "as spun, in oil".to_owned()),
            ("slubbing_count", "at the regain of the spinning room".to_owned()),
        ];
        bench.show(Self::NAME, [], ["count", "slubbing_count"], notes, |s| spun.show(s));

        let factor = TwistFactor::base(values.at(*station.yarn.twist_factor.inner()));
        let wanted = yarn::twist_for_factor(factor, single);
        let wanted = named(Self::NAME, "wanted_twist", "twist for the factor wanted", wanted);
        let twist = mule::twist(&machine, wound, wanted, Some(&wheels));
        let plain = machine.map(&mut |number| number.value());
        let per_tooth = wheels.turns_per_tooth.value();
        let gives = |teeth: f64| {
            let turns = Count::base(teeth * per_tooth);
            let wound = Length::base(wound.value());
            bench.say.figure(
                mill::mule_twist(turns, plain.slip, plain.coiling, wound).value(),
                Kind::Twist,
            )
        };
        let wanted_wheel = twist.wanted_twist_wheel.map_or(f64::NAN, Count::value);
        let notes = [
            ("twist_wheel", beside(&wheels.twist_wheels, wanted_wheel, |z| z, gives)),
            ("twist", format!("wanted {}", bench.say.figure(wanted.value(), Kind::Twist))),
        ];
        bench.show(Self::NAME, ["twist_wheel", "twist"], [], notes, |s| twist.show(s));
        bench.single_twist = Some(twist.twist);

        let lot = station.lot.map(&mut values.read());
        let clean_count = LinearDensity::from(dry.v() * (1.0 + CONDITIONED));
        let fibre_count = fibre::wool_fibre_count(lot.diameter);
        let yarn_length = yarn::length_of_mass(station.after.fibre, dry);
        let output =
            mill::mule_output(machine.spindles, wound, machine.cycle, single, machine.efficiency);
        let mass = fibre::mass_in_state(station.after.fibre, state);
        let mass = named(Self::NAME, "mass", "singles as spun", mass);
        let running = Running {
            twist_factor: yarn::twist_factor(twist.twist, single),
            clean_count,
            fibres: fibre::fibres_in_section(clean_count, fibre_count, lot.variation),
            yarn_length,
            draws: mill::draws(yarn_length, machine.spindles, wound),
            output,
            time: mill::time_for_mass(mass, output),
        };
        let notes = [
            ("twist_factor", "on the count as spun".to_owned()),
            ("fibres", "about 100 to 120 at least for woollen (from memory)".to_owned()),
            ("yarn_length", "all spindles together".to_owned()),
            ("output", "as spun, in oil".to_owned()),
        ];
        let expect = ["twist_factor", "fibres", "yarn_length", "draws", "output", "time"];
        bench.show(Self::NAME, [], expect, notes, |s| running.show(s));
    }
}
