//! Bounds of the peak within a revolution against cutters turned step by step.

use super::of;
use core::f64::consts::PI;

/// The instant at which one tooth enters just as another leaves is no position of a cut: arcs end this
/// much before, in radians.
const INSTANT: f64 = 1e-8;

/// Sum of `of_sine` over the teeth in the arc `start..end` when the first tooth stands at `phi`.
fn sum_in_arc(z: u32, phi: f64, start: f64, end: f64, of_sine: impl Fn(f64) -> f64) -> f64 {
    (0..z)
        .map(|j| (phi + 2.0 * PI * f64::from(j) / f64::from(z)).rem_euclid(2.0 * PI))
        .filter(|phi| *phi >= start && *phi < end)
        .map(|phi| of_sine(phi.sin().max(0.0)))
        .sum()
}

/// Arcs of up- and down-milled side cuts, face cuts on either side of the axis, and the slot.
fn arcs() -> Vec<(f64, f64)> {
    let mut arcs = vec![(0.0, PI)];
    for i in 1..20 {
        let angle = PI * f64::from(i) / 20.0;
        arcs.extend([(0.0, angle), (PI - angle, PI)]);
        arcs.extend((i + 1..20).map(|j| (angle, PI * f64::from(j) / 20.0 + 0.003)));
    }
    arcs
}

fn largest_sine(start: f64, end: f64) -> f64 {
    if start <= PI / 2.0 && end >= PI / 2.0 {
        1.0
    } else {
        start.sin().max(end.sin())
    }
}

#[test]
fn tooth_sum_factor_bounds_every_position_of_straight_edges() {
    for z in 1..=12u32 {
        for (start, end) in arcs() {
            let largest = largest_sine(start, end);
            let teeth = f64::from(z);
            let k = of("simultaneous_teeth", &[teeth, end - start]);
            for m in [0.0, 0.25, 0.6] {
                let factor = of("tooth_sum_factor", &[teeth, end - start, largest, m]);
                assert!(factor >= 1.0 && factor <= k * (1.0 + 1e-12));
                let end = end - INSTANT;
                let found = (0..400)
                    .map(|step| start + 2.0 * PI / teeth * f64::from(step) / 400.0)
                    .map(|phi| sum_in_arc(z, phi, start, end, |sine| sine.powf(1.0 - m)))
                    .fold(0.0, f64::max);
                let bound = factor * largest.powf(1.0 - m);
                assert!(
                    found <= bound * (1.0 + 1e-9),
                    "z {z}, arc {start}..{end}, m {m}: {found} above {bound}"
                );
                let count = (0..400)
                    .map(|step| start + 2.0 * PI / teeth * f64::from(step) / 400.0)
                    .map(|phi| sum_in_arc(z, phi, start, end, |_| 1.0))
                    .fold(0.0, f64::max);
                assert!(
                    count <= k,
                    "z {z}, arc {start}..{end}: {count} teeth above {k}"
                );
            }
        }
    }
}

#[test]
fn tooth_sum_factor_is_reached_in_a_slot() {
    for z in 1..=12u32 {
        let teeth = f64::from(z);
        let found = (0..20_000)
            .map(|step| 2.0 * PI / teeth * f64::from(step) / 20_000.0)
            .map(|phi| sum_in_arc(z, phi, 0.0, PI, |sine| sine))
            .fold(0.0, f64::max);
        let factor = of("tooth_sum_factor", &[teeth, PI, 1.0, 0.0]);
        assert!(
            (found / factor - 1.0).abs() < 1e-6,
            "z {z}: {found} {factor}"
        );
    }
}

#[test]
fn a_single_tooth_has_the_factor_one() {
    for arc in [0.01, 1.0, PI] {
        for largest in [0.2, 1.0] {
            for m in [0.0, 0.3] {
                assert_eq!(of("tooth_sum_factor", &[1.0, arc, largest, m]), 1.0);
            }
        }
    }
}

#[test]
fn a_whole_number_of_pitches_counts_as_it() {
    for z in 2..=12u32 {
        let teeth = f64::from(z);
        for k in 1..=z {
            let arc = 2.0 * PI * f64::from(k) / teeth;
            for (slack, expected) in [
                (0.0, f64::from(k)),
                (5e-10 / teeth, f64::from(k)),
                (-5e-10 / teeth, f64::from(k)),
                (-0.01, f64::from(k)),
            ] {
                if k < z || slack <= 0.0 {
                    assert_eq!(
                        of(
                            "simultaneous_teeth",
                            &[teeth, arc + slack * 2.0 * PI / teeth]
                        ),
                        expected
                    );
                }
            }
            if k < z {
                assert_eq!(
                    of("simultaneous_teeth", &[teeth, arc + 0.01]),
                    f64::from(k + 1)
                );
            }
        }
    }
}

/// A cutter with linear edge forces and a helix.
struct Cutter {
    teeth: u32,
    diameter: f64,
    helix: f64,
    depth: f64,
    feed: f64,
    tangential: (f64, f64),
    radial: (f64, f64),
    arc: (f64, f64),
}

impl Cutter {
    /// Al7050 with carbide, coefficients after Engin & Altintas 2001 (memory): half immersion, up.
    fn half_up(helix_degrees: f64) -> Cutter {
        Cutter {
            teeth: 4,
            diameter: 0.020,
            helix: helix_degrees.to_radians(),
            depth: 0.005,
            feed: 1e-4,
            tangential: (796.1e6, 27.7e3),
            radial: (168.8e6, 30.8e3),
            arc: (0.0, PI / 2.0),
        }
    }

    /// Peaks of the in-plane force and of the torque over one pitch, and the mean torque.
    fn peaks(&self, slices: u32, positions: u32) -> (f64, f64, f64) {
        let dz = self.depth / f64::from(slices);
        let (mut force, mut torque, mut mean) = (0.0f64, 0.0f64, 0.0f64);
        for position in 0..positions {
            let turn =
                2.0 * PI / f64::from(self.teeth) * f64::from(position) / f64::from(positions);
            let (mut x, mut y, mut tangential) = (0.0, 0.0, 0.0);
            for slice in 0..slices {
                let height = (f64::from(slice) + 0.5) * dz;
                for tooth in 0..self.teeth {
                    let phi = (turn + 2.0 * PI * f64::from(tooth) / f64::from(self.teeth)
                        - 2.0 * height * self.helix.tan() / self.diameter)
                        .rem_euclid(2.0 * PI);
                    if phi < self.arc.0 || phi > self.arc.1 - INSTANT {
                        continue;
                    }
                    let h = self.feed * phi.sin();
                    let along = (self.tangential.0 * h + self.tangential.1) * dz;
                    let inward = (self.radial.0 * h + self.radial.1) * dz;
                    x += -along * phi.cos() - inward * phi.sin();
                    y += along * phi.sin() - inward * phi.cos();
                    tangential += along;
                }
            }
            force = force.max(x.hypot(y));
            torque = torque.max(tangential * self.diameter / 2.0);
            mean += tangential * self.diameter / 2.0 / f64::from(positions);
        }
        (force, torque, mean)
    }

    /// Bounds of the tangential and the in-plane force from the formulas, edge forces by tooth.
    fn bounds(&self) -> (f64, f64) {
        let teeth = f64::from(self.teeth);
        let arc = self.arc.1 - self.arc.0;
        let largest = largest_sine(self.arc.0, self.arc.1);
        let h = self.feed * largest;
        let factor = of("tooth_sum_factor", &[teeth, arc, largest, 0.0]);
        let k = of("simultaneous_teeth", &[teeth, arc]);
        let cutting = |k_c: f64| of("peak_tangential_force", &[k_c, h, self.depth, factor, 1.0]);
        let tangential = cutting(self.tangential.0) + k * self.tangential.1 * self.depth;
        let radial = cutting(self.radial.0) + k * self.radial.1 * self.depth;
        (
            tangential,
            of("in_plane_force", &[tangential, radial / tangential]),
        )
    }
}

#[test]
fn the_helical_model_gives_the_reference_peaks_and_the_straight_edge_bound_lies_above() {
    let (force, torque, mean) = Cutter::half_up(30.0).peaks(100, 900);
    assert!((force - 579.5).abs() < 0.3, "{force}");
    assert!((torque - 5.31).abs() < 0.005, "{torque}");
    let closed = of(
        "mean_milling_torque",
        &[796.1e6, 27.7e3, 4.0, 0.005, 0.010, 1e-4, 0.020],
    );
    assert!((mean / closed - 1.0).abs() < 2e-3, "{mean} {closed}");
    let (tangential, in_plane) = Cutter::half_up(30.0).bounds();
    assert!(in_plane > force && in_plane < 1.1 * force, "{in_plane}");
    let bound = tangential * 0.010;
    assert!(bound > torque && bound < 1.1 * torque, "{bound}");
}

#[test]
fn the_straight_edge_bound_holds_for_any_helix_and_arc() {
    for helix in [0.0, 10.0, 30.0, 45.0] {
        for teeth in [1, 2, 3, 5, 6] {
            for arc in [(0.0, 0.5), (2.2, PI), (0.0, PI), (0.9, 2.0)] {
                let cutter = Cutter {
                    teeth,
                    arc,
                    depth: 0.012,
                    ..Cutter::half_up(helix)
                };
                let (force, torque, _) = cutter.peaks(48, 240);
                let (tangential, in_plane) = cutter.bounds();
                assert!(
                    force <= in_plane * (1.0 + 1e-9),
                    "helix {helix}, z {teeth}, {arc:?}: {force} above {in_plane}"
                );
                assert!(
                    torque <= tangential * 0.010 * (1.0 + 1e-9),
                    "helix {helix}, z {teeth}, {arc:?}"
                );
            }
        }
    }
}

#[test]
fn axial_estimate_lies_above_measured_ratios() {
    // Axial over tangential cutting coefficients at 30 deg: Engin & Altintas 2001 (memory) and a
    // review in Chinese Journal of Mechanical Engineering 2021, Table 5.
    for (axial, tangential) in [
        (222.0, 796.1),
        (222.0, 767.01),
        (273.0, 631.0),
        (323.3, 951.37),
    ] {
        let estimate = of("helix_axial_force", &[tangential, 30f64.to_radians()]);
        assert!(estimate > axial, "{estimate} {axial}");
    }
}
