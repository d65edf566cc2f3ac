//! `gullet study`: CSV and Parquet, bad rows, refusals, interruptions.

use super::{ROOT, folder, gullet, refusal, run, run_with_input};
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Child, Output, Stdio};
use std::time::{Duration, Instant};

pub const ROWS: &str = "crates/gullet-cli/studies/stop_blocks.csv";
pub const JOB: &str = "crates/gullet-cli/jobs/bearing_bracket.toml";

pub fn path(folder: &Path, name: &str) -> String {
    folder.join(name).to_str().unwrap().to_owned()
}

/// A study of the example job; what is told on standard error.
#[track_caller]
pub fn study(from: &str, to: &str, more: &[&str]) -> String {
    let mut words = vec!["study", from, to, "--job", JOB];
    words.extend(more);
    let output = run(&words);
    let errors = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(0), "{errors}");
    errors
}

fn files(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

#[track_caller]
fn written(folder: &Path, name: &str, text: &str) -> String {
    fs::write(folder.join(name), text).unwrap();
    path(folder, name)
}

/// The cells of a column.
pub fn column(csv: &str, name: &str) -> Vec<String> {
    let mut reader = csv::Reader::from_path(Path::new(ROOT).join(csv)).unwrap();
    let place = reader
        .headers()
        .unwrap()
        .iter()
        .position(|other| other == name)
        .unwrap();
    reader
        .records()
        .map(|row| row.unwrap()[place].to_owned())
        .collect()
}

#[test]
fn the_example_gives_rows_and_totals() {
    let folder = folder("study_example");
    let to = path(&folder, "stops.csv");
    let notes = study(ROWS, &to, &[]);
    assert!(
        notes.starts_with("note: line 8: unknown_name: material"),
        "{notes}"
    );
    let totals = json_of(ROWS, &to);
    let status = column(&to, "status");
    assert_eq!(totals["rows"], status.len());
    let ok = status.iter().filter(|status| *status == "ok").count();
    assert_eq!(totals["computed"], ok);
    assert!(ok >= 4, "{status:?}");
    let time: f64 = column(&to, "time_s")
        .iter()
        .filter_map(|cell| cell.parse::<f64>().ok())
        .sum();
    assert!((totals["cutting_time_s"].as_f64().unwrap() - time).abs() < 1e-6);
    assert_eq!(column(&to, "part"), column(ROWS, "part"));
    assert_eq!(files(&folder), ["stops.csv"]);
    let output = run(&["study", ROWS, &to, "--job", JOB, "--summary"]);
    let text = String::from_utf8(output.stdout).unwrap();
    assert!(
        text.contains("cutting time") && text.contains("rows by binding limit"),
        "{text}"
    );
    // To standard output, from standard input.
    let piped = run_with_input(
        &["study", "-", "-", "--job", JOB],
        &fs::read(Path::new(ROOT).join(ROWS)).unwrap(),
    );
    assert_eq!(piped.stdout, fs::read(&to).unwrap());
}

#[test]
fn csv_and_parquet_give_the_same() {
    let folder = folder("study_forms");
    let (csv, parquet) = (path(&folder, "a.csv"), path(&folder, "a.parquet"));
    study(ROWS, &csv, &["--columns", "all"]);
    study(ROWS, &parquet, &["--columns", "all"]);
    assert_eq!(&fs::read(&parquet).unwrap()[..4], b"PAR1");
    // The results of the results: their columns are passed through, and computed again.
    let (again_csv, again_parquet) = (path(&folder, "b.csv"), path(&folder, "b.csv.csv"));
    let keep = [
        "--pass-through",
        "spindle_speed_rpm",
        "--pass-through",
        "feed_per_tooth_in",
        "--pass-through",
        "mean_roughness_in",
        "--pass-through",
        "clamping_force_lbf",
    ];
    study(&csv, &again_csv, &keep);
    study(&parquet, &again_parquet, &keep);
    let (one, other) = (
        fs::read_to_string(&again_csv).unwrap(),
        fs::read_to_string(&again_parquet).unwrap(),
    );
    let mut one = csv::Reader::from_reader(one.as_bytes());
    let mut other = csv::Reader::from_reader(other.as_bytes());
    assert_eq!(one.headers().unwrap(), other.headers().unwrap());
    let headers = one.headers().unwrap().clone();
    let mut compared = 0;
    for (a, b) in one.records().zip(other.records()) {
        let (a, b) = (a.unwrap(), b.unwrap());
        for (place, name) in headers.iter().enumerate() {
            // Text of a number is kept in CSV and a number in Parquet: 1/2 and 0.5.
            if !column(ROWS, "part").is_empty() && name.ends_with("_in") && place < 6 {
                continue;
            }
            assert_eq!(a[place], b[place], "{name}");
            compared += 1;
        }
    }
    assert!(compared > 300);
}

#[test]
fn rows_of_any_csv_are_read() {
    let folder = folder("study_csv");
    let text = "\u{feff}\"part, name\",radial_depth_in,axial_depth_in,length_in\r\n\
        \"a, \"\"b\"\"\",0.02,0.25,3\r\n\
        \"two\r\nlines\",1/64,0.25,3\r\n\
        comma,0,02,0.25,3\r\n\
        short,0.02\r\n\
        unit,0.02 in,0.25,3\r\n\
        empty,,0.25,3\r\n\
        \r\n\
        huge,1e999,0.25,3\r\n\
        last,0.02,0.25,3";
    let from = written(&folder, "rows.csv", text);
    let to = path(&folder, "out.csv");
    let notes = study(&from, &to, &[]);
    assert_eq!(
        column(&to, "status"),
        [
            "ok",
            "ok",
            "bad_row",
            "bad_row",
            "number_unreadable",
            "missing",
            "not_finite",
            "ok"
        ]
    );
    assert_eq!(column(&to, "part, name")[..2], ["a, \"b\"", "two\r\nlines"]);
    let lines: Vec<&str> = notes.lines().collect();
    assert_eq!(lines.len(), 3, "{notes}");
    for (line, begins) in lines.iter().zip([
        "note: line 5: bad_row: 5 cells",
        "note: line 6: bad_row: 2 cells",
        "note: line 7: number_unreadable: radial_depth_in = 0.02 in",
    ]) {
        assert!(line.starts_with(begins), "{line}");
    }
    // The same lines where they end in one character.
    let from = written(&folder, "unix.csv", &text.replace("\r\n", "\n"));
    let same = study(&from, &to, &[]);
    assert_eq!(same, notes);
    let from = written(&folder, "last.csv", "radial_depth_in\n\n\n0.02\n0.02x");
    assert!(study(&from, &to, &[]).starts_with("note: line 5:"));
    // As bytes that are no text.
    let bytes = b"part,radial_depth_in\nM\xfcller,0.02\nb,0.02\n";
    fs::write(folder.join("latin.csv"), bytes).unwrap();
    study(
        &path(&folder, "latin.csv"),
        &to,
        &["--set", "axial_depth=1/4 in"],
    );
    assert_eq!(column(&to, "status"), ["bad_row", "ok"]);
}

#[test]
fn many_bad_rows_are_told_in_few_lines() {
    let folder = folder("study_many_bad");
    let mut text = String::from("radial_depth_in\n");
    for row in 0..500 {
        text += &if row % 2 == 0 {
            format!("0.02x{row}\n")
        } else {
            "0.02\n".to_owned()
        };
    }
    let from = written(&folder, "rows.csv", &text);
    let to = path(&folder, "out.csv");
    let notes = study(&from, &to, &[]);
    assert_eq!(notes.lines().count(), 11, "{notes}");
    assert!(notes.ends_with(" more\n"), "{notes}");
    let totals = json_of(&from, &to);
    assert_eq!(totals["errors"]["number_unreadable"], 250);
    // The same cell again and again is told once.
    let from = written(
        &folder,
        "same.csv",
        &format!("radial_depth_in\n{}", "0,02\n".repeat(50)),
    );
    assert_eq!(study(&from, &to, &[]).lines().count(), 1);
}

#[track_caller]
fn json_of(from: &str, to: &str) -> serde_json::Value {
    let output = run(&["study", from, to, "--job", JOB, "--summary", "--json"]);
    serde_json::from_slice(&output.stdout).unwrap()
}

#[test]
fn headers_that_are_none_are_refused() {
    let folder = folder("study_headers");
    let to = path(&folder, "out.csv");
    for (text, part) in [
        ("", "no header"),
        ("\n\n", "no header"),
        ("part;radial_depth_in\na;0,02\n", "one column"),
        ("part\tradial_depth_in\na\t0.02\n", "one column"),
        ("part,,radial_depth_in\n", "column 2"),
        ("radial_depth_in,radial_depth_in\n", "duplicate"),
        ("radial_depth_in,radial_depth_mm\n", "duplicate"),
        ("\u{0}p\u{0}a\u{0}r\u{0}t\n", "UTF-8"),
    ] {
        let from = written(&folder, "in.csv", text);
        let (code, lines) = refusal(&["study", &from, &to, "--job", JOB]);
        assert_eq!(code, 2, "{text:?}");
        assert!(lines[0].contains(part), "{text:?}: {lines:?}");
    }
    // A header without rows is a table of no rows.
    let from = written(&folder, "in.csv", "radial_depth_in\n");
    for name in ["none.csv", "none.parquet"] {
        study(&from, &path(&folder, name), &[]);
    }
    assert_eq!(column(&path(&folder, "none.csv"), "status").len(), 0);
}

#[test]
fn every_problem_is_told_before_any_work() {
    let folder = folder("study_problems");
    let from = written(&folder, "in.csv", "axial_depth_n,cutter_diamter_mm,part\n");
    let to = path(&folder, "out.csv");
    let (code, lines) = refusal(&[
        "study",
        &from,
        &to,
        "--set",
        "length=3",
        "--set",
        "pass",
        "--columns",
        "time,tim",
        "--threads",
        "0",
    ]);
    assert_eq!(code, 2);
    assert_eq!(lines.len(), 2, "the command line first: {lines:?}");
    let (_, lines) = refusal(&[
        "study",
        &from,
        &to,
        "--set",
        "length=3",
        "--columns",
        "time,tim",
    ]);
    for part in [
        "axial_depth_n",
        "cutter_diamter_mm",
        "length = 3",
        "\"tim\"",
        "missing: material",
        "missing: machine",
        "missing: radial_depth",
    ] {
        assert!(
            lines.iter().any(|line| line.contains(part)),
            "{part}: {lines:#?}"
        );
    }
    assert_eq!(files(&folder), ["in.csv"]);
    let (code, lines) = refusal(&[
        "study",
        "absent.csv",
        "absent.xls",
        "--job",
        "absent.toml",
        "--overlay",
        "absent",
    ]);
    assert_eq!((code, lines.len()), (3, 3), "{lines:?}");
}

#[test]
fn a_table_is_not_written_over_itself() {
    let folder = folder("study_same");
    let from = written(&folder, "in.csv", "radial_depth_in\n0.02\n");
    let spelled = format!(
        "{}/../{}/in.csv",
        folder.display(),
        folder.file_name().unwrap().to_str().unwrap()
    );
    for to in [&from, &spelled] {
        let (code, lines) = refusal(&["study", &from, to, "--job", JOB]);
        assert_eq!((code, lines.len()), (2, 1), "{lines:?}");
        assert!(lines[0].contains("another file than IN"), "{lines:?}");
    }
    assert_eq!(
        fs::read_to_string(&from).unwrap(),
        "radial_depth_in\n0.02\n"
    );
}

#[test]
fn files_that_are_no_tables_are_refused_and_what_was_there_stays() {
    let folder = folder("study_bad_files");
    let good = path(&folder, "good.parquet");
    study(ROWS, &good, &[]);
    let bytes = fs::read(&good).unwrap();
    let to = written(&folder, "out.csv", "as it was");
    let half = path(&folder, "half.parquet");
    fs::write(&half, &bytes[..bytes.len() / 2]).unwrap();
    let text = written(&folder, "text.parquet", "radial_depth_in\n0.02\n");
    let mut torn = bytes.clone();
    let most = torn.len() - 4000;
    torn[100..most].fill(0xa5);
    let torn_name = path(&folder, "torn.parquet");
    fs::write(&torn_name, torn).unwrap();
    for (from, wanted) in [(half, 3), (text, 2), (torn_name, 3), (path(&folder, ""), 3)] {
        let output = run(&[
            "study",
            &from,
            &to,
            "--job",
            JOB,
            "--pass-through",
            "feed_per_tooth_in",
            "--pass-through",
            "spindle_speed_rpm",
        ]);
        let told = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(wanted), "{from}: {told}");
        assert!(
            told.starts_with("error: ") && !told.contains("panicked"),
            "{from}: {told}"
        );
        assert_eq!(fs::read_to_string(&to).unwrap(), "as it was", "{from}");
    }
    assert!(files(&folder).iter().all(|name| !name.ends_with(".part")));
}

/// A study that reads from a pipe that is still open.
struct Waiting {
    child: Child,
}

impl Waiting {
    /// Some rows are under way, and the temporary file is there.
    fn start(folder: &Path, to: &str) -> Waiting {
        let mut child = gullet()
            .args(["study", "-", to, "--job", JOB])
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        let mut text = String::from("radial_depth_in\n");
        text += &"0.02\n".repeat(40_000);
        child
            .stdin
            .as_mut()
            .unwrap()
            .write_all(text.as_bytes())
            .unwrap();
        let start = Instant::now();
        while !files(folder)
            .iter()
            .any(|name| name.contains(&format!("-{}.part", child.id())))
        {
            assert!(
                start.elapsed() < Duration::from_secs(60),
                "no temporary file"
            );
            std::thread::sleep(Duration::from_millis(10));
        }
        Waiting { child }
    }

    fn signal(&self, name: &str) {
        let done = std::process::Command::new("kill")
            .args([name, &self.child.id().to_string()])
            .status()
            .unwrap();
        assert!(done.success());
    }

    fn end(self) -> Output {
        self.child.wait_with_output().unwrap()
    }
}

fn parts(folder: &Path) -> Vec<String> {
    files(folder)
        .into_iter()
        .filter(|name| name.ends_with(".part"))
        .collect()
}

#[cfg(unix)]
#[test]
fn a_killed_study_leaves_nothing_under_the_name_and_runs_again() {
    let folder = folder("study_killed");
    let to = path(&folder, "out.csv");
    let waiting = Waiting::start(&folder, &to);
    waiting.signal("-KILL");
    assert_eq!(waiting.end().status.code(), None);
    assert!(!Path::new(&to).exists());
    assert_eq!(parts(&folder).len(), 1);
    // A file that only looks like it is left alone.
    let own = written(&folder, ".out.csv.gullet-mine.part", "mine");
    let from = written(&folder, "in.csv", "radial_depth_in\n0.02\n0.03\n");
    study(&from, &to, &[]);
    assert_eq!(column(&to, "status"), ["ok", "ok"]);
    assert_eq!(parts(&folder), [".out.csv.gullet-mine.part"]);
    assert_eq!(fs::read_to_string(own).unwrap(), "mine");
}

#[cfg(unix)]
#[test]
fn an_interrupted_study_cleans_up_and_says_so() {
    let folder = folder("study_interrupted");
    let to = written(&folder, "out.parquet", "as it was");
    let waiting = Waiting::start(&folder, &to);
    waiting.signal("-INT");
    let output = waiting.end();
    assert_eq!(output.status.code(), Some(130));
    assert_eq!(output.stdout, b"");
    assert_eq!(fs::read_to_string(&to).unwrap(), "as it was");
    assert_eq!(files(&folder), ["out.parquet"]);
}

#[cfg(unix)]
#[test]
fn two_studies_into_one_place_do_not_disturb_each_other() {
    let folder = folder("study_two");
    let to = path(&folder, "out.csv");
    let mut waiting = Waiting::start(&folder, &to);
    let from = written(&folder, "in.csv", "radial_depth_in\n0.02\n0.03\n");
    study(&from, &to, &[]);
    assert_eq!(column(&to, "status").len(), 2);
    assert_eq!(parts(&folder).len(), 1);
    drop(waiting.child.stdin.take());
    let output = waiting.end();
    // Silent, as nobody sits at a terminal.
    assert_eq!(
        (output.status.code(), output.stderr.as_slice()),
        (Some(0), &b""[..])
    );
    assert_eq!(column(&to, "status").len(), 40_000);
    assert!(parts(&folder).is_empty());
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_is_told() {
    let folder = folder("study_full");
    let mut text = String::from("radial_depth_in\n");
    text += &"0.02\n".repeat(20_000);
    let from = written(&folder, "in.csv", &text);
    for name in ["full.csv", "full.parquet"] {
        let link = folder.join(name);
        std::os::unix::fs::symlink("/dev/full", &link).unwrap();
        let (code, lines) = refusal(&["study", &from, link.to_str().unwrap(), "--job", JOB]);
        assert_eq!((code, lines.len()), (3, 1), "{lines:?}");
        assert!(lines[0].contains("room on the disk"), "{lines:?}");
    }
    let nowhere: PathBuf = folder.join("absent").join("out.csv");
    let (code, lines) = refusal(&["study", &from, nowhere.to_str().unwrap(), "--job", JOB]);
    assert_eq!(code, 3, "{lines:?}");
}

#[test]
fn a_reader_that_closes_its_pipe_is_told_nothing_wrong() {
    let folder = folder("study_pipe");
    let mut text = String::from("radial_depth_in\n");
    text += &"0.02\n".repeat(200_000);
    let from = written(&folder, "in.csv", &text);
    let mut child = gullet()
        .args(["study", &from, "-", "--job", JOB])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let output = child.wait_with_output().unwrap();
    assert_eq!(String::from_utf8(output.stderr).unwrap(), "");
    assert_eq!(output.status.code(), Some(0));
}

#[test]
fn text_in_parquet_that_is_none_is_refused() {
    use parquet::data_type::{ByteArray, ByteArrayType};
    use parquet::file::properties::WriterProperties;
    use parquet::file::writer::SerializedFileWriter;
    let folder = folder("study_no_text");
    let from = path(&folder, "in.parquet");
    let schema = "message rows { required binary material (UTF8); }";
    let schema = std::sync::Arc::new(parquet::schema::parser::parse_message_type(schema).unwrap());
    let file = fs::File::create(&from).unwrap();
    let mut writer =
        SerializedFileWriter::new(file, schema, WriterProperties::default().into()).unwrap();
    let mut group = writer.next_row_group().unwrap();
    let mut column = group.next_column().unwrap().unwrap();
    column
        .typed::<ByteArrayType>()
        .write_batch(&[ByteArray::from(vec![0xff_u8, 0xfe])], None, None)
        .unwrap();
    column.close().unwrap();
    group.close().unwrap();
    writer.close().unwrap();
    let to = path(&folder, "out.csv");
    let (code, lines) = refusal(&[
        "study",
        &from,
        &to,
        "--job",
        JOB,
        "--set",
        "radial_depth=0.02 in",
    ]);
    assert_eq!((code, lines.len()), (3, 1), "{lines:?}");
    assert_eq!(files(&folder), ["in.parquet"]);
}
