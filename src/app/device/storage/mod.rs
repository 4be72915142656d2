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
use std::rc::Rc;

use cook_model::cook::EntryId;
use cook_model::cook::alarms::AlarmId;
use cook_model::cook::heal::{Stored, heal};
use cook_model::cook::ringing::{Mark, Marks};
use cook_model::quantity::Moment;
use serde::{Deserialize, Serialize};
use wasm_bindgen_futures::spawn_local;

use super::{clock, identity};
use announce::Announcer;
use database::LogDatabase;
pub use problem::Trouble;
use second_copy::Listing;

/// Names a cook: the millisecond it was set up, and ten bits of chance, so that two phones do not
/// draw the same. Below 2^53.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
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
    /// A [`Trouble`] if the browser does not give it. The app then goes on with
    /// [`Store::without_database`].
    pub async fn open() -> Result<Self, Trouble> {
        let database = LogDatabase::open().await?;
        Ok(Self::with(Some(Rc::new(database))))
    }

    /// A store for when [`Store::open`] failed: it has the second copy only. Each
    /// [`Store::append`] tries the database again.
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
    /// A [`Trouble`] if the database cannot be read.
    pub async fn cooks(&self) -> Result<Vec<CookSummary>, Trouble> {
        let mut cooks = Listing::now().cooks();
        if self.has_database() {
            let stored = self.database().await?.cooks().await?;
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
    /// A [`Trouble`] if the database cannot be read.
    pub async fn load(&self, cook: CookId) -> Result<Vec<String>, Trouble> {
        if !self.has_database() {
            return Ok(Listing::now().texts(cook).into_values().collect());
        }
        let database = self.database().await?;
        let second = Listing::now();
        for other in second.cooks().into_keys() {
            let drops = cook != KITCHEN && other != KITCHEN && other != cook;
            if drops && heal_cook(&database, &Listing::now(), other).await.is_ok() {
                second_copy::drop_cook(other);
            }
        }
        heal_cook(&database, &second, cook).await
    }

    /// The stored texts of one cook, left as they are.
    ///
    /// # Errors
    /// A [`Trouble`] if the database cannot be read.
    pub async fn peek(&self, cook: CookId) -> Result<Vec<String>, Trouble> {
        let second = Listing::now().texts(cook);
        if !self.has_database() {
            return Ok(second.into_values().collect());
        }
        let first = self.database().await?.texts(cook).await?;
        Ok(heal(&first, &second).texts)
    }

    /// Puts the entries of one tap into the second copy, at once; false if the browser refused any.
    pub fn keep_second(of: CookId, texts: &[(EntryId, String)]) -> bool {
        // Each is put there, also after one that was refused.
        texts.iter().filter(|(id, text)| !second_copy::set(of, *id, text)).count() == 0
    }

    /// Stores the entries of one tap, all or none. Returns when they are on the disk: only then may
    /// the tap be acknowledged as stored. To store them again changes nothing.
    ///
    /// # Errors
    /// A [`Trouble`]; the caller keeps the entries and tells the person.
    pub async fn append(&self, of: CookId, texts: &[(EntryId, String)]) -> Result<(), Trouble> {
        self.add(of, texts).await?;
        texts.iter().for_each(|(_, text)| self.0.windows.tell(of, text));
        self.ask_for_persistence();
        Ok(())
    }

    /// Calls this with the text of each entry that another window has stored. A window that was
    /// frozen may miss some: load the cook again when it comes to the front.
    pub fn follow(&self, stored: impl Fn(CookId, String) + 'static) {
        self.0.windows.follow(stored);
    }

    /// What this phone remembers of the alarms of one cook.
    ///
    /// # Errors
    /// A [`Trouble`] if the database cannot be read.
    pub async fn marks(&self, cook: CookId) -> Result<Marks, Trouble> {
        Ok(self.database().await?.marks(cook).await?)
    }

    /// Changes what is remembered of one alarm, no other window coming between reading and
    /// writing. Returns what is remembered afterwards, and whether that is new.
    ///
    /// # Errors
    /// A [`Trouble`] if the database cannot be read or written.
    pub async fn change_mark(
        &self,
        cook: CookId,
        id: AlarmId,
        change: impl FnOnce(Option<Mark>) -> Option<Mark>,
    ) -> Result<(Option<Mark>, bool), Trouble> {
        let database = self.database().await?;
        Ok(database.change_mark(cook, id, change).await?)
    }

    async fn add(&self, of: CookId, texts: &[(EntryId, String)]) -> Result<(), Trouble> {
        let database = self.database().await?;
        let Err(trouble) = database.add(of, texts).await else { return Ok(()) };
        if database.is_replaced() {
            return Err(Trouble::Replaced);
        }
        if trouble == Trouble::Taken {
            return Err(trouble);
        }
        // Browsers drop the connection now and then, above all after sleep: one more try.
        self.0.database.replace(None);
        self.database().await?.add(of, texts).await
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
async fn heal_cook(
    database: &LogDatabase,
    second: &Listing,
    cook: CookId,
) -> Result<Vec<String>, Trouble> {
    let first: Stored = database.texts(cook).await?;
    let aside = database.aside(cook).await?;
    let healed = heal(&first, &second.texts(cook));
    if !healed.first.is_empty() {
        database.repair(cook, &healed.first).await?;
    }
    second_copy::repair(cook, &healed.second);
    let mut texts = healed.texts;
    texts.extend(aside);
    Ok(texts)
}
