//! What a cook has noted of a record by some moment, as the forecast is given it.

use chrono::DateTime;
use cook_model::heat::PitKind;
use cook_model::history::{
    CoreReading, DeviceId, EntryId, History, Instrument, LidOpening, PieceHistory, PitAim,
    PitHistory, PitReading, Spell, Tolerances,
};
use cook_model::piece::{Piece, PieceId, Shape};
use cook_model::quantity::{Length, Mass, Moment, Temperature, TemperatureDifference, seconds};
use cook_model::safety::ProofRule;

use crate::draw::{Setup, Told};
use crate::record::{Reading, Record};

/// A moment so many seconds after the pieces went on.
pub fn moment(s: f64) -> Moment {
    DateTime::UNIX_EPOCH + seconds(1.0e6 + s)
}

/// Seconds from when the pieces went on to a moment.
pub fn since(moment: Moment) -> f64 {
    (moment - DateTime::UNIX_EPOCH).num_milliseconds() as f64 / 1e3 - 1.0e6
}

/// What is noted.
pub struct Noted<'a> {
    /// Of this cook.
    pub setup: &'a Setup,
    /// And what came of it.
    pub record: &'a Record,
    /// Up to this time, s.
    pub until: f64,
    /// The readings among those that are.
    pub readings: &'a dyn Fn(&Reading) -> bool,
}

impl Noted<'_> {
    /// As a history.
    pub fn history(&self) -> History {
        let Self { setup, record, until, .. } = *self;
        let c = Temperature::from_c;
        let pieces = (0..setup.told.len()).map(|piece| self.piece(piece)).collect();
        let aim = PitAim { at: moment(-1800.0), temperature: c(setup.pit.set) };
        let lid = record.openings.iter().filter(|o| o.told && o.at <= until);
        let read = record.pit.iter().filter(|(at, _)| *at <= until);
        History {
            pieces,
            pit: PitHistory {
                kind: PitKind::Indirect,
                target: c(setup.pit.set),
                aims: vec![aim],
                readings: read
                    .map(|(at, shown)| PitReading { at: moment(*at), temperature: c(*shown) })
                    .collect(),
                lid: lid
                    .map(|o| LidOpening { at: moment(o.at), lasted: seconds(o.lasted) })
                    .collect(),
                ambient: c(20.0),
            },
            proof_rule: ProofRule::default(),
            tolerances: Tolerances {
                instant_read: TemperatureDifference::from_f(1.0),
                ..Tolerances::default()
            },
            check_risk_percent: 10,
            clock_jumps: Vec::new(),
            clock_unwatched: Vec::new(),
        }
    }

    fn piece(&self, piece: usize) -> PieceHistory {
        let Self { setup, record, until, readings } = self;
        let off = record.pull[piece].filter(|pull| pull <= until);
        let covered = off.map(|off| off + 60.0).filter(|at| at <= until);
        let of_it = record.readings.iter().enumerate().filter(|(_, r)| r.piece == piece);
        let counted = of_it.filter(|(_, r)| r.at <= *until && readings(r));
        PieceHistory {
            id: PieceId(piece as u32 + 1),
            piece: raw(&setup.told[piece]),
            tonight: true,
            pull_choice: Some(Temperature::from_c(setup.pull_at)),
            pull_at: Temperature::from_c(setup.pull_at),
            raw_out: Vec::new(),
            spells: vec![Spell {
                on: moment(0.0),
                off: off.map(moment),
                covered: covered.map(moment),
            }],
            readings: counted.map(|(number, r)| core_reading(number, r)).collect(),
            placements: Vec::new(),
            last_put_on: None,
            packed: None,
            discarded: false,
            packed_at: None,
        }
    }
}

/// What is said of a piece.
pub fn raw(told: &Told) -> Piece {
    Piece {
        weight: Mass::from_g(told.weight * 1e3),
        thickest: told.thickness.map(Length::from_m),
        shape: if told.even { Shape::Even } else { Shape::Natural },
        start: Temperature::from_c(told.start),
        icy: false,
    }
}

fn core_reading(number: usize, reading: &Reading) -> CoreReading {
    let (at, shown) = (moment(reading.at), Temperature::from_c(reading.celsius));
    CoreReading {
        entry: EntryId { count: number as u64 + 1, device: DeviceId(1) },
        at,
        typed: at,
        temperature: shown,
        shown,
        for_proof: shown,
        instrument: Instrument::InstantRead,
        places: 3,
        vouched: false,
        copied: false,
        barred: false,
    }
}
