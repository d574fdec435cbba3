//! Weaves by name: examples of how one is written.

/// Names that [`crate::cloth::Weave::parse`] reads.
pub(super) const NAMES: &[&str] = &[
    "plain",
    "tabby",
    "2/1 twill",
    "2/2 twill",
    "3/1 twill",
    "3/3 twill",
    "5-end satin",
    "8-end satin move 3",
    "5-end sateen",
    "2/2 hopsack",
    "2/2 basket",
    "2/2 mat",
    "2/2 warp rib",
    "2/2 weft rib",
    "2/2 herringbone",
    "2/2 pointed twill",
    "3/1 broken twill",
    "double plain",
];
