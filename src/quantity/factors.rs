//! Units of factors: a twist or a sett by the root of the count, and the root of the count by the
//! length of a loop.
//!
//! They are made from the count systems, so they are looked up after them.

use std::sync::LazyLock;

use super::kind::Kind;
use super::lookup::unit;
use super::unit::Form::{Over, Per, Times};
use super::unit::{Unit, plain};

/// The kinds whose units are here.
pub(super) const KINDS: [Kind; 3] = [Kind::TwistFactor, Kind::CoverFactor, Kind::TightnessFactor];

pub(super) static FACTORS: LazyLock<Vec<Unit>> =
    LazyLock::new(|| [twist(), cover(), tightness()].concat());

/// The tex of number 1 of an indirect count.
fn hank(system: &str) -> Option<f64> {
    match unit(system, Some(Kind::LinearDensity)).ok()?.form {
        Over(constant) => Some(constant),
        _ => None,
    }
}

/// Threads in an inch by the root of an indirect count, in threads/cm × √tex ÷ 10.
pub(super) fn cover_form(constant: f64) -> super::Form {
    Times(constant.sqrt() / 25.4)
}

/// Twist factors that go with a count system, by its tex·count and the turns' unit.
fn twist() -> Vec<Unit> {
    let mut all = vec![
        plain(
            "turns/cm √tex",
            &["turns/cm·√tex", "turns/cm sqrt(tex)", "K"],
            Kind::TwistFactor,
            Times(1.0),
            "turns/cm × √tex",
        ),
        plain(
            "turns/m √tex",
            &["turns/m·√tex", "turns/m sqrt(tex)"],
            Kind::TwistFactor,
            Per(100.0),
            "turns/m × √tex",
        ),
        plain(
            "turns/10 cm √tex",
            &["turns/10 cm·√tex"],
            Kind::TwistFactor,
            Per(10.0),
            "turns/10 cm × √tex",
        ),
    ];
    let mut add = |symbol, names, system: &str, per_metre: bool, definition| {
        if let Some(constant) = hank(system) {
            // turns/length ÷ √count, in turns/cm × √tex: √(tex·count) ÷ the length in cm.
            let centimetres = if per_metre { 100.0 } else { 2.54 };
            let factor = constant.sqrt() / centimetres;
            all.push(plain(symbol, names, Kind::TwistFactor, Times(factor), definition));
        }
    };
    add("α_m", &["alpha_m", "turns/m/√Nm"], "Nm", true, "turns/m ÷ √Nm");
    add(
        "tpi/√Ne",
        &["tpi/sqrt(Ne)", "TM cotton"],
        "Ne",
        false,
        "turns/in ÷ √(English cotton count)",
    );
    add(
        "tpi/√worsted",
        &["tpi/sqrt(worsted)", "TM worsted"],
        "worsted",
        false,
        "turns/in ÷ √(worsted count)",
    );
    add("tpi/√YSW", &["tpi/sqrt(YSW)"], "YSW", false, "turns/in ÷ √(Yorkshire skeins)");
    add("tpi/√gala", &["tpi/sqrt(gala)"], "galashiels-cut", false, "turns/in ÷ √(Galashiels cuts)");
    add(
        "tpi/√NeL",
        &["tpi/sqrt(NeL)", "tpi/√american-cut"],
        "NeL",
        false,
        "turns/in ÷ √(leas or American cuts of 300 yd/lb)",
    );
    add("tpi/√run", &["tpi/sqrt(run)"], "american-run", false, "turns/in ÷ √(American runs)");
    all
}

/// Cover factors: one unit for each form in print, so that two forms are never taken for one another.
fn cover() -> Vec<Unit> {
    let mut all = vec![plain(
        "K_SI",
        &["threads/cm √tex/10", "K SI", "K_tex", "K tex"],
        Kind::CoverFactor,
        Times(1.0),
        "threads/cm × √tex ÷ 10",
    )];
    all[0].source = "Woven fabric handout";
    let mut add = |symbol, names, system, source, definition| {
        if let Some(constant) = hank(system) {
            let form = cover_form(constant);
            all.push(Unit {
                symbol,
                names,
                kind: Kind::CoverFactor,
                form,
                definition,
                source,
                rests_on: None,
            });
        }
    };
    add(
        "K_Ne",
        &["K_Peirce", "K Peirce", "K_cotton", "K cotton", "threads/in/√Ne", "threads/in/sqrt(Ne)"],
        "Ne",
        "Balasubramanian",
        "threads/in ÷ √(English cotton count)",
    );
    add(
        "K_worsted",
        &["K worsted", "threads/in/√worsted", "threads/in/sqrt(worsted)"],
        "worsted",
        "memory",
        "threads/in ÷ √(worsted count)",
    );
    add(
        "K_YSW",
        &["K YSW", "threads/in/√YSW", "threads/in/sqrt(YSW)"],
        "YSW",
        "memory",
        "threads/in ÷ √(Yorkshire skeins)",
    );
    all
}

/// Tightness factors of knitted cloth.
fn tightness() -> Vec<Unit> {
    let kind = Kind::TightnessFactor;
    let per_mm = ["sqrt(tex)/mm", "√tex mm⁻¹"].as_slice();
    let per_mm = plain("√tex/mm", per_mm, kind, Times(10.0), "√tex ÷ loop length in mm");
    vec![
        plain(
            "√tex/cm",
            &["sqrt(tex)/cm", "√tex cm⁻¹"],
            kind,
            Times(1.0),
            "√tex ÷ loop length in cm",
        ),
        Unit { source: "Textile handbook 2023", ..per_mm },
    ]
}
