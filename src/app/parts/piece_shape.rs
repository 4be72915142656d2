use cook_model::cook::Stage;
use leptos::prelude::*;

use crate::derived::Derived;
use crate::getter::Getter;

/// The outline of a breast from above, in a box of 48 by 56.
const OUTLINE: &str = "M20 3C33 1 44 9 44 21C44 33 36 41 27 47C21 51 17 54 13 53C8 52 9 46 8 41C6 33 3 28 4 19C5 9 11 4 20 3Z";
/// The height of that box, and the top and bottom of the outline in it.
const BOX_HEIGHT: f64 = 56.0;
const TOP: f64 = 3.0;
const BOTTOM: f64 = 53.0;

/// A piece drawn to its size relative to the largest, filled as far as its core has come on the
/// way from raw to its pull temperature, with its stage marked by shape.
#[component]
pub fn PieceShape(
    /// Its size relative to the largest, from 0 to 1, as the ratio of lengths.
    #[prop(into)]
    size: Getter<f64>,
    /// How far its core has come, from 0 to 1.
    #[prop(into)]
    level: Getter<f64>,
    /// Where it stands.
    #[prop(into)]
    stage: Getter<Stage>,
) -> impl IntoView {
    let stage = Derived::new(move || stage.get());
    let level = Derived::new(move || level.get());
    let surface = move || BOTTOM - (BOTTOM - TOP) * level.get().clamp(0.0, 1.0);
    let place = move || {
        let size = size.get().clamp(0.4, 1.0);
        let (x, y) = (24.0 * (1.0 - size), BOX_HEIGHT * (1.0 - size));
        format!("translate({x:.2} {y:.2}) scale({size:.3})")
    };
    view! {
        <svg class=move || format!("shape {}", stage_name(stage.get())) viewBox="0 0 48 56" aria-hidden="true">
            <g transform=place>
                <path class="ground" d=OUTLINE />
                <svg
                    x="0"
                    width="48"
                    y=move || format!("{:.1}", surface())
                    height=move || format!("{:.1}", BOX_HEIGHT - surface())
                    viewBox=move || format!("0 {:.1} 48 {:.1}", surface(), BOX_HEIGHT - surface())
                >
                    <path class="level" d=OUTLINE />
                </svg>
                <path class="outline" d=OUTLINE />
                {move || match stage.get() {
                    Stage::Resting => {
                        view! { <path class="mark" d="M10 22L17 16L24 22L31 16L38 22" /> }.into_any()
                    }
                    Stage::Proved => {
                        view! { <path class="mark" d="M13 30L21 38L35 21" /> }.into_any()
                    }
                    Stage::Packed => {
                        view! { <path class="mark" d="M12 20H36V40H12ZM12 27H36" /> }.into_any()
                    }
                    Stage::Raw | Stage::On => ().into_any(),
                }}
            </g>
        </svg>
    }
}

/// The name that the style sheet knows a stage by.
pub const fn stage_name(stage: Stage) -> &'static str {
    match stage {
        Stage::Raw => "raw",
        Stage::On => "on",
        Stage::Resting => "resting",
        Stage::Proved => "proved",
        Stage::Packed => "packed",
    }
}
