use std::collections::BTreeMap;

use cook_model::cook::{Entry, EntryId, Problem, What};
use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::parts::Heading;
use crate::{describe, say, show};

/// So many entries are shown at first: a day's log of twenty pieces takes a plain phone half a
/// second to draw.
const LATEST: usize = 50;

/// The entries of the cook, the latest first, each to be undone or brought back.
#[component]
pub fn CookLog() -> impl IntoView {
    let cook = open_cook();
    let log = cook.log();
    let undone = Memo::new(move |_| log.read().undone_by());
    let ignored = Memo::new(move |_| {
        let ignored = &cook.state().read().ignored;
        ignored.iter().map(|one| (one.entry, one.why)).collect::<BTreeMap<_, _>>()
    });
    let all = RwSignal::new(false);
    let is_told = |entry: &&Entry| !matches!(entry.what, What::Undone { .. });
    let count = Memo::new(move |_| log.read().entries().iter().filter(is_told).count());
    let shown = move || {
        let most = if all.get() { usize::MAX } else { LATEST };
        let log = log.read();
        log.entries().iter().rev().filter(is_told).take(most).cloned().collect::<Vec<Entry>>()
    };
    let set_aside = move || log.read().set_aside().to_vec();
    view! {
        <section class="screen cook-log">
            <Heading text=Signal::derive(|| say!("log-title")) />
            <Show when=move || log.read().entries().is_empty()>
                <p class="lead">{move || say!("log-empty")}</p>
            </Show>
            <ol class="rows entries">
                <For each=shown key=|entry| entry.id let:entry>
                    <EntryRow entry=entry undone=undone ignored=ignored />
                </For>
            </ol>
            <Show when=move || !all.get() && (count.get() > LATEST)>
                <button class="second-action" on:click=move |_| all.set(true)>
                    {move || say!("log-show-all", count = count.get())}
                </button>
            </Show>
            <Show when=move || !log.read().set_aside().is_empty()>
                <h2>{move || say!("log-set-aside-title")}</h2>
                <p>{move || say!("log-set-aside-lead")}</p>
                <ul class="rows set-aside">
                    {move || {
                        set_aside()
                            .into_iter()
                            .map(|one| view! { <li><p>{one.why}</p><code>{one.text}</code></li> })
                            .collect_view()
                    }}
                </ul>
            </Show>
        </section>
    }
}

/// One entry.
#[component]
fn EntryRow(
    /// The entry.
    entry: Entry,
    /// Undone entries, each with the entry that undid it.
    undone: Memo<BTreeMap<EntryId, EntryId>>,
    /// Entries that changed nothing, and why.
    ignored: Memo<BTreeMap<EntryId, Problem>>,
) -> impl IntoView {
    let cook = open_cook();
    let id = entry.id;
    let at = entry.happened;
    let words =
        Memo::new(move |_| describe::entry(&cook.log().read(), &cook.state().read(), &entry));
    let undoing = move || undone.read().get(&id).copied();
    let note = move || {
        if undoing().is_some() {
            return Some(say!("log-undone"));
        }
        let why = ignored.read().get(&id).copied()?;
        Some(say!("log-ignored", why = describe::problem(why)))
    };
    let label = move || match undoing() {
        Some(_) => say!("log-bring-back", what = words.get()),
        None => say!("log-undo", what = words.get()),
    };
    view! {
        <li class:undone=move || undoing().is_some()>
            <span class="time">{move || show::clock(at)}</span>
            <span class="facts">
                <span class="what">{move || words.get()}</span>
                <span class="note">{note}</span>
            </span>
            <button
                class="small"
                aria-label=label
                on:click=move |_| {
                    let entry = undone.get_untracked().get(&id).copied().unwrap_or(id);
                    cook.record(What::Undone { entry });
                }
            >
                {move || {
                    if undoing().is_some() { say!("log-bring-back-short") } else { say!("undo") }
                }}
            </button>
        </li>
    }
}
