//! Parts of a document taken out of it, for files whose sections have names of their own.

use super::node::{Entry, Node, Value};

impl Node {
    /// Takes a key with what stands behind it out of a table.
    pub(in crate::plan) fn take(&mut self, key: &str) -> Option<Node> {
        let Value::Table(entries) = &mut self.value else {
            return None;
        };
        let at = entries.iter().position(|entry| entry.key == key)?;
        let entry = entries.remove(at);
        Some(Node {
            line: entry.line.or(entry.node.line),
            ..entry.node
        })
    }

    /// A table with one key.
    pub(in crate::plan) fn under(self, key: &str) -> Node {
        let line = self.line;
        Node {
            value: Value::Table(vec![Entry {
                key: key.to_owned(),
                line,
                node: self,
            }]),
            line,
        }
    }

    /// The same table with another key in it, where it has none of this name.
    pub(in crate::plan) fn with(mut self, key: &str, node: &Node) -> Node {
        if let Value::Table(entries) = &mut self.value
            && !entries.iter().any(|entry| entry.key == key)
        {
            entries.push(Entry {
                key: key.to_owned(),
                line: node.line,
                node: node.clone(),
            });
        }
        self
    }

    /// What stands behind a key of a table.
    pub(in crate::plan) fn get(&self, key: &str) -> Option<&Node> {
        self.pairs()?
            .iter()
            .find(|entry| entry.key == key)
            .map(|entry| &entry.node)
    }

    fn pairs(&self) -> Option<&[Entry]> {
        match &self.value {
            Value::Table(entries) => Some(entries),
            _ => None,
        }
    }

    /// The keys of a table with what stands behind them.
    pub(in crate::plan) fn keys(&self) -> Option<impl Iterator<Item = (&str, &Node)>> {
        Some(
            self.pairs()?
                .iter()
                .map(|entry| (entry.key.as_str(), &entry.node)),
        )
    }

    /// The items of a list.
    pub(in crate::plan) fn items(&self) -> Option<&[Node]> {
        match &self.value {
            Value::List(items) => Some(items),
            _ => None,
        }
    }

    /// Text.
    pub(in crate::plan) fn as_text(&self) -> Option<&str> {
        match &self.value {
            Value::Text(text) => Some(text),
            _ => None,
        }
    }

    /// A number without a unit.
    pub(in crate::plan) fn as_number(&self) -> Option<f64> {
        match &self.value {
            Value::Number(number, _) => Some(*number),
            _ => None,
        }
    }

    /// How it was given, for a message.
    pub(in crate::plan) fn as_given(&self) -> String {
        self.value.shown()
    }

    /// The line it stands on, for a message.
    pub(in crate::plan) fn place(&self) -> String {
        self.line
            .map_or_else(String::new, |line| format!(" (line {line})"))
    }

    /// Text that stands for itself.
    pub(in crate::plan) fn of_text(text: &str) -> Node {
        Node::text(text)
    }
}
