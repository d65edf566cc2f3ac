//! What goes wrong with columns of other libraries.

use super::*;
use arrow_array::types::{Int8Type, Int32Type};
use arrow_array::{
    BinaryArray, DictionaryArray, Float32Array, Int8Array, Int16Array, Int32Array,
    LargeStringArray, StringViewArray, UInt8Array, UInt64Array,
};
use arrow_buffer::{Buffer, NullBuffer, OffsetBuffer};
use gullet::error::Code;

fn depths(array: ArrayRef) -> Answer {
    run(&batch(vec![("radial_depth_mm", array)]))
}

fn materials(array: ArrayRef) -> Answer {
    run(&batch(vec![("material", array)]))
}

#[test]
fn what_stands_behind_a_null_is_never_read() {
    let valid = NullBuffer::from(vec![true, false, true]);
    let junk = Float64Array::new(vec![1.0, 1e300, 0.5].into(), Some(valid.clone()));
    let answer = depths(Arc::new(junk));
    assert_eq!(status(&answer), ["ok", "missing", "ok"]);
    assert_eq!(cells(&answer.batch, "time_s")[1], None);
    // In an optional input a null means none: the tables decide.
    let junk = Float64Array::new(vec![1200.0, 5.0, 1200.0].into(), Some(valid));
    let answer = run(&batch(vec![("spindle_speed_rpm", Arc::new(junk))]));
    let free = depths(numbers(&[Some(1.0)]));
    assert_eq!(status(&answer), ["ok", "ok", "ok"]);
    assert_eq!(
        cells(&answer.batch, "result_spindle_speed_rpm")[1],
        cells(&free.batch, "spindle_speed_rpm")[0]
    );
}

#[test]
fn a_dictionary_may_hold_nulls_among_its_keys_and_its_values() {
    let values: ArrayRef = texts(&[Some("6061"), None, Some("1018cd")]);
    let keys = Int32Array::from(vec![Some(0), Some(1), None, Some(2)]);
    let array = DictionaryArray::<Int32Type>::try_new(keys, values).unwrap();
    let answer = materials(Arc::new(array));
    assert_eq!(status(&answer), ["ok", "missing", "missing", "ok"]);
}

#[test]
fn dictionaries_of_any_key_and_text_are_read() {
    let small: DictionaryArray<Int8Type> = vec!["6061", "1018cd", "6061"].into_iter().collect();
    let plain = materials(texts(&[Some("6061"), Some("1018cd"), Some("6061")]));
    for array in [
        Arc::new(small) as ArrayRef,
        Arc::new(LargeStringArray::from(vec!["6061", "1018cd", "6061"])),
        Arc::new(StringViewArray::from(vec!["6061", "1018cd", "6061"])),
        Arc::new(
            DictionaryArray::<Int32Type>::try_new(
                Int32Array::from(vec![1, 0, 1]),
                Arc::new(StringViewArray::from(vec!["1018cd", "6061"])),
            )
            .unwrap(),
        ),
    ] {
        let answer = materials(array);
        assert_eq!(
            cells(&answer.batch, "time_s"),
            cells(&plain.batch, "time_s")
        );
        assert_eq!(answer.summary, plain.summary);
    }
    // An empty dictionary under keys that are all null.
    let keys = Int32Array::from(vec![None, None]);
    let none = DictionaryArray::<Int32Type>::try_new(keys, texts(&[])).unwrap();
    assert_eq!(status(&materials(Arc::new(none))), ["missing", "missing"]);
}

#[test]
fn bytes_that_are_no_text_never_become_text() {
    let offsets = OffsetBuffer::new(vec![0_i32, 1].into());
    assert!(StringArray::try_new(offsets, Buffer::from(vec![0xff_u8]), None).is_err());
    let rows = batch(vec![(
        "material",
        Arc::new(BinaryArray::from(vec![&[0xff_u8][..]])),
    )]);
    let Err(error) = plan(&rows, &[], &StudyOptions::default()) else {
        panic!("taken");
    };
    assert_eq!(error.code(), Code::WrongType);
}

#[test]
fn slices_empty_batches_and_columns_without_validity_are_read() {
    let whole = batch(vec![
        (
            "radial_depth_mm",
            numbers(&[Some(9.0), Some(1.0), None, Some(0.5), Some(9.0)]),
        ),
        (
            "material",
            texts(&[None, Some("6061"), Some("6061"), Some("x"), None]),
        ),
    ]);
    let slice = run(&whole.slice(1, 3));
    assert_eq!(status(&slice), ["ok", "missing", "unknown_name"]);
    let empty = run(&whole.slice(2, 0));
    assert_eq!((empty.batch.num_rows(), empty.summary.rows()), (0, 0));
    let plain = Float64Array::from(vec![1.0, 0.5]);
    assert!(plain.nulls().is_none());
    assert_eq!(status(&depths(Arc::new(plain))), ["ok", "ok"]);
}

#[test]
fn a_float32_is_widened_as_it_is() {
    let narrow = depths(Arc::new(Float32Array::from(vec![0.1_f32, 0.5])));
    let wide = depths(numbers(&[Some(f64::from(0.1_f32)), Some(0.5)]));
    assert_eq!(
        cells(&narrow.batch, "peak_force_n"),
        cells(&wide.batch, "peak_force_n")
    );
    let rounded = depths(numbers(&[Some(0.1), Some(0.5)]));
    assert_ne!(
        cells(&narrow.batch, "peak_force_n")[0],
        cells(&rounded.batch, "peak_force_n")[0]
    );
}

#[test]
fn integers_of_every_width_are_read() {
    let wide = depths(numbers(&[Some(1.0), None]));
    for array in [
        Arc::new(Int8Array::from(vec![Some(1), None])) as ArrayRef,
        Arc::new(Int16Array::from(vec![Some(1), None])),
        Arc::new(Int32Array::from(vec![Some(1), None])),
        Arc::new(UInt8Array::from(vec![Some(1), None])),
        Arc::new(UInt64Array::from(vec![Some(1), None])),
    ] {
        let answer = depths(array);
        assert_eq!(cells(&answer.batch, "time_s"), cells(&wide.batch, "time_s"));
        assert_eq!(status(&answer), ["ok", "missing"]);
    }
}

#[test]
fn nan_is_a_value_and_null_is_none() {
    let bad = [
        Some(f64::NAN),
        None,
        Some(f64::INFINITY),
        Some(f64::NEG_INFINITY),
        Some(1.0),
    ];
    let answer = depths(numbers(&bad));
    let wanted = ["not_finite", "missing", "not_finite", "not_finite", "ok"];
    assert_eq!(status(&answer), wanted);
    // The same in an input that a row may do without.
    let answer = run(&batch(vec![("mean_roughness_um", numbers(&bad))]));
    let wanted = ["not_finite", "ok", "not_finite", "not_finite"];
    assert_eq!(status(&answer)[..4], wanted);
}

#[test]
fn one_version_of_the_arrays_is_built() {
    let lock = include_str!("../../Cargo.lock");
    for name in ["arrow-array", "arrow-schema", "arrow-buffer"] {
        assert_eq!(
            lock.matches(&format!("name = \"{name}\"\n")).count(),
            1,
            "{name}"
        );
    }
}
