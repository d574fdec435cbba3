//! What cannot be run, and what is unusual in a week.

use super::floor::Floor;
use super::order::{MOST, are_too_many};
use super::shade::{SHADES, lightness, same};
use super::{WeekInputs, WeekResults};
use crate::calculation::Check;
use crate::calculation::refuse;
use crate::error::{Result, or_near};

pub(super) fn check(
    given: &WeekInputs<f64>,
    _: &WeekResults<f64>,
    check: &mut Check<'_>,
) -> Result<()> {
    let names: Vec<&str> = given.machines.iter().map(|machine| machine.name.as_str()).collect();
    if names.iter().any(|name| name.trim().is_empty()) {
        refuse!(check, given.machines, "a machine has no name; write one, such as 'card'");
    }
    if given.lots.iter().any(|lot| lot.name.trim().is_empty()) {
        refuse!(check, given.lots, "a lot has no name; write one, such as 'Ash'");
    }
    for lot in &given.lots {
        for at in &lot.times {
            if !names.contains(&at.machine.as_str()) {
                let near = or_near(&at.machine, &names);
                let message = format!(
                    "unknown machine '{}'{near} Machines: {}",
                    at.machine,
                    names.join(", ")
                );
                return Err(check.refuse(&format!("{}.times", lot.name), message));
            }
        }
    }
    let lots = given.lots.iter().map(|lot| (&lot.name, Some(&lot.colour), lot.lightness));
    let on = given.machines.iter().map(|m| (&m.name, m.colour.as_ref(), m.lightness));
    for (name, colour, light) in lots.chain(on) {
        if let (Some(colour), None) = (colour, light) {
            lightness(colour)
                .map_err(|e| check.refuse(&format!("{name}.lightness"), e.to_string()))?;
        }
    }
    if are_too_many(&Floor::of(given)) {
        refuse!(
            check,
            given.try_orders,
            "there are more than {MOST} orders of the lots as light as each other; omit try_orders, or \
             give the lots a lightness that distinguishes their shades"
        );
    }
    doubts(given, check);
    Ok(())
}

/// Warns of pairs of colours with one that nothing bears, which a slip of the pen would leave without its
/// cleaning.
fn doubts(given: &WeekInputs<f64>, check: &mut Check<'_>) {
    let on = given.machines.iter().filter_map(|machine| machine.colour.as_deref());
    let colours: Vec<&str> =
        given.lots.iter().map(|lot| lot.colour.as_str()).chain(on).chain(SHADES).collect();
    for machine in &given.machines {
        let changes = machine.changes.iter().flatten();
        for word in changes.flat_map(|change| [&change.colour_before, &change.colour_after]) {
            if !colours.iter().any(|colour| same(colour, word)) {
                let near = or_near(word, &colours);
                check
                    .warn(format!("{}.changes: nothing this week is '{word}'{near}", machine.name));
            }
        }
    }
}
