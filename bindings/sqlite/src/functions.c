/* The list of all functions. */
#include "sql.h"

SQLITE_EXTENSION_INIT3

const struct own_function own_functions[] = {
    {"pour_version", "Version of the library."},
    {"pour_answer", "Answers a request, JSON in, JSON out: {\"result\": ...}, or {\"faults\": [...]} of a request with "
                    "faults. With a book as second argument, requests leave theirs out."},
    {"pour_try", "Calls the function that its first argument names with the others: NULL in place of an error of the data."},
    {"pour_why", "The error of such a call as a text, or NULL where it has none."},
    {"pour_plan", "A day's plan, from a book and orders as JSON: a row for each pot. A table."},
    {"pour_weigh", "What to weigh on the day, from a book and orders as JSON: a row for each line. A table."},
    {"pour_functions", "This list. A table."},
    {NULL, NULL},
};

static const char *const no_parameters[] = {NULL};

static const char *const kinds[] = {"number", "count", "text", "word", "list"};

static struct cell words_of(const char *const *words)
{
    sqlite3_str *text;

    if (!words)
        return cell_constant(NULL);
    text = sqlite3_str_new(NULL);
    for (int place = 0; words[place]; place++)
        sqlite3_str_appendf(text, "%s%s", place > 0 ? ", " : "", words[place]);
    return cell_text(sqlite3_str_finish(text));
}

static struct cell *add(struct rows *rows, const char *function, const char *role, int place, const char *name,
                        const char *text)
{
    struct cell *row = rows_add(rows);

    if (!row)
        return NULL;
    row[0] = cell_constant(function);
    row[1] = cell_constant(role);
    row[2] = cell_integer(place);
    row[3] = cell_constant(name);
    row[10] = cell_constant(text);
    return row;
}

static int add_calculation(struct rows *rows, const struct calculation *calculation)
{
    if (!add(rows, calculation->name, "function", 0, NULL, calculation->text))
        return 0;
    for (int place = 0; place < calculation->parameter_count; place++) {
        const struct parameter *parameter = &calculation->parameters[place];
        struct cell *row = add(rows, calculation->name, "parameter", place + 1, parameter->name, parameter->text);

        if (!row)
            return 0;
        row[4] = cell_constant(kinds[parameter->kind]);
        row[5] = cell_constant(parameter->unit);
        row[6] = cell_integer(parameter->is_optional);
        row[7] = cell_constant(parameter->if_omitted);
        row[8] = cell_constant(parameter->allowed);
        row[9] = words_of(parameter->words);
    }
    for (int place = 0; place < calculation->result_count; place++) {
        const struct result *result = &calculation->results[place];
        struct cell *row = add(rows, calculation->name, "result", place + 1, result->name, result->text);

        if (!row)
            return 0;
        row[4] = cell_constant(kinds[result->kind]);
        row[5] = cell_constant(result->unit);
        row[6] = cell_integer(result->is_optional);
        row[9] = words_of(result->words);
    }
    return 1;
}

static enum outcome fill(struct shop *shop, int count, sqlite3_value **given, struct rows *rows, char **message)
{
    (void)shop;
    (void)count;
    (void)given;
    (void)message;
    for (int index = 0; index < pour_calculation_count; index++)
        if (!add_calculation(rows, &pour_calculations[index]))
            return NO_MEMORY;
    for (int index = 0; own_functions[index].name; index++)
        if (!add(rows, own_functions[index].name, "function", 0, NULL, own_functions[index].text))
            return NO_MEMORY;
    return FOUND;
}

const struct table functions_table = {
    "pour_functions",
    "function TEXT, role TEXT, place INTEGER, name TEXT, kind TEXT, unit TEXT, optional INTEGER, if_omitted TEXT, "
    "allowed TEXT, words TEXT, text TEXT",
    11,
    no_parameters,
    fill,
};
