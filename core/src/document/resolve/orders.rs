//! A day's order lines, with products, molds and formulas of a book.

use alloc::vec::Vec;

use super::Resolver;
use super::date::{is_date, is_shaped_as_date};
use super::product::Wanted;
use crate::book::{Book, Product};
use crate::codes::code;
use crate::document::orders::{OrderLine, OrdersDocument};
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::json::reader::LARGEST_COUNT;
use crate::plan::day::{Day, Line};

impl Day {
    /// The orders in `document`, with products, molds and formulas of `book`.
    ///
    /// # Errors
    /// All faults of the document together.
    pub fn resolve(document: &OrdersDocument, book: &Book) -> Result<Self, Faults> {
        let mut resolver = Resolver::new(book.system);
        if document.lines.is_empty() {
            resolver.fault(
                code!("no-lines"),
                &At("/lines"),
                &"The order list is empty.",
                &"Add a line: { \"order\": \"31\", \"product\": ..., \"pieces\": 24 }.",
            );
        }
        let lines = resolver.each(&At("/lines"), &document.lines, |resolver, path, line| {
            resolver.line(path, line, book)
        });
        let shelf = resolver.shelf(document.shelf.as_deref().unwrap_or_default(), book);
        let day = document.day.as_ref().map(|day| day.0.clone());
        resolver.day_of_orders(document);
        let stock = document.stock.as_ref();
        let stock = stock.map_or(Some(Vec::new()), |stock| resolver.stock(stock, book));
        let pots = document.pots.as_deref().unwrap_or_default();
        let pots = lines.as_ref().and_then(|lines| resolver.pots_there(pots, lines, book));
        let letters = document.letters.iter().flatten();
        let letters = letters.map(|(id, letter)| (id.clone(), letter.0.clone())).collect();
        let read = lines.zip(shelf).zip(stock).zip(pots);
        resolver.finish(read.map(|(((lines, shelf), stock), pots)| Self {
            day,
            lines,
            shelf,
            stock,
            pots,
            letters,
        }))
    }
}

impl Resolver {
    /// A day that is written as a date is one of the calendar, and nothing on the shelf was made after it.
    fn day_of_orders(&mut self, document: &OrdersDocument) {
        let Some(day) = document.day.as_ref().map(|day| day.0.as_str()) else { return };
        if !is_shaped_as_date(day) {
            return;
        }
        if !is_date(day) {
            self.fault(
                code!("not-a-date"),
                &At("/day"),
                &format_args!("\"{day}\" is not a day of the calendar."),
                &"Write year-month-day, such as \"2027-03-05\" (ISO 8601), or a name that is no date, such as \"Tuesday\".",
            );
            return;
        }
        let shelf = At("/shelf");
        for (index, entry) in document.shelf.iter().flatten().enumerate() {
            // Dates in this form sort by time.
            let Some(made) = entry.made.as_deref().filter(|made| is_date(made) && *made > day)
            else {
                continue;
            };
            self.fault(
                code!("made-after-day"),
                &shelf.index(index).key("made"),
                &format_args!("It was made on {made}, after {day}, the day of these orders."),
                &"Check the two dates, and their years.",
            );
        }
    }

    pub(crate) fn line(&mut self, path: &Path<'_>, line: &OrderLine, book: &Book) -> Option<Line> {
        let own = line.mold.is_some()
            || line.formulas.is_some()
            || line.layers.is_some()
            || line.overlap.is_some();
        let product = match (&line.product, own) {
            (Some(name), false) => {
                let mut names = book.products.iter().map(|product| product.name.as_str());
                let path = path.key("product");
                self.find("product", &path, &name.0, book.find_product(&name.0), &mut names)
                    .and_then(|index| book.products.get(index).cloned())
            }
            (None, true) if line.mold.is_some() => {
                let wanted = Wanted {
                    mold: line.mold.as_ref(),
                    formulas: line.formulas.as_deref(),
                    overlap: line.overlap,
                    layers: line.layers.as_deref(),
                };
                self.product("", &wanted, path, book)
            }
            (product, _) => {
                let help = if product.is_some() {
                    "Keep one of the two: a product has its mold and formulas in the book."
                } else {
                    "Add \"product\", or \"mold\" with \"formulas\" or \"layers\"."
                };
                self.fault(
                    code!("product-or-mold"),
                    path,
                    &"It must say what is ordered: either \"product\", or \"mold\" with \"formulas\" or \"layers\".",
                    &help,
                );
                None
            }
        };
        let pieces = self.pieces(line, path);
        let promised = self.date(&path.key("promised"), line.promised.as_ref());
        let product = product?;
        let shape = self.shape(line, &product, path, book)?;
        Some(Line {
            order: line.order.0.clone(),
            product,
            shape,
            pieces: pieces?,
            packs: line.packs.zip(line.pack_of),
            promised: promised?,
            ext: line.ext.clone(),
        })
    }

    fn pieces(&mut self, line: &OrderLine, path: &Path<'_>) -> Option<u32> {
        match (line.pieces, line.packs, line.pack_of) {
            (Some(pieces), None, None) => Some(pieces),
            (None, Some(packs), Some(each)) => {
                let pieces = packs.checked_mul(each).filter(|pieces| *pieces <= LARGEST_COUNT);
                if pieces.is_none() {
                    self.fault(
                        code!("too-many-pieces"),
                        path,
                        &format_args!("{packs} packs of {each} are more than one day can hold."),
                        &format_args!("Up to {LARGEST_COUNT} pieces are planned."),
                    );
                }
                pieces
            }
            _ => {
                self.fault(
                    code!("pieces-or-packs"),
                    path,
                    &"It must say how many: either \"pieces\", or \"packs\" with \"pack_of\".",
                    &"Write \"pieces\": 24, or \"packs\": 3, \"pack_of\": 8.",
                );
                None
            }
        }
    }

    /// Which of a mold's shapes a line asks for; the index among its cavities.
    fn shape(
        &mut self,
        line: &OrderLine,
        product: &Product,
        path: &Path<'_>,
        book: &Book,
    ) -> Option<usize> {
        let cavities = &book.molds.get(product.mold)?.cavities;
        let shapes = || cavities.iter().filter_map(|cavity| cavity.shape.as_deref());
        match (&line.shape, cavities.len()) {
            (None, 1) => Some(0),
            (None, _) => {
                let listed: Vec<&str> = shapes().collect();
                self.fault(
                    code!("missing-field"),
                    path,
                    &"\"shape\" is missing: the mold has unlike cavities.",
                    &format_args!("Add one of: {}.", listed.join(", ")),
                );
                None
            }
            (Some(shape), 1) if cavities.iter().all(|cavity| cavity.shape.is_none()) => {
                self.fault(
                    code!("shape-of-like-cavities"),
                    &path.key("shape"),
                    &format_args!(
                        "\"{}\" is asked of a mold whose cavities are all alike.",
                        shape.0
                    ),
                    &"Leave \"shape\" out.",
                );
                None
            }
            (Some(shape), _) => {
                let found = cavities
                    .iter()
                    .position(|cavity| cavity.shape.as_deref() == Some(shape.0.as_str()));
                let path = path.key("shape");
                self.find("shape of this mold", &path, &shape.0, found, &mut shapes())
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use std::borrow::ToOwned;
    use std::format;
    use std::string::{String, ToString};

    use rstest::rstest;

    use super::*;
    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};

    fn small() -> Book {
        book_from_text(BOOK).unwrap_or_else(|faults| panic!("{faults}"))
    }

    fn places(faults: &Faults) -> Vec<(String, String)> {
        faults.iter().map(|fault| (fault.path.clone(), fault.code.to_string())).collect()
    }

    #[rstest]
    #[case(r#""product": "sky wurm", "pieces": 3"#, "/product", "unknown-name")]
    #[case(r#""pieces": 3"#, "", "product-or-mold")]
    #[case(r#""product": "sky worm", "mold": "worm", "pieces": 3"#, "", "product-or-mold")]
    #[case(r#""formulas": ["body"], "pieces": 3"#, "", "product-or-mold")]
    #[case(r#""mold": "worm", "pieces": 3"#, "", "formulas-or-layers")]
    #[case(r#""mold": "worm", "formulas": [], "pieces": 3"#, "/formulas", "no-formula")]
    #[case(
        r#""mold": "worm", "formulas": ["body", "twin"], "pieces": 3"#,
        "/formulas",
        "formula-dosed-twice"
    )]
    #[case(r#""product": "sky worm""#, "", "pieces-or-packs")]
    #[case(r#""product": "sky worm", "packs": 3"#, "", "pieces-or-packs")]
    #[case(
        r#""product": "sky worm", "pieces": 3, "packs": 3, "pack_of": 2"#,
        "",
        "pieces-or-packs"
    )]
    #[case(r#""product": "sky worm", "packs": 1000000, "pack_of": 2"#, "", "too-many-pieces")]
    #[case(r#""product": "sky worm", "pieces": 3, "promised": "soon""#, "/promised", "not-a-date")]
    #[case(
        r#""product": "sky worm", "pieces": 3, "shape": "long""#,
        "/shape",
        "shape-of-like-cavities"
    )]
    #[case(r#""product": "sky pair", "pieces": 3"#, "", "missing-field")]
    #[case(r#""product": "sky pair", "pieces": 3, "shape": "lang""#, "/shape", "unknown-name")]
    fn a_line_says_what_is_wrong_with_it(
        #[case] line: &str,
        #[case] path: &str,
        #[case] code: &str,
    ) {
        let text = orders(&format!(r#"{{ "order": "1", {line} }}"#));
        let faults = orders_from_text(&text, &small()).unwrap_err();
        let expected = (format!("/lines/0{path}"), code.to_owned());
        assert_eq!(places(&faults), [expected], "{faults}");
    }

    #[test]
    fn all_lines_are_looked_at() {
        let line = r#"{ "order": "1", "product": "no such", "pieces": 3, "promised": "soon" }"#;
        let faults = orders_from_text(&orders(&format!("{line}, {line}")), &small()).unwrap_err();
        assert_eq!(faults.count(), 4, "{faults}");
        let none = orders_from_text(&orders(""), &small()).unwrap_err();
        assert_eq!(places(&none), [("/lines".to_owned(), "no-lines".to_owned())]);
    }

    #[rstest]
    #[case("2027-02-30", "", &[("/day", "not-a-date")])]
    #[case("2027-13-01", "", &[("/day", "not-a-date")])]
    #[case("2027-2-3", "", &[("/day", "not-a-date")])]
    #[case("2027-03-02", "", &[])]
    #[case("Tuesday, 2nd", "", &[])]
    #[case("2027-03-02", "2027-03-02", &[])]
    #[case("2027-03-02", "2028-03-01", &[("/shelf/0/made", "made-after-day")])]
    #[case("Tuesday", "2028-03-01", &[])]
    fn a_day_is_in_the_calendar(
        #[case] day: &str,
        #[case] made: &str,
        #[case] expected: &[(&str, &str)],
    ) {
        let shelf = if made.is_empty() {
            "[]".to_owned()
        } else {
            format!(
                r#"[{{ "name": "left", "mass": "90 g", "formulas": ["sky", "body"], "made": "{made}" }}]"#
            )
        };
        let text = format!(
            r#"{{ "format": "pourwright/1.0", "day": "{day}", "shelf": {shelf},
                "lines": [{{ "order": "1", "product": "sky worm", "pieces": 3 }}] }}"#
        );
        let found = orders_from_text(&text, &small());
        let found = found.as_ref().err().map(places).unwrap_or_default();
        let found: Vec<_> = found.iter().map(|(path, code)| (&**path, &**code)).collect();
        assert_eq!(found, expected);
    }

    #[test]
    fn a_line_with_too_much_keeps_one_of_the_two() {
        let help = |line: &str| {
            let text = orders(&format!(r#"{{ "order": "1", "pieces": 3, {line} }}"#));
            orders_from_text(&text, &small()).unwrap_err().into_vec().remove(0).help
        };
        assert!(
            help(r#""product": "sky worm", "mold": "worm""#).starts_with("Keep one of the two")
        );
        assert!(help(r#""formulas": ["body"]"#).starts_with("Add \"product\""));
    }

    #[test]
    fn a_day_has_at_most_a_million_pieces_of_a_line() {
        let of = |packs: u32| {
            let line = format!(
                r#"{{ "order": "1", "product": "sky worm", "packs": {packs}, "pack_of": 2 }}"#
            );
            orders_from_text(&orders(&line), &small()).map(|day| day.lines[0].pieces).ok()
        };
        assert_eq!((of(500_000), of(500_001)), (Some(1_000_000), None));
    }

    /// The faults of a day with these pots, of one line of a product in two layers; or its first pot.
    fn with_pots(pots: &str) -> Result<crate::plan::there::PotThere, Vec<(String, String)>> {
        let text = format!(
            r#"{{ "format": "pourwright/1.0", "pots": [{pots}],
                "lines": [{{ "order": "1", "product": "two", "pieces": 3 }}] }}"#
        );
        orders_from_text(&text, &small())
            .map(|day| day.pots[0].clone())
            .map_err(|faults| places(&faults))
    }

    #[test]
    fn a_pot_that_says_nothing_is_cold_and_takes_more() {
        let pot = with_pots(r#"{ "pot": "A", "draws": [{ "line": 1, "shots": 2 }] }"#).unwrap();
        assert_eq!((pot.hot, pot.degassed, pot.takes_more), (false, false, true));
        assert_eq!(pot.contents.heats, Some(0));
        assert_eq!((pot.draws[0].line, pot.draws[0].layer, pot.draws[0].shots), (0, 0, 2));
        let hot = with_pots(r#"{ "pot": "A", "parts": { "clear": "1 cup" }, "hot": true }"#);
        assert_eq!(hot.unwrap().contents.heats, Some(1));
    }

    #[rstest]
    #[case(r#"{ "pot": "A" }, { "pot": "A" }"#, "/pots/1/pot", "pot-twice")]
    #[case(
        r#"{ "pot": "A", "draws": [{ "line": 2, "shots": 2 }] }"#,
        "/pots/0/draws/0/line",
        "no-such-line"
    )]
    #[case(
        r#"{ "pot": "A", "draws": [{ "line": 1, "layer": 3, "shots": 2 }] }"#,
        "/pots/0/draws/0/layer",
        "no-such-layer"
    )]
    // 2 cup are 473.176 473 mL; a millionth of that is 0.000 473 mL.
    #[case(r#"{ "pot": "A", "cup": "473.177183 mL" }"#, "/pots/0/cup", "cup-not-of-bench")]
    fn a_pot_says_what_is_wrong_with_it(
        #[case] pots: &str,
        #[case] path: &str,
        #[case] code: &str,
    ) {
        assert_eq!(with_pots(pots).unwrap_err(), [(path.to_owned(), code.to_owned())]);
    }

    #[test]
    fn a_pot_whose_cup_is_gone_is_named_with_the_cups_that_are_left() {
        let text = r#"{ "format": "pourwright/1.0",
            "lines": [{ "order": "1", "product": "sky worm", "pieces": 3 }],
            "pots": [{ "pot": "B", "cup": "4 cup" }] }"#;
        let faults = orders_from_text(text, &small()).unwrap_err().into_vec();
        assert_eq!(
            faults[0].message,
            "Pot B is in a cup that holds 4 cup (946 mL); the bench has no such cup."
        );
        assert!(faults[0].help.starts_with("Its cups hold 2 cup."), "{}", faults[0].help);
    }

    #[test]
    fn a_pot_is_in_a_cup_of_the_bench() {
        let pot = with_pots(r#"{ "pot": "A", "cup": "473.17671 mL" }"#).unwrap();
        assert_eq!(pot.cup, Some(0));
        let last = r#"{ "pot": "A", "draws": [{ "line": 1, "layer": 2, "shots": 2 }] }"#;
        assert_eq!(with_pots(last).unwrap().draws[0].layer, 1);
    }

    #[test]
    fn nothing_is_not_on_the_shelf() {
        let text = r#"{ "format": "pourwright/1.0",
            "shelf": [{ "name": "left", "mass": "90 g", "parts": { "clear": "0 g" } }],
            "lines": [{ "order": "1", "product": "sky worm", "pieces": 3 }] }"#;
        let faults = orders_from_text(text, &small()).unwrap_err();
        assert_eq!(places(&faults), [("/shelf/0".to_owned(), "shelf-empty".to_owned())]);
    }

    #[test]
    fn packs_are_pieces() {
        let line = r#"{ "order": "1", "product": "sky worm", "packs": 5, "pack_of": 8 }"#;
        let day = orders_from_text(&orders(line), &small()).unwrap();
        assert_eq!((day.lines[0].pieces, day.lines[0].packs), (40, Some((5, 8))));
    }
}
