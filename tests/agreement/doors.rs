//! Where a request takes the parameters of a calculation, and where its answer has the results: by the name of the
//! parameter, but for what a request takes in an object.

use pourwright::parameter::{Parameter, PlainUnit};
use pourwright::table::{Argument, Calculation};
use rust_decimal::Decimal;
use serde_json::{Map, Value as Json, json};

/// A calculation and its request.
pub(crate) struct Door {
    calculation: &'static str,
    /// Where parameters are that are not in the field of their name.
    places: &'static [(Parameter, &'static str)],
    /// What the request needs besides: always, or with the parameter.
    besides: &'static [(Option<Parameter>, &'static str, &'static str)],
    /// What the request does not take.
    without: &'static [Parameter],
    /// Results by their names in the table, and where the answer has them.
    pub(crate) results: &'static [(&'static str, &'static str)],
}

const SALT: &[(Parameter, &str)] = &[
    (Parameter::SaltDensity, "/salt/density"),
    (Parameter::SaltAsScooped, "/salt/as_scooped"),
    (Parameter::SaltExpansion, "/salt/expansion"),
    (Parameter::SoftenerPerSalt, "/salt_softener/per_salt"),
    (Parameter::SoftenerDensity, "/salt_softener/material/density"),
    (Parameter::SoftenerExpansion, "/salt_softener/material/expansion"),
    (Parameter::FinishedDensity, "/loading/finished_density"),
];
const SALT_BESIDES: &[(Option<Parameter>, &str, &str)] = &[
    (None, "/salt/kind", "salt"),
    (Some(Parameter::SoftenerDensity), "/salt_softener/material/kind", "softener"),
];
const VACUUM: &[(Parameter, &str)] = &[
    (Parameter::EntrainedAir, "/vacuum/entrained"),
    (Parameter::Rise, "/vacuum/rise"),
    (Parameter::GaugeVacuum, "/vacuum/gauge"),
    (Parameter::AbsolutePressure, "/vacuum/absolute"),
    (Parameter::DialTolerance, "/vacuum/dial_tolerance"),
];
const SINKING: &[(Parameter, &str)] = &[
    (Parameter::WaterTemperature, "/fished_water/temperature"),
    (Parameter::SalinityPractical, "/fished_water/salinity_practical"),
    (Parameter::SalinityAbsolute, "/fished_water/salinity_absolute"),
    (Parameter::HookMass, "/hook/mass"),
    (Parameter::HookVolume, "/hook/volume"),
    (Parameter::DensityUncertainty, "/piece_density/uncertainty"),
    (Parameter::DropDepth, "/body/drop/depth"),
    (Parameter::DropTime, "/body/drop/time"),
    (Parameter::DropDensity, "/body/drop/density"),
];
const FLAKE: &[(Parameter, &str)] = &[
    (Parameter::Cut, "/flake/cut"),
    (Parameter::Thickness, "/flake/thickness"),
    (Parameter::FilmDensity, "/flake/density"),
    (Parameter::OtherCut, "/other_flake/cut"),
    (Parameter::OtherThickness, "/other_flake/thickness"),
    (Parameter::OtherFilmDensity, "/other_flake/density"),
    (Parameter::OtherAsScooped, "/other_flake/as_scooped"),
];

const SALT_SINKING: &[(Parameter, &str)] = &[
    (Parameter::SaltDensity, "/salt/density"),
    (Parameter::SaltExpansion, "/salt/expansion"),
    (Parameter::SoftenerPerSalt, "/salt_softener/per_salt"),
    (Parameter::SoftenerDensity, "/salt_softener/material/density"),
    (Parameter::SoftenerExpansion, "/salt_softener/material/expansion"),
    (Parameter::SinkRate, "/loading/sink_rate"),
    (Parameter::WaterTemperature, "/salted_water/temperature"),
    (Parameter::SalinityPractical, "/salted_water/salinity_practical"),
    (Parameter::SalinityAbsolute, "/salted_water/salinity_absolute"),
    (Parameter::DropDepth, "/salted_body/drop/depth"),
    (Parameter::DropTime, "/salted_body/drop/time"),
    (Parameter::DropDensity, "/salted_body/drop/density"),
];

macro_rules! doors {
    ($($name:literal $($places:expr)?; $(besides $besides:expr;)? $(without $without:expr;)? gives [$($result:literal = $at:literal),+];)*) => {
        const DOORS: &[Door] = &[$(Door {
            calculation: $name,
            places: doors!(@or $($places)?),
            besides: doors!(@or $($besides)?),
            without: doors!(@or $($without)?),
            results: &[$(($result, $at)),+],
        },)*];
    };
    (@or) => { &[] };
    (@or $given:expr) => { $given };
}

doors! {
    "convert"; gives ["value" = "/value"];
    "dose_mass" &[
        (Parameter::Kind, "/material/kind"),
        (Parameter::MaterialDensity, "/material/density"),
        (Parameter::AsScooped, "/material/as_scooped"),
        (Parameter::DropMass, "/material/drop"),
    ]; gives ["mass" = "/mass"];
    "mix_share"; gives ["mass_share" = "/parts/0/mass_fraction", "volume_share" = "/parts/0/volume_fraction"];
    "salt_mass" SALT; besides SALT_BESIDES; gives ["salt_mass" = "/mass", "softener_mass" = "/softener"];
    "salt_convert" SALT; besides SALT_BESIDES; gives ["loading" = "/form"];
    "salt_for_density" SALT; besides SALT_BESIDES; gives ["salt_mass" = "/mass"];
    "salt_for_sink_rate" SALT_SINKING; besides SALT_BESIDES; without &[Parameter::Shape];
        gives ["salt_mass" = "/mass", "softener_mass" = "/softener", "finished_density" = "/density"];
    "shot_fill" &[
        (Parameter::Cavities, "/mold/cavities"),
        (Parameter::CavityVolume, "/mold/cavity"),
        (Parameter::Voids, "/mold/voids"),
        (Parameter::Feed, "/mold/feed"),
        (Parameter::SprueVolume, "/mold/sprue"),
        (Parameter::ToppedMass, "/mold/top"),
    ]; gives [
        "shot_mass" = "/fill", "pieces_mass" = "/pieces", "sprue_mass" = "/sprue", "missing_mass" = "/missing",
        "piece_mass" = "/shapes/0/weighs", "piece_mass_min" = "/shapes/0/from", "piece_mass_max" = "/shapes/0/to"
    ];
    "shots"; besides &[
        (None, "/shot_mass", "10 g"), (None, "/shot_density", "1 g/mL"), (None, "/injector_capacity", "1 L"),
    ]; gives ["shots" = "/shots", "cast" = "/made"];
    "injector_loads" &[(Parameter::Shots, "/pieces")]; besides &[(None, "/cavities", "1")];
        gives ["loads" = "/loads", "shots_per_load" = "/shots_per_load"];
    "batch_need"; gives [
        "total_mass" = "/total", "drawn_mass" = "/drawn", "returned_mass" = "/returned", "pieces_mass" = "/pieces",
        "sprues_mass" = "/sprues", "kept_mass" = "/kept", "in_cup_mass" = "/in_cup", "shots" = "/shots",
        "loads" = "/loads", "shots_per_load" = "/shots_per_load"
    ];
    "sink_rate" SINKING; without &[Parameter::Shape]; gives [
        "sink_rate" = "/sink_rate", "sink_rate_min" = "/slowest", "sink_rate_max" = "/fastest", "motion" = "/motion",
        "reynolds" = "/reynolds", "drag_coefficient" = "/drag_coefficient", "sink_time" = "/time"
    ];
    "density_for_sink_rate" SINKING; without &[Parameter::Shape]; gives ["piece_density" = "/density"];
    "hardness"; gives ["hardness" = "/reading"];
    "softener_ratio"; gives ["softener_ratio" = "/ratio"];
    "water_density"; besides &[(None, "/water_mass", "10 g")]; gives ["density" = "/density"];
    "cavity_of_water"; gives ["cavity_volume" = "/volume"];
    "standard_pressure"; gives ["station_pressure" = "/pressure"];
    "station_pressure"; gives ["station_pressure" = "/pressure"];
    "swollen_volume" VACUUM; without &[Parameter::VaporPressure];
        gives ["swollen_volume" = "/swollen", "standing_volume" = "/standing"];
    "entrained_air" VACUUM; besides &[(None, "/liquid_volume", "1 L")]; without &[Parameter::VaporPressure];
        gives ["entrained_air" = "/entrained"];
    "degas_vessel" VACUUM; without &[Parameter::VaporPressure]; gives [
        "vessel_volume" = "/vessel", "fill_mark" = "/fill_mark", "fills" = "/fills", "fill_level" = "/level"
    ];
    "flake_count" FLAKE; besides &[(None, "/flake/kind", "flake")]; gives ["particles" = "/particles"];
    "flake_swap" FLAKE; besides &[(None, "/flake/kind", "flake"), (None, "/other_flake/kind", "flake")]; gives [
        "mass" = "/swap/mass", "scoop" = "/swap/scoop", "count_ratio" = "/swap/count", "area_ratio" = "/swap/area"
    ];
    "color_difference" &[
        (Parameter::Lightness, "/color/lab/0"),
        (Parameter::GreenRed, "/color/lab/1"),
        (Parameter::BlueYellow, "/color/lab/2"),
        (Parameter::OtherLightness, "/other_color/lab/0"),
        (Parameter::OtherGreenRed, "/other_color/lab/1"),
        (Parameter::OtherBlueYellow, "/other_color/lab/2"),
    ]; gives ["difference" = "/difference"];
    "equivalent_time"; gives ["equivalent_time" = "/equivalent"];
    "budget_left" &[(Parameter::ExtraTime, "/buys/time"), (Parameter::ExtraMost, "/buys/most")];
        besides &[(Some(Parameter::ExtraTime), "/buys/per", "100 %"), (None, "/reference_temperature", "175 °C")];
        gives ["budget" = "/budget", "left" = "/left"];
    "cavity_of_weights"; gives [
        "cavity_volume" = "/volume", "cavity_volume_uncertainty" = "/volume_uncertainty", "mean" = "/mean",
        "deviation" = "/deviation"
    ];
    "feed_of_weights" &[(Parameter::VolumeUncertainty, "/cavity_volume/uncertainty")];
        gives ["feed" = "/feed", "feed_uncertainty" = "/feed_uncertainty", "mean" = "/mean", "deviation" = "/deviation"];
    "drop_of_weighings"; gives ["drop_mass" = "/mass", "drop_mass_uncertainty" = "/uncertainty"];
    "as_scooped_of_weighings" &[(Parameter::VolumeUncertainty, "/spoon_volume/uncertainty")]; gives [
        "as_scooped" = "/density", "as_scooped_uncertainty" = "/uncertainty", "spoonful" = "/spoonful"
    ];
    "residue_of_weighings" &[(Parameter::DensityUncertainty, "/residue_density/uncertainty")]; gives [
        "injector_residue" = "/volume", "injector_residue_uncertainty" = "/uncertainty", "residue_mass" = "/mass"
    ];
}

/// The door of a calculation; `None` where none compares.
pub(crate) fn door(calculation: &str) -> Option<&'static Door> {
    DOORS.iter().find(|door| door.calculation == calculation)
}

/// When an optional parameter is given, besides by chance: with others of its group.
pub(crate) struct Group {
    pub(crate) name: &'static str,
    /// Given where the group's coin falls so.
    pub(crate) side: bool,
    /// Then by chance still.
    pub(crate) by_chance: bool,
}

impl Door {
    /// Whether the request takes `parameter`.
    pub(crate) fn takes(&self, parameter: Parameter) -> bool {
        !self.without.contains(&parameter)
    }

    /// What is taken together, or in one of two ways.
    pub(crate) const fn group(&self, parameter: Parameter) -> Option<Group> {
        let (name, side, by_chance) = match parameter {
            Parameter::MixMass | Parameter::MixVolume => ("mix", true, false),
            Parameter::HookMass | Parameter::HookVolume => ("hook", true, false),
            Parameter::SoftenerPerSalt | Parameter::SoftenerDensity => ("softener", true, false),
            Parameter::SoftenerExpansion => ("softener", true, true),
            Parameter::DropDepth | Parameter::DropTime | Parameter::DropDensity => {
                ("drop", true, false)
            }
            Parameter::ExtraTime | Parameter::ExtraMost => ("extra", true, false),
            Parameter::GaugeVacuum => ("vacuum", true, false),
            Parameter::DialTolerance => ("vacuum", true, true),
            Parameter::AbsolutePressure => ("vacuum", false, false),
            Parameter::SalinityPractical => ("salinity", true, false),
            Parameter::SalinityAbsolute => ("salinity", false, true),
            Parameter::VesselBrim => ("vessel", true, false),
            Parameter::VesselMark => ("vessel", true, true),
            _ => return None,
        };
        Some(Group { name, side, by_chance })
    }

    /// The field of `parameter`; `None` where no field of the request is its own.
    pub(crate) fn pointer(
        &self,
        parameter: Parameter,
        arguments: &[(Parameter, Argument<'_>)],
    ) -> Option<String> {
        if !self.takes(parameter) {
            return None;
        }
        if let Some((_, place)) = self.places.iter().find(|(known, _)| *known == parameter) {
            return Some((*place).to_owned());
        }
        let given = |parameter| {
            arguments.iter().find(|(known, _)| *known == parameter).map(|(_, argument)| *argument)
        };
        let salted = self.calculation == "salt_for_sink_rate";
        let body = if salted { "/salted_body" } else { "/body" };
        Some(match parameter {
            // An equivalent time is that of readings at the reference temperature; a part is chosen in the answer.
            Parameter::EquivalentTime | Parameter::Part | Parameter::Parts => return None,
            Parameter::Form | Parameter::ToForm => return None,
            Parameter::Loading => match given(Parameter::Form) {
                Some(Argument::Text(form)) => format!("/loading/{}", form.replace('-', "_")),
                _ => return None,
            },
            Parameter::Diameter if given(Parameter::Length) == Some(Argument::Omitted) => {
                format!("{body}/ball/diameter")
            }
            Parameter::Diameter => format!("{body}/stick/diameter"),
            Parameter::Length => format!("{body}/stick/length"),
            parameter => format!("/{}", parameter.name()),
        })
    }

    /// The request with these arguments.
    pub(crate) fn request(&self, calculation: &Calculation, arguments: &[Argument<'_>]) -> Json {
        let named = named(calculation, arguments);
        let given = |parameter| {
            named.iter().any(|(known, it)| *known == parameter && *it != Argument::Omitted)
        };
        let mut request = json!({ "calculate": calculation.request.unwrap() });
        for (with, pointer, value) in self.besides {
            if with.is_none_or(given) {
                let number = value.parse::<u32>().map(Json::from);
                put(&mut request, pointer, number.unwrap_or_else(|_| json!(value)));
            }
        }
        for &(parameter, argument) in &named {
            match (parameter, argument) {
                (_, Argument::Omitted) => {}
                (Parameter::Parts, Argument::Numbers(rows)) => {
                    for (index, row) in rows.chunks(2).enumerate() {
                        let material = json!({ "kind": "other", "density": { "value": row[1], "unit": "g/mL" } });
                        put(&mut request, &format!("/materials/part{index}"), material);
                        put(
                            &mut request,
                            &format!("/masses/part{index}"),
                            json!({ "value": row[0], "unit": "g" }),
                        );
                    }
                }
                (Parameter::EquivalentTime, Argument::Number(time)) => {
                    let reading = |seconds| json!({ "reading_time": { "value": seconds, "unit": "s" }, "reading_temperature": "175 °C" });
                    put(&mut request, "/readings", json!([reading(0.0), reading(time)]));
                    put(
                        &mut request,
                        "/activation_energy",
                        json!({ "value": "120 kJ/mol", "source": "of the test" }),
                    );
                }
                _ => {
                    let Some(pointer) = self.pointer(parameter, &named) else { continue };
                    let value = written(parameter, argument, &pointer);
                    let value = match parameter {
                        Parameter::ActivationEnergy => {
                            json!({ "value": value, "source": "of the test" })
                        }
                        _ => value,
                    };
                    put(&mut request, &pointer, value);
                }
            }
        }
        request
    }

    /// The result at `pointer` of an answer, which for two calculations hangs on an argument.
    pub(crate) fn number(
        &self,
        answer: &Json,
        pointer: &str,
        named: &[(Parameter, Argument<'_>)],
    ) -> Option<f64> {
        let of = |parameter| named.iter().find(|(known, _)| *known == parameter).map(|(_, it)| *it);
        if let (Some(Argument::Text(form)), Some(Argument::Number(base))) =
            (of(Parameter::ToForm), of(Parameter::BaseVolume))
        {
            return match form {
                "as-scooped" => number(answer, "/as_scooped").map(|volume| volume / base),
                "per-volume" => number(answer, "/mass").map(|mass| mass / base),
                "finished-density" => number(answer, "/density"),
                "piece-mass" => number(answer, "/piece"),
                form => number(answer, &format!("/{}", form.replace('-', "_"))),
            };
        }
        match of(Parameter::Part) {
            Some(Argument::Number(part)) => {
                number(answer, &pointer.replace("/0/", &format!("/{}/", part - 1.0)))
            }
            _ => number(answer, pointer),
        }
    }
}

/// The arguments with their parameters.
pub(crate) fn named<'a>(
    calculation: &Calculation,
    arguments: &[Argument<'a>],
) -> Vec<(Parameter, Argument<'a>)> {
    let parameters = calculation.parameters.iter().map(|field| field.parameter);
    parameters.zip(arguments.iter().copied()).collect()
}

/// An argument as a request writes it.
fn written(parameter: Parameter, argument: Argument<'_>, pointer: &str) -> Json {
    match argument {
        Argument::Text(text) => json!(text),
        Argument::Number(number) => of_number(parameter, number, pointer),
        Argument::Numbers(numbers) => {
            let columns = parameter.columns();
            let row = |row: &[f64]| match (columns, row) {
                ([column], [number]) => of_number(*column, *number, ""),
                _ => {
                    let fields = columns.iter().zip(row).map(|(column, number)| {
                        (column.name().to_owned(), of_number(*column, *number, ""))
                    });
                    Json::Object(fields.collect::<Map<_, _>>())
                }
            };
            numbers.chunks(columns.len()).map(row).collect()
        }
        _ => Json::Null,
    }
}

fn of_number(parameter: Parameter, number: f64, pointer: &str) -> Json {
    if pointer.ends_with("/uncertainty") {
        return json!(number);
    }
    let amount = |unit: &str| json!({ "value": number, "unit": unit });
    match (parameter, pointer, parameter.unit()) {
        (_, _, PlainUnit::Count) => json!(number as i64),
        (Parameter::SalinityAbsolute, ..) => amount("g/g"),
        (_, "/loading/as_scooped", _) => amount("mL/mL"),
        (_, "/loading/of_base" | "/loading/of_finished", _) => share(number),
        (_, "/loading/piece_mass", _) => amount("g"),
        (Parameter::Loading, ..) => amount("g/mL"),
        (
            Parameter::Rise
            | Parameter::Hardness
            | Parameter::PointHardness
            | Parameter::SalinityPractical,
            ..,
        ) => json!(number),
        (_, pointer, _) if pointer.contains("/lab/") => json!(number),
        (_, _, PlainUnit::Pure) => share(number),
        (_, _, unit) => amount(unit.symbol()),
    }
}

/// A share as a per cent, exactly.
fn share(number: f64) -> Json {
    let decimal = Decimal::from_scientific(&format!("{number:e}")).unwrap();
    json!(format!("{} %", decimal * Decimal::ONE_HUNDRED))
}

/// Puts `value` at `pointer`, with the objects and lists on the way.
fn put(request: &mut Json, pointer: &str, value: Json) {
    let mut at = request;
    for step in pointer.split('/').skip(1) {
        at = match step.parse::<usize>() {
            Ok(index) => {
                if !at.is_array() {
                    *at = json!([]);
                }
                let list = at.as_array_mut().unwrap();
                while list.len() <= index {
                    list.push(Json::Null);
                }
                &mut list[index]
            }
            Err(_) => {
                if !at.is_object() {
                    *at = json!({});
                }
                at.as_object_mut().unwrap().entry(step).or_insert(Json::Null)
            }
        };
    }
    *at = value;
}

/// The number at `pointer` of an answer.
fn number(answer: &Json, pointer: &str) -> Option<f64> {
    let found = answer.pointer(pointer)?;
    match found {
        Json::String(word) => Some(number_of_word(word)),
        Json::Object(shown) => shown["value"].as_f64(),
        found => found.as_f64(),
    }
}

/// A word as a number that no other word of the answer has.
pub(crate) fn number_of_word(word: &str) -> f64 {
    word.bytes().fold(0, |sum, byte| sum * 31 % 65_521 + u32::from(byte)).into()
}
