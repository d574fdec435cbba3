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
}
