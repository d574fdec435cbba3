//! Handbook tables of quality: a file each.

crate::handbook::tables! {
    SKEIN_LENGTHS "skein_lengths",
    SKEIN_TEST "skein_test",
}
