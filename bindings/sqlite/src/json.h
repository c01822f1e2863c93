/* Reads JSON, piece by piece: lists that are arguments, and plans. */
#ifndef POUR_JSON_H
#define POUR_JSON_H

#include <stddef.h>

/* A text that is not read yet. */
struct json {
    const char *at, *end;
};

/* Makes ready what reading numbers needs; 0 where there is no memory. */
int json_begin(void);

struct json json_of(const char *text, size_t length);

/* Whether the next letter but spaces is this; it is then read. */
int json_take(struct json *from, char letter);

/* Whether nothing but spaces is left. */
int json_is_over(struct json *from);

/* Reads a number to the nearest double; 0 where there is none. */
int json_number(struct json *from, double *number);

/* Reads a string; NULL where there is none. Freed by sqlite3_free. */
char *json_string(struct json *from);

/* Passes over a value; 0 where there is none, or it is nested too deeply. */
int json_skip(struct json *from);

/* Finds the value at a path of names, such as "plan.pots", in an object; 0 where there is none, or it is null. */
int json_find(struct json object, const char *path, struct json *value);

#endif
