//! The table of what is plausible, as a page.

use pourwright::parameter::{PlainUnit, Range};
use pourwright::plausible::Quantity;

fn range(unit: PlainUnit, range: Range) -> String {
    match unit {
        PlainUnit::Pure => {
            let percent = |share: f64| (share * 1e6).round() / 1e4;
            format!("{} % to {} %", percent(range.least), percent(range.most))
        }
        unit => format!("{} to {} {}", range.least, range.most, unit.symbol()),
    }
}

#[test]
fn the_page_of_what_is_plausible_is_fresh() {
    let mut page = String::from(
        "# What is plausible\n\n\
         Written from `core/src/plausible/table.rs` by the `committed` test.\n\n\
         A number outside of what is possible is a fault (`cannot-be`). A number that is possible and not likely looks like a\n\
         slip: the fault `unlikely` asks back, and names the likely slip of unit or decimal point. If the number is right, write\n\
         `\"sure\": true` in the object that it is in, next to the number or to the list or map that holds it. That lifts the\n\
         questions about the numbers of this object, not of objects inside it, and nothing that cannot be.\n\n\
         Likely ranges are common practice, no source. Not bounded: prices, since currencies differ by more than a slip does;\n\
         readings of hardness, which are from 0 to 100 of a scale of the shop's own; the vacuum, the station pressure and the\n\
         oven's power, whose own calculations state their ranges; and what is in stock, on the shelf or in a pot that is there.\n\n\
         | number | likely | possible | why | source of what is possible |\n| --- | --- | --- | --- | --- |\n",
    );
    for &quantity in Quantity::ALL {
        let unit = quantity.unit();
        let (likely, possible) = (range(unit, quantity.likely()), range(unit, quantity.possible()));
        let name = quantity.to_string();
        let (name, reason) = (name.trim_end_matches(','), quantity.reason());
        let source = quantity.source();
        page += &format!("| {name} | {likely} | {possible} | {reason} | {source} |\n");
    }
    crate::fresh("core/PLAUSIBLE.md", &page);
}
