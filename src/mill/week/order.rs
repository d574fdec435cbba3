//! The order of the lots.

use super::floor::Floor;
use super::shade::same;
use crate::calculation::Words;

/// How the lots of a week are put in order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Words)]
pub enum Order {
    /// The lightest first: a dark fibre left behind shows in a light lot.
    #[word("light to dark")]
    #[default]
    LightToDark,
    /// The darkest first.
    #[word("dark to light")]
    DarkToLight,
    /// As they were given.
    #[word("as given")]
    AsGiven,
}

impl Order {
    /// The words for it.
    pub const fn words(self) -> &'static str {
        Order::WORDS[self as usize].0
    }
}

/// The order of the lots, by their places, and how many orders were tried where orders were tried.
pub(super) fn settle(floor: &Floor<'_, f64>) -> (Vec<usize>, Option<usize>) {
    let first = sorted(floor);
    match number(floor, &first) {
        Some(orders) if floor.given.try_orders => (best(floor, first, orders), Some(orders)),
        // Too many orders are refused.
        _ => (first, None),
    }
}

/// The lots in order; lots of one colour next to each other, else as given.
fn sorted(floor: &Floor<'_, f64>) -> Vec<usize> {
    let (lots, order) = (&floor.given.lots, floor.given.order);
    let mut sequence: Vec<usize> = (0..lots.len()).collect();
    if order == Order::AsGiven {
        return sequence;
    }
    let light: Vec<f64> = sequence.iter().map(|k| floor.lightness(*k).value()).collect();
    let first = |k: usize| lots.iter().position(|lot| same(&lot.colour, &lots[k].colour));
    sequence.sort_by(|a, b| {
        let by_light = light[*b].total_cmp(&light[*a]);
        let by_light = if order == Order::LightToDark { by_light } else { by_light.reverse() };
        by_light.then(first(*a).cmp(&first(*b))).then(a.cmp(b))
    });
    sequence
}

/// More orders than this are not tried: eight lots as light as each other have as many.
pub(super) const MOST: usize = 40_320;

/// The sizes of the groups of lots as light as each other, in an order.
fn groups(floor: &Floor<'_, f64>, sequence: &[usize]) -> Vec<usize> {
    let light = |k: usize| floor.lightness(k).value();
    let alike = |a: &usize, b: &usize| light(*a).total_cmp(&light(*b)).is_eq();
    sequence.chunk_by(alike).map(<[usize]>::len).collect()
}

/// How many orders of the lots as light as each other there are; none where there are too many.
fn number(floor: &Floor<'_, f64>, sequence: &[usize]) -> Option<usize> {
    groups(floor, sequence)
        .iter()
        .flat_map(|n| 1..=*n)
        .try_fold(1_usize, usize::checked_mul)
        .filter(|all| *all <= MOST)
}

/// True where more orders were to be tried than are.
pub(super) fn are_too_many(floor: &Floor<'_, f64>) -> bool {
    floor.given.try_orders && number(floor, &sorted(floor)).is_none()
}

/// The best of all orders of lots as light as each other.
fn best(floor: &Floor<'_, f64>, first: Vec<usize>, orders: usize) -> Vec<usize> {
    let groups = groups(floor, &first);
    let mut least = floor.rate(&first);
    let (mut kept, mut sequence) = (first.clone(), first);
    // Each group's own permutations, as a counter of mixed base whose digits are their numbers.
    for number in 0..orders {
        let mut rest = number;
        let mut from = 0;
        for size in &groups {
            let group = &kept_order(&sequence, from, *size);
            let count: usize = (1..=*size).product();
            permuted(group, rest % count, &mut sequence[from..from + size]);
            rest /= count;
            from += size;
        }
        let rate = floor.rate(&sequence);
        let less = rate.0 < least.0 - 1e-9 || (rate.0 <= least.0 + 1e-9 && rate.1 < least.1 - 1e-9);
        if less {
            (least, kept) = (rate, sequence.clone());
        }
    }
    kept
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
