//! Band sawing: teeth, blade speed, feed, sections and rates.

use super::define::formulas;

formulas! {
    topic "sawing";

    saw_tooth_pitch {
        symbol "p", "p";
        meaning "Tooth pitch of a saw blade whose teeth per inch are given.";
        teeth_per_inch z_i: Ratio, above 0.0, "teeth per inch; of a variable blade such as 3/4 the mean, 3.5";
        -> Length;
        equation "p = 25.4 mm/z_i", r"p = \frac{25.4\,\mathrm{mm}}{z_i}";
        valid "even pitch, or the mean of a variable one";
        source "definition of the inch";
        example "teeth_per_inch=10" => "0.1 in", 1e-12, "identity";
        = {
            let inch: quantity::Length = si(0.0254);
            inch / z_i
        }
    }

    teeth_in_work {
        symbol "z_w", "z_w";
        meaning "Teeth of a saw blade that are in the work at one time.";
        width w: Length, from 0.0, "width of the work along the blade; of a tube the longest single crossing of the wall";
        tooth_pitch p: Length, above 0.0, "tooth pitch";
        -> Ratio;
        equation "z_w = w/p", r"z_w = \frac{w}{p}";
        valid "3 to 24 teeth (common practice, no source): fewer strip, more clog their gullets and rub";
        source "definition";
        example "width=2 in; tooth_pitch=0.25 in" => "8", 1e-12, "identity";
        = w / p
    }

    saw_pitch_for_teeth {
        symbol "p", "p";
        meaning "Tooth pitch that keeps a number of teeth in the work.";
        width w: Length, from 0.0, "width of the work along the blade";
        teeth_in_work z_w: Ratio, above 0.0, "teeth in the work: the fewest for the coarsest pitch, the most for the finest";
        -> Length;
        equation "p = w/z_w", r"p = \frac{w}{z_w}";
        valid "width of the work where it is narrowest for the coarsest pitch, widest for the finest";
        source "derived: inverse of teeth_in_work";
        example "width=0.25 in; teeth_in_work=3" => "2.11666666667 mm", 1e-9, "identity: 12 teeth an inch";
        = w / z_w
    }

    saw_stock_factor {
        symbol "k_w", "k_w";
        meaning "Factor on the blade speed of a bimetal blade for the width of the stock.";
        width w: Length, above 0.0, "width of the stock along the blade";
        -> Ratio;
        equation "k_w = 1.15 - 0.03 s_1 - 0.02 s_2 - 0.05 s_3 - 0.05 s_4 - 0.12 s_5; s_1 = min(max((w - 6.35 mm)/12.7 mm, 0), 1); s_2 = min(max((w - 19.05 mm)/12.7 mm, 0), 1); s_3 = min(max((w - 31.75 mm)/31.75 mm, 0), 1); s_4 = min(max((w - 63.5 mm)/38.1 mm, 0), 1); s_5 = min(max((w - 101.6 mm)/101.6 mm, 0), 1)",
            r"k_w = 1.15 - 0.03 s_1 - 0.02 s_2 - 0.05 s_3 - 0.05 s_4 - 0.12 s_5,\quad s_i = \min\left(\max\left(\frac{w - w_{i-1}}{w_i - w_{i-1}}, 0\right), 1\right),\quad w_i = 6.35,\ 19.05,\ 31.75,\ 63.5,\ 101.6,\ 203.2\ \mathrm{mm}";
        valid "against the speed for 4 in stock cut with fluid; straight lines between the printed sizes 1/4, 3/4, 1 1/4, 2 1/2, 4 and 8 in, constant beyond them; each size with its usual tooth pitch";
        source "E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen; 2 1/2 in: manual of a band-saw machine, seen";
        example "width=8 in" => "88 %", 1e-9, "E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen: 12 % less";
        = {
            let part = |from: f64, to: f64| {
                let start: quantity::Length = si(from);
                let span: quantity::Length = si(to - from);
                min(max((w - start) / span, number(0.0)), number(1.0))
            };
            number(1.15)
                - 0.03 * part(0.00635, 0.01905)
                - 0.02 * part(0.01905, 0.03175)
                - 0.05 * part(0.03175, 0.0635)
                - 0.05 * part(0.0635, 0.1016)
                - 0.12 * part(0.1016, 0.2032)
        }
    }

    saw_blade_speed {
        symbol "v_c", "v_c";
        meaning "Blade speed of a band saw from the speed of a table.";
        table_speed v_t: Velocity, above 0.0, "blade speed of the table, for 4 in stock cut with fluid by a bimetal blade";
        stock_factor k_w: Ratio, above 0.0, default 1.0, "factor for the width of the stock";
        dry_factor k_d: Ratio, above 0.0, to 1.0, default 1.0, "1 with fluid, 0.5 to 0.7 dry";
        blade_factor k_b: Ratio, above 0.0, default 1.0, "1 for a bimetal blade, 0.5 for a carbon steel one";
        -> Velocity;
        equation "v_c = k_w k_d k_b v_t", r"v_c = k_w\, k_d\, k_b\, v_t";
        valid "the factors multiply as if they knew nothing of each other";
        source "factors: E. Oberg et al., Machinery's Handbook, 31st ed., p.1245, seen";
        example "table_speed=300 ft/min; stock_factor=0.88; blade_factor=0.5" => "132 ft/min", 1e-12, "own arithmetic: 300 x 0.88 x 0.5";
        = k_w * k_d * k_b * v_t
    }

    saw_feed_speed {
        symbol "v_f", "v_f";
        meaning "Speed at which a saw blade sinks into the work at a feed per tooth.";
        blade_speed v_c: Velocity, from 0.0, "blade speed";
        feed_per_tooth f_z: Length, from 0.0, "advance per tooth";
        tooth_pitch p: Length, above 0.0, "tooth pitch";
        -> Velocity;
        equation "v_f = v_c f_z/p", r"v_f = \frac{v_c f_z}{p}";
        valid "every tooth cuts";
        source "derived: teeth passing per time";
        example "blade_speed=60 m/min; feed_per_tooth=0.002 mm; tooth_pitch=6 mm" => "20 mm/min", 1e-12, "identity: 10 000 teeth a minute";
        = v_c * f_z / p
    }

    saw_teeth_per_turn {
        symbol "z_r", "z_r";
        meaning "Teeth of a saw blade that pass while its driving wheel turns once.";
        wheel_diameter D_w: Length, above 0.0, "diameter of the wheel that drives the blade";
        tooth_pitch p: Length, above 0.0, "tooth pitch";
        -> Ratio;
        equation "z_r = pi D_w/p", r"z_r = \frac{\pi D_w}{p}";
        valid "the blade does not slip; its thickness beside the wheel is left out";
        source "definition";
        example "wheel_diameter=350 mm; tooth_pitch=7 mm" => "157.079632679", 1e-11, "identity: 50 pi";
        = PI * D_w / p
    }

    saw_feed_per_tooth {
        symbol "f_z", "f_z";
        meaning "Advance per tooth of a saw blade that a feed speed amounts to.";
        feed_speed v_f: Velocity, from 0.0, "speed at which the blade sinks into the work";
        blade_speed v_c: Velocity, above 0.0, "blade speed";
        tooth_pitch p: Length, above 0.0, "tooth pitch";
        -> Length;
        equation "f_z = v_f p/v_c", r"f_z = \frac{v_f p}{v_c}";
        valid "every tooth cuts";
        source "derived: inverse of saw_feed_speed";
        example "feed_speed=20 mm/min; blade_speed=60 m/min; tooth_pitch=6 mm" => "0.002 mm", 1e-12, "identity: 10 000 teeth a minute";
        = v_f * p / v_c
    }

    sawing_area_rate {
        symbol "q", "q";
        meaning "Area that a saw cuts per time.";
        feed_speed v_f: Velocity, from 0.0, "speed at which the blade sinks into the work";
        width w: Length, from 0.0, "width of the work along the blade";
        -> AreaRate;
        equation "q = v_f w", r"q = v_f w";
        valid "width at this moment, or the mean one over the cut";
        source "definition";
        example "feed_speed=0.5 in/min; width=4 in" => "2 in2/min", 1e-12, "identity";
        = v_f * w
    }

    saw_feed_speed_for_area_rate {
        symbol "v_f", "v_f";
        meaning "Speed at which a saw blade sinks into the work at an area per time.";
        area_rate q: AreaRate, from 0.0, "area sawn per time";
        width w: Length, above 0.0, "width of the work along the blade, or the mean one over the cut";
        -> Velocity;
        equation "v_f = q/w", r"v_f = \frac{q}{w}";
        valid "constant area per time: slower where the work is wide";
        source "derived: inverse of sawing_area_rate";
        example "area_rate=2 in2/min; width=4 in" => "0.5 in/min", 1e-12, "identity";
        = q / w
    }

    sawing_removal_rate {
        symbol "Q", "Q";
        meaning "Removal rate of a saw.";
        area_rate q: AreaRate, from 0.0, "area sawn per time";
        kerf b: Length, from 0.0, "width of the cut that the set teeth make";
        -> VolumeRate;
        equation "Q = q b", r"Q = q b";
        valid "kerf wider than the blade by the set on both sides";
        source "definition";
        example "area_rate=20 cm2/min; kerf=1.6 mm" => "3.2 cm3/min", 1e-12, "identity";
        = q * b
    }

    round_section_area {
        symbol "A", "A";
        meaning "Area of a round section, solid or a tube.";
        outer_diameter D: Length, above 0.0, "outer diameter";
        inner_diameter d: Length, from 0.0, to outer_diameter, default 0.0, "inner diameter, 0 for a solid bar";
        -> Area;
        equation "A = pi (D^2 - d^2)/4", r"A = \frac{\pi (D^2 - d^2)}{4}";
        valid "cut square to the axis";
        source "geometry";
        example "outer_diameter=4 in; inner_diameter=3 in" => "5.5 in2", 0.01, "manual of a band-saw machine: 12.5 less 7.0 in2, seen";
        = PI * max(D - d, si(0.0)) * (D + d) / 4.0
    }

    rectangular_section_area {
        symbol "A", "A";
        meaning "Area of a rectangular section.";
        width w: Length, above 0.0, "width of the work along the blade";
        height H: Length, above 0.0, "way of the blade through the section";
        -> Area;
        equation "A = w H", r"A = w H";
        valid "solid flats and squares, cut square to the axis";
        source "geometry";
        example "width=4 in; height=1.5 in" => "6 in2", 1e-12, "identity";
        = w * H
    }

    mean_sawn_width {
        symbol "w_m", "w_m";
        meaning "Mean width of cut of a section that a blade sinks through.";
        area A: Area, from 0.0, "area of the section";
        height H: Length, above 0.0, "way of the blade through the section";
        -> Length;
        equation "w_m = A/H", r"w_m = \frac{A}{H}";
        valid "for the choice of the tooth pitch and the feed of tubes and profiles; of a tube it adds both walls, each of which is shorter";
        source "definition; manual of a band-saw machine, seen";
        example "area=5.5 in2; height=4 in" => "1.38 in", 0.004, "manual of a band-saw machine: tube of 4 in outer and 3 in inner diameter, seen";
        = A / H
    }

    tube_crossing_length {
        symbol "c", "c";
        meaning "Length of wall of a round tube that a saw blade crosses at a height.";
        outer_diameter D: Length, above 0.0, "outer diameter";
        inner_diameter d: Length, from 0.0, to outer_diameter, "inner diameter";
        offset y: Length, "distance of the blade from the axis, either way";
        -> Length;
        equation "c = sqrt(max(D^2 - 4 y^2, 0 mm^2)) - sqrt(max(d^2 - 4 y^2, 0 mm^2))",
            r"c = \sqrt{\max(D^2 - 4 y^2, 0)} - \sqrt{\max(d^2 - 4 y^2, 0)}";
        valid "both walls together where the blade runs through the bore: half of it is in one wall; no length beyond the tube";
        source "chords, derived";
        example "outer_diameter=100 mm; inner_diameter=60 mm; offset=30 mm" => "80 mm", 1e-12, "identity: 3-4-5 triangle, tangent to the bore";
        = {
            let chord = |diameter: quantity::Length| {
                let (far, near) = (diameter + 2.0 * y, diameter - 2.0 * y);
                (max(far, si(0.0)) * max(near, si(0.0))).sqrt()
            };
            max(chord(D) - chord(d), si(0.0))
        }
    }

    tube_longest_crossing {
        symbol "c_max", r"c_\mathrm{max}";
        meaning "Longest single crossing of the wall of a round tube, where the blade touches the bore.";
        outer_diameter D: Length, above 0.0, "outer diameter";
        inner_diameter d: Length, from 0.0, to outer_diameter, "inner diameter";
        -> Length;
        equation "c_max = sqrt(D^2 - d^2)", r"c_\mathrm{max} = \sqrt{D^2 - d^2}";
        valid "the finest useful pitch follows this, the coarsest the wall itself";
        source "chord tangent to a circle, derived";
        example "outer_diameter=100 mm; inner_diameter=60 mm" => "80 mm", 1e-12, "identity: 3-4-5 triangle";
        = (max(D - d, si(0.0)) * (D + d)).sqrt()
    }
}
