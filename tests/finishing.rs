//! Finishing as a chain: forward and back undo each other, shrinkages compound, threads and mass agree,
//! samples say what was measured; against cloths that were measured before and after.

mod cases;

use cases::cases;
use hankwise::calculation::{Given, Solved, Value};
use hankwise::cloth::{FINISHING, PROCESS, TO_WEAVE};
use hankwise::prelude::*;
use hankwise::quantity::{Amount, unit};
use proptest::prelude::*;

/// A process: its name, and what is said of it.
type Said = (&'static str, Vec<(&'static str, Value)>);

/// A value in the base unit of its kind.
fn amount(x: f64, kind: Kind) -> Amount {
    let name = if kind.family() == Kind::Fraction { "fraction" } else { kind.base() };
    Amount { number: x, unit: unit(name, Some(kind)).unwrap() }
}

fn one(given: &Given, name: &str, x: f64) -> Value {
    let item = given.item(name).unwrap();
    let hankwise::calculation::Item::One(input) = item else { panic!("{name}") };
    Value::One(amount(x, input.kind), None)
}

fn process(name: &'static str, said: &[(&'static str, f64)]) -> Said {
    let blank = PROCESS.blank();
    (name, said.iter().map(|(name, x)| (*name, one(&blank, name, *x))).collect())
}

/// What was given for a chain.
fn chain(mut given: Given, processes: &[Said], cloth: &[(&str, f64)]) -> Result<Given> {
    let mut rows = Vec::new();
    for (name, said) in processes {
        let mut row = given.row("processes")?;
        row.set("name", Value::Text((*name).to_owned()))?;
        for (name, value) in said {
            row.set(name, value.clone())?;
        }
        rows.push(row);
    }
    given.set("processes", Value::Rows(rows))?;
    for (name, x) in cloth {
        given.item(name)?;
        let value = one(&given, name, *x);
        given.set(name, value)?;
    }
    Ok(given)
}

fn finishing(processes: &[Said], loom: &[(&str, f64)]) -> Result<Solved> {
    FINISHING.solve(chain(FINISHING.blank(), processes, loom)?)
}

fn to_weave(processes: &[Said], finished: &[(&str, f64)]) -> Result<Solved> {
    TO_WEAVE.solve(chain(TO_WEAVE.blank(), processes, finished)?)
}

/// A process on its own.
fn alone((name, said): &Said) -> Result<Solved> {
    let mut given = PROCESS.blank();
    given.set("name", Value::Text((*name).to_owned()))?;
    for (name, value) in said {
        given.set(name, value.clone())?;
    }
    PROCESS.solve(given)
}

fn of(solved: &Solved, name: &str) -> f64 {
    solved.find(name).unwrap_or_else(|e| panic!("{e}")).value
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs())
}

const NAMES: [&str; 9] = [
    "width",
    "length",
    "warp_sett",
    "weft_sett",
    "warp_count",
    "weft_count",
    "warp_crimp",
    "weft_crimp",
    "mass_per_area",
];

/// Any chain of up to five processes, each with any of its values left out.
fn processes() -> impl Strategy<Value = Vec<Said>> {
    let one = (
        proptest::option::of(-0.1..0.4_f64),
        proptest::option::of(-0.1..0.4_f64),
        proptest::option::of(-0.05..0.2_f64),
        // The yarn shrinks by a share of what the cloth shrinks: it cannot be shorter than the cloth.
        proptest::option::of(0.0..1.0_f64),
        proptest::option::of(0.0..1.0_f64),
    );
    proptest::collection::vec(one, 1..6).prop_map(|all| {
        let names = ["scour", "mill", "own process", "tenter", "mill 2"];
        all.into_iter()
            .enumerate()
            .map(|(k, (width, length, loss, warp, weft))| {
                let yarn = |share: Option<f64>, s: Option<f64>| {
                    share.map(|share| share * s.unwrap_or(0.0).max(0.0))
                };
                // Where the cloth grows, the yarn is left to grow with it.
                let grows = |s: Option<f64>| s.is_some_and(|s| s < 0.0);
                let said = [
                    ("width_shrinkage", width),
                    ("length_shrinkage", length),
                    ("mass_loss", loss),
                    ("warp_yarn_shrinkage", yarn(warp, length).filter(|_| !grows(length))),
                    ("weft_yarn_shrinkage", yarn(weft, width).filter(|_| !grows(width))),
                ];
                let said: Vec<_> =
                    said.into_iter().filter_map(|(name, x)| x.map(|x| (name, x))).collect();
                process(names[k], &said)
            })
            .collect()
    })
}

fn threads() -> impl Strategy<Value = Vec<(&'static str, f64)>> {
    (
        (0.1..3.0_f64, 0.3..200.0_f64, 2.0..40.0_f64, 2.0..40.0_f64),
        (10.0..1500.0_f64, 10.0..1500.0_f64, 0.0..0.2_f64, 0.0..0.2_f64),
    )
        .prop_map(|((b, l, n1, n2), (t1, t2, c1, c2))| {
            NAMES.into_iter().zip([b, l, n1, n2, t1, t2, c1, c2]).collect()
        })
}

proptest! {
    #![proptest_config(cases(300))]

    /// What is woven for a finished cloth finishes as that cloth.
    #[test]
    fn backward_undoes_forward(processes in processes(), loom in threads()) {
        let there = finishing(&processes, &loom).unwrap();
        let finished = NAMES.map(|name| (name, of(&there, &format!("finished.{name}"))));
        let back = to_weave(&processes, &finished).unwrap();
        for (name, x) in &loom {
            let found = of(&back, &format!("loom.{name}"));
            prop_assert!((found - x).abs() <= 1e-11 * x.abs().max(0.01), "{name}: {x} became {found}");
        }
        // Every stage of the one is that of the other.
        for found in back.results() {
            let (a, b) = (found.value, of(&there, &found.name));
            prop_assert!((a - b).abs() <= 1e-11 * a.abs().max(0.01), "{}: {a} and {b}", found.name);
        }
    }

    /// The mass by the balance of the chain is that of the threads as they are at every stage.
    #[test]
    fn threads_weigh_what_the_balance_says(processes in processes(), loom in threads()) {
        let chain = finishing(&processes, &loom).unwrap();
        let stages: Vec<_> = chain.results().iter()
            .filter_map(|found| found.name.strip_suffix(".mass_per_area"))
            .map(str::to_owned).collect();
        prop_assert_eq!(stages.len(), processes.len() + 2);
        for stage in stages {
            let [n1, n2, t1, t2, c1, c2, b, l, w, m, running] =
                ["warp_sett", "weft_sett", "warp_count", "weft_count", "warp_crimp", "weft_crimp",
                 "width", "length", "mass_per_area", "piece_mass", "mass_per_length"]
                    .map(|name| of(&chain, &format!("{stage}.{name}")));
            // Ends × width × length × (1 + crimp) × tex, in grams; the same of the picks.
            let warp = n1 * 100.0 * b * l * (1.0 + c1) * t1 / 1000.0;
            let weft = n2 * 100.0 * l * b * (1.0 + c2) * t2 / 1000.0;
            let off = |a: f64, b: f64| (a / b - 1.0).abs();
            prop_assert!(off(warp + weft, w * b * l) < 1e-11, "{stage}");
            prop_assert!(off(warp + weft, 1000.0 * m) < 1e-11, "{stage}");
            prop_assert!(off(running * l, 1000.0 * (warp + weft)) < 1e-11, "{stage}");
        }
    }

    /// Ends and picks are conserved, and so is the yarn but for its own shrinkage and what it loses.
    #[test]
    fn threads_are_conserved(processes in processes(), loom in threads()) {
        let chain = finishing(&processes, &loom).unwrap();
        let number = |stage: &str, n: &str, side: &str| {
            of(&chain, &format!("{stage}.{n}")) * of(&chain, &format!("{stage}.{side}"))
        };
        for (n, side) in [("warp_sett", "width"), ("weft_sett", "length")] {
            let (before, after) = (number("loom", n, side), number("finished", n, side));
            prop_assert!((before / after - 1.0).abs() < 1e-12);
        }
        let factor = |name: &str| of(&chain, &format!("finished.{name}")) / of(&chain, &format!("loom.{name}"));
        let by = |name: &str| {
            let said = |(_, said): &Said| said.iter().find_map(|(other, value)| match value {
                Value::One(amount, _) if *other == name => Some(amount.base()),
                _ => None,
            });
            processes.iter().map(|p| 1.0 - said(p).unwrap_or(0.0)).product::<f64>()
        };
        prop_assert!(near(factor("width"), by("width_shrinkage")));
        prop_assert!(near(factor("length"), by("length_shrinkage")));
        prop_assert!((factor("piece_mass") / by("mass_loss") - 1.0).abs() < 1e-12);
    }

    /// Whatever form a change of size is said in, the cloth is the same.
    #[test]
    fn forms_agree(s in -0.3..0.45_f64) {
        let forms = [("width_shrinkage", s), ("over_width", s / (1.0 - s)), ("width_change", -s)];
        for (name, x) in forms {
            let mill = process("mill", &[(name, x)]);
            let one = finishing(std::slice::from_ref(&mill), &[("width", 2.0)]).unwrap();
            prop_assert!((of(&one, "finished.width") - 2.0 * (1.0 - s)).abs() < 1e-12);
            // Asked alone, the process is told in every form.
            let alone = alone(&mill).unwrap();
            for (name, x) in forms {
                prop_assert!((of(&alone, name) - x).abs() < 1e-12, "{name}");
            }
        }
    }

    /// The band of a sample holds every value that the readings leave possible, and no more.
    #[test]
    fn a_band_is_what_misreading_can_do(
        pairs in proptest::collection::vec((0.5..2.0_f64, 0.5..1.1_f64), 1..5), off in 0.0..0.02_f64,
        at in proptest::collection::vec((-1.0..=1.0_f64, -1.0..=1.0_f64), 5),
    ) {
        let lengths = |all: Vec<f64>| {
            Value::List(all.into_iter().map(|x| (amount(x, Kind::Length), None)).collect())
        };
        let felt: Said = ("felt", vec![
            ("width_before", lengths(pairs.iter().map(|(x, _)| *x).collect())),
            ("width_after", lengths(pairs.iter().map(|(x, kept)| x * kept).collect())),
            ("reading_error", Value::One(amount(off, Kind::Length), None)),
        ]);
        let alone = alone(&felt).unwrap();
        let [low, high] = ["lowest", "highest"].map(|end| of(&alone, &format!("{end}_width_shrinkage")));
        let mean = pairs.iter().map(|(_, kept)| 1.0 - kept).sum::<f64>() / pairs.len() as f64;
        prop_assert!((of(&alone, "width_shrinkage") - mean).abs() < 1e-12);
        let read = |((x, kept), (a, b)): (&(f64, f64), &(f64, f64))| 1.0 - (x * kept + b * off) / (x + a * off);
        for found in pairs.iter().zip(&at).map(read) {
            prop_assert!(found >= low - 1e-12 && found <= high + 1e-12);
        }
        let worst = pairs.iter().map(|pair| read((pair, &(1.0, -1.0)))).fold(f64::MIN, f64::max);
        prop_assert!((worst - high).abs() < 1e-12);
        // The chain carries it: forward with the sample lies between the ends put in by hand.
        let chain = |s: f64| {
            let mill = process("mill", &[("width_shrinkage", s)]);
            of(&finishing(&[mill], &[("width", 1.5)]).unwrap(), "finished.width")
        };
        let likely = of(&finishing(&[felt], &[("width", 1.5)]).unwrap(), "finished.width");
        prop_assert!(chain(high) <= likely + 1e-12 && likely <= chain(low) + 1e-12);
    }
}

fn inches(x: f64) -> Value {
    Value::One(parse(&format!("{x} in")).unwrap(), Some(format!("{x} in")))
}

fn sample(name: &'static str, width: Option<[f64; 2]>, length: Option<[f64; 2]>) -> Said {
    let list = |x: f64| {
        let Value::One(amount, text) = inches(x) else { unreachable!() };
        Value::List(vec![(amount, text)])
    };
    let mut said = vec![("reading_error", inches(0.5))];
    for (names, pair) in
        [(["width_before", "width_after"], width), (["length_before", "length_after"], length)]
    {
        if let Some([before, after]) = pair {
            said.extend([(names[0], list(before)), (names[1], list(after))]);
        }
    }
    (name, said)
}

/// Weavers' own cloths: the losses that follow from their sizes, forward to the size that they measured,
/// and back to the size on the loom.
#[test]
fn published_cloths_come_out_as_measured() {
    let text = include_str!("published/fabrics-finishing.csv");
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_reader(text.as_bytes());
    let (mut widths, mut areas) = (0, 0);
    let columns = reader.headers().unwrap().clone();
    for fabric in reader.records() {
        let fabric = fabric.unwrap();
        let field =
            |name: &str| fabric.get(columns.iter().position(|c| c == name).unwrap()).unwrap();
        // Blank where it was not published.
        let size =
            |name: &str| Some(field(name)).filter(|f| !f.is_empty()).map(|f| f.parse().unwrap());
        let id = field("id");
        let pair = |a: Option<f64>, b: Option<f64>| Some([a?, b?]);
        let (reed, off_loom): (_, Option<f64>) = (size("reed_width"), size("off_loom_width"));
        let relax = pair(reed, off_loom);
        let wash = pair(off_loom.or(reed), size("finished_width"));
        let length = pair(size("off_loom_length"), size("finished_length"));
        let Some([_, finished]) = wash else { continue };
        let start = reed.or(off_loom).unwrap();
        let relaxed = relax.map(|pair| sample("relax", Some(pair), None));
        let chain: Vec<Said> = relaxed.into_iter().chain([sample("wash", wash, length)]).collect();
        let mut loom = vec![("width", 0.0254 * start)];
        loom.extend(length.map(|[before, _]| ("length", 0.0254 * before)));
        let there = finishing(&chain, &loom).unwrap();
        assert!(near(of(&there, "finished.width"), 0.0254 * finished), "{id}");
        let lost = 100.0 * of(&there, "width_shrinkage");
        let printed = size("calc_width_loss_pct").unwrap();
        assert!((lost - printed).abs() < 0.006, "{id}: {lost} % and {printed} %");
        widths += 1;
        let back = to_weave(&chain, &[("width", 0.0254 * finished)]).unwrap();
        assert!(near(of(&back, "loom.width"), 0.0254 * start), "{id}");
        if let (Some([_, after]), Some(printed)) = (length, size("calc_area_loss_pct")) {
            assert!(near(of(&there, "finished.length"), 0.0254 * after), "{id}");
            let wash = finishing(&chain[chain.len() - 1..], &loom).unwrap();
            let lost = 100.0 * of(&wash, "area_shrinkage");
            assert!((lost - printed).abs() < 0.006, "{id}: {lost} % and {printed} % of the area");
            areas += 1;
        }
    }
    assert!(widths >= 7 && areas >= 4, "{widths} widths and {areas} areas were there to check");
}

#[test]
fn each_process_finds_what_the_last_one_left() {
    // 11 and 17 % make 26 %, not 28 %.
    let chain = [
        process("relax", &[("width_shrinkage", 6.0 / 54.0)]),
        process("wash", &[("width_shrinkage", 8.0 / 48.0)]),
    ];
    let blanket = finishing(&chain, &[("width", 54.0 * 0.0254)]).unwrap();
    assert!(near(of(&blanket, "relax.width"), 48.0 * 0.0254));
    assert!(near(of(&blanket, "finished.width"), 40.0 * 0.0254));
    assert!(near(of(&blanket, "width_shrinkage"), 14.0 / 54.0));
    assert!(near(of(&blanket, "over_width"), 14.0 / 40.0));
}

#[test]
fn equal_names_are_refused_with_others() {
    let mill = |name| process(name, &[("width_shrinkage", 0.1)]);
    let cloth = [("width", 1.0)];
    message(finishing(&[mill("mill"), mill("mill")], &cloth), &["'mill 1' and 'mill 2'"]);
    let twice = finishing(&[mill("mill 1"), mill("mill 2")], &cloth).unwrap();
    assert!(near(of(&twice, "mill 1.width"), 0.9) && near(of(&twice, "mill 2.width"), 0.81));
    assert_eq!(twice.warnings(), [""; 0]);
    message(finishing(&[mill("loom")], &cloth), &["'loom' is the name of the cloth", "'loom 1'"]);
}

#[test]
fn a_working_begins_with_what_was_measured() {
    let felt = sample("felt", Some([62.0, 57.0]), None);
    let mut given = chain(FINISHING.blank(), &[felt], &[]).unwrap();
    given.set("width", inches(66.0)).unwrap();
    let text = FINISHING.solve(given).unwrap().working("finished.width").unwrap().text();
    for piece in ["66 in", "62 in", "57 in", "shrinkage_from_sizes", "size_after_shrinkage"] {
        assert!(text.contains(piece), "{piece} is not in\n{text}");
    }
}

/// A gain is no loss turned round by hand: 3 % on is × 1.03.
#[test]
fn flock_fed_in_weighs() {
    let mill = process("mill", &[("mass_gain", 0.03)]);
    let chain = finishing(&[mill], &[("piece_mass", 20.0)]).unwrap();
    assert!(near(of(&chain, "finished.piece_mass"), 20.6));
    assert!(near(of(&chain, "mass_loss"), -0.03));
}

fn message<T: std::fmt::Debug>(result: Result<T>, pieces: &[&str]) {
    let text = result.unwrap_err().to_string();
    for piece in pieces {
        assert!(text.contains(piece), "'{piece}' is not in: {text}");
    }
}

#[test]
fn what_is_wrong_is_told_with_what_to_type() {
    let mill = || process("mill", &[("width_shrinkage", 0.2)]);
    let cloth = [("width", 1.0)];
    message(finishing(&[], &cloth), &["processes (processes in their order) is missing"]);
    message(finishing(&[mill()], &[]), &["nothing is known", "width='1.60 m'"]);
    message(finishing(&[mill()], &[("widht", 60.0)]), &["did you mean 'width'"]);
    message(finishing(&[mill()], &[("width", -1.0)]), &["width", "0"]);
    let said = |name, text| {
        let mut given = PROCESS.blank();
        given.set_text(name, text)
    };
    message(said("widht_shrinkage", "1 %"), &["did you mean 'width_shrinkage'", "over_width"]);
    message(said("length_shrinkage", "120 %"), &["length", "120 %"]);
    message(alone(&process("  ", &[])), &["is not the name", "'mill'"]);
    let twice = process("mill", &[("width_shrinkage", 0.1), ("width_change", -0.1)]);
    message(alone(&twice), &["width_shrinkage and width_change", "omit all but one"]);
    message(alone(&sample("felt", Some([1.0, 0.9]), None)), &["1 in", "0.5 in", "larger"]);
    let mut half = sample("felt", Some([60.0, 50.0]), None);
    half.1.retain(|(name, _)| *name != "width_after");
    message(alone(&half), &["width_after"]);
    // The yarn would be shorter than the cloth it lies in.
    let short = process("mill", &[("length_shrinkage", 0.2), ("warp_yarn_shrinkage", 0.25)]);
    message(
        finishing(&[short], &[("length", 10.0), ("warp_crimp", 0.04)]),
        &["crimp of the warp", "after mill", "warp_yarn_shrinkage"],
    );
}

#[test]
fn what_is_unusual_is_warned_of_with_its_range() {
    let told = |process: Said| alone(&process).unwrap().warnings().join("\n");
    let usual = [("width_shrinkage", 0.18), ("length_shrinkage", 0.1), ("mass_loss", 0.02)];
    assert_eq!(told(process("mill", &usual)), "");
    let far = told(process("fulling", &[("width_shrinkage", 0.6)]));
    assert!(far.contains("60 %") && far.contains("3 to 43 %") && far.contains("memory"), "{far}");
    assert!(told(process("press", &[("mass_loss", 0.2)])).contains("−1 to 1 %"));
    assert!(told(process("mil", &[])).contains("did you mean 'mill'"));
    // A mill's own word is its own.
    assert_eq!(told(process("the old wet room", &[("width_shrinkage", 0.6)])), "");
    let small = told(sample("wash", Some([10.0, 9.0]), None));
    assert!(small.contains("0.35 m") && small.contains("3 specimens"), "{small}");
    // The loom is too narrow: what finishes from it is told.
    let full = [process("full", &[("width_shrinkage", 0.1875)])];
    let mut given = chain(TO_WEAVE.blank(), &full, &[]).unwrap();
    given.set("width", inches(60.0)).unwrap();
    given.set("loom_width", inches(64.0)).unwrap();
    let wide = TO_WEAVE.solve(given).unwrap();
    let warning = wide.warnings().join("\n");
    assert!(warning.contains("73.85 in") && warning.contains("52 in"), "{warning}");
    assert!(near(of(&wide, "widest_finished_width"), 52.0 * 0.0254));
}

/// 0.8 of the width and 0.9 of the length are 0.72 of the area: 28 % is lost, and the mass that stays
/// lies on 1/0.72.
#[test]
fn a_process_says_the_area_lost_and_what_becomes_of_the_mass_per_area() {
    let mill = [("name", "mill"), ("width_shrinkage", "20 %"), ("length_shrinkage", "10 %")];
    let done = PROCESS.solve_texts(&mill).unwrap();
    assert!(near(of(&done, "area_shrinkage"), 0.28));
    assert!(near(of(&done, "mass_per_area_factor"), 1.0 / 0.72));
}

/// 0.72 of the area is left: with 0.8 of the width, 0.9 of the length, and the reverse; of 0.64, where nothing
/// is said of the sides, 0.8 of each.
#[test]
fn a_process_takes_the_area_lost_for_a_side() {
    let felt = |more: &[(&'static str, &'static str)]| {
        PROCESS.solve_texts(&[&[("name", "felt")], more].concat())
    };
    for more in [
        &[("area_shrinkage", "28 %"), ("width_shrinkage", "20 %")][..],
        &[("area_shrinkage", "28 %"), ("length_shrinkage", "10 %")],
        &[("area_shrinkage", "28 %"), ("width_before", "50 cm"), ("width_after", "40 cm")],
    ] {
        let done = felt(more).unwrap();
        assert!(near(of(&done, "width_shrinkage"), 0.2), "{more:?}");
        assert!(near(of(&done, "length_shrinkage"), 0.1), "{more:?}");
        assert!(near(of(&done, "area_shrinkage"), 0.28), "{more:?}");
        assert!(near(of(&done, "mass_per_area_factor"), 1.0 / 0.72), "{more:?}");
    }
    let alike = felt(&[("area_shrinkage", "36 %")]).unwrap();
    assert!(near(of(&alike, "width_shrinkage"), 0.2) && near(of(&alike, "length_shrinkage"), 0.2));
    assert!(alike.report().text().contains("shrink alike"), "{}", alike.report().text());
    let three =
        [("area_shrinkage", "28 %"), ("width_shrinkage", "20 %"), ("length_shrinkage", "9 %")];
    let error = felt(&three).unwrap_err().to_string();
    assert!(error.contains("omit area_shrinkage or one of them"), "{error}");
}

#[test]
fn specimens_that_were_weighed_stay_masses_in_the_working() {
    let wash = [("name", "wash"), ("mass_before", "50 g"), ("mass_after", "48 g")];
    let working = PROCESS.solve_texts(&wash).unwrap().working("mass_loss").unwrap();
    assert!(
        working.text().contains("50 g") && working.text().contains("0.05 kg"),
        "{}",
        working.text()
    );
}
