#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use super::Library;

#[test]
fn embedded_tables_read_without_a_problem() {
    let (library, problems) = Library::read_builtin();
    assert!(problems.is_empty(), "{problems:#?}");
    assert!(
        library.materials.len() > 100 && library.speeds.len() > 400 && library.feeds.len() > 350
    );
}
