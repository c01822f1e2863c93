/* Vectors of DuckDB: their types, numbers and texts. */
#include "vector.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct vector vector_of(duckdb_vector handle)
{
    duckdb_logical_type type = duck.vector_get_column_type(handle);
    struct vector vector = {handle, duck.get_type_id(type), 0, 0, duck.vector_get_data(handle),
                            duck.vector_get_validity(handle)};

    if (vector.type == DUCKDB_TYPE_DECIMAL) {
        vector.stored = duck.decimal_internal_type(type);
        vector.scale = duck.decimal_scale(type);
    }
    duck.destroy_logical_type(&type);
    return vector;
}

int has_numbers(const struct vector *vector)
{
    switch (vector->type) {
    case DUCKDB_TYPE_TINYINT:
    case DUCKDB_TYPE_SMALLINT:
    case DUCKDB_TYPE_INTEGER:
    case DUCKDB_TYPE_BIGINT:
    case DUCKDB_TYPE_UTINYINT:
    case DUCKDB_TYPE_USMALLINT:
    case DUCKDB_TYPE_UINTEGER:
    case DUCKDB_TYPE_UBIGINT:
    case DUCKDB_TYPE_HUGEINT:
    case DUCKDB_TYPE_FLOAT:
    case DUCKDB_TYPE_DOUBLE:
    case DUCKDB_TYPE_DECIMAL:
        return 1;
    default:
        return 0;
    }
}

/* The nearest double to whole / 10^scale: through its decimal text, which strtod rounds once. */
static double decimal(duckdb_hugeint whole, int scale)
{
    char digits[64];
    int at = sizeof digits - 1, is_negative = whole.upper < 0;
    uint64_t high = (uint64_t)whole.upper, low = whole.lower;

    if (is_negative) {
        low = ~low + 1;
        high = ~high + (low == 0);
    }
    digits[at] = 0;
    at -= snprintf(NULL, 0, "e-%d", scale);
    sprintf(digits + at, "e-%d", scale);
    do {
        /* Divides both halves by ten, 32 bits at a time. */
        uint64_t parts[4] = {high >> 32, high & 0xffffffff, low >> 32, low & 0xffffffff}, rest = 0;

        for (int part = 0; part < 4; part++) {
            rest = rest << 32 | parts[part];
            parts[part] = rest / 10;
            rest %= 10;
        }
        high = parts[0] << 32 | parts[1];
        low = parts[2] << 32 | parts[3];
        digits[--at] = (char)('0' + rest);
    } while (high || low);
    return is_negative ? -strtod(digits + at, NULL) : strtod(digits + at, NULL);
}

static double whole_at(const struct vector *vector, duckdb_type type, idx_t row, int scale)
{
    static const double powers[] = {1,    1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                                    1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};
    duckdb_hugeint huge;
    int64_t whole;

    switch (type) {
    case DUCKDB_TYPE_TINYINT:
        whole = ((const int8_t *)vector->data)[row];
        break;
    case DUCKDB_TYPE_SMALLINT:
        whole = ((const int16_t *)vector->data)[row];
        break;
    case DUCKDB_TYPE_INTEGER:
        whole = ((const int32_t *)vector->data)[row];
        break;
    case DUCKDB_TYPE_UTINYINT:
        whole = ((const uint8_t *)vector->data)[row];
        break;
    case DUCKDB_TYPE_USMALLINT:
        whole = ((const uint16_t *)vector->data)[row];
        break;
    case DUCKDB_TYPE_UINTEGER:
        whole = ((const uint32_t *)vector->data)[row];
        break;
    case DUCKDB_TYPE_UBIGINT:
        return (double)((const uint64_t *)vector->data)[row];
    case DUCKDB_TYPE_HUGEINT:
        return decimal(((const duckdb_hugeint *)vector->data)[row], scale);
    default:
        whole = ((const int64_t *)vector->data)[row];
    }
    /* Both are doubles then, and the quotient is rounded once. */
    if (scale == 0 || (scale <= 22 && whole <= INT64_C(1) << 53 && whole >= -(INT64_C(1) << 53)))
        return (double)whole / powers[scale];
    huge.lower = (uint64_t)whole;
    huge.upper = whole < 0 ? -1 : 0;
    return decimal(huge, scale);
}

double number_at(const struct vector *vector, idx_t row)
{
    switch (vector->type) {
    case DUCKDB_TYPE_DOUBLE:
        return ((const double *)vector->data)[row];
    case DUCKDB_TYPE_FLOAT:
        return (double)((const float *)vector->data)[row];
    case DUCKDB_TYPE_DECIMAL:
        return whole_at(vector, vector->stored, row, vector->scale);
    default:
        return whole_at(vector, vector->type, row, 0);
    }
}

const char *text_at(const struct vector *vector, idx_t row, size_t *length)
{
    const duckdb_string_t *text = &((const duckdb_string_t *)vector->data)[row];

    *length = text->inlined.length;
    return *length <= sizeof text->inlined.letters ? text->inlined.letters : text->pointer.letters;
}

idx_t field_count(const struct vector *vector)
{
    duckdb_logical_type type = duck.vector_get_column_type(vector->handle);
    idx_t count = duck.struct_type_child_count(type);

    duck.destroy_logical_type(&type);
    return count;
}

int field_of(const struct vector *vector, const char *name, struct vector *field)
{
    duckdb_logical_type type = duck.vector_get_column_type(vector->handle);
    idx_t count = duck.struct_type_child_count(type);
    int is_found = 0;

    for (idx_t place = 0; place < count && !is_found; place++) {
        char *known = duck.struct_type_child_name(type, place);

        is_found = known && strcmp(known, name) == 0;
        if (is_found)
            *field = vector_of(duck.struct_vector_get_child(vector->handle, place));
        duck.free(known);
    }
    duck.destroy_logical_type(&type);
    return is_found;
}

void set_null(duckdb_vector vector, idx_t row)
{
    duck.vector_ensure_validity_writable(vector);
    duck.vector_get_validity(vector)[row / 64] &= ~(UINT64_C(1) << (row % 64));
}
