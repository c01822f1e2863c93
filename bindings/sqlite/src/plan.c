/* A day's plan as rows: pots, and what to weigh into them. */
#include "json.h"
#include "sql.h"

#include <limits.h>
#include <string.h>

SQLITE_EXTENSION_INIT3

static const char *const book_and_orders[] = {"book", "orders", NULL};

static struct cell real_at(struct json from, const char *path)
{
    struct json value;
    double number;

    return json_find(from, path, &value) && json_number(&value, &number) ? cell_real(number) : cell_constant(NULL);
}

static struct cell integer_at(struct json from, const char *path)
{
    struct json value;
    double number;

    return json_find(from, path, &value) && json_number(&value, &number) ? cell_integer((sqlite3_int64)number)
                                                                         : cell_constant(NULL);
}

static struct cell text_at(struct json from, const char *path)
{
    struct json value;

    return cell_text(json_find(from, path, &value) ? json_string(&value) : NULL);
}

/* A list that is read element by element. */
struct list {
    struct json rest;
    int is_begun;
};

static struct list list_at(struct json from, const char *path)
{
    struct list list = {from, 0};

    if (!json_find(from, path, &list.rest) || !json_take(&list.rest, '['))
        list.rest = json_of("]", 1);
    return list;
}

static int list_next(struct list *list, struct json *element)
{
    if (json_take(&list->rest, ']') || (list->is_begun && !json_take(&list->rest, ',')))
        return 0;
    list->is_begun = 1;
    *element = list->rest;
    if (!json_skip(&list->rest))
        return 0;
    element->end = list->rest.at;
    return 1;
}

/* The texts of a list, joined as a plan names a pot: "dusk + plain". */
static struct cell joined(struct json from, const char *path)
{
    struct list list = list_at(from, path);
    struct json element;
    sqlite3_str *text = sqlite3_str_new(NULL);

    while (list_next(&list, &element)) {
        char *name = json_string(&element);

        sqlite3_str_appendf(text, "%s%s", sqlite3_str_length(text) > 0 ? " + " : "", name ? name : "");
        sqlite3_free(name);
    }
    return cell_text(sqlite3_str_finish(text));
}

/* The plan of a book and orders as JSON, freed by pour_string_free. */
static enum outcome plan_of(struct shop *shop, int count, sqlite3_value **given, char **json, size_t *length,
                            char **message)
{
    sqlite3_str *faults = sqlite3_str_new(NULL);
    const char *texts[2];
    size_t lengths[2];
    const pour_book *book;
    pour_plan *plan = NULL;
    pour_error *error = NULL;
    int is_made = 0;

    for (int place = 0; place < 2; place++) {
        texts[place] = place < count && given[place] ? document_of(given[place], &lengths[place]) : NULL;
        if (place < count && given[place] && sqlite3_value_type(given[place]) == SQLITE_NULL) {
            sqlite3_free(sqlite3_str_finish(faults));
            return NO_INPUT;
        }
        if (!texts[place])
            sqlite3_str_appendf(faults, "%s%s: It is missing, or not a JSON text. Give the text of the document. [missing-field]",
                                sqlite3_str_length(faults) > 0 ? "\n" : "", book_and_orders[place]);
    }
    if (sqlite3_str_length(faults) == 0) {
        book = shop_book(shop, texts[0], lengths[0], &error);
        if (!book && !error) {
            sqlite3_free(sqlite3_str_finish(faults));
            return NO_MEMORY;
        }
        is_made = book && pour_book_plan(book, texts[1], lengths[1], &plan, &error) == POUR_OK &&
                  pour_plan_json(plan, json, length, &error) == POUR_OK;
        pour_plan_free(plan);
        if (error)
            add_faults(faults, book_and_orders[book ? 1 : 0], 1, error);
    }
    *message = sqlite3_str_finish(faults);
    if (is_made)
        return FOUND;
    return *message ? REFUSED : NO_MEMORY;
}

/* Adds the numbers at a path in all elements of a list. */
static sqlite3_int64 sum(struct json from, const char *list_path, const char *path)
{
    struct list list = list_at(from, list_path);
    struct json element;
    sqlite3_int64 sum = 0;

    while (list_next(&list, &element))
        sum += integer_at(element, path).integer;
    return sum;
}

static enum outcome fill_plan(struct shop *shop, int count, sqlite3_value **given, struct rows *rows, char **message)
{
    char *text = NULL;
    size_t length = 0;
    enum outcome outcome = plan_of(shop, count, given, &text, &length, message);
    struct list pots;
    struct json pot;

    if (outcome != FOUND)
        return outcome;
    pots = list_at(json_of(text, length), "pots");
    while (list_next(&pots, &pot)) {
        struct cell *row = rows_add(rows);
        struct list stages = list_at(pot, "stages");
        struct json stage;
        sqlite3_int64 stage_count = 0, shots = 0, ordered = 0, made = 0;

        if (!row) {
            outcome = NO_MEMORY;
            break;
        }
        row[0] = text_at(pot, "pot");
        row[1] = text_at(pot, "id");
        row[2] = text_at(pot, "cup_name");
        row[3] = real_at(pot, "cup.value");
        while (list_next(&stages, &stage)) {
            struct list draws = list_at(stage, "draws");
            struct json draw;

            if (stage_count++ == 0) {
                row[5] = real_at(stage, "holds.value");
                row[6] = real_at(stage, "fills.value");
            }
            while (list_next(&draws, &draw)) {
                shots += integer_at(draw, "shots").integer;
                ordered += sum(draw, "pieces", "ordered");
                made += sum(draw, "pieces", "made");
            }
        }
        row[4] = cell_integer(stage_count);
        row[7] = cell_integer(shots);
        row[8] = cell_integer(ordered);
        row[9] = cell_integer(made);
        row[10] = integer_at(pot, "heats.count");
        row[11] = real_at(pot, "lost.value");
        row[12] = real_at(pot, "left_over.value");
        row[13] = real_at(pot, "sprues.value");
    }
    pour_string_free(text);
    return outcome;
}

const struct table plan_table = {
    "pour_plan",
    "pot TEXT, name TEXT, cup TEXT, cup_ml REAL, stages INTEGER, mass_g REAL, volume_ml REAL, shots INTEGER, "
    "pieces_ordered INTEGER, pieces_made INTEGER, heats INTEGER, lost_g REAL, left_over_g REAL, sprues_g REAL",
    14,
    book_and_orders,
    fill_plan,
};

static enum outcome weigh_stage(struct rows *rows, struct json pot, struct json stage, sqlite3_int64 number)
{
    struct list weigh = list_at(stage, "weigh");
    struct json line;
    sqlite3_int64 place = 0;

    while (list_next(&weigh, &line)) {
        struct cell *row = rows_add(rows);

        if (!row)
            return NO_MEMORY;
        row[0] = text_at(pot, "pot");
        row[1] = cell_integer(number);
        row[2] = cell_integer(++place);
        row[3] = joined(stage, "formulas");
        row[4] = text_at(line, "material");
        row[5] = text_at(line, "kind");
        row[6] = text_at(line, "add.when");
        row[7] = integer_at(line, "add.portions");
        row[8] = real_at(line, "wanted.value");
        row[9] = text_at(line, "best.tool");
        row[10] = text_at(line, "best.measure");
        row[11] = real_at(line, "best.gives.value");
        row[12] = real_at(line, "best.off.value");
        row[13] = real_at(line, "tolerance.value");
        row[14] = real_at(line, "doubt.uncertainty.value");
    }
    return FOUND;
}

static enum outcome fill_weigh(struct shop *shop, int count, sqlite3_value **given, struct rows *rows, char **message)
{
    char *text = NULL;
    size_t length = 0;
    enum outcome outcome = plan_of(shop, count, given, &text, &length, message);
    struct list pots;
    struct json pot, stage;

    if (outcome != FOUND)
        return outcome;
    pots = list_at(json_of(text, length), "pots");
    while (outcome == FOUND && list_next(&pots, &pot)) {
        struct list stages = list_at(pot, "stages");
        sqlite3_int64 number = 0;

        while (outcome == FOUND && list_next(&stages, &stage))
            outcome = weigh_stage(rows, pot, stage, ++number);
    }
    pour_string_free(text);
    return outcome;
}

const struct table weigh_table = {
    "pour_weigh",
    "pot TEXT, stage INTEGER, line INTEGER, formula TEXT, material TEXT, kind TEXT, add_when TEXT, portions INTEGER, "
    "mass_g REAL, tool TEXT, measure TEXT, gives_g REAL, deviation REAL, tolerance REAL, uncertainty REAL",
    15,
    book_and_orders,
    fill_weigh,
};
