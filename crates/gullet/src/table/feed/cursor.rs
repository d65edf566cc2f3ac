//! Feeds of many rows, one after the other.

use super::{Deep, FeedNumbers, FeedReader, Span, Values, mix, reach, share};

/// Reads feeds row after row: rows between the same tabulated sizes look nothing up.
pub(crate) struct FeedCursor<'r> {
    reader: &'r FeedReader,
    diameter: f64,
    /// The depths that the pieces serve.
    span: Span,
    pieces: Vec<Piece>,
    /// The piece that gives the start, and whether something was assumed.
    start: usize,
    assumed: bool,
}

/// The values of one reading, or those of the two depths that it lies between.
struct Piece {
    values: Values,
    deeper: Option<(f64, f64, Values)>,
}

impl<'r> FeedCursor<'r> {
    pub(crate) fn new(reader: &'r FeedReader) -> FeedCursor<'r> {
        FeedCursor {
            reader,
            diameter: f64::NAN,
            span: Span::EVERY,
            pieces: Vec::new(),
            start: 0,
            assumed: false,
        }
    }

    /// As [`FeedReader::numbers`].
    pub(crate) fn numbers(&mut self, diameter: f64, depth: f64) -> FeedNumbers {
        if self.diameter != diameter || !self.span.holds(reach(depth)) {
            self.look_up(diameter, depth);
        }
        let mut numbers = FeedNumbers {
            low: f64::NAN,
            start: f64::NAN,
            high: f64::NAN,
            assumed: self.assumed,
        };
        for (place, piece) in self.pieces.iter().enumerate() {
            let [low, start, high] = match &piece.deeper {
                None => piece.values,
                Some((d0, d1, deeper)) => mix(piece.values, *deeper, share(*d0, *d1, depth)),
            };
            numbers.low = numbers.low.min(low);
            numbers.high = numbers.high.max(high);
            if place == self.start {
                numbers.start = start;
            }
        }
        numbers
    }

    fn look_up(&mut self, diameter: f64, depth: f64) {
        self.diameter = diameter;
        self.span = Span::EVERY;
        self.pieces.clear();
        self.assumed = !self.reader.assumptions.is_empty();
        let mut best = None;
        for series in &self.reader.series {
            let span = series.readings(diameter, depth, |reading| {
                let rank = (series.tier, !reading.covered());
                if best.is_none_or(|best| rank < best) {
                    best = Some(rank);
                    self.start = self.pieces.len();
                }
                self.assumed |= reading.assumed();
                self.pieces.push(match reading {
                    Deep::One(reading) | Deep::Beyond(_, reading) => Piece {
                        values: reading.values,
                        deeper: None,
                    },
                    Deep::Between(d0, a, d1, b, _) => Piece {
                        values: a.values,
                        deeper: Some((d0, d1, b.values)),
                    },
                });
            });
            self.span = self.span.and(span);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::table::{Library, Process, ToolMaterial};

    #[test]
    fn a_cursor_reads_what_the_reader_reads() {
        let library = Library::builtin();
        let mut compared = 0;
        for material in library.materials() {
            for tool in ToolMaterial::ALL {
                for process in [Process::EndMilling, Process::FaceMilling] {
                    let Some(reader) = library.feed_reader(material, *tool, process) else {
                        continue;
                    };
                    let mut cursor = FeedCursor::new(&reader);
                    let sizes = [0.5e-3, 1e-3, 3e-3, 6e-3, 6.35e-3, 0.0127, 0.02, 0.0254, 0.2];
                    let depths = (0..60).map(|step| 1e-4 * f64::from(step * step));
                    let ends = [0.0, -1e-3, f64::INFINITY, 1.27e-3, 6.35e-3, 0.0127];
                    for diameter in sizes {
                        for depth in depths.clone().chain(ends) {
                            let (a, b) = (
                                reader.numbers(diameter, depth),
                                cursor.numbers(diameter, depth),
                            );
                            let bits = |feed: &FeedNumbers| {
                                [feed.low, feed.start, feed.high].map(f64::to_bits)
                            };
                            assert_eq!(bits(&a), bits(&b), "{diameter} {depth}");
                            assert_eq!(a.assumed, b.assumed, "{diameter} {depth}");
                            compared += 1;
                        }
                    }
                }
            }
        }
        assert!(compared > 10_000, "{compared}");
    }
}
