//! What machines do: read in the books, or from memory.

use crate::handbook::{Figure, Table};

const KNOCKANDO: &str = "mule at Knockando, 1870";
const CANADIAN: &str = "Canadian mule, 1910";

const fn spinning_mule(figure: Figure) -> Figure {
    figure.read("Canmore MV 000240", "")
}
const fn topmaking(figure: Figure) -> Figure {
    figure
        .read("Woolmark topmaking", "")
        .note("worsted; not for woollen yarn, which is spun in oil")
}

pub(super) static MACHINE_FIGURES: Table = Table {
    name: "machine_figures",
    title: "What machines of the mill do",
    about: "Figures of single machines and bands of many. Those from memory are to be confirmed; \
            measure your own machine before you count on either.",
    columns: &["machine", "what"],
    figures: &[
        Figure::band(&["card", "yield of wool"], 90.0, 95.0, "%").read("Carding page", ""),
        Figure::band(&["card", "end waste, of each doffer"], 2.0, 4.0, ""),
        Figure::band(&["woollen card", "ends of the condenser"], 60.0, 120.0, ""),
        Figure::band(&["woollen card", "width of the condenser"], 1.5, 2.5, "m"),
        Figure::band(&["woollen card", "delivery"], 10.0, 25.0, "m/min"),
        Figure::band(&["woollen card, small", "mass in an hour"], 5.0, 25.0, "kg/h"),
        Figure::band(&["woollen card", "loss"], 3.0, 8.0, "%").note("of what goes in"),
        Figure::band(&["willey and opening", "loss"], 1.0, 3.0, "%").note("of what goes in"),
        topmaking(Figure::band(&["worsted tops", "residual grease"], 0.3, 0.5, "%")),
        topmaking(Figure::one(&["worsted tops", "total fatty matter, aimed at"], 0.8, "%")),
        topmaking(Figure::one(
            &["worsted tops", "total fatty matter, allowed either way"],
            0.2,
            "%",
        )),
        spinning_mule(Figure::one(&[KNOCKANDO, "spindles"], 120.0, ""))
            .note("60 on each side of the headstock"),
        spinning_mule(Figure::band(&[KNOCKANDO, "time of a draw"], 22.0, 23.0, "s")),
        Figure::one(&[CANADIAN, "spindles"], 192.0, "").read("Custom Woolen Mills", ""),
        Figure::one(&[CANADIAN, "length of a draw"], 6.0, "ft")
            .read("Custom Woolen Mills", "")
            .note("about"),
        Figure::one(&["cotton mule", "length of a draw"], 60.0, "in")
            .read("Spinning mule summary", ""),
        Figure::band(&["mule, woollen", "efficiency"], 75.0, 90.0, "%"),
        Figure::band(&["ring frame, woollen", "draft"], 1.1, 1.6, ""),
        Figure::band(&["ring frame, woollen", "spindle speed"], 3000.0, 7000.0, "rpm"),
        Figure::one(&["ring frame, cotton", "lag of the traveller, full package"], 104.0, "rpm")
            .read("Rieter", "variation in yarn twist")
            .note("15 m/min"),
        Figure::one(&["ring frame, cotton", "lag of the traveller, empty package"], 191.0, "rpm")
            .read("Rieter", "variation in yarn twist")
            .note("15 m/min on 25 mm"),
        Figure::band(&["two-for-one twister", "spindle speed"], 4000.0, 10000.0, "rpm"),
        Figure::band(&["winder", "speed"], 300.0, 1000.0, "m/min"),
        Figure::band(&["spinning, woollen", "waste"], 2.0, 5.0, "%"),
        Figure::band(&["spinning, woollen", "ends broken in 1000 spindle hours"], 50.0, 200.0, ""),
        Figure::band(&["twisting", "waste"], 0.5, 2.0, "%"),
        Figure::band(&["winding", "waste"], 0.5, 1.0, "%"),
    ],
};
