//! A formula of the catalogue over 100,000 rows against a loop written by hand for it, in the same
//! program: the ratio of the best times.

use std::hint::black_box;
use std::time::{Duration, Instant};

use hankwise::catalogue;
use hankwise::formula::array::Column;

const ROWS: usize = 100_000;

fn best(mut run: impl FnMut()) -> Duration {
    (0..200)
        .map(|_| {
            let start = Instant::now();
            run();
            start.elapsed()
        })
        .min()
        .unwrap_or_default()
}

fn column(low: f64, high: f64) -> Vec<f64> {
    // Low-discrepancy points: no order that a branch could be predicted by.
    (0..ROWS).map(|i| low + (high - low) * ((i as f64) * 0.618_033_988_75).fract()).collect()
}

fn compare(name: &str, columns: &[Vec<f64>], by_hand: impl Fn(&[&[f64]], &mut [f64])) {
    let Ok(formula) = catalogue::formula(name) else {
        return println!("{name}: not in the catalogue");
    };
    let each: Vec<Column<'_>> = columns.iter().map(|c| Column::Each(c)).collect();
    let slices: Vec<&[f64]> = columns.iter().map(Vec::as_slice).collect();
    let (mut a, mut b) = (vec![0.0; ROWS], vec![0.0; ROWS]);
    let catalogue = best(|| formula.evaluate_columns(black_box(&each), black_box(&mut a)));
    let hand = best(|| by_hand(black_box(&slices), black_box(&mut b)));
    assert_eq!(a, b, "{name}: the loop by hand computes something else");
    println!(
        "{name:26} {:8.1} µs, by hand {:8.1} µs: {:.2} ×",
        catalogue.as_secs_f64() * 1e6,
        hand.as_secs_f64() * 1e6,
        catalogue.as_secs_f64() / hand.as_secs_f64()
    );
}

fn main() {
    println!("catalogue formulas over {ROWS} rows against a loop by hand (aim: within 1.15 ×)");
    compare("mass_of_length", &[column(50.0, 500.0), column(1.0, 900.0)], |c, out| {
        for (out, (t, l)) in out.iter_mut().zip(c[0].iter().zip(c[1])) {
            *out = t * l * 1e-6;
        }
    });
    compare("twist_factor", &[column(100.0, 900.0), column(20.0, 500.0)], |c, out| {
        for (out, (t, count)) in out.iter_mut().zip(c[0].iter().zip(c[1])) {
            *out = t / 100.0 * count.sqrt();
        }
    });
    compare("clean_yield_customs", &[column(0.3, 0.8), column(0.0, 0.3)], |c, out| {
        for (out, (a, v)) in out.iter_mut().zip(c[0].iter().zip(c[1])) {
            let (allowance, cap) = (0.005 * a + 0.60 * v, 0.15 * a);
            *out = a - allowance.min(cap);
        }
    });
    let cloth: Vec<Vec<f64>> =
        [(4.0, 8.0), (90.0, 400.0), (0.0, 0.2), (3.0, 7.0), (90.0, 400.0), (0.0, 0.2)]
            .map(|(low, high)| column(low, high))
            .to_vec();
    compare("mass_per_area", &cloth, |c, out| {
        for (i, out) in out.iter_mut().enumerate() {
            let warp = c[0][i] * c[1][i] * (1.0 + c[2][i]) / 10.0;
            *out = warp + c[3][i] * c[4][i] * (1.0 + c[5][i]) / 10.0;
        }
    });
}
