/* Chunks of DuckDB to calls of C, row by row, and results back. */
#include "extension.h"

#include "calculation.h"
#include "vector.h"

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* The longest text of an amount, a unit or a word. */
#define LONGEST_TEXT 4096
/* The maximum number of numbers in an item of a list. */
#define MOST_CELLS 8

/* Amounts of a chunk that are remembered, by a digest of their texts. */
#define MOST_KNOWN 1024

/* An amount that was read: the row that has its text, and the number in the unit of the parameter. */
struct known {
    idx_t row;
    double number;
    int32_t measures;
    int8_t is_amount, is_set;
};

/* A text that grows; it is not kept where there is no memory. */
struct message {
    char *text;
    size_t length, room;
};

static void say(struct message *message, const char *format, ...)
{
    va_list values;
    char *more;
    int length;

    if (!message)
        return;
    va_start(values, format);
    length = vsnprintf(NULL, 0, format, values);
    va_end(values);
    if (length < 0)
        return;
    if (message->length + (size_t)length + 1 > message->room) {
        size_t room = 2 * (message->length + (size_t)length + 1);

        more = realloc(message->text, room);
        if (!more)
            return;
        message->text = more;
        message->room = room;
    }
    va_start(values, format);
    vsnprintf(message->text + message->length, message->room - message->length, format, values);
    va_end(values);
    message->length += (size_t)length;
}

static void add_fault(struct message *message, const char *path, const char *text, const char *help, const char *code)
{
    say(message, "%s%s%s%s%s%s [%s]", message && message->length ? "\n" : "", path, *path ? ": " : "", text,
        *help ? " " : "", help, code);
}

/* The faults of the library, at this path instead of theirs where it is given. */
static void add_faults(struct message *message, const char *path, pour_error *error)
{
    for (size_t fault = 0; message && fault < pour_error_count(error); fault++) {
        const char *own = pour_error_path(error, fault);

        add_fault(message, path ? path : own + (*own == '/'), pour_error_message(error, fault),
                  pour_error_help(error, fault), pour_error_code(error, fault));
    }
    pour_error_free(error);
}

/* A parameter in a chunk: its vector, and what is kept from row to row. */
struct reader {
    const struct parameter *parameter;
    struct vector vector;
    /* Of a list: its items, and the cells of an item; one vector for all cells where the items are lists. */
    struct vector items, cells[MOST_CELLS];
    int is_nested;
    /* A text that ends. */
    char text[LONGEST_TEXT + 1];
    /* Of a number whose vector has texts: a table repeats them, and to find one again costs less than to read it. */
    struct known *known;
    /* The numbers of a list. */
    double *list;
    size_t room;
};

static int has_texts(const struct vector *vector)
{
    return vector->type == DUCKDB_TYPE_VARCHAR;
}

static int is_cell(const struct vector *vector, const char *unit)
{
    return has_numbers(vector) || (unit && has_texts(vector));
}

/* Whether the vector is of a type that the parameter takes. */
static int reader_open(struct reader *reader, const struct parameter *parameter, struct vector vector)
{
    reader->parameter = parameter;
    reader->vector = vector;
    reader->known = NULL;
    reader->list = NULL;
    reader->room = 0;
    reader->is_nested = 0;
    switch (parameter->kind) {
    case NUMBER:
        /* Without memory for it every text is read. */
        if (has_texts(&vector))
            reader->known = calloc(MOST_KNOWN, sizeof(struct known));
        return is_cell(&vector, parameter->amount_unit);
    case COUNT:
        return has_numbers(&vector);
    case TEXT:
    case WORD:
        return has_texts(&vector);
    case LIST:
        break;
    }
    if (vector.type != DUCKDB_TYPE_LIST)
        return 0;
    reader->items = vector_of(duck.list_vector_get_child(vector.handle));
    if (reader->items.type == DUCKDB_TYPE_SQLNULL)
        return 1;
    if (parameter->column_count == 1 && reader->items.type != DUCKDB_TYPE_LIST) {
        reader->cells[0] = reader->items;
        return is_cell(&reader->cells[0], parameter->columns[0].amount_unit);
    }
    if (reader->items.type == DUCKDB_TYPE_LIST) {
        reader->is_nested = 1;
        reader->cells[0] = vector_of(duck.list_vector_get_child(reader->items.handle));
        return has_numbers(&reader->cells[0]) && parameter->column_count > 1;
    }
    if (reader->items.type != DUCKDB_TYPE_STRUCT || field_count(&reader->items) != (idx_t)parameter->column_count)
        return 0;
    for (int place = 0; place < parameter->column_count; place++)
        if (!field_of(&reader->items, parameter->columns[place].name, &reader->cells[place]) ||
            !is_cell(&reader->cells[place], parameter->columns[place].amount_unit))
            return 0;
    return 1;
}

/* A text that ends, in the reader. */
static const char *ended(struct reader *reader, const struct vector *vector, idx_t row, const char *path,
                         struct message *message)
{
    size_t length;
    const char *letters = text_at(vector, row, &length);

    if (length > LONGEST_TEXT) {
        add_fault(message, path, "It is larger than 4096, the maximum that is read.", "Check the text.", "too-large");
        return NULL;
    }
    if (memchr(letters, 0, length)) {
        add_fault(message, path, "The text has a NUL in it.", "Leave it out.", "wrong-type");
        return NULL;
    }
    memcpy(reader->text, letters, length);
    reader->text[length] = 0;
    return reader->text;
}

/* What is remembered of the text of a row, or the place for it, which is then not set. */
static struct known *known_at(struct reader *reader, idx_t row, int32_t measures)
{
    size_t length, length_before;
    const char *letters = text_at(&reader->vector, row, &length), *before;
    uint64_t digest = UINT64_C(0xcbf29ce484222325);
    struct known *known;

    /* FNV-1a. */
    for (size_t letter = 0; letter < length; letter++)
        digest = (digest ^ (unsigned char)letters[letter]) * UINT64_C(0x100000001b3);
    known = &reader->known[(digest ^ digest >> 32) % MOST_KNOWN];
    if (!known->is_set)
        return known;
    before = text_at(&reader->vector, known->row, &length_before);
    if (known->measures != measures || length != length_before || memcmp(letters, before, length) != 0)
        known->is_set = 0;
    return known;
}

/* A number of a cell, which may be an amount as a text. */
static int number_of(struct reader *reader, const struct vector *vector, idx_t row, const char *unit, int32_t measures,
                     const char *path, double *number, struct message *message)
{
    struct known *known = NULL;
    pour_error *error = NULL;
    int is_amount;

    if (!has_texts(vector)) {
        *number = number_at(vector, row);
        if (*number != POUR_OMITTED)
            return 1;
        add_fault(message, path, "It is -1.7976931348623157e308, which no number is.", "", "out-of-range");
        return 0;
    }
    if (!message && reader->known) {
        known = known_at(reader, row, measures);
        if (known->is_set) {
            *number = known->number;
            return known->is_amount;
        }
    }
    *number = (double)NAN;
    if (!ended(reader, vector, row, path, message))
        return 0;
    is_amount = pour_convert(reader->text, unit, measures, number, message ? &error : NULL) == POUR_OK;
    if (error)
        add_faults(message, path, error);
    if (known)
        *known = (struct known){row, *number, measures, (int8_t)is_amount, 1};
    return is_amount;
}

/* The numbers of an item of a list. */
static int item_of(struct reader *reader, idx_t item, size_t place, double *to, struct message *message)
{
    const struct parameter *parameter = reader->parameter;
    char path[160];
    int is_right = 1;

    if (reader->items.type == DUCKDB_TYPE_SQLNULL || !is_valid(&reader->items, item)) {
        snprintf(path, sizeof path, "%s/%zu", parameter->name, place);
        add_fault(message, path, "It is NULL.", "Give a number.", "missing-field");
        return 0;
    }
    if (reader->is_nested &&
        ((const duckdb_list_entry *)reader->items.data)[item].length != (uint64_t)parameter->column_count) {
        snprintf(path, sizeof path, "%s/%zu", parameter->name, place);
        add_fault(message, path, "It is not a row of as many numbers as there are columns.", "", "wrong-type");
        return 0;
    }
    for (int cell = 0; cell < parameter->column_count; cell++) {
        const struct vector *cells = &reader->cells[reader->is_nested ? 0 : cell];
        idx_t at = reader->is_nested ? ((const duckdb_list_entry *)reader->items.data)[item].offset + (idx_t)cell : item;

        if (parameter->column_count > 1)
            snprintf(path, sizeof path, "%s/%zu/%d", parameter->name, place, cell);
        else
            snprintf(path, sizeof path, "%s/%zu", parameter->name, place);
        if (!is_valid(cells, at)) {
            add_fault(message, path, "It is NULL.", "Give a number.", "missing-field");
            is_right = 0;
        } else {
            is_right &= number_of(reader, cells, at, parameter->columns[cell].amount_unit, 0, path, &to[cell], message);
        }
    }
    return is_right;
}

static int list_of(struct reader *reader, idx_t row, struct argument *to, struct message *message)
{
    duckdb_list_entry entry = ((const duckdb_list_entry *)reader->vector.data)[row];
    size_t columns = (size_t)reader->parameter->column_count, needed = (entry.length + 1) * columns;
    int is_right = 1;

    /* An array of nothing is not a null pointer, which omits the parameter. */
    if (needed > reader->room) {
        double *more = realloc(reader->list, needed * sizeof(double));

        if (!more) {
            add_fault(message, reader->parameter->name, "There is no memory for the list.", "", "out-of-memory");
            return 0;
        }
        reader->list = more;
        reader->room = needed;
    }
    for (size_t item = 0; item < entry.length; item++)
        is_right &= item_of(reader, entry.offset + item, item, reader->list + item * columns, message);
    to->list = reader->list;
    to->rows = entry.length;
    return is_right;
}

static int word_of(struct reader *reader, idx_t row, struct argument *to, struct message *message)
{
    const struct parameter *parameter = reader->parameter;
    size_t length;
    const char *letters = text_at(&reader->vector, row, &length);

    for (int place = 0; parameter->words[place]; place++)
        if (strlen(parameter->words[place]) == length && memcmp(parameter->words[place], letters, length) == 0) {
            to->word = place + 1;
            return 1;
        }
    if (message) {
        struct message known = {0};

        for (int place = 0; parameter->words[place]; place++)
            say(&known, "%s%s", place ? ", " : "Known: ", parameter->words[place]);
        add_fault(message, parameter->name, "There is no such word.", known.text ? known.text : "", "unknown-word");
        free(known.text);
    }
    return 0;
}

static int count_of(struct reader *reader, idx_t row, struct argument *to, struct message *message)
{
    double number = number_at(&reader->vector, row);
    char text[160];

    if (number >= 0 && number < POUR_OMITTED_COUNT && number == (double)(uint32_t)number) {
        to->count = (uint32_t)number;
        return 1;
    }
    snprintf(text, sizeof text, "It is %.17g; it must be a whole number: %s.", number, reader->parameter->allowed);
    add_fault(message, reader->parameter->name, text, "", "out-of-range");
    return 0;
}

/* The argument of a row that is not NULL; 0 where it is refused. */
static int read_argument(struct reader *reader, idx_t row, int32_t measures, struct argument *to,
                         struct message *message)
{
    const struct parameter *parameter = reader->parameter;

    switch (parameter->kind) {
    case NUMBER:
        return number_of(reader, &reader->vector, row, parameter->amount_unit, measures, parameter->name, &to->number,
                         message);
    case COUNT:
        return count_of(reader, row, to, message);
    case WORD:
        return word_of(reader, row, to, message);
    case TEXT:
        to->text = ended(reader, &reader->vector, row, parameter->name, message);
        return to->text != NULL;
    default:
        return list_of(reader, row, to, message);
    }
}

/* Where the results of a calculation go. */
struct places {
    const struct calculation *calculation;
    duckdb_vector whole, parts[MOST_PARAMETERS];
};

static void write_list(duckdb_vector vector, idx_t row, const struct value *value, int places)
{
    idx_t size = duck.list_vector_get_size(vector);
    duckdb_list_entry *entry = (duckdb_list_entry *)duck.vector_get_data(vector) + row;
    int64_t *counts;

    duck.list_vector_reserve(vector, size + (idx_t)places);
    duck.list_vector_set_size(vector, size + (idx_t)places);
    counts = (int64_t *)duck.vector_get_data(duck.list_vector_get_child(vector)) + size;
    for (int place = 0; place < places; place++)
        counts[place] = value ? value->counts[place] : 0;
    entry->offset = size;
    entry->length = (uint64_t)places;
}

/* Writes one result: of a row that is refused (no `value`) NaN, or NULL where it is no number. */
static void write_result(duckdb_vector vector, idx_t row, const struct result *result, const struct value *value)
{
    double *numbers = duck.vector_get_data(vector);

    switch (result->kind) {
    case NUMBER:
        numbers[row] = value ? value->number : (double)NAN;
        if (value && result->is_optional && value->number != value->number)
            set_null(vector, row);
        break;
    case COUNT:
        numbers[row] = value ? (double)value->count : (double)NAN;
        if (value && value->count == POUR_OMITTED_COUNT)
            set_null(vector, row);
        break;
    case WORD:
        if (value && value->word > 0)
            duck.vector_assign_string_element_len(vector, row, result->words[value->word - 1],
                                                  strlen(result->words[value->word - 1]));
        else
            set_null(vector, row);
        break;
    default:
        write_list(vector, row, value, value ? result->places : 0);
        if (!value)
            set_null(vector, row);
    }
}

static void write_row(const struct places *places, idx_t row, const struct value *values)
{
    for (int result = 0; result < places->calculation->result_count; result++)
        write_result(places->parts[result], row, &places->calculation->results[result], values ? &values[result] : NULL);
}

static void write_null(const struct places *places, idx_t row)
{
    set_null(places->whole, row);
    for (int result = 0; result < places->calculation->result_count; result++) {
        write_result(places->parts[result], row, &places->calculation->results[result], NULL);
        set_null(places->parts[result], row);
    }
}

/* The calculation that a call names, and the columns from `first` on. */
struct asked {
    const struct calculation *calculation;
    struct reader *readers[MOST_PARAMETERS];
    /* A column of nothing but NULL: every row is NULL. */
    int is_null;
};

static void close_readers(struct asked *asked)
{
    for (int place = 0; place < asked->calculation->parameter_count; place++) {
        if (asked->readers[place]) {
            free(asked->readers[place]->list);
            free(asked->readers[place]->known);
        }
        free(asked->readers[place]);
    }
}

static int take(struct asked *asked, int place, struct vector vector, struct message *wrong)
{
    const struct parameter *parameter = &asked->calculation->parameters[place];

    if (vector.type == DUCKDB_TYPE_SQLNULL) {
        asked->is_null |= !parameter->is_optional;
        /* A NULL as it is written omits what is optional. */
        return 1;
    }
    asked->readers[place] = malloc(sizeof(struct reader));
    if (!asked->readers[place]) {
        say(wrong, "There is no memory for the columns.");
        return 0;
    }
    if (reader_open(asked->readers[place], parameter, vector))
        return 1;
    say(wrong, "%s: the column %s is of a type that it does not take. Give %s.", asked->calculation->name,
        parameter->name,
        parameter->kind == LIST                               ? "a list of numbers, or of rows as lists or structs"
        : parameter->kind == WORD || parameter->kind == TEXT  ? "texts"
        : parameter->kind == NUMBER && parameter->amount_unit ? "numbers, or amounts as texts"
                                                              : "numbers");
    return 0;
}

static int take_by_name(struct asked *asked, const struct vector *whole, struct message *wrong)
{
    const struct calculation *calculation = asked->calculation;
    idx_t taken = 0;

    for (int place = 0; place < calculation->parameter_count; place++) {
        struct vector field;

        if (!field_of(whole, calculation->parameters[place].name, &field))
            continue;
        taken++;
        if (!take(asked, place, field, wrong))
            return 0;
    }
    if (taken == field_count(whole))
        return 1;
    say(wrong, "%s has no parameter of one of these names. Known: ", calculation->name);
    for (int place = 0; place < calculation->parameter_count; place++)
        say(wrong, "%s%s", place ? ", " : "", calculation->parameters[place].name);
    return 0;
}

/* Takes the columns of a chunk from `first` on. */
static int take_all(struct asked *asked, duckdb_data_chunk input, idx_t first, struct message *wrong)
{
    idx_t count = duck.data_chunk_get_column_count(input) - first;
    const struct calculation *calculation = asked->calculation;
    struct vector only;

    if (count == 1) {
        only = vector_of(duck.data_chunk_get_vector(input, first));
        if (only.type == DUCKDB_TYPE_STRUCT) {
            if (!take_by_name(asked, &only, wrong))
                return 0;
            count = 0;
        }
    }
    if (count > (idx_t)calculation->parameter_count) {
        say(wrong, "%s takes %d arguments at most, not %d.", calculation->name, calculation->parameter_count,
            (int)count);
        return 0;
    }
    for (idx_t place = 0; place < count; place++)
        if (!take(asked, (int)place, vector_of(duck.data_chunk_get_vector(input, first + place)), wrong))
            return 0;
    for (int place = 0; place < calculation->required_count; place++)
        if (!asked->readers[place] && !asked->is_null) {
            say(wrong, "%s: %s is missing. %s", calculation->name, calculation->parameters[place].name,
                calculation->parameters[place].text);
            return 0;
        }
    return 1;
}

/* What a row is. */
enum row { ROW_NULL, ROW_REFUSED, ROW_GOOD };

static enum row calculate_row(const struct asked *asked, idx_t row, struct value *values, struct message *message)
{
    static const struct argument omitted = {POUR_OMITTED, POUR_OMITTED_COUNT, 0, NULL, NULL, 0};
    const struct calculation *calculation = asked->calculation;
    struct argument given[MOST_PARAMETERS];
    pour_error *error = NULL;
    int32_t measures = 0;
    int is_right = 1;

    for (int place = 0; place < calculation->parameter_count; place++) {
        const struct reader *reader = asked->readers[place];

        given[place] = omitted;
        if (asked->is_null || (reader && !is_valid(&reader->vector, row)))
            return ROW_NULL;
    }
    /* Words first: the measures say what a cup is in the other texts. */
    for (int is_word = 1; is_word >= 0; is_word--)
        for (int place = 0; place < calculation->parameter_count; place++) {
            struct reader *reader = asked->readers[place];

            if (!reader || (reader->parameter->kind == WORD) != is_word)
                continue;
            is_right &= read_argument(reader, row, measures, &given[place], message);
            if (is_word && strcmp(reader->parameter->name, "measures") == 0)
                measures = given[place].word;
        }
    if (!is_right)
        return ROW_REFUSED;
    if (calculation->call(given, values, message ? &error : NULL) == POUR_OK)
        return ROW_GOOD;
    if (error)
        add_faults(message, NULL, error);
    return ROW_REFUSED;
}

void calculate(duckdb_function_info info, duckdb_data_chunk input, duckdb_vector output)
{
    struct asked asked = {duck.scalar_function_get_extra_info(info), {NULL}, 0};
    struct places places = {asked.calculation, output, {output}};
    struct value values[MOST_PARAMETERS];
    struct message wrong = {0};
    idx_t rows = duck.data_chunk_get_size(input);

    if (asked.calculation->result_count > 1)
        for (int result = 0; result < asked.calculation->result_count; result++)
            places.parts[result] = duck.struct_vector_get_child(output, (idx_t)result);
    if (take_all(&asked, input, 0, &wrong)) {
        for (idx_t row = 0; row < rows; row++) {
            enum row found = calculate_row(&asked, row, values, NULL);

            if (found == ROW_NULL)
                write_null(&places, row);
            else
                write_row(&places, row, found == ROW_GOOD ? values : NULL);
        }
    } else {
        duck.scalar_function_set_error(info, wrong.text ? wrong.text : "There is no memory.");
    }
    close_readers(&asked);
    free(wrong.text);
}

static const struct calculation *calculation_at(const struct vector *names, idx_t row)
{
    size_t length;
    const char *name;

    if (names->type != DUCKDB_TYPE_VARCHAR || !is_valid(names, row))
        return NULL;
    name = text_at(names, row, &length);
    for (int place = 0; place < pour_calculation_count; place++)
        if (strlen(pour_calculations[place].name) == length && memcmp(pour_calculations[place].name, name, length) == 0)
            return &pour_calculations[place];
    return NULL;
}

void why(duckdb_function_info info, duckdb_data_chunk input, duckdb_vector output)
{
    idx_t rows = duck.data_chunk_get_size(input);
    struct vector names = vector_of(duck.data_chunk_get_vector(input, 0));
    struct asked asked = {rows > 0 ? calculation_at(&names, 0) : NULL, {NULL}, 0};
    struct value values[MOST_PARAMETERS];
    struct message wrong = {0}, message = {0};
    int is_one = 1;

    if (rows == 0)
        return;
    for (idx_t row = 0; row < rows; row++)
        is_one &= calculation_at(&names, row) == asked.calculation;
    if (!asked.calculation || !is_one) {
        duck.scalar_function_set_error(info, "pour_why takes the name of one function, such as 'pour_convert', first.");
        return;
    }
    if (take_all(&asked, input, 1, &wrong)) {
        for (idx_t row = 0; row < rows; row++) {
            message.length = 0;
            if (calculate_row(&asked, row, values, &message) == ROW_REFUSED && message.text)
                duck.vector_assign_string_element_len(output, row, message.text, message.length);
            else
                set_null(output, row);
        }
    } else {
        duck.scalar_function_set_error(info, wrong.text ? wrong.text : "There is no memory.");
    }
    close_readers(&asked);
    free(message.text);
    free(wrong.text);
}
