/* Time of each formula's typed call over rows of the core that have a result. Argument: the rows. */
#define _POSIX_C_SOURCE 200112L
#include "formula_table.h"
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#define ROUNDS 7
#define REPEATS 200

static double seconds(void)
{
    struct timespec now;
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
    return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

/* The best round in nanoseconds a call. */
static double time_of(const formula_row *row, const double *arguments, size_t count)
{
    const size_t width = row->argument_count + 2;
    double best = 1e300, out = 0.0;
    for (int round = 0; round < ROUNDS; round++) {
        const double start = seconds();
        for (int repeat = 0; repeat < REPEATS; repeat++)
            for (size_t i = 0; i < count; i++)
                row->one(arguments + i * width, &out);
        const double time = (seconds() - start) * 1e9 / ((double)REPEATS * (double)count);
        best = time < best ? time : best;
    }
    return best;
}

int main(int argc, char **argv)
{
    static char head[4096];
    FILE *file = argc == 2 ? fopen(argv[1], "rb") : NULL;
    double sum = 0.0, slowest = 0.0;
    size_t above = 0, slow = 0;
    if (file == NULL)
        return 2;
    for (size_t i = 0; i < formula_table_length; i++) {
        const formula_row *row = &formula_table[i];
        const size_t width = row->argument_count + 2;
        const char *rows = fgets(head, sizeof head, file) == NULL ? NULL : strstr(head, "\"rows\":");
        const size_t count = rows == NULL ? 0 : (size_t)strtoul(rows + 7, NULL, 10);
        double *table = malloc((count + 1) * width * sizeof(double)), time;
        size_t good = 0;
        if (table == NULL || fread(table, width * sizeof(double), count, file) != count)
            return 2;
        for (size_t j = 0; j < count; j++)
            if (table[j * width + width - 1] == 0.0)
                memmove(table + width * good++, table + j * width, width * sizeof(double));
        time = time_of(row, table, good);
        sum += time;
        above += time > 50.0;
        if (time > slowest) {
            slowest = time;
            slow = i;
        }
        free(table);
    }
    fclose(file);
    printf("all %lu formulas: mean %.0f ns, %lu above 50 ns, slowest %s with %.0f ns\n", (unsigned long)formula_table_length,
           sum / (double)formula_table_length, (unsigned long)above, formula_table[slow].name, slowest);
    return 0;
}
