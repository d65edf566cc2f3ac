//! Threads: tap drills and the passes of single-point threading; the basic form of threads and tapping
//! in the submodules.

use super::define::formulas;

mod form;
mod tap;

pub use form::*;
pub use tap::*;

/// Basis of the percentages of tap-drill charts, over the pitch: 3 sqrt(3)/4, twice 3/4 of the height
/// of the triangle, as the charts round it.
pub const CHART_BASIS: f64 = 1.299_038_1;

/// Basis on which 100 % of thread is the basic minor diameter of ISO and unified threads, over the
/// pitch: 5 sqrt(3)/8, twice 5/8 of the height of the triangle, rounded alike.
pub const OVERLAP_BASIS: f64 = 1.082_531_8;

/// The formulas of the basic form.
pub(super) const FORM: &[&super::Formula] = form::ALL;

/// The formulas of tapping.
pub(super) const TAP: &[&super::Formula] = tap::ALL;

formulas! {
    topic "thread";

    tap_drill_diameter {
        symbol "d", "d";
        meaning "Drill diameter that leaves a percentage of thread.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, "pitch";
        thread_percent p: Ratio, from 0.0, below major_diameter / (thread_basis * pitch), "percentage of thread";
        thread_basis K: Ratio, above 0.0, default crate::formula::thread::CHART_BASIS, "basis of the percentage, over the pitch";
        -> Length;
        equation "d = D - p K P", r"d = D - p K P";
        valid "60 deg threads; basis 1.2990381 (3 sqrt(3)/4, twice 3/4 H, rounded) is that of tap-drill charts, inch and metric; 1.0825318 (5 sqrt(3)/8, twice 5/8 H) is the ISO and UN overlap, on which 100 % is the basic minor diameter; cutting taps, not forming ones";
        source "thread geometry of ISO 68-1 and ASME B1.1, from memory; the charts' basis: E. Oberg et al., Machinery's Handbook, 31st ed., p.2155, seen";
        example "major_diameter=0.25 in; pitch=0.05 in; thread_percent=75 %" => "0.20128607125 in", 1e-9,
            "identity: 1/4-20 at 75 % takes a No 7 drill (0.201 in)";
        = max(D - p * K * P, si(0.0))
    }

    thread_percent {
        symbol "p", "p";
        meaning "Percentage of thread that a drill leaves.";
        major_diameter D: Length, above 0.0, "major diameter of the thread";
        pitch P: Length, above 0.0, "pitch";
        drill_diameter d: Length, above 0.0, to major_diameter, "drill diameter";
        thread_basis K: Ratio, above 0.0, default crate::formula::thread::CHART_BASIS, "basis of the percentage, over the pitch";
        -> Ratio;
        equation "p = (D - d)/(K P)", r"p = \frac{D - d}{K P}";
        valid "60 deg threads; basis 1.2990381 (3 sqrt(3)/4, twice 3/4 H, rounded) is that of tap-drill charts, inch and metric; 1.0825318 (5 sqrt(3)/8, twice 5/8 H) is the ISO and UN overlap, on which 100 % is the basic minor diameter; cutting taps, not forming ones";
        source "thread geometry of ISO 68-1 and ASME B1.1, from memory; the charts' basis: E. Oberg et al., Machinery's Handbook, 31st ed., p.2155, seen";
        example "major_diameter=0.0600 in; pitch=0.0125 in; drill_diameter=0.0512 in; thread_basis=1.2990381" => "54 %", 0.01,
            "E. Oberg et al., Machinery's Handbook, 31st ed., table 2 p.2155, seen";
        = max((D - d) / (K * P), number(0.0))
    }

    threading_passes {
        symbol "N", "N";
        meaning "Single-point passes of equal chip area whose first one is not deeper than allowed.";
        thread_height h: Length, above 0.0, "height of the thread";
        first_depth a_1: Length, above 0.0, "largest depth of the first pass";
        -> Count;
        equation "N = ceil((h/a_1)^2)", r"N = \left\lceil\left(\frac{h}{a_1}\right)^2\right\rceil";
        valid "flank infeed; at least 1; a quotient within 1e-9, relative, above a whole number counts as that number; spring passes come on top";
        source "derived: equal chip area, a_i = h sqrt(i/N)";
        example "thread_height=0.92 mm; first_depth=0.25 mm" => "14", 1e-9, "own arithmetic: 13.54 rounded up";
        = {
            let ratio = h / a_1;
            let passes = (ratio * ratio).value * (1.0 - crate::formula::cost::WHOLE);
            max(number(passes.ceil()), number(1.0))
        }
    }

    threading_depth {
        symbol "a_i", "a_i";
        meaning "Depth from the crest after a pass of single-point threading at equal chip area.";
        thread_height h: Length, from 0.0, "height of the thread";
        passes N: Count, from 1.0, "number of passes";
        index i: Count, from 1.0, to passes, "number of the pass";
        -> Length;
        equation "a_i = h sqrt(i/N)", r"a_i = h \sqrt{\frac{i}{N}}";
        valid "flank infeed, a straight-flanked thread; measured square to the axis";
        source "derived: chip area grows with the square of the depth";
        example "thread_height=1.2 mm; passes=9; index=4" => "0.8 mm", 1e-12, "identity: 1.2 x 2/3 mm";
        = h * sqrt(i / N)
    }
}
