/* Widths of cut over one job: what to set, the limit that binds, and how far the force may be off where the
 * material is harder or softer than its tables say. */
#include <gullet.h>
#include <stdio.h>
#include <string.h>

#define ROWS 4
#define RESULTS 3
#define QUANTILES 2

static const char job_text[] =
    "material.id = '6061'\n"
    "blank = { length = '90 mm', width = '60 mm', height = '25 mm' }\n"
    "machine.base = 'small-cnc-mill'\n"
    "hold = { clamping_force = '12 kN', grip_depth = '12 mm' }\n"
    "cut = { operation = 'side-milling', axial_depth = '6 mm', remove = '3 mm' }\n"
    "[cutter]\n"
    "form = 'square'\nmaterial = 'HSS'\ndiameter = '12 mm'\nteeth = 2\n"
    "flute_length = '26 mm'\nstick_out = '35 mm'\n";

static int failed(void)
{
    fprintf(stderr, "%s\n", gullet_last_error_message());
    return 1;
}

int main(void)
{
    static const double width_mm[ROWS] = {0.5, 1.5, 3.0, 13.0};
    static const double shares[QUANTILES] = {0.05, 0.95};
    double width_m[ROWS], values[RESULTS][ROWS], quantiles[RESULTS][QUANTILES][ROWS];
    gullet_status status[ROWS];
    uint8_t limit[ROWS];
    gullet_job *job = NULL;
    gullet_study *study = NULL;
    gullet_input width;
    gullet_result wanted[RESULTS];
    gullet_spread harder;
    gullet_study_batch batch = gullet_study_batch_init();
    gullet_draws draws = gullet_draws_init();
    const int32_t numbers[RESULTS] = {GULLET_RESULT_SPINDLE_SPEED, GULLET_RESULT_TABLE_FEED,
                                      GULLET_RESULT_MEAN_TANGENTIAL_FORCE};
    int row, i;

    if (gullet_job_new_toml(NULL, job_text, GULLET_NUL_TERMINATED, &job) < 0
        || gullet_study_of_job(job, &study) < 0)
        return failed();
    for (row = 0; row < ROWS; row++)
        if (gullet_to_si("length", width_mm[row], "mm", &width_m[row]) < 0)
            return failed();

    memset(&width, 0, sizeof width);
    width.input = GULLET_INPUT_RADIAL_DEPTH;
    width.values_si = width_m;
    memset(wanted, 0, sizeof wanted);
    for (i = 0; i < RESULTS; i++) {
        wanted[i].result = numbers[i];
        wanted[i].values_si_out = values[i];
    }
    batch.count = ROWS;
    batch.inputs = &width;
    batch.input_count = 1;
    batch.results = wanted;
    batch.result_count = RESULTS;
    batch.status_out = status;
    batch.binding_limit_out = limit;

    memset(&harder, 0, sizeof harder);
    harder.quantity = GULLET_SPREAD_CUTTING_FORCE;
    harder.shape = GULLET_SHAPE_TRIANGULAR;
    harder.low = 0.9;
    harder.mode = 1.0;
    harder.high = 1.2;
    draws.draws = 2000;
    draws.seed = 1;
    draws.spreads = &harder;
    draws.spread_count = 1;
    draws.quantiles = shares;
    draws.quantile_count = QUANTILES;
    draws.values_si_out = &quantiles[0][0][0];

    if (gullet_study_draw(study, &batch, &draws) < 0)
        return failed();
    for (row = 0; row < ROWS; row++) {
        double rpm = 0.0, feed = 0.0;
        if (status[row] < 0) {
            printf("%4.1f mm  %s\n", width_mm[row], gullet_status_name(status[row]));
            continue;
        }
        if (gullet_from_si("rotational_speed", values[0][row], "rpm", &rpm) < 0
            || gullet_from_si("velocity", values[1][row], "mm/min", &feed) < 0)
            return failed();
        printf("%4.1f mm  %.0f rpm  %.0f mm/min  %.0f N, 9 of 10 from %.0f to %.0f N  %s\n", width_mm[row], rpm, feed,
               values[2][row], quantiles[2][0][row], quantiles[2][1][row], gullet_limit_name(limit[row]));
    }
    gullet_study_free(study);
    gullet_job_free(job);
    return 0;
}
