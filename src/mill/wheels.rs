//! The wheel to put on, out of those that the mill owns.

use crate::calculation::refuse;
use crate::calculation::{Check, Inputs, Owned, Results, Words, calculation};
use crate::error::Result;
use crate::number::{Number, V};
use crate::quantity::print::{constant, figure, fixed};
use crate::quantity::{Count, Deviation, Length, Ratio, Twist};
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

/// Which way a change wheel works.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Words)]
pub enum WheelLaw {
    /// what the wheel gives falls as teeth rise: the constant over the teeth
    #[default]
    Inverse,
    /// what the wheel gives rises with the teeth: the constant times the teeth
    Direct,
}

/// What a wheel sets. Counts are omitted: they have two ways round.
#[derive(Clone, Debug, Inputs)]
pub enum WheelSets<N> {
    /// A twist.
    #[group]
    Twist(TwistChange<N>),
    /// A draft.
    #[group]
    Draft(DraftChange<N>),
    /// A length.
    #[group]
    Length(LengthChange<N>),
}

/// A twist that a wheel sets.
#[derive(Clone, Debug, Inputs)]
pub struct TwistChange<N> {
    /// twist wanted
    #[q("t_w", 20.0..=4000.0, like = "18.1 tpi")]
    pub wanted_twist: Twist<N>,
    /// twist times teeth, or for a direct wheel twist for each tooth
    #[q("C_t", .., like = "995.31 tpi")]
    pub twist_constant: Twist<N>,
}

/// A draft that a wheel sets.
#[derive(Clone, Debug, Inputs)]
pub struct DraftChange<N> {
    /// draft wanted
    #[q("D_w", 1.0..=50.0, like = "6.1")]
    pub wanted_draft: Ratio<N>,
    /// draft times teeth, or for a direct wheel draft for each tooth
    #[q("C_d", .., like = "240")]
    pub draft_constant: Ratio<N>,
}

/// A length that a wheel sets.
#[derive(Clone, Debug, Inputs)]
pub struct LengthChange<N> {
    /// length wanted
    #[q("L_n", .., like = "1.3 m")]
    pub wanted_length: Length<N>,
    /// length times teeth, or for a direct wheel length for each tooth
    #[q("C_l", .., like = "0.038 m")]
    pub length_constant: Length<N>,
}

/// What [`change_wheel()`] asks.
#[derive(Clone, Debug, Inputs)]
pub struct ChangeWheelInputs<N> {
    /// What is wanted, with the constant of the machine for that place.
    #[one_of("what is wanted")]
    pub sets: WheelSets<N>,
    /// wheels owned, teeth
    #[parts("wheel", Count, "[50, 54, 58]")]
    pub wheels: Owned,
    /// which way the wheel works
    #[word]
    pub law: WheelLaw,
}

/// What [`change_wheel()`] answers.
#[derive(Clone, Debug, Results)]
pub struct ChangeWheelResults<N> {
    /// teeth that would give what is wanted, hardly ever a whole number
    #[block = "Change wheel"]
    pub wanted_teeth: Count<N>,
    /// The wheel to put on.
    #[part]
    pub nearest: WheelFit<N>,
    /// Owned wheels next to it
    #[rows]
    pub neighbours: Vec<WheelNeighbour<N>>,
}

/// A wheel that the mill owns, and what it gives.
#[derive(Clone, Debug, Results)]
pub struct WheelFit<N> {
    /// wheel, teeth
    pub teeth: Count<N>,
    /// twist
    pub twist: Option<Twist<N>>,
    /// draft
    pub draft: Option<Ratio<N>>,
    /// length
    pub length: Option<Length<N>>,
    /// deviation from what is wanted
    #[head = "off by"]
    pub deviation: Deviation<N>,
}

/// A wheel next to the teeth wanted.
#[derive(Clone, Debug, Results)]
pub struct WheelNeighbour<N> {
    /// Where it is.
    #[label]
    pub place: String,
    /// The wheel and what it gives.
    #[part]
    pub fit: WheelFit<N>,
}

/// The change wheel for a twist, a draft or a length, out of those that the mill owns.
///
/// `law` is "inverse" where what the wheel gives falls as teeth rise (constant ÷ teeth) and "direct" where
/// it rises with them (constant × teeth). Of the owned wheels next to the teeth wanted, `below` has as many
/// teeth or fewer, `above` more.
#[calculation(
    title = "Change wheel",
    example = ">>> import hankwise as hw
>>> wheel = hw.mill.change_wheel(twist_constant=\"995.31 tpi\", wanted_twist=\"18.1 tpi\",
...                              wheels=[50, 54, 58])
>>> wheel[\"teeth\"], wheel[\"twist\"].to(\"tpi\"), wheel[\"above.teeth\"]
(<number: 54>, <twist: 18.43 tpi>, <number: 58>)",
    cautions = ["wheels"],
    check = check,
    report = report
)]
pub fn change_wheel<N: Number>(given: &ChangeWheelInputs<N>) -> ChangeWheelResults<N> {
    let (constant, wanted) = match &given.sets {
        WheelSets::Twist(by) => (by.twist_constant.v(), by.wanted_twist.v()),
        WheelSets::Draft(by) => (by.draft_constant.v(), by.wanted_draft.v()),
        WheelSets::Length(by) => (by.length_constant.v(), by.wanted_length.v()),
    };
    let wanted_teeth = Count::from(match given.law {
        WheelLaw::Inverse => constant / wanted,
        WheelLaw::Direct => wanted / constant,
    });
    let fit = |teeth: Count<N>| {
        let gives = match given.law {
            WheelLaw::Inverse => constant / teeth.v(),
            WheelLaw::Direct => constant * teeth.v(),
        };
        WheelFit {
            teeth,
            twist: matches!(given.sets, WheelSets::Twist(_)).then(|| gives.into()),
            draft: matches!(given.sets, WheelSets::Draft(_)).then(|| gives.into()),
            length: matches!(given.sets, WheelSets::Length(_)).then(|| gives.into()),
            deviation: Deviation::from(gives / wanted - 1.0),
        }
    };
    let (below, above) = given.wheels.neighbours(wanted_teeth.value());
    let neighbours =
        [("below", below), ("above", above)].into_iter().filter_map(|(place, teeth)| {
            let teeth = Count::from(V(wanted_teeth.v().0.chosen(teeth?)));
            Some(WheelNeighbour { place: place.to_owned(), fit: fit(teeth) })
        });
    ChangeWheelResults {
        wanted_teeth,
        nearest: fit(given.wheels.choose(wanted_teeth)),
        neighbours: neighbours.collect(),
    }
}

fn check(
    given: &ChangeWheelInputs<f64>,
    found: &ChangeWheelResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let teeth = found.wanted_teeth.value();
    if !(1.0..=1000.0).contains(&teeth) {
        refuse!(
            check,
            given.law,
            "{} teeth would give what is wanted, and no wheel has them; are the constant and what is wanted \
             exchanged, or is the law the other one?",
            figure(teeth)
        );
    }
    Ok(())
}

/// The wheel to put on and its neighbours, as a table.
fn report(
    given: &ChangeWheelInputs<f64>,
    found: &ChangeWheelResults<f64>,
    check: &Check<'_>,
) -> Report {
    let gives = |fit: &WheelFit<f64>| match (fit.twist, fit.draft, fit.length) {
        (Some(twist), ..) => check.say(twist),
        (_, Some(draft), _) => check.say(draft),
        (.., length) => length.map_or_else(String::new, |length| check.say(length)),
    };
    let wanted = match &given.sets {
        WheelSets::Twist(by) => check.say(by.wanted_twist),
        WheelSets::Draft(by) => check.say(by.wanted_draft),
        WheelSets::Length(by) => check.say(by.wanted_length),
    };
    let chosen = found.nearest.teeth;
    let row = |side: &str| {
        let Some(WheelNeighbour { fit, .. }) = found.neighbours.iter().find(|n| n.place == side)
        else {
            let mut row = vec![String::new(); 4];
            row[0] = format!("none owned {side}");
            return row;
        };
        let place = match (fit.teeth == chosen, given.wheels.set()) {
            (true, Some(_)) => "set".to_owned(),
            (true, None) => "nearest".to_owned(),
            (false, _) => format!("next {side}"),
        };
        let off = fit.deviation.value();
        let sign = if off > 0.0 { "+" } else { "" };
        let off = format!("{sign}{} %", fixed(off * 100.0, 1));
        vec![place, constant(fit.teeth.value()), gives(fit), off]
    };
    let columns = [("wheel", Left), ("teeth", Right), ("gives", Right), ("off by", Right)];
    let teeth = figure(found.wanted_teeth.value());
    let title = format!("{wanted} wanted: {teeth} teeth would give it");
    Report {
        title: "Change wheel".to_owned(),
        blocks: vec![Block::of(title, &columns, vec![row("below"), row("above")])],
    }
}
