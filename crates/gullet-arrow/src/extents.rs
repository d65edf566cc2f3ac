//! Lengths and numbers of parts that a foreign array states, before anything is computed from them.

use crate::ImportError;
use arrow_array::ffi::FFI_ArrowArray;
use arrow_schema::DataType;

/// No value is wider than this many bytes, so that sizes stay below what memory can hold.
const WIDEST: usize = 64;

/// The types of an array's children.
fn children(data_type: &DataType) -> Vec<&DataType> {
    match data_type {
        DataType::Struct(fields) => fields.iter().map(|field| field.data_type()).collect(),
        DataType::Union(fields, _) => fields.iter().map(|(_, field)| field.data_type()).collect(),
        DataType::List(field)
        | DataType::LargeList(field)
        | DataType::ListView(field)
        | DataType::LargeListView(field)
        | DataType::FixedSizeList(field, _)
        | DataType::Map(field, _) => vec![field.data_type()],
        DataType::RunEndEncoded(ends, values) => vec![ends.data_type(), values.data_type()],
        _ => Vec::new(),
    }
}

/// Refuses negative and endless lengths, and parts that the type does not have.
pub(crate) fn check(array: &FFI_ArrowArray, data_type: &DataType) -> Result<(), ImportError> {
    let wrong = |text: &str| Err(ImportError::new(format!("{text} of {data_type}")));
    // A negative number of the interface is a huge one here.
    let most = isize::MAX as usize / WIDEST;
    if array.len() > most || array.offset() > most || array.len() + array.offset() > most {
        return wrong("an impossible length or offset");
    }
    if array.num_buffers() > most {
        return wrong("an impossible number of buffers");
    }
    let children = children(data_type);
    if array.num_children() != children.len() {
        return wrong("a wrong number of children");
    }
    for (index, child) in children.into_iter().enumerate() {
        check(array.child(index), child)?;
    }
    match (data_type, array.dictionary()) {
        (DataType::Dictionary(_, values), Some(dictionary)) => check(dictionary, values),
        (DataType::Dictionary(..), None) => wrong("no dictionary"),
        (_, Some(_)) => wrong("a dictionary"),
        (_, None) => Ok(()),
    }
}
