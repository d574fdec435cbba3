//! The results of a calculation as tables.

use super::card::Answer;
use super::sheet::{Found, Shown};
use super::solved::Solved;
use crate::table::Align::{Left, Right};
use crate::table::{Block, Report};

impl Solved {
    /// The results as tables, what is noted under them, the cautions.
    pub fn report(&self) -> Report {
        let mut report = self.own_report().unwrap_or_else(|| Report {
            title: self.calculation.title.to_owned(),
            blocks: self.shown.iter().filter_map(|shown| self.block(shown)).collect(),
        });
        report.blocks.extend(Block::cautions(self.cautions().into_iter()));
        report
    }

    fn block(&self, shown: &Shown) -> Option<Block> {
        match shown {
            Shown::Block { places, .. } if places.is_empty() => None,
            Shown::Block { title, places } => Some(self.list(title, places)),
            Shown::Table { rows, .. } if rows.is_empty() => None,
            Shown::Table { meaning, rows } => Some(self.table(meaning, rows)),
        }
    }

    fn in_words(&self, found: &Found) -> String {
        let value = if found.answer.whole { found.value.round() } else { found.value };
        self.say.base(value, found.answer.kind)
    }

    /// One result to a line: what it is, the value, its name.
    fn list(&self, title: &'static str, places: &[usize]) -> Block {
        let row = |place: &usize| {
            let found = &self.found[*place];
            let value = self.in_words(found);
            vec![found.answer.meaning.to_owned(), value, found.name.to_string()]
        };
        let mut foot: Vec<String> = Vec::new();
        for place in places {
            let name = &self.found[*place].name;
            let notes = self.beside.iter().filter(|(result, _)| result == name);
            foot.extend(notes.map(|(_, note)| format!("{name}: {note}")));
        }
        foot.extend(self.notes.iter().filter(|(block, _)| *block == title).map(|(_, s)| s.clone()));
        let columns = [("", Left), ("", Right), ("", Left)];
        Block { foot, ..Block::of(title, &columns, places.iter().map(row).collect()) }
    }

    /// Rows of results: one to a line, a column for each result that any of them has.
    fn table(&self, meaning: &'static str, rows: &[(String, Vec<usize>)]) -> Block {
        let mut heads: Vec<&'static Answer> = Vec::new();
        for place in rows.iter().flat_map(|(_, places)| places) {
            let answer = self.found[*place].answer;
            if !heads.iter().any(|head| std::ptr::eq(*head, answer)) {
                heads.push(answer);
            }
        }
        let cell = |places: &[usize], head: &'static Answer| {
            let place = places.iter().find(|p| std::ptr::eq(self.found[**p].answer, head));
            place.map_or_else(String::new, |p| self.in_words(&self.found[*p]))
        };
        let name = |head: &&'static Answer| {
            if head.head.is_empty() { head.name.replace('_', " ") } else { head.head.to_owned() }
        };
        let mut names = vec![(String::new(), Left)];
        names.extend(heads.iter().map(|head| (name(head), Right)));
        let row = |(label, places): &(String, Vec<usize>)| {
            let mut row = vec![label.clone()];
            row.extend(heads.iter().map(|head| cell(places, head)));
            row
        };
        let notes = self.notes.iter().filter(|(block, _)| *block == meaning);
        Block {
            title: heading(meaning),
            columns: names,
            rows: rows.iter().map(row).collect(),
            foot: notes.map(|(_, s)| s.clone()).collect(),
            ..Block::default()
        }
    }
}

/// What rows are, as a heading.
fn heading(meaning: &str) -> String {
    let mut letters = meaning.chars();
    letters.next().map_or(String::new(), |first| first.to_uppercase().chain(letters).collect())
}
