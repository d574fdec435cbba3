//! The mule at work.

use super::lot::{Lot, LotResults, Packages, check_lot, lot, packages, say_last_doff};
use super::minding::{Minding, MindingResults, check_minding, minding};
use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Owned, Results, calculation};
use crate::error::Result;
use crate::mill;
use crate::number::Number;
use crate::quantity::{
    Count, Duration, Fraction, Frequency, Length, LinearDensity, Mass, MassRate, Ratio, Twist,
};

/// The mule itself, and how it runs.
#[derive(Clone, Debug, Inputs)]
pub struct MuleMachine<N> {
    /// spindles at work
    #[q("k_n", 20.0..=600.0, like = "120")]
    pub spindles: Count<N>,
    /// travel of the carriage
    #[q("S", 1.5..=2.3, like = "1.83 m")]
    pub travel: Length<N>,
    /// let-in of the carriage
    #[q("i_c", 0.0..=0.15, or = 0.0)]
    pub let_in: Length<N>,
    /// time of a draw, out and in
    #[q("τ_d", 0.004..=0.015, like = "22.5 s")]
    pub cycle: Duration<N>,
    /// efficiency, with every stop, doff and idle spindle in it
    #[q("η", 0.75..=0.9, memory, like = "85 %")]
    pub efficiency: Fraction<N>,
    /// slip of the bands
    #[q("x", 0.0..=0.08, or = 0.0)]
    pub slip: Fraction<N>,
    /// turns spent in coiling to the spindle tip
    #[q("b_c", 0.0..=15.0, or = 0.0, broken)]
    pub coiling: Count<N>,
}

/// The wheels that deliver slubbing to the carriage.
#[derive(Clone, Debug, Inputs)]
pub struct DeliveryWheels<N> {
    /// slubbing delivered for each tooth of the delivery wheel
    #[q("p_d", 0.005..=0.2, like = "0.038 m")]
    pub delivered_per_tooth: Length<N>,
    /// delivery wheels owned, teeth
    #[parts("delivery_wheel", Count, "[32, 34, 36]")]
    pub delivery_wheels: Owned,
}

/// The wheels that settle the twist.
#[derive(Clone, Debug, Inputs)]
pub struct TwistWheels<N> {
    /// spindle turns in a draw for each tooth of the twist wheel
    #[q("p_t", 0.5..=50.0, like = "6.0")]
    pub turns_per_tooth: Ratio<N>,
    /// twist wheels owned, teeth
    #[parts("twist_wheel", Count, "[60, 64, 68]")]
    pub twist_wheels: Owned,
}

/// How the draft is known.
#[derive(Clone, Debug, Inputs)]
pub enum Delivery<N> {
    /// draft wanted
    #[q("D_w", 1.2..=1.5, like = "1.40")]
    WantedDraft(Ratio<N>),
    /// slubbing delivered in a draw
    #[q("L_d", 0.9..=2.2)]
    DeliveredLength(Length<N>),
}

/// What [`mule()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct MuleInputs<N> {
    /// The machine.
    #[group]
    pub machine: MuleMachine<N>,
    /// count of the single as spun
    #[q("T", 30.0..=1000.0, like = "150 tex")]
    pub count: LinearDensity<N>,
    /// The draft, or the slubbing delivered.
    #[one_of("the draft")]
    pub delivery: Option<Delivery<N>>,
    /// The delivery wheels.
    #[group]
    pub delivery_wheels: Option<DeliveryWheels<N>>,
    /// twist wanted
    #[q("t_w", 60.0..=1000.0)]
    pub wanted_twist: Option<Twist<N>>,
    /// The twist wheels.
    #[group]
    pub twist_wheels: Option<TwistWheels<N>>,
    /// The lot.
    #[group]
    pub lot: Option<Lot<N>>,
    /// yarn on a full cop
    #[q("g", 0.02..=0.6)]
    pub package_mass: Option<Mass<N>>,
    /// Broken ends and people.
    #[group]
    pub minding: Minding<N>,
}

/// What [`mule()`] answers.
#[derive(Clone, Debug, Results)]
pub struct MuleResults<N> {
    /// yarn wound in a draw
    #[block = "Settings"]
    pub wound_length: Length<N>,
    /// The slubbing and its wheel.
    #[part]
    pub delivery: Option<DeliveryResults<N>>,
    /// count of the slubbing
    pub slubbing_count: Option<LinearDensity<N>>,
    /// The twist and its wheel.
    #[part]
    pub twist: Option<TwistResults<N>>,
    /// draws in a minute, running
    #[block = "Output"]
    pub draw_rate: Frequency<N>,
    /// output
    pub output: MassRate<N>,
    /// from doff to doff
    pub doff_time: Option<Duration<N>>,
    /// The lot.
    #[part]
    pub lot: Option<LotResults<N>>,
    /// draws
    pub draws: Option<Count<N>>,
    /// Doffs and packages.
    #[part]
    pub packages: Option<Packages<N>>,
    /// Broken ends and people.
    #[part]
    pub minding: MindingResults<N>,
}

/// What the rollers deliver.
#[derive(Clone, Debug, Results)]
pub struct DeliveryResults<N> {
    /// delivery wheel for the draft wanted, teeth
    pub wanted_delivery_wheel: Option<Count<N>>,
    /// delivery wheel, teeth
    pub delivery_wheel: Option<Count<N>>,
    /// slubbing delivered in a draw
    pub delivered_length: Length<N>,
    /// draft
    pub draft: Ratio<N>,
}

/// How the spindles turn.
#[derive(Clone, Debug, Results)]
pub struct TwistResults<N> {
    /// spindle turns in a draw for the twist wanted, without slip
    pub wanted_turns: Count<N>,
    /// twist wheel for the twist wanted, teeth
    pub wanted_twist_wheel: Option<Count<N>>,
    /// twist wheel, teeth
    pub twist_wheel: Option<Count<N>>,
    /// spindle turns in a draw, without slip
    pub spindle_turns: Count<N>,
    /// twist in the singles
    pub twist: Twist<N>,
}

/// The mule at work: draft and twist with their wheels, output, doffs, hours, broken ends and people.
///
/// Give `wanted_draft` or `delivered_length` for the slubbing, `wanted_twist` for the spindle turns, the wheels
/// that the mill owns to have the nearest chosen, `yarn_mass` for a lot and `loss` for what of the feed is
/// lost, `package_mass` of a cop for the doffs. `break_rate` is for a thousand spindle hours; with
/// `patrol_time` it gives the spindles idle, with `piecing_time` and `work_load` the spindles that a minder
/// can piece for. The efficiency includes idle spindles and doffs: nothing is taken off twice.
#[calculation(
    title = "The mule at work",
    example = ">>> import hankwise as hw
>>> mule = hw.mill.mule(spindles=120, travel=\"6 ft\", cycle=\"22.5 s\", count=\"150 tex\",
...                     efficiency=\"85 %\", wanted_draft=1.4, yarn_mass=\"30 kg\", package_mass=\"90 g\")
>>> mule[\"output\"], mule[\"time\"], mule[\"doffs\"]
(<mass per time: 4.477 kg/h>, <time: 6.701 h>, <number: 3>)",
    cautions = ["mule", "machines", "wheels"],
    check = check
)]
pub fn mule<N: Number>(given: &MuleInputs<N>) -> MuleResults<N> {
    let MuleMachine { spindles, cycle, efficiency, .. } = given.machine;
    let wound_length = wound_length(&given.machine);
    let wheels = given.delivery_wheels.as_ref();
    let delivery = given.delivery.as_ref().map(|how| delivery(&given.machine, how, wheels));
    let slubbing_count = delivery
        .as_ref()
        .map(|made| mill::slubbing_for_single(given.count, wound_length, made.delivered_length));
    let twist_wheels = given.twist_wheels.as_ref();
    let twist =
        given.wanted_twist.map(|wanted| twist(&given.machine, wound_length, wanted, twist_wheels));
    let output = mill::mule_output(spindles, wound_length, cycle, given.count, efficiency);
    let made = given.lot.as_ref().map(|given_lot| lot(given_lot, output, given.count));
    let time = made.as_ref().map(|made| made.time);
    let yarn_mass = given.lot.as_ref().map(|lot| lot.yarn_mass);
    MuleResults {
        wound_length,
        delivery,
        slubbing_count,
        twist,
        draw_rate: mill::draw_rate(cycle),
        output,
        doff_time: given.package_mass.map(|cop| mill::doff_interval(spindles, cop, output)),
        draws: made.as_ref().map(|made| mill::draws(made.yarn_length, spindles, wound_length)),
        lot: made,
        packages: yarn_mass
            .zip(given.package_mass)
            .map(|(mass, cop)| packages(mass, spindles, cop)),
        minding: minding(&given.minding, spindles, time),
    }
}

/// Yarn wound in a draw.
pub(crate) fn wound_length<N: Number>(machine: &MuleMachine<N>) -> Length<N> {
    mill::wound_length(machine.travel, machine.let_in)
}

/// What the rollers deliver: with the wheel nearest to the draft, where wheels are owned.
pub(crate) fn delivery<N: Number>(
    machine: &MuleMachine<N>,
    how: &Delivery<N>,
    wheels: Option<&DeliveryWheels<N>>,
) -> DeliveryResults<N> {
    let travel = machine.travel;
    let (wanted, wheel, delivered_length) = match (how, wheels) {
        (Delivery::DeliveredLength(length), _) => (None, None, *length),
        (Delivery::WantedDraft(draft), None) => {
            (None, None, mill::delivery_for_draft(travel, *draft))
        }
        (Delivery::WantedDraft(draft), Some(wheels)) => {
            let per_tooth = wheels.delivered_per_tooth;
            let wanted = mill::delivery_wheel(travel, *draft, per_tooth);
            let wheel = wheels.delivery_wheels.choose(wanted);
            (Some(wanted), Some(wheel), mill::delivered_length(per_tooth, wheel))
        }
    };
    DeliveryResults {
        wanted_delivery_wheel: wanted,
        delivery_wheel: wheel,
        delivered_length,
        draft: mill::mule_draft(travel, delivered_length),
    }
}

/// How the spindles turn for a twist: with the wheel nearest to it, where wheels are owned.
pub(crate) fn twist<N: Number>(
    machine: &MuleMachine<N>,
    wound_length: Length<N>,
    wanted: Twist<N>,
    wheels: Option<&TwistWheels<N>>,
) -> TwistResults<N> {
    let MuleMachine { slip, coiling, .. } = *machine;
    let wanted_turns = mill::turns_per_draw(wanted, wound_length, coiling, slip);
    let Some(wheels) = wheels else {
        return TwistResults {
            wanted_turns,
            wanted_twist_wheel: None,
            twist_wheel: None,
            spindle_turns: wanted_turns,
            twist: wanted,
        };
    };
    let wanted_wheel = mill::twist_wheel(wanted_turns, wheels.turns_per_tooth);
    let wheel = wheels.twist_wheels.choose(wanted_wheel);
    let spindle_turns = Count::from(wheel.v() * wheels.turns_per_tooth.v());
    TwistResults {
        wanted_turns,
        wanted_twist_wheel: Some(wanted_wheel),
        twist_wheel: Some(wheel),
        spindle_turns,
        twist: mill::mule_twist(spindle_turns, slip, coiling, wound_length),
    }
}

fn check(given: &MuleInputs<f64>, found: &MuleResults<f64>, check: &mut Check<'_>) -> Result<()> {
    if let (Some(wheels), None | Some(Delivery::DeliveredLength(_))) =
        (&given.delivery_wheels, &given.delivery)
    {
        refuse!(
            check,
            wheels.delivered_per_tooth,
            "a delivery wheel is chosen for a draft; write wanted_draft=1.4, or omit the wheels"
        );
    }
    if let (Some(wheels), None) = (&given.twist_wheels, given.wanted_twist) {
        refuse!(
            check,
            wheels.turns_per_tooth,
            "a twist wheel is chosen for a twist; write wanted_twist, or omit the wheels"
        );
    }
    check_machine(&given.machine, found.delivery.as_ref(), check)?;
    check_lot(given.lot.as_ref(), check)?;
    say_last_doff(given.lot.as_ref(), given.machine.spindles, given.package_mass, "cop", check);
    check_minding(&given.minding, &found.minding, check)
}

/// Refuses settings with which no yarn is wound or no draft is made.
pub(crate) fn check_machine(
    machine: &MuleMachine<f64>,
    delivery: Option<&DeliveryResults<f64>>,
    check: &Check<'_>,
) -> Result<()> {
    if machine.let_in.value() >= machine.travel.value() {
        refuse!(
            check,
            machine.let_in,
            "the carriage is let in by {} of a travel of {}, and nothing is wound; write less",
            check.say(machine.let_in),
            check.say(machine.travel)
        );
    }
    if machine.slip.value() >= 1.0 {
        refuse!(
            check,
            machine.slip,
            "the bands slip the whole way, and no spindle turns; write less"
        );
    }
    if let Some(delivery) = delivery
        && delivery.delivered_length.value() > machine.travel.value() * (1.0 + 1e-9)
    {
        refuse!(
            check,
            delivery.delivered_length,
            "the rollers would deliver {} to a travel of {}, a draft under 1: the yarn hangs slack; write \
             a draft of 1.2 to 1.5, or a delivery below the travel",
            check.say(delivery.delivered_length),
            check.say(machine.travel)
        );
    }
    Ok(())
}
