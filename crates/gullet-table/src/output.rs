//! Columns of results: numbers in a unit, and names from short lists.

use crate::names::with_unit;
use crate::options::Columns;
use arrow_array::types::Int32Type;
use arrow_array::{ArrayRef, DictionaryArray, Float64Array, Int32Array, StringArray};
use arrow_buffer::{BooleanBuffer, NullBuffer};
use arrow_schema::{DataType, Field};
use gullet::error::{Code, Problem, nearest};
use gullet::operation::{LimitName, WarningCode, WarningCodes};
use gullet::quantity::{Kind, Unit, UnitSystem, column_unit, unit};
use gullet::study::ResultField;
use std::collections::HashMap;
use std::sync::{Arc, OnceLock};

/// Name of the column with `ok` or the code of the row's error.
pub const STATUS: &str = "status";
/// Name of the column with the limit that binds, or that made the row an error.
pub const LIMIT: &str = "binding_limit";
/// Name of the column with the limit that holds the feed below the wanted one.
pub const HELD_BY: &str = "held_by";
/// Name of the column with the doubts.
pub const WARNINGS: &str = "warnings";
/// Name of the column with the cost of the cutting time.
pub(crate) const COST: &str = "cost";

/// Put before the name of a result that a column of the rows has already.
const PREFIX: &str = "result_";

/// The unit of a result: feeds are told by the minute in small units, speeds in large ones.
pub(crate) fn unit_of(field: &ResultField, system: UnitSystem) -> &'static Unit {
    let usual = column_unit(field.kind, system);
    if field.kind == Kind::Velocity && field.name.contains("feed") {
        let symbol = match system {
            UnitSystem::Metric => "mm/min",
            UnitSystem::Inch => "in/min",
        };
        return unit(field.kind, symbol).unwrap_or(usual);
    }
    usual
}

/// The places of the results that are wanted.
pub(crate) fn wanted(
    columns: &Columns,
    all: &[ResultField],
    usual: &[&'static str],
    system: UnitSystem,
    problems: &mut Vec<Problem>,
) -> Vec<usize> {
    let full = |field: &ResultField| with_unit(field.name, unit_of(field, system));
    let place = |name: &str| {
        all.iter()
            .position(|field| field.name == name || full(field) == name)
    };
    let names: Vec<&str> = match columns {
        Columns::All => return (0..all.len()).collect(),
        Columns::Usual => usual.to_vec(),
        Columns::Named(names) => names.iter().map(String::as_str).collect(),
    };
    let mut places = Vec::new();
    for name in names {
        match place(name) {
            Some(place) if places.contains(&place) => problems.push(Problem::new(
                Code::Duplicate,
                "columns",
                name,
                "each result once",
                "drop one of the two",
            )),
            Some(place) => places.push(place),
            None => {
                let near = nearest(name, all.iter().map(|field| field.name));
                problems.push(Problem::new(
                    Code::UnknownName,
                    "columns",
                    format!("\"{name}\""),
                    all.iter()
                        .map(|field| field.name)
                        .collect::<Vec<_>>()
                        .join(", "),
                    near.map_or_else(
                        || "use one of the known names".to_owned(),
                        |near| format!("did you mean {near}?"),
                    ),
                ));
            }
        }
    }
    places
}

/// A field of a result, under a name that no column of the rows has.
pub(crate) fn named(field: Field, taken: &[String], problems: &mut Vec<Problem>) -> Field {
    let has = |name: &str| taken.iter().any(|other| other == name);
    if !has(field.name()) {
        return field;
    }
    let name = format!("{PREFIX}{}", field.name());
    if has(&name) {
        problems.push(Problem::new(
            Code::Duplicate,
            name.clone(),
            "",
            format!("a table without {} or without {name}", field.name()),
            "rename one of the two: a result takes such a name",
        ));
    }
    field.with_name(name)
}

pub(crate) fn number_field(field: &ResultField, unit: &Unit) -> Field {
    let mut metadata = HashMap::from([
        ("kind".to_owned(), field.kind.name().to_owned()),
        ("meaning".to_owned(), field.meaning.to_owned()),
    ]);
    if !unit.symbol.is_empty() {
        metadata.insert("unit".to_owned(), unit.symbol.to_owned());
    }
    Field::new(with_unit(field.name, unit), DataType::Float64, true).with_metadata(metadata)
}

/// Name of the column with the number of draws that are not among the quantiles.
pub const LEFT_OUT: &str = "draws_left_out";

/// A field of a quantile of a result over the draws.
pub(crate) fn quantile_field(field: &ResultField, unit: &Unit, share: f64) -> Field {
    let percent = format!("{}", (share * 1e6).round() / 1e4).replace('.', "_");
    let name = format!("{}_p{percent}", field.name);
    let plain = number_field(field, unit);
    let mut metadata = plain.metadata().clone();
    metadata.insert("quantile".to_owned(), share.to_string());
    plain
        .with_name(with_unit(&name, unit))
        .with_metadata(metadata)
}

pub(crate) fn left_out_field() -> Field {
    described(
        Field::new(LEFT_OUT, DataType::UInt32, true),
        "Draws that left what can be computed and are not among the quantiles.",
    )
}

pub(crate) fn cost_field() -> Field {
    described(
        Field::new(COST, DataType::Float64, true),
        "Cost of machine and operator for the time in the cut.",
    )
}

fn described(field: Field, meaning: &str) -> Field {
    field.with_metadata(HashMap::from([("meaning".to_owned(), meaning.to_owned())]))
}

/// The fields with names from short lists.
pub(crate) fn name_fields(dictionaries: bool) -> Vec<Field> {
    let text = match dictionaries {
        true => DataType::Dictionary(Box::new(DataType::Int32), Box::new(DataType::Utf8)),
        false => DataType::Utf8,
    };
    [
        (STATUS, false, "ok, or the code of the row's error."),
        (
            LIMIT,
            true,
            "The limit nearest to its bound, or the one that made the row an error.",
        ),
        (
            HELD_BY,
            true,
            "The limit that holds the feed below the wanted one.",
        ),
        (WARNINGS, true, "Doubts, joined by semicolons."),
    ]
    .into_iter()
    .map(|(name, nullable, meaning)| described(Field::new(name, text.clone(), nullable), meaning))
    .collect()
}

/// Numbers of which NaN is none.
pub(crate) fn numbers(values: Vec<f64>) -> ArrayRef {
    let none = |row: usize| values.get(row).is_none_or(|value| value.is_nan());
    let valid = BooleanBuffer::collect_bool(values.len(), |row| !none(row));
    let valid = NullBuffer::new(valid);
    let valid = (valid.null_count() > 0).then_some(valid);
    Arc::new(Float64Array::new(values.into(), valid))
}

/// Columns of names, as dictionaries or as plain text.
pub(crate) struct NameLists {
    dictionaries: bool,
    lists: &'static Lists,
}

/// The lists that names are taken from. No list holds a name twice: data frames turn them into
/// categories.
struct Lists {
    codes: Arc<StringArray>,
    limits: Names,
    warnings: Names,
}

/// Names by numbers of one byte, of which 0 is none.
struct Names {
    values: Arc<StringArray>,
    /// Place of each number's name.
    places: [Option<i32>; 256],
}

impl Names {
    fn new(named: impl Iterator<Item = (u8, String)>) -> Names {
        let mut names = Vec::new();
        let mut places = [None; 256];
        for (number, name) in named {
            if let Some(place) = places.get_mut(usize::from(number)) {
                *place = i32::try_from(names.len()).ok();
                names.push(name);
            }
        }
        Names {
            values: Arc::new(StringArray::from(names)),
            places,
        }
    }

    fn keys(&self, numbers: &[u8]) -> Int32Array {
        let place = |number: &u8| self.places.get(usize::from(*number)).copied().flatten();
        numbers.iter().map(place).collect()
    }
}

impl Lists {
    /// Those of every study.
    fn all() -> &'static Lists {
        static ALL: OnceLock<Lists> = OnceLock::new();
        ALL.get_or_init(Lists::new)
    }

    fn new() -> Lists {
        let codes = core::iter::once("ok").chain(Code::ALL.iter().map(|code| code.name()));
        let limits = LimitName::ALL
            .iter()
            .map(|limit| (*limit as u8, limit.name().to_owned()));
        let warnings = (1..=u8::MAX).filter_map(|bits| {
            let set = WarningCodes::from_bits(bits);
            let held = || {
                WarningCode::ALL
                    .iter()
                    .copied()
                    .filter(|code| set.contains(*code))
            };
            let names: Vec<&str> = held().map(WarningCode::name).collect();
            // Bits that no code has make no set.
            (WarningCodes::of(held()) == set).then(|| (bits, names.join(";")))
        });
        Lists {
            codes: Arc::new(StringArray::from_iter_values(codes)),
            limits: Names::new(limits),
            warnings: Names::new(warnings),
        }
    }
}

impl NameLists {
    pub(crate) fn new(dictionaries: bool) -> NameLists {
        NameLists {
            dictionaries,
            lists: Lists::all(),
        }
    }

    pub(crate) fn statuses(&self, statuses: &[i32]) -> ArrayRef {
        let keys = statuses.iter().map(|status| {
            if *status == 0 {
                return 0;
            }
            let place = Code::ALL.iter().position(|code| code.number() == *status);
            place.map_or(0, |place| place as i32 + 1)
        });
        self.column(Int32Array::from_iter_values(keys), &self.lists.codes)
    }

    pub(crate) fn limits(&self, numbers: &[u8]) -> ArrayRef {
        self.named(&self.lists.limits, numbers)
    }

    pub(crate) fn warnings(&self, bits: &[u8]) -> ArrayRef {
        self.named(&self.lists.warnings, bits)
    }

    fn named(&self, names: &Names, numbers: &[u8]) -> ArrayRef {
        self.column(names.keys(numbers), &names.values)
    }

    fn column(&self, keys: Int32Array, values: &Arc<StringArray>) -> ArrayRef {
        if self.dictionaries {
            return dictionary(keys, values);
        }
        let text = |key: i32| values.value(key as usize);
        Arc::new(
            keys.iter()
                .map(|key| key.map(text))
                .collect::<StringArray>(),
        )
    }
}

fn dictionary(keys: Int32Array, values: &Arc<StringArray>) -> ArrayRef {
    match DictionaryArray::<Int32Type>::try_new(keys.clone(), values.clone()) {
        Ok(array) => Arc::new(array),
        // Every key above is a place in its list.
        Err(_) => arrow_array::new_null_array(
            &DataType::Dictionary(Box::new(DataType::Int32), Box::new(DataType::Utf8)),
            keys.len(),
        ),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use arrow_array::Array;
    use std::collections::BTreeSet;

    #[test]
    fn no_list_holds_a_name_twice() {
        let lists = Lists::all();
        for (list, least) in [
            (&lists.codes, 19),
            (&lists.limits.values, 19),
            (&lists.warnings.values, 63),
        ] {
            let different: BTreeSet<Option<&str>> = list.iter().collect();
            assert_eq!(different.len(), list.len());
            assert!(list.len() >= least && !different.contains(&Some("")));
        }
    }
}
