//! A QR code as a path for SVG, on screen or on paper.

use core::fmt::Write;

use qrcodegen::{QrCode, QrCodeEcc};
use thiserror::Error;

/// Clear modules wanted on every side (ISO/IEC 18004: four).
const QUIET: i32 = 4;

/// A QR code, in modules: draw `path` in black on white in a view box of `0 0 size size`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct QrPath {
    /// Side of the whole, with its quiet zone.
    pub size: u32,
    /// The dark modules, as an SVG path.
    pub path: String,
}

/// The text is longer than a QR code can hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
#[error("this text is too long for a QR code; up to about 2,300 characters are accepted")]
pub struct TooLong;

/// Draws a text as a QR code that still reads with up to 15 % of it soiled (level M).
///
/// # Errors
/// [`TooLong`] where no code holds it.
pub fn qr_path(text: &str) -> Result<QrPath, TooLong> {
    let code = QrCode::encode_text(text, QrCodeEcc::Medium).map_err(|_| TooLong)?;
    let side = code.size();
    let mut path = String::new();
    for y in 0..side {
        let mut x = 0;
        while x < side {
            let from = x;
            while x < side && code.get_module(x, y) {
                x += 1;
            }
            if x > from {
                let width = x - from;
                // Writing to a string cannot fail.
                let _ = write!(path, "M{} {}h{width}v1h-{width}z", from + QUIET, y + QUIET);
            } else {
                x += 1;
            }
        }
    }
    Ok(QrPath { size: (side + 2 * QUIET).unsigned_abs(), path })
}
