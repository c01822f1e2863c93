# frozen_string_literal: true

# The calculations of the library on plain numbers, each with its unit in its name.
#
# Made by `cargo run -p pourwright-generate`; do not edit.

require_relative "call"

module Pourwright
  ALIKE_WORDS = ["count", "area"].freeze
  FORM_WORDS = ["as-scooped", "per-volume", "of-base", "of-finished", "finished-density", "piece-mass", "sink-density"].freeze
  KIND_WORDS = ["plastisol", "softener", "hardener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent", "other"].freeze
  MEASURES_WORDS = ["us-customary", "us-label", "metric", "imperial"].freeze
  MOTION_WORDS = ["straight", "may-swing", "swings"].freeze
  PIECE_POINT_WORDS = ["center", "mean"].freeze
  SCALE_WORDS = ["shore-00", "shore-a"].freeze
  SECTION_SHAPE_WORDS = ["rod", "plate", "ball"].freeze
  SHAPE_WORDS = ["stick", "ball"].freeze
  TOOL_WORDS = ["balance", "cup", "spoons", "drops"].freeze

  module_function

  # Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
  #
  # A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
  #
  # Example: `convert(amount: "1 1/4 cup", to: "mL")` gives `295.735295625`.
  #
  # @param amount [String] An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a
  #   temperature above absolute zero.
  # @param to [String] The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
  # @param measures [String, nil] The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
  #   us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
  # @return [Float] The number, in the unit of `to`.
  # @raise [Error] All that is wrong with the arguments.
  def convert(amount:, to:, measures: nil)
    Call.of("convert", [
      [:amount, :text, amount],
      [:to, :text, to],
      [:measures, :word, measures, MEASURES_WORDS],
    ], [
      [:value, :number],
    ], input: false, result: false)
  end

  # Converts a number of one unit into another.
  #
  # Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between units hold on
  # bits: 48 tsp are 1 cup.
  #
  # Example: `convert_number(value: 48, unit: "tsp", to: "cup")` gives `1`.
  #
  # @param value [Numeric] The number to convert. Unit: any; 0 or above; a temperature above absolute zero.
  # @param unit [String] The unit of the number, by trade symbol or UCUM code. A unit.
  # @param to [String] The unit of the answer, by trade symbol or UCUM code. A unit of the same dimension.
  # @param measures [String, nil] The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
  #   us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
  # @return [Float] The number, in the unit of `to`.
  # @raise [Error] All that is wrong with the arguments.
  def convert_number(value:, unit:, to:, measures: nil)
    Call.of("convert_number", [
      [:value, :number, value],
      [:unit, :text, unit],
      [:to, :text, to],
      [:measures, :word, measures, MEASURES_WORDS],
    ], [
      [:value, :number],
    ], input: false, result: false)
  end

  # Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.
  #
  # A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a
  # drop is 1/20 mL (pharmacy practice).
  #
  # Example: `dose_mass(amount: "50 drops", kind: "colorant", material_density_g_per_ml: 1.05, drop_mass_g:
  #   0.044)` gives `2.2`.
  #
  # @param amount [String] An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a
  #   temperature above absolute zero.
  # @param kind [String] What the material is for; powders (pearl, flake, salt) are measured as scooped. One
  #   of `plastisol`, `softener`, `hardener`, `stabilizer`, `colorant`, `pearl`, `flake`, `salt`, `scent`,
  #   `other`.
  # @param material_density_g_per_ml [Numeric, nil] True density of the material; of a plastisol that of the
  #   liquid. Unit: g/mL; 0.001 to 25. Default: none.
  # @param as_scooped_g_per_ml [Numeric, nil] Bulk density of a powder, level in the spoon and not tapped.
  #   Unit: g/mL; 0.001 to 25. Default: none.
  # @param drop_mass_g [Numeric, nil] Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
  # @param measures [String, nil] The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
  #   us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
  # @return [Float] The mass. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def dose_mass(amount:, kind:, material_density_g_per_ml: nil, as_scooped_g_per_ml: nil, drop_mass_g: nil, measures: nil)
    Call.of("dose_mass", [
      [:amount, :text, amount],
      [:kind, :word, kind, KIND_WORDS],
      [:material_density_g_per_ml, :number, material_density_g_per_ml],
      [:as_scooped_g_per_ml, :number, as_scooped_g_per_ml],
      [:drop_mass_g, :number, drop_mass_g],
      [:measures, :word, measures, MEASURES_WORDS],
    ], [
      [:mass_g, :number],
    ], input: false, result: false)
  end

  # Mass of a volume: m = ρV.
  #
  # The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid
  # displaces in a mix it is its true density.
  #
  # Example: `mass_of_volume(volume_ml: 250, density_g_per_ml: 1.03)` gives `257.5`.
  #
  # @param volume_ml [Numeric] Volume. Unit: mL; 0 to 1e15.
  # @param density_g_per_ml [Numeric] Density, without voids. Unit: g/mL; 0.001 to 25.
  # @return [Float] The mass. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def mass_of_volume(volume_ml:, density_g_per_ml:)
    Call.of("mass_of_volume", [
      [:volume_ml, :number, volume_ml],
      [:density_g_per_ml, :number, density_g_per_ml],
    ], [
      [:mass_g, :number],
    ], input: false, result: false)
  end

  # Volume of a mass: V = m/ρ, with the densities of `mass_of_volume`.
  #
  # Example: `volume_of_mass(mass_g: 257.5, density_g_per_ml: 1.03)` gives `250`.
  #
  # @param mass_g [Numeric] Mass. Unit: g; 0 to 1e15.
  # @param density_g_per_ml [Numeric] Density, without voids. Unit: g/mL; 0.001 to 25.
  # @return [Float] The volume. Unit: mL.
  # @raise [Error] All that is wrong with the arguments.
  def volume_of_mass(mass_g:, density_g_per_ml:)
    Call.of("volume_of_mass", [
      [:mass_g, :number, mass_g],
      [:density_g_per_ml, :number, density_g_per_ml],
    ], [
      [:volume_ml, :number],
    ], input: false, result: false)
  end

  # Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
  #
  # Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and
  # volume.
  #
  # Example: `density_of_parts(parts: [[100, 1], [50, 2]])` gives `1.2000000000000002`.
  #
  # @param parts [Array<Array<Numeric>>] The parts of the mix: of each its mass and its true density. At least
  #   one has a mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True
  #   density of one part of a mix. Unit: g/mL; 0.001 to 25.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @return [Float] Density of the mix, voids counted. Unit: g/mL.
  # @raise [Error] All that is wrong with the arguments.
  def density_of_parts(parts:, voids: nil)
    Call.of("density_of_parts", [
      [:parts, :rows, parts, 2],
      [:voids, :number, voids],
    ], [
      [:density_g_per_ml, :number],
    ], input: false, result: false)
  end

  # Share of one part in a mix, by mass and by true volume.
  #
  # Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).
  #
  # Example: `mix_share(parts: [[75, 1], [50, 2]], part: 2)` gives `{ mass_share: 0.4, volume_share:
  #   0.25000000000000006 }`.
  #
  # @param parts [Array<Array<Numeric>>] The parts of the mix: of each its mass and its true density. At least
  #   one has a mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True
  #   density of one part of a mix. Unit: g/mL; 0.001 to 25.
  # @param part [Integer] Which part of the mix, counted from 1. 1 to 1000.
  # @return [Hash{Symbol => Object}] The results by name:
  #   mass_share [Float] Share of its mass. Unit: 1.
  #   volume_share [Float] Share of its true volume. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def mix_share(parts:, part:)
    Call.of("mix_share", [
      [:parts, :rows, parts, 2],
      [:part, :count, part],
    ], [
      [:mass_share, :number],
      [:volume_share, :number],
    ], input: false, result: true)
  end

  # States a salt loading another way.
  #
  # All ways go through the mass of salt per mass of base; the equations are those of the module `salt`. In
  # reach is all between no salt and the maximum that `most_solids` allows. Where a form that is about a piece
  # needs the feed and it is not known, the bounds are those without feed and fed in full.
  #
  # Example: `salt_convert(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2, form:
  #   "of-base", loading: 0.1, to_form: "as-scooped", salt_as_scooped_g_per_ml: 1.25)` gives `{ loading: 0.08,
  #   loading_min: 0.08, loading_max: 0.08 }`.
  #
  # @param base_volume_ml [Numeric] Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
  #   to 1e15.
  # @param base_density_g_per_ml [Numeric] Density of the base, cold and liquid, as a cup measures it. Unit:
  #   g/mL; 0.001 to 25.
  # @param salt_density_g_per_ml [Numeric] True density of the salt: 2.165 g/mL for sodium chloride. Unit:
  #   g/mL; 0.001 to 25.
  # @param form [String] The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
  #   `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
  # @param loading [Numeric] The salt loading, as its form states it. Unit: any; in the unit of its form.
  # @param to_form [String] The way in which the loading is to be stated. One of `as-scooped`, `per-volume`,
  #   `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
  # @param mix_mass_g [Numeric, nil] Mass of the mix before salt; at least that of its base. Give its volume
  #   too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
  # @param mix_volume_ml [Numeric, nil] Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL;
  #   1e-9 to 1e15. Default: as `base_volume_ml`.
  # @param hot_volume_ml [Numeric, nil] Volume of the mix before salt at shot temperature; at least the cold
  #   one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
  # @param shot_temperature_celsius [Numeric, nil] Temperature at which the mix is shot. Unit: °C; 20 to 427.
  #   Default: 20.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param salt_as_scooped_g_per_ml [Numeric, nil] Bulk density of the salt, level in the spoon; at most its
  #   true density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
  # @param salt_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of the salt. Unit: 1/K; 0 to
  #   0.01. Default: 0.
  # @param softener_per_salt [Numeric, nil] Softener that goes in with the salt, mass per mass of salt. Unit:
  #   1; 0 to 10. Default: 0.
  # @param softener_density_g_per_ml [Numeric, nil] Density of the softener that goes in with the salt; needed
  #   with it. Unit: g/mL; 0.001 to 25. Default: none.
  # @param softener_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of that softener. Unit:
  #   1/K; 0 to 0.01. Default: 0.
  # @param most_solids [Numeric, nil] Maximum share of salt in the finished mix, by true volume. Unit: 1;
  #   above 0 to below 1. Default: 0.3.
  # @param cavity_volume_ml [Numeric, nil] Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
  # @param feed [Numeric, nil] Share of its contraction that a piece draws from the sprue while it cools.
  #   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
  #   full). Unit: 1; 0 to 1. Default: 0.5.
  # @param hook_mass_g [Numeric, nil] Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param hook_volume_ml [Numeric, nil] Volume that hook and weight displace; give their mass too. Unit: mL;
  #   0 to 1e15. Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   loading [Float] The loading as `to_form` states it, in the unit of that form.
  #   loading_min [Float] Its lower bound where the feed matters and is not known; else the loading.
  #   loading_max [Float] Its upper bound where the feed matters and is not known; else the loading.
  # @raise [Error] All that is wrong with the arguments.
  def salt_convert(base_volume_ml:, base_density_g_per_ml:, salt_density_g_per_ml:, form:, loading:, to_form:, mix_mass_g: nil, mix_volume_ml: nil, hot_volume_ml: nil, shot_temperature_celsius: nil, voids: nil, salt_as_scooped_g_per_ml: nil, salt_expansion_per_kelvin: nil, softener_per_salt: nil, softener_density_g_per_ml: nil, softener_expansion_per_kelvin: nil, most_solids: nil, cavity_volume_ml: nil, feed: nil, hook_mass_g: nil, hook_volume_ml: nil)
    Call.of("salt_convert", [
      [:base_volume_ml, :number, base_volume_ml],
      [:base_density_g_per_ml, :number, base_density_g_per_ml],
      [:salt_density_g_per_ml, :number, salt_density_g_per_ml],
      [:form, :word, form, FORM_WORDS],
      [:loading, :number, loading],
      [:to_form, :word, to_form, FORM_WORDS],
      [:mix_mass_g, :number, mix_mass_g],
      [:mix_volume_ml, :number, mix_volume_ml],
      [:hot_volume_ml, :number, hot_volume_ml],
      [:shot_temperature_celsius, :number, shot_temperature_celsius],
      [:voids, :number, voids],
      [:salt_as_scooped_g_per_ml, :number, salt_as_scooped_g_per_ml],
      [:salt_expansion_per_kelvin, :number, salt_expansion_per_kelvin],
      [:softener_per_salt, :number, softener_per_salt],
      [:softener_density_g_per_ml, :number, softener_density_g_per_ml],
      [:softener_expansion_per_kelvin, :number, softener_expansion_per_kelvin],
      [:most_solids, :number, most_solids],
      [:cavity_volume_ml, :number, cavity_volume_ml],
      [:feed, :number, feed],
      [:hook_mass_g, :number, hook_mass_g],
      [:hook_volume_ml, :number, hook_volume_ml],
    ], [
      [:loading, :number],
      [:loading_min, :number],
      [:loading_max, :number],
    ], input: true, result: true)
  end

  # Mass of salt for a loading, and of the softener that goes in with it.
  #
  # Example: `salt_mass(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2, form:
  #   "of-base", loading: 0.1, salt_as_scooped_g_per_ml: 1.25)` gives `{ salt_mass_g: 25, salt_mass_min_g: 25,
  #   salt_mass_max_g: 25, softener_mass_g: 0 }`.
  #
  # @param base_volume_ml [Numeric] Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
  #   to 1e15.
  # @param base_density_g_per_ml [Numeric] Density of the base, cold and liquid, as a cup measures it. Unit:
  #   g/mL; 0.001 to 25.
  # @param salt_density_g_per_ml [Numeric] True density of the salt: 2.165 g/mL for sodium chloride. Unit:
  #   g/mL; 0.001 to 25.
  # @param form [String] The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
  #   `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
  # @param loading [Numeric] The salt loading, as its form states it. Unit: any; in the unit of its form.
  # @param mix_mass_g [Numeric, nil] Mass of the mix before salt; at least that of its base. Give its volume
  #   too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
  # @param mix_volume_ml [Numeric, nil] Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL;
  #   1e-9 to 1e15. Default: as `base_volume_ml`.
  # @param hot_volume_ml [Numeric, nil] Volume of the mix before salt at shot temperature; at least the cold
  #   one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
  # @param shot_temperature_celsius [Numeric, nil] Temperature at which the mix is shot. Unit: °C; 20 to 427.
  #   Default: 20.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param salt_as_scooped_g_per_ml [Numeric, nil] Bulk density of the salt, level in the spoon; at most its
  #   true density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
  # @param salt_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of the salt. Unit: 1/K; 0 to
  #   0.01. Default: 0.
  # @param softener_per_salt [Numeric, nil] Softener that goes in with the salt, mass per mass of salt. Unit:
  #   1; 0 to 10. Default: 0.
  # @param softener_density_g_per_ml [Numeric, nil] Density of the softener that goes in with the salt; needed
  #   with it. Unit: g/mL; 0.001 to 25. Default: none.
  # @param softener_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of that softener. Unit:
  #   1/K; 0 to 0.01. Default: 0.
  # @param most_solids [Numeric, nil] Maximum share of salt in the finished mix, by true volume. Unit: 1;
  #   above 0 to below 1. Default: 0.3.
  # @param cavity_volume_ml [Numeric, nil] Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
  # @param feed [Numeric, nil] Share of its contraction that a piece draws from the sprue while it cools.
  #   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
  #   full). Unit: 1; 0 to 1. Default: 0.5.
  # @param hook_mass_g [Numeric, nil] Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param hook_volume_ml [Numeric, nil] Volume that hook and weight displace; give their mass too. Unit: mL;
  #   0 to 1e15. Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   salt_mass_g [Float] Mass of salt. Unit: g.
  #   salt_mass_min_g [Float] Its lower bound where the feed matters and is not known; else the mass. Unit: g.
  #   salt_mass_max_g [Float] Its upper bound where the feed matters and is not known; else the mass. Unit: g.
  #   softener_mass_g [Float] Mass of softener that goes in with it. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def salt_mass(base_volume_ml:, base_density_g_per_ml:, salt_density_g_per_ml:, form:, loading:, mix_mass_g: nil, mix_volume_ml: nil, hot_volume_ml: nil, shot_temperature_celsius: nil, voids: nil, salt_as_scooped_g_per_ml: nil, salt_expansion_per_kelvin: nil, softener_per_salt: nil, softener_density_g_per_ml: nil, softener_expansion_per_kelvin: nil, most_solids: nil, cavity_volume_ml: nil, feed: nil, hook_mass_g: nil, hook_volume_ml: nil)
    Call.of("salt_mass", [
      [:base_volume_ml, :number, base_volume_ml],
      [:base_density_g_per_ml, :number, base_density_g_per_ml],
      [:salt_density_g_per_ml, :number, salt_density_g_per_ml],
      [:form, :word, form, FORM_WORDS],
      [:loading, :number, loading],
      [:mix_mass_g, :number, mix_mass_g],
      [:mix_volume_ml, :number, mix_volume_ml],
      [:hot_volume_ml, :number, hot_volume_ml],
      [:shot_temperature_celsius, :number, shot_temperature_celsius],
      [:voids, :number, voids],
      [:salt_as_scooped_g_per_ml, :number, salt_as_scooped_g_per_ml],
      [:salt_expansion_per_kelvin, :number, salt_expansion_per_kelvin],
      [:softener_per_salt, :number, softener_per_salt],
      [:softener_density_g_per_ml, :number, softener_density_g_per_ml],
      [:softener_expansion_per_kelvin, :number, softener_expansion_per_kelvin],
      [:most_solids, :number, most_solids],
      [:cavity_volume_ml, :number, cavity_volume_ml],
      [:feed, :number, feed],
      [:hook_mass_g, :number, hook_mass_g],
      [:hook_volume_ml, :number, hook_volume_ml],
    ], [
      [:salt_mass_g, :number],
      [:salt_mass_min_g, :number],
      [:salt_mass_max_g, :number],
      [:softener_mass_g, :number],
    ], input: true, result: true)
  end

  # Salt loadings in reach: without salt, and with the maximum that `most_solids` allows.
  #
  # Example: `salt_reach(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2, form:
  #   "finished-density", salt_as_scooped_g_per_ml: 1.25)` gives `{ loading_min: 1, loading_max: 1.3 }`.
  #
  # @param base_volume_ml [Numeric] Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
  #   to 1e15.
  # @param base_density_g_per_ml [Numeric] Density of the base, cold and liquid, as a cup measures it. Unit:
  #   g/mL; 0.001 to 25.
  # @param salt_density_g_per_ml [Numeric] True density of the salt: 2.165 g/mL for sodium chloride. Unit:
  #   g/mL; 0.001 to 25.
  # @param form [String] The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
  #   `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.
  # @param mix_mass_g [Numeric, nil] Mass of the mix before salt; at least that of its base. Give its volume
  #   too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
  # @param mix_volume_ml [Numeric, nil] Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL;
  #   1e-9 to 1e15. Default: as `base_volume_ml`.
  # @param hot_volume_ml [Numeric, nil] Volume of the mix before salt at shot temperature; at least the cold
  #   one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
  # @param shot_temperature_celsius [Numeric, nil] Temperature at which the mix is shot. Unit: °C; 20 to 427.
  #   Default: 20.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param salt_as_scooped_g_per_ml [Numeric, nil] Bulk density of the salt, level in the spoon; at most its
  #   true density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.
  # @param salt_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of the salt. Unit: 1/K; 0 to
  #   0.01. Default: 0.
  # @param softener_per_salt [Numeric, nil] Softener that goes in with the salt, mass per mass of salt. Unit:
  #   1; 0 to 10. Default: 0.
  # @param softener_density_g_per_ml [Numeric, nil] Density of the softener that goes in with the salt; needed
  #   with it. Unit: g/mL; 0.001 to 25. Default: none.
  # @param softener_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of that softener. Unit:
  #   1/K; 0 to 0.01. Default: 0.
  # @param most_solids [Numeric, nil] Maximum share of salt in the finished mix, by true volume. Unit: 1;
  #   above 0 to below 1. Default: 0.3.
  # @param cavity_volume_ml [Numeric, nil] Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.
  # @param feed [Numeric, nil] Share of its contraction that a piece draws from the sprue while it cools.
  #   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
  #   full). Unit: 1; 0 to 1. Default: 0.5.
  # @param hook_mass_g [Numeric, nil] Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param hook_volume_ml [Numeric, nil] Volume that hook and weight displace; give their mass too. Unit: mL;
  #   0 to 1e15. Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   loading_min [Float] The loading without salt, in the unit of the form.
  #   loading_max [Float] The maximum loading, in the unit of the form.
  # @raise [Error] All that is wrong with the arguments.
  def salt_reach(base_volume_ml:, base_density_g_per_ml:, salt_density_g_per_ml:, form:, mix_mass_g: nil, mix_volume_ml: nil, hot_volume_ml: nil, shot_temperature_celsius: nil, voids: nil, salt_as_scooped_g_per_ml: nil, salt_expansion_per_kelvin: nil, softener_per_salt: nil, softener_density_g_per_ml: nil, softener_expansion_per_kelvin: nil, most_solids: nil, cavity_volume_ml: nil, feed: nil, hook_mass_g: nil, hook_volume_ml: nil)
    Call.of("salt_reach", [
      [:base_volume_ml, :number, base_volume_ml],
      [:base_density_g_per_ml, :number, base_density_g_per_ml],
      [:salt_density_g_per_ml, :number, salt_density_g_per_ml],
      [:form, :word, form, FORM_WORDS],
      [:mix_mass_g, :number, mix_mass_g],
      [:mix_volume_ml, :number, mix_volume_ml],
      [:hot_volume_ml, :number, hot_volume_ml],
      [:shot_temperature_celsius, :number, shot_temperature_celsius],
      [:voids, :number, voids],
      [:salt_as_scooped_g_per_ml, :number, salt_as_scooped_g_per_ml],
      [:salt_expansion_per_kelvin, :number, salt_expansion_per_kelvin],
      [:softener_per_salt, :number, softener_per_salt],
      [:softener_density_g_per_ml, :number, softener_density_g_per_ml],
      [:softener_expansion_per_kelvin, :number, softener_expansion_per_kelvin],
      [:most_solids, :number, most_solids],
      [:cavity_volume_ml, :number, cavity_volume_ml],
      [:feed, :number, feed],
      [:hook_mass_g, :number, hook_mass_g],
      [:hook_volume_ml, :number, hook_volume_ml],
    ], [
      [:loading_min, :number],
      [:loading_max, :number],
    ], input: true, result: true)
  end

  # Mass of salt that brings a base alone to a finished density: `salt_mass` in one form, with few numbers.
  #
  # m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).
  #
  # Example: `salt_for_density(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2,
  #   finished_density_g_per_ml: 1.25)` gives `166.66666666666666`.
  #
  # @param base_volume_ml [Numeric] Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
  #   to 1e15.
  # @param base_density_g_per_ml [Numeric] Density of the base, cold and liquid, as a cup measures it. Unit:
  #   g/mL; 0.001 to 25.
  # @param salt_density_g_per_ml [Numeric] True density of the salt: 2.165 g/mL for sodium chloride. Unit:
  #   g/mL; 0.001 to 25.
  # @param finished_density_g_per_ml [Numeric] Density of the finished plastic at 20 °C, voids counted. Unit:
  #   g/mL; 0.001 to 25.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param most_solids [Numeric, nil] Maximum share of salt in the finished mix, by true volume. Unit: 1;
  #   above 0 to below 1. Default: 0.3.
  # @return [Float] Mass of salt. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def salt_for_density(base_volume_ml:, base_density_g_per_ml:, salt_density_g_per_ml:, finished_density_g_per_ml:, voids: nil, most_solids: nil)
    Call.of("salt_for_density", [
      [:base_volume_ml, :number, base_volume_ml],
      [:base_density_g_per_ml, :number, base_density_g_per_ml],
      [:salt_density_g_per_ml, :number, salt_density_g_per_ml],
      [:finished_density_g_per_ml, :number, finished_density_g_per_ml],
      [:voids, :number, voids],
      [:most_solids, :number, most_solids],
    ], [
      [:salt_mass_g, :number],
    ], input: false, result: false)
  end

  # Mass of salt at which a piece sinks at a rate.
  #
  # The finished density is that for the sink rate (module `process::sink`), of the piece as it is when it has
  # cooled; the salt is that for this density.
  #
  # Example: `salt_for_sink_rate(base_volume_ml: 250, base_density_g_per_ml: 1, salt_density_g_per_ml: 2,
  #   sink_rate_cm_per_s: 22.04104669853903, cavity_volume_ml: 9.5, diameter_mm: 10, water_temperature_celsius:
  #   20, length_mm: 121, hook_mass_g: 2, hook_volume_ml: 0.25)` gives `{ salt_mass_g: 55.55555555555424,
  #   softener_mass_g: 0, finished_density_g_per_ml: 1.0999999999999979 }`.
  #
  # @param base_volume_ml [Numeric] Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
  #   to 1e15.
  # @param base_density_g_per_ml [Numeric] Density of the base, cold and liquid, as a cup measures it. Unit:
  #   g/mL; 0.001 to 25.
  # @param salt_density_g_per_ml [Numeric] True density of the salt: 2.165 g/mL for sodium chloride. Unit:
  #   g/mL; 0.001 to 25.
  # @param sink_rate_cm_per_s [Numeric] Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
  # @param cavity_volume_ml [Numeric] Volume of one cavity. Unit: mL; 1e-9 to 1e15.
  # @param diameter_mm [Numeric] Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
  # @param water_temperature_celsius [Numeric] Temperature of the water. Unit: °C; 0 to 40.
  # @param length_mm [Numeric, nil] Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm;
  #   1e-6 to 1e6. Default: none.
  # @param shape [String, nil] Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where
  #   a length is given, else a ball. One of `stick`, `ball`.
  # @param mix_mass_g [Numeric, nil] Mass of the mix before salt; at least that of its base. Give its volume
  #   too. Unit: g; 1e-12 to 1e15. Default: the mass of its base.
  # @param mix_volume_ml [Numeric, nil] Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL;
  #   1e-9 to 1e15. Default: as `base_volume_ml`.
  # @param hot_volume_ml [Numeric, nil] Volume of the mix before salt at shot temperature; at least the cold
  #   one. Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.
  # @param shot_temperature_celsius [Numeric, nil] Temperature at which the mix is shot. Unit: °C; 20 to 427.
  #   Default: 20.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param salt_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of the salt. Unit: 1/K; 0 to
  #   0.01. Default: 0.
  # @param softener_per_salt [Numeric, nil] Softener that goes in with the salt, mass per mass of salt. Unit:
  #   1; 0 to 10. Default: 0.
  # @param softener_density_g_per_ml [Numeric, nil] Density of the softener that goes in with the salt; needed
  #   with it. Unit: g/mL; 0.001 to 25. Default: none.
  # @param softener_expansion_per_kelvin [Numeric, nil] Volumetric thermal expansion of that softener. Unit:
  #   1/K; 0 to 0.01. Default: 0.
  # @param most_solids [Numeric, nil] Maximum share of salt in the finished mix, by true volume. Unit: 1;
  #   above 0 to below 1. Default: 0.3.
  # @param feed [Numeric, nil] Share of its contraction that a piece draws from the sprue while it cools.
  #   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
  #   full). Unit: 1; 0 to 1. Default: 0.5.
  # @param hook_mass_g [Numeric, nil] Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param hook_volume_ml [Numeric, nil] Volume that hook and weight displace; give their mass too. Unit: mL;
  #   0 to 1e15. Default: 0.
  # @param salinity_practical [Numeric, nil] Practical salinity as a probe reads it, about 35 in the ocean;
  #   give this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
  # @param salinity_absolute [Numeric, nil] Absolute salinity, mass of salt per mass of sea water (35 g/kg is
  #   0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
  # @param drop_depth_m [Numeric, nil] Depth of a timed drop, the piece let go just below the surface. Unit:
  #   m; 1e-9 to 12000. Default: none.
  # @param drop_time_s [Numeric, nil] Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
  # @param drop_density_g_per_ml [Numeric, nil] Density of the piece that was dropped. Unit: g/mL; 0.001 to
  #   25. Default: none.
  # @return [Hash{Symbol => Object}] The results by name:
  #   salt_mass_g [Float] Mass of salt. Unit: g.
  #   softener_mass_g [Float] Mass of softener that goes in with it. Unit: g.
  #   finished_density_g_per_ml [Float] Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.
  # @raise [Error] All that is wrong with the arguments.
  def salt_for_sink_rate(base_volume_ml:, base_density_g_per_ml:, salt_density_g_per_ml:, sink_rate_cm_per_s:, cavity_volume_ml:, diameter_mm:, water_temperature_celsius:, length_mm: nil, shape: nil, mix_mass_g: nil, mix_volume_ml: nil, hot_volume_ml: nil, shot_temperature_celsius: nil, voids: nil, salt_expansion_per_kelvin: nil, softener_per_salt: nil, softener_density_g_per_ml: nil, softener_expansion_per_kelvin: nil, most_solids: nil, feed: nil, hook_mass_g: nil, hook_volume_ml: nil, salinity_practical: nil, salinity_absolute: nil, drop_depth_m: nil, drop_time_s: nil, drop_density_g_per_ml: nil)
    Call.of("salt_for_sink_rate", [
      [:base_volume_ml, :number, base_volume_ml],
      [:base_density_g_per_ml, :number, base_density_g_per_ml],
      [:salt_density_g_per_ml, :number, salt_density_g_per_ml],
      [:sink_rate_cm_per_s, :number, sink_rate_cm_per_s],
      [:cavity_volume_ml, :number, cavity_volume_ml],
      [:diameter_mm, :number, diameter_mm],
      [:water_temperature_celsius, :number, water_temperature_celsius],
      [:length_mm, :number, length_mm],
      [:shape, :word, shape, SHAPE_WORDS],
      [:mix_mass_g, :number, mix_mass_g],
      [:mix_volume_ml, :number, mix_volume_ml],
      [:hot_volume_ml, :number, hot_volume_ml],
      [:shot_temperature_celsius, :number, shot_temperature_celsius],
      [:voids, :number, voids],
      [:salt_expansion_per_kelvin, :number, salt_expansion_per_kelvin],
      [:softener_per_salt, :number, softener_per_salt],
      [:softener_density_g_per_ml, :number, softener_density_g_per_ml],
      [:softener_expansion_per_kelvin, :number, softener_expansion_per_kelvin],
      [:most_solids, :number, most_solids],
      [:feed, :number, feed],
      [:hook_mass_g, :number, hook_mass_g],
      [:hook_volume_ml, :number, hook_volume_ml],
      [:salinity_practical, :number, salinity_practical],
      [:salinity_absolute, :number, salinity_absolute],
      [:drop_depth_m, :number, drop_depth_m],
      [:drop_time_s, :number, drop_time_s],
      [:drop_density_g_per_ml, :number, drop_density_g_per_ml],
    ], [
      [:salt_mass_g, :number],
      [:softener_mass_g, :number],
      [:finished_density_g_per_ml, :number],
    ], input: true, result: true)
  end

  # Mass of one shot, and of its pieces.
  #
  # Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in `piece_mass`, as far as sprue and topping can
  # feed it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and `missing_mass` is above
  # 0. Of sprue and topping a layer fills its share.
  #
  # Example: `shot_fill(cavities: 4, cavity_volume_ml: 10, cold_density_g_per_ml: 1.0625,
  #   hot_density_g_per_ml: 1, feed: 0.5, sprue_volume_ml: 8)` gives `{ shot_mass_g: 48, pieces_mass_g: 41.25,
  #   sprue_mass_g: 6.75, missing_mass_g: 0, piece_mass_g: 10.3125, piece_mass_min_g: 10.3125, piece_mass_max_g:
  #   10.3125, fed: 0.5 }`.
  #
  # @param cavities [Integer] Number of cavities that a shot fills. 1 to 1000000.
  # @param cavity_volume_ml [Numeric] Volume of one cavity. Unit: mL; 1e-9 to 1e15.
  # @param cold_density_g_per_ml [Numeric] Density of the finished plastic at 20 °C, without voids. Unit:
  #   g/mL; 0.001 to 25.
  # @param hot_density_g_per_ml [Numeric, nil] Melt density at shot temperature, without voids; at most the
  #   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param feed [Numeric, nil] Share of its contraction that a piece draws from the sprue while it cools.
  #   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
  #   full). Unit: 1; 0 to 1. Default: 0.5.
  # @param sprue_volume_ml [Numeric, nil] Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0.
  # @param topped_mass_g [Numeric, nil] Mass that topping off and holding add. Unit: g; 0 to 1e15. Default: 0.
  # @param layer_share [Numeric, nil] Share of the cavity that this layer of a laminated piece fills. Unit: 1;
  #   above 0 to 1. Default: 1.
  # @return [Hash{Symbol => Object}] The results by name:
  #   shot_mass_g [Float] Mass of one shot, topping included. Unit: g.
  #   pieces_mass_g [Float] Mass of all its pieces. Unit: g.
  #   sprue_mass_g [Float] Mass that is left as sprue once the pieces have been fed. Unit: g.
  #   missing_mass_g [Float] Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.
  #   piece_mass_g [Float] Mass of one piece, or of the layer in it. Unit: g.
  #   piece_mass_min_g [Float] The same without feed where the feed is not known; else the mass of the piece.
  #     Unit: g.
  #   piece_mass_max_g [Float] The same fed as far as sprue and topping reach where the feed is not known;
  #     else the mass of the piece. Unit: g.
  #   fed [Float] Share of the contraction that was fed. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def shot_fill(cavities:, cavity_volume_ml:, cold_density_g_per_ml:, hot_density_g_per_ml: nil, voids: nil, feed: nil, sprue_volume_ml: nil, topped_mass_g: nil, layer_share: nil)
    Call.of("shot_fill", [
      [:cavities, :count, cavities],
      [:cavity_volume_ml, :number, cavity_volume_ml],
      [:cold_density_g_per_ml, :number, cold_density_g_per_ml],
      [:hot_density_g_per_ml, :number, hot_density_g_per_ml],
      [:voids, :number, voids],
      [:feed, :number, feed],
      [:sprue_volume_ml, :number, sprue_volume_ml],
      [:topped_mass_g, :number, topped_mass_g],
      [:layer_share, :number, layer_share],
    ], [
      [:shot_mass_g, :number],
      [:pieces_mass_g, :number],
      [:sprue_mass_g, :number],
      [:missing_mass_g, :number],
      [:piece_mass_g, :number],
      [:piece_mass_min_g, :number],
      [:piece_mass_max_g, :number],
      [:fed, :number],
    ], input: true, result: true)
  end

  # Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the feed.
  #
  # While it cools a piece draws the share f of its contraction from the sprue. Source: conservation of mass;
  # f is the shop's own. A sprue that cannot feed that much: see `shot_fill`.
  #
  # Example: `piece_mass(cavity_volume_ml: 10, cold_density_g_per_ml: 1.0625, hot_density_g_per_ml: 1)` gives
  #   `{ piece_mass_g: 10.3125, piece_mass_min_g: 10, piece_mass_max_g: 10.625 }`.
  #
  # @param cavity_volume_ml [Numeric] Volume of one cavity. Unit: mL; 1e-9 to 1e15.
  # @param cold_density_g_per_ml [Numeric] Density of the finished plastic at 20 °C, without voids. Unit:
  #   g/mL; 0.001 to 25.
  # @param hot_density_g_per_ml [Numeric, nil] Melt density at shot temperature, without voids; at most the
  #   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param feed [Numeric, nil] Share of its contraction that a piece draws from the sprue while it cools.
  #   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
  #   full). Unit: 1; 0 to 1. Default: 0.5.
  # @return [Hash{Symbol => Object}] The results by name:
  #   piece_mass_g [Float] Mass of the piece. Unit: g.
  #   piece_mass_min_g [Float] The same without feed where the feed is not known; else the mass of the piece.
  #     Unit: g.
  #   piece_mass_max_g [Float] The same fed in full where the feed is not known; else the mass of the piece.
  #     Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def piece_mass(cavity_volume_ml:, cold_density_g_per_ml:, hot_density_g_per_ml: nil, voids: nil, feed: nil)
    Call.of("piece_mass", [
      [:cavity_volume_ml, :number, cavity_volume_ml],
      [:cold_density_g_per_ml, :number, cold_density_g_per_ml],
      [:hot_density_g_per_ml, :number, hot_density_g_per_ml],
      [:voids, :number, voids],
      [:feed, :number, feed],
    ], [
      [:piece_mass_g, :number],
      [:piece_mass_min_g, :number],
      [:piece_mass_max_g, :number],
    ], input: false, result: true)
  end

  # Minimum number of shots for a number of good pieces.
  #
  # Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the confidence.
  #
  # Example: `shots(pieces: 10, cavities: 4)` gives `{ shots: 3, cast: 12 }`.
  #
  # @param pieces [Integer] Number of good pieces needed. 1 to 1000000.
  # @param cavities [Integer] Number of cavities that a shot fills. 1 to 1000000.
  # @param rejects [Numeric, nil] Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
  # @param confidence [Numeric, nil] Confidence that enough good pieces come out. Unit: 1; above 0 to
  #   0.999999999. Default: 0.9.
  # @return [Hash{Symbol => Object}] The results by name:
  #   shots [Integer] Number of shots.
  #   cast [Integer] Number of pieces that they cast.
  # @raise [Error] All that is wrong with the arguments.
  def shots(pieces:, cavities:, rejects: nil, confidence: nil)
    Call.of("shots", [
      [:pieces, :count, pieces],
      [:cavities, :count, cavities],
      [:rejects, :number, rejects],
      [:confidence, :number, confidence],
    ], [
      [:shots, :count],
      [:cast, :count],
    ], input: false, result: true)
  end

  # Injector loads for a number of shots.
  #
  # Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.
  #
  # Example: `injector_loads(shots: 5, shot_mass_g: 40, shot_density_g_per_ml: 1, injector_capacity_ml: 100,
  #   injector_residue_ml: 10)` gives `{ loads: 3, shots_per_load: 2, shots_in_last: 1 }`.
  #
  # @param shots [Integer] Number of shots. 1 to 100000000.
  # @param shot_mass_g [Numeric] Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
  # @param shot_density_g_per_ml [Numeric] Density of what the injector draws: hot, voids counted. Unit: g/mL;
  #   0.001 to 25.
  # @param injector_capacity_ml [Numeric] Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
  # @param injector_residue_ml [Numeric, nil] Volume that stays in the injector each time it is emptied; below
  #   its capacity. Unit: mL; 0 to 1e15. Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   loads [Integer] Number of injector loads.
  #   shots_per_load [Integer] Whole shots in one load.
  #   shots_in_last [Integer] Shots from the last load.
  # @raise [Error] All that is wrong with the arguments.
  def injector_loads(shots:, shot_mass_g:, shot_density_g_per_ml:, injector_capacity_ml:, injector_residue_ml: nil)
    Call.of("injector_loads", [
      [:shots, :count, shots],
      [:shot_mass_g, :number, shot_mass_g],
      [:shot_density_g_per_ml, :number, shot_density_g_per_ml],
      [:injector_capacity_ml, :number, injector_capacity_ml],
      [:injector_residue_ml, :number, injector_residue_ml],
    ], [
      [:loads, :count],
      [:shots_per_load, :count],
      [:shots_in_last, :count],
    ], input: false, result: true)
  end

  # Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes back.
  #
  # total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ + max(film, heel).
  #
  # Example: `batch_need(pieces: 10, cavities: 4, shot_mass_g: 50, shot_density_g_per_ml: 1,
  #   injector_capacity_ml: 120, injector_residue_ml: 5, sprue_mass_g: 10)` gives `{ total_mass_g:
  #   155.00000000000003, drawn_mass_g: 150.00000000000003, returned_mass_g: 0, pieces_mass_g: 120,
  #   sprues_mass_g: 30, kept_mass_g: 5, in_cup_mass_g: 0, shots: 3, loads: 2, shots_per_load: 2, shots_in_last:
  #   1 }`.
  #
  # @param pieces [Integer] Number of good pieces needed. 1 to 1000000.
  # @param cavities [Integer] Number of cavities that a shot fills. 1 to 1000000.
  # @param shot_mass_g [Numeric] Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.
  # @param shot_density_g_per_ml [Numeric] Density of what the injector draws: hot, voids counted. Unit: g/mL;
  #   0.001 to 25.
  # @param injector_capacity_ml [Numeric] Volume that the injector takes up at most. Unit: mL; 1e-9 to 1e15.
  # @param injector_residue_ml [Numeric, nil] Volume that stays in the injector each time it is emptied; below
  #   its capacity. Unit: mL; 0 to 1e15. Default: 0.
  # @param cleanings [Integer, nil] Number of times the injector is cleaned or goes cold, the last time
  #   included. 1 to 1000000. Default: 1.
  # @param sprue_mass_g [Numeric, nil] Mass of a shot that stays as sprue; at most the mass of the shot. Unit:
  #   g; 0 to 1e15. Default: 0.
  # @param returned [Numeric, nil] Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0.
  # @param pot_film_g [Numeric, nil] Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param pot_heel_g [Numeric, nil] Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param rejects [Numeric, nil] Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default: 0.
  # @param confidence [Numeric, nil] Confidence that enough good pieces come out. Unit: 1; above 0 to
  #   0.999999999. Default: 0.9.
  # @return [Hash{Symbol => Object}] The results by name:
  #   total_mass_g [Float] Mass to mix. Unit: g.
  #   drawn_mass_g [Float] Mass of all shots. Unit: g.
  #   returned_mass_g [Float] Mass of sprues that go back and are shot again. Unit: g.
  #   pieces_mass_g [Float] Mass of all pieces. Unit: g.
  #   sprues_mass_g [Float] Mass of sprues that are left over. Unit: g.
  #   kept_mass_g [Float] Mass that stays in the injector over the run. Unit: g.
  #   in_cup_mass_g [Float] Mass that stays in the cup: the heel, with the film in it. Unit: g.
  #   shots [Integer] Number of shots.
  #   loads [Integer] Number of injector loads.
  #   shots_per_load [Integer] Whole shots in one load.
  #   shots_in_last [Integer] Shots from the last load.
  # @raise [Error] All that is wrong with the arguments.
  def batch_need(pieces:, cavities:, shot_mass_g:, shot_density_g_per_ml:, injector_capacity_ml:, injector_residue_ml: nil, cleanings: nil, sprue_mass_g: nil, returned: nil, pot_film_g: nil, pot_heel_g: nil, rejects: nil, confidence: nil)
    Call.of("batch_need", [
      [:pieces, :count, pieces],
      [:cavities, :count, cavities],
      [:shot_mass_g, :number, shot_mass_g],
      [:shot_density_g_per_ml, :number, shot_density_g_per_ml],
      [:injector_capacity_ml, :number, injector_capacity_ml],
      [:injector_residue_ml, :number, injector_residue_ml],
      [:cleanings, :count, cleanings],
      [:sprue_mass_g, :number, sprue_mass_g],
      [:returned, :number, returned],
      [:pot_film_g, :number, pot_film_g],
      [:pot_heel_g, :number, pot_heel_g],
      [:rejects, :number, rejects],
      [:confidence, :number, confidence],
    ], [
      [:total_mass_g, :number],
      [:drawn_mass_g, :number],
      [:returned_mass_g, :number],
      [:pieces_mass_g, :number],
      [:sprues_mass_g, :number],
      [:kept_mass_g, :number],
      [:in_cup_mass_g, :number],
      [:shots, :count],
      [:loads, :count],
      [:shots_per_load, :count],
      [:shots_in_last, :count],
    ], input: true, result: true)
  end

  # Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is needed.
  #
  # The doses follow from the rounded base, so that no formula is off.
  #
  # Example: `base_to_mark(mix_needed_g: 200, base_fraction: 0.8, base_density_g_per_ml: 1, cup_capacity_ml:
  #   250, cup_mark_ml: 50, shot_mass_g: 20)` gives `{ base_volume_ml: 200, base_mass_g: 200, mix_mass_g: 250,
  #   surplus_mass_g: 49.999999999999986, extra_shots: 2 }`.
  #
  # @param mix_needed_g [Numeric] Mass of mix that is needed. Unit: g; 1e-12 to 1e15.
  # @param base_fraction [Numeric] Share of base in the mix, by mass. Unit: 1; above 0 to 1.
  # @param base_density_g_per_ml [Numeric] Density of the base, cold and liquid, as a cup measures it. Unit:
  #   g/mL; 0.001 to 25.
  # @param cup_capacity_ml [Numeric] Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.
  # @param cup_mark_ml [Numeric, nil] Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default:
  #   one mark alone, when it is full.
  # @param shot_mass_g [Numeric, nil] Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be
  #   omitted.
  # @return [Hash{Symbol => Object}] The results by name:
  #   base_volume_ml [Float] Volume of base: the mark. Unit: mL.
  #   base_mass_g [Float] Mass of that base. Unit: g.
  #   mix_mass_g [Float] Mass of the mix with all doses. Unit: g.
  #   surplus_mass_g [Float] Mass that is more than needed. Unit: g.
  #   extra_shots [Integer] Whole shots that the surplus gives, where the mass of a shot is given. Nil where
  #     there is none.
  # @raise [Error] All that is wrong with the arguments.
  def base_to_mark(mix_needed_g:, base_fraction:, base_density_g_per_ml:, cup_capacity_ml:, cup_mark_ml: nil, shot_mass_g: nil)
    Call.of("base_to_mark", [
      [:mix_needed_g, :number, mix_needed_g],
      [:base_fraction, :number, base_fraction],
      [:base_density_g_per_ml, :number, base_density_g_per_ml],
      [:cup_capacity_ml, :number, cup_capacity_ml],
      [:cup_mark_ml, :number, cup_mark_ml],
      [:shot_mass_g, :number, shot_mass_g],
    ], [
      [:base_volume_ml, :number],
      [:base_mass_g, :number],
      [:mix_mass_g, :number],
      [:surplus_mass_g, :number],
      [:extra_shots, :count],
    ], input: false, result: true)
  end

  # Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its step q, and no
  # less mix than oven and injector need.
  #
  # Example: `least_pot(doses: [[0.05, 0.05, 0.005]], base_fraction: 0.8)` gives `{ mix_mass_g: 125,
  #   base_mass_g: 100 }`.
  #
  # @param doses [Array<Array<Numeric>>] The doses: of each its smallest step, its tolerance and its ratio to
  #   the base. 1 to 64 of them. Each: Smallest step in which a dose can be measured: a drop, the smallest
  #   spoon, the readability of the balance. Unit: g; 1e-12 to 1e15. Then: Largest relative error that is
  #   accepted. Unit: 1; above 0 to below 1. Default: 0.05. Then: Dose, mass per mass of base. Unit: 1; 1e-9 to
  #   10.
  # @param base_fraction [Numeric] Share of base in the mix, by mass. Unit: 1; above 0 to 1.
  # @param oven_least_g [Numeric, nil] Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15.
  #   Default: none.
  # @param injector_least_g [Numeric, nil] Smallest mix that the injector can draw from. Unit: g; 1e-12 to
  #   1e15. Default: none.
  # @return [Hash{Symbol => Object}] The results by name:
  #   mix_mass_g [Float] Mass of the mix. Unit: g.
  #   base_mass_g [Float] Mass of base in it. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def least_pot(doses:, base_fraction:, oven_least_g: nil, injector_least_g: nil)
    Call.of("least_pot", [
      [:doses, :rows, doses, 3],
      [:base_fraction, :number, base_fraction],
      [:oven_least_g, :number, oven_least_g],
      [:injector_least_g, :number, injector_least_g],
    ], [
      [:mix_mass_g, :number],
      [:base_mass_g, :number],
    ], input: false, result: true)
  end

  # Reject rate from counted pieces, with the exact interval of a binomial share.
  #
  # Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated, mostly more.
  #
  # Example: `reject_rate(cast_pieces: 1, reject_count: 0, confidence: 0.5)` gives `{ rejects: 0, rejects_min:
  #   0, rejects_max: 0.75 }`.
  #
  # @param cast_pieces [Integer] Number of pieces that were cast. 1 to 1000000.
  # @param reject_count [Integer] Number of them that are not fit to sell. 0 to 1000000.
  # @param confidence [Numeric, nil] Confidence that enough good pieces come out. Unit: 1; above 0 to
  #   0.999999999. Default: 0.9.
  # @return [Hash{Symbol => Object}] The results by name:
  #   rejects [Float] Share of rejects. Unit: 1.
  #   rejects_min [Float] Its lower bound. Unit: 1.
  #   rejects_max [Float] Its upper bound. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def reject_rate(cast_pieces:, reject_count:, confidence: nil)
    Call.of("reject_rate", [
      [:cast_pieces, :count, cast_pieces],
      [:reject_count, :count, reject_count],
      [:confidence, :number, confidence],
    ], [
      [:rejects, :number],
      [:rejects_min, :number],
      [:rejects_max, :number],
    ], input: false, result: true)
  end

  # Measures a mass with the tools of the bench: the way with the least handling that keeps the tolerance.
  #
  # A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help gives the mass
  # from which one would.
  #
  # Example: `bench_measure(mass_to_measure_g: 12.5, tolerance: 0.02, spoons_ml: [5, 2.5],
  #   as_measured_density_g_per_ml: 1)` gives `{ mass_g: 12.5, deviation: 0, tool: "spoons", acts: 3, drops: 0,
  #   spoonfuls: [2, 1, 0, 0, 0, 0, 0, 0], cup: 0, cup_fillings: 0, cup_mark: 0 }`.
  #
  # @param mass_to_measure_g [Numeric] Mass to measure. Unit: g; 1e-12 to 1e15.
  # @param tolerance [Numeric, nil] Largest relative error that is accepted. Unit: 1; above 0 to below 1.
  #   Default: 0.05.
  # @param balance_readability_g [Numeric, nil] Smallest difference that the balance shows; without it there
  #   is no balance. Unit: g; 1e-12 to 1e15. Default: none.
  # @param balance_capacity_g [Numeric, nil] Highest load of the balance. Unit: g; 1e-12 to 1e15. Default:
  #   5000 times its readability.
  # @param balance_least_load_g [Numeric, nil] Minimum load for which the balance is trusted. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param spoons_ml [Array<Numeric>, nil] Volumes of the measuring spoons. 1 to 8 of them. Default: none.
  #   Each: Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
  # @param cups [Array<Array<Numeric>>, nil] The cups with evenly spaced marks: of each the distance between
  #   marks and the capacity. 1 to 64 of them. Default: none. Each: Distance between the marks of the cup. Unit:
  #   mL; 1e-9 to 1e15. Default: one mark alone, when it is full. Then: Volume of the cup up to its last mark.
  #   Unit: mL; 1e-9 to 1e15.
  # @param as_measured_density_g_per_ml [Numeric, nil] Density of the material in a measure: of a liquid its
  #   density, of a powder its bulk density, level and not tapped. Unit: g/mL; 0.001 to 25. Default: none.
  # @param drop_mass_g [Numeric, nil] Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.
  # @return [Hash{Symbol => Object}] The results by name:
  #   mass_g [Float] Mass that it gives. Unit: g.
  #   deviation [Float] (given − needed)/needed. Unit: 1.
  #   tool [String] The tool: balance, cup, spoons or drops. One of `balance`, `cup`, `spoons`, `drops`.
  #   acts [Integer] Amount of handling: readings, fillings, spoonfuls, tens of drops.
  #   drops [Integer] Number of drops.
  #   spoonfuls [Array<Integer>] Number of level spoonfuls of each spoon, in the order of the spoons.
  #   cup [Integer] Which cup, counted from 1; 0 without one.
  #   cup_fillings [Integer] Number of times that cup is filled to its last mark.
  #   cup_mark [Integer] Mark to which it is filled once more, counted from 1; 0 where it is not.
  # @raise [Error] All that is wrong with the arguments.
  def bench_measure(mass_to_measure_g:, tolerance: nil, balance_readability_g: nil, balance_capacity_g: nil, balance_least_load_g: nil, spoons_ml: nil, cups: nil, as_measured_density_g_per_ml: nil, drop_mass_g: nil)
    Call.of("bench_measure", [
      [:mass_to_measure_g, :number, mass_to_measure_g],
      [:tolerance, :number, tolerance],
      [:balance_readability_g, :number, balance_readability_g],
      [:balance_capacity_g, :number, balance_capacity_g],
      [:balance_least_load_g, :number, balance_least_load_g],
      [:spoons_ml, :list, spoons_ml],
      [:cups, :rows, cups, 2],
      [:as_measured_density_g_per_ml, :number, as_measured_density_g_per_ml],
      [:drop_mass_g, :number, drop_mass_g],
    ], [
      [:mass_g, :number],
      [:deviation, :number],
      [:tool, :word, TOOL_WORDS],
      [:acts, :count],
      [:drops, :count],
      [:spoonfuls, :list, 8],
      [:cup, :count],
      [:cup_fillings, :count],
      [:cup_mark, :count],
    ], input: true, result: true)
  end

  # Sink rate of a piece with its hook: the final speed, a model value.
  #
  # Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a sphere; the
  # equations, sources and bounds are those of the module `process::sink`. `motion` is whether the model holds
  # for such a piece at all. A drop that the shop timed (depth, time, density) replaces the published drag by
  # the piece's own.
  #
  # Example: `sink_rate(piece_density_g_per_ml: 1.1, piece_volume_ml: 9.5, diameter_mm: 10,
  #   water_temperature_celsius: 20, length_mm: 121, hook_mass_g: 2, hook_volume_ml: 0.25)` gives `{
  #   sink_rate_cm_per_s: 22.04104669853903, sink_rate_min_cm_per_s: 19.297542687585494, sink_rate_max_cm_per_s:
  #   30.86051085510933, motion: "swings", reynolds: 2196.2834650479926, drag_coefficient: 0.9083361655585607,
  #   sink_time_s: nil }`.
  #
  # @param piece_density_g_per_ml [Numeric] Density of the piece, its salt and voids counted. Unit: g/mL;
  #   0.001 to 25.
  # @param piece_volume_ml [Numeric] Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
  # @param diameter_mm [Numeric] Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
  # @param water_temperature_celsius [Numeric] Temperature of the water. Unit: °C; 0 to 40.
  # @param length_mm [Numeric, nil] Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm;
  #   1e-6 to 1e6. Default: none.
  # @param shape [String, nil] Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where
  #   a length is given, else a ball. One of `stick`, `ball`.
  # @param hook_mass_g [Numeric, nil] Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param hook_volume_ml [Numeric, nil] Volume that hook and weight displace; give their mass too. Unit: mL;
  #   0 to 1e15. Default: 0.
  # @param salinity_practical [Numeric, nil] Practical salinity as a probe reads it, about 35 in the ocean;
  #   give this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
  # @param salinity_absolute [Numeric, nil] Absolute salinity, mass of salt per mass of sea water (35 g/kg is
  #   0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
  # @param density_uncertainty_g_per_ml [Numeric, nil] Standard uncertainty of the density of the piece; its
  #   bounds are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.
  # @param depth_m [Numeric, nil] Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none.
  # @param drop_depth_m [Numeric, nil] Depth of a timed drop, the piece let go just below the surface. Unit:
  #   m; 1e-9 to 12000. Default: none.
  # @param drop_time_s [Numeric, nil] Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
  # @param drop_density_g_per_ml [Numeric, nil] Density of the piece that was dropped. Unit: g/mL; 0.001 to
  #   25. Default: none.
  # @return [Hash{Symbol => Object}] The results by name:
  #   sink_rate_cm_per_s [Float] Sink rate. Unit: cm/s.
  #   sink_rate_min_cm_per_s [Float] Lower bound; 0 where the piece may hang or float. Unit: cm/s.
  #   sink_rate_max_cm_per_s [Float] Upper bound. Unit: cm/s.
  #   motion [String] Whether it sinks straight: straight, may-swing or swings. One of `straight`,
  #     `may-swing`, `swings`.
  #   reynolds [Float] Reynolds number. Unit: 1.
  #   drag_coefficient [Float] Drag coefficient, on length times diameter of a stick and the cross-section of
  #     a ball. Unit: 1.
  #   sink_time_s [Float] Time to the depth, let go at rest just below the surface. Unit: s. Nil where there
  #     is none.
  # @raise [Error] All that is wrong with the arguments.
  def sink_rate(piece_density_g_per_ml:, piece_volume_ml:, diameter_mm:, water_temperature_celsius:, length_mm: nil, shape: nil, hook_mass_g: nil, hook_volume_ml: nil, salinity_practical: nil, salinity_absolute: nil, density_uncertainty_g_per_ml: nil, depth_m: nil, drop_depth_m: nil, drop_time_s: nil, drop_density_g_per_ml: nil)
    Call.of("sink_rate", [
      [:piece_density_g_per_ml, :number, piece_density_g_per_ml],
      [:piece_volume_ml, :number, piece_volume_ml],
      [:diameter_mm, :number, diameter_mm],
      [:water_temperature_celsius, :number, water_temperature_celsius],
      [:length_mm, :number, length_mm],
      [:shape, :word, shape, SHAPE_WORDS],
      [:hook_mass_g, :number, hook_mass_g],
      [:hook_volume_ml, :number, hook_volume_ml],
      [:salinity_practical, :number, salinity_practical],
      [:salinity_absolute, :number, salinity_absolute],
      [:density_uncertainty_g_per_ml, :number, density_uncertainty_g_per_ml],
      [:depth_m, :number, depth_m],
      [:drop_depth_m, :number, drop_depth_m],
      [:drop_time_s, :number, drop_time_s],
      [:drop_density_g_per_ml, :number, drop_density_g_per_ml],
    ], [
      [:sink_rate_cm_per_s, :number],
      [:sink_rate_min_cm_per_s, :number],
      [:sink_rate_max_cm_per_s, :number],
      [:motion, :word, MOTION_WORDS],
      [:reynolds, :number],
      [:drag_coefficient, :number],
      [:sink_time_s, :number],
    ], input: true, result: true)
  end

  # Density at which a piece sinks at a rate: the finished density to salt for.
  #
  # Example: `density_for_sink_rate(sink_rate_cm_per_s: 22.04104669853903, piece_volume_ml: 9.5, diameter_mm:
  #   10, water_temperature_celsius: 20, length_mm: 121, hook_mass_g: 2, hook_volume_ml: 0.25)` gives
  #   `1.0999999999999979`.
  #
  # @param sink_rate_cm_per_s [Numeric] Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.
  # @param piece_volume_ml [Numeric] Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.
  # @param diameter_mm [Numeric] Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.
  # @param water_temperature_celsius [Numeric] Temperature of the water. Unit: °C; 0 to 40.
  # @param length_mm [Numeric, nil] Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm;
  #   1e-6 to 1e6. Default: none.
  # @param shape [String, nil] Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where
  #   a length is given, else a ball. One of `stick`, `ball`.
  # @param hook_mass_g [Numeric, nil] Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to
  #   1e15. Default: 0.
  # @param hook_volume_ml [Numeric, nil] Volume that hook and weight displace; give their mass too. Unit: mL;
  #   0 to 1e15. Default: 0.
  # @param salinity_practical [Numeric, nil] Practical salinity as a probe reads it, about 35 in the ocean;
  #   give this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.
  # @param salinity_absolute [Numeric, nil] Absolute salinity, mass of salt per mass of sea water (35 g/kg is
  #   0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.
  # @param drop_depth_m [Numeric, nil] Depth of a timed drop, the piece let go just below the surface. Unit:
  #   m; 1e-9 to 12000. Default: none.
  # @param drop_time_s [Numeric, nil] Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.
  # @param drop_density_g_per_ml [Numeric, nil] Density of the piece that was dropped. Unit: g/mL; 0.001 to
  #   25. Default: none.
  # @return [Float] Density of the piece, voids and salt counted. Unit: g/mL.
  # @raise [Error] All that is wrong with the arguments.
  def density_for_sink_rate(sink_rate_cm_per_s:, piece_volume_ml:, diameter_mm:, water_temperature_celsius:, length_mm: nil, shape: nil, hook_mass_g: nil, hook_volume_ml: nil, salinity_practical: nil, salinity_absolute: nil, drop_depth_m: nil, drop_time_s: nil, drop_density_g_per_ml: nil)
    Call.of("density_for_sink_rate", [
      [:sink_rate_cm_per_s, :number, sink_rate_cm_per_s],
      [:piece_volume_ml, :number, piece_volume_ml],
      [:diameter_mm, :number, diameter_mm],
      [:water_temperature_celsius, :number, water_temperature_celsius],
      [:length_mm, :number, length_mm],
      [:shape, :word, shape, SHAPE_WORDS],
      [:hook_mass_g, :number, hook_mass_g],
      [:hook_volume_ml, :number, hook_volume_ml],
      [:salinity_practical, :number, salinity_practical],
      [:salinity_absolute, :number, salinity_absolute],
      [:drop_depth_m, :number, drop_depth_m],
      [:drop_time_s, :number, drop_time_s],
      [:drop_density_g_per_ml, :number, drop_density_g_per_ml],
    ], [
      [:piece_density_g_per_ml, :number],
    ], input: true, result: false)
  end

  # Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own points.
  #
  # Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it refuses. Shore
  # scales do not convert into each other (ASTM D2240): all points are on one.
  #
  # Example: `hardness(points: [[0, 60], [0.2, 40]], scale: "shore-00", softener_ratio: 0.1)` gives `50`.
  #
  # @param points [Array<Array<Numeric>>] The shop's own measured points, by rising ratio: of each the ratio
  #   and the durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per
  #   mass of base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.
  # @param scale [String] The scale of the durometer. One of `shore-00`, `shore-a`.
  # @param softener_ratio [Numeric] Softener or hardener, mass per mass of base; between the measured points.
  #   Unit: 1; 0 to 100.
  # @return [Float] Durometer reading. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def hardness(points:, scale:, softener_ratio:)
    Call.of("hardness", [
      [:points, :rows, points, 2],
      [:scale, :word, scale, SCALE_WORDS],
      [:softener_ratio, :number, softener_ratio],
    ], [
      [:hardness, :number],
    ], input: false, result: false)
  end

  # Ratio of softener or hardener for a hardness: the other way round.
  #
  # Example: `softener_ratio(points: [[0, 60], [0.2, 40]], scale: "shore-00", hardness: 50)` gives
  #   `0.10000000000000005`.
  #
  # @param points [Array<Array<Numeric>>] The shop's own measured points, by rising ratio: of each the ratio
  #   and the durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per
  #   mass of base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.
  # @param scale [String] The scale of the durometer. One of `shore-00`, `shore-a`.
  # @param hardness [Numeric] Durometer reading. Unit: 1; 0 to 100.
  # @return [Float] Mass per mass of base. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def softener_ratio(points:, scale:, hardness:)
    Call.of("softener_ratio", [
      [:points, :rows, points, 2],
      [:scale, :word, scale, SCALE_WORDS],
      [:hardness, :number, hardness],
    ], [
      [:softener_ratio, :number],
    ], input: false, result: false)
  end

  # Extra softener for a salted body, between the shop's own points.
  #
  # Salt makes a body harder; the shop has found what softener makes up for it. Between the points a monotone
  # cubic answers, outside it refuses.
  #
  # Example: `salted_softener(salted_points: [[0, 0], [0.2, 0.1]], salt_of_base: 0.1)` gives `0.05`.
  #
  # @param salted_points [Array<Array<Numeric>>] The shop's own measured points, by rising salt: of each the
  #   salt and the softener, mass per mass of base. 2 to 1000 of them. Each: Salt of a measured point, mass per
  #   mass of base. Unit: 1; 0 to 10. Then: Softener that the shop adds at that salt, mass per mass of base.
  #   Unit: 1; 0 to 10.
  # @param salt_of_base [Numeric] Salt, mass per mass of base; between the measured points. Unit: 1; 0 to 10.
  # @return [Float] Softener on top of the unsalted body's, mass per mass of base. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def salted_softener(salted_points:, salt_of_base:)
    Call.of("salted_softener", [
      [:salted_points, :rows, salted_points, 2],
      [:salt_of_base, :number, salt_of_base],
    ], [
      [:softener_ratio, :number],
    ], input: false, result: false)
  end

  # Density of air-free water at 101.325 kPa, 0 to 40 °C.
  #
  # Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.
  #
  # Example: `water_density(water_temperature_celsius: 20)` gives `0.9982067455596167`.
  #
  # @param water_temperature_celsius [Numeric] Temperature of the water. Unit: °C; 0 to 40.
  # @return [Float] Density of the water. Unit: g/mL.
  # @raise [Error] All that is wrong with the arguments.
  def water_density(water_temperature_celsius:)
    Call.of("water_density", [
      [:water_temperature_celsius, :number, water_temperature_celsius],
    ], [
      [:density_g_per_ml, :number],
    ], input: false, result: false)
  end

  # Volume of a cavity from the reading of a balance for the water that it holds.
  #
  # Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).
  #
  # Example: `cavity_of_water(water_mass_g: 10, water_temperature_celsius: 20)` gives `10.028511692201585`.
  #
  # @param water_mass_g [Numeric] Reading of the balance for the water in one cavity: filled less empty. Unit:
  #   g; 1e-12 to 1e15.
  # @param water_temperature_celsius [Numeric] Temperature of the water. Unit: °C; 0 to 40.
  # @param air_pressure_kpa [Numeric, nil] Air pressure at the balance, not reduced to sea level. Unit: kPa;
  #   45 to 110. Default: 101.325.
  # @return [Float] Volume of the cavity. Unit: mL.
  # @raise [Error] All that is wrong with the arguments.
  def cavity_of_water(water_mass_g:, water_temperature_celsius:, air_pressure_kpa: nil)
    Call.of("cavity_of_water", [
      [:water_mass_g, :number, water_mass_g],
      [:water_temperature_celsius, :number, water_temperature_celsius],
      [:air_pressure_kpa, :number, air_pressure_kpa],
    ], [
      [:cavity_volume_ml, :number],
    ], input: false, result: false)
  end

  # Air pressure of the standard atmosphere at an altitude.
  #
  # U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3 %.
  #
  # Example: `standard_pressure(altitude_m: 0)` gives `101.325`.
  #
  # @param altitude_m [Numeric] Height above sea level, as a map gives it; negative below it. Unit: m; -5000
  #   to 11000.
  # @return [Float] Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
  #   Unit: kPa.
  # @raise [Error] All that is wrong with the arguments.
  def standard_pressure(altitude_m:)
    Call.of("standard_pressure", [
      [:altitude_m, :number, altitude_m],
    ], [
      [:station_pressure_kpa, :number],
    ], input: false, result: false)
  end

  # Air pressure at the place itself from one that a weather report gives, reduced to sea level.
  #
  # Undoes the reduction by the standard atmosphere, which is the definition of an altimeter setting.
  #
  # Example: `station_pressure(reported_pressure_kpa: 101.325, altitude_m: 0)` gives `101.325`.
  #
  # @param reported_pressure_kpa [Numeric] Air pressure as a weather report gives it, reduced to sea level;
  #   needs the altitude. Unit: kPa; 85 to 110.
  # @param altitude_m [Numeric] Height above sea level, as a map gives it; negative below it. Unit: m; -5000
  #   to 11000.
  # @return [Float] Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
  #   Unit: kPa.
  # @raise [Error] All that is wrong with the arguments.
  def station_pressure(reported_pressure_kpa:, altitude_m:)
    Call.of("station_pressure", [
      [:reported_pressure_kpa, :number, reported_pressure_kpa],
      [:altitude_m, :number, altitude_m],
    ], [
      [:station_pressure_kpa, :number],
    ], input: false, result: false)
  end

  # Volume of a pot in a vacuum, with the air that it holds.
  #
  # Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as a gauge
  # shows it or as the pressure that is left; with a gauge the lowest pressure counts that its tolerance
  # allows.
  #
  # Example: `swollen_volume(liquid_volume_ml: 450, entrained_air: 0.1, station_pressure_kpa: 100,
  #   absolute_pressure_kpa: 10)` gives `{ swollen_volume_ml: 950, standing_volume_ml: 500,
  #   absolute_pressure_kpa: 10 }`.
  #
  # @param liquid_volume_ml [Numeric] Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
  # @param entrained_air [Numeric] Share of air in the mix by volume, under the outside pressure. Unit: 1; 0
  #   to below 1.
  # @param station_pressure_kpa [Numeric] Air pressure at the place itself, not reduced to sea level. Unit:
  #   kPa; 22.6 to 178.
  # @param gauge_vacuum_kpa [Numeric, nil] Reading of a vacuum gauge, which counts down from the air outside;
  #   give this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
  # @param absolute_pressure_kpa [Numeric, nil] Pressure that is left in the chamber, counted from nothing at
  #   all; give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
  # @param dial_tolerance_kpa [Numeric, nil] How far the vacuum gauge may be off to either side; the default,
  #   0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
  # @param vapor_pressure_kpa [Numeric, nil] Vapor pressure of the liquid; 0 for a dry plasticizer. Below the
  #   pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.
  # @param damp_at_celsius [Numeric, nil] Temperature of a damp pot, whose water boils under vacuum; omit it
  #   for a dry pot. Unit: °C; 0.01 to 200. Default: none.
  # @return [Hash{Symbol => Object}] The results by name:
  #   swollen_volume_ml [Float] Volume in the vacuum. Unit: mL.
  #   standing_volume_ml [Float] Volume before, bubbles included. Unit: mL.
  #   absolute_pressure_kpa [Float] Pressure that is left in the chamber. Unit: kPa.
  # @raise [Error] All that is wrong with the arguments.
  def swollen_volume(liquid_volume_ml:, entrained_air:, station_pressure_kpa:, gauge_vacuum_kpa: nil, absolute_pressure_kpa: nil, dial_tolerance_kpa: nil, vapor_pressure_kpa: nil, damp_at_celsius: nil)
    Call.of("swollen_volume", [
      [:liquid_volume_ml, :number, liquid_volume_ml],
      [:entrained_air, :number, entrained_air],
      [:station_pressure_kpa, :number, station_pressure_kpa],
      [:gauge_vacuum_kpa, :number, gauge_vacuum_kpa],
      [:absolute_pressure_kpa, :number, absolute_pressure_kpa],
      [:dial_tolerance_kpa, :number, dial_tolerance_kpa],
      [:vapor_pressure_kpa, :number, vapor_pressure_kpa],
      [:damp_at_celsius, :number, damp_at_celsius],
    ], [
      [:swollen_volume_ml, :number],
      [:standing_volume_ml, :number],
      [:absolute_pressure_kpa, :number],
    ], input: true, result: true)
  end

  # Share of air in a pot, from how high it was seen to rise in a vacuum.
  #
  # With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air before and
  # after: φ/(1 − φ) = (f − 1)/(b₂ − f b₁).
  #
  # Example: `entrained_air(rise: 1.9, station_pressure_kpa: 100, absolute_pressure_kpa: 10)` gives
  #   `0.09999999999999999`.
  #
  # @param rise [Numeric] Level of a pot in the vacuum over its level before; give this or the entrained air.
  #   Unit: 1; 1 to 1000.
  # @param station_pressure_kpa [Numeric] Air pressure at the place itself, not reduced to sea level. Unit:
  #   kPa; 22.6 to 178.
  # @param gauge_vacuum_kpa [Numeric, nil] Reading of a vacuum gauge, which counts down from the air outside;
  #   give this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
  # @param absolute_pressure_kpa [Numeric, nil] Pressure that is left in the chamber, counted from nothing at
  #   all; give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
  # @param dial_tolerance_kpa [Numeric, nil] How far the vacuum gauge may be off to either side; the default,
  #   0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
  # @param vapor_pressure_kpa [Numeric, nil] Vapor pressure of the liquid; 0 for a dry plasticizer. Below the
  #   pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.
  # @param damp_at_celsius [Numeric, nil] Temperature of a damp pot, whose water boils under vacuum; omit it
  #   for a dry pot. Unit: °C; 0.01 to 200. Default: none.
  # @return [Float] Share of air in the mix by volume, under the outside pressure. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def entrained_air(rise:, station_pressure_kpa:, gauge_vacuum_kpa: nil, absolute_pressure_kpa: nil, dial_tolerance_kpa: nil, vapor_pressure_kpa: nil, damp_at_celsius: nil)
    Call.of("entrained_air", [
      [:rise, :number, rise],
      [:station_pressure_kpa, :number, station_pressure_kpa],
      [:gauge_vacuum_kpa, :number, gauge_vacuum_kpa],
      [:absolute_pressure_kpa, :number, absolute_pressure_kpa],
      [:dial_tolerance_kpa, :number, dial_tolerance_kpa],
      [:vapor_pressure_kpa, :number, vapor_pressure_kpa],
      [:damp_at_celsius, :number, damp_at_celsius],
    ], [
      [:entrained_air, :number],
    ], input: true, result: false)
  end

  # Vessel for a pot in a vacuum, and how to fill one that is too small.
  #
  # The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel the answer
  # gives the level to fill to, on a mark where it has any, and the number of fills.
  #
  # Example: `degas_vessel(liquid_volume_ml: 450, entrained_air: 0.1, station_pressure_kpa: 100,
  #   absolute_pressure_kpa: 10, vessel_brim_ml: 600, vessel_mark_ml: 50)` gives `{ vessel_volume_ml:
  #   1055.5555555555554, fill_mark_ml: 250, fills: 2, fill_level_ml: 250, fill_swollen_ml: 475 }`.
  #
  # @param liquid_volume_ml [Numeric] Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.
  # @param entrained_air [Numeric] Share of air in the mix by volume, under the outside pressure. Unit: 1; 0
  #   to below 1.
  # @param station_pressure_kpa [Numeric] Air pressure at the place itself, not reduced to sea level. Unit:
  #   kPa; 22.6 to 178.
  # @param gauge_vacuum_kpa [Numeric, nil] Reading of a vacuum gauge, which counts down from the air outside;
  #   give this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.
  # @param absolute_pressure_kpa [Numeric, nil] Pressure that is left in the chamber, counted from nothing at
  #   all; give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.
  # @param dial_tolerance_kpa [Numeric, nil] How far the vacuum gauge may be off to either side; the default,
  #   0.9 inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.
  # @param vapor_pressure_kpa [Numeric, nil] Vapor pressure of the liquid; 0 for a dry plasticizer. Below the
  #   pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.
  # @param damp_at_celsius [Numeric, nil] Temperature of a damp pot, whose water boils under vacuum; omit it
  #   for a dry pot. Unit: °C; 0.01 to 200. Default: none.
  # @param vessel_spare [Numeric, nil] Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default:
  #   0.1.
  # @param vessel_brim_ml [Numeric, nil] Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. It may
  #   be omitted.
  # @param vessel_mark_ml [Numeric, nil] Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default:
  #   any level.
  # @return [Hash{Symbol => Object}] The results by name:
  #   vessel_volume_ml [Float] Volume to the brim of a vessel that takes the pot at once. Unit: mL.
  #   fill_mark_ml [Float] Level to fill the given vessel to at most, bubbles included. Unit: mL. Nil where
  #     there is none.
  #   fills [Integer] Number of fills of the given vessel. Nil where there is none.
  #   fill_level_ml [Float] Level of each fill, shared out evenly, bubbles included. Unit: mL. Nil where there
  #     is none.
  #   fill_swollen_ml [Float] Volume of an even fill in the vacuum. Unit: mL. Nil where there is none.
  # @raise [Error] All that is wrong with the arguments.
  def degas_vessel(liquid_volume_ml:, entrained_air:, station_pressure_kpa:, gauge_vacuum_kpa: nil, absolute_pressure_kpa: nil, dial_tolerance_kpa: nil, vapor_pressure_kpa: nil, damp_at_celsius: nil, vessel_spare: nil, vessel_brim_ml: nil, vessel_mark_ml: nil)
    Call.of("degas_vessel", [
      [:liquid_volume_ml, :number, liquid_volume_ml],
      [:entrained_air, :number, entrained_air],
      [:station_pressure_kpa, :number, station_pressure_kpa],
      [:gauge_vacuum_kpa, :number, gauge_vacuum_kpa],
      [:absolute_pressure_kpa, :number, absolute_pressure_kpa],
      [:dial_tolerance_kpa, :number, dial_tolerance_kpa],
      [:vapor_pressure_kpa, :number, vapor_pressure_kpa],
      [:damp_at_celsius, :number, damp_at_celsius],
      [:vessel_spare, :number, vessel_spare],
      [:vessel_brim_ml, :number, vessel_brim_ml],
      [:vessel_mark_ml, :number, vessel_mark_ml],
    ], [
      [:vessel_volume_ml, :number],
      [:fill_mark_ml, :number],
      [:fills, :count],
      [:fill_level_ml, :number],
      [:fill_swollen_ml, :number],
    ], input: true, result: true)
  end

  # Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the
  # film.
  #
  # A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.
  #
  # Example: `flake_count(cut: "1 mm square", thickness_um: 50, film_density_g_per_ml: 1.4, flake_dose_g:
  #   0.7)` gives `{ particles: 10000, area_cm2: 99.99999999999999 }`.
  #
  # @param cut [String] Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.
  #   0.05 to 6.35 mm.
  # @param thickness_um [Numeric] Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
  # @param film_density_g_per_ml [Numeric] Density of the film that the flake is cut from. Unit: g/mL; 0.001
  #   to 25.
  # @param flake_dose_g [Numeric] Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
  # @return [Hash{Symbol => Object}] The results by name:
  #   particles [Float] Number of particles, not rounded. Unit: 1.
  #   area_cm2 [Float] Area of film, one face of every particle. Unit: cm2.
  # @raise [Error] All that is wrong with the arguments.
  def flake_count(cut:, thickness_um:, film_density_g_per_ml:, flake_dose_g:)
    Call.of("flake_count", [
      [:cut, :text, cut],
      [:thickness_um, :number, thickness_um],
      [:film_density_g_per_ml, :number, film_density_g_per_ml],
      [:flake_dose_g, :number, flake_dose_g],
    ], [
      [:particles, :number],
      [:area_cm2, :number],
    ], input: false, result: true)
  end

  # Dose of another flake in place of one, with as much area or as many particles.
  #
  # The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives
  # both.
  #
  # Example: `flake_swap(cut: "1 mm square", thickness_um: 50, film_density_g_per_ml: 1.4, flake_dose_g: 0.7,
  #   other_cut: "0.5 mm square", other_thickness_um: 50, other_film_density_g_per_ml: 1.4,
  #   other_as_scooped_g_per_ml: 0.35)` gives `{ mass_g: 0.7, scoop_ml: 2, count_ratio: 4, area_ratio: 1 }`.
  #
  # @param cut [String] Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm square`.
  #   0.05 to 6.35 mm.
  # @param thickness_um [Numeric] Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to 6350.
  # @param film_density_g_per_ml [Numeric] Density of the film that the flake is cut from. Unit: g/mL; 0.001
  #   to 25.
  # @param flake_dose_g [Numeric] Mass of the dose of flake. Unit: g; 1e-12 to 1e15.
  # @param other_cut [String] Size and shape of the other flake. 0.05 to 6.35 mm.
  # @param other_thickness_um [Numeric] Thickness of the film of the other flake; below the size of its cut.
  #   Unit: µm; 1e-3 to 6350.
  # @param other_film_density_g_per_ml [Numeric] Density of the film of the other flake. Unit: g/mL; 0.001 to
  #   25.
  # @param other_as_scooped_g_per_ml [Numeric, nil] Bulk density of the other flake, level in the spoon. Unit:
  #   g/mL; 0.001 to 25. Default: none.
  # @param alike [String, nil] What the two doses of flake have in common: the number of particles or the area
  #   of film. Default: area. One of `count`, `area`.
  # @return [Hash{Symbol => Object}] The results by name:
  #   mass_g [Float] Mass of the other flake. Unit: g.
  #   scoop_ml [Float] Volume to scoop of it, where its bulk density is given. Unit: mL. Nil where there is
  #     none.
  #   count_ratio [Float] Particles of the other dose over those of the first. Unit: 1.
  #   area_ratio [Float] Area of the other dose over that of the first. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def flake_swap(cut:, thickness_um:, film_density_g_per_ml:, flake_dose_g:, other_cut:, other_thickness_um:, other_film_density_g_per_ml:, other_as_scooped_g_per_ml: nil, alike: nil)
    Call.of("flake_swap", [
      [:cut, :text, cut],
      [:thickness_um, :number, thickness_um],
      [:film_density_g_per_ml, :number, film_density_g_per_ml],
      [:flake_dose_g, :number, flake_dose_g],
      [:other_cut, :text, other_cut],
      [:other_thickness_um, :number, other_thickness_um],
      [:other_film_density_g_per_ml, :number, other_film_density_g_per_ml],
      [:other_as_scooped_g_per_ml, :number, other_as_scooped_g_per_ml],
      [:alike, :word, alike, ALIKE_WORDS],
    ], [
      [:mass_g, :number],
      [:scoop_ml, :number],
      [:count_ratio, :number],
      [:area_ratio, :number],
    ], input: true, result: true)
  end

  # Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).
  #
  # ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.
  #
  # Example: `color_difference(lightness: 50, a: 2.6772, b: -79.7751, other_lightness: 50, other_a: 0,
  #   other_b: -82.7485)` gives `2.042459680156571`.
  #
  # @param lightness [Numeric] L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100.
  # @param a [Numeric] a* of the color: green below 0, red above. Unit: 1; -200 to 200.
  # @param b [Numeric] b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200.
  # @param other_lightness [Numeric] L* of the other color. Unit: 1; 0 to 100.
  # @param other_a [Numeric] a* of the other color. Unit: 1; -200 to 200.
  # @param other_b [Numeric] b* of the other color. Unit: 1; -200 to 200.
  # @return [Float] ΔE₀₀. Unit: 1.
  # @raise [Error] All that is wrong with the arguments.
  def color_difference(lightness:, a:, b:, other_lightness:, other_a:, other_b:)
    Call.of("color_difference", [
      [:lightness, :number, lightness],
      [:a, :number, a],
      [:b, :number, b],
      [:other_lightness, :number, other_lightness],
      [:other_a, :number, other_a],
      [:other_b, :number, other_b],
    ], [
      [:difference, :number],
    ], input: false, result: false)
  end

  # Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref)) dt.
  #
  # Between two readings the temperature is taken as straight. The activation energy is the supplier's;
  # published ones of PVC are 117.5 to 170 kJ/mol.
  #
  # Example: `equivalent_time(readings: [[0, 175], [600, 175]], activation_energy_kj_per_mol: 120,
  #   reference_temperature_celsius: 175)` gives `600`.
  #
  # @param readings [Array<Array<Numeric>>] Temperatures in the order of time, taken as straight between. 2 to
  #   100000 of them. Each: Time of a reading, after that of the one before. Unit: s; 0 to 1e15. Then:
  #   Temperature of a reading. Unit: °C; -73 to 427.
  # @param activation_energy_kj_per_mol [Numeric] Activation energy of the decay in the heat; state its source
  #   in a book. Unit: kJ/mol; 10 to 500.
  # @param reference_temperature_celsius [Numeric] Temperature at which the time is counted. Unit: °C; -73 to
  #   427.
  # @return [Float] Equivalent time. Unit: s.
  # @raise [Error] All that is wrong with the arguments.
  def equivalent_time(readings:, activation_energy_kj_per_mol:, reference_temperature_celsius:)
    Call.of("equivalent_time", [
      [:readings, :rows, readings, 2],
      [:activation_energy_kj_per_mol, :number, activation_energy_kj_per_mol],
      [:reference_temperature_celsius, :number, reference_temperature_celsius],
    ], [
      [:equivalent_time_s, :number],
    ], input: false, result: false)
  end

  # Heat budget that is left of a pot, in equivalent time at the reference temperature.
  #
  # More stabilizer than the budget is stated for buys the extra time that its maker states; without that
  # figure it is refused.
  #
  # Example: `budget_left(heat_budget_s: 1800, equivalent_time_s: 600)` gives `{ budget_s: 1800, left_s: 1200,
  #   overspent_s: 0 }`.
  #
  # @param heat_budget_s [Numeric] Time at the reference temperature that the plastisol withstands. Unit: s;
  #   1e-6 to 1e15.
  # @param equivalent_time_s [Numeric] Equivalent time that the pot has spent so far, at the temperature of
  #   its budget. Unit: s; 0 to 1e15.
  # @param budget_with [Numeric, nil] Stabilizer that the heat budget is stated for, by mass of base. Unit: 1;
  #   0 to 1. Default: 0.
  # @param stabilizer_dose [Numeric, nil] Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as
  #   `budget_with`.
  # @param extra_time_s [Numeric, nil] Equivalent time that more of the stabilizer buys, per mass of it per
  #   mass of base: 30000 s is 5 min for every 1 %. Unit: s; 1e-6 to 1e15. Default: none.
  # @param extra_most [Numeric, nil] Highest dose of stabilizer for which the extra time is known, by mass of
  #   base. Unit: 1; 0 to 1. Default: none.
  # @return [Hash{Symbol => Object}] The results by name:
  #   budget_s [Float] Budget at this dose of stabilizer. Unit: s.
  #   left_s [Float] Time that is left; 0 where more was spent. Unit: s.
  #   overspent_s [Float] Time that was spent beyond the budget; 0 where it was not. Unit: s.
  # @raise [Error] All that is wrong with the arguments.
  def budget_left(heat_budget_s:, equivalent_time_s:, budget_with: nil, stabilizer_dose: nil, extra_time_s: nil, extra_most: nil)
    Call.of("budget_left", [
      [:heat_budget_s, :number, heat_budget_s],
      [:equivalent_time_s, :number, equivalent_time_s],
      [:budget_with, :number, budget_with],
      [:stabilizer_dose, :number, stabilizer_dose],
      [:extra_time_s, :number, extra_time_s],
      [:extra_most, :number, extra_most],
    ], [
      [:budget_s, :number],
      [:left_s, :number],
      [:overspent_s, :number],
    ], input: false, result: true)
  end

  # Heating time of a pot in the oven, without a break, by the shop's own timings.
  #
  # t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module
  # `process::heat`). An amount of more than 1.6 times the timed ones is refused. Without timings the rated
  # power gives a first guess.
  #
  # Example: `heat_time(pot_mass_g: 300, specific_heat_j_per_g_k: 2, heated_from_celsius: 20,
  #   heated_to_celsius: 170, timings: [[200, 20, 120, 80], [400, 20, 120, 160]])` gives `{ heat_time_s: 180,
  #   heat_time_uncertainty_s: 13.46996659238619, power_w: 500, beyond: nil }`.
  #
  # @param pot_mass_g [Numeric] Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
  # @param specific_heat_j_per_g_k [Numeric] Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to
  #   10.
  # @param heated_from_celsius [Numeric] The temperature before heating. Unit: °C; -73 to 427.
  # @param heated_to_celsius [Numeric] The temperature after heating, above that before. Unit: °C; -73 to 427.
  # @param timings [Array<Array<Numeric>>, nil] Heatings that the shop has timed, all at one setting: of each
  #   the mass of the mix, the temperatures before and after and the time; needed without the rated power. 1 to
  #   1000 of them. Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15. Then:
  #   Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed heating,
  #   stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating. Unit:
  #   s; 1e-3 to 1e9.
  # @param oven_power_w [Numeric, nil] Rated power of the oven, its output at full power: a first guess, not
  #   used once there are timings; needed without them. Unit: W; 50 to 10000. Default: none.
  # @param setting [Numeric, nil] Setting of the oven, as a share of full power. Unit: 1; above 0 to 1.
  #   Default: that of the timings.
  # @param specific_heat_rise_per_kelvin [Numeric, nil] Rise of the specific heat per kelvin, as a share of
  #   that at 25 °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
  # @param timed_specific_heat_j_per_g_k [Numeric, nil] Specific heat of what was timed. Unit: J/(g.K); 0.1 to
  #   10. Default: as `specific_heat_j_per_g_k`.
  # @param vessel_mass_g [Numeric, nil] Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the
  #   timings.
  # @param vessel_specific_heat_j_per_g_k [Numeric, nil] Specific heat of the vessel. Unit: J/(g.K); 0.1 to
  #   10. Default: none.
  # @return [Hash{Symbol => Object}] The results by name:
  #   heat_time_s [Float] Heating time. Unit: s.
  #   heat_time_uncertainty_s [Float] Its standard uncertainty for one more heating. Unit: s.
  #   power_w [Float] Power that reaches mix and vessel. Unit: W.
  #   beyond [Float] How far the amount is outside those that were timed, as a factor; none inside them. Unit:
  #     1. Nil where there is none.
  # @raise [Error] All that is wrong with the arguments.
  def heat_time(pot_mass_g:, specific_heat_j_per_g_k:, heated_from_celsius:, heated_to_celsius:, timings: nil, oven_power_w: nil, setting: nil, specific_heat_rise_per_kelvin: nil, timed_specific_heat_j_per_g_k: nil, vessel_mass_g: nil, vessel_specific_heat_j_per_g_k: nil)
    Call.of("heat_time", [
      [:pot_mass_g, :number, pot_mass_g],
      [:specific_heat_j_per_g_k, :number, specific_heat_j_per_g_k],
      [:heated_from_celsius, :number, heated_from_celsius],
      [:heated_to_celsius, :number, heated_to_celsius],
      [:timings, :rows, timings, 4],
      [:oven_power_w, :number, oven_power_w],
      [:setting, :number, setting],
      [:specific_heat_rise_per_kelvin, :number, specific_heat_rise_per_kelvin],
      [:timed_specific_heat_j_per_g_k, :number, timed_specific_heat_j_per_g_k],
      [:vessel_mass_g, :number, vessel_mass_g],
      [:vessel_specific_heat_j_per_g_k, :number, vessel_specific_heat_j_per_g_k],
    ], [
      [:heat_time_s, :number],
      [:heat_time_uncertainty_s, :number],
      [:power_w, :number],
      [:beyond, :number],
    ], input: true, result: true)
  end

  # The next burst of the oven for a reading of the thermometer.
  #
  # No burst can carry the pot over its window, by all the power that the timings make plausible and the error
  # of the thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system
  # of measures gives the scale of the thermometer, on whole degrees of which the limits are.
  #
  # Example: `next_burst(pot_mass_g: 300, specific_heat_j_per_g_k: 2, reading_celsius: 20,
  #   window_bottom_celsius: 160, window_top_celsius: 180, timings: [[200, 20, 120, 80], [400, 20, 120, 160]],
  #   measures: "metric")` gives `{ burst_s: 90, expected_celsius: 95, shoot_from_celsius: 162,
  #   shoot_to_celsius: 178, bursts: 4, oven_time_s: 175 }`.
  #
  # @param pot_mass_g [Numeric] Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
  # @param specific_heat_j_per_g_k [Numeric] Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to
  #   10.
  # @param reading_celsius [Numeric] Reading of the thermometer, in the stirred mix. Unit: °C; -73 to 427.
  # @param window_bottom_celsius [Numeric] Lowest temperature at which the mix is shot, its material's own.
  #   Unit: °C; -73 to 427.
  # @param window_top_celsius [Numeric] Highest temperature at which the mix is shot, its material's own;
  #   above the lowest. Unit: °C; -73 to 427.
  # @param timings [Array<Array<Numeric>>, nil] Heatings that the shop has timed, all at one setting: of each
  #   the mass of the mix, the temperatures before and after and the time; needed without the rated power. 1 to
  #   1000 of them. Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15. Then:
  #   Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed heating,
  #   stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating. Unit:
  #   s; 1e-3 to 1e9.
  # @param oven_power_w [Numeric, nil] Rated power of the oven, its output at full power: a first guess, not
  #   used once there are timings; needed without them. Unit: W; 50 to 10000. Default: none.
  # @param setting [Numeric, nil] Setting of the oven, as a share of full power. Unit: 1; above 0 to 1.
  #   Default: that of the timings.
  # @param specific_heat_rise_per_kelvin [Numeric, nil] Rise of the specific heat per kelvin, as a share of
  #   that at 25 °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.
  # @param timed_specific_heat_j_per_g_k [Numeric, nil] Specific heat of what was timed. Unit: J/(g.K); 0.1 to
  #   10. Default: as `specific_heat_j_per_g_k`.
  # @param vessel_mass_g [Numeric, nil] Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the
  #   timings.
  # @param vessel_specific_heat_j_per_g_k [Numeric, nil] Specific heat of the vessel. Unit: J/(g.K); 0.1 to
  #   10. Default: none.
  # @param aim_celsius [Numeric, nil] The temperature to heat to. Unit: °C; in the shot window. Default: the
  #   middle of the window.
  # @param thermometer_kelvin [Numeric, nil] How far the thermometer may be off. Unit: K; 0 to 100. Default:
  #   2.
  # @param burst_step_s [Numeric, nil] Shortest burst that can be set, of which the others are multiples.
  #   Unit: s; 1e-3 to 3600. Default: 5.
  # @param longest_burst_s [Numeric, nil] Longest burst without a stir, at least the shortest. Unit: s; 1e-3
  #   to 3600. Default: 120.
  # @param oven_turn_s [Numeric, nil] How long a turn of full power and none takes at a setting below full
  #   power. Unit: s; 0 to 3600. Default: 30.
  # @param measures [String, nil] The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
  #   us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.
  # @return [Hash{Symbol => Object}] The results by name:
  #   burst_s [Float] The next burst; none where the pot is hot enough. Unit: s. Nil where there is none.
  #   expected_celsius [Float] The expected reading after it. Unit: °C. Nil where there is none.
  #   shoot_from_celsius [Float] Shoot from this reading on. Unit: °C.
  #   shoot_to_celsius [Float] Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.
  #   bursts [Integer] Number of bursts that are expected from this reading on.
  #   oven_time_s [Float] Time that the oven is expected to run in them. Unit: s.
  # @raise [Error] All that is wrong with the arguments.
  def next_burst(pot_mass_g:, specific_heat_j_per_g_k:, reading_celsius:, window_bottom_celsius:, window_top_celsius:, timings: nil, oven_power_w: nil, setting: nil, specific_heat_rise_per_kelvin: nil, timed_specific_heat_j_per_g_k: nil, vessel_mass_g: nil, vessel_specific_heat_j_per_g_k: nil, aim_celsius: nil, thermometer_kelvin: nil, burst_step_s: nil, longest_burst_s: nil, oven_turn_s: nil, measures: nil)
    Call.of("next_burst", [
      [:pot_mass_g, :number, pot_mass_g],
      [:specific_heat_j_per_g_k, :number, specific_heat_j_per_g_k],
      [:reading_celsius, :number, reading_celsius],
      [:window_bottom_celsius, :number, window_bottom_celsius],
      [:window_top_celsius, :number, window_top_celsius],
      [:timings, :rows, timings, 4],
      [:oven_power_w, :number, oven_power_w],
      [:setting, :number, setting],
      [:specific_heat_rise_per_kelvin, :number, specific_heat_rise_per_kelvin],
      [:timed_specific_heat_j_per_g_k, :number, timed_specific_heat_j_per_g_k],
      [:vessel_mass_g, :number, vessel_mass_g],
      [:vessel_specific_heat_j_per_g_k, :number, vessel_specific_heat_j_per_g_k],
      [:aim_celsius, :number, aim_celsius],
      [:thermometer_kelvin, :number, thermometer_kelvin],
      [:burst_step_s, :number, burst_step_s],
      [:longest_burst_s, :number, longest_burst_s],
      [:oven_turn_s, :number, oven_turn_s],
      [:measures, :word, measures, MEASURES_WORDS],
    ], [
      [:burst_s, :number],
      [:expected_celsius, :number],
      [:shoot_from_celsius, :number],
      [:shoot_to_celsius, :number],
      [:bursts, :count],
      [:oven_time_s, :number],
    ], input: true, result: true)
  end

  # How long a pot stays hot, by a pot that was watched to cool.
  #
  # Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room)); less mix
  # than was watched cools faster (module `process::heat`).
  #
  # Example: `stays_hot(pot_mass_g: 500, hot_from_celsius: 170, hot_to_celsius: 130, watched_mass_g: 500,
  #   watched_from_celsius: 170, watched_to_celsius: 150, watched_time_s: 300, room_celsius: 22, stood_s: 600)`
  #   gives `{ time_constant_s: 2066.371724164207, hot_for_s: 651.0745655967437, half_full_s: 511.5585872545843,
  #   after_celsius: 132.7027027027027 }`.
  #
  # @param pot_mass_g [Numeric] Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
  # @param hot_from_celsius [Numeric] Temperature after the last burst. Unit: °C; -73 to 427.
  # @param hot_to_celsius [Numeric] Temperature down to which the pot can be shot, above that of the room.
  #   Unit: °C; -73 to 427.
  # @param watched_mass_g [Numeric] Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15.
  # @param watched_from_celsius [Numeric] First reading of a pot that was watched to cool, from its second
  #   minute on, stirred. Unit: °C; -73 to 427.
  # @param watched_to_celsius [Numeric] Second reading of a pot that was watched to cool, stirred; below the
  #   first and above that of the room. Unit: °C; -73 to 427.
  # @param watched_time_s [Numeric] Time between the two readings of a pot that was watched to cool. Unit: s;
  #   1e-3 to 1e9.
  # @param room_celsius [Numeric, nil] Temperature of the room, below all others. Unit: °C; -73 to 427.
  #   Default: 20.
  # @param stood_s [Numeric, nil] How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is,
  #   is not calculated.
  # @return [Hash{Symbol => Object}] The results by name:
  #   time_constant_s [Float] Time in which the distance to the temperature of the room falls to 37 %. Unit:
  #     s.
  #   hot_for_s [Float] Time down to the lower temperature, with all of the mix in the pot. Unit: s.
  #   half_full_s [Float] The same with half of it. Unit: s.
  #   after_celsius [Float] Temperature after the time that the pot has stood. Unit: °C. Nil where there is
  #     none.
  # @raise [Error] All that is wrong with the arguments.
  def stays_hot(pot_mass_g:, hot_from_celsius:, hot_to_celsius:, watched_mass_g:, watched_from_celsius:, watched_to_celsius:, watched_time_s:, room_celsius: nil, stood_s: nil)
    Call.of("stays_hot", [
      [:pot_mass_g, :number, pot_mass_g],
      [:hot_from_celsius, :number, hot_from_celsius],
      [:hot_to_celsius, :number, hot_to_celsius],
      [:watched_mass_g, :number, watched_mass_g],
      [:watched_from_celsius, :number, watched_from_celsius],
      [:watched_to_celsius, :number, watched_to_celsius],
      [:watched_time_s, :number, watched_time_s],
      [:room_celsius, :number, room_celsius],
      [:stood_s, :number, stood_s],
    ], [
      [:time_constant_s, :number],
      [:hot_for_s, :number],
      [:half_full_s, :number],
      [:after_celsius, :number],
    ], input: true, result: true)
  end

  # The heats that the shots of a pot take, and how long they all take.
  #
  # A heat goes on while the next shot ends before the pot has fallen to the bottom of its window; then it is
  # heated again. How long a pot stays hot is stated, or follows from a pot that was watched to cool. A shot
  # can be made every max(h, (h + s)/k): h its working time, s the time that it sets, k molds in turn (module
  # `process::clock`).
  #
  # Example: `pot_heats(pot_mass_g: 1200, clock_runs: [[22, 48, 50, 0, 1]], hot_for_s: 480, oven_time_s: 240)`
  #   gives `{ reheats: 2, first_shots: 9, shooting_time_s: 1100, total_time_s: 1820 }`.
  #
  # @param pot_mass_g [Numeric] Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.
  # @param clock_runs [Array<Array<Numeric>>] The pot's shots in their order, like ones together: of each run
  #   the number of shots, the mass that one takes, the working time for one, the time that it sets and the
  #   number of molds in turn. At most 100 000 shots. 1 to 1000 of them. Each: Number of like shots in a row; at
  #   most 100 000 from one pot. Unit: 1; 1 to 100000. Then: Mass of one shot, sprue included. Unit: g; 1e-12 to
  #   1e15. Then: Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default: how
  #   often a shot can be made is not calculated. Then: Time that a shot sets in its mold. Unit: s; 0 to 1e6.
  #   Default: 0. Then: Number of such molds that are shot in turn. Unit: 1; 1 to 1000000. Default: 1.
  # @param hot_for_s [Numeric, nil] How long the pot stays hot at one heat, from the last burst to the last
  #   shot. Unit: s; 1e-3 to 1e15. Default: from how it cools.
  # @param clock_from_celsius [Numeric, nil] Temperature after the last burst; needed with `cools`. Unit: °C;
  #   -73 to 427. Default: none.
  # @param clock_to_celsius [Numeric, nil] Temperature down to which the pot can be shot, above that of the
  #   room; needed with `cools`. Unit: °C; -73 to 427. Default: none.
  # @param watched_mass_g [Numeric, nil] Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to
  #   1e15. It may be omitted.
  # @param watched_from_celsius [Numeric, nil] First reading of a pot that was watched to cool, from its
  #   second minute on, stirred. Unit: °C; -73 to 427. It may be omitted.
  # @param watched_to_celsius [Numeric, nil] Second reading of a pot that was watched to cool, stirred; below
  #   the first and above that of the room. Unit: °C; -73 to 427. It may be omitted.
  # @param watched_time_s [Numeric, nil] Time between the two readings of a pot that was watched to cool.
  #   Unit: s; 1e-3 to 1e9. It may be omitted.
  # @param room_celsius [Numeric, nil] Temperature of the room, below all others. Unit: °C; -73 to 427.
  #   Default: 20.
  # @param oven_time_s [Numeric, nil] How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is
  #   not counted.
  # @return [Hash{Symbol => Object}] The results by name:
  #   reheats [Integer] Number of reheats: the heats but for the first.
  #   first_shots [Integer] Number of shots in the first heat.
  #   shooting_time_s [Float] Time of all shots, without the oven. Unit: s.
  #   total_time_s [Float] Time of all shots and of the oven for each heat, where that is given. Unit: s. Nil
  #     where there is none.
  # @raise [Error] All that is wrong with the arguments.
  def pot_heats(pot_mass_g:, clock_runs:, hot_for_s: nil, clock_from_celsius: nil, clock_to_celsius: nil, watched_mass_g: nil, watched_from_celsius: nil, watched_to_celsius: nil, watched_time_s: nil, room_celsius: nil, oven_time_s: nil)
    Call.of("pot_heats", [
      [:pot_mass_g, :number, pot_mass_g],
      [:clock_runs, :rows, clock_runs, 5],
      [:hot_for_s, :number, hot_for_s],
      [:clock_from_celsius, :number, clock_from_celsius],
      [:clock_to_celsius, :number, clock_to_celsius],
      [:watched_mass_g, :number, watched_mass_g],
      [:watched_from_celsius, :number, watched_from_celsius],
      [:watched_to_celsius, :number, watched_to_celsius],
      [:watched_time_s, :number, watched_time_s],
      [:room_celsius, :number, room_celsius],
      [:oven_time_s, :number, oven_time_s],
    ], [
      [:reheats, :count],
      [:first_shots, :count],
      [:shooting_time_s, :number],
      [:total_time_s, :number],
    ], input: true, result: true)
  end

  # How long a shot sets in a metal mold, and how often one can be made.
  #
  # The first term of the series of a rod, a plate or a ball whose surface keeps the temperature of the mold:
  # t = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The mold is as warm as
  # the shot leaves it, where its mass is given.
  #
  # Example: `setting_time(section_shape: "rod", section_thickness_mm: 9, shot_at_celsius: 165, hands_s: 50,
  #   molds: 2)` gives `{ setting_time_s: 104.20464250602106, setting_time_min_s: 83.36371400481686,
  #   setting_time_max_s: 128.25186769971822, warms_kelvin: nil, in_a_row: nil, shot_every_s: 77.10232125301053
  #   }`.
  #
  # @param section_shape [String] Shape of the thickest part of a piece. One of `rod`, `plate`, `ball`.
  # @param section_thickness_mm [Numeric] Thickness of the thickest part of a piece; of a rod or a ball its
  #   diameter. Unit: mm; 0.2 to 200.
  # @param shot_at_celsius [Numeric] Temperature at which it is shot, above that at which it is taken out.
  #   Unit: °C; -73 to 427.
  # @param mold_at_celsius [Numeric, nil] Temperature of the mold before the shot, below that at which a piece
  #   is taken out. Unit: °C; -73 to 427. Default: 30.
  # @param take_out_celsius [Numeric, nil] Temperature at which a piece can be taken out. Unit: °C; -73 to
  #   427. Default: 50.
  # @param piece_point [String, nil] The point of a piece whose temperature counts. Default: center. One of
  #   `center`, `mean`.
  # @param diffusivity_m2_per_s [Numeric, nil] Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5.
  #   Default: 8.0e-8 m2/s, from 6.5e-8 to 1.0e-7.
  # @param shot_mass_g [Numeric, nil] Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be
  #   omitted.
  # @param shot_specific_heat_j_per_g_k [Numeric, nil] Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10.
  #   Default: 1.9.
  # @param mold_mass_g [Numeric, nil] Mass of the mold. Without it the mold is taken to keep its temperature;
  #   with it the mass of the shot is needed. Unit: g; 1e-12 to 1e15. Default: none.
  # @param mold_specific_heat_j_per_g_k [Numeric, nil] Specific heat of the mold; the default is that of
  #   aluminum. Unit: J/(g.K); 0.1 to 10. Default: 0.897.
  # @param hands_s [Numeric, nil] Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to
  #   1e15. Default: how often a shot can be made is not calculated.
  # @param molds [Integer, nil] Number of such molds that are shot in turn. 1 to 1000000. Default: 1.
  # @return [Hash{Symbol => Object}] The results by name:
  #   setting_time_s [Float] Setting time. Unit: s.
  #   setting_time_min_s [Float] The same with the highest diffusivity of soft PVC. Unit: s.
  #   setting_time_max_s [Float] The same with the lowest. Unit: s.
  #   warms_kelvin [Float] How much one shot warms the mold, where its mass is given. Unit: K. Nil where there
  #     is none.
  #   in_a_row [Integer] Number of shots in a row before the mold is too warm, nothing lost between them; none
  #     where its mass is not given, or it goes on. Nil where there is none.
  #   shot_every_s [Float] Time from one shot to the next, where the working time is given. Unit: s. Nil where
  #     there is none.
  # @raise [Error] All that is wrong with the arguments.
  def setting_time(section_shape:, section_thickness_mm:, shot_at_celsius:, mold_at_celsius: nil, take_out_celsius: nil, piece_point: nil, diffusivity_m2_per_s: nil, shot_mass_g: nil, shot_specific_heat_j_per_g_k: nil, mold_mass_g: nil, mold_specific_heat_j_per_g_k: nil, hands_s: nil, molds: nil)
    Call.of("setting_time", [
      [:section_shape, :word, section_shape, SECTION_SHAPE_WORDS],
      [:section_thickness_mm, :number, section_thickness_mm],
      [:shot_at_celsius, :number, shot_at_celsius],
      [:mold_at_celsius, :number, mold_at_celsius],
      [:take_out_celsius, :number, take_out_celsius],
      [:piece_point, :word, piece_point, PIECE_POINT_WORDS],
      [:diffusivity_m2_per_s, :number, diffusivity_m2_per_s],
      [:shot_mass_g, :number, shot_mass_g],
      [:shot_specific_heat_j_per_g_k, :number, shot_specific_heat_j_per_g_k],
      [:mold_mass_g, :number, mold_mass_g],
      [:mold_specific_heat_j_per_g_k, :number, mold_specific_heat_j_per_g_k],
      [:hands_s, :number, hands_s],
      [:molds, :count, molds],
    ], [
      [:setting_time_s, :number],
      [:setting_time_min_s, :number],
      [:setting_time_max_s, :number],
      [:warms_kelvin, :number],
      [:in_a_row, :count],
      [:shot_every_s, :number],
    ], input: true, result: true)
  end

  # How often to stir a melt with salt in it, and how fast the salt settles.
  #
  # Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain as a cube that
  # passes a sieve (module `process::settling`). Stir before the top share of the depth is without grains: t =
  # share · depth/v.
  #
  # Example: `stir_every(grain_mm: 0.3, grain_density_g_per_ml: 2.165, melt_density_g_per_ml: 0.93,
  #   melt_depth_mm: 80, melt_viscosity_min_mpa_s: 500, melt_viscosity_max_mpa_s: 1000)` gives `{ stir_every_s:
  #   46.358618363896404, stir_every_max_s: 92.69906432655615, settling_min_cm_per_s: 0.008630076320746836,
  #   settling_max_cm_per_s: 0.017256769684556247 }`.
  #
  # @param grain_mm [Numeric] Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm;
  #   0.001 to 50.
  # @param grain_density_g_per_ml [Numeric] True density of the grains, above that of the melt. Unit: g/mL;
  #   0.001 to 25.
  # @param melt_density_g_per_ml [Numeric] Density of the melt, hot. Unit: g/mL; 0.001 to 25.
  # @param melt_depth_mm [Numeric] Depth of the melt in its cup. Unit: mm; 0.1 to 10000.
  # @param melt_viscosity_min_mpa_s [Numeric, nil] Lowest viscosity that the melt may have at shot
  #   temperature. Where none is known, the defaults of both span what such melts may have. Unit: mPa.s; 0.1 to
  #   1e7. Default: 50.
  # @param melt_viscosity_max_mpa_s [Numeric, nil] Highest viscosity that the melt may have at shot
  #   temperature, at least the lowest. Unit: mPa.s; 0.1 to 1e7. Default: 5000.
  # @param solids_share [Numeric, nil] Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to
  #   0.4. Default: 0.
  # @param unstirred [Numeric, nil] Share of the depth that may be without grains before it is stirred. Unit:
  #   1; 0.001 to 1. Default: 0.1.
  # @return [Hash{Symbol => Object}] The results by name:
  #   stir_every_s [Float] How often to stir, to be safe: in the thinnest melt. Unit: s.
  #   stir_every_max_s [Float] How often is enough in the thickest melt. Unit: s.
  #   settling_min_cm_per_s [Float] Speed of the grains in the thickest melt. Unit: cm/s.
  #   settling_max_cm_per_s [Float] Speed of the grains in the thinnest melt. Unit: cm/s.
  # @raise [Error] All that is wrong with the arguments.
  def stir_every(grain_mm:, grain_density_g_per_ml:, melt_density_g_per_ml:, melt_depth_mm:, melt_viscosity_min_mpa_s: nil, melt_viscosity_max_mpa_s: nil, solids_share: nil, unstirred: nil)
    Call.of("stir_every", [
      [:grain_mm, :number, grain_mm],
      [:grain_density_g_per_ml, :number, grain_density_g_per_ml],
      [:melt_density_g_per_ml, :number, melt_density_g_per_ml],
      [:melt_depth_mm, :number, melt_depth_mm],
      [:melt_viscosity_min_mpa_s, :number, melt_viscosity_min_mpa_s],
      [:melt_viscosity_max_mpa_s, :number, melt_viscosity_max_mpa_s],
      [:solids_share, :number, solids_share],
      [:unstirred, :number, unstirred],
    ], [
      [:stir_every_s, :number],
      [:stir_every_max_s, :number],
      [:settling_min_cm_per_s, :number],
      [:settling_max_cm_per_s, :number],
    ], input: true, result: true)
  end

  # Viscosity of a melt, from a ball that was timed as it sank.
  #
  # The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module `process::settling`).
  #
  # Example: `viscosity_of_ball(ball_diameter_mm: 1, ball_density_g_per_ml: 7.8, melt_density_g_per_ml: 0.93,
  #   ball_depth_mm: 50, ball_time_s: 20)` gives `1494.5095512811074`.
  #
  # @param ball_diameter_mm [Numeric] Diameter of the ball, much smaller than that of the vessel. Unit: mm;
  #   0.001 to 50.
  # @param ball_density_g_per_ml [Numeric] Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to 25.
  # @param melt_density_g_per_ml [Numeric] Density of the melt, hot. Unit: g/mL; 0.001 to 25.
  # @param ball_depth_mm [Numeric] How deep the ball sank, let go below the surface. Unit: mm; 1 to 10000.
  # @param ball_time_s [Numeric] Time that the ball took. Unit: s; 0.01 to 1e6.
  # @return [Float] Viscosity of the melt. Unit: mPa.s.
  # @raise [Error] All that is wrong with the arguments.
  def viscosity_of_ball(ball_diameter_mm:, ball_density_g_per_ml:, melt_density_g_per_ml:, ball_depth_mm:, ball_time_s:)
    Call.of("viscosity_of_ball", [
      [:ball_diameter_mm, :number, ball_diameter_mm],
      [:ball_density_g_per_ml, :number, ball_density_g_per_ml],
      [:melt_density_g_per_ml, :number, melt_density_g_per_ml],
      [:ball_depth_mm, :number, ball_depth_mm],
      [:ball_time_s, :number, ball_time_s],
    ], [
      [:melt_viscosity_mpa_s, :number],
    ], input: false, result: false)
  end

  # Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f (ρ_cold −
  # ρ_hot)]).
  #
  # Example: `cavity_of_weights(weights_g: [10, 10], balance_readability_g: 0.01, cold_density_g_per_ml: 1,
  #   feed: 0.5)` gives `{ cavity_volume_ml: 10, cavity_volume_uncertainty_ml: 0.0028867513459481294, mean_g:
  #   10, deviation_g: 0 }`.
  #
  # @param weights_g [Array<Numeric>] Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one
  #   weighed piece. Unit: g; 1e-12 to 1e15.
  # @param balance_readability_g [Numeric] Smallest difference that the balance shows; without it there is no
  #   balance. Unit: g; 1e-12 to 1e15.
  # @param cold_density_g_per_ml [Numeric] Density of the finished plastic at 20 °C, without voids. Unit:
  #   g/mL; 0.001 to 25.
  # @param hot_density_g_per_ml [Numeric, nil] Melt density at shot temperature, without voids; at most the
  #   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param feed [Numeric, nil] Share of its contraction that a piece draws from the sprue while it cools.
  #   Where it is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in
  #   full). Unit: 1; 0 to 1. Default: 0.5.
  # @param feed_uncertainty [Numeric, nil] Standard uncertainty of the feed share, in points of it (10 %: 60 %
  #   is 50 % to 70 %). Unit: 1; 0 to 1. Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   cavity_volume_ml [Float] Volume of the cavity. Unit: mL.
  #   cavity_volume_uncertainty_ml [Float] Its standard uncertainty. Where the feed is not known, that of an
  #     even spread from 0 to 1 counts. Unit: mL.
  #   mean_g [Float] Mean of the weights. Unit: g.
  #   deviation_g [Float] Standard deviation of one. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def cavity_of_weights(weights_g:, balance_readability_g:, cold_density_g_per_ml:, hot_density_g_per_ml: nil, voids: nil, feed: nil, feed_uncertainty: nil)
    Call.of("cavity_of_weights", [
      [:weights_g, :list, weights_g],
      [:balance_readability_g, :number, balance_readability_g],
      [:cold_density_g_per_ml, :number, cold_density_g_per_ml],
      [:hot_density_g_per_ml, :number, hot_density_g_per_ml],
      [:voids, :number, voids],
      [:feed, :number, feed],
      [:feed_uncertainty, :number, feed_uncertainty],
    ], [
      [:cavity_volume_ml, :number],
      [:cavity_volume_uncertainty_ml, :number],
      [:mean_g, :number],
      [:deviation_g, :number],
    ], input: true, result: true)
  end

  # Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold − ρ_hot).
  #
  # Example: `feed_of_weights(weights_g: [10.5, 10.5], balance_readability_g: 0.01, cold_density_g_per_ml:
  #   1.1, cavity_volume_ml: 10, hot_density_g_per_ml: 1)` gives `{ feed: 0.5, feed_uncertainty:
  #   0.002886751345948127, mean_g: 10.5, deviation_g: 0 }`.
  #
  # @param weights_g [Array<Numeric>] Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one
  #   weighed piece. Unit: g; 1e-12 to 1e15.
  # @param balance_readability_g [Numeric] Smallest difference that the balance shows; without it there is no
  #   balance. Unit: g; 1e-12 to 1e15.
  # @param cold_density_g_per_ml [Numeric] Density of the finished plastic at 20 °C, without voids. Unit:
  #   g/mL; 0.001 to 25.
  # @param cavity_volume_ml [Numeric] Volume of one cavity. Unit: mL; 1e-9 to 1e15.
  # @param hot_density_g_per_ml [Numeric, nil] Melt density at shot temperature, without voids; at most the
  #   cold one. Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.
  # @param voids [Numeric, nil] Void fraction: share of the volume that is air. Unit: 1; 0 to below 1.
  #   Default: 0.
  # @param volume_uncertainty_ml [Numeric, nil] Standard uncertainty of the volume. Unit: mL; 0 to 1e15.
  #   Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   feed [Float] Feed share. Unit: 1.
  #   feed_uncertainty [Float] Its standard uncertainty. Unit: 1.
  #   mean_g [Float] Mean of the weights. Unit: g.
  #   deviation_g [Float] Standard deviation of one. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def feed_of_weights(weights_g:, balance_readability_g:, cold_density_g_per_ml:, cavity_volume_ml:, hot_density_g_per_ml: nil, voids: nil, volume_uncertainty_ml: nil)
    Call.of("feed_of_weights", [
      [:weights_g, :list, weights_g],
      [:balance_readability_g, :number, balance_readability_g],
      [:cold_density_g_per_ml, :number, cold_density_g_per_ml],
      [:cavity_volume_ml, :number, cavity_volume_ml],
      [:hot_density_g_per_ml, :number, hot_density_g_per_ml],
      [:voids, :number, voids],
      [:volume_uncertainty_ml, :number, volume_uncertainty_ml],
    ], [
      [:feed, :number],
      [:feed_uncertainty, :number],
      [:mean_g, :number],
      [:deviation_g, :number],
    ], input: true, result: true)
  end

  # Mass of one drop from several weighings of many.
  #
  # Example: `drop_of_weighings(drops_weighed: [[50, 2.2], [50, 2.2]], balance_readability_g: 0.01)` gives `{
  #   drop_mass_g: 0.044000000000000004, drop_mass_uncertainty_g: 0.000057735026918962585, scatter_g: 0 }`.
  #
  # @param drops_weighed [Array<Array<Numeric>>] Drops that were counted and weighed together, each weighing
  #   started over. 2 to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000.
  #   Then: What they weigh together, net. Unit: g; 1e-12 to 1e15.
  # @param balance_readability_g [Numeric] Smallest difference that the balance shows; without it there is no
  #   balance. Unit: g; 1e-12 to 1e15.
  # @return [Hash{Symbol => Object}] The results by name:
  #   drop_mass_g [Float] Mass of one drop. Unit: g.
  #   drop_mass_uncertainty_g [Float] Its standard uncertainty. Unit: g.
  #   scatter_g [Float] Standard deviation of one drop against the next. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def drop_of_weighings(drops_weighed:, balance_readability_g:)
    Call.of("drop_of_weighings", [
      [:drops_weighed, :rows, drops_weighed, 2],
      [:balance_readability_g, :number, balance_readability_g],
    ], [
      [:drop_mass_g, :number],
      [:drop_mass_uncertainty_g, :number],
      [:scatter_g, :number],
    ], input: false, result: true)
  end

  # Bulk density of a powder from several weighings of level spoonfuls.
  #
  # Example: `as_scooped_of_weighings(scoops_weighed: [[10, 61], [10, 61]], spoon_volume_ml: 5,
  #   balance_readability_g: 0.1)` gives `{ as_scooped_g_per_ml: 1.2199999999999998,
  #   as_scooped_uncertainty_g_per_ml: 0.0005773502691896258, spoonful_g: 6.1 }`.
  #
  # @param scoops_weighed [Array<Array<Numeric>>] Level spoonfuls that were counted and weighed together, each
  #   weighing started over. 2 to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1 to
  #   1000000. Then: What they weigh together, net. Unit: g; 1e-12 to 1e15.
  # @param spoon_volume_ml [Numeric] Volume of the level spoon. Unit: mL; 1e-9 to 1e15.
  # @param balance_readability_g [Numeric] Smallest difference that the balance shows; without it there is no
  #   balance. Unit: g; 1e-12 to 1e15.
  # @param volume_uncertainty_ml [Numeric, nil] Standard uncertainty of the volume. Unit: mL; 0 to 1e15.
  #   Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   as_scooped_g_per_ml [Float] Bulk density, level in the spoon. Unit: g/mL.
  #   as_scooped_uncertainty_g_per_ml [Float] Its standard uncertainty. Unit: g/mL.
  #   spoonful_g [Float] Mass of one spoonful. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def as_scooped_of_weighings(scoops_weighed:, spoon_volume_ml:, balance_readability_g:, volume_uncertainty_ml: nil)
    Call.of("as_scooped_of_weighings", [
      [:scoops_weighed, :rows, scoops_weighed, 2],
      [:spoon_volume_ml, :number, spoon_volume_ml],
      [:balance_readability_g, :number, balance_readability_g],
      [:volume_uncertainty_ml, :number, volume_uncertainty_ml],
    ], [
      [:as_scooped_g_per_ml, :number],
      [:as_scooped_uncertainty_g_per_ml, :number],
      [:spoonful_g, :number],
    ], input: false, result: true)
  end

  # Volume that stays in an injector, from weighings of it clean and then emptied as at work.
  #
  # Example: `residue_of_weighings(injector_weighed_g: [[180, 184], [180, 184]], residue_density_g_per_ml: 1,
  #   balance_readability_g: 0.1)` gives `{ injector_residue_ml: 4.0000000000000036,
  #   injector_residue_uncertainty_ml: 0.02886751345948129, residue_mass_g: 4.0000000000000036 }`.
  #
  # @param injector_weighed_g [Array<Array<Numeric>>] Weighings of the injector, each clean and then emptied
  #   as at work. 2 to 1000 of them. Each: Mass of the clean injector. Unit: g; 1e-12 to 1e15. Then: Mass of the
  #   injector emptied as at work; at least that of the clean one. Unit: g; 1e-12 to 1e15.
  # @param residue_density_g_per_ml [Numeric] Density of what stays in the injector, at the temperature at
  #   which it is emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.
  # @param balance_readability_g [Numeric] Smallest difference that the balance shows; without it there is no
  #   balance. Unit: g; 1e-12 to 1e15.
  # @param density_uncertainty_g_per_ml [Numeric, nil] Standard uncertainty of the density of the piece; its
  #   bounds are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.
  # @return [Hash{Symbol => Object}] The results by name:
  #   injector_residue_ml [Float] Volume that stays in the injector. Unit: mL.
  #   injector_residue_uncertainty_ml [Float] Its standard uncertainty. Unit: mL.
  #   residue_mass_g [Float] Its mass. Unit: g.
  # @raise [Error] All that is wrong with the arguments.
  def residue_of_weighings(injector_weighed_g:, residue_density_g_per_ml:, balance_readability_g:, density_uncertainty_g_per_ml: nil)
    Call.of("residue_of_weighings", [
      [:injector_weighed_g, :rows, injector_weighed_g, 2],
      [:residue_density_g_per_ml, :number, residue_density_g_per_ml],
      [:balance_readability_g, :number, balance_readability_g],
      [:density_uncertainty_g_per_ml, :number, density_uncertainty_g_per_ml],
    ], [
      [:injector_residue_ml, :number],
      [:injector_residue_uncertainty_ml, :number],
      [:residue_mass_g, :number],
    ], input: false, result: true)
  end

  # Price for a cost, in the smallest unit of the currency (cents), from the share of the price that the shop
  # keeps.
  #
  # price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers, never in
  # binary fractions. Costs of materials, work and packing with their packages and currencies: the request
  # `cost`.
  #
  # Example: `price(cost: 750, cost_margin: 0.4)` gives `1250`.
  #
  # @param cost [Integer] Cost, in the smallest unit of the currency: cents. 0 to 1000000000.
  # @param cost_margin [Numeric] Share of the price that the shop keeps (a markup on the cost is another
  #   thing). Without it there is no price. Unit: 1; 0 to below 1.
  # @return [Integer] Price, in the smallest unit of the currency.
  # @raise [Error] All that is wrong with the arguments.
  def price(cost:, cost_margin:)
    Call.of("price", [
      [:cost, :count, cost],
      [:cost_margin, :number, cost_margin],
    ], [
      [:price, :count],
    ], input: false, result: false)
  end
end
