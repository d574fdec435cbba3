//! Regular satins.

use crate::error::{Error, Result};

pub(super) fn common_divisor(a: usize, b: usize) -> usize {
    if b == 0 { a } else { common_divisor(b, a % b) }
}

/// The moves that make a regular satin of a number of ends: no common divisor with it, more than 1
/// and less than one under it.
///
/// Each move up to half stands for the one that it makes up to the number: the same satin twilled
/// the other way.
///
/// ```
/// use hankwise::cloth::satin_moves;
///
/// assert_eq!(satin_moves(8)?, [3, 5]);
/// assert!(satin_moves(6).unwrap_err().to_string().contains("5/1 broken twill"));
/// # Ok::<(), hankwise::Error>(())
/// ```
pub fn satin_moves(ends: usize) -> Result<Vec<usize>> {
    if ends > 10_000 {
        return Err(Error::range(format!("a satin of {ends} ends floats further than any cloth")));
    }
    let moves: Vec<usize> =
        (2..ends.saturating_sub(1)).filter(|m| common_divisor(ends, *m) == 1).collect();
    if moves.is_empty() {
        return Err(Error::range(match ends {
            4 | 6 => format!(
                "{ends} ends have no regular satin: every move divides them or makes a twill; what is \
                 sold as one is a broken twill, write '{}/1 broken twill' (or '1/{0} broken twill' for \
                 the weft face)",
                ends - 1
            ),
            _ => format!("a regular satin has 5 ends, or 7 and more, not {ends}"),
        }));
    }
    Ok(moves)
}

/// Checks a move, or takes the one that scatters the binding points best; of equals the smaller.
pub(super) fn satin_move(ends: usize, wanted: Option<usize>) -> Result<usize> {
    let moves = satin_moves(ends)?;
    if let Some(wanted) = wanted {
        if moves.contains(&wanted) {
            return Ok(wanted);
        }
        let all: Vec<String> = moves.iter().map(ToString::to_string).collect();
        return Err(Error::range(format!(
            "a satin of {ends} ends has no move {wanted}; write move {}",
            all.join(" or ")
        )));
    }
    // Nearest neighbours among the binding points (pick, end), going round.
    let nearest = |m: usize| {
        (1..ends)
            .map(|pick| {
                let (up, across) = (pick.min(ends - pick), pick * m % ends);
                up * up + across.min(ends - across).pow(2)
            })
            .min()
    };
    Ok(moves.into_iter().rev().max_by_key(|m| nearest(*m)).unwrap_or(2))
}
