//! How often a chart cries wolf: exact, for points that do not hang together.

use crate::law::{chi_square, normal_below, range_below};
use crate::quality::ChartConstants;

use super::Kind;

/// Points in a row on one side that say the level has moved.
pub const RUN: usize = 8;

/// Points until the first false alarm on the average, where nothing has changed and the limits are
/// right: of a point outside, or of eight in a row on one side.
///
/// For means, 152.7 (Champ and Woodall 1987 print 152.73).
pub fn points_to_false_alarm(kind: Kind, constants: &ChartConstants) -> f64 {
    let [up, down] = within(kind, constants);
    // The chain of runs: from a run of k on a side the next point lengthens it, turns it, or is
    // outside, and then the alarm has come. E₁ = Σ pʲ + p_other Σ pʲ · E₁ of the other side.
    let sum = |p: f64| (1..RUN).fold((0.0, 1.0), |(sum, power), _| (sum + power, power * p)).0;
    let (s_up, s_down) = (sum(up), sum(down));
    let first_up = (s_up + down * s_up * s_down) / (1.0 - down * s_up * up * s_down);
    let first_down = s_down * (1.0 + up * first_up);
    1.0 + up * first_up + down * first_down
}

/// The chances of a point between the centre and the upper limit, and between the lower and it.
fn within(kind: Kind, constants: &ChartConstants) -> [f64; 2] {
    let n = constants.n;
    let freedom = f64::from(n - 1);
    // The share below a value in standard deviations of single readings, centre and spread of that.
    let (below, centre, spread): (Box<dyn Fn(f64) -> f64>, f64, f64) = match kind {
        Kind::Mean | Kind::Individuals => (Box::new(normal_below), 0.0, 1.0),
        Kind::Range | Kind::MovingRange => {
            (Box::new(move |w| range_below(w, n)), constants.d2, constants.d3)
        }
        Kind::Deviation => {
            (Box::new(move |s| chi_square(freedom * s * s, freedom)[0]), constants.c4, constants.c5)
        }
    };
    let lower = if kind.is_spread() && centre - 3.0 * spread <= 0.0 {
        0.0
    } else {
        below(centre - 3.0 * spread)
    };
    let middle = below(centre);
    [below(centre + 3.0 * spread) - middle, middle - lower]
}
