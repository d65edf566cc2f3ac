//! Diameters that cut: ball, bull nose, face mill, turning.

use super::define::formulas;

formulas! {
    topic "diameter";

    ball_effective_diameter {
        symbol "D_eff", r"D_\mathrm{eff}";
        meaning "Diameter of the circle that cuts at the top of the engaged edge of a ball nose cutter.";
        diameter D: Length, above 0.0, "diameter of the ball";
        axial_depth a_p: Length, from 0.0, "depth of cut along the surface normal";
        tilt_angle beta: Angle, from 0.0, to PI / 2.0, default 0.0, "tilt between the tool axis and the surface normal";
        -> Length;
        equation "D_eff = D sin(min(beta + theta, 90 deg)); theta = acos(1 - 2 min(a_p/D, 1))",
            r"D_\mathrm{eff} = D \sin\left(\min\left(\beta + \arccos\left(1 - \tfrac{2 a_p}{D}\right), 90^\circ\right)\right)";
        valid "the full diameter once a_p reaches D/2 or the angle reaches 90 deg; at beta = 0 the tool axis is the normal, the value is 2 sqrt(a_p (D - a_p)), and the centre stands still and rubs";
        source "derived: circle of latitude on a sphere; formula without tilt seen in public teaching material, with tilt from memory, both checked by geometry";
        example "diameter=10 mm; axial_depth=0.2 mm; tilt_angle=15 deg" => "5.18925515 mm", 1e-8, "identity";
        = {
            let theta = side_arc(D, a_p);
            D * sin(min(beta + theta, si(PI / 2.0)))
        }
    }

    corner_radius_effective_diameter {
        symbol "D_eff", r"D_\mathrm{eff}";
        meaning "Diameter of the circle that cuts at the top of the engaged edge of a cutter with a corner radius.";
        diameter D: Length, above 0.0, "cutter diameter";
        corner_radius r: Length, from 0.0, to diameter / 2.0, "corner radius";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        -> Length;
        equation "D_eff = D - 2 r + 2 sqrt(a (2 r - a)); a = min(a_p, r)",
            r"D_\mathrm{eff} = D - 2 r + 2 \sqrt{a\, (2 r - a)},\quad a = \min(a_p, r)";
        valid "tool axis along the surface normal; the full diameter once a_p reaches the corner radius";
        source "derived: circle on a torus; a ball nose at r = D/2, a round insert at IC = 2 r";
        example "diameter=12 mm; corner_radius=2 mm; axial_depth=0.5 mm" => "10.6457513 mm", 1e-8, "identity";
        = {
            let a = min(a_p, r);
            max(D - 2.0 * r, si(0.0)) + 2.0 * (a * (2.0 * r - a)).sqrt()
        }
    }

    face_mill_outer_diameter {
        symbol "D_max", r"D_\mathrm{max}";
        meaning "Largest diameter that cuts on a face mill whose edges lean outward.";
        tip_diameter D_c: Length, from 0.0, "diameter at the bottom of the edge";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, "tool cutting-edge angle";
        -> Length;
        equation "D_max = D_c + 2 a_p/tan(kappa_r)", r"D_\mathrm{max} = D_c + \frac{2 a_p}{\tan\kappa_r}";
        valid "depth within the height of the edge; a tip diameter of 0 is a pointed chamfer tool";
        source "derived: right triangle";
        example "tip_diameter=50 mm; axial_depth=4 mm; cutting_edge_angle=45 deg" => "58 mm", 1e-9, "identity";
        // Past 90 deg by rounding the tangent would turn negative.
        = D_c + 2.0 * a_p / tan(min(kappa_r, si(PI / 2.0)))
    }

    turning_mean_diameter {
        symbol "D_m", "D_m";
        meaning "Mean diameter of a turning or boring cut.";
        outer_diameter D: Length, above 0.0, "larger diameter of the cut: the stock in turning, the finished bore in boring";
        depth_of_cut a_p: Length, from 0.0, to outer_diameter / 2.0, "depth of cut, on the radius";
        -> Length;
        equation "D_m = D - a_p", r"D_m = D - a_p";
        valid "half-way between the diameters before and after the cut";
        source "derived: (D + (D - 2 a_p))/2";
        example "outer_diameter=50 mm; depth_of_cut=2.5 mm" => "47.5 mm", 1e-9,
            "identity: half-way between 50 and 45";
        = D - a_p
    }
}
