//! What must hold between the formulas of twist, reeling, winding and knitting, whatever the figures.

mod cases;

use cases::cases;
use hankwise::prelude::*;
use proptest::prelude::*;

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs())
}

proptest! {
    #![proptest_config(cases(200))]

    /// What the traveller leaves out, unwinding over the end gives back, at any diameter.
    #[test]
    fn over_end_unwinding_gives_back_what_the_traveller_lags(
        n in 1000.0..20_000.0, v in 5.0..60.0, d in 0.015..0.1
    ) {
        let (n, v, d) = (Frequency::base(n), Speed::base(v), Length::base(d));
        let on_bobbin = yarn::twist_on_ring_bobbin(n, v, d);
        let nominal = yarn::twist_from_speed(n, v).value();
        prop_assert!(near(yarn::twist_gained_over_end(on_bobbin, d).value(), nominal));
        prop_assert!(near(on_bobbin.value() + yarn::twist_of_a_coil(d).value(), nominal));
        let traveller = yarn::traveller_speed(n, v, d);
        prop_assert!(near(yarn::twist_from_speed(traveller, v).value(), on_bobbin.value()));
        prop_assert!(near(traveller.value() + yarn::winding_lag(v, d).value(), n.value()));
        prop_assert!(near(yarn::two_for_one_twist(n, v).value(), 2.0 * nominal));
        let twist = Twist::base(nominal);
        let there_and_back = yarn::twist_lost_over_end(yarn::twist_gained_over_end(twist, d), d);
        prop_assert!(near(there_and_back.value(), nominal));
    }

    /// A change of count keeps the factor; a change of factor keeps the count.
    #[test]
    fn a_new_count_keeps_the_factor(t in 50.0..1500.0, from in 10.0..500.0, to in 10.0..500.0, k in 10.0..60.0) {
        let (from, to) = (LinearDensity::base(from), LinearDensity::base(to));
        let factor = yarn::twist_factor(Twist::base(t), from);
        let changed = yarn::twist_for_new_count(Twist::base(t), from, to);
        prop_assert!(near(yarn::twist_factor(changed, to).value(), factor.value()));
        let harder = yarn::twist_for_new_factor(Twist::base(t), factor, TwistFactor::base(k));
        prop_assert!(near(yarn::twist_factor(harder, from).value(), k));
    }

    /// The rule of 1885 is the multiplier's own twist at 30s, less below and more above.
    #[test]
    fn lincolns_rule_turns_at_thirties(n in 6.0..100.0_f64, factor in 30.0..55.0) {
        let factor = TwistFactor::base(factor);
        let count = LinearDensity::parse(&format!("{n} Ne")).unwrap();
        let plain = yarn::twist_for_factor(factor, count).number("tpi").unwrap();
        let rule = yarn::twist_by_lincoln(factor, count).number("tpi").unwrap();
        prop_assert!((rule - plain - 0.2 * (n - 30.0)).abs() < 1e-9 * plain.max(1.0));
    }

    /// A draw's turns are those while drafting and those at the head.
    #[test]
    fn the_turns_of_a_draw_add_up(
        twist in 100.0..500.0, wound in 1.3..2.0, slip in 0.0..0.05, speed in 300.0..1500.0, run in 0.001..0.003
    ) {
        let (twist, wound) = (Twist::base(twist), Length::base(wound));
        let (slip, coiling) = (Fraction::base(slip), Count::base(6.0));
        let all = mill::turns_per_draw(twist, wound, coiling, slip);
        let drafting = mill::turns_while_drafting(Frequency::base(speed), Duration::base(run));
        let head = mill::turns_at_head(all, drafting);
        prop_assert!((head.value() + drafting.value() - all.value()).abs() < 1e-9);
        let both = Count::base(head.value() + drafting.value());
        prop_assert!(near(mill::mule_twist(both, slip, coiling, wound).value(), twist.value()));
        let time = mill::head_time(head, Frequency::base(2400.0));
        prop_assert!((time.value() * 60.0 * 2400.0 - head.value()).abs() < 1e-9 * all.value());
    }

    /// A hank reeled for a mass is not light and not a turn too heavy.
    #[test]
    fn a_hank_reeled_for_a_mass_has_it(grams in 20.0..500.0, reel in 0.9..2.5, tex in 20.0..1000.0) {
        let (mass, reel, count) = (Mass::base(grams / 1000.0), Length::base(reel), LinearDensity::base(tex));
        let turns = yarn::reel_turns_for_mass(mass, reel, count);
        prop_assert!(turns.value().fract().abs() < f64::EPSILON);
        let turn = reel.value() * tex * 1e-6;
        let made = yarn::hank_mass(turns, reel, count).value();
        prop_assert!(made >= mass.value() - 2e-6 * turn && made < mass.value() + turn);
    }

    /// Whole hanks and full packages take no more than there is; the rest is less than one.
    #[test]
    fn whole_ones_and_the_rest(kg in 0.5..200.0, tex in 20.0..1000.0, metres in 50.0..1000.0, net in 0.1..3.0) {
        let (mass, count, hank) = (Mass::base(kg), LinearDensity::base(tex), Length::base(metres));
        let exact = yarn::hanks_in_mass(mass, count, hank).value();
        let rest = exact - yarn::full_hanks(mass, count, hank).value();
        prop_assert!((-2e-6..1.0).contains(&rest), "{rest}");
        let packages = yarn::packages_for_mass(mass, Mass::base(net)).value();
        prop_assert!(packages * net >= kg - 2e-6 * net && (packages - 1.0) * net < kg);
        let knots = yarn::knots_in_package(Mass::base(kg), Mass::base(net)).value();
        prop_assert!(near(knots + 1.0, packages));
    }

    /// Every whole number stays itself, however the binary values round.
    #[test]
    fn whole_numbers_stay(n in 1_u32..5000, tex in 20.0..1000.0, metres in 50.0..1000.0) {
        let mass = Mass::base(f64::from(n) * tex * metres * 1e-6);
        let (count, hank) = (LinearDensity::base(tex), Length::base(metres));
        prop_assert!(near(yarn::full_hanks(mass, count, hank).value(), f64::from(n)));
        prop_assert!(near(yarn::packages_for_mass(mass, yarn::mass_of_length(count, hank)).value(), f64::from(n)));
    }

    /// Winding time and output are two sides of one thing; ends on a beam are lengths added up.
    #[test]
    fn time_times_output_is_the_mass(
        v in 100.0..1200.0, drums in 1_u32..100, share in 0.4..1.0, tex in 10.0..500.0, km in 1.0..5000.0
    ) {
        let (v, drums, share) = (Speed::base(v), Count::base(f64::from(drums)), Fraction::base(share));
        let (count, length) = (LinearDensity::base(tex), Length::base(1000.0 * km));
        let time = yarn::winding_time(length, v, drums, share).value();
        let rate = yarn::winding_output(v, drums, share, count).value();
        let mass = yarn::mass_of_length(count, length);
        prop_assert!(near(time * rate, mass.value()));
        let side_by_side = yarn::length_of_ends(mass, count, drums).value();
        prop_assert!(near(side_by_side * drums.value(), length.value()));
        let with_waste = yarn::mass_of_ends(count, Length::base(side_by_side), drums, ShareLost::base(0.25));
        prop_assert!(near(with_waste.value(), 1.25 * mass.value()));
    }

    /// The roller's length, by its turns, is what its twist is put into: output from either end.
    #[test]
    fn a_spindles_output_goes_with_its_twist(turns in 20.0..200.0, c in 0.06..0.2, rpm in 50.0..200.0, tex in 10.0..200.0) {
        let (roller, count) = (Length::base(c), LinearDensity::base(tex));
        let (hours, all) = (Duration::base(10.0), Fraction::base(1.0));
        let mass = mill::mass_of_spindle(Frequency::base(rpm), roller, hours, all, count);
        let twist = yarn::twist_from_roller(Ratio::base(turns), roller);
        let speed = mill::twister_output_speed(Count::base(1.0), Frequency::base(turns * rpm), twist, all);
        prop_assert!(near(speed.value() * 600.0 * tex * 1e-6, mass.value()));
    }

    /// A metric and a cotton ticket differ as their counts do; cords of a number weigh alike.
    #[test]
    fn tickets_follow_their_counts(tex in 10.0..200.0, ends in 1_u32..6, cords in 2_u32..12) {
        let (single, ends) = (LinearDensity::base(tex), Count::base(f64::from(ends)));
        let (metric, cotton) = (yarn::metric_ticket(single, ends), yarn::cotton_ticket(single, ends));
        let in_cotton = convert(metric.value(), "Nm", "Ne").unwrap();
        prop_assert!((cotton.value() / in_cotton - 1.0).abs() < 1e-12);
        let cords = Count::base(f64::from(cords));
        let six = yarn::fold_alike(yarn::cord_single(single, cords), cords, Contraction::base(0.0));
        prop_assert!(near(six.value(), 3.0 * tex));
    }

    /// Yarn unravelled: courses of loops weigh what so many metres of the yarn weigh.
    #[test]
    fn a_knitted_piece_is_its_loops(
        wales in 2.0..10.0, courses in 2.0..15.0, stitch in 0.003..0.02, width in 0.2..2.0, length in 0.5..50.0
    ) {
        let count = LinearDensity::base(100.0);
        let (w, c) = (Sett::base(wales), Sett::base(courses));
        let take_up = cloth::knit_take_up(w, Length::base(stitch));
        let mass = cloth::knit_mass(c, Length::base(width), Length::base(length), take_up, count);
        let loops = 100.0 * wales * width * 100.0 * courses * length;
        prop_assert!(near(mass.value(), yarn::mass_of_length(count, Length::base(loops * stitch)).value()));
    }
}

/// Hand tests: the same turns counted by each.
#[test]
fn ways_of_counting_twist_agree() {
    let gauge = Length::base(0.25);
    let counted = yarn::twist_counted(Ratio::base(100.0), gauge).value();
    let retwisted = yarn::twist_by_retwisting(Ratio::base(200.0), gauge).value();
    let bumps = yarn::folding_twist_from_bumps(Count::base(300.0), gauge, Count::base(3.0)).value();
    assert!(near(counted, 400.0) && near(retwisted, 400.0) && near(bumps, 400.0));
}

/// The cylinder drives the front roller through a wheel of its own and a pair of carriers: the twist
/// from the speeds is the constant of the count from the roller, over the teeth of the wheel on the
/// cylinder, which drives in the machine and so is driven in the count.
#[test]
fn the_constant_is_counted_against_the_power() {
    let (cylinder, whirl_ratio, roller) = (800.0, 7.5, 0.0785);
    let (on_roller, stud_large, stud_small) = (84.0, 96.0, 21.0);
    let constant = mill::twist_constant::<f64>(
        Ratio::base(whirl_ratio),
        Length::base(roller),
        &[Count::base(on_roller), Count::base(stud_large)],
        &[Count::base(stud_small), Count::base(1.0)],
    );
    let card = hankwise::catalogue::formula("twist_constant").unwrap();
    assert!(card.limits[0].contains("as if the roller drove"));
    for change in [30.0, 40.0] {
        // With the power: the change wheel drives the large wheel of the stud, its small one the roller.
        let roller_speed = cylinder * (change / stud_large) * (stud_small / on_roller);
        let twist = cylinder * whirl_ratio / (roller_speed * roller);
        let from_wheel = yarn::twist_from_wheel(constant, Count::base(change)).value();
        assert!(near(from_wheel, twist), "{from_wheel}, {twist}");
    }
}

/// What these trades do every day is not called unusual.
#[test]
fn everyday_values_are_usual() {
    for (name, row, who) in [
        ("fold_alike", &[14.0 / 9.0, 2.0, 0.02][..], "a throwster folds 13/15 denier"),
        ("twist_factor", &[3500.0, 3.1], "crêpe of two such ends"),
        ("twister_output_speed", &[100.0, 12_000.0, 2500.0, 0.9], "the same at the twister"),
        ("check_weight", &[5000.0, 5.0, 1.0], "a card sliver of 5 ktex"),
        ("mass_of_length", &[20_000.0, 1.0], "a worsted top of 20 g/m"),
        ("length_of_mass", &[10.0, 5000.0], "a can of sliver"),
        ("twist_from_speed", &[400.0, 1.0], "a spinning wheel"),
        ("fibres_in_section", &[5.0, 0.12, 0.2], "5 tex of fine cotton"),
        ("knit_take_up", &[0.8, 0.03], "hand knitting on thick needles"),
    ] {
        let unusual = hankwise::catalogue::formula(name).unwrap().unusual(row);
        assert!(unusual.is_empty(), "{who}: {unusual:?}");
    }
}

/// Who is told to put on a wheel is told to stop the machine first.
#[test]
fn a_change_of_wheel_is_made_at_rest() {
    use hankwise::quantity::Kind;
    let mut wheels = 0;
    for f in hankwise::catalogue::formulas() {
        if f.name.contains("wheel") && f.output.kind == Kind::Count {
            wheels += 1;
            assert!(f.cautions.contains(&"wheels"), "{}", f.name);
        }
    }
    assert!(wheels > 5);
}
