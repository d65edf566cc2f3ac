//! Wear: tool life after Taylor, and its exponents from tests.

use super::define::formulas;

formulas! {
    topic "wear";

    tool_life {
        symbol "T", "T";
        meaning "Tool life at a cutting speed.";
        cutting_speed v_c: Velocity, above 0.0, "cutting speed";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        -> Time;
        equation "T = 1 min (C/v_c)^(1/n)", r"T = 1\,\mathrm{min} \left(\frac{C}{v_c}\right)^{\frac{1}{n}}";
        valid "v_c T^n = C; one tool, work material, cutting fluid and wear criterion, within the speeds tested";
        source "F.W. Taylor's life equation, from memory";
        example "cutting_speed=100 m/min; taylor_speed=400 m/min; taylor_exponent=0.25" => "256 min", 1e-12, "identity: 4^4 min";
        = {
            let minute: quantity::Time = si(60.0);
            minute * pow(C / v_c, number(1.0) / n)
        }
    }

    speed_for_life {
        symbol "v_c", "v_c";
        meaning "Cutting speed that gives a tool life.";
        tool_life T: Time, above 0.0, "tool life";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        -> Velocity;
        equation "v_c = C (T/1 min)^(-n)", r"v_c = C \left(\frac{T}{1\,\mathrm{min}}\right)^{-n}";
        valid "v_c T^n = C; one tool, work material, cutting fluid and wear criterion, within the speeds tested";
        source "F.W. Taylor's life equation, from memory";
        example "tool_life=16 min; taylor_speed=400 m/min; taylor_exponent=0.25" => "200 m/min", 1e-12, "identity: 400/2";
        = {
            let minute: quantity::Time = si(60.0);
            C * pow(T / minute, -n)
        }
    }

    taylor_exponent_from_two {
        symbol "n", "n";
        meaning "Taylor's exponent from the lives at two cutting speeds.";
        first_speed v_1: Velocity, above 0.0, "cutting speed of the first test";
        first_life T_1: Time, above 0.0, "tool life of the first test";
        second_speed v_2: Velocity, above 0.0, "cutting speed of the second test";
        second_life T_2: Time, above 0.0, "tool life of the second test";
        -> Ratio;
        equation "n = ln(v_1/v_2)/ln(T_2/T_1)", r"n = \frac{\ln(v_1/v_2)}{\ln(T_2/T_1)}";
        valid "exponent of T in v T^n = C; two tests say nothing of the spread: a fit over many is better";
        source "derived from v T^n = C; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 14.7 p.568, seen in a companion";
        example "first_speed=25 m/min; first_life=90 min; second_speed=35 m/min; second_life=20 min" => "0.224", 0.002,
            "P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.7 p.568, seen in a companion";
        require second_life: ((first_speed > second_speed && second_life > first_life) || (first_speed < second_speed && second_life < first_life)),
            "the higher speed has the shorter life: (first_speed - second_speed)*(second_life - first_life) > 0";
        = ln(v_1 / v_2) / ln(T_2 / T_1)
    }

    taylor_speed_from_two {
        symbol "C", "C";
        meaning "Cutting speed for a life of one minute from the lives at two cutting speeds.";
        first_speed v_1: Velocity, above 0.0, "cutting speed of the first test";
        first_life T_1: Time, above 0.0, "tool life of the first test";
        second_speed v_2: Velocity, above 0.0, "cutting speed of the second test";
        second_life T_2: Time, above 0.0, "tool life of the second test";
        -> Velocity;
        equation "C = v_1 (T_1/1 min)^n; n = ln(v_1/v_2)/ln(T_2/T_1)",
            r"C = v_1 \left(\frac{T_1}{1\,\mathrm{min}}\right)^n,\quad n = \frac{\ln(v_1/v_2)}{\ln(T_2/T_1)}";
        valid "v T^n = C; two tests say nothing of the spread: a fit over many is better";
        source "derived from v T^n = C; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 14.7 p.568, seen in a companion";
        example "first_speed=25 m/min; first_life=90 min; second_speed=35 m/min; second_life=20 min" => "68.4 m/min", 0.002,
            "P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.7 p.568, seen in a companion";
        require second_life: ((first_speed > second_speed && second_life > first_life) || (first_speed < second_speed && second_life < first_life)),
            "the higher speed has the shorter life: (first_speed - second_speed)*(second_life - first_life) > 0";
        = {
            let minute: quantity::Time = si(60.0);
            v_1 * pow(T_1 / minute, super::taylor_exponent_from_two::value(v_1, T_1, v_2, T_2))
        }
    }

    feed_exponent_from_two {
        symbol "a", "a";
        meaning "Exponent of the feed in the extended Taylor equation from the lives at two feeds and one cutting speed.";
        first_feed f_1: Length, above 0.0, "feed of the first test";
        first_life T_1: Time, above 0.0, "tool life of the first test";
        second_feed f_2: Length, above 0.0, "feed of the second test";
        second_life T_2: Time, above 0.0, "tool life of the second test";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        -> Ratio;
        equation "a = n ln(T_1/T_2)/ln(f_2/f_1)", r"a = n \frac{\ln(T_1/T_2)}{\ln(f_2/f_1)}";
        valid "exponent of f in v T^n f^a = C; both tests at one cutting speed and depth; the form T = K v^(-1/n) f^(-p) has p = a/n";
        source "derived from v T^n f^a = C: T_1^n f_1^a = T_2^n f_2^a";
        example "first_feed=0.2 mm; first_life=64 min; second_feed=0.4 mm; second_life=16 min; taylor_exponent=0.25" => "0.5", 1e-12,
            "own arithmetic: 0.25 ln 4/ln 2";
        require second_life: ((first_feed > second_feed && second_life > first_life) || (first_feed < second_feed && second_life < first_life)),
            "the larger feed has the shorter life: (first_feed - second_feed)*(second_life - first_life) > 0";
        = n * ln(T_1 / T_2) / ln(f_2 / f_1)
    }

    scaled_tool_life {
        symbol "T", "T";
        meaning "Tool life relative to a reference cut at another speed, feed and depth.";
        reference_life T_ref: Time, above 0.0, "tool life of the reference cut";
        speed_ratio r_v: Ratio, above 0.0, "cutting speed over that of the reference cut";
        feed_ratio r_f: Ratio, above 0.0, "feed over that of the reference cut";
        depth_ratio r_d: Ratio, above 0.0, "depth of cut over that of the reference cut";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        feed_exponent a: Ratio, "exponent of the feed";
        depth_exponent b: Ratio, "exponent of the depth";
        -> Time;
        equation "T = T_ref (r_v r_f^a r_d^b)^(-1/n)", r"T = T_\mathrm{ref} \left(r_v\, r_f^a\, r_d^b\right)^{-\frac{1}{n}}";
        valid "v T^n f^a d^b = C, exponents of this form: the form T = K v^(-1/n) f^(-p) has a = n p; within the range tested";
        source "extended Taylor equation, from memory; example: P.C. Sharma, A Textbook of Production Engineering, Ex. 14.4 p.566, seen in a companion";
        example "reference_life=60 min; speed_ratio=1.2; feed_ratio=1.2; depth_ratio=1.2; taylor_exponent=0.13; feed_exponent=0.77; depth_exponent=0.37"
            => "2.98 min", 0.003, "P.C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.4 p.566, seen in a companion";
        = T_ref * pow(r_v * pow(r_f, a) * pow(r_d, b), number(-1.0) / n)
    }
}
