//! Tool life by Taylor's law, and laws fitted to a shop's own readings.

use crate::failure::Failure;
use crate::generated::status::*;
use crate::guard::guard;
use crate::memory::{name, out, slice, slice_mut, write_text};
use crate::model::{Tables, gullet_library};
use crate::structs::{Sized32, room, take};
use core::ffi::c_char;
use gullet::error::{Warning, unknown_name};
use gullet::fit::{Estimate, FitOptions, Regression, fit_extended_taylor, fit_kienzle, fit_taylor};
use gullet::quantity::{Length, LineForce, Time, Velocity, si};
use gullet::table::{KienzlePair, Overlay, ToolMaterial};
use gullet::wear::{Influence, ToolLife, WearCriterion};

/// How readings are fitted: zero stands for what is usual.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_fit_options {
    /// sizeof(gullet_fit_options); set by gullet_fit_options_init().
    pub struct_size: u32,
    /// Units that problems are told in: GULLET_METRIC or GULLET_INCH.
    pub units: i32,
    /// Confidence of every limit, two-sided, 0.5 to 0.999; 0 for 0.95.
    pub confidence: f64,
    /// Feed that C is for; 0 for the geometric mean of the readings.
    pub reference_feed_m: f64,
    /// Depth of cut that C is for; 0 for the geometric mean of the readings.
    pub reference_depth_m: f64,
}

// SAFETY: `repr(C)`, plain numbers without padding, the size first.
unsafe impl Sized32 for gullet_fit_options {
    const NAME: &'static str = "gullet_fit_options";
    const FIRST: usize = 32;
}

/// Taylor's law v T^n (f/f_0)^a (d/d_0)^b = C with C for a life of one minute. A reference of 0
/// stands for a law without that exponent; a range whose ends are 0 for one that is not known.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_taylor_law {
    /// sizeof(gullet_taylor_law); set by gullet_taylor_law_init().
    pub struct_size: u32,
    /// Units that problems and doubts are told in: GULLET_METRIC or GULLET_INCH.
    pub units: i32,
    /// C: cutting speed for a life of one minute at the reference feed and depth.
    pub taylor_speed_m_per_s: f64,
    /// Lower limit of C; 0 where it comes from no fit.
    pub taylor_speed_low_m_per_s: f64,
    /// Upper limit of C.
    pub taylor_speed_high_m_per_s: f64,
    /// n, above 0 and below 1.
    pub taylor_exponent: f64,
    /// Lower limit of n; 0 where it comes from no fit.
    pub taylor_exponent_low: f64,
    /// Upper limit of n.
    pub taylor_exponent_high: f64,
    /// a, the exponent of the feed.
    pub feed_exponent: f64,
    /// Lower limit of a.
    pub feed_exponent_low: f64,
    /// Upper limit of a.
    pub feed_exponent_high: f64,
    /// f_0, the feed that C is for.
    pub reference_feed_m: f64,
    /// b, the exponent of the depth of cut.
    pub depth_exponent: f64,
    /// Lower limit of b.
    pub depth_exponent_low: f64,
    /// Upper limit of b.
    pub depth_exponent_high: f64,
    /// d_0, the depth of cut that C is for.
    pub reference_depth_m: f64,
    /// Lowest cutting speed of the tests.
    pub lowest_speed_m_per_s: f64,
    /// Highest cutting speed of the tests.
    pub highest_speed_m_per_s: f64,
    /// Lowest feed of the tests.
    pub lowest_feed_m: f64,
    /// Highest feed of the tests.
    pub highest_feed_m: f64,
    /// Lowest depth of cut of the tests.
    pub lowest_depth_m: f64,
    /// Highest depth of cut of the tests.
    pub highest_depth_m: f64,
}

// SAFETY: `repr(C)`, plain numbers without padding, the size first.
unsafe impl Sized32 for gullet_taylor_law {
    const NAME: &'static str = "gullet_taylor_law";
    const FIRST: usize = 168;
}

/// The pair of the power law of specific cutting force, fitted to readings. Main value and exponent
/// belong together: they are neither averaged with nor exchanged for those of other pairs.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_kienzle_law {
    /// sizeof(gullet_kienzle_law); set by gullet_kienzle_law_init().
    pub struct_size: u32,
    /// Zero.
    pub reserved: u32,
    /// k_c1.1, specific cutting force at a chip 1 mm thick.
    pub kc11_pa: f64,
    /// Lower limit of k_c1.1.
    pub kc11_low_pa: f64,
    /// Upper limit of k_c1.1.
    pub kc11_high_pa: f64,
    /// m_c, the exponent of the chip thickness.
    pub chip_exponent: f64,
    /// Lower limit of m_c.
    pub chip_exponent_low: f64,
    /// Upper limit of m_c.
    pub chip_exponent_high: f64,
    /// Correlation of ln k_c1.1 and m_c.
    pub pair_correlation: f64,
    /// Geometric mean of the chip thicknesses.
    pub mean_chip_thickness_m: f64,
    /// Specific cutting force at that chip, by which fits are compared.
    pub specific_force_at_mean_pa: f64,
    /// Thinnest chip of the readings.
    pub lowest_chip_thickness_m: f64,
    /// Thickest chip of the readings.
    pub highest_chip_thickness_m: f64,
}

// SAFETY: `repr(C)`, plain numbers without padding, the size first.
unsafe impl Sized32 for gullet_kienzle_law {
    const NAME: &'static str = "gullet_kienzle_law";
    const FIRST: usize = 96;
}

/// How well a law fits its readings.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct gullet_fit_quality {
    /// sizeof(gullet_fit_quality); set by gullet_fit_quality_init().
    pub struct_size: u32,
    /// Readings less coefficients.
    pub degrees_of_freedom: u32,
    /// Standard deviation s of the natural logarithms about the fit: the mean life is exp(s^2/2)
    /// times the median that the law gives.
    pub residual_deviation: f64,
    /// Correlation r; the multiple one, without a sign, with several variables.
    pub correlation: f64,
    /// Share of the squares that the fit explains.
    pub r_squared: f64,
    /// Confidence of the limits, two-sided.
    pub confidence: f64,
    /// Student's t of that confidence.
    pub student_t: f64,
}

// SAFETY: `repr(C)`, plain numbers without padding, the size first.
unsafe impl Sized32 for gullet_fit_quality {
    const NAME: &'static str = "gullet_fit_quality";
    const FIRST: usize = 48;
}

fn positive(value: f64) -> Option<f64> {
    (value != 0.0).then_some(value)
}

fn range<T>(low: f64, high: f64, make: fn(f64) -> T) -> Option<(T, T)> {
    (low != 0.0 || high != 0.0).then(|| (make(low), make(high)))
}

impl gullet_taylor_law {
    fn core(&self) -> Result<ToolLife, Failure> {
        let (speed, exponent) = (self.taylor_speed_m_per_s, self.taylor_exponent);
        let mut law = ToolLife::new(si(speed), si(exponent))?;
        let influence = |exponent: f64, reference: f64, low: f64, high: f64| Influence {
            exponent: positive(reference).map(|_| si(exponent)),
            reference: positive(reference).map(si),
            tested: range(low, high, si),
        };
        law.feed = influence(
            self.feed_exponent,
            self.reference_feed_m,
            self.lowest_feed_m,
            self.highest_feed_m,
        );
        law.depth = influence(
            self.depth_exponent,
            self.reference_depth_m,
            self.lowest_depth_m,
            self.highest_depth_m,
        );
        law.tested_speeds = range(self.lowest_speed_m_per_s, self.highest_speed_m_per_s, si);
        law.units = crate::quantity::system(self.units)?;
        Ok(law)
    }
}

/// The status of the first doubt, if there is one.
fn doubtful(warnings: &[Warning]) -> gullet_status {
    let codes = warnings.iter().map(|warning| warning.code as gullet_status);
    codes.min().unwrap_or(GULLET_OK)
}

/// The options of a pointer that may be NULL.
///
/// # Safety
/// As the header asks of the functions it serves.
unsafe fn options(given: *const gullet_fit_options) -> Result<FitOptions, Failure> {
    let mut options = FitOptions::default();
    if given.is_null() {
        return Ok(options);
    }
    // SAFETY: the caller's promise.
    let given = unsafe { take(given, "options")? };
    if let Some(confidence) = positive(given.confidence) {
        options.confidence = si(confidence);
    }
    options.reference_feed = positive(given.reference_feed_m).map(si);
    options.reference_depth = positive(given.reference_depth_m).map(si);
    options.units = crate::quantity::system(given.units)?;
    Ok(options)
}

fn quality(regression: &Regression) -> gullet_fit_quality {
    gullet_fit_quality {
        struct_size: size_of::<gullet_fit_quality>() as u32,
        degrees_of_freedom: regression.degrees_of_freedom as u32,
        residual_deviation: regression.deviation,
        correlation: regression.correlation,
        r_squared: regression.r_squared,
        confidence: regression.confidence,
        student_t: regression.t,
    }
}

/// Writes what is told of a fit besides its law.
///
/// # Safety
/// As the header asks of the functions it serves.
unsafe fn tell(
    regression: &Regression,
    quality_out: *mut gullet_fit_quality,
    residuals_out: *mut f64,
) -> Result<(), Failure> {
    if !quality_out.is_null() {
        // SAFETY: the caller's promise.
        unsafe { room(quality_out, "quality_out")? }.write(quality(regression));
    }
    if !residuals_out.is_null() {
        let residuals = &regression.residuals;
        // SAFETY: the caller promises room for as many as there are readings.
        unsafe { slice_mut(residuals_out, residuals.len(), "residuals_out")? }
            .copy_from_slice(residuals);
    }
    Ok(())
}

/// Fits Taylor's law to `count` readings by least squares of logarithms: a cutting speed and the
/// life of an edge each, with feeds and depths of cut or NULL for either. The law gives median lives.
/// `options` NULL stands for what is usual; `quality_out` and `residuals_out` (room for `count`
/// numbers: logarithm of each life less the fitted one) may be NULL. Readings that cannot carry a law
/// are refused with the reason; a positive status says that there are doubts.
#[unsafe(no_mangle)]
#[allow(clippy::too_many_arguments)]
pub unsafe extern "C" fn gullet_fit_taylor(
    cutting_speeds_m_per_s: *const f64,
    feeds_m: *const f64,
    depths_m: *const f64,
    tool_lives_s: *const f64,
    count: usize,
    fit_options: *const gullet_fit_options,
    law_out: *mut gullet_taylor_law,
    quality_out: *mut gullet_fit_quality,
    residuals_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (speeds, lives, options, target) = unsafe {
            (
                slice(cutting_speeds_m_per_s, count, "cutting_speeds_m_per_s")?,
                slice(tool_lives_s, count, "tool_lives_s")?,
                options(fit_options)?,
                room(law_out, "law_out")?,
            )
        };
        let lengths = |pointer: *const f64, name: &str| -> Result<Option<Vec<Length>>, Failure> {
            if pointer.is_null() {
                return Ok(None);
            }
            // SAFETY: the caller's promise in the header.
            let values = unsafe { slice(pointer, count, name)? };
            Ok(Some(values.iter().copied().map(si).collect()))
        };
        let (feeds, depths) = (lengths(feeds_m, "feeds_m")?, lengths(depths_m, "depths_m")?);
        let speeds: Vec<Velocity> = speeds.iter().copied().map(si).collect();
        let lives: Vec<Time> = lives.iter().copied().map(si).collect();
        let fit = match (&feeds, &depths) {
            (None, None) => fit_taylor(&speeds, &lives, &options)?,
            (Some(feeds), depths) => {
                fit_extended_taylor(&speeds, feeds, depths.as_deref(), &lives, &options)?
            }
            (None, Some(_)) => {
                return Err(gullet::Problem::new(
                    gullet::Code::Missing,
                    "feeds_m",
                    "NULL",
                    "feeds where there are depths",
                    "give the feeds, or NULL for the depths too",
                )
                .into());
            }
        };
        // SAFETY: the caller's promise in the header.
        unsafe { tell(&fit.regression, quality_out, residuals_out)? };
        let none = Estimate::default();
        let (a, b) = (
            fit.feed_exponent.unwrap_or(none),
            fit.depth_exponent.unwrap_or(none),
        );
        let length = |value: Option<Length>| value.map_or(0.0, |value| value.value);
        let ends = |range: Option<(Length, Length)>| {
            range.map_or((0.0, 0.0), |(low, high)| (low.value, high.value))
        };
        let speeds = fit
            .law
            .tested_speeds
            .map_or((0.0, 0.0), |(low, high)| (low.value, high.value));
        let (feeds, depths) = (ends(fit.law.feed.tested), ends(fit.law.depth.tested));
        target.write(gullet_taylor_law {
            struct_size: size_of::<gullet_taylor_law>() as u32,
            units: options.units as i32,
            taylor_speed_m_per_s: fit.taylor_speed.value,
            taylor_speed_low_m_per_s: fit.taylor_speed.low,
            taylor_speed_high_m_per_s: fit.taylor_speed.high,
            taylor_exponent: fit.exponent.value,
            taylor_exponent_low: fit.exponent.low,
            taylor_exponent_high: fit.exponent.high,
            feed_exponent: a.value,
            feed_exponent_low: a.low,
            feed_exponent_high: a.high,
            reference_feed_m: length(fit.law.feed.reference),
            depth_exponent: b.value,
            depth_exponent_low: b.low,
            depth_exponent_high: b.high,
            reference_depth_m: length(fit.law.depth.reference),
            lowest_speed_m_per_s: speeds.0,
            highest_speed_m_per_s: speeds.1,
            lowest_feed_m: feeds.0,
            highest_feed_m: feeds.1,
            lowest_depth_m: depths.0,
            highest_depth_m: depths.1,
        });
        Ok(doubtful(&fit.warnings))
    })
}

/// Fits the pair k_c1.1 and m_c to `count` readings: a chip thickness and the cutting force per width
/// of chip each. As gullet_fit_taylor.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_fit_kienzle(
    chip_thicknesses_m: *const f64,
    forces_per_width_n_per_m: *const f64,
    count: usize,
    fit_options: *const gullet_fit_options,
    law_out: *mut gullet_kienzle_law,
    quality_out: *mut gullet_fit_quality,
    residuals_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (chips, forces, options, target) = unsafe {
            (
                slice(chip_thicknesses_m, count, "chip_thicknesses_m")?,
                slice(forces_per_width_n_per_m, count, "forces_per_width_n_per_m")?,
                options(fit_options)?,
                room(law_out, "law_out")?,
            )
        };
        let chips: Vec<Length> = chips.iter().copied().map(si).collect();
        let forces: Vec<LineForce> = forces.iter().copied().map(si).collect();
        let fit = fit_kienzle(&chips, &forces, &options)?;
        // SAFETY: the caller's promise in the header.
        unsafe { tell(&fit.regression, quality_out, residuals_out)? };
        target.write(gullet_kienzle_law {
            struct_size: size_of::<gullet_kienzle_law>() as u32,
            reserved: 0,
            kc11_pa: fit.kc11.value,
            kc11_low_pa: fit.kc11.low,
            kc11_high_pa: fit.kc11.high,
            chip_exponent: fit.chip_exponent.value,
            chip_exponent_low: fit.chip_exponent.low,
            chip_exponent_high: fit.chip_exponent.high,
            pair_correlation: fit.pair_correlation,
            mean_chip_thickness_m: fit.mean_chip_thickness.value,
            specific_force_at_mean_pa: fit.specific_force_at_mean.value,
            lowest_chip_thickness_m: fit.chip_thickness.0.value,
            highest_chip_thickness_m: fit.chip_thickness.1.value,
        });
        Ok(doubtful(&fit.warnings))
    })
}

/// The life of an edge at a cutting speed, feed and depth of cut; 0 for a feed or depth that the law
/// has no exponent of and that is not compared with the tests. GULLET_WARNING_OUTSIDE_VALIDITY tells
/// that one of the three was not tested.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_life(
    law: *const gullet_taylor_law,
    cutting_speed_m_per_s: f64,
    feed_m: f64,
    depth_m: f64,
    tool_life_s_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (law, target) =
            unsafe { (take(law, "law")?, out(tool_life_s_out, "tool_life_s_out")?) };
        let (feed, depth) = (positive(feed_m).map(si), positive(depth_m).map(si));
        let edge = law.core()?.life(si(cutting_speed_m_per_s), feed, depth)?;
        target.write(edge.time.value);
        Ok(doubtful(&edge.warnings))
    })
}

/// The cutting speed that gives a life, as gullet_taylor_life.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_taylor_speed(
    law: *const gullet_taylor_law,
    tool_life_s: f64,
    feed_m: f64,
    depth_m: f64,
    cutting_speed_m_per_s_out: *mut f64,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (law, target) = unsafe {
            (
                take(law, "law")?,
                out(cutting_speed_m_per_s_out, "cutting_speed_m_per_s_out")?,
            )
        };
        let (feed, depth) = (positive(feed_m).map(si), positive(depth_m).map(si));
        let found = law.core()?.speed(si(tool_life_s), feed, depth)?;
        target.write(found.speed.value);
        Ok(doubtful(&found.warnings))
    })
}

/// Writes a material of the tables with the pair of a law in the first place as a shop's own table,
/// text for gullet_overlay. `source` says where the readings come from. Text and size as everywhere.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn gullet_kienzle_overlay(
    law: *const gullet_kienzle_law,
    library: *const gullet_library,
    material_name: *const c_char,
    source: *const c_char,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (law, tables, material, source) = unsafe {
            (
                take(law, "law")?,
                Tables::of(library)?,
                name(material_name, "material_name")?,
                name(source, "source")?,
            )
        };
        let material = tables.get().material(material)?.with_pair(KienzlePair {
            kc11: si(law.kc11_pa),
            exponent: si(law.chip_exponent),
            source: source.to_owned(),
        });
        let table = Overlay::of_materials("own_materials.csv", &[&material])?;
        // What would be refused later is refused now.
        tables.get().with_overlay(core::slice::from_ref(&table))?;
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(&table.text, buffer, capacity, needed_out) }
    })
}

/// Writes a law as a row of a shop's own table of tool life, text for gullet_overlay, for a material
/// of the tables and a tool material. `criterion` says when an edge counted as worn, such as
/// "VB 0.3 mm"; empty where not stated. Text and size as everywhere.
#[unsafe(no_mangle)]
#[allow(clippy::too_many_arguments)]
pub unsafe extern "C" fn gullet_taylor_overlay(
    law: *const gullet_taylor_law,
    library: *const gullet_library,
    row_id: *const c_char,
    material_name: *const c_char,
    tool_material: *const c_char,
    criterion: *const c_char,
    source: *const c_char,
    buffer: *mut c_char,
    capacity: usize,
    needed_out: *mut usize,
) -> gullet_status {
    guard(|| {
        // SAFETY: the caller's promise in the header.
        let (given, tables, id, material, tool, criterion, source) = unsafe {
            (
                take(law, "law")?,
                Tables::of(library)?,
                name(row_id, "row_id")?,
                name(material_name, "material_name")?,
                name(tool_material, "tool_material")?,
                name(criterion, "criterion")?,
                name(source, "source")?,
            )
        };
        let material = tables.get().material(material)?;
        let known = ToolMaterial::ALL.iter().map(|tool| tool.name());
        let tool =
            ToolMaterial::parse(tool).ok_or_else(|| unknown_name("tool_material", tool, known))?;
        let mut law = given.core()?;
        law.criterion = WearCriterion::read(criterion);
        source.clone_into(&mut law.source);
        let mut row = law.to_row(
            id,
            &material.name,
            core::slice::from_ref(&material.id),
            &[tool],
        );
        if given.taylor_exponent_low > 0.0 && given.taylor_exponent_high < 0.999 {
            row.exponent = [
                given.taylor_exponent_low,
                given.taylor_exponent,
                given.taylor_exponent_high,
            ];
        }
        let table = Overlay::of_tool_lives("own_tool_life.csv", &[&row])?;
        tables.get().with_overlay(core::slice::from_ref(&table))?;
        // SAFETY: the caller's promise in the header.
        unsafe { write_text(&table.text, buffer, capacity, needed_out) }
    })
}
