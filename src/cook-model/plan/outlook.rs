//! Where dinner stands, as the readings have it.

use serde::{Deserialize, Serialize};

use super::draws::quantile;
use super::sampling::{DAYS, Days};
use super::slowing;
use super::spread;
use super::{Habits, Plan};
use crate::forecast::{Band, Forecast, Probability};
use crate::history::{History, PieceHistory};
use crate::piece::PieceId;
use crate::quantity::{Moment, Span, seconds, to_seconds};
use crate::safety::ProofRule;

/// Standard deviations from the middle of a normal variable to the end of its central 80 %.
const TO_EDGE: f64 = 1.2816;

/// Where dinner stands.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Outlook {
    /// When people mean to eat.
    pub dinner: Moment,
    /// When the last of tonight's pieces is likely to be carved.
    pub ready: Band<Moment>,
    /// The chance that it is by dinner.
    pub in_time: Probability,
    /// The piece that dinner is likely to wait for.
    pub last: PieceId,
}

/// How dinner stands in one word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Standing {
    /// It is likely to be ready before its time, and surely so.
    Early,
    /// About when it should be.
    OnTime,
    /// It is likely to be ready after its time.
    Late,
}

impl Outlook {
    /// How much later than dinner it is likely to be ready; negative where it is early.
    pub fn late_by(&self) -> Span {
        self.ready.middle - self.dinner
    }

    /// Whether it is late or early by more than `slack`. The minutes that a plan leaves so that
    /// dinner is in time with its certainty do not make it early.
    pub fn standing(&self, slack: Span) -> Standing {
        if self.ready.middle > self.dinner + slack {
            Standing::Late
        } else if self.ready.high < self.dinner - slack {
            Standing::Early
        } else {
            Standing::OnTime
        }
    }
}

/// Where dinner stands if the forecast holds: tonight's pieces rested and carved, the last of
/// them. Pieces not yet on go on when the plan has it, or now. A piece that its own readings show to be
/// slower than forecast is taken to go on as slowly. The moment of looking may be later than the forecast;
/// what is not on by then is late by that, and by the clock's delay. None while nothing is for tonight, or where a piece is not
/// expected to be done at all, and was not read twice.
pub fn outlook(
    history: &History,
    forecast: &Forecast,
    plan: Option<&Plan>,
    habits: &Habits,
    dinner: Moment,
    clock: Clock,
) -> Option<Outlook> {
    let now = clock.now;
    let tonight = history.pieces.iter().filter(|p| p.tonight && p.packed.is_none());
    let pieces: Vec<Ready> = tonight
        .map(|piece| ready(piece, history, forecast, plan, habits, clock))
        .collect::<Option<_>>()?;
    let last = pieces.iter().max_by(|a, b| a.window.middle.total_cmp(&b.window.middle))?.piece;
    let carving = to_seconds(habits.carving);
    let days = Days::new();
    let finishes: Vec<f64> =
        (0..DAYS).map(|day| last_ready(&pieces, &days, day) + carving).collect();
    let available = to_seconds(dinner - now);
    let in_time = finishes.iter().filter(|s| **s <= available).count() as f64 / DAYS as f64;
    let at = |chance| now + seconds(quantile(finishes.clone(), chance));
    Some(Outlook {
        dinner,
        ready: Band { low: at(0.1), middle: at(0.5), high: at(0.9) },
        in_time: Probability::new(in_time),
        last,
    })
}

/// The present moment, and by how much what is to go on is behind its plan.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Clock {
    /// Now.
    pub now: Moment,
    /// By how much what is not on yet will be later than planned.
    pub delay: Span,
}

impl Clock {
    /// A moment at which nothing is behind its plan.
    pub const fn at(now: Moment) -> Self {
        Self { now, delay: Span::zero() }
    }
}

/// When one piece has rested, s from now.
struct Ready {
    piece: PieceId,
    window: Band<f64>,
    /// The share of its uncertainty that all pieces have in common.
    shared: f64,
}

fn ready(
    piece: &PieceHistory,
    history: &History,
    forecast: &Forecast,
    plan: Option<&Plan>,
    habits: &Habits,
    Clock { now, delay }: Clock,
) -> Option<Ready> {
    let from_now = |at: Moment| to_seconds(at - now);
    let rest = to_seconds(habits.rest);
    if let Some(off) = piece.off() {
        let again = if may_prove(piece, history, forecast) { 0.0 } else { to_seconds(BACK_ON) };
        let rested = (from_now(off) + rest).max(0.0) + again;
        let window = Band { low: rested, middle: rested, high: rested };
        return Some(Ready { piece: piece.id, window, shared: 0.0 });
    }
    // A piece that is not on yet is forecast as if it went on now.
    let planned = plan.and_then(|plan| plan.pieces.iter().find(|p| p.piece == piece.id));
    let wait = match planned {
        Some(planned) if piece.spells.is_empty() => {
            from_now(planned.on + delay).max(0.0) + to_seconds(now - forecast.at)
        }
        _ if piece.spells.is_empty() => to_seconds(now - forecast.at),
        _ => 0.0,
    };
    let pull = forecast.piece(piece.id)?.pull;
    let rested = |at: Moment| (from_now(at) + wait).max(0.0) + rest;
    let foreseen = pull.map(|pull| pull.map(rested));
    let line = slowing::line(piece, &history.pit, forecast).map(rested);
    let window = slowing::slowed(foreseen, line, rested(now))?;
    Some(Ready { piece: piece.id, window, shared: shared_part(piece) })
}

/// How long a piece that must go back is likely to take: on, off and read again (common practice, no
/// source).
const BACK_ON: Span = Span::minutes(20);

/// Whether a piece that is off was read at what proves it at once, or may still come to it.
fn may_prove(piece: &PieceHistory, history: &History, forecast: &Forecast) -> bool {
    let enough = history.proof_rule.instant();
    let peak = forecast.piece(piece.id).and_then(|piece| piece.peak);
    matches!(history.proof_rule, ProofRule::Held { .. })
        || piece.pokes().any(|reading| reading.for_proof >= enough)
        || peak.is_none_or(|peak| peak.temperature.middle >= enough)
}

/// Before a piece is read, what is not known of it is partly what is not known of the pit; its own
/// readings leave little of that.
fn shared_part(piece: &PieceHistory) -> f64 {
    if piece.readings.is_empty() { spread::shared_part(&piece.piece) } else { 0.0 }
}

/// When the last piece has rested in one way the day could go.
fn last_ready(pieces: &[Ready], days: &Days, day: usize) -> f64 {
    let pit = days.deviate(day, 0);
    pieces
        .iter()
        .enumerate()
        .map(|(i, piece)| {
            let own = days.deviate(day, i + 1);
            let z = libm::sqrt(piece.shared) * pit + libm::sqrt(1.0 - piece.shared) * own;
            let window = &piece.window;
            let side =
                if z < 0.0 { window.middle - window.low } else { window.high - window.middle };
            window.middle + z / TO_EDGE * side
        })
        .fold(0.0, f64::max)
}
