/* The extension: registers all functions and tables of a connection. */
#include "json.h"
#include "sql.h"

#include <string.h>

SQLITE_EXTENSION_INIT1

/* The oldest SQLite that knows which functions are innocuous. */
#define OLDEST 3031000

void give(sqlite3_context *context, const struct cell *cell)
{
    switch (cell->type) {
    case NOTHING:
        sqlite3_result_null(context);
        break;
    case REAL:
        sqlite3_result_double(context, cell->real);
        break;
    case INTEGER:
        sqlite3_result_int64(context, cell->integer);
        break;
    case WORDS:
        sqlite3_result_text(context, cell->words, -1, cell->is_constant ? SQLITE_STATIC : SQLITE_TRANSIENT);
        break;
    }
}

const char *document_of(sqlite3_value *value, size_t *length)
{
    const char *text = NULL;

    if (sqlite3_value_type(value) == SQLITE_TEXT)
        text = (const char *)sqlite3_value_text(value);
    else if (sqlite3_value_type(value) == SQLITE_BLOB)
        text = sqlite3_value_bytes(value) > 0 ? sqlite3_value_blob(value) : "";
    *length = text ? (size_t)sqlite3_value_bytes(value) : 0;
    return text;
}

void shop_leave(void *of_connection)
{
    struct shop *shop = of_connection;

    if (--shop->users > 0)
        return;
    pour_book_free(shop->book);
    sqlite3_free(shop->text);
    sqlite3_free(shop);
}

const pour_book *shop_book(struct shop *shop, const char *text, size_t length, pour_error **error)
{
    char *copy;

    if (shop->book && shop->length == length && memcmp(shop->text, text, length) == 0)
        return shop->book;
    pour_book_free(shop->book);
    sqlite3_free(shop->text);
    shop->book = NULL;
    shop->text = NULL;
    copy = sqlite3_malloc64(length + 1);
    if (!copy)
        return NULL;
    memcpy(copy, text, length);
    if (pour_book_from_json(text, length, &shop->book, error) != POUR_OK) {
        shop->book = NULL;
        sqlite3_free(copy);
        return NULL;
    }
    shop->text = copy;
    shop->length = length;
    return shop->book;
}

/* Ends a call with the message, which it frees, behind the name of the function. */
static void fail(sqlite3_context *context, const char *name, char *message)
{
    char *text = sqlite3_mprintf("%s: %s", name, message);

    if (text)
        sqlite3_result_error(context, text, -1);
    else
        sqlite3_result_error_nomem(context);
    sqlite3_free(text);
    sqlite3_free(message);
}

static void drop(const struct calculation *calculation, struct cell *found)
{
    for (int place = 0; place < calculation->result_count; place++)
        if (!found[place].is_constant)
            sqlite3_free(found[place].words);
}

static void of_calculation(sqlite3_context *context, int argc, sqlite3_value **argv)
{
    const struct calculation *calculation = sqlite3_user_data(context);
    struct cell found[MOST_PARAMETERS];
    char *message;

    memset(found, 0, sizeof found);
    switch (calculate(calculation, argc, argv, found, &message)) {
    case FOUND:
        give(context, &found[0]);
        drop(calculation, found);
        break;
    case NO_INPUT:
        break;
    case REFUSED:
        fail(context, calculation->name, message);
        break;
    case WRONG_QUERY:
        sqlite3_result_error(context, message, -1);
        sqlite3_free(message);
        break;
    case NO_MEMORY:
        sqlite3_result_error_nomem(context);
        break;
    }
}

/* pour_try and, with user data, pour_why. */
static void attempt(sqlite3_context *context, int argc, sqlite3_value **argv)
{
    int is_why = sqlite3_user_data(context) != NULL;
    int is_text = argc > 0 && sqlite3_value_type(argv[0]) == SQLITE_TEXT;
    const char *name = is_text ? (const char *)sqlite3_value_text(argv[0]) : NULL;
    const struct calculation *calculation = name ? find_calculation(name) : NULL;
    struct cell found[MOST_PARAMETERS];
    char *message;

    if (!calculation) {
        fail(context, is_why ? "pour_why" : "pour_try",
             sqlite3_mprintf("There is no calculation '%s'. Give the name of one as first argument, such as "
                             "'pour_piece_mass'; SELECT DISTINCT function FROM pour_functions lists them.",
                             name ? name : ""));
        return;
    }
    memset(found, 0, sizeof found);
    switch (calculate(calculation, argc - 1, argv + 1, found, &message)) {
    case FOUND:
        if (!is_why)
            give(context, &found[0]);
        drop(calculation, found);
        break;
    case NO_INPUT:
        break;
    case REFUSED:
        if (is_why)
            sqlite3_result_text(context, message, -1, SQLITE_TRANSIENT);
        sqlite3_free(message);
        break;
    case WRONG_QUERY:
        sqlite3_result_error(context, message, -1);
        sqlite3_free(message);
        break;
    case NO_MEMORY:
        sqlite3_result_error_nomem(context);
        break;
    }
}

static void version(sqlite3_context *context, int argc, sqlite3_value **argv)
{
    (void)argc;
    (void)argv;
    sqlite3_result_text(context, pour_version(), -1, SQLITE_STATIC);
}

static void answer(sqlite3_context *context, int argc, sqlite3_value **argv)
{
    struct shop *shop = sqlite3_user_data(context);
    const char *texts[2] = {NULL, NULL};
    size_t lengths[2], length = 0;
    const pour_book *book = NULL;
    pour_error *error = NULL;
    char *out = NULL;
    int32_t status;

    for (int place = 0; place < argc; place++) {
        if (sqlite3_value_type(argv[place]) == SQLITE_NULL)
            return;
        texts[place] = document_of(argv[place], &lengths[place]);
        if (!texts[place]) {
            sqlite3_result_error(context, place ? "pour_answer: The book is not a JSON text. Give the text of the book."
                                                : "pour_answer: The request is not a JSON text. Give an object as a "
                                                  "text, such as json_object makes it.", -1);
            return;
        }
    }
    if (argc == 2) {
        book = shop_book(shop, texts[1], lengths[1], &error);
        if (!book) {
            sqlite3_str *faults = sqlite3_str_new(NULL);

            if (!error)
                sqlite3_result_error_nomem(context);
            add_faults(faults, "book", 1, error);
            if (sqlite3_str_length(faults) > 0)
                fail(context, "pour_answer", sqlite3_str_finish(faults));
            else
                sqlite3_free(sqlite3_str_finish(faults));
            return;
        }
    }
    status = book ? pour_book_request(book, texts[0], lengths[0], &out, &length, &error)
                  : pour_request(texts[0], lengths[0], &out, &length, &error);
    if (status == POUR_OK)
        sqlite3_result_text64(context, out, length, SQLITE_TRANSIENT, SQLITE_UTF8);
    else
        sqlite3_result_text(context, pour_error_json(error), -1, SQLITE_TRANSIENT);
    pour_string_free(out);
    pour_error_free(error);
}

static int register_functions(sqlite3 *database, struct shop *shop)
{
    int flags = SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_INNOCUOUS, status;
    static char why;

    status = sqlite3_create_function_v2(database, "pour_version", 0, flags, NULL, version, NULL, NULL, NULL);
    if (status == SQLITE_OK)
        status = sqlite3_create_function_v2(database, "pour_try", -1, flags, NULL, attempt, NULL, NULL, NULL);
    if (status == SQLITE_OK)
        status = sqlite3_create_function_v2(database, "pour_why", -1, flags, &why, attempt, NULL, NULL, NULL);
    for (int count = 1; count <= 2 && status == SQLITE_OK; count++) {
        shop->users++;
        status = sqlite3_create_function_v2(database, "pour_answer", count, flags, shop, answer, NULL, NULL, shop_leave);
    }
    for (int index = 0; index < pour_calculation_count && status == SQLITE_OK; index++)
        status = sqlite3_create_function_v2(database, pour_calculations[index].name, -1, flags,
                                            (void *)&pour_calculations[index], of_calculation, NULL, NULL, NULL);
    return status;
}

#ifdef __GNUC__
__attribute__((visibility("default")))
#endif
int sqlite3_pourwright_init(sqlite3 *database, char **message, const sqlite3_api_routines *api)
{
    struct shop *shop;
    int status;

    SQLITE_EXTENSION_INIT2(api);
    if (sqlite3_libversion_number() < OLDEST) {
        *message = sqlite3_mprintf("pourwright needs SQLite 3.31 or later; this is %s.", sqlite3_libversion());
        return SQLITE_ERROR;
    }
    if (pour_abi_version() != POUR_ABI_VERSION) {
        *message = sqlite3_mprintf("pourwright was built with another library than its header: build it again.");
        return SQLITE_ERROR;
    }
    shop = json_begin() ? sqlite3_malloc64(sizeof *shop) : NULL;
    if (!shop)
        return SQLITE_NOMEM;
    memset(shop, 0, sizeof *shop);
    shop->users = 1;
    status = register_functions(database, shop);
    if (status == SQLITE_OK)
        status = register_tables(database, shop);
    shop_leave(shop);
    /* The library's runtime is in it, which is not made to be unloaded. */
    return status == SQLITE_OK ? SQLITE_OK_LOAD_PERMANENTLY : status;
}
