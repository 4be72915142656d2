//! Joins the same thing to do with several pieces where that saves a trip.

use super::{Act, Duty};
use crate::cook::Seen;
use crate::piece::PieceId;
use crate::quantity::Span;
use crate::sorting::sort_by_key;

/// Things due within this time of the first are done together.
pub(super) const ONE_TRIP: Span = Span::minutes(4);

pub(super) fn gather(seen: &Seen, mut singles: Vec<Duty>) -> Vec<Duty> {
    sort_by_key(&mut singles, |duty| duty.from);
    let mut joined: Vec<Duty> = Vec::new();
    for duty in singles {
        let together = joined.iter_mut().find(|earlier| is_one_trip(earlier, &duty));
        match together {
            Some(earlier) => {
                // Two limits of one piece may run out together.
                let new: Vec<PieceId> =
                    duty.pieces.into_iter().filter(|it| !earlier.pieces.contains(it)).collect();
                earlier.pieces.extend(new);
                // A core stays near its peak for minutes: the last to come to it sets the time.
                if earlier.act == Act::Prove {
                    earlier.from = duty.from;
                }
            }
            None => joined.push(duty),
        }
    }
    let place = |piece: &PieceId| {
        let order = seen.forecast.as_ref().map(|forecast| forecast.order.as_slice());
        let place = order.and_then(|order| order.iter().position(|other| other == piece));
        (place.unwrap_or(usize::MAX), *piece)
    };
    for duty in &mut joined {
        sort_by_key(&mut duty.pieces, place);
    }
    joined
}

fn is_one_trip(earlier: &Duty, duty: &Duty) -> bool {
    let joins = matches!(
        duty.act,
        Act::Prove
            | Act::Cover
            | Act::PutOn
            | Act::Discard
            | Act::KeepHot
            | Act::Serve
            | Act::Pack
            | Act::Chill
            | Act::HurryUp
            | Act::PutAway
            | Act::TakeOut
    );
    joins
        && earlier.act == duty.act
        && earlier.until == duty.until
        && duty.from - earlier.from <= ONE_TRIP
}
