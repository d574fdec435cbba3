//! What a calculation asks and answers, as data.

use crate::error::{Error, Result};
use crate::formula::{argument, is_usual};
use crate::quantity::print::{constant, of_kind};
use crate::quantity::{Amount, Kind, parse_as};
use crate::source::cited;

/// Whether an input has to be given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Presence {
    /// It has to be given.
    Needed,
    /// It may be omitted, and what depends on it is then omitted too.
    Optional,
    /// It may be omitted; this value, in the base unit, is then used.
    Default(f64),
}

/// One quantity that is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Input {
    /// Its name, as an argument.
    pub name: &'static str,
    /// Its symbol.
    pub symbol: &'static str,
    /// What it is, in words.
    pub meaning: &'static str,
    /// Its kind.
    pub kind: Kind,
    /// The usual range, in the base unit; outside it a warning is given. Infinite where none is usual.
    pub usual: (f64, f64),
    /// Key of the source of the usual range, see [`crate::source`].
    pub basis: &'static str,
    /// How one would write it; empty for the example of the kind.
    pub like: &'static str,
    /// Whether it has to be given.
    pub presence: Presence,
    /// 0 is possible.
    pub zero: bool,
    /// Only whole numbers are possible.
    pub whole: bool,
}

/// A word out of several.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Word {
    /// Its name, as an argument.
    pub name: &'static str,
    /// What it says.
    pub meaning: &'static str,
    /// The words, each with what it means.
    pub words: &'static [(&'static str, &'static str)],
    /// The place of the word that is taken when none is given.
    pub default: Option<usize>,
}

/// A text of the user's own: a name, a colour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Text {
    /// Its name, as an argument.
    pub name: &'static str,
    /// What it says.
    pub meaning: &'static str,
    /// It has to be given.
    pub needed: bool,
}

/// Parts that the mill owns, of which the nearest is used unless one is set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PartsInput {
    /// The name of the list, as an argument.
    pub name: &'static str,
    /// The name by which the one to use is set.
    pub set: &'static str,
    /// What they are.
    pub meaning: &'static str,
    /// Their kind.
    pub kind: Kind,
    /// How one would write the list.
    pub like: &'static str,
    /// They have to be given.
    pub needed: bool,
}

/// A list of things that are described alike: stages, components, goods.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rows {
    /// Its name, as an argument.
    pub name: &'static str,
    /// What is listed.
    pub meaning: &'static str,
    /// The name of the text that tells them apart, where there is one.
    pub label: Option<&'static str>,
    /// What is asked of each.
    pub items: &'static [Item],
    /// At least one has to be given.
    pub needed: bool,
}

/// Inputs that belong together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Group {
    /// All of them may be omitted together.
    pub optional: bool,
    /// What is different about the inputs here.
    pub adjust: &'static [Adjust],
    /// The inputs.
    pub items: &'static [Item],
}

/// Several ways to say one thing, of which one is taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Choice {
    /// What they say: `the draft`.
    pub what: &'static str,
    /// One of them has to be given.
    pub needed: bool,
    /// The ways.
    pub ways: &'static [Item],
}

/// What is different about an input of a group in one place: its usual range there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Adjust {
    /// The input.
    pub name: &'static str,
    /// The usual range here.
    pub usual: (f64, f64),
    /// Key of its source.
    pub basis: &'static str,
}

/// One thing that is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Item {
    /// A quantity.
    One(Input),
    /// A list of quantities.
    List(Input),
    /// A word out of several.
    Word(Word),
    /// A text of the user's own.
    Text(Text),
    /// Yes or no, no where it is not given: the name and what it says.
    Flag(&'static str, &'static str),
    /// Parts that the mill owns.
    Parts(PartsInput),
    /// A list of things that are described alike.
    Rows(Rows),
    /// Inputs that belong together.
    Group(Group),
    /// Several ways to say one thing.
    Choice(Choice),
}

/// One result.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Answer {
    /// Its name.
    pub name: &'static str,
    /// What it is, in words.
    pub meaning: &'static str,
    /// Its kind.
    pub kind: Kind,
    /// A short heading for it where results are in rows; empty for the name.
    pub head: &'static str,
    /// It may be missing, since it depends on inputs that may be omitted.
    pub optional: bool,
    /// A number of whole things, which is said as the nearest whole one whatever the arithmetic leaves.
    pub whole: bool,
}

/// One thing that is answered.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Output {
    /// A heading: the results after it are in its table.
    Block(&'static str),
    /// A result.
    One(Answer),
    /// A list of results of one kind.
    List(Answer),
    /// Results that belong together and may be missing together.
    Part {
        /// They may be missing.
        optional: bool,
        /// The results.
        outputs: &'static [Output],
    },
    /// Results in rows, such as one row for each stage.
    Rows {
        /// The name of the rows: `stages[1].cost`, or `card.cost` where each row has a name.
        name: &'static str,
        /// What they are.
        meaning: &'static str,
        /// The name of the text that tells them apart, where there is one.
        label: Option<&'static str>,
        /// The results of each row.
        outputs: &'static [Output],
    },
}

/// So many times outside the usual range is more likely a slip than a rare value.
const FAR: f64 = 3.0;

impl Input {
    /// How one would write it as an argument in Python.
    pub fn example(&self) -> String {
        let like = if self.like.is_empty() { self.kind.example() } else { self.like };
        argument(like, self.kind)
    }
    /// Refuses what cannot be; `typed` is the text of it, where there was one.
    pub fn check(&self, amount: &Amount, typed: Option<&str>) -> Result<()> {
        self.check_base(amount.base(), typed)
    }
    /// Refuses what cannot be, of a value in the base unit.
    pub fn check_base(&self, base: f64, typed: Option<&str>) -> Result<()> {
        self.kind.check(base)?;
        let shown = || typed.map_or_else(|| of_kind(base, self.kind), str::to_owned);
        if !self.zero && base == 0.0 {
            let or = if self.presence == Presence::Needed { "" } else { ", or omit it" };
            return Err(Error::range(format!(
                "{} is not possible for the {}; write it like {}{or}",
                shown(),
                self.meaning,
                self.example()
            )));
        }
        if self.whole && base != 0.0 && (base < 1.0 || base.fract() != 0.0) {
            let near = base.floor().max(1.0);
            return Err(Error::range(format!(
                "{} is not a whole number from 1 up ({}); write {near} or {}",
                shown(),
                self.meaning,
                near + 1.0
            )));
        }
        Ok(())
    }
    /// Whether any range is usual.
    pub fn has_usual(&self) -> bool {
        self.usual.0.is_finite()
    }
    /// The usual range in words, with what it rests on; empty where none is usual.
    pub fn usual_words(&self) -> String {
        let (low, high) = self.usual;
        if !self.has_usual() {
            return String::new();
        }
        format!(
            "{} to {} ({})",
            of_kind(low, self.kind),
            of_kind(high, self.kind),
            cited(self.basis)
        )
    }
    /// A usual value, in the base unit.
    pub(super) fn middle(&self) -> f64 {
        let (low, high) = self.usual;
        if self.has_usual() {
            return f64::midpoint(low, high);
        }
        parse_as(self.kind.example(), self.kind).map_or(f64::NAN, |amount| amount.base())
    }
    /// Whether a value is within the usual range, as a missing one (NaN) is.
    pub fn is_usual(&self, base: f64) -> bool {
        !self.has_usual() || is_usual(self.usual, base)
    }
    /// What to say of a value outside the usual range.
    pub fn unusual(&self, base: f64) -> Option<String> {
        (!self.is_usual(base)).then(|| {
            let value = of_kind(base, self.kind);
            format!("{} = {value} is unusual; the usual range is {}", self.name, self.usual_words())
        })
    }
    /// What to ask of a value that is so far outside the usual range that it may be a slip; `bare` where
    /// it was written without a unit.
    pub fn slip(&self, base: f64, bare: bool) -> Option<String> {
        let (low, high) = self.usual;
        let hundredth = base / 100.0;
        if bare && self.kind.family() == Kind::Fraction && (low..=high).contains(&hundredth) {
            let meant = of_kind(hundredth, self.kind);
            return Some(format!("Is \"{meant}\" meant?"));
        }
        let far = base > FAR * high || base < low / FAR;
        far.then(|| "Is the point in its place, and the unit right?".to_owned())
    }
    /// The value that is used when it is omitted, in words.
    pub fn default_words(&self) -> Option<String> {
        match self.presence {
            Presence::Default(base) => Some(self.say(base)),
            _ => None,
        }
    }
    /// A value of it in words.
    pub fn say(&self, base: f64) -> String {
        if self.kind == Kind::Count { constant(base) } else { of_kind(base, self.kind) }
    }
    fn adjusted(self, adjust: &[Adjust]) -> Input {
        match adjust.iter().find(|a| a.name == self.name) {
            Some(a) => Input { usual: a.usual, basis: a.basis, ..self },
            None => self,
        }
    }
}

impl Item {
    /// Its name; empty for what only holds others.
    pub fn name(&self) -> &'static str {
        match self {
            Item::One(input) | Item::List(input) => input.name,
            Item::Word(word) => word.name,
            Item::Text(text) => text.name,
            Item::Flag(name, _) => name,
            Item::Parts(parts) => parts.name,
            Item::Rows(rows) => rows.name,
            Item::Group(_) | Item::Choice(_) => "",
        }
    }
    /// What it is, in words.
    pub fn meaning(&self) -> &'static str {
        match self {
            Item::One(input) | Item::List(input) => input.meaning,
            Item::Word(word) => word.meaning,
            Item::Text(text) => text.meaning,
            Item::Flag(_, meaning) => meaning,
            Item::Parts(parts) => parts.meaning,
            Item::Rows(rows) => rows.meaning,
            Item::Group(_) => "",
            Item::Choice(choice) => choice.what,
        }
    }
    /// It as it is asked in a group: with the range that holds there, optional where the group is.
    fn within(&self, adjust: &[Adjust], loose: bool) -> Item {
        let input = |input: &Input| {
            let input = input.adjusted(adjust);
            let presence = match input.presence {
                Presence::Needed if loose => Presence::Optional,
                other => other,
            };
            Input { presence, ..input }
        };
        match self {
            Item::One(one) => Item::One(input(one)),
            Item::List(one) => Item::List(input(one)),
            Item::Parts(parts) => {
                Item::Parts(PartsInput { needed: parts.needed && !loose, ..*parts })
            }
            Item::Text(text) => Item::Text(Text { needed: text.needed && !loose, ..*text }),
            Item::Rows(rows) => Item::Rows(Rows { needed: rows.needed && !loose, ..*rows }),
            Item::Word(word) if loose => {
                Item::Word(Word { default: word.default.or(Some(0)), ..*word })
            }
            Item::Word(_) | Item::Flag(..) | Item::Group(_) | Item::Choice(_) => *self,
        }
    }
    /// True where it has to be given, whatever else is.
    pub fn is_needed(&self) -> bool {
        match self {
            Item::One(input) | Item::List(input) => input.presence == Presence::Needed,
            Item::Word(word) => word.default.is_none(),
            Item::Text(text) => text.needed,
            Item::Parts(parts) => parts.needed,
            Item::Rows(rows) => rows.needed,
            Item::Flag(..) | Item::Group(_) | Item::Choice(_) => false,
        }
    }
}

/// What is asked for, one after another: the members of groups and choices in their places. Of these
/// none has to be given; what has, otherwise, says so.
pub fn flat(items: &[Item]) -> Vec<Item> {
    let mut all = Vec::new();
    gather(items, &[], false, &mut all);
    all
}

/// The first that a name belongs to, as [`flat`] has it; of owned parts also the one that is set.
pub(super) fn named(items: &[Item], name: &str) -> Option<Item> {
    let mut found = None;
    walk(items, &[], false, &mut |item, adjust, loose| {
        let is = match item {
            Item::Parts(parts) => parts.name == name || parts.set == name,
            _ => item.name() == name,
        };
        if is {
            found = Some(item.within(adjust, loose));
        }
        is
    });
    found
}

/// The first name for which something is so, of all that is asked; of owned parts also the one that is set.
pub(super) fn any_name(items: &[Item], is: impl Fn(&str) -> bool) -> Option<&'static str> {
    let mut found = None;
    walk(items, &[], false, &mut |item, _, _| {
        found = match item {
            Item::Parts(parts) => [parts.name, parts.set].into_iter().find(|name| is(name)),
            _ => Some(item.name()).filter(|name| is(name)),
        };
        found.is_some()
    });
    found
}

fn gather(items: &[Item], adjust: &[Adjust], loose: bool, all: &mut Vec<Item>) {
    walk(items, adjust, loose, &mut |item, adjust, loose| {
        all.push(item.within(adjust, loose));
        false
    });
}

/// Goes through what is asked, groups and choices in their places, with the ranges that hold there and
/// whether a group or choice around it makes it optional; `true` ends the walk.
fn walk(
    items: &[Item],
    adjust: &[Adjust],
    loose: bool,
    see: &mut impl FnMut(&Item, &[Adjust], bool) -> bool,
) -> bool {
    items.iter().any(|item| match item {
        Item::Group(group) => {
            let adjust = if group.adjust.is_empty() { adjust } else { group.adjust };
            walk(group.items, adjust, loose || group.optional, see)
        }
        Item::Choice(choice) => walk(choice.ways, adjust, true, see),
        _ => see(item, adjust, loose),
    })
}

/// Every result that has a name of its own, in order: those of parts in their places, those of rows
/// as their card has them.
pub fn answers(outputs: &'static [Output]) -> Vec<&'static Answer> {
    let mut all = Vec::new();
    for output in outputs {
        match output {
            Output::One(answer) | Output::List(answer) => all.push(answer),
            Output::Part { outputs, .. } => all.extend(answers(outputs)),
            Output::Block(_) | Output::Rows { .. } => {}
        }
    }
    all
}
