/* What the extension calls of DuckDB's stable C interface v1.2.0, at its place in the table of functions that DuckDB hands over.
   The places are those of duckdb_extension.h, which is published with DuckDB (MIT license); they never change within v1. */
#ifndef POUR_DUCKDB_API_H
#define POUR_DUCKDB_API_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#define DUCKDB_API_VERSION "v1.2.0"

typedef uint64_t idx_t;
typedef enum { DUCKDB_SUCCESS = 0, DUCKDB_ERROR = 1 } duckdb_state;

typedef enum {
    DUCKDB_TYPE_TINYINT = 2,
    DUCKDB_TYPE_SMALLINT = 3,
    DUCKDB_TYPE_INTEGER = 4,
    DUCKDB_TYPE_BIGINT = 5,
    DUCKDB_TYPE_UTINYINT = 6,
    DUCKDB_TYPE_USMALLINT = 7,
    DUCKDB_TYPE_UINTEGER = 8,
    DUCKDB_TYPE_UBIGINT = 9,
    DUCKDB_TYPE_FLOAT = 10,
    DUCKDB_TYPE_DOUBLE = 11,
    DUCKDB_TYPE_HUGEINT = 16,
    DUCKDB_TYPE_VARCHAR = 17,
    DUCKDB_TYPE_DECIMAL = 19,
    DUCKDB_TYPE_LIST = 24,
    DUCKDB_TYPE_STRUCT = 25,
    DUCKDB_TYPE_ANY = 34,
    DUCKDB_TYPE_SQLNULL = 36,
} duckdb_type;

typedef struct duckdb_database_body *duckdb_database;
typedef struct duckdb_connection_body *duckdb_connection;
typedef struct duckdb_logical_type_body *duckdb_logical_type;
typedef struct duckdb_data_chunk_body *duckdb_data_chunk;
typedef struct duckdb_vector_body *duckdb_vector;
typedef struct duckdb_scalar_function_body *duckdb_scalar_function;
typedef struct duckdb_function_info_body *duckdb_function_info;
typedef struct duckdb_extension_info_body *duckdb_extension_info;
typedef void (*duckdb_scalar_function_t)(duckdb_function_info info, duckdb_data_chunk input, duckdb_vector output);
typedef void (*duckdb_delete_callback_t)(void *data);

/* A text in a vector: up to 12 bytes in place. */
typedef union {
    struct {
        uint32_t length;
        char prefix[4];
        const char *letters;
    } pointer;
    struct {
        uint32_t length;
        char letters[12];
    } inlined;
} duckdb_string_t;

typedef struct {
    uint64_t offset;
    uint64_t length;
} duckdb_list_entry;

typedef struct {
    uint64_t lower;
    int64_t upper;
} duckdb_hugeint;

struct duckdb_extension_access {
    void (*set_error)(duckdb_extension_info info, const char *error);
    duckdb_database *(*get_database)(duckdb_extension_info info);
    const void *(*get_api)(duckdb_extension_info info, const char *version);
};

struct duckdb_api {
    void (*up_to_2[3])(void);
    duckdb_state (*connect)(duckdb_database database, duckdb_connection *out_connection);
    void (*up_to_5[2])(void);
    void (*disconnect)(duckdb_connection *connection);
    void (*up_to_24[18])(void);
    void (*free)(void *ptr);
    void (*up_to_155[130])(void);
    duckdb_logical_type (*create_logical_type)(duckdb_type type);
    void (*up_to_158[2])(void);
    duckdb_logical_type (*create_list_type)(duckdb_logical_type type);
    void (*up_to_162[3])(void);
    duckdb_logical_type (*create_struct_type)(duckdb_logical_type *member_types, const char **member_names, idx_t member_count);
    void (*up_to_165[2])(void);
    duckdb_type (*get_type_id)(duckdb_logical_type type);
    void (*up_to_167[1])(void);
    uint8_t (*decimal_scale)(duckdb_logical_type type);
    duckdb_type (*decimal_internal_type)(duckdb_logical_type type);
    void (*up_to_174[5])(void);
    idx_t (*array_type_array_size)(duckdb_logical_type type);
    void (*up_to_177[2])(void);
    idx_t (*struct_type_child_count)(duckdb_logical_type type);
    char *(*struct_type_child_name)(duckdb_logical_type type, idx_t index);
    void (*up_to_183[4])(void);
    void (*destroy_logical_type)(duckdb_logical_type *type);
    void (*up_to_188[4])(void);
    idx_t (*data_chunk_get_column_count)(duckdb_data_chunk chunk);
    duckdb_vector (*data_chunk_get_vector)(duckdb_data_chunk chunk, idx_t col_idx);
    idx_t (*data_chunk_get_size)(duckdb_data_chunk chunk);
    void (*up_to_192[1])(void);
    duckdb_logical_type (*vector_get_column_type)(duckdb_vector vector);
    void *(*vector_get_data)(duckdb_vector vector);
    uint64_t *(*vector_get_validity)(duckdb_vector vector);
    void (*vector_ensure_validity_writable)(duckdb_vector vector);
    void (*up_to_197[1])(void);
    void (*vector_assign_string_element_len)(duckdb_vector vector, idx_t index, const char *str, idx_t str_len);
    duckdb_vector (*list_vector_get_child)(duckdb_vector vector);
    idx_t (*list_vector_get_size)(duckdb_vector vector);
    duckdb_state (*list_vector_set_size)(duckdb_vector vector, idx_t size);
    duckdb_state (*list_vector_reserve)(duckdb_vector vector, idx_t required_capacity);
    duckdb_vector (*struct_vector_get_child)(duckdb_vector vector, idx_t index);
    duckdb_vector (*array_vector_get_child)(duckdb_vector vector);
    void (*up_to_208[4])(void);
    duckdb_scalar_function (*create_scalar_function)(void);
    void (*destroy_scalar_function)(duckdb_scalar_function *scalar_function);
    void (*scalar_function_set_name)(duckdb_scalar_function scalar_function, const char *name);
    void (*scalar_function_set_varargs)(duckdb_scalar_function scalar_function, duckdb_logical_type type);
    void (*scalar_function_set_special_handling)(duckdb_scalar_function scalar_function);
    void (*up_to_214[1])(void);
    void (*scalar_function_add_parameter)(duckdb_scalar_function scalar_function, duckdb_logical_type type);
    void (*scalar_function_set_return_type)(duckdb_scalar_function scalar_function, duckdb_logical_type type);
    void (*scalar_function_set_extra_info)(duckdb_scalar_function scalar_function, void *extra_info, duckdb_delete_callback_t destroy);
    void (*scalar_function_set_function)(duckdb_scalar_function scalar_function, duckdb_scalar_function_t function);
    duckdb_state (*register_scalar_function)(duckdb_connection con, duckdb_scalar_function scalar_function);
    void *(*scalar_function_get_extra_info)(duckdb_function_info info);
    void (*scalar_function_set_error)(duckdb_function_info info, const char *error);
};

/* Filled before anything else is done. */
extern struct duckdb_api duck;

#endif
