//! Scour liquors as their sources give them, and oil on wool.

use crate::handbook::{Figure, Table};

pub(super) static SCOUR_LIQUORS: Table = Table {
    name: "scour_liquors",
    title: "Scour liquors for wool",
    about: "As each source gives them, gallons taken as imperial: no recipe of ours. Where two differ, the \
            cooler one with less alkali is the safer for the wool; the maker of the detergent comes first.",
    columns: &["work", "figure"],
    figures: &[
        Figure::band(&["hand scouring, 1902", "soap in the liquor"], 0.1, 0.2, "lb/imp gal")
            .read("Beech 1902", "hand scouring")
            .note("1 to 2 lb to 10 gallons"),
        Figure::band(&["hand scouring, 1902", "temperature"], 130.0, 140.0, "°F")
            .read("Beech 1902", "hand scouring")
            .note("not above"),
        Figure::one(&["wool for hats, 1906", "soap in the liquor"], 6.5, "oz/imp gal")
            .read("Watson Smith 1906", "scouring")
            .note("far more than Beech: prefer a source that names wool and temperature"),
        Figure::band(&["scouring with alkali", "temperature"], f64::NEG_INFINITY, 60.0, "°C")
            .read("Organic dye", "")
            .note("140 °F; alkali attacks wool the harder the hotter it is"),
        Figure::band(&["scouring with alkali", "pH"], f64::NEG_INFINITY, 10.0, "")
            .read("Organic dye", "")
            .note("not above it for long"),
        Figure::band(&["studio scouring, 2016", "temperature"], 140.0, 160.0, "°F")
            .read("Wool scouring 2016", "")
            .note("and boiling pots; the sources before prefer at most 140 °F"),
    ],
};

pub(super) static OIL_ON_WOOL: Table = Table {
    name: "oil_on_wool",
    title: "Oil and grease on wool",
    about: "On clean dry fibre unless the note says otherwise. The maker of the oil comes first.",
    columns: &["wool", "figure"],
    figures: &[
        Figure::band(&["woollen blend", "oil put on"], 5.0, 10.0, "%"),
        Figure::band(&["woollen blend", "emulsion put on"], 10.0, 20.0, "%"),
        Figure::one(&["scoured woollen yarn", "oil left"], 0.5, "%").note("about"),
        Figure::band(&["worsted, scoured wool", "grease left"], 0.3, 0.5, "%")
            .read("Woolmark topmaking", ""),
        Figure::band(&["worsted, top", "fatty matter aimed at"], 0.6, 1.0, "%")
            .read("Woolmark topmaking", "")
            .note("0.8 ± 0.2 %"),
        Figure::one(&["hand-spinner's fleece", "oil put on"], 14.0, "%")
            .read("Oiling 2016", "")
            .note("near; a quarter of a tablespoon for 25 g, worked out here"),
    ],
};
