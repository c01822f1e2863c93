/* The calculations of the table, and the call of the C ABI that each is. Made by
   `cargo run -p pourwright-generate`; do not edit. */

#include "calculation.h"

#include <string.h>

static const char *const words_of_measures[] = {"us-customary", "us-label", "metric", "imperial", NULL};

static const char *const words_of_kind[] = {"plastisol", "softener", "hardener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent", "other", NULL};

static const char *const words_of_form[] = {"as-scooped", "per-volume", "of-base", "of-finished", "finished-density", "piece-mass", "sink-density", NULL};

static const char *const words_of_shape[] = {"stick", "ball", NULL};

static const char *const words_of_tool[] = {"balance", "cup", "spoons", "drops", NULL};

static const char *const words_of_motion[] = {"straight", "may-swing", "swings", NULL};

static const char *const words_of_scale[] = {"shore-00", "shore-a", NULL};

static const char *const words_of_alike[] = {"count", "area", NULL};

static const char *const words_of_section_shape[] = {"rod", "plate", "ball", NULL};

static const char *const words_of_piece_point[] = {"center", "mean", NULL};

static const struct parameter parameters_of_convert[] = {
    {"amount", TEXT, 0, NULL, NULL, NULL, "0 or above; a temperature above absolute zero", NULL, NULL, 0,
     "An amount as a person writes it: 1 1/4 cup, 40 drops, 330 °F."},
    {"to", TEXT, 0, NULL, NULL, NULL, "a unit of the same dimension", NULL, NULL, 0,
     "The unit of the answer, by trade symbol or UCUM code."},
    {"measures", WORD, 1, NULL, NULL, "us-customary", "us-customary, us-label, metric or imperial", words_of_measures, NULL, 0,
     "The system of measures: what a cup, a spoon and a fluid ounce hold."},
};

static const struct result results_of_convert[] = {
    {"value", NUMBER, 0, NULL, 0, NULL,
     "The number, in the unit of to."},
};

static int32_t call_convert(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_convert(given[0].text, given[1].text, given[2].word, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_convert_number[] = {
    {"value", NUMBER, 0, NULL, NULL, NULL, "0 or above; a temperature above absolute zero", NULL, NULL, 0,
     "The number to convert."},
    {"unit", TEXT, 0, NULL, NULL, NULL, "a unit", NULL, NULL, 0,
     "The unit of the number, by trade symbol or UCUM code."},
    {"to", TEXT, 0, NULL, NULL, NULL, "a unit of the same dimension", NULL, NULL, 0,
     "The unit of the answer, by trade symbol or UCUM code."},
    {"measures", WORD, 1, NULL, NULL, "us-customary", "us-customary, us-label, metric or imperial", words_of_measures, NULL, 0,
     "The system of measures: what a cup, a spoon and a fluid ounce hold."},
};

static const struct result results_of_convert_number[] = {
    {"result_value", NUMBER, 0, NULL, 0, NULL,
     "The number, in the unit of to."},
};

static int32_t call_convert_number(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_convert_number(given[0].number, given[1].text, given[2].text, given[3].word, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_dose_mass[] = {
    {"amount", TEXT, 0, NULL, NULL, NULL, "0 or above; a temperature above absolute zero", NULL, NULL, 0,
     "An amount as a person writes it: 1 1/4 cup, 40 drops, 330 °F."},
    {"kind", WORD, 0, NULL, NULL, NULL, "a kind of material", words_of_kind, NULL, 0,
     "What the material is for; powders (pearl, flake, salt) are measured as scooped."},
    {"material_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "True density of the material; of a plastisol that of the liquid."},
    {"as_scooped_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Bulk density of a powder, level in the spoon and not tapped."},
    {"drop_mass_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of one drop."},
    {"measures", WORD, 1, NULL, NULL, "us-customary", "us-customary, us-label, metric or imperial", words_of_measures, NULL, 0,
     "The system of measures: what a cup, a spoon and a fluid ounce hold."},
};

static const struct result results_of_dose_mass[] = {
    {"mass_g", NUMBER, 0, "g", 0, NULL,
     "The mass. Unit: g."},
};

static int32_t call_dose_mass(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_dose_mass(given[0].text, given[1].word, given[2].number, given[3].number, given[4].number, given[5].word, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_mass_of_volume[] = {
    {"volume_ml", NUMBER, 0, "mL", "mL", NULL, "0 to 1e15", NULL, NULL, 0,
     "Volume."},
    {"density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density, without voids."},
};

static const struct result results_of_mass_of_volume[] = {
    {"mass_g", NUMBER, 0, "g", 0, NULL,
     "The mass. Unit: g."},
};

static int32_t call_mass_of_volume(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_mass_of_volume(given[0].number, given[1].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_volume_of_mass[] = {
    {"mass_g", NUMBER, 0, "g", "g", NULL, "0 to 1e15", NULL, NULL, 0,
     "Mass."},
    {"density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density, without voids."},
};

static const struct result results_of_volume_of_mass[] = {
    {"volume_ml", NUMBER, 0, "mL", 0, NULL,
     "The volume. Unit: mL."},
};

static int32_t call_volume_of_mass(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_volume_of_mass(given[0].number, given[1].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct column columns_of_density_of_parts_parts[] = {{"part_mass_g", "g"}, {"part_density_g_per_ml", "g/mL"}};

static const struct parameter parameters_of_density_of_parts[] = {
    {"parts", LIST, 0, NULL, NULL, NULL, "1 to 1000", NULL, columns_of_density_of_parts_parts, 2,
     "The parts of the mix: of each its mass and its true density. At least one has a mass above 0."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
};

static const struct result results_of_density_of_parts[] = {
    {"density_g_per_ml", NUMBER, 0, "g/mL", 0, NULL,
     "Density of the mix, voids counted. Unit: g/mL."},
};

static int32_t call_density_of_parts(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_density_of_parts((const pour_parts_row *)(const void *)given[0].list, given[0].rows, given[1].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct column columns_of_mix_share_parts[] = {{"part_mass_g", "g"}, {"part_density_g_per_ml", "g/mL"}};

static const struct parameter parameters_of_mix_share[] = {
    {"parts", LIST, 0, NULL, NULL, NULL, "1 to 1000", NULL, columns_of_mix_share_parts, 2,
     "The parts of the mix: of each its mass and its true density. At least one has a mass above 0."},
    {"part", COUNT, 0, NULL, "1", NULL, "1 to 1000", NULL, NULL, 0,
     "Which part of the mix, counted from 1."},
};

static const struct result results_of_mix_share[] = {
    {"mass_share", NUMBER, 0, "1", 0, NULL,
     "Share of its mass. Unit: 1."},
    {"volume_share", NUMBER, 0, "1", 0, NULL,
     "Share of its true volume. Unit: 1."},
};

static int32_t call_mix_share(const struct argument *given, struct value *found, pour_error **error)
{
    pour_mix_share_result result;
    int32_t status;

    status = pour_mix_share((const pour_parts_row *)(const void *)given[0].list, given[0].rows, given[1].count, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.mass_share;
    found[1].number = result.volume_share;
    return POUR_OK;
}

static const struct parameter parameters_of_salt_convert[] = {
    {"base_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the base, cold and liquid, as a cup measures it."},
    {"base_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the base, cold and liquid, as a cup measures it."},
    {"salt_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "True density of the salt: 2.165 g/mL for sodium chloride."},
    {"form", WORD, 0, NULL, NULL, NULL, "one of the eight ways to state a loading", words_of_form, NULL, 0,
     "The way in which the salt loading is stated."},
    {"loading", NUMBER, 0, NULL, NULL, NULL, "in the unit of its form", NULL, NULL, 0,
     "The salt loading, as its form states it."},
    {"to_form", WORD, 0, NULL, NULL, NULL, "one of the eight ways to state a loading", words_of_form, NULL, 0,
     "The way in which the loading is to be stated."},
    {"mix_mass_g", NUMBER, 1, "g", "g", "the mass of its base", "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix before salt; at least that of its base. Give its volume too."},
    {"mix_volume_ml", NUMBER, 1, "mL", "mL", "as base_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at 20 °C. Give its mass too."},
    {"hot_volume_ml", NUMBER, 1, "mL", "mL", "as mix_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at shot temperature; at least the cold one."},
    {"shot_temperature_celsius", NUMBER, 1, "°C", "°C", "20", "20 to 427", NULL, NULL, 0,
     "Temperature at which the mix is shot."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"salt_as_scooped_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs it."},
    {"salt_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of the salt."},
    {"softener_per_salt", NUMBER, 1, NULL, "1", "0", "0 to 10", NULL, NULL, 0,
     "Softener that goes in with the salt, mass per mass of salt."},
    {"softener_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the softener that goes in with the salt; needed with it."},
    {"softener_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of that softener."},
    {"most_solids", NUMBER, 1, NULL, "1", "0.3", "above 0 to below 1", NULL, NULL, 0,
     "Maximum share of salt in the finished mix, by true volume."},
    {"cavity_volume_ml", NUMBER, 1, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of one cavity."},
    {"feed", NUMBER, 1, NULL, "1", "0.5", "0 to 1", NULL, NULL, 0,
     "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full)."},
    {"hook_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass of hook and weight on a piece; give its volume too."},
    {"hook_volume_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that hook and weight displace; give their mass too."},
};

static const struct result results_of_salt_convert[] = {
    {"result_loading", NUMBER, 0, NULL, 0, NULL,
     "The loading as to_form states it, in the unit of that form."},
    {"loading_min", NUMBER, 0, NULL, 0, NULL,
     "Its lower bound where the feed matters and is not known; else the loading."},
    {"loading_max", NUMBER, 0, NULL, 0, NULL,
     "Its upper bound where the feed matters and is not known; else the loading."},
};

static int32_t call_salt_convert(const struct argument *given, struct value *found, pour_error **error)
{
    pour_salt_convert_input input = POUR_SALT_CONVERT_INPUT_INIT;
    pour_salt_convert_result result;
    int32_t status;

    input.base_volume_ml = given[0].number;
    input.base_density_g_per_ml = given[1].number;
    input.salt_density_g_per_ml = given[2].number;
    input.form = given[3].word;
    input.loading = given[4].number;
    input.to_form = given[5].word;
    input.mix_mass_g = given[6].number;
    input.mix_volume_ml = given[7].number;
    input.hot_volume_ml = given[8].number;
    input.shot_temperature_celsius = given[9].number;
    input.voids = given[10].number;
    input.salt_as_scooped_g_per_ml = given[11].number;
    input.salt_expansion_per_kelvin = given[12].number;
    input.softener_per_salt = given[13].number;
    input.softener_density_g_per_ml = given[14].number;
    input.softener_expansion_per_kelvin = given[15].number;
    input.most_solids = given[16].number;
    input.cavity_volume_ml = given[17].number;
    input.feed = given[18].number;
    input.hook_mass_g = given[19].number;
    input.hook_volume_ml = given[20].number;
    status = pour_salt_convert(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.loading;
    found[1].number = result.loading_min;
    found[2].number = result.loading_max;
    return POUR_OK;
}

static const struct parameter parameters_of_salt_mass[] = {
    {"base_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the base, cold and liquid, as a cup measures it."},
    {"base_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the base, cold and liquid, as a cup measures it."},
    {"salt_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "True density of the salt: 2.165 g/mL for sodium chloride."},
    {"form", WORD, 0, NULL, NULL, NULL, "one of the eight ways to state a loading", words_of_form, NULL, 0,
     "The way in which the salt loading is stated."},
    {"loading", NUMBER, 0, NULL, NULL, NULL, "in the unit of its form", NULL, NULL, 0,
     "The salt loading, as its form states it."},
    {"mix_mass_g", NUMBER, 1, "g", "g", "the mass of its base", "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix before salt; at least that of its base. Give its volume too."},
    {"mix_volume_ml", NUMBER, 1, "mL", "mL", "as base_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at 20 °C. Give its mass too."},
    {"hot_volume_ml", NUMBER, 1, "mL", "mL", "as mix_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at shot temperature; at least the cold one."},
    {"shot_temperature_celsius", NUMBER, 1, "°C", "°C", "20", "20 to 427", NULL, NULL, 0,
     "Temperature at which the mix is shot."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"salt_as_scooped_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs it."},
    {"salt_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of the salt."},
    {"softener_per_salt", NUMBER, 1, NULL, "1", "0", "0 to 10", NULL, NULL, 0,
     "Softener that goes in with the salt, mass per mass of salt."},
    {"softener_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the softener that goes in with the salt; needed with it."},
    {"softener_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of that softener."},
    {"most_solids", NUMBER, 1, NULL, "1", "0.3", "above 0 to below 1", NULL, NULL, 0,
     "Maximum share of salt in the finished mix, by true volume."},
    {"cavity_volume_ml", NUMBER, 1, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of one cavity."},
    {"feed", NUMBER, 1, NULL, "1", "0.5", "0 to 1", NULL, NULL, 0,
     "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full)."},
    {"hook_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass of hook and weight on a piece; give its volume too."},
    {"hook_volume_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that hook and weight displace; give their mass too."},
};

static const struct result results_of_salt_mass[] = {
    {"salt_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of salt. Unit: g."},
    {"salt_mass_min_g", NUMBER, 0, "g", 0, NULL,
     "Its lower bound where the feed matters and is not known; else the mass. Unit: g."},
    {"salt_mass_max_g", NUMBER, 0, "g", 0, NULL,
     "Its upper bound where the feed matters and is not known; else the mass. Unit: g."},
    {"softener_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of softener that goes in with it. Unit: g."},
};

static int32_t call_salt_mass(const struct argument *given, struct value *found, pour_error **error)
{
    pour_salt_mass_input input = POUR_SALT_MASS_INPUT_INIT;
    pour_salt_mass_result result;
    int32_t status;

    input.base_volume_ml = given[0].number;
    input.base_density_g_per_ml = given[1].number;
    input.salt_density_g_per_ml = given[2].number;
    input.form = given[3].word;
    input.loading = given[4].number;
    input.mix_mass_g = given[5].number;
    input.mix_volume_ml = given[6].number;
    input.hot_volume_ml = given[7].number;
    input.shot_temperature_celsius = given[8].number;
    input.voids = given[9].number;
    input.salt_as_scooped_g_per_ml = given[10].number;
    input.salt_expansion_per_kelvin = given[11].number;
    input.softener_per_salt = given[12].number;
    input.softener_density_g_per_ml = given[13].number;
    input.softener_expansion_per_kelvin = given[14].number;
    input.most_solids = given[15].number;
    input.cavity_volume_ml = given[16].number;
    input.feed = given[17].number;
    input.hook_mass_g = given[18].number;
    input.hook_volume_ml = given[19].number;
    status = pour_salt_mass(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.salt_mass_g;
    found[1].number = result.salt_mass_min_g;
    found[2].number = result.salt_mass_max_g;
    found[3].number = result.softener_mass_g;
    return POUR_OK;
}

static const struct parameter parameters_of_salt_reach[] = {
    {"base_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the base, cold and liquid, as a cup measures it."},
    {"base_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the base, cold and liquid, as a cup measures it."},
    {"salt_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "True density of the salt: 2.165 g/mL for sodium chloride."},
    {"form", WORD, 0, NULL, NULL, NULL, "one of the eight ways to state a loading", words_of_form, NULL, 0,
     "The way in which the salt loading is stated."},
    {"mix_mass_g", NUMBER, 1, "g", "g", "the mass of its base", "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix before salt; at least that of its base. Give its volume too."},
    {"mix_volume_ml", NUMBER, 1, "mL", "mL", "as base_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at 20 °C. Give its mass too."},
    {"hot_volume_ml", NUMBER, 1, "mL", "mL", "as mix_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at shot temperature; at least the cold one."},
    {"shot_temperature_celsius", NUMBER, 1, "°C", "°C", "20", "20 to 427", NULL, NULL, 0,
     "Temperature at which the mix is shot."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"salt_as_scooped_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs it."},
    {"salt_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of the salt."},
    {"softener_per_salt", NUMBER, 1, NULL, "1", "0", "0 to 10", NULL, NULL, 0,
     "Softener that goes in with the salt, mass per mass of salt."},
    {"softener_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the softener that goes in with the salt; needed with it."},
    {"softener_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of that softener."},
    {"most_solids", NUMBER, 1, NULL, "1", "0.3", "above 0 to below 1", NULL, NULL, 0,
     "Maximum share of salt in the finished mix, by true volume."},
    {"cavity_volume_ml", NUMBER, 1, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of one cavity."},
    {"feed", NUMBER, 1, NULL, "1", "0.5", "0 to 1", NULL, NULL, 0,
     "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full)."},
    {"hook_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass of hook and weight on a piece; give its volume too."},
    {"hook_volume_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that hook and weight displace; give their mass too."},
};

static const struct result results_of_salt_reach[] = {
    {"loading_min", NUMBER, 0, NULL, 0, NULL,
     "The loading without salt, in the unit of the form."},
    {"loading_max", NUMBER, 0, NULL, 0, NULL,
     "The maximum loading, in the unit of the form."},
};

static int32_t call_salt_reach(const struct argument *given, struct value *found, pour_error **error)
{
    pour_salt_reach_input input = POUR_SALT_REACH_INPUT_INIT;
    pour_salt_reach_result result;
    int32_t status;

    input.base_volume_ml = given[0].number;
    input.base_density_g_per_ml = given[1].number;
    input.salt_density_g_per_ml = given[2].number;
    input.form = given[3].word;
    input.mix_mass_g = given[4].number;
    input.mix_volume_ml = given[5].number;
    input.hot_volume_ml = given[6].number;
    input.shot_temperature_celsius = given[7].number;
    input.voids = given[8].number;
    input.salt_as_scooped_g_per_ml = given[9].number;
    input.salt_expansion_per_kelvin = given[10].number;
    input.softener_per_salt = given[11].number;
    input.softener_density_g_per_ml = given[12].number;
    input.softener_expansion_per_kelvin = given[13].number;
    input.most_solids = given[14].number;
    input.cavity_volume_ml = given[15].number;
    input.feed = given[16].number;
    input.hook_mass_g = given[17].number;
    input.hook_volume_ml = given[18].number;
    status = pour_salt_reach(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.loading_min;
    found[1].number = result.loading_max;
    return POUR_OK;
}

static const struct parameter parameters_of_salt_for_density[] = {
    {"base_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the base, cold and liquid, as a cup measures it."},
    {"base_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the base, cold and liquid, as a cup measures it."},
    {"salt_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "True density of the salt: 2.165 g/mL for sodium chloride."},
    {"finished_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the finished plastic at 20 °C, voids counted."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"most_solids", NUMBER, 1, NULL, "1", "0.3", "above 0 to below 1", NULL, NULL, 0,
     "Maximum share of salt in the finished mix, by true volume."},
};

static const struct result results_of_salt_for_density[] = {
    {"salt_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of salt. Unit: g."},
};

static int32_t call_salt_for_density(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_salt_for_density(given[0].number, given[1].number, given[2].number, given[3].number, given[4].number, given[5].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_salt_for_sink_rate[] = {
    {"base_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the base, cold and liquid, as a cup measures it."},
    {"base_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the base, cold and liquid, as a cup measures it."},
    {"salt_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "True density of the salt: 2.165 g/mL for sodium chloride."},
    {"sink_rate_cm_per_s", NUMBER, 0, "cm/s", "cm/s", NULL, "1e-9 to 1e6", NULL, NULL, 0,
     "Sink rate: the final speed of the piece."},
    {"cavity_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of one cavity."},
    {"diameter_mm", NUMBER, 0, "mm", "mm", NULL, "1e-6 to 1e6", NULL, NULL, 0,
     "Mean diameter of the piece."},
    {"water_temperature_celsius", NUMBER, 0, "°C", "°C", NULL, "0 to 40", NULL, NULL, 0,
     "Temperature of the water."},
    {"length_mm", NUMBER, 1, "mm", "mm", NULL, "1e-6 to 1e6", NULL, NULL, 0,
     "Length of a stick, at least 2.01 diameters; not used for a ball."},
    {"shape", WORD, 1, NULL, NULL, "a stick where a length is given, else a ball", "stick or ball", words_of_shape, NULL, 0,
     "Shape of the piece as it sinks: a stick sinks sideways."},
    {"mix_mass_g", NUMBER, 1, "g", "g", "the mass of its base", "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix before salt; at least that of its base. Give its volume too."},
    {"mix_volume_ml", NUMBER, 1, "mL", "mL", "as base_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at 20 °C. Give its mass too."},
    {"hot_volume_ml", NUMBER, 1, "mL", "mL", "as mix_volume_ml", "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the mix before salt at shot temperature; at least the cold one."},
    {"shot_temperature_celsius", NUMBER, 1, "°C", "°C", "20", "20 to 427", NULL, NULL, 0,
     "Temperature at which the mix is shot."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"salt_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of the salt."},
    {"softener_per_salt", NUMBER, 1, NULL, "1", "0", "0 to 10", NULL, NULL, 0,
     "Softener that goes in with the salt, mass per mass of salt."},
    {"softener_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the softener that goes in with the salt; needed with it."},
    {"softener_expansion_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "0 to 0.01", NULL, NULL, 0,
     "Volumetric thermal expansion of that softener."},
    {"most_solids", NUMBER, 1, NULL, "1", "0.3", "above 0 to below 1", NULL, NULL, 0,
     "Maximum share of salt in the finished mix, by true volume."},
    {"feed", NUMBER, 1, NULL, "1", "0.5", "0 to 1", NULL, NULL, 0,
     "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full)."},
    {"hook_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass of hook and weight on a piece; give its volume too."},
    {"hook_volume_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that hook and weight displace; give their mass too."},
    {"salinity_practical", NUMBER, 1, NULL, "1", NULL, "0 to 41.8", NULL, NULL, 0,
     "Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh water without either."},
    {"salinity_absolute", NUMBER, 1, NULL, "1", NULL, "0 to 0.042", NULL, NULL, 0,
     "Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical one."},
    {"drop_depth_m", NUMBER, 1, "m", "m", NULL, "1e-9 to 12000", NULL, NULL, 0,
     "Depth of a timed drop, the piece let go just below the surface."},
    {"drop_time_s", NUMBER, 1, "s", "s", NULL, "1e-6 to 1e9", NULL, NULL, 0,
     "Time of the timed drop."},
    {"drop_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the piece that was dropped."},
};

static const struct result results_of_salt_for_sink_rate[] = {
    {"salt_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of salt. Unit: g."},
    {"softener_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of softener that goes in with it. Unit: g."},
    {"finished_density_g_per_ml", NUMBER, 0, "g/mL", 0, NULL,
     "Density of the finished plastic at 20 °C, voids counted. Unit: g/mL."},
};

static int32_t call_salt_for_sink_rate(const struct argument *given, struct value *found, pour_error **error)
{
    pour_salt_for_sink_rate_input input = POUR_SALT_FOR_SINK_RATE_INPUT_INIT;
    pour_salt_for_sink_rate_result result;
    int32_t status;

    input.base_volume_ml = given[0].number;
    input.base_density_g_per_ml = given[1].number;
    input.salt_density_g_per_ml = given[2].number;
    input.sink_rate_cm_per_s = given[3].number;
    input.cavity_volume_ml = given[4].number;
    input.diameter_mm = given[5].number;
    input.water_temperature_celsius = given[6].number;
    input.length_mm = given[7].number;
    input.shape = given[8].word;
    input.mix_mass_g = given[9].number;
    input.mix_volume_ml = given[10].number;
    input.hot_volume_ml = given[11].number;
    input.shot_temperature_celsius = given[12].number;
    input.voids = given[13].number;
    input.salt_expansion_per_kelvin = given[14].number;
    input.softener_per_salt = given[15].number;
    input.softener_density_g_per_ml = given[16].number;
    input.softener_expansion_per_kelvin = given[17].number;
    input.most_solids = given[18].number;
    input.feed = given[19].number;
    input.hook_mass_g = given[20].number;
    input.hook_volume_ml = given[21].number;
    input.salinity_practical = given[22].number;
    input.salinity_absolute = given[23].number;
    input.drop_depth_m = given[24].number;
    input.drop_time_s = given[25].number;
    input.drop_density_g_per_ml = given[26].number;
    status = pour_salt_for_sink_rate(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.salt_mass_g;
    found[1].number = result.softener_mass_g;
    found[2].number = result.finished_density_g_per_ml;
    return POUR_OK;
}

static const struct parameter parameters_of_shot_fill[] = {
    {"cavities", COUNT, 0, NULL, "1", NULL, "1 to 1000000", NULL, NULL, 0,
     "Number of cavities that a shot fills."},
    {"cavity_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of one cavity."},
    {"cold_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the finished plastic at 20 °C, without voids."},
    {"hot_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", "as cold_density_g_per_ml", "0.001 to 25", NULL, NULL, 0,
     "Melt density at shot temperature, without voids; at most the cold one."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"feed", NUMBER, 1, NULL, "1", "0.5", "0 to 1", NULL, NULL, 0,
     "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full)."},
    {"sprue_volume_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume of the sprue."},
    {"topped_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass that topping off and holding add."},
    {"layer_share", NUMBER, 1, NULL, "1", "1", "above 0 to 1", NULL, NULL, 0,
     "Share of the cavity that this layer of a laminated piece fills."},
};

static const struct result results_of_shot_fill[] = {
    {"shot_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of one shot, topping included. Unit: g."},
    {"pieces_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of all its pieces. Unit: g."},
    {"sprue_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass that is left as sprue once the pieces have been fed. Unit: g."},
    {"missing_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g."},
    {"piece_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of one piece, or of the layer in it. Unit: g."},
    {"piece_mass_min_g", NUMBER, 0, "g", 0, NULL,
     "The same without feed where the feed is not known; else the mass of the piece. Unit: g."},
    {"piece_mass_max_g", NUMBER, 0, "g", 0, NULL,
     "The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece. Unit: g."},
    {"fed", NUMBER, 0, "1", 0, NULL,
     "Share of the contraction that was fed. Unit: 1."},
};

static int32_t call_shot_fill(const struct argument *given, struct value *found, pour_error **error)
{
    pour_shot_fill_input input = POUR_SHOT_FILL_INPUT_INIT;
    pour_shot_fill_result result;
    int32_t status;

    input.cavities = given[0].count;
    input.cavity_volume_ml = given[1].number;
    input.cold_density_g_per_ml = given[2].number;
    input.hot_density_g_per_ml = given[3].number;
    input.voids = given[4].number;
    input.feed = given[5].number;
    input.sprue_volume_ml = given[6].number;
    input.topped_mass_g = given[7].number;
    input.layer_share = given[8].number;
    status = pour_shot_fill(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.shot_mass_g;
    found[1].number = result.pieces_mass_g;
    found[2].number = result.sprue_mass_g;
    found[3].number = result.missing_mass_g;
    found[4].number = result.piece_mass_g;
    found[5].number = result.piece_mass_min_g;
    found[6].number = result.piece_mass_max_g;
    found[7].number = result.fed;
    return POUR_OK;
}

static const struct parameter parameters_of_piece_mass[] = {
    {"cavity_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of one cavity."},
    {"cold_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the finished plastic at 20 °C, without voids."},
    {"hot_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", "as cold_density_g_per_ml", "0.001 to 25", NULL, NULL, 0,
     "Melt density at shot temperature, without voids; at most the cold one."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"feed", NUMBER, 1, NULL, "1", "0.5", "0 to 1", NULL, NULL, 0,
     "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full)."},
};

static const struct result results_of_piece_mass[] = {
    {"piece_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of the piece. Unit: g."},
    {"piece_mass_min_g", NUMBER, 0, "g", 0, NULL,
     "The same without feed where the feed is not known; else the mass of the piece. Unit: g."},
    {"piece_mass_max_g", NUMBER, 0, "g", 0, NULL,
     "The same fed in full where the feed is not known; else the mass of the piece. Unit: g."},
};

static int32_t call_piece_mass(const struct argument *given, struct value *found, pour_error **error)
{
    pour_piece_mass_result result;
    int32_t status;

    status = pour_piece_mass(given[0].number, given[1].number, given[2].number, given[3].number, given[4].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.piece_mass_g;
    found[1].number = result.piece_mass_min_g;
    found[2].number = result.piece_mass_max_g;
    return POUR_OK;
}

static const struct parameter parameters_of_shots[] = {
    {"pieces", COUNT, 0, NULL, "1", NULL, "1 to 1000000", NULL, NULL, 0,
     "Number of good pieces needed."},
    {"cavities", COUNT, 0, NULL, "1", NULL, "1 to 1000000", NULL, NULL, 0,
     "Number of cavities that a shot fills."},
    {"rejects", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Share of pieces that are not fit to sell."},
    {"confidence", NUMBER, 1, NULL, "1", "0.9", "above 0 to 0.999999999", NULL, NULL, 0,
     "Confidence that enough good pieces come out."},
};

static const struct result results_of_shots[] = {
    {"shots", COUNT, 0, "1", 0, NULL,
     "Number of shots."},
    {"cast", COUNT, 0, "1", 0, NULL,
     "Number of pieces that they cast."},
};

static int32_t call_shots(const struct argument *given, struct value *found, pour_error **error)
{
    pour_shots_result result;
    int32_t status;

    status = pour_shots(given[0].count, given[1].count, given[2].number, given[3].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].count = result.shots;
    found[1].count = result.cast;
    return POUR_OK;
}

static const struct parameter parameters_of_injector_loads[] = {
    {"shots", COUNT, 0, NULL, "1", NULL, "1 to 100000000", NULL, NULL, 0,
     "Number of shots."},
    {"shot_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of one shot, sprue included."},
    {"shot_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of what the injector draws: hot, voids counted."},
    {"injector_capacity_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume that the injector takes up at most."},
    {"injector_residue_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that stays in the injector each time it is emptied; below its capacity."},
};

static const struct result results_of_injector_loads[] = {
    {"loads", COUNT, 0, "1", 0, NULL,
     "Number of injector loads."},
    {"shots_per_load", COUNT, 0, "1", 0, NULL,
     "Whole shots in one load."},
    {"shots_in_last", COUNT, 0, "1", 0, NULL,
     "Shots from the last load."},
};

static int32_t call_injector_loads(const struct argument *given, struct value *found, pour_error **error)
{
    pour_injector_loads_result result;
    int32_t status;

    status = pour_injector_loads(given[0].count, given[1].number, given[2].number, given[3].number, given[4].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].count = result.loads;
    found[1].count = result.shots_per_load;
    found[2].count = result.shots_in_last;
    return POUR_OK;
}

static const struct parameter parameters_of_batch_need[] = {
    {"pieces", COUNT, 0, NULL, "1", NULL, "1 to 1000000", NULL, NULL, 0,
     "Number of good pieces needed."},
    {"cavities", COUNT, 0, NULL, "1", NULL, "1 to 1000000", NULL, NULL, 0,
     "Number of cavities that a shot fills."},
    {"shot_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of one shot, sprue included."},
    {"shot_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of what the injector draws: hot, voids counted."},
    {"injector_capacity_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume that the injector takes up at most."},
    {"injector_residue_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that stays in the injector each time it is emptied; below its capacity."},
    {"cleanings", COUNT, 1, NULL, "1", "1", "1 to 1000000", NULL, NULL, 0,
     "Number of times the injector is cleaned or goes cold, the last time included."},
    {"sprue_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass of a shot that stays as sprue; at most the mass of the shot."},
    {"returned", NUMBER, 1, NULL, "1", "0", "0 to 1", NULL, NULL, 0,
     "Share of the sprues that is melted again."},
    {"pot_film_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass that clings to the wall of the cup, part of the heel."},
    {"pot_heel_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass that cannot be drawn from the cup, its film included."},
    {"rejects", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Share of pieces that are not fit to sell."},
    {"confidence", NUMBER, 1, NULL, "1", "0.9", "above 0 to 0.999999999", NULL, NULL, 0,
     "Confidence that enough good pieces come out."},
};

static const struct result results_of_batch_need[] = {
    {"total_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass to mix. Unit: g."},
    {"drawn_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of all shots. Unit: g."},
    {"returned_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of sprues that go back and are shot again. Unit: g."},
    {"pieces_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of all pieces. Unit: g."},
    {"sprues_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of sprues that are left over. Unit: g."},
    {"kept_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass that stays in the injector over the run. Unit: g."},
    {"in_cup_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass that stays in the cup: the heel, with the film in it. Unit: g."},
    {"shots", COUNT, 0, "1", 0, NULL,
     "Number of shots."},
    {"loads", COUNT, 0, "1", 0, NULL,
     "Number of injector loads."},
    {"shots_per_load", COUNT, 0, "1", 0, NULL,
     "Whole shots in one load."},
    {"shots_in_last", COUNT, 0, "1", 0, NULL,
     "Shots from the last load."},
};

static int32_t call_batch_need(const struct argument *given, struct value *found, pour_error **error)
{
    pour_batch_need_input input = POUR_BATCH_NEED_INPUT_INIT;
    pour_batch_need_result result;
    int32_t status;

    input.pieces = given[0].count;
    input.cavities = given[1].count;
    input.shot_mass_g = given[2].number;
    input.shot_density_g_per_ml = given[3].number;
    input.injector_capacity_ml = given[4].number;
    input.injector_residue_ml = given[5].number;
    input.cleanings = given[6].count;
    input.sprue_mass_g = given[7].number;
    input.returned = given[8].number;
    input.pot_film_g = given[9].number;
    input.pot_heel_g = given[10].number;
    input.rejects = given[11].number;
    input.confidence = given[12].number;
    status = pour_batch_need(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.total_mass_g;
    found[1].number = result.drawn_mass_g;
    found[2].number = result.returned_mass_g;
    found[3].number = result.pieces_mass_g;
    found[4].number = result.sprues_mass_g;
    found[5].number = result.kept_mass_g;
    found[6].number = result.in_cup_mass_g;
    found[7].count = result.shots;
    found[8].count = result.loads;
    found[9].count = result.shots_per_load;
    found[10].count = result.shots_in_last;
    return POUR_OK;
}

static const struct parameter parameters_of_base_to_mark[] = {
    {"mix_needed_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of mix that is needed."},
    {"base_fraction", NUMBER, 0, NULL, "1", NULL, "above 0 to 1", NULL, NULL, 0,
     "Share of base in the mix, by mass."},
    {"base_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the base, cold and liquid, as a cup measures it."},
    {"cup_capacity_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the cup up to its last mark."},
    {"cup_mark_ml", NUMBER, 1, "mL", "mL", "one mark alone, when it is full", "1e-9 to 1e15", NULL, NULL, 0,
     "Distance between the marks of the cup."},
    {"shot_mass_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of one shot, sprue included."},
};

static const struct result results_of_base_to_mark[] = {
    {"base_volume_ml", NUMBER, 0, "mL", 0, NULL,
     "Volume of base: the mark. Unit: mL."},
    {"base_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of that base. Unit: g."},
    {"mix_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of the mix with all doses. Unit: g."},
    {"surplus_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass that is more than needed. Unit: g."},
    {"extra_shots", COUNT, 1, "1", 0, NULL,
     "Whole shots that the surplus gives, where the mass of a shot is given."},
};

static int32_t call_base_to_mark(const struct argument *given, struct value *found, pour_error **error)
{
    pour_base_to_mark_result result;
    int32_t status;

    status = pour_base_to_mark(given[0].number, given[1].number, given[2].number, given[3].number, given[4].number, given[5].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.base_volume_ml;
    found[1].number = result.base_mass_g;
    found[2].number = result.mix_mass_g;
    found[3].number = result.surplus_mass_g;
    found[4].count = result.extra_shots;
    return POUR_OK;
}

static const struct column columns_of_least_pot_doses[] = {{"dose_step_g", "g"}, {"tolerance", NULL}, {"dose_ratio", NULL}};

static const struct parameter parameters_of_least_pot[] = {
    {"doses", LIST, 0, NULL, NULL, NULL, "1 to 64", NULL, columns_of_least_pot_doses, 3,
     "The doses: of each its smallest step, its tolerance and its ratio to the base."},
    {"base_fraction", NUMBER, 0, NULL, "1", NULL, "above 0 to 1", NULL, NULL, 0,
     "Share of base in the mix, by mass."},
    {"oven_least_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest mix that the oven heats evenly."},
    {"injector_least_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest mix that the injector can draw from."},
};

static const struct result results_of_least_pot[] = {
    {"mix_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of the mix. Unit: g."},
    {"base_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of base in it. Unit: g."},
};

static int32_t call_least_pot(const struct argument *given, struct value *found, pour_error **error)
{
    pour_least_pot_result result;
    int32_t status;

    status = pour_least_pot((const pour_doses_row *)(const void *)given[0].list, given[0].rows, given[1].number, given[2].number, given[3].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.mix_mass_g;
    found[1].number = result.base_mass_g;
    return POUR_OK;
}

static const struct parameter parameters_of_reject_rate[] = {
    {"cast_pieces", COUNT, 0, NULL, "1", NULL, "1 to 1000000", NULL, NULL, 0,
     "Number of pieces that were cast."},
    {"reject_count", COUNT, 0, NULL, "1", NULL, "0 to 1000000", NULL, NULL, 0,
     "Number of them that are not fit to sell."},
    {"confidence", NUMBER, 1, NULL, "1", "0.9", "above 0 to 0.999999999", NULL, NULL, 0,
     "Confidence that enough good pieces come out."},
};

static const struct result results_of_reject_rate[] = {
    {"rejects", NUMBER, 0, "1", 0, NULL,
     "Share of rejects. Unit: 1."},
    {"rejects_min", NUMBER, 0, "1", 0, NULL,
     "Its lower bound. Unit: 1."},
    {"rejects_max", NUMBER, 0, "1", 0, NULL,
     "Its upper bound. Unit: 1."},
};

static int32_t call_reject_rate(const struct argument *given, struct value *found, pour_error **error)
{
    pour_reject_rate_result result;
    int32_t status;

    status = pour_reject_rate(given[0].count, given[1].count, given[2].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.rejects;
    found[1].number = result.rejects_min;
    found[2].number = result.rejects_max;
    return POUR_OK;
}

static const struct column columns_of_bench_measure_spoons_ml[] = {{"spoon_volume_ml", "mL"}};

static const struct column columns_of_bench_measure_cups[] = {{"cup_mark_ml", "mL"}, {"cup_capacity_ml", "mL"}};

static const struct parameter parameters_of_bench_measure[] = {
    {"mass_to_measure_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass to measure."},
    {"tolerance", NUMBER, 1, NULL, "1", "0.05", "above 0 to below 1", NULL, NULL, 0,
     "Largest relative error that is accepted."},
    {"balance_readability_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest difference that the balance shows; without it there is no balance."},
    {"balance_capacity_g", NUMBER, 1, "g", "g", "5000 times its readability", "1e-12 to 1e15", NULL, NULL, 0,
     "Highest load of the balance."},
    {"balance_least_load_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Minimum load for which the balance is trusted."},
    {"spoons_ml", LIST, 1, "mL", "mL", NULL, "1 to 8", NULL, columns_of_bench_measure_spoons_ml, 1,
     "Volumes of the measuring spoons."},
    {"cups", LIST, 1, NULL, NULL, NULL, "1 to 64", NULL, columns_of_bench_measure_cups, 2,
     "The cups with evenly spaced marks: of each the distance between marks and the capacity."},
    {"as_measured_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the material in a measure: of a liquid its density, of a powder its bulk density, level and not tapped."},
    {"drop_mass_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of one drop."},
};

static const struct result results_of_bench_measure[] = {
    {"mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass that it gives. Unit: g."},
    {"deviation", NUMBER, 0, "1", 0, NULL,
     "(given − needed)/needed. Unit: 1."},
    {"tool", WORD, 0, NULL, 0, words_of_tool,
     "The tool: balance, cup, spoons or drops."},
    {"acts", COUNT, 0, "1", 0, NULL,
     "Amount of handling: readings, fillings, spoonfuls, tens of drops."},
    {"drops", COUNT, 0, "1", 0, NULL,
     "Number of drops."},
    {"spoonfuls", LIST, 0, "1", 8, NULL,
     "Number of level spoonfuls of each spoon, in the order of the spoons."},
    {"cup", COUNT, 0, "1", 0, NULL,
     "Which cup, counted from 1; 0 without one."},
    {"cup_fillings", COUNT, 0, "1", 0, NULL,
     "Number of times that cup is filled to its last mark."},
    {"cup_mark", COUNT, 0, "1", 0, NULL,
     "Mark to which it is filled once more, counted from 1; 0 where it is not."},
};

static int32_t call_bench_measure(const struct argument *given, struct value *found, pour_error **error)
{
    pour_bench_measure_input input = POUR_BENCH_MEASURE_INPUT_INIT;
    pour_bench_measure_result result;
    int32_t status;

    input.mass_to_measure_g = given[0].number;
    input.tolerance = given[1].number;
    input.balance_readability_g = given[2].number;
    input.balance_capacity_g = given[3].number;
    input.balance_least_load_g = given[4].number;
    input.spoons_ml = given[5].list;
    input.spoons_count = given[5].rows;
    input.cups = (const pour_cups_row *)(const void *)given[6].list;
    input.cups_count = given[6].rows;
    input.as_measured_density_g_per_ml = given[7].number;
    input.drop_mass_g = given[8].number;
    status = pour_bench_measure(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.mass_g;
    found[1].number = result.deviation;
    found[2].word = result.tool;
    found[3].count = result.acts;
    found[4].count = result.drops;
    memcpy(found[5].counts, result.spoonfuls, sizeof result.spoonfuls);
    found[6].count = result.cup;
    found[7].count = result.cup_fillings;
    found[8].count = result.cup_mark;
    return POUR_OK;
}

static const struct parameter parameters_of_sink_rate[] = {
    {"piece_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the piece, its salt and voids counted."},
    {"piece_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the piece without its hook."},
    {"diameter_mm", NUMBER, 0, "mm", "mm", NULL, "1e-6 to 1e6", NULL, NULL, 0,
     "Mean diameter of the piece."},
    {"water_temperature_celsius", NUMBER, 0, "°C", "°C", NULL, "0 to 40", NULL, NULL, 0,
     "Temperature of the water."},
    {"length_mm", NUMBER, 1, "mm", "mm", NULL, "1e-6 to 1e6", NULL, NULL, 0,
     "Length of a stick, at least 2.01 diameters; not used for a ball."},
    {"shape", WORD, 1, NULL, NULL, "a stick where a length is given, else a ball", "stick or ball", words_of_shape, NULL, 0,
     "Shape of the piece as it sinks: a stick sinks sideways."},
    {"hook_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass of hook and weight on a piece; give its volume too."},
    {"hook_volume_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that hook and weight displace; give their mass too."},
    {"salinity_practical", NUMBER, 1, NULL, "1", NULL, "0 to 41.8", NULL, NULL, 0,
     "Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh water without either."},
    {"salinity_absolute", NUMBER, 1, NULL, "1", NULL, "0 to 0.042", NULL, NULL, 0,
     "Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical one."},
    {"density_uncertainty_g_per_ml", NUMBER, 1, "g/mL", "g/mL", "0", "0 to 25", NULL, NULL, 0,
     "Standard uncertainty of the density of the piece; its bounds are counted at twice that."},
    {"depth_m", NUMBER, 1, "m", "m", NULL, "1e-9 to 12000", NULL, NULL, 0,
     "Depth to give the sink time for."},
    {"drop_depth_m", NUMBER, 1, "m", "m", NULL, "1e-9 to 12000", NULL, NULL, 0,
     "Depth of a timed drop, the piece let go just below the surface."},
    {"drop_time_s", NUMBER, 1, "s", "s", NULL, "1e-6 to 1e9", NULL, NULL, 0,
     "Time of the timed drop."},
    {"drop_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the piece that was dropped."},
};

static const struct result results_of_sink_rate[] = {
    {"sink_rate_cm_per_s", NUMBER, 0, "cm/s", 0, NULL,
     "Sink rate. Unit: cm/s."},
    {"sink_rate_min_cm_per_s", NUMBER, 0, "cm/s", 0, NULL,
     "Lower bound; 0 where the piece may hang or float. Unit: cm/s."},
    {"sink_rate_max_cm_per_s", NUMBER, 0, "cm/s", 0, NULL,
     "Upper bound. Unit: cm/s."},
    {"motion", WORD, 0, NULL, 0, words_of_motion,
     "Whether it sinks straight: straight, may-swing or swings."},
    {"reynolds", NUMBER, 0, "1", 0, NULL,
     "Reynolds number. Unit: 1."},
    {"drag_coefficient", NUMBER, 0, "1", 0, NULL,
     "Drag coefficient, on length times diameter of a stick and the cross-section of a ball. Unit: 1."},
    {"sink_time_s", NUMBER, 1, "s", 0, NULL,
     "Time to the depth, let go at rest just below the surface. Unit: s."},
};

static int32_t call_sink_rate(const struct argument *given, struct value *found, pour_error **error)
{
    pour_sink_rate_input input = POUR_SINK_RATE_INPUT_INIT;
    pour_sink_rate_result result;
    int32_t status;

    input.piece_density_g_per_ml = given[0].number;
    input.piece_volume_ml = given[1].number;
    input.diameter_mm = given[2].number;
    input.water_temperature_celsius = given[3].number;
    input.length_mm = given[4].number;
    input.shape = given[5].word;
    input.hook_mass_g = given[6].number;
    input.hook_volume_ml = given[7].number;
    input.salinity_practical = given[8].number;
    input.salinity_absolute = given[9].number;
    input.density_uncertainty_g_per_ml = given[10].number;
    input.depth_m = given[11].number;
    input.drop_depth_m = given[12].number;
    input.drop_time_s = given[13].number;
    input.drop_density_g_per_ml = given[14].number;
    status = pour_sink_rate(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.sink_rate_cm_per_s;
    found[1].number = result.sink_rate_min_cm_per_s;
    found[2].number = result.sink_rate_max_cm_per_s;
    found[3].word = result.motion;
    found[4].number = result.reynolds;
    found[5].number = result.drag_coefficient;
    found[6].number = result.sink_time_s;
    return POUR_OK;
}

static const struct parameter parameters_of_density_for_sink_rate[] = {
    {"sink_rate_cm_per_s", NUMBER, 0, "cm/s", "cm/s", NULL, "1e-9 to 1e6", NULL, NULL, 0,
     "Sink rate: the final speed of the piece."},
    {"piece_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the piece without its hook."},
    {"diameter_mm", NUMBER, 0, "mm", "mm", NULL, "1e-6 to 1e6", NULL, NULL, 0,
     "Mean diameter of the piece."},
    {"water_temperature_celsius", NUMBER, 0, "°C", "°C", NULL, "0 to 40", NULL, NULL, 0,
     "Temperature of the water."},
    {"length_mm", NUMBER, 1, "mm", "mm", NULL, "1e-6 to 1e6", NULL, NULL, 0,
     "Length of a stick, at least 2.01 diameters; not used for a ball."},
    {"shape", WORD, 1, NULL, NULL, "a stick where a length is given, else a ball", "stick or ball", words_of_shape, NULL, 0,
     "Shape of the piece as it sinks: a stick sinks sideways."},
    {"hook_mass_g", NUMBER, 1, "g", "g", "0", "0 to 1e15", NULL, NULL, 0,
     "Mass of hook and weight on a piece; give its volume too."},
    {"hook_volume_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Volume that hook and weight displace; give their mass too."},
    {"salinity_practical", NUMBER, 1, NULL, "1", NULL, "0 to 41.8", NULL, NULL, 0,
     "Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh water without either."},
    {"salinity_absolute", NUMBER, 1, NULL, "1", NULL, "0 to 0.042", NULL, NULL, 0,
     "Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical one."},
    {"drop_depth_m", NUMBER, 1, "m", "m", NULL, "1e-9 to 12000", NULL, NULL, 0,
     "Depth of a timed drop, the piece let go just below the surface."},
    {"drop_time_s", NUMBER, 1, "s", "s", NULL, "1e-6 to 1e9", NULL, NULL, 0,
     "Time of the timed drop."},
    {"drop_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the piece that was dropped."},
};

static const struct result results_of_density_for_sink_rate[] = {
    {"piece_density_g_per_ml", NUMBER, 0, "g/mL", 0, NULL,
     "Density of the piece, voids and salt counted. Unit: g/mL."},
};

static int32_t call_density_for_sink_rate(const struct argument *given, struct value *found, pour_error **error)
{
    pour_density_for_sink_rate_input input = POUR_DENSITY_FOR_SINK_RATE_INPUT_INIT;
    double result;
    int32_t status;

    input.sink_rate_cm_per_s = given[0].number;
    input.piece_volume_ml = given[1].number;
    input.diameter_mm = given[2].number;
    input.water_temperature_celsius = given[3].number;
    input.length_mm = given[4].number;
    input.shape = given[5].word;
    input.hook_mass_g = given[6].number;
    input.hook_volume_ml = given[7].number;
    input.salinity_practical = given[8].number;
    input.salinity_absolute = given[9].number;
    input.drop_depth_m = given[10].number;
    input.drop_time_s = given[11].number;
    input.drop_density_g_per_ml = given[12].number;
    status = pour_density_for_sink_rate(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct column columns_of_hardness_points[] = {{"point_ratio", NULL}, {"point_hardness", NULL}};

static const struct parameter parameters_of_hardness[] = {
    {"points", LIST, 0, NULL, NULL, NULL, "2 to 1000", NULL, columns_of_hardness_points, 2,
     "The shop's own measured points, by rising ratio: of each the ratio and the durometer reading."},
    {"scale", WORD, 0, NULL, NULL, NULL, "shore-00 or shore-a", words_of_scale, NULL, 0,
     "The scale of the durometer."},
    {"softener_ratio", NUMBER, 0, NULL, "1", NULL, "0 to 100", NULL, NULL, 0,
     "Softener or hardener, mass per mass of base; between the measured points."},
};

static const struct result results_of_hardness[] = {
    {"hardness", NUMBER, 0, "1", 0, NULL,
     "Durometer reading. Unit: 1."},
};

static int32_t call_hardness(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_hardness((const pour_points_row *)(const void *)given[0].list, given[0].rows, given[1].word, given[2].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct column columns_of_softener_ratio_points[] = {{"point_ratio", NULL}, {"point_hardness", NULL}};

static const struct parameter parameters_of_softener_ratio[] = {
    {"points", LIST, 0, NULL, NULL, NULL, "2 to 1000", NULL, columns_of_softener_ratio_points, 2,
     "The shop's own measured points, by rising ratio: of each the ratio and the durometer reading."},
    {"scale", WORD, 0, NULL, NULL, NULL, "shore-00 or shore-a", words_of_scale, NULL, 0,
     "The scale of the durometer."},
    {"hardness", NUMBER, 0, NULL, "1", NULL, "0 to 100", NULL, NULL, 0,
     "Durometer reading."},
};

static const struct result results_of_softener_ratio[] = {
    {"softener_ratio", NUMBER, 0, "1", 0, NULL,
     "Mass per mass of base. Unit: 1."},
};

static int32_t call_softener_ratio(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_softener_ratio((const pour_points_row *)(const void *)given[0].list, given[0].rows, given[1].word, given[2].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct column columns_of_salted_softener_salted_points[] = {{"point_salt", NULL}, {"point_softener", NULL}};

static const struct parameter parameters_of_salted_softener[] = {
    {"salted_points", LIST, 0, NULL, NULL, NULL, "2 to 1000", NULL, columns_of_salted_softener_salted_points, 2,
     "The shop's own measured points, by rising salt: of each the salt and the softener, mass per mass of base."},
    {"salt_of_base", NUMBER, 0, NULL, "1", NULL, "0 to 10", NULL, NULL, 0,
     "Salt, mass per mass of base; between the measured points."},
};

static const struct result results_of_salted_softener[] = {
    {"softener_ratio", NUMBER, 0, "1", 0, NULL,
     "Softener on top of the unsalted body's, mass per mass of base. Unit: 1."},
};

static int32_t call_salted_softener(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_salted_softener((const pour_salted_points_row *)(const void *)given[0].list, given[0].rows, given[1].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_water_density[] = {
    {"water_temperature_celsius", NUMBER, 0, "°C", "°C", NULL, "0 to 40", NULL, NULL, 0,
     "Temperature of the water."},
};

static const struct result results_of_water_density[] = {
    {"density_g_per_ml", NUMBER, 0, "g/mL", 0, NULL,
     "Density of the water. Unit: g/mL."},
};

static int32_t call_water_density(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_water_density(given[0].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_cavity_of_water[] = {
    {"water_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Reading of the balance for the water in one cavity: filled less empty."},
    {"water_temperature_celsius", NUMBER, 0, "°C", "°C", NULL, "0 to 40", NULL, NULL, 0,
     "Temperature of the water."},
    {"air_pressure_kpa", NUMBER, 1, "kPa", "kPa", "101.325", "45 to 110", NULL, NULL, 0,
     "Air pressure at the balance, not reduced to sea level."},
};

static const struct result results_of_cavity_of_water[] = {
    {"cavity_volume_ml", NUMBER, 0, "mL", 0, NULL,
     "Volume of the cavity. Unit: mL."},
};

static int32_t call_cavity_of_water(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_cavity_of_water(given[0].number, given[1].number, given[2].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_standard_pressure[] = {
    {"altitude_m", NUMBER, 0, "m", "m", NULL, "-5000 to 11000", NULL, NULL, 0,
     "Height above sea level, as a map gives it; negative below it."},
};

static const struct result results_of_standard_pressure[] = {
    {"station_pressure_kpa", NUMBER, 0, "kPa", 0, NULL,
     "Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa."},
};

static int32_t call_standard_pressure(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_standard_pressure(given[0].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_station_pressure[] = {
    {"reported_pressure_kpa", NUMBER, 0, "kPa", "kPa", NULL, "85 to 110", NULL, NULL, 0,
     "Air pressure as a weather report gives it, reduced to sea level; needs the altitude."},
    {"altitude_m", NUMBER, 0, "m", "m", NULL, "-5000 to 11000", NULL, NULL, 0,
     "Height above sea level, as a map gives it; negative below it."},
};

static const struct result results_of_station_pressure[] = {
    {"station_pressure_kpa", NUMBER, 0, "kPa", 0, NULL,
     "Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa."},
};

static int32_t call_station_pressure(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_station_pressure(given[0].number, given[1].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_swollen_volume[] = {
    {"liquid_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the pot, cold and without air."},
    {"entrained_air", NUMBER, 0, NULL, "1", NULL, "0 to below 1", NULL, NULL, 0,
     "Share of air in the mix by volume, under the outside pressure."},
    {"station_pressure_kpa", NUMBER, 0, "kPa", "kPa", NULL, "22.6 to 178", NULL, NULL, 0,
     "Air pressure at the place itself, not reduced to sea level."},
    {"gauge_vacuum_kpa", NUMBER, 1, "kPa", "kPa", NULL, "0 to 180", NULL, NULL, 0,
     "Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure."},
    {"absolute_pressure_kpa", NUMBER, 1, "kPa", "kPa", NULL, "0 to 180", NULL, NULL, 0,
     "Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum."},
    {"dial_tolerance_kpa", NUMBER, 1, "kPa", "kPa", "3.0477501", "0 to 101", NULL, NULL, 0,
     "How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial."},
    {"vapor_pressure_kpa", NUMBER, 1, "kPa", "kPa", "0", "0 to 180", NULL, NULL, 0,
     "Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber."},
    {"damp_at_celsius", NUMBER, 1, "°C", "°C", NULL, "0.01 to 200", NULL, NULL, 0,
     "Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot."},
};

static const struct result results_of_swollen_volume[] = {
    {"swollen_volume_ml", NUMBER, 0, "mL", 0, NULL,
     "Volume in the vacuum. Unit: mL."},
    {"standing_volume_ml", NUMBER, 0, "mL", 0, NULL,
     "Volume before, bubbles included. Unit: mL."},
    {"result_absolute_pressure_kpa", NUMBER, 0, "kPa", 0, NULL,
     "Pressure that is left in the chamber. Unit: kPa."},
};

static int32_t call_swollen_volume(const struct argument *given, struct value *found, pour_error **error)
{
    pour_swollen_volume_input input = POUR_SWOLLEN_VOLUME_INPUT_INIT;
    pour_swollen_volume_result result;
    int32_t status;

    input.liquid_volume_ml = given[0].number;
    input.entrained_air = given[1].number;
    input.station_pressure_kpa = given[2].number;
    input.gauge_vacuum_kpa = given[3].number;
    input.absolute_pressure_kpa = given[4].number;
    input.dial_tolerance_kpa = given[5].number;
    input.vapor_pressure_kpa = given[6].number;
    input.damp_at_celsius = given[7].number;
    status = pour_swollen_volume(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.swollen_volume_ml;
    found[1].number = result.standing_volume_ml;
    found[2].number = result.absolute_pressure_kpa;
    return POUR_OK;
}

static const struct parameter parameters_of_entrained_air[] = {
    {"rise", NUMBER, 0, NULL, "1", NULL, "1 to 1000", NULL, NULL, 0,
     "Level of a pot in the vacuum over its level before; give this or the entrained air."},
    {"station_pressure_kpa", NUMBER, 0, "kPa", "kPa", NULL, "22.6 to 178", NULL, NULL, 0,
     "Air pressure at the place itself, not reduced to sea level."},
    {"gauge_vacuum_kpa", NUMBER, 1, "kPa", "kPa", NULL, "0 to 180", NULL, NULL, 0,
     "Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure."},
    {"absolute_pressure_kpa", NUMBER, 1, "kPa", "kPa", NULL, "0 to 180", NULL, NULL, 0,
     "Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum."},
    {"dial_tolerance_kpa", NUMBER, 1, "kPa", "kPa", "3.0477501", "0 to 101", NULL, NULL, 0,
     "How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial."},
    {"vapor_pressure_kpa", NUMBER, 1, "kPa", "kPa", "0", "0 to 180", NULL, NULL, 0,
     "Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber."},
    {"damp_at_celsius", NUMBER, 1, "°C", "°C", NULL, "0.01 to 200", NULL, NULL, 0,
     "Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot."},
};

static const struct result results_of_entrained_air[] = {
    {"entrained_air", NUMBER, 0, "1", 0, NULL,
     "Share of air in the mix by volume, under the outside pressure. Unit: 1."},
};

static int32_t call_entrained_air(const struct argument *given, struct value *found, pour_error **error)
{
    pour_entrained_air_input input = POUR_ENTRAINED_AIR_INPUT_INIT;
    double result;
    int32_t status;

    input.rise = given[0].number;
    input.station_pressure_kpa = given[1].number;
    input.gauge_vacuum_kpa = given[2].number;
    input.absolute_pressure_kpa = given[3].number;
    input.dial_tolerance_kpa = given[4].number;
    input.vapor_pressure_kpa = given[5].number;
    input.damp_at_celsius = given[6].number;
    status = pour_entrained_air(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_degas_vessel[] = {
    {"liquid_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the pot, cold and without air."},
    {"entrained_air", NUMBER, 0, NULL, "1", NULL, "0 to below 1", NULL, NULL, 0,
     "Share of air in the mix by volume, under the outside pressure."},
    {"station_pressure_kpa", NUMBER, 0, "kPa", "kPa", NULL, "22.6 to 178", NULL, NULL, 0,
     "Air pressure at the place itself, not reduced to sea level."},
    {"gauge_vacuum_kpa", NUMBER, 1, "kPa", "kPa", NULL, "0 to 180", NULL, NULL, 0,
     "Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure."},
    {"absolute_pressure_kpa", NUMBER, 1, "kPa", "kPa", NULL, "0 to 180", NULL, NULL, 0,
     "Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum."},
    {"dial_tolerance_kpa", NUMBER, 1, "kPa", "kPa", "3.0477501", "0 to 101", NULL, NULL, 0,
     "How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial."},
    {"vapor_pressure_kpa", NUMBER, 1, "kPa", "kPa", "0", "0 to 180", NULL, NULL, 0,
     "Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber."},
    {"damp_at_celsius", NUMBER, 1, "°C", "°C", NULL, "0.01 to 200", NULL, NULL, 0,
     "Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot."},
    {"vessel_spare", NUMBER, 1, NULL, "1", "0.1", "0 to below 1", NULL, NULL, 0,
     "Share of the vessel that stays empty."},
    {"vessel_brim_ml", NUMBER, 1, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the vessel up to its brim."},
    {"vessel_mark_ml", NUMBER, 1, "mL", "mL", "any level", "1e-9 to 1e15", NULL, NULL, 0,
     "Distance between the vessel's marks."},
};

static const struct result results_of_degas_vessel[] = {
    {"vessel_volume_ml", NUMBER, 0, "mL", 0, NULL,
     "Volume to the brim of a vessel that takes the pot at once. Unit: mL."},
    {"fill_mark_ml", NUMBER, 1, "mL", 0, NULL,
     "Level to fill the given vessel to at most, bubbles included. Unit: mL."},
    {"fills", COUNT, 1, "1", 0, NULL,
     "Number of fills of the given vessel."},
    {"fill_level_ml", NUMBER, 1, "mL", 0, NULL,
     "Level of each fill, shared out evenly, bubbles included. Unit: mL."},
    {"fill_swollen_ml", NUMBER, 1, "mL", 0, NULL,
     "Volume of an even fill in the vacuum. Unit: mL."},
};

static int32_t call_degas_vessel(const struct argument *given, struct value *found, pour_error **error)
{
    pour_degas_vessel_input input = POUR_DEGAS_VESSEL_INPUT_INIT;
    pour_degas_vessel_result result;
    int32_t status;

    input.liquid_volume_ml = given[0].number;
    input.entrained_air = given[1].number;
    input.station_pressure_kpa = given[2].number;
    input.gauge_vacuum_kpa = given[3].number;
    input.absolute_pressure_kpa = given[4].number;
    input.dial_tolerance_kpa = given[5].number;
    input.vapor_pressure_kpa = given[6].number;
    input.damp_at_celsius = given[7].number;
    input.vessel_spare = given[8].number;
    input.vessel_brim_ml = given[9].number;
    input.vessel_mark_ml = given[10].number;
    status = pour_degas_vessel(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.vessel_volume_ml;
    found[1].number = result.fill_mark_ml;
    found[2].count = result.fills;
    found[3].number = result.fill_level_ml;
    found[4].number = result.fill_swollen_ml;
    return POUR_OK;
}

static const struct parameter parameters_of_flake_count[] = {
    {"cut", TEXT, 0, NULL, NULL, NULL, "0.05 to 6.35 mm", NULL, NULL, 0,
     "Size and shape of a flake as the trade writes it: .035, 1/64 hex, 0.4 mm square."},
    {"thickness_um", NUMBER, 0, "µm", "µm", NULL, "1e-3 to 6350", NULL, NULL, 0,
     "Thickness of the film; below the size of the cut."},
    {"film_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the film that the flake is cut from."},
    {"flake_dose_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the dose of flake."},
};

static const struct result results_of_flake_count[] = {
    {"particles", NUMBER, 0, "1", 0, NULL,
     "Number of particles, not rounded. Unit: 1."},
    {"area_cm2", NUMBER, 0, "cm2", 0, NULL,
     "Area of film, one face of every particle. Unit: cm2."},
};

static int32_t call_flake_count(const struct argument *given, struct value *found, pour_error **error)
{
    pour_flake_count_result result;
    int32_t status;

    status = pour_flake_count(given[0].text, given[1].number, given[2].number, given[3].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.particles;
    found[1].number = result.area_cm2;
    return POUR_OK;
}

static const struct parameter parameters_of_flake_swap[] = {
    {"cut", TEXT, 0, NULL, NULL, NULL, "0.05 to 6.35 mm", NULL, NULL, 0,
     "Size and shape of a flake as the trade writes it: .035, 1/64 hex, 0.4 mm square."},
    {"thickness_um", NUMBER, 0, "µm", "µm", NULL, "1e-3 to 6350", NULL, NULL, 0,
     "Thickness of the film; below the size of the cut."},
    {"film_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the film that the flake is cut from."},
    {"flake_dose_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the dose of flake."},
    {"other_cut", TEXT, 0, NULL, NULL, NULL, "0.05 to 6.35 mm", NULL, NULL, 0,
     "Size and shape of the other flake."},
    {"other_thickness_um", NUMBER, 0, "µm", "µm", NULL, "1e-3 to 6350", NULL, NULL, 0,
     "Thickness of the film of the other flake; below the size of its cut."},
    {"other_film_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the film of the other flake."},
    {"other_as_scooped_g_per_ml", NUMBER, 1, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Bulk density of the other flake, level in the spoon."},
    {"alike", WORD, 1, NULL, NULL, "area", "count or area", words_of_alike, NULL, 0,
     "What the two doses of flake have in common: the number of particles or the area of film."},
};

static const struct result results_of_flake_swap[] = {
    {"mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of the other flake. Unit: g."},
    {"scoop_ml", NUMBER, 1, "mL", 0, NULL,
     "Volume to scoop of it, where its bulk density is given. Unit: mL."},
    {"count_ratio", NUMBER, 0, "1", 0, NULL,
     "Particles of the other dose over those of the first. Unit: 1."},
    {"area_ratio", NUMBER, 0, "1", 0, NULL,
     "Area of the other dose over that of the first. Unit: 1."},
};

static int32_t call_flake_swap(const struct argument *given, struct value *found, pour_error **error)
{
    pour_flake_swap_input input = POUR_FLAKE_SWAP_INPUT_INIT;
    pour_flake_swap_result result;
    int32_t status;

    input.cut = given[0].text;
    input.thickness_um = given[1].number;
    input.film_density_g_per_ml = given[2].number;
    input.flake_dose_g = given[3].number;
    input.other_cut = given[4].text;
    input.other_thickness_um = given[5].number;
    input.other_film_density_g_per_ml = given[6].number;
    input.other_as_scooped_g_per_ml = given[7].number;
    input.alike = given[8].word;
    status = pour_flake_swap(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.mass_g;
    found[1].number = result.scoop_ml;
    found[2].number = result.count_ratio;
    found[3].number = result.area_ratio;
    return POUR_OK;
}

static const struct parameter parameters_of_color_difference[] = {
    {"lightness", NUMBER, 0, NULL, "1", NULL, "0 to 100", NULL, NULL, 0,
     "L* of the color: 0 for black, 100 for white."},
    {"a", NUMBER, 0, NULL, "1", NULL, "-200 to 200", NULL, NULL, 0,
     "a* of the color: green below 0, red above."},
    {"b", NUMBER, 0, NULL, "1", NULL, "-200 to 200", NULL, NULL, 0,
     "b* of the color: blue below 0, yellow above."},
    {"other_lightness", NUMBER, 0, NULL, "1", NULL, "0 to 100", NULL, NULL, 0,
     "L* of the other color."},
    {"other_a", NUMBER, 0, NULL, "1", NULL, "-200 to 200", NULL, NULL, 0,
     "a* of the other color."},
    {"other_b", NUMBER, 0, NULL, "1", NULL, "-200 to 200", NULL, NULL, 0,
     "b* of the other color."},
};

static const struct result results_of_color_difference[] = {
    {"difference", NUMBER, 0, "1", 0, NULL,
     "ΔE₀₀. Unit: 1."},
};

static int32_t call_color_difference(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_color_difference(given[0].number, given[1].number, given[2].number, given[3].number, given[4].number, given[5].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct column columns_of_equivalent_time_readings[] = {{"reading_time_s", "s"}, {"reading_temperature_celsius", "°C"}};

static const struct parameter parameters_of_equivalent_time[] = {
    {"readings", LIST, 0, NULL, NULL, NULL, "2 to 100000", NULL, columns_of_equivalent_time_readings, 2,
     "Temperatures in the order of time, taken as straight between."},
    {"activation_energy_kj_per_mol", NUMBER, 0, "kJ/mol", "kJ/mol", NULL, "10 to 500", NULL, NULL, 0,
     "Activation energy of the decay in the heat; state its source in a book."},
    {"reference_temperature_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Temperature at which the time is counted."},
};

static const struct result results_of_equivalent_time[] = {
    {"equivalent_time_s", NUMBER, 0, "s", 0, NULL,
     "Equivalent time. Unit: s."},
};

static int32_t call_equivalent_time(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_equivalent_time((const pour_readings_row *)(const void *)given[0].list, given[0].rows, given[1].number, given[2].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct parameter parameters_of_budget_left[] = {
    {"heat_budget_s", NUMBER, 0, "s", "s", NULL, "1e-6 to 1e15", NULL, NULL, 0,
     "Time at the reference temperature that the plastisol withstands."},
    {"equivalent_time_s", NUMBER, 0, "s", "s", NULL, "0 to 1e15", NULL, NULL, 0,
     "Equivalent time that the pot has spent so far, at the temperature of its budget."},
    {"budget_with", NUMBER, 1, NULL, "1", "0", "0 to 1", NULL, NULL, 0,
     "Stabilizer that the heat budget is stated for, by mass of base."},
    {"stabilizer_dose", NUMBER, 1, NULL, "1", "as budget_with", "0 to 1", NULL, NULL, 0,
     "Stabilizer in the mix, by mass of base."},
    {"extra_time_s", NUMBER, 1, "s", "s", NULL, "1e-6 to 1e15", NULL, NULL, 0,
     "Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000 s is 5 min for every 1 %."},
    {"extra_most", NUMBER, 1, NULL, "1", NULL, "0 to 1", NULL, NULL, 0,
     "Highest dose of stabilizer for which the extra time is known, by mass of base."},
};

static const struct result results_of_budget_left[] = {
    {"budget_s", NUMBER, 0, "s", 0, NULL,
     "Budget at this dose of stabilizer. Unit: s."},
    {"left_s", NUMBER, 0, "s", 0, NULL,
     "Time that is left; 0 where more was spent. Unit: s."},
    {"overspent_s", NUMBER, 0, "s", 0, NULL,
     "Time that was spent beyond the budget; 0 where it was not. Unit: s."},
};

static int32_t call_budget_left(const struct argument *given, struct value *found, pour_error **error)
{
    pour_budget_left_result result;
    int32_t status;

    status = pour_budget_left(given[0].number, given[1].number, given[2].number, given[3].number, given[4].number, given[5].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.budget_s;
    found[1].number = result.left_s;
    found[2].number = result.overspent_s;
    return POUR_OK;
}

static const struct column columns_of_heat_time_timings[] = {{"timed_mass_g", "g"}, {"timed_from_celsius", "°C"}, {"timed_to_celsius", "°C"}, {"timed_time_s", "s"}};

static const struct parameter parameters_of_heat_time[] = {
    {"pot_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix in the pot."},
    {"specific_heat_j_per_g_k", NUMBER, 0, "J/(g.K)", "J/(g.K)", NULL, "0.1 to 10", NULL, NULL, 0,
     "Specific heat of the mix, its salt counted."},
    {"heated_from_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "The temperature before heating."},
    {"heated_to_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "The temperature after heating, above that before."},
    {"timings", LIST, 1, NULL, NULL, NULL, "1 to 1000", NULL, columns_of_heat_time_timings, 4,
     "Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures before and after and the time; needed without the rated power."},
    {"oven_power_w", NUMBER, 1, "W", "W", NULL, "50 to 10000", NULL, NULL, 0,
     "Rated power of the oven, its output at full power: a first guess, not used once there are timings; needed without them."},
    {"setting", NUMBER, 1, NULL, "1", "that of the timings", "above 0 to 1", NULL, NULL, 0,
     "Setting of the oven, as a share of full power."},
    {"specific_heat_rise_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "-0.002 to 0.01", NULL, NULL, 0,
     "Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was timed."},
    {"timed_specific_heat_j_per_g_k", NUMBER, 1, "J/(g.K)", "J/(g.K)", "as specific_heat_j_per_g_k", "0.1 to 10", NULL, NULL, 0,
     "Specific heat of what was timed."},
    {"vessel_mass_g", NUMBER, 1, "g", "g", "left to the timings", "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the vessel."},
    {"vessel_specific_heat_j_per_g_k", NUMBER, 1, "J/(g.K)", "J/(g.K)", NULL, "0.1 to 10", NULL, NULL, 0,
     "Specific heat of the vessel."},
};

static const struct result results_of_heat_time[] = {
    {"heat_time_s", NUMBER, 0, "s", 0, NULL,
     "Heating time. Unit: s."},
    {"heat_time_uncertainty_s", NUMBER, 0, "s", 0, NULL,
     "Its standard uncertainty for one more heating. Unit: s."},
    {"power_w", NUMBER, 0, "W", 0, NULL,
     "Power that reaches mix and vessel. Unit: W."},
    {"beyond", NUMBER, 1, "1", 0, NULL,
     "How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1."},
};

static int32_t call_heat_time(const struct argument *given, struct value *found, pour_error **error)
{
    pour_heat_time_input input = POUR_HEAT_TIME_INPUT_INIT;
    pour_heat_time_result result;
    int32_t status;

    input.pot_mass_g = given[0].number;
    input.specific_heat_j_per_g_k = given[1].number;
    input.heated_from_celsius = given[2].number;
    input.heated_to_celsius = given[3].number;
    input.timings = (const pour_timings_row *)(const void *)given[4].list;
    input.timings_count = given[4].rows;
    input.oven_power_w = given[5].number;
    input.setting = given[6].number;
    input.specific_heat_rise_per_kelvin = given[7].number;
    input.timed_specific_heat_j_per_g_k = given[8].number;
    input.vessel_mass_g = given[9].number;
    input.vessel_specific_heat_j_per_g_k = given[10].number;
    status = pour_heat_time(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.heat_time_s;
    found[1].number = result.heat_time_uncertainty_s;
    found[2].number = result.power_w;
    found[3].number = result.beyond;
    return POUR_OK;
}

static const struct column columns_of_next_burst_timings[] = {{"timed_mass_g", "g"}, {"timed_from_celsius", "°C"}, {"timed_to_celsius", "°C"}, {"timed_time_s", "s"}};

static const struct parameter parameters_of_next_burst[] = {
    {"pot_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix in the pot."},
    {"specific_heat_j_per_g_k", NUMBER, 0, "J/(g.K)", "J/(g.K)", NULL, "0.1 to 10", NULL, NULL, 0,
     "Specific heat of the mix, its salt counted."},
    {"reading_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Reading of the thermometer, in the stirred mix."},
    {"window_bottom_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Lowest temperature at which the mix is shot, its material's own."},
    {"window_top_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Highest temperature at which the mix is shot, its material's own; above the lowest."},
    {"timings", LIST, 1, NULL, NULL, NULL, "1 to 1000", NULL, columns_of_next_burst_timings, 4,
     "Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures before and after and the time; needed without the rated power."},
    {"oven_power_w", NUMBER, 1, "W", "W", NULL, "50 to 10000", NULL, NULL, 0,
     "Rated power of the oven, its output at full power: a first guess, not used once there are timings; needed without them."},
    {"setting", NUMBER, 1, NULL, "1", "that of the timings", "above 0 to 1", NULL, NULL, 0,
     "Setting of the oven, as a share of full power."},
    {"specific_heat_rise_per_kelvin", NUMBER, 1, "1/K", "1/K", "0", "-0.002 to 0.01", NULL, NULL, 0,
     "Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was timed."},
    {"timed_specific_heat_j_per_g_k", NUMBER, 1, "J/(g.K)", "J/(g.K)", "as specific_heat_j_per_g_k", "0.1 to 10", NULL, NULL, 0,
     "Specific heat of what was timed."},
    {"vessel_mass_g", NUMBER, 1, "g", "g", "left to the timings", "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the vessel."},
    {"vessel_specific_heat_j_per_g_k", NUMBER, 1, "J/(g.K)", "J/(g.K)", NULL, "0.1 to 10", NULL, NULL, 0,
     "Specific heat of the vessel."},
    {"aim_celsius", NUMBER, 1, "°C", "°C", "the middle of the window", "in the shot window", NULL, NULL, 0,
     "The temperature to heat to."},
    {"thermometer_kelvin", NUMBER, 1, NULL, "K", "2", "0 to 100", NULL, NULL, 0,
     "How far the thermometer may be off."},
    {"burst_step_s", NUMBER, 1, "s", "s", "5", "1e-3 to 3600", NULL, NULL, 0,
     "Shortest burst that can be set, of which the others are multiples."},
    {"longest_burst_s", NUMBER, 1, "s", "s", "120", "1e-3 to 3600", NULL, NULL, 0,
     "Longest burst without a stir, at least the shortest."},
    {"oven_turn_s", NUMBER, 1, "s", "s", "30", "0 to 3600", NULL, NULL, 0,
     "How long a turn of full power and none takes at a setting below full power."},
    {"measures", WORD, 1, NULL, NULL, "us-customary", "us-customary, us-label, metric or imperial", words_of_measures, NULL, 0,
     "The system of measures: what a cup, a spoon and a fluid ounce hold."},
};

static const struct result results_of_next_burst[] = {
    {"burst_s", NUMBER, 1, "s", 0, NULL,
     "The next burst; none where the pot is hot enough. Unit: s."},
    {"expected_celsius", NUMBER, 1, "°C", 0, NULL,
     "The expected reading after it. Unit: °C."},
    {"shoot_from_celsius", NUMBER, 0, "°C", 0, NULL,
     "Shoot from this reading on. Unit: °C."},
    {"shoot_to_celsius", NUMBER, 0, "°C", 0, NULL,
     "Shoot up to this reading; above it, stop and let the pot cool. Unit: °C."},
    {"bursts", COUNT, 0, "1", 0, NULL,
     "Number of bursts that are expected from this reading on."},
    {"oven_time_s", NUMBER, 0, "s", 0, NULL,
     "Time that the oven is expected to run in them. Unit: s."},
};

static int32_t call_next_burst(const struct argument *given, struct value *found, pour_error **error)
{
    pour_next_burst_input input = POUR_NEXT_BURST_INPUT_INIT;
    pour_next_burst_result result;
    int32_t status;

    input.pot_mass_g = given[0].number;
    input.specific_heat_j_per_g_k = given[1].number;
    input.reading_celsius = given[2].number;
    input.window_bottom_celsius = given[3].number;
    input.window_top_celsius = given[4].number;
    input.timings = (const pour_timings_row *)(const void *)given[5].list;
    input.timings_count = given[5].rows;
    input.oven_power_w = given[6].number;
    input.setting = given[7].number;
    input.specific_heat_rise_per_kelvin = given[8].number;
    input.timed_specific_heat_j_per_g_k = given[9].number;
    input.vessel_mass_g = given[10].number;
    input.vessel_specific_heat_j_per_g_k = given[11].number;
    input.aim_celsius = given[12].number;
    input.thermometer_kelvin = given[13].number;
    input.burst_step_s = given[14].number;
    input.longest_burst_s = given[15].number;
    input.oven_turn_s = given[16].number;
    input.measures = given[17].word;
    status = pour_next_burst(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.burst_s;
    found[1].number = result.expected_celsius;
    found[2].number = result.shoot_from_celsius;
    found[3].number = result.shoot_to_celsius;
    found[4].count = result.bursts;
    found[5].number = result.oven_time_s;
    return POUR_OK;
}

static const struct parameter parameters_of_stays_hot[] = {
    {"pot_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix in the pot."},
    {"hot_from_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Temperature after the last burst."},
    {"hot_to_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Temperature down to which the pot can be shot, above that of the room."},
    {"watched_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix in a pot that was watched to cool."},
    {"watched_from_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "First reading of a pot that was watched to cool, from its second minute on, stirred."},
    {"watched_to_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Second reading of a pot that was watched to cool, stirred; below the first and above that of the room."},
    {"watched_time_s", NUMBER, 0, "s", "s", NULL, "1e-3 to 1e9", NULL, NULL, 0,
     "Time between the two readings of a pot that was watched to cool."},
    {"room_celsius", NUMBER, 1, "°C", "°C", "20", "-73 to 427", NULL, NULL, 0,
     "Temperature of the room, below all others."},
    {"stood_s", NUMBER, 1, "s", "s", "how hot it then is, is not calculated", "0 to 1e15", NULL, NULL, 0,
     "How long the pot has stood."},
};

static const struct result results_of_stays_hot[] = {
    {"time_constant_s", NUMBER, 0, "s", 0, NULL,
     "Time in which the distance to the temperature of the room falls to 37 %. Unit: s."},
    {"hot_for_s", NUMBER, 0, "s", 0, NULL,
     "Time down to the lower temperature, with all of the mix in the pot. Unit: s."},
    {"half_full_s", NUMBER, 0, "s", 0, NULL,
     "The same with half of it. Unit: s."},
    {"after_celsius", NUMBER, 1, "°C", 0, NULL,
     "Temperature after the time that the pot has stood. Unit: °C."},
};

static int32_t call_stays_hot(const struct argument *given, struct value *found, pour_error **error)
{
    pour_stays_hot_input input = POUR_STAYS_HOT_INPUT_INIT;
    pour_stays_hot_result result;
    int32_t status;

    input.pot_mass_g = given[0].number;
    input.hot_from_celsius = given[1].number;
    input.hot_to_celsius = given[2].number;
    input.watched_mass_g = given[3].number;
    input.watched_from_celsius = given[4].number;
    input.watched_to_celsius = given[5].number;
    input.watched_time_s = given[6].number;
    input.room_celsius = given[7].number;
    input.stood_s = given[8].number;
    status = pour_stays_hot(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.time_constant_s;
    found[1].number = result.hot_for_s;
    found[2].number = result.half_full_s;
    found[3].number = result.after_celsius;
    return POUR_OK;
}

static const struct column columns_of_pot_heats_clock_runs[] = {{"pot_shots", NULL}, {"shot_mass_g", "g"}, {"hands_s", "s"}, {"sets_s", "s"}, {"molds", NULL}};

static const struct parameter parameters_of_pot_heats[] = {
    {"pot_mass_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix in the pot."},
    {"clock_runs", LIST, 0, NULL, NULL, NULL, "1 to 1000", NULL, columns_of_pot_heats_clock_runs, 5,
     "The pot's shots in their order, like ones together: of each run the number of shots, the mass that one takes, the working time for one, the time that it sets and the number of molds in turn. At most 100 000 shots."},
    {"hot_for_s", NUMBER, 1, "s", "s", "from how it cools", "1e-3 to 1e15", NULL, NULL, 0,
     "How long the pot stays hot at one heat, from the last burst to the last shot."},
    {"clock_from_celsius", NUMBER, 1, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Temperature after the last burst; needed with cools."},
    {"clock_to_celsius", NUMBER, 1, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Temperature down to which the pot can be shot, above that of the room; needed with cools."},
    {"watched_mass_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mix in a pot that was watched to cool."},
    {"watched_from_celsius", NUMBER, 1, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "First reading of a pot that was watched to cool, from its second minute on, stirred."},
    {"watched_to_celsius", NUMBER, 1, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Second reading of a pot that was watched to cool, stirred; below the first and above that of the room."},
    {"watched_time_s", NUMBER, 1, "s", "s", NULL, "1e-3 to 1e9", NULL, NULL, 0,
     "Time between the two readings of a pot that was watched to cool."},
    {"room_celsius", NUMBER, 1, "°C", "°C", "20", "-73 to 427", NULL, NULL, 0,
     "Temperature of the room, below all others."},
    {"oven_time_s", NUMBER, 1, "s", "s", "it is not counted", "0 to 1e15", NULL, NULL, 0,
     "How long the oven runs for one heat."},
};

static const struct result results_of_pot_heats[] = {
    {"reheats", COUNT, 0, "1", 0, NULL,
     "Number of reheats: the heats but for the first."},
    {"first_shots", COUNT, 0, "1", 0, NULL,
     "Number of shots in the first heat."},
    {"shooting_time_s", NUMBER, 0, "s", 0, NULL,
     "Time of all shots, without the oven. Unit: s."},
    {"total_time_s", NUMBER, 1, "s", 0, NULL,
     "Time of all shots and of the oven for each heat, where that is given. Unit: s."},
};

static int32_t call_pot_heats(const struct argument *given, struct value *found, pour_error **error)
{
    pour_pot_heats_input input = POUR_POT_HEATS_INPUT_INIT;
    pour_pot_heats_result result;
    int32_t status;

    input.pot_mass_g = given[0].number;
    input.clock_runs = (const pour_clock_runs_row *)(const void *)given[1].list;
    input.clock_runs_count = given[1].rows;
    input.hot_for_s = given[2].number;
    input.clock_from_celsius = given[3].number;
    input.clock_to_celsius = given[4].number;
    input.watched_mass_g = given[5].number;
    input.watched_from_celsius = given[6].number;
    input.watched_to_celsius = given[7].number;
    input.watched_time_s = given[8].number;
    input.room_celsius = given[9].number;
    input.oven_time_s = given[10].number;
    status = pour_pot_heats(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].count = result.reheats;
    found[1].count = result.first_shots;
    found[2].number = result.shooting_time_s;
    found[3].number = result.total_time_s;
    return POUR_OK;
}

static const struct parameter parameters_of_setting_time[] = {
    {"section_shape", WORD, 0, NULL, NULL, NULL, "rod, plate or ball", words_of_section_shape, NULL, 0,
     "Shape of the thickest part of a piece."},
    {"section_thickness_mm", NUMBER, 0, "mm", "mm", NULL, "0.2 to 200", NULL, NULL, 0,
     "Thickness of the thickest part of a piece; of a rod or a ball its diameter."},
    {"shot_at_celsius", NUMBER, 0, "°C", "°C", NULL, "-73 to 427", NULL, NULL, 0,
     "Temperature at which it is shot, above that at which it is taken out."},
    {"mold_at_celsius", NUMBER, 1, "°C", "°C", "30", "-73 to 427", NULL, NULL, 0,
     "Temperature of the mold before the shot, below that at which a piece is taken out."},
    {"take_out_celsius", NUMBER, 1, "°C", "°C", "50", "-73 to 427", NULL, NULL, 0,
     "Temperature at which a piece can be taken out."},
    {"piece_point", WORD, 1, NULL, NULL, "center", "center or mean", words_of_piece_point, NULL, 0,
     "The point of a piece whose temperature counts."},
    {"diffusivity_m2_per_s", NUMBER, 1, "m2/s", "m2/s", "8.0e-8 m2/s, from 6.5e-8 to 1.0e-7", "1e-9 to 1e-5", NULL, NULL, 0,
     "Thermal diffusivity of the plastic."},
    {"shot_mass_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of one shot, sprue included."},
    {"shot_specific_heat_j_per_g_k", NUMBER, 1, "J/(g.K)", "J/(g.K)", "1.9", "0.1 to 10", NULL, NULL, 0,
     "Specific heat of the plastic."},
    {"mold_mass_g", NUMBER, 1, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass of the shot is needed."},
    {"mold_specific_heat_j_per_g_k", NUMBER, 1, "J/(g.K)", "J/(g.K)", "0.897", "0.1 to 10", NULL, NULL, 0,
     "Specific heat of the mold; the default is that of aluminum."},
    {"hands_s", NUMBER, 1, "s", "s", "how often a shot can be made is not calculated", "1e-3 to 1e15", NULL, NULL, 0,
     "Working time of a shot: fill, shoot, top off, take out."},
    {"molds", COUNT, 1, NULL, "1", "1", "1 to 1000000", NULL, NULL, 0,
     "Number of such molds that are shot in turn."},
};

static const struct result results_of_setting_time[] = {
    {"setting_time_s", NUMBER, 0, "s", 0, NULL,
     "Setting time. Unit: s."},
    {"setting_time_min_s", NUMBER, 0, "s", 0, NULL,
     "The same with the highest diffusivity of soft PVC. Unit: s."},
    {"setting_time_max_s", NUMBER, 0, "s", 0, NULL,
     "The same with the lowest. Unit: s."},
    {"warms_kelvin", NUMBER, 1, "K", 0, NULL,
     "How much one shot warms the mold, where its mass is given. Unit: K."},
    {"in_a_row", COUNT, 1, "1", 0, NULL,
     "Number of shots in a row before the mold is too warm, nothing lost between them; none where its mass is not given, or it goes on."},
    {"shot_every_s", NUMBER, 1, "s", 0, NULL,
     "Time from one shot to the next, where the working time is given. Unit: s."},
};

static int32_t call_setting_time(const struct argument *given, struct value *found, pour_error **error)
{
    pour_setting_time_input input = POUR_SETTING_TIME_INPUT_INIT;
    pour_setting_time_result result;
    int32_t status;

    input.section_shape = given[0].word;
    input.section_thickness_mm = given[1].number;
    input.shot_at_celsius = given[2].number;
    input.mold_at_celsius = given[3].number;
    input.take_out_celsius = given[4].number;
    input.piece_point = given[5].word;
    input.diffusivity_m2_per_s = given[6].number;
    input.shot_mass_g = given[7].number;
    input.shot_specific_heat_j_per_g_k = given[8].number;
    input.mold_mass_g = given[9].number;
    input.mold_specific_heat_j_per_g_k = given[10].number;
    input.hands_s = given[11].number;
    input.molds = given[12].count;
    status = pour_setting_time(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.setting_time_s;
    found[1].number = result.setting_time_min_s;
    found[2].number = result.setting_time_max_s;
    found[3].number = result.warms_kelvin;
    found[4].count = result.in_a_row;
    found[5].number = result.shot_every_s;
    return POUR_OK;
}

static const struct parameter parameters_of_stir_every[] = {
    {"grain_mm", NUMBER, 0, "mm", "mm", NULL, "0.001 to 50", NULL, NULL, 0,
     "Size of a grain of salt: the opening of a sieve that it just passes."},
    {"grain_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "True density of the grains, above that of the melt."},
    {"melt_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the melt, hot."},
    {"melt_depth_mm", NUMBER, 0, "mm", "mm", NULL, "0.1 to 10000", NULL, NULL, 0,
     "Depth of the melt in its cup."},
    {"melt_viscosity_min_mpa_s", NUMBER, 1, "mPa.s", "mPa.s", "50", "0.1 to 1e7", NULL, NULL, 0,
     "Lowest viscosity that the melt may have at shot temperature. Where none is known, the defaults of both span what such melts may have."},
    {"melt_viscosity_max_mpa_s", NUMBER, 1, "mPa.s", "mPa.s", "5000", "0.1 to 1e7", NULL, NULL, 0,
     "Highest viscosity that the melt may have at shot temperature, at least the lowest."},
    {"solids_share", NUMBER, 1, NULL, "1", "0", "0 to 0.4", NULL, NULL, 0,
     "Share of the grains in the volume; at 0 one grain alone."},
    {"unstirred", NUMBER, 1, NULL, "1", "0.1", "0.001 to 1", NULL, NULL, 0,
     "Share of the depth that may be without grains before it is stirred."},
};

static const struct result results_of_stir_every[] = {
    {"stir_every_s", NUMBER, 0, "s", 0, NULL,
     "How often to stir, to be safe: in the thinnest melt. Unit: s."},
    {"stir_every_max_s", NUMBER, 0, "s", 0, NULL,
     "How often is enough in the thickest melt. Unit: s."},
    {"settling_min_cm_per_s", NUMBER, 0, "cm/s", 0, NULL,
     "Speed of the grains in the thickest melt. Unit: cm/s."},
    {"settling_max_cm_per_s", NUMBER, 0, "cm/s", 0, NULL,
     "Speed of the grains in the thinnest melt. Unit: cm/s."},
};

static int32_t call_stir_every(const struct argument *given, struct value *found, pour_error **error)
{
    pour_stir_every_input input = POUR_STIR_EVERY_INPUT_INIT;
    pour_stir_every_result result;
    int32_t status;

    input.grain_mm = given[0].number;
    input.grain_density_g_per_ml = given[1].number;
    input.melt_density_g_per_ml = given[2].number;
    input.melt_depth_mm = given[3].number;
    input.melt_viscosity_min_mpa_s = given[4].number;
    input.melt_viscosity_max_mpa_s = given[5].number;
    input.solids_share = given[6].number;
    input.unstirred = given[7].number;
    status = pour_stir_every(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.stir_every_s;
    found[1].number = result.stir_every_max_s;
    found[2].number = result.settling_min_cm_per_s;
    found[3].number = result.settling_max_cm_per_s;
    return POUR_OK;
}

static const struct parameter parameters_of_viscosity_of_ball[] = {
    {"ball_diameter_mm", NUMBER, 0, "mm", "mm", NULL, "0.001 to 50", NULL, NULL, 0,
     "Diameter of the ball, much smaller than that of the vessel."},
    {"ball_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the ball: 7.8 g/mL of steel."},
    {"melt_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the melt, hot."},
    {"ball_depth_mm", NUMBER, 0, "mm", "mm", NULL, "1 to 10000", NULL, NULL, 0,
     "How deep the ball sank, let go below the surface."},
    {"ball_time_s", NUMBER, 0, "s", "s", NULL, "0.01 to 1e6", NULL, NULL, 0,
     "Time that the ball took."},
};

static const struct result results_of_viscosity_of_ball[] = {
    {"melt_viscosity_mpa_s", NUMBER, 0, "mPa.s", 0, NULL,
     "Viscosity of the melt. Unit: mPa.s."},
};

static int32_t call_viscosity_of_ball(const struct argument *given, struct value *found, pour_error **error)
{
    double result;
    int32_t status;

    status = pour_viscosity_of_ball(given[0].number, given[1].number, given[2].number, given[3].number, given[4].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result;
    return POUR_OK;
}

static const struct column columns_of_cavity_of_weights_weights_g[] = {{"piece_weight_g", "g"}};

static const struct parameter parameters_of_cavity_of_weights[] = {
    {"weights_g", LIST, 0, "g", "g", NULL, "2 to 100000", NULL, columns_of_cavity_of_weights_weights_g, 1,
     "Mass of each piece, one by one."},
    {"balance_readability_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest difference that the balance shows; without it there is no balance."},
    {"cold_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the finished plastic at 20 °C, without voids."},
    {"hot_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", "as cold_density_g_per_ml", "0.001 to 25", NULL, NULL, 0,
     "Melt density at shot temperature, without voids; at most the cold one."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"feed", NUMBER, 1, NULL, "1", "0.5", "0 to 1", NULL, NULL, 0,
     "Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full)."},
    {"feed_uncertainty", NUMBER, 1, NULL, "1", "0", "0 to 1", NULL, NULL, 0,
     "Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70 %)."},
};

static const struct result results_of_cavity_of_weights[] = {
    {"cavity_volume_ml", NUMBER, 0, "mL", 0, NULL,
     "Volume of the cavity. Unit: mL."},
    {"cavity_volume_uncertainty_ml", NUMBER, 0, "mL", 0, NULL,
     "Its standard uncertainty. Where the feed is not known, that of an even spread from 0 to 1 counts. Unit: mL."},
    {"mean_g", NUMBER, 0, "g", 0, NULL,
     "Mean of the weights. Unit: g."},
    {"deviation_g", NUMBER, 0, "g", 0, NULL,
     "Standard deviation of one. Unit: g."},
};

static int32_t call_cavity_of_weights(const struct argument *given, struct value *found, pour_error **error)
{
    pour_cavity_of_weights_input input = POUR_CAVITY_OF_WEIGHTS_INPUT_INIT;
    pour_cavity_of_weights_result result;
    int32_t status;

    input.weights_g = given[0].list;
    input.weights_count = given[0].rows;
    input.balance_readability_g = given[1].number;
    input.cold_density_g_per_ml = given[2].number;
    input.hot_density_g_per_ml = given[3].number;
    input.voids = given[4].number;
    input.feed = given[5].number;
    input.feed_uncertainty = given[6].number;
    status = pour_cavity_of_weights(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.cavity_volume_ml;
    found[1].number = result.cavity_volume_uncertainty_ml;
    found[2].number = result.mean_g;
    found[3].number = result.deviation_g;
    return POUR_OK;
}

static const struct column columns_of_feed_of_weights_weights_g[] = {{"piece_weight_g", "g"}};

static const struct parameter parameters_of_feed_of_weights[] = {
    {"weights_g", LIST, 0, "g", "g", NULL, "2 to 100000", NULL, columns_of_feed_of_weights_weights_g, 1,
     "Mass of each piece, one by one."},
    {"balance_readability_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest difference that the balance shows; without it there is no balance."},
    {"cold_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of the finished plastic at 20 °C, without voids."},
    {"cavity_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of one cavity."},
    {"hot_density_g_per_ml", NUMBER, 1, "g/mL", "g/mL", "as cold_density_g_per_ml", "0.001 to 25", NULL, NULL, 0,
     "Melt density at shot temperature, without voids; at most the cold one."},
    {"voids", NUMBER, 1, NULL, "1", "0", "0 to below 1", NULL, NULL, 0,
     "Void fraction: share of the volume that is air."},
    {"volume_uncertainty_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Standard uncertainty of the volume."},
};

static const struct result results_of_feed_of_weights[] = {
    {"feed", NUMBER, 0, "1", 0, NULL,
     "Feed share. Unit: 1."},
    {"feed_uncertainty", NUMBER, 0, "1", 0, NULL,
     "Its standard uncertainty. Unit: 1."},
    {"mean_g", NUMBER, 0, "g", 0, NULL,
     "Mean of the weights. Unit: g."},
    {"deviation_g", NUMBER, 0, "g", 0, NULL,
     "Standard deviation of one. Unit: g."},
};

static int32_t call_feed_of_weights(const struct argument *given, struct value *found, pour_error **error)
{
    pour_feed_of_weights_input input = POUR_FEED_OF_WEIGHTS_INPUT_INIT;
    pour_feed_of_weights_result result;
    int32_t status;

    input.weights_g = given[0].list;
    input.weights_count = given[0].rows;
    input.balance_readability_g = given[1].number;
    input.cold_density_g_per_ml = given[2].number;
    input.cavity_volume_ml = given[3].number;
    input.hot_density_g_per_ml = given[4].number;
    input.voids = given[5].number;
    input.volume_uncertainty_ml = given[6].number;
    status = pour_feed_of_weights(&input, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.feed;
    found[1].number = result.feed_uncertainty;
    found[2].number = result.mean_g;
    found[3].number = result.deviation_g;
    return POUR_OK;
}

static const struct column columns_of_drop_of_weighings_drops_weighed[] = {{"weighed_count", NULL}, {"weighed_mass_g", "g"}};

static const struct parameter parameters_of_drop_of_weighings[] = {
    {"drops_weighed", LIST, 0, NULL, NULL, NULL, "2 to 1000", NULL, columns_of_drop_of_weighings_drops_weighed, 2,
     "Drops that were counted and weighed together, each weighing started over."},
    {"balance_readability_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest difference that the balance shows; without it there is no balance."},
};

static const struct result results_of_drop_of_weighings[] = {
    {"drop_mass_g", NUMBER, 0, "g", 0, NULL,
     "Mass of one drop. Unit: g."},
    {"drop_mass_uncertainty_g", NUMBER, 0, "g", 0, NULL,
     "Its standard uncertainty. Unit: g."},
    {"scatter_g", NUMBER, 0, "g", 0, NULL,
     "Standard deviation of one drop against the next. Unit: g."},
};

static int32_t call_drop_of_weighings(const struct argument *given, struct value *found, pour_error **error)
{
    pour_drop_of_weighings_result result;
    int32_t status;

    status = pour_drop_of_weighings((const pour_drops_weighed_row *)(const void *)given[0].list, given[0].rows, given[1].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.drop_mass_g;
    found[1].number = result.drop_mass_uncertainty_g;
    found[2].number = result.scatter_g;
    return POUR_OK;
}

static const struct column columns_of_as_scooped_of_weighings_scoops_weighed[] = {{"weighed_count", NULL}, {"weighed_mass_g", "g"}};

static const struct parameter parameters_of_as_scooped_of_weighings[] = {
    {"scoops_weighed", LIST, 0, NULL, NULL, NULL, "2 to 1000", NULL, columns_of_as_scooped_of_weighings_scoops_weighed, 2,
     "Level spoonfuls that were counted and weighed together, each weighing started over."},
    {"spoon_volume_ml", NUMBER, 0, "mL", "mL", NULL, "1e-9 to 1e15", NULL, NULL, 0,
     "Volume of the level spoon."},
    {"balance_readability_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest difference that the balance shows; without it there is no balance."},
    {"volume_uncertainty_ml", NUMBER, 1, "mL", "mL", "0", "0 to 1e15", NULL, NULL, 0,
     "Standard uncertainty of the volume."},
};

static const struct result results_of_as_scooped_of_weighings[] = {
    {"as_scooped_g_per_ml", NUMBER, 0, "g/mL", 0, NULL,
     "Bulk density, level in the spoon. Unit: g/mL."},
    {"as_scooped_uncertainty_g_per_ml", NUMBER, 0, "g/mL", 0, NULL,
     "Its standard uncertainty. Unit: g/mL."},
    {"spoonful_g", NUMBER, 0, "g", 0, NULL,
     "Mass of one spoonful. Unit: g."},
};

static int32_t call_as_scooped_of_weighings(const struct argument *given, struct value *found, pour_error **error)
{
    pour_as_scooped_of_weighings_result result;
    int32_t status;

    status = pour_as_scooped_of_weighings((const pour_scoops_weighed_row *)(const void *)given[0].list, given[0].rows, given[1].number, given[2].number, given[3].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.as_scooped_g_per_ml;
    found[1].number = result.as_scooped_uncertainty_g_per_ml;
    found[2].number = result.spoonful_g;
    return POUR_OK;
}

static const struct column columns_of_residue_of_weighings_injector_weighed_g[] = {{"clean_mass_g", "g"}, {"emptied_mass_g", "g"}};

static const struct parameter parameters_of_residue_of_weighings[] = {
    {"injector_weighed_g", LIST, 0, "g", "g", NULL, "2 to 1000", NULL, columns_of_residue_of_weighings_injector_weighed_g, 2,
     "Weighings of the injector, each clean and then emptied as at work."},
    {"residue_density_g_per_ml", NUMBER, 0, "g/mL", "g/mL", NULL, "0.001 to 25", NULL, NULL, 0,
     "Density of what stays in the injector, at the temperature at which it is emptied; its uncertainty is counted."},
    {"balance_readability_g", NUMBER, 0, "g", "g", NULL, "1e-12 to 1e15", NULL, NULL, 0,
     "Smallest difference that the balance shows; without it there is no balance."},
    {"density_uncertainty_g_per_ml", NUMBER, 1, "g/mL", "g/mL", "0", "0 to 25", NULL, NULL, 0,
     "Standard uncertainty of the density of the piece; its bounds are counted at twice that."},
};

static const struct result results_of_residue_of_weighings[] = {
    {"injector_residue_ml", NUMBER, 0, "mL", 0, NULL,
     "Volume that stays in the injector. Unit: mL."},
    {"injector_residue_uncertainty_ml", NUMBER, 0, "mL", 0, NULL,
     "Its standard uncertainty. Unit: mL."},
    {"residue_mass_g", NUMBER, 0, "g", 0, NULL,
     "Its mass. Unit: g."},
};

static int32_t call_residue_of_weighings(const struct argument *given, struct value *found, pour_error **error)
{
    pour_residue_of_weighings_result result;
    int32_t status;

    status = pour_residue_of_weighings((const pour_injector_weighed_row *)(const void *)given[0].list, given[0].rows, given[1].number, given[2].number, given[3].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].number = result.injector_residue_ml;
    found[1].number = result.injector_residue_uncertainty_ml;
    found[2].number = result.residue_mass_g;
    return POUR_OK;
}

static const struct parameter parameters_of_price[] = {
    {"cost", COUNT, 0, NULL, "1", NULL, "0 to 1000000000", NULL, NULL, 0,
     "Cost, in the smallest unit of the currency: cents."},
    {"cost_margin", NUMBER, 0, NULL, "1", NULL, "0 to below 1", NULL, NULL, 0,
     "Share of the price that the shop keeps (a markup on the cost is another thing). Without it there is no price."},
};

static const struct result results_of_price[] = {
    {"price", COUNT, 0, "1", 0, NULL,
     "Price, in the smallest unit of the currency."},
};

static int32_t call_price(const struct argument *given, struct value *found, pour_error **error)
{
    uint32_t result;
    int32_t status;

    status = pour_price(given[0].count, given[1].number, &result, error);
    if (status != POUR_OK)
        return status;
    found[0].count = result;
    return POUR_OK;
}

const struct calculation pour_calculations[] = {
    {"pour_convert", 3, 2, 1, parameters_of_convert, results_of_convert, call_convert,
     "Converts an amount as a person writes it, such as 1 1/4 cup or 330 °F, exactly, and rounds once.\nA text that can be read two ways (6 oz, 1,25 cup) is refused with both readings in the message."},
    {"pour_convert_number", 4, 3, 1, parameters_of_convert_number, results_of_convert_number, call_convert_number,
     "Converts a number of one unit into another.\nUnits are known by trade symbol and by UCUM code: cup, [tsp_us], g/mL. Laws between units hold on bits: 48 tsp are 1 cup."},
    {"pour_dose_mass", 6, 2, 1, parameters_of_dose_mass, results_of_dose_mass, call_dose_mass,
     "Mass of an amount of a material, as a person writes it: 1/4 tsp, 40 drops, 12.5 g.\nA liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a drop is 1/20 mL (pharmacy practice)."},
    {"pour_mass_of_volume", 2, 2, 1, parameters_of_mass_of_volume, results_of_mass_of_volume, call_mass_of_volume,
     "Mass of a volume: m = ρV.\nThe density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid displaces in a mix it is its true density."},
    {"pour_volume_of_mass", 2, 2, 1, parameters_of_volume_of_mass, results_of_volume_of_mass, call_volume_of_mass,
     "Volume of a mass: V = m/ρ, with the densities of pour_mass_of_volume."},
    {"pour_density_of_parts", 2, 1, 1, parameters_of_density_of_parts, results_of_density_of_parts, call_density_of_parts,
     "Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.\nSolids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume."},
    {"pour_mix_share", 2, 2, 2, parameters_of_mix_share, results_of_mix_share, call_mix_share,
     "Share of one part in a mix, by mass and by true volume.\nMass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ)."},
    {"pour_salt_convert", 21, 6, 3, parameters_of_salt_convert, results_of_salt_convert, call_salt_convert,
     "States a salt loading another way.\nAll ways go through the mass of salt per mass of base; the equations are those of the module salt. In reach is all between no salt and the maximum that most_solids allows. Where a form that is about a piece needs the feed and it is not known, the bounds are those without feed and fed in full."},
    {"pour_salt_mass", 20, 5, 4, parameters_of_salt_mass, results_of_salt_mass, call_salt_mass,
     "Mass of salt for a loading, and of the softener that goes in with it."},
    {"pour_salt_reach", 19, 4, 2, parameters_of_salt_reach, results_of_salt_reach, call_salt_reach,
     "Salt loadings in reach: without salt, and with the maximum that most_solids allows."},
    {"pour_salt_for_density", 6, 4, 1, parameters_of_salt_for_density, results_of_salt_for_density, call_salt_for_density,
     "Mass of salt that brings a base alone to a finished density: pour_salt_mass in one form, with few numbers.\nm_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ)."},
    {"pour_salt_for_sink_rate", 27, 7, 3, parameters_of_salt_for_sink_rate, results_of_salt_for_sink_rate, call_salt_for_sink_rate,
     "Mass of salt at which a piece sinks at a rate.\nThe finished density is that for the sink rate (module process::sink), of the piece as it is when it has cooled; the salt is that for this density."},
    {"pour_shot_fill", 9, 3, 8, parameters_of_shot_fill, results_of_shot_fill, call_shot_fill,
     "Mass of one shot, and of its pieces.\nFill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in pour_piece_mass, as far as sprue and topping can feed it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and missing_mass is above 0. Of sprue and topping a layer fills its share."},
    {"pour_piece_mass", 5, 2, 3, parameters_of_piece_mass, results_of_piece_mass, call_piece_mass,
     "Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.\nWhile it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f is the shop's own. A sprue that cannot feed that much: see pour_shot_fill."},
    {"pour_shots", 4, 2, 2, parameters_of_shots, results_of_shots, call_shots,
     "Minimum number of shots for a number of good pieces.\nWithout rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence."},
    {"pour_injector_loads", 5, 4, 3, parameters_of_injector_loads, results_of_injector_loads, call_injector_loads,
     "Injector loads for a number of shots.\nWhole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉."},
    {"pour_batch_need", 13, 5, 11, parameters_of_batch_need, results_of_batch_need, call_batch_need,
     "Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.\ntotal = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel)."},
    {"pour_base_to_mark", 6, 4, 5, parameters_of_base_to_mark, results_of_base_to_mark, call_base_to_mark,
     "Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.\nThe doses follow from the rounded base, so that no formula is off."},
    {"pour_least_pot", 4, 2, 2, parameters_of_least_pot, results_of_least_pot, call_least_pot,
     "Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no less mix than oven and injector need."},
    {"pour_reject_rate", 3, 2, 3, parameters_of_reject_rate, results_of_reject_rate, call_reject_rate,
     "Reject rate from counted pieces, with the exact interval of a binomial share.\nClopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more."},
    {"pour_bench_measure", 9, 1, 9, parameters_of_bench_measure, results_of_bench_measure, call_bench_measure,
     "Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.\nA tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass from which one would."},
    {"pour_sink_rate", 15, 4, 7, parameters_of_sink_rate, results_of_sink_rate, call_sink_rate,
     "Sink rate of a piece with its hook: the final speed, a model value.\nBalance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the equations, sources and bounds are those of the module process::sink. motion is whether the model holds for such a piece at all. A drop that the shop timed (depth, time, density) replaces the published drag by the piece's own."},
    {"pour_density_for_sink_rate", 13, 4, 1, parameters_of_density_for_sink_rate, results_of_density_for_sink_rate, call_density_for_sink_rate,
     "Density at which a piece sinks at a rate: the finished density to salt for."},
    {"pour_hardness", 3, 3, 1, parameters_of_hardness, results_of_hardness, call_hardness,
     "Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.\nFritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore scales do not convert into each other (ASTM D2240): all points are on one."},
    {"pour_softener_ratio", 3, 3, 1, parameters_of_softener_ratio, results_of_softener_ratio, call_softener_ratio,
     "Ratio of softener or hardener for a hardness: the other way round."},
    {"pour_salted_softener", 2, 2, 1, parameters_of_salted_softener, results_of_salted_softener, call_salted_softener,
     "Extra softener for a salted body, between the shop's own points.\nSalt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone cubic answers, outside it refuses."},
    {"pour_water_density", 1, 1, 1, parameters_of_water_density, results_of_water_density, call_water_density,
     "Density of air-free water at 101.325 kPa, 0 to 40 °C.\nTanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative."},
    {"pour_cavity_of_water", 3, 2, 1, parameters_of_cavity_of_water, results_of_cavity_of_water, call_cavity_of_water,
     "Volume of a cavity from the reading of a balance for the water that it holds.\nCorrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787)."},
    {"pour_standard_pressure", 1, 1, 1, parameters_of_standard_pressure, results_of_standard_pressure, call_standard_pressure,
     "Air pressure of the standard atmosphere at an altitude.\nU.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %."},
    {"pour_station_pressure", 2, 2, 1, parameters_of_station_pressure, results_of_station_pressure, call_station_pressure,
     "Air pressure at the place itself from one that a weather report gives, reduced to sea level.\nUndoes the reduction by the standard atmosphere, which is the definition of an altimeter setting."},
    {"pour_swollen_volume", 8, 3, 3, parameters_of_swollen_volume, results_of_swollen_volume, call_swollen_volume,
     "Volume of a pot in a vacuum, with the air that it holds.\nBoyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge shows it or as the pressure that is left; with a gauge the lowest pressure counts that its tolerance allows."},
    {"pour_entrained_air", 7, 2, 1, parameters_of_entrained_air, results_of_entrained_air, call_entrained_air,
     "Share of air in a pot, from how high it was seen to rise in a vacuum.\nWith f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and after: φ/(1 − φ) = (f − 1)/(b₂ − f b₁)."},
    {"pour_degas_vessel", 11, 3, 5, parameters_of_degas_vessel, results_of_degas_vessel, call_degas_vessel,
     "Vessel for a pot in a vacuum, and how to fill one that is too small.\nThe pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer gives the level to fill to, on a mark where it has any, and the number of fills."},
    {"pour_flake_count", 4, 4, 2, parameters_of_flake_count, results_of_flake_count, call_flake_count,
     "Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the film.\nA = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller."},
    {"pour_flake_swap", 9, 7, 4, parameters_of_flake_swap, results_of_flake_swap, call_flake_swap,
     "Dose of another flake in place of one, with as much area or as many particles.\nThe two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives both."},
    {"pour_color_difference", 6, 6, 1, parameters_of_color_difference, results_of_color_difference, call_color_difference,
     "Difference of two colors in CIE L\\*a\\*b\\*: ΔE₀₀ (CIEDE2000).\nISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides."},
    {"pour_equivalent_time", 3, 3, 1, parameters_of_equivalent_time, results_of_equivalent_time, call_equivalent_time,
     "Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.\nBetween two readings the temperature is taken as straight. The activation energy is the supplier's; published ones of PVC are 117.5 to 170 kJ/mol."},
    {"pour_budget_left", 6, 2, 3, parameters_of_budget_left, results_of_budget_left, call_budget_left,
     "Heat budget that is left of a pot, in equivalent time at the reference temperature.\nMore stabilizer than the budget is stated for buys the extra time that its maker states; without that figure it is refused."},
    {"pour_heat_time", 11, 4, 4, parameters_of_heat_time, results_of_heat_time, call_heat_time,
     "Heating time of a pot in the oven, without a break, by the shop's own timings.\nt = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module process::heat). An amount of more than 1.6 times the timed ones is refused. Without timings the rated power gives a first guess."},
    {"pour_next_burst", 18, 5, 6, parameters_of_next_burst, results_of_next_burst, call_next_burst,
     "The next burst of the oven for a reading of the thermometer.\nNo burst can carry the pot over its window, by all the power that the timings make plausible and the error of the thermometer (module process::heat). Stir, read, and look up each burst by its reading. The system of measures gives the scale of the thermometer, on whole degrees of which the limits are."},
    {"pour_stays_hot", 9, 7, 4, parameters_of_stays_hot, results_of_stays_hot, call_stays_hot,
     "How long a pot stays hot, by a pot that was watched to cool.\nNewton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix than was watched cools faster (module process::heat)."},
    {"pour_pot_heats", 11, 2, 4, parameters_of_pot_heats, results_of_pot_heats, call_pot_heats,
     "The heats that the shots of a pot take, and how long they all take.\nA heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is heated again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot can be made every max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module process::clock)."},
    {"pour_setting_time", 13, 3, 6, parameters_of_setting_time, results_of_setting_time, call_setting_time,
     "How long a shot sets in a metal mold, and how often one can be made.\nThe first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold: t = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module process::shot_cooling). The mold is as warm as the shot leaves it, where its mass is given."},
    {"pour_stir_every", 8, 4, 4, parameters_of_stir_every, results_of_stir_every, call_stir_every,
     "How often to stir a melt with salt in it, and how fast the salt settles.\nDrag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that passes a sieve (module process::settling). Stir before the top share of the depth is without grains: t = share · depth/v."},
    {"pour_viscosity_of_ball", 5, 5, 1, parameters_of_viscosity_of_ball, results_of_viscosity_of_ball, call_viscosity_of_ball,
     "Viscosity of a melt, from a ball that was timed as it sank.\nThe drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module process::settling)."},
    {"pour_cavity_of_weights", 7, 3, 4, parameters_of_cavity_of_weights, results_of_cavity_of_weights, call_cavity_of_weights,
     "Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold − ρ_hot)])."},
    {"pour_feed_of_weights", 7, 4, 4, parameters_of_feed_of_weights, results_of_feed_of_weights, call_feed_of_weights,
     "Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot)."},
    {"pour_drop_of_weighings", 2, 2, 3, parameters_of_drop_of_weighings, results_of_drop_of_weighings, call_drop_of_weighings,
     "Mass of one drop from several weighings of many."},
    {"pour_as_scooped_of_weighings", 4, 3, 3, parameters_of_as_scooped_of_weighings, results_of_as_scooped_of_weighings, call_as_scooped_of_weighings,
     "Bulk density of a powder from several weighings of level spoonfuls."},
    {"pour_residue_of_weighings", 4, 3, 3, parameters_of_residue_of_weighings, results_of_residue_of_weighings, call_residue_of_weighings,
     "Volume that stays in an injector, from weighings of it clean and then emptied as at work."},
    {"pour_price", 2, 2, 1, parameters_of_price, results_of_price, call_price,
     "Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop keeps.\nprice = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in binary fractions. Costs of materials, work and packing with their packages and currencies: the request cost."},
};

const int pour_calculation_count = 51;
