//! Reading the tables of published values.

use serde_json::Value;

/// One published value.
pub(crate) struct Row {
    pub(crate) id: String,
    pub(crate) inputs: Value,
    pub(crate) expected: Value,
    pub(crate) unit: String,
    tolerance: String,
    pub(crate) source: String,
}

/// All rows of `data/<name>.csv`.
pub(crate) fn read(name: &str) -> Vec<Row> {
    let path = format!("{}/published/data/{name}.csv", env!("CARGO_MANIFEST_DIR"));
    let mut table = csv::Reader::from_path(&path).unwrap_or_else(|e| panic!("{path}: {e}"));
    let rows: Vec<Row> = table
        .records()
        .map(|record| {
            let record = record.unwrap_or_else(|e| panic!("{path}: {e}"));
            let json =
                |text: &str| serde_json::from_str(text).unwrap_or(Value::String(text.to_owned()));
            Row {
                id: record[0].to_owned(),
                inputs: json(&record[2]),
                expected: json(&record[3]),
                unit: record[4].to_owned(),
                tolerance: record[5].to_owned(),
                source: record[6].to_owned(),
            }
        })
        .collect();
    assert!(!rows.is_empty(), "{path} holds no row");
    rows
}

impl Row {
    /// The number at `key` of the inputs.
    pub(crate) fn number(&self, key: &str) -> f64 {
        self.inputs[key].as_f64().unwrap_or_else(|| panic!("{}: no number {key}", self.id))
    }

    /// Fails unless `got` is within the row's tolerance of its expected number.
    pub(crate) fn check(&self, got: f64) {
        let expected =
            self.expected.as_f64().unwrap_or_else(|| panic!("{}: no expected number", self.id));
        self.check_against(expected, got);
    }

    /// Fails unless `got` is within the row's tolerance of `expected`, one number of several.
    pub(crate) fn check_against(&self, expected: f64, got: f64) {
        let (kind, bound) = self.tolerance.split_once(':').unwrap_or((&self.tolerance, ""));
        let number =
            |text: &str| text.parse::<f64>().unwrap_or_else(|e| panic!("{}: {text}: {e}", self.id));
        let inside = match kind {
            "exact" => got == expected,
            "abs" => (got - expected).abs() <= number(bound),
            "rel" => (got - expected).abs() <= number(bound) * expected.abs(),
            "range" => {
                let (low, high) = bound.split_once("..").expect("a range has two ends");
                (number(low)..=number(high)).contains(&got)
            }
            other => panic!("{}: unknown tolerance {other}", self.id),
        };
        assert!(
            inside,
            "{}: expected {expected} {} ({}), got {got}; source: {}",
            self.id, self.unit, self.tolerance, self.source
        );
    }
}
