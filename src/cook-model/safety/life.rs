//! The time a piece spends where bacteria grow, added up over its whole life.
//!
//! It counts while the piece is raw and out of the refrigerator, on the pit until a reading shows
//! 140 F, off the pit from when it was last known to be that hot, and on the pit again where it may
//! have fallen below. Only a reading that could prove stops it: see [`super::Shortfall`]; any colder
//! one, a pit that was read to be colder, and the forecast's unfavourable side start it again, each
//! from when the piece was last known to be hot.

use super::clocks::{Clock, ClockKind, HOT, LONGEST_WARM_UP, first, longest_out};
use super::plausible::least_out;
use super::run_out::{RunOut, Then};
use super::witness::{Shortfall, Witnesses, is_from_the_future};
use crate::history::{CoreReading, EntryId, History, PieceHistory};
use crate::quantity::{Moment, Span, Temperature};
use crate::sorting::sort_by_key;

/// What a piece's life adds up to.
#[derive(Clone, Debug, PartialEq)]
pub struct Life {
    /// The limit that ran out first, if one did.
    pub run_out: Option<RunOut>,
    /// The clocks that run, and the one that ran out.
    pub clocks: Vec<Clock>,
    /// The time between 41 and 140 F so far, or until it was packed.
    pub warm: Span,
    /// By when it must be, or had to be, in the cold; none before it came off the pit.
    pub cold_by: Option<Moment>,
}

/// What can happen to a clock. The order is that of things of one moment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Event {
    Out,
    Away,
    On,
    Off,
    /// The pit was read colder than meat must be; and when it was last read to be hot, if it was.
    PitFell(Option<Moment>),
    /// A reading that shows it to be colder than 140 F somewhere.
    Cold,
    /// A reading that could prove shows 140 F.
    Hot,
    Packed,
}

/// The life of a piece up to a moment, or up to the last that its own history tells of.
///
/// `coming` is its core by the forecast, on the unfavourable side, before and after that moment.
pub fn life(
    history: &History,
    piece: &PieceHistory,
    doubted: &[EntryId],
    coming: &[(Moment, Temperature)],
    until: Moment,
) -> Life {
    let until = last_known(piece).map_or(until, |known| known.max(until));
    let mut walk = Walk::begin(longest_out(history.pit.ambient));
    walk.has_lain(least_out(piece, &history.pit), first_told(piece).unwrap_or(until));
    for (at, event) in events(history, piece, doubted) {
        if at <= until {
            walk.advance(at);
            walk.take(at, event);
        }
    }
    walk.heed(coming, until);
    walk.advance(until);
    walk.finish(coming, until)
}

/// The last moment that the piece's own history tells of.
pub(super) fn last_known(piece: &PieceHistory) -> Option<Moment> {
    let spells = piece.spells.iter().flat_map(|spell| [Some(spell.on), spell.off]);
    let raw = piece.raw_out.iter().flat_map(|out| [Some(out.from), out.to]);
    let honest = piece.readings.iter().filter(|reading| !is_from_the_future(reading));
    let read = honest.map(|reading| Some(reading.at));
    spells.chain(raw).chain(read).chain([piece.packed_at]).flatten().max()
}

fn first_told(piece: &PieceHistory) -> Option<Moment> {
    piece.raw_out.first().map(|out| out.from).or_else(|| piece.on())
}

/// Everything that bears on a clock, in order of time.
fn events(history: &History, piece: &PieceHistory, doubted: &[EntryId]) -> Vec<(Moment, Event)> {
    let mut events: Vec<(Moment, Event)> = Vec::new();
    for out in &piece.raw_out {
        events.push((out.from, Event::Out));
        events.extend(out.to.map(|to| (to, Event::Away)));
    }
    for witnesses in Witnesses::of_each_spell(history, piece, doubted) {
        let spell = witnesses.spell;
        events.push((spell.on, Event::On));
        events.extend(spell.off.map(|off| (off, Event::Off)));
        let shows_hot = |reading: &&CoreReading| {
            matches!(witnesses.shortfall(reading, HOT), None | Some(Shortfall::OnePlace))
        };
        let hot = witnesses.in_spell().filter(shows_hot);
        events.extend(hot.map(|reading| (reading.at, Event::Hot)));
    }
    let cold = piece.readings.iter().filter(|reading| reading.for_proof < HOT);
    events.extend(cold.map(|reading| (reading.at, Event::Cold)));
    let mut well = None;
    for read in &history.pit.readings {
        if read.temperature >= HOT {
            well = Some(read.at);
        } else {
            events.push((read.at, Event::PitFell(well)));
        }
    }
    events.extend(piece.packed_at.map(|at| (at, Event::Packed)));
    sort_by_key(&mut events, |event| *event);
    events
}

/// The clocks as the events come.
struct Walk {
    longest_out: Span,
    /// Time that counts, without that since `since`.
    spent: Span,
    /// From when time counts now.
    since: Option<Moment>,
    /// Whether a hot reading would show that it was hot since then: off the pit, where nothing warms
    /// it, and not read colder.
    may_be_hot: bool,
    raw_spent: Span,
    raw_since: Option<Moment>,
    /// From when it must get into the refrigerator.
    off_since: Option<Moment>,
    /// The last moment from which that counted.
    cold_since: Option<Moment>,
    last_hot: Option<Moment>,
    is_on: bool,
    run_out: Option<RunOut>,
}

impl Walk {
    fn begin(longest_out: Span) -> Self {
        Self {
            longest_out,
            spent: Span::zero(),
            since: None,
            may_be_hot: false,
            raw_spent: Span::zero(),
            raw_since: None,
            off_since: None,
            cold_since: None,
            last_hot: None,
            is_on: false,
            run_out: None,
        }
    }

    /// It was out of the refrigerator for at least so long before it was first told of.
    fn has_lain(&mut self, least: Span, told: Moment) {
        (self.spent, self.raw_spent) = (least, least);
        self.check(ClockKind::RawOut, told - least, self.longest_out, told);
    }

    /// Time goes by until a moment.
    fn advance(&mut self, to: Moment) {
        if let Some(since) = self.raw_since {
            self.check(ClockKind::RawOut, since - self.raw_spent, self.longest_out, to);
        }
        if let Some(since) = self.off_since {
            self.check(ClockKind::ToFridge, since, self.longest_out, to);
        }
        if let Some(since) = self.since {
            self.check(ClockKind::WarmUp, since - self.spent, LONGEST_WARM_UP, to);
        }
    }

    fn check(&mut self, kind: ClockKind, since: Moment, longest: Span, at: Moment) {
        let deadline = since + longest;
        if at <= deadline || self.run_out.is_some_and(|first| first.deadline <= deadline) {
            return;
        }
        let never_hot = self.is_on && self.last_hot.is_none();
        let then = if never_hot { Then::ThrowAwayUnlessProcessor } else { Then::ThrowAway };
        self.run_out = Some(RunOut { kind, since, deadline, then });
    }

    fn take(&mut self, at: Moment, event: Event) {
        match event {
            Event::Out => {
                self.raw_since.get_or_insert(at);
                self.since.get_or_insert(at);
            }
            Event::Away => {
                self.raw_spent += self.raw_since.take().map_or(Span::zero(), |since| at - since);
                self.stop(at);
            }
            Event::On => {
                self.raw_since = None;
                self.off_since = None;
                self.may_be_hot = false;
                self.is_on = true;
                self.since.get_or_insert(at);
            }
            Event::Off => {
                self.is_on = false;
                self.off_since = Some(at);
                self.cold_since = Some(at);
                self.may_be_hot = self.since.is_none();
                self.since.get_or_insert(at);
            }
            Event::PitFell(well) if self.is_on => self.may_have_cooled(well),
            Event::PitFell(_) => {}
            Event::Cold => {
                self.may_be_hot = false;
                self.may_have_cooled(Some(at));
            }
            Event::Hot => self.is_hot(at),
            Event::Packed => {
                self.stop(at);
                self.raw_since = None;
                self.off_since = None;
            }
        }
    }

    /// On the pit it may have been below 140 F since it was last known to be hot, or since `well`, when
    /// the pit last was. Off the pit, and before it was hot, all time counts anyway.
    fn may_have_cooled(&mut self, well: Option<Moment>) {
        self.since = self.since.or(self.last_hot.max(well));
    }

    fn is_hot(&mut self, at: Moment) {
        // A limit that ran out meanwhile stays run out: nobody knew.
        if !self.may_be_hot {
            self.stop(at);
        }
        self.last_hot = Some(at);
        if let Some(off) = self.off_since {
            self.off_since = Some(off.max(at));
            self.cold_since = self.off_since;
            self.since = Some(at);
            self.may_be_hot = true;
        }
    }

    fn stop(&mut self, at: Moment) {
        self.spent += self.since.take().map_or(Span::zero(), |since| at - since);
    }

    /// On the pit, hot by its readings, and by the forecast likely below again.
    fn heed(&mut self, coming: &[(Moment, Temperature)], until: Moment) {
        if let (true, None, Some(hot)) = (self.is_on, self.since, self.last_hot) {
            let after: Vec<_> =
                coming.iter().copied().filter(|(at, _)| (hot..=until).contains(at)).collect();
            self.since = first(&after, |core| core < HOT);
        }
    }

    fn finish(self, coming: &[(Moment, Temperature)], until: Moment) -> Life {
        let from = coming.partition_point(|(at, _)| *at < until);
        let coming = &coming[from..];
        let clock = |kind, since: Moment, longest, expected| Clock {
            kind,
            since,
            deadline: since + longest,
            done: None,
            expected,
        };
        let warms = first(coming, |core| core >= HOT);
        let cools = first(coming, |core| core < HOT);
        let raw = self
            .raw_since
            .map(|since| clock(ClockKind::RawOut, since - self.raw_spent, self.longest_out, None));
        let fridge =
            self.off_since.map(|since| clock(ClockKind::ToFridge, since, self.longest_out, cools));
        let warm_up = self
            .since
            .map(|since| clock(ClockKind::WarmUp, since - self.spent, LONGEST_WARM_UP, warms))
            // While another limit ends sooner, this one is no news.
            .filter(|clock| {
                let sooner = raw.or(fridge.filter(|_| self.may_be_hot));
                sooner.is_none_or(|other| clock.deadline <= other.deadline)
            });
        let mut clocks: Vec<Clock> = [raw, warm_up, fridge].into_iter().flatten().collect();
        if let Some(over) = self.run_out
            && !clocks.iter().any(|clock| clock.kind == over.kind && clock.has_run_out(until))
        {
            clocks.push(clock(over.kind, over.since, over.deadline - over.since, None));
        }
        let running = self.since.map_or(Span::zero(), |since| until - since);
        let warm = self.spent + running.max(Span::zero());
        let cold_by = self.cold_since.map(|since| since + self.longest_out);
        Life { run_out: self.run_out, clocks, warm, cold_by }
    }
}
