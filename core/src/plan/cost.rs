//! Cost of a day: each pot's plastic, shared out among the order lines that it serves, with packing and work.
//!
//! A pot's plastic is worth what its materials cost; each stage draws it at the worth it then has per mass, so that
//! the plain pieces of a pot do not pay for the salt of the others. Leftover and sprues that are kept are credited at
//! the share that the book states; leftovers from the shelf come in at the same share.
//! The cost of lost, spare and rejected plastic is borne by the pieces ordered. Sums are exact: the lines add up to the day.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

use super::day::{BatchLine, Day, Line};
use super::layout::{Layout, PotLayout, StageLayout};
use super::places::Places;
use super::pot::Shots;
use super::weigh::Listed;
use crate::book::Book;
use crate::codes::code;
use crate::cost::{
    CostError, Costing, Labor, MaterialCosts, MaterialLine, Money, Used, decimal, share,
};
use crate::fault::Diagnose;
use crate::mix::MaterialId;
use crate::price::Currency;
use crate::quantity::{Mass, Ratio, Time};
use crate::show::{Calculated, Note, Shown, part, text};

part! {
    /// A sum of money.
    pub struct MoneyShown {
        /// Rounded to the currency's minor unit, half away from zero, as a bill shows it.
        pub text: String,
        /// The same without its currency, for a column that names that once.
        pub figure: String,
        /// The sum in the calculation, in steps of 0.000 001: decimal text, which no reader rounds.
        pub amount: String,
        /// The currency's ISO 4217 code.
        pub currency: String,
    }
}

impl From<Money> for MoneyShown {
    fn from(money: Money) -> Self {
        let figure = money.rounded().amount().to_string();
        let currency = money.currency().to_string();
        Self {
            text: [&figure, " ", &currency].concat(),
            figure,
            amount: money.amount().to_string(),
            currency,
        }
    }
}

part! {
    /// Cost of a day. `total` = `materials` + `from_shelf` − `credit` + `packing` + `work`, exactly, and is the
    /// sum over the lines.
    pub struct DayCost {
        /// The order lines, in their order.
        pub lines: Vec<LineCost>,
        /// The orders, each in the place of its first line.
        pub orders: Vec<OrderCost>,
        /// Materials used, by name.
        pub used: Vec<MaterialCost>,
        /// All materials, by what is used.
        pub materials: MoneyShown,
        /// Whole packages of all materials, as if there were no stock.
        pub to_buy: MoneyShown,
        /// Worth of the leftovers from the shelf.
        pub from_shelf: MoneyShown,
        /// Worth of what is left over at the end.
        pub credit: MoneyShown,
        /// Packing.
        pub packing: MoneyShown,
        /// Work.
        pub work: MoneyShown,
        /// All of it.
        pub total: MoneyShown,
        /// Its parts, as a sentence.
        pub text: String,
    }
}

part! {
    /// Cost of an order line.
    pub struct LineCost {
        /// Its part of the pots' plastic.
        pub materials: MoneyShown,
        /// Its packing; zero if it is not sold by the pack.
        pub packing: MoneyShown,
        /// Its part of the work.
        pub work: MoneyShown,
        /// All of it.
        pub total: MoneyShown,
        /// Of one piece.
        pub per_piece: MoneyShown,
        /// Of one pack, if sold by the pack.
        pub per_pack: Option<MoneyShown>,
        /// Price with the margin of the book: of one pack if sold by the pack, else of one piece.
        pub price: Option<MoneyShown>,
    }
}

part! {
    /// Cost of an order.
    pub struct OrderCost {
        /// The order.
        pub order: String,
        /// Cost of its lines.
        pub total: MoneyShown,
        /// Its lines at their prices.
        pub price: Option<MoneyShown>,
    }
}

part! {
    /// Cost of a material.
    pub struct MaterialCost {
        /// Which.
        pub material: String,
        /// How much of it is used; of a day, what goes in fresh.
        pub mass: Shown<Mass>,
        /// The price of that much.
        pub cost: MoneyShown,
        /// Whole packages that hold it.
        pub packages: u64,
        /// Cost of these.
        pub to_buy: MoneyShown,
    }
}

/// Cost of a day by `book`; `None` if the book does not ask for it.
pub(super) fn cost(layout: &Layout<'_>, day: &Day, book: &Book) -> Option<Calculated<DayCost>> {
    let costing = book.costing.as_ref()?;
    let unpriced = unpriced(&layout.pots);
    if !unpriced.is_empty() {
        return Some(Calculated::Unknown(Note {
            code: code!("price-not-known").to_string(),
            message: format!(
                "No cost for the day: the book states no price of {}.",
                unpriced.join(", ")
            ),
        }));
    }
    let cost = Calculation::new(layout, day, book, costing).and_then(Calculation::day);
    Some(match cost {
        Ok(cost) => Calculated::Known(cost),
        Err(error) => Calculated::Unknown(Note {
            code: error.code().to_string(),
            message: format!("No cost for the day. {error} {}", error.help()),
        }),
    })
}

/// Materials that go in and have no price, by name.
fn unpriced<'a>(pots: &[PotLayout<'a>]) -> Vec<&'a str> {
    let fresh = pots.iter().flat_map(|pot| pot.stages.iter().flat_map(fresh));
    let shelf = pots.iter().filter_map(|pot| pot.from_shelf.takes()).flat_map(|from| &from.brings);
    let used = fresh.map(|(_, used)| used.material).chain(shelf.map(|(material, _)| *material));
    let unpriced = used.filter(|material| material.price.is_none());
    let mut names: Vec<&str> = unpriced.map(|material| material.name.as_str()).collect();
    names.sort_unstable();
    names.dedup();
    names
}

/// Materials that a stage adds, by the ways that its weigh list chooses.
fn fresh<'l, 'a>(stage: &'l StageLayout<'a>) -> impl Iterator<Item = (MaterialId, Used<'a>)> + 'l {
    stage.weigh.iter().map(|listed| {
        let Listed { material, addition, .. } = listed;
        (addition.material, Used { material, mass: listed.gives() })
    })
}

/// A day's costs while they add up.
struct Calculation<'a> {
    day: &'a Day,
    book: &'a Book,
    costing: &'a Costing,
    currency: Currency,
    lines: Vec<Parts>,
    materials: MaterialCosts,
    from_shelf: Money,
    credit: Money,
}

/// Parts of a line's cost.
#[derive(Clone, Copy)]
struct Parts {
    plastic: Money,
    packing: Money,
    work: Money,
}

/// A pot's worth, shared.
struct PotWorth<'a> {
    from_shelf: Money,
    credit: Money,
    /// Cost that its pieces bear.
    net: Money,
    /// The worth of what each draw's pieces take, in the currency.
    draws: Vec<(&'a Shots<'a>, f64)>,
}

impl<'a> Calculation<'a> {
    fn new(
        layout: &'a Layout<'a>,
        day: &'a Day,
        book: &'a Book,
        costing: &'a Costing,
    ) -> Result<Self, CostError> {
        let nothing = Money::zero(currency(book)?);
        let mut sums: Vec<Option<Used<'_>>> = book.materials.iter().map(|_| None).collect();
        for (id, used) in layout.pots.iter().flat_map(|pot| pot.stages.iter().flat_map(fresh)) {
            if let Some(sum) = sums.get_mut(id.0 as usize) {
                sum.get_or_insert(Used { mass: Mass::default(), ..used }).mass += used.mass;
            }
        }
        let used: Vec<Used<'_>> = sums.into_iter().flatten().collect();
        let materials = match used.as_slice() {
            // All of it came from the shelf.
            [] => MaterialCosts { lines: Vec::new(), used: nothing, to_buy: nothing },
            used => MaterialCosts::new(used, book.system)?,
        };
        let parts = Parts { plastic: nothing, packing: nothing, work: nothing };
        let mut calculation = Self {
            day,
            book,
            costing,
            currency: nothing.currency(),
            lines: vec![parts; day.lines.len()],
            materials,
            from_shelf: nothing,
            credit: nothing,
        };
        let mut taken = Taken { book, so_far: book.materials.iter().map(|_| None).collect() };
        for pot in &layout.pots {
            let worth = calculation.worth(pot, &mut taken)?;
            calculation.from_shelf = calculation.from_shelf.plus(worth.from_shelf)?;
            calculation.credit = calculation.credit.plus(worth.credit)?;
            calculation.share_plastic(&worth)?;
            calculation.share_work(pot)?;
        }
        calculation.pack()?;
        Ok(calculation)
    }

    /// Worth of a pot's plastic, and the part of it in each draw's pieces.
    fn worth(
        &self,
        pot: &'a PotLayout<'a>,
        taken: &mut Taken<'a>,
    ) -> Result<PotWorth<'a>, CostError> {
        let mut added = Money::zero(self.currency);
        let (mut worth, mut kept) = (0.0, 0.0);
        let mut from_shelf = Money::zero(self.currency);
        for &(material, mass) in pot.from_shelf.takes().iter().flat_map(|from| &from.brings) {
            let new = Used { material, mass }.cost(self.book.system)?;
            from_shelf = from_shelf.plus(new)?;
        }
        let left_over_worth = share(self.costing.left_over_worth, "What left-over is worth")?;
        let from_shelf = from_shelf.scaled(left_over_worth, Decimal::ONE)?;
        let mut in_pot = float(from_shelf);
        let mut draws = Vec::new();
        for stage in &pot.stages {
            for (id, used) in fresh(stage) {
                let cost = taken.cost(id, used)?;
                added = added.plus(cost)?;
                in_pot += float(cost);
            }
            worth = in_pot / stage.held.value;
            let mut sprues = 0.0;
            for draw in &stage.draws {
                let shots = f64::from(draw.shots);
                let mass = draw.layer.mass;
                // A laminated piece's sprue holds both colors: nothing can be made of it.
                let laminated = draw.of.batch.is_laminated();
                let sprue = if laminated { 0.0 } else { mass.sprue.value };
                sprues += shots * sprue;
                let pieces = shots * (mass.fill.value - sprue);
                draws.push((draw.of, worth * pieces));
            }
            kept += worth * (sprues - stage.returned.value);
            in_pot = worth * stage.carried.value;
        }
        kept += worth * pot.left.value;
        let credit = self.money(kept.max(0.0) * self.costing.left_over_worth.value)?;
        let net = added.plus(from_shelf)?.minus(credit)?;
        Ok(PotWorth { from_shelf, credit, net, draws })
    }

    fn money(&self, sum: f64) -> Result<Money, CostError> {
        Money::new(decimal(sum, 6, "A sum of money")?, self.currency)
    }

    /// Shares what the pieces of a pot bear among the lines, by the worth of the plastic in them.
    fn share_plastic(&mut self, worth: &PotWorth<'_>) -> Result<(), CostError> {
        let weights = weights(&worth.draws);
        self.share(worth.net, &weights, |parts| &mut parts.plastic)
    }

    /// Shares the work of a pot among its lines: heats and cleaning by its shots, and each shot by its pieces. A shot
    /// of a laminated piece is one shot: each of its layers is its part of it.
    fn share_work(&mut self, pot: &PotLayout<'_>) -> Result<(), CostError> {
        let Some(work) = &self.costing.work else { return Ok(()) };
        let mut shots = Vec::new();
        for draw in pot.stages.iter().flat_map(|stage| &stage.draws) {
            let layers = draw.of.layers.len() as f64;
            shots.push((draw.of, f64::from(draw.shots) / layers));
        }
        let all = shots.iter().fold(0.0, |sum, (_, shots)| sum + shots);
        let heats = work.per_heat * f64::from(pot.heats());
        let time = work.per_pot + heats + work.per_shot * all;
        let cost = self.work(time)?;
        let weights = weights(&shots);
        self.share(cost, &weights, |parts| &mut parts.work)
    }

    fn work(&self, time: Time) -> Result<Money, CostError> {
        match &self.costing.work {
            Some(work) => Labor { time, rate: &work.rate }.cost(self.book.system),
            None => Ok(Money::zero(self.currency)),
        }
    }

    fn share(
        &mut self,
        sum: Money,
        weights: &[(usize, f64)],
        part: fn(&mut Parts) -> &mut Money,
    ) -> Result<(), CostError> {
        if sum.amount().is_zero() {
            return Ok(());
        }
        let most = weights.iter().fold(0.0, |most: f64, (_, weight)| most.max(*weight));
        let mut scaled = Vec::with_capacity(weights.len());
        for (_, weight) in weights {
            scaled.push(share(Ratio::from(weight / most), "A share of a cost")?);
        }
        for ((line, _), cost) in weights.iter().zip(sum.split(&scaled)?) {
            if let Some(parts) = self.lines.get_mut(*line) {
                let place = part(parts);
                *place = place.plus(cost)?;
            }
        }
        Ok(())
    }

    /// Packing, and the work of it.
    fn pack(&mut self) -> Result<(), CostError> {
        let nothing = Money::zero(self.currency);
        let mut packed = Vec::with_capacity(self.lines.len());
        for (line, parts) in self.day.lines.iter().zip(&self.lines) {
            let Some((packs, _)) = line.packs else {
                packed.push(*parts);
                continue;
            };
            let mut packing = nothing;
            for item in &self.costing.packing {
                packing = packing.plus(item.packing().cost(packs)?)?;
            }
            let times = self.costing.work.as_ref();
            let time = times.map_or(Time::default(), |work| work.per_pack * f64::from(packs));
            let work = parts.work.plus(self.work(time)?)?;
            packed.push(Parts { packing, work, ..*parts });
        }
        self.lines = packed;
        Ok(())
    }

    fn day(self) -> Result<DayCost, CostError> {
        let sum = |part: fn(&Parts) -> Money| {
            let parts = self.lines.iter().map(part);
            parts.into_iter().try_fold(Money::zero(self.currency), Money::plus)
        };
        let (packing, work) = (sum(|parts| parts.packing)?, sum(|parts| parts.work)?);
        let plastic = self.materials.used.plus(self.from_shelf)?.minus(self.credit)?;
        let total = plastic.plus(packing)?.plus(work)?;
        let mut lines = Vec::with_capacity(self.lines.len());
        let mut orders: Vec<(&str, Money, Option<Money>)> = Vec::new();
        let mut place = Places::default();
        for (parts, line) in self.lines.iter().zip(&self.day.lines) {
            let (shown, total, bring) = self.line(parts, line)?;
            lines.push(shown);
            let name = line.order.bytes().map(u64::from).collect();
            let at = place.get_or(name, orders.len());
            match orders.get_mut(at) {
                Some((_, sum, price)) => {
                    *sum = sum.plus(total)?;
                    *price = match (*price, bring) {
                        (Some(price), Some(bring)) => Some(price.plus(bring)?),
                        _ => None,
                    };
                }
                None => orders.push((&line.order, total, bring)),
            }
        }
        let orders = orders.into_iter().map(|(order, total, price)| OrderCost {
            order: order.to_string(),
            total: total.into(),
            price: price.map(MoneyShown::from),
        });
        let shown = |money: Money| money.rounded().to_string();
        let unless_none = |money: Money, words: &str| match money.amount().is_zero() {
            true => String::new(),
            false => format!("{words}{}", shown(money)),
        };
        let shelf = unless_none(self.from_shelf, " and leftover for ");
        let credit = match unless_none(self.credit, ", of which ") {
            none if none.is_empty() => none,
            credit => format!("{credit} stays as leftover"),
        };
        let text = format!(
            "Materials for {}{shelf}{credit}; packing {}; work {}: {} altogether.",
            shown(self.materials.used),
            shown(packing),
            shown(work),
            shown(total)
        );
        Ok(DayCost {
            lines,
            orders: orders.collect(),
            used: self.materials.lines.iter().map(MaterialCost::from).collect(),
            materials: self.materials.used.into(),
            to_buy: self.materials.to_buy.into(),
            from_shelf: self.from_shelf.into(),
            credit: self.credit.into(),
            packing: packing.into(),
            work: work.into(),
            total: total.into(),
            text,
        })
    }

    /// A line's costs, their sum, and what it brings at its price.
    fn line(
        &self,
        parts: &Parts,
        line: &Line,
    ) -> Result<(LineCost, Money, Option<Money>), CostError> {
        let total = parts.plastic.plus(parts.packing)?.plus(parts.work)?;
        let of = |count: u32| total.scaled(Decimal::ONE, Decimal::from(count));
        let per_piece = of(line.pieces)?;
        let per_pack = line.packs.map(|(packs, _)| of(packs)).transpose()?;
        let price = match self.costing.profit {
            Some(profit) => Some(profit.price(per_pack.unwrap_or(per_piece))?),
            None => None,
        };
        let sold = line.packs.map_or(line.pieces, |(packs, _)| packs);
        let brings =
            price.map(|price| price.scaled(Decimal::from(sold), Decimal::ONE)).transpose()?;
        let shown = LineCost {
            materials: parts.plastic.into(),
            packing: parts.packing.into(),
            work: parts.work.into(),
            total: total.into(),
            per_piece: per_piece.into(),
            per_pack: per_pack.map(MoneyShown::from),
            price: price.map(MoneyShown::from),
        };
        Ok((shown, total, brings))
    }
}

/// Weight of each line in a share, if each batch has a weight: by the mass of its pieces. Rising by line.
fn weights(batches: &[(&Shots<'_>, f64)]) -> Vec<(usize, f64)> {
    let mut weights: Vec<(usize, f64)> = Vec::new();
    for &(of, weight) in batches {
        let lines = &of.batch.lines;
        let mass =
            |line: &BatchLine<'_>| f64::from(line.line.pieces) * of.piece(line.cavities).value;
        let all = lines.iter().fold(0.0, |sum, line| sum + mass(line));
        weights.extend(lines.iter().map(|line| (line.number, weight * (mass(line) / all))));
    }
    // What one line has of several batches is added up in the order of the batches.
    weights.sort_by_key(|&(line, _)| line);
    weights.dedup_by(|next, sum| {
        let is_same = next.0 == sum.0;
        if is_same {
            sum.1 += next.1;
        }
        is_same
    });
    weights
}

/// Currency of the book's prices: they have one in common if the book states how to calculate costs.
fn currency(book: &Book) -> Result<Currency, CostError> {
    let mut prices = book.materials.iter().filter_map(|(_, material)| material.price.as_ref());
    prices.next().map(|price| price.currency).ok_or(CostError::NothingUsed)
}

/// Mass taken of each material so far, and its cost: each taking costs what the sum then costs more, so
/// that the takings add up to the cost of all.
struct Taken<'a> {
    book: &'a Book,
    /// By the material's place.
    so_far: Vec<Option<(Mass, Money)>>,
}

impl Taken<'_> {
    fn cost(&mut self, id: MaterialId, used: Used<'_>) -> Result<Money, CostError> {
        let place = id.0 as usize;
        let so_far = self.so_far.get(place).copied().flatten();
        let mass = so_far.map_or(Mass::default(), |(before, _)| before) + used.mass;
        let all = Used { mass, ..used }.cost(self.book.system)?;
        if let Some(so_far) = self.so_far.get_mut(place) {
            *so_far = Some((mass, all));
        }
        so_far.map_or(Ok(all), |(_, paid)| all.minus(paid))
    }
}

impl From<&MaterialLine> for MaterialCost {
    fn from(line: &MaterialLine) -> Self {
        Self {
            material: line.material.clone(),
            mass: text::mass(line.mass),
            cost: line.cost.into(),
            packages: line.packages,
            to_buy: line.to_buy.into(),
        }
    }
}

/// A sum as a plain number, to share by.
fn float(money: Money) -> f64 {
    money.amount().to_f64().unwrap_or(f64::NAN)
}
