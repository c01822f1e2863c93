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
    air_pressure: "Pressure of the air at the balance; standard atmosphere where left out.", "Pa", "30 to 120 kPa";
    amount: "An amount as a person measures it.", "any", "above 0";
    at: "Temperature of the water.", "°C", "0 to 40 °C";
    base_amount: "The base to make the formula for; the formula's own `per` where left out.", "mL or g", "above 0";
    base_density: "Density of the base, cold and liquid, as a cup measures it.", "g/mL", "above 0";
    base_material: "The material of the base and its properties.", "none", "as in a book";
    base_volume: "Volume of the base, cold and liquid, as a cup measures it.", "mL", "above 0";
    bench: "The tools on the bench.", "none", "as in a book";
    book: "The shop's book.", "none", "a book document";
    cavities: "How many cavities a shot fills.", "1", "1 to 1 000 000";
    cavity: "Volume of one cavity.", "mL", "above 0";
    cleanings: "How often the injector is cleaned or goes cold, the last time included; 1 where left out.", "1", "1 or more";
    cold_density: "Density of the finished plastic at 20 °C, without voids.", "g/mL", "above 0";
    confidence: "How sure the number of good pieces shall be; 90 % where left out.", "1", "0 % to below 100 %";
    cost_margin: "What the shop keeps, as a share of the price (a markup on the cost is another thing); no price is told where left out.", "1", "0 % to below 100 %";
    cup_mark: "The distance between the marks of the cup that the base is measured in; its amount is one mark where left out.", "mL", "above 0";
    dose_amount: "The dose as it is taken: weighed (a mass), by spoon (a volume) or in drops.", "g, mL or drops", "above 0";
    drops_weighed: "Drops that were counted and weighed together, each weighing begun anew.", "none", "two or more weighings";
    feed: "Share of its contraction that a piece draws from the sprue while it cools.", "1", "0 % to 100 %";
    film: "What stays on the wall of the cup; none where left out.", "g", "0 or more";
    finished_amount: "The finished mix to make: its mass, or its volume cold and liquid.", "g or mL", "above 0";
    formulas: "The formulas that are combined, by name.", "none", "formulas of the book";
    hardness: "The durometer reading that is wanted.", "1", "0 to 100, between the measured points";
    hardness_points: "The shop's own measured points, by rising ratio.", "none", "two or more";
    heel: "What cannot be drawn from the cup; none where left out.", "g", "0 or more";
    hook_mass: "Mass of hook and weight on a piece; none where left out.", "g", "0 or more";
    hook_volume: "Volume that hook and weight displace; none where left out.", "mL", "0 or more";
    hot_density: "Density of the plastic at shot temperature, without voids; the cold one where left out.", "g/mL", "above 0, at most the cold one";
    hot_volume: "Volume of the mix before salt at shot temperature; the cold one where left out.", "mL", "at least the cold one";
    injector_holds: "What the injector takes up at most.", "mL", "above 0";
    injector_keeps: "What stays in the injector each time it is emptied; none where left out.", "mL", "0 to below what it holds";
    layer_share: "Share of the cavity that this layer of a laminated piece fills; all of it where left out.", "1", "above 0 % to 100 %";
    loading: "How much salt, stated in just one way.", "none", "one of seven ways";
    made: "How many good pieces are made; one where left out.", "1", "1 to 1 000 000";
    mass: "The mass that is wanted.", "g", "above 0";
    masses: "What is in the mix, by material.", "g", "0 or more each";
    material: "The material and its properties.", "none", "as in a book";
    materials: "The materials by name.", "none", "as in a book";
    measures: "What a cup, a spoon and a fluid ounce hold; US customary where left out.", "none", "us-customary, us-label, metric or imperial";
    mix_mass: "Mass of the mix before salt; that of its base where left out.", "g", "at least that of the base";
    mix_volume: "Volume of the mix before salt at 20 °C; that of its base where left out.", "mL", "above 0";
    mold: "The mold.", "none", "as in a book";
    most_solids: "The most salt that the finished mix may hold, by true volume; 30 % where left out.", "1", "above 0 % to below 100 %";
    orders: "The order list.", "none", "an orders document";
    overlap: "What happens where two of the formulas dose the same material; it is refused where left out.", "none", "refuse, add or last";
    packing: "What goes into each pack; nothing where left out.", "none", "a price per pieces, and how many a pack takes";
    packs: "How many packs the pieces go into; one where left out.", "1", "1 to 1 000 000";
    per_base: "The base that the dose is for, as it is taken: weighed (a mass) or by cup (a volume).", "g or mL", "above 0";
    per_shot: "What one shot takes, sprue included.", "g", "above 0";
    phase: "Whether the plastisol is liquid or fused; fused where left out.", "none", "liquid or fused";
    pieces: "How many pieces are wanted.", "1", "1 to 1 000 000";
    readability: "The smallest difference that the balance shows.", "g", "above 0";
    rejects: "Share of pieces that are not fit to sell; none where left out.", "1", "0 % to below 100 %";
    returned: "Share of the sprues that is melted again; none where left out.", "1", "0 % to 100 %";
    returned_mass: "What of the mix comes back: sprue that is melted again, left-over that is kept; none where left out.", "g", "0 to the mass of the mix";
    returned_worth: "What of its material cost that is still worth; all of it where left out.", "1", "0 % to 100 %";
    salt: "The salt: its true density, its density as scooped.", "none", "as a material in a book";
    salt_softener: "The softener that goes in beside the salt; none where left out.", "none", "a material and its share of the salt";
    scale: "The scale of the durometer.", "none", "shore-00 or shore-a";
    scoops_weighed: "Level spoonfuls that were counted and weighed together, each weighing begun anew.", "none", "two or more weighings";
    shot_density: "Density of what the injector draws: hot, voids counted.", "g/mL", "above 0";
    shot_temperature: "Temperature at which it is shot; 20 °C where left out.", "°C", "20 °C or above";
    softener_ratio: "Mass of softener or hardener as a share of the mass of base.", "1", "between the measured points";
    spoon: "What the spoon holds; the dose is one spoonful where left out.", "mL", "above 0, a whole number of them being the dose";
    spoon_measured: "What the level spoon holds; with ± its uncertainty counts too.", "mL", "above 0";
    sprue_mass: "What of a shot stays as sprue; none where left out.", "g", "0 to what a shot takes";
    temperature: "The temperature of the mix; 20 °C where left out.", "°C", "above absolute zero";
    to: "The unit that is wanted, by trade symbol or UCUM code.", "none", "a unit of the same dimension";
    tolerance: "Largest relative error that is accepted; the material's own, or 5 %, where left out.", "1", "above 0 % to below 100 %";
    voids: "Share of the volume that is air; none where left out.", "1", "0 % to below 100 %";
    water: "What the balance reads for the water in one cavity.", "g", "above 0";
    weights: "What the pieces weigh, one by one.", "g", "two or more, above 0";
    work_rate: "The rate of work, such as `18.00 USD per 1 h`; needed where work_time is given.", "none", "a price per time";
    work_time: "How long the work takes; none where left out.", "s", "0 or more";
}
