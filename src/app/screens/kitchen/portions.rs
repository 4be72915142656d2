use std::collections::BTreeMap;

use cook_model::kitchen::portions::{Allotment, PortionProblem, allot};
use cook_model::piece::PieceId;
use leptos::prelude::*;

use super::lot_card::LotCard;
use super::pack::Pack;
use super::pieces::{PieceButton, Pieces};
use crate::derived::Derived;
use crate::kitchen::{Day, LotDraft, day, open_kitchen};
use crate::open_cook::open_cook;
use crate::parts::{Each, Heading, If};
use crate::say;
use crate::words::wording;

/// The day's cooked pieces, and who gets which.
#[derive(Clone, Copy)]
pub struct Today {
    /// The pieces.
    pub day: Derived<Day>,
    /// Who gets which, or why that cannot be said.
    pub allotment: Derived<Result<Allotment, PortionProblem>>,
}

impl Today {
    /// Follows the open cook and the draft.
    pub fn start() -> Self {
        let (cook, kitchen) = (open_cook(), open_kitchen());
        let day = Derived::new(move || {
            let own = kitchen.state().read().own_loss;
            day(&cook.state().read(), &kitchen.draft().read(), own, cook.now())
        });
        let allotment = Derived::new(move || {
            let draft = kitchen.draft().read();
            let lots: Vec<_> = draft.lots.iter().map(LotDraft::lot).collect();
            let day = day.read();
            let chosen: BTreeMap<PieceId, usize> = draft
                .chosen
                .iter()
                .filter(|(piece, _)| day.piece(*piece).is_some())
                .filter_map(|(piece, key)| {
                    let place = draft.lots.iter().position(|lot| lot.key == *key)?;
                    Some((*piece, place))
                })
                .collect();
            allot(&day.cooked(), &lots, &chosen)
        });
        Self { day, allotment }
    }
}

/// Dinner, lunches, the freezer: which piece goes where, and then into bags.
#[component]
pub fn Portions() -> impl IntoView {
    let (cook, kitchen) = (open_cook(), open_kitchen());
    let draft = kitchen.draft();
    begin(kitchen, untrack(|| cook.id()).map(|id| id.0));
    let today = Today::start();
    let editing = RwSignal::new(None::<u32>);
    let keys =
        Derived::new(move || draft.read().lots.iter().map(|lot| lot.key).collect::<Vec<_>>());
    let left = Derived::new(move || {
        today.allotment.read().as_ref().map(|all| all.left.clone()).unwrap_or_default()
    });
    let problem = move || {
        let problem = today.allotment.get().err()?;
        Some(match problem {
            PortionProblem::NoLots => say!("portions-no-lots"),
            PortionProblem::TooMany => say!("portions-too-many"),
            _ => say!("portions-bad-weight"),
        })
    };
    let add = move |_| {
        let key = draft.read_untracked().fresh_key();
        let lot = LotDraft::rest(key, say!("portions-new-name"));
        draft.update(|draft| draft.lots.push(lot));
        editing.set(Some(key));
    };
    view! {
        <section class="screen portions">
            <Heading text=wording("portions-title") />
            <Pieces today=today />
            <If holds=move || !today.day.read().pieces.is_empty()>
                <p class="hint">{wording("portions-tap-hint")}</p>
            </If>
            <Each each=move || keys.get() key=|key| *key let:key>
                <LotCard key=key today=today editing=editing />
            </Each>
            <If holds=move || !today.day.read().pieces.is_empty()>
                <p class="hint">{wording("portions-source")}</p>
            </If>
            <If holds=move || !left.read().is_empty()>
                <h2>{wording("portions-left")}</h2>
                <div class="piece-buttons">
                    <Each each=move || left.get() key=|id| *id let:id>
                        <PieceButton piece=id from=None today=today />
                    </Each>
                </div>
            </If>
            <p class="bad" role="alert">
                {move || problem()}
            </p>
            <button class="second-action" on:click=add>
                {wording("portions-add")}
            </button>
            <If holds=move || !draft.read().chosen.is_empty()>
                <button
                    class="second-action"
                    on:click=move |_| draft.update(|draft| draft.chosen.clear())
                >
                    {wording("portions-choose-again")}
                </button>
            </If>
            <Pack today=today />
        </section>
    }
}

/// Another cook's pieces are other pieces; and somebody eats tonight.
fn begin(kitchen: crate::kitchen::OpenKitchen, cook: Option<u64>) {
    let draft = kitchen.draft();
    if draft.read_untracked().cook != cook {
        draft.update(|draft| draft.begin(cook));
    }
    if draft.read_untracked().lots.is_empty() {
        let dinner = LotDraft::dinner(1, say!("portions-dinner-name"));
        let rest = LotDraft::rest(2, say!("portions-rest-name"));
        draft.update(|draft| draft.lots = vec![dinner, rest]);
    }
}
