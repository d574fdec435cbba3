//! Driven spindles, as ring frame and twister have them: how they run, their twist and its wheel.

use crate::calculation::{Inputs, Owned, Results};
use crate::number::Number;
use crate::quantity::{Count, Fraction, Frequency, Twist};
use crate::yarn;

/// Spindles, and how they run.
#[derive(Clone, Debug, Inputs)]
pub struct Spindles<N> {
    /// spindles at work
    #[q("k_n", 4.0..=1200.0, like = "60")]
    pub spindles: Count<N>,
    /// spindle speed
    #[q("n_s", 800.0..=20_000.0, like = "5000 rpm")]
    pub spindle_speed: Frequency<N>,
    /// efficiency, with every stop, doff and idle spindle in it
    #[q("η", 0.5..=0.95, like = "85 %")]
    pub efficiency: Fraction<N>,
}

/// How the twist is known.
#[derive(Clone, Debug, Inputs)]
pub enum SpindleTwist<N> {
    /// twist
    #[q("t", 40.0..=2500.0, like = "300 turns/m")]
    Twist(Twist<N>),
    /// From the wheel nearest to the twist wanted.
    #[group]
    ByWheel(TwistByWheel<N>),
}

/// The twist wanted, and the wheels for it.
#[derive(Clone, Debug, Inputs)]
pub struct TwistByWheel<N> {
    /// twist wanted
    #[q("t_w", 40.0..=2500.0, like = "300 turns/m")]
    pub wanted_twist: Twist<N>,
    /// The wheels.
    #[group]
    pub wheels: SpindleTwistWheels<N>,
}

/// The wheels that settle the twist: more teeth give less.
#[derive(Clone, Debug, Inputs)]
pub struct SpindleTwistWheels<N> {
    /// twist constant: twist times teeth of the twist wheel
    #[q("C_t", 500.0..=50_000.0, like = "4320 turns/m")]
    pub twist_constant: Twist<N>,
    /// twist wheels owned, teeth
    #[parts("twist_wheel", Count, "[32, 35, 40]")]
    pub twist_wheels: Owned,
}

/// The twist and its wheel.
#[derive(Clone, Debug, Results)]
pub struct SpindleTwistResults<N> {
    /// twist wheel for the twist wanted, teeth
    pub wanted_twist_wheel: Option<Count<N>>,
    /// twist wheel, teeth
    pub twist_wheel: Option<Count<N>>,
    /// twist
    pub twist: Twist<N>,
}

/// The twist as it is: given, or of the wheel nearest to the twist wanted.
pub(super) fn spindle_twist<N: Number>(how: &SpindleTwist<N>) -> SpindleTwistResults<N> {
    match how {
        SpindleTwist::Twist(twist) => {
            SpindleTwistResults { wanted_twist_wheel: None, twist_wheel: None, twist: *twist }
        }
        SpindleTwist::ByWheel(by) => twist_by_wheel(by.wanted_twist, &by.wheels),
    }
}

/// The wheel nearest to a twist, and the twist that it gives.
pub(crate) fn twist_by_wheel<N: Number>(
    wanted_twist: Twist<N>,
    wheels: &SpindleTwistWheels<N>,
) -> SpindleTwistResults<N> {
    let wanted = yarn::wheel_for_twist(wheels.twist_constant, wanted_twist);
    let wheel = wheels.twist_wheels.choose(wanted);
    SpindleTwistResults {
        wanted_twist_wheel: Some(wanted),
        twist_wheel: Some(wheel),
        twist: yarn::twist_from_wheel(wheels.twist_constant, wheel),
    }
}
