//! Each piece's core over time: how far it is, and how sure the forecast.

use cook_model::history::PieceHistory;
use cook_model::piece::PieceId;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::open_cook::open_cook;
use crate::parts::{BackToCook, Choice, Curve, Each, Heading, If, PitCurve, Zoom};
use crate::words::wording;
use crate::{say, show};

/// Each piece's core over time, in pull order, and the pit's readings below.
#[component]
pub fn Curves() -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let zoom = RwSignal::new(Zoom::Whole);
    let order = Derived::new(move || {
        let (state, forecast) = (state.read(), cook.forecast().read());
        let mut pieces: Vec<PieceId> = forecast.order.clone();
        let others = state.history.pieces.iter().map(|piece| piece.id);
        pieces.extend(others.filter(|id| !forecast.order.contains(id)));
        pieces.retain(|id| state.history.piece(*id).is_some_and(|piece| piece.on().is_some()));
        pieces
    });
    // Only what is still on the pit can be the next to come off.
    let next = Derived::new(move || {
        let state = state.read();
        let is_on = |id: &&PieceId| state.history.piece(**id).is_some_and(PieceHistory::is_on);
        order.read().iter().find(is_on).copied()
    });
    let pit = move || {
        let state = state.read();
        let from = state.history.first_on()?;
        Some(view! { <PitCurve pit=state.history.pit.clone() from=from now=cook.now() /> })
    };
    let zooms = vec![
        (Zoom::Whole, wording("zoom-whole")),
        (Zoom::Hour, wording("zoom-hour")),
        (Zoom::HalfHour, wording("zoom-half-hour")),
    ];
    view! {
        <section class="screen curves">
            <header class="top">
                <BackToCook />
                <Heading text=wording("curves-title") />
            </header>
            <Choice
                name="zoom"
                label=wording("zoom")
                options=zooms
                chosen=zoom
                on_choose=move |chosen| zoom.set(chosen)
                quiet=true
            />
            <If holds=move || order.read().is_empty()>
                <p class="lead">{wording("curves-none")}</p>
            </If>
            <div class="rows">
                <Each each=move || order.get() key=|id| *id let:id>
                    <section class="card" class:is-next=move || next.get() == Some(id)>
                        <h2>
                            {move || show::piece(&state.read(), id)}
                            {move || (next.get() == Some(id)).then(|| say!("curves-next"))}
                        </h2>
                        {move || {
                            let history = state.read().history.piece(id).cloned()?;
                            let forecast = cook.forecast().read().piece(id).cloned()?;
                            Some(
                                view! {
                                    <Curve
                                        history=history
                                        forecast=forecast
                                        now=cook.now()
                                        zoom=zoom.get()
                                    />
                                },
                            )
                        }}
                    </section>
                </Each>
                <If holds=move || !order.read().is_empty()>
                    <section class="card">
                        <h2>{wording("pad-title-pit")}</h2>
                        {move || pit()}
                    </section>
                </If>
            </div>
        </section>
    }
}
