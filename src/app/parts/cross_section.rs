use cook_model::forecast::Seating;
use cook_model::quantity::Length;
use leptos::prelude::*;

use crate::words::wording;
use crate::{say, show};

/// The drawing's half height, which stands for half the thickness.
const HALF: f64 = 40.0;
/// The middle of the drawing.
const MIDDLE: (f64, f64) = (110.0, 52.0);
/// A probe is drawn at least this far off, so that the eye sees it, and within the meat.
const LEAST: f64 = 10.0;
const MOST: f64 = 32.0;

/// A cut through the thickest part with the leave-in where it likely is, and where it should be.
#[component]
pub fn CrossSection(
    /// What is known of the leave-in's seat.
    seating: Seating,
    /// The thickest part, if it was measured.
    thickest: Option<Length>,
) -> impl IntoView {
    let half_thickness = thickest.map_or(19.0, |thickest| thickest.mm() / 2.0);
    let off = (seating.off_by.mm() / half_thickness * HALF).clamp(LEAST, MOST);
    let (x, y) = (MIDDLE.0, MIDDLE.1 - off);
    view! {
        <figure class="cross-section">
            <svg viewBox="0 0 220 104" aria-hidden="true">
                <ellipse class="meat" cx=MIDDLE.0 cy=MIDDLE.1 rx="96" ry=HALF />
                <circle class="coldest" cx=MIDDLE.0 cy=MIDDLE.1 r="9" />
                <path class="coldest" d="M110 38V66M96 52H124" />
                <path class="probe" d=format!("M216 {:.0}L{x:.0} {y:.0}", y - 10.0) />
                <circle class="tip" cx=x cy=y r="5" />
            </svg>
            <figcaption>
                {move || say!("live-misplaced", length = show::length(seating.off_by))}
                " "
                {wording("section-legend")}
            </figcaption>
        </figure>
    }
}
