//! Parts of a screen that are there for some of the time, and lists. Leptos has such components
//! too, but compiles them anew for each place of use; these are in the program once.

use core::hash::{BuildHasher, BuildHasherDefault, Hash};
use std::hash::DefaultHasher;

use leptos::children::ViewFn;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::getter::Getter;

/// Shows its children while a condition holds, and else something other or nothing.
#[component]
pub fn If(
    /// The condition. Reactive.
    #[prop(into)]
    holds: Getter<bool>,
    /// What is there while it holds.
    children: ChildrenFn,
    /// What is there while it does not.
    #[prop(optional, into)]
    otherwise: ViewFn,
) -> impl IntoView {
    let holds = Derived::new(move || holds.get());
    move || if holds.get() { children() } else { otherwise.run() }
}

/// A list whose parts stay as they are, by their keys, when others come, go or move.
#[component]
pub fn Each<T: Send + 'static, K: Hash, V: IntoView + 'static>(
    /// What there is a part for, in order. Reactive.
    each: impl Fn() -> Vec<T> + Send + Sync + 'static,
    /// Tells one from the others.
    key: impl Fn(&T) -> K + Send + Sync + 'static,
    /// How one is drawn, the first time it is there.
    children: impl Fn(T) -> V + Clone + Send + Sync + 'static,
) -> impl IntoView {
    let rows = move || {
        let row = |one: T| {
            let (key, children) = (hash(key(&one)), children.clone());
            Row { key, view: Box::new(move || children(one).into_any()) }
        };
        each().into_iter().map(row).collect::<Vec<_>>()
    };
    view! { <Rows each=rows /> }
}

struct Row {
    key: u64,
    view: Box<dyn FnOnce() -> AnyView + Send>,
}

fn hash(key: impl Hash) -> u64 {
    BuildHasherDefault::<DefaultHasher>::default().hash_one(key)
}

/// The part that is one for all types.
#[component]
fn Rows(#[prop(into)] each: Getter<Vec<Row>>) -> impl IntoView {
    view! { <For each=move || each.get() key=|row| row.key children=|row: Row| (row.view)() /> }
}
