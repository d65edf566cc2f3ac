//! Chip thickness: what one tooth takes.

use super::define::formulas;

formulas! {
    topic "chip";

    max_chip_thickness {
        symbol "h_max", r"h_\mathrm{max}";
        meaning "Largest undeformed chip thickness of a side cut or slot.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "h_max = f_z sin(kappa_r) s; s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >= D/2",
            r"h_\mathrm{max} = f_z \sin\kappa_r\, s,\quad s = \begin{cases} 2\sqrt{\frac{a_e}{D}\left(1 - \frac{a_e}{D}\right)} & a_e < D/2 \\ 1 & a_e \ge D/2 \end{cases}";
        valid "circular tooth path, f_z much smaller than D; side cut or slot";
        source "geometry of the circular tooth path, derived; ISO 3002 symbols from memory";
        example "feed_per_tooth=0.1 mm; diameter=12.7 mm; radial_depth=1.27 mm; cutting_edge_angle=90 deg" => "0.06 mm", 1e-6,
            "identity: 3-4-5 triangle";
        = f_z * sin(kappa_r) * largest_sine(engagement_ratio(D, a_e))
    }

    mean_chip_thickness {
        symbol "h_m", "h_m";
        meaning "Mean undeformed chip thickness over the arc of a side cut or slot.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "h_m = 2 f_z sin(kappa_r) a_e/(D phi_s); phi_s = acos(1 - 2 a_e/D)",
            r"h_m = \frac{2 f_z \sin\kappa_r\, a_e}{D\, \varphi_s},\quad \varphi_s = \arccos\left(1 - \frac{2 a_e}{D}\right)";
        valid "circular tooth path, f_z much smaller than D; the exact mean of f_z sin(kappa_r) sin(phi) over the arc; phi_s in radians; the shortcut f_z sqrt(a_e/D) reads 1.7 % high at a_e/D = 0.1 and 57 % high in a slot";
        source "derived: integral of the sine over the arc";
        example "feed_per_tooth=0.1 mm; diameter=12.7 mm; radial_depth=1.27 mm; cutting_edge_angle=90 deg" => "0.0310799775 mm", 1e-8, "identity";
        = 2.0 * f_z * sin(kappa_r) * engagement_ratio(D, a_e) / radians(side_arc(D, a_e))
    }

    face_mean_chip_thickness {
        symbol "h_m", "h_m";
        meaning "Mean undeformed chip thickness over the arc of a face mill.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        edge_low y_low: Length, below edge_high, "signed distance of the work edge where teeth leave from the cutter axis";
        edge_high y_high: Length, above -diameter / 2.0, "signed distance of the work edge where teeth enter from the cutter axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "h_m = 2 f_z sin(kappa_r) (y_2 - y_1)/(D phi_s); phi_s = acos(2 y_1/D) - acos(2 y_2/D); y_1 = max(y_low, -D/2); y_2 = min(y_high, D/2)",
            r"h_m = \frac{2 f_z \sin\kappa_r\, (y_2 - y_1)}{D\, \varphi_s},\quad \varphi_s = \arccos\frac{2 y_1}{D} - \arccos\frac{2 y_2}{D},\quad y_1 = \max\left(y_\mathrm{low}, -\tfrac{D}{2}\right),\ y_2 = \min\left(y_\mathrm{high}, \tfrac{D}{2}\right)";
        valid "circular tooth path, f_z much smaller than D; edges beyond the cutter count as at its rim; phi_s in radians; positive on the side where teeth enter (left of the cutter's travel relative to the work, right-hand cutter seen from the spindle)";
        source "derived: integral of the sine over the arc, f_z sin(kappa_r) (cos phi_st - cos phi_ex)/phi_s";
        example "feed_per_tooth=0.2 mm; diameter=100 mm; edge_low=-20 mm; edge_high=20 mm; cutting_edge_angle=45 deg" => "0.137463492 mm", 1e-8, "identity";
        require edge_low: (edge_low < diameter / 2.0), "edge_low < diameter/2";
        = 2.0 * f_z * sin(kappa_r) * (face_width(D, y_low, y_high) / D) / radians(face_arc(D, y_low, y_high))
    }

    face_max_chip_thickness {
        symbol "h_max", r"h_\mathrm{max}";
        meaning "Largest undeformed chip thickness over the arc of a face mill.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        edge_low y_low: Length, below edge_high, "signed distance of the work edge where teeth leave from the cutter axis";
        edge_high y_high: Length, above -diameter / 2.0, "signed distance of the work edge where teeth enter from the cutter axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "h_max = f_z sin(kappa_r) m; m = sqrt(1 - (2 y/D)^2); y = max(y_low, -y_high, 0 mm)",
            r"h_\mathrm{max} = f_z \sin\kappa_r\, m,\quad m = \sqrt{1 - \left(\frac{2 y}{D}\right)^2},\quad y = \max(y_\mathrm{low}, -y_\mathrm{high}, 0)";
        valid "circular tooth path, f_z much smaller than D; y is the distance of the work from the cutter axis, so m = 1 where the axis runs over the work; positive on the side where teeth enter (left of the cutter's travel relative to the work, right-hand cutter seen from the spindle)";
        source "derived: largest sine over the arc";
        example "feed_per_tooth=0.2 mm; diameter=100 mm; edge_low=-20 mm; edge_high=20 mm; cutting_edge_angle=45 deg" => "0.141421356 mm", 1e-8, "identity";
        require edge_low: (edge_low < diameter / 2.0), "edge_low < diameter/2";
        = {
            let y = max(max(y_low, -y_high), si(0.0));
            f_z * sin(kappa_r) * largest_sine(half_versine(D, y))
        }
    }

    radial_thinning_factor {
        symbol "C_r", "C_r";
        meaning "Feed per tooth over the largest chip thickness of a side cut at a cutting-edge angle of 90 deg.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        -> Ratio;
        equation "C_r = 1/s; s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >= D/2",
            r"C_r = \frac{1}{s},\quad s = \begin{cases} 2\sqrt{\frac{a_e}{D}\left(1 - \frac{a_e}{D}\right)} & a_e < D/2 \\ 1 & a_e \ge D/2 \end{cases}";
        valid "side cut or slot, circular tooth path; never below 1: from half immersion on every tooth passes its full feed";
        source "derived: largest sine over the arc";
        example "diameter=12.7 mm; radial_depth=1.27 mm" => "1.66666667", 1e-8, "identity: 3-4-5 triangle";
        = number(1.0) / largest_sine(engagement_ratio(D, a_e))
    }

    feed_for_max_chip_thickness {
        symbol "f_z", "f_z";
        meaning "Feed per tooth that gives a largest chip thickness in a side cut or slot.";
        max_chip_thickness h_max: Length, from 0.0, "largest chip thickness";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "f_z = h_max/(sin(kappa_r) s); s = 2 sqrt((a_e/D) (1 - a_e/D)) for a_e < D/2, s = 1 for a_e >= D/2",
            r"f_z = \frac{h_\mathrm{max}}{\sin\kappa_r\, s},\quad s = \begin{cases} 2\sqrt{\frac{a_e}{D}\left(1 - \frac{a_e}{D}\right)} & a_e < D/2 \\ 1 & a_e \ge D/2 \end{cases}";
        valid "circular tooth path, f_z much smaller than D; in thin cuts the strength of the tooth and its chip space bound the feed before this does";
        source "derived: inverse of max_chip_thickness";
        example "max_chip_thickness=0.2 mm; diameter=75 mm; radial_depth=5 mm" => "0.400891862869 mm", 1e-9,
            "own arithmetic on the inputs of a metal-cutting textbook companion, Ex. 2.4";
        = h_max / (sin(kappa_r) * largest_sine(engagement_ratio(D, a_e)))
    }

    round_edge_max_chip_thickness {
        symbol "h_max", r"h_\mathrm{max}";
        meaning "Largest chip thickness along a round edge: round insert, ball or corner radius.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        insert_diameter IC: Length, above 0.0, "diameter of the round insert; twice the radius of a ball or corner";
        axial_depth a_p: Length, above 0.0, "depth of cut along the axis";
        -> Length;
        equation "h_max = f_z m; m = sqrt(1 - (1 - 2 a_p/IC)^2) for a_p < IC/2, m = 1 for a_p >= IC/2",
            r"h_\mathrm{max} = f_z\, m,\quad m = \begin{cases} \sqrt{1 - \left(1 - \frac{2 a_p}{IC}\right)^2} & a_p < IC/2 \\ 1 & a_p \ge IC/2 \end{cases}";
        valid "arc that holds phi = 90 deg: slot, half immersion or more, face mill over its axis; f_z much smaller than IC";
        source "derived: slope of the circle at the depth of cut";
        example "feed_per_tooth=0.2 mm; insert_diameter=10 mm; axial_depth=1 mm" => "0.12 mm", 1e-9,
            "identity: 3-4-5 triangle, sine 0.6";
        = f_z * largest_sine(a_p / IC)
    }

    round_edge_feed_for_max_chip_thickness {
        symbol "f_z", "f_z";
        meaning "Feed per tooth that gives a largest chip thickness along a round edge.";
        max_chip_thickness h_max: Length, from 0.0, "largest chip thickness";
        insert_diameter IC: Length, above 0.0, "diameter of the round insert; twice the radius of a ball or corner";
        axial_depth a_p: Length, above 0.0, "depth of cut along the axis";
        -> Length;
        equation "f_z = h_max/m; m = sqrt(1 - (1 - 2 a_p/IC)^2) for a_p < IC/2, m = 1 for a_p >= IC/2",
            r"f_z = \frac{h_\mathrm{max}}{m},\quad m = \begin{cases} \sqrt{1 - \left(1 - \frac{2 a_p}{IC}\right)^2} & a_p < IC/2 \\ 1 & a_p \ge IC/2 \end{cases}";
        valid "arc that holds phi = 90 deg: slot, half immersion or more, face mill over its axis; f_z much smaller than IC";
        source "derived: inverse of round_edge_max_chip_thickness";
        example "max_chip_thickness=0.1 mm; insert_diameter=12 mm; axial_depth=1.5 mm" => "0.151185789 mm", 1e-8, "identity";
        = h_max / largest_sine(a_p / IC)
    }

    round_edge_mean_thickness_ratio {
        symbol "r_m", "r_m";
        meaning "Mean chip thickness along a round edge over the feed per tooth.";
        insert_diameter IC: Length, above 0.0, "diameter of the round insert; twice the radius of a ball or corner";
        axial_depth a_p: Length, above 0.0, to insert_diameter / 2.0, "depth of cut along the axis";
        -> Ratio;
        equation "r_m = 2 a_p/(IC psi); psi = acos(1 - 2 a_p/IC)",
            r"r_m = \frac{2 a_p}{IC\, \psi},\quad \psi = \arccos\left(1 - \frac{2 a_p}{IC}\right)";
        valid "at phi = 90 deg, f_z much smaller than IC; psi in radians";
        source "derived: integral of the sine along the edge";
        example "insert_diameter=12 mm; axial_depth=1.5 mm" => "0.345908611", 1e-8, "identity";
        = 2.0 * (a_p / IC) / radians(side_arc(IC, a_p))
    }

    turning_chip_thickness {
        symbol "h", "h";
        meaning "Undeformed chip thickness in turning.";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "h = f sin(kappa_r)", r"h = f \sin\kappa_r";
        valid "straight edge, depth above the part that the nose radius takes, feed below the nose radius";
        source "derived: parallelogram of the cut; symbols of ISO 3002-3, from memory";
        example "feed_per_rev=0.25 mm; cutting_edge_angle=45 deg" => "0.176776695297 mm", 1e-9, "own arithmetic: 0.25/sqrt(2)";
        = f * sin(kappa_r)
    }

    turning_chip_width {
        symbol "b", "b";
        meaning "Undeformed chip width in turning.";
        depth_of_cut a_p: Length, from 0.0, "depth of cut";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "b = a_p/sin(kappa_r)", r"b = \frac{a_p}{\sin\kappa_r}";
        valid "straight edge, depth above the part that the nose radius takes; along the edge of a mill as well";
        source "derived: parallelogram of the cut; symbols of ISO 3002-3, from memory";
        example "depth_of_cut=3.0 mm; cutting_edge_angle=45 deg" => "4.24264068712 mm", 1e-9, "own arithmetic: 3 sqrt(2)";
        = a_p / sin(kappa_r)
    }

    drilling_chip_thickness {
        symbol "h", "h";
        meaning "Undeformed chip thickness of each lip of a two-lip drill.";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        point_angle sigma: Angle, above 0.0, to PI, "point angle";
        -> Length;
        equation "h = (f/2) sin(sigma/2)", r"h = \frac{f}{2} \sin\frac{\sigma}{2}";
        valid "two equal lips; sigma = 180 deg is a flat bottom";
        source "derived: half the feed, square to the lip";
        example "feed_per_rev=0.2 mm; point_angle=118 deg" => "0.0857167300702 mm", 1e-9, "own arithmetic: 0.1 sin 59 deg";
        = f / 2.0 * sin(sigma / 2.0)
    }

    plunge_chip_thickness {
        symbol "h", "h";
        meaning "Undeformed chip thickness in plunging with the end of a mill.";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth along the axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "angle between the end edge and the axis";
        -> Length;
        equation "h = f_z sin(kappa_r)", r"h = f_z \sin\kappa_r";
        valid "feed along the axis: the end edges cut and the whole feed is chip, whatever the width; no thinning";
        source "derived: parallelogram of the cut; symbols of ISO 3002-3, from memory";
        example "feed_per_tooth=0.08 mm; cutting_edge_angle=30 deg" => "0.04 mm", 1e-12, "identity: half the feed";
        = f_z * sin(kappa_r)
    }
}
