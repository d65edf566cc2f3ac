//! Stability: depths and speeds of chatter-free milling with one mode.

use super::define::formulas;

formulas! {
    topic "stability";

    stability_limit_single_mode {
        symbol "a_lim", r"a_\mathrm{lim}";
        meaning "Smallest limit width of cut of one vibration mode, over all speeds.";
        stiffness k: Stiffness, above 0.0, "modal stiffness";
        damping_ratio zeta: Ratio, above 0.0, below 1.0, "damping ratio, as a share of critical damping";
        cutting_coefficient K_f: Pressure, above 0.0, "cutting coefficient resolved into the mode's direction";
        -> Length;
        equation "a_lim = 2 k zeta (1 + zeta)/K_f", r"a_\mathrm{lim} = \frac{2 k \zeta (1 + \zeta)}{K_f}";
        valid "one mode, one edge always in cut with full regeneration; below it no speed chatters; process damping at low speed allows more";
        source "J. Tlusty's limit, from memory; derived: least real part of the mode's compliance, -1/(4 k zeta (1 + zeta))";
        example "stiffness=1e7 N/m; damping_ratio=0.05; cutting_coefficient=1000 MPa" => "1.05 mm", 1e-12, "identity: 2e7 x 0.05 x 1.05/1e9 m";
        = 2.0 * k * zeta * (number(1.0) + zeta) / K_f
    }

    stability_limit_slot_single_mode {
        symbol "a_lim", r"a_\mathrm{lim}";
        meaning "Smallest limit depth of a slot with one vibration mode along or across the feed, over all speeds.";
        stiffness k: Stiffness, above 0.0, "modal stiffness";
        damping_ratio zeta: Ratio, above 0.0, below 1.0, "damping ratio";
        krc K_rc: Pressure, above 0.0, "radial cutting coefficient";
        teeth z: Count, from 1.0, "number of teeth";
        -> Length;
        equation "a_lim = 8 k zeta (1 + zeta)/(z K_rc)", r"a_\mathrm{lim} = \frac{8 k \zeta (1 + \zeta)}{z K_{rc}}";
        valid "zeroth order (mean direction of the force), slot, one mode along x or along y; at one speed the limit is higher";
        source "Y. Altintas, E. Budak: zeroth-order solution, from memory and seen in public research files; the closed form derived";
        example "stiffness=1340049.65 N/m; damping_ratio=0.011; krc=200 MPa; teeth=2" => "0.298053843 mm", 0.0001,
            "identity: mode of the benchmark of T. Insperger and G. Stepan";
        = 8.0 * k * zeta * (number(1.0) + zeta) / (z * K_rc)
    }

    best_spindle_speed {
        symbol "n", "n";
        meaning "Spindle speed at which a whole number of vibrations falls on a tooth: the widest stable pockets.";
        natural_frequency f_n: Frequency, above 0.0, "natural frequency of the mode";
        teeth z: Count, from 1.0, "number of teeth";
        waves k: Count, from 1.0, "whole vibrations a tooth: 1, 2, ...";
        -> RotationalSpeed;
        equation "n = f_n/(z k)", r"n = \frac{f_n}{z k}";
        valid "n in revolutions per second (1 Hz gives 60 rpm); the asymptote of the stability lobes, evenly pitched teeth";
        source "definition of the tooth-passing frequency, derived";
        example "natural_frequency=922 Hz; teeth=2; waves=1" => "27660 rpm", 1e-6, "identity: 60 x 922/2 rpm";
        = f_n / (z * k)
    }
}
