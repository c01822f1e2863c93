/* What documents and plans cost, and what happens where there is not so much: memory BOOK.json.
 *
 * Each call runs in a process of its own: once to see how much memory it takes, then under limits of address space,
 * where it must be refused with POUR_OUT_OF_MEMORY, or end as it did without a limit, and print nothing.
 */
#define _GNU_SOURCE
#include "check.h"

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

static char *book_json;
static size_t book_len;

/* ---- documents that are larger in memory than as text ---- */

/* `head`, then `item` with a name of its own for each %s until there are `size` bytes, then `tail`. */
static struct text shaped(const char *head, const char *item, const char *tail, size_t size)
{
    struct text text = {NULL, 0, 0};
    unsigned number;
    add(&text, "%s", head);
    for (number = 0; text.len < size; number++) {
        char name[8] = {0};
        unsigned rest = number, place = 0;
        do {
            name[place++] = (char)('a' + rest % 26);
            rest /= 26;
        } while (rest > 0);
        add(&text, number == 0 ? "" : ",");
        add(&text, item, name);
    }
    add(&text, "%s", tail);
    return text;
}

enum kind { REQUEST, BOOK, PLAN };

static const struct shape {
    enum kind kind;
    const char *head, *item, *tail;
} SHAPES[] = {
    {REQUEST, "{\"calculate\":\"convert\",\"x\":[", "{\"\":0}", "]}"},
    {REQUEST, "{\"calculate\":\"convert\",\"ext\":{\"x\":[", "{\"\":0}", "]}}"},
    {REQUEST, "{\"calculate\":\"convert\",\"ext\":{\"x\":[", "[0]", "]}}"},
    {REQUEST, "{\"calculate\":\"convert\",\"ext\":{\"x\":[", "0", "]}}"},
    {REQUEST, "{\"calculate\":\"convert\",\"ext\":{", "\"%s\":\"\"", "}}"},
    {REQUEST, "{\"calculate\":\"convert\",", "\"%s\":0", "}"},
    {REQUEST, "{\"calculate\":\"convert\",", "\"\":0", "}"},
    {REQUEST, "{\"calculate\":\"convert\",\"amount\":\"", "xxxxxxxxxxxxxxxxxxxxxxxxxxx", "\"}"},
    {REQUEST, "{\"calculate\":\"heat\",\"timings\":[", "{}", "]}"},
    {REQUEST, "{\"calculate\":\"plan\",\"orders\":{\"format\":\"pourwright/1.0\",\"lines\":[", "0", "]}}"},
    {REQUEST, "{\"calculate\":\"plan\",\"orders\":{\"format\":\"pourwright/1.0\",\"lines\":[",
     "{\"order\":\"1\",\"product\":\"%s\",\"pieces\":1}", "]}}"},
    {REQUEST, "{\"calculate\":\"record\",\"plan\":{\"pots\":[", "{}", "]}}"},
    {BOOK, "{\"format\":\"pourwright/1.0\",\"ext\":{\"x\":[", "{\"\":0}", "]}}"},
    {BOOK, "{", "\"%s\":0", "}"},
    {BOOK, "{\"materials\":{", "\"%s\":0", "}}"},
    {BOOK, "{\"materials\":{", "\"%s\":{}", "}}"},
    {BOOK, "{\"format\":\"pourwright/1.0\",\"materials\":{", "\"%s\":{\"kind\":\"salt\",\"density\":\"2 g/mL\"}", "}}"},
    {BOOK, "{\"format\":\"pourwright/1.0\",\"formulas\":{", "\"%s\":{}", "}}"},
    {BOOK, "{\"format\":\"pourwright/1.0\",\"formulas\":{", "\"%s\":{\"doses\":{}}", "}}"},
    {BOOK, "{\"molds\":{", "\"%s\":{}", "}}"},
    {BOOK, "{\"products\":{", "\"%s\":{}", "}}"},
    {BOOK, "{\"products\":{", "\"%s\":{\"mold\":\"a\",\"formulas\":[\"a\"]}", "}}"},
    {PLAN, "{\"pots\":[", "0", "]}"},
    {PLAN, "{\"pots\":[", "{}", "]}"},
    {PLAN, "{\"steps\":[", "{}", "]}"},
    {PLAN, "{\"format\":\"pourwright/1.0\",\"made_from\":{\"book\":{\"materials\":{", "\"%s\":{}", "}}}}"},
};

/* ---- calls in a process of their own ---- */

struct call {
    enum { DOCUMENT, DAY } what;
    enum kind kind;
    struct text text;
};

struct found {
    int32_t status;
    char code[32];
    uint32_t pots;
    long grown_kb; /* of what is resident, at most */
};

/* The number of kB in the line `key` of what the system knows about this process. */
static long of_process(const char *key)
{
    char line[256];
    long kb = -1;
    FILE *status = fopen("/proc/self/status", "r");
    if (status == NULL) exit(2);
    while (fgets(line, sizeof line, status) != NULL) {
        if (strncmp(line, key, strlen(key)) == 0) sscanf(line + strlen(key), ": %ld", &kb);
    }
    fclose(status);
    return kb;
}

static int32_t document_call(const struct call *call, pour_error **error)
{
    char *out = NULL;
    pour_book *book = NULL;
    pour_plan *plan = NULL;
    int32_t status;
    switch (call->kind) {
    case REQUEST:
        status = pour_request(call->text.start, call->text.len, &out, NULL, error);
        break;
    case BOOK:
        status = pour_book_from_json(call->text.start, call->text.len, &book, error);
        break;
    default:
        status = pour_plan_from_json(call->text.start, call->text.len, &plan, error);
    }
    pour_string_free(out);
    pour_book_free(book);
    pour_plan_free(plan);
    return status;
}

/* Plans a day and reads all of it. */
static int32_t day_call(const struct call *call, const pour_book *book, struct found *found, pour_error **error)
{
    pour_plan *plan = NULL;
    char *out = NULL;
    const char *place;
    int32_t status = pour_book_plan_within(book, call->text.start, call->text.len, UINT32_MAX - 1, UINT32_MAX - 1, NULL,
                                           NULL, &plan, error);
    if (status == POUR_OK && (status = pour_plan_sheet(plan, &out, NULL, error)) == POUR_OK) pour_string_free(out);
    if (status == POUR_OK && (status = pour_plan_notes(plan, &out, NULL, error)) == POUR_OK) pour_string_free(out);
    if (status == POUR_OK && (status = pour_plan_json(plan, &out, NULL, error)) == POUR_OK) {
        for (place = out; (place = strstr(place, "\"from_shelf\":")) != NULL; place++) found->pots++;
        pour_string_free(out);
    }
    pour_plan_free(plan);
    return status;
}

/* The call in a process of its own, with this many bytes of address space more than it has. What it prints is a failure. */
static struct found alone(const struct call *call, rlim_t more)
{
    struct found found = {-1, "", 0, 0};
    int result[2], printed[2], status;
    char said[200];
    ssize_t len;
    pid_t child;
    if (pipe(result) != 0 || pipe(printed) != 0) exit(2);
    child = fork();
    if (child < 0) exit(2);
    if (child == 0) {
        pour_error *error = NULL;
        pour_book *book = NULL;
        long before, resident;
        close(result[0]);
        close(printed[0]);
        dup2(printed[1], 1);
        dup2(printed[1], 2);
        if (call->what == DAY) CHECK(pour_book_from_json(book_json, book_len, &book, NULL) == POUR_OK);
        before = of_process("VmSize");
        resident = of_process("VmRSS");
        if (more != RLIM_INFINITY) {
            struct rlimit limit = {(rlim_t)before * 1024 + more, (rlim_t)before * 1024 + more};
            if (setrlimit(RLIMIT_AS, &limit) != 0) _exit(3);
        }
        found.status = call->what == DAY ? day_call(call, book, &found, &error) : document_call(call, &error);
        if (error != NULL) strncpy(found.code, pour_error_code(error, 0), sizeof found.code - 1);
        pour_error_free(error);
        pour_book_free(book);
        found.grown_kb = of_process("VmHWM") - resident;
        if (write(result[1], &found, sizeof found) != (ssize_t)sizeof found) _exit(3);
        _exit(0);
    }
    close(result[1]);
    close(printed[1]);
    len = read(printed[0], said, sizeof said - 1);
    said[len < 0 ? 0 : len] = '\0';
    if (len != 0) {
        fprintf(stderr, "It printed: %s\n", said);
        failures++;
    }
    if (read(result[0], &found, sizeof found) != (ssize_t)sizeof found) found.status = -1;
    close(result[0]);
    close(printed[0]);
    waitpid(child, &status, 0);
    CHECK(WIFEXITED(status) && WEXITSTATUS(status) == 0);
    return found;
}

/* The call without a limit, and under limits up to some with room for all that it may take, which is `bound`. */
static struct found bounded(const struct call *call, size_t bound)
{
    const struct found free_one = alone(call, RLIM_INFINITY);
    size_t more;
    int refused = 0;
    CHECK(free_one.grown_kb * 1024 <= (long)bound);
    /* libc's heap grows by 132 kB: with less than that there may be no room even to say so. */
    for (more = (size_t)1 << 18; more < 8 * bound; more *= 4) {
        const struct found found = alone(call, more);
        const int out = found.status == POUR_OUT_OF_MEMORY;
        CHECK(out || (found.status == free_one.status && strcmp(found.code, free_one.code) == 0));
        CHECK(!out || strcmp(found.code, "out-of-memory") == 0 || strcmp(found.code, "budget-memory") == 0);
        /* What does not fit is refused, and what fits, next to what libc keeps, is not. */
        if ((long)(more / 1024) < free_one.grown_kb / 2) CHECK(out);
        if (more >= 2 * bound) CHECK(!out);
        refused += out;
    }
    CHECK(refused > 0);
    return free_one;
}

static void documents(void)
{
    const size_t size = 1 << 18;
    double most = 0;
    size_t i;
    for (i = 0; i < sizeof SHAPES / sizeof *SHAPES; i++) {
        const struct shape *shape = &SHAPES[i];
        const struct call call = {DOCUMENT, shape->kind, shaped(shape->head, shape->item, shape->tail, size)};
        const int before = failures;
        const struct found found =
            bounded(&call, call.text.len * POUR_MEMORY_PER_BYTE + POUR_MEMORY_PER_CALL);
        const double each = (double)found.grown_kb * 1024 / (double)call.text.len;
        if (failures > before || getenv("VERBOSE") != NULL) {
            fprintf(stderr, "%s%s...: status %d (%s), %ld kB, %.1f bytes for each byte\n", shape->head, shape->item,
                    (int)found.status, found.code, found.grown_kb, each);
        }
        CHECK(found.status == POUR_REFUSED || found.status == POUR_OK);
        if (each > most) most = each;
        free(call.text.start);
    }
    printf("memory: a document takes up to %.0f bytes for each of its bytes.\n", most);
}

static void one_day(const char *name, struct text orders)
{
    const struct call call = {DAY, REQUEST, orders};
    struct found found = alone(&call, RLIM_INFINITY);
    CHECK(found.status == POUR_OK && found.pots > 10);
    found = bounded(&call, (book_len + orders.len) * POUR_MEMORY_PER_BYTE + found.pots * (size_t)POUR_MEMORY_PER_POT
                               + POUR_MEMORY_PER_CALL);
    printf("memory: %s, %u pots: %ld kB, %.1f for each pot.\n", name, (unsigned)found.pots, found.grown_kb,
           (double)found.grown_kb / found.pots);
    free(orders.start);
}

static void days(void)
{
    const char *head = "{\"format\":\"pourwright/1.0\",\"lines\":[";
    struct text few = {NULL, 0, 0}, many = {NULL, 0, 0};
    add(&few, "%s{\"order\":\"1\",\"product\":\"dusk finger\",\"pieces\":1000}]}", head);
    add(&many, "%s{\"order\":\"1\",\"product\":\"dusk finger\",\"pieces\":100000}]}", head);
    one_day("a day of 1000 pieces", few);
    one_day("a day of 100000 pieces", many);
    one_day("a day of many lines",
            shaped(head, "{\"order\":\"%s\",\"product\":\"dusk finger\",\"pieces\":24}", "]}", 50000));
    one_day("a day of more lines",
            shaped(head, "{\"order\":\"%s\",\"product\":\"reed paddle\",\"pieces\":2}", "]}", 100000));
}

int main(int argc, char **argv)
{
    char *out = NULL;
    const char *request = "{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"mL\"}";
    if (argc != 2) {
        fprintf(stderr, "Usage: memory BOOK.json\n");
        return 2;
    }
    book_json = read_file(argv[1], &book_len);
    /* What is made once is made before. */
    CHECK(pour_request(request, strlen(request), &out, NULL, NULL) == POUR_OK);
    pour_string_free(out);
    documents();
    days();
    free(book_json);
    return outcome("memory");
}
