/* pourwright: recipe-formula and batch maths for workshops that pour soft plastic to order.
 *
 * Made by cbindgen from the crate in ffi/; do not edit.
 *
 * THE CONTRACT OF EVERY CALL
 *
 * Names and units. Everything begins with pour_ or POUR_. The last part of a number's name is its unit: _g, _ml,
 * _g_per_ml, _celsius, ...; a share or a ratio is a pure number, 0.05 for 5 %, and has none. Names, ranges and defaults of
 * calculations are those of core/CALCULATIONS.md.
 *
 * Statuses. A call that can fail returns an int32_t: POUR_OK (0), or one of the statuses below. Their numbers are
 * never reused, and later versions may add some: treat an unknown one as a failure.
 *
 * Results. A call writes its results through pointers, and only when it returns POUR_OK: after a failure they hold
 * what they held. A pointer to a result must not be null, unless said. Two pointers of one call must not overlap,
 * unless said.
 *
 * Omitted parameters. A number that is omitted is POUR_OMITTED (-DBL_MAX), and 0 is the number 0. An omitted count is
 * POUR_OMITTED_COUNT, an omitted word 0, an omitted text NULL, an omitted list NULL with a count of 0. What then counts is
 * the default that the comment states; a parameter without a default must be given. A calculation with many parameters
 * takes them in a struct: begin it with its macro, in which everything is omitted.
 *
 *     pour_shot_fill_input shot = POUR_SHOT_FILL_INPUT_INIT;
 *     shot.cavities = 4;
 *
 * Words. A word is the number of its constant: POUR_FORM_OF_BASE, POUR_MEASURES_METRIC, ...
 *
 * Errors. The last parameter, `pour_error **error`, may be null. If it is not, a failed call writes a new error there:
 * one fault or more, each with code, path, message and help. Free it by pour_error_free. A successful call leaves
 * it alone, so set it to NULL before. No error is kept in the library or in the thread: what failed is what the call
 * says. The codes are stable; they are listed in core/ERRORS.md, and those of this border are: null-pointer, not-utf8,
 * too-large, misaligned, output-stride, outside-conversion, mix-no-such-material, material-name-twice, mix-into-itself,
 * mix-other-materials, panic.
 *
 * Ownership. What a call takes it copies, or has done with when it returns; it never frees what is the host's. A
 * handle (pour_book, pour_plan, pour_mix, pour_error) is made by a call, belongs to the host, and is freed once by its
 * _free; no other call may be running on it then. Handles do not depend on each other: a plan outlives its book. A
 * text that a call gives out is freed by pour_string_free, and never by free(). The texts of an error live as long as
 * the error. Every _free takes null and does nothing.
 *
 * Pointers. Null, where it is not allowed, is POUR_NULL. Any other pointer must be what the parameter says, aligned,
 * and valid for the call; the library cannot see whether a handle was freed or is something else. Columns, and only
 * they, may begin at any address.
 *
 * Texts. UTF-8. Names, amounts and units end with a NUL and have at most 4096 bytes. Documents have a length in
 * bytes, at most 16 MiB, and need no NUL. Invalid UTF-8 is POUR_NOT_UTF8, a longer text POUR_TOO_LARGE. What a call
 * gives out ends with a NUL, and has none inside.
 *
 * Numbers. NaN and infinity are POUR_NOT_FINITE. Other numbers that are refused are POUR_REFUSED. All numbers of a call
 * that are out of their ranges are faults of one error, each with the path of its parameter, /voids or /parts/3/1 (row 3,
 * second column, counted from 0), and with a message that says what was passed and what is allowed. What the calculation
 * itself refuses has a code of its own, and the path of the parameter that would have to change.
 *
 * Columns. A call that ends in _n does for `rows` rows what the call without it does once. A column is a pointer and a
 * stride: the distance from one number to the next in bytes, 8 for a plain array of doubles, negative or odd if need be; 0
 * repeats one number for all rows. A parameter that may be omitted may have no column, a null pointer; in single rows it is
 * omitted by POUR_OMITTED. A count is a whole number. A result whose column is a null pointer is not written. Results do
 * not overlap: where there is more than one row, a stride between -8 and 8 is POUR_REFUSED. A result may replace a column
 * that has the same address and stride; otherwise they must not overlap. A row that is refused is NaN, always the same one
 * (bits 7ff8000000000000), and the call still returns POUR_OK; if `statuses` is not null, it is a plain, aligned array of
 * `rows` int32_t that receives the status of each row. A call without refused rows allocates nothing. With rows = 0 any
 * pointer to numbers may be null.
 *
 * Threads. Any call may run on any thread, at any time, with handles of its own. One book, plan or error may be used
 * by many threads at once. One mix is used by one thread at a time. No call waits for another.
 *
 * Panics. None crosses this border: a defect of the library returns POUR_PANIC. Please report it.
 *
 * Floating point. The library calculates with round to nearest, subnormals and no traps, whatever the host has set,
 * and puts back what it found: modes and exception flags are after a call as before it. The same input gives the
 * same bits on every machine and through every door.
 *
 * Quiet. Nothing is printed, no file or variable of the environment is read, no signal handler, no thread. There is no
 * state that one call leaves for another, but for the handles.
 *
 * Versions. pour_abi_version() must equal POUR_ABI_VERSION; compare them once, after loading. Functions and
 * statuses are added without raising it. pour_version() is the version of the library itself.
 *
 * SAFETY AT THE BENCH. Hot plastisol sticks and burns deep, its fumes need ventilation, a drop of water in a mold
 * erupts. Plans and answers carry cautions: show them to the person who pours.
 */

#ifndef POURWRIGHT_H
#define POURWRIGHT_H

#include <stddef.h>
#include <stdint.h>
/* Stands for a number that is omitted: -DBL_MAX, which is in no range. */
#define POUR_OMITTED (-1.7976931348623157e308)
/* A pour_material in which everything is omitted. */
#define POUR_MATERIAL_INIT \
    { NULL, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0 }
/* A pour_salt_convert_input in which everything is omitted. */
#define POUR_SALT_CONVERT_INPUT_INIT \
    { POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0, POUR_OMITTED, 0, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_shot_fill_input in which everything is omitted. */
#define POUR_SHOT_FILL_INPUT_INIT \
    { POUR_OMITTED_COUNT, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_bench_measure_input in which everything is omitted. */
#define POUR_BENCH_MEASURE_INPUT_INIT \
    { POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, NULL, 0, NULL, 0, \
      POUR_OMITTED, POUR_OMITTED }


// The version of this interface. It goes up when a program that was compiled against an older header
// could no longer run with this library; new functions and new status numbers do not raise it.
#define POUR_ABI_VERSION 0

// The call did what it says; its results are written.
#define POUR_OK 0

// A pointer is null that must not be.
#define POUR_NULL 1

// A number is NaN or infinite.
#define POUR_NOT_FINITE 2

// A text is not valid UTF-8.
#define POUR_NOT_UTF8 3

// A text, an array or a stride is larger than is believed.
#define POUR_TOO_LARGE 4

// A number that stands for a word (a measuring system, a scale, ...) stands for none.
#define POUR_UNKNOWN_NUMBER 5

// The numbers or documents do not go together; the faults say what is wrong, where, and what would do.
#define POUR_REFUSED 6

// A defect of the library, which it survived. Please report it. Free the handles of the call, and use them no more.
#define POUR_PANIC 7

// An array does not begin where its items can lie.
#define POUR_MISALIGNED 8

// Stands for a count that is omitted: UINT32_MAX.
#define POUR_OMITTED_COUNT 4294967295

// Of `alike`: count.
#define POUR_ALIKE_COUNT 1

// Of `alike`: area.
#define POUR_ALIKE_AREA 2

// Of `form`: as-scooped.
#define POUR_FORM_AS_SCOOPED 1

// Of `form`: per-volume.
#define POUR_FORM_PER_VOLUME 2

// Of `form`: of-base.
#define POUR_FORM_OF_BASE 3

// Of `form`: of-finished.
#define POUR_FORM_OF_FINISHED 4

// Of `form`: finished-density.
#define POUR_FORM_FINISHED_DENSITY 5

// Of `form`: piece-mass.
#define POUR_FORM_PIECE_MASS 6

// Of `form`: sink-density.
#define POUR_FORM_SINK_DENSITY 7

// Of `kind`: plastisol.
#define POUR_KIND_PLASTISOL 1

// Of `kind`: softener.
#define POUR_KIND_SOFTENER 2

// Of `kind`: hardener.
#define POUR_KIND_HARDENER 3

// Of `kind`: stabilizer.
#define POUR_KIND_STABILIZER 4

// Of `kind`: colorant.
#define POUR_KIND_COLORANT 5

// Of `kind`: pearl.
#define POUR_KIND_PEARL 6

// Of `kind`: flake.
#define POUR_KIND_FLAKE 7

// Of `kind`: salt.
#define POUR_KIND_SALT 8

// Of `kind`: scent.
#define POUR_KIND_SCENT 9

// Of `kind`: other.
#define POUR_KIND_OTHER 10

// Of `measures`: us-customary.
#define POUR_MEASURES_US_CUSTOMARY 1

// Of `measures`: us-label.
#define POUR_MEASURES_US_LABEL 2

// Of `measures`: metric.
#define POUR_MEASURES_METRIC 3

// Of `measures`: imperial.
#define POUR_MEASURES_IMPERIAL 4

// Of `phase`: liquid.
#define POUR_PHASE_LIQUID 1

// Of `phase`: fused.
#define POUR_PHASE_FUSED 2

// Of `scale`: shore-00.
#define POUR_SCALE_SHORE_00 1

// Of `scale`: shore-a.
#define POUR_SCALE_SHORE_A 2

// Of `tool`: balance.
#define POUR_TOOL_BALANCE 1

// Of `tool`: cup.
#define POUR_TOOL_CUP 2

// Of `tool`: spoons.
#define POUR_TOOL_SPOONS 3

// Of `tool`: drops.
#define POUR_TOOL_DROPS 4

// A shop's book, ready for planning.
//
// It never changes, and any number of threads may use it at once. What is made from it lives on when it is freed.
typedef struct pour_book pour_book;

// What is wrong with a call: one fault or more, the first found first.
//
// A failed call makes it, the host reads it by `pour_error_...` and frees it by `pour_error_free`. Its texts live
// as long as it does. Several threads may read it at once.
typedef struct pour_error pour_error;

// Masses of materials in one vessel: the conserved thing that all maths works on.
//
// One thread at a time may use it; it may move from one to another.
typedef struct pour_mix pour_mix;

// A day's plan. It never changes, and any number of threads may use it at once.
typedef struct pour_plan pour_plan;

// A column of numbers. Null is no column: the parameter is omitted in every row.
typedef struct pour_column {
    // The number of the first row.
    const double *start;
    // From one number to the next, in bytes: 8 for a plain array, 0 to repeat one number.
    ptrdiff_t stride;
} pour_column;

// The columns of `pour_mass_of_volume_n`: the parameters of `pour_mass_of_volume`. Set all to 0 first: a
// parameter that may be omitted has no column then. A word counts for all rows.
typedef struct pour_mass_of_volume_columns {
    // Volume.
    struct pour_column volume_ml;
    // Density, without voids.
    struct pour_column density_g_per_ml;
} pour_mass_of_volume_columns;

// A column that receives results. Null is no column: that result is not written.
typedef struct pour_result_column {
    // The place of the first row.
    double *start;
    // From one place to the next, in bytes: 8 for a plain array.
    ptrdiff_t stride;
} pour_result_column;

// Where `pour_mass_of_volume_n` writes its results. Set all to 0 first: what has no column is not written.
typedef struct pour_mass_of_volume_result_columns {
    // The mass. Unit: g.
    struct pour_result_column mass_g;
} pour_mass_of_volume_result_columns;

// One row of `parts`. The parts of the mix: of each its mass and its true density. At least one has a mass
// above 0.
typedef struct pour_parts_row {
    // Mass of one part of a mix. Unit: g; 0 to 1e15.
    double part_mass_g;
    // True density of one part of a mix. Unit: g/mL; 0.001 to 25.
    double part_density_g_per_ml;
} pour_parts_row;

// The input of `pour_salt_convert`. Begin with `POUR_SALT_CONVERT_INPUT_INIT`, in which everything is omitted.
typedef struct pour_salt_convert_input {
    // Volume of the base, cold and liquid, as a cup measures it. Unit: mL; above 0 to 1e15.
    double base_volume_ml;
    // Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25.
    double base_density_g_per_ml;
    // True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25.
    double salt_density_g_per_ml;
    // The way in which the salt loading is stated. One of `POUR_FORM_...`.
    int32_t form;
    // The salt loading, as its form states it. Unit: any; in the unit of its form.
    double loading;
    // The way in which the loading is to be stated. One of `POUR_FORM_...`.
    int32_t to_form;
    // Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; above 0 to 1e15.
    // Default: the mass of its base.
    double mix_mass_g;
    // Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; above 0 to 1e15. Default: as
    // `base_volume_ml`.
    double mix_volume_ml;
    // Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; above 0 to 1e15.
    // Default: as `mix_volume_ml`.
    double hot_volume_ml;
    // Temperature at which the mix is shot. Unit: °C; 20 to 400. Default: 20.
    double shot_temperature_celsius;
    // Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
    double voids;
    // Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
    // it. Unit: g/mL; 0.001 to 25. Default: none.
    double salt_as_scooped_g_per_ml;
    // Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0.
    double salt_expansion_per_kelvin;
    // Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0.
    double softener_per_salt;
    // Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default:
    // none.
    double softener_density_g_per_ml;
    // Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0.
    double softener_expansion_per_kelvin;
    // Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3.
    double most_solids;
    // Volume of one cavity. Unit: mL; above 0 to 1e15. It may be omitted.
    double cavity_volume_ml;
    // Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    // counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
    // Default: 0.5.
    double feed;
    // Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0.
    double hook_mass_g;
    // Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0.
    double hook_volume_ml;
} pour_salt_convert_input;

// The results of `pour_salt_convert`.
typedef struct pour_salt_convert_result {
    // The loading as `to_form` states it, in the unit of that form.
    double loading;
    // Its lower bound where the feed matters and is not known; else the loading.
    double loading_min;
    // Its upper bound where the feed matters and is not known; else the loading.
    double loading_max;
} pour_salt_convert_result;

// The columns of `pour_salt_convert_n`: the parameters of `pour_salt_convert`. Set all to 0 first: a parameter
// that may be omitted has no column then. A word counts for all rows.
typedef struct pour_salt_convert_columns {
    // Volume of the base, cold and liquid, as a cup measures it.
    struct pour_column base_volume_ml;
    // Density of the base, cold and liquid, as a cup measures it.
    struct pour_column base_density_g_per_ml;
    // True density of the salt: 2.165 g/mL for sodium chloride.
    struct pour_column salt_density_g_per_ml;
    // The way in which the salt loading is stated. One of `POUR_FORM_...`.
    int32_t form;
    // The salt loading, as its form states it.
    struct pour_column loading;
    // The way in which the loading is to be stated. One of `POUR_FORM_...`.
    int32_t to_form;
    // Mass of the mix before salt; at least that of its base. Give its volume too. May be omitted.
    struct pour_column mix_mass_g;
    // Volume of the mix before salt at 20 °C. Give its mass too. May be omitted.
    struct pour_column mix_volume_ml;
    // Volume of the mix before salt at shot temperature; at least the cold one. May be omitted.
    struct pour_column hot_volume_ml;
    // Temperature at which the mix is shot. May be omitted.
    struct pour_column shot_temperature_celsius;
    // Void fraction: share of the volume that is air. May be omitted.
    struct pour_column voids;
    // Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
    // it. May be omitted.
    struct pour_column salt_as_scooped_g_per_ml;
    // Volumetric thermal expansion of the salt. May be omitted.
    struct pour_column salt_expansion_per_kelvin;
    // Softener that goes in with the salt, mass per mass of salt. May be omitted.
    struct pour_column softener_per_salt;
    // Density of the softener that goes in with the salt; needed with it. May be omitted.
    struct pour_column softener_density_g_per_ml;
    // Volumetric thermal expansion of that softener. May be omitted.
    struct pour_column softener_expansion_per_kelvin;
    // Maximum share of salt in the finished mix, by true volume. May be omitted.
    struct pour_column most_solids;
    // Volume of one cavity. May be omitted.
    struct pour_column cavity_volume_ml;
    // Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    // counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted.
    struct pour_column feed;
    // Mass of hook and weight on a piece; give its volume too. May be omitted.
    struct pour_column hook_mass_g;
    // Volume that hook and weight displace; give their mass too. May be omitted.
    struct pour_column hook_volume_ml;
} pour_salt_convert_columns;

// Where `pour_salt_convert_n` writes its results. Set all to 0 first: what has no column is not written.
typedef struct pour_salt_convert_result_columns {
    // The loading as `to_form` states it, in the unit of that form.
    struct pour_result_column loading;
    // Its lower bound where the feed matters and is not known; else the loading.
    struct pour_result_column loading_min;
    // Its upper bound where the feed matters and is not known; else the loading.
    struct pour_result_column loading_max;
} pour_salt_convert_result_columns;

// The input of `pour_shot_fill`. Begin with `POUR_SHOT_FILL_INPUT_INIT`, in which everything is omitted.
typedef struct pour_shot_fill_input {
    // Number of cavities that a shot fills. 1 to 1000000.
    uint32_t cavities;
    // Volume of one cavity. Unit: mL; above 0 to 1e15.
    double cavity_volume_ml;
    // Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
    double cold_density_g_per_ml;
    // Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default:
    // as `cold_density_g_per_ml`.
    double hot_density_g_per_ml;
    // Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
    double voids;
    // Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    // counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
    // Default: 0.5.
    double feed;
    // Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0.
    double sprue_volume_ml;
    // Mass that topping off and holding add. Unit: g; 0 to 1e15. Default: 0.
    double topped_mass_g;
    // Share of the cavity that this layer of a laminated piece fills. Unit: 1; above 0 to 1. Default: 1.
    double layer_share;
} pour_shot_fill_input;

// The results of `pour_shot_fill`.
typedef struct pour_shot_fill_result {
    // Mass of one shot, topping included. Unit: g.
    double shot_mass_g;
    // Mass of all its pieces. Unit: g.
    double pieces_mass_g;
    // Mass that is left as sprue once the pieces have been fed. Unit: g.
    double sprue_mass_g;
    // Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.
    double missing_mass_g;
    // Mass of one piece, or of the layer in it. Unit: g.
    double piece_mass_g;
    // The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    double piece_mass_min_g;
    // The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece.
    // Unit: g.
    double piece_mass_max_g;
    // Share of the contraction that was fed. Unit: 1.
    double fed;
} pour_shot_fill_result;

// The columns of `pour_shot_fill_n`: the parameters of `pour_shot_fill`. Set all to 0 first: a parameter that
// may be omitted has no column then. A word counts for all rows.
typedef struct pour_shot_fill_columns {
    // Number of cavities that a shot fills.
    struct pour_column cavities;
    // Volume of one cavity.
    struct pour_column cavity_volume_ml;
    // Density of the finished plastic at 20 °C, without voids.
    struct pour_column cold_density_g_per_ml;
    // Melt density at shot temperature, without voids; at most the cold one. May be omitted.
    struct pour_column hot_density_g_per_ml;
    // Void fraction: share of the volume that is air. May be omitted.
    struct pour_column voids;
    // Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    // counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted.
    struct pour_column feed;
    // Volume of the sprue. May be omitted.
    struct pour_column sprue_volume_ml;
    // Mass that topping off and holding add. May be omitted.
    struct pour_column topped_mass_g;
    // Share of the cavity that this layer of a laminated piece fills. May be omitted.
    struct pour_column layer_share;
} pour_shot_fill_columns;

// Where `pour_shot_fill_n` writes its results. Set all to 0 first: what has no column is not written.
typedef struct pour_shot_fill_result_columns {
    // Mass of one shot, topping included. Unit: g.
    struct pour_result_column shot_mass_g;
    // Mass of all its pieces. Unit: g.
    struct pour_result_column pieces_mass_g;
    // Mass that is left as sprue once the pieces have been fed. Unit: g.
    struct pour_result_column sprue_mass_g;
    // Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.
    struct pour_result_column missing_mass_g;
    // Mass of one piece, or of the layer in it. Unit: g.
    struct pour_result_column piece_mass_g;
    // The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    struct pour_result_column piece_mass_min_g;
    // The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece.
    // Unit: g.
    struct pour_result_column piece_mass_max_g;
    // Share of the contraction that was fed. Unit: 1.
    struct pour_result_column fed;
} pour_shot_fill_result_columns;

// The results of `pour_piece_mass`.
typedef struct pour_piece_mass_result {
    // Mass of the piece. Unit: g.
    double piece_mass_g;
    // The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    double piece_mass_min_g;
    // The same fed in full where the feed is not known; else the mass of the piece. Unit: g.
    double piece_mass_max_g;
} pour_piece_mass_result;

// The columns of `pour_piece_mass_n`: the parameters of `pour_piece_mass`. Set all to 0 first: a parameter
// that may be omitted has no column then. A word counts for all rows.
typedef struct pour_piece_mass_columns {
    // Volume of one cavity.
    struct pour_column cavity_volume_ml;
    // Density of the finished plastic at 20 °C, without voids.
    struct pour_column cold_density_g_per_ml;
    // Melt density at shot temperature, without voids; at most the cold one. May be omitted.
    struct pour_column hot_density_g_per_ml;
    // Void fraction: share of the volume that is air. May be omitted.
    struct pour_column voids;
    // Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
    // counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted.
    struct pour_column feed;
} pour_piece_mass_columns;

// Where `pour_piece_mass_n` writes its results. Set all to 0 first: what has no column is not written.
typedef struct pour_piece_mass_result_columns {
    // Mass of the piece. Unit: g.
    struct pour_result_column piece_mass_g;
    // The same without feed where the feed is not known; else the mass of the piece. Unit: g.
    struct pour_result_column piece_mass_min_g;
    // The same fed in full where the feed is not known; else the mass of the piece. Unit: g.
    struct pour_result_column piece_mass_max_g;
} pour_piece_mass_result_columns;

// One row of `cups`. The cups with evenly spaced marks: of each the distance between marks and the capacity.
typedef struct pour_cups_row {
    // Distance between the marks of the cup. Unit: mL; above 0 to 1e15. Default: one mark alone, for the
    // amount of base.
    double cup_mark_ml;
    // Volume of the cup up to its last mark. Unit: mL; above 0 to 1e15.
    double cup_capacity_ml;
} pour_cups_row;

// The input of `pour_bench_measure`. Begin with `POUR_BENCH_MEASURE_INPUT_INIT`, in which everything is
// omitted.
typedef struct pour_bench_measure_input {
    // Mass to measure. Unit: g; above 0 to 1e15.
    double mass_to_measure_g;
    // Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05.
    double tolerance;
    // Smallest difference that the balance shows; without it there is no balance. Unit: g; above 0 to 1e15.
    // Default: none.
    double balance_readability_g;
    // Maximum that the balance weighs at once. Unit: g; above 0 to 1e15. Default: 5000 times its readability.
    double balance_capacity_g;
    // Minimum load for which the balance is trusted. Unit: g; 0 to 1e15. Default: 0.
    double balance_least_load_g;
    // Volumes of the measuring spoons. 1 to 8 of them. Default: none.
    const double *spoons_ml;
    // Number of `spoons_ml`.
    size_t spoons_count;
    // The cups with evenly spaced marks: of each the distance between marks and the capacity. 1 to 64 of them.
    // Default: none.
    const struct pour_cups_row *cups;
    // Number of `cups`.
    size_t cups_count;
    // Density of the material in a measure: of a liquid its density, of a powder its bulk density, level and
    // not tapped. Unit: g/mL; 0.001 to 25. Default: none.
    double as_measured_density_g_per_ml;
    // Mass of one drop. Unit: g; above 0 to 1e15. Default: none.
    double drop_mass_g;
} pour_bench_measure_input;

// The results of `pour_bench_measure`.
typedef struct pour_bench_measure_result {
    // Mass that it gives. Unit: g.
    double mass_g;
    // (given − needed)/needed. Unit: 1.
    double deviation;
    // The tool: balance, cup, spoons or drops. `POUR_TOOL_BALANCE`, `POUR_TOOL_CUP`, `POUR_TOOL_SPOONS`,
    // `POUR_TOOL_DROPS`.
    int32_t tool;
    // Amount of handling: readings, fillings, spoonfuls, tens of drops.
    uint32_t acts;
    // Number of drops.
    uint32_t drops;
    // Number of level spoonfuls of each spoon, in the order of the spoons.
    uint32_t spoonfuls[8];
    // Which cup, counted from 1; 0 without one.
    uint32_t cup;
    // Number of times that cup is filled to its last mark.
    uint32_t cup_fillings;
    // Mark to which it is filled once more, counted from 1; 0 where it is not.
    uint32_t cup_mark;
} pour_bench_measure_result;

// The way from one unit to another, prepared once for many numbers: y = (x · times + plus) / over.
//
// Plain data, made by `pour_conversion_between`: it may be copied, and used by several threads.
typedef struct pour_conversion {
    // Factor.
    double times;
    // 0, but between scales of temperature.
    double plus;
    // Divisor.
    double over;
    // The least x that is accepted: 0, or absolute zero.
    double least;
} pour_conversion;

// A table of numbers: rows by parts.
typedef struct pour_table {
    // The number of the first part of the first row.
    const double *start;
    // From one row to the next, in bytes; 0 where every row is the same.
    ptrdiff_t row_stride;
    // From one part of a row to the next, in bytes.
    ptrdiff_t part_stride;
} pour_table;

// A material. Begin with `POUR_MATERIAL_INIT`, in which everything is omitted: what is omitted is not known.
typedef struct pour_material {
    // Its name, ended by a NUL. It is copied.
    const char *name;
    // True density at 20 °C; of a plastisol, that of the liquid.
    double density_g_per_ml;
    // Density of a fused plastisol. Default: as the liquid.
    double fused_g_per_ml;
    // Bulk density of a powder, level in the spoon and not tapped.
    double as_scooped_g_per_ml;
    // Mass of one drop of a liquid. Default: 1/20 mL of it (pharmacy practice).
    double drop_mass_g;
    // Volumetric thermal expansion. Default: none.
    double expansion_per_kelvin;
    // What it is for: one of `POUR_KIND_...`.
    int32_t kind;
} pour_material;

#ifdef __cplusplus
extern "C" {
#endif // __cplusplus

// The [`POUR_ABI_VERSION`] of the library that is loaded. A host compares it with that of its header.
uint32_t pour_abi_version(void);

// The version of the library that is loaded, such as `"0.1.0"`. The text belongs to the library: it is never freed.
const char *pour_version(void);

// The status that the call returned; `POUR_OK` for null.
int32_t pour_error_status(const struct pour_error *error);

// How many faults there are: 1 or more, 0 for null.
size_t pour_error_count(const struct pour_error *error);

// The stable code of a fault, such as `"salt-out-of-reach"`; null for an index beyond the last.
const char *pour_error_code(const struct pour_error *error, size_t index);

// Where a fault is, as a JSON Pointer (RFC 6901): into the document, or `/parameter` of the call. Empty for the
// whole input; null for an index beyond the last.
const char *pour_error_path(const struct pour_error *error,
                            size_t index);

// What was found, as a sentence; null for an index beyond the last.
const char *pour_error_message(const struct pour_error *error, size_t index);

// What would do, as a sentence; null for an index beyond the last.
const char *pour_error_help(const struct pour_error *error, size_t index);

// All faults as text to show, one a line; null for null.
const char *pour_error_text(const struct pour_error *error);

// All faults as JSON, `{"faults":[{"code":...,"path":...,"message":...,"help":...}]}`; null for null.
const char *pour_error_json(const struct pour_error *error);

// Frees an error with all its texts. Null is let pass.
void pour_error_free(struct pour_error *error);

// Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
//
// What can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
//
// `amount`: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a temperature
// above absolute zero.
// `to`: The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
// `measures`: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One
// of `POUR_MEASURES_...`; 0 omits it.
//
// `value` receives: The number, in the unit of `to`.
int32_t pour_convert(const char *amount,
                     const char *to,
                     int32_t measures,
                     double *value,
                     struct pour_error **error);

// Mass of a volume: m = ρV.
//
// The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid
// displaces in a mix it is its true density.
//
// `volume_ml`: Volume. Unit: mL; 0 to 1e15.
// `density_g_per_ml`: Density, without voids. Unit: g/mL; 0.001 to 25.
//
// `mass_g` receives: The mass. Unit: g.
int32_t pour_mass_of_volume(double volume_ml,
                            double density_g_per_ml,
                            double *mass_g,
                            struct pour_error **error);

// `pour_mass_of_volume` for every row.
int32_t pour_mass_of_volume_n(size_t rows,
                              const struct pour_mass_of_volume_columns *columns,
                              const struct pour_mass_of_volume_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);

// Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
//
// Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
//
// `parts`: The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1 to
// 1000 of them.
// `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
//
// `density_g_per_ml` receives: Density of the mix, voids counted. Unit: g/mL.
int32_t pour_density_of_parts(const struct pour_parts_row *parts,
                              size_t parts_count,
                              double voids,
                              double *density_g_per_ml,
                              struct pour_error **error);

// States a salt loading another way.
//
// All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In
// reach is what lies between no salt and the maximum that `most_solids` allows. Where a form that is about a
// piece needs the feed and it is not known, the bounds are those without feed and fed in full.
int32_t pour_salt_convert(const struct pour_salt_convert_input *input,
                          struct pour_salt_convert_result *result,
                          struct pour_error **error);

// `pour_salt_convert` for every row.
int32_t pour_salt_convert_n(size_t rows,
                            const struct pour_salt_convert_columns *columns,
                            const struct pour_salt_convert_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);

// Mass of one shot, and of its pieces.
//
// Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `pour_piece_mass`, as far as sprue and topping can
// feed it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is above 0.
int32_t pour_shot_fill(const struct pour_shot_fill_input *input,
                       struct pour_shot_fill_result *result,
                       struct pour_error **error);

// `pour_shot_fill` for every row.
int32_t pour_shot_fill_n(size_t rows,
                         const struct pour_shot_fill_columns *columns,
                         const struct pour_shot_fill_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);

// Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
//
// While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f
// is the shop's own. A sprue that cannot feed that much: see `pour_shot_fill`.
//
// `cavity_volume_ml`: Volume of one cavity. Unit: mL; above 0 to 1e15.
// `cold_density_g_per_ml`: Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
// `hot_density_g_per_ml`: Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL;
// 0.001 to 25. Default: as `cold_density_g_per_ml`.
// `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
// `feed`: Share of its contraction that a piece draws from the sprue while it cools. Where it is not known,
// 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
// Default: 0.5.
int32_t pour_piece_mass(double cavity_volume_ml,
                        double cold_density_g_per_ml,
                        double hot_density_g_per_ml,
                        double voids,
                        double feed,
                        struct pour_piece_mass_result *result,
                        struct pour_error **error);

// `pour_piece_mass` for every row.
int32_t pour_piece_mass_n(size_t rows,
                          const struct pour_piece_mass_columns *columns,
                          const struct pour_piece_mass_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);

// Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
//
// A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help says from what
// mass on one would.
int32_t pour_bench_measure(const struct pour_bench_measure_input *input,
                           struct pour_bench_measure_result *result,
                           struct pour_error **error);

// Prepares the conversion between two units, each by trade symbol or UCUM code: `"cup"`, `"[tsp_us]"`, `"g/mL"`.
//
// `measures` (`POUR_MEASURES_METRIC`, ...; 0 for US customary) says what a cup, a spoon and a fluid ounce hold where a
// unit does not. `POUR_REFUSED` for a text that is not a unit, can be read as several, or measures something else.
int32_t pour_conversion_between(const char *from,
                                const char *to,
                                int32_t measures,
                                struct pour_conversion *conversion,
                                struct pour_error **error);

// Converts a number by a prepared conversion: the fast way, some nanoseconds.
//
// `POUR_REFUSED` for a value below the least or a result beyond what a double holds.
int32_t pour_convert_with(const struct pour_conversion *conversion,
                          double value,
                          double *converted,
                          struct pour_error **error);

// `pour_convert_with` for every row.
int32_t pour_convert_with_n(const struct pour_conversion *conversion,
                            size_t rows,
                            struct pour_column values,
                            struct pour_result_column converted,
                            int32_t *statuses,
                            struct pour_error **error);

// `pour_density_of_parts` for every row: a table of `rows` mixes by `parts` constituents.
//
// Densities that are the same in every row have a row stride of 0. `voids` may have no column: 0 counts.
int32_t pour_density_of_parts_n(size_t rows,
                                size_t parts,
                                struct pour_table masses_g,
                                struct pour_table densities_g_per_ml,
                                struct pour_column voids,
                                struct pour_result_column density_g_per_ml,
                                int32_t *statuses,
                                struct pour_error **error);

// Answers a calculation request: `{"calculate":"convert","amount":"1 1/4 cup","to":"mL"}`.
//
// `out` receives the answer, `{"result":{...}}`: UTF-8, ended by a NUL that `out_len` (which may be null) does not
// count; the host frees it by `pour_string_free`. `POUR_REFUSED` for a request with faults, all of which are in the
// error; `pour_error_json` has them as the answer of the other doors: `{"faults":[...]}`.
int32_t pour_request(const char *json,
                     size_t len,
                     char **out,
                     size_t *out_len,
                     struct pour_error **error);

// Frees a text that a call of this library gave out. Null is let pass.
void pour_string_free(char *text);

// Loads a book from its JSON text of `len` bytes.
//
// `POUR_REFUSED` with all faults of the text, else all of its form, else all of its meaning.
int32_t pour_book_from_json(const char *json, size_t len, struct pour_book **book, struct pour_error **error);

// Frees a book. Null is let pass.
void pour_book_free(struct pour_book *book);

// Plans a day: the JSON text of its order list, `orders_len` bytes.
//
// `POUR_REFUSED` with all faults of the order list, with paths into it, or why the day cannot be planned.
int32_t pour_book_plan(const struct pour_book *book,
                       const char *orders_json,
                       size_t orders_len,
                       struct pour_plan **plan,
                       struct pour_error **error);

// The plan as JSON, complete: the record of the day, with the book and the orders that it was made from.
//
// Freed by `pour_string_free`; `out_len` may be null.
int32_t pour_plan_json(const struct pour_plan *plan, char **out, size_t *out_len, struct pour_error **error);

// The bench sheet of the plan: text of 80 columns for the wall. Freed by `pour_string_free`; `out_len` may be null.
int32_t pour_plan_sheet(const struct pour_plan *plan,
                        char **out,
                        size_t *out_len,
                        struct pour_error **error);

// Frees a plan. Null is let pass.
void pour_plan_free(struct pour_plan *plan);

// Makes an empty mix of the materials of a book. The book may be freed before the mix.
int32_t pour_mix_of_book(const struct pour_book *book, struct pour_mix **mix, struct pour_error **error);

// Makes an empty mix of materials of the host's own: an array of `count`.
int32_t pour_mix_of_materials(const struct pour_material *materials,
                              size_t count,
                              struct pour_mix **mix,
                              struct pour_error **error);

// Adds a mass of a material, 0 or more: nothing can be taken out of a mix again.
int32_t pour_mix_add(struct pour_mix *mix, const char *material, double mass_g, struct pour_error **error);

// Takes a mass of the well-stirred mix out, as a mix of its own that the host frees.
int32_t pour_mix_draw(struct pour_mix *mix,
                      double mass_g,
                      struct pour_mix **drawn,
                      struct pour_error **error);

// Pours `other` into `mix`; `other` stays as it is. Both are made of one book, or of lists with the same numbers.
int32_t pour_mix_merge(struct pour_mix *mix,
                       const struct pour_mix *other,
                       struct pour_error **error);

// Makes the mix `factor` times as much, 0 or more.
int32_t pour_mix_scale(struct pour_mix *mix, double factor, struct pour_error **error);

// The mass of the mix.
int32_t pour_mix_mass(const struct pour_mix *mix, double *mass_g, struct pour_error **error);

// How much of a material is in the mix.
int32_t pour_mix_mass_of(const struct pour_mix *mix,
                         const char *material,
                         double *mass_g,
                         struct pour_error **error);

// Volume of the mix at a temperature, without voids: V = Σ (m/ρ)(1 + α (T − 20 °C)).
//
// `phase` is `POUR_PHASE_LIQUID` or `POUR_PHASE_FUSED`; 0 omits it: fused. `temperature_celsius` is -50 to 400; 20 °C
// where it is omitted. A material whose expansion is not known does not expand.
int32_t pour_mix_volume(const struct pour_mix *mix,
                        int32_t phase,
                        double temperature_celsius,
                        double *volume_ml,
                        struct pour_error **error);

// Density of the mix at a temperature: M/V · (1 − voids), V as in `pour_mix_volume`; `voids` is 0 to below 1, 0 where it
// is omitted.
int32_t pour_mix_density(const struct pour_mix *mix,
                         int32_t phase,
                         double temperature_celsius,
                         double voids,
                         double *density_g_per_ml,
                         struct pour_error **error);

// Frees a mix. Null is let pass.
void pour_mix_free(struct pour_mix *mix);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* POURWRIGHT_H */
