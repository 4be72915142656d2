//! The log: what was told, the latest first, each entry to be undone or mended.

use std::collections::BTreeMap;

use cook_model::cook::{Entry, EntryId, Problem, What};
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use crate::derived::Derived;
use crate::getter::Getter;
use crate::open_cook::open_cook;
use crate::parts::{Each, Heading, If, Mending, SetAsideRow, TellLate};
use crate::words::wording;
use crate::{describe, say, show, tap_words};

/// So many entries are shown at first: a day's log of twenty pieces takes a plain phone half a
/// second to draw.
const LATEST: usize = 50;

/// The entries of the cook, the latest first, each to be undone or brought back.
#[component]
pub fn CookLog() -> impl IntoView {
    let cook = open_cook();
    let log = cook.log();
    let undone = Derived::new(move || log.read().undone_by());
    let ignored = Derived::new(move || {
        let ignored = &cook.state().read().ignored;
        ignored.iter().map(|one| (one.entry, one.why)).collect::<BTreeMap<_, _>>()
    });
    let all = RwSignal::new(false);
    let late = RwSignal::new(false);
    let is_told = |entry: &&Entry| !matches!(entry.what, What::Undone { .. });
    let count = Derived::new(move || log.read().entries().iter().filter(is_told).count());
    let shown = move || {
        let most = if all.get() { usize::MAX } else { LATEST };
        let log = log.read();
        log.entries().iter().rev().filter(is_told).take(most).cloned().collect::<Vec<Entry>>()
    };
    let rows = NodeRef::<html::Ol>::new();
    let show_all = move |_| {
        all.set(true);
        // The button goes, and would take a keyboard's place with it.
        request_animation_frame(move || _ = focus_row(rows, LATEST + 1));
    };
    let back = |what: String| say!("log-back", what = what);
    let forward = |what: String| say!("log-forward", what = what);
    let set_aside = move || log.read().set_aside().to_vec();
    view! {
        <section class="screen cook-log">
            <Heading text=wording("log-title") />
            <div class="pair">
                <Walk what=move || cook.journal().before() words=back on_walk=move |()| cook.undo() />
                <Walk what=move || cook.journal().after() words=forward on_walk=move |()| cook.redo() />
            </div>
            <If holds=move || log.read().entries().is_empty()>
                <p class="lead">{wording("log-empty")}</p>
            </If>
            <If
                holds=move || late.get()
                otherwise=move || {
                    view! {
                        <button class="second-action" on:click=move |_| late.set(true)>
                            {wording("forgotten")}
                        </button>
                    }
                }
            >
                <TellLate on_end=move |()| late.set(false) />
            </If>
            <ol class="rows entries" node_ref=rows>
                <Each each=shown key=|entry| entry.id let:entry>
                    <EntryRow entry=entry undone=undone ignored=ignored />
                </Each>
            </ol>
            <If holds=move || !all.get() && (count.get() > LATEST)>
                <button class="second-action" on:click=show_all>
                    {move || say!("log-show-all", count = count.get())}
                </button>
            </If>
            <If holds=move || !log.read().set_aside().is_empty()>
                <h2>{wording("log-set-aside-title")}</h2>
                <p>{wording("log-set-aside-lead")}</p>
                <ul class="rows set-aside">
                    {move || {
                        set_aside()
                            .into_iter()
                            .map(|one| view! { <SetAsideRow one=one /> })
                            .collect_view()
                    }}
                </ul>
            </If>
        </section>
    }
}

/// One step through what was tapped, if there is one to take.
#[component]
fn Walk(
    /// What it takes or gives.
    #[prop(into)]
    what: Getter<Option<String>>,
    /// What the button says of that.
    words: fn(String) -> String,
    /// Takes the step.
    #[prop(into)]
    on_walk: Callback<()>,
) -> impl IntoView {
    let there = what.clone();
    view! {
        <If holds=move || there.get().is_some()>
            <button class="second-action" on:click=move |_| on_walk.run(())>
                {
                    let what = what.clone();
                    move || what.get().map(words)
                }
            </button>
        </If>
    }
}

/// Takes the keyboard to what can be done with a row; rows are counted from one.
fn focus_row(rows: NodeRef<html::Ol>, place: usize) -> Option<()> {
    let button = format!("li:nth-child({place}) button");
    let button = rows.get_untracked()?.query_selector(&button).ok()??;
    button.dyn_into::<HtmlElement>().ok()?.focus().ok()
}

/// One entry in one line; a tap opens it, to be mended or undone.
#[component]
fn EntryRow(
    /// The entry.
    entry: Entry,
    /// Undone entries, each with the entry that undid it.
    undone: Derived<BTreeMap<EntryId, EntryId>>,
    /// Entries that changed nothing, and why.
    ignored: Derived<BTreeMap<EntryId, Problem>>,
) -> impl IntoView {
    let cook = open_cook();
    let id = entry.id;
    let at = entry.happened;
    let mendable = entry.what.can_be_mended();
    let told = StoredValue::new(entry.clone());
    let open = RwSignal::new(false);
    let words =
        Derived::new(move || describe::entry(&cook.log().read(), &cook.state().read(), &entry));
    let undoing = move || undone.read().get(&id).copied();
    let note = move || {
        if undoing().is_some() {
            return Some(say!("log-undone"));
        }
        let why = ignored.read().get(&id).copied()?;
        Some(say!("log-ignored", why = tap_words::problem(why)))
    };
    let label = move || match undoing() {
        Some(_) => say!("log-bring-back", what = words.get()),
        None => say!("log-undo", what = words.get()),
    };
    view! {
        <li class:undone=move || undoing().is_some()>
            <button
                class="entry"
                aria-expanded=move || open.get().to_string()
                on:click=move |_| open.update(|open| *open = !*open)
            >
                <span class="time">{move || show::clock_short(at)}</span>
                " "
                <span class="facts">
                    <span class="what">{move || words.get()}</span>
                    <span class="note">{move || note()}</span>
                </span>
            </button>
            <If holds=move || open.get()>
                <button
                    class="second-action"
                    aria-label=label
                    on:click=move |_| {
                        let entry = undone.get_untracked().get(&id).copied().unwrap_or(id);
                        cook.record(What::Undone { entry });
                        open.set(false);
                    }
                >
                    {move || {
                        if undoing().is_some() {
                            say!("log-bring-back-short")
                        } else {
                            say!("undo")
                        }
                    }}
                </button>
            </If>
            <If holds=move || open.get() && mendable && undoing().is_none()>
                <Mending entry=told.get_value() on_end=move |()| open.set(false) />
            </If>
        </li>
    }
}
