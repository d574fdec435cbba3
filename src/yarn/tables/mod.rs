//! Handbook tables of the yarn: a file each.

crate::handbook::tables! {
    COUNT_CONSTANTS "count_constants",
    DIAMETER_FACTORS "diameter_factors",
    FOLDING_CONTRACTIONS "folding_contractions",
    FOLDING_TWIST_RATIOS "folding_twist_ratios",
    HAND_KNITTING_WEIGHTS "hand_knitting_weights",
    LEA_STRENGTH "lea_strength",
    PACKING "packing",
    REELS "reels",
    ROUNDED_COUNTS "rounded_counts",
    TWIST_MULTIPLIERS "twist_multipliers",
}
