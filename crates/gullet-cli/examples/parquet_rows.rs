//! Rows for timing a study: `write ROWS FILE` writes cuts, `copy IN OUT` only reads and writes.
#![allow(clippy::unwrap_used, clippy::panic)]

use arrow_array::types::Int32Type;
use arrow_array::{ArrayRef, DictionaryArray, Float64Array, Int64Array, RecordBatch};
use arrow_schema::{DataType, Schema};
use parquet::arrow::ArrowWriter;
use parquet::arrow::arrow_reader::ParquetRecordBatchReaderBuilder;
use parquet::basic::Compression;
use parquet::file::properties::{EnabledStatistics, WriterProperties};
use parquet::schema::types::ColumnPath;
use std::fs::File;
use std::sync::Arc;

const BATCH: u64 = 64 * 1024;

/// As a study writes: numbers of a cut without a dictionary.
fn properties(schema: &Schema) -> WriterProperties {
    let mut properties = WriterProperties::builder()
        .set_compression(Compression::SNAPPY)
        .set_max_row_group_row_count(Some(256 * 1024))
        .set_statistics_enabled(EnabledStatistics::Chunk);
    for field in schema.fields() {
        if *field.data_type() == DataType::Float64 {
            let path = ColumnPath::from(field.name().as_str());
            properties = properties.set_column_dictionary_enabled(path, false);
        }
    }
    properties.build()
}

/// Sizes as people write them, to a hundredth of a millimetre; materials, machines and operations
/// mixed.
fn batch(first: u64, count: u64) -> RecordBatch {
    let share = |row: u64, salt: u64| {
        let mut x = (row ^ (salt << 32)).wrapping_mul(0x9e37_79b9_7f4a_7c15);
        x ^= x >> 29;
        x = x.wrapping_mul(0xbf58_476d_1ce4_e5b9);
        (x >> 11) as f64 / (1_u64 << 53) as f64
    };
    let rows = first..first + count;
    let hundredths = |low: f64, high: f64, salt: u64| -> ArrayRef {
        let size = |row| ((low + (high - low) * share(row, salt)) * 100.0).round() / 100.0;
        Arc::new(Float64Array::from_iter_values(rows.clone().map(size)))
    };
    let names = |list: &'static [&'static str], salt: u64| -> ArrayRef {
        let name = |row| list[(share(row, salt) * list.len() as f64) as usize];
        Arc::new(
            rows.clone()
                .map(|row| Some(name(row)))
                .collect::<DictionaryArray<Int32Type>>(),
        )
    };
    RecordBatch::try_from_iter([
        (
            "part",
            Arc::new(Int64Array::from_iter_values(
                rows.clone().map(|row| row as i64),
            )) as ArrayRef,
        ),
        ("material", names(&["6061", "1018cd", "o1", "6082"], 1)),
        ("machine", names(&["manual-knee-mill", "small-cnc-mill"], 2)),
        ("axial_depth_mm", hundredths(1.0, 12.0, 3)),
        ("radial_depth_mm", hundredths(0.1, 1.2, 4)),
        ("length_mm", hundredths(10.0, 200.0, 5)),
        ("cutter_diameter_mm", hundredths(6.0, 16.0, 6)),
    ])
    .unwrap()
}

fn main() {
    let words: Vec<String> = std::env::args().skip(1).collect();
    match words
        .iter()
        .map(String::as_str)
        .collect::<Vec<_>>()
        .as_slice()
    {
        ["write", rows, file] => {
            let rows: u64 = rows.parse().unwrap();
            let schema = batch(0, 1).schema();
            let file = File::create(file).unwrap();
            let mut writer =
                ArrowWriter::try_new(file, schema.clone(), Some(properties(&schema))).unwrap();
            for first in (0..rows).step_by(BATCH as usize) {
                writer
                    .write(&batch(first, BATCH.min(rows - first)))
                    .unwrap();
            }
            writer.close().unwrap();
        }
        ["copy", from, to] => {
            let reader =
                ParquetRecordBatchReaderBuilder::try_new(File::open(from).unwrap()).unwrap();
            let schema = reader.schema().clone();
            let reader = reader.with_batch_size(32 * 1024).build().unwrap();
            let file = File::create(to).unwrap();
            let mut writer =
                ArrowWriter::try_new(file, schema.clone(), Some(properties(&schema))).unwrap();
            let (send, batches) = std::sync::mpsc::sync_channel(4);
            std::thread::scope(|scope| {
                scope.spawn(move || reader.for_each(|batch| send.send(batch.unwrap()).unwrap()));
                for batch in batches {
                    writer.write(&batch).unwrap();
                }
            });
            let _ = writer.into_inner().unwrap().sync_all();
        }
        _ => panic!("write ROWS FILE, or copy IN OUT"),
    }
}
