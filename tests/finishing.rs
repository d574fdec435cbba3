//! Finishing as a chain: forward and back undo each other, shrinkages compound, threads and mass agree,
//! samples say what was measured; against cloths that were measured before and after.

mod cases;

use cases::cases;
use hankwise::cloth::{
    Measured, Process, SAID_OF_PROCESS, finishing, known_in_finishing, to_weave,
};
use hankwise::particulars::Particulars;
use hankwise::prelude::*;
use hankwise::quantity::{Amount, unit};
use proptest::prelude::*;

type Known = (&'static str, Amount, Option<String>);

/// A figure in the base unit of its kind.
fn amount(x: f64, kind: Kind) -> Amount {
    let name = if kind.family() == Kind::Fraction { "fraction" } else { kind.base() };
    Amount { number: x, unit: unit(name, Some(kind)).unwrap() }
}

fn process(name: &str, said: &[(&str, f64)]) -> Process {
    let mut process = Process::new(name).unwrap();
    for (name, x) in said {
        process.set(name, amount(*x, Process::said(name).unwrap().kind), None).unwrap();
    }
    process
}

fn cloth(known: &[(&'static str, f64)]) -> Vec<Known> {
    let figure = |(name, x): &(&'static str, f64)| {
        (*name, amount(*x, known_in_finishing(name).unwrap().kind), None)
    };
    known.iter().map(figure).collect()
}

fn of(cloth: &Particulars, name: &str) -> f64 {
    cloth.find(name).unwrap_or_else(|e| panic!("{e}")).value
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs())
}

const NAMES: [&str; 9] = [
    "width",
    "length",
    "ends",
    "picks",
    "warp",
    "weft",
    "warp_crimp",
    "weft_crimp",
    "mass_per_area",
];

/// Any chain of up to five processes, each with any of its figures left out.
fn processes() -> impl Strategy<Value = Vec<Process>> {
    let one = (
        proptest::option::of(-0.1..0.4_f64),
        proptest::option::of(-0.1..0.4_f64),
        proptest::option::of(-0.05..0.2_f64),
        // The yarn shrinks by a share of what the cloth shrinks: it cannot be shorter than the cloth.
        proptest::option::of(0.0..1.0_f64),
        proptest::option::of(0.0..1.0_f64),
    );
    proptest::collection::vec(one, 1..6).prop_map(|all| {
        let names = ["scour", "mill", "own process", "tenter", "mill"];
        all.into_iter()
            .enumerate()
            .map(|(k, (width, length, loss, warp, weft))| {
                let yarn = |share: Option<f64>, s: Option<f64>| {
                    share.map(|share| share * s.unwrap_or(0.0).max(0.0))
                };
                // Where the cloth grows, the yarn is left to grow with it.
                let grows = |s: Option<f64>| s.is_some_and(|s| s < 0.0);
                let said = [
                    ("width", width),
                    ("length", length),
                    ("loss", loss),
                    ("warp_yarn", yarn(warp, length).filter(|_| !grows(length))),
                    ("weft_yarn", yarn(weft, width).filter(|_| !grows(width))),
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
        let there = finishing(&processes, &cloth(&loom)).unwrap();
        let finished = NAMES.map(|name| (name, of(&there, &format!("finished_{name}"))));
        let back = to_weave(&processes, &cloth(&finished), None).unwrap();
        for (name, x) in &loom {
            let found = of(&back, &format!("loom_{name}"));
            prop_assert!((found - x).abs() <= 1e-11 * x.abs().max(0.01), "{name}: {x} became {found}");
        }
        // Every stage of the one is that of the other.
        for figure in back.figures() {
            let Ok(other) = there.find(&figure.name) else { continue };
            let (a, b) = (figure.value, other.value);
            prop_assert!((a - b).abs() <= 1e-11 * a.abs().max(0.01), "{}: {a} and {b}", figure.name);
        }
    }

    /// The mass by the balance of the chain is that of the threads as they are at every stage.
    #[test]
    fn threads_weigh_what_the_balance_says(processes in processes(), loom in threads()) {
        let chain = finishing(&processes, &cloth(&loom)).unwrap();
        let stages: Vec<_> = chain.figures().iter()
            .filter_map(|f| f.name.strip_suffix("_mass_per_area"))
            .map(str::to_owned).collect();
        prop_assert_eq!(stages.len(), processes.len() + 2);
        for stage in stages {
            let [n1, n2, t1, t2, c1, c2, b, l, w, m, running] =
                ["ends", "picks", "warp", "weft", "warp_crimp", "weft_crimp", "width", "length",
                 "mass_per_area", "mass", "running_mass"].map(|name| of(&chain, &format!("{stage}_{name}")));
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
        let chain = finishing(&processes, &cloth(&loom)).unwrap();
        let number = |stage: &str, n: &str, side: &str| {
            of(&chain, &format!("{stage}_{n}")) * of(&chain, &format!("{stage}_{side}"))
        };
        for (n, side) in [("ends", "width"), ("picks", "length")] {
            let (before, after) = (number("loom", n, side), number("finished", n, side));
            prop_assert!((before / after - 1.0).abs() < 1e-12);
        }
        let factor = |name: &str| of(&chain, &format!("finished_{name}")) / of(&chain, &format!("loom_{name}"));
        let by = |name: &str| {
            processes.iter().map(|p| 1.0 - p.figure(name).unwrap_or(0.0)).product::<f64>()
        };
        prop_assert!(near(factor("width"), by("width")));
        prop_assert!(near(factor("length"), by("length")));
        prop_assert!((factor("mass") / by("loss") - 1.0).abs() < 1e-12);
    }

    /// Whatever form a change of size is said in, the cloth is the same.
    #[test]
    fn forms_agree(s in -0.3..0.45_f64) {
        let forms = [("width", s), ("over_width", s / (1.0 - s)), ("width_change", -s)];
        for (name, x) in forms {
            let one = finishing(&[process("mill", &[(name, x)])], &cloth(&[("width", 2.0)])).unwrap();
            prop_assert!((of(&one, "finished_width") - 2.0 * (1.0 - s)).abs() < 1e-12);
        }
    }

    /// The band of a sample holds every figure that the readings leave possible, and no more.
    #[test]
    fn a_band_is_what_misreading_can_do(
        pairs in proptest::collection::vec((0.5..2.0_f64, 0.5..1.1_f64), 1..5), off in 0.0..0.02_f64,
        at in proptest::collection::vec((-1.0..=1.0_f64, -1.0..=1.0_f64), 5),
    ) {
        let specimen = |(x, kept): &(f64, f64)| [*x, x * kept].map(|x| (amount(x, Kind::Length), None));
        let measured =
            Measured::new(Kind::Length, pairs.iter().map(specimen).collect(), Some(amount(off, Kind::Length)));
        let felt = Process::from_sample("felt", Some(measured.unwrap()), None, None).unwrap();
        let (low, high) = felt.band("width").unwrap();
        let mean = pairs.iter().map(|(_, kept)| 1.0 - kept).sum::<f64>() / pairs.len() as f64;
        prop_assert!((felt.figure("width").unwrap() - mean).abs() < 1e-12);
        let read = |((x, kept), (a, b)): (&(f64, f64), &(f64, f64))| 1.0 - (x * kept + b * off) / (x + a * off);
        for found in pairs.iter().zip(&at).map(read) {
            prop_assert!(found >= low - 1e-12 && found <= high + 1e-12);
        }
        let worst = pairs.iter().map(|pair| read((pair, &(1.0, -1.0)))).fold(f64::MIN, f64::max);
        prop_assert!((worst - high).abs() < 1e-12);
        // The chain carries it: forward with the sample lies between the ends put in by hand.
        let chain = |s: f64| {
            let mill = process("mill", &[("width", s)]);
            of(&finishing(&[mill], &cloth(&[("width", 1.5)])).unwrap(), "finished_width")
        };
        let likely = of(&finishing(&[felt], &cloth(&[("width", 1.5)])).unwrap(), "finished_width");
        prop_assert!(chain(high) <= likely + 1e-12 && likely <= chain(low) + 1e-12);
    }
}

fn inches(x: f64) -> Amount {
    parse(&format!("{x} in")).unwrap()
}

fn sample(name: &str, width: Option<[f64; 2]>, length: Option<[f64; 2]>) -> Process {
    let measured = |pair: [f64; 2]| {
        Measured::new(Kind::Length, vec![pair.map(|x| (inches(x), None))], Some(inches(0.5)))
            .unwrap()
    };
    Process::from_sample(name, width.map(measured), length.map(measured), None).unwrap()
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
        let chain: Vec<Process> =
            relaxed.into_iter().chain([sample("wash", wash, length)]).collect();
        let mut loom = vec![("width", inches(start), None)];
        loom.extend(length.map(|[before, _]| ("length", inches(before), None)));
        let there = finishing(&chain, &loom).unwrap();
        assert!(near(of(&there, "finished_width"), 0.0254 * finished), "{id}");
        let lost = 100.0 * of(&there, "width_shrinkage");
        let printed = size("calc_width_loss_pct").unwrap();
        assert!((lost - printed).abs() < 0.006, "{id}: {lost} % and {printed} %");
        widths += 1;
        let back = to_weave(&chain, &[("width", inches(finished), None)], None).unwrap();
        assert!(near(of(&back, "loom_width"), 0.0254 * start), "{id}");
        if let (Some([_, after]), Some(printed)) = (length, size("calc_area_loss_pct")) {
            assert!(near(of(&there, "finished_length"), 0.0254 * after), "{id}");
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
    let chain =
        [process("relax", &[("width", 6.0 / 54.0)]), process("wash", &[("width", 8.0 / 48.0)])];
    let blanket = finishing(&chain, &cloth(&[("width", 54.0 * 0.0254)])).unwrap();
    assert!(near(of(&blanket, "relax_width"), 48.0 * 0.0254));
    assert!(near(of(&blanket, "finished_width"), 40.0 * 0.0254));
    assert!(near(of(&blanket, "width_shrinkage"), 14.0 / 54.0));
    assert!(near(of(&blanket, "over_width"), 14.0 / 40.0));
}

#[test]
fn equal_names_are_told_apart() {
    let twice = [
        process("mill", &[("width", 0.1)]),
        process("mill", &[("width", 0.2)]),
        process("loom", &[("width", 0.05)]),
    ];
    let chain = finishing(&twice, &cloth(&[("width", 1.0)])).unwrap();
    assert!(near(of(&chain, "mill_width"), 0.9) && near(of(&chain, "mill_2_width"), 0.72));
    assert!(near(of(&chain, "loom_width"), 1.0) && near(of(&chain, "loom_2_width"), 0.684));
}

#[test]
fn a_working_begins_with_what_was_measured() {
    let felt = sample("felt", Some([62.0, 57.0]), None);
    let chain = finishing(&[felt], &[("width", inches(66.0), Some("66 in".into()))]).unwrap();
    let text = chain.working("finished_width").unwrap().text();
    for piece in ["66 in", "62", "57", "shrinkage_from_sizes", "size_after_shrinkage"] {
        assert!(text.contains(piece), "{piece} is not in\n{text}");
    }
}

/// A gain is no loss turned round by hand: 3 % on is × 1.03.
#[test]
fn flock_fed_in_weighs() {
    let mill = process("mill", &[("gain", 0.03)]);
    let chain = finishing(&[mill], &cloth(&[("mass", 20.0)])).unwrap();
    assert!(near(of(&chain, "finished_mass"), 20.6));
    assert!(near(of(&chain, "loss"), -0.03));
}

fn message<T: std::fmt::Debug>(result: Result<T>, pieces: &[&str]) {
    let text = result.unwrap_err().to_string();
    for piece in pieces {
        assert!(text.contains(piece), "'{piece}' is not in: {text}");
    }
}

#[test]
fn what_is_wrong_is_told_with_what_to_type() {
    let mill = || process("mill", &[("width", 0.2)]);
    message(finishing(&[], &cloth(&[("width", 1.0)])), &["no process", "'18 %'"]);
    message(finishing(&[mill()], &[]), &["nothing is known", "width='1.60 m'"]);
    message(finishing(&[mill()], &[("widht", inches(60.0), None)]), &["did you mean 'width'"]);
    message(finishing(&[mill()], &[("width", amount(-1.0, Kind::Length), None)]), &["width", "0"]);
    message(Process::said("widht"), &["did you mean 'width'", "over_width"]);
    message(Process::said("mass"), &["'loss' or a 'gain'"]);
    message(Process::new("  "), &["no name", "'mill'"]);
    let twice = mill().set("width_change", amount(-0.1, Kind::DimensionalChange), None);
    message(twice, &["width and width_change both give"]);
    message(mill().set("length", amount(1.2, Kind::Shrinkage), None), &["length", "120 %"]);
    let off = Measured::new(
        Kind::Length,
        vec![[(inches(1.0), None), (inches(0.9), None)]],
        Some(inches(0.5)),
    );
    message(off, &["1 in", "0.5 in", "larger"]);
    message(Process::from_sample("felt", None, None, None), &["nothing was measured"]);
    // The yarn would be shorter than the cloth it lies in.
    let short = process("mill", &[("length", 0.2), ("warp_yarn", 0.25)]);
    message(
        finishing(&[short], &cloth(&[("length", 10.0), ("warp_crimp", 0.04)])),
        &["crimp of the warp", "after mill", "warp_yarn"],
    );
}

#[test]
fn what_is_unusual_is_warned_of_with_its_range() {
    let told = |process: Process| process.warnings().join("\n");
    assert_eq!(told(process("mill", &[("width", 0.18), ("length", 0.1), ("loss", 0.02)])), "");
    let far = told(process("fulling", &[("width", 0.6)]));
    assert!(far.contains("60 %") && far.contains("3 to 43 %") && far.contains("memory"), "{far}");
    assert!(told(process("press", &[("loss", 0.2)])).contains("−1 to 1 %"));
    assert!(told(process("mil", &[])).contains("did you mean 'mill'"));
    // A mill's own word is its own.
    assert_eq!(told(process("the old wet room", &[("width", 0.6)])), "");
    let small = told(sample("wash", Some([10.0, 9.0]), None));
    assert!(small.contains("0.35 m") && small.contains("3 specimens"), "{small}");
    // The loom is too narrow: what finishes from it is told.
    let chain = [process("full", &[("width", 0.1875)])];
    let wide = to_weave(&chain, &[("width", inches(60.0), None)], Some(inches(64.0))).unwrap();
    let warning = wide.warnings().join("\n");
    assert!(warning.contains("73.85 in") && warning.contains("52 in"), "{warning}");
    assert!(near(of(&wide, "widest_finished"), 52.0 * 0.0254));
}

#[test]
fn every_figure_of_a_process_can_be_said() {
    for said in &SAID_OF_PROCESS {
        let process = process("mill", &[(said.name, 0.01)]);
        assert_ne!(process.report().text(), Process::new("mill").unwrap().report().text());
    }
}

/// 0.8 of the width and 0.9 of the length are 0.72 of the area: 28 % is lost, and the mass that stays
/// lies on 1/0.72.
#[test]
fn a_process_says_the_area_lost_and_what_becomes_of_the_mass_per_area() {
    let text = process("mill", &[("width", 0.2), ("length", 0.1)]).report().text();
    assert!(text.contains("area lost 28 %") && text.contains("mass per area × 1.389"), "{text}");
}

#[test]
fn specimens_that_were_weighed_stay_masses_in_the_working() {
    let weighed = |grams: f64| (parse(&format!("{grams} g")).unwrap(), None);
    let pairs = vec![[weighed(50.0), weighed(48.0)]];
    let mass = Measured::new(Kind::Mass, pairs, None).unwrap();
    let wash = Process::from_sample("wash", None, None, Some(mass)).unwrap();
    let chain = finishing(&[wash], &cloth(&[("mass_per_area", 0.3)])).unwrap();
    let working = chain.working("finished_mass_per_area").unwrap();
    assert!(working.text().contains("0.05 kg"), "{}", working.text());
}
