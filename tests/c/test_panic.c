/* A panic in the library is a status, silent, told by the last error; linked with the library that
 * panics on demand. */
#define _GNU_SOURCE
#include "check.h"
#include <fenv.h>
#include <gullet.h>
#include <unistd.h>

extern gullet_status gullet_provoke_panic(void);

int main(void)
{
    double speed = 0.0;
    char said[64];
    int i, ends[2];
    const int stderr_before = dup(2);
    gullet_problem problem = gullet_problem_init();
    CHECK(pipe(ends) == 0);
    dup2(ends[1], 2);
    fesetround(FE_UPWARD);
    for (i = 0; i < 100; i++)
        CHECK(gullet_provoke_panic() == GULLET_ERROR_PANIC);
    CHECK(fegetround() == FE_UPWARD);
    dup2(stderr_before, 2);
    close(ends[1]);
    CHECK(read(ends[0], said, sizeof said) == 0);
    close(ends[0]);
    CHECK(gullet_last_error_count() == 1 && gullet_last_error(0, &problem) == GULLET_OK);
    CHECK(problem.status == GULLET_ERROR_PANIC && strstr(problem.value, "provoked for a test at ") != NULL);
    CHECK(gullet_spindle_speed(1.0, 0.25, &speed) == GULLET_OK && speed > 1.27);
    return check_end("panic");
}
