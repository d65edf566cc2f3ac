//! Holding: what a vise must press with, and what its screw gives.

use super::define::formulas;

formulas! {
    topic "holding";

    two_face_friction_capacity {
        symbol "F", "F";
        meaning "Largest force along the jaws or upward that friction on both jaw faces can hold.";
        clamping_force F_cl: Force, from 0.0, "clamping force, pressing on both faces";
        friction mu: Ratio, above 0.0, "coefficient of friction between jaw and work";
        -> Force;
        equation "F = 2 mu F_cl", r"F = 2 \mu F_{cl}";
        valid "two flat jaws, one clamping force that both faces feel; no safety factor; no force across the jaws";
        source "Coulomb friction, derived";
        example "clamping_force=10 kN; friction=0.2" => "4 kN", 1e-6, "identity: 2 x 0.2 x 10 kN";
        = 2.0 * mu * F_cl
    }

    required_clamping_force {
        symbol "F_cl", r"F_{cl}";
        meaning "Clamping force that keeps the work from sliding along the jaws or lifting.";
        force_along F_a: Force, "peak force along the jaws";
        force_lift F_l: Force, "peak force that lifts the work";
        friction mu: Ratio, above 0.0, "coefficient of friction between jaw and work";
        safety_factor S: Ratio, from 1.0, "safety factor on the peak force";
        -> Force;
        equation "F_cl = S sqrt(F_a^2 + F_l^2)/(2 mu)", r"F_{cl} = \frac{S \sqrt{F_a^2 + F_l^2}}{2 \mu}";
        valid "two faces; peak forces, not means; parallels under the work give no hold against lift; force across the jaws and tipping are checked apart";
        source "Coulomb friction, derived; a safety factor of at least 1.5 is asked for lathe chucks by VDI 3106, seen in a chuck manual";
        example "force_along=1200 N; force_lift=500 N; friction=0.2; safety_factor=2" => "6500 N", 1e-6, "identity: 2 x 1300/0.4 N";
        = S * (F_a * F_a + F_l * F_l).sqrt() / (2.0 * mu)
    }

    clamping_force_across {
        symbol "F_cl", r"F_{cl}";
        meaning "Clamping force that keeps a force across the jaws from opening the clamp.";
        force_across F_q: Force, from 0.0, "peak force across the jaws, away from the fixed jaw";
        safety_factor S: Ratio, from 1.0, "safety factor on the peak force";
        -> Force;
        equation "F_cl = S F_q", r"F_{cl} = S F_q";
        valid "the clamping force does not rise when the work pulls away from the fixed jaw; the fixed jaw then presses with F_cl - F_q only, which is what is left for its friction; towards the fixed jaw the jaw itself carries the force";
        source "derived: balance of the forces across the jaws";
        example "force_across=1500 N; safety_factor=2" => "3000 N", 1e-12, "identity: 2 x 1500 N";
        = S * F_q
    }

    tipping_clamping_force {
        symbol "F_cl", r"F_{cl}";
        meaning "Clamping force that keeps a force across the jaws from tipping the work about the line of the jaws.";
        force_across F_q: Force, from 0.0, "peak force across the jaws, away from the fixed jaw";
        height h: Length, from 0.0, "height of the force above the middle of the grip";
        grip_height g: Length, above 0.0, "height over which the jaws grip";
        work_width w: Length, above 0.0, "width of the work between the jaw faces";
        friction mu: Ratio, above 0.0, "coefficient of friction between jaw and work";
        safety_factor S: Ratio, from 1.0, "safety factor on the peak force";
        -> Force;
        equation "F_cl = S F_q (1 + h/(mu w + g/2))", r"F_{cl} = S F_q \left(1 + \frac{h}{\mu w + \frac{g}{2}}\right)";
        valid "rigid work and jaws; the movable jaw may pivot and takes no moment; the pressure on the fixed jaw, F_cl - S F_q, can shift by half the grip height, and friction up and down on the two faces adds a couple over the work's width; all friction is free for this; no support from parallels";
        source "derived: moments about the middle of the grip, S F_q h <= (F_cl - S F_q) (mu w + g/2); no published form seen";
        example "force_across=1000 N; height=30 mm; grip_height=20 mm; work_width=50 mm; friction=0.2; safety_factor=2" => "5000 N", 1e-12,
            "own arithmetic: 2000 (1 + 30/(10 + 10)) N";
        = S * F_q * (number(1.0) + h / (mu * w + g / 2.0))
    }

    screw_clamping_force {
        symbol "F", "F";
        meaning "Force of a screw from the torque on it, with friction in its thread and under its collar.";
        torque T: Torque, from 0.0, "torque on the screw";
        mean_diameter d_m: Length, above 0.0, "mean diameter of the thread";
        lead L: Length, above 0.0, "lead of the thread";
        thread_friction mu: Ratio, from 0.0, "coefficient of friction in the thread";
        thread_half_angle alpha: Angle, from 0.0, below PI / 2.0, default 0.0, "angle of the flanks to the plane across the axis: 0 for a square thread";
        collar_diameter d_c: Length, from 0.0, default 0.0, "mean diameter of the collar: 2/3 of the outer one for a solid pivot under even pressure";
        collar_friction mu_c: Ratio, from 0.0, default 0.0, "coefficient of friction under the collar";
        -> Force;
        equation "F = T/(d_m tan(lambda + rho)/2 + mu_c d_c/2); tan(lambda) = L/(pi d_m); tan(rho) = mu/cos(alpha)",
            r"F = \frac{T}{\frac{d_m}{2} \tan(\lambda + \rho) + \frac{\mu_c d_c}{2}},\quad \tan\lambda = \frac{L}{\pi d_m},\quad \tan\rho = \frac{\mu}{\cos\alpha}";
        valid "raising the load (tightening); the screw does not jam: lambda + rho below 90 deg";
        source "screw as an inclined plane; example: R.C. Hibbeler, Statics, 14th ed., problem 8-76, seen (solution page)";
        example "torque=8.75 N.m; mean_diameter=12 mm; lead=8 mm; thread_friction=0.27" => "2851 N", 0.0005,
            "R.C. Hibbeler, Statics, 14th ed., problem 8-76, seen (solution page)";
        require lead: (lead * thread_friction < PI * mean_diameter * crate::elementary::cos(thread_half_angle)),
            "lead*thread_friction < pi*mean_diameter*cos(thread_half_angle)";
        = {
            // tan(lambda + rho) by the sum of two tangents, over the common denominator.
            let tan_sum = (L * cos(alpha) + PI * d_m * mu) / (PI * d_m * cos(alpha) - L * mu);
            T / (d_m * tan_sum / 2.0 + mu_c * d_c / 2.0)
        }
    }

    screw_clamping_force_efficiency {
        symbol "F", "F";
        meaning "Force of a screw from the torque on it and its efficiency.";
        torque T: Torque, from 0.0, "torque on the screw";
        lead L: Length, above 0.0, "lead of the thread";
        efficiency eta: Ratio, above 0.0, to 1.0, "efficiency of the screw with its collar";
        -> Force;
        equation "F = 2 pi eta T/L", r"F = \frac{2 \pi \eta T}{L}";
        valid "efficiency 0.1 to 0.2 with plain collar friction (range of seen examples), 0.25 to 0.45 well greased (from memory)";
        source "derived: work of one turn";
        example "torque=40 N.m; lead=5 mm; efficiency=0.35" => "17592.9189 N", 1e-6, "identity: 28 pi/0.005 N";
        = 2.0 * PI * eta * T / L
    }
}
