//! Names in columns and constants, and the places in lists that they mean.

use crate::takes::{Pick, Word, operation_named, operations, plain};
use arrow_array::cast::AsArray;
use arrow_array::{Array, ArrayRef};
use arrow_schema::DataType;
use gullet::error::{Code, Problem, unknown_name};
use gullet::model::{Direction, Machine, PassKind, Practice};
use gullet::operation::{Operation, process};
use gullet::study::{Choice, FORMS};
use gullet::table::{LibraryRef, Material, ToolMaterial};
use std::collections::HashMap;
use std::sync::{Mutex, PoisonError};

/// Names that are remembered; of those beyond, each is looked up again.
const REMEMBERED: usize = 1 << 16;

/// What a name means: a place, or the code of the error it gives.
pub(crate) type Meaning = core::result::Result<u32, Code>;

/// A name that means nothing, in the first row it stands in.
pub(crate) struct Unknown {
    pub row: usize,
    pub problem: Problem,
}

/// Reads the names of one choice.
pub(crate) struct Reader {
    pick: Pick,
    known: Mutex<HashMap<String, Meaning>>,
}

impl Reader {
    pub(crate) fn new(pick: Pick) -> Reader {
        Reader {
            pick,
            known: Mutex::default(),
        }
    }

    /// The place of every row; nulls are none.
    ///
    /// `unknown` gets each name that means nothing once.
    pub(crate) fn read(
        &self,
        lists: &Lists,
        array: &ArrayRef,
        unknown: &mut Vec<Unknown>,
    ) -> Vec<Option<Meaning>> {
        if let Some(array) = array.as_any_dictionary_opt() {
            let values = self.read(lists, array.values(), &mut Vec::new());
            return self.through_keys(lists, array, &values, unknown);
        }
        if let Some(flags) = array.as_boolean_opt() {
            return flags
                .iter()
                .map(|flag| flag.map(|flag| Ok(u32::from(flag))))
                .collect();
        }
        let mut known = self.known.lock().unwrap_or_else(PoisonError::into_inner);
        let mut last: Option<(&str, Meaning)> = None;
        let mut told: Vec<&str> = Vec::new();
        (0..array.len())
            .map(|row| {
                let text = text_at(array, row)?;
                if let Some((name, meaning)) = last
                    && name == text
                {
                    return Some(meaning);
                }
                let meaning = self.meaning(lists, &mut known, text);
                if meaning.is_err() && !told.contains(&text) && told.len() < MOST_TOLD {
                    told.push(text);
                    unknown.extend(
                        lists
                            .place(&self.pick, text)
                            .err()
                            .map(|problem| Unknown { row, problem }),
                    );
                }
                last = Some((text, meaning));
                Some(meaning)
            })
            .collect()
    }

    fn meaning(&self, lists: &Lists, known: &mut HashMap<String, Meaning>, text: &str) -> Meaning {
        if let Some(meaning) = known.get(text) {
            return *meaning;
        }
        let meaning = lists
            .place(&self.pick, text)
            .map_err(|problem| problem.code);
        if known.len() < REMEMBERED {
            known.insert(text.to_owned(), meaning);
        }
        meaning
    }

    /// A key may be null, and so may the value it points at.
    fn through_keys(
        &self,
        lists: &Lists,
        array: &dyn arrow_array::array::AnyDictionaryArray,
        values: &[Option<Meaning>],
        unknown: &mut Vec<Unknown>,
    ) -> Vec<Option<Meaning>> {
        if values.is_empty() {
            return vec![None; array.len()];
        }
        let mut told = vec![false; values.len()];
        let mut count = 0;
        array
            .normalized_keys()
            .into_iter()
            .enumerate()
            .map(|(row, key)| {
                if array.keys().is_null(row) {
                    return None;
                }
                let meaning = values.get(key).copied().flatten();
                if let (Some(Err(_)), Some(told)) = (meaning, told.get_mut(key))
                    && !*told
                    && count < MOST_TOLD
                {
                    *told = true;
                    count += 1;
                    let text = text_at(array.values(), key).unwrap_or_default();
                    unknown.extend(
                        lists
                            .place(&self.pick, text)
                            .err()
                            .map(|problem| Unknown { row, problem }),
                    );
                }
                meaning
            })
            .collect()
    }
}

/// Names that mean nothing of which a batch tells.
pub(crate) const MOST_TOLD: usize = 16;

/// The text of a row, whatever form its library keeps it in; none for null.
pub(crate) fn text_at(array: &dyn Array, row: usize) -> Option<&str> {
    if array.is_null(row) {
        return None;
    }
    match array.data_type() {
        DataType::Utf8 => array.as_string_opt::<i32>().map(|array| array.value(row)),
        DataType::LargeUtf8 => array.as_string_opt::<i64>().map(|array| array.value(row)),
        DataType::Utf8View => array.as_string_view_opt().map(|array| array.value(row)),
        _ => None,
    }
}

/// The word of a row, dictionary-encoded or not.
pub(crate) fn word_at(array: &ArrayRef, row: usize) -> Option<&str> {
    let Some(encoded) = array.as_any_dictionary_opt() else {
        return text_at(array, row);
    };
    let key = encoded.normalized_keys().get(row).copied()?;
    text_at(encoded.values(), key)
}

/// Whether a column of this type holds text.
pub(crate) fn is_text(data_type: &DataType) -> bool {
    match data_type {
        DataType::Utf8 | DataType::LargeUtf8 | DataType::Utf8View => true,
        DataType::Dictionary(_, values) => {
            is_text(values) && !matches!(**values, DataType::Dictionary(..))
        }
        _ => false,
    }
}

/// Whether a choice can be read from a column of this type.
pub(crate) fn check_type(pick: &Pick, data_type: &DataType) -> Result<(), Problem> {
    let truth = *pick == Pick::Of(Choice::FeedAcrossJaws);
    if is_text(data_type) || (truth && *data_type == DataType::Boolean) {
        return Ok(());
    }
    let admissible = if truth {
        "booleans, or text: true or false"
    } else {
        "text: utf8, large_utf8, utf8_view or a dictionary of these"
    };
    Err(Problem::new(
        Code::WrongType,
        pick.name(),
        format!("a column of {data_type}"),
        admissible,
        "convert the column before it comes here",
    ))
}

/// The names of a choice, for messages.
pub(crate) fn known(pick: &Pick) -> String {
    let choice = match pick {
        Pick::Of(choice) => *choice,
        Pick::Word(word) => return word.words.join(", "),
    };
    let names: Vec<&str> = match choice {
        Choice::Material => return "a material of the tables, such as 6061".to_owned(),
        Choice::Machine => Machine::BUILTIN.to_vec(),
        Choice::Practice => Practice::BUILTIN.to_vec(),
        Choice::Operation => operations().collect(),
        Choice::Pass => PassKind::ALL.iter().map(|x| x.name()).collect(),
        Choice::Direction => Direction::ALL.iter().map(|x| x.name()).collect(),
        Choice::CutterMaterial => ToolMaterial::ALL.iter().map(|x| x.name()).collect(),
        Choice::CutterForm => FORMS.to_vec(),
        _ => vec!["true", "false"],
    };
    names.join(", ")
}

/// What the base of a study has itself: names pick from it before the tables.
#[derive(Clone, Copy)]
pub(crate) struct Own<'b> {
    pub materials: &'b [Material],
    pub machines: &'b [Machine],
    pub practices: &'b [Practice],
}

/// The lists that names pick from.
pub(crate) struct Lists<'a> {
    library: LibraryRef<'a>,
    /// How many materials, machines and practices stand before those of the library.
    own: [usize; 3],
    /// Names of the base's own materials, machines and practices.
    names: [Vec<[String; 2]>; 3],
}

impl<'a> Lists<'a> {
    /// Of a base before the library's entries were added to it.
    pub(crate) fn new(own: Own, library: LibraryRef<'a>) -> Lists<'a> {
        let pair = |id: &str, name: &str| [id.to_owned(), name.to_owned()];
        Lists {
            library,
            own: [own.materials.len(), own.machines.len(), own.practices.len()],
            names: [
                own.materials
                    .iter()
                    .map(|own| pair(&own.id, &own.name))
                    .collect(),
                own.machines
                    .iter()
                    .map(|own| pair(&own.name, &own.name))
                    .collect(),
                own.practices
                    .iter()
                    .map(|own| pair(&own.name, &own.name))
                    .collect(),
            ],
        }
    }

    /// The place that a word means.
    pub(crate) fn place(&self, pick: &Pick, text: &str) -> Result<u32, Problem> {
        let word = text.trim();
        let found = match pick {
            Pick::Of(choice) => self.entry(*choice, word),
            Pick::Word(Word { name, words, .. }) => among(name, word, words.iter().copied()),
        };
        found
            .and_then(|place| u32::try_from(place).map_err(|_| unknown_name(pick.name(), word, [])))
    }

    fn entry(&self, choice: Choice, word: &str) -> Result<usize, Problem> {
        let name = choice.name();
        match choice {
            Choice::Material => self.own(0, word).map_or_else(|| self.material(word), Ok),
            Choice::Machine => self
                .own(1, word)
                .map_or_else(|| self.listed(1, choice, word, Machine::BUILTIN), Ok),
            Choice::Practice => self
                .own(2, word)
                .map_or_else(|| self.listed(2, choice, word, Practice::BUILTIN), Ok),
            Choice::Operation => milling_operation(word),
            Choice::Pass => among(name, word, PassKind::ALL.iter().map(|x| x.name())),
            Choice::Direction => among(name, word, Direction::ALL.iter().map(|x| x.name())),
            Choice::CutterForm => among(name, word, FORMS.iter().copied()),
            Choice::CutterMaterial => tool_material(word),
            Choice::FeedAcrossJaws => match word.to_ascii_lowercase().as_str() {
                "true" | "1" => Ok(1),
                "false" | "0" => Ok(0),
                _ => Err(unknown_name(name, word, ["true", "false"])),
            },
            _ => Err(unknown_name("choice", name, [])),
        }
    }

    fn own(&self, list: usize, word: &str) -> Option<usize> {
        let names = self.names.get(list)?;
        names
            .iter()
            .position(|own| own.iter().any(|name| name == word))
    }

    fn material(&self, word: &str) -> Result<usize, Problem> {
        let first = |error: gullet::Error| error.first().clone();
        let found = self.library.material(word).map_err(first)?;
        let place = self
            .library
            .materials()
            .iter()
            .position(|material| core::ptr::eq(material, found));
        let [own, ..] = self.own;
        place
            .map(|place| own + place)
            .ok_or_else(|| unknown_name("material", word, []))
    }

    fn listed(
        &self,
        list: usize,
        choice: Choice,
        word: &str,
        builtin: &[&'static str],
    ) -> Result<usize, Problem> {
        let own = self.own.get(list).copied().unwrap_or_default();
        builtin
            .iter()
            .position(|name| *name == word)
            .map(|place| own + place)
            .ok_or_else(|| {
                let names = self.names.get(list).into_iter().flatten();
                let names = names.map(|[name, _]| name.as_str());
                unknown_name(choice.name(), word, builtin.iter().copied().chain(names))
            })
    }
}

/// The place of a word in a list, as [`plain`] sees it.
fn among<'a>(
    name: &str,
    word: &str,
    list: impl Iterator<Item = &'a str> + Clone,
) -> Result<usize, Problem> {
    let wanted = plain(word);
    list.clone()
        .position(|known| plain(known) == wanted)
        .ok_or_else(|| unknown_name(name, word, list))
}

/// The place of an operation that rows may differ in.
fn milling_operation(word: &str) -> Result<usize, Problem> {
    let name = Choice::Operation.name();
    let milling = Operation::ALL.iter().map(|operation| operation.name());
    let process = operation_named(word).and_then(|known| process::find(known).ok());
    match process {
        Some(process) => Err(splits(process.name, milling.collect())),
        None => among(name, word, milling).map_err(|_| unknown_name(name, word, operations())),
    }
}

/// What is wrong with an operation of its own among milling cuts; no other problem of an operation
/// has this code.
fn splits(process: &str, milling: Vec<&str>) -> Problem {
    Problem::new(
        OF_ITS_OWN,
        Choice::Operation.name(),
        format!("\"{process}\" in a column"),
        milling.join(", "),
        format!(
            "split the table by operation: {process} takes columns of its own, and the constant operation={process}"
        ),
    )
}

/// Code of a row whose operation must be that of the whole table.
pub(crate) const OF_ITS_OWN: Code = Code::Inconsistent;

fn tool_material(word: &str) -> Result<usize, Problem> {
    ToolMaterial::parse(word)
        .and_then(|found| ToolMaterial::ALL.iter().position(|known| *known == found))
        .ok_or_else(|| {
            let names = ToolMaterial::ALL.iter().map(|known| known.name());
            unknown_name(Choice::CutterMaterial.name(), word, names)
        })
}
