//! Chamfers along an edge, cut by the flank of a conical cutter.

use super::define::formulas;

formulas! {
    topic "chamfer";

    cone_cutting_edge_angle {
        symbol "kappa_r", r"\kappa_r";
        meaning "Cutting-edge angle of a conical cutter.";
        point_angle sigma: Angle, above 0.0, below PI, "angle of the whole cone";
        -> Angle;
        equation "kappa_r = 90 deg - sigma/2", r"\kappa_r = 90^\circ - \frac{\sigma}{2}";
        valid "feed across the axis; with this angle chip thickness, chip width and the diameter at a height are those of a face mill";
        source "definition of the angles, ISO 3002-1 from memory";
        example "point_angle=60 deg" => "60 deg", 1e-12, "identity: 90 - 30 deg";
        = {
            let right: quantity::Angle = si(PI / 2.0);
            right - sigma / 2.0
        }
    }

    chamfer_depth {
        symbol "a_p", "a_p";
        meaning "Depth along the axis of a chamfer whose width is measured across it.";
        chamfer_width c: Length, from 0.0, "width of the chamfer, across the axis";
        point_angle sigma: Angle, above 0.0, below PI, "angle of the whole cone";
        -> Length;
        equation "a_p = c/tan(sigma/2)", r"a_p = \frac{c}{\tan\frac{\sigma}{2}}";
        valid "edge of 90 deg, axis along one of its faces";
        source "derived: right triangle";
        example "chamfer_width=1.5 mm; point_angle=90 deg" => "1.5 mm", 1e-12, "identity: 45 deg";
        = c / tan(sigma / 2.0)
    }

    chamfer_width {
        symbol "c", "c";
        meaning "Width across the axis of a chamfer of a depth along it.";
        axial_depth a_p: Length, from 0.0, "depth of the chamfer, along the axis";
        point_angle sigma: Angle, above 0.0, below PI, "angle of the whole cone";
        -> Length;
        equation "c = a_p tan(sigma/2)", r"c = a_p \tan\frac{\sigma}{2}";
        valid "edge of 90 deg, axis along one of its faces";
        source "derived: inverse of chamfer_depth";
        example "axial_depth=3 mm; point_angle=60 deg" => "1.732050808 mm", 1e-9, "identity: 3 tan(30 deg) mm";
        = a_p * tan(sigma / 2.0)
    }

    chamfer_outer_diameter {
        symbol "D_max", r"D_\mathrm{max}";
        meaning "Largest diameter that cuts on a conical cutter along an edge.";
        tip_diameter D_c: Length, from 0.0, "diameter of the flat at the tip; 0 of a pointed cutter";
        chamfer_width c: Length, from 0.0, "width of the chamfer, across the axis";
        tip_clearance u: Length, from 0.0, "height of the tip below the chamfer's lower end";
        point_angle sigma: Angle, above 0.0, below PI, "angle of the whole cone";
        -> Length;
        equation "D_max = D_c + 2 c + 2 u tan(sigma/2)", r"D_\mathrm{max} = D_c + 2 c + 2 u \tan\frac{\sigma}{2}";
        valid "the cutting speed belongs to this diameter; the smallest that cuts is 2 c less, and a point that cuts with its tip stands still there: keep it below the work";
        source "derived: right triangle";
        example "tip_diameter=1 mm; chamfer_width=2 mm; tip_clearance=1 mm; point_angle=90 deg" => "7 mm", 1e-12, "identity: 1 + 4 + 2 mm";
        = D_c + 2.0 * c + 2.0 * u * tan(sigma / 2.0)
    }

    chamfer_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of a chamfer along an edge.";
        axial_depth a_p: Length, from 0.0, "depth of the chamfer, along the axis";
        chamfer_width c: Length, from 0.0, "width of the chamfer, across the axis";
        table_feed v_f: Velocity, from 0.0, "feed along the edge";
        -> VolumeRate;
        equation "Q = a_p c v_f/2", r"Q = \frac{a_p\, c\, v_f}{2}";
        valid "sharp edge of 90 deg before the cut, one pass";
        source "derived: triangle times feed";
        example "axial_depth=2 mm; chamfer_width=2 mm; table_feed=300 mm/min" => "600 mm3/min", 1e-12, "identity";
        = a_p * c * v_f / 2.0
    }
}
