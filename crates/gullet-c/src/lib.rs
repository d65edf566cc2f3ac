//! The C interface of gullet: handles, plain structs and status codes over the core.
//!
//! `include/gullet.h` is the manual. It is written from the doc comments here by the crate
//! `gullet-c-gen`, which also writes `generated` from the catalogue and the core's lists of fields.
#![allow(non_camel_case_types)]
// What a pointer must point to stands in the header, for every function at once.
#![allow(clippy::missing_safety_doc)]
#![deny(unsafe_op_in_unsafe_fn, clippy::undocumented_unsafe_blocks)]

#[cfg(panic = "abort")]
compile_error!(
    "built with panic=abort, a panic would end the program that calls: build with panic=unwind"
);

#[cfg(feature = "arrow")]
mod arrow;
pub mod cut;
mod draws;
pub mod economics;
mod failure;
mod fit;
mod formula;
#[rustfmt::skip]
#[allow(clippy::too_many_arguments)]
mod generated;
mod guard;
mod host;
mod memory;
mod model;
mod names;
mod operation;
mod operation_cut;
mod operation_list;
mod plan;
pub mod quantity;
mod report;
mod structs;
mod study;
#[cfg(feature = "arrow")]
mod table_report;
mod version;

// For the library that panics on demand.
#[doc(hidden)]
pub use guard::guard;
