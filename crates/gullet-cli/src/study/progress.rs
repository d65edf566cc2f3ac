//! How far a study has come, on a terminal; silent elsewhere.

use std::io::{IsTerminal, Write, stderr};
use std::time::{Duration, Instant};

/// Time between two lines.
const PAUSE: Duration = Duration::from_millis(200);

/// Tells rows, rows a second and the time left.
pub struct Progress {
    start: Instant,
    told: Option<Instant>,
    shown: bool,
    total: Option<u64>,
}

impl Progress {
    /// Of a study of so many rows, where that is known.
    pub fn new(total: Option<u64>) -> Progress {
        Progress {
            start: Instant::now(),
            told: stderr().is_terminal().then(Instant::now),
            shown: false,
            total,
        }
    }

    /// So many rows are written, and this share of the input was read.
    pub fn at(&mut self, rows: u64, share: Option<f64>) {
        let Some(told) = self.told else { return };
        if told.elapsed() < PAUSE {
            return;
        }
        self.told = Some(Instant::now());
        self.shown = true;
        let share = match self.total {
            Some(total) if total > 0 => Some(rows as f64 / total as f64),
            _ => share,
        };
        let text = line(rows, share, self.start.elapsed().as_secs_f64());
        let mut err = stderr().lock();
        // Where nobody can be told, the study goes on.
        let _ = write!(err, "\r\x1b[K{text}").and_then(|()| err.flush());
    }

    /// Takes the line away.
    pub fn end(&mut self) {
        if self.shown {
            let _ = write!(stderr().lock(), "\r\x1b[K");
            self.shown = false;
        }
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.end();
    }
}

fn line(rows: u64, share: Option<f64>, seconds: f64) -> String {
    let rate = rows as f64 / seconds.max(1e-9);
    let mut text = format!("{} rows, {} rows/s", grouped(rows), grouped(rate as u64));
    if let Some(share) = share.filter(|share| *share > 0.0) {
        let left = (seconds * (1.0 / share.min(1.0) - 1.0)).round() as u64;
        let (hours, minutes, seconds) = (left / 3600, left / 60 % 60, left % 60);
        text += &match hours {
            0 => format!(", {minutes}:{seconds:02} left"),
            _ => format!(", {hours}:{minutes:02}:{seconds:02} left"),
        };
    }
    text
}

/// A whole number with its thousands apart.
pub fn grouped(number: u64) -> String {
    let digits = number.to_string();
    let mut text = String::new();
    for (place, digit) in digits.chars().enumerate() {
        if place > 0 && (digits.len() - place).is_multiple_of(3) {
            text.push(',');
        }
        text.push(digit);
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_tells_rows_rate_and_time_left() {
        assert_eq!(
            line(1_500_000, Some(0.25), 3.0),
            "1,500,000 rows, 500,000 rows/s, 0:09 left"
        );
        assert_eq!(line(10, None, 2.0), "10 rows, 5 rows/s");
        assert_eq!(line(1, Some(1e-4), 1.0), "1 rows, 1 rows/s, 2:46:39 left");
    }
}
