//! The state a piece starts in.

use thiserror::Error;

use super::body::Body;
use crate::piece::Piece;
use crate::quantity::Temperature;

/// The coldest raw meat may start at. Poultry sold as fresh was never below 26 F (USDA, 9 CFR 381.129, from
/// memory), and lean meat begins to freeze near 30 F: what is below 26 F is frozen.
pub const COLDEST: Temperature = Temperature::from_f(26.0);
/// The warmest: what is warmer is a mistyped value or not raw.
const WARMEST: Temperature = Temperature::from_c(35.0);
/// Of a piece whose middle is still icy: how far out the ice reaches, as a part of the way to the
/// surface and to the edge, and the part of the freezable water there that is ice. A middle that
/// gives a little under the thumb; this project's own estimate.
const ICY: f64 = 0.5;
const ICE: f64 = 0.4;

/// The state a piece starts in: one temperature throughout, or ice left in the middle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Start {
    /// Throughout, or outside if the middle is icy.
    temperature: Temperature,
    icy: bool,
}

/// Why a start temperature was refused.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Error)]
#[non_exhaustive]
pub enum StartProblem {
    /// Below 26 F, or not a number.
    #[error(
        "the piece is frozen: thaw it in the refrigerator first. A start temperature from 26 F \
         (-3 C) to 95 F (35 C) is accepted"
    )]
    Frozen,
    /// Above 35 C.
    #[error(
        "that is too warm for a raw piece. A start temperature from 26 F (-3 C) to 95 F (35 C) is \
         accepted"
    )]
    TooWarm,
}

impl Start {
    /// The same temperature throughout, as after a night in the refrigerator, or tempered.
    ///
    /// # Errors
    /// Below 26 F the piece is frozen, and above 35 C it is no raw piece.
    pub fn even(temperature: Temperature) -> Result<Self, StartProblem> {
        if temperature > WARMEST {
            Err(StartProblem::TooWarm)
        } else if temperature >= COLDEST {
            Ok(Self::cooked(temperature))
        } else {
            Err(StartProblem::Frozen)
        }
    }

    /// Partly frozen: thawed outside, where it has a temperature, and still icy in the middle.
    ///
    /// The ice fills the inner half of the way to the surface and to the edge, and is two fifths of
    /// the water there that can freeze; from it the temperature rises straight to the surface's.
    ///
    /// # Errors
    /// As for [`even`](Self::even), by the temperature outside.
    pub fn icy_middle(outside: Temperature) -> Result<Self, StartProblem> {
        Self::even(outside).map(|even| Self { icy: true, ..even })
    }

    /// As a piece is said to go on.
    ///
    /// # Errors
    /// As for [`even`](Self::even).
    pub fn of_piece(piece: &Piece) -> Result<Self, StartProblem> {
        if piece.icy { Self::icy_middle(piece.start) } else { Self::even(piece.start) }
    }

    /// A cooked piece, at whatever temperature it is: for chilling and reheating.
    pub const fn cooked(temperature: Temperature) -> Self {
        Self { temperature, icy: false }
    }

    /// Heat content at each node of a body, J/m3.
    pub(super) fn heat(self, body: &Body) -> Vec<f64> {
        let (medium, grid) = (&body.medium, &body.grid);
        let outside = medium.heat(self.temperature.c());
        if !self.icy {
            return vec![outside; grid.nodes()];
        }
        // From the middle, at 0, to the outside, at 1.
        let profile = |place: f64, icy: f64, thawed: f64| {
            if place < ICY {
                icy
            } else {
                thawed + (outside - thawed) * (place - ICY) / (1.0 - ICY)
            }
        };
        let (icy, thawed) = (medium.melting(ICE), medium.melting(0.0));
        let mut heat: Vec<f64> = grid.column.x.iter().map(|x| profile(*x, icy, thawed)).collect();
        if let Some(footprint) = &grid.footprint {
            let (mean, reach) = (grid.column.mean(&heat), footprint.y[footprint.y.len() - 1]);
            heat.extend(footprint.y[1..].iter().map(|y| profile(y / reach, mean, mean)));
        }
        heat
    }
}
