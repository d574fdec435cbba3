//! What all machines that make yarn have in common: the lot with its loss, doffs and packages.

use crate::calculation::{Check, Inputs, Results};
use crate::error::Result;
use crate::number::Number;
use crate::quantity::print::figure;
use crate::quantity::{Count, Duration, Length, LinearDensity, Mass, MassRate, ShareLost};
use crate::{mill, yarn};

/// A lot on a machine.
#[derive(Clone, Debug, Inputs)]
pub struct Lot<N> {
    /// good yarn to make
    #[q("m_y", 0.1..=10_000.0)]
    pub yarn_mass: Mass<N>,
    /// fibre lost as waste, on what is fed
    #[q("w", 0.0..=0.06, memory, zero)]
    pub loss: Option<ShareLost<N>>,
}

/// What a lot takes.
#[derive(Clone, Debug, Results)]
pub struct LotResults<N> {
    /// to feed, waste included
    #[block = "The lot"]
    pub mass_in: Option<Mass<N>>,
    /// waste of it
    pub mass_lost: Option<Mass<N>>,
    /// yarn made
    pub yarn_length: Length<N>,
    /// time of the lot, stops included
    pub time: Duration<N>,
}

/// What a lot takes: feed, waste, length and hours.
pub(super) fn lot<N: Number>(
    lot: &Lot<N>,
    output: MassRate<N>,
    count: LinearDensity<N>,
) -> LotResults<N> {
    let Fed { mass_in, mass_lost } = fed(lot.yarn_mass, lot.loss);
    LotResults {
        mass_in,
        mass_lost,
        yarn_length: yarn::length_of_mass(lot.yarn_mass, count),
        time: mill::time_for_mass(lot.yarn_mass, output),
    }
}

/// Refuses a lot of which nothing is left.
pub(super) fn check_lot(lot: Option<&Lot<f64>>, check: &Check<'_>) -> Result<()> {
    check_loss(lot.and_then(|lot| lot.loss), check)
}

/// Refuses a loss of the whole.
pub(super) fn check_loss(loss: Option<ShareLost<f64>>, check: &Check<'_>) -> Result<()> {
    if loss.is_some_and(|loss| loss.value() >= 1.0) {
        return Err(check.refuse("loss", "all of it is lost, so nothing is made; write less"));
    }
    Ok(())
}

/// What has to be fed, and what of it is lost; none where no loss is known.
pub(super) struct Fed<N> {
    pub(super) mass_in: Option<Mass<N>>,
    pub(super) mass_lost: Option<Mass<N>>,
}

pub(super) fn fed<N: Number>(mass: Mass<N>, loss: Option<ShareLost<N>>) -> Fed<N> {
    let nothing = Mass::base(N::constant(0.0));
    let mass_in = loss.map(|loss| mill::mass_before_loss(mass, loss, nothing));
    let mass_lost = mass_in.map(|mass_in| Mass::from(mass_in.v() - mass.v()));
    Fed { mass_in, mass_lost }
}

/// How it is known what a full package holds.
#[derive(Clone, Debug, Inputs)]
pub enum PackageSize<N> {
    /// yarn on a full package, without its tube
    #[q("g", 0.02..=10.0)]
    PackageMass(Mass<N>),
    /// length of yarn on a full package
    #[q("l", 100.0..=100_000.0)]
    PackageLength(Length<N>),
}

/// Yarn on a full package.
pub(super) fn package_mass<N: Number>(size: &PackageSize<N>, count: LinearDensity<N>) -> Mass<N> {
    match size {
        PackageSize::PackageMass(mass) => *mass,
        PackageSize::PackageLength(length) => yarn::mass_of_length(count, *length),
    }
}

/// Doffs and packages of a lot on spindles that work in step.
#[derive(Clone, Debug, Results)]
pub struct Packages<N> {
    /// doffs, the last perhaps not full
    pub doffs: Count<N>,
    /// full packages, of whole doffs
    pub packages: Count<N>,
    /// yarn of the last doff, on packages that are not full
    pub left_over: Mass<N>,
}

/// Doffs and packages of spindles that work in step, for a package of a mass.
pub(super) fn packages<N: Number>(
    yarn_mass: Mass<N>,
    spindles: Count<N>,
    package_mass: Mass<N>,
) -> Packages<N> {
    let packages = mill::full_packages_in_step(yarn_mass, spindles, package_mass);
    Packages {
        doffs: mill::doffs(yarn_mass, spindles, package_mass),
        packages,
        left_over: left_over(yarn_mass, packages, package_mass),
    }
}

/// What full packages leave of the yarn.
pub(super) fn left_over<N: Number>(
    yarn_mass: Mass<N>,
    packages: Count<N>,
    package_mass: Mass<N>,
) -> Mass<N> {
    Mass::from((yarn_mass.v() - packages.v() * package_mass.v()).max(0.0))
}

/// Says of a lot on spindles in step what the last doff has, and warns where it fills no package.
pub(super) fn say_last_doff(
    lot: Option<&Lot<f64>>,
    spindles: Count<f64>,
    package_mass: Option<Mass<f64>>,
    package: &str,
    check: &mut Check<'_>,
) {
    let (Some(lot), Some(package_mass)) = (lot, package_mass) else { return };
    let packages = packages(lot.yarn_mass, spindles, package_mass);
    let (doffs, over) = (packages.doffs.value(), packages.left_over.value());
    if packages.packages.value() > 0.5 && doffs * spindles.value() > packages.packages.value() + 0.5
    {
        check.beside(
            "left_over",
            format!(
                "in doff {}: {} on each of {} spindles",
                figure(doffs),
                check.say(Mass::base(over / spindles.value())),
                figure(spindles.value())
            ),
        );
    }
    warn_unfilled(lot.yarn_mass, package_mass, spindles, "spindles", package, check);
}

/// Warns of a lot that does not fill a package at each of the spindles or drums that share it.
pub(super) fn warn_unfilled(
    yarn_mass: Mass<f64>,
    package_mass: Mass<f64>,
    machine: Count<f64>,
    places: &str,
    package: &str,
    check: &mut Check<'_>,
) {
    let full = mill::full_packages(yarn_mass, package_mass).value();
    let of = machine.value();
    if full + 0.5 > of {
        return;
    }
    check.warn(if full < 0.5 {
        format!("the lot does not fill one {package}: make smaller {package}s")
    } else {
        format!(
            "the lot does not fill a {package} on each of {} {places}: run it on {} of them, or make \
             smaller {package}s",
            figure(of),
            figure(full)
        )
    });
}
