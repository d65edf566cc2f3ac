//! Values in the place of an equation's symbols, as text and as LaTeX.

use super::equation::{Clause, Node};
use super::step::Step;
use crate::quantity::{self, Kind, UnitSystem};

/// A symbol's value and how it is shown.
struct Value {
    symbol: String,
    si: f64,
    size: Size,
}

/// Powers of length, time and mass, and whether a pure number is an angle.
#[derive(Clone, Copy, PartialEq)]
struct Size {
    length: f64,
    time: f64,
    mass: f64,
    angle: bool,
    /// The kind where it is known from an argument.
    kind: Option<Kind>,
}

/// The values of all symbols of a step.
pub(super) struct Known {
    values: Vec<Value>,
    system: UnitSystem,
}

impl Size {
    const NUMBER: Size = Size::of(0.0, 0.0, 0.0);
    const ANGLE: Size = Size {
        angle: true,
        kind: Some(Kind::Angle),
        ..Size::NUMBER
    };

    const fn of(length: f64, time: f64, mass: f64) -> Size {
        Size {
            length,
            time,
            mass,
            angle: false,
            kind: None,
        }
    }

    fn of_kind(kind: Kind) -> Size {
        let size = match kind {
            Kind::Length => Size::of(1.0, 0.0, 0.0),
            Kind::Area => Size::of(2.0, 0.0, 0.0),
            Kind::Velocity => Size::of(1.0, -1.0, 0.0),
            Kind::Acceleration => Size::of(1.0, -2.0, 0.0),
            Kind::Time => Size::of(0.0, 1.0, 0.0),
            Kind::RotationalSpeed | Kind::Frequency | Kind::MoneyRate => Size::of(0.0, -1.0, 0.0),
            Kind::Angle => Size::ANGLE,
            Kind::Force => Size::of(1.0, -2.0, 1.0),
            Kind::LineForce | Kind::Stiffness => Size::of(0.0, -2.0, 1.0),
            Kind::Pressure => Size::of(-1.0, -2.0, 1.0),
            Kind::Power => Size::of(2.0, -3.0, 1.0),
            Kind::Torque | Kind::Energy => Size::of(2.0, -2.0, 1.0),
            Kind::VolumeRate => Size::of(3.0, -1.0, 0.0),
            Kind::AreaRate => Size::of(2.0, -1.0, 0.0),
            Kind::Density => Size::of(-3.0, 0.0, 1.0),
            Kind::Ratio | Kind::Count | Kind::Turns | Kind::Money => Size::NUMBER,
        };
        Size {
            kind: Some(kind),
            ..size
        }
    }

    fn is_number(self) -> bool {
        self.length == 0.0 && self.time == 0.0 && self.mass == 0.0
    }

    fn product(self, other: Size, sign: f64) -> Size {
        Size {
            angle: self.angle != other.angle && (sign > 0.0 || self.angle),
            ..Size::of(
                self.length + sign * other.length,
                self.time + sign * other.time,
                self.mass + sign * other.mass,
            )
        }
    }

    fn power(self, exponent: f64) -> Size {
        Size::of(
            self.length * exponent,
            self.time * exponent,
            self.mass * exponent,
        )
    }

    /// The kind a value of this size is printed as; none where no unit of a shop measures it.
    fn kind(self) -> Option<Kind> {
        if self.kind.is_some() {
            return self.kind;
        }
        if self.is_number() {
            return Some(if self.angle { Kind::Angle } else { Kind::Ratio });
        }
        [
            Kind::Length,
            Kind::Area,
            Kind::Velocity,
            Kind::Time,
            Kind::RotationalSpeed,
            Kind::Force,
            Kind::LineForce,
            Kind::Pressure,
            Kind::Power,
            Kind::Torque,
            Kind::VolumeRate,
        ]
        .into_iter()
        .find(|kind| {
            Size {
                angle: self.angle,
                kind: None,
                ..Size::of_kind(*kind)
            } == self
        })
    }
}

/// Where a value stands, which decides whether it needs a bracket.
#[derive(Clone, Copy, PartialEq)]
enum Place {
    /// Alone: a whole side, an argument, the first of a sum.
    Alone,
    /// The first factor of a product.
    FirstFactor,
    /// A later factor, or a later term of a sum.
    Later,
    /// The last factor of a product above a fraction's bar.
    LastAbove,
    /// Above or below a fraction's bar written as `/`; `true` for below.
    Fraction(bool),
    /// The base of a power.
    Base,
    /// The exponent of a power.
    Exponent,
}

impl Known {
    /// The arguments of a step and what its further clauses define.
    pub(super) fn new(step: &Step, clauses: &[Clause], system: UnitSystem) -> Known {
        let values = step
            .formula
            .parameters
            .iter()
            .zip(&step.arguments)
            .map(|(parameter, si)| Value {
                symbol: parameter.symbol.to_owned(),
                si: *si,
                size: Size::of_kind(parameter.kind),
            })
            .collect();
        let mut known = Known { values, system };
        // A clause may rest on one that stands after it.
        for _ in clauses {
            for clause in clauses.iter().skip(1) {
                if known.value(&clause.symbol).is_none() {
                    known.define(clause);
                }
            }
        }
        known
    }

    fn define(&mut self, clause: &Clause) {
        let lookup = |name: &str| self.value(name);
        let found = clause.case(&lookup).and_then(|case| {
            let si = case.node.value(&lookup)?;
            let size = if clause.is_solved() {
                Size::ANGLE
            } else {
                self.size(&case.node)
            };
            Some((clause.solve(si), size))
        });
        if let Some((si, size)) = found {
            self.values.push(Value {
                symbol: clause.symbol.clone(),
                si,
                size,
            });
        }
    }

    fn find(&self, symbol: &str) -> Option<&Value> {
        self.values.iter().find(|value| value.symbol == symbol)
    }

    /// The SI value of a symbol.
    pub(super) fn value(&self, symbol: &str) -> Option<f64> {
        self.find(symbol).map(|value| value.si)
    }

    /// The value of a symbol with its unit; an angle in radians as well.
    pub(super) fn shown(&self, symbol: &str) -> Option<String> {
        let value = self.find(symbol)?;
        let kind = value.size.kind()?;
        let text = quantity::format_worked(kind, value.si, self.system);
        Some(if kind == Kind::Angle {
            format!("{text} = {}", self.radians(value.si))
        } else {
            text
        })
    }

    fn radians(&self, angle: f64) -> String {
        format!(
            "{} rad",
            quantity::format_worked(Kind::Ratio, angle, self.system)
        )
    }

    fn size(&self, node: &Node) -> Size {
        match node {
            Node::Number { unit, .. } => match *unit {
                "mm" | "in" => Size::of(1.0, 0.0, 0.0),
                "lbf" => Size::of(1.0, -2.0, 1.0),
                "deg" => Size::ANGLE,
                "min" => Size::of(0.0, 1.0, 0.0),
                "m/min" => Size::of(1.0, -1.0, 0.0),
                _ => Size::NUMBER,
            },
            // So that phi/(2 pi) is a share of a turn and 2 pi/z an angle.
            Node::Symbol(name) if name == "pi" => Size::ANGLE,
            Node::Symbol(name) => self.find(name).map_or(Size::NUMBER, |value| value.size),
            Node::Group(inner) | Node::Negative(inner) => self.size(inner),
            Node::Call(name, arguments) => match (*name, arguments.first()) {
                ("min" | "max", Some(first)) => self.size(first),
                ("asin" | "acos" | "atan", _) => Size::ANGLE,
                ("sqrt", Some(first)) => self.size(first).power(0.5),
                _ => Size::NUMBER,
            },
            Node::Join(sign, left, right) => match sign {
                '*' => self.size(left).product(self.size(right), 1.0),
                '/' => self.size(left).product(self.size(right), -1.0),
                '^' => {
                    let lookup = |name: &str| self.value(name);
                    self.size(left).power(right.value(&lookup).unwrap_or(1.0))
                }
                _ => {
                    let (left, right) = (self.size(left), self.size(right));
                    let angle = left.angle && right.angle;
                    Size {
                        angle,
                        kind: angle.then_some(Kind::Angle),
                        ..left
                    }
                }
            },
        }
    }

    /// Whether the expression measures an angle.
    pub(super) fn is_angle(&self, node: &Node) -> bool {
        let size = self.size(node);
        size.is_number() && size.angle
    }

    /// The expression with values for its symbols. Angles stand in degrees in an angle, beside a degree
    /// and under a sine, else in radians.
    pub(super) fn text(&self, node: &Node, angle: bool) -> String {
        let degrees = angle || node.mentions_unit("deg");
        self.write(node, Place::Alone, degrees, &TEXT)
    }

    /// The same in LaTeX.
    pub(super) fn latex(&self, node: &Node, angle: bool) -> String {
        let degrees = angle || node.mentions_unit("deg");
        self.write(node, Place::Alone, degrees, &LATEX)
    }

    fn write(&self, node: &Node, place: Place, degrees: bool, style: &Style) -> String {
        match node {
            Node::Number { text, unit, .. } => {
                let text = if unit.is_empty() {
                    text.clone()
                } else {
                    format!("{text} {unit}")
                };
                style.value(&text, place)
            }
            Node::Symbol(name) => match self.find(name) {
                Some(value) => {
                    let text = match value.size.kind() {
                        Some(Kind::Angle) if !degrees => self.radians(value.si),
                        Some(kind) => quantity::format_worked(kind, value.si, self.system),
                        None => return (style.symbol)(name),
                    };
                    style.value(&text, place)
                }
                None => (style.symbol)(name),
            },
            Node::Group(inner) => {
                let inner = self.write(inner, Place::Alone, degrees, style);
                match place {
                    // A fraction's bar and an exponent's height bracket by themselves.
                    Place::Fraction(_) | Place::Exponent if style.bars => inner,
                    _ => (style.group)(&inner),
                }
            }
            Node::Negative(inner) => {
                let inner = format!("-{}", self.write(inner, Place::Later, degrees, style));
                match place {
                    Place::Alone | Place::FirstFactor => inner,
                    _ => (style.group)(&inner),
                }
            }
            Node::Call(name, arguments) => {
                let degrees = degrees || matches!(*name, "sin" | "cos" | "tan");
                let arguments: Vec<String> = arguments
                    .iter()
                    .map(|node| self.write(node, Place::Alone, degrees, style))
                    .collect();
                (style.call)(name, &arguments.join(", "))
            }
            Node::Join(sign, left, right) => {
                let (first, second) = match sign {
                    '+' | '-' => (Place::Alone, Place::Later),
                    '*' if place == Place::Fraction(false) => {
                        (Place::FirstFactor, Place::LastAbove)
                    }
                    '*' => (Place::FirstFactor, Place::Later),
                    '/' => (Place::Fraction(false), Place::Fraction(true)),
                    _ => (Place::Base, Place::Exponent),
                };
                let left = self.write(left, first, degrees, style);
                let right = self.write(right, second, degrees, style);
                (style.join)(*sign, &left, &right)
            }
        }
    }
}

/// How the parts of an expression are written.
struct Style {
    symbol: fn(&str) -> String,
    quantity: fn(&str) -> String,
    group: fn(&str) -> String,
    call: fn(&str, &str) -> String,
    join: fn(char, &str, &str) -> String,
    /// Whether fractions and exponents are set off by their place, not by brackets.
    bars: bool,
}

impl Style {
    fn value(&self, text: &str, place: Place) -> String {
        let negative = text.starts_with('-');
        let unit = text.split_once(' ').map_or("", |(_, unit)| unit);
        let bracket = match place {
            Place::Alone | Place::FirstFactor => false,
            Place::Later => negative,
            Place::LastAbove => negative || (!self.bars && unit.contains('/')),
            Place::Fraction(_) if self.bars => false,
            Place::Fraction(false) => unit.contains('/'),
            Place::Fraction(true) => negative || unit.contains(['/', '.']),
            Place::Base => negative || !unit.is_empty(),
            Place::Exponent => !self.bars && (negative || !unit.is_empty()),
        };
        let shown = (self.quantity)(text);
        if bracket { (self.group)(&shown) } else { shown }
    }
}

const TEXT: Style = Style {
    symbol: str::to_owned,
    quantity: str::to_owned,
    group: |inner| format!("({inner})"),
    call: |name, arguments| format!("{name}({arguments})"),
    join: |sign, left, right| match sign {
        '*' => format!("{left} x {right}"),
        '/' | '^' => format!("{left}{sign}{right}"),
        _ => format!("{left} {sign} {right}"),
    },
    bars: false,
};

const LATEX: Style = Style {
    symbol: latex_symbol,
    quantity: latex_quantity,
    group: |inner| format!(r"\left({inner}\right)"),
    call: |name, arguments| match name {
        "sqrt" => format!(r"\sqrt{{{arguments}}}"),
        "log2" => format!(r"\log_2\left({arguments}\right)"),
        "ceil" => format!(r"\left\lceil {arguments} \right\rceil"),
        "floor" => format!(r"\left\lfloor {arguments} \right\rfloor"),
        "asin" | "acos" | "atan" => {
            format!(
                r"\arc{}\left({arguments}\right)",
                name.trim_start_matches('a')
            )
        }
        _ => format!(r"\{name}\left({arguments}\right)"),
    },
    join: |sign, left, right| match sign {
        '*' => format!(r"{left} \times {right}"),
        '/' => format!(r"\frac{{{left}}}{{{right}}}"),
        '^' => format!("{left}^{{{right}}}"),
        _ => format!("{left} {sign} {right}"),
    },
    bars: true,
};

/// Symbols that LaTeX spells as a command.
const GREEK: &[&str] = &[
    "alpha", "beta", "gamma", "delta", "epsilon", "zeta", "eta", "theta", "kappa", "lambda", "mu",
    "nu", "xi", "pi", "rho", "sigma", "tau", "chi", "psi", "omega",
];

/// A plain symbol such as `phi_st` in LaTeX.
pub(super) fn latex_symbol(symbol: &str) -> String {
    let command = |part: &str| match part {
        "phi" => r"\varphi".to_owned(),
        _ if GREEK.contains(&part) => format!(r"\{part}"),
        _ => part.to_owned(),
    };
    match symbol.split_once('_') {
        Some((main, index)) if index.chars().count() > 1 => {
            format!(r"{}_\mathrm{{{}}}", command(main), index.replace('_', ","))
        }
        Some((main, index)) => format!("{}_{index}", command(main)),
        None => command(symbol),
    }
}

/// A printed quantity such as `12.7 mm` in LaTeX, its unit upright.
pub(super) fn latex_quantity(text: &str) -> String {
    text.split(" = ")
        .map(|text| match text.split_once(' ') {
            Some((number, "deg")) => format!(r"{number}^\circ"),
            Some((number, unit)) => format!(r"{number}\,\mathrm{{{}}}", latex_unit(unit)),
            None => text.replace('%', r"\%"),
        })
        .collect::<Vec<_>>()
        .join(" = ")
}

fn latex_unit(unit: &str) -> String {
    let mut text = String::new();
    for c in unit.chars() {
        match c {
            '%' => text += r"\%",
            '.' => text += r"\,",
            '0'..='9' => text.extend(['^', c]),
            _ => text.push(c),
        }
    }
    text
}
