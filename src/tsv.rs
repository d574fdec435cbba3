//! Data files: a row a line, fields parted by tabs, without quotes.
//!
//! Lines that begin with `#` are remarks; they and empty lines are skipped. Fields that are empty at the end of a
//! row may be omitted with their tabs. The files are part of the crate, so a fault in one is a fault of the
//! crate: `tests/sources.rs` and `tests/handbook.rs` read them all.

/// The rows of a data file, its head first, each with the fields that it has.
pub(crate) fn rows(text: &'static str) -> impl Iterator<Item = Vec<&'static str>> {
    let lines = text.lines().filter(|line| !line.is_empty() && !line.starts_with('#'));
    lines.map(|line| line.split('\t').map(str::trim).collect())
}

/// The field at a place of a row; empty where the row ends before.
pub(crate) fn field(row: &[&'static str], place: usize) -> &'static str {
    row.get(place).copied().unwrap_or("")
}

#[cfg(test)]
mod tests {
    use super::{field, rows};

    #[test]
    fn remarks_and_empty_lines_are_skipped_and_rows_may_end_early() {
        let all: Vec<_> = rows("# a remark\none\ttwo\n\n1\n\t2\n").collect();
        assert_eq!(all, [vec!["one", "two"], vec!["1"], vec!["", "2"]]);
        assert_eq!((field(&all[1], 0), field(&all[1], 1)), ("1", ""));
    }
}
