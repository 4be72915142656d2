//! The day's cooked pieces, and the bags that a use of them makes.

use cook_model::cook::{CookState, Stage};
use cook_model::history::PieceHistory;
use cook_model::kitchen::cooked_weight::{CookedWeight, OwnLoss};
use cook_model::kitchen::log::{Bag, Brings};
use cook_model::kitchen::portions::{CookedPiece, Share};
use cook_model::kitchen::storage::Place;
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Mass, Moment, Span, Temperature};
use cook_model::safety::COOL_FROM;

use super::{Draft, LotDraft, Wanted};

/// Where breast that was typed in ended up, for its raw weight.
const USUAL_END: Temperature = Temperature::from_f(165.0);
/// The end temperatures that cooked weights are known for.
const ENDS: [Temperature; 2] = [Temperature::from_f(130.0), Temperature::from_f(212.0)];
/// Numbers of typed pieces start behind those of any cook.
const TYPED_FROM: u32 = 1001;

/// One cooked piece.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayPiece {
    /// Which piece.
    pub id: PieceId,
    /// Its raw facts; the weight of a typed piece is reckoned back.
    pub facts: Piece,
    /// Its cooked weight, weighed or estimated.
    pub cooked: Mass,
    /// When it came off the pit.
    pub off: Moment,
    /// The highest temperature read in it.
    pub end: Temperature,
    /// When it was last known to be at 135 F or above, from where the two steps of cooling count.
    pub hot: Moment,
    /// By when it must be in the cold; none for what lies there already.
    pub cold_by: Option<Moment>,
    /// How long it was between 41 and 140 F.
    pub warm: Span,
}

/// All of them.
#[derive(Clone, Debug, PartialEq)]
pub struct Day {
    /// The pieces: the cook's, then those typed in.
    pub pieces: Vec<DayPiece>,
    /// Pieces of the cook that were served or packed and that nothing proves: they go into no bag.
    pub unproved: Vec<PieceId>,
    /// Their estimated weight with its spread; none where they were weighed.
    pub estimate: Option<CookedWeight>,
}

impl Day {
    /// One piece.
    pub fn piece(&self, id: PieceId) -> Option<&DayPiece> {
        self.pieces.iter().find(|piece| piece.id == id)
    }

    /// As the model allots them.
    pub fn cooked(&self) -> Vec<CookedPiece> {
        self.pieces.iter().map(|p| CookedPiece { id: p.id, weight: p.cooked }).collect()
    }

    /// Cooked weight of all.
    pub fn weight(&self) -> Mass {
        self.pieces.iter().map(|piece| piece.cooked).sum()
    }

    /// The pieces of a cook, which have a raw weight that was weighed.
    pub fn of_the_cook(&self) -> impl Iterator<Item = &DayPiece> {
        self.pieces.iter().filter(|piece| piece.id.0 < TYPED_FROM)
    }
}

/// A typed piece's place among the typed ones, if it is one.
pub fn typed_place(id: PieceId) -> Option<usize> {
    id.0.checked_sub(TYPED_FROM).map(|place| place as usize)
}

/// The pieces of the open cook that readings prove, and those typed in.
pub fn day(state: &CookState, draft: &Draft, own: OwnLoss, now: Moment) -> Day {
    let mut pieces: Vec<DayPiece> = state
        .each_piece()
        .filter(|(standing, _)| standing.proof.is_some() && standing.stage >= Stage::Proved)
        .map(|(standing, history)| {
            let read = history.readings.iter().map(|reading| reading.temperature);
            let proof = standing.proof.as_ref().map(|proof| proof.temperature);
            let end = read.chain(proof).fold(ENDS[0], Temperature::max).min(ENDS[1]);
            let facts = history.piece;
            let cooked = facts.weight * share_left(own, end);
            let off = history.off().unwrap_or(now);
            let hot = history.readings.iter().filter(|reading| reading.for_proof >= COOL_FROM);
            let hot = hot.map(|reading| reading.at).max().unwrap_or(off);
            let life = state.life(history.id, now);
            let warm = life.as_ref().map_or(Span::zero(), |life| life.warm);
            let cold_by = life.and_then(|life| life.cold_by);
            DayPiece { id: history.id, facts, cooked, off, end, hot, cold_by, warm }
        })
        .collect();
    let unproved: Vec<PieceId> = state
        .each_piece()
        .filter(|(standing, _)| standing.is_packed_unproved())
        .map(|(_, history)| history.id)
        .collect();
    // Without the hour they came off the heat nobody knows how long they keep.
    let typed = draft.typed_off.into_iter().flat_map(|off| {
        (TYPED_FROM..).zip(&draft.typed).map(move |(id, cooked)| DayPiece {
            id: PieceId(id),
            facts: plain(*cooked * (1.0 / share_left(own, USUAL_END))),
            cooked: *cooked,
            off,
            end: USUAL_END,
            hot: off,
            cold_by: None,
            warm: Span::zero(),
        })
    });
    let estimate = estimate(&pieces, own);
    pieces.extend(typed);
    let Some(weighed) = draft.weighed else { return Day { pieces, unproved, estimate } };
    let guessed: Mass = pieces.iter().map(|piece| piece.cooked).sum();
    for piece in &mut pieces {
        piece.cooked = piece.cooked * (weighed.g() / guessed.g());
    }
    Day { pieces, unproved, estimate: None }
}

/// What the pieces not proved yet will weigh, cooked to their pull temperature or as far as they
/// were read, and how many they are; none where there are none.
pub fn to_come(state: &CookState, own: OwnLoss) -> Option<(usize, CookedWeight)> {
    let coming: Vec<&PieceHistory> = state
        .each_piece()
        .filter(|(own, _)| own.stage < Stage::Proved && own.run_out.is_none())
        .map(|(_, history)| history)
        .collect();
    let end = |history: &&PieceHistory| {
        let read = history.readings.iter().map(|reading| reading.temperature);
        read.fold(history.pull_at, Temperature::max).min(ENDS[1])
    };
    let hottest = coming.iter().map(end).reduce(Temperature::max)?;
    let raw: Mass = coming.iter().map(|history| history.piece.weight).sum();
    let cooked = own.predict(raw, u16::try_from(coming.len()).ok()?, hottest).ok()?;
    Some((coming.len(), cooked))
}

/// A piece of which only the raw weight is known.
pub fn plain(weight: Mass) -> Piece {
    Piece {
        weight,
        thickest: None,
        shape: Shape::Natural,
        start: Temperature::from_f(38.0),
        icy: false,
    }
}

fn share_left(own: OwnLoss, end: Temperature) -> f64 {
    const KILOGRAM: Mass = Mass::from_kg(1.0);
    own.predict(KILOGRAM, 1, end).map_or(1.0, |cooked| cooked.mean.kg())
}

fn estimate(pieces: &[DayPiece], own: OwnLoss) -> Option<CookedWeight> {
    let raw: Mass = pieces.iter().map(|piece| piece.facts.weight).sum();
    let count = u16::try_from(pieces.len()).ok()?;
    let end = pieces.iter().map(|piece| piece.end).reduce(Temperature::max)?;
    own.predict(raw, count, end).ok()
}

/// A bag to be packed.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedBag {
    /// The bag.
    pub bag: Bag,
    /// Where it goes.
    pub place: Place,
    /// When all of its meat was last known to be at 135 F or above.
    pub hot: Moment,
}

/// The bags of one use: a whole piece to a bag where the numbers agree, else equal weights.
pub fn bags_of(cook: Option<u64>, lot: &LotDraft, share: &Share, day: &Day) -> Vec<PlannedBag> {
    let taken: Vec<&DayPiece> = share.pieces.iter().filter_map(|id| day.piece(*id)).collect();
    let Some(off) = taken.iter().map(|piece| piece.off).min() else { return Vec::new() };
    let hot = taken.iter().map(|piece| piece.hot).min().unwrap_or(off);
    let Some(place) = lot.goes.place() else { return Vec::new() };
    let usual = match lot.wanted {
        Wanted::Servings => usize::from(lot.count),
        Wanted::Pieces | Wanted::Rest => taken.len(),
    };
    let count = lot.bags.map_or(usual, usize::from);
    if count == 0 {
        return Vec::new();
    }
    let weight = |number: usize| match taken.get(number) {
        Some(piece) if count == taken.len() && !lot.form.lies_flat() => piece.cooked,
        _ => share.weight * (1.0 / count as f64),
    };
    let brings = brings(cook, &taken, off, hot);
    let bag = |number| Bag {
        name: lot.name.clone(),
        form: lot.form,
        weight: weight(number),
        thickness: lot.thickness,
        packing: lot.packing,
        cooked: off,
        brings: brings.clone(),
    };
    (0..count).map(|number| PlannedBag { bag: bag(number), place, hot }).collect()
}

/// What a bag of these pieces brings with it: of each clock the worst of them.
fn brings(cook: Option<u64>, taken: &[&DayPiece], off: Moment, hot: Moment) -> Brings {
    let of_the_cook = taken.iter().map(|piece| piece.id).filter(|id| id.0 < TYPED_FROM);
    let pieces: Vec<PieceId> = of_the_cook.collect();
    let cold_by = taken.iter().filter_map(|piece| piece.cold_by).min();
    Brings {
        hot: Some(hot),
        cold_by,
        // What was typed in lies in the cold already.
        cold_at: cold_by.is_none().then_some(off),
        warm: taken.iter().map(|piece| piece.warm).max().unwrap_or(Span::zero()),
        cook: cook.filter(|_| !pieces.is_empty()),
        pieces,
    }
}
