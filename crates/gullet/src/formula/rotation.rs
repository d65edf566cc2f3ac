//! Spindle speed, cutting speed, feed: how turning and feeding belong together.

use super::define::formulas;

formulas! {
    topic "rotation";

    spindle_speed {
        symbol "n", "n";
        meaning "Spindle speed that gives a cutting speed at a diameter.";
        cutting_speed v_c: Velocity, from 0.0, "cutting speed";
        diameter D: Length, above 0.0, "diameter that cuts: the effective diameter of a ball or bull nose";
        -> RotationalSpeed;
        equation "n = v_c/(pi D)", r"n = \frac{v_c}{\pi D}";
        valid "any process with a rotating tool or workpiece; n in revolutions per second";
        source "definition; symbols of ISO 3002-1 and -3, from memory";
        example "cutting_speed=300 ft/min; diameter=0.375 in" => "3056 rpm", 5e-4,
            "Bingham, Milling Procedures (teaching web page), seen";
        = v_c / (PI * D)
    }

    geometric_step_ratio {
        symbol "q", "q";
        meaning "Ratio of neighbouring speeds in a geometric series of spindle speeds.";
        lowest n_min: RotationalSpeed, above 0.0, to highest, "lowest speed";
        highest n_max: RotationalSpeed, above 0.0, "highest speed";
        steps k: Count, from 2.0, "number of speeds";
        -> Ratio;
        equation "q = (n_max/n_min)^(1/(k - 1))", r"q = \left(\frac{n_{max}}{n_{min}}\right)^{\frac{1}{k - 1}}";
        valid "series designed after ISO 3 preferred numbers and the like";
        source "definition of a geometric series; P.C. Sharma, A Textbook of Production Engineering, Ex. 22.2 p.778, seen in a companion";
        example "lowest=72 rpm; highest=720 rpm; steps=11" => "1.2589", 1e-4,
            "public solution: 11 spindle speeds from 72 to 720 rpm in geometric progression, seen";
        = pow(n_max / n_min, number(1.0) / (k - number(1.0)))
    }
}
