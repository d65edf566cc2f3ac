//! Threads.

use super::define::formulas;

formulas! {
    topic "thread";

    tap_drill_diameter {
        symbol "d", "d";
        meaning "Drill diameter for a percentage of thread.";
        major_diameter D: Length, above 0.0, "major diameter";
        pitch P: Length, above 0.0, "pitch";
        thread_percent p: Ratio, from 0.0, below major_diameter / (thread_basis * pitch), "percentage of thread";
        thread_basis K: Ratio, above 0.0, default 1.2990381, "basis of the percentage";
        -> Length;
        equation "d = D - p K P", r"d = D - p K P";
        valid "x";
        source "x";
        example "major_diameter=10 mm; pitch=1.5 mm; thread_percent=77 %" => "8.5 mm", 1e-3, "x";
        = D - p * K * P
    }
}
