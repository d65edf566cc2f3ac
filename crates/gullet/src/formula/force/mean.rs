//! Means over a revolution of the forces and the torque of a milling cutter, with linear edge forces.
//!
//! On the tool: dF_t = (K_tc h + K_te) dz against the tooth's motion, dF_r = (K_rc h + K_re) dz toward
//! the axis, dF_a = (K_ac h + K_ae) dz, h = f_z sin(phi).

use super::super::define::formulas;

formulas! {
    topic "force";

    mean_feed_force {
        symbol "F_x", "F_x";
        meaning "Force on a milling cutter along the feed, mean over a revolution.";
        ktc K_tc: Pressure, "tangential cutting coefficient";
        krc K_rc: Pressure, "radial cutting coefficient";
        kte K_te: LineForce, "tangential edge coefficient";
        kre K_re: LineForce, "radial edge coefficient";
        teeth z: Count, from 1.0, "effective teeth";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        entry_angle phi_st: Angle, from 0.0, below exit_angle, "immersion at which a tooth enters";
        exit_angle phi_ex: Angle, to PI, "immersion at which a tooth leaves";
        -> Force;
        equation "F_x = z a_p f_z/(8 pi) (K_tc A - K_rc B) + z a_p/(2 pi) (K_re E - K_te S); A = cos(2 phi_ex) - cos(2 phi_st); B = 2 (phi_ex - phi_st) - (sin(2 phi_ex) - sin(2 phi_st)); E = cos(phi_ex) - cos(phi_st); S = sin(phi_ex) - sin(phi_st)",
            r"F_x = \frac{z\, a_p f_z}{8\pi} \Big[K_{tc} \cos 2\varphi - K_{rc} (2\varphi - \sin 2\varphi)\Big]_{\varphi_\mathrm{st}}^{\varphi_\mathrm{ex}} + \frac{z\, a_p}{2\pi} \Big[-K_{te} \sin\varphi + K_{re} \cos\varphi\Big]_{\varphi_\mathrm{st}}^{\varphi_\mathrm{ex}}";
        valid "force ON THE TOOL (the work feels the opposite), mean over a revolution, NOT a peak: not for tool strength or the vise; x along the motion of the tool relative to the work, y to the left of x seen from the spindle, cutter turning clockwise seen from the spindle, phi from +y in the sense of rotation; straight edge, cutting-edge angle 90 deg, any helix, one cut arc; angles in radians";
        source "derived: linear edge force model integrated over the arc; the model after Altintas, Manufacturing Automation, from memory";
        example "ktc=796.1 N/mm2; krc=168.8 N/mm2; kte=27.7 N/mm; kre=30.8 N/mm; teeth=4; axial_depth=5 mm; feed_per_tooth=0.1 mm; entry_angle=0 deg; exit_angle=90 deg" => "-355.114534 N", 1e-8, "identity; coefficients of Al7050 after Engin & Altintas 2001, memory";
        = {
            let arc = Arc::between(phi_st, phi_ex);
            z * a_p * f_z / (8.0 * PI) * (K_tc * arc.cos_2phi - K_rc * arc.sine_squared)
                + z * a_p / (2.0 * PI) * (K_re * arc.cos_phi - K_te * arc.sin_phi)
        }
    }

    mean_normal_force {
        symbol "F_y", "F_y";
        meaning "Force on a milling cutter square to the feed, mean over a revolution.";
        ktc K_tc: Pressure, "tangential cutting coefficient";
        krc K_rc: Pressure, "radial cutting coefficient";
        kte K_te: LineForce, "tangential edge coefficient";
        kre K_re: LineForce, "radial edge coefficient";
        teeth z: Count, from 1.0, "effective teeth";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        entry_angle phi_st: Angle, from 0.0, below exit_angle, "immersion at which a tooth enters";
        exit_angle phi_ex: Angle, to PI, "immersion at which a tooth leaves";
        -> Force;
        equation "F_y = z a_p f_z/(8 pi) (K_tc B + K_rc A) - z a_p/(2 pi) (K_te E + K_re S); A = cos(2 phi_ex) - cos(2 phi_st); B = 2 (phi_ex - phi_st) - (sin(2 phi_ex) - sin(2 phi_st)); E = cos(phi_ex) - cos(phi_st); S = sin(phi_ex) - sin(phi_st)",
            r"F_y = \frac{z\, a_p f_z}{8\pi} \Big[K_{tc} (2\varphi - \sin 2\varphi) + K_{rc} \cos 2\varphi\Big]_{\varphi_\mathrm{st}}^{\varphi_\mathrm{ex}} - \frac{z\, a_p}{2\pi} \Big[K_{te} \cos\varphi + K_{re} \sin\varphi\Big]_{\varphi_\mathrm{st}}^{\varphi_\mathrm{ex}}";
        valid "force ON THE TOOL (the work feels the opposite), mean over a revolution, NOT a peak: not for tool strength or the vise; x along the motion of the tool relative to the work, y to the left of x seen from the spindle, cutter turning clockwise seen from the spindle, phi from +y in the sense of rotation; straight edge, cutting-edge angle 90 deg, any helix, one cut arc; angles in radians";
        source "derived: linear edge force model integrated over the arc; the model after Altintas, Manufacturing Automation, from memory";
        example "ktc=796.1 N/mm2; krc=168.8 N/mm2; kte=27.7 N/mm; kre=30.8 N/mm; teeth=4; axial_depth=5 mm; feed_per_tooth=0.1 mm; entry_angle=0 deg; exit_angle=90 deg" => "162.292039 N", 1e-8, "identity; coefficients of Al7050 after Engin & Altintas 2001, memory";
        = {
            let arc = Arc::between(phi_st, phi_ex);
            z * a_p * f_z / (8.0 * PI) * (K_tc * arc.sine_squared + K_rc * arc.cos_2phi)
                - z * a_p / (2.0 * PI) * (K_te * arc.cos_phi + K_re * arc.sin_phi)
        }
    }

    mean_axial_force {
        symbol "F_z", "F_z";
        meaning "Force on a milling cutter along its axis, mean over a revolution; positive pulls the tool out of the holder.";
        kac K_ac: Pressure, "axial cutting coefficient";
        kae K_ae: LineForce, "axial edge coefficient";
        teeth z: Count, from 1.0, "effective teeth";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        entry_angle phi_st: Angle, from 0.0, below exit_angle, "immersion at which a tooth enters";
        exit_angle phi_ex: Angle, to PI, "immersion at which a tooth leaves";
        -> Force;
        equation "F_z = z a_p/(2 pi) (K_ae (phi_ex - phi_st) - K_ac f_z E); E = cos(phi_ex) - cos(phi_st)",
            r"F_z = \frac{z\, a_p}{2\pi} \Big[-K_{ac} f_z \cos\varphi + K_{ae}\, \varphi\Big]_{\varphi_\mathrm{st}}^{\varphi_\mathrm{ex}}";
        valid "force ON THE TOOL, mean over a revolution, NOT a peak: not for holding; positive pulls the tool away from the spindle and lifts the work (K_ac > 0 for a right-hand helix on a right-hand cutter); straight edge, cutting-edge angle 90 deg, any helix, one cut arc; angles in radians";
        source "derived: linear edge force model integrated over the arc; the model after Altintas, Manufacturing Automation, from memory";
        example "kac=222.0 N/mm2; kae=1.4 N/mm; teeth=4; axial_depth=5 mm; feed_per_tooth=0.1 mm; entry_angle=0 deg; exit_angle=90 deg" => "77.6647947 N", 1e-8, "identity; coefficients of Al7050 after Engin & Altintas 2001, memory";
        = {
            let arc = Arc::between(phi_st, phi_ex);
            z * a_p / (2.0 * PI) * (K_ae * radians(phi_ex - phi_st) - K_ac * f_z * arc.cos_phi)
        }
    }

    mean_milling_torque {
        symbol "M", "M";
        meaning "Torque of a milling cutter in a side cut or slot, mean over a revolution.";
        ktc K_tc: Pressure, "tangential cutting coefficient";
        kte K_te: LineForce, "tangential edge coefficient";
        teeth z: Count, from 1.0, "effective teeth";
        axial_depth a_p: Length, from 0.0, "depth of cut along the axis";
        radial_depth a_e: Length, above 0.0, to diameter, "working engagement, across the axis";
        feed_per_tooth f_z: Length, from 0.0, "feed per tooth";
        diameter D: Length, above 0.0, "cutter diameter";
        -> Torque;
        equation "M = a_p a_e f_z z K_tc/(2 pi) + a_p z phi_s K_te D/(4 pi); phi_s = acos(1 - 2 a_e/D)",
            r"M = \frac{a_p a_e f_z\, z\, K_{tc}}{2\pi} + \frac{a_p\, z\, \varphi_s K_{te}\, D}{4\pi},\quad \varphi_s = \arccos\left(1 - \frac{2 a_e}{D}\right)";
        valid "mean over a revolution, NOT a peak; side cut or slot, up or down, any helix; linear edge forces; phi_s in radians";
        source "derived: mean of (D/2) (K_tc h + K_te) a_p over the arc; without edge force it is k_c Q/(2 pi n)";
        example "ktc=796.1 N/mm2; kte=27.7 N/mm; teeth=4; axial_depth=5 mm; radial_depth=10 mm; feed_per_tooth=0.1 mm; diameter=20 mm" => "3.919065 N.m", 1e-6, "identity";
        = {
            let phi_s = radians(side_arc(D, a_e));
            torque(a_p * a_e * f_z * z * K_tc / (2.0 * PI) + a_p * z * phi_s * K_te * D / (4.0 * PI))
        }
    }
}
