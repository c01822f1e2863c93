/* pourwright: recipe-formula and batch math for workshops that pour soft plastic to order.
 *
 * Made by cbindgen from the crate in ffi/; do not edit. For foreign function interfaces that read no preprocessor, the same
 * declarations are in pourwright.cdef.h.
 *
 * A WHOLE PROGRAM
 *
 *     #include <stdio.h>
 *     #include <pourwright.h>
 *
 *     int main(void)
 *     {
 *         char *answer = pour_answer("{ \"calculate\": \"convert\", \"amount\": \"1 1/4 cup\", \"to\": \"mL\" }");
 *         puts(answer);
 *         pour_string_free(answer);
 *         return 0;
 *     }
 *
 * THREE LEVELS
 *
 * Numbers. pour_piece_mass, pour_salt_for_density, ...: plain numbers in and out, and their forms for columns (_n).
 * Requests. Every calculation as one JSON object whose `calculate` names it, with amounts as a person writes them ("1/4 tsp",
 * "8 % of base"); the answer is JSON. All of them, with their fields, are in THE REQUESTS below.
 * Books and plans. A book is the shop's document: its materials, formulas, molds, tools and limits. An order list is a day's
 * document: lines of pieces, each with a mold and formulas, or a product of the book. pour_book_from_json opens a book,
 * pour_book_plan plans the day of an order list; the plan has a sheet for the bench, notes, its data as JSON, and answers
 * requests about the day. Fields of all documents: core/schema/FIELDS.md; for programs: pour_schema. Start from the demo's
 * book and orders in core/examples/demo/.
 *
 * THE CONTRACT OF EVERY CALL
 *
 * Names and units. Everything begins with pour_ or POUR_. The last part of a number's name is its unit: _g, _ml,
 * _g_per_ml, _celsius, ...; a share or a ratio is a pure number, 0.05 for 5 %, and has none. Names, ranges and defaults of
 * calculations are those of core/CALCULATIONS.md.
 *
 * Statuses. A call that can fail returns an int32_t: POUR_OK (0), or one of the statuses below. Their numbers are
 * never reused, and later versions may add some: treat an unknown one as a failure. pour_answer alone has its faults in the
 * JSON that it returns.
 *
 * Results. A call writes its results through pointers, and only when it returns POUR_OK; a failed call does not change
 * them. Unless the call says otherwise, a pointer to a result must not be null, and two pointers of one call must not
 * overlap.
 *
 * Omitted parameters. A number that is omitted is POUR_OMITTED (-DBL_MAX), and 0 is the number 0. An omitted count is
 * POUR_OMITTED_COUNT, an omitted word 0, an omitted text NULL, an omitted list NULL with a count of 0. The
 * comment states the default; a parameter without a default must be given. A calculation with many parameters
 * takes them in a struct: begin it with its macro, in which everything is omitted.
 *
 *     pour_shot_fill_input shot = POUR_SHOT_FILL_INPUT_INIT;
 *     shot.cavities = 4;
 *
 * Structs. The structs that have such a macro begin with their size in bytes, `size`, which the macro sets: later versions may
 * add parameters at their end, and will take the sizes of today. This version takes only its own size; another one is
 * POUR_REFUSED, with the code struct-size. All other structs keep their layout.
 *
 * Words. A word is the number of its constant: POUR_FORM_OF_BASE, POUR_MEASURES_METRIC, ...
 *
 * Errors. The last parameter, `pour_error **error`, may be null. If it is not, a failed call writes a new error there:
 * one fault or more, each with code, path, message and help. Free it by pour_error_free. A successful call does not
 * change it, so set it to NULL first. The library keeps no error itself: the return value is the only sign of a
 * failure. The codes are stable; they are listed in core/ERRORS.md, and those of this border are: null-pointer, not-utf8,
 * too-large, misaligned, struct-size, out-of-memory, output-stride, outside-conversion, no-such-schema,
 * mix-no-such-material, material-name-twice, mix-into-itself, mix-other-materials, panic.
 *
 * Ownership. A call keeps no pointer to the host's memory after it returns, and never frees it. A
 * handle (pour_book, pour_plan, pour_mix, pour_error) is made by a call, belongs to the host, and is freed once by its
 * _free; no other call may be running on it then. Handles do not depend on each other: a plan outlives its book. A
 * text that a call returns is freed by pour_string_free, never by free(). The texts of an error live as long as
 * the error. Every _free takes null and does nothing.
 *
 * Pointers. Null, where it is not allowed, is POUR_NULL. Any other pointer must be of the parameter's type, aligned,
 * and valid for the call; the library cannot see whether a handle was freed or is something else. Columns, and only
 * they, may begin at any address.
 *
 * Texts. UTF-8. Amounts and units end with a NUL and have at most 512 bytes; a name ends with a NUL and has 1 to 80 characters
 * on one line, each of which shows, as in documents. Documents have a length in bytes, at most 16 MiB, and need no NUL; with a
 * length of POUR_UP_TO_NUL they end at their first NUL. Invalid UTF-8 is POUR_NOT_UTF8, a longer text POUR_TOO_LARGE. A text
 * that a call returns ends with a NUL, and has none inside.
 *
 * Memory. A call on documents of n bytes and a plan of p pots takes at most n * POUR_MEMORY_PER_BYTE + p * POUR_MEMORY_PER_POT
 * + POUR_MEMORY_PER_CALL bytes, 4 GiB for the longest document; n counts the texts that an open book or plan was made from,
 * where the call returns or plans them. More takes only a day of more than 4000 order lines of one product, as each line lists
 * its pots. Before the work begins, that much is allocated and freed again, untouched: if it cannot be had, the call returns
 * POUR_OUT_OF_MEMORY without a result. A host bounds what a call takes by the length of the texts that it passes on, and by
 * `pots` of pour_book_plan_within (5000 if omitted; a request may ask for more in its `budget`). What cannot be tried: an
 * allocation that fails after that, because another thread took the memory, or in calls on mixes, columns and errors, ends the
 * process with a line on standard error, as Rust does; and a system that promises memory that it does not have may end any
 * process. A plan that must not take the host down is made in a process of its own.
 *
 * Numbers. NaN and infinity are POUR_NOT_FINITE. Other numbers that are refused are POUR_REFUSED. A parameter has one range,
 * with both bounds, in its comment, in messages and in every call that takes it. All that is wrong with the pointers, words and
 * texts of a call are faults of one error; if nothing is, so is all that is wrong with its numbers, each with the path of its
 * parameter, /voids or /parts/3/1 (row 3, second column, counted from 0), and with a message that has the value passed and both
 * bounds. Errors of the calculation itself have a code of their own, and the path of the parameter that would have to change.
 *
 * Columns. A call that ends in _n does for `rows` rows what the call without it does once. A column is a pointer and a
 * stride: the distance from one number to the next in bytes, 8 for a plain array of doubles, negative or odd if needed; 0
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
 * Panics. None crosses this interface: a defect of the library returns POUR_PANIC, and prints nothing. Please report it. Rust
 * reports panics through one hook for all code that shares its runtime: other Rust libraries in the same program, where this one
 * is linked as a crate or with them into one library. The first call here wraps the hook that it finds, and hands on every panic
 * outside of this library's calls. A hook that is set later replaces that: it hears of panics in here too, which are caught all
 * the same.
 *
 * Floating point. The library calculates with round to nearest, subnormals and no traps, whatever the host has set,
 * and restores what it found: modes and exception flags are the same after a call as before it. The same input gives the
 * same bits on every machine and through every door.
 *
 * Quiet. Nothing is printed, no file or variable of the environment is read, no signal handler, no thread. Except
 * for handles, no call leaves state for another. The exception is an allocation that fails: see Memory.
 *
 * Linking. Functions are declared with POUR_API: on Windows they are imported unless POUR_STATIC is defined; a host may define
 * POUR_API itself. Constants are enumerators, and the header is C89 but for <stdint.h>.
 *
 * Versions. pour_abi_version() must equal POUR_ABI_VERSION; compare them once, after loading. Functions and
 * statuses are added without raising it. pour_version() is the version of the library itself.
 *
 * SAFETY AT THE BENCH. Hot plastisol sticks and burns deep, its fumes need ventilation, a drop of water in a mold
 * erupts. Plans and answers carry cautions: show them to the person who pours.
 */

/* THE REQUESTS
 *
 * Each by its name, what it answers, and its fields; those in brackets may be omitted. With `book` or `plan` in brackets, it
 * is asked of an open one by pour_book_request or pour_plan_request, or names its own. Every request may have `ext`, an
 * object of the host's own. What each field means, and those of objects in it: pour_schema, "request"; an example of each:
 * core/REQUESTS.md.
 *
 * convert: An amount in another unit.
 *     amount, to, [measures]
 * dose: The mass of an amount of a material.
 *     amount, material, [measures]
 * mix: Mass, volume, density and shares of a mix.
 *     masses, materials, [measures], [phase], [temperature], [voids]
 * salt: Salt, from any way to state it to all others.
 *     base_density, base_volume, loading, salt, [cavity_volume], [feed], [hook_mass], [hook_volume], [hot_volume],
 *     [measures], [mix_mass], [mix_volume], [most_solids], [salt_softener], [salted_body], [salted_water],
 *     [shot_temperature], [voids]
 * hardness: Softener for a hardness, or the hardness that it gives.
 *     points, scale, [hardness], [softener_ratio]
 * shot: Mass of a shot and of its pieces.
 *     cold_density, mold, [hot_density], [layer_share], [measures]
 * batch: How much to mix for a number of pieces.
 *     cavities, injector_capacity, pieces, shot_density, shot_mass, [cleanings], [confidence], [injector_residue],
 *     [measures], [pot_film], [pot_heel], [rejects], [returned], [sprue_mass]
 * water: The volume of a cavity from the water that it holds.
 *     water_mass, water_temperature, [air_pressure], [calibrated_mold], [calibrated_shape], [measures]
 * calibrate: Cavity or feed share of a mold, from weighed pieces.
 *     balance_readability, cold_density, weights, [calibrated_mold], [calibrated_shape], [cavity_volume], [feed],
 *     [feed_uncertainty], [hot_density], [measures], [voids]
 * calibrate-drop: Mass of one drop, from counted drops.
 *     balance_readability, drops_weighed, [calibrated_material], [measures]
 * calibrate-spoon: Bulk density of a powder as scooped, from level spoonfuls.
 *     balance_readability, scoops_weighed, spoon_volume, [calibrated_material], [measures]
 * calibrate-injector: Volume that stays in an injector, from weighing it clean and emptied.
 *     balance_readability, injector_weighed, residue_density, [measures]
 * uncertainty: How sure a dose is, and what makes it unsure.
 *     base_material, dose_amount, material, per_base, [balance_readability], [cup_mark], [measures], [spoon]
 * measure: A mass as the tools of a bench can give it.
 *     bench, mass_to_measure, material, [measures], [tolerance], [written_in]
 * air: Air pressure in the shop, and the maximum that a vacuum gauge can show there.
 *     [altitude], [measures], [reported_pressure], [station_pressure]
 * degas: How far a pot swells under vacuum, and how full a vessel may be for it.
 *     liquid_volume, vacuum, [altitude], [damp_at], [measures], [station_pressure], [vessel_brim], [vessel_mark],
 *     [vessel_spare]
 * heat: How long a pot takes in the shop's own oven, and by which readings of the thermometer.
 *     heated_from, mix, shot_window, specific_heat, [aim], [burst_step], [cooling], [heated_together], [longest_burst],
 *     [measures], [oven_power], [oven_turn], [setting], [specific_heat_rise], [thermometer], [timed_density],
 *     [timed_specific_heat], [timings], [vessel_mass], [vessel_specific_heat]
 * stays-hot: How long a pot stays hot.
 *     cools, hot_from, hot_mix, hot_to, [measures], [room], [stood], [timed_density]
 * cooling: How long a shot sets in a metal mold, and how often one can be made.
 *     section, shot_at, [diffusivity], [hands], [measures], [mold_cooling], [molds], [piece_point], [shot_mass],
 *     [shot_specific_heat]
 * clock: How many heats the shots of a pot take, and where the reheats are.
 *     clock_mix, clock_runs, [clock_from], [clock_to], [cools], [hot_for], [measures], [oven_time], [room],
 *     [timed_density]
 * settling: How fast salt settles in a pot, and how often to stir.
 *     grain, grain_density, melt_density, melt_depth, [measures], [solids_share], [timed_ball], [unstirred], [viscosity]
 * heat-history: Heat history of a pot, and the heat budget that is left.
 *     activation_energy, readings, reference_temperature, [budget_with], [buys], [heat_budget], [heats_before],
 *     [measures], [spent_before], [stabilizer_dose]
 * sink: Sink rate of a piece, and the density for a sink rate.
 *     body, fished_water, piece_volume, [depth], [hook], [measures], [piece_density], [sink_rate]
 * flake: Number of particles in a dose of flake, and the dose of another cut in its place.
 *     flake, flake_dose, [alike], [finished_mass], [measures], [other_flake], [piece_mass]
 * color-difference: How far apart two colors look.
 *     color, other_color
 * color-match: A formula to begin with for a wanted color.
 *     base_color, base_mass, colorants, target, [measures]
 * color-reading: A color from pictures with a card, or from an instrument.
 *     [instrument], [pictures]
 * color-lights: How far two pieces are apart in other lights than daylight.
 *     color, other_color
 * formula: Recipe of formulas for an amount of base or of finished mix.
 *     formulas, [base_amount], [book], [finished_amount], [overlap]
 * cost: Cost of an amount of a formula, of its packs and pieces.
 *     formulas, [base_amount], [book], [cost_margin], [finished_amount], [made], [overlap], [packing], [packs],
 *     [returned_mass], [returned_worth], [work_rate], [work_time]
 * correct: Fix for a pot that came out wrong.
 *     instead, [body_as], [book], [cup], [formulas], [hot], [on_purpose], [overlap], [plan], [pot], [pot_base],
 *     [replace], [save_as], [stage], [step], [still_there], [trace]
 * leftovers: Leftovers of the shelf that go into a day's pots.
 *     orders, [book]
 * plan: A day's plan from a book and an order list.
 *     orders, [book], [budget]
 * quote: Quote for an order list: pots, parcels, stock and cost of its plan.
 *     orders, [book], [budget]
 * record: The record of a day: a plan with the masses and shots that were made.
 *     actuals, [book], [plan]
 * go-on: The rest of a day: a new plan from the pots that are there and what is still owed.
 *     [book], [broken_cups], [broken_molds], [good_pieces], [more_lines], [orders_now], [plan], [pots_now], [so_far],
 *     [ticks]
 * next-burst: The next burst of a heat of the plan, for what the thermometer shows.
 *     heat_step, reading, [book], [plan]
 * trial: A color found by eye: the formula that a trial's log comes to.
 *     trial, [body_as], [book], [per], [replace], [save_as]
 * troubles: Bench troubles and what helps, calculated where it can be.
 *     [base_in_pot], [book], [hardness_now], [hardness_wanted], [plan], [pot], [stage], [trouble], [with_material]
 * learn: What the records of many days say about the numbers of a book.
 *     records, [after], [book]
 * color-next: The next drops that bring a cup nearer to a color.
 *     trial, [book], [close_enough], [leave_out], [piece_mold], [piece_thickness], [seen], [target], [target_like]
 * color-nearest: The formulas of a book that are nearest to a color.
 *     color, [book], [piece_mold], [piece_thickness]
 * let-down-series: Which test pieces of a colorant to pour.
 *     colorant, [book], [test_piece]
 */

#ifndef POURWRIGHT_H
#define POURWRIGHT_H

#include <stddef.h>
#include <stdint.h>

/* How a function of the library is declared. A host that links statically on Windows defines POUR_STATIC. */
#ifndef POUR_API
#if defined(_WIN32) && !defined(POUR_STATIC)
#define POUR_API __declspec(dllimport)
#elif defined(__GNUC__) && !defined(_WIN32)
#define POUR_API __attribute__((visibility("default")))
#else
#define POUR_API
#endif
#endif

/* A number that is omitted: -DBL_MAX, which is in no range. */
#define POUR_OMITTED (-1.7976931348623157e308)
/* A length: the text ends at its first NUL. */
#define POUR_UP_TO_NUL ((size_t)-1)
/* A pour_material in which everything is omitted. */
#define POUR_MATERIAL_INIT \
    { sizeof(pour_material), NULL, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0 }
/* A pour_salt_convert_input in which everything is omitted. */
#define POUR_SALT_CONVERT_INPUT_INIT \
    { sizeof(pour_salt_convert_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0, POUR_OMITTED, 0, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED }
/* A pour_salt_mass_input in which everything is omitted. */
#define POUR_SALT_MASS_INPUT_INIT \
    { sizeof(pour_salt_mass_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED }
/* A pour_salt_reach_input in which everything is omitted. */
#define POUR_SALT_REACH_INPUT_INIT \
    { sizeof(pour_salt_reach_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_salt_for_sink_rate_input in which everything is omitted. */
#define POUR_SALT_FOR_SINK_RATE_INPUT_INIT \
    { sizeof(pour_salt_for_sink_rate_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED }
/* A pour_shot_fill_input in which everything is omitted. */
#define POUR_SHOT_FILL_INPUT_INIT \
    { sizeof(pour_shot_fill_input), POUR_OMITTED_COUNT, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_batch_need_input in which everything is omitted. */
#define POUR_BATCH_NEED_INPUT_INIT \
    { sizeof(pour_batch_need_input), POUR_OMITTED_COUNT, POUR_OMITTED_COUNT, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED_COUNT, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_bench_measure_input in which everything is omitted. */
#define POUR_BENCH_MEASURE_INPUT_INIT \
    { sizeof(pour_bench_measure_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, NULL, 0, NULL, 0, POUR_OMITTED, POUR_OMITTED }
/* A pour_sink_rate_input in which everything is omitted. */
#define POUR_SINK_RATE_INPUT_INIT \
    { sizeof(pour_sink_rate_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED }
/* A pour_density_for_sink_rate_input in which everything is omitted. */
#define POUR_DENSITY_FOR_SINK_RATE_INPUT_INIT \
    { sizeof(pour_density_for_sink_rate_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, 0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED }
/* A pour_swollen_volume_input in which everything is omitted. */
#define POUR_SWOLLEN_VOLUME_INPUT_INIT \
    { sizeof(pour_swollen_volume_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_entrained_air_input in which everything is omitted. */
#define POUR_ENTRAINED_AIR_INPUT_INIT \
    { sizeof(pour_entrained_air_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_degas_vessel_input in which everything is omitted. */
#define POUR_DEGAS_VESSEL_INPUT_INIT \
    { sizeof(pour_degas_vessel_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_flake_swap_input in which everything is omitted. */
#define POUR_FLAKE_SWAP_INPUT_INIT \
    { sizeof(pour_flake_swap_input), NULL, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, NULL, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, 0 }
/* A pour_heat_time_input in which everything is omitted. */
#define POUR_HEAT_TIME_INPUT_INIT \
    { sizeof(pour_heat_time_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, NULL, 0, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_next_burst_input in which everything is omitted. */
#define POUR_NEXT_BURST_INPUT_INIT \
    { sizeof(pour_next_burst_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      NULL, 0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0 }
/* A pour_stays_hot_input in which everything is omitted. */
#define POUR_STAYS_HOT_INPUT_INIT \
    { sizeof(pour_stays_hot_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_pot_heats_input in which everything is omitted. */
#define POUR_POT_HEATS_INPUT_INIT \
    { sizeof(pour_pot_heats_input), POUR_OMITTED, NULL, 0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_setting_time_input in which everything is omitted. */
#define POUR_SETTING_TIME_INPUT_INIT \
    { sizeof(pour_setting_time_input), 0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED_COUNT }
/* A pour_stir_every_input in which everything is omitted. */
#define POUR_STIR_EVERY_INPUT_INIT \
    { sizeof(pour_stir_every_input), POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_cavity_of_weights_input in which everything is omitted. */
#define POUR_CAVITY_OF_WEIGHTS_INPUT_INIT \
    { sizeof(pour_cavity_of_weights_input), NULL, 0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED, POUR_OMITTED }
/* A pour_feed_of_weights_input in which everything is omitted. */
#define POUR_FEED_OF_WEIGHTS_INPUT_INIT \
    { sizeof(pour_feed_of_weights_input), NULL, 0, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, \
      POUR_OMITTED, POUR_OMITTED }


/* The version of this interface. It goes up when a program that was compiled against an older header
 * could no longer run with this library; new functions and new status numbers do not raise it. */
#define POUR_ABI_VERSION 1

enum {
    /* The call is done; its results are written. */
    POUR_OK = 0,
    /* A pointer is null that must not be. */
    POUR_NULL = 1,
    /* A number is NaN or infinite. */
    POUR_NOT_FINITE = 2,
    /* A text is not valid UTF-8. */
    POUR_NOT_UTF8 = 3,
    /* A text, an array or a stride is larger than is believed. */
    POUR_TOO_LARGE = 4,
    /* A number for a word (a measuring system, a scale, ...) that is not one of them. */
    POUR_UNKNOWN_NUMBER = 5,
    /* The numbers or documents do not go together; the faults have what is wrong, where, and what would fix it. */
    POUR_REFUSED = 6,
    /* A defect of the library, which it survived. Please report it. Free the handles of the call, and use them no more. */
    POUR_PANIC = 7,
    /* An array does not begin where its items can lie. */
    POUR_MISALIGNED = 8,
    /* The caller stopped the plan. */
    POUR_STOPPED = 9,
    /* The plan takes more pots or more work than its budget; the fault has the numbers. */
    POUR_OVER_BUDGET = 10,
    /* There is not enough memory for the document or the plan. */
    POUR_OUT_OF_MEMORY = 11
};

/* A count that is omitted: UINT32_MAX. */
#define POUR_OMITTED_COUNT 4294967295u

/* Of `alike`. */
enum {
    POUR_ALIKE_COUNT = 1,
    POUR_ALIKE_AREA = 2
};

/* Of `form`. */
enum {
    POUR_FORM_AS_SCOOPED = 1,
    POUR_FORM_PER_VOLUME = 2,
    POUR_FORM_OF_BASE = 3,
    POUR_FORM_OF_FINISHED = 4,
    POUR_FORM_FINISHED_DENSITY = 5,
    POUR_FORM_PIECE_MASS = 6,
    POUR_FORM_SINK_DENSITY = 7
};

/* Of `kind`. */
enum {
    POUR_KIND_PLASTISOL = 1,
    POUR_KIND_SOFTENER = 2,
    POUR_KIND_HARDENER = 3,
    POUR_KIND_STABILIZER = 4,
    POUR_KIND_COLORANT = 5,
    POUR_KIND_PEARL = 6,
    POUR_KIND_FLAKE = 7,
    POUR_KIND_SALT = 8,
    POUR_KIND_SCENT = 9,
    POUR_KIND_OTHER = 10
};

/* Of `measures`. */
enum {
    POUR_MEASURES_US_CUSTOMARY = 1,
    POUR_MEASURES_US_LABEL = 2,
    POUR_MEASURES_METRIC = 3,
    POUR_MEASURES_IMPERIAL = 4
};

/* Of `phase`. */
enum {
    POUR_PHASE_LIQUID = 1,
    POUR_PHASE_FUSED = 2
};

/* Of `piece_point`. */
enum {
    POUR_PIECE_POINT_CENTER = 1,
    POUR_PIECE_POINT_MEAN = 2
};

/* Of `scale`. */
enum {
    POUR_SCALE_SHORE_00 = 1,
    POUR_SCALE_SHORE_A = 2
};

/* Of `section_shape`. */
enum {
    POUR_SECTION_SHAPE_ROD = 1,
    POUR_SECTION_SHAPE_PLATE = 2,
    POUR_SECTION_SHAPE_BALL = 3
};

/* Of `shape`. */
enum {
    POUR_SHAPE_STICK = 1,
    POUR_SHAPE_BALL = 2
};

/* Of `tool`. */
enum {
    POUR_TOOL_BALANCE = 1,
    POUR_TOOL_CUP = 2,
    POUR_TOOL_SPOONS = 3,
    POUR_TOOL_DROPS = 4
};

/* Of `motion`. */
enum {
    POUR_MOTION_STRAIGHT = 1,
    POUR_MOTION_MAY_SWING = 2,
    POUR_MOTION_SWINGS = 3
};

enum {
    /* Maximum memory, in bytes, that a call takes for each byte of the document that it is given. */
    POUR_MEMORY_PER_BYTE = 256,
    /* Maximum memory, in bytes, that a call takes for each pot of a plan, made or given. */
    POUR_MEMORY_PER_POT = 524288,
    /* Maximum memory, in bytes, that a call takes in addition, whatever it is given. */
    POUR_MEMORY_PER_CALL = 8388608
};

/* A shop's book, ready for planning.
 *
 * It never changes, and any number of threads may use it at once. What is made from it lives on when it is freed. */
typedef struct pour_book pour_book;

/* The errors of a call: one fault or more, the first found first.
 *
 * A failed call makes it, the host reads it by `pour_error_...` and frees it by `pour_error_free`. Its texts live
 * as long as it does. Several threads may read it at once. */
typedef struct pour_error pour_error;

/* Masses of materials in one vessel: the conserved thing that all maths works on.
 *
 * One thread at a time may use it; it may move from one to another. */
typedef struct pour_mix pour_mix;

/* A day's plan with the book that it was made from. It never changes, and any number of threads may use it at once. */
typedef struct pour_plan pour_plan;

/* A column of numbers. Null is not a column: the parameter is omitted in every row. */
typedef struct pour_column {
    /* The number of the first row. */
    const double *start;
    /* From one number to the next, in bytes: 8 for a plain array, 0 to repeat one number. */
    ptrdiff_t stride;
} pour_column;

/* The columns of `pour_mass_of_volume_n`: the parameters of `pour_mass_of_volume`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_mass_of_volume_columns {
    /* Volume. */
    struct pour_column volume_ml;
    /* Density, without voids. */
    struct pour_column density_g_per_ml;
} pour_mass_of_volume_columns;

/* A column that receives results. Null is not a column: that result is not written. */
typedef struct pour_result_column {
    /* The place of the first row. */
    double *start;
    /* From one place to the next, in bytes: 8 for a plain array. */
    ptrdiff_t stride;
} pour_result_column;

/* Where `pour_mass_of_volume_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_mass_of_volume_result_columns {
    /* The mass. Unit: g. */
    struct pour_result_column mass_g;
} pour_mass_of_volume_result_columns;

/* The columns of `pour_volume_of_mass_n`: the parameters of `pour_volume_of_mass`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_volume_of_mass_columns {
    /* Mass. */
    struct pour_column mass_g;
    /* Density, without voids. */
    struct pour_column density_g_per_ml;
} pour_volume_of_mass_columns;

/* Where `pour_volume_of_mass_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_volume_of_mass_result_columns {
    /* The volume. Unit: mL. */
    struct pour_result_column volume_ml;
} pour_volume_of_mass_result_columns;

/* One row of `parts`. The parts of the mix: of each its mass and its true density. At least one has a mass
 * above 0. */
typedef struct pour_parts_row {
    /* Mass of one part of a mix. Unit: g; 0 to 1e15. */
    double part_mass_g;
    /* True density of one part of a mix. Unit: g/mL; 0.001 to 25. */
    double part_density_g_per_ml;
} pour_parts_row;

/* The results of `pour_mix_share`. */
typedef struct pour_mix_share_result {
    /* Share of its mass. Unit: 1. */
    double mass_share;
    /* Share of its true volume. Unit: 1. */
    double volume_share;
} pour_mix_share_result;

/* The input of `pour_salt_convert`. Begin with `POUR_SALT_CONVERT_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_salt_convert_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
    double base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
    double base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
    double salt_density_g_per_ml;
    /* The way in which the salt loading is stated. One of `POUR_FORM_...`. */
    int32_t form;
    /* The salt loading, as its form states it. Unit: any; in the unit of its form. */
    double loading;
    /* The way in which the loading is to be stated. One of `POUR_FORM_...`. */
    int32_t to_form;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
     * Default: the mass of its base. */
    double mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
     * `base_volume_ml`. */
    double mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
     * Default: as `mix_volume_ml`. */
    double hot_volume_ml;
    /* Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
    double shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
    double voids;
    /* Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
     * it. Unit: g/mL; 0.001 to 25. Default: none. */
    double salt_as_scooped_g_per_ml;
    /* Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
    double salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
    double softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default:
     * none. */
    double softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
    double softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
    double most_solids;
    /* Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted. */
    double cavity_volume_ml;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
     * Default: 0.5. */
    double feed;
    /* Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
    double hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
    double hook_volume_ml;
} pour_salt_convert_input;

/* The results of `pour_salt_convert`. */
typedef struct pour_salt_convert_result {
    /* The loading as `to_form` states it, in the unit of that form. */
    double loading;
    /* Its lower bound where the feed matters and is not known; else the loading. */
    double loading_min;
    /* Its upper bound where the feed matters and is not known; else the loading. */
    double loading_max;
} pour_salt_convert_result;

/* The columns of `pour_salt_convert_n`: the parameters of `pour_salt_convert`. Set all to 0 first: a parameter
 * that may be omitted has no column then. A word counts for all rows. */
typedef struct pour_salt_convert_columns {
    /* Volume of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. */
    struct pour_column salt_density_g_per_ml;
    /* The way in which the salt loading is stated. One of `POUR_FORM_...`. */
    int32_t form;
    /* The salt loading, as its form states it. */
    struct pour_column loading;
    /* The way in which the loading is to be stated. One of `POUR_FORM_...`. */
    int32_t to_form;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. May be omitted. */
    struct pour_column mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. May be omitted. */
    struct pour_column mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. May be omitted. */
    struct pour_column hot_volume_ml;
    /* Temperature at which the mix is shot. May be omitted. */
    struct pour_column shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. May be omitted. */
    struct pour_column voids;
    /* Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
     * it. May be omitted. */
    struct pour_column salt_as_scooped_g_per_ml;
    /* Volumetric thermal expansion of the salt. May be omitted. */
    struct pour_column salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. May be omitted. */
    struct pour_column softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. May be omitted. */
    struct pour_column softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. May be omitted. */
    struct pour_column softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. May be omitted. */
    struct pour_column most_solids;
    /* Volume of one cavity. May be omitted. */
    struct pour_column cavity_volume_ml;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted. */
    struct pour_column feed;
    /* Mass of hook and weight on a piece; give its volume too. May be omitted. */
    struct pour_column hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. May be omitted. */
    struct pour_column hook_volume_ml;
} pour_salt_convert_columns;

/* Where `pour_salt_convert_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_salt_convert_result_columns {
    /* The loading as `to_form` states it, in the unit of that form. */
    struct pour_result_column loading;
    /* Its lower bound where the feed matters and is not known; else the loading. */
    struct pour_result_column loading_min;
    /* Its upper bound where the feed matters and is not known; else the loading. */
    struct pour_result_column loading_max;
} pour_salt_convert_result_columns;

/* The input of `pour_salt_mass`. Begin with `POUR_SALT_MASS_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_salt_mass_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
    double base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
    double base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
    double salt_density_g_per_ml;
    /* The way in which the salt loading is stated. One of `POUR_FORM_...`. */
    int32_t form;
    /* The salt loading, as its form states it. Unit: any; in the unit of its form. */
    double loading;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
     * Default: the mass of its base. */
    double mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
     * `base_volume_ml`. */
    double mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
     * Default: as `mix_volume_ml`. */
    double hot_volume_ml;
    /* Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
    double shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
    double voids;
    /* Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
     * it. Unit: g/mL; 0.001 to 25. Default: none. */
    double salt_as_scooped_g_per_ml;
    /* Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
    double salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
    double softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default:
     * none. */
    double softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
    double softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
    double most_solids;
    /* Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted. */
    double cavity_volume_ml;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
     * Default: 0.5. */
    double feed;
    /* Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
    double hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
    double hook_volume_ml;
} pour_salt_mass_input;

/* The results of `pour_salt_mass`. */
typedef struct pour_salt_mass_result {
    /* Mass of salt. Unit: g. */
    double salt_mass_g;
    /* Its lower bound where the feed matters and is not known; else the mass. Unit: g. */
    double salt_mass_min_g;
    /* Its upper bound where the feed matters and is not known; else the mass. Unit: g. */
    double salt_mass_max_g;
    /* Mass of softener that goes in with it. Unit: g. */
    double softener_mass_g;
} pour_salt_mass_result;

/* The columns of `pour_salt_mass_n`: the parameters of `pour_salt_mass`. Set all to 0 first: a parameter that
 * may be omitted has no column then. A word counts for all rows. */
typedef struct pour_salt_mass_columns {
    /* Volume of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. */
    struct pour_column salt_density_g_per_ml;
    /* The way in which the salt loading is stated. One of `POUR_FORM_...`. */
    int32_t form;
    /* The salt loading, as its form states it. */
    struct pour_column loading;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. May be omitted. */
    struct pour_column mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. May be omitted. */
    struct pour_column mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. May be omitted. */
    struct pour_column hot_volume_ml;
    /* Temperature at which the mix is shot. May be omitted. */
    struct pour_column shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. May be omitted. */
    struct pour_column voids;
    /* Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
     * it. May be omitted. */
    struct pour_column salt_as_scooped_g_per_ml;
    /* Volumetric thermal expansion of the salt. May be omitted. */
    struct pour_column salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. May be omitted. */
    struct pour_column softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. May be omitted. */
    struct pour_column softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. May be omitted. */
    struct pour_column softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. May be omitted. */
    struct pour_column most_solids;
    /* Volume of one cavity. May be omitted. */
    struct pour_column cavity_volume_ml;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted. */
    struct pour_column feed;
    /* Mass of hook and weight on a piece; give its volume too. May be omitted. */
    struct pour_column hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. May be omitted. */
    struct pour_column hook_volume_ml;
} pour_salt_mass_columns;

/* Where `pour_salt_mass_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_salt_mass_result_columns {
    /* Mass of salt. Unit: g. */
    struct pour_result_column salt_mass_g;
    /* Its lower bound where the feed matters and is not known; else the mass. Unit: g. */
    struct pour_result_column salt_mass_min_g;
    /* Its upper bound where the feed matters and is not known; else the mass. Unit: g. */
    struct pour_result_column salt_mass_max_g;
    /* Mass of softener that goes in with it. Unit: g. */
    struct pour_result_column softener_mass_g;
} pour_salt_mass_result_columns;

/* The input of `pour_salt_reach`. Begin with `POUR_SALT_REACH_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_salt_reach_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
    double base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
    double base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
    double salt_density_g_per_ml;
    /* The way in which the salt loading is stated. One of `POUR_FORM_...`. */
    int32_t form;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
     * Default: the mass of its base. */
    double mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
     * `base_volume_ml`. */
    double mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
     * Default: as `mix_volume_ml`. */
    double hot_volume_ml;
    /* Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
    double shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
    double voids;
    /* Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
     * it. Unit: g/mL; 0.001 to 25. Default: none. */
    double salt_as_scooped_g_per_ml;
    /* Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
    double salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
    double softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default:
     * none. */
    double softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
    double softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
    double most_solids;
    /* Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted. */
    double cavity_volume_ml;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
     * Default: 0.5. */
    double feed;
    /* Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
    double hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
    double hook_volume_ml;
} pour_salt_reach_input;

/* The results of `pour_salt_reach`. */
typedef struct pour_salt_reach_result {
    /* The loading without salt, in the unit of the form. */
    double loading_min;
    /* The maximum loading, in the unit of the form. */
    double loading_max;
} pour_salt_reach_result;

/* The columns of `pour_salt_reach_n`: the parameters of `pour_salt_reach`. Set all to 0 first: a parameter
 * that may be omitted has no column then. A word counts for all rows. */
typedef struct pour_salt_reach_columns {
    /* Volume of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. */
    struct pour_column salt_density_g_per_ml;
    /* The way in which the salt loading is stated. One of `POUR_FORM_...`. */
    int32_t form;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. May be omitted. */
    struct pour_column mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. May be omitted. */
    struct pour_column mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. May be omitted. */
    struct pour_column hot_volume_ml;
    /* Temperature at which the mix is shot. May be omitted. */
    struct pour_column shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. May be omitted. */
    struct pour_column voids;
    /* Bulk density of the salt, level in the spoon; at most its true density. Only the form as-scooped needs
     * it. May be omitted. */
    struct pour_column salt_as_scooped_g_per_ml;
    /* Volumetric thermal expansion of the salt. May be omitted. */
    struct pour_column salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. May be omitted. */
    struct pour_column softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. May be omitted. */
    struct pour_column softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. May be omitted. */
    struct pour_column softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. May be omitted. */
    struct pour_column most_solids;
    /* Volume of one cavity. May be omitted. */
    struct pour_column cavity_volume_ml;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted. */
    struct pour_column feed;
    /* Mass of hook and weight on a piece; give its volume too. May be omitted. */
    struct pour_column hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. May be omitted. */
    struct pour_column hook_volume_ml;
} pour_salt_reach_columns;

/* Where `pour_salt_reach_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_salt_reach_result_columns {
    /* The loading without salt, in the unit of the form. */
    struct pour_result_column loading_min;
    /* The maximum loading, in the unit of the form. */
    struct pour_result_column loading_max;
} pour_salt_reach_result_columns;

/* The columns of `pour_salt_for_density_n`: the parameters of `pour_salt_for_density`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_salt_for_density_columns {
    /* Volume of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. */
    struct pour_column salt_density_g_per_ml;
    /* Density of the finished plastic at 20 °C, voids counted. */
    struct pour_column finished_density_g_per_ml;
    /* Void fraction: share of the volume that is air. May be omitted. */
    struct pour_column voids;
    /* Maximum share of salt in the finished mix, by true volume. May be omitted. */
    struct pour_column most_solids;
} pour_salt_for_density_columns;

/* Where `pour_salt_for_density_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_salt_for_density_result_columns {
    /* Mass of salt. Unit: g. */
    struct pour_result_column salt_mass_g;
} pour_salt_for_density_result_columns;

/* The input of `pour_salt_for_sink_rate`. Begin with `POUR_SALT_FOR_SINK_RATE_INPUT_INIT`, in which everything
 * is omitted. */
typedef struct pour_salt_for_sink_rate_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15. */
    double base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to 25. */
    double base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25. */
    double salt_density_g_per_ml;
    /* Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6. */
    double sink_rate_cm_per_s;
    /* Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
    double cavity_volume_ml;
    /* Mean diameter of the piece. Unit: mm; 1e-6 to 1e6. */
    double diameter_mm;
    /* Temperature of the water. Unit: °C; 0 to 40. */
    double water_temperature_celsius;
    /* Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none. */
    double length_mm;
    /* Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
     * ball. One of `POUR_SHAPE_...`; 0 omits it. */
    int32_t shape;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. Unit: g; 1e-12 to 1e15.
     * Default: the mass of its base. */
    double mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to 1e15. Default: as
     * `base_volume_ml`. */
    double mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. Unit: mL; 1e-9 to 1e15.
     * Default: as `mix_volume_ml`. */
    double hot_volume_ml;
    /* Temperature at which the mix is shot. Unit: °C; 20 to 427. Default: 20. */
    double shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
    double voids;
    /* Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01. Default: 0. */
    double salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to 10. Default: 0. */
    double softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. Unit: g/mL; 0.001 to 25. Default:
     * none. */
    double softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. Unit: 1/K; 0 to 0.01. Default: 0. */
    double softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1. Default: 0.3. */
    double most_solids;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
     * Default: 0.5. */
    double feed;
    /* Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
    double hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
    double hook_volume_ml;
    /* Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
     * water without either. Unit: 1; 0 to 41.8. Default: none. */
    double salinity_practical;
    /* Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
     * one. Unit: 1; 0 to 0.042. Default: none. */
    double salinity_absolute;
    /* Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none. */
    double drop_depth_m;
    /* Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none. */
    double drop_time_s;
    /* Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none. */
    double drop_density_g_per_ml;
} pour_salt_for_sink_rate_input;

/* The results of `pour_salt_for_sink_rate`. */
typedef struct pour_salt_for_sink_rate_result {
    /* Mass of salt. Unit: g. */
    double salt_mass_g;
    /* Mass of softener that goes in with it. Unit: g. */
    double softener_mass_g;
    /* Density of the finished plastic at 20 °C, voids counted. Unit: g/mL. */
    double finished_density_g_per_ml;
} pour_salt_for_sink_rate_result;

/* The columns of `pour_salt_for_sink_rate_n`: the parameters of `pour_salt_for_sink_rate`. Set all to 0 first:
 * a parameter that may be omitted has no column then. A word counts for all rows. */
typedef struct pour_salt_for_sink_rate_columns {
    /* Volume of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_volume_ml;
    /* Density of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_density_g_per_ml;
    /* True density of the salt: 2.165 g/mL for sodium chloride. */
    struct pour_column salt_density_g_per_ml;
    /* Sink rate: the final speed of the piece. */
    struct pour_column sink_rate_cm_per_s;
    /* Volume of one cavity. */
    struct pour_column cavity_volume_ml;
    /* Mean diameter of the piece. */
    struct pour_column diameter_mm;
    /* Temperature of the water. */
    struct pour_column water_temperature_celsius;
    /* Length of a stick, at least 2.01 diameters; not used for a ball. May be omitted. */
    struct pour_column length_mm;
    /* Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
     * ball. One of `POUR_SHAPE_...`; 0 omits it. */
    int32_t shape;
    /* Mass of the mix before salt; at least that of its base. Give its volume too. May be omitted. */
    struct pour_column mix_mass_g;
    /* Volume of the mix before salt at 20 °C. Give its mass too. May be omitted. */
    struct pour_column mix_volume_ml;
    /* Volume of the mix before salt at shot temperature; at least the cold one. May be omitted. */
    struct pour_column hot_volume_ml;
    /* Temperature at which the mix is shot. May be omitted. */
    struct pour_column shot_temperature_celsius;
    /* Void fraction: share of the volume that is air. May be omitted. */
    struct pour_column voids;
    /* Volumetric thermal expansion of the salt. May be omitted. */
    struct pour_column salt_expansion_per_kelvin;
    /* Softener that goes in with the salt, mass per mass of salt. May be omitted. */
    struct pour_column softener_per_salt;
    /* Density of the softener that goes in with the salt; needed with it. May be omitted. */
    struct pour_column softener_density_g_per_ml;
    /* Volumetric thermal expansion of that softener. May be omitted. */
    struct pour_column softener_expansion_per_kelvin;
    /* Maximum share of salt in the finished mix, by true volume. May be omitted. */
    struct pour_column most_solids;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted. */
    struct pour_column feed;
    /* Mass of hook and weight on a piece; give its volume too. May be omitted. */
    struct pour_column hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. May be omitted. */
    struct pour_column hook_volume_ml;
    /* Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
     * water without either. May be omitted. */
    struct pour_column salinity_practical;
    /* Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
     * one. May be omitted. */
    struct pour_column salinity_absolute;
    /* Depth of a timed drop, the piece let go just below the surface. May be omitted. */
    struct pour_column drop_depth_m;
    /* Time of the timed drop. May be omitted. */
    struct pour_column drop_time_s;
    /* Density of the piece that was dropped. May be omitted. */
    struct pour_column drop_density_g_per_ml;
} pour_salt_for_sink_rate_columns;

/* Where `pour_salt_for_sink_rate_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_salt_for_sink_rate_result_columns {
    /* Mass of salt. Unit: g. */
    struct pour_result_column salt_mass_g;
    /* Mass of softener that goes in with it. Unit: g. */
    struct pour_result_column softener_mass_g;
    /* Density of the finished plastic at 20 °C, voids counted. Unit: g/mL. */
    struct pour_result_column finished_density_g_per_ml;
} pour_salt_for_sink_rate_result_columns;

/* The input of `pour_shot_fill`. Begin with `POUR_SHOT_FILL_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_shot_fill_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Number of cavities that a shot fills. 1 to 1000000. */
    uint32_t cavities;
    /* Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
    double cavity_volume_ml;
    /* Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25. */
    double cold_density_g_per_ml;
    /* Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default:
     * as `cold_density_g_per_ml`. */
    double hot_density_g_per_ml;
    /* Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
    double voids;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
     * Default: 0.5. */
    double feed;
    /* Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0. */
    double sprue_volume_ml;
    /* Mass that topping off and holding add. Unit: g; 0 to 1e15. Default: 0. */
    double topped_mass_g;
    /* Share of the cavity that this layer of a laminated piece fills. Unit: 1; above 0 to 1. Default: 1. */
    double layer_share;
} pour_shot_fill_input;

/* The results of `pour_shot_fill`. */
typedef struct pour_shot_fill_result {
    /* Mass of one shot, topping included. Unit: g. */
    double shot_mass_g;
    /* Mass of all its pieces. Unit: g. */
    double pieces_mass_g;
    /* Mass that is left as sprue once the pieces have been fed. Unit: g. */
    double sprue_mass_g;
    /* Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g. */
    double missing_mass_g;
    /* Mass of one piece, or of the layer in it. Unit: g. */
    double piece_mass_g;
    /* The same without feed where the feed is not known; else the mass of the piece. Unit: g. */
    double piece_mass_min_g;
    /* The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece.
     * Unit: g. */
    double piece_mass_max_g;
    /* Share of the contraction that was fed. Unit: 1. */
    double fed;
} pour_shot_fill_result;

/* The columns of `pour_shot_fill_n`: the parameters of `pour_shot_fill`. Set all to 0 first: a parameter that
 * may be omitted has no column then. */
typedef struct pour_shot_fill_columns {
    /* Number of cavities that a shot fills. */
    struct pour_column cavities;
    /* Volume of one cavity. */
    struct pour_column cavity_volume_ml;
    /* Density of the finished plastic at 20 °C, without voids. */
    struct pour_column cold_density_g_per_ml;
    /* Melt density at shot temperature, without voids; at most the cold one. May be omitted. */
    struct pour_column hot_density_g_per_ml;
    /* Void fraction: share of the volume that is air. May be omitted. */
    struct pour_column voids;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted. */
    struct pour_column feed;
    /* Volume of the sprue. May be omitted. */
    struct pour_column sprue_volume_ml;
    /* Mass that topping off and holding add. May be omitted. */
    struct pour_column topped_mass_g;
    /* Share of the cavity that this layer of a laminated piece fills. May be omitted. */
    struct pour_column layer_share;
} pour_shot_fill_columns;

/* Where `pour_shot_fill_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_shot_fill_result_columns {
    /* Mass of one shot, topping included. Unit: g. */
    struct pour_result_column shot_mass_g;
    /* Mass of all its pieces. Unit: g. */
    struct pour_result_column pieces_mass_g;
    /* Mass that is left as sprue once the pieces have been fed. Unit: g. */
    struct pour_result_column sprue_mass_g;
    /* Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g. */
    struct pour_result_column missing_mass_g;
    /* Mass of one piece, or of the layer in it. Unit: g. */
    struct pour_result_column piece_mass_g;
    /* The same without feed where the feed is not known; else the mass of the piece. Unit: g. */
    struct pour_result_column piece_mass_min_g;
    /* The same fed as far as sprue and topping reach where the feed is not known; else the mass of the piece.
     * Unit: g. */
    struct pour_result_column piece_mass_max_g;
    /* Share of the contraction that was fed. Unit: 1. */
    struct pour_result_column fed;
} pour_shot_fill_result_columns;

/* The results of `pour_piece_mass`. */
typedef struct pour_piece_mass_result {
    /* Mass of the piece. Unit: g. */
    double piece_mass_g;
    /* The same without feed where the feed is not known; else the mass of the piece. Unit: g. */
    double piece_mass_min_g;
    /* The same fed in full where the feed is not known; else the mass of the piece. Unit: g. */
    double piece_mass_max_g;
} pour_piece_mass_result;

/* The columns of `pour_piece_mass_n`: the parameters of `pour_piece_mass`. Set all to 0 first: a parameter
 * that may be omitted has no column then. */
typedef struct pour_piece_mass_columns {
    /* Volume of one cavity. */
    struct pour_column cavity_volume_ml;
    /* Density of the finished plastic at 20 °C, without voids. */
    struct pour_column cold_density_g_per_ml;
    /* Melt density at shot temperature, without voids; at most the cold one. May be omitted. */
    struct pour_column hot_density_g_per_ml;
    /* Void fraction: share of the volume that is air. May be omitted. */
    struct pour_column voids;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). May be omitted. */
    struct pour_column feed;
} pour_piece_mass_columns;

/* Where `pour_piece_mass_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_piece_mass_result_columns {
    /* Mass of the piece. Unit: g. */
    struct pour_result_column piece_mass_g;
    /* The same without feed where the feed is not known; else the mass of the piece. Unit: g. */
    struct pour_result_column piece_mass_min_g;
    /* The same fed in full where the feed is not known; else the mass of the piece. Unit: g. */
    struct pour_result_column piece_mass_max_g;
} pour_piece_mass_result_columns;

/* The results of `pour_shots`. */
typedef struct pour_shots_result {
    /* Number of shots. */
    uint32_t shots;
    /* Number of pieces that they cast. */
    uint32_t cast;
} pour_shots_result;

/* The columns of `pour_shots_n`: the parameters of `pour_shots`. Set all to 0 first: a parameter that may be
 * omitted has no column then. */
typedef struct pour_shots_columns {
    /* Number of good pieces needed. */
    struct pour_column pieces;
    /* Number of cavities that a shot fills. */
    struct pour_column cavities;
    /* Share of pieces that are not fit to sell. May be omitted. */
    struct pour_column rejects;
    /* Confidence that enough good pieces come out. May be omitted. */
    struct pour_column confidence;
} pour_shots_columns;

/* Where `pour_shots_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_shots_result_columns {
    /* Number of shots. */
    struct pour_result_column shots;
    /* Number of pieces that they cast. */
    struct pour_result_column cast;
} pour_shots_result_columns;

/* The results of `pour_injector_loads`. */
typedef struct pour_injector_loads_result {
    /* Number of injector loads. */
    uint32_t loads;
    /* Whole shots in one load. */
    uint32_t shots_per_load;
    /* Shots from the last load. */
    uint32_t shots_in_last;
} pour_injector_loads_result;

/* The columns of `pour_injector_loads_n`: the parameters of `pour_injector_loads`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_injector_loads_columns {
    /* Number of shots. */
    struct pour_column shots;
    /* Mass of one shot, sprue included. */
    struct pour_column shot_mass_g;
    /* Density of what the injector draws: hot, voids counted. */
    struct pour_column shot_density_g_per_ml;
    /* Volume that the injector takes up at most. */
    struct pour_column injector_capacity_ml;
    /* Volume that stays in the injector each time it is emptied; below its capacity. May be omitted. */
    struct pour_column injector_residue_ml;
} pour_injector_loads_columns;

/* Where `pour_injector_loads_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_injector_loads_result_columns {
    /* Number of injector loads. */
    struct pour_result_column loads;
    /* Whole shots in one load. */
    struct pour_result_column shots_per_load;
    /* Shots from the last load. */
    struct pour_result_column shots_in_last;
} pour_injector_loads_result_columns;

/* The input of `pour_batch_need`. Begin with `POUR_BATCH_NEED_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_batch_need_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Number of good pieces needed. 1 to 1000000. */
    uint32_t pieces;
    /* Number of cavities that a shot fills. 1 to 1000000. */
    uint32_t cavities;
    /* Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. */
    double shot_mass_g;
    /* Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to 25. */
    double shot_density_g_per_ml;
    /* Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15. */
    double injector_capacity_ml;
    /* Volume that stays in the injector each time it is emptied; below its capacity. Unit: mL; 0 to 1e15.
     * Default: 0. */
    double injector_residue_ml;
    /* Number of times the injector is cleaned or goes cold, the last time included. 1 to 1000000. Default: 1. */
    uint32_t cleanings;
    /* Mass of a shot that stays as sprue; at most the mass of the shot. Unit: g; 0 to 1e15. Default: 0. */
    double sprue_mass_g;
    /* Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0. */
    double returned;
    /* Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to 1e15. Default: 0. */
    double pot_film_g;
    /* Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to 1e15. Default: 0. */
    double pot_heel_g;
    /* Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0. */
    double rejects;
    /* Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9. */
    double confidence;
} pour_batch_need_input;

/* The results of `pour_batch_need`. */
typedef struct pour_batch_need_result {
    /* Mass to mix. Unit: g. */
    double total_mass_g;
    /* Mass of all shots. Unit: g. */
    double drawn_mass_g;
    /* Mass of sprues that go back and are shot again. Unit: g. */
    double returned_mass_g;
    /* Mass of all pieces. Unit: g. */
    double pieces_mass_g;
    /* Mass of sprues that are left over. Unit: g. */
    double sprues_mass_g;
    /* Mass that stays in the injector over the run. Unit: g. */
    double kept_mass_g;
    /* Mass that stays in the cup: the heel, with the film in it. Unit: g. */
    double in_cup_mass_g;
    /* Number of shots. */
    uint32_t shots;
    /* Number of injector loads. */
    uint32_t loads;
    /* Whole shots in one load. */
    uint32_t shots_per_load;
    /* Shots from the last load. */
    uint32_t shots_in_last;
} pour_batch_need_result;

/* The columns of `pour_batch_need_n`: the parameters of `pour_batch_need`. Set all to 0 first: a parameter
 * that may be omitted has no column then. */
typedef struct pour_batch_need_columns {
    /* Number of good pieces needed. */
    struct pour_column pieces;
    /* Number of cavities that a shot fills. */
    struct pour_column cavities;
    /* Mass of one shot, sprue included. */
    struct pour_column shot_mass_g;
    /* Density of what the injector draws: hot, voids counted. */
    struct pour_column shot_density_g_per_ml;
    /* Volume that the injector takes up at most. */
    struct pour_column injector_capacity_ml;
    /* Volume that stays in the injector each time it is emptied; below its capacity. May be omitted. */
    struct pour_column injector_residue_ml;
    /* Number of times the injector is cleaned or goes cold, the last time included. May be omitted. */
    struct pour_column cleanings;
    /* Mass of a shot that stays as sprue; at most the mass of the shot. May be omitted. */
    struct pour_column sprue_mass_g;
    /* Share of the sprues that is melted again. May be omitted. */
    struct pour_column returned;
    /* Mass that clings to the wall of the cup, part of the heel. May be omitted. */
    struct pour_column pot_film_g;
    /* Mass that cannot be drawn from the cup, its film included. May be omitted. */
    struct pour_column pot_heel_g;
    /* Share of pieces that are not fit to sell. May be omitted. */
    struct pour_column rejects;
    /* Confidence that enough good pieces come out. May be omitted. */
    struct pour_column confidence;
} pour_batch_need_columns;

/* Where `pour_batch_need_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_batch_need_result_columns {
    /* Mass to mix. Unit: g. */
    struct pour_result_column total_mass_g;
    /* Mass of all shots. Unit: g. */
    struct pour_result_column drawn_mass_g;
    /* Mass of sprues that go back and are shot again. Unit: g. */
    struct pour_result_column returned_mass_g;
    /* Mass of all pieces. Unit: g. */
    struct pour_result_column pieces_mass_g;
    /* Mass of sprues that are left over. Unit: g. */
    struct pour_result_column sprues_mass_g;
    /* Mass that stays in the injector over the run. Unit: g. */
    struct pour_result_column kept_mass_g;
    /* Mass that stays in the cup: the heel, with the film in it. Unit: g. */
    struct pour_result_column in_cup_mass_g;
    /* Number of shots. */
    struct pour_result_column shots;
    /* Number of injector loads. */
    struct pour_result_column loads;
    /* Whole shots in one load. */
    struct pour_result_column shots_per_load;
    /* Shots from the last load. */
    struct pour_result_column shots_in_last;
} pour_batch_need_result_columns;

/* The results of `pour_base_to_mark`. */
typedef struct pour_base_to_mark_result {
    /* Volume of base: the mark. Unit: mL. */
    double base_volume_ml;
    /* Mass of that base. Unit: g. */
    double base_mass_g;
    /* Mass of the mix with all doses. Unit: g. */
    double mix_mass_g;
    /* Mass that is more than needed. Unit: g. */
    double surplus_mass_g;
    /* Whole shots that the surplus gives, where the mass of a shot is given. `POUR_OMITTED_COUNT` where there
     * is none. */
    uint32_t extra_shots;
} pour_base_to_mark_result;

/* The columns of `pour_base_to_mark_n`: the parameters of `pour_base_to_mark`. Set all to 0 first: a parameter
 * that may be omitted has no column then. */
typedef struct pour_base_to_mark_columns {
    /* Mass of mix that is needed. */
    struct pour_column mix_needed_g;
    /* Share of base in the mix, by mass. */
    struct pour_column base_fraction;
    /* Density of the base, cold and liquid, as a cup measures it. */
    struct pour_column base_density_g_per_ml;
    /* Volume of the cup up to its last mark. */
    struct pour_column cup_capacity_ml;
    /* Distance between the marks of the cup. May be omitted. */
    struct pour_column cup_mark_ml;
    /* Mass of one shot, sprue included. May be omitted. */
    struct pour_column shot_mass_g;
} pour_base_to_mark_columns;

/* Where `pour_base_to_mark_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_base_to_mark_result_columns {
    /* Volume of base: the mark. Unit: mL. */
    struct pour_result_column base_volume_ml;
    /* Mass of that base. Unit: g. */
    struct pour_result_column base_mass_g;
    /* Mass of the mix with all doses. Unit: g. */
    struct pour_result_column mix_mass_g;
    /* Mass that is more than needed. Unit: g. */
    struct pour_result_column surplus_mass_g;
    /* Whole shots that the surplus gives, where the mass of a shot is given. NaN where there is none. */
    struct pour_result_column extra_shots;
} pour_base_to_mark_result_columns;

/* One row of `doses`. The doses: of each its smallest step, its tolerance and its ratio to the base. */
typedef struct pour_doses_row {
    /* Smallest step in which a dose can be measured: a drop, the smallest spoon, the readability of the
     * balance. Unit: g; 1e-12 to 1e15. */
    double dose_step_g;
    /* Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05. */
    double tolerance;
    /* Dose, mass per mass of base. Unit: 1; 1e-9 to 10. */
    double dose_ratio;
} pour_doses_row;

/* The results of `pour_least_pot`. */
typedef struct pour_least_pot_result {
    /* Mass of the mix. Unit: g. */
    double mix_mass_g;
    /* Mass of base in it. Unit: g. */
    double base_mass_g;
} pour_least_pot_result;

/* The results of `pour_reject_rate`. */
typedef struct pour_reject_rate_result {
    /* Share of rejects. Unit: 1. */
    double rejects;
    /* Its lower bound. Unit: 1. */
    double rejects_min;
    /* Its upper bound. Unit: 1. */
    double rejects_max;
} pour_reject_rate_result;

/* The columns of `pour_reject_rate_n`: the parameters of `pour_reject_rate`. Set all to 0 first: a parameter
 * that may be omitted has no column then. */
typedef struct pour_reject_rate_columns {
    /* Number of pieces that were cast. */
    struct pour_column cast_pieces;
    /* Number of them that are not fit to sell. */
    struct pour_column reject_count;
    /* Confidence that enough good pieces come out. May be omitted. */
    struct pour_column confidence;
} pour_reject_rate_columns;

/* Where `pour_reject_rate_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_reject_rate_result_columns {
    /* Share of rejects. Unit: 1. */
    struct pour_result_column rejects;
    /* Its lower bound. Unit: 1. */
    struct pour_result_column rejects_min;
    /* Its upper bound. Unit: 1. */
    struct pour_result_column rejects_max;
} pour_reject_rate_result_columns;

/* One row of `cups`. The cups with evenly spaced marks: of each the distance between marks and the capacity. */
typedef struct pour_cups_row {
    /* Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark alone, when it is full. */
    double cup_mark_ml;
    /* Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15. */
    double cup_capacity_ml;
} pour_cups_row;

/* The input of `pour_bench_measure`. Begin with `POUR_BENCH_MEASURE_INPUT_INIT`, in which everything is
 * omitted. */
typedef struct pour_bench_measure_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Mass to measure. Unit: g; 1e-12 to 1e15. */
    double mass_to_measure_g;
    /* Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default: 0.05. */
    double tolerance;
    /* Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15.
     * Default: none. */
    double balance_readability_g;
    /* Highest load of the balance. Unit: g; 1e-12 to 1e15. Default: 5000 times its readability. */
    double balance_capacity_g;
    /* Minimum load for which the balance is trusted. Unit: g; 0 to 1e15. Default: 0. */
    double balance_least_load_g;
    /* Volumes of the measuring spoons. 1 to 8 of them. Default: none. */
    const double *spoons_ml;
    /* Number of `spoons_ml`. */
    size_t spoons_count;
    /* The cups with evenly spaced marks: of each the distance between marks and the capacity. 1 to 64 of them.
     * Default: none. */
    const struct pour_cups_row *cups;
    /* Number of `cups`. */
    size_t cups_count;
    /* Density of the material in a measure: of a liquid its density, of a powder its bulk density, level and
     * not tapped. Unit: g/mL; 0.001 to 25. Default: none. */
    double as_measured_density_g_per_ml;
    /* Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none. */
    double drop_mass_g;
} pour_bench_measure_input;

/* The results of `pour_bench_measure`. */
typedef struct pour_bench_measure_result {
    /* Mass that it gives. Unit: g. */
    double mass_g;
    /* (given − needed)/needed. Unit: 1. */
    double deviation;
    /* The tool: balance, cup, spoons or drops. `POUR_TOOL_BALANCE`, `POUR_TOOL_CUP`, `POUR_TOOL_SPOONS`,
     * `POUR_TOOL_DROPS`. */
    int32_t tool;
    /* Amount of handling: readings, fillings, spoonfuls, tens of drops. */
    uint32_t acts;
    /* Number of drops. */
    uint32_t drops;
    /* Number of level spoonfuls of each spoon, in the order of the spoons. */
    uint32_t spoonfuls[8];
    /* Which cup, counted from 1; 0 without one. */
    uint32_t cup;
    /* Number of times that cup is filled to its last mark. */
    uint32_t cup_fillings;
    /* Mark to which it is filled once more, counted from 1; 0 where it is not. */
    uint32_t cup_mark;
} pour_bench_measure_result;

/* The input of `pour_sink_rate`. Begin with `POUR_SINK_RATE_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_sink_rate_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Density of the piece, its salt and voids counted. Unit: g/mL; 0.001 to 25. */
    double piece_density_g_per_ml;
    /* Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15. */
    double piece_volume_ml;
    /* Mean diameter of the piece. Unit: mm; 1e-6 to 1e6. */
    double diameter_mm;
    /* Temperature of the water. Unit: °C; 0 to 40. */
    double water_temperature_celsius;
    /* Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none. */
    double length_mm;
    /* Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
     * ball. One of `POUR_SHAPE_...`; 0 omits it. */
    int32_t shape;
    /* Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
    double hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
    double hook_volume_ml;
    /* Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
     * water without either. Unit: 1; 0 to 41.8. Default: none. */
    double salinity_practical;
    /* Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
     * one. Unit: 1; 0 to 0.042. Default: none. */
    double salinity_absolute;
    /* Standard uncertainty of the density of the piece; its bounds are counted at twice that. Unit: g/mL; 0 to
     * 25. Default: 0. */
    double density_uncertainty_g_per_ml;
    /* Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none. */
    double depth_m;
    /* Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none. */
    double drop_depth_m;
    /* Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none. */
    double drop_time_s;
    /* Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none. */
    double drop_density_g_per_ml;
} pour_sink_rate_input;

/* The results of `pour_sink_rate`. */
typedef struct pour_sink_rate_result {
    /* Sink rate. Unit: cm/s. */
    double sink_rate_cm_per_s;
    /* Lower bound; 0 where the piece may hang or float. Unit: cm/s. */
    double sink_rate_min_cm_per_s;
    /* Upper bound. Unit: cm/s. */
    double sink_rate_max_cm_per_s;
    /* Whether it sinks straight: straight, may-swing or swings. `POUR_MOTION_STRAIGHT`,
     * `POUR_MOTION_MAY_SWING`, `POUR_MOTION_SWINGS`. */
    int32_t motion;
    /* Reynolds number. Unit: 1. */
    double reynolds;
    /* Drag coefficient, on length times diameter of a stick and the cross-section of a ball. Unit: 1. */
    double drag_coefficient;
    /* Time to the depth, let go at rest just below the surface. Unit: s. NaN where there is none. */
    double sink_time_s;
} pour_sink_rate_result;

/* The columns of `pour_sink_rate_n`: the parameters of `pour_sink_rate`. Set all to 0 first: a parameter that
 * may be omitted has no column then. A word counts for all rows. */
typedef struct pour_sink_rate_columns {
    /* Density of the piece, its salt and voids counted. */
    struct pour_column piece_density_g_per_ml;
    /* Volume of the piece without its hook. */
    struct pour_column piece_volume_ml;
    /* Mean diameter of the piece. */
    struct pour_column diameter_mm;
    /* Temperature of the water. */
    struct pour_column water_temperature_celsius;
    /* Length of a stick, at least 2.01 diameters; not used for a ball. May be omitted. */
    struct pour_column length_mm;
    /* Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
     * ball. One of `POUR_SHAPE_...`; 0 omits it. */
    int32_t shape;
    /* Mass of hook and weight on a piece; give its volume too. May be omitted. */
    struct pour_column hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. May be omitted. */
    struct pour_column hook_volume_ml;
    /* Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
     * water without either. May be omitted. */
    struct pour_column salinity_practical;
    /* Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
     * one. May be omitted. */
    struct pour_column salinity_absolute;
    /* Standard uncertainty of the density of the piece; its bounds are counted at twice that. May be omitted. */
    struct pour_column density_uncertainty_g_per_ml;
    /* Depth to give the sink time for. May be omitted. */
    struct pour_column depth_m;
    /* Depth of a timed drop, the piece let go just below the surface. May be omitted. */
    struct pour_column drop_depth_m;
    /* Time of the timed drop. May be omitted. */
    struct pour_column drop_time_s;
    /* Density of the piece that was dropped. May be omitted. */
    struct pour_column drop_density_g_per_ml;
} pour_sink_rate_columns;

/* Where `pour_sink_rate_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_sink_rate_result_columns {
    /* Sink rate. Unit: cm/s. */
    struct pour_result_column sink_rate_cm_per_s;
    /* Lower bound; 0 where the piece may hang or float. Unit: cm/s. */
    struct pour_result_column sink_rate_min_cm_per_s;
    /* Upper bound. Unit: cm/s. */
    struct pour_result_column sink_rate_max_cm_per_s;
    /* Whether it sinks straight: straight, may-swing or swings. `POUR_MOTION_STRAIGHT`,
     * `POUR_MOTION_MAY_SWING`, `POUR_MOTION_SWINGS`. */
    struct pour_result_column motion;
    /* Reynolds number. Unit: 1. */
    struct pour_result_column reynolds;
    /* Drag coefficient, on length times diameter of a stick and the cross-section of a ball. Unit: 1. */
    struct pour_result_column drag_coefficient;
    /* Time to the depth, let go at rest just below the surface. Unit: s. NaN where there is none. */
    struct pour_result_column sink_time_s;
} pour_sink_rate_result_columns;

/* The input of `pour_density_for_sink_rate`. Begin with `POUR_DENSITY_FOR_SINK_RATE_INPUT_INIT`, in which
 * everything is omitted. */
typedef struct pour_density_for_sink_rate_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6. */
    double sink_rate_cm_per_s;
    /* Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15. */
    double piece_volume_ml;
    /* Mean diameter of the piece. Unit: mm; 1e-6 to 1e6. */
    double diameter_mm;
    /* Temperature of the water. Unit: °C; 0 to 40. */
    double water_temperature_celsius;
    /* Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to 1e6. Default: none. */
    double length_mm;
    /* Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
     * ball. One of `POUR_SHAPE_...`; 0 omits it. */
    int32_t shape;
    /* Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15. Default: 0. */
    double hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. Unit: mL; 0 to 1e15. Default: 0. */
    double hook_volume_ml;
    /* Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
     * water without either. Unit: 1; 0 to 41.8. Default: none. */
    double salinity_practical;
    /* Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
     * one. Unit: 1; 0 to 0.042. Default: none. */
    double salinity_absolute;
    /* Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9 to 12000. Default: none. */
    double drop_depth_m;
    /* Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none. */
    double drop_time_s;
    /* Density of the piece that was dropped. Unit: g/mL; 0.001 to 25. Default: none. */
    double drop_density_g_per_ml;
} pour_density_for_sink_rate_input;

/* The columns of `pour_density_for_sink_rate_n`: the parameters of `pour_density_for_sink_rate`. Set all to 0
 * first: a parameter that may be omitted has no column then. A word counts for all rows. */
typedef struct pour_density_for_sink_rate_columns {
    /* Sink rate: the final speed of the piece. */
    struct pour_column sink_rate_cm_per_s;
    /* Volume of the piece without its hook. */
    struct pour_column piece_volume_ml;
    /* Mean diameter of the piece. */
    struct pour_column diameter_mm;
    /* Temperature of the water. */
    struct pour_column water_temperature_celsius;
    /* Length of a stick, at least 2.01 diameters; not used for a ball. May be omitted. */
    struct pour_column length_mm;
    /* Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a length is given, else a
     * ball. One of `POUR_SHAPE_...`; 0 omits it. */
    int32_t shape;
    /* Mass of hook and weight on a piece; give its volume too. May be omitted. */
    struct pour_column hook_mass_g;
    /* Volume that hook and weight displace; give their mass too. May be omitted. */
    struct pour_column hook_volume_ml;
    /* Practical salinity as a probe reads it, about 35 in the ocean; give this or the absolute one. Fresh
     * water without either. May be omitted. */
    struct pour_column salinity_practical;
    /* Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035); give this or the practical
     * one. May be omitted. */
    struct pour_column salinity_absolute;
    /* Depth of a timed drop, the piece let go just below the surface. May be omitted. */
    struct pour_column drop_depth_m;
    /* Time of the timed drop. May be omitted. */
    struct pour_column drop_time_s;
    /* Density of the piece that was dropped. May be omitted. */
    struct pour_column drop_density_g_per_ml;
} pour_density_for_sink_rate_columns;

/* Where `pour_density_for_sink_rate_n` writes its results. Set all to 0 first: what has no column is not
 * written. */
typedef struct pour_density_for_sink_rate_result_columns {
    /* Density of the piece, voids and salt counted. Unit: g/mL. */
    struct pour_result_column piece_density_g_per_ml;
} pour_density_for_sink_rate_result_columns;

/* One row of `points`. The shop's own measured points, by rising ratio: of each the ratio and the durometer
 * reading. */
typedef struct pour_points_row {
    /* Softener or hardener of a measured point, mass per mass of base. Unit: 1; 0 to 100. */
    double point_ratio;
    /* Durometer reading of a measured point. Unit: 1; 0 to 100. */
    double point_hardness;
} pour_points_row;

/* One row of `salted_points`. The shop's own measured points, by rising salt: of each the salt and the
 * softener, mass per mass of base. */
typedef struct pour_salted_points_row {
    /* Salt of a measured point, mass per mass of base. Unit: 1; 0 to 10. */
    double point_salt;
    /* Softener that the shop adds at that salt, mass per mass of base. Unit: 1; 0 to 10. */
    double point_softener;
} pour_salted_points_row;

/* The columns of `pour_water_density_n`: the parameters of `pour_water_density`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_water_density_columns {
    /* Temperature of the water. */
    struct pour_column water_temperature_celsius;
} pour_water_density_columns;

/* Where `pour_water_density_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_water_density_result_columns {
    /* Density of the water. Unit: g/mL. */
    struct pour_result_column density_g_per_ml;
} pour_water_density_result_columns;

/* The columns of `pour_cavity_of_water_n`: the parameters of `pour_cavity_of_water`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_cavity_of_water_columns {
    /* Reading of the balance for the water in one cavity: filled less empty. */
    struct pour_column water_mass_g;
    /* Temperature of the water. */
    struct pour_column water_temperature_celsius;
    /* Air pressure at the balance, not reduced to sea level. May be omitted. */
    struct pour_column air_pressure_kpa;
} pour_cavity_of_water_columns;

/* Where `pour_cavity_of_water_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_cavity_of_water_result_columns {
    /* Volume of the cavity. Unit: mL. */
    struct pour_result_column cavity_volume_ml;
} pour_cavity_of_water_result_columns;

/* The columns of `pour_standard_pressure_n`: the parameters of `pour_standard_pressure`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_standard_pressure_columns {
    /* Height above sea level, as a map gives it; negative below it. */
    struct pour_column altitude_m;
} pour_standard_pressure_columns;

/* Where `pour_standard_pressure_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_standard_pressure_result_columns {
    /* Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa. */
    struct pour_result_column station_pressure_kpa;
} pour_standard_pressure_result_columns;

/* The columns of `pour_station_pressure_n`: the parameters of `pour_station_pressure`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_station_pressure_columns {
    /* Air pressure as a weather report gives it, reduced to sea level; needs the altitude. */
    struct pour_column reported_pressure_kpa;
    /* Height above sea level, as a map gives it; negative below it. */
    struct pour_column altitude_m;
} pour_station_pressure_columns;

/* Where `pour_station_pressure_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_station_pressure_result_columns {
    /* Air pressure at the place itself; also the maximum that a true vacuum gauge shows there. Unit: kPa. */
    struct pour_result_column station_pressure_kpa;
} pour_station_pressure_result_columns;

/* The input of `pour_swollen_volume`. Begin with `POUR_SWOLLEN_VOLUME_INPUT_INIT`, in which everything is
 * omitted. */
typedef struct pour_swollen_volume_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15. */
    double liquid_volume_ml;
    /* Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1. */
    double entrained_air;
    /* Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178. */
    double station_pressure_kpa;
    /* Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
     * Unit: kPa; 0 to 180. Default: none. */
    double gauge_vacuum_kpa;
    /* Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit:
     * kPa; 0 to 180. Default: none. */
    double absolute_pressure_kpa;
    /* How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial.
     * Unit: kPa; 0 to 101. Default: 3.0477501. */
    double dial_tolerance_kpa;
    /* Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0
     * to 180. Default: 0. */
    double vapor_pressure_kpa;
    /* Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200.
     * Default: none. */
    double damp_at_celsius;
} pour_swollen_volume_input;

/* The results of `pour_swollen_volume`. */
typedef struct pour_swollen_volume_result {
    /* Volume in the vacuum. Unit: mL. */
    double swollen_volume_ml;
    /* Volume before, bubbles included. Unit: mL. */
    double standing_volume_ml;
    /* Pressure that is left in the chamber. Unit: kPa. */
    double absolute_pressure_kpa;
} pour_swollen_volume_result;

/* The columns of `pour_swollen_volume_n`: the parameters of `pour_swollen_volume`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_swollen_volume_columns {
    /* Volume of the pot, cold and without air. */
    struct pour_column liquid_volume_ml;
    /* Share of air in the mix by volume, under the outside pressure. */
    struct pour_column entrained_air;
    /* Air pressure at the place itself, not reduced to sea level. */
    struct pour_column station_pressure_kpa;
    /* Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
     * May be omitted. */
    struct pour_column gauge_vacuum_kpa;
    /* Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. May be
     * omitted. */
    struct pour_column absolute_pressure_kpa;
    /* How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. May
     * be omitted. */
    struct pour_column dial_tolerance_kpa;
    /* Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. May be
     * omitted. */
    struct pour_column vapor_pressure_kpa;
    /* Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. May be omitted. */
    struct pour_column damp_at_celsius;
} pour_swollen_volume_columns;

/* Where `pour_swollen_volume_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_swollen_volume_result_columns {
    /* Volume in the vacuum. Unit: mL. */
    struct pour_result_column swollen_volume_ml;
    /* Volume before, bubbles included. Unit: mL. */
    struct pour_result_column standing_volume_ml;
    /* Pressure that is left in the chamber. Unit: kPa. */
    struct pour_result_column absolute_pressure_kpa;
} pour_swollen_volume_result_columns;

/* The input of `pour_entrained_air`. Begin with `POUR_ENTRAINED_AIR_INPUT_INIT`, in which everything is
 * omitted. */
typedef struct pour_entrained_air_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Level of a pot in the vacuum over its level before; give this or the entrained air. Unit: 1; 1 to 1000. */
    double rise;
    /* Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178. */
    double station_pressure_kpa;
    /* Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
     * Unit: kPa; 0 to 180. Default: none. */
    double gauge_vacuum_kpa;
    /* Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit:
     * kPa; 0 to 180. Default: none. */
    double absolute_pressure_kpa;
    /* How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial.
     * Unit: kPa; 0 to 101. Default: 3.0477501. */
    double dial_tolerance_kpa;
    /* Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0
     * to 180. Default: 0. */
    double vapor_pressure_kpa;
    /* Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200.
     * Default: none. */
    double damp_at_celsius;
} pour_entrained_air_input;

/* The columns of `pour_entrained_air_n`: the parameters of `pour_entrained_air`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_entrained_air_columns {
    /* Level of a pot in the vacuum over its level before; give this or the entrained air. */
    struct pour_column rise;
    /* Air pressure at the place itself, not reduced to sea level. */
    struct pour_column station_pressure_kpa;
    /* Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
     * May be omitted. */
    struct pour_column gauge_vacuum_kpa;
    /* Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. May be
     * omitted. */
    struct pour_column absolute_pressure_kpa;
    /* How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. May
     * be omitted. */
    struct pour_column dial_tolerance_kpa;
    /* Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. May be
     * omitted. */
    struct pour_column vapor_pressure_kpa;
    /* Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. May be omitted. */
    struct pour_column damp_at_celsius;
} pour_entrained_air_columns;

/* Where `pour_entrained_air_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_entrained_air_result_columns {
    /* Share of air in the mix by volume, under the outside pressure. Unit: 1. */
    struct pour_result_column entrained_air;
} pour_entrained_air_result_columns;

/* The input of `pour_degas_vessel`. Begin with `POUR_DEGAS_VESSEL_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_degas_vessel_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15. */
    double liquid_volume_ml;
    /* Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to below 1. */
    double entrained_air;
    /* Air pressure at the place itself, not reduced to sea level. Unit: kPa; 22.6 to 178. */
    double station_pressure_kpa;
    /* Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
     * Unit: kPa; 0 to 180. Default: none. */
    double gauge_vacuum_kpa;
    /* Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. Unit:
     * kPa; 0 to 180. Default: none. */
    double absolute_pressure_kpa;
    /* How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial.
     * Unit: kPa; 0 to 101. Default: 3.0477501. */
    double dial_tolerance_kpa;
    /* Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. Unit: kPa; 0
     * to 180. Default: 0. */
    double vapor_pressure_kpa;
    /* Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. Unit: °C; 0.01 to 200.
     * Default: none. */
    double damp_at_celsius;
    /* Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default: 0.1. */
    double vessel_spare;
    /* Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. It may be omitted. */
    double vessel_brim_ml;
    /* Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default: any level. */
    double vessel_mark_ml;
} pour_degas_vessel_input;

/* The results of `pour_degas_vessel`. */
typedef struct pour_degas_vessel_result {
    /* Volume to the brim of a vessel that takes the pot at once. Unit: mL. */
    double vessel_volume_ml;
    /* Level to fill the given vessel to at most, bubbles included. Unit: mL. NaN where there is none. */
    double fill_mark_ml;
    /* Number of fills of the given vessel. `POUR_OMITTED_COUNT` where there is none. */
    uint32_t fills;
    /* Level of each fill, shared out evenly, bubbles included. Unit: mL. NaN where there is none. */
    double fill_level_ml;
    /* Volume of an even fill in the vacuum. Unit: mL. NaN where there is none. */
    double fill_swollen_ml;
} pour_degas_vessel_result;

/* The columns of `pour_degas_vessel_n`: the parameters of `pour_degas_vessel`. Set all to 0 first: a parameter
 * that may be omitted has no column then. */
typedef struct pour_degas_vessel_columns {
    /* Volume of the pot, cold and without air. */
    struct pour_column liquid_volume_ml;
    /* Share of air in the mix by volume, under the outside pressure. */
    struct pour_column entrained_air;
    /* Air pressure at the place itself, not reduced to sea level. */
    struct pour_column station_pressure_kpa;
    /* Reading of a vacuum gauge, which counts down from the air outside; give this or the absolute pressure.
     * May be omitted. */
    struct pour_column gauge_vacuum_kpa;
    /* Pressure that is left in the chamber, counted from nothing at all; give this or the gauge vacuum. May be
     * omitted. */
    struct pour_column absolute_pressure_kpa;
    /* How far the vacuum gauge may be off to either side; the default, 0.9 inHg, is 3 % of a common dial. May
     * be omitted. */
    struct pour_column dial_tolerance_kpa;
    /* Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure in the chamber. May be
     * omitted. */
    struct pour_column vapor_pressure_kpa;
    /* Temperature of a damp pot, whose water boils under vacuum; omit it for a dry pot. May be omitted. */
    struct pour_column damp_at_celsius;
    /* Share of the vessel that stays empty. May be omitted. */
    struct pour_column vessel_spare;
    /* Volume of the vessel up to its brim. May be omitted. */
    struct pour_column vessel_brim_ml;
    /* Distance between the vessel's marks. May be omitted. */
    struct pour_column vessel_mark_ml;
} pour_degas_vessel_columns;

/* Where `pour_degas_vessel_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_degas_vessel_result_columns {
    /* Volume to the brim of a vessel that takes the pot at once. Unit: mL. */
    struct pour_result_column vessel_volume_ml;
    /* Level to fill the given vessel to at most, bubbles included. Unit: mL. NaN where there is none. */
    struct pour_result_column fill_mark_ml;
    /* Number of fills of the given vessel. NaN where there is none. */
    struct pour_result_column fills;
    /* Level of each fill, shared out evenly, bubbles included. Unit: mL. NaN where there is none. */
    struct pour_result_column fill_level_ml;
    /* Volume of an even fill in the vacuum. Unit: mL. NaN where there is none. */
    struct pour_result_column fill_swollen_ml;
} pour_degas_vessel_result_columns;

/* The results of `pour_flake_count`. */
typedef struct pour_flake_count_result {
    /* Number of particles, not rounded. Unit: 1. */
    double particles;
    /* Area of film, one face of every particle. Unit: cm2. */
    double area_cm2;
} pour_flake_count_result;

/* The input of `pour_flake_swap`. Begin with `POUR_FLAKE_SWAP_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_flake_swap_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. 0.05 to 6.35 mm. */
    const char *cut;
    /* Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350. */
    double thickness_um;
    /* Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25. */
    double film_density_g_per_ml;
    /* Mass of the dose of flake. Unit: g; 1e-12 to 1e15. */
    double flake_dose_g;
    /* Size and shape of the other flake. 0.05 to 6.35 mm. */
    const char *other_cut;
    /* Thickness of the film of the other flake; below the size of its cut. Unit: µm; 1e-3 to 6350. */
    double other_thickness_um;
    /* Density of the film of the other flake. Unit: g/mL; 0.001 to 25. */
    double other_film_density_g_per_ml;
    /* Bulk density of the other flake, level in the spoon. Unit: g/mL; 0.001 to 25. Default: none. */
    double other_as_scooped_g_per_ml;
    /* What the two doses of flake have in common: the number of particles or the area of film. Default: area.
     * One of `POUR_ALIKE_...`; 0 omits it. */
    int32_t alike;
} pour_flake_swap_input;

/* The results of `pour_flake_swap`. */
typedef struct pour_flake_swap_result {
    /* Mass of the other flake. Unit: g. */
    double mass_g;
    /* Volume to scoop of it, where its bulk density is given. Unit: mL. NaN where there is none. */
    double scoop_ml;
    /* Particles of the other dose over those of the first. Unit: 1. */
    double count_ratio;
    /* Area of the other dose over that of the first. Unit: 1. */
    double area_ratio;
} pour_flake_swap_result;

/* The columns of `pour_color_difference_n`: the parameters of `pour_color_difference`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_color_difference_columns {
    /* L* of the color: 0 for black, 100 for white. */
    struct pour_column lightness;
    /* a* of the color: green below 0, red above. */
    struct pour_column a;
    /* b* of the color: blue below 0, yellow above. */
    struct pour_column b;
    /* L* of the other color. */
    struct pour_column other_lightness;
    /* a* of the other color. */
    struct pour_column other_a;
    /* b* of the other color. */
    struct pour_column other_b;
} pour_color_difference_columns;

/* Where `pour_color_difference_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_color_difference_result_columns {
    /* ΔE₀₀. Unit: 1. */
    struct pour_result_column difference;
} pour_color_difference_result_columns;

/* One row of `readings`. Temperatures in the order of time, taken as straight between. */
typedef struct pour_readings_row {
    /* Time of a reading, after that of the one before. Unit: s; 0 to 1e15. */
    double reading_time_s;
    /* Temperature of a reading. Unit: °C; -73 to 427. */
    double reading_temperature_celsius;
} pour_readings_row;

/* The results of `pour_budget_left`. */
typedef struct pour_budget_left_result {
    /* Budget at this dose of stabilizer. Unit: s. */
    double budget_s;
    /* Time that is left; 0 where more was spent. Unit: s. */
    double left_s;
    /* Time that was spent beyond the budget; 0 where it was not. Unit: s. */
    double overspent_s;
} pour_budget_left_result;

/* The columns of `pour_budget_left_n`: the parameters of `pour_budget_left`. Set all to 0 first: a parameter
 * that may be omitted has no column then. */
typedef struct pour_budget_left_columns {
    /* Time at the reference temperature that the plastisol withstands. */
    struct pour_column heat_budget_s;
    /* Equivalent time that the pot has spent so far, at the temperature of its budget. */
    struct pour_column equivalent_time_s;
    /* Stabilizer that the heat budget is stated for, by mass of base. May be omitted. */
    struct pour_column budget_with;
    /* Stabilizer in the mix, by mass of base. May be omitted. */
    struct pour_column stabilizer_dose;
    /* Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000 s is 5 min for
     * every 1 %. May be omitted. */
    struct pour_column extra_time_s;
    /* Highest dose of stabilizer for which the extra time is known, by mass of base. May be omitted. */
    struct pour_column extra_most;
} pour_budget_left_columns;

/* Where `pour_budget_left_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_budget_left_result_columns {
    /* Budget at this dose of stabilizer. Unit: s. */
    struct pour_result_column budget_s;
    /* Time that is left; 0 where more was spent. Unit: s. */
    struct pour_result_column left_s;
    /* Time that was spent beyond the budget; 0 where it was not. Unit: s. */
    struct pour_result_column overspent_s;
} pour_budget_left_result_columns;

/* One row of `timings`. Heatings that the shop has timed, all at one setting: of each the mass of the mix, the
 * temperatures before and after and the time; needed without the rated power. */
typedef struct pour_timings_row {
    /* Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15. */
    double timed_mass_g;
    /* Temperature before a timed heating. Unit: °C; -73 to 427. */
    double timed_from_celsius;
    /* Temperature after a timed heating, stirred; above that before. Unit: °C; -73 to 427. */
    double timed_to_celsius;
    /* Time that the oven ran in a timed heating. Unit: s; 1e-3 to 1e9. */
    double timed_time_s;
} pour_timings_row;

/* The input of `pour_heat_time`. Begin with `POUR_HEAT_TIME_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_heat_time_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
    double pot_mass_g;
    /* Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10. */
    double specific_heat_j_per_g_k;
    /* The temperature before heating. Unit: °C; -73 to 427. */
    double heated_from_celsius;
    /* The temperature after heating, above that before. Unit: °C; -73 to 427. */
    double heated_to_celsius;
    /* Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures
     * before and after and the time; needed without the rated power. 1 to 1000 of them. Default: none. */
    const struct pour_timings_row *timings;
    /* Number of `timings`. */
    size_t timings_count;
    /* Rated power of the oven, its output at full power: a first guess, not used once there are timings;
     * needed without them. Unit: W; 50 to 10000. Default: none. */
    double oven_power_w;
    /* Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the timings. */
    double setting;
    /* Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was
     * timed. Unit: 1/K; -0.002 to 0.01. Default: 0. */
    double specific_heat_rise_per_kelvin;
    /* Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as `specific_heat_j_per_g_k`. */
    double timed_specific_heat_j_per_g_k;
    /* Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings. */
    double vessel_mass_g;
    /* Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none. */
    double vessel_specific_heat_j_per_g_k;
} pour_heat_time_input;

/* The results of `pour_heat_time`. */
typedef struct pour_heat_time_result {
    /* Heating time. Unit: s. */
    double heat_time_s;
    /* Its standard uncertainty for one more heating. Unit: s. */
    double heat_time_uncertainty_s;
    /* Power that reaches mix and vessel. Unit: W. */
    double power_w;
    /* How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1. NaN where
     * there is none. */
    double beyond;
} pour_heat_time_result;

/* The input of `pour_next_burst`. Begin with `POUR_NEXT_BURST_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_next_burst_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
    double pot_mass_g;
    /* Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10. */
    double specific_heat_j_per_g_k;
    /* Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427. */
    double reading_celsius;
    /* Lowest temperature at which the mix is shot, its material's own. Unit: °C; -73 to 427. */
    double window_bottom_celsius;
    /* Highest temperature at which the mix is shot, its material's own; above the lowest. Unit: °C; -73 to
     * 427. */
    double window_top_celsius;
    /* Heatings that the shop has timed, all at one setting: of each the mass of the mix, the temperatures
     * before and after and the time; needed without the rated power. 1 to 1000 of them. Default: none. */
    const struct pour_timings_row *timings;
    /* Number of `timings`. */
    size_t timings_count;
    /* Rated power of the oven, its output at full power: a first guess, not used once there are timings;
     * needed without them. Unit: W; 50 to 10000. Default: none. */
    double oven_power_w;
    /* Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that of the timings. */
    double setting;
    /* Rise of the specific heat per kelvin, as a share of that at 25 °C, of what is heated and of what was
     * timed. Unit: 1/K; -0.002 to 0.01. Default: 0. */
    double specific_heat_rise_per_kelvin;
    /* Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10. Default: as `specific_heat_j_per_g_k`. */
    double timed_specific_heat_j_per_g_k;
    /* Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings. */
    double vessel_mass_g;
    /* Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default: none. */
    double vessel_specific_heat_j_per_g_k;
    /* The temperature to heat to. Unit: °C; in the shot window. Default: the middle of the window. */
    double aim_celsius;
    /* How far the thermometer may be off. Unit: K; 0 to 100. Default: 2. */
    double thermometer_kelvin;
    /* Shortest burst that can be set, of which the others are multiples. Unit: s; 1e-3 to 3600. Default: 5. */
    double burst_step_s;
    /* Longest burst without a stir, at least the shortest. Unit: s; 1e-3 to 3600. Default: 120. */
    double longest_burst_s;
    /* How long a turn of full power and none takes at a setting below full power. Unit: s; 0 to 3600. Default:
     * 30. */
    double oven_turn_s;
    /* The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One of
     * `POUR_MEASURES_...`; 0 omits it. */
    int32_t measures;
} pour_next_burst_input;

/* The results of `pour_next_burst`. */
typedef struct pour_next_burst_result {
    /* The next burst; none where the pot is hot enough. Unit: s. NaN where there is none. */
    double burst_s;
    /* The expected reading after it. Unit: °C. NaN where there is none. */
    double expected_celsius;
    /* Shoot from this reading on. Unit: °C. */
    double shoot_from_celsius;
    /* Shoot up to this reading; above it, stop and let the pot cool. Unit: °C. */
    double shoot_to_celsius;
    /* Number of bursts that are expected from this reading on. */
    uint32_t bursts;
    /* Time that the oven is expected to run in them. Unit: s. */
    double oven_time_s;
} pour_next_burst_result;

/* The input of `pour_stays_hot`. Begin with `POUR_STAYS_HOT_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_stays_hot_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
    double pot_mass_g;
    /* Temperature after the last burst. Unit: °C; -73 to 427. */
    double hot_from_celsius;
    /* Temperature down to which the pot can be shot, above that of the room. Unit: °C; -73 to 427. */
    double hot_to_celsius;
    /* Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15. */
    double watched_mass_g;
    /* First reading of a pot that was watched to cool, from its second minute on, stirred. Unit: °C; -73 to
     * 427. */
    double watched_from_celsius;
    /* Second reading of a pot that was watched to cool, stirred; below the first and above that of the room.
     * Unit: °C; -73 to 427. */
    double watched_to_celsius;
    /* Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9. */
    double watched_time_s;
    /* Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20. */
    double room_celsius;
    /* How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is, is not calculated. */
    double stood_s;
} pour_stays_hot_input;

/* The results of `pour_stays_hot`. */
typedef struct pour_stays_hot_result {
    /* Time in which the distance to the temperature of the room falls to 37 %. Unit: s. */
    double time_constant_s;
    /* Time down to the lower temperature, with all of the mix in the pot. Unit: s. */
    double hot_for_s;
    /* The same with half of it. Unit: s. */
    double half_full_s;
    /* Temperature after the time that the pot has stood. Unit: °C. NaN where there is none. */
    double after_celsius;
} pour_stays_hot_result;

/* The columns of `pour_stays_hot_n`: the parameters of `pour_stays_hot`. Set all to 0 first: a parameter that
 * may be omitted has no column then. */
typedef struct pour_stays_hot_columns {
    /* Mass of the mix in the pot. */
    struct pour_column pot_mass_g;
    /* Temperature after the last burst. */
    struct pour_column hot_from_celsius;
    /* Temperature down to which the pot can be shot, above that of the room. */
    struct pour_column hot_to_celsius;
    /* Mass of the mix in a pot that was watched to cool. */
    struct pour_column watched_mass_g;
    /* First reading of a pot that was watched to cool, from its second minute on, stirred. */
    struct pour_column watched_from_celsius;
    /* Second reading of a pot that was watched to cool, stirred; below the first and above that of the room. */
    struct pour_column watched_to_celsius;
    /* Time between the two readings of a pot that was watched to cool. */
    struct pour_column watched_time_s;
    /* Temperature of the room, below all others. May be omitted. */
    struct pour_column room_celsius;
    /* How long the pot has stood. May be omitted. */
    struct pour_column stood_s;
} pour_stays_hot_columns;

/* Where `pour_stays_hot_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_stays_hot_result_columns {
    /* Time in which the distance to the temperature of the room falls to 37 %. Unit: s. */
    struct pour_result_column time_constant_s;
    /* Time down to the lower temperature, with all of the mix in the pot. Unit: s. */
    struct pour_result_column hot_for_s;
    /* The same with half of it. Unit: s. */
    struct pour_result_column half_full_s;
    /* Temperature after the time that the pot has stood. Unit: °C. NaN where there is none. */
    struct pour_result_column after_celsius;
} pour_stays_hot_result_columns;

/* One row of `clock_runs`. The pot's shots in their order, like ones together: of each run the number of
 * shots, the mass that one takes, the working time for one, the time that it sets and the number of molds in
 * turn. At most 100 000 shots. */
typedef struct pour_clock_runs_row {
    /* Number of like shots in a row; at most 100 000 from one pot. Unit: 1; 1 to 100000. */
    double pot_shots;
    /* Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. */
    double shot_mass_g;
    /* Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how often a shot
     * can be made is not calculated. */
    double hands_s;
    /* Time that a shot sets in its mold. Unit: s; 0 to 1e6. Default: 0. */
    double sets_s;
    /* Number of such molds that are shot in turn. Unit: 1; 1 to 1000000. Default: 1. */
    double molds;
} pour_clock_runs_row;

/* The input of `pour_pot_heats`. Begin with `POUR_POT_HEATS_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_pot_heats_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Mass of the mix in the pot. Unit: g; 1e-12 to 1e15. */
    double pot_mass_g;
    /* The pot's shots in their order, like ones together: of each run the number of shots, the mass that one
     * takes, the working time for one, the time that it sets and the number of molds in turn. At most 100 000
     * shots. 1 to 1000 of them. */
    const struct pour_clock_runs_row *clock_runs;
    /* Number of `clock_runs`. */
    size_t clock_runs_count;
    /* How long the pot stays hot at one heat, from the last burst to the last shot. Unit: s; 1e-3 to 1e15.
     * Default: from how it cools. */
    double hot_for_s;
    /* Temperature after the last burst; needed with `cools`. Unit: °C; -73 to 427. Default: none. */
    double clock_from_celsius;
    /* Temperature down to which the pot can be shot, above that of the room; needed with `cools`. Unit: °C;
     * -73 to 427. Default: none. */
    double clock_to_celsius;
    /* Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15. It may be omitted. */
    double watched_mass_g;
    /* First reading of a pot that was watched to cool, from its second minute on, stirred. Unit: °C; -73 to
     * 427. It may be omitted. */
    double watched_from_celsius;
    /* Second reading of a pot that was watched to cool, stirred; below the first and above that of the room.
     * Unit: °C; -73 to 427. It may be omitted. */
    double watched_to_celsius;
    /* Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3 to 1e9. It may be
     * omitted. */
    double watched_time_s;
    /* Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20. */
    double room_celsius;
    /* How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is not counted. */
    double oven_time_s;
} pour_pot_heats_input;

/* The results of `pour_pot_heats`. */
typedef struct pour_pot_heats_result {
    /* Number of reheats: the heats but for the first. */
    uint32_t reheats;
    /* Number of shots in the first heat. */
    uint32_t first_shots;
    /* Time of all shots, without the oven. Unit: s. */
    double shooting_time_s;
    /* Time of all shots and of the oven for each heat, where that is given. Unit: s. NaN where there is none. */
    double total_time_s;
} pour_pot_heats_result;

/* The input of `pour_setting_time`. Begin with `POUR_SETTING_TIME_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_setting_time_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Shape of the thickest part of a piece. One of `POUR_SECTION_SHAPE_...`. */
    int32_t section_shape;
    /* Thickness of the thickest part of a piece; of a rod or a ball its diameter. Unit: mm; 0.2 to 200. */
    double section_thickness_mm;
    /* Temperature at which it is shot, above that at which it is taken out. Unit: °C; -73 to 427. */
    double shot_at_celsius;
    /* Temperature of the mold before the shot, below that at which a piece is taken out. Unit: °C; -73 to 427.
     * Default: 30. */
    double mold_at_celsius;
    /* Temperature at which a piece can be taken out. Unit: °C; -73 to 427. Default: 50. */
    double take_out_celsius;
    /* The point of a piece whose temperature counts. Default: center. One of `POUR_PIECE_POINT_...`; 0 omits
     * it. */
    int32_t piece_point;
    /* Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5. Default: 8.0e-8 m2/s, from 6.5e-8 to
     * 1.0e-7. */
    double diffusivity_m2_per_s;
    /* Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted. */
    double shot_mass_g;
    /* Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10. Default: 1.9. */
    double shot_specific_heat_j_per_g_k;
    /* Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass of the shot is
     * needed. Unit: g; 1e-12 to 1e15. Default: none. */
    double mold_mass_g;
    /* Specific heat of the mold; the default is that of aluminum. Unit: J/(g.K); 0.1 to 10. Default: 0.897. */
    double mold_specific_heat_j_per_g_k;
    /* Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how often a shot
     * can be made is not calculated. */
    double hands_s;
    /* Number of such molds that are shot in turn. 1 to 1000000. Default: 1. */
    uint32_t molds;
} pour_setting_time_input;

/* The results of `pour_setting_time`. */
typedef struct pour_setting_time_result {
    /* Setting time. Unit: s. */
    double setting_time_s;
    /* The same with the highest diffusivity of soft PVC. Unit: s. */
    double setting_time_min_s;
    /* The same with the lowest. Unit: s. */
    double setting_time_max_s;
    /* How much one shot warms the mold, where its mass is given. Unit: K. NaN where there is none. */
    double warms_kelvin;
    /* Number of shots in a row before the mold is too warm, nothing lost between them; none where its mass is
     * not given, or it goes on. `POUR_OMITTED_COUNT` where there is none. */
    uint32_t in_a_row;
    /* Time from one shot to the next, where the working time is given. Unit: s. NaN where there is none. */
    double shot_every_s;
} pour_setting_time_result;

/* The columns of `pour_setting_time_n`: the parameters of `pour_setting_time`. Set all to 0 first: a parameter
 * that may be omitted has no column then. A word counts for all rows. */
typedef struct pour_setting_time_columns {
    /* Shape of the thickest part of a piece. One of `POUR_SECTION_SHAPE_...`. */
    int32_t section_shape;
    /* Thickness of the thickest part of a piece; of a rod or a ball its diameter. */
    struct pour_column section_thickness_mm;
    /* Temperature at which it is shot, above that at which it is taken out. */
    struct pour_column shot_at_celsius;
    /* Temperature of the mold before the shot, below that at which a piece is taken out. May be omitted. */
    struct pour_column mold_at_celsius;
    /* Temperature at which a piece can be taken out. May be omitted. */
    struct pour_column take_out_celsius;
    /* The point of a piece whose temperature counts. Default: center. One of `POUR_PIECE_POINT_...`; 0 omits
     * it. */
    int32_t piece_point;
    /* Thermal diffusivity of the plastic. May be omitted. */
    struct pour_column diffusivity_m2_per_s;
    /* Mass of one shot, sprue included. May be omitted. */
    struct pour_column shot_mass_g;
    /* Specific heat of the plastic. May be omitted. */
    struct pour_column shot_specific_heat_j_per_g_k;
    /* Mass of the mold. Without it the mold is taken to keep its temperature; with it the mass of the shot is
     * needed. May be omitted. */
    struct pour_column mold_mass_g;
    /* Specific heat of the mold; the default is that of aluminum. May be omitted. */
    struct pour_column mold_specific_heat_j_per_g_k;
    /* Working time of a shot: fill, shoot, top off, take out. May be omitted. */
    struct pour_column hands_s;
    /* Number of such molds that are shot in turn. May be omitted. */
    struct pour_column molds;
} pour_setting_time_columns;

/* Where `pour_setting_time_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_setting_time_result_columns {
    /* Setting time. Unit: s. */
    struct pour_result_column setting_time_s;
    /* The same with the highest diffusivity of soft PVC. Unit: s. */
    struct pour_result_column setting_time_min_s;
    /* The same with the lowest. Unit: s. */
    struct pour_result_column setting_time_max_s;
    /* How much one shot warms the mold, where its mass is given. Unit: K. NaN where there is none. */
    struct pour_result_column warms_kelvin;
    /* Number of shots in a row before the mold is too warm, nothing lost between them; none where its mass is
     * not given, or it goes on. NaN where there is none. */
    struct pour_result_column in_a_row;
    /* Time from one shot to the next, where the working time is given. Unit: s. NaN where there is none. */
    struct pour_result_column shot_every_s;
} pour_setting_time_result_columns;

/* The input of `pour_stir_every`. Begin with `POUR_STIR_EVERY_INPUT_INIT`, in which everything is omitted. */
typedef struct pour_stir_every_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm; 0.001 to 50. */
    double grain_mm;
    /* True density of the grains, above that of the melt. Unit: g/mL; 0.001 to 25. */
    double grain_density_g_per_ml;
    /* Density of the melt, hot. Unit: g/mL; 0.001 to 25. */
    double melt_density_g_per_ml;
    /* Depth of the melt in its cup. Unit: mm; 0.1 to 10000. */
    double melt_depth_mm;
    /* Lowest viscosity that the melt may have at shot temperature. Where none is known, the defaults of both
     * span what such melts may have. Unit: mPa.s; 0.1 to 1e7. Default: 50. */
    double melt_viscosity_min_mpa_s;
    /* Highest viscosity that the melt may have at shot temperature, at least the lowest. Unit: mPa.s; 0.1 to
     * 1e7. Default: 5000. */
    double melt_viscosity_max_mpa_s;
    /* Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to 0.4. Default: 0. */
    double solids_share;
    /* Share of the depth that may be without grains before it is stirred. Unit: 1; 0.001 to 1. Default: 0.1. */
    double unstirred;
} pour_stir_every_input;

/* The results of `pour_stir_every`. */
typedef struct pour_stir_every_result {
    /* How often to stir, to be safe: in the thinnest melt. Unit: s. */
    double stir_every_s;
    /* How often is enough in the thickest melt. Unit: s. */
    double stir_every_max_s;
    /* Speed of the grains in the thickest melt. Unit: cm/s. */
    double settling_min_cm_per_s;
    /* Speed of the grains in the thinnest melt. Unit: cm/s. */
    double settling_max_cm_per_s;
} pour_stir_every_result;

/* The columns of `pour_stir_every_n`: the parameters of `pour_stir_every`. Set all to 0 first: a parameter
 * that may be omitted has no column then. */
typedef struct pour_stir_every_columns {
    /* Size of a grain of salt: the opening of a sieve that it just passes. */
    struct pour_column grain_mm;
    /* True density of the grains, above that of the melt. */
    struct pour_column grain_density_g_per_ml;
    /* Density of the melt, hot. */
    struct pour_column melt_density_g_per_ml;
    /* Depth of the melt in its cup. */
    struct pour_column melt_depth_mm;
    /* Lowest viscosity that the melt may have at shot temperature. Where none is known, the defaults of both
     * span what such melts may have. May be omitted. */
    struct pour_column melt_viscosity_min_mpa_s;
    /* Highest viscosity that the melt may have at shot temperature, at least the lowest. May be omitted. */
    struct pour_column melt_viscosity_max_mpa_s;
    /* Share of the grains in the volume; at 0 one grain alone. May be omitted. */
    struct pour_column solids_share;
    /* Share of the depth that may be without grains before it is stirred. May be omitted. */
    struct pour_column unstirred;
} pour_stir_every_columns;

/* Where `pour_stir_every_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_stir_every_result_columns {
    /* How often to stir, to be safe: in the thinnest melt. Unit: s. */
    struct pour_result_column stir_every_s;
    /* How often is enough in the thickest melt. Unit: s. */
    struct pour_result_column stir_every_max_s;
    /* Speed of the grains in the thickest melt. Unit: cm/s. */
    struct pour_result_column settling_min_cm_per_s;
    /* Speed of the grains in the thinnest melt. Unit: cm/s. */
    struct pour_result_column settling_max_cm_per_s;
} pour_stir_every_result_columns;

/* The columns of `pour_viscosity_of_ball_n`: the parameters of `pour_viscosity_of_ball`. Set all to 0 first: a
 * parameter that may be omitted has no column then. */
typedef struct pour_viscosity_of_ball_columns {
    /* Diameter of the ball, much smaller than that of the vessel. */
    struct pour_column ball_diameter_mm;
    /* Density of the ball: 7.8 g/mL of steel. */
    struct pour_column ball_density_g_per_ml;
    /* Density of the melt, hot. */
    struct pour_column melt_density_g_per_ml;
    /* How deep the ball sank, let go below the surface. */
    struct pour_column ball_depth_mm;
    /* Time that the ball took. */
    struct pour_column ball_time_s;
} pour_viscosity_of_ball_columns;

/* Where `pour_viscosity_of_ball_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_viscosity_of_ball_result_columns {
    /* Viscosity of the melt. Unit: mPa.s. */
    struct pour_result_column melt_viscosity_mpa_s;
} pour_viscosity_of_ball_result_columns;

/* The input of `pour_cavity_of_weights`. Begin with `POUR_CAVITY_OF_WEIGHTS_INPUT_INIT`, in which everything
 * is omitted. */
typedef struct pour_cavity_of_weights_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Mass of each piece, one by one. 2 to 100000 of them. */
    const double *weights_g;
    /* Number of `weights_g`. */
    size_t weights_count;
    /* Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. */
    double balance_readability_g;
    /* Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25. */
    double cold_density_g_per_ml;
    /* Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default:
     * as `cold_density_g_per_ml`. */
    double hot_density_g_per_ml;
    /* Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
    double voids;
    /* Share of its contraction that a piece draws from the sprue while it cools. Where it is not known, 0.5
     * counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
     * Default: 0.5. */
    double feed;
    /* Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70 %). Unit: 1; 0 to 1.
     * Default: 0. */
    double feed_uncertainty;
} pour_cavity_of_weights_input;

/* The results of `pour_cavity_of_weights`. */
typedef struct pour_cavity_of_weights_result {
    /* Volume of the cavity. Unit: mL. */
    double cavity_volume_ml;
    /* Its standard uncertainty. Where the feed is not known, that of an even spread from 0 to 1 counts. Unit:
     * mL. */
    double cavity_volume_uncertainty_ml;
    /* Mean of the weights. Unit: g. */
    double mean_g;
    /* Standard deviation of one. Unit: g. */
    double deviation_g;
} pour_cavity_of_weights_result;

/* The input of `pour_feed_of_weights`. Begin with `POUR_FEED_OF_WEIGHTS_INPUT_INIT`, in which everything is
 * omitted. */
typedef struct pour_feed_of_weights_input {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Mass of each piece, one by one. 2 to 100000 of them. */
    const double *weights_g;
    /* Number of `weights_g`. */
    size_t weights_count;
    /* Smallest difference that the balance shows; without it there is no balance. Unit: g; 1e-12 to 1e15. */
    double balance_readability_g;
    /* Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25. */
    double cold_density_g_per_ml;
    /* Volume of one cavity. Unit: mL; 1e-9 to 1e15. */
    double cavity_volume_ml;
    /* Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL; 0.001 to 25. Default:
     * as `cold_density_g_per_ml`. */
    double hot_density_g_per_ml;
    /* Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0. */
    double voids;
    /* Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0. */
    double volume_uncertainty_ml;
} pour_feed_of_weights_input;

/* The results of `pour_feed_of_weights`. */
typedef struct pour_feed_of_weights_result {
    /* Feed share. Unit: 1. */
    double feed;
    /* Its standard uncertainty. Unit: 1. */
    double feed_uncertainty;
    /* Mean of the weights. Unit: g. */
    double mean_g;
    /* Standard deviation of one. Unit: g. */
    double deviation_g;
} pour_feed_of_weights_result;

/* One row of `drops_weighed`. Drops that were counted and weighed together, each weighing started over. */
typedef struct pour_drops_weighed_row {
    /* Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000. */
    double weighed_count;
    /* What they weigh together, net. Unit: g; 1e-12 to 1e15. */
    double weighed_mass_g;
} pour_drops_weighed_row;

/* The results of `pour_drop_of_weighings`. */
typedef struct pour_drop_of_weighings_result {
    /* Mass of one drop. Unit: g. */
    double drop_mass_g;
    /* Its standard uncertainty. Unit: g. */
    double drop_mass_uncertainty_g;
    /* Standard deviation of one drop against the next. Unit: g. */
    double scatter_g;
} pour_drop_of_weighings_result;

/* One row of `scoops_weighed`. Level spoonfuls that were counted and weighed together, each weighing started
 * over. */
typedef struct pour_scoops_weighed_row {
    /* Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000. */
    double weighed_count;
    /* What they weigh together, net. Unit: g; 1e-12 to 1e15. */
    double weighed_mass_g;
} pour_scoops_weighed_row;

/* The results of `pour_as_scooped_of_weighings`. */
typedef struct pour_as_scooped_of_weighings_result {
    /* Bulk density, level in the spoon. Unit: g/mL. */
    double as_scooped_g_per_ml;
    /* Its standard uncertainty. Unit: g/mL. */
    double as_scooped_uncertainty_g_per_ml;
    /* Mass of one spoonful. Unit: g. */
    double spoonful_g;
} pour_as_scooped_of_weighings_result;

/* One row of `injector_weighed_g`. Weighings of the injector, each clean and then emptied as at work. */
typedef struct pour_injector_weighed_row {
    /* Mass of the clean injector. Unit: g; 1e-12 to 1e15. */
    double clean_mass_g;
    /* Mass of the injector emptied as at work; at least that of the clean one. Unit: g; 1e-12 to 1e15. */
    double emptied_mass_g;
} pour_injector_weighed_row;

/* The results of `pour_residue_of_weighings`. */
typedef struct pour_residue_of_weighings_result {
    /* Volume that stays in the injector. Unit: mL. */
    double injector_residue_ml;
    /* Its standard uncertainty. Unit: mL. */
    double injector_residue_uncertainty_ml;
    /* Its mass. Unit: g. */
    double residue_mass_g;
} pour_residue_of_weighings_result;

/* The columns of `pour_price_n`: the parameters of `pour_price`. Set all to 0 first: a parameter that may be
 * omitted has no column then. */
typedef struct pour_price_columns {
    /* Cost, in the smallest unit of the currency: cents. */
    struct pour_column cost;
    /* Share of the price that the shop keeps (a markup on the cost is another thing). Without it there is no
     * price. */
    struct pour_column cost_margin;
} pour_price_columns;

/* Where `pour_price_n` writes its results. Set all to 0 first: what has no column is not written. */
typedef struct pour_price_result_columns {
    /* Price, in the smallest unit of the currency. */
    struct pour_result_column price;
} pour_price_result_columns;

/* The way from one unit to another, prepared once for many numbers: y = (x · times + plus) / over.
 *
 * Plain data, made by `pour_conversion_between`: it may be copied, and used by several threads. */
typedef struct pour_conversion {
    /* Factor. */
    double times;
    /* 0, but between scales of temperature. */
    double plus;
    /* Divisor. */
    double over;
    /* Lowest x that is accepted: 0, or absolute zero. */
    double least;
} pour_conversion;

/* A table of numbers: rows by parts. */
typedef struct pour_table {
    /* The number of the first part of the first row. */
    const double *start;
    /* From one row to the next, in bytes; 0 where every row is the same. */
    ptrdiff_t row_stride;
    /* From one part of a row to the next, in bytes. */
    ptrdiff_t part_stride;
} pour_table;

/* A material. Begin with `POUR_MATERIAL_INIT`, in which everything is omitted: what is omitted is not known. */
typedef struct pour_material {
    /* Size of this struct in bytes, as the macro sets it. */
    size_t size;
    /* Its name, ended by a NUL: 1 to 80 characters on one line, each of which shows. It is copied. */
    const char *name;
    /* True density at 20 °C, 0.001 to 25; of a plastisol, that of the liquid. */
    double density_g_per_ml;
    /* Density of a fused plastisol, 0.001 to 25. Default: as the liquid. */
    double fused_g_per_ml;
    /* Bulk density of a powder, 0.001 to 25, level in the spoon and not tapped. */
    double as_scooped_g_per_ml;
    /* Mass of one drop of a liquid, 1e-12 to 1e15. Default: 1/20 mL of it (pharmacy practice). */
    double drop_mass_g;
    /* Volumetric thermal expansion, 0 to 0.01. Default: none. */
    double expansion_per_kelvin;
    /* Kind of material: one of `POUR_KIND_...`. */
    int32_t kind;
} pour_material;

#ifdef __cplusplus
extern "C" {
#endif /* __cplusplus */

/* The [`POUR_ABI_VERSION`] of the library that is loaded. A host compares it with that of its header. */
POUR_API uint32_t pour_abi_version(void);

/* The version of the library that is loaded, such as `"0.1.0"`. The text belongs to the library: it is never freed. */
POUR_API
const char *pour_version(void);

/* The status that the call returned; `POUR_OK` for null. */
POUR_API int32_t pour_error_status(const struct pour_error *error);

/* How many faults there are: 1 or more, 0 for null. */
POUR_API size_t pour_error_count(const struct pour_error *error);

/* The stable code of a fault, such as `"salt-out-of-reach"`; null for an index beyond the last. */
POUR_API const char *pour_error_code(const struct pour_error *error, size_t index);

/* Where a fault is, as a JSON Pointer (RFC 6901): into the document, or `/parameter` of the call. Empty for the
 * whole input; null for an index beyond the last. */
POUR_API
const char *pour_error_path(const struct pour_error *error,
                            size_t index);

/* The finding, as a sentence; null for an index beyond the last. */
POUR_API const char *pour_error_message(const struct pour_error *error, size_t index);

/* The fix, as a sentence; null for an index beyond the last. */
POUR_API const char *pour_error_help(const struct pour_error *error, size_t index);

/* All faults as text to show, one a line; null for null. */
POUR_API const char *pour_error_text(const struct pour_error *error);

/* All faults as JSON, `{"faults":[{"code":...,"path":...,"message":...,"help":...}]}`; null for null. */
POUR_API const char *pour_error_json(const struct pour_error *error);

/* Frees an error with all its texts. Null is let pass. */
POUR_API void pour_error_free(struct pour_error *error);

/* Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
 *
 * A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
 *
 * `amount`: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a temperature
 * above absolute zero.
 * `to`: The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
 * `measures`: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One
 * of `POUR_MEASURES_...`; 0 omits it.
 *
 * `value` receives: The number, in the unit of `to`. */
POUR_API
int32_t pour_convert(const char *amount,
                     const char *to,
                     int32_t measures,
                     double *value,
                     struct pour_error **error);

/* Converts a number of one unit into another.
 *
 * Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between units hold on
 * bits: 48 tsp are 1 cup.
 *
 * `value`: The number to convert. Unit: any; 0 or above; a temperature above absolute zero.
 * `unit`: The unit of the number, by trade symbol or UCUM code. A unit.
 * `to`: The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
 * `measures`: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One
 * of `POUR_MEASURES_...`; 0 omits it.
 *
 * `value` receives: The number, in the unit of `to`. */
POUR_API
int32_t pour_convert_number(double value,
                            const char *unit,
                            const char *to,
                            int32_t measures,
                            double *result_value,
                            struct pour_error **error);

/* Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.
 *
 * A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a drop
 * is 1/20 mL (pharmacy practice).
 *
 * `amount`: An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a temperature
 * above absolute zero.
 * `kind`: What the material is for; powders (pearl, flake, salt) are measured as scooped. One of
 * `POUR_KIND_...`.
 * `material_density_g_per_ml`: True density of the material; of a plastisol that of the liquid. Unit: g/mL;
 * 0.001 to 25. Default: none.
 * `as_scooped_g_per_ml`: Bulk density of a powder, level in the spoon and not tapped. Unit: g/mL; 0.001 to 25.
 * Default: none.
 * `drop_mass_g`: Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
 * `measures`: The system of measures: what a cup, a spoon and a fluid ounce hold. Default: us-customary. One
 * of `POUR_MEASURES_...`; 0 omits it.
 *
 * `mass_g` receives: The mass. Unit: g. */
POUR_API
int32_t pour_dose_mass(const char *amount,
                       int32_t kind,
                       double material_density_g_per_ml,
                       double as_scooped_g_per_ml,
                       double drop_mass_g,
                       int32_t measures,
                       double *mass_g,
                       struct pour_error **error);

/* Mass of a volume: m = ρV.
 *
 * The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid
 * displaces in a mix it is its true density.
 *
 * `volume_ml`: Volume. Unit: mL; 0 to 1e15.
 * `density_g_per_ml`: Density, without voids. Unit: g/mL; 0.001 to 25.
 *
 * `mass_g` receives: The mass. Unit: g. */
POUR_API
int32_t pour_mass_of_volume(double volume_ml,
                            double density_g_per_ml,
                            double *mass_g,
                            struct pour_error **error);

/* `pour_mass_of_volume` for every row. */
POUR_API
int32_t pour_mass_of_volume_n(size_t rows,
                              const struct pour_mass_of_volume_columns *columns,
                              const struct pour_mass_of_volume_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);

/* Volume of a mass: V = m/ρ, with the densities of `pour_mass_of_volume`.
 *
 * `mass_g`: Mass. Unit: g; 0 to 1e15.
 * `density_g_per_ml`: Density, without voids. Unit: g/mL; 0.001 to 25.
 *
 * `volume_ml` receives: The volume. Unit: mL. */
POUR_API
int32_t pour_volume_of_mass(double mass_g,
                            double density_g_per_ml,
                            double *volume_ml,
                            struct pour_error **error);

/* `pour_volume_of_mass` for every row. */
POUR_API
int32_t pour_volume_of_mass_n(size_t rows,
                              const struct pour_volume_of_mass_columns *columns,
                              const struct pour_volume_of_mass_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);

/* Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
 *
 * Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
 *
 * `parts`: The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1 to
 * 1000 of them.
 * `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 *
 * `density_g_per_ml` receives: Density of the mix, voids counted. Unit: g/mL. */
POUR_API
int32_t pour_density_of_parts(const struct pour_parts_row *parts,
                              size_t parts_count,
                              double voids,
                              double *density_g_per_ml,
                              struct pour_error **error);

/* Share of one part in a mix, by mass and by true volume.
 *
 * Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).
 *
 * `parts`: The parts of the mix: of each its mass and its true density. At least one has a mass above 0. 1 to
 * 1000 of them.
 * `part`: Which part of the mix, counted from 1. 1 to 1000. */
POUR_API
int32_t pour_mix_share(const struct pour_parts_row *parts,
                       size_t parts_count,
                       uint32_t part,
                       struct pour_mix_share_result *result,
                       struct pour_error **error);

/* States a salt loading another way.
 *
 * All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In
 * reach is all between no salt and the maximum that `most_solids` allows. Where a form that is about a piece
 * needs the feed and it is not known, the bounds are those without feed and fed in full. */
POUR_API
int32_t pour_salt_convert(const struct pour_salt_convert_input *input,
                          struct pour_salt_convert_result *result,
                          struct pour_error **error);

/* `pour_salt_convert` for every row. */
POUR_API
int32_t pour_salt_convert_n(size_t rows,
                            const struct pour_salt_convert_columns *columns,
                            const struct pour_salt_convert_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);

/* Mass of salt for a loading, and of the softener that goes in with it. */
POUR_API
int32_t pour_salt_mass(const struct pour_salt_mass_input *input,
                       struct pour_salt_mass_result *result,
                       struct pour_error **error);

/* `pour_salt_mass` for every row. */
POUR_API
int32_t pour_salt_mass_n(size_t rows,
                         const struct pour_salt_mass_columns *columns,
                         const struct pour_salt_mass_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);

/* Salt loadings in reach: without salt, and with the maximum that `most_solids` allows. */
POUR_API
int32_t pour_salt_reach(const struct pour_salt_reach_input *input,
                        struct pour_salt_reach_result *result,
                        struct pour_error **error);

/* `pour_salt_reach` for every row. */
POUR_API
int32_t pour_salt_reach_n(size_t rows,
                          const struct pour_salt_reach_columns *columns,
                          const struct pour_salt_reach_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);

/* Mass of salt that brings a base alone to a finished density: `pour_salt_mass` in one form, with few numbers.
 *
 * m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).
 *
 * `base_volume_ml`: Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to 1e15.
 * `base_density_g_per_ml`: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to
 * 25.
 * `salt_density_g_per_ml`: True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL; 0.001 to 25.
 * `finished_density_g_per_ml`: Density of the finished plastic at 20 °C, voids counted. Unit: g/mL; 0.001 to
 * 25.
 * `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * `most_solids`: Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to below 1.
 * Default: 0.3.
 *
 * `salt_mass_g` receives: Mass of salt. Unit: g. */
POUR_API
int32_t pour_salt_for_density(double base_volume_ml,
                              double base_density_g_per_ml,
                              double salt_density_g_per_ml,
                              double finished_density_g_per_ml,
                              double voids,
                              double most_solids,
                              double *salt_mass_g,
                              struct pour_error **error);

/* `pour_salt_for_density` for every row. */
POUR_API
int32_t pour_salt_for_density_n(size_t rows,
                                const struct pour_salt_for_density_columns *columns,
                                const struct pour_salt_for_density_result_columns *results,
                                int32_t *statuses,
                                struct pour_error **error);

/* Mass of salt at which a piece sinks at a rate.
 *
 * The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has
 * cooled; the salt is that for this density. */
POUR_API
int32_t pour_salt_for_sink_rate(const struct pour_salt_for_sink_rate_input *input,
                                struct pour_salt_for_sink_rate_result *result,
                                struct pour_error **error);

/* `pour_salt_for_sink_rate` for every row. */
POUR_API
int32_t pour_salt_for_sink_rate_n(size_t rows,
                                  const struct pour_salt_for_sink_rate_columns *columns,
                                  const struct pour_salt_for_sink_rate_result_columns *results,
                                  int32_t *statuses,
                                  struct pour_error **error);

/* Mass of one shot, and of its pieces.
 *
 * Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `pour_piece_mass`, as far as sprue and topping can
 * feed it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is above 0.
 * Of sprue and topping a layer fills its share. */
POUR_API
int32_t pour_shot_fill(const struct pour_shot_fill_input *input,
                       struct pour_shot_fill_result *result,
                       struct pour_error **error);

/* `pour_shot_fill` for every row. */
POUR_API
int32_t pour_shot_fill_n(size_t rows,
                         const struct pour_shot_fill_columns *columns,
                         const struct pour_shot_fill_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);

/* Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
 *
 * While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f
 * is the shop's own. A sprue that cannot feed that much: see `pour_shot_fill`.
 *
 * `cavity_volume_ml`: Volume of one cavity. Unit: mL; 1e-9 to 1e15.
 * `cold_density_g_per_ml`: Density of the finished plastic at 20 °C, without voids. Unit: g/mL; 0.001 to 25.
 * `hot_density_g_per_ml`: Melt density at shot temperature, without voids; at most the cold one. Unit: g/mL;
 * 0.001 to 25. Default: as `cold_density_g_per_ml`.
 * `voids`: Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * `feed`: Share of its contraction that a piece draws from the sprue while it cools. Where it is not known,
 * 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit: 1; 0 to 1.
 * Default: 0.5. */
POUR_API
int32_t pour_piece_mass(double cavity_volume_ml,
                        double cold_density_g_per_ml,
                        double hot_density_g_per_ml,
                        double voids,
                        double feed,
                        struct pour_piece_mass_result *result,
                        struct pour_error **error);

/* `pour_piece_mass` for every row. */
POUR_API
int32_t pour_piece_mass_n(size_t rows,
                          const struct pour_piece_mass_columns *columns,
                          const struct pour_piece_mass_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);

/* Minimum number of shots for a number of good pieces.
 *
 * Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.
 *
 * `pieces`: Number of good pieces needed. 1 to 1000000.
 * `cavities`: Number of cavities that a shot fills. 1 to 1000000.
 * `rejects`: Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
 * `confidence`: Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9. */
POUR_API
int32_t pour_shots(uint32_t pieces,
                   uint32_t cavities,
                   double rejects,
                   double confidence,
                   struct pour_shots_result *result,
                   struct pour_error **error);

/* `pour_shots` for every row. */
POUR_API
int32_t pour_shots_n(size_t rows,
                     const struct pour_shots_columns *columns,
                     const struct pour_shots_result_columns *results,
                     int32_t *statuses,
                     struct pour_error **error);

/* Injector loads for a number of shots.
 *
 * Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.
 *
 * `shots`: Number of shots. 1 to 100000000.
 * `shot_mass_g`: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
 * `shot_density_g_per_ml`: Density of what the injector draws: hot, voids counted. Unit: g/mL; 0.001 to 25.
 * `injector_capacity_ml`: Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
 * `injector_residue_ml`: Volume that stays in the injector each time it is emptied; below its capacity. Unit:
 * mL; 0 to 1e15. Default: 0. */
POUR_API
int32_t pour_injector_loads(uint32_t shots,
                            double shot_mass_g,
                            double shot_density_g_per_ml,
                            double injector_capacity_ml,
                            double injector_residue_ml,
                            struct pour_injector_loads_result *result,
                            struct pour_error **error);

/* `pour_injector_loads` for every row. */
POUR_API
int32_t pour_injector_loads_n(size_t rows,
                              const struct pour_injector_loads_columns *columns,
                              const struct pour_injector_loads_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);

/* Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.
 *
 * total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel). */
POUR_API
int32_t pour_batch_need(const struct pour_batch_need_input *input,
                        struct pour_batch_need_result *result,
                        struct pour_error **error);

/* `pour_batch_need` for every row. */
POUR_API
int32_t pour_batch_need_n(size_t rows,
                          const struct pour_batch_need_columns *columns,
                          const struct pour_batch_need_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);

/* Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.
 *
 * The doses follow from the rounded base, so that no formula is off.
 *
 * `mix_needed_g`: Mass of mix that is needed. Unit: g; 1e-12 to 1e15.
 * `base_fraction`: Share of base in the mix, by mass. Unit: 1; above 0 to 1.
 * `base_density_g_per_ml`: Density of the base, cold and liquid, as a cup measures it. Unit: g/mL; 0.001 to
 * 25.
 * `cup_capacity_ml`: Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.
 * `cup_mark_ml`: Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark alone, when
 * it is full.
 * `shot_mass_g`: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted. */
POUR_API
int32_t pour_base_to_mark(double mix_needed_g,
                          double base_fraction,
                          double base_density_g_per_ml,
                          double cup_capacity_ml,
                          double cup_mark_ml,
                          double shot_mass_g,
                          struct pour_base_to_mark_result *result,
                          struct pour_error **error);

/* `pour_base_to_mark` for every row. */
POUR_API
int32_t pour_base_to_mark_n(size_t rows,
                            const struct pour_base_to_mark_columns *columns,
                            const struct pour_base_to_mark_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);

/* Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no
 * less mix than oven and injector need.
 *
 * `doses`: The doses: of each its smallest step, its tolerance and its ratio to the base. 1 to 64 of them.
 * `base_fraction`: Share of base in the mix, by mass. Unit: 1; above 0 to 1.
 * `oven_least_g`: Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15. Default: none.
 * `injector_least_g`: Smallest mix that the injector can draw from. Unit: g; 1e-12 to 1e15. Default: none. */
POUR_API
int32_t pour_least_pot(const struct pour_doses_row *doses,
                       size_t doses_count,
                       double base_fraction,
                       double oven_least_g,
                       double injector_least_g,
                       struct pour_least_pot_result *result,
                       struct pour_error **error);

/* Reject rate from counted pieces, with the exact interval of a binomial share.
 *
 * Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.
 *
 * `cast_pieces`: Number of pieces that were cast. 1 to 1000000.
 * `reject_count`: Number of them that are not fit to sell. 0 to 1000000.
 * `confidence`: Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999. Default: 0.9. */
POUR_API
int32_t pour_reject_rate(uint32_t cast_pieces,
                         uint32_t reject_count,
                         double confidence,
                         struct pour_reject_rate_result *result,
                         struct pour_error **error);

/* `pour_reject_rate` for every row. */
POUR_API
int32_t pour_reject_rate_n(size_t rows,
                           const struct pour_reject_rate_columns *columns,
                           const struct pour_reject_rate_result_columns *results,
                           int32_t *statuses,
                           struct pour_error **error);

/* Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
 *
 * A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass
 * from which one would. */
POUR_API
int32_t pour_bench_measure(const struct pour_bench_measure_input *input,
                           struct pour_bench_measure_result *result,
                           struct pour_error **error);

/* Sink rate of a piece with its hook: the final speed, a model value.
 *
 * Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the
 * equations, sources and bounds are those of the module `process::sink`. `motion` is whether the model holds
 * for such a piece at all. A drop that the shop timed (depth, time, density) replaces the published drag by
 * the piece's own. */
POUR_API
int32_t pour_sink_rate(const struct pour_sink_rate_input *input,
                       struct pour_sink_rate_result *result,
                       struct pour_error **error);

/* `pour_sink_rate` for every row. */
POUR_API
int32_t pour_sink_rate_n(size_t rows,
                         const struct pour_sink_rate_columns *columns,
                         const struct pour_sink_rate_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);

/* Density at which a piece sinks at a rate: the finished density to salt for.
 *
 * `piece_density_g_per_ml` receives: Density of the piece, voids and salt counted. Unit: g/mL. */
POUR_API
int32_t pour_density_for_sink_rate(const struct pour_density_for_sink_rate_input *input,
                                   double *piece_density_g_per_ml,
                                   struct pour_error **error);

/* `pour_density_for_sink_rate` for every row. */
POUR_API
int32_t pour_density_for_sink_rate_n(size_t rows,
                                     const struct pour_density_for_sink_rate_columns *columns,
                                     const struct pour_density_for_sink_rate_result_columns *results,
                                     int32_t *statuses,
                                     struct pour_error **error);

/* Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.
 *
 * Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore
 * scales do not convert into each other (ASTM D2240): all points are on one.
 *
 * `points`: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading. 2 to
 * 1000 of them.
 * `scale`: The scale of the durometer. One of `POUR_SCALE_...`.
 * `softener_ratio`: Softener or hardener, mass per mass of base; between the measured points. Unit: 1; 0 to
 * 100.
 *
 * `hardness` receives: Durometer reading. Unit: 1. */
POUR_API
int32_t pour_hardness(const struct pour_points_row *points,
                      size_t points_count,
                      int32_t scale,
                      double softener_ratio,
                      double *hardness,
                      struct pour_error **error);

/* Ratio of softener or hardener for a hardness: the other way round.
 *
 * `points`: The shop's own measured points, by rising ratio: of each the ratio and the durometer reading. 2 to
 * 1000 of them.
 * `scale`: The scale of the durometer. One of `POUR_SCALE_...`.
 * `hardness`: Durometer reading. Unit: 1; 0 to 100.
 *
 * `softener_ratio` receives: Mass per mass of base. Unit: 1. */
POUR_API
int32_t pour_softener_ratio(const struct pour_points_row *points,
                            size_t points_count,
                            int32_t scale,
                            double hardness,
                            double *softener_ratio,
                            struct pour_error **error);

/* Extra softener for a salted body, between the shop's own points.
 *
 * Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone
 * cubic answers, outside it refuses.
 *
 * `salted_points`: The shop's own measured points, by rising salt: of each the salt and the softener, mass per
 * mass of base. 2 to 1000 of them.
 * `salt_of_base`: Salt, mass per mass of base; between the measured points. Unit: 1; 0 to 10.
 *
 * `softener_ratio` receives: Softener on top of the unsalted body's, mass per mass of base. Unit: 1. */
POUR_API
int32_t pour_salted_softener(const struct pour_salted_points_row *salted_points,
                             size_t salted_points_count,
                             double salt_of_base,
                             double *softener_ratio,
                             struct pour_error **error);

/* Density of air-free water at 101.325 kPa, 0 to 40 °C.
 *
 * Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.
 *
 * `water_temperature_celsius`: Temperature of the water. Unit: °C; 0 to 40.
 *
 * `density_g_per_ml` receives: Density of the water. Unit: g/mL. */
POUR_API
int32_t pour_water_density(double water_temperature_celsius,
                           double *density_g_per_ml,
                           struct pour_error **error);

/* `pour_water_density` for every row. */
POUR_API
int32_t pour_water_density_n(size_t rows,
                             const struct pour_water_density_columns *columns,
                             const struct pour_water_density_result_columns *results,
                             int32_t *statuses,
                             struct pour_error **error);

/* Volume of a cavity from the reading of a balance for the water that it holds.
 *
 * Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).
 *
 * `water_mass_g`: Reading of the balance for the water in one cavity: filled less empty. Unit: g; 1e-12 to
 * 1e15.
 * `water_temperature_celsius`: Temperature of the water. Unit: °C; 0 to 40.
 * `air_pressure_kpa`: Air pressure at the balance, not reduced to sea level. Unit: kPa; 45 to 110. Default:
 * 101.325.
 *
 * `cavity_volume_ml` receives: Volume of the cavity. Unit: mL. */
POUR_API
int32_t pour_cavity_of_water(double water_mass_g,
                             double water_temperature_celsius,
                             double air_pressure_kpa,
                             double *cavity_volume_ml,
                             struct pour_error **error);

/* `pour_cavity_of_water` for every row. */
POUR_API
int32_t pour_cavity_of_water_n(size_t rows,
                               const struct pour_cavity_of_water_columns *columns,
                               const struct pour_cavity_of_water_result_columns *results,
                               int32_t *statuses,
                               struct pour_error **error);

/* Air pressure of the standard atmosphere at an altitude.
 *
 * U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.
 *
 * `altitude_m`: Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000.
 *
 * `station_pressure_kpa` receives: Air pressure at the place itself; also the maximum that a true vacuum gauge
 * shows there. Unit: kPa. */
POUR_API
int32_t pour_standard_pressure(double altitude_m,
                               double *station_pressure_kpa,
                               struct pour_error **error);

/* `pour_standard_pressure` for every row. */
POUR_API
int32_t pour_standard_pressure_n(size_t rows,
                                 const struct pour_standard_pressure_columns *columns,
                                 const struct pour_standard_pressure_result_columns *results,
                                 int32_t *statuses,
                                 struct pour_error **error);

/* Air pressure at the place itself from one that a weather report gives, reduced to sea level.
 *
 * Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.
 *
 * `reported_pressure_kpa`: Air pressure as a weather report gives it, reduced to sea level; needs the
 * altitude. Unit: kPa; 85 to 110.
 * `altitude_m`: Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to 11000.
 *
 * `station_pressure_kpa` receives: Air pressure at the place itself; also the maximum that a true vacuum gauge
 * shows there. Unit: kPa. */
POUR_API
int32_t pour_station_pressure(double reported_pressure_kpa,
                              double altitude_m,
                              double *station_pressure_kpa,
                              struct pour_error **error);

/* `pour_station_pressure` for every row. */
POUR_API
int32_t pour_station_pressure_n(size_t rows,
                                const struct pour_station_pressure_columns *columns,
                                const struct pour_station_pressure_result_columns *results,
                                int32_t *statuses,
                                struct pour_error **error);

/* Volume of a pot in a vacuum, with the air that it holds.
 *
 * Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge shows
 * it or as the pressure that is left; with a gauge the lowest pressure counts that its tolerance allows. */
POUR_API
int32_t pour_swollen_volume(const struct pour_swollen_volume_input *input,
                            struct pour_swollen_volume_result *result,
                            struct pour_error **error);

/* `pour_swollen_volume` for every row. */
POUR_API
int32_t pour_swollen_volume_n(size_t rows,
                              const struct pour_swollen_volume_columns *columns,
                              const struct pour_swollen_volume_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);

/* Share of air in a pot, from how high it was seen to rise in a vacuum.
 *
 * With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and after:
 * φ/(1 − φ) = (f − 1)/(b₂ − f b₁).
 *
 * `entrained_air` receives: Share of air in the mix by volume, under the outside pressure. Unit: 1. */
POUR_API
int32_t pour_entrained_air(const struct pour_entrained_air_input *input,
                           double *entrained_air,
                           struct pour_error **error);

/* `pour_entrained_air` for every row. */
POUR_API
int32_t pour_entrained_air_n(size_t rows,
                             const struct pour_entrained_air_columns *columns,
                             const struct pour_entrained_air_result_columns *results,
                             int32_t *statuses,
                             struct pour_error **error);

/* Vessel for a pot in a vacuum, and how to fill one that is too small.
 *
 * The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer gives
 * the level to fill to, on a mark where it has any, and the number of fills. */
POUR_API
int32_t pour_degas_vessel(const struct pour_degas_vessel_input *input,
                          struct pour_degas_vessel_result *result,
                          struct pour_error **error);

/* `pour_degas_vessel` for every row. */
POUR_API
int32_t pour_degas_vessel_n(size_t rows,
                            const struct pour_degas_vessel_columns *columns,
                            const struct pour_degas_vessel_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);

/* Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the
 * film.
 *
 * A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.
 *
 * `cut`: Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`. 0.05 to 6.35
 * mm.
 * `thickness_um`: Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
 * `film_density_g_per_ml`: Density of the film that the flake is cut from. Unit: g/mL; 0.001 to 25.
 * `flake_dose_g`: Mass of the dose of flake. Unit: g; 1e-12 to 1e15. */
POUR_API
int32_t pour_flake_count(const char *cut,
                         double thickness_um,
                         double film_density_g_per_ml,
                         double flake_dose_g,
                         struct pour_flake_count_result *result,
                         struct pour_error **error);

/* Dose of another flake in place of one, with as much area or as many particles.
 *
 * The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives both. */
POUR_API
int32_t pour_flake_swap(const struct pour_flake_swap_input *input,
                        struct pour_flake_swap_result *result,
                        struct pour_error **error);

/* Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).
 *
 * ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.
 *
 * `lightness`: L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100.
 * `a`: a* of the color: green below 0, red above. Unit: 1; -200 to 200.
 * `b`: b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200.
 * `other_lightness`: L* of the other color. Unit: 1; 0 to 100.
 * `other_a`: a* of the other color. Unit: 1; -200 to 200.
 * `other_b`: b* of the other color. Unit: 1; -200 to 200.
 *
 * `difference` receives: ΔE₀₀. Unit: 1. */
POUR_API
int32_t pour_color_difference(double lightness,
                              double a,
                              double b,
                              double other_lightness,
                              double other_a,
                              double other_b,
                              double *difference,
                              struct pour_error **error);

/* `pour_color_difference` for every row. */
POUR_API
int32_t pour_color_difference_n(size_t rows,
                                const struct pour_color_difference_columns *columns,
                                const struct pour_color_difference_result_columns *results,
                                int32_t *statuses,
                                struct pour_error **error);

/* Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.
 *
 * Between two readings the temperature is taken as straight. The activation energy is the supplier's;
 * published ones of PVC are 117.5 to 170 kJ/mol.
 *
 * `readings`: Temperatures in the order of time, taken as straight between. 2 to 100000 of them.
 * `activation_energy_kj_per_mol`: Activation energy of the decay in the heat; state its source in a book.
 * Unit: kJ/mol; 10 to 500.
 * `reference_temperature_celsius`: Temperature at which the time is counted. Unit: °C; -73 to 427.
 *
 * `equivalent_time_s` receives: Equivalent time. Unit: s. */
POUR_API
int32_t pour_equivalent_time(const struct pour_readings_row *readings,
                             size_t readings_count,
                             double activation_energy_kj_per_mol,
                             double reference_temperature_celsius,
                             double *equivalent_time_s,
                             struct pour_error **error);

/* Heat budget that is left of a pot, in equivalent time at the reference temperature.
 *
 * More stabilizer than the budget is stated for buys the extra time that its maker states; without that figure
 * it is refused.
 *
 * `heat_budget_s`: Time at the reference temperature that the plastisol withstands. Unit: s; 1e-6 to 1e15.
 * `equivalent_time_s`: Equivalent time that the pot has spent so far, at the temperature of its budget. Unit:
 * s; 0 to 1e15.
 * `budget_with`: Stabilizer that the heat budget is stated for, by mass of base. Unit: 1; 0 to 1. Default: 0.
 * `stabilizer_dose`: Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as `budget_with`.
 * `extra_time_s`: Equivalent time that more of the stabilizer buys, per mass of it per mass of base: 30000 s
 * is 5 min for every 1 %. Unit: s; 1e-6 to 1e15. Default: none.
 * `extra_most`: Highest dose of stabilizer for which the extra time is known, by mass of base. Unit: 1; 0 to
 * 1. Default: none. */
POUR_API
int32_t pour_budget_left(double heat_budget_s,
                         double equivalent_time_s,
                         double budget_with,
                         double stabilizer_dose,
                         double extra_time_s,
                         double extra_most,
                         struct pour_budget_left_result *result,
                         struct pour_error **error);

/* `pour_budget_left` for every row. */
POUR_API
int32_t pour_budget_left_n(size_t rows,
                           const struct pour_budget_left_columns *columns,
                           const struct pour_budget_left_result_columns *results,
                           int32_t *statuses,
                           struct pour_error **error);

/* Heating time of a pot in the oven, without a break, by the shop's own timings.
 *
 * t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module `process::heat`).
 * An amount of more than 1.6 times the timed ones is refused. Without timings the rated power gives a first
 * guess. */
POUR_API
int32_t pour_heat_time(const struct pour_heat_time_input *input,
                       struct pour_heat_time_result *result,
                       struct pour_error **error);

/* The next burst of the oven for a reading of the thermometer.
 *
 * No burst can carry the pot over its window, by all the power that the timings make plausible and the error
 * of the thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system
 * of measures gives the scale of the thermometer, on whole degrees of which the limits are. */
POUR_API
int32_t pour_next_burst(const struct pour_next_burst_input *input,
                        struct pour_next_burst_result *result,
                        struct pour_error **error);

/* How long a pot stays hot, by a pot that was watched to cool.
 *
 * Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix than
 * was watched cools faster (module `process::heat`). */
POUR_API
int32_t pour_stays_hot(const struct pour_stays_hot_input *input,
                       struct pour_stays_hot_result *result,
                       struct pour_error **error);

/* `pour_stays_hot` for every row. */
POUR_API
int32_t pour_stays_hot_n(size_t rows,
                         const struct pour_stays_hot_columns *columns,
                         const struct pour_stays_hot_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);

/* The heats that the shots of a pot take, and how long they all take.
 *
 * A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is
 * heated again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot can
 * be made every max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module
 * `process::clock`). */
POUR_API
int32_t pour_pot_heats(const struct pour_pot_heats_input *input,
                       struct pour_pot_heats_result *result,
                       struct pour_error **error);

/* How long a shot sets in a metal mold, and how often one can be made.
 *
 * The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold: t
 * = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as the
 * shot leaves it, where its mass is given. */
POUR_API
int32_t pour_setting_time(const struct pour_setting_time_input *input,
                          struct pour_setting_time_result *result,
                          struct pour_error **error);

/* `pour_setting_time` for every row. */
POUR_API
int32_t pour_setting_time_n(size_t rows,
                            const struct pour_setting_time_columns *columns,
                            const struct pour_setting_time_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);

/* How often to stir a melt with salt in it, and how fast the salt settles.
 *
 * Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that
 * passes a sieve (module `process::settling`). Stir before the top share of the depth is without grains: t =
 * share · depth/v. */
POUR_API
int32_t pour_stir_every(const struct pour_stir_every_input *input,
                        struct pour_stir_every_result *result,
                        struct pour_error **error);

/* `pour_stir_every` for every row. */
POUR_API
int32_t pour_stir_every_n(size_t rows,
                          const struct pour_stir_every_columns *columns,
                          const struct pour_stir_every_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);

/* Viscosity of a melt, from a ball that was timed as it sank.
 *
 * The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).
 *
 * `ball_diameter_mm`: Diameter of the ball, much smaller than that of the vessel. Unit: mm; 0.001 to 50.
 * `ball_density_g_per_ml`: Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to 25.
 * `melt_density_g_per_ml`: Density of the melt, hot. Unit: g/mL; 0.001 to 25.
 * `ball_depth_mm`: How deep the ball sank, let go below the surface. Unit: mm; 1 to 10000.
 * `ball_time_s`: Time that the ball took. Unit: s; 0.01 to 1e6.
 *
 * `melt_viscosity_mpa_s` receives: Viscosity of the melt. Unit: mPa.s. */
POUR_API
int32_t pour_viscosity_of_ball(double ball_diameter_mm,
                               double ball_density_g_per_ml,
                               double melt_density_g_per_ml,
                               double ball_depth_mm,
                               double ball_time_s,
                               double *melt_viscosity_mpa_s,
                               struct pour_error **error);

/* `pour_viscosity_of_ball` for every row. */
POUR_API
int32_t pour_viscosity_of_ball_n(size_t rows,
                                 const struct pour_viscosity_of_ball_columns *columns,
                                 const struct pour_viscosity_of_ball_result_columns *results,
                                 int32_t *statuses,
                                 struct pour_error **error);

/* Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold − ρ_hot)]). */
POUR_API
int32_t pour_cavity_of_weights(const struct pour_cavity_of_weights_input *input,
                               struct pour_cavity_of_weights_result *result,
                               struct pour_error **error);

/* Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot). */
POUR_API
int32_t pour_feed_of_weights(const struct pour_feed_of_weights_input *input,
                             struct pour_feed_of_weights_result *result,
                             struct pour_error **error);

/* Mass of one drop from several weighings of many.
 *
 * `drops_weighed`: Drops that were counted and weighed together, each weighing started over. 2 to 1000 of
 * them.
 * `balance_readability_g`: Smallest difference that the balance shows; without it there is no balance. Unit:
 * g; 1e-12 to 1e15. */
POUR_API
int32_t pour_drop_of_weighings(const struct pour_drops_weighed_row *drops_weighed,
                               size_t drops_weighed_count,
                               double balance_readability_g,
                               struct pour_drop_of_weighings_result *result,
                               struct pour_error **error);

/* Bulk density of a powder from several weighings of level spoonfuls.
 *
 * `scoops_weighed`: Level spoonfuls that were counted and weighed together, each weighing started over. 2 to
 * 1000 of them.
 * `spoon_volume_ml`: Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
 * `balance_readability_g`: Smallest difference that the balance shows; without it there is no balance. Unit:
 * g; 1e-12 to 1e15.
 * `volume_uncertainty_ml`: Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0. */
POUR_API
int32_t pour_as_scooped_of_weighings(const struct pour_scoops_weighed_row *scoops_weighed,
                                     size_t scoops_weighed_count,
                                     double spoon_volume_ml,
                                     double balance_readability_g,
                                     double volume_uncertainty_ml,
                                     struct pour_as_scooped_of_weighings_result *result,
                                     struct pour_error **error);

/* Volume that stays in an injector, from weighings of it clean and then emptied as at work.
 *
 * `injector_weighed_g`: Weighings of the injector, each clean and then emptied as at work. 2 to 1000 of them.
 * `residue_density_g_per_ml`: Density of what stays in the injector, at the temperature at which it is
 * emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.
 * `balance_readability_g`: Smallest difference that the balance shows; without it there is no balance. Unit:
 * g; 1e-12 to 1e15.
 * `density_uncertainty_g_per_ml`: Standard uncertainty of the density of the piece; its bounds are counted at
 * twice that. Unit: g/mL; 0 to 25. Default: 0. */
POUR_API
int32_t pour_residue_of_weighings(const struct pour_injector_weighed_row *injector_weighed_g,
                                  size_t injector_weighed_count,
                                  double residue_density_g_per_ml,
                                  double balance_readability_g,
                                  double density_uncertainty_g_per_ml,
                                  struct pour_residue_of_weighings_result *result,
                                  struct pour_error **error);

/* Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop
 * keeps.
 *
 * price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in binary
 * fractions. Costs of materials, work and packing with their packages and currencies: the request `cost`.
 *
 * `cost`: Cost, in the smallest unit of the currency: cents. 0 to 1000000000.
 * `cost_margin`: Share of the price that the shop keeps (a markup on the cost is another thing). Without it
 * there is no price. Unit: 1; 0 to below 1.
 *
 * `price` receives: Price, in the smallest unit of the currency. */
POUR_API
int32_t pour_price(uint32_t cost,
                   double cost_margin,
                   uint32_t *price,
                   struct pour_error **error);

/* `pour_price` for every row. */
POUR_API
int32_t pour_price_n(size_t rows,
                     const struct pour_price_columns *columns,
                     const struct pour_price_result_columns *results,
                     int32_t *statuses,
                     struct pour_error **error);

/* Prepares the conversion between two units, each by trade symbol or UCUM code: `"cup"`, `"[tsp_us]"`, `"g/mL"`.
 *
 * `measures` (`POUR_MEASURES_METRIC`, ...; 0 for US customary) is what a cup, a spoon and a fluid ounce hold where a
 * unit does not. `POUR_REFUSED` for a text that is not a unit, can be read as several, or measures something else. */
POUR_API
int32_t pour_conversion_between(const char *from,
                                const char *to,
                                int32_t measures,
                                struct pour_conversion *conversion,
                                struct pour_error **error);

/* Converts a number by a prepared conversion: the fast way, some nanoseconds.
 *
 * `POUR_REFUSED` for a value below the lowest or a result beyond what a double holds. */
POUR_API
int32_t pour_convert_with(const struct pour_conversion *conversion,
                          double value,
                          double *converted,
                          struct pour_error **error);

/* `pour_convert_with` for every row. */
POUR_API
int32_t pour_convert_with_n(const struct pour_conversion *conversion,
                            size_t rows,
                            struct pour_column values,
                            struct pour_result_column converted,
                            int32_t *statuses,
                            struct pour_error **error);

/* `pour_convert` for every row: amounts as texts, such as a table of a shop has them, to numbers of one unit.
 *
 * The text of row i is the bytes of `texts` from `offsets[i]` up to `offsets[i + 1]`, so there are `rows + 1` offsets; an
 * Arrow array of large strings has both. No NUL ends a text. `measures` (`POUR_MEASURES_METRIC`, ...; 0 for US customary)
 * counts for all rows. The status of a row: `POUR_REFUSED` where the text is not an amount of that kind,
 * `POUR_NOT_UTF8`, or `POUR_TOO_LARGE` for more than 512 bytes or offsets that decrease. */
POUR_API
int32_t pour_convert_texts_n(size_t rows,
                             const char *texts,
                             const int64_t *offsets,
                             const char *to,
                             int32_t measures,
                             struct pour_result_column converted,
                             int32_t *statuses,
                             struct pour_error **error);

/* `pour_density_of_parts` for every row: a table of `rows` mixes by `parts` constituents.
 *
 * Densities that are the same in every row have a row stride of 0. `voids` may have no column: 0 counts. */
POUR_API
int32_t pour_density_of_parts_n(size_t rows,
                                size_t parts,
                                struct pour_table masses_g,
                                struct pour_table densities_g_per_ml,
                                struct pour_column voids,
                                struct pour_result_column density_g_per_ml,
                                int32_t *statuses,
                                struct pour_error **error);

/* Answers a request, whatever comes: `json` ends with a NUL, and the answer is one JSON text, `{"result":{...}}` or
 * `{"faults":[{"code":...,"path":...,"message":...,"help":...}]}`.
 *
 * The shortest way in, for hosts that have JSON at hand. Null for `json`, a text that is not UTF-8, too little memory: all
 * that is a fault of the answer. The host frees the answer by `pour_string_free`. */
POUR_API
char *pour_answer(const char *json);

/* Answers a calculation request: `{"calculate":"convert","amount":"1 1/4 cup","to":"mL"}`.
 *
 * `out` receives the answer, `{"result":{...}}`: UTF-8, ended by a NUL that `out_len` (which may be null) does not
 * count; the host frees it by `pour_string_free`. `POUR_REFUSED` for a request with faults, all of which are in the
 * error; `pour_error_json` has them as `pour_answer` gives them: `{"faults":[...]}`. */
POUR_API
int32_t pour_request(const char *json,
                     size_t len,
                     char **out,
                     size_t *out_len,
                     struct pour_error **error);

/* The JSON Schema (draft 2020-12) named `name`, as JSON: `"request"`, `"answer"`, `"book"`, `"orders"`, `"actuals"`,
 * `"plan"`. It has every field with its meaning, its range and its default.
 *
 * Freed by `pour_string_free`; `out_len` may be null. `POUR_REFUSED` for another name; the help of the fault lists them. */
POUR_API
int32_t pour_schema(const char *name,
                    char **out,
                    size_t *out_len,
                    struct pour_error **error);

/* Answers many requests, one a line: JSON Lines.
 *
 * `out` receives one answer a line, in the order of the requests: UTF-8, ended by a NUL that `out_len` (which may be
 * null) does not count; the host frees it by `pour_string_free`. A line that is not a request has its faults in its
 * place, `{"faults":[...]}`, and the call is `POUR_OK`; `refused` (which may be null) receives the number of such lines.
 * A newline at the end of the text begins no line. The text may have any length, a line that of a document. */
POUR_API
int32_t pour_lines(const char *lines,
                   size_t len,
                   char **out,
                   size_t *out_len,
                   size_t *refused,
                   struct pour_error **error);

/* Frees a text that a call of this library gave out. Null is let pass. */
POUR_API void pour_string_free(char *text);

/* Loads a book from its JSON text of `len` bytes; `POUR_UP_TO_NUL` for one that ends with a NUL, as in every call.
 *
 * `POUR_REFUSED` with all faults of the text, else all of its form, else all of its meaning. */
POUR_API
int32_t pour_book_from_json(const char *json,
                            size_t len,
                            struct pour_book **book,
                            struct pour_error **error);

/* Frees a book. Null is let pass. */
POUR_API void pour_book_free(struct pour_book *book);

/* Answers a request with the book: as `pour_request`, for a request that takes a `book` and leaves it out. */
POUR_API
int32_t pour_book_request(const struct pour_book *book,
                          const char *json,
                          size_t len,
                          char **out,
                          size_t *out_len,
                          struct pour_error **error);

/* Answers many requests with the book, one a line: as `pour_lines`, for requests that leave `book` out. */
POUR_API
int32_t pour_book_lines(const struct pour_book *book,
                        const char *lines,
                        size_t len,
                        char **out,
                        size_t *out_len,
                        size_t *refused,
                        struct pour_error **error);

/* Plans a day: the JSON text of its order list, `orders_len` bytes.
 *
 * `POUR_REFUSED` with all faults of the order list, with paths into it, or why the day cannot be planned. */
POUR_API
int32_t pour_book_plan(const struct pour_book *book,
                       const char *orders_json,
                       size_t orders_len,
                       struct pour_plan **plan,
                       struct pour_error **error);

/* Plans a day within a budget: as `pour_book_plan`, with at most `pots` pots (default: 5000) and `thousand_steps`
 * thousands of steps of work (default: 10000). `POUR_OVER_BUDGET` if the day takes more, mostly before the work begins.
 *
 * `stop` is asked about every millisecond of planning, on the calling thread, with `user`; the plan ends with
 * `POUR_STOPPED` when it returns anything but 0. A short plan is finished without asking, and so are the reading of the
 * orders and the wording of the plan. Null for no such question. `stop` may call this library, but must not free the
 * book, and it must return: leaving it by longjmp or by an exception is undefined. It runs with the library's
 * floating-point state, and what it changes of that is undone. */
POUR_API
int32_t pour_book_plan_within(const struct pour_book *book,
                              const char *orders_json,
                              size_t orders_len,
                              uint32_t pots,
                              uint32_t thousand_steps,
                              int32_t (*stop)(void *user),
                              void *user,
                              struct pour_plan **plan,
                              struct pour_error **error);

/* Reopens a plan from the JSON text of `len` bytes that `pour_plan_json` gave, with the book in it.
 *
 * `POUR_REFUSED` with all faults of the text, else all of its form; a plan that was stored without its book. */
POUR_API
int32_t pour_plan_from_json(const char *json,
                            size_t len,
                            struct pour_plan **plan,
                            struct pour_error **error);

/* Answers a request with the plan and its book: as `pour_request`, for a request that takes a `book` or a `plan` and
 * leaves them out. A request that makes a new plan answers with it; `pour_plan_from_json` opens that. */
POUR_API
int32_t pour_plan_request(const struct pour_plan *plan,
                          const char *json,
                          size_t len,
                          char **out,
                          size_t *out_len,
                          struct pour_error **error);

/* The plan as JSON, complete: the record of the day, with the book and the orders that it was made from.
 *
 * Freed by `pour_string_free`; `out_len` may be null. */
POUR_API
int32_t pour_plan_json(const struct pour_plan *plan,
                       char **out,
                       size_t *out_len,
                       struct pour_error **error);

/* The bench sheet of the plan: text of 80 columns for the wall. Freed by `pour_string_free`; `out_len` may be null. */
POUR_API
int32_t pour_plan_sheet(const struct pour_plan *plan,
                        char **out,
                        size_t *out_len,
                        struct pour_error **error);

/* The notes to the plan: other ways to measure, how sure each number is, sink rates, costs, why there are not fewer pots,
 * what was assumed. Text of 80 columns, freed by `pour_string_free`; `out_len` may be null. */
POUR_API
int32_t pour_plan_notes(const struct pour_plan *plan,
                        char **out,
                        size_t *out_len,
                        struct pour_error **error);

/* Frees a plan. Null is let pass. */
POUR_API void pour_plan_free(struct pour_plan *plan);

/* Makes an empty mix of the materials of a book. The book may be freed before the mix. */
POUR_API
int32_t pour_mix_of_book(const struct pour_book *book,
                         struct pour_mix **mix,
                         struct pour_error **error);

/* Makes an empty mix of materials of the host's own: an array of `count`. */
POUR_API
int32_t pour_mix_of_materials(const struct pour_material *materials,
                              size_t count,
                              struct pour_mix **mix,
                              struct pour_error **error);

/* Adds a mass of a material, 0 to 1e15 g: nothing can be taken out of a mix again. */
POUR_API
int32_t pour_mix_add(struct pour_mix *mix,
                     const char *material,
                     double mass_g,
                     struct pour_error **error);

/* Takes a mass of the well-stirred mix out, as a mix of its own that the host frees. */
POUR_API
int32_t pour_mix_draw(struct pour_mix *mix,
                      double mass_g,
                      struct pour_mix **drawn,
                      struct pour_error **error);

/* Pours `other` into `mix`; `other` stays as it is. Both are made of one book, or of lists with the same numbers. */
POUR_API
int32_t pour_mix_merge(struct pour_mix *mix,
                       const struct pour_mix *other,
                       struct pour_error **error);

/* Makes the mix `factor` times as much, 0 or more. */
POUR_API int32_t pour_mix_scale(struct pour_mix *mix, double factor, struct pour_error **error);

/* The mass of the mix. */
POUR_API int32_t pour_mix_mass(const struct pour_mix *mix, double *mass_g, struct pour_error **error);

/* How much of a material is in the mix. */
POUR_API
int32_t pour_mix_mass_of(const struct pour_mix *mix,
                         const char *material,
                         double *mass_g,
                         struct pour_error **error);

/* Volume of the mix at a temperature, without voids: V = Σ (m/ρ)(1 + α (T − 20 °C)).
 *
 * `phase` is `POUR_PHASE_LIQUID` or `POUR_PHASE_FUSED`; 0 omits it: fused. `temperature_celsius` is -73 to 427; 20 °C
 * where it is omitted. A material whose expansion is not known does not expand. */
POUR_API
int32_t pour_mix_volume(const struct pour_mix *mix,
                        int32_t phase,
                        double temperature_celsius,
                        double *volume_ml,
                        struct pour_error **error);

/* Density of the mix at a temperature: M/V · (1 − voids), V as in `pour_mix_volume`; `voids` is 0 to below 1, 0 where it
 * is omitted. */
POUR_API
int32_t pour_mix_density(const struct pour_mix *mix,
                         int32_t phase,
                         double temperature_celsius,
                         double voids,
                         double *density_g_per_ml,
                         struct pour_error **error);

/* Frees a mix. Null is let pass. */
POUR_API void pour_mix_free(struct pour_mix *mix);

#ifdef __cplusplus
} /* extern "C" */
#endif /* __cplusplus */

#endif  /* POURWRIGHT_H */
