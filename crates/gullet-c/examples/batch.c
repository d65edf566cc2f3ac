/* A column of cutters at one cutting speed; a row that cannot be computed says why, the rest is done. */
#include <gullet.h>
#include <stdio.h>

#define ROWS 5

int main(void)
{
    static const char *const diameters[ROWS] = {"1/4 in", "3/8 in", "0 in", "1/2 in", "1 in"};
    double cutting_speed_m_per_s[ROWS], diameter_m[ROWS], spindle_speed_rev_per_s[ROWS];
    gullet_status status[ROWS];
    int row;

    for (row = 0; row < ROWS; row++)
        if (gullet_to_si("velocity", 90.0, "ft/min", &cutting_speed_m_per_s[row]) < 0
            || gullet_parse("length", diameters[row], GULLET_NUL_TERMINATED, &diameter_m[row]) < 0) {
            fprintf(stderr, "%s\n", gullet_last_error_message());
            return 1;
        }
    if (gullet_spindle_speed_array(ROWS, cutting_speed_m_per_s, diameter_m, spindle_speed_rev_per_s, status) < 0) {
        fprintf(stderr, "%s\n", gullet_last_error_message());
        return 1;
    }
    for (row = 0; row < ROWS; row++) {
        double rpm = 0.0;
        if (status[row] < 0)
            printf("%-6s  %s\n", diameters[row], gullet_status_name(status[row]));
        else if (gullet_from_si("rotational_speed", spindle_speed_rev_per_s[row], "rpm", &rpm) == GULLET_OK)
            printf("%-6s  %.1f rpm\n", diameters[row], rpm);
    }
    return 0;
}
