//! Linear programs in exact fractions: the textbook's simplex method on a full table, by Bland's rule throughout.

use num_rational::BigRational;

/// A row of factors, and what they come to at most.
pub type Row = (Vec<f64>, f64);

/// The best of each objective, in their order, under `rows` with every variable at 0 or more; `None` if one has no end. What
/// rows come to is 0 or more.
///
/// # Panics
/// If a number is not finite.
#[must_use]
pub fn best(rows: &[Row], objectives: &[Vec<f64>]) -> Option<Vec<f64>> {
    let exact = |number: f64| BigRational::from_float(number).expect("a finite number");
    let zero = exact(0.0);
    let variables = objectives[0].len();
    let columns = variables + rows.len();
    // The variables, one slack a row, and the right side.
    let mut table: Vec<Vec<BigRational>> = Vec::new();
    for (place, (factors, most)) in rows.iter().enumerate() {
        let slack = (0..rows.len()).map(|other| exact(f64::from(other == place)));
        table.push(factors.iter().map(|a| exact(*a)).chain(slack).chain([exact(*most)]).collect());
    }
    for objective in objectives {
        let zeros = (0..=rows.len()).map(|_| zero.clone());
        table.push(objective.iter().map(|c| exact(-c)).chain(zeros).collect());
    }
    let mut basis: Vec<usize> = (variables..columns).collect();
    let mut kept = vec![false; columns];
    for objective in rows.len()..table.len() {
        while let Some(enters) = (0..columns).find(|&j| !kept[j] && table[objective][j] < zero) {
            let stops = (0..rows.len()).filter(|&i| table[i][enters] > zero);
            let leaves =
                stops.min_by_key(|&i| (&table[i][columns] / &table[i][enters], basis[i]))?;
            let pivot = table[leaves][enters].clone();
            table[leaves].iter_mut().filter(|own| **own != zero).for_each(|own| *own /= &pivot);
            let done = table[leaves].clone();
            for (place, row) in table.iter_mut().enumerate() {
                let factor = row[enters].clone();
                if place != leaves && factor != zero {
                    let each = row.iter_mut().zip(&done).filter(|(_, other)| **other != zero);
                    each.for_each(|(own, other)| *own -= &factor * other);
                }
            }
            basis[leaves] = enters;
        }
        for (kept, factor) in kept.iter_mut().zip(&table[objective]) {
            *kept |= *factor > zero;
        }
    }
    let value = |row: &Vec<BigRational>| num_traits::ToPrimitive::to_f64(&row[columns]);
    Some(table[rows.len()..].iter().map(|row| value(row).expect("it fits")).collect())
}
