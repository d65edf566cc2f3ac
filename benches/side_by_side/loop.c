/* The nine results as one loop, the way it is written in C. */
#include <math.h>
#include <stddef.h>

void side_milling(size_t rows, const double *restrict diameter, const double *restrict teeth,
                  const double *restrict cutting_speed, const double *restrict max_chip,
                  const double *restrict axial_depth, const double *restrict radial_depth,
                  const double *restrict kc11, const double *restrict exponent,
                  double *restrict n_out, double *restrict v_out, double *restrict fz_out,
                  double *restrict hm_out, double *restrict vf_out, double *restrict q_out,
                  double *restrict kc_out, double *restrict p_out, double *restrict m_out)
{
    const double pi = 3.14159265358979323846;
    for (size_t i = 0; i < rows; i++) {
        double x = radial_depth[i] / diameter[i];
        double n = fmin(fmax(cutting_speed[i] / (pi * diameter[i]), 1.0), 300.0);
        double s = x < 0.5 ? 2.0 * sqrt(x * (1.0 - x)) : 1.0;
        double fz = max_chip[i] / s;
        double hm = 2.0 * fz * x / acos(1.0 - 2.0 * x);
        double vf = fz * teeth[i] * n;
        double q = axial_depth[i] * radial_depth[i] * vf;
        double kc = kc11[i] * pow(hm / 0.001, -exponent[i]);
        double p = kc * q / 0.8;
        n_out[i] = n;
        v_out[i] = pi * diameter[i] * n;
        fz_out[i] = fz;
        hm_out[i] = hm;
        vf_out[i] = vf;
        q_out[i] = q;
        kc_out[i] = kc;
        p_out[i] = p;
        m_out[i] = p / (2.0 * pi * n);
    }
}
