//! What the points of a chart say: one that is out alone, or a level that has moved.

use super::alarms::RUN;

/// What is found on a chart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Finding {
    /// A point outside the limits whose neighbours are within: a fault of that one reading or moment.
    Outlier {
        /// Its place, from 0.
        at: usize,
    },
    /// Points that have moved together: several outside on one side, or eight in a row on one side.
    Drift {
        /// The first of them, from 0.
        from: usize,
        /// The last of them.
        to: usize,
        /// True where they are above the centre.
        above: bool,
    },
}

/// Finds outliers and drifts. A point outside at the end of a run, the next of it within, is an outlier of
/// its own and no part of the run. A drift is eight points in a row on one side of the centre, or two or
/// more neighbours outside on one side; where it is found, its points are not outliers. Where
/// neighbouring points share a reading, an outlier puts two of them outside: that pair is
/// one outlier, at the first of them.
pub(super) fn findings(
    points: &[f64],
    centre: f64,
    limits: [f64; 2],
    shared: bool,
) -> Vec<Finding> {
    let side = |x: f64| (x > centre).cmp(&(x < centre));
    let out = |x: f64| x < limits[0] || x > limits[1];
    let mut found = Vec::new();
    let mut from = 0;
    for run in points.chunk_by(|a, b| side(*a) == side(*b)) {
        let (whole, at) = (run, from);
        let apart = side(run[0]).is_ne();
        let alone =
            |edge: f64, next: Option<&f64>| !shared && out(edge) && next.is_some_and(|x| !out(*x));
        let mut edges = Vec::new();
        let mut run = run;
        if apart && run.len() > RUN && alone(run[0], run.get(1)) {
            edges.push(Finding::Outlier { at: from });
            (run, from) = (&run[1..], from + 1);
        }
        if apart && run.len() > RUN && alone(run[run.len() - 1], run.get(run.len() - 2)) {
            run = &run[..run.len() - 1];
            edges.push(Finding::Outlier { at: from + run.len() });
        }
        let outside = run.iter().filter(|x| out(**x)).count();
        // Two outside with others between them on the same side still say one thing.
        let together = if shared { 3 } else { 2 };
        let neighbours = run.windows(together).any(|some| some.iter().all(|x| out(*x)));
        if apart && (run.len() >= RUN || neighbours) {
            let above = run[0] > centre;
            found.push(Finding::Drift { from, to: from + run.len() - 1, above });
        } else if outside > 0 {
            let first = |k: &usize| out(run[*k]) && !(shared && *k > 0 && out(run[*k - 1]));
            found.extend((0..run.len()).filter(first).map(|k| Finding::Outlier { at: from + k }));
        }
        found.append(&mut edges);
        from = at + whole.len();
    }
    found
}
