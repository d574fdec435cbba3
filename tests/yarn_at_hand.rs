//! Pieces from the yarn at hand, and warps of several pieces, by hand.

use hankwise::calculation::Solved;
use hankwise::cloth::{PIECE, PIECES_FROM_YARN};

/// 1000 ends of 2 m are 200 g of 100 tex, and so are 2000 picks of 1 m.
const PLAIN: [(&str, &str); 6] = [
    ("wanted_width", "1 m"),
    ("wanted_length", "2 m"),
    ("wanted_reed_sett", "10 ends/cm"),
    ("weft_sett", "10 picks/cm"),
    ("warp_count", "100 tex"),
    ("weft_count", "100 tex"),
];

fn of(solved: &Solved, name: &str) -> f64 {
    solved.find(name).unwrap().value
}

/// Half a kilogram of each makes two pieces and leaves 100 g.
#[test]
fn what_two_pieces_leave_of_half_a_kilogram() {
    let hand = [("warp_yarn_at_hand", "500 g"), ("weft_yarn_at_hand", "500 g")];
    let made = PIECES_FROM_YARN.solve_texts(&[&PLAIN[..], &hand[..]].concat()).unwrap();
    assert!((of(&made, "pieces") - 2.0).abs() < 1e-12);
    for left in ["warp_yarn_left", "weft_yarn_left"] {
        assert!((of(&made, left) - 0.1).abs() < 1e-9, "{left}");
    }
}

#[test]
fn the_last_warp_has_the_lengths_that_are_left() {
    for (pieces, last) in [("5", 1.0), ("4", 2.0)] {
        let warps = [("pieces_per_warp", "2"), ("pieces", pieces)];
        let piece = PIECE.solve_texts(&[&PLAIN[..], &warps[..]].concat()).unwrap();
        assert!((of(&piece, "lengths_on_last") - last).abs() < 1e-12, "{pieces}");
    }
}
