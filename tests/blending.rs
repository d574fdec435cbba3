//! The blend against simulations of it: layers cut, passes doubled, tufts drawn.

use hankwise::calculation::Value;
use hankwise::mill;
use hankwise::prelude::*;

/// A seeded stream of numbers between 0 and 1 (SplitMix64).
struct Stream(u64);

impl Stream {
    fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1_u64 << 53) as f64
    }
    /// Thickness of a layer: mean 1, coefficient of variation `c`.
    fn thickness(&mut self, c: f64) -> f64 {
        1.0 + c * 12.0_f64.sqrt() * (self.uniform() - 0.5)
    }
}

fn deviation(all: &[f64], mean: f64) -> f64 {
    (all.iter().map(|x| (x - mean).powi(2)).sum::<f64>() / all.len() as f64).sqrt()
}

/// Shares found in cuts through a stack.
fn cuts(stream: &mut Stream, cuts: usize, p: f64, layers: usize, c: f64) -> Vec<f64> {
    let mut cut = || {
        let a: f64 = (0..layers).map(|_| p * stream.thickness(c)).sum();
        let b: f64 = (0..layers).map(|_| (1.0 - p) * stream.thickness(c)).sum();
        a / (a + b)
    };
    (0..cuts).map(|_| cut()).collect()
}

fn stack(p: f64, layers: usize, c: f64) -> f64 {
    let layers = Count::base(layers as f64);
    mill::layered_share_deviation(Fraction::base(p), layers, Fraction::base(c)).value()
}

#[test]
fn a_stack_cut_from_top_to_bottom_is_as_even_as_the_formula_says() {
    let mut stream = Stream(1);
    for (p, layers, c) in [(0.5, 4, 0.2), (0.2, 8, 0.25), (0.7, 16, 0.3), (0.5, 1, 0.15)] {
        let found = deviation(&cuts(&mut stream, 40_000, p, layers, c), p);
        let said = stack(p, layers, c);
        // To first order in c, and 40 000 cuts tell a deviation to about 0.4 %.
        assert!((found / said - 1.0).abs() < 0.03, "{p} {layers} {c}: {found}, not {said}");
    }
}

#[test]
fn passes_divide_the_variance_by_the_doublings() {
    let mut stream = Stream(2);
    let (p, layers, c, doublings) = (0.4, 4, 0.25, 3);
    let mut heap = cuts(&mut stream, 60_000, p, layers, c);
    for pass in 1..=3 {
        let places = heap.len();
        heap = (0..places)
            .map(|_| {
                let mut one = || heap[(stream.uniform() * places as f64) as usize];
                (0..doublings).map(|_| one()).sum::<f64>() / f64::from(doublings)
            })
            .collect();
        let said = mill::share_deviation_after_passes(
            Ratio::base(stack(p, layers, c)),
            Count::base(f64::from(doublings)),
            Count::base(f64::from(pass)),
        )
        .value();
        let found = deviation(&heap, p);
        assert!((found / said - 1.0).abs() < 0.05, "pass {pass}: {found}, not {said}");
    }
}

#[test]
fn samples_of_tufts_vary_as_the_heap_and_chance_together() {
    let mut stream = Stream(3);
    let (p, layers, c) = (0.3, 2, 0.3);
    for tufts in [4_u32, 30, 400] {
        let samples = cuts(&mut stream, 30_000, p, layers, c);
        let drawn: Vec<f64> = samples
            .iter()
            .map(|x| {
                let of = (0..tufts).filter(|_| stream.uniform() < *x).count();
                of as f64 / f64::from(tufts)
            })
            .collect();
        let tufts = Count::base(f64::from(tufts));
        // The heap as it came out: what the formula of the stack leaves out is not tested here.
        let (share, heap) = (Fraction::base(p), Ratio::base(deviation(&samples, p)));
        let said = mill::sampled_share_deviation(heap, share, tufts).value();
        let found = deviation(&drawn, p);
        assert!((found / said - 1.0).abs() < 0.03, "{}: {found}, not {said}", tufts.value());
        // Chance is the bound: nothing lies under it.
        assert!(said >= mill::random_share_deviation(share, tufts).value());
    }
}

#[test]
fn the_layers_wanted_are_the_fewest_that_do() {
    for wanted in [0.01, 0.017, 0.03] {
        let layers = mill::layers_for_deviation(
            Fraction::base(0.35),
            Fraction::base(wanted),
            Fraction::base(0.22),
        )
        .value() as usize;
        assert!(stack(0.35, layers, 0.22) <= wanted);
        assert!(layers == 1 || stack(0.35, layers - 1, 0.22) > wanted);
    }
}

/// Heaps with more passes have more stages; the others are not held against it.
#[test]
fn heaps_of_unlike_passes_are_one_column() {
    let texts = [
        ("component_share", "30 %"),
        ("layers", "6"),
        ("layer_cv", "25 %"),
        ("tuft_mass", "20 mg"),
        ("sample_mass", "10 g"),
        ("doublings", "4"),
    ];
    let passes = [0.0, 3.0, 1.0];
    let plain = hankwise::quantity::unit("", Some(Kind::Count)).unwrap();
    let mut given = mill::EVENNESS_OF_BLEND.blank().with_texts(&texts).unwrap();
    given.set("passes", Value::Column(passes.to_vec(), plain)).unwrap();
    let cases = mill::EVENNESS_OF_BLEND.cases(&given, &mut |_| true).unwrap();
    assert!(cases.warnings.is_empty(), "{:?}", cases.warnings);
    let column =
        |name: &str| &cases.columns.iter().find(|column| column.name == name).unwrap().values;
    for (case, passes) in passes.iter().enumerate() {
        let passes = passes.to_string();
        let one = [&texts[..], &[("passes", &passes)]].concat();
        let one = mill::EVENNESS_OF_BLEND.solve_texts(&one).unwrap();
        let found = one.find("share_sd").unwrap().value;
        assert_eq!(found.to_bits(), column("share_sd")[case].to_bits());
    }
    let third = column("pass 3.share_sd");
    assert!(third[0].is_nan() && third[1] > 0.0 && third[2].is_nan());
}

/// 57.5 kg at 15 % of water are 50 kg of fibre, where nothing is said of fat and vegetable matter; 60 kg
/// at 15 % of water and 5 % of fat are 50 kg too.
#[test]
fn what_is_not_said_to_be_on_a_component_is_not_on_it() {
    let mut given = mill::BLEND.blank();
    let component = |said: &[(&str, &str)]| given.row("components").unwrap().with_texts(said);
    let parts = [
        component(&[("name", "white"), ("mass", "57.5 kg"), ("regain", "15 %")]),
        component(&[("name", "grey"), ("mass", "60 kg"), ("regain", "15 %"), ("fat", "5 %")]),
    ];
    let parts = parts.into_iter().map(Result::unwrap).collect();
    given.set("components", Value::Rows(parts)).unwrap();
    let found = mill::BLEND.solve(given).unwrap();
    assert!((found.find("white.share").unwrap().value - 0.5).abs() < 1e-12);
}
