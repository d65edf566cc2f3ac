//! A formula over columns: the same body and the same check as the scalar call, row by row.

use super::describe::Formula;
use crate::error::{Code, Problem, Result};

/// One argument over all rows.
#[derive(Debug, Clone, Copy)]
pub enum Column<'a> {
    /// The same SI value in every row.
    Constant(f64),
    /// One SI value a row.
    Values(&'a [f64]),
}

impl<'a> Column<'a> {
    /// The same column from row `start` on, `rows` rows of it; empty past the end.
    pub(crate) fn part(self, start: usize, rows: usize) -> Column<'a> {
        match self {
            Column::Constant(value) => Column::Constant(value),
            Column::Values(values) => Column::Values(
                values
                    .get(start..start.saturating_add(rows))
                    .unwrap_or_default(),
            ),
        }
    }

    /// Refuses a column of values that has not one for each row.
    pub(crate) fn check_length(self, name: &str, rows: usize) -> Result<()> {
        match self {
            Column::Values(values) if values.len() != rows => Err(uneven(name, values.len(), rows)),
            _ => Ok(()),
        }
    }

    /// The value in a row; NaN past the end, which the check refuses.
    #[inline]
    pub(crate) fn row(&self, row: usize) -> f64 {
        match self {
            Column::Constant(value) => *value,
            Column::Values(values) => values.get(row).copied().unwrap_or(f64::NAN),
        }
    }
}

/// Most arguments a formula of the catalogue has; a test holds it true.
pub(super) const MOST_ARGUMENTS: usize = 12;

impl Formula {
    /// Evaluates every row; a row that cannot be computed gets the number of its error's code in
    /// `status` and keeps what `results` held, the others get 0.
    ///
    /// Gives the same bits as [`Formula::call`] in each row.
    ///
    /// # Errors
    /// `Missing` for a wrong number of arguments, `Inconsistent` for columns of different lengths;
    /// nothing is written then.
    ///
    /// ```
    /// use gullet::formula::{Column, find};
    /// let formula = find("handwheel_turns")?;
    /// let (mut turns, mut status) = ([0.0; 2], [0; 2]);
    /// formula.call_columns(
    ///     &[Column::Values(&[0.01, f64::NAN]), Column::Constant(0.005)],
    ///     &mut turns,
    ///     &mut status,
    /// )?;
    /// assert_eq!((turns, status), ([2.0, 0.0], [0, gullet::Code::NotFinite.number()]));
    /// # Ok::<(), gullet::Error>(())
    /// ```
    pub fn call_columns(
        &self,
        arguments: &[Column],
        results: &mut [f64],
        status: &mut [i32],
    ) -> Result<()> {
        let count = self.parameters.len();
        if arguments.len() != count || count > MOST_ARGUMENTS {
            return Err(Problem::new(
                Code::Missing,
                self.name,
                format!("{} columns", arguments.len()),
                format!("{count} columns"),
                "give every argument, in the catalogue's order",
            )
            .into());
        }
        for (parameter, column) in self.parameters.iter().zip(arguments) {
            column.check_length(parameter.name, results.len())?;
        }
        if status.len() != results.len() {
            return Err(uneven("status", status.len(), results.len()));
        }
        let mut row_arguments = [0.0; MOST_ARGUMENTS];
        let Some(row_arguments) = row_arguments.get_mut(..count) else {
            return Ok(());
        };
        for (row, (result, status)) in results.iter_mut().zip(status).enumerate() {
            for (slot, column) in row_arguments.iter_mut().zip(arguments) {
                *slot = column.row(row);
            }
            *status = match self.value_or_code(row_arguments) {
                Ok(value) => {
                    *result = value;
                    0
                }
                Err(code) => code.number(),
            };
        }
        Ok(())
    }
}

pub(crate) fn uneven(name: &str, length: usize, rows: usize) -> crate::Error {
    Problem::new(
        Code::Inconsistent,
        name,
        format!("{length} rows"),
        format!("{rows} rows"),
        "give columns of one length",
    )
    .into()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use crate::formula::catalogue;

    #[test]
    fn columns_give_the_bits_of_the_scalar_call() {
        for formula in catalogue() {
            assert!(
                formula.parameters.len() <= MOST_ARGUMENTS,
                "{}",
                formula.name
            );
            let example = formula.example_arguments().unwrap();
            let columns: Vec<Vec<f64>> = example
                .iter()
                .map(|value| vec![*value, value * 1.01, f64::NAN])
                .collect();
            let arguments: Vec<Column> = columns.iter().map(|c| Column::Values(c)).collect();
            let (mut results, mut status) = ([7.0; 3], [0; 3]);
            formula
                .call_columns(&arguments, &mut results, &mut status)
                .unwrap();
            for row in 0..3 {
                let scalar: Vec<f64> = columns.iter().map(|column| column[row]).collect();
                match formula.call(&scalar) {
                    Ok(value) => assert_eq!(results[row].to_bits(), value.to_bits()),
                    Err(error) => {
                        assert_eq!(status[row], error.code().number());
                        assert_eq!(results[row], 7.0);
                    }
                }
            }
            assert_eq!(status[2], Code::NotFinite.number());
        }
    }
}
