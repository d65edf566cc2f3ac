//! Surfaces finished in rows by ball and corner radius: what cuts under a tilted axis, the ridges
//! between two passes, and the steps that keep them low.

use super::define::formulas;

formulas! {
    topic "surface";

    tilted_corner_effective_diameter {
        symbol "D_eff", r"D_\mathrm{eff}";
        meaning "Diameter of the circle that cuts at the top of the engaged edge of a tilted cutter with a corner radius.";
        diameter D: Length, above 0.0, "cutter diameter";
        corner_radius r: Length, above 0.0, to diameter / 2.0, "corner radius";
        axial_depth a_p: Length, from 0.0, "depth of cut along the surface normal";
        tilt_angle beta: Angle, from 0.0, to PI / 2.0, "tilt between the tool axis and the surface normal";
        -> Length;
        equation "D_eff = D - 2 r + 2 r sin(min(beta + theta, 90 deg)); theta = acos(1 - min(a_p/r, 1))",
            r"D_\mathrm{eff} = D - 2 r + 2 r \sin\left(\min\left(\beta + \theta, 90^\circ\right)\right),\quad \theta = \arccos\left(1 - \min\left(\tfrac{a_p}{r}, 1\right)\right)";
        valid "the full diameter once the depth reaches the corner radius or the angle reaches 90 deg; a ball nose at r = D/2";
        source "derived: circle of latitude on a torus; without tilt it is corner_radius_effective_diameter";
        example "diameter=12 mm; corner_radius=2 mm; axial_depth=0.5 mm; tilt_angle=15 deg" => "11.332056657 mm", 1e-9, "identity";
        = {
            let theta = side_arc(2.0 * r, min(a_p, r));
            max(D - 2.0 * r, si(0.0)) + 2.0 * r * sin(min(beta + theta, si(PI / 2.0)))
        }
    }

    tilted_edge_mean_thickness_ratio {
        symbol "r_m", "r_m";
        meaning "Mean chip thickness along the engaged arc of a tilted ball or corner radius over that of an edge along the axis.";
        edge_diameter d: Length, above 0.0, "diameter of the ball; twice the corner radius";
        axial_depth a_p: Length, above 0.0, to edge_diameter / 2.0, "depth of cut along the surface normal";
        tilt_angle beta: Angle, from 0.0, to PI / 2.0, default 0.0, "tilt between the tool axis and the surface normal";
        -> Ratio;
        equation "r_m = (2 sin((beta + gamma)/2) sin((gamma - beta)/2) + max(beta + psi - pi/2, 0))/psi; psi = acos(1 - 2 a_p/d); gamma = min(beta + psi, pi/2)",
            r"r_m = \frac{2 \sin\frac{\beta + \gamma}{2} \sin\frac{\gamma - \beta}{2} + \max\left(\beta + \psi - \frac{\pi}{2}, 0\right)}{\psi},\quad \psi = \arccos\left(1 - \frac{2 a_p}{d}\right),\ \gamma = \min\left(\beta + \psi, \frac{\pi}{2}\right)";
        valid "at phi = 90 deg, feed much smaller than the edge's diameter; beyond 90 deg the shank's cylinder cuts; angles in radians";
        source "derived: integral of the sine of the cutting-edge angle from beta to beta + psi; without tilt it is round_edge_mean_thickness_ratio";
        example "edge_diameter=12 mm; axial_depth=3 mm; tilt_angle=30 deg" => "0.826993343133", 1e-12, "identity: (cos 30 deg - cos 90 deg)/(pi/3)";
        = {
            let psi = side_arc(d, a_p);
            let quarter: quantity::Angle = si(PI / 2.0);
            let beta = min(beta, quarter);
            let gamma = min(beta + psi, quarter);
            let chord = 2.0 * sin((beta + gamma) / 2.0) * sin((gamma - beta) / 2.0);
            (chord + max(radians(beta + psi - quarter), number(0.0))) / radians(psi)
        }
    }

    contact_diameter {
        symbol "D_k", "D_k";
        meaning "Diameter of the circle on which the point that leaves the finished surface runs.";
        diameter D: Length, above 0.0, "cutter diameter";
        corner_radius r: Length, from 0.0, to diameter / 2.0, "corner radius; of a ball nose half the diameter";
        tilt_angle beta: Angle, from 0.0, to PI / 2.0, "tilt between the tool axis and the surface normal";
        -> Length;
        equation "D_k = D - 2 r + 2 r sin(beta)", r"D_k = D - 2 r + 2 r \sin\beta";
        valid "0 for a ball nose whose axis is the normal: its centre stands still and rubs; a tilt of 10 to 15 deg avoids that (common practice)";
        source "derived: circle of latitude on a torus";
        example "diameter=12 mm; corner_radius=6 mm; tilt_angle=30 deg" => "6 mm", 1e-12, "identity: half the ball's diameter";
        = max(D - 2.0 * r, si(0.0)) + 2.0 * r * sin(min(beta, si(PI / 2.0)))
    }

    tilted_corner_scallop_radius {
        symbol "R_s", "R_s";
        meaning "Radius of the ball that leaves the same scallops as a cutter with a corner radius tilted along its path.";
        diameter D: Length, above 0.0, "cutter diameter";
        corner_radius r: Length, above 0.0, to diameter / 2.0, "corner radius";
        tilt_angle beta: Angle, above 0.0, to PI / 2.0, "tilt between the tool axis and the surface normal, in the plane of the path";
        -> Length;
        equation "R_s = r + (D/2 - r)/sin(beta)", r"R_s = r + \frac{D/2 - r}{\sin\beta}";
        valid "small scallops; a large radius at a small tilt: the corner must not gouge a hollow surface";
        source "derived: second radius of curvature of a torus, the length of its normal to the axis";
        example "diameter=12 mm; corner_radius=2 mm; tilt_angle=30 deg" => "10 mm", 1e-12, "identity: 2 + 4/0.5 mm";
        = r + max(D / 2.0 - r, si(0.0)) / sin(min(beta, si(PI / 2.0)))
    }

    corner_scallop_height {
        symbol "h", "h";
        meaning "Height of the ridges that a cutter with a corner radius leaves between two passes over a flat surface.";
        diameter D: Length, above 0.0, "cutter diameter";
        corner_radius r: Length, above 0.0, to diameter / 2.0, "corner radius";
        stepover s: Length, from 0.0, to diameter, "distance between two passes";
        -> Length;
        equation "h = w^2/(4 r + 2 sqrt(4 r^2 - w^2)); w = max(s - (D - 2 r), 0 mm)",
            r"h = \frac{w^2}{4 r + 2\sqrt{4 r^2 - w^2}},\quad w = \max(s - (D - 2 r), 0)";
        valid "tool axis along the surface normal; none while the flat end covers the stepover; the same as r - sqrt(r^2 - w^2/4)";
        source "derived: circle and chord; a ball nose at r = D/2";
        example "diameter=12 mm; corner_radius=2 mm; stepover=9 mm" => "0.0635083269 mm", 1e-9, "identity: 2 - sqrt(3.75) mm";
        = {
            let w = max(s - (D - 2.0 * r), si(0.0));
            let root = max(4.0 * r * r - w * w, si(0.0)).sqrt();
            w * w / (4.0 * r + 2.0 * root)
        }
    }

    corner_stepover_for_scallop {
        symbol "s", "s";
        meaning "Stepover of a cutter with a corner radius that leaves ridges of a wanted height on a flat surface.";
        diameter D: Length, above 0.0, "cutter diameter";
        corner_radius r: Length, above 0.0, to diameter / 2.0, "corner radius";
        scallop_height h: Length, from 0.0, to corner_radius, "wanted height of the ridges";
        -> Length;
        equation "s = D - 2 r + 2 sqrt(h (2 r - h))", r"s = D - 2 r + 2 \sqrt{h (2 r - h)}";
        valid "tool axis along the surface normal";
        source "derived: inverse of corner_scallop_height";
        example "diameter=12 mm; corner_radius=2 mm; scallop_height=0.02 mm" => "8.56426943989 mm", 1e-9, "identity: 8 + 2 sqrt(0.0796) mm";
        = max(D - 2.0 * r, si(0.0)) + 2.0 * (h * (2.0 * r - h)).sqrt()
    }

    convex_scallop_height {
        symbol "h", "h";
        meaning "Height of the scallops that a ball-nosed cutter leaves between two passes over a convex surface.";
        ball_diameter D: Length, above 0.0, "diameter of the ball";
        surface_radius rho: Length, above 0.0, "radius of the surface across the passes";
        stepover s: Length, from 0.0, to ball_diameter * surface_radius / (surface_radius + ball_diameter / 2.0), "straight distance between two points of contact";
        -> Length;
        equation "h = q/(R + sqrt(R^2 - q)) - q/(rho + R + sqrt((rho + R)^2 - q)); R = D/2; q = (s (rho + R)/(2 rho))^2",
            r"h = \frac{q}{R + \sqrt{R^2 - q}} - \frac{q}{\rho + R + \sqrt{(\rho + R)^2 - q}},\quad R = \frac{D}{2},\ q = \left(\frac{s (\rho + R)}{2 \rho}\right)^2";
        valid "round across the passes; nearly s^2/8 (1/R + 1/rho) where both are large against s: higher than on a flat";
        source "derived: two circles about centres on a circle of radius rho + R";
        example "ball_diameter=10 mm; surface_radius=40 mm; stepover=0.6 mm" => "10.137986478 um", 1e-9, "identity";
        = {
            let R = D / 2.0;
            let half = s * (rho + R) / (2.0 * rho);
            let q = half * half;
            let outer = max((rho + R) * (rho + R) - q, si(0.0)).sqrt();
            let inner = max(R * R - q, si(0.0)).sqrt();
            max(q / (R + inner) - q / (rho + R + outer), si(0.0))
        }
    }

    concave_scallop_height {
        symbol "h", "h";
        meaning "Height of the scallops that a ball-nosed cutter leaves between two passes over a hollow surface.";
        ball_diameter D: Length, above 0.0, "diameter of the ball";
        surface_radius rho: Length, above ball_diameter / 2.0, "radius of the surface across the passes";
        stepover s: Length, from 0.0, to 2.0 * surface_radius, "straight distance between two points of contact";
        -> Length;
        equation "h = q/(R + sqrt(R^2 - q)) + q/(rho - R + sqrt((rho - R)^2 - q)); R = D/2; q = (s (rho - R)/(2 rho))^2",
            r"h = \frac{q}{R + \sqrt{R^2 - q}} + \frac{q}{\rho - R + \sqrt{(\rho - R)^2 - q}},\quad R = \frac{D}{2},\ q = \left(\frac{s (\rho - R)}{2 \rho}\right)^2";
        valid "round across the passes; nearly s^2/8 (1/R - 1/rho) where both are large against s: lower than on a flat; a ball as large as the hollow leaves none";
        source "derived: two circles about centres on a circle of radius rho - R";
        example "ball_diameter=10 mm; surface_radius=40 mm; stepover=0.6 mm" => "7.87976846918 um", 1e-9, "identity";
        require stepover: (stepover * (surface_radius - ball_diameter / 2.0) <= ball_diameter * surface_radius),
            "stepover (surface_radius - ball_diameter/2) <= ball_diameter surface_radius";
        = {
            let R = D / 2.0;
            let half = s * (rho - R) / (2.0 * rho);
            let q = half * half;
            let outer = max((rho - R) * (rho - R) - q, si(0.0)).sqrt();
            let inner = max(R * R - q, si(0.0)).sqrt();
            q / (R + inner) + q / (rho - R + outer)
        }
    }

    convex_stepover_for_scallop {
        symbol "s", "s";
        meaning "Stepover of a ball-nosed cutter that leaves a wanted scallop height on a convex surface.";
        ball_diameter D: Length, above 0.0, "diameter of the ball";
        surface_radius rho: Length, above 0.0, "radius of the surface across the passes";
        scallop_height h: Length, from 0.0, to ball_diameter / 2.0, "wanted scallop height";
        -> Length;
        equation "s = 4 rho sqrt(w (1 - w)); w = h (D - h)/(2 (2 rho + D) (rho + h))",
            r"s = 4 \rho \sqrt{w (1 - w)},\quad w = \frac{h (D - h)}{2 (2 \rho + D)(\rho + h)}";
        valid "straight distance between two points of contact; the balls of both passes must still meet";
        source "derived: triangle of ball centre, ridge and centre of the surface; inverse of convex_scallop_height";
        example "ball_diameter=10 mm; surface_radius=40 mm; scallop_height=0.005 mm" => "0.421503793018 mm", 1e-9, "identity";
        require scallop_height: ((surface_radius + scallop_height) * (surface_radius + scallop_height) <= surface_radius * (surface_radius + ball_diameter)),
            "(surface_radius + scallop_height)^2 <= surface_radius (surface_radius + ball_diameter)";
        = {
            let w = h * (D - h) / (2.0 * (2.0 * rho + D) * (rho + h));
            4.0 * rho * sqrt(max(w * (number(1.0) - w), number(0.0)))
        }
    }

    concave_stepover_for_scallop {
        symbol "s", "s";
        meaning "Stepover of a ball-nosed cutter that leaves a wanted scallop height on a hollow surface.";
        ball_diameter D: Length, above 0.0, "diameter of the ball";
        surface_radius rho: Length, above ball_diameter / 2.0, "radius of the surface across the passes";
        scallop_height h: Length, from 0.0, to ball_diameter / 2.0, "wanted scallop height";
        -> Length;
        equation "s = 4 rho sqrt(w (1 - w)); w = h (D - h)/(2 (2 rho - D) (rho - h))",
            r"s = 4 \rho \sqrt{w (1 - w)},\quad w = \frac{h (D - h)}{2 (2 \rho - D)(\rho - h)}";
        valid "straight distance between two points of contact; a ball nearly as large as the hollow leaves no scallop of this height at any stepover, which is refused";
        source "derived: triangle of ball centre, ridge and centre of the surface; inverse of concave_scallop_height";
        example "ball_diameter=10 mm; surface_radius=40 mm; scallop_height=0.005 mm" => "0.477999648833 mm", 1e-9, "identity";
        require scallop_height: (scallop_height * (ball_diameter - scallop_height) <= (2.0 * surface_radius - ball_diameter) * (surface_radius - scallop_height)),
            "scallop_height (ball_diameter - scallop_height) <= (2 surface_radius - ball_diameter) (surface_radius - scallop_height)";
        = {
            let w = h * (D - h) / (2.0 * (2.0 * rho - D) * (rho - h));
            4.0 * rho * sqrt(max(w * (number(1.0) - w), number(0.0)))
        }
    }

    stepover_of_plan_step {
        symbol "s", "s";
        meaning "Stepover along a sloping surface of passes that are stepped sideways.";
        plan_step e: Length, from 0.0, "distance of two passes in the plane of the table";
        slope_angle theta: Angle, from 0.0, below PI / 2.0, "slope of the surface across the passes, from the plane of the table";
        -> Length;
        equation "s = e/cos(theta)", r"s = \frac{e}{\cos\theta}";
        valid "plane surface; on a steep wall the ridges grow without bound: step down instead";
        source "derived: right triangle";
        example "plan_step=0.4 mm; slope_angle=60 deg" => "0.8 mm", 1e-12, "identity";
        = e / cos(theta)
    }

    plan_step_for_stepover {
        symbol "e", "e";
        meaning "Sideways step of passes that are a stepover apart along a sloping surface.";
        stepover s: Length, from 0.0, "distance of two passes along the surface";
        slope_angle theta: Angle, from 0.0, to PI / 2.0, "slope of the surface across the passes, from the plane of the table";
        -> Length;
        equation "e = s cos(theta)", r"e = s \cos\theta";
        valid "plane surface; the steepest part of a surface decides for all of it";
        source "derived: inverse of stepover_of_plan_step";
        example "stepover=0.8 mm; slope_angle=60 deg" => "0.4 mm", 1e-12, "identity";
        = s * max(cos(theta), number(0.0))
    }

    stepover_of_level_step {
        symbol "s", "s";
        meaning "Stepover along a sloping surface of passes that are stepped down.";
        level_step a: Length, from 0.0, "distance of two passes along the tool axis";
        slope_angle theta: Angle, above 0.0, to PI / 2.0, "slope of the surface across the passes, from the plane of the table";
        -> Length;
        equation "s = a/sin(theta)", r"s = \frac{a}{\sin\theta}";
        valid "plane surface; on a nearly level one the ridges grow without bound: step sideways instead";
        source "derived: right triangle";
        example "level_step=0.2 mm; slope_angle=30 deg" => "0.4 mm", 1e-12, "identity";
        = a / sin(theta)
    }

    level_step_for_stepover {
        symbol "a", "a";
        meaning "Step down of passes that are a stepover apart along a sloping surface.";
        stepover s: Length, from 0.0, "distance of two passes along the surface";
        slope_angle theta: Angle, from 0.0, to PI / 2.0, "slope of the surface across the passes, from the plane of the table";
        -> Length;
        equation "a = s sin(theta)", r"a = s \sin\theta";
        valid "plane surface; the most level part of a surface decides for all of it";
        source "derived: inverse of stepover_of_level_step";
        example "stepover=0.4 mm; slope_angle=30 deg" => "0.2 mm", 1e-12, "identity";
        = s * sin(theta)
    }

    raster_passes {
        symbol "N", "N";
        meaning "Passes side by side, the first on one edge of an area and the last on the other, no further apart than a stepover.";
        width W: Length, from 0.0, "width of the area across the passes";
        stepover s: Length, above 0.0, "largest distance between two passes";
        -> Count;
        equation "N = ceil(W/s) + 1", r"N = \left\lceil\frac{W}{s}\right\rceil + 1";
        valid "a quotient within 1e-9, relative, above a whole number counts as that number";
        source "derived: gaps between the passes";
        example "width=25 mm; stepover=0.4 mm" => "64", 1e-12, "own arithmetic: 62.5 gaps rounded up, and one";
        = ceil((W / s) * (1.0 - crate::formula::cost::WHOLE)) + number(1.0)
    }

    raster_stepover {
        symbol "s", "s";
        meaning "Stepover of equal passes over an area, the first on one edge and the last on the other.";
        width W: Length, from 0.0, "width of the area across the passes";
        passes N: Count, from 2.0, "number of passes";
        -> Length;
        equation "s = W/(N - 1)", r"s = \frac{W}{N - 1}";
        valid "equal gaps";
        source "derived: gaps between the passes";
        example "width=25 mm; passes=64" => "0.396825397 mm", 1e-8, "identity: 25/63 mm";
        = W / (N - number(1.0))
    }

    pass_count {
        symbol "N", "N";
        meaning "Equal passes that take a depth, length or width, none larger than a largest step.";
        total T: Length, from 0.0, "depth, length or width to be taken";
        largest_step a: Length, above 0.0, "largest that one pass takes";
        -> Count;
        equation "N = max(ceil(T/a), 1)", r"N = \max\left(\left\lceil\frac{T}{a}\right\rceil, 1\right)";
        valid "at least 1; a quotient within 1e-9, relative, above a whole number counts as that number; levels of a bore, axial shifts of a thread mill, plunges along a wall";
        source "definition";
        example "total=12 mm; largest_step=5 mm" => "3", 1e-12, "own arithmetic: 2.4 rounded up";
        = max(ceil((T / a) * (1.0 - crate::formula::cost::WHOLE)), number(1.0))
    }

    equal_pass {
        symbol "a", "a";
        meaning "What each of several equal passes takes.";
        total T: Length, from 0.0, "depth, length or width to be taken";
        passes N: Count, from 1.0, "number of passes";
        -> Length;
        equation "a = T/N", r"a = \frac{T}{N}";
        valid "with the passes of pass_count none takes more than the largest step";
        source "definition";
        example "total=12 mm; passes=3" => "4 mm", 1e-12, "own arithmetic";
        = T / N
    }

    passes_time {
        symbol "t", "t";
        meaning "Time of equal passes with the moves between them.";
        passes N: Count, from 1.0, "number of passes";
        travel L: Length, from 0.0, "travel of one pass at feed, with approach and overtravel";
        feed_speed v_f: Velocity, above 0.0, "feed speed";
        link_time t_l: Time, from 0.0, default 0.0, "time between two passes: step, return, lift";
        -> Time;
        equation "t = N L/v_f + (N - 1) t_l", r"t = N \frac{L}{v_f} + (N - 1)\, t_l";
        valid "constant feed; rasters one way or to and fro, rows of plunges, levels; rows so short that the feed is never reached take longer";
        source "definition";
        example "passes=64; travel=80 mm; feed_speed=1200 mm/min; link_time=0.5 s" => "287.5 s", 1e-12, "own arithmetic: 64 x 4 s + 63 x 0.5 s";
        = N * L / v_f + (N - number(1.0)) * t_l
    }
}
