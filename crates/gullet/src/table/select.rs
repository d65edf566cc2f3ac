//! Which rows answer a question about a material, and which of them is the best.

use super::library::Library;
use super::rows::Common;
use super::types::{Iso513, Material, Process, Provenance, ToolMaterial};
use std::collections::BTreeMap;

/// Hardness beyond a row's band that a row of the nearest band may still be used for.
const REACH_HB: f64 = 60.0;

/// A way of asking: tool, processes with their rank, and what is assumed by asking so.
pub(crate) struct Attempt {
    pub tool: Option<ToolMaterial>,
    pub processes: Vec<Process>,
    pub assumptions: Vec<String>,
    /// Take each row's low end as start and its start as high end.
    pub cautious: bool,
}

/// What is asked, which decides the class that may stand in.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum Question {
    Speed,
    Feed,
    Power,
}

/// A row that applies.
pub(crate) struct Hit<'r, R> {
    pub row: &'r R,
    /// 0 the material's own class, 1 a wider class of its family or a neighbouring hardness band,
    /// 2 a wider class still.
    pub tier: u8,
    /// Place of its process among those asked for.
    pub process_rank: usize,
    pub why: String,
}

/// A row of a class near the material's.
struct Near<'r, R> {
    row: &'r R,
    tier: u8,
    class: &'r str,
}

/// The rows that apply equally well, best first, and what was assumed.
pub(crate) struct Selection<'r, R> {
    pub hits: Vec<Hit<'r, R>>,
    pub assumptions: Vec<String>,
    /// Factor on cutting speed of a class that stands in, and the reason for it.
    pub factor: f64,
    pub stand_in: Option<String>,
    pub cautious: bool,
}

/// What selection needs to know of a row.
pub(crate) trait TableRow {
    fn common(&self) -> &Common;
    fn tools(&self) -> &[ToolMaterial];
    fn process(&self) -> Process;
}

/// The classes of a material, by how near they are.
struct Scopes {
    family: BTreeMap<String, u8>,
    stand_in: Option<(BTreeMap<String, u8>, f64, String)>,
    general: BTreeMap<String, u8>,
}

impl Library {
    fn scopes(&self, material: &Material, question: Question) -> Scopes {
        let mut scopes = Scopes {
            family: BTreeMap::new(),
            stand_in: None,
            general: BTreeMap::new(),
        };
        scopes.family.insert(material.id.clone(), 0);
        // Rows for any material are rows for material that the usual tools can cut.
        if material.iso513 != Iso513::H {
            scopes.general.insert("any".to_owned(), 2);
        }
        scopes.general.insert(material.iso513.name().to_owned(), 2);
        for own in &material.classes {
            let mut inside = true;
            let mut name = Some(own);
            let mut steps = 0;
            while let Some(id) = name.filter(|_| steps < 16) {
                let Some(class) = self.classes.get(id) else {
                    break;
                };
                if inside {
                    let tier = u8::from(steps > 0);
                    let old = scopes.family.entry(id.clone()).or_insert(tier);
                    *old = tier.min(*old);
                    let other = match question {
                        Question::Speed => class.stand_in.as_ref(),
                        Question::Feed => class.feed_stand_in.as_ref().or(class.stand_in.as_ref()),
                        Question::Power => None,
                    };
                    if scopes.stand_in.is_none()
                        && let Some(other) = other
                    {
                        scopes.stand_in = Some((
                            self.family_of(other),
                            class.speed_factor,
                            class.reason.clone(),
                        ));
                    }
                    inside = !class.family;
                } else {
                    scopes.general.insert(id.clone(), 2);
                }
                name = class.parent.as_ref();
                steps += 1;
            }
        }
        scopes
    }

    /// How near rows of these classes are to a material: 0 its own class, 1 its family, 2 wider
    /// classes; none where they are for other materials.
    pub(crate) fn nearness(&self, material: &Material, classes: &[String]) -> Option<u8> {
        let scopes = self.scopes(material, Question::Power);
        let tier = |class: &String| {
            let near = scopes.family.get(class).or(scopes.general.get(class));
            near.copied()
        };
        classes.iter().filter_map(tier).min()
    }

    /// A class and its ancestors up to the root of its family.
    fn family_of(&self, class: &str) -> BTreeMap<String, u8> {
        let mut found = BTreeMap::new();
        let mut name = Some(class.to_owned());
        while let Some(id) = name.filter(|_| found.len() < 16) {
            let Some(class) = self.classes.get(&id) else {
                break;
            };
            found.insert(id, 1);
            name = if class.family {
                None
            } else {
                class.parent.clone()
            };
        }
        found
    }

    /// Rows for a material: first those of its family, then those of the class that stands in,
    /// then those of wider classes; within each, the attempts in order. A shop's rows come first
    /// and stand alone.
    pub(crate) fn select<'r, R: TableRow>(
        &self,
        material: &Material,
        rows: impl IntoIterator<Item = &'r R>,
        attempts: &[Attempt],
        question: Question,
    ) -> Option<Selection<'r, R>> {
        let scopes = self.scopes(material, question);
        let (own, built_in): (Vec<&R>, Vec<&R>) = rows
            .into_iter()
            .partition(|row| row.common().provenance == Provenance::Shop);
        for (pool, shop) in [(own, true), (built_in, false)] {
            let stand_in = scopes.stand_in.as_ref().filter(|_| !shop);
            let steps = [
                Some((&scopes.family, 1.0, "")),
                stand_in.map(|(classes, factor, reason)| (classes, *factor, reason.as_str())),
                Some((&scopes.general, 1.0, "")),
            ];
            for (classes, factor, reason) in steps.into_iter().flatten() {
                let near: Vec<Near<R>> = pool
                    .iter()
                    .filter_map(|&row| {
                        let tiers = row.common().classes.iter();
                        let (tier, class) = tiers
                            .filter_map(|class| {
                                classes.get(class).map(|tier| (*tier, class.as_str()))
                            })
                            .min()?;
                        Some(Near { row, tier, class })
                    })
                    .collect();
                if near.is_empty() {
                    continue;
                }
                for attempt in attempts {
                    let found = self.attempt(material, &near, attempt, (factor, reason));
                    if found.is_some() {
                        return found;
                    }
                }
            }
        }
        None
    }

    fn attempt<'r, R: TableRow>(
        &self,
        material: &Material,
        near: &[Near<'r, R>],
        attempt: &Attempt,
        (factor, reason): (f64, &str),
    ) -> Option<Selection<'r, R>> {
        let mut hits: Vec<Hit<'r, R>> = Vec::new();
        for Near { row, tier, class } in near {
            let process_rank = attempt
                .processes
                .iter()
                .position(|process| *process == row.process());
            let tool_fits = attempt.tool.is_none_or(|tool| row.tools().contains(&tool));
            if let (Some(process_rank), true) = (process_rank, tool_fits) {
                let name = self
                    .classes
                    .get(*class)
                    .map_or(*class, |class| class.name.as_str());
                hits.push(Hit {
                    row,
                    tier: *tier,
                    process_rank,
                    why: format!("class {name}"),
                });
            }
        }
        if hits.is_empty() {
            return None;
        }
        let mut assumptions = attempt.assumptions.clone();
        // A factor is against the class as such, so a row for harder work must not enter too.
        if factor < 1.0 && hits.iter().any(|hit| hit.row.common().hb.is_none()) {
            hits.retain(|hit| hit.row.common().hb.is_none());
        }
        let mut hits = nearest_bands(material, hits, &mut assumptions);
        if hits.iter().any(|hit| hit.tier == 2) {
            let wide: Vec<&str> = hits
                .iter()
                .map(|hit| hit.row.common().material.as_str())
                .collect();
            assumptions.push(format!(
                "no row for the grade or its family: taken from {}",
                distinct(&wide)
            ));
        }
        hits.sort_by_key(|hit| self.key(hit));
        (!hits.is_empty()).then_some(Selection {
            hits,
            assumptions,
            factor,
            stand_in: (!reason.is_empty()).then(|| reason.to_owned()),
            cautious: attempt.cautious,
        })
    }

    /// Order of preference: class, provenance, publisher, process, a stated hardness; then the
    /// order of the table.
    fn key<R: TableRow>(&self, hit: &Hit<R>) -> (u8, Provenance, u8, usize, bool) {
        let common = hit.row.common();
        (
            hit.tier,
            common.provenance,
            self.publisher_rank(&common.source),
            hit.process_rank,
            common.hb.is_none(),
        )
    }
}

fn distinct(names: &[&str]) -> String {
    let mut seen: Vec<&str> = Vec::new();
    for name in names {
        if !seen.contains(name) {
            seen.push(name);
        }
    }
    seen.join(", ")
}

/// Keeps, of the rows of one source that differ by hardness band, those of the nearest
/// band, and drops a row whose band is out of reach.
fn nearest_bands<'r, R: TableRow>(
    material: &Material,
    hits: Vec<Hit<'r, R>>,
    assumptions: &mut Vec<String>,
) -> Vec<Hit<'r, R>> {
    let Some((low, high)) = material.hardness_brinell else {
        if material.beyond_brinell {
            return hits
                .into_iter()
                .filter(|hit| hit.row.common().hb.is_none())
                .collect();
        }
        if hits.iter().any(|hit| hit.row.common().hb.is_some()) {
            assumptions.push(
                "hardness of the material unknown: rows of every hardness band taken".to_owned(),
            );
        }
        return hits;
    };
    let middle = (low + high) / 2.0;
    let distance = |band: (f64, f64)| (band.0 - middle).max(middle - band.1).max(0.0);
    let group = |common: &Common, hit: &Hit<'r, R>| {
        (
            common.source.clone(),
            hit.row.process(),
            hit.row.tools().to_vec(),
        )
    };
    let mut nearest: BTreeMap<_, (f64, f64, f64)> = BTreeMap::new();
    for hit in &hits {
        let common = hit.row.common();
        if let Some(band) = common.hb {
            let candidate = (distance(band), band.0, band.1);
            let best = nearest.entry(group(common, hit)).or_insert(candidate);
            // At the same distance the harder band is the cautious one.
            if candidate.0 < best.0 || (candidate.0 <= best.0 && band.0 > best.1) {
                *best = candidate;
            }
        }
    }
    let mut kept = Vec::new();
    for mut hit in hits {
        let common = hit.row.common();
        if let Some(band) = common.hb {
            let Some(best) = nearest.get(&group(common, &hit)) else {
                continue;
            };
            if (best.1, best.2) != band || best.0 > REACH_HB {
                continue;
            }
            let text = format!("{} to {} HB", band.0, band.1);
            if best.0 > 0.0 {
                hit.tier = hit.tier.max(1);
                let note = format!("nearest hardness band {text} taken for {middle} HB");
                if !assumptions.contains(&note) {
                    assumptions.push(note);
                }
            }
            hit.why = format!("{}, {text}", hit.why);
        }
        kept.push(hit);
    }
    kept
}

/// Ways of asking for a tool and a process, the exact one first.
pub(crate) fn attempts(tool: ToolMaterial, process: Process) -> Vec<Attempt> {
    let exact = match process {
        Process::EndMilling
        | Process::FaceMilling
        | Process::SideMilling
        | Process::SlabMilling => vec![process, Process::Milling],
        Process::Milling => vec![Process::Milling, Process::EndMilling],
        Process::Turning => vec![
            Process::Turning,
            Process::RoughTurning,
            Process::FinishTurning,
        ],
        Process::RoughTurning | Process::FinishTurning => vec![process, Process::Turning],
        Process::Drilling | Process::Reaming | Process::Tapping | Process::Sawing => {
            vec![process]
        }
    };
    let mut ways = vec![(exact, None)];
    if process.is_milling() && !matches!(process, Process::EndMilling | Process::Milling) {
        ways.push((
            vec![Process::EndMilling],
            Some(format!("{process} taken from end milling")),
        ));
    }
    let substitutes: Vec<(ToolMaterial, &str, bool)> = match tool {
        ToolMaterial::HssCo => vec![(
            ToolMaterial::Hss,
            "HSS-Co taken from HSS, which runs no faster",
            false,
        )],
        ToolMaterial::CoatedCarbide => {
            vec![(
                ToolMaterial::UncoatedCarbide,
                "coated carbide taken from uncoated, which runs no faster",
                false,
            )]
        }
        ToolMaterial::UncoatedCarbide => vec![(
            ToolMaterial::CoatedCarbide,
            "uncoated carbide taken from the lower half of coated carbide: its low end is the start (common practice, no source)",
            true,
        )],
        _ => Vec::new(),
    };
    let mut found = Vec::new();
    for (processes, note) in ways {
        let assumptions: Vec<String> = note.into_iter().collect();
        found.push(Attempt {
            tool: Some(tool),
            processes: processes.clone(),
            assumptions: assumptions.clone(),
            cautious: false,
        });
        for (other, reason, cautious) in &substitutes {
            let mut assumptions = assumptions.clone();
            assumptions.push((*reason).to_owned());
            found.push(Attempt {
                tool: Some(*other),
                processes: processes.clone(),
                assumptions,
                cautious: *cautious,
            });
        }
    }
    found
}
