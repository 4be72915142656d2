//! All bags as one file, out and in: they outlast the patience of a browser, and the phone itself.

use cook_model::kitchen::log::export::{export, import};
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::chosen_file::chosen_file;
use crate::device::files::{self, JSON};
use crate::device::storage::persistence;
use crate::device::{clock, feature};
use crate::kitchen::open_kitchen;
use crate::parts::If;
use crate::words::wording;
use crate::{describe, say};

/// What may become of the bags' records here, and the file that keeps them.
#[component]
pub fn BagFile(
    /// Whether there are any bags.
    some: Signal<bool>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let kept =
        LocalResource::new(|| async { feature::is_installed() || persistence::granted().await });
    let said = RwSignal::new(None::<String>);
    let save = move |_| {
        let name = format!("pull-order-bags-{}.json", clock::now().format("%Y-%m-%d"));
        let text = export(&kitchen.log().read_untracked());
        spawn_local(async move {
            said.set(describe::handed(files::hand_over(&name, JSON, &text).await, &name));
        });
    };
    let open = move |_| {
        spawn_local(async move {
            match chosen_file(import, wording("file-no-bags")).await {
                Ok(None) => {}
                Ok(Some(log)) => {
                    kitchen.take_in(&log);
                    said.set(Some(say!("bags-taken-in")));
                }
                Err(why) => said.set(Some(why)),
            }
        });
    };
    view! {
        <If holds=move || some.get() && kept.get() == Some(false)>
            <p class="caution">{wording("kitchen-may-be-deleted")}</p>
        </If>
        <ul class="rows">
            <If holds=move || some.get()>
                <li>
                    <button class="row" on:click=save>
                        {wording("bags-save")}
                    </button>
                </li>
            </If>
            <li>
                <button class="row" on:click=open>
                    {wording("bags-open")}
                </button>
            </li>
        </ul>
        <p role="status">{move || said.get()}</p>
    }
}
