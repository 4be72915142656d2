//! Values worked out from others and kept until these change.

use core::any::Any;
use core::marker::PhantomData;
use core::ops::Deref;
use std::sync::Arc;

use leptos::prelude::*;

/// What Leptos' [`Memo`] is, a value that tells its readers only of true changes; but one memo in
/// the compiled program for all types, where each type would have had a copy of its own.
pub struct Derived<T> {
    memo: Memo<Kept>,
    of: PhantomData<fn() -> T>,
}

/// A value of any type that knows how to compare itself.
#[derive(Clone)]
struct Kept {
    value: Arc<dyn Any + Send + Sync>,
    equals: fn(&dyn Any, &dyn Any) -> bool,
}

impl PartialEq for Kept {
    fn eq(&self, other: &Self) -> bool {
        (self.equals)(&*self.value, &*other.value)
    }
}

impl<T> Clone for Derived<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T> Copy for Derived<T> {}

impl<T: PartialEq + Send + Sync + 'static> Derived<T> {
    /// Works the value out, and again when something that `work` reads has changed and somebody
    /// asks for it.
    pub fn new(work: impl Fn() -> T + Send + Sync + 'static) -> Self {
        let keep = move || Kept { value: Arc::new(work()), equals: equals::<T> };
        Self { memo: keep_fresh(Box::new(keep)), of: PhantomData }
    }

    /// The value, without a copy of it. Reactive.
    pub fn read(self) -> Held<T> {
        Held::of(self.memo.get())
    }

    /// The value as it is now, without following it.
    pub fn read_untracked(self) -> Held<T> {
        Held::of(self.memo.get_untracked())
    }

    /// Follows the value without reading it.
    pub fn track(self) {
        self.memo.track();
    }
}

impl<T: Clone + PartialEq + Send + Sync + 'static> Derived<T> {
    /// A copy of the value. Reactive.
    pub fn get(self) -> T {
        T::clone(&self.read())
    }

    /// A copy of the value as it is now, without following it.
    pub fn get_untracked(self) -> T {
        T::clone(&self.read_untracked())
    }
}

fn keep_fresh(keep: Box<dyn Fn() -> Kept + Send + Sync>) -> Memo<Kept> {
    Memo::new(move |_| keep())
}

fn equals<T: PartialEq + 'static>(one: &dyn Any, other: &dyn Any) -> bool {
    one.downcast_ref::<T>() == other.downcast_ref::<T>()
}

/// A derived value in one's hand: it stays as it was when it was read.
pub struct Held<T>(Arc<T>);

impl<T: Send + Sync + 'static> Held<T> {
    fn of(kept: Kept) -> Self {
        Self(kept.value.downcast().expect("a derived value keeps the type it was made with"))
    }
}

impl<T> Deref for Held<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}
