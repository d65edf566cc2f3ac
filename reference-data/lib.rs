//! Reference tables and published worked examples, embedded.
