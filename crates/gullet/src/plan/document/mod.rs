//! Documents with named sections and keys: one description of the keys, from which come the
//! reading with its errors, the JSON Schema and the reference text.

mod define;
mod field;
mod key;
mod node;
mod pick;
mod quantity_text;
mod reader;
mod reference;
mod schema;

pub(super) use define::{key, keys};
pub(super) use field::{Field, Form, Group, Presence, Rule, Section, Shape, Word, form};
pub(super) use node::Node;
pub(super) use quantity_text::pattern;
pub(super) use reader::{Keys, Reader, SectionReader};
pub(super) use reference::reference;
pub(super) use schema::schema;
