//! Running a formula over columns of figures.

use super::Formula;

/// Rows that the body runs over at a time.
pub const BLOCK: usize = 64;

/// A column: one figure for all rows, or a figure a row.
#[derive(Clone, Copy, Debug)]
pub enum Column<'a> {
    /// The same for all rows.
    One(f64),
    /// One for each row.
    Each(&'a [f64]),
}

impl Column<'_> {
    /// The rows from `start`, as many as `length`.
    ///
    /// # Panics
    /// Where the column has not so many.
    pub fn part(&self, start: usize, length: usize) -> Column<'_> {
        match self {
            Column::One(x) => Column::One(*x),
            Column::Each(rows) => Column::Each(&rows[start..start + length]),
        }
    }
    /// The figure of a row.
    ///
    /// # Panics
    /// Where the column has not so many.
    pub fn at(&self, row: usize) -> f64 {
        match self {
            Column::One(x) => *x,
            Column::Each(rows) => rows[row],
        }
    }
}

/// Rows that have no answer: how many, and the first.
#[derive(Clone, Copy, Debug, Default)]
pub struct Unanswered {
    /// How many.
    pub count: usize,
    /// The first of them.
    pub first: Option<usize>,
}

impl Unanswered {
    /// Adds those of a part that begins at a row.
    pub fn add(&mut self, part: Unanswered, start: usize) {
        self.count += part.count;
        let first = part.first.map(|row| start + row);
        self.first = match (self.first, first) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        };
    }
}

impl Formula {
    /// Runs the formula over columns in base units; each full column is as long as `out`.
    ///
    /// # Panics
    /// Where a column has another length than `out`, or a column is missing.
    pub fn evaluate_columns(&self, columns: &[Column<'_>], out: &mut [f64]) {
        for column in columns {
            if let Column::Each(rows) = column {
                assert_eq!(rows.len(), out.len(), "columns of unequal length");
            }
        }
        assert!(columns.len() >= self.inputs.len(), "a column is missing");
        let same: Vec<[f64; BLOCK]> = columns
            .iter()
            .map(|c| if let Column::One(x) = c { [*x; BLOCK] } else { [0.0; BLOCK] })
            .collect();
        let mut blocks: Vec<&[f64; BLOCK]> = same.iter().collect();
        let (whole, rest) = out.as_chunks_mut::<BLOCK>();
        for (at, out) in whole.iter_mut().enumerate() {
            for (block, column) in blocks.iter_mut().zip(columns) {
                if let Column::Each(rows) = column
                    && let Some(chunk) = rows.as_chunks::<BLOCK>().0.get(at)
                {
                    *block = chunk;
                }
            }
            (self.block)(&blocks, out);
        }
        // The rest, and every short column, goes row by row.
        let start = whole.len() * BLOCK;
        let mut row = vec![0.0; columns.len()];
        for (at, out) in rest.iter_mut().enumerate() {
            for (cell, column) in row.iter_mut().zip(columns) {
                *cell = match column {
                    Column::One(x) => *x,
                    Column::Each(rows) => rows[start + at],
                };
            }
            *out = (self.evaluate)(&row);
        }
    }

    /// Looks over the answers of [`Formula::evaluate_columns`] as [`Formula::answer`] looks over one: what
    /// cannot be becomes NaN and is counted. With `gaps`, figures may be missing (NaN): where one is, the
    /// answer is missing too, and is not counted.
    ///
    /// # Panics
    /// Where a column has another length than `out`.
    pub fn check_columns(&self, columns: &[Column<'_>], out: &mut [f64], gaps: bool) -> Unanswered {
        let (low, high) = self.output.kind.possible();
        let (low, high) = (low.max(f64::MIN), high.min(f64::MAX));
        let mut found = Unanswered::default();
        for (block, answers) in out.chunks_mut(BLOCK).enumerate() {
            // Several at a time: nothing is wrong with most.
            let wrong: u64 = answers.iter().map(|x| u64::from(!(*x >= low && *x <= high))).sum();
            if wrong == 0 && !gaps {
                continue;
            }
            for (at, answer) in answers.iter_mut().enumerate() {
                let row = block * BLOCK + at;
                if gaps && columns.iter().any(|column| column.at(row).is_nan()) {
                    *answer = f64::NAN;
                } else if !(*answer >= low && *answer <= high) {
                    *answer = f64::NAN;
                    found.count += 1;
                    found.first.get_or_insert(row);
                }
            }
        }
        found
    }
}
