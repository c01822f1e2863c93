/* Makes every call of tests/vectors/calls.jsonl through C and compares results by their bits and faults by code and path:
 * calls CALLS. Where POURWRIGHT_ANSWERS names a folder, the answers are written there: tests/doors.
 *
 * The calls by name are those of the extension of SQLite, which are made from the table. */
#include <math.h>

#include "json.h"

#include "../../sqlite/src/calculation.h"

static double number_of(const struct json *value)
{
    if (value->kind == JSON_NUMBER) return value->number;
    CHECK(value->kind == JSON_TEXT);
    return strcmp(value->text, "NaN") == 0 ? NAN : strcmp(value->text, "-Infinity") == 0 ? -INFINITY : INFINITY;
}

static int32_t word_of(const char *const *words, const char *word)
{
    int32_t place = 0;
    while (words[place] != NULL && strcmp(words[place], word) != 0) place++;
    return place + 1;
}

/* An argument of C for a parameter; `value` is NULL where it is omitted. */
static struct argument argument_of(const struct parameter *parameter, const struct json *value)
{
    struct argument argument = {POUR_OMITTED, POUR_OMITTED_COUNT, 0, NULL, NULL, 0};
    const struct json *row, *item;
    size_t count = 0;
    if (value == NULL) return argument;
    switch (parameter->kind) {
    case NUMBER:
        argument.number = number_of(value);
        break;
    case COUNT:
        argument.count = (uint32_t)value->number;
        break;
    case TEXT:
        argument.text = value->text;
        break;
    case WORD:
        argument.word = word_of(parameter->words, value->text);
        break;
    case LIST:
        argument.rows = json_length(value);
        argument.list = malloc((argument.rows * (size_t)parameter->column_count + 1) * sizeof(double));
        if (argument.list == NULL) exit(2);
        for (row = value->first; row != NULL; row = row->next)
            for (item = row->kind == JSON_LIST ? row->first : row; item != NULL; item = row->kind == JSON_LIST ? item->next : NULL)
                argument.list[count++] = number_of(item);
    }
    return argument;
}

/* Adds a result as JSON; gives whether it is the wanted one. */
static int add_result(struct text *answer, const struct result *result, const struct value *found, const struct json *wanted)
{
    const struct json *item;
    int is_same = 1, place;
    switch (result->kind) {
    case NUMBER:
        if (isnan(found->number)) break;
        add(answer, "%.17g", found->number);
        return wanted->kind == JSON_NUMBER && same(found->number, wanted->number);
    case COUNT:
        if (found->count == POUR_OMITTED_COUNT) break;
        add(answer, "%lu", (unsigned long)found->count);
        return wanted->kind == JSON_NUMBER && found->count == wanted->number;
    case WORD:
        if (found->word == 0) break;
        add(answer, "\"%s\"", result->words[found->word - 1]);
        return wanted->kind == JSON_TEXT && strcmp(result->words[found->word - 1], wanted->text) == 0;
    default:
        item = wanted->first;
        for (place = 0; place < result->places; place++) {
            add(answer, "%s%lu", place == 0 ? "[" : ",", (unsigned long)found->counts[place]);
            is_same = is_same && item != NULL && found->counts[place] == item->number;
            item = item == NULL ? NULL : item->next;
        }
        add(answer, "]");
        return is_same && item == NULL;
    }
    add(answer, "null");
    return wanted->kind == JSON_NULL;
}

static int add_results(struct text *answer, const struct calculation *calculation, const struct value *found,
                       const struct json *wanted)
{
    int place, is_same = wanted != NULL && json_length(wanted) == (size_t)calculation->result_count;
    add(answer, "{\"results\":{");
    for (place = 0; place < calculation->result_count; place++) {
        const struct result *result = &calculation->results[place];
        const struct json none = {JSON_NULL, 0, NULL, NULL, NULL, NULL}, *of = json_of(wanted, result->name);
        const char *name = result->name;
        /* SQL has another name for a result that is called as a parameter. */
        if (of == NULL && strncmp(name, "result_", strlen("result_")) == 0) of = json_of(wanted, name += strlen("result_"));
        add(answer, "%s\"%s\":", place > 0 ? "," : "", name);
        if (!add_result(answer, result, &found[place], of == NULL ? &none : of) || of == NULL) is_same = 0;
    }
    add(answer, "}}");
    return is_same;
}

static int add_faults(struct text *answer, const pour_error *error, const struct json *wanted)
{
    size_t place, count = pour_error_count(error);
    int is_same = wanted != NULL && json_length(wanted) == count;
    const struct json *fault = wanted == NULL ? NULL : wanted->first;
    add(answer, "{\"faults\":[");
    for (place = 0; place < count; place++) {
        const char *code = pour_error_code(error, place), *path = pour_error_path(error, place);
        add(answer, "%s{\"code\":\"%s\",\"path\":\"%s\"}", place > 0 ? "," : "", code, path);
        is_same = is_same && strcmp(code, json_of(fault, "code")->text) == 0 && strcmp(path, json_of(fault, "path")->text) == 0;
        fault = fault == NULL ? NULL : fault->next;
    }
    add(answer, "]}");
    return is_same;
}

static void make(const struct json *call, struct text *answer, const char *file, size_t line)
{
    const char *name = json_of(call, "call")->text;
    const struct json *given = json_of(call, "given");
    const struct calculation *calculation = NULL;
    struct argument arguments[MOST_PARAMETERS];
    struct value found[MOST_PARAMETERS];
    pour_error *error = NULL;
    size_t start = answer->len;
    int place, is_same;
    memset(found, 0, sizeof found);
    for (place = 0; place < pour_calculation_count; place++)
        if (strcmp(pour_calculations[place].name + strlen("pour_"), name) == 0) calculation = &pour_calculations[place];
    if (calculation == NULL) {
        fprintf(stderr, "%s:%lu: there is no %s\n", file, (unsigned long)line, name);
        failures++;
        return;
    }
    for (place = 0; place < calculation->parameter_count; place++) {
        const struct parameter *parameter = &calculation->parameters[place];
        arguments[place] = argument_of(parameter, json_of(given, parameter->name));
    }
    if (calculation->call(arguments, found, &error) == POUR_OK)
        is_same = add_results(answer, calculation, found, json_of(call, "results"));
    else
        is_same = add_faults(answer, error, json_of(call, "faults"));
    if (!is_same) {
        fprintf(stderr, "%s:%lu: %s, %s gives %s\n", file, (unsigned long)line, name, json_of(call, "case")->text,
                answer->start + start);
        failures++;
    }
    add(answer, "\n");
    pour_error_free(error);
    for (place = 0; place < calculation->parameter_count; place++) free(arguments[place].list);
}

int main(int argc, char **argv)
{
    char *calls;
    const char *at;
    struct text answers = {NULL, 0, 0};
    size_t len, count = 0;
    if (argc != 2) {
        fprintf(stderr, "Usage: calls CALLS\n");
        return 2;
    }
    at = calls = read_file(argv[1], &len);
    for (; *at != '\0'; at += *at == '\n') {
        struct json *call = json_read(&at);
        make(call, &answers, argv[1], ++count);
        json_free(call);
    }
    CHECK(count > 600);
    write_answers("c.calls", &answers);
    free(answers.start);
    free(calls);
    return outcome("calls");
}
