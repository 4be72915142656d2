//! What is told of a piece stays within what can be: no core passes boiling, one reading makes nobody
//! certain, and a reading that was left out for being low still widens what is told.

use super::outcome::{Band, Probability};
use super::shown::Seen;
use super::view::View;
use crate::history::PieceHistory;
use crate::quantity::{Temperature, to_seconds};

/// Wet meat does not pass the boiling of water at sea level, C (steam tables).
const BOILING: f64 = 100.0;
/// By fewer than two readings of this spell no piece is told to be ready with a higher chance: of a hundred
/// readings two are slips (our choice).
const BY_ONE: f64 = 0.97;

/// A core of so many C, as far as wet meat can be so hot.
pub(super) fn wet(celsius: f64) -> Temperature {
    Temperature::from_c(celsius.min(BOILING))
}

/// The chance that a piece is at its pull temperature, as it may be told.
pub(super) fn ready(piece: &PieceHistory, chance: f64) -> Probability {
    let certain = piece.pokes().nth(1).is_some();
    Probability::new(if certain { chance } else { chance.min(BY_ONE) })
}

impl View<'_> {
    /// The last poke of this spell, where it was taken for a slip because it was low. A tip can be in the air
    /// of the pit or near the surface, and so too hot; too cold it hardly is.
    fn left_out_low(&self) -> Option<&Seen> {
        let last = self.history.last_poke()?;
        let seen = self.evidence.seen.iter().find(|seen| seen.reading.entry == last.entry)?;
        let expected: f64 = self.cells().map(|(cell, weight)| weight * seen.mean[cell]).sum();
        (!seen.counts && seen.reading.temperature.c() < expected).then_some(seen)
    }

    /// A core now and a pull window, s since the clock's zero, with such a reading in them: it has risen since
    /// as the piece would have from there.
    pub(super) fn with_what_was_low(
        &self,
        core: Band<Temperature>,
        window: Option<Band<f64>>,
    ) -> (Band<Temperature>, Option<Band<f64>>) {
        let Some(low) = self.left_out_low() else { return (core, window) };
        let now = to_seconds(self.setting.now - self.setting.zero);
        let reached = self.reaches(low.reading.temperature);
        let reached = self.crossing(&reached).map(|times| times.quantile(0.5));
        // So much later than the middle of what is told the piece would be.
        let behind = reached.map_or(0.0, |reached| (low.since_zero - reached).max(0.0));
        let then = wet(self.core((now - behind).max(self.traces.on)).quantile(0.5));
        let window =
            window.map(|window| Band { high: window.high.max(window.middle + behind), ..window });
        (Band { low: core.low.min(then), ..core }, window)
    }
}
