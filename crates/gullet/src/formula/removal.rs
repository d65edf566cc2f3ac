//! Removal rate: volume of metal cut away per time.

use super::define::formulas;

formulas! {
    topic "removal";

    milling_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of a milling cut.";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis, in face and side milling alike";
        radial_depth a_e: Length, from 0.0, "working engagement, across the axis";
        table_feed v_f: Velocity, from 0.0, "table feed";
        -> VolumeRate;
        equation "Q = a_p a_e v_f", r"Q = a_p\, a_e\, v_f";
        valid "full engagement, constant section; the mean over a pass with approach and overtravel is lower";
        source "derived: section times feed";
        example "axial_depth=3 mm; radial_depth=60 mm; table_feed=600 mm/min" => "108000 mm3/min", 1e-9,
            "Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex. 24.2 p.667 (open textbook-companion file), seen";
        = a_p * a_e * v_f
    }

    axial_depth_for_removal_rate {
        symbol "a_p", "a_p";
        meaning "Axial depth of the plain cut that removes as much as another at the same radial depth and feed.";
        removal_rate Q: VolumeRate, from 0.0, "removal rate";
        radial_depth a_e: Length, above 0.0, "working engagement, across the axis";
        table_feed v_f: Velocity, above 0.0, "feed of the cutter's axis";
        -> Length;
        equation "a_p = Q/(a_e v_f)", r"a_p = \frac{Q}{a_e v_f}";
        valid "profiles that take more at their crest than at their foot, such as threads: the mean width of the section";
        source "derived: inverse of milling_removal_rate";
        example "removal_rate=108000 mm3/min; radial_depth=60 mm; table_feed=600 mm/min" => "3 mm", 1e-12,
            "own arithmetic on the inputs of Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex. 24.2 p.667";
        = Q / (a_e * v_f)
    }

    turning_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of a turning cut.";
        cutting_speed v_c: Velocity, from 0.0, "cutting speed at the mean diameter of the cut";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        depth_of_cut a_p: Length, from 0.0, "depth of cut, on the radius";
        -> VolumeRate;
        equation "Q = v_c f a_p", r"Q = v_c\, f\, a_p";
        valid "exact with the speed at the mean diameter D - a_p; the speed at the outer diameter D reads a_p/(D - a_p) high";
        source "derived: section times speed, by Pappus's rule at the mean diameter";
        example "cutting_speed=145 m/min; feed_per_rev=0.38 mm; depth_of_cut=2 mm" => "110.2 cm3/min", 1e-9,
            "own arithmetic on the inputs of Rao P.N., Manufacturing Technology vol. 2, 2nd ed., p.134";
        = v_c * f * a_p
    }

    drilling_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of a drill in solid metal.";
        diameter D: Length, from 0.0, "drill diameter";
        feed_per_rev f: Length, from 0.0, "feed per revolution";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        -> VolumeRate;
        equation "Q = (pi D^2/4) f n", r"Q = \frac{\pi D^2}{4} f\, n";
        valid "solid drilling at full diameter; n in revolutions per second";
        source "derived: section times feed rate";
        example "diameter=10 mm; feed_per_rev=0.2 mm; spindle_speed=800 rpm" => "210 mm3/s", 4e-3,
            "Kalpakjian & Schmid, Manufacturing Engineering & Technology, 4th ed., Ex. 22.2 p.632, seen";
        = PI * D * D / 4.0 * f * n
    }

    plunge_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of plunge milling.";
        radial_depth a_e: Length, from 0.0, "working engagement, across the axis";
        side_step s: Length, from 0.0, "step between two plunges, along the wall";
        table_feed v_f: Velocity, from 0.0, "feed along the axis";
        -> VolumeRate;
        equation "Q = a_e s v_f", r"Q = a_e\, s\, v_f";
        valid "every plunge after the first, step below the cutter's chord at a_e";
        source "derived: section times feed";
        example "radial_depth=6 mm; side_step=8 mm; table_feed=320 mm/min" => "15360 mm3/min", 1e-9,
            "identity; feed of 0.08 mm x 2 teeth x 2000 rpm";
        = a_e * s * v_f
    }

    first_plunge_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of the first plunge of plunge milling, alone in the stock.";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, from 0.0, to diameter, "working engagement, across the axis";
        table_feed v_f: Velocity, from 0.0, "feed along the axis";
        -> VolumeRate;
        equation "Q = (D^2/4) (phi_s - sin(phi_s) cos(phi_s)) v_f; phi_s = acos(1 - 2 a_e/D)",
            r"Q = \frac{D^2}{4} \left(\varphi_s - \sin\varphi_s \cos\varphi_s\right) v_f,\quad \varphi_s = \arccos\left(1 - \frac{2 a_e}{D}\right)";
        valid "stock wider than the cutter's chord; phi_s in radians; the plunges after it take plunge_removal_rate";
        source "derived: segment of a circle times feed";
        example "diameter=20 mm; radial_depth=10 mm; table_feed=100 mm/min" => "15707.9632679 mm3/min", 1e-11,
            "identity: half a circle, 50 pi mm2 x 100 mm/min";
        = {
            let phi_s = side_arc(D, a_e);
            D * D / 4.0 * (radians(phi_s) - sin(phi_s) * cos(phi_s)) * v_f
        }
    }

    bore_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of a helix that sinks or widens a bore.";
        finished_diameter D_m: Length, above 0.0, "diameter after the pass";
        start_diameter D_w: Length, from 0.0, to finished_diameter, "diameter before the pass, 0 for solid work";
        axial_feed v_a: Velocity, from 0.0, "feed along the axis";
        -> VolumeRate;
        equation "Q = (pi/4) (D_m - D_w) (D_m + D_w) v_a", r"Q = \frac{\pi}{4} \left(D_m^2 - D_w^2\right) v_a";
        valid "mean over the turns between the first and the last";
        source "derived: ring times feed along the axis";
        example "finished_diameter=40 mm; start_diameter=36 mm; axial_feed=10 mm/min" => "2387.61041673 mm3/min", 1e-9, "identity: 76 pi mm2 x 10 mm/min";
        = PI / 4.0 * max(D_m - D_w, si(0.0)) * (D_m + D_w) * v_a
    }
}
