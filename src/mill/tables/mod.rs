//! Handbook tables of the mill: a file each.

crate::handbook::tables! {
    COST_SHARES "cost_shares",
    MACHINE_FIGURES "machine_figures",
    OIL_ON_WOOL "oil_on_wool",
    REALISATION_NORMS "realisation_norms",
    SCOUR_LIQUORS "scour_liquors",
}
