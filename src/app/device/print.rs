//! The browser's printing, which also saves as PDF.

use leptos::prelude::window;

/// Opens the print dialog for the page; false if the browser has none.
pub fn print_page() -> bool {
    window().print().is_ok()
}
