/* Calls every function of pourwright.h, correctly and incorrectly: every_call BOOK.json ORDERS.json.
 *
 * The calculations of the table are called in calculations.h; the values beside the calls here are worked out by plain sums.
 * That the list is whole is checked by bindings/c/test, which compares it with ffi/symbols.txt.
 */
#include "calculations.h"

#include <math.h>
#include <stdint.h>

static char *long_text(size_t len)
{
    char *text = malloc(len + 1);
    if (text == NULL) exit(2);
    memset(text, 'x', len);
    text[len] = '\0';
    return text;
}

static void versions(void)
{
    CHECK(pour_abi_version() == POUR_ABI_VERSION);
    CHECK(strcmp(pour_version(), VERSION) == 0);
}

static void errors(void)
{
    pour_error *error = NULL;
    char *out = NULL;
    const char *request = "{\"calculate\":\"convert\",\"amount\":\"6 oz\",\"too\":\"mL\"}";

    CHECK(pour_error_status(NULL) == POUR_OK && pour_error_count(NULL) == 0);
    CHECK(pour_error_code(NULL, 0) == NULL && pour_error_path(NULL, 0) == NULL);
    CHECK(pour_error_message(NULL, 0) == NULL && pour_error_help(NULL, 0) == NULL);
    CHECK(pour_error_text(NULL) == NULL && pour_error_json(NULL) == NULL);
    pour_error_free(NULL);

    /* All faults are reported at once. */
    CHECK(pour_request(request, strlen(request), &out, NULL, &error) == POUR_REFUSED);
    CHECK(out == NULL);
    CHECK(pour_error_count(error) == 3);
    CHECK(strcmp(pour_error_code(error, 1), "missing-field") == 0 && strcmp(pour_error_path(error, 1), "") == 0);
    CHECK(strcmp(pour_error_code(error, 2), "unknown-field") == 0 && strcmp(pour_error_path(error, 2), "/too") == 0);
    CHECK(pour_error_code(error, 3) == NULL && pour_error_path(error, 3) == NULL);
    CHECK(pour_error_message(error, SIZE_MAX) == NULL && pour_error_help(error, SIZE_MAX) == NULL);
    CHECK(strstr(pour_error_text(error), "6 oz") != NULL);
    CHECK(strncmp(pour_error_json(error), "{\"faults\":[{\"code\":", 19) == 0);
    pour_error_free(error);
}

static void conversions(void)
{
    const char latin1[] = "1 caf\xe9";
    char *longest = long_text(5000);
    pour_conversion cup = {-1, -1, -1, -1}, celsius;
    double out;

    GIVES(pour_convert("1 1/4 cup", "mL", POUR_MEASURES_US_CUSTOMARY, &out, &error), out, 295.735295625);
    GIVES(pour_convert("330 \xc2\xb0""F", "\xc2\xb0""C", 0, &out, &error), out, 1490. / 9);
    CHECK(pour_conversion_between("cup", "mL", POUR_MEASURES_US_LABEL, &cup, NULL) == POUR_OK);
    GIVES(pour_convert_with(&cup, 0.5, &out, &error), out, 120);
    CHECK(pour_conversion_between("cup", "mL", 0, &cup, NULL) == POUR_OK);
    GIVES(pour_convert_with(&cup, 1, &out, &error), out, 236.5882365);
    CHECK(pour_conversion_between("\xc2\xb0""F", "\xc2\xb0""C", POUR_MEASURES_METRIC, &celsius, NULL) == POUR_OK);
    GIVES(pour_convert_with(&celsius, 32, &out, &error), out, 0);
    GIVES(pour_convert_with(&celsius, -40, &out, &error), out, -40);

    out = UNTOUCHED;
    FAILS(pour_convert(latin1, "mL", 0, &out, error), POUR_NOT_UTF8, "not-utf8", "/amount");
    FAILS(pour_convert(longest, "mL", 0, &out, error), POUR_TOO_LARGE, "too-large", "/amount");
    FAILS(pour_convert("6 oz", "g", 0, &out, error), POUR_REFUSED, "amount-ambiguous", "/amount");
    FAILS(pour_convert_with(NULL, 1, &out, error), POUR_NULL, "null-pointer", "/conversion");
    FAILS(pour_convert_with(&cup, 1, NULL, error), POUR_NULL, "null-pointer", "/converted");
    FAILS(pour_convert_with(&cup, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/value");
    FAILS(pour_convert_with(&cup, -1, &out, error), POUR_REFUSED, "outside-conversion", "/value");
    FAILS(pour_convert_with(&celsius, -460, &out, error), POUR_REFUSED, "outside-conversion", "/value");
    CHECK(out == UNTOUCHED);
    FAILS(pour_conversion_between("cup", "mL", 3, NULL, error), POUR_NULL, "null-pointer", "/conversion");
    cup.times = UNTOUCHED;
    FAILS(pour_conversion_between("cup", "mL", -1, &cup, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/measures");
    FAILS(pour_conversion_between(NULL, "mL", 0, &cup, error), POUR_NULL, "null-pointer", "/from");
    FAILS(pour_conversion_between("oz", "g", 0, &cup, error), POUR_REFUSED, "amount-ambiguous", "/from");
    FAILS(pour_conversion_between("cup", "g", 0, &cup, error), POUR_REFUSED, "amount-wrong-dimension", "/to");
    FAILS(pour_conversion_between("tsp", "mL", POUR_MEASURES_IMPERIAL, &cup, error), POUR_REFUSED,
          "system-lacks-measure", "/from");
    CHECK(cup.times == UNTOUCHED);
    free(longest);
}

/* The expected sums. */
static void sums(void)
{
    const pour_parts_row parts[] = {{100, 1}, {50, 2}};
    pour_piece_mass_result piece;
    pour_shot_fill_input shot = POUR_SHOT_FILL_INPUT_INIT;
    pour_shot_fill_result fill;
    pour_error *error = NULL;
    double out;
    GIVES(pour_mass_of_volume(59, 1.22, &out, &error), out, 59 * 1.22);
    GIVES(pour_volume_of_mass(61, 1.22, &out, &error), out, 50);
    GIVES(pour_density_of_parts(parts, 2, 0.1, &out, &error), out, 150 / 125. * 0.9);
    CHECK(pour_piece_mass(10, 1.05, 0.98, POUR_OMITTED, POUR_OMITTED, &piece, NULL) == POUR_OK);
    CHECK(near(piece.piece_mass_g, 10.15) && near(piece.piece_mass_min_g, 9.8) && near(piece.piece_mass_max_g, 10.5));
    shot.cavities = 4;
    shot.cavity_volume_ml = 10;
    shot.cold_density_g_per_ml = 1.05;
    shot.feed = 0;
    shot.sprue_volume_ml = 2;
    CHECK(pour_shot_fill(&shot, &fill, NULL) == POUR_OK);
    CHECK(near(fill.shot_mass_g, 42 * 1.05) && near(fill.pieces_mass_g, 42) && near(fill.sprue_mass_g, 2.1));

    /* Everything out of range is reported at once. */
    shot.feed = 3;
    shot.layer_share = 0;
    CHECK(pour_shot_fill(&shot, &fill, &error) == POUR_REFUSED);
    CHECK(pour_error_count(error) == 2);
    CHECK(strcmp(pour_error_path(error, 0), "/feed") == 0 || strcmp(pour_error_path(error, 1), "/feed") == 0);
    pour_error_free(error);
}

static void columns(void)
{
    const double a[] = {10, NAN, -1, 20}, two = 2;
    const pour_column of_a = {a, 8}, none = {NULL, 0};
    const pour_table masses = {a, 8, 0}, densities = {&two, 0, 0}, no_table = {NULL, 8, 8};
    double out[4];
    const pour_result_column to = {out, 8}, nowhere = {NULL, 0};
    int32_t statuses[4];
    pour_conversion way;
    CHECK(pour_conversion_between("cup", "mL", POUR_MEASURES_METRIC, &way, NULL) == POUR_OK);

#define ROWS(call, first, last)                                                             \
    do {                                                                                    \
        memset(statuses, 77, sizeof statuses);                                              \
        CHECK((call) == POUR_OK);                                                           \
        CHECK(near(out[0], first) && canonical(out[1]) && canonical(out[2]) && near(out[3], last)); \
        CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);                    \
        CHECK(statuses[2] == POUR_REFUSED && statuses[3] == POUR_OK);                       \
    } while (0)

    ROWS(pour_convert_with_n(&way, 4, of_a, to, statuses, NULL), 2500, 5000);
    ROWS(pour_density_of_parts_n(4, 1, masses, densities, none, to, statuses, NULL), 2, 2);
#undef ROWS

    out[0] = UNTOUCHED;
    FAILS(pour_convert_with_n(NULL, 4, of_a, to, NULL, error), POUR_NULL, "null-pointer", "/conversion");
    FAILS(pour_convert_with_n(&way, 4, none, to, NULL, error), POUR_NULL, "null-pointer", "/values");
    FAILS(pour_convert_with_n(&way, 4, of_a, nowhere, NULL, error), POUR_NULL, "null-pointer", "/converted");
    FAILS(pour_convert_with_n(&way, 4, of_a, (pour_result_column){out, 0}, NULL, error), POUR_REFUSED,
          "output-stride", "/converted");
    FAILS(pour_convert_with_n(&way, 2, of_a, (pour_result_column){out, 7}, NULL, error), POUR_REFUSED,
          "output-stride", "/converted");
    FAILS(pour_convert_with_n(&way, 2, of_a, (pour_result_column){out + 1, -1}, NULL, error), POUR_REFUSED,
          "output-stride", "/converted");
    FAILS(pour_convert_with_n(&way, 2, of_a, to, (int32_t *)(void *)((char *)statuses + 1), error), POUR_MISALIGNED,
          "misaligned", "/statuses");
    FAILS(pour_convert_with_n(&way, SIZE_MAX, of_a, to, NULL, error), POUR_TOO_LARGE, "too-large", "/values");
    FAILS(pour_convert_with_n(&way, 4, (pour_column){a, PTRDIFF_MIN}, to, NULL, error), POUR_TOO_LARGE, "too-large",
          "/values");
    FAILS(pour_density_of_parts_n(4, SIZE_MAX, masses, densities, none, to, NULL, error), POUR_REFUSED,
          "out-of-range", "/parts");
    FAILS(pour_density_of_parts_n(4, 1, no_table, densities, none, to, NULL, error), POUR_NULL, "null-pointer",
          "/masses_g");
    CHECK(out[0] == UNTOUCHED);
    CHECK(pour_convert_with_n(&way, 0, none, nowhere, NULL, NULL) == POUR_OK);
    {
        const char texts[] = "1/4 cup\xff" "6 oz1 [cup_m]";
        const int64_t offsets[] = {0, 7, 8, 12, 21}, backwards[] = {5, 2, -1, 0, 4097};

        CHECK(pour_convert_texts_n(4, texts, offsets, "mL", POUR_MEASURES_METRIC, to, statuses, NULL) == POUR_OK);
        CHECK(near(out[0], 62.5) && canonical(out[1]) && canonical(out[2]) && near(out[3], 240));
        CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_UTF8 && statuses[2] == POUR_REFUSED &&
              statuses[3] == POUR_OK);
        CHECK(pour_convert_texts_n(4, texts, backwards, "mL", 0, to, statuses, NULL) == POUR_OK);
        CHECK(statuses[0] == POUR_TOO_LARGE && statuses[1] == POUR_TOO_LARGE && statuses[2] == POUR_TOO_LARGE &&
              statuses[3] == POUR_TOO_LARGE);
        CHECK(pour_convert_texts_n(0, NULL, NULL, "mL", 0, nowhere, NULL, NULL) == POUR_OK);
        FAILS(pour_convert_texts_n(4, NULL, offsets, "mL", 0, to, NULL, error), POUR_NULL, "null-pointer", "/texts");
        FAILS(pour_convert_texts_n(4, texts, NULL, "mL", 0, to, NULL, error), POUR_NULL, "null-pointer", "/offsets");
        FAILS(pour_convert_texts_n(4, texts, offsets, NULL, 0, to, NULL, error), POUR_NULL, "null-pointer", "/to");
        FAILS(pour_convert_texts_n(4, texts, offsets, "furlongs", 0, to, NULL, error), POUR_REFUSED, "unit-unknown", "/to");
        FAILS(pour_convert_texts_n(4, texts, offsets, "mL", 99, to, NULL, error), POUR_UNKNOWN_NUMBER, "unknown-word",
              "/measures");
        FAILS(pour_convert_texts_n(4, texts, offsets, "mL", 0, nowhere, NULL, error), POUR_NULL, "null-pointer",
              "/converted");
        FAILS(pour_convert_texts_n(4, texts, (const int64_t *)(const void *)((const char *)offsets + 1), "mL", 0, to, NULL,
                                   error),
              POUR_MISALIGNED, "misaligned", "/offsets");
        FAILS(pour_convert_texts_n(SIZE_MAX, texts, offsets, "mL", 0, to, NULL, error), POUR_TOO_LARGE, "too-large",
              "/rows");
    }
    GIVES(pour_convert_with_n(&way, 1, of_a, (pour_result_column){out, 0}, NULL, &error), out[0], 2500);
}

static void mixes(const pour_book *book)
{
    pour_material list[2] = {POUR_MATERIAL_INIT, POUR_MATERIAL_INIT};
    pour_mix *pot = NULL, *drawn = NULL, *other = NULL, *untouched = NULL;
    double out;
    list[0].name = "base";
    list[0].kind = POUR_KIND_PLASTISOL;
    list[0].density_g_per_ml = 1;
    list[0].fused_g_per_ml = 1.25;
    list[0].expansion_per_kelvin = 0.001;
    list[1].name = "salt";
    list[1].kind = POUR_KIND_SALT;
    list[1].density_g_per_ml = 2;

    CHECK(pour_mix_of_materials(list, 2, &pot, NULL) == POUR_OK);
    CHECK(pour_mix_add(pot, "base", 100, NULL) == POUR_OK && pour_mix_add(pot, "salt", 20, NULL) == POUR_OK);
    GIVES(pour_mix_mass(pot, &out, &error), out, 120);
    GIVES(pour_mix_mass_of(pot, "salt", &out, &error), out, 20);
    GIVES(pour_mix_volume(pot, POUR_PHASE_LIQUID, 20, &out, &error), out, 110);
    GIVES(pour_mix_volume(pot, POUR_PHASE_LIQUID, 120, &out, &error), out, 120);
    GIVES(pour_mix_volume(pot, POUR_PHASE_FUSED, 20, &out, &error), out, 90);
    GIVES(pour_mix_volume(pot, 0, POUR_OMITTED, &out, &error), out, 90);
    GIVES(pour_mix_density(pot, 0, POUR_OMITTED, POUR_OMITTED, &out, &error), out, 120 / 90.);
    GIVES(pour_mix_density(pot, POUR_PHASE_LIQUID, 20, 0.1, &out, &error), out, 120 / 110. * 0.9);
    CHECK(pour_mix_draw(pot, 30, &drawn, NULL) == POUR_OK);
    GIVES(pour_mix_mass_of(drawn, "salt", &out, &error), out, 5);
    GIVES(pour_mix_mass(pot, &out, &error), out, 90);
    CHECK(pour_mix_scale(drawn, 2, NULL) == POUR_OK && pour_mix_merge(pot, drawn, NULL) == POUR_OK);
    GIVES(pour_mix_mass(pot, &out, &error), out, 150);
    GIVES(pour_mix_mass(drawn, &out, &error), out, 60);
    CHECK(pour_mix_of_book(book, &other, NULL) == POUR_OK);
    CHECK(pour_mix_add(other, "clear-base", 50, NULL) == POUR_OK);

    out = UNTOUCHED;
    FAILS(pour_mix_of_book(NULL, &untouched, error), POUR_NULL, "null-pointer", "/book");
    FAILS(pour_mix_of_book(book, NULL, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_of_materials(NULL, 2, &untouched, error), POUR_NULL, "null-pointer", "/materials");
    FAILS(pour_mix_of_materials(list, 2, NULL, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_of_materials(list, SIZE_MAX, &untouched, error), POUR_TOO_LARGE, "too-large", "/materials");
    list[1].kind = 11;
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_UNKNOWN_NUMBER, "unknown-word",
          "/materials/1/kind");
    list[1].kind = POUR_KIND_OTHER;
    list[1].size = sizeof list;
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_REFUSED, "struct-size", "/materials/1/size");
    list[1].size = sizeof list[1];
    list[1].name = "";
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_REFUSED, "bad-name", "/materials/1/name");
    list[1].name = "base";
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_REFUSED, "material-name-twice", "/materials");
    list[1].name = "\xff";
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_NOT_UTF8, "not-utf8", "/materials/1/name");
    FAILS(pour_mix_add(NULL, "base", 1, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_add(pot, NULL, 1, error), POUR_NULL, "null-pointer", "/material");
    FAILS(pour_mix_add(pot, "sand", 1, error), POUR_REFUSED, "mix-no-such-material", "/material");
    FAILS(pour_mix_add(pot, "base", NAN, error), POUR_NOT_FINITE, "not-finite", "/mass_g");
    FAILS(pour_mix_add(pot, "base", -1, error), POUR_REFUSED, "out-of-range", "/mass_g");
    FAILS(pour_mix_add(pot, "base", 1e300, error), POUR_REFUSED, "out-of-range", "/mass_g");
    FAILS(pour_mix_draw(NULL, 1, &untouched, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_draw(pot, 1, NULL, error), POUR_NULL, "null-pointer", "/drawn");
    FAILS(pour_mix_draw(pot, 151, &untouched, error), POUR_REFUSED, "mix-draw-too-large", "/mass_g");
    FAILS(pour_mix_draw(pot, NAN, &untouched, error), POUR_NOT_FINITE, "not-finite", "/mass_g");
    FAILS(pour_mix_merge(NULL, pot, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_merge(pot, NULL, error), POUR_NULL, "null-pointer", "/other");
    FAILS(pour_mix_merge(pot, pot, error), POUR_REFUSED, "mix-into-itself", "/other");
    FAILS(pour_mix_merge(pot, other, error), POUR_REFUSED, "mix-other-materials", "/other");
    FAILS(pour_mix_scale(NULL, 1, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_scale(pot, NAN, error), POUR_NOT_FINITE, "not-finite", "/factor");
    FAILS(pour_mix_scale(pot, -1, error), POUR_REFUSED, "mix-bad-factor", "/factor");
    FAILS(pour_mix_mass(NULL, &out, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_mass(pot, NULL, error), POUR_NULL, "null-pointer", "/mass_g");
    FAILS(pour_mix_mass_of(pot, "sand", &out, error), POUR_REFUSED, "mix-no-such-material", "/material");
    FAILS(pour_mix_mass_of(NULL, "base", &out, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_volume(pot, 3, 20, &out, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/phase");
    FAILS(pour_mix_volume(pot, 1, -300, &out, error), POUR_REFUSED, "out-of-range", "/temperature_celsius");
    FAILS(pour_mix_volume(pot, 1, 20, NULL, error), POUR_NULL, "null-pointer", "/volume_ml");
    FAILS(pour_mix_density(pot, 1, 20, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/voids");
    FAILS(pour_mix_density(pot, 1, 20, 1, &out, error), POUR_REFUSED, "out-of-range", "/voids");
    FAILS(pour_mix_density(NULL, 1, 20, 0, &out, error), POUR_NULL, "null-pointer", "/mix");
    /* A refused call changes nothing. */
    GIVES(pour_mix_mass(pot, &out, &error), out, 150);
    CHECK(untouched == NULL);
    pour_mix_free(pot);
    pour_mix_free(drawn);
    pour_mix_free(other);
    pour_mix_free(NULL);
}

/* A struct of another version, as its size says, is not read. */
static void sizes(void)
{
    pour_shot_fill_input shot = POUR_SHOT_FILL_INPUT_INIT;
    pour_shot_fill_result out;

    CHECK(shot.size == sizeof shot);
    shot.cavities = 4;
    shot.cavity_volume_ml = 10;
    shot.cold_density_g_per_ml = 1.05;
    CHECK(pour_shot_fill(&shot, &out, NULL) == POUR_OK);
    shot.size = 0;
    FAILS(pour_shot_fill(&shot, &out, error), POUR_REFUSED, "struct-size", "/size");
    shot.size = sizeof shot + 8;
    FAILS(pour_shot_fill(&shot, &out, error), POUR_REFUSED, "struct-size", "/size");
}

/* Two lines with an answer, one without; and the same of an open book. */
static void lines(const pour_book *book)
{
    const char *cup = "{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"tbsp\"}\n\xff\n"
                      "{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"tsp\"}";
    const char *dusk = "{\"calculate\":\"formula\",\"formulas\":[\"dusk\"]}\n";
    size_t cup_len = strlen(cup), len = 7777, refused = 7777;
    char *out = NULL, *no_text = NULL;

    CHECK(pour_lines(cup, cup_len, &out, &len, &refused, NULL) == POUR_OK);
    CHECK(refused == 1 && strlen(out) == len && out[len - 1] == '\n');
    CHECK(strncmp(out, "{\"result\":{\"calculate\":\"convert\",\"amount\":\"16 tbsp\"", 51) == 0);
    CHECK(strstr(out, "\n{\"faults\":[{\"code\":\"not-utf8\"") != NULL && strstr(out, "48 tsp") != NULL);
    pour_string_free(out);
    CHECK(pour_lines(cup, POUR_UP_TO_NUL, &out, NULL, &refused, NULL) == POUR_OK && refused == 1 && strlen(out) == len);
    pour_string_free(out);
    CHECK(pour_lines(cup, 0, &out, NULL, NULL, NULL) == POUR_OK && out[0] == 0);
    pour_string_free(out);
    CHECK(pour_book_lines(book, dusk, strlen(dusk), &out, &len, &refused, NULL) == POUR_OK);
    CHECK(refused == 0 && strlen(out) == len && strncmp(out, "{\"result\":{\"calculate\":\"formula\"", 32) == 0);
    pour_string_free(out);
    CHECK(pour_lines(dusk, strlen(dusk), &out, NULL, &refused, NULL) == POUR_OK && refused == 1);
    pour_string_free(out);
    CHECK(pour_book_lines(book, dusk, strlen(dusk), &out, NULL, NULL, NULL) == POUR_OK);
    pour_string_free(out);

    len = refused = 7777;
    FAILS(pour_lines(NULL, 1, &no_text, &len, &refused, error), POUR_NULL, "null-pointer", "/lines");
    FAILS(pour_lines(cup, cup_len, NULL, &len, &refused, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_lines(cup, SIZE_MAX - 1, &no_text, &len, &refused, error), POUR_TOO_LARGE, "too-large", "/lines");
    FAILS(pour_book_lines(NULL, dusk, 1, &no_text, &len, &refused, error), POUR_NULL, "null-pointer", "/book");
    FAILS(pour_book_lines(book, NULL, 1, &no_text, &len, &refused, error), POUR_NULL, "null-pointer", "/lines");
    FAILS(pour_book_lines(book, dusk, 1, NULL, &len, &refused, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_book_lines(book, dusk, SIZE_MAX - 1, &no_text, &len, &refused, error), POUR_TOO_LARGE, "too-large",
          "/lines");
    CHECK(no_text == NULL && len == 7777 && refused == 7777);
}

/* A book and a plan that are open answer requests that leave them out; a plan that was stored is opened again. */
static void open_ones(const pour_book *book, const pour_plan *plan)
{
    const char *formula = "{\"calculate\":\"formula\",\"formulas\":[\"dusk\",\"plain\"],\"base_amount\":\"1 cup\"}";
    const char *record = "{\"calculate\":\"record\",\"actuals\":{\"format\":\"pourwright/1.0\",\"pots\":{}}}";
    const char *twice = "{\"calculate\":\"formula\",\"formulas\":[\"dusk\"],\"book\":{\"format\":\"pourwright/1.0\","
                        "\"measures\":\"metric\",\"materials\":{},\"formulas\":{},\"molds\":{},"
                        "\"bench\":{\"cups\":[],\"injector\":{\"holds\":\"4 fl oz\"}}}}";
    size_t formula_len = strlen(formula), record_len = strlen(record), len = 7777, stored_len;
    char *of_book = NULL, *of_plan = NULL, *of_again = NULL, *stored = NULL, *no_text = NULL, *made_from;
    pour_plan *again = NULL, *no_plan = NULL;

    CHECK(pour_book_request(book, formula, formula_len, &of_book, &len, NULL) == POUR_OK);
    CHECK(strncmp(of_book, "{\"result\":{\"calculate\":\"formula\",", 33) == 0 && strlen(of_book) == len);
    CHECK(pour_plan_request(plan, formula, formula_len, &of_plan, NULL, NULL) == POUR_OK);
    CHECK(strcmp(of_plan, of_book) == 0);
    pour_string_free(of_book);
    pour_string_free(of_plan);

    CHECK(pour_plan_json(plan, &stored, &stored_len, NULL) == POUR_OK);
    CHECK(pour_plan_from_json(stored, stored_len, &again, NULL) == POUR_OK);
    CHECK(pour_plan_request(plan, record, record_len, &of_plan, &len, NULL) == POUR_OK);
    CHECK(pour_plan_request(again, record, record_len, &of_again, NULL, NULL) == POUR_OK);
    CHECK(strlen(of_plan) == len && strcmp(of_again, of_plan) == 0);
    pour_string_free(of_plan);
    pour_string_free(of_again);
    pour_plan_free(again);

    len = 7777;
    FAILS(pour_book_request(NULL, formula, formula_len, &no_text, &len, error), POUR_NULL, "null-pointer", "/book");
    FAILS(pour_book_request(book, NULL, 1, &no_text, &len, error), POUR_NULL, "null-pointer", "/json");
    FAILS(pour_book_request(book, formula, formula_len, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_book_request(book, formula, SIZE_MAX - 1, &no_text, &len, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_book_request(book, "\xff", 1, &no_text, &len, error), POUR_NOT_UTF8, "not-utf8", "/json");
    FAILS(pour_book_request(book, formula, 3, &no_text, &len, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_book_request(book, twice, strlen(twice), &no_text, &len, error), POUR_REFUSED, "open-and-given", "/book");
    FAILS(pour_book_request(book, record, record_len, &no_text, &len, error), POUR_REFUSED, "missing-field", "");
    FAILS(pour_plan_request(NULL, record, record_len, &no_text, &len, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_plan_request(plan, NULL, 1, &no_text, &len, error), POUR_NULL, "null-pointer", "/json");
    FAILS(pour_plan_request(plan, record, record_len, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_plan_request(plan, record, SIZE_MAX - 1, &no_text, &len, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_plan_request(plan, "\xff", 1, &no_text, &len, error), POUR_NOT_UTF8, "not-utf8", "/json");
    FAILS(pour_plan_request(plan, "{}", 2, &no_text, &len, error), POUR_REFUSED, "missing-field", "");
    FAILS(pour_plan_from_json(NULL, 1, &no_plan, error), POUR_NULL, "null-pointer", "/json");
    FAILS(pour_plan_from_json(stored, stored_len, NULL, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_plan_from_json(stored, SIZE_MAX - 1, &no_plan, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_plan_from_json("\xff", 1, &no_plan, error), POUR_NOT_UTF8, "not-utf8", "/json");
    FAILS(pour_plan_from_json(stored, stored_len - 1, &no_plan, error), POUR_REFUSED, "not-json", "");
    made_from = strstr(stored, "\"made_from\"");
    CHECK(made_from != NULL);
    memcpy(made_from, "\"made_form\"", 11);
    FAILS(pour_plan_from_json(stored, stored_len, &no_plan, error), POUR_REFUSED, "unknown-field", "/made_form");
    CHECK(no_text == NULL && no_plan == NULL && len == 7777);
    pour_string_free(stored);
}

/* Counts the questions; the answer is yes when there were more than `most`. */
struct questions {
    int asked, most;
};

static int32_t stop(void *user)
{
    struct questions *questions = user;
    return ++questions->asked > questions->most;
}

/* The demo day with a hundred thousand pieces of its first line: work for many questions. */
static char *long_day(const char *orders)
{
    const char *pieces = strstr(orders, "\"pieces\": ");
    char *day = malloc(strlen(orders) + 8);
    if (pieces == NULL || day == NULL) exit(2);
    pieces += strlen("\"pieces\": ");
    sprintf(day, "%.*s100000%s", (int)(pieces - orders), orders, pieces + strspn(pieces, "0123456789"));
    return day;
}

/* A plan within a budget, and one that its caller stops. */
static void budgets(const pour_book *book, const char *orders, size_t orders_len)
{
    const uint32_t none = POUR_OMITTED_COUNT;
    char *day = long_day(orders), *whole = NULL, *within = NULL;
    size_t day_len = strlen(day);
    struct questions never = {0, INT32_MAX}, twice = {0, 2}, at_once = {0, 0};
    pour_plan *plan = NULL, *no_plan = NULL;

    /* Enough of everything: the same plan. */
    CHECK(pour_book_plan(book, orders, orders_len, &plan, NULL) == POUR_OK);
    CHECK(pour_plan_json(plan, &whole, NULL, NULL) == POUR_OK);
    pour_plan_free(plan);
    CHECK(pour_book_plan_within(book, orders, orders_len, none, none, NULL, NULL, &plan, NULL) == POUR_OK);
    pour_plan_free(plan);
    CHECK(pour_book_plan_within(book, orders, orders_len, 5, 1, stop, &never, &plan, NULL) == POUR_OK);
    CHECK(pour_plan_json(plan, &within, NULL, NULL) == POUR_OK);
    CHECK(strcmp(whole, within) == 0);
    pour_string_free(whole);
    pour_string_free(within);
    pour_plan_free(plan);

    FAILS(pour_book_plan_within(book, orders, orders_len, 4, none, NULL, NULL, &no_plan, error), POUR_OVER_BUDGET,
          "budget-pots", "");
    FAILS(pour_book_plan_within(book, orders, orders_len, none, 0, NULL, NULL, &no_plan, error), POUR_OVER_BUDGET,
          "budget-work", "");
    CHECK(pour_book_plan_within(book, day, day_len, none, none, stop, &twice, &no_plan, NULL) == POUR_STOPPED);
    CHECK(twice.asked == 3);
    FAILS(pour_book_plan_within(book, day, day_len, none, none, stop, &at_once, &no_plan, error), POUR_STOPPED,
          "plan-stopped", "");
    FAILS(pour_book_plan_within(NULL, orders, orders_len, none, none, NULL, NULL, &no_plan, error), POUR_NULL,
          "null-pointer", "/book");
    FAILS(pour_book_plan_within(book, NULL, orders_len, none, none, NULL, NULL, &no_plan, error), POUR_NULL,
          "null-pointer", "/orders_json");
    FAILS(pour_book_plan_within(book, orders, orders_len, none, none, NULL, NULL, NULL, error), POUR_NULL,
          "null-pointer", "/plan");
    FAILS(pour_book_plan_within(book, orders, SIZE_MAX - 1, none, none, NULL, NULL, &no_plan, error), POUR_TOO_LARGE,
          "too-large", "/orders_json");
    FAILS(pour_book_plan_within(book, "\xff", 1, none, none, NULL, NULL, &no_plan, error), POUR_NOT_UTF8,
          "not-utf8", "/orders_json");
    FAILS(pour_book_plan_within(book, "[", 1, none, none, NULL, NULL, &no_plan, error), POUR_REFUSED, "not-json", "");
    CHECK(no_plan == NULL);
    free(day);
}

/* Checks an answer and frees it. */
static void answers(char *found, const char *begin, const char *within)
{
    CHECK(found != NULL && strncmp(found, begin, strlen(begin)) == 0 && strstr(found, within) != NULL);
    pour_string_free(found);
}

/* Whatever comes is answered by one text. */
static void answers_in_one(void)
{
    char *longest = long_text(16777217);
    const char *request = "{\"calculate\":\"convert\",\"amount\":\"1 1/4 cup\",\"to\":\"mL\"}";
    answers(pour_answer(request), "{\"result\":{\"calculate\":\"convert\",", "\"value\":295.735295625,");
    answers(pour_answer("{\"calculate\":\"convert\",\"amount\":\"6 oz\",\"too\":\"mL\"}"), "{\"faults\":[{\"code\":",
            "\"/too\"");
    answers(pour_answer(NULL), "{\"faults\":[{\"code\":\"null-pointer\",\"path\":\"/json\",", "\"help\":\"");
    answers(pour_answer("\xff"), "{\"faults\":[{\"code\":\"not-utf8\",\"path\":\"/json\",", "\"help\":\"");
    answers(pour_answer(""), "{\"faults\":[{\"code\":\"not-json\",\"path\":\"\",", "\"help\":\"");
    answers(pour_answer(longest), "{\"faults\":[{\"code\":\"too-large\",\"path\":\"/json\",", "\"help\":\"");
    free(longest);
}

static void schemas(void)
{
    const char *names[] = {"request", "answer", "book", "orders", "actuals", "plan"};
    const char *definition = "\"$schema\":\"https://json-schema.org/draft/2020-12/schema\"";
    char *out = NULL, *no_text = NULL, *longest = long_text(5000);
    size_t i, len = 0, untouched = 7777;
    for (i = 0; i < sizeof names / sizeof *names; i++) {
        CHECK(pour_schema(names[i], &out, &len, NULL) == POUR_OK);
        CHECK(strlen(out) == len && out[0] == '{' && strstr(out, definition) != NULL && strstr(out, "\"$defs\":{\"") != NULL);
        pour_string_free(out);
    }
    CHECK(pour_schema("book", &out, NULL, NULL) == POUR_OK);
    pour_string_free(out);
    FAILS(pour_schema("shop", &no_text, &untouched, error), POUR_REFUSED, "no-such-schema", "/name");
    FAILS(pour_schema(NULL, &no_text, &untouched, error), POUR_NULL, "null-pointer", "/name");
    FAILS(pour_schema("book", NULL, &untouched, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_schema("\xff", &no_text, &untouched, error), POUR_NOT_UTF8, "not-utf8", "/name");
    FAILS(pour_schema(longest, &no_text, &untouched, error), POUR_TOO_LARGE, "too-large", "/name");
    CHECK(no_text == NULL && untouched == 7777);
    free(longest);
}

/* Every text with a length may end with a NUL in its place. `book_json` and `orders` do. */
static void up_to_nul(const char *book_json, const char *orders)
{
    const char *request = "{\"calculate\":\"formula\",\"formulas\":[\"dusk\",\"plain\"],\"base_amount\":\"1 cup\"}";
    char *longest = long_text(16777217), *stored = NULL, *of_book = NULL, *of_plan = NULL, *no_text = NULL;
    pour_book *book = NULL;
    pour_plan *plan = NULL, *again = NULL;
    CHECK(pour_book_from_json(book_json, POUR_UP_TO_NUL, &book, NULL) == POUR_OK);
    CHECK(pour_book_plan(book, orders, POUR_UP_TO_NUL, &plan, NULL) == POUR_OK);
    CHECK(pour_book_plan_within(book, orders, POUR_UP_TO_NUL, POUR_OMITTED_COUNT, POUR_OMITTED_COUNT, NULL, NULL, &again,
                                NULL) == POUR_OK);
    pour_plan_free(again);
    CHECK(pour_plan_json(plan, &stored, NULL, NULL) == POUR_OK);
    CHECK(pour_plan_from_json(stored, POUR_UP_TO_NUL, &again, NULL) == POUR_OK);
    CHECK(pour_book_request(book, request, POUR_UP_TO_NUL, &of_book, NULL, NULL) == POUR_OK);
    CHECK(pour_plan_request(again, request, POUR_UP_TO_NUL, &of_plan, NULL, NULL) == POUR_OK);
    CHECK(strcmp(of_book, of_plan) == 0);
    pour_string_free(of_book);
    pour_string_free(of_plan);
    CHECK(pour_request("{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"mL\"}", POUR_UP_TO_NUL, &of_book, NULL,
                       NULL) == POUR_OK);
    pour_string_free(of_book);
    FAILS(pour_request(longest, POUR_UP_TO_NUL, &no_text, NULL, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_request("", POUR_UP_TO_NUL, &no_text, NULL, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_request(NULL, POUR_UP_TO_NUL, &no_text, NULL, error), POUR_NULL, "null-pointer", "/json");
    CHECK(no_text == NULL);
    pour_string_free(stored);
    pour_plan_free(plan);
    pour_plan_free(again);
    pour_book_free(book);
    free(longest);
}

static void documents(const char *book_json, size_t book_len, const char *orders, size_t orders_len)
{
    const char *request = "{\"calculate\":\"convert\",\"amount\":\"1 1/4 cup\",\"to\":\"mL\"}";
    const char *answer =
        "{\"result\":{\"calculate\":\"convert\",\"amount\":\"295.735295625 mL\",\"value\":295.735295625,\"unit\":\"mL\"}}";
    pour_book *book = NULL, *no_book = NULL;
    pour_plan *plan = NULL, *no_plan = NULL;
    char *out = NULL, *no_text = NULL;
    size_t len = 7777;

    CHECK(pour_request(request, strlen(request), &out, &len, NULL) == POUR_OK);
    CHECK(len == strlen(answer) && strcmp(out, answer) == 0);
    pour_string_free(out);
    CHECK(pour_request(request, strlen(request), &out, NULL, NULL) == POUR_OK);
    pour_string_free(out);
    pour_string_free(NULL);

    CHECK(pour_book_from_json(book_json, book_len, &book, NULL) == POUR_OK);
    CHECK(pour_book_plan(book, orders, orders_len, &plan, NULL) == POUR_OK);
    mixes(book);
    sizes();
    open_ones(book, plan);
    lines(book);
    budgets(book, orders, orders_len);

    len = 7777;
    FAILS(pour_request(NULL, 5, &no_text, &len, error), POUR_NULL, "null-pointer", "/json");
    FAILS(pour_request(request, 5, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_request(request, SIZE_MAX - 1, &no_text, &len, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_request(request, 0, &no_text, &len, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_request("\xff\xfe", 2, &no_text, &len, error), POUR_NOT_UTF8, "not-utf8", "/json");
    FAILS(pour_request("{}", 2, &no_text, &len, error), POUR_REFUSED, "missing-field", "");
    FAILS(pour_book_from_json(NULL, 1, &no_book, error), POUR_NULL, "null-pointer", "/json");
    FAILS(pour_book_from_json(book_json, book_len, NULL, error), POUR_NULL, "null-pointer", "/book");
    FAILS(pour_book_from_json(book_json, book_len - 3, &no_book, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_book_from_json(book_json, SIZE_MAX - 1, &no_book, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_book_plan(NULL, orders, orders_len, &no_plan, error), POUR_NULL, "null-pointer", "/book");
    FAILS(pour_book_plan(book, NULL, orders_len, &no_plan, error), POUR_NULL, "null-pointer", "/orders_json");
    FAILS(pour_book_plan(book, orders, orders_len, NULL, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_book_plan(book, "[", 1, &no_plan, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_book_plan(book, orders, SIZE_MAX - 1, &no_plan, error), POUR_TOO_LARGE, "too-large", "/orders_json");
    FAILS(pour_plan_json(NULL, &no_text, &len, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_plan_json(plan, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_plan_sheet(NULL, &no_text, &len, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_plan_sheet(plan, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_plan_notes(NULL, &no_text, &len, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_plan_notes(plan, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    CHECK(no_book == NULL && no_plan == NULL && no_text == NULL && len == 7777);

    /* A plan outlives its book. */
    pour_book_free(book);
    pour_book_free(NULL);
    CHECK(pour_plan_json(plan, &out, &len, NULL) == POUR_OK && strlen(out) == len && out[0] == '{');
    pour_string_free(out);
    CHECK(pour_plan_sheet(plan, &out, &len, NULL) == POUR_OK && strlen(out) == len);
    CHECK(strstr(out, "ORDER OF WORK") != NULL);
    pour_string_free(out);
    CHECK(pour_plan_notes(plan, &out, &len, NULL) == POUR_OK && strlen(out) == len);
    CHECK(strstr(out, "COST in USD") != NULL);
    pour_string_free(out);
    pour_plan_free(plan);
    pour_plan_free(NULL);
}

int main(int argc, char **argv)
{
    char *book, *orders;
    size_t book_len, orders_len;
    if (argc != 3) {
        fprintf(stderr, "Usage: every_call BOOK.json ORDERS.json\n");
        return 2;
    }
    book = read_file(argv[1], &book_len);
    orders = read_file(argv[2], &orders_len);
    versions();
    errors();
    conversions();
    calculations();
    sums();
    columns();
    documents(book, book_len, orders, orders_len);
    answers_in_one();
    schemas();
    up_to_nul(book, orders);
    free(orders);
    free(book);
    return outcome("every_call");
}
