//! Worked examples, one file a published source or family of identities.

macro_rules! embedded {
    ($($name:literal),* $(,)?) => {
        &[$(($name, include_str!(concat!("cases/", $name)))),*]
    };
}

/// Every file of worked examples: its name and its text.
///
/// The columns are `id,formula,arguments,expected,rtol,source,provenance,note,status`; `expected`
/// stands as the source prints it, `rtol` is what the printed digits allow, and `status` is empty
/// or `missed: ` with the reason.
pub const CASES: &[(&str, &str)] = embedded![
    "dieter.csv",
    "el_hofy.csv",
    "gate.csv",
    "ghosh_mallik.csv",
    "groover.csv",
    "heizer_render.csv",
    "hibbeler.csv",
    "horngren.csv",
    "identities_catalogue.csv",
    "identities_economics.csv",
    "identities_milling.csv",
    "identities_operations.csv",
    "identities_turning.csv",
    "isakov.csv",
    "kalpakjian_schmid.csv",
    "machinery_handbook.csv",
    "makers_manuals.csv",
    "metal_cutting_companion.csv",
    "ostwald_mclaren.csv",
    "public_solutions.csv",
    "rao.csv",
    "sharma.csv",
    "stevenson.csv",
    "teaching_pages.csv",
    "thread_standards.csv",
    "threading.csv",
    "wright.csv",
];
