/* Tables with parameters: a module of SQLite for each calculation, plan and list. */
#include "sql.h"

#include <stdlib.h>
#include <string.h>

SQLITE_EXTENSION_INIT3

/* What a module makes. */
struct made {
    const struct table *table;
    const struct calculation *calculation;
    struct shop *shop;
};

struct of_query {
    sqlite3_vtab base;
    const struct made *made;
    int column_count;
    int parameter_count;
};

struct cursor {
    sqlite3_vtab_cursor base;
    struct rows rows;
    int row;
    sqlite3_value *given[MOST_PARAMETERS];
};

struct cell *rows_add(struct rows *rows)
{
    size_t columns = (size_t)rows->columns;
    struct cell *row;

    if (rows->count == rows->room) {
        int room = 2 * rows->room + 8;
        struct cell *cells = sqlite3_realloc64(rows->cells, (size_t)room * columns * sizeof(struct cell));

        if (!cells)
            return NULL;
        rows->cells = cells;
        rows->room = room;
    }
    row = rows->cells + (size_t)rows->count++ * columns;
    memset(row, 0, columns * sizeof(struct cell));
    return row;
}

void rows_clear(struct rows *rows)
{
    size_t count = (size_t)rows->count * (size_t)rows->columns;

    for (size_t place = 0; place < count; place++)
        if (!rows->cells[place].is_constant)
            sqlite3_free(rows->cells[place].words);
    sqlite3_free(rows->cells);
    rows->cells = NULL;
    rows->count = rows->room = 0;
}

struct cell cell_real(double number)
{
    struct cell cell = {REAL, number, 0, NULL, 0};

    return cell;
}

struct cell cell_integer(sqlite3_int64 number)
{
    struct cell cell = {INTEGER, 0, number, NULL, 0};

    return cell;
}

struct cell cell_constant(const char *text)
{
    struct cell cell = {text ? WORDS : NOTHING, 0, 0, (char *)text, 1};

    return cell;
}

struct cell cell_text(char *text)
{
    struct cell cell = {text ? WORDS : NOTHING, 0, 0, text, 0};

    return cell;
}

static void declare_calculation(sqlite3_str *schema, const struct calculation *calculation)
{
    static const char *const types[] = {"REAL", "INTEGER", "TEXT", "TEXT", "TEXT"};

    for (int place = 0; place < calculation->result_count; place++) {
        const struct result *result = &calculation->results[place];

        sqlite3_str_appendf(schema, "%s\"%s\" %s", place > 0 ? ", " : "", result->name, types[result->kind]);
    }
    for (int place = 0; place < calculation->parameter_count; place++)
        sqlite3_str_appendf(schema, ", \"%s\" HIDDEN", calculation->parameters[place].name);
}

static int connect(sqlite3 *database, void *aux, int argc, const char *const *argv, sqlite3_vtab **made_table,
                   char **message)
{
    const struct made *made = aux;
    const struct table *table = made->table;
    sqlite3_str *schema = sqlite3_str_new(database);
    struct of_query *query;
    char *text;
    int parameters = 0, status;

    (void)argc;
    (void)argv;
    (void)message;
    sqlite3_str_appendall(schema, "CREATE TABLE pour(");
    if (table) {
        sqlite3_str_appendall(schema, table->columns);
        for (; table->parameters[parameters]; parameters++)
            sqlite3_str_appendf(schema, ", \"%s\" HIDDEN", table->parameters[parameters]);
    } else {
        declare_calculation(schema, made->calculation);
        parameters = made->calculation->parameter_count;
    }
    sqlite3_str_appendchar(schema, 1, ')');
    text = sqlite3_str_finish(schema);
    if (!text)
        return SQLITE_NOMEM;
    status = sqlite3_declare_vtab(database, text);
    sqlite3_free(text);
    if (status != SQLITE_OK)
        return status;
    sqlite3_vtab_config(database, SQLITE_VTAB_INNOCUOUS);
    query = sqlite3_malloc64(sizeof *query);
    if (!query)
        return SQLITE_NOMEM;
    memset(query, 0, sizeof *query);
    query->made = made;
    query->column_count = table ? table->column_count : made->calculation->result_count;
    query->parameter_count = parameters;
    *made_table = &query->base;
    return SQLITE_OK;
}

static int disconnect(sqlite3_vtab *table)
{
    sqlite3_free(table);
    return SQLITE_OK;
}

/* SQLite compares again what it has handed over, but for the first conditions of a query: a NULL behind those would lose its
   row. */
#define NOT_COMPARED 16

/* Takes each parameter that the query gives. The number of the plan has a bit for each, its text those that are compared. */
static int best_index(sqlite3_vtab *table, sqlite3_index_info *info)
{
    struct of_query *query = (struct of_query *)table;
    int place_of[MOST_PARAMETERS], next = 1;
    unsigned taken = 0, later = 0, compared = 0;

    for (int index = 0; index < info->nConstraint; index++) {
        int place = info->aConstraint[index].iColumn - query->column_count;

        if (place < 0 || place >= query->parameter_count || info->aConstraint[index].op != SQLITE_INDEX_CONSTRAINT_EQ)
            continue;
        if (!info->aConstraint[index].usable) {
            later |= 1u << place;
        } else if (!(taken & 1u << place)) {
            taken |= 1u << place;
            place_of[place] = index;
        }
    }
    /* The value comes from a table that is read later in this order. */
    if (later & ~taken)
        return SQLITE_CONSTRAINT;
    for (int place = 0; place < query->parameter_count; place++)
        if (taken & 1u << place) {
            info->aConstraintUsage[place_of[place]].argvIndex = next++;
            info->aConstraintUsage[place_of[place]].omit = 1;
            if (place_of[place] >= NOT_COMPARED)
                compared |= 1u << place;
        }
    info->idxNum = (int)taken;
    info->idxStr = sqlite3_mprintf("%u", compared);
    info->needToFreeIdxStr = 1;
    if (!info->idxStr)
        return SQLITE_NOMEM;
    info->estimatedCost = 1000;
    info->estimatedRows = query->made->table ? 25 : 1;
    return SQLITE_OK;
}

static int open_cursor(sqlite3_vtab *table, sqlite3_vtab_cursor **made)
{
    struct cursor *cursor = sqlite3_malloc64(sizeof *cursor);

    if (!cursor)
        return SQLITE_NOMEM;
    memset(cursor, 0, sizeof *cursor);
    cursor->rows.columns = ((struct of_query *)table)->column_count;
    *made = &cursor->base;
    return SQLITE_OK;
}

static void forget(struct cursor *cursor)
{
    rows_clear(&cursor->rows);
    for (int place = 0; place < MOST_PARAMETERS; place++) {
        sqlite3_value_free(cursor->given[place]);
        cursor->given[place] = NULL;
    }
    cursor->row = 0;
}

static int close_cursor(sqlite3_vtab_cursor *cursor)
{
    forget((struct cursor *)cursor);
    sqlite3_free(cursor);
    return SQLITE_OK;
}

static int filter(sqlite3_vtab_cursor *at, int taken, const char *text, int argc, sqlite3_value **argv)
{
    struct cursor *cursor = (struct cursor *)at;
    struct of_query *query = (struct of_query *)at->pVtab;
    const struct made *made = query->made;
    sqlite3_value *given[MOST_PARAMETERS] = {NULL};
    char *message = NULL;
    enum outcome outcome;
    unsigned compared = (unsigned)strtoul(text, NULL, 10);
    int next = 0;

    forget(cursor);
    for (int place = 0; place < query->parameter_count; place++) {
        if (!((unsigned)taken & 1u << place) || next >= argc)
            continue;
        given[place] = argv[next++];
        if (compared & 1u << place && sqlite3_value_type(given[place]) == SQLITE_NULL) {
            const char *name = made->table ? made->table->name : made->calculation->name;

            sqlite3_free(at->pVtab->zErrMsg);
            at->pVtab->zErrMsg = sqlite3_mprintf("%s: A NULL is behind the first %d arguments, where SQLite loses the row. "
                                                 "Name those that are not NULL: FROM %s WHERE ... = ... AND ...",
                                                 name, NOT_COMPARED, name);
            return SQLITE_ERROR;
        }
        cursor->given[place] = sqlite3_value_dup(given[place]);
        if (!cursor->given[place])
            return SQLITE_NOMEM;
    }
    if (made->table) {
        outcome = made->table->fill(made->shop, query->parameter_count, given, &cursor->rows, &message);
    } else {
        struct cell *row = rows_add(&cursor->rows);

        outcome = row ? calculate(made->calculation, query->parameter_count, given, row, &message) : NO_MEMORY;
    }
    if (outcome == FOUND)
        return SQLITE_OK;
    rows_clear(&cursor->rows);
    if (outcome == NO_INPUT)
        return SQLITE_OK;
    if (outcome == NO_MEMORY)
        return SQLITE_NOMEM;
    sqlite3_free(at->pVtab->zErrMsg);
    at->pVtab->zErrMsg =
        sqlite3_mprintf("%s: %s", made->table ? made->table->name : made->calculation->name, message);
    sqlite3_free(message);
    return SQLITE_ERROR;
}

static int next_row(sqlite3_vtab_cursor *cursor)
{
    ((struct cursor *)cursor)->row++;
    return SQLITE_OK;
}

static int is_at_end(sqlite3_vtab_cursor *at)
{
    struct cursor *cursor = (struct cursor *)at;

    return cursor->row >= cursor->rows.count;
}



static int column(sqlite3_vtab_cursor *at, sqlite3_context *context, int place)
{
    struct cursor *cursor = (struct cursor *)at;
    int columns = cursor->rows.columns;

    if (place < columns)
        give(context, &cursor->rows.cells[(size_t)cursor->row * (size_t)columns + (size_t)place]);
    else if (cursor->given[place - columns])
        sqlite3_result_value(context, cursor->given[place - columns]);
    return SQLITE_OK;
}

static int row_number(sqlite3_vtab_cursor *cursor, sqlite3_int64 *number)
{
    *number = ((struct cursor *)cursor)->row + 1;
    return SQLITE_OK;
}

static const sqlite3_module module = {
    .xConnect = connect,
    .xBestIndex = best_index,
    .xDisconnect = disconnect,
    .xOpen = open_cursor,
    .xClose = close_cursor,
    .xFilter = filter,
    .xNext = next_row,
    .xEof = is_at_end,
    .xColumn = column,
    .xRowid = row_number,
};

static void leave(void *aux)
{
    struct made *made = aux;

    shop_leave(made->shop);
    sqlite3_free(made);
}

static int register_one(sqlite3 *database, struct shop *shop, const struct table *table,
                        const struct calculation *calculation)
{
    struct made *made = sqlite3_malloc64(sizeof *made);

    if (!made)
        return SQLITE_NOMEM;
    made->table = table;
    made->calculation = calculation;
    made->shop = shop;
    shop->users++;
    /* It is freed by `leave`, even if this fails. */
    return sqlite3_create_module_v2(database, table ? table->name : calculation->name, &module, made, leave);
}

int register_tables(sqlite3 *database, struct shop *shop)
{
    const struct table *const tables[] = {&plan_table, &weigh_table, &functions_table};
    int status = SQLITE_OK;

    for (int index = 0; index < 3 && status == SQLITE_OK; index++)
        status = register_one(database, shop, tables[index], NULL);
    for (int index = 0; index < pour_calculation_count && status == SQLITE_OK; index++)
        status = register_one(database, shop, NULL, &pour_calculations[index]);
    return status;
}
