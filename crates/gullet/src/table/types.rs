//! What the tables speak of: groups, tool materials, processes, sources, materials, ranges.

use crate::quantity::{Density, Pressure, Ratio};
use core::fmt;

macro_rules! named {
    ($(#[$doc:meta])* $type:ident { $($(#[$vdoc:meta])* $variant:ident = $name:literal $(| $alias:literal)*;)* }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[non_exhaustive]
        pub enum $type { $($(#[$vdoc])* $variant,)* }

        impl $type {
            /// Every value, in the order written.
            pub const ALL: &'static [$type] = &[$($type::$variant,)*];

            /// The name it is printed with.
            pub fn name(self) -> &'static str {
                match self { $($type::$variant => $name,)* }
            }

            /// Reads a name or one of the spellings of the trade; case, spaces and hyphens do
            /// not matter.
            pub fn parse(text: &str) -> Option<$type> {
                let wanted = plain(text);
                [$(($type::$variant, &[$name $(, $alias)*] as &[&str]),)*]
                    .into_iter()
                    .find(|(_, names)| names.iter().any(|name| plain(name) == wanted))
                    .map(|(value, _)| value)
            }
        }

        impl fmt::Display for $type {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(self.name())
            }
        }
    };
}

/// A name without case, spaces and punctuation, for comparison.
pub(crate) fn plain(text: &str) -> String {
    text.chars()
        .filter(|c| c.is_alphanumeric())
        .flat_map(char::to_lowercase)
        .collect()
}

named! {
    /// Application group of ISO 513.
    Iso513 {
        /// Steel, ferritic and martensitic stainless steel, cast steel.
        P = "P";
        /// Austenitic and duplex stainless steel.
        M = "M";
        /// Cast iron.
        K = "K";
        /// Aluminium, copper, magnesium, plastics.
        N = "N";
        /// Heat-resistant alloys and titanium.
        S = "S";
        /// Hardened steel and hardened or chilled cast iron.
        H = "H";
    }
}

named! {
    /// What the cutting edge is made of.
    ToolMaterial {
        /// High-speed steel.
        Hss = "HSS" | "high speed steel" | "HS" | "M2" | "M7" | "HSS-G";
        /// High-speed steel with cobalt.
        HssCo = "HSS-Co" | "cobalt" | "cobalt HSS" | "HSSE" | "HSS-E" | "M35" | "M42" | "HSCo";
        /// Cast cobalt alloy.
        CastCobalt = "cast cobalt alloy" | "cast cobalt";
        /// Sintered carbide without coating; the bare word carbide is read so, being the slower.
        UncoatedCarbide = "uncoated carbide" | "carbide" | "solid carbide" | "HM" | "HW" | "cemented carbide";
        /// Sintered carbide with a coating.
        CoatedCarbide = "coated carbide" | "HC" | "carbide coated" | "TiN carbide" | "TiAlN carbide" | "AlTiN carbide";
        /// Cermet.
        Cermet = "cermet" | "HT";
        /// Oxide or nitride ceramic.
        Ceramic = "ceramic" | "CA" | "CN" | "CM";
        /// Cubic boron nitride.
        Cbn = "CBN" | "PCBN" | "BN";
        /// Polycrystalline diamond.
        Pcd = "PCD" | "diamond" | "DP";
    }
}

named! {
    /// The way of cutting a row of a table was made for.
    Process {
        /// Milling with an end mill.
        EndMilling = "end milling" | "end mill" | "slotting" | "slot milling";
        /// Milling with a face or shell mill.
        FaceMilling = "face milling" | "face mill" | "facing with a mill" | "shell mill";
        /// Milling with a side and face cutter.
        SideMilling = "side milling" | "side mill" | "slot or side mill";
        /// Milling with a plain cylindrical cutter.
        SlabMilling = "slab milling" | "slab mill" | "plain milling";
        /// Milling, the cutter not stated.
        Milling = "milling" | "mill";
        /// Drilling with a twist drill.
        Drilling = "drilling" | "drill";
        /// Reaming.
        Reaming = "reaming" | "ream";
        /// Tapping.
        Tapping = "tapping" | "tap";
        /// Turning, rough or finish not stated.
        Turning = "turning" | "turn" | "facing" | "boring";
        /// Rough turning.
        RoughTurning = "rough turning" | "turn rough" | "roughing";
        /// Finish turning.
        FinishTurning = "finish turning" | "turn finish" | "finishing";
        /// Sawing with a bimetal band.
        Sawing = "sawing" | "band sawing" | "band saw";
    }
}

impl Process {
    /// Whether a milling cutter with several teeth does it.
    pub fn is_milling(self) -> bool {
        matches!(
            self,
            Process::EndMilling
                | Process::FaceMilling
                | Process::SideMilling
                | Process::SlabMilling
                | Process::Milling
        )
    }
}

named! {
    /// How a value came here.
    Provenance {
        /// A shop's own value.
        Shop = "shop";
        /// Read in the source.
        Seen = "seen";
        /// Known to be in the source, which was not opened.
        Memory = "memory";
        /// Common practice of the trade, without source.
        CommonPractice = "common practice";
        /// Own arithmetic.
        Derived = "derived";
    }
}

named! {
    /// Set that a drill belongs to.
    DrillSet {
        /// By tenths and halves of a millimetre.
        Metric = "metric" | "mm";
        /// By 64ths and 32nds of an inch.
        Fraction = "fraction" | "fractional";
        /// No 80 to No 1.
        Number = "number" | "numbered" | "wire gauge";
        /// A to Z.
        Letter = "letter";
        /// A shop's own.
        Own = "own";
    }
}

/// Where values come from.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Source {
    /// Short id that rows refer to.
    pub id: String,
    /// Author; empty where none is stated.
    pub author: String,
    /// Title.
    pub title: String,
    /// Year as printed; empty where none is stated.
    pub year: String,
    /// Edition; empty where none is stated.
    pub edition: String,
    /// Table, page or chapter, and how it was reached.
    pub place: String,
    /// Whether it was opened.
    pub provenance: Provenance,
    /// Whether the publisher is named; not so for trade literature whose maker is withheld, nor
    /// for rules that have no publisher.
    pub publisher_named: bool,
    /// Whether there is a publisher whose name is withheld.
    pub publisher_withheld: bool,
}

/// Main value k_c1.1 and exponent m_c of the power law of specific cutting force.
///
/// The two belong together: pairs of different sources are never mixed nor averaged.
#[derive(Debug, Clone, PartialEq)]
pub struct KienzlePair {
    /// k_c1.1: specific cutting force at a chip 1 mm thick.
    pub kc11: Pressure,
    /// m_c, in [0, 1).
    pub exponent: Ratio,
    /// Id of its source.
    pub source: String,
}

/// A work material in one condition.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Material {
    /// Id, unique in the library.
    pub id: String,
    /// Name.
    pub name: String,
    /// Other names; one alias may belong to several materials, and is then ambiguous.
    pub aliases: Vec<String>,
    /// Application group.
    pub iso513: Iso513,
    /// Condition, such as `cold drawn`.
    pub condition: String,
    /// Brinell hardness from lowest to highest; `None` where it is unknown or beyond the scale.
    pub hardness_brinell: Option<(f64, f64)>,
    pub(crate) beyond_brinell: bool,
    /// Lowest, highest and scale of the hardness as it was given.
    pub(crate) hardness_given: Option<(f64, f64, String)>,
    /// Tensile strength.
    pub tensile: Option<Pressure>,
    /// Pairs of the power law of cutting force; the first is the default.
    pub pairs: Vec<KienzlePair>,
    /// Density.
    pub density: Option<Density>,
    /// Young's modulus.
    pub youngs_modulus: Option<Pressure>,
    /// Machinability against its list's reference steel.
    pub machinability: Option<Ratio>,
    /// Classes under which the other tables hold it, the nearest first.
    pub classes: Vec<String>,
    /// Tags of dangers: `fire_risk`, `work_hardens`, `abrasive`, `dust`, `melts`.
    pub cautions: Vec<String>,
    /// Ids of the sources, each with what it stands for, such as (`tensile`, `CARD`).
    pub sources: Vec<(String, String)>,
    /// How the row came here.
    pub provenance: Provenance,
    /// What was assumed on the way, such as a converted hardness.
    pub assumptions: Vec<String>,
    /// Remark of the table.
    pub note: String,
}

impl Material {
    /// The same material with a pair of the power law of cutting force in the first place, before
    /// those it has; of these the first two stay.
    pub fn with_pair(&self, pair: KienzlePair) -> Material {
        let mut material = self.clone();
        material.pairs.insert(0, pair);
        material.pairs.truncate(Material::PAIRS);
        material
    }

    /// Most pairs of a material.
    pub const PAIRS: usize = 3;
}

/// One row that stands behind a range.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Support<T> {
    /// Id of the row.
    pub row: String,
    /// Id of its source.
    pub source: String,
    /// How the value came here.
    pub provenance: Provenance,
    /// Low end as used.
    pub low: T,
    /// Start value as used.
    pub start: T,
    /// High end as used.
    pub high: T,
    /// Why it applies, in words.
    pub why: String,
}

/// A range with a start value in it, and what stands behind it.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Ranged<T> {
    /// Lowest of the rows that apply equally well.
    pub low: T,
    /// Value to start with, of the best row.
    pub start: T,
    /// Highest of the rows that apply equally well.
    pub high: T,
    /// The rows; the first gives the start value.
    pub support: Vec<Support<T>>,
    /// What was assumed to come from the rows to this answer.
    pub assumptions: Vec<String>,
}

impl<T: Copy + PartialOrd> Ranged<T> {
    /// The range over supporting rows, the best one first; `None` without rows.
    pub(crate) fn over(support: Vec<Support<T>>, assumptions: Vec<String>) -> Option<Ranged<T>> {
        let best = support.first()?;
        let (mut low, start, mut high) = (best.low, best.start, best.high);
        for row in &support {
            if row.low < low {
                low = row.low;
            }
            if row.high > high {
                high = row.high;
            }
        }
        Some(Ranged {
            low,
            start,
            high,
            support,
            assumptions,
        })
    }
}
