//! The process: vacuum, heat, time at heat, flake, and how a piece sinks.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::super::shop::{Recipe, share, text, whole};
use super::super::{amount, clock, process};
use super::rest::{is_code, is_word};
use super::shown::KPA_PER_INHG;
use super::{Check, list, near, recipe_of, taken, value};

impl<'a> Check<'a> {
    pub(super) fn process(&mut self, pot: &'a Value, orders: &Value) {
        let name = text(&pot["pot"]);
        self.object(!orders["shelf"].is_null() || pot["from_shelf"].is_null(), || {
            format!("pot {name}: the orders have no shelf")
        });
        self.degas(&name, pot);
        for (index, stage) in list(&pot["stages"]).iter().enumerate() {
            let at = format!("pot {name}, stage {index}");
            let Some(recipe) = recipe_of(self.shop, self.batches, stage) else { continue };
            let (hot, _) = self.shop.hot_and_cold(&recipe);
            self.shown_as(&format!("{at}, hot"), &stage["fills_hot"], value(&stage["holds"]) / hot);
            let materials = self.shop.book["materials"].as_object().into_iter().flatten();
            let grains = materials.filter(|(_, material)| !material["grain"].is_null()).count();
            self.object(grains > 0 || stage["stir_every"].is_null(), || {
                format!("{at}: no grain of salt is known")
            });
            let in_pot: BTreeSet<String> = recipe.fractions().into_keys().collect();
            let first = index == 0 && self.in_it(&name).is_none();
            self.heating(&at, &stage["heating"], stage, &in_pot, first);
            self.reheats(&at, stage, &in_pot);
            for draw in list(&stage["draws"]) {
                self.flakes(&at, draw, &recipe);
            }
        }
        for stage in list(&pot["stages"]) {
            for weigh in list(&stage["weigh"]) {
                for key in ["doubt", "doubt_weighed"] {
                    let doubt = &weigh[key];
                    let right = doubt.is_null() || value(&doubt["uncertainty"]) >= 0.0;
                    self.object(right, || format!("pot {name}: a doubt of {doubt}"));
                }
            }
        }
        self.heats(&name, pot);
    }

    /// The gauge reads what the book says, what it leaves of the air of the altitude is in the chamber, the pot swells as
    /// Boyle says to no more than nine tenths of the cup's brim, in the fewest fills up to a mark.
    pub(super) fn degas(&mut self, name: &str, pot: &Value) {
        let at = format!("pot {name}, vacuum");
        let bench = &self.shop.book["bench"];
        let degas = &pot["degas"]["known"];
        if bench["vacuum"].is_null() {
            self.object(pot["degas"].is_null(), || format!("{at}: the book has none"));
        }
        let Some(gauge) = bench["vacuum"]["gauge"].as_str().filter(|_| !degas.is_null()) else {
            return;
        };
        let Some((inches, "inHg")) = amount::number(gauge) else { return };
        let Some((meters, "m")) = self.shop.book["altitude"].as_str().and_then(amount::number)
        else {
            return;
        };
        let (pulled, local) = (inches * KPA_PER_INHG, process::air_kpa(meters));
        let left = local - pulled;
        let within = |got: f64, wanted: f64| (got - wanted).abs() <= 1e-4 * wanted.abs();
        let absolute = value(&degas["absolute"]);
        self.object(within(value(&degas["gauge"]), pulled), || format!("{at}: not {pulled} kPa"));
        self.object(within(absolute, left), || format!("{at}: {absolute} kPa, must be {left}"));
        self.object(degas["is_absolute"] == false, || format!("{at}: a gauge of vacuum"));
        // Near the end of the dial only.
        let far = left > 5.0;
        self.object(!far || degas["at_most"].is_null() && degas["gauge_off"].is_null(), || {
            format!("{at}: the gauge is far from its end")
        });
        self.object(!bench["vacuum"]["air"].is_null() || degas["swells_at"].is_null(), || {
            format!("{at}: the book states no air in the mix")
        });
        let Some(rise) = bench["vacuum"]["rise"].as_f64() else { return };
        self.object(degas["assumed"].is_null(), || format!("{at}: the book states the rise"));
        self.object(near(value(&degas["rise"]), rise), || format!("{at}: rise, must be {rise}"));
        let capacity = value(&degas["cup"]);
        let cups = list(&bench["cups"]).iter();
        let mut cups = cups.filter(|cup| near(self.shop.ml(&cup["holds"]), capacity));
        let Some(cup) = cups.next() else {
            self.found.push(format!("{at}: no cup holds {capacity} mL"));
            return;
        };
        let called = text(&degas["cup"]["text"]).replace(" cup", "-cup cup");
        self.object(degas["cup_name"] == called.as_str(), || format!("{at}: not {called}"));
        let liquid = value(&pot["stages"][0]["fills"]);
        let expansion = local / left;
        let air = process::air_per_liquid(rise, expansion);
        let fills = f64::from(whole(&degas["fills"]));
        let (level, swollen) = (value(&degas["level"]), value(&degas["swollen"]));
        let all = liquid * (1.0 + air * expansion);
        self.object(within(swollen * fills, all), || format!("{at}: {fills} of {swollen} mL"));
        self.object(within(level * rise, swollen), || format!("{at}: {level} to {swollen} mL"));
        let (mark, brim) = (value(&degas["fill_mark"]), self.shop.ml(&cup["brim"]));
        let step = self.shop.ml(if cup["marks"].is_null() { &cup["holds"] } else { &cup["marks"] });
        let highest = (brim * 0.9 / rise).min(capacity);
        let marks = (highest / step * (1.0 + 1e-9)).floor();
        self.object(near(mark, marks * step), || format!("{at}: mark {mark} of {highest} mL"));
        self.object((fills - (level * fills / mark - 1e-9).ceil()).abs() < 0.5, || {
            format!("{at}: {fills} fills of {level} mL to {mark} mL")
        });
    }

    /// A table of bursts: followed to the letter from the cold pot it takes the time and the bursts that it states, and no
    /// burst carries the pot over the window.
    pub(super) fn heating(
        &mut self,
        at: &str,
        heating: &Value,
        stage: &Value,
        in_pot: &BTreeSet<String>,
        first: bool,
    ) {
        let oven = &self.shop.book["bench"]["oven"];
        if oven.is_null() {
            self.object(heating.is_null(), || format!("{at}: heated without an oven"));
        }
        let known = &heating["known"];
        if known.is_null() {
            return;
        }
        let at = format!("{at}, heating");
        let of = |key: &str| value(&known[key]);
        let (low, high) = (value(&stage["shoot_from"]), value(&stage["shoot_to"]));
        let (aim, ready, ends) = (of("aim"), of("shoot_from"), of("shoot_to"));
        self.object((aim - (low + high) / 2.0).abs() < 1e-9, || format!("{at}: aim {aim} °C"));
        self.object(low <= ready && ends <= high, || format!("{at}: {ready} to {ends} °C"));
        self.object(ready < aim && aim < ends, || format!("{at}: {ready} to {ends} °C"));
        let from = of("from");
        let room = oven["from"].as_str().map_or(20.0, amount::celsius);
        let warm = oven["reheat_from"].as_str().map(amount::celsius);
        let right = if first { (from - room).abs() < 1e-9 } else { from < ready };
        // A pot that was there may be cold.
        let cold = !self.there.is_empty() && (from - room).abs() < 1e-9;
        let warmed = warm.is_none_or(|warm| (from - warm).abs() < 1e-6);
        let right = right && (first || cold || warmed);
        self.object(right, || format!("{at}: from {from} °C"));
        self.object(known["setting"].is_null() == oven["setting"].is_null(), || {
            format!("{at}: setting {}", known["setting"])
        });
        let timed = list(&oven["timings"]).len() > 1;
        self.object(!timed || known["guess"] == false, || format!("{at}: the oven is timed"));
        self.object(known["beyond"].is_null() || known["beyond"]["code"].is_string(), || {
            format!("{at}: beyond {}", known["beyond"])
        });
        let bands = list(&known["bands"]);
        let rise = |band: &Value| value(&band["expected"]) - value(&band["below"]);
        let per_k: Vec<f64> = bands.iter().map(|band| value(&band["burst"]) / rise(band)).collect();
        let Some(&rate) = per_k.first() else {
            self.found.push(format!("{at}: no burst"));
            return;
        };
        self.object(per_k.iter().all(|other| (other / rate - 1.0).abs() < 1e-6), || {
            format!("{at}: bursts of {per_k:?} s/K")
        });
        for pair in bands.windows(2) {
            self.object(value(&pair[0]["below"]) < value(&pair[1]["below"]), || {
                format!("{at}: bands out of order")
            });
        }
        for band in bands {
            let (expected, at_most) = (value(&band["expected"]), value(&band["at_most"]));
            let ends_well = expected <= at_most && at_most <= high + 1e-9;
            self.object(ends_well, || format!("{at}: {expected} to {at_most} °C of {high} °C"));
        }
        let last = bands.last().map_or(f64::NAN, |band| value(&band["below"]));
        self.object((last - ready).abs() < 1e-6, || format!("{at}: no burst up to {ready} °C"));
        let (mut reading, mut bursts, mut total) = (from, 0_u32, 0.0);
        while reading < ready - 1e-9 && bursts < 10_000 {
            let band = bands.iter().find(|band| reading < value(&band["below"]) - 1e-9);
            let burst = band.map_or(f64::NAN, |band| value(&band["burst"]));
            reading += burst / rate;
            total += burst;
            bursts += 1;
        }
        self.object(
            whole(&known["bursts"]) == bursts && (of("total") - total).abs() < 1e-6,
            || format!("{at}: {bursts} bursts in {total} s when followed"),
        );
        let missing: BTreeSet<String> = in_pot
            .iter()
            .filter(|name| !self.shop.materials[*name].has_specific_heat)
            .cloned()
            .collect();
        let told: BTreeSet<String> =
            list(&known["specific_heat_not_known"]).iter().map(text).collect();
        self.object(told == missing, || format!("{at}: {told:?} for {missing:?} not stated"));
    }

    /// The clock of a stage has all its shots, each for as long as it takes.
    pub(super) fn reheats(&mut self, at: &str, stage: &Value, in_pot: &BTreeSet<String>) {
        if stage["clock"]["known"].is_null() {
            return;
        }
        let at = format!("{at}, clock");
        let heats = list(&stage["clock"]["known"]);
        let mut shots: Vec<f64> = Vec::new();
        for draw in list(&stage["draws"]) {
            let every = clock::every(self.shop.book, &draw["mold"]).unwrap_or(f64::NAN);
            shots.extend((0..whole(&draw["shots"])).map(|_| every));
        }
        let mut done = 0;
        let mut held = value(&stage["holds"]) + 1e-9;
        for heat in heats {
            let (after, count) = (whole(&heat["after"]) as usize, whole(&heat["shots"]) as usize);
            self.object(heat["after"].is_u64() && after == done, || {
                format!("{at}: after {after} of {done}")
            });
            let lasts: f64 = shots.iter().skip(done).take(count).sum();
            let got = value(&heat["lasts"]);
            self.object((got - lasts).abs() < 1e-6, || format!("{at}: {got} s, must be {lasts}"));
            done += count;
            let holds = value(&heat["holds"]);
            self.object(holds <= held, || format!("{at}: {holds} g after {held} g"));
            held = holds;
            self.object(after > 0 || near(holds, value(&stage["holds"])), || {
                format!("{at}: {holds} g at the start")
            });
            if after > 0 {
                self.heating(&at, &heat["heating"], stage, in_pot, false);
            } else {
                self.object(heat["heating"].is_null(), || format!("{at}: the stage's own heat"));
            }
        }
        self.object(done == shots.len(), || format!("{at}: {done} of {} shots", shots.len()));
        self.object(heats.len() == whole(&stage["heats"]) as usize, || format!("{at}: heats"));
    }

    /// Particles of flake in a piece: its share of the pot's flake over the mass of one particle.
    pub(super) fn flakes(&mut self, at: &str, draw: &Value, recipe: &Recipe) {
        let fractions = recipe.fractions();
        for piece in list(&draw["pieces"]) {
            let mut told: BTreeMap<String, f64> = BTreeMap::new();
            for flake in list(&piece["flakes"]) {
                told.insert(text(&flake["material"]), flake["count"].as_f64().unwrap_or(f64::NAN));
            }
            let mut names = BTreeSet::new();
            for (name, fraction) in &fractions {
                let entry = &self.shop.book["materials"][name];
                let Some(cut) = entry["cut"].as_str() else { continue };
                names.insert(name.clone());
                let Some((inches, "hex")) = amount::number(cut) else { continue };
                let Some((um, "um")) = entry["thickness"].as_str().and_then(amount::number) else {
                    continue;
                };
                // A hexagon by its width across flats, in centimeters.
                let width = inches * 2.54;
                let film = self.shop.materials[name].liquid.unwrap_or(f64::NAN);
                let one = 3.0_f64.sqrt() / 2.0 * width * width * um * 1e-4 * film;
                let count = value(&piece["weighs"]) * fraction / one;
                let got = told.get(name).copied().unwrap_or(f64::NAN);
                self.object((got - count).abs() <= 0.5 + 1e-6 * count, || {
                    format!("{at}: {got} particles of {name}, must be {count}")
                });
            }
            self.object(told.keys().eq(names.iter()), || format!("{at}: flake of {told:?}"));
        }
    }

    /// The time at heat is what the book allows, less what is spent.
    pub(super) fn heats(&mut self, name: &str, pot: &Value) {
        let at = format!("pot {name}, heats");
        let heats = &pot["heats"];
        if pot["there"].is_null() && pot["from_shelf"].is_null() {
            self.object(heats["in_all"] == heats["count"], || format!("{at}: of a fresh pot"));
        }
        let known = &heats["budget"]["known"];
        if known.is_null() {
            return;
        }
        let base = text(&known["material"]);
        let stated = &self.shop.book["materials"][&base]["budget"];
        let temperature = stated["at"].as_str().map_or(f64::NAN, amount::celsius);
        self.object((value(&known["at"]) - temperature).abs() < 1e-9, || format!("{at}: at"));
        let of = |key: &str| value(&known[key]);
        // What was spent before is a part of what is spent.
        let left = of("budget") - of("spent");
        let right = if left >= 0.0 {
            (of("left") - left).abs() < 1e-6 && known["over"].is_null() && known["needs"].is_null()
        } else {
            (of("over") + left).abs() < 1e-6
        };
        self.object(right, || format!("{at}: {left} s are left"));
        let more = known["more_stabilizer_not_counted"].as_bool();
        let doses = list(&pot["stages"]).iter();
        let doses = doses.filter_map(|stage| recipe_of(self.shop, self.batches, stage));
        let dose = doses.fold(0.0_f64, |most, recipe| {
            let kind = |name: &String| self.shop.materials[name].kind == "stabilizer";
            let of = recipe.additives.iter().filter(|(name, _)| kind(name));
            most.max(of.map(|(_, part)| part).sum())
        });
        // What the stabilizer's own statement lets count.
        let materials = self.shop.book["materials"].as_object().into_iter().flatten();
        let most = materials.filter_map(|(_, material)| share(&material["buys"]["most"]));
        let counted = share(&stated["with"]).into_iter().chain(most).fold(0.0, f64::max);
        self.object(more.is_some_and(|more| !more || dose > counted), || {
            format!("{at}: {dose} of stabilizer, {counted} is counted")
        });
        let fresh = pot["there"].is_null() && pot["from_shelf"].is_null();
        self.object(!fresh || known["before"].is_null(), || format!("{at}: it was not hot before"));
    }

    /// A line's sinking is that of its stage's mix with the mold's hook, at the speed where drag carries it.
    pub(super) fn sinking(&mut self, orders: &Value) {
        for (index, line) in list(&self.plan["lines"]).iter().enumerate() {
            let at = format!("line {index}, sinks");
            let sinks = &line["sinks"]["known"];
            let mold = &self.shop.book["molds"][text(&line["mold"])];
            if mold.is_null() {
                continue;
            }
            let shaped = match line["shape"].as_str() {
                Some(shape) => &mold["cavities"][shape],
                None => mold,
            };
            if sinks.is_null() {
                let none = line["sinks"].is_null() || shaped["body"].is_null();
                self.object(none || !is_code(&line["sinks"]["unknown"]["code"]), || {
                    format!("{at}: {}", line["sinks"])
                });
                self.object(
                    !shaped["body"].is_null()
                        || line["sinks"].is_null()
                        || line["sinks"]["unknown"]["code"] == "body-not-known",
                    || format!("{at}: the mold states no body"),
                );
                continue;
            }
            let of = |key: &str| value(&sinks[key]);
            let hook = mold["hook"]["mass"].as_str().and_then(amount::g).unwrap_or(0.0);
            if sinks["hook"].is_null() {
                self.object(hook == 0.0, || format!("{at}: without its hook"));
            } else {
                self.object(near(of("hook"), hook), || format!("{at}: a hook of {hook} g"));
            }
            let (speed, per_foot) = (of("speed"), of("per_foot"));
            self.object((per_foot * speed - 30.48).abs() < 1e-6, || format!("{at}: a foot"));
            self.object(of("slowest") < speed && speed < of("fastest"), || format!("{at}: range"));
            let motion = text(&sinks["motion"]);
            self.object(is_word(&motion), || format!("{at}: it {motion}"));
            let said = text(&sinks["text"]);
            for key in ["density", "density_uncertainty", "speed", "per_foot"] {
                let part = text(&sinks[key]["text"]);
                let part = if key == "per_foot" { format!("{part} a foot") } else { part };
                self.object(said.contains(&part), || format!("{at}: no {part} in {said}"));
            }
            let digits = |key: &str| text(&sinks[key]["text"]).replace(" cm/s", "");
            let range = format!("({} to {})", digits("slowest"), digits("fastest"));
            self.object(said.contains(&range) && said.ends_with(&motion), || {
                format!("{at}: {said}")
            });
            let Some(batch) = self.batches.iter().find(|batch| batch.lines.contains(&index)) else {
                continue;
            };
            let parts: Vec<(f64, f64)> = batch
                .layers
                .iter()
                .map(|(recipe, part)| (taken(self.shop, mold, recipe, *part).per_ml, *part))
                .collect();
            let voids = share(&mold["voids"]).unwrap_or(0.0);
            let [(recipe, _)] = batch.layers.as_slice() else { continue };
            let (_, cold) = self.shop.hot_and_cold(recipe);
            let density = cold * (1.0 - voids);
            let mass_g = value(&line["piece"]);
            self.object(near(of("density"), density) && !parts.is_empty(), || {
                format!("{at}: {} g/mL, must be {density}", of("density"))
            });
            let stick = &shaped["body"]["stick"];
            let mm = |key: &str| match stick[key].as_str().and_then(amount::number) {
                Some((number, "mm")) => number * 1e-3,
                _ => f64::NAN,
            };
            let water = &self.plan["water"];
            let celsius = value(&water["temperature"]);
            let is_plain = value(&water["salinity"]) == 0.0 && (celsius - 15.5556).abs() < 1e-3;
            if stick.is_null() || !is_plain || orders["lines"].is_null() {
                continue;
            }
            let hook_ml = mold["hook"]["volume"]
                .as_str()
                .and_then(|text| amount::ml(text, self.shop.system))
                .unwrap_or(0.0);
            let body = process::Stick {
                in_water_kg: (mass_g + hook) * 1e-3 - 999.0 * (mass_g / density + hook_ml) * 1e-6,
                diameter_m: mm("diameter"),
                length_m: mm("length"),
            };
            // 1.123 mPa·s: a handbook's table of water between 15 and 16 °C, from memory.
            let wanted = 100.0 * process::sink_m_per_s(&body, 999.0, 1.123e-3);
            self.object((speed / wanted - 1.0).abs() < 3e-3, || {
                format!("{at}: {speed} cm/s, must be {wanted}")
            });
        }
    }

    pub(super) fn water(&mut self) {
        let (water, stated) = (&self.plan["water"], &self.shop.book["limits"]["water"]);
        if stated.is_null() {
            return;
        }
        if let Some(temperature) = stated["temperature"].as_str().map(amount::celsius) {
            let got = value(&water["temperature"]);
            self.object((got - temperature).abs() < 1e-9, || format!("water of {got} °C"));
        }
        if stated["salinity"].is_null() {
            self.object(value(&water["salinity"]) == 0.0, || "fresh water with salt".to_owned());
        }
    }
}
