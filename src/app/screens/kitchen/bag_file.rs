//! All bags as one file, out and in: they outlast the patience of a browser, and the phone itself.

use cook_model::kitchen::log::export::{export, import};
use leptos::prelude::*;

use crate::device::storage::persistence;
use crate::device::{clock, feature};
use crate::getter::Getter;
use crate::kitchen::open_kitchen;
use crate::parts::{FileRows, If};
use crate::say;
use crate::words::wording;

/// What may become of the bags' records here, and the file that keeps them.
#[component]
pub fn BagFile(
    /// Whether there are any bags.
    #[prop(into)]
    some: Getter<bool>,
) -> impl IntoView {
    let kitchen = open_kitchen();
    let kept =
        LocalResource::new(|| async { feature::is_installed() || persistence::granted().await });
    let file = move |()| {
        let name = format!("pull-order-bags-{}.json", clock::now().format("%Y-%m-%d"));
        (name, export(&kitchen.log().read_untracked()))
    };
    let take_in = move |text: String| {
        import(&text).map(|log| {
            kitchen.take_in(&log);
            Some(say!("bags-taken-in"))
        })
    };
    let any = some.clone();
    view! {
        <If holds=move || any.get() && kept.get() == Some(false)>
            <p class="caution">{wording("kitchen-may-be-deleted")}</p>
        </If>
        <FileRows
            some=some
            save=wording("bags-save")
            open=wording("bags-open")
            not_ours=wording("file-no-bags")
            file=Callback::new(file)
            take_in=Callback::new(take_in)
        />
    }
}
