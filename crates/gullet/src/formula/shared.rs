//! Expressions that several formulas are written with.
