//! A cloth between two processes, and the step from one to the next: over any number.

use crate::cloth;
use crate::number::Number;
use crate::quantity::{
    CoverFactor, Crimp, Length, LinearDensity, Mass, MassLoss, MassPerArea, Sett, Shrinkage,
};

/// What is known of a cloth at one time.
#[derive(Clone, Copy, Debug)]
pub(super) struct State<N> {
    pub(super) width: Option<Length<N>>,
    pub(super) length: Option<Length<N>>,
    pub(super) ends: Option<Sett<N>>,
    pub(super) picks: Option<Sett<N>>,
    pub(super) warp: Option<LinearDensity<N>>,
    pub(super) weft: Option<LinearDensity<N>>,
    pub(super) warp_crimp: Option<Crimp<N>>,
    pub(super) weft_crimp: Option<Crimp<N>>,
    pub(super) area: Option<MassPerArea<N>>,
    pub(super) mass: Option<Mass<N>>,
}

/// What a process does; what it is silent on stays as it was.
#[derive(Clone, Copy, Debug)]
pub(super) struct Step<N> {
    pub(super) width: Option<Shrinkage<N>>,
    pub(super) length: Option<Shrinkage<N>>,
    pub(super) loss: Option<MassLoss<N>>,
    /// Of the yarn itself; else it shortens with the cloth and its crimp stays.
    pub(super) warp_yarn: Option<Shrinkage<N>>,
    pub(super) weft_yarn: Option<Shrinkage<N>>,
}

/// Mass per area from that at the other end, loss of mass, shrinkage in width and in length.
type Area<N> = fn(MassPerArea<N>, MassLoss<N>, Shrinkage<N>, Shrinkage<N>) -> MassPerArea<N>;

/// The formulas of one direction in time.
struct Way<N> {
    size: fn(Length<N>, Shrinkage<N>) -> Length<N>,
    sett: fn(Sett<N>, Shrinkage<N>) -> Sett<N>,
    count: fn(LinearDensity<N>, MassLoss<N>, Shrinkage<N>) -> LinearDensity<N>,
    crimp: fn(Crimp<N>, Shrinkage<N>, Shrinkage<N>) -> Crimp<N>,
    area: Area<N>,
    mass: fn(Mass<N>, MassLoss<N>) -> Mass<N>,
}

impl<N: Number> State<N> {
    /// A cloth of which nothing is known.
    pub(super) const UNKNOWN: State<N> = State {
        width: None,
        length: None,
        ends: None,
        picks: None,
        warp: None,
        weft: None,
        warp_crimp: None,
        weft_crimp: None,
        area: None,
        mass: None,
    };

    /// The cloth after a process.
    pub(super) fn after(&self, step: &Step<N>) -> State<N> {
        self.by(
            step,
            &Way {
                size: cloth::size_after_shrinkage,
                sett: cloth::sett_after_shrinkage,
                count: cloth::count_after_finishing,
                crimp: cloth::crimp_after_finishing,
                area: cloth::finished_mass_per_area,
                mass: cloth::mass_after_finishing,
            },
        )
    }

    /// The cloth before a process.
    pub(super) fn before(&self, step: &Step<N>) -> State<N> {
        self.by(
            step,
            &Way {
                size: cloth::size_before_shrinkage,
                sett: cloth::sett_before_shrinkage,
                count: cloth::count_before_finishing,
                crimp: cloth::crimp_before_finishing,
                area: cloth::off_loom_mass_per_area,
                mass: cloth::mass_before_finishing,
            },
        )
    }

    fn by(&self, step: &Step<N>, way: &Way<N>) -> State<N> {
        let none = Shrinkage::base(N::constant(0.0));
        let (width, length) = (step.width.unwrap_or(none), step.length.unwrap_or(none));
        let loss = step.loss.unwrap_or(MassLoss::base(N::constant(0.0)));
        let count = |count: LinearDensity<N>, yarn: Option<Shrinkage<N>>| {
            if yarn.is_none() && step.loss.is_none() {
                return count;
            }
            (way.count)(count, loss, yarn.unwrap_or(none))
        };
        let silent = step.width.is_none() && step.length.is_none() && step.loss.is_none();
        State {
            width: both(self.width, step.width, way.size),
            length: both(self.length, step.length, way.size),
            ends: both(self.ends, step.width, way.sett),
            picks: both(self.picks, step.length, way.sett),
            warp: self.warp.map(|warp| count(warp, step.warp_yarn.or(step.length))),
            weft: self.weft.map(|weft| count(weft, step.weft_yarn.or(step.width))),
            warp_crimp: both(self.warp_crimp, step.warp_yarn, |c, s| (way.crimp)(c, length, s)),
            weft_crimp: both(self.weft_crimp, step.weft_yarn, |c, s| (way.crimp)(c, width, s)),
            area: self.area.map(|w| if silent { w } else { (way.area)(w, loss, width, length) }),
            mass: both(self.mass, step.loss, way.mass),
        }
    }

    /// Mass per area from the threads, as far as they are known.
    pub(super) fn area_of_threads(&self) -> Option<MassPerArea<N>> {
        Some(cloth::mass_per_area(
            self.ends?,
            self.warp?,
            self.warp_crimp?,
            self.picks?,
            self.weft?,
            self.weft_crimp?,
        ))
    }

    /// Cover factor of the warp.
    pub(super) fn warp_cover(&self) -> Option<CoverFactor<N>> {
        Some(cloth::cover_factor(self.ends?, self.warp?))
    }

    /// Cover factor of the weft.
    pub(super) fn weft_cover(&self) -> Option<CoverFactor<N>> {
        Some(cloth::cover_factor(self.picks?, self.weft?))
    }

    /// Mass of a running length.
    pub(super) fn running(&self) -> Option<LinearDensity<N>> {
        Some(cloth::running_mass_of_cloth(self.area?, self.width?))
    }

    /// Mass of the piece.
    pub(super) fn piece(&self) -> Option<Mass<N>> {
        let by_area = || Some(cloth::mass_of_piece(self.area?, self.width?, self.length?));
        self.mass.or_else(by_area)
    }
}

/// The change, where both what changes and how are known; else as it was.
fn both<Q: Copy, S>(figure: Option<Q>, by: Option<S>, change: impl Fn(Q, S) -> Q) -> Option<Q> {
    match (figure, by) {
        (Some(figure), Some(by)) => Some(change(figure, by)),
        (figure, _) => figure,
    }
}
