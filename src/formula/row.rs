//! The row of figures that a formula runs over: what stands where, and what is refused.
//!
//! Single inputs come first, then list after list, all of one length.

use std::ops::Range;

use super::array::Column;
use super::{Formula, Input, is_usual};
use crate::error::{Error, Result};
use crate::quantity::print::{constant, of_kind};
use crate::worked::subscript;

/// How far the shares of a whole may be from 1 together: thirds are written with nine digits.
const WHOLE: f64 = 1e-9;

impl Formula {
    /// How many inputs are not lists; they come first.
    const fn singles(&self) -> usize {
        self.inputs.len() - self.lists
    }

    /// How many members each list has in a row of a length.
    const fn each(&self, of: usize) -> usize {
        match of.saturating_sub(self.singles()).checked_div(self.lists) {
            Some(each) => each,
            None => 0,
        }
    }

    /// Where an input is in a row of a length: its place among the inputs, and which member of
    /// a list it is, from 1.
    fn locate(&self, place: usize, of: usize) -> (usize, Option<usize>) {
        let singles = self.singles();
        match self.lists {
            0 => (place.min(singles - 1), None),
            _ if place < singles => (place, None),
            1 => (singles, Some(place - singles + 1)),
            lists => {
                let each = self.each(of).max(1);
                let list = ((place - singles) / each).min(lists - 1);
                (singles + list, Some(place - singles - list * each + 1))
            }
        }
    }

    /// The input that a place in a row of a length belongs to.
    #[inline]
    pub fn input(&self, place: usize, of: usize) -> &'static Input {
        match self.lists {
            // Read at every call: the only list takes all that follows.
            0 | 1 => &self.inputs[place.min(self.inputs.len() - 1)],
            _ => &self.inputs[self.locate(place, of).0],
        }
    }

    /// The name of a place in a row: a member of a list has its number.
    pub(crate) fn name_at(&self, place: usize, of: usize) -> String {
        match self.locate(place, of) {
            (input, None) => self.inputs[input].name.to_owned(),
            (input, Some(member)) => format!("{}[{member}]", self.inputs[input].name),
        }
    }

    /// The symbol of a place in a row: a member of a list has its number as a subscript.
    pub(crate) fn symbol_at(&self, place: usize, of: usize) -> String {
        match self.locate(place, of) {
            (input, None) => self.inputs[input].symbol.to_owned(),
            (input, Some(member)) => format!("{}{}", self.inputs[input].symbol, subscript(member)),
        }
    }

    /// Refuses lists of unequal length; `lengths` are those of the lists, in the order of the card.
    pub fn check_lengths(&self, lengths: &[usize]) -> Result<()> {
        let mut lists = self.inputs[self.singles()..].iter().zip(lengths);
        let Some((first, length)) = lists.next() else { return Ok(()) };
        match lists.find(|(_, other)| *other != length) {
            None => Ok(()),
            Some((other, found)) => Err(Error::notation(format!(
                "{}: {} has {length} and {} has {found}; they go in step, so give as many of each",
                self.name, first.name, other.name
            ))),
        }
    }

    /// Refuses a wrong number of inputs and inputs that cannot be.
    pub fn check(&self, row: &[f64]) -> Result<()> {
        let (least, lists) = (self.inputs.len(), self.lists);
        let fits = match lists {
            0 => row.len() == least,
            1 => row.len() >= least,
            _ => row.len() >= least && self.singles() + lists * self.each(row.len()) == row.len(),
        };
        if !fits {
            let names: Vec<&str> = self.inputs.iter().map(|i| i.name).collect();
            return Err(Error::notation(format!(
                "{} takes {} ({}{}), {} given",
                self.name,
                if least == 1 { "one input".to_owned() } else { format!("{least} inputs") },
                names.join(", "),
                if lists > 1 { "; the lists of one length" } else { "" },
                row.len()
            )));
        }
        for (place, value) in row.iter().enumerate() {
            let input = self.input(place, row.len());
            input
                .kind
                .check(*value)
                .map_err(|e| e.at(format_args!("{}, {}", self.name, input.name)))?;
        }
        if self.lists == 0 { Ok(()) } else { self.check_wholes(row) }
    }

    /// Refuses shares of a whole that do not sum to 1.
    pub(super) fn check_wholes(&self, row: &[f64]) -> Result<()> {
        for (input, span) in self.wholes(row.len()) {
            self.check_whole(input, row[span].iter().sum())?;
        }
        Ok(())
    }

    /// The lists that hold the shares of one whole, and where their members stand.
    fn wholes(&self, of: usize) -> impl Iterator<Item = (&'static Input, Range<usize>)> {
        let (singles, each) = (self.singles(), self.each(of));
        let lists = self.inputs[singles..].iter().enumerate();
        lists
            .filter(|(_, input)| input.whole)
            .map(move |(k, input)| (input, singles + k * each..singles + (k + 1) * each))
    }

    fn check_whole(&self, input: &Input, sum: f64) -> Result<()> {
        // A missing figure (NaN) stays missing, as in a column of any other kind.
        if sum.is_nan() || (sum - 1.0).abs() <= WHOLE {
            return Ok(());
        }
        Err(Error::range(format!(
            "{}, {}: they sum to {} ({} %), and the shares of a whole sum to 1; look for one too \
             {} or for one left {}, and write thirds with nine digits or more",
            self.name,
            input.name,
            constant(sum),
            constant(sum * 100.0),
            if sum > 1.0 { "large" } else { "small" },
            if sum > 1.0 { "in" } else { "out" },
        )))
    }

    /// Refuses columns in which the shares of a whole do not sum to 1, naming the row.
    pub fn check_whole_columns(&self, columns: &[Column<'_>]) -> Result<()> {
        for (input, span) in self.wholes(columns.len()) {
            let shares = &columns[span];
            let rows = shares.iter().find_map(|c| match c {
                Column::One(_) => None,
                Column::Each(rows) => Some(rows.len()),
            });
            for row in 0..rows.unwrap_or(1) {
                let sum = shares.iter().map(|c| match c {
                    Column::One(x) => *x,
                    Column::Each(rows) => rows[row],
                });
                self.check_whole(input, sum.sum()).map_err(|e| {
                    if rows.is_some() { e.at(format_args!("row {row}")) } else { e }
                })?;
            }
        }
        Ok(())
    }

    /// Inputs outside their usual range, each with a sentence.
    pub fn unusual(&self, row: &[f64]) -> Vec<String> {
        let of = row.len();
        row.iter().enumerate().filter_map(|(k, value)| self.unusual_at(k, of, *value)).collect()
    }

    /// The sentence where the input at a place in a row of a length is outside its usual range.
    pub fn unusual_at(&self, place: usize, of: usize, value: f64) -> Option<String> {
        let input = self.input(place, of);
        (!is_usual(input.usual, value)).then(|| {
            format!(
                "{}: {} = {} is unusual; the usual range is {}",
                self.name,
                input.name,
                of_kind(value, input.kind),
                input.usual_words()
            )
        })
    }

    /// The inputs and their figures, for a message.
    pub(super) fn given(&self, row: &[f64]) -> String {
        let given: Vec<String> = row
            .iter()
            .enumerate()
            .map(|(k, x)| {
                let input = self.input(k, row.len());
                format!("{} = {}", input.name, of_kind(*x, input.kind))
            })
            .collect();
        given.join(", ")
    }
}
