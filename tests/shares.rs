//! Shares of unlike things: every ordered pair of kinds, as terms, compared, and given for an input.

use hankwise::catalogue;
use hankwise::quantity::print::figure;
use hankwise::quantity::share::WAYS;
use hankwise::quantity::{Kind, parse_as};
use hankwise::yarn::read_input;

/// The kinds of share, by what they are a share of: written out here, not taken from the crate.
const SHARES: [Kind; 19] = [
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
            let unlike = left != right && SHARES.contains(&left) && SHARES.contains(&right);
            assert_eq!(left.with(right, "a sum").is_err(), unlike, "{pair}");
            assert_eq!(left.comparable(right, "a comparison").is_err(), unlike, "{pair}");
            let draw_in = (left, right) == (Kind::DrawIn, Kind::Shrinkage);
            assert_eq!(left.given_for(right).is_err(), unlike && !draw_in, "{pair}");
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
