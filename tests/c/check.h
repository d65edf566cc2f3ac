/* What the C tests share: counted checks, whole files, CSV. */
#ifndef CHECK_H
#define CHECK_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static int check_passed, check_failed;

#define CHECK(condition) check_that((condition) != 0, #condition, __FILE__, __LINE__, "")
#define CHECK_OF(condition, what) check_that((condition) != 0, #condition, __FILE__, __LINE__, (what))

static inline int check_that(int holds, const char *condition, const char *file, int line, const char *what)
{
    if (holds) {
        check_passed++;
    } else {
        if (check_failed++ < 20)
            printf("%s:%d: not so: %s %s\n", file, line, condition, what);
    }
    return holds;
}

static inline int check_end(const char *name)
{
    printf("%s: %d passed, %d failed\n", name, check_passed, check_failed);
    return check_failed != 0 || check_passed == 0;
}

/* A whole file, ended with a NUL; the program ends where it cannot be read. */
static inline char *read_file(const char *path, size_t *length)
{
    FILE *file = fopen(path, "rb");
    char *text;
    long size;
    if (file == NULL || fseek(file, 0, SEEK_END) != 0 || (size = ftell(file)) < 0) {
        printf("%s cannot be read\n", path);
        exit(2);
    }
    rewind(file);
    text = (char *)malloc((size_t)size + 1);
    if (text == NULL || fread(text, 1, (size_t)size, file) != (size_t)size) {
        printf("%s cannot be read\n", path);
        exit(2);
    }
    fclose(file);
    text[size] = 0;
    if (length != NULL)
        *length = (size_t)size;
    return text;
}

#define CSV_COLUMNS 16

/* The next row of CSV in place; how many columns it has, 0 at the end. */
static inline int csv_row(char **at, char *columns[CSV_COLUMNS])
{
    char *in = *at, *out;
    int count = 0;
    if (*in == 0)
        return 0;
    for (;;) {
        int end;
        if (count == CSV_COLUMNS) {
            printf("more than %d columns\n", CSV_COLUMNS);
            exit(2);
        }
        columns[count++] = out = in;
        if (*in == '"') {
            in++;
            while (*in != 0 && (in[0] != '"' || in[1] == '"')) {
                if (*in == '"')
                    in++;
                *out++ = *in++;
            }
            if (*in == '"')
                in++;
        } else {
            while (*in != 0 && *in != ',' && *in != '\n' && *in != '\r')
                *out++ = *in++;
        }
        while (*in == '\r')
            in++;
        end = *in;
        *out = 0;
        if (end != 0)
            in++;
        if (end != ',')
            break;
    }
    *at = in;
    return count;
}

#endif
