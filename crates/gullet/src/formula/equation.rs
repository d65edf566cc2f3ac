//! The plain text of an equation, read so that numbers can be put in the place of its symbols.
//!
//! Written are clauses with `; ` between, the main one first. A clause is `symbol = expression`, or
//! `symbol = expression for condition, symbol = expression for condition`. Factors stand side by side,
//! a fraction binds like a product, a function's bracket follows its name without a space, and a unit
//! follows its number. A clause of another form is kept as it is.

use core::f64::consts::PI;

/// Functions an equation may call.
const FUNCTIONS: &[&str] = &[
    "sin", "cos", "tan", "asin", "acos", "atan", "sqrt", "ln", "log2", "exp", "min", "max", "ceil",
    "floor",
];

/// Units that may follow a number, with their size in SI units; longer spellings first.
const UNITS: &[(&str, f64)] = &[
    ("m/min", 1.0 / 60.0),
    ("deg", PI / 180.0),
    ("lbf", 0.453_592_37 * 9.806_65),
    ("min", 60.0),
    ("mm", 1e-3),
    ("in", 0.0254),
];

/// A part of an expression.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Node {
    /// A number as written, perhaps with a unit, and its SI value.
    Number {
        /// As written, without the unit.
        text: String,
        /// The unit, empty where there is none.
        unit: &'static str,
        /// The SI value.
        si: f64,
    },
    /// A symbol; `pi` is one as well.
    Symbol(String),
    /// A function of arguments.
    Call(&'static str, Vec<Node>),
    /// A bracket as written.
    Group(Box<Node>),
    /// The negative of a part.
    Negative(Box<Node>),
    /// Two parts joined by `+`, `-`, `*`, `/` or `^`; `*` is written as nothing.
    Join(char, Box<Node>, Box<Node>),
}

/// How the sides of a condition compare.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Comparison {
    /// The condition as written.
    pub(super) text: String,
    left: Node,
    sign: &'static str,
    right: Node,
}

/// One expression of a clause, with the condition it stands under.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Case {
    /// The expression as written.
    pub(super) text: String,
    /// The expression.
    pub(super) node: Node,
    /// The condition, if any.
    pub(super) when: Option<Comparison>,
}

/// A clause of an equation.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Clause {
    /// The clause as written.
    pub(super) text: String,
    /// What stands left of the equals sign: a symbol, or a function of one as in `tan(lambda)`.
    pub(super) left: String,
    /// The symbol it defines; empty where the clause could not be read.
    pub(super) symbol: String,
    /// The function that solves the clause for its symbol; empty where the symbol stands alone.
    inverse: &'static str,
    /// Its cases; empty where the clause could not be read.
    pub(super) cases: Vec<Case>,
}

impl Comparison {
    fn holds(&self, lookup: &dyn Fn(&str) -> Option<f64>) -> Option<bool> {
        let (left, right) = (self.left.value(lookup)?, self.right.value(lookup)?);
        Some(match self.sign {
            "<=" => left <= right,
            ">=" => left >= right,
            "<" => left < right,
            _ => left > right,
        })
    }
}

impl Clause {
    /// Whether the clause gives a function of its symbol.
    pub(super) fn is_solved(&self) -> bool {
        !self.inverse.is_empty()
    }

    /// The SI value of the symbol, from that of the case.
    pub(super) fn solve(&self, value: f64) -> f64 {
        apply(self.inverse, &[value]).unwrap_or(value)
    }

    /// The case whose condition holds; the first without a condition otherwise.
    pub(super) fn case(&self, lookup: &dyn Fn(&str) -> Option<f64>) -> Option<&Case> {
        for case in &self.cases {
            match &case.when {
                None => return Some(case),
                Some(when) if when.holds(lookup)? => return Some(case),
                Some(_) => {}
            }
        }
        None
    }
}

impl Node {
    /// The SI value; none where a symbol has none.
    pub(super) fn value(&self, lookup: &dyn Fn(&str) -> Option<f64>) -> Option<f64> {
        Some(match self {
            Node::Number { si, .. } => *si,
            Node::Symbol(name) if name == "pi" => PI,
            Node::Symbol(name) => lookup(name)?,
            Node::Group(inner) => inner.value(lookup)?,
            Node::Negative(inner) => -inner.value(lookup)?,
            Node::Call(name, arguments) => {
                let values: Option<Vec<f64>> =
                    arguments.iter().map(|node| node.value(lookup)).collect();
                apply(name, &values?)?
            }
            Node::Join(sign, left, right) => {
                let (left, right) = (left.value(lookup)?, right.value(lookup)?);
                match sign {
                    '+' => left + right,
                    '-' => left - right,
                    '*' => left * right,
                    '/' => left / right,
                    _ => power(left, right),
                }
            }
        })
    }

    /// Whether every symbol is among these.
    fn rests_on(&self, words: &[&str]) -> bool {
        match self {
            Node::Number { .. } => true,
            Node::Symbol(name) => words.contains(&name.as_str()),
            Node::Group(inner) | Node::Negative(inner) => inner.rests_on(words),
            Node::Call(_, arguments) => arguments.iter().all(|node| node.rests_on(words)),
            Node::Join(_, left, right) => left.rests_on(words) && right.rests_on(words),
        }
    }

    /// Whether a number stands in this unit.
    pub(super) fn mentions_unit(&self, wanted: &str) -> bool {
        match self {
            Node::Number { unit, .. } => *unit == wanted,
            Node::Symbol(_) => false,
            Node::Group(inner) | Node::Negative(inner) => inner.mentions_unit(wanted),
            Node::Call(_, arguments) => arguments.iter().any(|node| node.mentions_unit(wanted)),
            Node::Join(_, left, right) => left.mentions_unit(wanted) || right.mentions_unit(wanted),
        }
    }
}

fn power(base: f64, exponent: f64) -> f64 {
    use crate::elementary::pow;
    // Whole even and odd powers of negative numbers occur in squares.
    if base >= 0.0 {
        pow(base, exponent)
    } else if exponent == 2.0 {
        base * base
    } else {
        f64::NAN
    }
}

fn apply(name: &str, values: &[f64]) -> Option<f64> {
    use crate::elementary as e;
    match (name, values) {
        ("sin", [x]) => Some(e::sin(*x)),
        ("cos", [x]) => Some(e::cos(*x)),
        ("tan", [x]) => Some(e::tan(*x)),
        ("asin", [x]) => Some(e::asin(*x)),
        ("acos", [x]) => Some(e::acos(*x)),
        ("atan", [x]) => Some(e::atan(*x)),
        ("ln", [x]) => Some(e::ln(*x)),
        ("log2", [x]) => Some(e::ln(*x) / core::f64::consts::LN_2),
        ("exp", [x]) => Some(e::exp(*x)),
        ("sqrt", [x]) => Some(x.sqrt()),
        // A quotient within 1e-9 of a whole number counts as it, as in the formulas.
        ("ceil", [x]) => Some((x - 1e-9).ceil()),
        ("floor", [x]) => Some((x + 1e-9).floor()),
        ("min", [first, rest @ ..]) => Some(rest.iter().fold(*first, |a, b| a.min(*b))),
        ("max", [first, rest @ ..]) => Some(rest.iter().fold(*first, |a, b| a.max(*b))),
        _ => None,
    }
}

/// Reads an equation whose arguments carry these symbols.
pub(super) fn read(equation: &str, symbols: &[&str]) -> Vec<Clause> {
    let texts = split_outside_brackets(equation, "; ");
    // A clause with any other word is prose.
    let mut words = vec!["pi"];
    words.extend(symbols);
    words.extend(
        texts
            .iter()
            .filter_map(|text| Some(defined(text.split_once(" = ")?.0).0)),
    );
    texts
        .into_iter()
        .map(|text| {
            read_clause(text, symbols)
                .filter(|clause| clause.cases.iter().all(|case| case.node.rests_on(&words)))
                .unwrap_or_else(|| Clause {
                    text: text.to_owned(),
                    left: String::new(),
                    symbol: String::new(),
                    inverse: "",
                    cases: Vec::new(),
                })
        })
        .collect()
}

/// The symbol that the left side of a clause defines, and the function that solves for it.
fn defined(left: &str) -> (&str, &'static str) {
    [("sin(", "asin"), ("cos(", "acos"), ("tan(", "atan")]
        .into_iter()
        .find_map(|(function, inverse)| {
            let symbol = left.strip_prefix(function)?.strip_suffix(')')?;
            Some((symbol, inverse))
        })
        .unwrap_or((left, ""))
}

fn read_clause(text: &str, symbols: &[&str]) -> Option<Clause> {
    let (left, _) = text.split_once(" = ")?;
    let (symbol, inverse) = defined(left);
    let lead = format!("{left} = ");
    let cases: Option<Vec<Case>> = split_outside_brackets(text, ", ")
        .into_iter()
        .map(|part| {
            let part = part.strip_prefix(&lead).unwrap_or(part);
            let (expression, when) = match part.split_once(" for ") {
                Some((expression, condition)) => {
                    (expression, Some(read_comparison(condition, symbols)?))
                }
                None => (part.strip_suffix(" else").unwrap_or(part), None),
            };
            Some(Case {
                text: expression.to_owned(),
                node: Reader::read(expression, symbols)?,
                when,
            })
        })
        .collect();
    let plain = symbol
        .chars()
        .all(|c| c.is_ascii_alphanumeric() || c == '_');
    plain.then_some(Clause {
        text: text.to_owned(),
        left: left.to_owned(),
        symbol: symbol.to_owned(),
        inverse,
        cases: cases?,
    })
}

fn read_comparison(text: &str, symbols: &[&str]) -> Option<Comparison> {
    ["<=", ">=", "<", ">"].into_iter().find_map(|sign| {
        let (left, right) = text.split_once(&format!(" {sign} "))?;
        Some(Comparison {
            text: text.to_owned(),
            left: Reader::read(left, symbols)?,
            sign,
            right: Reader::read(right, symbols)?,
        })
    })
}

fn split_outside_brackets<'a>(text: &'a str, separator: &str) -> Vec<&'a str> {
    let mut parts = Vec::new();
    let mut depth = 0i32;
    let mut start = 0;
    for (index, c) in text.char_indices() {
        match c {
            '(' | '[' => depth += 1,
            ')' | ']' => depth -= 1,
            _ => {}
        }
        if depth == 0
            && index >= start
            && text
                .get(index..)
                .is_some_and(|rest| rest.starts_with(separator))
        {
            parts.extend(text.get(start..index));
            start = index + separator.len();
        }
    }
    parts.extend(text.get(start..));
    parts
}

/// Recursive descent over the text of one expression.
struct Reader<'a> {
    rest: &'a str,
    symbols: &'a [&'a str],
}

impl<'a> Reader<'a> {
    fn read(text: &'a str, symbols: &'a [&'a str]) -> Option<Node> {
        let mut reader = Reader {
            rest: text,
            symbols,
        };
        let node = reader.sum()?;
        reader.rest.trim().is_empty().then_some(node)
    }

    fn take(&mut self, token: &str) -> bool {
        match self.rest.trim_start().strip_prefix(token) {
            Some(rest) => {
                self.rest = rest;
                true
            }
            None => false,
        }
    }

    fn sum(&mut self) -> Option<Node> {
        let mut left = if self.take("-") {
            Node::Negative(Box::new(self.product()?))
        } else {
            self.product()?
        };
        loop {
            let sign = if self.take("+ ") {
                '+'
            } else if self.take("- ") {
                '-'
            } else {
                return Some(left);
            };
            left = Node::Join(sign, Box::new(left), Box::new(self.product()?));
        }
    }

    fn product(&mut self) -> Option<Node> {
        let mut left = self.power()?;
        loop {
            let sign = if self.take("/") {
                '/'
            } else if self.rest.starts_with(' ')
                && self
                    .rest
                    .trim_start()
                    .starts_with(|c: char| c.is_ascii_alphanumeric() || c == '(')
            {
                '*'
            } else {
                return Some(left);
            };
            left = Node::Join(sign, Box::new(left), Box::new(self.power()?));
        }
    }

    fn power(&mut self) -> Option<Node> {
        let base = self.atom()?;
        if self.take("^") {
            return Some(Node::Join('^', Box::new(base), Box::new(self.power()?)));
        }
        Some(base)
    }

    fn atom(&mut self) -> Option<Node> {
        if self.take("(") {
            let inner = self.sum()?;
            return self.take(")").then(|| Node::Group(Box::new(inner)));
        }
        self.rest = self.rest.trim_start();
        if self.rest.starts_with(|c: char| c.is_ascii_digit()) {
            let text = self.while_in(|c| c.is_ascii_digit() || c == '.');
            let (unit, size) = self.unit();
            return Some(Node::Number {
                si: text.parse::<f64>().ok()? * size,
                unit,
                text,
            });
        }
        if !self.rest.starts_with(|c: char| c.is_ascii_alphabetic()) {
            return None;
        }
        let name = self.while_in(|c| c.is_ascii_alphanumeric() || c == '_');
        if !self.rest.starts_with('(') {
            return Some(Node::Symbol(name));
        }
        let function = FUNCTIONS.iter().find(|function| **function == name)?;
        self.take("(");
        let mut arguments = vec![self.sum()?];
        while self.take(",") {
            arguments.push(self.sum()?);
        }
        self.take(")").then_some(Node::Call(function, arguments))
    }

    fn while_in(&mut self, belongs: impl Fn(char) -> bool) -> String {
        let end = self.rest.find(|c| !belongs(c)).unwrap_or(self.rest.len());
        let (taken, rest) = self.rest.split_at_checked(end).unwrap_or((self.rest, ""));
        self.rest = rest;
        taken.to_owned()
    }

    fn unit(&mut self) -> (&'static str, f64) {
        for (unit, size) in UNITS {
            let after = self
                .rest
                .strip_prefix(' ')
                .and_then(|rest| rest.strip_prefix(unit));
            if let Some(after) = after
                && !self.symbols.contains(unit)
                && !after.starts_with(|c: char| c.is_ascii_alphanumeric() || "_(".contains(c))
            {
                self.rest = after;
                return (unit, *size);
            }
        }
        ("", 1.0)
    }
}
