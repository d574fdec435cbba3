//! How a step is written out: in symbols or numbers, as plain text, LaTeX or a cell of a sheet.

use super::latex::in_dialect;
use super::tape::{Arg, Op, Recording};
use crate::quantity::print::{constant, figure};

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
    /// A finished word, such as a symbol, a value with its unit, or a cell.
    Word(String),
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
}

impl<F: Fn(usize) -> Leaf> Writer<'_, F> {
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
                Leaf::Word(word) => (word, Binding::Atom),
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

    fn root(&self, step: usize) -> String {
        let symbol = self.recording.labels.get(&step).map(|label| label.symbol.as_str());
        match self.dialect {
            Dialect::Sheet => format!("{}", self.recording.steps[step].value),
            dialect => in_dialect(symbol.unwrap_or("x"), dialect),
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
        let text = match self.dialect {
            // A sheet computes with the constant: every digit counts.
            Dialect::Sheet => format!("{x}"),
            Dialect::Text | Dialect::Latex => constant(x),
        };
        (text, if x < 0.0 { Binding::Prefix } else { Binding::Atom })
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

    fn operation(&self, step: usize) -> (String, Binding) {
        use Binding::{Atom, Prefix, Product, Sum};
        let args = &self.recording.steps[step].args;
        let dialect = self.dialect;
        match self.recording.steps[step].op {
            Op::Input => (figure(self.recording.steps[step].value), Atom),
            Op::Same => self.operand(args[0]),
            Op::Neg => {
                let minus = if dialect == Dialect::Text { "−" } else { "-" };
                (format!("{minus}{}", self.bracketed(args[0], Prefix)), Prefix)
            }
            Op::Add => {
                (format!("{} + {}", self.bare(args[0]), self.bracketed(args[1], Product)), Sum)
            }
            Op::Sub => {
                let minus = if dialect == Dialect::Text { "−" } else { "-" };
                let right = self.bracketed(args[1], Product);
                (format!("{} {minus} {right}", self.bare(args[0])), Sum)
            }
            Op::Mul => {
                let sign = match dialect {
                    Dialect::Text => " × ",
                    Dialect::Latex => r" \cdot ",
                    Dialect::Sheet => "*",
                };
                let left = self.bracketed(args[0], Product);
                (format!("{left}{sign}{}", self.bracketed(args[1], Product)), Product)
            }
            Op::Div => match dialect {
                Dialect::Latex => {
                    (format!(r"\frac{{{}}}{{{}}}", self.bare(args[0]), self.bare(args[1])), Atom)
                }
                Dialect::Text | Dialect::Sheet => {
                    let sign = if dialect == Dialect::Text { " / " } else { "/" };
                    let left = self.bracketed(args[0], Product);
                    (format!("{left}{sign}{}", self.bracketed(args[1], Prefix)), Product)
                }
            },
            Op::Sqrt => match dialect {
                Dialect::Text => (format!("√{}", self.bracketed(args[0], Atom)), Prefix),
                Dialect::Latex => (format!(r"\sqrt{{{}}}", self.bare(args[0])), Atom),
                Dialect::Sheet => (format!("SQRT({})", self.bare(args[0])), Atom),
            },
            Op::Power => {
                let base = self.bracketed(args[0], Atom);
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
            Op::Floor => self.function("round down", r"\operatorname{round\,down}", "INT", args),
            Op::Ceil => match dialect {
                // INT rounds towards minus infinity in every spreadsheet; ROUNDUP does not.
                Dialect::Sheet => (format!("-INT(-({}))", self.bare(args[0])), Prefix),
                _ => self.function("round up", r"\operatorname{round\,up}", "", args),
            },
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
            Op::Solved(_) => {
                let residual = self.recording.roots.get(&step).map(|root| self.bare(root.residual));
                let zero = residual.unwrap_or_default();
                let of = match dialect {
                    Dialect::Latex => r"\text{root of }",
                    // A sheet holds the root as a value: see `sheet.rs`.
                    Dialect::Text | Dialect::Sheet => "root of ",
                };
                (format!("{of}{zero}"), Sum)
            }
            Op::IfLess => {
                let [a, b, then, otherwise] = [0, 1, 2, 3].map(|k| self.bare(args[k]));
                let written = match dialect {
                    Dialect::Text => format!("({then} if {a} < {b}, else {otherwise})"),
                    Dialect::Latex => format!(
                        r"\begin{{cases}}{then} & {a} < {b}\\ {otherwise} & \text{{else}}\end{{cases}}"
                    ),
                    Dialect::Sheet => format!("IF({a}<{b},{then},{otherwise})"),
                };
                (written, Atom)
            }
        }
    }
}
