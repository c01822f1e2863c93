//! One text per parameter: what it means, its unit, its range.
//!
//! The documentation of requests, the JSON Schema and the doors' own docs are made of these.

/// A parameter of a calculation.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Parameter {
    /// Its name: that of a request's field, or a longer one where the same word has two meanings.
    pub name: &'static str,
    /// What it means, as a sentence.
    pub meaning: &'static str,
    /// The unit of its plain number, `1` for a ratio, empty where it is no quantity.
    pub unit: &'static str,
    /// What is accepted.
    pub range: &'static str,
}

/// Declares the table, and `parameter!(name)`: the text of one parameter for a doc comment.
macro_rules! parameters {
    ($($name:ident: $meaning:literal, $unit:literal, $range:literal;)*) => {
        /// All parameters, by name.
        pub const PARAMETERS: &[Parameter] = &[$(
            Parameter { name: stringify!($name), meaning: $meaning, unit: $unit, range: $range },
        )*];

        #[cfg(feature = "document")]
        macro_rules! parameter {
            $(($name) => { concat!($meaning, " Unit: ", $unit, "; ", $range, ".") };)*
        }
        #[cfg(feature = "document")]
        pub(crate) use parameter;
    };
}

parameters! {
    activation_energy: "Activation energy of the decay in the heat, with who states it.", "kJ/mol", "10 to 500 kJ/mol";
    actuals: "What was really weighed and shot.", "none", "an actuals document";
    aim: "The temperature to heat to; the middle of the window where left out.", "°C", "in the shot window";
    air_pressure: "Pressure of the air at the balance; standard atmosphere where left out.", "Pa", "30 to 120 kPa";
    alike: "What the two doses of flake have in common; the area where left out.", "none", "count or area";
    altitude: "Height above sea level, as a map gives it.", "m", "0 to 11 000 m";
    amount: "An amount as a person measures it.", "any", "above 0";
    at: "Temperature of the water.", "°C", "0 to 40 °C";
    base_amount: "The base to make the formula for; the formula's own `per` where left out.", "mL or g", "above 0";
    base_color: "What the base looks like without colorants, poured as a test piece.", "none", "a color";
    base_density: "Density of the base, cold and liquid, as a cup measures it.", "g/mL", "above 0";
    base_mass: "Mass of base that the formula is for.", "g", "above 0";
    base_material: "The material of the base and its properties.", "none", "as in a book";
    base_volume: "Volume of the base, cold and liquid, as a cup measures it.", "mL", "above 0";
    bench: "The tools on the bench.", "none", "as in a book";
    body: "What the piece is like as it sinks.", "none", "a stick or a ball";
    book: "The shop's book.", "none", "a book document";
    brim: "What the vessel holds to its brim.", "mL", "above 0";
    budget_with: "The stabilizer that the budget is stated for, by mass of base; none added where left out.", "1", "0 % to 100 %";
    buys: "The heat that more of the stabilizer buys; not known where left out.", "none", "as of a material in a book";
    calibrated_material: "The material of a book that the answer shall be written for: it then carries the change to that book.", "none", "a name";
    calibrated_mold: "The mold of a book that the answer shall be written for: it then carries the change to that book.", "none", "a name";
    calibrated_shape: "The shape, where that mold has unlike cavities.", "none", "a name";
    cavities: "How many cavities a shot fills.", "1", "1 to 1 000 000";
    cavity: "Volume of one cavity.", "mL", "above 0";
    cavity_measured: "Volume of one cavity; with ± its uncertainty counts too.", "mL", "above 0";
    cleanings: "How often the injector is cleaned or goes cold, the last time included; 1 where left out.", "1", "1 or more";
    cold_density: "Density of the finished plastic at 20 °C, without voids; its uncertainty is counted.", "g/mL", "above 0";
    color: "A color.", "none", "as lab or srgb";
    colorants: "The colorants by name, each with its test pieces.", "none", "one or more";
    confidence: "How sure the number of good pieces shall be; 90 % where left out.", "1", "0 % to below 100 %";
    cooling: "How such a pot was watched to cool, and how long this one has stood; not at all where left out.", "none", "about the same amount, in a cooler room";
    cost_margin: "What the shop keeps, as a share of the price (a markup on the cost is another thing); no price is told where left out.", "1", "0 % to below 100 %";
    cup: "What the cup may hold; the book's largest cup, as full as its limits allow, where left out.", "mL", "above 0";
    cup_mark: "The distance between the marks of the cup that the base is measured in; it has one mark alone, for its amount, where left out.", "mL", "above 0";
    damp_at: "Temperature of a damp pot, whose water boils under vacuum; a dry one where left out.", "°C", "0.01 to 200 °C";
    depth: "The depth to tell the time for.", "m", "above 0";
    dose_amount: "The dose as it is taken: weighed (a mass), by spoon (a volume) or in drops.", "g, mL or drops", "above 0";
    drops_weighed: "Drops that were counted and weighed together, each weighing begun anew.", "none", "two or more weighings";
    feed: "Share of its contraction that a piece draws from the sprue while it cools.", "1", "0 % to 100 %";
    feed_uncertainty: "Standard uncertainty of the feed share, in points of it (10 %: 60 % is 50 % to 70 %); none counted where left out.", "1", "0 % to 100 %";
    film: "What clings to the wall of the cup, part of the heel; none where left out.", "g", "0 or more";
    finished_amount: "The finished mix to make: its mass, or its volume cold and liquid.", "g or mL", "above 0";
    finished_mass: "Finished mass that the dose of flake is in.", "g", "above 0";
    fished_water: "The water.", "none", "0 to 40 °C, salinity 0 to 42 g/kg";
    flake: "The flake: its cut, the thickness of its film, its density.", "none", "as a material in a book";
    formulas: "The formulas that are combined, by name.", "none", "formulas of the book";
    hardness: "The durometer reading that is wanted.", "1", "0 to 100, between the measured points";
    hardness_points: "The shop's own measured points, by rising ratio.", "none", "two or more";
    heat_budget: "What the plastisol stands at the reference temperature; not known where left out.", "s", "above 0";
    heated_from: "The temperature before.", "°C", "-73 to 427 °C, below the aim";
    heated_together: "Further cups in the oven beside it, all of them one load; none where left out.", "none", "from the same temperature, with the mix within what was timed";
    heats_before: "How often it was heated before; never where left out.", "1", "0 or more";
    heel: "What cannot be drawn from the cup, its film included; none where left out.", "g", "0 or more";
    hook: "Hook and weight on the piece; none where left out.", "none", "mass and volume";
    hook_mass: "Mass of hook and weight on a piece; none where left out.", "g", "0 or more";
    hook_volume: "Volume that hook and weight displace; none where left out.", "mL", "0 or more";
    hot_density: "Density of the plastic at shot temperature, without voids; the cold one where left out.", "g/mL", "above 0, at most the cold one";
    hot_volume: "Volume of the mix before salt at shot temperature; the cold one where left out.", "mL", "at least the cold one";
    injector_holds: "What the injector takes up at most.", "mL", "above 0";
    injector_keeps: "What stays in the injector each time it is emptied; none where left out.", "mL", "0 to below what it holds";
    injector_weighed: "Weighings of the injector, each clean and then emptied as at work.", "none", "two or more";
    layer_share: "Share of the cavity that this layer of a laminated piece fills; all of it where left out.", "1", "above 0 % to 100 %";
    liquid: "Volume of the pot, cold and without air.", "mL", "above 0";
    loading: "How much salt, stated in just one way.", "none", "one of eight ways";
    made: "How many good pieces are made; one where left out.", "1", "1 to 1 000 000";
    marks: "The step between the vessel's marks; any level where left out.", "mL", "above 0";
    mass: "The mass that is wanted.", "g", "above 0";
    masses: "What is in the mix, by material.", "g", "0 or more each";
    material: "The material and its properties.", "none", "as in a book";
    materials: "The materials by name.", "none", "as in a book";
    measures: "What a cup, a spoon and a fluid ounce hold; US customary where left out.", "none", "us-customary, us-label, metric or imperial";
    mix: "What is heated: a mass, or a volume cold and liquid.", "g or mL", "at most 1.5 times beyond what was timed";
    mix_mass: "Mass of the mix before salt; that of its base where left out.", "g", "at least that of the base";
    mix_volume: "Volume of the mix before salt at 20 °C; that of its base where left out.", "mL", "above 0";
    mold: "The mold.", "none", "as in a book";
    most_solids: "The most salt that the finished mix may hold, by true volume; 30 % where left out.", "1", "above 0 % to below 100 %";
    orders: "The order list.", "none", "an orders document";
    other_flake: "The flake that shall take its place.", "none", "as a material in a book";
    overlap: "What happens where two of the formulas dose the same material; it is refused where left out.", "none", "refuse, add or last";
    packing: "What goes into each pack; nothing where left out.", "none", "a price per pieces, and how many a pack takes";
    packs: "How many packs the pieces go into; one where left out.", "1", "1 to the number of pieces";
    per_base: "The base that the dose is for, as it is taken: weighed (a mass) or by cup (a volume).", "g or mL", "above 0";
    per_shot: "What one shot takes, sprue included.", "g", "above 0";
    phase: "Whether the plastisol is liquid or fused; fused where left out.", "none", "liquid or fused";
    piece_density: "Density of the piece, its salt and voids counted; with ± its uncertainty counts in the bounds.", "g/mL", "above 0";
    piece_mass: "Mass of one piece.", "g", "above 0, at most the finished mass";
    piece_volume: "Volume of the piece without its hook.", "mL", "above 0";
    pieces: "How many pieces are wanted.", "1", "1 to 1 000 000";
    plan: "The plan of the day, as the library made it.", "none", "a plan";
    pot: "What went into the pot, by material, as it was measured. With `base` only what went in otherwise than the formulas say; without it, all there is.", "none", "amounts: a volume, a mass or drops; 0 or more";
    pot_base: "The base that the pot was meant for: what `pot` does not name then went in as the formulas say. Where left out, `pot` names all that is in it.", "mL or g", "above 0";
    readability: "The smallest difference that the balance shows.", "g", "above 0";
    readings: "Temperatures in the order of time, taken as straight between.", "none", "two or more";
    reference_temperature: "The temperature at which the time is counted.", "°C", "-73 to 427 °C";
    rejects: "Share of pieces that are not fit to sell; none where left out.", "1", "0 % to below 100 %";
    reported_pressure: "Pressure of the air as a weather report has it, reduced to sea level; needs the altitude.", "kPa", "85 to 110 kPa";
    residue_density: "Density of what stays in the injector, at the temperature at which it is emptied; its uncertainty is counted.", "g/mL", "above 0";
    returned: "Share of the sprues that is melted again; none where left out.", "1", "0 % to 100 %";
    returned_mass: "What of the mix comes back: sprue that is melted again, left-over that is kept; none where left out.", "g", "0 to the mass of the mix";
    returned_worth: "What of its material cost that is still worth; all of it where left out.", "1", "0 % to 100 %";
    salt: "The salt: its true density, its density as scooped.", "none", "as a material in a book";
    salt_softener: "The softener that goes in beside the salt; none where left out.", "none", "a material and its share of the salt";
    salted_body: "What the piece is like as it sinks, for its fall with the salt and without; no fall is told where left out.", "none", "a stick or a ball";
    salted_water: "The water that it sinks in; needed with the body.", "none", "0 to 40 °C, salinity 0 to 42 g/kg";
    scale: "The scale of the durometer.", "none", "shore-00 or shore-a";
    scoops_weighed: "Level spoonfuls that were counted and weighed together, each weighing begun anew.", "none", "two or more weighings";
    setting: "Setting of the oven, as a share of full power; that of the timings where left out.", "1", "above 0 % to 100 %";
    shot_density: "Density of what the injector draws: hot, voids counted.", "g/mL", "above 0";
    shot_temperature: "Temperature at which it is shot; 20 °C where left out.", "°C", "20 °C or above";
    shot_window: "Lowest and highest temperature at which it is shot.", "°C", "the lower one first";
    sink_speed: "The speed that is wanted.", "cm/s", "above 0";
    softener_ratio: "Mass of softener or hardener as a share of the mass of base.", "1", "between the measured points";
    spare: "Share of the vessel that stays empty; 10 % where left out.", "1", "0 % to below 100 %";
    specific_heat: "Specific heat of the mix, its salt counted.", "J/(g.K)", "above 0";
    spent_before: "What earlier heats spent; not known where left out after earlier heats.", "s", "0 or more; above 0 only with heats_before";
    spoon: "What the spoon holds; the dose is one spoonful where left out.", "mL", "above 0, a whole number of them being the dose";
    spoon_measured: "What the level spoon holds; with ± its uncertainty counts too.", "mL", "above 0";
    sprue_mass: "What of a shot stays as sprue; none where left out.", "g", "0 to what a shot takes";
    stabilizer_dose: "Stabilizer in the mix, by mass of base; what the budget is stated for where left out.", "1", "0 % to 100 %";
    station_pressure: "What a barometer in the shop shows, not reduced to sea level.", "kPa", "22.7 to 177.6 kPa";
    still_there: "What is still in the cup, as its mass or its volume cold and liquid, where some of the pot has been shot; all of it where left out.", "g or mL", "above 0, at most all of it";
    target: "The color that is wanted.", "none", "a color";
    temperature: "The temperature of the mix; 20 °C where left out.", "°C", "above absolute zero";
    thermometer: "How far the thermometer may be off; 2 K where left out.", "K", "0 or more";
    timed_density: "Density of the mix, cold and liquid; needed where a volume is given.", "g/mL", "above 0";
    timed_specific_heat: "Specific heat of what was timed; that of the mix where left out.", "J/(g.K)", "above 0";
    timings: "Heatings that the shop has timed, all at one setting.", "none", "one or more";
    to: "The unit that is wanted, by trade symbol or UCUM code.", "none", "a unit of the same dimension";
    tolerance: "Largest relative error that is accepted; the material's own, or 5 %, where left out.", "1", "above 0 % to below 100 %";
    trace: "Share of the pot's mass up to which a material that does not belong in it is let pass; none where left out.", "1", "0 % to 100 %";
    vacuum: "The vacuum, and what a pot does in it.", "none", "as in a book";
    vessel_mass: "Mass of the vessel; left to the timings where left out.", "g", "above 0";
    vessel_specific_heat: "Specific heat of the vessel.", "J/(g.K)", "above 0";
    voids: "Share of the volume that is air; none where left out.", "1", "0 % to below 100 %";
    water: "What the balance reads for the water in one cavity.", "g", "above 0";
    weights: "What the pieces weigh, one by one.", "g", "two or more, above 0";
    work_rate: "The rate of work, such as `18.00 USD per 1 h`; needed where work_time is given.", "none", "a price per time";
    work_time: "How long the work takes; none where left out.", "s", "0 or more";
}
