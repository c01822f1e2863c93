//! The names of parameters in JavaScript, and the faults that carry them.

use pourwright::Fault;
use pourwright::table::{Calculation, ParameterField, Refusal};

/// The name of a parameter in JavaScript: `cavityVolumeMl`.
pub(crate) fn of(field: &ParameterField) -> String {
    field.parameter.unit().camel_name(field.parameter.name())
}

/// Why `calculation` refuses its arguments, each fault at its parameter.
pub(crate) fn faults(calculation: &Calculation, refusal: &Refusal) -> Vec<Fault> {
    let names = calculation.parameters.iter().map(|field| (field.parameter, of(field)));
    let names: Vec<_> = names.collect();
    let named = |field: &ParameterField| {
        let found = names.iter().find(|(parameter, _)| *parameter == field.parameter);
        found.map_or("", |(_, name)| name)
    };
    let reasons = refusal.reasons();
    let faults = reasons.map(|reason| Fault {
        path: calculation.path(&reason, named),
        code: reason.code.into(),
        message: reason.message,
        help: reason.help,
    });
    faults.collect()
}
