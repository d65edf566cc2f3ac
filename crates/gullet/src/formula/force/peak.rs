//! Bounds of the peak within a revolution, for tool strength and holding.

use super::super::define::formulas;

formulas! {
    topic "force";

    simultaneous_teeth {
        symbol "z_s", "z_s";
        meaning "Largest number of teeth in the arc of a cut at one instant.";
        teeth z: Count, from 1.0, "effective teeth";
        engagement_angle phi_s: Angle, above 0.0, to 2.0 * PI, "angle over which a tooth cuts";
        -> Count;
        equation "z_s = ceil(z phi_s/(2 pi))", r"z_s = \left\lceil \frac{z\, \varphi_s}{2\pi} \right\rceil";
        valid "straight edges, or one height along a helix; equal pitch; a quotient within 1e-9 of a whole number counts as it, so the instant at which one tooth enters as another leaves is not counted; phi_s in radians";
        source "derived: teeth a pitch apart within the arc";
        example "teeth=4; engagement_angle=100 deg" => "2", 1e-12, "own arithmetic: 4 x 100/360 = 1.11";
        = teeth_in_arc(z, phi_s)
    }

    tooth_sum_factor {
        symbol "S", "S";
        meaning "Bound of the sum of the tangential forces of all teeth in a cut over the largest force of one tooth.";
        teeth z: Count, from 1.0, "effective teeth";
        engagement_angle phi_s: Angle, above 0.0, to PI, "angle over which a tooth cuts";
        largest_sine s_max: Ratio, above 0.0, to 1.0, "largest sine of the immersion in the arc";
        chip_exponent m_c: Ratio, from 0.0, below 1.0, default 0.0, "exponent of the chip thickness in the specific cutting force";
        -> Ratio;
        equation "S = k^m_c max(1, s)^(1 - m_c); s = min(k, sin(k psi/2)/(sin(psi/2) s_max)); k = ceil(z phi_s/(2 pi)); psi = 2 pi/z",
            r"S = k^{m_c} \max(1, s)^{1 - m_c},\quad s = \min\left(k, \frac{\sin(k\psi/2)}{s_\mathrm{max} \sin(\psi/2)}\right),\quad k = \left\lceil \frac{z\, \varphi_s}{2\pi} \right\rceil,\quad \psi = \frac{2\pi}{z}";
        valid "upper bound for straight and for helical edges, equal pitch, sharp edges (force of a tooth as the power 1 - m_c of its chip thickness); at m_c = 0 it bounds the sum of the sines over the largest; an edge force that does not depend on the chip is to be multiplied by k instead; angles in radians";
        source "derived: k sines a pitch apart sum to sin(k psi/2)/sin(psi/2) times the sine of their middle; powers below 1 by Jensen's inequality; a helix averages straight edges";
        example "teeth=4; engagement_angle=180 deg; largest_sine=1" => "1.4142135624", 1e-9, "identity, slot with four teeth: sin 45 deg + sin 135 deg";
        = TeethSum::of(z, phi_s, s_max).factor(m_c)
    }

    helix_relief_factor {
        symbol "L", "L";
        meaning "Bound of the tangential force of helical edges over that of straight ones.";
        teeth z: Count, from 1.0, "effective teeth";
        engagement_angle phi_s: Angle, above 0.0, to PI, "angle over which a tooth cuts";
        chip_ratio c: Ratio, above 0.0, to 1.0, "mean over largest chip thickness";
        chip_exponent m_c: Ratio, from 0.0, below 1.0, "exponent of the chip thickness in the specific cutting force";
        tooth_sum_factor S: Ratio, from 1.0, "bound for straight edges: sum over the teeth over the largest of one tooth";
        axial_depth a_p: Length, above 0.0, "axial depth";
        diameter D: Length, above 0.0, "cutter diameter";
        helix_angle beta: Angle, from 0.0, below PI / 2.0, "helix angle";
        -> Ratio;
        equation "L = min(1, (w q + min((t - w psi) S, q))/(t S)); t = max(2 a_p tan(beta)/D, 10^(-9)); q = min(phi_s c^(1 - m_c), psi S); w = floor(t/psi); psi = 2 pi/z",
            r"L = \min\left(1, \frac{w q + \min((t - w \psi) S, q)}{t S}\right),\quad t = \frac{2 a_p \tan\beta}{D},\quad q = \min\left(\varphi_s c^{1 - m_c}, \psi S\right),\quad w = \left\lfloor \frac{t}{\psi} \right\rfloor,\quad \psi = \frac{2\pi}{z}";
        valid "upper bound for equal pitch and sharp edges; t is the angle by which the edge lags over the axial depth: short of it only part of each edge is in the cut at one instant; angles in radians";
        source "derived: a helix spreads the straight-edge force over the lag t; over a whole pitch that force sums to at most q, by Jensen's inequality, and over less to at most its bound S";
        example "teeth=2; engagement_angle=90 deg; chip_ratio=0.5; chip_exponent=0; tooth_sum_factor=1; axial_depth=10 mm; diameter=10 mm; helix_angle=45 deg" => "0.39269908", 1e-7,
            "own arithmetic: lag 2 rad, q = pi/4, so (pi/4)/2";
        = HelixLag::of(z, a_p, D, beta).relief(phi_s, c, m_c, S)
    }

    peak_tangential_force {
        symbol "F_c", "F_c";
        meaning "Upper bound of the sum of the tangential forces of a milling cutter.";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at the largest chip thickness";
        max_chip_thickness h_max: Length, from 0.0, "largest chip thickness in the arc";
        chip_width b: Length, from 0.0, "undeformed chip width, along the edge";
        tooth_sum_factor S: Ratio, from 1.0, "sum over the teeth over the largest of one tooth";
        helix_relief L: Ratio, above 0.0, to 1.0, default 1.0, "helical edges over straight ones; 1 is safe for every helix";
        -> Force;
        equation "F_c = k_c h_max b S L", r"F_c = k_c\, h_\mathrm{max}\, b\, S\, L";
        valid "S = tooth_sum_factor and L = helix_relief_factor with the same chip exponent as k_c; times the peak's own factors for run-out and wear";
        source "derived: largest force of one tooth times the bound of the sum";
        example "specific_cutting_force=2000 N/mm2; max_chip_thickness=0.06 mm; chip_width=5 mm; tooth_sum_factor=1.5" => "900 N", 1e-9,
            "own arithmetic: 2000 x 0.06 x 5 x 1.5";
        = k_c * h_max * b * S * L
    }

    in_plane_force {
        symbol "F_xy", "F_{xy}";
        meaning "Force across the tool's axis from the tangential force and the ratio of the radial to it.";
        cutting_force F_c: Force, from 0.0, "tangential force";
        radial_force_ratio rho: Ratio, from 0.0, "radial over tangential force";
        -> Force;
        equation "F_xy = F_c sqrt(1 + rho^2)", r"F_{xy} = F_c \sqrt{1 + \rho^2}";
        valid "exact for one tooth; with several teeth in the cut an upper bound, since their forces point apart";
        source "derived: right triangle; triangle inequality over the teeth";
        example "cutting_force=400 N; radial_force_ratio=0.75" => "500 N", 1e-9, "identity: 3-4-5 triangle";
        = F_c * sqrt(number(1.0) + rho * rho)
    }

    helix_axial_force {
        symbol "F_a", "F_a";
        meaning "Upper estimate of the axial force that a helix turns out of the tangential force.";
        cutting_force F_c: Force, from 0.0, "tangential force";
        helix_angle beta: Angle, from 0.0, below PI / 2.0, "helix angle";
        -> Force;
        equation "F_a = F_c tan(beta)", r"F_a = F_c \tan\beta";
        valid "right-hand helix on a right-hand cutter: pulls the tool out of the holder and lifts the work; frictionless upper estimate: measured ratios of axial to tangential coefficients for aluminium end mills lie at 0.28 to 0.43, tan 30 deg is 0.577";
        source "derived: force square to a frictionless edge; ratios from published coefficients (Engin & Altintas 2001, memory; review in Chinese Journal of Mechanical Engineering 2021, Table 5, seen)";
        example "cutting_force=500 N; helix_angle=45 deg" => "500 N", 1e-9, "identity: tan 45 deg = 1";
        = F_c * tan(beta)
    }
}
