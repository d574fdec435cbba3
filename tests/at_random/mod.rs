//! Formulas, calculations and plans with random values, as people write them: three figures, in a
//! unit of the trade.

use hankwise::calculation::{Calculation, Given, Input, Item, PartsInput, Presence, Solved};
use hankwise::catalogue;
use hankwise::formula::Formula;
use hankwise::plan::{Plan, Run};
use hankwise::quantity::{Amount, Kind, Unit, parse_as, units};
use hankwise::worked::Working;
use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};

/// A source of random values.
pub(crate) struct Random(ChaCha8Rng);

impl Random {
    pub(crate) fn new(seed: u64) -> Random {
        Random(ChaCha8Rng::seed_from_u64(seed))
    }
    /// Evenly in 0 to 1.
    pub(crate) fn share(&mut self) -> f64 {
        (self.0.next_u64() >> 11) as f64 / (1_u64 << 53) as f64
    }
    pub(crate) fn below(&mut self, n: usize) -> usize {
        ((self.share() * n as f64) as usize).min(n - 1)
    }
    fn often(&mut self, share: f64) -> bool {
        self.share() < share
    }
    /// Within a range; evenly in its ratio where it spans decades.
    fn within(&mut self, (low, high): (f64, f64)) -> f64 {
        let share = self.share();
        if low > 0.0 && high / low > 20.0 {
            low * (high / low).powf(share)
        } else {
            low + (high - low) * share
        }
    }
    /// A value of a kind in one of its units, to three figures; a number of things as a whole one.
    fn text(&mut self, base: f64, kind: Kind) -> String {
        if kind == Kind::Count {
            return base.round().to_string();
        }
        let round = |x: f64| format!("{x:.2e}").parse::<f64>().unwrap_or(x);
        let all: Vec<&Unit> =
            units().filter(|u| u.kind == kind.family() && !u.symbol.is_empty()).collect();
        let handy = |u: &&&Unit| (0.1..20_000.0).contains(&u.from_base(base).abs());
        let handy: Vec<&Unit> = all.iter().filter(handy).copied().collect();
        let from = if handy.is_empty() { &all } else { &handy };
        if from.is_empty() {
            return round(base).to_string();
        }
        let unit = from[self.below(from.len())];
        format!("{} {}", round(unit.from_base(base)), unit.symbol)
    }
    /// The numbers of a text, each a little changed.
    pub(crate) fn near(&mut self, text: &str) -> String {
        let digit = |c: char| c.is_ascii_digit() || c == '.';
        let Some(start) = text.find(|c: char| c.is_ascii_digit()) else { return text.to_owned() };
        let length = text[start..].find(|c| !digit(c)).unwrap_or(text.len() - start);
        let number = &text[start..start + length];
        let changed = number.parse::<f64>().map_or(number.to_owned(), |x| {
            let factor = 0.85 + 0.3 * self.share();
            if number.contains('.') || x > 30.0 && text.len() > start + length {
                format!("{:.2e}", x * factor).parse::<f64>().unwrap_or(x).to_string()
            } else {
                (x * factor).round().max(1.0).to_string()
            }
        });
        format!("{}{changed}{}", &text[..start], &text[start + length..])
    }
}

/// The working of a formula; none where the values do not go together.
pub(crate) fn of_formula(formula: &Formula, random: &mut Random) -> Option<Working> {
    let (given, typed) = given(formula, random)?;
    formula.working(&given, &typed).ok()
}

/// Values for a formula, with their texts, that go together.
pub(crate) fn given(
    formula: &Formula,
    random: &mut Random,
) -> Option<(Vec<Amount>, Vec<Option<String>>)> {
    let members = 2 + random.below(2);
    let (mut given, mut typed) = (Vec::new(), Vec::new());
    for input in formula.inputs {
        let mut left = 1.0;
        for k in 0..if input.many { members } else { 1 } {
            let base = if input.whole {
                let share =
                    if k + 1 == members { left } else { (left * 0.5 * 100.0_f64).round() / 100.0 };
                left -= share;
                share
            } else {
                random.within(input.usual)
            };
            let text = if input.whole {
                format!("{} %", (base * 100.0).round())
            } else {
                random.text(base, input.kind)
            };
            given.push(parse_as(&text, input.kind).ok()?);
            typed.push(Some(text));
        }
    }
    let row: Vec<f64> = given.iter().map(Amount::base).collect();
    formula.answer(&row).ok().map(|_| (given, typed))
}

/// The workings of the results of a calculation; none where the values do not go together.
pub(crate) fn of_calculation(
    calculation: &'static Calculation,
    random: &mut Random,
) -> Vec<Working> {
    let Some(solved) = solved(calculation, random) else { return Vec::new() };
    solved.results().iter().filter_map(|found| solved.working(&found.name).ok()).collect()
}

/// The results of a calculation; none where the values do not go together.
pub(crate) fn solved(calculation: &'static Calculation, random: &mut Random) -> Option<Solved> {
    let mut given = calculation.blank();
    fill(&mut given, calculation.inputs, random)?;
    calculation.solve(given).ok()
}

const SOMETIMES: f64 = 0.35;

fn fill(given: &mut Given, items: &[Item], random: &mut Random) -> Option<()> {
    for item in items {
        let asked = item.is_needed() || random.often(SOMETIMES);
        match item {
            Item::Group(group) => {
                if !group.optional || random.often(SOMETIMES) {
                    fill(given, group.items, random)?;
                }
            }
            Item::Choice(choice) => {
                if choice.needed || random.often(SOMETIMES) {
                    let way = random.below(choice.ways.len());
                    fill(given, &choice.ways[way..=way], random)?;
                }
            }
            Item::Text(text) if !text.needed => {}
            _ if !asked => {}
            Item::One(input) => given.set_text(input.name, &one(input, random)).ok()?,
            Item::List(input) => {
                let all = [one(input, random), one(input, random), one(input, random)];
                given.set_text(input.name, &all.join(", ")).ok()?;
            }
            Item::Word(word) => {
                let at = random.below(word.words.len());
                given.set_text(word.name, word.words[at].0).ok()?;
            }
            Item::Text(text) => given.set_text(text.name, "plain").ok()?,
            Item::Flag(name, _) => given.set_text(name, "yes").ok()?,
            Item::Parts(PartsInput { name, like, .. }) => {
                given.set_text(name, like.trim_matches(['[', ']'])).ok()?;
            }
            Item::Rows(rows) => {
                for k in 0..2 {
                    let mut row = given.row(rows.name).ok()?;
                    if let Some(label) = rows.label {
                        let of =
                            if label == "name" { rows.name.trim_end_matches('s') } else { label };
                        let name = format!("{of} {}", k + 1);
                        row.set_text(label, &name).ok()?;
                    }
                    let items: Vec<Item> = rows
                        .items
                        .iter()
                        .filter(|i| rows.label != Some(i.name()))
                        .copied()
                        .collect();
                    fill(&mut row, &items, random)?;
                    given.add_row(rows.name, row).ok()?;
                }
            }
        }
    }
    Some(())
}

fn one(input: &Input, random: &mut Random) -> String {
    let example = input.example();
    let example = example.trim_matches('"');
    if let Presence::Default(base) = input.presence
        && base != 0.0
        && !input.whole
    {
        let base = base * (0.9 + 0.2 * random.share());
        return random.text(base, input.kind);
    }
    if !input.like.is_empty() || !input.has_usual() {
        let near = random.near(example);
        return match parse_as(&near, input.kind) {
            Ok(amount) if !input.whole => random.text(amount.base(), input.kind),
            _ => near,
        };
    }
    let base = random.within(input.usual);
    if input.whole { base.round().max(1.0).to_string() } else { random.text(base, input.kind) }
}

/// The workings of a plan: that of a lot file with its quantities a little changed.
pub(crate) fn of_plan(file: &str, random: &mut Random) -> Vec<Working> {
    let changed: Vec<String> = file
        .lines()
        .map(|line| match line.split_once(" = \"") {
            Some((key, text))
                if text.starts_with(|c: char| c.is_ascii_digit()) && random.often(0.5) =>
            {
                let (value, rest) = text.split_once('"').unwrap_or((text, ""));
                format!("{key} = \"{}\"{rest}", random.near(value))
            }
            _ => line.to_owned(),
        })
        .collect();
    let Ok(plan) = Plan::parse(&changed.join("\n"), "lot.toml") else { return Vec::new() };
    let Ok(result) = plan.run(&Run { lots: 0, seed: 1, threads: 1 }) else { return Vec::new() };
    result.workings().iter().filter_map(|name| result.working(name).ok()).collect()
}

/// The names of all formulas and calculations.
pub(crate) fn everything() -> (Vec<&'static Formula>, Vec<&'static Calculation>) {
    (catalogue::formulas().collect(), catalogue::calculations().collect())
}
