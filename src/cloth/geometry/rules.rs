//! Rules that do without solving: near the exact value, and named as rules.

use crate::formula::formula;
use crate::number::Number;
use crate::quantity::{Crimp, Diameter, Ratio, Sett, Thickness};

/// Height of the wave of a thread by the rule of the root.
#[formula(
    result = "h",
    sources = ["Peirce 1937", "Balasubramanian", "GATE solutions"],
    limits = ["a rule: factor 4/3 is Peirce's for use, √2 the first term of the series, 1.36 an examiner's; crimp_height is exact"],
    slips = ["crimp in percent"]
)]
pub fn crimp_height_by_rule<N: Number>(
    /// spacing of the threads crossed
    #[q("p", 0.1..=10.0)]
    spacing: Thickness<N>,
    /// crimp
    #[q("c", 0.0..=0.3)]
    crimp: Crimp<N>,
    /// factor
    #[q("k", 1.3..=1.45)]
    rule_factor: Ratio<N>,
) -> Thickness<N> {
    rule_factor * spacing * crimp.sqrt()
}

/// Crimp of the weft in plain cloth from that of the warp, by the rule of the root.
#[formula(
    result = "c₂",
    sources = ["Peirce 1937", "Balasubramanian", "GATE solutions"],
    limits = ["a rule: in a cloth of 12 % warp crimp the factors 4/3, 1.36 and √2 give 10.1, 9.3 and 8.0 % for 9.8 %; weft_crimp is exact"],
    slips = ["trusting its third digit"]
)]
pub fn weft_crimp_by_rule<N: Number>(
    /// ends
    #[q("n₁", 1.0..=60.0)]
    warp_sett: Sett<N>,
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// diameter of the warp
    #[q("d₁", 0.05..=3.0)]
    warp_diameter: Diameter<N>,
    /// diameter of the weft
    #[q("d₂", 0.05..=3.0)]
    weft_diameter: Diameter<N>,
    /// factor
    #[q("k", 1.3..=1.45)]
    rule_factor: Ratio<N>,
) -> Crimp<N> {
    let h1 = (rule_factor * 10.0 / weft_sett * warp_crimp.sqrt()).named([
        "h₁",
        "mm",
        "height of the warp's wave",
    ]);
    let h2 = (warp_diameter + weft_diameter - h1).named(["h₂", "mm", "height of the weft's wave"]);
    let root =
        (h2 * warp_sett / (10.0 * rule_factor)).named(["√c₂", "", "root of the crimp of the weft"]);
    h2.if_less(0.0, f64::NAN, root.squared())
}

/// Thickness of plain cloth, its waves by the rule of the root.
#[formula(
    result = "H",
    sources = ["GATE solutions", "memory"],
    limits = ["a rule; plain_thickness is exact for round threads"],
    slips = ["the crown of the warp for the thickness where that of the weft is higher"]
)]
pub fn thickness_by_rule<N: Number>(
    /// picks
    #[q("n₂", 1.0..=60.0)]
    weft_sett: Sett<N>,
    /// crimp of the warp
    #[q("c₁", 0.0..=0.3)]
    warp_crimp: Crimp<N>,
    /// diameter of the warp
    #[q("d₁", 0.05..=3.0)]
    warp_diameter: Diameter<N>,
    /// diameter of the weft
    #[q("d₂", 0.05..=3.0)]
    weft_diameter: Diameter<N>,
    /// factor
    #[q("k", 1.3..=1.45)]
    rule_factor: Ratio<N>,
) -> Thickness<N> {
    let h1 = (rule_factor * 10.0 / weft_sett * warp_crimp.sqrt()).named([
        "h₁",
        "mm",
        "height of the warp's wave",
    ]);
    let h2 = (warp_diameter + weft_diameter - h1).named(["h₂", "mm", "height of the weft's wave"]);
    let crown = (h1 + warp_diameter).max(h2 + weft_diameter);
    h2.if_less(0.0, f64::NAN, crown)
}
