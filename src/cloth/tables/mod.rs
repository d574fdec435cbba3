//! Handbook tables of the cloth: a file each.

crate::handbook::tables! {
    BRIERLEY_CONSTANTS "brierley_constants",
    BRIERLEY_EXPONENTS "brierley_exponents",
    DIMENSIONAL_CHANGE_SPECIMENS "dimensional_change_specimens",
    FINISHING_PROCESSES "finishing_processes",
    FINISHING_SHRINKAGES "finishing_shrinkages",
    GALCERAN_MATERIALS "galceran_materials",
    KNIT_MASS_CONSTANTS "knit_mass_constants",
    MUNDEN_CONSTANTS "munden_constants",
    REED_SYSTEMS "reed_systems",
    WEAVABILITY "weavability",
    WEAVING_LOAD_FACTORS "weaving_load_factors",
    WORKING_SETTS "working_setts",
    WRAPS_RULES "wraps_rules",
}
