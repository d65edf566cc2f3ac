//! Listings: every cell has its column's form, every column a unit that its kind knows.
#![allow(clippy::unwrap_used)]

use gullet::formula::{catalogue, catalogue_listing, examples_listing};
use gullet::listing::{Cell, Form, Listing};
use gullet::quantity::{Kind, UnitSystem, units};
use gullet::table::{Library, Material};
use std::collections::BTreeSet;

fn fits(form: Form, optional: bool, cell: &Cell) -> bool {
    match (form, cell) {
        (_, Cell::Empty) => optional,
        (Form::Text, Cell::Text(_))
        | (Form::Texts, Cell::Texts(_))
        | (Form::Pairs, Cell::Pairs(_))
        | (Form::Whole, Cell::Whole(_))
        | (Form::Flag, Cell::Flag(_)) => true,
        (Form::Number(_), Cell::Number(value)) => value.is_finite(),
        (Form::Range(_), Cell::Range(low, high)) => low <= high,
        _ => false,
    }
}

fn check(listing: &Listing) {
    let names: BTreeSet<&str> = listing.columns.iter().map(|column| column.name).collect();
    assert_eq!(names.len(), listing.columns.len(), "{}", listing.name);
    assert!(!listing.rows.is_empty(), "{}", listing.name);
    for column in &listing.columns {
        assert!(
            column.meaning.ends_with('.'),
            "{}.{}",
            listing.name,
            column.name
        );
        for system in [UnitSystem::Metric, UnitSystem::Inch] {
            match (column.form, column.unit(system)) {
                (Form::Number(kind) | Form::Range(kind), Some(unit)) => {
                    assert!(
                        units(kind).contains(unit),
                        "{}.{}",
                        listing.name,
                        column.name
                    );
                    let own =
                        column.units.is_none() || column.units.unwrap().contains(&unit.symbol);
                    assert!(own, "{}.{}: {}", listing.name, column.name, unit.symbol);
                }
                (Form::Number(_) | Form::Range(_), None) => unreachable!("a number without a unit"),
                (_, unit) => assert!(unit.is_none()),
            }
        }
    }
    for row in &listing.rows {
        assert_eq!(row.len(), listing.columns.len());
        for (column, cell) in listing.columns.iter().zip(row) {
            assert!(
                fits(column.form, column.optional, cell),
                "{}.{}: {cell:?}",
                listing.name,
                column.name
            );
        }
    }
}

#[test]
fn every_cell_has_its_form() {
    let library = Library::builtin();
    for name in Library::LISTINGS {
        check(&library.listing(name).unwrap());
    }
    check(&catalogue_listing());
    check(&examples_listing());
    let error = library.listing("feed").unwrap_err();
    assert!(error.to_string().contains("feeds"), "{error}");
}

#[test]
fn rows_are_those_of_the_tables() {
    let library = Library::builtin();
    let materials = library.listing("materials").unwrap();
    assert_eq!(materials.rows.len(), library.materials().len());
    for (row, material) in materials.rows.iter().zip(library.materials()) {
        let fields: Vec<Cell> = material.fields().map(|(_, cell)| cell).collect();
        assert_eq!(row, &fields);
        assert_eq!(row[0], Cell::from(&material.id));
    }
    assert_eq!(Material::columns().count(), materials.columns.len());
    assert_eq!(catalogue_listing().rows.len(), catalogue().count());
}

#[test]
fn suffixes_tell_the_units_of_a_kind_apart() {
    for kind in Kind::ALL {
        let suffixes: BTreeSet<String> = units(*kind).iter().map(|unit| unit.suffix()).collect();
        assert_eq!(suffixes.len(), units(*kind).len(), "{}", kind.name());
        for suffix in suffixes {
            let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_';
            assert!(suffix.chars().all(plain), "{suffix}");
        }
    }
}
