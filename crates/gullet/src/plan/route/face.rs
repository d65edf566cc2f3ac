//! The six faces of a block and its three sizes.

use crate::model::Blank;
use crate::quantity::Length;

/// A size of a block, which runs between two opposite faces.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Axis {
    /// From the left to the right face.
    Length,
    /// From the front to the back face.
    Width,
    /// From the bottom to the top face.
    Height,
}

/// A face of a block as it lies on the drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Face {
    /// Left end of the length.
    Left,
    /// Right end of the length.
    Right,
    /// Front of the width.
    Front,
    /// Back of the width.
    Back,
    /// Top of the height.
    Top,
    /// Bottom of the height.
    Bottom,
}

impl Axis {
    /// The three sizes.
    pub const ALL: &'static [Axis] = &[Axis::Length, Axis::Width, Axis::Height];

    /// The word cards and job files use.
    pub fn name(self) -> &'static str {
        match self {
            Axis::Length => "length",
            Axis::Width => "width",
            Axis::Height => "height",
        }
    }

    /// The faces at its ends.
    pub fn faces(self) -> (Face, Face) {
        match self {
            Axis::Length => (Face::Left, Face::Right),
            Axis::Width => (Face::Front, Face::Back),
            Axis::Height => (Face::Top, Face::Bottom),
        }
    }

    /// This size of a block.
    pub fn of(self, block: &Blank) -> Length {
        match self {
            Axis::Length => block.length,
            Axis::Width => block.width,
            Axis::Height => block.height,
        }
    }

    /// Sets this size of a block.
    pub(super) fn set(self, block: &mut Blank, size: Length) {
        match self {
            Axis::Length => block.length = size,
            Axis::Width => block.width = size,
            Axis::Height => block.height = size,
        }
    }
}

impl Face {
    /// The six faces.
    pub const ALL: &'static [Face] = &[
        Face::Left,
        Face::Right,
        Face::Front,
        Face::Back,
        Face::Top,
        Face::Bottom,
    ];

    /// The word cards and job files use.
    pub fn name(self) -> &'static str {
        match self {
            Face::Left => "left",
            Face::Right => "right",
            Face::Front => "front",
            Face::Back => "back",
            Face::Top => "top",
            Face::Bottom => "bottom",
        }
    }

    /// The face of this name.
    ///
    /// # Errors
    /// `UnknownName` with the nearest name that exists.
    pub fn from_name(name: &str) -> crate::Result<Face> {
        let known = || Face::ALL.iter().map(|face| face.name());
        Face::ALL
            .iter()
            .find(|face| face.name() == name)
            .copied()
            .ok_or_else(|| crate::error::unknown_name("face", name, known()).into())
    }

    /// The size it ends.
    pub fn axis(self) -> Axis {
        match self {
            Face::Left | Face::Right => Axis::Length,
            Face::Front | Face::Back => Axis::Width,
            Face::Top | Face::Bottom => Axis::Height,
        }
    }

    /// The face at the other end of the size.
    pub fn opposite(self) -> Face {
        let (first, second) = self.axis().faces();
        if self == first { second } else { first }
    }
}
