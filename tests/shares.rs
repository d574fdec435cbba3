//! Shares of unlike things: every ordered pair of kinds, as terms, compared, and given for an input.

use hankwise::calculation::{Item, flat};
use hankwise::catalogue;
use hankwise::formula::is_usual;
use hankwise::quantity::print::figure;
use hankwise::quantity::share::WAYS;
use hankwise::quantity::{Kind, parse_as};
use hankwise::yarn::read_input;

/// The kinds of share, by what they are a share of: written out here, not taken from the crate.
const SHARES: [Kind; 20] = [
    Kind::Yield,
    Kind::Regain,
    Kind::Contraction,
    Kind::TwistedContraction,
    Kind::TakeUp,
    Kind::Crimp,
    Kind::DrawIn,
    Kind::Shrinkage,
    Kind::OverWidth,
    Kind::DimensionalChange,
    Kind::AreaShrinkage,
    Kind::MassLoss,
    Kind::ShareLost,
    Kind::Stretch,
    Kind::Deviation,
    Kind::Margin,
    Kind::MarkUp,
    Kind::ShareOfSales,
    Kind::MoistureContent,
    Kind::OnFibre,
];

#[test]
fn every_ordered_pair_of_kinds() {
    for &left in Kind::ALL {
        assert_eq!(left.has_a_base(), SHARES.contains(&left), "{}", left.name());
        for &right in Kind::ALL {
            let pair = format!("{} and {}", left.name(), right.name());
            // What a stage loses is a loss of mass that cannot be a gain.
            let losses = [Kind::MassLoss, Kind::ShareLost];
            let are_losses = losses.contains(&left) && losses.contains(&right);
            let unlike = left != right && SHARES.contains(&left) && SHARES.contains(&right);
            let unlike = unlike && !are_losses;
            assert_eq!(left.with(right, "a sum").is_err(), unlike, "{pair}");
            assert_eq!(left.comparable(right, "a comparison").is_err(), unlike, "{pair}");
            let draw_in = (left, right) == (Kind::DrawIn, Kind::Shrinkage);
            let for_plain = right == Kind::Fraction && SHARES.contains(&left);
            assert_eq!(left.given_for(right).is_err(), for_plain || unlike && !draw_in, "{pair}");
            if for_plain {
                let message = left.given_for(right).unwrap_err().to_string();
                for part in [left.words(), "100 % − x", "'8 %'"] {
                    assert!(message.contains(part), "{message}");
                }
            }
            if unlike {
                let message = left.with(right, "a sum").unwrap_err().to_string();
                for kind in [left, right] {
                    assert!(message.contains(kind.words()), "{message}");
                }
                let message =
                    left.given_for(right).err().map_or_else(String::new, |e| e.to_string());
                assert!(draw_in || message.contains(right.example()), "{message}");
            }
        }
    }
}

#[test]
fn what_is_left_of_a_whole_is_plain() {
    for share in SHARES {
        assert_eq!(Kind::Fraction.with(share, "a difference"), Ok(Kind::Fraction));
        assert_eq!(share.with(Kind::Fraction, "a sum"), Ok(Kind::Fraction));
        assert_eq!(share.with(share, "a sum"), Ok(share));
    }
    assert_eq!(Kind::Mass.with(Kind::Mass, "a sum"), Ok(Kind::Mass));
}

#[test]
fn the_formulas_that_convert_do_what_is_said_of_them() {
    for way in WAYS {
        let formula = catalogue::formula(way.formula).unwrap();
        assert_eq!(formula.output.kind, way.to, "{}", way.formula);
        let takes = |kind| formula.inputs.iter().any(|input| input.kind == kind);
        let draw_in = way.from == Kind::DrawIn && takes(Kind::Shrinkage);
        assert!(takes(way.from) || draw_in, "{}", way.formula);
        let alone = formula.inputs.len() == 1 && formula.lists == 0;
        assert_eq!(alone, way.note.is_empty() || way.note.starts_with("where"), "{}", way.formula);
    }
}

#[test]
fn the_message_names_the_formula() {
    let says = |left: Kind, right: Kind| left.with(right, "a sum").unwrap_err().to_string();
    for pair in [(Kind::Crimp, Kind::TakeUp), (Kind::TakeUp, Kind::Crimp)] {
        assert!(says(pair.0, pair.1).contains("crimp_from_take_up"));
    }
    assert!(says(Kind::Shrinkage, Kind::DrawIn).contains("compounded_shrinkage"));
    assert!(says(Kind::Regain, Kind::MoistureContent).contains("regain_from_content"));
    let given = Kind::Margin.given_for(Kind::MarkUp).unwrap_err().to_string();
    assert!(given.contains("mark_up_of_margin gives the mark-up on the cost"), "{given}");
    for loss in [Kind::MassLoss, Kind::ShareLost] {
        let given = Kind::Yield.given_for(loss).unwrap_err().to_string();
        assert!(given.contains("mass_loss_from_yield gives the loss of mass"), "{given}");
    }
}

/// What a factor says, by hand: what is added to 1, or taken from it.
#[test]
fn a_share_may_be_written_as_a_factor() {
    for (text, kind, percent) in [
        ("× 1.2", Kind::Crimp, 20.0),
        ("x1.2", Kind::Crimp, 20.0),
        ("× 0.92", Kind::TakeUp, 8.0),
        ("× 0.9", Kind::Shrinkage, 10.0),
        ("× 1.02", Kind::Shrinkage, -2.0),
        ("× 1 1/2", Kind::OverWidth, 50.0),
        ("× 0.96", Kind::DimensionalChange, -4.0),
        ("× 0.92", Kind::MassLoss, 8.0),
        ("× 0.8", Kind::AreaShrinkage, 20.0),
        ("× 0.98", Kind::Contraction, 2.0),
        ("× 1.02", Kind::TwistedContraction, 2.0),
        ("× 1.4", Kind::MarkUp, 40.0),
    ] {
        let share = parse_as(text, kind).unwrap().base() * 100.0;
        assert!((share - percent).abs() < 1e-9, "{text} for a {}: {share} %", kind.words());
        let (_, said) = read_input(text, "", kind).unwrap();
        assert!(
            said.contains(" − ") && said.ends_with(&format!("{} %", figure(percent))),
            "{said}"
        );
    }
    // What says nothing of two sizes has no factor; a factor has no unit and no sign.
    for (text, kind) in [
        ("× 1.2", Kind::Regain),
        ("× 0.9", Kind::Fraction),
        ("× 2", Kind::Mass),
        ("× -1.2", Kind::Crimp),
        ("× 1.2 %", Kind::Crimp),
        ("× 1.2 m", Kind::Crimp),
        ("× 0", Kind::TakeUp),
        ("×", Kind::Crimp),
    ] {
        assert!(parse_as(text, kind).is_err(), "{text} for a {}", kind.words());
    }
    let says = |text, kind| parse_as(text, kind).unwrap_err().to_string();
    assert!(says("1.2", Kind::Crimp).contains("'× 1.2' for a factor"));
    assert!(!says("8", Kind::Crimp).contains("factor"));
    assert!(
        !says("1.2", Kind::TakeUp).contains("factor") || parse_as("× 1.2", Kind::TakeUp).is_ok()
    );
}

/// A crimp, a take-up, a draw-in, a stretch below nothing is possible, and unusual wherever it is asked; what is
/// nothing but for the last digit of binary arithmetic is not. A spread below nothing cannot be.
#[test]
fn what_is_below_nothing_is_unusual_or_refused() {
    const LENGTHS: [Kind; 4] = [Kind::Crimp, Kind::TakeUp, Kind::DrawIn, Kind::Stretch];
    let mut tried = 0;
    let mut holds = |what: String, kind: Kind, usual: (f64, f64)| {
        if LENGTHS.contains(&kind) {
            assert!(usual.0 >= 0.0, "{what}: {usual:?}");
            assert!(!is_usual(usual, -0.01) && !is_usual(usual, -1e-6), "{what}");
            assert!(usual.0 > 0.0 || is_usual(usual, -1e-17), "{what}");
            tried += 1;
        }
    };
    for formula in catalogue::formulas() {
        for input in formula.inputs {
            holds(format!("{}: {}", formula.name, input.name), input.kind, input.usual);
        }
    }
    for calculation in catalogue::calculations() {
        for item in flat(calculation.inputs) {
            if let Item::One(input) | Item::List(input) = item {
                holds(format!("{}: {}", calculation.name, input.name), input.kind, input.usual);
            }
        }
    }
    assert!(tried > 30, "{tried}");
    let crimp = catalogue::formula("yarn_in_cloth").unwrap();
    let said = crimp.unusual(&[100.0, -0.05]).join("");
    assert!(said.contains("0 % to 30 %") && said.contains("custom of the trade"), "{said}");
    assert!(crimp.unusual(&[100.0, -1e-17]).is_empty());
    for name in ["sd", "spread", "error", "half_width", "wanted_half_width"] {
        for formula in catalogue::formulas() {
            for input in formula.inputs.iter().filter(|input| input.name == name) {
                assert!(input.kind.check(-1e-6).is_err(), "{}: {name}", formula.name);
            }
        }
    }
    for kind in [Kind::ReadingSpread, Kind::ShareLost] {
        assert!(kind.check(-1e-6).is_err() && kind.check(0.0).is_ok(), "{}", kind.name());
    }
}

/// Cents for a mass are a price; cents alone say not for what mass.
#[test]
fn a_price_in_cents() {
    for text in ["85 c/kg", "85 cents/kg", "85 ct/kg", "0.85 /kg"] {
        let price = parse_as(text, Kind::CostPerMass).unwrap().base();
        assert!((price - 0.85).abs() < 1e-12, "{text}: {price}");
    }
    for text in ["85 c", "85 cents", "85 p"] {
        let said = parse_as(text, Kind::CostPerMass).unwrap_err().to_string();
        assert!(said.contains(&format!("'{text}/kg'")), "{said}");
        let said = parse_as(text, Kind::Money).unwrap_err().to_string();
        assert!(said.contains("0.85 for 85"), "{said}");
    }
}
