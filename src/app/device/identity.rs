//! Numbers that no other page or phone will draw again.

use cook_model::cook::DeviceId;
use leptos::prelude::window;

/// Who writes the entries of this page: a number drawn anew each time the page is opened.
///
/// Two windows on one phone must not share it, or both could write an entry of the same id. A
/// number of 32 bits drawn by a few windows for one cook is as good as unique.
pub fn writer() -> DeviceId {
    DeviceId(random())
}

/// A number drawn by chance.
pub fn random() -> u32 {
    let mut bytes = [0; 4];
    let drawn =
        window().crypto().and_then(|crypto| crypto.get_random_values_with_u8_array(&mut bytes));
    match drawn {
        Ok(_) => u32::from_le_bytes(bytes),
        // A page not served over HTTPS may have no such generator.
        Err(_) => (js_sys::Math::random() * f64::from(u32::MAX)) as u32,
    }
}
