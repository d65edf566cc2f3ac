//! Lathe chucks: the grip a cut needs, and what speed leaves of it.

use super::define::formulas;

formulas! {
    topic "chuck";

    required_chuck_grip {
        symbol "F_g", "F_g";
        meaning "Sum of the jaw forces that keeps the work from slipping in a lathe chuck.";
        cutting_force F_c: Force, from 0.0, "peak cutting force, which turns the work in the jaws";
        feed_force F_f: Force, from 0.0, default 0.0, "peak feed force, which pushes the work along the jaws; 0 against a stop";
        cutting_diameter D: Length, above 0.0, "largest diameter that is cut";
        grip_diameter D_g: Length, above 0.0, "diameter that the jaws grip";
        friction mu: Ratio, above 0.0, "coefficient of friction between jaw and work";
        safety_factor S: Ratio, from 1.0, "safety factor on the peak forces";
        -> Force;
        equation "F_g = S sqrt((F_c D/D_g)^2 + F_f^2)/mu", r"F_g = \frac{S \sqrt{\left(F_c \frac{D}{D_g}\right)^2 + F_f^2}}{\mu}";
        valid "short work: no tipping out of the jaws by overhang; the grip at the speed of the cut, not at rest";
        source "Coulomb friction, derived; a safety factor of at least 1.5 is asked for lathe chucks by VDI 3106, seen in a chuck manual";
        example "cutting_force=3000 N; feed_force=2000 N; cutting_diameter=50 mm; grip_diameter=100 mm; friction=0.25; safety_factor=2" => "20000 N", 1e-12,
            "identity: 2 x 2500/0.25 N, by a 3-4-5 triangle";
        = {
            let turning = F_c * (D / D_g);
            S * (turning * turning + F_f * F_f).sqrt() / mu
        }
    }

    jaw_grip_at_speed {
        symbol "F_n", "F_n";
        meaning "Grip of a lathe chuck's jaws from outside, at a spindle speed.";
        static_grip F_0: Force, from 0.0, "sum of the jaw forces at rest";
        spindle_speed n: RotationalSpeed, from 0.0, to maximum_speed, "spindle speed";
        maximum_speed n_max: RotationalSpeed, above 0.0, "largest speed marked on the chuck";
        loss_at_maximum c: Ratio, from 0.0, to 1.0, default 2.0 / 3.0, "share of the grip at rest that is lost at the largest speed";
        -> Force;
        equation "F_n = F_0 (1 - c (n/n_max)^2)", r"F_n = F_0 \left(1 - c \left(\frac{n}{n_\mathrm{max}}\right)^2\right)";
        valid "jaws of the chuck's own weight and place, gripped with the largest actuating force; heavier or farther jaws and a weaker grip lose more; gripping from inside, speed adds grip";
        source "centrifugal force of the jaws, derived; the loss at the largest speed: DIN EN 1550 allows 67 % of the grip at rest, seen in a chuck manual";
        example "static_grip=36 kN; spindle_speed=2000 rpm; maximum_speed=4000 rpm" => "30 kN", 1e-9,
            "own arithmetic: a sixth is lost at half the speed";
        = {
            let share = n / n_max;
            F_0 * max(number(1.0) - c * share * share, number(0.0))
        }
    }

    static_grip_for_speed {
        symbol "F_0", "F_0";
        meaning "Grip at rest of a lathe chuck whose jaws still hold with a wanted grip at a spindle speed.";
        required_grip F_g: Force, from 0.0, "sum of the jaw forces that the cut needs";
        spindle_speed n: RotationalSpeed, from 0.0, to maximum_speed, "spindle speed";
        maximum_speed n_max: RotationalSpeed, above 0.0, "largest speed marked on the chuck";
        loss_at_maximum c: Ratio, from 0.0, below 1.0, default 2.0 / 3.0, "share of the grip at rest that is lost at the largest speed";
        -> Force;
        equation "F_0 = F_g/(1 - c (n/n_max)^2)", r"F_0 = \frac{F_g}{1 - c \left(\frac{n}{n_\mathrm{max}}\right)^2}";
        valid "as jaw_grip_at_speed";
        source "derived: inverse of jaw_grip_at_speed";
        example "required_grip=30 kN; spindle_speed=2000 rpm; maximum_speed=4000 rpm" => "36 kN", 1e-9,
            "own arithmetic: a sixth is lost at half the speed";
        = {
            let share = n / n_max;
            F_g / (number(1.0) - c * share * share)
        }
    }

    chuck_speed_for_grip {
        symbol "n", "n";
        meaning "Largest spindle speed at which a lathe chuck's jaws keep a grip from outside.";
        static_grip F_0: Force, above 0.0, "sum of the jaw forces at rest";
        required_grip F_g: Force, from 0.0, to static_grip, "sum of the jaw forces that the cut needs";
        maximum_speed n_max: RotationalSpeed, above 0.0, "largest speed marked on the chuck";
        loss_at_maximum c: Ratio, above 0.0, to 1.0, default 2.0 / 3.0, "share of the grip at rest that is lost at the largest speed";
        -> RotationalSpeed;
        equation "n = n_max sqrt(min((1 - F_g/F_0)/c, 1))", r"n = n_\mathrm{max} \sqrt{\min\left(\frac{1 - \frac{F_g}{F_0}}{c}, 1\right)}";
        valid "as jaw_grip_at_speed; never above the speed marked on the chuck";
        source "derived: inverse of jaw_grip_at_speed";
        example "static_grip=36 kN; required_grip=30 kN; maximum_speed=4000 rpm" => "2000 rpm", 1e-9,
            "own arithmetic: half the speed costs a sixth of the grip";
        = n_max * sqrt(min(max(number(1.0) - F_g / F_0, number(0.0)) / c, number(1.0)))
    }
}
