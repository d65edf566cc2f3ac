//! Names in columns and constants, and the places in lists that they mean.

use arrow_array::cast::AsArray;
use arrow_array::{Array, ArrayRef};
use arrow_schema::DataType;
use gullet::error::{Code, Problem, unknown_name};
use gullet::model::{Direction, Machine, PassKind, Practice};
use gullet::operation::Operation;
use gullet::study::{Base, Choice, FORMS};
use gullet::table::{LibraryRef, ToolMaterial};
use std::collections::HashMap;
use std::sync::{Mutex, PoisonError};

/// Names that are remembered; of those beyond, each is looked up again.
const REMEMBERED: usize = 1 << 16;

/// What a name means: a place, or the code of the error it gives.
type Meaning = core::result::Result<u32, Code>;

/// A name that means nothing, in the first row it stands in.
pub(crate) struct Unknown {
    pub row: usize,
    pub problem: Problem,
}

/// Reads the names of one choice.
pub(crate) struct Reader {
    choice: Choice,
    known: Mutex<HashMap<String, Meaning>>,
}

impl Reader {
    pub(crate) fn new(choice: Choice) -> Reader {
        Reader {
            choice,
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
                            .place(self.choice, text)
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
            .place(self.choice, text)
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
                            .place(self.choice, text)
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
pub(crate) fn check_type(choice: Choice, data_type: &DataType) -> Result<(), Problem> {
    let flags = choice == Choice::FeedAcrossJaws && *data_type == DataType::Boolean;
    if is_text(data_type) || flags {
        return Ok(());
    }
    let admissible = if choice == Choice::FeedAcrossJaws {
        "booleans, or text: true or false"
    } else {
        "text: utf8, large_utf8, utf8_view or a dictionary of these"
    };
    Err(Problem::new(
        Code::WrongType,
        choice.name(),
        format!("a column of {data_type}"),
        admissible,
        "convert the column before it comes here",
    ))
}

/// The names of a choice, for messages.
pub(crate) fn known(choice: Choice) -> String {
    let names: Vec<&str> = match choice {
        Choice::Material => return "a material of the tables, such as 6061".to_owned(),
        Choice::Machine => Machine::BUILTIN.to_vec(),
        Choice::Practice => Practice::BUILTIN.to_vec(),
        Choice::Operation => Operation::ALL.iter().map(|x| x.name()).collect(),
        Choice::Pass => PassKind::ALL.iter().map(|x| x.name()).collect(),
        Choice::Direction => Direction::ALL.iter().map(|x| x.name()).collect(),
        Choice::CutterMaterial => ToolMaterial::ALL.iter().map(|x| x.name()).collect(),
        Choice::CutterForm => FORMS.to_vec(),
        _ => vec!["true", "false"],
    };
    names.join(", ")
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
    pub(crate) fn new(base: &Base, library: LibraryRef<'a>) -> Lists<'a> {
        let pair = |id: &str, name: &str| [id.to_owned(), name.to_owned()];
        Lists {
            library,
            own: [
                base.materials.len(),
                base.machines.len(),
                base.practices.len(),
            ],
            names: [
                base.materials
                    .iter()
                    .map(|own| pair(&own.id, &own.name))
                    .collect(),
                base.machines
                    .iter()
                    .map(|own| pair(&own.name, &own.name))
                    .collect(),
                base.practices
                    .iter()
                    .map(|own| pair(&own.name, &own.name))
                    .collect(),
            ],
        }
    }

    /// The place that a name means.
    pub(crate) fn place(&self, choice: Choice, text: &str) -> Result<u32, Problem> {
        let word = text.trim();
        let found = match choice {
            Choice::Material => self.own(0, word).map_or_else(|| self.material(word), Ok),
            Choice::Machine => self
                .own(1, word)
                .map_or_else(|| self.listed(1, choice, word, Machine::BUILTIN), Ok),
            Choice::Practice => self
                .own(2, word)
                .map_or_else(|| self.listed(2, choice, word, Practice::BUILTIN), Ok),
            Choice::Operation => among(choice, word, Operation::ALL.iter().map(|x| x.name())),
            Choice::Pass => among(choice, word, PassKind::ALL.iter().map(|x| x.name())),
            Choice::Direction => among(choice, word, Direction::ALL.iter().map(|x| x.name())),
            Choice::CutterForm => among(choice, word, FORMS.iter().copied()),
            Choice::CutterMaterial => tool_material(word),
            Choice::FeedAcrossJaws => match word.to_ascii_lowercase().as_str() {
                "true" | "1" => Ok(1),
                "false" | "0" => Ok(0),
                _ => Err(unknown_name(choice.name(), word, ["true", "false"])),
            },
            _ => Err(unknown_name("choice", choice.name(), [])),
        };
        found.and_then(|place| {
            u32::try_from(place).map_err(|_| unknown_name(choice.name(), word, []))
        })
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

/// The place of a word in a list, whatever its case and whether words are joined by `-`, `_` or a
/// blank.
fn among<'a>(
    choice: Choice,
    word: &str,
    list: impl Iterator<Item = &'a str> + Clone,
) -> Result<usize, Problem> {
    let plain = |text: &str| text.to_ascii_lowercase().replace(['_', ' '], "-");
    let wanted = plain(word);
    list.clone()
        .position(|name| plain(name) == wanted)
        .ok_or_else(|| unknown_name(choice.name(), word, list))
}

fn tool_material(word: &str) -> Result<usize, Problem> {
    ToolMaterial::parse(word)
        .and_then(|found| ToolMaterial::ALL.iter().position(|known| *known == found))
        .ok_or_else(|| {
            let names = ToolMaterial::ALL.iter().map(|known| known.name());
            unknown_name(Choice::CutterMaterial.name(), word, names)
        })
}
