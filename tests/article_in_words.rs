//! What is said beside the figures of a piece.

use hankwise::cloth::Article;

/// 1000 ends of 2 m are 200 g of 100 tex, and so are 2000 picks of 1 m: half a kilogram of each makes two
/// pieces, leaves 100 g and wants 100 g more for a third.
#[test]
fn what_one_piece_more_lacks_is_what_is_not_left_over() {
    let given = [
        ("width", "1 m"),
        ("length", "2 m"),
        ("sett", "10 ends/cm"),
        ("picks", "10 picks/cm"),
        ("warp", "100 tex"),
        ("weft", "100 tex"),
        ("warp_yarn", "500 g"),
        ("weft_yarn", "500 g"),
    ];
    let made = Article::read(&given).unwrap().pieces_from_yarn().unwrap();
    let block = &made.report().blocks[0];
    assert_eq!(block.title, "2 pieces; warp yarn and weft yarn run out first");
    for line in &block.lead {
        assert!(line.contains("100 g are left over, and one piece more lacks 100 g"), "{line}");
    }
    assert_eq!(block.lead.len(), 2);
}

#[test]
fn a_last_warp_is_told_of_only_where_it_is_another() {
    let last_is_told = |pieces: &str| {
        let given = [
            ("width", "1 m"),
            ("length", "2 m"),
            ("sett", "10 ends/cm"),
            ("picks", "10 picks/cm"),
            ("warp", "100 tex"),
            ("weft", "100 tex"),
            ("pieces_per_warp", "2"),
            ("pieces", pieces),
        ];
        let text = Article::read(&given).unwrap().piece().unwrap().report().text();
        assert!(text.contains("lengths on a full warp"), "{text}");
        text.contains("lengths on the last warp")
    };
    assert!(last_is_told("5") && !last_is_told("4"));
}
