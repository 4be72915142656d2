//! Opens a cook that is stored.

use cook_model::cook::Log;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::app::home;
use crate::device::storage::CookId;
use crate::navigate::Navigation;
use crate::open_cook::OpenCook;

/// Opens a stored cook on the screen it belongs to. The one that was open goes on beside it.
pub fn switch_to(cook: OpenCook, navigation: Navigation, id: CookId) {
    spawn_local(async move {
        let Some(store) = cook.store() else { return };
        match store.load(id).await {
            Ok(texts) => {
                cook.open(id, Log::from_stored(texts.iter().map(String::as_str)));
                navigation.go(home(&cook.state().get_untracked()));
            }
            Err(trouble) => cook.pending().trouble().set(Some(trouble)),
        }
    });
}
