//! The fewest pots of a small day, from its documents: every way to put whole shots into pots is tried.
//!
//! Nothing here knows of marks: how a base is measured is no reason for a pot.

use serde_json::Value;

use crate::reference::plan::{batches, list, taken};
use crate::reference::shop::{Recipe, Shop};
use crate::reference::{amount, clock};

/// More shots than that, each layer counted, are not tried.
const MOST_SHOTS: usize = 10;

/// One shot of one recipe; masses in grams.
struct Shot {
    recipe: usize,
    out: f64,
    /// Its sprue, where that goes back into the pot.
    back: f64,
    /// Mass that the injector keeps of it.
    kept: f64,
    /// Seconds that it takes; 0 if not known.
    every: f64,
    /// Of a laminated piece: which, and which of its shots.
    piece: Option<(usize, u32)>,
}

/// Shots of a laminated piece out of the same pots, one after the other.
struct Session {
    piece: usize,
    /// Pot and recipe of each layer.
    layers: Vec<(usize, usize)>,
    shots: usize,
    every: f64,
}

struct Cup {
    /// Milliliters that it may be filled to.
    holds: f64,
    /// Grams that cannot be drawn from it.
    undrawn: f64,
}

/// One recipe that a pot is at.
#[derive(Clone, Copy)]
struct Visit {
    recipe: usize,
    out: f64,
    back: f64,
    kept: f64,
}

/// A day in numbers.
struct Day {
    recipes: Vec<Recipe>,
    /// Grams in a milliliter of each, cold.
    density: Vec<f64>,
    shots: Vec<Shot>,
    cups: Vec<Cup>,
    /// Milliliters that a pot starts with at least.
    least: f64,
    heats: usize,
    /// Seconds that a pot stays hot; infinite if not known, or if nothing limits its heats.
    hot_for: f64,
    fresh_base: bool,
}

/// Heats of a pot at one recipe.
struct VisitHeats {
    /// Without those between shots: the injector keeps something at each.
    sessions: usize,
    /// All; `None` if a shot takes longer than the pot stays hot.
    all: Option<usize>,
}

/// The fewest pots; `None` where a shot fits no pot, or where there are too many shots to try.
pub fn fewest_pots(book: &Value, orders: &Value, starter: &Value) -> Option<usize> {
    let day = Day::read(book, orders, starter);
    (day.shots.len() <= MOST_SHOTS).then(|| day.fewest()).flatten()
}

impl Day {
    fn read(book: &Value, orders: &Value, starter: &Value) -> Self {
        let shop = Shop::new(book, starter);
        let melt_again = book["limits"]["sprues"] == "melt-again";
        let keeps = &book["bench"]["injector"]["keeps"];
        let keeps = if keeps.is_null() { 0.0 } else { shop.ml(keeps) };
        let (mut recipes, mut shots): (Vec<Recipe>, Vec<Shot>) = (Vec::new(), Vec::new());
        for (piece, batch) in batches(&shop, orders).iter().enumerate() {
            let mold = &book["molds"][&batch.mold];
            let laminated = batch.layers.len() > 1;
            for (recipe, part) in &batch.layers {
                let known = recipes.iter().position(|known| known.is(recipe));
                let index = known.unwrap_or(recipes.len());
                if known.is_none() {
                    recipes.push(recipe.clone());
                }
                let taken = taken(&shop, mold, recipe, *part);
                shots.extend((0..batch.shots).map(|shot| Shot {
                    recipe: index,
                    out: taken.fill,
                    back: if melt_again && !laminated { taken.sprue } else { 0.0 },
                    kept: keeps * taken.hot,
                    every: clock::every(book, &batch.mold.as_str().into()).unwrap_or(0.0),
                    piece: laminated.then_some((piece, shot)),
                }));
            }
        }
        let full = shop.limit("most_full").unwrap_or(1.0);
        let grams = |value: &Value| value.as_str().and_then(amount::g).unwrap_or(0.0);
        let cup = |cup: &Value| Cup {
            holds: shop.ml(&cup["holds"]) * full,
            undrawn: grams(&cup["film"]).max(grams(&cup["heel"])),
        };
        let least = &book["limits"]["least_pot"];
        let heats = book["limits"]["heats"].as_u64();
        Self {
            density: recipes.iter().map(|recipe| shop.cup_g_per_ml(recipe)).collect(),
            recipes,
            shots,
            cups: list(&book["bench"]["cups"]).iter().map(cup).collect(),
            least: if least.is_null() { 0.0 } else { shop.ml(least) },
            heats: heats.map_or(usize::MAX, |heats| heats as usize),
            hot_for: heats.and_then(|_| clock::hot_for(book)).unwrap_or(f64::INFINITY),
            fresh_base: book["limits"]["fresh_base"] == true,
        }
    }

    fn fewest(&self) -> Option<usize> {
        let all = (1_usize << self.shots.len()) - 1;
        // Without laminated pieces these are all heats; with them there cannot be fewer.
        let heats = |pot: usize| move |recipe: usize| self.visit_heats(pot, recipe, &[]);
        let may_fit: Vec<bool> =
            (0..=all).map(|pot| !self.ways(pot, &heats(pot)).is_empty()).collect();
        let one_by_one = (0..self.shots.len()).all(|shot| may_fit[1 << shot]);
        if !one_by_one {
            return None;
        }
        if self.shots.iter().all(|shot| shot.piece.is_none()) {
            return Some(fewest_parts(&may_fit));
        }
        let mut best = self.shots.len() + 1;
        self.put(0, &mut Vec::new(), &may_fit, &mut best);
        (best <= self.shots.len()).then_some(best)
    }

    /// Puts the shots from number `next` on into pots, in all ways that may have fewer than `best`.
    fn put(&self, next: usize, pots: &mut Vec<usize>, may_fit: &[bool], best: &mut usize) {
        if pots.len() >= *best {
            return;
        }
        if next == self.shots.len() {
            if self.can_be_worked(pots) {
                *best = pots.len();
            }
            return;
        }
        for pot in 0..pots.len() {
            let with = pots[pot] | 1 << next;
            let piece = self.shots[next].piece;
            let twice = piece.is_some() && self.of(pots[pot]).any(|other| other.piece == piece);
            if may_fit[with] && !twice {
                let before = std::mem::replace(&mut pots[pot], with);
                self.put(next + 1, pots, may_fit, best);
                pots[pot] = before;
            }
        }
        pots.push(1 << next);
        self.put(next + 1, pots, may_fit, best);
        pots.pop();
    }

    fn of(&self, pot: usize) -> impl Iterator<Item = &Shot> {
        self.shots.iter().enumerate().filter(move |(i, _)| pot >> i & 1 == 1).map(|(_, shot)| shot)
    }

    /// The orders in which a pot can serve its shots, where it is heated so often at each recipe.
    fn ways(&self, pot: usize, heats: &dyn Fn(usize) -> VisitHeats) -> Vec<Vec<usize>> {
        let mut visits: Vec<Visit> = Vec::new();
        for shot in self.of(pot) {
            let Shot { recipe, out, back, kept, .. } = *shot;
            match visits.iter_mut().find(|visit| visit.recipe == recipe) {
                Some(visit) => {
                    visit.out += out;
                    visit.back += back;
                    visit.kept = visit.kept.max(kept);
                }
                None => visits.push(Visit { recipe, out, back, kept }),
            }
        }
        let mut all = 0;
        for visit in &mut visits {
            let heats = heats(visit.recipe);
            visit.out += visit.kept * heats.sessions as f64;
            let Some(own) = heats.all else { return Vec::new() };
            all += own;
        }
        if all > self.heats {
            return Vec::new();
        }
        let mut ways = Vec::new();
        permute(&mut visits, 0, &mut |order| {
            let follows = order.windows(2).all(|two| self.can_become(two[0].recipe, two[1].recipe));
            if follows && self.cups.iter().any(|cup| self.fits(order, cup)) {
                ways.push(order.iter().map(|visit| visit.recipe).collect());
            }
        });
        ways
    }

    /// Heats of `pot` at `recipe`, with the `sessions` that it has there, as their shots and seconds a shot. Its
    /// other shots go on in the heat of the first session, whichever and in whichever order takes the fewest heats.
    fn visit_heats(&self, pot: usize, recipe: usize, sessions: &[(usize, f64)]) -> VisitHeats {
        let at_recipe = self.of(pot).filter(|shot| shot.recipe == recipe);
        let longest = at_recipe.map(|shot| shot.every).fold(0.0, f64::max);
        if longest > self.hot_for * (1.0 + 1e-9) {
            return VisitHeats { sessions: sessions.len().max(1), all: None };
        }
        let plain = self.of(pot).filter(|shot| shot.recipe == recipe && shot.piece.is_none());
        let plain: Vec<f64> = plain.map(|shot| shot.every).collect();
        let alone = |&(shots, every): &(usize, f64)| self.heats_after(0.0, &vec![every; shots]);
        let all = sessions.iter().map(|s| alone(s).0).sum::<usize>();
        let more = sessions.iter().map(|s| self.heats_after(alone(s).1, &plain).0 - 1).min();
        let all = more.map_or_else(|| self.heats_after(0.0, &plain).0, |more| all + more);
        VisitHeats { sessions: sessions.len().max(1), all: Some(all) }
    }

    /// The fewest heats for shots that take `every` seconds each, in any order, if the first heat has `used` seconds
    /// already; and the seconds of the last heat.
    fn heats_after(&self, used: f64, every: &[f64]) -> (usize, f64) {
        let mut best = vec![(usize::MAX, f64::INFINITY); 1 << every.len()];
        best[0] = (1, used);
        for made in 0..best.len() {
            let (heats, used) = best[made];
            for (shot, every) in every.iter().enumerate().filter(|(shot, _)| made >> shot & 1 == 0)
            {
                let goes_on = used + every <= self.hot_for * (1.0 + 1e-9);
                let after = if goes_on { (heats, used + every) } else { (heats + 1, *every) };
                let known = &mut best[made | 1 << shot];
                if after < *known {
                    *known = after;
                }
            }
        }
        best[best.len() - 1]
    }

    fn can_become(&self, from: usize, to: usize) -> bool {
        let (from, to) = (&self.recipes[from], &self.recipes[to]);
        if self.fresh_base {
            let (from, to) = (from.fractions(), to.fractions());
            return from.keys().all(|name| to.contains_key(name));
        }
        let same = |a: f64, b: f64| (a - b).abs() <= 1e-12;
        let base = from.base.len() == to.base.len()
            && from
                .base
                .iter()
                .all(|(name, part)| to.base.get(name).is_some_and(|p| same(*p, *part)));
        let no_more = |(name, part): (&String, &f64)| {
            to.additives.get(name).is_some_and(|more| *more >= part - 1e-12)
        };
        base && from.additives.iter().all(no_more)
    }

    /// Grams of `from` that go into a gram of `to` at most.
    fn takes_up(&self, from: usize, to: usize) -> f64 {
        let to = self.recipes[to].fractions();
        let from = self.recipes[from].fractions();
        from.iter().map(|(name, part)| to[name] / part).fold(f64::INFINITY, f64::min)
    }

    fn fits(&self, order: &[Visit], cup: &Cup) -> bool {
        let most = |visit: &Visit| cup.holds * self.density[visit.recipe] * (1.0 + 1e-12);
        let Some(first) = order.first() else { return true };
        let least = self.least * self.density[first.recipe];
        let back = |k: usize| if k + 1 < order.len() { order[k].back } else { 0.0 };
        if self.fresh_base {
            // As little as it takes at each; what cannot be drawn must fit into the next.
            let mut held = least;
            for (k, visit) in order.iter().enumerate() {
                held = held.max(visit.out + cup.undrawn);
                if held > most(visit) {
                    return false;
                }
                if let Some(next) = order.get(k + 1) {
                    held = (held - visit.out + back(k)) / self.takes_up(visit.recipe, next.recipe);
                }
            }
            return true;
        }
        // Each stage holds `grows` times the start, less `lacks`.
        let (mut grows, mut lacks, mut start) = (1.0, 0.0, least);
        let mut stages = Vec::new();
        for (k, visit) in order.iter().enumerate() {
            start = f64::max(start, (visit.out + cup.undrawn + lacks) / grows);
            stages.push((grows, lacks));
            if let Some(next) = order.get(k + 1) {
                let share = |recipe: usize| 1.0 / self.recipes[recipe].total();
                let more = share(visit.recipe) / share(next.recipe);
                grows *= more;
                lacks = (lacks + visit.out - back(k)) * more;
            }
        }
        stages.iter().zip(order).all(|((grows, lacks), visit)| start * grows - lacks <= most(visit))
    }

    /// Whether there is an order of work: all shots of a laminated piece from the same pots are one session, a heat in
    /// each of them.
    fn can_be_worked(&self, pots: &[usize]) -> bool {
        let mut sessions: Vec<Session> = Vec::new();
        let mut seen = Vec::new();
        for shot in &self.shots {
            let Some(piece) = shot.piece.filter(|piece| !seen.contains(piece)) else { continue };
            seen.push(piece);
            let layers =
                self.shots.iter().enumerate().filter(|(_, layer)| layer.piece == shot.piece);
            let at = layers.filter_map(|(index, layer)| {
                let pot = pots.iter().position(|pot| pot >> index & 1 == 1)?;
                Some((pot, layer.recipe))
            });
            let layers: Vec<(usize, usize)> = at.collect();
            let same = |known: &&mut Session| known.piece == piece.0 && known.layers == layers;
            match sessions.iter_mut().find(same) {
                Some(known) => known.shots += 1,
                None => {
                    sessions.push(Session { piece: piece.0, layers, shots: 1, every: shot.every });
                }
            }
        }
        let mut ways: Vec<Vec<Vec<usize>>> = Vec::new();
        for (index, &pot) in pots.iter().enumerate() {
            let heats = |recipe: usize| {
                let here = sessions.iter().filter(|s| s.layers.contains(&(index, recipe)));
                let here: Vec<(usize, f64)> = here.map(|s| (s.shots, s.every)).collect();
                self.visit_heats(pot, recipe, &here)
            };
            ways.push(self.ways(pot, &heats));
        }
        let sessions: Vec<Vec<(usize, usize)>> = sessions.into_iter().map(|s| s.layers).collect();
        orders(&ways, &mut Vec::new(), &|order| works(order, &sessions))
    }
}

/// Whether all sessions can be shot where pots visit recipes in this order: whatever is possible is done.
fn works(order: &[&Vec<usize>], sessions: &[Vec<(usize, usize)>]) -> bool {
    let mut at = vec![0; order.len()];
    let mut left: Vec<&Vec<(usize, usize)>> = sessions.iter().collect();
    loop {
        for (pot, visits) in order.iter().enumerate() {
            while visits
                .get(at[pot])
                .is_some_and(|recipe| !left.iter().any(|session| session.contains(&(pot, *recipe))))
            {
                at[pot] += 1;
            }
        }
        let before = left.len();
        left.retain(|session| {
            !session.iter().all(|&(pot, recipe)| order[pot].get(at[pot]) == Some(&recipe))
        });
        if left.is_empty() {
            return true;
        }
        if left.len() == before {
            return false;
        }
    }
}

/// Whether one of all ways to choose an order for each pot `works`.
fn orders<'a>(
    ways: &'a [Vec<Vec<usize>>],
    chosen: &mut Vec<&'a Vec<usize>>,
    works: &dyn Fn(&[&Vec<usize>]) -> bool,
) -> bool {
    let Some(of_one) = ways.get(chosen.len()) else { return works(chosen) };
    of_one.iter().any(|way| {
        chosen.push(way);
        let found = orders(ways, chosen, works);
        chosen.pop();
        found
    })
}

fn permute<T>(items: &mut Vec<T>, from: usize, each: &mut dyn FnMut(&[T])) {
    if from == items.len() {
        return each(items);
    }
    for other in from..items.len() {
        items.swap(from, other);
        permute(items, from + 1, each);
        items.swap(from, other);
    }
}

/// The smallest number of sets that `fit` and make up the whole together.
fn fewest_parts(fit: &[bool]) -> usize {
    let mut fewest = vec![usize::MAX; fit.len()];
    fewest[0] = 0;
    for all in 1..fit.len() {
        // The part that holds the lowest.
        let low = all & all.wrapping_neg();
        let mut part = all;
        while part > 0 {
            if part & low > 0 && fit[part] {
                fewest[all] = fewest[all].min(fewest[all ^ part].saturating_add(1));
            }
            part = (part - 1) & all;
        }
    }
    fewest[fit.len() - 1]
}
