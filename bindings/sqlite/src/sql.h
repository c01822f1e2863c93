/* What the parts of the extension have in common. */
#ifndef POUR_SQL_H
#define POUR_SQL_H

#include <sqlite3ext.h>

#include "calculation.h"

/* A value in SQL. */
struct cell {
    enum { NOTHING, REAL, INTEGER, WORDS } type;
    double real;
    sqlite3_int64 integer;
    /* Freed by sqlite3_free unless it is constant. */
    char *words;
    int is_constant;
};

/* Rows of cells. */
struct rows {
    int columns;
    int count;
    int room;
    struct cell *cells;
};

/* A new row of nothing; NULL where there is no memory. */
struct cell *rows_add(struct rows *rows);
void rows_clear(struct rows *rows);

struct cell cell_real(double number);
struct cell cell_integer(sqlite3_int64 number);
/* A text that is constant; NULL is nothing. */
struct cell cell_constant(const char *text);
/* A text that is handed over to the cell; NULL is nothing. */
struct cell cell_text(char *text);

/* Gives a cell as the result of a function or the value of a column. */
void give(sqlite3_context *context, const struct cell *cell);

/* What became of a call. */
enum outcome {
    FOUND,
    /* What must be given is NULL: so is the result. */
    NO_INPUT,
    /* The data are refused, and the message tells why. */
    REFUSED,
    /* The query is wrong, whatever the data are. */
    WRONG_QUERY,
    NO_MEMORY
};

/* Calculates: one cell for each result. Of a call that is refused, `*message` is the reason, freed by sqlite3_free. A
   parameter that is not given is a null pointer. */
enum outcome calculate(const struct calculation *calculation, int count, sqlite3_value **given, struct cell *found,
                       char **message);

/* The calculation of this name, or NULL. */
const struct calculation *find_calculation(const char *name);

/* Adds the faults of an error to a message, and frees the error: those of an amount at this path, those of a document below it,
   others, where it is null, at their own. */
void add_faults(sqlite3_str *message, const char *path, int is_document, pour_error *error);

/* The book that was read last. A connection has one. */
struct shop {
    pour_book *book;
    char *text;
    size_t length;
    int users;
};

void shop_leave(void *shop);
/* The book of this text, or NULL and the error. */
const pour_book *shop_book(struct shop *shop, const char *text, size_t length, pour_error **error);

/* A document that is a text or a blob; NULL where it is neither. */
const char *document_of(sqlite3_value *value, size_t *length);

/* The functions with many rows, one table for each. */
int register_tables(sqlite3 *database, struct shop *shop);

/* The names and texts of the functions that are no calculation, ended by a NULL name. */
struct own_function {
    const char *name;
    const char *text;
};
extern const struct own_function own_functions[];

/* A table: its columns, then its parameters as hidden columns. */
struct table {
    const char *name;
    /* Declarations, such as "\"pot\" TEXT". */
    const char *columns;
    int column_count;
    /* Names of the parameters, ended by NULL. */
    const char *const *parameters;
    enum outcome (*fill)(struct shop *shop, int count, sqlite3_value **given, struct rows *rows, char **message);
};

extern const struct table plan_table, weigh_table, functions_table;

#endif
