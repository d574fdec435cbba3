//! Winding to cones, for the loom or for sale.

use super::{
    Bench, LeavingState, Loss, Losses, Place, Sinks, Stage, Station, Values, in_state, named,
};
use crate::calculation::{Inputs, Results};
use crate::mill::{LotOnMachine, PackageSize, WinderInputs, WinderLot, WinderMachine};
use crate::number::Number;
use crate::quantity::{Count, Duration, Length, LinearDensity, Mass, MassRate};
use crate::{fibre, mill, yarn};

/// Winds singles or folded yarn to cones.
#[derive(Clone, Debug, Inputs)]
pub(in crate::plan) struct Winder<N> {
    #[group(loss(0.002..=0.02, memory))]
    losses: Losses<N>,
    #[group]
    machine: Option<WinderMachine<N>>,
    /// yarn on a full cone, without its tube
    #[q("g", 0.2..=3.0, like = "1.2 kg")]
    package_mass: Option<Mass<N>>,
}

/// The cones, and how long the lot takes.
#[derive(Clone, Debug, Results)]
struct Coned<N> {
    /// count of the yarn on the cone
    count: LinearDensity<N>,
    /// length of the yarn on a full cone
    package_length: Option<Length<N>>,
    /// full cones
    packages: Option<Count<N>>,
    /// yarn left over, for no full cone
    left_over: Option<Mass<N>>,
    /// time of a cone
    package_time: Option<Duration<N>>,
    /// output, all drums
    output: MassRate<N>,
    /// time of the lot, stops included
    time: Option<Duration<N>>,
}

impl Stage for Winder<Place> {
    const NAME: &'static str = "winder";
    const SUMMARY: &'static str = "Winds the yarn to cones: full cones, their length, the hours.";
    const MAKES: &'static str = "yarn on cones";
    const CAUTIONS: &'static [&'static str] = &["wheels"];
    const SINKS: Sinks = Sinks { fibre: "yarn waste", water: "air", fat: "air", vegetable: "fly" };

    fn state(&self) -> Option<&LeavingState<Place>> {
        Some(&self.losses.state)
    }

    fn loss<N: Number>(&self, values: &Values<'_, N>) -> Option<Loss<N>> {
        Some(self.losses.map(&mut values.read()).into())
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let Winder { machine, package_mass, .. } = self.map(&mut station.values.read());
        let (Some(yarn), Some(machine)) = (&station.yarn, machine) else { return };
        let dry = named(station.at, "count_dry", "yarn, on clean dry fibre", yarn.count_out);
        let count = in_state(dry, station.state_out);
        let mass = fibre::mass_in_state(station.after.fibre, station.state_out);
        let yarn_mass = named(station.at, "mass", "yarn on the cones", mass);
        let wound = mill::winder(&WinderInputs {
            machine,
            count,
            lot: Some(WinderLot {
                lot: LotOnMachine { yarn_mass, loss: None },
                time_allowed: None,
            }),
            package: package_mass.map(PackageSize::PackageMass),
            bobbin_mass: None,
            hank_length: None,
            per_person: None,
        });
        let coned = Coned {
            count,
            package_length: package_mass.map(|mass| yarn::length_of_mass(mass, count)),
            packages: wound.packages.as_ref().map(|made| made.packages),
            left_over: wound.packages.as_ref().map(|made| made.left_over),
            package_time: wound.package_time,
            output: wound.output,
            time: wound.lot.map(|lot| lot.time),
        };
        let notes = [
            ("count", "as it leaves the winder".to_owned()),
            ("package_length", "where the winder stops by length".to_owned()),
            ("packages", "if one drum winds them all; each drum more may leave a rest".to_owned()),
        ];
        let expect = ["count", "packages", "left_over", "package_time", "output", "time"];
        bench.show(station.spot(), ["package_length"], expect, notes, |s| coned.show(s));
    }
}
