--- The calculations of the library on plain numbers, each with its unit in its name.
--
-- Each takes a table of its parameters by name, and gives a number or a word, or a table of its results by name. It
-- raises an error with all faults of the call.
--
-- Made by `cargo run -p pourwright-generate`; do not edit.

local of = require("pourwright.call").of

local words = {
  alike = { "count", "area" },
  form = { "as-scooped", "per-volume", "of-base", "of-finished", "finished-density", "piece-mass", "sink-density" },
  kind = { "plastisol", "softener", "hardener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent", "other" },
  measures = { "us-customary", "us-label", "metric", "imperial" },
  motion = { "straight", "may-swing", "swings" },
  piece_point = { "center", "mean" },
  scale = { "shore-00", "shore-a" },
  section_shape = { "rod", "plate", "ball" },
  shape = { "stick", "ball" },
  tool = { "balance", "cup", "spoons", "drops" },
}

local calculations = {}

--- Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
--
-- A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
--
-- Example: `convert { amount = "1 1/4 cup", to = "mL" }` gives `295.735295625`.
-- @tparam table given
-- @tparam string given.amount An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above;
--   a temperature above absolute zero.
-- @tparam string given.to The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
-- @tparam[opt] string given.measures The system of measures: what a cup, a spoon and a fluid ounce hold.
--   Default: us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
-- @treturn number The number, in the unit of `to`.
calculations.convert = of("convert", {
  { "amount", "text" },
  { "to", "text" },
  { "measures", "word", words = words.measures, optional = true },
}, {
  { "value", "number" },
}, { input = false, result = false })

--- Converts a number of one unit into another.
--
-- Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between units hold on
-- bits: 48 tsp are 1 cup.
--
-- Example: `convert_number { value = 48, unit = "tsp", to = "cup" }` gives `1`.
-- @tparam table given
-- @tparam number given.value The number to convert. Unit: any; 0 or above; a temperature above absolute zero.
-- @tparam string given.unit The unit of the number, by trade symbol or UCUM code. A unit.
-- @tparam string given.to The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
-- @tparam[opt] string given.measures The system of measures: what a cup, a spoon and a fluid ounce hold.
--   Default: us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
-- @treturn number The number, in the unit of `to`.
calculations.convert_number = of("convert_number", {
  { "value", "number" },
  { "unit", "text" },
  { "to", "text" },
  { "measures", "word", words = words.measures, optional = true },
}, {
  { "value", "number" },
}, { input = false, result = false })

--- Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.
--
-- A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a drop
-- is 1/20 mL (pharmacy practice).
--
-- Example: `dose_mass { amount = "50 drops", kind = "colorant", material_density_g_per_ml = 1.05, drop_mass_g
--   = 0.044 }` gives `2.2`.
-- @tparam table given
-- @tparam string given.amount An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above;
--   a temperature above absolute zero.
-- @tparam string given.kind What the material is for; powders (pearl, flake, salt) are measured as scooped.
--   One of `plastisol`, `softener`, `hardener`, `stabilizer`, `colorant`, `pearl`, `flake`, `salt`, `scent`,
--   `other`.
-- @tparam[opt] number given.material_density_g_per_ml True density of the material; of a plastisol that of
--   the liquid. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.as_scooped_g_per_ml Bulk density of a powder, level in the spoon and not tapped.
--   Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.drop_mass_g Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
-- @tparam[opt] string given.measures The system of measures: what a cup, a spoon and a fluid ounce hold.
--   Default: us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
-- @treturn number The mass. Unit: g.
calculations.dose_mass = of("dose_mass", {
  { "amount", "text" },
  { "kind", "word", words = words.kind },
  { "material_density_g_per_ml", "number", optional = true },
  { "as_scooped_g_per_ml", "number", optional = true },
  { "drop_mass_g", "number", optional = true },
  { "measures", "word", words = words.measures, optional = true },
}, {
  { "mass_g", "number" },
}, { input = false, result = false })

--- Mass of a volume: m = ρV.
--
-- The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid
-- displaces in a mix it is its true density.
--
-- Example: `mass_of_volume { volume_ml = 250, density_g_per_ml = 1.03 }` gives `257.5`.
-- @tparam table given
-- @tparam number given.volume_ml Volume. Unit: mL; 0 to 1e15.
-- @tparam number given.density_g_per_ml Density, without voids. Unit: g/mL; 0.001 to 25.
-- @treturn number The mass. Unit: g.
calculations.mass_of_volume = of("mass_of_volume", {
  { "volume_ml", "number" },
  { "density_g_per_ml", "number" },
}, {
  { "mass_g", "number" },
}, { input = false, result = false })

--- Volume of a mass: V = m/ρ, with the densities of `mass_of_volume`.
--
-- Example: `volume_of_mass { mass_g = 257.5, density_g_per_ml = 1.03 }` gives `250`.
-- @tparam table given
-- @tparam number given.mass_g Mass. Unit: g; 0 to 1e15.
-- @tparam number given.density_g_per_ml Density, without voids. Unit: g/mL; 0.001 to 25.
-- @treturn number The volume. Unit: mL.
calculations.volume_of_mass = of("volume_of_mass", {
  { "mass_g", "number" },
  { "density_g_per_ml", "number" },
}, {
  { "volume_ml", "number" },
}, { input = false, result = false })

--- Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
--
-- Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
--
-- Example: `density_of_parts { parts = { { 100, 1 }, { 50, 2 } } }` gives `1.2000000000000002`.
-- @tparam table given
-- @tparam table given.parts The parts of the mix: of each its mass and its true density. At least one has a
--   mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True density of
--   one part of a mix. Unit: g/mL; 0.001 to 25.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @treturn number Density of the mix, voids counted. Unit: g/mL.
calculations.density_of_parts = of("density_of_parts", {
  { "parts", "rows", count = "parts_count", columns = 2, item = "pour_parts_row" },
  { "voids", "number", optional = true },
}, {
  { "density_g_per_ml", "number" },
}, { input = false, result = false })

--- Share of one part in a mix, by mass and by true volume.
--
-- Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).
--
-- Example: `mix_share { parts = { { 75, 1 }, { 50, 2 } }, part = 2 }` gives `{ mass_share = 0.4, volume_share
--   = 0.25000000000000006 }`.
-- @tparam table given
-- @tparam table given.parts The parts of the mix: of each its mass and its true density. At least one has a
--   mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True density of
--   one part of a mix. Unit: g/mL; 0.001 to 25.
-- @tparam number given.part Which part of the mix, counted from 1. 1 to 1000.
-- @treturn table
-- @treturn number mass_share: Share of its mass. Unit: 1.
-- @treturn number volume_share: Share of its true volume. Unit: 1.
calculations.mix_share = of("mix_share", {
  { "parts", "rows", count = "parts_count", columns = 2, item = "pour_parts_row" },
  { "part", "count" },
}, {
  { "mass_share", "number" },
  { "volume_share", "number" },
}, { input = false, result = true })

--- States a salt loading another way.
--
-- All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In
-- reach is all between no salt and the maximum that `most_solids` allows. Where a form that is about a piece
-- needs the feed and it is not known, the bounds are those without feed and fed in full.
--
-- Example: `salt_convert { base_volume_ml = 250, base_density_g_per_ml = 1, salt_density_g_per_ml = 2, form =
--   "of-base", loading = 0.1, to_form = "as-scooped", salt_as_scooped_g_per_ml = 1.25 }` gives `{ loading =
--   0.08, loading_min = 0.08, loading_max = 0.08 }`.
-- @tparam table given
-- @tparam number given.base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL;
--   1e-9 to 1e15.
-- @tparam number given.base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it.
--   Unit: g/mL; 0.001 to 25.
-- @tparam number given.salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit:
--   g/mL; 0.001 to 25.
-- @tparam string given.form The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
--   `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
-- @tparam number given.loading The salt loading, as its form states it. Unit: any; in the unit of its form.
-- @tparam string given.to_form The way in which the loading is to be stated. One of `as-scooped`,
--   `per-volume`, `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
-- @tparam[opt] number given.mix_mass_g Mass of the mix before salt; at least that of its base. Give its
--   volume too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
-- @tparam[opt] number given.mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit:
--   mL; 1e-9 to 1e15. Default: as `base_volume_ml`.
-- @tparam[opt] number given.hot_volume_ml Volume of the mix before salt at shot temperature; at least the
--   cold one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
-- @tparam[opt] number given.shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to
--   427. Default: 20.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.salt_as_scooped_g_per_ml Bulk density of the salt, level in the spoon; at most
--   its true density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0
--   to 0.01. Default: 0.
-- @tparam[opt] number given.softener_per_salt Softener that goes in with the salt, mass per mass of salt.
--   Unit: 1; 0 to 10. Default: 0.
-- @tparam[opt] number given.softener_density_g_per_ml Density of the softener that goes in with the salt;
--   needed with it. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.softener_expansion_per_kelvin Volumetric thermal expansion of that softener.
--   Unit: 1/K; 0 to 0.01. Default: 0.
-- @tparam[opt] number given.most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1;
--   above 0 to below 1. Default: 0.3.
-- @tparam[opt] number given.cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
-- @tparam[opt] number given.feed Share of its contraction that a piece draws from the sprue while it cools.
--   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
--   full). Unit: 1; 0 to 1. Default: 0.5.
-- @tparam[opt] number given.hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.hook_volume_ml Volume that hook and weight displace; give their mass too. Unit:
--   mL; 0 to 1e15. Default: 0.
-- @treturn table
-- @treturn number loading: The loading as `to_form` states it, in the unit of that form.
-- @treturn number loading_min: Its lower bound where the feed matters and is not known; else the loading.
-- @treturn number loading_max: Its upper bound where the feed matters and is not known; else the loading.
calculations.salt_convert = of("salt_convert", {
  { "base_volume_ml", "number" },
  { "base_density_g_per_ml", "number" },
  { "salt_density_g_per_ml", "number" },
  { "form", "word", words = words.form },
  { "loading", "number" },
  { "to_form", "word", words = words.form },
  { "mix_mass_g", "number", optional = true },
  { "mix_volume_ml", "number", optional = true },
  { "hot_volume_ml", "number", optional = true },
  { "shot_temperature_celsius", "number", optional = true },
  { "voids", "number", optional = true },
  { "salt_as_scooped_g_per_ml", "number", optional = true },
  { "salt_expansion_per_kelvin", "number", optional = true },
  { "softener_per_salt", "number", optional = true },
  { "softener_density_g_per_ml", "number", optional = true },
  { "softener_expansion_per_kelvin", "number", optional = true },
  { "most_solids", "number", optional = true },
  { "cavity_volume_ml", "number", optional = true },
  { "feed", "number", optional = true },
  { "hook_mass_g", "number", optional = true },
  { "hook_volume_ml", "number", optional = true },
}, {
  { "loading", "number" },
  { "loading_min", "number" },
  { "loading_max", "number" },
}, { input = true, result = true })

--- Mass of salt for a loading, and of the softener that goes in with it.
--
-- Example: `salt_mass { base_volume_ml = 250, base_density_g_per_ml = 1, salt_density_g_per_ml = 2, form =
--   "of-base", loading = 0.1, salt_as_scooped_g_per_ml = 1.25 }` gives `{ salt_mass_g = 25, salt_mass_min_g =
--   25, salt_mass_max_g = 25, softener_mass_g = 0 }`.
-- @tparam table given
-- @tparam number given.base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL;
--   1e-9 to 1e15.
-- @tparam number given.base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it.
--   Unit: g/mL; 0.001 to 25.
-- @tparam number given.salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit:
--   g/mL; 0.001 to 25.
-- @tparam string given.form The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
--   `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
-- @tparam number given.loading The salt loading, as its form states it. Unit: any; in the unit of its form.
-- @tparam[opt] number given.mix_mass_g Mass of the mix before salt; at least that of its base. Give its
--   volume too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
-- @tparam[opt] number given.mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit:
--   mL; 1e-9 to 1e15. Default: as `base_volume_ml`.
-- @tparam[opt] number given.hot_volume_ml Volume of the mix before salt at shot temperature; at least the
--   cold one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
-- @tparam[opt] number given.shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to
--   427. Default: 20.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.salt_as_scooped_g_per_ml Bulk density of the salt, level in the spoon; at most
--   its true density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0
--   to 0.01. Default: 0.
-- @tparam[opt] number given.softener_per_salt Softener that goes in with the salt, mass per mass of salt.
--   Unit: 1; 0 to 10. Default: 0.
-- @tparam[opt] number given.softener_density_g_per_ml Density of the softener that goes in with the salt;
--   needed with it. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.softener_expansion_per_kelvin Volumetric thermal expansion of that softener.
--   Unit: 1/K; 0 to 0.01. Default: 0.
-- @tparam[opt] number given.most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1;
--   above 0 to below 1. Default: 0.3.
-- @tparam[opt] number given.cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
-- @tparam[opt] number given.feed Share of its contraction that a piece draws from the sprue while it cools.
--   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
--   full). Unit: 1; 0 to 1. Default: 0.5.
-- @tparam[opt] number given.hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.hook_volume_ml Volume that hook and weight displace; give their mass too. Unit:
--   mL; 0 to 1e15. Default: 0.
-- @treturn table
-- @treturn number salt_mass_g: Mass of salt. Unit: g.
-- @treturn number salt_mass_min_g: Its lower bound where the feed matters and is not known; else the mass.
--   Unit: g.
-- @treturn number salt_mass_max_g: Its upper bound where the feed matters and is not known; else the mass.
--   Unit: g.
-- @treturn number softener_mass_g: Mass of softener that goes in with it. Unit: g.
calculations.salt_mass = of("salt_mass", {
  { "base_volume_ml", "number" },
  { "base_density_g_per_ml", "number" },
  { "salt_density_g_per_ml", "number" },
  { "form", "word", words = words.form },
  { "loading", "number" },
  { "mix_mass_g", "number", optional = true },
  { "mix_volume_ml", "number", optional = true },
  { "hot_volume_ml", "number", optional = true },
  { "shot_temperature_celsius", "number", optional = true },
  { "voids", "number", optional = true },
  { "salt_as_scooped_g_per_ml", "number", optional = true },
  { "salt_expansion_per_kelvin", "number", optional = true },
  { "softener_per_salt", "number", optional = true },
  { "softener_density_g_per_ml", "number", optional = true },
  { "softener_expansion_per_kelvin", "number", optional = true },
  { "most_solids", "number", optional = true },
  { "cavity_volume_ml", "number", optional = true },
  { "feed", "number", optional = true },
  { "hook_mass_g", "number", optional = true },
  { "hook_volume_ml", "number", optional = true },
}, {
  { "salt_mass_g", "number" },
  { "salt_mass_min_g", "number" },
  { "salt_mass_max_g", "number" },
  { "softener_mass_g", "number" },
}, { input = true, result = true })

--- Salt loadings in reach: without salt, and with the maximum that `most_solids` allows.
--
-- Example: `salt_reach { base_volume_ml = 250, base_density_g_per_ml = 1, salt_density_g_per_ml = 2, form =
--   "finished-density", salt_as_scooped_g_per_ml = 1.25 }` gives `{ loading_min = 1, loading_max = 1.3 }`.
-- @tparam table given
-- @tparam number given.base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL;
--   1e-9 to 1e15.
-- @tparam number given.base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it.
--   Unit: g/mL; 0.001 to 25.
-- @tparam number given.salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit:
--   g/mL; 0.001 to 25.
-- @tparam string given.form The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
--   `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
-- @tparam[opt] number given.mix_mass_g Mass of the mix before salt; at least that of its base. Give its
--   volume too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
-- @tparam[opt] number given.mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit:
--   mL; 1e-9 to 1e15. Default: as `base_volume_ml`.
-- @tparam[opt] number given.hot_volume_ml Volume of the mix before salt at shot temperature; at least the
--   cold one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
-- @tparam[opt] number given.shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to
--   427. Default: 20.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.salt_as_scooped_g_per_ml Bulk density of the salt, level in the spoon; at most
--   its true density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0
--   to 0.01. Default: 0.
-- @tparam[opt] number given.softener_per_salt Softener that goes in with the salt, mass per mass of salt.
--   Unit: 1; 0 to 10. Default: 0.
-- @tparam[opt] number given.softener_density_g_per_ml Density of the softener that goes in with the salt;
--   needed with it. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.softener_expansion_per_kelvin Volumetric thermal expansion of that softener.
--   Unit: 1/K; 0 to 0.01. Default: 0.
-- @tparam[opt] number given.most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1;
--   above 0 to below 1. Default: 0.3.
-- @tparam[opt] number given.cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
-- @tparam[opt] number given.feed Share of its contraction that a piece draws from the sprue while it cools.
--   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
--   full). Unit: 1; 0 to 1. Default: 0.5.
-- @tparam[opt] number given.hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.hook_volume_ml Volume that hook and weight displace; give their mass too. Unit:
--   mL; 0 to 1e15. Default: 0.
-- @treturn table
-- @treturn number loading_min: The loading without salt, in the unit of the form.
-- @treturn number loading_max: The maximum loading, in the unit of the form.
calculations.salt_reach = of("salt_reach", {
  { "base_volume_ml", "number" },
  { "base_density_g_per_ml", "number" },
  { "salt_density_g_per_ml", "number" },
  { "form", "word", words = words.form },
  { "mix_mass_g", "number", optional = true },
  { "mix_volume_ml", "number", optional = true },
  { "hot_volume_ml", "number", optional = true },
  { "shot_temperature_celsius", "number", optional = true },
  { "voids", "number", optional = true },
  { "salt_as_scooped_g_per_ml", "number", optional = true },
  { "salt_expansion_per_kelvin", "number", optional = true },
  { "softener_per_salt", "number", optional = true },
  { "softener_density_g_per_ml", "number", optional = true },
  { "softener_expansion_per_kelvin", "number", optional = true },
  { "most_solids", "number", optional = true },
  { "cavity_volume_ml", "number", optional = true },
  { "feed", "number", optional = true },
  { "hook_mass_g", "number", optional = true },
  { "hook_volume_ml", "number", optional = true },
}, {
  { "loading_min", "number" },
  { "loading_max", "number" },
}, { input = true, result = true })

--- Mass of salt that brings a base alone to a finished density: `salt_mass` in one form, with few numbers.
--
-- m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).
--
-- Example: `salt_for_density { base_volume_ml = 250, base_density_g_per_ml = 1, salt_density_g_per_ml = 2,
--   finished_density_g_per_ml = 1.25 }` gives `166.66666666666666`.
-- @tparam table given
-- @tparam number given.base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL;
--   1e-9 to 1e15.
-- @tparam number given.base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it.
--   Unit: g/mL; 0.001 to 25.
-- @tparam number given.salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit:
--   g/mL; 0.001 to 25.
-- @tparam number given.finished_density_g_per_ml Density of the finished plastic at 20 °C, voids counted.
--   Unit: g/mL; 0.001 to 25.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1;
--   above 0 to below 1. Default: 0.3.
-- @treturn number Mass of salt. Unit: g.
calculations.salt_for_density = of("salt_for_density", {
  { "base_volume_ml", "number" },
  { "base_density_g_per_ml", "number" },
  { "salt_density_g_per_ml", "number" },
  { "finished_density_g_per_ml", "number" },
  { "voids", "number", optional = true },
  { "most_solids", "number", optional = true },
}, {
  { "salt_mass_g", "number" },
}, { input = false, result = false })

--- Mass of salt at which a piece sinks at a rate.
--
-- The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has
-- cooled; the salt is that for this density.
--
-- Example: `salt_for_sink_rate { base_volume_ml = 250, base_density_g_per_ml = 1, salt_density_g_per_ml = 2,
--   sink_rate_cm_per_s = 22.04104669853903, cavity_volume_ml = 9.5, diameter_mm = 10, water_temperature_celsius
--   = 20, length_mm = 121, hook_mass_g = 2, hook_volume_ml = 0.25 }` gives `{ salt_mass_g = 55.55555555555424,
--   softener_mass_g = 0, finished_density_g_per_ml = 1.0999999999999979 }`.
-- @tparam table given
-- @tparam number given.base_volume_ml Volume of the base, cold and liquid, as a cup measures it. Unit: mL;
--   1e-9 to 1e15.
-- @tparam number given.base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it.
--   Unit: g/mL; 0.001 to 25.
-- @tparam number given.salt_density_g_per_ml True density of the salt: 2.165 g/mL for sodium chloride. Unit:
--   g/mL; 0.001 to 25.
-- @tparam number given.sink_rate_cm_per_s Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
-- @tparam number given.cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.diameter_mm Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
-- @tparam number given.water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
-- @tparam[opt] number given.length_mm Length of a stick, at least 2.01 diameters; not used for a ball. Unit:
--   mm; 1e-6 to 1e6. Default: none.
-- @tparam[opt] string given.shape Shape of the piece as it sinks: a stick sinks sideways. Default: a stick
--   where a length is given, else a ball. One of `stick`, `ball`.
-- @tparam[opt] number given.mix_mass_g Mass of the mix before salt; at least that of its base. Give its
--   volume too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
-- @tparam[opt] number given.mix_volume_ml Volume of the mix before salt at 20 °C. Give its mass too. Unit:
--   mL; 1e-9 to 1e15. Default: as `base_volume_ml`.
-- @tparam[opt] number given.hot_volume_ml Volume of the mix before salt at shot temperature; at least the
--   cold one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
-- @tparam[opt] number given.shot_temperature_celsius Temperature at which the mix is shot. Unit: °C; 20 to
--   427. Default: 20.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.salt_expansion_per_kelvin Volumetric thermal expansion of the salt. Unit: 1/K; 0
--   to 0.01. Default: 0.
-- @tparam[opt] number given.softener_per_salt Softener that goes in with the salt, mass per mass of salt.
--   Unit: 1; 0 to 10. Default: 0.
-- @tparam[opt] number given.softener_density_g_per_ml Density of the softener that goes in with the salt;
--   needed with it. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.softener_expansion_per_kelvin Volumetric thermal expansion of that softener.
--   Unit: 1/K; 0 to 0.01. Default: 0.
-- @tparam[opt] number given.most_solids Maximum share of salt in the finished mix, by true volume. Unit: 1;
--   above 0 to below 1. Default: 0.3.
-- @tparam[opt] number given.feed Share of its contraction that a piece draws from the sprue while it cools.
--   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
--   full). Unit: 1; 0 to 1. Default: 0.5.
-- @tparam[opt] number given.hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.hook_volume_ml Volume that hook and weight displace; give their mass too. Unit:
--   mL; 0 to 1e15. Default: 0.
-- @tparam[opt] number given.salinity_practical Practical salinity as a probe reads it, about 35 in the ocean;
--   give this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
-- @tparam[opt] number given.salinity_absolute Absolute salinity, mass of salt per mass of sea water (35 g/kg
--   is 0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
-- @tparam[opt] number given.drop_depth_m Depth of a timed drop, the piece let go just below the surface.
--   Unit: m; 1e-9 to 12000. Default: none.
-- @tparam[opt] number given.drop_time_s Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
-- @tparam[opt] number given.drop_density_g_per_ml Density of the piece that was dropped. Unit: g/mL; 0.001 to
--   25. Default: none.
-- @treturn table
-- @treturn number salt_mass_g: Mass of salt. Unit: g.
-- @treturn number softener_mass_g: Mass of softener that goes in with it. Unit: g.
-- @treturn number finished_density_g_per_ml: Density of the finished plastic at 20 °C, voids counted. Unit:
--   g/mL.
calculations.salt_for_sink_rate = of("salt_for_sink_rate", {
  { "base_volume_ml", "number" },
  { "base_density_g_per_ml", "number" },
  { "salt_density_g_per_ml", "number" },
  { "sink_rate_cm_per_s", "number" },
  { "cavity_volume_ml", "number" },
  { "diameter_mm", "number" },
  { "water_temperature_celsius", "number" },
  { "length_mm", "number", optional = true },
  { "shape", "word", words = words.shape, optional = true },
  { "mix_mass_g", "number", optional = true },
  { "mix_volume_ml", "number", optional = true },
  { "hot_volume_ml", "number", optional = true },
  { "shot_temperature_celsius", "number", optional = true },
  { "voids", "number", optional = true },
  { "salt_expansion_per_kelvin", "number", optional = true },
  { "softener_per_salt", "number", optional = true },
  { "softener_density_g_per_ml", "number", optional = true },
  { "softener_expansion_per_kelvin", "number", optional = true },
  { "most_solids", "number", optional = true },
  { "feed", "number", optional = true },
  { "hook_mass_g", "number", optional = true },
  { "hook_volume_ml", "number", optional = true },
  { "salinity_practical", "number", optional = true },
  { "salinity_absolute", "number", optional = true },
  { "drop_depth_m", "number", optional = true },
  { "drop_time_s", "number", optional = true },
  { "drop_density_g_per_ml", "number", optional = true },
}, {
  { "salt_mass_g", "number" },
  { "softener_mass_g", "number" },
  { "finished_density_g_per_ml", "number" },
}, { input = true, result = true })

--- Mass of one shot, and of its pieces.
--
-- Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `piece_mass`, as far as sprue and topping can feed
-- it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is above 0. Of
-- sprue and topping a layer fills its share.
--
-- Example: `shot_fill { cavities = 4, cavity_volume_ml = 10, cold_density_g_per_ml = 1.0625,
--   hot_density_g_per_ml = 1, feed = 0.5, sprue_volume_ml = 8 }` gives `{ shot_mass_g = 48, pieces_mass_g =
--   41.25, sprue_mass_g = 6.75, missing_mass_g = 0, piece_mass_g = 10.3125, piece_mass_min_g = 10.3125,
--   piece_mass_max_g = 10.3125, fed = 0.5 }`.
-- @tparam table given
-- @tparam number given.cavities Number of cavities that a shot fills. 1 to 1000000.
-- @tparam number given.cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit:
--   g/mL; 0.001 to 25.
-- @tparam[opt] number given.hot_density_g_per_ml Melt density at shot temperature, without voids; at most the
--   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.feed Share of its contraction that a piece draws from the sprue while it cools.
--   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
--   full). Unit: 1; 0 to 1. Default: 0.5.
-- @tparam[opt] number given.sprue_volume_ml Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0.
-- @tparam[opt] number given.topped_mass_g Mass that topping off and holding add. Unit: g; 0 to 1e15. Default:
--   0.
-- @tparam[opt] number given.layer_share Share of the cavity that this layer of a laminated piece fills. Unit:
--   1; above 0 to 1. Default: 1.
-- @treturn table
-- @treturn number shot_mass_g: Mass of one shot, topping included. Unit: g.
-- @treturn number pieces_mass_g: Mass of all its pieces. Unit: g.
-- @treturn number sprue_mass_g: Mass that is left as sprue once the pieces have been fed. Unit: g.
-- @treturn number missing_mass_g: Mass that sprue and topping are short of; 0 where the pieces are fed. Unit:
--   g.
-- @treturn number piece_mass_g: Mass of one piece, or of the layer in it. Unit: g.
-- @treturn number piece_mass_min_g: The same without feed where the feed is not known; else the mass of the
--   piece. Unit: g.
-- @treturn number piece_mass_max_g: The same fed as far as sprue and topping reach where the feed is not
--   known; else the mass of the piece. Unit: g.
-- @treturn number fed: Share of the contraction that was fed. Unit: 1.
calculations.shot_fill = of("shot_fill", {
  { "cavities", "count" },
  { "cavity_volume_ml", "number" },
  { "cold_density_g_per_ml", "number" },
  { "hot_density_g_per_ml", "number", optional = true },
  { "voids", "number", optional = true },
  { "feed", "number", optional = true },
  { "sprue_volume_ml", "number", optional = true },
  { "topped_mass_g", "number", optional = true },
  { "layer_share", "number", optional = true },
}, {
  { "shot_mass_g", "number" },
  { "pieces_mass_g", "number" },
  { "sprue_mass_g", "number" },
  { "missing_mass_g", "number" },
  { "piece_mass_g", "number" },
  { "piece_mass_min_g", "number" },
  { "piece_mass_max_g", "number" },
  { "fed", "number" },
}, { input = true, result = true })

--- Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
--
-- While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass; f
-- is the shop's own. A sprue that cannot feed that much: see `shot_fill`.
--
-- Example: `piece_mass { cavity_volume_ml = 10, cold_density_g_per_ml = 1.0625, hot_density_g_per_ml = 1 }`
--   gives `{ piece_mass_g = 10.3125, piece_mass_min_g = 10, piece_mass_max_g = 10.625 }`.
-- @tparam table given
-- @tparam number given.cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit:
--   g/mL; 0.001 to 25.
-- @tparam[opt] number given.hot_density_g_per_ml Melt density at shot temperature, without voids; at most the
--   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.feed Share of its contraction that a piece draws from the sprue while it cools.
--   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
--   full). Unit: 1; 0 to 1. Default: 0.5.
-- @treturn table
-- @treturn number piece_mass_g: Mass of the piece. Unit: g.
-- @treturn number piece_mass_min_g: The same without feed where the feed is not known; else the mass of the
--   piece. Unit: g.
-- @treturn number piece_mass_max_g: The same fed in full where the feed is not known; else the mass of the
--   piece. Unit: g.
calculations.piece_mass = of("piece_mass", {
  { "cavity_volume_ml", "number" },
  { "cold_density_g_per_ml", "number" },
  { "hot_density_g_per_ml", "number", optional = true },
  { "voids", "number", optional = true },
  { "feed", "number", optional = true },
}, {
  { "piece_mass_g", "number" },
  { "piece_mass_min_g", "number" },
  { "piece_mass_max_g", "number" },
}, { input = false, result = true })

--- Minimum number of shots for a number of good pieces.
--
-- Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.
--
-- Example: `shots { pieces = 10, cavities = 4 }` gives `{ shots = 3, cast = 12 }`.
-- @tparam table given
-- @tparam number given.pieces Number of good pieces needed. 1 to 1000000.
-- @tparam number given.cavities Number of cavities that a shot fills. 1 to 1000000.
-- @tparam[opt] number given.rejects Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default:
--   0.
-- @tparam[opt] number given.confidence Confidence that enough good pieces come out. Unit: 1; above 0 to
--   0.999999999. Default: 0.9.
-- @treturn table
-- @treturn number shots: Number of shots.
-- @treturn number cast: Number of pieces that they cast.
calculations.shots = of("shots", {
  { "pieces", "count" },
  { "cavities", "count" },
  { "rejects", "number", optional = true },
  { "confidence", "number", optional = true },
}, {
  { "shots", "count" },
  { "cast", "count" },
}, { input = false, result = true })

--- Injector loads for a number of shots.
--
-- Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.
--
-- Example: `injector_loads { shots = 5, shot_mass_g = 40, shot_density_g_per_ml = 1, injector_capacity_ml =
--   100, injector_residue_ml = 10 }` gives `{ loads = 3, shots_per_load = 2, shots_in_last = 1 }`.
-- @tparam table given
-- @tparam number given.shots Number of shots. 1 to 100000000.
-- @tparam number given.shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
-- @tparam number given.shot_density_g_per_ml Density of what the injector draws: hot, voids counted. Unit:
--   g/mL; 0.001 to 25.
-- @tparam number given.injector_capacity_ml Volume that the injector takes up at most. Unit: mL; 1e-9 to
--   1e15.
-- @tparam[opt] number given.injector_residue_ml Volume that stays in the injector each time it is emptied;
--   below its capacity. Unit: mL; 0 to 1e15. Default: 0.
-- @treturn table
-- @treturn number loads: Number of injector loads.
-- @treturn number shots_per_load: Whole shots in one load.
-- @treturn number shots_in_last: Shots from the last load.
calculations.injector_loads = of("injector_loads", {
  { "shots", "count" },
  { "shot_mass_g", "number" },
  { "shot_density_g_per_ml", "number" },
  { "injector_capacity_ml", "number" },
  { "injector_residue_ml", "number", optional = true },
}, {
  { "loads", "count" },
  { "shots_per_load", "count" },
  { "shots_in_last", "count" },
}, { input = false, result = true })

--- Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.
--
-- total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel).
--
-- Example: `batch_need { pieces = 10, cavities = 4, shot_mass_g = 50, shot_density_g_per_ml = 1,
--   injector_capacity_ml = 120, injector_residue_ml = 5, sprue_mass_g = 10 }` gives `{ total_mass_g =
--   155.00000000000003, drawn_mass_g = 150.00000000000003, returned_mass_g = 0, pieces_mass_g = 120,
--   sprues_mass_g = 30, kept_mass_g = 5, in_cup_mass_g = 0, shots = 3, loads = 2, shots_per_load = 2,
--   shots_in_last = 1 }`.
-- @tparam table given
-- @tparam number given.pieces Number of good pieces needed. 1 to 1000000.
-- @tparam number given.cavities Number of cavities that a shot fills. 1 to 1000000.
-- @tparam number given.shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
-- @tparam number given.shot_density_g_per_ml Density of what the injector draws: hot, voids counted. Unit:
--   g/mL; 0.001 to 25.
-- @tparam number given.injector_capacity_ml Volume that the injector takes up at most. Unit: mL; 1e-9 to
--   1e15.
-- @tparam[opt] number given.injector_residue_ml Volume that stays in the injector each time it is emptied;
--   below its capacity. Unit: mL; 0 to 1e15. Default: 0.
-- @tparam[opt] number given.cleanings Number of times the injector is cleaned or goes cold, the last time
--   included. 1 to 1000000. Default: 1.
-- @tparam[opt] number given.sprue_mass_g Mass of a shot that stays as sprue; at most the mass of the shot.
--   Unit: g; 0 to 1e15. Default: 0.
-- @tparam[opt] number given.returned Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0.
-- @tparam[opt] number given.pot_film_g Mass that clings to the wall of the cup, part of the heel. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.pot_heel_g Mass that cannot be drawn from the cup, its film included. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.rejects Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default:
--   0.
-- @tparam[opt] number given.confidence Confidence that enough good pieces come out. Unit: 1; above 0 to
--   0.999999999. Default: 0.9.
-- @treturn table
-- @treturn number total_mass_g: Mass to mix. Unit: g.
-- @treturn number drawn_mass_g: Mass of all shots. Unit: g.
-- @treturn number returned_mass_g: Mass of sprues that go back and are shot again. Unit: g.
-- @treturn number pieces_mass_g: Mass of all pieces. Unit: g.
-- @treturn number sprues_mass_g: Mass of sprues that are left over. Unit: g.
-- @treturn number kept_mass_g: Mass that stays in the injector over the run. Unit: g.
-- @treturn number in_cup_mass_g: Mass that stays in the cup: the heel, with the film in it. Unit: g.
-- @treturn number shots: Number of shots.
-- @treturn number loads: Number of injector loads.
-- @treturn number shots_per_load: Whole shots in one load.
-- @treturn number shots_in_last: Shots from the last load.
calculations.batch_need = of("batch_need", {
  { "pieces", "count" },
  { "cavities", "count" },
  { "shot_mass_g", "number" },
  { "shot_density_g_per_ml", "number" },
  { "injector_capacity_ml", "number" },
  { "injector_residue_ml", "number", optional = true },
  { "cleanings", "count", optional = true },
  { "sprue_mass_g", "number", optional = true },
  { "returned", "number", optional = true },
  { "pot_film_g", "number", optional = true },
  { "pot_heel_g", "number", optional = true },
  { "rejects", "number", optional = true },
  { "confidence", "number", optional = true },
}, {
  { "total_mass_g", "number" },
  { "drawn_mass_g", "number" },
  { "returned_mass_g", "number" },
  { "pieces_mass_g", "number" },
  { "sprues_mass_g", "number" },
  { "kept_mass_g", "number" },
  { "in_cup_mass_g", "number" },
  { "shots", "count" },
  { "loads", "count" },
  { "shots_per_load", "count" },
  { "shots_in_last", "count" },
}, { input = true, result = true })

--- Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.
--
-- The doses follow from the rounded base, so that no formula is off.
--
-- Example: `base_to_mark { mix_needed_g = 200, base_fraction = 0.8, base_density_g_per_ml = 1,
--   cup_capacity_ml = 250, cup_mark_ml = 50, shot_mass_g = 20 }` gives `{ base_volume_ml = 200, base_mass_g =
--   200, mix_mass_g = 250, surplus_mass_g = 49.999999999999986, extra_shots = 2 }`.
-- @tparam table given
-- @tparam number given.mix_needed_g Mass of mix that is needed. Unit: g; 1e-12 to 1e15.
-- @tparam number given.base_fraction Share of base in the mix, by mass. Unit: 1; above 0 to 1.
-- @tparam number given.base_density_g_per_ml Density of the base, cold and liquid, as a cup measures it.
--   Unit: g/mL; 0.001 to 25.
-- @tparam number given.cup_capacity_ml Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.
-- @tparam[opt] number given.cup_mark_ml Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15.
--   Default: one mark alone, when it is full.
-- @tparam[opt] number given.shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be
--   omitted.
-- @treturn table
-- @treturn number base_volume_ml: Volume of base: the mark. Unit: mL.
-- @treturn number base_mass_g: Mass of that base. Unit: g.
-- @treturn number mix_mass_g: Mass of the mix with all doses. Unit: g.
-- @treturn number surplus_mass_g: Mass that is more than needed. Unit: g.
-- @treturn number extra_shots: Whole shots that the surplus gives, where the mass of a shot is given. Nil
--   where there is none.
calculations.base_to_mark = of("base_to_mark", {
  { "mix_needed_g", "number" },
  { "base_fraction", "number" },
  { "base_density_g_per_ml", "number" },
  { "cup_capacity_ml", "number" },
  { "cup_mark_ml", "number", optional = true },
  { "shot_mass_g", "number", optional = true },
}, {
  { "base_volume_ml", "number" },
  { "base_mass_g", "number" },
  { "mix_mass_g", "number" },
  { "surplus_mass_g", "number" },
  { "extra_shots", "count" },
}, { input = false, result = true })

--- Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no
--- less mix than oven and injector need.
--
-- Example: `least_pot { doses = { { 0.05, 0.05, 0.005 } }, base_fraction = 0.8 }` gives `{ mix_mass_g = 125,
--   base_mass_g = 100 }`.
-- @tparam table given
-- @tparam table given.doses The doses: of each its smallest step, its tolerance and its ratio to the base. 1
--   to 64 of them. Each: Smallest step in which a dose can be measured: a drop, the smallest spoon, the
--   readability of the balance. Unit: g; 1e-12 to 1e15. Then: Largest relative error that is accepted. Unit: 1;
--   above 0 to below 1. Default: 0.05. Then: Dose, mass per mass of base. Unit: 1; 1e-9 to 10.
-- @tparam number given.base_fraction Share of base in the mix, by mass. Unit: 1; above 0 to 1.
-- @tparam[opt] number given.oven_least_g Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15.
--   Default: none.
-- @tparam[opt] number given.injector_least_g Smallest mix that the injector can draw from. Unit: g; 1e-12 to
--   1e15. Default: none.
-- @treturn table
-- @treturn number mix_mass_g: Mass of the mix. Unit: g.
-- @treturn number base_mass_g: Mass of base in it. Unit: g.
calculations.least_pot = of("least_pot", {
  { "doses", "rows", count = "doses_count", columns = 3, item = "pour_doses_row" },
  { "base_fraction", "number" },
  { "oven_least_g", "number", optional = true },
  { "injector_least_g", "number", optional = true },
}, {
  { "mix_mass_g", "number" },
  { "base_mass_g", "number" },
}, { input = false, result = true })

--- Reject rate from counted pieces, with the exact interval of a binomial share.
--
-- Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.
--
-- Example: `reject_rate { cast_pieces = 1, reject_count = 0, confidence = 0.5 }` gives `{ rejects = 0,
--   rejects_min = 0, rejects_max = 0.75 }`.
-- @tparam table given
-- @tparam number given.cast_pieces Number of pieces that were cast. 1 to 1000000.
-- @tparam number given.reject_count Number of them that are not fit to sell. 0 to 1000000.
-- @tparam[opt] number given.confidence Confidence that enough good pieces come out. Unit: 1; above 0 to
--   0.999999999. Default: 0.9.
-- @treturn table
-- @treturn number rejects: Share of rejects. Unit: 1.
-- @treturn number rejects_min: Its lower bound. Unit: 1.
-- @treturn number rejects_max: Its upper bound. Unit: 1.
calculations.reject_rate = of("reject_rate", {
  { "cast_pieces", "count" },
  { "reject_count", "count" },
  { "confidence", "number", optional = true },
}, {
  { "rejects", "number" },
  { "rejects_min", "number" },
  { "rejects_max", "number" },
}, { input = false, result = true })

--- Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
--
-- A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass
-- from which one would.
--
-- Example: `bench_measure { mass_to_measure_g = 12.5, tolerance = 0.02, spoons_ml = { 5, 2.5 },
--   as_measured_density_g_per_ml = 1 }` gives `{ mass_g = 12.5, deviation = 0, tool = "spoons", acts = 3, drops
--   = 0, spoonfuls = { 2, 1, 0, 0, 0, 0, 0, 0 }, cup = 0, cup_fillings = 0, cup_mark = 0 }`.
-- @tparam table given
-- @tparam number given.mass_to_measure_g Mass to measure. Unit: g; 1e-12 to 1e15.
-- @tparam[opt] number given.tolerance Largest relative error that is accepted. Unit: 1; above 0 to below 1.
--   Default: 0.05.
-- @tparam[opt] number given.balance_readability_g Smallest difference that the balance shows; without it
--   there is no balance. Unit: g; 1e-12 to 1e15. Default: none.
-- @tparam[opt] number given.balance_capacity_g Highest load of the balance. Unit: g; 1e-12 to 1e15. Default:
--   5000 times its readability.
-- @tparam[opt] number given.balance_least_load_g Minimum load for which the balance is trusted. Unit: g; 0 to
--   1e15. Default: 0.
-- @tparam[opt] table given.spoons_ml Volumes of the measuring spoons. 1 to 8 of them. Default: none. Each:
--   Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
-- @tparam[opt] table given.cups The cups with evenly spaced marks: of each the distance between marks and the
--   capacity. 1 to 64 of them. Default: none. Each: Distance between the marks of the cup. Unit: mL; 1e-9 to
--   1e15. Default: one mark alone, when it is full. Then: Volume of the cup up to its last mark. Unit: mL; 1e-9
--   to 1e15.
-- @tparam[opt] number given.as_measured_density_g_per_ml Density of the material in a measure: of a liquid
--   its density, of a powder its bulk density, level and not tapped. Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] number given.drop_mass_g Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
-- @treturn table
-- @treturn number mass_g: Mass that it gives. Unit: g.
-- @treturn number deviation: (given − needed)/needed. Unit: 1.
-- @treturn string tool: The tool: balance, cup, spoons or drops. One of `balance`, `cup`, `spoons`, `drops`.
-- @treturn number acts: Amount of handling: readings, fillings, spoonfuls, tens of drops.
-- @treturn number drops: Number of drops.
-- @treturn table spoonfuls: Number of level spoonfuls of each spoon, in the order of the spoons.
-- @treturn number cup: Which cup, counted from 1; 0 without one.
-- @treturn number cup_fillings: Number of times that cup is filled to its last mark.
-- @treturn number cup_mark: Mark to which it is filled once more, counted from 1; 0 where it is not.
calculations.bench_measure = of("bench_measure", {
  { "mass_to_measure_g", "number" },
  { "tolerance", "number", optional = true },
  { "balance_readability_g", "number", optional = true },
  { "balance_capacity_g", "number", optional = true },
  { "balance_least_load_g", "number", optional = true },
  { "spoons_ml", "list", count = "spoons_count", optional = true },
  { "cups", "rows", count = "cups_count", columns = 2, item = "pour_cups_row", optional = true },
  { "as_measured_density_g_per_ml", "number", optional = true },
  { "drop_mass_g", "number", optional = true },
}, {
  { "mass_g", "number" },
  { "deviation", "number" },
  { "tool", "word", words = words.tool },
  { "acts", "count" },
  { "drops", "count" },
  { "spoonfuls", "list", count = 8 },
  { "cup", "count" },
  { "cup_fillings", "count" },
  { "cup_mark", "count" },
}, { input = true, result = true })

--- Sink rate of a piece with its hook: the final speed, a model value.
--
-- Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the
-- equations, sources and bounds are those of the module `process::sink`. `motion` is whether the model holds
-- for such a piece at all. A drop that the shop timed (depth, time, density) replaces the published drag by
-- the piece's own.
--
-- Example: `sink_rate { piece_density_g_per_ml = 1.1, piece_volume_ml = 9.5, diameter_mm = 10,
--   water_temperature_celsius = 20, length_mm = 121, hook_mass_g = 2, hook_volume_ml = 0.25 }` gives `{
--   sink_rate_cm_per_s = 22.04104669853903, sink_rate_min_cm_per_s = 19.297542687585494, sink_rate_max_cm_per_s
--   = 30.86051085510933, motion = "swings", reynolds = 2196.2834650479926, drag_coefficient =
--   0.9083361655585607 }`.
-- @tparam table given
-- @tparam number given.piece_density_g_per_ml Density of the piece, its salt and voids counted. Unit: g/mL;
--   0.001 to 25.
-- @tparam number given.piece_volume_ml Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.diameter_mm Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
-- @tparam number given.water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
-- @tparam[opt] number given.length_mm Length of a stick, at least 2.01 diameters; not used for a ball. Unit:
--   mm; 1e-6 to 1e6. Default: none.
-- @tparam[opt] string given.shape Shape of the piece as it sinks: a stick sinks sideways. Default: a stick
--   where a length is given, else a ball. One of `stick`, `ball`.
-- @tparam[opt] number given.hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.hook_volume_ml Volume that hook and weight displace; give their mass too. Unit:
--   mL; 0 to 1e15. Default: 0.
-- @tparam[opt] number given.salinity_practical Practical salinity as a probe reads it, about 35 in the ocean;
--   give this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
-- @tparam[opt] number given.salinity_absolute Absolute salinity, mass of salt per mass of sea water (35 g/kg
--   is 0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
-- @tparam[opt] number given.density_uncertainty_g_per_ml Standard uncertainty of the density of the piece;
--   its bounds are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.
-- @tparam[opt] number given.depth_m Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none.
-- @tparam[opt] number given.drop_depth_m Depth of a timed drop, the piece let go just below the surface.
--   Unit: m; 1e-9 to 12000. Default: none.
-- @tparam[opt] number given.drop_time_s Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
-- @tparam[opt] number given.drop_density_g_per_ml Density of the piece that was dropped. Unit: g/mL; 0.001 to
--   25. Default: none.
-- @treturn table
-- @treturn number sink_rate_cm_per_s: Sink rate. Unit: cm/s.
-- @treturn number sink_rate_min_cm_per_s: Lower bound; 0 where the piece may hang or float. Unit: cm/s.
-- @treturn number sink_rate_max_cm_per_s: Upper bound. Unit: cm/s.
-- @treturn string motion: Whether it sinks straight: straight, may-swing or swings. One of `straight`,
--   `may-swing`, `swings`.
-- @treturn number reynolds: Reynolds number. Unit: 1.
-- @treturn number drag_coefficient: Drag coefficient, on length times diameter of a stick and the
--   cross-section of a ball. Unit: 1.
-- @treturn number sink_time_s: Time to the depth, let go at rest just below the surface. Unit: s. Nil where
--   there is none.
calculations.sink_rate = of("sink_rate", {
  { "piece_density_g_per_ml", "number" },
  { "piece_volume_ml", "number" },
  { "diameter_mm", "number" },
  { "water_temperature_celsius", "number" },
  { "length_mm", "number", optional = true },
  { "shape", "word", words = words.shape, optional = true },
  { "hook_mass_g", "number", optional = true },
  { "hook_volume_ml", "number", optional = true },
  { "salinity_practical", "number", optional = true },
  { "salinity_absolute", "number", optional = true },
  { "density_uncertainty_g_per_ml", "number", optional = true },
  { "depth_m", "number", optional = true },
  { "drop_depth_m", "number", optional = true },
  { "drop_time_s", "number", optional = true },
  { "drop_density_g_per_ml", "number", optional = true },
}, {
  { "sink_rate_cm_per_s", "number" },
  { "sink_rate_min_cm_per_s", "number" },
  { "sink_rate_max_cm_per_s", "number" },
  { "motion", "word", words = words.motion },
  { "reynolds", "number" },
  { "drag_coefficient", "number" },
  { "sink_time_s", "number" },
}, { input = true, result = true })

--- Density at which a piece sinks at a rate: the finished density to salt for.
--
-- Example: `density_for_sink_rate { sink_rate_cm_per_s = 22.04104669853903, piece_volume_ml = 9.5,
--   diameter_mm = 10, water_temperature_celsius = 20, length_mm = 121, hook_mass_g = 2, hook_volume_ml = 0.25
--   }` gives `1.0999999999999979`.
-- @tparam table given
-- @tparam number given.sink_rate_cm_per_s Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
-- @tparam number given.piece_volume_ml Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.diameter_mm Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
-- @tparam number given.water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
-- @tparam[opt] number given.length_mm Length of a stick, at least 2.01 diameters; not used for a ball. Unit:
--   mm; 1e-6 to 1e6. Default: none.
-- @tparam[opt] string given.shape Shape of the piece as it sinks: a stick sinks sideways. Default: a stick
--   where a length is given, else a ball. One of `stick`, `ball`.
-- @tparam[opt] number given.hook_mass_g Mass of hook and weight on a piece; give its volume too. Unit: g; 0
--   to 1e15. Default: 0.
-- @tparam[opt] number given.hook_volume_ml Volume that hook and weight displace; give their mass too. Unit:
--   mL; 0 to 1e15. Default: 0.
-- @tparam[opt] number given.salinity_practical Practical salinity as a probe reads it, about 35 in the ocean;
--   give this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
-- @tparam[opt] number given.salinity_absolute Absolute salinity, mass of salt per mass of sea water (35 g/kg
--   is 0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
-- @tparam[opt] number given.drop_depth_m Depth of a timed drop, the piece let go just below the surface.
--   Unit: m; 1e-9 to 12000. Default: none.
-- @tparam[opt] number given.drop_time_s Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
-- @tparam[opt] number given.drop_density_g_per_ml Density of the piece that was dropped. Unit: g/mL; 0.001 to
--   25. Default: none.
-- @treturn number Density of the piece, voids and salt counted. Unit: g/mL.
calculations.density_for_sink_rate = of("density_for_sink_rate", {
  { "sink_rate_cm_per_s", "number" },
  { "piece_volume_ml", "number" },
  { "diameter_mm", "number" },
  { "water_temperature_celsius", "number" },
  { "length_mm", "number", optional = true },
  { "shape", "word", words = words.shape, optional = true },
  { "hook_mass_g", "number", optional = true },
  { "hook_volume_ml", "number", optional = true },
  { "salinity_practical", "number", optional = true },
  { "salinity_absolute", "number", optional = true },
  { "drop_depth_m", "number", optional = true },
  { "drop_time_s", "number", optional = true },
  { "drop_density_g_per_ml", "number", optional = true },
}, {
  { "piece_density_g_per_ml", "number" },
}, { input = true, result = false })

--- Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.
--
-- Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore
-- scales do not convert into each other (ASTM D2240): all points are on one.
--
-- Example: `hardness { points = { { 0, 60 }, { 0.2, 40 } }, scale = "shore-00", softener_ratio = 0.1 }` gives
--   `50`.
-- @tparam table given
-- @tparam table given.points The shop's own measured points, by rising ratio: of each the ratio and the
--   durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per mass of
--   base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.
-- @tparam string given.scale The scale of the durometer. One of `shore-00`, `shore-a`.
-- @tparam number given.softener_ratio Softener or hardener, mass per mass of base; between the measured
--   points. Unit: 1; 0 to 100.
-- @treturn number Durometer reading. Unit: 1.
calculations.hardness = of("hardness", {
  { "points", "rows", count = "points_count", columns = 2, item = "pour_points_row" },
  { "scale", "word", words = words.scale },
  { "softener_ratio", "number" },
}, {
  { "hardness", "number" },
}, { input = false, result = false })

--- Ratio of softener or hardener for a hardness: the other way round.
--
-- Example: `softener_ratio { points = { { 0, 60 }, { 0.2, 40 } }, scale = "shore-00", hardness = 50 }` gives
--   `0.10000000000000005`.
-- @tparam table given
-- @tparam table given.points The shop's own measured points, by rising ratio: of each the ratio and the
--   durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per mass of
--   base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.
-- @tparam string given.scale The scale of the durometer. One of `shore-00`, `shore-a`.
-- @tparam number given.hardness Durometer reading. Unit: 1; 0 to 100.
-- @treturn number Mass per mass of base. Unit: 1.
calculations.softener_ratio = of("softener_ratio", {
  { "points", "rows", count = "points_count", columns = 2, item = "pour_points_row" },
  { "scale", "word", words = words.scale },
  { "hardness", "number" },
}, {
  { "softener_ratio", "number" },
}, { input = false, result = false })

--- Extra softener for a salted body, between the shop's own points.
--
-- Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone
-- cubic answers, outside it refuses.
--
-- Example: `salted_softener { salted_points = { { 0, 0 }, { 0.2, 0.1 } }, salt_of_base = 0.1 }` gives `0.05`.
-- @tparam table given
-- @tparam table given.salted_points The shop's own measured points, by rising salt: of each the salt and the
--   softener, mass per mass of base. 2 to 1000 of them. Each: Salt of a measured point, mass per mass of base.
--   Unit: 1; 0 to 10. Then: Softener that the shop adds at that salt, mass per mass of base. Unit: 1; 0 to 10.
-- @tparam number given.salt_of_base Salt, mass per mass of base; between the measured points. Unit: 1; 0 to
--   10.
-- @treturn number Softener on top of the unsalted body's, mass per mass of base. Unit: 1.
calculations.salted_softener = of("salted_softener", {
  { "salted_points", "rows", count = "salted_points_count", columns = 2, item = "pour_salted_points_row" },
  { "salt_of_base", "number" },
}, {
  { "softener_ratio", "number" },
}, { input = false, result = false })

--- Density of air-free water at 101.325 kPa, 0 to 40 °C.
--
-- Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.
--
-- Example: `water_density { water_temperature_celsius = 20 }` gives `0.9982067455596167`.
-- @tparam table given
-- @tparam number given.water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
-- @treturn number Density of the water. Unit: g/mL.
calculations.water_density = of("water_density", {
  { "water_temperature_celsius", "number" },
}, {
  { "density_g_per_ml", "number" },
}, { input = false, result = false })

--- Volume of a cavity from the reading of a balance for the water that it holds.
--
-- Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).
--
-- Example: `cavity_of_water { water_mass_g = 10, water_temperature_celsius = 20 }` gives
--   `10.028511692201585`.
-- @tparam table given
-- @tparam number given.water_mass_g Reading of the balance for the water in one cavity: filled less empty.
--   Unit: g; 1e-12 to 1e15.
-- @tparam number given.water_temperature_celsius Temperature of the water. Unit: °C; 0 to 40.
-- @tparam[opt] number given.air_pressure_kpa Air pressure at the balance, not reduced to sea level. Unit:
--   kPa; 45 to 110. Default: 101.325.
-- @treturn number Volume of the cavity. Unit: mL.
calculations.cavity_of_water = of("cavity_of_water", {
  { "water_mass_g", "number" },
  { "water_temperature_celsius", "number" },
  { "air_pressure_kpa", "number", optional = true },
}, {
  { "cavity_volume_ml", "number" },
}, { input = false, result = false })

--- Air pressure of the standard atmosphere at an altitude.
--
-- U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.
--
-- Example: `standard_pressure { altitude_m = 0 }` gives `101.325`.
-- @tparam table given
-- @tparam number given.altitude_m Height above sea level, as a map gives it; negative below it. Unit: m;
--   -5000 to 11000.
-- @treturn number Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
--   Unit: kPa.
calculations.standard_pressure = of("standard_pressure", {
  { "altitude_m", "number" },
}, {
  { "station_pressure_kpa", "number" },
}, { input = false, result = false })

--- Air pressure at the place itself from one that a weather report gives, reduced to sea level.
--
-- Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.
--
-- Example: `station_pressure { reported_pressure_kpa = 101.325, altitude_m = 0 }` gives `101.325`.
-- @tparam table given
-- @tparam number given.reported_pressure_kpa Air pressure as a weather report gives it, reduced to sea level;
--   needs the altitude. Unit: kPa; 85 to 110.
-- @tparam number given.altitude_m Height above sea level, as a map gives it; negative below it. Unit: m;
--   -5000 to 11000.
-- @treturn number Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
--   Unit: kPa.
calculations.station_pressure = of("station_pressure", {
  { "reported_pressure_kpa", "number" },
  { "altitude_m", "number" },
}, {
  { "station_pressure_kpa", "number" },
}, { input = false, result = false })

--- Volume of a pot in a vacuum, with the air that it holds.
--
-- Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge shows
-- it or as the pressure that is left; with a gauge the lowest pressure counts that its tolerance allows.
--
-- Example: `swollen_volume { liquid_volume_ml = 450, entrained_air = 0.1, station_pressure_kpa = 100,
--   absolute_pressure_kpa = 10 }` gives `{ swollen_volume_ml = 950, standing_volume_ml = 500,
--   absolute_pressure_kpa = 10 }`.
-- @tparam table given
-- @tparam number given.liquid_volume_ml Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.entrained_air Share of air in the mix by volume, under the outside pressure. Unit: 1;
--   0 to below 1.
-- @tparam number given.station_pressure_kpa Air pressure at the place itself, not reduced to sea level. Unit:
--   kPa; 22.6 to 178.
-- @tparam[opt] number given.gauge_vacuum_kpa Reading of a vacuum gauge, which counts down from the air
--   outside; give this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
-- @tparam[opt] number given.absolute_pressure_kpa Pressure that is left in the chamber, counted from nothing
--   at all; give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
-- @tparam[opt] number given.dial_tolerance_kpa How far the vacuum gauge may be off to either side; the
--   default, 0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
-- @tparam[opt] number given.vapor_pressure_kpa Vapor pressure of the liquid; 0 for a dry plasticizer. Below
--   the pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.
-- @tparam[opt] number given.damp_at_celsius Temperature of a damp pot, whose water boils under vacuum; omit
--   it for a dry pot. Unit: °C; 0.01 to 200. Default: none.
-- @treturn table
-- @treturn number swollen_volume_ml: Volume in the vacuum. Unit: mL.
-- @treturn number standing_volume_ml: Volume before, bubbles included. Unit: mL.
-- @treturn number absolute_pressure_kpa: Pressure that is left in the chamber. Unit: kPa.
calculations.swollen_volume = of("swollen_volume", {
  { "liquid_volume_ml", "number" },
  { "entrained_air", "number" },
  { "station_pressure_kpa", "number" },
  { "gauge_vacuum_kpa", "number", optional = true },
  { "absolute_pressure_kpa", "number", optional = true },
  { "dial_tolerance_kpa", "number", optional = true },
  { "vapor_pressure_kpa", "number", optional = true },
  { "damp_at_celsius", "number", optional = true },
}, {
  { "swollen_volume_ml", "number" },
  { "standing_volume_ml", "number" },
  { "absolute_pressure_kpa", "number" },
}, { input = true, result = true })

--- Share of air in a pot, from how high it was seen to rise in a vacuum.
--
-- With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and after:
-- φ/(1 − φ) = (f − 1)/(b₂ − f b₁).
--
-- Example: `entrained_air { rise = 1.9, station_pressure_kpa = 100, absolute_pressure_kpa = 10 }` gives
--   `0.09999999999999999`.
-- @tparam table given
-- @tparam number given.rise Level of a pot in the vacuum over its level before; give this or the entrained
--   air. Unit: 1; 1 to 1000.
-- @tparam number given.station_pressure_kpa Air pressure at the place itself, not reduced to sea level. Unit:
--   kPa; 22.6 to 178.
-- @tparam[opt] number given.gauge_vacuum_kpa Reading of a vacuum gauge, which counts down from the air
--   outside; give this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
-- @tparam[opt] number given.absolute_pressure_kpa Pressure that is left in the chamber, counted from nothing
--   at all; give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
-- @tparam[opt] number given.dial_tolerance_kpa How far the vacuum gauge may be off to either side; the
--   default, 0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
-- @tparam[opt] number given.vapor_pressure_kpa Vapor pressure of the liquid; 0 for a dry plasticizer. Below
--   the pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.
-- @tparam[opt] number given.damp_at_celsius Temperature of a damp pot, whose water boils under vacuum; omit
--   it for a dry pot. Unit: °C; 0.01 to 200. Default: none.
-- @treturn number Share of air in the mix by volume, under the outside pressure. Unit: 1.
calculations.entrained_air = of("entrained_air", {
  { "rise", "number" },
  { "station_pressure_kpa", "number" },
  { "gauge_vacuum_kpa", "number", optional = true },
  { "absolute_pressure_kpa", "number", optional = true },
  { "dial_tolerance_kpa", "number", optional = true },
  { "vapor_pressure_kpa", "number", optional = true },
  { "damp_at_celsius", "number", optional = true },
}, {
  { "entrained_air", "number" },
}, { input = true, result = false })

--- Vessel for a pot in a vacuum, and how to fill one that is too small.
--
-- The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer gives
-- the level to fill to, on a mark where it has any, and the number of fills.
--
-- Example: `degas_vessel { liquid_volume_ml = 450, entrained_air = 0.1, station_pressure_kpa = 100,
--   absolute_pressure_kpa = 10, vessel_brim_ml = 600, vessel_mark_ml = 50 }` gives `{ vessel_volume_ml =
--   1055.5555555555554, fill_mark_ml = 250, fills = 2, fill_level_ml = 250, fill_swollen_ml = 475 }`.
-- @tparam table given
-- @tparam number given.liquid_volume_ml Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.entrained_air Share of air in the mix by volume, under the outside pressure. Unit: 1;
--   0 to below 1.
-- @tparam number given.station_pressure_kpa Air pressure at the place itself, not reduced to sea level. Unit:
--   kPa; 22.6 to 178.
-- @tparam[opt] number given.gauge_vacuum_kpa Reading of a vacuum gauge, which counts down from the air
--   outside; give this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
-- @tparam[opt] number given.absolute_pressure_kpa Pressure that is left in the chamber, counted from nothing
--   at all; give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
-- @tparam[opt] number given.dial_tolerance_kpa How far the vacuum gauge may be off to either side; the
--   default, 0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
-- @tparam[opt] number given.vapor_pressure_kpa Vapor pressure of the liquid; 0 for a dry plasticizer. Below
--   the pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.
-- @tparam[opt] number given.damp_at_celsius Temperature of a damp pot, whose water boils under vacuum; omit
--   it for a dry pot. Unit: °C; 0.01 to 200. Default: none.
-- @tparam[opt] number given.vessel_spare Share of the vessel that stays empty. Unit: 1; 0 to below 1.
--   Default: 0.1.
-- @tparam[opt] number given.vessel_brim_ml Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. It
--   may be omitted.
-- @tparam[opt] number given.vessel_mark_ml Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15.
--   Default: any level.
-- @treturn table
-- @treturn number vessel_volume_ml: Volume to the brim of a vessel that takes the pot at once. Unit: mL.
-- @treturn number fill_mark_ml: Level to fill the given vessel to at most, bubbles included. Unit: mL. Nil
--   where there is none.
-- @treturn number fills: Number of fills of the given vessel. Nil where there is none.
-- @treturn number fill_level_ml: Level of each fill, shared out evenly, bubbles included. Unit: mL. Nil where
--   there is none.
-- @treturn number fill_swollen_ml: Volume of an even fill in the vacuum. Unit: mL. Nil where there is none.
calculations.degas_vessel = of("degas_vessel", {
  { "liquid_volume_ml", "number" },
  { "entrained_air", "number" },
  { "station_pressure_kpa", "number" },
  { "gauge_vacuum_kpa", "number", optional = true },
  { "absolute_pressure_kpa", "number", optional = true },
  { "dial_tolerance_kpa", "number", optional = true },
  { "vapor_pressure_kpa", "number", optional = true },
  { "damp_at_celsius", "number", optional = true },
  { "vessel_spare", "number", optional = true },
  { "vessel_brim_ml", "number", optional = true },
  { "vessel_mark_ml", "number", optional = true },
}, {
  { "vessel_volume_ml", "number" },
  { "fill_mark_ml", "number" },
  { "fills", "count" },
  { "fill_level_ml", "number" },
  { "fill_swollen_ml", "number" },
}, { input = true, result = true })

--- Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the
--- film.
--
-- A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.
--
-- Example: `flake_count { cut = "1 mm square", thickness_um = 50, film_density_g_per_ml = 1.4, flake_dose_g =
--   0.7 }` gives `{ particles = 10000, area_cm2 = 99.99999999999999 }`.
-- @tparam table given
-- @tparam string given.cut Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm
--   square`. 0.05 to 6.35 mm.
-- @tparam number given.thickness_um Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
-- @tparam number given.film_density_g_per_ml Density of the film that the flake is cut from. Unit: g/mL;
--   0.001 to 25.
-- @tparam number given.flake_dose_g Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
-- @treturn table
-- @treturn number particles: Number of particles, not rounded. Unit: 1.
-- @treturn number area_cm2: Area of film, one face of every particle. Unit: cm2.
calculations.flake_count = of("flake_count", {
  { "cut", "text" },
  { "thickness_um", "number" },
  { "film_density_g_per_ml", "number" },
  { "flake_dose_g", "number" },
}, {
  { "particles", "number" },
  { "area_cm2", "number" },
}, { input = false, result = true })

--- Dose of another flake in place of one, with as much area or as many particles.
--
-- The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives both.
--
-- Example: `flake_swap { cut = "1 mm square", thickness_um = 50, film_density_g_per_ml = 1.4, flake_dose_g =
--   0.7, other_cut = "0.5 mm square", other_thickness_um = 50, other_film_density_g_per_ml = 1.4,
--   other_as_scooped_g_per_ml = 0.35 }` gives `{ mass_g = 0.7, scoop_ml = 2, count_ratio = 4, area_ratio = 1
--   }`.
-- @tparam table given
-- @tparam string given.cut Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm
--   square`. 0.05 to 6.35 mm.
-- @tparam number given.thickness_um Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
-- @tparam number given.film_density_g_per_ml Density of the film that the flake is cut from. Unit: g/mL;
--   0.001 to 25.
-- @tparam number given.flake_dose_g Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
-- @tparam string given.other_cut Size and shape of the other flake. 0.05 to 6.35 mm.
-- @tparam number given.other_thickness_um Thickness of the film of the other flake; below the size of its
--   cut. Unit: µm; 1e-3 to 6350.
-- @tparam number given.other_film_density_g_per_ml Density of the film of the other flake. Unit: g/mL; 0.001
--   to 25.
-- @tparam[opt] number given.other_as_scooped_g_per_ml Bulk density of the other flake, level in the spoon.
--   Unit: g/mL; 0.001 to 25. Default: none.
-- @tparam[opt] string given.alike What the two doses of flake have in common: the number of particles or the
--   area of film. Default: area. One of `count`, `area`.
-- @treturn table
-- @treturn number mass_g: Mass of the other flake. Unit: g.
-- @treturn number scoop_ml: Volume to scoop of it, where its bulk density is given. Unit: mL. Nil where there
--   is none.
-- @treturn number count_ratio: Particles of the other dose over those of the first. Unit: 1.
-- @treturn number area_ratio: Area of the other dose over that of the first. Unit: 1.
calculations.flake_swap = of("flake_swap", {
  { "cut", "text" },
  { "thickness_um", "number" },
  { "film_density_g_per_ml", "number" },
  { "flake_dose_g", "number" },
  { "other_cut", "text" },
  { "other_thickness_um", "number" },
  { "other_film_density_g_per_ml", "number" },
  { "other_as_scooped_g_per_ml", "number", optional = true },
  { "alike", "word", words = words.alike, optional = true },
}, {
  { "mass_g", "number" },
  { "scoop_ml", "number" },
  { "count_ratio", "number" },
  { "area_ratio", "number" },
}, { input = true, result = true })

--- Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).
--
-- ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.
--
-- Example: `color_difference { lightness = 50, a = 2.6772, b = -79.7751, other_lightness = 50, other_a = 0,
--   other_b = -82.7485 }` gives `2.042459680156571`.
-- @tparam table given
-- @tparam number given.lightness L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100.
-- @tparam number given.a a* of the color: green below 0, red above. Unit: 1; -200 to 200.
-- @tparam number given.b b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200.
-- @tparam number given.other_lightness L* of the other color. Unit: 1; 0 to 100.
-- @tparam number given.other_a a* of the other color. Unit: 1; -200 to 200.
-- @tparam number given.other_b b* of the other color. Unit: 1; -200 to 200.
-- @treturn number ΔE₀₀. Unit: 1.
calculations.color_difference = of("color_difference", {
  { "lightness", "number" },
  { "a", "number" },
  { "b", "number" },
  { "other_lightness", "number" },
  { "other_a", "number" },
  { "other_b", "number" },
}, {
  { "difference", "number" },
}, { input = false, result = false })

--- Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.
--
-- Between two readings the temperature is taken as straight. The activation energy is the supplier's;
-- published ones of PVC are 117.5 to 170 kJ/mol.
--
-- Example: `equivalent_time { readings = { { 0, 175 }, { 600, 175 } }, activation_energy_kj_per_mol = 120,
--   reference_temperature_celsius = 175 }` gives `600`.
-- @tparam table given
-- @tparam table given.readings Temperatures in the order of time, taken as straight between. 2 to 100000 of
--   them. Each: Time of a reading, after that of the one before. Unit: s; 0 to 1e15. Then: Temperature of a
--   reading. Unit: °C; -73 to 427.
-- @tparam number given.activation_energy_kj_per_mol Activation energy of the decay in the heat; state its
--   source in a book. Unit: kJ/mol; 10 to 500.
-- @tparam number given.reference_temperature_celsius Temperature at which the time is counted. Unit: °C; -73
--   to 427.
-- @treturn number Equivalent time. Unit: s.
calculations.equivalent_time = of("equivalent_time", {
  { "readings", "rows", count = "readings_count", columns = 2, item = "pour_readings_row" },
  { "activation_energy_kj_per_mol", "number" },
  { "reference_temperature_celsius", "number" },
}, {
  { "equivalent_time_s", "number" },
}, { input = false, result = false })

--- Heat budget that is left of a pot, in equivalent time at the reference temperature.
--
-- More stabilizer than the budget is stated for buys the extra time that its maker states; without that
-- figure it is refused.
--
-- Example: `budget_left { heat_budget_s = 1800, equivalent_time_s = 600 }` gives `{ budget_s = 1800, left_s =
--   1200, overspent_s = 0 }`.
-- @tparam table given
-- @tparam number given.heat_budget_s Time at the reference temperature that the plastisol withstands. Unit:
--   s; 1e-6 to 1e15.
-- @tparam number given.equivalent_time_s Equivalent time that the pot has spent so far, at the temperature of
--   its budget. Unit: s; 0 to 1e15.
-- @tparam[opt] number given.budget_with Stabilizer that the heat budget is stated for, by mass of base. Unit:
--   1; 0 to 1. Default: 0.
-- @tparam[opt] number given.stabilizer_dose Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default:
--   as `budget_with`.
-- @tparam[opt] number given.extra_time_s Equivalent time that more of the stabilizer buys, per mass of it per
--   mass of base: 30000 s is 5 min for every 1 %. Unit: s; 1e-6 to 1e15. Default: none.
-- @tparam[opt] number given.extra_most Highest dose of stabilizer for which the extra time is known, by mass
--   of base. Unit: 1; 0 to 1. Default: none.
-- @treturn table
-- @treturn number budget_s: Budget at this dose of stabilizer. Unit: s.
-- @treturn number left_s: Time that is left; 0 where more was spent. Unit: s.
-- @treturn number overspent_s: Time that was spent beyond the budget; 0 where it was not. Unit: s.
calculations.budget_left = of("budget_left", {
  { "heat_budget_s", "number" },
  { "equivalent_time_s", "number" },
  { "budget_with", "number", optional = true },
  { "stabilizer_dose", "number", optional = true },
  { "extra_time_s", "number", optional = true },
  { "extra_most", "number", optional = true },
}, {
  { "budget_s", "number" },
  { "left_s", "number" },
  { "overspent_s", "number" },
}, { input = false, result = true })

--- Heating time of a pot in the oven, without a break, by the shop's own timings.
--
-- t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module
-- `process::heat`). An amount of more than 1.6 times the timed ones is refused. Without timings the rated
-- power gives a first guess.
--
-- Example: `heat_time { pot_mass_g = 300, specific_heat_j_per_g_k = 2, heated_from_celsius = 20,
--   heated_to_celsius = 170, timings = { { 200, 20, 120, 80 }, { 400, 20, 120, 160 } } }` gives `{ heat_time_s
--   = 180, heat_time_uncertainty_s = 13.46996659238619, power_w = 500 }`.
-- @tparam table given
-- @tparam number given.pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
-- @tparam number given.specific_heat_j_per_g_k Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1
--   to 10.
-- @tparam number given.heated_from_celsius The temperature before heating. Unit: °C; -73 to 427.
-- @tparam number given.heated_to_celsius The temperature after heating, above that before. Unit: °C; -73 to
--   427.
-- @tparam[opt] table given.timings Heatings that the shop has timed, all at one setting: of each the mass of
--   the mix, the temperatures before and after and the time; needed without the rated power. 1 to 1000 of them.
--   Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15. Then: Temperature before a
--   timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed heating, stirred; above that before.
--   Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating. Unit: s; 1e-3 to 1e9.
-- @tparam[opt] number given.oven_power_w Rated power of the oven, its output at full power: a first guess,
--   not used once there are timings; needed without them. Unit: W; 50 to 10000. Default: none.
-- @tparam[opt] number given.setting Setting of the oven, as a share of full power. Unit: 1; above 0 to 1.
--   Default: that of the timings.
-- @tparam[opt] number given.specific_heat_rise_per_kelvin Rise of the specific heat per kelvin, as a share of
--   that at 25 °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
-- @tparam[opt] number given.timed_specific_heat_j_per_g_k Specific heat of what was timed. Unit: J/(g.K); 0.1
--   to 10. Default: as `specific_heat_j_per_g_k`.
-- @tparam[opt] number given.vessel_mass_g Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the
--   timings.
-- @tparam[opt] number given.vessel_specific_heat_j_per_g_k Specific heat of the vessel. Unit: J/(g.K); 0.1 to
--   10. Default: none.
-- @treturn table
-- @treturn number heat_time_s: Heating time. Unit: s.
-- @treturn number heat_time_uncertainty_s: Its standard uncertainty for one more heating. Unit: s.
-- @treturn number power_w: Power that reaches mix and vessel. Unit: W.
-- @treturn number beyond: How far the amount is outside those that were timed, as a factor; none inside them.
--   Unit: 1. Nil where there is none.
calculations.heat_time = of("heat_time", {
  { "pot_mass_g", "number" },
  { "specific_heat_j_per_g_k", "number" },
  { "heated_from_celsius", "number" },
  { "heated_to_celsius", "number" },
  { "timings", "rows", count = "timings_count", columns = 4, item = "pour_timings_row", optional = true },
  { "oven_power_w", "number", optional = true },
  { "setting", "number", optional = true },
  { "specific_heat_rise_per_kelvin", "number", optional = true },
  { "timed_specific_heat_j_per_g_k", "number", optional = true },
  { "vessel_mass_g", "number", optional = true },
  { "vessel_specific_heat_j_per_g_k", "number", optional = true },
}, {
  { "heat_time_s", "number" },
  { "heat_time_uncertainty_s", "number" },
  { "power_w", "number" },
  { "beyond", "number" },
}, { input = true, result = true })

--- The next burst of the oven for a reading of the thermometer.
--
-- No burst can carry the pot over its window, by all the power that the timings make plausible and the error
-- of the thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system
-- of measures gives the scale of the thermometer, on whole degrees of which the limits are.
--
-- Example: `next_burst { pot_mass_g = 300, specific_heat_j_per_g_k = 2, reading_celsius = 20,
--   window_bottom_celsius = 160, window_top_celsius = 180, timings = { { 200, 20, 120, 80 }, { 400, 20, 120,
--   160 } }, measures = "metric" }` gives `{ burst_s = 90, expected_celsius = 95, shoot_from_celsius = 162,
--   shoot_to_celsius = 178, bursts = 4, oven_time_s = 175 }`.
-- @tparam table given
-- @tparam number given.pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
-- @tparam number given.specific_heat_j_per_g_k Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1
--   to 10.
-- @tparam number given.reading_celsius Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427.
-- @tparam number given.window_bottom_celsius Lowest temperature at which the mix is shot, its material's own.
--   Unit: °C; -73 to 427.
-- @tparam number given.window_top_celsius Highest temperature at which the mix is shot, its material's own;
--   above the lowest. Unit: °C; -73 to 427.
-- @tparam[opt] table given.timings Heatings that the shop has timed, all at one setting: of each the mass of
--   the mix, the temperatures before and after and the time; needed without the rated power. 1 to 1000 of them.
--   Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15. Then: Temperature before a
--   timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed heating, stirred; above that before.
--   Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating. Unit: s; 1e-3 to 1e9.
-- @tparam[opt] number given.oven_power_w Rated power of the oven, its output at full power: a first guess,
--   not used once there are timings; needed without them. Unit: W; 50 to 10000. Default: none.
-- @tparam[opt] number given.setting Setting of the oven, as a share of full power. Unit: 1; above 0 to 1.
--   Default: that of the timings.
-- @tparam[opt] number given.specific_heat_rise_per_kelvin Rise of the specific heat per kelvin, as a share of
--   that at 25 °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
-- @tparam[opt] number given.timed_specific_heat_j_per_g_k Specific heat of what was timed. Unit: J/(g.K); 0.1
--   to 10. Default: as `specific_heat_j_per_g_k`.
-- @tparam[opt] number given.vessel_mass_g Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the
--   timings.
-- @tparam[opt] number given.vessel_specific_heat_j_per_g_k Specific heat of the vessel. Unit: J/(g.K); 0.1 to
--   10. Default: none.
-- @tparam[opt] number given.aim_celsius The temperature to heat to. Unit: °C; in the shot window. Default:
--   the middle of the window.
-- @tparam[opt] number given.thermometer_kelvin How far the thermometer may be off. Unit: K; 0 to 100.
--   Default: 2.
-- @tparam[opt] number given.burst_step_s Shortest burst that can be set, of which the others are multiples.
--   Unit: s; 1e-3 to 3600. Default: 5.
-- @tparam[opt] number given.longest_burst_s Longest burst without a stir, at least the shortest. Unit: s;
--   1e-3 to 3600. Default: 120.
-- @tparam[opt] number given.oven_turn_s How long a turn of full power and none takes at a setting below full
--   power. Unit: s; 0 to 3600. Default: 30.
-- @tparam[opt] string given.measures The system of measures: what a cup, a spoon and a fluid ounce hold.
--   Default: us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
-- @treturn table
-- @treturn number burst_s: The next burst; none where the pot is hot enough. Unit: s. Nil where there is
--   none.
-- @treturn number expected_celsius: The expected reading after it. Unit: °C. Nil where there is none.
-- @treturn number shoot_from_celsius: Shoot from this reading on. Unit: °C.
-- @treturn number shoot_to_celsius: Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.
-- @treturn number bursts: Number of bursts that are expected from this reading on.
-- @treturn number oven_time_s: Time that the oven is expected to run in them. Unit: s.
calculations.next_burst = of("next_burst", {
  { "pot_mass_g", "number" },
  { "specific_heat_j_per_g_k", "number" },
  { "reading_celsius", "number" },
  { "window_bottom_celsius", "number" },
  { "window_top_celsius", "number" },
  { "timings", "rows", count = "timings_count", columns = 4, item = "pour_timings_row", optional = true },
  { "oven_power_w", "number", optional = true },
  { "setting", "number", optional = true },
  { "specific_heat_rise_per_kelvin", "number", optional = true },
  { "timed_specific_heat_j_per_g_k", "number", optional = true },
  { "vessel_mass_g", "number", optional = true },
  { "vessel_specific_heat_j_per_g_k", "number", optional = true },
  { "aim_celsius", "number", optional = true },
  { "thermometer_kelvin", "number", optional = true },
  { "burst_step_s", "number", optional = true },
  { "longest_burst_s", "number", optional = true },
  { "oven_turn_s", "number", optional = true },
  { "measures", "word", words = words.measures, optional = true },
}, {
  { "burst_s", "number" },
  { "expected_celsius", "number" },
  { "shoot_from_celsius", "number" },
  { "shoot_to_celsius", "number" },
  { "bursts", "count" },
  { "oven_time_s", "number" },
}, { input = true, result = true })

--- How long a pot stays hot, by a pot that was watched to cool.
--
-- Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix than
-- was watched cools faster (module `process::heat`).
--
-- Example: `stays_hot { pot_mass_g = 500, hot_from_celsius = 170, hot_to_celsius = 130, watched_mass_g = 500,
--   watched_from_celsius = 170, watched_to_celsius = 150, watched_time_s = 300, room_celsius = 22, stood_s =
--   600 }` gives `{ time_constant_s = 2066.371724164207, hot_for_s = 651.0745655967437, half_full_s =
--   511.5585872545843, after_celsius = 132.7027027027027 }`.
-- @tparam table given
-- @tparam number given.pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
-- @tparam number given.hot_from_celsius Temperature after the last burst. Unit: °C; -73 to 427.
-- @tparam number given.hot_to_celsius Temperature down to which the pot can be shot, above that of the room.
--   Unit: °C; -73 to 427.
-- @tparam number given.watched_mass_g Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to
--   1e15.
-- @tparam number given.watched_from_celsius First reading of a pot that was watched to cool, from its second
--   minute on, stirred. Unit: °C; -73 to 427.
-- @tparam number given.watched_to_celsius Second reading of a pot that was watched to cool, stirred; below
--   the first and above that of the room. Unit: °C; -73 to 427.
-- @tparam number given.watched_time_s Time between the two readings of a pot that was watched to cool. Unit:
--   s; 1e-3 to 1e9.
-- @tparam[opt] number given.room_celsius Temperature of the room, below all others. Unit: °C; -73 to 427.
--   Default: 20.
-- @tparam[opt] number given.stood_s How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then
--   is, is not calculated.
-- @treturn table
-- @treturn number time_constant_s: Time in which the distance to the temperature of the room falls to 37 %.
--   Unit: s.
-- @treturn number hot_for_s: Time down to the lower temperature, with all of the mix in the pot. Unit: s.
-- @treturn number half_full_s: The same with half of it. Unit: s.
-- @treturn number after_celsius: Temperature after the time that the pot has stood. Unit: °C. Nil where there
--   is none.
calculations.stays_hot = of("stays_hot", {
  { "pot_mass_g", "number" },
  { "hot_from_celsius", "number" },
  { "hot_to_celsius", "number" },
  { "watched_mass_g", "number" },
  { "watched_from_celsius", "number" },
  { "watched_to_celsius", "number" },
  { "watched_time_s", "number" },
  { "room_celsius", "number", optional = true },
  { "stood_s", "number", optional = true },
}, {
  { "time_constant_s", "number" },
  { "hot_for_s", "number" },
  { "half_full_s", "number" },
  { "after_celsius", "number" },
}, { input = true, result = true })

--- The heats that the shots of a pot take, and how long they all take.
--
-- A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is
-- heated again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot
-- can be made every max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module
-- `process::clock`).
--
-- Example: `pot_heats { pot_mass_g = 1200, clock_runs = { { 22, 48, 50, 0, 1 } }, hot_for_s = 480,
--   oven_time_s = 240 }` gives `{ reheats = 2, first_shots = 9, shooting_time_s = 1100, total_time_s = 1820 }`.
-- @tparam table given
-- @tparam number given.pot_mass_g Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
-- @tparam table given.clock_runs The pot's shots in their order, like ones together: of each run the number
--   of shots, the mass that one takes, the working time for one, the time that it sets and the number of molds
--   in turn. At most 100 000 shots. 1 to 1000 of them. Each: Number of like shots in a row; at most 100 000
--   from one pot. Unit: 1; 1 to 100000. Then: Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. Then:
--   Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how often a shot
--   can be made is not calculated. Then: Time that a shot sets in its mold. Unit: s; 0 to 1e6. Default: 0.
--   Then: Number of such molds that are shot in turn. Unit: 1; 1 to 1000000. Default: 1.
-- @tparam[opt] number given.hot_for_s How long the pot stays hot at one heat, from the last burst to the last
--   shot. Unit: s; 1e-3 to 1e15. Default: from how it cools.
-- @tparam[opt] number given.clock_from_celsius Temperature after the last burst; needed with `cools`. Unit:
--   °C; -73 to 427. Default: none.
-- @tparam[opt] number given.clock_to_celsius Temperature down to which the pot can be shot, above that of the
--   room; needed with `cools`. Unit: °C; -73 to 427. Default: none.
-- @tparam[opt] number given.watched_mass_g Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12
--   to 1e15. It may be omitted.
-- @tparam[opt] number given.watched_from_celsius First reading of a pot that was watched to cool, from its
--   second minute on, stirred. Unit: °C; -73 to 427. It may be omitted.
-- @tparam[opt] number given.watched_to_celsius Second reading of a pot that was watched to cool, stirred;
--   below the first and above that of the room. Unit: °C; -73 to 427. It may be omitted.
-- @tparam[opt] number given.watched_time_s Time between the two readings of a pot that was watched to cool.
--   Unit: s; 1e-3 to 1e9. It may be omitted.
-- @tparam[opt] number given.room_celsius Temperature of the room, below all others. Unit: °C; -73 to 427.
--   Default: 20.
-- @tparam[opt] number given.oven_time_s How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it
--   is not counted.
-- @treturn table
-- @treturn number reheats: Number of reheats: the heats but for the first.
-- @treturn number first_shots: Number of shots in the first heat.
-- @treturn number shooting_time_s: Time of all shots, without the oven. Unit: s.
-- @treturn number total_time_s: Time of all shots and of the oven for each heat, where that is given. Unit:
--   s. Nil where there is none.
calculations.pot_heats = of("pot_heats", {
  { "pot_mass_g", "number" },
  { "clock_runs", "rows", count = "clock_runs_count", columns = 5, item = "pour_clock_runs_row" },
  { "hot_for_s", "number", optional = true },
  { "clock_from_celsius", "number", optional = true },
  { "clock_to_celsius", "number", optional = true },
  { "watched_mass_g", "number", optional = true },
  { "watched_from_celsius", "number", optional = true },
  { "watched_to_celsius", "number", optional = true },
  { "watched_time_s", "number", optional = true },
  { "room_celsius", "number", optional = true },
  { "oven_time_s", "number", optional = true },
}, {
  { "reheats", "count" },
  { "first_shots", "count" },
  { "shooting_time_s", "number" },
  { "total_time_s", "number" },
}, { input = true, result = true })

--- How long a shot sets in a metal mold, and how often one can be made.
--
-- The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold: t
-- = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as
-- the shot leaves it, where its mass is given.
--
-- Example: `setting_time { section_shape = "rod", section_thickness_mm = 9, shot_at_celsius = 165, hands_s =
--   50, molds = 2 }` gives `{ setting_time_s = 104.20464250602106, setting_time_min_s = 83.36371400481686,
--   setting_time_max_s = 128.25186769971822, shot_every_s = 77.10232125301053 }`.
-- @tparam table given
-- @tparam string given.section_shape Shape of the thickest part of a piece. One of `rod`, `plate`, `ball`.
-- @tparam number given.section_thickness_mm Thickness of the thickest part of a piece; of a rod or a ball its
--   diameter. Unit: mm; 0.2 to 200.
-- @tparam number given.shot_at_celsius Temperature at which it is shot, above that at which it is taken out.
--   Unit: °C; -73 to 427.
-- @tparam[opt] number given.mold_at_celsius Temperature of the mold before the shot, below that at which a
--   piece is taken out. Unit: °C; -73 to 427. Default: 30.
-- @tparam[opt] number given.take_out_celsius Temperature at which a piece can be taken out. Unit: °C; -73 to
--   427. Default: 50.
-- @tparam[opt] string given.piece_point The point of a piece whose temperature counts. Default: center. One
--   of `center`, `mean`.
-- @tparam[opt] number given.diffusivity_m2_per_s Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to
--   1e-5. Default: 8.0e-8 m2/s, from 6.5e-8 to 1.0e-7.
-- @tparam[opt] number given.shot_mass_g Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be
--   omitted.
-- @tparam[opt] number given.shot_specific_heat_j_per_g_k Specific heat of the plastic. Unit: J/(g.K); 0.1 to
--   10. Default: 1.9.
-- @tparam[opt] number given.mold_mass_g Mass of the mold. Without it the mold is taken to keep its
--   temperature; with it the mass of the shot is needed. Unit: g; 1e-12 to 1e15. Default: none.
-- @tparam[opt] number given.mold_specific_heat_j_per_g_k Specific heat of the mold; the default is that of
--   aluminum. Unit: J/(g.K); 0.1 to 10. Default: 0.897.
-- @tparam[opt] number given.hands_s Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to
--   1e15. Default: how often a shot can be made is not calculated.
-- @tparam[opt] number given.molds Number of such molds that are shot in turn. 1 to 1000000. Default: 1.
-- @treturn table
-- @treturn number setting_time_s: Setting time. Unit: s.
-- @treturn number setting_time_min_s: The same with the highest diffusivity of soft PVC. Unit: s.
-- @treturn number setting_time_max_s: The same with the lowest. Unit: s.
-- @treturn number warms_kelvin: How much one shot warms the mold, where its mass is given. Unit: K. Nil where
--   there is none.
-- @treturn number in_a_row: Number of shots in a row before the mold is too warm, nothing lost between them;
--   none where its mass is not given, or it goes on. Nil where there is none.
-- @treturn number shot_every_s: Time from one shot to the next, where the working time is given. Unit: s. Nil
--   where there is none.
calculations.setting_time = of("setting_time", {
  { "section_shape", "word", words = words.section_shape },
  { "section_thickness_mm", "number" },
  { "shot_at_celsius", "number" },
  { "mold_at_celsius", "number", optional = true },
  { "take_out_celsius", "number", optional = true },
  { "piece_point", "word", words = words.piece_point, optional = true },
  { "diffusivity_m2_per_s", "number", optional = true },
  { "shot_mass_g", "number", optional = true },
  { "shot_specific_heat_j_per_g_k", "number", optional = true },
  { "mold_mass_g", "number", optional = true },
  { "mold_specific_heat_j_per_g_k", "number", optional = true },
  { "hands_s", "number", optional = true },
  { "molds", "count", optional = true },
}, {
  { "setting_time_s", "number" },
  { "setting_time_min_s", "number" },
  { "setting_time_max_s", "number" },
  { "warms_kelvin", "number" },
  { "in_a_row", "count" },
  { "shot_every_s", "number" },
}, { input = true, result = true })

--- How often to stir a melt with salt in it, and how fast the salt settles.
--
-- Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that
-- passes a sieve (module `process::settling`). Stir before the top share of the depth is without grains: t =
-- share · depth/v.
--
-- Example: `stir_every { grain_mm = 0.3, grain_density_g_per_ml = 2.165, melt_density_g_per_ml = 0.93,
--   melt_depth_mm = 80, melt_viscosity_min_mpa_s = 500, melt_viscosity_max_mpa_s = 1000 }` gives `{
--   stir_every_s = 46.358618363896404, stir_every_max_s = 92.69906432655615, settling_min_cm_per_s =
--   0.008630076320746836, settling_max_cm_per_s = 0.017256769684556247 }`.
-- @tparam table given
-- @tparam number given.grain_mm Size of a grain of salt: the opening of a sieve that it just passes. Unit:
--   mm; 0.001 to 50.
-- @tparam number given.grain_density_g_per_ml True density of the grains, above that of the melt. Unit: g/mL;
--   0.001 to 25.
-- @tparam number given.melt_density_g_per_ml Density of the melt, hot. Unit: g/mL; 0.001 to 25.
-- @tparam number given.melt_depth_mm Depth of the melt in its cup. Unit: mm; 0.1 to 10000.
-- @tparam[opt] number given.melt_viscosity_min_mpa_s Lowest viscosity that the melt may have at shot
--   temperature. Where none is known, the defaults of both span what such melts may have. Unit: mPa.s; 0.1 to
--   1e7. Default: 50.
-- @tparam[opt] number given.melt_viscosity_max_mpa_s Highest viscosity that the melt may have at shot
--   temperature, at least the lowest. Unit: mPa.s; 0.1 to 1e7. Default: 5000.
-- @tparam[opt] number given.solids_share Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0
--   to 0.4. Default: 0.
-- @tparam[opt] number given.unstirred Share of the depth that may be without grains before it is stirred.
--   Unit: 1; 0.001 to 1. Default: 0.1.
-- @treturn table
-- @treturn number stir_every_s: How often to stir, to be safe: in the thinnest melt. Unit: s.
-- @treturn number stir_every_max_s: How often is enough in the thickest melt. Unit: s.
-- @treturn number settling_min_cm_per_s: Speed of the grains in the thickest melt. Unit: cm/s.
-- @treturn number settling_max_cm_per_s: Speed of the grains in the thinnest melt. Unit: cm/s.
calculations.stir_every = of("stir_every", {
  { "grain_mm", "number" },
  { "grain_density_g_per_ml", "number" },
  { "melt_density_g_per_ml", "number" },
  { "melt_depth_mm", "number" },
  { "melt_viscosity_min_mpa_s", "number", optional = true },
  { "melt_viscosity_max_mpa_s", "number", optional = true },
  { "solids_share", "number", optional = true },
  { "unstirred", "number", optional = true },
}, {
  { "stir_every_s", "number" },
  { "stir_every_max_s", "number" },
  { "settling_min_cm_per_s", "number" },
  { "settling_max_cm_per_s", "number" },
}, { input = true, result = true })

--- Viscosity of a melt, from a ball that was timed as it sank.
--
-- The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).
--
-- Example: `viscosity_of_ball { ball_diameter_mm = 1, ball_density_g_per_ml = 7.8, melt_density_g_per_ml =
--   0.93, ball_depth_mm = 50, ball_time_s = 20 }` gives `1494.5095512811074`.
-- @tparam table given
-- @tparam number given.ball_diameter_mm Diameter of the ball, much smaller than that of the vessel. Unit: mm;
--   0.001 to 50.
-- @tparam number given.ball_density_g_per_ml Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to 25.
-- @tparam number given.melt_density_g_per_ml Density of the melt, hot. Unit: g/mL; 0.001 to 25.
-- @tparam number given.ball_depth_mm How deep the ball sank, let go below the surface. Unit: mm; 1 to 10000.
-- @tparam number given.ball_time_s Time that the ball took. Unit: s; 0.01 to 1e6.
-- @treturn number Viscosity of the melt. Unit: mPa.s.
calculations.viscosity_of_ball = of("viscosity_of_ball", {
  { "ball_diameter_mm", "number" },
  { "ball_density_g_per_ml", "number" },
  { "melt_density_g_per_ml", "number" },
  { "ball_depth_mm", "number" },
  { "ball_time_s", "number" },
}, {
  { "melt_viscosity_mpa_s", "number" },
}, { input = false, result = false })

--- Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold −
--- ρ_hot)]).
--
-- Example: `cavity_of_weights { weights_g = { 10, 10 }, balance_readability_g = 0.01, cold_density_g_per_ml =
--   1, feed = 0.5 }` gives `{ cavity_volume_ml = 10, cavity_volume_uncertainty_ml = 0.0028867513459481294,
--   mean_g = 10, deviation_g = 0 }`.
-- @tparam table given
-- @tparam table given.weights_g Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one
--   weighed piece. Unit: g; 1e-12 to 1e15.
-- @tparam number given.balance_readability_g Smallest difference that the balance shows; without it there is
--   no balance. Unit: g; 1e-12 to 1e15.
-- @tparam number given.cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit:
--   g/mL; 0.001 to 25.
-- @tparam[opt] number given.hot_density_g_per_ml Melt density at shot temperature, without voids; at most the
--   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.feed Share of its contraction that a piece draws from the sprue while it cools.
--   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
--   full). Unit: 1; 0 to 1. Default: 0.5.
-- @tparam[opt] number given.feed_uncertainty Standard uncertainty of the feed share, in points of it (10 %:
--   60 % is 50 % to 70 %). Unit: 1; 0 to 1. Default: 0.
-- @treturn table
-- @treturn number cavity_volume_ml: Volume of the cavity. Unit: mL.
-- @treturn number cavity_volume_uncertainty_ml: Its standard uncertainty. Where the feed is not known, that
--   of an even spread from 0 to 1 counts. Unit: mL.
-- @treturn number mean_g: Mean of the weights. Unit: g.
-- @treturn number deviation_g: Standard deviation of one. Unit: g.
calculations.cavity_of_weights = of("cavity_of_weights", {
  { "weights_g", "list", count = "weights_count" },
  { "balance_readability_g", "number" },
  { "cold_density_g_per_ml", "number" },
  { "hot_density_g_per_ml", "number", optional = true },
  { "voids", "number", optional = true },
  { "feed", "number", optional = true },
  { "feed_uncertainty", "number", optional = true },
}, {
  { "cavity_volume_ml", "number" },
  { "cavity_volume_uncertainty_ml", "number" },
  { "mean_g", "number" },
  { "deviation_g", "number" },
}, { input = true, result = true })

--- Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot).
--
-- Example: `feed_of_weights { weights_g = { 10.5, 10.5 }, balance_readability_g = 0.01, cold_density_g_per_ml
--   = 1.1, cavity_volume_ml = 10, hot_density_g_per_ml = 1 }` gives `{ feed = 0.5, feed_uncertainty =
--   0.002886751345948127, mean_g = 10.5, deviation_g = 0 }`.
-- @tparam table given
-- @tparam table given.weights_g Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one
--   weighed piece. Unit: g; 1e-12 to 1e15.
-- @tparam number given.balance_readability_g Smallest difference that the balance shows; without it there is
--   no balance. Unit: g; 1e-12 to 1e15.
-- @tparam number given.cold_density_g_per_ml Density of the finished plastic at 20 °C, without voids. Unit:
--   g/mL; 0.001 to 25.
-- @tparam number given.cavity_volume_ml Volume of one cavity. Unit: mL; 1e-9 to 1e15.
-- @tparam[opt] number given.hot_density_g_per_ml Melt density at shot temperature, without voids; at most the
--   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
-- @tparam[opt] number given.voids Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
--   Default: 0.
-- @tparam[opt] number given.volume_uncertainty_ml Standard uncertainty of the volume. Unit: mL; 0 to 1e15.
--   Default: 0.
-- @treturn table
-- @treturn number feed: Feed share. Unit: 1.
-- @treturn number feed_uncertainty: Its standard uncertainty. Unit: 1.
-- @treturn number mean_g: Mean of the weights. Unit: g.
-- @treturn number deviation_g: Standard deviation of one. Unit: g.
calculations.feed_of_weights = of("feed_of_weights", {
  { "weights_g", "list", count = "weights_count" },
  { "balance_readability_g", "number" },
  { "cold_density_g_per_ml", "number" },
  { "cavity_volume_ml", "number" },
  { "hot_density_g_per_ml", "number", optional = true },
  { "voids", "number", optional = true },
  { "volume_uncertainty_ml", "number", optional = true },
}, {
  { "feed", "number" },
  { "feed_uncertainty", "number" },
  { "mean_g", "number" },
  { "deviation_g", "number" },
}, { input = true, result = true })

--- Mass of one drop from several weighings of many.
--
-- Example: `drop_of_weighings { drops_weighed = { { 50, 2.2 }, { 50, 2.2 } }, balance_readability_g = 0.01 }`
--   gives `{ drop_mass_g = 0.044000000000000004, drop_mass_uncertainty_g = 0.000057735026918962585, scatter_g =
--   0 }`.
-- @tparam table given
-- @tparam table given.drops_weighed Drops that were counted and weighed together, each weighing started over.
--   2 to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000. Then: What they
--   weigh together, net. Unit: g; 1e-12 to 1e15.
-- @tparam number given.balance_readability_g Smallest difference that the balance shows; without it there is
--   no balance. Unit: g; 1e-12 to 1e15.
-- @treturn table
-- @treturn number drop_mass_g: Mass of one drop. Unit: g.
-- @treturn number drop_mass_uncertainty_g: Its standard uncertainty. Unit: g.
-- @treturn number scatter_g: Standard deviation of one drop against the next. Unit: g.
calculations.drop_of_weighings = of("drop_of_weighings", {
  { "drops_weighed", "rows", count = "drops_weighed_count", columns = 2, item = "pour_drops_weighed_row" },
  { "balance_readability_g", "number" },
}, {
  { "drop_mass_g", "number" },
  { "drop_mass_uncertainty_g", "number" },
  { "scatter_g", "number" },
}, { input = false, result = true })

--- Bulk density of a powder from several weighings of level spoonfuls.
--
-- Example: `as_scooped_of_weighings { scoops_weighed = { { 10, 61 }, { 10, 61 } }, spoon_volume_ml = 5,
--   balance_readability_g = 0.1 }` gives `{ as_scooped_g_per_ml = 1.2199999999999998,
--   as_scooped_uncertainty_g_per_ml = 0.0005773502691896258, spoonful_g = 6.1 }`.
-- @tparam table given
-- @tparam table given.scoops_weighed Level spoonfuls that were counted and weighed together, each weighing
--   started over. 2 to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000.
--   Then: What they weigh together, net. Unit: g; 1e-12 to 1e15.
-- @tparam number given.spoon_volume_ml Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
-- @tparam number given.balance_readability_g Smallest difference that the balance shows; without it there is
--   no balance. Unit: g; 1e-12 to 1e15.
-- @tparam[opt] number given.volume_uncertainty_ml Standard uncertainty of the volume. Unit: mL; 0 to 1e15.
--   Default: 0.
-- @treturn table
-- @treturn number as_scooped_g_per_ml: Bulk density, level in the spoon. Unit: g/mL.
-- @treturn number as_scooped_uncertainty_g_per_ml: Its standard uncertainty. Unit: g/mL.
-- @treturn number spoonful_g: Mass of one spoonful. Unit: g.
calculations.as_scooped_of_weighings = of("as_scooped_of_weighings", {
  { "scoops_weighed", "rows", count = "scoops_weighed_count", columns = 2, item = "pour_scoops_weighed_row" },
  { "spoon_volume_ml", "number" },
  { "balance_readability_g", "number" },
  { "volume_uncertainty_ml", "number", optional = true },
}, {
  { "as_scooped_g_per_ml", "number" },
  { "as_scooped_uncertainty_g_per_ml", "number" },
  { "spoonful_g", "number" },
}, { input = false, result = true })

--- Volume that stays in an injector, from weighings of it clean and then emptied as at work.
--
-- Example: `residue_of_weighings { injector_weighed_g = { { 180, 184 }, { 180, 184 } },
--   residue_density_g_per_ml = 1, balance_readability_g = 0.1 }` gives `{ injector_residue_ml =
--   4.0000000000000036, injector_residue_uncertainty_ml = 0.02886751345948129, residue_mass_g =
--   4.0000000000000036 }`.
-- @tparam table given
-- @tparam table given.injector_weighed_g Weighings of the injector, each clean and then emptied as at work. 2
--   to 1000 of them. Each: Mass of the clean injector. Unit: g; 1e-12 to 1e15. Then: Mass of the injector
--   emptied as at work; at least that of the clean one. Unit: g; 1e-12 to 1e15.
-- @tparam number given.residue_density_g_per_ml Density of what stays in the injector, at the temperature at
--   which it is emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.
-- @tparam number given.balance_readability_g Smallest difference that the balance shows; without it there is
--   no balance. Unit: g; 1e-12 to 1e15.
-- @tparam[opt] number given.density_uncertainty_g_per_ml Standard uncertainty of the density of the piece;
--   its bounds are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.
-- @treturn table
-- @treturn number injector_residue_ml: Volume that stays in the injector. Unit: mL.
-- @treturn number injector_residue_uncertainty_ml: Its standard uncertainty. Unit: mL.
-- @treturn number residue_mass_g: Its mass. Unit: g.
calculations.residue_of_weighings = of("residue_of_weighings", {
  { "injector_weighed_g", "rows", count = "injector_weighed_count", columns = 2, item = "pour_injector_weighed_row" },
  { "residue_density_g_per_ml", "number" },
  { "balance_readability_g", "number" },
  { "density_uncertainty_g_per_ml", "number", optional = true },
}, {
  { "injector_residue_ml", "number" },
  { "injector_residue_uncertainty_ml", "number" },
  { "residue_mass_g", "number" },
}, { input = false, result = true })

--- Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop
--- keeps.
--
-- price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in
-- binary fractions. Costs of materials, work and packing with their packages and currencies: the request
-- `cost`.
--
-- Example: `price { cost = 750, cost_margin = 0.4 }` gives `1250`.
-- @tparam table given
-- @tparam number given.cost Cost, in the smallest unit of the currency: cents. 0 to 1000000000.
-- @tparam number given.cost_margin Share of the price that the shop keeps (a markup on the cost is another
--   thing). Without it there is no price. Unit: 1; 0 to below 1.
-- @treturn number Price, in the smallest unit of the currency.
calculations.price = of("price", {
  { "cost", "count" },
  { "cost_margin", "number" },
}, {
  { "price", "count" },
}, { input = false, result = false })

return calculations
