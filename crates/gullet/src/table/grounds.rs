//! What the tables say of a material under a tool, kept once it was looked up.

use super::feed::FeedReader;
use super::force::{Kienzle, UnitPower};
use super::library::Library;
use super::types::{Material, Process, Ranged, ToolMaterial};
use crate::error::{Error, Result};
use crate::quantity::{AreaRate, Velocity};
use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

/// What the tables say of a material under a tool, whatever the size of cutter and cut.
pub(crate) struct Grounds {
    pub speed: Result<Ranged<Velocity>>,
    pub feed: Option<FeedReader>,
    pub no_feed: Option<Error>,
    pub kienzle: Result<Kienzle>,
    pub unit_power: Option<UnitPower>,
    /// Low and high end of the areas that a saw cuts per time.
    pub area_rate: Option<(AreaRate, AreaRate)>,
}

/// Place of a material in its library, tool material and process.
type Question = (usize, ToolMaterial, Process);

/// Answers of a library to questions about its own materials. Not hashed: a checker of memory takes what
/// a hash table of a static holds for lost.
#[derive(Default)]
pub(super) struct Answered(Mutex<BTreeMap<Question, Arc<Grounds>>>);

impl Clone for Answered {
    /// A copy is made to be changed: its answers may be others.
    fn clone(&self) -> Answered {
        Answered::default()
    }
}

impl core::fmt::Debug for Answered {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str("Answered")
    }
}

impl Library {
    /// What the tables say of a material; of one of their own it is looked up once.
    pub(crate) fn grounds(
        &self,
        material: &Material,
        tool: ToolMaterial,
        process: Process,
    ) -> Arc<Grounds> {
        let own = |known: &Material| core::ptr::eq(known, material) || known == material;
        let Some(place) = self.materials.iter().position(own) else {
            return Arc::new(self.look_up(material, tool, process));
        };
        let question = (place, tool, process);
        let answered = || {
            let answered = self.answered.0.lock();
            answered.unwrap_or_else(PoisonError::into_inner)
        };
        if let Some(known) = answered().get(&question) {
            return known.clone();
        }
        let found = Arc::new(self.look_up(material, tool, process));
        answered().entry(question).or_insert(found).clone()
    }

    fn look_up(&self, material: &Material, tool: ToolMaterial, process: Process) -> Grounds {
        let feed = self.feed_reader(material, tool, process);
        Grounds {
            speed: self.cutting_speed(material, tool, process),
            no_feed: feed
                .is_none()
                .then(|| self.no_feed(material, tool, process)),
            feed,
            kienzle: self.kienzle(material),
            // The second method is an opinion beside the first: a cut does without it.
            unit_power: self.unit_power(material).ok(),
            area_rate: (process == Process::Sawing)
                .then(|| self.saw_rate(material).ok())
                .flatten()
                .map(|rate| (rate.range.low, rate.range.high)),
        }
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::table::Overlay;

    const TOOL: ToolMaterial = ToolMaterial::Hss;
    const PROCESS: Process = Process::EndMilling;

    #[test]
    fn a_copy_of_a_material_is_looked_up_once_and_a_changed_one_each_time() {
        let library = Library::builtin();
        let material = library.material("6061").unwrap();
        let copy = material.clone();
        let first = library.grounds(material, TOOL, PROCESS);
        assert!(Arc::ptr_eq(&first, &library.grounds(&copy, TOOL, PROCESS)));
        let mut harder = material.clone();
        harder.hardness_brinell = Some((140.0, 150.0));
        let other = library.grounds(&harder, TOOL, PROCESS);
        assert!(!Arc::ptr_eq(&first, &other));
    }

    #[test]
    fn tables_laid_over_others_answer_for_themselves() {
        let library = Library::builtin();
        let material = library.material("6061").unwrap();
        let before = library.grounds(material, TOOL, PROCESS);
        let shop = Overlay {
            file_name: "ours.csv".to_owned(),
            text: "id,class,tool_material,process,sfm_start,src\n\
                o1,6061,HSS,end milling,220,shop trial\n"
                .to_owned(),
        };
        let ours = library.with_overlay(&[shop]).unwrap();
        let after = ours.grounds(ours.material("6061").unwrap(), TOOL, PROCESS);
        let start = |grounds: &Grounds| grounds.speed.as_ref().unwrap().start.value;
        assert!((start(&after) * 60.0 / 0.3048 - 220.0).abs() < 1e-9);
        assert!(start(&before) != start(&after));
    }
}
