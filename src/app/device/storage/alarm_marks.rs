//! What this phone remembers of the alarms that rang, in the store `alarms`.

use cook_model::cook::alarms::AlarmId;
use cook_model::cook::ringing::{Mark, Marks};
use indexed_db_futures::error::Error;
use indexed_db_futures::prelude::*;
use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};

use super::CookId;
use super::database::{LogDatabase, all_of, number, to_text};

/// The store's name.
pub const ALARMS: &str = "alarms";

impl LogDatabase {
    /// What is remembered of the alarms of one cook.
    pub async fn marks(&self, cook: CookId) -> Result<Marks, Error> {
        let transaction = self.read(ALARMS)?;
        let store = transaction.object_store(ALARMS)?;
        let keys = store.get_all_keys().with_query::<JsValue, _>(all_of(cook)).primitive()?;
        let values = store.get_all().with_query::<JsValue, _>(all_of(cook)).primitive()?;
        let (keys, values) = (keys.await?, values.await?);
        let mut marks = Marks::new();
        for (key, value) in keys.zip(values) {
            if let (Some(id), Some(mark)) = (read_key(&key?), read_mark(&value?)) {
                marks.insert(id, mark);
            }
        }
        Ok(marks)
    }

    /// Reads a mark and writes what is to take its place, if anything is, in one transaction: of
    /// two windows that want to ring the same alarm only one finds it not yet rung. Returns what is
    /// remembered afterwards, and whether that is new.
    pub async fn change_mark(
        &self,
        cook: CookId,
        id: AlarmId,
        change: impl FnOnce(Option<Mark>) -> Option<Mark>,
    ) -> Result<(Option<Mark>, bool), Error> {
        let transaction = self.write(&[ALARMS])?;
        let store = transaction.object_store(ALARMS)?;
        let key = key(cook, id);
        let found: Option<JsValue> = store.get(key.clone()).primitive()?.await?;
        let found = found.as_ref().and_then(read_mark);
        let changed = change(found);
        if let Some(mark) = changed {
            let text = serde_json::to_string(&mark).unwrap_or_default();
            store.put(text).with_key(key).primitive()?.await?;
        }
        transaction.commit().await?;
        Ok((changed.or(found), changed.is_some()))
    }
}

fn key(cook: CookId, id: AlarmId) -> JsValue {
    let name = serde_json::to_string(&id).unwrap_or_default();
    Array::of2(&number(cook.0), &name.into()).into()
}

fn read_key(key: &JsValue) -> Option<AlarmId> {
    let name = key.dyn_ref::<Array>()?.get(1).as_string()?;
    serde_json::from_str(&name).ok()
}

fn read_mark(value: &JsValue) -> Option<Mark> {
    serde_json::from_str(&to_text(value)).ok()
}
