/* Vectors of DuckDB: their types, numbers and texts. */
#ifndef POUR_VECTOR_H
#define POUR_VECTOR_H

#include "duckdb_api.h"

/* A vector, or the cells of a list in it. */
struct vector {
    duckdb_vector handle;
    duckdb_type type;
    /* Of a decimal: how it is stored, and its places behind the point. */
    duckdb_type stored;
    int scale;
    const void *data;
    const uint64_t *validity;
};

struct vector vector_of(duckdb_vector handle);

static inline int is_valid(const struct vector *vector, idx_t row)
{
    return !vector->validity || (vector->validity[row / 64] >> (row % 64) & 1);
}

/* Whether it has numbers. */
int has_numbers(const struct vector *vector);

/* The number of a row: the nearest double. */
double number_at(const struct vector *vector, idx_t row);

/* The text of a row, which does not end with a NUL. */
const char *text_at(const struct vector *vector, idx_t row, size_t *length);

/* The field of a struct with this name; it has none where the result is 0. */
int field_of(const struct vector *vector, const char *name, struct vector *field);

/* The number of fields. */
idx_t field_count(const struct vector *vector);

void set_null(duckdb_vector vector, idx_t row);

#endif
