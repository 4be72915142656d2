//! What the cook could do about dinner, and what each would change.

use serde::{Deserialize, Serialize};

use super::outlook::{Clock, Outlook, Standing, outlook};
use super::{Habits, Plan};
use crate::forecast::{Forecast, forecast};
use crate::history::{History, PitAim};
use crate::piece::PieceId;
use crate::quantity::{Moment, Span, Temperature, TemperatureDifference};

/// By how much the pit is raised or lowered.
const PIT_STEP: TemperatureDifference = TemperatureDifference::from_f(25.0);
/// No lever takes the pit outside these: below, breasts dawdle in the danger zone; above, the
/// outside dries before the middle is done (common practice, no source).
const PIT_LOWEST: Temperature = Temperature::from_f(225.0);
const PIT_HIGHEST: Temperature = Temperature::from_f(325.0);
/// A change smaller than this is not worth offering.
const WORTH_IT: Span = Span::minutes(2);

/// A dinner less likely than this to be in time is at risk: a plan begins with nine chances in ten, and
/// what the pit can still do about it is little once it is late.
const AT_RISK: f64 = 0.7;

/// One thing the cook could do.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum Move {
    /// Raise the pit to a temperature; what is outside dries more.
    RaisePit {
        /// To what.
        to: Temperature,
    },
    /// Lower the pit to a temperature; what is outside dries less.
    LowerPit {
        /// To what.
        to: Temperature,
    },
    /// Serve these pieces first, and the rest as they come.
    ServeFirst {
        /// Which.
        pieces: Vec<PieceId>,
    },
    /// Eat later.
    MoveDinner {
        /// When.
        to: Moment,
    },
}

/// A thing the cook could do, and what would come of it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Lever {
    /// What to do.
    pub action: Move,
    /// Where dinner would stand then.
    pub outlook: Outlook,
}

/// The levers worth offering, what each would change computed by the same model that forecasts.
/// None while dinner is likely enough to be in time and not long before it.
pub fn levers(
    history: &History,
    now_forecast: &Forecast,
    plan: Option<&Plan>,
    habits: &Habits,
    clock: Clock,
    now: &Outlook,
) -> Vec<Lever> {
    let standing = now.standing(WORTH_IT);
    let mut offered = Vec::new();
    let at_risk = now.in_time.value() < AT_RISK;
    if standing == Standing::OnTime && !at_risk {
        return offered;
    }
    offered.extend(other_pit(history, plan, habits, clock, now));
    if standing == Standing::Late {
        offered.extend(serve_first(history, now_forecast, plan, habits, clock, now));
        let to = now.ready.high;
        let later = outlook(history, now_forecast, plan, habits, to, clock);
        offered.extend(later.map(|outlook| Lever { action: Move::MoveDinner { to }, outlook }));
    }
    offered
}

/// The pit hotter where dinner is late or may well be, cooler where it is early.
fn other_pit(
    history: &History,
    plan: Option<&Plan>,
    habits: &Habits,
    clock: Clock,
    now: &Outlook,
) -> Option<Lever> {
    let target = history.pit.target;
    let (to, action) = if now.standing(WORTH_IT) != Standing::Early {
        let to = (target + PIT_STEP).min(PIT_HIGHEST);
        (to, Move::RaisePit { to })
    } else {
        let to = (target - PIT_STEP).max(PIT_LOWEST);
        (to, Move::LowerPit { to })
    };
    let mut changed = history.clone();
    changed.pit.target = to;
    changed.pit.aims.push(PitAim { at: clock.now, temperature: to });
    let outlook =
        outlook(&changed, &forecast(&changed, clock.now), plan, habits, now.dinner, clock)?;
    let helps = (outlook.late_by() - now.late_by()).abs() >= WORTH_IT;
    helps.then_some(Lever { action, outlook })
}

/// The largest set of tonight's pieces likely to be ready by dinner, if that is not all of them.
fn serve_first(
    history: &History,
    forecast: &Forecast,
    plan: Option<&Plan>,
    habits: &Habits,
    clock: Clock,
    now: &Outlook,
) -> Option<Lever> {
    let mut fewer = history.clone();
    let mut last = now.last;
    loop {
        for piece in &mut fewer.pieces {
            piece.tonight &= piece.id != last;
        }
        let outlook = outlook(&fewer, forecast, plan, habits, now.dinner, clock)?;
        if outlook.late_by() <= Span::zero() {
            let first = fewer.pieces.iter().filter(|p| p.tonight && p.packed.is_none());
            let pieces = first.map(|piece| piece.id).collect();
            return Some(Lever { action: Move::ServeFirst { pieces }, outlook });
        }
        last = outlook.last;
    }
}
