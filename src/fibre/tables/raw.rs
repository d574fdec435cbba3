//! Raw wool: what it holds, what breeds yield, what is lost.

use crate::handbook::{Figure, Table};

const fn customs(of: &'static [&'static str], share: f64) -> Figure {
    Figure::one(of, share, "%").read("19 CFR 151", "151.61")
}

pub(super) static CUSTOMS: Table = Table {
    name: "customs_clean_wool",
    title: "Clean wool of the United States customs",
    about: "What clean content carries, and the allowance that is taken off it for clean yield.",
    columns: &["of", "figure"],
    figures: &[
        customs(&["clean content", "moisture"], 12.0),
        customs(&["clean content", "alcohol extract"], 1.5),
        customs(&["clean content", "ash"], 0.5).note("at most"),
        customs(&["allowance", "share of clean content"], 0.5),
        customs(&["allowance", "share of vegetable matter"], 60.0),
        customs(&["allowance", "at most, of clean content"], 15.0),
    ],
};

const fn analysed(of: &'static [&'static str], share: f64) -> Figure {
    Figure::one(of, share, "%").read("Britannica 1929", "Wool, p. 5")
}
const HEADS: &str = "its head is lost in the scan; do not label it";
const SUM: &str = "of the six figures printed; not 100";

pub(super) static COMPOSITION: Table = Table {
    name: "greasy_wool_composition",
    title: "What wool in the grease is made of",
    about: "Analyses by Barker and Wilson. The heads of the columns are lost in the scan: the first is taken \
            to be wool, the others cannot be labelled. The ranges are New Zealand wools of 1909.",
    columns: &["wool", "part"],
    figures: &[
        analysed(&["Merino", "wool"], 45.0),
        analysed(&["Merino", "second figure"], 9.0).note(HEADS),
        analysed(&["Merino", "third figure"], 13.0).note(HEADS),
        analysed(&["Merino", "fourth figure"], 24.0).note(HEADS),
        analysed(&["Merino", "fifth figure"], 4.0).note(HEADS),
        analysed(&["Merino", "sixth figure"], 6.0).note(HEADS),
        analysed(&["Merino", "total"], 101.0).note(SUM),
        analysed(&["Corriedale", "wool"], 54.0),
        analysed(&["Corriedale", "second figure"], 13.0).note(HEADS),
        analysed(&["Corriedale", "third figure"], 10.0).note(HEADS),
        analysed(&["Corriedale", "fourth figure"], 12.0).note(HEADS),
        analysed(&["Corriedale", "fifth figure"], 5.9).note(HEADS),
        analysed(&["Corriedale", "sixth figure"], 6.0).note(HEADS),
        analysed(&["Corriedale", "total"], 100.9).note(SUM),
        analysed(&["Southdown", "wool"], 50.0),
        analysed(&["Southdown", "second figure"], 11.0).note(HEADS),
        analysed(&["Southdown", "third figure"], 16.0).note(HEADS),
        analysed(&["Southdown", "fourth figure"], 10.0).note(HEADS),
        analysed(&["Southdown", "fifth figure"], 5.2).note(HEADS),
        analysed(&["Southdown", "sixth figure"], 8.0).note(HEADS),
        analysed(&["Southdown", "total"], 100.2).note(SUM),
        Figure::band(&["New Zealand, fleece", "pure fibre"], 50.0, 70.0, "%")
            .read("Royal Society NZ 1909", ""),
        Figure::one(&["New Zealand, slipe", "pure fibre"], 75.0, "%")
            .read("Royal Society NZ 1909", "")
            .note("about"),
        Figure::band(&["New Zealand, fleece", "fat"], f64::NEG_INFINITY, 17.0, "%")
            .read("Royal Society NZ 1909", "")
            .note("up to nearly"),
        Figure::band(&["New Zealand, fleece", "suint"], f64::NEG_INFINITY, 13.0, "%")
            .read("Royal Society NZ 1909", "")
            .note("up to nearly"),
    ],
};

const fn listed(breed: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(breed, low, high, "%").read("Breed yield table", "")
}
const fn directory(breed: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(breed, low, high, "%").read("Breed directory", "")
}
const fn sheet(breed: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(breed, low, high, "%").read("Breed sheet", "")
}

pub(in crate::fibre) static BREED_YIELDS: Table = Table {
    name: "breed_yields",
    title: "Clean yield of breeds",
    about: "None of the sources says at what regain, nor how it was measured: a first guess for a lot that \
            has not come yet. Test the lot.",
    columns: &["breed"],
    figures: &[
        listed(&["Merino"], 45.0, 55.0),
        sheet(&["Rambouillet"], 35.0, 55.0),
        sheet(&["Targhee"], 50.0, 55.0),
        listed(&["Corriedale"], 50.0, 60.0),
        listed(&["Columbia"], 45.0, 55.0),
        listed(&["Dorset"], 50.0, 65.0),
        Figure::band(&["Dorset"], 50.0, 70.0, "%").read("Breed standards 2009", ""),
        listed(&["Cheviot"], 50.0, 60.0),
        directory(&["Southdown"], 55.0, 65.0),
        listed(&["Hampshire"], 50.0, 60.0),
        listed(&["Montadale"], 50.0, 60.0),
        listed(&["Suffolk"], 50.0, 60.0),
        listed(&["Shropshire"], 50.0, 60.0),
        listed(&["Oxford"], 50.0, 60.0),
        listed(&["Finnsheep"], 50.0, 70.0),
        listed(&["Romney"], 55.0, 70.0),
        listed(&["Lincoln"], 55.0, 70.0),
        listed(&["Border Leicester"], 60.0, 70.0),
        listed(&["Bluefaced Leicester"], 75.0, 80.0),
        directory(&["Awassi"], 60.0, 70.0),
        listed(&["Karakul"], 80.0, 85.0),
    ],
};

const fn chart(breed: &'static [&'static str], low: f64, high: f64) -> Figure {
    Figure::band(breed, low, high, "lb").read("Held breed chart", "")
}

pub(super) static FLEECES: Table = Table {
    name: "fleece_weights",
    title: "Weight of a fleece in the grease",
    about: "The kilograms that the chart prints beside its pounds are wrong in places; the pounds stand here.",
    columns: &["breed"],
    figures: &[
        chart(&["Merino"], 7.0, 10.0),
        Figure::band(&["Rambouillet"], 8.0, 18.0, "lb").read("Breed sheet", ""),
        Figure::band(&["Targhee"], 10.0, 14.0, "lb").read("Breed sheet", ""),
        Figure::band(&["Corriedale"], 10.0, 17.0, "lb").read("Breed standards 2009", ""),
        chart(&["Columbia"], 11.0, 13.0),
        Figure::band(&["Dorset"], 5.0, 9.0, "lb").read("Breed standards 2009", ""),
        chart(&["Cheviot"], 5.0, 7.0),
        Figure::band(&["Southdown"], 3.0, 5.0, "lb").read("Breed directory", ""),
        chart(&["Hampshire"], 7.0, 11.0),
        chart(&["Finnish Landrace"], 5.0, 7.0),
        chart(&["Lincoln"], 12.0, 20.0),
        chart(&["Herdwick"], 3.0, 4.0),
        Figure::band(&["Awassi"], 4.0, 7.0, "lb").read("Breed directory", ""),
        chart(&["Karakul"], 8.0, 8.0),
        Figure::one(&["United States, mean"], 7.2, "lb").read("Fleece article", ""),
    ],
};

pub(super) static LOSSES: Table = Table {
    name: "raw_wool_losses",
    title: "What is lost before the card",
    about: "Few mills print theirs. The bases differ: read the words of each.",
    columns: &["what", "of"],
    figures: &[
        Figure::one(&["sorting rejects charged for above", "mass that comes in"], 15.0, "%")
            .read("Custom mill leaflet", "")
            .note("one mill"),
        Figure::band(&["washing alpaca", "clean blanket fibre"], 3.0, 7.0, "%")
            .read("Alpaca losses", ""),
        Figure::band(&["whole route", "mass that comes in"], 30.0, 60.0, "%")
            .read("Alpaca losses", "")
            .note("as clients report"),
    ],
};
