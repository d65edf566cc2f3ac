//! Turning, facing, boring and parting: the cut from diameters, the edge with its nose, the shares
//! of the force, size errors, approach and time.

use super::define::formulas;

formulas! {
    topic "turning";

    cutting_edge_angle_of_lead_angle {
        symbol "kappa_r", r"\kappa_r";
        meaning "Tool cutting-edge angle of a turning tool whose lead angle is given.";
        lead_angle psi_r: Angle, from 0.0, below PI / 2.0, "lead (approach) angle, from the square of the axis";
        -> Angle;
        equation "kappa_r = 90 deg - psi_r", r"\kappa_r = 90^\circ - \psi_r";
        valid "lead angle of American catalogues, also called side cutting-edge angle; the tool cutting-edge angle counts from the direction of feed";
        source "definition; symbols of ISO 3002-1, from memory";
        example "lead_angle=15 deg" => "75 deg", 1e-12, "identity";
        = {
            let right: quantity::Angle = si(PI / 2.0);
            right - psi_r
        }
    }

    depth_of_cut_from_diameters {
        symbol "a_p", "a_p";
        meaning "Depth of cut between the diameters before and after a turning or boring pass.";
        larger_diameter D_1: Length, above 0.0, "larger diameter: the stock in turning, the finished bore in boring";
        smaller_diameter D_2: Length, from 0.0, to larger_diameter, "smaller diameter: the finished one in turning, the bore before the pass in boring";
        -> Length;
        equation "a_p = (D_1 - D_2)/2", r"a_p = \frac{D_1 - D_2}{2}";
        valid "one pass, both diameters about the axis of the spindle: the depth is on the radius, half of what the diameter changes by; a tube's wall likewise";
        source "geometry";
        example "larger_diameter=4.50 in; smaller_diameter=4.25 in" => "0.125 in", 1e-9,
            "Groover M.P., Fundamentals of Modern Manufacturing, 4th ed., turning problem with 46 in turned to 4.25 in, from memory";
        = max(D_1 - D_2, si(0.0)) / 2.0
    }

    nose_depth {
        symbol "a_n", "a_n";
        meaning "Depth of cut up to which the nose of a turning tool cuts alone.";
        nose_radius r: Length, from 0.0, "nose radius";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "a_n = 2 r sin(kappa_r/2)^2", r"a_n = r (1 - \cos\kappa_r) = 2 r \sin^2\frac{\kappa_r}{2}";
        valid "below this depth the cutting-edge angle of the straight edge means nothing: chip and force follow the nose";
        source "circle and tangent, derived: r (1 - cos(kappa_r))";
        example "nose_radius=0.8 mm; cutting_edge_angle=60 deg" => "0.4 mm", 1e-12, "identity: 0.8 (1 - 1/2) mm";
        = {
            let half = sin(kappa_r / 2.0);
            2.0 * r * half * half
        }
    }

    turning_depth_cap {
        symbol "a_max", r"a_\mathrm{max}";
        meaning "Largest depth of cut for the length of a turning tool's edge.";
        edge_length l_e: Length, above 0.0, "length of the straight edge";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        edge_share k: Ratio, above 0.0, to 1.0, default 2.0 / 3.0, "share of the edge that may cut";
        -> Length;
        equation "a_max = k l_e sin(kappa_r)", r"a_\mathrm{max} = k\, l_e \sin\kappa_r";
        valid "roughing; half to two thirds of the edge, less with weak corners (common practice, no source)";
        source "geometry; the share: common practice, no source";
        example "edge_length=12 mm; cutting_edge_angle=30 deg" => "4 mm", 1e-12, "identity: 2/3 x 12 x 1/2 mm";
        = k * l_e * sin(kappa_r)
    }

    turning_edge_length {
        symbol "l", "l";
        meaning "Length of edge in the cut of a turning tool with a nose radius.";
        depth_of_cut a_p: Length, from 0.0, "depth of cut";
        feed_per_rev f: Length, from 0.0, to 2.0 * nose_radius, "feed per revolution";
        nose_radius r: Length, above 0.0, "nose radius";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "l = r (theta + asin(min(f/(2 r), 1))) + max(a_p - 2 r sin(kappa_r/2)^2, 0 mm)/sin(kappa_r); theta = min(kappa_r, acos(1 - min(a_p/r, 1)))",
            r"l = r \left(\theta + \arcsin\frac{f}{2 r}\right) + \frac{\max(a_p - r (1 - \cos\kappa_r), 0)}{\sin\kappa_r},\quad \theta = \min\left(\kappa_r, \arccos\left(1 - \min\left(\frac{a_p}{r}, 1\right)\right)\right)";
        valid "cylindrical cut; the straight edge where the depth reaches it, the nose, and the part of the nose that cuts the feed mark; below nose_depth the nose alone";
        source "arcs and tangent, derived";
        example "depth_of_cut=2 mm; feed_per_rev=0.8 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg" => "2.87551608 mm", 1e-8,
            "own arithmetic: 0.8 (pi/2 + pi/6) + 1.2 mm";
        = {
            let half = sin(kappa_r / 2.0);
            let straight = max(a_p - 2.0 * r * half * half, si(0.0)) / sin(kappa_r);
            let reached = inverse_half_versine(min(a_p / r, number(1.0)) / 2.0);
            let mark = asin(min(f / (2.0 * r), number(1.0)));
            r * radians(min(kappa_r, reached) + mark) + straight
        }
    }

    turning_mean_chip_thickness {
        symbol "h_m", "h_m";
        meaning "Mean undeformed chip thickness over the edge in the cut in turning.";
        depth_of_cut a_p: Length, from 0.0, "depth of cut";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        edge_length l: Length, above 0.0, "length of edge in the cut";
        -> Length;
        equation "h_m = a_p f/l", r"h_m = \frac{a_p f}{l}";
        valid "section of the chip spread over the edge, so that k_c h_m l keeps the section; with edge_length as turning_edge_length";
        source "derived: equal section";
        example "depth_of_cut=2 mm; feed_per_rev=0.2 mm; edge_length=2.5 mm" => "0.16 mm", 1e-12, "identity: 0.4/2.5 mm";
        = a_p * f / l
    }

    turning_chord_angle {
        symbol "kappa_c", r"\kappa_c";
        meaning "Cutting-edge angle of the chord between the ends of the edge in the cut of a tool with a nose radius.";
        depth_of_cut a_p: Length, above 0.0, "depth of cut";
        feed_per_rev f: Length, from 0.0, to 2.0 * nose_radius, "feed per revolution";
        nose_radius r: Length, above 0.0, "nose radius";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        -> Angle;
        equation "kappa_c = atan(a_p/(x + f/2)); x = r sin(theta) + max(a_p - 2 r sin(kappa_r/2)^2, 0 mm)/tan(kappa_r); theta = min(kappa_r, acos(1 - min(a_p/r, 1)))",
            r"\kappa_c = \arctan\frac{a_p}{x + \frac{f}{2}},\quad x = r \sin\theta + \frac{\max(a_p - r (1 - \cos\kappa_r), 0)}{\tan\kappa_r},\quad \theta = \min\left(\kappa_r, \arccos\left(1 - \min\left(\frac{a_p}{r}, 1\right)\right)\right)";
        valid "the chip is taken to leave square to the chord, so the thrust in the plane of the cut acts along it too; no rake, no inclination";
        source "L.V. Colwell, Predicting the angle of chip flow for single-point cutting tools, Trans. ASME 76, 1954, from memory; geometry derived";
        example "depth_of_cut=1 mm; feed_per_rev=0.4 mm; nose_radius=0.8 mm; cutting_edge_angle=90 deg" => "45 deg", 1e-9,
            "own arithmetic: the edge reaches 0.8 mm ahead of the lowest point of the nose and 0.2 mm behind it, 1 mm for a depth of 1 mm";
        = {
            let half = sin(kappa_r / 2.0);
            let straight = max(a_p - 2.0 * r * half * half, si(0.0)) / tan(min(kappa_r, si(PI / 2.0)));
            let reached = inverse_half_versine(min(a_p / r, number(1.0)) / 2.0);
            let ahead = r * sin(min(kappa_r, reached)) + straight;
            atan(a_p / (ahead + f / 2.0))
        }
    }

    turning_feed_force {
        symbol "F_f", "F_f";
        meaning "Feed force of a turning tool, as a rough share of the cutting force.";
        cutting_force F_c: Force, from 0.0, "cutting force";
        cutting_edge_angle kappa: Angle, above 0.0, to PI / 2.0, "cutting-edge angle; with a nose radius that of the chord";
        thrust_share s: Ratio, from 0.0, default 0.6, "thrust in the plane of the cut over the cutting force";
        -> Force;
        equation "F_f = s F_c sin(kappa)", r"F_f = s F_c \sin\kappa";
        valid "rough, within 40 % either way: the share rises with wear, thin chips and negative rake, and is below 0.4 with sharp positive edges";
        source "resolution of the thrust, derived; a share of 0.6 from feed force 0.5 to 0.6 and radial force 0.25 to 0.3 of the cutting force, supplier's article on boring, seen";
        example "cutting_force=1000 N; cutting_edge_angle=30 deg; thrust_share=0.6" => "300 N", 1e-12, "identity: 600 x 1/2 N";
        = s * F_c * sin(kappa)
    }

    turning_passive_force {
        symbol "F_p", "F_p";
        meaning "Passive (radial) force of a turning tool, as a rough share of the cutting force.";
        cutting_force F_c: Force, from 0.0, "cutting force";
        cutting_edge_angle kappa: Angle, above 0.0, to PI / 2.0, "cutting-edge angle; with a nose radius that of the chord";
        thrust_share s: Ratio, from 0.0, default 0.6, "thrust in the plane of the cut over the cutting force";
        -> Force;
        equation "F_p = s F_c cos(kappa)", r"F_p = s F_c \cos\kappa";
        valid "rough, within 40 % either way; the force that bends a slender shaft or a boring bar out of size: least at 90 deg, and never none with a nose radius, so take the angle of the chord";
        source "resolution of the thrust, derived; a share of 0.6 from feed force 0.5 to 0.6 and radial force 0.25 to 0.3 of the cutting force, supplier's article on boring, seen";
        example "cutting_force=1000 N; cutting_edge_angle=60 deg; thrust_share=0.6" => "300 N", 1e-9, "identity: 600 x 1/2 N";
        = s * F_c * max(cos(kappa), number(0.0))
    }

    turning_torque {
        symbol "M_c", "M_c";
        meaning "Torque of a cutting force at the work of a lathe.";
        cutting_force F_c: Force, from 0.0, "cutting force";
        diameter D: Length, from 0.0, "diameter that is cut";
        -> Torque;
        equation "M_c = F_c D/2", r"M_c = \frac{F_c D}{2}";
        valid "one tool; the same torque at any spindle speed, so lowering the speed frees no torque";
        source "force times lever";
        example "cutting_force=2000 N; diameter=50 mm" => "50 N.m", 1e-12, "identity: 2000 x 0.025 N m";
        = torque(F_c * D / 2.0)
    }

    diameter_error_of_radial_deflection {
        symbol "e_D", "e_D";
        meaning "Error of the diameter that a radial deflection of tool or work leaves.";
        radial_deflection delta: Length, "deflection along the radius, tool and work together; its sign is kept";
        -> Length;
        equation "e_D = 2 delta", r"e_D = 2 \delta";
        valid "pushed apart, a shaft is left larger and a bore smaller; a spring pass takes part of it away";
        source "geometry";
        example "radial_deflection=0.015 mm" => "0.03 mm", 1e-12, "identity";
        = 2.0 * delta
    }

    radius_error_of_tangential_deflection {
        symbol "e_R", "e_R";
        meaning "Error of the radius that a drop of the tool tip along the cutting direction leaves.";
        tangential_deflection delta: Length, "drop of the tip from the height of the axis; a rise counts the same";
        diameter D: Length, above 0.0, "diameter that is cut";
        -> Length;
        equation "e_R = delta^2/(D/2 + sqrt((D/2)^2 + delta^2))", r"e_R = \sqrt{\frac{D^2}{4} + \delta^2} - \frac{D}{2}";
        valid "the tip stays at its distance across: bore and shaft are both left larger by this, mostly nothing beside the radial deflection";
        source "right triangle, derived";
        example "tangential_deflection=3 mm; diameter=8 mm" => "1 mm", 1e-12, "identity: 3-4-5 triangle";
        = {
            let R = D / 2.0;
            delta * delta / (R + (R * R + delta * delta).sqrt())
        }
    }

    turning_approach {
        symbol "l_a", "l_a";
        meaning "Travel of a turning tool from its clearance to the full depth of cut.";
        depth_of_cut a_p: Length, from 0.0, "depth of cut";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        clearance c: Length, from 0.0, "clearance before the first contact";
        -> Length;
        equation "l_a = a_p/tan(kappa_r) + c", r"l_a = \frac{a_p}{\tan\kappa_r} + c";
        valid "straight edge; run-out beyond the end the same way, without the slope; clearances of 1 to 3 mm are common practice, no source";
        source "right triangle, derived";
        example "depth_of_cut=3 mm; cutting_edge_angle=45 deg; clearance=2 mm" => "5 mm", 1e-12, "identity: 3 + 2 mm";
        // Past 90 deg by rounding the tangent would turn negative.
        = a_p / tan(min(kappa_r, si(PI / 2.0))) + c
    }

    turning_travel {
        symbol "L", "L";
        meaning "Travel of a turning pass with approach and run-out.";
        length l: Length, from 0.0, "length that is turned";
        approach l_a: Length, from 0.0, "approach";
        run_out l_u: Length, from 0.0, default 0.0, "run-out beyond the end; none at a shoulder";
        -> Length;
        equation "L = l + l_a + l_u", r"L = l + l_a + l_u";
        valid "one pass at one feed";
        source "definition";
        example "length=120 mm; approach=2 mm" => "122 mm", 1e-12,
            "Rao P.N., Manufacturing Technology vol. 2, 2nd ed., p.130, seen in a digest: 2 mm of approach included";
        = l + l_a + l_u
    }

    constant_speed_knee_diameter {
        symbol "D_k", "D_k";
        meaning "Diameter below which a spindle held at constant cutting speed stays at its largest speed.";
        cutting_speed v_c: Velocity, from 0.0, "cutting speed that is held";
        maximum_speed n_max: RotationalSpeed, above 0.0, "largest spindle speed, of the machine, the chuck or the program";
        -> Length;
        equation "D_k = v_c/(pi n_max)", r"D_k = \frac{v_c}{\pi n_\mathrm{max}}";
        valid "facing and parting towards the centre; n in revolutions per second; without a largest speed the spindle would run away";
        source "derived: spindle_speed solved for the diameter";
        example "cutting_speed=200 m/min; maximum_speed=3000 rpm" => "21.2 mm", 0.002, "own arithmetic: 200/(3 pi) mm";
        = v_c / (PI * n_max)
    }

    facing_time_fixed_speed {
        symbol "t", "t";
        meaning "Time of facing or parting at one spindle speed.";
        outer_diameter D_1: Length, from 0.0, "diameter where the cut starts";
        inner_diameter D_2: Length, from 0.0, to outer_diameter, "diameter where the cut ends";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
        spindle_speed n: RotationalSpeed, above 0.0, "spindle speed";
        -> Time;
        equation "t = (D_1 - D_2)/(2 f n)", r"t = \frac{D_1 - D_2}{2 f n}";
        valid "the way is the radius, not the diameter; n in revolutions per second";
        source "definition of the feed; example: Groover M.P., Fundamentals of Modern Manufacturing, 4th ed., facing problem, from memory";
        example "outer_diameter=38 in; inner_diameter=24 in; feed_per_rev=0.015 in; spindle_speed=40 rpm" => "11.67 min", 0.0005,
            "Groover M.P., Fundamentals of Modern Manufacturing, 4th ed., facing of a tube on a vertical boring mill, from memory";
        = max(D_1 - D_2, si(0.0)) / (2.0 * f * n)
    }

    parting_time {
        symbol "t", "t";
        meaning "Time of parting at constant cutting speed up to a limit of the spindle speed, with less feed near the centre.";
        outer_diameter D_1: Length, from 0.0, "diameter where the cut starts";
        inner_diameter D_2: Length, from 0.0, to outer_diameter, "diameter where the cut ends: the bore, or 0 for a solid bar";
        slow_diameter D_s: Length, from 0.0, to outer_diameter, "diameter below which the feed is reduced";
        cutting_speed v_c: Velocity, above 0.0, "cutting speed";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
        maximum_speed n_max: RotationalSpeed, above 0.0, "largest spindle speed";
        feed_share k: Ratio, above 0.0, to 1.0, default 0.5, "reduced feed over the feed";
        -> Time;
        equation "t = pi (D_1^2 - D_a^2)/(4 v_c f) + (D_a - D_m)/(2 f n_max) + pi (D_m^2 - D_b^2)/(4 v_c k f) + (D_b - D_2)/(2 k f n_max); D_m = max(D_2, D_s); D_a = max(D_m, min(D_1, v_c/(pi n_max))); D_b = max(D_2, min(D_m, v_c/(pi n_max)))",
            r"t = \frac{\pi (D_1^2 - D_a^2)}{4 v_c f} + \frac{D_a - D_m}{2 f n_\mathrm{max}} + \frac{\pi (D_m^2 - D_b^2)}{4 v_c k f} + \frac{D_b - D_2}{2 k f n_\mathrm{max}},\quad D_m = \max(D_2, D_s)";
        valid "facing_time_limited_speed twice: at the full feed down to D_m, at the reduced one below; half the feed near the centre is common practice, no source; n in revolutions per second";
        source "derived: integral of the speed over the radius";
        example "outer_diameter=40 mm; inner_diameter=0 mm; slow_diameter=10 mm; cutting_speed=3.14159265358979 m/s; feed_per_rev=0.1 mm; maximum_speed=50 r/s; feed_share=0.5" => "6 s", 1e-9,
            "own arithmetic: 3 s at constant speed from 40 to 20 mm, then at 50 turns a second 1 s to 10 mm and 2 s to the centre at half the feed";
        = {
            let facing = crate::formula::time::facing_time_limited_speed::value;
            let D_2 = min(D_2, D_1);
            let D_m = min(max(D_2, D_s), D_1);
            facing(D_1, D_m, v_c, f, n_max) + facing(D_m, D_2, v_c, k * f, n_max)
        }
    }

    parting_overhang_cap {
        symbol "l_c", "l_c";
        meaning "Longest overhang of a parting blade for its width.";
        blade_width w: Length, above 0.0, "width of the blade";
        overhang_ratio k: Ratio, above 0.0, default 8.0, "overhang over width that the practice allows";
        -> Length;
        equation "l_c = k w", r"l_c = k w";
        valid "blades of steel; the overhang is the radius that is parted and a little more";
        source "common practice, no source";
        example "blade_width=3 mm" => "24 mm", 1e-12, "identity: 8 x 3 mm";
        = k * w
    }
}
