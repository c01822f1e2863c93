/* Arguments of SQL to those of C, and results back. */
#include "json.h"
#include "sql.h"

#include <float.h>
#include <string.h>

SQLITE_EXTENSION_INIT3

const struct calculation *find_calculation(const char *name)
{
    for (int index = 0; index < pour_calculation_count; index++)
        if (strcmp(pour_calculations[index].name, name) == 0)
            return &pour_calculations[index];
    return NULL;
}

/* Begins a new line behind the name of the function, or below the fault before. */
static void add_fault(sqlite3_str *message, const char *path, const char *text, const char *help, const char *code)
{
    if (sqlite3_str_length(message) > 0)
        sqlite3_str_appendchar(message, 1, '\n');
    if (*path)
        sqlite3_str_appendf(message, "%s: ", path);
    sqlite3_str_appendf(message, "%s", text);
    if (*help)
        sqlite3_str_appendf(message, " %s", help);
    sqlite3_str_appendf(message, " [%s]", code);
}

void add_faults(sqlite3_str *message, const char *path, int is_document, pour_error *error)
{
    size_t count = pour_error_count(error);

    for (size_t index = 0; index < count; index++) {
        const char *of_fault = pour_error_path(error, index), *own = of_fault + (*of_fault == '/');
        char *below = path && is_document ? sqlite3_mprintf("%s%s", path, of_fault) : NULL;

        add_fault(message, below ? below : path ? path : own, pour_error_message(error, index),
                  pour_error_help(error, index), pour_error_code(error, index));
        sqlite3_free(below);
    }
    pour_error_free(error);
}

static const char *type_of(sqlite3_value *value)
{
    switch (sqlite3_value_type(value)) {
    case SQLITE_TEXT:
        return "a text";
    case SQLITE_BLOB:
        return "a blob";
    case SQLITE_NULL:
        return "NULL";
    default:
        return "a number";
    }
}

/* What is wrong with the type of an argument. */
static void wrong_type(sqlite3_str *message, const char *path, sqlite3_value *value, const char *wanted)
{
    char *text = sqlite3_mprintf("It is %s; it must be %s.", type_of(value), wanted);

    add_fault(message, path, text ? text : "Of a wrong type.", "", "wrong-type");
    sqlite3_free(text);
}

/* A number of the host, which must not look as if it were omitted. */
static int is_number(double number, sqlite3_str *message, const char *path)
{
    if (number != POUR_OMITTED)
        return 1;
    add_fault(message, path, "It is -1.7976931348623157e308, which no number is.", "", "out-of-range");
    return 0;
}

/* An amount as a text, in the unit of its parameter. */
static int amount(const char *text, const char *unit, int32_t measures, double *number, sqlite3_str *message,
                  const char *path)
{
    pour_error *error = NULL;

    if (pour_convert(text, unit, measures, number, &error) == POUR_OK)
        return 1;
    add_faults(message, path, 0, error);
    return 0;
}

/* A text that C can read to its end. */
static const char *text_of(sqlite3_value *value, sqlite3_str *message, const char *path)
{
    const char *text = (const char *)sqlite3_value_text(value);

    if (text && strlen(text) == (size_t)sqlite3_value_bytes(value))
        return text;
    add_fault(message, path, "The text has a NUL in it.", "Leave it out.", "wrong-type");
    return NULL;
}

/* The numbers of one element of a list; the list is at its start. */
static int element(struct json *from, const struct parameter *parameter, size_t row, int32_t measures, double *to,
                   sqlite3_str *message)
{
    int is_row = parameter->column_count > 1, is_right = 1;

    if (is_row && !json_take(from, '['))
        return 0;
    for (int place = 0; place < parameter->column_count; place++) {
        const struct column *column = &parameter->columns[place];
        char *path, *text;

        if (place > 0 && !json_take(from, ','))
            return 0;
        if (json_number(from, &to[place])) {
            if (to[place] == POUR_OMITTED)
                return 0;
            continue;
        }
        text = column->amount_unit ? json_string(from) : NULL;
        path = is_row ? sqlite3_mprintf("%s/%d/%d", parameter->name, (int)row, place)
                      : sqlite3_mprintf("%s/%d", parameter->name, (int)row);
        if (text && path)
            is_right &= amount(text, column->amount_unit, measures, &to[place], message, path);
        sqlite3_free(path);
        sqlite3_free(text);
        if (!text)
            return 0;
    }
    return (!is_row || json_take(from, ']')) ? (is_right ? 1 : 2) : 0;
}

static void wrong_list(sqlite3_str *message, const struct parameter *parameter)
{
    sqlite3_str *help = sqlite3_str_new(NULL);
    int is_row = parameter->column_count > 1;
    char *text;

    sqlite3_str_appendf(help, "Give a JSON array, such as json_group_array makes it, of %s",
                        is_row ? "arrays of" : "numbers");
    for (int place = 0; place < parameter->column_count && is_row; place++)
        sqlite3_str_appendf(help, "%s %s", place > 0 ? "," : "", parameter->columns[place].name);
    if (!is_row && parameter->columns[0].amount_unit)
        sqlite3_str_appendf(help, " in %s, or of amounts as texts", parameter->columns[0].amount_unit);
    sqlite3_str_appendchar(help, 1, '.');
    text = sqlite3_str_finish(help);
    add_fault(message, parameter->name, "It is not such a list.", text ? text : "", "wrong-type");
    sqlite3_free(text);
}

/* A list, as JSON. */
static void list(sqlite3_value *value, const struct parameter *parameter, int32_t measures, struct argument *to,
                 sqlite3_str *message)
{
    const char *text = sqlite3_value_type(value) == SQLITE_TEXT ? (const char *)sqlite3_value_text(value) : NULL;
    struct json from = json_of(text, text ? (size_t)sqlite3_value_bytes(value) : 0);
    size_t room = 0, columns = (size_t)parameter->column_count;
    int is_over;

    if (!text || !json_take(&from, '[')) {
        wrong_list(message, parameter);
        return;
    }
    is_over = json_take(&from, ']');
    /* An array of nothing is not a null pointer, which omits the parameter. */
    to->list = sqlite3_malloc64(columns * sizeof(double));
    if (!to->list)
        is_over = 0;
    while (!is_over && to->list) {
        int found;

        if (to->rows == room) {
            double *more;

            room = 2 * room + 8;
            more = sqlite3_realloc64(to->list, room * columns * sizeof(double));
            if (!more)
                break;
            to->list = more;
        }
        found = element(&from, parameter, to->rows, measures, to->list + to->rows * columns, message);
        to->rows++;
        is_over = json_take(&from, ']');
        if (!found || (!is_over && !json_take(&from, ','))) {
            wrong_list(message, parameter);
            return;
        }
    }
    if (!is_over)
        add_fault(message, parameter->name, "There is no memory for the list.", "", "out-of-memory");
    else if (!json_is_over(&from))
        wrong_list(message, parameter);
}

static void count_of(sqlite3_value *value, const struct parameter *parameter, struct argument *to,
                     sqlite3_str *message)
{
    int type = sqlite3_value_type(value);
    double number = sqlite3_value_double(value);
    char *text;

    if (type != SQLITE_INTEGER && type != SQLITE_FLOAT) {
        wrong_type(message, parameter->name, value, "a whole number");
    } else if (number >= 0 && number < POUR_OMITTED_COUNT && number == (double)(uint32_t)number) {
        to->count = (uint32_t)number;
    } else {
        text = sqlite3_mprintf("It is %!.17g; it must be a whole number: %s.", number, parameter->allowed);
        add_fault(message, parameter->name, text ? text : "It is out of range.", "", "out-of-range");
        sqlite3_free(text);
    }
}

static void word_of(sqlite3_value *value, const struct parameter *parameter, struct argument *to,
                    sqlite3_str *message)
{
    const char *text;
    sqlite3_str *known;
    char *help;

    if (sqlite3_value_type(value) != SQLITE_TEXT) {
        wrong_type(message, parameter->name, value, "a word");
        return;
    }
    text = text_of(value, message, parameter->name);
    if (!text)
        return;
    known = sqlite3_str_new(NULL);
    for (int place = 0; parameter->words[place]; place++) {
        if (strcmp(parameter->words[place], text) == 0)
            to->word = place + 1;
        sqlite3_str_appendf(known, "%s%s", place > 0 ? ", " : "Known: ", parameter->words[place]);
    }
    help = sqlite3_str_finish(known);
    if (to->word == 0)
        add_fault(message, parameter->name, "There is no such word.", help ? help : "", "unknown-word");
    sqlite3_free(help);
}

static void number_of(sqlite3_value *value, const struct parameter *parameter, int32_t measures, struct argument *to,
                      sqlite3_str *message)
{
    int type = sqlite3_value_type(value);
    const char *text;

    if (type == SQLITE_INTEGER || type == SQLITE_FLOAT) {
        to->number = sqlite3_value_double(value);
        is_number(to->number, message, parameter->name);
    } else if (type == SQLITE_TEXT && parameter->amount_unit) {
        text = text_of(value, message, parameter->name);
        if (text)
            amount(text, parameter->amount_unit, measures, &to->number, message, parameter->name);
    } else {
        wrong_type(message, parameter->name, value,
                   parameter->amount_unit ? "a number, or an amount as a text" : "a number");
    }
}

static void read_argument(sqlite3_value *value, const struct parameter *parameter, int32_t measures,
                          struct argument *to, sqlite3_str *message)
{
    switch (parameter->kind) {
    case NUMBER:
        number_of(value, parameter, measures, to, message);
        break;
    case COUNT:
        count_of(value, parameter, to, message);
        break;
    case WORD:
        word_of(value, parameter, to, message);
        break;
    case LIST:
        list(value, parameter, measures, to, message);
        break;
    case TEXT:
        if (sqlite3_value_type(value) == SQLITE_TEXT)
            to->text = text_of(value, message, parameter->name);
        else
            wrong_type(message, parameter->name, value, "a text");
        break;
    }
}

static struct cell cell_of(const struct result *result, const struct value *value)
{
    static const struct cell nothing;
    sqlite3_str *list;

    switch (result->kind) {
    case NUMBER:
        return value->number == value->number ? cell_real(value->number) : nothing;
    case COUNT:
        return value->count == POUR_OMITTED_COUNT ? nothing : cell_integer(value->count);
    case WORD:
        return value->word > 0 ? cell_constant(result->words[value->word - 1]) : nothing;
    case TEXT:
        return nothing;
    case LIST:
        break;
    }
    list = sqlite3_str_new(NULL);
    for (int place = 0; place < result->places; place++)
        sqlite3_str_appendf(list, "%s%u", place > 0 ? "," : "[", (unsigned)value->counts[place]);
    sqlite3_str_appendchar(list, 1, ']');
    return cell_text(sqlite3_str_finish(list));
}

/* How the function is called: "pour_volume_of_mass(mass_g, density_g_per_ml)". */
static char *wrong_count(const struct calculation *calculation, int count)
{
    sqlite3_str *text = sqlite3_str_new(NULL);

    sqlite3_str_appendf(text, "%s takes %d", calculation->name, calculation->required_count);
    if (calculation->required_count < calculation->parameter_count)
        sqlite3_str_appendf(text, " to %d", calculation->parameter_count);
    sqlite3_str_appendf(text, " arguments, not %d: ", count);
    for (int place = 0; place < calculation->parameter_count; place++)
        sqlite3_str_appendf(text, "%s%s%s", place > 0 ? ", " : "", calculation->parameters[place].name,
                            calculation->parameters[place].is_optional ? " (optional)" : "");
    sqlite3_str_appendchar(text, 1, '.');
    return sqlite3_str_finish(text);
}

static int32_t measures_of(const struct calculation *calculation, int count, sqlite3_value **given)
{
    for (int place = 0; place < count; place++) {
        const struct parameter *parameter = &calculation->parameters[place];
        const char *text;

        if (parameter->kind != WORD || strcmp(parameter->name, "measures") != 0 || !given[place] ||
            sqlite3_value_type(given[place]) != SQLITE_TEXT)
            continue;
        text = (const char *)sqlite3_value_text(given[place]);
        for (int32_t word = 0; text && parameter->words[word]; word++)
            if (strcmp(parameter->words[word], text) == 0)
                return word + 1;
    }
    return 0;
}

enum outcome calculate(const struct calculation *calculation, int count, sqlite3_value **given, struct cell *found,
                       char **message)
{
    struct argument arguments[MOST_PARAMETERS];
    struct value values[MOST_PARAMETERS];
    sqlite3_str *faults;
    int32_t measures;
    pour_error *error = NULL;
    int is_known = 1;

    *message = NULL;
    if (count < calculation->required_count || count > calculation->parameter_count) {
        *message = wrong_count(calculation, count);
        return *message ? WRONG_QUERY : NO_MEMORY;
    }
    for (int place = 0; place < calculation->required_count; place++)
        if (given[place] && sqlite3_value_type(given[place]) == SQLITE_NULL)
            return NO_INPUT;
    measures = measures_of(calculation, count, given);
    faults = sqlite3_str_new(NULL);
    for (int place = 0; place < calculation->parameter_count; place++) {
        static const struct argument omitted = {POUR_OMITTED, POUR_OMITTED_COUNT, 0, NULL, NULL, 0};
        const struct parameter *parameter = &calculation->parameters[place];
        sqlite3_value *value = place < count ? given[place] : NULL;

        arguments[place] = omitted;
        if (value && sqlite3_value_type(value) != SQLITE_NULL)
            read_argument(value, parameter, measures, &arguments[place], faults);
        else if (!parameter->is_optional)
            add_fault(faults, parameter->name, "It is missing.", parameter->text, "missing-field");
    }
    if (sqlite3_str_length(faults) > 0)
        is_known = 0;
    else if (calculation->call(arguments, values, &error) != POUR_OK) {
        add_faults(faults, NULL, 0, error);
        is_known = 0;
    }
    for (int place = 0; place < calculation->parameter_count; place++)
        sqlite3_free(arguments[place].list);
    *message = sqlite3_str_finish(faults);
    if (!is_known)
        return *message ? REFUSED : NO_MEMORY;
    sqlite3_free(*message);
    *message = NULL;
    for (int place = 0; place < calculation->result_count; place++) {
        found[place] = cell_of(&calculation->results[place], &values[place]);
        if (calculation->results[place].kind == LIST && found[place].type == NOTHING)
            return NO_MEMORY;
    }
    return FOUND;
}
