//! What a lot file and a mill file may hold, table by table, and the guide to it.

use std::fmt::Write as _;

use super::goods::{CARDS, LOOM};
use super::lot::{Fleece, Labelled, Yarn, YarnInStock};
use super::stage::STAGES;
use super::tariff::{Charges, Least, LotCost};
use super::tree::heaps::Held;
use super::tree::read::Rejects;
use super::tree::routes::Changeover;
use crate::calculation::{Input, Item, Place, flat};
use crate::mill::run::reel::Reel;

/// A key that holds a name, a text, a list or a table of the user's own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Key {
    /// The key.
    pub name: &'static str,
    /// What it is.
    pub meaning: &'static str,
    /// How one would write it.
    pub like: &'static str,
}

const fn key(name: &'static str, meaning: &'static str, like: &'static str) -> Key {
    Key { name, meaning, like }
}

/// A table of a lot file or of a mill file.
#[derive(Clone, Debug)]
pub struct TableCard {
    /// Its name, such as `card`; of goods, their kind.
    pub name: &'static str,
    /// How its head is written, such as `[card]`.
    pub head: String,
    /// What it is for, in a sentence.
    pub summary: &'static str,
    /// The quantities that it asks.
    pub asks: Vec<&'static [Item]>,
    /// Its other keys.
    pub keys: &'static [Key],
}

/// Other keys of `[lot]` than those of its fleece.
pub(super) const OF_THE_LOT: [Key; 6] = [
    key("id", "what the lot is filed under; the name of the file if omitted", "\"2026-14\""),
    key("came", "the day on which it came", "2026-05-04"),
    key("due", "the day on which it is due", "2026-09-01"),
    key("name", "what the lot is called; the name of the file if omitted", "\"Hill lot\""),
    key("description", "what the wool is, in words", "\"medium, white\""),
    key("owner", "whose the wool is", "\"grower A\""),
];
/// Keys of a fleece, which `[lot]` may have itself.
pub(super) const OF_A_FLEECE: [Key; 3] = [
    key("colour", "a colour of `[colours]`", "\"grey\""),
    key(
        "sorts",
        "the sorts that it is divided into, with their shares",
        "{ fine = \"60 %\", coarse = \"rest\" }",
    ),
    key("like", "another fleece: what is not said here is as there", "\"hill\""),
];
pub(super) const OF_A_HEAP: [Key; 5] = [
    key(
        "of",
        "the fleeces or sorts in it: a list, or their shares of the dry fibre",
        "{ hill = \"40 %\", down = \"60 %\" }",
    ),
    key("route", "its stages, where they are not the usual ones", "[\"oil\", \"tease\"]"),
    key("split", "how it is weighed out to its yarns", "{ warp = \"40 %\", weft = \"rest\" }"),
    key("like", "another heap: what is not said here is as there", "\"fine\""),
    key("diameter", "the fineness that a blend is to have", "\"27 µm\""),
];
pub(super) const OF_A_YARN: [Key; 7] = [
    key("name", "what the one yarn of a lot is called", "\"two-fold\""),
    key("heap", "the heap that it is made of, where there are several", "\"fine\""),
    key("from", "the yarn that it is made from: dyed, or folded again", "\"natural\""),
    key("route", "its stages, or the kind of goods whose usual route it takes", "\"hank\""),
    key("instead", "other machines in the usual route", "{ mule = \"mule-2\" }"),
    key("like", "another yarn: what is not said here is as there", "\"two-fold\""),
    key("label", "a state of its own in which it is sold", "{ fat = \"1 %\" }"),
];
pub(super) const OF_GOODS: [Key; 8] = [
    key("kind", "hank, ball, cone, woven or piece", "\"hank\""),
    key("yarn", "the yarn, where there are several", "\"two-fold\""),
    key("warp", "the yarn of the warp, where it is not that of the weft", "\"warp\""),
    key("weft", "the yarn of the weft", "\"weft\""),
    key("route", "its stages after the yarn", "[\"cone\", \"loom\", \"finish\"]"),
    key("instead", "other machines in the usual route", "{ loom = \"loom-wide\" }"),
    key("like", "other goods: what is not said here is as there", "\"hank\""),
    key("takes_rest", "takes what the goods before leave", "true"),
];
/// Keys that any stage may have beside its own.
pub(super) const OF_A_STAGE: [Key; 13] = [
    key("kind", "what kind of stage it is, where its name does not say so", "\"loss\""),
    key("like", "another stage: what is not said here is as there", "\"mule\""),
    key("room", "the room of `[room]` whose regain the wool leaves with", "\"carding\""),
    key("recipe", "the recipe of `[recipe]`: what stays on", "\"indigo\""),
    key("look", "what to look for, printed under the setting", "\"A clear web.\""),
    key("listen", "what to listen for", "\"A dry rustle.\""),
    key("feel", "what to feel for", "\"The slubbing draws evenly.\""),
    key("to", "where its waste goes", "\"compost\""),
    key("cleared", "false where the machine begins full of the wool before", "false"),
    key(
        "changed",
        "a list of tables `[[STAGE.changed]]`: what was changed, and the values from that day on",
        "see below",
    ),
    key("date", "in `changed`: the day", "2026-03-02"),
    key("what", "in `changed`: what was done", "\"new clothing\""),
    key("resets", "in `changed`: the values that it affects; nothing uses it yet", "[\"loss\"]"),
];

/// What is charged, and what a lot costs.
const TARIFF: &[(&str, &str, &[Item], &[Key])] = &[
    (
        "[tariff]",
        "What the mill charges for a lot.",
        Least::<Place>::ITEMS,
        &[key("money", "the currency; only printed", "\"GBP\"")],
    ),
    ("[tariff.STAGE]", "What is charged at a machine.", Charges::<Place>::ITEMS, &[]),
    ("[cost]", "What a lot costs the mill.", LotCost::<Place>::ITEMS, &[]),
];

/// The names of some keys.
pub(super) fn names(keys: &[Key]) -> impl Iterator<Item = &'static str> {
    keys.iter().map(|key| key.name)
}

/// Every table whose keys are known; those of routes, rooms, recipes and the like hold names of the user's
/// own.
pub fn tables() -> Vec<TableCard> {
    let mut all = Vec::new();
    let mut add = |name, head: &str, summary, asks: &[&'static [Item]], keys| {
        let head = head.to_owned();
        all.push(TableCard { name, head, summary, asks: asks.to_vec(), keys });
    };
    add("lot", "[lot]", "What came in. One fleece: its keys stand here too.", &[], &OF_THE_LOT);
    add(
        "fleece",
        "[fleece.NAME]",
        "A fleece of the lot.",
        &[Fleece::<Place>::ITEMS, Rejects::<Place>::ITEMS],
        &OF_A_FLEECE,
    );
    add("heap", "[heap.NAME]", "What is carded together.", &[Held::<Place>::ITEMS], &OF_A_HEAP);
    add("yarn", "[yarn.NAME]", "A yarn to be made.", &[Yarn::<Place>::ITEMS], &OF_A_YARN);
    add(
        "stock",
        "[yarn.NAME] with `stock`",
        "A yarn that is there already: bought, or left over.",
        &[YarnInStock::<Place>::ITEMS],
        &[],
    );
    add(
        "label",
        "[label]",
        "The state in which goods are sold and masses are stated.",
        &[Labelled::<Place>::ITEMS],
        &[],
    );
    for (name, summary, asks) in CARDS {
        let head = match *name {
            "goods" => "[goods.NAME]".to_owned(),
            kind => format!("[goods.NAME] of the kind {kind}"),
        };
        let keys: &[Key] = if *name == "goods" { &OF_GOODS } else { &[] };
        add(name, &head, summary, &[asks], keys);
    }
    add("stage", "[STAGE]", "Any stage.", &[Changeover::<Place>::ITEMS], &OF_A_STAGE);
    for stage in STAGES {
        add(stage.name, &format!("[{}]", stage.name), stage.summary, &[stage.asks], &[]);
    }
    for (head, summary, asks, keys) in TARIFF {
        add("tariff", head, summary, &[asks], keys);
    }
    add("reel", "[reel]", "Reels the hanks.", &[Reel::<Place>::ITEMS], &[]);
    for (name, summary, asks) in LOOM {
        add(name, &format!("[{name}]"), summary, &[asks], &[]);
    }
    all
}

/// The guide to the keys, in Markdown: a table for each table of the files.
///
/// ```
/// assert!(hankwise::plan::guide().contains("| `held_up` |"));
/// ```
pub fn guide() -> String {
    let mut text = String::new();
    for table in tables() {
        let summary = table.summary.trim_end_matches('.');
        let _ = writeln!(text, "### {}: {}\n", table.head, lower(summary));
        text.push_str("| key | what it is | for example | if omitted | usual range |\n");
        text.push_str("|---|---|---|---|---|\n");
        for item in table.asks.iter().flat_map(|asks| flat(asks)) {
            let (like, omitted, usual) = cells(&item);
            let name = item.name();
            if !name.is_empty() {
                let meaning = item.meaning();
                let _ = writeln!(text, "| `{name}` | {meaning} | {like} | {omitted} | {usual} |");
            }
        }
        for Key { name, meaning, like } in table.keys {
            let _ = writeln!(text, "| `{name}` | {meaning} | `{like}` | – | – |");
        }
        text.push('\n');
    }
    text
}

/// The same with a small letter first.
fn lower(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// How one would write it, what holds where it is omitted, what is usual.
fn cells(item: &Item) -> (String, String, String) {
    let omitted = if item.is_needed() { "needed" } else { "–" }.to_owned();
    let nothing = || "–".to_owned();
    match item {
        Item::One(input) | Item::List(input) => {
            let omitted = input.default_words().unwrap_or(omitted);
            (format!("`{}`", input.example()), omitted, usual(input))
        }
        Item::Parts(parts) => {
            (format!("`{}`", parts.like), omitted, format!("`{}` sets one", parts.set))
        }
        Item::Word(word) => {
            let words: Vec<String> = word.words.iter().map(|(w, _)| format!("`\"{w}\"`")).collect();
            let default = word.default.map(|place| word.words[place].0.to_owned());
            (words.join(" or "), default.unwrap_or(omitted), nothing())
        }
        Item::Flag(..) => ("`true`".to_owned(), "false".to_owned(), nothing()),
        Item::Text(_) | Item::Rows(_) | Item::Group(_) | Item::Choice(_) => {
            (nothing(), omitted, nothing())
        }
    }
}

fn usual(input: &Input) -> String {
    if input.has_usual() && input.usual.1.is_finite() {
        input.usual_words()
    } else {
        "–".to_owned()
    }
}
