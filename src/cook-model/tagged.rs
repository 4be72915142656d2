//! Enums that are stored as their fields with their `kind` among them:
//! `{"kind":"put_on","piece":3}`.
//!
//! Serde can do this by itself (`tag = "kind"`), but then reads every such enum through a form in
//! between, with a copy of its reader for each type within: a third of a megabyte of program. Going
//! by way of JSON values, all of them share one reader.

use serde_json::{Error, Map, Value};

/// The name of the field that says which variant it is.
const KIND: &str = "kind";

/// From `{"put_on":{"piece":3}}`, as serde derives it, to the stored form.
pub(crate) fn with_kind(derived: Value) -> Value {
    let mut fields = Map::new();
    match derived {
        Value::String(kind) => {
            fields.insert(KIND.to_owned(), Value::String(kind));
        }
        Value::Object(outer) => {
            for (kind, inner) in outer {
                fields.insert(KIND.to_owned(), Value::String(kind));
                if let Value::Object(inner) = inner {
                    fields.extend(inner);
                }
            }
        }
        other => return other,
    }
    Value::Object(fields)
}

/// From the stored form to the one that serde's derived readers take, and to the enum.
///
/// # Errors
/// What is missing or not known.
pub(crate) fn read<T>(stored: Value, derived: fn(Value) -> Result<T, Error>) -> Result<T, Error> {
    let (kind, fields) = split(stored)?;
    // A variant without fields is derived as its bare name.
    let bare = fields.is_empty().then(|| Value::String(kind.clone()));
    let whole = derived(Value::Object(Map::from_iter([(kind, Value::Object(fields))])));
    match bare {
        Some(bare) => whole.or_else(|_| derived(bare)),
        None => whole,
    }
}

fn split(stored: Value) -> Result<(String, Map<String, Value>), Error> {
    let Value::Object(mut fields) = stored else {
        return Err(serde::de::Error::custom("an object with a `kind` is expected"));
    };
    match fields.shift_remove(KIND) {
        Some(Value::String(kind)) => Ok((kind, fields)),
        _ => Err(serde::de::Error::missing_field(KIND)),
    }
}

/// Writes and reads an enum in the stored form. It derives `Serialize` and `Deserialize` with
/// `#[serde(remote = "Self")]`, which makes functions of its own of them.
macro_rules! stored_with_kind {
    ($name:ty) => {
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                let derived = <$name>::serialize(self, serde_json::value::Serializer)
                    .map_err(serde::ser::Error::custom)?;
                serde::Serialize::serialize(&$crate::tagged::with_kind(derived), serializer)
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let stored = <serde_json::Value as serde::Deserialize>::deserialize(deserializer)?;
                $crate::tagged::read(stored, |derived| <$name>::deserialize(derived))
                    .map_err(serde::de::Error::custom)
            }
        }
    };
}

pub(crate) use stored_with_kind;
