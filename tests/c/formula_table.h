/* Every typed function by its index; the table is written by gullet-c-gen --test-table. */
#ifndef FORMULA_TABLE_H
#define FORMULA_TABLE_H

#include <gullet.h>

typedef struct formula_row {
    const char *name;
    const char *result_kind;
    const char *example;
    const char *expected;
    size_t argument_count;
    gullet_status (*one)(const double *arguments, double *result);
    gullet_status (*rows)(size_t count, const double *const *arguments, double *result, gullet_status *status);
} formula_row;

#define ARGUMENTS_MOST 12

extern const formula_row formula_table[];
extern const size_t formula_table_length;

#endif
