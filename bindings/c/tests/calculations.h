/* Every calculation of the table from C: its example gives its answer to the bit, and each parameter that is wrong is
 * a fault at that parameter. Made by `cargo run -p pourwright-generate`; do not edit. */
#ifndef CALCULATIONS_H
#define CALCULATIONS_H

#include <math.h>

#include "check.h"

static void of_convert(void)
{
    double result;
    CHECK(pour_convert("1 1/4 cup", "mL", 0, &result, NULL) == POUR_OK);
    CHECK(same(result, 295.735295625));
    FAILS(pour_convert("1 1/4 cup", "mL", 0, NULL, error), POUR_NULL, "null-pointer", "/value");
    REFUSED(pour_convert(NULL, "mL", 0, &result, error), POUR_NULL, "missing-field", "/amount");
    REFUSED(pour_convert("\xff", "mL", 0, &result, error), POUR_NOT_UTF8, "not-utf8", "/amount");
    REFUSED(pour_convert("1 1/4 cup", NULL, 0, &result, error), POUR_NULL, "missing-field", "/to");
    REFUSED(pour_convert("1 1/4 cup", "\xff", 0, &result, error), POUR_NOT_UTF8, "not-utf8", "/to");
    REFUSED(pour_convert("1 1/4 cup", "mL", 5, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/measures");
    REFUSED(pour_convert("1 1/4 cup", "mL", -1, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/measures");
}

static void of_convert_number(void)
{
    double result;
    CHECK(pour_convert_number(48.0, "tsp", "cup", 0, &result, NULL) == POUR_OK);
    CHECK(same(result, 1.0));
    FAILS(pour_convert_number(48.0, "tsp", "cup", 0, NULL, error), POUR_NULL, "null-pointer", "/result_value");
    REFUSED(pour_convert_number(POUR_OMITTED, "tsp", "cup", 0, &result, error), POUR_REFUSED, "missing-field", "/value");
    REFUSED(pour_convert_number(NAN, "tsp", "cup", 0, &result, error), POUR_NOT_FINITE, "not-finite", "/value");
    REFUSED(pour_convert_number(48.0, NULL, "cup", 0, &result, error), POUR_NULL, "missing-field", "/unit");
    REFUSED(pour_convert_number(48.0, "\xff", "cup", 0, &result, error), POUR_NOT_UTF8, "not-utf8", "/unit");
    REFUSED(pour_convert_number(48.0, "tsp", NULL, 0, &result, error), POUR_NULL, "missing-field", "/to");
    REFUSED(pour_convert_number(48.0, "tsp", "\xff", 0, &result, error), POUR_NOT_UTF8, "not-utf8", "/to");
    REFUSED(pour_convert_number(48.0, "tsp", "cup", 5, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/measures");
    REFUSED(pour_convert_number(48.0, "tsp", "cup", -1, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/measures");
}

static void of_dose_mass(void)
{
    double result;
    CHECK(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 0.044, 0, &result, NULL) == POUR_OK);
    CHECK(same(result, 2.2));
    FAILS(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 0.044, 0, NULL, error), POUR_NULL, "null-pointer", "/mass_g");
    REFUSED(pour_dose_mass(NULL, POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 0.044, 0, &result, error), POUR_NULL, "missing-field", "/amount");
    REFUSED(pour_dose_mass("\xff", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 0.044, 0, &result, error), POUR_NOT_UTF8, "not-utf8", "/amount");
    REFUSED(pour_dose_mass("50 drops", 0, 1.05, POUR_OMITTED, 0.044, 0, &result, error), POUR_UNKNOWN_NUMBER, "missing-field", "/kind");
    REFUSED(pour_dose_mass("50 drops", 11, 1.05, POUR_OMITTED, 0.044, 0, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/kind");
    REFUSED(pour_dose_mass("50 drops", -1, 1.05, POUR_OMITTED, 0.044, 0, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/kind");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, NAN, POUR_OMITTED, 0.044, 0, &result, error), POUR_NOT_FINITE, "not-finite", "/material_density_g_per_ml");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 0.0009999990000000001, POUR_OMITTED, 0.044, 0, &result, error), POUR_REFUSED, "out-of-range", "/material_density_g_per_ml");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 25.000025, POUR_OMITTED, 0.044, 0, &result, error), POUR_REFUSED, "out-of-range", "/material_density_g_per_ml");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, NAN, 0.044, 0, &result, error), POUR_NOT_FINITE, "not-finite", "/as_scooped_g_per_ml");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, 0.0009999990000000001, 0.044, 0, &result, error), POUR_REFUSED, "out-of-range", "/as_scooped_g_per_ml");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, 25.000025, 0.044, 0, &result, error), POUR_REFUSED, "out-of-range", "/as_scooped_g_per_ml");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, NAN, 0, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_mass_g");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 9.99999e-13, 0, &result, error), POUR_REFUSED, "out-of-range", "/drop_mass_g");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 1000001000000000.0, 0, &result, error), POUR_REFUSED, "out-of-range", "/drop_mass_g");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 0.044, 5, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/measures");
    REFUSED(pour_dose_mass("50 drops", POUR_KIND_COLORANT, 1.05, POUR_OMITTED, 0.044, -1, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/measures");
}

static void of_mass_of_volume(void)
{
    double result;
    CHECK(pour_mass_of_volume(250.0, 1.03, &result, NULL) == POUR_OK);
    CHECK(same(result, 257.5));
    FAILS(pour_mass_of_volume(250.0, 1.03, NULL, error), POUR_NULL, "null-pointer", "/mass_g");
    REFUSED(pour_mass_of_volume(POUR_OMITTED, 1.03, &result, error), POUR_REFUSED, "missing-field", "/volume_ml");
    REFUSED(pour_mass_of_volume(NAN, 1.03, &result, error), POUR_NOT_FINITE, "not-finite", "/volume_ml");
    REFUSED(pour_mass_of_volume(-1e-9, 1.03, &result, error), POUR_REFUSED, "out-of-range", "/volume_ml");
    REFUSED(pour_mass_of_volume(1000001000000000.0, 1.03, &result, error), POUR_REFUSED, "out-of-range", "/volume_ml");
    REFUSED(pour_mass_of_volume(250.0, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/density_g_per_ml");
    REFUSED(pour_mass_of_volume(250.0, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/density_g_per_ml");
    REFUSED(pour_mass_of_volume(250.0, 0.0009999990000000001, &result, error), POUR_REFUSED, "out-of-range", "/density_g_per_ml");
    REFUSED(pour_mass_of_volume(250.0, 25.000025, &result, error), POUR_REFUSED, "out-of-range", "/density_g_per_ml");
}

static void columns_of_mass_of_volume(void)
{
    pour_mass_of_volume_columns columns = {0};
    pour_mass_of_volume_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 250.0;
    first[1] = NAN;
    columns.volume_ml = (pour_column){first, 8};
    columns.density_g_per_ml = (pour_column){&(const double){1.03}, 0};
    results.mass_g = (pour_result_column){out[0], 8};
    CHECK(pour_mass_of_volume_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 257.5) && canonical(out[0][1]));
    FAILS(pour_mass_of_volume_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_mass_of_volume_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_volume_of_mass(void)
{
    double result;
    CHECK(pour_volume_of_mass(257.5, 1.03, &result, NULL) == POUR_OK);
    CHECK(same(result, 250.0));
    FAILS(pour_volume_of_mass(257.5, 1.03, NULL, error), POUR_NULL, "null-pointer", "/volume_ml");
    REFUSED(pour_volume_of_mass(POUR_OMITTED, 1.03, &result, error), POUR_REFUSED, "missing-field", "/mass_g");
    REFUSED(pour_volume_of_mass(NAN, 1.03, &result, error), POUR_NOT_FINITE, "not-finite", "/mass_g");
    REFUSED(pour_volume_of_mass(-1e-9, 1.03, &result, error), POUR_REFUSED, "out-of-range", "/mass_g");
    REFUSED(pour_volume_of_mass(1000001000000000.0, 1.03, &result, error), POUR_REFUSED, "out-of-range", "/mass_g");
    REFUSED(pour_volume_of_mass(257.5, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/density_g_per_ml");
    REFUSED(pour_volume_of_mass(257.5, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/density_g_per_ml");
    REFUSED(pour_volume_of_mass(257.5, 0.0009999990000000001, &result, error), POUR_REFUSED, "out-of-range", "/density_g_per_ml");
    REFUSED(pour_volume_of_mass(257.5, 25.000025, &result, error), POUR_REFUSED, "out-of-range", "/density_g_per_ml");
}

static void columns_of_volume_of_mass(void)
{
    pour_volume_of_mass_columns columns = {0};
    pour_volume_of_mass_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 257.5;
    first[1] = NAN;
    columns.mass_g = (pour_column){first, 8};
    columns.density_g_per_ml = (pour_column){&(const double){1.03}, 0};
    results.volume_ml = (pour_result_column){out[0], 8};
    CHECK(pour_volume_of_mass_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 250.0) && canonical(out[0][1]));
    FAILS(pour_volume_of_mass_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_volume_of_mass_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_density_of_parts(void)
{
    const pour_parts_row parts[] = {{100.0, 1.0}, {50.0, 2.0}};
    double result;
    CHECK(pour_density_of_parts(parts, 2, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result, 1.2000000000000002));
    FAILS(pour_density_of_parts(parts, 2, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/density_g_per_ml");
    REFUSED(pour_density_of_parts(NULL, 0, POUR_OMITTED, &result, error), POUR_NULL, "missing-field", "/parts");
    REFUSED(pour_density_of_parts(NULL, 1, POUR_OMITTED, &result, error), POUR_NULL, "null-pointer", "/parts");
    {
        const pour_parts_row wrong[] = {{NAN, 1.0}, {50.0, 2.0}};
    REFUSED(pour_density_of_parts(wrong, 2, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/parts/0/0");
    }
    {
        const pour_parts_row wrong[] = {{100.0, NAN}, {50.0, 2.0}};
    REFUSED(pour_density_of_parts(wrong, 2, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/parts/0/1");
    }
    REFUSED(pour_density_of_parts(parts, 2, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    REFUSED(pour_density_of_parts(parts, 2, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    REFUSED(pour_density_of_parts(parts, 2, 1.0, &result, error), POUR_REFUSED, "out-of-range", "/voids");
}

static void of_mix_share(void)
{
    const pour_parts_row parts[] = {{75.0, 1.0}, {50.0, 2.0}};
    pour_mix_share_result result;
    CHECK(pour_mix_share(parts, 2, 2, &result, NULL) == POUR_OK);
    CHECK(same(result.mass_share, 0.4));
    CHECK(same(result.volume_share, 0.25000000000000006));
    FAILS(pour_mix_share(parts, 2, 2, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_mix_share(NULL, 0, 2, &result, error), POUR_NULL, "missing-field", "/parts");
    REFUSED(pour_mix_share(NULL, 1, 2, &result, error), POUR_NULL, "null-pointer", "/parts");
    {
        const pour_parts_row wrong[] = {{NAN, 1.0}, {50.0, 2.0}};
    REFUSED(pour_mix_share(wrong, 2, 2, &result, error), POUR_NOT_FINITE, "not-finite", "/parts/0/0");
    }
    {
        const pour_parts_row wrong[] = {{75.0, NAN}, {50.0, 2.0}};
    REFUSED(pour_mix_share(wrong, 2, 2, &result, error), POUR_NOT_FINITE, "not-finite", "/parts/0/1");
    }
    REFUSED(pour_mix_share(parts, 2, POUR_OMITTED_COUNT, &result, error), POUR_REFUSED, "missing-field", "/part");
    REFUSED(pour_mix_share(parts, 2, 0, &result, error), POUR_REFUSED, "out-of-range", "/part");
    REFUSED(pour_mix_share(parts, 2, 1001, &result, error), POUR_REFUSED, "out-of-range", "/part");
}

static void of_salt_convert(void)
{
    pour_salt_convert_result result;
    pour_salt_convert_input input = POUR_SALT_CONVERT_INPUT_INIT, bad;
    input.base_volume_ml = 250.0;
    input.base_density_g_per_ml = 1.0;
    input.salt_density_g_per_ml = 2.0;
    input.form = POUR_FORM_OF_BASE;
    input.loading = 0.1;
    input.to_form = POUR_FORM_AS_SCOOPED;
    input.salt_as_scooped_g_per_ml = 1.25;
    CHECK(pour_salt_convert(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.loading, 0.08));
    CHECK(same(result.loading_min, 0.08));
    CHECK(same(result.loading_max, 0.08));
    FAILS(pour_salt_convert(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_salt_convert(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.base_volume_ml = POUR_OMITTED;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "missing-field", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    bad = input;
    bad.base_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "missing-field", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "missing-field", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    bad = input;
    bad.form = 0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_UNKNOWN_NUMBER, "missing-field", "/form");
    bad = input;
    bad.form = 8;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/form");
    bad = input;
    bad.form = -1;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/form");
    bad = input;
    bad.loading = POUR_OMITTED;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "missing-field", "/loading");
    bad = input;
    bad.loading = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/loading");
    bad = input;
    bad.to_form = 0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_UNKNOWN_NUMBER, "missing-field", "/to_form");
    bad = input;
    bad.to_form = 8;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/to_form");
    bad = input;
    bad.to_form = -1;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/to_form");
    bad = input;
    bad.mix_mass_g = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/mix_mass_g");
    bad = input;
    bad.mix_mass_g = 9.99999e-13;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_mass_g");
    bad = input;
    bad.mix_mass_g = 1000001000000000.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_mass_g");
    bad = input;
    bad.mix_volume_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/mix_volume_ml");
    bad = input;
    bad.mix_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_volume_ml");
    bad = input;
    bad.mix_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_volume_ml");
    bad = input;
    bad.hot_volume_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hot_volume_ml");
    bad = input;
    bad.hot_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_volume_ml");
    bad = input;
    bad.hot_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_volume_ml");
    bad = input;
    bad.shot_temperature_celsius = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_temperature_celsius");
    bad = input;
    bad.shot_temperature_celsius = 19.99998;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_temperature_celsius");
    bad = input;
    bad.shot_temperature_celsius = 400.0004;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_temperature_celsius");
    bad = input;
    bad.voids = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    bad = input;
    bad.voids = -1e-9;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.voids = 1.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.salt_as_scooped_g_per_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_as_scooped_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_as_scooped_g_per_ml = 25.000025;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_expansion_per_kelvin = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_expansion_per_kelvin");
    bad = input;
    bad.salt_expansion_per_kelvin = -1e-9;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_expansion_per_kelvin");
    bad = input;
    bad.salt_expansion_per_kelvin = 0.01000001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_expansion_per_kelvin");
    bad = input;
    bad.softener_per_salt = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_per_salt");
    bad = input;
    bad.softener_per_salt = -1e-9;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_per_salt");
    bad = input;
    bad.softener_per_salt = 10.00001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_per_salt");
    bad = input;
    bad.softener_density_g_per_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_expansion_per_kelvin = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_expansion_per_kelvin");
    bad = input;
    bad.softener_expansion_per_kelvin = -1e-9;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_expansion_per_kelvin");
    bad = input;
    bad.softener_expansion_per_kelvin = 0.01000001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_expansion_per_kelvin");
    bad = input;
    bad.most_solids = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/most_solids");
    bad = input;
    bad.most_solids = 0.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
    bad = input;
    bad.most_solids = 1.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
    bad = input;
    bad.cavity_volume_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.feed = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/feed");
    bad = input;
    bad.feed = -1e-9;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.feed = 1.000001;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.hook_mass_g = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = -1e-9;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = 1000001000000000.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_volume_ml = NAN;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = -1e-9;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_convert(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
}

static void columns_of_salt_convert(void)
{
    pour_salt_convert_columns columns = {0};
    pour_salt_convert_result_columns results = {0};
    double first[2], out[3][2] = {{0}};
    int32_t statuses[2];
    first[0] = 250.0;
    first[1] = NAN;
    columns.base_volume_ml = (pour_column){first, 8};
    columns.base_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.salt_density_g_per_ml = (pour_column){&(const double){2.0}, 0};
    columns.form = POUR_FORM_OF_BASE;
    columns.loading = (pour_column){&(const double){0.1}, 0};
    columns.to_form = POUR_FORM_AS_SCOOPED;
    columns.salt_as_scooped_g_per_ml = (pour_column){&(const double){1.25}, 0};
    results.loading = (pour_result_column){out[0], 8};
    results.loading_min = (pour_result_column){out[1], 8};
    results.loading_max = (pour_result_column){out[2], 8};
    CHECK(pour_salt_convert_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 0.08) && canonical(out[0][1]));
    CHECK(same(out[1][0], 0.08) && canonical(out[1][1]));
    CHECK(same(out[2][0], 0.08) && canonical(out[2][1]));
    FAILS(pour_salt_convert_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_salt_convert_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_salt_mass(void)
{
    pour_salt_mass_result result;
    pour_salt_mass_input input = POUR_SALT_MASS_INPUT_INIT, bad;
    input.base_volume_ml = 250.0;
    input.base_density_g_per_ml = 1.0;
    input.salt_density_g_per_ml = 2.0;
    input.form = POUR_FORM_OF_BASE;
    input.loading = 0.1;
    input.salt_as_scooped_g_per_ml = 1.25;
    CHECK(pour_salt_mass(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.salt_mass_g, 25.0));
    CHECK(same(result.salt_mass_min_g, 25.0));
    CHECK(same(result.salt_mass_max_g, 25.0));
    CHECK(same(result.softener_mass_g, 0.0));
    FAILS(pour_salt_mass(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_salt_mass(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.base_volume_ml = POUR_OMITTED;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "missing-field", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    bad = input;
    bad.base_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "missing-field", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "missing-field", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    bad = input;
    bad.form = 0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_UNKNOWN_NUMBER, "missing-field", "/form");
    bad = input;
    bad.form = 8;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/form");
    bad = input;
    bad.form = -1;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/form");
    bad = input;
    bad.loading = POUR_OMITTED;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "missing-field", "/loading");
    bad = input;
    bad.loading = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/loading");
    bad = input;
    bad.mix_mass_g = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/mix_mass_g");
    bad = input;
    bad.mix_mass_g = 9.99999e-13;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_mass_g");
    bad = input;
    bad.mix_mass_g = 1000001000000000.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_mass_g");
    bad = input;
    bad.mix_volume_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/mix_volume_ml");
    bad = input;
    bad.mix_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_volume_ml");
    bad = input;
    bad.mix_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_volume_ml");
    bad = input;
    bad.hot_volume_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hot_volume_ml");
    bad = input;
    bad.hot_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_volume_ml");
    bad = input;
    bad.hot_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_volume_ml");
    bad = input;
    bad.shot_temperature_celsius = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_temperature_celsius");
    bad = input;
    bad.shot_temperature_celsius = 19.99998;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_temperature_celsius");
    bad = input;
    bad.shot_temperature_celsius = 400.0004;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_temperature_celsius");
    bad = input;
    bad.voids = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    bad = input;
    bad.voids = -1e-9;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.voids = 1.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.salt_as_scooped_g_per_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_as_scooped_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_as_scooped_g_per_ml = 25.000025;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_expansion_per_kelvin = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_expansion_per_kelvin");
    bad = input;
    bad.salt_expansion_per_kelvin = -1e-9;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_expansion_per_kelvin");
    bad = input;
    bad.salt_expansion_per_kelvin = 0.01000001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_expansion_per_kelvin");
    bad = input;
    bad.softener_per_salt = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_per_salt");
    bad = input;
    bad.softener_per_salt = -1e-9;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_per_salt");
    bad = input;
    bad.softener_per_salt = 10.00001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_per_salt");
    bad = input;
    bad.softener_density_g_per_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_expansion_per_kelvin = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_expansion_per_kelvin");
    bad = input;
    bad.softener_expansion_per_kelvin = -1e-9;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_expansion_per_kelvin");
    bad = input;
    bad.softener_expansion_per_kelvin = 0.01000001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_expansion_per_kelvin");
    bad = input;
    bad.most_solids = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/most_solids");
    bad = input;
    bad.most_solids = 0.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
    bad = input;
    bad.most_solids = 1.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
    bad = input;
    bad.cavity_volume_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.feed = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/feed");
    bad = input;
    bad.feed = -1e-9;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.feed = 1.000001;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.hook_mass_g = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = -1e-9;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = 1000001000000000.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_volume_ml = NAN;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = -1e-9;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_mass(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
}

static void columns_of_salt_mass(void)
{
    pour_salt_mass_columns columns = {0};
    pour_salt_mass_result_columns results = {0};
    double first[2], out[4][2] = {{0}};
    int32_t statuses[2];
    first[0] = 250.0;
    first[1] = NAN;
    columns.base_volume_ml = (pour_column){first, 8};
    columns.base_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.salt_density_g_per_ml = (pour_column){&(const double){2.0}, 0};
    columns.form = POUR_FORM_OF_BASE;
    columns.loading = (pour_column){&(const double){0.1}, 0};
    columns.salt_as_scooped_g_per_ml = (pour_column){&(const double){1.25}, 0};
    results.salt_mass_g = (pour_result_column){out[0], 8};
    results.salt_mass_min_g = (pour_result_column){out[1], 8};
    results.salt_mass_max_g = (pour_result_column){out[2], 8};
    results.softener_mass_g = (pour_result_column){out[3], 8};
    CHECK(pour_salt_mass_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 25.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 25.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 25.0) && canonical(out[2][1]));
    CHECK(same(out[3][0], 0.0) && canonical(out[3][1]));
    FAILS(pour_salt_mass_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_salt_mass_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_salt_reach(void)
{
    pour_salt_reach_result result;
    pour_salt_reach_input input = POUR_SALT_REACH_INPUT_INIT, bad;
    input.base_volume_ml = 250.0;
    input.base_density_g_per_ml = 1.0;
    input.salt_density_g_per_ml = 2.0;
    input.form = POUR_FORM_FINISHED_DENSITY;
    input.salt_as_scooped_g_per_ml = 1.25;
    CHECK(pour_salt_reach(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.loading_min, 1.0));
    CHECK(same(result.loading_max, 1.3));
    FAILS(pour_salt_reach(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_salt_reach(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.base_volume_ml = POUR_OMITTED;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "missing-field", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    bad = input;
    bad.base_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    bad = input;
    bad.base_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "missing-field", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    bad = input;
    bad.base_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "missing-field", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    bad = input;
    bad.salt_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    bad = input;
    bad.form = 0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_UNKNOWN_NUMBER, "missing-field", "/form");
    bad = input;
    bad.form = 8;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/form");
    bad = input;
    bad.form = -1;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/form");
    bad = input;
    bad.mix_mass_g = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/mix_mass_g");
    bad = input;
    bad.mix_mass_g = 9.99999e-13;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_mass_g");
    bad = input;
    bad.mix_mass_g = 1000001000000000.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_mass_g");
    bad = input;
    bad.mix_volume_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/mix_volume_ml");
    bad = input;
    bad.mix_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_volume_ml");
    bad = input;
    bad.mix_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mix_volume_ml");
    bad = input;
    bad.hot_volume_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hot_volume_ml");
    bad = input;
    bad.hot_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_volume_ml");
    bad = input;
    bad.hot_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_volume_ml");
    bad = input;
    bad.shot_temperature_celsius = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_temperature_celsius");
    bad = input;
    bad.shot_temperature_celsius = 19.99998;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_temperature_celsius");
    bad = input;
    bad.shot_temperature_celsius = 400.0004;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_temperature_celsius");
    bad = input;
    bad.voids = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    bad = input;
    bad.voids = -1e-9;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.voids = 1.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.salt_as_scooped_g_per_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_as_scooped_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_as_scooped_g_per_ml = 25.000025;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_as_scooped_g_per_ml");
    bad = input;
    bad.salt_expansion_per_kelvin = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_expansion_per_kelvin");
    bad = input;
    bad.salt_expansion_per_kelvin = -1e-9;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_expansion_per_kelvin");
    bad = input;
    bad.salt_expansion_per_kelvin = 0.01000001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salt_expansion_per_kelvin");
    bad = input;
    bad.softener_per_salt = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_per_salt");
    bad = input;
    bad.softener_per_salt = -1e-9;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_per_salt");
    bad = input;
    bad.softener_per_salt = 10.00001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_per_salt");
    bad = input;
    bad.softener_density_g_per_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_density_g_per_ml = 25.000025;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_density_g_per_ml");
    bad = input;
    bad.softener_expansion_per_kelvin = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_expansion_per_kelvin");
    bad = input;
    bad.softener_expansion_per_kelvin = -1e-9;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_expansion_per_kelvin");
    bad = input;
    bad.softener_expansion_per_kelvin = 0.01000001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/softener_expansion_per_kelvin");
    bad = input;
    bad.most_solids = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/most_solids");
    bad = input;
    bad.most_solids = 0.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
    bad = input;
    bad.most_solids = 1.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
    bad = input;
    bad.cavity_volume_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.feed = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/feed");
    bad = input;
    bad.feed = -1e-9;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.feed = 1.000001;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.hook_mass_g = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = -1e-9;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = 1000001000000000.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_volume_ml = NAN;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = -1e-9;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = 1000001000000000.0;
    REFUSED(pour_salt_reach(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
}

static void columns_of_salt_reach(void)
{
    pour_salt_reach_columns columns = {0};
    pour_salt_reach_result_columns results = {0};
    double first[2], out[2][2] = {{0}};
    int32_t statuses[2];
    first[0] = 250.0;
    first[1] = NAN;
    columns.base_volume_ml = (pour_column){first, 8};
    columns.base_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.salt_density_g_per_ml = (pour_column){&(const double){2.0}, 0};
    columns.form = POUR_FORM_FINISHED_DENSITY;
    columns.salt_as_scooped_g_per_ml = (pour_column){&(const double){1.25}, 0};
    results.loading_min = (pour_result_column){out[0], 8};
    results.loading_max = (pour_result_column){out[1], 8};
    CHECK(pour_salt_reach_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 1.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 1.3) && canonical(out[1][1]));
    FAILS(pour_salt_reach_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_salt_reach_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_salt_for_density(void)
{
    double result;
    CHECK(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result, 166.66666666666666));
    FAILS(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/salt_mass_g");
    REFUSED(pour_salt_for_density(POUR_OMITTED, 1.0, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/base_volume_ml");
    REFUSED(pour_salt_for_density(NAN, 1.0, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/base_volume_ml");
    REFUSED(pour_salt_for_density(9.999990000000002e-10, 1.0, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    REFUSED(pour_salt_for_density(1000001000000000.0, 1.0, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/base_volume_ml");
    REFUSED(pour_salt_for_density(250.0, POUR_OMITTED, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/base_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, NAN, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/base_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 0.0009999990000000001, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 25.000025, 2.0, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, POUR_OMITTED, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/salt_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, NAN, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, 0.0009999990000000001, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, 25.000025, 1.25, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/salt_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/finished_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, NAN, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/finished_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 0.0009999990000000001, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/finished_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 25.000025, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/finished_density_g_per_ml");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, -1e-9, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, 1.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, POUR_OMITTED, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/most_solids");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, POUR_OMITTED, 0.0, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
    REFUSED(pour_salt_for_density(250.0, 1.0, 2.0, 1.25, POUR_OMITTED, 1.0, &result, error), POUR_REFUSED, "out-of-range", "/most_solids");
}

static void columns_of_salt_for_density(void)
{
    pour_salt_for_density_columns columns = {0};
    pour_salt_for_density_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 250.0;
    first[1] = NAN;
    columns.base_volume_ml = (pour_column){first, 8};
    columns.base_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.salt_density_g_per_ml = (pour_column){&(const double){2.0}, 0};
    columns.finished_density_g_per_ml = (pour_column){&(const double){1.25}, 0};
    results.salt_mass_g = (pour_result_column){out[0], 8};
    CHECK(pour_salt_for_density_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 166.66666666666666) && canonical(out[0][1]));
    FAILS(pour_salt_for_density_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_salt_for_density_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_shot_fill(void)
{
    pour_shot_fill_result result;
    pour_shot_fill_input input = POUR_SHOT_FILL_INPUT_INIT, bad;
    input.cavities = 4;
    input.cavity_volume_ml = 10.0;
    input.cold_density_g_per_ml = 1.0625;
    input.hot_density_g_per_ml = 1.0;
    input.feed = 0.5;
    input.sprue_volume_ml = 8.0;
    CHECK(pour_shot_fill(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.shot_mass_g, 48.0));
    CHECK(same(result.pieces_mass_g, 41.25));
    CHECK(same(result.sprue_mass_g, 6.75));
    CHECK(same(result.missing_mass_g, 0.0));
    CHECK(same(result.piece_mass_g, 10.3125));
    CHECK(same(result.piece_mass_min_g, 10.3125));
    CHECK(same(result.piece_mass_max_g, 10.3125));
    CHECK(same(result.fed, 0.5));
    FAILS(pour_shot_fill(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_shot_fill(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.cavities = POUR_OMITTED_COUNT;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "missing-field", "/cavities");
    bad = input;
    bad.cavities = 0;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavities");
    bad = input;
    bad.cavities = 1000001;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavities");
    bad = input;
    bad.cavity_volume_ml = POUR_OMITTED;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "missing-field", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 1000001000000000.0;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.cold_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "missing-field", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = 25.000025;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hot_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = 25.000025;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    bad = input;
    bad.voids = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    bad = input;
    bad.voids = -1e-9;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.voids = 1.0;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.feed = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/feed");
    bad = input;
    bad.feed = -1e-9;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.feed = 1.000001;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.sprue_volume_ml = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/sprue_volume_ml");
    bad = input;
    bad.sprue_volume_ml = -1e-9;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/sprue_volume_ml");
    bad = input;
    bad.sprue_volume_ml = 1000001000000000.0;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/sprue_volume_ml");
    bad = input;
    bad.topped_mass_g = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/topped_mass_g");
    bad = input;
    bad.topped_mass_g = -1e-9;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/topped_mass_g");
    bad = input;
    bad.topped_mass_g = 1000001000000000.0;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/topped_mass_g");
    bad = input;
    bad.layer_share = NAN;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/layer_share");
    bad = input;
    bad.layer_share = 0.0;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/layer_share");
    bad = input;
    bad.layer_share = 1.000001;
    REFUSED(pour_shot_fill(&bad, &result, error), POUR_REFUSED, "out-of-range", "/layer_share");
}

static void columns_of_shot_fill(void)
{
    pour_shot_fill_columns columns = {0};
    pour_shot_fill_result_columns results = {0};
    double first[2], out[8][2] = {{0}};
    int32_t statuses[2];
    first[0] = 4;
    first[1] = NAN;
    columns.cavities = (pour_column){first, 8};
    columns.cavity_volume_ml = (pour_column){&(const double){10.0}, 0};
    columns.cold_density_g_per_ml = (pour_column){&(const double){1.0625}, 0};
    columns.hot_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.feed = (pour_column){&(const double){0.5}, 0};
    columns.sprue_volume_ml = (pour_column){&(const double){8.0}, 0};
    results.shot_mass_g = (pour_result_column){out[0], 8};
    results.pieces_mass_g = (pour_result_column){out[1], 8};
    results.sprue_mass_g = (pour_result_column){out[2], 8};
    results.missing_mass_g = (pour_result_column){out[3], 8};
    results.piece_mass_g = (pour_result_column){out[4], 8};
    results.piece_mass_min_g = (pour_result_column){out[5], 8};
    results.piece_mass_max_g = (pour_result_column){out[6], 8};
    results.fed = (pour_result_column){out[7], 8};
    CHECK(pour_shot_fill_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 48.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 41.25) && canonical(out[1][1]));
    CHECK(same(out[2][0], 6.75) && canonical(out[2][1]));
    CHECK(same(out[3][0], 0.0) && canonical(out[3][1]));
    CHECK(same(out[4][0], 10.3125) && canonical(out[4][1]));
    CHECK(same(out[5][0], 10.3125) && canonical(out[5][1]));
    CHECK(same(out[6][0], 10.3125) && canonical(out[6][1]));
    CHECK(same(out[7][0], 0.5) && canonical(out[7][1]));
    FAILS(pour_shot_fill_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_shot_fill_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_piece_mass(void)
{
    pour_piece_mass_result result;
    CHECK(pour_piece_mass(10.0, 1.0625, 1.0, POUR_OMITTED, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result.piece_mass_g, 10.3125));
    CHECK(same(result.piece_mass_min_g, 10.0));
    CHECK(same(result.piece_mass_max_g, 10.625));
    FAILS(pour_piece_mass(10.0, 1.0625, 1.0, POUR_OMITTED, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_piece_mass(POUR_OMITTED, 1.0625, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/cavity_volume_ml");
    REFUSED(pour_piece_mass(NAN, 1.0625, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/cavity_volume_ml");
    REFUSED(pour_piece_mass(9.999990000000002e-10, 1.0625, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    REFUSED(pour_piece_mass(1000001000000000.0, 1.0625, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    REFUSED(pour_piece_mass(10.0, POUR_OMITTED, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/cold_density_g_per_ml");
    REFUSED(pour_piece_mass(10.0, NAN, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/cold_density_g_per_ml");
    REFUSED(pour_piece_mass(10.0, 0.0009999990000000001, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    REFUSED(pour_piece_mass(10.0, 25.000025, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    REFUSED(pour_piece_mass(10.0, 1.0625, NAN, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/hot_density_g_per_ml");
    REFUSED(pour_piece_mass(10.0, 1.0625, 0.0009999990000000001, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    REFUSED(pour_piece_mass(10.0, 1.0625, 25.000025, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    REFUSED(pour_piece_mass(10.0, 1.0625, 1.0, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    REFUSED(pour_piece_mass(10.0, 1.0625, 1.0, -1e-9, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    REFUSED(pour_piece_mass(10.0, 1.0625, 1.0, 1.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    REFUSED(pour_piece_mass(10.0, 1.0625, 1.0, POUR_OMITTED, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/feed");
    REFUSED(pour_piece_mass(10.0, 1.0625, 1.0, POUR_OMITTED, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    REFUSED(pour_piece_mass(10.0, 1.0625, 1.0, POUR_OMITTED, 1.000001, &result, error), POUR_REFUSED, "out-of-range", "/feed");
}

static void columns_of_piece_mass(void)
{
    pour_piece_mass_columns columns = {0};
    pour_piece_mass_result_columns results = {0};
    double first[2], out[3][2] = {{0}};
    int32_t statuses[2];
    first[0] = 10.0;
    first[1] = NAN;
    columns.cavity_volume_ml = (pour_column){first, 8};
    columns.cold_density_g_per_ml = (pour_column){&(const double){1.0625}, 0};
    columns.hot_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    results.piece_mass_g = (pour_result_column){out[0], 8};
    results.piece_mass_min_g = (pour_result_column){out[1], 8};
    results.piece_mass_max_g = (pour_result_column){out[2], 8};
    CHECK(pour_piece_mass_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 10.3125) && canonical(out[0][1]));
    CHECK(same(out[1][0], 10.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 10.625) && canonical(out[2][1]));
    FAILS(pour_piece_mass_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_piece_mass_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_shots(void)
{
    pour_shots_result result;
    CHECK(pour_shots(10, 4, POUR_OMITTED, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(result.shots == 3u);
    CHECK(result.cast == 12u);
    FAILS(pour_shots(10, 4, POUR_OMITTED, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_shots(POUR_OMITTED_COUNT, 4, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/pieces");
    REFUSED(pour_shots(0, 4, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/pieces");
    REFUSED(pour_shots(1000001, 4, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/pieces");
    REFUSED(pour_shots(10, POUR_OMITTED_COUNT, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/cavities");
    REFUSED(pour_shots(10, 0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/cavities");
    REFUSED(pour_shots(10, 1000001, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/cavities");
    REFUSED(pour_shots(10, 4, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/rejects");
    REFUSED(pour_shots(10, 4, -1e-9, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/rejects");
    REFUSED(pour_shots(10, 4, 1.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/rejects");
    REFUSED(pour_shots(10, 4, POUR_OMITTED, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/confidence");
    REFUSED(pour_shots(10, 4, POUR_OMITTED, 0.0, &result, error), POUR_REFUSED, "out-of-range", "/confidence");
    REFUSED(pour_shots(10, 4, POUR_OMITTED, 1.000000998999999, &result, error), POUR_REFUSED, "out-of-range", "/confidence");
}

static void columns_of_shots(void)
{
    pour_shots_columns columns = {0};
    pour_shots_result_columns results = {0};
    double first[2], out[2][2] = {{0}};
    int32_t statuses[2];
    first[0] = 10;
    first[1] = NAN;
    columns.pieces = (pour_column){first, 8};
    columns.cavities = (pour_column){&(const double){4}, 0};
    results.shots = (pour_result_column){out[0], 8};
    results.cast = (pour_result_column){out[1], 8};
    CHECK(pour_shots_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 3.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 12.0) && canonical(out[1][1]));
    FAILS(pour_shots_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_shots_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_injector_loads(void)
{
    pour_injector_loads_result result;
    CHECK(pour_injector_loads(5, 40.0, 1.0, 100.0, 10.0, &result, NULL) == POUR_OK);
    CHECK(result.loads == 3u);
    CHECK(result.shots_per_load == 2u);
    CHECK(result.shots_in_last == 1u);
    FAILS(pour_injector_loads(5, 40.0, 1.0, 100.0, 10.0, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_injector_loads(POUR_OMITTED_COUNT, 40.0, 1.0, 100.0, 10.0, &result, error), POUR_REFUSED, "missing-field", "/shots");
    REFUSED(pour_injector_loads(0, 40.0, 1.0, 100.0, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/shots");
    REFUSED(pour_injector_loads(100000001, 40.0, 1.0, 100.0, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/shots");
    REFUSED(pour_injector_loads(5, POUR_OMITTED, 1.0, 100.0, 10.0, &result, error), POUR_REFUSED, "missing-field", "/shot_mass_g");
    REFUSED(pour_injector_loads(5, NAN, 1.0, 100.0, 10.0, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_mass_g");
    REFUSED(pour_injector_loads(5, 9.99999e-13, 1.0, 100.0, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/shot_mass_g");
    REFUSED(pour_injector_loads(5, 1000001000000000.0, 1.0, 100.0, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/shot_mass_g");
    REFUSED(pour_injector_loads(5, 40.0, POUR_OMITTED, 100.0, 10.0, &result, error), POUR_REFUSED, "missing-field", "/shot_density_g_per_ml");
    REFUSED(pour_injector_loads(5, 40.0, NAN, 100.0, 10.0, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_density_g_per_ml");
    REFUSED(pour_injector_loads(5, 40.0, 0.0009999990000000001, 100.0, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/shot_density_g_per_ml");
    REFUSED(pour_injector_loads(5, 40.0, 25.000025, 100.0, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/shot_density_g_per_ml");
    REFUSED(pour_injector_loads(5, 40.0, 1.0, POUR_OMITTED, 10.0, &result, error), POUR_REFUSED, "missing-field", "/injector_capacity_ml");
    REFUSED(pour_injector_loads(5, 40.0, 1.0, NAN, 10.0, &result, error), POUR_NOT_FINITE, "not-finite", "/injector_capacity_ml");
    REFUSED(pour_injector_loads(5, 40.0, 1.0, 9.999990000000002e-10, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/injector_capacity_ml");
    REFUSED(pour_injector_loads(5, 40.0, 1.0, 1000001000000000.0, 10.0, &result, error), POUR_REFUSED, "out-of-range", "/injector_capacity_ml");
    REFUSED(pour_injector_loads(5, 40.0, 1.0, 100.0, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/injector_residue_ml");
    REFUSED(pour_injector_loads(5, 40.0, 1.0, 100.0, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/injector_residue_ml");
    REFUSED(pour_injector_loads(5, 40.0, 1.0, 100.0, 1000001000000000.0, &result, error), POUR_REFUSED, "out-of-range", "/injector_residue_ml");
}

static void columns_of_injector_loads(void)
{
    pour_injector_loads_columns columns = {0};
    pour_injector_loads_result_columns results = {0};
    double first[2], out[3][2] = {{0}};
    int32_t statuses[2];
    first[0] = 5;
    first[1] = NAN;
    columns.shots = (pour_column){first, 8};
    columns.shot_mass_g = (pour_column){&(const double){40.0}, 0};
    columns.shot_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.injector_capacity_ml = (pour_column){&(const double){100.0}, 0};
    columns.injector_residue_ml = (pour_column){&(const double){10.0}, 0};
    results.loads = (pour_result_column){out[0], 8};
    results.shots_per_load = (pour_result_column){out[1], 8};
    results.shots_in_last = (pour_result_column){out[2], 8};
    CHECK(pour_injector_loads_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 3.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 2.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 1.0) && canonical(out[2][1]));
    FAILS(pour_injector_loads_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_injector_loads_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_batch_need(void)
{
    pour_batch_need_result result;
    pour_batch_need_input input = POUR_BATCH_NEED_INPUT_INIT, bad;
    input.pieces = 10;
    input.cavities = 4;
    input.shot_mass_g = 50.0;
    input.shot_density_g_per_ml = 1.0;
    input.injector_capacity_ml = 120.0;
    input.injector_residue_ml = 5.0;
    input.sprue_mass_g = 10.0;
    CHECK(pour_batch_need(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.total_mass_g, 155.00000000000003));
    CHECK(same(result.drawn_mass_g, 150.00000000000003));
    CHECK(same(result.returned_mass_g, 0.0));
    CHECK(same(result.pieces_mass_g, 120.0));
    CHECK(same(result.sprues_mass_g, 30.0));
    CHECK(same(result.kept_mass_g, 5.0));
    CHECK(same(result.in_cup_mass_g, 0.0));
    CHECK(result.shots == 3u);
    CHECK(result.loads == 2u);
    CHECK(result.shots_per_load == 2u);
    CHECK(result.shots_in_last == 1u);
    FAILS(pour_batch_need(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_batch_need(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.pieces = POUR_OMITTED_COUNT;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "missing-field", "/pieces");
    bad = input;
    bad.pieces = 0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/pieces");
    bad = input;
    bad.pieces = 1000001;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/pieces");
    bad = input;
    bad.cavities = POUR_OMITTED_COUNT;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "missing-field", "/cavities");
    bad = input;
    bad.cavities = 0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavities");
    bad = input;
    bad.cavities = 1000001;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavities");
    bad = input;
    bad.shot_mass_g = POUR_OMITTED;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "missing-field", "/shot_mass_g");
    bad = input;
    bad.shot_mass_g = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_mass_g");
    bad = input;
    bad.shot_mass_g = 9.99999e-13;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_mass_g");
    bad = input;
    bad.shot_mass_g = 1000001000000000.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_mass_g");
    bad = input;
    bad.shot_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "missing-field", "/shot_density_g_per_ml");
    bad = input;
    bad.shot_density_g_per_ml = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_density_g_per_ml");
    bad = input;
    bad.shot_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_density_g_per_ml");
    bad = input;
    bad.shot_density_g_per_ml = 25.000025;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/shot_density_g_per_ml");
    bad = input;
    bad.injector_capacity_ml = POUR_OMITTED;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "missing-field", "/injector_capacity_ml");
    bad = input;
    bad.injector_capacity_ml = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/injector_capacity_ml");
    bad = input;
    bad.injector_capacity_ml = 9.999990000000002e-10;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/injector_capacity_ml");
    bad = input;
    bad.injector_capacity_ml = 1000001000000000.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/injector_capacity_ml");
    bad = input;
    bad.injector_residue_ml = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/injector_residue_ml");
    bad = input;
    bad.injector_residue_ml = -1e-9;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/injector_residue_ml");
    bad = input;
    bad.injector_residue_ml = 1000001000000000.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/injector_residue_ml");
    bad = input;
    bad.cleanings = 0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cleanings");
    bad = input;
    bad.cleanings = 1000001;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cleanings");
    bad = input;
    bad.sprue_mass_g = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/sprue_mass_g");
    bad = input;
    bad.sprue_mass_g = -1e-9;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/sprue_mass_g");
    bad = input;
    bad.sprue_mass_g = 1000001000000000.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/sprue_mass_g");
    bad = input;
    bad.returned = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/returned");
    bad = input;
    bad.returned = -1e-9;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/returned");
    bad = input;
    bad.returned = 1.000001;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/returned");
    bad = input;
    bad.pot_film_g = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/pot_film_g");
    bad = input;
    bad.pot_film_g = -1e-9;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/pot_film_g");
    bad = input;
    bad.pot_film_g = 1000001000000000.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/pot_film_g");
    bad = input;
    bad.pot_heel_g = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/pot_heel_g");
    bad = input;
    bad.pot_heel_g = -1e-9;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/pot_heel_g");
    bad = input;
    bad.pot_heel_g = 1000001000000000.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/pot_heel_g");
    bad = input;
    bad.rejects = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/rejects");
    bad = input;
    bad.rejects = -1e-9;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/rejects");
    bad = input;
    bad.rejects = 1.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/rejects");
    bad = input;
    bad.confidence = NAN;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/confidence");
    bad = input;
    bad.confidence = 0.0;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/confidence");
    bad = input;
    bad.confidence = 1.000000998999999;
    REFUSED(pour_batch_need(&bad, &result, error), POUR_REFUSED, "out-of-range", "/confidence");
}

static void columns_of_batch_need(void)
{
    pour_batch_need_columns columns = {0};
    pour_batch_need_result_columns results = {0};
    double first[2], out[11][2] = {{0}};
    int32_t statuses[2];
    first[0] = 10;
    first[1] = NAN;
    columns.pieces = (pour_column){first, 8};
    columns.cavities = (pour_column){&(const double){4}, 0};
    columns.shot_mass_g = (pour_column){&(const double){50.0}, 0};
    columns.shot_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.injector_capacity_ml = (pour_column){&(const double){120.0}, 0};
    columns.injector_residue_ml = (pour_column){&(const double){5.0}, 0};
    columns.sprue_mass_g = (pour_column){&(const double){10.0}, 0};
    results.total_mass_g = (pour_result_column){out[0], 8};
    results.drawn_mass_g = (pour_result_column){out[1], 8};
    results.returned_mass_g = (pour_result_column){out[2], 8};
    results.pieces_mass_g = (pour_result_column){out[3], 8};
    results.sprues_mass_g = (pour_result_column){out[4], 8};
    results.kept_mass_g = (pour_result_column){out[5], 8};
    results.in_cup_mass_g = (pour_result_column){out[6], 8};
    results.shots = (pour_result_column){out[7], 8};
    results.loads = (pour_result_column){out[8], 8};
    results.shots_per_load = (pour_result_column){out[9], 8};
    results.shots_in_last = (pour_result_column){out[10], 8};
    CHECK(pour_batch_need_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 155.00000000000003) && canonical(out[0][1]));
    CHECK(same(out[1][0], 150.00000000000003) && canonical(out[1][1]));
    CHECK(same(out[2][0], 0.0) && canonical(out[2][1]));
    CHECK(same(out[3][0], 120.0) && canonical(out[3][1]));
    CHECK(same(out[4][0], 30.0) && canonical(out[4][1]));
    CHECK(same(out[5][0], 5.0) && canonical(out[5][1]));
    CHECK(same(out[6][0], 0.0) && canonical(out[6][1]));
    CHECK(same(out[7][0], 3.0) && canonical(out[7][1]));
    CHECK(same(out[8][0], 2.0) && canonical(out[8][1]));
    CHECK(same(out[9][0], 2.0) && canonical(out[9][1]));
    CHECK(same(out[10][0], 1.0) && canonical(out[10][1]));
    FAILS(pour_batch_need_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_batch_need_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_base_to_mark(void)
{
    pour_base_to_mark_result result;
    CHECK(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, 50.0, 20.0, &result, NULL) == POUR_OK);
    CHECK(same(result.base_volume_ml, 200.0));
    CHECK(same(result.base_mass_g, 200.0));
    CHECK(same(result.mix_mass_g, 250.0));
    CHECK(same(result.surplus_mass_g, 49.999999999999986));
    CHECK(result.extra_shots == 2u);
    FAILS(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, 50.0, 20.0, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_base_to_mark(POUR_OMITTED, 0.8, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "missing-field", "/mix_needed_g");
    REFUSED(pour_base_to_mark(NAN, 0.8, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_NOT_FINITE, "not-finite", "/mix_needed_g");
    REFUSED(pour_base_to_mark(9.99999e-13, 0.8, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/mix_needed_g");
    REFUSED(pour_base_to_mark(1000001000000000.0, 0.8, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/mix_needed_g");
    REFUSED(pour_base_to_mark(200.0, POUR_OMITTED, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "missing-field", "/base_fraction");
    REFUSED(pour_base_to_mark(200.0, NAN, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_NOT_FINITE, "not-finite", "/base_fraction");
    REFUSED(pour_base_to_mark(200.0, 0.0, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/base_fraction");
    REFUSED(pour_base_to_mark(200.0, 1.000001, 1.0, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/base_fraction");
    REFUSED(pour_base_to_mark(200.0, 0.8, POUR_OMITTED, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "missing-field", "/base_density_g_per_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, NAN, 250.0, 50.0, 20.0, &result, error), POUR_NOT_FINITE, "not-finite", "/base_density_g_per_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 0.0009999990000000001, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 25.000025, 250.0, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/base_density_g_per_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, POUR_OMITTED, 50.0, 20.0, &result, error), POUR_REFUSED, "missing-field", "/cup_capacity_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, NAN, 50.0, 20.0, &result, error), POUR_NOT_FINITE, "not-finite", "/cup_capacity_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 9.999990000000002e-10, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/cup_capacity_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 1000001000000000.0, 50.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/cup_capacity_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, NAN, 20.0, &result, error), POUR_NOT_FINITE, "not-finite", "/cup_mark_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, 9.999990000000002e-10, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/cup_mark_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, 1000001000000000.0, 20.0, &result, error), POUR_REFUSED, "out-of-range", "/cup_mark_ml");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, 50.0, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/shot_mass_g");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, 50.0, 9.99999e-13, &result, error), POUR_REFUSED, "out-of-range", "/shot_mass_g");
    REFUSED(pour_base_to_mark(200.0, 0.8, 1.0, 250.0, 50.0, 1000001000000000.0, &result, error), POUR_REFUSED, "out-of-range", "/shot_mass_g");
}

static void columns_of_base_to_mark(void)
{
    pour_base_to_mark_columns columns = {0};
    pour_base_to_mark_result_columns results = {0};
    double first[2], out[5][2] = {{0}};
    int32_t statuses[2];
    first[0] = 200.0;
    first[1] = NAN;
    columns.mix_needed_g = (pour_column){first, 8};
    columns.base_fraction = (pour_column){&(const double){0.8}, 0};
    columns.base_density_g_per_ml = (pour_column){&(const double){1.0}, 0};
    columns.cup_capacity_ml = (pour_column){&(const double){250.0}, 0};
    columns.cup_mark_ml = (pour_column){&(const double){50.0}, 0};
    columns.shot_mass_g = (pour_column){&(const double){20.0}, 0};
    results.base_volume_ml = (pour_result_column){out[0], 8};
    results.base_mass_g = (pour_result_column){out[1], 8};
    results.mix_mass_g = (pour_result_column){out[2], 8};
    results.surplus_mass_g = (pour_result_column){out[3], 8};
    results.extra_shots = (pour_result_column){out[4], 8};
    CHECK(pour_base_to_mark_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 200.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 200.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 250.0) && canonical(out[2][1]));
    CHECK(same(out[3][0], 49.999999999999986) && canonical(out[3][1]));
    CHECK(same(out[4][0], 2.0) && canonical(out[4][1]));
    FAILS(pour_base_to_mark_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_base_to_mark_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_least_pot(void)
{
    const pour_doses_row doses[] = {{0.05, 0.05, 0.005}};
    pour_least_pot_result result;
    CHECK(pour_least_pot(doses, 1, 0.8, POUR_OMITTED, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result.mix_mass_g, 125.0));
    CHECK(same(result.base_mass_g, 100.0));
    FAILS(pour_least_pot(doses, 1, 0.8, POUR_OMITTED, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_least_pot(NULL, 0, 0.8, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NULL, "missing-field", "/doses");
    REFUSED(pour_least_pot(NULL, 1, 0.8, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NULL, "null-pointer", "/doses");
    {
        const pour_doses_row wrong[] = {{NAN, 0.05, 0.005}};
    REFUSED(pour_least_pot(wrong, 1, 0.8, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/doses/0/0");
    }
    {
        const pour_doses_row wrong[] = {{0.05, NAN, 0.005}};
    REFUSED(pour_least_pot(wrong, 1, 0.8, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/doses/0/1");
    }
    {
        const pour_doses_row wrong[] = {{0.05, 0.05, NAN}};
    REFUSED(pour_least_pot(wrong, 1, 0.8, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/doses/0/2");
    }
    REFUSED(pour_least_pot(doses, 1, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/base_fraction");
    REFUSED(pour_least_pot(doses, 1, NAN, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/base_fraction");
    REFUSED(pour_least_pot(doses, 1, 0.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/base_fraction");
    REFUSED(pour_least_pot(doses, 1, 1.000001, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/base_fraction");
    REFUSED(pour_least_pot(doses, 1, 0.8, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/oven_least_g");
    REFUSED(pour_least_pot(doses, 1, 0.8, 9.99999e-13, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/oven_least_g");
    REFUSED(pour_least_pot(doses, 1, 0.8, 1000001000000000.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/oven_least_g");
    REFUSED(pour_least_pot(doses, 1, 0.8, POUR_OMITTED, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/injector_least_g");
    REFUSED(pour_least_pot(doses, 1, 0.8, POUR_OMITTED, 9.99999e-13, &result, error), POUR_REFUSED, "out-of-range", "/injector_least_g");
    REFUSED(pour_least_pot(doses, 1, 0.8, POUR_OMITTED, 1000001000000000.0, &result, error), POUR_REFUSED, "out-of-range", "/injector_least_g");
}

static void of_reject_rate(void)
{
    pour_reject_rate_result result;
    CHECK(pour_reject_rate(1, 0, 0.5, &result, NULL) == POUR_OK);
    CHECK(same(result.rejects, 0.0));
    CHECK(same(result.rejects_min, 0.0));
    CHECK(same(result.rejects_max, 0.75));
    FAILS(pour_reject_rate(1, 0, 0.5, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_reject_rate(POUR_OMITTED_COUNT, 0, 0.5, &result, error), POUR_REFUSED, "missing-field", "/cast_pieces");
    REFUSED(pour_reject_rate(0, 0, 0.5, &result, error), POUR_REFUSED, "out-of-range", "/cast_pieces");
    REFUSED(pour_reject_rate(1000001, 0, 0.5, &result, error), POUR_REFUSED, "out-of-range", "/cast_pieces");
    REFUSED(pour_reject_rate(1, POUR_OMITTED_COUNT, 0.5, &result, error), POUR_REFUSED, "missing-field", "/reject_count");
    REFUSED(pour_reject_rate(1, 1000001, 0.5, &result, error), POUR_REFUSED, "out-of-range", "/reject_count");
    REFUSED(pour_reject_rate(1, 0, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/confidence");
    REFUSED(pour_reject_rate(1, 0, 0.0, &result, error), POUR_REFUSED, "out-of-range", "/confidence");
    REFUSED(pour_reject_rate(1, 0, 1.000000998999999, &result, error), POUR_REFUSED, "out-of-range", "/confidence");
}

static void columns_of_reject_rate(void)
{
    pour_reject_rate_columns columns = {0};
    pour_reject_rate_result_columns results = {0};
    double first[2], out[3][2] = {{0}};
    int32_t statuses[2];
    first[0] = 1;
    first[1] = NAN;
    columns.cast_pieces = (pour_column){first, 8};
    columns.reject_count = (pour_column){&(const double){0}, 0};
    columns.confidence = (pour_column){&(const double){0.5}, 0};
    results.rejects = (pour_result_column){out[0], 8};
    results.rejects_min = (pour_result_column){out[1], 8};
    results.rejects_max = (pour_result_column){out[2], 8};
    CHECK(pour_reject_rate_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 0.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 0.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 0.75) && canonical(out[2][1]));
    FAILS(pour_reject_rate_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_reject_rate_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_bench_measure(void)
{
    const double spoons_ml[] = {5.0, 2.5};
    pour_bench_measure_result result;
    pour_bench_measure_input input = POUR_BENCH_MEASURE_INPUT_INIT, bad;
    input.mass_to_measure_g = 12.5;
    input.tolerance = 0.02;
    input.spoons_ml = spoons_ml;
    input.spoons_count = 2;
    input.as_measured_density_g_per_ml = 1.0;
    CHECK(pour_bench_measure(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.mass_g, 12.5));
    CHECK(same(result.deviation, 0.0));
    CHECK(result.tool == 3);
    CHECK(result.acts == 3u);
    CHECK(result.drops == 0u);
    CHECK(result.spoonfuls[0] == 2u);
    CHECK(result.spoonfuls[1] == 1u);
    CHECK(result.spoonfuls[2] == 0u);
    CHECK(result.spoonfuls[3] == 0u);
    CHECK(result.spoonfuls[4] == 0u);
    CHECK(result.spoonfuls[5] == 0u);
    CHECK(result.spoonfuls[6] == 0u);
    CHECK(result.spoonfuls[7] == 0u);
    CHECK(result.cup == 0u);
    CHECK(result.cup_fillings == 0u);
    CHECK(result.cup_mark == 0u);
    FAILS(pour_bench_measure(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_bench_measure(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.mass_to_measure_g = POUR_OMITTED;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "missing-field", "/mass_to_measure_g");
    bad = input;
    bad.mass_to_measure_g = NAN;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/mass_to_measure_g");
    bad = input;
    bad.mass_to_measure_g = 9.99999e-13;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mass_to_measure_g");
    bad = input;
    bad.mass_to_measure_g = 1000001000000000.0;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/mass_to_measure_g");
    bad = input;
    bad.tolerance = NAN;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/tolerance");
    bad = input;
    bad.tolerance = 0.0;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/tolerance");
    bad = input;
    bad.tolerance = 1.0;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/tolerance");
    bad = input;
    bad.balance_readability_g = NAN;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = 9.99999e-13;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = 1000001000000000.0;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    bad = input;
    bad.balance_capacity_g = NAN;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_capacity_g");
    bad = input;
    bad.balance_capacity_g = 9.99999e-13;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_capacity_g");
    bad = input;
    bad.balance_capacity_g = 1000001000000000.0;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_capacity_g");
    bad = input;
    bad.balance_least_load_g = NAN;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_least_load_g");
    bad = input;
    bad.balance_least_load_g = -1e-9;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_least_load_g");
    bad = input;
    bad.balance_least_load_g = 1000001000000000.0;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_least_load_g");
    bad = input;
    bad.spoons_ml = NULL;
    bad.spoons_count = 1;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NULL, "null-pointer", "/spoons_ml");
    {
        const double wrong[] = {NAN, 2.5};
    bad = input;
    bad.spoons_ml = wrong;
    bad.spoons_count = 2;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/spoons_ml/0");
    }
    bad = input;
    bad.cups = NULL;
    bad.cups_count = 1;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NULL, "null-pointer", "/cups");
    bad = input;
    bad.as_measured_density_g_per_ml = NAN;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/as_measured_density_g_per_ml");
    bad = input;
    bad.as_measured_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/as_measured_density_g_per_ml");
    bad = input;
    bad.as_measured_density_g_per_ml = 25.000025;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/as_measured_density_g_per_ml");
    bad = input;
    bad.drop_mass_g = NAN;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_mass_g");
    bad = input;
    bad.drop_mass_g = 9.99999e-13;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_mass_g");
    bad = input;
    bad.drop_mass_g = 1000001000000000.0;
    REFUSED(pour_bench_measure(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_mass_g");
}

static void of_sink_rate(void)
{
    pour_sink_rate_result result;
    pour_sink_rate_input input = POUR_SINK_RATE_INPUT_INIT, bad;
    input.piece_density_g_per_ml = 1.1;
    input.piece_volume_ml = 9.5;
    input.diameter_mm = 10.0;
    input.water_temperature_celsius = 20.0;
    input.length_mm = 121.0;
    input.hook_mass_g = 2.0;
    input.hook_volume_ml = 0.25;
    CHECK(pour_sink_rate(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.sink_rate_cm_per_s, 22.04104669853903));
    CHECK(same(result.sink_rate_min_cm_per_s, 19.297542687585494));
    CHECK(same(result.sink_rate_max_cm_per_s, 30.86051085510933));
    CHECK(result.motion == 3);
    CHECK(same(result.reynolds, 2196.2834650479926));
    CHECK(same(result.drag_coefficient, 0.9083361655585607));
    CHECK(canonical(result.sink_time_s));
    FAILS(pour_sink_rate(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_sink_rate(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.piece_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/piece_density_g_per_ml");
    bad = input;
    bad.piece_density_g_per_ml = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/piece_density_g_per_ml");
    bad = input;
    bad.piece_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/piece_density_g_per_ml");
    bad = input;
    bad.piece_density_g_per_ml = 25.000025;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/piece_density_g_per_ml");
    bad = input;
    bad.piece_volume_ml = POUR_OMITTED;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/piece_volume_ml");
    bad = input;
    bad.piece_volume_ml = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/piece_volume_ml");
    bad = input;
    bad.piece_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/piece_volume_ml");
    bad = input;
    bad.piece_volume_ml = 1000001000000000.0;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/piece_volume_ml");
    bad = input;
    bad.diameter_mm = POUR_OMITTED;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/diameter_mm");
    bad = input;
    bad.diameter_mm = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/diameter_mm");
    bad = input;
    bad.diameter_mm = 9.99999e-7;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/diameter_mm");
    bad = input;
    bad.diameter_mm = 1000001.0;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/diameter_mm");
    bad = input;
    bad.water_temperature_celsius = POUR_OMITTED;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/water_temperature_celsius");
    bad = input;
    bad.water_temperature_celsius = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/water_temperature_celsius");
    bad = input;
    bad.water_temperature_celsius = -1e-9;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
    bad = input;
    bad.water_temperature_celsius = 40.00004;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
    bad = input;
    bad.length_mm = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/length_mm");
    bad = input;
    bad.length_mm = 9.99999e-7;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/length_mm");
    bad = input;
    bad.length_mm = 1000001.0;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/length_mm");
    bad = input;
    bad.shape = 3;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/shape");
    bad = input;
    bad.shape = -1;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/shape");
    bad = input;
    bad.hook_mass_g = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = -1e-9;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = 1000001000000000.0;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_volume_ml = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = -1e-9;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = 1000001000000000.0;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
    bad = input;
    bad.salinity_practical = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salinity_practical");
    bad = input;
    bad.salinity_practical = -1e-9;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_practical");
    bad = input;
    bad.salinity_practical = 41.800041799999995;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_practical");
    bad = input;
    bad.salinity_absolute = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salinity_absolute");
    bad = input;
    bad.salinity_absolute = -1e-9;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_absolute");
    bad = input;
    bad.salinity_absolute = 0.042000042;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_absolute");
    bad = input;
    bad.density_uncertainty_g_per_ml = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/density_uncertainty_g_per_ml");
    bad = input;
    bad.density_uncertainty_g_per_ml = -1e-9;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/density_uncertainty_g_per_ml");
    bad = input;
    bad.density_uncertainty_g_per_ml = 25.000025;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/density_uncertainty_g_per_ml");
    bad = input;
    bad.depth_m = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/depth_m");
    bad = input;
    bad.depth_m = 9.999990000000002e-10;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/depth_m");
    bad = input;
    bad.depth_m = 12000.012;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/depth_m");
    bad = input;
    bad.drop_depth_m = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_depth_m");
    bad = input;
    bad.drop_depth_m = 9.999990000000002e-10;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_depth_m");
    bad = input;
    bad.drop_depth_m = 12000.012;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_depth_m");
    bad = input;
    bad.drop_time_s = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_time_s");
    bad = input;
    bad.drop_time_s = 9.99999e-7;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_time_s");
    bad = input;
    bad.drop_time_s = 1000001000.0;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_time_s");
    bad = input;
    bad.drop_density_g_per_ml = NAN;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_density_g_per_ml");
    bad = input;
    bad.drop_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_density_g_per_ml");
    bad = input;
    bad.drop_density_g_per_ml = 25.000025;
    REFUSED(pour_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_density_g_per_ml");
}

static void columns_of_sink_rate(void)
{
    pour_sink_rate_columns columns = {0};
    pour_sink_rate_result_columns results = {0};
    double first[2], out[7][2] = {{0}};
    int32_t statuses[2];
    first[0] = 1.1;
    first[1] = NAN;
    columns.piece_density_g_per_ml = (pour_column){first, 8};
    columns.piece_volume_ml = (pour_column){&(const double){9.5}, 0};
    columns.diameter_mm = (pour_column){&(const double){10.0}, 0};
    columns.water_temperature_celsius = (pour_column){&(const double){20.0}, 0};
    columns.length_mm = (pour_column){&(const double){121.0}, 0};
    columns.shape = 0;
    columns.hook_mass_g = (pour_column){&(const double){2.0}, 0};
    columns.hook_volume_ml = (pour_column){&(const double){0.25}, 0};
    results.sink_rate_cm_per_s = (pour_result_column){out[0], 8};
    results.sink_rate_min_cm_per_s = (pour_result_column){out[1], 8};
    results.sink_rate_max_cm_per_s = (pour_result_column){out[2], 8};
    results.motion = (pour_result_column){out[3], 8};
    results.reynolds = (pour_result_column){out[4], 8};
    results.drag_coefficient = (pour_result_column){out[5], 8};
    results.sink_time_s = (pour_result_column){out[6], 8};
    CHECK(pour_sink_rate_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 22.04104669853903) && canonical(out[0][1]));
    CHECK(same(out[1][0], 19.297542687585494) && canonical(out[1][1]));
    CHECK(same(out[2][0], 30.86051085510933) && canonical(out[2][1]));
    CHECK(same(out[3][0], 3) && canonical(out[3][1]));
    CHECK(same(out[4][0], 2196.2834650479926) && canonical(out[4][1]));
    CHECK(same(out[5][0], 0.9083361655585607) && canonical(out[5][1]));
    CHECK(canonical(out[6][0]) && canonical(out[6][1]));
    FAILS(pour_sink_rate_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_sink_rate_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_density_for_sink_rate(void)
{
    double result;
    pour_density_for_sink_rate_input input = POUR_DENSITY_FOR_SINK_RATE_INPUT_INIT, bad;
    input.sink_rate_cm_per_s = 22.04104669853903;
    input.piece_volume_ml = 9.5;
    input.diameter_mm = 10.0;
    input.water_temperature_celsius = 20.0;
    input.length_mm = 121.0;
    input.hook_mass_g = 2.0;
    input.hook_volume_ml = 0.25;
    CHECK(pour_density_for_sink_rate(&input, &result, NULL) == POUR_OK);
    CHECK(same(result, 1.0999999999999979));
    FAILS(pour_density_for_sink_rate(&input, NULL, error), POUR_NULL, "null-pointer", "/piece_density_g_per_ml");
    FAILS(pour_density_for_sink_rate(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.sink_rate_cm_per_s = POUR_OMITTED;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/sink_rate_cm_per_s");
    bad = input;
    bad.sink_rate_cm_per_s = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/sink_rate_cm_per_s");
    bad = input;
    bad.sink_rate_cm_per_s = 9.999990000000002e-10;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/sink_rate_cm_per_s");
    bad = input;
    bad.sink_rate_cm_per_s = 1000001.0;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/sink_rate_cm_per_s");
    bad = input;
    bad.piece_volume_ml = POUR_OMITTED;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/piece_volume_ml");
    bad = input;
    bad.piece_volume_ml = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/piece_volume_ml");
    bad = input;
    bad.piece_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/piece_volume_ml");
    bad = input;
    bad.piece_volume_ml = 1000001000000000.0;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/piece_volume_ml");
    bad = input;
    bad.diameter_mm = POUR_OMITTED;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/diameter_mm");
    bad = input;
    bad.diameter_mm = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/diameter_mm");
    bad = input;
    bad.diameter_mm = 9.99999e-7;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/diameter_mm");
    bad = input;
    bad.diameter_mm = 1000001.0;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/diameter_mm");
    bad = input;
    bad.water_temperature_celsius = POUR_OMITTED;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "missing-field", "/water_temperature_celsius");
    bad = input;
    bad.water_temperature_celsius = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/water_temperature_celsius");
    bad = input;
    bad.water_temperature_celsius = -1e-9;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
    bad = input;
    bad.water_temperature_celsius = 40.00004;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
    bad = input;
    bad.length_mm = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/length_mm");
    bad = input;
    bad.length_mm = 9.99999e-7;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/length_mm");
    bad = input;
    bad.length_mm = 1000001.0;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/length_mm");
    bad = input;
    bad.shape = 3;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/shape");
    bad = input;
    bad.shape = -1;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/shape");
    bad = input;
    bad.hook_mass_g = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = -1e-9;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_mass_g = 1000001000000000.0;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_mass_g");
    bad = input;
    bad.hook_volume_ml = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = -1e-9;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
    bad = input;
    bad.hook_volume_ml = 1000001000000000.0;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hook_volume_ml");
    bad = input;
    bad.salinity_practical = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salinity_practical");
    bad = input;
    bad.salinity_practical = -1e-9;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_practical");
    bad = input;
    bad.salinity_practical = 41.800041799999995;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_practical");
    bad = input;
    bad.salinity_absolute = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/salinity_absolute");
    bad = input;
    bad.salinity_absolute = -1e-9;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_absolute");
    bad = input;
    bad.salinity_absolute = 0.042000042;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/salinity_absolute");
    bad = input;
    bad.drop_depth_m = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_depth_m");
    bad = input;
    bad.drop_depth_m = 9.999990000000002e-10;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_depth_m");
    bad = input;
    bad.drop_depth_m = 12000.012;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_depth_m");
    bad = input;
    bad.drop_time_s = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_time_s");
    bad = input;
    bad.drop_time_s = 9.99999e-7;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_time_s");
    bad = input;
    bad.drop_time_s = 1000001000.0;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_time_s");
    bad = input;
    bad.drop_density_g_per_ml = NAN;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/drop_density_g_per_ml");
    bad = input;
    bad.drop_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_density_g_per_ml");
    bad = input;
    bad.drop_density_g_per_ml = 25.000025;
    REFUSED(pour_density_for_sink_rate(&bad, &result, error), POUR_REFUSED, "out-of-range", "/drop_density_g_per_ml");
}

static void columns_of_density_for_sink_rate(void)
{
    pour_density_for_sink_rate_columns columns = {0};
    pour_density_for_sink_rate_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 22.04104669853903;
    first[1] = NAN;
    columns.sink_rate_cm_per_s = (pour_column){first, 8};
    columns.piece_volume_ml = (pour_column){&(const double){9.5}, 0};
    columns.diameter_mm = (pour_column){&(const double){10.0}, 0};
    columns.water_temperature_celsius = (pour_column){&(const double){20.0}, 0};
    columns.length_mm = (pour_column){&(const double){121.0}, 0};
    columns.shape = 0;
    columns.hook_mass_g = (pour_column){&(const double){2.0}, 0};
    columns.hook_volume_ml = (pour_column){&(const double){0.25}, 0};
    results.piece_density_g_per_ml = (pour_result_column){out[0], 8};
    CHECK(pour_density_for_sink_rate_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 1.0999999999999979) && canonical(out[0][1]));
    FAILS(pour_density_for_sink_rate_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_density_for_sink_rate_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_hardness(void)
{
    const pour_points_row points[] = {{0.0, 60.0}, {0.2, 40.0}};
    double result;
    CHECK(pour_hardness(points, 2, POUR_SCALE_SHORE_00, 0.1, &result, NULL) == POUR_OK);
    CHECK(same(result, 50.0));
    FAILS(pour_hardness(points, 2, POUR_SCALE_SHORE_00, 0.1, NULL, error), POUR_NULL, "null-pointer", "/hardness");
    REFUSED(pour_hardness(NULL, 0, POUR_SCALE_SHORE_00, 0.1, &result, error), POUR_NULL, "missing-field", "/points");
    REFUSED(pour_hardness(NULL, 1, POUR_SCALE_SHORE_00, 0.1, &result, error), POUR_NULL, "null-pointer", "/points");
    {
        const pour_points_row wrong[] = {{NAN, 60.0}, {0.2, 40.0}};
    REFUSED(pour_hardness(wrong, 2, POUR_SCALE_SHORE_00, 0.1, &result, error), POUR_NOT_FINITE, "not-finite", "/points/0/0");
    }
    {
        const pour_points_row wrong[] = {{0.0, NAN}, {0.2, 40.0}};
    REFUSED(pour_hardness(wrong, 2, POUR_SCALE_SHORE_00, 0.1, &result, error), POUR_NOT_FINITE, "not-finite", "/points/0/1");
    }
    REFUSED(pour_hardness(points, 2, 0, 0.1, &result, error), POUR_UNKNOWN_NUMBER, "missing-field", "/scale");
    REFUSED(pour_hardness(points, 2, 3, 0.1, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/scale");
    REFUSED(pour_hardness(points, 2, -1, 0.1, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/scale");
    REFUSED(pour_hardness(points, 2, POUR_SCALE_SHORE_00, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/softener_ratio");
    REFUSED(pour_hardness(points, 2, POUR_SCALE_SHORE_00, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/softener_ratio");
    REFUSED(pour_hardness(points, 2, POUR_SCALE_SHORE_00, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/softener_ratio");
    REFUSED(pour_hardness(points, 2, POUR_SCALE_SHORE_00, 100.0001, &result, error), POUR_REFUSED, "out-of-range", "/softener_ratio");
}

static void of_softener_ratio(void)
{
    const pour_points_row points[] = {{0.0, 60.0}, {0.2, 40.0}};
    double result;
    CHECK(pour_softener_ratio(points, 2, POUR_SCALE_SHORE_00, 50.0, &result, NULL) == POUR_OK);
    CHECK(same(result, 0.10000000000000005));
    FAILS(pour_softener_ratio(points, 2, POUR_SCALE_SHORE_00, 50.0, NULL, error), POUR_NULL, "null-pointer", "/softener_ratio");
    REFUSED(pour_softener_ratio(NULL, 0, POUR_SCALE_SHORE_00, 50.0, &result, error), POUR_NULL, "missing-field", "/points");
    REFUSED(pour_softener_ratio(NULL, 1, POUR_SCALE_SHORE_00, 50.0, &result, error), POUR_NULL, "null-pointer", "/points");
    {
        const pour_points_row wrong[] = {{NAN, 60.0}, {0.2, 40.0}};
    REFUSED(pour_softener_ratio(wrong, 2, POUR_SCALE_SHORE_00, 50.0, &result, error), POUR_NOT_FINITE, "not-finite", "/points/0/0");
    }
    {
        const pour_points_row wrong[] = {{0.0, NAN}, {0.2, 40.0}};
    REFUSED(pour_softener_ratio(wrong, 2, POUR_SCALE_SHORE_00, 50.0, &result, error), POUR_NOT_FINITE, "not-finite", "/points/0/1");
    }
    REFUSED(pour_softener_ratio(points, 2, 0, 50.0, &result, error), POUR_UNKNOWN_NUMBER, "missing-field", "/scale");
    REFUSED(pour_softener_ratio(points, 2, 3, 50.0, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/scale");
    REFUSED(pour_softener_ratio(points, 2, -1, 50.0, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/scale");
    REFUSED(pour_softener_ratio(points, 2, POUR_SCALE_SHORE_00, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/hardness");
    REFUSED(pour_softener_ratio(points, 2, POUR_SCALE_SHORE_00, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/hardness");
    REFUSED(pour_softener_ratio(points, 2, POUR_SCALE_SHORE_00, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/hardness");
    REFUSED(pour_softener_ratio(points, 2, POUR_SCALE_SHORE_00, 100.0001, &result, error), POUR_REFUSED, "out-of-range", "/hardness");
}

static void of_salted_softener(void)
{
    const pour_salted_points_row salted_points[] = {{0.0, 0.0}, {0.2, 0.1}};
    double result;
    CHECK(pour_salted_softener(salted_points, 2, 0.1, &result, NULL) == POUR_OK);
    CHECK(same(result, 0.05));
    FAILS(pour_salted_softener(salted_points, 2, 0.1, NULL, error), POUR_NULL, "null-pointer", "/softener_ratio");
    REFUSED(pour_salted_softener(NULL, 0, 0.1, &result, error), POUR_NULL, "missing-field", "/salted_points");
    REFUSED(pour_salted_softener(NULL, 1, 0.1, &result, error), POUR_NULL, "null-pointer", "/salted_points");
    {
        const pour_salted_points_row wrong[] = {{NAN, 0.0}, {0.2, 0.1}};
    REFUSED(pour_salted_softener(wrong, 2, 0.1, &result, error), POUR_NOT_FINITE, "not-finite", "/salted_points/0/0");
    }
    {
        const pour_salted_points_row wrong[] = {{0.0, NAN}, {0.2, 0.1}};
    REFUSED(pour_salted_softener(wrong, 2, 0.1, &result, error), POUR_NOT_FINITE, "not-finite", "/salted_points/0/1");
    }
    REFUSED(pour_salted_softener(salted_points, 2, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/salt_of_base");
    REFUSED(pour_salted_softener(salted_points, 2, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/salt_of_base");
    REFUSED(pour_salted_softener(salted_points, 2, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/salt_of_base");
    REFUSED(pour_salted_softener(salted_points, 2, 10.00001, &result, error), POUR_REFUSED, "out-of-range", "/salt_of_base");
}

static void of_water_density(void)
{
    double result;
    CHECK(pour_water_density(20.0, &result, NULL) == POUR_OK);
    CHECK(same(result, 0.9982067455596167));
    FAILS(pour_water_density(20.0, NULL, error), POUR_NULL, "null-pointer", "/density_g_per_ml");
    REFUSED(pour_water_density(POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/water_temperature_celsius");
    REFUSED(pour_water_density(NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/water_temperature_celsius");
    REFUSED(pour_water_density(-1e-9, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
    REFUSED(pour_water_density(40.00004, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
}

static void columns_of_water_density(void)
{
    pour_water_density_columns columns = {0};
    pour_water_density_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 20.0;
    first[1] = NAN;
    columns.water_temperature_celsius = (pour_column){first, 8};
    results.density_g_per_ml = (pour_result_column){out[0], 8};
    CHECK(pour_water_density_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 0.9982067455596167) && canonical(out[0][1]));
    FAILS(pour_water_density_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_water_density_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_cavity_of_water(void)
{
    double result;
    CHECK(pour_cavity_of_water(10.0, 20.0, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result, 10.028511692201585));
    FAILS(pour_cavity_of_water(10.0, 20.0, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/cavity_volume_ml");
    REFUSED(pour_cavity_of_water(POUR_OMITTED, 20.0, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/water_mass_g");
    REFUSED(pour_cavity_of_water(NAN, 20.0, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/water_mass_g");
    REFUSED(pour_cavity_of_water(9.99999e-13, 20.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/water_mass_g");
    REFUSED(pour_cavity_of_water(1000001000000000.0, 20.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/water_mass_g");
    REFUSED(pour_cavity_of_water(10.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/water_temperature_celsius");
    REFUSED(pour_cavity_of_water(10.0, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/water_temperature_celsius");
    REFUSED(pour_cavity_of_water(10.0, -1e-9, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
    REFUSED(pour_cavity_of_water(10.0, 40.00004, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/water_temperature_celsius");
    REFUSED(pour_cavity_of_water(10.0, 20.0, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/air_pressure_kpa");
    REFUSED(pour_cavity_of_water(10.0, 20.0, 44.999955, &result, error), POUR_REFUSED, "out-of-range", "/air_pressure_kpa");
    REFUSED(pour_cavity_of_water(10.0, 20.0, 110.00011, &result, error), POUR_REFUSED, "out-of-range", "/air_pressure_kpa");
}

static void columns_of_cavity_of_water(void)
{
    pour_cavity_of_water_columns columns = {0};
    pour_cavity_of_water_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 10.0;
    first[1] = NAN;
    columns.water_mass_g = (pour_column){first, 8};
    columns.water_temperature_celsius = (pour_column){&(const double){20.0}, 0};
    results.cavity_volume_ml = (pour_result_column){out[0], 8};
    CHECK(pour_cavity_of_water_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 10.028511692201585) && canonical(out[0][1]));
    FAILS(pour_cavity_of_water_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_cavity_of_water_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_standard_pressure(void)
{
    double result;
    CHECK(pour_standard_pressure(0.0, &result, NULL) == POUR_OK);
    CHECK(same(result, 101.325));
    FAILS(pour_standard_pressure(0.0, NULL, error), POUR_NULL, "null-pointer", "/station_pressure_kpa");
    REFUSED(pour_standard_pressure(POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/altitude_m");
    REFUSED(pour_standard_pressure(NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/altitude_m");
    REFUSED(pour_standard_pressure(-5000.005, &result, error), POUR_REFUSED, "out-of-range", "/altitude_m");
    REFUSED(pour_standard_pressure(11000.011, &result, error), POUR_REFUSED, "out-of-range", "/altitude_m");
}

static void columns_of_standard_pressure(void)
{
    pour_standard_pressure_columns columns = {0};
    pour_standard_pressure_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 0.0;
    first[1] = NAN;
    columns.altitude_m = (pour_column){first, 8};
    results.station_pressure_kpa = (pour_result_column){out[0], 8};
    CHECK(pour_standard_pressure_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 101.325) && canonical(out[0][1]));
    FAILS(pour_standard_pressure_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_standard_pressure_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_station_pressure(void)
{
    double result;
    CHECK(pour_station_pressure(101.325, 0.0, &result, NULL) == POUR_OK);
    CHECK(same(result, 101.325));
    FAILS(pour_station_pressure(101.325, 0.0, NULL, error), POUR_NULL, "null-pointer", "/station_pressure_kpa");
    REFUSED(pour_station_pressure(POUR_OMITTED, 0.0, &result, error), POUR_REFUSED, "missing-field", "/reported_pressure_kpa");
    REFUSED(pour_station_pressure(NAN, 0.0, &result, error), POUR_NOT_FINITE, "not-finite", "/reported_pressure_kpa");
    REFUSED(pour_station_pressure(84.999915, 0.0, &result, error), POUR_REFUSED, "out-of-range", "/reported_pressure_kpa");
    REFUSED(pour_station_pressure(110.00011, 0.0, &result, error), POUR_REFUSED, "out-of-range", "/reported_pressure_kpa");
    REFUSED(pour_station_pressure(101.325, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/altitude_m");
    REFUSED(pour_station_pressure(101.325, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/altitude_m");
    REFUSED(pour_station_pressure(101.325, -5000.005, &result, error), POUR_REFUSED, "out-of-range", "/altitude_m");
    REFUSED(pour_station_pressure(101.325, 11000.011, &result, error), POUR_REFUSED, "out-of-range", "/altitude_m");
}

static void columns_of_station_pressure(void)
{
    pour_station_pressure_columns columns = {0};
    pour_station_pressure_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 101.325;
    first[1] = NAN;
    columns.reported_pressure_kpa = (pour_column){first, 8};
    columns.altitude_m = (pour_column){&(const double){0.0}, 0};
    results.station_pressure_kpa = (pour_result_column){out[0], 8};
    CHECK(pour_station_pressure_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 101.325) && canonical(out[0][1]));
    FAILS(pour_station_pressure_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_station_pressure_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_swollen_volume(void)
{
    pour_swollen_volume_result result;
    pour_swollen_volume_input input = POUR_SWOLLEN_VOLUME_INPUT_INIT, bad;
    input.liquid_volume_ml = 450.0;
    input.entrained_air = 0.1;
    input.station_pressure_kpa = 100.0;
    input.absolute_pressure_kpa = 10.0;
    CHECK(pour_swollen_volume(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.swollen_volume_ml, 950.0));
    CHECK(same(result.standing_volume_ml, 500.0));
    CHECK(same(result.absolute_pressure_kpa, 10.0));
    FAILS(pour_swollen_volume(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_swollen_volume(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.liquid_volume_ml = POUR_OMITTED;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "missing-field", "/liquid_volume_ml");
    bad = input;
    bad.liquid_volume_ml = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/liquid_volume_ml");
    bad = input;
    bad.liquid_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/liquid_volume_ml");
    bad = input;
    bad.liquid_volume_ml = 1000001000000000.0;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/liquid_volume_ml");
    bad = input;
    bad.entrained_air = POUR_OMITTED;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "missing-field", "/entrained_air");
    bad = input;
    bad.entrained_air = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/entrained_air");
    bad = input;
    bad.entrained_air = -1e-9;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/entrained_air");
    bad = input;
    bad.entrained_air = 1.0;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/entrained_air");
    bad = input;
    bad.station_pressure_kpa = POUR_OMITTED;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "missing-field", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = 22.5999774;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = 178.000178;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/station_pressure_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/gauge_vacuum_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = -1e-9;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/gauge_vacuum_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = 180.00018;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/gauge_vacuum_kpa");
    bad = input;
    bad.absolute_pressure_kpa = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/absolute_pressure_kpa");
    bad = input;
    bad.absolute_pressure_kpa = -1e-9;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/absolute_pressure_kpa");
    bad = input;
    bad.absolute_pressure_kpa = 180.00018;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/absolute_pressure_kpa");
    bad = input;
    bad.dial_tolerance_kpa = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/dial_tolerance_kpa");
    bad = input;
    bad.dial_tolerance_kpa = -1e-9;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/dial_tolerance_kpa");
    bad = input;
    bad.dial_tolerance_kpa = 101.000101;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/dial_tolerance_kpa");
    bad = input;
    bad.vapor_pressure_kpa = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/vapor_pressure_kpa");
    bad = input;
    bad.vapor_pressure_kpa = -1e-9;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vapor_pressure_kpa");
    bad = input;
    bad.vapor_pressure_kpa = 180.00018;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vapor_pressure_kpa");
    bad = input;
    bad.damp_at_celsius = NAN;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/damp_at_celsius");
    bad = input;
    bad.damp_at_celsius = 0.00999999;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/damp_at_celsius");
    bad = input;
    bad.damp_at_celsius = 200.0002;
    REFUSED(pour_swollen_volume(&bad, &result, error), POUR_REFUSED, "out-of-range", "/damp_at_celsius");
}

static void columns_of_swollen_volume(void)
{
    pour_swollen_volume_columns columns = {0};
    pour_swollen_volume_result_columns results = {0};
    double first[2], out[3][2] = {{0}};
    int32_t statuses[2];
    first[0] = 450.0;
    first[1] = NAN;
    columns.liquid_volume_ml = (pour_column){first, 8};
    columns.entrained_air = (pour_column){&(const double){0.1}, 0};
    columns.station_pressure_kpa = (pour_column){&(const double){100.0}, 0};
    columns.absolute_pressure_kpa = (pour_column){&(const double){10.0}, 0};
    results.swollen_volume_ml = (pour_result_column){out[0], 8};
    results.standing_volume_ml = (pour_result_column){out[1], 8};
    results.absolute_pressure_kpa = (pour_result_column){out[2], 8};
    CHECK(pour_swollen_volume_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 950.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 500.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 10.0) && canonical(out[2][1]));
    FAILS(pour_swollen_volume_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_swollen_volume_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_entrained_air(void)
{
    double result;
    pour_entrained_air_input input = POUR_ENTRAINED_AIR_INPUT_INIT, bad;
    input.rise = 1.9;
    input.station_pressure_kpa = 100.0;
    input.absolute_pressure_kpa = 10.0;
    CHECK(pour_entrained_air(&input, &result, NULL) == POUR_OK);
    CHECK(same(result, 0.09999999999999999));
    FAILS(pour_entrained_air(&input, NULL, error), POUR_NULL, "null-pointer", "/entrained_air");
    FAILS(pour_entrained_air(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.rise = POUR_OMITTED;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "missing-field", "/rise");
    bad = input;
    bad.rise = NAN;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/rise");
    bad = input;
    bad.rise = 0.999999;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/rise");
    bad = input;
    bad.rise = 1000.001;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/rise");
    bad = input;
    bad.station_pressure_kpa = POUR_OMITTED;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "missing-field", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = NAN;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = 22.5999774;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = 178.000178;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/station_pressure_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = NAN;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/gauge_vacuum_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = -1e-9;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/gauge_vacuum_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = 180.00018;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/gauge_vacuum_kpa");
    bad = input;
    bad.absolute_pressure_kpa = NAN;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/absolute_pressure_kpa");
    bad = input;
    bad.absolute_pressure_kpa = -1e-9;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/absolute_pressure_kpa");
    bad = input;
    bad.absolute_pressure_kpa = 180.00018;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/absolute_pressure_kpa");
    bad = input;
    bad.dial_tolerance_kpa = NAN;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/dial_tolerance_kpa");
    bad = input;
    bad.dial_tolerance_kpa = -1e-9;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/dial_tolerance_kpa");
    bad = input;
    bad.dial_tolerance_kpa = 101.000101;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/dial_tolerance_kpa");
    bad = input;
    bad.vapor_pressure_kpa = NAN;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/vapor_pressure_kpa");
    bad = input;
    bad.vapor_pressure_kpa = -1e-9;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vapor_pressure_kpa");
    bad = input;
    bad.vapor_pressure_kpa = 180.00018;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vapor_pressure_kpa");
    bad = input;
    bad.damp_at_celsius = NAN;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/damp_at_celsius");
    bad = input;
    bad.damp_at_celsius = 0.00999999;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/damp_at_celsius");
    bad = input;
    bad.damp_at_celsius = 200.0002;
    REFUSED(pour_entrained_air(&bad, &result, error), POUR_REFUSED, "out-of-range", "/damp_at_celsius");
}

static void columns_of_entrained_air(void)
{
    pour_entrained_air_columns columns = {0};
    pour_entrained_air_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 1.9;
    first[1] = NAN;
    columns.rise = (pour_column){first, 8};
    columns.station_pressure_kpa = (pour_column){&(const double){100.0}, 0};
    columns.absolute_pressure_kpa = (pour_column){&(const double){10.0}, 0};
    results.entrained_air = (pour_result_column){out[0], 8};
    CHECK(pour_entrained_air_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 0.09999999999999999) && canonical(out[0][1]));
    FAILS(pour_entrained_air_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_entrained_air_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_degas_vessel(void)
{
    pour_degas_vessel_result result;
    pour_degas_vessel_input input = POUR_DEGAS_VESSEL_INPUT_INIT, bad;
    input.liquid_volume_ml = 450.0;
    input.entrained_air = 0.1;
    input.station_pressure_kpa = 100.0;
    input.absolute_pressure_kpa = 10.0;
    input.vessel_brim_ml = 600.0;
    input.vessel_mark_ml = 50.0;
    CHECK(pour_degas_vessel(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.vessel_volume_ml, 1055.5555555555554));
    CHECK(same(result.fill_mark_ml, 250.0));
    CHECK(result.fills == 2u);
    CHECK(same(result.fill_level_ml, 250.0));
    CHECK(same(result.fill_swollen_ml, 475.0));
    FAILS(pour_degas_vessel(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_degas_vessel(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.liquid_volume_ml = POUR_OMITTED;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "missing-field", "/liquid_volume_ml");
    bad = input;
    bad.liquid_volume_ml = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/liquid_volume_ml");
    bad = input;
    bad.liquid_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/liquid_volume_ml");
    bad = input;
    bad.liquid_volume_ml = 1000001000000000.0;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/liquid_volume_ml");
    bad = input;
    bad.entrained_air = POUR_OMITTED;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "missing-field", "/entrained_air");
    bad = input;
    bad.entrained_air = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/entrained_air");
    bad = input;
    bad.entrained_air = -1e-9;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/entrained_air");
    bad = input;
    bad.entrained_air = 1.0;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/entrained_air");
    bad = input;
    bad.station_pressure_kpa = POUR_OMITTED;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "missing-field", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = 22.5999774;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/station_pressure_kpa");
    bad = input;
    bad.station_pressure_kpa = 178.000178;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/station_pressure_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/gauge_vacuum_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = -1e-9;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/gauge_vacuum_kpa");
    bad = input;
    bad.gauge_vacuum_kpa = 180.00018;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/gauge_vacuum_kpa");
    bad = input;
    bad.absolute_pressure_kpa = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/absolute_pressure_kpa");
    bad = input;
    bad.absolute_pressure_kpa = -1e-9;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/absolute_pressure_kpa");
    bad = input;
    bad.absolute_pressure_kpa = 180.00018;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/absolute_pressure_kpa");
    bad = input;
    bad.dial_tolerance_kpa = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/dial_tolerance_kpa");
    bad = input;
    bad.dial_tolerance_kpa = -1e-9;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/dial_tolerance_kpa");
    bad = input;
    bad.dial_tolerance_kpa = 101.000101;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/dial_tolerance_kpa");
    bad = input;
    bad.vapor_pressure_kpa = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/vapor_pressure_kpa");
    bad = input;
    bad.vapor_pressure_kpa = -1e-9;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vapor_pressure_kpa");
    bad = input;
    bad.vapor_pressure_kpa = 180.00018;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vapor_pressure_kpa");
    bad = input;
    bad.damp_at_celsius = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/damp_at_celsius");
    bad = input;
    bad.damp_at_celsius = 0.00999999;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/damp_at_celsius");
    bad = input;
    bad.damp_at_celsius = 200.0002;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/damp_at_celsius");
    bad = input;
    bad.vessel_spare = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/vessel_spare");
    bad = input;
    bad.vessel_spare = -1e-9;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vessel_spare");
    bad = input;
    bad.vessel_spare = 1.0;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vessel_spare");
    bad = input;
    bad.vessel_brim_ml = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/vessel_brim_ml");
    bad = input;
    bad.vessel_brim_ml = 9.999990000000002e-10;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vessel_brim_ml");
    bad = input;
    bad.vessel_brim_ml = 1000001000000000.0;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vessel_brim_ml");
    bad = input;
    bad.vessel_mark_ml = NAN;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/vessel_mark_ml");
    bad = input;
    bad.vessel_mark_ml = 9.999990000000002e-10;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vessel_mark_ml");
    bad = input;
    bad.vessel_mark_ml = 1000001000000000.0;
    REFUSED(pour_degas_vessel(&bad, &result, error), POUR_REFUSED, "out-of-range", "/vessel_mark_ml");
}

static void columns_of_degas_vessel(void)
{
    pour_degas_vessel_columns columns = {0};
    pour_degas_vessel_result_columns results = {0};
    double first[2], out[5][2] = {{0}};
    int32_t statuses[2];
    first[0] = 450.0;
    first[1] = NAN;
    columns.liquid_volume_ml = (pour_column){first, 8};
    columns.entrained_air = (pour_column){&(const double){0.1}, 0};
    columns.station_pressure_kpa = (pour_column){&(const double){100.0}, 0};
    columns.absolute_pressure_kpa = (pour_column){&(const double){10.0}, 0};
    columns.vessel_brim_ml = (pour_column){&(const double){600.0}, 0};
    columns.vessel_mark_ml = (pour_column){&(const double){50.0}, 0};
    results.vessel_volume_ml = (pour_result_column){out[0], 8};
    results.fill_mark_ml = (pour_result_column){out[1], 8};
    results.fills = (pour_result_column){out[2], 8};
    results.fill_level_ml = (pour_result_column){out[3], 8};
    results.fill_swollen_ml = (pour_result_column){out[4], 8};
    CHECK(pour_degas_vessel_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 1055.5555555555554) && canonical(out[0][1]));
    CHECK(same(out[1][0], 250.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 2.0) && canonical(out[2][1]));
    CHECK(same(out[3][0], 250.0) && canonical(out[3][1]));
    CHECK(same(out[4][0], 475.0) && canonical(out[4][1]));
    FAILS(pour_degas_vessel_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_degas_vessel_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_flake_count(void)
{
    pour_flake_count_result result;
    CHECK(pour_flake_count("1 mm square", 50.0, 1.4, 0.7, &result, NULL) == POUR_OK);
    CHECK(same(result.particles, 10000.0));
    CHECK(same(result.area_cm2, 99.99999999999999));
    FAILS(pour_flake_count("1 mm square", 50.0, 1.4, 0.7, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_flake_count(NULL, 50.0, 1.4, 0.7, &result, error), POUR_NULL, "missing-field", "/cut");
    REFUSED(pour_flake_count("\xff", 50.0, 1.4, 0.7, &result, error), POUR_NOT_UTF8, "not-utf8", "/cut");
    REFUSED(pour_flake_count("1 mm square", POUR_OMITTED, 1.4, 0.7, &result, error), POUR_REFUSED, "missing-field", "/thickness_um");
    REFUSED(pour_flake_count("1 mm square", NAN, 1.4, 0.7, &result, error), POUR_NOT_FINITE, "not-finite", "/thickness_um");
    REFUSED(pour_flake_count("1 mm square", 0.0009999990000000001, 1.4, 0.7, &result, error), POUR_REFUSED, "out-of-range", "/thickness_um");
    REFUSED(pour_flake_count("1 mm square", 6350.00635, 1.4, 0.7, &result, error), POUR_REFUSED, "out-of-range", "/thickness_um");
    REFUSED(pour_flake_count("1 mm square", 50.0, POUR_OMITTED, 0.7, &result, error), POUR_REFUSED, "missing-field", "/film_density_g_per_ml");
    REFUSED(pour_flake_count("1 mm square", 50.0, NAN, 0.7, &result, error), POUR_NOT_FINITE, "not-finite", "/film_density_g_per_ml");
    REFUSED(pour_flake_count("1 mm square", 50.0, 0.0009999990000000001, 0.7, &result, error), POUR_REFUSED, "out-of-range", "/film_density_g_per_ml");
    REFUSED(pour_flake_count("1 mm square", 50.0, 25.000025, 0.7, &result, error), POUR_REFUSED, "out-of-range", "/film_density_g_per_ml");
    REFUSED(pour_flake_count("1 mm square", 50.0, 1.4, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/flake_dose_g");
    REFUSED(pour_flake_count("1 mm square", 50.0, 1.4, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/flake_dose_g");
    REFUSED(pour_flake_count("1 mm square", 50.0, 1.4, 9.99999e-13, &result, error), POUR_REFUSED, "out-of-range", "/flake_dose_g");
    REFUSED(pour_flake_count("1 mm square", 50.0, 1.4, 1000001000000000.0, &result, error), POUR_REFUSED, "out-of-range", "/flake_dose_g");
}

static void of_flake_swap(void)
{
    pour_flake_swap_result result;
    pour_flake_swap_input input = POUR_FLAKE_SWAP_INPUT_INIT, bad;
    input.cut = "1 mm square";
    input.thickness_um = 50.0;
    input.film_density_g_per_ml = 1.4;
    input.flake_dose_g = 0.7;
    input.other_cut = "0.5 mm square";
    input.other_thickness_um = 50.0;
    input.other_film_density_g_per_ml = 1.4;
    input.other_as_scooped_g_per_ml = 0.35;
    CHECK(pour_flake_swap(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.mass_g, 0.7));
    CHECK(same(result.scoop_ml, 2.0));
    CHECK(same(result.count_ratio, 4.0));
    CHECK(same(result.area_ratio, 1.0));
    FAILS(pour_flake_swap(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_flake_swap(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.cut = NULL;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NULL, "missing-field", "/cut");
    bad = input;
    bad.cut = "\xff";
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_UTF8, "not-utf8", "/cut");
    bad = input;
    bad.thickness_um = POUR_OMITTED;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "missing-field", "/thickness_um");
    bad = input;
    bad.thickness_um = NAN;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/thickness_um");
    bad = input;
    bad.thickness_um = 0.0009999990000000001;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/thickness_um");
    bad = input;
    bad.thickness_um = 6350.00635;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/thickness_um");
    bad = input;
    bad.film_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "missing-field", "/film_density_g_per_ml");
    bad = input;
    bad.film_density_g_per_ml = NAN;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/film_density_g_per_ml");
    bad = input;
    bad.film_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/film_density_g_per_ml");
    bad = input;
    bad.film_density_g_per_ml = 25.000025;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/film_density_g_per_ml");
    bad = input;
    bad.flake_dose_g = POUR_OMITTED;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "missing-field", "/flake_dose_g");
    bad = input;
    bad.flake_dose_g = NAN;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/flake_dose_g");
    bad = input;
    bad.flake_dose_g = 9.99999e-13;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/flake_dose_g");
    bad = input;
    bad.flake_dose_g = 1000001000000000.0;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/flake_dose_g");
    bad = input;
    bad.other_cut = NULL;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NULL, "missing-field", "/other_cut");
    bad = input;
    bad.other_cut = "\xff";
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_UTF8, "not-utf8", "/other_cut");
    bad = input;
    bad.other_thickness_um = POUR_OMITTED;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "missing-field", "/other_thickness_um");
    bad = input;
    bad.other_thickness_um = NAN;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/other_thickness_um");
    bad = input;
    bad.other_thickness_um = 0.0009999990000000001;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/other_thickness_um");
    bad = input;
    bad.other_thickness_um = 6350.00635;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/other_thickness_um");
    bad = input;
    bad.other_film_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "missing-field", "/other_film_density_g_per_ml");
    bad = input;
    bad.other_film_density_g_per_ml = NAN;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/other_film_density_g_per_ml");
    bad = input;
    bad.other_film_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/other_film_density_g_per_ml");
    bad = input;
    bad.other_film_density_g_per_ml = 25.000025;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/other_film_density_g_per_ml");
    bad = input;
    bad.other_as_scooped_g_per_ml = NAN;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/other_as_scooped_g_per_ml");
    bad = input;
    bad.other_as_scooped_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/other_as_scooped_g_per_ml");
    bad = input;
    bad.other_as_scooped_g_per_ml = 25.000025;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_REFUSED, "out-of-range", "/other_as_scooped_g_per_ml");
    bad = input;
    bad.alike = 3;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/alike");
    bad = input;
    bad.alike = -1;
    REFUSED(pour_flake_swap(&bad, &result, error), POUR_UNKNOWN_NUMBER, "unknown-word", "/alike");
}

static void of_color_difference(void)
{
    double result;
    CHECK(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, 0.0, -82.7485, &result, NULL) == POUR_OK);
    CHECK(same(result, 2.042459680156571));
    FAILS(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, 0.0, -82.7485, NULL, error), POUR_NULL, "null-pointer", "/difference");
    REFUSED(pour_color_difference(POUR_OMITTED, 2.6772, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "missing-field", "/lightness");
    REFUSED(pour_color_difference(NAN, 2.6772, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_NOT_FINITE, "not-finite", "/lightness");
    REFUSED(pour_color_difference(-1e-9, 2.6772, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/lightness");
    REFUSED(pour_color_difference(100.0001, 2.6772, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/lightness");
    REFUSED(pour_color_difference(50.0, POUR_OMITTED, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "missing-field", "/a");
    REFUSED(pour_color_difference(50.0, NAN, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_NOT_FINITE, "not-finite", "/a");
    REFUSED(pour_color_difference(50.0, -200.0002, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/a");
    REFUSED(pour_color_difference(50.0, 200.0002, -79.7751, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/a");
    REFUSED(pour_color_difference(50.0, 2.6772, POUR_OMITTED, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "missing-field", "/b");
    REFUSED(pour_color_difference(50.0, 2.6772, NAN, 50.0, 0.0, -82.7485, &result, error), POUR_NOT_FINITE, "not-finite", "/b");
    REFUSED(pour_color_difference(50.0, 2.6772, -200.0002, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/b");
    REFUSED(pour_color_difference(50.0, 2.6772, 200.0002, 50.0, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/b");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, POUR_OMITTED, 0.0, -82.7485, &result, error), POUR_REFUSED, "missing-field", "/other_lightness");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, NAN, 0.0, -82.7485, &result, error), POUR_NOT_FINITE, "not-finite", "/other_lightness");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, -1e-9, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/other_lightness");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 100.0001, 0.0, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/other_lightness");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, POUR_OMITTED, -82.7485, &result, error), POUR_REFUSED, "missing-field", "/other_a");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, NAN, -82.7485, &result, error), POUR_NOT_FINITE, "not-finite", "/other_a");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, -200.0002, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/other_a");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, 200.0002, -82.7485, &result, error), POUR_REFUSED, "out-of-range", "/other_a");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, 0.0, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/other_b");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, 0.0, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/other_b");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, 0.0, -200.0002, &result, error), POUR_REFUSED, "out-of-range", "/other_b");
    REFUSED(pour_color_difference(50.0, 2.6772, -79.7751, 50.0, 0.0, 200.0002, &result, error), POUR_REFUSED, "out-of-range", "/other_b");
}

static void columns_of_color_difference(void)
{
    pour_color_difference_columns columns = {0};
    pour_color_difference_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 50.0;
    first[1] = NAN;
    columns.lightness = (pour_column){first, 8};
    columns.a = (pour_column){&(const double){2.6772}, 0};
    columns.b = (pour_column){&(const double){-79.7751}, 0};
    columns.other_lightness = (pour_column){&(const double){50.0}, 0};
    columns.other_a = (pour_column){&(const double){0.0}, 0};
    columns.other_b = (pour_column){&(const double){-82.7485}, 0};
    results.difference = (pour_result_column){out[0], 8};
    CHECK(pour_color_difference_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 2.042459680156571) && canonical(out[0][1]));
    FAILS(pour_color_difference_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_color_difference_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_equivalent_time(void)
{
    const pour_readings_row readings[] = {{0.0, 175.0}, {600.0, 175.0}};
    double result;
    CHECK(pour_equivalent_time(readings, 2, 120.0, 175.0, &result, NULL) == POUR_OK);
    CHECK(same(result, 600.0));
    FAILS(pour_equivalent_time(readings, 2, 120.0, 175.0, NULL, error), POUR_NULL, "null-pointer", "/equivalent_time_s");
    REFUSED(pour_equivalent_time(NULL, 0, 120.0, 175.0, &result, error), POUR_NULL, "missing-field", "/readings");
    REFUSED(pour_equivalent_time(NULL, 1, 120.0, 175.0, &result, error), POUR_NULL, "null-pointer", "/readings");
    {
        const pour_readings_row wrong[] = {{NAN, 175.0}, {600.0, 175.0}};
    REFUSED(pour_equivalent_time(wrong, 2, 120.0, 175.0, &result, error), POUR_NOT_FINITE, "not-finite", "/readings/0/0");
    }
    {
        const pour_readings_row wrong[] = {{0.0, NAN}, {600.0, 175.0}};
    REFUSED(pour_equivalent_time(wrong, 2, 120.0, 175.0, &result, error), POUR_NOT_FINITE, "not-finite", "/readings/0/1");
    }
    REFUSED(pour_equivalent_time(readings, 2, POUR_OMITTED, 175.0, &result, error), POUR_REFUSED, "missing-field", "/activation_energy_kj_per_mol");
    REFUSED(pour_equivalent_time(readings, 2, NAN, 175.0, &result, error), POUR_NOT_FINITE, "not-finite", "/activation_energy_kj_per_mol");
    REFUSED(pour_equivalent_time(readings, 2, 9.99999, 175.0, &result, error), POUR_REFUSED, "out-of-range", "/activation_energy_kj_per_mol");
    REFUSED(pour_equivalent_time(readings, 2, 500.0005, 175.0, &result, error), POUR_REFUSED, "out-of-range", "/activation_energy_kj_per_mol");
    REFUSED(pour_equivalent_time(readings, 2, 120.0, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/reference_temperature_celsius");
    REFUSED(pour_equivalent_time(readings, 2, 120.0, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/reference_temperature_celsius");
    REFUSED(pour_equivalent_time(readings, 2, 120.0, -73.000073, &result, error), POUR_REFUSED, "out-of-range", "/reference_temperature_celsius");
    REFUSED(pour_equivalent_time(readings, 2, 120.0, 427.000427, &result, error), POUR_REFUSED, "out-of-range", "/reference_temperature_celsius");
}

static void of_budget_left(void)
{
    pour_budget_left_result result;
    CHECK(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result.budget_s, 1800.0));
    CHECK(same(result.left_s, 1200.0));
    CHECK(same(result.overspent_s, 0.0));
    FAILS(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_budget_left(POUR_OMITTED, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/heat_budget_s");
    REFUSED(pour_budget_left(NAN, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/heat_budget_s");
    REFUSED(pour_budget_left(9.99999e-7, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/heat_budget_s");
    REFUSED(pour_budget_left(1000001000000000.0, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/heat_budget_s");
    REFUSED(pour_budget_left(1800.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/equivalent_time_s");
    REFUSED(pour_budget_left(1800.0, NAN, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/equivalent_time_s");
    REFUSED(pour_budget_left(1800.0, -1e-9, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/equivalent_time_s");
    REFUSED(pour_budget_left(1800.0, 1000001000000000.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/equivalent_time_s");
    REFUSED(pour_budget_left(1800.0, 600.0, NAN, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/budget_with");
    REFUSED(pour_budget_left(1800.0, 600.0, -1e-9, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/budget_with");
    REFUSED(pour_budget_left(1800.0, 600.0, 1.000001, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/budget_with");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, NAN, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/stabilizer_dose");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, -1e-9, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/stabilizer_dose");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, 1.000001, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/stabilizer_dose");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/extra_time_s");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, 9.99999e-7, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/extra_time_s");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, 1000001000000000.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/extra_time_s");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/extra_most");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/extra_most");
    REFUSED(pour_budget_left(1800.0, 600.0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 1.000001, &result, error), POUR_REFUSED, "out-of-range", "/extra_most");
}

static void columns_of_budget_left(void)
{
    pour_budget_left_columns columns = {0};
    pour_budget_left_result_columns results = {0};
    double first[2], out[3][2] = {{0}};
    int32_t statuses[2];
    first[0] = 1800.0;
    first[1] = NAN;
    columns.heat_budget_s = (pour_column){first, 8};
    columns.equivalent_time_s = (pour_column){&(const double){600.0}, 0};
    results.budget_s = (pour_result_column){out[0], 8};
    results.left_s = (pour_result_column){out[1], 8};
    results.overspent_s = (pour_result_column){out[2], 8};
    CHECK(pour_budget_left_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 1800.0) && canonical(out[0][1]));
    CHECK(same(out[1][0], 1200.0) && canonical(out[1][1]));
    CHECK(same(out[2][0], 0.0) && canonical(out[2][1]));
    FAILS(pour_budget_left_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_budget_left_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void of_cavity_of_weights(void)
{
    const double weights_g[] = {10.0, 10.0};
    pour_cavity_of_weights_result result;
    pour_cavity_of_weights_input input = POUR_CAVITY_OF_WEIGHTS_INPUT_INIT, bad;
    input.weights_g = weights_g;
    input.weights_count = 2;
    input.balance_readability_g = 0.01;
    input.cold_density_g_per_ml = 1.0;
    input.feed = 0.5;
    CHECK(pour_cavity_of_weights(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.cavity_volume_ml, 10.0));
    CHECK(same(result.cavity_volume_uncertainty_ml, 0.0028867513459481294));
    CHECK(same(result.mean_g, 10.0));
    CHECK(same(result.deviation_g, 0.0));
    FAILS(pour_cavity_of_weights(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_cavity_of_weights(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.weights_g = NULL;
    bad.weights_count = 0;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NULL, "missing-field", "/weights_g");
    bad = input;
    bad.weights_g = NULL;
    bad.weights_count = 1;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NULL, "null-pointer", "/weights_g");
    {
        const double wrong[] = {NAN, 10.0};
    bad = input;
    bad.weights_g = wrong;
    bad.weights_count = 2;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/weights_g/0");
    }
    bad = input;
    bad.balance_readability_g = POUR_OMITTED;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "missing-field", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = NAN;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = 9.99999e-13;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = 1000001000000000.0;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    bad = input;
    bad.cold_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "missing-field", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = NAN;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = 25.000025;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = NAN;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hot_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = 25.000025;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    bad = input;
    bad.voids = NAN;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    bad = input;
    bad.voids = -1e-9;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.voids = 1.0;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.feed = NAN;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/feed");
    bad = input;
    bad.feed = -1e-9;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.feed = 1.000001;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed");
    bad = input;
    bad.feed_uncertainty = NAN;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/feed_uncertainty");
    bad = input;
    bad.feed_uncertainty = -1e-9;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed_uncertainty");
    bad = input;
    bad.feed_uncertainty = 1.000001;
    REFUSED(pour_cavity_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/feed_uncertainty");
}

static void of_feed_of_weights(void)
{
    const double weights_g[] = {10.5, 10.5};
    pour_feed_of_weights_result result;
    pour_feed_of_weights_input input = POUR_FEED_OF_WEIGHTS_INPUT_INIT, bad;
    input.weights_g = weights_g;
    input.weights_count = 2;
    input.balance_readability_g = 0.01;
    input.cold_density_g_per_ml = 1.1;
    input.cavity_volume_ml = 10.0;
    input.hot_density_g_per_ml = 1.0;
    CHECK(pour_feed_of_weights(&input, &result, NULL) == POUR_OK);
    CHECK(same(result.feed, 0.5));
    CHECK(same(result.feed_uncertainty, 0.002886751345948127));
    CHECK(same(result.mean_g, 10.5));
    CHECK(same(result.deviation_g, 0.0));
    FAILS(pour_feed_of_weights(&input, NULL, error), POUR_NULL, "null-pointer", "/result");
    FAILS(pour_feed_of_weights(NULL, &result, error), POUR_NULL, "null-pointer", "/input");
    bad = input;
    bad.weights_g = NULL;
    bad.weights_count = 0;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NULL, "missing-field", "/weights_g");
    bad = input;
    bad.weights_g = NULL;
    bad.weights_count = 1;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NULL, "null-pointer", "/weights_g");
    {
        const double wrong[] = {NAN, 10.5};
    bad = input;
    bad.weights_g = wrong;
    bad.weights_count = 2;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/weights_g/0");
    }
    bad = input;
    bad.balance_readability_g = POUR_OMITTED;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "missing-field", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = NAN;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = 9.99999e-13;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    bad = input;
    bad.balance_readability_g = 1000001000000000.0;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    bad = input;
    bad.cold_density_g_per_ml = POUR_OMITTED;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "missing-field", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = NAN;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    bad = input;
    bad.cold_density_g_per_ml = 25.000025;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cold_density_g_per_ml");
    bad = input;
    bad.cavity_volume_ml = POUR_OMITTED;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "missing-field", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = NAN;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 9.999990000000002e-10;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.cavity_volume_ml = 1000001000000000.0;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/cavity_volume_ml");
    bad = input;
    bad.hot_density_g_per_ml = NAN;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/hot_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = 0.0009999990000000001;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    bad = input;
    bad.hot_density_g_per_ml = 25.000025;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/hot_density_g_per_ml");
    bad = input;
    bad.voids = NAN;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/voids");
    bad = input;
    bad.voids = -1e-9;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.voids = 1.0;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/voids");
    bad = input;
    bad.volume_uncertainty_ml = NAN;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_NOT_FINITE, "not-finite", "/volume_uncertainty_ml");
    bad = input;
    bad.volume_uncertainty_ml = -1e-9;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/volume_uncertainty_ml");
    bad = input;
    bad.volume_uncertainty_ml = 1000001000000000.0;
    REFUSED(pour_feed_of_weights(&bad, &result, error), POUR_REFUSED, "out-of-range", "/volume_uncertainty_ml");
}

static void of_drop_of_weighings(void)
{
    const pour_drops_weighed_row drops_weighed[] = {{50.0, 2.2}, {50.0, 2.2}};
    pour_drop_of_weighings_result result;
    CHECK(pour_drop_of_weighings(drops_weighed, 2, 0.01, &result, NULL) == POUR_OK);
    CHECK(same(result.drop_mass_g, 0.044000000000000004));
    CHECK(same(result.drop_mass_uncertainty_g, 5.7735026918962585e-5));
    CHECK(same(result.scatter_g, 0.0));
    FAILS(pour_drop_of_weighings(drops_weighed, 2, 0.01, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_drop_of_weighings(NULL, 0, 0.01, &result, error), POUR_NULL, "missing-field", "/drops_weighed");
    REFUSED(pour_drop_of_weighings(NULL, 1, 0.01, &result, error), POUR_NULL, "null-pointer", "/drops_weighed");
    {
        const pour_drops_weighed_row wrong[] = {{NAN, 2.2}, {50.0, 2.2}};
    REFUSED(pour_drop_of_weighings(wrong, 2, 0.01, &result, error), POUR_NOT_FINITE, "not-finite", "/drops_weighed/0/0");
    }
    {
        const pour_drops_weighed_row wrong[] = {{50.0, NAN}, {50.0, 2.2}};
    REFUSED(pour_drop_of_weighings(wrong, 2, 0.01, &result, error), POUR_NOT_FINITE, "not-finite", "/drops_weighed/0/1");
    }
    REFUSED(pour_drop_of_weighings(drops_weighed, 2, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/balance_readability_g");
    REFUSED(pour_drop_of_weighings(drops_weighed, 2, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_readability_g");
    REFUSED(pour_drop_of_weighings(drops_weighed, 2, 9.99999e-13, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    REFUSED(pour_drop_of_weighings(drops_weighed, 2, 1000001000000000.0, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
}

static void of_as_scooped_of_weighings(void)
{
    const pour_scoops_weighed_row scoops_weighed[] = {{10.0, 61.0}, {10.0, 61.0}};
    pour_as_scooped_of_weighings_result result;
    CHECK(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, 0.1, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result.as_scooped_g_per_ml, 1.2199999999999998));
    CHECK(same(result.as_scooped_uncertainty_g_per_ml, 0.0005773502691896258));
    CHECK(same(result.spoonful_g, 6.1));
    FAILS(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, 0.1, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_as_scooped_of_weighings(NULL, 0, 5.0, 0.1, POUR_OMITTED, &result, error), POUR_NULL, "missing-field", "/scoops_weighed");
    REFUSED(pour_as_scooped_of_weighings(NULL, 1, 5.0, 0.1, POUR_OMITTED, &result, error), POUR_NULL, "null-pointer", "/scoops_weighed");
    {
        const pour_scoops_weighed_row wrong[] = {{NAN, 61.0}, {10.0, 61.0}};
    REFUSED(pour_as_scooped_of_weighings(wrong, 2, 5.0, 0.1, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/scoops_weighed/0/0");
    }
    {
        const pour_scoops_weighed_row wrong[] = {{10.0, NAN}, {10.0, 61.0}};
    REFUSED(pour_as_scooped_of_weighings(wrong, 2, 5.0, 0.1, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/scoops_weighed/0/1");
    }
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, POUR_OMITTED, 0.1, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/spoon_volume_ml");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, NAN, 0.1, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/spoon_volume_ml");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 9.999990000000002e-10, 0.1, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/spoon_volume_ml");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 1000001000000000.0, 0.1, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/spoon_volume_ml");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/balance_readability_g");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_readability_g");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, 9.99999e-13, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, 1000001000000000.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, 0.1, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/volume_uncertainty_ml");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, 0.1, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/volume_uncertainty_ml");
    REFUSED(pour_as_scooped_of_weighings(scoops_weighed, 2, 5.0, 0.1, 1000001000000000.0, &result, error), POUR_REFUSED, "out-of-range", "/volume_uncertainty_ml");
}

static void of_residue_of_weighings(void)
{
    const pour_injector_weighed_row injector_weighed_g[] = {{180.0, 184.0}, {180.0, 184.0}};
    pour_residue_of_weighings_result result;
    CHECK(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, 0.1, POUR_OMITTED, &result, NULL) == POUR_OK);
    CHECK(same(result.injector_residue_ml, 4.0000000000000036));
    CHECK(same(result.injector_residue_uncertainty_ml, 0.02886751345948129));
    CHECK(same(result.residue_mass_g, 4.0000000000000036));
    FAILS(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, 0.1, POUR_OMITTED, NULL, error), POUR_NULL, "null-pointer", "/result");
    REFUSED(pour_residue_of_weighings(NULL, 0, 1.0, 0.1, POUR_OMITTED, &result, error), POUR_NULL, "missing-field", "/injector_weighed_g");
    REFUSED(pour_residue_of_weighings(NULL, 1, 1.0, 0.1, POUR_OMITTED, &result, error), POUR_NULL, "null-pointer", "/injector_weighed_g");
    {
        const pour_injector_weighed_row wrong[] = {{NAN, 184.0}, {180.0, 184.0}};
    REFUSED(pour_residue_of_weighings(wrong, 2, 1.0, 0.1, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/injector_weighed_g/0/0");
    }
    {
        const pour_injector_weighed_row wrong[] = {{180.0, NAN}, {180.0, 184.0}};
    REFUSED(pour_residue_of_weighings(wrong, 2, 1.0, 0.1, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/injector_weighed_g/0/1");
    }
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, POUR_OMITTED, 0.1, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/residue_density_g_per_ml");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, NAN, 0.1, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/residue_density_g_per_ml");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 0.0009999990000000001, 0.1, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/residue_density_g_per_ml");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 25.000025, 0.1, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/residue_density_g_per_ml");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, POUR_OMITTED, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/balance_readability_g");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, NAN, POUR_OMITTED, &result, error), POUR_NOT_FINITE, "not-finite", "/balance_readability_g");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, 9.99999e-13, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, 1000001000000000.0, POUR_OMITTED, &result, error), POUR_REFUSED, "out-of-range", "/balance_readability_g");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, 0.1, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/density_uncertainty_g_per_ml");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, 0.1, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/density_uncertainty_g_per_ml");
    REFUSED(pour_residue_of_weighings(injector_weighed_g, 2, 1.0, 0.1, 25.000025, &result, error), POUR_REFUSED, "out-of-range", "/density_uncertainty_g_per_ml");
}

static void of_price(void)
{
    uint32_t result;
    CHECK(pour_price(750, 0.4, &result, NULL) == POUR_OK);
    CHECK(result == 1250u);
    FAILS(pour_price(750, 0.4, NULL, error), POUR_NULL, "null-pointer", "/price");
    REFUSED(pour_price(POUR_OMITTED_COUNT, 0.4, &result, error), POUR_REFUSED, "missing-field", "/cost");
    REFUSED(pour_price(1000000001, 0.4, &result, error), POUR_REFUSED, "out-of-range", "/cost");
    REFUSED(pour_price(750, POUR_OMITTED, &result, error), POUR_REFUSED, "missing-field", "/cost_margin");
    REFUSED(pour_price(750, NAN, &result, error), POUR_NOT_FINITE, "not-finite", "/cost_margin");
    REFUSED(pour_price(750, -1e-9, &result, error), POUR_REFUSED, "out-of-range", "/cost_margin");
    REFUSED(pour_price(750, 1.0, &result, error), POUR_REFUSED, "out-of-range", "/cost_margin");
}

static void columns_of_price(void)
{
    pour_price_columns columns = {0};
    pour_price_result_columns results = {0};
    double first[2], out[1][2] = {{0}};
    int32_t statuses[2];
    first[0] = 750;
    first[1] = NAN;
    columns.cost = (pour_column){first, 8};
    columns.cost_margin = (pour_column){&(const double){0.4}, 0};
    results.price = (pour_result_column){out[0], 8};
    CHECK(pour_price_n(2, &columns, &results, statuses, NULL) == POUR_OK);
    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);
    CHECK(same(out[0][0], 1250.0) && canonical(out[0][1]));
    FAILS(pour_price_n(2, NULL, &results, statuses, error), POUR_NULL, "null-pointer", "/columns");
    FAILS(pour_price_n(2, &columns, NULL, statuses, error), POUR_NULL, "null-pointer", "/results");
}

static void calculations(void)
{
    of_convert();
    of_convert_number();
    of_dose_mass();
    of_mass_of_volume();
    columns_of_mass_of_volume();
    of_volume_of_mass();
    columns_of_volume_of_mass();
    of_density_of_parts();
    of_mix_share();
    of_salt_convert();
    columns_of_salt_convert();
    of_salt_mass();
    columns_of_salt_mass();
    of_salt_reach();
    columns_of_salt_reach();
    of_salt_for_density();
    columns_of_salt_for_density();
    of_shot_fill();
    columns_of_shot_fill();
    of_piece_mass();
    columns_of_piece_mass();
    of_shots();
    columns_of_shots();
    of_injector_loads();
    columns_of_injector_loads();
    of_batch_need();
    columns_of_batch_need();
    of_base_to_mark();
    columns_of_base_to_mark();
    of_least_pot();
    of_reject_rate();
    columns_of_reject_rate();
    of_bench_measure();
    of_sink_rate();
    columns_of_sink_rate();
    of_density_for_sink_rate();
    columns_of_density_for_sink_rate();
    of_hardness();
    of_softener_ratio();
    of_salted_softener();
    of_water_density();
    columns_of_water_density();
    of_cavity_of_water();
    columns_of_cavity_of_water();
    of_standard_pressure();
    columns_of_standard_pressure();
    of_station_pressure();
    columns_of_station_pressure();
    of_swollen_volume();
    columns_of_swollen_volume();
    of_entrained_air();
    columns_of_entrained_air();
    of_degas_vessel();
    columns_of_degas_vessel();
    of_flake_count();
    of_flake_swap();
    of_color_difference();
    columns_of_color_difference();
    of_equivalent_time();
    of_budget_left();
    columns_of_budget_left();
    of_cavity_of_weights();
    of_feed_of_weights();
    of_drop_of_weighings();
    of_as_scooped_of_weighings();
    of_residue_of_weighings();
    of_price();
    columns_of_price();
}

#endif
