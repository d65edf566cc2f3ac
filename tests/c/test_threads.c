/* Threads that share a set-up and each have jobs, plans and last errors of their own. Arguments: a job
 * file, and `race` to plant a race that a detector must find. */
#include "check.h"
#include <gullet.h>
#include <pthread.h>

#define THREADS 8

static char *job_text;
static gullet_setup *setup;
static gullet_cut expected;
static double shared_result;
static int race;

static void *work(void *number)
{
    const double diameter = -1.0 - (double)*(int *)number;
    char value[32];
    int round, right = 1;
    snprintf(value, sizeof value, "%d mm", -1000 - 1000 * *(int *)number);
    for (round = 0; round < 10; round++) {
        gullet_job *job = NULL;
        gullet_plan *plan = NULL;
        gullet_pass pass = gullet_pass_init();
        gullet_cut cut = gullet_cut_init();
        gullet_problem problem = gullet_problem_init();
        double out = 0.0;
        right &= gullet_spindle_speed(1.0, diameter, &out) == GULLET_ERROR_OUT_OF_RANGE;
        pass.axial_depth_m = 0.005;
        pass.radial_depth_m = 0.001;
        right &= gullet_cut_compute(setup, &pass, &cut, NULL, 0) >= 0;
        right &= memcmp(&cut, &expected, sizeof cut) == 0;
        right &= gullet_job_new_toml(NULL, job_text, GULLET_NUL_TERMINATED, &job) == GULLET_OK;
        if (round == 5)
            right &= gullet_plan_new(job, &plan) >= 0;
        right &= gullet_last_error(0, &problem) == GULLET_OK && strcmp(problem.value, value) == 0;
        gullet_plan_free(plan);
        gullet_job_free(job);
        if (race)
            gullet_spindle_speed(1.0, 0.25, &shared_result);
    }
    *(int *)number = right;
    return NULL;
}

int main(int argc, char **argv)
{
    pthread_t ids[THREADS];
    int numbers[THREADS], i;
    gullet_job *job = NULL;
    gullet_pass pass = gullet_pass_init();
    if (argc < 2)
        return 2;
    race = argc > 2;
    job_text = read_file(argv[1], NULL);
    expected = gullet_cut_init();
    pass.axial_depth_m = 0.005;
    pass.radial_depth_m = 0.001;
    CHECK(gullet_job_new_toml(NULL, job_text, GULLET_NUL_TERMINATED, &job) == GULLET_OK);
    CHECK(gullet_job_setup(job, &setup) == GULLET_OK);
    gullet_job_free(job);
    CHECK(gullet_cut_compute(setup, &pass, &expected, NULL, 0) >= 0);
    for (i = 0; i < THREADS; i++) {
        numbers[i] = i;
        CHECK(pthread_create(&ids[i], NULL, work, &numbers[i]) == 0);
    }
    for (i = 0; i < THREADS; i++) {
        pthread_join(ids[i], NULL);
        CHECK(numbers[i] == 1);
    }
    gullet_setup_free(setup);
    free(job_text);
    return check_end("threads");
}
