/* Calls every function of pourwright.h, right and wrong: every_call BOOK.json ORDERS.json.
 *
 * The values beside the calls are worked out here by plain sums; where a published one exists, its source is named.
 * That the list is whole is checked by bindings/c/test, which compares it with ffi/symbols.txt.
 */
#include "check.h"

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

    /* All faults come at once. */
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

    GIVES(pour_convert(48, "tsp", "cup", POUR_US_CUSTOMARY, &out, &error), out, 1);
    GIVES(pour_convert(1, "cup", "mL", POUR_METRIC, &out, &error), out, 250);
    GIVES(pour_convert(1, "[cup_us]", "mL", POUR_METRIC, &out, &error), out, 236.5882365);
    GIVES(pour_convert_amount("1 1/4 cup", "mL", POUR_US_CUSTOMARY, &out, &error), out, 295.735295625);
    GIVES(pour_convert_amount("330 \xc2\xb0""F", "\xc2\xb0""C", POUR_US_CUSTOMARY, &out, &error), out, 1490. / 9);
    CHECK(pour_conversion_between("cup", "mL", POUR_US_LABEL, &cup, NULL) == POUR_OK);
    GIVES(pour_convert_with(&cup, 0.5, &out, &error), out, 120);
    CHECK(pour_conversion_between("\xc2\xb0""F", "\xc2\xb0""C", POUR_METRIC, &celsius, NULL) == POUR_OK);
    GIVES(pour_convert_with(&celsius, 32, &out, &error), out, 0);
    GIVES(pour_convert_with(&celsius, -40, &out, &error), out, -40);

    out = UNTOUCHED;
    FAILS(pour_convert(1, NULL, "mL", POUR_METRIC, &out, error), POUR_NULL, "null-pointer", "/from");
    FAILS(pour_convert(1, "cup", NULL, POUR_METRIC, &out, error), POUR_NULL, "null-pointer", "/to");
    FAILS(pour_convert(1, "cup", "mL", POUR_METRIC, NULL, error), POUR_NULL, "null-pointer", "/converted");
    FAILS(pour_convert(1, "cup", "mL", 0, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/measures");
    FAILS(pour_convert(1, latin1, "mL", POUR_METRIC, &out, error), POUR_NOT_UTF8, "not-utf8", "/from");
    FAILS(pour_convert(1, longest, "mL", POUR_METRIC, &out, error), POUR_TOO_LARGE, "too-large", "/from");
    FAILS(pour_convert(NAN, "cup", "mL", POUR_METRIC, &out, error), POUR_NOT_FINITE, "not-finite", "/value");
    FAILS(pour_convert(-INFINITY, "cup", "mL", POUR_METRIC, &out, error), POUR_NOT_FINITE, "not-finite", "/value");
    FAILS(pour_convert(-1, "cup", "mL", POUR_METRIC, &out, error), POUR_REFUSED, "amount-negative", "/value");
    FAILS(pour_convert(1, "cup", "g", POUR_METRIC, &out, error), POUR_REFUSED, "amount-wrong-dimension", "/to");
    FAILS(pour_convert(6, "tsp", "mL", POUR_IMPERIAL, &out, error), POUR_REFUSED, "system-lacks-measure", "/from");
    FAILS(pour_convert(6, "mL", "tsp", POUR_IMPERIAL, &out, error), POUR_REFUSED, "system-lacks-measure", "/to");
    FAILS(pour_convert_amount("6 tsp", "mL", POUR_IMPERIAL, &out, error), POUR_REFUSED, "system-lacks-measure",
          "/amount");
    FAILS(pour_convert_amount("6 mL", "tsp", POUR_IMPERIAL, &out, error), POUR_REFUSED, "system-lacks-measure", "/to");
    FAILS(pour_convert(1, "oz", "g", POUR_METRIC, &out, error), POUR_REFUSED, "amount-ambiguous", "/from");
    FAILS(pour_convert_amount("6 oz", "g", POUR_METRIC, &out, error), POUR_REFUSED, "amount-ambiguous", "/amount");
    FAILS(pour_convert_amount(NULL, "g", POUR_METRIC, &out, error), POUR_NULL, "null-pointer", "/amount");
    FAILS(pour_convert_amount("1 cup", "mL", 5, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/measures");
    FAILS(pour_convert_with(NULL, 1, &out, error), POUR_NULL, "null-pointer", "/conversion");
    FAILS(pour_convert_with(&cup, 1, NULL, error), POUR_NULL, "null-pointer", "/converted");
    FAILS(pour_convert_with(&cup, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/value");
    FAILS(pour_convert_with(&cup, -1, &out, error), POUR_REFUSED, "outside-conversion", "/value");
    FAILS(pour_convert_with(&celsius, -460, &out, error), POUR_REFUSED, "outside-conversion", "/value");
    CHECK(out == UNTOUCHED);
    FAILS(pour_conversion_between("cup", "mL", POUR_METRIC, NULL, error), POUR_NULL, "null-pointer", "/conversion");
    cup.times = UNTOUCHED;
    FAILS(pour_conversion_between("cup", "mL", -1, &cup, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/measures");
    CHECK(cup.times == UNTOUCHED);
    free(longest);
}

static void doses(void)
{
    pour_material salt = {0}, plum = {0};
    double out;
    salt.name = "salt";
    salt.kind = POUR_SALT;
    salt.density_g_per_ml = 2.165;
    salt.as_scooped_g_per_ml = 1.22;
    plum.name = "plum";
    plum.kind = POUR_COLORANT;
    plum.density_g_per_ml = 1.05;
    plum.drop_g = 0.044;

    GIVES(pour_dose_mass(&salt, "1/4 cup", POUR_US_CUSTOMARY, &out, &error), out, 59.147059125 * 1.22);
    GIVES(pour_dose_mass(&plum, "40 drops", POUR_US_CUSTOMARY, &out, &error), out, 40 * 0.044);
    GIVES(pour_dose_mass(&plum, "1 tsp", POUR_METRIC, &out, &error), out, 5 * 1.05);
    GIVES(pour_dose_mass(&plum, "12.5 g", POUR_METRIC, &out, &error), out, 12.5);
    GIVES(pour_mass_of_volume(59, 1.22, &out, &error), out, 59 * 1.22);
    GIVES(pour_mass_of_volume(0, 1.22, &out, &error), out, 0);
    GIVES(pour_volume_of_mass(61, 1.22, &out, &error), out, 50);

    out = UNTOUCHED;
    FAILS(pour_dose_mass(NULL, "1 g", POUR_METRIC, &out, error), POUR_NULL, "null-pointer", "/material");
    FAILS(pour_dose_mass(&salt, NULL, POUR_METRIC, &out, error), POUR_NULL, "null-pointer", "/amount");
    FAILS(pour_dose_mass(&salt, "1 g", 9, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/measures");
    FAILS(pour_dose_mass(&salt, "3 drops", POUR_METRIC, &out, error), POUR_REFUSED, "missing-property", "/amount");
    salt.density_g_per_ml = NAN;
    FAILS(pour_dose_mass(&salt, "1 g", POUR_METRIC, &out, error), POUR_NOT_FINITE, "not-finite",
          "/material/density_g_per_ml");
    salt.density_g_per_ml = -1;
    FAILS(pour_dose_mass(&salt, "1 g", POUR_METRIC, &out, error), POUR_REFUSED, "out-of-range",
          "/material/density_g_per_ml");
    salt.name = NULL;
    FAILS(pour_dose_mass(&salt, "1 g", POUR_METRIC, &out, error), POUR_NULL, "null-pointer", "/material/name");
    plum.kind = 0;
    FAILS(pour_dose_mass(&plum, "1 g", POUR_METRIC, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number",
          "/material/kind");
    FAILS(pour_mass_of_volume(NAN, 1, &out, error), POUR_NOT_FINITE, "not-finite", "/volume_ml");
    FAILS(pour_mass_of_volume(-1, 1, &out, error), POUR_REFUSED, "out-of-range", "/volume_ml");
    FAILS(pour_mass_of_volume(1e300, 1, &out, error), POUR_REFUSED, "out-of-range", "/volume_ml");
    FAILS(pour_mass_of_volume(1, 0, &out, error), POUR_REFUSED, "out-of-range", "/density_g_per_ml");
    FAILS(pour_mass_of_volume(1, 1, NULL, error), POUR_NULL, "null-pointer", "/mass_g");
    FAILS(pour_volume_of_mass(INFINITY, 1, &out, error), POUR_NOT_FINITE, "not-finite", "/mass_g");
    FAILS(pour_volume_of_mass(1, -1, &out, error), POUR_REFUSED, "out-of-range", "/density_g_per_ml");
    FAILS(pour_volume_of_mass(1, 1, NULL, error), POUR_NULL, "null-pointer", "/volume_ml");
    CHECK(out == UNTOUCHED);
}

static void densities(void)
{
    const double masses[] = {100, 20}, of[] = {1, 2}, bad[] = {1, NAN};
    unsigned char odd[17] = {0};
    double out;
    GIVES(pour_density_of_parts(2, masses, of, 0.1, &out, &error), out, 120 / 110. * 0.9);
    out = UNTOUCHED;
    FAILS(pour_density_of_parts(2, NULL, of, 0, &out, error), POUR_NULL, "null-pointer", "/masses_g");
    FAILS(pour_density_of_parts(2, masses, NULL, 0, &out, error), POUR_NULL, "null-pointer", "/densities_g_per_ml");
    FAILS(pour_density_of_parts(2, masses, of, 0, NULL, error), POUR_NULL, "null-pointer", "/density_g_per_ml");
    FAILS(pour_density_of_parts(2, masses, of, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/voids");
    FAILS(pour_density_of_parts(2, masses, of, 1, &out, error), POUR_REFUSED, "out-of-range", "/voids");
    FAILS(pour_density_of_parts(2, bad, of, 0, &out, error), POUR_NOT_FINITE, "not-finite", "/masses_g/1");
    FAILS(pour_density_of_parts(2, masses, bad, 0, &out, error), POUR_NOT_FINITE, "not-finite",
          "/densities_g_per_ml/1");
    FAILS(pour_density_of_parts(0, NULL, NULL, 0, &out, error), POUR_REFUSED, "mix-empty", "/masses_g");
    FAILS(pour_density_of_parts(SIZE_MAX, masses, of, 0, &out, error), POUR_TOO_LARGE, "too-large", "/masses_g");
    FAILS(pour_density_of_parts(1, (const double *)(const void *)(odd + (((uintptr_t)odd & 1) ? 0 : 1)), of, 0, &out, error),
          POUR_MISALIGNED, "misaligned", "/masses_g");
    CHECK(out == UNTOUCHED);
}

static void salt(void)
{
    pour_unsalted mix = {0}, bad;
    double out, least, most, salt_g, back;
    int32_t form;
    mix.base_ml = 236.5882365;
    mix.base_g_per_ml = 1.03;
    mix.salt_g_per_ml = 2.165;
    mix.salt_as_scooped_g_per_ml = 1.22;
    mix.cavity_ml = 9.5;
    mix.feed = 0.5;

    GIVES(pour_salt_mass(&mix, POUR_SALT_AS_SCOOPED, 0.25, &salt_g, &error), salt_g, 59.147059125 * 1.22);
    GIVES(pour_salt_convert(&mix, POUR_SALT_AS_SCOOPED, 0.25, POUR_SALT_OF_BASE, &out, &error), out,
          0.25 * 1.22 / 1.03);
    /* Each form to each, and back. */
    for (form = POUR_SALT_AS_SCOOPED; form <= POUR_SALT_SINK_DENSITY; form++) {
        GIVES(pour_salt_convert(&mix, POUR_SALT_OF_BASE, 0.1, form, &out, &error), out, out);
        GIVES(pour_salt_convert(&mix, form, out, POUR_SALT_OF_BASE, &back, &error), back, 0.1);
    }
    GIVES(pour_salt_for_density(100, 1, 2, 0, 1.1, &out, &error), out, 10 / (1 - 1.1 / 2));
    CHECK(pour_salt_reach(&mix, POUR_SALT_FINISHED_DENSITY, &least, &most, NULL) == POUR_OK);
    CHECK(near(least, 1.03) && near(most, 0.7 * 1.03 + 0.3 * 2.165));

    out = least = most = UNTOUCHED;
    FAILS(pour_salt_convert(NULL, 1, 0, 1, &out, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_salt_convert(&mix, 1, 0, 1, NULL, error), POUR_NULL, "null-pointer", "/converted");
    FAILS(pour_salt_convert(&mix, 0, 0, 1, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/from");
    FAILS(pour_salt_convert(&mix, 1, 0, 8, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/to");
    FAILS(pour_salt_convert(&mix, 1, NAN, 1, &out, error), POUR_NOT_FINITE, "not-finite", "/value");
    FAILS(pour_salt_convert(&mix, 5, 2.0, 1, &out, error), POUR_REFUSED, "salt-out-of-reach", "/value");
    FAILS(pour_salt_mass(&mix, 3, -1, &out, error), POUR_REFUSED, "salt-out-of-reach", "/value");
    FAILS(pour_salt_mass(NULL, 3, 1, &out, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_salt_mass(&mix, 3, 1, NULL, error), POUR_NULL, "null-pointer", "/salt_g");
    FAILS(pour_salt_reach(&mix, 3, NULL, &most, error), POUR_NULL, "null-pointer", "/least");
    FAILS(pour_salt_reach(&mix, 3, &least, NULL, error), POUR_NULL, "null-pointer", "/most");
    FAILS(pour_salt_reach(&mix, 99, &least, &most, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/form");
    FAILS(pour_salt_reach(NULL, 3, &least, &most, error), POUR_NULL, "null-pointer", "/mix");
    bad = mix;
    bad.cavity_ml = 0;
    FAILS(pour_salt_reach(&bad, POUR_SALT_PIECE, &least, &most, error), POUR_REFUSED, "salt-no-cavity",
          "/mix/cavity_ml");
    bad.hook_ml = -INFINITY;
    FAILS(pour_salt_reach(&bad, 3, &least, &most, error), POUR_NOT_FINITE, "not-finite", "/mix/hook_ml");
    FAILS(pour_salt_for_density(100, 1, 2, NAN, 1.1, &out, error), POUR_NOT_FINITE, "not-finite", "/voids");
    FAILS(pour_salt_for_density(100, 1, 2, 0, 1.9, &out, error), POUR_REFUSED, "salt-out-of-reach",
          "/density_g_per_ml");
    FAILS(pour_salt_for_density(100, 0, 2, 0, 1.9, &out, error), POUR_REFUSED, "out-of-range", "/base_g_per_ml");
    FAILS(pour_salt_for_density(100, 1, 2, 0, 1.1, NULL, error), POUR_NULL, "null-pointer", "/salt_g");
    CHECK(out == UNTOUCHED && least == UNTOUCHED && most == UNTOUCHED);
}

static void softener(void)
{
    pour_hardness_point points[70];
    double out;
    size_t i;
    for (i = 0; i < 70; i++) {
        points[i].ratio = 0.01 * (double)i;
        points[i].reading = 70 - (double)i;
    }
    /* A straight line of points gives a straight line. */
    GIVES(pour_hardness(points, 5, POUR_SHORE_00, 0.025, &out, &error), out, 67.5);
    GIVES(pour_softener_ratio(points, 5, POUR_SHORE_A, 67.5, &out, &error), out, 0.025);
    GIVES(pour_hardness(points, 64, POUR_SHORE_A, 0.63, &out, &error), out, 7);
    out = UNTOUCHED;
    FAILS(pour_hardness(NULL, 5, 1, 0, &out, error), POUR_NULL, "null-pointer", "/points");
    FAILS(pour_hardness(points, 5, 1, 0, NULL, error), POUR_NULL, "null-pointer", "/reading");
    FAILS(pour_hardness(points, 5, 3, 0, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/on");
    FAILS(pour_hardness(points, 5, 1, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/ratio");
    FAILS(pour_hardness(points, 5, 1, 0.5, &out, error), POUR_REFUSED, "softener-ratio-outside-points", "/ratio");
    FAILS(pour_hardness(points, 65, 1, 0.5, &out, error), POUR_TOO_LARGE, "too-large", "/points");
    FAILS(pour_hardness(points, SIZE_MAX, 1, 0.5, &out, error), POUR_TOO_LARGE, "too-large", "/points");
    FAILS(pour_hardness(points, 0, 1, 0.5, &out, error), POUR_REFUSED, "softener-too-few-points", "/points");
    FAILS(pour_softener_ratio(points, 5, 1, 99, &out, error), POUR_REFUSED, "softener-hardness-outside-points",
          "/reading");
    FAILS(pour_softener_ratio(points, 5, 1, 50, NULL, error), POUR_NULL, "null-pointer", "/ratio");
    points[1].reading = NAN;
    FAILS(pour_softener_ratio(points, 5, 1, 50, &out, error), POUR_NOT_FINITE, "not-finite", "/points/1/reading");
    CHECK(out == UNTOUCHED);
}

static void shots_and_batches(void)
{
    pour_shot shot = {0};
    pour_shot_result filled;
    pour_batch batch = {0};
    pour_batch_result need;
    uint32_t shots = 7777;
    double out;

    shot.cavities = 4;
    shot.cavity_ml = 10;
    shot.sprue_ml = 6;
    shot.feed = 0.5;
    shot.hot_g_per_ml = 0.9;
    shot.cold_g_per_ml = 1;
    CHECK(pour_shot_fill(&shot, &filled, NULL) == POUR_OK);
    CHECK(near(filled.fill_g, 46 * 0.9) && near(filled.piece_g, 9.5) && near(filled.pieces_g, 38));
    CHECK(near(filled.sprue_g, 46 * 0.9 - 38) && filled.missing_g == 0 && filled.feed == 0.5);
    GIVES(pour_piece_mass(10, 0.9, 1, 0.02, 0.5, &out, &error), out, 9.5 * 0.98);
    CHECK(pour_shots(24, 5, 0, 0, &shots, NULL) == POUR_OK && shots == 5);
    CHECK(pour_shots(20, 4, 0.05, 0.9, &shots, NULL) == POUR_OK && shots == 6);

    batch.pieces = 24;
    batch.cavities = 4;
    batch.shot_g = 40;
    batch.sprue_g = 5;
    batch.shot_g_per_ml = 1;
    batch.injector_holds_ml = 100;
    batch.injector_keeps_ml = 4;
    batch.film_g = 2;
    batch.heel_g = 3;
    CHECK(pour_batch_need(&batch, &need, NULL) == POUR_OK);
    CHECK(need.shots == 6 && need.shots_per_load == 2 && need.loads == 3 && need.shots_in_last == 2);
    CHECK(near(need.total_g, 240 + 4 + 3) && near(need.in_cup_g, 3) && near(need.sprues_g, 30));
    CHECK(near(need.pieces_g, 210) && near(need.drawn_g, 240) && near(need.kept_g, 4) && need.returned_g == 0);

    out = UNTOUCHED;
    filled.fill_g = need.total_g = UNTOUCHED;
    shots = 7777;
    FAILS(pour_shot_fill(NULL, &filled, error), POUR_NULL, "null-pointer", "/shot");
    FAILS(pour_shot_fill(&shot, NULL, error), POUR_NULL, "null-pointer", "/result");
    shot.cavities = 0;
    FAILS(pour_shot_fill(&shot, &filled, error), POUR_REFUSED, "shot-no-cavity", "/shot/cavities");
    shot.voids = NAN;
    FAILS(pour_shot_fill(&shot, &filled, error), POUR_NOT_FINITE, "not-finite", "/shot/voids");
    FAILS(pour_piece_mass(10, 1.1, 1, 0, 0, &out, error), POUR_REFUSED, "shot-denser-hot-than-cold",
          "/hot_g_per_ml");
    FAILS(pour_piece_mass(10, 0.9, 1, 0, INFINITY, &out, error), POUR_NOT_FINITE, "not-finite", "/feed");
    FAILS(pour_piece_mass(10, 0.9, 1, 0, 0, NULL, error), POUR_NULL, "null-pointer", "/piece_g");
    FAILS(pour_shots(0, 4, 0, 0, &shots, error), POUR_REFUSED, "batch-no-pieces", "/pieces");
    FAILS(pour_shots(UINT32_MAX, 4, 0, 0, &shots, error), POUR_REFUSED, "batch-too-many-pieces", "/pieces");
    FAILS(pour_shots(5, 0, 0, 0, &shots, error), POUR_REFUSED, "batch-no-cavity", "/cavities");
    FAILS(pour_shots(5, 4, 1, 0, &shots, error), POUR_REFUSED, "out-of-range", "/rejects");
    FAILS(pour_shots(5, 4, NAN, 0, &shots, error), POUR_NOT_FINITE, "not-finite", "/rejects");
    FAILS(pour_shots(5, 4, 0, 0, NULL, error), POUR_NULL, "null-pointer", "/shots");
    FAILS(pour_batch_need(NULL, &need, error), POUR_NULL, "null-pointer", "/batch");
    FAILS(pour_batch_need(&batch, NULL, error), POUR_NULL, "null-pointer", "/result");
    batch.shot_g = 200;
    FAILS(pour_batch_need(&batch, &need, error), POUR_REFUSED, "batch-shot-does-not-fit", "/batch/shot_g");
    batch.heel_g = NAN;
    FAILS(pour_batch_need(&batch, &need, error), POUR_NOT_FINITE, "not-finite", "/batch/heel_g");
    CHECK(out == UNTOUCHED && filled.fill_g == UNTOUCHED && need.total_g == UNTOUCHED && shots == 7777);
}

static void bench(void)
{
    const double spoons[] = {15, 5, 2.5, 1.25};
    double many[9] = {1, 2, 3, 4, 5, 6, 7, 8, 9};
    pour_bench tools = {0};
    pour_measure measure;

    tools.spoons_ml = spoons;
    tools.spoons = 4;
    tools.as_measured_g_per_ml = 1.2;
    CHECK(pour_bench_measure(&tools, 7.5, 0.02, &measure, NULL) == POUR_OK);
    CHECK(measure.tool == POUR_SPOONS && measure.spoonfuls[1] == 1 && measure.spoonfuls[3] == 1);
    CHECK(near(measure.mass_g, 7.5) && measure.acts == 2 && measure.drops == 0);
    tools.balance_reads_g = 0.1;
    tools.balance_to_g = 500;
    CHECK(pour_bench_measure(&tools, 12.34, 0.05, &measure, NULL) == POUR_OK);
    CHECK(measure.tool == POUR_BALANCE && near(measure.mass_g, 12.3) && measure.acts == 1);
    tools.drop_g = 0.05;
    tools.balance_reads_g = 0;
    tools.spoons = 0;
    CHECK(pour_bench_measure(&tools, 1, 0.05, &measure, NULL) == POUR_OK);
    CHECK(measure.tool == POUR_DROPS && measure.drops == 20 && near(measure.mass_g, 1) && measure.reserved == 0);

    measure.mass_g = UNTOUCHED;
    FAILS(pour_bench_measure(NULL, 1, 0.05, &measure, error), POUR_NULL, "null-pointer", "/bench");
    FAILS(pour_bench_measure(&tools, 1, 0.05, NULL, error), POUR_NULL, "null-pointer", "/measure");
    FAILS(pour_bench_measure(&tools, NAN, 0.05, &measure, error), POUR_NOT_FINITE, "not-finite", "/mass_g");
    FAILS(pour_bench_measure(&tools, 1, 0, &measure, error), POUR_REFUSED, "measure-tolerance", "/tolerance");
    FAILS(pour_bench_measure(&tools, 0.07, 0.01, &measure, error), POUR_REFUSED, "measure-not-reached", "/mass_g");
    tools.spoons = 9;
    tools.spoons_ml = many;
    FAILS(pour_bench_measure(&tools, 1, 0.05, &measure, error), POUR_TOO_LARGE, "too-large", "/bench/spoons");
    tools.spoons_ml = NULL;
    FAILS(pour_bench_measure(&tools, 1, 0.05, &measure, error), POUR_NULL, "null-pointer", "/bench/spoons_ml");
    tools.spoons = 0;
    tools.drop_g = INFINITY;
    FAILS(pour_bench_measure(&tools, 1, 0.05, &measure, error), POUR_NOT_FINITE, "not-finite", "/bench/drop_g");
    CHECK(measure.mass_g == UNTOUCHED);
}

static void process(void)
{
    pour_body body = {0};
    pour_fall fall;
    double out;

    /* Density of water at 20 and 4 degrees: Tanaka et al. 2001, table. */
    CHECK(pour_water_density(20, &out, NULL) == POUR_OK && fabs(out - 0.9982067) < 1e-7);
    CHECK(pour_water_density(4, &out, NULL) == POUR_OK && fabs(out - 0.9999749) < 1e-7);
    /* The Z factor at 20 degrees and 1013 hPa is 1.0029 mL/g: ISO 8655-6, table A.1. */
    CHECK(pour_cavity_of_water(10, 20, 101.325, &out, NULL) == POUR_OK && fabs(out - 10.029) < 5e-4);
    GIVES(pour_swollen_volume(100, 0.1, 10, 100, 0, &out, &error), out, 100 * (1 + 0.1 / 0.9 * 10));
    GIVES(pour_flake_count("0.4 mm square", 100, 1.25, 1, &out, &error), out, 1 / (0.04 * 0.04 * 0.01 * 1.25));
    body.piece_ml = 10;
    body.diameter_mm = 12;
    body.length_mm = 90;
    body.water_celsius = 20;
    CHECK(pour_sink_rate(&body, 1.05, &fall, NULL) == POUR_OK);
    CHECK(fall.slowest_cm_per_s < fall.speed_cm_per_s && fall.speed_cm_per_s < fall.fastest_cm_per_s);
    CHECK(fall.motion == POUR_SWINGS && fall.reserved == 0 && fall.reynolds > 300);
    CHECK(pour_density_for_sink_rate(&body, fall.speed_cm_per_s, &out, NULL) == POUR_OK);
    CHECK(fabs(out - 1.05) < 1e-9);

    out = UNTOUCHED;
    fall.reynolds = UNTOUCHED;
    FAILS(pour_water_density(41, &out, error), POUR_REFUSED, "water-temperature-out-of-range", "/at_celsius");
    FAILS(pour_water_density(NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/at_celsius");
    FAILS(pour_water_density(20, NULL, error), POUR_NULL, "null-pointer", "/density_g_per_ml");
    FAILS(pour_cavity_of_water(0, 20, 101, &out, error), POUR_REFUSED, "water-weight-not-positive", "/water_g");
    FAILS(pour_cavity_of_water(9, 20, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/air_kpa");
    FAILS(pour_cavity_of_water(9, 20, 101, NULL, error), POUR_NULL, "null-pointer", "/cavity_ml");
    FAILS(pour_swollen_volume(100, 0.1, 2, 100, 2.3, &out, error), POUR_REFUSED, "degas-boils", "/absolute_kpa");
    FAILS(pour_swollen_volume(100, NAN, 2, 100, 0, &out, error), POUR_NOT_FINITE, "not-finite", "/air");
    FAILS(pour_swollen_volume(100, 0.1, 2, 100, 0, NULL, error), POUR_NULL, "null-pointer", "/swollen_ml");
    FAILS(pour_flake_count("sand", 100, 1.25, 1, &out, error), POUR_REFUSED, "cut-unreadable", "/cut");
    FAILS(pour_flake_count(NULL, 100, 1.25, 1, &out, error), POUR_NULL, "null-pointer", "/cut");
    FAILS(pour_flake_count(".035", 100, 1.25, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/dose_g");
    FAILS(pour_flake_count(".035", 100, 1.25, 1, NULL, error), POUR_NULL, "null-pointer", "/particles");
    FAILS(pour_sink_rate(NULL, 1.05, &fall, error), POUR_NULL, "null-pointer", "/body");
    FAILS(pour_sink_rate(&body, 1.05, NULL, error), POUR_NULL, "null-pointer", "/fall");
    FAILS(pour_sink_rate(&body, 0.9, &fall, error), POUR_REFUSED, "sink-floats", "/density_g_per_ml");
    FAILS(pour_sink_rate(&body, NAN, &fall, error), POUR_NOT_FINITE, "not-finite", "/density_g_per_ml");
    FAILS(pour_density_for_sink_rate(&body, 0, &out, error), POUR_REFUSED, "out-of-range", "/speed_cm_per_s");
    FAILS(pour_density_for_sink_rate(&body, 1, NULL, error), POUR_NULL, "null-pointer", "/density_g_per_ml");
    body.salinity = 99;
    FAILS(pour_density_for_sink_rate(&body, 1, &out, error), POUR_REFUSED, "seawater-salinity-out-of-range",
          "/body/salinity");
    FAILS(pour_density_for_sink_rate(NULL, 1, &out, error), POUR_NULL, "null-pointer", "/body");
    CHECK(out == UNTOUCHED && fall.reynolds == UNTOUCHED);
}

static int canonical(double x)
{
    uint64_t bits;
    memcpy(&bits, &x, sizeof bits);
    return bits == UINT64_C(0x7ff8000000000000);
}

static void columns(void)
{
    const double a[] = {10, NAN, -1, 20}, one = 1, two = 2, none = 0, wanted = 1.1, half = 0.5, hot = 0.9;
    double out[4];
    int32_t statuses[4];
    pour_conversion way;
    CHECK(pour_conversion_between("cup", "mL", POUR_METRIC, &way, NULL) == POUR_OK);

#define ROWS(call, first, last)                                                             \
    do {                                                                                    \
        memset(statuses, 77, sizeof statuses);                                              \
        CHECK((call) == POUR_OK);                                                           \
        CHECK(near(out[0], first) && canonical(out[1]) && canonical(out[2]) && near(out[3], last)); \
        CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);                    \
        CHECK(statuses[2] == POUR_REFUSED && statuses[3] == POUR_OK);                       \
    } while (0)

    ROWS(pour_convert_n(&way, 4, a, 8, out, 8, statuses, NULL), 2500, 5000);
    ROWS(pour_mass_of_volume_n(4, a, 8, &two, 0, out, 8, statuses, NULL), 20, 40);
    ROWS(pour_density_of_parts_n(4, 1, a, 8, 0, &two, 0, 0, &none, 0, out, 8, statuses, NULL), 2, 2);
    ROWS(pour_salt_for_density_n(4, a, 8, &one, 0, &two, 0, &none, 0, &wanted, 0, out, 8, statuses, NULL), 1 / 0.45,
         2 / 0.45);
    ROWS(pour_piece_mass_n(4, a, 8, &hot, 0, &one, 0, &none, 0, &half, 0, out, 8, statuses, NULL), 9.5, 19);
#undef ROWS

    out[0] = UNTOUCHED;
    FAILS(pour_convert_n(NULL, 4, a, 8, out, 8, NULL, error), POUR_NULL, "null-pointer", "/conversion");
    FAILS(pour_convert_n(&way, 4, NULL, 8, out, 8, NULL, error), POUR_NULL, "null-pointer", "/values");
    FAILS(pour_convert_n(&way, 4, a, 8, NULL, 8, NULL, error), POUR_NULL, "null-pointer", "/converted");
    FAILS(pour_convert_n(&way, 4, a, 8, out, 0, NULL, error), POUR_REFUSED, "output-stride", "/converted");
    FAILS(pour_convert_n(&way, 2, a, 8, out, 7, NULL, error), POUR_REFUSED, "output-stride", "/converted");
    FAILS(pour_convert_n(&way, 2, a, 8, out + 1, -1, NULL, error), POUR_REFUSED, "output-stride", "/converted");
    FAILS(pour_convert_n(&way, 2, a, 8, out, 8, (int32_t *)(void *)((char *)statuses + 1), error), POUR_MISALIGNED,
          "misaligned", "/statuses");
    FAILS(pour_convert_n(&way, SIZE_MAX, a, 8, out, 8, NULL, error), POUR_TOO_LARGE, "too-large", "/values");
    FAILS(pour_convert_n(&way, 4, a, PTRDIFF_MIN, out, 8, NULL, error), POUR_TOO_LARGE, "too-large", "/values");
    FAILS(pour_mass_of_volume_n(4, a, 8, NULL, 0, out, 8, NULL, error), POUR_NULL, "null-pointer",
          "/densities_g_per_ml");
    FAILS(pour_density_of_parts_n(4, SIZE_MAX, a, 8, 8, &two, 0, 0, &none, 0, out, 8, NULL, error), POUR_TOO_LARGE,
          "too-large", "/masses_g");
    FAILS(pour_salt_for_density_n(4, a, 8, &one, 0, &two, 0, &none, 0, NULL, 0, out, 8, NULL, error), POUR_NULL,
          "null-pointer", "/density_g_per_ml");
    FAILS(pour_piece_mass_n(4, a, 8, &hot, 0, &one, 0, &none, 0, NULL, 0, out, 8, NULL, error), POUR_NULL,
          "null-pointer", "/feed");
    CHECK(out[0] == UNTOUCHED);
    CHECK(pour_convert_n(&way, 0, NULL, 8, NULL, 8, NULL, NULL) == POUR_OK);
    GIVES(pour_convert_n(&way, 1, a, 8, out, 0, NULL, &error), out[0], 2500);
}

static void mixes(const pour_book *book)
{
    pour_material list[2] = {{0}, {0}};
    pour_mix *pot = NULL, *drawn = NULL, *other = NULL, *untouched = NULL;
    double out;
    list[0].name = "base";
    list[0].kind = POUR_PLASTISOL;
    list[0].density_g_per_ml = 1;
    list[0].fused_g_per_ml = 1.25;
    list[0].expansion_per_kelvin = 0.001;
    list[1].name = "salt";
    list[1].kind = POUR_SALT;
    list[1].density_g_per_ml = 2;

    CHECK(pour_mix_of_materials(list, 2, &pot, NULL) == POUR_OK);
    CHECK(pour_mix_add(pot, "base", 100, NULL) == POUR_OK && pour_mix_add(pot, "salt", 20, NULL) == POUR_OK);
    GIVES(pour_mix_mass(pot, &out, &error), out, 120);
    GIVES(pour_mix_mass_of(pot, "salt", &out, &error), out, 20);
    GIVES(pour_mix_volume(pot, POUR_LIQUID, 20, &out, &error), out, 110);
    GIVES(pour_mix_volume(pot, POUR_LIQUID, 120, &out, &error), out, 120);
    GIVES(pour_mix_volume(pot, POUR_FUSED, 20, &out, &error), out, 90);
    GIVES(pour_mix_density(pot, POUR_LIQUID, 20, 0.1, &out, &error), out, 120 / 110. * 0.9);
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
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_UNKNOWN_NUMBER, "unknown-number",
          "/materials/1/kind");
    list[1].kind = POUR_OTHER;
    list[1].name = "base";
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_REFUSED, "material-name-twice", "/materials");
    list[1].name = "\xff";
    FAILS(pour_mix_of_materials(list, 2, &untouched, error), POUR_NOT_UTF8, "not-utf8", "/materials/1/name");
    FAILS(pour_mix_add(NULL, "base", 1, error), POUR_NULL, "null-pointer", "/mix");
    FAILS(pour_mix_add(pot, NULL, 1, error), POUR_NULL, "null-pointer", "/material");
    FAILS(pour_mix_add(pot, "sand", 1, error), POUR_REFUSED, "mix-no-such-material", "/material");
    FAILS(pour_mix_add(pot, "base", NAN, error), POUR_NOT_FINITE, "not-finite", "/mass_g");
    FAILS(pour_mix_add(pot, "base", -1, error), POUR_REFUSED, "mix-bad-mass", "/mass_g");
    FAILS(pour_mix_add(pot, "base", 1e300, error), POUR_REFUSED, "mix-too-much", "/mass_g");
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
    FAILS(pour_mix_volume(pot, 0, 20, &out, error), POUR_UNKNOWN_NUMBER, "unknown-number", "/as_phase");
    FAILS(pour_mix_volume(pot, 1, -300, &out, error), POUR_REFUSED, "out-of-range", "/at_celsius");
    FAILS(pour_mix_volume(pot, 1, 20, NULL, error), POUR_NULL, "null-pointer", "/volume_ml");
    FAILS(pour_mix_density(pot, 1, 20, NAN, &out, error), POUR_NOT_FINITE, "not-finite", "/voids");
    FAILS(pour_mix_density(pot, 1, 20, 1, &out, error), POUR_REFUSED, "out-of-range", "/voids");
    FAILS(pour_mix_density(NULL, 1, 20, 0, &out, error), POUR_NULL, "null-pointer", "/mix");
    /* What is refused changes nothing. */
    GIVES(pour_mix_mass(pot, &out, &error), out, 150);
    CHECK(untouched == NULL);
    pour_mix_free(pot);
    pour_mix_free(drawn);
    pour_mix_free(other);
    pour_mix_free(NULL);
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

    len = 7777;
    FAILS(pour_request(NULL, 5, &no_text, &len, error), POUR_NULL, "null-pointer", "/json");
    FAILS(pour_request(request, 5, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_request(request, SIZE_MAX, &no_text, &len, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_request(request, 0, &no_text, &len, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_request("\xff\xfe", 2, &no_text, &len, error), POUR_NOT_UTF8, "not-utf8", "/json");
    FAILS(pour_request("{}", 2, &no_text, &len, error), POUR_REFUSED, "missing-field", "");
    FAILS(pour_book_from_json(NULL, 1, &no_book, error), POUR_NULL, "null-pointer", "/json");
    FAILS(pour_book_from_json(book_json, book_len, NULL, error), POUR_NULL, "null-pointer", "/book");
    FAILS(pour_book_from_json(book_json, book_len - 3, &no_book, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_book_from_json(book_json, SIZE_MAX, &no_book, error), POUR_TOO_LARGE, "too-large", "/json");
    FAILS(pour_book_plan(NULL, orders, orders_len, &no_plan, error), POUR_NULL, "null-pointer", "/book");
    FAILS(pour_book_plan(book, NULL, orders_len, &no_plan, error), POUR_NULL, "null-pointer", "/orders_json");
    FAILS(pour_book_plan(book, orders, orders_len, NULL, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_book_plan(book, "[", 1, &no_plan, error), POUR_REFUSED, "not-json", "");
    FAILS(pour_book_plan(book, orders, SIZE_MAX, &no_plan, error), POUR_TOO_LARGE, "too-large", "/orders_json");
    FAILS(pour_plan_json(NULL, &no_text, &len, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_plan_json(plan, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    FAILS(pour_plan_sheet(NULL, &no_text, &len, error), POUR_NULL, "null-pointer", "/plan");
    FAILS(pour_plan_sheet(plan, NULL, &len, error), POUR_NULL, "null-pointer", "/out");
    CHECK(no_book == NULL && no_plan == NULL && no_text == NULL && len == 7777);

    /* A plan outlives its book. */
    pour_book_free(book);
    pour_book_free(NULL);
    CHECK(pour_plan_json(plan, &out, &len, NULL) == POUR_OK && strlen(out) == len && out[0] == '{');
    pour_string_free(out);
    CHECK(pour_plan_sheet(plan, &out, &len, NULL) == POUR_OK && strlen(out) == len);
    CHECK(strstr(out, "ORDER OF WORK") != NULL);
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
    doses();
    densities();
    salt();
    softener();
    shots_and_batches();
    bench();
    process();
    columns();
    documents(book, book_len, orders, orders_len);
    free(orders);
    free(book);
    return outcome("every_call");
}
