//! Where cooks are kept: each entry in IndexedDB before its tap is acknowledged, and those of the
//! open cook in a second place, from which damage is made good.

mod alarm_marks;
mod announce;
mod database;
pub mod persistence;
mod problem;
mod second_copy;
mod take_over;

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;
use std::rc::Rc;

use cook_model::cook::alarms::AlarmId;
use cook_model::cook::heal::{Stored, heal};
use cook_model::cook::ringing::{Mark, Marks};
use cook_model::cook::{Entry, EntryId};
use cook_model::kitchen::log::KitchenEntry;
use cook_model::quantity::Moment;
use indexed_db_futures::error::{DomException, Error};
use wasm_bindgen_futures::spawn_local;

use super::{clock, identity};
use announce::Announcer;
use database::LogDatabase;
pub use problem::{StorageProblem, Trouble};

/// Names a cook: the millisecond it was set up, and ten bits of chance, so that two phones do not
/// draw the same. Below 2^53.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct CookId(pub u64);

impl CookId {
    /// The name of a new cook.
    pub fn fresh() -> Self {
        let millis = clock::now().timestamp_millis().unsigned_abs();
        Self(millis * 1024 + u64::from(identity::random() % 1024))
    }

    /// When the cook was set up.
    pub fn set_up(self) -> Moment {
        Moment::from_timestamp_millis((self.0 / 1024) as i64).unwrap_or_default()
    }
}

/// Under which the kitchen's own log lies: bags outlive every cook, so it is none of them.
pub const KITCHEN: CookId = CookId(0);

/// What is known of a stored cook without reading it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CookSummary {
    /// Which cook.
    pub id: CookId,
    /// How many entries it has.
    pub entries: usize,
}

/// The stored cooks.
#[derive(Clone)]
pub struct Store(Rc<Inner>);

struct Inner {
    database: RefCell<Option<Rc<LogDatabase>>>,
    windows: Announcer,
    persistence_asked: Cell<bool>,
}

impl Store {
    /// Opens the storage.
    ///
    /// # Errors
    /// A [`StorageProblem`] if the browser does not give it. The app then goes on with
    /// [`Store::without_database`].
    pub async fn open() -> Result<Self, StorageProblem> {
        let database = LogDatabase::open().await?;
        Ok(Self::with(Some(Rc::new(database))))
    }

    /// A store for when [`Store::open`] failed: it has the second copy only. Each
    /// [`Store::append`] tries the database again, and fails with `kept` as long as only the
    /// second copy takes the entry.
    pub fn without_database() -> Self {
        Self::with(None)
    }

    fn with(database: Option<Rc<LogDatabase>>) -> Self {
        Self(Rc::new(Inner {
            database: RefCell::new(database),
            windows: Announcer::new(),
            persistence_asked: Cell::new(false),
        }))
    }

    /// All cooks, the latest first.
    ///
    /// # Errors
    /// A [`StorageProblem`] if the database cannot be read.
    pub async fn cooks(&self) -> Result<Vec<CookSummary>, StorageProblem> {
        let mut cooks: BTreeMap<CookId, usize> = second_copy::cooks().into_iter().collect();
        if self.has_database() {
            let stored = self.database().await?.cooks().await.map_err(Trouble::from)?;
            for (id, entries) in stored {
                let most = cooks.entry(id).or_default();
                *most = entries.max(*most);
            }
        }
        cooks.remove(&KITCHEN);
        Ok(cooks.into_iter().rev().map(|(id, entries)| CookSummary { id, entries }).collect())
    }

    /// The stored texts of one cook, for [`cook_model::cook::Log::from_stored`], after each copy
    /// was healed from the other. It becomes the cook that has a second copy; the kitchen keeps its
    /// own besides.
    ///
    /// # Errors
    /// A [`StorageProblem`] if the database cannot be read.
    pub async fn load(&self, cook: CookId) -> Result<Vec<String>, StorageProblem> {
        if !self.has_database() {
            return Ok(second_copy::texts(cook).into_values().collect());
        }
        let database = self.database().await?;
        for (other, _) in second_copy::cooks() {
            let drops = cook != KITCHEN && other != KITCHEN && other != cook;
            if drops && heal_cook(&database, other).await.is_ok() {
                second_copy::drop_cook(other);
            }
        }
        Ok(heal_cook(&database, cook).await?)
    }

    /// Stores one entry. Returns when it is on the disk: only then may its tap be acknowledged.
    ///
    /// # Errors
    /// A [`StorageProblem`]; the caller keeps the entry in memory and tells the person.
    pub async fn append(&self, cook: CookId, entry: &Entry) -> Result<(), StorageProblem> {
        let text =
            serde_json::to_string(entry).map_err(|error| Trouble::Failed(error.to_string()))?;
        self.append_text(cook, entry.id, &text).await
    }

    /// Stores one entry of the kitchen's, as [`Store::append`] does one of a cook's.
    ///
    /// # Errors
    /// A [`StorageProblem`]; the caller keeps the entry in memory and tells the person.
    pub async fn append_to_kitchen(&self, entry: &KitchenEntry) -> Result<(), StorageProblem> {
        let text =
            serde_json::to_string(entry).map_err(|error| Trouble::Failed(error.to_string()))?;
        self.append_text(KITCHEN, entry.id, &text).await
    }

    async fn append_text(
        &self,
        cook: CookId,
        id: EntryId,
        text: &str,
    ) -> Result<(), StorageProblem> {
        let kept = second_copy::set(cook, id, text);
        match self.add(cook, id, text).await {
            Ok(()) => {
                self.0.windows.tell(cook, text);
                self.ask_for_persistence();
                Ok(())
            }
            Err(what) => Err(StorageProblem { what, kept }),
        }
    }

    /// Calls this with the text of each entry that another window has stored. A window that was
    /// frozen may miss some: load the cook again when it comes to the front.
    pub fn follow(&self, stored: impl Fn(CookId, String) + 'static) {
        self.0.windows.follow(stored);
    }

    /// What this phone remembers of the alarms of one cook.
    ///
    /// # Errors
    /// A [`StorageProblem`] if the database cannot be read.
    pub async fn marks(&self, cook: CookId) -> Result<Marks, StorageProblem> {
        Ok(self.database().await?.marks(cook).await.map_err(Trouble::from)?)
    }

    /// Changes what is remembered of one alarm, no other window coming between reading and
    /// writing. Returns what is remembered afterwards, and whether that is new.
    ///
    /// # Errors
    /// A [`StorageProblem`] if the database cannot be read or written.
    pub async fn change_mark(
        &self,
        cook: CookId,
        id: AlarmId,
        change: impl FnOnce(Option<Mark>) -> Option<Mark>,
    ) -> Result<(Option<Mark>, bool), StorageProblem> {
        let database = self.database().await?;
        Ok(database.change_mark(cook, id, change).await.map_err(Trouble::from)?)
    }

    async fn add(&self, cook: CookId, id: EntryId, text: &str) -> Result<(), Trouble> {
        let database = self.database().await?;
        let Err(error) = database.add(cook, id, text).await else { return Ok(()) };
        if database.is_replaced() {
            return Err(Trouble::Replaced);
        }
        if !matches!(error, Error::DomException(DomException::ConstraintError(_))) {
            let what = Trouble::from(error);
            if what == Trouble::Full {
                return Err(what);
            }
            // Browsers drop the connection now and then, above all after sleep: one more try.
            self.0.database.replace(None);
            let database = self.database().await?;
            let Err(_) = database.add(cook, id, text).await else { return Ok(()) };
        }
        // Something lies under this id: this very entry, if an earlier try was stored after all.
        match self.database().await?.get(cook, id).await? {
            Some(found) if found == text => Ok(()),
            Some(_) => Err(Trouble::Taken),
            None => Err(Trouble::Failed("it was not written".to_owned())),
        }
    }

    fn has_database(&self) -> bool {
        self.0.database.borrow().is_some()
    }

    /// The open database, opened again if need be.
    async fn database(&self) -> Result<Rc<LogDatabase>, Trouble> {
        let open = self.0.database.borrow().clone();
        if let Some(database) = open {
            if database.is_replaced() {
                return Err(Trouble::Replaced);
            }
            return Ok(database);
        }
        let database = Rc::new(LogDatabase::open().await?);
        self.0.database.replace(Some(Rc::clone(&database)));
        Ok(database)
    }

    fn ask_for_persistence(&self) {
        if !self.0.persistence_asked.replace(true) {
            spawn_local(async {
                persistence::request().await;
            });
        }
    }
}

/// Makes both copies of a cook whole, and returns all its texts.
async fn heal_cook(database: &LogDatabase, cook: CookId) -> Result<Vec<String>, Trouble> {
    let first: Stored = database.texts(cook).await?;
    let aside = database.aside(cook).await?;
    let healed = heal(&first, &second_copy::texts(cook));
    if !healed.first.is_empty() {
        database.repair(cook, &healed.first).await?;
    }
    second_copy::repair(cook, &healed.second);
    let mut texts = healed.texts;
    texts.extend(aside);
    Ok(texts)
}
