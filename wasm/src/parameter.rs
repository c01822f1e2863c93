//! The path of the parameter that an error of the core is about.

use pourwright::Diagnose;

/// An error that a call can have at one of its parameters.
pub(crate) trait InParameter: Diagnose {
    /// Its path: `/` and its name, empty where no single one is wrong.
    fn path(&self) -> String;
}

impl<E: Diagnose> InParameter for E {
    fn path(&self) -> String {
        let Some(parameter) = self.parameter() else { return String::new() };
        let mut path = String::from("/");
        let mut words = parameter.name().split('_');
        path.push_str(words.next().unwrap_or_default());
        for word in words {
            let (first, rest) = word.split_at(1);
            path.push_str(&first.to_ascii_uppercase());
            path.push_str(rest);
        }
        path + parameter.unit().camel()
    }
}
