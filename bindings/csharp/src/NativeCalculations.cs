// Made by `cargo run -p pourwright-generate`; do not edit.

using System;
using System.Runtime.InteropServices;

namespace Pourwright
{
    /// <summary>The words of parameters and results, in their order in C.</summary>
    internal static class Words
    {
        internal static readonly string[] Alike =
        {
            "count", "area"
        };
        internal static readonly string[] Form =
        {
            "as-scooped", "per-volume", "of-base", "of-finished", "finished-density", "piece-mass",
            "sink-density"
        };
        internal static readonly string[] Kind =
        {
            "plastisol", "softener", "hardener", "stabilizer", "colorant", "pearl", "flake", "salt", "scent",
            "other"
        };
        internal static readonly string[] Measures =
        {
            "us-customary", "us-label", "metric", "imperial"
        };
        internal static readonly string[] Motion =
        {
            "straight", "may-swing", "swings"
        };
        internal static readonly string[] PiecePoint =
        {
            "center", "mean"
        };
        internal static readonly string[] Scale =
        {
            "shore-00", "shore-a"
        };
        internal static readonly string[] SectionShape =
        {
            "rod", "plate", "ball"
        };
        internal static readonly string[] Shape =
        {
            "stick", "ball"
        };
        internal static readonly string[] Tool =
        {
            "balance", "cup", "spoons", "drops"
        };
    }

    internal static partial class Native
    {
        internal const uint POUR_ABI_VERSION = 1;
        internal const uint POUR_OK = 0;
        internal const uint POUR_NULL = 1;
        internal const uint POUR_NOT_FINITE = 2;
        internal const uint POUR_NOT_UTF8 = 3;
        internal const uint POUR_TOO_LARGE = 4;
        internal const uint POUR_UNKNOWN_NUMBER = 5;
        internal const uint POUR_REFUSED = 6;
        internal const uint POUR_PANIC = 7;
        internal const uint POUR_MISALIGNED = 8;
        internal const uint POUR_STOPPED = 9;
        internal const uint POUR_OVER_BUDGET = 10;
        internal const uint POUR_OUT_OF_MEMORY = 11;
        internal const uint POUR_OMITTED_COUNT = 4294967295;
        internal const uint POUR_ALIKE_COUNT = 1;
        internal const uint POUR_ALIKE_AREA = 2;
        internal const uint POUR_FORM_AS_SCOOPED = 1;
        internal const uint POUR_FORM_PER_VOLUME = 2;
        internal const uint POUR_FORM_OF_BASE = 3;
        internal const uint POUR_FORM_OF_FINISHED = 4;
        internal const uint POUR_FORM_FINISHED_DENSITY = 5;
        internal const uint POUR_FORM_PIECE_MASS = 6;
        internal const uint POUR_FORM_SINK_DENSITY = 7;
        internal const uint POUR_KIND_PLASTISOL = 1;
        internal const uint POUR_KIND_SOFTENER = 2;
        internal const uint POUR_KIND_HARDENER = 3;
        internal const uint POUR_KIND_STABILIZER = 4;
        internal const uint POUR_KIND_COLORANT = 5;
        internal const uint POUR_KIND_PEARL = 6;
        internal const uint POUR_KIND_FLAKE = 7;
        internal const uint POUR_KIND_SALT = 8;
        internal const uint POUR_KIND_SCENT = 9;
        internal const uint POUR_KIND_OTHER = 10;
        internal const uint POUR_MEASURES_US_CUSTOMARY = 1;
        internal const uint POUR_MEASURES_US_LABEL = 2;
        internal const uint POUR_MEASURES_METRIC = 3;
        internal const uint POUR_MEASURES_IMPERIAL = 4;
        internal const uint POUR_PHASE_LIQUID = 1;
        internal const uint POUR_PHASE_FUSED = 2;
        internal const uint POUR_PIECE_POINT_CENTER = 1;
        internal const uint POUR_PIECE_POINT_MEAN = 2;
        internal const uint POUR_SCALE_SHORE_00 = 1;
        internal const uint POUR_SCALE_SHORE_A = 2;
        internal const uint POUR_SECTION_SHAPE_ROD = 1;
        internal const uint POUR_SECTION_SHAPE_PLATE = 2;
        internal const uint POUR_SECTION_SHAPE_BALL = 3;
        internal const uint POUR_SHAPE_STICK = 1;
        internal const uint POUR_SHAPE_BALL = 2;
        internal const uint POUR_TOOL_BALANCE = 1;
        internal const uint POUR_TOOL_CUP = 2;
        internal const uint POUR_TOOL_SPOONS = 3;
        internal const uint POUR_TOOL_DROPS = 4;
        internal const uint POUR_MOTION_STRAIGHT = 1;
        internal const uint POUR_MOTION_MAY_SWING = 2;
        internal const uint POUR_MOTION_SWINGS = 3;
        internal const uint POUR_MEMORY_PER_BYTE = 256;
        internal const uint POUR_MEMORY_PER_POT = 524288;

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_convert(IntPtr amount, IntPtr to, int measures, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_convert_number(double value, IntPtr unit, IntPtr to, int measures, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_dose_mass(IntPtr amount, int kind, double material_density_g_per_ml, double as_scooped_g_per_ml, double drop_mass_g, int measures, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_mass_of_volume(double volume_ml, double density_g_per_ml, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_volume_of_mass(double mass_g, double density_g_per_ml, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_density_of_parts(IntPtr parts, UIntPtr parts_count, double voids, out double found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_mix_share_result
        {
            public double mass_share;
            public double volume_share;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_mix_share(IntPtr parts, UIntPtr parts_count, uint part, out pour_mix_share_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_convert_input
        {
            public UIntPtr size;
            public double base_volume_ml;
            public double base_density_g_per_ml;
            public double salt_density_g_per_ml;
            public int form;
            public double loading;
            public int to_form;
            public double mix_mass_g;
            public double mix_volume_ml;
            public double hot_volume_ml;
            public double shot_temperature_celsius;
            public double voids;
            public double salt_as_scooped_g_per_ml;
            public double salt_expansion_per_kelvin;
            public double softener_per_salt;
            public double softener_density_g_per_ml;
            public double softener_expansion_per_kelvin;
            public double most_solids;
            public double cavity_volume_ml;
            public double feed;
            public double hook_mass_g;
            public double hook_volume_ml;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_convert_result
        {
            public double loading;
            public double loading_min;
            public double loading_max;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_salt_convert(ref pour_salt_convert_input input, out pour_salt_convert_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_mass_input
        {
            public UIntPtr size;
            public double base_volume_ml;
            public double base_density_g_per_ml;
            public double salt_density_g_per_ml;
            public int form;
            public double loading;
            public double mix_mass_g;
            public double mix_volume_ml;
            public double hot_volume_ml;
            public double shot_temperature_celsius;
            public double voids;
            public double salt_as_scooped_g_per_ml;
            public double salt_expansion_per_kelvin;
            public double softener_per_salt;
            public double softener_density_g_per_ml;
            public double softener_expansion_per_kelvin;
            public double most_solids;
            public double cavity_volume_ml;
            public double feed;
            public double hook_mass_g;
            public double hook_volume_ml;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_mass_result
        {
            public double salt_mass_g;
            public double salt_mass_min_g;
            public double salt_mass_max_g;
            public double softener_mass_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_salt_mass(ref pour_salt_mass_input input, out pour_salt_mass_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_reach_input
        {
            public UIntPtr size;
            public double base_volume_ml;
            public double base_density_g_per_ml;
            public double salt_density_g_per_ml;
            public int form;
            public double mix_mass_g;
            public double mix_volume_ml;
            public double hot_volume_ml;
            public double shot_temperature_celsius;
            public double voids;
            public double salt_as_scooped_g_per_ml;
            public double salt_expansion_per_kelvin;
            public double softener_per_salt;
            public double softener_density_g_per_ml;
            public double softener_expansion_per_kelvin;
            public double most_solids;
            public double cavity_volume_ml;
            public double feed;
            public double hook_mass_g;
            public double hook_volume_ml;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_reach_result
        {
            public double loading_min;
            public double loading_max;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_salt_reach(ref pour_salt_reach_input input, out pour_salt_reach_result found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_salt_for_density(double base_volume_ml, double base_density_g_per_ml, double salt_density_g_per_ml, double finished_density_g_per_ml, double voids, double most_solids, out double found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_for_sink_rate_input
        {
            public UIntPtr size;
            public double base_volume_ml;
            public double base_density_g_per_ml;
            public double salt_density_g_per_ml;
            public double sink_rate_cm_per_s;
            public double cavity_volume_ml;
            public double diameter_mm;
            public double water_temperature_celsius;
            public double length_mm;
            public int shape;
            public double mix_mass_g;
            public double mix_volume_ml;
            public double hot_volume_ml;
            public double shot_temperature_celsius;
            public double voids;
            public double salt_expansion_per_kelvin;
            public double softener_per_salt;
            public double softener_density_g_per_ml;
            public double softener_expansion_per_kelvin;
            public double most_solids;
            public double feed;
            public double hook_mass_g;
            public double hook_volume_ml;
            public double salinity_practical;
            public double salinity_absolute;
            public double drop_depth_m;
            public double drop_time_s;
            public double drop_density_g_per_ml;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_salt_for_sink_rate_result
        {
            public double salt_mass_g;
            public double softener_mass_g;
            public double finished_density_g_per_ml;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_salt_for_sink_rate(ref pour_salt_for_sink_rate_input input, out pour_salt_for_sink_rate_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_shot_fill_input
        {
            public UIntPtr size;
            public uint cavities;
            public double cavity_volume_ml;
            public double cold_density_g_per_ml;
            public double hot_density_g_per_ml;
            public double voids;
            public double feed;
            public double sprue_volume_ml;
            public double topped_mass_g;
            public double layer_share;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_shot_fill_result
        {
            public double shot_mass_g;
            public double pieces_mass_g;
            public double sprue_mass_g;
            public double missing_mass_g;
            public double piece_mass_g;
            public double piece_mass_min_g;
            public double piece_mass_max_g;
            public double fed;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_shot_fill(ref pour_shot_fill_input input, out pour_shot_fill_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_piece_mass_result
        {
            public double piece_mass_g;
            public double piece_mass_min_g;
            public double piece_mass_max_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_piece_mass(double cavity_volume_ml, double cold_density_g_per_ml, double hot_density_g_per_ml, double voids, double feed, out pour_piece_mass_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_shots_result
        {
            public uint shots;
            public uint cast;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_shots(uint pieces, uint cavities, double rejects, double confidence, out pour_shots_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_injector_loads_result
        {
            public uint loads;
            public uint shots_per_load;
            public uint shots_in_last;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_injector_loads(uint shots, double shot_mass_g, double shot_density_g_per_ml, double injector_capacity_ml, double injector_residue_ml, out pour_injector_loads_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_batch_need_input
        {
            public UIntPtr size;
            public uint pieces;
            public uint cavities;
            public double shot_mass_g;
            public double shot_density_g_per_ml;
            public double injector_capacity_ml;
            public double injector_residue_ml;
            public uint cleanings;
            public double sprue_mass_g;
            public double returned;
            public double pot_film_g;
            public double pot_heel_g;
            public double rejects;
            public double confidence;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_batch_need_result
        {
            public double total_mass_g;
            public double drawn_mass_g;
            public double returned_mass_g;
            public double pieces_mass_g;
            public double sprues_mass_g;
            public double kept_mass_g;
            public double in_cup_mass_g;
            public uint shots;
            public uint loads;
            public uint shots_per_load;
            public uint shots_in_last;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_batch_need(ref pour_batch_need_input input, out pour_batch_need_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_base_to_mark_result
        {
            public double base_volume_ml;
            public double base_mass_g;
            public double mix_mass_g;
            public double surplus_mass_g;
            public uint extra_shots;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_base_to_mark(double mix_needed_g, double base_fraction, double base_density_g_per_ml, double cup_capacity_ml, double cup_mark_ml, double shot_mass_g, out pour_base_to_mark_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_least_pot_result
        {
            public double mix_mass_g;
            public double base_mass_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_least_pot(IntPtr doses, UIntPtr doses_count, double base_fraction, double oven_least_g, double injector_least_g, out pour_least_pot_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_reject_rate_result
        {
            public double rejects;
            public double rejects_min;
            public double rejects_max;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_reject_rate(uint cast_pieces, uint reject_count, double confidence, out pour_reject_rate_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_bench_measure_input
        {
            public UIntPtr size;
            public double mass_to_measure_g;
            public double tolerance;
            public double balance_readability_g;
            public double balance_capacity_g;
            public double balance_least_load_g;
            public IntPtr spoons_ml;
            public UIntPtr spoons_count;
            public IntPtr cups;
            public UIntPtr cups_count;
            public double as_measured_density_g_per_ml;
            public double drop_mass_g;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_bench_measure_result
        {
            public double mass_g;
            public double deviation;
            public int tool;
            public uint acts;
            public uint drops;
            [MarshalAs(UnmanagedType.ByValArray, SizeConst = 8)] public uint[] spoonfuls;
            public uint cup;
            public uint cup_fillings;
            public uint cup_mark;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_bench_measure(ref pour_bench_measure_input input, out pour_bench_measure_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_sink_rate_input
        {
            public UIntPtr size;
            public double piece_density_g_per_ml;
            public double piece_volume_ml;
            public double diameter_mm;
            public double water_temperature_celsius;
            public double length_mm;
            public int shape;
            public double hook_mass_g;
            public double hook_volume_ml;
            public double salinity_practical;
            public double salinity_absolute;
            public double density_uncertainty_g_per_ml;
            public double depth_m;
            public double drop_depth_m;
            public double drop_time_s;
            public double drop_density_g_per_ml;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_sink_rate_result
        {
            public double sink_rate_cm_per_s;
            public double sink_rate_min_cm_per_s;
            public double sink_rate_max_cm_per_s;
            public int motion;
            public double reynolds;
            public double drag_coefficient;
            public double sink_time_s;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_sink_rate(ref pour_sink_rate_input input, out pour_sink_rate_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_density_for_sink_rate_input
        {
            public UIntPtr size;
            public double sink_rate_cm_per_s;
            public double piece_volume_ml;
            public double diameter_mm;
            public double water_temperature_celsius;
            public double length_mm;
            public int shape;
            public double hook_mass_g;
            public double hook_volume_ml;
            public double salinity_practical;
            public double salinity_absolute;
            public double drop_depth_m;
            public double drop_time_s;
            public double drop_density_g_per_ml;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_density_for_sink_rate(ref pour_density_for_sink_rate_input input, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_hardness(IntPtr points, UIntPtr points_count, int scale, double softener_ratio, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_softener_ratio(IntPtr points, UIntPtr points_count, int scale, double hardness, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_salted_softener(IntPtr salted_points, UIntPtr salted_points_count, double salt_of_base, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_water_density(double water_temperature_celsius, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_cavity_of_water(double water_mass_g, double water_temperature_celsius, double air_pressure_kpa, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_standard_pressure(double altitude_m, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_station_pressure(double reported_pressure_kpa, double altitude_m, out double found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_swollen_volume_input
        {
            public UIntPtr size;
            public double liquid_volume_ml;
            public double entrained_air;
            public double station_pressure_kpa;
            public double gauge_vacuum_kpa;
            public double absolute_pressure_kpa;
            public double dial_tolerance_kpa;
            public double vapor_pressure_kpa;
            public double damp_at_celsius;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_swollen_volume_result
        {
            public double swollen_volume_ml;
            public double standing_volume_ml;
            public double absolute_pressure_kpa;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_swollen_volume(ref pour_swollen_volume_input input, out pour_swollen_volume_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_entrained_air_input
        {
            public UIntPtr size;
            public double rise;
            public double station_pressure_kpa;
            public double gauge_vacuum_kpa;
            public double absolute_pressure_kpa;
            public double dial_tolerance_kpa;
            public double vapor_pressure_kpa;
            public double damp_at_celsius;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_entrained_air(ref pour_entrained_air_input input, out double found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_degas_vessel_input
        {
            public UIntPtr size;
            public double liquid_volume_ml;
            public double entrained_air;
            public double station_pressure_kpa;
            public double gauge_vacuum_kpa;
            public double absolute_pressure_kpa;
            public double dial_tolerance_kpa;
            public double vapor_pressure_kpa;
            public double damp_at_celsius;
            public double vessel_spare;
            public double vessel_brim_ml;
            public double vessel_mark_ml;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_degas_vessel_result
        {
            public double vessel_volume_ml;
            public double fill_mark_ml;
            public uint fills;
            public double fill_level_ml;
            public double fill_swollen_ml;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_degas_vessel(ref pour_degas_vessel_input input, out pour_degas_vessel_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_flake_count_result
        {
            public double particles;
            public double area_cm2;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_flake_count(IntPtr cut, double thickness_um, double film_density_g_per_ml, double flake_dose_g, out pour_flake_count_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_flake_swap_input
        {
            public UIntPtr size;
            public IntPtr cut;
            public double thickness_um;
            public double film_density_g_per_ml;
            public double flake_dose_g;
            public IntPtr other_cut;
            public double other_thickness_um;
            public double other_film_density_g_per_ml;
            public double other_as_scooped_g_per_ml;
            public int alike;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_flake_swap_result
        {
            public double mass_g;
            public double scoop_ml;
            public double count_ratio;
            public double area_ratio;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_flake_swap(ref pour_flake_swap_input input, out pour_flake_swap_result found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_color_difference(double lightness, double a, double b, double other_lightness, double other_a, double other_b, out double found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_equivalent_time(IntPtr readings, UIntPtr readings_count, double activation_energy_kj_per_mol, double reference_temperature_celsius, out double found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_budget_left_result
        {
            public double budget_s;
            public double left_s;
            public double overspent_s;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_budget_left(double heat_budget_s, double equivalent_time_s, double budget_with, double stabilizer_dose, double extra_time_s, double extra_most, out pour_budget_left_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_heat_time_input
        {
            public UIntPtr size;
            public double pot_mass_g;
            public double specific_heat_j_per_g_k;
            public double heated_from_celsius;
            public double heated_to_celsius;
            public IntPtr timings;
            public UIntPtr timings_count;
            public double oven_power_w;
            public double setting;
            public double specific_heat_rise_per_kelvin;
            public double timed_specific_heat_j_per_g_k;
            public double vessel_mass_g;
            public double vessel_specific_heat_j_per_g_k;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_heat_time_result
        {
            public double heat_time_s;
            public double heat_time_uncertainty_s;
            public double power_w;
            public double beyond;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_heat_time(ref pour_heat_time_input input, out pour_heat_time_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_next_burst_input
        {
            public UIntPtr size;
            public double pot_mass_g;
            public double specific_heat_j_per_g_k;
            public double reading_celsius;
            public double window_bottom_celsius;
            public double window_top_celsius;
            public IntPtr timings;
            public UIntPtr timings_count;
            public double oven_power_w;
            public double setting;
            public double specific_heat_rise_per_kelvin;
            public double timed_specific_heat_j_per_g_k;
            public double vessel_mass_g;
            public double vessel_specific_heat_j_per_g_k;
            public double aim_celsius;
            public double thermometer_kelvin;
            public double burst_step_s;
            public double longest_burst_s;
            public double oven_turn_s;
            public int measures;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_next_burst_result
        {
            public double burst_s;
            public double expected_celsius;
            public double shoot_from_celsius;
            public double shoot_to_celsius;
            public uint bursts;
            public double oven_time_s;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_next_burst(ref pour_next_burst_input input, out pour_next_burst_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_stays_hot_input
        {
            public UIntPtr size;
            public double pot_mass_g;
            public double hot_from_celsius;
            public double hot_to_celsius;
            public double watched_mass_g;
            public double watched_from_celsius;
            public double watched_to_celsius;
            public double watched_time_s;
            public double room_celsius;
            public double stood_s;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_stays_hot_result
        {
            public double time_constant_s;
            public double hot_for_s;
            public double half_full_s;
            public double after_celsius;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_stays_hot(ref pour_stays_hot_input input, out pour_stays_hot_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_pot_heats_input
        {
            public UIntPtr size;
            public double pot_mass_g;
            public IntPtr clock_runs;
            public UIntPtr clock_runs_count;
            public double hot_for_s;
            public double clock_from_celsius;
            public double clock_to_celsius;
            public double watched_mass_g;
            public double watched_from_celsius;
            public double watched_to_celsius;
            public double watched_time_s;
            public double room_celsius;
            public double oven_time_s;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_pot_heats_result
        {
            public uint reheats;
            public uint first_shots;
            public double shooting_time_s;
            public double total_time_s;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_pot_heats(ref pour_pot_heats_input input, out pour_pot_heats_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_setting_time_input
        {
            public UIntPtr size;
            public int section_shape;
            public double section_thickness_mm;
            public double shot_at_celsius;
            public double mold_at_celsius;
            public double take_out_celsius;
            public int piece_point;
            public double diffusivity_m2_per_s;
            public double shot_mass_g;
            public double shot_specific_heat_j_per_g_k;
            public double mold_mass_g;
            public double mold_specific_heat_j_per_g_k;
            public double hands_s;
            public uint molds;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_setting_time_result
        {
            public double setting_time_s;
            public double setting_time_min_s;
            public double setting_time_max_s;
            public double warms_kelvin;
            public uint in_a_row;
            public double shot_every_s;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_setting_time(ref pour_setting_time_input input, out pour_setting_time_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_stir_every_input
        {
            public UIntPtr size;
            public double grain_mm;
            public double grain_density_g_per_ml;
            public double melt_density_g_per_ml;
            public double melt_depth_mm;
            public double melt_viscosity_min_mpa_s;
            public double melt_viscosity_max_mpa_s;
            public double solids_share;
            public double unstirred;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_stir_every_result
        {
            public double stir_every_s;
            public double stir_every_max_s;
            public double settling_min_cm_per_s;
            public double settling_max_cm_per_s;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_stir_every(ref pour_stir_every_input input, out pour_stir_every_result found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_viscosity_of_ball(double ball_diameter_mm, double ball_density_g_per_ml, double melt_density_g_per_ml, double ball_depth_mm, double ball_time_s, out double found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_cavity_of_weights_input
        {
            public UIntPtr size;
            public IntPtr weights_g;
            public UIntPtr weights_count;
            public double balance_readability_g;
            public double cold_density_g_per_ml;
            public double hot_density_g_per_ml;
            public double voids;
            public double feed;
            public double feed_uncertainty;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_cavity_of_weights_result
        {
            public double cavity_volume_ml;
            public double cavity_volume_uncertainty_ml;
            public double mean_g;
            public double deviation_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_cavity_of_weights(ref pour_cavity_of_weights_input input, out pour_cavity_of_weights_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_feed_of_weights_input
        {
            public UIntPtr size;
            public IntPtr weights_g;
            public UIntPtr weights_count;
            public double balance_readability_g;
            public double cold_density_g_per_ml;
            public double cavity_volume_ml;
            public double hot_density_g_per_ml;
            public double voids;
            public double volume_uncertainty_ml;
        }

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_feed_of_weights_result
        {
            public double feed;
            public double feed_uncertainty;
            public double mean_g;
            public double deviation_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_feed_of_weights(ref pour_feed_of_weights_input input, out pour_feed_of_weights_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_drop_of_weighings_result
        {
            public double drop_mass_g;
            public double drop_mass_uncertainty_g;
            public double scatter_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_drop_of_weighings(IntPtr drops_weighed, UIntPtr drops_weighed_count, double balance_readability_g, out pour_drop_of_weighings_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_as_scooped_of_weighings_result
        {
            public double as_scooped_g_per_ml;
            public double as_scooped_uncertainty_g_per_ml;
            public double spoonful_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_as_scooped_of_weighings(IntPtr scoops_weighed, UIntPtr scoops_weighed_count, double spoon_volume_ml, double balance_readability_g, double volume_uncertainty_ml, out pour_as_scooped_of_weighings_result found, out IntPtr error);

        [StructLayout(LayoutKind.Sequential)]
        internal struct pour_residue_of_weighings_result
        {
            public double injector_residue_ml;
            public double injector_residue_uncertainty_ml;
            public double residue_mass_g;
        }

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_residue_of_weighings(IntPtr injector_weighed_g, UIntPtr injector_weighed_count, double residue_density_g_per_ml, double balance_readability_g, double density_uncertainty_g_per_ml, out pour_residue_of_weighings_result found, out IntPtr error);

        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]
        internal static extern int pour_price(uint cost, double cost_margin, out uint found, out IntPtr error);
    }
}
