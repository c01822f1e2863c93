/* Four threads use one book at once, each with plans, mixes and errors of its own: threads BOOK.json ORDERS.json. */
#include "check.h"

#include <pthread.h>

enum { THREADS = 4, ROUNDS = 2 };

static const pour_book *book;
static char *orders;
static size_t orders_len;

/* Returns the JSON of the last plan; NULL if anything failed. */
static void *work(void *unused)
{
    char *json = NULL;
    int i;
    (void)unused;
    for (i = 0; i < ROUNDS; i++) {
        pour_plan *plan = NULL;
        pour_mix *mix = NULL;
        pour_error *error = NULL;
        double mass = 0;
        pour_string_free(json);
        json = NULL;
        if (pour_book_plan(book, orders, orders_len, &plan, NULL) != POUR_OK
            || pour_plan_json(plan, &json, NULL, NULL) != POUR_OK || pour_mix_of_book(book, &mix, NULL) != POUR_OK
            || pour_mix_add(mix, "clear-base", i + 1, NULL) != POUR_OK
            || pour_mix_mass(mix, &mass, NULL) != POUR_OK || !near(mass, i + 1)
            || pour_mix_add(mix, "sand", 1, &error) != POUR_REFUSED || pour_error_count(error) != 1) {
            return NULL;
        }
        pour_error_free(error);
        pour_mix_free(mix);
        pour_plan_free(plan);
    }
    return json;
}

int main(int argc, char **argv)
{
    pthread_t threads[THREADS];
    void *plans[THREADS];
    char *json;
    size_t len;
    pour_book *loaded = NULL;
    int i;
    if (argc != 3) {
        fprintf(stderr, "Usage: threads BOOK.json ORDERS.json\n");
        return 2;
    }
    json = read_file(argv[1], &len);
    orders = read_file(argv[2], &orders_len);
    CHECK(pour_book_from_json(json, len, &loaded, NULL) == POUR_OK);
    book = loaded;
    for (i = 0; i < THREADS; i++) CHECK(pthread_create(&threads[i], NULL, work, NULL) == 0);
    for (i = 0; i < THREADS; i++) CHECK(pthread_join(threads[i], &plans[i]) == 0);
    for (i = 0; i < THREADS; i++) CHECK(plans[i] != NULL && strcmp(plans[i], plans[0]) == 0);
    for (i = 0; i < THREADS; i++) pour_string_free(plans[i]);
    pour_book_free(loaded);
    free(orders);
    free(json);
    return outcome("threads");
}
