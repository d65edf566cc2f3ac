/* Times of calls through the C interface; benches/c_calls.sh builds and runs it. */
#define _POSIX_C_SOURCE 200112L
#include <gullet.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define ROWS 1000000

static double seconds(void)
{
    struct timespec now;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

static volatile double sink;

/* The best of seven rounds, in nanoseconds a call. */
#define TIME(label, calls, call)                                                   \
    do {                                                                           \
        double best = 1e300;                                                       \
        for (int round = 0; round < 7; round++) {                                  \
            const double start = seconds();                                        \
            for (long i = 0; i < (calls); i++) {                                   \
                call;                                                              \
            }                                                                      \
            const double time = (seconds() - start) * 1e9 / (double)(calls);       \
            best = time < best ? time : best;                                      \
        }                                                                          \
        printf("%-46s %9.1f ns\n", label, best);                                   \
    } while (0)

int main(void)
{
    static const char job_text[] =
        "[material]\nid = '6061'\n[blank]\nlength = '100 mm'\nwidth = '60 mm'\nheight = '25 mm'\n"
        "[cutter]\nform = 'square'\nmaterial = 'HSS'\ndiameter = '12 mm'\nteeth = 2\nflute_length = '26 mm'\n"
        "stick_out = '40 mm'\n[machine]\nbase = 'manual-knee-mill'\n[hold]\nclamping_force = '12 kN'\n"
        "grip_depth = '12 mm'\n[cut]\noperation = 'side-milling'\nremove = '3 mm'\naxial_depth = '8 mm'\n";
    gullet_job *job = NULL;
    gullet_setup *setup = NULL;
    gullet_study *study = NULL;
    gullet_input input = {GULLET_INPUT_RADIAL_DEPTH, 0, NULL, 0.0};
    gullet_result result = {GULLET_RESULT_TIME, 0, NULL};
    gullet_study_batch batch = gullet_study_batch_init();
    gullet_pass pass = gullet_pass_init();
    gullet_cut cut = gullet_cut_init();
    gullet_limit limits[GULLET_LIMITS_MOST];
    double out = 0.0;
    double *speeds = malloc(ROWS * sizeof(double)), *diameters = malloc(ROWS * sizeof(double));
    double *results = malloc(ROWS * sizeof(double));
    gullet_status *statuses = malloc(ROWS * sizeof(gullet_status));
    if (speeds == NULL || diameters == NULL || results == NULL || statuses == NULL
        || gullet_job_new_toml(NULL, job_text, GULLET_NUL_TERMINATED, &job) < 0
        || gullet_job_setup(job, &setup) < 0 || gullet_study_of_job(job, &study) < 0) {
        fprintf(stderr, "%s\n", gullet_last_error_message());
        return 1;
    }
    for (long i = 0; i < ROWS; i++) {
        speeds[i] = 0.5 + 1e-6 * (double)i;
        diameters[i] = 0.01 + 1e-9 * (double)i;
    }
    limits[0] = gullet_limit_init();
    pass.axial_depth_m = 0.008;
    TIME("spindle_speed, 2 arguments", 2000000, gullet_spindle_speed(speeds[i % ROWS], 0.01, &out); sink = out);
    TIME("table_feed, 3 arguments", 2000000, gullet_table_feed(1e-4, 4.0, speeds[i % ROWS], &out); sink = out);
    TIME("max_chip_thickness, 4 arguments", 2000000,
         gullet_max_chip_thickness(1e-4, diameters[i % ROWS], 0.002, 1.5, &out); sink = out);
    TIME("spindle_speed, refused", 200000, gullet_spindle_speed(-speeds[i % ROWS], 0.01, &out));
    TIME("spindle_speed by name, SI", 1000000,
         gullet_evaluate_si("spindle_speed", (double[]){speeds[i % ROWS], 0.01}, 2, &out); sink = out);
    TIME("spindle_speed by name, text", 200000,
         gullet_evaluate("spindle_speed", "cutting_speed=90 ft/min; diameter=1/2 in", GULLET_NUL_TERMINATED, &out));
    /* One call for all rows. */
    TIME("spindle_speed over an array, a row", ROWS,
         if (i == 0) gullet_spindle_speed_array(ROWS, speeds, diameters, results, statuses); sink = results[7]);
    TIME("a whole Cut", 20000, pass.radial_depth_m = 0.001 + 1e-9 * (double)i;
         if (gullet_cut_compute(setup, &pass, &cut, NULL, 0) < 0) return 1; sink = cut.time_s);
    TIME("a whole Cut with its ledger", 20000, pass.radial_depth_m = 0.001 + 1e-9 * (double)i;
         if (gullet_cut_compute(setup, &pass, &cut, limits, GULLET_LIMITS_MOST) < 0) return 1; sink = cut.time_s);
    /* One call for all rows, on one thread. */
    for (long i = 0; i < ROWS; i++)
        diameters[i] = 0.001 + 1e-9 * (double)i;
    input.values_si = diameters;
    result.values_si_out = results;
    batch.threads = 1;
    batch.count = ROWS;
    batch.inputs = &input;
    batch.input_count = 1;
    batch.results = &result;
    batch.result_count = 1;
    batch.status_out = statuses;
    TIME("a whole Cut in a study, a row", ROWS,
         if (i == 0 && gullet_study_run(study, &batch) < 0) return 1; sink = results[7]);
    gullet_study_free(study);
    gullet_setup_free(setup);
    gullet_job_free(job);
    free(speeds);
    free(diameters);
    free(results);
    free(statuses);
    return 0;
}
