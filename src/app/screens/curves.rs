use cook_model::piece::PieceId;
use leptos::prelude::*;

use crate::open_cook::open_cook;
use crate::parts::{BackToCook, Choice, Curve, Heading, PitCurve, Zoom};
use crate::{say, show};

/// Each piece's core over time, in pull order, and the pit's readings below.
#[component]
pub fn Curves() -> impl IntoView {
    let cook = open_cook();
    let state = cook.state();
    let zoom = RwSignal::new(Zoom::Whole);
    let order = Memo::new(move |_| {
        let (state, forecast) = (state.read(), cook.forecast().read());
        let mut pieces: Vec<PieceId> = forecast.order.clone();
        let others = state.history.pieces.iter().map(|piece| piece.id);
        pieces.extend(others.filter(|id| !forecast.order.contains(id)));
        pieces.retain(|id| state.history.piece(*id).is_some_and(|piece| piece.on().is_some()));
        pieces
    });
    let next = move || order.read().first().copied();
    let pit = move || {
        let state = state.read();
        let from = state.history.first_on()?;
        Some(view! { <PitCurve pit=state.history.pit.clone() from=from now=cook.now() /> })
    };
    let zooms = vec![
        (Zoom::Whole, Signal::derive(|| say!("zoom-whole"))),
        (Zoom::Hour, Signal::derive(|| say!("zoom-hour"))),
        (Zoom::HalfHour, Signal::derive(|| say!("zoom-half-hour"))),
    ];
    view! {
        <section class="screen curves">
            <header class="top">
                <BackToCook />
                <Heading text=Signal::derive(|| say!("curves-title")) />
            </header>
            <Choice
                name="zoom"
                label=Signal::derive(|| say!("zoom"))
                options=zooms
                chosen=zoom
                on_choose=move |chosen| zoom.set(chosen)
                quiet=true
            />
            <Show when=move || order.read().is_empty()>
                <p class="lead">{move || say!("curves-none")}</p>
            </Show>
            <div class="rows">
                <For each=move || order.get() key=|id| *id let:id>
                    <section class="card" class:is-next=move || next() == Some(id)>
                        <h2>
                            {move || show::piece(&state.read(), id)}
                            {move || (next() == Some(id)).then(|| say!("curves-next"))}
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
                </For>
                <Show when=move || !order.read().is_empty()>
                    <section class="card">
                        <h2>{move || say!("pad-title-pit")}</h2>
                        {pit}
                    </section>
                </Show>
            </div>
        </section>
    }
}
