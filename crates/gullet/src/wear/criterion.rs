//! When an edge counts as worn: the criteria of the standards, and a shop's own.
//!
//! ISO 3685 (turning) and ISO 8688-1 and -2 (face and end milling) from memory; neither text was
//! opened.

use crate::error::Result;
use crate::formula::wear::crater_depth_limit;
use crate::quantity::{Kind, Length, parse, si, to_unit, unit};
use crate::table::plain;
use core::fmt;

/// A criterion of tool life.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum WearCriterion {
    /// ISO 3685, turning: mean width of flank wear 0.3 mm where the flank wears evenly.
    TurningUniform,
    /// ISO 3685, turning: largest width of flank wear 0.6 mm where it wears unevenly.
    TurningLocal,
    /// ISO 3685, turning with carbide: depth of crater 0.06 mm and 0.3 times the feed.
    TurningCrater,
    /// ISO 3685, turning with high-speed steel or ceramic: the edge fails at once.
    TurningFailure,
    /// ISO 8688-1, face milling: even flank wear 0.3 mm, mean over all teeth.
    FaceMillingUniform,
    /// ISO 8688-1, face milling: largest flank wear 0.5 mm on any one tooth.
    FaceMillingLocal,
    /// ISO 8688-2, end milling: even flank wear 0.3 mm, mean over all teeth.
    EndMillingUniform,
    /// ISO 8688-2, end milling: largest flank wear 0.5 mm on any one tooth.
    EndMillingLocal,
    /// A width of flank wear of the tests' own.
    FlankWear(Length),
    /// A criterion in words, such as a roughness that is no longer held.
    Named(String),
    /// Not stated.
    Unstated,
}

/// The criteria of the standards with name and flank wear in metres.
const STANDARD: &[(WearCriterion, &str, Option<f64>)] = &[
    (
        WearCriterion::TurningUniform,
        "ISO 3685 VB 0.3 mm",
        Some(0.3e-3),
    ),
    (
        WearCriterion::TurningLocal,
        "ISO 3685 VBmax 0.6 mm",
        Some(0.6e-3),
    ),
    (WearCriterion::TurningCrater, "ISO 3685 KT", None),
    (WearCriterion::TurningFailure, "ISO 3685 failure", None),
    (
        WearCriterion::FaceMillingUniform,
        "ISO 8688-1 VB 0.3 mm",
        Some(0.3e-3),
    ),
    (
        WearCriterion::FaceMillingLocal,
        "ISO 8688-1 VBmax 0.5 mm",
        Some(0.5e-3),
    ),
    (
        WearCriterion::EndMillingUniform,
        "ISO 8688-2 VB 0.3 mm",
        Some(0.3e-3),
    ),
    (
        WearCriterion::EndMillingLocal,
        "ISO 8688-2 VBmax 0.5 mm",
        Some(0.5e-3),
    ),
];

impl WearCriterion {
    /// Names of the criteria of the standards.
    pub fn standard_names() -> impl Iterator<Item = &'static str> {
        STANDARD.iter().map(|(_, name, _)| *name)
    }

    /// Reads the name of a standard's criterion, or `VB` with a width of flank wear; empty text is
    /// unstated, other text a criterion in words.
    ///
    /// ```
    /// use gullet::wear::WearCriterion;
    /// assert_eq!(WearCriterion::read("iso 3685 vb 0.3 mm"), WearCriterion::TurningUniform);
    /// assert_eq!(WearCriterion::read("VB 0.2 mm").flank_wear().map(|vb| vb.value), Some(0.2e-3));
    /// assert_eq!(WearCriterion::read("burr too large").to_string(), "burr too large");
    /// ```
    pub fn read(text: &str) -> WearCriterion {
        let text = text.trim();
        if text.is_empty() {
            return WearCriterion::Unstated;
        }
        let wanted = plain(text);
        if let Some((known, ..)) = STANDARD.iter().find(|(_, name, _)| plain(name) == wanted) {
            return known.clone();
        }
        let width = text.strip_prefix("VB").or_else(|| text.strip_prefix("vb"));
        match width.map(|width| parse(Kind::Length, width.trim_start_matches([' ', '=']))) {
            Some(Ok(width)) if width > 0.0 => WearCriterion::FlankWear(si(width)),
            _ => WearCriterion::Named(text.to_owned()),
        }
    }

    /// The width of flank wear that ends the life; none where something else does.
    pub fn flank_wear(&self) -> Option<Length> {
        match self {
            WearCriterion::FlankWear(width) => Some(*width),
            _ => {
                let found = STANDARD.iter().find(|(known, ..)| known == self);
                found.and_then(|(_, _, width)| width.map(si))
            }
        }
    }

    /// The depth of crater that ends the life at a feed per revolution; none where something else
    /// does.
    ///
    /// # Errors
    /// [`Code::OutOfRange`](crate::Code::OutOfRange) for a feed that is not above zero.
    pub fn crater_depth(&self, feed_per_rev: Length) -> Result<Option<Length>> {
        match self {
            WearCriterion::TurningCrater => crater_depth_limit(feed_per_rev).map(Some),
            _ => Ok(None),
        }
    }
}

/// The text that [`WearCriterion::read`] reads.
impl fmt::Display for WearCriterion {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            WearCriterion::FlankWear(width) => match unit(Kind::Length, "mm") {
                Ok(mm) => write!(f, "VB {} mm", to_unit(width.value, mm)),
                Err(_) => Err(fmt::Error),
            },
            WearCriterion::Named(words) => f.write_str(words),
            _ => {
                let found = STANDARD.iter().find(|(known, ..)| known == self);
                f.write_str(found.map_or("", |(_, name, _)| name))
            }
        }
    }
}
