/* The entry point: registers every calculation of the table, and functions on texts. */
#include "extension.h"

#include "calculation.h"
#include "vector.h"

#include <string.h>

struct duckdb_api duck;

static duckdb_logical_type result_type(const struct result *result)
{
    duckdb_logical_type counts, list;

    switch (result->kind) {
    case WORD:
        return duck.create_logical_type(DUCKDB_TYPE_VARCHAR);
    case LIST:
        counts = duck.create_logical_type(DUCKDB_TYPE_BIGINT);
        list = duck.create_list_type(counts);
        duck.destroy_logical_type(&counts);
        return list;
    default:
        return duck.create_logical_type(DUCKDB_TYPE_DOUBLE);
    }
}

/* The type of one result, or a struct of several. */
static duckdb_logical_type type_of(const struct calculation *calculation)
{
    static const char prefix[] = "result_";
    duckdb_logical_type parts[MOST_PARAMETERS], whole;
    const char *names[MOST_PARAMETERS];

    if (calculation->result_count == 1)
        return result_type(&calculation->results[0]);
    for (int place = 0; place < calculation->result_count; place++) {
        const char *name = calculation->results[place].name;

        parts[place] = result_type(&calculation->results[place]);
        /* A struct has no parameters among its fields. */
        names[place] = strncmp(name, prefix, strlen(prefix)) == 0 ? name + strlen(prefix) : name;
    }
    whole = duck.create_struct_type(parts, names, (idx_t)calculation->result_count);
    for (int place = 0; place < calculation->result_count; place++)
        duck.destroy_logical_type(&parts[place]);
    return whole;
}

static int add(duckdb_connection connection, const char *name, duckdb_scalar_function_t call, const void *data,
               int texts, int is_any, duckdb_logical_type gives)
{
    duckdb_scalar_function function = duck.create_scalar_function();
    duckdb_logical_type text = duck.create_logical_type(DUCKDB_TYPE_VARCHAR),
                        any = duck.create_logical_type(DUCKDB_TYPE_ANY);
    int is_added;

    duck.scalar_function_set_name(function, name);
    for (int place = 0; place < texts; place++)
        duck.scalar_function_add_parameter(function, text);
    if (is_any)
        duck.scalar_function_set_varargs(function, any);
    duck.scalar_function_set_return_type(function, gives);
    /* What is NULL is known here: a NULL as it is written omits a parameter. */
    duck.scalar_function_set_special_handling(function);
    duck.scalar_function_set_extra_info(function, (void *)(uintptr_t)data, NULL);
    duck.scalar_function_set_function(function, call);
    is_added = duck.register_scalar_function(connection, function) == DUCKDB_SUCCESS;
    duck.destroy_logical_type(&text);
    duck.destroy_logical_type(&any);
    duck.destroy_logical_type(&gives);
    duck.destroy_scalar_function(&function);
    return is_added;
}

/* pour_answer(request): the answer, or the faults. */
static void answer(duckdb_function_info info, duckdb_data_chunk input, duckdb_vector output)
{
    struct vector requests = vector_of(duck.data_chunk_get_vector(input, 0));
    idx_t rows = duck.data_chunk_get_size(input);

    for (idx_t row = 0; row < rows; row++) {
        size_t length, answered = 0;
        const char *request;
        char *text = NULL;
        pour_error *error = NULL;

        if (!is_valid(&requests, row)) {
            set_null(output, row);
            continue;
        }
        request = text_at(&requests, row, &length);
        if (pour_request(request, length, &text, &answered, &error) == POUR_OK) {
            duck.vector_assign_string_element_len(output, row, text, answered);
        } else if (error) {
            const char *faults = pour_error_json(error);

            duck.vector_assign_string_element_len(output, row, faults, strlen(faults));
        } else {
            duck.scalar_function_set_error(info, "There is no memory for the answer.");
        }
        pour_string_free(text);
        pour_error_free(error);
    }
}

static void version(duckdb_function_info info, duckdb_data_chunk input, duckdb_vector output)
{
    const char *text = pour_version();

    (void)info;
    for (idx_t row = 0; row < duck.data_chunk_get_size(input); row++)
        duck.vector_assign_string_element_len(output, row, text, strlen(text));
}

static duckdb_logical_type text_type(void)
{
    return duck.create_logical_type(DUCKDB_TYPE_VARCHAR);
}

__attribute__((visibility("default"))) bool pourwright_init_c_api(duckdb_extension_info info,
                                                                  struct duckdb_extension_access *access);

bool pourwright_init_c_api(duckdb_extension_info info, struct duckdb_extension_access *access)
{
    const void *api = access->get_api(info, DUCKDB_API_VERSION);
    duckdb_connection connection;
    int is_added;

    /* DuckDB has said why. */
    if (!api)
        return false;
    memcpy(&duck, api, sizeof duck);
    if (duck.connect(*access->get_database(info), &connection) != DUCKDB_SUCCESS) {
        access->set_error(info, "pourwright could not connect to the database.");
        return false;
    }
    is_added = add(connection, "pour_why", why, NULL, 1, 1, text_type()) &&
               add(connection, "pour_answer", answer, NULL, 1, 0, text_type()) &&
               add(connection, "pour_version", version, NULL, 0, 0, text_type());
    for (int place = 0; place < pour_calculation_count && is_added; place++) {
        const struct calculation *calculation = &pour_calculations[place];

        is_added = add(connection, calculation->name, calculate, calculation, 0, 1, type_of(calculation));
    }
    duck.disconnect(&connection);
    if (!is_added)
        access->set_error(info, "pourwright could not register its functions: one of their names is taken.");
    return is_added;
}
