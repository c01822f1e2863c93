enum {
    POUR_ABI_VERSION = 1,
    POUR_OK = 0,
    POUR_NULL = 1,
    POUR_NOT_FINITE = 2,
    POUR_NOT_UTF8 = 3,
    POUR_TOO_LARGE = 4,
    POUR_UNKNOWN_NUMBER = 5,
    POUR_REFUSED = 6,
    POUR_PANIC = 7,
    POUR_MISALIGNED = 8,
    POUR_STOPPED = 9,
    POUR_OVER_BUDGET = 10,
    POUR_OUT_OF_MEMORY = 11,
    POUR_OMITTED_COUNT = 4294967295,
    POUR_ALIKE_COUNT = 1,
    POUR_ALIKE_AREA = 2,
    POUR_FORM_AS_SCOOPED = 1,
    POUR_FORM_PER_VOLUME = 2,
    POUR_FORM_OF_BASE = 3,
    POUR_FORM_OF_FINISHED = 4,
    POUR_FORM_FINISHED_DENSITY = 5,
    POUR_FORM_PIECE_MASS = 6,
    POUR_FORM_SINK_DENSITY = 7,
    POUR_KIND_PLASTISOL = 1,
    POUR_KIND_SOFTENER = 2,
    POUR_KIND_HARDENER = 3,
    POUR_KIND_STABILIZER = 4,
    POUR_KIND_COLORANT = 5,
    POUR_KIND_PEARL = 6,
    POUR_KIND_FLAKE = 7,
    POUR_KIND_SALT = 8,
    POUR_KIND_SCENT = 9,
    POUR_KIND_OTHER = 10,
    POUR_MEASURES_US_CUSTOMARY = 1,
    POUR_MEASURES_US_LABEL = 2,
    POUR_MEASURES_METRIC = 3,
    POUR_MEASURES_IMPERIAL = 4,
    POUR_PHASE_LIQUID = 1,
    POUR_PHASE_FUSED = 2,
    POUR_PIECE_POINT_CENTER = 1,
    POUR_PIECE_POINT_MEAN = 2,
    POUR_SCALE_SHORE_00 = 1,
    POUR_SCALE_SHORE_A = 2,
    POUR_SECTION_SHAPE_ROD = 1,
    POUR_SECTION_SHAPE_PLATE = 2,
    POUR_SECTION_SHAPE_BALL = 3,
    POUR_SHAPE_STICK = 1,
    POUR_SHAPE_BALL = 2,
    POUR_TOOL_BALANCE = 1,
    POUR_TOOL_CUP = 2,
    POUR_TOOL_SPOONS = 3,
    POUR_TOOL_DROPS = 4,
    POUR_MOTION_STRAIGHT = 1,
    POUR_MOTION_MAY_SWING = 2,
    POUR_MOTION_SWINGS = 3,
    POUR_MEMORY_PER_BYTE = 256,
    POUR_MEMORY_PER_POT = 524288,
    POUR_MEMORY_PER_CALL = 8388608
};
typedef struct pour_book pour_book;
typedef struct pour_error pour_error;
typedef struct pour_mix pour_mix;
typedef struct pour_plan pour_plan;
typedef struct pour_column {
    const double *start;
    ptrdiff_t stride;
} pour_column;
typedef struct pour_mass_of_volume_columns {
    struct pour_column volume_ml;
    struct pour_column density_g_per_ml;
} pour_mass_of_volume_columns;
typedef struct pour_result_column {
    double *start;
    ptrdiff_t stride;
} pour_result_column;
typedef struct pour_mass_of_volume_result_columns {
    struct pour_result_column mass_g;
} pour_mass_of_volume_result_columns;
typedef struct pour_volume_of_mass_columns {
    struct pour_column mass_g;
    struct pour_column density_g_per_ml;
} pour_volume_of_mass_columns;
typedef struct pour_volume_of_mass_result_columns {
    struct pour_result_column volume_ml;
} pour_volume_of_mass_result_columns;
typedef struct pour_parts_row {
    double part_mass_g;
    double part_density_g_per_ml;
} pour_parts_row;
typedef struct pour_mix_share_result {
    double mass_share;
    double volume_share;
} pour_mix_share_result;
typedef struct pour_salt_convert_input {
    size_t size;
    double base_volume_ml;
    double base_density_g_per_ml;
    double salt_density_g_per_ml;
    int32_t form;
    double loading;
    int32_t to_form;
    double mix_mass_g;
    double mix_volume_ml;
    double hot_volume_ml;
    double shot_temperature_celsius;
    double voids;
    double salt_as_scooped_g_per_ml;
    double salt_expansion_per_kelvin;
    double softener_per_salt;
    double softener_density_g_per_ml;
    double softener_expansion_per_kelvin;
    double most_solids;
    double cavity_volume_ml;
    double feed;
    double hook_mass_g;
    double hook_volume_ml;
} pour_salt_convert_input;
typedef struct pour_salt_convert_result {
    double loading;
    double loading_min;
    double loading_max;
} pour_salt_convert_result;
typedef struct pour_salt_convert_columns {
    struct pour_column base_volume_ml;
    struct pour_column base_density_g_per_ml;
    struct pour_column salt_density_g_per_ml;
    int32_t form;
    struct pour_column loading;
    int32_t to_form;
    struct pour_column mix_mass_g;
    struct pour_column mix_volume_ml;
    struct pour_column hot_volume_ml;
    struct pour_column shot_temperature_celsius;
    struct pour_column voids;
    struct pour_column salt_as_scooped_g_per_ml;
    struct pour_column salt_expansion_per_kelvin;
    struct pour_column softener_per_salt;
    struct pour_column softener_density_g_per_ml;
    struct pour_column softener_expansion_per_kelvin;
    struct pour_column most_solids;
    struct pour_column cavity_volume_ml;
    struct pour_column feed;
    struct pour_column hook_mass_g;
    struct pour_column hook_volume_ml;
} pour_salt_convert_columns;
typedef struct pour_salt_convert_result_columns {
    struct pour_result_column loading;
    struct pour_result_column loading_min;
    struct pour_result_column loading_max;
} pour_salt_convert_result_columns;
typedef struct pour_salt_mass_input {
    size_t size;
    double base_volume_ml;
    double base_density_g_per_ml;
    double salt_density_g_per_ml;
    int32_t form;
    double loading;
    double mix_mass_g;
    double mix_volume_ml;
    double hot_volume_ml;
    double shot_temperature_celsius;
    double voids;
    double salt_as_scooped_g_per_ml;
    double salt_expansion_per_kelvin;
    double softener_per_salt;
    double softener_density_g_per_ml;
    double softener_expansion_per_kelvin;
    double most_solids;
    double cavity_volume_ml;
    double feed;
    double hook_mass_g;
    double hook_volume_ml;
} pour_salt_mass_input;
typedef struct pour_salt_mass_result {
    double salt_mass_g;
    double salt_mass_min_g;
    double salt_mass_max_g;
    double softener_mass_g;
} pour_salt_mass_result;
typedef struct pour_salt_mass_columns {
    struct pour_column base_volume_ml;
    struct pour_column base_density_g_per_ml;
    struct pour_column salt_density_g_per_ml;
    int32_t form;
    struct pour_column loading;
    struct pour_column mix_mass_g;
    struct pour_column mix_volume_ml;
    struct pour_column hot_volume_ml;
    struct pour_column shot_temperature_celsius;
    struct pour_column voids;
    struct pour_column salt_as_scooped_g_per_ml;
    struct pour_column salt_expansion_per_kelvin;
    struct pour_column softener_per_salt;
    struct pour_column softener_density_g_per_ml;
    struct pour_column softener_expansion_per_kelvin;
    struct pour_column most_solids;
    struct pour_column cavity_volume_ml;
    struct pour_column feed;
    struct pour_column hook_mass_g;
    struct pour_column hook_volume_ml;
} pour_salt_mass_columns;
typedef struct pour_salt_mass_result_columns {
    struct pour_result_column salt_mass_g;
    struct pour_result_column salt_mass_min_g;
    struct pour_result_column salt_mass_max_g;
    struct pour_result_column softener_mass_g;
} pour_salt_mass_result_columns;
typedef struct pour_salt_reach_input {
    size_t size;
    double base_volume_ml;
    double base_density_g_per_ml;
    double salt_density_g_per_ml;
    int32_t form;
    double mix_mass_g;
    double mix_volume_ml;
    double hot_volume_ml;
    double shot_temperature_celsius;
    double voids;
    double salt_as_scooped_g_per_ml;
    double salt_expansion_per_kelvin;
    double softener_per_salt;
    double softener_density_g_per_ml;
    double softener_expansion_per_kelvin;
    double most_solids;
    double cavity_volume_ml;
    double feed;
    double hook_mass_g;
    double hook_volume_ml;
} pour_salt_reach_input;
typedef struct pour_salt_reach_result {
    double loading_min;
    double loading_max;
} pour_salt_reach_result;
typedef struct pour_salt_reach_columns {
    struct pour_column base_volume_ml;
    struct pour_column base_density_g_per_ml;
    struct pour_column salt_density_g_per_ml;
    int32_t form;
    struct pour_column mix_mass_g;
    struct pour_column mix_volume_ml;
    struct pour_column hot_volume_ml;
    struct pour_column shot_temperature_celsius;
    struct pour_column voids;
    struct pour_column salt_as_scooped_g_per_ml;
    struct pour_column salt_expansion_per_kelvin;
    struct pour_column softener_per_salt;
    struct pour_column softener_density_g_per_ml;
    struct pour_column softener_expansion_per_kelvin;
    struct pour_column most_solids;
    struct pour_column cavity_volume_ml;
    struct pour_column feed;
    struct pour_column hook_mass_g;
    struct pour_column hook_volume_ml;
} pour_salt_reach_columns;
typedef struct pour_salt_reach_result_columns {
    struct pour_result_column loading_min;
    struct pour_result_column loading_max;
} pour_salt_reach_result_columns;
typedef struct pour_salt_for_density_columns {
    struct pour_column base_volume_ml;
    struct pour_column base_density_g_per_ml;
    struct pour_column salt_density_g_per_ml;
    struct pour_column finished_density_g_per_ml;
    struct pour_column voids;
    struct pour_column most_solids;
} pour_salt_for_density_columns;
typedef struct pour_salt_for_density_result_columns {
    struct pour_result_column salt_mass_g;
} pour_salt_for_density_result_columns;
typedef struct pour_salt_for_sink_rate_input {
    size_t size;
    double base_volume_ml;
    double base_density_g_per_ml;
    double salt_density_g_per_ml;
    double sink_rate_cm_per_s;
    double cavity_volume_ml;
    double diameter_mm;
    double water_temperature_celsius;
    double length_mm;
    int32_t shape;
    double mix_mass_g;
    double mix_volume_ml;
    double hot_volume_ml;
    double shot_temperature_celsius;
    double voids;
    double salt_expansion_per_kelvin;
    double softener_per_salt;
    double softener_density_g_per_ml;
    double softener_expansion_per_kelvin;
    double most_solids;
    double feed;
    double hook_mass_g;
    double hook_volume_ml;
    double salinity_practical;
    double salinity_absolute;
    double drop_depth_m;
    double drop_time_s;
    double drop_density_g_per_ml;
} pour_salt_for_sink_rate_input;
typedef struct pour_salt_for_sink_rate_result {
    double salt_mass_g;
    double softener_mass_g;
    double finished_density_g_per_ml;
} pour_salt_for_sink_rate_result;
typedef struct pour_salt_for_sink_rate_columns {
    struct pour_column base_volume_ml;
    struct pour_column base_density_g_per_ml;
    struct pour_column salt_density_g_per_ml;
    struct pour_column sink_rate_cm_per_s;
    struct pour_column cavity_volume_ml;
    struct pour_column diameter_mm;
    struct pour_column water_temperature_celsius;
    struct pour_column length_mm;
    int32_t shape;
    struct pour_column mix_mass_g;
    struct pour_column mix_volume_ml;
    struct pour_column hot_volume_ml;
    struct pour_column shot_temperature_celsius;
    struct pour_column voids;
    struct pour_column salt_expansion_per_kelvin;
    struct pour_column softener_per_salt;
    struct pour_column softener_density_g_per_ml;
    struct pour_column softener_expansion_per_kelvin;
    struct pour_column most_solids;
    struct pour_column feed;
    struct pour_column hook_mass_g;
    struct pour_column hook_volume_ml;
    struct pour_column salinity_practical;
    struct pour_column salinity_absolute;
    struct pour_column drop_depth_m;
    struct pour_column drop_time_s;
    struct pour_column drop_density_g_per_ml;
} pour_salt_for_sink_rate_columns;
typedef struct pour_salt_for_sink_rate_result_columns {
    struct pour_result_column salt_mass_g;
    struct pour_result_column softener_mass_g;
    struct pour_result_column finished_density_g_per_ml;
} pour_salt_for_sink_rate_result_columns;
typedef struct pour_shot_fill_input {
    size_t size;
    uint32_t cavities;
    double cavity_volume_ml;
    double cold_density_g_per_ml;
    double hot_density_g_per_ml;
    double voids;
    double feed;
    double sprue_volume_ml;
    double topped_mass_g;
    double layer_share;
} pour_shot_fill_input;
typedef struct pour_shot_fill_result {
    double shot_mass_g;
    double pieces_mass_g;
    double sprue_mass_g;
    double missing_mass_g;
    double piece_mass_g;
    double piece_mass_min_g;
    double piece_mass_max_g;
    double fed;
} pour_shot_fill_result;
typedef struct pour_shot_fill_columns {
    struct pour_column cavities;
    struct pour_column cavity_volume_ml;
    struct pour_column cold_density_g_per_ml;
    struct pour_column hot_density_g_per_ml;
    struct pour_column voids;
    struct pour_column feed;
    struct pour_column sprue_volume_ml;
    struct pour_column topped_mass_g;
    struct pour_column layer_share;
} pour_shot_fill_columns;
typedef struct pour_shot_fill_result_columns {
    struct pour_result_column shot_mass_g;
    struct pour_result_column pieces_mass_g;
    struct pour_result_column sprue_mass_g;
    struct pour_result_column missing_mass_g;
    struct pour_result_column piece_mass_g;
    struct pour_result_column piece_mass_min_g;
    struct pour_result_column piece_mass_max_g;
    struct pour_result_column fed;
} pour_shot_fill_result_columns;
typedef struct pour_piece_mass_result {
    double piece_mass_g;
    double piece_mass_min_g;
    double piece_mass_max_g;
} pour_piece_mass_result;
typedef struct pour_piece_mass_columns {
    struct pour_column cavity_volume_ml;
    struct pour_column cold_density_g_per_ml;
    struct pour_column hot_density_g_per_ml;
    struct pour_column voids;
    struct pour_column feed;
} pour_piece_mass_columns;
typedef struct pour_piece_mass_result_columns {
    struct pour_result_column piece_mass_g;
    struct pour_result_column piece_mass_min_g;
    struct pour_result_column piece_mass_max_g;
} pour_piece_mass_result_columns;
typedef struct pour_shots_result {
    uint32_t shots;
    uint32_t cast;
} pour_shots_result;
typedef struct pour_shots_columns {
    struct pour_column pieces;
    struct pour_column cavities;
    struct pour_column rejects;
    struct pour_column confidence;
} pour_shots_columns;
typedef struct pour_shots_result_columns {
    struct pour_result_column shots;
    struct pour_result_column cast;
} pour_shots_result_columns;
typedef struct pour_injector_loads_result {
    uint32_t loads;
    uint32_t shots_per_load;
    uint32_t shots_in_last;
} pour_injector_loads_result;
typedef struct pour_injector_loads_columns {
    struct pour_column shots;
    struct pour_column shot_mass_g;
    struct pour_column shot_density_g_per_ml;
    struct pour_column injector_capacity_ml;
    struct pour_column injector_residue_ml;
} pour_injector_loads_columns;
typedef struct pour_injector_loads_result_columns {
    struct pour_result_column loads;
    struct pour_result_column shots_per_load;
    struct pour_result_column shots_in_last;
} pour_injector_loads_result_columns;
typedef struct pour_batch_need_input {
    size_t size;
    uint32_t pieces;
    uint32_t cavities;
    double shot_mass_g;
    double shot_density_g_per_ml;
    double injector_capacity_ml;
    double injector_residue_ml;
    uint32_t cleanings;
    double sprue_mass_g;
    double returned;
    double pot_film_g;
    double pot_heel_g;
    double rejects;
    double confidence;
} pour_batch_need_input;
typedef struct pour_batch_need_result {
    double total_mass_g;
    double drawn_mass_g;
    double returned_mass_g;
    double pieces_mass_g;
    double sprues_mass_g;
    double kept_mass_g;
    double in_cup_mass_g;
    uint32_t shots;
    uint32_t loads;
    uint32_t shots_per_load;
    uint32_t shots_in_last;
} pour_batch_need_result;
typedef struct pour_batch_need_columns {
    struct pour_column pieces;
    struct pour_column cavities;
    struct pour_column shot_mass_g;
    struct pour_column shot_density_g_per_ml;
    struct pour_column injector_capacity_ml;
    struct pour_column injector_residue_ml;
    struct pour_column cleanings;
    struct pour_column sprue_mass_g;
    struct pour_column returned;
    struct pour_column pot_film_g;
    struct pour_column pot_heel_g;
    struct pour_column rejects;
    struct pour_column confidence;
} pour_batch_need_columns;
typedef struct pour_batch_need_result_columns {
    struct pour_result_column total_mass_g;
    struct pour_result_column drawn_mass_g;
    struct pour_result_column returned_mass_g;
    struct pour_result_column pieces_mass_g;
    struct pour_result_column sprues_mass_g;
    struct pour_result_column kept_mass_g;
    struct pour_result_column in_cup_mass_g;
    struct pour_result_column shots;
    struct pour_result_column loads;
    struct pour_result_column shots_per_load;
    struct pour_result_column shots_in_last;
} pour_batch_need_result_columns;
typedef struct pour_base_to_mark_result {
    double base_volume_ml;
    double base_mass_g;
    double mix_mass_g;
    double surplus_mass_g;
    uint32_t extra_shots;
} pour_base_to_mark_result;
typedef struct pour_base_to_mark_columns {
    struct pour_column mix_needed_g;
    struct pour_column base_fraction;
    struct pour_column base_density_g_per_ml;
    struct pour_column cup_capacity_ml;
    struct pour_column cup_mark_ml;
    struct pour_column shot_mass_g;
} pour_base_to_mark_columns;
typedef struct pour_base_to_mark_result_columns {
    struct pour_result_column base_volume_ml;
    struct pour_result_column base_mass_g;
    struct pour_result_column mix_mass_g;
    struct pour_result_column surplus_mass_g;
    struct pour_result_column extra_shots;
} pour_base_to_mark_result_columns;
typedef struct pour_doses_row {
    double dose_step_g;
    double tolerance;
    double dose_ratio;
} pour_doses_row;
typedef struct pour_least_pot_result {
    double mix_mass_g;
    double base_mass_g;
} pour_least_pot_result;
typedef struct pour_reject_rate_result {
    double rejects;
    double rejects_min;
    double rejects_max;
} pour_reject_rate_result;
typedef struct pour_reject_rate_columns {
    struct pour_column cast_pieces;
    struct pour_column reject_count;
    struct pour_column confidence;
} pour_reject_rate_columns;
typedef struct pour_reject_rate_result_columns {
    struct pour_result_column rejects;
    struct pour_result_column rejects_min;
    struct pour_result_column rejects_max;
} pour_reject_rate_result_columns;
typedef struct pour_cups_row {
    double cup_mark_ml;
    double cup_capacity_ml;
} pour_cups_row;
typedef struct pour_bench_measure_input {
    size_t size;
    double mass_to_measure_g;
    double tolerance;
    double balance_readability_g;
    double balance_capacity_g;
    double balance_least_load_g;
    const double *spoons_ml;
    size_t spoons_count;
    const struct pour_cups_row *cups;
    size_t cups_count;
    double as_measured_density_g_per_ml;
    double drop_mass_g;
} pour_bench_measure_input;
typedef struct pour_bench_measure_result {
    double mass_g;
    double deviation;
    int32_t tool;
    uint32_t acts;
    uint32_t drops;
    uint32_t spoonfuls[8];
    uint32_t cup;
    uint32_t cup_fillings;
    uint32_t cup_mark;
} pour_bench_measure_result;
typedef struct pour_sink_rate_input {
    size_t size;
    double piece_density_g_per_ml;
    double piece_volume_ml;
    double diameter_mm;
    double water_temperature_celsius;
    double length_mm;
    int32_t shape;
    double hook_mass_g;
    double hook_volume_ml;
    double salinity_practical;
    double salinity_absolute;
    double density_uncertainty_g_per_ml;
    double depth_m;
    double drop_depth_m;
    double drop_time_s;
    double drop_density_g_per_ml;
} pour_sink_rate_input;
typedef struct pour_sink_rate_result {
    double sink_rate_cm_per_s;
    double sink_rate_min_cm_per_s;
    double sink_rate_max_cm_per_s;
    int32_t motion;
    double reynolds;
    double drag_coefficient;
    double sink_time_s;
} pour_sink_rate_result;
typedef struct pour_sink_rate_columns {
    struct pour_column piece_density_g_per_ml;
    struct pour_column piece_volume_ml;
    struct pour_column diameter_mm;
    struct pour_column water_temperature_celsius;
    struct pour_column length_mm;
    int32_t shape;
    struct pour_column hook_mass_g;
    struct pour_column hook_volume_ml;
    struct pour_column salinity_practical;
    struct pour_column salinity_absolute;
    struct pour_column density_uncertainty_g_per_ml;
    struct pour_column depth_m;
    struct pour_column drop_depth_m;
    struct pour_column drop_time_s;
    struct pour_column drop_density_g_per_ml;
} pour_sink_rate_columns;
typedef struct pour_sink_rate_result_columns {
    struct pour_result_column sink_rate_cm_per_s;
    struct pour_result_column sink_rate_min_cm_per_s;
    struct pour_result_column sink_rate_max_cm_per_s;
    struct pour_result_column motion;
    struct pour_result_column reynolds;
    struct pour_result_column drag_coefficient;
    struct pour_result_column sink_time_s;
} pour_sink_rate_result_columns;
typedef struct pour_density_for_sink_rate_input {
    size_t size;
    double sink_rate_cm_per_s;
    double piece_volume_ml;
    double diameter_mm;
    double water_temperature_celsius;
    double length_mm;
    int32_t shape;
    double hook_mass_g;
    double hook_volume_ml;
    double salinity_practical;
    double salinity_absolute;
    double drop_depth_m;
    double drop_time_s;
    double drop_density_g_per_ml;
} pour_density_for_sink_rate_input;
typedef struct pour_density_for_sink_rate_columns {
    struct pour_column sink_rate_cm_per_s;
    struct pour_column piece_volume_ml;
    struct pour_column diameter_mm;
    struct pour_column water_temperature_celsius;
    struct pour_column length_mm;
    int32_t shape;
    struct pour_column hook_mass_g;
    struct pour_column hook_volume_ml;
    struct pour_column salinity_practical;
    struct pour_column salinity_absolute;
    struct pour_column drop_depth_m;
    struct pour_column drop_time_s;
    struct pour_column drop_density_g_per_ml;
} pour_density_for_sink_rate_columns;
typedef struct pour_density_for_sink_rate_result_columns {
    struct pour_result_column piece_density_g_per_ml;
} pour_density_for_sink_rate_result_columns;
typedef struct pour_points_row {
    double point_ratio;
    double point_hardness;
} pour_points_row;
typedef struct pour_salted_points_row {
    double point_salt;
    double point_softener;
} pour_salted_points_row;
typedef struct pour_water_density_columns {
    struct pour_column water_temperature_celsius;
} pour_water_density_columns;
typedef struct pour_water_density_result_columns {
    struct pour_result_column density_g_per_ml;
} pour_water_density_result_columns;
typedef struct pour_cavity_of_water_columns {
    struct pour_column water_mass_g;
    struct pour_column water_temperature_celsius;
    struct pour_column air_pressure_kpa;
} pour_cavity_of_water_columns;
typedef struct pour_cavity_of_water_result_columns {
    struct pour_result_column cavity_volume_ml;
} pour_cavity_of_water_result_columns;
typedef struct pour_standard_pressure_columns {
    struct pour_column altitude_m;
} pour_standard_pressure_columns;
typedef struct pour_standard_pressure_result_columns {
    struct pour_result_column station_pressure_kpa;
} pour_standard_pressure_result_columns;
typedef struct pour_station_pressure_columns {
    struct pour_column reported_pressure_kpa;
    struct pour_column altitude_m;
} pour_station_pressure_columns;
typedef struct pour_station_pressure_result_columns {
    struct pour_result_column station_pressure_kpa;
} pour_station_pressure_result_columns;
typedef struct pour_swollen_volume_input {
    size_t size;
    double liquid_volume_ml;
    double entrained_air;
    double station_pressure_kpa;
    double gauge_vacuum_kpa;
    double absolute_pressure_kpa;
    double dial_tolerance_kpa;
    double vapor_pressure_kpa;
    double damp_at_celsius;
} pour_swollen_volume_input;
typedef struct pour_swollen_volume_result {
    double swollen_volume_ml;
    double standing_volume_ml;
    double absolute_pressure_kpa;
} pour_swollen_volume_result;
typedef struct pour_swollen_volume_columns {
    struct pour_column liquid_volume_ml;
    struct pour_column entrained_air;
    struct pour_column station_pressure_kpa;
    struct pour_column gauge_vacuum_kpa;
    struct pour_column absolute_pressure_kpa;
    struct pour_column dial_tolerance_kpa;
    struct pour_column vapor_pressure_kpa;
    struct pour_column damp_at_celsius;
} pour_swollen_volume_columns;
typedef struct pour_swollen_volume_result_columns {
    struct pour_result_column swollen_volume_ml;
    struct pour_result_column standing_volume_ml;
    struct pour_result_column absolute_pressure_kpa;
} pour_swollen_volume_result_columns;
typedef struct pour_entrained_air_input {
    size_t size;
    double rise;
    double station_pressure_kpa;
    double gauge_vacuum_kpa;
    double absolute_pressure_kpa;
    double dial_tolerance_kpa;
    double vapor_pressure_kpa;
    double damp_at_celsius;
} pour_entrained_air_input;
typedef struct pour_entrained_air_columns {
    struct pour_column rise;
    struct pour_column station_pressure_kpa;
    struct pour_column gauge_vacuum_kpa;
    struct pour_column absolute_pressure_kpa;
    struct pour_column dial_tolerance_kpa;
    struct pour_column vapor_pressure_kpa;
    struct pour_column damp_at_celsius;
} pour_entrained_air_columns;
typedef struct pour_entrained_air_result_columns {
    struct pour_result_column entrained_air;
} pour_entrained_air_result_columns;
typedef struct pour_degas_vessel_input {
    size_t size;
    double liquid_volume_ml;
    double entrained_air;
    double station_pressure_kpa;
    double gauge_vacuum_kpa;
    double absolute_pressure_kpa;
    double dial_tolerance_kpa;
    double vapor_pressure_kpa;
    double damp_at_celsius;
    double vessel_spare;
    double vessel_brim_ml;
    double vessel_mark_ml;
} pour_degas_vessel_input;
typedef struct pour_degas_vessel_result {
    double vessel_volume_ml;
    double fill_mark_ml;
    uint32_t fills;
    double fill_level_ml;
    double fill_swollen_ml;
} pour_degas_vessel_result;
typedef struct pour_degas_vessel_columns {
    struct pour_column liquid_volume_ml;
    struct pour_column entrained_air;
    struct pour_column station_pressure_kpa;
    struct pour_column gauge_vacuum_kpa;
    struct pour_column absolute_pressure_kpa;
    struct pour_column dial_tolerance_kpa;
    struct pour_column vapor_pressure_kpa;
    struct pour_column damp_at_celsius;
    struct pour_column vessel_spare;
    struct pour_column vessel_brim_ml;
    struct pour_column vessel_mark_ml;
} pour_degas_vessel_columns;
typedef struct pour_degas_vessel_result_columns {
    struct pour_result_column vessel_volume_ml;
    struct pour_result_column fill_mark_ml;
    struct pour_result_column fills;
    struct pour_result_column fill_level_ml;
    struct pour_result_column fill_swollen_ml;
} pour_degas_vessel_result_columns;
typedef struct pour_flake_count_result {
    double particles;
    double area_cm2;
} pour_flake_count_result;
typedef struct pour_flake_swap_input {
    size_t size;
    const char *cut;
    double thickness_um;
    double film_density_g_per_ml;
    double flake_dose_g;
    const char *other_cut;
    double other_thickness_um;
    double other_film_density_g_per_ml;
    double other_as_scooped_g_per_ml;
    int32_t alike;
} pour_flake_swap_input;
typedef struct pour_flake_swap_result {
    double mass_g;
    double scoop_ml;
    double count_ratio;
    double area_ratio;
} pour_flake_swap_result;
typedef struct pour_color_difference_columns {
    struct pour_column lightness;
    struct pour_column a;
    struct pour_column b;
    struct pour_column other_lightness;
    struct pour_column other_a;
    struct pour_column other_b;
} pour_color_difference_columns;
typedef struct pour_color_difference_result_columns {
    struct pour_result_column difference;
} pour_color_difference_result_columns;
typedef struct pour_readings_row {
    double reading_time_s;
    double reading_temperature_celsius;
} pour_readings_row;
typedef struct pour_budget_left_result {
    double budget_s;
    double left_s;
    double overspent_s;
} pour_budget_left_result;
typedef struct pour_budget_left_columns {
    struct pour_column heat_budget_s;
    struct pour_column equivalent_time_s;
    struct pour_column budget_with;
    struct pour_column stabilizer_dose;
    struct pour_column extra_time_s;
    struct pour_column extra_most;
} pour_budget_left_columns;
typedef struct pour_budget_left_result_columns {
    struct pour_result_column budget_s;
    struct pour_result_column left_s;
    struct pour_result_column overspent_s;
} pour_budget_left_result_columns;
typedef struct pour_timings_row {
    double timed_mass_g;
    double timed_from_celsius;
    double timed_to_celsius;
    double timed_time_s;
} pour_timings_row;
typedef struct pour_heat_time_input {
    size_t size;
    double pot_mass_g;
    double specific_heat_j_per_g_k;
    double heated_from_celsius;
    double heated_to_celsius;
    const struct pour_timings_row *timings;
    size_t timings_count;
    double oven_power_w;
    double setting;
    double specific_heat_rise_per_kelvin;
    double timed_specific_heat_j_per_g_k;
    double vessel_mass_g;
    double vessel_specific_heat_j_per_g_k;
} pour_heat_time_input;
typedef struct pour_heat_time_result {
    double heat_time_s;
    double heat_time_uncertainty_s;
    double power_w;
    double beyond;
} pour_heat_time_result;
typedef struct pour_next_burst_input {
    size_t size;
    double pot_mass_g;
    double specific_heat_j_per_g_k;
    double reading_celsius;
    double window_bottom_celsius;
    double window_top_celsius;
    const struct pour_timings_row *timings;
    size_t timings_count;
    double oven_power_w;
    double setting;
    double specific_heat_rise_per_kelvin;
    double timed_specific_heat_j_per_g_k;
    double vessel_mass_g;
    double vessel_specific_heat_j_per_g_k;
    double aim_celsius;
    double thermometer_kelvin;
    double burst_step_s;
    double longest_burst_s;
    double oven_turn_s;
    int32_t measures;
} pour_next_burst_input;
typedef struct pour_next_burst_result {
    double burst_s;
    double expected_celsius;
    double shoot_from_celsius;
    double shoot_to_celsius;
    uint32_t bursts;
    double oven_time_s;
} pour_next_burst_result;
typedef struct pour_stays_hot_input {
    size_t size;
    double pot_mass_g;
    double hot_from_celsius;
    double hot_to_celsius;
    double watched_mass_g;
    double watched_from_celsius;
    double watched_to_celsius;
    double watched_time_s;
    double room_celsius;
    double stood_s;
} pour_stays_hot_input;
typedef struct pour_stays_hot_result {
    double time_constant_s;
    double hot_for_s;
    double half_full_s;
    double after_celsius;
} pour_stays_hot_result;
typedef struct pour_stays_hot_columns {
    struct pour_column pot_mass_g;
    struct pour_column hot_from_celsius;
    struct pour_column hot_to_celsius;
    struct pour_column watched_mass_g;
    struct pour_column watched_from_celsius;
    struct pour_column watched_to_celsius;
    struct pour_column watched_time_s;
    struct pour_column room_celsius;
    struct pour_column stood_s;
} pour_stays_hot_columns;
typedef struct pour_stays_hot_result_columns {
    struct pour_result_column time_constant_s;
    struct pour_result_column hot_for_s;
    struct pour_result_column half_full_s;
    struct pour_result_column after_celsius;
} pour_stays_hot_result_columns;
typedef struct pour_clock_runs_row {
    double pot_shots;
    double shot_mass_g;
    double hands_s;
    double sets_s;
    double molds;
} pour_clock_runs_row;
typedef struct pour_pot_heats_input {
    size_t size;
    double pot_mass_g;
    const struct pour_clock_runs_row *clock_runs;
    size_t clock_runs_count;
    double hot_for_s;
    double clock_from_celsius;
    double clock_to_celsius;
    double watched_mass_g;
    double watched_from_celsius;
    double watched_to_celsius;
    double watched_time_s;
    double room_celsius;
    double oven_time_s;
} pour_pot_heats_input;
typedef struct pour_pot_heats_result {
    uint32_t reheats;
    uint32_t first_shots;
    double shooting_time_s;
    double total_time_s;
} pour_pot_heats_result;
typedef struct pour_setting_time_input {
    size_t size;
    int32_t section_shape;
    double section_thickness_mm;
    double shot_at_celsius;
    double mold_at_celsius;
    double take_out_celsius;
    int32_t piece_point;
    double diffusivity_m2_per_s;
    double shot_mass_g;
    double shot_specific_heat_j_per_g_k;
    double mold_mass_g;
    double mold_specific_heat_j_per_g_k;
    double hands_s;
    uint32_t molds;
} pour_setting_time_input;
typedef struct pour_setting_time_result {
    double setting_time_s;
    double setting_time_min_s;
    double setting_time_max_s;
    double warms_kelvin;
    uint32_t in_a_row;
    double shot_every_s;
} pour_setting_time_result;
typedef struct pour_setting_time_columns {
    int32_t section_shape;
    struct pour_column section_thickness_mm;
    struct pour_column shot_at_celsius;
    struct pour_column mold_at_celsius;
    struct pour_column take_out_celsius;
    int32_t piece_point;
    struct pour_column diffusivity_m2_per_s;
    struct pour_column shot_mass_g;
    struct pour_column shot_specific_heat_j_per_g_k;
    struct pour_column mold_mass_g;
    struct pour_column mold_specific_heat_j_per_g_k;
    struct pour_column hands_s;
    struct pour_column molds;
} pour_setting_time_columns;
typedef struct pour_setting_time_result_columns {
    struct pour_result_column setting_time_s;
    struct pour_result_column setting_time_min_s;
    struct pour_result_column setting_time_max_s;
    struct pour_result_column warms_kelvin;
    struct pour_result_column in_a_row;
    struct pour_result_column shot_every_s;
} pour_setting_time_result_columns;
typedef struct pour_stir_every_input {
    size_t size;
    double grain_mm;
    double grain_density_g_per_ml;
    double melt_density_g_per_ml;
    double melt_depth_mm;
    double melt_viscosity_min_mpa_s;
    double melt_viscosity_max_mpa_s;
    double solids_share;
    double unstirred;
} pour_stir_every_input;
typedef struct pour_stir_every_result {
    double stir_every_s;
    double stir_every_max_s;
    double settling_min_cm_per_s;
    double settling_max_cm_per_s;
} pour_stir_every_result;
typedef struct pour_stir_every_columns {
    struct pour_column grain_mm;
    struct pour_column grain_density_g_per_ml;
    struct pour_column melt_density_g_per_ml;
    struct pour_column melt_depth_mm;
    struct pour_column melt_viscosity_min_mpa_s;
    struct pour_column melt_viscosity_max_mpa_s;
    struct pour_column solids_share;
    struct pour_column unstirred;
} pour_stir_every_columns;
typedef struct pour_stir_every_result_columns {
    struct pour_result_column stir_every_s;
    struct pour_result_column stir_every_max_s;
    struct pour_result_column settling_min_cm_per_s;
    struct pour_result_column settling_max_cm_per_s;
} pour_stir_every_result_columns;
typedef struct pour_viscosity_of_ball_columns {
    struct pour_column ball_diameter_mm;
    struct pour_column ball_density_g_per_ml;
    struct pour_column melt_density_g_per_ml;
    struct pour_column ball_depth_mm;
    struct pour_column ball_time_s;
} pour_viscosity_of_ball_columns;
typedef struct pour_viscosity_of_ball_result_columns {
    struct pour_result_column melt_viscosity_mpa_s;
} pour_viscosity_of_ball_result_columns;
typedef struct pour_cavity_of_weights_input {
    size_t size;
    const double *weights_g;
    size_t weights_count;
    double balance_readability_g;
    double cold_density_g_per_ml;
    double hot_density_g_per_ml;
    double voids;
    double feed;
    double feed_uncertainty;
} pour_cavity_of_weights_input;
typedef struct pour_cavity_of_weights_result {
    double cavity_volume_ml;
    double cavity_volume_uncertainty_ml;
    double mean_g;
    double deviation_g;
} pour_cavity_of_weights_result;
typedef struct pour_feed_of_weights_input {
    size_t size;
    const double *weights_g;
    size_t weights_count;
    double balance_readability_g;
    double cold_density_g_per_ml;
    double cavity_volume_ml;
    double hot_density_g_per_ml;
    double voids;
    double volume_uncertainty_ml;
} pour_feed_of_weights_input;
typedef struct pour_feed_of_weights_result {
    double feed;
    double feed_uncertainty;
    double mean_g;
    double deviation_g;
} pour_feed_of_weights_result;
typedef struct pour_drops_weighed_row {
    double weighed_count;
    double weighed_mass_g;
} pour_drops_weighed_row;
typedef struct pour_drop_of_weighings_result {
    double drop_mass_g;
    double drop_mass_uncertainty_g;
    double scatter_g;
} pour_drop_of_weighings_result;
typedef struct pour_scoops_weighed_row {
    double weighed_count;
    double weighed_mass_g;
} pour_scoops_weighed_row;
typedef struct pour_as_scooped_of_weighings_result {
    double as_scooped_g_per_ml;
    double as_scooped_uncertainty_g_per_ml;
    double spoonful_g;
} pour_as_scooped_of_weighings_result;
typedef struct pour_injector_weighed_row {
    double clean_mass_g;
    double emptied_mass_g;
} pour_injector_weighed_row;
typedef struct pour_residue_of_weighings_result {
    double injector_residue_ml;
    double injector_residue_uncertainty_ml;
    double residue_mass_g;
} pour_residue_of_weighings_result;
typedef struct pour_price_columns {
    struct pour_column cost;
    struct pour_column cost_margin;
} pour_price_columns;
typedef struct pour_price_result_columns {
    struct pour_result_column price;
} pour_price_result_columns;
typedef struct pour_conversion {
    double times;
    double plus;
    double over;
    double least;
} pour_conversion;
typedef struct pour_table {
    const double *start;
    ptrdiff_t row_stride;
    ptrdiff_t part_stride;
} pour_table;
typedef struct pour_material {
    size_t size;
    const char *name;
    double density_g_per_ml;
    double fused_g_per_ml;
    double as_scooped_g_per_ml;
    double drop_mass_g;
    double expansion_per_kelvin;
    int32_t kind;
} pour_material;
uint32_t pour_abi_version(void);
const char *pour_version(void);
int32_t pour_error_status(const struct pour_error *error);
size_t pour_error_count(const struct pour_error *error);
const char *pour_error_code(const struct pour_error *error, size_t index);
const char *pour_error_path(const struct pour_error *error,
                            size_t index);
const char *pour_error_message(const struct pour_error *error, size_t index);
const char *pour_error_help(const struct pour_error *error, size_t index);
const char *pour_error_text(const struct pour_error *error);
const char *pour_error_json(const struct pour_error *error);
void pour_error_free(struct pour_error *error);
int32_t pour_convert(const char *amount,
                     const char *to,
                     int32_t measures,
                     double *value,
                     struct pour_error **error);
int32_t pour_convert_number(double value,
                            const char *unit,
                            const char *to,
                            int32_t measures,
                            double *result_value,
                            struct pour_error **error);
int32_t pour_dose_mass(const char *amount,
                       int32_t kind,
                       double material_density_g_per_ml,
                       double as_scooped_g_per_ml,
                       double drop_mass_g,
                       int32_t measures,
                       double *mass_g,
                       struct pour_error **error);
int32_t pour_mass_of_volume(double volume_ml,
                            double density_g_per_ml,
                            double *mass_g,
                            struct pour_error **error);
int32_t pour_mass_of_volume_n(size_t rows,
                              const struct pour_mass_of_volume_columns *columns,
                              const struct pour_mass_of_volume_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);
int32_t pour_volume_of_mass(double mass_g,
                            double density_g_per_ml,
                            double *volume_ml,
                            struct pour_error **error);
int32_t pour_volume_of_mass_n(size_t rows,
                              const struct pour_volume_of_mass_columns *columns,
                              const struct pour_volume_of_mass_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);
int32_t pour_density_of_parts(const struct pour_parts_row *parts,
                              size_t parts_count,
                              double voids,
                              double *density_g_per_ml,
                              struct pour_error **error);
int32_t pour_mix_share(const struct pour_parts_row *parts,
                       size_t parts_count,
                       uint32_t part,
                       struct pour_mix_share_result *result,
                       struct pour_error **error);
int32_t pour_salt_convert(const struct pour_salt_convert_input *input,
                          struct pour_salt_convert_result *result,
                          struct pour_error **error);
int32_t pour_salt_convert_n(size_t rows,
                            const struct pour_salt_convert_columns *columns,
                            const struct pour_salt_convert_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);
int32_t pour_salt_mass(const struct pour_salt_mass_input *input,
                       struct pour_salt_mass_result *result,
                       struct pour_error **error);
int32_t pour_salt_mass_n(size_t rows,
                         const struct pour_salt_mass_columns *columns,
                         const struct pour_salt_mass_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);
int32_t pour_salt_reach(const struct pour_salt_reach_input *input,
                        struct pour_salt_reach_result *result,
                        struct pour_error **error);
int32_t pour_salt_reach_n(size_t rows,
                          const struct pour_salt_reach_columns *columns,
                          const struct pour_salt_reach_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);
int32_t pour_salt_for_density(double base_volume_ml,
                              double base_density_g_per_ml,
                              double salt_density_g_per_ml,
                              double finished_density_g_per_ml,
                              double voids,
                              double most_solids,
                              double *salt_mass_g,
                              struct pour_error **error);
int32_t pour_salt_for_density_n(size_t rows,
                                const struct pour_salt_for_density_columns *columns,
                                const struct pour_salt_for_density_result_columns *results,
                                int32_t *statuses,
                                struct pour_error **error);
int32_t pour_salt_for_sink_rate(const struct pour_salt_for_sink_rate_input *input,
                                struct pour_salt_for_sink_rate_result *result,
                                struct pour_error **error);
int32_t pour_salt_for_sink_rate_n(size_t rows,
                                  const struct pour_salt_for_sink_rate_columns *columns,
                                  const struct pour_salt_for_sink_rate_result_columns *results,
                                  int32_t *statuses,
                                  struct pour_error **error);
int32_t pour_shot_fill(const struct pour_shot_fill_input *input,
                       struct pour_shot_fill_result *result,
                       struct pour_error **error);
int32_t pour_shot_fill_n(size_t rows,
                         const struct pour_shot_fill_columns *columns,
                         const struct pour_shot_fill_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);
int32_t pour_piece_mass(double cavity_volume_ml,
                        double cold_density_g_per_ml,
                        double hot_density_g_per_ml,
                        double voids,
                        double feed,
                        struct pour_piece_mass_result *result,
                        struct pour_error **error);
int32_t pour_piece_mass_n(size_t rows,
                          const struct pour_piece_mass_columns *columns,
                          const struct pour_piece_mass_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);
int32_t pour_shots(uint32_t pieces,
                   uint32_t cavities,
                   double rejects,
                   double confidence,
                   struct pour_shots_result *result,
                   struct pour_error **error);
int32_t pour_shots_n(size_t rows,
                     const struct pour_shots_columns *columns,
                     const struct pour_shots_result_columns *results,
                     int32_t *statuses,
                     struct pour_error **error);
int32_t pour_injector_loads(uint32_t shots,
                            double shot_mass_g,
                            double shot_density_g_per_ml,
                            double injector_capacity_ml,
                            double injector_residue_ml,
                            struct pour_injector_loads_result *result,
                            struct pour_error **error);
int32_t pour_injector_loads_n(size_t rows,
                              const struct pour_injector_loads_columns *columns,
                              const struct pour_injector_loads_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);
int32_t pour_batch_need(const struct pour_batch_need_input *input,
                        struct pour_batch_need_result *result,
                        struct pour_error **error);
int32_t pour_batch_need_n(size_t rows,
                          const struct pour_batch_need_columns *columns,
                          const struct pour_batch_need_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);
int32_t pour_base_to_mark(double mix_needed_g,
                          double base_fraction,
                          double base_density_g_per_ml,
                          double cup_capacity_ml,
                          double cup_mark_ml,
                          double shot_mass_g,
                          struct pour_base_to_mark_result *result,
                          struct pour_error **error);
int32_t pour_base_to_mark_n(size_t rows,
                            const struct pour_base_to_mark_columns *columns,
                            const struct pour_base_to_mark_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);
int32_t pour_least_pot(const struct pour_doses_row *doses,
                       size_t doses_count,
                       double base_fraction,
                       double oven_least_g,
                       double injector_least_g,
                       struct pour_least_pot_result *result,
                       struct pour_error **error);
int32_t pour_reject_rate(uint32_t cast_pieces,
                         uint32_t reject_count,
                         double confidence,
                         struct pour_reject_rate_result *result,
                         struct pour_error **error);
int32_t pour_reject_rate_n(size_t rows,
                           const struct pour_reject_rate_columns *columns,
                           const struct pour_reject_rate_result_columns *results,
                           int32_t *statuses,
                           struct pour_error **error);
int32_t pour_bench_measure(const struct pour_bench_measure_input *input,
                           struct pour_bench_measure_result *result,
                           struct pour_error **error);
int32_t pour_sink_rate(const struct pour_sink_rate_input *input,
                       struct pour_sink_rate_result *result,
                       struct pour_error **error);
int32_t pour_sink_rate_n(size_t rows,
                         const struct pour_sink_rate_columns *columns,
                         const struct pour_sink_rate_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);
int32_t pour_density_for_sink_rate(const struct pour_density_for_sink_rate_input *input,
                                   double *piece_density_g_per_ml,
                                   struct pour_error **error);
int32_t pour_density_for_sink_rate_n(size_t rows,
                                     const struct pour_density_for_sink_rate_columns *columns,
                                     const struct pour_density_for_sink_rate_result_columns *results,
                                     int32_t *statuses,
                                     struct pour_error **error);
int32_t pour_hardness(const struct pour_points_row *points,
                      size_t points_count,
                      int32_t scale,
                      double softener_ratio,
                      double *hardness,
                      struct pour_error **error);
int32_t pour_softener_ratio(const struct pour_points_row *points,
                            size_t points_count,
                            int32_t scale,
                            double hardness,
                            double *softener_ratio,
                            struct pour_error **error);
int32_t pour_salted_softener(const struct pour_salted_points_row *salted_points,
                             size_t salted_points_count,
                             double salt_of_base,
                             double *softener_ratio,
                             struct pour_error **error);
int32_t pour_water_density(double water_temperature_celsius,
                           double *density_g_per_ml,
                           struct pour_error **error);
int32_t pour_water_density_n(size_t rows,
                             const struct pour_water_density_columns *columns,
                             const struct pour_water_density_result_columns *results,
                             int32_t *statuses,
                             struct pour_error **error);
int32_t pour_cavity_of_water(double water_mass_g,
                             double water_temperature_celsius,
                             double air_pressure_kpa,
                             double *cavity_volume_ml,
                             struct pour_error **error);
int32_t pour_cavity_of_water_n(size_t rows,
                               const struct pour_cavity_of_water_columns *columns,
                               const struct pour_cavity_of_water_result_columns *results,
                               int32_t *statuses,
                               struct pour_error **error);
int32_t pour_standard_pressure(double altitude_m,
                               double *station_pressure_kpa,
                               struct pour_error **error);
int32_t pour_standard_pressure_n(size_t rows,
                                 const struct pour_standard_pressure_columns *columns,
                                 const struct pour_standard_pressure_result_columns *results,
                                 int32_t *statuses,
                                 struct pour_error **error);
int32_t pour_station_pressure(double reported_pressure_kpa,
                              double altitude_m,
                              double *station_pressure_kpa,
                              struct pour_error **error);
int32_t pour_station_pressure_n(size_t rows,
                                const struct pour_station_pressure_columns *columns,
                                const struct pour_station_pressure_result_columns *results,
                                int32_t *statuses,
                                struct pour_error **error);
int32_t pour_swollen_volume(const struct pour_swollen_volume_input *input,
                            struct pour_swollen_volume_result *result,
                            struct pour_error **error);
int32_t pour_swollen_volume_n(size_t rows,
                              const struct pour_swollen_volume_columns *columns,
                              const struct pour_swollen_volume_result_columns *results,
                              int32_t *statuses,
                              struct pour_error **error);
int32_t pour_entrained_air(const struct pour_entrained_air_input *input,
                           double *entrained_air,
                           struct pour_error **error);
int32_t pour_entrained_air_n(size_t rows,
                             const struct pour_entrained_air_columns *columns,
                             const struct pour_entrained_air_result_columns *results,
                             int32_t *statuses,
                             struct pour_error **error);
int32_t pour_degas_vessel(const struct pour_degas_vessel_input *input,
                          struct pour_degas_vessel_result *result,
                          struct pour_error **error);
int32_t pour_degas_vessel_n(size_t rows,
                            const struct pour_degas_vessel_columns *columns,
                            const struct pour_degas_vessel_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);
int32_t pour_flake_count(const char *cut,
                         double thickness_um,
                         double film_density_g_per_ml,
                         double flake_dose_g,
                         struct pour_flake_count_result *result,
                         struct pour_error **error);
int32_t pour_flake_swap(const struct pour_flake_swap_input *input,
                        struct pour_flake_swap_result *result,
                        struct pour_error **error);
int32_t pour_color_difference(double lightness,
                              double a,
                              double b,
                              double other_lightness,
                              double other_a,
                              double other_b,
                              double *difference,
                              struct pour_error **error);
int32_t pour_color_difference_n(size_t rows,
                                const struct pour_color_difference_columns *columns,
                                const struct pour_color_difference_result_columns *results,
                                int32_t *statuses,
                                struct pour_error **error);
int32_t pour_equivalent_time(const struct pour_readings_row *readings,
                             size_t readings_count,
                             double activation_energy_kj_per_mol,
                             double reference_temperature_celsius,
                             double *equivalent_time_s,
                             struct pour_error **error);
int32_t pour_budget_left(double heat_budget_s,
                         double equivalent_time_s,
                         double budget_with,
                         double stabilizer_dose,
                         double extra_time_s,
                         double extra_most,
                         struct pour_budget_left_result *result,
                         struct pour_error **error);
int32_t pour_budget_left_n(size_t rows,
                           const struct pour_budget_left_columns *columns,
                           const struct pour_budget_left_result_columns *results,
                           int32_t *statuses,
                           struct pour_error **error);
int32_t pour_heat_time(const struct pour_heat_time_input *input,
                       struct pour_heat_time_result *result,
                       struct pour_error **error);
int32_t pour_next_burst(const struct pour_next_burst_input *input,
                        struct pour_next_burst_result *result,
                        struct pour_error **error);
int32_t pour_stays_hot(const struct pour_stays_hot_input *input,
                       struct pour_stays_hot_result *result,
                       struct pour_error **error);
int32_t pour_stays_hot_n(size_t rows,
                         const struct pour_stays_hot_columns *columns,
                         const struct pour_stays_hot_result_columns *results,
                         int32_t *statuses,
                         struct pour_error **error);
int32_t pour_pot_heats(const struct pour_pot_heats_input *input,
                       struct pour_pot_heats_result *result,
                       struct pour_error **error);
int32_t pour_setting_time(const struct pour_setting_time_input *input,
                          struct pour_setting_time_result *result,
                          struct pour_error **error);
int32_t pour_setting_time_n(size_t rows,
                            const struct pour_setting_time_columns *columns,
                            const struct pour_setting_time_result_columns *results,
                            int32_t *statuses,
                            struct pour_error **error);
int32_t pour_stir_every(const struct pour_stir_every_input *input,
                        struct pour_stir_every_result *result,
                        struct pour_error **error);
int32_t pour_stir_every_n(size_t rows,
                          const struct pour_stir_every_columns *columns,
                          const struct pour_stir_every_result_columns *results,
                          int32_t *statuses,
                          struct pour_error **error);
int32_t pour_viscosity_of_ball(double ball_diameter_mm,
                               double ball_density_g_per_ml,
                               double melt_density_g_per_ml,
                               double ball_depth_mm,
                               double ball_time_s,
                               double *melt_viscosity_mpa_s,
                               struct pour_error **error);
int32_t pour_viscosity_of_ball_n(size_t rows,
                                 const struct pour_viscosity_of_ball_columns *columns,
                                 const struct pour_viscosity_of_ball_result_columns *results,
                                 int32_t *statuses,
                                 struct pour_error **error);
int32_t pour_cavity_of_weights(const struct pour_cavity_of_weights_input *input,
                               struct pour_cavity_of_weights_result *result,
                               struct pour_error **error);
int32_t pour_feed_of_weights(const struct pour_feed_of_weights_input *input,
                             struct pour_feed_of_weights_result *result,
                             struct pour_error **error);
int32_t pour_drop_of_weighings(const struct pour_drops_weighed_row *drops_weighed,
                               size_t drops_weighed_count,
                               double balance_readability_g,
                               struct pour_drop_of_weighings_result *result,
                               struct pour_error **error);
int32_t pour_as_scooped_of_weighings(const struct pour_scoops_weighed_row *scoops_weighed,
                                     size_t scoops_weighed_count,
                                     double spoon_volume_ml,
                                     double balance_readability_g,
                                     double volume_uncertainty_ml,
                                     struct pour_as_scooped_of_weighings_result *result,
                                     struct pour_error **error);
int32_t pour_residue_of_weighings(const struct pour_injector_weighed_row *injector_weighed_g,
                                  size_t injector_weighed_count,
                                  double residue_density_g_per_ml,
                                  double balance_readability_g,
                                  double density_uncertainty_g_per_ml,
                                  struct pour_residue_of_weighings_result *result,
                                  struct pour_error **error);
int32_t pour_price(uint32_t cost,
                   double cost_margin,
                   uint32_t *price,
                   struct pour_error **error);
int32_t pour_price_n(size_t rows,
                     const struct pour_price_columns *columns,
                     const struct pour_price_result_columns *results,
                     int32_t *statuses,
                     struct pour_error **error);
int32_t pour_conversion_between(const char *from,
                                const char *to,
                                int32_t measures,
                                struct pour_conversion *conversion,
                                struct pour_error **error);
int32_t pour_convert_with(const struct pour_conversion *conversion,
                          double value,
                          double *converted,
                          struct pour_error **error);
int32_t pour_convert_with_n(const struct pour_conversion *conversion,
                            size_t rows,
                            struct pour_column values,
                            struct pour_result_column converted,
                            int32_t *statuses,
                            struct pour_error **error);
int32_t pour_convert_texts_n(size_t rows,
                             const char *texts,
                             const int64_t *offsets,
                             const char *to,
                             int32_t measures,
                             struct pour_result_column converted,
                             int32_t *statuses,
                             struct pour_error **error);
int32_t pour_density_of_parts_n(size_t rows,
                                size_t parts,
                                struct pour_table masses_g,
                                struct pour_table densities_g_per_ml,
                                struct pour_column voids,
                                struct pour_result_column density_g_per_ml,
                                int32_t *statuses,
                                struct pour_error **error);
char *pour_answer(const char *json);
int32_t pour_request(const char *json,
                     size_t len,
                     char **out,
                     size_t *out_len,
                     struct pour_error **error);
int32_t pour_schema(const char *name,
                    char **out,
                    size_t *out_len,
                    struct pour_error **error);
int32_t pour_lines(const char *lines,
                   size_t len,
                   char **out,
                   size_t *out_len,
                   size_t *refused,
                   struct pour_error **error);
void pour_string_free(char *text);
int32_t pour_book_from_json(const char *json,
                            size_t len,
                            struct pour_book **book,
                            struct pour_error **error);
void pour_book_free(struct pour_book *book);
int32_t pour_book_request(const struct pour_book *book,
                          const char *json,
                          size_t len,
                          char **out,
                          size_t *out_len,
                          struct pour_error **error);
int32_t pour_book_lines(const struct pour_book *book,
                        const char *lines,
                        size_t len,
                        char **out,
                        size_t *out_len,
                        size_t *refused,
                        struct pour_error **error);
int32_t pour_book_plan(const struct pour_book *book,
                       const char *orders_json,
                       size_t orders_len,
                       struct pour_plan **plan,
                       struct pour_error **error);
int32_t pour_book_plan_within(const struct pour_book *book,
                              const char *orders_json,
                              size_t orders_len,
                              uint32_t pots,
                              uint32_t thousand_steps,
                              int32_t (*stop)(void *user),
                              void *user,
                              struct pour_plan **plan,
                              struct pour_error **error);
int32_t pour_plan_from_json(const char *json,
                            size_t len,
                            struct pour_plan **plan,
                            struct pour_error **error);
int32_t pour_plan_request(const struct pour_plan *plan,
                          const char *json,
                          size_t len,
                          char **out,
                          size_t *out_len,
                          struct pour_error **error);
int32_t pour_plan_json(const struct pour_plan *plan,
                       char **out,
                       size_t *out_len,
                       struct pour_error **error);
int32_t pour_plan_sheet(const struct pour_plan *plan,
                        char **out,
                        size_t *out_len,
                        struct pour_error **error);
int32_t pour_plan_notes(const struct pour_plan *plan,
                        char **out,
                        size_t *out_len,
                        struct pour_error **error);
void pour_plan_free(struct pour_plan *plan);
int32_t pour_mix_of_book(const struct pour_book *book,
                         struct pour_mix **mix,
                         struct pour_error **error);
int32_t pour_mix_of_materials(const struct pour_material *materials,
                              size_t count,
                              struct pour_mix **mix,
                              struct pour_error **error);
int32_t pour_mix_add(struct pour_mix *mix,
                     const char *material,
                     double mass_g,
                     struct pour_error **error);
int32_t pour_mix_draw(struct pour_mix *mix,
                      double mass_g,
                      struct pour_mix **drawn,
                      struct pour_error **error);
int32_t pour_mix_merge(struct pour_mix *mix,
                       const struct pour_mix *other,
                       struct pour_error **error);
int32_t pour_mix_scale(struct pour_mix *mix, double factor, struct pour_error **error);
int32_t pour_mix_mass(const struct pour_mix *mix, double *mass_g, struct pour_error **error);
int32_t pour_mix_mass_of(const struct pour_mix *mix,
                         const char *material,
                         double *mass_g,
                         struct pour_error **error);
int32_t pour_mix_volume(const struct pour_mix *mix,
                        int32_t phase,
                        double temperature_celsius,
                        double *volume_ml,
                        struct pour_error **error);
int32_t pour_mix_density(const struct pour_mix *mix,
                         int32_t phase,
                         double temperature_celsius,
                         double voids,
                         double *density_g_per_ml,
                         struct pour_error **error);
void pour_mix_free(struct pour_mix *mix);
