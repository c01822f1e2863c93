<?php

// The calculations of the library on plain numbers, each with its unit in its name.
//
// Made by `cargo run -p pourwright-generate`; do not edit.

declare(strict_types=1);

namespace Pourwright;

use Pourwright\Internal\Call;

const ALIKE_WORDS = ['count', 'area'];
const FORM_WORDS = ['as-scooped', 'per-volume', 'of-base', 'of-finished', 'finished-density', 'piece-mass', 'sink-density'];
const KIND_WORDS = ['plastisol', 'softener', 'hardener', 'stabilizer', 'colorant', 'pearl', 'flake', 'salt', 'scent', 'other'];
const MEASURES_WORDS = ['us-customary', 'us-label', 'metric', 'imperial'];
const MOTION_WORDS = ['straight', 'may-swing', 'swings'];
const PIECE_POINT_WORDS = ['center', 'mean'];
const SCALE_WORDS = ['shore-00', 'shore-a'];
const SECTION_SHAPE_WORDS = ['rod', 'plate', 'ball'];
const SHAPE_WORDS = ['stick', 'ball'];
const TOOL_WORDS = ['balance', 'cup', 'spoons', 'drops'];

/**
 * Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
 *
 * A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
 *
 * Example: `convert(amount: '1 1/4 cup', to: 'mL')` gives `295.735295625`.
 *
 * @param string $amount An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a
 *     temperature above absolute zero.
 * @param string $to The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
 * @param ?string $measures The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
 *     us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
 * @return float The number, in the unit of `to`.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function convert(
    string $amount,
    string $to,
    ?string $measures = null,
): float {
    return Call::of('convert', [
        ['amount', 'text', $amount],
        ['to', 'text', $to],
        ['measures', 'word', $measures, MEASURES_WORDS],
    ], [
        ['value', 'number'],
    ], input: false, result: false);
}

/**
 * Converts a number of one unit into another.
 *
 * Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between units hold on
 * bits: 48 tsp are 1 cup.
 *
 * Example: `convert_number(value: 48, unit: 'tsp', to: 'cup')` gives `1`.
 *
 * @param float $value The number to convert. Unit: any; 0 or above; a temperature above absolute zero.
 * @param string $unit The unit of the number, by trade symbol or UCUM code. A unit.
 * @param string $to The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
 * @param ?string $measures The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
 *     us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
 * @return float The number, in the unit of `to`.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function convert_number(
    float $value,
    string $unit,
    string $to,
    ?string $measures = null,
): float {
    return Call::of('convert_number', [
        ['value', 'number', $value],
        ['unit', 'text', $unit],
        ['to', 'text', $to],
        ['measures', 'word', $measures, MEASURES_WORDS],
    ], [
        ['value', 'number'],
    ], input: false, result: false);
}

/**
 * Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.
 *
 * A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a drop
 * is 1/20 mL (pharmacy practice).
 *
 * Example: `dose_mass(amount: '50 drops', kind: 'colorant', material_density_g_per_ml: 1.05, drop_mass_g:
 *     0.044)` gives `2.2`.
 *
 * @param string $amount An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a
 *     temperature above absolute zero.
 * @param string $kind What the material is for; powders (pearl, flake, salt) are measured as scooped. One of
 *     `plastisol`, `softener`, `hardener`, `stabilizer`, `colorant`, `pearl`, `flake`, `salt`, `scent`, `other`.
 * @param ?float $material_density_g_per_ml True density of the material; of a plastisol that of the liquid.
 *     Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $as_scooped_g_per_ml Bulk density of a powder, level in the spoon and not tapped. Unit: g/mL;
 *     0.001 to 25. Default: none.
 * @param ?float $drop_mass_g Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
 * @param ?string $measures The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
 *     us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
 * @return float The mass. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function dose_mass(
    string $amount,
    string $kind,
    ?float $material_density_g_per_ml = null,
    ?float $as_scooped_g_per_ml = null,
    ?float $drop_mass_g = null,
    ?string $measures = null,
): float {
    return Call::of('dose_mass', [
        ['amount', 'text', $amount],
        ['kind', 'word', $kind, KIND_WORDS],
        ['material_density_g_per_ml', 'number', $material_density_g_per_ml],
        ['as_scooped_g_per_ml', 'number', $as_scooped_g_per_ml],
        ['drop_mass_g', 'number', $drop_mass_g],
        ['measures', 'word', $measures, MEASURES_WORDS],
    ], [
        ['mass_g', 'number'],
    ], input: false, result: false);
}

/**
 * Mass of a volume: m = ρV.
 *
 * The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid
 * displaces in a mix it is its true density.
 *
 * Example: `mass_of_volume(volume_ml: 250, density_g_per_ml: 1.03)` gives `257.5`.
 *
 * @param float $volume_ml Volume. Unit: mL; 0 to 1e15.
 * @param float $density_g_per_ml Density, without voids. Unit: g/mL; 0.001 to 25.
 * @return float The mass. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function mass_of_volume(
    float $volume_ml,
    float $density_g_per_ml,
): float {
    return Call::of('mass_of_volume', [
        ['volume_ml', 'number', $volume_ml],
        ['density_g_per_ml', 'number', $density_g_per_ml],
    ], [
        ['mass_g', 'number'],
    ], input: false, result: false);
}

/**
 * Volume of a mass: V = m/ρ, with the densities of `mass_of_volume`.
 *
 * Example: `volume_of_mass(mass_g: 257.5, density_g_per_ml: 1.03)` gives `250`.
 *
 * @param float $mass_g Mass. Unit: g; 0 to 1e15.
 * @param float $density_g_per_ml Density, without voids. Unit: g/mL; 0.001 to 25.
 * @return float The volume. Unit: mL.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function volume_of_mass(
    float $mass_g,
    float $density_g_per_ml,
): float {
    return Call::of('volume_of_mass', [
        ['mass_g', 'number', $mass_g],
        ['density_g_per_ml', 'number', $density_g_per_ml],
    ], [
        ['volume_ml', 'number'],
    ], input: false, result: false);
}

/**
 * Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
 *
 * Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
 *
 * Example: `density_of_parts(parts: [[100, 1], [50, 2]])` gives `1.2000000000000002`.
 *
 * @param list<array{float, float}> $parts The parts of the mix: of each its mass and its true density. At
 *     least one has a mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then:
 *     True density of one part of a mix. Unit: g/mL; 0.001 to 25.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @return float Density of the mix, voids counted. Unit: g/mL.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function density_of_parts(
    array $parts,
    ?float $voids = null,
): float {
    return Call::of('density_of_parts', [
        ['parts', 'rows', $parts, 'parts_count', 2, 'pour_parts_row'],
        ['voids', 'number', $voids],
    ], [
        ['density_g_per_ml', 'number'],
    ], input: false, result: false);
}

/**
 * Share of one part in a mix, by mass and by true volume.
 *
 * Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).
 *
 * Example: `mix_share(parts: [[75, 1], [50, 2]], part: 2)` gives `['mass_share' => 0.4, 'volume_share' =>
 *     0.25000000000000006]`.
 *
 * @param list<array{float, float}> $parts The parts of the mix: of each its mass and its true density. At
 *     least one has a mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then:
 *     True density of one part of a mix. Unit: g/mL; 0.001 to 25.
 * @param int $part Which part of the mix, counted from 1. 1 to 1000.
 * @return array{mass_share: float, volume_share: float}
 *     mass_share: Share of its mass. Unit: 1.
 *     volume_share: Share of its true volume. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function mix_share(
    array $parts,
    int $part,
): array {
    return Call::of('mix_share', [
        ['parts', 'rows', $parts, 'parts_count', 2, 'pour_parts_row'],
        ['part', 'count', $part],
    ], [
        ['mass_share', 'number'],
        ['volume_share', 'number'],
    ], input: false, result: true);
}

/**
 * States a salt loading another way.
 *
 * All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In
 * reach is all between no salt and the maximum that `most_solids` allows. Where a form that is about a piece
 * needs the feed and it is not known, the bounds are those without feed and fed in full.
 *
 * Example: `salt_convert(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2, form:
 *     'of-base', loading: 0.1, to_form: 'as-scooped', salt_as_scooped_g_per_ml: 1.25)` gives `['loading' => 0.08,
 *     'loading_min' => 0.08, 'loading_max' => 0.08]`.
 *
 * @param float $base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to
 *     1e15.
 * @param float $base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it. Unit: g/mL;
 *     0.001 to 25.
 * @param float $salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
 *     0.001 to 25.
 * @param string $form The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
 *     `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
 * @param float $loading The salt loading, as its form states it. Unit: any; in the unit of its form.
 * @param string $to_form The way in which the loading is to be stated. One of `as-scooped`, `per-volume`,
 *     `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
 * @param ?float $mix_mass_g Mass of the mix before salt; at least that of its base. Give its volume too.
 *     Unit: g; 1e-12 to 1e15. Default: the mass of its base.
 * @param ?float $mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
 *     1e15. Default: as `base_volume_ml`.
 * @param ?float $hot_volume_ml Volume of the mix before salt at shot temperature; at least the cold one.
 *     Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
 * @param ?float $shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to 427. Default:
 *     20.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $salt_as_scooped_g_per_ml Bulk density of the salt, level in the spoon; at most its true
 *     density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
 *     Default: 0.
 * @param ?float $softener_per_salt Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to
 *     10. Default: 0.
 * @param ?float $softener_density_g_per_ml Density of the softener that goes in with the salt; needed with
 *     it. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $softener_expansion_per_kelvin Volumetric thermal expansion of that softener. Unit: 1/K; 0 to
 *     0.01. Default: 0.
 * @param ?float $most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to
 *     below 1. Default: 0.3.
 * @param ?float $cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
 * @param ?float $feed Share of its contraction that a piece draws from the sprue while it cools. Where it is
 *     not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
 *     1; 0 to 1. Default: 0.5.
 * @param ?float $hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $hook_volume_ml Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
 *     1e15. Default: 0.
 * @return array{loading: float, loading_min: float, loading_max: float}
 *     loading: The loading as `to_form` states it, in the unit of that form.
 *     loading_min: Its lower bound where the feed matters and is not known; else the loading.
 *     loading_max: Its upper bound where the feed matters and is not known; else the loading.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function salt_convert(
    float $base_volume_ml,
    float $base_density_g_per_ml,
    float $salt_density_g_per_ml,
    string $form,
    float $loading,
    string $to_form,
    ?float $mix_mass_g = null,
    ?float $mix_volume_ml = null,
    ?float $hot_volume_ml = null,
    ?float $shot_temperature_celsius = null,
    ?float $voids = null,
    ?float $salt_as_scooped_g_per_ml = null,
    ?float $salt_expansion_per_kelvin = null,
    ?float $softener_per_salt = null,
    ?float $softener_density_g_per_ml = null,
    ?float $softener_expansion_per_kelvin = null,
    ?float $most_solids = null,
    ?float $cavity_volume_ml = null,
    ?float $feed = null,
    ?float $hook_mass_g = null,
    ?float $hook_volume_ml = null,
): array {
    return Call::of('salt_convert', [
        ['base_volume_ml', 'number', $base_volume_ml],
        ['base_density_g_per_ml', 'number', $base_density_g_per_ml],
        ['salt_density_g_per_ml', 'number', $salt_density_g_per_ml],
        ['form', 'word', $form, FORM_WORDS],
        ['loading', 'number', $loading],
        ['to_form', 'word', $to_form, FORM_WORDS],
        ['mix_mass_g', 'number', $mix_mass_g],
        ['mix_volume_ml', 'number', $mix_volume_ml],
        ['hot_volume_ml', 'number', $hot_volume_ml],
        ['shot_temperature_celsius', 'number', $shot_temperature_celsius],
        ['voids', 'number', $voids],
        ['salt_as_scooped_g_per_ml', 'number', $salt_as_scooped_g_per_ml],
        ['salt_expansion_per_kelvin', 'number', $salt_expansion_per_kelvin],
        ['softener_per_salt', 'number', $softener_per_salt],
        ['softener_density_g_per_ml', 'number', $softener_density_g_per_ml],
        ['softener_expansion_per_kelvin', 'number', $softener_expansion_per_kelvin],
        ['most_solids', 'number', $most_solids],
        ['cavity_volume_ml', 'number', $cavity_volume_ml],
        ['feed', 'number', $feed],
        ['hook_mass_g', 'number', $hook_mass_g],
        ['hook_volume_ml', 'number', $hook_volume_ml],
    ], [
        ['loading', 'number'],
        ['loading_min', 'number'],
        ['loading_max', 'number'],
    ], input: true, result: true);
}

/**
 * Mass of salt for a loading, and of the softener that goes in with it.
 *
 * Example: `salt_mass(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2, form:
 *     'of-base', loading: 0.1, salt_as_scooped_g_per_ml: 1.25)` gives `['salt_mass_g' => 25, 'salt_mass_min_g' =>
 *     25, 'salt_mass_max_g' => 25, 'softener_mass_g' => 0]`.
 *
 * @param float $base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to
 *     1e15.
 * @param float $base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it. Unit: g/mL;
 *     0.001 to 25.
 * @param float $salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
 *     0.001 to 25.
 * @param string $form The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
 *     `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
 * @param float $loading The salt loading, as its form states it. Unit: any; in the unit of its form.
 * @param ?float $mix_mass_g Mass of the mix before salt; at least that of its base. Give its volume too.
 *     Unit: g; 1e-12 to 1e15. Default: the mass of its base.
 * @param ?float $mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
 *     1e15. Default: as `base_volume_ml`.
 * @param ?float $hot_volume_ml Volume of the mix before salt at shot temperature; at least the cold one.
 *     Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
 * @param ?float $shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to 427. Default:
 *     20.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $salt_as_scooped_g_per_ml Bulk density of the salt, level in the spoon; at most its true
 *     density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
 *     Default: 0.
 * @param ?float $softener_per_salt Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to
 *     10. Default: 0.
 * @param ?float $softener_density_g_per_ml Density of the softener that goes in with the salt; needed with
 *     it. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $softener_expansion_per_kelvin Volumetric thermal expansion of that softener. Unit: 1/K; 0 to
 *     0.01. Default: 0.
 * @param ?float $most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to
 *     below 1. Default: 0.3.
 * @param ?float $cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
 * @param ?float $feed Share of its contraction that a piece draws from the sprue while it cools. Where it is
 *     not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
 *     1; 0 to 1. Default: 0.5.
 * @param ?float $hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $hook_volume_ml Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
 *     1e15. Default: 0.
 * @return array{salt_mass_g: float, salt_mass_min_g: float, salt_mass_max_g: float, softener_mass_g: float}
 *     salt_mass_g: Mass of salt. Unit: g.
 *     salt_mass_min_g: Its lower bound where the feed matters and is not known; else the mass. Unit: g.
 *     salt_mass_max_g: Its upper bound where the feed matters and is not known; else the mass. Unit: g.
 *     softener_mass_g: Mass of softener that goes in with it. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function salt_mass(
    float $base_volume_ml,
    float $base_density_g_per_ml,
    float $salt_density_g_per_ml,
    string $form,
    float $loading,
    ?float $mix_mass_g = null,
    ?float $mix_volume_ml = null,
    ?float $hot_volume_ml = null,
    ?float $shot_temperature_celsius = null,
    ?float $voids = null,
    ?float $salt_as_scooped_g_per_ml = null,
    ?float $salt_expansion_per_kelvin = null,
    ?float $softener_per_salt = null,
    ?float $softener_density_g_per_ml = null,
    ?float $softener_expansion_per_kelvin = null,
    ?float $most_solids = null,
    ?float $cavity_volume_ml = null,
    ?float $feed = null,
    ?float $hook_mass_g = null,
    ?float $hook_volume_ml = null,
): array {
    return Call::of('salt_mass', [
        ['base_volume_ml', 'number', $base_volume_ml],
        ['base_density_g_per_ml', 'number', $base_density_g_per_ml],
        ['salt_density_g_per_ml', 'number', $salt_density_g_per_ml],
        ['form', 'word', $form, FORM_WORDS],
        ['loading', 'number', $loading],
        ['mix_mass_g', 'number', $mix_mass_g],
        ['mix_volume_ml', 'number', $mix_volume_ml],
        ['hot_volume_ml', 'number', $hot_volume_ml],
        ['shot_temperature_celsius', 'number', $shot_temperature_celsius],
        ['voids', 'number', $voids],
        ['salt_as_scooped_g_per_ml', 'number', $salt_as_scooped_g_per_ml],
        ['salt_expansion_per_kelvin', 'number', $salt_expansion_per_kelvin],
        ['softener_per_salt', 'number', $softener_per_salt],
        ['softener_density_g_per_ml', 'number', $softener_density_g_per_ml],
        ['softener_expansion_per_kelvin', 'number', $softener_expansion_per_kelvin],
        ['most_solids', 'number', $most_solids],
        ['cavity_volume_ml', 'number', $cavity_volume_ml],
        ['feed', 'number', $feed],
        ['hook_mass_g', 'number', $hook_mass_g],
        ['hook_volume_ml', 'number', $hook_volume_ml],
    ], [
        ['salt_mass_g', 'number'],
        ['salt_mass_min_g', 'number'],
        ['salt_mass_max_g', 'number'],
        ['softener_mass_g', 'number'],
    ], input: true, result: true);
}

/**
 * Salt loadings in reach: without salt, and with the maximum that `most_solids` allows.
 *
 * Example: `salt_reach(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2, form:
 *     'finished-density', salt_as_scooped_g_per_ml: 1.25)` gives `['loading_min' => 1, 'loading_max' => 1.3]`.
 *
 * @param float $base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to
 *     1e15.
 * @param float $base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it. Unit: g/mL;
 *     0.001 to 25.
 * @param float $salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
 *     0.001 to 25.
 * @param string $form The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
 *     `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
 * @param ?float $mix_mass_g Mass of the mix before salt; at least that of its base. Give its volume too.
 *     Unit: g; 1e-12 to 1e15. Default: the mass of its base.
 * @param ?float $mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
 *     1e15. Default: as `base_volume_ml`.
 * @param ?float $hot_volume_ml Volume of the mix before salt at shot temperature; at least the cold one.
 *     Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
 * @param ?float $shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to 427. Default:
 *     20.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $salt_as_scooped_g_per_ml Bulk density of the salt, level in the spoon; at most its true
 *     density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
 *     Default: 0.
 * @param ?float $softener_per_salt Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to
 *     10. Default: 0.
 * @param ?float $softener_density_g_per_ml Density of the softener that goes in with the salt; needed with
 *     it. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $softener_expansion_per_kelvin Volumetric thermal expansion of that softener. Unit: 1/K; 0 to
 *     0.01. Default: 0.
 * @param ?float $most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to
 *     below 1. Default: 0.3.
 * @param ?float $cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
 * @param ?float $feed Share of its contraction that a piece draws from the sprue while it cools. Where it is
 *     not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
 *     1; 0 to 1. Default: 0.5.
 * @param ?float $hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $hook_volume_ml Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
 *     1e15. Default: 0.
 * @return array{loading_min: float, loading_max: float}
 *     loading_min: The loading without salt, in the unit of the form.
 *     loading_max: The maximum loading, in the unit of the form.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function salt_reach(
    float $base_volume_ml,
    float $base_density_g_per_ml,
    float $salt_density_g_per_ml,
    string $form,
    ?float $mix_mass_g = null,
    ?float $mix_volume_ml = null,
    ?float $hot_volume_ml = null,
    ?float $shot_temperature_celsius = null,
    ?float $voids = null,
    ?float $salt_as_scooped_g_per_ml = null,
    ?float $salt_expansion_per_kelvin = null,
    ?float $softener_per_salt = null,
    ?float $softener_density_g_per_ml = null,
    ?float $softener_expansion_per_kelvin = null,
    ?float $most_solids = null,
    ?float $cavity_volume_ml = null,
    ?float $feed = null,
    ?float $hook_mass_g = null,
    ?float $hook_volume_ml = null,
): array {
    return Call::of('salt_reach', [
        ['base_volume_ml', 'number', $base_volume_ml],
        ['base_density_g_per_ml', 'number', $base_density_g_per_ml],
        ['salt_density_g_per_ml', 'number', $salt_density_g_per_ml],
        ['form', 'word', $form, FORM_WORDS],
        ['mix_mass_g', 'number', $mix_mass_g],
        ['mix_volume_ml', 'number', $mix_volume_ml],
        ['hot_volume_ml', 'number', $hot_volume_ml],
        ['shot_temperature_celsius', 'number', $shot_temperature_celsius],
        ['voids', 'number', $voids],
        ['salt_as_scooped_g_per_ml', 'number', $salt_as_scooped_g_per_ml],
        ['salt_expansion_per_kelvin', 'number', $salt_expansion_per_kelvin],
        ['softener_per_salt', 'number', $softener_per_salt],
        ['softener_density_g_per_ml', 'number', $softener_density_g_per_ml],
        ['softener_expansion_per_kelvin', 'number', $softener_expansion_per_kelvin],
        ['most_solids', 'number', $most_solids],
        ['cavity_volume_ml', 'number', $cavity_volume_ml],
        ['feed', 'number', $feed],
        ['hook_mass_g', 'number', $hook_mass_g],
        ['hook_volume_ml', 'number', $hook_volume_ml],
    ], [
        ['loading_min', 'number'],
        ['loading_max', 'number'],
    ], input: true, result: true);
}

/**
 * Mass of salt that brings a base alone to a finished density: `salt_mass` in one form, with few numbers.
 *
 * m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).
 *
 * Example: `salt_for_density(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2,
 *     finished_density_g_per_ml: 1.25)` gives `166.66666666666666`.
 *
 * @param float $base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to
 *     1e15.
 * @param float $base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it. Unit: g/mL;
 *     0.001 to 25.
 * @param float $salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
 *     0.001 to 25.
 * @param float $finished_density_g_per_ml Density of the finished plastic at 20 °C, voids counted. Unit:
 *     g/mL; 0.001 to 25.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to
 *     below 1. Default: 0.3.
 * @return float Mass of salt. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function salt_for_density(
    float $base_volume_ml,
    float $base_density_g_per_ml,
    float $salt_density_g_per_ml,
    float $finished_density_g_per_ml,
    ?float $voids = null,
    ?float $most_solids = null,
): float {
    return Call::of('salt_for_density', [
        ['base_volume_ml', 'number', $base_volume_ml],
        ['base_density_g_per_ml', 'number', $base_density_g_per_ml],
        ['salt_density_g_per_ml', 'number', $salt_density_g_per_ml],
        ['finished_density_g_per_ml', 'number', $finished_density_g_per_ml],
        ['voids', 'number', $voids],
        ['most_solids', 'number', $most_solids],
    ], [
        ['salt_mass_g', 'number'],
    ], input: false, result: false);
}

/**
 * Mass of salt at which a piece sinks at a rate.
 *
 * The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has
 * cooled; the salt is that for this density.
 *
 * Example: `salt_for_sink_rate(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2,
 *     sink_rate_cm_per_s: 22.04104669853903, cavity_volume_ml: 9.5, diameter_mm: 10, water_temperature_celsius:
 *     20, length_mm: 121, hook_mass_g: 2, hook_volume_ml: 0.25)` gives `['salt_mass_g' => 55.55555555555424,
 *     'softener_mass_g' => 0, 'finished_density_g_per_ml' => 1.0999999999999979]`.
 *
 * @param float $base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9 to
 *     1e15.
 * @param float $base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it. Unit: g/mL;
 *     0.001 to 25.
 * @param float $salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
 *     0.001 to 25.
 * @param float $sink_rate_cm_per_s Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
 * @param float $cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
 * @param float $diameter_mm Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
 * @param float $water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
 * @param ?float $length_mm Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to
 *     1e6. Default: none.
 * @param ?string $shape Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a
 *     length is given, else a ball. One of `stick`, `ball`.
 * @param ?float $mix_mass_g Mass of the mix before salt; at least that of its base. Give its volume too.
 *     Unit: g; 1e-12 to 1e15. Default: the mass of its base.
 * @param ?float $mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
 *     1e15. Default: as `base_volume_ml`.
 * @param ?float $hot_volume_ml Volume of the mix before salt at shot temperature; at least the cold one.
 *     Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
 * @param ?float $shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to 427. Default:
 *     20.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
 *     Default: 0.
 * @param ?float $softener_per_salt Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0 to
 *     10. Default: 0.
 * @param ?float $softener_density_g_per_ml Density of the softener that goes in with the salt; needed with
 *     it. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $softener_expansion_per_kelvin Volumetric thermal expansion of that softener. Unit: 1/K; 0 to
 *     0.01. Default: 0.
 * @param ?float $most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0 to
 *     below 1. Default: 0.3.
 * @param ?float $feed Share of its contraction that a piece draws from the sprue while it cools. Where it is
 *     not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
 *     1; 0 to 1. Default: 0.5.
 * @param ?float $hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $hook_volume_ml Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
 *     1e15. Default: 0.
 * @param ?float $salinity_practical Practical salinity as a probe reads it, about 35 in the ocean; give this
 *     or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
 * @param ?float $salinity_absolute Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035);
 *     give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
 * @param ?float $drop_depth_m Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9
 *     to 12000. Default: none.
 * @param ?float $drop_time_s Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
 * @param ?float $drop_density_g_per_ml Density of the piece that was dropped. Unit: g/mL; 0.001 to 25.
 *     Default: none.
 * @return array{salt_mass_g: float, softener_mass_g: float, finished_density_g_per_ml: float}
 *     salt_mass_g: Mass of salt. Unit: g.
 *     softener_mass_g: Mass of softener that goes in with it. Unit: g.
 *     finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function salt_for_sink_rate(
    float $base_volume_ml,
    float $base_density_g_per_ml,
    float $salt_density_g_per_ml,
    float $sink_rate_cm_per_s,
    float $cavity_volume_ml,
    float $diameter_mm,
    float $water_temperature_celsius,
    ?float $length_mm = null,
    ?string $shape = null,
    ?float $mix_mass_g = null,
    ?float $mix_volume_ml = null,
    ?float $hot_volume_ml = null,
    ?float $shot_temperature_celsius = null,
    ?float $voids = null,
    ?float $salt_expansion_per_kelvin = null,
    ?float $softener_per_salt = null,
    ?float $softener_density_g_per_ml = null,
    ?float $softener_expansion_per_kelvin = null,
    ?float $most_solids = null,
    ?float $feed = null,
    ?float $hook_mass_g = null,
    ?float $hook_volume_ml = null,
    ?float $salinity_practical = null,
    ?float $salinity_absolute = null,
    ?float $drop_depth_m = null,
    ?float $drop_time_s = null,
    ?float $drop_density_g_per_ml = null,
): array {
    return Call::of('salt_for_sink_rate', [
        ['base_volume_ml', 'number', $base_volume_ml],
        ['base_density_g_per_ml', 'number', $base_density_g_per_ml],
        ['salt_density_g_per_ml', 'number', $salt_density_g_per_ml],
        ['sink_rate_cm_per_s', 'number', $sink_rate_cm_per_s],
        ['cavity_volume_ml', 'number', $cavity_volume_ml],
        ['diameter_mm', 'number', $diameter_mm],
        ['water_temperature_celsius', 'number', $water_temperature_celsius],
        ['length_mm', 'number', $length_mm],
        ['shape', 'word', $shape, SHAPE_WORDS],
        ['mix_mass_g', 'number', $mix_mass_g],
        ['mix_volume_ml', 'number', $mix_volume_ml],
        ['hot_volume_ml', 'number', $hot_volume_ml],
        ['shot_temperature_celsius', 'number', $shot_temperature_celsius],
        ['voids', 'number', $voids],
        ['salt_expansion_per_kelvin', 'number', $salt_expansion_per_kelvin],
        ['softener_per_salt', 'number', $softener_per_salt],
        ['softener_density_g_per_ml', 'number', $softener_density_g_per_ml],
        ['softener_expansion_per_kelvin', 'number', $softener_expansion_per_kelvin],
        ['most_solids', 'number', $most_solids],
        ['feed', 'number', $feed],
        ['hook_mass_g', 'number', $hook_mass_g],
        ['hook_volume_ml', 'number', $hook_volume_ml],
        ['salinity_practical', 'number', $salinity_practical],
        ['salinity_absolute', 'number', $salinity_absolute],
        ['drop_depth_m', 'number', $drop_depth_m],
        ['drop_time_s', 'number', $drop_time_s],
        ['drop_density_g_per_ml', 'number', $drop_density_g_per_ml],
    ], [
        ['salt_mass_g', 'number'],
        ['softener_mass_g', 'number'],
        ['finished_density_g_per_ml', 'number'],
    ], input: true, result: true);
}

/**
 * Mass of one shot, and of its pieces.
 *
 * Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `piece_mass`, as far as sprue and topping can feed
 * it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is above 0. Of
 * sprue and topping a layer fills its share.
 *
 * Example: `shot_fill(cavities: 4, cavity_volume_ml: 10, cold_density_g_per_ml: 1.0625, hot_density_g_per_ml:
 *     1, feed: 0.5, sprue_volume_ml: 8)` gives `['shot_mass_g' => 48, 'pieces_mass_g' => 41.25, 'sprue_mass_g' =>
 *     6.75, 'missing_mass_g' => 0, 'piece_mass_g' => 10.3125, 'piece_mass_min_g' => 10.3125, 'piece_mass_max_g'
 *     => 10.3125, 'fed' => 0.5]`.
 *
 * @param int $cavities Number of cavities that a shot fills. 1 to 1000000.
 * @param float $cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
 * @param float $cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
 *     0.001 to 25.
 * @param ?float $hot_density_g_per_ml Melt density at shot temperature, without voids; at most the cold one.
 *     Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $feed Share of its contraction that a piece draws from the sprue while it cools. Where it is
 *     not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
 *     1; 0 to 1. Default: 0.5.
 * @param ?float $sprue_volume_ml Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0.
 * @param ?float $topped_mass_g Mass that topping off and holding add. Unit: g; 0 to 1e15. Default: 0.
 * @param ?float $layer_share Share of the cavity that this layer of a laminated piece fills. Unit: 1; above 0
 *     to 1. Default: 1.
 * @return array{shot_mass_g: float, pieces_mass_g: float, sprue_mass_g: float, missing_mass_g: float,
 *     piece_mass_g: float, piece_mass_min_g: float, piece_mass_max_g: float, fed: float}
 *     shot_mass_g: Mass of one shot, topping included. Unit: g.
 *     pieces_mass_g: Mass of all its pieces. Unit: g.
 *     sprue_mass_g: Mass that is left as sprue once the pieces have been fed. Unit: g.
 *     missing_mass_g: Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.
 *     piece_mass_g: Mass of one piece, or of the layer in it. Unit: g.
 *     piece_mass_min_g: The same without feed where the feed is not known; else the mass of the piece. Unit:
 *         g.
 *     piece_mass_max_g: The same fed as far as sprue and topping reach where the feed is not known; else the
 *         mass of the piece. Unit: g.
 *     fed: Share of the contraction that was fed. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function shot_fill(
    int $cavities,
    float $cavity_volume_ml,
    float $cold_density_g_per_ml,
    ?float $hot_density_g_per_ml = null,
    ?float $voids = null,
    ?float $feed = null,
    ?float $sprue_volume_ml = null,
    ?float $topped_mass_g = null,
    ?float $layer_share = null,
): array {
    return Call::of('shot_fill', [
        ['cavities', 'count', $cavities],
        ['cavity_volume_ml', 'number', $cavity_volume_ml],
        ['cold_density_g_per_ml', 'number', $cold_density_g_per_ml],
        ['hot_density_g_per_ml', 'number', $hot_density_g_per_ml],
        ['voids', 'number', $voids],
        ['feed', 'number', $feed],
        ['sprue_volume_ml', 'number', $sprue_volume_ml],
        ['topped_mass_g', 'number', $topped_mass_g],
        ['layer_share', 'number', $layer_share],
    ], [
        ['shot_mass_g', 'number'],
        ['pieces_mass_g', 'number'],
        ['sprue_mass_g', 'number'],
        ['missing_mass_g', 'number'],
        ['piece_mass_g', 'number'],
        ['piece_mass_min_g', 'number'],
        ['piece_mass_max_g', 'number'],
        ['fed', 'number'],
    ], input: true, result: true);
}

/**
 * Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
 *
 * While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f
 * is the shop's own. A sprue that cannot feed that much: see `shot_fill`.
 *
 * Example: `piece_mass(cavity_volume_ml: 10, cold_density_g_per_ml: 1.0625, hot_density_g_per_ml: 1)` gives
 *     `['piece_mass_g' => 10.3125, 'piece_mass_min_g' => 10, 'piece_mass_max_g' => 10.625]`.
 *
 * @param float $cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
 * @param float $cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
 *     0.001 to 25.
 * @param ?float $hot_density_g_per_ml Melt density at shot temperature, without voids; at most the cold one.
 *     Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $feed Share of its contraction that a piece draws from the sprue while it cools. Where it is
 *     not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
 *     1; 0 to 1. Default: 0.5.
 * @return array{piece_mass_g: float, piece_mass_min_g: float, piece_mass_max_g: float}
 *     piece_mass_g: Mass of the piece. Unit: g.
 *     piece_mass_min_g: The same without feed where the feed is not known; else the mass of the piece. Unit:
 *         g.
 *     piece_mass_max_g: The same fed in full where the feed is not known; else the mass of the piece. Unit:
 *         g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function piece_mass(
    float $cavity_volume_ml,
    float $cold_density_g_per_ml,
    ?float $hot_density_g_per_ml = null,
    ?float $voids = null,
    ?float $feed = null,
): array {
    return Call::of('piece_mass', [
        ['cavity_volume_ml', 'number', $cavity_volume_ml],
        ['cold_density_g_per_ml', 'number', $cold_density_g_per_ml],
        ['hot_density_g_per_ml', 'number', $hot_density_g_per_ml],
        ['voids', 'number', $voids],
        ['feed', 'number', $feed],
    ], [
        ['piece_mass_g', 'number'],
        ['piece_mass_min_g', 'number'],
        ['piece_mass_max_g', 'number'],
    ], input: false, result: true);
}

/**
 * Minimum number of shots for a number of good pieces.
 *
 * Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.
 *
 * Example: `shots(pieces: 10, cavities: 4)` gives `['shots' => 3, 'cast' => 12]`.
 *
 * @param int $pieces Number of good pieces needed. 1 to 1000000.
 * @param int $cavities Number of cavities that a shot fills. 1 to 1000000.
 * @param ?float $rejects Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $confidence Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999.
 *     Default: 0.9.
 * @return array{shots: int, cast: int}
 *     shots: Number of shots.
 *     cast: Number of pieces that they cast.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function shots(
    int $pieces,
    int $cavities,
    ?float $rejects = null,
    ?float $confidence = null,
): array {
    return Call::of('shots', [
        ['pieces', 'count', $pieces],
        ['cavities', 'count', $cavities],
        ['rejects', 'number', $rejects],
        ['confidence', 'number', $confidence],
    ], [
        ['shots', 'count'],
        ['cast', 'count'],
    ], input: false, result: true);
}

/**
 * Injector loads for a number of shots.
 *
 * Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.
 *
 * Example: `injector_loads(shots: 5, shot_mass_g: 40, shot_density_g_per_ml: 1, injector_capacity_ml: 100,
 *     injector_residue_ml: 10)` gives `['loads' => 3, 'shots_per_load' => 2, 'shots_in_last' => 1]`.
 *
 * @param int $shots Number of shots. 1 to 100000000.
 * @param float $shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
 * @param float $shot_density_g_per_ml Density of what the injector draws: hot, voids counted. Unit: g/mL;
 *     0.001 to 25.
 * @param float $injector_capacity_ml Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
 * @param ?float $injector_residue_ml Volume that stays in the injector each time it is emptied; below its
 *     capacity. Unit: mL; 0 to 1e15. Default: 0.
 * @return array{loads: int, shots_per_load: int, shots_in_last: int}
 *     loads: Number of injector loads.
 *     shots_per_load: Whole shots in one load.
 *     shots_in_last: Shots from the last load.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function injector_loads(
    int $shots,
    float $shot_mass_g,
    float $shot_density_g_per_ml,
    float $injector_capacity_ml,
    ?float $injector_residue_ml = null,
): array {
    return Call::of('injector_loads', [
        ['shots', 'count', $shots],
        ['shot_mass_g', 'number', $shot_mass_g],
        ['shot_density_g_per_ml', 'number', $shot_density_g_per_ml],
        ['injector_capacity_ml', 'number', $injector_capacity_ml],
        ['injector_residue_ml', 'number', $injector_residue_ml],
    ], [
        ['loads', 'count'],
        ['shots_per_load', 'count'],
        ['shots_in_last', 'count'],
    ], input: false, result: true);
}

/**
 * Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.
 *
 * total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel).
 *
 * Example: `batch_need(pieces: 10, cavities: 4, shot_mass_g: 50, shot_density_g_per_ml: 1,
 *     injector_capacity_ml: 120, injector_residue_ml: 5, sprue_mass_g: 10)` gives `['total_mass_g' =>
 *     155.00000000000003, 'drawn_mass_g' => 150.00000000000003, 'returned_mass_g' => 0, 'pieces_mass_g' => 120,
 *     'sprues_mass_g' => 30, 'kept_mass_g' => 5, 'in_cup_mass_g' => 0, 'shots' => 3, 'loads' => 2,
 *     'shots_per_load' => 2, 'shots_in_last' => 1]`.
 *
 * @param int $pieces Number of good pieces needed. 1 to 1000000.
 * @param int $cavities Number of cavities that a shot fills. 1 to 1000000.
 * @param float $shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
 * @param float $shot_density_g_per_ml Density of what the injector draws: hot, voids counted. Unit: g/mL;
 *     0.001 to 25.
 * @param float $injector_capacity_ml Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
 * @param ?float $injector_residue_ml Volume that stays in the injector each time it is emptied; below its
 *     capacity. Unit: mL; 0 to 1e15. Default: 0.
 * @param ?int $cleanings Number of times the injector is cleaned or goes cold, the last time included. 1 to
 *     1000000. Default: 1.
 * @param ?float $sprue_mass_g Mass of a shot that stays as sprue; at most the mass of the shot. Unit: g; 0 to
 *     1e15. Default: 0.
 * @param ?float $returned Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0.
 * @param ?float $pot_film_g Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $pot_heel_g Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $rejects Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $confidence Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999.
 *     Default: 0.9.
 * @return array{total_mass_g: float, drawn_mass_g: float, returned_mass_g: float, pieces_mass_g: float,
 *     sprues_mass_g: float, kept_mass_g: float, in_cup_mass_g: float, shots: int, loads: int, shots_per_load:
 *     int, shots_in_last: int}
 *     total_mass_g: Mass to mix. Unit: g.
 *     drawn_mass_g: Mass of all shots. Unit: g.
 *     returned_mass_g: Mass of sprues that go back and are shot again. Unit: g.
 *     pieces_mass_g: Mass of all pieces. Unit: g.
 *     sprues_mass_g: Mass of sprues that are left over. Unit: g.
 *     kept_mass_g: Mass that stays in the injector over the run. Unit: g.
 *     in_cup_mass_g: Mass that stays in the cup: the heel, with the film in it. Unit: g.
 *     shots: Number of shots.
 *     loads: Number of injector loads.
 *     shots_per_load: Whole shots in one load.
 *     shots_in_last: Shots from the last load.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function batch_need(
    int $pieces,
    int $cavities,
    float $shot_mass_g,
    float $shot_density_g_per_ml,
    float $injector_capacity_ml,
    ?float $injector_residue_ml = null,
    ?int $cleanings = null,
    ?float $sprue_mass_g = null,
    ?float $returned = null,
    ?float $pot_film_g = null,
    ?float $pot_heel_g = null,
    ?float $rejects = null,
    ?float $confidence = null,
): array {
    return Call::of('batch_need', [
        ['pieces', 'count', $pieces],
        ['cavities', 'count', $cavities],
        ['shot_mass_g', 'number', $shot_mass_g],
        ['shot_density_g_per_ml', 'number', $shot_density_g_per_ml],
        ['injector_capacity_ml', 'number', $injector_capacity_ml],
        ['injector_residue_ml', 'number', $injector_residue_ml],
        ['cleanings', 'count', $cleanings],
        ['sprue_mass_g', 'number', $sprue_mass_g],
        ['returned', 'number', $returned],
        ['pot_film_g', 'number', $pot_film_g],
        ['pot_heel_g', 'number', $pot_heel_g],
        ['rejects', 'number', $rejects],
        ['confidence', 'number', $confidence],
    ], [
        ['total_mass_g', 'number'],
        ['drawn_mass_g', 'number'],
        ['returned_mass_g', 'number'],
        ['pieces_mass_g', 'number'],
        ['sprues_mass_g', 'number'],
        ['kept_mass_g', 'number'],
        ['in_cup_mass_g', 'number'],
        ['shots', 'count'],
        ['loads', 'count'],
        ['shots_per_load', 'count'],
        ['shots_in_last', 'count'],
    ], input: true, result: true);
}

/**
 * Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.
 *
 * The doses follow from the rounded base, so that no formula is off.
 *
 * Example: `base_to_mark(mix_needed_g: 200, base_fraction: 0.8, base_density_g_per_ml: 1, cup_capacity_ml:
 *     250, cup_mark_ml: 50, shot_mass_g: 20)` gives `['base_volume_ml' => 200, 'base_mass_g' => 200, 'mix_mass_g'
 *     => 250, 'surplus_mass_g' => 49.999999999999986, 'extra_shots' => 2]`.
 *
 * @param float $mix_needed_g Mass of mix that is needed. Unit: g; 1e-12 to 1e15.
 * @param float $base_fraction Share of base in the mix, by mass. Unit: 1; above 0 to 1.
 * @param float $base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it. Unit: g/mL;
 *     0.001 to 25.
 * @param float $cup_capacity_ml Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.
 * @param ?float $cup_mark_ml Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one mark
 *     alone, when it is full.
 * @param ?float $shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted.
 * @return array{base_volume_ml: float, base_mass_g: float, mix_mass_g: float, surplus_mass_g: float,
 *     extra_shots: ?int}
 *     base_volume_ml: Volume of base: the mark. Unit: mL.
 *     base_mass_g: Mass of that base. Unit: g.
 *     mix_mass_g: Mass of the mix with all doses. Unit: g.
 *     surplus_mass_g: Mass that is more than needed. Unit: g.
 *     extra_shots: Whole shots that the surplus gives, where the mass of a shot is given. Null where there is
 *         none.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function base_to_mark(
    float $mix_needed_g,
    float $base_fraction,
    float $base_density_g_per_ml,
    float $cup_capacity_ml,
    ?float $cup_mark_ml = null,
    ?float $shot_mass_g = null,
): array {
    return Call::of('base_to_mark', [
        ['mix_needed_g', 'number', $mix_needed_g],
        ['base_fraction', 'number', $base_fraction],
        ['base_density_g_per_ml', 'number', $base_density_g_per_ml],
        ['cup_capacity_ml', 'number', $cup_capacity_ml],
        ['cup_mark_ml', 'number', $cup_mark_ml],
        ['shot_mass_g', 'number', $shot_mass_g],
    ], [
        ['base_volume_ml', 'number'],
        ['base_mass_g', 'number'],
        ['mix_mass_g', 'number'],
        ['surplus_mass_g', 'number'],
        ['extra_shots', 'count'],
    ], input: false, result: true);
}

/**
 * Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no
 * less mix than oven and injector need.
 *
 * Example: `least_pot(doses: [[0.05, 0.05, 0.005]], base_fraction: 0.8)` gives `['mix_mass_g' => 125,
 *     'base_mass_g' => 100]`.
 *
 * @param list<array{float, float, float}> $doses The doses: of each its smallest step, its tolerance and its
 *     ratio to the base. 1 to 64 of them. Each: Smallest step in which a dose can be measured: a drop, the
 *     smallest spoon, the readability of the balance. Unit: g; 1e-12 to 1e15. Then: Largest relative error that
 *     is accepted. Unit: 1; above 0 to below 1. Default: 0.05. Then: Dose, mass per mass of base. Unit: 1; 1e-9
 *     to 10.
 * @param float $base_fraction Share of base in the mix, by mass. Unit: 1; above 0 to 1.
 * @param ?float $oven_least_g Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15. Default: none.
 * @param ?float $injector_least_g Smallest mix that the injector can draw from. Unit: g; 1e-12 to 1e15.
 *     Default: none.
 * @return array{mix_mass_g: float, base_mass_g: float}
 *     mix_mass_g: Mass of the mix. Unit: g.
 *     base_mass_g: Mass of base in it. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function least_pot(
    array $doses,
    float $base_fraction,
    ?float $oven_least_g = null,
    ?float $injector_least_g = null,
): array {
    return Call::of('least_pot', [
        ['doses', 'rows', $doses, 'doses_count', 3, 'pour_doses_row'],
        ['base_fraction', 'number', $base_fraction],
        ['oven_least_g', 'number', $oven_least_g],
        ['injector_least_g', 'number', $injector_least_g],
    ], [
        ['mix_mass_g', 'number'],
        ['base_mass_g', 'number'],
    ], input: false, result: true);
}

/**
 * Reject rate from counted pieces, with the exact interval of a binomial share.
 *
 * Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.
 *
 * Example: `reject_rate(cast_pieces: 1, reject_count: 0, confidence: 0.5)` gives `['rejects' => 0,
 *     'rejects_min' => 0, 'rejects_max' => 0.75]`.
 *
 * @param int $cast_pieces Number of pieces that were cast. 1 to 1000000.
 * @param int $reject_count Number of them that are not fit to sell. 0 to 1000000.
 * @param ?float $confidence Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999.
 *     Default: 0.9.
 * @return array{rejects: float, rejects_min: float, rejects_max: float}
 *     rejects: Share of rejects. Unit: 1.
 *     rejects_min: Its lower bound. Unit: 1.
 *     rejects_max: Its upper bound. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function reject_rate(
    int $cast_pieces,
    int $reject_count,
    ?float $confidence = null,
): array {
    return Call::of('reject_rate', [
        ['cast_pieces', 'count', $cast_pieces],
        ['reject_count', 'count', $reject_count],
        ['confidence', 'number', $confidence],
    ], [
        ['rejects', 'number'],
        ['rejects_min', 'number'],
        ['rejects_max', 'number'],
    ], input: false, result: true);
}

/**
 * Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
 *
 * A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass
 * from which one would.
 *
 * Example: `bench_measure(mass_to_measure_g: 12.5, tolerance: 0.02, spoons_ml: [5, 2.5],
 *     as_measured_density_g_per_ml: 1)` gives `['mass_g' => 12.5, 'deviation' => 0, 'tool' => 'spoons', 'acts' =>
 *     3, 'drops' => 0, 'spoonfuls' => [2, 1, 0, 0, 0, 0, 0, 0], 'cup' => 0, 'cup_fillings' => 0, 'cup_mark' =>
 *     0]`.
 *
 * @param float $mass_to_measure_g Mass to measure. Unit: g; 1e-12 to 1e15.
 * @param ?float $tolerance Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default:
 *     0.05.
 * @param ?float $balance_readability_g Smallest difference that the balance shows; without it there is no
 *     balance. Unit: g; 1e-12 to 1e15. Default: none.
 * @param ?float $balance_capacity_g Highest load of the balance. Unit: g; 1e-12 to 1e15. Default: 5000 times
 *     its readability.
 * @param ?float $balance_least_load_g Minimum load for which the balance is trusted. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param list<float>|null $spoons_ml Volumes of the measuring spoons. 1 to 8 of them. Default: none. Each:
 *     Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
 * @param list<array{float, float}>|null $cups The cups with evenly spaced marks: of each the distance between
 *     marks and the capacity. 1 to 64 of them. Default: none. Each: Distance between the marks of the cup. Unit:
 *     mL; 1e-9 to 1e15. Default: one mark alone, when it is full. Then: Volume of the cup up to its last mark.
 *     Unit: mL; 1e-9 to 1e15.
 * @param ?float $as_measured_density_g_per_ml Density of the material in a measure: of a liquid its density,
 *     of a powder its bulk density, level and not tapped. Unit: g/mL; 0.001 to 25. Default: none.
 * @param ?float $drop_mass_g Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
 * @return array{mass_g: float, deviation: float, tool: string, acts: int, drops: int, spoonfuls: list<int>,
 *     cup: int, cup_fillings: int, cup_mark: int}
 *     mass_g: Mass that it gives. Unit: g.
 *     deviation: (given − needed)/needed. Unit: 1.
 *     tool: The tool: balance, cup, spoons or drops. One of `balance`, `cup`, `spoons`, `drops`.
 *     acts: Amount of handling: readings, fillings, spoonfuls, tens of drops.
 *     drops: Number of drops.
 *     spoonfuls: Number of level spoonfuls of each spoon, in the order of the spoons.
 *     cup: Which cup, counted from 1; 0 without one.
 *     cup_fillings: Number of times that cup is filled to its last mark.
 *     cup_mark: Mark to which it is filled once more, counted from 1; 0 where it is not.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function bench_measure(
    float $mass_to_measure_g,
    ?float $tolerance = null,
    ?float $balance_readability_g = null,
    ?float $balance_capacity_g = null,
    ?float $balance_least_load_g = null,
    ?array $spoons_ml = null,
    ?array $cups = null,
    ?float $as_measured_density_g_per_ml = null,
    ?float $drop_mass_g = null,
): array {
    return Call::of('bench_measure', [
        ['mass_to_measure_g', 'number', $mass_to_measure_g],
        ['tolerance', 'number', $tolerance],
        ['balance_readability_g', 'number', $balance_readability_g],
        ['balance_capacity_g', 'number', $balance_capacity_g],
        ['balance_least_load_g', 'number', $balance_least_load_g],
        ['spoons_ml', 'list', $spoons_ml, 'spoons_count'],
        ['cups', 'rows', $cups, 'cups_count', 2, 'pour_cups_row'],
        ['as_measured_density_g_per_ml', 'number', $as_measured_density_g_per_ml],
        ['drop_mass_g', 'number', $drop_mass_g],
    ], [
        ['mass_g', 'number'],
        ['deviation', 'number'],
        ['tool', 'word', TOOL_WORDS],
        ['acts', 'count'],
        ['drops', 'count'],
        ['spoonfuls', 'list', 8],
        ['cup', 'count'],
        ['cup_fillings', 'count'],
        ['cup_mark', 'count'],
    ], input: true, result: true);
}

/**
 * Sink rate of a piece with its hook: the final speed, a model value.
 *
 * Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the
 * equations, sources and bounds are those of the module `process::sink`. `motion` is whether the model holds
 * for such a piece at all. A drop that the shop timed (depth, time, density) replaces the published drag by
 * the piece's own.
 *
 * Example: `sink_rate(piece_density_g_per_ml: 1.1, piece_volume_ml: 9.5, diameter_mm: 10,
 *     water_temperature_celsius: 20, length_mm: 121, hook_mass_g: 2, hook_volume_ml: 0.25)` gives
 *     `['sink_rate_cm_per_s' => 22.04104669853903, 'sink_rate_min_cm_per_s' => 19.297542687585494,
 *     'sink_rate_max_cm_per_s' => 30.86051085510933, 'motion' => 'swings', 'reynolds' => 2196.2834650479926,
 *     'drag_coefficient' => 0.9083361655585607, 'sink_time_s' => null]`.
 *
 * @param float $piece_density_g_per_ml Density of the piece, its salt and voids counted. Unit: g/mL; 0.001 to
 *     25.
 * @param float $piece_volume_ml Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
 * @param float $diameter_mm Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
 * @param float $water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
 * @param ?float $length_mm Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to
 *     1e6. Default: none.
 * @param ?string $shape Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a
 *     length is given, else a ball. One of `stick`, `ball`.
 * @param ?float $hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $hook_volume_ml Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
 *     1e15. Default: 0.
 * @param ?float $salinity_practical Practical salinity as a probe reads it, about 35 in the ocean; give this
 *     or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
 * @param ?float $salinity_absolute Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035);
 *     give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
 * @param ?float $density_uncertainty_g_per_ml Standard uncertainty of the density of the piece; its bounds
 *     are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.
 * @param ?float $depth_m Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none.
 * @param ?float $drop_depth_m Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9
 *     to 12000. Default: none.
 * @param ?float $drop_time_s Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
 * @param ?float $drop_density_g_per_ml Density of the piece that was dropped. Unit: g/mL; 0.001 to 25.
 *     Default: none.
 * @return array{sink_rate_cm_per_s: float, sink_rate_min_cm_per_s: float, sink_rate_max_cm_per_s: float,
 *     motion: string, reynolds: float, drag_coefficient: float, sink_time_s: ?float}
 *     sink_rate_cm_per_s: Sink rate. Unit: cm/s.
 *     sink_rate_min_cm_per_s: Lower bound; 0 where the piece may hang or float. Unit: cm/s.
 *     sink_rate_max_cm_per_s: Upper bound. Unit: cm/s.
 *     motion: Whether it sinks straight: straight, may-swing or swings. One of `straight`, `may-swing`,
 *         `swings`.
 *     reynolds: Reynolds number. Unit: 1.
 *     drag_coefficient: Drag coefficient, on length times diameter of a stick and the cross-section of a
 *         ball. Unit: 1.
 *     sink_time_s: Time to the depth, let go at rest just below the surface. Unit: s. Null where there is
 *         none.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function sink_rate(
    float $piece_density_g_per_ml,
    float $piece_volume_ml,
    float $diameter_mm,
    float $water_temperature_celsius,
    ?float $length_mm = null,
    ?string $shape = null,
    ?float $hook_mass_g = null,
    ?float $hook_volume_ml = null,
    ?float $salinity_practical = null,
    ?float $salinity_absolute = null,
    ?float $density_uncertainty_g_per_ml = null,
    ?float $depth_m = null,
    ?float $drop_depth_m = null,
    ?float $drop_time_s = null,
    ?float $drop_density_g_per_ml = null,
): array {
    return Call::of('sink_rate', [
        ['piece_density_g_per_ml', 'number', $piece_density_g_per_ml],
        ['piece_volume_ml', 'number', $piece_volume_ml],
        ['diameter_mm', 'number', $diameter_mm],
        ['water_temperature_celsius', 'number', $water_temperature_celsius],
        ['length_mm', 'number', $length_mm],
        ['shape', 'word', $shape, SHAPE_WORDS],
        ['hook_mass_g', 'number', $hook_mass_g],
        ['hook_volume_ml', 'number', $hook_volume_ml],
        ['salinity_practical', 'number', $salinity_practical],
        ['salinity_absolute', 'number', $salinity_absolute],
        ['density_uncertainty_g_per_ml', 'number', $density_uncertainty_g_per_ml],
        ['depth_m', 'number', $depth_m],
        ['drop_depth_m', 'number', $drop_depth_m],
        ['drop_time_s', 'number', $drop_time_s],
        ['drop_density_g_per_ml', 'number', $drop_density_g_per_ml],
    ], [
        ['sink_rate_cm_per_s', 'number'],
        ['sink_rate_min_cm_per_s', 'number'],
        ['sink_rate_max_cm_per_s', 'number'],
        ['motion', 'word', MOTION_WORDS],
        ['reynolds', 'number'],
        ['drag_coefficient', 'number'],
        ['sink_time_s', 'number'],
    ], input: true, result: true);
}

/**
 * Density at which a piece sinks at a rate: the finished density to salt for.
 *
 * Example: `density_for_sink_rate(sink_rate_cm_per_s: 22.04104669853903, piece_volume_ml: 9.5, diameter_mm:
 *     10, water_temperature_celsius: 20, length_mm: 121, hook_mass_g: 2, hook_volume_ml: 0.25)` gives
 *     `1.0999999999999979`.
 *
 * @param float $sink_rate_cm_per_s Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
 * @param float $piece_volume_ml Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
 * @param float $diameter_mm Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
 * @param float $water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
 * @param ?float $length_mm Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6 to
 *     1e6. Default: none.
 * @param ?string $shape Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a
 *     length is given, else a ball. One of `stick`, `ball`.
 * @param ?float $hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
 *     Default: 0.
 * @param ?float $hook_volume_ml Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
 *     1e15. Default: 0.
 * @param ?float $salinity_practical Practical salinity as a probe reads it, about 35 in the ocean; give this
 *     or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
 * @param ?float $salinity_absolute Absolute salinity, mass of salt per mass of sea water (35 g/kg is 0.035);
 *     give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
 * @param ?float $drop_depth_m Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9
 *     to 12000. Default: none.
 * @param ?float $drop_time_s Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
 * @param ?float $drop_density_g_per_ml Density of the piece that was dropped. Unit: g/mL; 0.001 to 25.
 *     Default: none.
 * @return float Density of the piece, voids and salt counted. Unit: g/mL.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function density_for_sink_rate(
    float $sink_rate_cm_per_s,
    float $piece_volume_ml,
    float $diameter_mm,
    float $water_temperature_celsius,
    ?float $length_mm = null,
    ?string $shape = null,
    ?float $hook_mass_g = null,
    ?float $hook_volume_ml = null,
    ?float $salinity_practical = null,
    ?float $salinity_absolute = null,
    ?float $drop_depth_m = null,
    ?float $drop_time_s = null,
    ?float $drop_density_g_per_ml = null,
): float {
    return Call::of('density_for_sink_rate', [
        ['sink_rate_cm_per_s', 'number', $sink_rate_cm_per_s],
        ['piece_volume_ml', 'number', $piece_volume_ml],
        ['diameter_mm', 'number', $diameter_mm],
        ['water_temperature_celsius', 'number', $water_temperature_celsius],
        ['length_mm', 'number', $length_mm],
        ['shape', 'word', $shape, SHAPE_WORDS],
        ['hook_mass_g', 'number', $hook_mass_g],
        ['hook_volume_ml', 'number', $hook_volume_ml],
        ['salinity_practical', 'number', $salinity_practical],
        ['salinity_absolute', 'number', $salinity_absolute],
        ['drop_depth_m', 'number', $drop_depth_m],
        ['drop_time_s', 'number', $drop_time_s],
        ['drop_density_g_per_ml', 'number', $drop_density_g_per_ml],
    ], [
        ['piece_density_g_per_ml', 'number'],
    ], input: true, result: false);
}

/**
 * Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.
 *
 * Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore
 * scales do not convert into each other (ASTM D2240): all points are on one.
 *
 * Example: `hardness(points: [[0, 60], [0.2, 40]], scale: 'shore-00', softener_ratio: 0.1)` gives `50`.
 *
 * @param list<array{float, float}> $points The shop's own measured points, by rising ratio: of each the ratio
 *     and the durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per mass
 *     of base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.
 * @param string $scale The scale of the durometer. One of `shore-00`, `shore-a`.
 * @param float $softener_ratio Softener or hardener, mass per mass of base; between the measured points.
 *     Unit: 1; 0 to 100.
 * @return float Durometer reading. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function hardness(
    array $points,
    string $scale,
    float $softener_ratio,
): float {
    return Call::of('hardness', [
        ['points', 'rows', $points, 'points_count', 2, 'pour_points_row'],
        ['scale', 'word', $scale, SCALE_WORDS],
        ['softener_ratio', 'number', $softener_ratio],
    ], [
        ['hardness', 'number'],
    ], input: false, result: false);
}

/**
 * Ratio of softener or hardener for a hardness: the other way round.
 *
 * Example: `softener_ratio(points: [[0, 60], [0.2, 40]], scale: 'shore-00', hardness: 50)` gives
 *     `0.10000000000000005`.
 *
 * @param list<array{float, float}> $points The shop's own measured points, by rising ratio: of each the ratio
 *     and the durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per mass
 *     of base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.
 * @param string $scale The scale of the durometer. One of `shore-00`, `shore-a`.
 * @param float $hardness Durometer reading. Unit: 1; 0 to 100.
 * @return float Mass per mass of base. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function softener_ratio(
    array $points,
    string $scale,
    float $hardness,
): float {
    return Call::of('softener_ratio', [
        ['points', 'rows', $points, 'points_count', 2, 'pour_points_row'],
        ['scale', 'word', $scale, SCALE_WORDS],
        ['hardness', 'number', $hardness],
    ], [
        ['softener_ratio', 'number'],
    ], input: false, result: false);
}

/**
 * Extra softener for a salted body, between the shop's own points.
 *
 * Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone
 * cubic answers, outside it refuses.
 *
 * Example: `salted_softener(salted_points: [[0, 0], [0.2, 0.1]], salt_of_base: 0.1)` gives `0.05`.
 *
 * @param list<array{float, float}> $salted_points The shop's own measured points, by rising salt: of each the
 *     salt and the softener, mass per mass of base. 2 to 1000 of them. Each: Salt of a measured point, mass per
 *     mass of base. Unit: 1; 0 to 10. Then: Softener that the shop adds at that salt, mass per mass of base.
 *     Unit: 1; 0 to 10.
 * @param float $salt_of_base Salt, mass per mass of base; between the measured points. Unit: 1; 0 to 10.
 * @return float Softener on top of the unsalted body's, mass per mass of base. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function salted_softener(
    array $salted_points,
    float $salt_of_base,
): float {
    return Call::of('salted_softener', [
        ['salted_points', 'rows', $salted_points, 'salted_points_count', 2, 'pour_salted_points_row'],
        ['salt_of_base', 'number', $salt_of_base],
    ], [
        ['softener_ratio', 'number'],
    ], input: false, result: false);
}

/**
 * Density of air-free water at 101.325 kPa, 0 to 40 °C.
 *
 * Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.
 *
 * Example: `water_density(water_temperature_celsius: 20)` gives `0.9982067455596167`.
 *
 * @param float $water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
 * @return float Density of the water. Unit: g/mL.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function water_density(
    float $water_temperature_celsius,
): float {
    return Call::of('water_density', [
        ['water_temperature_celsius', 'number', $water_temperature_celsius],
    ], [
        ['density_g_per_ml', 'number'],
    ], input: false, result: false);
}

/**
 * Volume of a cavity from the reading of a balance for the water that it holds.
 *
 * Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).
 *
 * Example: `cavity_of_water(water_mass_g: 10, water_temperature_celsius: 20)` gives `10.028511692201585`.
 *
 * @param float $water_mass_g Reading of the balance for the water in one cavity: filled less empty. Unit: g;
 *     1e-12 to 1e15.
 * @param float $water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
 * @param ?float $air_pressure_kpa Air pressure at the balance, not reduced to sea level. Unit: kPa; 45 to
 *     110. Default: 101.325.
 * @return float Volume of the cavity. Unit: mL.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function cavity_of_water(
    float $water_mass_g,
    float $water_temperature_celsius,
    ?float $air_pressure_kpa = null,
): float {
    return Call::of('cavity_of_water', [
        ['water_mass_g', 'number', $water_mass_g],
        ['water_temperature_celsius', 'number', $water_temperature_celsius],
        ['air_pressure_kpa', 'number', $air_pressure_kpa],
    ], [
        ['cavity_volume_ml', 'number'],
    ], input: false, result: false);
}

/**
 * Air pressure of the standard atmosphere at an altitude.
 *
 * U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.
 *
 * Example: `standard_pressure(altitude_m: 0)` gives `101.325`.
 *
 * @param float $altitude_m Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to
 *     11000.
 * @return float Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
 *     Unit: kPa.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function standard_pressure(
    float $altitude_m,
): float {
    return Call::of('standard_pressure', [
        ['altitude_m', 'number', $altitude_m],
    ], [
        ['station_pressure_kpa', 'number'],
    ], input: false, result: false);
}

/**
 * Air pressure at the place itself from one that a weather report gives, reduced to sea level.
 *
 * Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.
 *
 * Example: `station_pressure(reported_pressure_kpa: 101.325, altitude_m: 0)` gives `101.325`.
 *
 * @param float $reported_pressure_kpa Air pressure as a weather report gives it, reduced to sea level; needs
 *     the altitude. Unit: kPa; 85 to 110.
 * @param float $altitude_m Height above sea level, as a map gives it; negative below it. Unit: m; -5000 to
 *     11000.
 * @return float Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
 *     Unit: kPa.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function station_pressure(
    float $reported_pressure_kpa,
    float $altitude_m,
): float {
    return Call::of('station_pressure', [
        ['reported_pressure_kpa', 'number', $reported_pressure_kpa],
        ['altitude_m', 'number', $altitude_m],
    ], [
        ['station_pressure_kpa', 'number'],
    ], input: false, result: false);
}

/**
 * Volume of a pot in a vacuum, with the air that it holds.
 *
 * Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge shows
 * it or as the pressure that is left; with a gauge the lowest pressure counts that its tolerance allows.
 *
 * Example: `swollen_volume(liquid_volume_ml: 450, entrained_air: 0.1, station_pressure_kpa: 100,
 *     absolute_pressure_kpa: 10)` gives `['swollen_volume_ml' => 950, 'standing_volume_ml' => 500,
 *     'absolute_pressure_kpa' => 10]`.
 *
 * @param float $liquid_volume_ml Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
 * @param float $entrained_air Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to
 *     below 1.
 * @param float $station_pressure_kpa Air pressure at the place itself, not reduced to sea level. Unit: kPa;
 *     22.6 to 178.
 * @param ?float $gauge_vacuum_kpa Reading of a vacuum gauge, which counts down from the air outside; give
 *     this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
 * @param ?float $absolute_pressure_kpa Pressure that is left in the chamber, counted from nothing at all;
 *     give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
 * @param ?float $dial_tolerance_kpa How far the vacuum gauge may be off to either side; the default, 0.9
 *     inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
 * @param ?float $vapor_pressure_kpa Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure
 *     in the chamber. Unit: kPa; 0 to 180. Default: 0.
 * @param ?float $damp_at_celsius Temperature of a damp pot, whose water boils under vacuum; omit it for a dry
 *     pot. Unit: °C; 0.01 to 200. Default: none.
 * @return array{swollen_volume_ml: float, standing_volume_ml: float, absolute_pressure_kpa: float}
 *     swollen_volume_ml: Volume in the vacuum. Unit: mL.
 *     standing_volume_ml: Volume before, bubbles included. Unit: mL.
 *     absolute_pressure_kpa: Pressure that is left in the chamber. Unit: kPa.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function swollen_volume(
    float $liquid_volume_ml,
    float $entrained_air,
    float $station_pressure_kpa,
    ?float $gauge_vacuum_kpa = null,
    ?float $absolute_pressure_kpa = null,
    ?float $dial_tolerance_kpa = null,
    ?float $vapor_pressure_kpa = null,
    ?float $damp_at_celsius = null,
): array {
    return Call::of('swollen_volume', [
        ['liquid_volume_ml', 'number', $liquid_volume_ml],
        ['entrained_air', 'number', $entrained_air],
        ['station_pressure_kpa', 'number', $station_pressure_kpa],
        ['gauge_vacuum_kpa', 'number', $gauge_vacuum_kpa],
        ['absolute_pressure_kpa', 'number', $absolute_pressure_kpa],
        ['dial_tolerance_kpa', 'number', $dial_tolerance_kpa],
        ['vapor_pressure_kpa', 'number', $vapor_pressure_kpa],
        ['damp_at_celsius', 'number', $damp_at_celsius],
    ], [
        ['swollen_volume_ml', 'number'],
        ['standing_volume_ml', 'number'],
        ['absolute_pressure_kpa', 'number'],
    ], input: true, result: true);
}

/**
 * Share of air in a pot, from how high it was seen to rise in a vacuum.
 *
 * With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and after:
 * φ/(1 − φ) = (f − 1)/(b₂ − f b₁).
 *
 * Example: `entrained_air(rise: 1.9, station_pressure_kpa: 100, absolute_pressure_kpa: 10)` gives
 *     `0.09999999999999999`.
 *
 * @param float $rise Level of a pot in the vacuum over its level before; give this or the entrained air.
 *     Unit: 1; 1 to 1000.
 * @param float $station_pressure_kpa Air pressure at the place itself, not reduced to sea level. Unit: kPa;
 *     22.6 to 178.
 * @param ?float $gauge_vacuum_kpa Reading of a vacuum gauge, which counts down from the air outside; give
 *     this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
 * @param ?float $absolute_pressure_kpa Pressure that is left in the chamber, counted from nothing at all;
 *     give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
 * @param ?float $dial_tolerance_kpa How far the vacuum gauge may be off to either side; the default, 0.9
 *     inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
 * @param ?float $vapor_pressure_kpa Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure
 *     in the chamber. Unit: kPa; 0 to 180. Default: 0.
 * @param ?float $damp_at_celsius Temperature of a damp pot, whose water boils under vacuum; omit it for a dry
 *     pot. Unit: °C; 0.01 to 200. Default: none.
 * @return float Share of air in the mix by volume, under the outside pressure. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function entrained_air(
    float $rise,
    float $station_pressure_kpa,
    ?float $gauge_vacuum_kpa = null,
    ?float $absolute_pressure_kpa = null,
    ?float $dial_tolerance_kpa = null,
    ?float $vapor_pressure_kpa = null,
    ?float $damp_at_celsius = null,
): float {
    return Call::of('entrained_air', [
        ['rise', 'number', $rise],
        ['station_pressure_kpa', 'number', $station_pressure_kpa],
        ['gauge_vacuum_kpa', 'number', $gauge_vacuum_kpa],
        ['absolute_pressure_kpa', 'number', $absolute_pressure_kpa],
        ['dial_tolerance_kpa', 'number', $dial_tolerance_kpa],
        ['vapor_pressure_kpa', 'number', $vapor_pressure_kpa],
        ['damp_at_celsius', 'number', $damp_at_celsius],
    ], [
        ['entrained_air', 'number'],
    ], input: true, result: false);
}

/**
 * Vessel for a pot in a vacuum, and how to fill one that is too small.
 *
 * The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer gives
 * the level to fill to, on a mark where it has any, and the number of fills.
 *
 * Example: `degas_vessel(liquid_volume_ml: 450, entrained_air: 0.1, station_pressure_kpa: 100,
 *     absolute_pressure_kpa: 10, vessel_brim_ml: 600, vessel_mark_ml: 50)` gives `['vessel_volume_ml' =>
 *     1055.5555555555554, 'fill_mark_ml' => 250, 'fills' => 2, 'fill_level_ml' => 250, 'fill_swollen_ml' =>
 *     475]`.
 *
 * @param float $liquid_volume_ml Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
 * @param float $entrained_air Share of air in the mix by volume, under the outside pressure. Unit: 1; 0 to
 *     below 1.
 * @param float $station_pressure_kpa Air pressure at the place itself, not reduced to sea level. Unit: kPa;
 *     22.6 to 178.
 * @param ?float $gauge_vacuum_kpa Reading of a vacuum gauge, which counts down from the air outside; give
 *     this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
 * @param ?float $absolute_pressure_kpa Pressure that is left in the chamber, counted from nothing at all;
 *     give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
 * @param ?float $dial_tolerance_kpa How far the vacuum gauge may be off to either side; the default, 0.9
 *     inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
 * @param ?float $vapor_pressure_kpa Vapor pressure of the liquid; 0 for a dry plasticizer. Below the pressure
 *     in the chamber. Unit: kPa; 0 to 180. Default: 0.
 * @param ?float $damp_at_celsius Temperature of a damp pot, whose water boils under vacuum; omit it for a dry
 *     pot. Unit: °C; 0.01 to 200. Default: none.
 * @param ?float $vessel_spare Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default: 0.1.
 * @param ?float $vessel_brim_ml Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. It may be
 *     omitted.
 * @param ?float $vessel_mark_ml Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default: any
 *     level.
 * @return array{vessel_volume_ml: float, fill_mark_ml: ?float, fills: ?int, fill_level_ml: ?float,
 *     fill_swollen_ml: ?float}
 *     vessel_volume_ml: Volume to the brim of a vessel that takes the pot at once. Unit: mL.
 *     fill_mark_ml: Level to fill the given vessel to at most, bubbles included. Unit: mL. Null where there
 *         is none.
 *     fills: Number of fills of the given vessel. Null where there is none.
 *     fill_level_ml: Level of each fill, shared out evenly, bubbles included. Unit: mL. Null where there is
 *         none.
 *     fill_swollen_ml: Volume of an even fill in the vacuum. Unit: mL. Null where there is none.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function degas_vessel(
    float $liquid_volume_ml,
    float $entrained_air,
    float $station_pressure_kpa,
    ?float $gauge_vacuum_kpa = null,
    ?float $absolute_pressure_kpa = null,
    ?float $dial_tolerance_kpa = null,
    ?float $vapor_pressure_kpa = null,
    ?float $damp_at_celsius = null,
    ?float $vessel_spare = null,
    ?float $vessel_brim_ml = null,
    ?float $vessel_mark_ml = null,
): array {
    return Call::of('degas_vessel', [
        ['liquid_volume_ml', 'number', $liquid_volume_ml],
        ['entrained_air', 'number', $entrained_air],
        ['station_pressure_kpa', 'number', $station_pressure_kpa],
        ['gauge_vacuum_kpa', 'number', $gauge_vacuum_kpa],
        ['absolute_pressure_kpa', 'number', $absolute_pressure_kpa],
        ['dial_tolerance_kpa', 'number', $dial_tolerance_kpa],
        ['vapor_pressure_kpa', 'number', $vapor_pressure_kpa],
        ['damp_at_celsius', 'number', $damp_at_celsius],
        ['vessel_spare', 'number', $vessel_spare],
        ['vessel_brim_ml', 'number', $vessel_brim_ml],
        ['vessel_mark_ml', 'number', $vessel_mark_ml],
    ], [
        ['vessel_volume_ml', 'number'],
        ['fill_mark_ml', 'number'],
        ['fills', 'count'],
        ['fill_level_ml', 'number'],
        ['fill_swollen_ml', 'number'],
    ], input: true, result: true);
}

/**
 * Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the
 * film.
 *
 * A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.
 *
 * Example: `flake_count(cut: '1 mm square', thickness_um: 50, film_density_g_per_ml: 1.4, flake_dose_g: 0.7)`
 *     gives `['particles' => 10000, 'area_cm2' => 99.99999999999999]`.
 *
 * @param string $cut Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.
 *     0.05 to 6.35 mm.
 * @param float $thickness_um Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
 * @param float $film_density_g_per_ml Density of the film that the flake is cut from. Unit: g/mL; 0.001 to
 *     25.
 * @param float $flake_dose_g Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
 * @return array{particles: float, area_cm2: float}
 *     particles: Number of particles, not rounded. Unit: 1.
 *     area_cm2: Area of film, one face of every particle. Unit: cm2.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function flake_count(
    string $cut,
    float $thickness_um,
    float $film_density_g_per_ml,
    float $flake_dose_g,
): array {
    return Call::of('flake_count', [
        ['cut', 'text', $cut],
        ['thickness_um', 'number', $thickness_um],
        ['film_density_g_per_ml', 'number', $film_density_g_per_ml],
        ['flake_dose_g', 'number', $flake_dose_g],
    ], [
        ['particles', 'number'],
        ['area_cm2', 'number'],
    ], input: false, result: true);
}

/**
 * Dose of another flake in place of one, with as much area or as many particles.
 *
 * The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives both.
 *
 * Example: `flake_swap(cut: '1 mm square', thickness_um: 50, film_density_g_per_ml: 1.4, flake_dose_g: 0.7,
 *     other_cut: '0.5 mm square', other_thickness_um: 50, other_film_density_g_per_ml: 1.4,
 *     other_as_scooped_g_per_ml: 0.35)` gives `['mass_g' => 0.7, 'scoop_ml' => 2, 'count_ratio' => 4,
 *     'area_ratio' => 1]`.
 *
 * @param string $cut Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.
 *     0.05 to 6.35 mm.
 * @param float $thickness_um Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
 * @param float $film_density_g_per_ml Density of the film that the flake is cut from. Unit: g/mL; 0.001 to
 *     25.
 * @param float $flake_dose_g Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
 * @param string $other_cut Size and shape of the other flake. 0.05 to 6.35 mm.
 * @param float $other_thickness_um Thickness of the film of the other flake; below the size of its cut. Unit:
 *     µm; 1e-3 to 6350.
 * @param float $other_film_density_g_per_ml Density of the film of the other flake. Unit: g/mL; 0.001 to 25.
 * @param ?float $other_as_scooped_g_per_ml Bulk density of the other flake, level in the spoon. Unit: g/mL;
 *     0.001 to 25. Default: none.
 * @param ?string $alike What the two doses of flake have in common: the number of particles or the area of
 *     film. Default: area. One of `count`, `area`.
 * @return array{mass_g: float, scoop_ml: ?float, count_ratio: float, area_ratio: float}
 *     mass_g: Mass of the other flake. Unit: g.
 *     scoop_ml: Volume to scoop of it, where its bulk density is given. Unit: mL. Null where there is none.
 *     count_ratio: Particles of the other dose over those of the first. Unit: 1.
 *     area_ratio: Area of the other dose over that of the first. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function flake_swap(
    string $cut,
    float $thickness_um,
    float $film_density_g_per_ml,
    float $flake_dose_g,
    string $other_cut,
    float $other_thickness_um,
    float $other_film_density_g_per_ml,
    ?float $other_as_scooped_g_per_ml = null,
    ?string $alike = null,
): array {
    return Call::of('flake_swap', [
        ['cut', 'text', $cut],
        ['thickness_um', 'number', $thickness_um],
        ['film_density_g_per_ml', 'number', $film_density_g_per_ml],
        ['flake_dose_g', 'number', $flake_dose_g],
        ['other_cut', 'text', $other_cut],
        ['other_thickness_um', 'number', $other_thickness_um],
        ['other_film_density_g_per_ml', 'number', $other_film_density_g_per_ml],
        ['other_as_scooped_g_per_ml', 'number', $other_as_scooped_g_per_ml],
        ['alike', 'word', $alike, ALIKE_WORDS],
    ], [
        ['mass_g', 'number'],
        ['scoop_ml', 'number'],
        ['count_ratio', 'number'],
        ['area_ratio', 'number'],
    ], input: true, result: true);
}

/**
 * Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).
 *
 * ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.
 *
 * Example: `color_difference(lightness: 50, a: 2.6772, b: -79.7751, other_lightness: 50, other_a: 0, other_b:
 *     -82.7485)` gives `2.042459680156571`.
 *
 * @param float $lightness L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100.
 * @param float $a a* of the color: green below 0, red above. Unit: 1; -200 to 200.
 * @param float $b b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200.
 * @param float $other_lightness L* of the other color. Unit: 1; 0 to 100.
 * @param float $other_a a* of the other color. Unit: 1; -200 to 200.
 * @param float $other_b b* of the other color. Unit: 1; -200 to 200.
 * @return float ΔE₀₀. Unit: 1.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function color_difference(
    float $lightness,
    float $a,
    float $b,
    float $other_lightness,
    float $other_a,
    float $other_b,
): float {
    return Call::of('color_difference', [
        ['lightness', 'number', $lightness],
        ['a', 'number', $a],
        ['b', 'number', $b],
        ['other_lightness', 'number', $other_lightness],
        ['other_a', 'number', $other_a],
        ['other_b', 'number', $other_b],
    ], [
        ['difference', 'number'],
    ], input: false, result: false);
}

/**
 * Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.
 *
 * Between two readings the temperature is taken as straight. The activation energy is the supplier's;
 * published ones of PVC are 117.5 to 170 kJ/mol.
 *
 * Example: `equivalent_time(readings: [[0, 175], [600, 175]], activation_energy_kj_per_mol: 120,
 *     reference_temperature_celsius: 175)` gives `600`.
 *
 * @param list<array{float, float}> $readings Temperatures in the order of time, taken as straight between. 2
 *     to 100000 of them. Each: Time of a reading, after that of the one before. Unit: s; 0 to 1e15. Then:
 *     Temperature of a reading. Unit: °C; -73 to 427.
 * @param float $activation_energy_kj_per_mol Activation energy of the decay in the heat; state its source in
 *     a book. Unit: kJ/mol; 10 to 500.
 * @param float $reference_temperature_celsius Temperature at which the time is counted. Unit: °C; -73 to 427.
 * @return float Equivalent time. Unit: s.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function equivalent_time(
    array $readings,
    float $activation_energy_kj_per_mol,
    float $reference_temperature_celsius,
): float {
    return Call::of('equivalent_time', [
        ['readings', 'rows', $readings, 'readings_count', 2, 'pour_readings_row'],
        ['activation_energy_kj_per_mol', 'number', $activation_energy_kj_per_mol],
        ['reference_temperature_celsius', 'number', $reference_temperature_celsius],
    ], [
        ['equivalent_time_s', 'number'],
    ], input: false, result: false);
}

/**
 * Heat budget that is left of a pot, in equivalent time at the reference temperature.
 *
 * More stabilizer than the budget is stated for buys the extra time that its maker states; without that
 * figure it is refused.
 *
 * Example: `budget_left(heat_budget_s: 1800, equivalent_time_s: 600)` gives `['budget_s' => 1800, 'left_s' =>
 *     1200, 'overspent_s' => 0]`.
 *
 * @param float $heat_budget_s Time at the reference temperature that the plastisol withstands. Unit: s; 1e-6
 *     to 1e15.
 * @param float $equivalent_time_s Equivalent time that the pot has spent so far, at the temperature of its
 *     budget. Unit: s; 0 to 1e15.
 * @param ?float $budget_with Stabilizer that the heat budget is stated for, by mass of base. Unit: 1; 0 to 1.
 *     Default: 0.
 * @param ?float $stabilizer_dose Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as
 *     `budget_with`.
 * @param ?float $extra_time_s Equivalent time that more of the stabilizer buys, per mass of it per mass of
 *     base: 30000 s is 5 min for every 1 %. Unit: s; 1e-6 to 1e15. Default: none.
 * @param ?float $extra_most Highest dose of stabilizer for which the extra time is known, by mass of base.
 *     Unit: 1; 0 to 1. Default: none.
 * @return array{budget_s: float, left_s: float, overspent_s: float}
 *     budget_s: Budget at this dose of stabilizer. Unit: s.
 *     left_s: Time that is left; 0 where more was spent. Unit: s.
 *     overspent_s: Time that was spent beyond the budget; 0 where it was not. Unit: s.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function budget_left(
    float $heat_budget_s,
    float $equivalent_time_s,
    ?float $budget_with = null,
    ?float $stabilizer_dose = null,
    ?float $extra_time_s = null,
    ?float $extra_most = null,
): array {
    return Call::of('budget_left', [
        ['heat_budget_s', 'number', $heat_budget_s],
        ['equivalent_time_s', 'number', $equivalent_time_s],
        ['budget_with', 'number', $budget_with],
        ['stabilizer_dose', 'number', $stabilizer_dose],
        ['extra_time_s', 'number', $extra_time_s],
        ['extra_most', 'number', $extra_most],
    ], [
        ['budget_s', 'number'],
        ['left_s', 'number'],
        ['overspent_s', 'number'],
    ], input: false, result: true);
}

/**
 * Heating time of a pot in the oven, without a break, by the shop's own timings.
 *
 * t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module
 * `process::heat`). An amount of more than 1.6 times the timed ones is refused. Without timings the rated
 * power gives a first guess.
 *
 * Example: `heat_time(pot_mass_g: 300, specific_heat_j_per_g_k: 2, heated_from_celsius: 20,
 *     heated_to_celsius: 170, timings: [[200, 20, 120, 80], [400, 20, 120, 160]])` gives `['heat_time_s' => 180,
 *     'heat_time_uncertainty_s' => 13.46996659238619, 'power_w' => 500, 'beyond' => null]`.
 *
 * @param float $pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
 * @param float $specific_heat_j_per_g_k Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10.
 * @param float $heated_from_celsius The temperature before heating. Unit: °C; -73 to 427.
 * @param float $heated_to_celsius The temperature after heating, above that before. Unit: °C; -73 to 427.
 * @param list<array{float, float, float, float}>|null $timings Heatings that the shop has timed, all at one
 *     setting: of each the mass of the mix, the temperatures before and after and the time; needed without the
 *     rated power. 1 to 1000 of them. Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to
 *     1e15. Then: Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed
 *     heating, stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating.
 *     Unit: s; 1e-3 to 1e9.
 * @param ?float $oven_power_w Rated power of the oven, its output at full power: a first guess, not used once
 *     there are timings; needed without them. Unit: W; 50 to 10000. Default: none.
 * @param ?float $setting Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that
 *     of the timings.
 * @param ?float $specific_heat_rise_per_kelvin Rise of the specific heat per kelvin, as a share of that at 25
 *     °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
 * @param ?float $timed_specific_heat_j_per_g_k Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10.
 *     Default: as `specific_heat_j_per_g_k`.
 * @param ?float $vessel_mass_g Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings.
 * @param ?float $vessel_specific_heat_j_per_g_k Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10.
 *     Default: none.
 * @return array{heat_time_s: float, heat_time_uncertainty_s: float, power_w: float, beyond: ?float}
 *     heat_time_s: Heating time. Unit: s.
 *     heat_time_uncertainty_s: Its standard uncertainty for one more heating. Unit: s.
 *     power_w: Power that reaches mix and vessel. Unit: W.
 *     beyond: How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1.
 *         Null where there is none.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function heat_time(
    float $pot_mass_g,
    float $specific_heat_j_per_g_k,
    float $heated_from_celsius,
    float $heated_to_celsius,
    ?array $timings = null,
    ?float $oven_power_w = null,
    ?float $setting = null,
    ?float $specific_heat_rise_per_kelvin = null,
    ?float $timed_specific_heat_j_per_g_k = null,
    ?float $vessel_mass_g = null,
    ?float $vessel_specific_heat_j_per_g_k = null,
): array {
    return Call::of('heat_time', [
        ['pot_mass_g', 'number', $pot_mass_g],
        ['specific_heat_j_per_g_k', 'number', $specific_heat_j_per_g_k],
        ['heated_from_celsius', 'number', $heated_from_celsius],
        ['heated_to_celsius', 'number', $heated_to_celsius],
        ['timings', 'rows', $timings, 'timings_count', 4, 'pour_timings_row'],
        ['oven_power_w', 'number', $oven_power_w],
        ['setting', 'number', $setting],
        ['specific_heat_rise_per_kelvin', 'number', $specific_heat_rise_per_kelvin],
        ['timed_specific_heat_j_per_g_k', 'number', $timed_specific_heat_j_per_g_k],
        ['vessel_mass_g', 'number', $vessel_mass_g],
        ['vessel_specific_heat_j_per_g_k', 'number', $vessel_specific_heat_j_per_g_k],
    ], [
        ['heat_time_s', 'number'],
        ['heat_time_uncertainty_s', 'number'],
        ['power_w', 'number'],
        ['beyond', 'number'],
    ], input: true, result: true);
}

/**
 * The next burst of the oven for a reading of the thermometer.
 *
 * No burst can carry the pot over its window, by all the power that the timings make plausible and the error
 * of the thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system
 * of measures gives the scale of the thermometer, on whole degrees of which the limits are.
 *
 * Example: `next_burst(pot_mass_g: 300, specific_heat_j_per_g_k: 2, reading_celsius: 20,
 *     window_bottom_celsius: 160, window_top_celsius: 180, timings: [[200, 20, 120, 80], [400, 20, 120, 160]],
 *     measures: 'metric')` gives `['burst_s' => 90, 'expected_celsius' => 95, 'shoot_from_celsius' => 162,
 *     'shoot_to_celsius' => 178, 'bursts' => 4, 'oven_time_s' => 175]`.
 *
 * @param float $pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
 * @param float $specific_heat_j_per_g_k Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to 10.
 * @param float $reading_celsius Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427.
 * @param float $window_bottom_celsius Lowest temperature at which the mix is shot, its material's own. Unit:
 *     °C; -73 to 427.
 * @param float $window_top_celsius Highest temperature at which the mix is shot, its material's own; above
 *     the lowest. Unit: °C; -73 to 427.
 * @param list<array{float, float, float, float}>|null $timings Heatings that the shop has timed, all at one
 *     setting: of each the mass of the mix, the temperatures before and after and the time; needed without the
 *     rated power. 1 to 1000 of them. Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to
 *     1e15. Then: Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed
 *     heating, stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating.
 *     Unit: s; 1e-3 to 1e9.
 * @param ?float $oven_power_w Rated power of the oven, its output at full power: a first guess, not used once
 *     there are timings; needed without them. Unit: W; 50 to 10000. Default: none.
 * @param ?float $setting Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default: that
 *     of the timings.
 * @param ?float $specific_heat_rise_per_kelvin Rise of the specific heat per kelvin, as a share of that at 25
 *     °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
 * @param ?float $timed_specific_heat_j_per_g_k Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10.
 *     Default: as `specific_heat_j_per_g_k`.
 * @param ?float $vessel_mass_g Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the timings.
 * @param ?float $vessel_specific_heat_j_per_g_k Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10.
 *     Default: none.
 * @param ?float $aim_celsius The temperature to heat to. Unit: °C; in the shot window. Default: the middle of
 *     the window.
 * @param ?float $thermometer_kelvin How far the thermometer may be off. Unit: K; 0 to 100. Default: 2.
 * @param ?float $burst_step_s Shortest burst that can be set, of which the others are multiples. Unit: s;
 *     1e-3 to 3600. Default: 5.
 * @param ?float $longest_burst_s Longest burst without a stir, at least the shortest. Unit: s; 1e-3 to 3600.
 *     Default: 120.
 * @param ?float $oven_turn_s How long a turn of full power and none takes at a setting below full power.
 *     Unit: s; 0 to 3600. Default: 30.
 * @param ?string $measures The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
 *     us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
 * @return array{burst_s: ?float, expected_celsius: ?float, shoot_from_celsius: float, shoot_to_celsius:
 *     float, bursts: int, oven_time_s: float}
 *     burst_s: The next burst; none where the pot is hot enough. Unit: s. Null where there is none.
 *     expected_celsius: The expected reading after it. Unit: °C. Null where there is none.
 *     shoot_from_celsius: Shoot from this reading on. Unit: °C.
 *     shoot_to_celsius: Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.
 *     bursts: Number of bursts that are expected from this reading on.
 *     oven_time_s: Time that the oven is expected to run in them. Unit: s.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function next_burst(
    float $pot_mass_g,
    float $specific_heat_j_per_g_k,
    float $reading_celsius,
    float $window_bottom_celsius,
    float $window_top_celsius,
    ?array $timings = null,
    ?float $oven_power_w = null,
    ?float $setting = null,
    ?float $specific_heat_rise_per_kelvin = null,
    ?float $timed_specific_heat_j_per_g_k = null,
    ?float $vessel_mass_g = null,
    ?float $vessel_specific_heat_j_per_g_k = null,
    ?float $aim_celsius = null,
    ?float $thermometer_kelvin = null,
    ?float $burst_step_s = null,
    ?float $longest_burst_s = null,
    ?float $oven_turn_s = null,
    ?string $measures = null,
): array {
    return Call::of('next_burst', [
        ['pot_mass_g', 'number', $pot_mass_g],
        ['specific_heat_j_per_g_k', 'number', $specific_heat_j_per_g_k],
        ['reading_celsius', 'number', $reading_celsius],
        ['window_bottom_celsius', 'number', $window_bottom_celsius],
        ['window_top_celsius', 'number', $window_top_celsius],
        ['timings', 'rows', $timings, 'timings_count', 4, 'pour_timings_row'],
        ['oven_power_w', 'number', $oven_power_w],
        ['setting', 'number', $setting],
        ['specific_heat_rise_per_kelvin', 'number', $specific_heat_rise_per_kelvin],
        ['timed_specific_heat_j_per_g_k', 'number', $timed_specific_heat_j_per_g_k],
        ['vessel_mass_g', 'number', $vessel_mass_g],
        ['vessel_specific_heat_j_per_g_k', 'number', $vessel_specific_heat_j_per_g_k],
        ['aim_celsius', 'number', $aim_celsius],
        ['thermometer_kelvin', 'number', $thermometer_kelvin],
        ['burst_step_s', 'number', $burst_step_s],
        ['longest_burst_s', 'number', $longest_burst_s],
        ['oven_turn_s', 'number', $oven_turn_s],
        ['measures', 'word', $measures, MEASURES_WORDS],
    ], [
        ['burst_s', 'number'],
        ['expected_celsius', 'number'],
        ['shoot_from_celsius', 'number'],
        ['shoot_to_celsius', 'number'],
        ['bursts', 'count'],
        ['oven_time_s', 'number'],
    ], input: true, result: true);
}

/**
 * How long a pot stays hot, by a pot that was watched to cool.
 *
 * Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix than
 * was watched cools faster (module `process::heat`).
 *
 * Example: `stays_hot(pot_mass_g: 500, hot_from_celsius: 170, hot_to_celsius: 130, watched_mass_g: 500,
 *     watched_from_celsius: 170, watched_to_celsius: 150, watched_time_s: 300, room_celsius: 22, stood_s: 600)`
 *     gives `['time_constant_s' => 2066.371724164207, 'hot_for_s' => 651.0745655967437, 'half_full_s' =>
 *     511.5585872545843, 'after_celsius' => 132.7027027027027]`.
 *
 * @param float $pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
 * @param float $hot_from_celsius Temperature after the last burst. Unit: °C; -73 to 427.
 * @param float $hot_to_celsius Temperature down to which the pot can be shot, above that of the room. Unit:
 *     °C; -73 to 427.
 * @param float $watched_mass_g Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15.
 * @param float $watched_from_celsius First reading of a pot that was watched to cool, from its second minute
 *     on, stirred. Unit: °C; -73 to 427.
 * @param float $watched_to_celsius Second reading of a pot that was watched to cool, stirred; below the first
 *     and above that of the room. Unit: °C; -73 to 427.
 * @param float $watched_time_s Time between the two readings of a pot that was watched to cool. Unit: s; 1e-3
 *     to 1e9.
 * @param ?float $room_celsius Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
 * @param ?float $stood_s How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is, is not
 *     calculated.
 * @return array{time_constant_s: float, hot_for_s: float, half_full_s: float, after_celsius: ?float}
 *     time_constant_s: Time in which the distance to the temperature of the room falls to 37 %. Unit: s.
 *     hot_for_s: Time down to the lower temperature, with all of the mix in the pot. Unit: s.
 *     half_full_s: The same with half of it. Unit: s.
 *     after_celsius: Temperature after the time that the pot has stood. Unit: °C. Null where there is none.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function stays_hot(
    float $pot_mass_g,
    float $hot_from_celsius,
    float $hot_to_celsius,
    float $watched_mass_g,
    float $watched_from_celsius,
    float $watched_to_celsius,
    float $watched_time_s,
    ?float $room_celsius = null,
    ?float $stood_s = null,
): array {
    return Call::of('stays_hot', [
        ['pot_mass_g', 'number', $pot_mass_g],
        ['hot_from_celsius', 'number', $hot_from_celsius],
        ['hot_to_celsius', 'number', $hot_to_celsius],
        ['watched_mass_g', 'number', $watched_mass_g],
        ['watched_from_celsius', 'number', $watched_from_celsius],
        ['watched_to_celsius', 'number', $watched_to_celsius],
        ['watched_time_s', 'number', $watched_time_s],
        ['room_celsius', 'number', $room_celsius],
        ['stood_s', 'number', $stood_s],
    ], [
        ['time_constant_s', 'number'],
        ['hot_for_s', 'number'],
        ['half_full_s', 'number'],
        ['after_celsius', 'number'],
    ], input: true, result: true);
}

/**
 * The heats that the shots of a pot take, and how long they all take.
 *
 * A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is
 * heated again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot
 * can be made every max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module
 * `process::clock`).
 *
 * Example: `pot_heats(pot_mass_g: 1200, clock_runs: [[22, 48, 50, 0, 1]], hot_for_s: 480, oven_time_s: 240)`
 *     gives `['reheats' => 2, 'first_shots' => 9, 'shooting_time_s' => 1100, 'total_time_s' => 1820]`.
 *
 * @param float $pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
 * @param list<array{float, float, float, float, float}> $clock_runs The pot's shots in their order, like ones
 *     together: of each run the number of shots, the mass that one takes, the working time for one, the time that
 *     it sets and the number of molds in turn. At most 100 000 shots. 1 to 1000 of them. Each: Number of like
 *     shots in a row; at most 100 000 from one pot. Unit: 1; 1 to 100000. Then: Mass of one shot, sprue included.
 *     Unit: g; 1e-12 to 1e15. Then: Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to
 *     1e15. Default: how often a shot can be made is not calculated. Then: Time that a shot sets in its mold.
 *     Unit: s; 0 to 1e6. Default: 0. Then: Number of such molds that are shot in turn. Unit: 1; 1 to 1000000.
 *     Default: 1.
 * @param ?float $hot_for_s How long the pot stays hot at one heat, from the last burst to the last shot.
 *     Unit: s; 1e-3 to 1e15. Default: from how it cools.
 * @param ?float $clock_from_celsius Temperature after the last burst; needed with `cools`. Unit: °C; -73 to
 *     427. Default: none.
 * @param ?float $clock_to_celsius Temperature down to which the pot can be shot, above that of the room;
 *     needed with `cools`. Unit: °C; -73 to 427. Default: none.
 * @param ?float $watched_mass_g Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15. It
 *     may be omitted.
 * @param ?float $watched_from_celsius First reading of a pot that was watched to cool, from its second minute
 *     on, stirred. Unit: °C; -73 to 427. It may be omitted.
 * @param ?float $watched_to_celsius Second reading of a pot that was watched to cool, stirred; below the
 *     first and above that of the room. Unit: °C; -73 to 427. It may be omitted.
 * @param ?float $watched_time_s Time between the two readings of a pot that was watched to cool. Unit: s;
 *     1e-3 to 1e9. It may be omitted.
 * @param ?float $room_celsius Temperature of the room, below all others. Unit: °C; -73 to 427. Default: 20.
 * @param ?float $oven_time_s How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is not
 *     counted.
 * @return array{reheats: int, first_shots: int, shooting_time_s: float, total_time_s: ?float}
 *     reheats: Number of reheats: the heats but for the first.
 *     first_shots: Number of shots in the first heat.
 *     shooting_time_s: Time of all shots, without the oven. Unit: s.
 *     total_time_s: Time of all shots and of the oven for each heat, where that is given. Unit: s. Null where
 *         there is none.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function pot_heats(
    float $pot_mass_g,
    array $clock_runs,
    ?float $hot_for_s = null,
    ?float $clock_from_celsius = null,
    ?float $clock_to_celsius = null,
    ?float $watched_mass_g = null,
    ?float $watched_from_celsius = null,
    ?float $watched_to_celsius = null,
    ?float $watched_time_s = null,
    ?float $room_celsius = null,
    ?float $oven_time_s = null,
): array {
    return Call::of('pot_heats', [
        ['pot_mass_g', 'number', $pot_mass_g],
        ['clock_runs', 'rows', $clock_runs, 'clock_runs_count', 5, 'pour_clock_runs_row'],
        ['hot_for_s', 'number', $hot_for_s],
        ['clock_from_celsius', 'number', $clock_from_celsius],
        ['clock_to_celsius', 'number', $clock_to_celsius],
        ['watched_mass_g', 'number', $watched_mass_g],
        ['watched_from_celsius', 'number', $watched_from_celsius],
        ['watched_to_celsius', 'number', $watched_to_celsius],
        ['watched_time_s', 'number', $watched_time_s],
        ['room_celsius', 'number', $room_celsius],
        ['oven_time_s', 'number', $oven_time_s],
    ], [
        ['reheats', 'count'],
        ['first_shots', 'count'],
        ['shooting_time_s', 'number'],
        ['total_time_s', 'number'],
    ], input: true, result: true);
}

/**
 * How long a shot sets in a metal mold, and how often one can be made.
 *
 * The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold: t
 * = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as
 * the shot leaves it, where its mass is given.
 *
 * Example: `setting_time(section_shape: 'rod', section_thickness_mm: 9, shot_at_celsius: 165, hands_s: 50,
 *     molds: 2)` gives `['setting_time_s' => 104.20464250602106, 'setting_time_min_s' => 83.36371400481686,
 *     'setting_time_max_s' => 128.25186769971822, 'warms_kelvin' => null, 'in_a_row' => null, 'shot_every_s' =>
 *     77.10232125301053]`.
 *
 * @param string $section_shape Shape of the thickest part of a piece. One of `rod`, `plate`, `ball`.
 * @param float $section_thickness_mm Thickness of the thickest part of a piece; of a rod or a ball its
 *     diameter. Unit: mm; 0.2 to 200.
 * @param float $shot_at_celsius Temperature at which it is shot, above that at which it is taken out. Unit:
 *     °C; -73 to 427.
 * @param ?float $mold_at_celsius Temperature of the mold before the shot, below that at which a piece is
 *     taken out. Unit: °C; -73 to 427. Default: 30.
 * @param ?float $take_out_celsius Temperature at which a piece can be taken out. Unit: °C; -73 to 427.
 *     Default: 50.
 * @param ?string $piece_point The point of a piece whose temperature counts. Default: center. One of
 *     `center`, `mean`.
 * @param ?float $diffusivity_m2_per_s Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5. Default:
 *     8.0e-8 m2/s, from 6.5e-8 to 1.0e-7.
 * @param ?float $shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be omitted.
 * @param ?float $shot_specific_heat_j_per_g_k Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10.
 *     Default: 1.9.
 * @param ?float $mold_mass_g Mass of the mold. Without it the mold is taken to keep its temperature; with it
 *     the mass of the shot is needed. Unit: g; 1e-12 to 1e15. Default: none.
 * @param ?float $mold_specific_heat_j_per_g_k Specific heat of the mold; the default is that of aluminum.
 *     Unit: J/(g.K); 0.1 to 10. Default: 0.897.
 * @param ?float $hands_s Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15.
 *     Default: how often a shot can be made is not calculated.
 * @param ?int $molds Number of such molds that are shot in turn. 1 to 1000000. Default: 1.
 * @return array{setting_time_s: float, setting_time_min_s: float, setting_time_max_s: float, warms_kelvin:
 *     ?float, in_a_row: ?int, shot_every_s: ?float}
 *     setting_time_s: Setting time. Unit: s.
 *     setting_time_min_s: The same with the highest diffusivity of soft PVC. Unit: s.
 *     setting_time_max_s: The same with the lowest. Unit: s.
 *     warms_kelvin: How much one shot warms the mold, where its mass is given. Unit: K. Null where there is
 *         none.
 *     in_a_row: Number of shots in a row before the mold is too warm, nothing lost between them; none where
 *         its mass is not given, or it goes on. Null where there is none.
 *     shot_every_s: Time from one shot to the next, where the working time is given. Unit: s. Null where
 *         there is none.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function setting_time(
    string $section_shape,
    float $section_thickness_mm,
    float $shot_at_celsius,
    ?float $mold_at_celsius = null,
    ?float $take_out_celsius = null,
    ?string $piece_point = null,
    ?float $diffusivity_m2_per_s = null,
    ?float $shot_mass_g = null,
    ?float $shot_specific_heat_j_per_g_k = null,
    ?float $mold_mass_g = null,
    ?float $mold_specific_heat_j_per_g_k = null,
    ?float $hands_s = null,
    ?int $molds = null,
): array {
    return Call::of('setting_time', [
        ['section_shape', 'word', $section_shape, SECTION_SHAPE_WORDS],
        ['section_thickness_mm', 'number', $section_thickness_mm],
        ['shot_at_celsius', 'number', $shot_at_celsius],
        ['mold_at_celsius', 'number', $mold_at_celsius],
        ['take_out_celsius', 'number', $take_out_celsius],
        ['piece_point', 'word', $piece_point, PIECE_POINT_WORDS],
        ['diffusivity_m2_per_s', 'number', $diffusivity_m2_per_s],
        ['shot_mass_g', 'number', $shot_mass_g],
        ['shot_specific_heat_j_per_g_k', 'number', $shot_specific_heat_j_per_g_k],
        ['mold_mass_g', 'number', $mold_mass_g],
        ['mold_specific_heat_j_per_g_k', 'number', $mold_specific_heat_j_per_g_k],
        ['hands_s', 'number', $hands_s],
        ['molds', 'count', $molds],
    ], [
        ['setting_time_s', 'number'],
        ['setting_time_min_s', 'number'],
        ['setting_time_max_s', 'number'],
        ['warms_kelvin', 'number'],
        ['in_a_row', 'count'],
        ['shot_every_s', 'number'],
    ], input: true, result: true);
}

/**
 * How often to stir a melt with salt in it, and how fast the salt settles.
 *
 * Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that
 * passes a sieve (module `process::settling`). Stir before the top share of the depth is without grains: t =
 * share · depth/v.
 *
 * Example: `stir_every(grain_mm: 0.3, grain_density_g_per_ml: 2.165, melt_density_g_per_ml: 0.93,
 *     melt_depth_mm: 80, melt_viscosity_min_mpa_s: 500, melt_viscosity_max_mpa_s: 1000)` gives `['stir_every_s'
 *     => 46.358618363896404, 'stir_every_max_s' => 92.69906432655615, 'settling_min_cm_per_s' =>
 *     0.008630076320746836, 'settling_max_cm_per_s' => 0.017256769684556247]`.
 *
 * @param float $grain_mm Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm; 0.001
 *     to 50.
 * @param float $grain_density_g_per_ml True density of the grains, above that of the melt. Unit: g/mL; 0.001
 *     to 25.
 * @param float $melt_density_g_per_ml Density of the melt, hot. Unit: g/mL; 0.001 to 25.
 * @param float $melt_depth_mm Depth of the melt in its cup. Unit: mm; 0.1 to 10000.
 * @param ?float $melt_viscosity_min_mpa_s Lowest viscosity that the melt may have at shot temperature. Where
 *     none is known, the defaults of both span what such melts may have. Unit: mPa.s; 0.1 to 1e7. Default: 50.
 * @param ?float $melt_viscosity_max_mpa_s Highest viscosity that the melt may have at shot temperature, at
 *     least the lowest. Unit: mPa.s; 0.1 to 1e7. Default: 5000.
 * @param ?float $solids_share Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to 0.4.
 *     Default: 0.
 * @param ?float $unstirred Share of the depth that may be without grains before it is stirred. Unit: 1; 0.001
 *     to 1. Default: 0.1.
 * @return array{stir_every_s: float, stir_every_max_s: float, settling_min_cm_per_s: float,
 *     settling_max_cm_per_s: float}
 *     stir_every_s: How often to stir, to be safe: in the thinnest melt. Unit: s.
 *     stir_every_max_s: How often is enough in the thickest melt. Unit: s.
 *     settling_min_cm_per_s: Speed of the grains in the thickest melt. Unit: cm/s.
 *     settling_max_cm_per_s: Speed of the grains in the thinnest melt. Unit: cm/s.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function stir_every(
    float $grain_mm,
    float $grain_density_g_per_ml,
    float $melt_density_g_per_ml,
    float $melt_depth_mm,
    ?float $melt_viscosity_min_mpa_s = null,
    ?float $melt_viscosity_max_mpa_s = null,
    ?float $solids_share = null,
    ?float $unstirred = null,
): array {
    return Call::of('stir_every', [
        ['grain_mm', 'number', $grain_mm],
        ['grain_density_g_per_ml', 'number', $grain_density_g_per_ml],
        ['melt_density_g_per_ml', 'number', $melt_density_g_per_ml],
        ['melt_depth_mm', 'number', $melt_depth_mm],
        ['melt_viscosity_min_mpa_s', 'number', $melt_viscosity_min_mpa_s],
        ['melt_viscosity_max_mpa_s', 'number', $melt_viscosity_max_mpa_s],
        ['solids_share', 'number', $solids_share],
        ['unstirred', 'number', $unstirred],
    ], [
        ['stir_every_s', 'number'],
        ['stir_every_max_s', 'number'],
        ['settling_min_cm_per_s', 'number'],
        ['settling_max_cm_per_s', 'number'],
    ], input: true, result: true);
}

/**
 * Viscosity of a melt, from a ball that was timed as it sank.
 *
 * The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).
 *
 * Example: `viscosity_of_ball(ball_diameter_mm: 1, ball_density_g_per_ml: 7.8, melt_density_g_per_ml: 0.93,
 *     ball_depth_mm: 50, ball_time_s: 20)` gives `1494.5095512811074`.
 *
 * @param float $ball_diameter_mm Diameter of the ball, much smaller than that of the vessel. Unit: mm; 0.001
 *     to 50.
 * @param float $ball_density_g_per_ml Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to 25.
 * @param float $melt_density_g_per_ml Density of the melt, hot. Unit: g/mL; 0.001 to 25.
 * @param float $ball_depth_mm How deep the ball sank, let go below the surface. Unit: mm; 1 to 10000.
 * @param float $ball_time_s Time that the ball took. Unit: s; 0.01 to 1e6.
 * @return float Viscosity of the melt. Unit: mPa.s.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function viscosity_of_ball(
    float $ball_diameter_mm,
    float $ball_density_g_per_ml,
    float $melt_density_g_per_ml,
    float $ball_depth_mm,
    float $ball_time_s,
): float {
    return Call::of('viscosity_of_ball', [
        ['ball_diameter_mm', 'number', $ball_diameter_mm],
        ['ball_density_g_per_ml', 'number', $ball_density_g_per_ml],
        ['melt_density_g_per_ml', 'number', $melt_density_g_per_ml],
        ['ball_depth_mm', 'number', $ball_depth_mm],
        ['ball_time_s', 'number', $ball_time_s],
    ], [
        ['melt_viscosity_mpa_s', 'number'],
    ], input: false, result: false);
}

/**
 * Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold − ρ_hot)]).
 *
 * Example: `cavity_of_weights(weights_g: [10, 10], balance_readability_g: 0.01, cold_density_g_per_ml: 1,
 *     feed: 0.5)` gives `['cavity_volume_ml' => 10, 'cavity_volume_uncertainty_ml' => 0.0028867513459481294,
 *     'mean_g' => 10, 'deviation_g' => 0]`.
 *
 * @param list<float> $weights_g Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one
 *     weighed piece. Unit: g; 1e-12 to 1e15.
 * @param float $balance_readability_g Smallest difference that the balance shows; without it there is no
 *     balance. Unit: g; 1e-12 to 1e15.
 * @param float $cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
 *     0.001 to 25.
 * @param ?float $hot_density_g_per_ml Melt density at shot temperature, without voids; at most the cold one.
 *     Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $feed Share of its contraction that a piece draws from the sprue while it cools. Where it is
 *     not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full). Unit:
 *     1; 0 to 1. Default: 0.5.
 * @param ?float $feed_uncertainty Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 %
 *     to 70 %). Unit: 1; 0 to 1. Default: 0.
 * @return array{cavity_volume_ml: float, cavity_volume_uncertainty_ml: float, mean_g: float, deviation_g:
 *     float}
 *     cavity_volume_ml: Volume of the cavity. Unit: mL.
 *     cavity_volume_uncertainty_ml: Its standard uncertainty. Where the feed is not known, that of an even
 *         spread from 0 to 1 counts. Unit: mL.
 *     mean_g: Mean of the weights. Unit: g.
 *     deviation_g: Standard deviation of one. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function cavity_of_weights(
    array $weights_g,
    float $balance_readability_g,
    float $cold_density_g_per_ml,
    ?float $hot_density_g_per_ml = null,
    ?float $voids = null,
    ?float $feed = null,
    ?float $feed_uncertainty = null,
): array {
    return Call::of('cavity_of_weights', [
        ['weights_g', 'list', $weights_g, 'weights_count'],
        ['balance_readability_g', 'number', $balance_readability_g],
        ['cold_density_g_per_ml', 'number', $cold_density_g_per_ml],
        ['hot_density_g_per_ml', 'number', $hot_density_g_per_ml],
        ['voids', 'number', $voids],
        ['feed', 'number', $feed],
        ['feed_uncertainty', 'number', $feed_uncertainty],
    ], [
        ['cavity_volume_ml', 'number'],
        ['cavity_volume_uncertainty_ml', 'number'],
        ['mean_g', 'number'],
        ['deviation_g', 'number'],
    ], input: true, result: true);
}

/**
 * Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot).
 *
 * Example: `feed_of_weights(weights_g: [10.5, 10.5], balance_readability_g: 0.01, cold_density_g_per_ml: 1.1,
 *     cavity_volume_ml: 10, hot_density_g_per_ml: 1)` gives `['feed' => 0.5, 'feed_uncertainty' =>
 *     0.002886751345948127, 'mean_g' => 10.5, 'deviation_g' => 0]`.
 *
 * @param list<float> $weights_g Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one
 *     weighed piece. Unit: g; 1e-12 to 1e15.
 * @param float $balance_readability_g Smallest difference that the balance shows; without it there is no
 *     balance. Unit: g; 1e-12 to 1e15.
 * @param float $cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
 *     0.001 to 25.
 * @param float $cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
 * @param ?float $hot_density_g_per_ml Melt density at shot temperature, without voids; at most the cold one.
 *     Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
 * @param ?float $voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default: 0.
 * @param ?float $volume_uncertainty_ml Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0.
 * @return array{feed: float, feed_uncertainty: float, mean_g: float, deviation_g: float}
 *     feed: Feed share. Unit: 1.
 *     feed_uncertainty: Its standard uncertainty. Unit: 1.
 *     mean_g: Mean of the weights. Unit: g.
 *     deviation_g: Standard deviation of one. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function feed_of_weights(
    array $weights_g,
    float $balance_readability_g,
    float $cold_density_g_per_ml,
    float $cavity_volume_ml,
    ?float $hot_density_g_per_ml = null,
    ?float $voids = null,
    ?float $volume_uncertainty_ml = null,
): array {
    return Call::of('feed_of_weights', [
        ['weights_g', 'list', $weights_g, 'weights_count'],
        ['balance_readability_g', 'number', $balance_readability_g],
        ['cold_density_g_per_ml', 'number', $cold_density_g_per_ml],
        ['cavity_volume_ml', 'number', $cavity_volume_ml],
        ['hot_density_g_per_ml', 'number', $hot_density_g_per_ml],
        ['voids', 'number', $voids],
        ['volume_uncertainty_ml', 'number', $volume_uncertainty_ml],
    ], [
        ['feed', 'number'],
        ['feed_uncertainty', 'number'],
        ['mean_g', 'number'],
        ['deviation_g', 'number'],
    ], input: true, result: true);
}

/**
 * Mass of one drop from several weighings of many.
 *
 * Example: `drop_of_weighings(drops_weighed: [[50, 2.2], [50, 2.2]], balance_readability_g: 0.01)` gives
 *     `['drop_mass_g' => 0.044000000000000004, 'drop_mass_uncertainty_g' => 0.000057735026918962585, 'scatter_g'
 *     => 0]`.
 *
 * @param list<array{float, float}> $drops_weighed Drops that were counted and weighed together, each weighing
 *     started over. 2 to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000.
 *     Then: What they weigh together, net. Unit: g; 1e-12 to 1e15.
 * @param float $balance_readability_g Smallest difference that the balance shows; without it there is no
 *     balance. Unit: g; 1e-12 to 1e15.
 * @return array{drop_mass_g: float, drop_mass_uncertainty_g: float, scatter_g: float}
 *     drop_mass_g: Mass of one drop. Unit: g.
 *     drop_mass_uncertainty_g: Its standard uncertainty. Unit: g.
 *     scatter_g: Standard deviation of one drop against the next. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function drop_of_weighings(
    array $drops_weighed,
    float $balance_readability_g,
): array {
    return Call::of('drop_of_weighings', [
        ['drops_weighed', 'rows', $drops_weighed, 'drops_weighed_count', 2, 'pour_drops_weighed_row'],
        ['balance_readability_g', 'number', $balance_readability_g],
    ], [
        ['drop_mass_g', 'number'],
        ['drop_mass_uncertainty_g', 'number'],
        ['scatter_g', 'number'],
    ], input: false, result: true);
}

/**
 * Bulk density of a powder from several weighings of level spoonfuls.
 *
 * Example: `as_scooped_of_weighings(scoops_weighed: [[10, 61], [10, 61]], spoon_volume_ml: 5,
 *     balance_readability_g: 0.1)` gives `['as_scooped_g_per_ml' => 1.2199999999999998,
 *     'as_scooped_uncertainty_g_per_ml' => 0.0005773502691896258, 'spoonful_g' => 6.1]`.
 *
 * @param list<array{float, float}> $scoops_weighed Level spoonfuls that were counted and weighed together,
 *     each weighing started over. 2 to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1
 *     to 1000000. Then: What they weigh together, net. Unit: g; 1e-12 to 1e15.
 * @param float $spoon_volume_ml Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
 * @param float $balance_readability_g Smallest difference that the balance shows; without it there is no
 *     balance. Unit: g; 1e-12 to 1e15.
 * @param ?float $volume_uncertainty_ml Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default: 0.
 * @return array{as_scooped_g_per_ml: float, as_scooped_uncertainty_g_per_ml: float, spoonful_g: float}
 *     as_scooped_g_per_ml: Bulk density, level in the spoon. Unit: g/mL.
 *     as_scooped_uncertainty_g_per_ml: Its standard uncertainty. Unit: g/mL.
 *     spoonful_g: Mass of one spoonful. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function as_scooped_of_weighings(
    array $scoops_weighed,
    float $spoon_volume_ml,
    float $balance_readability_g,
    ?float $volume_uncertainty_ml = null,
): array {
    return Call::of('as_scooped_of_weighings', [
        ['scoops_weighed', 'rows', $scoops_weighed, 'scoops_weighed_count', 2, 'pour_scoops_weighed_row'],
        ['spoon_volume_ml', 'number', $spoon_volume_ml],
        ['balance_readability_g', 'number', $balance_readability_g],
        ['volume_uncertainty_ml', 'number', $volume_uncertainty_ml],
    ], [
        ['as_scooped_g_per_ml', 'number'],
        ['as_scooped_uncertainty_g_per_ml', 'number'],
        ['spoonful_g', 'number'],
    ], input: false, result: true);
}

/**
 * Volume that stays in an injector, from weighings of it clean and then emptied as at work.
 *
 * Example: `residue_of_weighings(injector_weighed_g: [[180, 184], [180, 184]], residue_density_g_per_ml: 1,
 *     balance_readability_g: 0.1)` gives `['injector_residue_ml' => 4.0000000000000036,
 *     'injector_residue_uncertainty_ml' => 0.02886751345948129, 'residue_mass_g' => 4.0000000000000036]`.
 *
 * @param list<array{float, float}> $injector_weighed_g Weighings of the injector, each clean and then emptied
 *     as at work. 2 to 1000 of them. Each: Mass of the clean injector. Unit: g; 1e-12 to 1e15. Then: Mass of the
 *     injector emptied as at work; at least that of the clean one. Unit: g; 1e-12 to 1e15.
 * @param float $residue_density_g_per_ml Density of what stays in the injector, at the temperature at which
 *     it is emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.
 * @param float $balance_readability_g Smallest difference that the balance shows; without it there is no
 *     balance. Unit: g; 1e-12 to 1e15.
 * @param ?float $density_uncertainty_g_per_ml Standard uncertainty of the density of the piece; its bounds
 *     are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.
 * @return array{injector_residue_ml: float, injector_residue_uncertainty_ml: float, residue_mass_g: float}
 *     injector_residue_ml: Volume that stays in the injector. Unit: mL.
 *     injector_residue_uncertainty_ml: Its standard uncertainty. Unit: mL.
 *     residue_mass_g: Its mass. Unit: g.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function residue_of_weighings(
    array $injector_weighed_g,
    float $residue_density_g_per_ml,
    float $balance_readability_g,
    ?float $density_uncertainty_g_per_ml = null,
): array {
    return Call::of('residue_of_weighings', [
        ['injector_weighed_g', 'rows', $injector_weighed_g, 'injector_weighed_count', 2, 'pour_injector_weighed_row'],
        ['residue_density_g_per_ml', 'number', $residue_density_g_per_ml],
        ['balance_readability_g', 'number', $balance_readability_g],
        ['density_uncertainty_g_per_ml', 'number', $density_uncertainty_g_per_ml],
    ], [
        ['injector_residue_ml', 'number'],
        ['injector_residue_uncertainty_ml', 'number'],
        ['residue_mass_g', 'number'],
    ], input: false, result: true);
}

/**
 * Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop
 * keeps.
 *
 * price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in
 * binary fractions. Costs of materials, work and packing with their packages and currencies: the request
 * `cost`.
 *
 * Example: `price(cost: 750, cost_margin: 0.4)` gives `1250`.
 *
 * @param int $cost Cost, in the smallest unit of the currency: cents. 0 to 1000000000.
 * @param float $cost_margin Share of the price that the shop keeps (a markup on the cost is another thing).
 *     Without it there is no price. Unit: 1; 0 to below 1.
 * @return int Price, in the smallest unit of the currency.
 * @throws PourwrightException All that is wrong with the arguments.
 */
function price(
    int $cost,
    float $cost_margin,
): int {
    return Call::of('price', [
        ['cost', 'count', $cost],
        ['cost_margin', 'number', $cost_margin],
    ], [
        ['price', 'count'],
    ], input: false, result: false);
}
