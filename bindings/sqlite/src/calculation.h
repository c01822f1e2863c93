/* A calculation as data, and its call with arguments of SQL. */
#ifndef POUR_CALCULATION_H
#define POUR_CALCULATION_H

#include <pourwright.h>

enum kind { NUMBER, COUNT, TEXT, WORD, LIST };

/* A number of each element of a list. */
struct column {
    const char *name;
    /* What an amount as a text is converted to; NULL where a number must be given. */
    const char *amount_unit;
};

struct parameter {
    const char *name;
    enum kind kind;
    int is_optional;
    /* As of a column. */
    const char *amount_unit;
    const char *unit;
    const char *if_omitted;
    const char *allowed;
    /* Of a word, ended by NULL; its place is counted from 1. */
    const char *const *words;
    /* Of a list. */
    const struct column *columns;
    int column_count;
    const char *text;
};

struct result {
    const char *name;
    enum kind kind;
    int is_optional;
    const char *unit;
    /* Number of counts in a list. */
    int places;
    const char *const *words;
    const char *text;
};

/* The maximum number of counts in a result that is a list. */
#define MOST_PLACES 8
/* The maximum number of parameters and of results. */
#define MOST_PARAMETERS 32

/* A parameter as C takes it. */
struct argument {
    double number;
    uint32_t count;
    int32_t word;
    const char *text;
    double *list;
    size_t rows;
};

/* A result as C gives it. */
struct value {
    double number;
    uint32_t count;
    int32_t word;
    uint32_t counts[MOST_PLACES];
};

struct calculation {
    /* As SQL has it: pour_piece_mass. */
    const char *name;
    int parameter_count;
    int required_count;
    int result_count;
    const struct parameter *parameters;
    const struct result *results;
    int32_t (*call)(const struct argument *given, struct value *found, pour_error **error);
    const char *text;
};

extern const struct calculation pour_calculations[];
extern const int pour_calculation_count;

#endif
