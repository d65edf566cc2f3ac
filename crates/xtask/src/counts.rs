//! Counts of tests, read from what the test runners print.

/// How many tests passed and failed.
#[derive(Debug, Default, Clone, Copy, PartialEq, Eq)]
pub struct Counts {
    /// Passed.
    pub passed: u64,
    /// Failed, timed out or not started.
    pub failed: u64,
}

impl Counts {
    /// The counts of every closing line in a text: `test result: ok. 3 passed; 0 failed; …` and
    /// `Summary [0.1s] 3 tests run: 3 passed, 0 skipped`.
    pub fn read(text: &str) -> Counts {
        let mut counts = Counts::default();
        // A runner that sums up also repeats the closing line of each test that failed.
        let summed = text
            .lines()
            .any(|line| line.trim().starts_with("Summary ["));
        for line in text.lines() {
            let line = line.trim();
            let list = if line.starts_with("test result:") && !summed {
                line.split_once(". ").map(|(_, list)| list)
            } else if line.starts_with("Summary [") {
                line.split_once(" run: ").map(|(_, list)| list)
            } else if line.starts_with(|c: char| c.is_ascii_digit()) {
                // pytest: 939 passed, 6 skipped in 80.77s (0:01:20)
                line.split_once(" in ").map(|(list, _)| list)
            } else {
                None
            };
            for part in list.unwrap_or_default().split([';', ',']) {
                let Some((number, what)) = part.trim().split_once(' ') else {
                    continue;
                };
                let Ok(number) = number.parse::<u64>() else {
                    continue;
                };
                if what == "error" || what == "errors" {
                    counts.failed += number;
                } else if what.starts_with("passed") {
                    counts.passed += number;
                } else if ["failed", "exec failed", "timed out"]
                    .iter()
                    .any(|bad| what.starts_with(bad))
                {
                    counts.failed += number;
                }
            }
        }
        counts
    }

    /// The sum of two.
    pub fn and(self, other: Counts) -> Counts {
        Counts {
            passed: self.passed + other.passed,
            failed: self.failed + other.failed,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn closing_lines_of_one_runner_are_summed() {
        let text = "test a ... ok\n\
            test result: ok. 20 passed; 1 failed; 0 ignored; 0 measured; 3 filtered out; finished in 1.2s\n\
            test result: FAILED. 4 passed; 2 failed; 0 ignored; 0 measured; 0 filtered out\n\
            7 passed, 9 failed, 0 marked\n";
        let counts = Counts {
            passed: 24,
            failed: 3,
        };
        assert_eq!(Counts::read(text), counts);
        assert_eq!(Counts::read("no tests"), Counts::default());
    }

    #[test]
    fn the_summary_of_the_other_runner_counts_alone() {
        let text = "    test result: FAILED. 0 passed; 1 failed; 0 ignored; 0 measured; 0 filtered out\n     \
            Summary [   1.234s] 42/50 tests run: 38 passed (1 slow), 3 failed, 1 timed out, 5 skipped\n";
        let counts = Counts {
            passed: 38,
            failed: 4,
        };
        assert_eq!(Counts::read(text), counts);
    }
}
