//! A recording written out as a live workbook: a cell a step, formulas instead of values.

use std::collections::BTreeMap;

use rust_xlsxwriter::{
    ConditionalFormatCell, ConditionalFormatCellRule, Format, Formula, Workbook, Worksheet,
    XlsxError,
};

use super::expression::{Dialect, Leaf, Writer};
use super::lines::Lines;
use super::tape::{Arg, Op, Recording};
use super::working::Working;
use crate::caution::{self, Caution};
use crate::error::{Error, Result};
use crate::files::{FileKind, Output};

/// A part of the sheet under a heading of its own.
#[derive(Clone, Debug)]
pub struct Section {
    /// The heading.
    pub title: String,
    /// The lines that belong to it, by the start of their names; a line goes to the first section
    /// that claims it, and an empty list claims the rest.
    pub names: Vec<String>,
}

/// A table of plain numbers on a sheet of its own.
#[derive(Clone, Debug, Default)]
pub struct StaticTable {
    /// Name of the sheet.
    pub title: String,
    /// What the values are and how they were calculated.
    pub note: String,
    /// Rows of cells; the first is the heading.
    pub rows: Vec<Vec<String>>,
}

const VALUE: u16 = 2;
/// How far a value that does not follow is out of date.
const STALE: u16 = 6;
const STALE_HEAD: &str =
    "out of date when not 0: chosen, looked up or found by iteration; find it again";
const LIVE: &str = "Shaded cells are given: change a number, and what is calculated from it follows. \
                    A unit is a word: another unit leaves the number as it is.";
const NOT_LIVE: &str = " What was chosen, looked up or found by iteration does not follow: its last \
                        cell tells when it is out of date.";
const CAUTIONS: &str = "Cautions";
const SEE_CAUTIONS: &str = " For the cautions see the sheet Cautions.";
const HEAD: [&str; 6] = ["figure", "symbol", "value", "unit", "how", "what it is"];

impl Working {
    /// What can do harm where the answer is acted on: the cautions of the formulas that it rests on.
    pub fn cautions(&self) -> Vec<&'static Caution> {
        let needed = self.recording().needed_for(self.root());
        let calls = self.recording().calls.iter().filter(|(step, _)| needed[**step]);
        let names: Vec<&str> = calls.flat_map(|(_, call)| call.formula.cautions).copied().collect();
        caution::of(&names).collect()
    }
    /// Writes the working as a live workbook, with the cautions of the formulas that it rests on.
    pub fn to_workbook(&self, out: impl Into<Output>) -> Result<()> {
        let sections = [Section { title: self.name(), names: Vec::new() }];
        let cautions: Vec<String> = self.cautions().iter().map(|c| c.line(&[])).collect();
        write_sheet(&out.into(), self.recording(), &[self.root()], &sections, &[], &cautions)
    }
}

/// Writes the lines that the roots rest on as a live workbook, what can do harm on a sheet of words,
/// and tables of plain numbers after it.
///
/// The file appears whole or not at all.
pub fn write_sheet(
    out: &Output,
    recording: &Recording,
    roots: &[Arg],
    sections: &[Section],
    tables: &[StaticTable],
    cautions: &[String],
) -> Result<()> {
    out.check(FileKind::Xlsx)?;
    let bytes = build(recording, roots, sections, tables, cautions).map_err(|e| {
        Error::plan(format!("the workbook {} could not be made: {e}", out.path().display()))
    })?;
    out.write(FileKind::Xlsx, &bytes)
}

fn build(
    recording: &Recording,
    roots: &[Arg],
    sections: &[Section],
    tables: &[StaticTable],
    cautions: &[String],
) -> std::result::Result<Vec<u8>, XlsxError> {
    let lines = Lines::new(recording, roots);
    let mut book = Workbook::new();
    let sheet = book.add_worksheet();
    sheet.set_name("Working")?;
    let bold = Format::new().set_bold();
    let input = Format::new().set_background_color(0x00EE_EEEE);
    let elsewhere = if cautions.is_empty() { "" } else { SEE_CAUTIONS };
    let is_live = |op: &Op| !matches!(op, Op::Chosen | Op::LookedUp | Op::Solved(_));
    let all_live = lines.steps().all(|step| is_live(&recording.steps[step].op));
    let not_live = if all_live { "" } else { NOT_LIVE };
    sheet.write_string(0, 0, format!("{LIVE}{not_live}{elsewhere}"))?;
    for (column, title) in HEAD.iter().enumerate() {
        sheet.write_string_with_format(1, column as u16, *title, &bold)?;
    }
    for (column, width) in [30.0, 9.0, 14.0, 16.0, 44.0, 60.0].into_iter().enumerate() {
        sheet.set_column_width(column as u16, width)?;
    }
    sheet.set_freeze_panes(2, 0)?;
    // On paper a line stays in one piece.
    sheet.set_landscape().set_print_fit_to_pages(1, 0).set_repeat_rows(1, 1)?;

    // Where each line goes.
    let mut rows: BTreeMap<usize, u32> = BTreeMap::new();
    let mut next = 2;
    let mut left: Vec<usize> = lines.steps().collect();
    for section in sections {
        let (mine, rest): (Vec<usize>, Vec<usize>) = left.into_iter().partition(|step| {
            let name = lines.name(*step);
            section.names.is_empty() || section.names.iter().any(|n| name.starts_with(n.as_str()))
        });
        left = rest;
        if mine.is_empty() {
            continue;
        }
        sheet.write_string_with_format(next, 0, &section.title, &bold)?;
        for step in mine {
            next += 1;
            rows.insert(step, next);
        }
        next += 2;
    }

    // By their small letters: a spreadsheet takes "Hank" and "hank" for one name.
    let mut names: BTreeMap<String, (String, u32)> = BTreeMap::new();
    for (step, row) in &rows {
        let line = lines.line(*step, Dialect::Text);
        sheet.write_string(*row, 0, &line.name)?;
        if line.symbol != line.name {
            sheet.write_string(*row, 1, &line.symbol)?;
        }
        sheet.write_string(*row, 3, &line.unit)?;
        let how = line.symbols;
        let note = [line.meaning, line.origin].into_iter().filter(|t| !t.is_empty());
        sheet.write_string(*row, 5, note.collect::<Vec<_>>().join("; "))?;
        let cells = Writer::new(recording, Dialect::Sheet, 0, |i: usize| match rows.get(&i) {
            Some(row) => Leaf::Word(cell(*row)),
            None => Leaf::Expand,
        });
        if matches!(recording.steps[*step].op, Op::Input | Op::Chosen | Op::LookedUp) {
            sheet.write_number_with_format(*row, VALUE, line.value, &input)?;
            let name = free_name(&line.name, |name| names.contains_key(&name.to_lowercase()));
            names.insert(name.to_lowercase(), (name, *row));
            let how = if how.is_empty() { "given" } else { &how };
            sheet.write_string(*row, 4, how)?;
            if let Some(stale) = moved(recording, *step, &cells) {
                write_stale(sheet, *row, &stale, 0.0, &bold)?;
            }
            continue;
        }
        if let Some(root) = recording.roots.get(step) {
            // A value, for a cell cannot iterate.
            sheet.write_number(*row, VALUE, line.value)?;
            sheet.write_string(*row, 4, &how)?;
            let left = recording.value(root.residual);
            write_stale(sheet, *row, &cells.arg(root.residual), left, &bold)?;
        } else {
            let formula = Formula::new(format!("={}", cells.step(*step)));
            sheet.write_formula(*row, VALUE, formula.set_result(line.value.to_string()))?;
            sheet.write_string(*row, 4, &how)?;
        }
    }
    if !cautions.is_empty() {
        write_cautions(book.add_worksheet(), cautions, &bold)?;
    }
    for table in tables {
        write_table(book.add_worksheet(), table, &bold)?;
    }
    for (name, row) in names.into_values() {
        book.define_name(name, &format!("=Working!$C${}", row + 1))?;
    }
    book.save_to_buffer()
}

/// How far what a part was chosen or looked up for has moved since, as a formula of cells; none for what
/// was given.
fn moved(
    recording: &Recording,
    step: usize,
    cells: &Writer<'_, impl Fn(usize) -> Leaf>,
) -> Option<String> {
    let step = &recording.steps[step];
    let one = |arg: &Arg| {
        let (now, then) = (cells.arg(*arg), recording.value(*arg));
        // The last bits of a number are the spreadsheet's own.
        format!("IF(ABS({now}-({then}))<=1E-9*ABS({then}),0,ABS({now}-({then})))")
    };
    let of: Vec<String> = step.args.iter().map(one).collect();
    (!of.is_empty()).then(|| of.join("+"))
}

/// Writes the cell that tells when a value is out of date, and its heading.
fn write_stale(
    sheet: &mut Worksheet,
    row: u32,
    formula: &str,
    now: f64,
    bold: &Format,
) -> std::result::Result<(), XlsxError> {
    let formula = Formula::new(format!("={formula}")).set_result(now.to_string());
    sheet.write_formula(row, STALE, formula)?;
    sheet.write_string_with_format(1, STALE, STALE_HEAD, bold)?;
    let out_of_date = ConditionalFormatCell::new()
        .set_rule(ConditionalFormatCellRule::NotBetween(-1e-6, 1e-6))
        .set_format(Format::new().set_bold().set_font_color(0x00FF_FFFF).set_background_color(0));
    sheet.add_conditional_format(row, STALE, row, STALE, &out_of_date)?;
    Ok(())
}

/// A sheet of words alone, so that nobody takes a caution for a value or a setting.
fn write_cautions(
    sheet: &mut Worksheet,
    cautions: &[String],
    bold: &Format,
) -> std::result::Result<(), XlsxError> {
    sheet.set_name(CAUTIONS)?;
    sheet.set_column_width(0, 100.0)?;
    sheet.set_print_fit_to_pages(1, 0);
    let wrapped = Format::new().set_text_wrap();
    sheet.write_string_with_format(0, 0, caution::HEAD, &bold.clone().set_text_wrap())?;
    for (row, line) in cautions.iter().enumerate() {
        sheet.write_string_with_format(row as u32 + 2, 0, line, &wrapped)?;
    }
    Ok(())
}

fn write_table(
    sheet: &mut Worksheet,
    table: &StaticTable,
    bold: &Format,
) -> std::result::Result<(), XlsxError> {
    sheet.set_name(&table.title)?;
    sheet.write_string(0, 0, &table.note)?;
    for (row, cells) in table.rows.iter().enumerate() {
        for (column, text) in cells.iter().enumerate() {
            let (row, column) = (row as u32 + 2, column as u16);
            match text.parse::<f64>() {
                Ok(number) => sheet.write_number(row, column, number)?,
                Err(_) if row == 2 => sheet.write_string_with_format(row, column, text, bold)?,
                Err(_) => sheet.write_string(row, column, text)?,
            };
        }
    }
    sheet.set_column_width(0, 30.0)?;
    Ok(())
}

fn cell(row: u32) -> String {
    format!("C{}", row + 1)
}

/// The defined name of a line; numbered where another line has it.
fn free_name(name: &str, taken: impl Fn(&str) -> bool) -> String {
    let name = defined_name(name);
    let numbered = (2..).map(|k| format!("{name}_{k}"));
    std::iter::once(name.clone()).chain(numbered).find(|n| !taken(n)).unwrap_or(name)
}

/// A name that every spreadsheet takes: letters, digits and underscores, not like a cell.
fn defined_name(name: &str) -> String {
    let mut out: String = name.chars().map(|c| if c.is_alphanumeric() { c } else { '_' }).collect();
    out = out.trim_matches('_').to_owned();
    let letters = out.chars().take_while(char::is_ascii_alphabetic).count();
    let like_a_cell = letters <= 3 && out.chars().skip(letters).all(|c| c.is_ascii_digit());
    if out.is_empty() || like_a_cell || out.starts_with(|c: char| c.is_ascii_digit()) {
        out.insert(0, '_');
    }
    out
}
