//! Wear: tool life after Taylor, plain and extended, its constants from tests, and criteria of wear.

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

    extended_tool_life {
        symbol "T", "T";
        meaning "Tool life at a cutting speed, feed and depth of cut (extended Taylor equation).";
        cutting_speed v_c: Velocity, above 0.0, "cutting speed";
        feed_per_rev f: Length, above 0.0, "feed";
        depth_of_cut a_p: Length, above 0.0, "depth of cut";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute at the reference feed and depth";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        feed_exponent a: Ratio, "exponent of the feed";
        depth_exponent b: Ratio, "exponent of the depth";
        reference_feed f_0: Length, above 0.0, "feed that C is for";
        reference_depth a_0: Length, above 0.0, "depth of cut that C is for";
        -> Time;
        equation "T = 1 min (C/(v_c (f/f_0)^a (a_p/a_0)^b))^(1/n)",
            r"T = 1\,\mathrm{min} \left(\frac{C}{v_c (f/f_0)^a (a_p/a_0)^b}\right)^{\frac{1}{n}}";
        valid "v_c T^n (f/f_0)^a (a_p/a_0)^b = C: exponents of this form, C for a life of one minute at the reference feed and depth; f_0 = a_0 = 1 mm where f and a_p stand in mm in the source's equation, 1 in where in inches; within the range tested";
        source "extended Taylor equation, from memory";
        example "cutting_speed=100 m/min; feed_per_rev=0.4 mm; depth_of_cut=2 mm; taylor_speed=400 m/min; taylor_exponent=0.25; feed_exponent=0.5; depth_exponent=0.25; reference_feed=0.1 mm; reference_depth=2 mm"
            => "16 min", 1e-12, "identity: (4/4^0.5)^4 min";
        = {
            let minute: quantity::Time = si(60.0);
            minute * pow(C / (v_c * pow(f / f_0, a) * pow(a_p / a_0, b)), number(1.0) / n)
        }
    }

    extended_speed_for_life {
        symbol "v_c", "v_c";
        meaning "Cutting speed that gives a tool life at a feed and depth of cut (extended Taylor equation).";
        tool_life T: Time, above 0.0, "tool life";
        feed_per_rev f: Length, above 0.0, "feed";
        depth_of_cut a_p: Length, above 0.0, "depth of cut";
        taylor_speed C: Velocity, above 0.0, "cutting speed for a life of one minute at the reference feed and depth";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        feed_exponent a: Ratio, "exponent of the feed";
        depth_exponent b: Ratio, "exponent of the depth";
        reference_feed f_0: Length, above 0.0, "feed that C is for";
        reference_depth a_0: Length, above 0.0, "depth of cut that C is for";
        -> Velocity;
        equation "v_c = C (T/1 min)^(-n) (f/f_0)^(-a) (a_p/a_0)^(-b)",
            r"v_c = C \left(\frac{T}{1\,\mathrm{min}}\right)^{-n} \left(\frac{f}{f_0}\right)^{-a} \left(\frac{a_p}{a_0}\right)^{-b}";
        valid "v_c T^n (f/f_0)^a (a_p/a_0)^b = C: exponents of this form, C for a life of one minute at the reference feed and depth; f_0 = a_0 = 1 mm where f and a_p stand in mm in the source's equation, 1 in where in inches; within the range tested";
        source "extended Taylor equation, from memory";
        example "tool_life=16 min; feed_per_rev=0.4 mm; depth_of_cut=2 mm; taylor_speed=400 m/min; taylor_exponent=0.25; feed_exponent=0.5; depth_exponent=0.25; reference_feed=0.1 mm; reference_depth=2 mm"
            => "100 m/min", 1e-12, "identity: 400/2/2";
        = {
            let minute: quantity::Time = si(60.0);
            C * pow(T / minute, -n) * pow(f / f_0, -a) * pow(a_p / a_0, -b)
        }
    }

    tool_life_by_powers {
        symbol "T", "T";
        meaning "Tool life relative to a reference cut, by the powers of the equation that is solved for the life.";
        reference_life T_ref: Time, above 0.0, "tool life of the reference cut: K of the equation where speed, feed and depth of it are 1";
        speed_ratio r_v: Ratio, above 0.0, "cutting speed over that of the reference cut";
        feed_ratio r_f: Ratio, above 0.0, "feed over that of the reference cut";
        depth_ratio r_d: Ratio, above 0.0, "depth of cut over that of the reference cut";
        speed_power p: Ratio, above 1.0, "power of the cutting speed, 1/n";
        feed_power q: Ratio, "power of the feed, 1/n_1";
        depth_power r: Ratio, "power of the depth, 1/n_2";
        -> Time;
        equation "T = T_ref r_v^(-p) r_f^(-q) r_d^(-r)", r"T = T_\mathrm{ref}\, r_v^{-p}\, r_f^{-q}\, r_d^{-r}";
        valid "T = K v^(-1/n) f^(-1/n_1) d^(-1/n_2), also written v^p f^q d^r T = K: not the exponents of v T^n f^a d^b = C, which are a = q/p and b = r/p; within the range tested";
        source "extended Taylor equation solved for the life, from memory";
        example "reference_life=64 min; speed_ratio=2; feed_ratio=2; depth_ratio=2; speed_power=4; feed_power=1; depth_power=0.5"
            => "1.41421356237 min", 1e-11, "identity: 64/2^5.5 min";
        = T_ref * pow(r_v, -p) * pow(r_f, -q) * pow(r_d, -r)
    }

    taylor_exponent_from_power {
        symbol "n", "n";
        meaning "Taylor's exponent of the life from the power of the speed.";
        speed_power p: Ratio, above 1.0, "power of the cutting speed in v^p T = K or T = K v^(-p)";
        -> Ratio;
        equation "n = 1/p", r"n = \frac{1}{p}";
        valid "v^p T = K and v T^n = C are one law; a source's n of 2 to 12 is such a power";
        source "derived: the root of v^p T = K";
        example "speed_power=4" => "0.25", 1e-15, "identity";
        = number(1.0) / p
    }

    exponent_from_power {
        symbol "a", "a";
        meaning "Exponent of feed or depth in v T^n f^a d^b = C from its power in the equation solved for the life.";
        power q: Ratio, "power of the feed or depth in T = K v^(-1/n) f^(-q) d^(-r)";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        -> Ratio;
        equation "a = n q", r"a = n\, q";
        valid "both forms are one law: q = 1/n_1, so a = n/n_1";
        source "derived: T = K v^(-1/n) f^(-q) raised to the power n";
        example "power=2; taylor_exponent=0.25" => "0.5", 1e-15, "identity";
        = n * q
    }

    taylor_speed_from_one {
        symbol "C", "C";
        meaning "Cutting speed for a life of one minute from the life at one cutting speed and the exponent.";
        cutting_speed v_c: Velocity, above 0.0, "cutting speed";
        tool_life T: Time, above 0.0, "tool life at that speed; the unit life where C of a source is for seconds or for 60 minutes";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        -> Velocity;
        equation "C = v_c (T/1 min)^n", r"C = v_c \left(\frac{T}{1\,\mathrm{min}}\right)^n";
        valid "v T^n = C; a constant that is stated for lives in seconds becomes one for minutes with T = 1 s";
        source "derived from v T^n = C; example: M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ex. 23.1, from memory";
        example "cutting_speed=160 m/min; tool_life=5 min; taylor_exponent=0.223" => "229 m/min", 0.0022,
            "M.P. Groover, Fundamentals of Modern Manufacturing, 3rd ed., ex. 23.1, from memory";
        = {
            let minute: quantity::Time = si(60.0);
            v_c * pow(T / minute, n)
        }
    }

    tool_life_for_criterion {
        symbol "T_2", "T_2";
        meaning "Tool life to another width of flank wear.";
        tool_life T_1: Time, above 0.0, "tool life to the criterion it was found with";
        flank_wear VB_1: Length, above 0.0, "width of flank wear of that criterion";
        new_flank_wear VB_2: Length, above 0.0, "width of flank wear of the new criterion";
        -> Time;
        equation "T_2 = T_1 VB_2/VB_1", r"T_2 = T_1 \frac{VB_2}{VB_1}";
        valid "flank wear that grows in proportion to time: its steady part; not the first minutes nor the steep end";
        source "derived from wear in proportion to time";
        example "tool_life=20 min; flank_wear=0.3 mm; new_flank_wear=0.6 mm" => "40 min", 1e-12, "identity";
        = T_1 * (VB_2 / VB_1)
    }

    taylor_speed_for_criterion {
        symbol "C_2", "C_2";
        meaning "Cutting speed for a life of one minute with another width of flank wear.";
        taylor_speed C_1: Velocity, above 0.0, "cutting speed for a life of one minute with the criterion it was found with";
        taylor_exponent n: Ratio, above 0.0, below 1.0, "Taylor's exponent, of the life";
        flank_wear VB_1: Length, above 0.0, "width of flank wear of that criterion";
        new_flank_wear VB_2: Length, above 0.0, "width of flank wear of the new criterion";
        -> Velocity;
        equation "C_2 = C_1 (VB_2/VB_1)^n", r"C_2 = C_1 \left(\frac{VB_2}{VB_1}\right)^n";
        valid "flank wear that grows in proportion to time; the exponent stays";
        source "derived: the life of v T^n = C times VB_2/VB_1";
        example "taylor_speed=100 m/min; taylor_exponent=0.25; flank_wear=0.05 mm; new_flank_wear=0.8 mm" => "200 m/min", 1e-12, "identity: 16^0.25";
        = C_1 * pow(VB_2 / VB_1, n)
    }

    crater_depth_limit {
        symbol "KT", "KT";
        meaning "Depth of crater that ends the life of a carbide edge in a test.";
        feed_per_rev f: Length, above 0.0, "feed per revolution";
        -> Length;
        equation "KT = 0.06 mm + 0.3 f", r"KT = 0.06\,\mathrm{mm} + 0.3\, f";
        valid "turning tests with sintered carbide";
        source "ISO 3685, criteria of tool life of sintered carbide, from memory";
        example "feed_per_rev=0.2 mm" => "0.12 mm", 1e-12, "own arithmetic: 0.06 + 0.3 x 0.2";
        = {
            let least: quantity::Length = si(0.06e-3);
            least + 0.3 * f
        }
    }

    mean_from_median_life {
        symbol "T_m", "T_m";
        meaning "Mean tool life from the median life that a fit of logarithms gives.";
        median_life T_50: Time, above 0.0, "median life, the exponential of the fitted logarithm";
        log_deviation s: Ratio, from 0.0, "standard deviation of the natural logarithms of the lives";
        -> Time;
        equation "T_m = T_50 exp(s^2/2)", r"T_m = T_{50}\, e^{s^2/2}";
        valid "lives that scatter log-normally; s of few readings is itself uncertain";
        source "mean of the log-normal distribution";
        example "median_life=10 min; log_deviation=0" => "10 min", 1e-12, "identity";
        = T_50 * exp(s * s / 2.0)
    }
}
