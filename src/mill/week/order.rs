//! The order of the lots.

use std::str::FromStr;

use super::{Floor, Lot, same};
use crate::error::{Error, Result};

/// How the lots of a week are put in order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Order {
    /// The lightest first: a dark fibre left behind shows in a light lot.
    LightToDark,
    /// The darkest first.
    DarkToLight,
    /// As they were given.
    AsGiven,
}

impl Order {
    /// The words for it.
    pub const fn words(self) -> &'static str {
        match self {
            Order::LightToDark => "light to dark",
            Order::DarkToLight => "dark to light",
            Order::AsGiven => "as given",
        }
    }
}

impl FromStr for Order {
    type Err = Error;
    fn from_str(text: &str) -> Result<Order> {
        [Order::LightToDark, Order::DarkToLight, Order::AsGiven]
            .into_iter()
            .find(|order| order.words() == text.trim().to_lowercase().replace(['-', '_'], " "))
            .ok_or_else(|| {
                Error::notation(format!(
                    "'{text}' is no order of lots; write 'light to dark', 'dark to light' or 'as given'"
                ))
            })
    }
}

/// The lots in order; lots of one colour next to each other, else as given.
pub(super) fn sorted(lots: &[Lot], order: Order) -> Vec<usize> {
    let mut sequence: Vec<usize> = (0..lots.len()).collect();
    if order == Order::AsGiven {
        return sequence;
    }
    let first = |k: usize| lots.iter().position(|l| same(&l.colour, &lots[k].colour));
    sequence.sort_by(|a, b| {
        let by_light = lots[*b].lightness.total_cmp(&lots[*a].lightness);
        let by_light = if order == Order::LightToDark { by_light } else { by_light.reverse() };
        by_light.then(first(*a).cmp(&first(*b))).then(a.cmp(b))
    });
    sequence
}

/// More orders than this are not tried: eight lots as light as each other have as many.
pub(super) const MOST: usize = 40_320;

/// The best of all orders of lots as light as each other, and how many were tried.
pub(super) fn best(
    floor: &Floor<'_>,
    first: Vec<usize>,
    go_on: &mut dyn FnMut() -> bool,
) -> Result<(Vec<usize>, usize)> {
    let light = |k: usize| floor.lots[k].lightness;
    let groups: Vec<usize> = first
        .chunk_by(|a, b| light(*a).total_cmp(&light(*b)).is_eq())
        .map(<[usize]>::len)
        .collect();
    let orders = groups
        .iter()
        .flat_map(|n| 1..=*n)
        .try_fold(1_usize, usize::checked_mul)
        .filter(|all| *all <= MOST);
    let Some(orders) = orders else {
        return Err(Error::range(format!(
            "there are more than {MOST} orders of the lots as light as each other; leave try_orders \
             out, or tell their shades apart by lightness"
        )));
    };
    let mut least = floor.cost(&first);
    let (mut kept, mut sequence, mut tried) = (first.clone(), first, 0_usize);
    // Each group's own permutations, as a counter of mixed base whose digits are their numbers.
    for number in 0..orders {
        if number % 256 == 0 && !go_on() {
            return Err(Error::plan(format!("stopped after {tried} of {orders} orders")));
        }
        let mut rest = number;
        let mut from = 0;
        for size in &groups {
            let group = &kept_order(&sequence, from, *size);
            let count: usize = (1..=*size).product();
            permuted(group, rest % count, &mut sequence[from..from + size]);
            rest /= count;
            from += size;
        }
        let cost = floor.cost(&sequence);
        tried += 1;
        let less = cost.0 < least.0 - 1e-9 || (cost.0 <= least.0 + 1e-9 && cost.1 < least.1 - 1e-9);
        if less {
            (least, kept) = (cost, sequence.clone());
        }
    }
    Ok((kept, tried))
}

/// The members of a group in rising order of their places.
fn kept_order(sequence: &[usize], from: usize, size: usize) -> Vec<usize> {
    let mut group = sequence[from..from + size].to_vec();
    group.sort_unstable();
    group
}

/// The permutation of a group with a number, from 0 for the group as it stands.
fn permuted(group: &[usize], number: usize, into: &mut [usize]) {
    let (mut left, mut number) = (group.to_vec(), number);
    for (k, place) in into.iter_mut().enumerate() {
        let count: usize = (1..group.len() - k).product();
        *place = left.remove(number / count);
        number %= count;
    }
}
