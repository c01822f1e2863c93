/* Shared by the test programs: checks that count failures, and reading whole files. */
#ifndef CHECK_H
#define CHECK_H

#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <pourwright.h>

/* A number that no call gives: results start with it, to check that a failed call does not write them. */
#define UNTOUCHED (-7777.125)

static int failures = 0;

#define CHECK(what) check((what) != 0, #what, __FILE__, __LINE__)

static inline void check(int holds, const char *what, const char *file, int line)
{
    if (!holds) {
        fprintf(stderr, "%s:%d: %s\n", file, line, what);
        failures++;
    }
}

/* The result of a call that succeeds: within 1e-12 of the expected one, relative. */
#define GIVES(call, found, wanted)                                                          \
    do {                                                                                    \
        pour_error *error = NULL;                                                           \
        found = UNTOUCHED;                                                                  \
        CHECK((call) == POUR_OK);                                                           \
        CHECK(error == NULL);                                                               \
        check(near((found), (wanted)), #call, __FILE__, __LINE__);                          \
        if (!near((found), (wanted))) fprintf(stderr, "  %.17g, not %.17g\n", (double)(found), (double)(wanted)); \
    } while (0)

static inline int near(double found, double wanted)
{
    double off = found - wanted, size = wanted < 0 ? -wanted : wanted;
    return (off < 0 ? -off : off) <= 1e-12 * size;
}

/* A call that fails: with this status, code and path, with and without a place for the error. */
#define FAILS(call, wanted_status, wanted_code, wanted_path)                                \
    do {                                                                                    \
        pour_error *kept = NULL, **error = &kept;                                           \
        int32_t status = (call);                                                            \
        failed_as(status, kept, wanted_status, wanted_code, wanted_path, #call, __FILE__, __LINE__); \
        pour_error_free(kept);                                                              \
        error = NULL;                                                                       \
        CHECK((call) == (wanted_status));                                                   \
    } while (0)

static inline void failed_as(int32_t status, const pour_error *error, int32_t wanted, const char *code,
                             const char *path, const char *call, const char *file, int line)
{
    int right = status == wanted && error != NULL && pour_error_status(error) == wanted
        && pour_error_count(error) >= 1 && strcmp(pour_error_code(error, 0), code) == 0
        && strcmp(pour_error_path(error, 0), path) == 0 && pour_error_message(error, 0)[0] != '\0'
        && pour_error_help(error, 0)[0] != '\0';
    check(right, call, file, line);
    if (!right) {
        fprintf(stderr, "  status %d, not %d; %s\n", (int)status, (int)wanted,
                error == NULL ? "no error" : pour_error_json(error));
    }
}

/* A call that is refused: with this status, and this fault among others. */
#define REFUSED(call, wanted_status, wanted_code, wanted_path)                              \
    do {                                                                                    \
        pour_error *kept = NULL, **error = &kept;                                           \
        int32_t status = (call);                                                            \
        refused_as(status, kept, wanted_status, wanted_code, wanted_path, #call, __FILE__, __LINE__); \
        pour_error_free(kept);                                                              \
    } while (0)

static inline void refused_as(int32_t status, const pour_error *error, int32_t wanted, const char *code,
                              const char *path, const char *call, const char *file, int line)
{
    size_t i;
    int right = 0;
    for (i = 0; i < pour_error_count(error); i++) {
        right |= strcmp(pour_error_code(error, i), code) == 0 && strcmp(pour_error_path(error, i), path) == 0
            && pour_error_message(error, i)[0] != '\0' && pour_error_help(error, i)[0] != '\0';
    }
    right = right && status == wanted && pour_error_status(error) == wanted;
    check(right, call, file, line);
    if (!right) {
        fprintf(stderr, "  status %d, not %d; %s\n", (int)status, (int)wanted,
                error == NULL ? "no error" : pour_error_json(error));
    }
}

/* Whether two numbers have the same bits. */
static inline int same(double found, double wanted)
{
    int same = memcmp(&found, &wanted, sizeof found) == 0;
    if (!same) fprintf(stderr, "  %.17g, not %.17g\n", found, wanted);
    return same;
}

/* Whether it is the NaN of a refused row or an absent result. */
static inline int canonical(double x)
{
    uint64_t bits;
    memcpy(&bits, &x, sizeof bits);
    return bits == UINT64_C(0x7ff8000000000000);
}

/* The text of a file, ended by a NUL, which the caller frees; the test ends if it cannot be read. */
static inline char *read_file(const char *path, size_t *len)
{
    FILE *file = fopen(path, "rb");
    char *text = NULL;
    long size;
    *len = 0;
    if (file != NULL && fseek(file, 0, SEEK_END) == 0 && (size = ftell(file)) >= 0
        && fseek(file, 0, SEEK_SET) == 0 && (text = malloc((size_t)size + 1)) != NULL) {
        *len = fread(text, 1, (size_t)size, file);
        text[*len] = '\0';
    }
    if (file == NULL || text == NULL) {
        fprintf(stderr, "%s cannot be read.\n", path);
        exit(2);
    }
    fclose(file);
    return text;
}

/* A text that grows; its `start` is freed by the caller. */
struct text {
    char *start;
    size_t len, room;
};

static inline void add(struct text *text, const char *format, ...)
{
    for (;;) {
        va_list rest;
        int len;
        va_start(rest, format);
        len = vsnprintf(text->start == NULL ? NULL : text->start + text->len, text->room - text->len, format, rest);
        va_end(rest);
        if (len < 0) exit(2);
        if ((size_t)len < text->room - text->len) {
            text->len += (size_t)len;
            return;
        }
        text->room = 2 * text->room + (size_t)len + 1;
        text->start = realloc(text->start, text->room);
        if (text->start == NULL) exit(2);
    }
}

/* Writes answers to the folder that POURWRIGHT_ANSWERS names, if it does. */
static inline void write_answers(const char *name, const struct text *answers)
{
    const char *folder = getenv("POURWRIGHT_ANSWERS");
    struct text path = {NULL, 0, 0};
    FILE *file;
    if (folder == NULL || *folder == '\0') return;
    add(&path, "%s/%s.jsonl", folder, name);
    file = fopen(path.start, "wb");
    CHECK(file != NULL && fwrite(answers->start, 1, answers->len, file) == answers->len && fclose(file) == 0);
    free(path.start);
}

static inline int outcome(const char *name)
{
    if (failures != 0) fprintf(stderr, "%s: %d checks failed\n", name, failures);
    return failures != 0;
}

#endif
