use leptos::prelude::*;

use super::frame::Frame;
use crate::show;

/// Half the width of a time's label.
const LABEL_HALF: f64 = 12.0;

/// The lines and labels behind a curve.
#[component]
pub fn Axes(
    /// The window that is drawn.
    #[prop(into)]
    frame: Signal<Frame>,
) -> impl IntoView {
    let lines = move || {
        let frame = frame.get();
        let (left, right, _, bottom) = frame.edges();
        let levels = frame.temperatures().into_iter().map(|level| {
            let y = frame.y(level);
            view! {
                <line class="grid" x1=left x2=right y1=y y2=y />
                <text class="level-name" x=left - 6.0 y=y + 5.0>
                    {show::degrees(level)}
                </text>
            }
        });
        // A label too near an end would be cut off.
        let fits = |at: &cook_model::quantity::Moment| {
            (left + LABEL_HALF..=right - LABEL_HALF).contains(&frame.x(*at))
        };
        let times = frame.times().into_iter().filter(fits).map(|at| {
            let x = frame.x(at);
            view! {
                <line class="grid" x1=x x2=x y1=bottom y2=bottom + 5.0 />
                <text class="time-name" x=x y=bottom + 20.0>
                    {show::clock_short(at)}
                </text>
            }
        });
        (levels.collect_view(), times.collect_view())
    };
    view! { <g>{move || lines()}</g> }
}
