/* Own readings: the data set lathe1 fitted, a pair of cutting force, what is refused, shop tables.
   Argument: the file of the set (S. Weisberg, Applied Linear Regression, 4th ed., package alr4 of R). */
#include "check.h"
#include <gullet.h>
#include <math.h>

#define READINGS 20

static double feeds[READINGS], speeds[READINGS], lives[READINGS];

static void read_set(const char *path)
{
    char *text = read_file(path, NULL), *at = text, *cells[CSV_COLUMNS];
    int row = 0;
    CHECK(csv_row(&at, cells) == 3);
    while (row < READINGS && csv_row(&at, cells) == 3) {
        feeds[row] = atof(cells[0]) * 0.0254;
        speeds[row] = atof(cells[1]) * 0.3048 / 60;
        lives[row] = atof(cells[2]) * 60;
        row++;
    }
    CHECK(row == READINGS);
    free(text);
}

static int near(double value, double printed, double half)
{
    return fabs(value - printed) <= half * 1.000001;
}

static void taylor(void)
{
    gullet_fit_options options = gullet_fit_options_init();
    gullet_taylor_law law = gullet_taylor_law_init();
    gullet_fit_quality quality = gullet_fit_quality_init();
    gullet_problem problem = gullet_problem_init();
    double residuals[READINGS], sum = 0, life = 0, speed = 0, exponent;
    char text[2048];
    gullet_overlay overlay;
    gullet_library *library = NULL;
    int i;
    options.reference_feed_m = 0.0254;
    CHECK(gullet_fit_taylor(speeds, feeds, NULL, lives, READINGS, &options, &law, &quality, residuals) == GULLET_OK);
    CHECK(near(law.taylor_exponent, 0.2202, 5e-5) && near(law.feed_exponent, 0.3514, 5e-5));
    CHECK(near(law.taylor_exponent_low, 0.197, 5e-4) && near(law.taylor_exponent_high, 0.249, 5e-4));
    CHECK(near(law.taylor_speed_m_per_s / 0.3048 * 60, 262.1, 0.05));
    CHECK(quality.degrees_of_freedom == 17 && near(quality.residual_deviation, 0.3100, 5e-5));
    CHECK(near(quality.r_squared, 0.9607, 5e-5) && near(quality.student_t, 2.110, 5e-4));
    for (i = 0; i < READINGS; i++)
        sum += residuals[i];
    CHECK(fabs(sum) < 1e-10);
    CHECK(law.depth_exponent == 0 && law.reference_depth_m == 0);
    /* Without options and what is told besides, and C for another feed: the same lives. */
    {
        gullet_taylor_law usual = gullet_taylor_law_init();
        double other = 0;
        CHECK(gullet_fit_taylor(speeds, feeds, NULL, lives, READINGS, NULL, &usual, NULL, NULL) == GULLET_OK);
        CHECK(gullet_taylor_life(&law, 4.0, 0.3e-3, 0, &life) == GULLET_OK);
        CHECK(gullet_taylor_life(&usual, 4.0, 0.3e-3, 0, &other) == GULLET_OK && near(other / life, 1, 1e-11));
    }
    CHECK(gullet_taylor_speed(&law, life, 0.3e-3, 0, &speed) == GULLET_OK && near(speed, 4.0, 1e-12));
    CHECK(gullet_taylor_life(&law, 20.0, 0.3e-3, 0, &life) == GULLET_WARNING_OUTSIDE_VALIDITY);
    CHECK(gullet_taylor_life(&law, 4.0, 0, 0, &life) == GULLET_ERROR_MISSING);
    CHECK(gullet_last_error(0, &problem) == GULLET_OK && strcmp(problem.parameter, "feed_per_rev") == 0);
    exponent = law.taylor_exponent;
    law.taylor_exponent = 4;
    CHECK(gullet_taylor_life(&law, 4.0, 0.3e-3, 0, &life) == GULLET_ERROR_OUT_OF_RANGE);
    law.taylor_exponent = exponent;
    CHECK(gullet_taylor_overlay(&law, NULL, "own", "AISI 1018", "carbide", "VB 0.3 mm", "lathe1", text, sizeof text, NULL) == GULLET_OK);
    overlay.file_name = "own.csv";
    overlay.text = text;
    overlay.text_length = GULLET_NUL_TERMINATED;
    CHECK(gullet_library_new(NULL, &overlay, 1, &library) == GULLET_OK);
    gullet_library_free(library);
    CHECK(gullet_taylor_overlay(&law, NULL, "own", "AISI 1018", "wood", "", "lathe1", text, sizeof text, NULL) == GULLET_ERROR_UNKNOWN_NAME);
    /* Refused: too few, two speeds, a depth without a feed. */
    CHECK(gullet_fit_taylor(speeds, NULL, NULL, lives, 4, NULL, &law, NULL, NULL) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_last_error_count() == 2);
    CHECK(gullet_fit_taylor(speeds, NULL, feeds, lives, READINGS, NULL, &law, NULL, NULL) == GULLET_ERROR_MISSING);
    CHECK(gullet_fit_taylor(NULL, NULL, NULL, lives, READINGS, NULL, &law, NULL, NULL) == GULLET_ERROR_NULL_POINTER);
    CHECK(gullet_fit_taylor(speeds, NULL, NULL, lives, READINGS, NULL, NULL, NULL, NULL) == GULLET_ERROR_NULL_POINTER);
}

static void kienzle(void)
{
    static const double chips[] = {0.05e-3, 0.05e-3, 0.1e-3, 0.2e-3, 0.3e-3, 0.4e-3};
    double forces[6];
    gullet_kienzle_law law = gullet_kienzle_law_init();
    gullet_fit_quality quality = gullet_fit_quality_init();
    gullet_library *library = NULL;
    gullet_overlay overlay;
    char text[4096];
    size_t needed = 0;
    int i;
    for (i = 0; i < 6; i++)
        forces[i] = 1e3 * 1000 * pow(chips[i] * 1e3, 0.7);
    CHECK(gullet_fit_kienzle(chips, forces, 6, NULL, &law, &quality, NULL) == GULLET_OK);
    CHECK(near(law.kc11_pa, 1000e6, 1) && near(law.chip_exponent, 0.3, 1e-9));
    CHECK(law.lowest_chip_thickness_m == 0.05e-3 && quality.degrees_of_freedom == 4);
    CHECK(gullet_fit_kienzle(chips + 2, forces + 2, 4, NULL, &law, NULL, NULL) == GULLET_ERROR_OUT_OF_RANGE);
    CHECK(gullet_kienzle_overlay(&law, NULL, "AISI 1018", "dynamometer", text, 4, &needed) == GULLET_ERROR_BUFFER_TOO_SHORT);
    CHECK(needed > 100 && needed <= sizeof text);
    CHECK(gullet_kienzle_overlay(&law, NULL, "AISI 1018", "dynamometer", text, sizeof text, NULL) == GULLET_OK);
    overlay.file_name = "own.csv";
    overlay.text = text;
    overlay.text_length = GULLET_NUL_TERMINATED;
    CHECK(gullet_library_new(NULL, &overlay, 1, &library) == GULLET_OK);
    gullet_library_free(library);
    CHECK(gullet_kienzle_overlay(&law, NULL, "no such steel", "dynamometer", text, sizeof text, NULL) == GULLET_ERROR_UNKNOWN_NAME);
}

int main(int count, char **words)
{
    if (count != 2)
        return 2;
    read_set(words[1]);
    taylor();
    kienzle();
    return check_end("fit");
}
