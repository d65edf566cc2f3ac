//! Engagement: where on its circle a tooth cuts, and how many teeth do.
//!
//! phi is the immersion of a tooth, counted from the normal to the feed (+y) in the sense of rotation,
//! so that h = f_z sin(phi); +y lies to the left of the cutter's travel relative to the work.

use super::define::formulas;

formulas! {
    topic "engagement";

    engagement_angle {
        symbol "phi_s", r"\varphi_s";
        meaning "Angle over which a tooth cuts in a side cut or slot.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        -> Angle;
        equation "phi_s = acos(1 - 2 a_e/D)", r"\varphi_s = \arccos\left(1 - \frac{2 a_e}{D}\right)";
        valid "side cut, up or down; slot at a_e = D (180 deg); circular tooth path";
        source "geometry of the circular tooth path, derived; evaluated by the half angle, which loses no digits in thin cuts or near a slot";
        example "diameter=12.7 mm; radial_depth=1.27 mm" => "36.8698976 deg", 1e-8, "identity: 3-4-5 triangle";
        = side_arc(D, a_e)
    }

    up_milling_exit_angle {
        symbol "phi_ex", r"\varphi_\mathrm{ex}";
        meaning "Immersion at which a tooth leaves the work in up (conventional) milling.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        -> Angle;
        equation "phi_ex = acos(1 - 2 a_e/D)", r"\varphi_\mathrm{ex} = \arccos\left(1 - \frac{2 a_e}{D}\right)";
        valid "side cut that enters at phi_st = 0; phi from the normal to the feed in the sense of rotation";
        source "geometry of the circular tooth path, derived";
        example "diameter=20 mm; radial_depth=5 mm" => "60 deg", 1e-9, "identity: acos(1/2)";
        = side_arc(D, a_e)
    }

    down_milling_entry_angle {
        symbol "phi_st", r"\varphi_\mathrm{st}";
        meaning "Immersion at which a tooth enters the work in down (climb) milling.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        -> Angle;
        equation "phi_st = pi - acos(1 - 2 a_e/D)", r"\varphi_\mathrm{st} = \pi - \arccos\left(1 - \frac{2 a_e}{D}\right)";
        valid "side cut that leaves at phi_ex = 180 deg; phi from the normal to the feed in the sense of rotation";
        source "geometry of the circular tooth path, derived";
        example "diameter=20 mm; radial_depth=5 mm" => "120 deg", 1e-9, "identity: 180 - acos(1/2)";
        = immersion(remaining_ratio(D, a_e), engagement_ratio(D, a_e))
    }

    face_entry_angle {
        symbol "phi_st", r"\varphi_\mathrm{st}";
        meaning "Immersion at which a tooth of a face mill enters the work.";
        diameter D: Length, above 0.0, "cutter diameter";
        edge_high y_high: Length, above -diameter / 2.0, "signed distance of the work edge where teeth enter from the cutter axis";
        -> Angle;
        equation "phi_st = acos(2 y/D); y = min(y_high, D/2)",
            r"\varphi_\mathrm{st} = \arccos\frac{2 y}{D},\quad y = \min\left(y_\mathrm{high}, \tfrac{D}{2}\right)";
        valid "an edge at or beyond D/2 gives 0; positive on the side where teeth enter (left of the cutter's travel relative to the work, right-hand cutter seen from the spindle)";
        source "geometry of the circular tooth path, derived";
        example "diameter=100 mm; edge_high=25 mm" => "60 deg", 1e-9, "identity: acos(1/2)";
        = immersion_at(D, y_high)
    }

    face_exit_angle {
        symbol "phi_ex", r"\varphi_\mathrm{ex}";
        meaning "Immersion at which a tooth of a face mill leaves the work.";
        diameter D: Length, above 0.0, "cutter diameter";
        edge_low y_low: Length, below diameter / 2.0, "signed distance of the work edge where teeth leave from the cutter axis";
        -> Angle;
        equation "phi_ex = acos(2 y/D); y = max(y_low, -D/2)",
            r"\varphi_\mathrm{ex} = \arccos\frac{2 y}{D},\quad y = \max\left(y_\mathrm{low}, -\tfrac{D}{2}\right)";
        valid "an edge at or beyond -D/2 gives 180 deg; positive on the side where teeth enter (left of the cutter's travel relative to the work, right-hand cutter seen from the spindle)";
        source "geometry of the circular tooth path, derived";
        example "diameter=100 mm; edge_low=-25 mm" => "120 deg", 1e-9, "identity: acos(-1/2)";
        = immersion_at(D, y_low)
    }

    face_engagement_angle {
        symbol "phi_s", r"\varphi_s";
        meaning "Angle over which a tooth of a face mill cuts.";
        diameter D: Length, above 0.0, "cutter diameter";
        edge_low y_low: Length, below edge_high, "signed distance of the work edge where teeth leave from the cutter axis";
        edge_high y_high: Length, above -diameter / 2.0, "signed distance of the work edge where teeth enter from the cutter axis";
        -> Angle;
        equation "phi_s = acos(2 y_1/D) - acos(2 y_2/D); y_1 = max(y_low, -D/2); y_2 = min(y_high, D/2)",
            r"\varphi_s = \arccos\frac{2 y_1}{D} - \arccos\frac{2 y_2}{D},\quad y_1 = \max\left(y_\mathrm{low}, -\tfrac{D}{2}\right),\ y_2 = \min\left(y_\mathrm{high}, \tfrac{D}{2}\right)";
        valid "one work piece without gaps; edges beyond the cutter count as at its rim; positive on the side where teeth enter (left of the cutter's travel relative to the work, right-hand cutter seen from the spindle)";
        source "geometry of the circular tooth path, derived; centred it is 2 asin(a_e/D)";
        example "diameter=100 mm; edge_low=-20 mm; edge_high=20 mm" => "47.1563569564 deg", 1e-9,
            "identity, centred: 2 asin(0.4)";
        require edge_low: (edge_low < diameter / 2.0), "edge_low < diameter/2";
        = face_arc(D, y_low, y_high)
    }

    mean_teeth_in_cut {
        symbol "z_m", "z_m";
        meaning "Mean number of teeth in the arc of a cut.";
        teeth z: Count, from 1.0, "effective teeth";
        engagement_angle phi_s: Angle, from 0.0, to 2.0 * PI, "angle over which a tooth cuts";
        -> Ratio;
        equation "z_m = z phi_s/(2 pi)", r"z_m = \frac{z\, \varphi_s}{2\pi}";
        valid "straight flutes or one height along a helix, equal pitch; phi_s in radians";
        source "derived: share of the revolution times the teeth";
        example "teeth=4; engagement_angle=90 deg" => "1", 1e-9, "identity";
        = z * radians(phi_s) / (2.0 * PI)
    }

    mean_teeth_touching {
        symbol "z_m", "z_m";
        meaning "Mean number of teeth that touch the work with any part of their edge.";
        teeth z: Count, from 1.0, "effective teeth";
        engagement_angle phi_s: Angle, from 0.0, to 2.0 * PI, "angle over which a tooth cuts";
        diameter D: Length, above 0.0, "cutter diameter";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        helix_angle beta: Angle, from 0.0, below PI / 2.0, "helix angle";
        -> Ratio;
        equation "z_m = min(z, z (phi_s + 2 a_p tan(beta)/D)/(2 pi))",
            r"z_m = \min\left(z, \frac{z}{2\pi}\left(\varphi_s + \frac{2 a_p \tan\beta}{D}\right)\right)";
        valid "cylindrical helix, equal pitch; angles in radians; a smoothness figure, not a load factor: most of the edges touch with a part of their length only";
        source "derived: arc plus the lag of the helix";
        example "teeth=4; engagement_angle=90 deg; diameter=20 mm; axial_depth=20 mm; helix_angle=30 deg" => "1.73510519", 1e-8, "identity";
        = min(z, z * (radians(phi_s) + 2.0 * a_p * tan(beta) / D) / (2.0 * PI))
    }
}
