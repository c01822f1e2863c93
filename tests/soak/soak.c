/* Makes plans, records and requests through one book, and checks that the memory of the process stays where it was:
 * soak BOOK.json ORDERS.json ROUNDS. Without the demo shop's documents its orders are unknown.
 *
 * A round is one plan, good or refused, what is read from it, and one request of the book. Rounds differ within a cycle; memory
 * is compared between ends of cycles, so that all that was made is freed again.
 */
#include "check.h"

#include <malloc.h>
#include <time.h>
#include <unistd.h>

enum { CYCLE = 64, LINES = 60 };

/* Most that the resident memory may grow, and most that the bytes in use may differ, over any number of rounds. */
static const long RESIDENT_KB = 2048, IN_USE_KB = 64;

static const char *const PRODUCTS[] = {"dusk finger", "reed paddle", "ember grub", "night stick", "dusk stick, salted"};

static pour_book *book;
static char *demo;
static size_t demo_len;
static long plans, refused, records, requests;

/* A day of `count` lines, from one that is different in each round. */
static struct text day(long round, int count)
{
    struct text text = {NULL, 0, 0};
    int line;
    add(&text, "{\"format\":\"pourwright/1.0\",\"lines\":[");
    for (line = 0; line < count; line++) {
        add(&text, "%s{\"order\":\"%d\",\"product\":\"%s\",\"pieces\":%ld}", line == 0 ? "" : ",", line,
            PRODUCTS[(round + line) % 5], 1 + (7 * round + line) % 60);
    }
    add(&text, "]}");
    return text;
}

static int32_t at_once(void *user)
{
    (void)user;
    return 1;
}

static void read_plan(const pour_plan *plan, long round)
{
    const char *record = "{\"calculate\":\"record\",\"actuals\":{\"format\":\"pourwright/1.0\",\"pots\":{}}}";
    const char *odd = "{\"calculate\":\"record\",\"actuals\":{\"format\":\"pourwright/1.0\",\"pots\":{\"?\":{}}}}";
    char *out = NULL;
    size_t len;
    pour_plan *again = NULL;
    pour_error *error = NULL;
    CHECK(pour_plan_request(plan, record, strlen(record), &out, NULL, NULL) == POUR_OK);
    pour_string_free(out);
    CHECK(pour_plan_request(plan, odd, strlen(odd), &out, NULL, &error) == POUR_REFUSED);
    pour_error_free(error);
    records++;
    CHECK((round % 2 == 0 ? pour_plan_sheet : pour_plan_notes)(plan, &out, NULL, NULL) == POUR_OK);
    pour_string_free(out);
    if (round % 16 == 4) {
        CHECK(pour_plan_json(plan, &out, &len, NULL) == POUR_OK);
        CHECK(pour_plan_from_json(out, len, &again, NULL) == POUR_OK);
        pour_string_free(out);
        pour_plan_free(again);
    }
}

static void plan_once(long round)
{
    const uint32_t none = POUR_OMITTED_COUNT;
    struct text text = day(round, round % CYCLE == 0 ? LINES : 1 + (int)(round % 3));
    int32_t wanted = POUR_OK, status;
    uint32_t pots = none;
    int32_t (*stop)(void *) = NULL;
    pour_plan *plan = NULL;
    pour_error *error = NULL;
    switch (round % 8) {
    case 2: /* ends too early */
        text.len -= 1 + (size_t)round % (text.len - 1);
        wanted = POUR_REFUSED;
        break;
    case 3: /* a product that the book does not have */
        memcpy(strstr(text.start, "\"product\":\"") + 11, "x", 1);
        wanted = POUR_REFUSED;
        break;
    case 4: /* the demo day */
        free(text.start);
        text = (struct text){NULL, 0, 0};
        add(&text, "%s", demo);
        break;
    case 5: /* not UTF-8 */
        text.start[(size_t)round % text.len] = '\xff';
        wanted = POUR_NOT_UTF8;
        break;
    case 6: /* takes more pots than it may */
        pots = 0;
        wanted = POUR_OVER_BUDGET;
        break;
    case 7: /* a slip in the pieces, stopped */
        text.len = 0;
        add(&text, "{\"format\":\"pourwright/1.0\",\"lines\":[{\"order\":\"1\",\"product\":\"%s\",\"pieces\":%d}]}",
            PRODUCTS[0], 100000);
        stop = at_once;
        wanted = POUR_STOPPED;
        break;
    default:
        break;
    }
    status = pour_book_plan_within(book, text.start, text.len, pots, none, stop, NULL, &plan, &error);
    if (status != wanted) {
        fprintf(stderr, "Round %ld: status %d, not %d. %s\n", round, (int)status, (int)wanted,
                error == NULL ? "" : pour_error_text(error));
        failures++;
    }
    if (plan == NULL) {
        refused++;
    } else {
        plans++;
        read_plan(plan, round);
    }
    pour_error_free(error);
    pour_plan_free(plan);
    free(text.start);
}

static void request_once(long round)
{
    static const char *const ASKED[] = {
        "{\"calculate\":\"formula\",\"formulas\":[\"dusk\",\"plain\"],\"base_amount\":\"1 1/2 cup\"}",
        "{\"calculate\":\"cost\",\"formulas\":[\"dusk\",\"plain\"],\"base_amount\":\"1 1/2 cup\"}",
        "{\"calculate\":\"convert\",\"amount\":\"1 1/4 cup\",\"to\":\"mL\"}",
        /* refused */
        "{\"calculate\":\"formula\",\"formulas\":[\"dusk\",\"plane\"]}",
        "{\"calculate\":\"convert\",\"amount\":\"6 oz\",\"to\":\"g\"}",
        "{\"calculate\":\"formula\",\"formulas\":[",
    };
    const char *asked = ASKED[round % 6];
    char *out = NULL;
    pour_error *error = NULL;
    int32_t status = pour_book_request(book, asked, strlen(asked), &out, NULL, &error);
    CHECK(status == (round % 6 < 3 ? POUR_OK : POUR_REFUSED));
    requests++;
    pour_string_free(out);
    pour_error_free(error);
}

static void mix_once(long round)
{
    pour_mix *pot = NULL, *drawn = NULL;
    CHECK(pour_mix_of_book(book, &pot, NULL) == POUR_OK);
    CHECK(pour_mix_add(pot, "clear-base", 100 + (double)(round % 7), NULL) == POUR_OK);
    CHECK(pour_mix_draw(pot, 30, &drawn, NULL) == POUR_OK);
    CHECK(pour_mix_merge(pot, drawn, NULL) == POUR_OK);
    pour_mix_free(pot);
    pour_mix_free(drawn);
}

static char *demo_plan(void)
{
    pour_plan *plan = NULL;
    char *json = NULL;
    CHECK(pour_book_plan(book, demo, demo_len, &plan, NULL) == POUR_OK);
    CHECK(pour_plan_json(plan, &json, NULL, NULL) == POUR_OK);
    pour_plan_free(plan);
    return json;
}

/* Resident memory of the process, and bytes that are allocated, in kB. */
static long resident(void)
{
    long size, pages = 0;
    FILE *statm = fopen("/proc/self/statm", "r");
    if (statm == NULL || fscanf(statm, "%ld %ld", &size, &pages) != 2) exit(2);
    fclose(statm);
    return pages * (sysconf(_SC_PAGESIZE) / 1024);
}

static long in_use(void)
{
    struct mallinfo2 info = mallinfo2();
    return (long)((info.uordblks + info.hblkhd) / 1024);
}

int main(int argc, char **argv)
{
    char *json, *first, *last;
    size_t len;
    long rounds, warm, round, resident_before = 0, in_use_before = 0, resident_after, in_use_after;
    time_t begun = time(NULL);
    if (argc != 4 || (rounds = atol(argv[3])) < 16 * CYCLE) {
        fprintf(stderr, "Usage: soak BOOK.json ORDERS.json ROUNDS, at least %d\n", 16 * CYCLE);
        return 2;
    }
    json = read_file(argv[1], &len);
    demo = read_file(argv[2], &demo_len);
    CHECK(pour_book_from_json(json, len, &book, NULL) == POUR_OK);
    first = demo_plan();
    rounds -= rounds % CYCLE;
    warm = rounds / 10 > 8 * CYCLE ? rounds / 10 - rounds / 10 % CYCLE : 8 * CYCLE;
    for (round = 0; round < rounds && failures == 0; round++) {
        if (round == warm) {
            resident_before = resident();
            in_use_before = in_use();
        }
        plan_once(round);
        request_once(round);
        mix_once(round);
    }
    resident_after = resident();
    in_use_after = in_use();
    last = demo_plan();
    CHECK(strcmp(first, last) == 0);
    printf("soak in C: %ld rounds in %.0f s: %ld plans with a record each, %ld plans refused, %ld requests. "
           "After %ld rounds %ld kB resident, %ld kB allocated; at the end %ld kB and %ld kB.\n",
           round, difftime(time(NULL), begun), plans, refused, requests, warm, resident_before, in_use_before,
           resident_after, in_use_after);
    CHECK(plans > rounds / 3 && refused > rounds / 3 && records == plans);
    CHECK(resident_after - resident_before <= RESIDENT_KB);
    CHECK(labs(in_use_after - in_use_before) <= IN_USE_KB);
    pour_string_free(first);
    pour_string_free(last);
    pour_book_free(book);
    free(demo);
    free(json);
    return outcome("soak");
}
