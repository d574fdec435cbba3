//! Orders of colour: read, laid, counted.

use hankwise::cloth::ColourOrder;
use proptest::prelude::*;

fn order(text: &str) -> ColourOrder {
    text.parse().unwrap()
}

#[test]
fn an_order_is_read_as_it_is_written() {
    for (text, same) in [
        ("24 grey 4 white", "24 grey 4 white"),
        (" 24 Grey, 4 white ", "24 Grey 4 white"),
        ("8grey 2white 8 GREY", "8 grey 2 white 8 grey"),
        ("6 light grey 2 #a0b0c0", "6 light grey 2 #a0b0c0"),
        ("(2 black 2 white) x3 8 grey", "2 black 2 white 2 black 2 white 2 black 2 white 8 grey"),
        ("(2 black 2 white)×2 (1 red)", "2 black 2 white 2 black 2 white 1 red"),
        ("4 grey 4 grey", "8 grey"),
        ("4 black/white 2 sand and stone", "4 black/white 2 sand and stone"),
    ] {
        assert_eq!(order(text).to_string(), same, "{text}");
        assert_eq!(order(same), order(text));
    }
}

#[test]
fn a_slip_of_the_pen_is_told_with_what_to_write() {
    for (text, why) in [
        ("", "no colour"),
        ("grey 8", "no thread count before 'grey'"),
        ("8", "no colour after 8"),
        ("8 grey 2", "no colour after 2"),
        ("8 2 grey", "no colour after 8"),
        ("0 grey 4 white", "omit it"),
        ("(2 black 2 white x3", "not closed"),
        ("2 black) 2 white", "not opened"),
        ("(2 black) x", "how often"),
        ("99999999999 grey", "more threads"),
        ("(9999 a 1 b) x9999", "more than 10000"),
        ("(((((((((1 a", "too deep"),
        ("3 (4 blue 4 white)", "'(…) x3'"),
        ("3 x (4 blue 4 white)", "'(…) x3'"),
        ("4×blue 4×white", "omit the ×"),
        ("4 x blue 4 white", "'x' is not a colour"),
        ("1.5 blue 4 white", "threads are whole"),
        ("4 blue/4 white", "not by '/'"),
        ("4 blue + 4 white", "not by '+'"),
        ("4 blue and 4 white", "omit 'and'"),
        ("4 ends blue 4 ends white", "omit 'ends'"),
        ("4 blue\u{0} 4 white", "cannot be part of a colour"),
    ] {
        let error = text.parse::<ColourOrder>().unwrap_err().to_string();
        assert!(error.contains(why) && error.contains("24 grey 4 white"), "{text}: {error}");
    }
}

/// The warp of a rug that begins and ends with its ground: 22 repeats of 28 and 24 over are a ground
/// stripe more than there are lines.
#[test]
fn a_stripe_begins_and_ends_with_its_ground() {
    let laid = order("24 grey 4 white").balanced(640).unwrap();
    assert_eq!((laid.repeats, laid.over, laid.mirrored), (22, 24, true));
    assert_eq!(laid.counts(), [("grey", 23 * 24), ("white", 22 * 4)]);
    assert_eq!(laid.edges[0].to_string(), "24 grey");
    let odd = order("24 grey 4 white").balanced(641).unwrap();
    assert_eq!((odd.mirrored, odd.odd, odd.threads()), (false, 1, 641));
    assert!(odd.words("ends").contains("one too many at the right"), "{}", odd.words("ends"));
    // No middle: three colours round and round have no other way.
    let round = order("8 red 4 blue 2 white").balanced(14 * 10 + 6).unwrap();
    assert_eq!((round.mirrored, round.odd, round.over), (false, 0, 6));
    assert_eq!(round.edges[0].to_string(), "1 of 4 blue");
}

#[test]
fn a_colour_that_gets_no_thread_is_named() {
    let few = order("1000 blue 4 white").from_start(700).unwrap();
    assert!(few.words("ends").contains("no white in so few ends"), "{}", few.words("ends"));
    let all = order("10 blue 4 white").from_start(700).unwrap();
    assert!(!all.words("ends").contains("so few"));
}

fn orders() -> impl Strategy<Value = ColourOrder> {
    let stripe = (1u32..12, 0usize..4);
    proptest::collection::vec(stripe, 1..7).prop_map(|stripes| {
        let names = ["grey", "white", "black", "light blue"];
        let text: Vec<String> = stripes.iter().map(|(n, c)| format!("{n} {}", names[*c])).collect();
        order(&text.join(" "))
    })
}

proptest! {
    #[test]
    fn threads_of_the_colours_sum_to_the_threads(order in orders(), threads in 1u32..900) {
        for laid in [order.balanced(threads).unwrap(), order.from_start(threads).unwrap()] {
            prop_assert_eq!(laid.threads(), threads);
            prop_assert_eq!(laid.counts().iter().map(|(_, n)| n).sum::<u32>(), threads);
            prop_assert_eq!(laid.repeats * order.threads() + laid.over, threads);
        }
    }

    /// What is laid is a piece of the repeat going round, and where it says so the same from both
    /// edges; found by brute force over every start.
    #[test]
    fn a_mirror_is_one_and_is_found_where_there_is_one(order in orders(), threads in 1u32..120) {
        let repeat = order.sequence();
        let piece = |start: usize, n: usize| -> Vec<&str> {
            (0..n).map(|i| repeat[(start + i) % repeat.len()]).collect()
        };
        let laid = order.balanced(threads).unwrap();
        let colours: Vec<&str> = laid
            .stripes
            .iter()
            .flat_map(|s| std::iter::repeat_n(s.colour.as_str(), s.threads as usize))
            .collect();
        let n = threads as usize;
        prop_assert!((0..repeat.len()).any(|start| piece(start, n) == colours));
        let same = |all: &[&str]| all.iter().eq(all.iter().rev());
        if laid.mirrored {
            prop_assert!(same(&colours));
        } else if laid.odd == 1 {
            prop_assert!(same(&colours[..n - 1]));
        }
        // Where the repeat itself has a middle, a mirror is found, but for one odd thread.
        let has = (0..repeat.len()).any(|start| same(&piece(start, repeat.len() * 2)));
        let has = has || (0..repeat.len()).any(|start| same(&piece(start, repeat.len() * 2 + 1)));
        prop_assert_eq!(has && n > 1, (laid.mirrored || laid.odd == 1) && n > 1);
    }
}
