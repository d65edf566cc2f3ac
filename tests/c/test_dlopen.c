/* The shared library, loaded and unloaded over and over. Argument: its path. */
#define _GNU_SOURCE
#include "check.h"
#include <dlfcn.h>

typedef int (*scalar)(double, double, double *);

/* Resident memory in pages. */
static long resident(void)
{
    long size = 0, pages = 0;
    FILE *file = fopen("/proc/self/statm", "r");
    if (file == NULL || fscanf(file, "%ld %ld", &size, &pages) != 2)
        pages = -1;
    if (file != NULL)
        fclose(file);
    return pages;
}

int main(int argc, char **argv)
{
    long before = 0;
    int round;
    if (argc != 2)
        return 2;
    for (round = 0; round < 1000; round++) {
        void *library = dlopen(argv[1], RTLD_NOW | RTLD_LOCAL);
        scalar call;
        double speed = 0.0;
        if (!CHECK_OF(library != NULL, dlerror()))
            break;
        *(void **)&call = dlsym(library, "gullet_spindle_speed");
        CHECK(call != NULL && call(1.0, 0.25, &speed) == 0 && speed > 1.27 && speed < 1.28);
        CHECK(call(1.0, -1.0, &speed) == -10);
        dlclose(library);
        if (round == 99)
            before = resident();
    }
    /* 900 rounds later it has not grown by a page a round, nor by a tenth of that. */
    CHECK(before > 0 && resident() - before < 90);
    return check_end("dlopen");
}
