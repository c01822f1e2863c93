/* pourwright: recipe-formula and batch maths for workshops that pour soft plastic to order.
 *
 * Made by cbindgen from the crate in ffi/; do not edit.
 *
 * THE CONTRACT OF EVERY CALL
 *
 * Names and units. Everything begins with pour_ or POUR_. The last part of a number's name is its unit: _g, _ml,
 * _g_per_ml, _celsius, ...; a share or a ratio is a pure number, 0.05 for 5 %, and has none.
 *
 * Statuses. A call that can fail returns an int32_t: POUR_OK (0), or one of the statuses below. Their numbers are
 * never reused, and later versions may add some: treat an unknown one as a failure.
 *
 * Results. A call writes its results through pointers, and only when it returns POUR_OK: after a failure they hold
 * what they held. A pointer to a result must not be null, unless said. Two pointers of one call must not overlap,
 * unless said. Padding and fields named `reserved` are 0.
 *
 * Errors. The last parameter, `pour_error **error`, may be null. If it is not, a failed call writes a new error there:
 * one fault or more, each with code, path, message and help. Free it by pour_error_free. A successful call leaves
 * it alone, so set it to NULL before. No error is kept in the library or in the thread: what failed is what the call
 * says. The codes are stable; those of the calculations stand in core/ERRORS.md, and those of this border are:
 * null-pointer, not-finite, not-utf8, too-large, unknown-number, misaligned, output-stride,
 * outside-conversion, out-of-range, mix-no-such-material, material-name-twice, mix-into-itself,
 * mix-other-materials, mix-too-much, panic.
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
 * Numbers. NaN and infinity are POUR_NOT_FINITE. Other numbers that cannot be are POUR_REFUSED: each that is outside
 * its range is a fault out-of-range at its parameter, /voids or /mix/voids, that says what was passed and what may be.
 * Other faults have the code of the calculation, and the path of the parameter that would have to change. Where a
 * comment says so, 0 in a struct stands for what is left out; so set structs to {0} first.
 *
 * Columns. A call that ends in _n does for `rows` rows what the call without it does once. Each column is a pointer
 * and a stride: the distance from one number to the next in bytes, 8 for a plain array of doubles, negative or odd
 * if need be; 0 repeats one number for all rows. The results of one call do not overlap: where there is more than one,
 * a stride between -8 and 8 is POUR_REFUSED. A result may replace a column that has the same address and stride; else
 * they must not overlap. A row that cannot be is NaN, always the same one (bits 7ff8000000000000), and the call still
 * returns POUR_OK; if `statuses` is not null, it is a plain, aligned array of `rows` int32_t that receives the status
 * of each row. These calls allocate nothing. With rows = 0 any pointer may be null.
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

// The balance.
#define POUR_BALANCE 1

// Level spoonfuls.
#define POUR_SPOONS 3

// Whole drops.
#define POUR_DROPS 4

// The most spoons of different size that a bench has.
#define POUR_MOST_SPOONS 8

// US customary measures: gallon 231 in³, cup 236.588 236 5 mL.
#define POUR_US_CUSTOMARY 1

// US nutrition-label measures: cup 240 mL, tablespoon 15 mL, teaspoon 5 mL.
#define POUR_US_LABEL 2

// Metric kitchen measures: cup 250 mL, tablespoon 15 mL, teaspoon 5 mL.
#define POUR_METRIC 3

// Imperial measures: gallon 4.546 09 L; there are no spoons.
#define POUR_IMPERIAL 4

// mL of salt as scooped per mL of base.
#define POUR_SALT_AS_SCOOPED 1

// g of salt per mL of base.
#define POUR_SALT_PER_VOLUME 2

// Mass of salt per mass of base.
#define POUR_SALT_OF_BASE 3

// Mass of salt per mass of finished mix.
#define POUR_SALT_OF_FINISHED 4

// Density of the finished plastic at 20 °C, voids counted, in g/mL.
#define POUR_SALT_FINISHED_DENSITY 5

// Mass of a piece, in g. Needs `cavity_ml`.
#define POUR_SALT_PIECE 6

// Mean density of a piece with its hook, in g/mL: it sinks in water below this density. Needs `cavity_ml`.
#define POUR_SALT_SINK_DENSITY 7

// It falls straight.
#define POUR_STRAIGHT 1

// Some such pieces swing.
#define POUR_MAY_SWING 2

// It swings: the speed is that of a model which does not.
#define POUR_SWINGS 3

// Shore 00, for very soft pieces.
#define POUR_SHORE_00 1

// Shore A, for rubber-like pieces.
#define POUR_SHORE_A 2

// A plastisol as a cup measures it.
#define POUR_LIQUID 1

// A plastisol as a piece weighs it.
#define POUR_FUSED 2

// Liquid PVC-in-plasticizer, the base.
#define POUR_PLASTISOL 1

// Plasticizer that makes the piece softer.
#define POUR_SOFTENER 2

// What makes the piece harder.
#define POUR_HARDENER 3

// Heat stabilizer.
#define POUR_STABILIZER 4

// Liquid color.
#define POUR_COLORANT 5

// Pearl or another powder pigment.
#define POUR_PEARL 6

// Cut film glitter.
#define POUR_FLAKE 7

// Salt, for weight.
#define POUR_SALT 8

// Scent or oil.
#define POUR_SCENT 9

// Anything else.
#define POUR_OTHER 10

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

// Pieces wanted, and the shop that makes them. Set all to 0 first.
typedef struct pour_batch {
    // How many good pieces are wanted, 1 to 1 000 000.
    uint32_t pieces;
    // How many cavities a shot fills, 1 or more.
    uint32_t cavities;
    // How often the injector is cleaned or goes cold, the last time included; once where 0.
    uint32_t cleanings;
    // Not used; 0.
    uint32_t reserved;
    // Share of pieces that are not fit to sell, 0 to below 1.
    double rejects;
    // How sure the number of good pieces shall be, above 0 to below 1; 0.9 where 0.
    double confidence;
    // What one shot takes, sprue included; above 0.
    double shot_g;
    // What of it stays as sprue; 0 or above.
    double sprue_g;
    // Share of the sprues that is melted again, 0 to 1.
    double returned;
    // Density of what the injector draws: hot, voids counted; above 0.
    double shot_g_per_ml;
    // What the injector takes up at most; above 0.
    double injector_holds_ml;
    // What stays in it each time it is emptied; 0 or above.
    double injector_keeps_ml;
    // What stays on the wall of the cup; 0 or above.
    double film_g;
    // What cannot be drawn from the cup, its film included; 0 or above.
    double heel_g;
} pour_batch;

// What a batch takes.
typedef struct pour_batch_result {
    // The mass to mix.
    double total_g;
    // What all shots take.
    double drawn_g;
    // What of the sprues goes back and is shot again.
    double returned_g;
    // All pieces together.
    double pieces_g;
    // Sprues that are left over.
    double sprues_g;
    // What the injector keeps over the run.
    double kept_g;
    // What stays in the cup: the heel, with the film in it.
    double in_cup_g;
    // Shots.
    uint32_t shots;
    // Whole shots that one injector load gives.
    uint32_t shots_per_load;
    // Injector loads.
    uint32_t loads;
    // Shots from the last load.
    uint32_t shots_in_last;
} pour_batch_result;

// The tools on a bench, and a material. Set all to 0 first: a tool that is 0 is not there.
typedef struct pour_bench {
    // The smallest difference that the balance shows; no balance where 0, whatever it would weigh.
    double balance_reads_g;
    // The most that it weighs at once; 5000 times what it reads where 0.
    double balance_to_g;
    // The least that it is trusted with; 0 where nothing is known.
    double balance_from_g;
    // The spoons, at most 8; may be null where there are none.
    const double *spoons_ml;
    // How many spoons there are.
    size_t spoons;
    // The material in a spoon: a liquid's density, a powder's as scooped; not measured by spoon where 0.
    double as_measured_g_per_ml;
    // One drop of it; not dropped where 0.
    double drop_g;
} pour_bench;

// The way with the least handling.
typedef struct pour_measure {
    // What it gives.
    double mass_g;
    // (given − wanted)/wanted.
    double deviation;
    // `POUR_BALANCE`, `POUR_SPOONS` or `POUR_DROPS`.
    int32_t tool;
    // How much handling it is: readings, spoonfuls, tens of drops.
    uint32_t acts;
    // How many drops; 0 with another tool.
    uint32_t drops;
    // How many spoonfuls of each spoon, in the order of the bench.
    uint32_t spoonfuls[POUR_MOST_SPOONS];
    // Not used; 0.
    uint32_t reserved;
} pour_measure;

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

// A material. Set all to 0 first: 0 stands for "not known".
typedef struct pour_material {
    // Its name, ended by a NUL. It is copied.
    const char *name;
    // True density at 20 °C; of a plastisol, that of the liquid.
    double density_g_per_ml;
    // Density of a fused plastisol; the liquid one where 0.
    double fused_g_per_ml;
    // Density of a powder in a level spoon.
    double as_scooped_g_per_ml;
    // Mass of one drop of a liquid; 1/20 mL (pharmacy practice) where 0.
    double drop_g;
    // Volumetric thermal expansion; none where 0.
    double expansion_per_kelvin;
    // What it is for: `POUR_PLASTISOL` to `POUR_OTHER`.
    int32_t kind;
    // Not used; 0.
    uint32_t reserved;
} pour_material;

// A mix before salt, and what the conversion of salt loadings rests on.
//
// Set all to 0 first (`pour_unsalted mix = {0};`): 0 stands for "left out", and the comment says what then counts.
typedef struct pour_unsalted {
    // Volume of base, cold and liquid, as a cup measures it; above 0.
    double base_ml;
    // Density of the base as measured; above 0.
    double base_g_per_ml;
    // Mass of the mix before salt; that of its base where 0, and then `mix_ml` is 0, too.
    double mix_g;
    // Volume of the mix before salt at 20 °C as fused, without voids; that of its base where 0, and then `mix_g` is 0,
    // too.
    double mix_ml;
    // Volume of that mix at shot temperature; the cold one where 0.
    double hot_ml;
    // Shot temperature, 20 to 400 °C; 20 °C where 0.
    double shot_celsius;
    // Share of the finished volume that is air, 0 to below 1.
    double voids;
    // True density of the salt; above 0.
    double salt_g_per_ml;
    // Density of the salt in the spoon, at most the true one; 0 where it is not known. The form `POUR_SALT_AS_SCOOPED`
    // needs it.
    double salt_as_scooped_g_per_ml;
    // Volumetric expansion of the salt; 0 or above.
    double salt_expansion_per_kelvin;
    // Mass of softener that goes in per mass of salt; none where 0.
    double softener_per_salt;
    // Density of that softener; above 0 where there is any.
    double softener_g_per_ml;
    // Volumetric expansion of that softener; 0 or above.
    double softener_expansion_per_kelvin;
    // The most salt in the finished mix by true volume, above 0 to below 1; 0.3 where 0.
    double most_solids;
    // Volume of the cavity of a piece; no piece where 0.
    double cavity_ml;
    // Share of its contraction that a piece draws from the sprue, 0 to 1.
    double feed;
    // Mass of the hook and weight on a piece; 0 or above.
    double hook_g;
    // Volume that they displace; 0 or above.
    double hook_ml;
} pour_unsalted;

// One shot into cavities of one shape. Set all to 0 first.
typedef struct pour_shot {
    // Volume of one cavity; above 0.
    double cavity_ml;
    // Volume of sprue that this shot fills; 0 or above.
    double sprue_ml;
    // Mass that topping off and holding add; 0 or above.
    double topped_g;
    // The layer's share of each cavity, above 0 to 1; 1 where 0.
    double share;
    // Share of its contraction that a piece draws from the sprue, 0 to 1.
    double feed;
    // Density at shot temperature, without voids; the cold one where 0.
    double hot_g_per_ml;
    // Density at 20 °C once fused, without voids; above 0.
    double cold_g_per_ml;
    // Share of the volume that is air, 0 to below 1.
    double voids;
    // How many cavities the shot fills; 1 or more.
    uint32_t cavities;
    // Not used; 0.
    uint32_t reserved;
} pour_shot;

// Masses of one shot.
typedef struct pour_shot_result {
    // What the mold takes, topping included.
    double fill_g;
    // All pieces of the shot together.
    double pieces_g;
    // What is left as sprue once the pieces have been fed.
    double sprue_g;
    // What the sprue and the topping are short of: above 0 the pieces sink in.
    double missing_g;
    // One piece, or the layer in it.
    double piece_g;
    // The share of the contraction that was fed.
    double feed;
} pour_shot_result;

// A piece apart from its density, and the water. Set all to 0 first.
typedef struct pour_body {
    // Volume of the piece without its hook; above 0.
    double piece_ml;
    // Mean diameter; above 0.
    double diameter_mm;
    // Length of a stick that falls sideways, at least 2.01 diameters; a ball where 0.
    double length_mm;
    // Mass of hook and weight; 0 or above.
    double hook_g;
    // Volume that they displace; 0 or above.
    double hook_ml;
    // Temperature of the water, 0 to 40 °C. Here 0 is 0 °C.
    double water_celsius;
    // Practical salinity of the water: 0 fresh, about 35 in the ocean.
    double salinity;
} pour_body;

// A fall, as a model has it.
typedef struct pour_fall {
    // Final speed.
    double speed_cm_per_s;
    // Lower bound of the speed.
    double slowest_cm_per_s;
    // Upper bound of the speed.
    double fastest_cm_per_s;
    // Reynolds number.
    double reynolds;
    // Drag coefficient.
    double drag_coefficient;
    // `POUR_STRAIGHT`, `POUR_MAY_SWING` or `POUR_SWINGS`.
    int32_t motion;
    // Not used; 0.
    uint32_t reserved;
} pour_fall;

// A hardness that the shop has measured.
typedef struct pour_hardness_point {
    // Mass of softener or hardener per mass of base, 0 or above.
    double ratio;
    // What the durometer showed, 0 to 100.
    double reading;
} pour_hardness_point;

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

// The least number of shots that gives so many good pieces.
//
// `rejects` is the share of pieces that are not fit to sell, and `confidence` how sure the number of good pieces
// shall be; 0.9 where 0.
int32_t pour_shots(uint32_t pieces,
                   uint32_t cavities,
                   double rejects,
                   double confidence,
                   uint32_t *shots,
                   struct pour_error **error);

// How much to mix for so many pieces: shots, injector loads, losses.
int32_t pour_batch_need(const struct pour_batch *batch,
                        struct pour_batch_result *result,
                        struct pour_error **error);

// How to measure `mass_g` of a material within the relative `tolerance` (0.05 is 5 %): the way with the least
// handling.
//
// `POUR_REFUSED` where no tool keeps the tolerance; the help says from what mass on it would do.
int32_t pour_bench_measure(const struct pour_bench *bench,
                           double mass_g,
                           double tolerance,
                           struct pour_measure *measure,
                           struct pour_error **error);

// Prepares the conversion between two units, each by trade symbol or UCUM code: `"cup"`, `"[tsp_us]"`, `"g/mL"`.
//
// `measures` (`POUR_US_CUSTOMARY`, ...) is what a cup, a spoon and a fluid ounce hold where a unit does not say.
// `POUR_REFUSED` for a text that is no unit, can be read as several, or measures something else.
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

// Converts a number of one unit into another: `pour_conversion_between` and `pour_convert_with` in one.
int32_t pour_convert(double value,
                     const char *from,
                     const char *to,
                     int32_t measures,
                     double *converted,
                     struct pour_error **error);

// Converts an amount as a person writes it, such as `"1 1/4 cup"` or `"330 °F"`, exactly, and rounds once.
//
// What can be read two ways (`"6 oz"`, `"1,25 cup"`) is refused with both readings in the message.
int32_t pour_convert_amount(const char *amount,
                            const char *to,
                            int32_t measures,
                            double *converted,
                            struct pour_error **error);

// What `liquid_ml` takes up in a vacuum with the air that it holds: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)].
//
// `air` is the share of air in the mix before the pump runs, `absolute_kpa` the pressure in the chamber, `local_kpa`
// that of the air outside, `vapor_kpa` that of the liquid's vapor (0 for a dry plasticizer).
// `POUR_REFUSED` where it boils, or for a vacuum that the local air cannot give.
int32_t pour_swollen_volume(double liquid_ml,
                            double air,
                            double absolute_kpa,
                            double local_kpa,
                            double vapor_kpa,
                            double *swollen_ml,
                            struct pour_error **error);

// Density at 20 °C of `parts` constituents mixed: ρ = Σm/(Σm/ρ) · (1 − voids).
//
// `masses_g` and `densities_g_per_ml` are plain arrays of `parts` numbers; solids with their true density. `voids` is
// the share of the volume that is air, 0 to below 1.
int32_t pour_density_of_parts(size_t parts,
                              const double *masses_g,
                              const double *densities_g_per_ml,
                              double voids,
                              double *density_g_per_ml,
                              struct pour_error **error);

// Mass of an amount of a material, as a person writes it: `"1/4 tsp"`, `"40 drops"`, `"12.5 g"`.
//
// Liquids by their density, powders as scooped, drops by the material's own drop. `measures` (`POUR_US_CUSTOMARY`, ...)
// is what a cup and a spoon hold. `POUR_REFUSED` where the number that this takes is 0, not known.
int32_t pour_dose_mass(const struct pour_material *material,
                       const char *amount,
                       int32_t measures,
                       double *mass_g,
                       struct pour_error **error);

// Mass of a volume: m = ρV.
//
// `density_g_per_ml` is how the measure is filled: a liquid's density, a powder's *as scooped*. For what a solid
// displaces in a mix it is its true density.
int32_t pour_mass_of_volume(double volume_ml,
                            double density_g_per_ml,
                            double *mass_g,
                            struct pour_error **error);

// Volume of a mass: V = m/ρ, with the densities of `pour_mass_of_volume`.
int32_t pour_volume_of_mass(double mass_g,
                            double density_g_per_ml,
                            double *volume_ml,
                            struct pour_error **error);

// How many particles a dose of flake holds: m/(A · h · ρ), a nominal number.
//
// `cut` is as the trade writes it: `".035"`, `"1/64 hex"`, `"0.4 mm square"`; `thickness_um` and `film_g_per_ml` are
// those of the film.
int32_t pour_flake_count(const char *cut,
                         double thickness_um,
                         double film_g_per_ml,
                         double dose_g,
                         double *particles,
                         struct pour_error **error);

// States a salt loading another way: `value` in the form `from` (`POUR_SALT_...`) as `converted` in the form `to`.
//
// `POUR_REFUSED` for a loading out of reach; the help says what is in reach.
int32_t pour_salt_convert(const struct pour_unsalted *mix,
                          int32_t from,
                          double value,
                          int32_t to,
                          double *converted,
                          struct pour_error **error);

// The mass of salt that a loading of `value` in the form `form` (`POUR_SALT_...`) takes.
int32_t pour_salt_mass(const struct pour_unsalted *mix,
                       int32_t form,
                       double value,
                       double *salt_g,
                       struct pour_error **error);

// What is in reach in the form `form` (`POUR_SALT_...`): without salt, and with the most that the limits allow.
int32_t pour_salt_reach(const struct pour_unsalted *mix,
                        int32_t form,
                        double *least,
                        double *most,
                        struct pour_error **error);

// The mass of salt that brings `base_ml` of base without anything else to the finished `density_g_per_ml`.
//
// m = (ρ′V − M)/(1 − ρ′/ρ_salt) with ρ′ = ρ/(1 − voids), up to 30 % of salt by true volume. For a mix, softener beside
// the salt or another limit there is `pour_salt_mass`.
int32_t pour_salt_for_density(double base_ml,
                              double base_g_per_ml,
                              double salt_g_per_ml,
                              double voids,
                              double density_g_per_ml,
                              double *salt_g,
                              struct pour_error **error);

// What a shot takes, and what its pieces weigh.
int32_t pour_shot_fill(const struct pour_shot *shot,
                       struct pour_shot_result *result,
                       struct pour_error **error);

// Mass of a piece: V (1 − voids) [ρ_hot + feed (ρ_cold − ρ_hot)].
int32_t pour_piece_mass(double cavity_ml,
                        double hot_g_per_ml,
                        double cold_g_per_ml,
                        double voids,
                        double feed,
                        double *piece_g,
                        struct pour_error **error);

// How fast a piece of `density_g_per_ml` (voids and salt counted) sinks.
//
// A model value: the bounds say how far to trust it, and `motion` whether the model is about such a fall at all.
int32_t pour_sink_rate(const struct pour_body *body,
                       double density_g_per_ml,
                       struct pour_fall *fall,
                       struct pour_error **error);

// The density at which a piece sinks so fast: what salt has to bring it to.
int32_t pour_density_for_sink_rate(const struct pour_body *body,
                                   double speed_cm_per_s,
                                   double *density_g_per_ml,
                                   struct pour_error **error);

// The hardness that `ratio` of softener (or hardener) gives: a monotone cubic through the `count` points, which rise
// by their ratio, 2 to 64 of them on one scale (`POUR_SHORE_00`, `POUR_SHORE_A`). Outside the points it refuses.
int32_t pour_hardness(const struct pour_hardness_point *points,
                      size_t count,
                      int32_t on,
                      double ratio,
                      double *reading,
                      struct pour_error **error);

// The ratio of softener (or hardener) that gives the hardness `reading`: the other way round.
int32_t pour_softener_ratio(const struct pour_hardness_point *points,
                            size_t count,
                            int32_t on,
                            double reading,
                            double *ratio,
                            struct pour_error **error);

// Density of air-free water at 0 to 40 °C (Tanaka et al. 2001).
int32_t pour_water_density(double at_celsius, double *density_g_per_ml, struct pour_error **error);

// Volume of a cavity from what the balance reads for the water in it, weighed in air of `air_kpa` (101.325 at sea
// level, the local pressure and not that of a weather report).
int32_t pour_cavity_of_water(double water_g,
                             double at_celsius,
                             double air_kpa,
                             double *cavity_ml,
                             struct pour_error **error);

// `pour_convert_with` for every row.
int32_t pour_convert_n(const struct pour_conversion *conversion,
                       size_t rows,
                       const double *values,
                       ptrdiff_t values_stride,
                       double *converted,
                       ptrdiff_t converted_stride,
                       int32_t *statuses,
                       struct pour_error **error);

// `pour_mass_of_volume` for every row.
int32_t pour_mass_of_volume_n(size_t rows,
                              const double *volumes_ml,
                              ptrdiff_t volumes_stride,
                              const double *densities_g_per_ml,
                              ptrdiff_t densities_stride,
                              double *masses_g,
                              ptrdiff_t masses_stride,
                              int32_t *statuses,
                              struct pour_error **error);

// `pour_density_of_parts` for every row: a table of `rows` mixes by `parts` constituents.
//
// The strides of a table are two: from row to row, and from part to part. Densities that are the same in every row
// have a row stride of 0.
int32_t pour_density_of_parts_n(size_t rows,
                                size_t parts,
                                const double *masses_g,
                                ptrdiff_t masses_row_stride,
                                ptrdiff_t masses_part_stride,
                                const double *densities_g_per_ml,
                                ptrdiff_t densities_row_stride,
                                ptrdiff_t densities_part_stride,
                                const double *voids,
                                ptrdiff_t voids_stride,
                                double *mixed_g_per_ml,
                                ptrdiff_t mixed_stride,
                                int32_t *statuses,
                                struct pour_error **error);

// `pour_salt_for_density` for every row.
int32_t pour_salt_for_density_n(size_t rows,
                                const double *base_ml,
                                ptrdiff_t base_stride,
                                const double *base_g_per_ml,
                                ptrdiff_t base_density_stride,
                                const double *salt_g_per_ml,
                                ptrdiff_t salt_density_stride,
                                const double *voids,
                                ptrdiff_t voids_stride,
                                const double *density_g_per_ml,
                                ptrdiff_t density_stride,
                                double *salt_g,
                                ptrdiff_t salt_stride,
                                int32_t *statuses,
                                struct pour_error **error);

// `pour_piece_mass` for every row.
int32_t pour_piece_mass_n(size_t rows,
                          const double *cavity_ml,
                          ptrdiff_t cavity_stride,
                          const double *hot_g_per_ml,
                          ptrdiff_t hot_stride,
                          const double *cold_g_per_ml,
                          ptrdiff_t cold_stride,
                          const double *voids,
                          ptrdiff_t voids_stride,
                          const double *feed,
                          ptrdiff_t feed_stride,
                          double *piece_g,
                          ptrdiff_t piece_stride,
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
// `as_phase` is `POUR_LIQUID` or `POUR_FUSED`; `at_celsius` is from -273.15 to 400. Where a material's expansion is
// not known, none is reckoned with.
int32_t pour_mix_volume(const struct pour_mix *mix,
                        int32_t as_phase,
                        double at_celsius,
                        double *volume_ml,
                        struct pour_error **error);

// Density of the mix at a temperature: M/V · (1 − voids), V as in `pour_mix_volume`; `voids` is 0 to below 1.
int32_t pour_mix_density(const struct pour_mix *mix,
                         int32_t as_phase,
                         double at_celsius,
                         double voids,
                         double *density_g_per_ml,
                         struct pour_error **error);

// Frees a mix. Null is let pass.
void pour_mix_free(struct pour_mix *mix);

#ifdef __cplusplus
}  // extern "C"
#endif  // __cplusplus

#endif  /* POURWRIGHT_H */
