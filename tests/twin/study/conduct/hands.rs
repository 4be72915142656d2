//! How each duty is done, and how long that takes.

use cook_model::cook::duties::{Act, Doing, Duty};
use cook_model::cook::limits::CORE;
use cook_model::cook::{EntryId, What};
use cook_model::history::Instrument;
use cook_model::piece::PieceId;
use cook_model::quantity::Temperature;

use crate::diary;
use crate::record::LOADING;

use super::person::Person;
use super::typing::{Slip, shown, swapped};
use super::world::World;

/// Times that things take, s: to open the lid and find the first piece, to read one, to take one off,
/// to read the pit, to mend a fire, to answer a question, to cover one or wrap it up.
const LID: f64 = 15.0;
const READ_ONE: f64 = 12.0;
const TAKE_OFF: f64 = 6.0;
const READ_PIT: f64 = 10.0;
const MEND: f64 = 180.0;
const ANSWER: f64 = 5.0;
const FOIL: f64 = 8.0;
/// What is tapped for a typed reading, and for a button.
const TYPED: usize = 3;
const BUTTON: usize = 1;
/// A thermometer is tried in so many places.
const PLACES: u8 = 2;
/// A mended fire is given at least this long before it is read again, s.
const FIRE_COMES_BACK: f64 = 300.0;
/// What is to be hurried up was seen to, and is given so long to warm before it is read again, s.
const WARMS_FOR: f64 = 600.0;

impl<W: World> Person<W> {
    /// Does what a duty says.
    pub(super) fn do_it(&mut self, duty: &Duty) {
        let at_the_lid = matches!(
            duty.act,
            Act::Read | Act::Pull | Act::PutBack | Act::Reseat | Act::Answer { .. }
        );
        self.lid_is_up &= at_the_lid;
        match &duty.act {
            Act::Answer { reading } => self.answer(*reading),
            Act::Read => self.at_the_lid(|person| person.read_each(&duty.pieces)),
            Act::KeepHot => self.keep_hot(&duty.pieces),
            Act::HurryUp => self.hurry(&duty.pieces),
            Act::Prove => self.read_first(&duty.pieces),
            Act::TrySecondPlace { reading, .. } => self.try_second(*reading, &duty.pieces),
            Act::MendFire => self.see_to_fire(),
            Act::ReadPit => self.read_pit(),
            Act::Check => self.press(duty, 0.0),
            Act::Pull => self.at_the_lid(|person| person.pull(duty)),
            Act::PutBack => self.at_the_lid(|person| person.put_on(duty, TAKE_OFF)),
            Act::PutOn => {
                self.put_on(duty, 0.0);
                self.lid_is_up = true;
                self.spend(LOADING);
                self.lid_is_up = false;
            }
            Act::Cover => self.press(duty, FOIL * duty.pieces.len() as f64),
            Act::Chill | Act::Serve | Act::Pack | Act::Discard => self.done_with(duty),
            Act::Reseat | Act::Chore { .. } | Act::TakeOut | Act::PutAway | Act::AddPieces => {
                self.press(duty, ANSWER);
            }
        }
    }

    /// Does something with the lid up, which goes up first if it is down.
    fn at_the_lid(&mut self, work: impl FnOnce(&mut Self)) {
        if !self.lid_is_up {
            self.lid_is_up = true;
            self.spend(LID);
            self.openings.push(self.now);
        }
        work(self);
    }

    /// One tap, and what it writes.
    fn press(&mut self, duty: &Duty, takes: f64) {
        self.spend(takes);
        self.tap(BUTTON);
        let entries = duty.doing().into_iter().find_map(|doing| match doing {
            Doing::Write { entries } => Some(entries),
            _ => None,
        });
        for what in entries.unwrap_or_default() {
            self.write(what);
        }
        // Whatever was tapped, the next look is a moment later.
        self.spend(1.0);
    }

    fn put_on(&mut self, duty: &Duty, takes: f64) {
        self.first_on.get_or_insert(self.now);
        for piece in duty.pieces.iter().map(|piece| diary::place(*piece)) {
            self.world.put_on(piece);
            let core = self.world.core(piece);
            let outcome = &mut self.outcome.pieces[piece];
            outcome.rest.ends(core);
            if outcome.off.is_some() {
                outcome.put_back += 1;
                outcome.proved = None;
            }
        }
        self.press(duty, takes);
    }

    fn pull(&mut self, duty: &Duty) {
        let look = self.look();
        for piece in &duty.pieces {
            let core = self.world.core(diary::place(*piece));
            self.spend(TAKE_OFF);
            self.world.pull(diary::place(*piece));
            let (now, pull_at) =
                (self.now, look.seen.history(*piece).map(|piece| piece.pull_at.c()));
            let outcome = &mut self.outcome.pieces[diary::place(*piece)];
            outcome.pulled.push(core);
            outcome.rest.begins(core);
            outcome.off = Some(now);
            outcome.pull_at = outcome.pull_at.or(pull_at);
        }
        self.press(duty, 0.0);
        let look = self.look();
        for piece in &duty.pieces {
            let told = look.seen.piece_forecast(*piece);
            let peak = told.and_then(|told| told.peak);
            let outcome = &mut self.outcome.pieces[diary::place(*piece)];
            let middle = peak.map(|peak| peak.temperature.middle.c());
            outcome.peak_told = outcome.peak_told.or(middle);
            outcome.core_told = outcome.core_told.or(told.map(|told| told.core.middle.c()));
        }
    }

    fn done_with(&mut self, duty: &Duty) {
        let now = self.now;
        for piece in &duty.pieces {
            let outcome = &mut self.outcome.pieces[diary::place(*piece)];
            outcome.done = Some(now);
            outcome.discarded = duty.act == Act::Discard;
        }
        self.press(duty, FOIL);
    }

    fn read_each(&mut self, pieces: &[PieceId]) {
        for piece in pieces {
            self.read(*piece);
        }
    }

    fn read_first(&mut self, pieces: &[PieceId]) {
        self.read_each(&pieces[..pieces.len().min(1)]);
    }

    /// Puts pieces where they stay hot, and reads the first of them.
    fn keep_hot(&mut self, pieces: &[PieceId]) {
        self.warm(pieces);
        self.read_first(pieces);
    }

    fn warm(&mut self, pieces: &[PieceId]) {
        for place in pieces.iter().map(|piece| diary::place(*piece)) {
            self.world.keep_hot(place);
            self.outcome.pieces[place].rest.ends(self.world.core(place));
        }
    }

    /// Warms what rests, and reads it and what is on the pit.
    fn hurry(&mut self, pieces: &[PieceId]) {
        let (on, off): (Vec<PieceId>, Vec<PieceId>) =
            pieces.iter().partition(|piece| !self.outcome.pieces[diary::place(**piece)].is_off());
        self.warm(&off);
        self.read_each(&off);
        if !on.is_empty() {
            self.at_the_lid(|person| person.read_each(&on));
        }
        self.hurried.extend(pieces.iter().map(|piece| (*piece, self.now)));
    }

    /// Whether there is more to do about what is to be hurried up than to let it warm.
    pub(super) fn hurries(&self, pieces: &[PieceId]) -> bool {
        let warms = |piece| self.hurried.get(piece).is_some_and(|at| self.now - at < WARMS_FOR);
        !pieces.iter().all(warms)
    }

    /// Reads a piece and types what is shown, or something else.
    fn read(&mut self, piece: PieceId) {
        self.spend(READ_ONE);
        let place = diary::place(piece);
        let slip = Slip::draw(&mut self.luck);
        let poked = if slip == Some(Slip::Neighbour) { self.beside(place) } else { place };
        let slip = slip.filter(|slip| *slip == Slip::Digits || poked != place);
        let read = shown(self.world.poke(poked));
        let figure = if slip == Some(Slip::Digits) { self.mistype(read) } else { read };
        self.tap(TYPED);
        // Two digits alike, and what was typed again, are right.
        let slip = slip.filter(|slip| *slip == Slip::Neighbour || figure != read);
        self.outcome.honest += usize::from(slip.is_none());
        let foreseen =
            self.look().seen.piece_forecast(piece).map(|told| told.core_at(self.moment()));
        let outcome = &mut self.outcome.pieces[place];
        let is_off = outcome.is_off();
        outcome.checks += usize::from(!is_off);
        outcome.slips += usize::from(slip.is_some());
        outcome.proof_readings += usize::from(is_off && outcome.proved.is_none());
        let temperature = Temperature::from_f(f64::from(figure));
        let instrument = Instrument::InstantRead;
        let entry = self.write(What::CoreRead { piece, temperature, instrument, places: PLACES });
        let core = 1.8 * self.world.core(place) + 32.0;
        self.outcome.tell(self.now, || {
            let middle = foreseen.map_or(f64::NAN, |core| core.middle.f());
            let slip = slip.map_or(String::new(), |slip| format!(", {slip:?}"));
            format!("piece {} shows {figure} (is {core:.1}, foreseen {middle:.1}{slip})", piece.0)
        });
        self.slips.extend(entry.zip(slip));
        self.spend(1.0);
    }

    /// Swaps two digits; what is refused is typed again, as it was shown.
    fn mistype(&mut self, read: i32) -> i32 {
        let typed = swapped(read, &mut self.luck);
        if CORE.contains(&Temperature::from_f(f64::from(typed))) {
            return typed;
        }
        self.tap(TYPED);
        read
    }

    /// The piece that lies beside one, in the pit or on the board.
    fn beside(&self, place: usize) -> usize {
        let is_off = |piece: usize| self.outcome.pieces[piece].is_off();
        let count = self.outcome.pieces.len();
        let others = (1..count).map(|step| (place + step) % count);
        others.into_iter().find(|other| is_off(*other) == is_off(place)).unwrap_or(place)
    }

    /// Asked whether a reading is right: takes it back if the slip is seen, or says that it is.
    fn answer(&mut self, reading: EntryId) {
        self.spend(ANSWER);
        self.tap(BUTTON);
        self.asked.insert(reading);
        let slip = self.slips.get(&reading).copied();
        let seen = slip.is_some_and(|slip| slip.is_seen(&mut self.luck));
        self.write(if seen {
            What::Undone { entry: reading }
        } else {
            What::ReadingVouched { reading }
        });
    }

    fn try_second(&mut self, reading: EntryId, pieces: &[PieceId]) {
        self.spend(READ_ONE);
        self.tap(BUTTON);
        for piece in pieces {
            self.outcome.pieces[diary::place(*piece)].proof_readings += 1;
        }
        self.write(What::SecondPlaceTried { reading });
    }

    fn read_pit(&mut self) {
        self.spend(READ_PIT);
        self.tap(TYPED);
        let figure = f64::from(shown(self.world.dial()));
        self.outcome.tell(self.now, || format!("pit shows {figure}"));
        self.write(What::PitRead { temperature: Temperature::from_f(figure) });
    }

    /// Whether the fire wants something of the person now: to be mended, or, some time after that, to
    /// be read again.
    pub(super) fn sees_to_fire(&self) -> bool {
        self.mended.is_none_or(|at| self.now - at >= FIRE_COMES_BACK)
    }

    fn see_to_fire(&mut self) {
        if self.mended.is_none() {
            self.spend(MEND);
            self.world.mend_fire();
        } else {
            self.read_pit();
        }
        self.mended = Some(self.now);
    }
}
