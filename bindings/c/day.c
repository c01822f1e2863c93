/* Plans a day: day BOOK.json ORDERS.json prints the bench sheet, or the faults of the two files.
 *
 * cc day.c $(pkg-config --cflags --libs pourwright) -o day
 */
#include <stdio.h>
#include <stdlib.h>

#include <pourwright.h>

/* The text of a file, which the caller frees; NULL if it cannot be read. */
static char *read_file(const char *path, size_t *len)
{
    FILE *file = fopen(path, "rb");
    char *text = NULL;
    long size;
    if (file == NULL) {
        return NULL;
    }
    if (fseek(file, 0, SEEK_END) == 0 && (size = ftell(file)) >= 0 && fseek(file, 0, SEEK_SET) == 0
        && (text = malloc((size_t)size + 1)) != NULL) {
        *len = fread(text, 1, (size_t)size, file);
    }
    fclose(file);
    return text;
}

/* Prints the faults of `file`, frees the error, and returns 1, the exit status of a failure. */
static int complain(const char *file, pour_error *error)
{
    size_t i;
    for (i = 0; i < pour_error_count(error); i++) {
        fprintf(stderr, "%s%s: %s %s [%s]\n", file, pour_error_path(error, i), pour_error_message(error, i),
                pour_error_help(error, i), pour_error_code(error, i));
    }
    pour_error_free(error);
    return 1;
}

int main(int argc, char **argv)
{
    char *book_json = NULL, *orders_json = NULL, *sheet = NULL;
    size_t book_len = 0, orders_len = 0;
    pour_book *book = NULL;
    pour_plan *plan = NULL;
    pour_error *error = NULL;
    int failed;

    if (argc != 3) {
        fprintf(stderr, "Usage: day BOOK.json ORDERS.json\n");
        return 2;
    }
    if (pour_abi_version() != POUR_ABI_VERSION) {
        fprintf(stderr, "pourwright %s does not match the header this was compiled with.\n", pour_version());
        return 2;
    }
    book_json = read_file(argv[1], &book_len);
    orders_json = read_file(argv[2], &orders_len);
    if (book_json == NULL || orders_json == NULL) {
        fprintf(stderr, "%s cannot be read.\n", book_json == NULL ? argv[1] : argv[2]);
        failed = 2;
    } else if (pour_book_from_json(book_json, book_len, &book, &error) != POUR_OK) {
        failed = complain(argv[1], error);
    } else if (pour_book_plan(book, orders_json, orders_len, &plan, &error) != POUR_OK) {
        failed = complain(argv[2], error);
    } else if (pour_plan_sheet(plan, &sheet, NULL, &error) != POUR_OK) {
        failed = complain("the plan", error);
    } else {
        puts(sheet);
        failed = 0;
    }
    pour_string_free(sheet);
    pour_plan_free(plan);
    pour_book_free(book);
    free(orders_json);
    free(book_json);
    return failed;
}
