//! A yarn in place of a count stands for the count of the whole.

use super::Yarn;
use crate::error::{Error, Result};
use crate::quantity::print::{of_kind, with_unit};
use crate::quantity::{Amount, Kind, parse_as};

impl Yarn {
    /// The count of the whole and, of a folded yarn, how a working writes it: which contraction is in it.
    ///
    /// # Errors
    /// Where the count of a single is not known.
    pub fn whole_count(&self) -> Result<(Amount, Option<String>)> {
        let (tex, unit) = (self.resultant()?, self.system());
        let amount = Amount { number: unit.from_base(tex), unit };
        if self.singles() == Some(1) {
            return Ok((amount, None));
        }
        let whole = with_unit(amount.number, unit.symbol);
        let contraction = match self.contraction() {
            Ok(contraction) => format!("contraction {}", of_kind(contraction, Kind::Contraction)),
            Err(_) if self.whole.is_some() => "as measured".to_owned(),
            Err(_) => "contraction not counted".to_owned(),
        };
        Ok((amount, Some(format!("{} = {whole}, {contraction}", self.designation()))))
    }

    /// Refuses a folded yarn for an input that is the count of one of its singles.
    ///
    /// # Errors
    /// As it says.
    pub fn fits(&self, input: &str) -> Result<()> {
        if !asks_a_single(input) || self.singles() == Some(1) {
            return Ok(());
        }
        Err(Error::notation(format!(
            "'{}' is a {}, and {input} is the count of one of its singles; write {input} for the single \
             and ends for how many there are",
            self.designation(),
            self.what()
        )))
    }
}

/// True of an input that is the count of one of the singles of a yarn.
pub fn asks_a_single(input: &str) -> bool {
    input.starts_with("single_count")
}

/// Reads what was written for an input of a kind, and gives it as a working writes it. Where a count is
/// wanted, a yarn in any notation whose reading is settled is one, for the count of the whole.
///
/// ```
/// use hankwise::{quantity::Kind, yarn::read_input};
/// let (count, said) = read_input("2/24 worsted", "warp_count", Kind::LinearDensity)?;
/// assert_eq!((count.number, count.unit.symbol), (12.0, "worsted"));
/// assert_eq!(said, "24 worsted × 2 = 12 worsted, contraction not counted");
/// # Ok::<(), hankwise::Error>(())
/// ```
///
/// # Errors
/// Where the text is neither; where a folded yarn is given for one of its singles.
pub fn read_input(text: &str, input: &str, kind: Kind) -> Result<(Amount, String)> {
    let error = match parse_as(text, kind) {
        Ok(amount) => return Ok((amount, said(text.trim(), kind, &amount))),
        Err(error) => error,
    };
    if kind != Kind::LinearDensity {
        return Err(error);
    }
    match Yarn::parse(text) {
        Ok(yarn) if yarn.resultant().is_ok() => {
            yarn.fits(input)?;
            let (amount, said) = yarn.whole_count()?;
            kind.check(amount.base()).map_err(|e| e.at(format_args!("'{}'", text.trim())))?;
            Ok((amount, said.unwrap_or_else(|| text.trim().to_owned())))
        }
        // How a fold can be read that is not settled; where in the text it is belongs to a line alone.
        Err(unsettled) if looks_folded(text) => {
            let message = unsettled.to_string();
            Err(Error::notation(message.lines().next().unwrap_or_default()))
        }
        _ => Err(error),
    }
}

/// What was written, as a working has it: of a factor, how the share comes from it.
fn said(text: &str, kind: Kind, amount: &Amount) -> String {
    let factor = text.trim_start_matches(['×', 'x', 'X', '*', ' ']);
    if factor.len() == text.len() {
        return text.to_owned();
    }
    let share = of_kind(amount.number, kind);
    match kind.of_factor(0.0) {
        Some(less) if less < 0.0 => format!("{factor} − 1 = {share}"),
        _ => format!("1 − {factor} = {share}"),
    }
}

/// True of `2/24`: a figure over another.
fn looks_folded(text: &str) -> bool {
    let digits = |part: &str, last: bool| {
        let part = part.trim();
        let c = if last { part.chars().last() } else { part.chars().next() };
        c.is_some_and(|c| c.is_ascii_digit())
    };
    text.split_once('/').is_some_and(|(a, b)| digits(a, true) && digits(b, false))
}
