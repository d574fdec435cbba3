//! The goods of a new lot, from words such as `throw:12,hank:50g:120`.

use std::fmt::Write as _;

use crate::error::{Error, Result, or_near};
use crate::quantity::{Kind, parse_as};

/// Goods that have a name in the trade: kind, and usual sizes (from memory).
struct Usual {
    name: &'static str,
    /// What the goods are called in the file: the name of a stage is taken.
    called: &'static str,
    kind: &'static str,
    /// Mass, or width and length.
    size: Size,
    /// What else the file says of them.
    more: &'static str,
}

enum Size {
    Mass(&'static str),
    Cloth(&'static str, &'static str),
}

const USUAL: [Usual; 8] = [
    Usual { name: "hank", called: "hank", kind: "hank", size: Size::Mass("100 g"), more: "" },
    Usual { name: "ball", called: "ball", kind: "ball", size: Size::Mass("50 g"), more: "" },
    Usual { name: "cone", called: "yarn-cone", kind: "cone", size: Size::Mass("1 kg"), more: "" },
    Usual {
        name: "throw",
        called: "throw",
        kind: "woven",
        size: Size::Cloth("1.40 m", "1.80 m"),
        more: "fringe = \"0.12 m\"\n",
    },
    Usual {
        name: "blanket",
        called: "blanket",
        kind: "woven",
        size: Size::Cloth("1.80 m", "2.20 m"),
        more: "",
    },
    Usual {
        name: "shawl",
        called: "shawl",
        kind: "woven",
        size: Size::Cloth("0.70 m", "1.90 m"),
        more: "fringe = \"0.10 m\"\n",
    },
    Usual {
        name: "scarf",
        called: "scarf",
        kind: "woven",
        size: Size::Cloth("0.30 m", "1.70 m"),
        more: "fringe = \"0.08 m\"\n",
    },
    Usual {
        name: "rug",
        called: "rug",
        kind: "piece",
        size: Size::Cloth("0.70 m", "1.20 m"),
        more: "mass_per_area = \"1800 g/m2\"\n",
    },
];

/// The goods of a lot.
pub(super) struct Goods {
    /// Their tables.
    pub(super) text: String,
    /// Of which kinds they are.
    pub(super) kinds: Vec<&'static str>,
}

/// Reads the goods; the last takes what the others leave.
pub(super) fn goods(words: &str) -> Result<Goods> {
    let parts: Vec<&str> = words.split(',').map(str::trim).collect();
    let mut goods = Goods { text: String::new(), kinds: Vec::new() };
    let mut names: Vec<String> = Vec::new();
    for (place, part) in parts.iter().enumerate() {
        let last = place + 1 == parts.len();
        let mut said = part.split(':').map(str::trim);
        let usual = named(said.next().unwrap_or_default())?;
        let times = names.iter().filter(|name| *name == usual.name).count() + 1;
        names.push(usual.name.to_owned());
        let called =
            if times == 1 { usual.called.to_owned() } else { format!("{}-{times}", usual.called) };
        let (mut size, mut promised): (Option<String>, Option<u32>) = (None, None);
        for word in said {
            let plain = !word.is_empty() && word.bytes().all(|byte| byte.is_ascii_digit());
            let twice = if plain { promised.is_some() } else { size.is_some() };
            if twice {
                return Err(Error::notation(format!(
                    "goods: '{part}' says the same twice; write it like throw:12 or hank:50g:120"
                )));
            }
            if plain {
                promised = Some(many(word)?);
            } else {
                size = Some(sized(usual, word)?);
            }
        }
        if promised.is_none() && !last {
            return Err(Error::notation(format!(
                "goods: how many of '{part}' is missing; write it like {}:12. Only the last may take the \
                 rest",
                usual.name
            )));
        }
        let size = size.unwrap_or_else(|| usual.size());
        let _ = writeln!(goods.text, "\n[goods.{called}]\nkind = \"{}\"\n{size}", usual.kind);
        goods.text.push_str(usual.more);
        if let Some(promised) = promised {
            let _ = writeln!(goods.text, "promised = {promised}");
        }
        if last {
            goods.text.push_str("takes_rest = true    # and all that is left\n");
        }
        if !goods.kinds.contains(&usual.kind) {
            goods.kinds.push(usual.kind);
        }
    }
    Ok(goods)
}

impl Usual {
    /// The usual size.
    fn size(&self) -> String {
        match self.size {
            Size::Mass(mass) => format!("mass = \"{mass}\"    # usual, from memory"),
            Size::Cloth(width, length) => {
                format!("width = \"{width}\"     # usual, from memory\nlength = \"{length}\"")
            }
        }
    }
}

fn named(name: &str) -> Result<&'static Usual> {
    let is = |usual: &&Usual| {
        let plural = name.strip_suffix('s').unwrap_or(name);
        usual.name == name || usual.name == plural || (usual.name == "scarf" && name == "scarves")
    };
    USUAL.iter().find(is).ok_or_else(|| {
        let known: Vec<&str> = USUAL.iter().map(|usual| usual.name).collect();
        let near = or_near(name, &known);
        let all = known.join(", ");
        Error::notation(format!("goods: unknown '{name}'{near} Goods: {all}"))
    })
}

fn many(word: &str) -> Result<u32> {
    let number: Option<u32> = word.parse().ok().filter(|n| (1..=1_000_000).contains(n));
    number.ok_or_else(|| {
        Error::range(format!("goods: {word} is not possible; write how many, from 1 to 1000000"))
    })
}

/// A size that was said: a mass, or width × length.
fn sized(usual: &Usual, word: &str) -> Result<String> {
    let above = |word: &str, kind: Kind, like: &str| {
        let amount = parse_as(word, kind).ok().filter(|amount| amount.base() > 0.0);
        amount.map(|_| super::text(word)).ok_or_else(|| {
            Error::notation(format!(
                "goods: '{word}' is not a size of a {}; write it like {}:{like}",
                usual.name, usual.name
            ))
        })
    };
    match usual.size {
        Size::Mass(_) => Ok(format!("mass = {}", above(word, Kind::Mass, "50g")?)),
        Size::Cloth(..) => {
            let (width, length) = word.split_once(['x', '×']).unwrap_or((word, ""));
            // 1.4x1.8m: the unit of the second is that of both.
            let unit = length.trim_start_matches(|c: char| c.is_ascii_digit() || c == '.').trim();
            let bare = width.trim().bytes().all(|byte| byte.is_ascii_digit() || byte == b'.');
            let width = if bare { format!("{} {unit}", width.trim()) } else { width.to_owned() };
            let width = above(&width, Kind::Length, "1.4x1.8m")?;
            Ok(format!("width = {width}\nlength = {}", above(length, Kind::Length, "1.4x1.8m")?))
        }
    }
}
