//! How a piece is cut and thawed.

use cook_model::piece::Shape;
use leptos::prelude::*;

use crate::parts::Choice;
use crate::say;
use crate::words::wording;

/// How a piece is cut and thawed: most are as most are, so it is folded away, in one line.
#[component]
pub fn PieceKind(
    /// Name the two choices on the page; unique there.
    names: [&'static str; 2],
    /// How it is cut.
    shape: RwSignal<Shape>,
    /// Whether its middle is still icy.
    icy: RwSignal<bool>,
) -> impl IntoView {
    let [shape_name, middle_name] = names;
    let shape_words = move || match shape.get() {
        Shape::Natural => say!("shape-natural"),
        Shape::Even => say!("shape-even"),
        Shape::Thick => say!("shape-thick"),
    };
    let middle_words = move || if icy.get() { say!("middle-icy") } else { say!("middle-thawed") };
    let shapes = vec![
        (Shape::Natural, wording("shape-natural")),
        (Shape::Even, wording("shape-even")),
        (Shape::Thick, wording("shape-thick")),
    ];
    let middles = vec![(false, wording("middle-thawed")), (true, wording("middle-icy"))];
    view! {
        <details class="kind">
            <summary>
                <span>{wording("set-out-kind")}</span>
                <strong>{move || format!("{}, {}", shape_words(), middle_words())}</strong>
            </summary>
            <Choice
                name=shape_name
                label=wording("set-out-shape")
                options=shapes
                chosen=shape
                on_choose=move |chosen| shape.set(chosen)
            />
            <Choice
                name=middle_name
                label=wording("set-out-middle")
                options=middles
                chosen=icy
                on_choose=move |chosen| icy.set(chosen)
            />
        </details>
    }
}
