//! Power and torque: at the cutter, at the motor, and what a drive has to give.

use super::define::formulas;

formulas! {
    topic "power";

    cutting_power {
        symbol "P_c", "P_c";
        meaning "Power at the cutter for a removal rate.";
        removal_rate Q: VolumeRate, from 0.0, "removal rate";
        specific_cutting_force k_c: Pressure, from 0.0, "specific cutting force at the mean chip thickness, or unit power";
        -> Power;
        equation "P_c = k_c Q", r"P_c = k_c\, Q";
        valid "mean over a revolution; k_c at the mean chip thickness reads a few percent above the exact mean over the arc; two sources of k_c or unit power agree within about 30 %";
        source "definition of the specific cutting force as energy per volume";
        example "removal_rate=150000 mm3/min; specific_cutting_force=3 J/mm3" => "7.5 kW", 1e-9,
            "Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex. 24.1 p.664 (open textbook-companion file), seen";
        = k_c * Q
    }

    power_from_force {
        symbol "P_c", "P_c";
        meaning "Power at the cutter from its tangential force.";
        cutting_force F_c: Force, from 0.0, "tangential force";
        cutting_speed v_c: Velocity, from 0.0, "cutting speed";
        -> Power;
        equation "P_c = F_c v_c", r"P_c = F_c\, v_c";
        valid "any process; the mean power where the force is the mean over a revolution";
        source "definition of power";
        example "cutting_force=1557 N; cutting_speed=100 m/min" => "2595 W", 2e-4,
            "Groover M.P., Fundamentals of Modern Manufacturing, 3rd ed., power example, memory";
        = F_c * v_c
    }

    arc_mean_cutting_power {
        symbol "P_c", "P_c";
        meaning "Power at the cutter of a side cut or slot, mean over a revolution, with the specific cutting force followed along the arc.";
        kc11 k_c11: Pressure, above 0.0, "specific cutting force at a chip 1 mm thick and 1 mm wide";
        chip_exponent m: Ratio, from 0.0, below 1.0, "exponent of the chip thickness";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        teeth z: Count, from 1.0, "effective teeth";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        cutting_edge_angle kappa_r: Angle, above 0.0, to PI / 2.0, default PI / 2.0, "tool cutting-edge angle";
        -> Power;
        equation "P_c = z n (D/2) (a_p/sin(kappa_r)) k_c11 (1 mm) (h/1 mm)^(1 - m) I; h = f_z sin(kappa_r); I = integral of sin(phi)^(1 - m) dphi from 0 to acos(1 - 2 a_e/D)",
            r"P_c = z\, n\, \frac{D}{2} \frac{a_p}{\sin\kappa_r}\, k_{c1.1}\, (1\,\mathrm{mm})^{m} \int_0^{\varphi_s} h^{1 - m}\, \mathrm{d}\varphi,\quad h = f_z \sin\kappa_r \sin\varphi,\quad \varphi_s = \arccos\left(1 - \frac{2 a_e}{D}\right)";
        valid "side cut or slot, up or down, circular tooth path, equal pitch, sharp edge, chip thickness within the range of k_c1.1; n in revolutions per second; the integral to 1e-12 relative";
        source "derived: Kienzle's law integrated over the arc, the integral as 2^(1 - m) B(a_e/D; 1 - m/2, 1 - m/2)";
        example "kc11=1800 N/mm2; chip_exponent=0.25; feed_per_tooth=0.1 mm; diameter=20 mm; radial_depth=5 mm; axial_depth=3 mm; teeth=4; spindle_speed=800 rpm; cutting_edge_angle=90 deg" => "297.374353 W", 1e-8, "identity";
        = {
            let integral = sine_power_integral(engagement_ratio(D, a_e), remaining_ratio(D, a_e), m);
            let millimetre: quantity::Length = si(0.001);
            let edge_force = k_c11 * millimetre * pow(millimetres(f_z * sin(kappa_r)), number(1.0) - m);
            z * n * (D / 2.0) * (a_p / sin(kappa_r)) * edge_force * integral
        }
    }

    unit_power_at_chip {
        symbol "u_h", "u_h";
        meaning "Unit power carried from the chip thickness of its table to that of a cut.";
        unit_power u: Pressure, from 0.0, "unit power of the table";
        table_chip_thickness h_0: Length, above 0.0, "chip thickness the table's value belongs to";
        chip_thickness h: Length, above 0.0, "chip thickness of the cut";
        exponent x: Ratio, from 0.0, below 1.0, default 0.2, "exponent of the chip thickness";
        -> Pressure;
        equation "u_h = u (h/h_0)^(-x)", r"u_h = u \left(\frac{h}{h_0}\right)^{-x}";
        valid "chips of about 0.025 to 1.3 mm; the exponent is one value for all materials, so expect +-30 %";
        source "exponent 0.2: fit to the feed factors of Oberg E. et al., Machinery's Handbook, 31st ed. (their table follows the power -0.193), table seen";
        example "unit_power=2 J/mm3; table_chip_thickness=0.32 mm; chip_thickness=0.01 mm" => "4 J/mm3", 1e-9, "own arithmetic: 32^0.2 = 2";
        = u * fractional_power(h / h_0, -x)
    }

    motor_power {
        symbol "P_m", "P_m";
        meaning "Power of the motor for a power at the cutter.";
        cutting_power P_c: Power, from 0.0, "power at the cutter";
        efficiency eta: Ratio, above 0.0, to 1.0, "efficiency of the drive";
        -> Power;
        equation "P_m = P_c/eta", r"P_m = \frac{P_c}{\eta}";
        valid "divide once; belts about 0.9, geared heads 0.7 to 0.8 (from memory)";
        source "definition of efficiency";
        example "cutting_power=20.60 hp; efficiency=0.60" => "34.34 hp", 5e-4,
            "P.C. Sharma, A Textbook of Production Engineering, Ex. 15.1, seen";
        = P_c / eta
    }

    cutting_torque {
        symbol "M_c", "M_c";
        meaning "Torque at the spindle for a power at the cutter.";
        cutting_power P_c: Power, from 0.0, "power at the cutter";
        spindle_speed n: RotationalSpeed, above 0.0, "spindle speed";
        -> Torque;
        equation "M_c = P_c/(2 pi n)", r"M_c = \frac{P_c}{2\pi n}";
        valid "mean over a revolution where the cut is interrupted; n in revolutions per second";
        source "definition of power";
        example "cutting_power=7.5 kW; spindle_speed=100 rpm" => "716 N.m", 1e-3,
            "Kalpakjian & Schmid, Manufacturing Engineering & Technology, Ex. 24.1 p.664 (open textbook-companion file), seen";
        = torque(P_c / (2.0 * PI * n))
    }

    power_from_torque {
        symbol "P_c", "P_c";
        meaning "Power of a torque at a spindle speed.";
        torque M_c: Torque, from 0.0, "torque";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        -> Power;
        equation "P_c = 2 pi n M_c", r"P_c = 2\pi\, n\, M_c";
        valid "mean over a revolution where the torque is; n in revolutions per second";
        source "definition of power";
        example "torque=5252.11312203 lbf.ft; spindle_speed=1 rpm" => "1 hp", 1e-9, "identity: 33000/(2 pi)";
        = work(M_c) * (2.0 * PI * n)
    }

    available_torque {
        symbol "M_av", r"M_\mathrm{av}";
        meaning "Torque that a drive has to give at a spindle speed.";
        rated_power P: Power, from 0.0, "rated power at the spindle";
        base_speed n_b: RotationalSpeed, above 0.0, "lowest spindle speed at which the rated power is reached";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        -> Torque;
        equation "M_av = P/(2 pi max(n, n_b))", r"M_\mathrm{av} = \frac{P}{2\pi \max(n, n_b)}";
        valid "constant torque up to the base speed, constant power above it; one gear or pulley step; n in revolutions per second";
        source "derived: the usual two-range characteristic of a controlled spindle drive";
        example "rated_power=5 hp; base_speed=1750 rpm; spindle_speed=1750 rpm" => "15.0060374915 lbf.ft", 1e-9,
            "identity at the base speed: 33000 hp/(2 pi n)";
        = torque(P / (2.0 * PI * max(n, n_b)))
    }

    available_power {
        symbol "P_av", r"P_\mathrm{av}";
        meaning "Power that a drive has to give at a spindle speed.";
        rated_power P: Power, from 0.0, "rated power at the spindle";
        base_speed n_b: RotationalSpeed, above 0.0, "lowest spindle speed at which the rated power is reached";
        spindle_speed n: RotationalSpeed, from 0.0, "spindle speed";
        -> Power;
        equation "P_av = P min(1, n/n_b)", r"P_\mathrm{av} = P \min\left(1, \frac{n}{n_b}\right)";
        valid "constant torque up to the base speed, constant power above it; one gear or pulley step";
        source "derived: the usual two-range characteristic of a controlled spindle drive";
        example "rated_power=7.5 kW; base_speed=1500 rpm; spindle_speed=500 rpm" => "2.5 kW", 1e-9,
            "identity: a third of the base speed";
        = P * min(number(1.0), n / n_b)
    }

    cutting_energy {
        symbol "E", "E";
        meaning "Energy of a power over a time in the cut.";
        power P: Power, from 0.0, "power, of the motor or at the cutter";
        cutting_time t: Time, from 0.0, "time in the cut";
        -> Energy;
        equation "E = P t", r"E = P\, t";
        valid "the power steady over the time, or its mean; idling, feed drives and coolant come on top";
        source "definition of power";
        example "power=2 kW; cutting_time=90 s" => "0.05 kWh", 1e-9, "identity";
        = P * t
    }
}
