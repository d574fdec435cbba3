//! Bindings.
