//! Drilling: the chip of a drill's lips, enlarging a hole, a handbook's torque and thrust, and what a
//! deep hole leaves of speed and feed.

use super::define::formulas;

formulas! {
    topic "drilling";

    drilling_chip_width {
        symbol "b", "b";
        meaning "Undeformed chip width of each lip in drilling or enlarging a hole.";
        diameter D: Length, above 0.0, "diameter of the drill, core drill or countersink";
        point_angle sigma: Angle, above 0.0, to PI, "point angle; the included angle of a countersink";
        start_diameter d: Length, from 0.0, to diameter, default 0.0, "diameter of the hole that is there already; 0 for solid metal";
        -> Length;
        equation "b = (D - d)/(2 sin(sigma/2))", r"b = \frac{D - d}{2 \sin\frac{\sigma}{2}}";
        valid "straight lips that meet on the axis; no allowance for the chisel edge";
        source "derived: half the difference of the diameters along the lip";
        example "diameter=20 mm; point_angle=60 deg; start_diameter=12 mm" => "8 mm", 1e-12, "own arithmetic: 8/(2 sin 30 deg) mm";
        = max(D - d, si(0.0)) / (2.0 * sin(sigma / 2.0))
    }

    hole_chip_thickness {
        symbol "h", "h";
        meaning "Undeformed chip thickness of each edge of a core drill, countersink or reamer.";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        teeth z: Count, from 1.0, "cutting edges that share the feed";
        point_angle sigma: Angle, above 0.0, to PI, "included angle of the edges that cut";
        -> Length;
        equation "h = (f/z) sin(sigma/2)", r"h = \frac{f}{z} \sin\frac{\sigma}{2}";
        valid "equal edges; with two edges that of a drill";
        source "derived: the feed of an edge, square to it";
        example "feed_per_rev=0.4 mm; teeth=4; point_angle=60 deg" => "0.05 mm", 1e-12, "own arithmetic: 0.1 sin 30 deg";
        = f / z * sin(sigma / 2.0)
    }

    feed_for_hole_chip_thickness {
        symbol "f", "f";
        meaning "Feed per revolution at which each edge of a drill, reamer or countersink takes a chip thickness.";
        chip_thickness h: Length, from 0.0, "undeformed chip thickness of an edge";
        teeth z: Count, from 1.0, "cutting edges that share the feed; 2 for a twist drill";
        point_angle sigma: Angle, above 0.0, to PI, "point angle; the included angle of the edges that cut";
        -> Length;
        equation "f = h z/sin(sigma/2)", r"f = \frac{h\, z}{\sin\frac{\sigma}{2}}";
        valid "equal edges";
        source "derived: inverse of h = (f/z) sin(sigma/2)";
        example "chip_thickness=0.05 mm; teeth=4; point_angle=60 deg" => "0.4 mm", 1e-12, "own arithmetic: 0.05 x 4/sin 30 deg mm";
        = h * z / sin(sigma / 2.0)
    }

    enlarging_torque {
        symbol "M_c", "M_c";
        meaning "Torque of a drill, core drill or countersink that enlarges a hole.";
        diameter D: Length, from 0.0, "diameter of the tool where it cuts last";
        start_diameter d: Length, from 0.0, to diameter, "diameter of the hole before";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at the chip thickness of an edge";
        -> Torque;
        equation "M_c = k_c f (D^2 - d^2)/8", r"M_c = \frac{k_c\, f\, (D^2 - d^2)}{8}";
        valid "any number of edges: together they cut a chip of width (D - d)/2 and thickness f, at the mean radius (D + d)/4; margins and chip friction not counted";
        source "derived: section of the chip times k_c times its lever; with no hole before, that of solid drilling";
        example "diameter=20 mm; start_diameter=12 mm; feed_per_rev=0.25 mm; specific_cutting_force=2000 N/mm2" => "16 N.m", 1e-12,
            "own arithmetic: 2000 x 0.25 x 256/8 N mm";
        = torque(k_c * f * (max(D - d, si(0.0)) * (D + d)) / 8.0)
    }

    enlarging_thrust {
        symbol "F_f", "F_f";
        meaning "Thrust of a drill, core drill or countersink that enlarges a hole.";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at the chip thickness of an edge";
        diameter D: Length, from 0.0, "diameter of the tool where it cuts last";
        start_diameter d: Length, from 0.0, to diameter, "diameter of the hole before, larger than the chisel edge";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        point_angle sigma: Angle, above 0.0, to PI, "point angle; the included angle of a countersink";
        factor K: Ratio, above 0.0, default 0.5, "thrust of the edges over their cutting force; no chisel edge cuts";
        -> Force;
        equation "F_f = K k_c ((D - d)/2) f sin(sigma/2)", r"F_f = K\, k_c\, \frac{D - d}{2}\, f \sin\frac{\sigma}{2}";
        valid "rough, within 40 % either way; the form of solid drilling with the lips alone";
        source "form of German handbooks, from memory; factor 0.5 common practice, no source";
        example "specific_cutting_force=2000 N/mm2; diameter=20 mm; start_diameter=12 mm; feed_per_rev=0.25 mm; point_angle=60 deg" => "500 N", 1e-12,
            "own arithmetic: 0.5 x 2000 x 4 x 0.25 x 0.5 N";
        = K * k_c * (max(D - d, si(0.0)) / 2.0) * f * sin(sigma / 2.0)
    }

    enlarging_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of a drill, core drill or reamer that enlarges a hole.";
        diameter D: Length, from 0.0, "diameter of the tool";
        start_diameter d: Length, from 0.0, to diameter, "diameter of the hole before";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        -> VolumeRate;
        equation "Q = (pi (D^2 - d^2)/4) f n", r"Q = \frac{\pi (D^2 - d^2)}{4} f\, n";
        valid "at full diameter; n in revolutions per second";
        source "derived: section of the ring times feed rate";
        example "diameter=20 mm; start_diameter=12 mm; feed_per_rev=0.25 mm; spindle_speed=300 rpm" => "15079.6447372 mm3/min", 1e-9,
            "own arithmetic: 64 pi x 75 mm3/min";
        = PI * (max(D - d, si(0.0)) * (D + d)) / 4.0 * f * n
    }

    handbook_drilling_thrust {
        symbol "F_f", "F_f";
        meaning "Thrust of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge.";
        work_factor K_d: Ratio, above 0.0, "work material factor, the same number in the handbook's inch and metric forms";
        diameter D: Length, from 0.0, "drill diameter";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        wear_factor W: Ratio, from 1.0, default 1.0, "tool wear factor";
        thrust_factor B: Ratio, above 0.0, default 1.355, "factor of the chisel edge on the thrust of the lips";
        chisel_factor J: Ratio, from 0.0, default 0.03, "factor of the thrust of the chisel edge itself";
        -> Force;
        equation "F_f = K_d W (2 B (f/1 in)^0.8 (D/1 in)^0.8 + J (D/1 in)^2) 1 lbf",
            r"F_f = K_d W \left(2 B \left(\frac{f}{1\,\mathrm{in}}\right)^{0.8} \left(\frac{D}{1\,\mathrm{in}}\right)^{0.8} + J \left(\frac{D}{1\,\mathrm{in}}\right)^2\right) 1\,\mathrm{lbf}";
        valid "two-lip twist drills in solid metal; K_d about 24000 for steel of 200 HB (from memory), W 1.5 for a worn drill (from memory); B and J by chisel edge over diameter: 0.03 1.100 0.001, 0.10 1.235 0.010, 0.18 1.355 0.030 (standard drill), 0.25 1.445 0.065, 0.30 1.500 0.090; the handbook's metric form has rounded constants and reads 0.6 to 1.5 % off";
        source "E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen; its tables of factors for feed and diameter are these powers within 0.8 %";
        example "work_factor=24000; diameter=7/8 in; feed_per_rev=0.008 in; wear_factor=1.5; thrust_factor=1.355; chisel_factor=0.030" => "2668 lbf", 1e-3,
            "E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen: its factors from tables of two or three digits";
        = {
            let lips = 2.0 * B * pow(inches(f), number(0.8)) * pow(inches(D), number(0.8));
            let chisel = J * inches(D) * inches(D);
            K_d * W * (lips + chisel) * pound_force()
        }
    }

    handbook_drilling_torque {
        symbol "M_c", "M_c";
        meaning "Torque of a twist drill in solid metal by a handbook's factors for work, wear and chisel edge.";
        work_factor K_d: Ratio, above 0.0, "work material factor, the same number in the handbook's inch and metric forms";
        diameter D: Length, from 0.0, "drill diameter";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        wear_factor W: Ratio, from 1.0, default 1.0, "tool wear factor";
        torque_factor A: Ratio, above 0.0, default 1.085, "factor of the chisel edge on the torque";
        -> Torque;
        equation "M_c = K_d W A (f/1 in)^0.8 (D/1 in)^1.8 1 in 1 lbf",
            r"M_c = K_d W A \left(\frac{f}{1\,\mathrm{in}}\right)^{0.8} \left(\frac{D}{1\,\mathrm{in}}\right)^{1.8} 1\,\mathrm{in}\; 1\,\mathrm{lbf}";
        valid "two-lip twist drills in solid metal; K_d about 24000 for steel of 200 HB (from memory), W 1.5 for a worn drill (from memory); A by chisel edge over diameter: 0.03 1.000, 0.10 1.020, 0.18 1.085 (standard drill), 0.25 1.155, 0.30 1.235; the handbook's metric form has a rounded constant and reads 0.6 % low";
        source "E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen; its tables of factors for feed and diameter are these powers within 0.8 %";
        example "work_factor=24000; diameter=7/8 in; feed_per_rev=0.008 in; wear_factor=1.5; torque_factor=1.085" => "645 lbf.in", 1e-3,
            "E. Oberg et al., Machinery's Handbook, 31st ed., p.1152-1153, seen: its factors from tables of two or three digits";
        = {
            let inch: quantity::Length = si(0.0254);
            let powers = pow(inches(f), number(0.8)) * pow(inches(D), number(1.8));
            torque(K_d * W * A * powers * inch * pound_force())
        }
    }

    deep_hole_speed_factor {
        symbol "k_v", "k_v";
        meaning "Factor on the cutting speed of a twist drill in a deep hole.";
        depth l: Length, from 0.0, "depth of the hole";
        diameter D: Length, above 0.0, "drill diameter";
        -> Ratio;
        equation "k_v = 1 for l/D < 3, k_v = 0.9 for l/D < 4, k_v = 0.8 for l/D < 5, k_v = 0.7 for l/D < 6, k_v = 0.6 else",
            r"k_v = \begin{cases} 1 & \frac{l}{D} < 3 \\ 0.9 & \frac{l}{D} < 4 \\ 0.8 & \frac{l}{D} < 5 \\ 0.7 & \frac{l}{D} < 6 \\ 0.6 & \text{else} \end{cases}";
        valid "twist drills with fluid from outside; the step of the printed depth at or below that of the hole; printed 35 to 40 % less at 6 diameters, of which the larger cut is taken; beyond it deep-hole drills or pecking";
        source "public drilling reference card of a maker, deep-hole reductions for 3 to 6 diameters, seen";
        example "depth=40 mm; diameter=10 mm" => "80 %", 1e-12, "the card: 20 % less at 4 diameters, seen";
        = {
            let [three, four, five, six] = deep_hole_steps(l, D);
            number(1.0) - (three + four + five + six) / 10.0
        }
    }

    deep_hole_feed_factor {
        symbol "k_f", "k_f";
        meaning "Factor on the feed of a twist drill in a deep hole.";
        depth l: Length, from 0.0, "depth of the hole";
        diameter D: Length, above 0.0, "drill diameter";
        -> Ratio;
        equation "k_f = 1 for l/D < 3, k_f = 0.9 for l/D < 5, k_f = 0.8 else",
            r"k_f = \begin{cases} 1 & \frac{l}{D} < 3 \\ 0.9 & \frac{l}{D} < 5 \\ 0.8 & \text{else} \end{cases}";
        valid "twist drills with fluid from outside; the step of the printed depth at or below that of the hole; beyond 6 diameters deep-hole drills or pecking";
        source "public drilling reference card of a maker, deep-hole reductions for 3 to 6 diameters, seen";
        example "depth=50 mm; diameter=10 mm" => "80 %", 1e-12, "the card: 20 % less at 5 diameters, seen";
        = {
            let [three, _, five, _] = deep_hole_steps(l, D);
            number(1.0) - (three + five) / 10.0
        }
    }
}
