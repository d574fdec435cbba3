//! What holds of every formula of the catalogue: its card is whole, all ways to run it agree bit for
//! bit, its gradient is that of central differences, solving undoes it.

mod cases;

use std::collections::BTreeSet;
use std::path::Path;

use cases::cases;
use hankwise::catalogue;
use hankwise::formula::array::Column;
use hankwise::formula::{Formula, Solution, Touch};
use hankwise::source::source;
use hankwise::worked::{Arg, Op, Recording};
use proptest::prelude::*;

/// Narrower than usual, where usual values have no answer together: formula, input, range.
const TOGETHER: &[(&str, &str, (f64, f64))] = &[
    ("added_irregularity", "cv_before", (0.0, 0.1)),
    ("added_irregularity", "cv_after", (0.15, 0.5)),
    // The upper end of a tolerance is above the lower.
    ("capability_to_nearest", "upper", (500.0, 1000.0)),
    ("capability_to_nearest", "lower", (0.0, 400.0)),
    // A kilogram has to leave something, or no lot pays.
    ("break_even_lot_with_hold_up", "cost_per_mass", (0.0, 10.0)),
    ("break_even_lot_with_hold_up", "price_per_mass", (50.0, 100.0)),
    ("component_share", "fed_ends", (20.0, 100.0)),
    ("efficiency_from_output", "made_amount", (0.1, 100.0)),
    ("efficiency_from_output", "calculated_amount", (100.0, 1e6)),
    // More is allowed than any lot loses.
    ("smallest_lot", "allowed_loss", (0.21, 0.5)),
    // A machine that keeps nothing has no smallest lot.
    ("smallest_lot", "held_up", (0.01, 20.0)),
    // The traveller is slower at the small diameter.
    ("spindle_speed_from_travellers", "small_diameter", (0.01, 0.029)),
    ("spindle_speed_from_travellers", "speed_at_large", (12_000.0, 25_000.0)),
    ("spindle_speed_from_travellers", "speed_at_small", (500.0, 11_999.0)),
    ("twist_from_travellers", "small_diameter", (0.01, 0.029)),
    ("twist_from_travellers", "speed_at_large", (12_000.0, 25_000.0)),
    ("twist_from_travellers", "speed_at_small", (500.0, 11_999.0)),
    ("share_from_number", "affected", (0.0, 10.0)),
    ("share_from_number", "tested", (20.0, 10000.0)),
    // The upper end of a tolerance is above the lower.
    ("capability_ratio", "upper", (500_000.0, 1_000_000.0)),
    ("capability_ratio", "lower", (0.0, 400_000.0)),
    ("variation_limit", "readings", (2.0, 12.0)),
    ("variation_limit", "chi_square", (3.0, 30.0)),
    // Ends are closer than both diameters, or nothing jams; and not closer than their own.
    ("jam_weft_sett", "warp_sett", (20.0, 30.0)),
    ("jam_weft_sett", "warp_diameter", (0.3, 0.5)),
    ("jam_weft_sett", "weft_diameter", (0.3, 0.5)),
    ("jam_weft_sett_of_weave", "warp_sett", (20.0, 24.0)),
    ("jam_weft_sett_of_weave", "warp_diameter", (0.4, 0.45)),
    ("jam_weft_sett_of_weave", "weft_diameter", (0.4, 0.45)),
    ("jam_weft_sett_of_weave", "weft_float", (1.0, 1.5)),
    ("crimp_angle", "modular_length", (1.1, 1.2)),
    ("crimp_angle", "spacing", (0.9, 1.05)),
    ("crimp_angle", "diameter_sum", (0.3, 0.8)),
    ("crimp_height", "modular_length", (1.1, 1.2)),
    ("crimp_height", "spacing", (0.9, 1.05)),
    ("crimp_height", "diameter_sum", (0.3, 0.8)),
    ("diameters_in_cloth", "warp_sett", (8.0, 12.0)),
    ("diameters_in_cloth", "weft_sett", (8.0, 12.0)),
    ("diameters_in_cloth", "warp_crimp", (0.03, 0.1)),
    ("diameters_in_cloth", "weft_crimp", (0.03, 0.1)),
    ("warp_sett_after_stretch", "warp_sett_before", (8.0, 10.0)),
    ("warp_sett_after_stretch", "weft_sett_before", (9.5, 10.0)),
    ("warp_sett_after_stretch", "warp_crimp_before", (0.02, 0.05)),
    ("warp_sett_after_stretch", "warp_diameter", (0.3, 0.38)),
    ("warp_sett_after_stretch", "weft_diameter", (0.3, 0.38)),
    ("warp_sett_after_stretch", "weft_sett_after", (10.0, 10.5)),
    ("jam_angle", "spacing", (0.5, 0.7)),
    ("jam_angle", "diameter_sum", (0.8, 1.0)),
    ("jam_crimp", "spacing", (0.5, 0.7)),
    ("jam_crimp", "diameter_sum", (0.8, 1.0)),
    ("jam_spacing", "spacing", (0.5, 0.7)),
    ("jam_spacing", "diameter_sum", (0.8, 1.0)),
    ("exhaustion_from_baths", "concentration_before", (10.0, 50.0)),
    ("exhaustion_from_baths", "volume_before", (1000.0, 2000.0)),
    ("exhaustion_from_baths", "concentration_after", (0.0, 5.0)),
    ("exhaustion_from_baths", "volume_after", (500.0, 1000.0)),
    ("water_to_fill", "liquor_volume", (50_000.0, 100_000.0)),
    ("water_to_fill", "volumes_in", (0.0, 5000.0)),
    ("humidity_between_points", "regain", (0.1, 0.15)),
    ("humidity_between_points", "humidity_below", (0.0, 0.3)),
    ("humidity_between_points", "regain_below", (0.0, 0.1)),
    ("humidity_between_points", "humidity_above", (0.4, 1.0)),
    ("humidity_between_points", "regain_above", (0.15, 0.4)),
    ("plain_thickness", "weft_sett", (8.0, 12.0)),
    ("plain_thickness", "warp_crimp", (0.01, 0.06)),
    ("plain_thickness", "warp_diameter", (0.3, 0.38)),
    ("plain_thickness", "weft_diameter", (0.3, 0.38)),
    ("regain_between_points", "humidity", (0.3, 0.4)),
    ("regain_between_points", "humidity_below", (0.0, 0.3)),
    ("regain_between_points", "regain_below", (0.0, 0.1)),
    ("regain_between_points", "humidity_above", (0.4, 1.0)),
    ("regain_between_points", "regain_above", (0.15, 0.4)),
    ("regain_from_masses", "sample_mass", (1.0, 1.5)),
    ("regain_from_masses", "dry_sample_mass", (0.5, 1.0)),
    ("regain_of_remainder", "blend_regain", (0.1, 0.2)),
    ("regain_of_remainder", "others_regain", (0.0, 0.05)),
    ("racetrack_height_by_rule", "spacing", (0.8, 1.2)),
    ("racetrack_height_by_rule", "thread_width", (0.3, 0.5)),
    ("racetrack_height_by_rule", "thread_thickness", (0.2, 0.3)),
    ("racetrack_spacing", "spacing", (0.8, 1.2)),
    ("racetrack_spacing", "thread_width", (0.3, 0.5)),
    ("racetrack_spacing", "thread_thickness", (0.2, 0.3)),
    ("racetrack_weft_crimp", "warp_sett", (8.0, 12.0)),
    ("racetrack_weft_crimp", "weft_sett", (8.0, 12.0)),
    ("racetrack_weft_crimp", "warp_crimp", (0.01, 0.05)),
    ("racetrack_weft_crimp", "warp_thread_width", (0.35, 0.45)),
    ("racetrack_weft_crimp", "warp_thread_thickness", (0.28, 0.32)),
    ("racetrack_weft_crimp", "weft_thread_width", (0.35, 0.45)),
    ("racetrack_weft_crimp", "weft_thread_thickness", (0.28, 0.32)),
    ("thickness_by_rule", "weft_sett", (8.0, 12.0)),
    ("thickness_by_rule", "warp_crimp", (0.01, 0.06)),
    ("thickness_by_rule", "warp_diameter", (0.3, 0.38)),
    ("thickness_by_rule", "weft_diameter", (0.3, 0.38)),
    ("weft_crimp", "warp_sett", (8.0, 12.0)),
    ("weft_crimp", "weft_sett", (8.0, 12.0)),
    ("weft_crimp", "warp_crimp", (0.01, 0.06)),
    ("weft_crimp", "warp_diameter", (0.3, 0.38)),
    ("weft_crimp", "weft_diameter", (0.3, 0.38)),
    ("weft_crimp_by_rule", "warp_sett", (8.0, 12.0)),
    ("weft_crimp_by_rule", "weft_sett", (8.0, 12.0)),
    ("weft_crimp_by_rule", "warp_crimp", (0.01, 0.06)),
    ("weft_crimp_by_rule", "warp_diameter", (0.3, 0.38)),
    ("weft_crimp_by_rule", "weft_diameter", (0.3, 0.38)),
];

/// A row of inputs in their usual range; `at` says where between its ends each is.
fn row(formula: &Formula, at: &[f64], list: usize) -> Vec<f64> {
    let length: usize = formula.inputs.iter().map(|i| if i.many { 1 + list } else { 1 }).sum();
    (0..length)
        .map(|place| {
            let (input, at) = (formula.input(place, length), at[place % at.len()]);
            let narrower = TOGETHER.iter().find(|t| (t.0, t.1) == (formula.name, input.name));
            let (low, high) = narrower.map_or(input.usual, |t| t.2);
            // Ranges over decades are covered evenly in the ratio.
            if low > 0.0 && high / low > 20.0 {
                low * (high / low).powf(at)
            } else {
                low + (high - low) * at
            }
        })
        .collect()
}

fn places() -> impl Strategy<Value = ([f64; 12], usize)> {
    (proptest::array::uniform12(0.0..=1.0), 0_usize..4)
}

/// The same, and often an end of the range or its middle.
fn places_and_ends() -> impl Strategy<Value = ([f64; 12], usize)> {
    let place = prop_oneof![2 => 0.0..=1.0, 1 => Just(0.0), 1 => Just(0.5), 1 => Just(1.0)];
    (proptest::array::uniform12(place), 0_usize..4)
}

fn same(a: f64, b: f64) -> bool {
    a.to_bits() == b.to_bits() || (a.is_nan() && b.is_nan())
}

/// Which side each branch took and which step of a staircase was stood on.
fn sides(recording: &Recording) -> Vec<f64> {
    let sides = recording.steps.iter().filter_map(|step| {
        let x = |k: usize| recording.value(step.args[k]);
        match step.op {
            Op::Floor | Op::Ceil => Some(step.value),
            Op::Min | Op::Max | Op::IfLess => Some(f64::from(u8::from(x(0) < x(1)))),
            _ => None,
        }
    });
    sides.collect()
}

/// The greatest value that came up on the way: what rounding is relative to.
fn greatest(recording: &Recording) -> f64 {
    recording.steps.iter().map(|s| s.value.abs()).fold(0.0, f64::max)
}

proptest! {
    #![proptest_config(cases(100))]

    #[test]
    fn worked_gives_the_same_bits_as_plain((at, list) in places()) {
        for f in catalogue::formulas() {
            let row = row(f, &at, list);
            let plain = (f.evaluate)(&row);
            let (recording, root) = f.record(&row);
            let worked = recording.value(root);
            prop_assert!(same(plain, worked), "{} {row:?}: {plain} and {worked}", f.name);
            prop_assert!(plain.is_finite(), "{} {row:?}: {plain}", f.name);
        }
    }

    /// The slope on each input against (f(x + h) − f(x − h))/2h. Left out only where a branch changes
    /// sides or a rounding its step between x − h and x + h: there is a kink, not a slope.
    #[test]
    fn gradient_is_that_of_central_differences((at, list) in places()) {
        for f in catalogue::formulas() {
            let row = row(f, &at, list);
            let (recording, root) = f.record(&row);
            let slopes = recording.slopes(root);
            for place in 0..row.len() {
                let (low, high) = f.input(place, row.len()).usual;
                // Nothing can be said relative to an input that may be zero.
                let least = if low > 0.0 { low } else { 1e-3 * (high - low) };
                let h = 1e-5 * row[place].abs().max(least);
                let moved = |by: f64| {
                    let mut row = row.clone();
                    row[place] += by;
                    let (recording, root) = f.record(&row);
                    (recording.value(root), sides(&recording))
                };
                let ((above, right), (below, left)) = (moved(h), moved(-h));
                if left != right {
                    continue;
                }
                let difference = (above - below) / (2.0 * h);
                // Inputs are the first steps of a recording.
                let slope = slopes[place];
                // Cut-off of the difference, and rounding of what is subtracted.
                let near = 1e-7 * slope.abs().max(difference.abs())
                    + 1e-15 * greatest(&recording) / h;
                prop_assert!(
                    (slope - difference).abs() <= near,
                    "{} by {}: slope {slope}, differences {difference}; {row:?}",
                    f.name, f.input(place, row.len()).name
                );
            }
        }
    }

    /// A column of values gives what its rows give one by one, for lengths about the block.
    #[test]
    fn columns_give_the_same_bits_as_rows(
        seed in proptest::array::uniform12(0.0..=1.0), one in proptest::array::uniform12(any::<bool>()),
        list in 0_usize..3,
    ) {
        for f in catalogue::formulas() {
            for n in [0, 1, 63, 64, 65, 200] {
                // A walk that never repeats: steps of the golden ratio.
                let walk = |k: usize| seed.map(|s: f64| (s + 0.618_033_988_749_895 * k as f64).fract());
                let rows: Vec<Vec<f64>> = (0..n).map(|k| row(f, &walk(k), list)).collect();
                let first = row(f, &seed, list);
                let whole: Vec<Vec<f64>> =
                    (0..first.len()).map(|c| rows.iter().map(|r| r[c]).collect()).collect();
                let single = |c: usize| one[c % one.len()];
                let columns: Vec<Column<'_>> = (0..first.len())
                    .map(|c| if single(c) { Column::One(first[c]) } else { Column::Each(&whole[c]) })
                    .collect();
                let mut out = vec![f64::NAN; n];
                f.evaluate_columns(&columns, &mut out);
                for (k, out) in out.iter().enumerate() {
                    let row: Vec<f64> = (0..first.len())
                        .map(|c| if single(c) { first[c] } else { rows[k][c] })
                        .collect();
                    let alone = (f.evaluate)(&row);
                    prop_assert!(same(*out, alone), "{} row {k} of {n}: {out} and {alone}", f.name);
                }
            }
        }
    }
}

proptest! {
    #![proptest_config(cases(24))]

    /// What an answer came from is found again, and all that is found gives the answer: at usual inputs,
    /// at the ends of their ranges and in their middle, where a share is as uneven as it can be.
    #[test]
    fn solving_undoes_answering((at, list) in places_and_ends()) {
        for f in catalogue::formulas() {
            let row = row(f, &at, list);
            let Ok(wanted) = f.answer(&row) else { continue };
            let (recording, root) = f.record(&row);
            let smooth = sides(&recording).is_empty();
            let slopes = recording.slopes(root);
            // What moves the answer by less than its rounding cannot be found again.
            let rounding = 1e-9 * greatest(&recording);
            for place in 0..row.len() {
                let name = f.input(place, row.len()).name;
                let found = f.solve(place, wanted, &row, None);
                prop_assert!(found.is_ok(), "{} for {name}: {found:?}; {row:?}", f.name);
                let found = found.unwrap();
                for x in found.iter().flat_map(Solution::ends) {
                    let mut tried = row.clone();
                    tried[place] = x;
                    let got = (f.evaluate)(&tried);
                    prop_assert!((got - wanted).abs() <= rounding, "{} for {name} = {x}: {got}, not {wanted}; {row:?}", f.name);
                }
                let (low, high) = f.input(place, row.len()).usual;
                let telling = (slopes[place] * (high - low)).abs() > 1e-3 * wanted.abs();
                let is_near = |x: f64| {
                    x.to_bits() == row[place].to_bits()
                        || ((x - row[place]) * slopes[place]).abs() <= rounding
                };
                let again = found.iter().flat_map(Solution::ends).any(is_near);
                prop_assert!(
                    !(smooth && telling) || again,
                    "{} for {name}: {found:?}, not {}; {row:?}", f.name, row[place]
                );
            }
        }
    }
}

proptest! {
    #![proptest_config(cases(100))]

    /// What the inverse gives, put into the formula, gives what the inverse was given.
    #[test]
    fn an_inverse_undoes_its_formula((at, list) in places()) {
        for f in catalogue::formulas() {
            let Some(of) = f.inverse_of else { continue };
            let of = catalogue::formula(of).unwrap();
            let given = row(f, &at, list);
            let found = (f.evaluate)(&given);
            let places = |name: &'static str| {
                let length = given.len();
                (0..length).filter(move |place| f.input(*place, length).name == name)
            };
            let mut forward = Vec::new();
            let mut wanted = None;
            for input in of.inputs {
                let mut figures: Vec<f64> = places(input.name).map(|place| given[place]).collect();
                if figures.is_empty() {
                    figures.push(found);
                }
                forward.extend(figures);
            }
            for (place, figure) in given.iter().enumerate() {
                let name = f.input(place, given.len()).name;
                if of.inputs.iter().all(|input| input.name != name) {
                    wanted = Some(*figure);
                }
            }
            let (wanted, back) = (wanted.unwrap(), (of.evaluate)(&forward));
            // What cancels on the way is rounded as the greatest value is.
            let (recording, _) = of.record(&forward);
            prop_assert!(
                (back - wanted).abs() <= 1e-9 * wanted.abs().max(1e-6 * greatest(&recording)),
                "{} gives {found} for {given:?}; {} of that is {back}, not {wanted}", f.name, of.name
            );
        }
    }
}

/// Which formulas are one relation is said on both sides.
#[test]
fn inverses_and_their_formulas_name_each_other() {
    let mut inverses = 0;
    for f in catalogue::formulas() {
        for solved in f.solved_for {
            let back: Vec<&str> = solved.by.solved_for.iter().map(|s| s.by.name).collect();
            assert!(back.contains(&f.name), "{} and {}", f.name, solved.by.name);
            let known = f.inputs.iter().any(|input| input.name == solved.unknown);
            assert!(known, "{} has no {} to solve for", f.name, solved.unknown);
            assert!(solved.by.inputs.iter().all(|input| input.name != solved.unknown));
        }
        let Some(of) = f.inverse_of else { continue };
        inverses += 1;
        assert_eq!(catalogue::formula(of).unwrap().inverse_of, None, "{}", f.name);
        assert!(f.solved_for.iter().any(|solved| solved.by.name == of), "{}", f.name);
        assert!(f.description().contains(&format!("Also: {of}, the same solved for ")));
    }
    assert!(inverses > 40, "{inverses}");
}

#[test]
fn every_card_is_whole() {
    let mut faults = Vec::new();
    for f in catalogue::formulas() {
        let mut need = |holds: bool, what: String| {
            if !holds {
                faults.push(format!("{}: {what}", f.name));
            }
        };
        let sentence = |s: &str| s.ends_with('.') && s.len() > 8;
        need(sentence(f.summary), format!("the summary is no sentence: '{}'", f.summary));
        need(!f.output.symbol.is_empty(), "the result has no symbol".to_owned());
        need(!f.sources.is_empty(), "no source".to_owned());
        for key in f.sources {
            need(source(key).is_some(), format!("the source '{key}' is not known"));
        }
        need(!f.slips.is_empty(), "no slip".to_owned());
        need(
            f.slips.iter().chain(f.limits).all(|s| !s.trim().is_empty()),
            "empty words".to_owned(),
        );
        need(!f.inputs.is_empty(), "no input".to_owned());
        let equations = f.equations().join("\n");
        for (place, input) in f.inputs.iter().enumerate() {
            let name = input.name;
            need(!input.meaning.is_empty(), format!("{name} is not explained"));
            need(
                equations.contains(input.symbol),
                format!("'{}' is not in {equations}", input.symbol),
            );
            let ((low, high), (least, most)) = (input.usual, input.kind.possible());
            need(low < high, format!("{name}: the usual range {low} to {high} is empty"));
            need(low >= least && high <= most, format!("{name}: impossible is called usual"));
            need(low.is_finite() && high.is_finite(), format!("{name}: an endless usual range"));
            let next = f.inputs.get(place + 1);
            need(!input.many || next.is_none_or(|n| n.many), format!("{name}: lists come last"));
            need(!input.whole || input.many, format!("{name}: only a list is made of shares"));
            let others = f.inputs.iter().filter(|o| o.name == name || o.symbol == input.symbol);
            need(others.count() == 1, format!("{name} or '{}' appears twice", input.symbol));
            need(input.symbol != f.output.symbol, format!("'{}' is the result too", input.symbol));
        }
    }
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Functions under `#[formula(…)]`, and their inverses, in the source files.
fn written(dir: &Path, names: &mut Vec<String>) {
    for entry in std::fs::read_dir(dir).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            written(&path, names);
        } else if path.extension().is_some_and(|e| e == "rs") {
            let text = std::fs::read_to_string(&path).unwrap();
            for part in text.split("\n#[formula(").skip(1) {
                let name = part.split_once("fn ").unwrap().1;
                let end = name.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap();
                names.push(name[..end].to_owned());
            }
            for part in text.split("\n#[inverse(").skip(1) {
                // After the summary, which has no bracket of its own before the quotation mark.
                let name = part.trim_start().strip_prefix('"').unwrap();
                let name = name.split_once("\",").unwrap().1.trim_start();
                names.push(name[..name.find('(').unwrap()].to_owned());
            }
        }
    }
}

#[test]
fn every_formula_is_in_the_catalogue_once() {
    let mut names = Vec::new();
    written(Path::new("src"), &mut names);
    let set: BTreeSet<&str> = names.iter().map(String::as_str).collect();
    assert_eq!(set.len(), names.len(), "a name is there twice: {names:?}");
    let catalogue: BTreeSet<&str> = catalogue::formulas().map(|f| f.name).collect();
    let unlisted: Vec<_> = set.difference(&catalogue).collect();
    assert!(unlisted.is_empty(), "not in the catalogue: {unlisted:?}");
    let unwritten: Vec<_> = catalogue.difference(&set).collect();
    assert!(unwritten.is_empty(), "in the catalogue, but not found in src: {unwritten:?}");
    assert!(catalogue.iter().all(|name| catalogue::formula(name).unwrap().name == *name));
}

#[test]
fn a_recording_begins_with_the_inputs() {
    for f in catalogue::formulas() {
        let row = row(f, &[0.5], 2);
        let (recording, root) = f.record(&row);
        for (place, x) in row.iter().enumerate() {
            let step = &recording.steps[place];
            assert!(step.op == Op::Input && same(step.value, *x), "{} {place}", f.name);
        }
        assert!(matches!(root, Arg::Step(_)), "{}: the answer rests on no input", f.name);
    }
}

/// The values that give a result, as solving has them; the input is the place in the row.
fn solved(name: &str, place: usize, wanted: f64, row: &[f64]) -> Vec<Solution> {
    catalogue::formula(name).unwrap().solve(place, wanted, row, None).unwrap()
}

#[test]
fn a_maximum_a_minimum_and_an_edge_are_found() {
    // √(p(1 − p)/k) is greatest at one half: 0.5/√400.
    for wanted in [0.025, 0.025 * (1.0 + 1e-11)] {
        let found = solved("random_share_deviation", 0, wanted, &[f64::NAN, 400.0]);
        let [Solution::Touching(share, Touch::Maximum)] = found[..] else { panic!("{found:?}") };
        assert!((share - 0.5).abs() < 1e-9, "{share}");
    }
    // A little below it there are two, as far apart as p(1 − p) = 400 × 0.02499² has them.
    let found = solved("random_share_deviation", 0, 0.02499, &[f64::NAN, 400.0]);
    let half = (0.25 - 400.0 * 0.02499_f64.powi(2)).sqrt();
    let [Solution::One(less), Solution::One(more)] = found[..] else { panic!("{found:?}") };
    assert!((less - (0.5 - half)).abs() < 1e-9 && (more - (0.5 + half)).abs() < 1e-9);
    // A little above there is none, and the message has the greatest that there is.
    let formula = catalogue::formula("random_share_deviation").unwrap();
    let none = formula.solve(0, 0.02501, &[f64::NAN, 400.0], None).unwrap_err();
    assert!(none.to_string().ends_with("to 0.02500"), "{none}");
    // Width and thickness are equal at the edge, and the whole spacing is left.
    let found = solved("racetrack_spacing", 1, 0.7, &[0.7, f64::NAN, 0.31]);
    let [Solution::Touching(width, Touch::Edge)] = found[..] else { panic!("{found:?}") };
    assert!((width - 0.31).abs() < 1e-9, "{width}");
    let words = catalogue::formula("racetrack_spacing").unwrap().solution_words(1, 3, &found);
    assert_eq!(
        words,
        ["racetrack_spacing: thread_width = 0.31 mm is the only value that gives this result; \
          beyond it the formula has no answer"]
    );
}

#[test]
fn a_stretch_without_an_end_has_none() {
    // Of 20 kg no piece comes where the fixed mass is 20 kg or more.
    let found = solved("pieces_from_mass", 1, 0.0, &[20.0, f64::NAN, 0.4]);
    let [Solution::Stretch { least: Some(least), most: None }] = found[..] else {
        panic!("{found:?}")
    };
    assert!((least - 20.0).abs() < 1e-9, "{least}");
    let words = catalogue::formula("pieces_from_mass").unwrap().solution_words(1, 3, &found);
    assert_eq!(words, ["pieces_from_mass: every fixed_mass from 20 kg up gives this result"]);
    // Within what was asked the end is that.
    let formula = catalogue::formula("pieces_from_mass").unwrap();
    let found = formula.solve(1, 0.0, &[20.0, f64::NAN, 0.4], Some((0.0, 50.0))).unwrap();
    let [Solution::Stretch { most: Some(most), .. }] = found[..] else { panic!("{found:?}") };
    assert!((most - 50.0).abs() < 1e-9, "{most}");
}
