//! Signs that look like those of the notation, and come from a word processor, another keyboard or a
//! web page.

use std::borrow::Cow;

/// The text with the plain sign for each that looks like it; signs without width fall away.
pub(crate) fn plain(text: &str) -> Cow<'_, str> {
    if text.is_ascii() || text.chars().all(|c| c.is_ascii() || c == '×' || plain_sign(c) == Some(c))
    {
        return Cow::Borrowed(text);
    }
    Cow::Owned(text.chars().filter_map(plain_sign).collect())
}

/// The plain sign for one that looks like it; None for one that cannot be seen.
fn plain_sign(sign: char) -> Option<char> {
    // Greek and Cyrillic letters that have the shape of a Latin one, each under its Latin letter.
    const SHAPES: &[(char, &str)] = &[
        ('A', "ΑА"),
        ('B', "ΒВ"),
        ('C', "СϹ"),
        ('E', "ΕЕ"),
        ('H', "ΗН"),
        ('I', "ΙІ"),
        ('K', "ΚК"),
        ('M', "ΜМ"),
        ('N', "Ν"),
        ('O', "ΟО"),
        ('P', "ΡР"),
        ('S', "Ѕ"),
        ('T', "ΤТ"),
        ('X', "ΧХ"),
        ('Y', "ΥУ"),
        ('Z', "Ζ"),
        ('a', "а"),
        ('c', "с"),
        ('e', "е"),
        ('i', "і"),
        ('o', "οо"),
        ('p', "р"),
        ('s', "ѕ"),
        ('x', "х"),
        ('y', "у"),
    ];
    Some(match sign {
        '\u{200b}'..='\u{200f}' | '\u{2060}' | '\u{feff}' | '\u{ad}' | '\u{fe0e}' | '\u{fe0f}' => {
            return None;
        }
        // Full-width letters, digits and signs.
        '\u{ff01}'..='\u{ff5e}' => char::from_u32(sign as u32 - 0xfee0).unwrap_or(sign),
        '\u{2002}'..='\u{200a}' | '\u{a0}' | '\u{202f}' | '\u{3000}' => ' ',
        '✕' | '✖' | '⨯' | '∗' | '╳' => '×',
        '⁄' | '∕' => '/',
        '‐' | '‑' | '‒' | '–' | '—' | '−' => '-',
        '‘' | '’' | '′' | '´' | 'ʼ' => '\'',
        '\u{370}'..='\u{4ff}' => {
            SHAPES.iter().find(|(_, like)| like.contains(sign)).map_or(sign, |(latin, _)| *latin)
        }
        _ => sign,
    })
}
