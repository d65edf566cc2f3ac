//! The schema of the file of a part.

use gullet::operation::process::{ALL, Request};
use gullet::plan::{PartRoute, part_schema};
use gullet::table::Library;
use serde_json::Value;

fn schema() -> Value {
    serde_json::from_str(&part_schema()).unwrap()
}

#[test]
fn the_schema_in_the_repository_is_that_of_the_reader() {
    let path = concat!(
        env!("CARGO_MANIFEST_DIR"),
        "/../../reference-data/part.schema.json"
    );
    if std::env::var_os("GULLET_WRITE_SCHEMA").is_some() {
        std::fs::write(path, part_schema()).unwrap();
    }
    assert!(
        std::fs::read_to_string(path).unwrap() == part_schema(),
        "reference-data/part.schema.json is not up to date: run this test with GULLET_WRITE_SCHEMA=1"
    );
}

/// A key that the schema allows is one that the reader knows, for every operation.
#[test]
fn every_key_of_an_operation_is_known() {
    let schema = schema();
    let forms = schema["properties"]["operation"]["items"]["oneOf"]
        .as_array()
        .unwrap();
    assert_eq!(forms.len(), ALL.len() + 1);
    for form in &forms[1..] {
        let name = form["properties"]["operation"]["const"].as_str().unwrap();
        let request = Request::new(name).unwrap();
        for input in request.process().inputs {
            assert!(form["properties"][input.name()].is_object(), "{name}");
            let required = form["required"].as_array().unwrap();
            let told = required.iter().any(|key| key == input.name());
            assert_eq!(told, input.required(), "{name} {}", input.name());
        }
        for key in form["properties"].as_object().unwrap().keys() {
            // A table is of no type that a key takes: it is known, and refused by its type.
            let file = serde_json::json!({
                "route": "part",
                "material": {"id": "1018"},
                "operation": [{"operation": name, key.as_str(): {}}],
            });
            let error = PartRoute::from_json(&file.to_string(), Library::builtin()).unwrap_err();
            let path = format!("operation[1].{key}");
            assert!(
                !error
                    .problems()
                    .iter()
                    .any(|problem| problem.parameter == path
                        && problem.code == gullet::Code::UnknownName),
                "{name}: {key}: {error}"
            );
        }
    }
}

#[test]
fn the_example_keeps_to_the_schema() {
    let schema = schema();
    let text = include_str!("../../crates/gullet-cli/jobs/parts/tailstock_post.toml");
    let file: Value = toml::from_str(text).unwrap();
    let properties = schema["properties"].as_object().unwrap();
    for key in file.as_object().unwrap().keys() {
        assert!(properties.contains_key(key), "{key}");
    }
    let forms = schema["properties"]["operation"]["items"]["oneOf"]
        .as_array()
        .unwrap();
    for operation in file["operation"].as_array().unwrap() {
        let form = forms
            .iter()
            .find(|form| form["properties"]["operation"]["const"] == operation["operation"])
            .unwrap();
        for key in operation.as_object().unwrap().keys() {
            assert!(form["properties"][key.as_str()].is_object(), "{key}");
        }
        for key in form["required"].as_array().unwrap() {
            assert!(operation[key.as_str().unwrap()] != Value::Null, "{key}");
        }
    }
    let squaring = &schema["properties"]["squaring"];
    for key in file["squaring"].as_object().unwrap().keys() {
        assert!(squaring["properties"][key.as_str()].is_object(), "{key}");
    }
}
