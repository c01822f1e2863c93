/* Times the C calls, each next to the same sum in plain C, in turns: bench BOOK.json ORDERS.json.
 *
 * Of each the shortest time of all rounds counts, since what disturbs a measurement only ever makes it longer. Before
 * it is timed, each peer has to agree with the library.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <pourwright.h>

#include "peers.h"

enum { ROUNDS = 60, SMALL = 1000, LARGE = 1000000, PARTS = 8 };
static const double LONG_ENOUGH = 2e-3;

/* Does the work so many times, and returns the last result. */
typedef double (*work)(size_t times);

static double seconds(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

static volatile double sink;

static double timed(work of, size_t times)
{
    double start = seconds();
    sink = of(times);
    return seconds() - start;
}

static size_t enough(work of)
{
    size_t times = 1;
    while (timed(of, times) < LONG_ENOUGH) times *= 2;
    return times;
}

static void agree(const char *name, double ours, double theirs)
{
    if (!(fabs(ours - theirs) <= 1e-12 * fabs(theirs))) {
        fprintf(stderr, "%s: %.17g is not %.17g.\n", name, ours, theirs);
        exit(1);
    }
}

/* Nanoseconds for each of `count` works, in turns. */
static void turns(const work *works, size_t count, double *ns)
{
    size_t times[3], i, round;
    for (i = 0; i < count; i++) {
        times[i] = enough(works[i]);
        ns[i] = INFINITY;
    }
    for (round = 0; round < ROUNDS; round++) {
        for (i = 0; i < count; i++) {
            double found = 1e9 * timed(works[i], times[i]) / (double)times[i];
            if (found < ns[i]) ns[i] = found;
        }
    }
}

static void scalar(const char *name, work ours, work plain, work keeping)
{
    const work works[3] = {ours, plain, keeping};
    double ns[3];
    agree(name, ours(1), plain(1));
    agree(name, ours(1), keeping(1));
    turns(works, 3, ns);
    printf("%-28s %8.1f ns %8.1f ns %8.1f ns %+8.1f ns\n", name, ns[0], ns[1], ns[2], ns[0] - ns[2]);
}

static void alone(const char *name, work ours)
{
    double ns;
    turns(&ours, 1, &ns);
    printf("%-28s %8.1f us\n", name, 1e-3 * ns);
}

static size_t rows;

static void columnar(const char *name, work ours, work loop, work passes)
{
    const work works[3] = {ours, loop, passes};
    const size_t sizes[2] = {SMALL, LARGE};
    size_t i, j;
    for (i = 0; i < 2; i++) {
        double ns[3];
        rows = sizes[i];
        agree(name, ours(1), loop(1));
        if (passes != NULL) agree(name, ours(1), passes(1));
        turns(works, passes == NULL ? 2 : 3, ns);
        for (j = 0; j < 3; j++) ns[j] /= (double)rows;
        printf("%-28s %8lu %7.2f ns %7.2f ns ", name, (unsigned long)rows, ns[0], ns[1]);
        if (passes == NULL) {
            printf("%10s", "-");
        } else {
            printf("%7.2f ns", ns[2]);
        }
        printf(" %6.2f\n", ns[0] / ns[1]);
    }
}

static void refused(const char *name)
{
    fprintf(stderr, "%s is refused.\n", name);
    exit(1);
}

#define DONE(call)                       \
    do {                                 \
        if ((call) != 0) refused(#call); \
    } while (0)

/* Numbers that the compiler does not know. */
static volatile double volume_ml = 59, scooped = 1.22, cup_ml = 236.5882365, base = 1.03, hot = 0.94, cold = 1.05,
                       voids = 0.01, feed = 0.4, wanted = 1.12, salt = 2.165, celsius = 21.5;
static double masses[PARTS] = {243.7, 5, 9.8, 72, 1.4, 0.4, 1.3, 0.3};
static double densities[PARTS] = {1.042, 1.02, 0.984, 2.165, 1.05, 2.82, 1.39, 0.98};
static pour_conversion cups;
static double *columns[6], *scratch;

#define REPEAT(call)                                           \
    double out = 0;                                            \
    size_t i;                                                  \
    for (i = 0; i < times; i++) DONE(call);                    \
    return out

/* A scalar call and the two peers that do the same sum. */
#define SCALAR(sum, ours, ...)                                                       \
    static double our_##sum(size_t times) { REPEAT(ours(__VA_ARGS__, &out, NULL)); } \
    PEERS(sum, __VA_ARGS__)
#define PEERS(sum, ...)                                                                \
    static double plain_##sum(size_t times) { REPEAT(peer_##sum(__VA_ARGS__, &out)); } \
    static double kept_##sum(size_t times) { REPEAT(keeping_##sum(__VA_ARGS__, &out)); }

SCALAR(mass_of_volume, pour_mass_of_volume, volume_ml, scooped)
static double our_piece_mass(size_t times)
{
    pour_piece_mass_result out = {0};
    size_t i;
    for (i = 0; i < times; i++) DONE(pour_piece_mass(volume_ml, cold, hot, voids, feed, &out, NULL));
    return out.piece_mass_g;
}
PEERS(piece_mass, volume_ml, hot, cold, voids, feed)
static double our_salt_mass(size_t times)
{
    REPEAT(pour_salt_for_density(cup_ml, base, salt, wanted, voids, POUR_OMITTED, &out, NULL));
}
PEERS(salt_mass, cup_ml, base, salt, voids, wanted)
static pour_parts_row parts[PARTS];
static double our_density_of_parts(size_t times) { REPEAT(pour_density_of_parts(parts, PARTS, voids, &out, NULL)); }
PEERS(density_of_parts, PARTS, masses, densities, voids)
SCALAR(water_density, pour_water_density, celsius)
static double our_convert(size_t times) { REPEAT(pour_convert_with(&cups, volume_ml, &out, NULL)); }
PEERS(convert, cups.times, cups.plus, cups.over, cups.least, volume_ml)

static double our_named(size_t times)
{
    REPEAT(pour_convert_number(volume_ml, "cup", "mL", POUR_MEASURES_US_CUSTOMARY, &out, NULL));
}
static double our_request(size_t times)
{
    const char *json = "{\"calculate\":\"convert\",\"amount\":\"1 1/4 cup\",\"to\":\"mL\"}";
    size_t i, len = strlen(json);
    for (i = 0; i < times; i++) {
        char *out;
        DONE(pour_request(json, len, &out, NULL, NULL));
        pour_string_free(out);
    }
    return 0;
}

static char *book_json, *orders_json;
static size_t book_len, orders_len;
static pour_book *book;

static double our_book(size_t times)
{
    size_t i;
    for (i = 0; i < times; i++) {
        pour_book *loaded;
        DONE(pour_book_from_json(book_json, book_len, &loaded, NULL));
        pour_book_free(loaded);
    }
    return 0;
}

static double our_day(size_t times)
{
    size_t i;
    for (i = 0; i < times; i++) {
        pour_plan *plan;
        DONE(pour_book_plan(book, orders_json, orders_len, &plan, NULL));
        pour_plan_free(plan);
    }
    return 0;
}

/* A columnar work: the last row of what it writes. */
#define COLUMN(call)                            \
    double *out = columns[5];                   \
    size_t i;                                   \
    for (i = 0; i < times; i++) call;           \
    return out[rows - 1]

#define PLAIN(column) (pour_column){columns[column], 8}
#define RESULT (pour_result_column){columns[5], 8}

static double our_convert_n(size_t times)
{
    COLUMN(DONE(pour_convert_with_n(&cups, rows, PLAIN(0), RESULT, NULL, NULL)));
}
static double loop_cups(size_t times)
{
    COLUMN(loop_convert(rows, cups.times, cups.plus, cups.over, cups.least, columns[0], out));
}
static double passes_cups(size_t times)
{
    COLUMN(passes_convert(rows, cups.times, cups.plus, cups.over, cups.least, columns[0], out, scratch));
}
static double our_mass_n(size_t times)
{
    pour_mass_of_volume_columns of = {PLAIN(0), PLAIN(1)};
    pour_mass_of_volume_result_columns to = {RESULT};
    COLUMN(DONE(pour_mass_of_volume_n(rows, &of, &to, NULL, NULL)));
}
static double loop_mass(size_t times) { COLUMN(loop_mass_of_volume(rows, columns[0], columns[1], out)); }
static double passes_mass(size_t times)
{
    COLUMN(passes_mass_of_volume(rows, columns[0], columns[1], out, scratch));
}
static double our_piece_n(size_t times)
{
    pour_piece_mass_columns of = {PLAIN(0), PLAIN(2), PLAIN(1), PLAIN(3), PLAIN(4)};
    pour_piece_mass_result_columns to = {RESULT, {NULL, 0}, {NULL, 0}};
    COLUMN(DONE(pour_piece_mass_n(rows, &of, &to, NULL, NULL)));
}
static double loop_piece(size_t times)
{
    COLUMN(loop_piece_mass(rows, columns[0], columns[1], columns[2], columns[3], columns[4], out));
}
static double passes_piece(size_t times)
{
    COLUMN(passes_piece_mass(rows, columns[0], columns[1], columns[2], columns[3], columns[4], out, scratch));
}
static double our_salt_n(size_t times)
{
    /* Columns 1 and 2 are the densities of base and finished plastic; there is one salt. */
    double of_salt = salt;
    pour_salt_for_density_columns of = {PLAIN(0), PLAIN(1), {&of_salt, 0}, PLAIN(2), PLAIN(3), {NULL, 0}};
    pour_salt_for_density_result_columns to = {RESULT};
    COLUMN(DONE(pour_salt_for_density_n(rows, &of, &to, NULL, NULL)));
}
static double loop_salts(size_t times)
{
    /* A plain loop wants the one salt in each row. */
    COLUMN(loop_salt(rows, columns[0], columns[1], columns[4], columns[3], columns[2], out));
}
static double our_parts_n(size_t times)
{
    pour_table of_masses = {scratch, 8 * PARTS, 8}, of_densities = {densities, 0, 8};
    COLUMN(DONE(pour_density_of_parts_n(rows, PARTS, of_masses, of_densities, (pour_column){NULL, 0}, RESULT, NULL,
                                        NULL)));
}
static double loop_parts(size_t times) { COLUMN(loop_density_of_parts(rows, PARTS, scratch, densities, 0, out)); }

/* From `least` to `most`, in equal steps. */
static void fill(double *column, double least, double most)
{
    size_t i;
    for (i = 0; i < LARGE; i++) column[i] = least + (most - least) * (double)i / LARGE;
}

static char *read_file(const char *path, size_t *len)
{
    FILE *file = fopen(path, "rb");
    char *text = malloc(1 << 20);
    if (file == NULL || text == NULL) {
        fprintf(stderr, "%s cannot be read.\n", path);
        exit(2);
    }
    *len = fread(text, 1, 1 << 20, file);
    fclose(file);
    return text;
}

int main(int argc, char **argv)
{
    size_t i;
    if (argc != 3) {
        fprintf(stderr, "Usage: bench BOOK.json ORDERS.json\n");
        return 2;
    }
    book_json = read_file(argv[1], &book_len);
    orders_json = read_file(argv[2], &orders_len);
    DONE(pour_book_from_json(book_json, book_len, &book, NULL));
    DONE(pour_conversion_between("cup", "mL", POUR_MEASURES_US_CUSTOMARY, &cups, NULL));
    scratch = malloc(sizeof(double) * LARGE * PARTS);
    if (scratch == NULL) return 2;
    for (i = 0; i < PARTS; i++) parts[i] = (pour_parts_row){masses[i], densities[i]};
    for (i = 0; i < 6; i++) {
        columns[i] = malloc(sizeof(double) * LARGE);
        if (columns[i] == NULL) return 2;
    }

    printf("%-28s %11s %11s %11s %11s\n", "a scalar call", "pourwright", "plain C", "flags kept", "more");
    scalar("pour_mass_of_volume", our_mass_of_volume, plain_mass_of_volume, kept_mass_of_volume);
    scalar("pour_convert_with", our_convert, plain_convert, kept_convert);
    scalar("pour_piece_mass", our_piece_mass, plain_piece_mass, kept_piece_mass);
    scalar("pour_salt_for_density", our_salt_mass, plain_salt_mass, kept_salt_mass);
    scalar("pour_density_of_parts, 8", our_density_of_parts, plain_density_of_parts, kept_density_of_parts);
    scalar("pour_water_density", our_water_density, plain_water_density, kept_water_density);

    fill(columns[0], 5, 60);
    fill(columns[1], 0.92, 1.01);
    fill(columns[2], 1.02, 1.1);
    fill(columns[3], 0, 0.02);
    fill(columns[4], 0, 1);
    printf("\n%-28s %8s %10s %10s %10s %6s\n", "a row of a column", "rows", "pourwright", "loop", "passes", "ratio");
    columnar("pour_convert_with_n", our_convert_n, loop_cups, passes_cups);
    columnar("pour_mass_of_volume_n", our_mass_n, loop_mass, passes_mass);
    columnar("pour_piece_mass_n", our_piece_n, loop_piece, passes_piece);
    fill(columns[4], 2.165, 2.165);
    columnar("pour_salt_for_density_n", our_salt_n, loop_salts, NULL);
    for (i = 0; i < LARGE * PARTS; i++) scratch[i] = masses[i % PARTS];
    columnar("pour_density_of_parts_n, 8", our_parts_n, loop_parts, NULL);

    printf("\n%-28s %11s\n", "texts and documents", "pourwright");
    alone("pour_convert_number", our_named);
    alone("pour_request, convert", our_request);
    alone("pour_book_from_json, demo", our_book);
    alone("pour_book_plan, demo", our_day);

    for (i = 0; i < 6; i++) free(columns[i]);
    free(scratch);
    pour_book_free(book);
    free(orders_json);
    free(book_json);
    return 0;
}
