// Made by `cargo run -p pourwright-generate`; do not edit.

using System;
using System.Runtime.InteropServices;

namespace Pourwright
{
    /// <summary>The calculations of the library on plain numbers, each with its unit in its name.</summary>
    public static class Calculations
    {
        /// <summary>Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and
        /// rounds once.</summary>
        /// <remarks>A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the
        /// message.</remarks>
        /// <param name="amount">An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a
        /// temperature above absolute zero.</param>
        /// <param name="to">The unit of the answer, by trade symbol or UCUM code. A unit of the same
        /// dimension.</param>
        /// <param name="measures">The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
        /// us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.</param>
        /// <returns>The number, in the unit of `to`.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double Convert(
            string amount,
            string to,
            string measures = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Text("amount", amount);
                var c1 = call.Text("to", to);
                var c2 = call.Word("measures", measures, Words.Measures);
                call.Ready();
                double found;
                call.Check(Native.pour_convert(c0, c1, c2, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Converts a number of one unit into another.</summary>
        /// <remarks>Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between
        /// units hold on bits: 48 tsp are 1 cup.</remarks>
        /// <param name="value">The number to convert. Unit: any; 0 or above; a temperature above absolute
        /// zero.</param>
        /// <param name="unit">The unit of the number, by trade symbol or UCUM code. A unit.</param>
        /// <param name="to">The unit of the answer, by trade symbol or UCUM code. A unit of the same
        /// dimension.</param>
        /// <param name="measures">The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
        /// us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.</param>
        /// <returns>The number, in the unit of `to`.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double ConvertNumber(
            double value,
            string unit,
            string to,
            string measures = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("value", value);
                var c1 = call.Text("unit", unit);
                var c2 = call.Text("to", to);
                var c3 = call.Word("measures", measures, Words.Measures);
                call.Ready();
                double found;
                call.Check(Native.pour_convert_number(c0, c1, c2, c3, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5
        /// g`.</summary>
        /// <remarks>A liquid by its density, a powder by its bulk density, drops by the material's own drop;
        /// without one a drop is 1/20 mL (pharmacy practice).</remarks>
        /// <param name="amount">An amount as a person writes it: `1 1/4 cup`, `40 drops`, `330 °F`. 0 or above; a
        /// temperature above absolute zero.</param>
        /// <param name="kind">What the material is for; powders (pearl, flake, salt) are measured as scooped. One
        /// of `plastisol`, `softener`, `hardener`, `stabilizer`, `colorant`, `pearl`, `flake`, `salt`, `scent`,
        /// `other`.</param>
        /// <param name="materialDensityGPerMl">True density of the material; of a plastisol that of the liquid.
        /// Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="asScoopedGPerMl">Bulk density of a powder, level in the spoon and not tapped. Unit: g/mL;
        /// 0.001 to 25. Default: none.</param>
        /// <param name="dropMassG">Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.</param>
        /// <param name="measures">The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
        /// us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.</param>
        /// <returns>The mass. Unit: g.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double DoseMass(
            string amount,
            string kind,
            double? materialDensityGPerMl = null,
            double? asScoopedGPerMl = null,
            double? dropMassG = null,
            string measures = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Text("amount", amount);
                var c1 = call.Word("kind", kind, Words.Kind);
                var c2 = call.Number("material_density_g_per_ml", materialDensityGPerMl);
                var c3 = call.Number("as_scooped_g_per_ml", asScoopedGPerMl);
                var c4 = call.Number("drop_mass_g", dropMassG);
                var c5 = call.Word("measures", measures, Words.Measures);
                call.Ready();
                double found;
                call.Check(Native.pour_dose_mass(c0, c1, c2, c3, c4, c5, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Mass of a volume: m = ρV.</summary>
        /// <remarks>The density is that of what fills the measure: a liquid's own, a powder's bulk density. For
        /// what a solid displaces in a mix it is its true density.</remarks>
        /// <param name="volumeMl">Volume. Unit: mL; 0 to 1e15.</param>
        /// <param name="densityGPerMl">Density, without voids. Unit: g/mL; 0.001 to 25.</param>
        /// <returns>The mass. Unit: g.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double MassOfVolume(
            double volumeMl,
            double densityGPerMl)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("volume_ml", volumeMl);
                var c1 = call.Number("density_g_per_ml", densityGPerMl);
                call.Ready();
                double found;
                call.Check(Native.pour_mass_of_volume(c0, c1, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Volume of a mass: V = m/ρ, with the densities of MassOfVolume.</summary>
        /// <param name="massG">Mass. Unit: g; 0 to 1e15.</param>
        /// <param name="densityGPerMl">Density, without voids. Unit: g/mL; 0.001 to 25.</param>
        /// <returns>The volume. Unit: mL.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double VolumeOfMass(
            double massG,
            double densityGPerMl)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("mass_g", massG);
                var c1 = call.Number("density_g_per_ml", densityGPerMl);
                call.Ready();
                double found;
                call.Check(Native.pour_volume_of_mass(c0, c1, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.</summary>
        /// <remarks>Solids count with their true density. Ideal additivity of volumes; source: conservation of
        /// mass and volume.</remarks>
        /// <param name="parts">The parts of the mix: of each its mass and its true density. At least one has a
        /// mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True
        /// density of one part of a mix. Unit: g/mL; 0.001 to 25.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <returns>Density of the mix, voids counted. Unit: g/mL.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double DensityOfParts(
            double[][] parts,
            double? voids = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("parts", parts, 2);
                var c1 = call.Length;
                var c2 = call.Number("voids", voids);
                call.Ready();
                double found;
                call.Check(Native.pour_density_of_parts(c0, c1, c2, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Share of one part in a mix, by mass and by true volume.</summary>
        /// <remarks>Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).</remarks>
        /// <param name="parts">The parts of the mix: of each its mass and its true density. At least one has a
        /// mass above 0. 1 to 1000 of them. Each: Mass of one part of a mix. Unit: g; 0 to 1e15. Then: True
        /// density of one part of a mix. Unit: g/mL; 0.001 to 25.</param>
        /// <param name="part">Which part of the mix, counted from 1. 1 to 1000.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static MixShareResult MixShare(
            double[][] parts,
            uint part)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("parts", parts, 2);
                var c1 = call.Length;
                var c2 = call.Count("part", part);
                call.Ready();
                Native.pour_mix_share_result found;
                call.Check(Native.pour_mix_share(c0, c1, c2, out found, out call.Error));
                return new MixShareResult(found);
            }
        }

        /// <summary>States a salt loading another way.</summary>
        /// <remarks>All ways go through the mass of salt per mass of base; the equations are those of the module
        /// `salt`. In reach is all between no salt and the maximum that `most_solids` allows. Where a form that
        /// is about a piece needs the feed and it is not known, the bounds are those without feed and fed in
        /// full.</remarks>
        /// <param name="baseVolumeMl">Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
        /// to 1e15.</param>
        /// <param name="baseDensityGPerMl">Density of the base, cold and liquid, as a cup measures it. Unit:
        /// g/mL; 0.001 to 25.</param>
        /// <param name="saltDensityGPerMl">True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="form">The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
        /// `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.</param>
        /// <param name="loading">The salt loading, as its form states it. Unit: any; in the unit of its
        /// form.</param>
        /// <param name="toForm">The way in which the loading is to be stated. One of `as-scooped`, `per-volume`,
        /// `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.</param>
        /// <param name="mixMassG">Mass of the mix before salt; at least that of its base. Give its volume too.
        /// Unit: g; 1e-12 to 1e15. Default: the mass of its base.</param>
        /// <param name="mixVolumeMl">Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
        /// 1e15. Default: as `base_volume_ml`.</param>
        /// <param name="hotVolumeMl">Volume of the mix before salt at shot temperature; at least the cold one.
        /// Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.</param>
        /// <param name="shotTemperatureCelsius">Temperature at which the mix is shot. Unit: °C; 20 to 427.
        /// Default: 20.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="saltAsScoopedGPerMl">Bulk density of the salt, level in the spoon; at most its true
        /// density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="saltExpansionPerKelvin">Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
        /// Default: 0.</param>
        /// <param name="softenerPerSalt">Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0
        /// to 10. Default: 0.</param>
        /// <param name="softenerDensityGPerMl">Density of the softener that goes in with the salt; needed with
        /// it. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="softenerExpansionPerKelvin">Volumetric thermal expansion of that softener. Unit: 1/K; 0
        /// to 0.01. Default: 0.</param>
        /// <param name="mostSolids">Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0
        /// to below 1. Default: 0.3.</param>
        /// <param name="cavityVolumeMl">Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.</param>
        /// <param name="feed">Share of its contraction that a piece draws from the sprue while it cools. Where it
        /// is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        /// Unit: 1; 0 to 1. Default: 0.5.</param>
        /// <param name="hookMassG">Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="hookVolumeMl">Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
        /// 1e15. Default: 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static SaltConvertResult SaltConvert(
            double baseVolumeMl,
            double baseDensityGPerMl,
            double saltDensityGPerMl,
            string form,
            double loading,
            string toForm,
            double? mixMassG = null,
            double? mixVolumeMl = null,
            double? hotVolumeMl = null,
            double? shotTemperatureCelsius = null,
            double? voids = null,
            double? saltAsScoopedGPerMl = null,
            double? saltExpansionPerKelvin = null,
            double? softenerPerSalt = null,
            double? softenerDensityGPerMl = null,
            double? softenerExpansionPerKelvin = null,
            double? mostSolids = null,
            double? cavityVolumeMl = null,
            double? feed = null,
            double? hookMassG = null,
            double? hookVolumeMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_salt_convert_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_salt_convert_input>();
                input.base_volume_ml = call.Number("base_volume_ml", baseVolumeMl);
                input.base_density_g_per_ml = call.Number("base_density_g_per_ml", baseDensityGPerMl);
                input.salt_density_g_per_ml = call.Number("salt_density_g_per_ml", saltDensityGPerMl);
                input.form = call.Word("form", form, Words.Form);
                input.loading = call.Number("loading", loading);
                input.to_form = call.Word("to_form", toForm, Words.Form);
                input.mix_mass_g = call.Number("mix_mass_g", mixMassG);
                input.mix_volume_ml = call.Number("mix_volume_ml", mixVolumeMl);
                input.hot_volume_ml = call.Number("hot_volume_ml", hotVolumeMl);
                input.shot_temperature_celsius = call.Number("shot_temperature_celsius", shotTemperatureCelsius);
                input.voids = call.Number("voids", voids);
                input.salt_as_scooped_g_per_ml = call.Number("salt_as_scooped_g_per_ml", saltAsScoopedGPerMl);
                input.salt_expansion_per_kelvin = call.Number("salt_expansion_per_kelvin", saltExpansionPerKelvin);
                input.softener_per_salt = call.Number("softener_per_salt", softenerPerSalt);
                input.softener_density_g_per_ml = call.Number("softener_density_g_per_ml", softenerDensityGPerMl);
                input.softener_expansion_per_kelvin = call.Number("softener_expansion_per_kelvin", softenerExpansionPerKelvin);
                input.most_solids = call.Number("most_solids", mostSolids);
                input.cavity_volume_ml = call.Number("cavity_volume_ml", cavityVolumeMl);
                input.feed = call.Number("feed", feed);
                input.hook_mass_g = call.Number("hook_mass_g", hookMassG);
                input.hook_volume_ml = call.Number("hook_volume_ml", hookVolumeMl);
                call.Ready();
                Native.pour_salt_convert_result found;
                call.Check(Native.pour_salt_convert(ref input, out found, out call.Error));
                return new SaltConvertResult(found);
            }
        }

        /// <summary>Mass of salt for a loading, and of the softener that goes in with it.</summary>
        /// <param name="baseVolumeMl">Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
        /// to 1e15.</param>
        /// <param name="baseDensityGPerMl">Density of the base, cold and liquid, as a cup measures it. Unit:
        /// g/mL; 0.001 to 25.</param>
        /// <param name="saltDensityGPerMl">True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="form">The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
        /// `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.</param>
        /// <param name="loading">The salt loading, as its form states it. Unit: any; in the unit of its
        /// form.</param>
        /// <param name="mixMassG">Mass of the mix before salt; at least that of its base. Give its volume too.
        /// Unit: g; 1e-12 to 1e15. Default: the mass of its base.</param>
        /// <param name="mixVolumeMl">Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
        /// 1e15. Default: as `base_volume_ml`.</param>
        /// <param name="hotVolumeMl">Volume of the mix before salt at shot temperature; at least the cold one.
        /// Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.</param>
        /// <param name="shotTemperatureCelsius">Temperature at which the mix is shot. Unit: °C; 20 to 427.
        /// Default: 20.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="saltAsScoopedGPerMl">Bulk density of the salt, level in the spoon; at most its true
        /// density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="saltExpansionPerKelvin">Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
        /// Default: 0.</param>
        /// <param name="softenerPerSalt">Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0
        /// to 10. Default: 0.</param>
        /// <param name="softenerDensityGPerMl">Density of the softener that goes in with the salt; needed with
        /// it. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="softenerExpansionPerKelvin">Volumetric thermal expansion of that softener. Unit: 1/K; 0
        /// to 0.01. Default: 0.</param>
        /// <param name="mostSolids">Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0
        /// to below 1. Default: 0.3.</param>
        /// <param name="cavityVolumeMl">Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.</param>
        /// <param name="feed">Share of its contraction that a piece draws from the sprue while it cools. Where it
        /// is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        /// Unit: 1; 0 to 1. Default: 0.5.</param>
        /// <param name="hookMassG">Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="hookVolumeMl">Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
        /// 1e15. Default: 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static SaltMassResult SaltMass(
            double baseVolumeMl,
            double baseDensityGPerMl,
            double saltDensityGPerMl,
            string form,
            double loading,
            double? mixMassG = null,
            double? mixVolumeMl = null,
            double? hotVolumeMl = null,
            double? shotTemperatureCelsius = null,
            double? voids = null,
            double? saltAsScoopedGPerMl = null,
            double? saltExpansionPerKelvin = null,
            double? softenerPerSalt = null,
            double? softenerDensityGPerMl = null,
            double? softenerExpansionPerKelvin = null,
            double? mostSolids = null,
            double? cavityVolumeMl = null,
            double? feed = null,
            double? hookMassG = null,
            double? hookVolumeMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_salt_mass_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_salt_mass_input>();
                input.base_volume_ml = call.Number("base_volume_ml", baseVolumeMl);
                input.base_density_g_per_ml = call.Number("base_density_g_per_ml", baseDensityGPerMl);
                input.salt_density_g_per_ml = call.Number("salt_density_g_per_ml", saltDensityGPerMl);
                input.form = call.Word("form", form, Words.Form);
                input.loading = call.Number("loading", loading);
                input.mix_mass_g = call.Number("mix_mass_g", mixMassG);
                input.mix_volume_ml = call.Number("mix_volume_ml", mixVolumeMl);
                input.hot_volume_ml = call.Number("hot_volume_ml", hotVolumeMl);
                input.shot_temperature_celsius = call.Number("shot_temperature_celsius", shotTemperatureCelsius);
                input.voids = call.Number("voids", voids);
                input.salt_as_scooped_g_per_ml = call.Number("salt_as_scooped_g_per_ml", saltAsScoopedGPerMl);
                input.salt_expansion_per_kelvin = call.Number("salt_expansion_per_kelvin", saltExpansionPerKelvin);
                input.softener_per_salt = call.Number("softener_per_salt", softenerPerSalt);
                input.softener_density_g_per_ml = call.Number("softener_density_g_per_ml", softenerDensityGPerMl);
                input.softener_expansion_per_kelvin = call.Number("softener_expansion_per_kelvin", softenerExpansionPerKelvin);
                input.most_solids = call.Number("most_solids", mostSolids);
                input.cavity_volume_ml = call.Number("cavity_volume_ml", cavityVolumeMl);
                input.feed = call.Number("feed", feed);
                input.hook_mass_g = call.Number("hook_mass_g", hookMassG);
                input.hook_volume_ml = call.Number("hook_volume_ml", hookVolumeMl);
                call.Ready();
                Native.pour_salt_mass_result found;
                call.Check(Native.pour_salt_mass(ref input, out found, out call.Error));
                return new SaltMassResult(found);
            }
        }

        /// <summary>Salt loadings in reach: without salt, and with the maximum that `most_solids`
        /// allows.</summary>
        /// <param name="baseVolumeMl">Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
        /// to 1e15.</param>
        /// <param name="baseDensityGPerMl">Density of the base, cold and liquid, as a cup measures it. Unit:
        /// g/mL; 0.001 to 25.</param>
        /// <param name="saltDensityGPerMl">True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="form">The way in which the salt loading is stated. One of `as-scooped`, `per-volume`,
        /// `of-base`, `of-finished`, `finished-density`, `piece-mass`, `sink-density`.</param>
        /// <param name="mixMassG">Mass of the mix before salt; at least that of its base. Give its volume too.
        /// Unit: g; 1e-12 to 1e15. Default: the mass of its base.</param>
        /// <param name="mixVolumeMl">Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
        /// 1e15. Default: as `base_volume_ml`.</param>
        /// <param name="hotVolumeMl">Volume of the mix before salt at shot temperature; at least the cold one.
        /// Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.</param>
        /// <param name="shotTemperatureCelsius">Temperature at which the mix is shot. Unit: °C; 20 to 427.
        /// Default: 20.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="saltAsScoopedGPerMl">Bulk density of the salt, level in the spoon; at most its true
        /// density. Only the form as-scooped needs it. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="saltExpansionPerKelvin">Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
        /// Default: 0.</param>
        /// <param name="softenerPerSalt">Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0
        /// to 10. Default: 0.</param>
        /// <param name="softenerDensityGPerMl">Density of the softener that goes in with the salt; needed with
        /// it. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="softenerExpansionPerKelvin">Volumetric thermal expansion of that softener. Unit: 1/K; 0
        /// to 0.01. Default: 0.</param>
        /// <param name="mostSolids">Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0
        /// to below 1. Default: 0.3.</param>
        /// <param name="cavityVolumeMl">Volume of one cavity. Unit: mL; 1e-9 to 1e15. It may be omitted.</param>
        /// <param name="feed">Share of its contraction that a piece draws from the sprue while it cools. Where it
        /// is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        /// Unit: 1; 0 to 1. Default: 0.5.</param>
        /// <param name="hookMassG">Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="hookVolumeMl">Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
        /// 1e15. Default: 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static SaltReachResult SaltReach(
            double baseVolumeMl,
            double baseDensityGPerMl,
            double saltDensityGPerMl,
            string form,
            double? mixMassG = null,
            double? mixVolumeMl = null,
            double? hotVolumeMl = null,
            double? shotTemperatureCelsius = null,
            double? voids = null,
            double? saltAsScoopedGPerMl = null,
            double? saltExpansionPerKelvin = null,
            double? softenerPerSalt = null,
            double? softenerDensityGPerMl = null,
            double? softenerExpansionPerKelvin = null,
            double? mostSolids = null,
            double? cavityVolumeMl = null,
            double? feed = null,
            double? hookMassG = null,
            double? hookVolumeMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_salt_reach_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_salt_reach_input>();
                input.base_volume_ml = call.Number("base_volume_ml", baseVolumeMl);
                input.base_density_g_per_ml = call.Number("base_density_g_per_ml", baseDensityGPerMl);
                input.salt_density_g_per_ml = call.Number("salt_density_g_per_ml", saltDensityGPerMl);
                input.form = call.Word("form", form, Words.Form);
                input.mix_mass_g = call.Number("mix_mass_g", mixMassG);
                input.mix_volume_ml = call.Number("mix_volume_ml", mixVolumeMl);
                input.hot_volume_ml = call.Number("hot_volume_ml", hotVolumeMl);
                input.shot_temperature_celsius = call.Number("shot_temperature_celsius", shotTemperatureCelsius);
                input.voids = call.Number("voids", voids);
                input.salt_as_scooped_g_per_ml = call.Number("salt_as_scooped_g_per_ml", saltAsScoopedGPerMl);
                input.salt_expansion_per_kelvin = call.Number("salt_expansion_per_kelvin", saltExpansionPerKelvin);
                input.softener_per_salt = call.Number("softener_per_salt", softenerPerSalt);
                input.softener_density_g_per_ml = call.Number("softener_density_g_per_ml", softenerDensityGPerMl);
                input.softener_expansion_per_kelvin = call.Number("softener_expansion_per_kelvin", softenerExpansionPerKelvin);
                input.most_solids = call.Number("most_solids", mostSolids);
                input.cavity_volume_ml = call.Number("cavity_volume_ml", cavityVolumeMl);
                input.feed = call.Number("feed", feed);
                input.hook_mass_g = call.Number("hook_mass_g", hookMassG);
                input.hook_volume_ml = call.Number("hook_volume_ml", hookVolumeMl);
                call.Ready();
                Native.pour_salt_reach_result found;
                call.Check(Native.pour_salt_reach(ref input, out found, out call.Error));
                return new SaltReachResult(found);
            }
        }

        /// <summary>Mass of salt that brings a base alone to a finished density: SaltMass in one form, with few
        /// numbers.</summary>
        /// <remarks>m_s = (ρ′V₀ − M₀)/(1 − ρ′/ρ_s) with ρ′ = ρ_t/(1 − φ).</remarks>
        /// <param name="baseVolumeMl">Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
        /// to 1e15.</param>
        /// <param name="baseDensityGPerMl">Density of the base, cold and liquid, as a cup measures it. Unit:
        /// g/mL; 0.001 to 25.</param>
        /// <param name="saltDensityGPerMl">True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="finishedDensityGPerMl">Density of the finished plastic at 20 °C, voids counted. Unit:
        /// g/mL; 0.001 to 25.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="mostSolids">Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0
        /// to below 1. Default: 0.3.</param>
        /// <returns>Mass of salt. Unit: g.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double SaltForDensity(
            double baseVolumeMl,
            double baseDensityGPerMl,
            double saltDensityGPerMl,
            double finishedDensityGPerMl,
            double? voids = null,
            double? mostSolids = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("base_volume_ml", baseVolumeMl);
                var c1 = call.Number("base_density_g_per_ml", baseDensityGPerMl);
                var c2 = call.Number("salt_density_g_per_ml", saltDensityGPerMl);
                var c3 = call.Number("finished_density_g_per_ml", finishedDensityGPerMl);
                var c4 = call.Number("voids", voids);
                var c5 = call.Number("most_solids", mostSolids);
                call.Ready();
                double found;
                call.Check(Native.pour_salt_for_density(c0, c1, c2, c3, c4, c5, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Mass of salt at which a piece sinks at a rate.</summary>
        /// <remarks>The finished density is that for the sink rate (module `process::sink`), of the piece as it
        /// is when it has cooled; the salt is that for this density.</remarks>
        /// <param name="baseVolumeMl">Volume of the base, cold and liquid, as a cup measures it. Unit: mL; 1e-9
        /// to 1e15.</param>
        /// <param name="baseDensityGPerMl">Density of the base, cold and liquid, as a cup measures it. Unit:
        /// g/mL; 0.001 to 25.</param>
        /// <param name="saltDensityGPerMl">True density of the salt: 2.165 g/mL for sodium chloride. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="sinkRateCmPerS">Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.</param>
        /// <param name="cavityVolumeMl">Volume of one cavity. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="diameterMm">Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.</param>
        /// <param name="waterTemperatureCelsius">Temperature of the water. Unit: °C; 0 to 40.</param>
        /// <param name="lengthMm">Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6
        /// to 1e6. Default: none.</param>
        /// <param name="shape">Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a
        /// length is given, else a ball. One of `stick`, `ball`.</param>
        /// <param name="mixMassG">Mass of the mix before salt; at least that of its base. Give its volume too.
        /// Unit: g; 1e-12 to 1e15. Default: the mass of its base.</param>
        /// <param name="mixVolumeMl">Volume of the mix before salt at 20 °C. Give its mass too. Unit: mL; 1e-9 to
        /// 1e15. Default: as `base_volume_ml`.</param>
        /// <param name="hotVolumeMl">Volume of the mix before salt at shot temperature; at least the cold one.
        /// Unit: mL; 1e-9 to 1e15. Default: as `mix_volume_ml`.</param>
        /// <param name="shotTemperatureCelsius">Temperature at which the mix is shot. Unit: °C; 20 to 427.
        /// Default: 20.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="saltExpansionPerKelvin">Volumetric thermal expansion of the salt. Unit: 1/K; 0 to 0.01.
        /// Default: 0.</param>
        /// <param name="softenerPerSalt">Softener that goes in with the salt, mass per mass of salt. Unit: 1; 0
        /// to 10. Default: 0.</param>
        /// <param name="softenerDensityGPerMl">Density of the softener that goes in with the salt; needed with
        /// it. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="softenerExpansionPerKelvin">Volumetric thermal expansion of that softener. Unit: 1/K; 0
        /// to 0.01. Default: 0.</param>
        /// <param name="mostSolids">Maximum share of salt in the finished mix, by true volume. Unit: 1; above 0
        /// to below 1. Default: 0.3.</param>
        /// <param name="feed">Share of its contraction that a piece draws from the sprue while it cools. Where it
        /// is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        /// Unit: 1; 0 to 1. Default: 0.5.</param>
        /// <param name="hookMassG">Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="hookVolumeMl">Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
        /// 1e15. Default: 0.</param>
        /// <param name="salinityPractical">Practical salinity as a probe reads it, about 35 in the ocean; give
        /// this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.</param>
        /// <param name="salinityAbsolute">Absolute salinity, mass of salt per mass of sea water (35 g/kg is
        /// 0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.</param>
        /// <param name="dropDepthM">Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9
        /// to 12000. Default: none.</param>
        /// <param name="dropTimeS">Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.</param>
        /// <param name="dropDensityGPerMl">Density of the piece that was dropped. Unit: g/mL; 0.001 to 25.
        /// Default: none.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static SaltForSinkRateResult SaltForSinkRate(
            double baseVolumeMl,
            double baseDensityGPerMl,
            double saltDensityGPerMl,
            double sinkRateCmPerS,
            double cavityVolumeMl,
            double diameterMm,
            double waterTemperatureCelsius,
            double? lengthMm = null,
            string shape = null,
            double? mixMassG = null,
            double? mixVolumeMl = null,
            double? hotVolumeMl = null,
            double? shotTemperatureCelsius = null,
            double? voids = null,
            double? saltExpansionPerKelvin = null,
            double? softenerPerSalt = null,
            double? softenerDensityGPerMl = null,
            double? softenerExpansionPerKelvin = null,
            double? mostSolids = null,
            double? feed = null,
            double? hookMassG = null,
            double? hookVolumeMl = null,
            double? salinityPractical = null,
            double? salinityAbsolute = null,
            double? dropDepthM = null,
            double? dropTimeS = null,
            double? dropDensityGPerMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_salt_for_sink_rate_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_salt_for_sink_rate_input>();
                input.base_volume_ml = call.Number("base_volume_ml", baseVolumeMl);
                input.base_density_g_per_ml = call.Number("base_density_g_per_ml", baseDensityGPerMl);
                input.salt_density_g_per_ml = call.Number("salt_density_g_per_ml", saltDensityGPerMl);
                input.sink_rate_cm_per_s = call.Number("sink_rate_cm_per_s", sinkRateCmPerS);
                input.cavity_volume_ml = call.Number("cavity_volume_ml", cavityVolumeMl);
                input.diameter_mm = call.Number("diameter_mm", diameterMm);
                input.water_temperature_celsius = call.Number("water_temperature_celsius", waterTemperatureCelsius);
                input.length_mm = call.Number("length_mm", lengthMm);
                input.shape = call.Word("shape", shape, Words.Shape);
                input.mix_mass_g = call.Number("mix_mass_g", mixMassG);
                input.mix_volume_ml = call.Number("mix_volume_ml", mixVolumeMl);
                input.hot_volume_ml = call.Number("hot_volume_ml", hotVolumeMl);
                input.shot_temperature_celsius = call.Number("shot_temperature_celsius", shotTemperatureCelsius);
                input.voids = call.Number("voids", voids);
                input.salt_expansion_per_kelvin = call.Number("salt_expansion_per_kelvin", saltExpansionPerKelvin);
                input.softener_per_salt = call.Number("softener_per_salt", softenerPerSalt);
                input.softener_density_g_per_ml = call.Number("softener_density_g_per_ml", softenerDensityGPerMl);
                input.softener_expansion_per_kelvin = call.Number("softener_expansion_per_kelvin", softenerExpansionPerKelvin);
                input.most_solids = call.Number("most_solids", mostSolids);
                input.feed = call.Number("feed", feed);
                input.hook_mass_g = call.Number("hook_mass_g", hookMassG);
                input.hook_volume_ml = call.Number("hook_volume_ml", hookVolumeMl);
                input.salinity_practical = call.Number("salinity_practical", salinityPractical);
                input.salinity_absolute = call.Number("salinity_absolute", salinityAbsolute);
                input.drop_depth_m = call.Number("drop_depth_m", dropDepthM);
                input.drop_time_s = call.Number("drop_time_s", dropTimeS);
                input.drop_density_g_per_ml = call.Number("drop_density_g_per_ml", dropDensityGPerMl);
                call.Ready();
                Native.pour_salt_for_sink_rate_result found;
                call.Check(Native.pour_salt_for_sink_rate(ref input, out found, out call.Error));
                return new SaltForSinkRateResult(found);
            }
        }

        /// <summary>Mass of one shot, and of its pieces.</summary>
        /// <remarks>Fill: (n V_c + V_s) ρ_hot (1 − φ) + m_top; a piece as in PieceMass, as far as sprue and
        /// topping can feed it; what is fed leaves the sprue. Where they cannot, the pieces sink in, and
        /// `missing_mass` is above 0. Of sprue and topping a layer fills its share.</remarks>
        /// <param name="cavities">Number of cavities that a shot fills. 1 to 1000000.</param>
        /// <param name="cavityVolumeMl">Volume of one cavity. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="coldDensityGPerMl">Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="hotDensityGPerMl">Melt density at shot temperature, without voids; at most the cold one.
        /// Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="feed">Share of its contraction that a piece draws from the sprue while it cools. Where it
        /// is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        /// Unit: 1; 0 to 1. Default: 0.5.</param>
        /// <param name="sprueVolumeMl">Volume of the sprue. Unit: mL; 0 to 1e15. Default: 0.</param>
        /// <param name="toppedMassG">Mass that topping off and holding add. Unit: g; 0 to 1e15. Default:
        /// 0.</param>
        /// <param name="layerShare">Share of the cavity that this layer of a laminated piece fills. Unit: 1;
        /// above 0 to 1. Default: 1.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static ShotFillResult ShotFill(
            uint cavities,
            double cavityVolumeMl,
            double coldDensityGPerMl,
            double? hotDensityGPerMl = null,
            double? voids = null,
            double? feed = null,
            double? sprueVolumeMl = null,
            double? toppedMassG = null,
            double? layerShare = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_shot_fill_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_shot_fill_input>();
                input.cavities = call.Count("cavities", cavities);
                input.cavity_volume_ml = call.Number("cavity_volume_ml", cavityVolumeMl);
                input.cold_density_g_per_ml = call.Number("cold_density_g_per_ml", coldDensityGPerMl);
                input.hot_density_g_per_ml = call.Number("hot_density_g_per_ml", hotDensityGPerMl);
                input.voids = call.Number("voids", voids);
                input.feed = call.Number("feed", feed);
                input.sprue_volume_ml = call.Number("sprue_volume_ml", sprueVolumeMl);
                input.topped_mass_g = call.Number("topped_mass_g", toppedMassG);
                input.layer_share = call.Number("layer_share", layerShare);
                call.Ready();
                Native.pour_shot_fill_result found;
                call.Check(Native.pour_shot_fill(ref input, out found, out call.Error));
                return new ShotFillResult(found);
            }
        }

        /// <summary>Mass of a piece: m = V (1 − φ) [ρ_hot + f (ρ_cold − ρ_hot)], φ the voids, f the
        /// feed.</summary>
        /// <remarks>While it cools a piece draws the share f of its contraction from the sprue. Source:
        /// conservation of mass; f is the shop's own. A sprue that cannot feed that much: see ShotFill.</remarks>
        /// <param name="cavityVolumeMl">Volume of one cavity. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="coldDensityGPerMl">Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="hotDensityGPerMl">Melt density at shot temperature, without voids; at most the cold one.
        /// Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="feed">Share of its contraction that a piece draws from the sprue while it cools. Where it
        /// is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        /// Unit: 1; 0 to 1. Default: 0.5.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static PieceMassResult PieceMass(
            double cavityVolumeMl,
            double coldDensityGPerMl,
            double? hotDensityGPerMl = null,
            double? voids = null,
            double? feed = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("cavity_volume_ml", cavityVolumeMl);
                var c1 = call.Number("cold_density_g_per_ml", coldDensityGPerMl);
                var c2 = call.Number("hot_density_g_per_ml", hotDensityGPerMl);
                var c3 = call.Number("voids", voids);
                var c4 = call.Number("feed", feed);
                call.Ready();
                Native.pour_piece_mass_result found;
                call.Check(Native.pour_piece_mass(c0, c1, c2, c3, c4, out found, out call.Error));
                return new PieceMassResult(found);
            }
        }

        /// <summary>Minimum number of shots for a number of good pieces.</summary>
        /// <remarks>Without rejects ⌈N/n⌉; with a reject rate p the smallest S with P[Bin(S n, 1 − p) ≥ N] ≥ the
        /// confidence.</remarks>
        /// <param name="pieces">Number of good pieces needed. 1 to 1000000.</param>
        /// <param name="cavities">Number of cavities that a shot fills. 1 to 1000000.</param>
        /// <param name="rejects">Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="confidence">Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999.
        /// Default: 0.9.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static ShotsResult Shots(
            uint pieces,
            uint cavities,
            double? rejects = null,
            double? confidence = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Count("pieces", pieces);
                var c1 = call.Count("cavities", cavities);
                var c2 = call.Number("rejects", rejects);
                var c3 = call.Number("confidence", confidence);
                call.Ready();
                Native.pour_shots_result found;
                call.Check(Native.pour_shots(c0, c1, c2, c3, out found, out call.Error));
                return new ShotsResult(found);
            }
        }

        /// <summary>Injector loads for a number of shots.</summary>
        /// <remarks>Whole shots a load: q = ⌊(capacity − residue) ρ/m⌋; loads: ⌈S/q⌉.</remarks>
        /// <param name="shots">Number of shots. 1 to 100000000.</param>
        /// <param name="shotMassG">Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="shotDensityGPerMl">Density of what the injector draws: hot, voids counted. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="injectorCapacityMl">Volume that the injector takes up at most. Unit: mL; 1e-9 to
        /// 1e15.</param>
        /// <param name="injectorResidueMl">Volume that stays in the injector each time it is emptied; below its
        /// capacity. Unit: mL; 0 to 1e15. Default: 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static InjectorLoadsResult InjectorLoads(
            uint shots,
            double shotMassG,
            double shotDensityGPerMl,
            double injectorCapacityMl,
            double? injectorResidueMl = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Count("shots", shots);
                var c1 = call.Number("shot_mass_g", shotMassG);
                var c2 = call.Number("shot_density_g_per_ml", shotDensityGPerMl);
                var c3 = call.Number("injector_capacity_ml", injectorCapacityMl);
                var c4 = call.Number("injector_residue_ml", injectorResidueMl);
                call.Ready();
                Native.pour_injector_loads_result found;
                call.Check(Native.pour_injector_loads(c0, c1, c2, c3, c4, out found, out call.Error));
                return new InjectorLoadsResult(found);
            }
        }

        /// <summary>Mass to mix for a number of good pieces: shots, injector loads, what is lost and what comes
        /// back.</summary>
        /// <remarks>total = S m_shot − y m_sprue (S − shots of the last load) + cleanings · residue · ρ +
        /// max(film, heel).</remarks>
        /// <param name="pieces">Number of good pieces needed. 1 to 1000000.</param>
        /// <param name="cavities">Number of cavities that a shot fills. 1 to 1000000.</param>
        /// <param name="shotMassG">Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="shotDensityGPerMl">Density of what the injector draws: hot, voids counted. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="injectorCapacityMl">Volume that the injector takes up at most. Unit: mL; 1e-9 to
        /// 1e15.</param>
        /// <param name="injectorResidueMl">Volume that stays in the injector each time it is emptied; below its
        /// capacity. Unit: mL; 0 to 1e15. Default: 0.</param>
        /// <param name="cleanings">Number of times the injector is cleaned or goes cold, the last time included.
        /// 1 to 1000000. Default: 1.</param>
        /// <param name="sprueMassG">Mass of a shot that stays as sprue; at most the mass of the shot. Unit: g; 0
        /// to 1e15. Default: 0.</param>
        /// <param name="returned">Share of the sprues that is melted again. Unit: 1; 0 to 1. Default: 0.</param>
        /// <param name="potFilmG">Mass that clings to the wall of the cup, part of the heel. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="potHeelG">Mass that cannot be drawn from the cup, its film included. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="rejects">Share of pieces that are not fit to sell. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="confidence">Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999.
        /// Default: 0.9.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static BatchNeedResult BatchNeed(
            uint pieces,
            uint cavities,
            double shotMassG,
            double shotDensityGPerMl,
            double injectorCapacityMl,
            double? injectorResidueMl = null,
            uint? cleanings = null,
            double? sprueMassG = null,
            double? returned = null,
            double? potFilmG = null,
            double? potHeelG = null,
            double? rejects = null,
            double? confidence = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_batch_need_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_batch_need_input>();
                input.pieces = call.Count("pieces", pieces);
                input.cavities = call.Count("cavities", cavities);
                input.shot_mass_g = call.Number("shot_mass_g", shotMassG);
                input.shot_density_g_per_ml = call.Number("shot_density_g_per_ml", shotDensityGPerMl);
                input.injector_capacity_ml = call.Number("injector_capacity_ml", injectorCapacityMl);
                input.injector_residue_ml = call.Number("injector_residue_ml", injectorResidueMl);
                input.cleanings = call.Count("cleanings", cleanings);
                input.sprue_mass_g = call.Number("sprue_mass_g", sprueMassG);
                input.returned = call.Number("returned", returned);
                input.pot_film_g = call.Number("pot_film_g", potFilmG);
                input.pot_heel_g = call.Number("pot_heel_g", potHeelG);
                input.rejects = call.Number("rejects", rejects);
                input.confidence = call.Number("confidence", confidence);
                call.Ready();
                Native.pour_batch_need_result found;
                call.Check(Native.pour_batch_need(ref input, out found, out call.Error));
                return new BatchNeedResult(found);
            }
        }

        /// <summary>Base for a mass of mix, rounded up to a mark of the cup, and what that gives more than is
        /// needed.</summary>
        /// <remarks>The doses follow from the rounded base, so that no formula is off.</remarks>
        /// <param name="mixNeededG">Mass of mix that is needed. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="baseFraction">Share of base in the mix, by mass. Unit: 1; above 0 to 1.</param>
        /// <param name="baseDensityGPerMl">Density of the base, cold and liquid, as a cup measures it. Unit:
        /// g/mL; 0.001 to 25.</param>
        /// <param name="cupCapacityMl">Volume of the cup up to its last mark. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="cupMarkMl">Distance between the marks of the cup. Unit: mL; 1e-9 to 1e15. Default: one
        /// mark alone, when it is full.</param>
        /// <param name="shotMassG">Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be
        /// omitted.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static BaseToMarkResult BaseToMark(
            double mixNeededG,
            double baseFraction,
            double baseDensityGPerMl,
            double cupCapacityMl,
            double? cupMarkMl = null,
            double? shotMassG = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("mix_needed_g", mixNeededG);
                var c1 = call.Number("base_fraction", baseFraction);
                var c2 = call.Number("base_density_g_per_ml", baseDensityGPerMl);
                var c3 = call.Number("cup_capacity_ml", cupCapacityMl);
                var c4 = call.Number("cup_mark_ml", cupMarkMl);
                var c5 = call.Number("shot_mass_g", shotMassG);
                call.Ready();
                Native.pour_base_to_mark_result found;
                call.Check(Native.pour_base_to_mark(c0, c1, c2, c3, c4, c5, out found, out call.Error));
                return new BaseToMarkResult(found);
            }
        }

        /// <summary>Smallest pot that the bench can make: base ≥ q/(2·tolerance·ratio) for each dose with its
        /// step q, and no less mix than oven and injector need.</summary>
        /// <param name="doses">The doses: of each its smallest step, its tolerance and its ratio to the base. 1
        /// to 64 of them. Each: Smallest step in which a dose can be measured: a drop, the smallest spoon, the
        /// readability of the balance. Unit: g; 1e-12 to 1e15. Then: Largest relative error that is accepted.
        /// Unit: 1; above 0 to below 1. Default: 0.05. Then: Dose, mass per mass of base. Unit: 1; 1e-9 to
        /// 10.</param>
        /// <param name="baseFraction">Share of base in the mix, by mass. Unit: 1; above 0 to 1.</param>
        /// <param name="ovenLeastG">Smallest mix that the oven heats evenly. Unit: g; 1e-12 to 1e15. Default:
        /// none.</param>
        /// <param name="injectorLeastG">Smallest mix that the injector can draw from. Unit: g; 1e-12 to 1e15.
        /// Default: none.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static LeastPotResult LeastPot(
            double[][] doses,
            double baseFraction,
            double? ovenLeastG = null,
            double? injectorLeastG = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("doses", doses, 3);
                var c1 = call.Length;
                var c2 = call.Number("base_fraction", baseFraction);
                var c3 = call.Number("oven_least_g", ovenLeastG);
                var c4 = call.Number("injector_least_g", injectorLeastG);
                call.Ready();
                Native.pour_least_pot_result found;
                call.Check(Native.pour_least_pot(c0, c1, c2, c3, c4, out found, out call.Error));
                return new LeastPotResult(found);
            }
        }

        /// <summary>Reject rate from counted pieces, with the exact interval of a binomial share.</summary>
        /// <remarks>Clopper and Pearson, Biometrika 26 (1934) 404: it holds at least the confidence stated,
        /// mostly more.</remarks>
        /// <param name="castPieces">Number of pieces that were cast. 1 to 1000000.</param>
        /// <param name="rejectCount">Number of them that are not fit to sell. 0 to 1000000.</param>
        /// <param name="confidence">Confidence that enough good pieces come out. Unit: 1; above 0 to 0.999999999.
        /// Default: 0.9.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static RejectRateResult RejectRate(
            uint castPieces,
            uint rejectCount,
            double? confidence = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Count("cast_pieces", castPieces);
                var c1 = call.Count("reject_count", rejectCount);
                var c2 = call.Number("confidence", confidence);
                call.Ready();
                Native.pour_reject_rate_result found;
                call.Check(Native.pour_reject_rate(c0, c1, c2, out found, out call.Error));
                return new RejectRateResult(found);
            }
        }

        /// <summary>Measures a mass with the tools of the bench: the way with the least handling that keeps the
        /// tolerance.</summary>
        /// <remarks>A tool that is not given is not on the bench. Where no tool keeps the tolerance, the help
        /// gives the mass from which one would.</remarks>
        /// <param name="massToMeasureG">Mass to measure. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="tolerance">Largest relative error that is accepted. Unit: 1; above 0 to below 1. Default:
        /// 0.05.</param>
        /// <param name="balanceReadabilityG">Smallest difference that the balance shows; without it there is no
        /// balance. Unit: g; 1e-12 to 1e15. Default: none.</param>
        /// <param name="balanceCapacityG">Highest load of the balance. Unit: g; 1e-12 to 1e15. Default: 5000
        /// times its readability.</param>
        /// <param name="balanceLeastLoadG">Minimum load for which the balance is trusted. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="spoonsMl">Volumes of the measuring spoons. 1 to 8 of them. Default: none. Each: Volume of
        /// the level spoon. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="cups">The cups with evenly spaced marks: of each the distance between marks and the
        /// capacity. 1 to 64 of them. Default: none. Each: Distance between the marks of the cup. Unit: mL; 1e-9
        /// to 1e15. Default: one mark alone, when it is full. Then: Volume of the cup up to its last mark. Unit:
        /// mL; 1e-9 to 1e15.</param>
        /// <param name="asMeasuredDensityGPerMl">Density of the material in a measure: of a liquid its density,
        /// of a powder its bulk density, level and not tapped. Unit: g/mL; 0.001 to 25. Default: none.</param>
        /// <param name="dropMassG">Mass of one drop. Unit: g; 1e-12 to 1e15. Default: none.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static BenchMeasureResult BenchMeasure(
            double massToMeasureG,
            double? tolerance = null,
            double? balanceReadabilityG = null,
            double? balanceCapacityG = null,
            double? balanceLeastLoadG = null,
            double[] spoonsMl = null,
            double[][] cups = null,
            double? asMeasuredDensityGPerMl = null,
            double? dropMassG = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_bench_measure_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_bench_measure_input>();
                input.mass_to_measure_g = call.Number("mass_to_measure_g", massToMeasureG);
                input.tolerance = call.Number("tolerance", tolerance);
                input.balance_readability_g = call.Number("balance_readability_g", balanceReadabilityG);
                input.balance_capacity_g = call.Number("balance_capacity_g", balanceCapacityG);
                input.balance_least_load_g = call.Number("balance_least_load_g", balanceLeastLoadG);
                input.spoons_ml = call.List("spoons_ml", spoonsMl);
                input.spoons_count = call.Length;
                input.cups = call.Rows("cups", cups, 2);
                input.cups_count = call.Length;
                input.as_measured_density_g_per_ml = call.Number("as_measured_density_g_per_ml", asMeasuredDensityGPerMl);
                input.drop_mass_g = call.Number("drop_mass_g", dropMassG);
                call.Ready();
                Native.pour_bench_measure_result found;
                call.Check(Native.pour_bench_measure(ref input, out found, out call.Error));
                return new BenchMeasureResult(found);
            }
        }

        /// <summary>Sink rate of a piece with its hook: the final speed, a model value.</summary>
        /// <remarks>Balance of weight, buoyancy and the published drag of a cylinder across the flow or of a
        /// sphere; the equations, sources and bounds are those of the module `process::sink`. `motion` is whether
        /// the model holds for such a piece at all. A drop that the shop timed (depth, time, density) replaces
        /// the published drag by the piece's own.</remarks>
        /// <param name="pieceDensityGPerMl">Density of the piece, its salt and voids counted. Unit: g/mL; 0.001
        /// to 25.</param>
        /// <param name="pieceVolumeMl">Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="diameterMm">Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.</param>
        /// <param name="waterTemperatureCelsius">Temperature of the water. Unit: °C; 0 to 40.</param>
        /// <param name="lengthMm">Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6
        /// to 1e6. Default: none.</param>
        /// <param name="shape">Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a
        /// length is given, else a ball. One of `stick`, `ball`.</param>
        /// <param name="hookMassG">Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="hookVolumeMl">Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
        /// 1e15. Default: 0.</param>
        /// <param name="salinityPractical">Practical salinity as a probe reads it, about 35 in the ocean; give
        /// this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.</param>
        /// <param name="salinityAbsolute">Absolute salinity, mass of salt per mass of sea water (35 g/kg is
        /// 0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.</param>
        /// <param name="densityUncertaintyGPerMl">Standard uncertainty of the density of the piece; its bounds
        /// are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.</param>
        /// <param name="depthM">Depth to give the sink time for. Unit: m; 1e-9 to 12000. Default: none.</param>
        /// <param name="dropDepthM">Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9
        /// to 12000. Default: none.</param>
        /// <param name="dropTimeS">Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.</param>
        /// <param name="dropDensityGPerMl">Density of the piece that was dropped. Unit: g/mL; 0.001 to 25.
        /// Default: none.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static SinkRateResult SinkRate(
            double pieceDensityGPerMl,
            double pieceVolumeMl,
            double diameterMm,
            double waterTemperatureCelsius,
            double? lengthMm = null,
            string shape = null,
            double? hookMassG = null,
            double? hookVolumeMl = null,
            double? salinityPractical = null,
            double? salinityAbsolute = null,
            double? densityUncertaintyGPerMl = null,
            double? depthM = null,
            double? dropDepthM = null,
            double? dropTimeS = null,
            double? dropDensityGPerMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_sink_rate_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_sink_rate_input>();
                input.piece_density_g_per_ml = call.Number("piece_density_g_per_ml", pieceDensityGPerMl);
                input.piece_volume_ml = call.Number("piece_volume_ml", pieceVolumeMl);
                input.diameter_mm = call.Number("diameter_mm", diameterMm);
                input.water_temperature_celsius = call.Number("water_temperature_celsius", waterTemperatureCelsius);
                input.length_mm = call.Number("length_mm", lengthMm);
                input.shape = call.Word("shape", shape, Words.Shape);
                input.hook_mass_g = call.Number("hook_mass_g", hookMassG);
                input.hook_volume_ml = call.Number("hook_volume_ml", hookVolumeMl);
                input.salinity_practical = call.Number("salinity_practical", salinityPractical);
                input.salinity_absolute = call.Number("salinity_absolute", salinityAbsolute);
                input.density_uncertainty_g_per_ml = call.Number("density_uncertainty_g_per_ml", densityUncertaintyGPerMl);
                input.depth_m = call.Number("depth_m", depthM);
                input.drop_depth_m = call.Number("drop_depth_m", dropDepthM);
                input.drop_time_s = call.Number("drop_time_s", dropTimeS);
                input.drop_density_g_per_ml = call.Number("drop_density_g_per_ml", dropDensityGPerMl);
                call.Ready();
                Native.pour_sink_rate_result found;
                call.Check(Native.pour_sink_rate(ref input, out found, out call.Error));
                return new SinkRateResult(found);
            }
        }

        /// <summary>Density at which a piece sinks at a rate: the finished density to salt for.</summary>
        /// <param name="sinkRateCmPerS">Sink rate: the final speed of the piece. Unit: cm/s; 1e-9 to 1e6.</param>
        /// <param name="pieceVolumeMl">Volume of the piece without its hook. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="diameterMm">Mean diameter of the piece. Unit: mm; 1e-6 to 1e6.</param>
        /// <param name="waterTemperatureCelsius">Temperature of the water. Unit: °C; 0 to 40.</param>
        /// <param name="lengthMm">Length of a stick, at least 2.01 diameters; not used for a ball. Unit: mm; 1e-6
        /// to 1e6. Default: none.</param>
        /// <param name="shape">Shape of the piece as it sinks: a stick sinks sideways. Default: a stick where a
        /// length is given, else a ball. One of `stick`, `ball`.</param>
        /// <param name="hookMassG">Mass of hook and weight on a piece; give its volume too. Unit: g; 0 to 1e15.
        /// Default: 0.</param>
        /// <param name="hookVolumeMl">Volume that hook and weight displace; give their mass too. Unit: mL; 0 to
        /// 1e15. Default: 0.</param>
        /// <param name="salinityPractical">Practical salinity as a probe reads it, about 35 in the ocean; give
        /// this or the absolute one. Fresh water without either. Unit: 1; 0 to 41.8. Default: none.</param>
        /// <param name="salinityAbsolute">Absolute salinity, mass of salt per mass of sea water (35 g/kg is
        /// 0.035); give this or the practical one. Unit: 1; 0 to 0.042. Default: none.</param>
        /// <param name="dropDepthM">Depth of a timed drop, the piece let go just below the surface. Unit: m; 1e-9
        /// to 12000. Default: none.</param>
        /// <param name="dropTimeS">Time of the timed drop. Unit: s; 1e-6 to 1e9. Default: none.</param>
        /// <param name="dropDensityGPerMl">Density of the piece that was dropped. Unit: g/mL; 0.001 to 25.
        /// Default: none.</param>
        /// <returns>Density of the piece, voids and salt counted. Unit: g/mL.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double DensityForSinkRate(
            double sinkRateCmPerS,
            double pieceVolumeMl,
            double diameterMm,
            double waterTemperatureCelsius,
            double? lengthMm = null,
            string shape = null,
            double? hookMassG = null,
            double? hookVolumeMl = null,
            double? salinityPractical = null,
            double? salinityAbsolute = null,
            double? dropDepthM = null,
            double? dropTimeS = null,
            double? dropDensityGPerMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_density_for_sink_rate_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_density_for_sink_rate_input>();
                input.sink_rate_cm_per_s = call.Number("sink_rate_cm_per_s", sinkRateCmPerS);
                input.piece_volume_ml = call.Number("piece_volume_ml", pieceVolumeMl);
                input.diameter_mm = call.Number("diameter_mm", diameterMm);
                input.water_temperature_celsius = call.Number("water_temperature_celsius", waterTemperatureCelsius);
                input.length_mm = call.Number("length_mm", lengthMm);
                input.shape = call.Word("shape", shape, Words.Shape);
                input.hook_mass_g = call.Number("hook_mass_g", hookMassG);
                input.hook_volume_ml = call.Number("hook_volume_ml", hookVolumeMl);
                input.salinity_practical = call.Number("salinity_practical", salinityPractical);
                input.salinity_absolute = call.Number("salinity_absolute", salinityAbsolute);
                input.drop_depth_m = call.Number("drop_depth_m", dropDepthM);
                input.drop_time_s = call.Number("drop_time_s", dropTimeS);
                input.drop_density_g_per_ml = call.Number("drop_density_g_per_ml", dropDensityGPerMl);
                call.Ready();
                double found;
                call.Check(Native.pour_density_for_sink_rate(ref input, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Hardness that a ratio of softener or hardener gives: a monotone cubic through the shop's own
        /// points.</summary>
        /// <remarks>Fritsch and Butland 1984, the slopes of SciPy's PchipInterpolator. Outside the points it
        /// refuses. Shore scales do not convert into each other (ASTM D2240): all points are on one.</remarks>
        /// <param name="points">The shop's own measured points, by rising ratio: of each the ratio and the
        /// durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per mass of
        /// base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.</param>
        /// <param name="scale">The scale of the durometer. One of `shore-00`, `shore-a`.</param>
        /// <param name="softenerRatio">Softener or hardener, mass per mass of base; between the measured points.
        /// Unit: 1; 0 to 100.</param>
        /// <returns>Durometer reading. Unit: 1.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double Hardness(
            double[][] points,
            string scale,
            double softenerRatio)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("points", points, 2);
                var c1 = call.Length;
                var c2 = call.Word("scale", scale, Words.Scale);
                var c3 = call.Number("softener_ratio", softenerRatio);
                call.Ready();
                double found;
                call.Check(Native.pour_hardness(c0, c1, c2, c3, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Ratio of softener or hardener for a hardness: the other way round.</summary>
        /// <param name="points">The shop's own measured points, by rising ratio: of each the ratio and the
        /// durometer reading. 2 to 1000 of them. Each: Softener or hardener of a measured point, mass per mass of
        /// base. Unit: 1; 0 to 100. Then: Durometer reading of a measured point. Unit: 1; 0 to 100.</param>
        /// <param name="scale">The scale of the durometer. One of `shore-00`, `shore-a`.</param>
        /// <param name="hardness">Durometer reading. Unit: 1; 0 to 100.</param>
        /// <returns>Mass per mass of base. Unit: 1.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double SoftenerRatio(
            double[][] points,
            string scale,
            double hardness)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("points", points, 2);
                var c1 = call.Length;
                var c2 = call.Word("scale", scale, Words.Scale);
                var c3 = call.Number("hardness", hardness);
                call.Ready();
                double found;
                call.Check(Native.pour_softener_ratio(c0, c1, c2, c3, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Extra softener for a salted body, between the shop's own points.</summary>
        /// <remarks>Salt makes a body harder; the shop has found what softener makes up for it. Between the
        /// points a monotone cubic answers, outside it refuses.</remarks>
        /// <param name="saltedPoints">The shop's own measured points, by rising salt: of each the salt and the
        /// softener, mass per mass of base. 2 to 1000 of them. Each: Salt of a measured point, mass per mass of
        /// base. Unit: 1; 0 to 10. Then: Softener that the shop adds at that salt, mass per mass of base. Unit:
        /// 1; 0 to 10.</param>
        /// <param name="saltOfBase">Salt, mass per mass of base; between the measured points. Unit: 1; 0 to
        /// 10.</param>
        /// <returns>Softener on top of the unsalted body's, mass per mass of base. Unit: 1.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double SaltedSoftener(
            double[][] saltedPoints,
            double saltOfBase)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("salted_points", saltedPoints, 2);
                var c1 = call.Length;
                var c2 = call.Number("salt_of_base", saltOfBase);
                call.Ready();
                double found;
                call.Check(Native.pour_salted_softener(c0, c1, c2, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Density of air-free water at 101.325 kPa, 0 to 40 °C.</summary>
        /// <remarks>Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6
        /// relative.</remarks>
        /// <param name="waterTemperatureCelsius">Temperature of the water. Unit: °C; 0 to 40.</param>
        /// <returns>Density of the water. Unit: g/mL.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double WaterDensity(
            double waterTemperatureCelsius)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("water_temperature_celsius", waterTemperatureCelsius);
                call.Ready();
                double found;
                call.Check(Native.pour_water_density(c0, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Volume of a cavity from the reading of a balance for the water that it holds.</summary>
        /// <remarks>Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO
        /// 4787).</remarks>
        /// <param name="waterMassG">Reading of the balance for the water in one cavity: filled less empty. Unit:
        /// g; 1e-12 to 1e15.</param>
        /// <param name="waterTemperatureCelsius">Temperature of the water. Unit: °C; 0 to 40.</param>
        /// <param name="airPressureKpa">Air pressure at the balance, not reduced to sea level. Unit: kPa; 45 to
        /// 110. Default: 101.325.</param>
        /// <returns>Volume of the cavity. Unit: mL.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double CavityOfWater(
            double waterMassG,
            double waterTemperatureCelsius,
            double? airPressureKpa = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("water_mass_g", waterMassG);
                var c1 = call.Number("water_temperature_celsius", waterTemperatureCelsius);
                var c2 = call.Number("air_pressure_kpa", airPressureKpa);
                call.Ready();
                double found;
                call.Check(Native.pour_cavity_of_water(c0, c1, c2, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Air pressure of the standard atmosphere at an altitude.</summary>
        /// <remarks>U.S. Standard Atmosphere, 1976, lowest layer. The weather moves the real pressure by some 3
        /// %.</remarks>
        /// <param name="altitudeM">Height above sea level, as a map gives it; negative below it. Unit: m; -5000
        /// to 11000.</param>
        /// <returns>Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
        /// Unit: kPa.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double StandardPressure(
            double altitudeM)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("altitude_m", altitudeM);
                call.Ready();
                double found;
                call.Check(Native.pour_standard_pressure(c0, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Air pressure at the place itself from one that a weather report gives, reduced to sea
        /// level.</summary>
        /// <remarks>Undoes the reduction by the standard atmosphere, which is the definition of an altimeter
        /// setting.</remarks>
        /// <param name="reportedPressureKpa">Air pressure as a weather report gives it, reduced to sea level;
        /// needs the altitude. Unit: kPa; 85 to 110.</param>
        /// <param name="altitudeM">Height above sea level, as a map gives it; negative below it. Unit: m; -5000
        /// to 11000.</param>
        /// <returns>Air pressure at the place itself; also the maximum that a true vacuum gauge shows there.
        /// Unit: kPa.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double StationPressure(
            double reportedPressureKpa,
            double altitudeM)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("reported_pressure_kpa", reportedPressureKpa);
                var c1 = call.Number("altitude_m", altitudeM);
                call.Ready();
                double found;
                call.Check(Native.pour_station_pressure(c0, c1, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Volume of a pot in a vacuum, with the air that it holds.</summary>
        /// <remarks>Boyle: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)]. The vacuum is stated in one way, as
        /// a gauge shows it or as the pressure that is left; with a gauge the lowest pressure counts that its
        /// tolerance allows.</remarks>
        /// <param name="liquidVolumeMl">Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="entrainedAir">Share of air in the mix by volume, under the outside pressure. Unit: 1; 0
        /// to below 1.</param>
        /// <param name="stationPressureKpa">Air pressure at the place itself, not reduced to sea level. Unit:
        /// kPa; 22.6 to 178.</param>
        /// <param name="gaugeVacuumKpa">Reading of a vacuum gauge, which counts down from the air outside; give
        /// this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.</param>
        /// <param name="absolutePressureKpa">Pressure that is left in the chamber, counted from nothing at all;
        /// give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.</param>
        /// <param name="dialToleranceKpa">How far the vacuum gauge may be off to either side; the default, 0.9
        /// inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.</param>
        /// <param name="vaporPressureKpa">Vapor pressure of the liquid; 0 for a dry plasticizer. Below the
        /// pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.</param>
        /// <param name="dampAtCelsius">Temperature of a damp pot, whose water boils under vacuum; omit it for a
        /// dry pot. Unit: °C; 0.01 to 200. Default: none.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static SwollenVolumeResult SwollenVolume(
            double liquidVolumeMl,
            double entrainedAir,
            double stationPressureKpa,
            double? gaugeVacuumKpa = null,
            double? absolutePressureKpa = null,
            double? dialToleranceKpa = null,
            double? vaporPressureKpa = null,
            double? dampAtCelsius = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_swollen_volume_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_swollen_volume_input>();
                input.liquid_volume_ml = call.Number("liquid_volume_ml", liquidVolumeMl);
                input.entrained_air = call.Number("entrained_air", entrainedAir);
                input.station_pressure_kpa = call.Number("station_pressure_kpa", stationPressureKpa);
                input.gauge_vacuum_kpa = call.Number("gauge_vacuum_kpa", gaugeVacuumKpa);
                input.absolute_pressure_kpa = call.Number("absolute_pressure_kpa", absolutePressureKpa);
                input.dial_tolerance_kpa = call.Number("dial_tolerance_kpa", dialToleranceKpa);
                input.vapor_pressure_kpa = call.Number("vapor_pressure_kpa", vaporPressureKpa);
                input.damp_at_celsius = call.Number("damp_at_celsius", dampAtCelsius);
                call.Ready();
                Native.pour_swollen_volume_result found;
                call.Check(Native.pour_swollen_volume(ref input, out found, out call.Error));
                return new SwollenVolumeResult(found);
            }
        }

        /// <summary>Share of air in a pot, from how high it was seen to rise in a vacuum.</summary>
        /// <remarks>With f the level in the vacuum over the level before and b₁, b₂ the expansions of the air
        /// before and after: φ/(1 − φ) = (f − 1)/(b₂ − f b₁).</remarks>
        /// <param name="rise">Level of a pot in the vacuum over its level before; give this or the entrained air.
        /// Unit: 1; 1 to 1000.</param>
        /// <param name="stationPressureKpa">Air pressure at the place itself, not reduced to sea level. Unit:
        /// kPa; 22.6 to 178.</param>
        /// <param name="gaugeVacuumKpa">Reading of a vacuum gauge, which counts down from the air outside; give
        /// this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.</param>
        /// <param name="absolutePressureKpa">Pressure that is left in the chamber, counted from nothing at all;
        /// give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.</param>
        /// <param name="dialToleranceKpa">How far the vacuum gauge may be off to either side; the default, 0.9
        /// inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.</param>
        /// <param name="vaporPressureKpa">Vapor pressure of the liquid; 0 for a dry plasticizer. Below the
        /// pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.</param>
        /// <param name="dampAtCelsius">Temperature of a damp pot, whose water boils under vacuum; omit it for a
        /// dry pot. Unit: °C; 0.01 to 200. Default: none.</param>
        /// <returns>Share of air in the mix by volume, under the outside pressure. Unit: 1.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double EntrainedAir(
            double rise,
            double stationPressureKpa,
            double? gaugeVacuumKpa = null,
            double? absolutePressureKpa = null,
            double? dialToleranceKpa = null,
            double? vaporPressureKpa = null,
            double? dampAtCelsius = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_entrained_air_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_entrained_air_input>();
                input.rise = call.Number("rise", rise);
                input.station_pressure_kpa = call.Number("station_pressure_kpa", stationPressureKpa);
                input.gauge_vacuum_kpa = call.Number("gauge_vacuum_kpa", gaugeVacuumKpa);
                input.absolute_pressure_kpa = call.Number("absolute_pressure_kpa", absolutePressureKpa);
                input.dial_tolerance_kpa = call.Number("dial_tolerance_kpa", dialToleranceKpa);
                input.vapor_pressure_kpa = call.Number("vapor_pressure_kpa", vaporPressureKpa);
                input.damp_at_celsius = call.Number("damp_at_celsius", dampAtCelsius);
                call.Ready();
                double found;
                call.Check(Native.pour_entrained_air(ref input, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Vessel for a pot in a vacuum, and how to fill one that is too small.</summary>
        /// <remarks>The pot swells no higher than the spare share below the brim: V/(1 − spare). With a vessel
        /// the answer gives the level to fill to, on a mark where it has any, and the number of fills.</remarks>
        /// <param name="liquidVolumeMl">Volume of the pot, cold and without air. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="entrainedAir">Share of air in the mix by volume, under the outside pressure. Unit: 1; 0
        /// to below 1.</param>
        /// <param name="stationPressureKpa">Air pressure at the place itself, not reduced to sea level. Unit:
        /// kPa; 22.6 to 178.</param>
        /// <param name="gaugeVacuumKpa">Reading of a vacuum gauge, which counts down from the air outside; give
        /// this or the absolute pressure. Unit: kPa; 0 to 180. Default: none.</param>
        /// <param name="absolutePressureKpa">Pressure that is left in the chamber, counted from nothing at all;
        /// give this or the gauge vacuum. Unit: kPa; 0 to 180. Default: none.</param>
        /// <param name="dialToleranceKpa">How far the vacuum gauge may be off to either side; the default, 0.9
        /// inHg, is 3 % of a common dial. Unit: kPa; 0 to 101. Default: 3.0477501.</param>
        /// <param name="vaporPressureKpa">Vapor pressure of the liquid; 0 for a dry plasticizer. Below the
        /// pressure in the chamber. Unit: kPa; 0 to 180. Default: 0.</param>
        /// <param name="dampAtCelsius">Temperature of a damp pot, whose water boils under vacuum; omit it for a
        /// dry pot. Unit: °C; 0.01 to 200. Default: none.</param>
        /// <param name="vesselSpare">Share of the vessel that stays empty. Unit: 1; 0 to below 1. Default:
        /// 0.1.</param>
        /// <param name="vesselBrimMl">Volume of the vessel up to its brim. Unit: mL; 1e-9 to 1e15. It may be
        /// omitted.</param>
        /// <param name="vesselMarkMl">Distance between the vessel's marks. Unit: mL; 1e-9 to 1e15. Default: any
        /// level.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static DegasVesselResult DegasVessel(
            double liquidVolumeMl,
            double entrainedAir,
            double stationPressureKpa,
            double? gaugeVacuumKpa = null,
            double? absolutePressureKpa = null,
            double? dialToleranceKpa = null,
            double? vaporPressureKpa = null,
            double? dampAtCelsius = null,
            double? vesselSpare = null,
            double? vesselBrimMl = null,
            double? vesselMarkMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_degas_vessel_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_degas_vessel_input>();
                input.liquid_volume_ml = call.Number("liquid_volume_ml", liquidVolumeMl);
                input.entrained_air = call.Number("entrained_air", entrainedAir);
                input.station_pressure_kpa = call.Number("station_pressure_kpa", stationPressureKpa);
                input.gauge_vacuum_kpa = call.Number("gauge_vacuum_kpa", gaugeVacuumKpa);
                input.absolute_pressure_kpa = call.Number("absolute_pressure_kpa", absolutePressureKpa);
                input.dial_tolerance_kpa = call.Number("dial_tolerance_kpa", dialToleranceKpa);
                input.vapor_pressure_kpa = call.Number("vapor_pressure_kpa", vaporPressureKpa);
                input.damp_at_celsius = call.Number("damp_at_celsius", dampAtCelsius);
                input.vessel_spare = call.Number("vessel_spare", vesselSpare);
                input.vessel_brim_ml = call.Number("vessel_brim_ml", vesselBrimMl);
                input.vessel_mark_ml = call.Number("vessel_mark_ml", vesselMarkMl);
                call.Ready();
                Native.pour_degas_vessel_result found;
                call.Check(Native.pour_degas_vessel(ref input, out found, out call.Error));
                return new DegasVesselResult(found);
            }
        }

        /// <summary>Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the
        /// thickness of the film.</summary>
        /// <remarks>A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little
        /// smaller.</remarks>
        /// <param name="cut">Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm
        /// square`. 0.05 to 6.35 mm.</param>
        /// <param name="thicknessUm">Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to
        /// 6350.</param>
        /// <param name="filmDensityGPerMl">Density of the film that the flake is cut from. Unit: g/mL; 0.001 to
        /// 25.</param>
        /// <param name="flakeDoseG">Mass of the dose of flake. Unit: g; 1e-12 to 1e15.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static FlakeCountResult FlakeCount(
            string cut,
            double thicknessUm,
            double filmDensityGPerMl,
            double flakeDoseG)
        {
            using (var call = new Call())
            {
                var c0 = call.Text("cut", cut);
                var c1 = call.Number("thickness_um", thicknessUm);
                var c2 = call.Number("film_density_g_per_ml", filmDensityGPerMl);
                var c3 = call.Number("flake_dose_g", flakeDoseG);
                call.Ready();
                Native.pour_flake_count_result found;
                call.Check(Native.pour_flake_count(c0, c1, c2, c3, out found, out call.Error));
                return new FlakeCountResult(found);
            }
        }

        /// <summary>Dose of another flake in place of one, with as much area or as many particles.</summary>
        /// <remarks>The two are not the same: at an equal count a cut of half the size covers a quarter. The
        /// answer gives both.</remarks>
        /// <param name="cut">Size and shape of a flake as the trade writes it: `.035`, `1/64 hex`, `0.4 mm
        /// square`. 0.05 to 6.35 mm.</param>
        /// <param name="thicknessUm">Thickness of the film; below the size of the cut. Unit: µm; 1e-3 to
        /// 6350.</param>
        /// <param name="filmDensityGPerMl">Density of the film that the flake is cut from. Unit: g/mL; 0.001 to
        /// 25.</param>
        /// <param name="flakeDoseG">Mass of the dose of flake. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="otherCut">Size and shape of the other flake. 0.05 to 6.35 mm.</param>
        /// <param name="otherThicknessUm">Thickness of the film of the other flake; below the size of its cut.
        /// Unit: µm; 1e-3 to 6350.</param>
        /// <param name="otherFilmDensityGPerMl">Density of the film of the other flake. Unit: g/mL; 0.001 to
        /// 25.</param>
        /// <param name="otherAsScoopedGPerMl">Bulk density of the other flake, level in the spoon. Unit: g/mL;
        /// 0.001 to 25. Default: none.</param>
        /// <param name="alike">What the two doses of flake have in common: the number of particles or the area of
        /// film. Default: area. One of `count`, `area`.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static FlakeSwapResult FlakeSwap(
            string cut,
            double thicknessUm,
            double filmDensityGPerMl,
            double flakeDoseG,
            string otherCut,
            double otherThicknessUm,
            double otherFilmDensityGPerMl,
            double? otherAsScoopedGPerMl = null,
            string alike = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_flake_swap_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_flake_swap_input>();
                input.cut = call.Text("cut", cut);
                input.thickness_um = call.Number("thickness_um", thicknessUm);
                input.film_density_g_per_ml = call.Number("film_density_g_per_ml", filmDensityGPerMl);
                input.flake_dose_g = call.Number("flake_dose_g", flakeDoseG);
                input.other_cut = call.Text("other_cut", otherCut);
                input.other_thickness_um = call.Number("other_thickness_um", otherThicknessUm);
                input.other_film_density_g_per_ml = call.Number("other_film_density_g_per_ml", otherFilmDensityGPerMl);
                input.other_as_scooped_g_per_ml = call.Number("other_as_scooped_g_per_ml", otherAsScoopedGPerMl);
                input.alike = call.Word("alike", alike, Words.Alike);
                call.Ready();
                Native.pour_flake_swap_result found;
                call.Check(Native.pour_flake_swap(ref input, out found, out call.Error));
                return new FlakeSwapResult(found);
            }
        }

        /// <summary>Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).</summary>
        /// <remarks>ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye
        /// decides.</remarks>
        /// <param name="lightness">L* of the color: 0 for black, 100 for white. Unit: 1; 0 to 100.</param>
        /// <param name="a">a* of the color: green below 0, red above. Unit: 1; -200 to 200.</param>
        /// <param name="b">b* of the color: blue below 0, yellow above. Unit: 1; -200 to 200.</param>
        /// <param name="otherLightness">L* of the other color. Unit: 1; 0 to 100.</param>
        /// <param name="otherA">a* of the other color. Unit: 1; -200 to 200.</param>
        /// <param name="otherB">b* of the other color. Unit: 1; -200 to 200.</param>
        /// <returns>ΔE₀₀. Unit: 1.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double ColorDifference(
            double lightness,
            double a,
            double b,
            double otherLightness,
            double otherA,
            double otherB)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("lightness", lightness);
                var c1 = call.Number("a", a);
                var c2 = call.Number("b", b);
                var c3 = call.Number("other_lightness", otherLightness);
                var c4 = call.Number("other_a", otherA);
                var c5 = call.Number("other_b", otherB);
                call.Ready();
                double found;
                call.Check(Native.pour_color_difference(c0, c1, c2, c3, c4, c5, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Equivalent time of a heat at a reference temperature: ∫ exp(−E_a/R (1/T − 1/T_ref))
        /// dt.</summary>
        /// <remarks>Between two readings the temperature is taken as straight. The activation energy is the
        /// supplier's; published ones of PVC are 117.5 to 170 kJ/mol.</remarks>
        /// <param name="readings">Temperatures in the order of time, taken as straight between. 2 to 100000 of
        /// them. Each: Time of a reading, after that of the one before. Unit: s; 0 to 1e15. Then: Temperature of
        /// a reading. Unit: °C; -73 to 427.</param>
        /// <param name="activationEnergyKjPerMol">Activation energy of the decay in the heat; state its source in
        /// a book. Unit: kJ/mol; 10 to 500.</param>
        /// <param name="referenceTemperatureCelsius">Temperature at which the time is counted. Unit: °C; -73 to
        /// 427.</param>
        /// <returns>Equivalent time. Unit: s.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double EquivalentTime(
            double[][] readings,
            double activationEnergyKjPerMol,
            double referenceTemperatureCelsius)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("readings", readings, 2);
                var c1 = call.Length;
                var c2 = call.Number("activation_energy_kj_per_mol", activationEnergyKjPerMol);
                var c3 = call.Number("reference_temperature_celsius", referenceTemperatureCelsius);
                call.Ready();
                double found;
                call.Check(Native.pour_equivalent_time(c0, c1, c2, c3, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Heat budget that is left of a pot, in equivalent time at the reference temperature.</summary>
        /// <remarks>More stabilizer than the budget is stated for buys the extra time that its maker states;
        /// without that figure it is refused.</remarks>
        /// <param name="heatBudgetS">Time at the reference temperature that the plastisol withstands. Unit: s;
        /// 1e-6 to 1e15.</param>
        /// <param name="equivalentTimeS">Equivalent time that the pot has spent so far, at the temperature of its
        /// budget. Unit: s; 0 to 1e15.</param>
        /// <param name="budgetWith">Stabilizer that the heat budget is stated for, by mass of base. Unit: 1; 0 to
        /// 1. Default: 0.</param>
        /// <param name="stabilizerDose">Stabilizer in the mix, by mass of base. Unit: 1; 0 to 1. Default: as
        /// `budget_with`.</param>
        /// <param name="extraTimeS">Equivalent time that more of the stabilizer buys, per mass of it per mass of
        /// base: 30000 s is 5 min for every 1 %. Unit: s; 1e-6 to 1e15. Default: none.</param>
        /// <param name="extraMost">Highest dose of stabilizer for which the extra time is known, by mass of base.
        /// Unit: 1; 0 to 1. Default: none.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static BudgetLeftResult BudgetLeft(
            double heatBudgetS,
            double equivalentTimeS,
            double? budgetWith = null,
            double? stabilizerDose = null,
            double? extraTimeS = null,
            double? extraMost = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("heat_budget_s", heatBudgetS);
                var c1 = call.Number("equivalent_time_s", equivalentTimeS);
                var c2 = call.Number("budget_with", budgetWith);
                var c3 = call.Number("stabilizer_dose", stabilizerDose);
                var c4 = call.Number("extra_time_s", extraTimeS);
                var c5 = call.Number("extra_most", extraMost);
                call.Ready();
                Native.pour_budget_left_result found;
                call.Check(Native.pour_budget_left(c0, c1, c2, c3, c4, c5, out found, out call.Error));
                return new BudgetLeftResult(found);
            }
        }

        /// <summary>Heating time of a pot in the oven, without a break, by the shop's own timings.</summary>
        /// <remarks>t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module
        /// `process::heat`). An amount of more than 1.6 times the timed ones is refused. Without timings the
        /// rated power gives a first guess.</remarks>
        /// <param name="potMassG">Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="specificHeatJPerGK">Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to
        /// 10.</param>
        /// <param name="heatedFromCelsius">The temperature before heating. Unit: °C; -73 to 427.</param>
        /// <param name="heatedToCelsius">The temperature after heating, above that before. Unit: °C; -73 to
        /// 427.</param>
        /// <param name="timings">Heatings that the shop has timed, all at one setting: of each the mass of the
        /// mix, the temperatures before and after and the time; needed without the rated power. 1 to 1000 of
        /// them. Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15. Then:
        /// Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed heating,
        /// stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating.
        /// Unit: s; 1e-3 to 1e9.</param>
        /// <param name="ovenPowerW">Rated power of the oven, its output at full power: a first guess, not used
        /// once there are timings; needed without them. Unit: W; 50 to 10000. Default: none.</param>
        /// <param name="setting">Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default:
        /// that of the timings.</param>
        /// <param name="specificHeatRisePerKelvin">Rise of the specific heat per kelvin, as a share of that at 25
        /// °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.</param>
        /// <param name="timedSpecificHeatJPerGK">Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10.
        /// Default: as `specific_heat_j_per_g_k`.</param>
        /// <param name="vesselMassG">Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the
        /// timings.</param>
        /// <param name="vesselSpecificHeatJPerGK">Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default:
        /// none.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static HeatTimeResult HeatTime(
            double potMassG,
            double specificHeatJPerGK,
            double heatedFromCelsius,
            double heatedToCelsius,
            double[][] timings = null,
            double? ovenPowerW = null,
            double? setting = null,
            double? specificHeatRisePerKelvin = null,
            double? timedSpecificHeatJPerGK = null,
            double? vesselMassG = null,
            double? vesselSpecificHeatJPerGK = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_heat_time_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_heat_time_input>();
                input.pot_mass_g = call.Number("pot_mass_g", potMassG);
                input.specific_heat_j_per_g_k = call.Number("specific_heat_j_per_g_k", specificHeatJPerGK);
                input.heated_from_celsius = call.Number("heated_from_celsius", heatedFromCelsius);
                input.heated_to_celsius = call.Number("heated_to_celsius", heatedToCelsius);
                input.timings = call.Rows("timings", timings, 4);
                input.timings_count = call.Length;
                input.oven_power_w = call.Number("oven_power_w", ovenPowerW);
                input.setting = call.Number("setting", setting);
                input.specific_heat_rise_per_kelvin = call.Number("specific_heat_rise_per_kelvin", specificHeatRisePerKelvin);
                input.timed_specific_heat_j_per_g_k = call.Number("timed_specific_heat_j_per_g_k", timedSpecificHeatJPerGK);
                input.vessel_mass_g = call.Number("vessel_mass_g", vesselMassG);
                input.vessel_specific_heat_j_per_g_k = call.Number("vessel_specific_heat_j_per_g_k", vesselSpecificHeatJPerGK);
                call.Ready();
                Native.pour_heat_time_result found;
                call.Check(Native.pour_heat_time(ref input, out found, out call.Error));
                return new HeatTimeResult(found);
            }
        }

        /// <summary>The next burst of the oven for a reading of the thermometer.</summary>
        /// <remarks>No burst can carry the pot over its window, by all the power that the timings make plausible
        /// and the error of the thermometer (module `process::heat`). Stir, read, and look up each burst by its
        /// reading. The system of measures gives the scale of the thermometer, on whole degrees of which the
        /// limits are.</remarks>
        /// <param name="potMassG">Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="specificHeatJPerGK">Specific heat of the mix, its salt counted. Unit: J/(g.K); 0.1 to
        /// 10.</param>
        /// <param name="readingCelsius">Reading of the thermometer, in the stirred mix. Unit: °C; -73 to
        /// 427.</param>
        /// <param name="windowBottomCelsius">Lowest temperature at which the mix is shot, its material's own.
        /// Unit: °C; -73 to 427.</param>
        /// <param name="windowTopCelsius">Highest temperature at which the mix is shot, its material's own; above
        /// the lowest. Unit: °C; -73 to 427.</param>
        /// <param name="timings">Heatings that the shop has timed, all at one setting: of each the mass of the
        /// mix, the temperatures before and after and the time; needed without the rated power. 1 to 1000 of
        /// them. Default: none. Each: Mass of the mix in a timed heating. Unit: g; 1e-12 to 1e15. Then:
        /// Temperature before a timed heating. Unit: °C; -73 to 427. Then: Temperature after a timed heating,
        /// stirred; above that before. Unit: °C; -73 to 427. Then: Time that the oven ran in a timed heating.
        /// Unit: s; 1e-3 to 1e9.</param>
        /// <param name="ovenPowerW">Rated power of the oven, its output at full power: a first guess, not used
        /// once there are timings; needed without them. Unit: W; 50 to 10000. Default: none.</param>
        /// <param name="setting">Setting of the oven, as a share of full power. Unit: 1; above 0 to 1. Default:
        /// that of the timings.</param>
        /// <param name="specificHeatRisePerKelvin">Rise of the specific heat per kelvin, as a share of that at 25
        /// °C, of what is heated and of what was timed. Unit: 1/K; -0.002 to 0.01. Default: 0.</param>
        /// <param name="timedSpecificHeatJPerGK">Specific heat of what was timed. Unit: J/(g.K); 0.1 to 10.
        /// Default: as `specific_heat_j_per_g_k`.</param>
        /// <param name="vesselMassG">Mass of the vessel. Unit: g; 1e-12 to 1e15. Default: left to the
        /// timings.</param>
        /// <param name="vesselSpecificHeatJPerGK">Specific heat of the vessel. Unit: J/(g.K); 0.1 to 10. Default:
        /// none.</param>
        /// <param name="aimCelsius">The temperature to heat to. Unit: °C; in the shot window. Default: the middle
        /// of the window.</param>
        /// <param name="thermometerKelvin">How far the thermometer may be off. Unit: K; 0 to 100. Default:
        /// 2.</param>
        /// <param name="burstStepS">Shortest burst that can be set, of which the others are multiples. Unit: s;
        /// 1e-3 to 3600. Default: 5.</param>
        /// <param name="longestBurstS">Longest burst without a stir, at least the shortest. Unit: s; 1e-3 to
        /// 3600. Default: 120.</param>
        /// <param name="ovenTurnS">How long a turn of full power and none takes at a setting below full power.
        /// Unit: s; 0 to 3600. Default: 30.</param>
        /// <param name="measures">The system of measures: what a cup, a spoon and a fluid ounce hold. Default:
        /// us-customary. One of `us-customary`, `us-label`, `metric`, `imperial`.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static NextBurstResult NextBurst(
            double potMassG,
            double specificHeatJPerGK,
            double readingCelsius,
            double windowBottomCelsius,
            double windowTopCelsius,
            double[][] timings = null,
            double? ovenPowerW = null,
            double? setting = null,
            double? specificHeatRisePerKelvin = null,
            double? timedSpecificHeatJPerGK = null,
            double? vesselMassG = null,
            double? vesselSpecificHeatJPerGK = null,
            double? aimCelsius = null,
            double? thermometerKelvin = null,
            double? burstStepS = null,
            double? longestBurstS = null,
            double? ovenTurnS = null,
            string measures = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_next_burst_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_next_burst_input>();
                input.pot_mass_g = call.Number("pot_mass_g", potMassG);
                input.specific_heat_j_per_g_k = call.Number("specific_heat_j_per_g_k", specificHeatJPerGK);
                input.reading_celsius = call.Number("reading_celsius", readingCelsius);
                input.window_bottom_celsius = call.Number("window_bottom_celsius", windowBottomCelsius);
                input.window_top_celsius = call.Number("window_top_celsius", windowTopCelsius);
                input.timings = call.Rows("timings", timings, 4);
                input.timings_count = call.Length;
                input.oven_power_w = call.Number("oven_power_w", ovenPowerW);
                input.setting = call.Number("setting", setting);
                input.specific_heat_rise_per_kelvin = call.Number("specific_heat_rise_per_kelvin", specificHeatRisePerKelvin);
                input.timed_specific_heat_j_per_g_k = call.Number("timed_specific_heat_j_per_g_k", timedSpecificHeatJPerGK);
                input.vessel_mass_g = call.Number("vessel_mass_g", vesselMassG);
                input.vessel_specific_heat_j_per_g_k = call.Number("vessel_specific_heat_j_per_g_k", vesselSpecificHeatJPerGK);
                input.aim_celsius = call.Number("aim_celsius", aimCelsius);
                input.thermometer_kelvin = call.Number("thermometer_kelvin", thermometerKelvin);
                input.burst_step_s = call.Number("burst_step_s", burstStepS);
                input.longest_burst_s = call.Number("longest_burst_s", longestBurstS);
                input.oven_turn_s = call.Number("oven_turn_s", ovenTurnS);
                input.measures = call.Word("measures", measures, Words.Measures);
                call.Ready();
                Native.pour_next_burst_result found;
                call.Check(Native.pour_next_burst(ref input, out found, out call.Error));
                return new NextBurstResult(found);
            }
        }

        /// <summary>How long a pot stays hot, by a pot that was watched to cool.</summary>
        /// <remarks>Newton's law: T(t) = T_room + (T₀ − T_room)·exp(−t/τ), τ = t/ln((T₀ − T_room)/(T₁ − T_room));
        /// less mix than was watched cools faster (module `process::heat`).</remarks>
        /// <param name="potMassG">Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="hotFromCelsius">Temperature after the last burst. Unit: °C; -73 to 427.</param>
        /// <param name="hotToCelsius">Temperature down to which the pot can be shot, above that of the room.
        /// Unit: °C; -73 to 427.</param>
        /// <param name="watchedMassG">Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to
        /// 1e15.</param>
        /// <param name="watchedFromCelsius">First reading of a pot that was watched to cool, from its second
        /// minute on, stirred. Unit: °C; -73 to 427.</param>
        /// <param name="watchedToCelsius">Second reading of a pot that was watched to cool, stirred; below the
        /// first and above that of the room. Unit: °C; -73 to 427.</param>
        /// <param name="watchedTimeS">Time between the two readings of a pot that was watched to cool. Unit: s;
        /// 1e-3 to 1e9.</param>
        /// <param name="roomCelsius">Temperature of the room, below all others. Unit: °C; -73 to 427. Default:
        /// 20.</param>
        /// <param name="stoodS">How long the pot has stood. Unit: s; 0 to 1e15. Default: how hot it then is, is
        /// not calculated.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static StaysHotResult StaysHot(
            double potMassG,
            double hotFromCelsius,
            double hotToCelsius,
            double watchedMassG,
            double watchedFromCelsius,
            double watchedToCelsius,
            double watchedTimeS,
            double? roomCelsius = null,
            double? stoodS = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_stays_hot_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_stays_hot_input>();
                input.pot_mass_g = call.Number("pot_mass_g", potMassG);
                input.hot_from_celsius = call.Number("hot_from_celsius", hotFromCelsius);
                input.hot_to_celsius = call.Number("hot_to_celsius", hotToCelsius);
                input.watched_mass_g = call.Number("watched_mass_g", watchedMassG);
                input.watched_from_celsius = call.Number("watched_from_celsius", watchedFromCelsius);
                input.watched_to_celsius = call.Number("watched_to_celsius", watchedToCelsius);
                input.watched_time_s = call.Number("watched_time_s", watchedTimeS);
                input.room_celsius = call.Number("room_celsius", roomCelsius);
                input.stood_s = call.Number("stood_s", stoodS);
                call.Ready();
                Native.pour_stays_hot_result found;
                call.Check(Native.pour_stays_hot(ref input, out found, out call.Error));
                return new StaysHotResult(found);
            }
        }

        /// <summary>The heats that the shots of a pot take, and how long they all take.</summary>
        /// <remarks>A heat goes on while the next shot ends before the pot has fallen to the bottom of its
        /// window; then it is heated again. How long a pot stays hot is stated, or follows from a pot that was
        /// watched to cool. A shot can be made every max(h, (h + s)/k): h its working time, s the time that it
        /// sets, k molds in turn (module `process::clock`).</remarks>
        /// <param name="potMassG">Mass of the mix in the pot. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="clockRuns">The pot's shots in their order, like ones together: of each run the number of
        /// shots, the mass that one takes, the working time for one, the time that it sets and the number of
        /// molds in turn. At most 100 000 shots. 1 to 1000 of them. Each: Number of like shots in a row; at most
        /// 100 000 from one pot. Unit: 1; 1 to 100000. Then: Mass of one shot, sprue included. Unit: g; 1e-12 to
        /// 1e15. Then: Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15. Default:
        /// how often a shot can be made is not calculated. Then: Time that a shot sets in its mold. Unit: s; 0 to
        /// 1e6. Default: 0. Then: Number of such molds that are shot in turn. Unit: 1; 1 to 1000000. Default:
        /// 1.</param>
        /// <param name="hotForS">How long the pot stays hot at one heat, from the last burst to the last shot.
        /// Unit: s; 1e-3 to 1e15. Default: from how it cools.</param>
        /// <param name="clockFromCelsius">Temperature after the last burst; needed with `cools`. Unit: °C; -73 to
        /// 427. Default: none.</param>
        /// <param name="clockToCelsius">Temperature down to which the pot can be shot, above that of the room;
        /// needed with `cools`. Unit: °C; -73 to 427. Default: none.</param>
        /// <param name="watchedMassG">Mass of the mix in a pot that was watched to cool. Unit: g; 1e-12 to 1e15.
        /// It may be omitted.</param>
        /// <param name="watchedFromCelsius">First reading of a pot that was watched to cool, from its second
        /// minute on, stirred. Unit: °C; -73 to 427. It may be omitted.</param>
        /// <param name="watchedToCelsius">Second reading of a pot that was watched to cool, stirred; below the
        /// first and above that of the room. Unit: °C; -73 to 427. It may be omitted.</param>
        /// <param name="watchedTimeS">Time between the two readings of a pot that was watched to cool. Unit: s;
        /// 1e-3 to 1e9. It may be omitted.</param>
        /// <param name="roomCelsius">Temperature of the room, below all others. Unit: °C; -73 to 427. Default:
        /// 20.</param>
        /// <param name="ovenTimeS">How long the oven runs for one heat. Unit: s; 0 to 1e15. Default: it is not
        /// counted.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static PotHeatsResult PotHeats(
            double potMassG,
            double[][] clockRuns,
            double? hotForS = null,
            double? clockFromCelsius = null,
            double? clockToCelsius = null,
            double? watchedMassG = null,
            double? watchedFromCelsius = null,
            double? watchedToCelsius = null,
            double? watchedTimeS = null,
            double? roomCelsius = null,
            double? ovenTimeS = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_pot_heats_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_pot_heats_input>();
                input.pot_mass_g = call.Number("pot_mass_g", potMassG);
                input.clock_runs = call.Rows("clock_runs", clockRuns, 5);
                input.clock_runs_count = call.Length;
                input.hot_for_s = call.Number("hot_for_s", hotForS);
                input.clock_from_celsius = call.Number("clock_from_celsius", clockFromCelsius);
                input.clock_to_celsius = call.Number("clock_to_celsius", clockToCelsius);
                input.watched_mass_g = call.Number("watched_mass_g", watchedMassG);
                input.watched_from_celsius = call.Number("watched_from_celsius", watchedFromCelsius);
                input.watched_to_celsius = call.Number("watched_to_celsius", watchedToCelsius);
                input.watched_time_s = call.Number("watched_time_s", watchedTimeS);
                input.room_celsius = call.Number("room_celsius", roomCelsius);
                input.oven_time_s = call.Number("oven_time_s", ovenTimeS);
                call.Ready();
                Native.pour_pot_heats_result found;
                call.Check(Native.pour_pot_heats(ref input, out found, out call.Error));
                return new PotHeatsResult(found);
            }
        }

        /// <summary>How long a shot sets in a metal mold, and how often one can be made.</summary>
        /// <remarks>The first term of the series of a rod, a plate or a ball whose surface keeps the temperature
        /// of the mold: t = R²/(ζ² α) ln(C/Θ), Θ = (T_e − T_m)/(T₀ − T_m) (module `process::shot_cooling`). The
        /// mold is as warm as the shot leaves it, where its mass is given.</remarks>
        /// <param name="sectionShape">Shape of the thickest part of a piece. One of `rod`, `plate`,
        /// `ball`.</param>
        /// <param name="sectionThicknessMm">Thickness of the thickest part of a piece; of a rod or a ball its
        /// diameter. Unit: mm; 0.2 to 200.</param>
        /// <param name="shotAtCelsius">Temperature at which it is shot, above that at which it is taken out.
        /// Unit: °C; -73 to 427.</param>
        /// <param name="moldAtCelsius">Temperature of the mold before the shot, below that at which a piece is
        /// taken out. Unit: °C; -73 to 427. Default: 30.</param>
        /// <param name="takeOutCelsius">Temperature at which a piece can be taken out. Unit: °C; -73 to 427.
        /// Default: 50.</param>
        /// <param name="piecePoint">The point of a piece whose temperature counts. Default: center. One of
        /// `center`, `mean`.</param>
        /// <param name="diffusivityM2PerS">Thermal diffusivity of the plastic. Unit: m2/s; 1e-9 to 1e-5. Default:
        /// 8.0e-8 m2/s, from 6.5e-8 to 1.0e-7.</param>
        /// <param name="shotMassG">Mass of one shot, sprue included. Unit: g; 1e-12 to 1e15. It may be
        /// omitted.</param>
        /// <param name="shotSpecificHeatJPerGK">Specific heat of the plastic. Unit: J/(g.K); 0.1 to 10. Default:
        /// 1.9.</param>
        /// <param name="moldMassG">Mass of the mold. Without it the mold is taken to keep its temperature; with
        /// it the mass of the shot is needed. Unit: g; 1e-12 to 1e15. Default: none.</param>
        /// <param name="moldSpecificHeatJPerGK">Specific heat of the mold; the default is that of aluminum. Unit:
        /// J/(g.K); 0.1 to 10. Default: 0.897.</param>
        /// <param name="handsS">Working time of a shot: fill, shoot, top off, take out. Unit: s; 1e-3 to 1e15.
        /// Default: how often a shot can be made is not calculated.</param>
        /// <param name="molds">Number of such molds that are shot in turn. 1 to 1000000. Default: 1.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static SettingTimeResult SettingTime(
            string sectionShape,
            double sectionThicknessMm,
            double shotAtCelsius,
            double? moldAtCelsius = null,
            double? takeOutCelsius = null,
            string piecePoint = null,
            double? diffusivityM2PerS = null,
            double? shotMassG = null,
            double? shotSpecificHeatJPerGK = null,
            double? moldMassG = null,
            double? moldSpecificHeatJPerGK = null,
            double? handsS = null,
            uint? molds = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_setting_time_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_setting_time_input>();
                input.section_shape = call.Word("section_shape", sectionShape, Words.SectionShape);
                input.section_thickness_mm = call.Number("section_thickness_mm", sectionThicknessMm);
                input.shot_at_celsius = call.Number("shot_at_celsius", shotAtCelsius);
                input.mold_at_celsius = call.Number("mold_at_celsius", moldAtCelsius);
                input.take_out_celsius = call.Number("take_out_celsius", takeOutCelsius);
                input.piece_point = call.Word("piece_point", piecePoint, Words.PiecePoint);
                input.diffusivity_m2_per_s = call.Number("diffusivity_m2_per_s", diffusivityM2PerS);
                input.shot_mass_g = call.Number("shot_mass_g", shotMassG);
                input.shot_specific_heat_j_per_g_k = call.Number("shot_specific_heat_j_per_g_k", shotSpecificHeatJPerGK);
                input.mold_mass_g = call.Number("mold_mass_g", moldMassG);
                input.mold_specific_heat_j_per_g_k = call.Number("mold_specific_heat_j_per_g_k", moldSpecificHeatJPerGK);
                input.hands_s = call.Number("hands_s", handsS);
                input.molds = call.Count("molds", molds);
                call.Ready();
                Native.pour_setting_time_result found;
                call.Check(Native.pour_setting_time(ref input, out found, out call.Error));
                return new SettingTimeResult(found);
            }
        }

        /// <summary>How often to stir a melt with salt in it, and how fast the salt settles.</summary>
        /// <remarks>Drag of a sphere by Schiller and Naumann, hindered settling by Richardson and Zaki, a grain
        /// as a cube that passes a sieve (module `process::settling`). Stir before the top share of the depth is
        /// without grains: t = share · depth/v.</remarks>
        /// <param name="grainMm">Size of a grain of salt: the opening of a sieve that it just passes. Unit: mm;
        /// 0.001 to 50.</param>
        /// <param name="grainDensityGPerMl">True density of the grains, above that of the melt. Unit: g/mL; 0.001
        /// to 25.</param>
        /// <param name="meltDensityGPerMl">Density of the melt, hot. Unit: g/mL; 0.001 to 25.</param>
        /// <param name="meltDepthMm">Depth of the melt in its cup. Unit: mm; 0.1 to 10000.</param>
        /// <param name="meltViscosityMinMPaS">Lowest viscosity that the melt may have at shot temperature. Where
        /// none is known, the defaults of both span what such melts may have. Unit: mPa.s; 0.1 to 1e7. Default:
        /// 50.</param>
        /// <param name="meltViscosityMaxMPaS">Highest viscosity that the melt may have at shot temperature, at
        /// least the lowest. Unit: mPa.s; 0.1 to 1e7. Default: 5000.</param>
        /// <param name="solidsShare">Share of the grains in the volume; at 0 one grain alone. Unit: 1; 0 to 0.4.
        /// Default: 0.</param>
        /// <param name="unstirred">Share of the depth that may be without grains before it is stirred. Unit: 1;
        /// 0.001 to 1. Default: 0.1.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static StirEveryResult StirEvery(
            double grainMm,
            double grainDensityGPerMl,
            double meltDensityGPerMl,
            double meltDepthMm,
            double? meltViscosityMinMPaS = null,
            double? meltViscosityMaxMPaS = null,
            double? solidsShare = null,
            double? unstirred = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_stir_every_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_stir_every_input>();
                input.grain_mm = call.Number("grain_mm", grainMm);
                input.grain_density_g_per_ml = call.Number("grain_density_g_per_ml", grainDensityGPerMl);
                input.melt_density_g_per_ml = call.Number("melt_density_g_per_ml", meltDensityGPerMl);
                input.melt_depth_mm = call.Number("melt_depth_mm", meltDepthMm);
                input.melt_viscosity_min_mpa_s = call.Number("melt_viscosity_min_mpa_s", meltViscosityMinMPaS);
                input.melt_viscosity_max_mpa_s = call.Number("melt_viscosity_max_mpa_s", meltViscosityMaxMPaS);
                input.solids_share = call.Number("solids_share", solidsShare);
                input.unstirred = call.Number("unstirred", unstirred);
                call.Ready();
                Native.pour_stir_every_result found;
                call.Check(Native.pour_stir_every(ref input, out found, out call.Error));
                return new StirEveryResult(found);
            }
        }

        /// <summary>Viscosity of a melt, from a ball that was timed as it sank.</summary>
        /// <remarks>The drag of a sphere by Schiller and Naumann, up to a Reynolds number of 800 (module
        /// `process::settling`).</remarks>
        /// <param name="ballDiameterMm">Diameter of the ball, much smaller than that of the vessel. Unit: mm;
        /// 0.001 to 50.</param>
        /// <param name="ballDensityGPerMl">Density of the ball: 7.8 g/mL of steel. Unit: g/mL; 0.001 to
        /// 25.</param>
        /// <param name="meltDensityGPerMl">Density of the melt, hot. Unit: g/mL; 0.001 to 25.</param>
        /// <param name="ballDepthMm">How deep the ball sank, let go below the surface. Unit: mm; 1 to
        /// 10000.</param>
        /// <param name="ballTimeS">Time that the ball took. Unit: s; 0.01 to 1e6.</param>
        /// <returns>Viscosity of the melt. Unit: mPa.s.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static double ViscosityOfBall(
            double ballDiameterMm,
            double ballDensityGPerMl,
            double meltDensityGPerMl,
            double ballDepthMm,
            double ballTimeS)
        {
            using (var call = new Call())
            {
                var c0 = call.Number("ball_diameter_mm", ballDiameterMm);
                var c1 = call.Number("ball_density_g_per_ml", ballDensityGPerMl);
                var c2 = call.Number("melt_density_g_per_ml", meltDensityGPerMl);
                var c3 = call.Number("ball_depth_mm", ballDepthMm);
                var c4 = call.Number("ball_time_s", ballTimeS);
                call.Ready();
                double found;
                call.Check(Native.pour_viscosity_of_ball(c0, c1, c2, c3, c4, out found, out call.Error));
                return found;
            }
        }

        /// <summary>Volume of a cavity from weighed pieces, the feed being known: V = m̄/((1 − φ)[ρ_hot + f
        /// (ρ_cold − ρ_hot)]).</summary>
        /// <param name="weightsG">Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one weighed
        /// piece. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="balanceReadabilityG">Smallest difference that the balance shows; without it there is no
        /// balance. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="coldDensityGPerMl">Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="hotDensityGPerMl">Melt density at shot temperature, without voids; at most the cold one.
        /// Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="feed">Share of its contraction that a piece draws from the sprue while it cools. Where it
        /// is not known, 0.5 counts as in plans, and the answer gives both ends: 0 (no feed) and 1 (fed in full).
        /// Unit: 1; 0 to 1. Default: 0.5.</param>
        /// <param name="feedUncertainty">Standard uncertainty of the feed share, in points of it (10 %: 60 % is
        /// 50 % to 70 %). Unit: 1; 0 to 1. Default: 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static CavityOfWeightsResult CavityOfWeights(
            double[] weightsG,
            double balanceReadabilityG,
            double coldDensityGPerMl,
            double? hotDensityGPerMl = null,
            double? voids = null,
            double? feed = null,
            double? feedUncertainty = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_cavity_of_weights_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_cavity_of_weights_input>();
                input.weights_g = call.List("weights_g", weightsG);
                input.weights_count = call.Length;
                input.balance_readability_g = call.Number("balance_readability_g", balanceReadabilityG);
                input.cold_density_g_per_ml = call.Number("cold_density_g_per_ml", coldDensityGPerMl);
                input.hot_density_g_per_ml = call.Number("hot_density_g_per_ml", hotDensityGPerMl);
                input.voids = call.Number("voids", voids);
                input.feed = call.Number("feed", feed);
                input.feed_uncertainty = call.Number("feed_uncertainty", feedUncertainty);
                call.Ready();
                Native.pour_cavity_of_weights_result found;
                call.Check(Native.pour_cavity_of_weights(ref input, out found, out call.Error));
                return new CavityOfWeightsResult(found);
            }
        }

        /// <summary>Feed share from weighed pieces, the cavity being known: f = (m̄/(V (1 − φ)) − ρ_hot)/(ρ_cold
        /// − ρ_hot).</summary>
        /// <param name="weightsG">Mass of each piece, one by one. 2 to 100000 of them. Each: Mass of one weighed
        /// piece. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="balanceReadabilityG">Smallest difference that the balance shows; without it there is no
        /// balance. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="coldDensityGPerMl">Density of the finished plastic at 20 °C, without voids. Unit: g/mL;
        /// 0.001 to 25.</param>
        /// <param name="cavityVolumeMl">Volume of one cavity. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="hotDensityGPerMl">Melt density at shot temperature, without voids; at most the cold one.
        /// Unit: g/mL; 0.001 to 25. Default: as `cold_density_g_per_ml`.</param>
        /// <param name="voids">Void fraction: share of the volume that is air. Unit: 1; 0 to below 1. Default:
        /// 0.</param>
        /// <param name="volumeUncertaintyMl">Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default:
        /// 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static FeedOfWeightsResult FeedOfWeights(
            double[] weightsG,
            double balanceReadabilityG,
            double coldDensityGPerMl,
            double cavityVolumeMl,
            double? hotDensityGPerMl = null,
            double? voids = null,
            double? volumeUncertaintyMl = null)
        {
            using (var call = new Call())
            {
                var input = new Native.pour_feed_of_weights_input();
                input.size = (UIntPtr)Marshal.SizeOf<Native.pour_feed_of_weights_input>();
                input.weights_g = call.List("weights_g", weightsG);
                input.weights_count = call.Length;
                input.balance_readability_g = call.Number("balance_readability_g", balanceReadabilityG);
                input.cold_density_g_per_ml = call.Number("cold_density_g_per_ml", coldDensityGPerMl);
                input.cavity_volume_ml = call.Number("cavity_volume_ml", cavityVolumeMl);
                input.hot_density_g_per_ml = call.Number("hot_density_g_per_ml", hotDensityGPerMl);
                input.voids = call.Number("voids", voids);
                input.volume_uncertainty_ml = call.Number("volume_uncertainty_ml", volumeUncertaintyMl);
                call.Ready();
                Native.pour_feed_of_weights_result found;
                call.Check(Native.pour_feed_of_weights(ref input, out found, out call.Error));
                return new FeedOfWeightsResult(found);
            }
        }

        /// <summary>Mass of one drop from several weighings of many.</summary>
        /// <param name="dropsWeighed">Drops that were counted and weighed together, each weighing started over. 2
        /// to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1 to 1000000. Then: What
        /// they weigh together, net. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="balanceReadabilityG">Smallest difference that the balance shows; without it there is no
        /// balance. Unit: g; 1e-12 to 1e15.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static DropOfWeighingsResult DropOfWeighings(
            double[][] dropsWeighed,
            double balanceReadabilityG)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("drops_weighed", dropsWeighed, 2);
                var c1 = call.Length;
                var c2 = call.Number("balance_readability_g", balanceReadabilityG);
                call.Ready();
                Native.pour_drop_of_weighings_result found;
                call.Check(Native.pour_drop_of_weighings(c0, c1, c2, out found, out call.Error));
                return new DropOfWeighingsResult(found);
            }
        }

        /// <summary>Bulk density of a powder from several weighings of level spoonfuls.</summary>
        /// <param name="scoopsWeighed">Level spoonfuls that were counted and weighed together, each weighing
        /// started over. 2 to 1000 of them. Each: Number of drops or spoonfuls of a weighing. Unit: 1; 1 to
        /// 1000000. Then: What they weigh together, net. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="spoonVolumeMl">Volume of the level spoon. Unit: mL; 1e-9 to 1e15.</param>
        /// <param name="balanceReadabilityG">Smallest difference that the balance shows; without it there is no
        /// balance. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="volumeUncertaintyMl">Standard uncertainty of the volume. Unit: mL; 0 to 1e15. Default:
        /// 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static AsScoopedOfWeighingsResult AsScoopedOfWeighings(
            double[][] scoopsWeighed,
            double spoonVolumeMl,
            double balanceReadabilityG,
            double? volumeUncertaintyMl = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("scoops_weighed", scoopsWeighed, 2);
                var c1 = call.Length;
                var c2 = call.Number("spoon_volume_ml", spoonVolumeMl);
                var c3 = call.Number("balance_readability_g", balanceReadabilityG);
                var c4 = call.Number("volume_uncertainty_ml", volumeUncertaintyMl);
                call.Ready();
                Native.pour_as_scooped_of_weighings_result found;
                call.Check(Native.pour_as_scooped_of_weighings(c0, c1, c2, c3, c4, out found, out call.Error));
                return new AsScoopedOfWeighingsResult(found);
            }
        }

        /// <summary>Volume that stays in an injector, from weighings of it clean and then emptied as at
        /// work.</summary>
        /// <param name="injectorWeighedG">Weighings of the injector, each clean and then emptied as at work. 2 to
        /// 1000 of them. Each: Mass of the clean injector. Unit: g; 1e-12 to 1e15. Then: Mass of the injector
        /// emptied as at work; at least that of the clean one. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="residueDensityGPerMl">Density of what stays in the injector, at the temperature at which
        /// it is emptied; its uncertainty is counted. Unit: g/mL; 0.001 to 25.</param>
        /// <param name="balanceReadabilityG">Smallest difference that the balance shows; without it there is no
        /// balance. Unit: g; 1e-12 to 1e15.</param>
        /// <param name="densityUncertaintyGPerMl">Standard uncertainty of the density of the piece; its bounds
        /// are counted at twice that. Unit: g/mL; 0 to 25. Default: 0.</param>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static ResidueOfWeighingsResult ResidueOfWeighings(
            double[][] injectorWeighedG,
            double residueDensityGPerMl,
            double balanceReadabilityG,
            double? densityUncertaintyGPerMl = null)
        {
            using (var call = new Call())
            {
                var c0 = call.Rows("injector_weighed_g", injectorWeighedG, 2);
                var c1 = call.Length;
                var c2 = call.Number("residue_density_g_per_ml", residueDensityGPerMl);
                var c3 = call.Number("balance_readability_g", balanceReadabilityG);
                var c4 = call.Number("density_uncertainty_g_per_ml", densityUncertaintyGPerMl);
                call.Ready();
                Native.pour_residue_of_weighings_result found;
                call.Check(Native.pour_residue_of_weighings(c0, c1, c2, c3, c4, out found, out call.Error));
                return new ResidueOfWeighingsResult(found);
            }
        }

        /// <summary>Price for a cost, in the smallest unit of the currency (cents), from the share of the price
        /// that the shop keeps.</summary>
        /// <remarks>price = cost/(1 − margin), rounded up, so that the margin is never missed; in whole numbers,
        /// never in binary fractions. Costs of materials, work and packing with their packages and currencies:
        /// the request `cost`.</remarks>
        /// <param name="cost">Cost, in the smallest unit of the currency: cents. 0 to 1000000000.</param>
        /// <param name="costMargin">Share of the price that the shop keeps (a markup on the cost is another
        /// thing). Without it there is no price. Unit: 1; 0 to below 1.</param>
        /// <returns>Price, in the smallest unit of the currency.</returns>
        /// <exception cref="PourwrightException">All that is wrong with the arguments.</exception>
        public static uint Price(
            uint cost,
            double costMargin)
        {
            using (var call = new Call())
            {
                var c0 = call.Count("cost", cost);
                var c1 = call.Number("cost_margin", costMargin);
                call.Ready();
                uint found;
                call.Check(Native.pour_price(c0, c1, out found, out call.Error));
                return found;
            }
        }
    }

    /// <summary>The results of MixShare.</summary>
    public sealed class MixShareResult
    {
        internal MixShareResult(Native.pour_mix_share_result found)
        {
            MassShare = found.mass_share;
            VolumeShare = found.volume_share;
        }

        /// <summary>Share of its mass. Unit: 1.</summary>
        public double MassShare { get; }

        /// <summary>Share of its true volume. Unit: 1.</summary>
        public double VolumeShare { get; }
    }

    /// <summary>The results of SaltConvert.</summary>
    public sealed class SaltConvertResult
    {
        internal SaltConvertResult(Native.pour_salt_convert_result found)
        {
            Loading = found.loading;
            LoadingMin = found.loading_min;
            LoadingMax = found.loading_max;
        }

        /// <summary>The loading as `to_form` states it, in the unit of that form.</summary>
        public double Loading { get; }

        /// <summary>Its lower bound where the feed matters and is not known; else the loading.</summary>
        public double LoadingMin { get; }

        /// <summary>Its upper bound where the feed matters and is not known; else the loading.</summary>
        public double LoadingMax { get; }
    }

    /// <summary>The results of SaltMass.</summary>
    public sealed class SaltMassResult
    {
        internal SaltMassResult(Native.pour_salt_mass_result found)
        {
            SaltMassG = found.salt_mass_g;
            SaltMassMinG = found.salt_mass_min_g;
            SaltMassMaxG = found.salt_mass_max_g;
            SoftenerMassG = found.softener_mass_g;
        }

        /// <summary>Mass of salt. Unit: g.</summary>
        public double SaltMassG { get; }

        /// <summary>Its lower bound where the feed matters and is not known; else the mass. Unit: g.</summary>
        public double SaltMassMinG { get; }

        /// <summary>Its upper bound where the feed matters and is not known; else the mass. Unit: g.</summary>
        public double SaltMassMaxG { get; }

        /// <summary>Mass of softener that goes in with it. Unit: g.</summary>
        public double SoftenerMassG { get; }
    }

    /// <summary>The results of SaltReach.</summary>
    public sealed class SaltReachResult
    {
        internal SaltReachResult(Native.pour_salt_reach_result found)
        {
            LoadingMin = found.loading_min;
            LoadingMax = found.loading_max;
        }

        /// <summary>The loading without salt, in the unit of the form.</summary>
        public double LoadingMin { get; }

        /// <summary>The maximum loading, in the unit of the form.</summary>
        public double LoadingMax { get; }
    }

    /// <summary>The results of SaltForSinkRate.</summary>
    public sealed class SaltForSinkRateResult
    {
        internal SaltForSinkRateResult(Native.pour_salt_for_sink_rate_result found)
        {
            SaltMassG = found.salt_mass_g;
            SoftenerMassG = found.softener_mass_g;
            FinishedDensityGPerMl = found.finished_density_g_per_ml;
        }

        /// <summary>Mass of salt. Unit: g.</summary>
        public double SaltMassG { get; }

        /// <summary>Mass of softener that goes in with it. Unit: g.</summary>
        public double SoftenerMassG { get; }

        /// <summary>Density of the finished plastic at 20 °C, voids counted. Unit: g/mL.</summary>
        public double FinishedDensityGPerMl { get; }
    }

    /// <summary>The results of ShotFill.</summary>
    public sealed class ShotFillResult
    {
        internal ShotFillResult(Native.pour_shot_fill_result found)
        {
            ShotMassG = found.shot_mass_g;
            PiecesMassG = found.pieces_mass_g;
            SprueMassG = found.sprue_mass_g;
            MissingMassG = found.missing_mass_g;
            PieceMassG = found.piece_mass_g;
            PieceMassMinG = found.piece_mass_min_g;
            PieceMassMaxG = found.piece_mass_max_g;
            Fed = found.fed;
        }

        /// <summary>Mass of one shot, topping included. Unit: g.</summary>
        public double ShotMassG { get; }

        /// <summary>Mass of all its pieces. Unit: g.</summary>
        public double PiecesMassG { get; }

        /// <summary>Mass that is left as sprue once the pieces have been fed. Unit: g.</summary>
        public double SprueMassG { get; }

        /// <summary>Mass that sprue and topping are short of; 0 where the pieces are fed. Unit: g.</summary>
        public double MissingMassG { get; }

        /// <summary>Mass of one piece, or of the layer in it. Unit: g.</summary>
        public double PieceMassG { get; }

        /// <summary>The same without feed where the feed is not known; else the mass of the piece. Unit:
        /// g.</summary>
        public double PieceMassMinG { get; }

        /// <summary>The same fed as far as sprue and topping reach where the feed is not known; else the mass of
        /// the piece. Unit: g.</summary>
        public double PieceMassMaxG { get; }

        /// <summary>Share of the contraction that was fed. Unit: 1.</summary>
        public double Fed { get; }
    }

    /// <summary>The results of PieceMass.</summary>
    public sealed class PieceMassResult
    {
        internal PieceMassResult(Native.pour_piece_mass_result found)
        {
            PieceMassG = found.piece_mass_g;
            PieceMassMinG = found.piece_mass_min_g;
            PieceMassMaxG = found.piece_mass_max_g;
        }

        /// <summary>Mass of the piece. Unit: g.</summary>
        public double PieceMassG { get; }

        /// <summary>The same without feed where the feed is not known; else the mass of the piece. Unit:
        /// g.</summary>
        public double PieceMassMinG { get; }

        /// <summary>The same fed in full where the feed is not known; else the mass of the piece. Unit:
        /// g.</summary>
        public double PieceMassMaxG { get; }
    }

    /// <summary>The results of Shots.</summary>
    public sealed class ShotsResult
    {
        internal ShotsResult(Native.pour_shots_result found)
        {
            Shots = found.shots;
            Cast = found.cast;
        }

        /// <summary>Number of shots.</summary>
        public uint Shots { get; }

        /// <summary>Number of pieces that they cast.</summary>
        public uint Cast { get; }
    }

    /// <summary>The results of InjectorLoads.</summary>
    public sealed class InjectorLoadsResult
    {
        internal InjectorLoadsResult(Native.pour_injector_loads_result found)
        {
            Loads = found.loads;
            ShotsPerLoad = found.shots_per_load;
            ShotsInLast = found.shots_in_last;
        }

        /// <summary>Number of injector loads.</summary>
        public uint Loads { get; }

        /// <summary>Whole shots in one load.</summary>
        public uint ShotsPerLoad { get; }

        /// <summary>Shots from the last load.</summary>
        public uint ShotsInLast { get; }
    }

    /// <summary>The results of BatchNeed.</summary>
    public sealed class BatchNeedResult
    {
        internal BatchNeedResult(Native.pour_batch_need_result found)
        {
            TotalMassG = found.total_mass_g;
            DrawnMassG = found.drawn_mass_g;
            ReturnedMassG = found.returned_mass_g;
            PiecesMassG = found.pieces_mass_g;
            SpruesMassG = found.sprues_mass_g;
            KeptMassG = found.kept_mass_g;
            InCupMassG = found.in_cup_mass_g;
            Shots = found.shots;
            Loads = found.loads;
            ShotsPerLoad = found.shots_per_load;
            ShotsInLast = found.shots_in_last;
        }

        /// <summary>Mass to mix. Unit: g.</summary>
        public double TotalMassG { get; }

        /// <summary>Mass of all shots. Unit: g.</summary>
        public double DrawnMassG { get; }

        /// <summary>Mass of sprues that go back and are shot again. Unit: g.</summary>
        public double ReturnedMassG { get; }

        /// <summary>Mass of all pieces. Unit: g.</summary>
        public double PiecesMassG { get; }

        /// <summary>Mass of sprues that are left over. Unit: g.</summary>
        public double SpruesMassG { get; }

        /// <summary>Mass that stays in the injector over the run. Unit: g.</summary>
        public double KeptMassG { get; }

        /// <summary>Mass that stays in the cup: the heel, with the film in it. Unit: g.</summary>
        public double InCupMassG { get; }

        /// <summary>Number of shots.</summary>
        public uint Shots { get; }

        /// <summary>Number of injector loads.</summary>
        public uint Loads { get; }

        /// <summary>Whole shots in one load.</summary>
        public uint ShotsPerLoad { get; }

        /// <summary>Shots from the last load.</summary>
        public uint ShotsInLast { get; }
    }

    /// <summary>The results of BaseToMark.</summary>
    public sealed class BaseToMarkResult
    {
        internal BaseToMarkResult(Native.pour_base_to_mark_result found)
        {
            BaseVolumeMl = found.base_volume_ml;
            BaseMassG = found.base_mass_g;
            MixMassG = found.mix_mass_g;
            SurplusMassG = found.surplus_mass_g;
            ExtraShots = Call.IfCount(found.extra_shots);
        }

        /// <summary>Volume of base: the mark. Unit: mL.</summary>
        public double BaseVolumeMl { get; }

        /// <summary>Mass of that base. Unit: g.</summary>
        public double BaseMassG { get; }

        /// <summary>Mass of the mix with all doses. Unit: g.</summary>
        public double MixMassG { get; }

        /// <summary>Mass that is more than needed. Unit: g.</summary>
        public double SurplusMassG { get; }

        /// <summary>Whole shots that the surplus gives, where the mass of a shot is given. Null where there is
        /// none.</summary>
        public uint? ExtraShots { get; }
    }

    /// <summary>The results of LeastPot.</summary>
    public sealed class LeastPotResult
    {
        internal LeastPotResult(Native.pour_least_pot_result found)
        {
            MixMassG = found.mix_mass_g;
            BaseMassG = found.base_mass_g;
        }

        /// <summary>Mass of the mix. Unit: g.</summary>
        public double MixMassG { get; }

        /// <summary>Mass of base in it. Unit: g.</summary>
        public double BaseMassG { get; }
    }

    /// <summary>The results of RejectRate.</summary>
    public sealed class RejectRateResult
    {
        internal RejectRateResult(Native.pour_reject_rate_result found)
        {
            Rejects = found.rejects;
            RejectsMin = found.rejects_min;
            RejectsMax = found.rejects_max;
        }

        /// <summary>Share of rejects. Unit: 1.</summary>
        public double Rejects { get; }

        /// <summary>Its lower bound. Unit: 1.</summary>
        public double RejectsMin { get; }

        /// <summary>Its upper bound. Unit: 1.</summary>
        public double RejectsMax { get; }
    }

    /// <summary>The results of BenchMeasure.</summary>
    public sealed class BenchMeasureResult
    {
        internal BenchMeasureResult(Native.pour_bench_measure_result found)
        {
            MassG = found.mass_g;
            Deviation = found.deviation;
            Tool = Call.IfWord(found.tool, Words.Tool);
            Acts = found.acts;
            Drops = found.drops;
            Spoonfuls = found.spoonfuls;
            Cup = found.cup;
            CupFillings = found.cup_fillings;
            CupMark = found.cup_mark;
        }

        /// <summary>Mass that it gives. Unit: g.</summary>
        public double MassG { get; }

        /// <summary>(given − needed)/needed. Unit: 1.</summary>
        public double Deviation { get; }

        /// <summary>The tool: balance, cup, spoons or drops. One of `balance`, `cup`, `spoons`,
        /// `drops`.</summary>
        public string Tool { get; }

        /// <summary>Amount of handling: readings, fillings, spoonfuls, tens of drops.</summary>
        public uint Acts { get; }

        /// <summary>Number of drops.</summary>
        public uint Drops { get; }

        /// <summary>Number of level spoonfuls of each spoon, in the order of the spoons.</summary>
        public uint[] Spoonfuls { get; }

        /// <summary>Which cup, counted from 1; 0 without one.</summary>
        public uint Cup { get; }

        /// <summary>Number of times that cup is filled to its last mark.</summary>
        public uint CupFillings { get; }

        /// <summary>Mark to which it is filled once more, counted from 1; 0 where it is not.</summary>
        public uint CupMark { get; }
    }

    /// <summary>The results of SinkRate.</summary>
    public sealed class SinkRateResult
    {
        internal SinkRateResult(Native.pour_sink_rate_result found)
        {
            SinkRateCmPerS = found.sink_rate_cm_per_s;
            SinkRateMinCmPerS = found.sink_rate_min_cm_per_s;
            SinkRateMaxCmPerS = found.sink_rate_max_cm_per_s;
            Motion = Call.IfWord(found.motion, Words.Motion);
            Reynolds = found.reynolds;
            DragCoefficient = found.drag_coefficient;
            SinkTimeS = Call.IfNumber(found.sink_time_s);
        }

        /// <summary>Sink rate. Unit: cm/s.</summary>
        public double SinkRateCmPerS { get; }

        /// <summary>Lower bound; 0 where the piece may hang or float. Unit: cm/s.</summary>
        public double SinkRateMinCmPerS { get; }

        /// <summary>Upper bound. Unit: cm/s.</summary>
        public double SinkRateMaxCmPerS { get; }

        /// <summary>Whether it sinks straight: straight, may-swing or swings. One of `straight`, `may-swing`,
        /// `swings`.</summary>
        public string Motion { get; }

        /// <summary>Reynolds number. Unit: 1.</summary>
        public double Reynolds { get; }

        /// <summary>Drag coefficient, on length times diameter of a stick and the cross-section of a ball. Unit:
        /// 1.</summary>
        public double DragCoefficient { get; }

        /// <summary>Time to the depth, let go at rest just below the surface. Unit: s. Null where there is
        /// none.</summary>
        public double? SinkTimeS { get; }
    }

    /// <summary>The results of SwollenVolume.</summary>
    public sealed class SwollenVolumeResult
    {
        internal SwollenVolumeResult(Native.pour_swollen_volume_result found)
        {
            SwollenVolumeMl = found.swollen_volume_ml;
            StandingVolumeMl = found.standing_volume_ml;
            AbsolutePressureKpa = found.absolute_pressure_kpa;
        }

        /// <summary>Volume in the vacuum. Unit: mL.</summary>
        public double SwollenVolumeMl { get; }

        /// <summary>Volume before, bubbles included. Unit: mL.</summary>
        public double StandingVolumeMl { get; }

        /// <summary>Pressure that is left in the chamber. Unit: kPa.</summary>
        public double AbsolutePressureKpa { get; }
    }

    /// <summary>The results of DegasVessel.</summary>
    public sealed class DegasVesselResult
    {
        internal DegasVesselResult(Native.pour_degas_vessel_result found)
        {
            VesselVolumeMl = found.vessel_volume_ml;
            FillMarkMl = Call.IfNumber(found.fill_mark_ml);
            Fills = Call.IfCount(found.fills);
            FillLevelMl = Call.IfNumber(found.fill_level_ml);
            FillSwollenMl = Call.IfNumber(found.fill_swollen_ml);
        }

        /// <summary>Volume to the brim of a vessel that takes the pot at once. Unit: mL.</summary>
        public double VesselVolumeMl { get; }

        /// <summary>Level to fill the given vessel to at most, bubbles included. Unit: mL. Null where there is
        /// none.</summary>
        public double? FillMarkMl { get; }

        /// <summary>Number of fills of the given vessel. Null where there is none.</summary>
        public uint? Fills { get; }

        /// <summary>Level of each fill, shared out evenly, bubbles included. Unit: mL. Null where there is
        /// none.</summary>
        public double? FillLevelMl { get; }

        /// <summary>Volume of an even fill in the vacuum. Unit: mL. Null where there is none.</summary>
        public double? FillSwollenMl { get; }
    }

    /// <summary>The results of FlakeCount.</summary>
    public sealed class FlakeCountResult
    {
        internal FlakeCountResult(Native.pour_flake_count_result found)
        {
            Particles = found.particles;
            AreaCm2 = found.area_cm2;
        }

        /// <summary>Number of particles, not rounded. Unit: 1.</summary>
        public double Particles { get; }

        /// <summary>Area of film, one face of every particle. Unit: cm2.</summary>
        public double AreaCm2 { get; }
    }

    /// <summary>The results of FlakeSwap.</summary>
    public sealed class FlakeSwapResult
    {
        internal FlakeSwapResult(Native.pour_flake_swap_result found)
        {
            MassG = found.mass_g;
            ScoopMl = Call.IfNumber(found.scoop_ml);
            CountRatio = found.count_ratio;
            AreaRatio = found.area_ratio;
        }

        /// <summary>Mass of the other flake. Unit: g.</summary>
        public double MassG { get; }

        /// <summary>Volume to scoop of it, where its bulk density is given. Unit: mL. Null where there is
        /// none.</summary>
        public double? ScoopMl { get; }

        /// <summary>Particles of the other dose over those of the first. Unit: 1.</summary>
        public double CountRatio { get; }

        /// <summary>Area of the other dose over that of the first. Unit: 1.</summary>
        public double AreaRatio { get; }
    }

    /// <summary>The results of BudgetLeft.</summary>
    public sealed class BudgetLeftResult
    {
        internal BudgetLeftResult(Native.pour_budget_left_result found)
        {
            BudgetS = found.budget_s;
            LeftS = found.left_s;
            OverspentS = found.overspent_s;
        }

        /// <summary>Budget at this dose of stabilizer. Unit: s.</summary>
        public double BudgetS { get; }

        /// <summary>Time that is left; 0 where more was spent. Unit: s.</summary>
        public double LeftS { get; }

        /// <summary>Time that was spent beyond the budget; 0 where it was not. Unit: s.</summary>
        public double OverspentS { get; }
    }

    /// <summary>The results of HeatTime.</summary>
    public sealed class HeatTimeResult
    {
        internal HeatTimeResult(Native.pour_heat_time_result found)
        {
            HeatTimeS = found.heat_time_s;
            HeatTimeUncertaintyS = found.heat_time_uncertainty_s;
            PowerW = found.power_w;
            Beyond = Call.IfNumber(found.beyond);
        }

        /// <summary>Heating time. Unit: s.</summary>
        public double HeatTimeS { get; }

        /// <summary>Its standard uncertainty for one more heating. Unit: s.</summary>
        public double HeatTimeUncertaintyS { get; }

        /// <summary>Power that reaches mix and vessel. Unit: W.</summary>
        public double PowerW { get; }

        /// <summary>How far the amount is outside those that were timed, as a factor; none inside them. Unit: 1.
        /// Null where there is none.</summary>
        public double? Beyond { get; }
    }

    /// <summary>The results of NextBurst.</summary>
    public sealed class NextBurstResult
    {
        internal NextBurstResult(Native.pour_next_burst_result found)
        {
            BurstS = Call.IfNumber(found.burst_s);
            ExpectedCelsius = Call.IfNumber(found.expected_celsius);
            ShootFromCelsius = found.shoot_from_celsius;
            ShootToCelsius = found.shoot_to_celsius;
            Bursts = found.bursts;
            OvenTimeS = found.oven_time_s;
        }

        /// <summary>The next burst; none where the pot is hot enough. Unit: s. Null where there is
        /// none.</summary>
        public double? BurstS { get; }

        /// <summary>The expected reading after it. Unit: °C. Null where there is none.</summary>
        public double? ExpectedCelsius { get; }

        /// <summary>Shoot from this reading on. Unit: °C.</summary>
        public double ShootFromCelsius { get; }

        /// <summary>Shoot up to this reading; above it, stop and let the pot cool. Unit: °C.</summary>
        public double ShootToCelsius { get; }

        /// <summary>Number of bursts that are expected from this reading on.</summary>
        public uint Bursts { get; }

        /// <summary>Time that the oven is expected to run in them. Unit: s.</summary>
        public double OvenTimeS { get; }
    }

    /// <summary>The results of StaysHot.</summary>
    public sealed class StaysHotResult
    {
        internal StaysHotResult(Native.pour_stays_hot_result found)
        {
            TimeConstantS = found.time_constant_s;
            HotForS = found.hot_for_s;
            HalfFullS = found.half_full_s;
            AfterCelsius = Call.IfNumber(found.after_celsius);
        }

        /// <summary>Time in which the distance to the temperature of the room falls to 37 %. Unit: s.</summary>
        public double TimeConstantS { get; }

        /// <summary>Time down to the lower temperature, with all of the mix in the pot. Unit: s.</summary>
        public double HotForS { get; }

        /// <summary>The same with half of it. Unit: s.</summary>
        public double HalfFullS { get; }

        /// <summary>Temperature after the time that the pot has stood. Unit: °C. Null where there is
        /// none.</summary>
        public double? AfterCelsius { get; }
    }

    /// <summary>The results of PotHeats.</summary>
    public sealed class PotHeatsResult
    {
        internal PotHeatsResult(Native.pour_pot_heats_result found)
        {
            Reheats = found.reheats;
            FirstShots = found.first_shots;
            ShootingTimeS = found.shooting_time_s;
            TotalTimeS = Call.IfNumber(found.total_time_s);
        }

        /// <summary>Number of reheats: the heats but for the first.</summary>
        public uint Reheats { get; }

        /// <summary>Number of shots in the first heat.</summary>
        public uint FirstShots { get; }

        /// <summary>Time of all shots, without the oven. Unit: s.</summary>
        public double ShootingTimeS { get; }

        /// <summary>Time of all shots and of the oven for each heat, where that is given. Unit: s. Null where
        /// there is none.</summary>
        public double? TotalTimeS { get; }
    }

    /// <summary>The results of SettingTime.</summary>
    public sealed class SettingTimeResult
    {
        internal SettingTimeResult(Native.pour_setting_time_result found)
        {
            SettingTimeS = found.setting_time_s;
            SettingTimeMinS = found.setting_time_min_s;
            SettingTimeMaxS = found.setting_time_max_s;
            WarmsKelvin = Call.IfNumber(found.warms_kelvin);
            InARow = Call.IfCount(found.in_a_row);
            ShotEveryS = Call.IfNumber(found.shot_every_s);
        }

        /// <summary>Setting time. Unit: s.</summary>
        public double SettingTimeS { get; }

        /// <summary>The same with the highest diffusivity of soft PVC. Unit: s.</summary>
        public double SettingTimeMinS { get; }

        /// <summary>The same with the lowest. Unit: s.</summary>
        public double SettingTimeMaxS { get; }

        /// <summary>How much one shot warms the mold, where its mass is given. Unit: K. Null where there is
        /// none.</summary>
        public double? WarmsKelvin { get; }

        /// <summary>Number of shots in a row before the mold is too warm, nothing lost between them; none where
        /// its mass is not given, or it goes on. Null where there is none.</summary>
        public uint? InARow { get; }

        /// <summary>Time from one shot to the next, where the working time is given. Unit: s. Null where there is
        /// none.</summary>
        public double? ShotEveryS { get; }
    }

    /// <summary>The results of StirEvery.</summary>
    public sealed class StirEveryResult
    {
        internal StirEveryResult(Native.pour_stir_every_result found)
        {
            StirEveryS = found.stir_every_s;
            StirEveryMaxS = found.stir_every_max_s;
            SettlingMinCmPerS = found.settling_min_cm_per_s;
            SettlingMaxCmPerS = found.settling_max_cm_per_s;
        }

        /// <summary>How often to stir, to be safe: in the thinnest melt. Unit: s.</summary>
        public double StirEveryS { get; }

        /// <summary>How often is enough in the thickest melt. Unit: s.</summary>
        public double StirEveryMaxS { get; }

        /// <summary>Speed of the grains in the thickest melt. Unit: cm/s.</summary>
        public double SettlingMinCmPerS { get; }

        /// <summary>Speed of the grains in the thinnest melt. Unit: cm/s.</summary>
        public double SettlingMaxCmPerS { get; }
    }

    /// <summary>The results of CavityOfWeights.</summary>
    public sealed class CavityOfWeightsResult
    {
        internal CavityOfWeightsResult(Native.pour_cavity_of_weights_result found)
        {
            CavityVolumeMl = found.cavity_volume_ml;
            CavityVolumeUncertaintyMl = found.cavity_volume_uncertainty_ml;
            MeanG = found.mean_g;
            DeviationG = found.deviation_g;
        }

        /// <summary>Volume of the cavity. Unit: mL.</summary>
        public double CavityVolumeMl { get; }

        /// <summary>Its standard uncertainty. Where the feed is not known, that of an even spread from 0 to 1
        /// counts. Unit: mL.</summary>
        public double CavityVolumeUncertaintyMl { get; }

        /// <summary>Mean of the weights. Unit: g.</summary>
        public double MeanG { get; }

        /// <summary>Standard deviation of one. Unit: g.</summary>
        public double DeviationG { get; }
    }

    /// <summary>The results of FeedOfWeights.</summary>
    public sealed class FeedOfWeightsResult
    {
        internal FeedOfWeightsResult(Native.pour_feed_of_weights_result found)
        {
            Feed = found.feed;
            FeedUncertainty = found.feed_uncertainty;
            MeanG = found.mean_g;
            DeviationG = found.deviation_g;
        }

        /// <summary>Feed share. Unit: 1.</summary>
        public double Feed { get; }

        /// <summary>Its standard uncertainty. Unit: 1.</summary>
        public double FeedUncertainty { get; }

        /// <summary>Mean of the weights. Unit: g.</summary>
        public double MeanG { get; }

        /// <summary>Standard deviation of one. Unit: g.</summary>
        public double DeviationG { get; }
    }

    /// <summary>The results of DropOfWeighings.</summary>
    public sealed class DropOfWeighingsResult
    {
        internal DropOfWeighingsResult(Native.pour_drop_of_weighings_result found)
        {
            DropMassG = found.drop_mass_g;
            DropMassUncertaintyG = found.drop_mass_uncertainty_g;
            ScatterG = found.scatter_g;
        }

        /// <summary>Mass of one drop. Unit: g.</summary>
        public double DropMassG { get; }

        /// <summary>Its standard uncertainty. Unit: g.</summary>
        public double DropMassUncertaintyG { get; }

        /// <summary>Standard deviation of one drop against the next. Unit: g.</summary>
        public double ScatterG { get; }
    }

    /// <summary>The results of AsScoopedOfWeighings.</summary>
    public sealed class AsScoopedOfWeighingsResult
    {
        internal AsScoopedOfWeighingsResult(Native.pour_as_scooped_of_weighings_result found)
        {
            AsScoopedGPerMl = found.as_scooped_g_per_ml;
            AsScoopedUncertaintyGPerMl = found.as_scooped_uncertainty_g_per_ml;
            SpoonfulG = found.spoonful_g;
        }

        /// <summary>Bulk density, level in the spoon. Unit: g/mL.</summary>
        public double AsScoopedGPerMl { get; }

        /// <summary>Its standard uncertainty. Unit: g/mL.</summary>
        public double AsScoopedUncertaintyGPerMl { get; }

        /// <summary>Mass of one spoonful. Unit: g.</summary>
        public double SpoonfulG { get; }
    }

    /// <summary>The results of ResidueOfWeighings.</summary>
    public sealed class ResidueOfWeighingsResult
    {
        internal ResidueOfWeighingsResult(Native.pour_residue_of_weighings_result found)
        {
            InjectorResidueMl = found.injector_residue_ml;
            InjectorResidueUncertaintyMl = found.injector_residue_uncertainty_ml;
            ResidueMassG = found.residue_mass_g;
        }

        /// <summary>Volume that stays in the injector. Unit: mL.</summary>
        public double InjectorResidueMl { get; }

        /// <summary>Its standard uncertainty. Unit: mL.</summary>
        public double InjectorResidueUncertaintyMl { get; }

        /// <summary>Its mass. Unit: g.</summary>
        public double ResidueMassG { get; }
    }
}
