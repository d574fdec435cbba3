//! How a step is written out: in symbols or numbers, as plain text, LaTeX or a cell of a sheet.

use std::cell::RefCell;

use super::constants::{of_pi, thirds};
use super::latex::number;
use super::tape::{Arg, Op, Recording};
use crate::quantity::print::{constant, constant_to, figure, significant};

/// The way in which an expression is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dialect {
    /// `t × √T / 100`
    Text,
    /// `t \cdot \frac{\sqrt{T}}{100}`
    Latex,
    /// `B3*SQRT(B4)/100`
    Sheet,
}

/// What is written for an operand at which the writing stops.
pub(super) enum Leaf {
    /// A finished word, such as a symbol or a cell.
    Word(String),
    /// A finished number, with its unit or without.
    Number(String),
    /// Not a leaf: write its own operands.
    Expand,
}

/// How tightly an operator binds; a looser operand goes into brackets.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
enum Binding {
    Sum,
    Product,
    Prefix,
    Atom,
}

pub(super) struct Writer<'a, F: Fn(usize) -> Leaf> {
    pub(super) recording: &'a Recording,
    pub(super) dialect: Dialect,
    pub(super) leaf: F,
    /// Digits of constants.
    pub(super) digits: usize,
    /// The constants that were written.
    pub(super) constants: RefCell<Vec<f64>>,
}

impl<'a, F: Fn(usize) -> Leaf> Writer<'a, F> {
    pub(super) fn new(recording: &'a Recording, dialect: Dialect, digits: usize, leaf: F) -> Self {
        Writer { recording, dialect, leaf, digits, constants: RefCell::default() }
    }
    /// An operand written over its own operands.
    #[cfg(feature = "sheet")]
    pub(super) fn arg(&self, arg: Arg) -> String {
        self.bare(arg)
    }

    /// The operation of a step written over its operands; the step itself is never a leaf.
    pub(super) fn step(&self, step: usize) -> String {
        self.operation(step).0
    }

    fn operand(&self, arg: Arg) -> (String, Binding) {
        match arg {
            Arg::Constant(x) => self.constant(x),
            Arg::Step(i) => match (self.leaf)(i) {
                // `cos θ₁` and `p/D` look like more than one thing where a power is set on them.
                Leaf::Word(word) if self.is_compound(&word) => (word, Binding::Prefix),
                Leaf::Word(word) => (word, Binding::Atom),
                Leaf::Number(number) if number.starts_with(['−', '-']) => {
                    (number, Binding::Prefix)
                }
                Leaf::Number(number) => (number, Binding::Atom),
                Leaf::Expand if self.recording.steps[i].args.is_empty() => {
                    (figure(self.recording.steps[i].value), Binding::Atom)
                }
                // A root found on the way has no closed form to write out.
                Leaf::Expand if matches!(self.recording.steps[i].op, Op::Solved(_)) => {
                    (self.root(i), Binding::Atom)
                }
                Leaf::Expand => self.operation(i),
            },
        }
    }

    fn is_compound(&self, word: &str) -> bool {
        match self.dialect {
            Dialect::Text => word.contains([' ', '/', '·', '√']),
            Dialect::Latex => {
                let signs = [r"\sin ", r"\cos ", r"\tan ", r"\sec ", r"\cdot", "^", "/"];
                !word.starts_with(r"\text") && signs.iter().any(|sign| word.contains(sign))
            }
            Dialect::Sheet => false,
        }
    }

    fn root(&self, step: usize) -> String {
        let value = self.recording.steps[step].value;
        match self.dialect {
            Dialect::Sheet => format!("{value}"),
            dialect => number(&significant(value, 9), dialect),
        }
    }

    fn constant(&self, x: f64) -> (String, Binding) {
        if x.is_nan() {
            let none = match self.dialect {
                Dialect::Text => "no answer",
                Dialect::Latex => r"\text{no answer}",
                Dialect::Sheet => "NA()",
            };
            return (none.to_owned(), Binding::Atom);
        }
        if self.dialect == Dialect::Sheet {
            // A sheet computes with the constant: every digit counts.
            return (format!("{x}"), if x < 0.0 { Binding::Prefix } else { Binding::Atom });
        }
        self.constants.borrow_mut().push(x);
        if let Some((times, over, above)) = of_pi(x) {
            return self.part_of_pi(times, over, above);
        }
        if let Some(thirds) = thirds(x) {
            let above = number(&constant(thirds).replace('-', "−"), self.dialect);
            return match self.dialect {
                Dialect::Latex => (format!(r"\frac{{{above}}}{{3}}"), Binding::Atom),
                _ => (format!("{above} / 3"), Binding::Product),
            };
        }
        let text = number(&constant_to(x, self.digits).replace('-', "−"), self.dialect);
        (text, if x < 0.0 { Binding::Prefix } else { Binding::Atom })
    }

    /// A multiple or a part of π: `1000 × π / 4`, `180 / π`.
    fn part_of_pi(&self, times: f64, over: f64, above: bool) -> (String, Binding) {
        let latex = self.dialect == Dialect::Latex;
        let (pi, sign) = if latex { (r"\pi", r" \cdot ") } else { ("π", " × ") };
        let (times, over) = (constant(times), constant(over));
        let with_pi = |x: &str| if x == "1" { pi.to_owned() } else { format!("{x}{sign}{pi}") };
        let (top, bottom) = if above { (with_pi(&times), over) } else { (times, with_pi(&over)) };
        match (bottom.as_str(), latex) {
            ("1", _) if top == pi => (top, Binding::Atom),
            ("1", _) => (top, Binding::Product),
            (_, true) => (format!(r"\frac{{{top}}}{{{bottom}}}"), Binding::Atom),
            (bottom, _) if bottom.contains(' ') => {
                (format!("{top} / ({bottom})"), Binding::Product)
            }
            (bottom, _) => (format!("{top} / {bottom}"), Binding::Product),
        }
    }

    /// What is left where an operation with a constant changes nothing: `x × 1`, `x + 0`.
    fn without(&self, op: Op, args: &[Arg]) -> Option<Arg> {
        let is = |k: usize, x: f64| args.get(k) == Some(&Arg::Constant(x));
        if self.dialect == Dialect::Sheet {
            return None;
        }
        match op {
            Op::Add if is(0, 0.0) => Some(args[1]),
            Op::Mul if is(0, 1.0) => Some(args[1]),
            Op::Add | Op::Sub if is(1, 0.0) => Some(args[0]),
            Op::Mul | Op::Div if is(1, 1.0) => Some(args[0]),
            _ => None,
        }
    }

    /// What a sheet rounds: a little more, or less, for the rounding of binary numbers.
    fn slack(&self, args: &[Arg], sign: char) -> String {
        match args.get(1) {
            Some(Arg::Constant(slack)) if *slack != 0.0 => {
                format!("{}{sign}{slack}", self.bare(args[0]))
            }
            _ => self.bare(args[0]),
        }
    }

    /// An operand on the right: two signs are not set beside each other.
    fn right(&self, arg: Arg, at_least: Binding) -> String {
        let text = self.bracketed(arg, at_least);
        match self.dialect {
            Dialect::Text if text.starts_with('−') => format!("({text})"),
            Dialect::Latex if text.starts_with('-') => format!(r"\left({text}\right)"),
            _ => text,
        }
    }

    fn bracketed(&self, arg: Arg, at_least: Binding) -> String {
        let (text, binding) = self.operand(arg);
        if binding < at_least {
            match self.dialect {
                Dialect::Latex => format!(r"\left({text}\right)"),
                Dialect::Text | Dialect::Sheet => format!("({text})"),
            }
        } else {
            text
        }
    }

    fn bare(&self, arg: Arg) -> String {
        self.operand(arg).0
    }

    fn function(&self, text: &str, latex: &str, sheet: &str, args: &[Arg]) -> (String, Binding) {
        let inner: Vec<String> = args.iter().map(|a| self.bare(*a)).collect();
        let written = match self.dialect {
            Dialect::Text => format!("{text}({})", inner.join(", ")),
            Dialect::Latex => format!(r"{latex}\left({}\right)", inner.join(", ")),
            Dialect::Sheet => format!("{sheet}({})", inner.join(",")),
        };
        (written, Binding::Atom)
    }

    fn equation(&self, step: usize) -> String {
        let residual = self.recording.roots.get(&step).map(|root| self.bare(root.residual));
        let of = match self.dialect {
            Dialect::Latex => r"\text{root of }",
            // A sheet holds the root as a value: see `sheet.rs`.
            Dialect::Text | Dialect::Sheet => "root of ",
        };
        format!("{of}{}", residual.unwrap_or_default())
    }

    fn branch(&self, args: &[Arg]) -> String {
        let [a, b, then, otherwise] = [0, 1, 2, 3].map(|k| self.bare(args[k]));
        match self.dialect {
            Dialect::Text => format!("({then} if {a} < {b}, else {otherwise})"),
            Dialect::Latex => format!(
                r"\begin{{cases}}{then} & {a} < {b}\\ {otherwise} & \text{{else}}\end{{cases}}"
            ),
            Dialect::Sheet => format!("IF({a}<{b},{then},{otherwise})"),
        }
    }

    fn quotient(&self, above: Arg, below: Arg) -> (String, Binding) {
        let sign = match self.dialect {
            Dialect::Latex => {
                let (above, below) = (self.bare(above), self.bare(below));
                return (format!(r"\frac{{{above}}}{{{below}}}"), Binding::Atom);
            }
            Dialect::Text => " / ",
            Dialect::Sheet => "/",
        };
        let left = self.bracketed(above, Binding::Product);
        (format!("{left}{sign}{}", self.right(below, Binding::Prefix)), Binding::Product)
    }

    fn operation(&self, step: usize) -> (String, Binding) {
        use Binding::{Atom, Prefix, Product, Sum};
        let args = &self.recording.steps[step].args;
        let dialect = self.dialect;
        let op = self.recording.steps[step].op;
        if let Some(left) = self.without(op, args) {
            return self.operand(left);
        }
        if let (Op::Mul, [_, Arg::Constant(x)]) = (op, &args[..])
            && dialect != Dialect::Sheet
            && let Some(over) = over_power_of_ten(*x)
        {
            return self.quotient(args[0], Arg::Constant(over));
        }
        match op {
            Op::Input => (figure(self.recording.steps[step].value), Atom),
            Op::Same => self.operand(args[0]),
            Op::Neg => {
                let minus = if dialect == Dialect::Text { "−" } else { "-" };
                (format!("{minus}{}", self.right(args[0], Prefix)), Prefix)
            }
            Op::Add => (format!("{} + {}", self.bare(args[0]), self.right(args[1], Product)), Sum),
            Op::Sub if args[0] == Arg::Constant(0.0) && dialect != Dialect::Sheet => {
                let minus = if dialect == Dialect::Text { "−" } else { "-" };
                (format!("{minus}{}", self.right(args[1], Prefix)), Prefix)
            }
            Op::Sub => {
                let minus = if dialect == Dialect::Text { "−" } else { "-" };
                let right = self.right(args[1], Product);
                (format!("{} {minus} {right}", self.bare(args[0])), Sum)
            }
            Op::Mul => {
                let sign = match dialect {
                    Dialect::Text => " × ",
                    Dialect::Latex => r" \cdot ",
                    Dialect::Sheet => "*",
                };
                let left = self.bracketed(args[0], Product);
                (format!("{left}{sign}{}", self.right(args[1], Product)), Product)
            }
            Op::Div => self.quotient(args[0], args[1]),
            Op::Sqrt => match dialect {
                Dialect::Text => (format!("√{}", self.bracketed(args[0], Atom)), Prefix),
                Dialect::Latex => (format!(r"\sqrt{{{}}}", self.bare(args[0])), Atom),
                Dialect::Sheet => (format!("SQRT({})", self.bare(args[0])), Atom),
            },
            Op::Power => {
                let base = self.bracketed(args[0], Atom);
                let raised = match args[1] {
                    Arg::Constant(2.0) => Some("²"),
                    Arg::Constant(3.0) => Some("³"),
                    _ => None,
                };
                if let (Dialect::Text, Some(raised)) = (dialect, raised) {
                    return (format!("{base}{raised}"), Prefix);
                }
                match dialect {
                    Dialect::Latex => (format!("{base}^{{{}}}", self.bare(args[1])), Prefix),
                    Dialect::Text | Dialect::Sheet => {
                        (format!("{base}^{}", self.bracketed(args[1], Atom)), Prefix)
                    }
                }
            }
            Op::Exp => self.function("exp", r"\exp", "EXP", args),
            Op::Ln => self.function("ln", r"\ln", "LN", args),
            Op::Sin => self.function("sin", r"\sin", "SIN", args),
            Op::Cos => self.function("cos", r"\cos", "COS", args),
            Op::Tan => self.function("tan", r"\tan", "TAN", args),
            Op::Atan => self.function("arctan", r"\arctan", "ATAN", args),
            // INT rounds towards minus infinity in every spreadsheet; ROUNDUP does not.
            Op::Floor if dialect == Dialect::Sheet => {
                (format!("INT({})", self.slack(args, '+')), Atom)
            }
            Op::Ceil if dialect == Dialect::Sheet => {
                (format!("-INT(-({}))", self.slack(args, '-')), Prefix)
            }
            Op::Floor => self.function("round down", r"\operatorname{round\,down}", "", &args[..1]),
            Op::Ceil => self.function("round up", r"\operatorname{round\,up}", "", &args[..1]),
            Op::Min => self.function("smaller of ", r"\min", "MIN", args),
            Op::Max => self.function("greater of ", r"\max", "MAX", args),
            Op::Chosen => self.function(
                "chosen for ",
                r"\operatorname{chosen}",
                // A sheet holds the part itself: see `sheet.rs`.
                "",
                args,
            ),
            Op::LookedUp => self.function("looked up for ", r"\operatorname{looked\,up}", "", args),
            Op::Solved(_) => (self.equation(step), Sum),
            Op::IfLess => (self.branch(args), Atom),
        }
    }
}

/// A small power of ten as what one divides by: 0.000001 is a million parts.
fn over_power_of_ten(x: f64) -> Option<f64> {
    let power = x.log10().round();
    (power <= -3.0 && (x / 10.0_f64.powf(power) - 1.0).abs() < 1e-12).then(|| 10.0_f64.powf(-power))
}
