//! What the rooms offer besides formulas and calculations: readers, choices, tables of readings.

/// A function of a room.
#[derive(Debug)]
pub struct Function {
    /// The room; empty for what stands above the rooms.
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
    f("fibre", "equilibrium_regain", "The regain of clean wool in air of a relative humidity."),
    f("fibre", "humidity_for_regain", "The relative humidity that keeps clean wool at a regain."),
    f("fibre", "invoice", "The invoice mass of a lot at each of several allowances."),
    f("fibre", "clean_yields", "Every clean yield of a lot by each definition of the trade."),
    f("fibre", "test_wash", "The clean share of a lot from washed samples, with its interval."),
    f("fibre", "us_grade", "The grade of raw wool in the United States, from its fineness."),
    f("fibre", "will_spin", "Fibres in the section of a wool yarn, and what spinning needs."),
    f("yarn", "parse", "Reads a yarn: count, ends, twist, ply by ply.")
        .at("hankwise yarn 2/24 worsted"),
    f("yarn", "wraps", "The wraps per inch or cm that a yarn of a count may have."),
    f("yarn", "weight_class", "The hand-knitting weights (DK, Aran) into which a count falls."),
    f("yarn", "weight_band", "The bands of count that go with a hand-knitting word."),
    f("yarn", "ball_band", "What the band of a ball says: mass, length, weight class."),
    f("yarn", "round_tex", "Rounds a count in tex as the standard says."),
    f("yarn", "round_count", "Rounds a count in a system of its own."),
    f("cloth", "weave", "Reads a weave, analyses it, draws it.").at("hankwise weave 2/2 twill"),
    f("cloth", "satin_moves", "The moves that make a regular satin of a number of ends."),
    f("cloth", "draft", "A draft from threading, tie-up and treadling."),
    f("cloth", "plain_cloth", "All that Peirce's geometry gives for a plain cloth."),
    f("cloth", "process", "A finishing process and what it does to size and mass."),
    f("cloth", "finished_sample", "A finishing process as a measured sample went through it."),
    f("cloth", "finishing", "What finishing (scouring, milling, raising) makes of a cloth."),
    f("cloth", "to_weave", "What to weave for a finished cloth, allowing for its shrinkage."),
    f("cloth", "piece", "A woven piece from its finished size to reed, warp, weft and yarn."),
    f("cloth", "pieces_from_yarn", "The whole pieces that the yarn at hand makes."),
    f("cloth", "colour_order", "An order of colours over a number of ends or picks."),
    f(
        "cloth",
        "settings",
        "The maximum setts of a weave by each published theory: Ashenhurst, Peirce, Brierley.",
    )
    .at("hankwise settings plain --warp '16 YSW'"),
    f("cloth", "choose_reed", "The reed and the ends in a dent for a sett, from reeds you own."),
    f("mill", "cost_through", "What a kilogram costs as it goes through stages with losses."),
    f("mill", "compare_tariffs", "What a commission mill charges by each basis, for one lot."),
    f("mill", "balance", "What went into a stage against what came out of it."),
    f("mill", "week", "A week of lots over the machines: order, times, what does not fit."),
    f("mill", "blend", "What to weigh of each component of a blend."),
    f("mill", "evenness_of_blend", "How evenly a component is spread after stack and teaser."),
    f("quality", "chart", "A control chart of readings.").at("hankwise chart --help"),
    f("quality", "capability", "How readings stand to a tolerance: C_p, C_pk, P_p, P_pk."),
    f("quality", "summary", "Mean, standard deviation and variation, each with its interval."),
    f("quality", "deviations", "How far readings are from what was wanted."),
    f("quality", "skein_count", "The count of a yarn from the masses of skeins."),
    f("quality", "readings_needed", "How many readings give the mean within a share of it."),
    f("quality", "chart_constants", "The constants of control charts: A2, c4, d2 and others."),
    f("quality", "student_t", "Student's t for the mean of readings."),
    f("quality", "chi_square", "The chi-square below which a share lies."),
    f("plan", "load", "The plan of a lot: what it makes, what to set, how sure that is.")
        .at("hankwise plan --help"),
];
