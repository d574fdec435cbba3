//! Writing the two notations of the standard, and the short one of the trade.

use std::fmt::Write as _;

use super::trade::SPUN_SILK;
use super::{Fold, Part, Single, Strand, Turned, Yarn};
use crate::error::{Error, Result};
use crate::quantity::Amount;

impl Yarn {
    /// From the single to the fold: `125 tex Z 210 × 2 S 120; R 257 tex`.
    ///
    /// # Errors
    /// Where the count of a single is not known.
    pub fn single_to_fold(&self) -> Result<String> {
        let mut out = String::new();
        strand(&self.build, &mut out)?;
        if let Some(whole) = &self.whole {
            out.push_str(if whole.bulked { "; B " } else { "; R " });
            amount(&whole.count, &mut out);
        }
        Ok(out)
    }

    /// From the fold to the single: `R 257 tex S 120/2 Z 210; 125 tex`. A single without a resultant
    /// of its own is written in one way only.
    ///
    /// # Errors
    /// Where the resultant of a fold is not known.
    pub fn fold_to_single(&self) -> Result<String> {
        let Some(whole) = &self.whole else {
            if matches!(self.build, Strand::Single(_)) {
                return self.single_to_fold();
            }
            return Err(Error::notation(format!(
                "from the fold to the single begins with the resultant, which is not known of '{}'; \
                 add it as measured, '; R 257 tex', or compute it with a contraction",
                self.single_to_fold()?
            )));
        };
        let mut out = String::from(if whole.bulked { "B " } else { "R " });
        amount(&whole.count, &mut out);
        tail(&self.build, &mut out)?;
        Ok(out)
    }
}

/// A count or a twist as it was written.
pub(super) fn amount(amount: &Amount, out: &mut String) {
    let _ = write!(out, "{}", amount.number);
    if amount.unit.symbol != "turns/m" {
        let _ = write!(out, " {}", amount.unit.symbol);
    }
}

/// A twist, with the space before it.
fn twist(twist: &Turned, out: &mut String) {
    match twist {
        Turned::Unsaid => {}
        Turned::Not => out.push_str(" t0"),
        Turned::To(direction, turns) => {
            let _ = write!(out, " {}", direction.letter());
            if let Some(turns) = turns {
                out.push(' ');
                amount(turns, out);
            }
        }
    }
}

/// The ends of a fold one by one.
fn each_end(fold: &Fold) -> impl Iterator<Item = &Strand> {
    fold.parts.iter().flat_map(|p| std::iter::repeat_n(&p.strand, p.ends as usize))
}

fn strand(of: &Strand, out: &mut String) -> Result<()> {
    match of {
        Strand::Single(single) => {
            let Some(count) = &single.count else {
                return Err(Error::notation(
                    "from the single to the fold begins with the count of the single, which is not known; \
                     write it from the fold to the single",
                ));
            };
            amount(count, out);
            filaments(single, out);
            twist(&single.twist, out);
        }
        Strand::Fold(fold) => {
            if let [Part { strand: one, ends }] = fold.parts.as_slice() {
                strand(one, out)?;
                let _ = write!(out, " × {ends}");
            } else {
                out.push('(');
                for (place, end) in each_end(fold).enumerate() {
                    out.push_str(if place > 0 { " + " } else { "" });
                    strand(end, out)?;
                }
                out.push(')');
            }
            twist(&fold.twist, out);
        }
    }
    Ok(())
}

fn filaments(single: &Single, out: &mut String) {
    if let Some(filaments) = single.filaments {
        let _ = write!(out, " f{filaments}");
    }
}

fn tail(of: &Strand, out: &mut String) -> Result<()> {
    twist(&of.twist(), out);
    match of {
        Strand::Single(single) => {
            filaments(single, out);
            if let Some(count) = &single.count {
                out.push_str("; ");
                amount(count, out);
            }
        }
        Strand::Fold(fold) => {
            out.push('/');
            if let [Part { strand, ends }] = fold.parts.as_slice() {
                let _ = write!(out, "{ends}");
                tail(strand, out)?;
            } else {
                out.push('(');
                for (place, end) in each_end(fold).enumerate() {
                    out.push_str(if place > 0 { " + " } else { "" });
                    let mut member = String::new();
                    tail(end, &mut member)?;
                    // A component of which only the count is known is its count.
                    out.push_str(member.trim_start_matches(';').trim_start());
                }
                out.push(')');
            }
        }
    }
    Ok(())
}

impl Yarn {
    /// In the short notation of the trade: `Nm 13/2`, `2/17 worsted`, `54/2 spun-silk`, `17/20 den`.
    /// It says nothing of twist, nor of a resultant that was measured.
    ///
    /// # Errors
    /// Where the trade has no short notation for the yarn, or one that can be read in two ways.
    pub fn trade(&self) -> Result<String> {
        let written = match &self.build {
            Strand::Single(Single { count: Some(count), .. }) if self.about().range.is_some() => {
                let (low, high) = self.about().range.unwrap_or_default();
                format!("{low}/{high} {}", count.unit.symbol)
            }
            Strand::Single(Single { count: Some(count), .. }) => {
                format!("{} {}", count.number, count.unit.symbol)
            }
            Strand::Fold(Fold { parts, .. }) => match parts.as_slice() {
                [Part { strand: Strand::Single(Single { count: Some(count), .. }), ends }]
                    if count.unit.is_indirect() =>
                {
                    let (number, system) = (count.number, count.unit.symbol);
                    match system {
                        "Nm" => format!("Nm {number}/{ends}"),
                        SPUN_SILK => format!("{}/{ends} {system}", number / f64::from(*ends)),
                        _ => format!("{ends}/{number} {system}"),
                    }
                }
                _ => String::new(),
            },
            Strand::Single(_) => String::new(),
        };
        if written.is_empty() {
            return Err(Error::notation(format!(
                "the trade has no short notation for '{}'; it has one for ends that are alike, of an indirect count",
                self.designation()
            )));
        }
        // What would be read in two ways, or as another yarn, is not written.
        let read = Yarn::parse(&written);
        let same = read.as_ref().is_ok_and(|read| {
            read.build.singles() == self.build.singles()
                && read.build.first().count.map(|c| c.base())
                    == self.build.first().count.map(|c| c.base())
        });
        if same {
            return Ok(written);
        }
        Err(Error::notation(format!(
            "'{}' has no short notation that is read in one way only ('{written}' is not); write it as that",
            self.designation()
        )))
    }
}
