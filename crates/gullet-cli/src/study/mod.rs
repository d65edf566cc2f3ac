//! Studies from file to file: rows are read, computed and written at the same time, in order, in
//! batches of bounded size.

mod csv_rows;
mod csv_table;
#[cfg(feature = "parquet")]
mod parquet_table;
mod progress;
mod sink;
mod source;
mod totals;

pub use sink::{Form, Sink, same_file};
pub use source::Source;
pub use totals::{as_json, as_text};

use gullet::error::{Code, Error, Problem, Result};
use gullet::study::Execution;
use gullet_table::{Answer, StudyPlan, Summary};
use progress::Progress;
use std::collections::BTreeMap;
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};
use std::sync::{Mutex, PoisonError};
use std::thread;

/// Rows of a batch.
pub const BATCH: usize = 32 * 1024;

/// A batch as it was read, with what is known of its rows.
pub struct Batch {
    pub rows: arrow_array::RecordBatch,
    /// Rows that are refused, with what is wrong.
    pub marked: Vec<(usize, Problem)>,
    /// What a row is called: the line it stands in, else its number.
    pub places: Places,
    /// Share of the input that has been read, where that is known.
    pub share: Option<f64>,
    /// Number of its first row in the whole input, from 0; the reading thread counts.
    pub first: u64,
}

/// What rows are called.
pub enum Places {
    /// Lines of a text, one a row.
    Lines(Vec<u64>),
    /// Numbers from this one, which is that of the first row.
    #[cfg(feature = "parquet")]
    From(u64),
}

impl Places {
    fn of(&self, row: usize) -> String {
        match self {
            Places::Lines(lines) => format!("line {}", lines.get(row).copied().unwrap_or_default()),
            #[cfg(feature = "parquet")]
            Places::From(first) => format!("row {}", first + row as u64),
        }
    }
}

/// What came of a study.
#[derive(Default)]
pub struct Outcome {
    pub summary: Summary,
    /// Cells that mean nothing, each with the first place where it stands; the first ones.
    pub notes: Vec<String>,
    /// How many there were beside.
    pub more: u64,
}

/// Notes that are told.
const MOST_NOTES: usize = 10;

/// Runs a study: a thread reads, `workers` compute, the calling one writes.
///
/// # Errors
/// What cannot be read or written; the sink is left as it is.
pub fn run(plan: &StudyPlan, source: Source, sink: &mut Sink, workers: usize) -> Result<Outcome> {
    let workers = workers.max(1);
    // Batches that are under way: no more are read before one is written.
    let (permit, permits) = sync_channel::<()>(2 * workers + 2);
    for _ in 0..2 * workers + 2 {
        // As many as the channel holds.
        let _ = permit.try_send(());
    }
    let (send_read, read) = sync_channel(workers);
    let (send_done, done) = sync_channel(workers);
    let read = Mutex::new(read);
    let rows = source.rows();
    thread::scope(|scope| {
        spawn(scope, "gullet-read", move || {
            feed(source, &permits, &send_read)
        })?;
        for _ in 0..workers {
            let (read, send_done) = (&read, send_done.clone());
            spawn(scope, "gullet-compute", move || {
                compute(plan, read, &send_done)
            })?;
        }
        drop(send_done);
        let outcome = write(&done, sink, &permit, Progress::new(rows));
        // Wakes the reader where writing failed: it finds nobody to read for.
        drop(done);
        drop(permit);
        outcome
    })
}

fn spawn<'scope>(
    scope: &'scope thread::Scope<'scope, '_>,
    name: &str,
    work: impl FnOnce() + Send + 'scope,
) -> Result<()> {
    thread::Builder::new()
        .name(name.to_owned())
        .spawn_scoped(scope, work)
        .map(drop)
        .map_err(|error| {
            Error::from(Problem::new(
                Code::File,
                "thread",
                error.to_string(),
                "",
                "the system refuses another thread: end other programs and try again",
            ))
        })
}

type Numbered<T> = (u64, Result<T>);

fn feed(mut source: Source, permits: &Receiver<()>, out: &SyncSender<Numbered<Batch>>) {
    let mut first = 0;
    for number in 0.. {
        if permits.recv().is_err() {
            return;
        }
        let Some(mut batch) = source.next() else {
            return;
        };
        if let Ok(batch) = &mut batch {
            batch.first = first;
            first += batch.rows.num_rows() as u64;
        }
        let last = batch.is_err();
        if out.send((number, batch)).is_err() || last {
            return;
        }
    }
}

/// A batch that was computed, with the notes on it.
struct Done {
    answer: Answer,
    notes: Vec<Note>,
    share: Option<f64>,
}

/// Where a cell that means nothing stands, and what is wrong with it.
struct Note {
    place: String,
    text: String,
}

fn compute(
    plan: &StudyPlan,
    read: &Mutex<Receiver<Numbered<Batch>>>,
    out: &SyncSender<Numbered<Done>>,
) {
    loop {
        let next = read.lock().unwrap_or_else(PoisonError::into_inner).recv();
        let Ok((number, batch)) = next else { return };
        let done = batch.and_then(|batch| compute_batch(plan, &batch));
        if out.send((number, done)).is_err() {
            return;
        }
    }
}

fn compute_batch(plan: &StudyPlan, batch: &Batch) -> Result<Done> {
    let marked: Vec<(usize, Code)> = batch
        .marked
        .iter()
        .map(|(row, problem)| (*row, problem.code))
        .collect();
    // One thread a batch: as many batches are under way as there are workers.
    let execution = Execution::default().with_threads(1)?;
    let mut answer = plan.run_from(batch.first, &batch.rows, &marked, execution)?;
    let told = core::mem::take(&mut answer.problems);
    let mut all: Vec<(usize, Problem)> = batch.marked.clone();
    all.extend(told.into_iter().map(|told| (told.row, told.problem)));
    all.sort_by_key(|(row, _)| *row);
    Ok(Done {
        notes: all
            .into_iter()
            .map(|(row, problem)| Note {
                place: batch.places.of(row),
                text: problem.to_string(),
            })
            .collect(),
        answer,
        share: batch.share,
    })
}

/// Writes the batches in the order they were read.
fn write(
    done: &Receiver<Numbered<Done>>,
    sink: &mut Sink,
    permit: &SyncSender<()>,
    mut progress: Progress,
) -> Result<Outcome> {
    let mut outcome = Outcome::default();
    // What was told once needs no second telling.
    let mut told: Vec<String> = Vec::new();
    let mut early: BTreeMap<u64, Result<Done>> = BTreeMap::new();
    let mut next = 0;
    for (number, batch) in done {
        early.insert(number, batch);
        while let Some(batch) = early.remove(&next) {
            let batch = batch?;
            sink.write(&batch.answer.batch)?;
            outcome.summary.add(&batch.answer.summary);
            for note in batch.notes {
                if told.contains(&note.text) {
                    continue;
                }
                if told.len() < MOST_NOTES {
                    outcome.notes.push(format!("{}: {}", note.place, note.text));
                    told.push(note.text);
                } else {
                    outcome.more += 1;
                }
            }
            progress.at(outcome.summary.rows(), batch.share);
            next += 1;
            // The reader may have ended.
            let _ = permit.try_send(());
        }
    }
    progress.end();
    Ok(outcome)
}
