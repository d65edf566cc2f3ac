//! Reads a document by its description and collects every problem.

use super::field::{Field, Form, Group, Presence, Rule, Section, Shape};
use super::key::{Collect, KeyReader, example};
use super::node::{Entry, Node, Value, shown};
use crate::error::{Code, Error, Problem, Result, nearest, unknown_name};
use std::collections::{BTreeMap, BTreeSet};

/// A section read as a struct with one field a key.
pub(in crate::plan) trait Keys: Sized {
    /// The description.
    fn section() -> &'static Section;
    /// The values; none where a key was left out or a problem was reported.
    fn read(section: &mut SectionReader<'_>) -> Self;
}

/// A document being read.
pub(in crate::plan) struct Reader<'a> {
    sections: &'static [fn() -> &'static Section],
    root: &'a [Entry],
    problems: Vec<Problem>,
    assumptions: Vec<String>,
    given: Vec<String>,
    lines: BTreeMap<String, usize>,
}

impl<'a> Reader<'a> {
    /// Begins to read; the first of `sections` holds the keys that stand before every section.
    ///
    /// # Errors
    /// [`Code::WrongType`] where the document is no table.
    pub(in crate::plan) fn open(
        root: &'a Node,
        sections: &'static [fn() -> &'static Section],
    ) -> Result<Reader<'a>> {
        let Value::Table(entries) = &root.value else {
            return Err(Problem::new(
                Code::WrongType,
                "",
                root.value.describe(),
                "a table of sections",
                "write the sections as an object with one key a section",
            )
            .into());
        };
        let mut reader = Reader {
            sections,
            root: entries,
            problems: Vec::new(),
            assumptions: Vec::new(),
            given: Vec::new(),
            lines: BTreeMap::new(),
        };
        let known: Vec<&'static str> = sections
            .iter()
            .map(|section| section())
            .flat_map(|section| {
                let root = section.name.is_empty();
                let fields = section.fields.iter().filter(move |_| root);
                fields
                    .map(|field| field.key)
                    .chain((!root).then_some(section.name))
            })
            .collect();
        reader.names(entries, "", &known);
        Ok(reader)
    }

    /// Reads one section.
    pub(in crate::plan) fn section<K: Keys>(&mut self) -> K {
        let section = K::section();
        let root = self.root;
        let mut silent = false;
        let entries: &[Entry] = if section.name.is_empty() {
            root
        } else {
            match root.iter().find(|entry| entry.key == section.name) {
                Some(entry) => match &entry.node.value {
                    Value::Table(entries) => {
                        let known: Vec<_> = section.fields.iter().map(|f| f.key).collect();
                        self.names(entries, section.name, &known);
                        entries
                    }
                    other => {
                        silent = true;
                        let remedy = match other {
                            Value::List(_) => {
                                format!("write [{}] once, in single brackets", section.name)
                            }
                            _ => format!("write a line [{}] and its keys below it", section.name),
                        };
                        self.problem(Problem::new(
                            Code::WrongType,
                            section.name,
                            other.shown(),
                            "a section",
                            remedy,
                        ));
                        &[]
                    }
                },
                None => {
                    if section.required {
                        silent = true;
                        self.problem(Problem::new(
                            Code::Missing,
                            section.name,
                            "",
                            "",
                            format!("add the section [{}]: {}", section.name, section.meaning),
                        ));
                    }
                    &[]
                }
            }
        };
        let mut reading = SectionReader {
            section,
            entries,
            silent,
            reader: self,
        };
        let keys = K::read(&mut reading);
        if !silent {
            reading.rules();
        }
        keys
    }

    /// Reports keys that do not exist or are given twice, and notes the lines of the others.
    fn names(&mut self, entries: &[Entry], section: &str, known: &[&'static str]) {
        let mut seen = BTreeSet::new();
        for entry in entries {
            let path = path(section, &entry.key);
            if let Some(line) = entry.line {
                self.lines.entry(path.clone()).or_insert(line);
            }
            if !seen.insert(entry.key.as_str()) {
                self.problem(Problem::new(
                    Code::Duplicate,
                    path,
                    entry.node.value.shown(),
                    "each key and each section once",
                    "leave one of them out",
                ));
            } else if known.contains(&entry.key.as_str()) {
                self.given.push(path);
            } else {
                let mut problem = unknown_name(&path, &entry.key, known.iter().copied());
                problem.value = format!("\"{}\"", shown(&entry.key));
                if let Some(home) = self.home(section, &entry.key) {
                    problem.remedy = home;
                } else if nearest(&entry.key, known.iter().copied()).is_none() {
                    problem.remedy = "leave it out, or use one of the known names".to_owned();
                }
                self.problem(problem);
            }
        }
    }

    /// Where a key belongs that is right in another section.
    fn home(&self, section: &str, key: &str) -> Option<String> {
        let holds = |other: &&'static Section| {
            other.name != section && other.fields.iter().any(|field| field.key == key)
        };
        let homes: Vec<String> = self
            .sections
            .iter()
            .map(|section| section())
            .filter(holds)
            .map(|home| match home.name {
                "" => "at the top, before the first section".to_owned(),
                name => format!("under [{name}]"),
            })
            .collect();
        (!homes.is_empty()).then(|| format!("it belongs {}", homes.join(" or ")))
    }

    /// Whether the document gives this key, readable or not.
    pub(in crate::plan) fn gives(&self, path: &str) -> bool {
        self.given.iter().any(|given| given == path)
    }

    /// The keys of a section that the document gives, but for `except`.
    pub(in crate::plan) fn given_in(&self, section: &str, except: &[&str]) -> Vec<&str> {
        self.given
            .iter()
            .filter_map(|path| path.strip_prefix(section)?.strip_prefix('.'))
            .filter(|key| !except.contains(key))
            .collect()
    }

    /// Notes what is assumed, for the card.
    pub(in crate::plan) fn assume(&mut self, text: String) {
        self.assumptions.push(text);
    }

    /// Notes a problem whose parameter is its full path.
    pub(in crate::plan) fn problem(&mut self, problem: Problem) {
        self.problems.push(problem);
    }

    /// Notes the problems of a model built from a section, but for those of keys that already have
    /// one: their values are stand-ins.
    pub(in crate::plan) fn within(&mut self, section: &str, problems: Vec<Problem>) {
        for problem in problems {
            let problem = problem.within(section);
            if !self.blamed(&problem.parameter) {
                self.problems.push(problem);
            }
        }
    }

    /// Whether a key already has a problem.
    pub(in crate::plan) fn blamed(&self, path: &str) -> bool {
        self.problems.iter().any(|known| known.parameter == path)
    }

    /// What was assumed, or every problem, each with its line where that is known.
    pub(in crate::plan) fn close(self) -> Result<Vec<String>> {
        let lines = self.lines;
        let line_of = |path: &str| lines.get(path).copied();
        let problems = self.problems.into_iter().map(|mut problem| {
            let parent = problem
                .parameter
                .split_once('.')
                .map(|(section, _)| section);
            let line = line_of(&problem.parameter).or_else(|| line_of(parent?));
            if let Some(line) = line {
                let gap = if problem.remedy.is_empty() { "" } else { " " };
                problem.remedy += &format!("{gap}(line {line})");
            }
            problem
        });
        Error::unless_empty(problems.collect(), self.assumptions)
    }
}

fn path(section: &str, key: &str) -> String {
    let key = shown(key);
    if section.is_empty() {
        key
    } else {
        format!("{section}.{key}")
    }
}

/// A section being read.
pub(in crate::plan) struct SectionReader<'r> {
    section: &'static Section,
    entries: &'r [Entry],
    /// The section itself has a problem: its keys are not reported as missing.
    silent: bool,
    reader: &'r mut dyn Collect,
}

impl Collect for Reader<'_> {
    fn add(&mut self, problem: Problem) {
        self.problem(problem);
    }
    fn state(&mut self, assumption: String) {
        self.assume(assumption);
    }
}

impl SectionReader<'_> {
    fn path(&self, key: &str) -> String {
        path(self.section.name, key)
    }

    fn entry(&self, key: &str) -> Option<&Node> {
        self.entries
            .iter()
            .find(|entry| entry.key == key)
            .map(|entry| &entry.node)
    }

    fn gives(&self, key: &str) -> bool {
        self.entry(key).is_some()
    }

    /// The value of a key as given.
    fn shown(&self, key: &str) -> String {
        self.entry(key)
            .map_or_else(String::new, |node| node.value.shown())
    }

    fn field(&self, key: &str) -> Option<&'static Field> {
        self.section.fields.iter().find(|field| field.key == key)
    }

    /// The value of a key, or of its default.
    pub(in crate::plan) fn take<F: Form>(&mut self, key: &str) -> Option<F::Out> {
        let field = self.field(key)?;
        let path = self.path(key);
        let entries = self.entries;
        let default;
        let node = match entries.iter().find(|entry| entry.key == key) {
            Some(entry) => &entry.node,
            None => {
                default = Node::text(self.absent(field, &path)?);
                &default
            }
        };
        let mut reader = KeyReader {
            field,
            path: &path,
            reader: self.reader,
        };
        F::read(node, &mut reader)
    }

    /// Text of the default of a key that is left out; a key that is needed is reported.
    fn absent(&mut self, field: &Field, path: &str) -> Option<&'static str> {
        if self.silent {
            return None;
        }
        match field.presence {
            Presence::Optional(_) => None,
            Presence::Default(text) => Some(text),
            Presence::Assumed(text, reason) => {
                self.reader
                    .state(format!("{path}: {text} assumed ({reason})"));
                Some(text)
            }
            Presence::RequiredUnless(other) if self.gives(other) => None,
            Presence::Required => {
                self.missing(field.key, "");
                None
            }
            Presence::RequiredUnless(other) => {
                self.missing(field.key, &format!(", or give {other}"));
                None
            }
        }
    }

    fn missing(&mut self, key: &str, or: &str) {
        let path = self.path(key);
        let (write, meaning) = self
            .field(key)
            .map_or_else(Default::default, |field| (example(field), field.meaning));
        self.reader.add(Problem::new(
            Code::Missing,
            path,
            "",
            "",
            format!("write {write}{or}: {meaning}"),
        ));
    }

    /// Checks what must hold between the keys.
    fn rules(&mut self) {
        for rule in self.section.rules {
            match rule {
                Rule::OneOf { groups, unless } => self.one_of(groups, *unless),
                Rule::With {
                    key,
                    other,
                    word,
                    needed,
                    elsewhere,
                } => {
                    let Some(Value::Text(said)) = self.entry(other).map(|node| &node.value) else {
                        continue;
                    };
                    let (said, fits) = (shown(said), said == word);
                    let known = self.field(other).is_some_and(|field| match field.shape {
                        Shape::Choice(words) => words.contains(&said.as_str()),
                        _ => true,
                    });
                    if fits && *needed && !self.gives(key) {
                        self.missing(key, "");
                    } else if known && !fits && !elsewhere && self.gives(key) {
                        self.reader.add(Problem::new(
                            Code::Inconsistent,
                            self.path(key),
                            self.shown(key),
                            format!("only with {other} = \"{word}\""),
                            format!(
                                "given with {other} = \"{said}\": leave {key} out or change {other}"
                            ),
                        ));
                    }
                }
            }
        }
    }

    fn one_of(&mut self, groups: &[Group], unless: Option<&str>) {
        let used: Vec<&Group> = groups
            .iter()
            .filter(|group| group.keys().any(|key| self.gives(key)))
            .collect();
        let ways: Vec<String> = groups.iter().map(Group::words).collect();
        let ways = ways.join(", or ");
        match used.as_slice() {
            [] => {
                if unless.is_some_and(|key| self.gives(key)) {
                    return;
                }
                let first = groups.first().and_then(|group| group.needs.first());
                let path = self.path(first.copied().unwrap_or_default());
                let or = unless.map_or_else(String::new, |key| format!(", or {key}"));
                let write = first.and_then(|key| self.field(key)).map(example);
                self.reader.add(Problem::new(
                    Code::Missing,
                    path,
                    "",
                    format!("{ways}{or}"),
                    format!(
                        "give one of these ways, such as {}",
                        write.unwrap_or_default()
                    ),
                ));
            }
            [only] => {
                if unless.is_some_and(|key| self.gives(key)) {
                    return;
                }
                for key in only.needs {
                    if !self.gives(key) {
                        self.missing(key, "");
                    }
                }
            }
            [first, others @ ..] => {
                let given = first.keys().find(|key| self.gives(key)).unwrap_or_default();
                for key in others.iter().flat_map(|group| group.keys()) {
                    if self.gives(key) {
                        self.reader.add(Problem::new(
                            Code::Inconsistent,
                            self.path(key),
                            self.shown(key),
                            format!("either {ways}"),
                            format!("given together with {given}: leave out one of them"),
                        ));
                    }
                }
            }
        }
    }
}
