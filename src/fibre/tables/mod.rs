//! Handbook tables of the fibre: a file each.

crate::handbook::tables! {
    ATMOSPHERES "atmospheres",
    BREED_YIELDS "breed_yields",
    CUSTOMS_CLEAN_WOOL "customs_clean_wool",
    FIBRE_DENSITIES "fibre_densities",
    FIBRE_SPREAD "fibre_spread",
    FLEECE_WEIGHTS "fleece_weights",
    GREASY_WOOL_COMPOSITION "greasy_wool_composition",
    MINIMUM_FIBRES "minimum_fibres",
    MOISTURE_ALLOWANCES "moisture_allowances",
    RAW_WOOL_LOSSES "raw_wool_losses",
    REGAIN_IN_STANDARD_ATMOSPHERE "regain_in_standard_atmosphere",
    WOOL_GRADES_TOP "wool_grades_top",
    WOOL_GRADES_US "wool_grades_us",
    WOOL_ISOTHERM "wool_isotherm",
}
