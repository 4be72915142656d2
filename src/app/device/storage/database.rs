//! The log in IndexedDB.
//!
//! The store `log` holds one text an entry under (cook, count, device); the store `aside` holds
//! damaged texts that were written over, under the same and the time at which that was done. The store `alarms` is that of [`super::alarm_marks`]. The
//! database's version counts its stores only: what an entry means is told by the entry itself.

use std::cell::Cell;
use std::rc::Rc;

use cook_model::cook::heal::{Repair, Stored};
use cook_model::cook::{DeviceId, EntryId};
use futures::future::{Either, select};
use gloo_timers::future::TimeoutFuture;
use indexed_db_futures::KeyRange;
use indexed_db_futures::database::Database;
use indexed_db_futures::error::Error;
use indexed_db_futures::prelude::*;
use indexed_db_futures::transaction::{
    Transaction, TransactionDurability, TransactionMode, TransactionOptions,
};
use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};

use super::alarm_marks::ALARMS;
use super::{CookId, Trouble, take_over};

const NAME: &str = "pull-order";
const VERSION: u8 = 1;
const LOG: &str = "log";
const ASIDE: &str = "aside";

/// How long to wait for the database. It answers in milliseconds unless another window holds an
/// older version of it open, or the browser hangs.
const PATIENCE_MS: u32 = 5_000;

/// The open database.
pub struct LogDatabase {
    database: Database,
    replaced: Rc<Cell<bool>>,
}

impl LogDatabase {
    /// Opens the database, making its stores if they are not there yet.
    pub async fn open() -> Result<Self, Trouble> {
        let opening = Database::open(NAME)
            .with_version(VERSION)
            .with_on_blocked(|_| {
                take_over::ask(VERSION);
                Ok(())
            })
            .with_on_upgrade_needed(|_, database| {
                database.create_object_store(LOG).build()?;
                database.create_object_store(ASIDE).build()?;
                database.create_object_store(ALARMS).build()?;
                Ok(())
            })
            .build()?;
        let late = TimeoutFuture::new(PATIENCE_MS);
        match select(Box::pin(opening.into_future()), late).await {
            Either::Left((database, _)) => Ok(Self::opened(database?)),
            Either::Right(_) => Err(Trouble::Busy),
        }
    }

    fn opened(database: Database) -> Self {
        let replaced = Rc::new(Cell::new(false));
        let (held, flag) = (database.clone(), Rc::clone(&replaced));
        take_over::on_asked(VERSION, move || {
            flag.set(true);
            held.clone().close();
        });
        Self { database, replaced }
    }

    /// Whether a newer version of the app has taken the database over.
    pub fn is_replaced(&self) -> bool {
        self.replaced.get()
    }

    /// Adds entries in one transaction, and returns when they are on the disk. One that is there
    /// already is left as it is.
    ///
    /// # Errors
    /// A [`Trouble`], and then none of them was added: [`Trouble::Taken`] if something else lies under
    /// one of the ids.
    pub async fn add(&self, of: CookId, texts: &[(EntryId, String)]) -> Result<(), Trouble> {
        let transaction = self.write(&[LOG])?;
        let log = transaction.object_store(LOG)?;
        for (id, text) in texts {
            let found: Option<JsValue> = log.get(key(of, *id)).primitive()?.await?;
            match found.as_ref().map(to_text) {
                None => drop(log.add(text.as_str()).with_key(key(of, *id)).primitive()?.await?),
                Some(found) if found == *text => {}
                Some(_) => return Err(Trouble::Taken),
            }
        }
        Ok(transaction.commit().await?)
    }

    /// All texts of one cook.
    pub async fn texts(&self, cook: CookId) -> Result<Stored, Error> {
        let transaction = self.read(LOG)?;
        let log = transaction.object_store(LOG)?;
        let keys =
            log.get_all_keys::<JsValue>().with_query::<JsValue, _>(all_of(cook)).primitive()?;
        let values = log.get_all::<JsValue>().with_query::<JsValue, _>(all_of(cook)).primitive()?;
        let (keys, values) = (keys.await?, values.await?);
        let mut texts = Stored::new();
        for (key, value) in keys.zip(values) {
            if let Some((_, id)) = read_key(&key?) {
                texts.insert(id, to_text(&value?));
            }
        }
        Ok(texts)
    }

    /// The damaged texts of one cook that were written over.
    pub async fn aside(&self, cook: CookId) -> Result<Vec<String>, Error> {
        let transaction = self.read(ASIDE)?;
        let aside = transaction.object_store(ASIDE)?;
        let values =
            aside.get_all::<JsValue>().with_query::<JsValue, _>(all_of(cook)).primitive()?.await?;
        values.map(|value| value.map(|value| to_text(&value))).collect()
    }

    /// Each cook's number and how many entries it has.
    pub async fn cooks(&self) -> Result<Vec<(CookId, usize)>, Error> {
        let transaction = self.read(LOG)?;
        let log = transaction.object_store(LOG)?;
        let mut cooks: Vec<(CookId, usize)> = Vec::new();
        for key in log.get_all_keys::<JsValue>().primitive()?.await? {
            let Some((cook, _)) = read_key(&key?) else { continue };
            match cooks.last_mut() {
                // Keys come in order, so those of one cook come together.
                Some((last, count)) if *last == cook => *count += 1,
                _ => cooks.push((cook, 1)),
            }
        }
        Ok(cooks)
    }

    /// Writes over what is missing or damaged, setting aside what was there.
    pub async fn repair(&self, cook: CookId, repairs: &[Repair]) -> Result<(), Error> {
        let transaction = self.write(&[LOG, ASIDE])?;
        let log = transaction.object_store(LOG)?;
        let aside = transaction.object_store(ASIDE)?;
        for repair in repairs {
            let key = key(cook, repair.id);
            if let Some(replaced) = &repair.replaces {
                let key = key.concat(&Array::of1(&js_sys::Date::now().into()));
                aside.put(replaced.as_str()).with_key(JsValue::from(key)).primitive()?.await?;
            }
            log.put(repair.text.as_str()).with_key(JsValue::from(key)).primitive()?.await?;
        }
        transaction.commit().await
    }

    /// A transaction that reads one store.
    pub(super) fn read(&self, store: &str) -> Result<Transaction<'_>, Error> {
        self.database.transaction(store).build()
    }

    /// A transaction that is complete only when it is on the disk.
    pub(super) fn write(&self, stores: &[&str]) -> Result<Transaction<'_>, Error> {
        let strict = TransactionOptions::new().with_durability(TransactionDurability::Strict);
        self.database
            .transaction(stores)
            .with_mode(TransactionMode::Readwrite)
            .with_options(strict)
            .build()
    }
}

fn key(cook: CookId, id: EntryId) -> Array {
    Array::of3(&number(cook.0), &number(id.count), &id.device.0.into())
}

/// From the first to the last possible key of one cook: an array sorts after every number.
pub(super) fn all_of(cook: CookId) -> KeyRange<JsValue> {
    let cook = number(cook.0);
    let end = Array::of2(&cook, &Array::new());
    KeyRange::Bound(Array::of1(&cook).into(), false, end.into(), false)
}

fn read_key(key: &JsValue) -> Option<(CookId, EntryId)> {
    let key = key.dyn_ref::<Array>()?;
    let part = |place| key.get(place).as_f64();
    let device = DeviceId(part(2)? as u32);
    Some((CookId(part(0)? as u64), EntryId { count: part(1)? as u64, device }))
}

/// IndexedDB's keys are JavaScript's numbers, exact to 2^53.
pub(super) fn number(value: u64) -> JsValue {
    (value as f64).into()
}

/// A stored value that is no text is damaged; it is kept as the browser writes it out.
pub(super) fn to_text(value: &JsValue) -> String {
    value.as_string().unwrap_or_else(|| format!("{value:?}"))
}
