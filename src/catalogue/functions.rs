//! What the rooms offer besides formulas and calculations: readers, choices, tables of readings.

/// A function of a room.
#[derive(Debug)]
pub struct Function {
    /// The room; empty for what is above the rooms.
    pub room: &'static str,
    /// Its name.
    pub name: &'static str,
    /// What it does, in a sentence.
    pub summary: &'static str,
    /// A line for the command line; empty where it has none.
    pub command: &'static str,
}

const fn f(room: &'static str, name: &'static str, summary: &'static str) -> Function {
    Function { room, name, summary, command: "" }
}

impl Function {
    const fn at(self, command: &'static str) -> Function {
        Function { command, ..self }
    }
}

/// Every function.
pub static FUNCTIONS: &[Function] = &[
    f("", "convert", "Numbers or a quantity in another unit.").at("hankwise convert 16 Nm YSW"),
    f("", "define_count", "Defines a count system of your own."),
    f("fibre", "allowance", "The agreed allowance for moisture of a fibre."),
    f("fibre", "allowances", "What each list allows for the moisture of a fibre, side by side."),
    f("fibre", "us_grade", "The grade of raw wool in the United States, from its fineness."),
    f("yarn", "parse", "Reads a yarn: count, ends, twist, ply by ply.")
        .at("hankwise yarn 2/17 worsted"),
    f("yarn", "weight_class", "The hand-knitting weights (DK, Aran) into which a count falls."),
    f("yarn", "weight_band", "The bands of count that go with a hand-knitting word."),
    f("yarn", "round_tex", "Rounds a count in tex as the standard says."),
    f("yarn", "round_count", "Rounds a count in a system of its own."),
    f("cloth", "weave", "Reads a weave, analyses it, draws it.").at("hankwise weave 2/2 twill"),
    f("cloth", "satin_moves", "The moves that make a regular satin of a number of ends."),
    f("cloth", "draft", "A draft from threading, tie-up and treadling."),
    f("cloth", "colour_order", "An order of colours over a number of ends or picks."),
    f("quality", "chart", "A control chart of readings.").at("hankwise chart --help"),
    f("quality", "capability", "How readings compare with a tolerance: C_p, C_pk, P_p, P_pk."),
    f("quality", "summary", "Mean, standard deviation and variation, each with its interval."),
    f("quality", "deviations", "How far readings are from what was wanted."),
    f("quality", "chart_constants", "The constants of control charts: A2, c4, d2 and others."),
    f("quality", "student_t", "Student's t for the mean of readings."),
    f("quality", "chi_square", "The chi-square below which a share lies."),
    f("plan", "load", "The plan of a lot: what it makes, what to set, how sure that is.")
        .at("hankwise plan --help"),
];
