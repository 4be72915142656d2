//! What a limit that ran out means: it stays with the piece, and decides what may be done with it.

use serde::Serialize;

use super::clocks::ClockKind;
use super::life::{last_known, life};
use super::proof::{Proof, prove};
use super::rule::ProofRule;
use crate::history::{EntryId, History, PieceHistory};
use crate::quantity::{Moment, Span, Temperature};

/// A limit that ran out. From then on the piece is not food: nothing proves it, and it is neither
/// put back, nor served, nor kept.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RunOut {
    /// Which limit.
    pub kind: ClockKind,
    /// From when it counted.
    pub since: Moment,
    /// When it ran out.
    pub deadline: Moment,
    /// What its source then allows.
    pub then: Then,
}

/// What the source of a limit allows once it ran out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Then {
    /// To throw it away, and nothing else.
    ThrowAway,
    /// To throw it away. The agency lets a processor who records the core take six hours from 50
    /// to 130 F, and cook on; nothing here can show that those conditions were kept.
    /// Source: FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A, 2021),
    /// come-up time.
    ThrowAwayUnlessProcessor,
}

/// The agency's longest come-up, from 50 to 130 F; see [`Then::ThrowAwayUnlessProcessor`].
pub const COME_UP: Span = Span::hours(6);

impl RunOut {
    /// Where the limit comes from, for the person to look up.
    pub const fn source(&self) -> &'static str {
        match self.kind {
            ClockKind::RawOut | ClockKind::ToFridge => {
                "USDA FSIS, Danger Zone (40 to 140 F): out of the refrigerator no longer than two \
                 hours, one hour above 90 F"
            }
            ClockKind::WarmUp => {
                "FDA Food Code 2022, 3-501.19(B), time as a public health control (from memory)"
            }
            ClockKind::CoolTo70 | ClockKind::CoolTo41 => "FDA Food Code 2022, 3-501.14 (cooling)",
        }
    }
}

/// Where a piece stands by the rules of safety.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Standing {
    /// The readings that prove it, if they do and no limit has run out.
    pub proof: Option<Proof>,
    /// The limit that ran out first, if one did.
    pub run_out: Option<RunOut>,
}

/// Where a piece stands at a moment; without one, at the last moment that its own history tells of.
///
/// `coming` is its core by the forecast, on the unfavourable side: it can start a clock, and can
/// neither stop one nor prove anything. `doubted` are the readings that a forecast finds not to fit.
pub fn standing(
    history: &History,
    piece: &PieceHistory,
    rule: ProofRule,
    doubted: &[EntryId],
    coming: &[(Moment, Temperature)],
    at: Option<Moment>,
) -> Standing {
    let until = at.or_else(|| last_known(piece));
    let run_out = until.and_then(|until| life(history, piece, doubted, coming, until).run_out);
    let proof = match run_out {
        Some(_) => None,
        None => prove(history, piece, rule, doubted),
    };
    Standing { proof, run_out }
}
